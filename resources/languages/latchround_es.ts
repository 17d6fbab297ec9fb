<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Made by machine. To be checked by a speaker who knows fire doors aboard ship; until then every translation stays unfinished. -->
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Boundaries</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 y %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished">%1 más</translation>
    </message>
    <message>
        <source>%1 open at deck %2 (%3)</source>
        <translation type="unfinished">%1 abierto en la cubierta %2 (%3)</translation>
    </message>
    <message>
        <source>%1 open at decks %2 (%3)</source>
        <translation type="unfinished">%1 abierto en las cubiertas %2 (%3)</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">puerta %1</translation>
    </message>
    <message>
        <source>doors %1</source>
        <translation type="unfinished">puertas %1</translation>
    </message>
    <message>
        <source>; area %1, limit %2</source>
        <translation type="unfinished">; área %1, límite %2</translation>
    </message>
    <message>
        <source>repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">reparar la puerta %1 del mamparo %2 es lo que más separación restablece</translation>
    </message>
    <message>
        <source>repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">reparar las puertas %1 del mamparo %2 es lo que más separación restablece</translation>
    </message>
    <message>
        <source>not yet proven: bulkhead %1</source>
        <translation type="unfinished">aún sin demostrar: mamparo %1</translation>
    </message>
    <message>
        <source>not yet proven: bulkheads %1</source>
        <translation type="unfinished">aún sin demostrar: mamparos %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">mamparo %1: las zonas %2 forman una sola, de %3 de largo</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">mamparos %1: las zonas %2 forman una sola, de %3 de largo</translation>
    </message>
    <message>
        <source>; limit %1, %2 maximum</source>
        <translation type="unfinished">; límite %1, máximo %2</translation>
    </message>
    <message>
        <source>; %1 maximum</source>
        <translation type="unfinished">; máximo %1</translation>
    </message>
    <message>
        <source>; limit %1 in cabin areas</source>
        <translation type="unfinished">; límite %1 en zonas de camarotes</translation>
    </message>
    <message>
        <source>; limit %1</source>
        <translation type="unfinished">; límite %1</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Trayectoria de la hoja despejada a ambos lados</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">¿Trayectoria despejada, ambos lados?</translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished">Cajón de la hoja sin suciedad, basura ni pertrechos</translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished">¿Cajón de la hoja sin suciedad ni basura?</translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">¿Sin cuñas, cabos ni muebles?</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped</source>
        <translation type="unfinished">Bisagras firmes, hoja sin descolgar</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped?</source>
        <translation type="unfinished">¿Bisagras firmes, hoja sin descolgar?</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">¿Cierrapuertas seco, brazo conectado?</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">¿Carriles, rodillos y guías limpios?</translation>
    </message>
    <message>
        <source>Both faces, edges, frame and glass. Bad: drilled holes, cables, signs screwed on, rust, loose insulation, a crack.</source>
        <translation type="unfinished">Ambas caras, bordes, marco y vidrio. Mal: taladros, cables, rótulos atornillados, óxido, aislamiento suelto, una grieta.</translation>
    </message>
    <message>
        <source>Moves smoothly over its whole travel</source>
        <translation type="unfinished">Se mueve con suavidad en toda su trayectoria</translation>
    </message>
    <message>
        <source>Smooth over its whole travel?</source>
        <translation type="unfinished">¿Suave en toda su trayectoria?</translation>
    </message>
    <message>
        <source>Latches fully, unaided, and stays latched when pushed</source>
        <translation type="unfinished">El pestillo encaja del todo, sin ayuda, y aguanta al empujar</translation>
    </message>
    <message>
        <source>Latches unaided, stays latched when pushed?</source>
        <translation type="unfinished">¿Encaja el pestillo sin ayuda y aguanta al empujar?</translation>
    </message>
    <message>
        <source>Safety edge stops the leaf and lets it re-open</source>
        <translation type="unfinished">El borde sensible detiene la hoja y la deja reabrirse</translation>
    </message>
    <message>
        <source>Does the safety edge stop and re-open it?</source>
        <translation type="unfinished">¿La detiene y la reabre el borde sensible?</translation>
    </message>
    <message>
        <source>One person can open and close it, from each side</source>
        <translation type="unfinished">Una sola persona puede abrirla y cerrarla, desde cada lado</translation>
    </message>
    <message>
        <source>Can one person open and close it?</source>
        <translation type="unfinished">¿Puede abrirla y cerrarla una sola persona?</translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished">¿Se cierra sola?</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">La puerta de bisagras se cierra de 10 a 40 s tras su primer movimiento, con el buque adrizado</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">La puerta corredera se cierra a una velocidad aproximadamente uniforme de 0,1 a 0,2 m/s, con el buque adrizado</translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished">Se puede accionar desde el puesto central de control con dotación permanente</translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished">¿La acciona el puesto de control?</translation>
    </message>
    <message>
        <source>Can be released at the door, from both sides</source>
        <translation type="unfinished">Se puede accionar en la puerta, desde ambos lados</translation>
    </message>
    <message>
        <source>Does the switch on this side release it?</source>
        <translation type="unfinished">¿La acciona el interruptor de este lado?</translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished">Sin gancho de retención que no pueda accionar el puesto de control</translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished">¿Sin ganchos que no pueda accionar el puesto de control?</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">¿Se abre desde este lado tras el cierre a distancia y luego se cierra sola?</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">El panel del puesto de control indica si está cerrada</translation>
    </message>
    <message>
        <source>Closes by itself when the control system or central power fails</source>
        <translation type="unfinished">Se cierra sola si falla el sistema de control o la energía central</translation>
    </message>
    <message>
        <source>Closes by itself when its control or power fails?</source>
        <translation type="unfinished">¿Se cierra sola si falla su control o su energía?</translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">¿Diez ciclos completos con el acumulador local?</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">El fallo de una puerta deja funcionando las demás</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">La alarma suena hasta que la puerta está cerrada del todo</translation>
    </message>
    <message>
        <source>On contact it re-opens no more than 1 m from the point of contact</source>
        <translation type="unfinished">Al contacto se reabre no más de 1 m desde el punto de contacto</translation>
    </message>
    <message>
        <source>How far it re-opens from the point of contact</source>
        <translation type="unfinished">Cuánto se reabre desde el punto de contacto</translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">¿Encaja solo el pestillo tras accionar?</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">¿Son accesibles las piezas del control local?</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 12 mm</source>
        <translation type="unfinished">El hueco bajo una puerta aprobada sin umbral en su marco no pasa de 12 mm</translation>
    </message>
    <message>
        <source>Gap under the shut door</source>
        <translation type="unfinished">Hueco bajo la puerta cerrada</translation>
    </message>
    <message>
        <source>Non-combustible sill; floor covering does not run under the closed door</source>
        <translation type="unfinished">Umbral incombustible; el revestimiento del piso no pasa bajo la puerta cerrada</translation>
    </message>
    <message>
        <source>Sill non-combustible, floor covering stops at it?</source>
        <translation type="unfinished">¿Umbral incombustible y el revestimiento acaba en él?</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">El hueco bajo una puerta aprobada sin umbral en su marco no pasa de 25 mm</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Abertura de ventilación en la puerta o bajo ella, neta</translation>
    </message>
    <message>
        <source>Cabin door closes by itself and has no hold-back hook</source>
        <translation type="unfinished">La puerta de camarote se cierra sola y no tiene gancho de retención</translation>
    </message>
    <message>
        <source>Closes by itself, no hook?</source>
        <translation type="unfinished">¿Se cierra sola, sin gancho?</translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Se cierra sola contra una escora de 3,5 grados</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Abra solo una hoja y suéltela; luego la otra. Bien: cada una cierra y encaja por sí sola. Mal: una necesita a la otra, o no encaja.</translation>
    </message>
    <message>
        <source>No vent grille or louver in an A-class door</source>
        <translation type="unfinished">Sin rejilla ni persiana de ventilación en puerta de clase A</translation>
    </message>
    <message>
        <source>Free of grilles and louvers?</source>
        <translation type="unfinished">¿Sin rejillas ni persianas?</translation>
    </message>
    <message>
        <source>One leaf at most 1200 mm wide</source>
        <translation type="unfinished">Una hoja, de 1200 mm de ancho como máximo</translation>
    </message>
    <message>
        <source>One leaf, from the hinge side to the free edge. 48 inches.</source>
        <translation type="unfinished">Una hoja, del lado de las bisagras al borde libre. 48 pulgadas.</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta), solo para tripulación, se cierra en 5 a 10 s</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Fuerza para soltar el pestillo de una puerta horizontal (en la propia cubierta): 17,8 N como máximo</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Fuerza para poner en movimiento una puerta horizontal (en la propia cubierta): 44,5 N como máximo</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Pestillo libre: enganche un dinamómetro al borde libre y tire hasta el instante en que la puerta empieza a moverse. Cuenta la fuerza mayor.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Fuerza para abrir una puerta horizontal (en la propia cubierta) hasta el ancho de la escalera: 17,8 N como máximo</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">¿Está aprobado el sistema de accionamiento según SOLAS 74 II-2/30.4.3?</translation>
    </message>
    <message>
        <source>Control stations</source>
        <translation type="unfinished">Puestos de control</translation>
    </message>
    <message>
        <source>room with emergency power or lighting source</source>
        <translation type="unfinished">local con la fuente de energía o de alumbrado de emergencia</translation>
    </message>
    <message>
        <source>bridge and chart room</source>
        <translation type="unfinished">puente y cuarto de derrota</translation>
    </message>
    <message>
        <source>radio room</source>
        <translation type="unfinished">cuarto de radio</translation>
    </message>
    <message>
        <source>fire control room</source>
        <translation type="unfinished">puesto de control contraincendios</translation>
    </message>
    <message>
        <source>propulsion control room outside the engine room</source>
        <translation type="unfinished">cámara de mando de la propulsión fuera de la cámara de máquinas</translation>
    </message>
    <message>
        <source>central fire-alarm panel room</source>
        <translation type="unfinished">local del panel central de alarma contraincendios</translation>
    </message>
    <message>
        <source>central emergency public-address station</source>
        <translation type="unfinished">local central del sistema megafónico de emergencia</translation>
    </message>
    <message>
        <source>Stairways</source>
        <translation type="unfinished">Escaleras</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks for passengers or crew, with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">escaleras interiores, ascensores, escaleras mecánicas y troncos de evacuación totalmente cerrados, para pasaje o tripulación, con sus recintos (no los situados por entero en espacios de máquinas)</translation>
    </message>
    <message>
        <source>Corridors</source>
        <translation type="unfinished">Pasillos</translation>
    </message>
    <message>
        <source>passenger and crew corridors</source>
        <translation type="unfinished">pasillos de pasaje y de tripulación</translation>
    </message>
    <message>
        <source>lobbies</source>
        <translation type="unfinished">vestíbulos</translation>
    </message>
    <message>
        <source>Evacuation stations and external escape routes</source>
        <translation type="unfinished">Puestos de evacuación y vías exteriores de evacuación</translation>
    </message>
    <message>
        <source>survival-craft stowage</source>
        <translation type="unfinished">zona de estiba de embarcaciones de supervivencia</translation>
    </message>
    <message>
        <source>open deck or enclosed promenade used for boat/raft boarding and lowering</source>
        <translation type="unfinished">cubierta expuesta o paseo cerrado usado para embarco y arriado de botes o balsas</translation>
    </message>
    <message>
        <source>assembly stations, indoor and outdoor</source>
        <translation type="unfinished">puestos de reunión, interiores y exteriores</translation>
    </message>
    <message>
        <source>outside stairs and open decks that are escape routes</source>
        <translation type="unfinished">escaleras exteriores y cubiertas expuestas que son vías de evacuación</translation>
    </message>
    <message>
        <source>ship&apos;s side down to the lightest waterline, and house sides, below or beside raft and slide boarding areas</source>
        <translation type="unfinished">costado del buque hasta la flotación mínima, y costados de casetas, bajo o junto a zonas de embarco en balsas y rampas</translation>
    </message>
    <message>
        <source>Open deck spaces</source>
        <translation type="unfinished">Espacios de cubierta expuesta</translation>
    </message>
    <message>
        <source>open deck and promenades away from boat/raft boarding places (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">cubierta expuesta y paseos apartados de los lugares de embarco en botes o balsas (solo muebles de cubierta, siempre abiertos al aire)</translation>
    </message>
    <message>
        <source>the open air outside superstructures and deckhouses</source>
        <translation type="unfinished">el aire libre fuera de superestructuras y casetas</translation>
    </message>
    <message>
        <source>Accommodation spaces of minor fire risk</source>
        <translation type="unfinished">Alojamientos con escaso riesgo de incendio</translation>
    </message>
    <message>
        <source>cabins, offices and dispensaries with restricted-fire-risk furnishings</source>
        <translation type="unfinished">camarotes, oficinas y dispensarios con mobiliario de riesgo de incendio reducido</translation>
    </message>
    <message>
        <source>Accommodation spaces of moderate fire risk</source>
        <translation type="unfinished">Alojamientos con riesgo moderado de incendio</translation>
    </message>
    <message>
        <source>category 6 rooms with ordinary furnishings</source>
        <translation type="unfinished">locales de categoría 6 con mobiliario corriente</translation>
    </message>
    <message>
        <source>projection and film rooms</source>
        <translation type="unfinished">salas de proyección y de películas</translation>
    </message>
    <message>
        <source>diet kitchen without open flame</source>
        <translation type="unfinished">cocina de dietas sin llama abierta</translation>
    </message>
    <message>
        <source>cleaning-gear locker, laboratory (no flammable liquids)</source>
        <translation type="unfinished">pañol de limpieza, laboratorio (sin líquidos inflamables)</translation>
    </message>
    <message>
        <source>pharmacy</source>
        <translation type="unfinished">farmacia</translation>
    </message>
    <message>
        <source>specie room</source>
        <translation type="unfinished">cámara de valores</translation>
    </message>
    <message>
        <source>operating room</source>
        <translation type="unfinished">quirófano</translation>
    </message>
    <message>
        <source>Accommodation spaces of greater fire risk</source>
        <translation type="unfinished">Alojamientos con riesgo considerable de incendio</translation>
    </message>
    <message>
        <source>barber shop, beauty parlour</source>
        <translation type="unfinished">peluquería, salón de belleza</translation>
    </message>
    <message>
        <source>sauna</source>
        <translation type="unfinished">sauna</translation>
    </message>
    <message>
        <source>sale shop</source>
        <translation type="unfinished">tienda</translation>
    </message>
    <message>
        <source>Sanitary and similar spaces</source>
        <translation type="unfinished">Espacios para fines sanitarios y similares</translation>
    </message>
    <message>
        <source>shared toilets, showers, baths</source>
        <translation type="unfinished">aseos, duchas y baños compartidos</translation>
    </message>
    <message>
        <source>small laundry</source>
        <translation type="unfinished">lavandería pequeña</translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation type="unfinished">piscina interior</translation>
    </message>
    <message>
        <source>isolated pantry without cooking appliances</source>
        <translation type="unfinished">oficio aislado sin aparatos de cocción</translation>
    </message>
    <message>
        <source>(private bathrooms count as part of the room they serve)</source>
        <translation type="unfinished">(los baños privados cuentan como parte del local al que sirven)</translation>
    </message>
    <message>
        <source>Tanks, voids and auxiliary machinery spaces having little or no fire risk</source>
        <translation type="unfinished">Tanques, espacios perdidos y espacios de maquinaria auxiliar con pequeño o nulo riesgo de incendio</translation>
    </message>
    <message>
        <source>structural water tanks</source>
        <translation type="unfinished">tanques de agua estructurales</translation>
    </message>
    <message>
        <source>voids, cofferdams</source>
        <translation type="unfinished">espacios perdidos, coferdanes</translation>
    </message>
    <message>
        <source>auxiliary rooms with no pressure-lubricated machinery and no combustible storage: fan and air-conditioning rooms, windlass, steering gear, stabiliser, electric propulsion motor, section switchboards (no oil-filled transformer above 10 kVA)</source>
        <translation type="unfinished">locales auxiliares sin maquinaria de lubricación a presión ni almacenamiento de combustibles: ventiladores y aire acondicionado, molinete, aparato de gobierno, estabilizador, motor eléctrico de propulsión, cuadros de sección (sin transformador en aceite de más de 10 kVA)</translation>
    </message>
    <message>
        <source>shaft alleys, pipe tunnels, non-flammable pump and refrigeration rooms</source>
        <translation type="unfinished">túneles de ejes y de tuberías, cámaras de bombas y de refrigeración no inflamables</translation>
    </message>
    <message>
        <source>closed trunks serving these; pipe and cable trunks</source>
        <translation type="unfinished">troncos cerrados que sirven a estos; troncos de tuberías y cables</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, cargo spaces, cargo and other oil tanks and similar spaces of moderate fire risk</source>
        <translation type="unfinished">Espacios de maquinaria auxiliar, espacios de carga, tanques de carga y de otros hidrocarburos y espacios similares con riesgo moderado de incendio</translation>
    </message>
    <message>
        <source>cargo oil tanks</source>
        <translation type="unfinished">tanques de carga de hidrocarburos</translation>
    </message>
    <message>
        <source>holds, trunkways, hatchways</source>
        <translation type="unfinished">bodegas, troncos y escotillas</translation>
    </message>
    <message>
        <source>refrigerated chambers</source>
        <translation type="unfinished">cámaras refrigeradas</translation>
    </message>
    <message>
        <source>oil fuel tanks in their own space without machinery</source>
        <translation type="unfinished">tanques de combustible líquido en su propio espacio sin maquinaria</translation>
    </message>
    <message>
        <source>shaft alleys or pipe tunnels where combustibles may be kept</source>
        <translation type="unfinished">túneles de ejes o de tuberías donde pueda haber materiales combustibles</translation>
    </message>
    <message>
        <source>category 10 type rooms with pressure-lubricated machinery or combustible storage</source>
        <translation type="unfinished">locales como los de categoría 10 con maquinaria de lubricación a presión o almacenamiento de combustibles</translation>
    </message>
    <message>
        <source>oil filling stations</source>
        <translation type="unfinished">puestos de toma de combustible</translation>
    </message>
    <message>
        <source>oil-filled transformers above 10 kVA</source>
        <translation type="unfinished">transformadores en aceite de más de 10 kVA</translation>
    </message>
    <message>
        <source>turbine/steam auxiliary generators and engines up to 110 kW driving generators, sprinkler, fire or bilge pumps</source>
        <translation type="unfinished">grupos auxiliares de turbina o vapor y motores de hasta 110 kW para generadores, bombas de rociadores, contraincendios o de sentina</translation>
    </message>
    <message>
        <source>closed trunks serving these</source>
        <translation type="unfinished">troncos cerrados que sirven a estos</translation>
    </message>
    <message>
        <source>Machinery spaces and main galleys</source>
        <translation type="unfinished">Espacios de máquinas y cocinas principales</translation>
    </message>
    <message>
        <source>main engine and boiler rooms (not electric propulsion motor rooms)</source>
        <translation type="unfinished">cámaras de máquinas principales y de calderas (no las de motores eléctricos de propulsión)</translation>
    </message>
    <message>
        <source>other auxiliary rooms with engines or oil-burning, heating or pumping units</source>
        <translation type="unfinished">otros locales auxiliares con motores o con equipos de quemar, calentar o bombear combustible</translation>
    </message>
    <message>
        <source>main galleys and annexes</source>
        <translation type="unfinished">cocinas principales y anexos</translation>
    </message>
    <message>
        <source>their trunks and casings</source>
        <translation type="unfinished">sus troncos y guardacalores</translation>
    </message>
    <message>
        <source>Store-rooms, workshops, pantries, etc.</source>
        <translation type="unfinished">Gambuzas, talleres, oficios, etc.</translation>
    </message>
    <message>
        <source>main pantry not annexed to a galley</source>
        <translation type="unfinished">oficio principal no anexo a una cocina</translation>
    </message>
    <message>
        <source>main laundry</source>
        <translation type="unfinished">lavandería principal</translation>
    </message>
    <message>
        <source>miscellaneous stores</source>
        <translation type="unfinished">pañoles diversos</translation>
    </message>
    <message>
        <source>mail and baggage rooms</source>
        <translation type="unfinished">locales de correo y equipajes</translation>
    </message>
    <message>
        <source>garbage rooms</source>
        <translation type="unfinished">locales de basuras</translation>
    </message>
    <message>
        <source>workshops outside machinery spaces and galleys</source>
        <translation type="unfinished">talleres fuera de espacios de máquinas y cocinas</translation>
    </message>
    <message>
        <source>Other spaces in which flammable liquids are stowed</source>
        <translation type="unfinished">Otros espacios en que se almacenan líquidos inflamables</translation>
    </message>
    <message>
        <source>paint locker</source>
        <translation type="unfinished">pañol de pinturas</translation>
    </message>
    <message>
        <source>stores with flammable liquids (dyes, medicines, ...)</source>
        <translation type="unfinished">pañoles con líquidos inflamables (tintes, medicamentos, ...)</translation>
    </message>
    <message>
        <source>laboratories where flammable liquids are kept</source>
        <translation type="unfinished">laboratorios donde se guardan líquidos inflamables</translation>
    </message>
    <message>
        <source>propulsion control room outside the machinery space</source>
        <translation type="unfinished">cámara de mando de la propulsión fuera del espacio de máquinas</translation>
    </message>
    <message>
        <source>passenger and crew corridors and lobbies</source>
        <translation type="unfinished">pasillos y vestíbulos de pasaje y tripulación</translation>
    </message>
    <message>
        <source>Accommodation spaces</source>
        <translation type="unfinished">Alojamientos</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">escaleras interiores, ascensores, escaleras mecánicas y troncos de evacuación totalmente cerrados, con sus recintos (no los situados por entero en espacios de máquinas)</translation>
    </message>
    <message>
        <source>Service spaces (low risk)</source>
        <translation type="unfinished">Espacios de servicio (riesgo limitado)</translation>
    </message>
    <message>
        <source>drying rooms</source>
        <translation type="unfinished">cuartos de secado</translation>
    </message>
    <message>
        <source>laundries</source>
        <translation type="unfinished">lavanderías</translation>
    </message>
    <message>
        <source>Machinery spaces of category A</source>
        <translation type="unfinished">Espacios de categoría A para máquinas</translation>
    </message>
    <message>
        <source>spaces with main propulsion combustion engines</source>
        <translation type="unfinished">espacios con motores de combustión para la propulsión principal</translation>
    </message>
    <message>
        <source>other combustion engines totalling 375 kW or more</source>
        <translation type="unfinished">otros motores de combustión que sumen 375 kW o más</translation>
    </message>
    <message>
        <source>oil-fired boilers, oil fuel units, inert gas generators, incinerators and other oil-fired plant</source>
        <translation type="unfinished">calderas de combustible líquido, instalaciones de combustible, generadores de gas inerte, incineradores y otros equipos que queman combustible</translation>
    </message>
    <message>
        <source>trunks to these (reg. 3.31)</source>
        <translation type="unfinished">troncos hacia ellos (regla 3.31)</translation>
    </message>
    <message>
        <source>Other machinery spaces</source>
        <translation type="unfinished">Otros espacios de máquinas</translation>
    </message>
    <message>
        <source>electrical rooms (telephone exchange, air-conditioning duct spaces)</source>
        <translation type="unfinished">locales eléctricos (central telefónica, espacios de conductos de aire acondicionado)</translation>
    </message>
    <message>
        <source>machinery spaces of reg. 3.30 that are not category A</source>
        <translation type="unfinished">espacios de máquinas de la regla 3.30 que no son de categoría A</translation>
    </message>
    <message>
        <source>Cargo spaces</source>
        <translation type="unfinished">Espacios de carga</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways (special category spaces are category 11)</source>
        <translation type="unfinished">todos los espacios de carga, incl. tanques de carga de hidrocarburos, con sus troncos y escotillas (los de categoría especial son categoría 11)</translation>
    </message>
    <message>
        <source>Service spaces (high risk)</source>
        <translation type="unfinished">Espacios de servicio (riesgo elevado)</translation>
    </message>
    <message>
        <source>galleys, pantries with cooking appliances</source>
        <translation type="unfinished">cocinas, oficios con aparatos de cocción</translation>
    </message>
    <message>
        <source>paint rooms/lockers, lamp rooms</source>
        <translation type="unfinished">locales o pañoles de pinturas, pañoles de luces</translation>
    </message>
    <message>
        <source>saunas</source>
        <translation type="unfinished">saunas</translation>
    </message>
    <message>
        <source>flammable-liquid stores</source>
        <translation type="unfinished">pañoles de líquidos inflamables</translation>
    </message>
    <message>
        <source>workshops outside the machinery spaces</source>
        <translation type="unfinished">talleres fuera de los espacios de máquinas</translation>
    </message>
    <message>
        <source>Open decks</source>
        <translation type="unfinished">Cubiertas expuestas</translation>
    </message>
    <message>
        <source>open deck and promenades with little or no fire risk (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">cubierta expuesta y paseos con pequeño o nulo riesgo de incendio (solo muebles de cubierta, siempre abiertos al aire)</translation>
    </message>
    <message>
        <source>Special category and ro-ro spaces</source>
        <translation type="unfinished">Espacios de categoría especial y de carga rodada</translation>
    </message>
    <message>
        <source>vehicle decks passengers can enter (reg. 3.46)</source>
        <translation type="unfinished">cubiertas de vehículos a las que entra el pasaje (regla 3.46)</translation>
    </message>
    <message>
        <source>ro-ro spaces (reg. 3.41)</source>
        <translation type="unfinished">espacios de carga rodada (regla 3.41)</translation>
    </message>
    <message>
        <source>corridors and lobbies</source>
        <translation type="unfinished">pasillos y vestíbulos</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways</source>
        <translation type="unfinished">todos los espacios de carga, incl. tanques de carga de hidrocarburos, con sus troncos y escotillas</translation>
    </message>
    <message>
        <source>paint rooms/lockers</source>
        <translation type="unfinished">locales o pañoles de pinturas</translation>
    </message>
    <message>
        <source>Ro-ro and vehicle spaces</source>
        <translation type="unfinished">Espacios de carga rodada y de vehículos</translation>
    </message>
    <message>
        <source>vehicle spaces (reg. 3.49)</source>
        <translation type="unfinished">espacios para vehículos (regla 3.49)</translation>
    </message>
    <message>
        <source>Cargo pump-rooms</source>
        <translation type="unfinished">Cámaras de bombas de carga</translation>
    </message>
    <message>
        <source>rooms with cargo pumps</source>
        <translation type="unfinished">locales con bombas de carga</translation>
    </message>
    <message>
        <source>their entrances and trunks</source>
        <translation type="unfinished">sus accesos y troncos</translation>
    </message>
    <message>
        <source>Control space</source>
        <translation type="unfinished">Espacio de control</translation>
    </message>
    <message>
        <source>emergency power source (generators excluded)</source>
        <translation type="unfinished">fuente de energía de emergencia (excluidos los generadores)</translation>
    </message>
    <message>
        <source>normally manned navigation and radio equipment</source>
        <translation type="unfinished">equipo de navegación y radio con dotación habitual</translation>
    </message>
    <message>
        <source>central fire control or detection gear</source>
        <translation type="unfinished">equipo central de control o detección de incendios</translation>
    </message>
    <message>
        <source>machinery controls outside a machinery space</source>
        <translation type="unfinished">mandos de máquinas fuera de un espacio de máquinas</translation>
    </message>
    <message>
        <source>Stairway</source>
        <translation type="unfinished">Escalera</translation>
    </message>
    <message>
        <source>stairway or stairtower</source>
        <translation type="unfinished">escalera o torre de escalera</translation>
    </message>
    <message>
        <source>Corridor</source>
        <translation type="unfinished">Pasillo</translation>
    </message>
    <message>
        <source>corridor / passageway</source>
        <translation type="unfinished">pasillo o corredor</translation>
    </message>
    <message>
        <source>Embarkation station</source>
        <translation type="unfinished">Puesto de embarco</translation>
    </message>
    <message>
        <source>place where survival craft are boarded</source>
        <translation type="unfinished">lugar donde se embarca en las embarcaciones de supervivencia</translation>
    </message>
    <message>
        <source>embarkation deck</source>
        <translation type="unfinished">cubierta de embarco</translation>
    </message>
    <message>
        <source>Low risk accommodation</source>
        <translation type="unfinished">Alojamiento de riesgo bajo</translation>
    </message>
    <message>
        <source>Low risk service spaces</source>
        <translation type="unfinished">Espacios de servicio de riesgo bajo</translation>
    </message>
    <message>
        <source>washrooms and toilets</source>
        <translation type="unfinished">lavabos y aseos</translation>
    </message>
    <message>
        <source>small laundry or drying room</source>
        <translation type="unfinished">lavandería o cuarto de secado pequeños</translation>
    </message>
    <message>
        <source>cleaning-gear locker with slop sink only</source>
        <translation type="unfinished">pañol de limpieza solo con vertedero</translation>
    </message>
    <message>
        <source>workshop outside machinery spaces</source>
        <translation type="unfinished">taller fuera de los espacios de máquinas</translation>
    </message>
    <message>
        <source>projection room</source>
        <translation type="unfinished">sala de proyección</translation>
    </message>
    <message>
        <source>High risk service spaces</source>
        <translation type="unfinished">Espacios de servicio de riesgo alto</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">cocina</translation>
    </message>
    <message>
        <source>cleaning-gear locker or small storeroom in an accommodation area</source>
        <translation type="unfinished">pañol de limpieza o pañol pequeño en zona de alojamiento</translation>
    </message>
    <message>
        <source>large laundry or drying room</source>
        <translation type="unfinished">lavandería o cuarto de secado grandes</translation>
    </message>
    <message>
        <source>garbage store</source>
        <translation type="unfinished">pañol de basuras</translation>
    </message>
    <message>
        <source>paint or lamp locker</source>
        <translation type="unfinished">pañol de pinturas o de luces</translation>
    </message>
    <message>
        <source>mail or baggage room</source>
        <translation type="unfinished">local de correo o de equipajes</translation>
    </message>
    <message>
        <source>Machinery spaces</source>
        <translation type="unfinished">Espacios de máquinas</translation>
    </message>
    <message>
        <source>propulsion, steam or combustion machinery</source>
        <translation type="unfinished">maquinaria de propulsión, de vapor o de combustión</translation>
    </message>
    <message>
        <source>oil transfer gear</source>
        <translation type="unfinished">equipo de trasiego de combustible</translation>
    </message>
    <message>
        <source>motors above 10 hp</source>
        <translation type="unfinished">motores de más de 10 hp</translation>
    </message>
    <message>
        <source>oil-fired boilers or heaters</source>
        <translation type="unfinished">calderas o calentadores de combustible líquido</translation>
    </message>
    <message>
        <source>generators</source>
        <translation type="unfinished">generadores</translation>
    </message>
    <message>
        <source>their trunks</source>
        <translation type="unfinished">sus troncos</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo spaces, their trunks</source>
        <translation type="unfinished">bodegas, espacios de carga refrigerados, sus troncos</translation>
    </message>
    <message>
        <source>vehicle spaces</source>
        <translation type="unfinished">espacios para vehículos</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, voids, fuel and water tanks</source>
        <translation type="unfinished">Espacios de maquinaria auxiliar, espacios perdidos, tanques de combustible y de agua</translation>
    </message>
    <message>
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished">Cubiertas expuestas (no zonas de seguridad)</translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished">cubierta siempre abierta por uno o más lados, sin punto cubierto a 4,5 m o más de la abertura</translation>
    </message>
    <message>
        <source>emergency power source</source>
        <translation type="unfinished">fuente de energía de emergencia</translation>
    </message>
    <message>
        <source>continuously watched navigation, radio or fire-control rooms</source>
        <translation type="unfinished">locales de navegación, radio o control de incendios con guardia continua</translation>
    </message>
    <message>
        <source>Stairway and elevator enclosures</source>
        <translation type="unfinished">Troncos de escaleras y ascensores</translation>
    </message>
    <message>
        <source>passenger and crew stairs and lifts</source>
        <translation type="unfinished">escaleras y ascensores de pasaje y tripulación</translation>
    </message>
    <message>
        <source>passenger and crew corridors (over 8 ft wide counts as a public space)</source>
        <translation type="unfinished">pasillos de pasaje y tripulación (con más de 8 ft de ancho cuentan como espacio público)</translation>
    </message>
    <message>
        <source>Lifeboat embarkation or lowering stations</source>
        <translation type="unfinished">Puestos de embarco o arriado de botes salvavidas</translation>
    </message>
    <message>
        <source>open deck and promenades in way of boat boarding/lowering</source>
        <translation type="unfinished">cubierta expuesta y paseos en la zona de embarco y arriado de botes</translation>
    </message>
    <message>
        <source>Staterooms and public spaces with incombustible veneers and trim and fire-resistant furnishings</source>
        <translation type="unfinished">Camarotes y espacios públicos con chapas y molduras incombustibles y mobiliario resistente al fuego</translation>
    </message>
    <message>
        <source>staterooms, offices, public rooms so fitted</source>
        <translation type="unfinished">camarotes, oficinas y salas públicas así equipados</translation>
    </message>
    <message>
        <source>Staterooms, and public spaces of 500 sq ft or less, with combustible furnishings; isolated storerooms</source>
        <translation type="unfinished">Camarotes, y espacios públicos de 500 sq ft o menos, con mobiliario combustible; pañoles aislados</translation>
    </message>
    <message>
        <source>ordinary staterooms</source>
        <translation type="unfinished">camarotes corrientes</translation>
    </message>
    <message>
        <source>small sales rooms</source>
        <translation type="unfinished">tiendas pequeñas</translation>
    </message>
    <message>
        <source>isolated lockers</source>
        <translation type="unfinished">pañoles aislados</translation>
    </message>
    <message>
        <source>Public spaces over 500 sq ft with combustible furnishings</source>
        <translation type="unfinished">Espacios públicos de más de 500 sq ft con mobiliario combustible</translation>
    </message>
    <message>
        <source>large lounges, dining rooms, sales rooms</source>
        <translation type="unfinished">salones grandes, comedores, tiendas</translation>
    </message>
    <message>
        <source>Washrooms, toilets and isolated pantries with incombustible fittings</source>
        <translation type="unfinished">Lavabos, aseos y oficios aislados con accesorios incombustibles</translation>
    </message>
    <message>
        <source>washrooms</source>
        <translation type="unfinished">lavabos</translation>
    </message>
    <message>
        <source>operating rooms</source>
        <translation type="unfinished">quirófanos</translation>
    </message>
    <message>
        <source>small laundries</source>
        <translation type="unfinished">lavanderías pequeñas</translation>
    </message>
    <message>
        <source>slop-sink lockers</source>
        <translation type="unfinished">pañoles de vertedero</translation>
    </message>
    <message>
        <source>Galleys, main pantries, storerooms and workshops</source>
        <translation type="unfinished">Cocinas, oficios principales, pañoles y talleres</translation>
    </message>
    <message>
        <source>galleys</source>
        <translation type="unfinished">cocinas</translation>
    </message>
    <message>
        <source>workshops, large laundries, mail and baggage rooms</source>
        <translation type="unfinished">talleres, lavanderías grandes, locales de correo y equipajes</translation>
    </message>
    <message>
        <source>paint and lamp rooms</source>
        <translation type="unfinished">pañoles de pinturas y de luces</translation>
    </message>
    <message>
        <source>main machinery</source>
        <translation type="unfinished">maquinaria principal</translation>
    </message>
    <message>
        <source>auxiliary rooms with engines or oil units</source>
        <translation type="unfinished">locales auxiliares con motores o equipos de combustible</translation>
    </message>
    <message>
        <source>fuel filling stations</source>
        <translation type="unfinished">puestos de toma de combustible</translation>
    </message>
    <message>
        <source>Dry cargo spaces</source>
        <translation type="unfinished">Espacios de carga seca</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo, trunks</source>
        <translation type="unfinished">bodegas, carga refrigerada, troncos</translation>
    </message>
    <message>
        <source>Fuel and water tanks and voids</source>
        <translation type="unfinished">Tanques de combustible y de agua y espacios perdidos</translation>
    </message>
    <message>
        <source>tanks, voids</source>
        <translation type="unfinished">tanques, espacios perdidos</translation>
    </message>
    <message>
        <source>auxiliary rooms with pumps, fans, steering gear and no combustible storage</source>
        <translation type="unfinished">locales auxiliares con bombas, ventiladores o aparato de gobierno y sin almacenamiento de combustibles</translation>
    </message>
    <message>
        <source>cargo oil tanks not also used for dry cargo</source>
        <translation type="unfinished">tanques de carga de hidrocarburos no usados también para carga seca</translation>
    </message>
    <message>
        <source>Open decks and enclosed promenades (not safety areas)</source>
        <translation type="unfinished">Cubiertas expuestas y paseos cerrados (no zonas de seguridad)</translation>
    </message>
    <message>
        <source>open deck away from boat stations</source>
        <translation type="unfinished">cubierta expuesta lejos de los puestos de botes</translation>
    </message>
    <message>
        <source>Exam: the whole practice vessel</source>
        <translation type="unfinished">Examen: todo el buque de práctica</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Primeros pasos: cronometrar un cierre</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Primeros pasos: mirar antes de que se mueva</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Puertas correderas y su alarma</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Retenidas abiertas en una escalera</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Dos hojas, y puertas de vaivén</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Costado del buque hasta la flotación mínima, y costados de superestructuras y casetas, bajo o junto a balsas y rampas de evacuación: basta A-30.</translation>
    </message>
    <message>
        <source>Category 6, 7, 8 and 9 rooms wholly inside the outer boundary of an assembly station: their bulkheads may be B-0. Audio, video and lighting control positions may count as part of the assembly station.</source>
        <translation type="unfinished">Locales de categoría 6, 7, 8 y 9 situados por entero dentro del contorno exterior de un puesto de reunión: sus mamparos pueden ser B-0. Los puestos de mando de sonido, imagen y luces pueden contar como parte del puesto de reunión.</translation>
    </message>
    <message>
        <source>No special requirement for material or integrity.</source>
        <translation type="unfinished">Sin requisito especial de material ni de integridad.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.2.2 (bulkheads inside a main vertical zone) and 2.2.5 (stairway and lift enclosures).</source>
        <translation type="unfinished">Cuál de los dos valores se aplica se deduce de 2.2.2 (mamparos dentro de una zona vertical principal) y 2.2.5 (troncos de escaleras y ascensores).</translation>
    </message>
    <message>
        <source>Same category number: the rated division is needed only if the two spaces serve different purposes (galley/galley none; galley/paint room A-0).</source>
        <translation type="unfinished">Mismo número de categoría: la división de la tabla solo hace falta si los dos espacios tienen fines distintos (cocina/cocina ninguna; cocina/pañol de pinturas A-0).</translation>
    </message>
    <message>
        <source>Bulkhead between wheelhouse and chart room may be B-0. Partitions between the bridge and a safety centre inside the bridge need no rating.</source>
        <translation type="unfinished">El mamparo entre la caseta de gobierno y el cuarto de derrota puede ser B-0. Los tabiques entre el puente y un centro de seguridad dentro del puente no necesitan clase.</translation>
    </message>
    <message>
        <source>Two values: the higher applies where the zone has no automatic sprinklers, the lower where it has them; between a sprinklered and an unsprinklered zone the higher applies (2.2.4.2.3, 2.2.4.2.4).</source>
        <translation type="unfinished">Dos valores: rige el mayor donde la zona no tiene rociadores automáticos, el menor donde los tiene; entre una zona con rociadores y otra sin ellos rige el mayor (2.2.4.2.3, 2.2.4.2.4).</translation>
    </message>
    <message>
        <source>Where the bulkhead is a main vertical zone boundary (2.2.1.1.2), read B-0 and C in table 9.3 as A-0.</source>
        <translation type="unfinished">Donde el mamparo es contorno de una zona vertical principal (2.2.1.1.2), lea B-0 y C de la tabla 9.3 como A-0.</translation>
    </message>
    <message>
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished">Valor vigente para buques construidos el 1 de julio de 2014 o posteriormente; los más antiguos conservan al menos el valor anterior.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished">La división debe ser de acero o equivalente, pero no necesita ser de clase A. Donde una cubierta (que no sea expuesta) la atraviesen cables, tuberías o conductos, el paso debería hacerse estanco a las llamas y al humo. Un puesto de control con generador de emergencia puede tener tomas de aire a cubierta expuesta sin cierres, salvo que haya un sistema fijo de gas. Donde la cubierta es contorno de una zona vertical principal (2.2.1.1.2), lea * de la tabla 9.4 como A-0, salvo las categorías 8 y 10.</translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished">Sin requisitos para estos mamparos con los métodos de protección IIC y IIIC.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Los mamparos entre caseta de gobierno, cuarto de derrota y cuarto de radio pueden ser B-0.</translation>
    </message>
    <message>
        <source>Cargo spaces for dangerous goods: regulation 19.3.8 governs.</source>
        <translation type="unfinished">Espacios de carga para mercancías peligrosas: rige la regla 19.3.8.</translation>
    </message>
    <message>
        <source>Boundaries between ro-ro spaces must be able to be closed reasonably gastight and be A class so far as reasonable and practicable, if the Administration finds little or no fire risk.</source>
        <translation type="unfinished">Los contornos entre espacios de carga rodada deben poder cerrarse de modo razonablemente hermético y ser de clase A en lo razonable y posible, si la Administración aprecia pequeño o nulo riesgo de incendio.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted.</source>
        <translation type="unfinished">La división debe ser de acero o equivalente, pero no necesita ser de clase A. Donde una cubierta (que no sea expuesta) la atraviesen cables, tuberías o conductos, el paso debería hacerse estanco a las llamas y al humo. Un puesto de control con generador de emergencia puede tener tomas de aire a cubierta expuesta sin cierres, salvo que haya un sistema fijo de gas.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">El mamparo o cubierta entre cámara de bombas de carga y espacio de categoría A para máquinas puede atravesarse con prensaestopas de ejes de bombas y similares, si se asegura una hermeticidad duradera.</translation>
    </message>
    <message>
        <source>Toilet boundaries may be reduced to C&apos;.</source>
        <translation type="unfinished">Los contornos de aseos se pueden reducir a C&apos;.</translation>
    </message>
    <message>
        <source>C is enough between two like spaces (two storerooms); unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">Basta C entre dos espacios iguales (dos pañoles); los distintos (pañol y taller) necesitan A-0.</translation>
    </message>
    <message>
        <source>No division needed inside one stairtower; two separate stairtowers need A-0 between them.</source>
        <translation type="unfinished">No hace falta división dentro de una misma torre de escalera; dos torres separadas necesitan A-0 entre ellas.</translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">Basta C entre dos espacios iguales; los distintos (pañol y taller) necesitan A-0.</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">¿Es puerta de un tronco de escalera?</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">¿Puerta y marco de acero o equivalente?</translation>
    </message>
    <message>
        <source>A door that is normally kept locked was found locked</source>
        <translation type="unfinished">Una puerta que se mantiene normalmente cerrada con llave se halló cerrada con llave</translation>
    </message>
    <message>
        <source>Was it found locked?</source>
        <translation type="unfinished">¿Se halló cerrada con llave?</translation>
    </message>
    <message>
        <source>No key is needed in the direction of escape; a cabin door needs none from inside</source>
        <translation type="unfinished">No hace falta llave en el sentido de la evacuación; en una puerta de camarote, tampoco desde dentro</translation>
    </message>
    <message>
        <source>Opens in the direction of escape without a key?</source>
        <translation type="unfinished">¿Se abre sin llave en el sentido de la evacuación?</translation>
    </message>
    <message>
        <source>Shut and latch it, then go through in the direction of escape with empty hands. Good: it opens. Bad: a key, a code or a tool is needed, or it is locked.</source>
        <translation type="unfinished">Ciérrela con el pestillo encajado y pase en el sentido de la evacuación con las manos vacías. Bien: se abre. Mal: hace falta llave, código o herramienta, o está cerrada con llave.</translation>
    </message>
    <message>
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Altura de la apertura rápida sobre la cubierta</translation>
    </message>
    <message>
        <source>Can be released at the door</source>
        <translation type="unfinished">Se puede accionar en la puerta</translation>
    </message>
    <message>
        <source>Does the switch at the door release it?</source>
        <translation type="unfinished">¿La acciona el interruptor de la puerta?</translation>
    </message>
    <message>
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">El puente de navegación indica si está cerrada una puerta contraincendios de entrada o salida de un espacio de categoría especial</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Se cierra sola si falla su control</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">¿Tiene paso de manguera que se cierra solo?</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part of the door, or under it</source>
        <translation type="unfinished">Abertura de ventilación solo en la parte inferior de la puerta, o bajo ella</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part, or none?</source>
        <translation type="unfinished">¿Abertura de ventilación solo en la parte inferior, o ninguna?</translation>
    </message>
    <message>
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se cierra de forma positiva a motor, o sola contra una inclinación de 3,5 grados</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">¿Se cierra de forma positiva, a motor o sola?</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe and released remotely</source>
        <translation type="unfinished">Su dispositivo de retención es a prueba de fallos y se acciona a distancia</translation>
    </message>
    <message>
        <source>Hold-back fail-safe, and released remotely?</source>
        <translation type="unfinished">¿Dispositivo de retención a prueba de fallos y accionado a distancia?</translation>
    </message>
    <message>
        <source>It is closed or released from outside the space, at one place or as few as possible</source>
        <translation type="unfinished">Se cierra o se acciona desde fuera del espacio, en un solo lugar o en los menos posibles</translation>
    </message>
    <message>
        <source>Closed or released from outside the space?</source>
        <translation type="unfinished">¿Se cierra o se acciona desde fuera del espacio?</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">¿De acero o equivalente, y rellena de aislamiento aprobado donde su mamparo es A-15 o más?</translation>
    </message>
    <message>
        <source>Door in a B-class bulkhead: solid or hollow steel or equal metal; or a metal frame with glass panes; or incombustible and approved for it</source>
        <translation type="unfinished">Puerta en un mamparo de clase B: de acero macizo o hueco o metal equivalente; o marco metálico con paños de vidrio; o incombustible y aprobada para ello</translation>
    </message>
    <message>
        <source>Metal, glass in a metal frame, or incombustible and approved?</source>
        <translation type="unfinished">¿De metal, de vidrio en marco metálico, o incombustible y aprobada?</translation>
    </message>
    <message>
        <source>Door in a B-class boundary: solid or hollow steel or equal; or noncombustible and approved for it</source>
        <translation type="unfinished">Puerta en un contorno de clase B: de acero macizo o hueco o equivalente; o incombustible y aprobada para ello</translation>
    </message>
    <message>
        <source>Steel or equal, or noncombustible and approved?</source>
        <translation type="unfinished">¿De acero o equivalente, o incombustible y aprobada?</translation>
    </message>
    <message>
        <source>Door in a bulkhead that must be C class is of approved incombustible material</source>
        <translation type="unfinished">La puerta en un mamparo que debe ser de clase C es de material incombustible aprobado</translation>
    </message>
    <message>
        <source>Of approved incombustible material?</source>
        <translation type="unfinished">¿De material incombustible aprobado?</translation>
    </message>
    <message>
        <source>Door in a C-class boundary is noncombustible</source>
        <translation type="unfinished">La puerta en un contorno de clase C es incombustible</translation>
    </message>
    <message>
        <source>Noncombustible?</source>
        <translation type="unfinished">¿Incombustible?</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">¿De madera dura de al menos 44,5 mm (1 3/4 in) de espesor?</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Una puerta a cubierta de intemperie en un contorno de clase A puede ser de madera dura, de al menos 45 mm (1,75 in) de espesor</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">¿De madera dura de al menos 45 mm (1,75 in) de espesor?</translation>
    </message>
    <message>
        <source>A door that only crew use</source>
        <translation type="unfinished">Una puerta que solo usa la tripulación</translation>
    </message>
    <message>
        <source>Do only crew use it?</source>
        <translation type="unfinished">¿La usa solo la tripulación?</translation>
    </message>
    <message>
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Ancho libre de una puerta usada como medio de evacuación: al menos 810 mm (32 in)</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Ancho libre de una puerta que solo la tripulación usa como medio de evacuación: al menos 710 mm (28 in)</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Se acciona desde el puesto de control y en la puerta; se cierra si falla el sistema de control</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">El dispositivo de retención, si lo hay, se acciona desde el puesto de control y en la puerta, y cuando falla su energía</translation>
    </message>
    <message>
        <source>No hold-back hook at all</source>
        <translation type="unfinished">Sin ningún gancho de retención</translation>
    </message>
    <message>
        <source>Free of hold-back hooks?</source>
        <translation type="unfinished">¿Sin ganchos de retención?</translation>
    </message>
    <message>
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Ancho libre de una puerta que da a una escalera: al menos 711,2 mm (28 in)</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">¿Bastante ancha para las personas a que sirve?</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Donde una hoja debe cerrar siempre primero, la segunda tiene un tope de al menos 12,7 mm (1/2 in)</translation>
    </message>
    <message>
        <source>Where the leaves lap, measure the stop that the second leaf shuts against. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">Donde solapan las hojas, mida el tope contra el que cierra la segunda. 1/2 pulgada en el punto más estrecho.</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class bulkhead has a latch</source>
        <translation type="unfinished">Una puerta en un mamparo de clase A o de clase B tiene pestillo</translation>
    </message>
    <message>
        <source>Is there a latch?</source>
        <translation type="unfinished">¿Hay pestillo?</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class boundary has a latch</source>
        <translation type="unfinished">Una puerta en un contorno de clase A o de clase B tiene pestillo</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing.</source>
        <translation type="unfinished">Mire el canto de la hoja. Bien: un pestillo y su cerradero en el marco. Mal: un rodillo, un imán o nada.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Su pestillo se maneja desde uno y otro lado</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Salida del pestillo de al menos 19,05 mm (3/4 in) en un mamparo de clase A, 9,525 mm (3/8 in) en un mamparo de clase B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Hueco inferior sobre el umbral o el revestimiento de cubierta de 12,7 mm (1/2 in) como máximo en un mamparo de clase A, 25,4 mm (1 in) en un mamparo de clase B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Hueco inferior sobre el umbral o el revestimiento de cubierta de 12,7 mm (1/2 in) como máximo en un contorno de clase A, 25 mm (1 in) en un contorno de clase B</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Ninguna alfombra ni moqueta atraviesa el vano de la puerta</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Mire la cubierta bajo la puerta abierta. Bien: umbral, cubierta desnuda, linóleo o similar. Mal: una alfombra o moqueta que pasa de un lado al otro.</translation>
    </message>
    <message>
        <source>How far the shut leaf laps over the stop of its frame, at the sides and the top; double doors too. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">Cuánto solapa la hoja cerrada sobre el tope de su marco, a los lados y arriba; también en puertas de dos hojas. 1/2 pulgada en el punto más estrecho.</translation>
    </message>
    <message>
        <source>The frame is of rigid construction</source>
        <translation type="unfinished">El marco es de construcción rígida</translation>
    </message>
    <message>
        <source>Is the frame rigid?</source>
        <translation type="unfinished">¿Es rígido el marco?</translation>
    </message>
    <message>
        <source>Push at head and sides of the frame, and look at its fixings. Good: it does not give. Bad: it moves, or is loose from the bulkhead.</source>
        <translation type="unfinished">Empuje el marco arriba y a los lados, y mire sus fijaciones. Bien: no cede. Mal: se mueve, o está suelto del mamparo.</translation>
    </message>
    <message>
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">¿Se permite el vaivén por el uso del espacio?</translation>
    </message>
    <message>
        <source>Between galley or pantry and messroom or dining room?</source>
        <translation type="unfinished">¿Entre cocina u oficio y comedor?</translation>
    </message>
    <message>
        <source>Look at both sides of the door. Good: galley or pantry on one side, messroom or dining room on the other. Bad: anywhere else in an A-class boundary.</source>
        <translation type="unfinished">Mire ambos lados de la puerta. Bien: cocina u oficio a un lado, comedor de tripulación o de pasaje al otro. Mal: cualquier otro lugar de un contorno de clase A.</translation>
    </message>
    <message>
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">¿Solo la tripulación puede llegar al espacio y solo ella usa la puerta?</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) se cierra sola contra una escora de 3,5 grados</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) no tiene gancho de retención</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">¿Aguanta el pestillo 0,07 kPa desde abajo?</translation>
    </message>
    <message>
        <source>A door without glass</source>
        <translation type="unfinished">Una puerta sin vidrio</translation>
    </message>
    <message>
        <source>Is the door without glass?</source>
        <translation type="unfinished">¿Es una puerta sin vidrio?</translation>
    </message>
    <message>
        <source>All glass in the door is wired glass</source>
        <translation type="unfinished">Todo el vidrio de la puerta es vidrio armado</translation>
    </message>
    <message>
        <source>Is all its glass wired?</source>
        <translation type="unfinished">¿Es armado todo su vidrio?</translation>
    </message>
    <message>
        <source>Look through each pane for the wires. Bad: cracked, or no wire in it.</source>
        <translation type="unfinished">Busque los hilos al trasluz en cada paño de vidrio. Mal: agrietado, o sin hilo dentro.</translation>
    </message>
    <message>
        <source>Glass in a door to the open deck is wired where it opens onto a lifeboat embarkation or lowering place</source>
        <translation type="unfinished">El vidrio de una puerta a cubierta expuesta es armado donde da a un lugar de embarco o arriado de botes salvavidas</translation>
    </message>
    <message>
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Todo vidrio de una puerta tiene al menos 6,35 mm (1/4 in) de espesor</translation>
    </message>
    <message>
        <source>Glass in a door sits in a steel or equal metal frame, held by metal beads or angles</source>
        <translation type="unfinished">El vidrio de una puerta va en un marco de acero o metal equivalente, sujeto con junquillos o angulares metálicos</translation>
    </message>
    <message>
        <source>Glass held by metal, in a metal frame?</source>
        <translation type="unfinished">¿Vidrio sujeto con metal, en marco metálico?</translation>
    </message>
    <message>
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Una puerta decorativa contigua es de material incombustible aprobado, no la estorba y, en una vía principal de evacuación, se abre en el mismo sentido</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Una puerta decorativa contigua es incombustible o de madera dura, no la estorba y se abre en el mismo sentido; ninguna en escaleras ni torres de escalera</translation>
    </message>
    <message>
        <source>Metal plate on a vertical edge of the leaf, screwed or riveted, with maker, class, type approval number and drawing number</source>
        <translation type="unfinished">Placa de metal en un canto vertical de la hoja, atornillada o remachada, con fabricante, clase, número de homologación y número de plano</translation>
    </message>
    <message>
        <source>Metal plate on the edge of the leaf, with all four entries?</source>
        <translation type="unfinished">¿Placa de metal en el canto de la hoja, con los cuatro datos?</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, ss. 103, 106)</source>
        <translation type="unfinished">un buque construido antes del 3 de febrero de 2017 puede conservar su regla anterior hasta que se sustituya la puerta o se reforme el buque (SOR/2017-14, arts. 103 y 106)</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">un buque construido antes del 3 de febrero de 2017 puede conservar su regla anterior hasta que se sustituya la puerta o se reforme el buque (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">¿Hueco entre hoja y marco no mayor que en su ensayo al fuego?</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">¿Hueco entre hoja y marco tan pequeño como puede ser?</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">La puerta no tiene rejilla ni persiana</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut</source>
        <translation type="unfinished">Razonablemente estanca a los gases cuando está cerrada</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut?</source>
        <translation type="unfinished">¿Razonablemente estanca a los gases cuando está cerrada?</translation>
    </message>
    <message>
        <source>Gastight when shut?</source>
        <translation type="unfinished">¿Estanca a los gases cuando está cerrada?</translation>
    </message>
    <message>
        <source>The leaf overlaps its frame</source>
        <translation type="unfinished">La hoja solapa su marco</translation>
    </message>
    <message>
        <source>Does the leaf overlap its frame?</source>
        <translation type="unfinished">¿Solapa la hoja su marco?</translation>
    </message>
    <message>
        <source>Shut it and look at the edge from both sides. Good: leaf or stop covers the gap on every side that has a frame. Bad: you can look straight through between leaf and frame.</source>
        <translation type="unfinished">Ciérrela y mire el borde desde ambos lados. Bien: hoja o tope cubre el hueco en cada lado con marco. Mal: se ve a través entre hoja y marco.</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Se cierra sola</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">si el art. 158 del Reglamento de construcción de cascos es la regla anterior que este buque conserva (SOR/2017-14, arts. 103 y 203)</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">¿La acciona la caseta de gobierno?</translation>
    </message>
    <message>
        <source>Canadian day boats: of 24 m or more, without berths, for fewer than 100 passengers, in sheltered waters or on near coastal voyages class 2, limited (part 2, ss. 201, 212, 218)</source>
        <translation type="unfinished">Embarcaciones de día canadienses: de 24 m o más, sin literas, para menos de 100 pasajeros, en aguas abrigadas o en viajes costeros clase 2 limitados (parte 2, arts. 201, 212, 218)</translation>
    </message>
    <message>
        <source>berths and voyage decide whether this ship counts as one of more than 36 passengers (SOR/2017-14, s. 102(3))</source>
        <translation type="unfinished">literas y viaje deciden si este buque cuenta como de más de 36 pasajeros (SOR/2017-14, art. 102(3))</translation>
    </message>
    <message>
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">¿Puede cerrarse en el lugar?</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened on the spot and closes safely again</source>
        <translation type="unfinished">Tras el cierre a distancia puede reabrirse en el lugar y vuelve a cerrarse con seguridad</translation>
    </message>
    <message>
        <source>Re-opens on the spot after remote closing, and closes safely again?</source>
        <translation type="unfinished">¿Tras el cierre a distancia se reabre en el lugar y vuelve a cerrarse con seguridad?</translation>
    </message>
    <message>
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">el código dice &quot;should&quot; (debería)</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432; SOLAS III/19 y III/30 en la base de tratados del Gobierno neerlandés (BWBV0003264, abril de 2015)</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Todo buque, de cualquier pabellón y fecha</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Reglas de Taiwán sobre estructura contra incendios de buques, art. 27, a 9 de enero de 2018: una transposición nacional de la redacción de 1981/83 de SOLAS II-2/30</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Suena una alarma al accionarla desde el puesto de control</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">¿Sonó una alarma al accionarla el puesto de control?</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">¿Sale de un tronco de escalera?</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Los cambios posteriores a 2015. Las reglas anteriores al 26 de mayo de 1965, que los buques más antiguos pueden conservar.</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">La edición anual de 2015, cada sección en su página de una copia pública (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Los cambios posteriores a 2015. Las reglas del 10 de marzo de 1996, que los buques más antiguos pueden conservar.</translation>
    </message>
    <message>
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted, with maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Los cantos verticales de la hoja abierta. Bien: una placa de metal, atornillada o remachada, con fabricante, clase, número de homologación y número de plano. Mal: ninguna, una pegatina, pintada, falta un dato.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in the door&apos;s fire test</source>
        <translation type="unfinished">Hueco entre hoja y marco no mayor que en el ensayo al fuego de la puerta</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Ask for its fire test report: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or the tested gap is not known.</source>
        <translation type="unfinished">Todo alrededor de la hoja cerrada, con una galga de espesores. Pida el informe de su ensayo al fuego: indica el hueco ensayado. Bien: no mayor en ningún punto. Mal: mayor, o no se conoce el hueco ensayado.</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or one side gapes.</source>
        <translation type="unfinished">Todo alrededor de la hoja cerrada, con una galga de espesores. Bien: uniforme, y no mayor de lo que la hoja necesita para moverse con libertad. Mal: se ve luz, o un lado queda muy abierto.</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable</source>
        <translation type="unfinished">el texto no da cifra del menor hueco viable</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">el texto no da cifra del menor hueco viable; un buque construido antes del 3 de febrero de 2017 puede conservar su regla anterior hasta que se sustituya la puerta o se reforme el buque (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>Free of grilles and louvres?</source>
        <translation type="unfinished">¿Sin rejillas ni persianas?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or air holes, open or blanked off.</source>
        <translation type="unfinished">Ambas caras de la hoja, de arriba abajo. Bien: ninguna. Mal: una rejilla, una persiana o agujeros de aire, abiertos o tapados.</translation>
    </message>
    <message>
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, hardly any draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Ciérrela, ponga una lámpara al otro lado y mire a lo largo de los bordes; note si hay corriente de aire. Bien: sin luz, apenas corriente. Mal: luz, una junta que no toca, un agujero.</translation>
    </message>
    <message>
        <source>A door of a category A machinery space is gastight when shut</source>
        <translation type="unfinished">La puerta de un espacio de categoría A para máquinas es estanca a los gases cuando está cerrada</translation>
    </message>
    <message>
        <source>No vent opening in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Sin abertura de ventilación en la puerta de un tronco de escalera ni bajo ella</translation>
    </message>
    <message>
        <source>Free of vent openings, in and under it?</source>
        <translation type="unfinished">¿Sin aberturas de ventilación, ni en ella ni debajo?</translation>
    </message>
    <message>
        <source>The whole shut leaf and its lower edge. Good: no grille, holes or undercut for air. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Toda la hoja cerrada y su borde inferior. Bien: sin rejilla, agujeros ni hueco inferior para el aire. Mal: una rejilla en cualquier punto, o un hueco dejado debajo para el aire.</translation>
    </message>
    <message>
        <source>Every hose port fitted: self-closing, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Todo paso de manguera instalado: de cierre automático, 150 × 150 mm libres con la puerta cerrada, tan resistente al fuego como la puerta</translation>
    </message>
    <message>
        <source>A hose port, if fitted: self-closing, 150 × 150 mm</source>
        <translation type="unfinished">Un paso de manguera, si lo hay: de cierre automático, 150 × 150 mm</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. The text gives no angle. Space not of category A: n/a.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medio abrir y desde un ángulo pequeño. Bien: se cierra del todo cada vez. El texto no da ángulo. Espacio que no es de categoría A: n/p.</translation>
    </message>
    <message>
        <source>Vent opening in or under a corridor door no more than 0.05 m², with a non-combustible grille</source>
        <translation type="unfinished">Abertura de ventilación en la puerta de un pasillo o bajo ella de no más de 0,05 m², con rejilla incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible. Not a corridor door: n/a.</source>
        <translation type="unfinished">La rejilla de la hoja o el hueco inferior. Cuente solo el área abierta entre las lamas; 0 si no hay. La rejilla debe ser incombustible. No es puerta de pasillo: n/p.</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half of a corridor door, or under it</source>
        <translation type="unfinished">Abertura de ventilación solo en la mitad inferior de la puerta de un pasillo, o bajo ella</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half, or none?</source>
        <translation type="unfinished">¿Abertura de ventilación solo en la mitad inferior, o ninguna?</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a corridor door: n/a.</source>
        <translation type="unfinished">Busque cada abertura de ventilación de la hoja. Bien: en la mitad inferior, bajo ella, o ninguna. Mal: una rejilla o agujeros en la mitad superior. No es puerta de pasillo: n/p.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule, as far as read, gives no angle</source>
        <translation type="unfinished">Se cierra sola; la regla anterior, hasta donde se leyó, no da ángulo</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medio abrir y desde un ángulo pequeño. Bien: se cierra del todo cada vez. Mal: queda entreabierta.</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe: the door closes when the hold-back fails</source>
        <translation type="unfinished">Su dispositivo de retención es a prueba de fallos: la puerta se cierra cuando falla el dispositivo de retención</translation>
    </message>
    <message>
        <source>Its hold-back is released at the door</source>
        <translation type="unfinished">Su dispositivo de retención se acciona en la puerta</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens.</source>
        <translation type="unfinished">Accione el interruptor o la manija en la puerta. Bien: la puerta queda accionada. Mal: no pasa nada.</translation>
    </message>
    <message>
        <source>Its hold-back is released from the wheelhouse</source>
        <translation type="unfinished">Su dispositivo de retención se acciona desde la caseta de gobierno</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the wheelhouse releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Luego la caseta de gobierno acciona la puerta o su grupo. Bien: queda accionada y se cierra. Mal: queda abierta.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans take precedence over these requirements; changes after 25 July 2025 have not been checked.</source>
        <translation type="unfinished">Transport Canada, sus inspectores y los planos aprobados prevalecen sobre estos requisitos; los cambios posteriores al 25 de julio de 2025 no se han comprobado.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and so do these requirements (ss. 101, 102, 120); a ship built before 1 July 2002 may keep the structural fire protection of its day, except for part E, replaced parts and a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Buques de pasaje canadienses con certificados de convenio: los obliga SOLAS II-2, y también estos requisitos (arts. 101, 102, 120); un buque construido antes del 1 de julio de 2002 puede conservar la protección estructural contra incendios de su época, salvo la parte E, las piezas sustituidas y una reforma importante (arts. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, as of 23 July 2026), everything on doors</source>
        <translation type="unfinished">Leyes consolidadas de Canadá en XML (github.com/justicecanada/laws-lois-xml, a 23 de julio de 2026), todo lo relativo a puertas</translation>
    </message>
    <message>
        <source>The law of the day for ships built before 1 July 2002</source>
        <translation type="unfinished">La legislación de su época para buques construidos antes del 1 de julio de 2002</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, except s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Las reglas anteriores que puede conservar un buque construido antes del 3 de febrero de 2017, salvo el art. 158 del Reglamento de construcción de cascos</translation>
    </message>
    <message>
        <source>The door has the class of the partition it is fitted in; a watertight door needs no insulation</source>
        <translation type="unfinished">La puerta tiene la clase del tabique en que está instalada; una puerta estanca no necesita aislamiento</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del tabique que la rodea. Bien: la clase de la puerta es al menos igual de alta. Una puerta estanca no necesita aislamiento (art. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>Closes by itself; the text gives no angle, time or speed</source>
        <translation type="unfinished">Se cierra sola; el texto no da ángulo, tiempo ni velocidad</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The text gives no angle, time or speed.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medio abrir y desde un ángulo pequeño. Bien: se cierra del todo cada vez. Mal: queda entreabierta. El texto no da ángulo, tiempo ni velocidad.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Si se mantiene abierta en servicio, puede cerrarse en el lugar</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released and closes. Bad: nothing happens.</source>
        <translation type="unfinished">Accione el interruptor o la manija en la puerta. Bien: la puerta queda accionada y se cierra. Mal: no pasa nada.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed from a permanently manned place</source>
        <translation type="unfinished">Si se mantiene abierta en servicio, puede cerrarse desde un lugar con dotación permanente</translation>
    </message>
    <message>
        <source>Can it be closed from the permanently manned place?</source>
        <translation type="unfinished">¿Puede cerrarse desde el lugar con dotación permanente?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the permanently manned place releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Luego el lugar con dotación permanente acciona la puerta o su grupo. Bien: queda accionada y se cierra. Mal: queda abierta.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which replaced this text, has not been read.</source>
        <translation type="unfinished">Decide el organismo de inspección que expide el certificado del buque; ES-TRIN, que sustituyó este texto, no se ha leído.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, certified under Directive 2006/87/EC</source>
        <translation type="unfinished">Buques de pasaje en las vías navegables interiores de la Unión Europea, certificados según la Directiva 2006/87/CE</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations outside the codes); its end date is from memory</source>
        <translation type="unfinished">Orden francesa de 30 de diciembre de 2008, anexo, art. 15.11(8) y (10) (github.com/etalab, leyes y reglamentos fuera de los códigos); su fecha final es de memoria</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which replaced it; what existing vessels were allowed; the tables of partitions</source>
        <translation type="unfinished">El capítulo 19 de ES-TRIN, que lo sustituyó; qué se permitía a los buques existentes; las tablas de tabiques</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The code asks for release at the door, not from both sides.</source>
        <translation type="unfinished">Accione el interruptor o la manija en la puerta. Bien: la puerta queda accionada. Mal: no pasa nada. El código pide el accionamiento en la puerta, no desde ambos lados.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes later than LY3 have not been read.</source>
        <translation type="unfinished">Decide la Administración que certifica el yate; los códigos posteriores a LY3 no se han leído.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified under LY3; the code says &quot;should&quot;, so the inspector decides on a failure</source>
        <translation type="unfinished">Yates comerciales grandes de 500 toneladas de arqueo bruto o más certificados según LY3; el código dice &quot;should&quot; (debería), así que si falla decide el inspector</translation>
    </message>
    <message>
        <source>A page of imorules.com, which had paragraph 14B.2.7.4 only as far as sub-item (e)</source>
        <translation type="unfinished">Una página de imorules.com, que tenía el párrafo 14B.2.7.4 solo hasta el apartado (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates when LY3 was in force; later codes. Other SOLAS requirements are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 tras el apartado (e), y los demás párrafos sobre protección contra incendios; las fechas en que LY3 estuvo en vigor; los códigos posteriores. Los demás requisitos de SOLAS se muestran como recomendación.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration take precedence over these periods; no grace period is stated.</source>
        <translation type="unfinished">El plan de mantenimiento de la compañía y la Administración prevalecen sobre estos períodos; no se indica ningún plazo de gracia.</translation>
    </message>
    <message>
        <source>Lamps of the fire door control panels are tested</source>
        <translation type="unfinished">Se prueban las lámparas de los paneles de control de puertas contraincendios</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is operated locally</source>
        <translation type="unfinished">Cada puerta contraincendios de un mamparo de zona vertical principal se acciona localmente</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tested for proper release</source>
        <translation type="unfinished">Se prueba que las puertas contraincendios con mando a distancia se accionan bien</translation>
    </message>
    <message>
        <source>Blackout test: doors are held and released on the emergency source and the transitional battery</source>
        <translation type="unfinished">Prueba de apagón: las puertas se retienen y se accionan con la fuente de emergencia y la batería transitoria</translation>
    </message>
    <message>
        <source>Vessels of other flags, or under rules not named here: no text in this catalogue binds them, and everything shown is advice</source>
        <translation type="unfinished">Buques de otras banderas, o con reglas que no se nombran aquí: ningún texto de este catálogo los obliga, y todo lo que se muestra es recomendación</translation>
    </message>
    <message>
        <source>All texts of those flags</source>
        <translation type="unfinished">Todos los textos de esas banderas</translation>
    </message>
    <message>
        <source>Plate present and legible, and it agrees with the register</source>
        <translation type="unfinished">Placa presente y legible, y coincide con el registro</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, worn off, or not the class in the register. No SOLAS paragraph was found that requires a plate: if it is missing, ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Léala en la propia puerta. Mal: pintada, desgastada, o sin la clase del registro. No se encontró ningún párrafo de SOLAS que exija una placa: si falta, pida el certificado; no es un fallo.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip hazard</source>
        <translation type="unfinished">Umbral en su sitio, sin peligro de tropiezo</translation>
    </message>
    <message>
        <source>Sill in place, no trip hazard?</source>
        <translation type="unfinished">¿Umbral en su sitio, sin peligro de tropiezo?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: clear. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Toda la cubierta sobre la que se mueve la hoja, a ambos lados. Bien: despejada. Mal: pertrechos, carros, muebles, alfombras, basura.</translation>
    </message>
    <message>
        <source>Not held open by a wedge, rope or furniture</source>
        <translation type="unfinished">No la mantiene abierta una cuña, un cabo ni un mueble</translation>
    </message>
    <message>
        <source>The foot, handle and edge of the open leaf. Good: held only by its own hold-back. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">El pie, la manija y el borde de la hoja abierta. Bien: sujeta solo por su propio dispositivo de retención. Mal: una cuña, un cabo, muebles.</translation>
    </message>
    <message>
        <source>Seals intact and not painted over</source>
        <translation type="unfinished">Juntas intactas y sin pintar</translation>
    </message>
    <message>
        <source>Seals intact, unpainted?</source>
        <translation type="unfinished">¿Juntas intactas, sin pintar?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece missing.</source>
        <translation type="unfinished">Todo alrededor de la hoja. Bien: tiras a ras y sin cortes. Mal: pintadas, rotas, o falta un trozo.</translation>
    </message>
    <message>
        <source>Stand back and look at the gap above the leaf. Good: even, screws tight. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Apártese y mire el hueco sobre la hoja. Bien: uniforme, tornillos apretados. Mal: más ancho por un extremo, marcas brillantes de roce en el umbral.</translation>
    </message>
    <message>
        <source>Closer not leaking, arm connected</source>
        <translation type="unfinished">Cierrapuertas sin fugas, brazo conectado</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, arm secured at both ends. Bad: oil on the body or the leaf, arm loose or hanging.</source>
        <translation type="unfinished">En la parte superior de la hoja. Bien: seco, brazo firme en ambos extremos. Mal: aceite en el cuerpo o en la hoja, brazo flojo o colgando.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and undamaged</source>
        <translation type="unfinished">Carriles, rodillos y guías limpios y sin daños</translation>
    </message>
    <message>
        <source>Keep hands out while it can move. The rail at the head and the guide at the foot, end to end. Good: clear, every roller on the rail. Bad: dirt, a dent, a roller off.</source>
        <translation type="unfinished">Nunca meta las manos mientras la puerta pueda moverse. El carril superior y la guía inferior, de extremo a extremo. Bien: libres, cada rodillo en el carril. Mal: suciedad, una abolladura, un rodillo fuera.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Hoja, marco y vidrio sanos: sin agujeros, accesorios no aprobados, corrosión ni aislamiento suelto</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound?</source>
        <translation type="unfinished">¿Hoja, marco y vidrio sanos?</translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it moves evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Mire la hoja durante todo el movimiento. Bien: se mueve por igual hasta el final. Mal: se atasca, salta, o da un portazo al final.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other has shut</source>
        <translation type="unfinished">El selector de cierre retiene una hoja hasta que la otra se ha cerrado</translation>
    </message>
    <message>
        <source>Do the leaves close in the right order?</source>
        <translation type="unfinished">¿Se cierran las hojas en el orden correcto?</translation>
    </message>
    <message>
        <source>Keep fingers off the meeting edges. Open both leaves and let them go together. Good: one waits until the other has shut. Bad: the lip is caught on the wrong side.</source>
        <translation type="unfinished">No ponga los dedos en los bordes de encuentro. Abra ambas hojas y suéltelas a la vez. Bien: una espera hasta que la otra se ha cerrado. Mal: la solapa queda atrapada por el lado equivocado.</translation>
    </message>
    <message>
        <source>When it has shut and stopped moving, push it. Good: it holds. Bad: it gives way, as it would under the pressure of a fire.</source>
        <translation type="unfinished">Cuando se haya cerrado y parado, empújela. Bien: aguanta. Mal: cede, como cedería con la presión de un incendio.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Good: on contact the leaf stops and moves back. Bad: it keeps pushing.</source>
        <translation type="unfinished">Sostenga un bloque blando en la trayectoria, nunca una mano ni un pie. Bien: al contacto la hoja se para y retrocede. Mal: sigue empujando.</translation>
    </message>
    <message>
        <source>Common practice has no published source here: it never fails a door by itself; the inspector decides.</source>
        <translation type="unfinished">La práctica común no tiene aquí fuente publicada: una puerta nunca falla solo por ella; decide el inspector.</translation>
    </message>
    <message>
        <source>There is no published text.</source>
        <translation type="unfinished">No hay texto publicado.</translation>
    </message>
    <message>
        <source>The closing speed is controlled where needed so that no one is endangered; the older text gives no figure</source>
        <translation type="unfinished">La velocidad de cierre se controla donde haga falta para no poner a nadie en peligro; el texto anterior no da cifra</translation>
    </message>
    <message>
        <source>Closing speed controlled, so that no one is endangered?</source>
        <translation type="unfinished">¿Velocidad de cierre controlada, sin peligro para nadie?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text gives no seconds or metres per second.</source>
        <translation type="unfinished">Mírela cerrarse desde abierta del todo. Bien: se mueve por igual, y quien esté en medio tiene tiempo de apartarse. Mal: da un portazo o se dispara. El texto anterior no da segundos ni metros por segundo.</translation>
    </message>
    <message>
        <source>Only part of the texts before 1 July 2002 has been read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">Solo se ha leído una parte de los textos anteriores al 1 de julio de 2002: para un buque más antiguo, pida el plano aprobado y las reglas de su época.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration they meet at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Buques de pasaje SOLAS construidos antes del 1 de julio de 2002, que conservan el capítulo II-2 enmendado hasta su época (II-2/1.2.1 de 2015); tras una reparación o reforma cumplen al menos eso, tras una importante el texto nuevo en lo razonable (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres per second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 de 1981/83 impreso; las enmiendas de 1992 a las reglas 30, 41-1 y 41-2 (segundos, metros por segundo, alarma, fechas de adaptación): pida el plano aprobado; las tablas de integridad al fuego anteriores a 2002</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Buques de pasaje SOLAS construidos antes del 1 de julio de 2002 con espacios de categoría especial</translation>
    </message>
    <message>
        <source>An English copy of MSC.1(XLV) on the internet, of which only part was available: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Una copia inglesa de MSC.1(XLV) en internet, de la que solo se disponía de una parte: II-2/37.1.1.2 y 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, including the regulation on doors (30)</source>
        <translation type="unfinished">El resto de las enmiendas de 1981, incluida la regla sobre puertas (30)</translation>
    </message>
    <message>
        <source>Door, frame and securing means as fire-resistant as the division they are fitted in</source>
        <translation type="unfinished">Puerta, marco y medios de sujeción tan resistentes al fuego como la división en que están instalados</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del contorno que la rodea. Bien: la clase de la puerta es al menos igual de alta. Una puerta estanca no necesita aislamiento (9.4.1.1.3).</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class, like its boundary</source>
        <translation type="unfinished">Una puerta exterior que da a dispositivos de salvamento, a puestos de embarco o de reunión exteriores, a escaleras exteriores o a cubiertas de evacuación es de clase A, como su contorno</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A door of a stairway enclosure is exempt.</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del contorno que la rodea. Bien: la clase de la puerta es al menos igual de alta. Una puerta de un tronco de escalera está exenta.</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes, and no class is required. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Vea el plano de lucha contra incendios, o entre. Detrás hay un tronco de escalera: sí, y no se exige clase. Detrás hay cualquier otro espacio: no. Ninguna respuesta es un defecto.</translation>
    </message>
    <message>
        <source>Door and frame of steel or equivalent material</source>
        <translation type="unfinished">Puerta y marco de acero o material equivalente</translation>
    </message>
    <message>
        <source>Door and frame in good order, able to do what they were fitted for</source>
        <translation type="unfinished">Puerta y marco en buen estado, capaces de aquello para lo que se instalaron</translation>
    </message>
    <message>
        <source>Door and frame in good order?</source>
        <translation type="unfinished">¿Puerta y marco en buen estado?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, unapproved repairs. Applies to ships of any date.</source>
        <translation type="unfinished">Hoja, marco, bisagras, juntas y vidrio. Mal: agujeros, parches, abolladuras que impidan el cierre, piezas que faltan, reparaciones no aprobadas. Se aplica a buques de cualquier fecha.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard includes this door and its controls</source>
        <translation type="unfinished">El plan de mantenimiento de a bordo incluye esta puerta y sus mandos</translation>
    </message>
    <message>
        <source>Are the door and its controls in the maintenance plan?</source>
        <translation type="unfinished">¿Están la puerta y sus mandos en el plan de mantenimiento?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or computer, and find this door. Good: its tests and dates are there. Applies to ships of any date.</source>
        <translation type="unfinished">Pida el plan de mantenimiento del buque, en papel u ordenador, y busque esta puerta. Bien: constan sus pruebas y fechas. Se aplica a buques de cualquier fecha.</translation>
    </message>
    <message>
        <source>A bar or panel that releases the latch when pushed, on the side people come from. Good: at least half as wide as the leaf. Not a public space, or not latched: n/a.</source>
        <translation type="unfinished">Una barra o placa de empuje que suelta el pestillo al empujarla, en el lado por el que llega la gente. Bien: al menos la mitad del ancho de la hoja. No es espacio público, o sin pestillo: n/p.</translation>
    </message>
    <message>
        <source>The quick release is 760 to 1120 mm above the deck</source>
        <translation type="unfinished">La apertura rápida está de 760 a 1120 mm sobre la cubierta</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the quick release question first.</source>
        <translation type="unfinished">Desde la cubierta hasta el centro de la barra, con regla o cinta. Responda antes la pregunta de la apertura rápida.</translation>
    </message>
    <message>
        <source>The quick release operates at 67 N or less</source>
        <translation type="unfinished">La apertura rápida actúa con 67 N o menos</translation>
    </message>
    <message>
        <source>Force to operate the quick release</source>
        <translation type="unfinished">Fuerza para hacer actuar la apertura rápida</translation>
    </message>
    <message>
        <source>Keep feet clear of the leaf. Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch releases.</source>
        <translation type="unfinished">Mantenga los pies lejos de la hoja. Empuje con un dinamómetro en el centro de la barra, en el sentido de la evacuación, hasta que se suelte el pestillo.</translation>
    </message>
    <message>
        <source>Open and shut it yourself, unaided, from this side; then do the same from the other. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Ábrala y ciérrela usted solo, sin ayuda, desde este lado; luego haga lo mismo desde el otro. Mal: hacen falta dos personas o una herramienta.</translation>
    </message>
    <message>
        <source>Closes by itself, even against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se cierra sola, incluso contra una inclinación de 3,5 grados</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medio abrir y desde un ángulo pequeño. Bien: se cierra del todo cada vez. Mal: queda entreabierta. Lo de los 3,5 grados no se puede comprobar en un buque adrizado.</translation>
    </message>
    <message>
        <source>Stand clear of the leaf. Mark its first movement and the moment it is fully shut; on a double door, when the second leaf is shut.</source>
        <translation type="unfinished">Apártese de la hoja. Marque su primer movimiento y el instante en que queda cerrada del todo; en una puerta de dos hojas, cuando se cierra la segunda hoja.</translation>
    </message>
    <message>
        <source>Keep hands off the edge and out of the pocket. Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate.</source>
        <translation type="unfinished">Mantenga las manos lejos del borde y fuera del cajón de la hoja. Marque el primer movimiento y el instante del cierre: la abertura libre dividida por ese tiempo es la velocidad.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the control station releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Luego el puesto de control acciona la puerta o su grupo. Bien: queda accionada y se cierra. Mal: queda abierta.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors together or in groups</source>
        <translation type="unfinished">Se puede accionar desde un puesto de control, todas las puertas a la vez o por grupos</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door, on one side and then the other. Good: each releases the door. Bad: one side does nothing.</source>
        <translation type="unfinished">Accione el interruptor o la manija en la puerta, en un lado y luego en el otro. Bien: cada uno acciona la puerta. Mal: un lado no hace nada.</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The older text requires release at the door, not from both sides.</source>
        <translation type="unfinished">Accione el interruptor o la manija en la puerta. Bien: la puerta queda accionada. Mal: no pasa nada. El texto anterior exige el accionamiento en la puerta, no desde ambos lados.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function, so that the system does not reset itself</source>
        <translation type="unfinished">El interruptor de accionamiento tiene función de conexión-desconexión, para que el sistema no se reajuste solo</translation>
    </message>
    <message>
        <source>Does the switch stay as set, so that the system does not reset itself?</source>
        <translation type="unfinished">¿El interruptor se queda como se puso, de modo que el sistema no se reajusta solo?</translation>
    </message>
    <message>
        <source>Release, take your hand off and wait. Good: the door is not held again until someone resets the switch. Bad: the system resets itself.</source>
        <translation type="unfinished">Accione, retire la mano y espere. Bien: la puerta no vuelve a quedar retenida hasta que alguien reajusta el interruptor. Mal: el sistema se reajusta solo.</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: hooks, cabin hooks, eye plates with signs of use.</source>
        <translation type="unfinished">Mire detrás de la puerta abierta, en mamparo, hoja y cubierta. Mal: ganchos, aldabillas, cáncamos con señales de uso.</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Tras el cierre a distancia se puede reabrir localmente desde ambos lados, y luego se cierra sola</translation>
    </message>
    <message>
        <source>Keep clear of the leaf as it comes back. With the remote release still on, open it from this side and let go. Good: it opens, then shuts by itself.</source>
        <translation type="unfinished">Manténgase lejos de la hoja cuando vuelve a cerrarse. Con el accionamiento a distancia aún puesto, ábrala desde este lado y suéltela. Bien: se abre, y luego se cierra sola.</translation>
    </message>
    <message>
        <source>Is the panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">¿Es correcto el panel con la puerta abierta, entreabierta y cerrada?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: correct each time. Bad: it shows shut while the door is ajar.</source>
        <translation type="unfinished">Pregunte al puesto de control qué muestra su panel con la puerta abierta, entreabierta y cerrada. Bien: correcto cada vez. Mal: la muestra cerrada cuando la puerta está entreabierta.</translation>
    </message>
    <message>
        <source>Is the bridge panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">¿Es correcto el panel del puente con la puerta abierta, entreabierta y cerrada?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: correct each time. Bad: no lamp for this door, or it shows shut while the door is ajar.</source>
        <translation type="unfinished">Pregunte al puente qué muestra con la puerta abierta, entreabierta y cerrada. Bien: correcto cada vez. Mal: no hay lámpara de esta puerta, o la muestra cerrada cuando la puerta está entreabierta.</translation>
    </message>
    <message>
        <source>Its remote closing control is in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Su mando de cierre a distancia está en el mismo puesto central de control que las alarmas de detección, y el panel de ese puesto la muestra abierta o cerrada</translation>
    </message>
    <message>
        <source>Closing control and open/closed lamp in the central station?</source>
        <translation type="unfinished">¿Mando de cierre y lámpara de abierta/cerrada en el puesto central de control?</translation>
    </message>
    <message>
        <source>In the continuously manned station, beside the detection alarms: the control that closes this door, and its open/closed lamp.</source>
        <translation type="unfinished">En el puesto con dotación permanente, junto a las alarmas de detección: el mando que cierra esta puerta y su lámpara de abierta/cerrada.</translation>
    </message>
    <message>
        <source>It can be operated and monitored from the safety centre</source>
        <translation type="unfinished">Se puede accionar y vigilar desde el centro de seguridad</translation>
    </message>
    <message>
        <source>Operated and monitored from the safety centre?</source>
        <translation type="unfinished">¿Se acciona y vigila desde el centro de seguridad?</translation>
    </message>
    <message>
        <source>Its holding and release work on the emergency source, and on the transitional battery until that source takes over</source>
        <translation type="unfinished">Su retención y su accionamiento funcionan con la fuente de emergencia, y con la batería transitoria hasta que entra esa fuente</translation>
    </message>
    <message>
        <source>In the blackout test: held and released on emergency power?</source>
        <translation type="unfinished">En la prueba de apagón: ¿retenida y accionada con energía de emergencia?</translation>
    </message>
    <message>
        <source>Local accumulators can fully open and shut the door at least ten times after the power has failed</source>
        <translation type="unfinished">Los acumuladores locales pueden abrir y cerrar del todo la puerta al menos diez veces tras fallar la energía</translation>
    </message>
    <message>
        <source>Do the other doors still work when this one fails?</source>
        <translation type="unfinished">¿Siguen funcionando las otras puertas cuando falla esta?</translation>
    </message>
    <message>
        <source>Listen until the leaf is shut. Good: the alarm is still sounding when the door is fully shut. Bad: silence while the leaf is still moving.</source>
        <translation type="unfinished">Escuche hasta que la hoja esté cerrada. Bien: la alarma sigue sonando cuando la puerta queda cerrada del todo. Mal: silencio con la hoja aún en movimiento.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after moving back.</source>
        <translation type="unfinished">Sostenga un bloque blando en la trayectoria, nunca una mano ni un pie. Mida desde el punto de contacto hasta donde se para la hoja tras retroceder.</translation>
    </message>
    <message>
        <source>The latch engages automatically when the system releases the door</source>
        <translation type="unfinished">El pestillo encaja automáticamente cuando el sistema acciona la puerta</translation>
    </message>
    <message>
        <source>After release, when both leaves have stopped, push at the meeting edge. Good: neither opens. Bad: the bolt stops short of its strike.</source>
        <translation type="unfinished">Tras accionar, cuando ambas hojas se hayan parado, empuje en el borde de encuentro. Bien: no se abre ninguna. Mal: el pestillo no llega a su cerradero.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjustment</source>
        <translation type="unfinished">Los componentes del control local son accesibles para mantenimiento y ajuste</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens, with room for a hand and a tool. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Busque el interruptor, la válvula o la caja de control propios de la puerta. Bien: la tapa se abre, con sitio para una mano y una herramienta. Mal: empotrado, obstruido o pegado con pintura.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 °C, and to keep the door shut above that</source>
        <translation type="unfinished">El sistema de control está aprobado para funcionar en un incendio: 60 min a 200 °C, y para mantener la puerta cerrada por encima de eso</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Paso de manguera de cierre automático, 150 × 150 mm libres con la puerta cerrada, tan resistente al fuego como la puerta</translation>
    </message>
    <message>
        <source>Hose port 150 × 150 mm clear, and does it shut by itself?</source>
        <translation type="unfinished">¿Paso de manguera de 150 × 150 mm libres, y se cierra solo?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 × 150 mm clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Puerta cerrada, borde inferior, lado opuesto a las bisagras; en una puerta corredera, junto a la abertura. Levante la tapa y suéltela. Bien: 150 × 150 mm libres, y la tapa cae cerrada. Mal: queda levantada.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text gives no size</source>
        <translation type="unfinished">Paso de manguera de cierre automático; el texto anterior no da tamaño</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. No size is given for a ship of this date.</source>
        <translation type="unfinished">Puerta cerrada, borde inferior, lado opuesto a las bisagras. Levante la tapa y suéltela. Bien: cae cerrada. Mal: queda levantada, o no hay paso. No se da tamaño para un buque de esta fecha.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">9.4.1.1.8 nombra escaleras, espacios públicos y mamparos de zona; el registro no dice si esta puerta está en un espacio público</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a feeler gauge or a rule.</source>
        <translation type="unfinished">No meta los dedos bajo una hoja que pueda moverse. El punto más ancho bajo la puerta cerrada, con una galga de espesores o una regla.</translation>
    </message>
    <message>
        <source>At the foot of the shut door. Good: a non-combustible sill, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Al pie de la puerta cerrada. Bien: un umbral incombustible, y la moqueta o el vinilo acaban en él. Mal: el revestimiento sigue bajo la hoja.</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a rule.</source>
        <translation type="unfinished">No meta los dedos bajo una hoja que pueda moverse. El punto más ancho bajo la puerta cerrada, con una regla.</translation>
    </message>
    <message>
        <source>B-class door of non-combustible material</source>
        <translation type="unfinished">Puerta de clase B de material incombustible</translation>
    </message>
    <message>
        <source>Door of non-combustible material?</source>
        <translation type="unfinished">¿Puerta de material incombustible?</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m² net, with a non-combustible grille</source>
        <translation type="unfinished">Abertura de ventilación en la puerta o bajo ella de no más de 0,05 m² netos, con rejilla incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible.</source>
        <translation type="unfinished">La rejilla de la hoja o el hueco inferior. Cuente solo el área abierta entre las lamas; 0 si no hay. La rejilla debe ser incombustible.</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Busque cada abertura de ventilación de la hoja. Bien: en la parte baja de la hoja, bajo ella, o ninguna. Mal: una rejilla o agujeros en la mitad superior.</translation>
    </message>
    <message>
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops halfway, or there is a hook.</source>
        <translation type="unfinished">Suéltela desde abierta del todo. Bien: se cierra sola, y nada detrás puede sujetarla. Mal: se para a medio camino, o hay un gancho.</translation>
    </message>
    <message>
        <source>Find the control outside the machinery space. Good: it is with the others, at one place or as few as possible, and can be reached with the space on fire.</source>
        <translation type="unfinished">Busque el mando fuera del espacio de máquinas. Bien: está con los demás, en un solo lugar o en los menos posibles, y se llega a él con el espacio en llamas.</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans take precedence over this catalogue; amendments after its edition have not been checked.</source>
        <translation type="unfinished">Las reglas locales, la Administración del Estado de abanderamiento y sus planos aprobados prevalecen sobre este catálogo; las enmiendas posteriores a su edición no se han comprobado.</translation>
    </message>
    <message>
        <source>The English text in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">El texto inglés de la base de tratados del Gobierno neerlandés (BWBV0003264, abril de 2015), y la propia edición francesa del texto (orden de 23 de noviembre de 1987, division 221), que confirma cada cifra</translation>
    </message>
    <message>
        <source>Amendments after April 2015: nothing of MSC.421(98) has been seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations by IMO and classification societies.</source>
        <translation type="unfinished">Enmiendas posteriores a abril de 2015: de MSC.421(98) no se ha visto nada; de MSC.550(108), en vigor el 1 de enero de 2026, solo que vuelve a numerar II-2/9.6. Interpretaciones de la OMI y de las sociedades de clasificación.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead, A-0</source>
        <translation type="unfinished">La puerta en un mamparo A-60, A-30 o A-15 cumple A-15; en un mamparo A-0, A-0</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. The rule does not cover watertight doors; doors to the open deck have their own requirement.</source>
        <translation type="unfinished">Compare la placa de la puerta con su mamparo: A-15 basta en A-60, A-30 y A-15. La regla no abarca las puertas estancas; las puertas a cubierta expuesta tienen su propio requisito.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead, solid or hollow steel or equal</source>
        <translation type="unfinished">Puerta en un mamparo de clase A: acero hueco o equivalente, relleno macizo de aislamiento estructural aprobado; en un mamparo A-0, acero macizo o hueco o equivalente</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary, solid or hollow steel or equal</source>
        <translation type="unfinished">Puerta en un contorno de clase A: acero hueco o equivalente, relleno macizo de aislamiento estructural aprobado; en un contorno A-0, acero macizo o hueco o equivalente</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but metal. The text gives no class for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Mire hoja y marco, y pida la aprobación de lo que no sea metal. El texto no da clase para una puerta así. Mal: madera o plásticos sin aprobación.</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but steel. The text gives no class for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Mire hoja y marco, y pida la aprobación de lo que no sea acero. El texto no da clase para una puerta así. Mal: paños de vidrio en un marco, madera o plásticos sin aprobación.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no undercut limit are required here.</source>
        <translation type="unfinished">Pida la aprobación del material. Bien: metal, o un tablero incombustible aprobado. Mal: madera o plásticos. Aquí no se exige pestillo ni límite de hueco inferior.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph requires this in a C&apos; boundary: n/a there.</source>
        <translation type="unfinished">Pida la aprobación del material. Bien: metal, o tablero aprobado como incombustible. Mal: madera o plásticos. Ningún párrafo lo exige en un contorno C&apos;: ahí n/p.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. The text does not say whether such a door at a stairway must also close by itself: ask.</source>
        <translation type="unfinished">Madera dura, medida en el borde de la hoja: 1 3/4 pulgadas. El texto no dice si tal puerta, en una escalera, debe también cerrarse sola: pregunte.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. The text does not say whether latch, undercut, frame and closing by itself apply to such a door: ask.</source>
        <translation type="unfinished">Madera dura, medida en el borde de la hoja: 45 mm. El texto no dice si a tal puerta se le aplican el pestillo, el hueco inferior, el marco y el cierre automático: pregunte.</translation>
    </message>
    <message>
        <source>One person can operate it from each side</source>
        <translation type="unfinished">Una sola persona puede manejarla desde cada lado</translation>
    </message>
    <message>
        <source>Can one person operate it?</source>
        <translation type="unfinished">¿Puede manejarla una sola persona?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or someone on the far side.</source>
        <translation type="unfinished">Usted solo, desde cada lado: ábrala y ciérrela. Bien: como mucho una mano en la manija y un hombro. Mal: hacen falta dos personas, una herramienta, o alguien al otro lado.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable</source>
        <translation type="unfinished">Se abre en el sentido de la evacuación, donde es factible</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Puertas de espacios públicos, troncos de escalera, pasillos y similares. Una puerta de camarote no está exenta. Donde no sea factible, diga por qué en una observación y responda sí.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) names public spaces, stairway enclosures, corridors and the like; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) nombra espacios públicos, troncos de escalera, pasillos y similares; no dice si se refiere a esta puerta.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Puertas de alojamientos, escaleras, torres de escalera, corredores y espacios de control; una puerta de camarote está exenta. Donde no sea factible, diga por qué en una observación y responda sí.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) names accommodation spaces, stairways, stairtowers, passageways and control spaces; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) nombra alojamientos, escaleras, torres de escalera, corredores y espacios de control; no dice si se refiere a esta puerta.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side, in light and in darkness, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Como medio de evacuación: la abre una sola persona desde uno y otro lado, con luz y a oscuras, de modo evidente y rápido, con manijas fijas</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where the hand expects it, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Cierre los ojos y ábrala, desde uno y otro lado. Bien: la manija está donde la mano la espera, fija, y un solo movimiento la abre. Mal: una manija floja, un cierre oculto, un segundo movimiento.</translation>
    </message>
    <message>
        <source>As a means of escape it opens in the direction of escape</source>
        <translation type="unfinished">Como medio de evacuación se abre en el sentido de la evacuación</translation>
    </message>
    <message>
        <source>Opens in the direction of escape?</source>
        <translation type="unfinished">¿Se abre en el sentido de la evacuación?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. This rule does not say &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Póngase donde llega la gente y empuje. Esta regla no dice «donde sea factible». Las puertas de camarotes sencillos están exentas.</translation>
    </message>
    <message>
        <source>Ask who uses it when the ship is full. A door that a passenger may use in an emergency is not for crew only.</source>
        <translation type="unfinished">Pregunte quién la usa con el buque lleno. Una puerta que un pasajero puede usar en una emergencia no es solo para tripulación.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; 28 where only crew use it.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 32 pulgadas; 28 donde solo la usa la tripulación.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew only.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 28 pulgadas solo para tripulación.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, except a crash door or an easily forced device, marked on both sides</source>
        <translation type="unfinished">Ninguna cerradura en una puerta hacia cualquiera de las dos salidas exigidas, salvo una puerta forzable o un dispositivo fácil de forzar, señalizado por ambos lados</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may have to meet the rules for stairway doors</source>
        <translation type="unfinished">Una puerta exterior que sale de un tronco de escalera quizá deba cumplir las reglas de las puertas de escalera</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; the text does not say whether 72.05-25(b)(9) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) permite que una puerta a cubierta expuesta sea de madera dura; el texto no dice si 72.05-25(b)(9) se sigue aplicando a una puerta que sale de una escalera.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.435(c)(6) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) permite que una puerta a cubierta de intemperie sea de madera dura; el texto no dice si 116.435(c)(6) se sigue aplicando a una puerta que sale de una escalera.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, visible with the door open</source>
        <translation type="unfinished">La puerta lleva las letras F.S.D. y un número, de al menos 9,5 mm (3/8 in) de alto en placa, 25,4 mm (1 in) estarcidos, visibles con la puerta abierta</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and visible with the door open?</source>
        <translation type="unfinished">¿Lleva F.S.D. y su número, bastante grandes y visibles con la puerta abierta?</translation>
    </message>
    <message>
        <source>Open the door, then look: F.S.D. and the number in the register. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, missing, painted over. A door of a single room is exempt.</source>
        <translation type="unfinished">Abra la puerta y luego mire: F.S.D. y el número del registro. Letras en placa 3/8 pulgada, estarcidas 1 pulgada. Mal: ocultos por la hoja abierta, ausentes, pintados. Una puerta de un solo local está exenta.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts normally locked doors, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) exime a las puertas que normalmente están cerradas con llave, 78.47-35(a) a las puertas de un solo local: no son las mismas puertas.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not give the number berthed.</source>
        <translation type="unfinished">Obliga a un buque con más de 600 pasajeros o más de 49 pasajeros con litera (46 CFR 116.438(a)); el registro no da el número de los que tienen litera.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when the system fails?</source>
        <translation type="unfinished">¿Se acciona desde el puesto de control y en la puerta, y se cierra sola si falla el sistema?</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when its power fails?</source>
        <translation type="unfinished">¿Se acciona desde el puesto de control y en la puerta, y se cierra sola si falla su energía?</translation>
    </message>
    <message>
        <source>No hook or other permanent means of holding it open that the control station cannot release</source>
        <translation type="unfinished">Sin gancho ni otro medio permanente de mantenerla abierta que no pueda accionar el puesto de control</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that the control station releases, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Mire detrás de la hoja abierta, en el mamparo y a su pie. Bien: un imán que acciona el puesto de control, o nada. Mal: gancho, cadena, cuña fijada a la cubierta.</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station releases is allowed, and a normally closed or locked door is not exempt.</source>
        <translation type="unfinished">Mire detrás de la hoja abierta, en el mamparo y a su pie. No se admite ni siquiera un gancho que accione el puesto de control, y una puerta normalmente cerrada o con llave no está exenta.</translation>
    </message>
    <message>
        <source>Each leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Cada hoja de una puerta de dos hojas se cierra y encaja por sí sola</translation>
    </message>
    <message>
        <source>Does each leaf close and latch on its own?</source>
        <translation type="unfinished">¿Cada hoja se cierra y encaja por sí sola?</translation>
    </message>
    <message>
        <source>The release system engages the latch of a double-swing door</source>
        <translation type="unfinished">El sistema de accionamiento hace encajar el pestillo de una puerta de vaivén</translation>
    </message>
    <message>
        <source>Does its latch engage on release?</source>
        <translation type="unfinished">¿Encaja su pestillo al accionarla?</translation>
    </message>
    <message>
        <source>Release it and watch the latch engage by itself. Such a door is allowed only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Accione la puerta y vea cómo el pestillo encaja solo. Una puerta así solo se admite donde se permite el vaivén por el uso del espacio.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has its own requirement.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 28 pulgadas siempre; más donde sirve a más de diez personas, que tiene su propio requisito.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in that order</source>
        <translation type="unfinished">Donde una hoja debe cerrar primero, algo las hace cerrar en ese orden</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it works both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Cierre primero una hoja y luego la otra; luego al revés. Bien: funciona de las dos maneras. Solo de una: la segunda hoja necesita un tope propio.</translation>
    </message>
    <message>
        <source>Does the handle retract the latch?</source>
        <translation type="unfinished">¿La manija retira el pestillo?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not retract the bolt.</source>
        <translation type="unfinished">Ciérrela y ábrala con su manija: desde un lado, luego desde el otro. Mal: un lado sin manija, o una manija que no retira el pestillo.</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Con la puerta abierta y sujeta, mida cuánto sobresale el pestillo del canto. 3/4 pulgada; clase B 3/8 pulgada.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (the text adds: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Salida del pestillo de al menos 20 mm (el texto añade: 0,75 in) en un contorno de clase A, 9,5 mm (0,375 in) en un contorno de clase B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. A class: the text gives 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Con la puerta abierta y sujeta, mida cuánto sobresale el pestillo del canto. Clase A: el texto da 20 mm y 0,75 pulgadas, que son 19,05 mm. Clase B: 9,5 mm.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">El punto más ancho bajo la puerta cerrada, hasta el umbral o el revestimiento de cubierta. 1/2 pulgada; clase B 1 pulgada. El linóleo y similares cuentan como revestimiento de cubierta.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">El punto más ancho bajo la puerta cerrada, hasta el umbral o el revestimiento de cubierta. 1/2 pulgada; clase B 25 mm o 1 pulgada. El linóleo y similares cuentan como revestimiento de cubierta.</translation>
    </message>
    <message>
        <source>Free of rugs and carpets running through?</source>
        <translation type="unfinished">¿Sin alfombras ni moquetas que la atraviesen?</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Holgura entre dos hojas que actúan por separado, y arriba y a los lados de una puerta de vaivén, de 3,175 mm (1/8 in) como máximo</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler gauge between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Ambas hojas cerradas: una galga de espesores entre ellas; en una puerta de vaivén, también arriba y a los lados. 1/8 pulgada en el punto más ancho.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Holgura entre dos hojas que actúan por separado, y arriba y a los lados de una puerta de vaivén, de 3,2 mm como máximo</translation>
    </message>
    <message>
        <source>Look over the whole leaf, low down as well. Good: no grille or louver. Bad: one anywhere in it.</source>
        <translation type="unfinished">Mire toda la hoja, también abajo. Bien: sin rejilla ni persiana. Mal: una en cualquier punto.</translation>
    </message>
    <message>
        <source>Net area of a vent grille or louver in the door of a B-class bulkhead at most 0.186 m² (2 sq ft)</source>
        <translation type="unfinished">Área neta de una rejilla o persiana de ventilación en la puerta de un mamparo de clase B de 0,186 m² (2 sq ft) como máximo</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K says nothing about grilles in such doors.</source>
        <translation type="unfinished">Sume las ranuras abiertas de la rejilla, sin su marco. 2 pies cuadrados. Sin rejilla: 0. El subcapítulo K no dice nada de rejillas en esas puertas.</translation>
    </message>
    <message>
        <source>A vent grille or louver only in the lower half of the door of a B-class bulkhead</source>
        <translation type="unfinished">Rejilla o persiana de ventilación solo en la mitad inferior de la puerta de un mamparo de clase B</translation>
    </message>
    <message>
        <source>Is the grille only in the lower half?</source>
        <translation type="unfinished">¿Está la rejilla solo en la mitad inferior?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: n/a.</source>
        <translation type="unfinished">Compare su borde superior con el centro de la hoja. Sin rejilla: n/p.</translation>
    </message>
    <message>
        <source>A double-swing door only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Puerta de vaivén solo donde se permite el vaivén por el uso del espacio</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is used for. Where double swing is permitted its latch may normally be idle, but the door must have one.</source>
        <translation type="unfinished">Pida la aprobación, o mire para qué se usa el espacio. Donde se permite el vaivén, su pestillo puede estar normalmente inactivo, pero la puerta debe tenerlo.</translation>
    </message>
    <message>
        <source>No double-swing door, except between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Sin puertas de vaivén, salvo entre un espacio de preparación de alimentos y un comedor de tripulación o de pasaje</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, hinged or pivoted steel cover with a bullet catch or the like, easy to operate and self-closing</source>
        <translation type="unfinished">Un paso de manguera, si lo hay: esquina inferior opuesta a la bisagra, de unos 152 × 152 mm, tapa de acero con bisagra o pivote y cierre de bola o similar, fácil de manejar y de cierre automático</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 × 152 mm, cover shuts by itself?</source>
        <translation type="unfinished">¿Paso de manguera en la esquina inferior opuesta a la bisagra, de unos 152 × 152 mm, con tapa que se cierra sola?</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, self-closing steel cover</source>
        <translation type="unfinished">Un paso de manguera, si lo hay: esquina inferior opuesta a la bisagra, de unos 152 × 152 mm, tapa de acero de cierre automático</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is vertical</source>
        <translation type="unfinished">Una puerta en un alojamiento, escalera, torre de escalera o pasillo es vertical</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) requires one?</source>
        <translation type="unfinished">¿Es una puerta vertical, donde (b)(1) la exige?</translation>
    </message>
    <message>
        <source>This one is in a deck. Between machinery, stores or other crew spaces: n/a. Over a stair: both paragraphs apply, and you decide.</source>
        <translation type="unfinished">Esta es una puerta horizontal (en la propia cubierta). Entre espacios de máquinas, pañoles u otros espacios de tripulación: n/p. Sobre una escalera: se aplican ambos párrafos, y decide usted.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) requires vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither overrides the other.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) exige puertas verticales en las escaleras, (c)(7)(iii) habla de puertas horizontales (en la propia cubierta) tan anchas como la escalera: ninguno prevalece sobre el otro.</translation>
    </message>
    <message>
        <source>A door in a deck leads only to a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) solo da a un espacio al que solo puede llegar la tripulación, y solo la usa la tripulación</translation>
    </message>
    <message>
        <source>Two conditions: only crew can get to the space, and only crew use the door. Bad: a passenger could get to it, locked or not.</source>
        <translation type="unfinished">Dos condiciones: solo la tripulación puede llegar al espacio, y solo la tripulación usa la puerta. Mal: un pasajero podría llegar hasta ella, con llave o sin llave.</translation>
    </message>
    <message>
        <source>Clear the stair, then let it go from fully open and half open. Good: it shuts fully each time. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Despeje la escalera y suéltela desde abierta del todo y a medio abrir. Bien: se cierra del todo cada vez. Lo de los 3,5 grados no se puede comprobar en un buque adrizado.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, releases at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">El dispositivo de retención de una puerta horizontal (en la propia cubierta), si lo hay, se acciona en la puerta, con una señal desde un espacio de control, y cuando se interrumpe la energía</translation>
    </message>
    <message>
        <source>Releases at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">¿Se acciona en la puerta, desde el espacio de control y al faltar la energía?</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it releases. The greatest force counts.</source>
        <translation type="unfinished">Enganche un dinamómetro en el pestillo y tire hasta que se suelte. Cuenta la fuerza mayor.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure of 0.07 kPa (0.01 psi) from below</source>
        <translation type="unfinished">El pestillo de una puerta horizontal (en la propia cubierta) la mantiene cerrada contra una presión de 0,07 kPa (0,01 psi) desde abajo</translation>
    </message>
    <message>
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint counts as glass.</source>
        <translation type="unfinished">Mire toda la hoja, ambas caras, también el vidrio con paneles. Un paño tras una tapa o bajo pintura cuenta como vidrio.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m² (100 sq in)</source>
        <translation type="unfinished">Vidrio armado en una puerta de clase A de 0,0645 m² (100 sq in) como máximo</translation>
    </message>
    <message>
        <source>The visible glass, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">El vidrio visible, alto por ancho. 100 pulgadas cuadradas. Sin vidrio: 0. Las puertas a cubierta expuesta no tienen ese límite.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m²</source>
        <translation type="unfinished">Vidrio armado en una puerta de clase A de 0,065 m² como máximo</translation>
    </message>
    <message>
        <source>Is its glass wired, where it opens onto an embarkation or lowering place?</source>
        <translation type="unfinished">¿Es armado su vidrio, donde se abre a un lugar de embarco o arriado?</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is required: strands horizontal, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Vidrio de hilos en un solo sentido, donde se exige vidrio armado: hilos horizontales, separados 50,8 mm (2 in) como máximo</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: horizontal. Bad: vertical. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">De hilo a hilo, en el punto más ancho. 2 pulgadas. Bien: horizontales. Mal: verticales. Vidrio con malla de alambre: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary requires</source>
        <translation type="unfinished">Las ventanas de la puerta siguen las reglas de las ventanas: vidrio templado o laminado de al menos 6,5 mm (0,25 in) de espesor, con marco y postigo como exige su contorno</translation>
    </message>
    <message>
        <source>Are its windows as required in its boundary?</source>
        <translation type="unfinished">¿Son sus ventanas como se exige en su contorno?</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) covers windows in doors, 116.435(c)(9) and (10) wired glass; the text does not say which takes precedence.</source>
        <translation type="unfinished">46 CFR 116.433(f) trata de las ventanas de las puertas, 116.435(c)(9) y (10) del vidrio armado; el texto no dice cuál prevalece.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where allowed on the bulkhead</source>
        <translation type="unfinished">Chapa combustible solo como y donde se admite en el mamparo</translation>
    </message>
    <message>
        <source>Free of veneer not allowed on its bulkhead?</source>
        <translation type="unfinished">¿Sin chapa no admitida en su mamparo?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than is allowed on the bulkhead beside it. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Compare hoja y mamparo. Bien: sin chapa, o no más de la admitida en el mamparo contiguo. Mal: madera o laminado en una puerta cuyo mamparo no los tiene.</translation>
    </message>
    <message>
        <source>The fire door release system meets SOLAS 74 II-2/30.4.3</source>
        <translation type="unfinished">El sistema de accionamiento de puertas contraincendios cumple SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the 2015 edition have not been checked. Later rules whose headings touch these parts but whose text has not been read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may remain while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 applies instead (116.400). A vessel existing before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">El oficial encargado de la inspección marítima (Officer in Charge, Marine Inspection) decide qué se aplica a un buque de los Estados Unidos; los cambios posteriores a la edición de 2015 no se han comprobado. Reglas posteriores cuyos títulos tocan estas partes pero cuyo texto no se ha leído: 81 FR 48219 (22 de julio de 2016), 89 FR 76676 (18 de septiembre de 2024) y, para 46 CFR 111.99-3, 88 FR 16365 (16 de marzo de 2023). El subcapítulo H es para buques de 100 toneladas de arqueo bruto o más, o con más de 150 pasajeros, o en viajes internacionales, contratados el 26 de mayo de 1965 o después; lo aprobado antes puede permanecer mientras se conserve en buen estado (46 CFR 72.05-1, 72.05-90). El subcapítulo K es para buques con más de 150 pasajeros, o con 50 a 150 pasajeros con litera; con más de 150 pasajeros con litera se aplica en su lugar 72.05 (116.400). Un buque existente antes del 11 de marzo de 1996 conserva las reglas del 10 de marzo de 1996, o puede optar por estas (116.115).</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Buques de pasaje de los Estados Unidos del subcapítulo H: de 100 toneladas de arqueo bruto o más, con más de 150 pasajeros, o en viajes internacionales; contratados el 26 de mayo de 1965 o después</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10, paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">La edición anual de 2015, cada sección en su página de una copia pública (github.com/18F/allregs); de 72.05-10, los párrafos (a) a (g) y las tablas (d) y (e)</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Buques de pasaje de los Estados Unidos del subcapítulo K: con más de 150 pasajeros, o 50 a 150 pasajeros con litera; construidos el 11 de marzo de 1996 o después</translation>
    </message>
    <message>
        <source>public rooms under 50 m² with restricted-fire-risk furnishings</source>
        <translation type="unfinished">salas públicas de menos de 50 m² con mobiliario de riesgo de incendio reducido</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">salas públicas de 50 m² o más con mobiliario de riesgo de incendio reducido</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m² (no flammable liquids)</source>
        <translation type="unfinished">armarios aislados y pañoles pequeños de menos de 4 m² (sin líquidos inflamables)</translation>
    </message>
    <message>
        <source>drying room up to 4 m²</source>
        <translation type="unfinished">cuarto de secado de hasta 4 m²</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with ordinary furnishings</source>
        <translation type="unfinished">salas públicas de 50 m² o más con mobiliario corriente</translation>
    </message>
    <message>
        <source>drying room above 4 m²</source>
        <translation type="unfinished">cuarto de secado de más de 4 m²</translation>
    </message>
    <message>
        <source>lockers and stores above 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">armarios y pañoles de más de 4 m² no previstos para líquidos inflamables</translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), but not corridors</source>
        <translation type="unfinished">camarotes, salas públicas, oficinas, lavabos, hospitales, salas de juegos y de aficiones, oficios sin aparatos de cocción (regla 3.1), pero no pasillos</translation>
    </message>
    <message>
        <source>lockers and stores under 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">armarios y pañoles de menos de 4 m² no previstos para líquidos inflamables</translation>
    </message>
    <message>
        <source>lockers and stores of 4 m² or more</source>
        <translation type="unfinished">armarios y pañoles de 4 m² o más</translation>
    </message>
    <message>
        <source>fire-resistant furnishings only and fire load up to 15 kg/m²</source>
        <translation type="unfinished">solo mobiliario resistente al fuego y carga de fuego de hasta 15 kg/m²</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m² or less</source>
        <translation type="unfinished">Alojamiento de riesgo alto, de 50 m² o menos</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m² (limit 37.5 kg/m²)</source>
        <translation type="unfinished">carga de fuego de más de 15 kg/m² (límite 37,5 kg/m²)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m² that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">pañol de limpieza de menos de 5 m² que guarda algo más que útiles (sin líquidos inflamables)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m²</source>
        <translation type="unfinished">Alojamiento de riesgo alto, de más de 50 m²</translation>
    </message>
    <message>
        <source>pantries and stores with flammable liquids or of 5 m² or more</source>
        <translation type="unfinished">oficios y pañoles con líquidos inflamables o de 5 m² o más</translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m² of combustible storage</source>
        <translation type="unfinished">locales de bombas, ventiladores, aire acondicionado, gobierno y similares con 2,5 kg/m² como máximo de almacenamiento combustible</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be omitted if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Espacios contiguos del mismo número de categoría: el mamparo o la cubierta puede omitirse si la Administración lo considera innecesario (p. ej., una cocina y sus propios oficios). Entre una cocina y un espacio de máquinas sí hace falta una división, aunque ambos sean de categoría 12.</translation>
    </message>
    <message>
        <source>Public toilets wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Aseos públicos situados por entero dentro de un tronco de escalera: el mamparo del aseo dentro del tronco puede ser de clase B.</translation>
    </message>
    <message>
        <source>Insulation may be omitted if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">El aislamiento puede omitirse si el espacio de máquinas de categoría 7 tiene, a juicio de la Administración, pequeño o nulo riesgo de incendio.</translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m² or more.</source>
        <translation type="unfinished">Con el método IIIC hacen falta mamparos B-0 entre locales o grupos de locales de 50 m² o más.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m² (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Los tanques de combustible, espacios de maquinaria auxiliar y espacios perdidos con una carga de fuego de más de 2,5 kg/m² (0,5 lb/sq ft) necesitan contornos de al menos A-0.</translation>
    </message>
    <message>
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time requirement (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Incombustible, construido sin discontinuidades con la estructura del buque (o hasta un cielo raso continuo B o C&apos;) y estanco al humo; sin requisito de aislamiento ni de tiempo de llama (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>All twelve doors. The number of faults is not given. Endanger no one, confirm each caution truthfully, and score 80 of 100 points to pass.</source>
        <translation type="unfinished">Las doce puertas. No se dice el número de defectos. No ponga a nadie en peligro, confirme cada precaución con verdad y obtenga 80 de 100 puntos para aprobar.</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order; the other is far from it.</source>
        <translation type="unfinished">Dos puertas de escalera retenidas abiertas por imanes. Accione cada una y marque cuándo empieza a moverse su hoja y cuándo se cierra. Una de ellas está en orden; la otra, muy lejos.</translation>
    </message>
    <message>
        <source>Someone comes round the corner</source>
        <translation type="unfinished">Alguien dobla la esquina</translation>
    </message>
    <message>
        <source>A walkdown of eight doors</source>
        <translation type="unfinished">Un recorrido de ocho puertas</translation>
    </message>
    <message>
        <source>Every kind of door in one walkdown. There are six faults among them; some show only on the stopwatch. Not every door has one.</source>
        <translation type="unfinished">Todos los tipos de puerta en un recorrido. Hay seis defectos entre ellas; algunos solo se ven con el cronómetro. No todas las puertas tienen uno.</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, and the whole travel. Measure how far each re-opens on contact. Look into the pockets.</source>
        <translation type="unfinished">Tres puertas de accionamiento a motor. Cronometre la alarma antes de moverse la hoja, y toda la trayectoria. Mida cuánto se reabre cada una al contacto. Mire dentro de los cajones de las hojas.</translation>
    </message>
    <message>
        <source>Four hinged doors held open by magnets. Each must release from both sides and from the control station, shut in time and latch. Check the path before you release anything.</source>
        <translation type="unfinished">Cuatro puertas de bisagras retenidas abiertas por imanes. Cada una debe accionarse desde ambos lados y desde el puesto de control, cerrarse a tiempo y encajar el pestillo. Compruebe la trayectoria antes de accionar nada.</translation>
    </message>
    <message>
        <source>Double doors must close in the right order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Las puertas de dos hojas deben cerrarse en el orden correcto, y la de vaivén de la cocina debe quedar en reposo cerrada. A dos de ellas les pasa algo.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as the door can work with</source>
        <translation type="unfinished">Hueco entre hoja y marco tan pequeño como permite el funcionamiento de la puerta</translation>
    </message>
    <message>
        <source>Shut it with the machinery space fans running. Feel for a draught all round the edge, and look for light with a torch. Good: none anywhere. Space not of category A: n/a.</source>
        <translation type="unfinished">Ciérrela con los ventiladores del espacio de máquinas en marcha. Note si hay corriente todo alrededor del borde, y busque luz con una linterna. Bien: nada en ningún punto. Espacio que no es de categoría A: n/p.</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, other than day boats: of 24 m or more, or under 24 m with more than 15 gross tons and more than 36 berthed passengers. SOLAS II-2 binds them too (s. 102(1)); berths and voyage decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Buques de pasaje canadienses sin certificados de convenio, que no sean embarcaciones de día: de 24 m o más, o de menos de 24 m con más de 15 toneladas de arqueo bruto y más de 36 pasajeros con litera. También los obliga SOLAS II-2 (art. 102(1)); literas y viaje deciden cuáles cuentan como buques de más de 36 pasajeros (art. 102(3))</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date: for the ship&apos;s own maintenance, not for an inspector&apos;s test</source>
        <translation type="unfinished">Todo buque, de cualquier fecha: para el mantenimiento propio del buque, no para la prueba de un inspector</translation>
    </message>
    <message>
        <source>At every fire drill the fire doors in the drill area are tested</source>
        <translation type="unfinished">En cada simulacro de incendio se prueban las puertas contraincendios de la zona del simulacro</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure need not be A class, even where other exterior doors must be</source>
        <translation type="unfinished">Una puerta exterior de un tronco de escalera no necesita ser de clase A, ni siquiera donde deban serlo otras puertas exteriores</translation>
    </message>
    <message>
        <source>Try the handle before it is unlocked. Locked: yes, and what is required of doors in use does not apply. Open or unlocked: no, and it is graded like any other door.</source>
        <translation type="unfinished">Pruebe la manija antes de que abran con llave. Con llave: sí, y no se aplica lo que se exige a las puertas en uso. Abierta o sin llave: no, y se califica como cualquier otra puerta.</translation>
    </message>
    <message>
        <source>A normally latched escape door of a public space has a quick release across at least half the leaf, with no device that can lock the release</source>
        <translation type="unfinished">Una puerta de evacuación de un espacio público que normalmente está con el pestillo encajado tiene una apertura rápida a lo ancho de al menos media hoja, sin dispositivo que pueda bloquear su accionamiento</translation>
    </message>
    <message>
        <source>Quick release across half the leaf, not lockable?</source>
        <translation type="unfinished">¿Apertura rápida a lo ancho de media hoja, sin bloqueo posible?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then close this door from the safety centre and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Luego cierre esta puerta desde el centro de seguridad y vea cambiar su lámpara. Bien: ambas cosas funcionan como en el puesto de control. Mal: no está en el panel.</translation>
    </message>
    <message>
        <source>Agree it with the engineers. Post a lookout on each side of every door that will move. Then have the supply to this door&apos;s control cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Acuérdelo con los maquinistas. Ponga un vigilante a cada lado de cada puerta que se va a mover. Luego haga cortar la alimentación del control de esta puerta. Bien: se cierra sola. Mal: queda abierta.</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full cycles without the main supply. To test it, first post a lookout on each side and agree it with the control station: this runs the accumulator down.</source>
        <translation type="unfinished">Pida la última constancia de diez ciclos completos sin la alimentación principal. Para probarlo, ponga antes un vigilante a cada lado y acuérdelo con el puesto de control: el ensayo descarga el acumulador.</translation>
    </message>
    <message>
        <source>Check the drawing of the control system. Or post a lookout on each side of every door that will move, isolate this one and operate the others. Good: they move as before. Bad: they do not move.</source>
        <translation type="unfinished">Compruebe el plano del sistema de control. O ponga un vigilante a cada lado de cada puerta que se va a mover, aísle esta y haga funcionar las demás. Bien: se mueven como antes. Mal: no se mueven.</translation>
    </message>
    <message>
        <source>On remote release the alarm sounds 5 to 10 s before the leaf moves</source>
        <translation type="unfinished">Con el accionamiento a distancia, la alarma suena de 5 a 10 s antes de que se mueva la hoja</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Release from the control station: time from the first sound of the alarm to the leaf&apos;s first movement. Bad: it moves at once, or much later.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Accione desde el puesto de control: tiempo desde el primer sonido de la alarma hasta el primer movimiento de la hoja. Mal: se mueve enseguida, o mucho después.</translation>
    </message>
    <message>
        <source>Are there approval documents for the control system?</source>
        <translation type="unfinished">¿Hay documentos de aprobación del sistema de control?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it with its supply on, then with it cut. Good: it shuts firmly each time. Doors of escape trunks too. Space not of category A: n/a.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta que se va a mover. Accione la puerta con su alimentación puesta y luego cortada. Bien: se cierra con firmeza cada vez. También las puertas de los troncos de evacuación. Espacio que no es de categoría A: n/p.</translation>
    </message>
    <message>
        <source>A door of an escape trunk closes by itself</source>
        <translation type="unfinished">Una puerta de un tronco de evacuación se cierra sola</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar, or something holds it open. The text gives no angle. Not a door of an escape trunk: n/a.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medio abrir y desde un ángulo pequeño. Bien: se cierra del todo cada vez. Mal: queda entreabierta, o algo la sujeta abierta. El texto no da ángulo. No es puerta de un tronco de evacuación: n/p.</translation>
    </message>
    <message>
        <source>the text requires it of the escape from a machinery space of category A; the register does not show that this trunk belongs to one</source>
        <translation type="unfinished">el texto lo exige de la salida de un espacio de categoría A para máquinas; el registro no muestra que este tronco pertenezca a uno</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it by remote control, then with its supply cut. Good: it is released each time. Space not of category A, or no hold-back: n/a.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta que se va a mover. Acciónela a distancia y luego con su alimentación cortada. Bien: queda accionada cada vez. Espacio que no es de categoría A, o sin dispositivo de retención: n/p.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built on or after 1 July 2002; part E (condition and maintenance plan) applies to ships of any date</source>
        <translation type="unfinished">Buques de pasaje SOLAS construidos el 1 de julio de 2002 o después; la parte E (estado y plan de mantenimiento) se aplica a buques de cualquier fecha</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then exempt from 72.05-25(b)(1) to (7)</source>
        <translation type="unfinished">Una puerta a cubierta expuesta en un mamparo de clase A puede ser de madera dura, de al menos 44,5 mm (1 3/4 in) de espesor, y queda entonces exenta de 72.05-25(b)(1) a (7)</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes. Any other space: no. Neither answer is a fault: it decides what else applies to the door.</source>
        <translation type="unfinished">Vea el plano de lucha contra incendios, o entre. Detrás hay un tronco de escalera: sí. Cualquier otro espacio: no. Ninguna respuesta es un defecto: decide qué más se aplica a la puerta.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test from the control station, at the door, and with the system off: it must shut each time. Not required of a normally closed door. Hooks: separate check.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta que se va a mover. Pruebe desde el puesto de control, en la puerta y con el sistema desconectado: debe cerrarse cada vez. No se exige a una puerta normalmente cerrada. Ganchos: comprobación aparte.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test it from the control station, at the door, and with its power off: it must shut each time. No hold-back: n/a. Hooks are a separate check.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta que se va a mover. Haga la prueba desde el puesto de control, en la puerta y con su energía cortada: debe cerrarse cada vez. Sin dispositivo de retención: n/p. Los ganchos son una comprobación aparte.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served requires; for a zone stair on the embarkation deck, 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Una puerta a una escalera es tan ancha como exige el número de personas a que sirve; para una escalera de zona en la cubierta de embarco, 1118 mm (44 in) hacia cada lado</translation>
    </message>
    <message>
        <source>The leaves of a double door can shut in either order</source>
        <translation type="unfinished">Las hojas de una puerta de dos hojas pueden cerrarse en cualquier orden</translation>
    </message>
    <message>
        <source>Can the leaves shut in either order?</source>
        <translation type="unfinished">¿Pueden cerrarse las hojas en cualquier orden?</translation>
    </message>
    <message>
        <source>Keep everyone off the stair. Keep hands and feet away from the edge of the door. Time it from the first movement to fully shut.</source>
        <translation type="unfinished">No deje a nadie en la escalera. Mantenga manos y pies lejos del borde de la puerta. Cronométrela desde el primer movimiento hasta cerrada del todo.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up.</source>
        <translation type="unfinished">No deje a nadie debajo de la puerta. Mire el mamparo y la brazola junto a la puerta abierta. Bien: ningún gancho, cadena ni pasador que la sostenga.</translation>
    </message>
    <message>
        <source>First clear the stair and post a lookout on each side of every door that will move. Test it at the door, from the control space, and with its power off: it must shut each time. No hold-back fitted: n/a.</source>
        <translation type="unfinished">Despeje antes la escalera y ponga un vigilante a cada lado de cada puerta que se va a mover. Haga la prueba en la puerta, desde el espacio de control y con su energía cortada: debe cerrarse cada vez. Sin dispositivo de retención instalado: n/p.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts.</source>
        <translation type="unfinished">No deje a nadie debajo de la puerta. Tire con un dinamómetro hasta que esté abierta al ancho de la escalera. Cuenta la fuerza mayor del trayecto.</translation>
    </message>
    <message>
        <source>A class: steel frame; an internal window also has an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. In B class a laboratory-listed fire window is enough.</source>
        <translation type="unfinished">Clase A: marco de acero; una ventana interior lleva además un postigo aislado. B-15: vidrio armado, y un postigo con fusible; B-0: vidrio armado. En clase B basta una ventana contra incendios certificada por un laboratorio.</translation>
    </message>
    <message>
        <source>Along the whole sill, with a torch and underfoot. Good: complete, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">A lo largo de todo el umbral, con una linterna y con el pie. Bien: completo, plano y firme. Mal: una pieza suelta, doblada o ausente en que pueda tropezar un pie.</translation>
    </message>
    <message>
        <source>Never put a hand into the pocket while the door can move. Look in with a torch. Good: clear to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Nunca meta la mano en el cajón de la hoja mientras la puerta pueda moverse. Mire dentro con una linterna. Bien: libre hasta el fondo. Mal: suciedad, basura, pertrechos.</translation>
    </message>
    <message>
        <source>Two doors at rest. Look at both sides of each, and at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Dos puertas en reposo. Mire ambos lados de cada una, y todo aquello por lo que se le pregunta. Algo no está en orden.</translation>
    </message>
    <message>
        <source>No hold-back hooks</source>
        <translation type="unfinished">Sin ganchos de retención</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: any hook, cabin hook or eye plate with signs of use, even one that the wheelhouse can release.</source>
        <translation type="unfinished">Mire detrás de la puerta abierta, en mamparo, hoja y cubierta. Mal: cualquier gancho, aldabilla o cáncamo con señales de uso, incluso uno que pueda accionar la caseta de gobierno.</translation>
    </message>
    <message>
        <source>the text names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">el texto nombra escaleras, espacios públicos y mamparos de zona; el registro no dice si esta puerta está en un espacio público</translation>
    </message>
    <message>
        <source>9.4.1.1 speaks of A-class divisions; this door is A class, its boundary is not</source>
        <translation type="unfinished">9.4.1.1 trata de divisiones de clase A; esta puerta es de clase A, su contorno no</translation>
    </message>
    <message>
        <source>9.4.1.2.2 speaks of cabin doors in B-class divisions; the class of this boundary is not known</source>
        <translation type="unfinished">9.4.1.2.2 trata de puertas de camarote en divisiones de clase B; no se conoce la clase de este contorno</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked with a key held by an officer: n/a.</source>
        <translation type="unfinished">Bien: sin cerradura; o una fácil de forzar, con un aviso claro y duradero por ambos lados. Puerta exterior de caseta cerrada con llave que guarda un oficial: n/p.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(8) exempts an outside door of a deckhouse that is locked with a key held by an officer; the register does not say whether this is one.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(8) exime a una puerta exterior de caseta cerrada con llave que guarda un oficial; el registro no dice si esta lo es.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.438(a) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) permite que una puerta a cubierta de intemperie sea de madera dura; el texto no dice si 116.438(a) se sigue aplicando a una puerta que sale de una escalera.</translation>
    </message>
    <message>
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone.</source>
        <translation type="unfinished">Mire el borde de cada paño, por ambas caras. Bien: metal todo alrededor. Mal: madera, masilla o goma sola.</translation>
    </message>
    <message>
        <source>A window in a door next to an embarkation station, an escape route or survival craft is A class or has steel shutters that are operated from outside</source>
        <translation type="unfinished">Una ventana de una puerta junto a un puesto de embarco, una vía de evacuación o embarcaciones de supervivencia es de clase A o tiene postigos de acero que se manejan desde fuera</translation>
    </message>
    <message>
        <source>Next to embarkation, escape route or survival craft: windows A class, or steel shutters?</source>
        <translation type="unfinished">Junto a embarco, vía de evacuación o embarcación de supervivencia: ¿ventanas de clase A, o postigos de acero?</translation>
    </message>
    <message>
        <source>9.4.1.1.7 exempts an exterior door of a stairway enclosure from A-class integrity</source>
        <translation type="unfinished">9.4.1.1.7 exime de la integridad de clase A a una puerta exterior de un tronco de escalera</translation>
    </message>
    <message>
        <source>Knock on leaf and frame; check the plate and the approval documents. Good: steel, or documents that show the material is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Golpee con los nudillos hoja y marco; compruebe la placa y los documentos de aprobación. Bien: acero, o documentos que demuestren que el material es equivalente. Mal: madera, plástico o aluminio desnudo.</translation>
    </message>
    <message>
        <source>Check the plate and the approval documents. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow these between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Compruebe la placa y los documentos de aprobación. Mal: madera o plástico. Con 36 pasajeros o menos la Administración puede admitirlos entre un camarote y su propia ducha o aseo: n/p.</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its approval documents. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling not in the documents.</source>
        <translation type="unfinished">Golpee la hoja con los nudillos y lea sus documentos de aprobación. A-60, A-30, A-15: rellena de aislamiento aprobado. A-0: acero, macizo o hueco. Mal: madera, plásticos, un relleno que no consta en los documentos.</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure from the approval documents. The thinnest pane counts.</source>
        <translation type="unfinished">Incluidas las puertas de madera dura a cubierta expuesta. Mida en un canto descubierto, o tome el valor de los documentos de aprobación. Cuenta el paño más fino.</translation>
    </message>
    <message>
        <source>Check the approval documents, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Compruebe los documentos de aprobación, donde haya tal sistema: una aprobación que nombre SOLAS 74 II-2/30.4.3.</translation>
    </message>
    <message>
        <source>After release from the permanently manned place, open it by hand and let go. Good: it opens, and closes again safely. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Tras accionarla desde el lugar con dotación permanente, ábrala a mano y suéltela. Bien: se abre, y vuelve a cerrarse con seguridad. Mal: queda bloqueada, o queda abierta.</translation>
    </message>
    <message>
        <source>Agree it with bridge and engineers. Post a lookout on each side of every door that will move. Main power off: test on battery, then emergency source. Good: held, released and shut on each. Its own battery will do.</source>
        <translation type="unfinished">Acuérdelo con el puente y los maquinistas. Ponga un vigilante a cada lado de cada puerta que se va a mover. Energía principal cortada: pruebe con la batería, luego con la fuente de emergencia. Bien: retenida, accionada y cerrada con cada una. Basta la batería propia del sistema.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Stand clear: the leaf may move without an alarm. Listen as it is released. Good: the alarm sounds before the leaf moves. Bad: silence, or both start together.</source>
        <translation type="unfinished">Ponga antes un vigilante a cada lado de cada puerta del grupo. Apártese: la hoja puede moverse sin que suene la alarma. Escuche mientras se acciona. Bien: la alarma suena antes de que se mueva la hoja. Mal: silencio, o ambas cosas empiezan a la vez.</translation>
    </message>
    <message>
        <source>Opened by one person at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">¿La abre una sola persona enseguida, a oscuras, con una manija fija?</translation>
    </message>
    <message>
        <source>Zone stairs: 11 to 20 persons = 30 in, up to 30 = 32, up to 40 = 34, up to 50 = 36, more = 0.75 in per person; on the embarkation deck 44 to each side. Other passenger stairs: same, but over 50 = 36. Crew over 10: 30.</source>
        <translation type="unfinished">Escaleras de zona: 11 a 20 personas = 30 in, hasta 30 = 32, hasta 40 = 34, hasta 50 = 36, más = 0,75 in por persona; en la cubierta de embarco 44 hacia cada lado. Otras escaleras de pasaje: igual, pero más de 50 = 36. Tripulación, más de 10: 30.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) sets aside construction and rating for a hardwood door to the weather deck; it does not mention this requirement.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) deja de lado la construcción y la clase para una puerta de madera dura a cubierta de intemperie; no menciona este requisito.</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 × 6 inches, no tolerance given: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. No port, whatever the register says: n/a.</source>
        <translation type="unfinished">Esquina inferior opuesta a la bisagra, de unas 6 × 6 pulgadas, sin tolerancia indicada: debe pasar una manguera y cerrarse la puerta sobre ella. Levante la tapa de acero y suéltela: debe caer cerrada. Sin paso de manguera, diga lo que diga el registro: n/p.</translation>
    </message>
    <message>
        <source>Applies where the door opens onto such a place from a service, cargo or machinery space, or from accommodation with combustible furniture. The area of glass is not limited. Opening elsewhere: n/a.</source>
        <translation type="unfinished">Se aplica donde la puerta se abre a un lugar así desde un espacio de servicio, de carga o de máquinas, o desde un alojamiento con mobiliario combustible. El área de vidrio no tiene límite. Si se abre a otro lugar: n/p.</translation>
    </message>
    <message>
        <source>Next to an embarkation station, an escape route or survival craft. Good: documents that show A class, or steel shutters that shut from outside; try them. Not next to one of these: n/a.</source>
        <translation type="unfinished">Junto a un puesto de embarco, una vía de evacuación o embarcaciones de supervivencia. Bien: documentos que muestran la clase A, o postigos de acero que se cierran desde fuera; pruébelos. No junto a uno de estos: n/p.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Maneje ambas a la vez. Sin puerta decorativa: n/p. Mal: hay que abrirla antes, su manija estorba, o se abre contra la corriente de gente.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, it opens the other way, or it is at a stairway.</source>
        <translation type="unfinished">Maneje ambas a la vez. Sin puerta decorativa: n/p. Mal: hay que abrirla antes, se abre en sentido contrario, o está en una escalera.</translation>
    </message>
    <message>
        <source>a stair enclosed on only one level counts as part of the space it opens into without a fire door</source>
        <translation type="unfinished">una escalera cerrada en un solo nivel cuenta como parte del espacio al que se abre sin puerta contraincendios</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they are stowed at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">Basta A-0 si no se transportan mercancías peligrosas, o si se estiban a 3 m como mínimo del mamparo, medidos en horizontal.</translation>
    </message>
    <message>
        <source>the text read is for vessels built from 30 December 2008 until ES-TRIN replaced it on 7 October 2018 (date from memory); the text for any other vessel has not been read</source>
        <translation type="unfinished">el texto leído es para buques construidos desde el 30 de diciembre de 2008 hasta que ES-TRIN lo sustituyó el 7 de octubre de 2018 (fecha de memoria); el texto para cualquier otro buque no se ha leído</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample of doors released at the door and remotely, any door lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Campaña del Estado rector del puerto sobre puertas contraincendios: lámparas, una muestra de puertas accionadas en la propia puerta y a distancia, cualquier puerta trincada abierta, cierre y encaje del pestillo, puertas de máquinas, clase</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: SOLAS requirements are shown as advice and fail no door, and common practice is left to the inspector.</source>
        <translation type="unfinished">La propia Administración del buque decide qué lo obliga: los requisitos de SOLAS se muestran como recomendación y por ellos no falla ninguna puerta, y la práctica común queda al criterio del inspector.</translation>
    </message>
    <message>
        <source>the text leaves it to judgement where the speed has to be controlled, and gives no figure</source>
        <translation type="unfinished">el texto deja a criterio, según el caso, dónde debe controlarse la velocidad, y no da cifra</translation>
    </message>
    <message>
        <source>Check the approval documents: works at 200 °C or more for 60 min or more, does not affect the supply to other doors, isolates itself above 200 °C and keeps the door shut up to 945 °C or more.</source>
        <translation type="unfinished">Compruebe los documentos de aprobación: funciona a 200 °C o más durante 60 min o más, no afecta a la alimentación de otras puertas, por encima de 200 °C se aísla y mantiene la puerta cerrada hasta 945 °C o más.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable?</source>
        <translation type="unfinished">¿Se abre en el sentido de la evacuación, donde es factible?</translation>
    </message>
    <message>
        <source>To a required escape: free of locks, except one easily forced and marked on both sides?</source>
        <translation type="unfinished">Hacia una salida exigida: ¿sin cerraduras, salvo una fácil de forzar y señalizada por ambos lados?</translation>
    </message>
    <message>
        <source>The sentence on release exempts normally closed doors, the sentence on hooks exempts none; the text does not say whether the exemption covers hooks too.</source>
        <translation type="unfinished">La frase sobre el accionamiento exime a las puertas normalmente cerradas, la frase sobre los ganchos no exime a ninguna; el texto no dice si la exención vale también para los ganchos.</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted the latch may be idle, but must be there.</source>
        <translation type="unfinished">Mire el canto de la hoja. Bien: un pestillo y su cerradero en el marco. Mal: un rodillo, un imán o nada. Donde se permite el vaivén, el pestillo puede estar inactivo, pero debe haberlo.</translation>
    </message>
    <message>
        <source>A stop or overlap of at least 12.7 mm at the sides and top</source>
        <translation type="unfinished">Un tope o solape de al menos 12,7 mm a los lados y arriba</translation>
    </message>
    <message>
        <source>Check the maker&apos;s figure in the approval documents: at least 0.07 kPa, about 7 kg per square metre. With the door shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Compruebe el valor del fabricante en los documentos de aprobación: al menos 0,07 kPa, unos 7 kg por metro cuadrado. Con la puerta cerrada, empuje hacia arriba desde abajo: no debe levantarse.</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material or opens the wrong way?</source>
        <translation type="unfinished">¿Sin puerta decorativa que la estorbe, sea de material no admitido o se abra en sentido contrario?</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material, opens the wrong way or is at a stair?</source>
        <translation type="unfinished">¿Sin puerta decorativa que la estorbe, sea de material no admitido, se abra en sentido contrario o esté en una escalera?</translation>
    </message>
    <message>
        <source>as type 6 but larger; the sign before the size is missing in the source text and inferred from type 6</source>
        <translation type="unfinished">como el tipo 6 pero mayor; el signo delante de la superficie falta en el texto de origen y se deduce del tipo 6</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Cuál de los dos valores se aplica se deduce de 2.3.2 y 2.3.4: una escalera que atraviesa una sola cubierta necesita B-0 con puertas de cierre automático en al menos un nivel; escaleras y ascensores que atraviesan más de una cubierta necesitan A-0 con puertas de cierre automático en todos los niveles; un ascensor que atraviesa una cubierta necesita A-0 con puertas de acero en ambos niveles. Con literas para 12 personas o menos y dos salidas directas a cubierta expuesta desde cada nivel de alojamiento, A-0 puede bajar a B-0.</translation>
    </message>
    <message>
        <source>Tankers use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Los buques tanque usan solo el método IC. Cuál de los dos valores se aplica se deduce de 2.3.2 y 2.3.4: una escalera que atraviesa una sola cubierta necesita B-0 con puertas de cierre automático en al menos un nivel; escaleras y ascensores que atraviesan más de una cubierta necesitan A-0 con puertas de cierre automático en todos los niveles; un ascensor que atraviesa una cubierta necesita A-0 con puertas de acero en ambos niveles. Con literas para 12 personas o menos y dos salidas directas a cubierta expuesta desde cada nivel de alojamiento, A-0 puede bajar a B-0.</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop the test before the leaf reaches anyone. A stopped run can be repeated.</source>
        <translation type="unfinished">La gente no sabe que usted está probando. No aparte la vista de la trayectoria mientras se mueve una hoja, y pare la prueba antes de que la hoja alcance a alguien. Un ensayo parado se puede repetir.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">no existe ese requisito</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Límite: %1</translation>
    </message>
    <message>
        <source>A different edition of the catalogue is now in use.</source>
        <translation type="unfinished">Ahora se usa otra edición del catálogo.</translation>
    </message>
    <message>
        <source>A different edition of the catalogue, or of the rules of %1, is now in use.</source>
        <translation type="unfinished">Ahora se usa otra edición del catálogo o de las reglas de %1.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer apply on top of the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 ya no se aplican además del catálogo.</translation>
    </message>
    <message>
        <source>The rules of %1 now apply on top of the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 se aplican ahora además del catálogo.</translation>
    </message>
    <message>
        <source>was %1, now %2</source>
        <translation type="unfinished">antes %1, ahora %2</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">no se aplica a esta puerta</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>none of %1 doors is defective</source>
        <translation type="unfinished">ninguna de %1 puertas es defectuosa</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors is defective</source>
        <translation type="unfinished">como máximo %1 de %2 puertas es defectuosa</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors are defective</source>
        <translation type="unfinished">como máximo %1 de %2 puertas son defectuosas</translation>
    </message>
    <message>
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">como máximo 1 de 1 puerta es defectuosa</translation>
    </message>
    <message>
        <source>The claim is supported.</source>
        <translation type="unfinished">La afirmación queda respaldada.</translation>
    </message>
    <message>
        <source>Continue: test %1 more.</source>
        <translation type="unfinished">Continúe: pruebe %1 más.</translation>
    </message>
    <message>
        <source>Extend: test %1 more. If none of those fails, the claim is supported, with slightly less confidence than stated, because the results enlarged the sample.</source>
        <translation type="unfinished">Amplíe: pruebe %1 más. Si ninguna de ellas falla, la afirmación queda respaldada, con una confianza algo menor que la indicada, porque los resultados han ampliado la muestra.</translation>
    </message>
    <message>
        <source>Every door has been tested: the claim fails.</source>
        <translation type="unfinished">Se han probado todas las puertas: la afirmación no se sostiene.</translation>
    </message>
    <message>
        <source>Test all: the remaining door as well.</source>
        <translation type="unfinished">Pruebe todas: también la puerta restante.</translation>
    </message>
    <message>
        <source>Test all: the remaining %1 doors as well.</source>
        <translation type="unfinished">Pruebe todas: también las %1 puertas restantes.</translation>
    </message>
    <message>
        <source>the one door is not defective</source>
        <translation type="unfinished">la única puerta no es defectuosa</translation>
    </message>
    <message>
        <source>Test 1 door, drawn at random. If it does not fail: %1 confidence that %2.</source>
        <translation type="unfinished">Pruebe 1 puerta, elegida al azar. Si no falla: %1 de confianza en que %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn at random. If none fails: %2 confidence that %3.</source>
        <translation type="unfinished">Pruebe %1 puertas, elegidas al azar. Si ninguna falla: %2 de confianza en que %3.</translation>
    </message>
    <message>
        <source>A different claim, not to be confused with this one: if exactly %1 of %2 doors are defective, testing %3 gives at least a %4 chance of finding one or more of them.</source>
        <translation type="unfinished">Otra afirmación, que no debe confundirse con esta: si exactamente %1 de %2 puertas son defectuosas, al probar %3 hay al menos un %4 de probabilidad de hallar una o más.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confidence that %3. %4</source>
        <translation type="unfinished">Probada %1 de 1 puerta, ninguna falló: %2 de confianza en que %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confidence that %4. %5</source>
        <translation type="unfinished">Probadas %1 de %2 puertas, ninguna falló: %3 de confianza en que %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confidence that %2. %3</source>
        <translation type="unfinished">Probada 1 de 1 puerta, 1 falló: %1 de confianza en que %2. %3</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, %3 failed: %4 confidence that %5. %6</source>
        <translation type="unfinished">Probadas %1 de %2 puertas, fallaron %3: %4 de confianza en que %5. %6</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Una placa grabada %1</translation>
    </message>
    <message>
        <source>Four screw holes round a pale patch</source>
        <translation type="unfinished">Cuatro agujeros de tornillo en torno a una mancha clara</translation>
    </message>
    <message>
        <source>A magnet on its arm, its armature on the leaf</source>
        <translation type="unfinished">Un imán en su brazo, su armadura en la hoja</translation>
    </message>
    <message>
        <source>Lining and frame</source>
        <translation type="unfinished">Forro y marco</translation>
    </message>
    <message>
        <source>%1; a hook hangs from an eye plate on the lining</source>
        <translation type="unfinished">%1; un gancho cuelga de un cáncamo en el forro</translation>
    </message>
    <message>
        <source>%1; nothing else</source>
        <translation type="unfinished">%1; nada más</translation>
    </message>
    <message>
        <source>The lower corner of the leaf, plain</source>
        <translation type="unfinished">La esquina inferior de la hoja, lisa</translation>
    </message>
    <message>
        <source>its cover lifted</source>
        <translation type="unfinished">su tapa levantada</translation>
    </message>
    <message>
        <source>its cover hangs part open</source>
        <translation type="unfinished">su tapa cuelga a medio abrir</translation>
    </message>
    <message>
        <source>its cover lies flat on it</source>
        <translation type="unfinished">su tapa asentada sobre él</translation>
    </message>
    <message>
        <source>The lamp marked shut is lit</source>
        <translation type="unfinished">Está encendida la lámpara de cerrada</translation>
    </message>
    <message>
        <source>The lamp marked open is lit</source>
        <translation type="unfinished">Está encendida la lámpara de abierta</translation>
    </message>
    <message>
        <source>A steel sill screwed down, the floor covering ends at its trim</source>
        <translation type="unfinished">Un umbral de acero atornillado, el revestimiento acaba en su moldura</translation>
    </message>
    <message>
        <source>The floor covering runs on under the leaf; four holes in the deck</source>
        <translation type="unfinished">El revestimiento sigue bajo la hoja; cuatro agujeros en la cubierta</translation>
    </message>
    <message>
        <source>The rule reads %1 mm at the foot of the leaf</source>
        <translation type="unfinished">La regla marca %1 mm al pie de la hoja</translation>
    </message>
    <message>
        <source>The deck, and a wooden wedge under the edge of the leaf</source>
        <translation type="unfinished">La cubierta, y una cuña de madera bajo el borde de la hoja</translation>
    </message>
    <message>
        <source>The deck on both sides, nothing on it</source>
        <translation type="unfinished">La cubierta a ambos lados, sin nada encima</translation>
    </message>
    <message>
        <source>Two plates and the bottom rail between them, nothing on it</source>
        <translation type="unfinished">Dos chapas y entre ellas el carril inferior, sin nada encima</translation>
    </message>
    <message>
        <source>Bright rail, two hangers, their rollers on it</source>
        <translation type="unfinished">Carril brillante, dos soportes con sus rodillos en él</translation>
    </message>
    <message>
        <source>A dark strip in its groove, from top to bottom</source>
        <translation type="unfinished">Una tira oscura en su ranura, de arriba abajo</translation>
    </message>
    <message>
        <source>Hinges with all their screws, the gap at the head even</source>
        <translation type="unfinished">Bisagras con todos sus tornillos, hueco superior uniforme</translation>
    </message>
    <message>
        <source>A dry body, the arm in its shoe on the frame</source>
        <translation type="unfinished">Un cuerpo seco, el brazo en su zapata sobre el marco</translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Hoja y marco, pintura uniforme, nada fijado a ellos</translation>
    </message>
    <message>
        <source>A plate worn bare; no letter is legible</source>
        <translation type="unfinished">Una placa desgastada; no se lee ninguna letra</translation>
    </message>
    <message>
        <source>A port 150 mm by 150 mm, %1</source>
        <translation type="unfinished">Un paso de manguera de 150 mm por 150 mm, %1</translation>
    </message>
    <message>
        <source>Two lamps; no one has read them out yet</source>
        <translation type="unfinished">Dos lámparas; nadie las ha leído aún</translation>
    </message>
    <message>
        <source>A soft edge on the leaf and a block in front of it; no run against it yet</source>
        <translation type="unfinished">Un borde blando en la hoja y un bloque delante; aún sin ensayos contra él</translation>
    </message>
    <message>
        <source>The edge is %1 back from the block, by tape measure</source>
        <translation type="unfinished">El borde ha retrocedido %1 desde el bloque, medido con cinta</translation>
    </message>
    <message>
        <source>Bulkhead paint runs over the seal</source>
        <translation type="unfinished">La pintura del mamparo pasa sobre la junta</translation>
    </message>
    <message>
        <source>The bolt projects well out of its case</source>
        <translation type="unfinished">El pestillo sobresale bien de su caja</translation>
    </message>
    <message>
        <source>Only the tip of the bolt projects from its case</source>
        <translation type="unfinished">Solo la punta del pestillo sobresale de su caja</translation>
    </message>
    <message>
        <source>The release on this side under its cover, lever upright</source>
        <translation type="unfinished">El mando de accionamiento de este lado bajo su tapa, palanca vertical</translation>
    </message>
    <message>
        <source>A cup, crumpled paper and a length of rope on the bottom rail</source>
        <translation type="unfinished">Un vaso, papel arrugado y un trozo de cabo en el carril inferior</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>The release has been announced to everyone near these doors</source>
        <translation type="unfinished">El accionamiento se ha anunciado a todos los que están cerca de estas puertas</translation>
    </message>
    <message>
        <source>Passengers and crew are clear of every door that will move, and kept clear</source>
        <translation type="unfinished">Pasajeros y tripulación están apartados de cada puerta que se va a mover, y se los mantiene apartados</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">El puesto de control está listo en el canal acordado</translation>
    </message>
    <message>
        <source>It moves less than 5 s after the alarm begins.</source>
        <translation type="unfinished">Se mueve menos de 5 s después de empezar la alarma.</translation>
    </message>
    <message>
        <source>The alarm stops before the leaf is home.</source>
        <translation type="unfinished">La alarma cesa antes de que la hoja quede cerrada del todo.</translation>
    </message>
    <message>
        <source>On contact it re-opens more than 1 m.</source>
        <translation type="unfinished">Al contacto se reabre más de 1 m.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Una cuña la mantiene abierta.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Falta el umbral.</translation>
    </message>
    <message>
        <source>The seal is painted over.</source>
        <translation type="unfinished">La junta está pintada.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows it open when it is shut.</source>
        <translation type="unfinished">El panel del puesto de control la muestra abierta cuando está cerrada.</translation>
    </message>
    <message>
        <source>The cover of the hose port does not shut by itself.</source>
        <translation type="unfinished">La tapa del paso de manguera no se cierra sola.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Hay dos valores impresos; aquí se da el más estricto.</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">mamparo de zona</translation>
    </message>
    <message>
        <source>stairway enclosure</source>
        <translation type="unfinished">tronco de escalera</translation>
    </message>
    <message>
        <source>galley boundary</source>
        <translation type="unfinished">contorno de cocina</translation>
    </message>
    <message>
        <source>machinery space boundary</source>
        <translation type="unfinished">contorno de espacio de máquinas</translation>
    </message>
    <message>
        <source>special category boundary</source>
        <translation type="unfinished">contorno de categoría especial</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">camarote</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">exterior</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">otro contorno</translation>
    </message>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">de una hoja</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">de dos hojas</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">corredera</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">de vaivén</translation>
    </message>
    <message>
        <source>not listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">no figura en II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>normally open</source>
        <translation type="unfinished">normalmente abierta</translation>
    </message>
    <message>
        <source>normally closed</source>
        <translation type="unfinished">normalmente cerrada</translation>
    </message>
    <message>
        <source>normally locked</source>
        <translation type="unfinished">normalmente con llave</translation>
    </message>
    <message>
        <source>not normally locked</source>
        <translation type="unfinished">normalmente sin llave</translation>
    </message>
    <message>
        <source>power-operated watertight door</source>
        <translation type="unfinished">puerta estanca de accionamiento a motor</translation>
    </message>
    <message>
        <source>not in a zone bulkhead, galley or stairway boundary</source>
        <translation type="unfinished">no está en un mamparo de zona ni en un contorno de cocina o escalera</translation>
    </message>
    <message>
        <source>A class</source>
        <translation type="unfinished">clase A</translation>
    </message>
    <message>
        <source>not an A-class door</source>
        <translation type="unfinished">no es puerta de clase A</translation>
    </message>
    <message>
        <source>B class</source>
        <translation type="unfinished">clase B</translation>
    </message>
    <message>
        <source>not a B-class door</source>
        <translation type="unfinished">no es puerta de clase B</translation>
    </message>
    <message>
        <source>power-operated</source>
        <translation type="unfinished">accionada a motor</translation>
    </message>
    <message>
        <source>not power-operated</source>
        <translation type="unfinished">no accionada a motor</translation>
    </message>
    <message>
        <source>released remotely</source>
        <translation type="unfinished">con accionamiento a distancia</translation>
    </message>
    <message>
        <source>no remote release</source>
        <translation type="unfinished">sin accionamiento a distancia</translation>
    </message>
    <message>
        <source>held open</source>
        <translation type="unfinished">retenida abierta</translation>
    </message>
    <message>
        <source>not held open</source>
        <translation type="unfinished">no retenida abierta</translation>
    </message>
    <message>
        <source>designed to re-open</source>
        <translation type="unfinished">proyectada para reabrirse</translation>
    </message>
    <message>
        <source>not designed to re-open</source>
        <translation type="unfinished">no proyectada para reabrirse</translation>
    </message>
    <message>
        <source>hose port fitted</source>
        <translation type="unfinished">con paso de manguera</translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished">sin paso de manguera</translation>
    </message>
    <message>
        <source>in an escape route</source>
        <translation type="unfinished">en una vía de evacuación</translation>
    </message>
    <message>
        <source>not in an escape route</source>
        <translation type="unfinished">fuera de una vía de evacuación</translation>
    </message>
    <message>
        <source>sill in its frame</source>
        <translation type="unfinished">umbral en su marco</translation>
    </message>
    <message>
        <source>no sill in its frame</source>
        <translation type="unfinished">sin umbral en su marco</translation>
    </message>
    <message>
        <source>needs a latch</source>
        <translation type="unfinished">requiere pestillo</translation>
    </message>
    <message>
        <source>needs no latch</source>
        <translation type="unfinished">no requiere pestillo</translation>
    </message>
    <message>
        <source>watertight</source>
        <translation type="unfinished">estanca</translation>
    </message>
    <message>
        <source>not watertight</source>
        <translation type="unfinished">no estanca</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">estanca a la intemperie</translation>
    </message>
    <message>
        <source>not weathertight</source>
        <translation type="unfinished">no estanca a la intemperie</translation>
    </message>
    <message>
        <source>emergency escape trunk</source>
        <translation type="unfinished">tronco de evacuación de emergencia</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">espacio de categoría especial</translation>
    </message>
    <message>
        <source>bulkhead</source>
        <translation type="unfinished">mamparo</translation>
    </message>
    <message>
        <source>deck</source>
        <translation type="unfinished">cubierta</translation>
    </message>
    <message>
        <source>in a deck</source>
        <translation type="unfinished">horizontal (en la propia cubierta)</translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished">no horizontal (no en la propia cubierta)</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">toda puerta</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">quilla colocada el %1</translation>
    </message>
    <message>
        <source>installed before %1</source>
        <translation type="unfinished">instalada antes del %1</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">instalada el %1</translation>
    </message>
    <message>
        <source>exempt: %1</source>
        <translation type="unfinished">exenta: %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sin placa</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">placa ilegible</translation>
    </message>
    <message>
        <source>%1, whose door needs %2</source>
        <translation type="unfinished">%1, cuya puerta requiere %2</translation>
    </message>
    <message>
        <source>plate %1</source>
        <translation type="unfinished">placa %1</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation type="unfinished">registro %1</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished">el disco está lleno</translation>
    </message>
    <message>
        <source>Free some space and try again.</source>
        <translation type="unfinished">Libere espacio y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>the disk reports a fault (SQLite %1)</source>
        <translation type="unfinished">el disco comunica un fallo (SQLite %1)</translation>
    </message>
    <message>
        <source>another program is writing to this register</source>
        <translation type="unfinished">otro programa está escribiendo en este registro</translation>
    </message>
    <message>
        <source>Wait a moment or close the other program, then try again.</source>
        <translation type="unfinished">Espere un momento o cierre el otro programa y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">no se puede abrir el archivo (SQLite %1)</translation>
    </message>
    <message>
        <source>the file is damaged (SQLite %1)</source>
        <translation type="unfinished">el archivo está dañado (SQLite %1)</translation>
    </message>
    <message>
        <source>Open the last backup instead.</source>
        <translation type="unfinished">Abra en su lugar la última copia de seguridad.</translation>
    </message>
    <message>
        <source>the computer is out of memory</source>
        <translation type="unfinished">el equipo se quedó sin memoria</translation>
    </message>
    <message>
        <source>Close other programs and try again.</source>
        <translation type="unfinished">Cierre otros programas y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">puerta %1</translation>
    </message>
    <message>
        <source>Save it first, then try again.</source>
        <translation type="unfinished">Guárdelo primero e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Elija la puerta de nuevo.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">su recorrido ha terminado</translation>
    </message>
    <message>
        <source>it would replace %1, which is about something else</source>
        <translation type="unfinished">sustituiría a %1, que trata de otra cosa</translation>
    </message>
    <message>
        <source>Save it now.</source>
        <translation type="unfinished">Guárdelo ahora.</translation>
    </message>
    <message>
        <source>the vessel has no name</source>
        <translation type="unfinished">el buque no tiene nombre</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s name.</source>
        <translation type="unfinished">Indique el nombre del buque.</translation>
    </message>
    <message>
        <source>Give the number on the certificate, 0 or more.</source>
        <translation type="unfinished">Indique el número del certificado, 0 o más.</translation>
    </message>
    <message>
        <source>a length cannot be negative</source>
        <translation type="unfinished">una eslora no puede ser negativa</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Escriba las fechas en la forma YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>this is not a number</source>
        <translation type="unfinished">esto no es un número</translation>
    </message>
    <message>
        <source>Give the figure.</source>
        <translation type="unfinished">Indique la cifra.</translation>
    </message>
    <message>
        <source>Give metres, and check the decimal point.</source>
        <translation type="unfinished">Indique metros y compruebe el punto decimal.</translation>
    </message>
    <message>
        <source>the deck has no number</source>
        <translation type="unfinished">la cubierta no tiene número</translation>
    </message>
    <message>
        <source>Give every deck its own number.</source>
        <translation type="unfinished">Dé a cada cubierta su propio número.</translation>
    </message>
    <message>
        <source>the zone has no number</source>
        <translation type="unfinished">la zona no tiene número</translation>
    </message>
    <message>
        <source>Give every zone its own number.</source>
        <translation type="unfinished">Dé a cada zona su propio número.</translation>
    </message>
    <message>
        <source>the boundary has no id</source>
        <translation type="unfinished">el contorno no tiene id</translation>
    </message>
    <message>
        <source>Give every boundary its own id.</source>
        <translation type="unfinished">Dé a cada contorno su propio id.</translation>
    </message>
    <message>
        <source>the door has no number</source>
        <translation type="unfinished">la puerta no tiene número</translation>
    </message>
    <message>
        <source>Give every door its own number.</source>
        <translation type="unfinished">Dé a cada puerta su propio número.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">la cubierta &quot;%1&quot; tiene espacios en blanco antes o después del número</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">la zona &quot;%1&quot; tiene espacios en blanco antes o después del número</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; has blanks around its id</source>
        <translation type="unfinished">el contorno &quot;%1&quot; tiene espacios en blanco antes o después del id</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">la puerta &quot;%1&quot; tiene espacios en blanco antes o después del número</translation>
    </message>
    <message>
        <source>no deck is named</source>
        <translation type="unfinished">no se nombra ninguna cubierta</translation>
    </message>
    <message>
        <source>Name the deck.</source>
        <translation type="unfinished">Nombre la cubierta.</translation>
    </message>
    <message>
        <source>no zone is named</source>
        <translation type="unfinished">no se nombra ninguna zona</translation>
    </message>
    <message>
        <source>Name the zone.</source>
        <translation type="unfinished">Nombre la zona.</translation>
    </message>
    <message>
        <source>no boundary is named</source>
        <translation type="unfinished">no se nombra ningún contorno</translation>
    </message>
    <message>
        <source>Name the boundary.</source>
        <translation type="unfinished">Nombre el contorno.</translation>
    </message>
    <message>
        <source>Correct the name, or add the deck.</source>
        <translation type="unfinished">Corrija el nombre o añada la cubierta.</translation>
    </message>
    <message>
        <source>Correct the name, or add the zone.</source>
        <translation type="unfinished">Corrija el nombre o añada la zona.</translation>
    </message>
    <message>
        <source>Correct the name, or add the boundary.</source>
        <translation type="unfinished">Corrija el nombre o añada el contorno.</translation>
    </message>
    <message>
        <source>an area must be more than 0</source>
        <translation type="unfinished">un área debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">el límite de proa, %1 m, no está a proa del límite de popa, %2 m</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">la zona &quot;%1&quot; empieza en %2 m, dentro de la zona &quot;%3&quot;, que acaba en %4 m</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Escriba dos números de 1 a %1, o déjelo vacío.</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Nombre la zona que queda a popa y la que queda a proa.</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Indique el ancho libre en metros, más de 0 y como máximo 10.</translation>
    </message>
    <message>
        <source>Give kilograms, more than 0 and at most 5000, or leave it empty.</source>
        <translation type="unfinished">Indique kilogramos, más de 0 y como máximo 5000, o déjelo vacío.</translation>
    </message>
    <message>
        <source>release group &quot;%1&quot; is empty or has a blank in its name</source>
        <translation type="unfinished">el grupo de accionamiento &quot;%1&quot; está vacío o tiene un espacio en blanco en el nombre</translation>
    </message>
    <message>
        <source>Name release groups without blanks.</source>
        <translation type="unfinished">Dé a los grupos de accionamiento nombres sin espacios en blanco.</translation>
    </message>
    <message>
        <source>Give it as postgresql://USER@HOST:PORT/DATABASE, with the password in PGPASSWORD or ~/.pgpass.</source>
        <translation type="unfinished">Indíquela como postgresql://USER@HOST:PORT/DATABASE, con la contraseña en PGPASSWORD o en ~/.pgpass.</translation>
    </message>
    <message>
        <source>it names no database</source>
        <translation type="unfinished">no nombra ninguna base de datos</translation>
    </message>
    <message>
        <source>Qt&apos;s PostgreSQL driver is not installed</source>
        <translation type="unfinished">el controlador de PostgreSQL de Qt no está instalado</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-psql.</source>
        <translation type="unfinished">Instale el paquete libqt6sql6-psql.</translation>
    </message>
    <message>
        <source>no connection: %1</source>
        <translation type="unfinished">sin conexión: %1</translation>
    </message>
    <message>
        <source>Run it again.</source>
        <translation type="unfinished">Ejecútelo de nuevo.</translation>
    </message>
    <message>
        <source>Trying again.</source>
        <translation type="unfinished">Se intenta de nuevo.</translation>
    </message>
    <message>
        <source>Give an empty one (CREATE DATABASE).</source>
        <translation type="unfinished">Indique una vacía (CREATE DATABASE).</translation>
    </message>
    <message>
        <source>its schema &quot;latchround&quot; was not made by this program: NOT touched</source>
        <translation type="unfinished">su esquema &quot;latchround&quot; no lo creó este programa: NO se ha tocado</translation>
    </message>
    <message>
        <source>Give an empty database.</source>
        <translation type="unfinished">Indique una base de datos vacía.</translation>
    </message>
    <message>
        <source>Update this program.</source>
        <translation type="unfinished">Actualice este programa.</translation>
    </message>
    <message>
        <source>its vessel has no identification number</source>
        <translation type="unfinished">su buque no tiene número de identificación</translation>
    </message>
    <message>
        <source>no file is named</source>
        <translation type="unfinished">no se nombra ningún archivo</translation>
    </message>
    <message>
        <source>Name at least one.</source>
        <translation type="unfinished">Nombre al menos uno.</translation>
    </message>
    <message>
        <source>is not a JSON object</source>
        <translation type="unfinished">no es un objeto JSON</translation>
    </message>
    <message>
        <source>Restore the file from a good copy.</source>
        <translation type="unfinished">Restaure el archivo desde una copia buena.</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Los id deben ser únicos.</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Déjela en uno de ellos.</translation>
    </message>
    <message>
        <source>Give it a field.</source>
        <translation type="unfinished">Póngale un campo.</translation>
    </message>
    <message>
        <source>must be a list of conditions</source>
        <translation type="unfinished">debe ser una lista de condiciones</translation>
    </message>
    <message>
        <source>must be a list of variants</source>
        <translation type="unfinished">debe ser una lista de variantes</translation>
    </message>
    <message>
        <source>Write the question as it is asked at the door.</source>
        <translation type="unfinished">Escriba la pregunta como se hace ante la puerta.</translation>
    </message>
    <message>
        <source>this check needs a lower limit</source>
        <translation type="unfinished">esta comprobación necesita un límite inferior</translation>
    </message>
    <message>
        <source>Add a number.</source>
        <translation type="unfinished">Añada un número.</translation>
    </message>
    <message>
        <source>this check needs an upper limit</source>
        <translation type="unfinished">esta comprobación necesita un límite superior</translation>
    </message>
    <message>
        <source>the lower limit is not below the upper one</source>
        <translation type="unfinished">el límite inferior no es menor que el superior</translation>
    </message>
    <message>
        <source>Check both numbers.</source>
        <translation type="unfinished">Compruebe ambos números.</translation>
    </message>
    <message>
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Nombre gauge, closing-time, closing-rate, alarm-lead o alarm-after-shut.</translation>
    </message>
    <message>
        <source>Write &quot;change&quot;: &quot;tighten&quot; or &quot;replace&quot;.</source>
        <translation type="unfinished">Escriba &quot;change&quot;: &quot;tighten&quot; o &quot;replace&quot;.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; no está en el catálogo</translation>
    </message>
    <message>
        <source>Check its spelling, or write &quot;change&quot;: &quot;add&quot;.</source>
        <translation type="unfinished">Compruebe cómo está escrito, o escriba &quot;change&quot;: &quot;add&quot;.</translation>
    </message>
    <message>
        <source>Give low or high.</source>
        <translation type="unfinished">Indique low o high.</translation>
    </message>
    <message>
        <source>must be a list of categories</source>
        <translation type="unfinished">debe ser una lista de categorías</translation>
    </message>
    <message>
        <source>categories must be numbered from 1 without a gap</source>
        <translation type="unfinished">las categorías deben numerarse desde 1 sin saltos</translation>
    </message>
    <message>
        <source>must be a list with at least one table</source>
        <translation type="unfinished">debe ser una lista con al menos una tabla</translation>
    </message>
    <message>
        <source>Keep one of them.</source>
        <translation type="unfinished">Deje una de ellas.</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation type="unfinished">falta</translation>
    </message>
    <message>
        <source>Write null where nothing is printed.</source>
        <translation type="unfinished">Escriba null donde no haya nada impreso.</translation>
    </message>
    <message>
        <source>Write a class with its notes in brackets, *, - or null.</source>
        <translation type="unfinished">Escriba una clase con sus notas entre paréntesis, *, - o null.</translation>
    </message>
    <message>
        <source>note &apos;%1&apos; is not in this table&apos;s notes</source>
        <translation type="unfinished">la nota &apos;%1&apos; no está en las notas de esta tabla</translation>
    </message>
    <message>
        <source>Add the note.</source>
        <translation type="unfinished">Añada la nota.</translation>
    </message>
    <message>
        <source>See latchround-cli --help.</source>
        <translation type="unfinished">Véase latchround-cli --help.</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation type="unfinished">no se pudo escribir</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Compruebe el nombre, o importe antes uno.</translation>
    </message>
    <message>
        <source>Import one first.</source>
        <translation type="unfinished">Importe antes uno.</translation>
    </message>
    <message>
        <source>no walkdown is recorded in this register</source>
        <translation type="unfinished">en este registro no consta ningún recorrido</translation>
    </message>
    <message>
        <source>Begin one first.</source>
        <translation type="unfinished">Empiece antes uno.</translation>
    </message>
    <message>
        <source>no walkdown has the id &apos;%1&apos;</source>
        <translation type="unfinished">ningún recorrido tiene el id &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The latest is %2.</source>
        <translation type="unfinished">El último es %2.</translation>
    </message>
    <message>
        <source>a key is 64 lower-case hex digits</source>
        <translation type="unfinished">una clave consta de 64 cifras hexadecimales en minúscula</translation>
    </message>
    <message>
        <source>Add --person NAME.</source>
        <translation type="unfinished">Añada --person NAME.</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Compárela con la que muestra la otra tableta.</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Elija pdf, csv o json.</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Escríbalo en un archivo PDF.</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Indique su número.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">falta</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %2, such as 3,7.</source>
        <translation type="unfinished">Escriba dos números de 1 a %2, por ejemplo 3,7.</translation>
    </message>
    <message>
        <source>the categories of the two spaces are needed</source>
        <translation type="unfinished">hacen falta las categorías de los dos espacios</translation>
    </message>
    <message>
        <source>Write them like 3,7.</source>
        <translation type="unfinished">Escríbalas así: 3,7.</translation>
    </message>
    <message>
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Pida bulkhead o deck.</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Escriba 0.95 para el 95 %.</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Escriba un número.</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Escriba un número, por ejemplo 10.3.</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Escríbala en la unidad del valor, para k = 1.</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Indique --low, --high o ambos.</translation>
    </message>
    <message>
        <source>there must be at least 1 door and at most %1</source>
        <translation type="unfinished">debe haber al menos 1 puerta y como máximo %1</translation>
    </message>
    <message>
        <source>Give the number of doors.</source>
        <translation type="unfinished">Indique el número de puertas.</translation>
    </message>
    <message>
        <source>must be 0 or more and less than the number of doors</source>
        <translation type="unfinished">debe ser 0 o más y menor que el número de puertas</translation>
    </message>
    <message>
        <source>Give the number of defective doors that the claim allows.</source>
        <translation type="unfinished">Indique el número de puertas defectuosas que admite la afirmación.</translation>
    </message>
    <message>
        <source>a result is how many were tested and how many of those failed</source>
        <translation type="unfinished">un resultado es cuántas se probaron y cuántas de ellas fallaron</translation>
    </message>
    <message>
        <source>Give both, or neither.</source>
        <translation type="unfinished">Indique ambos números o ninguno.</translation>
    </message>
    <message>
        <source>Check the three numbers.</source>
        <translation type="unfinished">Compruebe los tres números.</translation>
    </message>
    <message>
        <source>Start it on a desktop, or use latchround-cli.</source>
        <translation type="unfinished">Inícielo en un escritorio, o use latchround-cli.</translation>
    </message>
    <message>
        <source>there is no such register file</source>
        <translation type="unfinished">no existe ese archivo de registro</translation>
    </message>
    <message>
        <source>Check the path, or start without one.</source>
        <translation type="unfinished">Compruebe la ruta, o inicie sin ninguno.</translation>
    </message>
    <message>
        <source>The flag&apos;s own rules are NOT in force: %1</source>
        <translation type="unfinished">Las reglas propias de la bandera NO están en vigor: %1</translation>
    </message>
    <message>
        <source>Save them first.</source>
        <translation type="unfinished">Guárdelas primero.</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">no se puede leer el archivo</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">la imagen ocupa más de %1 MB</translation>
    </message>
    <message>
        <source>this is not a picture that can be shown</source>
        <translation type="unfinished">esto no es una imagen que se pueda mostrar</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation type="unfinished">Elija un archivo JPEG o PNG.</translation>
    </message>
    <message>
        <source>Take it again.</source>
        <translation type="unfinished">Tómela de nuevo.</translation>
    </message>
    <message>
        <source>Close it there, then open the vessel here again.</source>
        <translation type="unfinished">Ciérrelo allí y abra aquí el buque de nuevo.</translation>
    </message>
    <message>
        <source>Something is not saved yet</source>
        <translation type="unfinished">Algo aún no está guardado</translation>
    </message>
    <message>
        <source>the program ended before this was saved</source>
        <translation type="unfinished">el programa terminó antes de guardarse esto</translation>
    </message>
    <message>
        <source>it was cut short</source>
        <translation type="unfinished">quedó cortado</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Libere espacio y vuelva a iniciar el programa.</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Elija uno de sus recorridos.</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Compruebe el número.</translation>
    </message>
    <message>
        <source>Free some memory and try again.</source>
        <translation type="unfinished">Libere memoria e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>the bookmarks could not be written: %1</source>
        <translation type="unfinished">no se pudieron escribir los marcadores: %1</translation>
    </message>
    <message>
        <source>the file has no vessel row</source>
        <translation type="unfinished">el archivo no tiene fila de buque</translation>
    </message>
    <message>
        <source>Begin with the header &quot;vessel:&quot; and a row &quot;vessel&quot; below it.</source>
        <translation type="unfinished">Empiece con el encabezado &quot;vessel:&quot; y una fila &quot;vessel&quot; debajo.</translation>
    </message>
    <message>
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Ponga cada buque en un archivo propio.</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Una fila empieza por vessel, deck, zone, boundary o door.</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Una fila empieza por vessel, deck, zone, boundary o door.</translation>
    </message>
    <message>
        <source>the row has more cells than its header has columns</source>
        <translation type="unfinished">la fila tiene más celdas que columnas su encabezado</translation>
    </message>
    <message>
        <source>A text or number with a comma in it needs quotes around it.</source>
        <translation type="unfinished">Un texto o número que contiene una coma debe ir entre comillas.</translation>
    </message>
    <message>
        <source>the %1 table has no such column</source>
        <translation type="unfinished">la tabla %1 no tiene esa columna</translation>
    </message>
    <message>
        <source>the required column %1 is missing</source>
        <translation type="unfinished">falta la columna obligatoria %1</translation>
    </message>
    <message>
        <source>Add it to the header and to every row of the table.</source>
        <translation type="unfinished">Añádala al encabezado y a cada fila de la tabla.</translation>
    </message>
    <message>
        <source>%1; the first is on line %2</source>
        <translation type="unfinished">%1; la primera vez está en la línea %2</translation>
    </message>
    <message>
        <source>these are not the categories of two spaces</source>
        <translation type="unfinished">estas no son las categorías de dos espacios</translation>
    </message>
    <message>
        <source>Write two numbers with a blank between, such as 3 7, or leave it empty.</source>
        <translation type="unfinished">Escriba dos números separados por un espacio en blanco, por ejemplo 3 7, o déjelo vacío.</translation>
    </message>
    <message>
        <source>Write x,y on each line.</source>
        <translation type="unfinished">Escriba x,y en cada línea.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number</source>
        <translation type="unfinished">&quot;%1&quot; no es un número</translation>
    </message>
    <message>
        <source>Write a number such as 12.4.</source>
        <translation type="unfinished">Escriba un número, por ejemplo 12.4.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Escríbalo así: 2026-11-25T10:42:13.120+01:00.</translation>
    </message>
    <message>
        <source>It must be one of: %2.</source>
        <translation type="unfinished">Debe ser una de estas: %2.</translation>
    </message>
    <message>
        <source>this must be a list of doors</source>
        <translation type="unfinished">esto debe ser una lista de puertas</translation>
    </message>
    <message>
        <source>Write it in brackets.</source>
        <translation type="unfinished">Escríbala entre corchetes.</translation>
    </message>
    <message>
        <source>a door needs a number</source>
        <translation type="unfinished">una puerta necesita un número</translation>
    </message>
    <message>
        <source>Give the one painted on it.</source>
        <translation type="unfinished">Indique el que lleva pintado.</translation>
    </message>
    <message>
        <source>a clear opening must be more than 0 and at most 10 m</source>
        <translation type="unfinished">una abertura libre debe ser mayor que 0 y como máximo de 10 m</translation>
    </message>
    <message>
        <source>Give the clear width in metres.</source>
        <translation type="unfinished">Indique el ancho libre en metros.</translation>
    </message>
    <message>
        <source>a leaf must weigh more than 0 and at most 5000 kg</source>
        <translation type="unfinished">una hoja debe pesar más de 0 y como máximo 5000 kg</translation>
    </message>
    <message>
        <source>Give the mass of the heaviest leaf in kilograms.</source>
        <translation type="unfinished">Indique la masa de la hoja más pesada en kilogramos.</translation>
    </message>
    <message>
        <source>Write them like [3, 5].</source>
        <translation type="unfinished">Escríbalas así: [3, 5].</translation>
    </message>
    <message>
        <source>this must be an object</source>
        <translation type="unfinished">esto debe ser un objeto</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;requirement&quot;: value}.</source>
        <translation type="unfinished">Escríbalo entre llaves: {&quot;requirement&quot;: value}.</translation>
    </message>
    <message>
        <source>Write &quot;yes&quot;, &quot;no&quot; or &quot;n/a&quot;.</source>
        <translation type="unfinished">Escriba &quot;yes&quot;, &quot;no&quot; o &quot;n/a&quot;.</translation>
    </message>
    <message>
        <source>this requirement is not answered by yes or no</source>
        <translation type="unfinished">a este requisito no se responde con sí o no</translation>
    </message>
    <message>
        <source>Give its figure under &quot;measured&quot;.</source>
        <translation type="unfinished">Indique su cifra en &quot;measured&quot;.</translation>
    </message>
    <message>
        <source>It follows from the runs or from the class.</source>
        <translation type="unfinished">Se deduce de los ensayos o de la clase.</translation>
    </message>
    <message>
        <source>Give runs with their marks, or an answer under &quot;observations&quot;.</source>
        <translation type="unfinished">Indique ensayos con sus marcas, o una respuesta en &quot;observations&quot;.</translation>
    </message>
    <message>
        <source>this must be a number, 0 or more</source>
        <translation type="unfinished">esto debe ser un número, 0 o más</translation>
    </message>
    <message>
        <source>Write it without quotes.</source>
        <translation type="unfinished">Escríbalo sin comillas.</translation>
    </message>
    <message>
        <source>Write it in %1, without quotes.</source>
        <translation type="unfinished">Escríbalo en %1, sin comillas.</translation>
    </message>
    <message>
        <source>this must be a list of runs</source>
        <translation type="unfinished">esto debe ser una lista de ensayos</translation>
    </message>
    <message>
        <source>a run without marks shows nothing</source>
        <translation type="unfinished">un ensayo sin marcas no muestra nada</translation>
    </message>
    <message>
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">un tiempo debe estar entre 0 y 3600 segundos</translation>
    </message>
    <message>
        <source>Give the heel in degrees.</source>
        <translation type="unfinished">Indique la escora en grados.</translation>
    </message>
    <message>
        <source>the run is not complete: &quot;%1&quot; was not marked</source>
        <translation type="unfinished">el ensayo no está completo: no se marcó &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Check the folder.</source>
        <translation type="unfinished">Compruebe la carpeta.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Elija otro archivo.</translation>
    </message>
    <message>
        <source>Write it like &quot;stairway-doors&quot;.</source>
        <translation type="unfinished">Escríbalo como &quot;stairway-doors&quot;.</translation>
    </message>
    <message>
        <source>is longer than %1 bytes</source>
        <translation type="unfinished">ocupa más de %1 bytes</translation>
    </message>
    <message>
        <source>must be a list of doors</source>
        <translation type="unfinished">debe ser una lista de puertas</translation>
    </message>
    <message>
        <source>Write it like [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</source>
        <translation type="unfinished">Escríbalo como [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</translation>
    </message>
    <message>
        <source>Put all of its faults in one place.</source>
        <translation type="unfinished">Ponga todos sus fallos en un solo lugar.</translation>
    </message>
    <message>
        <source>the practice vessel has no door &apos;%1&apos;</source>
        <translation type="unfinished">el buque de práctica no tiene ninguna puerta &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Use one of its doors.</source>
        <translation type="unfinished">Use una de sus puertas.</translation>
    </message>
    <message>
        <source>door %1 cannot have the fault &apos;%2&apos;</source>
        <translation type="unfinished">la puerta %1 no puede tener el fallo &apos;%2&apos;</translation>
    </message>
    <message>
        <source>Give it to a door of another kind or fitting.</source>
        <translation type="unfinished">Póngalo en una puerta de otro tipo o con otro equipamiento.</translation>
    </message>
    <message>
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Ponga uno de ellos en otra puerta.</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Indique cuántos fallos se sortean.</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Sortee menos o nombre más puertas.</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Añádalo, de 1 a 100.</translation>
    </message>
    <message>
        <source>this must be an object of doors</source>
        <translation type="unfinished">esto debe ser un objeto de puertas</translation>
    </message>
    <message>
        <source>Write it like {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</source>
        <translation type="unfinished">Escríbalo como {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</translation>
    </message>
    <message>
        <source>door %1 is not released this way</source>
        <translation type="unfinished">la puerta %1 no se acciona de este modo</translation>
    </message>
    <message>
        <source>Write one of: %2.</source>
        <translation type="unfinished">Escriba uno de estos: %2.</translation>
    </message>
    <message>
        <source>a time must be from 0 to %1 seconds</source>
        <translation type="unfinished">un tiempo debe estar entre 0 y %1 segundos</translation>
    </message>
    <message>
        <source>Give seconds after the release.</source>
        <translation type="unfinished">Indique los segundos desde el accionamiento.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Escríbala como 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Comuníquelo, por favor.</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Dé otro id al suyo.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">debe tener al menos %1 caracteres</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">no se pudo componer: %1</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">el archivo está dañado (%1)</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">no se puede leer %1</translation>
    </message>
    <message>
        <source>%1 is missing from it</source>
        <translation type="unfinished">le falta %1</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB</source>
        <translation type="unfinished">%1 ocupa más de %2 MB</translation>
    </message>
    <message>
        <source>%1 is damaged</source>
        <translation type="unfinished">%1 está dañado</translation>
    </message>
    <message>
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem no es la clave que indica handover.json</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">esto viene de la práctica: nada de lo que contiene es constancia de un buque</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">este archivo viene de un programa más nuevo (forma %1; este lee hasta la %2)</translation>
    </message>
    <message>
        <source>this must be a list</source>
        <translation type="unfinished">esto debe ser una lista</translation>
    </message>
    <message>
        <source>arrangements are numbered from 1</source>
        <translation type="unfinished">las disposiciones se numeran desde 1</translation>
    </message>
    <message>
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">ocuparía más de %1 MB</translation>
    </message>
    <message>
        <source>there is no such walkdown to sign</source>
        <translation type="unfinished">no existe ese recorrido para firmarlo</translation>
    </message>
    <message>
        <source>Choose another.</source>
        <translation type="unfinished">Elija otro.</translation>
    </message>
    <message>
        <source>Do not rely on this signature.</source>
        <translation type="unfinished">No se fíe de esta firma.</translation>
    </message>
    <message>
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">retira algo, pero no dice qué</translation>
    </message>
    <message>
        <source>it replaces %1, which replaces it in turn</source>
        <translation type="unfinished">sustituye a %1, que a su vez lo sustituye</translation>
    </message>
    <message>
        <source>it replaces %1, which is about something else</source>
        <translation type="unfinished">sustituye a %1, que trata de otra cosa</translation>
    </message>
    <message>
        <source>%1 line %2</source>
        <translation type="unfinished">%1 línea %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3</source>
        <translation type="unfinished">%1 línea %2, columna %3</translation>
    </message>
    <message>
        <source>%1, column %2</source>
        <translation type="unfinished">%1, columna %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3 (%4)</source>
        <translation type="unfinished">%1 línea %2, columna %3 (%4)</translation>
    </message>
    <message>
        <source>%1 line %2 (%3)</source>
        <translation type="unfinished">%1 línea %2 (%3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished">%1 (%2)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation type="unfinished">%1 en %2</translation>
    </message>
    <message>
        <source>built-in %1</source>
        <translation type="unfinished">%1 del programa</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>door (no number)</source>
        <translation type="unfinished">puerta (sin número)</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>boundary %1</source>
        <translation type="unfinished">contorno %1</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished">buque</translation>
    </message>
    <message>
        <source>vessel %1</source>
        <translation type="unfinished">buque %1</translation>
    </message>
    <message>
        <source>vessel %1 %2</source>
        <translation type="unfinished">buque %1 %2</translation>
    </message>
    <message>
        <source>signature %1</source>
        <translation type="unfinished">firma %1</translation>
    </message>
    <message>
        <source>report %1</source>
        <translation type="unfinished">informe %1</translation>
    </message>
    <message>
        <source>photograph %1</source>
        <translation type="unfinished">foto %1</translation>
    </message>
    <message>
        <source>device %1</source>
        <translation type="unfinished">equipo %1</translation>
    </message>
    <message>
        <source>device %1 (%2)</source>
        <translation type="unfinished">equipo %1 (%2)</translation>
    </message>
    <message>
        <source>key %1</source>
        <translation type="unfinished">clave %1</translation>
    </message>
    <message>
        <source>this device&apos;s key</source>
        <translation type="unfinished">la clave de este equipo</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">registro</translation>
    </message>
    <message>
        <source>handover file</source>
        <translation type="unfinished">archivo de traspaso</translation>
    </message>
    <message>
        <source>handover</source>
        <translation type="unfinished">traspaso</translation>
    </message>
    <message>
        <source>practice</source>
        <translation type="unfinished">práctica</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">foto</translation>
    </message>
    <message>
        <source>walkdown %1</source>
        <translation type="unfinished">recorrido %1</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">ficha de la puerta</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">intento</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished">no existe tal archivo</translation>
    </message>
    <message>
        <source>Check its name and folder.</source>
        <translation type="unfinished">Compruebe su nombre y su carpeta.</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished">esto es una carpeta, no un archivo</translation>
    </message>
    <message>
        <source>Name the file in it.</source>
        <translation type="unfinished">Indique el archivo que está en ella.</translation>
    </message>
    <message>
        <source>this is not a file that can be read</source>
        <translation type="unfinished">esto no es un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>the file is larger than %1 MB</source>
        <translation type="unfinished">el archivo ocupa más de %1 MB</translation>
    </message>
    <message>
        <source>Choose the right file.</source>
        <translation type="unfinished">Elija el archivo correcto.</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation type="unfinished">no se puede abrir el archivo</translation>
    </message>
    <message>
        <source>Ask for permission to read it.</source>
        <translation type="unfinished">Pida permiso para leerlo.</translation>
    </message>
    <message>
        <source>the file could not be read to its end</source>
        <translation type="unfinished">no se pudo leer el archivo hasta el final</translation>
    </message>
    <message>
        <source>Try again, or copy it first.</source>
        <translation type="unfinished">Vuelva a intentarlo o cópielo primero.</translation>
    </message>
    <message>
        <source>Give a file name.</source>
        <translation type="unfinished">Dé un nombre de archivo.</translation>
    </message>
    <message>
        <source>Give another name.</source>
        <translation type="unfinished">Dé otro nombre.</translation>
    </message>
    <message>
        <source>cannot be written here: %1</source>
        <translation type="unfinished">no se puede escribir aquí: %1</translation>
    </message>
    <message>
        <source>not all of it could be written: %1</source>
        <translation type="unfinished">no se pudo escribir todo: %1</translation>
    </message>
    <message>
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">no se pudo cerrar el archivo escrito: %1</translation>
    </message>
    <message>
        <source>Choose another place; what was there before is untouched.</source>
        <translation type="unfinished">Elija otro lugar; lo que había antes sigue intacto.</translation>
    </message>
    <message>
        <source>it is written, but its folder could not be flushed: %1</source>
        <translation type="unfinished">está escrito, pero no se pudo volcar su carpeta: %1</translation>
    </message>
    <message>
        <source>its folder could not be flushed: %1</source>
        <translation type="unfinished">no se pudo volcar su carpeta: %1</translation>
    </message>
    <message>
        <source>A vessel&apos;s register is far smaller; choose the right file.</source>
        <translation type="unfinished">El registro de un buque es mucho menor; elija el archivo correcto.</translation>
    </message>
    <message>
        <source>the file is written in UTF-16, not in UTF-8</source>
        <translation type="unfinished">el archivo está escrito en UTF-16, no en UTF-8</translation>
    </message>
    <message>
        <source>Save it as CSV UTF-8.</source>
        <translation type="unfinished">Guárdelo como CSV UTF-8.</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation type="unfinished">el archivo está vacío</translation>
    </message>
    <message>
        <source>Export a register to see the tables it needs.</source>
        <translation type="unfinished">Exporte un registro para ver las tablas que necesita.</translation>
    </message>
    <message>
        <source>Put one quote at each end of the cell and double any quote inside it, or save the table as CSV again from the spreadsheet.</source>
        <translation type="unfinished">Ponga una comilla en cada extremo de la celda y doble toda comilla que haya dentro, o guarde de nuevo la tabla como CSV desde la hoja de cálculo.</translation>
    </message>
    <message>
        <source>a quoted cell is not closed before the file ends</source>
        <translation type="unfinished">una celda entre comillas no se cierra antes del fin del archivo</translation>
    </message>
    <message>
        <source>byte %1 is not UTF-8</source>
        <translation type="unfinished">el byte %1 no es UTF-8</translation>
    </message>
    <message>
        <source>Save the file as CSV UTF-8.</source>
        <translation type="unfinished">Guarde el archivo como CSV UTF-8.</translation>
    </message>
    <message>
        <source>the cell is empty</source>
        <translation type="unfinished">la celda está vacía</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation type="unfinished">Rellénela.</translation>
    </message>
    <message>
        <source>Write digits with a point, such as 71.40, without a unit.</source>
        <translation type="unfinished">Escriba cifras con punto, como 71.40, sin unidad.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number</source>
        <translation type="unfinished">&quot;%1&quot; no es un número entero</translation>
    </message>
    <message>
        <source>Write digits only, such as 1200.</source>
        <translation type="unfinished">Escriba solo cifras, como 1200.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither yes nor no</source>
        <translation type="unfinished">&quot;%1&quot; no es ni yes ni no</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation type="unfinished">Escriba yes o no.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date</source>
        <translation type="unfinished">&quot;%1&quot; no es una fecha</translation>
    </message>
    <message>
        <source>Write it as YYYY-MM-DD, such as 2015-03-01, or leave it empty.</source>
        <translation type="unfinished">Escríbala como YYYY-MM-DD, por ejemplo 2015-03-01, o déjela vacía.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here</source>
        <translation type="unfinished">&quot;%1&quot; no se conoce aquí</translation>
    </message>
    <message>
        <source>this is not JSON</source>
        <translation type="unfinished">esto no es JSON</translation>
    </message>
    <message>
        <source>Look for a missing comma, quote or bracket just before this place; the file must be UTF-8.</source>
        <translation type="unfinished">Busque una coma, una comilla, una llave o un corchete que falte justo antes de este lugar; el archivo debe estar en UTF-8.</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation type="unfinished">Corríjalo.</translation>
    </message>
    <message>
        <source>this field is given twice</source>
        <translation type="unfinished">este campo figura dos veces</translation>
    </message>
    <message>
        <source>this field is missing</source>
        <translation type="unfinished">falta este campo</translation>
    </message>
    <message>
        <source>Add it.</source>
        <translation type="unfinished">Añádalo.</translation>
    </message>
    <message>
        <source>this field is not known here</source>
        <translation type="unfinished">este campo no se conoce aquí</translation>
    </message>
    <message>
        <source>this field is empty</source>
        <translation type="unfinished">este campo está vacío</translation>
    </message>
    <message>
        <source>this list is empty</source>
        <translation type="unfinished">esta lista está vacía</translation>
    </message>
    <message>
        <source>Name at least one, or leave the field out.</source>
        <translation type="unfinished">Indique al menos uno o deje fuera el campo.</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;field&quot;: value}.</source>
        <translation type="unfinished">Escríbalo entre llaves: {&quot;field&quot;: valor}.</translation>
    </message>
    <message>
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Escríbala entre corchetes: [&quot;uno&quot;, &quot;dos&quot;].</translation>
    </message>
    <message>
        <source>Write it in quotes.</source>
        <translation type="unfinished">Escríbalo entre comillas.</translation>
    </message>
    <message>
        <source>this must be a number</source>
        <translation type="unfinished">esto debe ser un número</translation>
    </message>
    <message>
        <source>Write it without quotes, with a point.</source>
        <translation type="unfinished">Escríbalo sin comillas, con punto.</translation>
    </message>
    <message>
        <source>this must be a whole number from %1 to %2</source>
        <translation type="unfinished">esto debe ser un número entero de %1 a %2</translation>
    </message>
    <message>
        <source>Write digits only, without quotes.</source>
        <translation type="unfinished">Escriba solo cifras, sin comillas.</translation>
    </message>
    <message>
        <source>this must be true or false</source>
        <translation type="unfinished">esto debe ser true o false</translation>
    </message>
    <message>
        <source>Write YYYY-MM-DD.</source>
        <translation type="unfinished">Escriba YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>boundary %1 (%2)</source>
        <translation type="unfinished">contorno %1 (%2)</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, %2 by %3</source>
        <translation type="unfinished">contorno %1 según el plano aprobado, %2 según %3</translation>
    </message>
    <message>
        <source>%1: NOT saved</source>
        <translation type="unfinished">%1: NO guardado</translation>
    </message>
    <message>
        <source>%1: NOT adopted</source>
        <translation type="unfinished">%1: NO adoptada</translation>
    </message>
    <message>
        <source>it refers to something that is not in this register</source>
        <translation type="unfinished">remite a algo que no está en este registro</translation>
    </message>
    <message>
        <source>Record what it refers to first.</source>
        <translation type="unfinished">Registre primero aquello a lo que remite.</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Registre en su lugar una corrección.</translation>
    </message>
    <message>
        <source>Enter it again.</source>
        <translation type="unfinished">Introdúzcalo de nuevo.</translation>
    </message>
    <message>
        <source>a value is missing or is not a number (%1)</source>
        <translation type="unfinished">falta un valor o no es un número (%1)</translation>
    </message>
    <message>
        <source>it is too large for the register</source>
        <translation type="unfinished">es demasiado grande para el registro</translation>
    </message>
    <message>
        <source>Use a smaller photograph or a shorter text.</source>
        <translation type="unfinished">Use una foto más pequeña o un texto más corto.</translation>
    </message>
    <message>
        <source>%1 (SQLite %2)</source>
        <translation type="unfinished">%1 (SQLite %2)</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not installed</source>
        <translation type="unfinished">el controlador SQLite de Qt no está instalado</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-sqlite.</source>
        <translation type="unfinished">Instale el paquete libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not usable</source>
        <translation type="unfinished">el controlador SQLite de Qt no se puede usar</translation>
    </message>
    <message>
        <source>Put the register back beside it, or move that file away to begin a new register.</source>
        <translation type="unfinished">Vuelva a poner el registro junto a ese archivo, o llévese ese archivo a otro lugar para empezar un registro nuevo.</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation type="unfinished">la carpeta no existe</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Elija otra carpeta.</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">el disco comunica un fallo</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">esto no es un archivo</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Cópielo a una carpeta suya y ábralo allí.</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Actualice este programa y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>SQLite does not accept &quot;%1&quot; here (it answers %2), so entries would not be safe</source>
        <translation type="unfinished">SQLite no acepta aquí &quot;%1&quot; (responde %2), así que las entradas no estarían a salvo</translation>
    </message>
    <message>
        <source>Copy the register to a disk of this computer and open it there.</source>
        <translation type="unfinished">Copie el registro a un disco de este equipo y ábralo allí.</translation>
    </message>
    <message>
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Ciérrelo allí y ábralo aquí después.</translation>
    </message>
    <message>
        <source>Open it with the program that wrote it.</source>
        <translation type="unfinished">Ábralo con el programa que lo escribió.</translation>
    </message>
    <message>
        <source>the file is damaged: %1</source>
        <translation type="unfinished">el archivo está dañado: %1</translation>
    </message>
    <message>
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">este es un registro de práctica: nada de lo que contiene es constancia de un buque</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Impórtelo en un registro propio.</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">otro programa</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Ciérrelo allí primero.</translation>
    </message>
    <message>
        <source>the register is closed after a fault</source>
        <translation type="unfinished">el registro está cerrado tras un fallo</translation>
    </message>
    <message>
        <source>Open it again.</source>
        <translation type="unfinished">Ábralo de nuevo.</translation>
    </message>
    <message>
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Registre una corrección con su propio id.</translation>
    </message>
    <message>
        <source>Take or choose the photograph again.</source>
        <translation type="unfinished">Tome o elija la foto de nuevo.</translation>
    </message>
    <message>
        <source>its bytes are not in this register</source>
        <translation type="unfinished">sus bytes no están en este registro</translation>
    </message>
    <message>
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">no existe tal puerta en el registro de este buque</translation>
    </message>
    <message>
        <source>%1 is not in this register</source>
        <translation type="unfinished">%1 no está en este registro</translation>
    </message>
    <message>
        <source>Record it first, or both together.</source>
        <translation type="unfinished">Regístrelo primero, o ambos a la vez.</translation>
    </message>
    <message>
        <source>the walkdown &quot;%1&quot;</source>
        <translation type="unfinished">el recorrido &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the run &quot;%1&quot;</source>
        <translation type="unfinished">el ensayo &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the deficiency &quot;%1&quot;</source>
        <translation type="unfinished">la deficiencia &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot;</source>
        <translation type="unfinished">la persona &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the deficiency it repeats, &quot;%1&quot;</source>
        <translation type="unfinished">la deficiencia &quot;%1&quot; que repite</translation>
    </message>
    <message>
        <source>%1 (and 1 more such door)</source>
        <translation type="unfinished">%1 (y 1 puerta más en el mismo caso)</translation>
    </message>
    <message>
        <source>%1 (and %2 more such doors)</source>
        <translation type="unfinished">%1 (y %2 puertas más en el mismo caso)</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 remite de vuelta a esta entrada</translation>
    </message>
    <message>
        <source>no issue of the arrangement has a door &quot;%1&quot;</source>
        <translation type="unfinished">ninguna edición de la disposición tiene una puerta &quot;%1&quot;</translation>
    </message>
    <message>
        <source>in an A-class boundary</source>
        <translation type="unfinished">en un contorno de clase A</translation>
    </message>
    <message>
        <source>in a B-class boundary</source>
        <translation type="unfinished">en un contorno de clase B</translation>
    </message>
    <message>
        <source>in a C-class boundary</source>
        <translation type="unfinished">en un contorno de clase C</translation>
    </message>
    <message>
        <source>more than 600 passengers</source>
        <translation type="unfinished">más de 600 pasajeros</translation>
    </message>
    <message>
        <source>600 passengers or fewer</source>
        <translation type="unfinished">600 pasajeros o menos</translation>
    </message>
    <message>
        <source>machinery space of category A</source>
        <translation type="unfinished">espacio de categoría A para máquinas</translation>
    </message>
    <message>
        <source>more than 36 passengers</source>
        <translation type="unfinished">más de 36 pasajeros</translation>
    </message>
    <message>
        <source>36 passengers or fewer</source>
        <translation type="unfinished">36 pasajeros o menos</translation>
    </message>
    <message>
        <source>%1? The register does not say</source>
        <translation type="unfinished">¿%1? El registro no lo dice</translation>
    </message>
    <message>
        <source>keel laid before %1: ask for the approved drawing</source>
        <translation type="unfinished">quilla colocada antes del %1: pida el plano aprobado</translation>
    </message>
    <message>
        <source>keel date unknown: ask for the approved drawing</source>
        <translation type="unfinished">fecha de la quilla desconocida: pida el plano aprobado</translation>
    </message>
    <message>
        <source>Give low or high as well, and &quot;source&quot;: &quot;gauge&quot;.</source>
        <translation type="unfinished">Indique también low o high, y &quot;source&quot;: &quot;gauge&quot;.</translation>
    </message>
    <message>
        <source>only a band of closing times or rates can be approximate</source>
        <translation type="unfinished">solo una banda de tiempos o velocidades de cierre puede ser aproximada</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Tal bayoneta mide como máximo el 20 % de la longitud media de la zona, y como máximo 8 m (26 ft).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">esto no puede ir antes de &quot;%1&quot;</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 y %2</translation>
    </message>
    <message>
        <source>faster by no more than %1 per cent (our own margin, no source), and a fast leaf crushes</source>
        <translation type="unfinished">más rápida en no más del %1 por ciento (margen propio, sin fuente), y una hoja rápida aplasta</translation>
    </message>
    <message>
        <source>slower by no more than %1 per cent (our own margin, no source)</source>
        <translation type="unfinished">más lenta en no más del %1 por ciento (margen propio, sin fuente)</translation>
    </message>
    <message>
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">el registro no dice si da acceso a un espacio de categoría especial</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">en un contorno de clase C&apos;</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">buque de pasaje SOLAS</translation>
    </message>
    <message>
        <source>Canadian vessel with convention certificates</source>
        <translation type="unfinished">buque canadiense con certificados de convenio</translation>
    </message>
    <message>
        <source>Canadian vessel without convention certificates</source>
        <translation type="unfinished">buque canadiense sin certificados de convenio</translation>
    </message>
    <message>
        <source>EU inland waterway vessel</source>
        <translation type="unfinished">buque de navegación interior de la UE</translation>
    </message>
    <message>
        <source>large yacht of 500 GT or more</source>
        <translation type="unfinished">yate grande de 500 GT o más</translation>
    </message>
    <message>
        <source>vessel under other domestic rules</source>
        <translation type="unfinished">buque con otras reglas nacionales</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 o %2</translation>
    </message>
    <message>
        <source>listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">enumerada en II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>installed on or after %1</source>
        <translation type="unfinished">instalada el %1 o después</translation>
    </message>
    <message>
        <source>keel laid on or after %1</source>
        <translation type="unfinished">quilla colocada el %1 o después</translation>
    </message>
    <message>
        <source>keel laid before %1</source>
        <translation type="unfinished">quilla colocada antes del %1</translation>
    </message>
    <message>
        <source>keel laid on or after %1 and before %2</source>
        <translation type="unfinished">quilla colocada el %1 o después y antes del %2</translation>
    </message>
    <message>
        <source>%1, or no date on record</source>
        <translation type="unfinished">%1, o sin fecha registrada</translation>
    </message>
    <message>
        <source>a ship of another date: %1; a ship with no date on record: %2</source>
        <translation type="unfinished">un buque de otra fecha: %1; un buque sin fecha registrada: %2</translation>
    </message>
    <message>
        <source>advice only</source>
        <translation type="unfinished">solo recomendación</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">reglamento</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">proceso %1 en %2</translation>
    </message>
    <message>
        <source>no installation date on record, but the ship is new enough</source>
        <translation type="unfinished">sin fecha de instalación registrada, pero el buque es bastante nuevo</translation>
    </message>
    <message>
        <source>the ship&apos;s passenger number or length is outside the scope of the text</source>
        <translation type="unfinished">el número de pasajeros o la eslora del buque queda fuera del ámbito del texto</translation>
    </message>
    <message>
        <source>boundary class not known</source>
        <translation type="unfinished">clase del contorno desconocida</translation>
    </message>
    <message>
        <source>not an emergency escape trunk</source>
        <translation type="unfinished">no es tronco de evacuación de emergencia</translation>
    </message>
    <message>
        <source>not a special category space</source>
        <translation type="unfinished">no es espacio de categoría especial</translation>
    </message>
    <message>
        <source>faces an embarkation or escape deck</source>
        <translation type="unfinished">da a una cubierta de embarco o de evacuación</translation>
    </message>
    <message>
        <source>does not face an embarkation or escape deck</source>
        <translation type="unfinished">no da a una cubierta de embarco ni de evacuación</translation>
    </message>
    <message>
        <source>not a machinery space of category A</source>
        <translation type="unfinished">no es espacio de categoría A para máquinas</translation>
    </message>
    <message>
        <source>keel laid %1: text for ships of other dates</source>
        <translation type="unfinished">quilla colocada el %1: texto para buques de otras fechas</translation>
    </message>
    <message>
        <source>installation date unknown</source>
        <translation type="unfinished">fecha de instalación desconocida</translation>
    </message>
    <message>
        <source>the vessel&apos;s flag has its own text</source>
        <translation type="unfinished">la bandera del buque tiene texto propio</translation>
    </message>
    <message>
        <source>text for other ships: %1</source>
        <translation type="unfinished">texto para otros buques: %1</translation>
    </message>
    <message>
        <source>no such door aboard</source>
        <translation type="unfinished">no hay a bordo ninguna puerta así</translation>
    </message>
    <message>
        <source>US subchapter H vessel</source>
        <translation type="unfinished">buque de EE. UU. del subcapítulo H</translation>
    </message>
    <message>
        <source>US subchapter K vessel</source>
        <translation type="unfinished">buque de EE. UU. del subcapítulo K</translation>
    </message>
    <message>
        <source>Canadian day vessel, 24 m or more, fewer than 100 passengers</source>
        <translation type="unfinished">embarcación de día canadiense, de 24 m o más, con menos de 100 pasajeros</translation>
    </message>
    <message>
        <source>binding</source>
        <translation type="unfinished">obligatorio</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">si falla, decide el inspector</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">no se aplica</translation>
    </message>
    <message>
        <source>%1 passengers is not possible</source>
        <translation type="unfinished">%1 pasajeros no es posible</translation>
    </message>
    <message>
        <source>Give the length on the drawing, in metres.</source>
        <translation type="unfinished">Indique la eslora del plano, en metros.</translation>
    </message>
    <message>
        <source>this date does not exist</source>
        <translation type="unfinished">esa fecha no existe</translation>
    </message>
    <message>
        <source>%1 is before 1900</source>
        <translation type="unfinished">%1 es anterior a 1900</translation>
    </message>
    <message>
        <source>Check the year, or leave it empty if the date is unknown.</source>
        <translation type="unfinished">Compruebe el año, o déjelo vacío si no se conoce la fecha.</translation>
    </message>
    <message>
        <source>%1 m is outside %2 to %3 m</source>
        <translation type="unfinished">%1 m está fuera de %2 a %3 m</translation>
    </message>
    <message>
        <source>Remove the blanks.</source>
        <translation type="unfinished">Quite los espacios en blanco.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">la cubierta &quot;%1&quot; figura dos veces</translation>
    </message>
    <message>
        <source>Give every deck its own number, or remove one row.</source>
        <translation type="unfinished">Dé a cada cubierta su propio número, o quite una fila.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">la zona &quot;%1&quot; figura dos veces</translation>
    </message>
    <message>
        <source>Give every zone its own number, or remove one row.</source>
        <translation type="unfinished">Dé a cada zona su propio número, o quite una fila.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">el contorno &quot;%1&quot; figura dos veces</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or remove one row.</source>
        <translation type="unfinished">Dé a cada contorno su propio id, o quite una fila.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">la puerta &quot;%1&quot; figura dos veces</translation>
    </message>
    <message>
        <source>Give every door its own number, or remove one row.</source>
        <translation type="unfinished">Dé a cada puerta su propio número, o quite una fila.</translation>
    </message>
    <message>
        <source>there is no deck &quot;%1&quot;</source>
        <translation type="unfinished">no existe la cubierta &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no zone &quot;%1&quot;</source>
        <translation type="unfinished">no existe la zona &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no boundary &quot;%1&quot;</source>
        <translation type="unfinished">no existe el contorno &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give square metres, or leave it empty if not known.</source>
        <translation type="unfinished">Indique metros cuadrados, o déjelo vacío si no se conocen.</translation>
    </message>
    <message>
        <source>Measure in metres from the aft perpendicular, positive forward.</source>
        <translation type="unfinished">Mida en metros desde la perpendicular de popa, positivo hacia proa.</translation>
    </message>
    <message>
        <source>Zones may touch but not overlap.</source>
        <translation type="unfinished">Las zonas pueden tocarse pero no solaparse.</translation>
    </message>
    <message>
        <source>this vessel&apos;s fire tables have no such category of space</source>
        <translation type="unfinished">las tablas de integridad al fuego de este buque no tienen tal categoría de espacio</translation>
    </message>
    <message>
        <source>a zone bulkhead is between two zones; here both are &quot;%1&quot;</source>
        <translation type="unfinished">un mamparo de zona está entre dos zonas; aquí ambas son &quot;%1&quot;</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">la zona &quot;%1&quot; está a popa de la zona &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Swap zone_aft and zone_forward.</source>
        <translation type="unfinished">Intercambie zone_aft y zone_forward.</translation>
    </message>
    <message>
        <source>%1 m is more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m está a más de 3 m fuera de sus zonas, de %2 a %3 m</translation>
    </message>
    <message>
        <source>Check the position of the boundary, or the zones it names.</source>
        <translation type="unfinished">Compruebe la posición del contorno, o las zonas que nombra.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m is not possible</source>
        <translation type="unfinished">una abertura libre de %1 m no es posible</translation>
    </message>
    <message>
        <source>a leaf of %1 kg is not possible</source>
        <translation type="unfinished">una hoja de %1 kg no es posible</translation>
    </message>
    <message>
        <source>only PostgreSQL databases are supported</source>
        <translation type="unfinished">solo se admiten bases de datos PostgreSQL</translation>
    </message>
    <message>
        <source>an option contains a semicolon</source>
        <translation type="unfinished">una opción contiene un punto y coma</translation>
    </message>
    <message>
        <source>Check the address, name and password, and that the server is running.</source>
        <translation type="unfinished">Compruebe la dirección, el nombre y la contraseña, y que el servidor esté en marcha.</translation>
    </message>
    <message>
        <source>the connection was lost</source>
        <translation type="unfinished">se perdió la conexión</translation>
    </message>
    <message>
        <source>the connection was lost: %1 files NOT imported, from %2 on</source>
        <translation type="unfinished">se perdió la conexión: %1 archivos NO importados, a partir de %2</translation>
    </message>
    <message>
        <source>Run the same command again; files already imported stay imported.</source>
        <translation type="unfinished">Ejecute de nuevo la misma orden; los archivos ya importados siguen importados.</translation>
    </message>
    <message>
        <source>this database holds other data: NOT touched</source>
        <translation type="unfinished">esta base de datos contiene otros datos: NO se ha tocado</translation>
    </message>
    <message>
        <source>this database does not store text as UTF-8: NOT touched</source>
        <translation type="unfinished">esta base de datos no guarda el texto como UTF-8: NO se ha tocado</translation>
    </message>
    <message>
        <source>Create one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Cree una WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one reads up to %2): NOT touched</source>
        <translation type="unfinished">las tablas las creó un programa más nuevo (versión %1; este lee hasta la %2): NO se han tocado</translation>
    </message>
    <message>
        <source>Enter the vessel&apos;s number aboard, then export again.</source>
        <translation type="unfinished">Anote a bordo el número del buque y exporte de nuevo.</translation>
    </message>
    <message>
        <source>it comes with a different key: %1, fingerprint %2 instead of %3</source>
        <translation type="unfinished">viene con otra clave: %1, huella %2 en lugar de %3</translation>
    </message>
    <message>
        <source>Ask aboard whether the key is new; if so, import the file with --accept-key and that key.</source>
        <translation type="unfinished">Pregunte a bordo si la clave es nueva; si lo es, importe el archivo con --accept-key y esa clave.</translation>
    </message>
    <message>
        <source>Using the catalogue built into the program: %1</source>
        <translation type="unfinished">Se usa el catálogo incorporado al programa: %1</translation>
    </message>
    <message>
        <source>its catalogue files are missing</source>
        <translation type="unfinished">faltan sus archivos de catálogo</translation>
    </message>
    <message>
        <source>must be a list with at least one entry</source>
        <translation type="unfinished">debe ser una lista con al menos una entrada</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is listed twice</source>
        <translation type="unfinished">&apos;%1&apos; figura dos veces</translation>
    </message>
    <message>
        <source>requirement &apos;%1&apos; is in both catalogues</source>
        <translation type="unfinished">el requisito &apos;%1&apos; está en ambos catálogos</translation>
    </message>
    <message>
        <source>this condition is empty</source>
        <translation type="unfinished">esta condición está vacía</translation>
    </message>
    <message>
        <source>Leave it out if every door is meant.</source>
        <translation type="unfinished">Déjelo fuera si se refiere a toda puerta.</translation>
    </message>
    <message>
        <source>Leave it out if there are none.</source>
        <translation type="unfinished">Déjelo fuera si no hay ninguno.</translation>
    </message>
    <message>
        <source>a requirement checked by eye needs a question</source>
        <translation type="unfinished">un requisito que se comprueba a la vista necesita una pregunta</translation>
    </message>
    <message>
        <source>a second printed figure needs a gauge limit beside it</source>
        <translation type="unfinished">una segunda cifra impresa necesita al lado un límite de &quot;gauge&quot;</translation>
    </message>
    <message>
        <source>Remove &quot;approximate&quot;, or give such a band.</source>
        <translation type="unfinished">Quite &quot;approximate&quot;, o indique tal banda.</translation>
    </message>
    <message>
        <source>a margin must be 0 or more and less than 1</source>
        <translation type="unfinished">un margen debe ser 0 o más y menor que 1</translation>
    </message>
    <message>
        <source>Give it as a fraction of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Indíquelo como fracción del límite: 0.05 es el 5 por ciento.</translation>
    </message>
    <message>
        <source>a figure needs a source</source>
        <translation type="unfinished">una cifra necesita una fuente</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is already in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; ya está en el catálogo</translation>
    </message>
    <message>
        <source>a tightened requirement needs a limit</source>
        <translation type="unfinished">un requisito más estricto necesita un límite</translation>
    </message>
    <message>
        <source>the requirement has no such limit</source>
        <translation type="unfinished">el requisito no tiene tal límite</translation>
    </message>
    <message>
        <source>Replace the whole requirement instead.</source>
        <translation type="unfinished">Sustituya en su lugar el requisito entero.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the catalogue&apos;s %3 %2</source>
        <translation type="unfinished">%1 %2 es más amplio que %3 %2 del catálogo</translation>
    </message>
    <message>
        <source>Tighten the requirement, or replace it as a whole.</source>
        <translation type="unfinished">Haga más estricto el requisito, o sustitúyalo entero.</translation>
    </message>
    <message>
        <source>this margin is wider than the catalogue&apos;s</source>
        <translation type="unfinished">este margen es más amplio que el del catálogo</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; no es aquí una lista de categorías</translation>
    </message>
    <message>
        <source>there is already a table for these divisions</source>
        <translation type="unfinished">ya hay una tabla para estas divisiones</translation>
    </message>
    <message>
        <source>is not a cell of this table</source>
        <translation type="unfinished">no es una casilla de esta tabla</translation>
    </message>
    <message>
        <source>Write two of its categories; for a bulkhead, the lower one first.</source>
        <translation type="unfinished">Escriba dos de sus categorías; para un mamparo, primero la menor.</translation>
    </message>
    <message>
        <source>%1 is not a value printed in a table</source>
        <translation type="unfinished">%1 no es un valor impreso en una tabla</translation>
    </message>
    <message>
        <source>A lookout is posted on each side of every door that will move</source>
        <translation type="unfinished">Hay un vigilante a cada lado de cada puerta que se va a mover</translation>
    </message>
    <message>
        <source>The start word and the stop word have been given and read back</source>
        <translation type="unfinished">La palabra de inicio y la palabra de parada se han dado y el puesto de control las ha colacionado</translation>
    </message>
    <message>
        <source>Every path and pocket is clear; hands, feet and cables are off every edge</source>
        <translation type="unfinished">Cada trayectoria y cada cajón de hoja están despejados; manos, pies y cables están lejos de cada borde</translation>
    </message>
    <message>
        <source>a fault in the program: %1</source>
        <translation type="unfinished">un fallo del programa: %1</translation>
    </message>
    <message>
        <source>Please report it, with the file that caused it.</source>
        <translation type="unfinished">Comuníquelo, por favor, con el archivo que lo causó.</translation>
    </message>
    <message>
        <source>there is no register here</source>
        <translation type="unfinished">aquí no hay ningún registro</translation>
    </message>
    <message>
        <source>this register has no vessel yet</source>
        <translation type="unfinished">este registro aún no tiene buque</translation>
    </message>
    <message>
        <source>The refused file states its key.</source>
        <translation type="unfinished">El archivo rechazado indica su clave.</translation>
    </message>
    <message>
        <source>who accepts the key is not stated</source>
        <translation type="unfinished">no se indica quién acepta la clave</translation>
    </message>
    <message>
        <source>this is not the file&apos;s key, which is %1</source>
        <translation type="unfinished">esta no es la clave del archivo, que es %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a document kind</source>
        <translation type="unfinished">&quot;%1&quot; no es un tipo de documento</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, blank-form or rule-book.</source>
        <translation type="unfinished">Elija survey, deficiency-list, work-list, door-record, blank-form o rule-book.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a report format</source>
        <translation type="unfinished">&quot;%1&quot; no es un formato de informe</translation>
    </message>
    <message>
        <source>a blank form can only be a PDF</source>
        <translation type="unfinished">un formulario en blanco solo puede ser un PDF</translation>
    </message>
    <message>
        <source>a rule book can only be a PDF</source>
        <translation type="unfinished">un reglamento solo puede ser un PDF</translation>
    </message>
    <message>
        <source>Write it to a PDF file; &quot;rules --json&quot; gives its data.</source>
        <translation type="unfinished">Escríbalo en un archivo PDF; &quot;rules --json&quot; da sus datos.</translation>
    </message>
    <message>
        <source>there is no requirement &apos;%1&apos;</source>
        <translation type="unfinished">no existe el requisito &apos;%1&apos;</translation>
    </message>
    <message>
        <source>&quot;rules&quot; lists them all.</source>
        <translation type="unfinished">&quot;rules&quot; los enumera todos.</translation>
    </message>
    <message>
        <source>a door belongs to a vessel</source>
        <translation type="unfinished">una puerta pertenece a un buque</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register with --vessel.</source>
        <translation type="unfinished">Indique el registro del buque con --vessel.</translation>
    </message>
    <message>
        <source>a door record is for one door</source>
        <translation type="unfinished">una ficha de puerta es de una sola puerta</translation>
    </message>
    <message>
        <source>no one in the register is named &apos;%1&apos;</source>
        <translation type="unfinished">en el registro no hay nadie llamado &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Write the name as it is in the register.</source>
        <translation type="unfinished">Escriba el nombre como está en el registro.</translation>
    </message>
    <message>
        <source>Give an id from &quot;practice list&quot;, or a file.</source>
        <translation type="unfinished">Indique un id de &quot;practice list&quot;, o un archivo.</translation>
    </message>
    <message>
        <source>Give a number; the same number gives the same doors.</source>
        <translation type="unfinished">Indique un número; el mismo número da las mismas puertas.</translation>
    </message>
    <message>
        <source>Give the answers file.</source>
        <translation type="unfinished">Indique el archivo de respuestas.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; no es un par de categorías de este buque</translation>
    </message>
    <message>
        <source>a ship of this kind has no main vertical zones</source>
        <translation type="unfinished">un buque de este tipo no tiene zonas verticales principales</translation>
    </message>
    <message>
        <source>must be between 0 and 1</source>
        <translation type="unfinished">debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>must be between 0 and 1, to six decimals at most</source>
        <translation type="unfinished">debe estar entre 0 y 1, con seis decimales como máximo</translation>
    </message>
    <message>
        <source>is not a usable number</source>
        <translation type="unfinished">no es un número utilizable</translation>
    </message>
    <message>
        <source>no line can be fitted: there are only %1 points, or all have the same x, or a number is too large</source>
        <translation type="unfinished">no se puede ajustar ninguna recta: solo hay %1 puntos, o todos tienen la misma x, o un número es demasiado grande</translation>
    </message>
    <message>
        <source>Give at least three points, with at least two different x.</source>
        <translation type="unfinished">Indique al menos tres puntos, con al menos dos x distintas.</translation>
    </message>
    <message>
        <source>a standard uncertainty must be 0 or more</source>
        <translation type="unfinished">una incertidumbre típica debe ser 0 o más</translation>
    </message>
    <message>
        <source>is not a limit</source>
        <translation type="unfinished">no es un límite</translation>
    </message>
    <message>
        <source>there is no limit to judge against</source>
        <translation type="unfinished">no hay ningún límite con que comparar</translation>
    </message>
    <message>
        <source>degrees of freedom must be 1 or more</source>
        <translation type="unfinished">los grados de libertad deben ser 1 o más</translation>
    </message>
    <message>
        <source>Leave it out if u is well known.</source>
        <translation type="unfinished">Déjelo fuera si u se conoce bien.</translation>
    </message>
    <message>
        <source>failed cannot exceed tested, and tested cannot exceed the number of doors</source>
        <translation type="unfinished">las que fallaron no pueden ser más que las probadas, ni las probadas más que el número de puertas</translation>
    </message>
    <message>
        <source>no display is available</source>
        <translation type="unfinished">no hay pantalla disponible</translation>
    </message>
    <message>
        <source>entries for this vessel are not saved yet and cannot be kept elsewhere</source>
        <translation type="unfinished">hay entradas de este buque que aún no están guardadas y no se pueden conservar en otro lugar</translation>
    </message>
    <message>
        <source>no file has been opened</source>
        <translation type="unfinished">no se ha abierto ningún archivo</translation>
    </message>
    <message>
        <source>Open the file first.</source>
        <translation type="unfinished">Abra antes el archivo.</translation>
    </message>
    <message>
        <source>there is no unfinished exercise</source>
        <translation type="unfinished">no hay ningún ejercicio sin terminar</translation>
    </message>
    <message>
        <source>the exercise has changed since it was begun</source>
        <translation type="unfinished">el ejercicio ha cambiado desde que se inició</translation>
    </message>
    <message>
        <source>Put it aside and begin again.</source>
        <translation type="unfinished">Apártelo y empiece de nuevo.</translation>
    </message>
    <message>
        <source>is not in this walkdown</source>
        <translation type="unfinished">no está en este recorrido</translation>
    </message>
    <message>
        <source>not all cautions are confirmed</source>
        <translation type="unfinished">no están confirmadas todas las precauciones</translation>
    </message>
    <message>
        <source>Confirm each of them first.</source>
        <translation type="unfinished">Confirme antes cada una.</translation>
    </message>
    <message>
        <source>Choose another, or check its permissions.</source>
        <translation type="unfinished">Elija otro, o compruebe sus permisos.</translation>
    </message>
    <message>
        <source>Take it again at a smaller size.</source>
        <translation type="unfinished">Tómela de nuevo con menor tamaño.</translation>
    </message>
    <message>
        <source>it could not be saved</source>
        <translation type="unfinished">no se pudo guardar</translation>
    </message>
    <message>
        <source>another program is writing to it (%1)</source>
        <translation type="unfinished">otro programa está escribiendo en él (%1)</translation>
    </message>
    <message>
        <source>it is not in the walkdown on screen</source>
        <translation type="unfinished">no está en el recorrido en pantalla</translation>
    </message>
    <message>
        <source>None of it is refused any more</source>
        <translation type="unfinished">Ya no se rechaza nada de ello</translation>
    </message>
    <message>
        <source>the part that cannot be read is kept nowhere else</source>
        <translation type="unfinished">la parte que no se puede leer no se conserva en ningún otro lugar</translation>
    </message>
    <message>
        <source>unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">no se pueden leer entradas sin guardar conservadas aquí: %1</translation>
    </message>
    <message>
        <source>The file is kept as %2; report this.</source>
        <translation type="unfinished">El archivo se conserva como %2; comuníquelo.</translation>
    </message>
    <message>
        <source>The file stays as it is and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">El archivo queda como está y no se le añade nada: libere espacio y vuelva a iniciar el programa.</translation>
    </message>
    <message>
        <source>some unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">algunas entradas sin guardar conservadas aquí no se pueden leer: %1</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 is enough with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">Un mamparo de zona vertical principal, sus bayonetas y sus nichos son A-60; basta A-0 con un espacio de categoría 5, 9 o 10 a un lado, o con tanques de combustible líquido a ambos.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation follows the table, with B-0, C and * read as A-0.</source>
        <translation type="unfinished">Un mamparo de zona vertical principal es de clase A; su aislamiento sigue la tabla, leyendo B-0, C y * como A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 is enough with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Los contornos de los espacios de categoría especial y de carga rodada son A-60; basta A-0 con un espacio de categoría 5, 9 o 10 a un lado.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) renumbers II-2/9.6; that text has not been read.</source>
        <translation type="unfinished">Desde 2026 MSC.550(108) vuelve a numerar II-2/9.6; ese texto no se ha leído.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is the higher of A-30 and table (b); A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Un mamparo de zona vertical principal es el mayor de A-30 y la tabla (b); basta A-0 con un espacio de tipo 8, 12 o 13 a uno u otro lado.</translation>
    </message>
    <message>
        <source>A step in a main vertical zone is A-60; A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Una bayoneta de una zona vertical principal es A-60; basta A-0 con un espacio de tipo 8, 12 o 13 a uno u otro lado.</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 39.9 m (131 ft); no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">Por regla general, la longitud media de una zona en una cubierta cualquiera es de 39,9 m (131 ft) como máximo; no hay ninguna ampliación impresa, y un transbordador puede tener un equivalente aprobado (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry is the higher of A-30 and table (c).</source>
        <translation type="unfinished">Una cubierta que limita una zona horizontal de un transbordador de vehículos es el mayor de A-30 y la tabla (c).</translation>
    </message>
    <message>
        <source>The value for ships built on or after 1 July 2014 is given; the build date is not known.</source>
        <translation type="unfinished">Se da el valor para buques construidos el 1 de julio de 2014 o después; no se conoce la fecha de construcción.</translation>
    </message>
    <message>
        <source>Where oil fuel tanks are below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">Donde hay tanques de combustible líquido bajo un espacio de categoría especial, basta A-0 para la cubierta intermedia (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 follows the tables of its time, which are not included: compare with the approved plan.</source>
        <translation type="unfinished">Un buque construido antes del 1 de julio de 2002 sigue las tablas de su época, que no se incluyen: compare con el plano aprobado.</translation>
    </message>
    <message>
        <source>Whether these tables apply to the ship is not on record: compare with the approved plan.</source>
        <translation type="unfinished">No consta si estas tablas se aplican al buque: compare con el plano aprobado.</translation>
    </message>
    <message>
        <source>the register has no walkdown with this id</source>
        <translation type="unfinished">en el registro no hay ningún recorrido con este id</translation>
    </message>
    <message>
        <source>the register has no door with this number</source>
        <translation type="unfinished">en el registro no hay ninguna puerta con este número</translation>
    </message>
    <message>
        <source>a door record can only be a PDF</source>
        <translation type="unfinished">una ficha de puerta solo puede ser un PDF</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey report as CSV or JSON.</source>
        <translation type="unfinished">Elija PDF, o el informe de reconocimiento como CSV o JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be created</source>
        <translation type="unfinished">no se pudo crear el PDF</translation>
    </message>
    <message>
        <source>a file can describe only one vessel; the first is on line %1</source>
        <translation type="unfinished">un archivo solo puede describir un buque; el primero está en la línea %1</translation>
    </message>
    <message>
        <source>the row does not say which table it belongs to</source>
        <translation type="unfinished">la fila no dice a qué tabla pertenece</translation>
    </message>
    <message>
        <source>a register row cannot begin with &quot;%1&quot;</source>
        <translation type="unfinished">una fila de registro no puede empezar por &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this row comes before the header of its table</source>
        <translation type="unfinished">esta fila está antes del encabezado de su tabla</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the column names above it.</source>
        <translation type="unfinished">Ponga encima el encabezado &quot;%1:&quot; con los nombres de las columnas.</translation>
    </message>
    <message>
        <source>Remove the cell, or name its column in the header.</source>
        <translation type="unfinished">Quite la celda, o nombre su columna en el encabezado.</translation>
    </message>
    <message>
        <source>Correct its name, or remove the column.</source>
        <translation type="unfinished">Corrija su nombre, o quite la columna.</translation>
    </message>
    <message>
        <source>the column is listed twice</source>
        <translation type="unfinished">la columna figura dos veces</translation>
    </message>
    <message>
        <source>Remove one of them.</source>
        <translation type="unfinished">Quite una de ellas.</translation>
    </message>
    <message>
        <source>a point has two numbers; here there are %1 cells</source>
        <translation type="unfinished">un punto tiene dos números; aquí hay %1 celdas</translation>
    </message>
    <message>
        <source>Ids are version 7 UUIDs in lower case.</source>
        <translation type="unfinished">Los id son UUID de la versión 7 en minúscula.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date and time</source>
        <translation type="unfinished">&quot;%1&quot; no es una fecha y hora</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice, first at %2</source>
        <translation type="unfinished">la puerta &quot;%1&quot; figura dos veces, la primera en %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or merge the two records.</source>
        <translation type="unfinished">Dé a cada puerta su propio id, o una los dos registros.</translation>
    </message>
    <message>
        <source>this must be the categories of the two spaces, 1 to %1 in this vessel&apos;s fire tables</source>
        <translation type="unfinished">esto debe ser las categorías de los dos espacios, de 1 a %1 en las tablas de integridad al fuego de este buque</translation>
    </message>
    <message>
        <source>the catalogue has no requirement with this name</source>
        <translation type="unfinished">el catálogo no tiene ningún requisito con este nombre</translation>
    </message>
    <message>
        <source>Use the ids in the catalogue.</source>
        <translation type="unfinished">Use los id del catálogo.</translation>
    </message>
    <message>
        <source>this is not an answer</source>
        <translation type="unfinished">esto no es una respuesta</translation>
    </message>
    <message>
        <source>this requirement has no figure measured with rule or gauge</source>
        <translation type="unfinished">este requisito no tiene cifra medida con regla o galga</translation>
    </message>
    <message>
        <source>no instrument for this figure has so coarse a step</source>
        <translation type="unfinished">ningún instrumento para esta cifra tiene una división tan gruesa</translation>
    </message>
    <message>
        <source>Give the step in the unit of the requirement, at most %1.</source>
        <translation type="unfinished">Indique la división en la unidad del requisito, como máximo %1.</translation>
    </message>
    <message>
        <source>Give the marks that were timed, or remove the run.</source>
        <translation type="unfinished">Indique las marcas cronometradas, o quite el ensayo.</translation>
    </message>
    <message>
        <source>Give seconds from the start of the stopwatch.</source>
        <translation type="unfinished">Indique segundos desde el arranque del cronómetro.</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one stopwatch.</source>
        <translation type="unfinished">Indique los segundos de ambos sucesos en un mismo cronómetro.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees is not possible</source>
        <translation type="unfinished">una escora de más de 45 grados no es posible</translation>
    </message>
    <message>
        <source>the vessel could not be saved there</source>
        <translation type="unfinished">el buque no se pudo guardar ahí</translation>
    </message>
    <message>
        <source>is missing: this is not an exercise</source>
        <translation type="unfinished">falta: esto no es un ejercicio</translation>
    </message>
    <message>
        <source>this program cannot read this form of exercise (it reads form %1)</source>
        <translation type="unfinished">este programa no puede leer esta forma de ejercicio (lee la forma %1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written again.</source>
        <translation type="unfinished">Actualice este programa, o pida que escriban de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>it is locked with a password</source>
        <translation type="unfinished">está bloqueado con una contraseña</translation>
    </message>
    <message>
        <source>Unlock it with that password.</source>
        <translation type="unfinished">Desbloquéelo con esa contraseña.</translation>
    </message>
    <message>
        <source>has characters other than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">tiene caracteres que no son letras minúsculas, cifras ni guiones</translation>
    </message>
    <message>
        <source>Make it shorter.</source>
        <translation type="unfinished">Acórtelo.</translation>
    </message>
    <message>
        <source>door %1 is listed twice</source>
        <translation type="unfinished">la puerta %1 figura dos veces</translation>
    </message>
    <message>
        <source>&apos;%1&apos; and &apos;%2&apos; would hide each other on one door</source>
        <translation type="unfinished">&apos;%1&apos; y &apos;%2&apos; se ocultarían uno a otro en una misma puerta</translation>
    </message>
    <message>
        <source>is given without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">se da sin &quot;drawn&quot;: no se sortea nada</translation>
    </message>
    <message>
        <source>these doors can take only %1 more faults</source>
        <translation type="unfinished">estas puertas solo admiten %1 fallos más</translation>
    </message>
    <message>
        <source>is missing: an exam needs a pass mark</source>
        <translation type="unfinished">falta: un examen necesita una nota de aprobado</translation>
    </message>
    <message>
        <source>only an exam has a pass mark</source>
        <translation type="unfinished">solo un examen tiene nota de aprobado</translation>
    </message>
    <message>
        <source>Remove it, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Quítela, o escriba &quot;exam&quot; como nivel.</translation>
    </message>
    <message>
        <source>the exercise has no door with this number</source>
        <translation type="unfinished">en el ejercicio no hay ninguna puerta con este número</translation>
    </message>
    <message>
        <source>this is not a date and time</source>
        <translation type="unfinished">esto no es una fecha y hora</translation>
    </message>
    <message>
        <source>a delay is not a number: NOT saved</source>
        <translation type="unfinished">un retraso no es un número: NO guardado</translation>
    </message>
    <message>
        <source>could not be removed</source>
        <translation type="unfinished">no se pudo eliminar</translation>
    </message>
    <message>
        <source>Check that you can write to the folder.</source>
        <translation type="unfinished">Compruebe que puede escribir en la carpeta.</translation>
    </message>
    <message>
        <source>an exercise with this id comes with the program</source>
        <translation type="unfinished">un ejercicio con este id viene con el programa</translation>
    </message>
    <message>
        <source>another exercise with this id is already here</source>
        <translation type="unfinished">ya hay aquí otro ejercicio con este id</translation>
    </message>
    <message>
        <source>Give yours another id, or remove %1.</source>
        <translation type="unfinished">Dé otro id al suyo, o quite %1.</translation>
    </message>
    <message>
        <source>this exercise is not locked</source>
        <translation type="unfinished">este ejercicio no está bloqueado</translation>
    </message>
    <message>
        <source>Enter the password.</source>
        <translation type="unfinished">Introduzca la contraseña.</translation>
    </message>
    <message>
        <source>Choose a longer one; several words are best.</source>
        <translation type="unfinished">Elija una más larga; lo mejor son varias palabras.</translation>
    </message>
    <message>
        <source>the password does not open it: the password is wrong, or the file was changed after it was locked</source>
        <translation type="unfinished">la contraseña no lo abre: la contraseña es errónea, o el archivo se cambió después de bloquearlo</translation>
    </message>
    <message>
        <source>Type the password exactly as the instructor chose it, or ask for the file again.</source>
        <translation type="unfinished">Escriba la contraseña tal como la eligió el instructor, o pida de nuevo el archivo.</translation>
    </message>
    <message>
        <source>the lock is damaged</source>
        <translation type="unfinished">el bloqueo está dañado</translation>
    </message>
    <message>
        <source>Ask for the file again.</source>
        <translation type="unfinished">Pida de nuevo el archivo.</translation>
    </message>
    <message>
        <source>this lock has a format that this program does not know</source>
        <translation type="unfinished">este bloqueo tiene un formato que este programa no conoce</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise locked again.</source>
        <translation type="unfinished">Actualice este programa, o pida que bloqueen de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>Have the exercise locked again.</source>
        <translation type="unfinished">Pida que bloqueen de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>its open part was changed after it was locked: title, words, level, doors or pass mark</source>
        <translation type="unfinished">su parte abierta se cambió después de bloquearlo: título, palabras, nivel, puertas o nota de aprobado</translation>
    </message>
    <message>
        <source>It shuts faster than permitted.</source>
        <translation type="unfinished">Se cierra más deprisa de lo permitido.</translation>
    </message>
    <message>
        <source>It shuts more slowly than permitted.</source>
        <translation type="unfinished">Se cierra más despacio de lo permitido.</translation>
    </message>
    <message>
        <source>It shuts too close to the limit for any hand timing to pass or fail it.</source>
        <translation type="unfinished">Se cierra demasiado cerca del límite para que un cronometraje a mano decida si cumple o no.</translation>
    </message>
    <message>
        <source>The selector fails: the leaf that must wait closes first.</source>
        <translation type="unfinished">Falla el selector de cierre: la hoja que debe esperar se cierra primero.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it opens when pushed.</source>
        <translation type="unfinished">Se cierra pero el pestillo no encaja: se abre al empujarla.</translation>
    </message>
    <message>
        <source>The magnet holds for half a minute after the control station releases it, which counts as not released (common practice, no published source).</source>
        <translation type="unfinished">El imán sujeta medio minuto después de que la accione el puesto de control, lo que cuenta como no accionada (práctica común, sin fuente publicada).</translation>
    </message>
    <message>
        <source>It cannot be released from one side.</source>
        <translation type="unfinished">No se puede accionar desde un lado.</translation>
    </message>
    <message>
        <source>It can be held open by a hook that the control station cannot release.</source>
        <translation type="unfinished">La puede mantener abierta un gancho que el puesto de control no puede accionar.</translation>
    </message>
    <message>
        <source>There is litter in the pocket.</source>
        <translation type="unfinished">Hay basura en el cajón de la hoja.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than permitted.</source>
        <translation type="unfinished">El hueco bajo la hoja es mayor de lo permitido.</translation>
    </message>
    <message>
        <source>The plate shows a lower class than the boundary requires.</source>
        <translation type="unfinished">La placa muestra una clase inferior a la que exige el contorno.</translation>
    </message>
    <message>
        <source>It stays open when opened again at the door after remote closing.</source>
        <translation type="unfinished">Queda abierta al volver a abrirla en la puerta tras el cierre a distancia.</translation>
    </message>
    <message>
        <source>Someone was in the path of the leaf: the run had to be stopped.</source>
        <translation type="unfinished">Había alguien en la trayectoria de la hoja: hubo que parar el ensayo.</translation>
    </message>
    <message>
        <source>its bytes cannot be read</source>
        <translation type="unfinished">no se pueden leer sus bytes</translation>
    </message>
    <message>
        <source>not all of its bytes can be read</source>
        <translation type="unfinished">no se pueden leer todos sus bytes</translation>
    </message>
    <message>
        <source>this is not a handover file, or only part of one</source>
        <translation type="unfinished">esto no es un archivo de traspaso, o solo una parte</translation>
    </message>
    <message>
        <source>Choose another file, or ask for a new export.</source>
        <translation type="unfinished">Elija otro archivo, o pida una nueva exportación.</translation>
    </message>
    <message>
        <source>Ask for a new export.</source>
        <translation type="unfinished">Pida una nueva exportación.</translation>
    </message>
    <message>
        <source>No genuine handover file is like this; do not use it.</source>
        <translation type="unfinished">Ningún archivo de traspaso auténtico es así; no lo use.</translation>
    </message>
    <message>
        <source>the signature does not match the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">la firma no coincide con la clave del equipo que lo firmó: se cambió contents.sha256 o contents.sig</translation>
    </message>
    <message>
        <source>%1 does not match the hash in its name</source>
        <translation type="unfinished">%1 no coincide con el hash de su nombre</translation>
    </message>
    <message>
        <source>its contents do not match the counts on its first page</source>
        <translation type="unfinished">su contenido no coincide con los recuentos de su primera página</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">%1 es el buque de práctica, cuyas puertas son simuladas</translation>
    </message>
    <message>
        <source>this is not a handover file</source>
        <translation type="unfinished">esto no es un archivo de traspaso</translation>
    </message>
    <message>
        <source>Update this program, or import the file with the newer one.</source>
        <translation type="unfinished">Actualice este programa, o importe el archivo con el más nuevo.</translation>
    </message>
    <message>
        <source>this is not a device key</source>
        <translation type="unfinished">esto no es una clave de equipo</translation>
    </message>
    <message>
        <source>Hand over a copy of the whole register instead.</source>
        <translation type="unfinished">Traspase en su lugar una copia del registro entero.</translation>
    </message>
    <message>
        <source>the file is for a different vessel; this register is for %1 %2</source>
        <translation type="unfinished">el archivo es de otro buque; este registro es de %1 %2</translation>
    </message>
    <message>
        <source>Open that vessel&apos;s register, or begin a new one.</source>
        <translation type="unfinished">Abra el registro de ese buque, o empiece uno nuevo.</translation>
    </message>
    <message>
        <source>Open it with the register of the device it is meant for.</source>
        <translation type="unfinished">Ábralo con el registro del equipo al que va destinado.</translation>
    </message>
    <message>
        <source>the computer provides no random numbers</source>
        <translation type="unfinished">el ordenador no proporciona números aleatorios</translation>
    </message>
    <message>
        <source>Restart the computer.</source>
        <translation type="unfinished">Reinicie el ordenador.</translation>
    </message>
    <message>
        <source>the file claims to come from this device, but its key fingerprint, %1, is not this device&apos;s</source>
        <translation type="unfinished">el archivo dice venir de este equipo, pero su huella de clave, %1, no es la de este equipo</translation>
    </message>
    <message>
        <source>Do not import it; find out who made it.</source>
        <translation type="unfinished">No lo importe; averigüe quién lo hizo.</translation>
    </message>
    <message>
        <source>its key is not the one accepted for it: fingerprint %1 instead of %2</source>
        <translation type="unfinished">su clave no es la aceptada para él: huella %1 en lugar de %2</translation>
    </message>
    <message>
        <source>Do not import it until you have asked whoever has that tablet; if its key really is new, take back the old acceptance first.</source>
        <translation type="unfinished">No lo importe hasta haber preguntado a quien tiene esa tableta; si su clave es realmente nueva, retire antes la aceptación anterior.</translation>
    </message>
    <message>
        <source>it accepts, in this device&apos;s name, a key that no one here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">acepta, en nombre de este equipo, una clave que aquí no ha aceptado nadie: clave %1 del equipo %2, huella %3</translation>
    </message>
    <message>
        <source>If this register was restored from a backup, compare that key too and accept it; otherwise do not import the file.</source>
        <translation type="unfinished">Si este registro se restauró de una copia de seguridad, compare también esa clave y acéptela; si no, no importe el archivo.</translation>
    </message>
    <message>
        <source>its key has not been accepted here yet; fingerprint %1</source>
        <translation type="unfinished">su clave aún no se ha aceptado aquí; huella %1</translation>
    </message>
    <message>
        <source>Compare it with the fingerprint shown on that tablet, then accept it.</source>
        <translation type="unfinished">Compárela con la huella que muestra esa tableta y luego acéptela.</translation>
    </message>
    <message>
        <source>Create the report again.</source>
        <translation type="unfinished">Cree de nuevo el informe.</translation>
    </message>
    <message>
        <source>the signature does not match its key and contents</source>
        <translation type="unfinished">la firma no coincide con su clave y su contenido</translation>
    </message>
    <message>
        <source>it was not made with its device&apos;s key</source>
        <translation type="unfinished">no se hizo con la clave de su equipo</translation>
    </message>
    <message>
        <source>its bytes have been changed</source>
        <translation type="unfinished">sus bytes se han cambiado</translation>
    </message>
    <message>
        <source>Import it again from another tablet.</source>
        <translation type="unfinished">Impórtela de nuevo de otra tableta.</translation>
    </message>
    <message>
        <source>Latchround never writes this; do not rely on it.</source>
        <translation type="unfinished">Latchround nunca escribe esto; no se fíe de ello.</translation>
    </message>
    <message>
        <source>%1 at the top</source>
        <translation type="unfinished">%1 en el nivel superior</translation>
    </message>
    <message>
        <source>document</source>
        <translation type="unfinished">documento</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulario en blanco</translation>
    </message>
    <message>
        <source>the password</source>
        <translation type="unfinished">la contraseña</translation>
    </message>
    <message>
        <source>stopped as requested: nothing was changed</source>
        <translation type="unfinished">parado a petición: no ha cambiado nada</translation>
    </message>
    <message>
        <source>Copy it to one of your own folders.</source>
        <translation type="unfinished">Cópielo a una de sus carpetas.</translation>
    </message>
    <message>
        <source>a file with this name already exists: NOT replaced</source>
        <translation type="unfinished">ya existe un archivo con este nombre: NO se ha sustituido</translation>
    </message>
    <message>
        <source>Give another name, or allow it to be replaced.</source>
        <translation type="unfinished">Dé otro nombre, o permita que se sustituya.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT overwritten</source>
        <translation type="unfinished">este es el propio registro: NO se ha sobrescrito</translation>
    </message>
    <message>
        <source>it could not be flushed to storage: %1</source>
        <translation type="unfinished">no se pudo volcar al almacenamiento: %1</translation>
    </message>
    <message>
        <source>the written file could not be moved into place: %1</source>
        <translation type="unfinished">no se pudo llevar a su sitio el archivo escrito: %1</translation>
    </message>
    <message>
        <source>Write it again before the power is switched off.</source>
        <translation type="unfinished">Escríbalo de nuevo antes de apagar.</translation>
    </message>
    <message>
        <source>could not be removed: %1</source>
        <translation type="unfinished">no se pudo eliminar: %1</translation>
    </message>
    <message>
        <source>there is text before or after the quotes of a cell</source>
        <translation type="unfinished">hay texto antes o después de las comillas de una celda</translation>
    </message>
    <message>
        <source>a number in it is too large to read</source>
        <translation type="unfinished">contiene un número demasiado grande para leerlo</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good copy.</source>
        <translation type="unfinished">Pida una copia buena a quien le dio el archivo.</translation>
    </message>
    <message>
        <source>Remove it, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Quítelo, o haga que su nombre empiece por &quot;x-&quot;.</translation>
    </message>
    <message>
        <source>this must be a list of text values</source>
        <translation type="unfinished">esto debe ser una lista de textos</translation>
    </message>
    <message>
        <source>this must be text</source>
        <translation type="unfinished">esto debe ser texto</translation>
    </message>
    <message>
        <source>%1: NOT imported</source>
        <translation type="unfinished">%1: NO importado</translation>
    </message>
    <message>
        <source>stopped as requested</source>
        <translation type="unfinished">parado a petición</translation>
    </message>
    <message>
        <source>records are never changed or deleted (%1)</source>
        <translation type="unfinished">lo registrado nunca se cambia ni se borra (%1)</translation>
    </message>
    <message>
        <source>a text contains invalid bytes, or a value is of the wrong kind</source>
        <translation type="unfinished">un texto contiene bytes no válidos, o un valor es del tipo equivocado</translation>
    </message>
    <message>
        <source>it appears twice (%1)</source>
        <translation type="unfinished">aparece dos veces (%1)</translation>
    </message>
    <message>
        <source>Remove one of the two.</source>
        <translation type="unfinished">Quite uno de los dos.</translation>
    </message>
    <message>
        <source>the register does not allow one of the values (%1)</source>
        <translation type="unfinished">el registro no admite uno de los valores (%1)</translation>
    </message>
    <message>
        <source>Try again; if it happens again, save the register to another disk.</source>
        <translation type="unfinished">Inténtelo de nuevo; si se repite, guarde el registro en otro disco.</translation>
    </message>
    <message>
        <source>you cannot write to the register here</source>
        <translation type="unfinished">usted no puede escribir aquí en el registro</translation>
    </message>
    <message>
        <source>Copy it to a folder you can write to and open it there.</source>
        <translation type="unfinished">Cópielo a una carpeta en que pueda escribir y ábralo allí.</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you can write to the folder.</source>
        <translation type="unfinished">Compruebe que el disco está conectado y que puede escribir en la carpeta.</translation>
    </message>
    <message>
        <source>this is not a vessel register</source>
        <translation type="unfinished">esto no es un registro de buque</translation>
    </message>
    <message>
        <source>Try again; if it happens again, open the last backup.</source>
        <translation type="unfinished">Inténtelo de nuevo; si se repite, abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>there is no file layer with that name</source>
        <translation type="unfinished">no hay ninguna capa de archivos con ese nombre</translation>
    </message>
    <message>
        <source>the register is missing, but &quot;%1&quot; beside it contains its entries</source>
        <translation type="unfinished">falta el registro, pero &quot;%1&quot; junto a él contiene sus entradas</translation>
    </message>
    <message>
        <source>Create the folder, or choose another place.</source>
        <translation type="unfinished">Cree la carpeta, o elija otro lugar.</translation>
    </message>
    <message>
        <source>you cannot write to this folder</source>
        <translation type="unfinished">usted no puede escribir en esta carpeta</translation>
    </message>
    <message>
        <source>the new register cannot be put there</source>
        <translation type="unfinished">el nuevo registro no se puede poner ahí</translation>
    </message>
    <message>
        <source>Try again; if it happens again, choose another disk.</source>
        <translation type="unfinished">Inténtelo de nuevo; si se repite, elija otro disco.</translation>
    </message>
    <message>
        <source>you cannot read this file</source>
        <translation type="unfinished">usted no puede leer este archivo</translation>
    </message>
    <message>
        <source>the register is in a read-only place; nothing can be recorded</source>
        <translation type="unfinished">el registro está en un lugar de solo lectura; no se puede registrar nada</translation>
    </message>
    <message>
        <source>the file is empty; it is not a vessel register</source>
        <translation type="unfinished">el archivo está vacío; no es un registro de buque</translation>
    </message>
    <message>
        <source>Delete it to begin a new register with this name, or choose another file.</source>
        <translation type="unfinished">Bórrelo para empezar un registro nuevo con este nombre, o elija otro archivo.</translation>
    </message>
    <message>
        <source>this is not a Latchround vessel register</source>
        <translation type="unfinished">esto no es un registro de buque de Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one reads up to %2)</source>
        <translation type="unfinished">el registro lo escribió un programa más nuevo (versión %1; este lee hasta la %2)</translation>
    </message>
    <message>
        <source>the register was never completed</source>
        <translation type="unfinished">el registro nunca se completó</translation>
    </message>
    <message>
        <source>this disk does not support a write-ahead log</source>
        <translation type="unfinished">este disco no admite un registro de escritura anticipada (write-ahead log)</translation>
    </message>
    <message>
        <source>a program of another version is writing to it</source>
        <translation type="unfinished">un programa de otra versión está escribiendo en él</translation>
    </message>
    <message>
        <source>updating the register would leave rows of %1 with missing references: NOT changed</source>
        <translation type="unfinished">actualizar el registro dejaría filas de %1 a las que faltan referencias: NO se ha cambiado</translation>
    </message>
    <message>
        <source>a row of %1 has a missing reference</source>
        <translation type="unfinished">a una fila de %1 le falta una referencia</translation>
    </message>
    <message>
        <source>Import the file into the register of its vessel.</source>
        <translation type="unfinished">Importe el archivo al registro de su buque.</translation>
    </message>
    <message>
        <source>Sign and export in a vessel&apos;s register.</source>
        <translation type="unfinished">Firme y exporte en el registro de un buque.</translation>
    </message>
    <message>
        <source>this is a vessel&apos;s register: it cannot be used for practice</source>
        <translation type="unfinished">este es el registro de un buque: no se puede usar para la práctica</translation>
    </message>
    <message>
        <source>a practice register can hold only the practice vessel</source>
        <translation type="unfinished">un registro de práctica solo puede contener el buque de práctica</translation>
    </message>
    <message>
        <source>the number %1 is reserved for the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">el número %1 está reservado para el buque de práctica, cuyas puertas son simuladas</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or use it under Practice.</source>
        <translation type="unfinished">Indique el número propio del buque, o úselo en Práctica.</translation>
    </message>
    <message>
        <source>another program is writing to this register (%1)</source>
        <translation type="unfinished">otro programa está escribiendo en este registro (%1)</translation>
    </message>
    <message>
        <source>another program removed the register&apos;s log</source>
        <translation type="unfinished">otro programa eliminó el archivo &quot;log&quot; del registro</translation>
    </message>
    <message>
        <source>Try again: the contents of the log are put into the register first. Do not open the register in another program meanwhile.</source>
        <translation type="unfinished">Inténtelo de nuevo: antes se pasa al registro el contenido del &quot;log&quot;. Mientras tanto, no abra el registro en otro programa.</translation>
    </message>
    <message>
        <source>Take back the end of the walkdown first, or begin another.</source>
        <translation type="unfinished">Retire antes el fin del recorrido, o empiece otro.</translation>
    </message>
    <message>
        <source>%1 cannot be undone</source>
        <translation type="unfinished">%1 no se puede deshacer</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; record a correction.</source>
        <translation type="unfinished">Solo se puede deshacer lo que usted registró en esta tableta; registre una corrección.</translation>
    </message>
    <message>
        <source>Record it separately.</source>
        <translation type="unfinished">Regístrelo aparte.</translation>
    </message>
    <message>
        <source>this is not a photograph</source>
        <translation type="unfinished">esto no es una foto</translation>
    </message>
    <message>
        <source>the photograph does not match its hash</source>
        <translation type="unfinished">la foto no coincide con su hash</translation>
    </message>
    <message>
        <source>Import it from the tablet that took it.</source>
        <translation type="unfinished">Impórtela de la tableta que la tomó.</translation>
    </message>
    <message>
        <source>Check the number, or first import an arrangement that lists the door.</source>
        <translation type="unfinished">Compruebe el número, o importe antes una disposición que incluya la puerta.</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number used when it was tested.</source>
        <translation type="unfinished">Conserve la puerta en la disposición, con el número que tenía cuando se probó.</translation>
    </message>
    <message>
        <source>Import an arrangement that includes the door, here or on the other device, then export again.</source>
        <translation type="unfinished">Importe una disposición que incluya la puerta, aquí o en el otro equipo, y exporte de nuevo.</translation>
    </message>
    <message>
        <source>it is recorded here with different content under the same id</source>
        <translation type="unfinished">aquí está registrado con otro contenido y el mismo id</translation>
    </message>
    <message>
        <source>One of the two registers was changed outside this program; find out which before using either.</source>
        <translation type="unfinished">Uno de los dos registros se cambió fuera de este programa; averigüe cuál antes de usar ninguno.</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor in the import</source>
        <translation type="unfinished">%1 no está en este registro ni en lo que se importa</translation>
    </message>
    <message>
        <source>Ask for a complete new export.</source>
        <translation type="unfinished">Pida una nueva exportación completa.</translation>
    </message>
    <message>
        <source>no A class by the approved plan, where the tables require one</source>
        <translation type="unfinished">sin clase A según el plano aprobado, donde las tablas la exigen</translation>
    </message>
    <message>
        <source>approved plan not below the A class of the tables</source>
        <translation type="unfinished">plano aprobado no por debajo de la clase A de las tablas</translation>
    </message>
    <message>
        <source>its spaces do not show whether one is a machinery space of category A</source>
        <translation type="unfinished">sus espacios no muestran si uno es un espacio de categoría A para máquinas</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 40 m (131 ft), except the vehicle space of a vehicle ferry. With Marine Safety Center approval it is at most 44 m (144 ft), and so is the distance between the zone&apos;s farthest points. With a balcony the actual length is at most 40 m; if that length plus the balcony area divided by the mean width is more than 40 m, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">Por regla general, la longitud media de una zona en una cubierta cualquiera es de 40 m (131 ft) como máximo, salvo el espacio para vehículos de un transbordador de vehículos. Con aprobación del Marine Safety Center es de 44 m (144 ft) como máximo, y también la distancia entre los puntos más alejados de la zona. Con un balcón la longitud real es de 40 m como máximo; si esa longitud más el área del balcón dividida por el ancho medio supera 40 m, ambas cubiertas llevan rociadores (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>this is not an entry id</source>
        <translation type="unfinished">esto no es un id de entrada</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a kind of entry</source>
        <translation type="unfinished">&quot;%1&quot; no es un tipo de entrada</translation>
    </message>
    <message>
        <source>Give that mark, or write &quot;void&quot;.</source>
        <translation type="unfinished">Indique esa marca, o escriba &quot;void&quot; (nulo).</translation>
    </message>
    <message>
        <source>this computer has too little free memory to check the password</source>
        <translation type="unfinished">este ordenador tiene muy poca memoria libre para comprobar la contraseña</translation>
    </message>
    <message>
        <source>a part of the file cannot be read</source>
        <translation type="unfinished">no se puede leer una parte del archivo</translation>
    </message>
    <message>
        <source>%1 is in the file twice</source>
        <translation type="unfinished">%1 está dos veces en el archivo</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; in it points outside the file</source>
        <translation type="unfinished">el nombre &quot;%1&quot; que contiene apunta fuera del archivo</translation>
    </message>
    <message>
        <source>%1 would expand out of all proportion</source>
        <translation type="unfinished">%1 se expandiría de forma desmesurada</translation>
    </message>
    <message>
        <source>%1 does not belong in a handover file</source>
        <translation type="unfinished">%1 no tiene sitio en un archivo de traspaso</translation>
    </message>
    <message>
        <source>%1 was added after the file was signed</source>
        <translation type="unfinished">%1 se añadió después de firmarse el archivo</translation>
    </message>
    <message>
        <source>%1 was changed after the file was signed</source>
        <translation type="unfinished">%1 se cambió después de firmarse el archivo</translation>
    </message>
    <message>
        <source>entry %1 appears twice, with different content</source>
        <translation type="unfinished">la entrada %1 aparece dos veces, con distinto contenido</translation>
    </message>
    <message>
        <source>Copy all 64 digits and letters as shown on the other tablet.</source>
        <translation type="unfinished">Copie las 64 cifras y letras tal como las muestra la otra tableta.</translation>
    </message>
    <message>
        <source>it is based on %1 entries of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">se basa en %1 entradas del equipo %2 hasta %3; aquí hay %4</translation>
    </message>
    <message>
        <source>the entries it is based on have changed since</source>
        <translation type="unfinished">las entradas en que se basa han cambiado desde entonces</translation>
    </message>
    <message>
        <source>the entry it replaces, %1, is not here</source>
        <translation type="unfinished">la entrada que sustituye, %1, no está aquí</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation type="unfinished">entrada %1</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, A class by %2</source>
        <translation type="unfinished">contorno %1 según el plano aprobado, clase A según %2</translation>
    </message>
    <message>
        <source>entry %1 is incomplete</source>
        <translation type="unfinished">la entrada %1 está incompleta</translation>
    </message>
    <message>
        <source>another entry with this id is recorded already</source>
        <translation type="unfinished">ya hay registrada otra entrada con este id</translation>
    </message>
    <message>
        <source>the entry it shows, &quot;%1&quot;</source>
        <translation type="unfinished">la entrada que muestra, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">la entrada que sustituye, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry that stands, &quot;%1&quot;</source>
        <translation type="unfinished">la entrada que vale, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry it overrules, &quot;%1&quot;</source>
        <translation type="unfinished">la entrada que deja sin valor, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">la nueva disposición no tiene tal puerta, pero hay 1 entrada registrada sobre ella</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">la nueva disposición no tiene tal puerta, pero hay %1 entradas registradas sobre ella</translation>
    </message>
    <message>
        <source>the text speaks of doors in bulkheads, and this one is in a deck</source>
        <translation type="unfinished">el texto trata de puertas en mamparos, y esta es horizontal (en la propia cubierta)</translation>
    </message>
    <message>
        <source>by the door&apos;s own class, as the boundary&apos;s is not known</source>
        <translation type="unfinished">según la clase de la propia puerta, pues no se conoce la del contorno</translation>
    </message>
    <message>
        <source>no text here binds this vessel</source>
        <translation type="unfinished">ningún texto de aquí obliga a este buque</translation>
    </message>
    <message>
        <source>there is no translation into &quot;%1&quot;</source>
        <translation type="unfinished">no hay traducción a &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Choose one of: %2.</source>
        <translation type="unfinished">Elija entre: %2.</translation>
    </message>
    <message>
        <source>only a PDF can be a translation</source>
        <translation type="unfinished">solo un PDF puede ser una traducción</translation>
    </message>
    <message>
        <source>Write it to a PDF file; data is the same in every language.</source>
        <translation type="unfinished">Escríbalo en un archivo PDF; los datos son iguales en todos los idiomas.</translation>
    </message>
    <message>
        <source>%1 measured, %2 needed at %3 degrees</source>
        <translation type="unfinished">se midió %1, hace falta %2 a %3 grados</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_PASSWORD, or into a file named by --password-from.</source>
        <translation type="unfinished">Ponga la contraseña en LATCHROUND_PASSWORD, o en un archivo indicado con --password-from.</translation>
    </message>
    <message>
        <source>the file is damaged and cannot be opened</source>
        <translation type="unfinished">el archivo está dañado y no se puede abrir</translation>
    </message>
    <message>
        <source>this file is for one device only</source>
        <translation type="unfinished">este archivo es para un solo equipo</translation>
    </message>
    <message>
        <source>this file is for another device only, with key fingerprint %1</source>
        <translation type="unfinished">este archivo es solo para otro equipo, con huella de clave %1</translation>
    </message>
    <message>
        <source>Open it there, or have it exported for this device, with key fingerprint %2.</source>
        <translation type="unfinished">Ábralo allí, o pida que lo exporten para este equipo, con huella de clave %2.</translation>
    </message>
    <message>
        <source>Nearest name here: &quot;%1&quot;.</source>
        <translation type="unfinished">Nombre más parecido aquí: &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot; or &quot;%2&quot;.</source>
        <translation type="unfinished">Nombres más parecidos aquí: &quot;%1&quot; o &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;.</source>
        <translation type="unfinished">Nombres más parecidos aquí: &quot;%1&quot;, &quot;%2&quot; o &quot;%3&quot;.</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">la disposición del archivo no tiene tal puerta, pero hay 1 entrada registrada sobre ella</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">la disposición del archivo no tiene tal puerta, pero hay %1 entradas registradas sobre ella</translation>
    </message>
    <message>
        <source>this is not a URL: in a password, percent-encode every character that is not a letter or digit, such as %1 for @</source>
        <translation type="unfinished">esto no es una URL: en una contraseña, codifique con porcentaje (percent-encoding) todo carácter que no sea letra ni cifra, por ejemplo %1 por @</translation>
    </message>
    <message>
        <source>it is locked, but its open part shows faults</source>
        <translation type="unfinished">está bloqueado, pero su parte abierta muestra fallos</translation>
    </message>
</context>
<context>
    <name>CueWords</name>
    <message>
        <source>Alarm heard</source>
        <translation type="unfinished">Alarma oída</translation>
    </message>
    <message>
        <source>Leaf seen to start</source>
        <translation type="unfinished">Inicio de la hoja</translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished">Parada de la hoja</translation>
    </message>
    <message>
        <source>%1 ms early</source>
        <translation type="unfinished">%1 ms antes</translation>
    </message>
    <message>
        <source>%1 ms late</source>
        <translation type="unfinished">%1 ms después</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">sin marcas</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 needed</source>
        <translation type="unfinished">cuentan %1 de %2 marcas, hacen falta %3</translation>
    </message>
    <message>
        <source>%1 marks, %2, scatter %3&#xa0;ms</source>
        <translation type="unfinished">%1 marcas, %2, dispersión %3&#xa0;ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">aquí no había nada mal</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Usted: %1</translation>
    </message>
    <message>
        <source>One person was endangered</source>
        <translation type="unfinished">Se puso en peligro a una persona</translation>
    </message>
    <message>
        <source>%1 people were endangered</source>
        <translation type="unfinished">Se puso en peligro a %1 personas</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished">No se cronometró nada.</translation>
    </message>
    <message>
        <source>There was no fault, and none was reported.</source>
        <translation type="unfinished">No había ningún defecto y no se notificó ninguno.</translation>
    </message>
    <message>
        <source>Every check is graded correctly.</source>
        <translation type="unfinished">Todas las comprobaciones están bien calificadas.</translation>
    </message>
    <message>
        <source>No one was endangered</source>
        <translation type="unfinished">No se puso en peligro a nadie</translation>
    </message>
    <message>
        <source>A leaf reached someone, or would have. Aboard, that is a crushed hand or a death: a power-operated leaf does not know who is in its way.</source>
        <translation type="unfinished">Una hoja alcanzó a alguien, o lo habría alcanzado. A bordo eso es una mano aplastada o una muerte: una hoja de accionamiento a motor no sabe quién está en su camino.</translation>
    </message>
    <message>
        <source>No moving leaf reached anyone.</source>
        <translation type="unfinished">Ninguna hoja en movimiento alcanzó a nadie.</translation>
    </message>
    <message>
        <source>Watch the opening, not the clock. Stop the moment someone steps in: a stopped run costs two minutes.</source>
        <translation type="unfinished">Mire la abertura, no el reloj. Pare en cuanto alguien entre: un ensayo parado cuesta dos minutos.</translation>
    </message>
    <message>
        <source>Every caution was true when confirmed</source>
        <translation type="unfinished">Cada precaución era cierta al confirmarla</translation>
    </message>
    <message>
        <source>One caution was falsely confirmed</source>
        <translation type="unfinished">Se confirmó en falso una precaución</translation>
    </message>
    <message>
        <source>%1 cautions were falsely confirmed</source>
        <translation type="unfinished">Se confirmaron en falso %1 precauciones</translation>
    </message>
    <message>
        <source>Your reaction time in this exercise</source>
        <translation type="unfinished">Su tiempo de reacción en este ejercicio</translation>
    </message>
    <message>
        <source>Each mark against the true time</source>
        <translation type="unfinished">Cada marca frente al tiempo verdadero</translation>
    </message>
    <message>
        <source>The right response is to stop. No requirement covers this.</source>
        <translation type="unfinished">La respuesta correcta es parar. Ningún requisito trata de esto.</translation>
    </message>
    <message>
        <source>Correct: %1</source>
        <translation type="unfinished">Correcto: %1</translation>
    </message>
    <message>
        <source>The stopwatch was armed with someone in the way. Look at both sides first. Ask people to stand clear. Never confirm a caution just to go on.</source>
        <translation type="unfinished">Se preparó el cronómetro con alguien en medio. Mire antes a ambos lados. Pida que se aparten. Nunca confirme una precaución solo para seguir.</translation>
    </message>
    <message>
        <source>The way was clear each time the stopwatch was armed.</source>
        <translation type="unfinished">El paso estaba despejado cada vez que se preparó el cronómetro.</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Once there are %1 of a kind, the timing drill offers to use them as your own figures in place of the published ones.</source>
        <translation type="unfinished">Las marcas de todos sus ejercicios se suman. Cuando hay %1 de un tipo, la prueba de reacción ofrece usarlas como valores propios en lugar de los publicados.</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">No se cumple: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">hallada el %1, abierta desde entonces</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Deficiencia en la puerta %1</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Otra vez el mismo defecto</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2; limit: %3</source>
        <translation type="unfinished">No se cumple: %1. Medido %2; límite: %3</translation>
    </message>
    <message>
        <source>This check was written up before: %1.</source>
        <translation type="unfinished">Esta comprobación ya se anotó antes: %1.</translation>
    </message>
    <message>
        <source>found on %1, since %2</source>
        <translation type="unfinished">hallada el %1, desde entonces %2</translation>
    </message>
    <message>
        <source>Another defect</source>
        <translation type="unfinished">Otro defecto</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2</source>
        <translation type="unfinished">No se cumple: %1. Medido %2</translation>
    </message>
</context>
<context>
    <name>DoorWords</name>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">de una hoja</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">de dos hojas</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">corredera</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">de vaivén</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">mamparo de zona</translation>
    </message>
    <message>
        <source>stairway</source>
        <translation type="unfinished">escalera</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">cocina</translation>
    </message>
    <message>
        <source>machinery space</source>
        <translation type="unfinished">espacio de máquinas</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">espacio de categoría especial</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">camarote</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">exterior</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">otro contorno</translation>
    </message>
    <message>
        <source>port</source>
        <translation type="unfinished">babor</translation>
    </message>
    <message>
        <source>starboard</source>
        <translation type="unfinished">estribor</translation>
    </message>
    <message>
        <source>centreline</source>
        <translation type="unfinished">crujía</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished">1 puerta</translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished">%1 puertas</translation>
    </message>
    <message>
        <source>bulkhead %1</source>
        <translation type="unfinished">mamparo %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">anual</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">trimestral</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation type="unfinished">tras reparación</translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished">simulacro</translation>
    </message>
    <message>
        <source>other purpose</source>
        <translation type="unfinished">otro fin</translation>
    </message>
    <message>
        <source>from the control station</source>
        <translation type="unfinished">desde el puesto de control</translation>
    </message>
    <message>
        <source>at the door, side one</source>
        <translation type="unfinished">en la puerta, lado uno</translation>
    </message>
    <message>
        <source>at the door, side two</source>
        <translation type="unfinished">en la puerta, lado dos</translation>
    </message>
    <message>
        <source>Alarm on</source>
        <translation type="unfinished">Alarma suena</translation>
    </message>
    <message>
        <source>Leaf moves</source>
        <translation type="unfinished">La hoja se mueve</translation>
    </message>
    <message>
        <source>Half-way</source>
        <translation type="unfinished">A mitad</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation type="unfinished">Cerrada</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Alarma callada</translation>
    </message>
    <message>
        <source>First leaf home</source>
        <translation type="unfinished">Primera hoja cerrada</translation>
    </message>
    <message>
        <source>Second leaf home</source>
        <translation type="unfinished">Segunda hoja cerrada</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Parada</translation>
    </message>
    <message>
        <source>touch at the first sound of the alarm</source>
        <translation type="unfinished">toque al primer sonido de la alarma</translation>
    </message>
    <message>
        <source>touch at the first movement</source>
        <translation type="unfinished">toque al primer movimiento</translation>
    </message>
    <message>
        <source>touch the moment the leaf is home</source>
        <translation type="unfinished">toque en cuanto la hoja quede cerrada del todo</translation>
    </message>
    <message>
        <source>touch the moment the alarm is silent</source>
        <translation type="unfinished">toque en cuanto calle la alarma</translation>
    </message>
    <message>
        <source>touch when the first leaf is home</source>
        <translation type="unfinished">toque cuando la primera hoja quede cerrada</translation>
    </message>
    <message>
        <source>touch when the second leaf is home</source>
        <translation type="unfinished">toque cuando la segunda hoja quede cerrada</translation>
    </message>
    <message>
        <source>touch when the edge meets the block</source>
        <translation type="unfinished">toque cuando el borde llegue al bloque</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">completo</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">parado</translation>
    </message>
    <message>
        <source>port State campaign</source>
        <translation type="unfinished">campaña del ERP</translation>
    </message>
    <message>
        <source>port State control</source>
        <translation type="unfinished">supervisión del ERP</translation>
    </message>
    <message>
        <source>blackout test</source>
        <translation type="unfinished">prueba de apagón</translation>
    </message>
    <message>
        <source>by hand from fully open</source>
        <translation type="unfinished">a mano desde abierta del todo</translation>
    </message>
    <message>
        <source>optional: when half the opening is closed</source>
        <translation type="unfinished">opcional: al cerrarse la mitad de la abertura</translation>
    </message>
    <message>
        <source>touch when the leaf stops and re-opens</source>
        <translation type="unfinished">toque cuando la hoja se pare y se reabra</translation>
    </message>
    <message>
        <source>void</source>
        <translation type="unfinished">nulo</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation type="unfinished">Contacto</translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message>
        <source>weekly</source>
        <translation type="unfinished">semanal</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">trimestral</translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Certificado de seguridad para buque de pasaje, reconocimiento de renovación</translation>
    </message>
    <message>
        <source>overdue: never recorded here</source>
        <translation type="unfinished">vencido: nunca anotado aquí</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">vencido desde el %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">vence el %1</translation>
    </message>
    <message>
        <source>%1 of %2 overdue</source>
        <translation type="unfinished">%1 de %2 vencidas</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation type="unfinished">último %1</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 vencidos</translation>
    </message>
    <message>
        <source>overdue: expired on %1</source>
        <translation type="unfinished">vencido: caducó el %1</translation>
    </message>
    <message>
        <source>expires %1, window opens %2</source>
        <translation type="unfinished">caduca el %1, el plazo se abre el %2</translation>
    </message>
    <message>
        <source>window open since %1, expires %2</source>
        <translation type="unfinished">plazo abierto desde el %1, caduca el %2</translation>
    </message>
    <message>
        <source>on request</source>
        <translation type="unfinished">a petición</translation>
    </message>
    <message>
        <source>overdue: some doors never tested in this register</source>
        <translation type="unfinished">vencido: algunas puertas nunca probadas en este registro</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation type="unfinished">no vence nada</translation>
    </message>
    <message>
        <source>next due %1</source>
        <translation type="unfinished">próximo vencimiento: %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">anual</translation>
    </message>
</context>
<context>
    <name>ExerciseWords</name>
    <message>
        <source>first steps</source>
        <translation type="unfinished">primeros pasos</translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished">fácil</translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished">difícil</translation>
    </message>
    <message>
        <source>exam</source>
        <translation type="unfinished">examen</translation>
    </message>
    <message>
        <source>closes too fast</source>
        <translation type="unfinished">cierra demasiado deprisa</translation>
    </message>
    <message>
        <source>closes too slowly</source>
        <translation type="unfinished">cierra demasiado despacio</translation>
    </message>
    <message>
        <source>alarm too short</source>
        <translation type="unfinished">alarma demasiado corta</translation>
    </message>
    <message>
        <source>alarm stops early</source>
        <translation type="unfinished">la alarma cesa antes</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">el pestillo no encaja</translation>
    </message>
    <message>
        <source>no release from one side</source>
        <translation type="unfinished">sin accionamiento desde un lado</translation>
    </message>
    <message>
        <source>hook</source>
        <translation type="unfinished">gancho</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation type="unfinished">cuña</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">basura en el cajón</translation>
    </message>
    <message>
        <source>sill missing</source>
        <translation type="unfinished">falta el umbral</translation>
    </message>
    <message>
        <source>gap under the leaf</source>
        <translation type="unfinished">hueco bajo la hoja</translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished">placa inadecuada para el contorno</translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished">paso de manguera atascado</translation>
    </message>
    <message>
        <source>stays open</source>
        <translation type="unfinished">queda abierta</translation>
    </message>
    <message>
        <source>people in the path</source>
        <translation type="unfinished">gente en la trayectoria</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">hallado</translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished">no visto</translation>
    </message>
    <message>
        <source>too close to a limit to call</source>
        <translation type="unfinished">demasiado cerca de un límite para decidir</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">se reabre demasiado</translation>
    </message>
    <message>
        <source>leaves in the wrong order</source>
        <translation type="unfinished">hojas en orden equivocado</translation>
    </message>
    <message>
        <source>magnet releases late</source>
        <translation type="unfinished">accionamiento tardío del imán</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">junta pintada</translation>
    </message>
    <message>
        <source>false indication</source>
        <translation type="unfinished">indicación falsa</translation>
    </message>
    <message>
        <source>reported but absent</source>
        <translation type="unfinished">notificado pero inexistente</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Desglose de la incertidumbre</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Until your timing drill is done, published reaction times apply: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Según la ley de propagación (JCGM 100:2008). Hasta que haga su prueba de reacción se aplican tiempos de reacción publicados: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1: timing history</source>
        <translation type="unfinished">Puerta %1: historial de tiempos</translation>
    </message>
    <message>
        <source>No time has been taken with the ship upright.</source>
        <translation type="unfinished">No se ha tomado ningún tiempo con el buque adrizado.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs, with its U. The next is expected within the shaded band (95 %). This says nothing about sudden failure.</source>
        <translation type="unfinished">Cada punto es la media de los ensayos de un recorrido con el buque adrizado, con su U. El siguiente se espera dentro de la banda sombreada (95 %). Esto no dice nada de un fallo repentino.</translation>
    </message>
</context>
<context>
    <name>GradeWords</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 a %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished">como máximo %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished">como mínimo %1</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished">sin motivo indicado</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">no se pudo probar: %1</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">demostrado por un ensayo completo</translation>
    </message>
    <message>
        <source>inside the limits, mean of %1 runs</source>
        <translation type="unfinished">dentro de los límites, media de %1 ensayos</translation>
    </message>
    <message>
        <source>inside the limits</source>
        <translation type="unfinished">dentro de los límites</translation>
    </message>
    <message>
        <source>outside the limits, mean of %1 runs</source>
        <translation type="unfinished">fuera de los límites, media de %1 ensayos</translation>
    </message>
    <message>
        <source>outside the limits</source>
        <translation type="unfinished">fuera de los límites</translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1; sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>they differ: %1</source>
        <translation type="unfinished">no coinciden: %1</translation>
    </message>
    <message>
        <source>%1: ask for the certificate</source>
        <translation type="unfinished">%1: pida el certificado</translation>
    </message>
    <message>
        <source>decided by the inspector: %1</source>
        <translation type="unfinished">decidido por el inspector: %1</translation>
    </message>
    <message>
        <source>needs a run released from the control station</source>
        <translation type="unfinished">requiere un ensayo accionado desde el puesto de control</translation>
    </message>
    <message>
        <source>the alarm was still on when the door was shut</source>
        <translation type="unfinished">la alarma seguía sonando cuando la puerta ya estaba cerrada</translation>
    </message>
    <message>
        <source>the alarm stopped before the door was shut</source>
        <translation type="unfinished">la alarma cesó antes de que la puerta se cerrara</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, edición %2</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">recomendación, nunca motivo para que falle una puerta</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">un ensayo más; tres como máximo y luego decide usted</translation>
    </message>
    <message>
        <source>a run released from the control station</source>
        <translation type="unfinished">un ensayo accionado desde el puesto de control</translation>
    </message>
    <message>
        <source>measure the clear opening</source>
        <translation type="unfinished">mida la abertura libre</translation>
    </message>
    <message>
        <source>time it with the ship upright</source>
        <translation type="unfinished">cronometre con el buque adrizado</translation>
    </message>
    <message>
        <source>come back when it can be tested</source>
        <translation type="unfinished">vuelva cuando se pueda probar</translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 no satisfactorios</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 sin probar</translation>
    </message>
    <message>
        <source>all %1 satisfactory</source>
        <translation type="unfinished">los %1 satisfactorios</translation>
    </message>
    <message>
        <source>%1 (door %2)</source>
        <translation type="unfinished">%1 (puerta %2)</translation>
    </message>
    <message>
        <source>no class</source>
        <translation type="unfinished">sin clase</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">no impreso</translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished">no se conoce</translation>
    </message>
    <message>
        <source>%1 by the approved plan</source>
        <translation type="unfinished">%1 según el plano aprobado</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 según %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 o %2</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished">en el límite</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">otro ensayo</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">no se aplica a esta puerta</translation>
    </message>
    <message>
        <source>does not apply: see the answer to “%1”</source>
        <translation type="unfinished">no se aplica: vea la respuesta a «%1»</translation>
    </message>
    <message>
        <source>does not apply to this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">no se aplica a esta puerta (%1): lo registrado aquí no cuenta</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open; you decide: %1</source>
        <translation type="unfinished">falla, pero el texto lo deja abierto; decide usted: %1</translation>
    </message>
    <message>
        <source>not tested on this walkdown: %1</source>
        <translation type="unfinished">no se probó en este recorrido: %1</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">aún sin probar</translation>
    </message>
    <message>
        <source>one side still to be tested</source>
        <translation type="unfinished">falta probar un lado</translation>
    </message>
    <message>
        <source>checked: met</source>
        <translation type="unfinished">comprobado: se cumple</translation>
    </message>
    <message>
        <source>checked: not met</source>
        <translation type="unfinished">comprobado: no se cumple</translation>
    </message>
    <message>
        <source>answered n/a for this door</source>
        <translation type="unfinished">respondido n/p para esta puerta</translation>
    </message>
    <message>
        <source>checked: another kind of door</source>
        <translation type="unfinished">comprobado: otro tipo de puerta</translation>
    </message>
    <message>
        <source>too close to the limit to call: time again</source>
        <translation type="unfinished">demasiado cerca del límite para decidir: vuelva a cronometrar</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">cierra de modo desigual: %1 ensayos no concuerdan; cuenta el peor</translation>
    </message>
    <message>
        <source>the alarm varies: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">la alarma varía: %1 ensayos no concuerdan; cuenta el peor</translation>
    </message>
    <message>
        <source>one half of the travel is outside the limits: is it roughly uniform?</source>
        <translation type="unfinished">una mitad de la trayectoria está fuera de los límites: ¿es aproximadamente uniforme?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only; time it again upright</source>
        <translation type="unfinished">escora de %1 grados: el valor es solo recomendación; vuelva a cronometrar con el buque adrizado</translation>
    </message>
    <message>
        <source>class too low for its boundary: %1</source>
        <translation type="unfinished">clase demasiado baja para su contorno: %1</translation>
    </message>
    <message>
        <source>class too low by tables not shown to apply to this ship: %1; ask for the approved drawing</source>
        <translation type="unfinished">clase demasiado baja según tablas que no consta que se apliquen a este buque: %1; pida el plano aprobado</translation>
    </message>
    <message>
        <source>class too low for its boundary, unless oil fuel tanks are below: %1</source>
        <translation type="unfinished">clase demasiado baja para su contorno, salvo que debajo haya tanques de combustible líquido: %1</translation>
    </message>
    <message>
        <source>%1; the register does not give the boundary&apos;s class: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1; el registro no da la clase del contorno: vea el plano aprobado de lucha contra incendios o consulte a la Administración</translation>
    </message>
    <message>
        <source>%1; no fire class is required here</source>
        <translation type="unfinished">%1; aquí no se exige clase de resistencia al fuego</translation>
    </message>
    <message>
        <source>common practice is not met: you decide whether that is acceptable</source>
        <translation type="unfinished">no se cumple la práctica común: decide usted si es aceptable</translation>
    </message>
    <message>
        <source>run completed, but not every event was marked</source>
        <translation type="unfinished">ensayo completado, pero no se marcó cada suceso</translation>
    </message>
    <message>
        <source>run started, but none completed</source>
        <translation type="unfinished">ensayo iniciado, pero ninguno completado</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule requires one: %1</source>
        <translation type="unfinished">el plano aprobado no tiene clase A donde la regla la exige: %1</translation>
    </message>
    <message>
        <source>released from the control station, but no alarm was marked</source>
        <translation type="unfinished">accionada desde el puesto de control, pero no se marcó ninguna alarma</translation>
    </message>
    <message>
        <source>the clear opening of this door is not in the register</source>
        <translation type="unfinished">la abertura libre de esta puerta no está en el registro</translation>
    </message>
    <message>
        <source>checked against the text</source>
        <translation type="unfinished">cotejado con el texto</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation type="unfinished">práctica común, sin fuente publicada</translation>
    </message>
    <message>
        <source>rectify it, then test it again</source>
        <translation type="unfinished">rectifíquelo y luego vuelva a probarlo</translation>
    </message>
    <message>
        <source>your decision, with a reason</source>
        <translation type="unfinished">su decisión, con un motivo</translation>
    </message>
    <message>
        <source>test it from the other side</source>
        <translation type="unfinished">haga la prueba desde el otro lado</translation>
    </message>
    <message>
        <source>record whether the alarm sounded, or run it again</source>
        <translation type="unfinished">registre si sonó la alarma, o repita el ensayo</translation>
    </message>
    <message>
        <source>test it at the door</source>
        <translation type="unfinished">haga la prueba en la puerta</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 por resolver</translation>
    </message>
    <message>
        <source>no checks</source>
        <translation type="unfinished">sin comprobaciones</translation>
    </message>
    <message>
        <source>critical: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">crítica: pasa fuego o humo, o alguien puede resultar herido</translation>
    </message>
    <message>
        <source>serious: the door does not do what is required</source>
        <translation type="unfinished">grave: la puerta no hace lo que se exige</translation>
    </message>
    <message>
        <source>%1; the answer was recorded before this run</source>
        <translation type="unfinished">%1; la respuesta se registró antes de este ensayo</translation>
    </message>
    <message>
        <source>minor: maintenance and marking</source>
        <translation type="unfinished">leve: mantenimiento y marcado</translation>
    </message>
    <message>
        <source>%1: advice only</source>
        <translation type="unfinished">%1: solo recomendación</translation>
    </message>
    <message>
        <source>%1: you decide</source>
        <translation type="unfinished">%1: decide usted</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to apply here (%1)</source>
        <translation type="unfinished">falla, pero no consta que el texto se aplique aquí (%1)</translation>
    </message>
    <message>
        <source>not met, but this is advice only: %1</source>
        <translation type="unfinished">no se cumple, pero es solo recomendación: %1</translation>
    </message>
    <message>
        <source>one side was answered n/a, but the text requires both</source>
        <translation type="unfinished">en un lado se respondió n/p, pero el texto exige ambos</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1)</source>
        <translation type="unfinished">sobrepasa el límite en menos de una división del instrumento (%1)</translation>
    </message>
    <message>
        <source>between the two figures printed in the text (%1)</source>
        <translation type="unfinished">entre las dos cifras impresas en el texto (%1)</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1</source>
        <translation type="unfinished">fuera de una banda que el texto llama aproximada, %1</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs</source>
        <translation type="unfinished">aún demasiado cerca de un límite tras %1 ensayos</translation>
    </message>
    <message>
        <source>closing force below what the leaf&apos;s weight alone needs (%1)</source>
        <translation type="unfinished">fuerza de cierre inferior a la que exige el peso de la hoja por sí solo (%1)</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move: marked by mistake? Make another run</source>
        <translation type="unfinished">cerrada más deprisa de lo que puede moverse una hoja: ¿marca por error? Haga otro ensayo</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs; the text says approximate</source>
        <translation type="unfinished">aún demasiado cerca de un límite tras %1 ensayos; el texto dice aproximado</translation>
    </message>
    <message>
        <source>answered n/a, but the text has no such case</source>
        <translation type="unfinished">respondido n/p, pero el texto no contempla ese caso</translation>
    </message>
    <message>
        <source>answered n/a, but the register does not show that case</source>
        <translation type="unfinished">respondido n/p, pero el registro no muestra ese caso</translation>
    </message>
    <message>
        <source>%1; the earlier decision (satisfactory: %2) was made before a newer entry</source>
        <translation type="unfinished">%1; la decisión anterior (satisfactorio: %2) se tomó antes de una entrada más reciente</translation>
    </message>
    <message>
        <source>the alarm did not come on until the door was shut</source>
        <translation type="unfinished">la alarma no sonó hasta que la puerta estuvo cerrada</translation>
    </message>
    <message>
        <source>%1; a newer entry has been made since: it stays unsatisfactory until you decide again</source>
        <translation type="unfinished">%1; desde entonces hay una anotación más reciente: sigue no satisfactorio hasta que usted decida de nuevo</translation>
    </message>
</context>
<context>
    <name>GroupWords</name>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">zona desconocida</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">entre zonas %1 y %2</translation>
    </message>
    <message>
        <source>open for more than 90 days</source>
        <translation type="unfinished">abierta desde hace más de 90 días</translation>
    </message>
    <message>
        <source>open for more than 30 days</source>
        <translation type="unfinished">abierta desde hace más de 30 días</translation>
    </message>
    <message>
        <source>open for more than 7 days</source>
        <translation type="unfinished">abierta desde hace más de 7 días</translation>
    </message>
    <message>
        <source>found in the last 7 days</source>
        <translation type="unfinished">hallada en los últimos 7 días</translation>
    </message>
    <message>
        <source>due within 7 days</source>
        <translation type="unfinished">vence en 7 días</translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation type="unfinished">vence en 30 días</translation>
    </message>
    <message>
        <source>due later</source>
        <translation type="unfinished">vence más tarde</translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 pendiente</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 pendientes</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished">vencida</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">sin fecha fijada</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">nadie aún</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">primera marca: la hoja empieza a moverse</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">última marca: cerrada del todo</translation>
    </message>
    <message>
        <source>sticks, then slams</source>
        <translation type="unfinished">se atasca, luego da un portazo</translation>
    </message>
    <message>
        <source>one leaf home, then the one with the lip</source>
        <translation type="unfinished">llega una hoja, luego la de la solapa</translation>
    </message>
    <message>
        <source>one leaf alone shuts and latches</source>
        <translation type="unfinished">una hoja sola cierra y encaja</translation>
    </message>
    <message>
        <source>and so does the other</source>
        <translation type="unfinished">y la otra también</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">un gancho la sujeta abierta</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">un lado no hace nada</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">queda abierta</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">vuelve atrás: la puerta queda retenida otra vez</translation>
    </message>
    <message>
        <source>first the alarm, then the leaf moves</source>
        <translation type="unfinished">primero la alarma, luego se mueve la hoja</translation>
    </message>
    <message>
        <source>the leaf moves as the alarm begins</source>
        <translation type="unfinished">la hoja se mueve al empezar la alarma</translation>
    </message>
    <message>
        <source>the alarm lasts until the leaf is home</source>
        <translation type="unfinished">la alarma dura hasta que la hoja queda cerrada</translation>
    </message>
    <message>
        <source>the alarm stops while the leaf moves</source>
        <translation type="unfinished">la alarma cesa mientras la hoja se mueve</translation>
    </message>
    <message>
        <source>painted over</source>
        <translation type="unfinished">pintada</translation>
    </message>
    <message>
        <source>the gap over the leaf is even</source>
        <translation type="unfinished">el hueco sobre la hoja es uniforme</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">el pestillo ha entrado en su cerradero</translation>
    </message>
    <message>
        <source>from the edge of the leaf to the tip of the bolt</source>
        <translation type="unfinished">del borde de la hoja a la punta del pestillo</translation>
    </message>
    <message>
        <source>a feeler between the two leaves</source>
        <translation type="unfinished">una galga entre las dos hojas</translation>
    </message>
    <message>
        <source>double-swing door: top and sides</source>
        <translation type="unfinished">puerta de vaivén: arriba y a los lados</translation>
    </message>
    <message>
        <source>hardly touches the stop</source>
        <translation type="unfinished">apenas toca el tope</translation>
    </message>
    <message>
        <source>whole, flat and firm</source>
        <translation type="unfinished">entero, plano y firme</translation>
    </message>
    <message>
        <source>a loose end that a foot can catch on</source>
        <translation type="unfinished">un extremo suelto en que puede tropezar un pie</translation>
    </message>
    <message>
        <source>the covering stops at the sill</source>
        <translation type="unfinished">el revestimiento acaba en el umbral</translation>
    </message>
    <message>
        <source>the covering runs on under the leaf</source>
        <translation type="unfinished">el revestimiento sigue bajo la hoja</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">un hueco ancho: lea la regla al pie de la hoja</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">basura en el carril</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">solo la sujeta su propio retenedor</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">una cuña bajo la hoja</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">un gancho al lado, un cáncamo en la hoja</translation>
    </message>
    <message>
        <source>dirt on the rail, a roller off</source>
        <translation type="unfinished">suciedad en el carril, un rodillo fuera</translation>
    </message>
    <message>
        <source>one person, from either side</source>
        <translation type="unfinished">una persona, desde cualquier lado</translation>
    </message>
    <message>
        <source>it takes two</source>
        <translation type="unfinished">hacen falta dos</translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">suelte, apártese: se cierra de nuevo</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">enganchado al pestillo, se tira hasta que se suelta</translation>
    </message>
    <message>
        <source>at the free edge, square to the leaf, nearly shut</source>
        <translation type="unfinished">en el borde libre, a escuadra con la hoja, casi cerrada</translation>
    </message>
    <message>
        <source>the angle between plumb line and ship</source>
        <translation type="unfinished">el ángulo entre la plomada y el buque</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Accionamiento %1</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Contacto con un bloque blando, nunca con la mano</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Fuerza de cierre en el borde, con dinamómetro</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Escora actual del buque</translation>
    </message>
    <message>
        <source>scoured or painted over</source>
        <translation type="unfinished">borrada o pintada</translation>
    </message>
    <message>
        <source>the number can be read</source>
        <translation type="unfinished">el número se lee</translation>
    </message>
    <message>
        <source>a grille in the leaf</source>
        <translation type="unfinished">una rejilla en la hoja</translation>
    </message>
    <message>
        <source>a grille: only the openings between the bars</source>
        <translation type="unfinished">una rejilla: solo los huecos entre las lamas</translation>
    </message>
    <message>
        <source>cracked, or without its wire</source>
        <translation type="unfinished">agrietado, o sin su alambre</translation>
    </message>
    <message>
        <source>one leaf, from hinge side to free edge</source>
        <translation type="unfinished">una hoja, del lado de las bisagras al borde libre</translation>
    </message>
    <message>
        <source>holes, a cable through it, rust</source>
        <translation type="unfinished">agujeros, un cable que la atraviesa, óxido</translation>
    </message>
    <message>
        <source>the cover falls shut by itself</source>
        <translation type="unfinished">la tapa cae cerrada sola</translation>
    </message>
    <message>
        <source>the cover stays up</source>
        <translation type="unfinished">la tapa queda levantada</translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished">lista</translation>
    </message>
    <message>
        <source>start: …</source>
        <translation type="unfinished">inicio: …</translation>
    </message>
    <message>
        <source>stop: …</source>
        <translation type="unfinished">parada: …</translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished">responde en el canal acordado</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">una mano en el borde, una caja en la trayectoria</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">una falla, las demás funcionan</translation>
    </message>
    <message>
        <source>the cover opens, a tool gets in</source>
        <translation type="unfinished">la tapa se abre, cabe una herramienta</translation>
    </message>
    <message>
        <source>built in behind pipes and lockers</source>
        <translation type="unfinished">empotrado tras tuberías y taquillas</translation>
    </message>
    <message>
        <source>what it is for, and who approved it</source>
        <translation type="unfinished">para qué sirve y quién lo aprobó</translation>
    </message>
    <message>
        <source>shuts fully from any position</source>
        <translation type="unfinished">se cierra del todo desde cualquier posición</translation>
    </message>
    <message>
        <source>left ajar</source>
        <translation type="unfinished">queda entreabierta</translation>
    </message>
    <message>
        <source>even speed from start to end</source>
        <translation type="unfinished">velocidad uniforme de principio a fin</translation>
    </message>
    <message>
        <source>lip home first: the other leaf stays out</source>
        <translation type="unfinished">la hoja de la solapa llega primero: la otra queda fuera</translation>
    </message>
    <message>
        <source>shuts when let go</source>
        <translation type="unfinished">se cierra al soltarla</translation>
    </message>
    <message>
        <source>the switch on each side releases it</source>
        <translation type="unfinished">el interruptor de cada lado la acciona</translation>
    </message>
    <message>
        <source>stays where it was put</source>
        <translation type="unfinished">se queda donde se dejó</translation>
    </message>
    <message>
        <source>ajar, and the panel says open</source>
        <translation type="unfinished">entreabierta, y el panel dice abierta</translation>
    </message>
    <message>
        <source>ajar, but the panel says shut</source>
        <translation type="unfinished">entreabierta, pero el panel dice cerrada</translation>
    </message>
    <message>
        <source>the strip is flush and unbroken</source>
        <translation type="unfinished">la tira está a ras y sin cortes</translation>
    </message>
    <message>
        <source>hangs low and rubs on the sill</source>
        <translation type="unfinished">está descolgada y roza el umbral</translation>
    </message>
    <message>
        <source>dry, arm secure at both ends</source>
        <translation type="unfinished">seco, brazo firme en ambos extremos</translation>
    </message>
    <message>
        <source>leaks oil, arm is off</source>
        <translation type="unfinished">pierde aceite, brazo suelto</translation>
    </message>
    <message>
        <source>the bolt falls short: a push opens it</source>
        <translation type="unfinished">el pestillo no llega: un empujón la abre</translation>
    </message>
    <message>
        <source>overlaps the stop well</source>
        <translation type="unfinished">solapa bien sobre el tope</translation>
    </message>
    <message>
        <source>narrow at its widest point</source>
        <translation type="unfinished">estrecho en su punto más ancho</translation>
    </message>
    <message>
        <source>clear deck along the whole path</source>
        <translation type="unfinished">cubierta despejada en toda la trayectoria</translation>
    </message>
    <message>
        <source>stores in the path of the leaf</source>
        <translation type="unfinished">pertrechos en la trayectoria de la hoja</translation>
    </message>
    <message>
        <source>clear to the end</source>
        <translation type="unfinished">libre hasta el fondo</translation>
    </message>
    <message>
        <source>clean, every roller on the rail</source>
        <translation type="unfinished">limpio, cada rodillo en el carril</translation>
    </message>
    <message>
        <source>open it while it is still released</source>
        <translation type="unfinished">ábrala mientras sigue accionada</translation>
    </message>
    <message>
        <source>stops at the soft block and re-opens</source>
        <translation type="unfinished">se para en el bloque blando y se reabre</translation>
    </message>
    <message>
        <source>keeps pushing: a hand would be crushed</source>
        <translation type="unfinished">sigue empujando: aplastaría una mano</translation>
    </message>
    <message>
        <source>re-opens a little from the block</source>
        <translation type="unfinished">se reabre un poco desde el bloque</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">se reabre demasiado</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it first moves</source>
        <translation type="unfinished">enganchado al borde libre, hasta que empieza a moverse</translation>
    </message>
    <message>
        <source>opened to the stair&apos;s width</source>
        <translation type="unfinished">abierta hasta el ancho de la escalera</translation>
    </message>
    <message>
        <source>Check the whole path first. Operate the switch or handle on that side, then stand clear. Keep hands off edges and out of the pocket.</source>
        <translation type="unfinished">Compruebe antes toda la trayectoria. Accione el interruptor o la manija de ese lado y apártese. Mantenga las manos lejos de los bordes y fuera del cajón de la hoja.</translation>
    </message>
    <message>
        <source>Open it fully. Check that its path is clear. Let go and stand clear.</source>
        <translation type="unfinished">Ábrala del todo. Compruebe que la trayectoria está despejada. Suéltela y apártese.</translation>
    </message>
    <message>
        <source>Announce which doors will move, and when, over the public address or by word of mouth. Wait until everyone nearby shows that they have heard.</source>
        <translation type="unfinished">Anuncie por megafonía o de viva voz qué puertas se moverán y cuándo. Espere hasta que todos los que están cerca muestren que lo han oído.</translation>
    </message>
    <message>
        <source>Keep people out of every opening and away from every leaf. Keep each child with an adult. At every door, turn people back until the door has stopped.</source>
        <translation type="unfinished">Mantenga a la gente fuera de cada abertura y lejos de cada hoja. Cada niño debe estar con un adulto. En cada puerta, no deje pasar a nadie hasta que la puerta se haya parado.</translation>
    </message>
    <message>
        <source>Post a lookout on each side of every door that will move. Each must see the leaf and the approach, and be able to give the stop word. Never use one lookout for both sides.</source>
        <translation type="unfinished">Ponga un vigilante a cada lado de cada puerta que se va a mover. Cada uno debe ver la hoja y el acceso, y poder dar la palabra de parada. Nunca ponga un solo vigilante para los dos lados.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers must be at the release, with no other task.</source>
        <translation type="unfinished">Llame por el canal acordado y espere la respuesta. Quien responde debe estar junto al mando de accionamiento, sin otra tarea.</translation>
    </message>
    <message>
        <source>Say which word is the start word and which is the stop word. Hear both read back. Anyone may give the stop word.</source>
        <translation type="unfinished">Diga cuál es la palabra de inicio y cuál la palabra de parada. Oiga cómo se colacionan las dos. Cualquiera puede dar la palabra de parada.</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, with the leaf a hand&apos;s breadth from shut. Hold it still and read the pull. Keep fingers off the edge. Mass and force show what an inclination would do.</source>
        <translation type="unfinished">Enganche el dinamómetro en el borde libre, a escuadra con la hoja, con la hoja a un palmo de cerrarse. Sujételo quieto y lea la tracción. No acerque los dedos al borde. La masa y la fuerza indican qué haría una inclinación.</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count with the ship upright: over 1 degree of heel they are advice only.</source>
        <translation type="unfinished">Lea el clinómetro del puente, o sostenga una plomada junto a un marco vertical. Los tiempos cuentan con el buque adrizado: con más de 1 grado de escora son solo recomendación.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures take precedence.</source>
        <translation type="unfinished">Práctica común. Prevalecen las reglas locales y los procedimientos de la compañía.</translation>
    </message>
    <message>
        <source>plate class at or above the boundary&apos;s</source>
        <translation type="unfinished">clase de la placa igual o superior a la del contorno</translation>
    </message>
    <message>
        <source>plate class below the boundary&apos;s</source>
        <translation type="unfinished">clase de la placa inferior a la del contorno</translation>
    </message>
    <message>
        <source>legible, and agrees with the register</source>
        <translation type="unfinished">legible, y coincide con el registro</translation>
    </message>
    <message>
        <source>no opening in the leaf</source>
        <translation type="unfinished">ninguna abertura en la hoja</translation>
    </message>
    <message>
        <source>an undercut: width by height</source>
        <translation type="unfinished">un hueco inferior: ancho por alto</translation>
    </message>
    <message>
        <source>intact, with its wire: height by width</source>
        <translation type="unfinished">intacto, con su alambre: alto por ancho</translation>
    </message>
    <message>
        <source>sound all over</source>
        <translation type="unfinished">sana en toda su superficie</translation>
    </message>
    <message>
        <source>everyone nearby has heard it</source>
        <translation type="unfinished">todos los que están cerca lo han oído</translation>
    </message>
    <message>
        <source>no one in the path or near it</source>
        <translation type="unfinished">nadie en la trayectoria ni cerca de ella</translation>
    </message>
    <message>
        <source>someone in the opening</source>
        <translation type="unfinished">alguien en la abertura</translation>
    </message>
    <message>
        <source>a lookout on each side of every door</source>
        <translation type="unfinished">un vigilante a cada lado de cada puerta</translation>
    </message>
    <message>
        <source>no one sees the far side</source>
        <translation type="unfinished">nadie ve el otro lado</translation>
    </message>
    <message>
        <source>each word given, then read back</source>
        <translation type="unfinished">cada palabra se da y luego se colaciona</translation>
    </message>
    <message>
        <source>path and pocket are clear</source>
        <translation type="unfinished">trayectoria y cajón despejados</translation>
    </message>
    <message>
        <source>supply cut, door shuts</source>
        <translation type="unfinished">alimentación cortada, la puerta se cierra</translation>
    </message>
    <message>
        <source>supply cut, door stays open</source>
        <translation type="unfinished">alimentación cortada, la puerta queda abierta</translation>
    </message>
    <message>
        <source>hold-back fails, door is driven shut</source>
        <translation type="unfinished">falla el retenedor, la puerta se cierra a motor</translation>
    </message>
    <message>
        <source>hold-back fails, door stays open</source>
        <translation type="unfinished">falla el retenedor, la puerta queda abierta</translation>
    </message>
    <message>
        <source>one fails, and none works</source>
        <translation type="unfinished">falla una, y no funciona ninguna</translation>
    </message>
    <message>
        <source>released from the control station, it closes</source>
        <translation type="unfinished">accionada desde el puesto de control, se cierra</translation>
    </message>
    <message>
        <source>a hold-back that the control station releases</source>
        <translation type="unfinished">un retenedor que acciona el puesto de control</translation>
    </message>
    <message>
        <source>Confirm the cautions first. The control station releases the doors on the start word. Let no one through a moving door. Anyone may give the stop word.</source>
        <translation type="unfinished">Confirme antes las precauciones. El puesto de control acciona las puertas a la palabra de inicio. No deje pasar a nadie por una puerta en movimiento. Cualquiera puede dar la palabra de parada.</translation>
    </message>
    <message>
        <source>At every door, look along the whole path, and into the pocket with a torch. Keep hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">En cada puerta, mire toda la trayectoria, y dentro del cajón de la hoja con una linterna. Mantenga manos, pies, mangueras y cables lejos de los bordes y de los montantes de encuentro.</translation>
    </message>
    <message>
        <source>Hold the block low in the path, by the end away from the leaf. Stand out of the path yourself. Mark when the leaf touches and when it stops, then measure how far it re-opened. If it keeps pushing, give the stop word.</source>
        <translation type="unfinished">Sostenga el bloque abajo en la trayectoria, por el extremo opuesto a la hoja. Quédese usted fuera de la trayectoria. Marque cuando la hoja toca y cuando se para, y mida luego cuánto se ha reabierto. Si sigue empujando, dé la palabra de parada.</translation>
    </message>
    <message>
        <source>opened and shut ten times from its accumulator</source>
        <translation type="unfinished">abierta y cerrada diez veces con su acumulador</translation>
    </message>
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: the closing force needed at %1 degrees cannot be calculated.</source>
        <translation type="unfinished">La masa de la hoja no está en el registro: no se puede calcular la fuerza de cierre necesaria a %1 grados.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Measure the closer&apos;s force there with a spring gauge.</source>
        <translation type="unfinished">A %1 grados, el peso de la hoja por sí solo tira con hasta %2 en su borde. Mida allí la fuerza del cierrapuertas con un dinamómetro.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: too close for the calculation to tell.</source>
        <translation type="unfinished">El cierrapuertas da %1; a %2 grados, el peso de la hoja por sí solo tira con hasta %3: demasiado justo para que el cálculo lo decida.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could not close the door.</source>
        <translation type="unfinished">El cierrapuertas da %1; a %2 grados, el peso de la hoja por sí solo tira con hasta %3: el cierrapuertas no podría cerrar la puerta.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could close the door if hinges, seals and latch take less than the rest. Calculated, not tested: this gives no verdict.</source>
        <translation type="unfinished">El cierrapuertas da %1; a %2 grados, el peso de la hoja por sí solo tira con hasta %3: el cierrapuertas podría cerrar la puerta si bisagras, juntas y pestillo consumen menos que el resto. Calculado, no probado: esto no da ningún resultado.</translation>
    </message>
</context>
<context>
    <name>ItemWords</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 y %2</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">hallada</translation>
    </message>
    <message>
        <source>rectified</source>
        <translation type="unfinished">rectificada</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">cerrada</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">retirada</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">grave</translation>
    </message>
    <message>
        <source>minor</source>
        <translation type="unfinished">leve</translation>
    </message>
    <message>
        <source>at the next port</source>
        <translation type="unfinished">en el próximo puerto</translation>
    </message>
    <message>
        <source>within 14 days</source>
        <translation type="unfinished">en 14 días</translation>
    </message>
    <message>
        <source>before departure</source>
        <translation type="unfinished">antes de la salida</translation>
    </message>
    <message>
        <source>within three months</source>
        <translation type="unfinished">en tres meses</translation>
    </message>
    <message>
        <source>ship detained</source>
        <translation type="unfinished">buque detenido</translation>
    </message>
    <message>
        <source>ground for detention</source>
        <translation type="unfinished">motivo de detención</translation>
    </message>
    <message>
        <source>no ground for detention</source>
        <translation type="unfinished">sin motivo de detención</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">primer oficial</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished">inspector</translation>
    </message>
    <message>
        <source>survey report</source>
        <translation type="unfinished">informe de reconocimiento</translation>
    </message>
    <message>
        <source>deficiency list</source>
        <translation type="unfinished">lista de deficiencias</translation>
    </message>
    <message>
        <source>work list</source>
        <translation type="unfinished">lista de trabajos</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">ficha de la puerta</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">vencida desde el %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">vence el %1</translation>
    </message>
    <message>
        <source>found %1 times</source>
        <translation type="unfinished">hallada %1 veces</translation>
    </message>
    <message>
        <source>the same defect as an earlier item</source>
        <translation type="unfinished">el mismo defecto que uno anterior</translation>
    </message>
    <message>
        <source>awaiting retest</source>
        <translation type="unfinished">pendiente de nueva prueba</translation>
    </message>
    <message>
        <source>critical</source>
        <translation type="unfinished">crítica</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">sin fecha fijada</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">nadie aún</translation>
    </message>
    <message>
        <source>passed, but tested only by whoever rectified it: someone else must test it</source>
        <translation type="unfinished">superada, pero probada solo por quien la rectificó: debe probarla otra persona</translation>
    </message>
    <message>
        <source>in order on a later walkdown, but no rectification is recorded</source>
        <translation type="unfinished">en orden en un recorrido posterior, pero no consta ninguna rectificación</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 long%3</source>
        <translation type="unfinished">las zonas %1 forman una sola, de %2 de largo%3</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Inglés donde no hay traducción</translation>
    </message>
    <message>
        <source>As set on this device</source>
        <translation type="unfinished">El de este equipo</translation>
    </message>
    <message>
        <source>the original text</source>
        <translation type="unfinished">el texto original</translation>
    </message>
    <message>
        <source>translation checked by a native speaker in the trade</source>
        <translation type="unfinished">traducción revisada por un hablante nativo del oficio</translation>
    </message>
    <message>
        <source>machine translation, not yet checked by a native speaker in the trade</source>
        <translation type="unfinished">traducción automática, aún sin revisar por un hablante nativo del oficio</translation>
    </message>
</context>
<context>
    <name>Offered</name>
    <message>
        <source>whole door</source>
        <translation type="unfinished">puerta entera</translation>
    </message>
    <message>
        <source>surveyor</source>
        <translation type="unfinished">inspector</translation>
    </message>
    <message>
        <source>second surveyor</source>
        <translation type="unfinished">segundo inspector</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">primer oficial</translation>
    </message>
    <message>
        <source>master</source>
        <translation type="unfinished">capitán</translation>
    </message>
    <message>
        <source>chief engineer</source>
        <translation type="unfinished">jefe de máquinas</translation>
    </message>
    <message>
        <source>safety officer</source>
        <translation type="unfinished">oficial de seguridad</translation>
    </message>
    <message>
        <source>fire patrol</source>
        <translation type="unfinished">patrulla de incendios</translation>
    </message>
    <message>
        <source>company inspector</source>
        <translation type="unfinished">inspector de la compañía</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation type="unfinished">alumno</translation>
    </message>
    <message>
        <source>bridge</source>
        <translation type="unfinished">puente</translation>
    </message>
    <message>
        <source>safety centre</source>
        <translation type="unfinished">centro de seguridad</translation>
    </message>
    <message>
        <source>engine control room</source>
        <translation type="unfinished">control de máquinas</translation>
    </message>
    <message>
        <source>Ch 6</source>
        <translation type="unfinished">Canal 6</translation>
    </message>
    <message>
        <source>Ch 8</source>
        <translation type="unfinished">Canal 8</translation>
    </message>
    <message>
        <source>Ch 10</source>
        <translation type="unfinished">Canal 10</translation>
    </message>
    <message>
        <source>Ch 15</source>
        <translation type="unfinished">Canal 15</translation>
    </message>
    <message>
        <source>Ch 17</source>
        <translation type="unfinished">Canal 17</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation type="unfinished">teléfono</translation>
    </message>
    <message>
        <source>anyone</source>
        <translation type="unfinished">cualquiera</translation>
    </message>
    <message>
        <source>all doors</source>
        <translation type="unfinished">todas las puertas</translation>
    </message>
    <message>
        <source>zone bulkheads</source>
        <translation type="unfinished">mamparos de zona</translation>
    </message>
    <message>
        <source>quarterly: zone bulkheads</source>
        <translation type="unfinished">trimestral: mamparos de zona</translation>
    </message>
    <message>
        <source>doors to be retested</source>
        <translation type="unfinished">puertas para nueva prueba</translation>
    </message>
    <message>
        <source>doors that failed last time</source>
        <translation type="unfinished">puertas que fallaron la última vez</translation>
    </message>
    <message>
        <source>closer leaks oil</source>
        <translation type="unfinished">cierrapuertas pierde aceite</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">junta pintada</translation>
    </message>
    <message>
        <source>seal torn at the head</source>
        <translation type="unfinished">junta rota en la parte superior</translation>
    </message>
    <message>
        <source>leaf rubs on the sill</source>
        <translation type="unfinished">la hoja roza en el umbral</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">basura en el cajón</translation>
    </message>
    <message>
        <source>mat under the leaf</source>
        <translation type="unfinished">alfombra bajo la hoja</translation>
    </message>
    <message>
        <source>switch cover broken</source>
        <translation type="unfinished">tapa del interruptor rota</translation>
    </message>
    <message>
        <source>sign screwed to the leaf</source>
        <translation type="unfinished">rótulo atornillado a la hoja</translation>
    </message>
    <message>
        <source>spare part ordered</source>
        <translation type="unfinished">repuesto pedido</translation>
    </message>
    <message>
        <source>space locked, no key</source>
        <translation type="unfinished">espacio cerrado, sin llave</translation>
    </message>
    <message>
        <source>space in use by passengers</source>
        <translation type="unfinished">espacio ocupado por pasajeros</translation>
    </message>
    <message>
        <source>cargo or stores in the way</source>
        <translation type="unfinished">carga o pertrechos en medio</translation>
    </message>
    <message>
        <source>under repair</source>
        <translation type="unfinished">en reparación</translation>
    </message>
    <message>
        <source>control station not manned</source>
        <translation type="unfinished">puesto de control sin dotación</translation>
    </message>
    <message>
        <source>no engineer free</source>
        <translation type="unfinished">ningún maquinista libre</translation>
    </message>
    <message>
        <source>not safe to move</source>
        <translation type="unfinished">no es seguro moverla</translation>
    </message>
    <message>
        <source>ship not upright</source>
        <translation type="unfinished">buque no adrizado</translation>
    </message>
    <message>
        <source>agreed with the class surveyor</source>
        <translation type="unfinished">acordado con el inspector de la clase</translation>
    </message>
    <message>
        <source>as built and accepted before</source>
        <translation type="unfinished">así construida y aceptada antes</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">placa</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">junta</translation>
    </message>
    <message>
        <source>sill</source>
        <translation type="unfinished">umbral</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">cajón de la hoja</translation>
    </message>
    <message>
        <source>latch</source>
        <translation type="unfinished">pestillo</translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished">cierrapuertas</translation>
    </message>
    <message>
        <source>damage</source>
        <translation type="unfinished">daño</translation>
    </message>
    <message>
        <source>obstruction</source>
        <translation type="unfinished">obstrucción</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">al hallarla</translation>
    </message>
    <message>
        <source>after the work</source>
        <translation type="unfinished">tras el trabajo</translation>
    </message>
    <message>
        <source>the part that was changed</source>
        <translation type="unfinished">la pieza cambiada</translation>
    </message>
    <message>
        <source>someone in the way</source>
        <translation type="unfinished">alguien en medio</translation>
    </message>
    <message>
        <source>object in the path</source>
        <translation type="unfinished">objeto en la trayectoria</translation>
    </message>
    <message>
        <source>wrong door moved</source>
        <translation type="unfinished">se movió otra puerta</translation>
    </message>
    <message>
        <source>door did not move</source>
        <translation type="unfinished">la puerta no se movió</translation>
    </message>
    <message>
        <source>channel lost</source>
        <translation type="unfinished">se perdió el canal</translation>
    </message>
    <message>
        <source>touched too late</source>
        <translation type="unfinished">toque tardío</translation>
    </message>
    <message>
        <source>touched too early</source>
        <translation type="unfinished">toque prematuro</translation>
    </message>
    <message>
        <source>leaf was held</source>
        <translation type="unfinished">se sujetó la hoja</translation>
    </message>
    <message>
        <source>view was blocked</source>
        <translation type="unfinished">no se veía bien</translation>
    </message>
    <message>
        <source>ship rolled</source>
        <translation type="unfinished">el buque se balanceó</translation>
    </message>
    <message>
        <source>wrong release</source>
        <translation type="unfinished">accionamiento erróneo</translation>
    </message>
    <message>
        <source>fire patrol, every 30 minutes</source>
        <translation type="unfinished">patrulla de incendios, cada 30 minutos</translation>
    </message>
    <message>
        <source>fire patrol, every hour</source>
        <translation type="unfinished">patrulla de incendios, cada hora</translation>
    </message>
    <message>
        <source>kept shut and marked</source>
        <translation type="unfinished">cerrada y señalizada</translation>
    </message>
    <message>
        <source>kept shut, other way out marked</source>
        <translation type="unfinished">cerrada, otra salida señalizada</translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished">solo accionamiento local</translation>
    </message>
    <message>
        <source>closer adjusted</source>
        <translation type="unfinished">cierrapuertas ajustado</translation>
    </message>
    <message>
        <source>closer replaced</source>
        <translation type="unfinished">cierrapuertas cambiado</translation>
    </message>
    <message>
        <source>latch adjusted</source>
        <translation type="unfinished">pestillo ajustado</translation>
    </message>
    <message>
        <source>latch replaced</source>
        <translation type="unfinished">pestillo cambiado</translation>
    </message>
    <message>
        <source>hinges tightened</source>
        <translation type="unfinished">bisagras apretadas</translation>
    </message>
    <message>
        <source>seal replaced</source>
        <translation type="unfinished">junta cambiada</translation>
    </message>
    <message>
        <source>magnet replaced</source>
        <translation type="unfinished">imán cambiado</translation>
    </message>
    <message>
        <source>alarm replaced</source>
        <translation type="unfinished">alarma cambiada</translation>
    </message>
    <message>
        <source>rails cleaned and greased</source>
        <translation type="unfinished">carriles limpios y engrasados</translation>
    </message>
    <message>
        <source>path and pocket cleared</source>
        <translation type="unfinished">trayectoria y cajón despejados</translation>
    </message>
    <message>
        <source>plate replaced</source>
        <translation type="unfinished">placa cambiada</translation>
    </message>
    <message>
        <source>leaf replaced</source>
        <translation type="unfinished">hoja cambiada</translation>
    </message>
    <message>
        <source>written up twice</source>
        <translation type="unfinished">anotada dos veces</translation>
    </message>
    <message>
        <source>written up by mistake</source>
        <translation type="unfinished">anotada por error</translation>
    </message>
    <message>
        <source>the approved plan was changed</source>
        <translation type="unfinished">se cambió el plano aprobado</translation>
    </message>
    <message>
        <source>the Administration accepts it</source>
        <translation type="unfinished">la Administración lo acepta</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">parado, sin motivo indicado</translation>
    </message>
    <message>
        <source>chosen in the settings</source>
        <translation type="unfinished">elegido en los ajustes</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">parado</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation type="unfinished">interrumpido</translation>
    </message>
    <message>
        <source>completed by hand</source>
        <translation type="unfinished">completado a mano</translation>
    </message>
    <message>
        <source>typed in from paper</source>
        <translation type="unfinished">pasado desde papel</translation>
    </message>
    <message>
        <source>answer taken back</source>
        <translation type="unfinished">respuesta retirada</translation>
    </message>
    <message>
        <source>mark taken back</source>
        <translation type="unfinished">marca retirada</translation>
    </message>
    <message>
        <source>withdrawn by mistake</source>
        <translation type="unfinished">retirado por error</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">aceptada por su huella</translation>
    </message>
    <message>
        <source>any team member and the control station</source>
        <translation type="unfinished">cualquier miembro del equipo y el puesto de control</translation>
    </message>
    <message>
        <source>rectified on the spot</source>
        <translation type="unfinished">rectificada en el acto</translation>
    </message>
    <message>
        <source>as per approved drawing</source>
        <translation type="unfinished">conforme al plano aprobado</translation>
    </message>
    <message>
        <source>worn but serviceable</source>
        <translation type="unfinished">con desgaste pero utilizable</translation>
    </message>
    <message>
        <source>not safe to leave as is</source>
        <translation type="unfinished">no es seguro dejarlo así</translation>
    </message>
    <message>
        <source>lookout left post</source>
        <translation type="unfinished">vigilante dejó el puesto</translation>
    </message>
    <message>
        <source>lookout posted at the door</source>
        <translation type="unfinished">vigilante en la puerta</translation>
    </message>
    <message>
        <source>zone kept clear of people</source>
        <translation type="unfinished">zona mantenida sin gente</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation type="unfinished">ninguna necesaria</translation>
    </message>
    <message>
        <source>wiring repaired</source>
        <translation type="unfinished">cableado reparado</translation>
    </message>
    <message>
        <source>hook or wedge removed</source>
        <translation type="unfinished">gancho o cuña retirados</translation>
    </message>
    <message>
        <source>the door was removed</source>
        <translation type="unfinished">se quitó la puerta</translation>
    </message>
    <message>
        <source>checked again together</source>
        <translation type="unfinished">comprobado otra vez entre ambos</translation>
    </message>
    <message>
        <source>the other was an error</source>
        <translation type="unfinished">el otro fue un error</translation>
    </message>
    <message>
        <source>better light</source>
        <translation type="unfinished">mejor luz</translation>
    </message>
    <message>
        <source>better instrument</source>
        <translation type="unfinished">mejor instrumento</translation>
    </message>
    <message>
        <source>void, no reason given</source>
        <translation type="unfinished">nulo, sin motivo indicado</translation>
    </message>
    <message>
        <source>run continued</source>
        <translation type="unfinished">ensayo continuado</translation>
    </message>
</context>
<context>
    <name>OpenItems</name>
    <message>
        <source>and %1 more</source>
        <comment>rows of a door</comment>
        <translation type="unfinished">y %1 más</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>Creating the document</source>
        <translation type="unfinished">Creando el documento</translation>
    </message>
    <message>
        <source>No document was created. Any earlier one is unchanged.</source>
        <translation type="unfinished">No se ha creado ningún documento. Si había uno anterior, no ha cambiado.</translation>
    </message>
    <message>
        <source>No document</source>
        <translation type="unfinished">Sin documento</translation>
    </message>
    <message>
        <source>Document created</source>
        <translation type="unfinished">Documento creado</translation>
    </message>
    <message>
        <source>The PDF is at %1</source>
        <translation type="unfinished">El PDF está en %1</translation>
    </message>
    <message>
        <source>Open to print</source>
        <translation type="unfinished">Abrir para imprimir</translation>
    </message>
</context>
<context>
    <name>PastWalkdown</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
</context>
<context>
    <name>PlanDraft</name>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>%1, random sample of %2 (seed %3)</source>
        <translation type="unfinished">%1, muestra al azar de %2 (semilla %3)</translation>
    </message>
</context>
<context>
    <name>RadioWords</name>
    <message>
        <source>release now</source>
        <translation type="unfinished">accione ahora</translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished">pare pare pare</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished">Abrir este buque</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>Register imported</source>
        <translation type="unfinished">Registro importado</translation>
    </message>
    <message>
        <source>Saved at %1.</source>
        <translation type="unfinished">Guardado en %1.</translation>
    </message>
    <message>
        <source>Importing the register</source>
        <translation type="unfinished">Importando el registro</translation>
    </message>
    <message>
        <source>Nothing was imported. The vessels here are unchanged.</source>
        <translation type="unfinished">No se ha importado nada. Los buques que hay aquí no han cambiado.</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">No importado: un error</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">No importado: %1 errores</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>none</source>
        <translation type="unfinished">ninguna</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation type="unfinished">%1, de %2 a %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished">%1 el %2</translation>
    </message>
    <message>
        <source>Released from the control station without every caution confirmed for that run: %1.</source>
        <translation type="unfinished">Accionamiento desde el puesto de control sin tener confirmadas todas las precauciones para ese ensayo: %1.</translation>
    </message>
    <message>
        <source>Each of these must be confirmed before a door is released from the control station:</source>
        <translation type="unfinished">Cada una de estas precauciones debe estar confirmada antes de accionar una puerta desde el puesto de control:</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished">Precauciones</translation>
    </message>
    <message>
        <source>No caution was answered in this walkdown.</source>
        <translation type="unfinished">En este recorrido no se respondió a ninguna precaución.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Puerta</translation>
    </message>
    <message>
        <source>Answered by</source>
        <translation type="unfinished">Respondido por</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Cuándo</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Confirmado</translation>
    </message>
    <message>
        <source>Not confirmed</source>
        <translation type="unfinished">No confirmado</translation>
    </message>
    <message>
        <source>Times were taken by hand. Starting and stopping by hand has a standard uncertainty of %1 s and a bias of at most %2 s either way, or %3 s where one end is heard and the other seen. Figures are given with their expanded uncertainty U (k = 2), which covers reaction time, sight of the leaf and the device. These are not laboratory times.</source>
        <translation type="unfinished">Los tiempos se tomaron a mano. Poner en marcha y parar a mano tiene una incertidumbre típica de %1 s y un sesgo de %2 s como máximo en uno u otro sentido, o de %3 s cuando uno de los dos instantes se oye y el otro se ve. Los valores se dan con su incertidumbre expandida U (k = 2), que abarca el tiempo de reacción, la visión de la hoja y el equipo. No son tiempos de laboratorio.</translation>
    </message>
    <message>
        <source>Runs timed by a person who had done the timing drill on that tablet: %2 of %1. For these, the person&apos;s own delay and scatter replace the published figures.</source>
        <translation type="unfinished">Ensayos cronometrados por quien había hecho la prueba de reacción en esa tableta: %2 de %1. En ellos, el retraso y la dispersión propios de esa persona sustituyen los valores publicados.</translation>
    </message>
    <message>
        <source>A figure is satisfactory if the probability that it is within its limits is at least %1, and unsatisfactory if that probability is at most %2. In between, the run is timed again or the inspector decides (JCGM 106:2012).</source>
        <translation type="unfinished">Un valor es satisfactorio si la probabilidad de que esté dentro de sus límites es de al menos %1, y no satisfactorio si esa probabilidad es de %2 como máximo. Entre ambas, se vuelve a cronometrar el ensayo o decide el inspector (JCGM 106:2012).</translation>
    </message>
    <message>
        <source>These are not the usual 95 % and 5 %; reason given: %1.</source>
        <translation type="unfinished">No son los valores habituales de 95 % y 5 %; motivo indicado: %1.</translation>
    </message>
    <message>
        <source>A figure read off a rule or gauge is satisfactory at its limit and unsatisfactory one step of the instrument or more beyond it. In between, the inspector decides. Where the text calls its band approximate, the inspector also decides on a closing outside the band but within the margin of that requirement. Steps and margins are the program&apos;s own choice, no source.</source>
        <translation type="unfinished">Un valor leído en una regla graduada o en un calibre es satisfactorio si está en su límite, y no satisfactorio si lo sobrepasa en una división del instrumento o más. Entre ambos, decide el inspector. Donde el texto llama aproximada a su banda, el inspector decide también sobre un cierre fuera de la banda pero dentro del margen de ese requisito. Divisiones y márgenes son elección propia del programa, sin fuente.</translation>
    </message>
    <message>
        <source>A released door moves by itself and can crush. Before work on a door, secure it against release. Before it is tested again, warn everyone near it.</source>
        <translation type="unfinished">Una puerta accionada se mueve sola y puede aplastar. Antes de trabajar en una puerta, asegúrela para que no se pueda accionar. Antes de volver a probarla, avise a todos los que están cerca.</translation>
    </message>
    <message>
        <source>Scope and limits</source>
        <translation type="unfinished">Alcance y límites</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this report; grades are an aid to the inspector&apos;s judgement.</source>
        <translation type="unfinished">La Administración del Estado de abanderamiento, los planos aprobados y las reglas locales prevalecen sobre este informe; las calificaciones son una ayuda para el criterio del inspector.</translation>
    </message>
    <message>
        <source>The rules assume an upright ship: a time taken at more than %1° of heel is advice only.</source>
        <translation type="unfinished">Las reglas suponen el buque adrizado: un tiempo tomado con más de %1° de escora es solo recomendación.</translation>
    </message>
    <message>
        <source>The report covers what was seen at the doors named, at the times given. It says nothing about any other door, check or time.</source>
        <translation type="unfinished">El informe abarca lo que se vio en las puertas nombradas, en los momentos indicados. No dice nada de ninguna otra puerta, comprobación ni momento.</translation>
    </message>
    <message>
        <source>Catalogue:</source>
        <translation type="unfinished">Catálogo:</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Reglas que prevalecen</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this document; grades are an aid to the judgement of those who sign.</source>
        <translation type="unfinished">La Administración del Estado de abanderamiento, los planos aprobados y las reglas locales prevalecen sobre este documento; las calificaciones son una ayuda para el criterio de quienes firman.</translation>
    </message>
    <message>
        <source>At present: %1.</source>
        <translation type="unfinished">Ahora: %1.</translation>
    </message>
    <message>
        <source>If it fails again: %1.</source>
        <translation type="unfinished">Si falla de nuevo: %1.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">no</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">ninguna registrada</translation>
    </message>
    <message>
        <source>%1: %2; %3 overdue.</source>
        <translation type="unfinished">%1: %2; vencidos: %3.</translation>
    </message>
    <message>
        <source>1 open item</source>
        <translation type="unfinished">1 pendiente</translation>
    </message>
    <message>
        <source>%1 open items</source>
        <translation type="unfinished">%1 pendientes</translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished">N.º</translation>
    </message>
    <message>
        <source>Door and place</source>
        <translation type="unfinished">Puerta y lugar</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation type="unfinished">Deficiencia</translation>
    </message>
    <message>
        <source>Severity, zones</source>
        <translation type="unfinished">Gravedad, zonas</translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished">Código</translation>
    </message>
    <message>
        <source>Action code</source>
        <translation type="unfinished">Código de medida</translation>
    </message>
    <message>
        <source>Ground for detention</source>
        <translation type="unfinished">Motivo de detención</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Vence</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Medida provisional</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Asignada a</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Estado</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Lista de deficiencias</translation>
    </message>
    <message>
        <source>The vessel has no open items.</source>
        <translation type="unfinished">El buque no tiene pendientes.</translation>
    </message>
    <message>
        <source>Code 07105: fire doors and openings in fire-resisting divisions. Action code and ground for detention are as given by port State control, and blank where it gave none.</source>
        <translation type="unfinished">Código 07105: puertas contraincendios y aberturas en divisiones pirorresistentes. El código de medida y el motivo de detención figuran como los dio la supervisión por el Estado rector del puerto, y en blanco donde no dio ninguno.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished">Firmas</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">cubierta %1, %2</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">entre zonas %1 y %2</translation>
    </message>
    <message>
        <source>clear opening %1</source>
        <translation type="unfinished">abertura libre de %1</translation>
    </message>
    <message>
        <source>not examined as a watertight door</source>
        <translation type="unfinished">no examinada como puerta estanca</translation>
    </message>
    <message>
        <source>class on the plate: %1, in the register: %2, required by the boundary: %3</source>
        <translation type="unfinished">clase en la placa: %1, en el registro: %2, exigida por el contorno: %3</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Requisito</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Límite</translation>
    </message>
    <message>
        <source>Measured, U (k = 2)</source>
        <translation type="unfinished">Medido, U (k = 2)</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished">Hallado</translation>
    </message>
    <message>
        <source>Untested:</source>
        <translation type="unfinished">Sin probar:</translation>
    </message>
    <message>
        <source>On an inclined ship:</source>
        <translation type="unfinished">Con el buque inclinado:</translation>
    </message>
    <message>
        <source>the whole door</source>
        <translation type="unfinished">la puerta entera</translation>
    </message>
    <message>
        <source>Could not be tested</source>
        <translation type="unfinished">No se pudo probar</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Fotos</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation type="unfinished">Deficiencias</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notas</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation type="unfinished">Ensayos</translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished">Detalles</translation>
    </message>
    <message>
        <source>and one earlier</source>
        <translation type="unfinished">y 1 anterior</translation>
    </message>
    <message>
        <source>and %1 earlier</source>
        <translation type="unfinished">y %1 anteriores</translation>
    </message>
    <message>
        <source>Closing times</source>
        <translation type="unfinished">Tiempos de cierre</translation>
    </message>
    <message>
        <source>Closing rates</source>
        <translation type="unfinished">Velocidades de cierre</translation>
    </message>
    <message>
        <source>Not yet timed with the ship upright.</source>
        <translation type="unfinished">Aún sin cronometrar con el buque adrizado.</translation>
    </message>
    <message>
        <source>Limit: %1 (%2). Newest first, with U (k = 2): %3.</source>
        <translation type="unfinished">Límite: %1 (%2). Lo más reciente primero, con U (k = 2): %3.</translation>
    </message>
    <message>
        <source>No deficiency has been written up at this door.</source>
        <translation type="unfinished">No se ha anotado ninguna deficiencia en esta puerta.</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation type="unfinished">hallada el %1</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
    <message>
        <source>Found, due</source>
        <translation type="unfinished">Hallada, vence</translation>
    </message>
    <message>
        <source>and one photograph in the register</source>
        <translation type="unfinished">y una foto en el registro</translation>
    </message>
    <message>
        <source>and %1 photographs in the register</source>
        <translation type="unfinished">y %1 fotos en el registro</translation>
    </message>
    <message>
        <source>and one more</source>
        <translation type="unfinished">y 1 más</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">y %1 más</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Ficha de puerta: %1</translation>
    </message>
    <message>
        <source>%1 in the %2</source>
        <translation type="unfinished">%1 en el %2</translation>
    </message>
    <message>
        <source>this door is simulated.</source>
        <translation type="unfinished">esta puerta es simulada.</translation>
    </message>
    <message>
        <source>power operated</source>
        <translation type="unfinished">a motor</translation>
    </message>
    <message>
        <source>hold-back</source>
        <translation type="unfinished">dispositivo de retención</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarma</translation>
    </message>
    <message>
        <source>re-opens on contact</source>
        <translation type="unfinished">se reabre al contacto</translation>
    </message>
    <message>
        <source>hose port</source>
        <translation type="unfinished">paso de manguera</translation>
    </message>
    <message>
        <source>escape route</source>
        <translation type="unfinished">vía de evacuación</translation>
    </message>
    <message>
        <source>watertight: not examined as a watertight door</source>
        <translation type="unfinished">estanca: no examinada como puerta estanca</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">estanca a la intemperie</translation>
    </message>
    <message>
        <source>released with %1</source>
        <translation type="unfinished">accionada con %1</translation>
    </message>
    <message>
        <source>leaf %1 kg</source>
        <translation type="unfinished">hoja de %1 kg</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">instalada el %1</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation type="unfinished">fabricada por %1</translation>
    </message>
    <message>
        <source>Place and kind</source>
        <translation type="unfinished">Lugar y tipo</translation>
    </message>
    <message>
        <source>Features</source>
        <translation type="unfinished">Características</translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished">Clase</translation>
    </message>
    <message>
        <source>register %1, plate %2, required: %3</source>
        <translation type="unfinished">registro %1, placa %2, exigida: %3</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished">Comprobaciones</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation type="unfinished">Registrado</translation>
    </message>
    <message>
        <source>and one more, see Details</source>
        <translation type="unfinished">y 1 más, vea Detalles</translation>
    </message>
    <message>
        <source>and %1 more, see Details</source>
        <translation type="unfinished">y %1 más, vea Detalles</translation>
    </message>
    <message>
        <source>shuts in %1</source>
        <translation type="unfinished">se cierra en %1</translation>
    </message>
    <message>
        <source>closes at %1</source>
        <translation type="unfinished">se cierra a %1</translation>
    </message>
    <message>
        <source>alarm leads by %1</source>
        <translation type="unfinished">alarma %1 antes</translation>
    </message>
    <message>
        <source>one check untested</source>
        <translation type="unfinished">una comprobación sin probar</translation>
    </message>
    <message>
        <source>%1 checks untested</source>
        <translation type="unfinished">%1 comprobaciones sin probar</translation>
    </message>
    <message>
        <source>boundary not in the register</source>
        <translation type="unfinished">el contorno no está en el registro</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Cubierta</translation>
    </message>
    <message>
        <source>Plate read</source>
        <translation type="unfinished">Placa leída</translation>
    </message>
    <message>
        <source>Register</source>
        <translation type="unfinished">Registro</translation>
    </message>
    <message>
        <source>Boundary</source>
        <translation type="unfinished">Contorno</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished">Resultado</translation>
    </message>
    <message>
        <source>Findings; figures with U (k = 2)</source>
        <translation type="unfinished">Hallazgos; valores con U (k = 2)</translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished">sin leer</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">ilegible</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Puertas</translation>
    </message>
    <message>
        <source>No door of this walkdown is in the register.</source>
        <translation type="unfinished">Ninguna puerta de este recorrido está en el registro.</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Cubierta %1</translation>
    </message>
    <message>
        <source>person joined</source>
        <translation type="unfinished">persona añadida</translation>
    </message>
    <message>
        <source>walkdown begun</source>
        <translation type="unfinished">recorrido iniciado</translation>
    </message>
    <message>
        <source>walkdown ended</source>
        <translation type="unfinished">recorrido terminado</translation>
    </message>
    <message>
        <source>observation</source>
        <translation type="unfinished">observación</translation>
    </message>
    <message>
        <source>plate read</source>
        <translation type="unfinished">placa leída</translation>
    </message>
    <message>
        <source>measured value</source>
        <translation type="unfinished">valor medido</translation>
    </message>
    <message>
        <source>run started</source>
        <translation type="unfinished">ensayo iniciado</translation>
    </message>
    <message>
        <source>mark</source>
        <translation type="unfinished">marca</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation type="unfinished">ensayo terminado</translation>
    </message>
    <message>
        <source>caution answered</source>
        <translation type="unfinished">respuesta a una precaución</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">nota</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">foto</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation type="unfinished">deficiencia</translation>
    </message>
    <message>
        <source>could not test</source>
        <translation type="unfinished">no se pudo probar</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">retirado</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">prueba de reacción</translation>
    </message>
    <message>
        <source>decision limits</source>
        <translation type="unfinished">límites de decisión</translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation type="unfinished">certificado visto</translation>
    </message>
    <message>
        <source>rectification</source>
        <translation type="unfinished">rectificación</translation>
    </message>
    <message>
        <source>awaiting retest</source>
        <translation type="unfinished">pendiente de nueva prueba</translation>
    </message>
    <message>
        <source>withdrawal</source>
        <translation type="unfinished">retirada</translation>
    </message>
    <message>
        <source>key accepted</source>
        <translation type="unfinished">clave aceptada</translation>
    </message>
    <message>
        <source>walkdown signed</source>
        <translation type="unfinished">recorrido firmado</translation>
    </message>
    <message>
        <source>undone</source>
        <translation type="unfinished">deshecho</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation type="unfinished">ninguna acordada</translation>
    </message>
    <message>
        <source>, limit %1</source>
        <translation type="unfinished">, límite %1</translation>
    </message>
    <message>
        <source>, %1 maximum</source>
        <translation type="unfinished">, máximo %1</translation>
    </message>
    <message>
        <source>; %1 m2 in area, limit %2 m2</source>
        <translation type="unfinished">; área %1 m2, límite %2 m2</translation>
    </message>
    <message>
        <source>through door %1</source>
        <translation type="unfinished">por la puerta %1</translation>
    </message>
    <message>
        <source>through doors %1</source>
        <translation type="unfinished">por las puertas %1</translation>
    </message>
    <message>
        <source>Zones %1 act as one %2: %3 long%4.</source>
        <translation type="unfinished">Las zonas %1 forman una sola %2: %3 de largo%4.</translation>
    </message>
    <message>
        <source>Repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Reparar la puerta %1 del mamparo %2 es lo que más separación restablece</translation>
    </message>
    <message>
        <source>Repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Reparar las puertas %1 del mamparo %2 es lo que más separación restablece</translation>
    </message>
    <message>
        <source>%1: zones that then still act as one are at most %2 long.</source>
        <translation type="unfinished">%1: las zonas que aun así forman una sola tienen entonces %2 de largo como máximo.</translation>
    </message>
    <message>
        <source>%1: no zones then act as one.</source>
        <translation type="unfinished">%1: entonces ya no hay zonas que formen una sola.</translation>
    </message>
    <message>
        <source>Separation of zones %1 is not yet proven: doors in bulkheads %2 are untested or undecided.</source>
        <translation type="unfinished">La separación de las zonas %1 aún no está demostrada: hay puertas en los mamparos %2 sin probar o por resolver.</translation>
    </message>
    <message>
        <source>Planned, but no longer in the register and not graded here: %1.</source>
        <translation type="unfinished">Puertas previstas que ya no están en el registro y no se califican aquí: %1.</translation>
    </message>
    <message>
        <source>%1 walkdown begun %2</source>
        <translation type="unfinished">recorrido (%1) iniciado el %2</translation>
    </message>
    <message>
        <source>the doors in this report are simulated.</source>
        <translation type="unfinished">las puertas de este informe son simuladas.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nombre</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation type="unfinished">Número de identificación</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Reglas</translation>
    </message>
    <message>
        <source>Not covered</source>
        <translation type="unfinished">No abarca</translation>
    </message>
    <message>
        <source>high-speed craft; watertight doors as such</source>
        <translation type="unfinished">naves de gran velocidad; puertas estancas como tales</translation>
    </message>
    <message>
        <source>Passengers</source>
        <translation type="unfinished">Pasajeros</translation>
    </message>
    <message>
        <source>certified to carry %1</source>
        <translation type="unfinished">certificado para %1</translation>
    </message>
    <message>
        <source>Keel laid</source>
        <translation type="unfinished">Quilla colocada</translation>
    </message>
    <message>
        <source>not known: requirements that depend on it are advice</source>
        <translation type="unfinished">no se conoce: los requisitos que dependen de esa fecha son recomendación</translation>
    </message>
    <message>
        <source>Sprinklers</source>
        <translation type="unfinished">Rociadores</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished">instalados</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation type="unfinished">no instalados</translation>
    </message>
    <message>
        <source>Length on the drawing</source>
        <translation type="unfinished">Eslora en el plano</translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished">1 puerta</translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished">%1 puertas</translation>
    </message>
    <message>
        <source>1 main vertical zone</source>
        <translation type="unfinished">1 zona vertical principal</translation>
    </message>
    <message>
        <source>%1 main vertical zones</source>
        <translation type="unfinished">%1 zonas verticales principales</translation>
    </message>
    <message>
        <source>1 deck</source>
        <translation type="unfinished">1 cubierta</translation>
    </message>
    <message>
        <source>%1 decks</source>
        <translation type="unfinished">%1 cubiertas</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Buque</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">Finalidad</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation type="unfinished">Alcance</translation>
    </message>
    <message>
        <source>What the sample proves</source>
        <translation type="unfinished">Qué demuestra la muestra</translation>
    </message>
    <message>
        <source>only those of this maintenance task, and any others recorded: %1 (%2)</source>
        <translation type="unfinished">solo las de esta tarea de mantenimiento y otras que se hayan registrado: %1 (%2)</translation>
    </message>
    <message>
        <source>Team</source>
        <translation type="unfinished">Equipo</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Registrado por</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished">Iniciado</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished">Terminado</translation>
    </message>
    <message>
        <source>under way</source>
        <translation type="unfinished">en curso</translation>
    </message>
    <message>
        <source>Remark at the end</source>
        <translation type="unfinished">Observación al final</translation>
    </message>
    <message>
        <source>Heel at the start</source>
        <translation type="unfinished">Escora al inicio</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Puesto de control</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Canal</translation>
    </message>
    <message>
        <source>Words agreed</source>
        <translation type="unfinished">Palabras acordadas</translation>
    </message>
    <message>
        <source>to start</source>
        <translation type="unfinished">para iniciar</translation>
    </message>
    <message>
        <source>to stop</source>
        <translation type="unfinished">para parar</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Quién puede parar la prueba</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Charla de seguridad</translation>
    </message>
    <message>
        <source>read before the walkdown</source>
        <translation type="unfinished">leída antes del recorrido</translation>
    </message>
    <message>
        <source>not marked as read</source>
        <translation type="unfinished">no marcada como leída</translation>
    </message>
    <message>
        <source>Walkdown id</source>
        <translation type="unfinished">Id del recorrido</translation>
    </message>
    <message>
        <source>Walkdown</source>
        <translation type="unfinished">Recorrido de inspección</translation>
    </message>
    <message>
        <source>1 door in this walkdown</source>
        <translation type="unfinished">1 puerta en este recorrido</translation>
    </message>
    <message>
        <source>%1 doors in this walkdown</source>
        <translation type="unfinished">%1 puertas en este recorrido</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation type="unfinished">Resumen</translation>
    </message>
    <message>
        <source>Main vertical zones</source>
        <translation type="unfinished">Zonas verticales principales</translation>
    </message>
    <message>
        <source>No door in this walkdown was found to make two zones act as one.</source>
        <translation type="unfinished">En este recorrido no se halló ninguna puerta que haga de dos zonas una sola.</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">1 puerta de mamparos de zona aún sin probar o por resolver</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">%1 puertas de mamparos de zona aún sin probar o por resolver</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">1 puerta de mamparos de zona fuera del alcance de este recorrido</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">%1 puertas de mamparos de zona fuera del alcance de este recorrido</translation>
    </message>
    <message>
        <source>Not known from this walkdown: %1.</source>
        <translation type="unfinished">Lo que este recorrido no muestra: %1.</translation>
    </message>
    <message>
        <source>the door as a whole</source>
        <translation type="unfinished">la puerta en su conjunto</translation>
    </message>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">zona desconocida</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>zones %1 and %2</source>
        <translation type="unfinished">zonas %1 y %2</translation>
    </message>
    <message>
        <source>no longer in the register</source>
        <translation type="unfinished">ya no está en el registro</translation>
    </message>
    <message>
        <source>Repeat: %1</source>
        <translation type="unfinished">Repetición: %1</translation>
    </message>
    <message>
        <source>found %1 by %2</source>
        <translation type="unfinished">hallada el %1 por %2</translation>
    </message>
    <message>
        <source>rectified %1 by %2: %3</source>
        <translation type="unfinished">rectificada el %1 por %2: %3</translation>
    </message>
    <message>
        <source>retested %1: not in order</source>
        <translation type="unfinished">nueva prueba el %1: no está en orden</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
    <message>
        <source>All open items of the vessel, from this walkdown and earlier ones.</source>
        <translation type="unfinished">Todos los pendientes del buque, de este recorrido y de los anteriores.</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Informe de reconocimiento</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Lista de trabajos</translation>
    </message>
    <message>
        <source>Printed %1, %2</source>
        <translation type="unfinished">Impreso el %1, %2</translation>
    </message>
    <message>
        <source>%1 ship&apos;s time (%2), %3 UTC</source>
        <translation type="unfinished">%1 hora del buque (%2), %3 UTC</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished">página %1 de %2</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">n/p</translation>
    </message>
    <message>
        <source>Second boxes: the other side</source>
        <translation type="unfinished">Segundas casillas: el otro lado</translation>
    </message>
    <message>
        <source>Spring gauge at the edge of the closed leaf</source>
        <translation type="unfinished">Dinamómetro en el borde de la hoja cerrada</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Escora del buque en esta puerta</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">grados</translation>
    </message>
    <message>
        <source>both together %1</source>
        <translation type="unfinished">ambas juntas %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 a %2</translation>
    </message>
    <message>
        <source>Released</source>
        <translation type="unfinished">Accionada</translation>
    </message>
    <message>
        <source>Shut, latched?</source>
        <translation type="unfinished">¿Cerrada, encajada?</translation>
    </message>
    <message>
        <source>again, No. ____</source>
        <translation type="unfinished">otra vez, n.º ____</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand: touched to stopped</source>
        <translation type="unfinished">Contacto con un bloque blando, nunca con la mano: del contacto a la parada</translation>
    </message>
    <message>
        <source>Plate reads:</source>
        <translation type="unfinished">La placa dice:</translation>
    </message>
    <message>
        <source>Time:</source>
        <translation type="unfinished">Hora:</translation>
    </message>
    <message>
        <source>Inspector&apos;s verdict:</source>
        <translation type="unfinished">Resultado del inspector:</translation>
    </message>
    <message>
        <source>Notes:</source>
        <translation type="unfinished">Notas:</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulario en blanco</translation>
    </message>
    <message>
        <source>%1 walkdown, %2</source>
        <translation type="unfinished">recorrido de inspección (%1), %2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Fecha</translation>
    </message>
    <message>
        <source>Tested by</source>
        <translation type="unfinished">Probado por</translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished">Palabra de inicio</translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished">Palabra de parada</translation>
    </message>
    <message>
        <source>A released door moves by itself and can crush. Anyone may stop the test. Confirm every point again before every release. If any point is not confirmed, do not release.</source>
        <translation type="unfinished">Una puerta accionada se mueve sola y puede aplastar. Cualquiera puede parar la prueba. Confirme de nuevo cada punto antes de cada accionamiento. Si un solo punto no está confirmado, no accione ninguna puerta.</translation>
    </message>
    <message>
        <source>Before each release from the control station</source>
        <translation type="unfinished">Antes de cada accionamiento desde el puesto de control</translation>
    </message>
    <message>
        <source>How to fill in this form</source>
        <translation type="unfinished">Cómo rellenar este formulario</translation>
    </message>
    <message>
        <source>Tick one box for each question; n/a only where the door has no such part. Where a question has two sets of boxes, answer it for each side. Give times in seconds with two decimals. Strike out a run that was stopped and give the reason: it is not a measurement. Time a run again if it is close to a limit, and enter the number of the one it repeats. Leave blank what was not tested and give the reason under Notes. The form is typed in later under the same numbers.</source>
        <translation type="unfinished">Marque una casilla por pregunta; n/p solo si la puerta no tiene esa parte. Si una pregunta tiene dos grupos de casillas, responda para cada lado. Anote los tiempos en segundos con dos decimales. Tache todo ensayo que se paró e indique el motivo: no es una medición. Vuelva a cronometrar un ensayo que quede cerca de un límite y anote el número del que repite. Deje en blanco lo que no se probó e indique el motivo en Notas. El formulario se teclea después con los mismos números.</translation>
    </message>
    <message>
        <source>blank form, %1</source>
        <translation type="unfinished">formulario en blanco, %1</translation>
    </message>
    <message>
        <source>Blank form, %1</source>
        <translation type="unfinished">Formulario en blanco, %1</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulario en blanco</translation>
    </message>
    <message>
        <source>Catalogue: %1</source>
        <translation type="unfinished">Catálogo: %1</translation>
    </message>
    <message>
        <source>Photograph damaged: it cannot be shown.</source>
        <translation type="unfinished">Foto dañada: no se puede mostrar.</translation>
    </message>
    <message>
        <source>Photograph not in this register.</source>
        <translation type="unfinished">La foto no está en este registro.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not what was recorded.</source>
        <translation type="unfinished">Foto omitida: sus datos no son los que se registraron.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not a picture that can be shown.</source>
        <translation type="unfinished">Foto omitida: sus datos no son una imagen que se pueda mostrar.</translation>
    </message>
    <message>
        <source>PRACTICE - not a record</source>
        <translation type="unfinished">PRÁCTICA - sin valor de registro</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 y %2</translation>
    </message>
    <message>
        <source>no vessel in particular</source>
        <translation type="unfinished">ningún buque en particular</translation>
    </message>
    <message>
        <source>%1, door %2</source>
        <translation type="unfinished">%1, puerta %2</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">quilla colocada el %1</translation>
    </message>
    <message>
        <source>no keel date on record</source>
        <translation type="unfinished">sin fecha de quilla registrada</translation>
    </message>
    <message>
        <source>%1, %2, %3 passengers.</source>
        <translation type="unfinished">%1, %2, %3 pasajeros.</translation>
    </message>
    <message>
        <source>The texts</source>
        <translation type="unfinished">Los textos</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Mantenimiento</translation>
    </message>
    <message>
        <source>Does not apply to this door</source>
        <translation type="unfinished">No se aplica a esta puerta</translation>
    </message>
    <message>
        <source>Does not apply aboard</source>
        <translation type="unfinished">No se aplica a bordo</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texto</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation type="unfinished">Motivo</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">reglamento</translation>
    </message>
    <message>
        <source>Rule book, %1</source>
        <translation type="unfinished">Reglamento, %1</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Reglamento</translation>
    </message>
    <message>
        <source>no common clock</source>
        <translation type="unfinished">sin reloj común</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">sin marcas</translation>
    </message>
    <message>
        <source>(typed in)</source>
        <translation type="unfinished">(tecleado)</translation>
    </message>
    <message>
        <source>%1, no reason given: not a measurement</source>
        <translation type="unfinished">%1, sin motivo indicado: no es una medición</translation>
    </message>
    <message>
        <source>%1: %2. Not a measurement</source>
        <translation type="unfinished">%1: %2. No es una medición</translation>
    </message>
    <message>
        <source>cut short: not a measurement</source>
        <translation type="unfinished">interrumpido: no es una medición</translation>
    </message>
    <message>
        <source>marks out of order, %1 before %2: not a measurement</source>
        <translation type="unfinished">marcas en orden equivocado, %1 antes de %2: no es una medición</translation>
    </message>
    <message>
        <source>%1 was not marked: not a measurement</source>
        <translation type="unfinished">no se marcó «%1»: no es una medición</translation>
    </message>
    <message>
        <source>%1, group %2</source>
        <translation type="unfinished">%1, grupo %2</translation>
    </message>
    <message>
        <source>contact, %1</source>
        <translation type="unfinished">contacto, %1</translation>
    </message>
    <message>
        <source>Run begun</source>
        <translation type="unfinished">Inicio del ensayo</translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished">Por</translation>
    </message>
    <message>
        <source>Heel</source>
        <translation type="unfinished">Escora</translation>
    </message>
    <message>
        <source>Marks, seconds after the first</source>
        <translation type="unfinished">Marcas, segundos tras la primera</translation>
    </message>
    <message>
        <source>Runs at the other doors</source>
        <translation type="unfinished">Ensayos en las demás puertas</translation>
    </message>
    <message>
        <source>Recorded later</source>
        <translation type="unfinished">Registrado después</translation>
    </message>
    <message>
        <source>By, when</source>
        <translation type="unfinished">Por, cuándo</translation>
    </message>
    <message>
        <source>, %1, signed %2.</source>
        <translation type="unfinished">, %1, firmó el %2.</translation>
    </message>
    <message>
        <source>%1 entries, SHA-256 %2…, key of the tablet %3…</source>
        <translation type="unfinished">%1 entradas, SHA-256 %2…, clave de la tableta %3…</translation>
    </message>
    <message>
        <source>The entries covered by this signature are no longer as they were when signed.</source>
        <translation type="unfinished">Las entradas que cubre esta firma ya no son como eran al firmarlas.</translation>
    </message>
    <message>
        <source>Nothing was recorded after this signature.</source>
        <translation type="unfinished">No se registró nada después de esta firma.</translation>
    </message>
    <message>
        <source>One entry was recorded after this signature and is not covered by it:</source>
        <translation type="unfinished">Después de esta firma se registró una entrada, que la firma no cubre:</translation>
    </message>
    <message>
        <source>%1 entries were recorded after this signature and are not covered by it:</source>
        <translation type="unfinished">Después de esta firma se registraron %1 entradas, que la firma no cubre:</translation>
    </message>
    <message>
        <source>No one has signed this walkdown in the register.</source>
        <translation type="unfinished">Nadie ha firmado este recorrido en el registro.</translation>
    </message>
    <message>
        <source>Inspector: name, signature, date</source>
        <translation type="unfinished">Inspector: nombre, firma, fecha</translation>
    </message>
    <message>
        <source>Chief officer: name, signature, date</source>
        <translation type="unfinished">Primer oficial: nombre, firma, fecha</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entrada</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entradas</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Catálogo</translation>
    </message>
    <message>
        <source>Texts of the catalogue</source>
        <translation type="unfinished">Textos del catálogo</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 por %2</translation>
    </message>
    <message>
        <source>%1 by %2, with %3</source>
        <translation type="unfinished">%1 por %2, con %3</translation>
    </message>
    <message>
        <source>Entries of this walkdown</source>
        <translation type="unfinished">Entradas de este recorrido</translation>
    </message>
    <message>
        <source>Entries of the vessel</source>
        <translation type="unfinished">Entradas del buque</translation>
    </message>
    <message>
        <source>What this document was made from</source>
        <translation type="unfinished">De qué se hizo este documento</translation>
    </message>
    <message>
        <source>It shows the register as it was at that time. Entries added later are not in it; the checksums below show whether there are any.</source>
        <translation type="unfinished">Muestra el registro tal como estaba en ese momento. Las entradas añadidas después no figuran en él; las sumas de comprobación de abajo muestran si las hay.</translation>
    </message>
    <message>
        <source>What is recorded and signed is the English record.</source>
        <translation type="unfinished">Lo que se registra y se firma es el registro en inglés.</translation>
    </message>
    <message>
        <source>Doors are graded by the English text.</source>
        <translation type="unfinished">Las puertas se califican según el texto en inglés.</translation>
    </message>
    <message>
        <source>This document is a translation.</source>
        <translation type="unfinished">Este documento es una traducción.</translation>
    </message>
    <message>
        <source>Interim measure: </source>
        <translation type="unfinished">Medida provisional: </translation>
    </message>
    <message>
        <source>by, date:</source>
        <translation type="unfinished">por, fecha:</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Hecho</translation>
    </message>
    <message>
        <source>What to rectify</source>
        <translation type="unfinished">Qué rectificar</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished">Qué se hizo</translation>
    </message>
    <message>
        <source>Rectified, awaiting retest</source>
        <translation type="unfinished">Rectificadas, pendientes de nueva prueba</translation>
    </message>
    <message>
        <source>To be retested by someone other than whoever rectified it.</source>
        <translation type="unfinished">La nueva prueba debe hacerla alguien distinto de quien rectificó.</translation>
    </message>
    <message>
        <source>There is nothing to rectify.</source>
        <translation type="unfinished">No hay nada que rectificar.</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation type="unfinished">Para %1</translation>
    </message>
    <message>
        <source>Assigned to no one yet</source>
        <translation type="unfinished">Aún sin asignar</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">mantenimiento hecho</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this record; grades are an aid to judgement. Catalogue: %1. Created %2 by %3 from %4 entries of the walkdown, SHA-256 %5, and %6 of the vessel, SHA-256 %7.</source>
        <translation type="unfinished">La Administración del Estado de abanderamiento, los planos aprobados y las reglas locales prevalecen sobre esta ficha; las calificaciones son una ayuda para el criterio. Catálogo: %1. Creada el %2 por %3 con %4 entradas del recorrido, SHA-256 %5, y %6 del buque, SHA-256 %7.</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">decisión</translation>
    </message>
    <message>
        <source>deficiency details</source>
        <translation type="unfinished">detalles de la deficiencia</translation>
    </message>
    <message>
        <source>conflict decided</source>
        <translation type="unfinished">contradicción resuelta</translation>
    </message>
    <message>
        <source>document created</source>
        <translation type="unfinished">documento creado</translation>
    </message>
    <message>
        <source>Created</source>
        <translation type="unfinished">Creado</translation>
    </message>
    <message>
        <source> (outside the limit)</source>
        <translation type="unfinished"> (fuera del límite)</translation>
    </message>
    <message>
        <source>%1, of which %2 done (every check made, or a reason recorded).</source>
        <translation type="unfinished">%1; hechas: %2 (cada comprobación hecha, o un motivo registrado).</translation>
    </message>
    <message>
        <source>This document is a machine translation, not yet checked by a native speaker in the trade.</source>
        <translation type="unfinished">Este documento es una traducción automática, aún sin revisar por un hablante nativo del oficio.</translation>
    </message>
    <message>
        <source>, limit %1 in cabin areas</source>
        <translation type="unfinished">, límite %1 en zonas de camarotes</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">se pregunta en la puerta</translation>
    </message>
    <message>
        <source>clear opening divided by the time from first movement to shut</source>
        <translation type="unfinished">abertura libre dividida por el tiempo desde el primer movimiento hasta el cierre</translation>
    </message>
    <message>
        <source>timed from the alarm to the first movement</source>
        <translation type="unfinished">cronometrado desde la alarma hasta el primer movimiento</translation>
    </message>
    <message>
        <source>order of the marks: shut, then alarm off</source>
        <translation type="unfinished">orden de las marcas: cerrada, luego alarma apagada</translation>
    </message>
    <message>
        <source>against an inclination of %1°</source>
        <translation type="unfinished">contra una inclinación de %1°</translation>
    </message>
    <message>
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">la respuesta dice qué es la puerta; ninguna es un defecto</translation>
    </message>
    <message>
        <source>every ship</source>
        <translation type="unfinished">todo buque</translation>
    </message>
    <message>
        <source>advice for: %1</source>
        <translation type="unfinished">recomendación para: %1</translation>
    </message>
    <message>
        <source>answered yes: %1</source>
        <translation type="unfinished">respondido sí: %1</translation>
    </message>
    <message>
        <source>answered no: %1</source>
        <translation type="unfinished">respondido no: %1</translation>
    </message>
    <message>
        <source>answered n/a: %1</source>
        <translation type="unfinished">respondido n/p: %1</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; una regla de %2</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texto</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation type="unfinished">Edición</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Límite</translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation type="unfinished">Aproximado</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">toda puerta</translation>
    </message>
    <message>
        <source>Exempt</source>
        <translation type="unfinished">Exento</translation>
    </message>
    <message>
        <source>Ships</source>
        <translation type="unfinished">Buques</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished">Fechas</translation>
    </message>
    <message>
        <source>Other dates</source>
        <translation type="unfinished">Otras fechas</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished">Se comprueba por</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
    <message>
        <source>Instead, at every door</source>
        <translation type="unfinished">En su lugar, en toda puerta</translation>
    </message>
    <message>
        <source>Instead, where: %1</source>
        <translation type="unfinished">En su lugar, donde: %1</translation>
    </message>
    <message>
        <source>Question</source>
        <translation type="unfinished">Pregunta</translation>
    </message>
    <message>
        <source>Says</source>
        <translation type="unfinished">Dice</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 y %2 más</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">No leído</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Mirar</translation>
    </message>
    <message>
        <source>Release</source>
        <translation type="unfinished">Accionar</translation>
    </message>
    <message>
        <source>Function</source>
        <translation type="unfinished">Función</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Puertas</translation>
    </message>
    <message>
        <source>no door in particular</source>
        <translation type="unfinished">ninguna puerta en particular</translation>
    </message>
    <message>
        <source>Rules of</source>
        <translation type="unfinished">Reglas de</translation>
    </message>
    <message>
        <source>Not for this vessel</source>
        <translation type="unfinished">No para este buque</translation>
    </message>
    <message>
        <source>Other texts</source>
        <translation type="unfinished">Otros textos</translation>
    </message>
    <message>
        <source>In force here</source>
        <translation type="unfinished">Vigente aquí</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">En la puerta %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Aboard this vessel</source>
        <translation type="unfinished">A bordo de este buque</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">recomendación en %1</translation>
    </message>
    <message>
        <source>asked at the door, on each side</source>
        <translation type="unfinished">se pregunta en la puerta, en cada lado</translation>
    </message>
    <message>
        <source>class of the door compared with that of its boundary</source>
        <translation type="unfinished">clase de la puerta comparada con la de su contorno</translation>
    </message>
    <message>
        <source>plate on the door compared with the register</source>
        <translation type="unfinished">placa de la puerta comparada con el registro</translation>
    </message>
    <message>
        <source>measured, with the step of the instrument taken into account</source>
        <translation type="unfinished">medido, teniendo en cuenta la división del instrumento</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">demostrado por un ensayo completo</translation>
    </message>
    <message>
        <source>shown by a run released from the control station</source>
        <translation type="unfinished">demostrado por un ensayo accionado desde el puesto de control</translation>
    </message>
    <message>
        <source>shown by runs released at the door, from each side</source>
        <translation type="unfinished">demostrado por ensayos accionados en la puerta, desde cada lado</translation>
    </message>
    <message>
        <source>shown by a run in which the alarm was marked</source>
        <translation type="unfinished">demostrado por un ensayo en que se marcó la alarma</translation>
    </message>
    <message>
        <source>timed from first movement to shut</source>
        <translation type="unfinished">cronometrado desde el primer movimiento hasta el cierre</translation>
    </message>
    <message>
        <source>ship upright: with heel, a time is advice only</source>
        <translation type="unfinished">buque adrizado: con escora, un tiempo es solo recomendación</translation>
    </message>
    <message>
        <source>the text says so: up to %1 % outside the limits on the slow side, %2 % on the fast side, the inspector decides (margins of our own choice)</source>
        <translation type="unfinished">lo dice el texto: hasta un %1 % fuera de los límites por lento, un %2 % por rápido, decide el inspector (márgenes elegidos por nosotros)</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Fuente</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation type="unfinished">Se aplica a</translation>
    </message>
    <message>
        <source>Does not apply where</source>
        <translation type="unfinished">No se aplica donde</translation>
    </message>
    <message>
        <source>n/a allowed where</source>
        <translation type="unfinished">n/p admitido donde</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Requisito</translation>
    </message>
    <message>
        <source>the same as the requirement</source>
        <translation type="unfinished">lo mismo que el requisito</translation>
    </message>
    <message>
        <source>Precedence</source>
        <translation type="unfinished">Prevalencia</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation type="unfinished">Abarca</translation>
    </message>
    <message>
        <source>Flag rules applied</source>
        <translation type="unfinished">Reglas de bandera aplicadas</translation>
    </message>
    <message>
        <source>binding here</source>
        <translation type="unfinished">obligatorio aquí</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">si falla, decide el inspector</translation>
    </message>
    <message>
        <source>advice only here</source>
        <translation type="unfinished">aquí solo recomendación</translation>
    </message>
    <message>
        <source>does not apply here</source>
        <translation type="unfinished">no se aplica aquí</translation>
    </message>
    <message>
        <source>Binding at</source>
        <translation type="unfinished">Obligatorio en</translation>
    </message>
    <message>
        <source>On failure the inspector decides at</source>
        <translation type="unfinished">Si falla, decide el inspector en</translation>
    </message>
    <message>
        <source>Advice only at</source>
        <translation type="unfinished">Solo recomendación en</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation type="unfinished">No se aplica</translation>
    </message>
    <message>
        <source>binding at %1</source>
        <translation type="unfinished">obligatorio en %1</translation>
    </message>
    <message>
        <source>inspector decides at %1</source>
        <translation type="unfinished">decide el inspector en %1</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">no se aplica</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation type="unfinished">Intervalo</translation>
    </message>
    <message>
        <source>Open point</source>
        <translation type="unfinished">Punto abierto</translation>
    </message>
    <message>
        <source>No open point where</source>
        <translation type="unfinished">Sin punto abierto donde</translation>
    </message>
    <message>
        <source>Texts read</source>
        <translation type="unfinished">Textos leídos</translation>
    </message>
</context>
<context>
    <name>RulesScreen</name>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Mantenimiento</translation>
    </message>
    <message>
        <source>The texts that were read</source>
        <translation type="unfinished">Los textos que se leyeron</translation>
    </message>
    <message>
        <source>editions, dates, and what was not read</source>
        <translation type="unfinished">ediciones, fechas y lo que no se leyó</translation>
    </message>
</context>
<context>
    <name>RunWords</name>
    <message>
        <source>cut short</source>
        <translation type="unfinished">interrumpido</translation>
    </message>
    <message>
        <source>stopped after %1 s</source>
        <translation type="unfinished">parado a los %1 s</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished">%1 s</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation type="unfinished">dice %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sin placa</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">ilegible</translation>
    </message>
    <message>
        <source>void: marks out of order</source>
        <translation type="unfinished">nulo: marcas en orden equivocado</translation>
    </message>
    <message>
        <source>void: “%1” was not marked</source>
        <translation type="unfinished">nulo: no se marcó «%1»</translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message>
        <source>yes</source>
        <translation type="unfinished">sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">no</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">no procede</translation>
    </message>
    <message>
        <source>%1 on the plate</source>
        <translation type="unfinished">%1 en la placa</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sin placa</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">placa ilegible</translation>
    </message>
    <message>
        <source>judged satisfactory: %1</source>
        <translation type="unfinished">decidido satisfactorio: %1</translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished">decidido no satisfactorio: %1</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">no se pudo probar: %1</translation>
    </message>
    <message>
        <source>, %1 of %2</source>
        <translation type="unfinished">, %1 de %2</translation>
    </message>
    <message>
        <source>, side one</source>
        <translation type="unfinished">, lado uno</translation>
    </message>
    <message>
        <source>, side two</source>
        <translation type="unfinished">, lado dos</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">vence el %1</translation>
    </message>
    <message>
        <source>no interim measure</source>
        <translation type="unfinished">sin medida provisional</translation>
    </message>
    <message>
        <source>decided that this entry stands: %1</source>
        <translation type="unfinished">decidió que vale esta entrada: %1</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">nadie aún</translation>
    </message>
    <message>
        <source>Two decisions about the same entries</source>
        <translation type="unfinished">Dos decisiones sobre las mismas entradas</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Por una persona</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Interruptor de accionamiento</translation>
    </message>
    <message>
        <source>Power failure</source>
        <translation type="unfinished">Fallo de energía</translation>
    </message>
    <message>
        <source>Main and emergency supply of the release panel switched off at the board: the leaf shuts.</source>
        <translation type="unfinished">Alimentación principal y de emergencia del panel de accionamiento cortadas en el cuadro: la hoja se cierra.</translation>
    </message>
    <message>
        <source>Local accumulator</source>
        <translation type="unfinished">Acumulador local</translation>
    </message>
    <message>
        <source>The chief engineer&apos;s record of this year: opened and shut ten times from the local accumulator, pump off.</source>
        <translation type="unfinished">Constancia del jefe de máquinas de este año: abierta y cerrada diez veces con el acumulador local, bomba parada.</translation>
    </message>
    <message>
        <source>The other doors</source>
        <translation type="unfinished">Las otras puertas</translation>
    </message>
    <message>
        <source>Local control</source>
        <translation type="unfinished">Control local</translation>
    </message>
    <message>
        <source>The cover opens by hand. Nothing stands or is built in front of it.</source>
        <translation type="unfinished">La tapa se abre a mano. No hay nada puesto ni construido delante.</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Sistema de control: funciona a 200 grados C durante 60 minutos, sin afectar a la alimentación de las otras puertas, aislado por encima de eso, puerta mantenida cerrada hasta 945 grados C.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Espacio de máquinas</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Detrás de la puerta</translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished">Material</translation>
    </message>
    <message>
        <source>Leaf and frame of steel.</source>
        <translation type="unfinished">Hoja y marco de acero.</translation>
    </message>
    <message>
        <source>Material of the door</source>
        <translation type="unfinished">Material de la puerta</translation>
    </message>
    <message>
        <source>No opening above the lower third of the leaf.</source>
        <translation type="unfinished">Ninguna abertura por encima del tercio inferior de la hoja.</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished">Estado</translation>
    </message>
    <message>
        <source>No holes, patches or dents; nothing is missing or repaired with other parts.</source>
        <translation type="unfinished">Sin agujeros, parches ni abolladuras; nada falta ni está reparado con otras piezas.</translation>
    </message>
    <message>
        <source>Maintenance plan</source>
        <translation type="unfinished">Plan de mantenimiento</translation>
    </message>
    <message>
        <source>The plan in the ship&apos;s computer lists this door and its control, with the dates of their tests.</source>
        <translation type="unfinished">El plan del ordenador del buque incluye esta puerta y su mando, con las fechas de sus pruebas.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished">Cerrada con llave</translation>
    </message>
    <message>
        <source>You try the handle: the door is locked.</source>
        <translation type="unfinished">Usted prueba la manija: la puerta está cerrada con llave.</translation>
    </message>
    <message>
        <source>Way out</source>
        <translation type="unfinished">Salida</translation>
    </message>
    <message>
        <source>Quick release</source>
        <translation type="unfinished">Apertura rápida</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Altura de la barra</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Fuerza en la barra</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Panel del puente</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Puesto central de control</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Centro de seguridad</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Mando fuera del espacio</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Cierre</translation>
    </message>
    <message>
        <source>You open and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">La abre y la cierra usted solo, primero desde el lado uno, luego desde el lado dos.</translation>
    </message>
    <message>
        <source>Turned to release and let go, the switch stays there. The leaf is not held again until someone turns it back.</source>
        <translation type="unfinished">Girado a accionar y soltado, el interruptor se queda ahí. La hoja no vuelve a quedar retenida hasta que alguien lo gira hacia atrás.</translation>
    </message>
    <message>
        <source>With this door isolated at the control box, the others in its group shut when released again.</source>
        <translation type="unfinished">Con esta puerta aislada en la caja de control, las demás de su grupo se cerraron al accionarlas de nuevo.</translation>
    </message>
    <message>
        <source>Approval document</source>
        <translation type="unfinished">Documento de aprobación</translation>
    </message>
    <message>
        <source>Air openings</source>
        <translation type="unfinished">Aberturas de aire</translation>
    </message>
    <message>
        <source>A grille low in the leaf with a fire-rated shutter: net free area 0.03 m2 by its drawing. No undercut.</source>
        <translation type="unfinished">Una rejilla en la parte baja de la hoja con obturador resistente al fuego: área libre neta de 0,03 m2 según su plano. Sin hueco inferior.</translation>
    </message>
    <message>
        <source>Inside: a stairway enclosure.</source>
        <translation type="unfinished">Dentro: un tronco de escalera.</translation>
    </message>
    <message>
        <source>Approval document: a non-combustible core between steel sheets.</source>
        <translation type="unfinished">Documento de aprobación: un núcleo incombustible entre chapas de acero.</translation>
    </message>
    <message>
        <source>Height of the openings</source>
        <translation type="unfinished">Altura de las aberturas</translation>
    </message>
    <message>
        <source>You go through in the direction of escape without a key.</source>
        <translation type="unfinished">Usted pasa en el sentido de la evacuación sin llave.</translation>
    </message>
    <message>
        <source>A bar across two thirds of the leaf; pushing it releases the latch. Nothing locks it down.</source>
        <translation type="unfinished">Una barra a lo ancho de dos tercios de la hoja; al empujarla se suelta el pestillo. Nada la bloquea.</translation>
    </message>
    <message>
        <source>The bar is 950 mm above the deck.</source>
        <translation type="unfinished">La barra está a 950 mm sobre la cubierta.</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch releases.</source>
        <translation type="unfinished">El dinamómetro marca 40 N cuando se suelta el pestillo.</translation>
    </message>
    <message>
        <source>The bridge reads its lamp out to you: correct for open, ajar and shut.</source>
        <translation type="unfinished">El puente le va leyendo su lámpara: correcta con la puerta abierta, entreabierta y cerrada.</translation>
    </message>
    <message>
        <source>The closing control and lamp of this door are beside the panel of the detection system.</source>
        <translation type="unfinished">El mando de cierre y la lámpara de esta puerta están junto al panel del sistema de detección.</translation>
    </message>
    <message>
        <source>Released from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Accionada desde el centro de seguridad, la puerta se cierra y allí cambia su lámpara.</translation>
    </message>
    <message>
        <source>Blackout test</source>
        <translation type="unfinished">Prueba de apagón</translation>
    </message>
    <message>
        <source>Main power off: held and released on battery, then on the emergency generator.</source>
        <translation type="unfinished">Energía principal cortada: retenida y accionada con la batería, luego con el generador de emergencia.</translation>
    </message>
    <message>
        <source>Its control is in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Su mando está en la taquilla contraincendios del guardacalor, con los de los ventiladores y del combustible.</translation>
    </message>
    <message>
        <source>When let go, it shuts firmly every time.</source>
        <translation type="unfinished">Al soltarla, se cierra con firmeza cada vez.</translation>
    </message>
    <message>
        <source>Hold-back supply switched off at the board: the leaf is released and shuts against the draught of the fans. The control station&apos;s release plan lists the door.</source>
        <translation type="unfinished">Alimentación del dispositivo de retención cortada en el cuadro: la hoja queda accionada y se cierra contra la corriente de los ventiladores. El plan de accionamiento del puesto de control incluye la puerta.</translation>
    </message>
    <message>
        <source>Escape trunk</source>
        <translation type="unfinished">Tronco de evacuación</translation>
    </message>
    <message>
        <source>Let go on the ladder platform, it shuts by itself.</source>
        <translation type="unfinished">Soltada en la plataforma de la escala, se cierra sola.</translation>
    </message>
</context>
<context>
    <name>SpotWords</name>
    <message>
        <source>Sill and floor</source>
        <translation type="unfinished">Umbral y piso</translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation type="unfinished">Hueco inferior</translation>
    </message>
    <message>
        <source>Travel path</source>
        <translation type="unfinished">Trayectoria</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation type="unfinished">Cajón</translation>
    </message>
    <message>
        <source>Rails</source>
        <translation type="unfinished">Carriles</translation>
    </message>
    <message>
        <source>Safety edge</source>
        <translation type="unfinished">Borde sensible</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished">Juntas</translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation type="unfinished">Bisagras</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation type="unfinished">Cierrapuertas</translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished">Pestillo</translation>
    </message>
    <message>
        <source>Hold-back</source>
        <translation type="unfinished">Retenedor</translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished">Hoja</translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished">Paso manguera</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished">Placa</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lámparas panel</translation>
    </message>
    <message>
        <source>Local release</source>
        <translation type="unfinished">Accionar aquí</translation>
    </message>
    <message>
        <source>Records, tests</source>
        <translation type="unfinished">Datos, pruebas</translation>
    </message>
</context>
<context>
    <name>StationDrawing</name>
    <message>
        <source>Release</source>
        <translation type="unfinished">Accionar</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished">Manija</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">abierta</translation>
    </message>
    <message>
        <source>shut</source>
        <translation type="unfinished">cerrada</translation>
    </message>
</context>
<context>
    <name>TapWords</name>
    <message>
        <source>plate of %1</source>
        <translation type="unfinished">placa de %1</translation>
    </message>
    <message>
        <source>not tested: %1</source>
        <translation type="unfinished">no probada: %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation type="unfinished">nota sobre %1</translation>
    </message>
    <message>
        <source>photograph of %1</source>
        <translation type="unfinished">foto de %1</translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished">rectificación en %1</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">fin del recorrido</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">cuándo aprueba un valor</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">decisión</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">ya no confirmado: %1</translation>
    </message>
    <message>
        <source>deficiency at %1</source>
        <translation type="unfinished">deficiencia en %1</translation>
    </message>
    <message>
        <source>caution for %1</source>
        <translation type="unfinished">precaución para %1</translation>
    </message>
    <message>
        <source>run at %1</source>
        <translation type="unfinished">ensayo en %1</translation>
    </message>
    <message>
        <source>last entry</source>
        <translation type="unfinished">última entrada</translation>
    </message>
    <message>
        <source>%1 awaiting retest</source>
        <translation type="unfinished">%1 pendiente de nueva prueba</translation>
    </message>
    <message>
        <source>withdrawal of the item at %1</source>
        <translation type="unfinished">retirada del pendiente en %1</translation>
    </message>
    <message>
        <source>start of the walkdown</source>
        <translation type="unfinished">inicio del recorrido</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">prueba de reacción</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation type="unfinished">fecha del certificado</translation>
    </message>
    <message>
        <source>taking back %1</source>
        <translation type="unfinished">retirada de %1</translation>
    </message>
    <message>
        <source>details of the item at %1</source>
        <translation type="unfinished">datos del pendiente en %1</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">mantenimiento hecho</translation>
    </message>
</context>
<context>
    <name>UndoSheet</name>
    <message>
        <source>Not undone</source>
        <translation type="unfinished">No deshecho</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Deshacer</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Quitar</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation type="unfinished">Reponer</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">retirado</translation>
    </message>
    <message>
        <source>put back</source>
        <translation type="unfinished">repuesto</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">En la puerta %1</translation>
    </message>
    <message>
        <source>Not at this door</source>
        <translation type="unfinished">No en esta puerta</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, y %2 más</translation>
    </message>
    <message>
        <source>Nothing to take back at door %1.</source>
        <translation type="unfinished">Nada que quitar en la puerta %1.</translation>
    </message>
    <message>
        <source>Nothing is deleted: taking back and putting back are recorded too. What was signed cannot be taken back.</source>
        <translation type="unfinished">No se borra nada: quitar y reponer también quedan registrados. Lo firmado no se puede quitar.</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">no satisfactorio</translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished">volver a cronometrar</translation>
    </message>
    <message>
        <source>untested</source>
        <translation type="unfinished">sin probar</translation>
    </message>
    <message>
        <source>satisfactory</source>
        <translation type="unfinished">satisfactorio</translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished">recomendación</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">no procede</translation>
    </message>
    <message>
        <source>judgement needed</source>
        <translation type="unfinished">a criterio del inspector</translation>
    </message>
</context>
<context>
    <name>VoiceWords</name>
    <message>
        <source>Control station: standing by</source>
        <translation type="unfinished">Puesto de control: a la espera</translation>
    </message>
    <message>
        <source>Control station: releasing now</source>
        <translation type="unfinished">Puesto de control: accionando ahora</translation>
    </message>
    <message>
        <source>Control station: my panel shows it shut</source>
        <translation type="unfinished">Puesto de control: mi panel la muestra cerrada</translation>
    </message>
    <message>
        <source>Control station: my panel shows it open</source>
        <translation type="unfinished">Puesto de control: mi panel la muestra abierta</translation>
    </message>
    <message>
        <source>Let it run
onto the block</source>
        <translation type="unfinished">Dejarla llegar
al bloque</translation>
    </message>
    <message>
        <source>Give the
start word</source>
        <translation type="unfinished">Dar palabra
de inicio</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished">Soltarla</translation>
    </message>
    <message>
        <source>Operate release,
side one</source>
        <translation type="unfinished">Accionar mando,
lado uno</translation>
    </message>
    <message>
        <source>Operate release,
side two</source>
        <translation type="unfinished">Accionar mando,
lado dos</translation>
    </message>
    <message>
        <source>Run stopped</source>
        <translation type="unfinished">Ensayo parado</translation>
    </message>
</context>
<context>
    <name>Walkdown</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished">sin puertas</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 sin probar</translation>
    </message>
    <message>
        <source>%1 SAT</source>
        <translation type="unfinished">%1 SAT</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 por resolver</translation>
    </message>
    <message>
        <source>%1 UNSAT</source>
        <translation type="unfinished">%1 NO SAT</translation>
    </message>
</context>
<context>
    <name>ZoneProfile</name>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BandGauge</name>
    <message>
        <source>allowed %1 to %2 %3</source>
        <translation type="unfinished">permitido %1 a %2 %3</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation type="unfinished">como máximo %1 %2</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation type="unfinished">como mínimo %1 %2</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished">sin límite</translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation type="unfinished">ahora %1 %2</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation type="unfinished">por debajo del límite</translation>
    </message>
    <message>
        <source>at the limit</source>
        <translation type="unfinished">en el límite</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation type="unfinished">dentro de los límites</translation>
    </message>
    <message>
        <source>above the limit</source>
        <translation type="unfinished">por encima del límite</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Brief</name>
    <message>
        <source>Protective equipment</source>
        <translation type="unfinished">Equipo de protección</translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished">El puesto de control</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Quién puede parar la prueba</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Puesto de control</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Canal</translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished">Palabra de inicio</translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished">Palabra de parada</translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished">quién acciona las puertas</translation>
    </message>
    <message>
        <source>no door is released without it</source>
        <translation type="unfinished">ninguna puerta se acciona sin ella</translation>
    </message>
    <message>
        <source>said by whoever sees danger</source>
        <translation type="unfinished">la dice quien vea peligro</translation>
    </message>
    <message>
        <source>Crush hazards</source>
        <translation type="unfinished">Peligros de aplastamiento</translation>
    </message>
    <message>
        <source>People kept clear</source>
        <translation type="unfinished">Gente apartada</translation>
    </message>
    <message>
        <source>Clear passengers, children, carts and cables from every door of the release group. Keep them clear. Post a lookout on each side of every door that will move. Release one group at a time. Test locally first.</source>
        <translation type="unfinished">Aparte pasajeros, niños, carros y cables de cada puerta del grupo de accionamiento. Manténgalos apartados. Ponga un vigilante a cada lado de cada puerta que se va a mover. Accione los grupos de uno en uno. Pruebe antes en la puerta.</translation>
    </message>
    <message>
        <source>Announce the release. Agree the channel, the start word and the stop word. Have the control station read them back.</source>
        <translation type="unfinished">Anuncie el accionamiento. Acuerde el canal, la palabra de inicio y la palabra de parada. Haga que el puesto de control las colacione.</translation>
    </message>
    <message>
        <source>Anyone, at any time, by saying the stop word. Stop the doors first. Ask questions afterwards.</source>
        <translation type="unfinished">Cualquiera, en cualquier momento, diciendo la palabra de parada. Primero pare las puertas. Pregunte después.</translation>
    </message>
    <message>
        <source>how to reach it</source>
        <translation type="unfinished">cómo comunicar con él</translation>
    </message>
    <message>
        <source>by saying the stop word</source>
        <translation type="unfinished">diciendo la palabra de parada</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep clear. Never walk through a moving door. Most published crush deaths: powered watertight doors, entered before they were fully open.</source>
        <translation type="unfinished">Bordes, montantes de encuentro y cajones aplastan manos, pies y cabezas: manténgase lejos. Nunca pase por una puerta en movimiento. La mayoría de las muertes por aplastamiento publicadas: puertas estancas a motor, cruzadas antes de estar abiertas del todo.</translation>
    </message>
    <message>
        <source>Wear safety shoes and gloves, and hearing protection near the alarm. Carry a torch and a radio you have just checked. Wear nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Lleve calzado de seguridad y guantes, y protección auditiva cerca de la alarma. Lleve una linterna y una radio que acabe de comprobar. No lleve nada suelto que una hoja pueda enganchar.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Acordado con el puesto de control</translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished">elegir</translation>
    </message>
    <message>
        <source>Not saved yet. %1</source>
        <translation type="unfinished">Aún no guardado. %1</translation>
    </message>
    <message>
        <source>Save again ›</source>
        <translation type="unfinished">Guardar otra vez ›</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Empezar ›</translation>
    </message>
    <message>
        <source>Read out to everyone taking part</source>
        <translation type="unfinished">Léala en voz alta a todos los que participan</translation>
    </message>
    <message>
        <source>‹ Plan</source>
        <translation type="unfinished">‹ Plan</translation>
    </message>
    <message>
        <source>In the plan, choose who is recording.</source>
        <translation type="unfinished">En el plan, elija quién registra.</translation>
    </message>
    <message>
        <source>Not yet agreed: %1.</source>
        <translation type="unfinished">Aún sin acordar: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read.</source>
        <translation type="unfinished">%1 de %2 partes de la charla leídas.</translation>
    </message>
    <message>
        <source>Common practice, no published source. Source for the deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Práctica común, sin fuente publicada. Fuente de los datos de muertes: informes de accidentes de los clubes P&amp;I y de los Estados de abanderamiento.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Mark as read</source>
        <translation type="unfinished">Marcar leído</translation>
    </message>
    <message>
        <source>Mark as read: %1</source>
        <translation type="unfinished">Marcar leído: %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation type="unfinished">Leído</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">retraso propio al inicio, de la prueba de reacción</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">retraso propio al final, de la prueba de reacción</translation>
    </message>
    <message>
        <source>delay that does not cancel</source>
        <translation type="unfinished">retraso que no se compensa</translation>
    </message>
    <message>
        <source>last digit</source>
        <translation type="unfinished">última cifra</translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished">abertura libre</translation>
    </message>
    <message>
        <source>standard uncertainty of</source>
        <translation type="unfinished">incertidumbre típica de</translation>
    </message>
    <message>
        <source>its own</source>
        <translation type="unfinished">la propia</translation>
    </message>
    <message>
        <source>adds, %1</source>
        <translation type="unfinished">aporta, %1</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished">grados de libertad</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">probabilidad dentro de los límites</translation>
    </message>
    <message>
        <source>reaction scatter at the start</source>
        <translation type="unfinished">dispersión de la reacción al inicio</translation>
    </message>
    <message>
        <source>reaction scatter at the end</source>
        <translation type="unfinished">dispersión de la reacción al final</translation>
    </message>
    <message>
        <source>clock rate</source>
        <translation type="unfinished">marcha del reloj</translation>
    </message>
    <message>
        <source>position of the half-way mark</source>
        <translation type="unfinished">posición de la marca de mitad</translation>
    </message>
    <message>
        <source>unlimited</source>
        <translation type="unfinished">sin límite</translation>
    </message>
    <message>
        <source>combined</source>
        <translation type="unfinished">combinada</translation>
    </message>
    <message>
        <source>expanded, U (k = 2)</source>
        <translation type="unfinished">expandida, U (k = 2)</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Desglose de la incertidumbre</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BulkheadPanel</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 y %2</translation>
    </message>
    <message>
        <source>If it stays open</source>
        <translation type="unfinished">Si queda abierta</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Todas</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Esta puerta</translation>
    </message>
    <message>
        <source>Fire and smoke can pass this boundary; the zones themselves stay separate.</source>
        <translation type="unfinished">Fuego y humo pueden atravesar este contorno; las zonas en sí siguen separadas.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long%3.</source>
        <translation type="unfinished">Las zonas %1 formarían una sola: de %2 de largo%3.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CautionScreen</name>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">cubierta %1, %2</translation>
    </message>
    <message>
        <source>, escape route</source>
        <translation type="unfinished">, vía de evacuación</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Confirmar</translation>
    </message>
    <message>
        <source>Arm the stopwatch ›</source>
        <translation type="unfinished">Preparar el cronómetro ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished">Grupo %1</translation>
    </message>
    <message>
        <source>1 door will move</source>
        <translation type="unfinished">Se moverá 1 puerta</translation>
    </message>
    <message>
        <source>%1 doors will move</source>
        <translation type="unfinished">Se moverán %1 puertas</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Confirmado</translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Puertas</translation>
    </message>
    <message>
        <source>Leaf masses are not in the register: treat every leaf as a crush hazard.</source>
        <translation type="unfinished">Las masas de las hojas no están en el registro: trate cada hoja como un peligro de aplastamiento.</translation>
    </message>
    <message>
        <source>Door %1, leaf of %2: up to %3 at the fastest permitted speed.</source>
        <translation type="unfinished">Puerta %1, hoja de %2: hasta %3 de energía a la velocidad máxima permitida.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard (%1), but still enough to crush a hand.</source>
        <translation type="unfinished"> Por debajo del valor usado en tierra para puertas que no necesitan protección (%1), pero aún basta para aplastar una mano.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard (%2): keep everyone clear.</source>
        <translation type="unfinished"> Eso es %1 veces el valor usado en tierra para puertas que no necesitan protección (%2): mantenga a todos apartados.</translation>
    </message>
    <message>
        <source> Ashore, a leaf this heavy must take at least %1 s.</source>
        <translation type="unfinished"> En tierra, una hoja tan pesada debe tardar al menos %1 s.</translation>
    </message>
    <message>
        <source> For comparison, not a rule for ships: %1.</source>
        <translation type="unfinished"> Para comparar, no es una regla para buques: %1.</translation>
    </message>
    <message>
        <source>Crush hazard of these doors</source>
        <translation type="unfinished">Peligro de aplastamiento de estas puertas</translation>
    </message>
    <message>
        <source>Cautions to confirm ›</source>
        <translation type="unfinished">Precauciones por confirmar ›</translation>
    </message>
    <message>
        <source>Confirm each before release</source>
        <translation type="unfinished">Confirme cada una antes de accionar</translation>
    </message>
    <message>
        <source>Back to the doors that will move</source>
        <translation type="unfinished">Volver a las puertas que se van a mover</translation>
    </message>
    <message>
        <source>All still true</source>
        <translation type="unfinished">Todo se sigue cumpliendo</translation>
    </message>
    <message>
        <source>before release from the control station</source>
        <translation type="unfinished">antes de accionar desde el puesto de control</translation>
    </message>
    <message>
        <source>Call %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">Llame a %1 por %2. Para iniciar: «%3». Para parar: «%4»; puede decirlo %5.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Mostrar ›</translation>
    </message>
    <message>
        <source>The rules have changed since the doors were last shown</source>
        <translation type="unfinished">Las reglas han cambiado desde la última vez que se mostraron las puertas</translation>
    </message>
    <message>
        <source>%1 graded differently since the rules changed</source>
        <translation type="unfinished">%1 con otra calificación desde que cambiaron las reglas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceKeys</name>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Más ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceRow</name>
    <message>
        <source>side one</source>
        <translation type="unfinished">lado uno</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">lado dos</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished">Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished">No</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">n/p</translation>
    </message>
    <message>
        <source>next to be answered by the letters y, n and a</source>
        <translation type="unfinished">la siguiente que se responde con las letras y, n y a</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CloseUp</name>
    <message>
        <source>Close-up: %1</source>
        <translation type="unfinished">Primer plano: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CutShort</name>
    <message>
        <source>A run at door %1 was cut short</source>
        <translation type="unfinished">Un ensayo en la puerta %1 quedó interrumpido</translation>
    </message>
    <message>
        <source>By hand: %1</source>
        <translation type="unfinished">A mano: %1</translation>
    </message>
    <message>
        <source>seconds after “%1”</source>
        <translation type="unfinished">segundos después de “%1”</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>“%1” cannot come before “%2”. Seconds after “%3”:</source>
        <translation type="unfinished">«%1» no puede ir antes de «%2». Segundos después de «%3»:</translation>
    </message>
    <message>
        <source>Release %1. On record: %2. Nothing is lost.</source>
        <translation type="unfinished">Accionamiento %1. Registrado: %2. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">sin marcas</translation>
    </message>
    <message>
        <source>Void the run</source>
        <translation type="unfinished">Dar por nulo el ensayo</translation>
    </message>
    <message>
        <source>Complete by hand from my own stopwatch</source>
        <translation type="unfinished">Completar a mano con mi propio cronómetro</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or type the date, like 2027-03-31.</source>
        <translation type="unfinished">O escriba la fecha, así: 2027-03-31.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Fecha</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Usar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Repaso</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Hecho</translation>
    </message>
    <message>
        <source>Faults (%1)</source>
        <translation type="unfinished">Fallos (%1)</translation>
    </message>
    <message>
        <source>People (%1)</source>
        <translation type="unfinished">Gente (%1)</translation>
    </message>
    <message>
        <source>Marks (%1)</source>
        <translation type="unfinished">Marcas (%1)</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Resultado</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Resultado</translation>
    </message>
    <message>
        <source>Practice does not replace instruction by licensed people or the rules of the flag Administration.</source>
        <translation type="unfinished">La práctica no sustituye la instrucción por personas tituladas ni las reglas de la Administración del Estado de abanderamiento.</translation>
    </message>
    <message>
        <source>Checks (%1)</source>
        <translation type="unfinished">Comprobaciones (%1)</translation>
    </message>
    <message>
        <source>%1 checks that differ</source>
        <translation type="unfinished">%1 comprobaciones que difieren</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Aprueba con %1, falla con %2</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En uso</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Usar</translation>
    </message>
    <message>
        <source>%1: default</source>
        <translation type="unfinished">%1: por defecto</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again; after three runs, you decide. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Un tiempo de cierre a menos de %1 s de un límite se vuelve a cronometrar; tras tres ensayos, decide usted. De las puertas que aprueban por poco, 1 de cada %2 estaría fuera; de las que fallan por poco, 1 de cada %2 estaría dentro.</translation>
    </message>
    <message>
        <source>These apply to the walkdown under way and to later ones; reports print them. What the flag Administration requires takes precedence.</source>
        <translation type="unfinished">Se aplican al recorrido en curso y a los siguientes, y figuran en los informes. Prevalece lo que exija la Administración.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DivisionLookup</name>
    <message>
        <source>Bulkhead</source>
        <translation type="unfinished">Mamparo</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Cubierta</translation>
    </message>
    <message>
        <source>Zone bulkhead</source>
        <translation type="unfinished">Mamparo de zona</translation>
    </message>
    <message>
        <source>Zone step</source>
        <translation type="unfinished">Bayoneta</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notas</translation>
    </message>
    <message>
        <source>Below the deck</source>
        <translation type="unfinished">Bajo la cubierta</translation>
    </message>
    <message>
        <source>One side</source>
        <translation type="unfinished">Un lado</translation>
    </message>
    <message>
        <source>Above the deck</source>
        <translation type="unfinished">Sobre la cubierta</translation>
    </message>
    <message>
        <source>The other side</source>
        <translation type="unfinished">El otro lado</translation>
    </message>
    <message>
        <source>No class: steel or equivalent</source>
        <translation type="unfinished">Sin clase: acero o equivalente</translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation type="unfinished">Sin requisito</translation>
    </message>
    <message>
        <source>No value printed: ask the Administration</source>
        <translation type="unfinished">Sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>Choose both spaces</source>
        <translation type="unfinished">Elija los dos espacios</translation>
    </message>
    <message>
        <source>%1, cell %2-%3: %4</source>
        <translation type="unfinished">%1, casilla %2-%3: %4</translation>
    </message>
    <message>
        <source>blank</source>
        <translation type="unfinished">en blanco</translation>
    </message>
    <message>
        <source>%1, door %2</source>
        <translation type="unfinished">%1, puerta %2</translation>
    </message>
    <message>
        <source>No table for this division</source>
        <translation type="unfinished">No hay tabla para esta división</translation>
    </message>
    <message>
        <source>The approved plans and the flag Administration take precedence over these tables.</source>
        <translation type="unfinished">Los planos aprobados y la Administración prevalecen sobre estas tablas.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorDrawing</name>
    <message>
        <source>Drawing of a sliding door</source>
        <translation type="unfinished">Dibujo de una puerta corredera</translation>
    </message>
    <message>
        <source>Drawing of a single leaf door</source>
        <translation type="unfinished">Dibujo de una puerta de una hoja</translation>
    </message>
    <message>
        <source>Drawing of a double leaf door</source>
        <translation type="unfinished">Dibujo de una puerta de dos hojas</translation>
    </message>
    <message>
        <source>Drawing of a double swing door</source>
        <translation type="unfinished">Dibujo de una puerta de vaivén</translation>
    </message>
    <message>
        <source>, alarm on</source>
        <translation type="unfinished">, alarma activa</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">cajón</translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished">trayectoria</translation>
    </message>
    <message>
        <source>%1 not known</source>
        <translation type="unfinished">%1 no se conoce</translation>
    </message>
    <message>
        <source>swings both ways</source>
        <translation type="unfinished">de vaivén</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">abertura</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarma activa</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished">%1 %2</translation>
    </message>
    <message>
        <source>, a soft block in its path</source>
        <translation type="unfinished">, un bloque blando en su trayectoria</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorHead</name>
    <message>
        <source>not read</source>
        <translation type="unfinished">sin leer</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">ninguna</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">ilegible</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">placa</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">registro</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation type="unfinished">contorno</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">abertura</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
    <message>
        <source>not examined as</source>
        <translation type="unfinished">no examinada como</translation>
    </message>
    <message>
        <source>a watertight door</source>
        <translation type="unfinished">puerta estanca</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorListView</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Puertas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorPicker</name>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">puerta %1, cubierta %2, %3</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorScreen</name>
    <message>
        <source>1 Look</source>
        <translation type="unfinished">1 Mirar</translation>
    </message>
    <message>
        <source>2 Release</source>
        <translation type="unfinished">2 Accionar</translation>
    </message>
    <message>
        <source>3 Function</source>
        <translation type="unfinished">3 Función</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Nota</translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Esta puerta no se pudo probar: diga por qué</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Cubierta %1</translation>
    </message>
    <message>
        <source>%1 · %2 walkdown</source>
        <translation type="unfinished">%1 · recorrido %2</translation>
    </message>
    <message>
        <source>Go to release ›</source>
        <translation type="unfinished">Ir a accionar ›</translation>
    </message>
    <message>
        <source>Go to function ›</source>
        <translation type="unfinished">Ir a función ›</translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished">Siguiente: %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation type="unfinished">Del papel</translation>
    </message>
    <message>
        <source>Type in the entries of a paper form</source>
        <translation type="unfinished">Escribir las anotaciones de un formulario en papel</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">No se pudo probar</translation>
    </message>
    <message>
        <source>1 does not apply ›</source>
        <translation type="unfinished">1 no se aplica ›</translation>
    </message>
    <message>
        <source>%1 do not apply ›</source>
        <translation type="unfinished">%1 no se aplican ›</translation>
    </message>
    <message>
        <source>Walkdown done ›</source>
        <translation type="unfinished">Fin del recorrido ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>The plate on door %1</source>
        <translation type="unfinished">La placa de la puerta %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sin placa</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">ilegible</translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>closing force at the edge, by spring gauge</source>
        <translation type="unfinished">fuerza de cierre en el borde, con dinamómetro</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Escora del buque, grados</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">grados</translation>
    </message>
    <message>
        <source>Note about door %1</source>
        <translation type="unfinished">Nota sobre la puerta %1</translation>
    </message>
    <message>
        <source>Why could door %1 not be tested?</source>
        <translation type="unfinished">¿Por qué no se pudo probar la puerta %1?</translation>
    </message>
    <message>
        <source>Why could this not be tested?</source>
        <translation type="unfinished">¿Por qué no se pudo probar esto?</translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished">Por qué</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">No se pudo probar</translation>
    </message>
    <message>
        <source>Clear this answer?</source>
        <translation type="unfinished">¿Borrar esta respuesta?</translation>
    </message>
    <message>
        <source>Door %1: “%2”, answered at %3 by %4. It stays on record as taken back.</source>
        <translation type="unfinished">Puerta %1: «%2», respondido a las %3 por %4. Queda registrada como retirada.</translation>
    </message>
    <message>
        <source>Clear the answer</source>
        <translation type="unfinished">Borrar la respuesta</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished">Conservarla</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Reglamento ›</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Registrar</translation>
    </message>
    <message>
        <source>does not apply: %1</source>
        <translation type="unfinished">no se aplica: %1</translation>
    </message>
    <message>
        <source>What the boundary requires</source>
        <translation type="unfinished">Qué exige el contorno</translation>
    </message>
    <message>
        <source>Does not apply to door %1</source>
        <translation type="unfinished">No se aplica a la puerta %1</translation>
    </message>
    <message>
        <source>What was %1 measured with?</source>
        <translation type="unfinished">¿Con qué se midió %1?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">con más de 1 grado, los tiempos de cierre son solo recomendación</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Desglose de la incertidumbre</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Historial de tiempos</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Puertas de este recorrido</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Anotar…</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 de retraso, dispersión %2, de %3 intentos</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Usar estos valores</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation type="unfinished">Repetir</translation>
    </message>
    <message>
        <source>too few usable trials: published figures apply</source>
        <translation type="unfinished">muy pocos intentos útiles: se aplican los valores publicados</translation>
    </message>
    <message>
        <source>; %1 too early, not counted</source>
        <translation type="unfinished">; %1 prematuros, no cuentan</translation>
    </message>
    <message>
        <source>; %1 far out, not counted</source>
        <translation type="unfinished">; %1 muy desviados, no cuentan</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and has ± %3; with the published figures it has ± %4.</source>
        <translation type="unfinished">Un tiempo de cierre se corrige en %1%2 y tiene ± %3; con los valores publicados tiene ± %4.</translation>
    </message>
    <message>
        <source>Your reaction time on this tablet</source>
        <translation type="unfinished">Su tiempo de reacción en esta tableta</translation>
    </message>
    <message>
        <source>no trials: published figures apply</source>
        <translation type="unfinished">sin intentos: se aplican los valores publicados</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the uncertainty. Worth repeating every %1 months.</source>
        <translation type="unfinished">Se usa desde ahora en los ensayos que usted cronometre en esta tableta. El retraso propio de la tableta, que una puerta real no tiene, queda en la incertidumbre. Conviene repetirla cada %1 meses.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Probar el sonido</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Empezar sin sonido</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Empezar ›</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Intento %1 de %2</translation>
    </message>
    <message>
        <source>How quick and steady are you?</source>
        <translation type="unfinished">¿Qué rapidez y regularidad tiene usted?</translation>
    </message>
    <message>
        <source>How the drill works</source>
        <translation type="unfinished">Cómo es la prueba de reacción</translation>
    </message>
    <message>
        <source>Twenty times, a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you would at a door.</source>
        <translation type="unfinished">Veinte veces, una hoja empieza a moverse sin aviso y luego se cierra. Toque la tecla en cuanto empieza, y otra vez en cuanto queda cerrada. Con sonido, antes suena una alarma: toque la tecla al oírla. Dura unos dos minutos. Sostenga la tableta como lo haría ante una puerta.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then replace the published figures for every run that you time on this tablet. If you leave before the end, nothing is kept.</source>
        <translation type="unfinished">Su propio retraso y su dispersión sustituyen luego los valores publicados en cada ensayo que cronometre en esta tableta. Si sale antes del final, no se guarda nada.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Prueba de reacción</translation>
    </message>
    <message>
        <source>Turn the sound up until you hear it clearly above the ship&apos;s noise.</source>
        <translation type="unfinished">Suba el sonido hasta oírlo con claridad por encima del ruido del buque.</translation>
    </message>
    <message>
        <source>No working loudspeaker on this tablet: for what is heard, the published figures apply.</source>
        <translation type="unfinished">Esta tableta no tiene altavoz que funcione: para lo que se oye se aplican los valores publicados.</translation>
    </message>
    <message>
        <source>That one was missed: it will be repeated.</source>
        <translation type="unfinished">Ese no se marcó: se repetirá.</translation>
    </message>
    <message>
        <source>Loud enough: begin ›</source>
        <translation type="unfinished">Se oye bien: empezar ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Close-up drawing of the leaf</source>
        <translation type="unfinished">Dibujo en detalle de la hoja</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">Practicar ›</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">mejor %1 %</translation>
    </message>
    <message>
        <source>Unlock ›</source>
        <translation type="unfinished">Desbloquear ›</translation>
    </message>
    <message>
        <source>locked by the instructor</source>
        <translation type="unfinished">bloqueado por el instructor</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FigureLabel</name>
    <message>
        <source>no figure yet</source>
        <translation type="unfinished">aún sin cifra</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FirstScreen</name>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished">Más grande</translation>
    </message>
    <message>
        <source>Twice as large</source>
        <translation type="unfinished">El doble</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Sin guantes</translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished">Guantes</translation>
    </message>
    <message>
        <source>Text and keys</source>
        <translation type="unfinished">Texto y teclas</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished">Manos</translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Ver el buque de muestra</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">Practicar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 de %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Probar puertas que pueden aplastar</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Anterior</translation>
    </message>
    <message>
        <source>A released door moves by itself. Never walk through it. Keep hands and feet off edges and pockets. Post a lookout on each side of every door. Anyone may stop the test.</source>
        <translation type="unfinished">Una puerta accionada se mueve sola. Nunca pase por ella. Mantenga manos y pies lejos de los bordes y de los cajones. Ponga un vigilante a cada lado de cada puerta. Cualquiera puede parar la prueba.</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks only what applies to this ship and kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround le guía de puerta en puerta, pregunta solo lo que se aplica a este buque y tipo de puerta, cronometra el cierre y lo califica.</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Reglas que prevalecen</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan, local rules and the judgement of its users take precedence over this program. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">La Administración del Estado de abanderamiento, el plano aprobado de lucha contra incendios, las reglas locales y el criterio de sus usuarios prevalecen sobre este programa. Una calificación es una ayuda, no un certificado.</translation>
    </message>
    <message>
        <source>It follows the texts of 2015. Later amendments have not been checked.</source>
        <translation type="unfinished">Sigue los textos de 2015. Las enmiendas posteriores no se han comprobado.</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation type="unfinished">Normal</translation>
    </message>
    <message>
        <source>Start here</source>
        <translation type="unfinished">Empiece aquí</translation>
    </message>
    <message>
        <source>A fictitious ferry with a walkdown under way, to try every screen.</source>
        <translation type="unfinished">Un transbordador ficticio con un recorrido en curso, para probar cada pantalla.</translation>
    </message>
    <message>
        <source>Simulated doors that move, fail and hide faults, with a debrief.</source>
        <translation type="unfinished">Puertas simuladas que se mueven, fallan y ocultan defectos, con un repaso.</translation>
    </message>
    <message>
        <source>Import my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Importar el registro de mi buque (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every error in it is listed.</source>
        <translation type="unfinished">Cubiertas, zonas, contornos y puertas de una hoja de cálculo; se enumera cada error que tenga.</translation>
    </message>
    <message>
        <source>fire door walkdowns</source>
        <translation type="unfinished">recorridos de puertas contraincendios</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpKey</name>
    <message>
        <source>What to look at: %1</source>
        <translation type="unfinished">En qué fijarse: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpPanelView</name>
    <message>
        <source>Drawing. %1</source>
        <translation type="unfinished">Dibujo. %1</translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation type="unfinished">Bien: %1</translation>
    </message>
    <message>
        <source>Bad: %1</source>
        <translation type="unfinished">Mal: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeScreen</name>
    <message>
        <source>Zones</source>
        <translation type="unfinished">Zonas</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Buque</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Reglas</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Este buque</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Reglamento ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. Prevalecen la Administración, los planos aprobados y las reglas locales. No es para naves de gran velocidad ni puertas estancas como tales.</translation>
    </message>
    <message>
        <source>Boundary integrity</source>
        <translation type="unfinished">Integridad de contornos</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Puertas</translation>
    </message>
    <message>
        <source>Doors and walkdown</source>
        <translation type="unfinished">Puertas y recorrido</translation>
    </message>
    <message>
        <source>Rules applied</source>
        <translation type="unfinished">Reglas aplicadas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>Plan it ›</source>
        <translation type="unfinished">Planificar ›</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation type="unfinished">Hecho hoy</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Anotar</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Empezar ›</translation>
    </message>
    <message>
        <source>last %1, worth repeating after %2</source>
        <translation type="unfinished">último el %1, conviene repetirlo después del %2</translation>
    </message>
    <message>
        <source>End this walkdown?</source>
        <translation type="unfinished">¿Terminar este recorrido?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Todas las puertas están hechas.</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Terminar el recorrido</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
    <message>
        <source>Walkdowns of this vessel</source>
        <translation type="unfinished">Recorridos de este buque</translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished">Informe</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Buques en esta tableta</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Abrir</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>%1, deck %2.</source>
        <translation type="unfinished">%1, cubierta %2.</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Aún no ha empezado ningún recorrido. Inicie uno para probarla.</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">Lo he visto</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Texts ›</source>
        <translation type="unfinished">Textos ›</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation type="unfinished">Antes: %1</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation type="unfinished">Ahora: %1</translation>
    </message>
    <message>
        <source>Door %1 ›</source>
        <translation type="unfinished">Puerta %1 ›</translation>
    </message>
    <message>
        <source>Graded differently since the rules changed</source>
        <translation type="unfinished">Con otra calificación desde que cambiaron las reglas</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">No guardado</translation>
    </message>
    <message>
        <source>The former rules can no longer be read, so it is not known which doors are graded differently.</source>
        <translation type="unfinished">Las reglas anteriores ya no se pueden leer, así que no se sabe qué puertas se califican de otro modo.</translation>
    </message>
    <message>
        <source>No record has changed, and an earlier report keeps the edition it was made under.</source>
        <translation type="unfinished">No ha cambiado nada registrado, y un informe anterior conserva la edición con que se hizo.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Qué vence</translation>
    </message>
    <message>
        <source>Intervals of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration take precedence; no grace period is stated.</source>
        <translation type="unfinished">Intervalos de MSC.1/Circ.1432. Prevalecen el plan de la compañía y la Administración; no se indica ningún plazo de gracia.</translation>
    </message>
    <message>
        <source>not known yet: enter its expiry date</source>
        <translation type="unfinished">aún no se conoce: anote su fecha de caducidad</translation>
    </message>
    <message>
        <source>Timing drill: %1</source>
        <translation type="unfinished">Prueba de reacción: %1</translation>
    </message>
    <message>
        <source>never done on this tablet: published figures apply</source>
        <translation type="unfinished">nunca hecha en esta tableta: se aplican los valores publicados</translation>
    </message>
    <message>
        <source>When does the safety certificate expire?</source>
        <translation type="unfinished">¿Cuándo caduca el certificado de seguridad?</translation>
    </message>
    <message>
        <source>%1 of %2 not done. What was not tested is reported as untested.</source>
        <translation type="unfinished">%1 de %2 sin hacer. Lo que no se probó figura en el informe como sin probar.</translation>
    </message>
    <message>
        <source>Something has not been saved yet. Save it first, then end the walkdown.</source>
        <translation type="unfinished">Algo no se ha guardado aún. Guárdelo primero y luego termine el recorrido.</translation>
    </message>
    <message>
        <source>Carry on</source>
        <translation type="unfinished">Seguir</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Puertas de este recorrido</translation>
    </message>
    <message>
        <source>There is no other vessel on this tablet.</source>
        <translation type="unfinished">No hay otro buque en esta tableta.</translation>
    </message>
    <message>
        <source>Import a register (CSV)</source>
        <translation type="unfinished">Importar un registro (CSV)</translation>
    </message>
    <message>
        <source>It is not in the walkdown shown. Plan a walkdown that includes it.</source>
        <translation type="unfinished">No está en el recorrido mostrado. Planifique un recorrido que la incluya.</translation>
    </message>
    <message>
        <source>An ended walkdown takes no more entries. Until it is signed, you can take back the end with Undo.</source>
        <translation type="unfinished">Un recorrido terminado no admite más entradas. Hasta que se firme, usted puede retirar el fin con Deshacer.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::InstrumentKeys</name>
    <message>
        <source>Rule</source>
        <translation type="unfinished">Regla</translation>
    </message>
    <message>
        <source>Caliper</source>
        <translation type="unfinished">Calibre</translation>
    </message>
    <message>
        <source>Gap gauge</source>
        <translation type="unfinished">Galga</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation type="unfinished">Cinta</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemPanel</name>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished">%1: hallada por %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1: rectificada por %2: %3</translation>
    </message>
    <message>
        <source>%1: retest passed, by %2</source>
        <translation type="unfinished">%1: nueva prueba superada, por %2</translation>
    </message>
    <message>
        <source>%1: retest FAILED, by %2</source>
        <translation type="unfinished">%1: nueva prueba FALLIDA, por %2</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <translation type="unfinished">%1: retirada por %2: %3</translation>
    </message>
    <message>
        <source>action %1</source>
        <translation type="unfinished">medida %1</translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished">Fijar</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Vence</translation>
    </message>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished">nada anotado</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Supervisión del Estado rector (ERP)</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Fotos</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">aún ninguna</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation type="unfinished">%1 tomadas</translation>
    </message>
    <message>
        <source>Take one</source>
        <translation type="unfinished">Tomar una</translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Mostrar ›</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Historial ›</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Rectificada…</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Retirar…</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Back to the open items</source>
        <translation type="unfinished">Volver a los pendientes</translation>
    </message>
    <message>
        <source>What is wrong, and what was done</source>
        <translation type="unfinished">Qué está mal, y qué se hizo</translation>
    </message>
    <message>
        <source>Until it is rectified, %1.</source>
        <translation type="unfinished">Hasta que esté rectificada, %1.</translation>
    </message>
    <message>
        <source>Say who you are before you change an item.</source>
        <translation type="unfinished">Diga quién es antes de cambiar un pendiente.</translation>
    </message>
    <message>
        <source>%1: retest requested by %2</source>
        <translation type="unfinished">%1: nueva prueba pedida por %2</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Asignada a</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Medida provisional</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">ninguna registrada</translation>
    </message>
    <message>
        <source>View the photographs</source>
        <translation type="unfinished">Ver las fotos</translation>
    </message>
    <message>
        <source>Earlier results of this door</source>
        <translation type="unfinished">Resultados anteriores de esta puerta</translation>
    </message>
    <message>
        <source>Request retest</source>
        <translation type="unfinished">Pedir nueva prueba</translation>
    </message>
    <message>
        <source>Reinstate</source>
        <translation type="unfinished">Restablecer</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation type="unfinished">Nada seleccionado</translation>
    </message>
    <message>
        <source>Checks that are not in order become items once written up.</source>
        <translation type="unfinished">Las comprobaciones que no están en orden pasan a pendientes al anotarlas.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Código de medida, como lo escribió el funcionario (listas publicadas; deficiencia %1)</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">hoy</translation>
    </message>
    <message>
        <source>in 3 days</source>
        <translation type="unfinished">en 3 días</translation>
    </message>
    <message>
        <source>in 7 days</source>
        <translation type="unfinished">en 7 días</translation>
    </message>
    <message>
        <source>in 14 days</source>
        <translation type="unfinished">en 14 días</translation>
    </message>
    <message>
        <source>in one month</source>
        <translation type="unfinished">en un mes</translation>
    </message>
    <message>
        <source>in three months</source>
        <translation type="unfinished">en tres meses</translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished">¿Qué se hizo en la puerta %1?</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">¿Por qué se retira?</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Elegir</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Supervisión del Estado rector (ERP)</translation>
    </message>
    <message>
        <source>Ground for detention? Recorded separately: regimes differ in which code shows it.</source>
        <translation type="unfinished">¿Motivo de detención? Se registra aparte: los regímenes difieren en qué código lo muestra.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished">Guardar</translation>
    </message>
    <message>
        <source>Due date</source>
        <translation type="unfinished">Vencimiento</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Medida provisional</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Asignada a</translation>
    </message>
    <message>
        <source>Who rectified it?</source>
        <translation type="unfinished">¿Quién la rectificó?</translation>
    </message>
    <message>
        <source>Whoever rectifies cannot retest: the item closes when someone else finds it in order.</source>
        <translation type="unfinished">Quien rectifica no puede hacer la nueva prueba: el pendiente se cierra cuando otra persona lo halla en orden.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Keypad</name>
    <message>
        <source>Decimal point</source>
        <translation type="unfinished">Signo decimal</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Borrar</translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation type="unfinished">Borrar la última cifra</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Vaciar</translation>
    </message>
    <message>
        <source>Clear the figure</source>
        <translation type="unfinished">Vaciar el valor</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Aceptar</translation>
    </message>
    <message>
        <source>Enter the figure</source>
        <translation type="unfinished">Aceptar el valor</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation type="unfinished">nada introducido</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Legend</name>
    <message>
        <source>other boundaries</source>
        <translation type="unfinished">otros contornos</translation>
    </message>
    <message>
        <source>bulkhead open</source>
        <translation type="unfinished">mamparo abierto</translation>
    </message>
    <message>
        <source>not yet proven</source>
        <translation type="unfinished">aún sin demostrar</translation>
    </message>
    <message>
        <source>several doors</source>
        <translation type="unfinished">varias puertas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::LiveScene</name>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Despejar trayectoria</translation>
    </message>
    <message>
        <source>ALARM</source>
        <translation type="unfinished">ALARMA</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
</context>
<context>
    <name>latchround::ui::LongJob</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished">Cancelar</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished">Parando…</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Parado</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkKey</name>
    <message>
        <source>Mark</source>
        <translation type="unfinished">Marcar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkRow</name>
    <message>
        <source>no such event</source>
        <translation type="unfinished">no hubo tal suceso</translation>
    </message>
    <message>
        <source>Door %1, %2: %3</source>
        <translation type="unfinished">Puerta %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::NotSavedBanner</name>
    <message>
        <source>Save again</source>
        <translation type="unfinished">Guardar otra vez</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">NO GUARDADO (%1)</translation>
    </message>
    <message>
        <source>Put aside…</source>
        <translation type="unfinished">Apartar…</translation>
    </message>
    <message>
        <source>Leave it waiting</source>
        <translation type="unfinished">Dejarlo en espera</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation type="unfinished">Apartar</translation>
    </message>
    <message>
        <source>It is kept in %1</source>
        <translation type="unfinished">Queda guardado en %1</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">No se apartó</translation>
    </message>
    <message>
        <source>View only: another program is writing to this register (%1).</source>
        <translation type="unfinished">Solo lectura: otro programa está escribiendo en este registro (%1).</translation>
    </message>
    <message>
        <source>Put the refused entries aside?</source>
        <translation type="unfinished">¿Apartar las entradas rechazadas?</translation>
    </message>
    <message>
        <source>The register does not accept this. Once put aside, it is kept in a file beside the register and does not count. Record again what still applies.</source>
        <translation type="unfinished">El registro no admite esto. Una vez apartado, se guarda en un archivo junto al registro y no cuenta. Registre de nuevo lo que aún se aplique.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Needs attention</source>
        <translation type="unfinished">Requiere atención</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemsCard</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
    <message>
        <source>oldest %1 days</source>
        <translation type="unfinished">el más antiguo, %1 días</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 vencidos</translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished">Los %1 pendientes ›</translation>
    </message>
    <message>
        <source>None yet: no door has been tested.</source>
        <translation type="unfinished">Ninguno aún: no se ha probado ninguna puerta.</translation>
    </message>
    <message>
        <source>None: no door is unsatisfactory or undecided.</source>
        <translation type="unfinished">Ninguno: no hay puertas no satisfactorias ni por resolver.</translation>
    </message>
    <message>
        <source>1 needs attention</source>
        <translation type="unfinished">1 requiere atención</translation>
    </message>
    <message>
        <source>%1 need attention</source>
        <translation type="unfinished">%1 requieren atención</translation>
    </message>
    <message>
        <source>1 open item ›</source>
        <translation type="unfinished">1 pendiente ›</translation>
    </message>
    <message>
        <source>Open items ›</source>
        <translation type="unfinished">Pendientes ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PartKeys</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Puertas</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notas</translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Resultado: %1. Pulse para ver los motivos</translation>
    </message>
    <message>
        <source>Doors in this boundary</source>
        <translation type="unfinished">Puertas de este contorno</translation>
    </message>
    <message>
        <source>Photograph, note, could not test, from paper</source>
        <translation type="unfinished">Foto, nota, no se pudo probar, del papel</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PasswordForm</name>
    <message>
        <source>The instructor has locked this exercise. Enter the password to open it.</source>
        <translation type="unfinished">El instructor ha bloqueado este ejercicio. Introduzca la contraseña para abrirlo.</translation>
    </message>
    <message>
        <source>password</source>
        <translation type="unfinished">contraseña</translation>
    </message>
    <message>
        <source>Password</source>
        <translation type="unfinished">Contraseña</translation>
    </message>
    <message>
        <source>Show password</source>
        <translation type="unfinished">Mostrar contraseña</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Abrir el ejercicio ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PersonForm</name>
    <message>
        <source>name</source>
        <translation type="unfinished">nombre</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nombre</translation>
    </message>
    <message>
        <source>Type the name, then touch this person&apos;s role.</source>
        <translation type="unfinished">Escriba el nombre y luego toque el cargo de esta persona.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhotographSheets</name>
    <message>
        <source>Photograph of door %1</source>
        <translation type="unfinished">Foto de la puerta %1</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation type="unfinished">Con la cámara</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished">De un archivo</translation>
    </message>
    <message>
        <source>No photograph</source>
        <translation type="unfinished">Sin foto</translation>
    </message>
    <message>
        <source>What does the photograph show?</source>
        <translation type="unfinished">¿Qué muestra la foto?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhrasePicker</name>
    <message>
        <source>Use</source>
        <translation type="unfinished">Usar</translation>
    </message>
    <message>
        <source>Phrases</source>
        <translation type="unfinished">Frases</translation>
    </message>
    <message>
        <source>own words</source>
        <translation type="unfinished">otro texto</translation>
    </message>
    <message>
        <source>Own words</source>
        <translation type="unfinished">Otro texto</translation>
    </message>
    <message>
        <source>Use own words</source>
        <translation type="unfinished">Usar mi texto</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PictureView</name>
    <message>
        <source>The picture is not on this tablet: import it from the tablet that took it.</source>
        <translation type="unfinished">La imagen no está en esta tableta: impórtela de la tableta que la tomó.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1: %2, %3 a pie. Primera: %4.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Añadir persona</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Escora del buque</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Cuántas de estas</translation>
    </message>
    <message>
        <source>Which doors</source>
        <translation type="unfinished">Qué puertas</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished">%1°</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Todas</translation>
    </message>
    <message>
        <source>Quarterly set</source>
        <translation type="unfinished">Serie trimestral</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Cubierta %1</translation>
    </message>
    <message>
        <source>One deck…</source>
        <translation type="unfinished">Una cubierta…</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation type="unfinished">Zona %1</translation>
    </message>
    <message>
        <source>One zone…</source>
        <translation type="unfinished">Una zona…</translation>
    </message>
    <message>
        <source>Failed last time</source>
        <translation type="unfinished">Fallaron antes</translation>
    </message>
    <message>
        <source>To retest</source>
        <translation type="unfinished">Nueva prueba</translation>
    </message>
    <message>
        <source> %1 shorter than in number order.</source>
        <translation type="unfinished"> %1 menos que por orden de número.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 confidence that %3</source>
        <translation type="unfinished">si ninguna de las %1 falla: %2 de confianza en que %3</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Quién registra</translation>
    </message>
    <message>
        <source>Accompanied by</source>
        <translation type="unfinished">Quién acompaña</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">Finalidad</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">con más de 1 grado, los tiempos de cierre son solo recomendación</translation>
    </message>
    <message>
        <source>Safety brief ›</source>
        <translation type="unfinished">Charla de seguridad ›</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todo</translation>
    </message>
    <message>
        <source>or a random sample, and what it proves</source>
        <translation type="unfinished">o una muestra al azar, y qué demuestra</translation>
    </message>
    <message>
        <source>%1 drawn</source>
        <translation type="unfinished">%1 elegidas</translation>
    </message>
    <message>
        <source>No doors in this scope.</source>
        <translation type="unfinished">No hay puertas en este alcance.</translation>
    </message>
    <message>
        <source>First choose who is recording.</source>
        <translation type="unfinished">Elija primero quién registra.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Planificar un recorrido</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Charla</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Charla de seguridad</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanSheets</name>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Añadir una persona</translation>
    </message>
    <message>
        <source>Which deck?</source>
        <translation type="unfinished">¿Qué cubierta?</translation>
    </message>
    <message>
        <source>Which zone?</source>
        <translation type="unfinished">¿Qué zona?</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">cubierta %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">cubierta %1, %2</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Escora del buque, grados</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">grados</translation>
    </message>
    <message>
        <source>How many of these %1?</source>
        <translation type="unfinished">¿Cuántas de estas %1?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">con más de 1 grado, los tiempos de cierre son solo recomendación</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todo</translation>
    </message>
    <message>
        <source>%1 at random: %2 confidence that at most %3 are defective</source>
        <translation type="unfinished">%1 al azar: %2 de confianza en que como máximo %3 son defectuosas</translation>
    </message>
    <message>
        <source>The result is valid only if no door of the sample fails. The doors are spread over zones and kinds and drawn at random; hand-picked doors prove nothing about the rest. A sample never replaces a test that the flag or the rules require of every door.</source>
        <translation type="unfinished">El resultado solo vale si ninguna puerta de la muestra falla. Las puertas se reparten por zonas y tipos y se eligen al azar; las elegidas a mano no demuestran nada del resto. Una muestra nunca sustituye una prueba que la bandera o las reglas exijan en cada puerta.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeCover</name>
    <message>
        <source>PRACTICE</source>
        <translation type="unfinished">PRÁCTICA</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeFrame</name>
    <message>
        <source>At the door</source>
        <translation type="unfinished">En la puerta</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Terminar y repasar</translation>
    </message>
    <message>
        <source>PRACTICE: simulated doors, nothing here is a record</source>
        <translation type="unfinished">PRÁCTICA: puertas simuladas, nada de esto queda registrado</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeOffer</name>
    <message>
        <source>From practice</source>
        <translation type="unfinished">De la práctica</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Usar estos valores</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeScreen</name>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Práctica</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation type="unfinished">Ejercicios</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progreso</translation>
    </message>
    <message>
        <source>Put it aside</source>
        <translation type="unfinished">Apartarlo</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">No se apartó</translation>
    </message>
    <message>
        <source>There is no exercise on this tablet. Import one.</source>
        <translation type="unfinished">No hay ningún ejercicio en esta tableta. Importe uno.</translation>
    </message>
    <message>
        <source>Import an exercise</source>
        <translation type="unfinished">Importar un ejercicio</translation>
    </message>
    <message>
        <source>simulated doors; nothing here is a record</source>
        <translation type="unfinished">puertas simuladas; nada de esto queda registrado</translation>
    </message>
    <message>
        <source>Unfinished exercise</source>
        <translation type="unfinished">Ejercicio sin terminar</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What you recorded is kept; the doors are as they were at the start.</source>
        <translation type="unfinished">%1, iniciado el %2 a las %3. Lo que usted registró se conserva; las puertas están como al principio.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Continuar</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">No importado: un error</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">No importado: %1 errores</translation>
    </message>
    <message>
        <source>Exercise imported</source>
        <translation type="unfinished">Ejercicio importado</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressBar</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1 %</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressCard</name>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progreso</translation>
    </message>
    <message>
        <source>One exercise. </source>
        <translation type="unfinished">Un ejercicio. </translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished">%1 ejercicios. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Personas puestas en peligro: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">sin nombre</translation>
    </message>
    <message>
        <source>No one has practised on this tablet yet. Each finished exercise adds its score and reaction times here.</source>
        <translation type="unfinished">Aún no ha practicado nadie en esta tableta. Cada ejercicio terminado añade aquí su puntuación y sus tiempos de reacción.</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 reported but absent. </source>
        <translation type="unfinished">%1 de %2 defectos hallados, %3 notificados pero inexistentes. </translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressPlot</name>
    <message>
        <source>%1, exam: %2 %</source>
        <translation type="unfinished">%1, examen: %2 %</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished">%1: %2 %</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progreso</translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished">Puntuación de cada ejercicio</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1 %</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarma</translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished">inicio</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">parada</translation>
    </message>
    <message>
        <source>exam pass mark %1 %</source>
        <translation type="unfinished">aprobado del examen: %1 %</translation>
    </message>
    <message>
        <source>Reaction, ms:</source>
        <translation type="unfinished">Reacción, ms:</translation>
    </message>
    <message>
        <source>, %1 %2, scatter %3 ms</source>
        <translation type="unfinished">, %1 %2, dispersión %3 ms</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Readings</name>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReportRow</name>
    <message>
        <source>Report</source>
        <translation type="unfinished">Informe</translation>
    </message>
    <message>
        <source>Report: %1</source>
        <translation type="unfinished">Informe: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewScreen</name>
    <message>
        <source>Compare ›</source>
        <translation type="unfinished">Comparar ›</translation>
    </message>
    <message>
        <source>Hand over ›</source>
        <translation type="unfinished">Traspasar ›</translation>
    </message>
    <message>
        <source>Sign ›</source>
        <translation type="unfinished">Firmar ›</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
    </message>
    <message>
        <source>1 open</source>
        <translation type="unfinished">1 pendiente</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation type="unfinished">%1 pendientes</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">¿Quién es usted?</translation>
    </message>
    <message>
        <source>Write up (%1)</source>
        <translation type="unfinished">Anotar (%1)</translation>
    </message>
    <message>
        <source>Plan retest (%1)</source>
        <translation type="unfinished">Nueva prueba (%1)</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished">Solo abiertas</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Vence</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation type="unfinished">Zona</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished">Edad</translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Persona</translation>
    </message>
    <message>
        <source>‹ Open items</source>
        <translation type="unfinished">‹ Pendientes</translation>
    </message>
    <message>
        <source>Open it ›</source>
        <translation type="unfinished">Abrirlo ›</translation>
    </message>
    <message>
        <source>Documents ›</source>
        <translation type="unfinished">Documentos ›</translation>
    </message>
    <message>
        <source>Who, documents, handover ›</source>
        <translation type="unfinished">Quién, documentos, traspaso ›</translation>
    </message>
    <message>
        <source>Who, documents ›</source>
        <translation type="unfinished">Quién, documentos ›</translation>
    </message>
    <message>
        <source>Nothing is open yet. %1 checks are not in order and not written up.</source>
        <translation type="unfinished">Aún no hay nada pendiente. %1 comprobaciones no están en orden y no se han anotado.</translation>
    </message>
    <message>
        <source>Recorded by: %1</source>
        <translation type="unfinished">Registrado por: %1</translation>
    </message>
    <message>
        <source>Conflicts (%1)</source>
        <translation type="unfinished">Conflictos (%1)</translation>
    </message>
    <message>
        <source>Show closed (%1)</source>
        <translation type="unfinished">Ver cerradas (%1)</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewSheets</name>
    <message>
        <source>New: not in order now</source>
        <translation type="unfinished">Nuevo: ahora no está en orden</translation>
    </message>
    <message>
        <source>Worse than before</source>
        <translation type="unfinished">Peor que antes</translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished">Mejor que antes</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Dos recorridos, lado a lado</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished">%1
%2</translation>
    </message>
    <message>
        <source>What has changed</source>
        <translation type="unfinished">Qué ha cambiado</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished">Anterior</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Posterior</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation type="unfinished">Decidir</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>%1, %2 %3:
%4</source>
        <translation type="unfinished">%1, %2 %3:
%4</translation>
    </message>
    <message>
        <source>Why does it stand?</source>
        <translation type="unfinished">¿Por qué vale?</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">La clave de este equipo</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Mostrar</translation>
    </message>
    <message>
        <source>Its key: 64 digits and letters a to f, as that device shows them.</source>
        <translation type="unfinished">Su clave: 64 cifras y letras de la a a la f, como las muestra ese equipo.</translation>
    </message>
    <message>
        <source>Key of the receiving device</source>
        <translation type="unfinished">Clave del equipo receptor</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished">De %1</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, como %2, %3 %4: </translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Lista de deficiencias</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Lista de trabajos</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Ficha de puerta</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Informe de reconocimiento</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulario en blanco</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Nada que firmar aún</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Firmar un recorrido</translation>
    </message>
    <message>
        <source>%1 has signed it.</source>
        <translation type="unfinished">%1 lo ha firmado.</translation>
    </message>
    <message>
        <source>Sign as %1: %2</source>
        <translation type="unfinished">Firmar como %1: %2</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished">Sin firmar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Añadir persona</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Anotar…</translation>
    </message>
    <message>
        <source>%1 (found again)</source>
        <translation type="unfinished">%1 (hallada de nuevo)</translation>
    </message>
    <message>
        <source>Write it up in these words</source>
        <translation type="unfinished">Anotarla con estas palabras</translation>
    </message>
    <message>
        <source>Write up all %1 in these words</source>
        <translation type="unfinished">Anotar las %1 con estas palabras</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished">%1, %2: %3</translation>
    </message>
    <message>
        <source>, closing %1</source>
        <translation type="unfinished">, cierre %1</translation>
    </message>
    <message>
        <source>Chart ›</source>
        <translation type="unfinished">Gráfico ›</translation>
    </message>
    <message>
        <source>Photographs of door %1</source>
        <translation type="unfinished">Fotos de la puerta %1</translation>
    </message>
    <message>
        <source>Earlier: %1</source>
        <translation type="unfinished">Antes: %1</translation>
    </message>
    <message>
        <source>Later: %1</source>
        <translation type="unfinished">Después: %1</translation>
    </message>
    <message>
        <source>More walkdowns, earlier</source>
        <translation type="unfinished">Más recorridos, anteriores</translation>
    </message>
    <message>
        <source>More walkdowns, later</source>
        <translation type="unfinished">Más recorridos, posteriores</translation>
    </message>
    <message>
        <source>Being saved</source>
        <translation type="unfinished">Se está guardando</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Reglamento</translation>
    </message>
    <message>
        <source>Cleared: in order again</source>
        <translation type="unfinished">Resuelto: otra vez en orden</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation type="unfinished">sin probar</translation>
    </message>
    <message>
        <source>There are not two walkdowns to compare yet.</source>
        <translation type="unfinished">Aún no hay dos recorridos que comparar.</translation>
    </message>
    <message>
        <source>%1 · %2: %3, was %4</source>
        <translation type="unfinished">%1 · %2: %3, antes %4</translation>
    </message>
    <message>
        <source>Nothing tested in both walkdowns has changed by more than the uncertainty.</source>
        <translation type="unfinished">Nada de lo probado en ambos recorridos ha cambiado más que la incertidumbre.</translation>
    </message>
    <message>
        <source>Conflicting entries: choose which stands; both stay on record</source>
        <translation type="unfinished">Entradas contradictorias: elija cuál vale; ambas quedan registradas</translation>
    </message>
    <message>
        <source>No conflicting entries.</source>
        <translation type="unfinished">No hay entradas contradictorias.</translation>
    </message>
    <message>
        <source>Which entry stands? The later one is shown until you decide.</source>
        <translation type="unfinished">¿Qué entrada vale? Se muestra la posterior hasta que usted decida.</translation>
    </message>
    <message>
        <source>Handover between tablets and the bridge</source>
        <translation type="unfinished">Traspaso entre tabletas y con el puente</translation>
    </message>
    <message>
        <source>Export everything to a file</source>
        <translation type="unfinished">Exportar todo a un archivo</translation>
    </message>
    <message>
        <source>entries, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">entradas, fotos y disposición, firmadas por este equipo</translation>
    </message>
    <message>
        <source>Export</source>
        <translation type="unfinished">Exportar</translation>
    </message>
    <message>
        <source>only that device can open it; you need its key</source>
        <translation type="unfinished">solo ese equipo puede abrirlo; usted necesita su clave</translation>
    </message>
    <message>
        <source>Import another device&apos;s file</source>
        <translation type="unfinished">Importar el archivo de otro equipo</translation>
    </message>
    <message>
        <source>it is checked first; nothing already here changes</source>
        <translation type="unfinished">se comprueba antes; nada de lo que ya hay aquí cambia</translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished">Importar</translation>
    </message>
    <message>
        <source>Not exported</source>
        <translation type="unfinished">No exportado</translation>
    </message>
    <message>
        <source>Exporting everything to a file</source>
        <translation type="unfinished">Exportando todo a un archivo</translation>
    </message>
    <message>
        <source>No file was made. Nothing was handed over.</source>
        <translation type="unfinished">No se ha creado ningún archivo. No se ha traspasado nada.</translation>
    </message>
    <message>
        <source>Exported</source>
        <translation type="unfinished">Exportado</translation>
    </message>
    <message>
        <source>The file is at %1</source>
        <translation type="unfinished">El archivo está en %1</translation>
    </message>
    <message>
        <source>Checking the file</source>
        <translation type="unfinished">Comprobando el archivo</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation type="unfinished">No se ha importado nada.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">No importado</translation>
    </message>
    <message>
        <source>New in this file</source>
        <translation type="unfinished">Nuevo en este archivo</translation>
    </message>
    <message>
        <source>Nothing new.</source>
        <translation type="unfinished">Nada nuevo.</translation>
    </message>
    <message>
        <source>The sending device is not known here yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">El equipo que lo envía aún no se conoce aquí. Pida a quien le dio el archivo que lea en voz alta la huella de su clave. Debe ser:
%1</translation>
    </message>
    <message>
        <source>Fingerprint matches: accept and import</source>
        <translation type="unfinished">La huella coincide: aceptar e importar</translation>
    </message>
    <message>
        <source>Do not import</source>
        <translation type="unfinished">No importar</translation>
    </message>
    <message>
        <source>Importing the file</source>
        <translation type="unfinished">Importando el archivo</translation>
    </message>
    <message>
        <source>Nothing was imported. Everything here is as it was.</source>
        <translation type="unfinished">No se ha importado nada. Aquí todo está como estaba.</translation>
    </message>
    <message>
        <source>NOT VALID: %1</source>
        <translation type="unfinished">NO VÁLIDA: %1</translation>
    </message>
    <message>
        <source>%1 entries, unchanged</source>
        <translation type="unfinished">%1 entradas, sin cambios</translation>
    </message>
    <message>
        <source>; %1 came later and are not covered</source>
        <translation type="unfinished">; %1 llegaron después y no están cubiertas</translation>
    </message>
    <message>
        <source>Documents, as PDF</source>
        <translation type="unfinished">Documentos, en PDF</translation>
    </message>
    <message>
        <source>Create</source>
        <translation type="unfinished">Crear</translation>
    </message>
    <message>
        <source>Create: %1</source>
        <translation type="unfinished">Crear: %1</translation>
    </message>
    <message>
        <source>There is no walkdown yet: only the blank form and the rule book can be created.</source>
        <translation type="unfinished">Aún no hay ningún recorrido: solo se pueden crear el formulario en blanco y el reglamento.</translation>
    </message>
    <message>
        <source>for the master: what is open, its effect, interim measures</source>
        <translation type="unfinished">para el capitán: qué está pendiente, su efecto, medidas provisionales</translation>
    </message>
    <message>
        <source>for the crew: by person assigned, with boxes to tick</source>
        <translation type="unfinished">para la tripulación: por persona asignada, con casillas para marcar</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Ficha de puerta: %1</translation>
    </message>
    <message>
        <source>one page: particulars, results, rectifications</source>
        <translation type="unfinished">una página: datos, resultados, rectificaciones</translation>
    </message>
    <message>
        <source>the walkdown shown: every door, every check</source>
        <translation type="unfinished">el recorrido mostrado: cada puerta, cada comprobación</translation>
    </message>
    <message>
        <source>what the tablet asks, to be filled in by hand</source>
        <translation type="unfinished">lo que pregunta la tableta, para rellenar a mano</translation>
    </message>
    <message>
        <source>every requirement with its limit, dates, exemptions and text, and where it applies aboard</source>
        <translation type="unfinished">cada requisito con su límite, fechas, exenciones y texto, y dónde se aplica a bordo</translation>
    </message>
    <message>
        <source>A walkdown can be signed once it has ended.</source>
        <translation type="unfinished">Un recorrido se puede firmar una vez terminado.</translation>
    </message>
    <message>
        <source>No one has signed it yet.</source>
        <translation type="unfinished">No lo ha firmado nadie aún.</translation>
    </message>
    <message>
        <source>A signature covers everything recorded of this walkdown so far, under this device&apos;s key. It is not a qualified electronic signature: sign the paper as well where your Administration requires it.</source>
        <translation type="unfinished">Una firma abarca todo lo registrado hasta ahora en este recorrido, con la clave de este equipo. No es una firma electrónica cualificada: firme también en papel donde su Administración lo exija.</translation>
    </message>
    <message>
        <source>The signature is kept and will be saved automatically in a moment.</source>
        <translation type="unfinished">La firma se conserva y se guardará sola enseguida.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">¿Quién es usted?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Otra persona</translation>
    </message>
    <message>
        <source>Checks not in order and not written up</source>
        <translation type="unfinished">Comprobaciones que no están en orden y no se han anotado</translation>
    </message>
    <message>
        <source>History of door %1</source>
        <translation type="unfinished">Historial de la puerta %1</translation>
    </message>
    <message>
        <source>Walkdowns of this door, latest first</source>
        <translation type="unfinished">Recorridos de esta puerta, primero el último</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Historial de tiempos</translation>
    </message>
    <message>
        <source>Nothing has been recorded for this door yet.</source>
        <translation type="unfinished">Aún no hay nada registrado de esta puerta.</translation>
    </message>
    <message>
        <source>Language of the document</source>
        <translation type="unfinished">Idioma del documento</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a translation.</source>
        <translation type="unfinished">Lo que se firma es el registro en inglés. Un documento en otro idioma se marca como traducción.</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a machine translation, not yet checked.</source>
        <translation type="unfinished">Lo que se firma es el registro en inglés. Un documento en otro idioma se marca como traducción automática, aún sin revisar.</translation>
    </message>
    <message>
        <source>Export for one device only</source>
        <translation type="unfinished">Exportar solo para un equipo</translation>
    </message>
    <message>
        <source>for a file that only this device can open</source>
        <translation type="unfinished">para un archivo que solo este equipo puede abrir</translation>
    </message>
    <message>
        <source>Export for which device?</source>
        <translation type="unfinished">¿Exportar para qué equipo?</translation>
    </message>
    <message>
        <source>Export for that device</source>
        <translation type="unfinished">Exportar para ese equipo</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1 a %2 de %3</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 de %3</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation type="unfinished">Página anterior</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished">Página siguiente</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Anterior</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Imprimir ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Imprimir el reglamento</translation>
    </message>
    <message>
        <source>The requirement in full</source>
        <translation type="unfinished">El requisito completo</translation>
    </message>
    <message>
        <source>‹ List</source>
        <translation type="unfinished">‹ Lista</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">palabras o una cita</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Reglamento</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">puerta %1</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todo</translation>
    </message>
    <message>
        <source>No requirement has these words.</source>
        <translation type="unfinished">Ningún requisito contiene estas palabras.</translation>
    </message>
    <message>
        <source>Find requirements by words or citation</source>
        <translation type="unfinished">Buscar requisitos por palabras o por cita</translation>
    </message>
    <message>
        <source>Requirements of the rule book</source>
        <translation type="unfinished">Requisitos del reglamento</translation>
    </message>
    <message>
        <source>Read ›</source>
        <translation type="unfinished">Leer ›</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Este buque</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Esta puerta</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RunResult</name>
    <message>
        <source>closing time</source>
        <translation type="unfinished">tiempo de cierre</translation>
    </message>
    <message>
        <source>closing rate</source>
        <translation type="unfinished">velocidad de cierre</translation>
    </message>
    <message>
        <source>alarm before movement</source>
        <translation type="unfinished">alarma antes del movimiento</translation>
    </message>
    <message>
        <source>alarm after shut</source>
        <translation type="unfinished">alarma tras el cierre</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished">%1 %2: %3</translation>
    </message>
    <message>
        <source>Run again</source>
        <translation type="unfinished">Repetir</translation>
    </message>
    <message>
        <source>Back to the door ›</source>
        <translation type="unfinished">Volver a la puerta ›</translation>
    </message>
    <message>
        <source>Run complete</source>
        <translation type="unfinished">Ensayo completo</translation>
    </message>
    <message>
        <source>Say why ›</source>
        <translation type="unfinished">Decir por qué ›</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">¿Por qué?</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Ambas son correctas</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Retirar «%1»</translation>
    </message>
    <message>
        <source>no alarm marked: %1</source>
        <translation type="unfinished">sin alarma marcada: %1</translation>
    </message>
    <message>
        <source>All runs of this door: %1 %2: %3</source>
        <translation type="unfinished">Todos los ensayos de esta puerta: %1 %2: %3</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart: no leaf moves that fast. Touched by mistake?</source>
        <translation type="unfinished">«%1» y «%2» distan solo %3 s: ninguna hoja se mueve tan deprisa. ¿Toque por error?</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart. One touch too many?</source>
        <translation type="unfinished">«%1» y «%2» distan solo %3 s. ¿Un toque de más?</translation>
    </message>
    <message>
        <source>Yes: void the run</source>
        <translation type="unfinished">Sí: dar por nulo el ensayo</translation>
    </message>
    <message>
        <source>Say “%1” now</source>
        <translation type="unfinished">Diga «%1» YA</translation>
    </message>
    <message>
        <source>Run void</source>
        <translation type="unfinished">Ensayo nulo</translation>
    </message>
    <message>
        <source>Run stopped: recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Ensayo parado: queda registrado, nunca cuenta como medición. ¿Por qué?</translation>
    </message>
    <message>
        <source>Recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Queda registrado, nunca cuenta como medición. ¿Por qué?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneScreen</name>
    <message>
        <source>Other side</source>
        <translation type="unfinished">Otro lado</translation>
    </message>
    <message>
        <source>‹ Whole door</source>
        <translation type="unfinished">‹ Puerta entera</translation>
    </message>
    <message>
        <source>Lift the cover</source>
        <translation type="unfinished">Levantar la tapa</translation>
    </message>
    <message>
        <source>Push the leaf</source>
        <translation type="unfinished">Empujar la hoja</translation>
    </message>
    <message>
        <source>Open it, let go</source>
        <translation type="unfinished">Abrirla y soltar</translation>
    </message>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Despejar trayectoria</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows</source>
        <translation type="unfinished">Preguntar al puesto de control qué muestra su panel</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">lado dos</translation>
    </message>
    <message>
        <source>side one</source>
        <translation type="unfinished">lado uno</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">En la puerta %1</translation>
    </message>
    <message>
        <source>You open it from side two and let go.</source>
        <translation type="unfinished">Usted la abre desde el lado dos y la suelta.</translation>
    </message>
    <message>
        <source>You open it from side one and let go.</source>
        <translation type="unfinished">Usted la abre desde el lado uno y la suelta.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Puerta</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Mirar</translation>
    </message>
    <message>
        <source>The whole door</source>
        <translation type="unfinished">La puerta entera</translation>
    </message>
    <message>
        <source>It is not shut. Time its closing first.</source>
        <translation type="unfinished">No está cerrada. Cronometre antes su cierre.</translation>
    </message>
    <message>
        <source>You push it hard from the other side.</source>
        <translation type="unfinished">Usted la empuja con fuerza desde el otro lado.</translation>
    </message>
    <message>
        <source>The way is clear now.</source>
        <translation type="unfinished">El paso está ahora despejado.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished">Probar</translation>
    </message>
    <message>
        <source>Test and ask</source>
        <translation type="unfinished">Probar y preguntar</translation>
    </message>
    <message>
        <source>Close-up</source>
        <translation type="unfinished">Primer plano</translation>
    </message>
    <message>
        <source>Panel status</source>
        <translation type="unfinished">Estado en panel</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneView</name>
    <message>
        <source>Drawing of a door</source>
        <translation type="unfinished">Dibujo de una puerta</translation>
    </message>
    <message>
        <source>Drawing of door %1, %2, from side %3</source>
        <translation type="unfinished">Dibujo de la puerta %1, %2, desde el lado %3</translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished">dos</translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished">uno</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarma activa</translation>
    </message>
    <message>
        <source>The leaf is moving</source>
        <translation type="unfinished">La hoja se está moviendo</translation>
    </message>
    <message>
        <source>The leaf is shut</source>
        <translation type="unfinished">La hoja está cerrada</translation>
    </message>
    <message>
        <source>The leaf is open</source>
        <translation type="unfinished">La hoja está abierta</translation>
    </message>
    <message>
        <source>The leaf is part open</source>
        <translation type="unfinished">La hoja está abierta en parte</translation>
    </message>
    <message>
        <source>someone is in the opening</source>
        <translation type="unfinished">hay alguien en la abertura</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ScoreCard</name>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>1 person endangered</source>
        <translation type="unfinished">1 persona puesta en peligro</translation>
    </message>
    <message>
        <source>%1 people endangered</source>
        <translation type="unfinished">%1 personas puestas en peligro</translation>
    </message>
    <message>
        <source>Passed: %1 % required</source>
        <translation type="unfinished">Aprobado: se exige un %1 %</translation>
    </message>
    <message>
        <source>Not passed: %1 % required</source>
        <translation type="unfinished">No aprobado: se exige un %1 %</translation>
    </message>
    <message>
        <source>%1 of %2 checks graded correctly</source>
        <translation type="unfinished">%1 de %2 comprobaciones bien calificadas</translation>
    </message>
    <message>
        <source>1 caution falsely confirmed</source>
        <translation type="unfinished">1 precaución confirmada en falso</translation>
    </message>
    <message>
        <source>%1 cautions falsely confirmed</source>
        <translation type="unfinished">%1 precauciones confirmadas en falso</translation>
    </message>
    <message>
        <source>Half for checks graded correctly, half for faults found, out of all that were there or reported. Ten points off for each person endangered and each caution falsely confirmed.</source>
        <translation type="unfinished">La mitad por las comprobaciones bien calificadas y la mitad por los defectos hallados, del total de los que había o se notificaron. Diez puntos menos por cada persona puesta en peligro y por cada precaución confirmada en falso.</translation>
    </message>
    <message>
        <source>Score: %1 per cent</source>
        <translation type="unfinished">Puntuación: %1 por ciento</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 false</source>
        <translation type="unfinished">%1 de %2 defectos hallados, %3 falsos</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Luz</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Día</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Ocaso</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Noche</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Tamaño</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished">100 %</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation type="unfinished">150 %</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation type="unfinished">200 %</translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished">Guantes</translation>
    </message>
    <message>
        <source>Larger keys, further apart.</source>
        <translation type="unfinished">Teclas más grandes y separadas.</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Sin guantes</translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished">Al tomar una marca</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Unidades</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished">Métricas</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished">De EE. UU.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Idioma</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Elegir</translation>
    </message>
    <message>
        <source>Times and limits</source>
        <translation type="unfinished">Tiempos y límites</translation>
    </message>
    <message>
        <source>When a figure passes</source>
        <translation type="unfinished">Cuándo aprueba un valor</translation>
    </message>
    <message>
        <source>Rules of this vessel</source>
        <translation type="unfinished">Reglas de este buque</translation>
    </message>
    <message>
        <source>Night keeps eyes adapted to a dark bridge.</source>
        <translation type="unfinished">La noche mantiene los ojos adaptados a un puente a oscuras.</translation>
    </message>
    <message>
        <source>Of text and keys; what no longer fits moves to a page of its own.</source>
        <translation type="unfinished">De texto y teclas; lo que ya no cabe pasa a una página propia.</translation>
    </message>
    <message>
        <source>A click and a vibration, where this device has them.</source>
        <translation type="unfinished">Un clic y una vibración, si este equipo los tiene.</translation>
    </message>
    <message>
        <source>Click and vibrate</source>
        <translation type="unfinished">Clic y vibración</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation type="unfinished">Silencio</translation>
    </message>
    <message>
        <source>Limits also keep the unit of the rule text, beside the figure.</source>
        <translation type="unfinished">Los límites conservan también la unidad del texto de la regla, junto al valor.</translation>
    </message>
    <message>
        <source>In a plan, first choose who is recording: times depend on it.</source>
        <translation type="unfinished">En un plan, elija primero quién registra: de ello dependen los tiempos.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Prueba de reacción</translation>
    </message>
    <message>
        <source>Catalogue only; no flag rules added.</source>
        <translation type="unfinished">Solo el catálogo; sin reglas de bandera añadidas.</translation>
    </message>
    <message>
        <source>The rules of %1 take precedence over the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 prevalecen sobre el catálogo.</translation>
    </message>
    <message>
        <source>Import flag rules</source>
        <translation type="unfinished">Importar reglas de bandera</translation>
    </message>
    <message>
        <source>Catalogue only</source>
        <translation type="unfinished">Solo el catálogo</translation>
    </message>
    <message>
        <source>Leaf drawings</source>
        <translation type="unfinished">Dibujos de las hojas</translation>
    </message>
    <message>
        <source>How drawn leaves move as a door closes.</source>
        <translation type="unfinished">Cómo se mueven las hojas dibujadas cuando se cierra una puerta.</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation type="unfinished">Suave</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation type="unfinished">Por pasos</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Sheet</name>
    <message>
        <source>Close</source>
        <translation type="unfinished">Cerrar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SheetPages</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 de %2</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Anterior</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SideKeys</name>
    <message>
        <source>Stop the test</source>
        <translation type="unfinished">Parar la prueba</translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation type="unfinished">Quitar la última marca</translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Marcas</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Quitar</translation>
    </message>
    <message>
        <source>Take back
last mark</source>
        <translation type="unfinished">Quitar
última marca</translation>
    </message>
    <message>
        <source>This run is void: run again</source>
        <translation type="unfinished">Este ensayo es nulo: repetir</translation>
    </message>
    <message>
        <source>Show the side marks</source>
        <translation type="unfinished">Mostrar las marcas laterales</translation>
    </message>
    <message>
        <source>Show take back and void</source>
        <translation type="unfinished">Mostrar quitar y nulo</translation>
    </message>
    <message>
        <source>Void</source>
        <translation type="unfinished">Nulo</translation>
    </message>
    <message>
        <source>Void,
run again</source>
        <translation type="unfinished">Nulo,
repetir</translation>
    </message>
    <message>
        <source>Correct ›</source>
        <translation type="unfinished">Corregir ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Anterior</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StepRows</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished">Medir</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Fuerza de cierre en el borde, con dinamómetro</translation>
    </message>
    <message>
        <source>What does the plate on the door read?</source>
        <translation type="unfinished">¿Qué dice la placa de la puerta?</translation>
    </message>
    <message>
        <source>Read plate</source>
        <translation type="unfinished">Leer placa</translation>
    </message>
    <message>
        <source>Fire tables</source>
        <translation type="unfinished">Tablas</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Accionar %1</translation>
    </message>
    <message>
        <source>Type in</source>
        <translation type="unfinished">Escribir</translation>
    </message>
    <message>
        <source>Time it ›</source>
        <translation type="unfinished">Cronometrar ›</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Contacto con un bloque blando, nunca con la mano</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Escora actual del buque</translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished">Cambiar</translation>
    </message>
    <message>
        <source>not yet measured</source>
        <translation type="unfinished">aún sin medir</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation type="unfinished">aún sin leer</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation type="unfinished">%1 grados</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished">medido %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Escora del buque en esta puerta</translation>
    </message>
    <message>
        <source>What class does the boundary require?</source>
        <translation type="unfinished">¿Qué clase exige el contorno?</translation>
    </message>
    <message>
        <source>Tested by %1, %2 at %3</source>
        <translation type="unfinished">Probado por %1, el %2 a las %3</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">aún sin probar</translation>
    </message>
    <message>
        <source>%1 degrees: over 1 degree, times are advice only</source>
        <translation type="unfinished">%1 grados: con más de 1 grado, los tiempos son solo recomendación</translation>
    </message>
    <message>
        <source>Type y, n or a: yes, no or n/a for the check with the bar.</source>
        <translation type="unfinished">Pulse y, n o a: sí, no o n/p para la comprobación con la barra.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StopwatchScreen</name>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>contact</source>
        <translation type="unfinished">contacto</translation>
    </message>
    <message>
        <source>release %1</source>
        <translation type="unfinished">accionamiento %1</translation>
    </message>
    <message>
        <source> · cautions confirmed by %1</source>
        <translation type="unfinished"> · precauciones confirmadas por %1</translation>
    </message>
    <message>
        <source>Door %1 · run %2</source>
        <translation type="unfinished">Puerta %1 · ensayo %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">No guardado</translation>
    </message>
    <message>
        <source>Alarm before movement</source>
        <translation type="unfinished">Alarma antes del movimiento</translation>
    </message>
    <message>
        <source>Leaf moving</source>
        <translation type="unfinished">Hoja en movimiento</translation>
    </message>
    <message>
        <source> (advice only)</source>
        <translation type="unfinished"> (solo recomendación)</translation>
    </message>
    <message>
        <source>marked: %1. Next: %2</source>
        <translation type="unfinished">marcado: %1. Sigue: %2</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">guardando…</translation>
    </message>
    <message>
        <source>Moves,
no alarm</source>
        <translation type="unfinished">Se mueve,
sin alarma</translation>
    </message>
    <message>
        <source>Late
alarm</source>
        <translation type="unfinished">Alarma
tardía</translation>
    </message>
    <message>
        <source>no marks yet</source>
        <translation type="unfinished">aún sin marcas</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Alarma callada</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TopBar</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Deshacer</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Atrás</translation>
    </message>
    <message>
        <source>%1 of %2 doors</source>
        <translation type="unfinished">%1 de %2 puertas</translation>
    </message>
    <message>
        <source>Undo: nothing to take back</source>
        <translation type="unfinished">Deshacer: no hay nada que deshacer</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Día</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Ocaso</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Noche</translation>
    </message>
    <message>
        <source>Light: %1. Press for the next</source>
        <translation type="unfinished">Luz: %1. Pulse para la siguiente</translation>
    </message>
    <message>
        <source>Undo: see what can be taken back</source>
        <translation type="unfinished">Deshacer: ver qué se puede retirar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TrendChart</name>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Desde la reparación de hacia %1: </translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, con un cambio de %2 al año. </translation>
    </message>
    <message>
        <source>One timing</source>
        <translation type="unfinished">Un tiempo</translation>
    </message>
    <message>
        <source>%1 timings</source>
        <translation type="unfinished">%1 tiempos</translation>
    </message>
    <message>
        <source>%1 so far, too few to predict from: five over at least a year are needed.</source>
        <translation type="unfinished">%1 hasta ahora, muy pocos para predecir: hacen falta cinco a lo largo de al menos un año.</translation>
    </message>
    <message>
        <source>Expect a result beyond %1 now: the 95 % interval already reaches it.</source>
        <translation type="unfinished">Espere ya un valor más allá de %1: el intervalo del 95 % ya lo alcanza.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have the door serviced before then.</source>
        <translation type="unfinished">El intervalo del 95 % alcanza %1 por primera vez en %2: haga revisar la puerta antes.</translation>
    </message>
    <message>
        <source>No limit is reached by %1; these timings say nothing beyond that.</source>
        <translation type="unfinished">Hasta %1 no se alcanza ningún límite; estos tiempos no dicen nada más allá.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TypedRun</name>
    <message>
        <source>Were the cautions ticked on the paper?</source>
        <translation type="unfinished">¿Se marcaron las precauciones en el papel?</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation type="unfinished">Todas</translation>
    </message>
    <message>
        <source>Not all: enter the run without them</source>
        <translation type="unfinished">No todas: anotar el ensayo sin ellas</translation>
    </message>
    <message>
        <source>from “%1” to “%2”</source>
        <translation type="unfinished">de “%1” a “%2”</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>No alarm sounded</source>
        <translation type="unfinished">No sonó ninguna alarma</translation>
    </message>
    <message>
        <source>Did an alarm sound?</source>
        <translation type="unfinished">¿Sonó una alarma?</translation>
    </message>
    <message>
        <source>From paper: release %1</source>
        <translation type="unfinished">Del papel: accionamiento %1</translation>
    </message>
    <message>
        <source>No leaf moves that fast. Check the figure and type it again.</source>
        <translation type="unfinished">Ninguna hoja se mueve tan deprisa. Compruebe el valor y escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>Yes: type the seconds</source>
        <translation type="unfinished">Sí: escribir los segundos</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Puerta %1: %2, %3</translation>
    </message>
    <message>
        <source>Checks at this door, worst first</source>
        <translation type="unfinished">Comprobaciones de esta puerta, primero la peor</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return for the reason</source>
        <translation type="unfinished">pulse Intro para ver el motivo</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselCard</name>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Este buque</translation>
    </message>
    <message>
        <source>No walkdown yet.</source>
        <translation type="unfinished">Aún sin recorridos.</translation>
    </message>
    <message>
        <source>Due ›</source>
        <translation type="unfinished">Vence ›</translation>
    </message>
    <message>
        <source>Other vessels</source>
        <translation type="unfinished">Otros buques</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Ajustes</translation>
    </message>
    <message>
        <source>All %1 walkdowns</source>
        <translation type="unfinished">Los %1 recorridos</translation>
    </message>
    <message>
        <source>All %1 walkdowns ›</source>
        <translation type="unfinished">Los %1 recorridos ›</translation>
    </message>
    <message>
        <source>All %1 ›</source>
        <translation type="unfinished">Los %1 ›</translation>
    </message>
    <message>
        <source>Practice ›</source>
        <translation type="unfinished">Práctica ›</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Qué vence</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselChoice</name>
    <message>
        <source>This vessel cannot be opened</source>
        <translation type="unfinished">Este buque no se puede abrir</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Buques en esta tableta</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished">Intentar de nuevo</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Abrir</translation>
    </message>
    <message>
        <source>Import a register (CSV)</source>
        <translation type="unfinished">Importar un registro (CSV)</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkdownCard</name>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Todas</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Fin del recorrido</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">hechas</translation>
    </message>
    <message>
        <source>Walkdown under way</source>
        <translation type="unfinished">Recorrido en curso</translation>
    </message>
    <message>
        <source>No walkdown under way</source>
        <translation type="unfinished">Ningún recorrido en curso</translation>
    </message>
    <message>
        <source>%1, %2. Begun %3 at %4 by %5</source>
        <translation type="unfinished">%1, %2. Iniciado el %3 a las %4 por %5</translation>
    </message>
    <message>
        <source>Begin a walkdown ›</source>
        <translation type="unfinished">Iniciar recorrido ›</translation>
    </message>
    <message>
        <source>All doors done: end the walkdown ›</source>
        <translation type="unfinished">Todas hechas: terminar el recorrido ›</translation>
    </message>
    <message>
        <source>Carry on at %1 ›</source>
        <translation type="unfinished">Seguir en %1 ›</translation>
    </message>
    <message>
        <source>Look at the doors ›</source>
        <translation type="unfinished">Ver las puertas ›</translation>
    </message>
    <message>
        <source>SAT</source>
        <translation type="unfinished">SAT</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation type="unfinished">por resolver</translation>
    </message>
    <message>
        <source>UNSAT</source>
        <translation type="unfinished">NO SAT</translation>
    </message>
    <message>
        <source>This register lists no doors yet, so no walkdown can begin. Import one that lists them.</source>
        <translation type="unfinished">Este registro aún no incluye ninguna puerta, así que no se puede iniciar un recorrido. Importe uno que las incluya.</translation>
    </message>
    <message>
        <source>Nothing has been tested yet with this register. A walkdown begins with a plan: who, which doors, in what order.</source>
        <translation type="unfinished">Aún no se ha probado nada con este registro. Un recorrido empieza con un plan: quién, qué puertas, en qué orden.</translation>
    </message>
    <message>
        <source>Last walkdown: %1, %2. Ended %3</source>
        <translation type="unfinished">Último recorrido: %1, %2. Terminado el %3</translation>
    </message>
    <message>
        <source>Import a register ›</source>
        <translation type="unfinished">Importar un registro ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
    <message>
        <source>From paper: on which day?</source>
        <translation type="unfinished">Del papel: ¿qué día?</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished">ayer</translation>
    </message>
    <message>
        <source>two days ago</source>
        <translation type="unfinished">hace dos días</translation>
    </message>
    <message>
        <source>From paper: at what time?</source>
        <translation type="unfinished">Del papel: ¿a qué hora?</translation>
    </message>
    <message>
        <source>From paper: who tested the door?</source>
        <translation type="unfinished">Del papel: ¿quién probó la puerta?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Otra persona</translation>
    </message>
    <message>
        <source>ship&apos;s time at this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">hora del buque en esta puerta, horas y minutos: 1432 es 14:32</translation>
    </message>
    <message>
        <source>That is in the future.</source>
        <translation type="unfinished">Eso está en el futuro.</translation>
    </message>
    <message>
        <source>That is not a valid time.</source>
        <translation type="unfinished">Esa hora no es válida.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished">Satisfactorio</translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished">No satisfactorio</translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished">Por qué este resultado</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished">Medido</translation>
    </message>
    <message>
        <source> (k = 2)</source>
        <translation type="unfinished"> (k = 2)</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Límite</translation>
    </message>
    <message>
        <source>%1, set by %2</source>
        <translation type="unfinished">%1, fijado por %2</translation>
    </message>
    <message>
        <source>On an inclined ship</source>
        <translation type="unfinished">En un buque inclinado</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation type="unfinished">En qué fijarse</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texto</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; una regla de %2</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Por qué: %1</translation>
    </message>
    <message>
        <source>You decide. Give the reason first:</source>
        <translation type="unfinished">Decide usted. Indique antes el motivo:</translation>
    </message>
    <message>
        <source>What would decide it</source>
        <translation type="unfinished">Qué lo resolvería</translation>
    </message>
    <message>
        <source>Applies because</source>
        <translation type="unfinished">Se aplica porque</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Fuente</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravedad</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Window</name>
    <message>
        <source>Not armed</source>
        <translation type="unfinished">No preparado</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">NO GUARDADO (%1)</translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation type="unfinished">guardado %1</translation>
    </message>
    <message>
        <source>%1 ship (%2)</source>
        <translation type="unfinished">%1 buque (%2)</translation>
    </message>
    <message>
        <source>PRACTICE · %1 · Latchround</source>
        <translation type="unfinished">PRÁCTICA · %1 · Latchround</translation>
    </message>
    <message>
        <source>End this exercise?</source>
        <translation type="unfinished">¿Terminar este ejercicio?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Todas las puertas están hechas.</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Terminar y repasar</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Ajustes</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Idioma</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En uso</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Usar</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Más tarde</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Cuándo aprueba o no un valor</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation type="unfinished">No hecho</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished">Cerrar</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Catálogo</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp)</source>
        <translation type="unfinished">Imágenes (*.jpg *.jpeg *.png *.webp *.bmp)</translation>
    </message>
    <message>
        <source>%1 doors, %2 zones</source>
        <translation type="unfinished">%1 puertas, %2 zonas</translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Registro CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Reglas (*.json)</translation>
    </message>
    <message>
        <source>1 walkdown</source>
        <translation type="unfinished">1 recorrido</translation>
    </message>
    <message>
        <source>%1 walkdowns</source>
        <translation type="unfinished">%1 recorridos</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation type="unfinished">1 persona</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation type="unfinished">%1 personas</translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation type="unfinished">1 foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation type="unfinished">%1 fotos</translation>
    </message>
    <message>
        <source>1 issue of the arrangement</source>
        <translation type="unfinished">1 edición de la disposición</translation>
    </message>
    <message>
        <source>%1 issues of the arrangement</source>
        <translation type="unfinished">%1 ediciones de la disposición</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished">No mostrado</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Archivos de traspaso (*.zip)</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">equipo %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished">Ejercicios (*.json)</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation type="unfinished">No registrado</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">¿Cerrar el programa?</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">No leído</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">guardando…</translation>
    </message>
    <message>
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing the program loses them.</source>
        <translation type="unfinished">%1 entradas NO están guardadas y no se pudieron conservar en otro lugar. Si cierra el programa, se pierden.</translation>
    </message>
    <message>
        <source>What you wrote in the open sheet has not been recorded. Closing the program loses it.</source>
        <translation type="unfinished">Lo que escribió en la hoja abierta no se ha registrado. Si cierra el programa, se pierde.</translation>
    </message>
    <message>
        <source>Do not close</source>
        <translation type="unfinished">No cerrar</translation>
    </message>
    <message>
        <source>Close anyway</source>
        <translation type="unfinished">Cerrar igualmente</translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tested counts as not found.</source>
        <translation type="unfinished">%1 de %2 hechas. Lo que no se probó cuenta como no hallado.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Continuar</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">No guardado</translation>
    </message>
    <message>
        <source>This takes effect when the exercise ends.</source>
        <translation type="unfinished">Surte efecto cuando termina el ejercicio.</translation>
    </message>
    <message>
        <source>Whose reaction time?</source>
        <translation type="unfinished">¿De quién es el tiempo de reacción?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records it.</source>
        <translation type="unfinished">Planifique antes un recorrido y diga quién lo registra.</translation>
    </message>
    <message>
        <source>%1 has not done the timing drill on this tablet: published figures apply.</source>
        <translation type="unfinished">%1 no ha hecho la prueba de reacción en esta tableta: se aplican los valores publicados.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 hizo la prueba de reacción el %2; conviene repetirla desde el %3.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 hizo la prueba de reacción el %2; conviene repetirla después del %3.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">No importado</translation>
    </message>
    <message>
        <source>Take photograph</source>
        <translation type="unfinished">Tomar foto</translation>
    </message>
    <message>
        <source>Checking the register</source>
        <translation type="unfinished">Comprobando el registro</translation>
    </message>
    <message>
        <source>There is no program here that shows PDF files. The file is at %1</source>
        <translation type="unfinished">Aquí no hay ningún programa que muestre archivos PDF. El archivo está en %1</translation>
    </message>
    <message>
        <source>Import an instructor&apos;s exercise</source>
        <translation type="unfinished">Importar un ejercicio de un instructor</translation>
    </message>
    <message>
        <source>Import a flag&apos;s rules</source>
        <translation type="unfinished">Importar las reglas de una bandera</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entrada</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entradas</translation>
    </message>
    <message>
        <source>1 door not known here</source>
        <translation type="unfinished">1 puerta desconocida aquí</translation>
    </message>
    <message>
        <source>%1 doors not known here</source>
        <translation type="unfinished">%1 puertas desconocidas aquí</translation>
    </message>
    <message>
        <source>1 conflicting entry to decide</source>
        <translation type="unfinished">1 entrada contradictoria por decidir</translation>
    </message>
    <message>
        <source>%1 conflicting entries to decide</source>
        <translation type="unfinished">%1 entradas contradictorias por decidir</translation>
    </message>
    <message>
        <source>Export a handover file</source>
        <translation type="unfinished">Exportar un archivo de traspaso</translation>
    </message>
    <message>
        <source>Import a handover file</source>
        <translation type="unfinished">Importar un archivo de traspaso</translation>
    </message>
    <message>
        <source>Import a vessel&apos;s register</source>
        <translation type="unfinished">Importar el registro de un buque</translation>
    </message>
    <message>
        <source>A run is being timed: a leaf may be moving. Closing the program stops the timing, not the leaf.</source>
        <translation type="unfinished">Se está cronometrando un ensayo: puede haber una hoja en movimiento. Cerrar el programa para el cronómetro, no la hoja.</translation>
    </message>
    <message>
        <source>Records and signatures are in English; documents can also be printed as a translation, marked as one. What you write stays as written.</source>
        <translation type="unfinished">Los registros y las firmas están en inglés; los documentos también se pueden imprimir en traducción, marcada como tal. Lo que usted escribe queda como lo escribió.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">puerta %1 cubierta %2 %3</translation>
    </message>
    <message>
        <source>bulkhead %1: %2</source>
        <translation type="unfinished">mamparo %1: %2</translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished">sin puertas</translation>
    </message>
    <message>
        <source>Zone profile</source>
        <translation type="unfinished">Perfil de zonas</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todo</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">y %1 más</translation>
    </message>
    <message>
        <source>This register has no doors yet.</source>
        <translation type="unfinished">Este registro aún no tiene puertas.</translation>
    </message>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">puerta %1, cubierta %2, %3</translation>
    </message>
    <message>
        <source>door %1 %2</source>
        <translation type="unfinished">puerta %1 %2</translation>
    </message>
    <message>
        <source>deck %1, other doors: %2</source>
        <translation type="unfinished">cubierta %1, otras puertas: %2</translation>
    </message>
    <message>
        <source>Which door?</source>
        <translation type="unfinished">¿Qué puerta?</translation>
    </message>
    <message>
        <source>zoom in</source>
        <translation type="unfinished">acercar</translation>
    </message>
    <message>
        <source>zoom out</source>
        <translation type="unfinished">alejar</translation>
    </message>
    <message>
        <source>whole ship</source>
        <translation type="unfinished">buque entero</translation>
    </message>
    <message>
        <source>bulkhead %1 is open: %2</source>
        <translation type="unfinished">el mamparo %1 está abierto: %2</translation>
    </message>
</context>
</TS>
