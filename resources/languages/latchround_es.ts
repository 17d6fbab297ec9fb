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
        <source>mending door %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">reparar la puerta %1 del mamparo %2 es lo que más restablece</translation>
    </message>
    <message>
        <source>mending doors %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">reparar las puertas %1 del mamparo %2 es lo que más restablece</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkhead %1</source>
        <translation type="unfinished">aún sin demostrar que resiste: mamparo %1</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkheads %1</source>
        <translation type="unfinished">aún sin demostrar que resisten: mamparos %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">mamparo %1: las zonas %2 actúan como una sola, %3 frente a %4, como máximo %5%6</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">mamparos %1: las zonas %2 actúan como una sola, %3 frente a %4, como máximo %5%6</translation>
    </message>
    <message>
        <source>, %1 against %2</source>
        <translation type="unfinished">, %1 frente a %2</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">mamparo %1: las zonas %2 actúan como una sola, %3 frente a %4%5</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">mamparos %1: las zonas %2 actúan como una sola, %3 frente a %4%5</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Lamps of the fire door control panels are tried</source>
        <translation type="unfinished">Se prueban las lámparas de los paneles de control de puertas contraincendios</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is worked locally</source>
        <translation type="unfinished">Se acciona localmente cada puerta contraincendios de los mamparos de zona vertical principal</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tried for proper release</source>
        <translation type="unfinished">Se prueba el correcto accionamiento de las puertas contraincendios telemandadas</translation>
    </message>
    <message>
        <source>Plate present and legible, and it reads as the register says</source>
        <translation type="unfinished">Placa presente y legible, y dice lo mismo que el registro</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, scoured, or another class than the register&apos;s. No SOLAS paragraph was found that asks for a plate: where it is missing ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Léala en la puerta misma. Mal: pintada, borrada o de otra clase que la del registro. No se halló párrafo del SOLAS que pida una placa: si falta, pida el certificado; no es un fallo.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip</source>
        <translation type="unfinished">Umbral en su sitio, sin riesgo de tropiezo</translation>
    </message>
    <message>
        <source>Sill in place, no trip?</source>
        <translation type="unfinished">¿Umbral en su sitio, sin tropiezo?</translation>
    </message>
    <message>
        <source>Along the whole sill, with a lamp and a foot. Good: whole, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">A lo largo de todo el umbral, con una linterna y el pie. Bien: entero, plano y firme. Mal: un trozo suelto, doblado o ausente en que pueda tropezar un pie.</translation>
    </message>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Paso de la hoja despejado a ambos lados</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">¿Paso despejado, ambos lados?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: bare. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Toda la cubierta sobre la que se mueve la hoja, a ambos lados. Bien: despejada. Mal: pertrechos, carros, muebles, alfombras, basura.</translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished">Alojamiento sin suciedad, basura ni pertrechos</translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished">¿Alojamiento sin suciedad ni basura?</translation>
    </message>
    <message>
        <source>Look into the pocket with a lamp, never with a hand while the door can move. Good: bare to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Mire dentro del alojamiento con una linterna, nunca con la mano mientras la puerta pueda moverse. Bien: despejado hasta el fondo. Mal: suciedad, basura, pertrechos.</translation>
    </message>
    <message>
        <source>Nothing holds it: no wedge, rope or furniture</source>
        <translation type="unfinished">Nada la sujeta: ni cuña, ni cabo, ni muebles</translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">¿Sin cuñas, cabos ni muebles?</translation>
    </message>
    <message>
        <source>Round the foot, the handle and the edge of the open leaf. Good: its own hold-back alone holds it. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">Alrededor del pie, la manija y el borde de la hoja abierta. Bien: solo la sujeta su propia retención. Mal: una cuña, un cabo, un mueble.</translation>
    </message>
    <message>
        <source>Seals whole and not painted over</source>
        <translation type="unfinished">Juntas enteras y sin pintura encima</translation>
    </message>
    <message>
        <source>Seals whole, unpainted?</source>
        <translation type="unfinished">¿Juntas enteras, sin pintar?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece gone.</source>
        <translation type="unfinished">Todo alrededor de la hoja. Bien: tiras asentadas y continuas. Mal: pintadas, rotas o con un trozo ausente.</translation>
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
        <source>Stand back and look at the gap over the leaf. Good: even, screws home. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Apártese y mire el hueco sobre la hoja. Bien: uniforme, tornillos a fondo. Mal: más ancho en un extremo, roces brillantes en el umbral.</translation>
    </message>
    <message>
        <source>Closer not leaking, its arm connected</source>
        <translation type="unfinished">Cierrapuertas sin fugas, con su brazo conectado</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">¿Cierrapuertas seco, brazo conectado?</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, its arm fast at both ends. Bad: oil on the body or the leaf, the arm loose or hanging.</source>
        <translation type="unfinished">En la parte superior de la hoja. Bien: seco, con el brazo fijo en ambos extremos. Mal: aceite en el cuerpo o la hoja, brazo flojo o colgando.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and whole</source>
        <translation type="unfinished">Carriles, rodillos y guías limpios y enteros</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">¿Carriles, rodillos y guías limpios?</translation>
    </message>
    <message>
        <source>The rail at the head and the guide at the foot, end to end. Good: bare, every roller on it. Bad: dirt, a dent, a roller off. Hands out while it can move.</source>
        <translation type="unfinished">El carril superior y la guía inferior, de extremo a extremo. Bien: despejados, todos los rodillos en su sitio. Mal: suciedad, una abolladura, un rodillo fuera. Manos fuera mientras pueda moverse.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Hoja, marco y vidrio enteros: sin agujeros, accesorios no aprobados, corrosión ni aislamiento suelto</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole?</source>
        <translation type="unfinished">¿Hoja, marco y vidrio enteros?</translation>
    </message>
    <message>
        <source>Both faces, edges, frame and glass. Bad: drilled holes, cables, signs screwed on, rust, loose insulation, a crack.</source>
        <translation type="unfinished">Ambas caras, bordes, marco y vidrio. Mal: taladros, cables, rótulos atornillados, óxido, aislamiento suelto, una grieta.</translation>
    </message>
    <message>
        <source>Moves smoothly over its whole travel</source>
        <translation type="unfinished">Se mueve con suavidad en todo su recorrido</translation>
    </message>
    <message>
        <source>Smooth over its whole travel?</source>
        <translation type="unfinished">¿Suave en todo su recorrido?</translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it goes evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Observe la hoja todo el camino. Bien: va con regularidad hasta el final. Mal: se atasca, salta o da un portazo al final.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other is home</source>
        <translation type="unfinished">El selector retiene una hoja hasta que la otra queda cerrada</translation>
    </message>
    <message>
        <source>Do the leaves close in order?</source>
        <translation type="unfinished">¿Cierran las hojas en su orden?</translation>
    </message>
    <message>
        <source>Open both leaves and let them go together. Good: one waits until the other is home. Bad: its lip is caught outside. Fingers off the meeting edges.</source>
        <translation type="unfinished">Abra las dos hojas y suéltelas a la vez. Bien: una espera hasta que la otra queda cerrada. Mal: su solapa queda por fuera. Dedos lejos de los bordes de encuentro.</translation>
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
        <source>When it has shut and stands still, push it. Good: it holds. Bad: it gives way, as it would to the pressure of a fire.</source>
        <translation type="unfinished">Cuando se haya cerrado y esté quieta, empújela. Bien: aguanta. Mal: cede, como lo haría con la presión de un incendio.</translation>
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
        <source>Hold a soft block in the path, never a hand or foot. Good: at the touch the leaf stops and goes back. Bad: it pushes on.</source>
        <translation type="unfinished">Ponga un bloque blando en el paso, nunca una mano ni un pie. Bien: al tocarlo la hoja se detiene y retrocede. Mal: sigue empujando.</translation>
    </message>
    <message>
        <source>Door, frame and securing means resist fire like the division they stand in</source>
        <translation type="unfinished">Puerta, marco y medios de sujeción resisten el fuego igual que la división en que están</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del contorno que la rodea. Bien: la puerta es al menos igual de resistente. Una puerta estanca no necesita aislamiento (9.4.1.1.3).</translation>
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
        <source>Open and shut it yourself, unaided, from this side; then go round and do the same. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Ábrala y ciérrela usted, sin ayuda, desde este lado; luego pase al otro y haga lo mismo. Mal: hacen falta dos personas o una herramienta.</translation>
    </message>
    <message>
        <source>Closes by itself, also against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se cierra sola, incluso contra una inclinación de 3.5 grados</translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished">¿Se cierra sola?</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Suéltela desde abierta del todo, a medias y en un ángulo pequeño. Bien: cierra del todo cada vez. Mal: queda entreabierta. Lo de los 3.5 grados no se puede ver en un buque adrizado.</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">La puerta de bisagras se cierra de 10 a 40 s tras su primer movimiento, con el buque adrizado</translation>
    </message>
    <message>
        <source>Mark the first movement of the leaf and the moment it is fully shut; on a double door, when the second leaf is home. Stand clear of the leaf.</source>
        <translation type="unfinished">Marque el primer movimiento de la hoja y el momento en que queda cerrada del todo; en una puerta de dos hojas, cuando llega la segunda. Manténgase apartado de la hoja.</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">La puerta corredera se cierra a 0.1 a 0.2 m/s, aproximadamente uniforme, con el buque adrizado</translation>
    </message>
    <message>
        <source>Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate. Keep hands off the edge and out of the pocket.</source>
        <translation type="unfinished">Marque el primer movimiento y el momento en que queda cerrada: la abertura libre dividida por ese tiempo es la velocidad. Manos lejos del borde y fuera del alojamiento.</translation>
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
        <source>The control station releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">El puesto de control acciona la puerta o su grupo. Bien: se suelta y cierra. Mal: queda abierta. Un vigilante en cada puerta del grupo, a ambos lados.</translation>
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
        <source>Work the switch or handle at the door, one side and then the other. Good: each lets the door go. Bad: one side does nothing.</source>
        <translation type="unfinished">Accione el interruptor o la manija de la puerta, de un lado y luego del otro. Bien: cada uno suelta la puerta. Mal: uno de los lados no hace nada.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function: the system does not reset itself</source>
        <translation type="unfinished">El interruptor de accionamiento tiene función de conexión-desconexión: el sistema no se reajusta solo</translation>
    </message>
    <message>
        <source>Does the switch stay as it is put, so that the system does not reset itself?</source>
        <translation type="unfinished">¿Queda el interruptor como se pone, sin que el sistema se reajuste solo?</translation>
    </message>
    <message>
        <source>Release, take the hand off and wait. Good: the door is not held again until somebody puts the switch back. Bad: it is held again by itself.</source>
        <translation type="unfinished">Accione, retire la mano y espere. Bien: la puerta no vuelve a quedar retenida hasta que alguien repone el interruptor. Mal: se retiene sola otra vez.</translation>
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
        <source>Look behind the open door, at wall, leaf and deck. Bad: hooks, cabin hooks, eye plates with marks of use.</source>
        <translation type="unfinished">Mire detrás de la puerta abierta: pared, hoja y cubierta. Mal: ganchos, ganchos de camarote, cáncamos con huellas de uso.</translation>
    </message>
    <message>
        <source>After remote closing it opens again locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Tras el cierre a distancia se abre de nuevo localmente desde ambos lados y luego se cierra sola</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">¿Se abre desde este lado tras el cierre a distancia y luego se cierra sola?</translation>
    </message>
    <message>
        <source>While the remote release still stands, open it from this side and let go. Good: it opens, then shuts by itself. Keep clear of the leaf as it comes back.</source>
        <translation type="unfinished">Mientras dure el accionamiento a distancia, ábrala desde este lado y suéltela. Bien: se abre y luego se cierra sola. Manténgase apartado de la hoja cuando vuelva.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">El panel del puesto de control indica si está cerrada</translation>
    </message>
    <message>
        <source>Is the panel&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">¿Es cierta la indicación del panel: abierta, entreabierta y cerrada?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: true each time. Bad: it says shut while the door stands ajar.</source>
        <translation type="unfinished">Pregunte al puesto de control qué muestra su panel con la puerta abierta, entreabierta y cerrada. Bien: cierto cada vez. Mal: dice cerrada mientras la puerta está entreabierta.</translation>
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
        <source>Agree it with the engineers and clear people away; then the supply of this door&apos;s control is cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Acuérdelo con máquinas y aparte a la gente; luego se corta la alimentación del control de esta puerta. Bien: se cierra sola. Mal: queda abierta.</translation>
    </message>
    <message>
        <source>Local accumulators work the door at least ten times fully open and shut after the power has failed</source>
        <translation type="unfinished">Los acumuladores locales accionan la puerta al menos diez veces, abierta del todo y cerrada, tras fallar la energía</translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">¿Diez ciclos completos con el acumulador local?</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full openings and closings without the main supply. Trying it runs the accumulator down: agree it with the control station first.</source>
        <translation type="unfinished">Pida la última constancia de diez aperturas y cierres completos sin alimentación principal. Probarlo descarga el acumulador: acuérdelo antes con el puesto de control.</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">El fallo de una puerta deja funcionando las demás</translation>
    </message>
    <message>
        <source>Do the other doors go on working when this one fails?</source>
        <translation type="unfinished">¿Siguen funcionando las demás puertas si falla esta?</translation>
    </message>
    <message>
        <source>See the drawing of the control system, or isolate this door while another is worked. Good: the others move as before. Bad: they stand still too.</source>
        <translation type="unfinished">Vea el plano del sistema de control, o aísle esta puerta mientras se acciona otra. Bien: las demás se mueven como antes. Mal: también se quedan paradas.</translation>
    </message>
    <message>
        <source>Alarm sounds 5 to 10 s between release and first movement</source>
        <translation type="unfinished">La alarma suena de 5 a 10 s entre el accionamiento y el primer movimiento</translation>
    </message>
    <message>
        <source>Released from the control station, from the first sound of the alarm to the first movement of the leaf. Bad: the leaf moves at once, or much later.</source>
        <translation type="unfinished">Accionada desde el puesto de control, del primer sonido de la alarma al primer movimiento de la hoja. Mal: la hoja se mueve enseguida, o mucho después.</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">La alarma suena hasta que la puerta está cerrada del todo</translation>
    </message>
    <message>
        <source>Listen until the leaf is home. Good: the alarm still sounds when the door is fully shut. Bad: silence while the leaf still moves.</source>
        <translation type="unfinished">Escuche hasta que la hoja quede cerrada del todo. Bien: la alarma aún suena con la puerta cerrada del todo. Mal: silencio mientras la hoja aún se mueve.</translation>
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
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after going back.</source>
        <translation type="unfinished">Ponga un bloque blando en el paso, nunca una mano ni un pie. Mida desde el punto de contacto hasta donde la hoja se detiene tras retroceder.</translation>
    </message>
    <message>
        <source>The latch engages by the release system&apos;s own operation</source>
        <translation type="unfinished">El pestillo encaja por la propia acción del sistema de accionamiento</translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">¿Encaja solo el pestillo tras accionar?</translation>
    </message>
    <message>
        <source>After release, when both leaves stand still, push at the meeting edge. Good: neither opens. Bad: the bolt lies short of its strike.</source>
        <translation type="unfinished">Tras accionar, cuando ambas hojas estén quietas, empuje en el borde de encuentro. Bien: ninguna se abre. Mal: el pestillo no llega a su cerradero.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjusting</source>
        <translation type="unfinished">Los componentes del control local son accesibles para mantenimiento y ajuste</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">¿Son accesibles las piezas del control local?</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens and a hand with a tool gets in. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Busque el interruptor, la válvula o la caja de control de la puerta. Bien: la tapa se abre y cabe una mano con herramienta. Mal: empotrada, bloqueada o sellada con pintura.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 degrees C, and to keep the door shut beyond</source>
        <translation type="unfinished">El sistema de control está aprobado para funcionar en un incendio: 60 min a 200 grados C, y para mantener cerrada la puerta más allá</translation>
    </message>
    <message>
        <source>Is there an approval paper of the control system?</source>
        <translation type="unfinished">¿Hay documento de aprobación del sistema de control?</translation>
    </message>
    <message>
        <source>A check of papers: works at 200 degrees C or more for 60 min or more, leaves other doors&apos; supply whole, isolates itself above that and keeps the door shut up to 945 degrees C or more.</source>
        <translation type="unfinished">Comprobación de documentos: funciona a 200 grados C o más durante 60 min o más, no afecta a la alimentación de otras puertas, se aísla por encima de eso y mantiene cerrada la puerta hasta 945 grados C o más.</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Paso de manguera de cierre automático, 150 mm en cuadro libres con la puerta cerrada, tan resistente al fuego como la puerta</translation>
    </message>
    <message>
        <source>Hose port clear 150 mm square, and does it shut by itself?</source>
        <translation type="unfinished">¿Paso de manguera libre de 150 mm en cuadro, y se cierra solo?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 mm square clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Puerta cerrada, borde inferior, opuesto a las bisagras; en una corredera, lo más cerca de la abertura. Levante la tapa y suéltela. Bien: 150 mm en cuadro libres, y la tapa cae cerrada. Mal: queda levantada.</translation>
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
        <source>The widest place under the shut door, with a feeler or a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">El punto más ancho bajo la puerta cerrada, con galga o regla. Ningún dedo bajo una hoja que pueda moverse.</translation>
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
        <source>At the foot of the shut door. Good: a sill that cannot burn, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Al pie de la puerta cerrada. Bien: un umbral que no arde, y la moqueta o el vinilo acaban en él. Mal: el revestimiento sigue bajo la hoja.</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">El hueco bajo una puerta aprobada sin umbral en su marco no pasa de 25 mm</translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">El punto más ancho bajo la puerta cerrada, con una regla. Ningún dedo bajo una hoja que pueda moverse.</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m2 net, with a non-combustible grille</source>
        <translation type="unfinished">Abertura de ventilación en la puerta o bajo ella de no más de 0.05 m2 netos, con rejilla incombustible</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Abertura de ventilación en la puerta o bajo ella, neta</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn.</source>
        <translation type="unfinished">La rejilla de la hoja o el corte bajo ella. Cuente solo el área libre entre las lamas; 0 si no hay. La rejilla debe ser de material que no arda.</translation>
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
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops half way, or there is a hook.</source>
        <translation type="unfinished">Suéltela desde abierta del todo. Bien: se cierra sola, y detrás nada puede sujetarla. Mal: se para a medio camino, o hay un gancho.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead A-0</source>
        <translation type="unfinished">La puerta en un mamparo A-60, A-30 o A-15 cumple A-15; en un mamparo A-0, A-0</translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Se cierra sola contra una escora de 3.5 grados</translation>
    </message>
    <message>
        <source>Either leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Cada hoja de una puerta de dos hojas cierra y encaja su pestillo por sí sola</translation>
    </message>
    <message>
        <source>Does either leaf close and latch on its own?</source>
        <translation type="unfinished">¿Cada hoja cierra y encaja su pestillo por sí sola?</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Abra solo una hoja y suéltela; luego la otra. Bien: cada una cierra y encaja por sí sola. Mal: una necesita a la otra, o no encaja.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in order</source>
        <translation type="unfinished">Donde una hoja debe cerrar primero, algo las hace cerrar en su orden</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Holgura entre dos hojas que trabajan por separado, y arriba y a los lados de una puerta de vaivén, de 3.2 mm como máximo</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Ambas hojas cerradas: una galga entre ellas; en una puerta de vaivén, también arriba y a los lados. 1/8 de pulgada en el punto más ancho.</translation>
    </message>
    <message>
        <source>Stop or overlap at the sides and top at least 12.7 mm</source>
        <translation type="unfinished">Tope o solape a los lados y arriba de al menos 12.7 mm</translation>
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
        <source>Look over the whole leaf, low down as well. Good: closed all over. Bad: a grille or louver, anywhere in it.</source>
        <translation type="unfinished">Mire toda la hoja, también abajo. Bien: cerrada por completo. Mal: una rejilla o persiana en cualquier parte.</translation>
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
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, self-closing steel cover</source>
        <translation type="unfinished">Paso de manguera, si lo hay: esquina inferior opuesta a la bisagra, unos 152 mm en cuadro, tapa de acero de cierre automático</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 mm square, cover shuts by itself?</source>
        <translation type="unfinished">¿Paso de manguera en la esquina inferior opuesta a la bisagra, unos 152 mm en cuadro, y la tapa se cierra sola?</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Una puerta en una cubierta, solo para tripulación, se cierra en 5 a 10 s</translation>
    </message>
    <message>
        <source>Time it from the first movement to fully shut. Nobody stands on the stair, and no hand or foot is at its edge.</source>
        <translation type="unfinished">Cronometre del primer movimiento a cerrada del todo. Nadie en la escalera, y ninguna mano ni pie en su borde.</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Fuerza para soltar el pestillo de una puerta en cubierta: 17.8 N como máximo</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it lets go. The greatest force counts.</source>
        <translation type="unfinished">Enganche un dinamómetro al pestillo y tire hasta que se suelte. Cuenta la fuerza mayor.</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Fuerza para poner en movimiento una puerta en cubierta: 44.5 N como máximo</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Pestillo libre: enganche un dinamómetro al borde libre y tire hasta que la puerta apenas se mueva. Cuenta la fuerza mayor.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Fuerza para abrir una puerta en cubierta hasta el ancho de la escalera: 17.8 N como máximo</translation>
    </message>
    <message>
        <source>Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts. Nobody stands under it.</source>
        <translation type="unfinished">Tire con un dinamómetro hasta abrirla al ancho de la escalera. Cuenta la fuerza mayor del camino. Nadie debajo.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m2</source>
        <translation type="unfinished">Vidrio armado en puerta de clase A de 0.065 m2 como máximo</translation>
    </message>
    <message>
        <source>The fire door release system is as SOLAS 74 II-2/30.4.3 has it</source>
        <translation type="unfinished">El sistema de accionamiento de puertas contraincendios es conforme a SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">¿Está aprobado el sistema de accionamiento según SOLAS 74 II-2/30.4.3?</translation>
    </message>
    <message>
        <source>A check of papers, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Comprobación de documentos, donde esté instalado tal sistema: una aprobación que cite SOLAS 74 II-2/30.4.3.</translation>
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
        <source>a stair enclosed on one level only counts as part of the space it has no fire door against</source>
        <translation type="unfinished">una escalera cerrada en un solo nivel cuenta como parte del espacio del que no la separa puerta contraincendios</translation>
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
        <source>public rooms under 50 m2 with restricted-fire-risk furnishings</source>
        <translation type="unfinished">salas públicas de menos de 50 m2 con mobiliario de riesgo de incendio reducido</translation>
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
        <source>public rooms of 50 m2 or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">salas públicas de 50 m2 o más con mobiliario de riesgo de incendio reducido</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m2 (no flammable liquids)</source>
        <translation type="unfinished">pañoles aislados y pequeños de menos de 4 m2 (sin líquidos inflamables)</translation>
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
        <source>drying room up to 4 m2</source>
        <translation type="unfinished">cuarto de secado de hasta 4 m2</translation>
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
        <source>public rooms of 50 m2 or more with ordinary furnishings</source>
        <translation type="unfinished">salas públicas de 50 m2 o más con mobiliario corriente</translation>
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
        <source>drying room above 4 m2</source>
        <translation type="unfinished">cuarto de secado de más de 4 m2</translation>
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
        <source>lockers and stores above 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">pañoles de más de 4 m2 no previstos para líquidos inflamables</translation>
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
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), corridors left out</source>
        <translation type="unfinished">camarotes, salas públicas, oficinas, aseos, enfermerías, salas de juego y de aficiones, oficios sin aparatos de cocción (regla 3.1), excluidos los pasillos</translation>
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
        <source>lockers and stores under 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">pañoles de menos de 4 m2 no previstos para líquidos inflamables</translation>
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
        <source>lockers and stores of 4 m2 or more</source>
        <translation type="unfinished">pañoles de 4 m2 o más</translation>
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
        <source>fire-resistant furnishings only and fire load up to 15 kg/m2</source>
        <translation type="unfinished">solo mobiliario resistente al fuego y carga de fuego de hasta 15 kg/m2</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m2 or less</source>
        <translation type="unfinished">Alojamiento de riesgo alto, 50 m2 o menos</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m2 (limit 37.5 kg/m2)</source>
        <translation type="unfinished">carga de fuego de más de 15 kg/m2 (límite 37.5 kg/m2)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m2 that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">pañol de limpieza de menos de 5 m2 que guarda más que útiles (sin líquidos inflamables)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m2</source>
        <translation type="unfinished">Alojamiento de riesgo alto, más de 50 m2</translation>
    </message>
    <message>
        <source>as 6 but larger; the size sign is lost in the machine text and is inferred from row 6</source>
        <translation type="unfinished">como 6 pero mayor; el signo de tamaño se perdió en el texto digital y se deduce de la fila 6</translation>
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
        <source>pantries and stores with flammable liquids or of 5 m2 or more</source>
        <translation type="unfinished">oficios y pañoles con líquidos inflamables o de 5 m2 o más</translation>
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
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m2 of combustible storage</source>
        <translation type="unfinished">locales de bombas, ventiladores, aire acondicionado, gobierno y similares con 2.5 kg/m2 de combustibles almacenados como máximo</translation>
    </message>
    <message>
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished">Cubiertas expuestas (no zonas de seguridad)</translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished">cubierta siempre abierta por uno o más lados, sin punto cubierto a 4.5 m o más de la abertura</translation>
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
        <source>All twelve doors. Nobody says how many faults there are. Endanger nobody, answer the cautions truly, and have 80 of 100 points to pass.</source>
        <translation type="unfinished">Las doce puertas. Nadie dice cuántos fallos hay. No ponga en peligro a nadie, responda con verdad a las precauciones y logre 80 de 100 puntos para aprobar.</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Primeros pasos: cronometrar un cierre</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order, the other is far from it.</source>
        <translation type="unfinished">Dos puertas de escalera retenidas abiertas por imanes. Accione cada una y marque cuándo empieza a moverse su hoja y cuándo queda cerrada. Una está en orden; la otra, lejos de estarlo.</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Primeros pasos: mirar antes de que se mueva</translation>
    </message>
    <message>
        <source>Two doors that stand still. Go round each of them, both sides, and look at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Dos puertas quietas. Dé la vuelta a cada una, por ambos lados, y mire todo lo que se le pregunta. Algo no está en orden.</translation>
    </message>
    <message>
        <source>Somebody comes round the corner</source>
        <translation type="unfinished">Alguien dobla la esquina</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop it before it meets anybody. A run that was stopped can be made again.</source>
        <translation type="unfinished">La gente no sabe que usted está probando. No quite la vista del paso mientras se mueve una hoja, y párela antes de que alcance a nadie. Un ensayo detenido se puede repetir.</translation>
    </message>
    <message>
        <source>A round of eight doors</source>
        <translation type="unfinished">Una ronda de ocho puertas</translation>
    </message>
    <message>
        <source>Every kind of door in one walk. Six faults lie somewhere among them, some of which only the watch can show. Not every door has one.</source>
        <translation type="unfinished">Toda clase de puerta en un recorrido. Hay seis fallos entre ellas, algunos solo los puede mostrar el reloj. No todas las puertas tienen uno.</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Puertas correderas y su alarma</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, the whole travel, and how far each one opens again when it meets something. Look into the pockets.</source>
        <translation type="unfinished">Tres puertas accionadas a motor. Cronometre la alarma antes de que se mueva la hoja, todo el recorrido, y cuánto se reabre cada una al tocar algo. Mire en los alojamientos.</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Retenidas abiertas en una escalera</translation>
    </message>
    <message>
        <source>Four hinged doors that magnets hold open. They must let go from both sides and from the control station, shut in their time and latch. Watch the path before you release anything.</source>
        <translation type="unfinished">Cuatro puertas de bisagras que unos imanes retienen abiertas. Deben soltarse desde ambos lados y desde el puesto de control, cerrarse en su tiempo y encajar el pestillo. Vigile el paso antes de accionar nada.</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Dos hojas, y puertas de vaivén</translation>
    </message>
    <message>
        <source>Double doors must come home in their order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Las puertas de dos hojas deben llegar en su orden, y la de vaivén de la cocina debe quedar quieta y cerrada. Algo falla en dos de ellas.</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be left out if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Espacios contiguos del mismo número de categoría: se puede omitir el mamparo o la cubierta si la Administración lo estima innecesario (p. ej. una cocina y sus propios oficios). Una cocina y un espacio de máquinas sí necesitan división entre ellos, aunque ambos sean de categoría 12.</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Costado del buque hasta la flotación mínima, y costados de superestructuras y casetas, bajo o junto a balsas y rampas de evacuación: basta A-30.</translation>
    </message>
    <message>
        <source>Public toilets standing wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Aseos públicos situados por entero dentro de un tronco de escalera: el mamparo del aseo dentro del tronco puede ser de clase B.</translation>
    </message>
    <message>
        <source>Category 6, 7, 8 and 9 rooms wholly inside the outer boundary of an assembly station: their bulkheads may be B-0. Audio, video and lighting control positions may count as part of the assembly station.</source>
        <translation type="unfinished">Locales de categoría 6, 7, 8 y 9 situados por entero dentro del contorno exterior de un puesto de reunión: sus mamparos pueden ser B-0. Los puestos de mando de sonido, imagen y luces pueden contar como parte del puesto de reunión.</translation>
    </message>
    <message>
        <source>No special requirement for material or integrity.</source>
        <translation type="unfinished">Sin prescripción especial de material ni de integridad.</translation>
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
        <translation type="unfinished">Donde el mamparo es límite de zona vertical principal (2.2.1.1.2), lea B-0 y C de la tabla 9.3 como A-0.</translation>
    </message>
    <message>
        <source>Insulation may be left off if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">Se puede omitir el aislamiento si, a juicio de la Administración, el espacio de máquinas de categoría 7 tiene pequeño o nulo riesgo de incendio.</translation>
    </message>
    <message>
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished">Valor vigente para buques construidos el 1 de julio de 2014 o posteriormente; los más antiguos conservan al menos el valor anterior.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished">La división debe ser de acero o equivalente, pero no necesita ser de clase A. Donde una cubierta (que no sea expuesta) la atraviesen cables, tuberías o conductos, el paso debería hacerse estanco a las llamas y al humo. Un puesto de control con generador de emergencia puede tener tomas de aire a cubierta expuesta sin cierres, salvo que haya un sistema fijo de gas. Donde la cubierta es límite de zona vertical principal (2.2.1.1.2), lea * de la tabla 9.4 como A-0, salvo las categorías 8 y 10.</translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished">Sin prescripción para estos mamparos con los métodos de protección IIC y IIIC.</translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m2 or more.</source>
        <translation type="unfinished">Con el método IIIC hacen falta mamparos B-0 entre locales o grupos de locales de 50 m2 o más.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Cuál de los dos valores se aplica se deduce de 2.3.2 y 2.3.4: una escalera que atraviesa una sola cubierta solo necesita B-0 con puertas de cierre automático en al menos un nivel; escaleras y ascensores que atraviesan más de una cubierta necesitan A-0 con puertas de cierre automático en todos los niveles; un ascensor que atraviesa una cubierta necesita A-0 con puertas de acero en ambos niveles. Con literas para 12 personas o menos y dos salidas directas a cubierta expuesta desde cada nivel de alojamiento, A-0 puede bajar a B-0.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Los mamparos entre caseta de gobierno, cuarto de derrota y cuarto de radio pueden ser B-0.</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they stay at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">Basta A-0 si no se llevan mercancías peligrosas, o si quedan al menos a 3 m en horizontal del mamparo.</translation>
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
        <source>Tanker use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Los buques tanque usan solo el método IC. Cuál de los dos valores se aplica se deduce de 2.3.2 y 2.3.4: una escalera que atraviesa una sola cubierta solo necesita B-0 con puertas de cierre automático en al menos un nivel; escaleras y ascensores que atraviesan más de una cubierta necesitan A-0 con puertas de cierre automático en todos los niveles; un ascensor que atraviesa una cubierta necesita A-0 con puertas de acero en ambos niveles. Con literas para 12 personas o menos y dos salidas directas a cubierta expuesta desde cada nivel de alojamiento, A-0 puede bajar a B-0.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">El mamparo o cubierta entre cámara de bombas de carga y espacio de categoría A para máquinas puede atravesarse con prensaestopas de ejes de bombas y similares, si se asegura una hermeticidad duradera.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m2 (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Los tanques de combustible, espacios de maquinaria auxiliar y espacios perdidos con carga de fuego de más de 2.5 kg/m2 (0.5 lb/sq ft) necesitan contornos al menos A-0.</translation>
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
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time duty (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Incombustible, continua con la estructura del buque (o hasta un techo continuo B o C&apos;) y estanca al humo; sin requisito de aislamiento ni de tiempo a la llama (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">Basta C entre dos espacios iguales; los distintos (pañol y taller) necesitan A-0.</translation>
    </message>
    <message>
        <source>A fire drill tries the fire doors in the area of the drill</source>
        <translation type="unfinished">En un simulacro de incendio se prueban las puertas contraincendios de la zona del simulacro</translation>
    </message>
    <message>
        <source>Blackout trial: doors are held and released by the emergency source and the transitional battery</source>
        <translation type="unfinished">Prueba de apagón: las puertas se retienen y se accionan con la fuente de energía de emergencia y la batería transitoria</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample released at the door and remotely, doors lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Campaña del Estado rector del puerto sobre puertas contraincendios: lámparas, una muestra accionada en la puerta y a distancia, puertas trincadas abiertas, cierre y encaje del pestillo, puertas de máquinas, clase</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class like its boundary</source>
        <translation type="unfinished">Una puerta exterior que da a dispositivos de salvamento, puestos de embarco o puestos de reunión exteriores, escaleras exteriores o cubiertas de evacuación es de clase A como su contorno</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A stairway enclosure&apos;s door is free of it.</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del contorno que la rodea. Bien: la puerta es al menos igual de resistente. La puerta de un tronco de escalera queda exenta.</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure is free of the A-class duty of other exterior doors</source>
        <translation type="unfinished">Una puerta exterior de un tronco de escalera está exenta de la clase A que se exige a otras puertas exteriores</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">¿Es puerta de un tronco de escalera?</translation>
    </message>
    <message>
        <source>See the fire plan, or go in. A stairway enclosure behind it: yes, and no class is asked of it. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Vea el plano de lucha contra incendios, o entre. Detrás hay un tronco de escalera: sí, y no se le pide clase. Detrás hay cualquier otro espacio: no. Ninguna de las dos respuestas es un fallo.</translation>
    </message>
    <message>
        <source>Door and frame of steel or of a material equivalent to it</source>
        <translation type="unfinished">Puerta y marco de acero o de un material equivalente</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">¿Puerta y marco de acero o equivalente?</translation>
    </message>
    <message>
        <source>Knock on leaf and frame, see the plate and the papers. Good: steel, or a paper that says what is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Golpee con los nudillos hoja y marco; vea la placa y los documentos. Bien: acero, o un documento que diga qué es equivalente. Mal: madera, plástico o aluminio sin aislar.</translation>
    </message>
    <message>
        <source>Door and frame in good order, so that they do what they were fitted for</source>
        <translation type="unfinished">Puerta y marco en buen estado, de modo que cumplan la función para la que se instalaron</translation>
    </message>
    <message>
        <source>In good order, door and frame?</source>
        <translation type="unfinished">¿Puerta y marco en buen estado?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, repairs that nobody approved. Asked of a ship of any date.</source>
        <translation type="unfinished">Hoja, marco, bisagras, juntas y vidrio. Mal: agujeros, parches, abolladuras que le impiden cerrar, piezas ausentes, reparaciones que nadie aprobó. Se pide a buques de cualquier fecha.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard has this door and its controls in it</source>
        <translation type="unfinished">El plan de mantenimiento de a bordo incluye esta puerta y sus mandos</translation>
    </message>
    <message>
        <source>Is the door, with its controls, in the maintenance plan?</source>
        <translation type="unfinished">¿Está la puerta, con sus mandos, en el plan de mantenimiento?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or in a computer, and find this door. Good: its tests and dates are there. Asked of a ship of any date.</source>
        <translation type="unfinished">Pida el plan de mantenimiento del buque, en papel o en un ordenador, y busque esta puerta. Bien: ahí están sus pruebas y fechas. Se pide a buques de cualquier fecha.</translation>
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
        <source>Try it before it is unlocked. Locked: yes, and it is left out of what is asked of doors that people use. Open or unlocked: no, and it is graded as what it is.</source>
        <translation type="unfinished">Pruébela antes de que la abran con la llave. Cerrada con llave: sí, y no se le pide lo que se pide a las puertas de paso. Abierta o sin la llave echada: no, y se califica como lo que es.</translation>
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
        <source>An escape door of a public space that is normally latched has a quick release over at least half the leaf, and nothing that locks it down</source>
        <translation type="unfinished">Una puerta de evacuación de un espacio público, normalmente cerrada con pestillo, tiene un dispositivo de apertura rápida a lo ancho de al menos media hoja, y nada que lo bloquee</translation>
    </message>
    <message>
        <source>Quick release over half the leaf, nothing locks it down?</source>
        <translation type="unfinished">¿Apertura rápida a lo ancho de media hoja y nada que la bloquee?</translation>
    </message>
    <message>
        <source>A bar or panel that lets the latch go when pushed, on the side people come from. Good: at least half as wide as the leaf. No public space, or not latched: n/a.</source>
        <translation type="unfinished">Una barra o panel que suelta el pestillo al empujarlo, en el lado del que viene la gente. Bien: al menos la mitad del ancho de la hoja. No es espacio público o no cierra con pestillo: n/p.</translation>
    </message>
    <message>
        <source>The quick release stands 760 to 1120 mm above the deck</source>
        <translation type="unfinished">El dispositivo de apertura rápida está de 760 a 1120 mm sobre la cubierta</translation>
    </message>
    <message>
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Altura de la apertura rápida sobre la cubierta</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the question of the quick release first.</source>
        <translation type="unfinished">De la cubierta al centro de la barra, con regla o cinta. Responda antes a la pregunta de la apertura rápida.</translation>
    </message>
    <message>
        <source>The quick release lets go at 67 N or less</source>
        <translation type="unfinished">El dispositivo de apertura rápida suelta el pestillo con 67 N o menos</translation>
    </message>
    <message>
        <source>Force that makes the quick release let go</source>
        <translation type="unfinished">Fuerza que suelta la apertura rápida</translation>
    </message>
    <message>
        <source>Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch lets go. Keep feet clear of the leaf.</source>
        <translation type="unfinished">Empuje con un dinamómetro en el centro de la barra, en el sentido de la evacuación, hasta que se suelte el pestillo. Mantenga los pies lejos de la hoja.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors or in groups</source>
        <translation type="unfinished">Se puede accionar desde un puesto de control, todas las puertas o por grupos</translation>
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
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The older text asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Accione el interruptor o la manija de la puerta. Bien: suelta la puerta. Mal: no hace nada. El texto antiguo lo pide en la puerta, no desde ambos lados.</translation>
    </message>
    <message>
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">El puente de navegación indica si está cerrada una puerta contraincendios de entrada o salida de un espacio de categoría especial</translation>
    </message>
    <message>
        <source>Is the bridge&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">¿Es cierta la indicación del puente: abierta, entreabierta y cerrada?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: true each time. Bad: no lamp for this door, or it says shut while the door stands ajar.</source>
        <translation type="unfinished">Pregunte al puente qué indica con la puerta abierta, entreabierta y cerrada. Bien: cierto cada vez. Mal: no hay lámpara para esta puerta, o dice cerrada mientras la puerta está entreabierta.</translation>
    </message>
    <message>
        <source>Its remote closing stands in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Su cierre a distancia está en el mismo puesto central de control que las alarmas de detección, y allí el panel indica si está abierta o cerrada</translation>
    </message>
    <message>
        <source>Closing control and open-or-closed lamp in the central station?</source>
        <translation type="unfinished">¿Mando de cierre y lámpara de abierta o cerrada en el puesto central?</translation>
    </message>
    <message>
        <source>In the continuously manned station: beside the alarms of the detection system, the control that closes this door and its lamp for open or closed.</source>
        <translation type="unfinished">En el puesto con dotación permanente: junto a las alarmas del sistema de detección, el mando que cierra esta puerta y su lámpara de abierta o cerrada.</translation>
    </message>
    <message>
        <source>It can be worked and watched from the safety centre</source>
        <translation type="unfinished">Se puede accionar y vigilar desde el centro de seguridad</translation>
    </message>
    <message>
        <source>Worked and watched from the safety centre?</source>
        <translation type="unfinished">¿Se acciona y se vigila desde el centro de seguridad?</translation>
    </message>
    <message>
        <source>In the safety centre: close this door and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">En el centro de seguridad: cierre esta puerta y vea cambiar su lámpara. Bien: ambos funcionan como en el puesto de control. Mal: no está en el panel.</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Se cierra sola si falla su control</translation>
    </message>
    <message>
        <source>Its holding and release work from the emergency source, and from the transitional battery until that takes over</source>
        <translation type="unfinished">Su retención y su accionamiento funcionan con la fuente de energía de emergencia, y con la batería transitoria hasta que aquella entra en servicio</translation>
    </message>
    <message>
        <source>In the blackout trial: held and released by emergency power?</source>
        <translation type="unfinished">En la prueba de apagón: ¿retenida y accionada con energía de emergencia?</translation>
    </message>
    <message>
        <source>Agree the trial with bridge and engineers, people clear. Main power off: battery first, then the emergency source. Good: held, released and shut under each. A system with its own battery counts.</source>
        <translation type="unfinished">Acuerde la prueba con puente y máquinas y aparte a la gente. Energía principal cortada: primero la batería, luego la fuente de emergencia. Bien: retenida, accionada y cerrada con cada una. Vale un sistema con batería propia.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text prints no size</source>
        <translation type="unfinished">Paso de manguera de cierre automático; el texto antiguo no imprime medida</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">¿Tiene paso de manguera que se cierra solo?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. A size is not printed for a ship of this date.</source>
        <translation type="unfinished">Puerta cerrada, borde inferior, opuesto a las bisagras. Levante la tapa y suéltela. Bien: cae cerrada. Mal: queda levantada, o no hay paso. Para un buque de esta fecha no se imprime medida.</translation>
    </message>
    <message>
        <source>B-class door of a material that cannot burn</source>
        <translation type="unfinished">Puerta de clase B de material incombustible</translation>
    </message>
    <message>
        <source>Door of a material that cannot burn?</source>
        <translation type="unfinished">¿Puerta de material incombustible?</translation>
    </message>
    <message>
        <source>See the plate and the papers. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow it between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Vea la placa y los documentos. Mal: madera o plástico. Con 36 pasajeros o menos la Administración puede permitirlo entre un camarote y su propia ducha o aseo: n/p.</translation>
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
        <source>Find every opening for air in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Busque toda abertura de aire en la hoja. Bien: baja en la hoja, bajo ella, o ninguna. Mal: una rejilla o agujeros en la mitad superior.</translation>
    </message>
    <message>
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se cierra de forma positiva a motor, o sola contra una inclinación de 3.5 grados</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">¿Se cierra de forma positiva, a motor o sola?</translation>
    </message>
    <message>
        <source>Release it with its supply on and cut. Good: it goes firmly home each time. Doors of escape trunks too. The space is not of category A: n/a.</source>
        <translation type="unfinished">Acciónela con su alimentación conectada y luego cortada. Bien: cierra del todo y con firmeza cada vez. También las puertas de troncos de evacuación. El espacio no es de categoría A: n/p.</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe and released remotely</source>
        <translation type="unfinished">Su dispositivo de retención es a prueba de fallos y se suelta a distancia</translation>
    </message>
    <message>
        <source>Hold-back fail-safe, and released remotely?</source>
        <translation type="unfinished">¿Retención a prueba de fallos y que se suelta a distancia?</translation>
    </message>
    <message>
        <source>Release it from its remote place, then with its supply cut. Good: it lets go each time. The space is not of category A, or nothing can hold the door: n/a.</source>
        <translation type="unfinished">Acciónela desde su mando a distancia y luego con su alimentación cortada. Bien: se suelta cada vez. El espacio no es de categoría A, o nada puede retener la puerta: n/p.</translation>
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
        <source>Find the control outside the machinery space. Good: it stands with the others, at one place or as few as possible, and can be reached when the space burns.</source>
        <translation type="unfinished">Busque el mando fuera del espacio de máquinas. Bien: está con los demás, en un solo lugar o en los menos posibles, y se puede llegar a él cuando arde el espacio.</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. Watertight doors are outside the rule; doors to the open deck have a row of their own.</source>
        <translation type="unfinished">Compare la placa de la puerta con su mamparo: A-15 basta en A-60, A-30 y A-15. Las puertas estancas quedan fuera de la regla; las que dan a cubierta expuesta tienen su propia fila.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead solid or hollow steel or equal</source>
        <translation type="unfinished">Puerta en un mamparo de clase A: de acero hueco o equivalente, rellena por completo de aislamiento estructural aprobado; en un mamparo A-0, de acero macizo o hueco o equivalente</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">¿De acero o equivalente, y rellena de aislamiento aprobado donde su mamparo es A-15 o más?</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its papers. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling that is not on the papers.</source>
        <translation type="unfinished">Golpee la hoja con los nudillos y lea sus documentos. A-60, A-30, A-15: rellena de aislamiento aprobado. A-0: acero, macizo o hueco. Mal: madera, plásticos, un relleno que no consta en los documentos.</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary solid or hollow steel or equal</source>
        <translation type="unfinished">Puerta en un contorno de clase A: de acero hueco o equivalente, rellena por completo de aislamiento estructural aprobado; en un contorno A-0, de acero macizo o hueco o equivalente</translation>
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
        <source>Look at leaf and frame, and ask for the approval of anything but metal. No class is printed for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Mire hoja y marco, y pida la aprobación de todo lo que no sea metal. No se imprime clase para tal puerta. Mal: madera o plásticos sin aprobación.</translation>
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
        <source>Look at leaf and frame, and ask for the approval of anything but steel. No class is printed for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Mire hoja y marco, y pida la aprobación de todo lo que no sea acero. No se imprime clase para tal puerta. Mal: paños de vidrio en un marco, madera o plásticos sin aprobación.</translation>
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
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no limit on the undercut are asked here.</source>
        <translation type="unfinished">Pida la aprobación del material. Bien: metal, o un tablero incombustible aprobado. Mal: madera o plásticos. Aquí no se pide pestillo ni límite del hueco inferior.</translation>
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
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph asks this in a C&apos; boundary: not applicable there.</source>
        <translation type="unfinished">Pida la aprobación del material. Bien: metal, o un tablero aprobado como incombustible. Mal: madera o plásticos. Ningún párrafo lo pide en un contorno C&apos;: ahí no procede.</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then free of the rules for A-class doors</source>
        <translation type="unfinished">Una puerta a cubierta expuesta en un mamparo de clase A puede ser de madera dura, de al menos 44.5 mm (1 3/4 in) de espesor, y queda entonces exenta de las reglas de las puertas de clase A</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">¿De madera dura de al menos 44.5 mm (1 3/4 in) de espesor?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. Whether such a door at a stairway must also close by itself is not said: ask.</source>
        <translation type="unfinished">Madera dura, medida en el canto de la hoja: 1 3/4 pulgadas. No se dice si tal puerta en una escalera debe además cerrarse sola: pregunte.</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Una puerta a cubierta de intemperie en un contorno de clase A puede ser de madera dura, de al menos 45 mm (1.75 in) de espesor</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">¿De madera dura de al menos 45 mm (1.75 in) de espesor?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. Whether latch, undercut, frame and closing by itself bind such a door is not said: ask.</source>
        <translation type="unfinished">Madera dura, medida en el canto de la hoja: 45 mm. No se dice si pestillo, hueco inferior, marco y cierre por sí sola obligan a tal puerta: pregunte.</translation>
    </message>
    <message>
        <source>One person can work it from each side</source>
        <translation type="unfinished">Una sola persona puede manejarla desde cada lado</translation>
    </message>
    <message>
        <source>Can one person work it?</source>
        <translation type="unfinished">¿Puede manejarla una sola persona?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or somebody on the far side.</source>
        <translation type="unfinished">Sin ayuda, desde cada lado: ábrala y ciérrela. Bien: una mano en la manija y, como mucho, un hombro. Mal: hacen falta dos personas, una herramienta o alguien al otro lado.</translation>
    </message>
    <message>
        <source>Opens the way people escape, where practicable</source>
        <translation type="unfinished">Se abre en el sentido de la evacuación, donde sea viable</translation>
    </message>
    <message>
        <source>Opens the way people escape, or is that not practicable here?</source>
        <translation type="unfinished">¿Se abre en el sentido de la evacuación, o aquí no es viable?</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Puertas de espacios públicos, troncos de escalera, pasillos y similares. La de un camarote no está exenta. Donde no se pueda, diga por qué en una observación y responda sí.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Puertas de alojamientos, escaleras, torres de escalera, corredores y espacios de control; la de un camarote está exenta. Donde no se pueda, diga por qué en una observación y responda sí.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side in light and in dark, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Como medio de evacuación: la abre una sola persona desde uno u otro lado, con luz y a oscuras, de forma evidente y rápida, con manijas fijas</translation>
    </message>
    <message>
        <source>One person, at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">¿Una sola persona, enseguida, a oscuras, con manija fija?</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where a hand goes, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Cierre los ojos y ábrala, desde uno y otro lado. Bien: la manija está donde va la mano, es fija y un solo gesto la abre. Mal: manija floja, cierre oculto, un segundo gesto.</translation>
    </message>
    <message>
        <source>As a means of escape it opens toward the way of escape</source>
        <translation type="unfinished">Como medio de evacuación se abre hacia la vía de evacuación</translation>
    </message>
    <message>
        <source>Opens toward the way of escape?</source>
        <translation type="unfinished">¿Se abre hacia la vía de evacuación?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. Here the rule has no words &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Póngase donde llega la gente y empuje. Aquí la regla no lleva las palabras «donde sea viable». Las puertas de camarotes individuales están exentas.</translation>
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
        <source>Ask who comes through it when the ship is full. A door that a passenger may use in an emergency is not one of crew alone.</source>
        <translation type="unfinished">Pregunte quién pasa por ella con el buque lleno. Una puerta que un pasajero puede usar en una emergencia no es solo de tripulación.</translation>
    </message>
    <message>
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Ancho libre de una puerta usada como medio de evacuación: al menos 810 mm (32 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; where only crew use it 28.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 32 pulgadas; donde solo la usa la tripulación, 28.</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Ancho libre de una puerta que solo la tripulación usa como medio de evacuación: al menos 710 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew alone.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 28 pulgadas si es solo de tripulación.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, save a crash door or a device easily forced, marked on both sides</source>
        <translation type="unfinished">Sin cerradura en las puertas que llevan a cualquiera de las dos evacuaciones exigidas, salvo una puerta que ceda al golpe (crash door) o un dispositivo fácil de forzar, señalizado en ambos lados</translation>
    </message>
    <message>
        <source>Free of a lock on the way to a required escape, or easily forced and so marked on both sides?</source>
        <translation type="unfinished">¿Sin cerradura hacia una evacuación exigida, o fácil de forzar y así señalizada en ambos lados?</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked by a key that an officer holds is free of it.</source>
        <translation type="unfinished">Bien: sin cerradura; o fácil de forzar, con un aviso claro y duradero en ambos lados. Está exenta una puerta exterior de caseta cerrada con una llave que tiene un oficial.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, in sight with the door open</source>
        <translation type="unfinished">La puerta lleva las letras F.S.D. y un número, de al menos 9.5 mm (3/8 in) de alto en placa, 25.4 mm (1 in) estarcidos, a la vista con la puerta abierta</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and in sight with the door open?</source>
        <translation type="unfinished">¿Lleva F.S.D. y su número, bastante grandes y a la vista con la puerta abierta?</translation>
    </message>
    <message>
        <source>Open the door, then look: F. S. D. and the register&apos;s number. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, gone, painted over. A door of a single room is free of it.</source>
        <translation type="unfinished">Abra la puerta y mire: F. S. D. y el número del registro. Letras en placa, 3/8 de pulgada; estarcidas, 1 pulgada. Mal: tapadas por la hoja abierta, ausentes, pintadas encima. La de un local individual está exenta.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts doors normally locked, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) exime a las puertas normalmente cerradas con llave, 78.47-35(a) a las de locales individuales: no son las mismas puertas.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not say how many are berthed.</source>
        <translation type="unfinished">Obliga a un buque con más de 600 pasajeros o más de 49 pasajeros con litera (46 CFR 116.438(a)); el registro no dice cuántos tienen litera.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Se acciona desde el puesto de control y en la puerta; se cierra si falla el sistema de control</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when the system fails?</source>
        <translation type="unfinished">¿Se acciona desde el puesto de control y en la puerta, y se cierra sola si falla el sistema?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with the system off: it must shut each time. A door that is normally closed need not have it. Hooks are asked about apart.</source>
        <translation type="unfinished">Pruébela desde el puesto de control, en la puerta y con el sistema desconectado: debe cerrarse cada vez. Una puerta normalmente cerrada no necesita tenerlo. Por los ganchos se pregunta aparte.</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">El dispositivo de retención, si lo hay, se suelta desde el puesto de control y en la puerta, y cuando falla su energía</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when its power fails?</source>
        <translation type="unfinished">¿Se suelta desde el puesto de control y en la puerta, y se cierra sola si falla su energía?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with its power off: it must shut each time. No hold-back fitted: not applicable. Hooks are asked about apart.</source>
        <translation type="unfinished">Pruébela desde el puesto de control, en la puerta y con su energía cortada: debe cerrarse cada vez. Sin dispositivo de retención: no procede. Por los ganchos se pregunta aparte.</translation>
    </message>
    <message>
        <source>No hook or other lasting means holds it open that the control station cannot let go</source>
        <translation type="unfinished">No la retiene abierta ningún gancho ni otro medio permanente que el puesto de control no pueda soltar</translation>
    </message>
    <message>
        <source>Free of hooks that the control station cannot let go?</source>
        <translation type="unfinished">¿Sin ganchos que el puesto de control no pueda soltar?</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that lets go from the control station, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Mire detrás de la hoja abierta, en el mamparo y al pie. Bien: un imán que se suelta desde el puesto de control, o nada. Mal: gancho, cadena, cuña fija a la cubierta.</translation>
    </message>
    <message>
        <source>The sentence on hooks exempts nobody; whether the exemption of normally closed doors, in the sentence on release, reaches it is not said.</source>
        <translation type="unfinished">La frase sobre los ganchos no exime a nadie; no se dice si la exención de las puertas normalmente cerradas, que está en la frase sobre el accionamiento, alcanza a la de los ganchos.</translation>
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
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station lets go is allowed, and a door normally closed or locked is not exempt.</source>
        <translation type="unfinished">Mire detrás de la hoja abierta, en el mamparo y al pie. No se admite ni siquiera un gancho que suelte el puesto de control, y una puerta normalmente cerrada o cerrada con llave no está exenta.</translation>
    </message>
    <message>
        <source>The latch of a double-swing door engages by the working of the release system</source>
        <translation type="unfinished">El pestillo de una puerta de vaivén encaja por la acción del sistema de accionamiento</translation>
    </message>
    <message>
        <source>Does the release make its latch engage?</source>
        <translation type="unfinished">¿Hace el accionamiento que encaje su pestillo?</translation>
    </message>
    <message>
        <source>Release it and watch the latch come home by itself. Such a door stands only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Acciónela y observe cómo encaja solo el pestillo. Tal puerta está solo donde se permite el vaivén por el uso del espacio.</translation>
    </message>
    <message>
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Ancho libre de una puerta que da a una escalera: al menos 711.2 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has a row of its own.</source>
        <translation type="unfinished">La abertura libre con la hoja abierta del todo, en el punto más estrecho. 28 pulgadas siempre; más donde sirve a más de diez personas, que tiene su propia fila.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served asks, and on the embarkation deck 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Una puerta que da a una escalera es tan ancha como pide el número de personas a que sirve y, en la cubierta de embarco, 1118 mm (44 in) a cada lado</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">¿Bastante ancha para las personas a que sirve?</translation>
    </message>
    <message>
        <source>Zone stairs, persons served: to 20 30 in, to 30 32, to 40 34, to 50 36, over 50 0.75 in each. Other passenger stairs over 50: 36. Crew over 10: 30. Embarkation deck: 44 to each side.</source>
        <translation type="unfinished">Escaleras de zona, personas servidas: hasta 20, 30 in; hasta 30, 32; hasta 40, 34; hasta 50, 36; más de 50, 0.75 in por persona. Otras escaleras de pasaje, más de 50: 36. Tripulación, más de 10: 30. Cubierta de embarco: 44 a cada lado.</translation>
    </message>
    <message>
        <source>The leaves of a double door may shut in any order</source>
        <translation type="unfinished">Las hojas de una puerta de dos hojas pueden cerrarse en cualquier orden</translation>
    </message>
    <message>
        <source>Do the leaves shut in any order?</source>
        <translation type="unfinished">¿Cierran las hojas en cualquier orden?</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it goes both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Cierre primero una hoja y luego la otra; después, al revés. Bien: cierra de las dos maneras. Solo de una: la segunda hoja necesita su propio tope.</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Donde una hoja debe cerrar siempre primero, la segunda tiene un tope de al menos 12.7 mm (1/2 in)</translation>
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
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted it may be idle, but it is there.</source>
        <translation type="unfinished">Mire el canto de la hoja. Bien: un pestillo y su cerradero en el marco. Mal: un rodillo, un imán o nada. Donde se permite el vaivén puede estar sin uso, pero está.</translation>
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
        <source>For a hardwood door to the weather deck 46 CFR 116.435(c)(9) sets construction and rating aside and says nothing of this.</source>
        <translation type="unfinished">Para una puerta de madera dura a cubierta de intemperie, 46 CFR 116.435(c)(9) deja de lado la construcción y la clase, y de esto no dice nada.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Su pestillo se maneja desde uno y otro lado</translation>
    </message>
    <message>
        <source>Does the handle draw the latch?</source>
        <translation type="unfinished">¿Retira la manija el pestillo?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not draw the bolt.</source>
        <translation type="unfinished">Ciérrela y ábrala por su manija: desde un lado y luego desde el otro. Mal: un lado sin manija, o una manija que no retira el pestillo.</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Salida del pestillo de al menos 19.05 mm (3/4 in) en un mamparo de clase A, 9.525 mm (3/8 in) en un mamparo de clase B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Con la puerta abierta y sujeta, mida cuánto sobresale el pestillo del canto. 3/4 de pulgada; clase B, 3/8 de pulgada.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (printed beside it: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Salida del pestillo de al menos 20 mm (impreso al lado: 0.75 in) en un contorno de clase A, 9.5 mm (0.375 in) en un contorno de clase B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. A class: the text prints 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Con la puerta abierta y sujeta, mida cuánto sobresale el pestillo del canto. Clase A: el texto imprime 20 mm y 0.75 pulgadas, que son 19.05 mm. Clase B: 9.5 mm.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Hueco inferior sobre el umbral o el revestimiento de cubierta de 12.7 mm (1/2 in) como máximo en un mamparo de clase A, 25.4 mm (1 in) en un mamparo de clase B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">El peor punto bajo la puerta cerrada, hasta el umbral o el revestimiento de cubierta. 1/2 pulgada; clase B, 1 pulgada. El linóleo y similares cuentan como revestimiento.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Hueco inferior sobre el umbral o el revestimiento de cubierta de 12.7 mm (1/2 in) como máximo en un contorno de clase A, 25 mm (1 in) en un contorno de clase B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">El peor punto bajo la puerta cerrada, hasta el umbral o el revestimiento de cubierta. 1/2 pulgada; clase B, 25 mm o 1 pulgada. El linóleo y similares cuentan como revestimiento.</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Ninguna alfombra ni moqueta atraviesa el vano de la puerta</translation>
    </message>
    <message>
        <source>Free of rugs and carpets that run through?</source>
        <translation type="unfinished">¿Sin alfombras ni moquetas que atraviesen el vano?</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Mire la cubierta bajo la puerta abierta. Bien: umbral, cubierta desnuda, linóleo o similar. Mal: una alfombra o moqueta que pasa de un lado al otro.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Holgura entre dos hojas que trabajan por separado, y arriba y a los lados de una puerta de vaivén, de 3.175 mm (1/8 in) como máximo</translation>
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
        <source>Net area of a vent grille or louver in a B-class bulkhead&apos;s door at most 0.186 m2 (2 sq ft)</source>
        <translation type="unfinished">Área neta de la rejilla o persiana de ventilación en la puerta de un mamparo de clase B: 0.186 m2 (2 sq ft) como máximo</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K prints nothing on grilles in such doors.</source>
        <translation type="unfinished">Sume las ranuras abiertas de la rejilla, no su marco. 2 pies cuadrados. Sin rejilla: 0. El subcapítulo K no imprime nada sobre rejillas en tales puertas.</translation>
    </message>
    <message>
        <source>A vent grille or louver stands only in the lower half of a B-class bulkhead&apos;s door</source>
        <translation type="unfinished">La rejilla o persiana de ventilación está solo en la mitad inferior de la puerta de un mamparo de clase B</translation>
    </message>
    <message>
        <source>Is the grille in the lower half alone?</source>
        <translation type="unfinished">¿Está la rejilla solo en la mitad inferior?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: not applicable.</source>
        <translation type="unfinished">Compare su borde superior con la mitad de la hoja. Sin rejilla: no procede.</translation>
    </message>
    <message>
        <source>A double-swing door stands only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Una puerta de vaivén está solo donde se permite el vaivén por el uso del espacio</translation>
    </message>
    <message>
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">¿Se permite el vaivén por el uso del espacio?</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is for. Where double swing is permitted its latch may normally be idle, but the door has one.</source>
        <translation type="unfinished">Pida la aprobación, o mire para qué sirve el espacio. Donde se permite el vaivén, su pestillo puede estar normalmente sin uso, pero la puerta lo tiene.</translation>
    </message>
    <message>
        <source>No double-swing door, save between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Sin puertas de vaivén, salvo entre un espacio de preparación de alimentos y un comedor de tripulación o de pasaje</translation>
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
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, hinged or pivoted steel cover with a bullet catch or the like, easy to work and shutting by itself</source>
        <translation type="unfinished">Paso de manguera, si lo hay: esquina inferior opuesta a la bisagra, unos 152 mm en cuadro, tapa de acero con bisagra o pivote y cierre de bola o similar, fácil de manejar y que se cierra sola</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 inches square, no tolerance printed: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. Register wrong, no port there: not applicable.</source>
        <translation type="unfinished">Esquina inferior opuesta a la bisagra, unas 6 pulgadas en cuadro, sin tolerancia impresa: debe pasar una manguera y cerrar la puerta sobre ella. Levante la tapa de acero y suéltela: debe caer cerrada. Registro erróneo, ahí no hay paso: no procede.</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is a vertical one</source>
        <translation type="unfinished">Una puerta en un alojamiento, escalera, torre de escalera o pasillo es vertical</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) asks for one?</source>
        <translation type="unfinished">¿Es una puerta vertical, donde (b)(1) la pide?</translation>
    </message>
    <message>
        <source>This one lies in a deck. Between machinery, stores or other crew spaces: not applicable. Over a stair: both paragraphs stand, and you decide.</source>
        <translation type="unfinished">Esta es horizontal (en la propia cubierta). Entre máquinas, pañoles u otros espacios de tripulación: no procede. Sobre una escalera: rigen ambos párrafos, y decide usted.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) asks for vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither sets the other aside.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) pide puertas verticales en las escaleras, (c)(7)(iii) habla de puertas horizontales tan anchas como la escalera: ninguno anula al otro.</translation>
    </message>
    <message>
        <source>A door in a deck gives only on a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) da solo a un espacio al que solo puede llegar la tripulación, y solo la tripulación la usa</translation>
    </message>
    <message>
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">¿Solo la tripulación puede llegar al espacio y solo ella usa la puerta?</translation>
    </message>
    <message>
        <source>Two tests: nobody but crew can get to the space, and nobody but crew use the door. Bad: a passenger could come to it, locked or not.</source>
        <translation type="unfinished">Dos pruebas: nadie más que la tripulación puede llegar al espacio, y nadie más que la tripulación usa la puerta. Mal: un pasajero podría llegar a ella, esté o no cerrada con llave.</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) se cierra sola contra una escora de 3.5 grados</translation>
    </message>
    <message>
        <source>Clear the stair and let it go from fully open and half open. Good: all the way home each time. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Despeje la escalera y suéltela desde abierta del todo y a medias. Bien: cierra del todo cada vez. Lo de los 3.5 grados no se puede ver en un buque adrizado.</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Una puerta horizontal (en la propia cubierta) no tiene gancho de retención</translation>
    </message>
    <message>
        <source>Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up. Nobody stands under it.</source>
        <translation type="unfinished">Mire el mamparo y la brazola junto a la puerta abierta. Bien: ningún gancho, cadena ni pasador que la sujete levantada. Nadie debe ponerse debajo.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, lets go at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">El dispositivo de retención de una puerta horizontal (en la propia cubierta), si lo hay, se suelta en la puerta, con una señal desde un espacio de control y cuando se interrumpe la energía</translation>
    </message>
    <message>
        <source>Lets go at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">¿Se suelta en la puerta, desde el espacio de control y al perderse la energía?</translation>
    </message>
    <message>
        <source>Clear the stair first. At the door, from the control space, with its power off: it must shut each time. No hold-back fitted: not applicable.</source>
        <translation type="unfinished">Despeje antes la escalera. En la puerta, desde el espacio de control, con su energía cortada: debe cerrarse cada vez. Sin dispositivo de retención: no procede.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure from below of 0.07 kPa (0.01 psi)</source>
        <translation type="unfinished">El pestillo de una puerta horizontal (en la propia cubierta) la mantiene cerrada contra una presión desde abajo de 0.07 kPa (0.01 psi)</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">¿Aguanta el pestillo 0.07 kPa desde abajo?</translation>
    </message>
    <message>
        <source>A check of papers: the maker&apos;s figure, 0.07 kPa, about 7 kg on each square metre. Shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Comprobación de documentos: la cifra del fabricante, 0.07 kPa, unos 7 kg por metro cuadrado. Cerrada, empuje desde abajo: no debe levantarse.</translation>
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
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint is glass.</source>
        <translation type="unfinished">Mire toda la hoja, ambas caras, también el vidrio en paneles. Un cristal tras una tapa o bajo la pintura es vidrio.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m2 (100 sq in)</source>
        <translation type="unfinished">Vidrio armado en puerta de clase A de 0.0645 m2 (100 sq in) como máximo</translation>
    </message>
    <message>
        <source>The glass that can be seen, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">El vidrio visible, alto por ancho. 100 pulgadas cuadradas. Sin vidrio: 0. Las puertas a cubierta expuesta no tienen tal límite.</translation>
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
        <source>Is its glass wired, where it opens onto a place of embarkation or lowering?</source>
        <translation type="unfinished">¿Es armado su vidrio, donde da a un lugar de embarco o arriado?</translation>
    </message>
    <message>
        <source>Asked where it opens there from a service, cargo or machinery space, or from accommodation with furniture that burns. Its area is free. Opening elsewhere: not applicable.</source>
        <translation type="unfinished">Se pide donde da allí desde un espacio de servicio, de carga o de máquinas, o desde un alojamiento con muebles que arden. El área no tiene límite. Da a otro lugar: no procede.</translation>
    </message>
    <message>
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Todo vidrio de una puerta tiene al menos 6.35 mm (1/4 in) de espesor</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure of the papers. The thinnest pane counts.</source>
        <translation type="unfinished">Incluidas las puertas de madera dura a cubierta expuesta. Mida en un canto descubierto, o tome la cifra de los documentos. Cuenta el paño más delgado.</translation>
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
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone. In a hardwood door to the open deck: not applicable.</source>
        <translation type="unfinished">Mire el borde de cada paño de vidrio, por ambas caras. Bien: metal todo alrededor. Mal: solo madera, masilla o goma. En una puerta de madera dura a cubierta expuesta: no procede.</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is asked: strands lie level, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Vidrio armado de hilos sencillos, donde se pide vidrio armado: hilos horizontales, separados 50.8 mm (2 in) como máximo</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: they lie level. Bad: upright. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">De hilo a hilo, en el punto más ancho. 2 pulgadas. Bien: son horizontales. Mal: verticales. Vidrio con malla de alambre: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary asks</source>
        <translation type="unfinished">Las ventanas de la puerta siguen las reglas de las ventanas: vidrio templado o laminado de al menos 6.5 mm (0.25 in) de espesor, con el marco y el obturador que pide su contorno</translation>
    </message>
    <message>
        <source>Are its windows as those of its boundary must be?</source>
        <translation type="unfinished">¿Son sus ventanas como deben ser las de su contorno?</translation>
    </message>
    <message>
        <source>A class: steel frame and, inside, an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. A fire window of a listed make will do in B class.</source>
        <translation type="unfinished">Clase A: marco de acero y, por dentro, obturador aislado. B-15: armado, y obturador con eslabón fusible; B-0: armado. En clase B vale una ventana contraincendios de un modelo listado.</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) on windows in doors stands beside the wired glass of 116.435(c)(9) and (10) without a word of which goes first.</source>
        <translation type="unfinished">46 CFR 116.433(f), sobre ventanas en puertas, está junto al vidrio armado de 116.435(c)(9) y (10) sin decir cuál prevalece.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where the bulkhead may have it</source>
        <translation type="unfinished">Chapas combustibles solo como y donde las puede llevar el mamparo</translation>
    </message>
    <message>
        <source>Free of veneer that its bulkhead may not have?</source>
        <translation type="unfinished">¿Sin chapas que su mamparo no pueda llevar?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than the bulkhead beside it may have. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Compare hoja y mamparo. Bien: sin chapas, o no más de las que puede llevar el mamparo contiguo. Mal: madera o laminado en una puerta cuyo mamparo no lleva.</translation>
    </message>
    <message>
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Una puerta decorativa contigua es de material incombustible aprobado, no la estorba y, en una vía principal de evacuación, se abre en el mismo sentido</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns or opens the wrong way?</source>
        <translation type="unfinished">¿Sin puerta decorativa que la estorbe, arda o se abra en sentido contrario?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Maneje las dos juntas. No hay ninguna: no procede. Mal: hay que abrirla antes, su manija estorba, o se abre contra el flujo de personas.</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Una puerta decorativa contigua es incombustible o de madera dura, no la estorba y se abre en el mismo sentido; ninguna en escaleras ni torres de escalera</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns, opens the wrong way or stands at a stair?</source>
        <translation type="unfinished">¿Sin puerta decorativa que la estorbe, arda, se abra en sentido contrario o esté en una escalera?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, it opens the other way, or it stands at a stairway.</source>
        <translation type="unfinished">Maneje las dos juntas. No hay ninguna: no procede. Mal: hay que abrirla antes, se abre en sentido contrario, o está en una escalera.</translation>
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
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted: maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Los cantos verticales de la hoja abierta. Bien: placa de metal, atornillada o remachada: fabricante, clase, homologación, plano. Mal: ninguna, una pegatina, pintada, falta un dato.</translation>
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
        <source>The gap between leaf and frame is no wider than in the fire test of the door</source>
        <translation type="unfinished">El hueco entre hoja y marco no es mayor que en el ensayo al fuego de la puerta</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">¿Hueco entre hoja y marco no mayor que en su ensayo al fuego?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Ask for the report of its fire test: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or nobody knows what was tested.</source>
        <translation type="unfinished">Alrededor de la hoja cerrada, con galga. Pida el informe de su ensayo al fuego: da el hueco ensayado. Bien: en ningún punto mayor. Mal: mayor, o nadie sabe qué se ensayó.</translation>
    </message>
    <message>
        <source>The gap between leaf and frame is the smallest with which the door works</source>
        <translation type="unfinished">El hueco entre hoja y marco es el menor con el que la puerta funciona</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">¿Hueco entre hoja y marco tan pequeño como puede ser?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or a side that hangs open.</source>
        <translation type="unfinished">Alrededor de la hoja cerrada, con galga. Bien: parejo y no mayor de lo que la hoja necesita para moverse. Mal: se ve luz, o un lado queda abierto.</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures</source>
        <translation type="unfinished">qué hueco es practicable, el texto no lo dice en cifras</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">qué hueco es practicable, el texto no lo dice en cifras; un buque construido antes del 3 de febrero de 2017 puede conservar su regla anterior hasta que se sustituya la puerta o se reforme el buque (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">La puerta no tiene rejilla ni persiana</translation>
    </message>
    <message>
        <source>No grille or louvre in it?</source>
        <translation type="unfinished">¿Sin rejilla ni persiana?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or holes for air, open or closed with a plate.</source>
        <translation type="unfinished">Las dos caras de la hoja, de arriba abajo. Bien: ninguna. Mal: una rejilla, una persiana o agujeros para el aire, abiertos o tapados con una chapa.</translation>
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
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, next to no draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Ciérrela, ponga una lámpara al otro lado y mire por los cantos; busque corriente de aire. Bien: sin luz y casi sin corriente. Mal: luz, una junta que no toca, un agujero.</translation>
    </message>
    <message>
        <source>A door of a machinery space of category A is gastight when shut</source>
        <translation type="unfinished">La puerta de un espacio de máquinas de categoría A es estanca a los gases cuando está cerrada</translation>
    </message>
    <message>
        <source>Gastight when shut?</source>
        <translation type="unfinished">¿Estanca a los gases cuando está cerrada?</translation>
    </message>
    <message>
        <source>Shut it with the fans of the machinery space running and go round the edge with a hand and a lamp. Good: no draught and no light anywhere. The space is not of category A: n/a.</source>
        <translation type="unfinished">Ciérrela con los ventiladores de máquinas en marcha y recorra el canto con la mano y una lámpara. Bien: ni corriente ni luz en ningún punto. El espacio no es de categoría A: no procede.</translation>
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
        <source>No opening for air in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Sin abertura para el aire en la puerta de un tronco de escalera ni debajo de ella</translation>
    </message>
    <message>
        <source>No opening for air in or under it?</source>
        <translation type="unfinished">¿Sin abertura para el aire en ella ni debajo?</translation>
    </message>
    <message>
        <source>The whole leaf and its foot, shut. Good: no grille, no holes, no cut for air at the foot. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Toda la hoja y su pie, cerrada. Bien: sin rejilla, sin agujeros, sin corte para el aire al pie. Mal: una rejilla en cualquier punto, o un hueco dejado debajo para el aire.</translation>
    </message>
    <message>
        <source>Every hose port that is fitted: self-closing, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Todo paso de manguera que haya: de cierre automático, 150 mm en cuadro libres con la puerta cerrada, tan resistente al fuego como la puerta</translation>
    </message>
    <message>
        <source>A hose port that is fitted: self-closing, 150 mm square</source>
        <translation type="unfinished">Paso de manguera, si lo hay: de cierre automático, 150 mm en cuadro</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Se cierra sola</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. The text prints no angle. The space is not of category A: n/a.</source>
        <translation type="unfinished">Suéltela abierta del todo, a medias y con un ángulo pequeño. Bien: cierra hasta el final cada vez. El texto no imprime ángulo. El espacio no es de categoría A: no procede.</translation>
    </message>
    <message>
        <source>Opening for air in or under the door of a corridor no more than 0.05 m2, with a non-combustible grille</source>
        <translation type="unfinished">Abertura para el aire en la puerta de un pasillo o debajo de ella, de no más de 0,05 m2, con rejilla incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">La rejilla de la hoja o el corte debajo. Cuente solo el paso libre entre barras; 0 si no hay. La rejilla debe ser incombustible. No es puerta de pasillo: no procede.</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half of the door of a corridor, or under it</source>
        <translation type="unfinished">Abertura para el aire solo en la mitad inferior de la puerta de un pasillo, o debajo</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half, or none?</source>
        <translation type="unfinished">¿Abertura para el aire solo en la mitad inferior, o ninguna?</translation>
    </message>
    <message>
        <source>Find every opening for air in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">Busque toda abertura para el aire en la hoja. Bien: en la mitad inferior, debajo, o ninguna. Mal: rejilla o agujeros en la mitad superior. No es puerta de pasillo: no procede.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule prints no angle that was read</source>
        <translation type="unfinished">Se cierra sola; de la regla anterior no se leyó ángulo alguno</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar.</source>
        <translation type="unfinished">Suéltela abierta del todo, a medias y con un ángulo pequeño. Bien: cierra hasta el final cada vez. Mal: queda entreabierta.</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">si el art. 158 del Reglamento de construcción de cascos es la regla anterior que este buque conserva (SOR/2017-14, arts. 103 y 203)</translation>
    </message>
    <message>
        <source>What holds it open is fail-safe: it closes when the hold fails</source>
        <translation type="unfinished">Lo que la mantiene abierta es a prueba de fallos: se cierra cuando falla la retención</translation>
    </message>
    <message>
        <source>What holds it open is released at the door</source>
        <translation type="unfinished">Lo que la mantiene abierta se acciona desde la puerta</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing.</source>
        <translation type="unfinished">Accione el interruptor o tirador de la puerta. Bien: suelta la puerta. Mal: no hace nada.</translation>
    </message>
    <message>
        <source>What holds it open is released from the wheelhouse</source>
        <translation type="unfinished">Lo que la mantiene abierta se acciona desde la caseta de gobierno</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">¿La acciona la caseta de gobierno?</translation>
    </message>
    <message>
        <source>The wheelhouse releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">La caseta de gobierno acciona la puerta o su grupo. Bien: se suelta y cierra. Mal: queda abierta. Un vigilante en cada puerta del grupo, a ambos lados.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans stand above these rows; changes after 25 July 2025 were not checked.</source>
        <translation type="unfinished">Transport Canada, sus inspectores y los planos aprobados están por encima de estas filas; los cambios posteriores al 25 de julio de 2025 no se comprobaron.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and these rows (ss. 101, 102, 120); one built before 1 July 2002 may keep the structural fire protection of its day, but not part E, replaced parts or a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Buques de pasaje canadienses con certificados del convenio: les obligan SOLAS II-2 y estas filas (arts. 101, 102, 120); uno construido antes del 1 de julio de 2002 puede conservar la protección estructural de su época, pero no la parte E, las piezas sustituidas ni una reforma importante (arts. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, state of 23 July 2026), everything about doors</source>
        <translation type="unfinished">Las leyes consolidadas de Canadá en XML (github.com/justicecanada/laws-lois-xml, estado del 23 de julio de 2026), todo lo relativo a puertas</translation>
    </message>
    <message>
        <source>The law of its day for a ship built before 1 July 2002</source>
        <translation type="unfinished">La ley de su época para un buque construido antes del 1 de julio de 2002</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, of 24 m or more, or of more than 15 gross tons, less than 24 m and more than 36 berthed passengers: SOLAS II-2 binds them too (s. 102(1)); berths decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Buques de pasaje canadienses sin certificados del convenio, de 24 m o más, o de más de 15 toneladas brutas, menos de 24 m y más de 36 pasajeros con litera: también les obliga SOLAS II-2 (art. 102(1)); las literas deciden cuáles cuentan como de más de 36 pasajeros (art. 102(3))</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, but for s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Las reglas anteriores que puede conservar un buque construido antes del 3 de febrero de 2017, salvo el art. 158 del Reglamento de construcción de cascos</translation>
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
        <source>The door is of the class of the partition it stands in; a watertight door needs no insulation</source>
        <translation type="unfinished">La puerta es de la clase del tabique en que está; una puerta estanca no necesita aislamiento</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door is at least as strong. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Compare la placa de la puerta con la clase del tabique que la rodea. Bien: la puerta es al menos igual de fuerte. Una puerta estanca no necesita aislamiento (art. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>read for vessels built from 30 December 2008 until ES-TRIN took its place on 7 October 2018 (a date from memory); for any other vessel the text was not read</source>
        <translation type="unfinished">leído para buques construidos desde el 30 de diciembre de 2008 hasta que ES-TRIN lo sustituyó el 7 de octubre de 2018 (fecha de memoria); para cualquier otro buque no se leyó el texto</translation>
    </message>
    <message>
        <source>Closes by itself; the text prints no angle, no seconds and no speed</source>
        <translation type="unfinished">Se cierra sola; el texto no imprime ángulo, segundos ni velocidad</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The text prints no angle, seconds or speed.</source>
        <translation type="unfinished">Suéltela abierta del todo, a medias y con un ángulo pequeño. Bien: cierra hasta el final cada vez. Mal: queda entreabierta. El texto no imprime ángulo, segundos ni velocidad.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Si está abierta en servicio, puede cerrarse en el lugar</translation>
    </message>
    <message>
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">¿Puede cerrarse en el lugar?</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go and it closes. Bad: it does nothing.</source>
        <translation type="unfinished">Accione el interruptor o tirador de la puerta. Bien: la suelta y se cierra. Mal: no hace nada.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed from a place that is permanently manned</source>
        <translation type="unfinished">Si está abierta en servicio, puede cerrarse desde un lugar con dotación permanente</translation>
    </message>
    <message>
        <source>Can it be closed from the place that is always manned?</source>
        <translation type="unfinished">¿Puede cerrarse desde el lugar que siempre tiene dotación?</translation>
    </message>
    <message>
        <source>The place that is always manned releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">El lugar con dotación permanente acciona la puerta o su grupo. Bien: se suelta y cierra. Mal: queda abierta. Un vigilante en cada puerta del grupo, a ambos lados.</translation>
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
        <source>After the release from the manned place, open it by hand and let go. Good: it opens, and closes again without harm to anybody. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Accionada desde el lugar con dotación, ábrala a mano y suéltela. Bien: se abre y vuelve a cerrarse sin dañar a nadie. Mal: queda bloqueada, o abierta.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which took the place of this text, was not read.</source>
        <translation type="unfinished">Decide el organismo de inspección que expide el certificado del buque; ES-TRIN, que sustituyó este texto, no se leyó.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, by their certificate of Directive 2006/87/EC</source>
        <translation type="unfinished">Buques de pasaje de las vías navegables interiores de la Unión Europea, según su certificado de la Directiva 2006/87/CE</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations that are not in a code); the end of its dates is from memory</source>
        <translation type="unfinished">La orden francesa de 30 de diciembre de 2008, anexo, art. 15.11(8) y (10) (github.com/etalab, leyes y reglamentos no codificados); el fin de sus fechas es de memoria</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which took its place; what was allowed to vessels that were there before; the tables of partitions</source>
        <translation type="unfinished">El capítulo 19 de ES-TRIN, que lo sustituyó; lo permitido a los buques ya existentes; las tablas de tabiques</translation>
    </message>
    <message>
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">el código dice &quot;should&quot; (debería)</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The code asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Accione el interruptor o tirador de la puerta. Bien: suelta la puerta. Mal: no hace nada. El código lo pide en la puerta, no desde ambos lados.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes that came after LY3 were not read.</source>
        <translation type="unfinished">Decide la Administración que certifica el yate; los códigos posteriores a LY3 no se leyeron.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified by LY3; the code says &quot;should&quot;, so a failure is the inspector&apos;s to decide</source>
        <translation type="unfinished">Grandes yates comerciales de 500 toneladas brutas o más certificados según LY3; el código dice &quot;should&quot;, así que un fallo queda a criterio del inspector</translation>
    </message>
    <message>
        <source>A page of imorules.com, of which paragraph 14B.2.7.4 was at hand to sub-item (e)</source>
        <translation type="unfinished">Una página de imorules.com, de la que el párrafo 14B.2.7.4 estuvo a mano hasta el apartado (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates between which LY3 was in force; what came after it. Other rows of SOLAS are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 tras el apartado (e) y los demás párrafos de protección contra incendios; las fechas entre las que LY3 estuvo en vigor; lo que vino después. Otras filas del SOLAS se muestran como recomendación.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration stand above these periods; no days of grace are printed.</source>
        <translation type="unfinished">El plan de mantenimiento de la compañía y la Administración del Estado de abanderamiento están por encima de estos plazos; no hay días de gracia impresos.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date; what the circular says of maintenance, not of a test</source>
        <translation type="unfinished">Todo buque, de cualquier fecha; lo que la circular dice del mantenimiento, no de un ensayo</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432; SOLAS III/19 y III/30 en la base de tratados del Gobierno neerlandés (BWBV0003264, abril de 2015)</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: rows of SOLAS are shown as advice and fail nothing, and rows of common practice are left to the inspector.</source>
        <translation type="unfinished">La Administración del propio buque decide qué le obliga: las filas del SOLAS se muestran como recomendación y no suspenden nada, y las de práctica común quedan a criterio del inspector.</translation>
    </message>
    <message>
        <source>Vessels of other flags, and of rules that are not named here: no text in this catalogue binds them, and everything they are told is advice</source>
        <translation type="unfinished">Buques de otros pabellones y de reglas que aquí no se nombran: ningún texto de este catálogo les obliga, y todo lo que se les dice es recomendación</translation>
    </message>
    <message>
        <source>Every text of such a flag</source>
        <translation type="unfinished">Todo texto de tal pabellón</translation>
    </message>
    <message>
        <source>Rows of common practice have no published source here: they never fail a door by themselves, the inspector decides.</source>
        <translation type="unfinished">Las filas de práctica común no tienen aquí fuente publicada: nunca suspenden una puerta por sí solas, decide el inspector.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Todo buque, de cualquier pabellón y fecha</translation>
    </message>
    <message>
        <source>There is no published text of it.</source>
        <translation type="unfinished">No hay texto publicado de ello.</translation>
    </message>
    <message>
        <source>The speed of closing is controlled where that is needed so that nobody is endangered; the older text prints no figure</source>
        <translation type="unfinished">La velocidad de cierre está regulada donde haga falta para que nadie corra peligro; el texto antiguo no imprime cifra alguna</translation>
    </message>
    <message>
        <source>Speed of closing controlled, so that nobody is endangered?</source>
        <translation type="unfinished">¿Velocidad de cierre regulada, sin peligro para nadie?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text prints no seconds and no metres a second.</source>
        <translation type="unfinished">Véala cerrar desde abierta del todo. Bien: se mueve por igual y da tiempo a apartarse. Mal: da un portazo o se desboca. El texto antiguo no imprime segundos ni metros por segundo.</translation>
    </message>
    <message>
        <source>where the speed has to be controlled, the text leaves to judgement; it prints no figure</source>
        <translation type="unfinished">dónde hay que regular la velocidad, el texto lo deja al criterio; no imprime cifra alguna</translation>
    </message>
    <message>
        <source>Of the texts before 1 July 2002 only a part was read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">De los textos anteriores al 1 de julio de 2002 solo se leyó una parte: para un buque más antiguo pida el plano aprobado y las reglas de su época.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Buques de pasaje del SOLAS construidos antes del 1 de julio de 2002, que conservan el capítulo II-2 enmendado hasta su fecha (II-2/1.2.1 de 2015); tras una reparación o reforma al menos eso, tras una importante el texto nuevo en lo razonable (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Reglas de Taiwán sobre estructura contra incendios de buques, art. 27, a 9 de enero de 2018: una transposición nacional de la redacción de 1981/83 de SOLAS II-2/30</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres a second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 de 1981/83 impresa; las enmiendas de 1992 a las reglas 30, 41-1 y 41-2 (segundos, metros por segundo, alarma, fechas de adaptación): pida el plano aprobado; las tablas de incendios anteriores a 2002</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Buques de pasaje del SOLAS construidos antes del 1 de julio de 2002 con espacios de categoría especial</translation>
    </message>
    <message>
        <source>An English print of MSC.1(XLV) on the internet, of which only a part was at hand: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Una copia inglesa de MSC.1(XLV) en internet, de la que solo hubo a mano una parte: II-2/37.1.1.2 y 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, the regulation on doors (30) among it</source>
        <translation type="unfinished">El resto de las enmiendas de 1981, entre ellas la regla de las puertas (30)</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Suena una alarma al soltarla desde el puesto de control</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">¿Sonó una alarma al soltarla el puesto de control?</translation>
    </message>
    <message>
        <source>Listen at the door as the control station releases it. Good: the alarm sounds before the leaf stirs. Bad: silence, or an alarm that starts with the leaf. A silent sliding door crushes whoever stands in it.</source>
        <translation type="unfinished">Escuche junto a la puerta mientras el puesto de control la suelta. Bien: la alarma suena antes de que la hoja se mueva. Mal: silencio, o una alarma que empieza con la hoja. Una corredera silenciosa aplasta a quien esté en ella.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; whether this door is in a public space the register does not say</source>
        <translation type="unfinished">9.4.1.1.8 nombra escaleras, espacios públicos y mamparos de zona; el registro no dice si esta puerta está en un espacio público</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans stand above this catalogue; amendments after its edition were not checked.</source>
        <translation type="unfinished">Las reglas locales, la Administración del Estado de abanderamiento y sus planos aprobados están por encima de este catálogo; las enmiendas posteriores a su edición no se comprobaron.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built on or after 1 July 2002; part E, condition and maintenance plan, of any date</source>
        <translation type="unfinished">Buques de pasaje del SOLAS construidos desde el 1 de julio de 2002; la parte E, estado y plan de mantenimiento, de cualquier fecha</translation>
    </message>
    <message>
        <source>The English print in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">La copia inglesa de la base de tratados del Gobierno neerlandés (BWBV0003264, abril de 2015), y la propia copia francesa del texto francés (orden de 23 de noviembre de 1987, división 221), que confirma cada cifra</translation>
    </message>
    <message>
        <source>Amendments after April 2015: of MSC.421(98) nothing was seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations of IMO and of classification societies.</source>
        <translation type="unfinished">Las enmiendas posteriores a abril de 2015: de MSC.421(98) no se vio nada; de MSC.550(108), en vigor el 1 de enero de 2026, solo que renumera II-2/9.6. Las interpretaciones de la OMI y de las sociedades de clasificación.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) speaks of public spaces, stairway enclosures, corridors and the like; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) habla de espacios públicos, cajas de escalera, pasillos y similares; no dice si alcanza a esta puerta.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) speaks of accommodation spaces, stairways, stairtowers, passageways and control spaces; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) habla de alojamientos, escaleras, torres de escalera, pasillos y puestos de control; no dice si alcanza a esta puerta.</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may be asked what stairway doors are</source>
        <translation type="unfinished">A una puerta exterior que da a una caja de escalera se le puede pedir lo que a las de escalera</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">¿Da a una caja de escalera?</translation>
    </message>
    <message>
        <source>See what lies inside the door. Yes: a stairway enclosure. Neither answer is a fault: it decides what else is asked of the door.</source>
        <translation type="unfinished">Vea qué hay tras la puerta. Sí: una caja de escalera. Ninguna respuesta es una falta: decide qué más se pregunta de la puerta.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; whether 72.05-25(b)(9) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) permite madera dura en una puerta a cubierta abierta; no dice si 72.05-25(b)(9) alcanza aún a la que da a una escalera.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; whether 116.435(c)(6) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) permite madera dura en una puerta a cubierta de intemperie; no dice si 116.435(c)(6) alcanza aún a la que da a una escalera.</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the edition of 2015 were not checked. Later rules whose headings touch these parts, and whose text was not read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may stand while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 takes its place (116.400). A vessel that was there before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">El Officer in Charge, Marine Inspection, decide qué se aplica a un buque de los Estados Unidos; los cambios posteriores a la edición de 2015 no se comprobaron. Reglas posteriores cuyos títulos tocan estas partes y cuyo texto no se leyó: 81 FR 48219 (22 de julio de 2016), 89 FR 76676 (18 de septiembre de 2024) y, para 46 CFR 111.99-3, 88 FR 16365 (16 de marzo de 2023). El subcapítulo H es para buques de 100 toneladas brutas o más, o con más de 150 pasajeros, o en viajes internacionales, contratados desde el 26 de mayo de 1965; lo aprobado antes puede seguir mientras se mantenga en buen estado (46 CFR 72.05-1, 72.05-90). El subcapítulo K es para buques con más de 150 pasajeros, o con 50 a 150 pasajeros con litera; con más de 150 pasajeros con litera rige 72.05 (116.400). Un buque que existía antes del 11 de marzo de 1996 conserva las reglas del 10 de marzo de 1996, o puede elegir estas (116.115).</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Buques de pasaje de los Estados Unidos del subcapítulo H: de 100 toneladas brutas o más, con más de 150 pasajeros, o en viajes internacionales; contratados desde el 26 de mayo de 1965</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10 paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">La edición anual de 2015, cada sección en su página de una copia pública (github.com/18F/allregs); de 72.05-10, los párrafos (a) a (g) y las tablas (d) y (e)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Los cambios posteriores a 2015. Las reglas anteriores al 26 de mayo de 1965, que los buques más antiguos pueden conservar.</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Buques de pasaje de los Estados Unidos del subcapítulo K: con más de 150 pasajeros, o de 50 a 150 pasajeros con litera; construidos desde el 11 de marzo de 1996</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">La edición anual de 2015, cada sección en su página de una copia pública (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Los cambios posteriores a 2015. Las reglas del 10 de marzo de 1996, que los buques más antiguos pueden conservar.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>Another edition of the catalogue is in use.</source>
        <translation type="unfinished">Se usa otra edición del catálogo.</translation>
    </message>
    <message>
        <source>Another edition of the catalogue, or of the rules of %1, is in use.</source>
        <translation type="unfinished">Se usa otra edición del catálogo o de las reglas de %1.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer stand over the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 ya no están por encima del catálogo.</translation>
    </message>
    <message>
        <source>The rules of %1 now stand over the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 están ahora por encima del catálogo.</translation>
    </message>
    <message>
        <source>%1 before, %2 now</source>
        <translation type="unfinished">%1 antes, %2 ahora</translation>
    </message>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">no existe ese requisito</translation>
    </message>
    <message>
        <source>not asked of this door</source>
        <translation type="unfinished">no se pide a esta puerta</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Límite: %1</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>The claim stands.</source>
        <translation type="unfinished">La afirmación se sostiene.</translation>
    </message>
    <message>
        <source>Go on: test %1 more.</source>
        <translation type="unfinished">Siga: pruebe %1 más.</translation>
    </message>
    <message>
        <source>Extend: test %1 more; if none of those fails, the claim stands, with a little less confidence than stated, for the doors themselves made the sample larger.</source>
        <translation type="unfinished">Amplíe: pruebe %1 más; si ninguna falla, la afirmación se sostiene, con algo menos de confianza que la indicada, pues las propias puertas agrandaron la muestra.</translation>
    </message>
    <message>
        <source>Every door was tested: the claim does not stand.</source>
        <translation type="unfinished">Se probaron todas las puertas: la afirmación no se sostiene.</translation>
    </message>
    <message>
        <source>Test all: the %1 doors that are left as well.</source>
        <translation type="unfinished">Pruebe todas: también las %1 puertas que quedan.</translation>
    </message>
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
        <source>%1 of %2 doors tested, %3 failed: %4 confident that %5. %6</source>
        <translation type="unfinished">%1 de %2 puertas probadas, %3 fallaron: confianza del %4 en que %5. %6</translation>
    </message>
    <message>
        <source>none of 1 door is defective</source>
        <translation type="unfinished">la única puerta no es defectuosa</translation>
    </message>
    <message>
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">como máximo 1 de 1 puerta es defectuosa</translation>
    </message>
    <message>
        <source>Test 1 door, drawn by lot. If none fails: %1 confident that %2.</source>
        <translation type="unfinished">Pruebe 1 puerta, elegida por sorteo. Si no falla: confianza del %1 en que %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn by lot. If none fails: %2 confident that %3.</source>
        <translation type="unfinished">Pruebe %1 puertas, elegidas por sorteo. Si ninguna falla: confianza del %2 en que %3.</translation>
    </message>
    <message>
        <source>Another claim, not to be mixed up with it: where exactly %1 of %2 doors are defective, testing %3 gives a chance of at least %4 to find one of them or more.</source>
        <translation type="unfinished">Otra afirmación, que no debe confundirse con la anterior: si hay exactamente %1 de %2 puertas defectuosas, probar %3 da una probabilidad de al menos el %4 de hallar una o más de ellas.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confident that %3. %4</source>
        <translation type="unfinished">%1 de 1 puerta probada, ninguna falló: confianza del %2 en que %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confident that %4. %5</source>
        <translation type="unfinished">%1 de %2 puertas probadas, ninguna falló: confianza del %3 en que %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confident that %2. %3</source>
        <translation type="unfinished">1 de 1 puerta probada, 1 falló: confianza del %1 en que %2. %3</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Una placa grabada %1</translation>
    </message>
    <message>
        <source>A plate scoured bare; no letter is left</source>
        <translation type="unfinished">Una placa borrada; no queda ni una letra</translation>
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
        <source>A port 150 mm square, %1</source>
        <translation type="unfinished">Un paso de 150 mm en cuadro, %1</translation>
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
        <source>Two lamps, nobody has told of them yet</source>
        <translation type="unfinished">Dos lámparas, nadie ha dicho aún nada de ellas</translation>
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
        <source>A soft edge on the leaf and a block before it; nothing was run onto it yet</source>
        <translation type="unfinished">Un borde blando en la hoja y un bloque delante; aún no se ha llevado contra nada</translation>
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
        <source>A cup, crumpled paper and an end of line on the bottom rail</source>
        <translation type="unfinished">Un vaso, papel arrugado y un chicote en el carril inferior</translation>
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
        <source>Paint of the bulkhead runs over the seal</source>
        <translation type="unfinished">La pintura del mamparo cubre la junta</translation>
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
        <source>The bolt stands well out of its case</source>
        <translation type="unfinished">El pestillo sobresale bien de su caja</translation>
    </message>
    <message>
        <source>The tip of the bolt just shows out of its case</source>
        <translation type="unfinished">La punta del pestillo apenas asoma de su caja</translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Hoja y marco, pintura uniforme, nada fijado a ellos</translation>
    </message>
    <message>
        <source>The release at this side under its cover, lever upright</source>
        <translation type="unfinished">El mando de este lado bajo su tapa, palanca vertical</translation>
    </message>
    <message>
        <source>The edge stands %1 back from the block, by the tape</source>
        <translation type="unfinished">El borde está a %1 del bloque, según la cinta</translation>
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
        <translation type="unfinished">Pasajeros y tripulación están apartados de toda puerta que se moverá, y se los mantiene apartados</translation>
    </message>
    <message>
        <source>A watch stands at every door that will move, on both sides</source>
        <translation type="unfinished">Hay un vigilante en cada puerta que se moverá, a ambos lados</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">El puesto de control está listo en el canal acordado</translation>
    </message>
    <message>
        <source>The word to start and the word to stop have been said and repeated</source>
        <translation type="unfinished">La palabra de inicio y la palabra de parada se han dicho y repetido</translation>
    </message>
    <message>
        <source>Nothing stands in the path or the pocket; no hand, foot or cable at an edge</source>
        <translation type="unfinished">No hay nada en el paso ni en el alojamiento; ninguna mano, pie o cable junto a un borde</translation>
    </message>
    <message>
        <source>It shuts faster than the text allows.</source>
        <translation type="unfinished">Se cierra más deprisa de lo que permite el texto.</translation>
    </message>
    <message>
        <source>It shuts more slowly than the text allows.</source>
        <translation type="unfinished">Se cierra más despacio de lo que permite el texto.</translation>
    </message>
    <message>
        <source>It shuts within a hair of the limit: no thumb can pass or fail it.</source>
        <translation type="unfinished">Se cierra a un pelo del límite: ningún pulgar puede aprobarla ni rechazarla.</translation>
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
        <source>The selector fails: the leaf that must wait comes home first.</source>
        <translation type="unfinished">El selector falla: la hoja que debe esperar llega primero.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it gives way when it is pushed.</source>
        <translation type="unfinished">Se cierra, pero el pestillo no encaja: cede cuando se empuja.</translation>
    </message>
    <message>
        <source>The magnet holds on for half a minute after the control station&apos;s release, which is taken as not released (common practice, no source).</source>
        <translation type="unfinished">El imán retiene medio minuto más tras accionarse desde el puesto de control, lo que se considera no accionada (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>It cannot be released from one of its sides.</source>
        <translation type="unfinished">No se puede accionar desde uno de sus lados.</translation>
    </message>
    <message>
        <source>A hook can hold it open that the control station cannot release.</source>
        <translation type="unfinished">Un gancho que el puesto de control no puede accionar la puede retener abierta.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Una cuña la mantiene abierta.</translation>
    </message>
    <message>
        <source>Litter lies in the pocket.</source>
        <translation type="unfinished">Hay basura en el alojamiento.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Falta el umbral.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than the text allows.</source>
        <translation type="unfinished">El hueco bajo la hoja es mayor de lo que permite el texto.</translation>
    </message>
    <message>
        <source>The plate names a lower class than the boundary asks for.</source>
        <translation type="unfinished">La placa indica una clase inferior a la que pide el contorno.</translation>
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
        <source>Opened again at the door after remote closing, it stays open.</source>
        <translation type="unfinished">Abierta de nuevo en la puerta tras el cierre a distancia, queda abierta.</translation>
    </message>
    <message>
        <source>Somebody was in the way of the leaf: the run has to be stopped.</source>
        <translation type="unfinished">Había alguien en el paso de la hoja: hay que detener el ensayo.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">El mamparo de zona vertical principal, sus bayonetas y nichos son A-60; basta A-0 con un espacio de categoría 5, 9 o 10 a un lado, o con tanques de combustible líquido a ambos.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation is that of the table, where B-0, C and * are read as A-0.</source>
        <translation type="unfinished">El mamparo de zona vertical principal es de clase A; su aislamiento es el de la tabla, donde B-0, C y * se leen como A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 will do with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Los contornos de espacios de categoría especial y espacios de carga rodada son A-60; basta A-0 con un espacio de categoría 5, 9 o 10 a un lado.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead has the greater of A-30 and table (b); A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">El mamparo de zona vertical principal lleva el mayor de A-30 y la tabla (b); basta A-0 con un espacio de tipo 8, 12 o 13 a uno u otro lado.</translation>
    </message>
    <message>
        <source>A step of a main vertical zone is A-60; A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">La bayoneta de zona vertical principal es A-60; basta A-0 con un espacio de tipo 8, 12 o 13 a uno u otro lado.</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Hay dos valores impresos; aquí se da el más estricto.</translation>
    </message>
    <message>
        <source>The value of ships built on or after 1 July 2014 is given; the date of building is not known.</source>
        <translation type="unfinished">Se da el valor para buques construidos el 1 de julio de 2014 o posteriormente; no se conoce la fecha de construcción.</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 keeps the tables of its day, which are not here: compare with the approved plan.</source>
        <translation type="unfinished">Un buque construido antes del 1 de julio de 2002 conserva las tablas de su época, que no están aquí: compare con el plano aprobado.</translation>
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
        <translation type="unfinished">tronco de salida de emergencia</translation>
    </message>
    <message>
        <source>not of an escape trunk</source>
        <translation type="unfinished">no es de un tronco de salida</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">espacio de categoría especial</translation>
    </message>
    <message>
        <source>no special category space</source>
        <translation type="unfinished">no es de categoría especial</translation>
    </message>
    <message>
        <source>faces embarkation or an escape deck</source>
        <translation type="unfinished">da al embarco o a una cubierta de evacuación</translation>
    </message>
    <message>
        <source>faces no embarkation or escape deck</source>
        <translation type="unfinished">no da al embarco ni a una cubierta de evacuación</translation>
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
        <translation type="unfinished">en una cubierta</translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished">no en una cubierta</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">toda puerta</translation>
    </message>
    <message>
        <source>the vessel&apos;s own flag has its own text</source>
        <translation type="unfinished">la bandera del buque tiene su propio texto</translation>
    </message>
    <message>
        <source>date of installation unknown</source>
        <translation type="unfinished">fecha de instalación desconocida</translation>
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
        <source>a text of other ships: %1</source>
        <translation type="unfinished">texto para otros buques: %1</translation>
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
        <source>Try again; if it comes back, save the register to another disk.</source>
        <translation type="unfinished">Vuelva a intentarlo; si se repite, guarde el registro en otro disco.</translation>
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
        <source>the register may not be written here</source>
        <translation type="unfinished">aquí no se permite escribir en el registro</translation>
    </message>
    <message>
        <source>Copy it to a folder you may write to and open it there.</source>
        <translation type="unfinished">Cópielo a una carpeta en la que pueda escribir y ábralo allí.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">no se puede abrir el archivo (SQLite %1)</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you may write to the folder.</source>
        <translation type="unfinished">Compruebe que el disco está conectado y que puede escribir en la carpeta.</translation>
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
        <source>the cautions do not all stand confirmed</source>
        <translation type="unfinished">no están confirmadas todas las precauciones</translation>
    </message>
    <message>
        <source>Answer each of them first.</source>
        <translation type="unfinished">Responda primero a cada una.</translation>
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
        <source>Take the end of the walkdown back first, or begin another.</source>
        <translation type="unfinished">Retire primero el fin del recorrido o empiece otro.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Elija la puerta de nuevo.</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; correct it.</source>
        <translation type="unfinished">Solo se deshace lo que usted registró en esta tableta; corríjalo.</translation>
    </message>
    <message>
        <source>Record it on its own.</source>
        <translation type="unfinished">Regístrelo por separado.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">su recorrido ha terminado</translation>
    </message>
    <message>
        <source>it is not on the walkdown that is shown</source>
        <translation type="unfinished">no está en el recorrido mostrado</translation>
    </message>
    <message>
        <source>undo does not reach %1</source>
        <translation type="unfinished">deshacer no alcanza %1</translation>
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
        <source>%1 passengers cannot be carried</source>
        <translation type="unfinished">no se pueden transportar %1 pasajeros</translation>
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
        <source>Give the drawing&apos;s length in metres.</source>
        <translation type="unfinished">Indique en metros la eslora del plano.</translation>
    </message>
    <message>
        <source>this day does not exist</source>
        <translation type="unfinished">este día no existe</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Escriba las fechas en la forma YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>%1 lies before 1900</source>
        <translation type="unfinished">%1 es anterior a 1900</translation>
    </message>
    <message>
        <source>Check the year; leave it empty where the date is unknown.</source>
        <translation type="unfinished">Compruebe el año; déjelo vacío si no se conoce la fecha.</translation>
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
        <source>%1 m lies outside %2 to %3 m</source>
        <translation type="unfinished">%1 m queda fuera de %2 a %3 m</translation>
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
        <source>Take the blanks away.</source>
        <translation type="unfinished">Quite los espacios en blanco.</translation>
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
        <source>deck &quot;%1&quot; is there twice</source>
        <translation type="unfinished">la cubierta &quot;%1&quot; está dos veces</translation>
    </message>
    <message>
        <source>Give every deck its own number, or take one row out.</source>
        <translation type="unfinished">Dé a cada cubierta su propio número o quite una fila.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is there twice</source>
        <translation type="unfinished">la zona &quot;%1&quot; está dos veces</translation>
    </message>
    <message>
        <source>Give every zone its own number, or take one row out.</source>
        <translation type="unfinished">Dé a cada zona su propio número o quite una fila.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is there twice</source>
        <translation type="unfinished">el contorno &quot;%1&quot; está dos veces</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or take one row out.</source>
        <translation type="unfinished">Dé a cada contorno su propio id o quite una fila.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is there twice</source>
        <translation type="unfinished">la puerta &quot;%1&quot; está dos veces</translation>
    </message>
    <message>
        <source>Give every door its own number, or take one row out.</source>
        <translation type="unfinished">Dé a cada puerta su propio número o quite una fila.</translation>
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
        <source>deck &quot;%1&quot; is not there</source>
        <translation type="unfinished">la cubierta &quot;%1&quot; no existe</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is not there</source>
        <translation type="unfinished">la zona &quot;%1&quot; no existe</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is not there</source>
        <translation type="unfinished">el contorno &quot;%1&quot; no existe</translation>
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
        <source>Give square metres, or leave it empty where it is not known.</source>
        <translation type="unfinished">Indique metros cuadrados, o déjelo vacío si no se conoce.</translation>
    </message>
    <message>
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">el límite de proa, %1 m, no está a proa del límite de popa, %2 m</translation>
    </message>
    <message>
        <source>Count metres from the aft perpendicular, forward positive.</source>
        <translation type="unfinished">Cuente los metros desde la perpendicular de popa, positivos hacia proa.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">la zona &quot;%1&quot; empieza en %2 m, dentro de la zona &quot;%3&quot;, que acaba en %4 m</translation>
    </message>
    <message>
        <source>Zones may touch, not overlap.</source>
        <translation type="unfinished">Las zonas pueden tocarse, no solaparse.</translation>
    </message>
    <message>
        <source>the fire tables of this vessel know no such category of space</source>
        <translation type="unfinished">las tablas contraincendios de este buque no tienen esa categoría de espacio</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Escriba dos números de 1 a %1, o déjelo vacío.</translation>
    </message>
    <message>
        <source>a zone bulkhead stands between two zones, here both are &quot;%1&quot;</source>
        <translation type="unfinished">un mamparo de zona está entre dos zonas; aquí ambas son &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Nombre la zona que queda a popa y la que queda a proa.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; lies aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">la zona &quot;%1&quot; está a popa de la zona &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Exchange zone_aft and zone_forward.</source>
        <translation type="unfinished">Intercambie zone_aft y zone_forward.</translation>
    </message>
    <message>
        <source>%1 m lies more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m queda a más de 3 m fuera de sus zonas, de %2 a %3 m</translation>
    </message>
    <message>
        <source>Check the place of the boundary, or the zones it names.</source>
        <translation type="unfinished">Compruebe la posición del contorno o las zonas que nombra.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m cannot be</source>
        <translation type="unfinished">una abertura libre de %1 m no es posible</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Indique el ancho libre en metros, más de 0 y como máximo 10.</translation>
    </message>
    <message>
        <source>a leaf of %1 kg cannot be</source>
        <translation type="unfinished">una hoja de %1 kg no es posible</translation>
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
        <source>this is no URL: signs other than letters and digits in a password are written as %1 for @ and so on</source>
        <translation type="unfinished">esto no es una URL: en una contraseña, los signos que no son letras ni cifras se escriben %1 en vez de @, y así los demás</translation>
    </message>
    <message>
        <source>only databases of PostgreSQL are known</source>
        <translation type="unfinished">solo se conocen bases de datos de PostgreSQL</translation>
    </message>
    <message>
        <source>an option holds a semicolon</source>
        <translation type="unfinished">una opción contiene un punto y coma</translation>
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
        <source>Check the address, the name and the password, and that the server runs.</source>
        <translation type="unfinished">Compruebe la dirección, el nombre y la contraseña, y que el servidor esté en marcha.</translation>
    </message>
    <message>
        <source>the connection was cut</source>
        <translation type="unfinished">la conexión se cortó</translation>
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
        <source>the connection was cut: %1 files are NOT taken in, from %2 on</source>
        <translation type="unfinished">la conexión se cortó: %1 archivos NO se han incorporado, a partir de %2</translation>
    </message>
    <message>
        <source>Run the same command again; what is in stays in.</source>
        <translation type="unfinished">Ejecute de nuevo la misma orden; lo ya incorporado se conserva.</translation>
    </message>
    <message>
        <source>this database holds something else: NOT touched</source>
        <translation type="unfinished">esta base de datos contiene otra cosa: NO se ha tocado</translation>
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
        <source>this database does not keep texts as UTF-8: NOT touched</source>
        <translation type="unfinished">esta base de datos no guarda los textos en UTF-8: NO se ha tocado</translation>
    </message>
    <message>
        <source>Make one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Cree una WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one knows up to %2): NOT touched</source>
        <translation type="unfinished">las tablas las creó un programa más nuevo (versión %1; este conoce hasta la %2): NO se han tocado</translation>
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
        <source>Give the vessel its number aboard, and hand over again.</source>
        <translation type="unfinished">Dé al buque su número a bordo y traspase de nuevo.</translation>
    </message>
    <message>
        <source>it comes with another key than before: %1, fingerprint %2, instead of %3</source>
        <translation type="unfinished">viene con otra clave que antes: %1, huella %2, en lugar de %3</translation>
    </message>
    <message>
        <source>Ask aboard whether its key is new; if it is, take the file in with --accept-key and that key.</source>
        <translation type="unfinished">Pregunte a bordo si su clave es nueva; si lo es, incorpore el archivo con --accept-key y esa clave.</translation>
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
        <source>The catalogue built into the program is used: %1</source>
        <translation type="unfinished">Se usa el catálogo incluido en el programa: %1</translation>
    </message>
    <message>
        <source>its catalogue files are not there</source>
        <translation type="unfinished">faltan sus archivos de catálogo</translation>
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
        <source>must be a list with at least one row</source>
        <translation type="unfinished">debe ser una lista con al menos una fila</translation>
    </message>
    <message>
        <source>&apos;%1&apos; stands twice</source>
        <translation type="unfinished">&apos;%1&apos; está dos veces</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Los id deben ser únicos.</translation>
    </message>
    <message>
        <source>row &apos;%1&apos; stands in both catalogues</source>
        <translation type="unfinished">la fila &apos;%1&apos; está en ambos catálogos</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Déjela en uno de ellos.</translation>
    </message>
    <message>
        <source>this condition asks nothing of a door</source>
        <translation type="unfinished">esta condición no pide nada a una puerta</translation>
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
        <source>Leave it out where every door is meant.</source>
        <translation type="unfinished">Omítala si vale para todas las puertas.</translation>
    </message>
    <message>
        <source>must be a list of variants</source>
        <translation type="unfinished">debe ser una lista de variantes</translation>
    </message>
    <message>
        <source>Leave it out where there are none.</source>
        <translation type="unfinished">Omítala si no hay ninguna.</translation>
    </message>
    <message>
        <source>a row that is seen needs a question</source>
        <translation type="unfinished">una fila que se comprueba a la vista necesita una pregunta</translation>
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
        <source>a number must come from somewhere</source>
        <translation type="unfinished">un número debe venir de alguna parte</translation>
    </message>
    <message>
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Nombre gauge, closing-time, closing-rate, alarm-lead o alarm-after-shut.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is in the catalogue already</source>
        <translation type="unfinished">&apos;%1&apos; ya está en el catálogo</translation>
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
        <source>a tightened row needs a limit</source>
        <translation type="unfinished">una fila que se hace más estricta necesita un límite</translation>
    </message>
    <message>
        <source>Give low or high.</source>
        <translation type="unfinished">Indique low o high.</translation>
    </message>
    <message>
        <source>the row has no such limit</source>
        <translation type="unfinished">la fila no tiene ese límite</translation>
    </message>
    <message>
        <source>Replace the whole row instead.</source>
        <translation type="unfinished">Sustituya la fila entera.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the %3 %2 of the catalogue</source>
        <translation type="unfinished">%1 %2 es un límite más amplio que el de %3 %2 del catálogo</translation>
    </message>
    <message>
        <source>A row is tightened, or replaced as a whole.</source>
        <translation type="unfinished">Una fila se hace más estricta o se sustituye entera.</translation>
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
        <source>&apos;%1&apos; is no list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; no es aquí ninguna lista de categorías</translation>
    </message>
    <message>
        <source>must be a list with at least one table</source>
        <translation type="unfinished">debe ser una lista con al menos una tabla</translation>
    </message>
    <message>
        <source>there is a table of such divisions already</source>
        <translation type="unfinished">ya hay una tabla de tales divisiones</translation>
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
        <source>is no cell of this table</source>
        <translation type="unfinished">no es una celda de esta tabla</translation>
    </message>
    <message>
        <source>Write two of its categories, of a bulkhead the lower first.</source>
        <translation type="unfinished">Escriba dos de sus categorías; de un mamparo, la menor primero.</translation>
    </message>
    <message>
        <source>%1 is no value that a table prints</source>
        <translation type="unfinished">%1 no es un valor que imprima una tabla</translation>
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
        <source>a fault of the program: %1</source>
        <translation type="unfinished">un fallo del programa: %1</translation>
    </message>
    <message>
        <source>Please report it with the file that brought it about.</source>
        <translation type="unfinished">Comuníquelo, por favor, con el archivo que lo causó.</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation type="unfinished">no se pudo escribir</translation>
    </message>
    <message>
        <source>no register is here</source>
        <translation type="unfinished">aquí no hay ningún registro</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Compruebe el nombre, o importe antes uno.</translation>
    </message>
    <message>
        <source>this register holds no vessel yet</source>
        <translation type="unfinished">este registro aún no contiene ningún buque</translation>
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
        <source>The file that was refused names its key.</source>
        <translation type="unfinished">El archivo rechazado indica su clave.</translation>
    </message>
    <message>
        <source>it does not say who accepts the key</source>
        <translation type="unfinished">no dice quién acepta la clave</translation>
    </message>
    <message>
        <source>Add --person NAME.</source>
        <translation type="unfinished">Añada --person NAME.</translation>
    </message>
    <message>
        <source>this is not the key of the file, which is %1</source>
        <translation type="unfinished">esta no es la clave del archivo, que es %1</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Compárela con la que muestra la otra tableta.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no document of this program</source>
        <translation type="unfinished">&quot;%1&quot; no es un documento de este programa</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no form a report is written in</source>
        <translation type="unfinished">&quot;%1&quot; no es un formato en que se escriba un informe</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Elija pdf, csv o json.</translation>
    </message>
    <message>
        <source>a paper form is printed</source>
        <translation type="unfinished">un formulario en papel se imprime</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Escríbalo en un archivo PDF.</translation>
    </message>
    <message>
        <source>a door record is of one door</source>
        <translation type="unfinished">una ficha de puerta es de una sola puerta</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Indique su número.</translation>
    </message>
    <message>
        <source>the register knows nobody of the name &apos;%1&apos;</source>
        <translation type="unfinished">el registro no conoce a nadie con el nombre &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Write the name as it stands in the register.</source>
        <translation type="unfinished">Escriba el nombre como está en el registro.</translation>
    </message>
    <message>
        <source>Give an id of &quot;practice list&quot; or a file.</source>
        <translation type="unfinished">Indique un id de &quot;practice list&quot; o un archivo.</translation>
    </message>
    <message>
        <source>Give a number; the same one gives the same doors.</source>
        <translation type="unfinished">Indique un número; el mismo da las mismas puertas.</translation>
    </message>
    <message>
        <source>Give the file of answers.</source>
        <translation type="unfinished">Indique el archivo de respuestas.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">falta</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_WORD, or into a file named by --word-file.</source>
        <translation type="unfinished">Póngala en LATCHROUND_WORD o en un archivo nombrado con --word-file.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; no es un par de categorías de este buque</translation>
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
        <source>such a ship has no main vertical zones</source>
        <translation type="unfinished">un buque así no tiene zonas verticales principales</translation>
    </message>
    <message>
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Pida bulkhead o deck.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1</source>
        <translation type="unfinished">debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Escriba 0.95 para el 95 %.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1, in whole millionths</source>
        <translation type="unfinished">debe estar entre 0 y 1, en millonésimas enteras</translation>
    </message>
    <message>
        <source>is not a number that can be looked up</source>
        <translation type="unfinished">no es un número que se pueda consultar</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Escriba un número.</translation>
    </message>
    <message>
        <source>no line can be laid through %1 points, or all lie at the same x, or a number is too large</source>
        <translation type="unfinished">no se puede trazar una recta por %1 puntos, o todos tienen la misma x, o un número es demasiado grande</translation>
    </message>
    <message>
        <source>Give at least three points at two different x.</source>
        <translation type="unfinished">Indique al menos tres puntos con dos x distintas.</translation>
    </message>
    <message>
        <source>is not a number that can be judged</source>
        <translation type="unfinished">no es un número que se pueda evaluar</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Escriba un número, por ejemplo 10.3.</translation>
    </message>
    <message>
        <source>a standard uncertainty is 0 or more</source>
        <translation type="unfinished">una incertidumbre típica es 0 o más</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Escríbala en la unidad del valor, para k = 1.</translation>
    </message>
    <message>
        <source>is no limit</source>
        <translation type="unfinished">no es un límite</translation>
    </message>
    <message>
        <source>without a limit there is nothing to judge</source>
        <translation type="unfinished">sin un límite no hay nada que evaluar</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Indique --low, --high o ambos.</translation>
    </message>
    <message>
        <source>degrees of freedom are 1 or more</source>
        <translation type="unfinished">los grados de libertad son 1 o más</translation>
    </message>
    <message>
        <source>Leave it out where u is well known.</source>
        <translation type="unfinished">Omítalos si u se conoce bien.</translation>
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
        <source>no more can fail than were tested, and no more be tested than there are</source>
        <translation type="unfinished">no pueden fallar más de las probadas, ni probarse más de las que hay</translation>
    </message>
    <message>
        <source>Check the three numbers.</source>
        <translation type="unfinished">Compruebe los tres números.</translation>
    </message>
    <message>
        <source>there is no display here</source>
        <translation type="unfinished">aquí no hay pantalla</translation>
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
        <source>entries of this vessel wait to be saved, and cannot be kept elsewhere</source>
        <translation type="unfinished">hay entradas de este buque pendientes de guardar que no se pueden conservar en otro lugar</translation>
    </message>
    <message>
        <source>Save them first.</source>
        <translation type="unfinished">Guárdelas primero.</translation>
    </message>
    <message>
        <source>no file was looked at</source>
        <translation type="unfinished">no se ha mirado ningún archivo</translation>
    </message>
    <message>
        <source>Look at it first.</source>
        <translation type="unfinished">Mírelo primero.</translation>
    </message>
    <message>
        <source>no exercise was broken off</source>
        <translation type="unfinished">no hay ningún ejercicio interrumpido</translation>
    </message>
    <message>
        <source>the exercise is not what it was when it was begun</source>
        <translation type="unfinished">el ejercicio no es el que era cuando se empezó</translation>
    </message>
    <message>
        <source>Put it aside, and begin it anew.</source>
        <translation type="unfinished">Apártelo y empiécelo de nuevo.</translation>
    </message>
    <message>
        <source>is not a door of this walkdown</source>
        <translation type="unfinished">no es una puerta de este recorrido</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">no se puede leer el archivo</translation>
    </message>
    <message>
        <source>Choose another or check its rights.</source>
        <translation type="unfinished">Elija otro o compruebe sus permisos.</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">la imagen ocupa más de %1 MB</translation>
    </message>
    <message>
        <source>Take it again in a smaller size.</source>
        <translation type="unfinished">Tómela de nuevo en un tamaño menor.</translation>
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
        <source>it could not be kept</source>
        <translation type="unfinished">no se pudo conservar</translation>
    </message>
    <message>
        <source>Take it again.</source>
        <translation type="unfinished">Tómela de nuevo.</translation>
    </message>
    <message>
        <source>another program writes in it (%1)</source>
        <translation type="unfinished">otro programa escribe en él (%1)</translation>
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
        <source>Nothing of it is refused any more</source>
        <translation type="unfinished">Ya no hay en ello nada rechazado</translation>
    </message>
    <message>
        <source>it was cut short</source>
        <translation type="unfinished">quedó cortado</translation>
    </message>
    <message>
        <source>what cannot be read in it is kept nowhere else</source>
        <translation type="unfinished">lo que no se puede leer en él no se conserva en ninguna otra parte</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Libere espacio y vuelva a iniciar el programa.</translation>
    </message>
    <message>
        <source>what waited to be saved here cannot be read: %1</source>
        <translation type="unfinished">no se puede leer lo que aquí esperaba guardarse: %1</translation>
    </message>
    <message>
        <source>It is kept as %2; report this.</source>
        <translation type="unfinished">Se conserva como %2; comuníquelo.</translation>
    </message>
    <message>
        <source>The file stays as it is, and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">El archivo queda como está y no se le añade nada: libere espacio y vuelva a iniciar el programa.</translation>
    </message>
    <message>
        <source>of what waited to be saved here, not all can be read: %1</source>
        <translation type="unfinished">de lo que aquí esperaba guardarse, no todo se puede leer: %1</translation>
    </message>
    <message>
        <source>the register knows no walkdown of this id</source>
        <translation type="unfinished">el registro no conoce ningún recorrido con este id</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Elija uno de sus recorridos.</translation>
    </message>
    <message>
        <source>the register knows no door of this number</source>
        <translation type="unfinished">el registro no conoce ninguna puerta con este número</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Compruebe el número.</translation>
    </message>
    <message>
        <source>a door record is a printed page</source>
        <translation type="unfinished">una ficha de puerta es una página impresa</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey as CSV or JSON.</source>
        <translation type="unfinished">Elija PDF, o el reconocimiento en CSV o JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be made</source>
        <translation type="unfinished">no se pudo hacer el PDF</translation>
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
        <source>a file describes one vessel; the first is on line %1</source>
        <translation type="unfinished">un archivo describe un solo buque; el primero está en la línea %1</translation>
    </message>
    <message>
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Ponga cada buque en un archivo propio.</translation>
    </message>
    <message>
        <source>the row does not say of which table it is</source>
        <translation type="unfinished">la fila no dice de qué tabla es</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Una fila empieza por vessel, deck, zone, boundary o door.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; begins no row of a register</source>
        <translation type="unfinished">&quot;%1&quot; no es comienzo de ninguna fila de un registro</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Una fila empieza por vessel, deck, zone, boundary o door.</translation>
    </message>
    <message>
        <source>this row stands before any header of its table</source>
        <translation type="unfinished">esta fila está antes de cualquier encabezado de su tabla</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the names of the columns above it.</source>
        <translation type="unfinished">Ponga encima el encabezado &quot;%1:&quot; con los nombres de las columnas.</translation>
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
        <source>Take the cell out, or name its column in the header.</source>
        <translation type="unfinished">Quite la celda, o nombre su columna en el encabezado.</translation>
    </message>
    <message>
        <source>the %1 table has no such column</source>
        <translation type="unfinished">la tabla %1 no tiene esa columna</translation>
    </message>
    <message>
        <source>Correct its name or take the column out.</source>
        <translation type="unfinished">Corrija su nombre o quite la columna.</translation>
    </message>
    <message>
        <source>the column is there twice</source>
        <translation type="unfinished">la columna está dos veces</translation>
    </message>
    <message>
        <source>Take one of them out.</source>
        <translation type="unfinished">Quite una de ellas.</translation>
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
        <source>a point has two numbers, here are %1 cells</source>
        <translation type="unfinished">un punto tiene dos números; aquí hay %1 celdas</translation>
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
        <source>this is not the id of a fact</source>
        <translation type="unfinished">este no es el id de un asiento</translation>
    </message>
    <message>
        <source>Ids are UUIDs of version 7 in lower case.</source>
        <translation type="unfinished">Los id son UUID de la versión 7 en minúscula.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a moment</source>
        <translation type="unfinished">&quot;%1&quot; no es un momento</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Escríbalo así: 2026-11-25T10:42:13.120+01:00.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no kind of fact</source>
        <translation type="unfinished">&quot;%1&quot; no es una clase de asiento</translation>
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
        <source>door &quot;%1&quot; is there twice, first at %2</source>
        <translation type="unfinished">la puerta &quot;%1&quot; está dos veces, la primera en %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or put both records in one.</source>
        <translation type="unfinished">Dé a cada puerta su propio id, o junte ambas fichas en una.</translation>
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
        <source>this must be the categories of the two spaces, 1 to %1 by the fire tables of this vessel</source>
        <translation type="unfinished">esto deben ser las categorías de los dos espacios, de 1 a %1 según las tablas contraincendios de este buque</translation>
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
        <source>the catalogue has no requirement of this name</source>
        <translation type="unfinished">el catálogo no tiene ninguna prescripción con este nombre</translation>
    </message>
    <message>
        <source>Use the ids of the catalogue.</source>
        <translation type="unfinished">Use los id del catálogo.</translation>
    </message>
    <message>
        <source>this is no answer</source>
        <translation type="unfinished">esto no es una respuesta</translation>
    </message>
    <message>
        <source>Write &quot;yes&quot;, &quot;no&quot; or &quot;n/a&quot;.</source>
        <translation type="unfinished">Escriba &quot;yes&quot;, &quot;no&quot; o &quot;n/a&quot;.</translation>
    </message>
    <message>
        <source>this requirement is not answered by yes or no</source>
        <translation type="unfinished">a esta prescripción no se responde con sí o no</translation>
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
        <source>this requirement has no figure taken with rule or gauge</source>
        <translation type="unfinished">esta prescripción no tiene ninguna cifra tomada con regla o galga</translation>
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
        <source>Give the marks that were timed, or take the run out.</source>
        <translation type="unfinished">Indique las marcas que se cronometraron, o quite el ensayo.</translation>
    </message>
    <message>
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">un tiempo debe estar entre 0 y 3600 segundos</translation>
    </message>
    <message>
        <source>Give seconds from the start of the watch.</source>
        <translation type="unfinished">Indique los segundos desde la puesta en marcha del cronómetro.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees cannot be</source>
        <translation type="unfinished">una escora de más de 45 grados no es posible</translation>
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
        <source>Give that mark, or write &quot;spoiled&quot;.</source>
        <translation type="unfinished">Indique esa marca, o escriba &quot;spoiled&quot;.</translation>
    </message>
    <message>
        <source>the vessel could not be put there</source>
        <translation type="unfinished">no se pudo poner allí el buque</translation>
    </message>
    <message>
        <source>Check the folder.</source>
        <translation type="unfinished">Compruebe la carpeta.</translation>
    </message>
    <message>
        <source>is missing: this is no exercise</source>
        <translation type="unfinished">falta: esto no es un ejercicio</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Elija otro archivo.</translation>
    </message>
    <message>
        <source>this exercise is of another form than this program knows (%1)</source>
        <translation type="unfinished">este ejercicio tiene una forma distinta de la que conoce este programa (%1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written anew.</source>
        <translation type="unfinished">Actualice este programa o pida que escriban de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>it is sealed by the instructor&apos;s word</source>
        <translation type="unfinished">está sellado con la palabra del instructor</translation>
    </message>
    <message>
        <source>Open it with that word.</source>
        <translation type="unfinished">Ábralo con esa palabra.</translation>
    </message>
    <message>
        <source>has other signs than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">tiene signos que no son minúsculas, cifras ni guiones</translation>
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
        <source>Say it shorter.</source>
        <translation type="unfinished">Dígalo más corto.</translation>
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
        <source>door %1 is there twice</source>
        <translation type="unfinished">la puerta %1 figura dos veces</translation>
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
        <source>&apos;%1&apos; and &apos;%2&apos; would hide one another on one door</source>
        <translation type="unfinished">&apos;%1&apos; y &apos;%2&apos; se ocultarían el uno al otro en la misma puerta</translation>
    </message>
    <message>
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Ponga uno de ellos en otra puerta.</translation>
    </message>
    <message>
        <source>stands without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">figura sin &quot;drawn&quot;: no se sortea nada</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Indique cuántos fallos se sortean.</translation>
    </message>
    <message>
        <source>only %1 faults more can be put into these doors</source>
        <translation type="unfinished">en estas puertas solo caben %1 fallos más</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Sortee menos o nombre más puertas.</translation>
    </message>
    <message>
        <source>is missing: an exam says what passes it</source>
        <translation type="unfinished">falta: un examen indica con cuánto se aprueba</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Añádalo, de 1 a 100.</translation>
    </message>
    <message>
        <source>only an exam is passed or failed</source>
        <translation type="unfinished">solo un examen se aprueba o se suspende</translation>
    </message>
    <message>
        <source>Take it out, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Quítelo o escriba &quot;exam&quot; como nivel.</translation>
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
        <source>the exercise has no door of this number</source>
        <translation type="unfinished">el ejercicio no tiene ninguna puerta con este número</translation>
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
        <source>this is no moment</source>
        <translation type="unfinished">esto no es una fecha con hora</translation>
    </message>
    <message>
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Escríbala como 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>a delay is no number: NOT kept</source>
        <translation type="unfinished">un retraso no es un número: NO conservado</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Comuníquelo, por favor.</translation>
    </message>
    <message>
        <source>could not be taken away</source>
        <translation type="unfinished">no se pudo eliminar</translation>
    </message>
    <message>
        <source>Look whether the folder can be written to.</source>
        <translation type="unfinished">Mire si se puede escribir en la carpeta.</translation>
    </message>
    <message>
        <source>an exercise of this id ships with the program</source>
        <translation type="unfinished">el programa ya trae un ejercicio con este id</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Dé otro id al suyo.</translation>
    </message>
    <message>
        <source>another exercise of this id is kept here already</source>
        <translation type="unfinished">aquí ya se guarda otro ejercicio con este id</translation>
    </message>
    <message>
        <source>Give yours another id, or take away %1.</source>
        <translation type="unfinished">Dé otro id al suyo o elimine %1.</translation>
    </message>
    <message>
        <source>this exercise is not sealed</source>
        <translation type="unfinished">este ejercicio no está sellado</translation>
    </message>
    <message>
        <source>Give the word.</source>
        <translation type="unfinished">Indique la palabra.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">debe tener al menos %1 caracteres</translation>
    </message>
    <message>
        <source>Choose a longer one, best several words.</source>
        <translation type="unfinished">Elija una más larga, mejor varias palabras.</translation>
    </message>
    <message>
        <source>this machine has too little memory free for the word</source>
        <translation type="unfinished">este equipo tiene muy poca memoria libre para la palabra</translation>
    </message>
    <message>
        <source>the word does not open it: it is not the word it was sealed with, or the file was changed after it was sealed</source>
        <translation type="unfinished">la palabra no lo abre: no es la palabra con que se selló, o el archivo se modificó después de sellarlo</translation>
    </message>
    <message>
        <source>Type the word as the instructor chose it, or have the file given again.</source>
        <translation type="unfinished">Escriba la palabra tal como la eligió el instructor o pida que le den el archivo de nuevo.</translation>
    </message>
    <message>
        <source>the seal is damaged</source>
        <translation type="unfinished">el sello está dañado</translation>
    </message>
    <message>
        <source>Have the file given again.</source>
        <translation type="unfinished">Pida que le den el archivo de nuevo.</translation>
    </message>
    <message>
        <source>this seal is of another form than this program knows</source>
        <translation type="unfinished">este sello tiene una forma distinta de la que conoce este programa</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise sealed anew.</source>
        <translation type="unfinished">Actualice este programa o pida que sellen de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>a sealed exercise has faults in the open</source>
        <translation type="unfinished">un ejercicio sellado tiene fallos a la vista</translation>
    </message>
    <message>
        <source>Have the exercise sealed anew.</source>
        <translation type="unfinished">Pida que sellen de nuevo el ejercicio.</translation>
    </message>
    <message>
        <source>what stands open in it was changed after it was sealed: title, words, level, doors or mark</source>
        <translation type="unfinished">lo que lleva a la vista se modificó después de sellarlo: título, texto, nivel, puertas o nota</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">no se pudo componer: %1</translation>
    </message>
    <message>
        <source>its bytes cannot be had</source>
        <translation type="unfinished">no se pueden obtener sus bytes</translation>
    </message>
    <message>
        <source>not all of its bytes can be had</source>
        <translation type="unfinished">no se pueden obtener todos sus bytes</translation>
    </message>
    <message>
        <source>this is no handover file, or only a part of one</source>
        <translation type="unfinished">esto no es un archivo de traspaso, o es solo una parte de uno</translation>
    </message>
    <message>
        <source>Choose another file, or have it handed over again.</source>
        <translation type="unfinished">Elija otro archivo o pida que se lo traspasen de nuevo.</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">el archivo está dañado (%1)</translation>
    </message>
    <message>
        <source>Have it handed over again.</source>
        <translation type="unfinished">Pida que se lo traspasen de nuevo.</translation>
    </message>
    <message>
        <source>an entry cannot be read</source>
        <translation type="unfinished">no se puede leer una entrada</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">no se puede leer %1</translation>
    </message>
    <message>
        <source>the entry %1 is there twice</source>
        <translation type="unfinished">la entrada %1 figura dos veces</translation>
    </message>
    <message>
        <source>the name of the entry &quot;%1&quot; leads out of the file</source>
        <translation type="unfinished">el nombre de la entrada &quot;%1&quot; lleva fuera del archivo</translation>
    </message>
    <message>
        <source>No handover file is made so; do not use it.</source>
        <translation type="unfinished">Ningún archivo de traspaso se hace así; no lo use.</translation>
    </message>
    <message>
        <source>the entry %1 would swell out of all proportion</source>
        <translation type="unfinished">la entrada %1 se expandiría de forma desmesurada al descomprimirla</translation>
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
        <source>the signature does not fit the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">la firma no corresponde a la clave del equipo que lo firmó: se modificó contents.sha256 o contents.sig</translation>
    </message>
    <message>
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem no es la clave que indica handover.json</translation>
    </message>
    <message>
        <source>the entry %1 belongs to no handover file</source>
        <translation type="unfinished">la entrada %1 no es propia de un archivo de traspaso</translation>
    </message>
    <message>
        <source>the entry %1 was added after it was signed</source>
        <translation type="unfinished">la entrada %1 se añadió después de la firma</translation>
    </message>
    <message>
        <source>%1 was changed after it was signed</source>
        <translation type="unfinished">%1 se modificó después de la firma</translation>
    </message>
    <message>
        <source>%1 does not have the hash it is named by</source>
        <translation type="unfinished">%1 no tiene el hash que le da nombre</translation>
    </message>
    <message>
        <source>the fact %1 is there twice, with different content</source>
        <translation type="unfinished">el asiento %1 figura dos veces, con distinto contenido</translation>
    </message>
    <message>
        <source>it does not hold as much as its first page says</source>
        <translation type="unfinished">no contiene tanto como dice su primera página</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">esto viene de la práctica: nada de lo que contiene es constancia de un buque</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are not there</source>
        <translation type="unfinished">%1 es el buque de práctica, cuyas puertas no existen</translation>
    </message>
    <message>
        <source>this is no handover file</source>
        <translation type="unfinished">esto no es un archivo de traspaso</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">este archivo viene de un programa más nuevo (forma %1; este lee hasta la %2)</translation>
    </message>
    <message>
        <source>Update this program, or take the file in with the newer one.</source>
        <translation type="unfinished">Actualice este programa o incorpore el archivo con el más nuevo.</translation>
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
        <source>this is not the key of a device</source>
        <translation type="unfinished">esto no es la clave de un equipo</translation>
    </message>
    <message>
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">ocuparía más de %1 MB</translation>
    </message>
    <message>
        <source>Give a copy of the whole register instead.</source>
        <translation type="unfinished">Dé en su lugar una copia de todo el registro.</translation>
    </message>
    <message>
        <source>the file is about another vessel than this register, which is about %1 %2</source>
        <translation type="unfinished">el archivo trata de un buque distinto del de este registro, que es %1 %2</translation>
    </message>
    <message>
        <source>Open the register of that vessel, or begin a new one.</source>
        <translation type="unfinished">Abra el registro de ese buque o empiece uno nuevo.</translation>
    </message>
    <message>
        <source>Copy all 64 digits as the other tablet shows them.</source>
        <translation type="unfinished">Copie los 64 caracteres tal como los muestra la otra tableta.</translation>
    </message>
    <message>
        <source>the sealed file is damaged</source>
        <translation type="unfinished">el archivo sellado está dañado</translation>
    </message>
    <message>
        <source>this file is sealed for one device</source>
        <translation type="unfinished">este archivo está sellado para un equipo</translation>
    </message>
    <message>
        <source>Look at it with the register of the device it is meant for.</source>
        <translation type="unfinished">Véalo con el registro del equipo al que va destinado.</translation>
    </message>
    <message>
        <source>this file is sealed for another device, the one whose key has the fingerprint %1</source>
        <translation type="unfinished">este archivo está sellado para otro equipo, aquel cuya clave tiene la huella %1</translation>
    </message>
    <message>
        <source>Open it there, or have it sealed for this device, whose fingerprint is %2.</source>
        <translation type="unfinished">Ábralo allí o pida que lo sellen para este equipo, cuya huella es %2.</translation>
    </message>
    <message>
        <source>the computer gives no random numbers</source>
        <translation type="unfinished">el equipo no da números aleatorios</translation>
    </message>
    <message>
        <source>Start the computer again.</source>
        <translation type="unfinished">Reinicie el equipo.</translation>
    </message>
    <message>
        <source>the file says that it comes from this very device, but its key has the fingerprint %1, which is not this device&apos;s</source>
        <translation type="unfinished">el archivo dice que viene de este mismo equipo, pero su clave tiene la huella %1, que no es la de este equipo</translation>
    </message>
    <message>
        <source>Do not take it; find out who made it.</source>
        <translation type="unfinished">No lo incorpore; averigüe quién lo hizo.</translation>
    </message>
    <message>
        <source>it comes with another key than the one accepted for it: the fingerprint %1 instead of %2</source>
        <translation type="unfinished">viene con una clave distinta de la aceptada para él: la huella %1 en vez de %2</translation>
    </message>
    <message>
        <source>Do not take it before you have asked whoever has that tablet; if its key really is new, take the old acceptance back first.</source>
        <translation type="unfinished">No lo incorpore antes de preguntar a quien tenga esa tableta; si su clave es de verdad nueva, retire primero la aceptación anterior.</translation>
    </message>
    <message>
        <source>it accepts, in the name of this device, a key that nobody here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">acepta, en nombre de este equipo, una clave que aquí nadie ha aceptado: clave %1 del equipo %2, huella %3</translation>
    </message>
    <message>
        <source>If this register was put back from a backup, compare that key as well and accept it; else do not take the file.</source>
        <translation type="unfinished">Si este registro se recuperó de una copia de seguridad, compare también esa clave y acéptela; si no, no incorpore el archivo.</translation>
    </message>
    <message>
        <source>nobody here has accepted its key yet; it has the fingerprint %1</source>
        <translation type="unfinished">aquí nadie ha aceptado aún su clave; tiene la huella %1</translation>
    </message>
    <message>
        <source>Compare the fingerprint with what that tablet shows, and accept it.</source>
        <translation type="unfinished">Compare la huella con la que muestra esa tableta y acéptela.</translation>
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
        <source>Make the report again.</source>
        <translation type="unfinished">Haga de nuevo el informe.</translation>
    </message>
    <message>
        <source>it rests on %1 facts of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">se basa en %1 asientos del equipo %2 hasta %3; aquí hay %4</translation>
    </message>
    <message>
        <source>the facts it rests on are not what they were then</source>
        <translation type="unfinished">los asientos en que se basa no son los que eran entonces</translation>
    </message>
    <message>
        <source>the signature does not fit its key and what it says</source>
        <translation type="unfinished">la firma no corresponde a su clave ni a lo que dice</translation>
    </message>
    <message>
        <source>it was made with another key than that of its device</source>
        <translation type="unfinished">se hizo con una clave distinta de la de su equipo</translation>
    </message>
    <message>
        <source>its bytes were changed</source>
        <translation type="unfinished">sus bytes se modificaron</translation>
    </message>
    <message>
        <source>Take it over again from another tablet.</source>
        <translation type="unfinished">Tráigala de nuevo de otra tableta.</translation>
    </message>
    <message>
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">retira algo, pero no dice qué</translation>
    </message>
    <message>
        <source>No program of ours writes this.</source>
        <translation type="unfinished">Ningún programa nuestro escribe esto.</translation>
    </message>
    <message>
        <source>the fact it replaces, %1, is not here</source>
        <translation type="unfinished">el asiento al que sustituye, %1, no está aquí</translation>
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
        <source>%1 at its top</source>
        <translation type="unfinished">%1, en su nivel superior</translation>
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
        <source>fact %1</source>
        <translation type="unfinished">asiento %1</translation>
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
        <source>report</source>
        <translation type="unfinished">informe</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">ficha de la puerta</translation>
    </message>
    <message>
        <source>paper form</source>
        <translation type="unfinished">formulario en papel</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">intento</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">la palabra del instructor</translation>
    </message>
    <message>
        <source>stopped as asked: nothing was changed</source>
        <translation type="unfinished">parado, como se pidió: no se cambió nada</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;?</source>
        <translation type="unfinished">¿Quería decir &quot;%1&quot;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot; or &quot;%2&quot;?</source>
        <translation type="unfinished">¿Quería decir &quot;%1&quot; o &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;?</source>
        <translation type="unfinished">¿Quería decir &quot;%1&quot;, &quot;%2&quot; o &quot;%3&quot;?</translation>
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
        <source>Copy it to a folder of yours.</source>
        <translation type="unfinished">Cópielo a una carpeta suya.</translation>
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
        <source>there is a file of this name already: NOT replaced</source>
        <translation type="unfinished">ya hay un archivo con este nombre: NO sustituido</translation>
    </message>
    <message>
        <source>Give another name, or say that it may be replaced.</source>
        <translation type="unfinished">Dé otro nombre o indique que se puede sustituir.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT written over</source>
        <translation type="unfinished">este es el registro mismo: NO sobrescrito</translation>
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
        <source>it could not be flushed to the storage: %1</source>
        <translation type="unfinished">no se pudo volcar al almacenamiento: %1</translation>
    </message>
    <message>
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">no se pudo cerrar el archivo escrito: %1</translation>
    </message>
    <message>
        <source>the written file could not take its place: %1</source>
        <translation type="unfinished">no se pudo poner en su lugar el archivo escrito: %1</translation>
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
        <source>Write it once more before the power goes.</source>
        <translation type="unfinished">Escríbalo otra vez antes de que se corte la energía.</translation>
    </message>
    <message>
        <source>could not be taken away: %1</source>
        <translation type="unfinished">no se pudo eliminar: %1</translation>
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
        <source>text stands before or after the quotes of a cell</source>
        <translation type="unfinished">hay texto antes o después de las comillas de una celda</translation>
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
        <source>a number in it is too large to be read</source>
        <translation type="unfinished">contiene un número demasiado grande para leerlo</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation type="unfinished">Corríjalo.</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good one.</source>
        <translation type="unfinished">Pida uno bueno a quien le dio el archivo.</translation>
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
        <source>Take it out, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Quítelo o haga que su nombre empiece por &quot;x-&quot;.</translation>
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
        <source>this must be a list of texts</source>
        <translation type="unfinished">esto debe ser una lista de textos</translation>
    </message>
    <message>
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Escríbala entre corchetes: [&quot;uno&quot;, &quot;dos&quot;].</translation>
    </message>
    <message>
        <source>this must be a text</source>
        <translation type="unfinished">esto debe ser un texto</translation>
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
        <source>%1: NOT taken in</source>
        <translation type="unfinished">%1: NO incorporado</translation>
    </message>
    <message>
        <source>stopped as asked</source>
        <translation type="unfinished">parado, como se pidió</translation>
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
        <source>what is recorded is never changed or deleted (%1)</source>
        <translation type="unfinished">lo registrado no se modifica ni se borra nunca (%1)</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Registre en su lugar una corrección.</translation>
    </message>
    <message>
        <source>a text holds bytes that are no valid text, or a value is of the wrong kind</source>
        <translation type="unfinished">un texto contiene bytes que no son texto válido, o un valor es de otro tipo</translation>
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
        <source>it is there twice (%1)</source>
        <translation type="unfinished">figura dos veces (%1)</translation>
    </message>
    <message>
        <source>Leave one of the two out.</source>
        <translation type="unfinished">Quite uno de los dos.</translation>
    </message>
    <message>
        <source>a value is not one the register allows (%1)</source>
        <translation type="unfinished">un valor no es de los que admite el registro (%1)</translation>
    </message>
    <message>
        <source>this is no vessel register</source>
        <translation type="unfinished">esto no es el registro de un buque</translation>
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
        <source>Try again; if it comes back, open the last backup.</source>
        <translation type="unfinished">Vuelva a intentarlo; si se repite, abra la última copia de seguridad.</translation>
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
        <source>there is no file layer of that name</source>
        <translation type="unfinished">no existe ninguna capa de archivos con ese nombre</translation>
    </message>
    <message>
        <source>the register is missing but &quot;%1&quot; beside it holds entries of it</source>
        <translation type="unfinished">falta el registro, pero &quot;%1&quot;, junto a él, contiene entradas suyas</translation>
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
        <source>Make the folder or choose another place.</source>
        <translation type="unfinished">Cree la carpeta o elija otro lugar.</translation>
    </message>
    <message>
        <source>you may not write to this folder</source>
        <translation type="unfinished">usted no tiene permiso para escribir en esta carpeta</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Elija otra carpeta.</translation>
    </message>
    <message>
        <source>the new register cannot be put in its place</source>
        <translation type="unfinished">no se puede poner en su lugar el registro nuevo</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">el disco comunica un fallo</translation>
    </message>
    <message>
        <source>Try again; if it comes back, choose another disk.</source>
        <translation type="unfinished">Vuelva a intentarlo; si se repite, elija otro disco.</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">esto no es un archivo</translation>
    </message>
    <message>
        <source>you may not read this file</source>
        <translation type="unfinished">usted no tiene permiso para leer este archivo</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Cópielo a una carpeta suya y ábralo allí.</translation>
    </message>
    <message>
        <source>the register lies in a read-only place; nothing could be recorded</source>
        <translation type="unfinished">el registro está en un lugar de solo lectura; no se podría registrar nada</translation>
    </message>
    <message>
        <source>the file is empty; it is no vessel register</source>
        <translation type="unfinished">el archivo está vacío; no es el registro de un buque</translation>
    </message>
    <message>
        <source>Delete it to begin a new register of this name, or choose another file.</source>
        <translation type="unfinished">Bórrelo para empezar un registro nuevo con este nombre o elija otro archivo.</translation>
    </message>
    <message>
        <source>this is no vessel register of Latchround</source>
        <translation type="unfinished">esto no es un registro de buque de Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one knows up to %2)</source>
        <translation type="unfinished">el registro lo escribió un programa más nuevo (versión %1; este conoce hasta la %2)</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Actualice este programa y ábralo de nuevo.</translation>
    </message>
    <message>
        <source>the register was never finished</source>
        <translation type="unfinished">el registro no se terminó de crear</translation>
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
        <source>this disk cannot hold a write-ahead log</source>
        <translation type="unfinished">este disco no admite un diario de escritura anticipada</translation>
    </message>
    <message>
        <source>another program of another version writes in it</source>
        <translation type="unfinished">otro programa de otra versión escribe en él</translation>
    </message>
    <message>
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Ciérrelo allí y ábralo aquí después.</translation>
    </message>
    <message>
        <source>bringing the register to this program&apos;s form would leave rows of %1 without what they refer to: NOT changed</source>
        <translation type="unfinished">pasar el registro a la forma de este programa dejaría filas de %1 sin aquello a lo que remiten: NO modificado</translation>
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
        <source>a row of %1 refers to nothing</source>
        <translation type="unfinished">una fila de %1 no remite a nada</translation>
    </message>
    <message>
        <source>fact %1 is only half there</source>
        <translation type="unfinished">el asiento %1 está solo a medias</translation>
    </message>
    <message>
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">este es un registro de práctica: nada de lo que contiene es constancia de un buque</translation>
    </message>
    <message>
        <source>Take the file into the register of its vessel.</source>
        <translation type="unfinished">Incorpore el archivo en el registro de su buque.</translation>
    </message>
    <message>
        <source>Sign and hand over in the register of a vessel.</source>
        <translation type="unfinished">Firme y traspase en el registro de un buque.</translation>
    </message>
    <message>
        <source>this is the register of a vessel: nobody practises in it</source>
        <translation type="unfinished">este es el registro de un buque: en él no practica nadie</translation>
    </message>
    <message>
        <source>a practice register holds the practice vessel alone</source>
        <translation type="unfinished">un registro de práctica contiene solo el buque de práctica</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Impórtelo en un registro propio.</translation>
    </message>
    <message>
        <source>the number %1 marks the practice vessel, whose doors are not there</source>
        <translation type="unfinished">el número %1 designa el buque de práctica, cuyas puertas no existen</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or practise with it under Practice.</source>
        <translation type="unfinished">Dé el número propio del buque o practique con él en Práctica.</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">otro programa</translation>
    </message>
    <message>
        <source>another program writes in this register (%1)</source>
        <translation type="unfinished">otro programa escribe en este registro (%1)</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Ciérrelo allí primero.</translation>
    </message>
    <message>
        <source>another program took the register&apos;s log away</source>
        <translation type="unfinished">otro programa se llevó el diario de escritura del registro</translation>
    </message>
    <message>
        <source>Try again: what the log held is put into the register first. Open the register with no other program meanwhile.</source>
        <translation type="unfinished">Vuelva a intentarlo: primero se pasa al registro lo que contenía el diario. Mientras tanto no abra el registro con ningún otro programa.</translation>
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
        <source>another fact with this id is recorded already</source>
        <translation type="unfinished">ya está registrado otro asiento con este id</translation>
    </message>
    <message>
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Registre una corrección con su propio id.</translation>
    </message>
    <message>
        <source>this is no photograph</source>
        <translation type="unfinished">esto no es una foto</translation>
    </message>
    <message>
        <source>the photograph&apos;s bytes do not have the hash it names</source>
        <translation type="unfinished">los bytes de la foto no tienen el hash que indica</translation>
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
        <source>Take it over from the tablet it was taken with.</source>
        <translation type="unfinished">Tráigala de la tableta con que se tomó.</translation>
    </message>
    <message>
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">no existe tal puerta en el registro de este buque</translation>
    </message>
    <message>
        <source>Check the number, or take in an arrangement that lists the door first.</source>
        <translation type="unfinished">Compruebe el número o incorpore primero una disposición en la que figure la puerta.</translation>
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
        <source>the fact it shows, &quot;%1&quot;</source>
        <translation type="unfinished">el asiento &quot;%1&quot; que muestra</translation>
    </message>
    <message>
        <source>the fact it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">el asiento &quot;%1&quot; al que sustituye</translation>
    </message>
    <message>
        <source>the fact that stands, &quot;%1&quot;</source>
        <translation type="unfinished">el asiento &quot;%1&quot; que vale</translation>
    </message>
    <message>
        <source>the fact that yields, &quot;%1&quot;</source>
        <translation type="unfinished">el asiento &quot;%1&quot; que cede</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">la nueva disposición no tiene tal puerta, pero hay 1 asiento registrado sobre ella</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number it was tested by.</source>
        <translation type="unfinished">Conserve la puerta en la disposición, con el número con que se probó.</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">la nueva disposición no tiene tal puerta, pero hay %1 asientos registrados sobre ella</translation>
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
        <source>the arrangement that comes with it has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">la disposición que lo acompaña no tiene tal puerta, pero hay 1 asiento registrado sobre ella</translation>
    </message>
    <message>
        <source>Import the arrangement with that door in it, here or on the other device, then hand over again.</source>
        <translation type="unfinished">Importe la disposición que contenga esa puerta, aquí o en el otro equipo, y haga de nuevo el traspaso.</translation>
    </message>
    <message>
        <source>the arrangement that comes with it has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">la disposición que lo acompaña no tiene tal puerta, pero hay %1 asientos registrados sobre ella</translation>
    </message>
    <message>
        <source>it is recorded here with other content under the same id</source>
        <translation type="unfinished">aquí está registrado con otro contenido y el mismo id</translation>
    </message>
    <message>
        <source>One of the two registers was changed by something else than this program; find out which before either is used.</source>
        <translation type="unfinished">Uno de los dos registros fue modificado por algo ajeno a este programa; averigüe cuál antes de usar ninguno de los dos.</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 remite de vuelta a este asiento</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor with what comes</source>
        <translation type="unfinished">%1 no está ni en este registro ni en lo que llega</translation>
    </message>
    <message>
        <source>Have it handed over again, all of it.</source>
        <translation type="unfinished">Pida que se lo traspasen todo de nuevo.</translation>
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
        <source>class of the boundary not known</source>
        <translation type="unfinished">no se conoce la clase del contorno</translation>
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
        <source>no machinery space of category A</source>
        <translation type="unfinished">no es espacio de categoría A para máquinas</translation>
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
        <source>keel laid %1: a text of ships of other dates</source>
        <translation type="unfinished">quilla colocada el %1: texto para buques de otras fechas</translation>
    </message>
    <message>
        <source>another printed figure stands beside a limit of a gauge</source>
        <translation type="unfinished">otra cifra impresa solo puede acompañar a un límite de instrumento</translation>
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
        <source>Take &quot;approximate&quot; out, or give such a band.</source>
        <translation type="unfinished">Quite &quot;approximate&quot; o indique una banda así.</translation>
    </message>
    <message>
        <source>a margin must be from 0 to less than 1</source>
        <translation type="unfinished">un margen debe ser de 0 a menos de 1</translation>
    </message>
    <message>
        <source>Give it as a part of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Indíquelo como fracción del límite: 0.05 es el 5 por ciento.</translation>
    </message>
    <message>
        <source>this margin is wider than that of the catalogue</source>
        <translation type="unfinished">este margen es más amplio que el del catálogo</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Tal bayoneta mide como máximo el 20 % de la longitud media de la zona, y como máximo 8 m (26 ft).</translation>
    </message>
    <message>
        <source>A zone is at most 39.9 m (131 ft) long on the mean of any one deck as a rule; no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">Como regla, una zona mide como máximo 39.9 m (131 ft) de largo, en la media de cualquier cubierta; no se imprime ampliación, y un transbordador puede tener una solución equivalente aprobada (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A zone is at most 40 m (131 ft) long on the mean of any one deck as a rule, the vehicle space of a vehicle ferry excepted. By leave of the Marine Safety Center 44 m (144 ft), between its farthest points too. A balcony is at most 40 m long; where that and its area over its mean width come to more, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">Como regla, una zona mide como máximo 40 m (131 ft) de largo, en la media de cualquier cubierta, salvo el espacio para vehículos de un transbordador de vehículos. Con autorización del Marine Safety Center, 44 m (144 ft), también entre sus puntos más distantes. Un balcón mide como máximo 40 m de largo; donde ese largo y su área dividida entre su ancho medio suman más, ambas cubiertas llevan rociadores (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry has the greater of A-30 and table (c).</source>
        <translation type="unfinished">La cubierta que limita una zona horizontal de un transbordador de vehículos lleva el mayor de A-30 y la tabla (c).</translation>
    </message>
    <message>
        <source>Where oil fuel tanks lie below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">Donde hay tanques de combustible líquido bajo un espacio de categoría especial, basta A-0 para la cubierta entre ambos (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">esto no puede ir antes de &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one watch.</source>
        <translation type="unfinished">Indique los segundos de ambos sucesos con un mismo cronómetro.</translation>
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
        <source>no instrument for this figure is so coarse</source>
        <translation type="unfinished">ningún instrumento para esta medida es tan basto</translation>
    </message>
    <message>
        <source>Give its step in the unit of the row, at most %1.</source>
        <translation type="unfinished">Indique su división en la unidad de la fila, como máximo %1.</translation>
    </message>
    <message>
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">el registro no dice si da acceso a un espacio de categoría especial</translation>
    </message>
    <message>
        <source>no day of installation, but the ship is no older</source>
        <translation type="unfinished">sin fecha de instalación, pero el buque no es más antiguo</translation>
    </message>
    <message>
        <source>the ship&apos;s passengers or length are outside what the text is for</source>
        <translation type="unfinished">los pasajeros o la eslora del buque quedan fuera de lo que abarca el texto</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">en un contorno de clase C&apos;</translation>
    </message>
    <message>
        <source>no door aboard is one of these</source>
        <translation type="unfinished">ninguna puerta a bordo es de estas</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">buque de pasaje SOLAS</translation>
    </message>
    <message>
        <source>US vessel of subchapter H</source>
        <translation type="unfinished">buque de Estados Unidos, subcapítulo H</translation>
    </message>
    <message>
        <source>US vessel of subchapter K</source>
        <translation type="unfinished">buque de Estados Unidos, subcapítulo K</translation>
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
        <source>Canadian day vessel of 24 m or more for fewer than 100 passengers</source>
        <translation type="unfinished">buque canadiense de día de 24 m o más para menos de 100 pasajeros</translation>
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
        <source>it binds</source>
        <translation type="unfinished">obliga</translation>
    </message>
    <message>
        <source>a failure is left to the inspector</source>
        <translation type="unfinished">un fallo se deja al inspector</translation>
    </message>
    <message>
        <source>advice only</source>
        <translation type="unfinished">solo consejo</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">no se pide</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, paper-form or rule-book.</source>
        <translation type="unfinished">Elija survey, deficiency-list, work-list, door-record, paper-form o rule-book.</translation>
    </message>
    <message>
        <source>a rule book is printed</source>
        <translation type="unfinished">un reglamento se imprime</translation>
    </message>
    <message>
        <source>Write it to a PDF file; its data are given by &quot;rules --json&quot;.</source>
        <translation type="unfinished">Escríbalo en un archivo PDF; sus datos los da &quot;rules --json&quot;.</translation>
    </message>
    <message>
        <source>there is no row &apos;%1&apos;</source>
        <translation type="unfinished">no hay ninguna fila &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The table of &quot;rules&quot; names them all.</source>
        <translation type="unfinished">La tabla de &quot;rules&quot; las nombra todas.</translation>
    </message>
    <message>
        <source>a door is one of a vessel</source>
        <translation type="unfinished">una puerta es de un buque</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register by --vessel.</source>
        <translation type="unfinished">Indique el registro del buque con --vessel.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) numbers II-2/9.6 anew; that text was not read.</source>
        <translation type="unfinished">Desde 2026 MSC.550(108) renumera II-2/9.6; ese texto no se leyó.</translation>
    </message>
    <message>
        <source>Whether the ship goes by these tables is not on record: compare with the approved plan.</source>
        <translation type="unfinished">No consta si el buque se rige por estas tablas: compare con el plano aprobado.</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">reglamento</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">proceso %1 en %2</translation>
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
        <translation type="unfinished">Inicio visto</translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished">Parada vista</translation>
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
        <source>no mark</source>
        <translation type="unfinished">sin marca</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 are needed</source>
        <translation type="unfinished">cuentan %1 de %2 marcas, hacen falta %3</translation>
    </message>
    <message>
        <source>%1 marks, bias %2, spread %3&#xa0;ms</source>
        <translation type="unfinished">%1 marcas, sesgo %2, dispersión %3&#xa0;ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">aquí no había nada mal</translation>
    </message>
    <message>
        <source>Stop is the answer: no row of the catalogue is.</source>
        <translation type="unfinished">La respuesta es parar: no es ninguna fila del catálogo.</translation>
    </message>
    <message>
        <source>No fault was there, and none was imagined.</source>
        <translation type="unfinished">No había ningún fallo, y no se imaginó ninguno.</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Usted: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation type="unfinished">Correcto: %1</translation>
    </message>
    <message>
        <source>Every row that was asked is graded as it is.</source>
        <translation type="unfinished">Cada fila que se pedía está calificada como es.</translation>
    </message>
    <message>
        <source>Nobody was endangered</source>
        <translation type="unfinished">No se puso en peligro a nadie</translation>
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
        <source>A leaf met somebody, or would have. Aboard that is a crushed hand or a death: a power-operated leaf does not know who stands in its way.</source>
        <translation type="unfinished">Una hoja alcanzó a alguien, o lo habría alcanzado. A bordo eso es una mano aplastada o una muerte: una hoja accionada a motor no sabe quién está en su paso.</translation>
    </message>
    <message>
        <source>No moving leaf met anybody.</source>
        <translation type="unfinished">Ninguna hoja en movimiento alcanzó a nadie.</translation>
    </message>
    <message>
        <source>Watch the opening and not the clock. Stop the moment somebody steps in: a run that was stopped costs two minutes.</source>
        <translation type="unfinished">Mire la abertura y no el reloj. Pare en cuanto alguien entre: un ensayo detenido cuesta dos minutos.</translation>
    </message>
    <message>
        <source>Every caution was true when it was answered</source>
        <translation type="unfinished">Cada precaución era cierta cuando se respondió</translation>
    </message>
    <message>
        <source>One caution was answered and was not true</source>
        <translation type="unfinished">Una precaución se respondió y no era cierta</translation>
    </message>
    <message>
        <source>%1 cautions were answered and were not true</source>
        <translation type="unfinished">%1 precauciones se respondieron y no eran ciertas</translation>
    </message>
    <message>
        <source>The door was armed with somebody in the way. A caution is not a key to get past: look at both sides first, and have people asked aside.</source>
        <translation type="unfinished">Se preparó la puerta con alguien en el paso. Una precaución no es una tecla que saltarse: mire primero ambos lados y haga apartarse a la gente.</translation>
    </message>
    <message>
        <source>The way was clear each time a door was armed.</source>
        <translation type="unfinished">El paso estaba libre cada vez que se preparó una puerta.</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished">No se cronometró nada.</translation>
    </message>
    <message>
        <source>Your thumb in this exercise</source>
        <translation type="unfinished">Su pulgar en este ejercicio</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Where %1 of a kind count, the thumb drill offers to use them as your thumb&apos;s own figures in place of the published ones.</source>
        <translation type="unfinished">Las marcas de todos sus ejercicios se suman. Cuando cuentan %1 de una clase, el entrenamiento del pulgar ofrece usarlas como valores propios de su pulgar en lugar de los publicados.</translation>
    </message>
    <message>
        <source>Each mark against the truth</source>
        <translation type="unfinished">Cada marca frente a la verdad</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1. Measured %2; asked: %3</source>
        <translation type="unfinished">No se cumple: %1. Medido %2; se pide: %3</translation>
    </message>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">No se cumple: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">hallada el %1, abierta desde entonces</translation>
    </message>
    <message>
        <source>found on %1, %2 since</source>
        <translation type="unfinished">hallada el %1, %2 desde entonces</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Deficiencia en la puerta %1</translation>
    </message>
    <message>
        <source>The same row was written up before: %1.</source>
        <translation type="unfinished">La misma fila ya se anotó antes: %1.</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Otra vez el mismo defecto</translation>
    </message>
    <message>
        <source>Another one</source>
        <translation type="unfinished">Otro distinto</translation>
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
        <source>port State</source>
        <translation type="unfinished">Estado del puerto</translation>
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
        <source>let go from fully open</source>
        <translation type="unfinished">soltando desde abierta del todo</translation>
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
        <source>Touched</source>
        <translation type="unfinished">Contacto</translation>
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
        <source>if you like: half of the opening is closed</source>
        <translation type="unfinished">si quiere: media abertura cerrada</translation>
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
        <source>touch when the leaf has stopped and re-opens</source>
        <translation type="unfinished">toque cuando la hoja se haya parado y se reabra</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">completa</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished">nulo</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">parada</translation>
    </message>
    <message>
        <source>port State campaign</source>
        <translation type="unfinished">campaña de puertos</translation>
    </message>
    <message>
        <source>blackout trial</source>
        <translation type="unfinished">prueba de apagón</translation>
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
        <source>yearly</source>
        <translation type="unfinished">anual</translation>
    </message>
    <message>
        <source>overdue: it ended on %1</source>
        <translation type="unfinished">vencido: acabó el %1</translation>
    </message>
    <message>
        <source>ends %1, its window opens %2</source>
        <translation type="unfinished">acaba el %1, su plazo se abre el %2</translation>
    </message>
    <message>
        <source>window open since %1, ends %2</source>
        <translation type="unfinished">plazo abierto desde el %1, acaba el %2</translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Certificado de seguridad para buque de pasaje, reconocimiento de renovación</translation>
    </message>
    <message>
        <source>overdue: some doors never tried in this register</source>
        <translation type="unfinished">vencido: algunas puertas nunca probadas en este registro</translation>
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
        <source>nothing falls due</source>
        <translation type="unfinished">no vence nada</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 vencidos</translation>
    </message>
    <message>
        <source>next on %1</source>
        <translation type="unfinished">siguiente el %1</translation>
    </message>
    <message>
        <source>when asked</source>
        <translation type="unfinished">cuando se pide</translation>
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
        <source>too close to a limit to tell</source>
        <translation type="unfinished">demasiado cerca de un límite para saberlo</translation>
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
        <source>opens again too far</source>
        <translation type="unfinished">se reabre demasiado</translation>
    </message>
    <message>
        <source>leaves out of order</source>
        <translation type="unfinished">hojas fuera de orden</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">el pestillo no encaja</translation>
    </message>
    <message>
        <source>magnet lets go late</source>
        <translation type="unfinished">el imán suelta tarde</translation>
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
        <translation type="unfinished">basura en el alojamiento</translation>
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
        <source>painted seal</source>
        <translation type="unfinished">junta pintada</translation>
    </message>
    <message>
        <source>indicator lies</source>
        <translation type="unfinished">el indicador miente</translation>
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
        <translation type="unfinished">gente en el paso</translation>
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
        <source>imagined</source>
        <translation type="unfinished">imaginado</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">De qué se compone la incertidumbre</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Published figures for the thumb until its own drill is done: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Por la ley de propagación (JCGM 100:2008). Valores publicados para el pulgar hasta que se haga su propio entrenamiento: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1 through the years</source>
        <translation type="unfinished">Puerta %1 a lo largo de los años</translation>
    </message>
    <message>
        <source>No time was taken with the ship upright yet.</source>
        <translation type="unfinished">Aún no se tomó ningún tiempo con el buque adrizado.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs with its U; the shaded band is where the next is to be expected with 95 %. It says nothing about what can break at once.</source>
        <translation type="unfinished">Cada punto es la media de los ensayos adrizados de un recorrido, con su U; la banda sombreada es donde se espera el siguiente con un 95 %. No dice nada de lo que puede romperse de golpe.</translation>
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
        <source>not asked of this door</source>
        <translation type="unfinished">no se pide a esta puerta</translation>
    </message>
    <message>
        <source>not tried on this walk: %1</source>
        <translation type="unfinished">no se probó en este recorrido: %1</translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished">aún sin probar</translation>
    </message>
    <message>
        <source>one side still to be tried</source>
        <translation type="unfinished">falta probar un lado</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">no se pudo probar: %1</translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished">visto</translation>
    </message>
    <message>
        <source>seen, and it is not so</source>
        <translation type="unfinished">visto, y no es así</translation>
    </message>
    <message>
        <source>answered as not applicable to this door</source>
        <translation type="unfinished">respondido: no procede en esta puerta</translation>
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
        <source>a limit lies inside the uncertainty: measure once more</source>
        <translation type="unfinished">hay un límite dentro de la incertidumbre: mida una vez más</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: the text says approximate, you decide</source>
        <translation type="unfinished">aún demasiado cerca de un límite tras %1 ensayos: el texto dice aproximado, decide usted</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">cierra de forma desigual: %1 ensayos no concuerdan, vale el peor</translation>
    </message>
    <message>
        <source>one half of the travel lies outside the limits: roughly uniform?</source>
        <translation type="unfinished">una mitad del recorrido de la hoja queda fuera de los límites: ¿aproximadamente uniforme?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only, time it again upright</source>
        <translation type="unfinished">escora de %1 grados: la cifra es solo orientativa, repita el tiempo con el buque adrizado</translation>
    </message>
    <message>
        <source>weaker than its boundary: %1</source>
        <translation type="unfinished">más débil que su contorno: %1</translation>
    </message>
    <message>
        <source>%1; the register does not say what the boundary asks for: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1; el registro no dice qué pide el contorno: vea el plano contraincendios aprobado o consulte a la Administración</translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1; sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>%1; no fire class is asked here</source>
        <translation type="unfinished">%1; aquí no se pide clase de resistencia al fuego</translation>
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
        <source>not as good practice has it: you decide whether the door may stay so</source>
        <translation type="unfinished">no es conforme a la buena práctica: usted decide si la puerta puede quedar así</translation>
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
        <source>the register has no clear opening for this door</source>
        <translation type="unfinished">el registro no tiene la abertura libre de esta puerta</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, edición %2</translation>
    </message>
    <message>
        <source>the cited text was read</source>
        <translation type="unfinished">se leyó el texto citado</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished">práctica común, sin fuente</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">consejo, nunca motivo para rechazar una puerta</translation>
    </message>
    <message>
        <source>put it right, then test it again</source>
        <translation type="unfinished">corríjalo y vuelva a probar</translation>
    </message>
    <message>
        <source>your judgement, with its reason</source>
        <translation type="unfinished">su juicio, con su motivo</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">un ensayo más; tres como máximo y luego decide usted</translation>
    </message>
    <message>
        <source>try it from the other side</source>
        <translation type="unfinished">pruébela desde el otro lado</translation>
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
        <source>try it at the door</source>
        <translation type="unfinished">pruébelo en la puerta</translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 insatisfactorios</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 por resolver</translation>
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
        <source>nothing asked</source>
        <translation type="unfinished">no se pide nada</translation>
    </message>
    <message>
        <source>grave: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">grave: pasa fuego o humo, o puede haber lesionados</translation>
    </message>
    <message>
        <source>serious: the door does not do what is asked</source>
        <translation type="unfinished">seria: la puerta no hace lo que se pide</translation>
    </message>
    <message>
        <source>minor: upkeep and marking</source>
        <translation type="unfinished">menor: mantenimiento y marcado</translation>
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
        <source>not asked of this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">no se pide a esta puerta (%1): lo anotado aquí no cuenta</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open, you decide: %1</source>
        <translation type="unfinished">no cumple, pero el texto lo deja abierto, decide usted: %1</translation>
    </message>
    <message>
        <source>seen, and it is another kind of door</source>
        <translation type="unfinished">visto, y es otra clase de puerta</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished">en el límite</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1): you decide</source>
        <translation type="unfinished">fuera del límite por menos de una división del instrumento (%1): decide usted</translation>
    </message>
    <message>
        <source>between the two figures that the text prints (%1): you decide</source>
        <translation type="unfinished">entre las dos cifras que imprime el texto (%1): decide usted</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1: you decide</source>
        <translation type="unfinished">fuera de una banda que el texto llama aproximada, %1: decide usted</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: you decide</source>
        <translation type="unfinished">aún demasiado cerca de un límite tras %1 ensayos: decide usted</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move, a slip of the finger? Make another run, or decide</source>
        <translation type="unfinished">cerrada más rápido de lo que puede moverse una hoja, ¿un desliz del dedo? Haga otro ensayo, o decida</translation>
    </message>
    <message>
        <source>weaker by tables that are not shown to be this ship&apos;s: %1; ask for the approved drawing</source>
        <translation type="unfinished">más débil según tablas que no consta que sean las de este buque: %1; pida el plano aprobado</translation>
    </message>
    <message>
        <source>weaker than its boundary, unless oil fuel tanks lie below: %1</source>
        <translation type="unfinished">más débil que su contorno, salvo que haya debajo tanques de combustible líquido: %1</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">otro ensayo</translation>
    </message>
    <message>
        <source>not asked: see the answer to “%1”</source>
        <translation type="unfinished">no se pregunta: vea la respuesta a «%1»</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to bind here (%1): you decide</source>
        <translation type="unfinished">no cumple, pero no consta que el texto obligue aquí (%1): usted decide</translation>
    </message>
    <message>
        <source>one side was answered n/a, and the text asks for both: you decide</source>
        <translation type="unfinished">un lado se respondió «no procede» y el texto pide ambos: usted decide</translation>
    </message>
    <message>
        <source>the alarm differs: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">la alarma varía: %1 mediciones no coinciden, vale la peor</translation>
    </message>
    <message>
        <source>run to its end, but not every event was marked</source>
        <translation type="unfinished">medición completa, pero no se marcó cada suceso</translation>
    </message>
    <message>
        <source>a run was begun, and none came to its end</source>
        <translation type="unfinished">se empezó una medición y ninguna llegó al final</translation>
    </message>
    <message>
        <source>the alarm came on only when the door was shut</source>
        <translation type="unfinished">la alarma sonó solo cuando la puerta estaba cerrada</translation>
    </message>
    <message>
        <source>answered n/a, and the text has no such case: you decide</source>
        <translation type="unfinished">se respondió «no procede» y el texto no prevé tal caso: usted decide</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule asks for one: %1</source>
        <translation type="unfinished">el plano aprobado no tiene clase A donde la regla la pide: %1</translation>
    </message>
    <message>
        <source>released from the control station, and no alarm was marked</source>
        <translation type="unfinished">soltada desde el puesto de control sin que se marcara ninguna alarma</translation>
    </message>
    <message>
        <source>say whether the alarm sounded, or run it again</source>
        <translation type="unfinished">diga si sonó la alarma, o repita la medición</translation>
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
        <source>past the day due</source>
        <translation type="unfinished">pasado el día fijado</translation>
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
        <source>no day set</source>
        <translation type="unfinished">sin día fijado</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished">aún nadie</translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 pendiente</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 pendientes</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>from each opening all the way home</source>
        <translation type="unfinished">desde cada apertura, cierra del todo</translation>
    </message>
    <message>
        <source>left standing ajar</source>
        <translation type="unfinished">queda entreabierta</translation>
    </message>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">primera marca: la hoja empieza a moverse</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">última marca: cerrada del todo</translation>
    </message>
    <message>
        <source>an even way, from start to end</source>
        <translation type="unfinished">marcha regular, de principio a fin</translation>
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
        <source>the lip is home first: the other stays out</source>
        <translation type="unfinished">la solapa llega primero: la otra queda fuera</translation>
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
        <source>let go, it shuts</source>
        <translation type="unfinished">se suelta y se cierra</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">un gancho la sujeta abierta</translation>
    </message>
    <message>
        <source>the switch on each side lets it go</source>
        <translation type="unfinished">el interruptor de cada lado la suelta</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">un lado no hace nada</translation>
    </message>
    <message>
        <source>released from the station, it closes</source>
        <translation type="unfinished">accionada desde el puesto, se cierra</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">queda abierta</translation>
    </message>
    <message>
        <source>stays as it was put</source>
        <translation type="unfinished">queda como se puso</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">vuelve atrás: la puerta queda retenida otra vez</translation>
    </message>
    <message>
        <source>stands ajar, and the panel says open</source>
        <translation type="unfinished">entreabierta, y el panel dice abierta</translation>
    </message>
    <message>
        <source>stands ajar, but the panel says shut</source>
        <translation type="unfinished">entreabierta, pero el panel dice cerrada</translation>
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
        <source>the strip lies flush and unbroken</source>
        <translation type="unfinished">la tira está asentada y continua</translation>
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
        <source>hangs low and rubs at the sill</source>
        <translation type="unfinished">cuelga y roza en el umbral</translation>
    </message>
    <message>
        <source>dry, the arm fast at both ends</source>
        <translation type="unfinished">seco, el brazo fijo en ambos extremos</translation>
    </message>
    <message>
        <source>oil runs from it, the arm is off</source>
        <translation type="unfinished">pierde aceite, el brazo está suelto</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">el pestillo ha entrado en su cerradero</translation>
    </message>
    <message>
        <source>the bolt lies short: a push opens it</source>
        <translation type="unfinished">el pestillo no llega: un empujón la abre</translation>
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
        <source>laps well over the stop</source>
        <translation type="unfinished">solapa bien sobre el tope</translation>
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
        <source>a narrow gap at its widest place</source>
        <translation type="unfinished">un hueco estrecho en su punto más ancho</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">un hueco ancho: lea la regla al pie de la hoja</translation>
    </message>
    <message>
        <source>bare deck all the way of the leaf</source>
        <translation type="unfinished">cubierta despejada en todo el paso de la hoja</translation>
    </message>
    <message>
        <source>stores in the way of the leaf</source>
        <translation type="unfinished">pertrechos en el paso de la hoja</translation>
    </message>
    <message>
        <source>bare to the end</source>
        <translation type="unfinished">despejado hasta el fondo</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">basura en el carril</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">solo la sujeta su propia retención</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">una cuña bajo la hoja</translation>
    </message>
    <message>
        <source>a hold-back that the station releases</source>
        <translation type="unfinished">una retención que acciona el puesto</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">un gancho al lado, un cáncamo en la hoja</translation>
    </message>
    <message>
        <source>bare, every roller on the rail</source>
        <translation type="unfinished">despejado, todos los rodillos en el carril</translation>
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
        <source>open it while the release still stands</source>
        <translation type="unfinished">ábrala mientras dura el accionamiento</translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">suelte, apártese: se cierra de nuevo</translation>
    </message>
    <message>
        <source>stops at the soft block and goes back</source>
        <translation type="unfinished">se detiene en el bloque blando y retrocede</translation>
    </message>
    <message>
        <source>pushes on: a hand would be crushed</source>
        <translation type="unfinished">sigue empujando: aplastaría una mano</translation>
    </message>
    <message>
        <source>goes back a little from the block</source>
        <translation type="unfinished">retrocede un poco desde el bloque</translation>
    </message>
    <message>
        <source>goes back too far</source>
        <translation type="unfinished">retrocede demasiado</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">enganchado al pestillo, se tira hasta que se suelta</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it just moves</source>
        <translation type="unfinished">enganchado al borde libre, hasta que apenas se mueve</translation>
    </message>
    <message>
        <source>on to the stair&apos;s width</source>
        <translation type="unfinished">hasta el ancho de la escalera</translation>
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
        <source>Look along the whole way first. Work the switch or handle on that side, then stand clear: hands off edges and out of the pocket.</source>
        <translation type="unfinished">Mire primero todo el paso. Accione el interruptor o la manija de ese lado y apártese: manos lejos de los bordes y fuera del alojamiento.</translation>
    </message>
    <message>
        <source>The cautions come first. The control station releases it at the word to start; nobody passes a moving door, and anybody may say the word to stop.</source>
        <translation type="unfinished">Primero, las precauciones. El puesto de control la acciona a la palabra de inicio; nadie cruza una puerta en movimiento, y cualquiera puede decir la palabra de parada.</translation>
    </message>
    <message>
        <source>Open it fully, look along its way, let go and stand clear.</source>
        <translation type="unfinished">Ábrala del todo, mire su paso, suéltela y apártese.</translation>
    </message>
    <message>
        <source>Over the public address or from mouth to mouth: which doors will move, and when. Wait until those near have looked up.</source>
        <translation type="unfinished">Por megafonía o de viva voz: qué puertas se moverán y cuándo. Espere a que los que están cerca hayan levantado la vista.</translation>
    </message>
    <message>
        <source>Nobody in an opening, nobody near a leaf, no child out of reach. Somebody turns people back until the door stands still.</source>
        <translation type="unfinished">Nadie en una abertura, nadie cerca de una hoja, ningún niño fuera de alcance. Alguien hace volver a la gente hasta que la puerta esté quieta.</translation>
    </message>
    <message>
        <source>One person on each side of every door of the group, where both leaf and approach are seen, able to call stop. Bad: one watch for two sides.</source>
        <translation type="unfinished">Una persona a cada lado de cada puerta del grupo, desde donde vea la hoja y el acceso, y pueda dar la voz de alto. Mal: un vigilante para dos lados.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers stands at the release, and at nothing else.</source>
        <translation type="unfinished">Llame por el canal acordado y espere la respuesta. Quien responde está junto al mando de accionamiento y no hace otra cosa.</translation>
    </message>
    <message>
        <source>Say the word to start and the word to stop; hear both repeated. Anybody may say the word to stop.</source>
        <translation type="unfinished">Diga la palabra de inicio y la de parada; oiga repetir ambas. Cualquiera puede decir la palabra de parada.</translation>
    </message>
    <message>
        <source>Look along the whole path, and into the pocket with a lamp. Hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">Mire todo el paso, y el alojamiento con una linterna. Manos, pies, mangueras y cables lejos de los bordes y montantes de encuentro.</translation>
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
        <source>Hold the block by its far end, low in the path, and stand beside the leaf. Mark when it touches and when it stops; then measure how far it went back. Where it pushes on, say the word to stop.</source>
        <translation type="unfinished">Sujete el bloque por su extremo lejano, abajo en el paso, y póngase al lado de la hoja. Marque cuándo toca y cuándo se detiene; luego mida cuánto retrocedió. Si sigue empujando, diga la palabra de parada.</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Fuerza de cierre en el borde, con dinamómetro</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, a hand&apos;s breadth before it is shut. Hold it still and read the pull. Fingers off the edge. From mass and force follows what an inclination would do.</source>
        <translation type="unfinished">Enganche el dinamómetro al borde libre, a escuadra con la hoja, un palmo antes de cerrarse. Sujételo quieto y lea el tiro. Dedos lejos del borde. De la masa y la fuerza resulta lo que haría una inclinación.</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Escora actual del buque</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count for the upright ship: over 1 degree they are advice only.</source>
        <translation type="unfinished">Lea el clinómetro del puente, o ponga una plomada junto a un marco vertical. Los tiempos valen con el buque adrizado: por encima de 1 grado son solo orientativos.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures stand above it.</source>
        <translation type="unfinished">Práctica común. Por encima están las reglas locales y los procedimientos de la compañía.</translation>
    </message>
    <message>
        <source>the plate is as strong as the boundary</source>
        <translation type="unfinished">la placa es tan resistente como el contorno</translation>
    </message>
    <message>
        <source>the plate is weaker than the boundary</source>
        <translation type="unfinished">la placa es más débil que el contorno</translation>
    </message>
    <message>
        <source>can be read, and is the register&apos;s</source>
        <translation type="unfinished">se lee, y es la del registro</translation>
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
        <source>closed all over</source>
        <translation type="unfinished">cerrada por completo</translation>
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
        <source>a cut under the leaf: width by height</source>
        <translation type="unfinished">un corte bajo la hoja: ancho por alto</translation>
    </message>
    <message>
        <source>whole, with its wire: height by width</source>
        <translation type="unfinished">entero, con su alambre: alto por ancho</translation>
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
        <source>whole all over</source>
        <translation type="unfinished">entera por completo</translation>
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
        <translation type="unfinished">alto: …</translation>
    </message>
    <message>
        <source>everybody near has heard it</source>
        <translation type="unfinished">todos los que están cerca lo han oído</translation>
    </message>
    <message>
        <source>nobody in the way or near it</source>
        <translation type="unfinished">nadie en el paso ni cerca de él</translation>
    </message>
    <message>
        <source>somebody in the opening</source>
        <translation type="unfinished">alguien en la abertura</translation>
    </message>
    <message>
        <source>a watch on each side of the door</source>
        <translation type="unfinished">un vigilante a cada lado de la puerta</translation>
    </message>
    <message>
        <source>nobody sees the far side</source>
        <translation type="unfinished">nadie ve el otro lado</translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished">responde en el canal acordado</translation>
    </message>
    <message>
        <source>each word said by one, repeated by the other</source>
        <translation type="unfinished">cada palabra la dice uno y la repite el otro</translation>
    </message>
    <message>
        <source>path and pocket are bare</source>
        <translation type="unfinished">paso y alojamiento despejados</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">una mano en el borde, una caja en el paso</translation>
    </message>
    <message>
        <source>its supply is cut: it shuts</source>
        <translation type="unfinished">se corta su alimentación: se cierra</translation>
    </message>
    <message>
        <source>its supply is cut: it stays open</source>
        <translation type="unfinished">se corta su alimentación: queda abierta</translation>
    </message>
    <message>
        <source>hold-back dead: it is driven home</source>
        <translation type="unfinished">retención sin energía: se cierra del todo</translation>
    </message>
    <message>
        <source>it hangs where it was held</source>
        <translation type="unfinished">queda donde estaba retenida</translation>
    </message>
    <message>
        <source>ten times open and shut from its own store</source>
        <translation type="unfinished">diez veces abierta y cerrada con su propia reserva</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">una falla, las demás funcionan</translation>
    </message>
    <message>
        <source>one fails, and all stand still</source>
        <translation type="unfinished">una falla y todas se quedan paradas</translation>
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
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: what %1 degrees ask of the closer cannot be worked out.</source>
        <translation type="unfinished">La masa de la hoja no está en el registro: no se puede calcular qué exigen %1 grados al cierrapuertas.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Hold a spring gauge there to see what the closer gives.</source>
        <translation type="unfinished">A %1 grados el solo peso de la hoja tira con hasta %2 en su borde. Ponga allí un dinamómetro para ver qué da el cierrapuertas.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could not close against it.</source>
        <translation type="unfinished">El cierrapuertas da %1; a %2 grados el solo peso de la hoja tira con hasta %3: no podría cerrar contra eso.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could close, if hinges, seals and latch take less than the rest. Worked out, not tried: no verdict comes from this.</source>
        <translation type="unfinished">El cierrapuertas da %1; a %2 grados el solo peso de la hoja tira con hasta %3: podría cerrar, si bisagras, juntas y pestillo toman menos que el resto. Calculado, no probado: de aquí no sale ningún veredicto.</translation>
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
        <source>ready for retest</source>
        <translation type="unfinished">lista para nueva prueba</translation>
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
        <source>grave</source>
        <translation type="unfinished">grave</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">seria</translation>
    </message>
    <message>
        <source>minor</source>
        <translation type="unfinished">menor</translation>
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
        <source>no day set</source>
        <translation type="unfinished">sin día fijado</translation>
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
        <source>nobody yet</source>
        <translation type="unfinished">aún nadie</translation>
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
        <source>passed, but tried only by who put it right: somebody else must test it</source>
        <translation type="unfinished">aprobada, pero probada solo por quien la corrigió: debe probarla otra persona</translation>
    </message>
    <message>
        <source>in order on a later walk, but nobody recorded that it was put right</source>
        <translation type="unfinished">en orden en un recorrido posterior, pero nadie anotó que se corrigiera</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule and %4 at most</source>
        <translation type="unfinished">las zonas %1 actúan como una sola, %2 frente a %3 como regla y %4 como máximo</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule</source>
        <translation type="unfinished">las zonas %1 actúan como una sola, %2 frente a %3 como regla</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>translated by machine, to be checked by a speaker of the trade</source>
        <translation type="unfinished">traducción automática, por revisar por un hablante del oficio</translation>
    </message>
    <message>
        <source>As this machine is set</source>
        <translation type="unfinished">Como este equipo</translation>
    </message>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Inglés donde no hay traducción</translation>
    </message>
    <message>
        <source>the words of the program</source>
        <translation type="unfinished">las palabras del programa</translation>
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
        <source>anyone of the team and the control station</source>
        <translation type="unfinished">cualquiera del equipo y el puesto de control</translation>
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
        <translation type="unfinished">puertas por probar de nuevo</translation>
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
        <translation type="unfinished">basura en el alojamiento</translation>
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
        <source>put right while we stood</source>
        <translation type="unfinished">corregido en nuestra presencia</translation>
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
        <source>by the approved drawing</source>
        <translation type="unfinished">según el plano aprobado</translation>
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
        <source>worn, still does its work</source>
        <translation type="unfinished">gastada, aún cumple su función</translation>
    </message>
    <message>
        <source>not safe to leave so</source>
        <translation type="unfinished">no es seguro dejarla así</translation>
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
        <translation type="unfinished">alojamiento</translation>
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
        <translation type="unfinished">objeto en el paso</translation>
    </message>
    <message>
        <source>wrong door moved</source>
        <translation type="unfinished">se movió otra puerta</translation>
    </message>
    <message>
        <source>watch left</source>
        <translation type="unfinished">el vigilante se fue</translation>
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
        <source>watch posted at the door</source>
        <translation type="unfinished">vigilante en la puerta</translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished">solo accionamiento local</translation>
    </message>
    <message>
        <source>zone kept empty of people</source>
        <translation type="unfinished">zona sin personas</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation type="unfinished">no hace falta nada</translation>
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
        <source>wiring mended</source>
        <translation type="unfinished">cableado reparado</translation>
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
        <translation type="unfinished">paso y alojamiento despejados</translation>
    </message>
    <message>
        <source>hook or wedge taken away</source>
        <translation type="unfinished">gancho o cuña retirados</translation>
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
        <source>the door was taken out</source>
        <translation type="unfinished">se quitó la puerta</translation>
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
        <source>looked at again together</source>
        <translation type="unfinished">visto de nuevo juntos</translation>
    </message>
    <message>
        <source>the other was a slip</source>
        <translation type="unfinished">el otro fue un descuido</translation>
    </message>
    <message>
        <source>the better light</source>
        <translation type="unfinished">la mejor luz</translation>
    </message>
    <message>
        <source>the better instrument</source>
        <translation type="unfinished">el mejor instrumento</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">detenido, sin motivo indicado</translation>
    </message>
    <message>
        <source>spoiled, no reason given</source>
        <translation type="unfinished">nulo, sin motivo indicado</translation>
    </message>
    <message>
        <source>chosen in the settings</source>
        <translation type="unfinished">elegido en los ajustes</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">parada</translation>
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
        <source>run goes on</source>
        <translation type="unfinished">la medición continúa</translation>
    </message>
    <message>
        <source>withdrawn by mistake</source>
        <translation type="unfinished">retirado por error</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">aceptada por su huella</translation>
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
        <source>The paper is being made</source>
        <translation type="unfinished">Se está haciendo el documento</translation>
    </message>
    <message>
        <source>No paper was made. One that was made before is as it was.</source>
        <translation type="unfinished">No se hizo ningún documento. El que se hizo antes sigue como estaba.</translation>
    </message>
    <message>
        <source>No paper</source>
        <translation type="unfinished">Sin documento</translation>
    </message>
    <message>
        <source>The paper is made</source>
        <translation type="unfinished">El documento está hecho</translation>
    </message>
    <message>
        <source>The PDF lies at %1</source>
        <translation type="unfinished">El PDF está en %1</translation>
    </message>
    <message>
        <source>Show it, to print</source>
        <translation type="unfinished">Mostrarlo, para imprimir</translation>
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
        <source>%1, a sample of %2 by lot %3</source>
        <translation type="unfinished">%1, una muestra de %2 por sorteo %3</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Register taken in</source>
        <translation type="unfinished">Registro incorporado</translation>
    </message>
    <message>
        <source>It lies at %1.</source>
        <translation type="unfinished">Está en %1.</translation>
    </message>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished">Abrir este buque</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>The register is being taken in</source>
        <translation type="unfinished">Se está incorporando el registro</translation>
    </message>
    <message>
        <source>Nothing was taken in. The vessels here are as they were before.</source>
        <translation type="unfinished">No se incorporó nada. Los buques de aquí siguen como estaban.</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">No incorporado: un error</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">No incorporado: %1 errores</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">se pregunta en la puerta</translation>
    </message>
    <message>
        <source>asked at the door, for each side</source>
        <translation type="unfinished">se pregunta en la puerta, por cada lado</translation>
    </message>
    <message>
        <source>class of the door against that of its boundary</source>
        <translation type="unfinished">clase de la puerta frente a la de su contorno</translation>
    </message>
    <message>
        <source>plate at the door against the register</source>
        <translation type="unfinished">placa de la puerta frente al registro</translation>
    </message>
    <message>
        <source>measured, and settled by the step of the instrument</source>
        <translation type="unfinished">medido, y decidido por la división del instrumento</translation>
    </message>
    <message>
        <source>a complete run shows it</source>
        <translation type="unfinished">un ensayo completo lo muestra</translation>
    </message>
    <message>
        <source>a run released from the control station shows it</source>
        <translation type="unfinished">un ensayo accionado desde el puesto de control lo muestra</translation>
    </message>
    <message>
        <source>runs released at the door, from each side, show it</source>
        <translation type="unfinished">los ensayos accionados en la puerta, desde cada lado, lo muestran</translation>
    </message>
    <message>
        <source>a run in which the alarm was marked shows it</source>
        <translation type="unfinished">un ensayo en el que se marcó la alarma lo muestra</translation>
    </message>
    <message>
        <source>timed from the first movement until it is shut</source>
        <translation type="unfinished">cronometrado desde el primer movimiento hasta que está cerrada</translation>
    </message>
    <message>
        <source>clear opening divided by the time from first movement to shut</source>
        <translation type="unfinished">vano libre dividido por el tiempo desde el primer movimiento hasta el cierre</translation>
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
        <source>ship upright: with heel a time is advice</source>
        <translation type="unfinished">buque adrizado: con escora un tiempo es consejo</translation>
    </message>
    <message>
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">la respuesta dice qué es la puerta; ninguna es un defecto</translation>
    </message>
    <message>
        <source>the text says so: outside the limits by at most %1 % on the slow side, %2 % on the fast one, it is left to the inspector (margins of our own choice)</source>
        <translation type="unfinished">el texto lo dice: fuera de los límites por no más de un %1 % en el lado lento y un %2 % en el rápido, se deja al inspector (márgenes elegidos por nosotros)</translation>
    </message>
    <message>
        <source>every ship</source>
        <translation type="unfinished">todo buque</translation>
    </message>
    <message>
        <source>advice for: %1</source>
        <translation type="unfinished">consejo para: %1</translation>
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
        <source>Standing</source>
        <translation type="unfinished">Fundamento</translation>
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
        <source>Asked of</source>
        <translation type="unfinished">Se pide a</translation>
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
        <source>Not asked where</source>
        <translation type="unfinished">No se pide donde</translation>
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
        <source>Left open</source>
        <translation type="unfinished">Queda abierto</translation>
    </message>
    <message>
        <source>Nothing open where</source>
        <translation type="unfinished">Nada queda abierto donde</translation>
    </message>
    <message>
        <source>n/a is an answer</source>
        <translation type="unfinished">n/p es una respuesta</translation>
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
        <source>What must be true</source>
        <translation type="unfinished">Lo que debe cumplirse</translation>
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
        <source>the same as the row</source>
        <translation type="unfinished">lo mismo que la fila</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 y %2 más</translation>
    </message>
    <message>
        <source>Read in</source>
        <translation type="unfinished">Leído en</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">No leído</translation>
    </message>
    <message>
        <source>Above it</source>
        <translation type="unfinished">Por encima</translation>
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
        <source>Every</source>
        <translation type="unfinished">Cada</translation>
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
        <source>Tries</source>
        <translation type="unfinished">Prueba</translation>
    </message>
    <message>
        <source>Over these</source>
        <translation type="unfinished">Sobre estos</translation>
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
        <source>binds here</source>
        <translation type="unfinished">obliga aquí</translation>
    </message>
    <message>
        <source>a failure is left to the inspector here</source>
        <translation type="unfinished">un fallo se deja aquí al inspector</translation>
    </message>
    <message>
        <source>advice here</source>
        <translation type="unfinished">consejo aquí</translation>
    </message>
    <message>
        <source>not asked here</source>
        <translation type="unfinished">no se pide aquí</translation>
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
        <source>Binds at</source>
        <translation type="unfinished">Obliga en</translation>
    </message>
    <message>
        <source>A failure is left to the inspector at</source>
        <translation type="unfinished">Un fallo se deja al inspector en</translation>
    </message>
    <message>
        <source>Advice at</source>
        <translation type="unfinished">Consejo en</translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation type="unfinished">No se pide</translation>
    </message>
    <message>
        <source>Aboard this vessel</source>
        <translation type="unfinished">A bordo de este buque</translation>
    </message>
    <message>
        <source>binds %1</source>
        <translation type="unfinished">obliga a %1</translation>
    </message>
    <message>
        <source>left to the inspector at %1</source>
        <translation type="unfinished">se deja al inspector en %1</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">consejo en %1</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">no se pide</translation>
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
        <translation type="unfinished">se detuvo a los %1 s</translation>
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
        <source>spoiled: marks run backwards</source>
        <translation type="unfinished">nulo: marcas en orden inverso</translation>
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
        <translation type="unfinished">juzgado satisfactorio: %1</translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished">juzgado insatisfactorio: %1</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">no se pudo probar: %1</translation>
    </message>
    <message>
        <source>decided that this stands: %1</source>
        <translation type="unfinished">decidido que vale esto: %1</translation>
    </message>
    <message>
        <source>Two decisions about the same</source>
        <translation type="unfinished">Dos decisiones sobre lo mismo</translation>
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
        <source>nobody yet</source>
        <translation type="unfinished">aún nadie</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Por una persona</translation>
    </message>
    <message>
        <source>You open it and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">Usted la abre y la cierra sin ayuda, primero desde el lado uno, luego desde el lado dos.</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Interruptor de accionamiento</translation>
    </message>
    <message>
        <source>Put to release and let go, the switch stays where it was put. The leaf is not held again until somebody puts it back.</source>
        <translation type="unfinished">Puesto en accionar y soltado, el interruptor queda donde se puso. La hoja no vuelve a quedar retenida hasta que alguien lo repone.</translation>
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
        <source>This door isolated at the control box: released again, the others of its group shut.</source>
        <translation type="unfinished">Esta puerta aislada en la caja de control: accionadas de nuevo, las demás de su grupo se cierran.</translation>
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
        <source>Approval paper</source>
        <translation type="unfinished">Documento de aprobación</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Sistema de control: funciona a 200 grados C durante 60 minutos, sin afectar a la alimentación de las otras puertas, aislado por encima de eso, puerta mantenida cerrada hasta 945 grados C.</translation>
    </message>
    <message>
        <source>Openings for air</source>
        <translation type="unfinished">Aberturas de aire</translation>
    </message>
    <message>
        <source>A grille low in the leaf, shutter of fire class: net free area by its drawing 0.03 m2. No undercut.</source>
        <translation type="unfinished">Una rejilla baja en la hoja, obturador de clase de resistencia al fuego: área libre neta según su plano 0.03 m2. Sin corte inferior.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Espacio de máquinas</translation>
    </message>
    <message>
        <source>Supply of the hold-back switched off at the board: the leaf is let go and shuts against the draught of the fans. The control station&apos;s release plan names the door.</source>
        <translation type="unfinished">Alimentación de la retención cortada en el cuadro: la hoja se suelta y se cierra contra la corriente de los ventiladores. El plan de accionamiento del puesto de control cita la puerta.</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Detrás de la puerta</translation>
    </message>
    <message>
        <source>Inside it: a stairway enclosure.</source>
        <translation type="unfinished">Por dentro: un tronco de escalera.</translation>
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
        <source>Approval paper: a core that cannot burn between sheets of steel.</source>
        <translation type="unfinished">Documento de aprobación: un núcleo incombustible entre chapas de acero.</translation>
    </message>
    <message>
        <source>Where the air goes</source>
        <translation type="unfinished">Por dónde pasa el aire</translation>
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
        <source>You go through in the direction of escape with empty hands.</source>
        <translation type="unfinished">Usted pasa en el sentido de la evacuación con las manos vacías.</translation>
    </message>
    <message>
        <source>Quick release</source>
        <translation type="unfinished">Apertura rápida</translation>
    </message>
    <message>
        <source>A bar over two thirds of the leaf; pushed, it lets the latch go. Nothing locks it down.</source>
        <translation type="unfinished">Una barra a lo ancho de dos tercios de la hoja; al empujarla, suelta el pestillo. Nada la bloquea.</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Altura de la barra</translation>
    </message>
    <message>
        <source>The bar stands 950 mm above the deck.</source>
        <translation type="unfinished">La barra está a 950 mm sobre la cubierta.</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Fuerza en la barra</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch lets go.</source>
        <translation type="unfinished">El dinamómetro marca 40 N cuando se suelta el pestillo.</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Panel del puente</translation>
    </message>
    <message>
        <source>The bridge reads its lamp to you: true for open, ajar and shut.</source>
        <translation type="unfinished">El puente le lee su lámpara: cierta con la puerta abierta, entreabierta y cerrada.</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Puesto central</translation>
    </message>
    <message>
        <source>Closing control and lamp of this door stand beside the panel of the detection system.</source>
        <translation type="unfinished">El mando de cierre y la lámpara de esta puerta están junto al panel del sistema de detección.</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Centro de seguridad</translation>
    </message>
    <message>
        <source>Closed from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Cerrada desde el centro de seguridad, la puerta se cierra y allí cambia su lámpara.</translation>
    </message>
    <message>
        <source>Blackout trial</source>
        <translation type="unfinished">Prueba de apagón</translation>
    </message>
    <message>
        <source>Main power off: held and released by the battery, then by the emergency generator.</source>
        <translation type="unfinished">Energía principal cortada: retenida y accionada con la batería, luego con el generador de emergencia.</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Mando fuera del espacio</translation>
    </message>
    <message>
        <source>Its control stands in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Su mando está en el pañol contraincendios del guardacalor, con los de los ventiladores y del combustible.</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Cierre</translation>
    </message>
    <message>
        <source>Let go, it goes firmly home every time.</source>
        <translation type="unfinished">Al soltarla, cierra del todo y con firmeza cada vez.</translation>
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
        <translation type="unfinished">Paso</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation type="unfinished">Alojamiento</translation>
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
        <translation type="unfinished">Retención</translation>
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
        <source>Release here</source>
        <translation type="unfinished">Accionar aquí</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lámparas panel</translation>
    </message>
    <message>
        <source>Papers, trials</source>
        <translation type="unfinished">Documentos</translation>
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
        <source>deficiency of %1</source>
        <translation type="unfinished">deficiencia de %1</translation>
    </message>
    <message>
        <source>caution before %1</source>
        <translation type="unfinished">precaución ante %1</translation>
    </message>
    <message>
        <source>run of %1</source>
        <translation type="unfinished">ensayo de %1</translation>
    </message>
    <message>
        <source>terms of the item of %1</source>
        <translation type="unfinished">condiciones del pendiente de %1</translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished">rectificación en %1</translation>
    </message>
    <message>
        <source>%1 ready for retest</source>
        <translation type="unfinished">%1 lista para nueva prueba</translation>
    </message>
    <message>
        <source>withdrawal of the item of %1</source>
        <translation type="unfinished">retirada del pendiente de %1</translation>
    </message>
    <message>
        <source>beginning of the walkdown</source>
        <translation type="unfinished">inicio del recorrido</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">fin del recorrido</translation>
    </message>
    <message>
        <source>thumb drill</source>
        <translation type="unfinished">entrenamiento del pulgar</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">cuándo aprueba un valor</translation>
    </message>
    <message>
        <source>upkeep done</source>
        <translation type="unfinished">mantenimiento hecho</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation type="unfinished">fecha del certificado</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">decisión</translation>
    </message>
    <message>
        <source>last tap</source>
        <translation type="unfinished">último toque</translation>
    </message>
    <message>
        <source>taking back of %1</source>
        <translation type="unfinished">retirada de %1</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">ya no confirmado: %1</translation>
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
        <source>At door %1 there is nothing to take back.</source>
        <translation type="unfinished">En la puerta %1 no hay nada que retirar.</translation>
    </message>
    <message>
        <source>Not at this door</source>
        <translation type="unfinished">No en esta puerta</translation>
    </message>
    <message>
        <source>Both are recorded; nothing is deleted. What was signed stands.</source>
        <translation type="unfinished">Ambas cosas quedan registradas; no se borra nada. Lo firmado se mantiene.</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, y %2 más</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">insatisfactorio</translation>
    </message>
    <message>
        <source>needs your judgement</source>
        <translation type="unfinished">requiere su juicio</translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished">repetir tiempo</translation>
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
        <translation type="unfinished">consejo</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">no procede</translation>
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
        <source>Stopped</source>
        <translation type="unfinished">Detenido</translation>
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
        <source>Work the release,
side one</source>
        <translation type="unfinished">Accionar,
lado uno</translation>
    </message>
    <message>
        <source>Work the release,
side two</source>
        <translation type="unfinished">Accionar,
lado dos</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished">Soltarla</translation>
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
        <source>%1 sat.</source>
        <translation type="unfinished">%1 sat.</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 por resolver</translation>
    </message>
    <message>
        <source>%1 unsat.</source>
        <translation type="unfinished">%1 insat.</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 sin probar</translation>
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
        <source>Safety shoes and gloves on, hearing protection where the alarm is near, a torch and a radio that was tried just now. Nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Calzado de seguridad y guantes puestos, protección auditiva donde la alarma esté cerca, una linterna y una radio recién probada. Nada suelto que una hoja pueda atrapar.</translation>
    </message>
    <message>
        <source>What can crush whom</source>
        <translation type="unfinished">Qué puede aplastar a quién</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep off. Nobody walks through a moving door. Most published crush deaths: powered watertight doors passed before fully open.</source>
        <translation type="unfinished">Bordes, montantes de encuentro y alojamientos aplastan manos, pies y cabezas: no se acerque. Nadie cruza una puerta en movimiento. La mayoría de las muertes publicadas por aplastamiento: puertas estancas a motor cruzadas antes de estar abiertas del todo.</translation>
    </message>
    <message>
        <source>People kept apart</source>
        <translation type="unfinished">Personas apartadas</translation>
    </message>
    <message>
        <source>Passengers, children, carts and cables are clear of every door of the release group and kept clear. A watch stands at each of these doors, on both sides. One group at a time, and the local test first.</source>
        <translation type="unfinished">Pasajeros, niños, carros y cables están apartados de toda puerta del grupo de accionamiento y así se mantienen. Hay un vigilante en cada una de esas puertas, a ambos lados. Un grupo cada vez, y primero la prueba local.</translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished">El puesto de control</translation>
    </message>
    <message>
        <source>The release is announced. Channel, start word and stop word are agreed, and the control station has said them back.</source>
        <translation type="unfinished">El accionamiento está anunciado. Canal, palabra de inicio y palabra de parada están acordados, y el puesto de control los ha repetido.</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Quién puede detener la prueba</translation>
    </message>
    <message>
        <source>Anyone, at any moment, with the stop word. The doors stop first, the questions come after.</source>
        <translation type="unfinished">Cualquiera, en cualquier momento, con la palabra de parada. Primero se paran las puertas, después vienen las preguntas.</translation>
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
        <source>May stop the test</source>
        <translation type="unfinished">Puede detener la prueba</translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished">quién acciona las puertas</translation>
    </message>
    <message>
        <source>how one speaks with it</source>
        <translation type="unfinished">cómo se habla con él</translation>
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
        <source>who may say the stop word</source>
        <translation type="unfinished">quién puede decir la palabra de parada</translation>
    </message>
    <message>
        <source>release now</source>
        <translation type="unfinished">accionar ahora</translation>
    </message>
    <message>
        <source>doors closing</source>
        <translation type="unfinished">puertas cerrando</translation>
    </message>
    <message>
        <source>close the doors</source>
        <translation type="unfinished">cierre las puertas</translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished">alto alto alto</translation>
    </message>
    <message>
        <source>doors stop</source>
        <translation type="unfinished">puertas, alto</translation>
    </message>
    <message>
        <source>hold the doors</source>
        <translation type="unfinished">detenga las puertas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Read out to everyone who walks</source>
        <translation type="unfinished">Leer en voz alta a todos los que van</translation>
    </message>
    <message>
        <source>Common practice, no source. Deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Práctica común, sin fuente. Muertes: informes de accidentes de clubes P&amp;I y Estados de bandera.</translation>
    </message>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Acordado con el puesto de control</translation>
    </message>
    <message>
        <source>‹ The plan</source>
        <translation type="unfinished">‹ El plan</translation>
    </message>
    <message>
        <source>Say first, in the plan, who records.</source>
        <translation type="unfinished">Diga primero, en el plan, quién anota.</translation>
    </message>
    <message>
        <source>Not agreed yet: %1.</source>
        <translation type="unfinished">Aún sin acordar: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read out.</source>
        <translation type="unfinished">%1 de %2 partes de las instrucciones leídas.</translation>
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
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Read out</source>
        <translation type="unfinished">Leído</translation>
    </message>
    <message>
        <source>Read out: %1</source>
        <translation type="unfinished">Leído: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>thumb&apos;s scatter at the start</source>
        <translation type="unfinished">dispersión del pulgar al inicio</translation>
    </message>
    <message>
        <source>thumb&apos;s scatter at the end</source>
        <translation type="unfinished">dispersión del pulgar al final</translation>
    </message>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">retraso propio al inicio, del entrenamiento</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">retraso propio al final, del entrenamiento</translation>
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
        <source>rate of the clock</source>
        <translation type="unfinished">marcha del reloj</translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished">abertura libre</translation>
    </message>
    <message>
        <source>place of the half-way mark</source>
        <translation type="unfinished">lugar de la marca de media abertura</translation>
    </message>
    <message>
        <source>as good as endless</source>
        <translation type="unfinished">prácticamente infinitos</translation>
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
        <source>together</source>
        <translation type="unfinished">en conjunto</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished">grados de libertad</translation>
    </message>
    <message>
        <source>U, at the coverage of k = 2</source>
        <translation type="unfinished">U, con cobertura k = 2</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">probabilidad dentro de los límites</translation>
    </message>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">De qué se compone la incertidumbre</translation>
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
        <source>Fire and smoke pass this boundary; the zones themselves stay apart.</source>
        <translation type="unfinished">El fuego y el humo pasan por este contorno; las zonas mismas siguen separadas.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule and %4 at most.</source>
        <translation type="unfinished">Las zonas %1 actuarían como una sola: %2 de largo frente a %3 como regla y %4 como máximo.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule.</source>
        <translation type="unfinished">Las zonas %1 actuarían como una sola: %2 de largo frente a %3 como regla.</translation>
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
        <source>Leaf masses are not in the register: take every leaf as able to crush.</source>
        <translation type="unfinished">El registro no tiene la masa de las hojas: considere que toda hoja puede aplastar.</translation>
    </message>
    <message>
        <source> Ashore so heavy a leaf would have to take %1 s or more.</source>
        <translation type="unfinished"> En tierra una hoja tan pesada tendría que tardar %1 s o más.</translation>
    </message>
    <message>
        <source> A comparison, no rule for ships: %1.</source>
        <translation type="unfinished"> Es una comparación, no una regla para buques: %1.</translation>
    </message>
    <message>
        <source>Confirm each before the release</source>
        <translation type="unfinished">Confirme cada punto antes de accionar</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Confirmar</translation>
    </message>
    <message>
        <source>All of it still holds</source>
        <translation type="unfinished">Todo sigue en pie</translation>
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
        <source>before it is released from the control station</source>
        <translation type="unfinished">antes de accionarla desde el puesto de control</translation>
    </message>
    <message>
        <source>To %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">Con: %1, por %2. Para empezar: “%3”. Para detener: “%4”; puede decirlo: %5.</translation>
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
        <source>Door %1: %2 carry up to %3 at the fastest rate allowed.</source>
        <translation type="unfinished">Puerta %1: %2 llevan hasta %3 a la velocidad máxima permitida.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard, %1: still enough for a hand.</source>
        <translation type="unfinished"> Está por debajo del valor en tierra para puertas sin resguardo, %1: aún basta para dañar una mano.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard, %2: keep everybody clear.</source>
        <translation type="unfinished"> Es %1 veces el valor en tierra para puertas sin resguardo, %2: mantenga a todos apartados.</translation>
    </message>
    <message>
        <source>What these doors can do</source>
        <translation type="unfinished">Lo que pueden hacer estas puertas</translation>
    </message>
    <message>
        <source>What must be confirmed ›</source>
        <translation type="unfinished">Lo que hay que confirmar ›</translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Puertas</translation>
    </message>
    <message>
        <source>Back to what will move</source>
        <translation type="unfinished">Volver a lo que se moverá</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Look ›</source>
        <translation type="unfinished">Ver ›</translation>
    </message>
    <message>
        <source>The rules changed since the doors were last shown</source>
        <translation type="unfinished">Las reglas cambiaron desde que se mostraron las puertas por última vez</translation>
    </message>
    <message>
        <source>%1 graded otherwise since the rules changed</source>
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
        <source>answered next by the letters y, n and a</source>
        <translation type="unfinished">las letras y, n y a responden ahora a esta pregunta</translation>
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
        <source>Release %1. On record: %2. Nothing of it is lost.</source>
        <translation type="unfinished">Accionamiento %1. Consta: %2. No se ha perdido nada.</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished">sin marca</translation>
    </message>
    <message>
        <source>It was spoiled</source>
        <translation type="unfinished">Era nulo</translation>
    </message>
    <message>
        <source>Complete it by hand from my own watch</source>
        <translation type="unfinished">Completarlo a mano con mi propio reloj</translation>
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
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or write the day like 2027-03-31.</source>
        <translation type="unfinished">O escriba el día así: 2027-03-31.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Día</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Guardar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Repaso</translation>
    </message>
    <message>
        <source>Practice replaces neither the instruction by licensed people nor the rules of the flag Administration.</source>
        <translation type="unfinished">La práctica no sustituye la instrucción por personal titulado ni las reglas de la Administración de bandera.</translation>
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
        <source>Rows (%1)</source>
        <translation type="unfinished">Filas (%1)</translation>
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
        <source>%1 rows that differ</source>
        <translation type="unfinished">%1 filas que difieren</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Resultado</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Resultado</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Aprueba con %1, rechaza con %2</translation>
    </message>
    <message>
        <source>%1: the usual</source>
        <translation type="unfinished">%1: lo habitual</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again, or left to you after three. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Un tiempo de cierre a menos de %1 s de un límite se repite, o queda a su juicio tras tres. De las puertas que apenas aprueban, 1 de %2 estaría fuera; de las que apenas se rechazan, 1 de %2 estaría dentro.</translation>
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
        <source>They hold for the walkdown under way and for later ones; reports print them. What the flag Administration asks for stands above them.</source>
        <translation type="unfinished">Valen para el recorrido en curso y los posteriores; los informes los imprimen. Lo que pida la Administración de bandera está por encima.</translation>
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
        <source>%1, its door %2</source>
        <translation type="unfinished">%1, su puerta %2</translation>
    </message>
    <message>
        <source>No class: steel or equivalent</source>
        <translation type="unfinished">Sin clase: acero o equivalente</translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation type="unfinished">Sin prescripción</translation>
    </message>
    <message>
        <source>No value printed: ask the Administration</source>
        <translation type="unfinished">Sin valor impreso: consulte a la Administración</translation>
    </message>
    <message>
        <source>No table for such a division</source>
        <translation type="unfinished">No hay tabla para tal división</translation>
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
        <source>The approved plans and the flag Administration stand above these tables.</source>
        <translation type="unfinished">Los planos aprobados y la Administración de bandera están por encima de estas tablas.</translation>
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
        <translation type="unfinished">alojamiento</translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished">recorrido</translation>
    </message>
    <message>
        <source>%1 not known</source>
        <translation type="unfinished">%1 no se conoce</translation>
    </message>
    <message>
        <source>swings both ways</source>
        <translation type="unfinished">abre en ambos sentidos</translation>
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
        <source>, a soft block in its way</source>
        <translation type="unfinished">, un bloque blando en su paso</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished">%1 %2</translation>
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
        <source>Paper</source>
        <translation type="unfinished">Papel</translation>
    </message>
    <message>
        <source>Type in what stands on a paper form</source>
        <translation type="unfinished">Pasar lo que dice un formulario en papel</translation>
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
        <source>Not tested</source>
        <translation type="unfinished">No probada</translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Esta puerta no se pudo probar: diga por qué</translation>
    </message>
    <message>
        <source>Not asked here: %1 ›</source>
        <translation type="unfinished">No se pide aquí: %1 ›</translation>
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
        <source>Walk is done ›</source>
        <translation type="unfinished">Fin del recorrido ›</translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished">Siguiente: %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Puerta %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>not asked because: %1</source>
        <translation type="unfinished">no se pide porque: %1</translation>
    </message>
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
        <source>What the boundary asks for</source>
        <translation type="unfinished">Lo que pide el contorno</translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>Not asked of door %1</source>
        <translation type="unfinished">No se pide a la puerta %1</translation>
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
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">por encima de 1 grado un tiempo de cierre es solo orientativo</translation>
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
        <source>What ± is made of</source>
        <translation type="unfinished">De qué se compone ±</translation>
    </message>
    <message>
        <source>Through the years</source>
        <translation type="unfinished">A lo largo de los años</translation>
    </message>
    <message>
        <source>Write a deficiency</source>
        <translation type="unfinished">Anotar una deficiencia</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">No se pudo probar</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Puertas de este recorrido</translation>
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
        <source>What was %1 read off?</source>
        <translation type="unfinished">¿Con qué se midió %1?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Registrar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>not tried: the published figures stay</source>
        <translation type="unfinished">sin probar: siguen los valores publicados</translation>
    </message>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 de retraso, dispersión %2, de %3 intentos</translation>
    </message>
    <message>
        <source>too few usable trials: the published figures stay</source>
        <translation type="unfinished">demasiado pocos intentos útiles: siguen los valores publicados</translation>
    </message>
    <message>
        <source>; %1 guessed, not counted</source>
        <translation type="unfinished">; %1 adivinados, sin contar</translation>
    </message>
    <message>
        <source>; %1 out of line, not counted</source>
        <translation type="unfinished">; %1 discordantes, sin contar</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and stands with ± %3, where the published figures give ± %4.</source>
        <translation type="unfinished">Un tiempo de cierre se corrige en %1%2 y queda con ± %3, donde los valores publicados dan ± %4.</translation>
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
        <source>Your thumb on this tablet</source>
        <translation type="unfinished">Su pulgar en esta tableta</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the budget. Worth repeating every %1 months.</source>
        <translation type="unfinished">Se usa desde ahora para los ensayos que cronometre en esta tableta. El retraso propio de la tableta, que una puerta real no tiene, sigue en el cálculo. Conviene repetirlo cada %1 meses.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>How late is your thumb, and how steady?</source>
        <translation type="unfinished">¿Cuánto se retrasa su pulgar, y con qué regularidad?</translation>
    </message>
    <message>
        <source>Twenty times a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you do at a door.</source>
        <translation type="unfinished">Veinte veces una hoja arranca sin aviso y luego queda cerrada del todo. Toque la tecla en cuanto arranque, y otra vez en cuanto quede cerrada. Con sonido, antes suena una alarma: toque la tecla al oírla. Dura unos dos minutos. Sujete la tableta como ante una puerta.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then stand in place of the published figures for every run that you time on this tablet. If you leave before the end nothing is kept.</source>
        <translation type="unfinished">Su retraso y dispersión propios sustituyen entonces a los valores publicados en cada ensayo que cronometre en esta tableta. Si sale antes del final no se guarda nada.</translation>
    </message>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Probar el sonido</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Empezar sin sonido</translation>
    </message>
    <message>
        <source>I hear it: begin ›</source>
        <translation type="unfinished">Lo oigo: empezar ›</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Entrenar el pulgar</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Empezar ›</translation>
    </message>
    <message>
        <source>Turn the sound up as far as you hear it well over the ship.</source>
        <translation type="unfinished">Suba el sonido hasta oírlo bien por encima del ruido del buque.</translation>
    </message>
    <message>
        <source>This tablet has no loudspeaker that answers: what is heard keeps the published figures.</source>
        <translation type="unfinished">Esta tableta no tiene altavoz que responda: lo que se oye conserva los valores publicados.</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Intento %1 de %2</translation>
    </message>
    <message>
        <source>That one was missed: it comes again.</source>
        <translation type="unfinished">Ese se perdió: vuelve a salir.</translation>
    </message>
    <message>
        <source>How the drill goes</source>
        <translation type="unfinished">Cómo va el entrenamiento</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Drawing of the leaf close by</source>
        <translation type="unfinished">Dibujo de la hoja de cerca</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Unseal ›</source>
        <translation type="unfinished">Abrir sello ›</translation>
    </message>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">Practicar ›</translation>
    </message>
    <message>
        <source>sealed by the instructor</source>
        <translation type="unfinished">sellado por el instructor</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">mejor %1 %</translation>
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
        <source>‹ Before</source>
        <translation type="unfinished">‹ Antes</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
    </message>
    <message>
        <source>fire doors, one by one</source>
        <translation type="unfinished">puertas contraincendios, una a una</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks what applies to this ship and this kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround le guía de puerta en puerta, pregunta lo que corresponde a este buque y a esta clase de puerta, cronometra el cierre y lo califica.</translation>
    </message>
    <message>
        <source>A released door moves by itself. Nobody passes it; hands and feet stay off edges and pockets; a watch stands on both sides; anyone may stop the test.</source>
        <translation type="unfinished">Una puerta accionada se mueve sola. Nadie la cruza; manos y pies lejos de bordes y alojamientos; un vigilante a ambos lados; cualquiera puede detener la prueba.</translation>
    </message>
    <message>
        <source>Whose rules stand above it</source>
        <translation type="unfinished">Qué reglas están por encima</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan and local rules stand above this program, and so does the judgement of the people who use it. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">La Administración de bandera, el plano contraincendios aprobado y las reglas locales están por encima de este programa, y también el juicio de quienes lo usan. Una calificación es una ayuda, no un certificado.</translation>
    </message>
    <message>
        <source>It goes by the texts of 2015. Later amendments were not checked.</source>
        <translation type="unfinished">Se guía por los textos de 2015. No se comprobaron enmiendas posteriores.</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished">Como está</translation>
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
        <source>What first?</source>
        <translation type="unfinished">¿Qué primero?</translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Ver el buque de muestra</translation>
    </message>
    <message>
        <source>An invented ferry with a walkdown under way. Nothing you do there matters.</source>
        <translation type="unfinished">Un transbordador inventado con un recorrido en curso. Nada de lo que haga allí importa.</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">Practicar</translation>
    </message>
    <message>
        <source>Doors on the screen that move, fail and hide faults, and a debrief.</source>
        <translation type="unfinished">Puertas en pantalla que se mueven, fallan y esconden fallos, y un repaso.</translation>
    </message>
    <message>
        <source>Take in my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Incorporar el registro de mi buque (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every fault in it is named.</source>
        <translation type="unfinished">Cubiertas, zonas, contornos y puertas de una hoja de cálculo; se indica cada error que tenga.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 de %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Probar puertas que pueden aplastar</translation>
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
        <source>Which boundaries hold</source>
        <translation type="unfinished">Qué contornos resisten</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation type="unfinished">Recorrido</translation>
    </message>
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
        <source>The walkdown</source>
        <translation type="unfinished">El recorrido</translation>
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
        <source>What it is graded by</source>
        <translation type="unfinished">Con qué se califica</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Reglamento ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. Prevalecen la Administración del pabellón, los planos aprobados y las reglas locales. No es para naves de gran velocidad ni puertas estancas como tales.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>What falls due</source>
        <translation type="unfinished">Qué vence</translation>
    </message>
    <message>
        <source>Periods of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration stand above them; no days of grace are printed.</source>
        <translation type="unfinished">Plazos de MSC.1/Circ.1432. El plan de la compañía y la Administración de bandera están por encima; no hay días de gracia impresos.</translation>
    </message>
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
        <source>not yet known: enter the day on which it ends</source>
        <translation type="unfinished">aún no se conoce: anote el día en que acaba</translation>
    </message>
    <message>
        <source>Thumb drill of %1</source>
        <translation type="unfinished">Entrenamiento del pulgar de %1</translation>
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
        <source>never done on this tablet: published figures stand</source>
        <translation type="unfinished">nunca hecho en esta tableta: rigen los valores publicados</translation>
    </message>
    <message>
        <source>On which day does the safety certificate end?</source>
        <translation type="unfinished">¿Qué día acaba el certificado de seguridad?</translation>
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
        <source>%1 of %2 not done. What was not tried stays untested in the report.</source>
        <translation type="unfinished">%1 de %2 sin hacer. Lo no probado queda sin probar en el informe.</translation>
    </message>
    <message>
        <source>Something is not saved yet. Save it first: then the walkdown can end.</source>
        <translation type="unfinished">Algo aún no está guardado. Guárdelo primero: después se podrá terminar el recorrido.</translation>
    </message>
    <message>
        <source>A walkdown that has ended is not taken up again.</source>
        <translation type="unfinished">Un recorrido terminado no se retoma.</translation>
    </message>
    <message>
        <source>Go on walking</source>
        <translation type="unfinished">Seguir el recorrido</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Terminar el recorrido</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Puertas de este recorrido</translation>
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
        <source>No other vessel is on this tablet.</source>
        <translation type="unfinished">No hay otro buque en esta tableta.</translation>
    </message>
    <message>
        <source>Take in a register (CSV)</source>
        <translation type="unfinished">Incorporar un registro (CSV)</translation>
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
        <source>The walkdown shown does not cover it. A walkdown planned with it can.</source>
        <translation type="unfinished">El recorrido mostrado no la abarca. Uno planificado con ella sí puede.</translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Aún no ha empezado ningún recorrido. Inicie uno para probarla.</translation>
    </message>
    <message>
        <source>Graded otherwise since the rules changed</source>
        <translation type="unfinished">Otra calificación desde que cambiaron las reglas</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">Lo he visto</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">No conservado</translation>
    </message>
    <message>
        <source>What the doors were graded by before cannot be read any more, so nobody can tell which are graded otherwise.</source>
        <translation type="unfinished">Ya no se puede leer aquello con lo que se calificaban antes las puertas, así que nadie puede decir cuáles tienen otra calificación.</translation>
    </message>
    <message>
        <source>Nothing that was recorded has changed, and a report made before keeps the edition that it was made by.</source>
        <translation type="unfinished">Nada de lo registrado ha cambiado, y un informe hecho antes conserva la edición con la que se hizo.</translation>
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
        <source>While it does not hold, %1.</source>
        <translation type="unfinished">Mientras no resista, %1.</translation>
    </message>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished">%1: hallada por %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1: rectificada por %2: %3</translation>
    </message>
    <message>
        <source>%1: ready for retest, says %2</source>
        <translation type="unfinished">%1: lista para nueva prueba, dice %2</translation>
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
        <source>Who sees to it</source>
        <translation type="unfinished">Quién se encarga</translation>
    </message>
    <message>
        <source>Until then</source>
        <translation type="unfinished">Hasta entonces</translation>
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
        <translation type="unfinished">Estado rector del puerto</translation>
    </message>
    <message>
        <source>nothing given</source>
        <translation type="unfinished">nada indicado</translation>
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
        <source>Look at the photographs</source>
        <translation type="unfinished">Ver las fotos</translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Mostrar ›</translation>
    </message>
    <message>
        <source>What this door did before</source>
        <translation type="unfinished">Lo que hizo antes esta puerta</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Historial ›</translation>
    </message>
    <message>
        <source>Ready for retest</source>
        <translation type="unfinished">Lista para probar</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Rectificada…</translation>
    </message>
    <message>
        <source>Not withdrawn after all</source>
        <translation type="unfinished">Anular la retirada</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Retirar…</translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation type="unfinished">Nada elegido</translation>
    </message>
    <message>
        <source>Rows that are not in order become items when they are written up.</source>
        <translation type="unfinished">Las filas que no están en orden pasan a pendientes cuando se anotan.</translation>
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
        <source>Say who you are before you work the items.</source>
        <translation type="unfinished">Diga quién es antes de tratar los pendientes.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>How grave is it?</source>
        <translation type="unfinished">¿Cuál es la gravedad?</translation>
    </message>
    <message>
        <source>This</source>
        <translation type="unfinished">Esta</translation>
    </message>
    <message>
        <source>What port State control gave</source>
        <translation type="unfinished">Lo que dio el Estado rector del puerto</translation>
    </message>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Código de medida, como lo escribió el funcionario (listas publicadas; deficiencia %1)</translation>
    </message>
    <message>
        <source>Ground for detention? A field of its own: regimes differ in which code carries it.</source>
        <translation type="unfinished">¿Motivo de detención? Un campo propio: los regímenes difieren en qué código lo lleva.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Guardar</translation>
    </message>
    <message>
        <source>By which day?</source>
        <translation type="unfinished">¿Para qué día?</translation>
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
        <source>What is done while the door is out?</source>
        <translation type="unfinished">¿Qué se hace mientras la puerta está fuera de servicio?</translation>
    </message>
    <message>
        <source>Who sees to it?</source>
        <translation type="unfinished">¿Quién se encarga?</translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished">¿Qué se hizo en la puerta %1?</translation>
    </message>
    <message>
        <source>Who did it?</source>
        <translation type="unfinished">¿Quién lo hizo?</translation>
    </message>
    <message>
        <source>Who rectifies cannot retest: the item closes when somebody else finds it in order.</source>
        <translation type="unfinished">Quien rectifica no puede hacer la nueva prueba: el pendiente se cierra cuando otra persona lo halla en orden.</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">¿Por qué se retira?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Keypad</name>
    <message>
        <source>Decimal point</source>
        <translation type="unfinished">Punto decimal</translation>
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
        <source>to judge</source>
        <translation type="unfinished">por juzgar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::LiveScene</name>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Despejar el paso</translation>
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
        <translation type="unfinished">Deteniendo…</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Detenido</translation>
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
        <source>Only shown here: another program writes in this register (%1).</source>
        <translation type="unfinished">Aquí solo se muestra: otro programa escribe en este registro (%1).</translation>
    </message>
    <message>
        <source>Put aside…</source>
        <translation type="unfinished">Apartar…</translation>
    </message>
    <message>
        <source>Put aside what is refused?</source>
        <translation type="unfinished">¿Apartar lo rechazado?</translation>
    </message>
    <message>
        <source>The register does not take it. Put aside it is kept in a file beside the register and counts for nothing; record anew what still holds.</source>
        <translation type="unfinished">El registro no lo acepta. Apartado queda en un archivo junto al registro y no cuenta; registre de nuevo lo que siga siendo válido.</translation>
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
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Pendientes</translation>
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
        <source>None yet: no door was tested.</source>
        <translation type="unfinished">Aún ninguno: no se probó ninguna puerta.</translation>
    </message>
    <message>
        <source>None: no door failed, waits for a judgement, or is to be timed again.</source>
        <translation type="unfinished">Ninguno: ninguna puerta falló, espera un juicio ni debe cronometrarse otra vez.</translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished">Los %1 pendientes ›</translation>
    </message>
    <message>
        <source>After the walk ›</source>
        <translation type="unfinished">Tras el recorrido ›</translation>
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
        <source>Doors of this boundary</source>
        <translation type="unfinished">Puertas de este contorno</translation>
    </message>
    <message>
        <source>Photograph, note, not tested, paper</source>
        <translation type="unfinished">Foto, nota, no probada, papel</translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Veredicto: %1. Pulse para ver los motivos</translation>
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
        <source>Write the name, then touch what this person is aboard.</source>
        <translation type="unfinished">Escriba el nombre y toque lo que esta persona es a bordo.</translation>
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
        <source>The picture is not on this tablet: take it over from the one it was taken with.</source>
        <translation type="unfinished">La imagen no está en esta tableta: tráigala de la tableta con que se tomó.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1: %2, %3 a pie. Primera: %4.</translation>
    </message>
    <message>
        <source> %1 less than in the order of their numbers.</source>
        <translation type="unfinished"> %1 menos que por orden de número.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 sure that %3</source>
        <translation type="unfinished">si no falla ninguna de las %1: %2 de certeza de que %3</translation>
    </message>
    <message>
        <source>Who walks along</source>
        <translation type="unfinished">Quién va</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Añadir persona</translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished">Para qué</translation>
    </message>
    <message>
        <source>Who records</source>
        <translation type="unfinished">Quién anota</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Escora del buque</translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">por encima de 1 grado un tiempo de cierre es solo orientativo</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Cuántas de estas</translation>
    </message>
    <message>
        <source>To the brief ›</source>
        <translation type="unfinished">A instrucciones ›</translation>
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
        <source>Every one</source>
        <translation type="unfinished">Todas ellas</translation>
    </message>
    <message>
        <source>or a sample drawn by lot, and what it proves</source>
        <translation type="unfinished">o una muestra por sorteo, y lo que demuestra</translation>
    </message>
    <message>
        <source>%1 by lot</source>
        <translation type="unfinished">%1 por sorteo</translation>
    </message>
    <message>
        <source>No door is in this scope.</source>
        <translation type="unfinished">No hay puertas en este alcance.</translation>
    </message>
    <message>
        <source>Say first who records.</source>
        <translation type="unfinished">Diga primero quién anota.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Planificar un recorrido</translation>
    </message>
    <message>
        <source>Brief before the doors</source>
        <translation type="unfinished">Instrucciones antes de las puertas</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Instrucciones</translation>
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
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">por encima de 1 grado un tiempo de cierre es solo orientativo</translation>
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
        <source>Every one</source>
        <translation type="unfinished">Todas ellas</translation>
    </message>
    <message>
        <source>%1 by lot: %2 sure that at most %3 are defective</source>
        <translation type="unfinished">%1 por sorteo: %2 de certeza de que como máximo %3 son defectuosas</translation>
    </message>
    <message>
        <source>What a sample says holds if none of it fails. The doors are shared out over zones and kinds and drawn by lot; a door chosen by anybody would prove nothing about the rest. A sample never takes the place of a test that the flag or the rules ask of every door.</source>
        <translation type="unfinished">Lo que dice una muestra vale si no falla ninguna. Las puertas se reparten por zonas y clases y se sacan por sorteo; una puerta elegida por alguien no demostraría nada de las demás. Una muestra nunca sustituye una prueba que la bandera o las reglas piden a cada puerta.</translation>
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
        <source>PRACTICE: these doors are not there, nothing here is a record</source>
        <translation type="unfinished">PRÁCTICA: estas puertas no existen, nada de esto es un asiento</translation>
    </message>
    <message>
        <source>At the door</source>
        <translation type="unfinished">En la puerta</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Terminar y repasar</translation>
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
        <source>No exercise is on this tablet. Take one in.</source>
        <translation type="unfinished">No hay ejercicios en esta tableta. Incorpore uno.</translation>
    </message>
    <message>
        <source>Take in an exercise</source>
        <translation type="unfinished">Incorporar un ejercicio</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Práctica</translation>
    </message>
    <message>
        <source>doors that are not there; nothing becomes a record</source>
        <translation type="unfinished">puertas que no existen; nada queda como asiento</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">No abierto</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">No incorporado: un error</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">No incorporado: %1 errores</translation>
    </message>
    <message>
        <source>Exercise taken in</source>
        <translation type="unfinished">Ejercicio incorporado</translation>
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
        <source>An exercise was not ended</source>
        <translation type="unfinished">Un ejercicio no se terminó</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What was recorded stands; the doors are as at its beginning.</source>
        <translation type="unfinished">%1, empezado el %2 a las %3. Lo registrado se mantiene; las puertas están como al principio.</translation>
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
        <source>Go on with it</source>
        <translation type="unfinished">Continuarlo</translation>
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
        <source>Nobody has practised on this tablet yet. Each exercise that is finished leaves its score here, and how late the thumb was.</source>
        <translation type="unfinished">Nadie ha practicado aún en esta tableta. Cada ejercicio terminado deja aquí su puntuación y cuánto se retrasó el pulgar.</translation>
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
        <source>%1 of %2 faults found, %3 imagined. </source>
        <translation type="unfinished">%1 de %2 fallos hallados, %3 imaginados. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Personas puestas en peligro: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">sin nombre</translation>
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
        <source>, %1 %2, spread %3 ms</source>
        <translation type="unfinished">, %1 %2, dispersión %3 ms</translation>
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
        <source>an exam asks %1 %</source>
        <translation type="unfinished">un examen pide %1 %</translation>
    </message>
    <message>
        <source>Thumb late, ms:</source>
        <translation type="unfinished">Pulgar tarde, ms:</translation>
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
        <source>Papers ›</source>
        <translation type="unfinished">Papeles ›</translation>
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
        <source>Nothing is open yet. %1 rows are not in order and not written up.</source>
        <translation type="unfinished">Aún no hay pendientes. %1 filas no están en orden y no se han anotado.</translation>
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
        <source>Who works the items: %1</source>
        <translation type="unfinished">Quién trata los pendientes: %1</translation>
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
        <source>Differences (%1)</source>
        <translation type="unfinished">Diferencias (%1)</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished">Solo abiertas</translation>
    </message>
    <message>
        <source>Closed too (%1)</source>
        <translation type="unfinished">Y cerradas (%1)</translation>
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
        <source>Who, papers, hand over ›</source>
        <translation type="unfinished">Quién, papeles, traspasar ›</translation>
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
        <source>Who, papers ›</source>
        <translation type="unfinished">Quién, papeles ›</translation>
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
        <source>Gone: in order again</source>
        <translation type="unfinished">Resuelto: otra vez en orden</translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished">Mejor que antes</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished">sin probar</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Dos recorridos, lado a lado</translation>
    </message>
    <message>
        <source>There are no two walkdowns yet.</source>
        <translation type="unfinished">Aún no hay dos recorridos.</translation>
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
        <source>%1 · %2: %3, before %4</source>
        <translation type="unfinished">%1 · %2: %3, antes %4</translation>
    </message>
    <message>
        <source>Nothing that both walks tried has changed by more than the uncertainty explains.</source>
        <translation type="unfinished">Nada de lo que ambos recorridos probaron ha cambiado más de lo que explica la incertidumbre.</translation>
    </message>
    <message>
        <source>Said differently: both stay on record, one is to stand</source>
        <translation type="unfinished">Dicho de forma distinta: ambos constan, debe valer uno</translation>
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
        <source>Nobody said different things of the same.</source>
        <translation type="unfinished">Nadie dijo cosas distintas de lo mismo.</translation>
    </message>
    <message>
        <source>Which one stands? The later one shows until you decide.</source>
        <translation type="unfinished">¿Cuál vale? Se muestra el posterior hasta que usted decida.</translation>
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
        <source>Hand over between tablets and the bridge</source>
        <translation type="unfinished">Traspaso entre tabletas y el puente</translation>
    </message>
    <message>
        <source>Give everything to a file</source>
        <translation type="unfinished">Dar todo a un archivo</translation>
    </message>
    <message>
        <source>facts, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">asientos, fotos y disposición, firmados por este equipo</translation>
    </message>
    <message>
        <source>Give</source>
        <translation type="unfinished">Dar</translation>
    </message>
    <message>
        <source>Give it sealed for one device</source>
        <translation type="unfinished">Darlo sellado para un equipo</translation>
    </message>
    <message>
        <source>only that device can open it; its key is asked for</source>
        <translation type="unfinished">solo ese equipo puede abrirlo; se pide su clave</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished">Sellar</translation>
    </message>
    <message>
        <source>Take in another device&apos;s file</source>
        <translation type="unfinished">Incorporar el archivo de otro equipo</translation>
    </message>
    <message>
        <source>it is looked at first; nothing here is ever changed by it</source>
        <translation type="unfinished">primero se examina; nunca cambia nada de lo que hay aquí</translation>
    </message>
    <message>
        <source>Take</source>
        <translation type="unfinished">Tomar</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">La clave de este equipo</translation>
    </message>
    <message>
        <source>to be given to whoever seals a file for it</source>
        <translation type="unfinished">para darla a quien le selle un archivo</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Mostrar</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation type="unfinished">No dado</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation type="unfinished">Traspasado</translation>
    </message>
    <message>
        <source>The file lies at %1</source>
        <translation type="unfinished">El archivo está en %1</translation>
    </message>
    <message>
        <source>For which device is it sealed?</source>
        <translation type="unfinished">¿Para qué equipo se sella?</translation>
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
        <source>Seal and give</source>
        <translation type="unfinished">Sellar y dar</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">No incorporado</translation>
    </message>
    <message>
        <source>What this file brings</source>
        <translation type="unfinished">Lo que trae este archivo</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished">De %1</translation>
    </message>
    <message>
        <source>Nothing that is not here already.</source>
        <translation type="unfinished">Nada que no esté ya aquí.</translation>
    </message>
    <message>
        <source>Nobody here knows this device yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">Aquí nadie conoce aún este equipo. Pida a quien le dio el archivo que lea en voz alta la huella de su clave. Debe ser:
%1</translation>
    </message>
    <message>
        <source>The fingerprint is right: accept it and take in</source>
        <translation type="unfinished">La huella es correcta: aceptarla e incorporar</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished">Incorporar</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished">Dejarlo</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, como %2, %3 %4: </translation>
    </message>
    <message>
        <source>DOES NOT HOLD: %1</source>
        <translation type="unfinished">NO VÁLIDA: %1</translation>
    </message>
    <message>
        <source>%1 facts, unchanged</source>
        <translation type="unfinished">%1 asientos, sin cambios</translation>
    </message>
    <message>
        <source>; %1 came later and are not under it</source>
        <translation type="unfinished">; %1 llegaron después y no quedan amparados</translation>
    </message>
    <message>
        <source>Papers, as PDF</source>
        <translation type="unfinished">Papeles, en PDF</translation>
    </message>
    <message>
        <source>Make</source>
        <translation type="unfinished">Hacer</translation>
    </message>
    <message>
        <source>Make: %1</source>
        <translation type="unfinished">Hacer: %1</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Lista de deficiencias</translation>
    </message>
    <message>
        <source>for the master: what is open, what it does, what is done until then</source>
        <translation type="unfinished">para el capitán: qué está pendiente, qué efecto tiene, qué se hace hasta entonces</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Lista de trabajos</translation>
    </message>
    <message>
        <source>for the crew: by who sees to it, with boxes to tick</source>
        <translation type="unfinished">para la tripulación: según quién se encarga, con casillas para marcar</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Ficha de puerta</translation>
    </message>
    <message>
        <source>Record of door %1</source>
        <translation type="unfinished">Ficha de la puerta %1</translation>
    </message>
    <message>
        <source>one page: what it is, how it did, what was mended</source>
        <translation type="unfinished">una página: qué es, cómo se portó, qué se reparó</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Informe de reconocimiento</translation>
    </message>
    <message>
        <source>the walkdown shown, every door and every row</source>
        <translation type="unfinished">el recorrido mostrado, cada puerta y cada fila</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulario en blanco</translation>
    </message>
    <message>
        <source>what the tablet asks, for a day without it</source>
        <translation type="unfinished">lo que pregunta la tableta, para un día sin ella</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Nada que firmar aún</translation>
    </message>
    <message>
        <source>A walkdown is signed when it has ended.</source>
        <translation type="unfinished">Un recorrido se firma cuando ha terminado.</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Firmar un recorrido</translation>
    </message>
    <message>
        <source>Nobody has signed it yet.</source>
        <translation type="unfinished">Nadie lo ha firmado aún.</translation>
    </message>
    <message>
        <source>A signature covers what is recorded of this walkdown now, under the key of this device. It is no qualified electronic signature: sign the paper as well where your Administration asks for it.</source>
        <translation type="unfinished">Una firma ampara lo que consta ahora de este recorrido, con la clave de este equipo. No es una firma electrónica cualificada: firme también el papel donde su Administración lo pida.</translation>
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
        <source>Who works the items?</source>
        <translation type="unfinished">¿Quién trata los pendientes?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Otra persona</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Añadir persona</translation>
    </message>
    <message>
        <source>Rows that are not in order and not written up</source>
        <translation type="unfinished">Filas que no están en orden y no se han anotado</translation>
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
        <source>What door %1 did before</source>
        <translation type="unfinished">Lo que hizo antes la puerta %1</translation>
    </message>
    <message>
        <source>Walkdowns of this door, the latest first</source>
        <translation type="unfinished">Recorridos de esta puerta, el último primero</translation>
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
        <source>Its closing through the years</source>
        <translation type="unfinished">Su cierre a lo largo de los años</translation>
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
        <source>Everything is being put into a file</source>
        <translation type="unfinished">Se está poniendo todo en un archivo</translation>
    </message>
    <message>
        <source>No file was made, and nothing was handed over.</source>
        <translation type="unfinished">No se hizo ningún archivo y no se traspasó nada.</translation>
    </message>
    <message>
        <source>The file is being looked at</source>
        <translation type="unfinished">Se está examinando el archivo</translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation type="unfinished">No se incorporó nada.</translation>
    </message>
    <message>
        <source>The file is being taken in</source>
        <translation type="unfinished">Se está incorporando el archivo</translation>
    </message>
    <message>
        <source>Nothing was taken in. Everything here is as it was before.</source>
        <translation type="unfinished">No se incorporó nada. Aquí todo sigue como estaba.</translation>
    </message>
    <message>
        <source>No walkdown recorded anything of this door yet.</source>
        <translation type="unfinished">Ningún recorrido ha anotado aún nada de esta puerta.</translation>
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
        <source>The signature is kept, and saved by itself in a moment.</source>
        <translation type="unfinished">La firma está a salvo y se guardará por sí sola en un momento.</translation>
    </message>
    <message>
        <source>There is no walkdown yet: until then only the blank form and the rule book can be made.</source>
        <translation type="unfinished">Aún no hay recorridos: hasta entonces solo se pueden hacer el formulario en blanco y el reglamento.</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Reglamento</translation>
    </message>
    <message>
        <source>every row with its limit, dates, exemptions and text, and where it binds aboard</source>
        <translation type="unfinished">cada fila con su límite, fechas, exenciones y texto, y dónde obliga a bordo</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Antes</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Más ›</translation>
    </message>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1 a %2 de %3</translation>
    </message>
    <message>
        <source>Rows before these</source>
        <translation type="unfinished">Filas anteriores</translation>
    </message>
    <message>
        <source>More rows</source>
        <translation type="unfinished">Más filas</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 de %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>All that the row says</source>
        <translation type="unfinished">Todo lo que dice la fila</translation>
    </message>
    <message>
        <source>‹ Rows</source>
        <translation type="unfinished">‹ Filas</translation>
    </message>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Imprimir ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Imprimir el reglamento</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>All rows</source>
        <translation type="unfinished">Todas las filas</translation>
    </message>
    <message>
        <source>No row has these words.</source>
        <translation type="unfinished">Ninguna fila tiene estas palabras.</translation>
    </message>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">palabras o una cita</translation>
    </message>
    <message>
        <source>Find rows by their words or citation</source>
        <translation type="unfinished">Buscar filas por sus palabras o su cita</translation>
    </message>
    <message>
        <source>Rows of the rule book</source>
        <translation type="unfinished">Filas del reglamento</translation>
    </message>
    <message>
        <source>Read it ›</source>
        <translation type="unfinished">Leerlo ›</translation>
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
        <source>Asked aboard</source>
        <translation type="unfinished">Se piden a bordo</translation>
    </message>
    <message>
        <source>Asked of this door</source>
        <translation type="unfinished">Se piden a esta puerta</translation>
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
        <translation type="unfinished">Medición completa</translation>
    </message>
    <message>
        <source>STOPPED. Say “%1” now</source>
        <translation type="unfinished">DETENIDO. Diga “%1” ahora</translation>
    </message>
    <message>
        <source>Run spoiled</source>
        <translation type="unfinished">Ensayo nulo</translation>
    </message>
    <message>
        <source>On record, and never counted as a measurement. Why?</source>
        <translation type="unfinished">Queda constancia, y nunca cuenta como medición. ¿Por qué?</translation>
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
        <source>All runs of the door together: %1 %2: %3</source>
        <translation type="unfinished">Todas las pruebas de la puerta juntas: %1 %2: %3</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Ambas son correctas</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart. One touch too many?</source>
        <translation type="unfinished">«%1» y «%2» distan solo %3 s. ¿Un toque de más?</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Retirar «%1»</translation>
    </message>
    <message>
        <source>Yes: the run is spoiled</source>
        <translation type="unfinished">Sí: la prueba no vale</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart: no leaf moves so fast. A slip of the finger?</source>
        <translation type="unfinished">«%1» y «%2» distan solo %3 s: ninguna hoja se mueve tan rápido. ¿Un desliz del dedo?</translation>
    </message>
    <message>
        <source>no alarm was marked: %1</source>
        <translation type="unfinished">no se marcó ninguna alarma: %1</translation>
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
        <source>Look closer</source>
        <translation type="unfinished">Ver de cerca</translation>
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
        <translation type="unfinished">Despejar el paso</translation>
    </message>
    <message>
        <source>Ask the station</source>
        <translation type="unfinished">Preguntar al puesto</translation>
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
        <source>It is not shut. Let it shut first, with the stopwatch.</source>
        <translation type="unfinished">No está cerrada. Deje que se cierre antes, con el cronómetro.</translation>
    </message>
    <message>
        <source>You push it from the other side, hard.</source>
        <translation type="unfinished">Usted la empuja desde el otro lado, con fuerza.</translation>
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
        <source>Nobody and nothing is in the way now.</source>
        <translation type="unfinished">Ahora no hay nadie ni nada en el paso.</translation>
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
        <source>Try</source>
        <translation type="unfinished">Probar</translation>
    </message>
    <message>
        <source>The whole door</source>
        <translation type="unfinished">La puerta entera</translation>
    </message>
    <message>
        <source>Try and ask</source>
        <translation type="unfinished">Probar y preguntar</translation>
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
        <source>The leaf moves</source>
        <translation type="unfinished">La hoja se mueve</translation>
    </message>
    <message>
        <source>The leaf is home</source>
        <translation type="unfinished">La hoja está cerrada del todo</translation>
    </message>
    <message>
        <source>The leaf stands open</source>
        <translation type="unfinished">La hoja está abierta</translation>
    </message>
    <message>
        <source>The leaf stands part open</source>
        <translation type="unfinished">La hoja está a medio abrir</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarma activa</translation>
    </message>
    <message>
        <source>somebody is in the opening</source>
        <translation type="unfinished">hay alguien en la abertura</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ScoreCard</name>
    <message>
        <source>Half for the rows that are right, half for the faults: found of those there and imagined. Ten points less for each person endangered and each caution answered untruly.</source>
        <translation type="unfinished">La mitad por las filas correctas, la mitad por los fallos: hallados de los que había e imaginados. Diez puntos menos por cada persona puesta en peligro y por cada precaución respondida sin verdad.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Score: %1 percent</source>
        <translation type="unfinished">Puntuación: %1 por ciento</translation>
    </message>
    <message>
        <source>Passed: %1 % are asked</source>
        <translation type="unfinished">Aprobado: se pide %1 %</translation>
    </message>
    <message>
        <source>Not passed: %1 % are asked</source>
        <translation type="unfinished">No aprobado: se pide %1 %</translation>
    </message>
    <message>
        <source>%1 of %2 rows graded right</source>
        <translation type="unfinished">%1 de %2 filas bien calificadas</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined</source>
        <translation type="unfinished">%1 de %2 fallos hallados, %3 imaginados</translation>
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
        <source>1 caution answered untruly</source>
        <translation type="unfinished">1 precaución respondida sin verdad</translation>
    </message>
    <message>
        <source>%1 cautions answered untruly</source>
        <translation type="unfinished">%1 precauciones respondidas sin verdad</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SealedForm</name>
    <message>
        <source>The instructor sealed this exercise. The instructor&apos;s word opens it.</source>
        <translation type="unfinished">El instructor selló este ejercicio. La palabra del instructor lo abre.</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">la palabra del instructor</translation>
    </message>
    <message>
        <source>The instructor&apos;s word</source>
        <translation type="unfinished">La palabra del instructor</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation type="unfinished">Mostrar lo escrito</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Abrir el ejercicio ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Luz</translation>
    </message>
    <message>
        <source>Night keeps the eyes used to a dark bridge.</source>
        <translation type="unfinished">El modo noche conserva la vista hecha a un puente oscuro.</translation>
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
        <source>Of words and keys; what no longer fits comes on a page of its own.</source>
        <translation type="unfinished">De textos y teclas; lo que ya no cabe pasa a una página propia.</translation>
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
        <source>Motion</source>
        <translation type="unfinished">Movimiento</translation>
    </message>
    <message>
        <source>Calm: drawn leaves move in quarter steps instead of gliding.</source>
        <translation type="unfinished">Calma: las hojas dibujadas avanzan por cuartos en vez de deslizarse.</translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation type="unfinished">Fluido</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation type="unfinished">Calma</translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished">Al tomar una marca</translation>
    </message>
    <message>
        <source>A tick and a shake, where this machine has them.</source>
        <translation type="unfinished">Un clic y una vibración, donde este equipo los tenga.</translation>
    </message>
    <message>
        <source>Tick and shake</source>
        <translation type="unfinished">Clic y vibrar</translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation type="unfinished">Silencio</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Unidades</translation>
    </message>
    <message>
        <source>Limits stay in the unit of their text, beside the figure.</source>
        <translation type="unfinished">Los límites quedan en la unidad de su texto, junto al valor.</translation>
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
        <source>Say first who records, in a plan: a thumb is somebody&apos;s.</source>
        <translation type="unfinished">Diga primero, en un plan, quién anota: un pulgar es de alguien.</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Probar pulgar</translation>
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
        <source>The catalogue alone; no flag&apos;s own rules over it.</source>
        <translation type="unfinished">Solo el catálogo; sin reglas de una bandera por encima.</translation>
    </message>
    <message>
        <source>The rules of %1 stand over the catalogue.</source>
        <translation type="unfinished">Las reglas de %1 están por encima del catálogo.</translation>
    </message>
    <message>
        <source>Take in a flag&apos;s rules</source>
        <translation type="unfinished">Incorporar reglas de bandera</translation>
    </message>
    <message>
        <source>Catalogue alone</source>
        <translation type="unfinished">Solo catálogo</translation>
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
        <source>‹ Before</source>
        <translation type="unfinished">‹ Antes</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Más ›</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 de %2</translation>
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
        <source>This run is spoiled: run again</source>
        <translation type="unfinished">Este ensayo es nulo: repetir</translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Marcas</translation>
    </message>
    <message>
        <source>Slips ›</source>
        <translation type="unfinished">Errores ›</translation>
    </message>
    <message>
        <source>Show the marks out of turn</source>
        <translation type="unfinished">Mostrar las marcas fuera de orden</translation>
    </message>
    <message>
        <source>Show take back and spoiled</source>
        <translation type="unfinished">Mostrar quitar y nulo</translation>
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
        <source>Spoiled</source>
        <translation type="unfinished">Nulo</translation>
    </message>
    <message>
        <source>Spoiled,
run again</source>
        <translation type="unfinished">Nulo,
repetir</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Antes</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Siguiente ›</translation>
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
        <source>What class does the boundary ask for?</source>
        <translation type="unfinished">¿Qué clase pide el contorno?</translation>
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
        <source>not yet tried</source>
        <translation type="unfinished">aún sin probar</translation>
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
        <source>%1 degrees: over 1 degree a time is advice only</source>
        <translation type="unfinished">%1 grados: por encima de 1 grado un tiempo es solo orientativo</translation>
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
        <source>Walked by %1, %2 at %3</source>
        <translation type="unfinished">Recorrido por %1, %2 a las %3</translation>
    </message>
    <message>
        <source>Letters y, n, a: yes, no, n/a at the bar.</source>
        <translation type="unfinished">Letras y, n, a: sí, no, n/p en la barra.</translation>
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
        <translation type="unfinished">Puerta %1 · medición %2</translation>
    </message>
    <message>
        <source>no mark yet</source>
        <translation type="unfinished">todavía sin marca</translation>
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
        <translation type="unfinished"> (solo orientativo)</translation>
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
        <source>Alarm stopped</source>
        <translation type="unfinished">Fin de alarma</translation>
    </message>
    <message>
        <source>Alarm
comes late</source>
        <translation type="unfinished">La alarma
llega tarde</translation>
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
        <source>One time</source>
        <translation type="unfinished">Un tiempo</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation type="unfinished">%1 tiempos</translation>
    </message>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Desde la reparación de hacia %1: </translation>
    </message>
    <message>
        <source>%1 so far, too few to say what comes: five over at least a year are needed.</source>
        <translation type="unfinished">%1 hasta ahora, demasiado pocos para decir qué viene: hacen falta cinco a lo largo de un año como mínimo.</translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, con un cambio de %2 al año. </translation>
    </message>
    <message>
        <source>A time beyond %1 is to be expected now: the 95 % interval reaches it already.</source>
        <translation type="unfinished">Ya es de esperar un tiempo que pase de %1: el intervalo del 95 % ya lo alcanza.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have it seen to before.</source>
        <translation type="unfinished">El intervalo del 95 % alcanza %1 por primera vez en %2: hágala revisar antes.</translation>
    </message>
    <message>
        <source>No limit is reached by %1, and these times do not reach further.</source>
        <translation type="unfinished">No se alcanza ningún límite hasta %1, y estos tiempos no llegan más lejos.</translation>
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
        <source>From the paper: release %1</source>
        <translation type="unfinished">Del papel: accionamiento %1</translation>
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
        <source>No leaf moves so fast. A slip of the finger? Else type it again.</source>
        <translation type="unfinished">Ninguna hoja se mueve tan rápido. ¿Un desliz del dedo? Si no, tecléelo otra vez.</translation>
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
        <source>It sounded: type the seconds</source>
        <translation type="unfinished">Sonó: escriba los segundos</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>What is asked of this door, worst first</source>
        <translation type="unfinished">Lo que se pide a esta puerta, lo peor primero</translation>
    </message>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Puerta %1: %2, %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return to be told why</source>
        <translation type="unfinished">pulse Intro para saber por qué</translation>
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
        <source>What falls due</source>
        <translation type="unfinished">Qué vence</translation>
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
        <source>Take in a register (CSV)</source>
        <translation type="unfinished">Incorporar un registro (CSV)</translation>
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
        <source>sat.</source>
        <translation type="unfinished">sat.</translation>
    </message>
    <message>
        <source>to settle</source>
        <translation type="unfinished">por resolver</translation>
    </message>
    <message>
        <source>unsat.</source>
        <translation type="unfinished">insat.</translation>
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
        <source>The last one: %1, %2. Ended %3</source>
        <translation type="unfinished">El último: %1, %2. Terminado el %3</translation>
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
        <source>This register has no doors yet, so there is nothing to walk. Take in a register that lists them.</source>
        <translation type="unfinished">Este registro aún no tiene puertas, así que no hay nada que recorrer. Incorpore un registro que las liste.</translation>
    </message>
    <message>
        <source>Nothing was tested yet with this register. A walkdown begins with a plan: who, which doors, in which order.</source>
        <translation type="unfinished">Aún no se ha probado nada con este registro. Un recorrido empieza con un plan: quién, qué puertas, en qué orden.</translation>
    </message>
    <message>
        <source>Take in a register ›</source>
        <translation type="unfinished">Incorporar un registro ›</translation>
    </message>
    <message>
        <source>Look at the doors ›</source>
        <translation type="unfinished">Ver las puertas ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
    <message>
        <source>From paper: who walked?</source>
        <translation type="unfinished">Del papel: ¿quién hizo el recorrido?</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Otra persona</translation>
    </message>
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
        <source>ship&apos;s time of this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">hora del buque en esta puerta, horas y minutos: 1432 es 14:32</translation>
    </message>
    <message>
        <source>That is later than now.</source>
        <translation type="unfinished">Eso es más tarde que ahora.</translation>
    </message>
    <message>
        <source>There is no such time of day.</source>
        <translation type="unfinished">No existe esa hora.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>You decide. First the reason:</source>
        <translation type="unfinished">Decide usted. Primero el motivo:</translation>
    </message>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished">Satisfactorio</translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished">Insatisfactorio</translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished">Por qué este veredicto</translation>
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
        <source>What would settle it</source>
        <translation type="unfinished">Qué lo resolvería</translation>
    </message>
    <message>
        <source>Asked because</source>
        <translation type="unfinished">Se pide porque</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texto</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished">Fundamento</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; una regla de %2</translation>
    </message>
    <message>
        <source>How much hangs on it</source>
        <translation type="unfinished">Cuánto depende de ello</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Por qué: %1</translation>
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
        <source>%1 of %2 done. What was not tried counts as not found.</source>
        <translation type="unfinished">%1 de %2 hechas. Lo no probado cuenta como no encontrado.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished">Seguir</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Terminar y repasar</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">No conservado</translation>
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
        <source>Papers are printed in English; what you write stands as written.</source>
        <translation type="unfinished">Los informes se imprimen en inglés; lo que usted escribe queda como está.</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Más tarde</translation>
    </message>
    <message>
        <source>The words change when the exercise has ended.</source>
        <translation type="unfinished">Las palabras cambian cuando haya terminado el ejercicio.</translation>
    </message>
    <message>
        <source>Whose thumb?</source>
        <translation type="unfinished">¿Qué pulgar?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records.</source>
        <translation type="unfinished">Primero planifique un recorrido y diga quién anota.</translation>
    </message>
    <message>
        <source>%1 has done no thumb drill on this tablet: published figures stand.</source>
        <translation type="unfinished">%1 no ha hecho el entrenamiento del pulgar en esta tableta: rigen los valores publicados.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 hizo el entrenamiento del pulgar el %2; conviene repetirlo desde el %3.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 hizo el entrenamiento del pulgar el %2; conviene repetirlo después del %3.</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Cuándo aprueba o no un valor</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">No incorporado</translation>
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
        <source>Take the photograph</source>
        <translation type="unfinished">Tomar la foto</translation>
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
        <source>Register of a vessel</source>
        <translation type="unfinished">Registro de un buque</translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Registro CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules of a flag</source>
        <translation type="unfinished">Reglas de una bandera</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Reglas (*.json)</translation>
    </message>
    <message>
        <source>1 fact</source>
        <translation type="unfinished">1 asiento</translation>
    </message>
    <message>
        <source>%1 facts</source>
        <translation type="unfinished">%1 asientos</translation>
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
        <source>1 door that was not known here</source>
        <translation type="unfinished">1 puerta que aquí no se conocía</translation>
    </message>
    <message>
        <source>%1 doors that were not known here</source>
        <translation type="unfinished">%1 puertas que aquí no se conocían</translation>
    </message>
    <message>
        <source>1 difference to decide</source>
        <translation type="unfinished">1 diferencia por decidir</translation>
    </message>
    <message>
        <source>%1 differences to decide</source>
        <translation type="unfinished">%1 diferencias por decidir</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished">No mostrado</translation>
    </message>
    <message>
        <source>This machine has no program that shows PDF files. The file lies at %1</source>
        <translation type="unfinished">Este equipo no tiene programa que muestre archivos PDF. El archivo está en %1</translation>
    </message>
    <message>
        <source>Hand over to a file</source>
        <translation type="unfinished">Traspasar a un archivo</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Archivos de traspaso (*.zip)</translation>
    </message>
    <message>
        <source>Handover file of another device</source>
        <translation type="unfinished">Archivo de traspaso de otro equipo</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">equipo %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercise of an instructor</source>
        <translation type="unfinished">Ejercicio de un instructor</translation>
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
        <source>A run is being timed: a leaf may be moving. Closing stops the run.</source>
        <translation type="unfinished">Se está cronometrando una prueba: puede haber una hoja en movimiento. Cerrar detiene la prueba.</translation>
    </message>
    <message>
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing loses them.</source>
        <translation type="unfinished">%1 entradas NO están guardadas ni se pudieron conservar en otro lugar. Al cerrar se pierden.</translation>
    </message>
    <message>
        <source>What is written in the open sheet is not recorded. Closing loses it.</source>
        <translation type="unfinished">Lo escrito en la hoja abierta no está registrado. Al cerrar se pierde.</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">¿Cerrar el programa?</translation>
    </message>
    <message>
        <source>Go on here</source>
        <translation type="unfinished">Seguir aquí</translation>
    </message>
    <message>
        <source>Close all the same</source>
        <translation type="unfinished">Cerrar de todos modos</translation>
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
        <source>The register is being looked through</source>
        <translation type="unfinished">Se está revisando el registro</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">puerta %1 cubierta %2 %3</translation>
    </message>
    <message>
        <source>bulkhead %1 does not hold: %2</source>
        <translation type="unfinished">el mamparo %1 no resiste: %2</translation>
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
        <source>closer</source>
        <translation type="unfinished">más cerca</translation>
    </message>
    <message>
        <source>further away</source>
        <translation type="unfinished">más lejos</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Todo</translation>
    </message>
    <message>
        <source>the whole ship</source>
        <translation type="unfinished">todo el buque</translation>
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
</context>
</TS>
