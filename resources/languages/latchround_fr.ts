<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Made by machine. To be checked by a speaker who knows fire doors aboard ship; until then every translation stays unfinished. -->
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Boundaries</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 et %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished">%1 de plus</translation>
    </message>
    <message>
        <source>%1 open at deck %2 (%3)</source>
        <translation type="unfinished">%1 ouverte au pont %2 (%3)</translation>
    </message>
    <message>
        <source>%1 open at decks %2 (%3)</source>
        <translation type="unfinished">%1 ouverte aux ponts %2 (%3)</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">porte %1</translation>
    </message>
    <message>
        <source>doors %1</source>
        <translation type="unfinished">portes %1</translation>
    </message>
    <message>
        <source>; area %1, limit %2</source>
        <translation type="unfinished">; surface %1, limite %2</translation>
    </message>
    <message>
        <source>repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">réparer la porte %1 dans la cloison %2 rétablit le plus de séparation</translation>
    </message>
    <message>
        <source>repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">réparer les portes %1 dans la cloison %2 rétablit le plus de séparation</translation>
    </message>
    <message>
        <source>not yet proven: bulkhead %1</source>
        <translation type="unfinished">pas encore prouvée&#xa0;: cloison %1</translation>
    </message>
    <message>
        <source>not yet proven: bulkheads %1</source>
        <translation type="unfinished">pas encore prouvées&#xa0;: cloisons %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">cloison %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, longue de %3</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">cloisons %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, longue de %3</translation>
    </message>
    <message>
        <source>; limit %1, %2 maximum</source>
        <translation type="unfinished">; limite %1, maximum %2</translation>
    </message>
    <message>
        <source>; %1 maximum</source>
        <translation type="unfinished">; maximum %1</translation>
    </message>
    <message>
        <source>; limit %1 in cabin areas</source>
        <translation type="unfinished">; limite %1 dans les zones de cabines</translation>
    </message>
    <message>
        <source>; limit %1</source>
        <translation type="unfinished">; limite %1</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Course dégagée des deux côtés</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">Course dégagée, des deux côtés&#xa0;?</translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished">Logement du vantail libre de saleté, de détritus et de matériel entreposé</translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished">Logement sans saleté ni détritus&#xa0;?</translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">Sans cale, corde ni meuble&#xa0;?</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped</source>
        <translation type="unfinished">Charnières serrées, vantail non affaissé</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped?</source>
        <translation type="unfinished">Charnières serrées, vantail non affaissé&#xa0;?</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">Ferme-porte sec, bras raccordé&#xa0;?</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">Rails, galets et guides propres&#xa0;?</translation>
    </message>
    <message>
        <source>Both faces, edges, frame and glass. Bad: drilled holes, cables, signs screwed on, rust, loose insulation, a crack.</source>
        <translation type="unfinished">Les deux faces, les bords, le cadre et la vitre. Mauvais&#xa0;: trous percés, câbles, panneaux vissés, rouille, isolation décollée, fissure.</translation>
    </message>
    <message>
        <source>Moves smoothly over its whole travel</source>
        <translation type="unfinished">Se déplace sans à-coups sur toute sa course</translation>
    </message>
    <message>
        <source>Smooth over its whole travel?</source>
        <translation type="unfinished">Sans à-coups sur toute sa course&#xa0;?</translation>
    </message>
    <message>
        <source>Latches fully, unaided, and stays latched when pushed</source>
        <translation type="unfinished">S&apos;enclenche à fond, sans aide, et reste enclenchée quand on la pousse</translation>
    </message>
    <message>
        <source>Latches unaided, stays latched when pushed?</source>
        <translation type="unfinished">S&apos;enclenche seule et tient à la poussée&#xa0;?</translation>
    </message>
    <message>
        <source>Safety edge stops the leaf and lets it re-open</source>
        <translation type="unfinished">Le bord sensible arrête le vantail et le fait se rouvrir</translation>
    </message>
    <message>
        <source>Does the safety edge stop and re-open it?</source>
        <translation type="unfinished">Le bord sensible l&apos;arrête-t-il et le rouvre-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>One person can open and close it, from each side</source>
        <translation type="unfinished">Une seule personne peut l&apos;ouvrir et la fermer, de chaque côté</translation>
    </message>
    <message>
        <source>Can one person open and close it?</source>
        <translation type="unfinished">Une personne peut-elle l&apos;ouvrir et la fermer&#xa0;?</translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished">Se ferme-t-elle d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">Une porte à charnières se ferme 10 à 40 s après son premier mouvement, navire droit</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">Une porte à glissières se ferme à une vitesse à peu près uniforme de 0,1 à 0,2 m/s, navire droit</translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished">Peut être déclenchée depuis le poste de sécurité central gardé en permanence</translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished">Le poste de sécurité la déclenche-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Can be released at the door, from both sides</source>
        <translation type="unfinished">Peut être déclenchée à la porte, des deux côtés</translation>
    </message>
    <message>
        <source>Does the switch on this side release it?</source>
        <translation type="unfinished">L&apos;interrupteur de ce côté la déclenche-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished">Aucun crochet de retenue que le poste de sécurité ne puisse déclencher</translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished">Sans crochet que le poste de sécurité ne peut déclencher&#xa0;?</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">S&apos;ouvre de ce côté après fermeture à distance, puis se ferme d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">Le tableau du poste de sécurité indique si elle est fermée</translation>
    </message>
    <message>
        <source>Closes by itself when the control system or central power fails</source>
        <translation type="unfinished">Se ferme d&apos;elle-même en cas de défaillance de la commande ou de l&apos;alimentation centrale</translation>
    </message>
    <message>
        <source>Closes by itself when its control or power fails?</source>
        <translation type="unfinished">Se ferme d&apos;elle-même si sa commande ou son alimentation fait défaut&#xa0;?</translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">Dix cycles complets sur l&apos;accumulateur local&#xa0;?</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">Une défaillance à une porte laisse fonctionner les autres</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">L&apos;alarme sonne jusqu&apos;à la fermeture complète de la porte</translation>
    </message>
    <message>
        <source>On contact it re-opens no more than 1 m from the point of contact</source>
        <translation type="unfinished">Au contact, elle ne se rouvre pas de plus de 1 m à partir du point de contact</translation>
    </message>
    <message>
        <source>How far it re-opens from the point of contact</source>
        <translation type="unfinished">De combien elle se rouvre à partir du point de contact</translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">Le loquet s&apos;enclenche-t-il seul après le déclenchement&#xa0;?</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">La commande locale est-elle accessible&#xa0;?</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 12 mm</source>
        <translation type="unfinished">La fente sous une porte approuvée sans seuil dans son cadre ne dépasse pas 12 mm</translation>
    </message>
    <message>
        <source>Gap under the shut door</source>
        <translation type="unfinished">Fente sous la porte fermée</translation>
    </message>
    <message>
        <source>Non-combustible sill; floor covering does not run under the closed door</source>
        <translation type="unfinished">Seuil incombustible&#xa0;; le revêtement de sol ne passe pas sous la porte fermée</translation>
    </message>
    <message>
        <source>Sill non-combustible, floor covering stops at it?</source>
        <translation type="unfinished">Seuil incombustible, le revêtement s&apos;y arrête&#xa0;?</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">La fente sous une porte approuvée sans seuil dans son cadre ne dépasse pas 25 mm</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Ouverture d&apos;aération dans ou sous la porte, nette</translation>
    </message>
    <message>
        <source>Cabin door closes by itself and has no hold-back hook</source>
        <translation type="unfinished">La porte de cabine se ferme d&apos;elle-même et n&apos;a pas de crochet de retenue</translation>
    </message>
    <message>
        <source>Closes by itself, no hook?</source>
        <translation type="unfinished">Se ferme seule, sans crochet&#xa0;?</translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Se ferme d&apos;elle-même contre une gîte de 3,5 degrés</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Ouvrez un seul vantail et lâchez-le&#xa0;; puis l&apos;autre. Bon&#xa0;: chacun se ferme et s&apos;enclenche seul. Mauvais&#xa0;: l&apos;un a besoin de l&apos;autre, ou ne s&apos;enclenche pas.</translation>
    </message>
    <message>
        <source>No vent grille or louver in an A-class door</source>
        <translation type="unfinished">Ni grille d&apos;aération ni persienne dans une porte du type A</translation>
    </message>
    <message>
        <source>Free of grilles and louvers?</source>
        <translation type="unfinished">Sans grille ni persienne&#xa0;?</translation>
    </message>
    <message>
        <source>One leaf at most 1200 mm wide</source>
        <translation type="unfinished">Un vantail d&apos;au plus 1200 mm de large</translation>
    </message>
    <message>
        <source>One leaf, from the hinge side to the free edge. 48 inches.</source>
        <translation type="unfinished">Un vantail, du côté charnières au bord libre. 48 pouces.</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Une porte dans un pont, réservée à l&apos;équipage, se ferme en 5 à 10 s</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Force pour libérer le loquet d&apos;une porte dans un pont&#xa0;: au plus 17,8 N</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Force pour mettre en mouvement une porte dans un pont&#xa0;: au plus 44,5 N</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Loquet libéré&#xa0;: accrochez un peson au bord libre et tirez jusqu&apos;à l&apos;instant où la porte commence à bouger. La force maximale compte.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Force pour ouvrir une porte dans un pont à la largeur de l&apos;escalier&#xa0;: au plus 17,8 N</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">Le système de déclenchement est-il approuvé selon SOLAS 74 II-2/30.4.3&#xa0;?</translation>
    </message>
    <message>
        <source>Control stations</source>
        <translation type="unfinished">Postes de sécurité</translation>
    </message>
    <message>
        <source>room with emergency power or lighting source</source>
        <translation type="unfinished">local contenant une source d&apos;énergie ou d&apos;éclairage de secours</translation>
    </message>
    <message>
        <source>bridge and chart room</source>
        <translation type="unfinished">passerelle et chambre des cartes</translation>
    </message>
    <message>
        <source>radio room</source>
        <translation type="unfinished">local radio</translation>
    </message>
    <message>
        <source>fire control room</source>
        <translation type="unfinished">local de contrôle de l&apos;incendie</translation>
    </message>
    <message>
        <source>propulsion control room outside the engine room</source>
        <translation type="unfinished">poste de commande de la propulsion hors de la salle des machines</translation>
    </message>
    <message>
        <source>central fire-alarm panel room</source>
        <translation type="unfinished">local du tableau central d&apos;alarme incendie</translation>
    </message>
    <message>
        <source>central emergency public-address station</source>
        <translation type="unfinished">poste central de diffusion générale de secours</translation>
    </message>
    <message>
        <source>Stairways</source>
        <translation type="unfinished">Escaliers</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks for passengers or crew, with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">escaliers intérieurs, ascenseurs, escaliers mécaniques et puits d&apos;échappée entièrement fermés pour passagers ou équipage, avec leurs entourages (sauf ceux entièrement à l&apos;intérieur de locaux de machines)</translation>
    </message>
    <message>
        <source>Corridors</source>
        <translation type="unfinished">Coursives</translation>
    </message>
    <message>
        <source>passenger and crew corridors</source>
        <translation type="unfinished">coursives des passagers et de l&apos;équipage</translation>
    </message>
    <message>
        <source>lobbies</source>
        <translation type="unfinished">vestibules</translation>
    </message>
    <message>
        <source>Evacuation stations and external escape routes</source>
        <translation type="unfinished">Postes d&apos;évacuation et échappées extérieures</translation>
    </message>
    <message>
        <source>survival-craft stowage</source>
        <translation type="unfinished">zones d&apos;arrimage des embarcations et radeaux de sauvetage</translation>
    </message>
    <message>
        <source>open deck or enclosed promenade used for boat/raft boarding and lowering</source>
        <translation type="unfinished">pont découvert ou promenade fermée servant à l&apos;embarquement et à la mise à l&apos;eau des embarcations ou radeaux</translation>
    </message>
    <message>
        <source>assembly stations, indoor and outdoor</source>
        <translation type="unfinished">postes de rassemblement, intérieurs et extérieurs</translation>
    </message>
    <message>
        <source>outside stairs and open decks that are escape routes</source>
        <translation type="unfinished">escaliers extérieurs et ponts découverts servant d&apos;échappées</translation>
    </message>
    <message>
        <source>ship&apos;s side down to the lightest waterline, and house sides, below or beside raft and slide boarding areas</source>
        <translation type="unfinished">muraille du navire jusqu&apos;à la flottaison la moins élevée, et parois des roufs, au-dessous ou à côté des zones d&apos;embarquement dans les radeaux et toboggans</translation>
    </message>
    <message>
        <source>Open deck spaces</source>
        <translation type="unfinished">Espaces de pont découvert</translation>
    </message>
    <message>
        <source>open deck and promenades away from boat/raft boarding places (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">pont découvert et promenades à l&apos;écart des lieux d&apos;embarquement dans les embarcations ou radeaux (mobilier de pont seul, ouverts en permanence à l&apos;air)</translation>
    </message>
    <message>
        <source>the open air outside superstructures and deckhouses</source>
        <translation type="unfinished">l&apos;air libre hors des superstructures et des roufs</translation>
    </message>
    <message>
        <source>Accommodation spaces of minor fire risk</source>
        <translation type="unfinished">Locaux d&apos;habitation présentant un risque minime d&apos;incendie</translation>
    </message>
    <message>
        <source>cabins, offices and dispensaries with restricted-fire-risk furnishings</source>
        <translation type="unfinished">cabines, bureaux et infirmeries à mobilier présentant un risque limité d&apos;incendie</translation>
    </message>
    <message>
        <source>Accommodation spaces of moderate fire risk</source>
        <translation type="unfinished">Locaux d&apos;habitation présentant un risque modéré d&apos;incendie</translation>
    </message>
    <message>
        <source>category 6 rooms with ordinary furnishings</source>
        <translation type="unfinished">locaux de catégorie 6 à mobilier ordinaire</translation>
    </message>
    <message>
        <source>projection and film rooms</source>
        <translation type="unfinished">cabines de projection et locaux à films</translation>
    </message>
    <message>
        <source>diet kitchen without open flame</source>
        <translation type="unfinished">cuisine diététique sans flamme nue</translation>
    </message>
    <message>
        <source>cleaning-gear locker, laboratory (no flammable liquids)</source>
        <translation type="unfinished">placard à matériel de nettoyage, laboratoire (sans liquides inflammables)</translation>
    </message>
    <message>
        <source>pharmacy</source>
        <translation type="unfinished">pharmacie</translation>
    </message>
    <message>
        <source>specie room</source>
        <translation type="unfinished">local des valeurs</translation>
    </message>
    <message>
        <source>operating room</source>
        <translation type="unfinished">salle d&apos;opération</translation>
    </message>
    <message>
        <source>Accommodation spaces of greater fire risk</source>
        <translation type="unfinished">Locaux d&apos;habitation présentant un risque assez élevé d&apos;incendie</translation>
    </message>
    <message>
        <source>barber shop, beauty parlour</source>
        <translation type="unfinished">salon de coiffure, institut de beauté</translation>
    </message>
    <message>
        <source>sauna</source>
        <translation type="unfinished">sauna</translation>
    </message>
    <message>
        <source>sale shop</source>
        <translation type="unfinished">boutique</translation>
    </message>
    <message>
        <source>Sanitary and similar spaces</source>
        <translation type="unfinished">Locaux sanitaires et locaux analogues</translation>
    </message>
    <message>
        <source>shared toilets, showers, baths</source>
        <translation type="unfinished">toilettes, douches, bains communs</translation>
    </message>
    <message>
        <source>small laundry</source>
        <translation type="unfinished">petite buanderie</translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation type="unfinished">piscine couverte</translation>
    </message>
    <message>
        <source>isolated pantry without cooking appliances</source>
        <translation type="unfinished">office isolé sans appareil de cuisson</translation>
    </message>
    <message>
        <source>(private bathrooms count as part of the room they serve)</source>
        <translation type="unfinished">(les salles de bains privées comptent comme partie du local desservi)</translation>
    </message>
    <message>
        <source>Tanks, voids and auxiliary machinery spaces having little or no fire risk</source>
        <translation type="unfinished">Citernes, espaces vides et locaux de machines auxiliaires présentant un risque faible ou nul d&apos;incendie</translation>
    </message>
    <message>
        <source>structural water tanks</source>
        <translation type="unfinished">citernes à eau faisant partie de la structure</translation>
    </message>
    <message>
        <source>voids, cofferdams</source>
        <translation type="unfinished">espaces vides, cofferdams</translation>
    </message>
    <message>
        <source>auxiliary rooms with no pressure-lubricated machinery and no combustible storage: fan and air-conditioning rooms, windlass, steering gear, stabiliser, electric propulsion motor, section switchboards (no oil-filled transformer above 10 kVA)</source>
        <translation type="unfinished">locaux d&apos;auxiliaires sans machines à graissage sous pression ni stockage combustible&#xa0;: locaux de ventilation et de climatisation, guindeau, appareil à gouverner, stabilisateurs, moteur électrique de propulsion, tableaux divisionnaires (sans transformateur à huile de plus de 10 kVA)</translation>
    </message>
    <message>
        <source>shaft alleys, pipe tunnels, non-flammable pump and refrigeration rooms</source>
        <translation type="unfinished">tunnels d&apos;arbres, tunnels de tuyautages, locaux de pompes et de réfrigération ininflammables</translation>
    </message>
    <message>
        <source>closed trunks serving these; pipe and cable trunks</source>
        <translation type="unfinished">conduits fermés les desservant&#xa0;; conduits de tuyautages et de câbles</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, cargo spaces, cargo and other oil tanks and similar spaces of moderate fire risk</source>
        <translation type="unfinished">Locaux de machines auxiliaires, espaces à cargaison, citernes à cargaison et autres citernes à hydrocarbures et locaux analogues présentant un risque modéré d&apos;incendie</translation>
    </message>
    <message>
        <source>cargo oil tanks</source>
        <translation type="unfinished">citernes à cargaison d&apos;hydrocarbures</translation>
    </message>
    <message>
        <source>holds, trunkways, hatchways</source>
        <translation type="unfinished">cales, puits d&apos;écoutilles, écoutilles</translation>
    </message>
    <message>
        <source>refrigerated chambers</source>
        <translation type="unfinished">chambres réfrigérées</translation>
    </message>
    <message>
        <source>oil fuel tanks in their own space without machinery</source>
        <translation type="unfinished">soutes à combustible dans leur propre local sans machines</translation>
    </message>
    <message>
        <source>shaft alleys or pipe tunnels where combustibles may be kept</source>
        <translation type="unfinished">tunnels d&apos;arbres ou de tuyautages où l&apos;on peut garder des combustibles</translation>
    </message>
    <message>
        <source>category 10 type rooms with pressure-lubricated machinery or combustible storage</source>
        <translation type="unfinished">locaux du genre de la catégorie 10 avec machines à graissage sous pression ou stockage combustible</translation>
    </message>
    <message>
        <source>oil filling stations</source>
        <translation type="unfinished">postes de mazoutage</translation>
    </message>
    <message>
        <source>oil-filled transformers above 10 kVA</source>
        <translation type="unfinished">transformateurs à huile de plus de 10 kVA</translation>
    </message>
    <message>
        <source>turbine/steam auxiliary generators and engines up to 110 kW driving generators, sprinkler, fire or bilge pumps</source>
        <translation type="unfinished">génératrices auxiliaires à turbine ou à vapeur et moteurs jusqu&apos;à 110 kW entraînant des génératrices, des pompes d&apos;extinction par eau diffusée, d&apos;incendie ou d&apos;assèchement</translation>
    </message>
    <message>
        <source>closed trunks serving these</source>
        <translation type="unfinished">conduits fermés les desservant</translation>
    </message>
    <message>
        <source>Machinery spaces and main galleys</source>
        <translation type="unfinished">Locaux de machines et cuisines principales</translation>
    </message>
    <message>
        <source>main engine and boiler rooms (not electric propulsion motor rooms)</source>
        <translation type="unfinished">salles des machines principales et des chaudières (sauf locaux de moteurs électriques de propulsion)</translation>
    </message>
    <message>
        <source>other auxiliary rooms with engines or oil-burning, heating or pumping units</source>
        <translation type="unfinished">autres locaux d&apos;auxiliaires avec moteurs ou groupes de combustion, de réchauffage ou de pompage d&apos;hydrocarbures</translation>
    </message>
    <message>
        <source>main galleys and annexes</source>
        <translation type="unfinished">cuisines principales et annexes</translation>
    </message>
    <message>
        <source>their trunks and casings</source>
        <translation type="unfinished">leurs conduits et encaissements</translation>
    </message>
    <message>
        <source>Store-rooms, workshops, pantries, etc.</source>
        <translation type="unfinished">Magasins, ateliers, offices, etc.</translation>
    </message>
    <message>
        <source>main pantry not annexed to a galley</source>
        <translation type="unfinished">office principal non annexé à une cuisine</translation>
    </message>
    <message>
        <source>main laundry</source>
        <translation type="unfinished">buanderie principale</translation>
    </message>
    <message>
        <source>miscellaneous stores</source>
        <translation type="unfinished">magasins divers</translation>
    </message>
    <message>
        <source>mail and baggage rooms</source>
        <translation type="unfinished">soutes à courrier et à bagages</translation>
    </message>
    <message>
        <source>garbage rooms</source>
        <translation type="unfinished">locaux à ordures</translation>
    </message>
    <message>
        <source>workshops outside machinery spaces and galleys</source>
        <translation type="unfinished">ateliers hors des locaux de machines et des cuisines</translation>
    </message>
    <message>
        <source>Other spaces in which flammable liquids are stowed</source>
        <translation type="unfinished">Autres locaux où sont arrimés des liquides inflammables</translation>
    </message>
    <message>
        <source>paint locker</source>
        <translation type="unfinished">magasin à peinture</translation>
    </message>
    <message>
        <source>stores with flammable liquids (dyes, medicines, ...)</source>
        <translation type="unfinished">magasins de liquides inflammables (teintures, médicaments, ...)</translation>
    </message>
    <message>
        <source>laboratories where flammable liquids are kept</source>
        <translation type="unfinished">laboratoires où l&apos;on garde des liquides inflammables</translation>
    </message>
    <message>
        <source>propulsion control room outside the machinery space</source>
        <translation type="unfinished">poste de commande de la propulsion hors du local de machines</translation>
    </message>
    <message>
        <source>passenger and crew corridors and lobbies</source>
        <translation type="unfinished">coursives et vestibules des passagers et de l&apos;équipage</translation>
    </message>
    <message>
        <source>Accommodation spaces</source>
        <translation type="unfinished">Locaux d&apos;habitation</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">escaliers intérieurs, ascenseurs, escaliers mécaniques et puits d&apos;échappée entièrement fermés avec leurs entourages (sauf ceux entièrement à l&apos;intérieur de locaux de machines)</translation>
    </message>
    <message>
        <source>Service spaces (low risk)</source>
        <translation type="unfinished">Locaux de service (risque faible)</translation>
    </message>
    <message>
        <source>drying rooms</source>
        <translation type="unfinished">séchoirs</translation>
    </message>
    <message>
        <source>laundries</source>
        <translation type="unfinished">buanderies</translation>
    </message>
    <message>
        <source>Machinery spaces of category A</source>
        <translation type="unfinished">Locaux de machines de la catégorie A</translation>
    </message>
    <message>
        <source>spaces with main propulsion combustion engines</source>
        <translation type="unfinished">locaux contenant des moteurs à combustion de propulsion principale</translation>
    </message>
    <message>
        <source>other combustion engines totalling 375 kW or more</source>
        <translation type="unfinished">autres moteurs à combustion totalisant 375 kW ou plus</translation>
    </message>
    <message>
        <source>oil-fired boilers, oil fuel units, inert gas generators, incinerators and other oil-fired plant</source>
        <translation type="unfinished">chaudières à combustible liquide, groupes de traitement du combustible, générateurs de gaz inerte, incinérateurs et autres installations à combustible liquide</translation>
    </message>
    <message>
        <source>trunks to these (reg. 3.31)</source>
        <translation type="unfinished">conduits y aboutissant (règle 3.31)</translation>
    </message>
    <message>
        <source>Other machinery spaces</source>
        <translation type="unfinished">Autres locaux de machines</translation>
    </message>
    <message>
        <source>electrical rooms (telephone exchange, air-conditioning duct spaces)</source>
        <translation type="unfinished">locaux électriques (central téléphonique, locaux de gaines de climatisation)</translation>
    </message>
    <message>
        <source>machinery spaces of reg. 3.30 that are not category A</source>
        <translation type="unfinished">locaux de machines de la règle 3.30 qui ne sont pas de la catégorie A</translation>
    </message>
    <message>
        <source>Cargo spaces</source>
        <translation type="unfinished">Espaces à cargaison</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways (special category spaces are category 11)</source>
        <translation type="unfinished">tous les espaces à cargaison, y compris les citernes à cargaison d&apos;hydrocarbures, avec leurs puits et écoutilles (les locaux de catégorie spéciale sont de la catégorie 11)</translation>
    </message>
    <message>
        <source>Service spaces (high risk)</source>
        <translation type="unfinished">Locaux de service (risque élevé)</translation>
    </message>
    <message>
        <source>galleys, pantries with cooking appliances</source>
        <translation type="unfinished">cuisines, offices avec appareils de cuisson</translation>
    </message>
    <message>
        <source>paint rooms/lockers, lamp rooms</source>
        <translation type="unfinished">magasins à peinture, lampisteries</translation>
    </message>
    <message>
        <source>saunas</source>
        <translation type="unfinished">saunas</translation>
    </message>
    <message>
        <source>flammable-liquid stores</source>
        <translation type="unfinished">magasins de liquides inflammables</translation>
    </message>
    <message>
        <source>workshops outside the machinery spaces</source>
        <translation type="unfinished">ateliers hors des locaux de machines</translation>
    </message>
    <message>
        <source>Open decks</source>
        <translation type="unfinished">Ponts découverts</translation>
    </message>
    <message>
        <source>open deck and promenades with little or no fire risk (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">pont découvert et promenades présentant un risque faible ou nul d&apos;incendie (mobilier de pont seul, ouverts en permanence à l&apos;air)</translation>
    </message>
    <message>
        <source>Special category and ro-ro spaces</source>
        <translation type="unfinished">Locaux de catégorie spéciale et espaces rouliers</translation>
    </message>
    <message>
        <source>vehicle decks passengers can enter (reg. 3.46)</source>
        <translation type="unfinished">ponts à véhicules accessibles aux passagers (règle 3.46)</translation>
    </message>
    <message>
        <source>ro-ro spaces (reg. 3.41)</source>
        <translation type="unfinished">espaces rouliers (règle 3.41)</translation>
    </message>
    <message>
        <source>corridors and lobbies</source>
        <translation type="unfinished">coursives et vestibules</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways</source>
        <translation type="unfinished">tous les espaces à cargaison, y compris les citernes à cargaison d&apos;hydrocarbures, avec leurs puits et écoutilles</translation>
    </message>
    <message>
        <source>paint rooms/lockers</source>
        <translation type="unfinished">magasins à peinture</translation>
    </message>
    <message>
        <source>Ro-ro and vehicle spaces</source>
        <translation type="unfinished">Espaces rouliers et locaux à véhicules</translation>
    </message>
    <message>
        <source>vehicle spaces (reg. 3.49)</source>
        <translation type="unfinished">locaux à véhicules (règle 3.49)</translation>
    </message>
    <message>
        <source>Cargo pump-rooms</source>
        <translation type="unfinished">Chambres des pompes à cargaison</translation>
    </message>
    <message>
        <source>rooms with cargo pumps</source>
        <translation type="unfinished">locaux contenant des pompes à cargaison</translation>
    </message>
    <message>
        <source>their entrances and trunks</source>
        <translation type="unfinished">leurs entrées et conduits</translation>
    </message>
    <message>
        <source>Control space</source>
        <translation type="unfinished">Local de commande</translation>
    </message>
    <message>
        <source>emergency power source (generators excluded)</source>
        <translation type="unfinished">source d&apos;énergie de secours (génératrices exclues)</translation>
    </message>
    <message>
        <source>normally manned navigation and radio equipment</source>
        <translation type="unfinished">équipement de navigation et de radio normalement veillé</translation>
    </message>
    <message>
        <source>central fire control or detection gear</source>
        <translation type="unfinished">équipement central de lutte ou de détection incendie</translation>
    </message>
    <message>
        <source>machinery controls outside a machinery space</source>
        <translation type="unfinished">commandes de machines hors d&apos;un local de machines</translation>
    </message>
    <message>
        <source>Stairway</source>
        <translation type="unfinished">Escalier</translation>
    </message>
    <message>
        <source>stairway or stairtower</source>
        <translation type="unfinished">escalier ou tour d&apos;escalier</translation>
    </message>
    <message>
        <source>Corridor</source>
        <translation type="unfinished">Coursive</translation>
    </message>
    <message>
        <source>corridor / passageway</source>
        <translation type="unfinished">coursive / passage</translation>
    </message>
    <message>
        <source>Embarkation station</source>
        <translation type="unfinished">Poste d&apos;embarquement</translation>
    </message>
    <message>
        <source>place where survival craft are boarded</source>
        <translation type="unfinished">lieu d&apos;embarquement dans les embarcations et radeaux de sauvetage</translation>
    </message>
    <message>
        <source>embarkation deck</source>
        <translation type="unfinished">pont d&apos;embarquement</translation>
    </message>
    <message>
        <source>Low risk accommodation</source>
        <translation type="unfinished">Habitation à faible risque</translation>
    </message>
    <message>
        <source>Low risk service spaces</source>
        <translation type="unfinished">Locaux de service à faible risque</translation>
    </message>
    <message>
        <source>washrooms and toilets</source>
        <translation type="unfinished">lavabos et toilettes</translation>
    </message>
    <message>
        <source>small laundry or drying room</source>
        <translation type="unfinished">petite buanderie ou petit séchoir</translation>
    </message>
    <message>
        <source>cleaning-gear locker with slop sink only</source>
        <translation type="unfinished">placard à matériel de nettoyage avec vidoir seulement</translation>
    </message>
    <message>
        <source>workshop outside machinery spaces</source>
        <translation type="unfinished">atelier hors des locaux de machines</translation>
    </message>
    <message>
        <source>projection room</source>
        <translation type="unfinished">cabine de projection</translation>
    </message>
    <message>
        <source>High risk service spaces</source>
        <translation type="unfinished">Locaux de service à risque élevé</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">cuisine</translation>
    </message>
    <message>
        <source>cleaning-gear locker or small storeroom in an accommodation area</source>
        <translation type="unfinished">placard à matériel de nettoyage ou petit magasin dans une zone d&apos;habitation</translation>
    </message>
    <message>
        <source>large laundry or drying room</source>
        <translation type="unfinished">grande buanderie ou grand séchoir</translation>
    </message>
    <message>
        <source>garbage store</source>
        <translation type="unfinished">local à ordures</translation>
    </message>
    <message>
        <source>paint or lamp locker</source>
        <translation type="unfinished">magasin à peinture ou lampisterie</translation>
    </message>
    <message>
        <source>mail or baggage room</source>
        <translation type="unfinished">soute à courrier ou à bagages</translation>
    </message>
    <message>
        <source>Machinery spaces</source>
        <translation type="unfinished">Locaux de machines</translation>
    </message>
    <message>
        <source>propulsion, steam or combustion machinery</source>
        <translation type="unfinished">machines de propulsion, à vapeur ou à combustion</translation>
    </message>
    <message>
        <source>oil transfer gear</source>
        <translation type="unfinished">appareils de transfert d&apos;hydrocarbures</translation>
    </message>
    <message>
        <source>motors above 10 hp</source>
        <translation type="unfinished">moteurs de plus de 10 hp</translation>
    </message>
    <message>
        <source>oil-fired boilers or heaters</source>
        <translation type="unfinished">chaudières ou réchauffeurs à combustible liquide</translation>
    </message>
    <message>
        <source>generators</source>
        <translation type="unfinished">génératrices</translation>
    </message>
    <message>
        <source>their trunks</source>
        <translation type="unfinished">leurs conduits</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo spaces, their trunks</source>
        <translation type="unfinished">cales, espaces à cargaison réfrigérés, leurs conduits</translation>
    </message>
    <message>
        <source>vehicle spaces</source>
        <translation type="unfinished">locaux à véhicules</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, voids, fuel and water tanks</source>
        <translation type="unfinished">Locaux de machines auxiliaires, espaces vides, citernes à combustible et à eau</translation>
    </message>
    <message>
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished">Ponts découverts (hors zones de sécurité)</translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished">pont ouvert en permanence sur un ou plusieurs côtés, sans endroit couvert à 4,5 m ou plus de l&apos;ouverture</translation>
    </message>
    <message>
        <source>emergency power source</source>
        <translation type="unfinished">source d&apos;énergie de secours</translation>
    </message>
    <message>
        <source>continuously watched navigation, radio or fire-control rooms</source>
        <translation type="unfinished">locaux de navigation, de radio ou de lutte incendie à veille permanente</translation>
    </message>
    <message>
        <source>Stairway and elevator enclosures</source>
        <translation type="unfinished">Entourages d&apos;escaliers et d&apos;ascenseurs</translation>
    </message>
    <message>
        <source>passenger and crew stairs and lifts</source>
        <translation type="unfinished">escaliers et ascenseurs des passagers et de l&apos;équipage</translation>
    </message>
    <message>
        <source>passenger and crew corridors (over 8 ft wide counts as a public space)</source>
        <translation type="unfinished">coursives des passagers et de l&apos;équipage (au-delà de 8 ft de large, compte comme local de réunion)</translation>
    </message>
    <message>
        <source>Lifeboat embarkation or lowering stations</source>
        <translation type="unfinished">Postes d&apos;embarquement ou de mise à l&apos;eau des embarcations de sauvetage</translation>
    </message>
    <message>
        <source>open deck and promenades in way of boat boarding/lowering</source>
        <translation type="unfinished">pont découvert et promenades au droit de l&apos;embarquement ou de la mise à l&apos;eau</translation>
    </message>
    <message>
        <source>Staterooms and public spaces with incombustible veneers and trim and fire-resistant furnishings</source>
        <translation type="unfinished">Cabines et locaux de réunion à placages et garnitures incombustibles et mobilier résistant au feu</translation>
    </message>
    <message>
        <source>staterooms, offices, public rooms so fitted</source>
        <translation type="unfinished">cabines, bureaux, locaux de réunion ainsi aménagés</translation>
    </message>
    <message>
        <source>Staterooms, and public spaces of 500 sq ft or less, with combustible furnishings; isolated storerooms</source>
        <translation type="unfinished">Cabines, et locaux de réunion de 500 sq ft ou moins, à mobilier combustible&#xa0;; magasins isolés</translation>
    </message>
    <message>
        <source>ordinary staterooms</source>
        <translation type="unfinished">cabines ordinaires</translation>
    </message>
    <message>
        <source>small sales rooms</source>
        <translation type="unfinished">petites boutiques</translation>
    </message>
    <message>
        <source>isolated lockers</source>
        <translation type="unfinished">placards isolés</translation>
    </message>
    <message>
        <source>Public spaces over 500 sq ft with combustible furnishings</source>
        <translation type="unfinished">Locaux de réunion de plus de 500 sq ft à mobilier combustible</translation>
    </message>
    <message>
        <source>large lounges, dining rooms, sales rooms</source>
        <translation type="unfinished">grands salons, salles à manger, boutiques</translation>
    </message>
    <message>
        <source>Washrooms, toilets and isolated pantries with incombustible fittings</source>
        <translation type="unfinished">Lavabos, toilettes et offices isolés à aménagements incombustibles</translation>
    </message>
    <message>
        <source>washrooms</source>
        <translation type="unfinished">lavabos</translation>
    </message>
    <message>
        <source>operating rooms</source>
        <translation type="unfinished">salles d&apos;opération</translation>
    </message>
    <message>
        <source>small laundries</source>
        <translation type="unfinished">petites buanderies</translation>
    </message>
    <message>
        <source>slop-sink lockers</source>
        <translation type="unfinished">placards à vidoir</translation>
    </message>
    <message>
        <source>Galleys, main pantries, storerooms and workshops</source>
        <translation type="unfinished">Cuisines, offices principaux, magasins et ateliers</translation>
    </message>
    <message>
        <source>galleys</source>
        <translation type="unfinished">cuisines</translation>
    </message>
    <message>
        <source>workshops, large laundries, mail and baggage rooms</source>
        <translation type="unfinished">ateliers, grandes buanderies, soutes à courrier et à bagages</translation>
    </message>
    <message>
        <source>paint and lamp rooms</source>
        <translation type="unfinished">magasins à peinture et lampisteries</translation>
    </message>
    <message>
        <source>main machinery</source>
        <translation type="unfinished">machines principales</translation>
    </message>
    <message>
        <source>auxiliary rooms with engines or oil units</source>
        <translation type="unfinished">locaux d&apos;auxiliaires avec moteurs ou groupes à hydrocarbures</translation>
    </message>
    <message>
        <source>fuel filling stations</source>
        <translation type="unfinished">postes de mazoutage</translation>
    </message>
    <message>
        <source>Dry cargo spaces</source>
        <translation type="unfinished">Espaces à cargaison sèche</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo, trunks</source>
        <translation type="unfinished">cales, cargaison réfrigérée, conduits</translation>
    </message>
    <message>
        <source>Fuel and water tanks and voids</source>
        <translation type="unfinished">Citernes à combustible et à eau et espaces vides</translation>
    </message>
    <message>
        <source>tanks, voids</source>
        <translation type="unfinished">citernes, espaces vides</translation>
    </message>
    <message>
        <source>auxiliary rooms with pumps, fans, steering gear and no combustible storage</source>
        <translation type="unfinished">locaux d&apos;auxiliaires avec pompes, ventilateurs, appareil à gouverner et sans stockage combustible</translation>
    </message>
    <message>
        <source>cargo oil tanks not also used for dry cargo</source>
        <translation type="unfinished">citernes à cargaison d&apos;hydrocarbures ne servant pas aussi à la cargaison sèche</translation>
    </message>
    <message>
        <source>Open decks and enclosed promenades (not safety areas)</source>
        <translation type="unfinished">Ponts découverts et promenades fermées (hors zones de sécurité)</translation>
    </message>
    <message>
        <source>open deck away from boat stations</source>
        <translation type="unfinished">pont découvert à l&apos;écart des postes d&apos;embarcations</translation>
    </message>
    <message>
        <source>Exam: the whole practice vessel</source>
        <translation type="unfinished">Examen&#xa0;: tout le navire d&apos;entraînement</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Premiers pas&#xa0;: chronométrer une fermeture</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Premiers pas&#xa0;: regarder avant que ça bouge</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Portes à glissières et leur alarme</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Maintenues ouvertes dans un escalier</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Deux vantaux, et portes va-et-vient</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Muraille du navire jusqu&apos;à la flottaison la moins élevée, et parois des superstructures et roufs, au-dessous ou à côté des radeaux et toboggans d&apos;évacuation&#xa0;: A-30 suffit.</translation>
    </message>
    <message>
        <source>Category 6, 7, 8 and 9 rooms wholly inside the outer boundary of an assembly station: their bulkheads may be B-0. Audio, video and lighting control positions may count as part of the assembly station.</source>
        <translation type="unfinished">Locaux des catégories 6, 7, 8 et 9 entièrement à l&apos;intérieur du périmètre d&apos;un poste de rassemblement&#xa0;: leurs cloisons peuvent être B-0. Les postes de commande audio, vidéo et d&apos;éclairage peuvent compter comme partie du poste de rassemblement.</translation>
    </message>
    <message>
        <source>No special requirement for material or integrity.</source>
        <translation type="unfinished">Aucune exigence particulière de matériau ou d&apos;intégrité.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.2.2 (bulkheads inside a main vertical zone) and 2.2.5 (stairway and lift enclosures).</source>
        <translation type="unfinished">Laquelle des deux valeurs s&apos;applique découle de 2.2.2 (cloisons à l&apos;intérieur d&apos;une tranche verticale principale) et de 2.2.5 (entourages d&apos;escaliers et d&apos;ascenseurs).</translation>
    </message>
    <message>
        <source>Same category number: the rated division is needed only if the two spaces serve different purposes (galley/galley none; galley/paint room A-0).</source>
        <translation type="unfinished">Même numéro de catégorie&#xa0;: le cloisonnement indiqué n&apos;est exigé que si les deux locaux servent à des fins différentes (cuisine/cuisine&#xa0;: aucun&#xa0;; cuisine/magasin à peinture&#xa0;: A-0).</translation>
    </message>
    <message>
        <source>Bulkhead between wheelhouse and chart room may be B-0. Partitions between the bridge and a safety centre inside the bridge need no rating.</source>
        <translation type="unfinished">La cloison entre la timonerie et la chambre des cartes peut être B-0. Les cloisons entre la passerelle et un centre de sécurité situé dans la passerelle n&apos;exigent aucune classe.</translation>
    </message>
    <message>
        <source>Two values: the higher applies where the zone has no automatic sprinklers, the lower where it has them; between a sprinklered and an unsprinklered zone the higher applies (2.2.4.2.3, 2.2.4.2.4).</source>
        <translation type="unfinished">Deux valeurs&#xa0;: la plus élevée s&apos;applique si la tranche n&apos;a pas de dispositif automatique d&apos;extinction par eau diffusée, la plus basse si elle en a un&#xa0;; entre une tranche protégée et une tranche non protégée, la plus élevée s&apos;applique (2.2.4.2.3, 2.2.4.2.4).</translation>
    </message>
    <message>
        <source>Where the bulkhead is a main vertical zone boundary (2.2.1.1.2), read B-0 and C in table 9.3 as A-0.</source>
        <translation type="unfinished">Si la cloison est un cloisonnement de tranche verticale principale (2.2.1.1.2), lire A-0 au lieu de B-0 et C dans le tableau 9.3.</translation>
    </message>
    <message>
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished">Valeur en vigueur pour les navires construits le 1er juillet 2014 ou après&#xa0;; les navires plus anciens gardent au moins la valeur antérieure.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished">Le cloisonnement doit être en acier ou équivalent mais n&apos;a pas besoin d&apos;être du type A. Si un pont (autre qu&apos;un pont découvert) est traversé par des câbles, tuyaux ou conduits, le trou devrait être rendu étanche aux flammes et à la fumée. Un poste de sécurité abritant la génératrice de secours peut avoir des prises d&apos;air sur le pont découvert sans moyens de fermeture, sauf si une installation fixe à gaz y est montée. Si le pont limite une tranche verticale principale (2.2.1.1.2), lire A-0 au lieu de * dans le tableau 9.4, sauf pour les catégories 8 et 10.</translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished">Aucune exigence pour ces cloisons avec les méthodes de protection IIC et IIIC.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Les cloisons entre timonerie, chambre des cartes et local radio peuvent être B-0.</translation>
    </message>
    <message>
        <source>Cargo spaces for dangerous goods: regulation 19.3.8 governs.</source>
        <translation type="unfinished">Espaces à cargaison pour marchandises dangereuses&#xa0;: la règle 19.3.8 s&apos;applique.</translation>
    </message>
    <message>
        <source>Boundaries between ro-ro spaces must be able to be closed reasonably gastight and be A class so far as reasonable and practicable, if the Administration finds little or no fire risk.</source>
        <translation type="unfinished">Les cloisonnements entre espaces rouliers doivent pouvoir être fermés de façon raisonnablement étanche au gaz et être du type A dans la mesure du raisonnable et du possible, si l&apos;Administration juge le risque d&apos;incendie faible ou nul.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted.</source>
        <translation type="unfinished">Le cloisonnement doit être en acier ou équivalent mais n&apos;a pas besoin d&apos;être du type A. Si un pont (autre qu&apos;un pont découvert) est traversé par des câbles, tuyaux ou conduits, le trou devrait être rendu étanche aux flammes et à la fumée. Un poste de sécurité abritant la génératrice de secours peut avoir des prises d&apos;air sur le pont découvert sans moyens de fermeture, sauf si une installation fixe à gaz y est montée.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">La cloison ou le pont entre la chambre des pompes à cargaison et un local de machines de la catégorie A peut être traversé par des presse-étoupe d&apos;arbres de pompes et analogues si l&apos;étanchéité au gaz est durablement assurée.</translation>
    </message>
    <message>
        <source>Toilet boundaries may be reduced to C&apos;.</source>
        <translation type="unfinished">Les cloisonnements de toilettes peuvent être ramenés à C&apos;.</translation>
    </message>
    <message>
        <source>C is enough between two like spaces (two storerooms); unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C suffit entre deux locaux semblables (deux magasins)&#xa0;; des locaux différents (magasin et atelier) exigent A-0.</translation>
    </message>
    <message>
        <source>No division needed inside one stairtower; two separate stairtowers need A-0 between them.</source>
        <translation type="unfinished">Aucun cloisonnement exigé à l&apos;intérieur d&apos;une tour d&apos;escalier&#xa0;; deux tours d&apos;escalier distinctes exigent A-0 entre elles.</translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C suffit entre deux locaux semblables&#xa0;; des locaux différents (magasin et atelier) exigent A-0.</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">Est-ce une porte d&apos;entourage d&apos;escalier&#xa0;?</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">Porte et cadre en acier, ou équivalent&#xa0;?</translation>
    </message>
    <message>
        <source>A door that is normally kept locked was found locked</source>
        <translation type="unfinished">Une porte normalement verrouillée a été trouvée verrouillée</translation>
    </message>
    <message>
        <source>Was it found locked?</source>
        <translation type="unfinished">A-t-elle été trouvée verrouillée&#xa0;?</translation>
    </message>
    <message>
        <source>No key is needed in the direction of escape; a cabin door needs none from inside</source>
        <translation type="unfinished">Aucune clé n&apos;est nécessaire dans le sens de l&apos;évacuation&#xa0;; une porte de cabine n&apos;en exige pas de l&apos;intérieur</translation>
    </message>
    <message>
        <source>Opens in the direction of escape without a key?</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation sans clé&#xa0;?</translation>
    </message>
    <message>
        <source>Shut and latch it, then go through in the direction of escape with empty hands. Good: it opens. Bad: a key, a code or a tool is needed, or it is locked.</source>
        <translation type="unfinished">Fermez-la et enclenchez-la, puis passez dans le sens de l&apos;évacuation, les mains vides. Bon&#xa0;: elle s&apos;ouvre. Mauvais&#xa0;: il faut une clé, un code ou un outil, ou elle est verrouillée.</translation>
    </message>
    <message>
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Hauteur du déblocage rapide au-dessus du pont</translation>
    </message>
    <message>
        <source>Can be released at the door</source>
        <translation type="unfinished">Peut être déclenchée à la porte</translation>
    </message>
    <message>
        <source>Does the switch at the door release it?</source>
        <translation type="unfinished">L&apos;interrupteur à la porte la déclenche-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">La passerelle de navigation indique si une porte d&apos;incendie qui donne accès à un local de catégorie spéciale, ou en sort, est fermée</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Se ferme d&apos;elle-même en cas de défaillance de sa commande</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">A-t-elle un orifice de manche qui se ferme de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part of the door, or under it</source>
        <translation type="unfinished">Ouverture d&apos;aération seulement dans la partie inférieure de la porte, ou au-dessous</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part, or none?</source>
        <translation type="unfinished">Aération seulement dans la partie inférieure, ou aucune&#xa0;?</translation>
    </message>
    <message>
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se ferme à coup sûr, mue par une source d&apos;énergie, ou d&apos;elle-même contre une inclinaison de 3,5 degrés</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">Se ferme à coup sûr, par sa source d&apos;énergie ou d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe and released remotely</source>
        <translation type="unfinished">Son dispositif de retenue est à sécurité positive et déclenché à distance</translation>
    </message>
    <message>
        <source>Hold-back fail-safe, and released remotely?</source>
        <translation type="unfinished">Dispositif de retenue à sécurité positive, et déclenché à distance&#xa0;?</translation>
    </message>
    <message>
        <source>It is closed or released from outside the space, at one place or as few as possible</source>
        <translation type="unfinished">Elle est fermée ou déclenchée de l&apos;extérieur du local, d&apos;un seul endroit ou du moins d&apos;endroits possible</translation>
    </message>
    <message>
        <source>Closed or released from outside the space?</source>
        <translation type="unfinished">Fermée ou déclenchée de l&apos;extérieur du local&#xa0;?</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">En acier ou équivalent, et remplie d&apos;isolant approuvé si sa cloison est A-15 ou plus&#xa0;?</translation>
    </message>
    <message>
        <source>Door in a B-class bulkhead: solid or hollow steel or equal metal; or a metal frame with glass panes; or incombustible and approved for it</source>
        <translation type="unfinished">Porte dans une cloison du type B&#xa0;: acier plein ou creux ou métal équivalent&#xa0;; ou cadre métallique à vitres&#xa0;; ou incombustible et approuvée à cet effet</translation>
    </message>
    <message>
        <source>Metal, glass in a metal frame, or incombustible and approved?</source>
        <translation type="unfinished">En métal, en verre dans un cadre métallique, ou incombustible et approuvée&#xa0;?</translation>
    </message>
    <message>
        <source>Door in a B-class boundary: solid or hollow steel or equal; or noncombustible and approved for it</source>
        <translation type="unfinished">Porte dans un cloisonnement du type B&#xa0;: acier plein ou creux ou équivalent&#xa0;; ou incombustible et approuvée à cet effet</translation>
    </message>
    <message>
        <source>Steel or equal, or noncombustible and approved?</source>
        <translation type="unfinished">En acier ou équivalent, ou incombustible et approuvée&#xa0;?</translation>
    </message>
    <message>
        <source>Door in a bulkhead that must be C class is of approved incombustible material</source>
        <translation type="unfinished">Une porte dans une cloison qui doit être du type C est en matériau incombustible approuvé</translation>
    </message>
    <message>
        <source>Of approved incombustible material?</source>
        <translation type="unfinished">En matériau incombustible approuvé&#xa0;?</translation>
    </message>
    <message>
        <source>Door in a C-class boundary is noncombustible</source>
        <translation type="unfinished">Une porte dans un cloisonnement du type C est incombustible</translation>
    </message>
    <message>
        <source>Noncombustible?</source>
        <translation type="unfinished">Incombustible&#xa0;?</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">En bois dur d&apos;au moins 44,5 mm (1 3/4 in) d&apos;épaisseur&#xa0;?</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Une porte donnant sur un pont exposé dans un cloisonnement du type A peut être en bois dur, d&apos;au moins 45 mm (1,75 in) d&apos;épaisseur</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">En bois dur d&apos;au moins 45 mm (1,75 in) d&apos;épaisseur&#xa0;?</translation>
    </message>
    <message>
        <source>A door that only crew use</source>
        <translation type="unfinished">Une porte que seul l&apos;équipage utilise</translation>
    </message>
    <message>
        <source>Do only crew use it?</source>
        <translation type="unfinished">Seul l&apos;équipage l&apos;utilise-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte servant de moyen d&apos;évacuation d&apos;au moins 810 mm (32 in)</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte que seul l&apos;équipage utilise comme moyen d&apos;évacuation d&apos;au moins 710 mm (28 in)</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte&#xa0;; se ferme en cas de défaillance du système de commande</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">Un dispositif de retenue, s&apos;il existe, est déclenché du poste de sécurité et à la porte, et quand son alimentation fait défaut</translation>
    </message>
    <message>
        <source>No hold-back hook at all</source>
        <translation type="unfinished">Aucun crochet de retenue</translation>
    </message>
    <message>
        <source>Free of hold-back hooks?</source>
        <translation type="unfinished">Sans crochet de retenue&#xa0;?</translation>
    </message>
    <message>
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte donnant sur un escalier d&apos;au moins 711,2 mm (28 in)</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">Assez large pour les personnes qu&apos;elle dessert&#xa0;?</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Si un vantail doit toujours se fermer le premier, le second a une feuillure d&apos;au moins 12,7 mm (1/2 in)</translation>
    </message>
    <message>
        <source>Where the leaves lap, measure the stop that the second leaf shuts against. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">Là où les vantaux se recouvrent, mesurez la feuillure contre laquelle se ferme le second vantail. 1/2 pouce à l&apos;endroit le plus étroit.</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class bulkhead has a latch</source>
        <translation type="unfinished">Une porte dans une cloison du type A ou B a un loquet</translation>
    </message>
    <message>
        <source>Is there a latch?</source>
        <translation type="unfinished">Y a-t-il un loquet&#xa0;?</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class boundary has a latch</source>
        <translation type="unfinished">Une porte dans un cloisonnement du type A ou B a un loquet</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing.</source>
        <translation type="unfinished">Regardez le bord du vantail. Bon&#xa0;: un pêne, et sa gâche dans le cadre. Mauvais&#xa0;: un galet, un aimant ou rien.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Son loquet se manœuvre des deux côtés</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Course du pêne d&apos;au moins 19,05 mm (3/4 in) dans une cloison du type A, 9,525 mm (3/8 in) dans une cloison du type B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Fente sous la porte, au-dessus du seuil ou du revêtement de pont, d&apos;au plus 12,7 mm (1/2 in) dans une cloison du type A, 25,4 mm (1 in) dans une cloison du type B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Fente sous la porte, au-dessus du seuil ou du revêtement de pont, d&apos;au plus 12,7 mm (1/2 in) dans un cloisonnement du type A, 25 mm (1 in) dans un cloisonnement du type B</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Ni tapis ni moquette ne traverse l&apos;ouverture de la porte</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Regardez le pont sous la porte ouverte. Bon&#xa0;: seuil, pont nu, linoléum ou analogue. Mauvais&#xa0;: un tapis ou une moquette qui passe d&apos;un côté à l&apos;autre.</translation>
    </message>
    <message>
        <source>How far the shut leaf laps over the stop of its frame, at the sides and the top; double doors too. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">De combien le vantail fermé recouvre la feuillure de son cadre, sur les côtés et en haut&#xa0;; portes à deux vantaux aussi. 1/2 pouce à l&apos;endroit le plus étroit.</translation>
    </message>
    <message>
        <source>The frame is of rigid construction</source>
        <translation type="unfinished">Le cadre est de construction rigide</translation>
    </message>
    <message>
        <source>Is the frame rigid?</source>
        <translation type="unfinished">Le cadre est-il rigide&#xa0;?</translation>
    </message>
    <message>
        <source>Push at head and sides of the frame, and look at its fixings. Good: it does not give. Bad: it moves, or is loose from the bulkhead.</source>
        <translation type="unfinished">Poussez sur le haut et les côtés du cadre, et regardez ses fixations. Bon&#xa0;: il ne cède pas. Mauvais&#xa0;: il bouge, ou se détache de la cloison.</translation>
    </message>
    <message>
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">Le va-et-vient est-il permis pour l&apos;usage du local&#xa0;?</translation>
    </message>
    <message>
        <source>Between galley or pantry and messroom or dining room?</source>
        <translation type="unfinished">Entre une cuisine ou un office et un réfectoire ou une salle à manger&#xa0;?</translation>
    </message>
    <message>
        <source>Look at both sides of the door. Good: galley or pantry on one side, messroom or dining room on the other. Bad: anywhere else in an A-class boundary.</source>
        <translation type="unfinished">Regardez les deux côtés de la porte. Bon&#xa0;: cuisine ou office d&apos;un côté, réfectoire ou salle à manger de l&apos;autre. Mauvais&#xa0;: partout ailleurs dans un cloisonnement du type A.</translation>
    </message>
    <message>
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">Seul l&apos;équipage peut-il atteindre le local, et seul l&apos;équipage utilise-t-il la porte&#xa0;?</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Une porte dans un pont se ferme d&apos;elle-même contre une gîte de 3,5 degrés</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Une porte dans un pont n&apos;a pas de crochet de retenue</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">Le loquet tient-il contre 0,07 kPa par-dessous&#xa0;?</translation>
    </message>
    <message>
        <source>A door without glass</source>
        <translation type="unfinished">Une porte sans verre</translation>
    </message>
    <message>
        <source>Is the door without glass?</source>
        <translation type="unfinished">La porte est-elle sans verre&#xa0;?</translation>
    </message>
    <message>
        <source>All glass in the door is wired glass</source>
        <translation type="unfinished">Tout le verre de la porte est armé</translation>
    </message>
    <message>
        <source>Is all its glass wired?</source>
        <translation type="unfinished">Tout son verre est-il armé&#xa0;?</translation>
    </message>
    <message>
        <source>Look through each pane for the wires. Bad: cracked, or no wire in it.</source>
        <translation type="unfinished">Regardez les fils à travers chaque vitre. Mauvais&#xa0;: fêlée, ou sans fil.</translation>
    </message>
    <message>
        <source>Glass in a door to the open deck is wired where it opens onto a lifeboat embarkation or lowering place</source>
        <translation type="unfinished">Le verre d&apos;une porte donnant sur le pont découvert est armé si elle s&apos;ouvre sur un lieu d&apos;embarquement ou de mise à l&apos;eau des embarcations de sauvetage</translation>
    </message>
    <message>
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Tout verre dans une porte a au moins 6,35 mm (1/4 in) d&apos;épaisseur</translation>
    </message>
    <message>
        <source>Glass in a door sits in a steel or equal metal frame, held by metal beads or angles</source>
        <translation type="unfinished">Le verre d&apos;une porte est monté dans un cadre en acier ou métal équivalent, tenu par des parcloses ou cornières métalliques</translation>
    </message>
    <message>
        <source>Glass held by metal, in a metal frame?</source>
        <translation type="unfinished">Verre tenu par du métal, dans un cadre métallique&#xa0;?</translation>
    </message>
    <message>
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Une porte décorative voisine est en matériau incombustible approuvé, ne la gêne pas et, sur une voie principale d&apos;évacuation, s&apos;ouvre dans le même sens</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Une porte décorative voisine est incombustible ou en bois dur, ne la gêne pas et s&apos;ouvre dans le même sens&#xa0;; aucune dans les escaliers et tours d&apos;escalier</translation>
    </message>
    <message>
        <source>Metal plate on a vertical edge of the leaf, screwed or riveted, with maker, class, type approval number and drawing number</source>
        <translation type="unfinished">Plaque de métal sur un chant vertical du vantail, vissée ou rivetée, avec fabricant, classe, numéro d&apos;approbation de type et numéro de plan</translation>
    </message>
    <message>
        <source>Metal plate on the edge of the leaf, with all four entries?</source>
        <translation type="unfinished">Plaque de métal sur le chant du vantail, avec les quatre mentions ?</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, ss. 103, 106)</source>
        <translation type="unfinished">un navire construit avant le 3 février 2017 peut garder sa règle d&apos;avant jusqu&apos;au remplacement de la porte ou à la refonte du navire (SOR/2017-14, art. 103 et 106)</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">un navire construit avant le 3 février 2017 peut garder sa règle d&apos;avant jusqu&apos;au remplacement de la porte ou à la refonte du navire (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">Jeu entre vantail et cadre pas plus grand qu&apos;à son essai au feu&#xa0;?</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">Jeu entre vantail et cadre aussi petit que possible&#xa0;?</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">Ni grille ni persienne dans la porte</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut</source>
        <translation type="unfinished">Raisonnablement étanche aux gaz une fois fermée</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut?</source>
        <translation type="unfinished">Raisonnablement étanche aux gaz une fois fermée ?</translation>
    </message>
    <message>
        <source>Gastight when shut?</source>
        <translation type="unfinished">Étanche aux gaz une fois fermée ?</translation>
    </message>
    <message>
        <source>The leaf overlaps its frame</source>
        <translation type="unfinished">Le vantail recouvre son cadre</translation>
    </message>
    <message>
        <source>Does the leaf overlap its frame?</source>
        <translation type="unfinished">Le vantail recouvre-t-il son cadre&#xa0;?</translation>
    </message>
    <message>
        <source>Shut it and look at the edge from both sides. Good: leaf or stop covers the gap on every side that has a frame. Bad: you can look straight through between leaf and frame.</source>
        <translation type="unfinished">Fermez-la et regardez le bord des deux côtés. Bon&#xa0;: vantail ou feuillure couvre le jeu sur chaque côté qui a un cadre. Mauvais&#xa0;: on voit au travers entre vantail et cadre.</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Se ferme seule</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">si l&apos;art. 158 du Règlement sur la construction des coques est l&apos;ancienne règle que ce navire garde (SOR/2017-14, art. 103 et 203)</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">La timonerie la déclenche-t-elle ?</translation>
    </message>
    <message>
        <source>Canadian day boats: of 24 m or more, without berths, for fewer than 100 passengers, in sheltered waters or on near coastal voyages class 2, limited (part 2, ss. 201, 212, 218)</source>
        <translation type="unfinished">Bateaux de jour canadiens : de 24 m et plus, sans couchettes, pour moins de 100 passagers, en eaux abritées ou en voyages à proximité du littoral, classe 2, limités (partie 2, art. 201, 212, 218)</translation>
    </message>
    <message>
        <source>berths and voyage decide whether this ship counts as one of more than 36 passengers (SOR/2017-14, s. 102(3))</source>
        <translation type="unfinished">couchettes et voyage décident si ce navire compte pour plus de 36 passagers (SOR/2017-14, art. 102(3))</translation>
    </message>
    <message>
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">Peut-elle être fermée sur place ?</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened on the spot and closes safely again</source>
        <translation type="unfinished">Après une fermeture à distance elle se rouvre sur place et se referme sans danger</translation>
    </message>
    <message>
        <source>Re-opens on the spot after remote closing, and closes safely again?</source>
        <translation type="unfinished">Après fermeture à distance, se rouvre sur place et se referme sans danger ?</translation>
    </message>
    <message>
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">le code dit &quot;should&quot; (devrait)</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432 ; SOLAS III/19 et III/30 dans la base des traités du gouvernement néerlandais (BWBV0003264, avril 2015)</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Tout navire, quels que soient son pavillon et sa date</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Règles de Taïwan sur la structure des navires contre l&apos;incendie, art. 27, au 9 janvier 2018 : une transposition nationale de la rédaction de 1981/83 de SOLAS II-2/30</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Une alarme sonne quand elle est déclenchée depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">Une alarme a-t-elle sonné quand le poste de sécurité l&apos;a déclenchée&#xa0;?</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">Donne-t-elle sur un entourage d&apos;escalier ?</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Les changements après 2015. Les règles d&apos;avant le 26 mai 1965, que les navires plus anciens peuvent garder.</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">L&apos;édition annuelle de 2015, chaque section sur sa page d&apos;une copie publique (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Les changements après 2015. Les règles du 10 mars 1996, que les navires plus anciens peuvent garder.</translation>
    </message>
    <message>
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted, with maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Les chants verticaux du vantail ouvert. Bon&#xa0;: une plaque de métal, vissée ou rivetée, avec fabricant, classe, numéro d&apos;approbation de type, numéro de plan. Mauvais&#xa0;: aucune, un autocollant, peinte, une mention qui manque.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in the door&apos;s fire test</source>
        <translation type="unfinished">Jeu entre vantail et cadre pas plus grand que lors de l&apos;essai au feu de la porte</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Ask for its fire test report: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or the tested gap is not known.</source>
        <translation type="unfinished">Tout autour du vantail fermé, avec une jauge d&apos;épaisseur. Demandez le rapport d&apos;essai au feu de la porte&#xa0;: il donne le jeu essayé. Bon&#xa0;: nulle part plus grand. Mauvais&#xa0;: plus grand, ou jeu essayé inconnu.</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or one side gapes.</source>
        <translation type="unfinished">Tout autour du vantail fermé, avec une jauge d&apos;épaisseur. Bon&#xa0;: jeu régulier, et pas plus grand qu&apos;il ne faut au vantail pour bouger librement. Mauvais&#xa0;: on voit le jour, ou un côté bâille.</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable</source>
        <translation type="unfinished">le texte ne chiffre pas le plus petit jeu praticable</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">le texte ne chiffre pas le plus petit jeu praticable&#xa0;; un navire construit avant le 3 février 2017 peut garder sa règle d&apos;avant jusqu&apos;au remplacement de la porte ou à la refonte du navire (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>Free of grilles and louvres?</source>
        <translation type="unfinished">Sans grille ni persienne&#xa0;?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or air holes, open or blanked off.</source>
        <translation type="unfinished">Les deux faces du vantail, de haut en bas. Bon&#xa0;: rien. Mauvais&#xa0;: une grille, une persienne ou des trous d&apos;aération, ouverts ou obturés.</translation>
    </message>
    <message>
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, hardly any draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Fermez-la, mettez une lampe de l&apos;autre côté et regardez le long des bords&#xa0;; cherchez un courant d&apos;air. Bon&#xa0;: pas de lumière, presque pas de courant d&apos;air. Mauvais&#xa0;: de la lumière, un joint qui ne porte pas, un trou.</translation>
    </message>
    <message>
        <source>A door of a category A machinery space is gastight when shut</source>
        <translation type="unfinished">Une porte de local de machines de la catégorie A est étanche aux gaz une fois fermée</translation>
    </message>
    <message>
        <source>No vent opening in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Aucune ouverture d&apos;aération dans ou sous la porte d&apos;un entourage d&apos;escalier</translation>
    </message>
    <message>
        <source>Free of vent openings, in and under it?</source>
        <translation type="unfinished">Sans ouverture d&apos;aération, dans la porte et au-dessous&#xa0;?</translation>
    </message>
    <message>
        <source>The whole shut leaf and its lower edge. Good: no grille, holes or undercut for air. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Tout le vantail fermé et son bord inférieur. Bon&#xa0;: ni grille, ni trous, ni fente sous la porte pour l&apos;air. Mauvais&#xa0;: une grille où que ce soit, ou du jeu laissé dessous pour l&apos;air.</translation>
    </message>
    <message>
        <source>Every hose port fitted: self-closing, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Tout orifice de manche existant&#xa0;: à fermeture automatique, 150 × 150 mm libres porte fermée, aussi résistant au feu que la porte</translation>
    </message>
    <message>
        <source>A hose port, if fitted: self-closing, 150 × 150 mm</source>
        <translation type="unfinished">Un orifice de manche, s&apos;il existe&#xa0;: à fermeture automatique, 150 × 150 mm</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. The text gives no angle. Space not of category A: n/a.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète, de mi-ouverture et d&apos;un petit angle. Bon&#xa0;: elle se ferme complètement chaque fois. Le texte ne donne pas d&apos;angle. Local hors catégorie A&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Vent opening in or under a corridor door no more than 0.05 m², with a non-combustible grille</source>
        <translation type="unfinished">Ouverture d&apos;aération dans ou sous une porte de coursive d&apos;au plus 0,05 m², avec une grille incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible. Not a corridor door: n/a.</source>
        <translation type="unfinished">La grille du vantail ou la fente sous la porte. Comptez seulement la surface ouverte entre les barreaux&#xa0;; 0 s&apos;il n&apos;y en a pas. La grille doit être incombustible. Pas une porte de coursive&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half of a corridor door, or under it</source>
        <translation type="unfinished">Ouverture d&apos;aération seulement dans la moitié inférieure d&apos;une porte de coursive, ou au-dessous</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half, or none?</source>
        <translation type="unfinished">Aération seulement dans la moitié inférieure, ou aucune&#xa0;?</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a corridor door: n/a.</source>
        <translation type="unfinished">Cherchez chaque ouverture d&apos;aération dans le vantail. Bon&#xa0;: dans la moitié inférieure, dessous, ou aucune. Mauvais&#xa0;: une grille ou des trous dans la moitié supérieure. Pas une porte de coursive&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule, as far as read, gives no angle</source>
        <translation type="unfinished">Se ferme d&apos;elle-même&#xa0;; l&apos;ancienne règle, pour autant qu&apos;elle ait été lue, ne donne pas d&apos;angle</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète, de mi-ouverture et d&apos;un petit angle. Bon&#xa0;: elle se ferme complètement chaque fois. Mauvais&#xa0;: elle reste entrouverte.</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe: the door closes when the hold-back fails</source>
        <translation type="unfinished">Son dispositif de retenue est à sécurité positive&#xa0;: la porte se ferme quand il est en panne</translation>
    </message>
    <message>
        <source>Its hold-back is released at the door</source>
        <translation type="unfinished">Son dispositif de retenue est déclenché à la porte</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon&#xa0;: la porte est déclenchée. Mauvais&#xa0;: rien ne se passe.</translation>
    </message>
    <message>
        <source>Its hold-back is released from the wheelhouse</source>
        <translation type="unfinished">Son dispositif de retenue est déclenché depuis la timonerie</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the wheelhouse releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Puis la timonerie déclenche la porte ou son groupe. Bon&#xa0;: elle est déclenchée et se ferme. Mauvais&#xa0;: elle reste ouverte.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans take precedence over these requirements; changes after 25 July 2025 have not been checked.</source>
        <translation type="unfinished">Transports Canada, ses inspecteurs et les plans approuvés priment sur ces exigences&#xa0;; les changements après le 25 juillet 2025 n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and so do these requirements (ss. 101, 102, 120); a ship built before 1 July 2002 may keep the structural fire protection of its day, except for part E, replaced parts and a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Navires à passagers canadiens avec certificats de convention&#xa0;: SOLAS II-2 les oblige, et ces exigences aussi (art. 101, 102, 120)&#xa0;; un navire construit avant le 1er juillet 2002 peut garder la protection incendie structurelle de son époque, sauf la partie E, les pièces remplacées et une refonte majeure (art. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, as of 23 July 2026), everything on doors</source>
        <translation type="unfinished">Lois et règlements codifiés du Canada en XML (github.com/justicecanada/laws-lois-xml, au 23 juillet 2026), tout ce qui touche les portes</translation>
    </message>
    <message>
        <source>The law of the day for ships built before 1 July 2002</source>
        <translation type="unfinished">La loi de l&apos;époque pour les navires construits avant le 1er juillet 2002</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, except s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Les anciennes règles qu&apos;un navire construit avant le 3 février 2017 peut garder, sauf l&apos;art. 158 du Règlement sur la construction des coques</translation>
    </message>
    <message>
        <source>The door has the class of the partition it is fitted in; a watertight door needs no insulation</source>
        <translation type="unfinished">La porte a la classe de la cloison de séparation où elle est montée&#xa0;; une porte étanche n&apos;a pas besoin d&apos;isolation</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Comparez la plaque de la porte à la classe de la cloison de séparation qui l&apos;entoure. Bon&#xa0;: la classe de la porte est au moins égale. Une porte étanche n&apos;a pas besoin d&apos;isolation (art. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>Closes by itself; the text gives no angle, time or speed</source>
        <translation type="unfinished">Se ferme d&apos;elle-même&#xa0;; le texte ne donne ni angle, ni temps, ni vitesse</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The text gives no angle, time or speed.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète, de mi-ouverture et d&apos;un petit angle. Bon&#xa0;: elle se ferme complètement chaque fois. Mauvais&#xa0;: elle reste entrouverte. Le texte ne donne ni angle, ni temps, ni vitesse.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Si elle reste ouverte en service, elle peut être fermée sur place</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released and closes. Bad: nothing happens.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon&#xa0;: la porte est déclenchée et se ferme. Mauvais&#xa0;: rien ne se passe.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed from a permanently manned place</source>
        <translation type="unfinished">Si elle reste ouverte en service, elle peut être fermée depuis un poste gardé en permanence</translation>
    </message>
    <message>
        <source>Can it be closed from the permanently manned place?</source>
        <translation type="unfinished">Peut-elle être fermée depuis le poste gardé en permanence&#xa0;?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the permanently manned place releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Puis le poste gardé en permanence déclenche la porte ou son groupe. Bon&#xa0;: elle est déclenchée et se ferme. Mauvais&#xa0;: elle reste ouverte.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which replaced this text, has not been read.</source>
        <translation type="unfinished">L&apos;organisme de visite qui délivre le certificat du bateau décide&#xa0;; l&apos;ES-TRIN, qui a remplacé ce texte, n&apos;a pas été lu.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, certified under Directive 2006/87/EC</source>
        <translation type="unfinished">Bateaux à passagers sur les voies navigables intérieures de l&apos;Union européenne, certifiés selon la directive 2006/87/CE</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations outside the codes); its end date is from memory</source>
        <translation type="unfinished">Arrêté français du 30 décembre 2008, annexe, art. 15.11(8) et (10) (github.com/etalab, lois et règlements hors codes)&#xa0;; sa date de fin est de mémoire</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which replaced it; what existing vessels were allowed; the tables of partitions</source>
        <translation type="unfinished">Le chapitre 19 de l&apos;ES-TRIN, qui l&apos;a remplacé&#xa0;; ce qui était permis aux bateaux existants&#xa0;; les tableaux des cloisons de séparation</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The code asks for release at the door, not from both sides.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon&#xa0;: la porte est déclenchée. Mauvais&#xa0;: rien ne se passe. Le code demande un déclenchement à la porte, non des deux côtés.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes later than LY3 have not been read.</source>
        <translation type="unfinished">L&apos;Administration qui certifie le yacht décide&#xa0;; les codes postérieurs au LY3 n&apos;ont pas été lus.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified under LY3; the code says &quot;should&quot;, so the inspector decides on a failure</source>
        <translation type="unfinished">Grands yachts commerciaux d&apos;une jauge brute de 500 et plus certifiés selon le LY3&#xa0;; le code dit &quot;should&quot; (devrait), l&apos;inspecteur décide donc en cas d&apos;échec</translation>
    </message>
    <message>
        <source>A page of imorules.com, which had paragraph 14B.2.7.4 only as far as sub-item (e)</source>
        <translation type="unfinished">Une page d&apos;imorules.com, qui n&apos;avait le paragraphe 14B.2.7.4 que jusqu&apos;au sous-alinéa (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates when LY3 was in force; later codes. Other SOLAS requirements are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 après le sous-alinéa (e), et les autres paragraphes sur la protection incendie&#xa0;; les dates où le LY3 était en vigueur&#xa0;; les codes postérieurs. Les autres exigences SOLAS sont montrées comme recommandation.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration take precedence over these periods; no grace period is stated.</source>
        <translation type="unfinished">Le plan d&apos;entretien de la compagnie et l&apos;Administration du pavillon priment sur ces périodes&#xa0;; aucun délai de grâce n&apos;est indiqué.</translation>
    </message>
    <message>
        <source>Lamps of the fire door control panels are tested</source>
        <translation type="unfinished">Les lampes des tableaux de commande des portes d&apos;incendie sont testées</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is operated locally</source>
        <translation type="unfinished">Chaque porte d&apos;incendie d&apos;une cloison de tranche verticale principale est actionnée localement</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tested for proper release</source>
        <translation type="unfinished">Les portes d&apos;incendie commandées à distance sont testées quant à leur bon déclenchement</translation>
    </message>
    <message>
        <source>Blackout test: doors are held and released on the emergency source and the transitional battery</source>
        <translation type="unfinished">Test de black-out&#xa0;: les portes sont retenues et déclenchées sur la source de secours et la batterie transitoire</translation>
    </message>
    <message>
        <source>Vessels of other flags, or under rules not named here: no text in this catalogue binds them, and everything shown is advice</source>
        <translation type="unfinished">Navires d&apos;autres pavillons, ou sous des règles non citées ici&#xa0;: aucun texte de ce catalogue ne les oblige, et tout ce qui est montré est recommandation</translation>
    </message>
    <message>
        <source>All texts of those flags</source>
        <translation type="unfinished">Tous les textes de ces pavillons</translation>
    </message>
    <message>
        <source>Plate present and legible, and it agrees with the register</source>
        <translation type="unfinished">Plaque présente et lisible, et elle concorde avec le registre</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, worn off, or not the class in the register. No SOLAS paragraph was found that requires a plate: if it is missing, ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Lisez-la à la porte même. Mauvais&#xa0;: peinte, usée, ou pas la classe du registre. Aucun paragraphe SOLAS exigeant une plaque n&apos;a été trouvé&#xa0;: si elle manque, demandez le certificat&#xa0;; ce n&apos;est pas un échec.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip hazard</source>
        <translation type="unfinished">Seuil ou barre de seuil en place, sans risque de trébucher</translation>
    </message>
    <message>
        <source>Sill in place, no trip hazard?</source>
        <translation type="unfinished">Seuil en place, sans risque de trébucher&#xa0;?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: clear. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Tout le pont que parcourt le vantail, des deux côtés. Bon&#xa0;: dégagé. Mauvais&#xa0;: matériel entreposé, chariots, meubles, tapis, détritus.</translation>
    </message>
    <message>
        <source>Not held open by a wedge, rope or furniture</source>
        <translation type="unfinished">Pas maintenue ouverte par une cale, une corde ou un meuble</translation>
    </message>
    <message>
        <source>The foot, handle and edge of the open leaf. Good: held only by its own hold-back. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">Le pied, la poignée et le bord du vantail ouvert. Bon&#xa0;: tenu par son seul dispositif de retenue. Mauvais&#xa0;: une cale, une corde, un meuble.</translation>
    </message>
    <message>
        <source>Seals intact and not painted over</source>
        <translation type="unfinished">Joints entiers et non peints</translation>
    </message>
    <message>
        <source>Seals intact, unpainted?</source>
        <translation type="unfinished">Joints entiers, non peints&#xa0;?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece missing.</source>
        <translation type="unfinished">Tout autour du vantail. Bon&#xa0;: bandes affleurantes et entières. Mauvais&#xa0;: peintes, déchirées, ou un morceau qui manque.</translation>
    </message>
    <message>
        <source>Stand back and look at the gap above the leaf. Good: even, screws tight. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Reculez et regardez le jeu au-dessus du vantail. Bon&#xa0;: régulier, vis serrées. Mauvais&#xa0;: plus grand d&apos;un bout, traces brillantes de frottement au seuil.</translation>
    </message>
    <message>
        <source>Closer not leaking, arm connected</source>
        <translation type="unfinished">Ferme-porte sans fuite, bras raccordé</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, arm secured at both ends. Bad: oil on the body or the leaf, arm loose or hanging.</source>
        <translation type="unfinished">En haut du vantail. Bon&#xa0;: sec, bras fixé aux deux bouts. Mauvais&#xa0;: huile sur le corps ou sur le vantail, bras lâche ou pendant.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and undamaged</source>
        <translation type="unfinished">Rails, galets et guides propres et intacts</translation>
    </message>
    <message>
        <source>Keep hands out while it can move. The rail at the head and the guide at the foot, end to end. Good: clear, every roller on the rail. Bad: dirt, a dent, a roller off.</source>
        <translation type="unfinished">N&apos;y mettez jamais les mains tant que la porte peut bouger. Le rail du haut et le guide du bas, d&apos;un bout à l&apos;autre. Bon&#xa0;: dégagé, chaque galet sur le rail. Mauvais&#xa0;: saleté, bosse, galet déraillé.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Vantail, cadre et vitre sains&#xa0;: ni trous, ni accessoires non approuvés, ni corrosion, ni isolation décollée</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound?</source>
        <translation type="unfinished">Vantail, cadre et vitre sains&#xa0;?</translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it moves evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Suivez des yeux le vantail jusqu&apos;au bout. Bon&#xa0;: il va régulièrement jusqu&apos;à la fin. Mauvais&#xa0;: il coince, saute, ou claque à la fin.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other has shut</source>
        <translation type="unfinished">Le sélecteur de fermeture retient un vantail jusqu&apos;à ce que l&apos;autre soit fermé</translation>
    </message>
    <message>
        <source>Do the leaves close in the right order?</source>
        <translation type="unfinished">Les vantaux se ferment-ils dans le bon ordre&#xa0;?</translation>
    </message>
    <message>
        <source>Keep fingers off the meeting edges. Open both leaves and let them go together. Good: one waits until the other has shut. Bad: the lip is caught on the wrong side.</source>
        <translation type="unfinished">Éloignez les doigts des montants de rencontre. Ouvrez les deux vantaux et lâchez-les ensemble. Bon&#xa0;: l&apos;un attend que l&apos;autre soit fermé. Mauvais&#xa0;: le recouvrement est pris du mauvais côté.</translation>
    </message>
    <message>
        <source>When it has shut and stopped moving, push it. Good: it holds. Bad: it gives way, as it would under the pressure of a fire.</source>
        <translation type="unfinished">Quand elle est fermée et ne bouge plus, poussez-la. Bon&#xa0;: elle tient. Mauvais&#xa0;: elle cède, comme elle le ferait sous la pression d&apos;un incendie.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Good: on contact the leaf stops and moves back. Bad: it keeps pushing.</source>
        <translation type="unfinished">Tenez un bloc souple sur la course, jamais une main ni un pied. Bon&#xa0;: au contact, le vantail s&apos;arrête et recule. Mauvais&#xa0;: il continue de pousser.</translation>
    </message>
    <message>
        <source>Common practice has no published source here: it never fails a door by itself; the inspector decides.</source>
        <translation type="unfinished">La pratique courante n&apos;a ici pas de source publiée&#xa0;: elle ne fait jamais échouer une porte à elle seule&#xa0;; l&apos;inspecteur décide.</translation>
    </message>
    <message>
        <source>There is no published text.</source>
        <translation type="unfinished">Il n&apos;y a pas de texte publié.</translation>
    </message>
    <message>
        <source>The closing speed is controlled where needed so that no one is endangered; the older text gives no figure</source>
        <translation type="unfinished">La vitesse de fermeture est réglée où il le faut pour que personne ne soit mis en danger&#xa0;; l&apos;ancien texte ne donne pas de chiffre</translation>
    </message>
    <message>
        <source>Closing speed controlled, so that no one is endangered?</source>
        <translation type="unfinished">Vitesse de fermeture réglée, pour que personne ne soit mis en danger&#xa0;?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text gives no seconds or metres per second.</source>
        <translation type="unfinished">Regardez-la se fermer depuis l&apos;ouverture complète. Bon&#xa0;: elle va régulièrement, et qui se trouve sur son passage a le temps de s&apos;écarter. Mauvais&#xa0;: elle claque ou s&apos;emballe. L&apos;ancien texte ne donne ni secondes ni mètres par seconde.</translation>
    </message>
    <message>
        <source>Only part of the texts before 1 July 2002 has been read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">Seule une partie des textes d&apos;avant le 1er juillet 2002 a été lue&#xa0;: pour un navire plus ancien, demandez le plan approuvé et les règles de son époque.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration they meet at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Navires à passagers SOLAS construits avant le 1er juillet 2002, qui gardent le chapitre II-2 tel que modifié à leur époque (II-2/1.2.1 de 2015)&#xa0;; après une réparation ou une modification, ils y satisfont au moins, après une modification majeure, au nouveau texte dans la mesure du raisonnable (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres per second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 de 1981/83 sur papier&#xa0;; les amendements de 1992 aux règles 30, 41-1 et 41-2 (secondes, mètres par seconde, alarme, dates de mise à niveau)&#xa0;: demandez le plan approuvé&#xa0;; les tableaux d&apos;incendie d&apos;avant 2002</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Navires à passagers SOLAS construits avant le 1er juillet 2002 avec des locaux de catégorie spéciale</translation>
    </message>
    <message>
        <source>An English copy of MSC.1(XLV) on the internet, of which only part was available: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Une copie anglaise de MSC.1(XLV) sur internet, dont une partie seulement était disponible&#xa0;: II-2/37.1.1.2 et 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, including the regulation on doors (30)</source>
        <translation type="unfinished">Le reste des amendements de 1981, y compris la règle sur les portes (30)</translation>
    </message>
    <message>
        <source>Door, frame and securing means as fire-resistant as the division they are fitted in</source>
        <translation type="unfinished">Porte, cadre et moyens de fermeture aussi résistants au feu que le cloisonnement où ils sont montés</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Comparez la plaque de la porte à la classe du cloisonnement qui l&apos;entoure. Bon&#xa0;: la classe de la porte est au moins égale. Une porte étanche n&apos;a pas besoin d&apos;isolation (9.4.1.1.3).</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class, like its boundary</source>
        <translation type="unfinished">Une porte extérieure qui donne sur des engins de sauvetage, des postes d&apos;embarquement ou de rassemblement extérieurs, des escaliers extérieurs ou des ponts d&apos;évacuation est du type A, comme son cloisonnement</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A door of a stairway enclosure is exempt.</source>
        <translation type="unfinished">Comparez la plaque de la porte à la classe du cloisonnement qui l&apos;entoure. Bon&#xa0;: la classe de la porte est au moins égale. Une porte d&apos;entourage d&apos;escalier est exemptée.</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes, and no class is required. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Consultez le plan de lutte contre l&apos;incendie, ou entrez. Derrière, un entourage d&apos;escalier&#xa0;: oui, et aucune classe n&apos;est exigée. Tout autre local&#xa0;: non. Aucune des deux réponses n&apos;est un défaut.</translation>
    </message>
    <message>
        <source>Door and frame of steel or equivalent material</source>
        <translation type="unfinished">Porte et cadre en acier ou matériau équivalent</translation>
    </message>
    <message>
        <source>Door and frame in good order, able to do what they were fitted for</source>
        <translation type="unfinished">Porte et cadre en bon état, capables de faire ce pour quoi ils ont été montés</translation>
    </message>
    <message>
        <source>Door and frame in good order?</source>
        <translation type="unfinished">Porte et cadre en bon état&#xa0;?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, unapproved repairs. Applies to ships of any date.</source>
        <translation type="unfinished">Vantail, cadre, charnières, joints et vitre. Mauvais&#xa0;: trous, pièces rapportées, chocs qui empêchent la fermeture, pièces qui manquent, réparations non approuvées. S&apos;applique aux navires de toute date.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard includes this door and its controls</source>
        <translation type="unfinished">Le plan d&apos;entretien du bord comprend cette porte et ses commandes</translation>
    </message>
    <message>
        <source>Are the door and its controls in the maintenance plan?</source>
        <translation type="unfinished">La porte et ses commandes sont-elles dans le plan d&apos;entretien&#xa0;?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or computer, and find this door. Good: its tests and dates are there. Applies to ships of any date.</source>
        <translation type="unfinished">Demandez le plan d&apos;entretien du navire, sur papier ou ordinateur, et cherchez cette porte. Bon&#xa0;: ses tests et leurs dates y sont. S&apos;applique aux navires de toute date.</translation>
    </message>
    <message>
        <source>A bar or panel that releases the latch when pushed, on the side people come from. Good: at least half as wide as the leaf. Not a public space, or not latched: n/a.</source>
        <translation type="unfinished">Une barre ou un panneau qui libère le loquet quand on le pousse, du côté d&apos;où viennent les gens. Bon&#xa0;: au moins la moitié de la largeur du vantail. Pas un local de réunion, ou sans loquet&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>The quick release is 760 to 1120 mm above the deck</source>
        <translation type="unfinished">Le déblocage rapide est de 760 à 1120 mm au-dessus du pont</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the quick release question first.</source>
        <translation type="unfinished">Du pont au milieu de la barre, à la règle ou au mètre ruban. Répondez d&apos;abord à la question sur le déblocage rapide.</translation>
    </message>
    <message>
        <source>The quick release operates at 67 N or less</source>
        <translation type="unfinished">Le déblocage rapide s&apos;actionne avec 67 N ou moins</translation>
    </message>
    <message>
        <source>Force to operate the quick release</source>
        <translation type="unfinished">Force pour actionner le déblocage rapide</translation>
    </message>
    <message>
        <source>Keep feet clear of the leaf. Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch releases.</source>
        <translation type="unfinished">Gardez les pieds à l&apos;écart du vantail. Poussez avec un peson au milieu de la barre, dans le sens de l&apos;évacuation, jusqu&apos;à ce que le loquet se libère.</translation>
    </message>
    <message>
        <source>Open and shut it yourself, unaided, from this side; then do the same from the other. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Ouvrez-la et fermez-la vous-même, sans aide, de ce côté&#xa0;; puis de même de l&apos;autre. Mauvais&#xa0;: il faut deux personnes ou un outil.</translation>
    </message>
    <message>
        <source>Closes by itself, even against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se ferme d&apos;elle-même, même contre une inclinaison de 3,5 degrés</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète, de mi-ouverture et d&apos;un petit angle. Bon&#xa0;: elle se ferme complètement chaque fois. Mauvais&#xa0;: elle reste entrouverte. La partie sur les 3,5 degrés ne peut pas être vérifiée navire droit.</translation>
    </message>
    <message>
        <source>Stand clear of the leaf. Mark its first movement and the moment it is fully shut; on a double door, when the second leaf is shut.</source>
        <translation type="unfinished">Tenez-vous à l&apos;écart du vantail. Marquez son premier mouvement et l&apos;instant où il est complètement fermé&#xa0;; sur une porte à deux vantaux, quand le second vantail est fermé.</translation>
    </message>
    <message>
        <source>Keep hands off the edge and out of the pocket. Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate.</source>
        <translation type="unfinished">Gardez les mains loin du bord et hors du logement du vantail. Marquez le premier mouvement et l&apos;instant de la fermeture&#xa0;: le passage libre divisé par ce temps est la vitesse.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the control station releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Puis le poste de sécurité déclenche la porte ou son groupe. Bon&#xa0;: elle est déclenchée et se ferme. Mauvais&#xa0;: elle reste ouverte.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors together or in groups</source>
        <translation type="unfinished">Peut être déclenchée depuis un poste de sécurité, toutes les portes ensemble ou par groupes</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door, on one side and then the other. Good: each releases the door. Bad: one side does nothing.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte, d&apos;un côté puis de l&apos;autre. Bon&#xa0;: chacun déclenche la porte. Mauvais&#xa0;: un côté est sans effet.</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The older text requires release at the door, not from both sides.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon&#xa0;: la porte est déclenchée. Mauvais&#xa0;: rien ne se passe. L&apos;ancien texte exige un déclenchement à la porte, non des deux côtés.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function, so that the system does not reset itself</source>
        <translation type="unfinished">L&apos;interrupteur de déclenchement a une fonction arrêt-marche, pour que le système ne se réenclenche pas de lui-même</translation>
    </message>
    <message>
        <source>Does the switch stay as set, so that the system does not reset itself?</source>
        <translation type="unfinished">L&apos;interrupteur reste-t-il comme on l&apos;a mis, pour que le système ne se réenclenche pas de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Release, take your hand off and wait. Good: the door is not held again until someone resets the switch. Bad: the system resets itself.</source>
        <translation type="unfinished">Déclenchez, ôtez la main et attendez. Bon&#xa0;: la porte n&apos;est plus retenue tant que personne ne réenclenche l&apos;interrupteur. Mauvais&#xa0;: le système se réenclenche de lui-même.</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: hooks, cabin hooks, eye plates with signs of use.</source>
        <translation type="unfinished">Regardez derrière la porte ouverte, sur la cloison, le vantail et le pont. Mauvais&#xa0;: crochets, crochets de cabine, pitons portant des traces d&apos;usage.</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Après fermeture à distance, elle peut être rouverte localement des deux côtés, puis se ferme d&apos;elle-même</translation>
    </message>
    <message>
        <source>Keep clear of the leaf as it comes back. With the remote release still on, open it from this side and let go. Good: it opens, then shuts by itself.</source>
        <translation type="unfinished">Restez à l&apos;écart du vantail quand il revient. Le déclenchement à distance étant maintenu, ouvrez-la de ce côté et lâchez-la. Bon&#xa0;: elle s&apos;ouvre, puis se ferme d&apos;elle-même.</translation>
    </message>
    <message>
        <source>Is the panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">Le tableau est-il juste, porte ouverte, entrouverte et fermée&#xa0;?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: correct each time. Bad: it shows shut while the door is ajar.</source>
        <translation type="unfinished">Demandez au poste de sécurité ce qu&apos;indique son tableau, porte ouverte, entrouverte et fermée. Bon&#xa0;: juste chaque fois. Mauvais&#xa0;: il l&apos;indique fermée alors qu&apos;elle est entrouverte.</translation>
    </message>
    <message>
        <source>Is the bridge panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">Le tableau de la passerelle est-il juste, porte ouverte, entrouverte et fermée&#xa0;?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: correct each time. Bad: no lamp for this door, or it shows shut while the door is ajar.</source>
        <translation type="unfinished">Demandez à la passerelle ce qu&apos;elle voit, porte ouverte, entrouverte et fermée. Bon&#xa0;: juste chaque fois. Mauvais&#xa0;: pas de lampe pour cette porte, ou elle est indiquée fermée alors qu&apos;elle est entrouverte.</translation>
    </message>
    <message>
        <source>Its remote closing control is in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Sa commande de fermeture à distance est dans le même poste de sécurité central que les alarmes de détection, et le tableau y indique si elle est ouverte ou fermée</translation>
    </message>
    <message>
        <source>Closing control and open/closed lamp in the central station?</source>
        <translation type="unfinished">Commande de fermeture et lampe ouverte/fermée au poste de sécurité central&#xa0;?</translation>
    </message>
    <message>
        <source>In the continuously manned station, beside the detection alarms: the control that closes this door, and its open/closed lamp.</source>
        <translation type="unfinished">Dans le poste gardé en permanence, à côté des alarmes de détection&#xa0;: la commande qui ferme cette porte, et sa lampe ouverte/fermée.</translation>
    </message>
    <message>
        <source>It can be operated and monitored from the safety centre</source>
        <translation type="unfinished">Elle peut être manœuvrée et surveillée depuis le centre de sécurité</translation>
    </message>
    <message>
        <source>Operated and monitored from the safety centre?</source>
        <translation type="unfinished">Manœuvrée et surveillée depuis le centre de sécurité&#xa0;?</translation>
    </message>
    <message>
        <source>Its holding and release work on the emergency source, and on the transitional battery until that source takes over</source>
        <translation type="unfinished">Sa retenue et son déclenchement fonctionnent sur la source de secours, et sur la batterie transitoire jusqu&apos;à ce que celle-ci prenne le relais</translation>
    </message>
    <message>
        <source>In the blackout test: held and released on emergency power?</source>
        <translation type="unfinished">Au test de black-out&#xa0;: retenue et déclenchée sur l&apos;alimentation de secours&#xa0;?</translation>
    </message>
    <message>
        <source>Local accumulators can fully open and shut the door at least ten times after the power has failed</source>
        <translation type="unfinished">Des accumulateurs locaux peuvent ouvrir et fermer complètement la porte au moins dix fois après la perte de l&apos;alimentation</translation>
    </message>
    <message>
        <source>Do the other doors still work when this one fails?</source>
        <translation type="unfinished">Les autres portes fonctionnent-elles encore quand celle-ci est en panne&#xa0;?</translation>
    </message>
    <message>
        <source>Listen until the leaf is shut. Good: the alarm is still sounding when the door is fully shut. Bad: silence while the leaf is still moving.</source>
        <translation type="unfinished">Écoutez jusqu&apos;à ce que le vantail soit fermé. Bon&#xa0;: l&apos;alarme sonne encore quand la porte est complètement fermée. Mauvais&#xa0;: silence alors que le vantail bouge encore.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after moving back.</source>
        <translation type="unfinished">Tenez un bloc souple sur la course, jamais une main ni un pied. Mesurez du point de contact à l&apos;endroit où le vantail s&apos;arrête après avoir reculé.</translation>
    </message>
    <message>
        <source>The latch engages automatically when the system releases the door</source>
        <translation type="unfinished">Le loquet s&apos;enclenche automatiquement quand le système déclenche la porte</translation>
    </message>
    <message>
        <source>After release, when both leaves have stopped, push at the meeting edge. Good: neither opens. Bad: the bolt stops short of its strike.</source>
        <translation type="unfinished">Après le déclenchement, quand les deux vantaux sont arrêtés, poussez au montant de rencontre. Bon&#xa0;: aucun ne s&apos;ouvre. Mauvais&#xa0;: le pêne n&apos;atteint pas sa gâche.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjustment</source>
        <translation type="unfinished">Les éléments de la commande locale sont accessibles pour l&apos;entretien et le réglage</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens, with room for a hand and a tool. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Trouvez l&apos;interrupteur, la vanne ou le coffret de commande propre à la porte. Bon&#xa0;: le capot s&apos;ouvre, il y a place pour une main et un outil. Mauvais&#xa0;: encastré, bloqué ou collé par la peinture.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 °C, and to keep the door shut above that</source>
        <translation type="unfinished">Le système de commande est approuvé pour fonctionner dans un incendie&#xa0;: 60 min à 200 °C, et pour tenir la porte fermée au-delà</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Orifice de manche à fermeture automatique, 150 × 150 mm libres porte fermée, aussi résistant au feu que la porte</translation>
    </message>
    <message>
        <source>Hose port 150 × 150 mm clear, and does it shut by itself?</source>
        <translation type="unfinished">Orifice de manche de 150 × 150 mm libres, et se ferme-t-il de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 × 150 mm clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Porte fermée, bord inférieur, à l&apos;opposé des charnières&#xa0;; sur une porte à glissières, au plus près de l&apos;ouverture. Levez le volet et lâchez-le. Bon&#xa0;: 150 × 150 mm libres, et le volet retombe fermé. Mauvais&#xa0;: il reste levé.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text gives no size</source>
        <translation type="unfinished">Orifice de manche à fermeture automatique&#xa0;; l&apos;ancien texte ne donne pas de dimension</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. No size is given for a ship of this date.</source>
        <translation type="unfinished">Porte fermée, bord inférieur, à l&apos;opposé des charnières. Levez le volet et lâchez-le. Bon&#xa0;: il retombe fermé. Mauvais&#xa0;: il reste levé, ou il n&apos;y a pas d&apos;orifice. Aucune dimension n&apos;est donnée pour un navire de cette date.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">9.4.1.1.8 cite les escaliers, les locaux de réunion et les cloisons de tranche&#xa0;; le registre ne dit pas si cette porte est dans un local de réunion</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a feeler gauge or a rule.</source>
        <translation type="unfinished">Ne mettez jamais les doigts sous un vantail qui peut bouger. L&apos;endroit le plus large sous la porte fermée, avec une jauge d&apos;épaisseur ou une règle.</translation>
    </message>
    <message>
        <source>At the foot of the shut door. Good: a non-combustible sill, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Au pied de la porte fermée. Bon&#xa0;: un seuil incombustible, où la moquette ou le vinyle s&apos;arrête. Mauvais&#xa0;: le revêtement continue sous le vantail.</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a rule.</source>
        <translation type="unfinished">Ne mettez jamais les doigts sous un vantail qui peut bouger. L&apos;endroit le plus large sous la porte fermée, à la règle.</translation>
    </message>
    <message>
        <source>B-class door of non-combustible material</source>
        <translation type="unfinished">Porte du type B en matériau incombustible</translation>
    </message>
    <message>
        <source>Door of non-combustible material?</source>
        <translation type="unfinished">Porte en matériau incombustible&#xa0;?</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m² net, with a non-combustible grille</source>
        <translation type="unfinished">Ouverture d&apos;aération dans ou sous la porte d&apos;au plus 0,05 m² nets, avec une grille incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible.</source>
        <translation type="unfinished">La grille du vantail ou la fente sous la porte. Comptez seulement la surface ouverte entre les barreaux&#xa0;; 0 s&apos;il n&apos;y en a pas. La grille doit être incombustible.</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Cherchez chaque ouverture d&apos;aération dans le vantail. Bon&#xa0;: en bas du vantail, dessous, ou aucune. Mauvais&#xa0;: une grille ou des trous dans la moitié supérieure.</translation>
    </message>
    <message>
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops halfway, or there is a hook.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète. Bon&#xa0;: elle se ferme d&apos;elle-même, et rien derrière ne peut la retenir. Mauvais&#xa0;: elle s&apos;arrête à mi-course, ou il y a un crochet.</translation>
    </message>
    <message>
        <source>Find the control outside the machinery space. Good: it is with the others, at one place or as few as possible, and can be reached with the space on fire.</source>
        <translation type="unfinished">Trouvez la commande hors du local de machines. Bon&#xa0;: elle est avec les autres, en un seul endroit ou le moins d&apos;endroits possible, et accessible quand le local est en feu.</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans take precedence over this catalogue; amendments after its edition have not been checked.</source>
        <translation type="unfinished">Les règles locales, l&apos;Administration du pavillon et ses plans approuvés priment sur ce catalogue&#xa0;; les amendements postérieurs à son édition n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>The English text in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">Le texte anglais de la base des traités du gouvernement néerlandais (BWBV0003264, avril 2015), et l&apos;impression française du texte français (arrêté du 23 novembre 1987, division 221), qui confirme chaque chiffre</translation>
    </message>
    <message>
        <source>Amendments after April 2015: nothing of MSC.421(98) has been seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations by IMO and classification societies.</source>
        <translation type="unfinished">Les amendements après avril 2015&#xa0;: de MSC.421(98), rien n&apos;a été vu&#xa0;; de MSC.550(108), en vigueur le 1er janvier 2026, seulement qu&apos;il renumérote II-2/9.6. Les interprétations de l&apos;OMI et des sociétés de classification.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead, A-0</source>
        <translation type="unfinished">Une porte dans une cloison A-60, A-30 ou A-15 satisfait à A-15&#xa0;; dans une cloison A-0, à A-0</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. The rule does not cover watertight doors; doors to the open deck have their own requirement.</source>
        <translation type="unfinished">Comparez la plaque de la porte à sa cloison&#xa0;: A-15 suffit dans A-60, A-30 et A-15. La règle ne vise pas les portes étanches&#xa0;; les portes donnant sur le pont découvert ont leur propre exigence.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead, solid or hollow steel or equal</source>
        <translation type="unfinished">Porte dans une cloison du type A&#xa0;: acier creux ou équivalent, entièrement rempli d&apos;isolant structurel approuvé&#xa0;; dans une cloison A-0, acier plein ou creux ou équivalent</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary, solid or hollow steel or equal</source>
        <translation type="unfinished">Porte dans un cloisonnement du type A&#xa0;: acier creux ou équivalent, entièrement rempli d&apos;isolant structurel approuvé&#xa0;; dans un cloisonnement A-0, acier plein ou creux ou équivalent</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but metal. The text gives no class for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Regardez vantail et cadre, et demandez l&apos;approbation de tout ce qui n&apos;est pas du métal. Le texte ne donne pas de classe pour une telle porte. Mauvais&#xa0;: bois ou plastiques sans approbation.</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but steel. The text gives no class for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Regardez vantail et cadre, et demandez l&apos;approbation de tout ce qui n&apos;est pas de l&apos;acier. Le texte ne donne pas de classe pour une telle porte. Mauvais&#xa0;: vitres dans un cadre, bois ou plastiques sans approbation.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no undercut limit are required here.</source>
        <translation type="unfinished">Demandez l&apos;approbation du matériau. Bon&#xa0;: métal, ou panneau incombustible approuvé. Mauvais&#xa0;: bois ou plastiques. Ni loquet ni limite de fente sous la porte ne sont exigés ici.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph requires this in a C&apos; boundary: n/a there.</source>
        <translation type="unfinished">Demandez l&apos;approbation du matériau. Bon&#xa0;: métal, ou panneau approuvé comme incombustible. Mauvais&#xa0;: bois ou plastiques. Aucun paragraphe ne l&apos;exige dans un cloisonnement C&apos;&#xa0;: s.o. dans ce cas.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. The text does not say whether such a door at a stairway must also close by itself: ask.</source>
        <translation type="unfinished">Bois dur, mesuré au chant du vantail&#xa0;: 1 3/4 pouce. Le texte ne dit pas si une telle porte donnant sur un escalier doit aussi se fermer d&apos;elle-même&#xa0;: demandez.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. The text does not say whether latch, undercut, frame and closing by itself apply to such a door: ask.</source>
        <translation type="unfinished">Bois dur, mesuré au chant du vantail&#xa0;: 45 mm. Le texte ne dit pas si loquet, fente sous la porte, cadre et fermeture d&apos;elle-même s&apos;appliquent à une telle porte&#xa0;: demandez.</translation>
    </message>
    <message>
        <source>One person can operate it from each side</source>
        <translation type="unfinished">Une seule personne peut la manœuvrer de chaque côté</translation>
    </message>
    <message>
        <source>Can one person operate it?</source>
        <translation type="unfinished">Une seule personne peut-elle la manœuvrer&#xa0;?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or someone on the far side.</source>
        <translation type="unfinished">Seul, de chaque côté&#xa0;: ouvrez-la et fermez-la. Bon&#xa0;: une main à la poignée et une épaule tout au plus. Mauvais&#xa0;: il faut deux personnes, un outil, ou quelqu&apos;un de l&apos;autre côté.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation, quand c&apos;est possible</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Portes de locaux de réunion, d&apos;entourages d&apos;escaliers, de coursives et analogues. Une porte de cabine n&apos;est pas exemptée. Si ce n&apos;est pas possible, dites pourquoi dans une remarque et répondez oui.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) names public spaces, stairway enclosures, corridors and the like; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) cite les locaux de réunion, les entourages d&apos;escaliers, les coursives et analogues&#xa0;; il ne dit pas si cette porte est visée.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Portes de locaux d&apos;habitation, escaliers, tours d&apos;escalier, passages et locaux de commande&#xa0;; une porte de cabine est exemptée. Si ce n&apos;est pas possible, dites pourquoi dans une remarque et répondez oui.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) names accommodation spaces, stairways, stairtowers, passageways and control spaces; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) cite les locaux d&apos;habitation, escaliers, tours d&apos;escalier, passages et locaux de commande&#xa0;; il ne dit pas si cette porte est visée.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side, in light and in darkness, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Comme moyen d&apos;évacuation&#xa0;: ouverte par une seule personne de chaque côté, de jour et dans le noir, d&apos;ouverture évidente et rapide, à poignées fixes</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where the hand expects it, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Fermez les yeux et ouvrez-la, de chaque côté. Bon&#xa0;: la poignée est là où la main l&apos;attend, fixe, et un seul geste l&apos;ouvre. Mauvais&#xa0;: poignée lâche, verrou caché, second geste.</translation>
    </message>
    <message>
        <source>As a means of escape it opens in the direction of escape</source>
        <translation type="unfinished">Comme moyen d&apos;évacuation, elle s&apos;ouvre dans le sens de l&apos;évacuation</translation>
    </message>
    <message>
        <source>Opens in the direction of escape?</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation&#xa0;?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. This rule does not say &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Placez-vous d&apos;où viennent les gens et poussez. Cette règle ne dit pas «&#xa0;quand c&apos;est possible&#xa0;». Les portes de cabines individuelles sont exemptées.</translation>
    </message>
    <message>
        <source>Ask who uses it when the ship is full. A door that a passenger may use in an emergency is not for crew only.</source>
        <translation type="unfinished">Demandez qui l&apos;utilise quand le navire est plein. Une porte qu&apos;un passager peut utiliser en cas d&apos;urgence n&apos;est pas réservée à l&apos;équipage.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; 28 where only crew use it.</source>
        <translation type="unfinished">Le passage libre, vantail complètement ouvert, à l&apos;endroit le plus étroit. 32 pouces&#xa0;; 28 là où seul l&apos;équipage l&apos;utilise.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew only.</source>
        <translation type="unfinished">Le passage libre, vantail complètement ouvert, à l&apos;endroit le plus étroit. 28 pouces si elle est réservée à l&apos;équipage.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, except a crash door or an easily forced device, marked on both sides</source>
        <translation type="unfinished">Pas de serrure sur une porte menant à l&apos;une des deux échappées exigées, sauf une porte enfonçable (crash door) ou un dispositif facile à forcer, marqué des deux côtés</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may have to meet the rules for stairway doors</source>
        <translation type="unfinished">Une porte extérieure qui donne sur un entourage d&apos;escalier peut avoir à satisfaire aux règles des portes d&apos;escalier</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; the text does not say whether 72.05-25(b)(9) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) permet qu&apos;une porte donnant sur le pont découvert soit en bois dur&#xa0;; le texte ne dit pas si 72.05-25(b)(9) s&apos;applique encore à une porte qui donne sur un escalier.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.435(c)(6) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) permet qu&apos;une porte donnant sur un pont exposé soit en bois dur&#xa0;; le texte ne dit pas si 116.435(c)(6) s&apos;applique encore à une porte qui donne sur un escalier.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, visible with the door open</source>
        <translation type="unfinished">La porte porte les lettres F.S.D. et un numéro, hauts d&apos;au moins 9,5 mm (3/8 in) sur plaque, 25,4 mm (1 in) au pochoir, visibles porte ouverte</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and visible with the door open?</source>
        <translation type="unfinished">F.S.D. et son numéro dessus, assez grands et visibles porte ouverte&#xa0;?</translation>
    </message>
    <message>
        <source>Open the door, then look: F.S.D. and the number in the register. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, missing, painted over. A door of a single room is exempt.</source>
        <translation type="unfinished">Ouvrez la porte, puis regardez&#xa0;: F.S.D. et le numéro du registre. Lettres de 3/8 pouce sur plaque, de 1 pouce au pochoir. Mauvais&#xa0;: cachés par le vantail ouvert, manquants, recouverts de peinture. Une porte de local individuel est exemptée.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts normally locked doors, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) exempte les portes normalement verrouillées, 78.47-35(a) les portes de locaux individuels&#xa0;: ce ne sont pas les mêmes portes.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not give the number berthed.</source>
        <translation type="unfinished">Cela oblige un navire de plus de 600 passagers ou de plus de 49 passagers avec couchette (46 CFR 116.438(a))&#xa0;; le registre ne donne pas le nombre de passagers avec couchette.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when the system fails?</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte, et se ferme d&apos;elle-même quand le système fait défaut&#xa0;?</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when its power fails?</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte, et se ferme d&apos;elle-même quand son alimentation fait défaut&#xa0;?</translation>
    </message>
    <message>
        <source>No hook or other permanent means of holding it open that the control station cannot release</source>
        <translation type="unfinished">Ni crochet ni autre moyen permanent de la maintenir ouverte que le poste de sécurité ne puisse déclencher</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that the control station releases, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Regardez derrière le vantail ouvert, sur la cloison et à son pied. Bon&#xa0;: un aimant que le poste de sécurité déclenche, ou rien. Mauvais&#xa0;: crochet, chaîne, cale fixée au pont.</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station releases is allowed, and a normally closed or locked door is not exempt.</source>
        <translation type="unfinished">Regardez derrière le vantail ouvert, sur la cloison et à son pied. Même un crochet que le poste de sécurité déclenche n&apos;est pas permis, et une porte normalement fermée ou verrouillée n&apos;est pas exemptée.</translation>
    </message>
    <message>
        <source>Each leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Chaque vantail d&apos;une porte à deux vantaux se ferme et s&apos;enclenche seul</translation>
    </message>
    <message>
        <source>Does each leaf close and latch on its own?</source>
        <translation type="unfinished">Chaque vantail se ferme-t-il et s&apos;enclenche-t-il seul&#xa0;?</translation>
    </message>
    <message>
        <source>The release system engages the latch of a double-swing door</source>
        <translation type="unfinished">Le système de déclenchement enclenche le loquet d&apos;une porte va-et-vient</translation>
    </message>
    <message>
        <source>Does its latch engage on release?</source>
        <translation type="unfinished">Son loquet s&apos;enclenche-t-il au déclenchement&#xa0;?</translation>
    </message>
    <message>
        <source>Release it and watch the latch engage by itself. Such a door is allowed only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Déclenchez-la et voyez le loquet s&apos;enclencher de lui-même. Une telle porte n&apos;est permise que là où le va-et-vient est permis pour l&apos;usage du local.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has its own requirement.</source>
        <translation type="unfinished">Le passage libre, vantail complètement ouvert, à l&apos;endroit le plus étroit. 28 pouces toujours&#xa0;; davantage si plus de dix personnes sont desservies, ce qui a sa propre exigence.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in that order</source>
        <translation type="unfinished">Si un vantail doit se fermer le premier, quelque chose les fait se fermer dans cet ordre</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it works both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Fermez d&apos;abord un vantail, puis l&apos;autre&#xa0;; puis dans l&apos;ordre inverse. Bon&#xa0;: cela marche dans les deux sens. Dans un seul sens&#xa0;: le second vantail a besoin de sa propre feuillure.</translation>
    </message>
    <message>
        <source>Does the handle retract the latch?</source>
        <translation type="unfinished">La poignée fait-elle rentrer le loquet&#xa0;?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not retract the bolt.</source>
        <translation type="unfinished">Fermez-la, puis ouvrez-la par sa poignée&#xa0;: d&apos;un côté, puis de l&apos;autre. Mauvais&#xa0;: un côté sans poignée, ou une poignée qui ne fait pas rentrer le pêne.</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Porte ouverte et tenue, mesurez de combien le pêne dépasse du bord. 3/4 pouce&#xa0;; type B 3/8 pouce.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (the text adds: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Course du pêne d&apos;au moins 20 mm (le texte ajoute&#xa0;: 0,75 in) dans un cloisonnement du type A, 9,5 mm (0,375 in) dans un cloisonnement du type B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. A class: the text gives 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Porte ouverte et tenue, mesurez de combien le pêne dépasse du bord. Type A&#xa0;: le texte donne 20 mm et 0,75 pouce, ce qui fait 19,05 mm. Type B&#xa0;: 9,5 mm.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">L&apos;endroit le plus large sous la porte fermée, jusqu&apos;au seuil ou au revêtement de pont. 1/2 pouce&#xa0;; type B 1 pouce. Le linoléum et analogues comptent comme revêtement de pont.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">L&apos;endroit le plus large sous la porte fermée, jusqu&apos;au seuil ou au revêtement de pont. 1/2 pouce&#xa0;; type B 25 mm ou 1 pouce. Le linoléum et analogues comptent comme revêtement de pont.</translation>
    </message>
    <message>
        <source>Free of rugs and carpets running through?</source>
        <translation type="unfinished">Sans tapis ni moquette qui traverse&#xa0;?</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Jeu entre deux vantaux indépendants, et en haut et sur les côtés d&apos;une porte va-et-vient, d&apos;au plus 3,175 mm (1/8 in)</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler gauge between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Les deux vantaux fermés&#xa0;: une jauge d&apos;épaisseur entre eux&#xa0;; sur une porte va-et-vient, aussi en haut et sur les côtés. 1/8 pouce à l&apos;endroit le plus large.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Jeu entre deux vantaux indépendants, et en haut et sur les côtés d&apos;une porte va-et-vient, d&apos;au plus 3,2 mm</translation>
    </message>
    <message>
        <source>Look over the whole leaf, low down as well. Good: no grille or louver. Bad: one anywhere in it.</source>
        <translation type="unfinished">Examinez tout le vantail, en bas aussi. Bon&#xa0;: ni grille ni persienne. Mauvais&#xa0;: une, où que ce soit.</translation>
    </message>
    <message>
        <source>Net area of a vent grille or louver in the door of a B-class bulkhead at most 0.186 m² (2 sq ft)</source>
        <translation type="unfinished">Surface nette d&apos;une grille d&apos;aération ou persienne dans la porte d&apos;une cloison du type B d&apos;au plus 0,186 m² (2 sq ft)</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K says nothing about grilles in such doors.</source>
        <translation type="unfinished">Additionnez les fentes ouvertes de la grille, sans son cadre. 2 pieds carrés. Pas de grille&#xa0;: 0. Le sous-chapitre K ne dit rien des grilles dans de telles portes.</translation>
    </message>
    <message>
        <source>A vent grille or louver only in the lower half of the door of a B-class bulkhead</source>
        <translation type="unfinished">Une grille d&apos;aération ou persienne seulement dans la moitié inférieure de la porte d&apos;une cloison du type B</translation>
    </message>
    <message>
        <source>Is the grille only in the lower half?</source>
        <translation type="unfinished">La grille est-elle seulement dans la moitié inférieure&#xa0;?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: n/a.</source>
        <translation type="unfinished">Comparez son bord supérieur au milieu du vantail. Pas de grille&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>A double-swing door only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Une porte va-et-vient seulement là où le va-et-vient est permis pour l&apos;usage du local</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is used for. Where double swing is permitted its latch may normally be idle, but the door must have one.</source>
        <translation type="unfinished">Demandez l&apos;approbation, ou voyez à quoi sert le local. Là où le va-et-vient est permis, son loquet peut normalement être inactif, mais la porte doit en avoir un.</translation>
    </message>
    <message>
        <source>No double-swing door, except between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Pas de porte va-et-vient, sauf entre un local de préparation des aliments et un réfectoire ou une salle à manger</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, hinged or pivoted steel cover with a bullet catch or the like, easy to operate and self-closing</source>
        <translation type="unfinished">Un orifice de manche, s&apos;il existe&#xa0;: coin inférieur opposé à la charnière, environ 152 × 152 mm, volet d&apos;acier articulé ou pivotant à loqueteau à bille ou analogue, facile à manœuvrer et à fermeture automatique</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 × 152 mm, cover shuts by itself?</source>
        <translation type="unfinished">Orifice de manche dans le coin inférieur opposé à la charnière, environ 152 × 152 mm, le volet se ferme de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, self-closing steel cover</source>
        <translation type="unfinished">Un orifice de manche, s&apos;il existe&#xa0;: coin inférieur opposé à la charnière, environ 152 × 152 mm, volet d&apos;acier à fermeture automatique</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is vertical</source>
        <translation type="unfinished">Une porte dans un local d&apos;habitation, un escalier, une tour d&apos;escalier ou une coursive est verticale</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) requires one?</source>
        <translation type="unfinished">Est-ce une porte verticale, là où (b)(1) l&apos;exige&#xa0;?</translation>
    </message>
    <message>
        <source>This one is in a deck. Between machinery, stores or other crew spaces: n/a. Over a stair: both paragraphs apply, and you decide.</source>
        <translation type="unfinished">Celle-ci est dans un pont. Entre locaux de machines, magasins ou autres locaux de l&apos;équipage&#xa0;: s.o. Au-dessus d&apos;un escalier&#xa0;: les deux paragraphes s&apos;appliquent, et vous décidez.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) requires vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither overrides the other.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) exige des portes verticales aux escaliers, (c)(7)(iii) parle de portes dans des ponts aussi larges que l&apos;escalier&#xa0;: aucun ne l&apos;emporte sur l&apos;autre.</translation>
    </message>
    <message>
        <source>A door in a deck leads only to a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Une porte dans un pont ne mène qu&apos;à un local que seul l&apos;équipage peut atteindre, et seul l&apos;équipage l&apos;utilise</translation>
    </message>
    <message>
        <source>Two conditions: only crew can get to the space, and only crew use the door. Bad: a passenger could get to it, locked or not.</source>
        <translation type="unfinished">Deux conditions&#xa0;: seul l&apos;équipage peut arriver au local, et seul l&apos;équipage utilise la porte. Mauvais&#xa0;: un passager pourrait y arriver, verrouillée ou non.</translation>
    </message>
    <message>
        <source>Clear the stair, then let it go from fully open and half open. Good: it shuts fully each time. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Dégagez l&apos;escalier, puis lâchez-la de l&apos;ouverture complète et de mi-ouverture. Bon&#xa0;: elle se ferme complètement chaque fois. La partie sur les 3,5 degrés ne peut pas être vérifiée navire droit.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, releases at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">Un dispositif de retenue d&apos;une porte dans un pont, s&apos;il existe, se déclenche à la porte, sur un signal d&apos;un local de commande, et en cas de perte d&apos;alimentation</translation>
    </message>
    <message>
        <source>Releases at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">Se déclenche à la porte, du local de commande et à la perte d&apos;alimentation&#xa0;?</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it releases. The greatest force counts.</source>
        <translation type="unfinished">Accrochez un peson au loquet et tirez jusqu&apos;à ce qu&apos;il se libère. La force maximale compte.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure of 0.07 kPa (0.01 psi) from below</source>
        <translation type="unfinished">Le loquet d&apos;une porte dans un pont la tient fermée contre une pression de 0,07 kPa (0,01 psi) par-dessous</translation>
    </message>
    <message>
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint counts as glass.</source>
        <translation type="unfinished">Examinez tout le vantail, les deux faces, le verre recouvert d&apos;un panneau aussi. Une vitre derrière un cache ou sous la peinture compte comme verre.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m² (100 sq in)</source>
        <translation type="unfinished">Verre armé dans une porte du type A d&apos;au plus 0,0645 m² (100 sq in)</translation>
    </message>
    <message>
        <source>The visible glass, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">Le verre visible, hauteur par largeur. 100 pouces carrés. Pas de verre&#xa0;: 0. Les portes donnant sur le pont découvert n&apos;ont pas cette limite.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m²</source>
        <translation type="unfinished">Verre armé dans une porte du type A d&apos;au plus 0,065 m²</translation>
    </message>
    <message>
        <source>Is its glass wired, where it opens onto an embarkation or lowering place?</source>
        <translation type="unfinished">Son verre est-il armé, si elle s&apos;ouvre sur un lieu d&apos;embarquement ou de mise à l&apos;eau&#xa0;?</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is required: strands horizontal, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Verre à fils simples, là où un verre armé est exigé&#xa0;: fils horizontaux, espacés d&apos;au plus 50,8 mm (2 in)</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: horizontal. Bad: vertical. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">D&apos;un fil à l&apos;autre, au plus large. 2 pouces. Bon&#xa0;: horizontaux. Mauvais&#xa0;: verticaux. Verre à treillis métallique&#xa0;: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary requires</source>
        <translation type="unfinished">Les fenêtres de la porte suivent les règles des fenêtres&#xa0;: verre trempé ou feuilleté d&apos;au moins 6,5 mm (0,25 in) d&apos;épaisseur, encadré et muni d&apos;un volet comme l&apos;exige son cloisonnement</translation>
    </message>
    <message>
        <source>Are its windows as required in its boundary?</source>
        <translation type="unfinished">Ses fenêtres sont-elles comme l&apos;exige son cloisonnement&#xa0;?</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) covers windows in doors, 116.435(c)(9) and (10) wired glass; the text does not say which takes precedence.</source>
        <translation type="unfinished">46 CFR 116.433(f) vise les fenêtres des portes, 116.435(c)(9) et (10) le verre armé&#xa0;; le texte ne dit pas lequel prime.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where allowed on the bulkhead</source>
        <translation type="unfinished">Placage combustible seulement tel et là où il est permis sur la cloison</translation>
    </message>
    <message>
        <source>Free of veneer not allowed on its bulkhead?</source>
        <translation type="unfinished">Sans placage non permis sur sa cloison&#xa0;?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than is allowed on the bulkhead beside it. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Comparez vantail et cloison. Bon&#xa0;: pas de placage, ou pas plus qu&apos;il n&apos;est permis sur la cloison voisine. Mauvais&#xa0;: bois ou stratifié sur une porte dont la cloison n&apos;en a pas.</translation>
    </message>
    <message>
        <source>The fire door release system meets SOLAS 74 II-2/30.4.3</source>
        <translation type="unfinished">Le système de déclenchement des portes d&apos;incendie satisfait à SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the 2015 edition have not been checked. Later rules whose headings touch these parts but whose text has not been read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may remain while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 applies instead (116.400). A vessel existing before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">L&apos;Officer in Charge, Marine Inspection (chef de l&apos;inspection maritime des garde-côtes), décide de ce qui s&apos;applique à un navire des États-Unis&#xa0;; les changements après l&apos;édition de 2015 n&apos;ont pas été vérifiés. Règles ultérieures dont les titres touchent ces parties mais dont le texte n&apos;a pas été lu&#xa0;: 81 FR 48219 (22 juillet 2016), 89 FR 76676 (18 septembre 2024) et, pour 46 CFR 111.99-3, 88 FR 16365 (16 mars 2023). Le sous-chapitre H vise les navires d&apos;une jauge brute de 100 et plus, ou de plus de 150 passagers, ou en voyages internationaux, commandés le 26 mai 1965 ou après&#xa0;; ce qui a été approuvé avant peut rester tant que c&apos;est maintenu en bon état (46 CFR 72.05-1, 72.05-90). Le sous-chapitre K vise les navires de plus de 150 passagers, ou de 50 à 150 passagers avec couchette&#xa0;; avec plus de 150 passagers avec couchette, 72.05 s&apos;applique à la place (116.400). Un navire existant avant le 11 mars 1996 garde les règles du 10 mars 1996, ou peut choisir celles-ci à la place (116.115).</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Navires à passagers des États-Unis sous le sous-chapitre H&#xa0;: d&apos;une jauge brute de 100 et plus, de plus de 150 passagers, ou en voyages internationaux&#xa0;; commandés le 26 mai 1965 ou après</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10, paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">L&apos;édition annuelle de 2015, chaque section sur sa page d&apos;une copie publique (github.com/18F/allregs)&#xa0;; de 72.05-10, les paragraphes (a) à (g) et les tableaux (d) et (e)</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Navires à passagers des États-Unis sous le sous-chapitre K&#xa0;: de plus de 150 passagers, ou de 50 à 150 passagers avec couchette&#xa0;; construits le 11 mars 1996 ou après</translation>
    </message>
    <message>
        <source>public rooms under 50 m² with restricted-fire-risk furnishings</source>
        <translation type="unfinished">locaux de réunion de moins de 50 m² à mobilier présentant un risque limité d&apos;incendie</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">locaux de réunion de 50 m² ou plus à mobilier présentant un risque limité d&apos;incendie</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m² (no flammable liquids)</source>
        <translation type="unfinished">placards isolés et petits magasins de moins de 4 m² (sans liquides inflammables)</translation>
    </message>
    <message>
        <source>drying room up to 4 m²</source>
        <translation type="unfinished">séchoir jusqu&apos;à 4 m²</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with ordinary furnishings</source>
        <translation type="unfinished">locaux de réunion de 50 m² ou plus à mobilier ordinaire</translation>
    </message>
    <message>
        <source>drying room above 4 m²</source>
        <translation type="unfinished">séchoir de plus de 4 m²</translation>
    </message>
    <message>
        <source>lockers and stores above 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">placards et magasins de plus de 4 m², non prévus pour des liquides inflammables</translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), but not corridors</source>
        <translation type="unfinished">cabines, locaux de réunion, bureaux, toilettes, infirmeries, salles de jeux et de loisirs, offices sans appareils de cuisson (règle 3.1), mais pas les coursives</translation>
    </message>
    <message>
        <source>lockers and stores under 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">placards et magasins de moins de 4 m², non prévus pour des liquides inflammables</translation>
    </message>
    <message>
        <source>lockers and stores of 4 m² or more</source>
        <translation type="unfinished">placards et magasins de 4 m² ou plus</translation>
    </message>
    <message>
        <source>fire-resistant furnishings only and fire load up to 15 kg/m²</source>
        <translation type="unfinished">mobilier résistant au feu seulement et charge d&apos;incendie jusqu&apos;à 15 kg/m²</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m² or less</source>
        <translation type="unfinished">Habitation à risque élevé, 50 m² ou moins</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m² (limit 37.5 kg/m²)</source>
        <translation type="unfinished">charge d&apos;incendie supérieure à 15 kg/m² (limite 37,5 kg/m²)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m² that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">placard à matériel de nettoyage de moins de 5 m² qui contient plus que du matériel (sans liquides inflammables)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m²</source>
        <translation type="unfinished">Habitation à risque élevé, plus de 50 m²</translation>
    </message>
    <message>
        <source>pantries and stores with flammable liquids or of 5 m² or more</source>
        <translation type="unfinished">offices et magasins contenant des liquides inflammables ou de 5 m² ou plus</translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m² of combustible storage</source>
        <translation type="unfinished">locaux de pompes, ventilateurs, climatisation, appareil à gouverner et analogues avec au plus 2,5 kg/m² de stockage combustible</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be omitted if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Locaux voisins de même numéro de catégorie&#xa0;: la cloison ou le pont peut être omis si l&apos;Administration le juge inutile (p. ex. cuisine et ses propres offices). Une cuisine et un local de machines exigent tout de même un cloisonnement entre eux, bien qu&apos;ils soient tous deux de catégorie 12.</translation>
    </message>
    <message>
        <source>Public toilets wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Toilettes communes entièrement à l&apos;intérieur d&apos;un entourage d&apos;escalier&#xa0;: leur cloison à l&apos;intérieur de l&apos;entourage peut être du type B.</translation>
    </message>
    <message>
        <source>Insulation may be omitted if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">L&apos;isolation peut être omise si, de l&apos;avis de l&apos;Administration, le local de machines de catégorie 7 présente un risque faible ou nul d&apos;incendie.</translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m² or more.</source>
        <translation type="unfinished">Avec la méthode IIIC, des cloisons B-0 sont exigées entre locaux ou groupes de locaux de 50 m² ou plus.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m² (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Soutes à combustible, locaux de machines auxiliaires et espaces vides dont la charge d&apos;incendie dépasse 2,5 kg/m² (0,5 lb/sq ft) exigent au moins des cloisonnements A-0.</translation>
    </message>
    <message>
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time requirement (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Incombustible, continu avec la structure du navire (ou s&apos;arrêtant à un plafond continu du type B ou C&apos;) et étanche à la fumée&#xa0;; sans exigence d&apos;isolation ni de durée de tenue aux flammes (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>All twelve doors. The number of faults is not given. Endanger no one, confirm each caution truthfully, and score 80 of 100 points to pass.</source>
        <translation type="unfinished">Les douze portes. Le nombre de défauts n&apos;est pas donné. Ne mettez personne en danger, confirmez chaque précaution selon la vérité, et marquez 80 points sur 100 pour réussir.</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order; the other is far from it.</source>
        <translation type="unfinished">Deux portes d&apos;escalier maintenues ouvertes par des aimants. Déclenchez chacune et marquez quand son vantail commence à bouger et quand il est fermé. L&apos;une est en ordre&#xa0;; l&apos;autre en est loin.</translation>
    </message>
    <message>
        <source>Someone comes round the corner</source>
        <translation type="unfinished">Quelqu&apos;un tourne le coin</translation>
    </message>
    <message>
        <source>A walkdown of eight doors</source>
        <translation type="unfinished">Une tournée de huit portes</translation>
    </message>
    <message>
        <source>Every kind of door in one walkdown. There are six faults among them; some show only on the stopwatch. Not every door has one.</source>
        <translation type="unfinished">Tous les genres de portes en une tournée. Elles cachent six défauts&#xa0;; certains n&apos;apparaissent qu&apos;au chronomètre. Toutes les portes n&apos;en ont pas.</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, and the whole travel. Measure how far each re-opens on contact. Look into the pockets.</source>
        <translation type="unfinished">Trois portes motorisées. Chronométrez l&apos;alarme avant que le vantail bouge, et toute la course. Mesurez de combien chacune se rouvre au contact. Regardez dans les logements.</translation>
    </message>
    <message>
        <source>Four hinged doors held open by magnets. Each must release from both sides and from the control station, shut in time and latch. Check the path before you release anything.</source>
        <translation type="unfinished">Quatre portes à charnières maintenues ouvertes par des aimants. Chacune doit se déclencher des deux côtés et du poste de sécurité, se fermer à temps et s&apos;enclencher. Vérifiez la course avant de déclencher quoi que ce soit.</translation>
    </message>
    <message>
        <source>Double doors must close in the right order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Les portes à deux vantaux doivent se fermer dans le bon ordre, et la porte va-et-vient de la cuisine doit s&apos;immobiliser fermée. Deux d&apos;entre elles ont un défaut.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as the door can work with</source>
        <translation type="unfinished">Jeu entre vantail et cadre aussi petit que la porte le permet pour fonctionner</translation>
    </message>
    <message>
        <source>Shut it with the machinery space fans running. Feel for a draught all round the edge, and look for light with a torch. Good: none anywhere. Space not of category A: n/a.</source>
        <translation type="unfinished">Fermez-la, les ventilateurs du local de machines en marche. Cherchez un courant d&apos;air tout autour du bord, et de la lumière avec une lampe torche. Bon&#xa0;: nulle part. Local hors catégorie A&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, other than day boats: of 24 m or more, or under 24 m with more than 15 gross tons and more than 36 berthed passengers. SOLAS II-2 binds them too (s. 102(1)); berths and voyage decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Navires à passagers canadiens sans certificats de convention, autres que les bateaux de jour&#xa0;: de 24 m ou plus, ou de moins de 24 m avec une jauge brute de plus de 15 et plus de 36 passagers avec couchette. SOLAS II-2 les oblige aussi (art. 102(1))&#xa0;; couchettes et voyage décident lesquels comptent comme navires de plus de 36 passagers (art. 102(3))</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date: for the ship&apos;s own maintenance, not for an inspector&apos;s test</source>
        <translation type="unfinished">Tout navire, quelle que soit sa date&#xa0;: pour l&apos;entretien propre du navire, non pour le test d&apos;un inspecteur</translation>
    </message>
    <message>
        <source>At every fire drill the fire doors in the drill area are tested</source>
        <translation type="unfinished">À chaque exercice d&apos;incendie, les portes d&apos;incendie de la zone de l&apos;exercice sont testées</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure need not be A class, even where other exterior doors must be</source>
        <translation type="unfinished">Une porte extérieure d&apos;un entourage d&apos;escalier n&apos;a pas à être du type A, même là où d&apos;autres portes extérieures le doivent</translation>
    </message>
    <message>
        <source>Try the handle before it is unlocked. Locked: yes, and what is required of doors in use does not apply. Open or unlocked: no, and it is graded like any other door.</source>
        <translation type="unfinished">Essayez la poignée avant qu&apos;on la déverrouille. Verrouillée&#xa0;: oui, et ce qui est exigé des portes en usage ne s&apos;applique pas. Ouverte ou déverrouillée&#xa0;: non, et elle est évaluée comme toute autre porte.</translation>
    </message>
    <message>
        <source>A normally latched escape door of a public space has a quick release across at least half the leaf, with no device that can lock the release</source>
        <translation type="unfinished">Une porte d&apos;évacuation d&apos;un local de réunion, normalement enclenchée, a un déblocage rapide sur au moins la moitié du vantail, sans dispositif qui puisse l&apos;empêcher d&apos;être actionné</translation>
    </message>
    <message>
        <source>Quick release across half the leaf, not lockable?</source>
        <translation type="unfinished">Déblocage rapide sur la moitié du vantail, non verrouillable&#xa0;?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then close this door from the safety centre and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Puis fermez cette porte depuis le centre de sécurité et voyez sa lampe changer. Bon&#xa0;: les deux marchent comme au poste de sécurité. Mauvais&#xa0;: elle n&apos;est pas au tableau.</translation>
    </message>
    <message>
        <source>Agree it with the engineers. Post a lookout on each side of every door that will move. Then have the supply to this door&apos;s control cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Convenez-en avec les mécaniciens. Postez un surveillant de chaque côté de chaque porte qui va bouger. Puis faites couper l&apos;alimentation de la commande de cette porte. Bon&#xa0;: elle se ferme d&apos;elle-même. Mauvais&#xa0;: elle reste ouverte.</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full cycles without the main supply. To test it, first post a lookout on each side and agree it with the control station: this runs the accumulator down.</source>
        <translation type="unfinished">Demandez le dernier relevé de dix cycles complets sans l&apos;alimentation principale. Pour le tester, postez d&apos;abord un surveillant de chaque côté et convenez-en avec le poste de sécurité&#xa0;: cet essai vide l&apos;accumulateur.</translation>
    </message>
    <message>
        <source>Check the drawing of the control system. Or post a lookout on each side of every door that will move, isolate this one and operate the others. Good: they move as before. Bad: they do not move.</source>
        <translation type="unfinished">Vérifiez le plan du système de commande. Ou bien postez un surveillant de chaque côté de chaque porte qui va bouger, isolez celle-ci et actionnez les autres. Bon&#xa0;: elles bougent comme avant. Mauvais&#xa0;: elles ne bougent pas.</translation>
    </message>
    <message>
        <source>On remote release the alarm sounds 5 to 10 s before the leaf moves</source>
        <translation type="unfinished">Au déclenchement à distance, l&apos;alarme sonne 5 à 10 s avant que le vantail bouge</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Release from the control station: time from the first sound of the alarm to the leaf&apos;s first movement. Bad: it moves at once, or much later.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Déclenchez depuis le poste de sécurité&#xa0;: chronométrez du premier son de l&apos;alarme au premier mouvement du vantail. Mauvais&#xa0;: il bouge aussitôt, ou beaucoup plus tard.</translation>
    </message>
    <message>
        <source>Are there approval documents for the control system?</source>
        <translation type="unfinished">Y a-t-il des documents d&apos;approbation pour le système de commande&#xa0;?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it with its supply on, then with it cut. Good: it shuts firmly each time. Doors of escape trunks too. Space not of category A: n/a.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte qui va bouger. Déclenchez-la avec son alimentation, puis alimentation coupée. Bon&#xa0;: elle se ferme à fond chaque fois. Portes de puits d&apos;échappée aussi. Local hors catégorie A&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>A door of an escape trunk closes by itself</source>
        <translation type="unfinished">Une porte de puits d&apos;échappée se ferme d&apos;elle-même</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar, or something holds it open. The text gives no angle. Not a door of an escape trunk: n/a.</source>
        <translation type="unfinished">Lâchez-la de l&apos;ouverture complète, de mi-ouverture et d&apos;un petit angle. Bon&#xa0;: elle se ferme complètement chaque fois. Mauvais&#xa0;: elle reste entrouverte, ou quelque chose la tient ouverte. Le texte ne donne pas d&apos;angle. Pas une porte de puits d&apos;échappée&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>the text requires it of the escape from a machinery space of category A; the register does not show that this trunk belongs to one</source>
        <translation type="unfinished">le texte l&apos;exige de l&apos;échappée d&apos;un local de machines de la catégorie A&#xa0;; le registre ne montre pas que ce puits en dépend</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it by remote control, then with its supply cut. Good: it is released each time. Space not of category A, or no hold-back: n/a.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte qui va bouger. Déclenchez-la à distance, puis alimentation coupée. Bon&#xa0;: elle est déclenchée chaque fois. Local hors catégorie A, ou pas de dispositif de retenue&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built on or after 1 July 2002; part E (condition and maintenance plan) applies to ships of any date</source>
        <translation type="unfinished">Navires à passagers SOLAS construits le 1er juillet 2002 ou après&#xa0;; la partie E (état et plan d&apos;entretien) s&apos;applique aux navires de toute date</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then exempt from 72.05-25(b)(1) to (7)</source>
        <translation type="unfinished">Une porte donnant sur le pont découvert dans une cloison du type A peut être en bois dur, d&apos;au moins 44,5 mm (1 3/4 in) d&apos;épaisseur, et est alors exemptée de 72.05-25(b)(1) à (7)</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes. Any other space: no. Neither answer is a fault: it decides what else applies to the door.</source>
        <translation type="unfinished">Consultez le plan de lutte contre l&apos;incendie, ou entrez. Derrière, un entourage d&apos;escalier&#xa0;: oui. Tout autre local&#xa0;: non. Aucune des deux réponses n&apos;est un défaut&#xa0;: cela décide de ce qui s&apos;applique encore à la porte.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test from the control station, at the door, and with the system off: it must shut each time. Not required of a normally closed door. Hooks: separate check.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte qui va bouger. Testez depuis le poste de sécurité, à la porte, et système coupé&#xa0;: elle doit se fermer chaque fois. Pas exigé d&apos;une porte normalement fermée. Crochets&#xa0;: vérification à part.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test it from the control station, at the door, and with its power off: it must shut each time. No hold-back: n/a. Hooks are a separate check.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte qui va bouger. Testez-la depuis le poste de sécurité, à la porte, et alimentation coupée&#xa0;: elle doit se fermer chaque fois. Pas de dispositif de retenue&#xa0;: s.o. Les crochets sont une vérification à part.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served requires; for a zone stair on the embarkation deck, 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Une porte donnant sur un escalier est aussi large que l&apos;exige le nombre de personnes desservies&#xa0;; pour un escalier de tranche sur le pont d&apos;embarquement, 1118 mm (44 in) de chaque bord</translation>
    </message>
    <message>
        <source>The leaves of a double door can shut in either order</source>
        <translation type="unfinished">Les vantaux d&apos;une porte à deux vantaux peuvent se fermer dans n&apos;importe quel ordre</translation>
    </message>
    <message>
        <source>Can the leaves shut in either order?</source>
        <translation type="unfinished">Les vantaux peuvent-ils se fermer dans n&apos;importe quel ordre&#xa0;?</translation>
    </message>
    <message>
        <source>Keep everyone off the stair. Keep hands and feet away from the edge of the door. Time it from the first movement to fully shut.</source>
        <translation type="unfinished">Tenez tout le monde hors de l&apos;escalier. Gardez mains et pieds loin du bord de la porte. Chronométrez-la du premier mouvement à la fermeture complète.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up.</source>
        <translation type="unfinished">Que personne ne reste sous la porte. Regardez la cloison et le surbau à côté de la porte ouverte. Bon&#xa0;: ni crochet, ni chaîne, ni goupille qui la tienne levée.</translation>
    </message>
    <message>
        <source>First clear the stair and post a lookout on each side of every door that will move. Test it at the door, from the control space, and with its power off: it must shut each time. No hold-back fitted: n/a.</source>
        <translation type="unfinished">Dégagez d&apos;abord l&apos;escalier et postez un surveillant de chaque côté de chaque porte qui va bouger. Testez-la à la porte, du local de commande, et alimentation coupée&#xa0;: elle doit se fermer chaque fois. Pas de dispositif de retenue monté&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts.</source>
        <translation type="unfinished">Que personne ne reste sous la porte. Tirez avec un peson jusqu&apos;à ce qu&apos;elle soit ouverte à la largeur de l&apos;escalier. La force maximale en chemin compte.</translation>
    </message>
    <message>
        <source>A class: steel frame; an internal window also has an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. In B class a laboratory-listed fire window is enough.</source>
        <translation type="unfinished">Type A&#xa0;: cadre d&apos;acier&#xa0;; une fenêtre intérieure a aussi un volet isolé. B-15&#xa0;: armée, et un volet à lien fusible&#xa0;; B-0&#xa0;: armée. Dans le type B, une fenêtre coupe-feu homologuée par un laboratoire suffit.</translation>
    </message>
    <message>
        <source>Along the whole sill, with a torch and underfoot. Good: complete, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">Sur toute la longueur du seuil, avec une lampe torche et au pied. Bon&#xa0;: complet, plat et ferme. Mauvais&#xa0;: un morceau lâche, tordu ou manquant où le pied peut se prendre.</translation>
    </message>
    <message>
        <source>Never put a hand into the pocket while the door can move. Look in with a torch. Good: clear to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Ne mettez jamais la main dans le logement du vantail tant que la porte peut bouger. Regardez-y avec une lampe torche. Bon&#xa0;: dégagé jusqu&apos;au fond. Mauvais&#xa0;: saleté, détritus, matériel entreposé.</translation>
    </message>
    <message>
        <source>Two doors at rest. Look at both sides of each, and at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Deux portes au repos. Regardez les deux côtés de chacune, et tout ce qui vous est demandé. Quelque chose n&apos;est pas en ordre.</translation>
    </message>
    <message>
        <source>No hold-back hooks</source>
        <translation type="unfinished">Aucun crochet de retenue</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: any hook, cabin hook or eye plate with signs of use, even one that the wheelhouse can release.</source>
        <translation type="unfinished">Regardez derrière la porte ouverte, sur la cloison, le vantail et le pont. Mauvais&#xa0;: tout crochet, crochet de cabine ou piton portant des traces d&apos;usage, même un que la timonerie peut déclencher.</translation>
    </message>
    <message>
        <source>the text names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">le texte cite les escaliers, les locaux de réunion et les cloisons de tranche&#xa0;; le registre ne dit pas si cette porte est dans un local de réunion</translation>
    </message>
    <message>
        <source>9.4.1.1 speaks of A-class divisions; this door is A class, its boundary is not</source>
        <translation type="unfinished">9.4.1.1 vise les cloisonnements du type A&#xa0;; cette porte est du type A, son cloisonnement ne l&apos;est pas</translation>
    </message>
    <message>
        <source>9.4.1.2.2 speaks of cabin doors in B-class divisions; the class of this boundary is not known</source>
        <translation type="unfinished">9.4.1.2.2 vise les portes de cabine dans les cloisonnements du type B&#xa0;; la classe de ce cloisonnement n&apos;est pas connue</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked with a key held by an officer: n/a.</source>
        <translation type="unfinished">Bon&#xa0;: pas de serrure&#xa0;; ou une serrure facile à forcer, avec un avis clair et durable des deux côtés. Porte extérieure de rouf, fermée à clé par une clé que détient un officier&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(8) exempts an outside door of a deckhouse that is locked with a key held by an officer; the register does not say whether this is one.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(8) exempte une porte extérieure de rouf, fermée à clé par une clé que détient un officier&#xa0;; le registre ne dit pas si c&apos;en est une.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.438(a) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) permet qu&apos;une porte donnant sur un pont exposé soit en bois dur&#xa0;; le texte ne dit pas si 116.438(a) s&apos;applique encore à une porte qui donne sur un escalier.</translation>
    </message>
    <message>
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone.</source>
        <translation type="unfinished">Regardez le long du bord de chaque vitre, sur les deux faces. Bon&#xa0;: du métal tout autour. Mauvais&#xa0;: bois, mastic ou caoutchouc seul.</translation>
    </message>
    <message>
        <source>A window in a door next to an embarkation station, an escape route or survival craft is A class or has steel shutters that are operated from outside</source>
        <translation type="unfinished">Une fenêtre dans une porte à côté d&apos;un poste d&apos;embarquement, d&apos;une échappée ou d&apos;embarcations ou radeaux de sauvetage est du type A ou a des volets d&apos;acier manœuvrés de l&apos;extérieur</translation>
    </message>
    <message>
        <source>Next to embarkation, escape route or survival craft: windows A class, or steel shutters?</source>
        <translation type="unfinished">À côté d&apos;embarquement, échappée, embarcation ou radeau de sauvetage&#xa0;: fenêtres du type A, ou volets d&apos;acier&#xa0;?</translation>
    </message>
    <message>
        <source>9.4.1.1.7 exempts an exterior door of a stairway enclosure from A-class integrity</source>
        <translation type="unfinished">9.4.1.1.7 exempte de l&apos;intégrité du type A une porte extérieure d&apos;entourage d&apos;escalier</translation>
    </message>
    <message>
        <source>Knock on leaf and frame; check the plate and the approval documents. Good: steel, or documents that show the material is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Frappez sur le vantail et le cadre&#xa0;; vérifiez la plaque et les documents d&apos;approbation. Bon&#xa0;: acier, ou documents montrant que le matériau est équivalent. Mauvais&#xa0;: bois, plastique ou aluminium nu.</translation>
    </message>
    <message>
        <source>Check the plate and the approval documents. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow these between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Vérifiez la plaque et les documents d&apos;approbation. Mauvais&#xa0;: bois ou plastique. Avec 36 passagers ou moins, l&apos;Administration peut les permettre entre une cabine et sa propre douche ou ses toilettes&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its approval documents. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling not in the documents.</source>
        <translation type="unfinished">Frappez sur le vantail et lisez ses documents d&apos;approbation. A-60, A-30, A-15&#xa0;: rempli d&apos;isolant approuvé. A-0&#xa0;: acier, plein ou creux. Mauvais&#xa0;: bois, plastiques, un remplissage absent des documents.</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure from the approval documents. The thinnest pane counts.</source>
        <translation type="unfinished">Portes en bois dur donnant sur le pont découvert comprises. Mesurez à un bord libre, ou prenez la valeur dans les documents d&apos;approbation. La vitre la plus mince compte.</translation>
    </message>
    <message>
        <source>Check the approval documents, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Vérifiez les documents d&apos;approbation, si un tel système est installé&#xa0;: une approbation qui cite SOLAS 74 II-2/30.4.3.</translation>
    </message>
    <message>
        <source>After release from the permanently manned place, open it by hand and let go. Good: it opens, and closes again safely. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Après déclenchement depuis le poste gardé en permanence, ouvrez-la à la main et lâchez-la. Bon&#xa0;: elle s&apos;ouvre, et se referme sans danger. Mauvais&#xa0;: elle reste verrouillée, ou reste ouverte.</translation>
    </message>
    <message>
        <source>Agree it with bridge and engineers. Post a lookout on each side of every door that will move. Main power off: test on battery, then emergency source. Good: held, released and shut on each. Its own battery will do.</source>
        <translation type="unfinished">Convenez-en avec la passerelle et les mécaniciens. Postez un surveillant de chaque côté de chaque porte qui va bouger. Alimentation principale coupée&#xa0;: testez sur la batterie, puis sur la source de secours. Bon&#xa0;: retenue, déclenchée et fermée sur chacune. La batterie propre du système suffit.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Stand clear: the leaf may move without an alarm. Listen as it is released. Good: the alarm sounds before the leaf moves. Bad: silence, or both start together.</source>
        <translation type="unfinished">Postez d&apos;abord un surveillant de chaque côté de chaque porte du groupe. Tenez-vous à l&apos;écart&#xa0;: le vantail peut bouger sans que l&apos;alarme sonne. Écoutez quand elle est déclenchée. Bon&#xa0;: l&apos;alarme sonne avant que le vantail bouge. Mauvais&#xa0;: silence, ou les deux partent ensemble.</translation>
    </message>
    <message>
        <source>Opened by one person at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">Ouverte aussitôt par une seule personne, dans le noir, avec une poignée fixe&#xa0;?</translation>
    </message>
    <message>
        <source>Zone stairs: 11 to 20 persons = 30 in, up to 30 = 32, up to 40 = 34, up to 50 = 36, more = 0.75 in per person; on the embarkation deck 44 to each side. Other passenger stairs: same, but over 50 = 36. Crew over 10: 30.</source>
        <translation type="unfinished">Escaliers de tranche&#xa0;: 11 à 20 personnes = 30 in, jusqu&apos;à 30 = 32, jusqu&apos;à 40 = 34, jusqu&apos;à 50 = 36, au-delà = 0,75 in par personne&#xa0;; sur le pont d&apos;embarquement, 44 de chaque bord. Autres escaliers de passagers&#xa0;: de même, mais au-delà de 50 = 36. Équipage, plus de 10&#xa0;: 30.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) sets aside construction and rating for a hardwood door to the weather deck; it does not mention this requirement.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) écarte construction et classe pour une porte en bois dur donnant sur le pont exposé&#xa0;; il ne mentionne pas cette exigence.</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 × 6 inches, no tolerance given: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. No port, whatever the register says: n/a.</source>
        <translation type="unfinished">Coin inférieur opposé à la charnière, environ 6 × 6 pouces, sans tolérance donnée&#xa0;: une manche d&apos;incendie doit passer et la porte se fermer dessus. Levez le volet d&apos;acier et lâchez-le&#xa0;: il doit retomber fermé. Pas d&apos;orifice, quoi qu&apos;en dise le registre&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Applies where the door opens onto such a place from a service, cargo or machinery space, or from accommodation with combustible furniture. The area of glass is not limited. Opening elsewhere: n/a.</source>
        <translation type="unfinished">S&apos;applique si la porte s&apos;ouvre sur un tel lieu depuis un local de service, à cargaison ou de machines, ou depuis un local d&apos;habitation à mobilier combustible. La surface de verre n&apos;est pas limitée. Si elle s&apos;ouvre ailleurs&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Next to an embarkation station, an escape route or survival craft. Good: documents that show A class, or steel shutters that shut from outside; try them. Not next to one of these: n/a.</source>
        <translation type="unfinished">À côté d&apos;un poste d&apos;embarquement, d&apos;une échappée ou d&apos;embarcations ou radeaux de sauvetage. Bon&#xa0;: documents qui attestent le type A, ou volets d&apos;acier qui se ferment de l&apos;extérieur&#xa0;; essayez-les. Pas à côté de l&apos;un d&apos;eux&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Actionnez les deux ensemble. Pas de porte décorative&#xa0;: s.o. Mauvais&#xa0;: il faut l&apos;ouvrir d&apos;abord, sa poignée gêne, ou elle s&apos;ouvre à contre-courant des gens.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, it opens the other way, or it is at a stairway.</source>
        <translation type="unfinished">Actionnez les deux ensemble. Pas de porte décorative&#xa0;: s.o. Mauvais&#xa0;: il faut l&apos;ouvrir d&apos;abord, elle s&apos;ouvre dans l&apos;autre sens, ou elle est à un escalier.</translation>
    </message>
    <message>
        <source>a stair enclosed on only one level counts as part of the space it opens into without a fire door</source>
        <translation type="unfinished">un escalier fermé à un seul niveau compte comme partie du local sur lequel il s&apos;ouvre sans porte d&apos;incendie</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they are stowed at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">A-0 suffit s&apos;il n&apos;est pas transporté de marchandises dangereuses, ou si elles sont arrimées à 3 m au moins de la cloison, à l&apos;horizontale.</translation>
    </message>
    <message>
        <source>the text read is for vessels built from 30 December 2008 until ES-TRIN replaced it on 7 October 2018 (date from memory); the text for any other vessel has not been read</source>
        <translation type="unfinished">le texte lu vaut pour les bâtiments construits du 30 décembre 2008 jusqu&apos;à son remplacement par l&apos;ES-TRIN le 7 octobre 2018 (date de mémoire)&#xa0;; le texte pour tout autre bâtiment n&apos;a pas été lu</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample of doors released at the door and remotely, any door lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Campagne de l&apos;État du port sur les portes d&apos;incendie&#xa0;: lampes, un échantillon de portes déclenchées à la porte même et à distance, toute porte attachée en position ouverte, fermeture et enclenchement, portes de machines, classe</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: SOLAS requirements are shown as advice and fail no door, and common practice is left to the inspector.</source>
        <translation type="unfinished">L&apos;Administration propre du navire décide de ce qui l&apos;oblige&#xa0;: les exigences SOLAS sont montrées comme recommandation et ne font échouer aucune porte, et la pratique courante est laissée à l&apos;inspecteur.</translation>
    </message>
    <message>
        <source>the text leaves it to judgement where the speed has to be controlled, and gives no figure</source>
        <translation type="unfinished">le texte s&apos;en remet à l&apos;appréciation pour savoir où la vitesse doit être réglée, et ne donne pas de chiffre</translation>
    </message>
    <message>
        <source>Check the approval documents: works at 200 °C or more for 60 min or more, does not affect the supply to other doors, isolates itself above 200 °C and keeps the door shut up to 945 °C or more.</source>
        <translation type="unfinished">Vérifiez les documents d&apos;approbation&#xa0;: fonctionne à 200 °C ou plus pendant 60 min ou plus, n&apos;affecte pas l&apos;alimentation des autres portes, s&apos;isole au-delà de 200 °C et tient la porte fermée jusqu&apos;à 945 °C ou plus.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable?</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation, quand c&apos;est possible&#xa0;?</translation>
    </message>
    <message>
        <source>To a required escape: free of locks, except one easily forced and marked on both sides?</source>
        <translation type="unfinished">Vers une échappée exigée&#xa0;: sans serrure, sauf une serrure facile à forcer et marquée des deux côtés&#xa0;?</translation>
    </message>
    <message>
        <source>The sentence on release exempts normally closed doors, the sentence on hooks exempts none; the text does not say whether the exemption covers hooks too.</source>
        <translation type="unfinished">La phrase sur le déclenchement exempte les portes normalement fermées, la phrase sur les crochets n&apos;en exempte aucune&#xa0;; le texte ne dit pas si l&apos;exemption vaut aussi pour les crochets.</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted the latch may be idle, but must be there.</source>
        <translation type="unfinished">Regardez le bord du vantail. Bon&#xa0;: un pêne, et sa gâche dans le cadre. Mauvais&#xa0;: un galet, un aimant ou rien. Là où le va-et-vient est permis, le loquet peut être inactif, mais il doit y en avoir un.</translation>
    </message>
    <message>
        <source>A stop or overlap of at least 12.7 mm at the sides and top</source>
        <translation type="unfinished">Une feuillure ou un recouvrement d&apos;au moins 12,7 mm sur les côtés et en haut</translation>
    </message>
    <message>
        <source>Check the maker&apos;s figure in the approval documents: at least 0.07 kPa, about 7 kg per square metre. With the door shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Vérifiez la valeur du fabricant dans les documents d&apos;approbation&#xa0;: au moins 0,07 kPa, environ 7 kg par mètre carré. Porte fermée, poussez vers le haut par-dessous&#xa0;: elle ne doit pas se soulever.</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material or opens the wrong way?</source>
        <translation type="unfinished">Sans porte décorative qui la gêne, soit d&apos;un matériau non admis ou s&apos;ouvre dans le mauvais sens&#xa0;?</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material, opens the wrong way or is at a stair?</source>
        <translation type="unfinished">Sans porte décorative qui la gêne, soit d&apos;un matériau non admis, s&apos;ouvre dans le mauvais sens ou se trouve à un escalier&#xa0;?</translation>
    </message>
    <message>
        <source>as type 6 but larger; the sign before the size is missing in the source text and inferred from type 6</source>
        <translation type="unfinished">comme le type 6 mais plus grand&#xa0;; le signe devant la superficie manque dans le texte source et est déduit du type 6</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Laquelle des deux valeurs s&apos;applique découle de 2.3.2 et 2.3.4&#xa0;: un escalier traversant un seul pont exige B-0 avec portes à fermeture automatique à un niveau au moins&#xa0;; escaliers et ascenseurs traversant plus d&apos;un pont exigent A-0 avec portes à fermeture automatique à tous les niveaux&#xa0;; un ascenseur traversant un pont exige A-0 avec portes en acier aux deux niveaux. Avec 12 couchettes ou moins et deux échappées directes vers le pont découvert depuis chaque niveau d&apos;habitation, A-0 peut être ramené à B-0.</translation>
    </message>
    <message>
        <source>Tankers use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Les navires-citernes n&apos;emploient que la méthode IC. Laquelle des deux valeurs s&apos;applique découle de 2.3.2 et 2.3.4&#xa0;: un escalier traversant un seul pont exige B-0 avec portes à fermeture automatique à un niveau au moins&#xa0;; escaliers et ascenseurs traversant plus d&apos;un pont exigent A-0 avec portes à fermeture automatique à tous les niveaux&#xa0;; un ascenseur traversant un pont exige A-0 avec portes en acier aux deux niveaux. Avec 12 couchettes ou moins et deux échappées directes vers le pont découvert depuis chaque niveau d&apos;habitation, A-0 peut être ramené à B-0.</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop the test before the leaf reaches anyone. A stopped run can be repeated.</source>
        <translation type="unfinished">Les gens ne savent pas que vous testez. Gardez les yeux sur la course tant qu&apos;un vantail bouge, et arrêtez le test avant que le vantail ne heurte quelqu&apos;un. Un essai arrêté peut être répété.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">pas de telle exigence</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Limite : %1</translation>
    </message>
    <message>
        <source>A different edition of the catalogue is now in use.</source>
        <translation type="unfinished">Une autre édition du catalogue est maintenant en service.</translation>
    </message>
    <message>
        <source>A different edition of the catalogue, or of the rules of %1, is now in use.</source>
        <translation type="unfinished">Une autre édition du catalogue, ou des règles de %1, est maintenant en service.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer apply on top of the catalogue.</source>
        <translation type="unfinished">Les règles de %1 ne s&apos;appliquent plus en plus du catalogue.</translation>
    </message>
    <message>
        <source>The rules of %1 now apply on top of the catalogue.</source>
        <translation type="unfinished">Les règles de %1 s&apos;appliquent maintenant en plus du catalogue.</translation>
    </message>
    <message>
        <source>was %1, now %2</source>
        <translation type="unfinished">avant %1, maintenant %2</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">ne s&apos;applique pas à cette porte</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>none of %1 doors is defective</source>
        <translation type="unfinished">aucune des %1 portes n&apos;est défectueuse</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors is defective</source>
        <translation type="unfinished">au plus %1 porte sur %2 est défectueuse</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors are defective</source>
        <translation type="unfinished">au plus %1 portes sur %2 sont défectueuses</translation>
    </message>
    <message>
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">au plus 1 porte sur 1 est défectueuse</translation>
    </message>
    <message>
        <source>The claim is supported.</source>
        <translation type="unfinished">L&apos;affirmation est étayée.</translation>
    </message>
    <message>
        <source>Continue: test %1 more.</source>
        <translation type="unfinished">Continuer&#xa0;: tester %1 de plus.</translation>
    </message>
    <message>
        <source>Extend: test %1 more. If none of those fails, the claim is supported, with slightly less confidence than stated, because the results enlarged the sample.</source>
        <translation type="unfinished">Étendre&#xa0;: tester %1 de plus. Si aucune de celles-là n&apos;échoue, l&apos;affirmation est étayée, avec une confiance un peu moindre que celle indiquée, car ce sont les résultats qui ont agrandi l&apos;échantillon.</translation>
    </message>
    <message>
        <source>Every door has been tested: the claim fails.</source>
        <translation type="unfinished">Toutes les portes ont été testées&#xa0;: l&apos;affirmation est rejetée.</translation>
    </message>
    <message>
        <source>Test all: the remaining door as well.</source>
        <translation type="unfinished">Tout tester&#xa0;: la porte restante aussi.</translation>
    </message>
    <message>
        <source>Test all: the remaining %1 doors as well.</source>
        <translation type="unfinished">Tout tester&#xa0;: les %1 portes restantes aussi.</translation>
    </message>
    <message>
        <source>the one door is not defective</source>
        <translation type="unfinished">l&apos;unique porte n&apos;est pas défectueuse</translation>
    </message>
    <message>
        <source>Test 1 door, drawn at random. If it does not fail: %1 confidence that %2.</source>
        <translation type="unfinished">Tester 1 porte, tirée au hasard. Si elle n&apos;échoue pas, confiance de %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn at random. If none fails: %2 confidence that %3.</source>
        <translation type="unfinished">Tester %1 portes, tirées au hasard. Si aucune n&apos;échoue, confiance de %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>A different claim, not to be confused with this one: if exactly %1 of %2 doors are defective, testing %3 gives at least a %4 chance of finding one or more of them.</source>
        <translation type="unfinished">Autre affirmation, à ne pas confondre avec celle-ci&#xa0;: si exactement %1 portes sur %2 sont défectueuses, en tester %3 donne au moins %4 de chances d&apos;en trouver une ou plusieurs.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confidence that %3. %4</source>
        <translation type="unfinished">%1 porte sur 1 testée, aucun échec&#xa0;: confiance de %2&#xa0;: %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confidence that %4. %5</source>
        <translation type="unfinished">%1 portes testées sur %2, aucun échec&#xa0;: confiance de %3&#xa0;: %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confidence that %2. %3</source>
        <translation type="unfinished">1 porte sur 1 testée, 1 échec&#xa0;: confiance de %1&#xa0;: %2. %3</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, %3 failed: %4 confidence that %5. %6</source>
        <translation type="unfinished">%1 portes testées sur %2, échecs&#xa0;: %3&#xa0;; confiance de %4&#xa0;: %5. %6</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Une plaque gravée %1</translation>
    </message>
    <message>
        <source>Four screw holes round a pale patch</source>
        <translation type="unfinished">Quatre trous de vis autour d&apos;une tache claire</translation>
    </message>
    <message>
        <source>A magnet on its arm, its armature on the leaf</source>
        <translation type="unfinished">Un aimant sur son bras, son armature sur le vantail</translation>
    </message>
    <message>
        <source>Lining and frame</source>
        <translation type="unfinished">Habillage et cadre</translation>
    </message>
    <message>
        <source>%1; a hook hangs from an eye plate on the lining</source>
        <translation type="unfinished">%1&#xa0;; un crochet pend d&apos;un piton sur l&apos;habillage</translation>
    </message>
    <message>
        <source>%1; nothing else</source>
        <translation type="unfinished">%1&#xa0;; rien d&apos;autre</translation>
    </message>
    <message>
        <source>The lower corner of the leaf, plain</source>
        <translation type="unfinished">Le coin inférieur du vantail, nu</translation>
    </message>
    <message>
        <source>its cover lifted</source>
        <translation type="unfinished">son volet levé</translation>
    </message>
    <message>
        <source>its cover hangs part open</source>
        <translation type="unfinished">son volet pend entrouvert</translation>
    </message>
    <message>
        <source>its cover lies flat on it</source>
        <translation type="unfinished">son volet est à plat dessus</translation>
    </message>
    <message>
        <source>The lamp marked shut is lit</source>
        <translation type="unfinished">La lampe marquée fermée est allumée</translation>
    </message>
    <message>
        <source>The lamp marked open is lit</source>
        <translation type="unfinished">La lampe marquée ouverte est allumée</translation>
    </message>
    <message>
        <source>A steel sill screwed down, the floor covering ends at its trim</source>
        <translation type="unfinished">Un seuil d&apos;acier vissé, le revêtement de sol s&apos;arrête à sa bordure</translation>
    </message>
    <message>
        <source>The floor covering runs on under the leaf; four holes in the deck</source>
        <translation type="unfinished">Le revêtement de sol continue sous le vantail&#xa0;; quatre trous dans le pont</translation>
    </message>
    <message>
        <source>The rule reads %1 mm at the foot of the leaf</source>
        <translation type="unfinished">La règle indique %1 mm au pied du vantail</translation>
    </message>
    <message>
        <source>The deck, and a wooden wedge under the edge of the leaf</source>
        <translation type="unfinished">Le pont, et une cale de bois sous le bord du vantail</translation>
    </message>
    <message>
        <source>The deck on both sides, nothing on it</source>
        <translation type="unfinished">Le pont des deux côtés, rien dessus</translation>
    </message>
    <message>
        <source>Two plates and the bottom rail between them, nothing on it</source>
        <translation type="unfinished">Deux tôles et le rail inférieur entre elles, rien dessus</translation>
    </message>
    <message>
        <source>Bright rail, two hangers, their rollers on it</source>
        <translation type="unfinished">Un rail brillant, deux chariots, leurs galets dessus</translation>
    </message>
    <message>
        <source>A dark strip in its groove, from top to bottom</source>
        <translation type="unfinished">Une bande sombre dans sa rainure, de haut en bas</translation>
    </message>
    <message>
        <source>Hinges with all their screws, the gap at the head even</source>
        <translation type="unfinished">Des charnières avec toutes leurs vis, le jeu du haut régulier</translation>
    </message>
    <message>
        <source>A dry body, the arm in its shoe on the frame</source>
        <translation type="unfinished">Un corps sec, le bras dans son sabot sur le cadre</translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Vantail et cadre, leur peinture unie, rien de fixé dessus</translation>
    </message>
    <message>
        <source>A plate worn bare; no letter is legible</source>
        <translation type="unfinished">Une plaque usée à nu&#xa0;; aucune lettre n&apos;est lisible</translation>
    </message>
    <message>
        <source>A port 150 mm by 150 mm, %1</source>
        <translation type="unfinished">Un orifice de 150 mm sur 150 mm, %1</translation>
    </message>
    <message>
        <source>Two lamps; no one has read them out yet</source>
        <translation type="unfinished">Deux lampes&#xa0;; personne ne les a encore lues</translation>
    </message>
    <message>
        <source>A soft edge on the leaf and a block in front of it; no run against it yet</source>
        <translation type="unfinished">Un bord souple sur le vantail et un bloc devant&#xa0;; pas encore d&apos;essai contre ce bloc</translation>
    </message>
    <message>
        <source>The edge is %1 back from the block, by tape measure</source>
        <translation type="unfinished">Le bord a reculé de %1 à partir du bloc, au mètre ruban</translation>
    </message>
    <message>
        <source>Bulkhead paint runs over the seal</source>
        <translation type="unfinished">La peinture de la cloison recouvre le joint</translation>
    </message>
    <message>
        <source>The bolt projects well out of its case</source>
        <translation type="unfinished">Le pêne dépasse nettement de son boîtier</translation>
    </message>
    <message>
        <source>Only the tip of the bolt projects from its case</source>
        <translation type="unfinished">Seul le bout du pêne dépasse de son boîtier</translation>
    </message>
    <message>
        <source>The release on this side under its cover, lever upright</source>
        <translation type="unfinished">La commande de déclenchement de ce côté sous son capot, levier vertical</translation>
    </message>
    <message>
        <source>A cup, crumpled paper and a length of rope on the bottom rail</source>
        <translation type="unfinished">Un gobelet, du papier froissé et un bout de corde sur le rail inférieur</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>The release has been announced to everyone near these doors</source>
        <translation type="unfinished">Le déclenchement a été annoncé à tous ceux qui se trouvent près de ces portes</translation>
    </message>
    <message>
        <source>Passengers and crew are clear of every door that will move, and kept clear</source>
        <translation type="unfinished">Passagers et équipage sont à l&apos;écart de chaque porte qui va bouger, et y sont maintenus</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">Le poste de sécurité est sur le canal convenu et prêt</translation>
    </message>
    <message>
        <source>It moves less than 5 s after the alarm begins.</source>
        <translation type="unfinished">Elle bouge moins de 5 s après le début de l&apos;alarme.</translation>
    </message>
    <message>
        <source>The alarm stops before the leaf is home.</source>
        <translation type="unfinished">L&apos;alarme s&apos;arrête avant que le vantail soit en butée.</translation>
    </message>
    <message>
        <source>On contact it re-opens more than 1 m.</source>
        <translation type="unfinished">Au contact, elle se rouvre de plus de 1 m.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Une cale la tient ouverte.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Le seuil manque.</translation>
    </message>
    <message>
        <source>The seal is painted over.</source>
        <translation type="unfinished">Le joint est peint.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows it open when it is shut.</source>
        <translation type="unfinished">Le tableau du poste de sécurité l&apos;indique ouverte alors qu&apos;elle est fermée.</translation>
    </message>
    <message>
        <source>The cover of the hose port does not shut by itself.</source>
        <translation type="unfinished">Le volet de l&apos;orifice de manche ne se ferme pas de lui-même.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">aucune valeur imprimée&#xa0;: demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Deux valeurs sont imprimées&#xa0;; la plus stricte est donnée ici.</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">cloison de tranche</translation>
    </message>
    <message>
        <source>stairway enclosure</source>
        <translation type="unfinished">entourage d&apos;escalier</translation>
    </message>
    <message>
        <source>galley boundary</source>
        <translation type="unfinished">cloisonnement de cuisine</translation>
    </message>
    <message>
        <source>machinery space boundary</source>
        <translation type="unfinished">cloisonnement de local de machines</translation>
    </message>
    <message>
        <source>special category boundary</source>
        <translation type="unfinished">cloisonnement de catégorie spéciale</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">cabine</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">extérieur</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">autre cloisonnement</translation>
    </message>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">un vantail</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">deux vantaux</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">à glissières</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">va-et-vient</translation>
    </message>
    <message>
        <source>not listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">non visée par II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>normally open</source>
        <translation type="unfinished">normalement ouverte</translation>
    </message>
    <message>
        <source>normally closed</source>
        <translation type="unfinished">normalement fermée</translation>
    </message>
    <message>
        <source>normally locked</source>
        <translation type="unfinished">normalement verrouillée</translation>
    </message>
    <message>
        <source>not normally locked</source>
        <translation type="unfinished">non verrouillée normalement</translation>
    </message>
    <message>
        <source>power-operated watertight door</source>
        <translation type="unfinished">porte étanche à l&apos;eau mue par une source d&apos;énergie</translation>
    </message>
    <message>
        <source>not in a zone bulkhead, galley or stairway boundary</source>
        <translation type="unfinished">hors cloison de tranche et cloisonnement de cuisine ou d&apos;escalier</translation>
    </message>
    <message>
        <source>A class</source>
        <translation type="unfinished">type A</translation>
    </message>
    <message>
        <source>not an A-class door</source>
        <translation type="unfinished">pas une porte du type A</translation>
    </message>
    <message>
        <source>B class</source>
        <translation type="unfinished">type B</translation>
    </message>
    <message>
        <source>not a B-class door</source>
        <translation type="unfinished">pas une porte du type B</translation>
    </message>
    <message>
        <source>power-operated</source>
        <translation type="unfinished">motorisée</translation>
    </message>
    <message>
        <source>not power-operated</source>
        <translation type="unfinished">non motorisée</translation>
    </message>
    <message>
        <source>released remotely</source>
        <translation type="unfinished">déclenchée à distance</translation>
    </message>
    <message>
        <source>no remote release</source>
        <translation type="unfinished">sans déclenchement à distance</translation>
    </message>
    <message>
        <source>held open</source>
        <translation type="unfinished">maintenue ouverte</translation>
    </message>
    <message>
        <source>not held open</source>
        <translation type="unfinished">non maintenue ouverte</translation>
    </message>
    <message>
        <source>designed to re-open</source>
        <translation type="unfinished">conçue pour se rouvrir</translation>
    </message>
    <message>
        <source>not designed to re-open</source>
        <translation type="unfinished">non conçue pour se rouvrir</translation>
    </message>
    <message>
        <source>hose port fitted</source>
        <translation type="unfinished">avec orifice de manche</translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished">sans orifice de manche</translation>
    </message>
    <message>
        <source>in an escape route</source>
        <translation type="unfinished">sur une échappée</translation>
    </message>
    <message>
        <source>not in an escape route</source>
        <translation type="unfinished">hors échappée</translation>
    </message>
    <message>
        <source>sill in its frame</source>
        <translation type="unfinished">seuil dans le cadre</translation>
    </message>
    <message>
        <source>no sill in its frame</source>
        <translation type="unfinished">sans seuil dans le cadre</translation>
    </message>
    <message>
        <source>needs a latch</source>
        <translation type="unfinished">loquet nécessaire</translation>
    </message>
    <message>
        <source>needs no latch</source>
        <translation type="unfinished">loquet non nécessaire</translation>
    </message>
    <message>
        <source>watertight</source>
        <translation type="unfinished">étanche à l&apos;eau</translation>
    </message>
    <message>
        <source>not watertight</source>
        <translation type="unfinished">non étanche à l&apos;eau</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">étanche aux intempéries</translation>
    </message>
    <message>
        <source>not weathertight</source>
        <translation type="unfinished">non étanche aux intempéries</translation>
    </message>
    <message>
        <source>emergency escape trunk</source>
        <translation type="unfinished">puits d&apos;échappée de secours</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">local de catégorie spéciale</translation>
    </message>
    <message>
        <source>bulkhead</source>
        <translation type="unfinished">cloison</translation>
    </message>
    <message>
        <source>deck</source>
        <translation type="unfinished">pont</translation>
    </message>
    <message>
        <source>in a deck</source>
        <translation type="unfinished">dans un pont</translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished">pas dans un pont</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">toute porte</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">quille posée le %1</translation>
    </message>
    <message>
        <source>installed before %1</source>
        <translation type="unfinished">installée avant le %1</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">installée le %1</translation>
    </message>
    <message>
        <source>exempt: %1</source>
        <translation type="unfinished">exemptée&#xa0;: %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sans plaque</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">plaque illisible</translation>
    </message>
    <message>
        <source>%1, whose door needs %2</source>
        <translation type="unfinished">%1, dont la porte exige %2</translation>
    </message>
    <message>
        <source>plate %1</source>
        <translation type="unfinished">plaque %1</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation type="unfinished">registre %1</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished">le disque est plein</translation>
    </message>
    <message>
        <source>Free some space and try again.</source>
        <translation type="unfinished">Libérez de la place et réessayez.</translation>
    </message>
    <message>
        <source>the disk reports a fault (SQLite %1)</source>
        <translation type="unfinished">le disque signale une erreur (SQLite %1)</translation>
    </message>
    <message>
        <source>another program is writing to this register</source>
        <translation type="unfinished">un autre programme écrit dans ce registre</translation>
    </message>
    <message>
        <source>Wait a moment or close the other program, then try again.</source>
        <translation type="unfinished">Attendez un instant ou fermez l&apos;autre programme, puis réessayez.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">le fichier ne peut pas être ouvert (SQLite %1)</translation>
    </message>
    <message>
        <source>the file is damaged (SQLite %1)</source>
        <translation type="unfinished">le fichier est endommagé (SQLite %1)</translation>
    </message>
    <message>
        <source>Open the last backup instead.</source>
        <translation type="unfinished">Ouvrez plutôt la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>the computer is out of memory</source>
        <translation type="unfinished">l&apos;ordinateur manque de mémoire</translation>
    </message>
    <message>
        <source>Close other programs and try again.</source>
        <translation type="unfinished">Fermez d&apos;autres programmes et réessayez.</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">porte %1</translation>
    </message>
    <message>
        <source>Save it first, then try again.</source>
        <translation type="unfinished">Enregistrez-le d’abord, puis réessayez.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Choisissez de nouveau la porte.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">sa tournée est finie</translation>
    </message>
    <message>
        <source>it would replace %1, which is about something else</source>
        <translation type="unfinished">cela remplacerait %1, qui porte sur autre chose</translation>
    </message>
    <message>
        <source>Save it now.</source>
        <translation type="unfinished">Enregistrez-le maintenant.</translation>
    </message>
    <message>
        <source>the vessel has no name</source>
        <translation type="unfinished">le navire n&apos;a pas de nom</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s name.</source>
        <translation type="unfinished">Donnez le nom du navire.</translation>
    </message>
    <message>
        <source>Give the number on the certificate, 0 or more.</source>
        <translation type="unfinished">Donnez le nombre du certificat, 0 ou plus.</translation>
    </message>
    <message>
        <source>a length cannot be negative</source>
        <translation type="unfinished">une longueur ne peut pas être négative</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Écrivez les dates sous la forme YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>this is not a number</source>
        <translation type="unfinished">ce n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>Give the figure.</source>
        <translation type="unfinished">Donnez la valeur.</translation>
    </message>
    <message>
        <source>Give metres, and check the decimal point.</source>
        <translation type="unfinished">Donnez des mètres et vérifiez le séparateur décimal.</translation>
    </message>
    <message>
        <source>the deck has no number</source>
        <translation type="unfinished">le pont n&apos;a pas de numéro</translation>
    </message>
    <message>
        <source>Give every deck its own number.</source>
        <translation type="unfinished">Donnez à chaque pont son propre numéro.</translation>
    </message>
    <message>
        <source>the zone has no number</source>
        <translation type="unfinished">la tranche n&apos;a pas de numéro</translation>
    </message>
    <message>
        <source>Give every zone its own number.</source>
        <translation type="unfinished">Donnez à chaque tranche son propre numéro.</translation>
    </message>
    <message>
        <source>the boundary has no id</source>
        <translation type="unfinished">le cloisonnement n&apos;a pas d&apos;identifiant</translation>
    </message>
    <message>
        <source>Give every boundary its own id.</source>
        <translation type="unfinished">Donnez à chaque cloisonnement son propre identifiant.</translation>
    </message>
    <message>
        <source>the door has no number</source>
        <translation type="unfinished">la porte n&apos;a pas de numéro</translation>
    </message>
    <message>
        <source>Give every door its own number.</source>
        <translation type="unfinished">Donnez à chaque porte son propre numéro.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">le numéro du pont &quot;%1&quot; est entouré d&apos;espaces</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">le numéro de la tranche &quot;%1&quot; est entouré d&apos;espaces</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; has blanks around its id</source>
        <translation type="unfinished">l&apos;identifiant du cloisonnement &quot;%1&quot; est entouré d&apos;espaces</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">le numéro de la porte &quot;%1&quot; est entouré d&apos;espaces</translation>
    </message>
    <message>
        <source>no deck is named</source>
        <translation type="unfinished">aucun pont n&apos;est indiqué</translation>
    </message>
    <message>
        <source>Name the deck.</source>
        <translation type="unfinished">Indiquez le pont.</translation>
    </message>
    <message>
        <source>no zone is named</source>
        <translation type="unfinished">aucune tranche n&apos;est indiquée</translation>
    </message>
    <message>
        <source>Name the zone.</source>
        <translation type="unfinished">Indiquez la tranche.</translation>
    </message>
    <message>
        <source>no boundary is named</source>
        <translation type="unfinished">aucun cloisonnement n&apos;est indiqué</translation>
    </message>
    <message>
        <source>Name the boundary.</source>
        <translation type="unfinished">Indiquez le cloisonnement.</translation>
    </message>
    <message>
        <source>Correct the name, or add the deck.</source>
        <translation type="unfinished">Corrigez le nom, ou ajoutez le pont.</translation>
    </message>
    <message>
        <source>Correct the name, or add the zone.</source>
        <translation type="unfinished">Corrigez le nom, ou ajoutez la tranche.</translation>
    </message>
    <message>
        <source>Correct the name, or add the boundary.</source>
        <translation type="unfinished">Corrigez le nom, ou ajoutez le cloisonnement.</translation>
    </message>
    <message>
        <source>an area must be more than 0</source>
        <translation type="unfinished">une surface doit être supérieure à 0</translation>
    </message>
    <message>
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">la limite avant, %1 m, n&apos;est pas en avant de la limite arrière, %2 m</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">la tranche &quot;%1&quot; commence à %2 m, à l&apos;intérieur de la tranche &quot;%3&quot;, qui finit à %4 m</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Écrivez deux nombres de 1 à %1, ou laissez vide.</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Indiquez la tranche en arrière d&apos;elle et la tranche en avant d&apos;elle.</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Donnez la largeur libre en mètres, supérieure à 0 et d&apos;au plus 10.</translation>
    </message>
    <message>
        <source>Give kilograms, more than 0 and at most 5000, or leave it empty.</source>
        <translation type="unfinished">Donnez des kilogrammes, plus de 0 et au plus 5000, ou laissez vide.</translation>
    </message>
    <message>
        <source>release group &quot;%1&quot; is empty or has a blank in its name</source>
        <translation type="unfinished">le groupe de portes &quot;%1&quot; est vide ou son nom contient un espace</translation>
    </message>
    <message>
        <source>Name release groups without blanks.</source>
        <translation type="unfinished">Donnez aux groupes de portes des noms sans espace.</translation>
    </message>
    <message>
        <source>Give it as postgresql://USER@HOST:PORT/DATABASE, with the password in PGPASSWORD or ~/.pgpass.</source>
        <translation type="unfinished">Donnez-la sous la forme postgresql://USER@HOST:PORT/DATABASE, avec le mot de passe dans PGPASSWORD ou ~/.pgpass.</translation>
    </message>
    <message>
        <source>it names no database</source>
        <translation type="unfinished">elle n&apos;indique aucune base de données</translation>
    </message>
    <message>
        <source>Qt&apos;s PostgreSQL driver is not installed</source>
        <translation type="unfinished">le pilote PostgreSQL de Qt n&apos;est pas installé</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-psql.</source>
        <translation type="unfinished">Installez le paquet libqt6sql6-psql.</translation>
    </message>
    <message>
        <source>no connection: %1</source>
        <translation type="unfinished">pas de connexion&#xa0;: %1</translation>
    </message>
    <message>
        <source>Run it again.</source>
        <translation type="unfinished">Relancez.</translation>
    </message>
    <message>
        <source>Trying again.</source>
        <translation type="unfinished">Nouvel essai.</translation>
    </message>
    <message>
        <source>Give an empty one (CREATE DATABASE).</source>
        <translation type="unfinished">Donnez-en une vide (CREATE DATABASE).</translation>
    </message>
    <message>
        <source>its schema &quot;latchround&quot; was not made by this program: NOT touched</source>
        <translation type="unfinished">son schéma &quot;latchround&quot; n&apos;a pas été créé par ce programme&#xa0;: base NON modifiée</translation>
    </message>
    <message>
        <source>Give an empty database.</source>
        <translation type="unfinished">Donnez une base de données vide.</translation>
    </message>
    <message>
        <source>Update this program.</source>
        <translation type="unfinished">Mettez ce programme à jour.</translation>
    </message>
    <message>
        <source>its vessel has no identification number</source>
        <translation type="unfinished">son navire n&apos;a pas de numéro d&apos;identification</translation>
    </message>
    <message>
        <source>no file is named</source>
        <translation type="unfinished">aucun fichier n&apos;est indiqué</translation>
    </message>
    <message>
        <source>Name at least one.</source>
        <translation type="unfinished">Indiquez-en au moins un.</translation>
    </message>
    <message>
        <source>is not a JSON object</source>
        <translation type="unfinished">n&apos;est pas un objet JSON</translation>
    </message>
    <message>
        <source>Restore the file from a good copy.</source>
        <translation type="unfinished">Restaurez le fichier à partir d&apos;une bonne copie.</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Les identifiants doivent être uniques.</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Gardez-la dans un seul.</translation>
    </message>
    <message>
        <source>Give it a field.</source>
        <translation type="unfinished">Donnez-lui un champ.</translation>
    </message>
    <message>
        <source>must be a list of conditions</source>
        <translation type="unfinished">doit être une liste de conditions</translation>
    </message>
    <message>
        <source>must be a list of variants</source>
        <translation type="unfinished">doit être une liste de variantes</translation>
    </message>
    <message>
        <source>Write the question as it is asked at the door.</source>
        <translation type="unfinished">Écrivez la question telle qu&apos;elle est posée à la porte.</translation>
    </message>
    <message>
        <source>this check needs a lower limit</source>
        <translation type="unfinished">cette vérification a besoin d&apos;une limite inférieure</translation>
    </message>
    <message>
        <source>Add a number.</source>
        <translation type="unfinished">Ajoutez un nombre.</translation>
    </message>
    <message>
        <source>this check needs an upper limit</source>
        <translation type="unfinished">cette vérification a besoin d&apos;une limite supérieure</translation>
    </message>
    <message>
        <source>the lower limit is not below the upper one</source>
        <translation type="unfinished">la limite inférieure n&apos;est pas en dessous de la limite supérieure</translation>
    </message>
    <message>
        <source>Check both numbers.</source>
        <translation type="unfinished">Vérifiez les deux nombres.</translation>
    </message>
    <message>
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Indiquez gauge, closing-time, closing-rate, alarm-lead ou alarm-after-shut.</translation>
    </message>
    <message>
        <source>Write &quot;change&quot;: &quot;tighten&quot; or &quot;replace&quot;.</source>
        <translation type="unfinished">Écrivez &quot;change&quot;: &quot;tighten&quot; ou &quot;replace&quot;.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; n&apos;est pas dans le catalogue</translation>
    </message>
    <message>
        <source>Check its spelling, or write &quot;change&quot;: &quot;add&quot;.</source>
        <translation type="unfinished">Vérifiez l&apos;orthographe, ou écrivez &quot;change&quot;: &quot;add&quot;.</translation>
    </message>
    <message>
        <source>Give low or high.</source>
        <translation type="unfinished">Donnez low ou high.</translation>
    </message>
    <message>
        <source>must be a list of categories</source>
        <translation type="unfinished">doit être une liste de catégories</translation>
    </message>
    <message>
        <source>categories must be numbered from 1 without a gap</source>
        <translation type="unfinished">les catégories doivent être numérotées à partir de 1 sans lacune</translation>
    </message>
    <message>
        <source>must be a list with at least one table</source>
        <translation type="unfinished">doit être une liste d&apos;au moins un tableau</translation>
    </message>
    <message>
        <source>Keep one of them.</source>
        <translation type="unfinished">Gardez-en un seul.</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation type="unfinished">manque</translation>
    </message>
    <message>
        <source>Write null where nothing is printed.</source>
        <translation type="unfinished">Écrivez null là où rien n&apos;est imprimé.</translation>
    </message>
    <message>
        <source>Write a class with its notes in brackets, *, - or null.</source>
        <translation type="unfinished">Écrivez une classe avec ses notes entre crochets, *, - ou null.</translation>
    </message>
    <message>
        <source>note &apos;%1&apos; is not in this table&apos;s notes</source>
        <translation type="unfinished">la note &apos;%1&apos; n&apos;est pas dans les notes de ce tableau</translation>
    </message>
    <message>
        <source>Add the note.</source>
        <translation type="unfinished">Ajoutez la note.</translation>
    </message>
    <message>
        <source>See latchround-cli --help.</source>
        <translation type="unfinished">Voir latchround-cli --help.</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation type="unfinished">n&apos;a pas pu être écrit</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Vérifiez le nom, ou importez-en un d&apos;abord.</translation>
    </message>
    <message>
        <source>Import one first.</source>
        <translation type="unfinished">Importez-en un d&apos;abord.</translation>
    </message>
    <message>
        <source>no walkdown is recorded in this register</source>
        <translation type="unfinished">aucune tournée n&apos;est enregistrée dans ce registre</translation>
    </message>
    <message>
        <source>Begin one first.</source>
        <translation type="unfinished">Commencez-en une d&apos;abord.</translation>
    </message>
    <message>
        <source>no walkdown has the id &apos;%1&apos;</source>
        <translation type="unfinished">aucune tournée ne porte l&apos;identifiant &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The latest is %2.</source>
        <translation type="unfinished">La plus récente est %2.</translation>
    </message>
    <message>
        <source>a key is 64 lower-case hex digits</source>
        <translation type="unfinished">une clé est faite de 64 chiffres hexadécimaux en minuscules</translation>
    </message>
    <message>
        <source>Add --person NAME.</source>
        <translation type="unfinished">Ajoutez --person NAME.</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Comparez-la à ce que montre l&apos;autre tablette.</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Choisissez pdf, csv ou json.</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Écrivez-le dans un fichier PDF.</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Donnez son numéro.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">il manque</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %2, such as 3,7.</source>
        <translation type="unfinished">Écrivez deux nombres de 1 à %2, par exemple 3,7.</translation>
    </message>
    <message>
        <source>the categories of the two spaces are needed</source>
        <translation type="unfinished">les catégories des deux locaux sont nécessaires</translation>
    </message>
    <message>
        <source>Write them like 3,7.</source>
        <translation type="unfinished">Écrivez-les comme 3,7.</translation>
    </message>
    <message>
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Demandez bulkhead ou deck.</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Écrivez 0.95 pour 95&#xa0;%.</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Écrivez un nombre.</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Écrivez un nombre comme 10.3.</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Écrivez-la dans l&apos;unité de la valeur, pour k = 1.</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Donnez --low, --high ou les deux.</translation>
    </message>
    <message>
        <source>there must be at least 1 door and at most %1</source>
        <translation type="unfinished">il faut au moins 1 porte et au plus %1</translation>
    </message>
    <message>
        <source>Give the number of doors.</source>
        <translation type="unfinished">Donnez le nombre de portes.</translation>
    </message>
    <message>
        <source>must be 0 or more and less than the number of doors</source>
        <translation type="unfinished">doit être de 0 ou plus et inférieur au nombre de portes</translation>
    </message>
    <message>
        <source>Give the number of defective doors that the claim allows.</source>
        <translation type="unfinished">Donnez le nombre de portes défectueuses que l&apos;affirmation admet.</translation>
    </message>
    <message>
        <source>a result is how many were tested and how many of those failed</source>
        <translation type="unfinished">un résultat dit combien ont été testées et combien d&apos;entre elles ont échoué</translation>
    </message>
    <message>
        <source>Give both, or neither.</source>
        <translation type="unfinished">Donnez les deux, ou aucun.</translation>
    </message>
    <message>
        <source>Check the three numbers.</source>
        <translation type="unfinished">Vérifiez les trois nombres.</translation>
    </message>
    <message>
        <source>Start it on a desktop, or use latchround-cli.</source>
        <translation type="unfinished">Lancez-le dans une session graphique, ou utilisez latchround-cli.</translation>
    </message>
    <message>
        <source>there is no such register file</source>
        <translation type="unfinished">ce fichier de registre n&apos;existe pas</translation>
    </message>
    <message>
        <source>Check the path, or start without one.</source>
        <translation type="unfinished">Vérifiez le chemin, ou démarrez sans registre.</translation>
    </message>
    <message>
        <source>The flag&apos;s own rules are NOT in force: %1</source>
        <translation type="unfinished">Les règles propres du pavillon ne sont PAS en vigueur&#xa0;: %1</translation>
    </message>
    <message>
        <source>Save them first.</source>
        <translation type="unfinished">Enregistrez-les d&apos;abord.</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">le fichier ne peut pas être lu</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">l&apos;image dépasse %1 Mo</translation>
    </message>
    <message>
        <source>this is not a picture that can be shown</source>
        <translation type="unfinished">ce n&apos;est pas une image affichable</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation type="unfinished">Choisissez un fichier JPEG ou PNG.</translation>
    </message>
    <message>
        <source>Take it again.</source>
        <translation type="unfinished">Reprenez-la.</translation>
    </message>
    <message>
        <source>Close it there, then open the vessel here again.</source>
        <translation type="unfinished">Fermez-le là-bas, puis rouvrez le navire ici.</translation>
    </message>
    <message>
        <source>Something is not saved yet</source>
        <translation type="unfinished">Quelque chose n&apos;est pas encore enregistré</translation>
    </message>
    <message>
        <source>the program ended before this was saved</source>
        <translation type="unfinished">le programme s&apos;est arrêté avant que ceci soit enregistré</translation>
    </message>
    <message>
        <source>it was cut short</source>
        <translation type="unfinished">entrée tronquée</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Libérez de la place et relancez.</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Choisissez une de ses tournées.</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Vérifiez le numéro.</translation>
    </message>
    <message>
        <source>Free some memory and try again.</source>
        <translation type="unfinished">Libérez de la mémoire et réessayez.</translation>
    </message>
    <message>
        <source>the bookmarks could not be written: %1</source>
        <translation type="unfinished">les signets n&apos;ont pas pu être écrits&#xa0;: %1</translation>
    </message>
    <message>
        <source>the file has no vessel row</source>
        <translation type="unfinished">le fichier n&apos;a pas de ligne vessel</translation>
    </message>
    <message>
        <source>Begin with the header &quot;vessel:&quot; and a row &quot;vessel&quot; below it.</source>
        <translation type="unfinished">Commencez par l&apos;en-tête &quot;vessel:&quot; et, dessous, une ligne &quot;vessel&quot;.</translation>
    </message>
    <message>
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Mettez chaque navire dans son propre fichier.</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Une ligne commence par vessel, deck, zone, boundary ou door.</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Une ligne commence par vessel, deck, zone, boundary ou door.</translation>
    </message>
    <message>
        <source>the row has more cells than its header has columns</source>
        <translation type="unfinished">la ligne a plus de cellules que son en-tête n&apos;a de colonnes</translation>
    </message>
    <message>
        <source>A text or number with a comma in it needs quotes around it.</source>
        <translation type="unfinished">Un texte ou un nombre qui contient une virgule se met entre guillemets.</translation>
    </message>
    <message>
        <source>the %1 table has no such column</source>
        <translation type="unfinished">la table %1 n&apos;a pas cette colonne</translation>
    </message>
    <message>
        <source>the required column %1 is missing</source>
        <translation type="unfinished">la colonne obligatoire %1 manque</translation>
    </message>
    <message>
        <source>Add it to the header and to every row of the table.</source>
        <translation type="unfinished">Ajoutez-la à l&apos;en-tête et à chaque ligne de la table.</translation>
    </message>
    <message>
        <source>%1; the first is on line %2</source>
        <translation type="unfinished">%1&#xa0;; première occurrence à la ligne %2</translation>
    </message>
    <message>
        <source>these are not the categories of two spaces</source>
        <translation type="unfinished">ce ne sont pas les catégories de deux locaux</translation>
    </message>
    <message>
        <source>Write two numbers with a blank between, such as 3 7, or leave it empty.</source>
        <translation type="unfinished">Écrivez deux nombres séparés par un espace, comme 3 7, ou laissez vide.</translation>
    </message>
    <message>
        <source>Write x,y on each line.</source>
        <translation type="unfinished">Écrivez x,y sur chaque ligne.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>Write a number such as 12.4.</source>
        <translation type="unfinished">Écrivez un nombre comme 12.4.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Écrivez-le comme 2026-11-25T10:42:13.120+01:00.</translation>
    </message>
    <message>
        <source>It must be one of: %2.</source>
        <translation type="unfinished">Ce doit être l&apos;un de ceux-ci&#xa0;: %2.</translation>
    </message>
    <message>
        <source>this must be a list of doors</source>
        <translation type="unfinished">ce doit être une liste de portes</translation>
    </message>
    <message>
        <source>Write it in brackets.</source>
        <translation type="unfinished">Écrivez-la entre crochets.</translation>
    </message>
    <message>
        <source>a door needs a number</source>
        <translation type="unfinished">une porte a besoin d&apos;un numéro</translation>
    </message>
    <message>
        <source>Give the one painted on it.</source>
        <translation type="unfinished">Donnez celui qui est peint dessus.</translation>
    </message>
    <message>
        <source>a clear opening must be more than 0 and at most 10 m</source>
        <translation type="unfinished">un passage libre doit être supérieur à 0 et d&apos;au plus 10 m</translation>
    </message>
    <message>
        <source>Give the clear width in metres.</source>
        <translation type="unfinished">Donnez la largeur libre en mètres.</translation>
    </message>
    <message>
        <source>a leaf must weigh more than 0 and at most 5000 kg</source>
        <translation type="unfinished">un vantail doit peser plus de 0 et au plus 5000 kg</translation>
    </message>
    <message>
        <source>Give the mass of the heaviest leaf in kilograms.</source>
        <translation type="unfinished">Donnez la masse du vantail le plus lourd en kilogrammes.</translation>
    </message>
    <message>
        <source>Write them like [3, 5].</source>
        <translation type="unfinished">Écrivez-les comme [3, 5].</translation>
    </message>
    <message>
        <source>this must be an object</source>
        <translation type="unfinished">ce doit être un objet</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;requirement&quot;: value}.</source>
        <translation type="unfinished">Écrivez-le entre accolades&#xa0;: {&quot;requirement&quot;: value}.</translation>
    </message>
    <message>
        <source>Write &quot;yes&quot;, &quot;no&quot; or &quot;n/a&quot;.</source>
        <translation type="unfinished">Écrivez &quot;yes&quot;, &quot;no&quot; ou &quot;n/a&quot;.</translation>
    </message>
    <message>
        <source>this requirement is not answered by yes or no</source>
        <translation type="unfinished">on ne répond pas par oui ou non à cette exigence</translation>
    </message>
    <message>
        <source>Give its figure under &quot;measured&quot;.</source>
        <translation type="unfinished">Donnez sa valeur sous &quot;measured&quot;.</translation>
    </message>
    <message>
        <source>It follows from the runs or from the class.</source>
        <translation type="unfinished">Cela découle des essais ou de la classe.</translation>
    </message>
    <message>
        <source>Give runs with their marks, or an answer under &quot;observations&quot;.</source>
        <translation type="unfinished">Donnez des essais avec leurs repères, ou une réponse sous &quot;observations&quot;.</translation>
    </message>
    <message>
        <source>this must be a number, 0 or more</source>
        <translation type="unfinished">ce doit être un nombre, 0 ou plus</translation>
    </message>
    <message>
        <source>Write it without quotes.</source>
        <translation type="unfinished">Écrivez-le sans guillemets.</translation>
    </message>
    <message>
        <source>Write it in %1, without quotes.</source>
        <translation type="unfinished">Écrivez-le en %1, sans guillemets.</translation>
    </message>
    <message>
        <source>this must be a list of runs</source>
        <translation type="unfinished">ce doit être une liste d&apos;essais</translation>
    </message>
    <message>
        <source>a run without marks shows nothing</source>
        <translation type="unfinished">un essai sans repères ne montre rien</translation>
    </message>
    <message>
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">un temps doit être de 0 à 3600 secondes</translation>
    </message>
    <message>
        <source>Give the heel in degrees.</source>
        <translation type="unfinished">Donnez la gîte en degrés.</translation>
    </message>
    <message>
        <source>the run is not complete: &quot;%1&quot; was not marked</source>
        <translation type="unfinished">l&apos;essai n&apos;est pas complet&#xa0;: &quot;%1&quot; n&apos;a pas été marqué</translation>
    </message>
    <message>
        <source>Check the folder.</source>
        <translation type="unfinished">Vérifiez le dossier.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>Write it like &quot;stairway-doors&quot;.</source>
        <translation type="unfinished">Écrivez par exemple &quot;stairway-doors&quot;.</translation>
    </message>
    <message>
        <source>is longer than %1 bytes</source>
        <translation type="unfinished">dépasse %1 octets</translation>
    </message>
    <message>
        <source>must be a list of doors</source>
        <translation type="unfinished">doit être une liste de portes</translation>
    </message>
    <message>
        <source>Write it like [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</source>
        <translation type="unfinished">Écrivez par exemple [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</translation>
    </message>
    <message>
        <source>Put all of its faults in one place.</source>
        <translation type="unfinished">Mettez tous ses défauts au même endroit.</translation>
    </message>
    <message>
        <source>the practice vessel has no door &apos;%1&apos;</source>
        <translation type="unfinished">le navire d&apos;entraînement n&apos;a pas de porte &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Use one of its doors.</source>
        <translation type="unfinished">Prenez l&apos;une de ses portes.</translation>
    </message>
    <message>
        <source>door %1 cannot have the fault &apos;%2&apos;</source>
        <translation type="unfinished">la porte %1 ne peut pas avoir le défaut &apos;%2&apos;</translation>
    </message>
    <message>
        <source>Give it to a door of another kind or fitting.</source>
        <translation type="unfinished">Donnez-le à une porte d&apos;un autre genre ou autrement équipée.</translation>
    </message>
    <message>
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Donnez l&apos;un des deux à une autre porte.</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Indiquez combien de défauts sont tirés au sort.</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Tirez-en moins, ou nommez plus de portes.</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Ajoutez-le, de 1 à 100.</translation>
    </message>
    <message>
        <source>this must be an object of doors</source>
        <translation type="unfinished">ceci doit être un objet de portes</translation>
    </message>
    <message>
        <source>Write it like {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</source>
        <translation type="unfinished">Écrivez par exemple {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</translation>
    </message>
    <message>
        <source>door %1 is not released this way</source>
        <translation type="unfinished">la porte %1 ne se déclenche pas de cette façon</translation>
    </message>
    <message>
        <source>Write one of: %2.</source>
        <translation type="unfinished">Écrivez l&apos;un de&#xa0;: %2.</translation>
    </message>
    <message>
        <source>a time must be from 0 to %1 seconds</source>
        <translation type="unfinished">un temps doit être compris entre 0 et %1 secondes</translation>
    </message>
    <message>
        <source>Give seconds after the release.</source>
        <translation type="unfinished">Indiquez les secondes après le déclenchement.</translation>
    </message>
    <message>
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Écrivez par exemple 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Veuillez le signaler.</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Donnez un autre identifiant au vôtre.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">il doit avoir au moins %1 caractères</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">il n&apos;a pas pu être composé&#xa0;: %1</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">le fichier est endommagé (%1)</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">%1 ne peut pas être lu</translation>
    </message>
    <message>
        <source>%1 is missing from it</source>
        <translation type="unfinished">%1 y manque</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB</source>
        <translation type="unfinished">%1 dépasse %2 Mo</translation>
    </message>
    <message>
        <source>%1 is damaged</source>
        <translation type="unfinished">%1 est endommagé</translation>
    </message>
    <message>
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem n&apos;est pas la clé que nomme handover.json</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ceci vient de l&apos;entraînement&#xa0;: rien n&apos;y est un enregistrement d&apos;un navire</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">ce fichier vient d&apos;un programme plus récent (forme %1&#xa0;; celui-ci lit jusqu&apos;à %2)</translation>
    </message>
    <message>
        <source>this must be a list</source>
        <translation type="unfinished">ceci doit être une liste</translation>
    </message>
    <message>
        <source>arrangements are numbered from 1</source>
        <translation type="unfinished">les dispositions sont numérotées à partir de 1</translation>
    </message>
    <message>
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">il dépasserait %1 Mo</translation>
    </message>
    <message>
        <source>there is no such walkdown to sign</source>
        <translation type="unfinished">il n&apos;y a pas de telle tournée à signer</translation>
    </message>
    <message>
        <source>Choose another.</source>
        <translation type="unfinished">Choisissez-en une autre.</translation>
    </message>
    <message>
        <source>Do not rely on this signature.</source>
        <translation type="unfinished">Ne vous fiez pas à cette signature.</translation>
    </message>
    <message>
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">il retire quelque chose mais ne dit pas quoi</translation>
    </message>
    <message>
        <source>it replaces %1, which replaces it in turn</source>
        <translation type="unfinished">il remplace %1, qui le remplace à son tour</translation>
    </message>
    <message>
        <source>it replaces %1, which is about something else</source>
        <translation type="unfinished">il remplace %1, qui porte sur autre chose</translation>
    </message>
    <message>
        <source>%1 line %2</source>
        <translation type="unfinished">%1, ligne %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3</source>
        <translation type="unfinished">%1, ligne %2, colonne %3</translation>
    </message>
    <message>
        <source>%1, column %2</source>
        <translation type="unfinished">%1, colonne %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3 (%4)</source>
        <translation type="unfinished">%1, ligne %2, colonne %3 (%4)</translation>
    </message>
    <message>
        <source>%1 line %2 (%3)</source>
        <translation type="unfinished">%1, ligne %2 (%3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished">%1 (%2)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>built-in %1</source>
        <translation type="unfinished">%1 (intégré)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>door (no number)</source>
        <translation type="unfinished">porte (sans numéro)</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
    <message>
        <source>boundary %1</source>
        <translation type="unfinished">cloisonnement %1</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished">navire</translation>
    </message>
    <message>
        <source>vessel %1</source>
        <translation type="unfinished">navire %1</translation>
    </message>
    <message>
        <source>vessel %1 %2</source>
        <translation type="unfinished">navire %1 %2</translation>
    </message>
    <message>
        <source>signature %1</source>
        <translation type="unfinished">signature %1</translation>
    </message>
    <message>
        <source>report %1</source>
        <translation type="unfinished">rapport %1</translation>
    </message>
    <message>
        <source>photograph %1</source>
        <translation type="unfinished">photo %1</translation>
    </message>
    <message>
        <source>device %1</source>
        <translation type="unfinished">appareil %1</translation>
    </message>
    <message>
        <source>device %1 (%2)</source>
        <translation type="unfinished">appareil %1 (%2)</translation>
    </message>
    <message>
        <source>key %1</source>
        <translation type="unfinished">clé %1</translation>
    </message>
    <message>
        <source>this device&apos;s key</source>
        <translation type="unfinished">la clé de cet appareil</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">registre</translation>
    </message>
    <message>
        <source>handover file</source>
        <translation type="unfinished">fichier de transmission</translation>
    </message>
    <message>
        <source>handover</source>
        <translation type="unfinished">transmission</translation>
    </message>
    <message>
        <source>practice</source>
        <translation type="unfinished">entraînement</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">photo</translation>
    </message>
    <message>
        <source>walkdown %1</source>
        <translation type="unfinished">tournée %1</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">fiche de porte</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">tentative</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished">ce fichier n&apos;existe pas</translation>
    </message>
    <message>
        <source>Check its name and folder.</source>
        <translation type="unfinished">Vérifiez son nom et son dossier.</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished">c&apos;est un dossier, pas un fichier</translation>
    </message>
    <message>
        <source>Name the file in it.</source>
        <translation type="unfinished">Nommez le fichier qui s&apos;y trouve.</translation>
    </message>
    <message>
        <source>this is not a file that can be read</source>
        <translation type="unfinished">ce n&apos;est pas un fichier qui puisse être lu</translation>
    </message>
    <message>
        <source>the file is larger than %1 MB</source>
        <translation type="unfinished">le fichier dépasse %1 Mo</translation>
    </message>
    <message>
        <source>Choose the right file.</source>
        <translation type="unfinished">Choisissez le bon fichier.</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation type="unfinished">le fichier ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>Ask for permission to read it.</source>
        <translation type="unfinished">Demandez la permission de le lire.</translation>
    </message>
    <message>
        <source>the file could not be read to its end</source>
        <translation type="unfinished">le fichier n&apos;a pas pu être lu jusqu&apos;au bout</translation>
    </message>
    <message>
        <source>Try again, or copy it first.</source>
        <translation type="unfinished">Réessayez, ou copiez-le d&apos;abord.</translation>
    </message>
    <message>
        <source>Give a file name.</source>
        <translation type="unfinished">Indiquez un nom de fichier.</translation>
    </message>
    <message>
        <source>Give another name.</source>
        <translation type="unfinished">Donnez un autre nom.</translation>
    </message>
    <message>
        <source>cannot be written here: %1</source>
        <translation type="unfinished">écriture impossible ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>not all of it could be written: %1</source>
        <translation type="unfinished">tout n&apos;a pas pu être écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">le fichier écrit n&apos;a pas pu être fermé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Choose another place; what was there before is untouched.</source>
        <translation type="unfinished">Choisissez un autre endroit&#xa0;; ce qui s&apos;y trouvait avant est intact.</translation>
    </message>
    <message>
        <source>it is written, but its folder could not be flushed: %1</source>
        <translation type="unfinished">il est écrit, mais la mise à jour de son dossier n&apos;a pas pu être menée à bien sur le support&#xa0;: %1</translation>
    </message>
    <message>
        <source>its folder could not be flushed: %1</source>
        <translation type="unfinished">la mise à jour de son dossier n&apos;a pas pu être menée à bien sur le support&#xa0;: %1</translation>
    </message>
    <message>
        <source>A vessel&apos;s register is far smaller; choose the right file.</source>
        <translation type="unfinished">Le registre d&apos;un navire est bien plus petit&#xa0;; choisissez le bon fichier.</translation>
    </message>
    <message>
        <source>the file is written in UTF-16, not in UTF-8</source>
        <translation type="unfinished">le fichier est écrit en UTF-16, et non en UTF-8</translation>
    </message>
    <message>
        <source>Save it as CSV UTF-8.</source>
        <translation type="unfinished">Enregistrez-le au format CSV UTF-8.</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation type="unfinished">le fichier est vide</translation>
    </message>
    <message>
        <source>Export a register to see the tables it needs.</source>
        <translation type="unfinished">Exportez un registre pour voir les tableaux qu&apos;il faut.</translation>
    </message>
    <message>
        <source>Put one quote at each end of the cell and double any quote inside it, or save the table as CSV again from the spreadsheet.</source>
        <translation type="unfinished">Mettez un guillemet à chaque bout de la cellule et doublez tout guillemet à l&apos;intérieur, ou réenregistrez le tableau en CSV depuis le tableur.</translation>
    </message>
    <message>
        <source>a quoted cell is not closed before the file ends</source>
        <translation type="unfinished">une cellule entre guillemets n&apos;est pas fermée avant la fin du fichier</translation>
    </message>
    <message>
        <source>byte %1 is not UTF-8</source>
        <translation type="unfinished">l&apos;octet %1 n&apos;est pas de l&apos;UTF-8</translation>
    </message>
    <message>
        <source>Save the file as CSV UTF-8.</source>
        <translation type="unfinished">Enregistrez le fichier au format CSV UTF-8.</translation>
    </message>
    <message>
        <source>the cell is empty</source>
        <translation type="unfinished">la cellule est vide</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation type="unfinished">Remplissez-la.</translation>
    </message>
    <message>
        <source>Write digits with a point, such as 71.40, without a unit.</source>
        <translation type="unfinished">Écrivez des chiffres avec un point, par exemple 71.40, sans unité.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un nombre entier</translation>
    </message>
    <message>
        <source>Write digits only, such as 1200.</source>
        <translation type="unfinished">Écrivez seulement des chiffres, par exemple 1200.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither yes nor no</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est ni yes ni no</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation type="unfinished">Écrivez yes (oui) ou no (non).</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas une date</translation>
    </message>
    <message>
        <source>Write it as YYYY-MM-DD, such as 2015-03-01, or leave it empty.</source>
        <translation type="unfinished">Écrivez-la sous la forme YYYY-MM-DD, par exemple 2015-03-01, ou laissez-la vide.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here</source>
        <translation type="unfinished">&quot;%1&quot; est inconnu ici</translation>
    </message>
    <message>
        <source>this is not JSON</source>
        <translation type="unfinished">ce n&apos;est pas du JSON</translation>
    </message>
    <message>
        <source>Look for a missing comma, quote or bracket just before this place; the file must be UTF-8.</source>
        <translation type="unfinished">Cherchez une virgule, un guillemet ou un crochet qui manque juste avant cet endroit&#xa0;; le fichier doit être en UTF-8.</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation type="unfinished">Corrigez-le.</translation>
    </message>
    <message>
        <source>this field is given twice</source>
        <translation type="unfinished">ce champ figure deux fois</translation>
    </message>
    <message>
        <source>this field is missing</source>
        <translation type="unfinished">ce champ manque</translation>
    </message>
    <message>
        <source>Add it.</source>
        <translation type="unfinished">Ajoutez-le.</translation>
    </message>
    <message>
        <source>this field is not known here</source>
        <translation type="unfinished">ce champ est inconnu ici</translation>
    </message>
    <message>
        <source>this field is empty</source>
        <translation type="unfinished">ce champ est vide</translation>
    </message>
    <message>
        <source>this list is empty</source>
        <translation type="unfinished">cette liste est vide</translation>
    </message>
    <message>
        <source>Name at least one, or leave the field out.</source>
        <translation type="unfinished">Indiquez-en au moins un, ou omettez le champ.</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;field&quot;: value}.</source>
        <translation type="unfinished">Écrivez-le entre accolades&#xa0;: {&quot;field&quot;: value}.</translation>
    </message>
    <message>
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Écrivez-la entre crochets&#xa0;: [&quot;one&quot;, &quot;two&quot;].</translation>
    </message>
    <message>
        <source>Write it in quotes.</source>
        <translation type="unfinished">Écrivez-le entre guillemets.</translation>
    </message>
    <message>
        <source>this must be a number</source>
        <translation type="unfinished">ceci doit être un nombre</translation>
    </message>
    <message>
        <source>Write it without quotes, with a point.</source>
        <translation type="unfinished">Écrivez-le sans guillemets, avec un point.</translation>
    </message>
    <message>
        <source>this must be a whole number from %1 to %2</source>
        <translation type="unfinished">ceci doit être un nombre entier de %1 à %2</translation>
    </message>
    <message>
        <source>Write digits only, without quotes.</source>
        <translation type="unfinished">Écrivez seulement des chiffres, sans guillemets.</translation>
    </message>
    <message>
        <source>this must be true or false</source>
        <translation type="unfinished">ceci doit être true ou false</translation>
    </message>
    <message>
        <source>Write YYYY-MM-DD.</source>
        <translation type="unfinished">Écrivez YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>boundary %1 (%2)</source>
        <translation type="unfinished">cloisonnement %1 (%2)</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, %2 by %3</source>
        <translation type="unfinished">cloisonnement %1 selon le plan approuvé, %2 selon %3</translation>
    </message>
    <message>
        <source>%1: NOT saved</source>
        <translation type="unfinished">%1&#xa0;: NON enregistré</translation>
    </message>
    <message>
        <source>%1: NOT adopted</source>
        <translation type="unfinished">%1&#xa0;: NON adopté</translation>
    </message>
    <message>
        <source>it refers to something that is not in this register</source>
        <translation type="unfinished">cela renvoie à quelque chose qui n&apos;est pas dans ce registre</translation>
    </message>
    <message>
        <source>Record what it refers to first.</source>
        <translation type="unfinished">Consignez d&apos;abord ce à quoi cela renvoie.</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Consignez plutôt une correction.</translation>
    </message>
    <message>
        <source>Enter it again.</source>
        <translation type="unfinished">Saisissez de nouveau.</translation>
    </message>
    <message>
        <source>a value is missing or is not a number (%1)</source>
        <translation type="unfinished">une valeur manque ou n&apos;est pas un nombre (%1)</translation>
    </message>
    <message>
        <source>it is too large for the register</source>
        <translation type="unfinished">c&apos;est trop grand pour le registre</translation>
    </message>
    <message>
        <source>Use a smaller photograph or a shorter text.</source>
        <translation type="unfinished">Prenez une photo plus petite ou un texte plus court.</translation>
    </message>
    <message>
        <source>%1 (SQLite %2)</source>
        <translation type="unfinished">%1 (SQLite %2)</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not installed</source>
        <translation type="unfinished">le pilote SQLite de Qt n&apos;est pas installé</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-sqlite.</source>
        <translation type="unfinished">Installez le paquet libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not usable</source>
        <translation type="unfinished">le pilote SQLite de Qt n&apos;est pas utilisable</translation>
    </message>
    <message>
        <source>Put the register back beside it, or move that file away to begin a new register.</source>
        <translation type="unfinished">Remettez le registre à côté, ou déplacez ce fichier ailleurs pour commencer un nouveau registre.</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation type="unfinished">le dossier n&apos;existe pas</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">le disque signale une erreur</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">ce n&apos;est pas un fichier</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Copiez-le dans un dossier à vous et ouvrez-le là.</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Mettez ce programme à jour, puis ouvrez-le de nouveau.</translation>
    </message>
    <message>
        <source>SQLite does not accept &quot;%1&quot; here (it answers %2), so entries would not be safe</source>
        <translation type="unfinished">SQLite n&apos;accepte pas &quot;%1&quot; ici (il répond %2)&#xa0;; les entrées ne seraient donc pas en sûreté</translation>
    </message>
    <message>
        <source>Copy the register to a disk of this computer and open it there.</source>
        <translation type="unfinished">Copiez le registre sur un disque de cet ordinateur et ouvrez-le là.</translation>
    </message>
    <message>
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Fermez-le là-bas, puis ouvrez-le ici.</translation>
    </message>
    <message>
        <source>Open it with the program that wrote it.</source>
        <translation type="unfinished">Ouvrez-le avec le programme qui l&apos;a écrit.</translation>
    </message>
    <message>
        <source>the file is damaged: %1</source>
        <translation type="unfinished">le fichier est endommagé&#xa0;: %1</translation>
    </message>
    <message>
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ceci est un registre d&apos;entraînement&#xa0;: rien n&apos;y est un enregistrement d&apos;un navire</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Importez-le dans un registre à lui.</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">un autre programme</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Fermez-le d&apos;abord là-bas.</translation>
    </message>
    <message>
        <source>the register is closed after a fault</source>
        <translation type="unfinished">le registre est fermé après une erreur</translation>
    </message>
    <message>
        <source>Open it again.</source>
        <translation type="unfinished">Ouvrez-le de nouveau.</translation>
    </message>
    <message>
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Consignez une correction sous un identifiant à elle.</translation>
    </message>
    <message>
        <source>Take or choose the photograph again.</source>
        <translation type="unfinished">Reprenez ou rechoisissez la photo.</translation>
    </message>
    <message>
        <source>its bytes are not in this register</source>
        <translation type="unfinished">ses octets ne sont pas dans ce registre</translation>
    </message>
    <message>
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">il n&apos;y a pas de telle porte dans le registre de ce navire</translation>
    </message>
    <message>
        <source>%1 is not in this register</source>
        <translation type="unfinished">%1 n&apos;est pas dans ce registre</translation>
    </message>
    <message>
        <source>Record it first, or both together.</source>
        <translation type="unfinished">Consignez-le d&apos;abord, ou les deux ensemble.</translation>
    </message>
    <message>
        <source>the walkdown &quot;%1&quot;</source>
        <translation type="unfinished">la tournée «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the run &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;essai «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the deficiency &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;anomalie «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot;</source>
        <translation type="unfinished">la personne «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the deficiency it repeats, &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;anomalie que cela répète, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>%1 (and 1 more such door)</source>
        <translation type="unfinished">%1 (et 1 autre porte dans ce cas)</translation>
    </message>
    <message>
        <source>%1 (and %2 more such doors)</source>
        <translation type="unfinished">%1 (et %2 autres portes dans ce cas)</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 y renvoie en retour</translation>
    </message>
    <message>
        <source>no issue of the arrangement has a door &quot;%1&quot;</source>
        <translation type="unfinished">aucune version de la disposition n&apos;a de porte &quot;%1&quot;</translation>
    </message>
    <message>
        <source>in an A-class boundary</source>
        <translation type="unfinished">dans un cloisonnement du type A</translation>
    </message>
    <message>
        <source>in a B-class boundary</source>
        <translation type="unfinished">dans un cloisonnement du type B</translation>
    </message>
    <message>
        <source>in a C-class boundary</source>
        <translation type="unfinished">dans un cloisonnement du type C</translation>
    </message>
    <message>
        <source>more than 600 passengers</source>
        <translation type="unfinished">plus de 600 passagers</translation>
    </message>
    <message>
        <source>600 passengers or fewer</source>
        <translation type="unfinished">600 passagers ou moins</translation>
    </message>
    <message>
        <source>machinery space of category A</source>
        <translation type="unfinished">local de machines de la catégorie A</translation>
    </message>
    <message>
        <source>more than 36 passengers</source>
        <translation type="unfinished">plus de 36 passagers</translation>
    </message>
    <message>
        <source>36 passengers or fewer</source>
        <translation type="unfinished">36 passagers ou moins</translation>
    </message>
    <message>
        <source>%1? The register does not say</source>
        <translation type="unfinished">%1&#xa0;? Le registre ne le dit pas</translation>
    </message>
    <message>
        <source>keel laid before %1: ask for the approved drawing</source>
        <translation type="unfinished">quille posée avant le %1&#xa0;: demander le plan approuvé</translation>
    </message>
    <message>
        <source>keel date unknown: ask for the approved drawing</source>
        <translation type="unfinished">date de pose de la quille inconnue&#xa0;: demander le plan approuvé</translation>
    </message>
    <message>
        <source>Give low or high as well, and &quot;source&quot;: &quot;gauge&quot;.</source>
        <translation type="unfinished">Donnez aussi low ou high, et &quot;source&quot;: &quot;gauge&quot;.</translation>
    </message>
    <message>
        <source>only a band of closing times or rates can be approximate</source>
        <translation type="unfinished">seule une plage de temps ou de vitesses de fermeture peut être approximative</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Une telle baïonnette a au plus 20&#xa0;% de la longueur moyenne de la tranche, et au plus 8 m (26 ft).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">ceci ne peut pas venir avant &quot;%1&quot;</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 et %2</translation>
    </message>
    <message>
        <source>faster by no more than %1 per cent (our own margin, no source), and a fast leaf crushes</source>
        <translation type="unfinished">plus rapide d&apos;au plus %1 pour cent (notre propre marge, sans source), et un vantail rapide écrase</translation>
    </message>
    <message>
        <source>slower by no more than %1 per cent (our own margin, no source)</source>
        <translation type="unfinished">plus lent d&apos;au plus %1 pour cent (notre propre marge, sans source)</translation>
    </message>
    <message>
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">le registre ne dit pas si elle donne accès à un local de catégorie spéciale</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">dans un cloisonnement du type C&apos;</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">navire à passagers SOLAS</translation>
    </message>
    <message>
        <source>Canadian vessel with convention certificates</source>
        <translation type="unfinished">bâtiment canadien avec certificats de convention</translation>
    </message>
    <message>
        <source>Canadian vessel without convention certificates</source>
        <translation type="unfinished">bâtiment canadien sans certificats de convention</translation>
    </message>
    <message>
        <source>EU inland waterway vessel</source>
        <translation type="unfinished">bateau de navigation intérieure de l&apos;UE</translation>
    </message>
    <message>
        <source>large yacht of 500 GT or more</source>
        <translation type="unfinished">grand yacht de 500 GT ou plus</translation>
    </message>
    <message>
        <source>vessel under other domestic rules</source>
        <translation type="unfinished">navire sous d&apos;autres règles nationales</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 ou %2</translation>
    </message>
    <message>
        <source>listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">citée par II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>installed on or after %1</source>
        <translation type="unfinished">installée le %1 ou après</translation>
    </message>
    <message>
        <source>keel laid on or after %1</source>
        <translation type="unfinished">quille posée le %1 ou après</translation>
    </message>
    <message>
        <source>keel laid before %1</source>
        <translation type="unfinished">quille posée avant le %1</translation>
    </message>
    <message>
        <source>keel laid on or after %1 and before %2</source>
        <translation type="unfinished">quille posée le %1 ou après et avant le %2</translation>
    </message>
    <message>
        <source>%1, or no date on record</source>
        <translation type="unfinished">%1, ou aucune date enregistrée</translation>
    </message>
    <message>
        <source>a ship of another date: %1; a ship with no date on record: %2</source>
        <translation type="unfinished">un navire d&apos;une autre date : %1 ; un navire sans date enregistrée : %2</translation>
    </message>
    <message>
        <source>advice only</source>
        <translation type="unfinished">simple recommandation</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">recueil des règles</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">processus %1 sur %2</translation>
    </message>
    <message>
        <source>no installation date on record, but the ship is new enough</source>
        <translation type="unfinished">pas de date d&apos;installation enregistrée, mais le navire est assez récent</translation>
    </message>
    <message>
        <source>the ship&apos;s passenger number or length is outside the scope of the text</source>
        <translation type="unfinished">le nombre de passagers ou la longueur du navire sort du champ du texte</translation>
    </message>
    <message>
        <source>boundary class not known</source>
        <translation type="unfinished">classe du cloisonnement inconnue</translation>
    </message>
    <message>
        <source>not an emergency escape trunk</source>
        <translation type="unfinished">pas un puits d&apos;échappée de secours</translation>
    </message>
    <message>
        <source>not a special category space</source>
        <translation type="unfinished">pas un local de catégorie spéciale</translation>
    </message>
    <message>
        <source>faces an embarkation or escape deck</source>
        <translation type="unfinished">donne sur un pont d&apos;embarquement ou d&apos;évacuation</translation>
    </message>
    <message>
        <source>does not face an embarkation or escape deck</source>
        <translation type="unfinished">ne donne pas sur un pont d&apos;embarquement ou d&apos;évacuation</translation>
    </message>
    <message>
        <source>not a machinery space of category A</source>
        <translation type="unfinished">pas un local de machines de la catégorie A</translation>
    </message>
    <message>
        <source>keel laid %1: text for ships of other dates</source>
        <translation type="unfinished">quille posée le %1&#xa0;: texte pour des navires d&apos;autres dates</translation>
    </message>
    <message>
        <source>installation date unknown</source>
        <translation type="unfinished">date d&apos;installation inconnue</translation>
    </message>
    <message>
        <source>the vessel&apos;s flag has its own text</source>
        <translation type="unfinished">le pavillon du navire a son propre texte</translation>
    </message>
    <message>
        <source>text for other ships: %1</source>
        <translation type="unfinished">texte pour d&apos;autres navires&#xa0;: %1</translation>
    </message>
    <message>
        <source>no such door aboard</source>
        <translation type="unfinished">pas de telle porte à bord</translation>
    </message>
    <message>
        <source>US subchapter H vessel</source>
        <translation type="unfinished">navire américain du sous-chapitre H</translation>
    </message>
    <message>
        <source>US subchapter K vessel</source>
        <translation type="unfinished">navire américain du sous-chapitre K</translation>
    </message>
    <message>
        <source>Canadian day vessel, 24 m or more, fewer than 100 passengers</source>
        <translation type="unfinished">bateau de jour canadien, 24 m ou plus, moins de 100 passagers</translation>
    </message>
    <message>
        <source>binding</source>
        <translation type="unfinished">obligatoire</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">en cas d&apos;échec, l&apos;inspecteur décide</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">ne s&apos;applique pas</translation>
    </message>
    <message>
        <source>%1 passengers is not possible</source>
        <translation type="unfinished">%1 passagers, c&apos;est impossible</translation>
    </message>
    <message>
        <source>Give the length on the drawing, in metres.</source>
        <translation type="unfinished">Donnez la longueur du plan, en mètres.</translation>
    </message>
    <message>
        <source>this date does not exist</source>
        <translation type="unfinished">cette date n&apos;existe pas</translation>
    </message>
    <message>
        <source>%1 is before 1900</source>
        <translation type="unfinished">%1 est avant 1900</translation>
    </message>
    <message>
        <source>Check the year, or leave it empty if the date is unknown.</source>
        <translation type="unfinished">Vérifiez l&apos;année, ou laissez vide si la date est inconnue.</translation>
    </message>
    <message>
        <source>%1 m is outside %2 to %3 m</source>
        <translation type="unfinished">%1 m est hors de %2 à %3 m</translation>
    </message>
    <message>
        <source>Remove the blanks.</source>
        <translation type="unfinished">Supprimez les espaces.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">le pont &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every deck its own number, or remove one row.</source>
        <translation type="unfinished">Donnez à chaque pont son propre numéro, ou supprimez une ligne.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">la tranche &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every zone its own number, or remove one row.</source>
        <translation type="unfinished">Donnez à chaque tranche son propre numéro, ou supprimez une ligne.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">le cloisonnement &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or remove one row.</source>
        <translation type="unfinished">Donnez à chaque cloisonnement son propre identifiant, ou supprimez une ligne.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">la porte &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every door its own number, or remove one row.</source>
        <translation type="unfinished">Donnez à chaque porte son propre numéro, ou supprimez une ligne.</translation>
    </message>
    <message>
        <source>there is no deck &quot;%1&quot;</source>
        <translation type="unfinished">il n&apos;y a pas de pont &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no zone &quot;%1&quot;</source>
        <translation type="unfinished">il n&apos;y a pas de tranche &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no boundary &quot;%1&quot;</source>
        <translation type="unfinished">il n&apos;y a pas de cloisonnement &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give square metres, or leave it empty if not known.</source>
        <translation type="unfinished">Donnez des mètres carrés, ou laissez vide si c&apos;est inconnu.</translation>
    </message>
    <message>
        <source>Measure in metres from the aft perpendicular, positive forward.</source>
        <translation type="unfinished">Mesurez en mètres depuis la perpendiculaire arrière, positif vers l&apos;avant.</translation>
    </message>
    <message>
        <source>Zones may touch but not overlap.</source>
        <translation type="unfinished">Des tranches peuvent se toucher mais non se chevaucher.</translation>
    </message>
    <message>
        <source>this vessel&apos;s fire tables have no such category of space</source>
        <translation type="unfinished">les tableaux d&apos;incendie de ce navire n&apos;ont pas cette catégorie de local</translation>
    </message>
    <message>
        <source>a zone bulkhead is between two zones; here both are &quot;%1&quot;</source>
        <translation type="unfinished">une cloison de tranche est entre deux tranches&#xa0;; ici les deux sont &quot;%1&quot;</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">la tranche &quot;%1&quot; est en arrière de la tranche &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Swap zone_aft and zone_forward.</source>
        <translation type="unfinished">Intervertissez zone_aft et zone_forward.</translation>
    </message>
    <message>
        <source>%1 m is more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m est à plus de 3 m hors de ses tranches, %2 à %3 m</translation>
    </message>
    <message>
        <source>Check the position of the boundary, or the zones it names.</source>
        <translation type="unfinished">Vérifiez la position du cloisonnement, ou les tranches qu&apos;il indique.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m is not possible</source>
        <translation type="unfinished">un passage libre de %1 m est impossible</translation>
    </message>
    <message>
        <source>a leaf of %1 kg is not possible</source>
        <translation type="unfinished">un vantail de %1 kg est impossible</translation>
    </message>
    <message>
        <source>only PostgreSQL databases are supported</source>
        <translation type="unfinished">seules les bases de données PostgreSQL sont admises</translation>
    </message>
    <message>
        <source>an option contains a semicolon</source>
        <translation type="unfinished">une option contient un point-virgule</translation>
    </message>
    <message>
        <source>Check the address, name and password, and that the server is running.</source>
        <translation type="unfinished">Vérifiez l&apos;adresse, le nom et le mot de passe, et que le serveur est en marche.</translation>
    </message>
    <message>
        <source>the connection was lost</source>
        <translation type="unfinished">la connexion a été perdue</translation>
    </message>
    <message>
        <source>the connection was lost: %1 files NOT imported, from %2 on</source>
        <translation type="unfinished">la connexion a été perdue&#xa0;: %1 fichiers NON importés, à partir de %2</translation>
    </message>
    <message>
        <source>Run the same command again; files already imported stay imported.</source>
        <translation type="unfinished">Relancez la même commande&#xa0;; les fichiers déjà importés restent importés.</translation>
    </message>
    <message>
        <source>this database holds other data: NOT touched</source>
        <translation type="unfinished">cette base contient d&apos;autres données&#xa0;: NON modifiée</translation>
    </message>
    <message>
        <source>this database does not store text as UTF-8: NOT touched</source>
        <translation type="unfinished">cette base ne stocke pas le texte en UTF-8&#xa0;: NON modifiée</translation>
    </message>
    <message>
        <source>Create one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Créez-en une WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one reads up to %2): NOT touched</source>
        <translation type="unfinished">les tables ont été créées par un programme plus récent (version %1&#xa0;; celui-ci lit jusqu&apos;à %2)&#xa0;: NON modifiées</translation>
    </message>
    <message>
        <source>Enter the vessel&apos;s number aboard, then export again.</source>
        <translation type="unfinished">Saisissez le numéro du navire à bord, puis exportez de nouveau.</translation>
    </message>
    <message>
        <source>it comes with a different key: %1, fingerprint %2 instead of %3</source>
        <translation type="unfinished">il vient avec une autre clé&#xa0;: %1, empreinte %2 au lieu de %3</translation>
    </message>
    <message>
        <source>Ask aboard whether the key is new; if so, import the file with --accept-key and that key.</source>
        <translation type="unfinished">Demandez à bord si la clé est nouvelle&#xa0;; si oui, importez le fichier avec --accept-key et cette clé.</translation>
    </message>
    <message>
        <source>Using the catalogue built into the program: %1</source>
        <translation type="unfinished">Le catalogue intégré au programme est utilisé&#xa0;: %1</translation>
    </message>
    <message>
        <source>its catalogue files are missing</source>
        <translation type="unfinished">ses fichiers de catalogue manquent</translation>
    </message>
    <message>
        <source>must be a list with at least one entry</source>
        <translation type="unfinished">doit être une liste d&apos;au moins une entrée</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is listed twice</source>
        <translation type="unfinished">&apos;%1&apos; figure deux fois</translation>
    </message>
    <message>
        <source>requirement &apos;%1&apos; is in both catalogues</source>
        <translation type="unfinished">l&apos;exigence &apos;%1&apos; est dans les deux catalogues</translation>
    </message>
    <message>
        <source>this condition is empty</source>
        <translation type="unfinished">cette condition est vide</translation>
    </message>
    <message>
        <source>Leave it out if every door is meant.</source>
        <translation type="unfinished">Omettez-la si toutes les portes sont visées.</translation>
    </message>
    <message>
        <source>Leave it out if there are none.</source>
        <translation type="unfinished">Omettez-le s&apos;il n&apos;y en a pas.</translation>
    </message>
    <message>
        <source>a requirement checked by eye needs a question</source>
        <translation type="unfinished">une exigence vérifiée à vue a besoin d&apos;une question</translation>
    </message>
    <message>
        <source>a second printed figure needs a gauge limit beside it</source>
        <translation type="unfinished">une seconde valeur imprimée a besoin d&apos;une limite gauge à côté</translation>
    </message>
    <message>
        <source>Remove &quot;approximate&quot;, or give such a band.</source>
        <translation type="unfinished">Supprimez &quot;approximate&quot;, ou donnez une telle plage.</translation>
    </message>
    <message>
        <source>a margin must be 0 or more and less than 1</source>
        <translation type="unfinished">une marge doit être de 0 ou plus et inférieure à 1</translation>
    </message>
    <message>
        <source>Give it as a fraction of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Donnez-la en fraction de la limite&#xa0;: 0.05 est 5 pour cent.</translation>
    </message>
    <message>
        <source>a figure needs a source</source>
        <translation type="unfinished">une valeur a besoin d&apos;une source</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is already in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; est déjà dans le catalogue</translation>
    </message>
    <message>
        <source>a tightened requirement needs a limit</source>
        <translation type="unfinished">une exigence resserrée a besoin d&apos;une limite</translation>
    </message>
    <message>
        <source>the requirement has no such limit</source>
        <translation type="unfinished">l&apos;exigence n&apos;a pas une telle limite</translation>
    </message>
    <message>
        <source>Replace the whole requirement instead.</source>
        <translation type="unfinished">Remplacez plutôt toute l&apos;exigence.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the catalogue&apos;s %3 %2</source>
        <translation type="unfinished">%1&#xa0;%2 est plus large que les %3&#xa0;%2 du catalogue</translation>
    </message>
    <message>
        <source>Tighten the requirement, or replace it as a whole.</source>
        <translation type="unfinished">Resserrez l&apos;exigence, ou remplacez-la en entier.</translation>
    </message>
    <message>
        <source>this margin is wider than the catalogue&apos;s</source>
        <translation type="unfinished">cette marge est plus large que celle du catalogue</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; n&apos;est pas une liste de catégories d&apos;ici</translation>
    </message>
    <message>
        <source>there is already a table for these divisions</source>
        <translation type="unfinished">il y a déjà un tableau pour ces cloisonnements</translation>
    </message>
    <message>
        <source>is not a cell of this table</source>
        <translation type="unfinished">n&apos;est pas une case de ce tableau</translation>
    </message>
    <message>
        <source>Write two of its categories; for a bulkhead, the lower one first.</source>
        <translation type="unfinished">Écrivez deux de ses catégories&#xa0;; pour une cloison, la plus basse d&apos;abord.</translation>
    </message>
    <message>
        <source>%1 is not a value printed in a table</source>
        <translation type="unfinished">%1 n&apos;est pas une valeur imprimée dans un tableau</translation>
    </message>
    <message>
        <source>A lookout is posted on each side of every door that will move</source>
        <translation type="unfinished">Une personne surveille de chaque côté de chaque porte qui va bouger</translation>
    </message>
    <message>
        <source>The start word and the stop word have been given and read back</source>
        <translation type="unfinished">Le mot de départ et le mot d&apos;arrêt ont été donnés et collationnés</translation>
    </message>
    <message>
        <source>Every path and pocket is clear; hands, feet and cables are off every edge</source>
        <translation type="unfinished">Toutes les courses et tous les logements de vantail sont dégagés&#xa0;; mains, pieds et câbles sont éloignés de chaque bord</translation>
    </message>
    <message>
        <source>a fault in the program: %1</source>
        <translation type="unfinished">une erreur dans le programme&#xa0;: %1</translation>
    </message>
    <message>
        <source>Please report it, with the file that caused it.</source>
        <translation type="unfinished">Veuillez la signaler, avec le fichier qui l&apos;a causée.</translation>
    </message>
    <message>
        <source>there is no register here</source>
        <translation type="unfinished">il n&apos;y a pas de registre ici</translation>
    </message>
    <message>
        <source>this register has no vessel yet</source>
        <translation type="unfinished">ce registre n&apos;a pas encore de navire</translation>
    </message>
    <message>
        <source>The refused file states its key.</source>
        <translation type="unfinished">Le fichier refusé indique sa clé.</translation>
    </message>
    <message>
        <source>who accepts the key is not stated</source>
        <translation type="unfinished">il n&apos;est pas indiqué qui accepte la clé</translation>
    </message>
    <message>
        <source>this is not the file&apos;s key, which is %1</source>
        <translation type="unfinished">ce n&apos;est pas la clé du fichier, qui est %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a document kind</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un genre de document</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, blank-form or rule-book.</source>
        <translation type="unfinished">Choisissez survey, deficiency-list, work-list, door-record, blank-form ou rule-book.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a report format</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un format de rapport</translation>
    </message>
    <message>
        <source>a blank form can only be a PDF</source>
        <translation type="unfinished">un formulaire vierge ne peut être qu&apos;un PDF</translation>
    </message>
    <message>
        <source>a rule book can only be a PDF</source>
        <translation type="unfinished">un recueil des règles ne peut être qu&apos;un PDF</translation>
    </message>
    <message>
        <source>Write it to a PDF file; &quot;rules --json&quot; gives its data.</source>
        <translation type="unfinished">Écrivez-le dans un fichier PDF&#xa0;; &quot;rules --json&quot; en donne les données.</translation>
    </message>
    <message>
        <source>there is no requirement &apos;%1&apos;</source>
        <translation type="unfinished">il n&apos;y a pas d&apos;exigence &apos;%1&apos;</translation>
    </message>
    <message>
        <source>&quot;rules&quot; lists them all.</source>
        <translation type="unfinished">&quot;rules&quot; les énumère toutes.</translation>
    </message>
    <message>
        <source>a door belongs to a vessel</source>
        <translation type="unfinished">une porte appartient à un navire</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register with --vessel.</source>
        <translation type="unfinished">Donnez le registre du navire avec --vessel.</translation>
    </message>
    <message>
        <source>a door record is for one door</source>
        <translation type="unfinished">une fiche de porte concerne une seule porte</translation>
    </message>
    <message>
        <source>no one in the register is named &apos;%1&apos;</source>
        <translation type="unfinished">personne dans le registre ne s&apos;appelle &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Write the name as it is in the register.</source>
        <translation type="unfinished">Écrivez le nom tel qu&apos;il est dans le registre.</translation>
    </message>
    <message>
        <source>Give an id from &quot;practice list&quot;, or a file.</source>
        <translation type="unfinished">Donnez un identifiant de &quot;practice list&quot;, ou un fichier.</translation>
    </message>
    <message>
        <source>Give a number; the same number gives the same doors.</source>
        <translation type="unfinished">Donnez un nombre&#xa0;; le même nombre donne les mêmes portes.</translation>
    </message>
    <message>
        <source>Give the answers file.</source>
        <translation type="unfinished">Donnez le fichier de réponses.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas une paire de catégories de ce navire</translation>
    </message>
    <message>
        <source>a ship of this kind has no main vertical zones</source>
        <translation type="unfinished">un navire de ce genre n&apos;a pas de tranches verticales principales</translation>
    </message>
    <message>
        <source>must be between 0 and 1</source>
        <translation type="unfinished">doit être compris entre 0 et 1</translation>
    </message>
    <message>
        <source>must be between 0 and 1, to six decimals at most</source>
        <translation type="unfinished">doit être compris entre 0 et 1, avec six décimales au plus</translation>
    </message>
    <message>
        <source>is not a usable number</source>
        <translation type="unfinished">n&apos;est pas un nombre utilisable</translation>
    </message>
    <message>
        <source>no line can be fitted: there are only %1 points, or all have the same x, or a number is too large</source>
        <translation type="unfinished">aucune droite ne peut être ajustée&#xa0;: il n&apos;y a que %1 points, ou tous ont le même x, ou un nombre est trop grand</translation>
    </message>
    <message>
        <source>Give at least three points, with at least two different x.</source>
        <translation type="unfinished">Donnez au moins trois points, avec au moins deux x différents.</translation>
    </message>
    <message>
        <source>a standard uncertainty must be 0 or more</source>
        <translation type="unfinished">une incertitude-type doit être de 0 ou plus</translation>
    </message>
    <message>
        <source>is not a limit</source>
        <translation type="unfinished">n&apos;est pas une limite</translation>
    </message>
    <message>
        <source>there is no limit to judge against</source>
        <translation type="unfinished">il n&apos;y a pas de limite à laquelle comparer</translation>
    </message>
    <message>
        <source>degrees of freedom must be 1 or more</source>
        <translation type="unfinished">les degrés de liberté doivent être au moins 1</translation>
    </message>
    <message>
        <source>Leave it out if u is well known.</source>
        <translation type="unfinished">Omettez-les si u est bien connue.</translation>
    </message>
    <message>
        <source>failed cannot exceed tested, and tested cannot exceed the number of doors</source>
        <translation type="unfinished">failed ne peut dépasser tested, et tested ne peut dépasser le nombre de portes</translation>
    </message>
    <message>
        <source>no display is available</source>
        <translation type="unfinished">aucun affichage n&apos;est disponible</translation>
    </message>
    <message>
        <source>entries for this vessel are not saved yet and cannot be kept elsewhere</source>
        <translation type="unfinished">des entrées pour ce navire ne sont pas encore enregistrées et ne peuvent être gardées ailleurs</translation>
    </message>
    <message>
        <source>no file has been opened</source>
        <translation type="unfinished">aucun fichier n&apos;a été ouvert</translation>
    </message>
    <message>
        <source>Open the file first.</source>
        <translation type="unfinished">Ouvrez d&apos;abord le fichier.</translation>
    </message>
    <message>
        <source>there is no unfinished exercise</source>
        <translation type="unfinished">il n&apos;y a pas de leçon inachevée</translation>
    </message>
    <message>
        <source>the exercise has changed since it was begun</source>
        <translation type="unfinished">la leçon a changé depuis son début</translation>
    </message>
    <message>
        <source>Put it aside and begin again.</source>
        <translation type="unfinished">Mettez-la de côté et recommencez.</translation>
    </message>
    <message>
        <source>is not in this walkdown</source>
        <translation type="unfinished">n&apos;est pas dans cette tournée</translation>
    </message>
    <message>
        <source>not all cautions are confirmed</source>
        <translation type="unfinished">toutes les précautions ne sont pas confirmées</translation>
    </message>
    <message>
        <source>Confirm each of them first.</source>
        <translation type="unfinished">Confirmez d&apos;abord chacune d&apos;elles.</translation>
    </message>
    <message>
        <source>Choose another, or check its permissions.</source>
        <translation type="unfinished">Choisissez-en un autre, ou vérifiez ses permissions.</translation>
    </message>
    <message>
        <source>Take it again at a smaller size.</source>
        <translation type="unfinished">Reprenez-la en plus petit.</translation>
    </message>
    <message>
        <source>it could not be saved</source>
        <translation type="unfinished">cela n&apos;a pas pu être enregistré</translation>
    </message>
    <message>
        <source>another program is writing to it (%1)</source>
        <translation type="unfinished">un autre programme y écrit (%1)</translation>
    </message>
    <message>
        <source>it is not in the walkdown on screen</source>
        <translation type="unfinished">elle n&apos;est pas dans la tournée affichée</translation>
    </message>
    <message>
        <source>None of it is refused any more</source>
        <translation type="unfinished">Plus rien n&apos;en est refusé</translation>
    </message>
    <message>
        <source>the part that cannot be read is kept nowhere else</source>
        <translation type="unfinished">la partie qui ne peut pas être lue n&apos;est gardée nulle part ailleurs</translation>
    </message>
    <message>
        <source>unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">des entrées non enregistrées gardées ici ne peuvent pas être lues&#xa0;: %1</translation>
    </message>
    <message>
        <source>The file is kept as %2; report this.</source>
        <translation type="unfinished">Le fichier est gardé sous le nom %2&#xa0;; signalez-le.</translation>
    </message>
    <message>
        <source>The file stays as it is and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">Le fichier reste tel quel et rien n&apos;y est ajouté&#xa0;: libérez de la place, puis relancez.</translation>
    </message>
    <message>
        <source>some unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">certaines entrées non enregistrées gardées ici ne peuvent pas être lues&#xa0;: %1</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 is enough with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale, ses baïonnettes et ses niches sont A-60&#xa0;; A-0 suffit avec un local de catégorie 5, 9 ou 10 d&apos;un côté, ou avec des soutes à combustible des deux côtés.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation follows the table, with B-0, C and * read as A-0.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale est du type A&#xa0;; son isolation suit le tableau, B-0, C et * se lisant A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 is enough with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Les cloisonnements des locaux de catégorie spéciale et des espaces rouliers sont A-60&#xa0;; A-0 suffit avec un local de catégorie 5, 9 ou 10 d&apos;un côté.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) renumbers II-2/9.6; that text has not been read.</source>
        <translation type="unfinished">À partir de 2026, MSC.550(108) renumérote II-2/9.6&#xa0;; ce texte n&apos;a pas été lu.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is the higher of A-30 and table (b); A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale est le plus élevé de A-30 et du tableau (b)&#xa0;; A-0 suffit avec un local de type 8, 12 ou 13 d&apos;un côté ou de l&apos;autre.</translation>
    </message>
    <message>
        <source>A step in a main vertical zone is A-60; A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Une baïonnette dans une tranche verticale principale est A-60&#xa0;; A-0 suffit avec un local de type 8, 12 ou 13 d&apos;un côté ou de l&apos;autre.</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 39.9 m (131 ft); no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">En règle générale, la longueur moyenne d&apos;une tranche sur un même pont est d&apos;au plus 39,9 m (131 ft)&#xa0;; aucune extension n&apos;est imprimée, et un ferry peut avoir un équivalent approuvé (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry is the higher of A-30 and table (c).</source>
        <translation type="unfinished">Un pont qui limite une tranche horizontale d&apos;un ferry à véhicules est le plus élevé de A-30 et du tableau (c).</translation>
    </message>
    <message>
        <source>The value for ships built on or after 1 July 2014 is given; the build date is not known.</source>
        <translation type="unfinished">La valeur pour les navires construits le 1er juillet 2014 ou après est donnée&#xa0;; la date de construction n&apos;est pas connue.</translation>
    </message>
    <message>
        <source>Where oil fuel tanks are below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">S&apos;il y a des soutes à combustible au-dessous d&apos;un local de catégorie spéciale, A-0 suffit pour le pont qui les sépare (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 follows the tables of its time, which are not included: compare with the approved plan.</source>
        <translation type="unfinished">Un navire construit avant le 1er juillet 2002 suit les tableaux de son époque, qui ne sont pas compris ici&#xa0;: comparez avec le plan approuvé.</translation>
    </message>
    <message>
        <source>Whether these tables apply to the ship is not on record: compare with the approved plan.</source>
        <translation type="unfinished">Rien n&apos;est enregistré sur l&apos;application de ces tableaux au navire&#xa0;: comparez avec le plan approuvé.</translation>
    </message>
    <message>
        <source>the register has no walkdown with this id</source>
        <translation type="unfinished">le registre n&apos;a pas de tournée portant cet identifiant</translation>
    </message>
    <message>
        <source>the register has no door with this number</source>
        <translation type="unfinished">le registre n&apos;a pas de porte portant ce numéro</translation>
    </message>
    <message>
        <source>a door record can only be a PDF</source>
        <translation type="unfinished">une fiche de porte ne peut être qu&apos;un PDF</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey report as CSV or JSON.</source>
        <translation type="unfinished">Choisissez PDF, ou le rapport de visite en CSV ou JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be created</source>
        <translation type="unfinished">le PDF n&apos;a pas pu être créé</translation>
    </message>
    <message>
        <source>a file can describe only one vessel; the first is on line %1</source>
        <translation type="unfinished">un fichier ne peut décrire qu&apos;un navire&#xa0;; le premier est à la ligne %1</translation>
    </message>
    <message>
        <source>the row does not say which table it belongs to</source>
        <translation type="unfinished">la ligne ne dit pas à quelle table elle appartient</translation>
    </message>
    <message>
        <source>a register row cannot begin with &quot;%1&quot;</source>
        <translation type="unfinished">une ligne de registre ne peut pas commencer par &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this row comes before the header of its table</source>
        <translation type="unfinished">cette ligne vient avant l&apos;en-tête de sa table</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the column names above it.</source>
        <translation type="unfinished">Mettez au-dessus l&apos;en-tête &quot;%1:&quot; avec les noms de colonnes.</translation>
    </message>
    <message>
        <source>Remove the cell, or name its column in the header.</source>
        <translation type="unfinished">Supprimez la cellule, ou nommez sa colonne dans l&apos;en-tête.</translation>
    </message>
    <message>
        <source>Correct its name, or remove the column.</source>
        <translation type="unfinished">Corrigez son nom, ou supprimez la colonne.</translation>
    </message>
    <message>
        <source>the column is listed twice</source>
        <translation type="unfinished">la colonne figure deux fois</translation>
    </message>
    <message>
        <source>Remove one of them.</source>
        <translation type="unfinished">Supprimez l&apos;une des deux.</translation>
    </message>
    <message>
        <source>a point has two numbers; here there are %1 cells</source>
        <translation type="unfinished">un point a deux nombres&#xa0;; ici il y a %1 cellules</translation>
    </message>
    <message>
        <source>Ids are version 7 UUIDs in lower case.</source>
        <translation type="unfinished">Les identifiants sont des UUID version 7 en minuscules.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date and time</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas une date avec heure</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice, first at %2</source>
        <translation type="unfinished">la porte &quot;%1&quot; figure deux fois, d&apos;abord à %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or merge the two records.</source>
        <translation type="unfinished">Donnez à chaque porte son propre identifiant, ou réunissez les deux enregistrements.</translation>
    </message>
    <message>
        <source>this must be the categories of the two spaces, 1 to %1 in this vessel&apos;s fire tables</source>
        <translation type="unfinished">ce doivent être les catégories des deux locaux, 1 à %1 dans les tableaux d&apos;incendie de ce navire</translation>
    </message>
    <message>
        <source>the catalogue has no requirement with this name</source>
        <translation type="unfinished">le catalogue n&apos;a pas d&apos;exigence de ce nom</translation>
    </message>
    <message>
        <source>Use the ids in the catalogue.</source>
        <translation type="unfinished">Utilisez les identifiants du catalogue.</translation>
    </message>
    <message>
        <source>this is not an answer</source>
        <translation type="unfinished">ceci n&apos;est pas une réponse</translation>
    </message>
    <message>
        <source>this requirement has no figure measured with rule or gauge</source>
        <translation type="unfinished">cette exigence n&apos;a pas de valeur mesurée à la règle ou à la jauge</translation>
    </message>
    <message>
        <source>no instrument for this figure has so coarse a step</source>
        <translation type="unfinished">aucun instrument pour cette valeur n&apos;a un échelon aussi grossier</translation>
    </message>
    <message>
        <source>Give the step in the unit of the requirement, at most %1.</source>
        <translation type="unfinished">Donnez l&apos;échelon dans l&apos;unité de l&apos;exigence, %1 au plus.</translation>
    </message>
    <message>
        <source>Give the marks that were timed, or remove the run.</source>
        <translation type="unfinished">Donnez les repères chronométrés, ou supprimez l&apos;essai.</translation>
    </message>
    <message>
        <source>Give seconds from the start of the stopwatch.</source>
        <translation type="unfinished">Donnez les secondes depuis le départ du chronomètre.</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one stopwatch.</source>
        <translation type="unfinished">Donnez les secondes des deux événements sur un même chronomètre.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees is not possible</source>
        <translation type="unfinished">une gîte de plus de 45 degrés est impossible</translation>
    </message>
    <message>
        <source>the vessel could not be saved there</source>
        <translation type="unfinished">le navire n&apos;a pas pu être enregistré là</translation>
    </message>
    <message>
        <source>is missing: this is not an exercise</source>
        <translation type="unfinished">manque&#xa0;: ceci n&apos;est pas une leçon</translation>
    </message>
    <message>
        <source>this program cannot read this form of exercise (it reads form %1)</source>
        <translation type="unfinished">ce programme ne peut pas lire cette forme de leçon (il lit la forme %1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written again.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou faites réécrire la leçon.</translation>
    </message>
    <message>
        <source>it is locked with a password</source>
        <translation type="unfinished">elle est verrouillée par un mot de passe</translation>
    </message>
    <message>
        <source>Unlock it with that password.</source>
        <translation type="unfinished">Déverrouillez-la avec ce mot de passe.</translation>
    </message>
    <message>
        <source>has characters other than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">contient d&apos;autres caractères que minuscules, chiffres et traits d&apos;union</translation>
    </message>
    <message>
        <source>Make it shorter.</source>
        <translation type="unfinished">Raccourcissez-le.</translation>
    </message>
    <message>
        <source>door %1 is listed twice</source>
        <translation type="unfinished">la porte %1 figure deux fois</translation>
    </message>
    <message>
        <source>&apos;%1&apos; and &apos;%2&apos; would hide each other on one door</source>
        <translation type="unfinished">&apos;%1&apos; et &apos;%2&apos; se cacheraient l&apos;un l&apos;autre sur une même porte</translation>
    </message>
    <message>
        <source>is given without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">est donné sans &quot;drawn&quot;&#xa0;: rien n&apos;est tiré au sort</translation>
    </message>
    <message>
        <source>these doors can take only %1 more faults</source>
        <translation type="unfinished">ces portes ne peuvent recevoir que %1 défauts de plus</translation>
    </message>
    <message>
        <source>is missing: an exam needs a pass mark</source>
        <translation type="unfinished">manque&#xa0;: un examen a besoin d&apos;un seuil de réussite</translation>
    </message>
    <message>
        <source>only an exam has a pass mark</source>
        <translation type="unfinished">seul un examen a un seuil de réussite</translation>
    </message>
    <message>
        <source>Remove it, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Supprimez-le, ou écrivez &quot;exam&quot; comme niveau.</translation>
    </message>
    <message>
        <source>the exercise has no door with this number</source>
        <translation type="unfinished">la leçon n&apos;a pas de porte portant ce numéro</translation>
    </message>
    <message>
        <source>this is not a date and time</source>
        <translation type="unfinished">ceci n&apos;est pas une date avec heure</translation>
    </message>
    <message>
        <source>a delay is not a number: NOT saved</source>
        <translation type="unfinished">un retard n&apos;est pas un nombre&#xa0;: NON enregistré</translation>
    </message>
    <message>
        <source>could not be removed</source>
        <translation type="unfinished">n&apos;a pas pu être supprimé</translation>
    </message>
    <message>
        <source>Check that you can write to the folder.</source>
        <translation type="unfinished">Vérifiez que vous pouvez écrire dans le dossier.</translation>
    </message>
    <message>
        <source>an exercise with this id comes with the program</source>
        <translation type="unfinished">une leçon portant cet identifiant est fournie avec le programme</translation>
    </message>
    <message>
        <source>another exercise with this id is already here</source>
        <translation type="unfinished">une autre leçon portant cet identifiant est déjà ici</translation>
    </message>
    <message>
        <source>Give yours another id, or remove %1.</source>
        <translation type="unfinished">Donnez un autre identifiant à la vôtre, ou supprimez %1.</translation>
    </message>
    <message>
        <source>this exercise is not locked</source>
        <translation type="unfinished">cette leçon n&apos;est pas verrouillée</translation>
    </message>
    <message>
        <source>Enter the password.</source>
        <translation type="unfinished">Saisissez le mot de passe.</translation>
    </message>
    <message>
        <source>Choose a longer one; several words are best.</source>
        <translation type="unfinished">Choisissez-en un plus long&#xa0;; plusieurs mots, c&apos;est le mieux.</translation>
    </message>
    <message>
        <source>the password does not open it: the password is wrong, or the file was changed after it was locked</source>
        <translation type="unfinished">le mot de passe ne l&apos;ouvre pas&#xa0;: il est faux, ou le fichier a été changé après le verrouillage</translation>
    </message>
    <message>
        <source>Type the password exactly as the instructor chose it, or ask for the file again.</source>
        <translation type="unfinished">Saisissez le mot de passe exactement comme l&apos;instructeur l&apos;a choisi, ou redemandez le fichier.</translation>
    </message>
    <message>
        <source>the lock is damaged</source>
        <translation type="unfinished">le verrou est endommagé</translation>
    </message>
    <message>
        <source>Ask for the file again.</source>
        <translation type="unfinished">Redemandez le fichier.</translation>
    </message>
    <message>
        <source>this lock has a format that this program does not know</source>
        <translation type="unfinished">ce verrou a un format que ce programme ne connaît pas</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise locked again.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou faites verrouiller de nouveau la leçon.</translation>
    </message>
    <message>
        <source>Have the exercise locked again.</source>
        <translation type="unfinished">Faites verrouiller de nouveau la leçon.</translation>
    </message>
    <message>
        <source>its open part was changed after it was locked: title, words, level, doors or pass mark</source>
        <translation type="unfinished">sa partie en clair a été changée après le verrouillage&#xa0;: titre, texte, niveau, portes ou seuil de réussite</translation>
    </message>
    <message>
        <source>It shuts faster than permitted.</source>
        <translation type="unfinished">Elle se ferme plus vite que permis.</translation>
    </message>
    <message>
        <source>It shuts more slowly than permitted.</source>
        <translation type="unfinished">Elle se ferme plus lentement que permis.</translation>
    </message>
    <message>
        <source>It shuts too close to the limit for any hand timing to pass or fail it.</source>
        <translation type="unfinished">Elle se ferme trop près de la limite pour qu&apos;un chronométrage à la main puisse la faire passer ou échouer.</translation>
    </message>
    <message>
        <source>The selector fails: the leaf that must wait closes first.</source>
        <translation type="unfinished">Le sélecteur de fermeture est en panne&#xa0;: le vantail qui doit attendre se ferme le premier.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it opens when pushed.</source>
        <translation type="unfinished">Elle se ferme mais ne s&apos;enclenche pas&#xa0;: elle s&apos;ouvre quand on la pousse.</translation>
    </message>
    <message>
        <source>The magnet holds for half a minute after the control station releases it, which counts as not released (common practice, no published source).</source>
        <translation type="unfinished">L&apos;aimant tient une demi-minute après le déclenchement par le poste de sécurité, ce qui compte comme non déclenchée (pratique courante, sans source publiée).</translation>
    </message>
    <message>
        <source>It cannot be released from one side.</source>
        <translation type="unfinished">Elle ne peut pas être déclenchée d&apos;un côté.</translation>
    </message>
    <message>
        <source>It can be held open by a hook that the control station cannot release.</source>
        <translation type="unfinished">Elle peut être maintenue ouverte par un crochet que le poste de sécurité ne peut pas déclencher.</translation>
    </message>
    <message>
        <source>There is litter in the pocket.</source>
        <translation type="unfinished">Il y a des détritus dans le logement.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than permitted.</source>
        <translation type="unfinished">La fente sous le vantail est plus large que permis.</translation>
    </message>
    <message>
        <source>The plate shows a lower class than the boundary requires.</source>
        <translation type="unfinished">La plaque indique une classe inférieure à celle qu&apos;exige le cloisonnement.</translation>
    </message>
    <message>
        <source>It stays open when opened again at the door after remote closing.</source>
        <translation type="unfinished">Elle reste ouverte quand on la rouvre à la porte après fermeture à distance.</translation>
    </message>
    <message>
        <source>Someone was in the path of the leaf: the run had to be stopped.</source>
        <translation type="unfinished">Quelqu&apos;un était sur la course du vantail&#xa0;: l&apos;essai devait être arrêté.</translation>
    </message>
    <message>
        <source>its bytes cannot be read</source>
        <translation type="unfinished">ses octets ne peuvent pas être lus</translation>
    </message>
    <message>
        <source>not all of its bytes can be read</source>
        <translation type="unfinished">tous ses octets ne peuvent pas être lus</translation>
    </message>
    <message>
        <source>this is not a handover file, or only part of one</source>
        <translation type="unfinished">ceci n&apos;est pas un fichier de transmission, ou seulement une partie</translation>
    </message>
    <message>
        <source>Choose another file, or ask for a new export.</source>
        <translation type="unfinished">Choisissez un autre fichier, ou demandez une nouvelle exportation.</translation>
    </message>
    <message>
        <source>Ask for a new export.</source>
        <translation type="unfinished">Demandez une nouvelle exportation.</translation>
    </message>
    <message>
        <source>No genuine handover file is like this; do not use it.</source>
        <translation type="unfinished">Aucun fichier de transmission authentique n&apos;est ainsi&#xa0;; ne l&apos;utilisez pas.</translation>
    </message>
    <message>
        <source>the signature does not match the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">la signature ne correspond pas à la clé de l&apos;appareil qui l&apos;a signé&#xa0;: contents.sha256 ou contents.sig a été changé</translation>
    </message>
    <message>
        <source>%1 does not match the hash in its name</source>
        <translation type="unfinished">%1 ne correspond pas à l&apos;empreinte contenue dans son nom</translation>
    </message>
    <message>
        <source>its contents do not match the counts on its first page</source>
        <translation type="unfinished">son contenu ne correspond pas aux nombres de sa première page</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">%1 est le navire d&apos;entraînement, dont les portes sont simulées</translation>
    </message>
    <message>
        <source>this is not a handover file</source>
        <translation type="unfinished">ceci n&apos;est pas un fichier de transmission</translation>
    </message>
    <message>
        <source>Update this program, or import the file with the newer one.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou importez le fichier avec le plus récent.</translation>
    </message>
    <message>
        <source>this is not a device key</source>
        <translation type="unfinished">ceci n&apos;est pas une clé d&apos;appareil</translation>
    </message>
    <message>
        <source>Hand over a copy of the whole register instead.</source>
        <translation type="unfinished">Transmettez plutôt une copie de tout le registre.</translation>
    </message>
    <message>
        <source>the file is for a different vessel; this register is for %1 %2</source>
        <translation type="unfinished">le fichier est pour un autre navire&#xa0;; ce registre est pour %1&#xa0;%2</translation>
    </message>
    <message>
        <source>Open that vessel&apos;s register, or begin a new one.</source>
        <translation type="unfinished">Ouvrez le registre de ce navire, ou commencez-en un nouveau.</translation>
    </message>
    <message>
        <source>Open it with the register of the device it is meant for.</source>
        <translation type="unfinished">Ouvrez-le avec le registre de l&apos;appareil auquel il est destiné.</translation>
    </message>
    <message>
        <source>the computer provides no random numbers</source>
        <translation type="unfinished">l&apos;ordinateur ne fournit pas de nombres aléatoires</translation>
    </message>
    <message>
        <source>Restart the computer.</source>
        <translation type="unfinished">Redémarrez l&apos;ordinateur.</translation>
    </message>
    <message>
        <source>the file claims to come from this device, but its key fingerprint, %1, is not this device&apos;s</source>
        <translation type="unfinished">le fichier dit venir de cet appareil, mais l&apos;empreinte de sa clé, %1, n&apos;est pas celle de cet appareil</translation>
    </message>
    <message>
        <source>Do not import it; find out who made it.</source>
        <translation type="unfinished">Ne l&apos;importez pas&#xa0;; cherchez qui l&apos;a fait.</translation>
    </message>
    <message>
        <source>its key is not the one accepted for it: fingerprint %1 instead of %2</source>
        <translation type="unfinished">sa clé n&apos;est pas celle qui a été acceptée pour lui&#xa0;: empreinte %1 au lieu de %2</translation>
    </message>
    <message>
        <source>Do not import it until you have asked whoever has that tablet; if its key really is new, take back the old acceptance first.</source>
        <translation type="unfinished">Ne l&apos;importez pas avant d&apos;avoir interrogé celui qui a cette tablette&#xa0;; si sa clé est vraiment nouvelle, retirez d&apos;abord l&apos;ancienne acceptation.</translation>
    </message>
    <message>
        <source>it accepts, in this device&apos;s name, a key that no one here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">il accepte, au nom de cet appareil, une clé que personne ici n&apos;a acceptée&#xa0;: clé %1 de l&apos;appareil %2, empreinte %3</translation>
    </message>
    <message>
        <source>If this register was restored from a backup, compare that key too and accept it; otherwise do not import the file.</source>
        <translation type="unfinished">Si ce registre a été restauré d&apos;une sauvegarde, comparez aussi cette clé et acceptez-la&#xa0;; sinon, n&apos;importez pas le fichier.</translation>
    </message>
    <message>
        <source>its key has not been accepted here yet; fingerprint %1</source>
        <translation type="unfinished">sa clé n&apos;a pas encore été acceptée ici&#xa0;; empreinte %1</translation>
    </message>
    <message>
        <source>Compare it with the fingerprint shown on that tablet, then accept it.</source>
        <translation type="unfinished">Comparez-la à l&apos;empreinte affichée sur cette tablette-là, puis acceptez-la.</translation>
    </message>
    <message>
        <source>Create the report again.</source>
        <translation type="unfinished">Créez de nouveau le rapport.</translation>
    </message>
    <message>
        <source>the signature does not match its key and contents</source>
        <translation type="unfinished">la signature ne correspond pas à sa clé et à son contenu</translation>
    </message>
    <message>
        <source>it was not made with its device&apos;s key</source>
        <translation type="unfinished">elle n&apos;a pas été faite avec la clé de son appareil</translation>
    </message>
    <message>
        <source>its bytes have been changed</source>
        <translation type="unfinished">ses octets ont été changés</translation>
    </message>
    <message>
        <source>Import it again from another tablet.</source>
        <translation type="unfinished">Importez-la de nouveau d&apos;une autre tablette.</translation>
    </message>
    <message>
        <source>Latchround never writes this; do not rely on it.</source>
        <translation type="unfinished">Latchround n&apos;écrit jamais cela&#xa0;; ne vous y fiez pas.</translation>
    </message>
    <message>
        <source>%1 at the top</source>
        <translation type="unfinished">%1, au début</translation>
    </message>
    <message>
        <source>document</source>
        <translation type="unfinished">document</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulaire vierge</translation>
    </message>
    <message>
        <source>the password</source>
        <translation type="unfinished">le mot de passe</translation>
    </message>
    <message>
        <source>stopped as requested: nothing was changed</source>
        <translation type="unfinished">arrêté à la demande&#xa0;: rien n&apos;a été changé</translation>
    </message>
    <message>
        <source>Copy it to one of your own folders.</source>
        <translation type="unfinished">Copiez-le dans un de vos dossiers.</translation>
    </message>
    <message>
        <source>a file with this name already exists: NOT replaced</source>
        <translation type="unfinished">un fichier de ce nom existe déjà&#xa0;: NON remplacé</translation>
    </message>
    <message>
        <source>Give another name, or allow it to be replaced.</source>
        <translation type="unfinished">Donnez un autre nom, ou permettez de le remplacer.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT overwritten</source>
        <translation type="unfinished">c&apos;est le registre lui-même&#xa0;: NON écrasé</translation>
    </message>
    <message>
        <source>it could not be flushed to storage: %1</source>
        <translation type="unfinished">son écriture sur le support n&apos;a pas pu être menée à bien&#xa0;: %1</translation>
    </message>
    <message>
        <source>the written file could not be moved into place: %1</source>
        <translation type="unfinished">le fichier écrit n&apos;a pas pu être mis en place&#xa0;: %1</translation>
    </message>
    <message>
        <source>Write it again before the power is switched off.</source>
        <translation type="unfinished">Écrivez-le de nouveau avant la coupure du courant.</translation>
    </message>
    <message>
        <source>could not be removed: %1</source>
        <translation type="unfinished">n&apos;a pas pu être supprimé&#xa0;: %1</translation>
    </message>
    <message>
        <source>there is text before or after the quotes of a cell</source>
        <translation type="unfinished">il y a du texte avant ou après les guillemets d&apos;une cellule</translation>
    </message>
    <message>
        <source>a number in it is too large to read</source>
        <translation type="unfinished">un nombre qui s&apos;y trouve est trop grand pour être lu</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good copy.</source>
        <translation type="unfinished">Demandez une bonne copie à celui qui vous a donné le fichier.</translation>
    </message>
    <message>
        <source>Remove it, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Supprimez-le, ou faites commencer son nom par &quot;x-&quot;.</translation>
    </message>
    <message>
        <source>this must be a list of text values</source>
        <translation type="unfinished">ceci doit être une liste de textes</translation>
    </message>
    <message>
        <source>this must be text</source>
        <translation type="unfinished">ceci doit être un texte</translation>
    </message>
    <message>
        <source>%1: NOT imported</source>
        <translation type="unfinished">%1&#xa0;: NON importé</translation>
    </message>
    <message>
        <source>stopped as requested</source>
        <translation type="unfinished">arrêté à la demande</translation>
    </message>
    <message>
        <source>records are never changed or deleted (%1)</source>
        <translation type="unfinished">les enregistrements ne sont jamais changés ni effacés (%1)</translation>
    </message>
    <message>
        <source>a text contains invalid bytes, or a value is of the wrong kind</source>
        <translation type="unfinished">un texte contient des octets non valables, ou une valeur est du mauvais genre</translation>
    </message>
    <message>
        <source>it appears twice (%1)</source>
        <translation type="unfinished">cela figure deux fois (%1)</translation>
    </message>
    <message>
        <source>Remove one of the two.</source>
        <translation type="unfinished">Supprimez l&apos;un des deux.</translation>
    </message>
    <message>
        <source>the register does not allow one of the values (%1)</source>
        <translation type="unfinished">le registre n&apos;admet pas l&apos;une des valeurs (%1)</translation>
    </message>
    <message>
        <source>Try again; if it happens again, save the register to another disk.</source>
        <translation type="unfinished">Réessayez&#xa0;; si cela se reproduit, enregistrez le registre sur un autre disque.</translation>
    </message>
    <message>
        <source>you cannot write to the register here</source>
        <translation type="unfinished">vous ne pouvez pas écrire ici dans le registre</translation>
    </message>
    <message>
        <source>Copy it to a folder you can write to and open it there.</source>
        <translation type="unfinished">Copiez-le dans un dossier où vous pouvez écrire et ouvrez-le là.</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you can write to the folder.</source>
        <translation type="unfinished">Vérifiez que le disque est connecté et que vous pouvez écrire dans le dossier.</translation>
    </message>
    <message>
        <source>this is not a vessel register</source>
        <translation type="unfinished">ceci n&apos;est pas un registre de navire</translation>
    </message>
    <message>
        <source>Try again; if it happens again, open the last backup.</source>
        <translation type="unfinished">Réessayez&#xa0;; si cela se reproduit, ouvrez la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>there is no file layer with that name</source>
        <translation type="unfinished">il n&apos;y a pas de couche de fichiers de ce nom</translation>
    </message>
    <message>
        <source>the register is missing, but &quot;%1&quot; beside it contains its entries</source>
        <translation type="unfinished">le registre manque, mais &quot;%1&quot; à côté contient ses entrées</translation>
    </message>
    <message>
        <source>Create the folder, or choose another place.</source>
        <translation type="unfinished">Créez le dossier, ou choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>you cannot write to this folder</source>
        <translation type="unfinished">vous ne pouvez pas écrire dans ce dossier</translation>
    </message>
    <message>
        <source>the new register cannot be put there</source>
        <translation type="unfinished">le nouveau registre ne peut pas être mis là</translation>
    </message>
    <message>
        <source>Try again; if it happens again, choose another disk.</source>
        <translation type="unfinished">Réessayez&#xa0;; si cela se reproduit, choisissez un autre disque.</translation>
    </message>
    <message>
        <source>you cannot read this file</source>
        <translation type="unfinished">vous ne pouvez pas lire ce fichier</translation>
    </message>
    <message>
        <source>the register is in a read-only place; nothing can be recorded</source>
        <translation type="unfinished">le registre est à un endroit en lecture seule&#xa0;; rien ne peut être consigné</translation>
    </message>
    <message>
        <source>the file is empty; it is not a vessel register</source>
        <translation type="unfinished">le fichier est vide&#xa0;; ce n&apos;est pas un registre de navire</translation>
    </message>
    <message>
        <source>Delete it to begin a new register with this name, or choose another file.</source>
        <translation type="unfinished">Supprimez-le pour commencer un nouveau registre de ce nom, ou choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>this is not a Latchround vessel register</source>
        <translation type="unfinished">ceci n&apos;est pas un registre de navire Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one reads up to %2)</source>
        <translation type="unfinished">le registre a été écrit par un programme plus récent (version %1&#xa0;; celui-ci lit jusqu&apos;à %2)</translation>
    </message>
    <message>
        <source>the register was never completed</source>
        <translation type="unfinished">le registre n&apos;a jamais été achevé</translation>
    </message>
    <message>
        <source>this disk does not support a write-ahead log</source>
        <translation type="unfinished">ce disque n&apos;admet pas de journal à écriture anticipée</translation>
    </message>
    <message>
        <source>a program of another version is writing to it</source>
        <translation type="unfinished">un programme d&apos;une autre version y écrit</translation>
    </message>
    <message>
        <source>updating the register would leave rows of %1 with missing references: NOT changed</source>
        <translation type="unfinished">la mise à jour du registre laisserait des lignes de %1 sans référence&#xa0;: NON modifié</translation>
    </message>
    <message>
        <source>a row of %1 has a missing reference</source>
        <translation type="unfinished">une ligne de %1 renvoie à quelque chose qui manque</translation>
    </message>
    <message>
        <source>Import the file into the register of its vessel.</source>
        <translation type="unfinished">Importez le fichier dans le registre de son navire.</translation>
    </message>
    <message>
        <source>Sign and export in a vessel&apos;s register.</source>
        <translation type="unfinished">Signez et exportez dans le registre d&apos;un navire.</translation>
    </message>
    <message>
        <source>this is a vessel&apos;s register: it cannot be used for practice</source>
        <translation type="unfinished">ceci est le registre d&apos;un navire&#xa0;: il ne peut pas servir à l&apos;entraînement</translation>
    </message>
    <message>
        <source>a practice register can hold only the practice vessel</source>
        <translation type="unfinished">un registre d&apos;entraînement ne peut contenir que le navire d&apos;entraînement</translation>
    </message>
    <message>
        <source>the number %1 is reserved for the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">le numéro %1 est réservé au navire d&apos;entraînement, dont les portes sont simulées</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or use it under Practice.</source>
        <translation type="unfinished">Donnez le numéro propre du navire, ou utilisez-le sous Entraînement.</translation>
    </message>
    <message>
        <source>another program is writing to this register (%1)</source>
        <translation type="unfinished">un autre programme écrit dans ce registre (%1)</translation>
    </message>
    <message>
        <source>another program removed the register&apos;s log</source>
        <translation type="unfinished">un autre programme a supprimé le journal du registre</translation>
    </message>
    <message>
        <source>Try again: the contents of the log are put into the register first. Do not open the register in another program meanwhile.</source>
        <translation type="unfinished">Réessayez&#xa0;: le contenu du journal est d&apos;abord mis dans le registre. N&apos;ouvrez pas le registre entre-temps dans un autre programme.</translation>
    </message>
    <message>
        <source>Take back the end of the walkdown first, or begin another.</source>
        <translation type="unfinished">Retirez d&apos;abord la fin de la tournée, ou commencez-en une autre.</translation>
    </message>
    <message>
        <source>%1 cannot be undone</source>
        <translation type="unfinished">%1 ne peut pas être défait</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; record a correction.</source>
        <translation type="unfinished">Seul ce que vous avez consigné sur cette tablette peut être défait&#xa0;; consignez une correction.</translation>
    </message>
    <message>
        <source>Record it separately.</source>
        <translation type="unfinished">Consignez-le séparément.</translation>
    </message>
    <message>
        <source>this is not a photograph</source>
        <translation type="unfinished">ceci n&apos;est pas une photo</translation>
    </message>
    <message>
        <source>the photograph does not match its hash</source>
        <translation type="unfinished">la photo ne correspond pas à son empreinte</translation>
    </message>
    <message>
        <source>Import it from the tablet that took it.</source>
        <translation type="unfinished">Importez-la de la tablette qui l&apos;a prise.</translation>
    </message>
    <message>
        <source>Check the number, or first import an arrangement that lists the door.</source>
        <translation type="unfinished">Vérifiez le numéro, ou importez d&apos;abord une disposition qui contient la porte.</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number used when it was tested.</source>
        <translation type="unfinished">Gardez la porte dans la disposition, sous le numéro utilisé quand elle a été testée.</translation>
    </message>
    <message>
        <source>Import an arrangement that includes the door, here or on the other device, then export again.</source>
        <translation type="unfinished">Importez une disposition qui comprend la porte, ici ou sur l&apos;autre appareil, puis exportez de nouveau.</translation>
    </message>
    <message>
        <source>it is recorded here with different content under the same id</source>
        <translation type="unfinished">cela est consigné ici avec un autre contenu sous le même identifiant</translation>
    </message>
    <message>
        <source>One of the two registers was changed outside this program; find out which before using either.</source>
        <translation type="unfinished">L&apos;un des deux registres a été changé hors de ce programme&#xa0;; cherchez lequel avant d&apos;utiliser l&apos;un ou l&apos;autre.</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor in the import</source>
        <translation type="unfinished">%1 n&apos;est ni dans ce registre ni dans l&apos;importation</translation>
    </message>
    <message>
        <source>Ask for a complete new export.</source>
        <translation type="unfinished">Demandez une nouvelle exportation complète.</translation>
    </message>
    <message>
        <source>no A class by the approved plan, where the tables require one</source>
        <translation type="unfinished">pas de type A selon le plan approuvé, là où les tableaux en exigent un</translation>
    </message>
    <message>
        <source>approved plan not below the A class of the tables</source>
        <translation type="unfinished">plan approuvé pas au-dessous du type A des tableaux</translation>
    </message>
    <message>
        <source>its spaces do not show whether one is a machinery space of category A</source>
        <translation type="unfinished">ses locaux ne montrent pas si l&apos;un d&apos;eux est un local de machines de la catégorie A</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 40 m (131 ft), except the vehicle space of a vehicle ferry. With Marine Safety Center approval it is at most 44 m (144 ft), and so is the distance between the zone&apos;s farthest points. With a balcony the actual length is at most 40 m; if that length plus the balcony area divided by the mean width is more than 40 m, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">En règle générale, la longueur moyenne d&apos;une tranche sur un même pont est d&apos;au plus 40 m (131 ft), sauf le local à véhicules d&apos;un ferry à véhicules. Avec l&apos;approbation du Marine Safety Center, elle est d&apos;au plus 44 m (144 ft), de même que la distance entre les points les plus éloignés de la tranche. Avec un balcon, la longueur réelle est d&apos;au plus 40 m&#xa0;; si cette longueur plus la surface du balcon divisée par la largeur moyenne dépasse 40 m, les deux ponts ont une extinction par eau diffusée (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>this is not an entry id</source>
        <translation type="unfinished">ceci n&apos;est pas un identifiant d&apos;entrée</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a kind of entry</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un genre d&apos;entrée</translation>
    </message>
    <message>
        <source>Give that mark, or write &quot;void&quot;.</source>
        <translation type="unfinished">Donnez ce repère, ou écrivez &quot;void&quot; (nul).</translation>
    </message>
    <message>
        <source>this computer has too little free memory to check the password</source>
        <translation type="unfinished">cet ordinateur a trop peu de mémoire libre pour vérifier le mot de passe</translation>
    </message>
    <message>
        <source>a part of the file cannot be read</source>
        <translation type="unfinished">une partie du fichier ne peut pas être lue</translation>
    </message>
    <message>
        <source>%1 is in the file twice</source>
        <translation type="unfinished">%1 est deux fois dans le fichier</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; in it points outside the file</source>
        <translation type="unfinished">le nom &quot;%1&quot; qui s&apos;y trouve désigne un endroit hors du fichier</translation>
    </message>
    <message>
        <source>%1 would expand out of all proportion</source>
        <translation type="unfinished">%1 se décompresserait hors de toute proportion</translation>
    </message>
    <message>
        <source>%1 does not belong in a handover file</source>
        <translation type="unfinished">%1 n&apos;a pas sa place dans un fichier de transmission</translation>
    </message>
    <message>
        <source>%1 was added after the file was signed</source>
        <translation type="unfinished">%1 a été ajouté après la signature du fichier</translation>
    </message>
    <message>
        <source>%1 was changed after the file was signed</source>
        <translation type="unfinished">%1 a été changé après la signature du fichier</translation>
    </message>
    <message>
        <source>entry %1 appears twice, with different content</source>
        <translation type="unfinished">l&apos;entrée %1 figure deux fois, avec un contenu différent</translation>
    </message>
    <message>
        <source>Copy all 64 digits and letters as shown on the other tablet.</source>
        <translation type="unfinished">Copiez les 64 chiffres et lettres tels que l&apos;autre tablette les affiche.</translation>
    </message>
    <message>
        <source>it is based on %1 entries of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">elle repose sur %1 entrées de l&apos;appareil %2 jusqu&apos;à %3&#xa0;; il y en a %4 ici</translation>
    </message>
    <message>
        <source>the entries it is based on have changed since</source>
        <translation type="unfinished">les entrées sur lesquelles elle repose ont changé depuis</translation>
    </message>
    <message>
        <source>the entry it replaces, %1, is not here</source>
        <translation type="unfinished">l&apos;entrée qu&apos;il remplace, %1, n&apos;est pas ici</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation type="unfinished">entrée %1</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, A class by %2</source>
        <translation type="unfinished">cloisonnement %1 selon le plan approuvé, type A selon %2</translation>
    </message>
    <message>
        <source>entry %1 is incomplete</source>
        <translation type="unfinished">l&apos;entrée %1 est incomplète</translation>
    </message>
    <message>
        <source>another entry with this id is recorded already</source>
        <translation type="unfinished">une autre entrée portant cet identifiant est déjà consignée</translation>
    </message>
    <message>
        <source>the entry it shows, &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;entrée qu&apos;il montre, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the entry it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;entrée qu&apos;il remplace, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the entry that stands, &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;entrée qui compte, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the entry it overrules, &quot;%1&quot;</source>
        <translation type="unfinished">l&apos;entrée qu&apos;il écarte, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">la nouvelle disposition n&apos;a pas cette porte, mais 1 entrée est consignée à son sujet</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">la nouvelle disposition n&apos;a pas cette porte, mais %1 entrées sont consignées à son sujet</translation>
    </message>
    <message>
        <source>the text speaks of doors in bulkheads, and this one is in a deck</source>
        <translation type="unfinished">le texte vise les portes dans des cloisons, et celle-ci est dans un pont</translation>
    </message>
    <message>
        <source>by the door&apos;s own class, as the boundary&apos;s is not known</source>
        <translation type="unfinished">selon la classe de la porte elle-même, celle du cloisonnement étant inconnue</translation>
    </message>
    <message>
        <source>no text here binds this vessel</source>
        <translation type="unfinished">aucun texte d&apos;ici n&apos;oblige ce navire</translation>
    </message>
    <message>
        <source>there is no translation into &quot;%1&quot;</source>
        <translation type="unfinished">il n&apos;y a pas de traduction vers &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Choose one of: %2.</source>
        <translation type="unfinished">Choisissez parmi&#xa0;: %2.</translation>
    </message>
    <message>
        <source>only a PDF can be a translation</source>
        <translation type="unfinished">seul un PDF peut être une traduction</translation>
    </message>
    <message>
        <source>Write it to a PDF file; data is the same in every language.</source>
        <translation type="unfinished">Écrivez-le dans un fichier PDF&#xa0;; les données sont les mêmes dans toutes les langues.</translation>
    </message>
    <message>
        <source>%1 measured, %2 needed at %3 degrees</source>
        <translation type="unfinished">mesuré %1, il faut %2 à %3 degrés</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_PASSWORD, or into a file named by --password-from.</source>
        <translation type="unfinished">Mettez le mot de passe dans LATCHROUND_PASSWORD, ou dans un fichier indiqué par --password-from.</translation>
    </message>
    <message>
        <source>the file is damaged and cannot be opened</source>
        <translation type="unfinished">le fichier est endommagé et ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>this file is for one device only</source>
        <translation type="unfinished">ce fichier est réservé à un seul appareil</translation>
    </message>
    <message>
        <source>this file is for another device only, with key fingerprint %1</source>
        <translation type="unfinished">ce fichier est réservé à un autre appareil, dont la clé a l&apos;empreinte %1</translation>
    </message>
    <message>
        <source>Open it there, or have it exported for this device, with key fingerprint %2.</source>
        <translation type="unfinished">Ouvrez-le là-bas, ou faites-le exporter pour cet appareil-ci, dont la clé a l&apos;empreinte %2.</translation>
    </message>
    <message>
        <source>Nearest name here: &quot;%1&quot;.</source>
        <translation type="unfinished">Nom le plus proche ici&#xa0;: &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot; or &quot;%2&quot;.</source>
        <translation type="unfinished">Noms les plus proches ici&#xa0;: &quot;%1&quot; ou &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;.</source>
        <translation type="unfinished">Noms les plus proches ici&#xa0;: &quot;%1&quot;, &quot;%2&quot; ou &quot;%3&quot;.</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">la disposition du fichier n&apos;a pas cette porte, mais 1 entrée est consignée à son sujet</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">la disposition du fichier n&apos;a pas cette porte, mais %1 entrées sont consignées à son sujet</translation>
    </message>
    <message>
        <source>this is not a URL: in a password, percent-encode every character that is not a letter or digit, such as %1 for @</source>
        <translation type="unfinished">ceci n&apos;est pas une URL&#xa0;: dans un mot de passe, écrivez en encodage-pourcent (percent-encoding) tout caractère qui n&apos;est ni lettre ni chiffre, par exemple %1 pour @</translation>
    </message>
    <message>
        <source>it is locked, but its open part shows faults</source>
        <translation type="unfinished">elle est verrouillée, mais sa partie en clair montre des défauts</translation>
    </message>
</context>
<context>
    <name>CueWords</name>
    <message>
        <source>Alarm heard</source>
        <translation type="unfinished">Alarme entendue</translation>
    </message>
    <message>
        <source>Leaf seen to start</source>
        <translation type="unfinished">Départ du vantail vu</translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished">Arrêt du vantail vu</translation>
    </message>
    <message>
        <source>%1 ms early</source>
        <translation type="unfinished">%1 ms trop tôt</translation>
    </message>
    <message>
        <source>%1 ms late</source>
        <translation type="unfinished">%1 ms trop tard</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">aucun repère</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 needed</source>
        <translation type="unfinished">%1 repères sur %2 comptent, il en faut %3</translation>
    </message>
    <message>
        <source>%1 marks, %2, scatter %3&#xa0;ms</source>
        <translation type="unfinished">%1 repères, %2, dispersion %3&#xa0;ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">rien n&apos;était défectueux ici</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Vous&#xa0;: %1</translation>
    </message>
    <message>
        <source>One person was endangered</source>
        <translation type="unfinished">Une personne a été mise en danger</translation>
    </message>
    <message>
        <source>%1 people were endangered</source>
        <translation type="unfinished">%1 personnes ont été mises en danger</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished">Rien n&apos;a été chronométré.</translation>
    </message>
    <message>
        <source>There was no fault, and none was reported.</source>
        <translation type="unfinished">Il n&apos;y avait aucun défaut, et aucun n&apos;a été signalé.</translation>
    </message>
    <message>
        <source>Every check is graded correctly.</source>
        <translation type="unfinished">Chaque vérification est correctement évaluée.</translation>
    </message>
    <message>
        <source>No one was endangered</source>
        <translation type="unfinished">Personne n&apos;a été mis en danger</translation>
    </message>
    <message>
        <source>A leaf reached someone, or would have. Aboard, that is a crushed hand or a death: a power-operated leaf does not know who is in its way.</source>
        <translation type="unfinished">Un vantail a heurté quelqu&apos;un, ou l&apos;aurait heurté. À bord, c&apos;est une main écrasée ou un mort&#xa0;: un vantail motorisé ne sait pas qui est sur son passage.</translation>
    </message>
    <message>
        <source>No moving leaf reached anyone.</source>
        <translation type="unfinished">Aucun vantail en mouvement n&apos;a heurté quelqu&apos;un.</translation>
    </message>
    <message>
        <source>Watch the opening, not the clock. Stop the moment someone steps in: a stopped run costs two minutes.</source>
        <translation type="unfinished">Surveillez l&apos;ouverture, pas l&apos;heure. Arrêtez dès que quelqu&apos;un s&apos;y engage&#xa0;: un essai arrêté coûte deux minutes.</translation>
    </message>
    <message>
        <source>Every caution was true when confirmed</source>
        <translation type="unfinished">Chaque précaution était vraie quand elle a été confirmée</translation>
    </message>
    <message>
        <source>One caution was falsely confirmed</source>
        <translation type="unfinished">Une précaution a été confirmée à tort</translation>
    </message>
    <message>
        <source>%1 cautions were falsely confirmed</source>
        <translation type="unfinished">%1 précautions ont été confirmées à tort</translation>
    </message>
    <message>
        <source>Your reaction time in this exercise</source>
        <translation type="unfinished">Votre temps de réaction dans cette leçon</translation>
    </message>
    <message>
        <source>Each mark against the true time</source>
        <translation type="unfinished">Chaque repère comparé au temps vrai</translation>
    </message>
    <message>
        <source>The right response is to stop. No requirement covers this.</source>
        <translation type="unfinished">La bonne réaction est d&apos;arrêter. Aucune exigence ne porte là-dessus.</translation>
    </message>
    <message>
        <source>Correct: %1</source>
        <translation type="unfinished">Juste&#xa0;: %1</translation>
    </message>
    <message>
        <source>The stopwatch was armed with someone in the way. Look at both sides first. Ask people to stand clear. Never confirm a caution just to go on.</source>
        <translation type="unfinished">Le chronomètre a été armé alors que quelqu&apos;un gênait. Regardez d&apos;abord des deux côtés. Demandez aux gens de s&apos;écarter. Ne confirmez jamais une précaution juste pour continuer.</translation>
    </message>
    <message>
        <source>The way was clear each time the stopwatch was armed.</source>
        <translation type="unfinished">Le passage était dégagé chaque fois que le chronomètre a été armé.</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Once there are %1 of a kind, the timing drill offers to use them as your own figures in place of the published ones.</source>
        <translation type="unfinished">Les repères de toutes vos leçons s&apos;additionnent. Dès qu&apos;il y en a %1 d&apos;un même genre, le test de réaction propose de les utiliser comme vos propres valeurs, à la place des valeurs publiées.</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">Non respecté&#xa0;: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">constatée le %1, ouverte depuis</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Anomalie à la porte %1</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Le même défaut de nouveau</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2; limit: %3</source>
        <translation type="unfinished">Non respecté&#xa0;: %1. Mesuré %2&#xa0;; limite&#xa0;: %3</translation>
    </message>
    <message>
        <source>This check was written up before: %1.</source>
        <translation type="unfinished">Cette vérification a déjà fait l&apos;objet d&apos;une anomalie&#xa0;: %1.</translation>
    </message>
    <message>
        <source>found on %1, since %2</source>
        <translation type="unfinished">constatée le %1, depuis %2</translation>
    </message>
    <message>
        <source>Another defect</source>
        <translation type="unfinished">Un autre défaut</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2</source>
        <translation type="unfinished">Non respecté&#xa0;: %1. Mesuré %2</translation>
    </message>
</context>
<context>
    <name>DoorWords</name>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">un vantail</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">deux vantaux</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">à glissières</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">va-et-vient</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">cloison de tranche</translation>
    </message>
    <message>
        <source>stairway</source>
        <translation type="unfinished">escalier</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">cuisine</translation>
    </message>
    <message>
        <source>machinery space</source>
        <translation type="unfinished">local de machines</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">local de catégorie spéciale</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">cabine</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">extérieur</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">autre cloisonnement</translation>
    </message>
    <message>
        <source>port</source>
        <translation type="unfinished">bâbord</translation>
    </message>
    <message>
        <source>starboard</source>
        <translation type="unfinished">tribord</translation>
    </message>
    <message>
        <source>centreline</source>
        <translation type="unfinished">axe</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished">1 porte</translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished">%1 portes</translation>
    </message>
    <message>
        <source>bulkhead %1</source>
        <translation type="unfinished">cloison %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">annuelle</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">trimestrielle</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation type="unfinished">après réparation</translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished">exercice d&apos;incendie</translation>
    </message>
    <message>
        <source>other purpose</source>
        <translation type="unfinished">autre but</translation>
    </message>
    <message>
        <source>from the control station</source>
        <translation type="unfinished">depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>at the door, side one</source>
        <translation type="unfinished">à la porte, côté un</translation>
    </message>
    <message>
        <source>at the door, side two</source>
        <translation type="unfinished">à la porte, côté deux</translation>
    </message>
    <message>
        <source>Alarm on</source>
        <translation type="unfinished">Alarme</translation>
    </message>
    <message>
        <source>Leaf moves</source>
        <translation type="unfinished">Vantail part</translation>
    </message>
    <message>
        <source>Half-way</source>
        <translation type="unfinished">Mi-course</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation type="unfinished">Fermée</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Fin d&apos;alarme</translation>
    </message>
    <message>
        <source>First leaf home</source>
        <translation type="unfinished">1er vantail fermé</translation>
    </message>
    <message>
        <source>Second leaf home</source>
        <translation type="unfinished">2e vantail fermé</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Arrêt</translation>
    </message>
    <message>
        <source>touch at the first sound of the alarm</source>
        <translation type="unfinished">touchez au premier son de l&apos;alarme</translation>
    </message>
    <message>
        <source>touch at the first movement</source>
        <translation type="unfinished">touchez au premier mouvement</translation>
    </message>
    <message>
        <source>touch the moment the leaf is home</source>
        <translation type="unfinished">touchez à l&apos;instant où le vantail est en butée</translation>
    </message>
    <message>
        <source>touch the moment the alarm is silent</source>
        <translation type="unfinished">touchez à l&apos;instant où l&apos;alarme se tait</translation>
    </message>
    <message>
        <source>touch when the first leaf is home</source>
        <translation type="unfinished">touchez quand le premier vantail est en butée</translation>
    </message>
    <message>
        <source>touch when the second leaf is home</source>
        <translation type="unfinished">touchez quand le second vantail est en butée</translation>
    </message>
    <message>
        <source>touch when the edge meets the block</source>
        <translation type="unfinished">touchez quand le bord rencontre le bloc</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">complet</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">arrêté</translation>
    </message>
    <message>
        <source>port State campaign</source>
        <translation type="unfinished">campagne de l’État du port</translation>
    </message>
    <message>
        <source>port State control</source>
        <translation type="unfinished">contrôle par l&apos;État du port</translation>
    </message>
    <message>
        <source>blackout test</source>
        <translation type="unfinished">test de black-out</translation>
    </message>
    <message>
        <source>by hand from fully open</source>
        <translation type="unfinished">à la main, depuis l&apos;ouverture complète</translation>
    </message>
    <message>
        <source>optional: when half the opening is closed</source>
        <translation type="unfinished">facultatif&#xa0;: quand la moitié de l&apos;ouverture est fermée</translation>
    </message>
    <message>
        <source>touch when the leaf stops and re-opens</source>
        <translation type="unfinished">touchez quand le vantail s&apos;arrête et se rouvre</translation>
    </message>
    <message>
        <source>void</source>
        <translation type="unfinished">nul</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation type="unfinished">Contact</translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message>
        <source>weekly</source>
        <translation type="unfinished">hebdomadaire</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">trimestrielle</translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Certificat de sécurité pour navire à passagers, visite de renouvellement</translation>
    </message>
    <message>
        <source>overdue: never recorded here</source>
        <translation type="unfinished">en retard&#xa0;: jamais enregistré ici</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">en retard depuis le %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">pour le %1</translation>
    </message>
    <message>
        <source>%1 of %2 overdue</source>
        <translation type="unfinished">%1 sur %2 en retard</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation type="unfinished">dernier le %1</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 en retard</translation>
    </message>
    <message>
        <source>overdue: expired on %1</source>
        <translation type="unfinished">en retard&#xa0;: expiré le %1</translation>
    </message>
    <message>
        <source>expires %1, window opens %2</source>
        <translation type="unfinished">expire le %1, période ouverte à partir du %2</translation>
    </message>
    <message>
        <source>window open since %1, expires %2</source>
        <translation type="unfinished">période ouverte depuis le %1, expire le %2</translation>
    </message>
    <message>
        <source>on request</source>
        <translation type="unfinished">sur demande</translation>
    </message>
    <message>
        <source>overdue: some doors never tested in this register</source>
        <translation type="unfinished">en retard&#xa0;: des portes jamais testées dans ce registre</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation type="unfinished">aucune échéance</translation>
    </message>
    <message>
        <source>next due %1</source>
        <translation type="unfinished">prochaine échéance %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">annuelle</translation>
    </message>
</context>
<context>
    <name>ExerciseWords</name>
    <message>
        <source>first steps</source>
        <translation type="unfinished">premiers pas</translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished">facile</translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished">difficile</translation>
    </message>
    <message>
        <source>exam</source>
        <translation type="unfinished">examen</translation>
    </message>
    <message>
        <source>closes too fast</source>
        <translation type="unfinished">se ferme trop vite</translation>
    </message>
    <message>
        <source>closes too slowly</source>
        <translation type="unfinished">se ferme trop lentement</translation>
    </message>
    <message>
        <source>alarm too short</source>
        <translation type="unfinished">alarme trop courte</translation>
    </message>
    <message>
        <source>alarm stops early</source>
        <translation type="unfinished">alarme arrêtée trop tôt</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">ne s&apos;enclenche pas</translation>
    </message>
    <message>
        <source>no release from one side</source>
        <translation type="unfinished">pas de déclenchement d&apos;un côté</translation>
    </message>
    <message>
        <source>hook</source>
        <translation type="unfinished">crochet</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation type="unfinished">cale</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">détritus dans le logement</translation>
    </message>
    <message>
        <source>sill missing</source>
        <translation type="unfinished">seuil manquant</translation>
    </message>
    <message>
        <source>gap under the leaf</source>
        <translation type="unfinished">fente sous le vantail</translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished">plaque fausse pour le cloisonnement</translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished">orifice de manche coincé</translation>
    </message>
    <message>
        <source>stays open</source>
        <translation type="unfinished">reste ouverte</translation>
    </message>
    <message>
        <source>people in the path</source>
        <translation type="unfinished">gens sur la course</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">trouvé</translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished">manqué</translation>
    </message>
    <message>
        <source>too close to a limit to call</source>
        <translation type="unfinished">trop près d&apos;une limite pour trancher</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">se rouvre trop</translation>
    </message>
    <message>
        <source>leaves in the wrong order</source>
        <translation type="unfinished">vantaux dans le mauvais ordre</translation>
    </message>
    <message>
        <source>magnet releases late</source>
        <translation type="unfinished">l&apos;aimant déclenche tard</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">joint peint</translation>
    </message>
    <message>
        <source>false indication</source>
        <translation type="unfinished">indication fausse</translation>
    </message>
    <message>
        <source>reported but absent</source>
        <translation type="unfinished">signalé mais absent</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Détail de l&apos;incertitude</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Until your timing drill is done, published reaction times apply: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Selon la loi de propagation (JCGM 100:2008). Tant que votre test de réaction n&apos;est pas fait, les temps de réaction publiés s&apos;appliquent&#xa0;: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1: timing history</source>
        <translation type="unfinished">Porte %1&#xa0;: historique des temps</translation>
    </message>
    <message>
        <source>No time has been taken with the ship upright.</source>
        <translation type="unfinished">Aucun temps n&apos;a été pris navire droit.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs, with its U. The next is expected within the shaded band (95 %). This says nothing about sudden failure.</source>
        <translation type="unfinished">Chaque point est la moyenne des essais navire droit d&apos;une tournée, avec son U. Le suivant est attendu dans la bande ombrée (95&#xa0;%). Cela ne dit rien d&apos;une défaillance soudaine.</translation>
    </message>
</context>
<context>
    <name>GradeWords</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished">au plus %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished">au moins %1</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished">sans motif</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">n&apos;a pas pu être testé&#xa0;: %1</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">démontré par un essai complet</translation>
    </message>
    <message>
        <source>inside the limits, mean of %1 runs</source>
        <translation type="unfinished">dans les limites, moyenne de %1 essais</translation>
    </message>
    <message>
        <source>inside the limits</source>
        <translation type="unfinished">dans les limites</translation>
    </message>
    <message>
        <source>outside the limits, mean of %1 runs</source>
        <translation type="unfinished">hors limites, moyenne de %1 essais</translation>
    </message>
    <message>
        <source>outside the limits</source>
        <translation type="unfinished">hors limites</translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1&#xa0;; aucune valeur imprimée&#xa0;: demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>they differ: %1</source>
        <translation type="unfinished">ils diffèrent&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: ask for the certificate</source>
        <translation type="unfinished">%1&#xa0;: demander le certificat</translation>
    </message>
    <message>
        <source>decided by the inspector: %1</source>
        <translation type="unfinished">décidé par l&apos;inspecteur&#xa0;: %1</translation>
    </message>
    <message>
        <source>needs a run released from the control station</source>
        <translation type="unfinished">exige un essai déclenché depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>the alarm was still on when the door was shut</source>
        <translation type="unfinished">l&apos;alarme sonnait encore quand la porte s&apos;est fermée</translation>
    </message>
    <message>
        <source>the alarm stopped before the door was shut</source>
        <translation type="unfinished">l&apos;alarme s&apos;est arrêtée avant la fermeture de la porte</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, édition %2</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">recommandation, jamais un motif pour refuser une porte</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">encore un essai&#xa0;; trois au plus, puis vous décidez</translation>
    </message>
    <message>
        <source>a run released from the control station</source>
        <translation type="unfinished">un essai déclenché depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>measure the clear opening</source>
        <translation type="unfinished">mesurer le passage libre</translation>
    </message>
    <message>
        <source>time it with the ship upright</source>
        <translation type="unfinished">chronométrer navire droit</translation>
    </message>
    <message>
        <source>come back when it can be tested</source>
        <translation type="unfinished">revenir quand le test sera possible</translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 non satisfaisant(s)</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 non testé(s)</translation>
    </message>
    <message>
        <source>all %1 satisfactory</source>
        <translation type="unfinished">tous satisfaisants (%1)</translation>
    </message>
    <message>
        <source>%1 (door %2)</source>
        <translation type="unfinished">%1 (porte %2)</translation>
    </message>
    <message>
        <source>no class</source>
        <translation type="unfinished">sans classe</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">non imprimé</translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished">inconnu</translation>
    </message>
    <message>
        <source>%1 by the approved plan</source>
        <translation type="unfinished">%1 selon le plan approuvé</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 selon %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 ou %2</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished">sur la limite</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">un autre essai</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">ne s&apos;applique pas à cette porte</translation>
    </message>
    <message>
        <source>does not apply: see the answer to “%1”</source>
        <translation type="unfinished">ne s&apos;applique pas&#xa0;: voir la réponse à «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>does not apply to this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">ne s&apos;applique pas à cette porte (%1)&#xa0;: ce qui est consigné ici ne compte pas</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open; you decide: %1</source>
        <translation type="unfinished">échoue, mais le texte laisse la question ouverte&#xa0;; à vous de décider&#xa0;: %1</translation>
    </message>
    <message>
        <source>not tested on this walkdown: %1</source>
        <translation type="unfinished">non testé pendant cette tournée&#xa0;: %1</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">pas encore testé</translation>
    </message>
    <message>
        <source>one side still to be tested</source>
        <translation type="unfinished">un côté reste à tester</translation>
    </message>
    <message>
        <source>checked: met</source>
        <translation type="unfinished">vérifié&#xa0;: respecté</translation>
    </message>
    <message>
        <source>checked: not met</source>
        <translation type="unfinished">vérifié&#xa0;: non respecté</translation>
    </message>
    <message>
        <source>answered n/a for this door</source>
        <translation type="unfinished">répondu s.o. pour cette porte</translation>
    </message>
    <message>
        <source>checked: another kind of door</source>
        <translation type="unfinished">vérifié&#xa0;: porte d&apos;un autre genre</translation>
    </message>
    <message>
        <source>too close to the limit to call: time again</source>
        <translation type="unfinished">trop près de la limite pour trancher&#xa0;: à rechronométrer</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">fermeture irrégulière&#xa0;: %1 essais ne concordent pas&#xa0;; le plus mauvais compte</translation>
    </message>
    <message>
        <source>the alarm varies: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">l&apos;alarme varie&#xa0;: %1 essais ne concordent pas&#xa0;; le plus mauvais compte</translation>
    </message>
    <message>
        <source>one half of the travel is outside the limits: is it roughly uniform?</source>
        <translation type="unfinished">une moitié de la course est hors limites&#xa0;: la vitesse est-elle à peu près uniforme&#xa0;?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only; time it again upright</source>
        <translation type="unfinished">gîte de %1 degrés&#xa0;: la valeur n&apos;est qu&apos;une recommandation&#xa0;; à rechronométrer navire droit</translation>
    </message>
    <message>
        <source>class too low for its boundary: %1</source>
        <translation type="unfinished">classe trop basse pour son cloisonnement&#xa0;: %1</translation>
    </message>
    <message>
        <source>class too low by tables not shown to apply to this ship: %1; ask for the approved drawing</source>
        <translation type="unfinished">classe trop basse selon des tableaux dont rien ne montre qu&apos;ils s&apos;appliquent à ce navire&#xa0;: %1&#xa0;; demander le plan approuvé</translation>
    </message>
    <message>
        <source>class too low for its boundary, unless oil fuel tanks are below: %1</source>
        <translation type="unfinished">classe trop basse pour son cloisonnement, sauf s&apos;il y a des soutes à combustible au-dessous&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1; the register does not give the boundary&apos;s class: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1&#xa0;; le registre ne donne pas la classe du cloisonnement&#xa0;: voir le plan approuvé de lutte contre l&apos;incendie ou demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>%1; no fire class is required here</source>
        <translation type="unfinished">%1&#xa0;; aucune classe d&apos;incendie n&apos;est exigée ici</translation>
    </message>
    <message>
        <source>common practice is not met: you decide whether that is acceptable</source>
        <translation type="unfinished">la pratique courante n&apos;est pas suivie&#xa0;: à vous de décider si c&apos;est acceptable</translation>
    </message>
    <message>
        <source>run completed, but not every event was marked</source>
        <translation type="unfinished">essai terminé, mais tous les événements n&apos;ont pas été marqués</translation>
    </message>
    <message>
        <source>run started, but none completed</source>
        <translation type="unfinished">essai commencé, mais aucun terminé</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule requires one: %1</source>
        <translation type="unfinished">le plan approuvé n&apos;a pas de type A là où la règle en exige un&#xa0;: %1</translation>
    </message>
    <message>
        <source>released from the control station, but no alarm was marked</source>
        <translation type="unfinished">déclenchée depuis le poste de sécurité, mais aucune alarme n&apos;a été marquée</translation>
    </message>
    <message>
        <source>the clear opening of this door is not in the register</source>
        <translation type="unfinished">le passage libre de cette porte n&apos;est pas dans le registre</translation>
    </message>
    <message>
        <source>checked against the text</source>
        <translation type="unfinished">vérifié par rapport au texte</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation type="unfinished">pratique courante, sans source publiée</translation>
    </message>
    <message>
        <source>rectify it, then test it again</source>
        <translation type="unfinished">rectifier, puis tester de nouveau</translation>
    </message>
    <message>
        <source>your decision, with a reason</source>
        <translation type="unfinished">votre décision, avec motif</translation>
    </message>
    <message>
        <source>test it from the other side</source>
        <translation type="unfinished">tester de l&apos;autre côté</translation>
    </message>
    <message>
        <source>record whether the alarm sounded, or run it again</source>
        <translation type="unfinished">consigner si l&apos;alarme a sonné, ou refaire l&apos;essai</translation>
    </message>
    <message>
        <source>test it at the door</source>
        <translation type="unfinished">tester à la porte</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 à trancher</translation>
    </message>
    <message>
        <source>no checks</source>
        <translation type="unfinished">aucune vérification</translation>
    </message>
    <message>
        <source>critical: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">critique&#xa0;: le feu ou la fumée passe, ou quelqu&apos;un peut être blessé</translation>
    </message>
    <message>
        <source>serious: the door does not do what is required</source>
        <translation type="unfinished">grave&#xa0;: la porte ne fait pas ce qui est exigé</translation>
    </message>
    <message>
        <source>%1; the answer was recorded before this run</source>
        <translation type="unfinished">%1&#xa0;; la réponse a été consignée avant cet essai</translation>
    </message>
    <message>
        <source>minor: maintenance and marking</source>
        <translation type="unfinished">mineure&#xa0;: entretien et marquage</translation>
    </message>
    <message>
        <source>%1: advice only</source>
        <translation type="unfinished">%1&#xa0;: simple recommandation</translation>
    </message>
    <message>
        <source>%1: you decide</source>
        <translation type="unfinished">%1&#xa0;: à vous de décider</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to apply here (%1)</source>
        <translation type="unfinished">échoue, mais rien ne montre que le texte s&apos;applique ici (%1)</translation>
    </message>
    <message>
        <source>not met, but this is advice only: %1</source>
        <translation type="unfinished">non respecté, mais ce n&apos;est qu&apos;une recommandation&#xa0;: %1</translation>
    </message>
    <message>
        <source>one side was answered n/a, but the text requires both</source>
        <translation type="unfinished">s.o. répondu pour un côté, mais le texte exige les deux</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1)</source>
        <translation type="unfinished">dépasse la limite de moins d&apos;un échelon de l&apos;instrument (%1)</translation>
    </message>
    <message>
        <source>between the two figures printed in the text (%1)</source>
        <translation type="unfinished">entre les deux valeurs imprimées dans le texte (%1)</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1</source>
        <translation type="unfinished">hors d&apos;une plage que le texte dit approximative, %1</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs</source>
        <translation type="unfinished">encore trop près d&apos;une limite après %1 essais</translation>
    </message>
    <message>
        <source>closing force below what the leaf&apos;s weight alone needs (%1)</source>
        <translation type="unfinished">force de fermeture inférieure à ce qu&apos;exige le seul poids du vantail (%1)</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move: marked by mistake? Make another run</source>
        <translation type="unfinished">fermée plus vite qu&apos;un vantail ne peut bouger&#xa0;: repère pris par erreur&#xa0;? Faire un autre essai</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs; the text says approximate</source>
        <translation type="unfinished">encore trop près d&apos;une limite après %1 essais&#xa0;; le texte dit approximatif</translation>
    </message>
    <message>
        <source>answered n/a, but the text has no such case</source>
        <translation type="unfinished">répondu s.o., mais le texte ne prévoit pas ce cas</translation>
    </message>
    <message>
        <source>answered n/a, but the register does not show that case</source>
        <translation type="unfinished">répondu s.o., mais le registre ne montre pas ce cas</translation>
    </message>
    <message>
        <source>%1; the earlier decision (satisfactory: %2) was made before a newer entry</source>
        <translation type="unfinished">%1&#xa0;; la décision antérieure (satisfaisant&#xa0;: %2) a été prise avant une entrée plus récente</translation>
    </message>
    <message>
        <source>the alarm did not come on until the door was shut</source>
        <translation type="unfinished">l&apos;alarme n&apos;a sonné qu&apos;une fois la porte fermée</translation>
    </message>
    <message>
        <source>%1; a newer entry has been made since: it stays unsatisfactory until you decide again</source>
        <translation type="unfinished">%1 ; une entrée plus récente a été faite depuis : reste non satisfaisant tant que vous n’avez pas décidé de nouveau</translation>
    </message>
</context>
<context>
    <name>GroupWords</name>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">tranche inconnue</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">entre les tranches %1 et %2</translation>
    </message>
    <message>
        <source>open for more than 90 days</source>
        <translation type="unfinished">ouverte depuis plus de 90 jours</translation>
    </message>
    <message>
        <source>open for more than 30 days</source>
        <translation type="unfinished">ouverte depuis plus de 30 jours</translation>
    </message>
    <message>
        <source>open for more than 7 days</source>
        <translation type="unfinished">ouverte depuis plus de 7 jours</translation>
    </message>
    <message>
        <source>found in the last 7 days</source>
        <translation type="unfinished">constatée ces 7 derniers jours</translation>
    </message>
    <message>
        <source>due within 7 days</source>
        <translation type="unfinished">échéance dans les 7 jours</translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation type="unfinished">échéance dans les 30 jours</translation>
    </message>
    <message>
        <source>due later</source>
        <translation type="unfinished">échéance plus tard</translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 anomalie</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 anomalies</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished">en retard</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">pas de date</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">encore personne</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">premier repère&#xa0;: le vantail commence à bouger</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">dernier repère&#xa0;: complètement fermée</translation>
    </message>
    <message>
        <source>sticks, then slams</source>
        <translation type="unfinished">coince, puis claque</translation>
    </message>
    <message>
        <source>one leaf home, then the one with the lip</source>
        <translation type="unfinished">un vantail en butée, puis celui à recouvrement</translation>
    </message>
    <message>
        <source>one leaf alone shuts and latches</source>
        <translation type="unfinished">un vantail seul se ferme et s&apos;enclenche</translation>
    </message>
    <message>
        <source>and so does the other</source>
        <translation type="unfinished">et l&apos;autre aussi</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">un crochet la tient ouverte</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">un côté est sans effet</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">elle reste ouverte</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">revient&#xa0;: la porte est de nouveau retenue</translation>
    </message>
    <message>
        <source>first the alarm, then the leaf moves</source>
        <translation type="unfinished">d&apos;abord l&apos;alarme, puis le vantail bouge</translation>
    </message>
    <message>
        <source>the leaf moves as the alarm begins</source>
        <translation type="unfinished">le vantail bouge dès le début de l&apos;alarme</translation>
    </message>
    <message>
        <source>the alarm lasts until the leaf is home</source>
        <translation type="unfinished">l&apos;alarme dure jusqu&apos;à la butée du vantail</translation>
    </message>
    <message>
        <source>the alarm stops while the leaf moves</source>
        <translation type="unfinished">l&apos;alarme s&apos;arrête alors que le vantail bouge</translation>
    </message>
    <message>
        <source>painted over</source>
        <translation type="unfinished">peint</translation>
    </message>
    <message>
        <source>the gap over the leaf is even</source>
        <translation type="unfinished">le jeu au-dessus du vantail est régulier</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">le pêne est à fond dans sa gâche</translation>
    </message>
    <message>
        <source>from the edge of the leaf to the tip of the bolt</source>
        <translation type="unfinished">du bord du vantail au bout du pêne</translation>
    </message>
    <message>
        <source>a feeler between the two leaves</source>
        <translation type="unfinished">une jauge entre les deux vantaux</translation>
    </message>
    <message>
        <source>double-swing door: top and sides</source>
        <translation type="unfinished">porte va-et-vient&#xa0;: haut et côtés</translation>
    </message>
    <message>
        <source>hardly touches the stop</source>
        <translation type="unfinished">touche à peine la feuillure</translation>
    </message>
    <message>
        <source>whole, flat and firm</source>
        <translation type="unfinished">entier, affleurant et ferme</translation>
    </message>
    <message>
        <source>a loose end that a foot can catch on</source>
        <translation type="unfinished">un bout lâche où le pied peut se prendre</translation>
    </message>
    <message>
        <source>the covering stops at the sill</source>
        <translation type="unfinished">le revêtement s&apos;arrête au seuil</translation>
    </message>
    <message>
        <source>the covering runs on under the leaf</source>
        <translation type="unfinished">le revêtement continue sous le vantail</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">un grand jeu&#xa0;: lire la règle au pied du vantail</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">détritus sur le rail</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">seul son propre dispositif de retenue la tient</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">une cale sous le vantail</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">un crochet à côté, un piton sur le vantail</translation>
    </message>
    <message>
        <source>dirt on the rail, a roller off</source>
        <translation type="unfinished">saleté sur le rail, un galet déraillé</translation>
    </message>
    <message>
        <source>one person, from either side</source>
        <translation type="unfinished">une personne, de chaque côté</translation>
    </message>
    <message>
        <source>it takes two</source>
        <translation type="unfinished">il en faut deux</translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">lâchez, écartez-vous&#xa0;: elle se referme</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">accroché au loquet, tiré jusqu&apos;à ce qu&apos;il lâche</translation>
    </message>
    <message>
        <source>at the free edge, square to the leaf, nearly shut</source>
        <translation type="unfinished">au bord libre, d&apos;équerre avec le vantail, presque fermé</translation>
    </message>
    <message>
        <source>the angle between plumb line and ship</source>
        <translation type="unfinished">l&apos;angle entre le fil à plomb et le navire</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Déclenchement %1</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Contact avec un bloc souple, jamais une main</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Force de fermeture au bord, au peson</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Gîte actuelle du navire</translation>
    </message>
    <message>
        <source>scoured or painted over</source>
        <translation type="unfinished">usée ou peinte</translation>
    </message>
    <message>
        <source>the number can be read</source>
        <translation type="unfinished">le numéro est lisible</translation>
    </message>
    <message>
        <source>a grille in the leaf</source>
        <translation type="unfinished">une grille dans le vantail</translation>
    </message>
    <message>
        <source>a grille: only the openings between the bars</source>
        <translation type="unfinished">une grille&#xa0;: seulement les ouvertures entre les barreaux</translation>
    </message>
    <message>
        <source>cracked, or without its wire</source>
        <translation type="unfinished">fêlé, ou sans son armature</translation>
    </message>
    <message>
        <source>one leaf, from hinge side to free edge</source>
        <translation type="unfinished">un vantail, du côté charnières au bord libre</translation>
    </message>
    <message>
        <source>holes, a cable through it, rust</source>
        <translation type="unfinished">trous, un câble qui traverse, rouille</translation>
    </message>
    <message>
        <source>the cover falls shut by itself</source>
        <translation type="unfinished">le volet retombe fermé de lui-même</translation>
    </message>
    <message>
        <source>the cover stays up</source>
        <translation type="unfinished">le volet reste levé</translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished">prêt</translation>
    </message>
    <message>
        <source>start: …</source>
        <translation type="unfinished">départ&#xa0;: …</translation>
    </message>
    <message>
        <source>stop: …</source>
        <translation type="unfinished">stop&#xa0;: …</translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished">répond sur le canal convenu</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">une main au bord, une caisse sur la course</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">l&apos;une est en panne, les autres fonctionnent</translation>
    </message>
    <message>
        <source>the cover opens, a tool gets in</source>
        <translation type="unfinished">le capot s&apos;ouvre, un outil y entre</translation>
    </message>
    <message>
        <source>built in behind pipes and lockers</source>
        <translation type="unfinished">encastré derrière des tuyaux et des placards</translation>
    </message>
    <message>
        <source>what it is for, and who approved it</source>
        <translation type="unfinished">à quoi il sert, et qui l&apos;a approuvé</translation>
    </message>
    <message>
        <source>shuts fully from any position</source>
        <translation type="unfinished">se ferme complètement de toute position</translation>
    </message>
    <message>
        <source>left ajar</source>
        <translation type="unfinished">reste entrouverte</translation>
    </message>
    <message>
        <source>even speed from start to end</source>
        <translation type="unfinished">vitesse régulière du début à la fin</translation>
    </message>
    <message>
        <source>lip home first: the other leaf stays out</source>
        <translation type="unfinished">le recouvrement d&apos;abord&#xa0;: l&apos;autre vantail reste dehors</translation>
    </message>
    <message>
        <source>shuts when let go</source>
        <translation type="unfinished">se ferme quand on la lâche</translation>
    </message>
    <message>
        <source>the switch on each side releases it</source>
        <translation type="unfinished">l&apos;interrupteur de chaque côté la déclenche</translation>
    </message>
    <message>
        <source>stays where it was put</source>
        <translation type="unfinished">reste où on l&apos;a mis</translation>
    </message>
    <message>
        <source>ajar, and the panel says open</source>
        <translation type="unfinished">entrouverte, et le tableau dit ouverte</translation>
    </message>
    <message>
        <source>ajar, but the panel says shut</source>
        <translation type="unfinished">entrouverte, mais le tableau dit fermée</translation>
    </message>
    <message>
        <source>the strip is flush and unbroken</source>
        <translation type="unfinished">la bande est affleurante et entière</translation>
    </message>
    <message>
        <source>hangs low and rubs on the sill</source>
        <translation type="unfinished">pend et frotte sur le seuil</translation>
    </message>
    <message>
        <source>dry, arm secure at both ends</source>
        <translation type="unfinished">sec, bras fixé aux deux bouts</translation>
    </message>
    <message>
        <source>leaks oil, arm is off</source>
        <translation type="unfinished">perd de l&apos;huile, bras décroché</translation>
    </message>
    <message>
        <source>the bolt falls short: a push opens it</source>
        <translation type="unfinished">le pêne est trop court&#xa0;: une poussée l&apos;ouvre</translation>
    </message>
    <message>
        <source>overlaps the stop well</source>
        <translation type="unfinished">recouvre bien la feuillure</translation>
    </message>
    <message>
        <source>narrow at its widest point</source>
        <translation type="unfinished">étroit à l&apos;endroit le plus large</translation>
    </message>
    <message>
        <source>clear deck along the whole path</source>
        <translation type="unfinished">pont dégagé sur toute la course</translation>
    </message>
    <message>
        <source>stores in the path of the leaf</source>
        <translation type="unfinished">matériel entreposé sur la course du vantail</translation>
    </message>
    <message>
        <source>clear to the end</source>
        <translation type="unfinished">dégagé jusqu&apos;au fond</translation>
    </message>
    <message>
        <source>clean, every roller on the rail</source>
        <translation type="unfinished">propre, chaque galet sur le rail</translation>
    </message>
    <message>
        <source>open it while it is still released</source>
        <translation type="unfinished">ouvrez-la pendant qu&apos;elle est encore déclenchée</translation>
    </message>
    <message>
        <source>stops at the soft block and re-opens</source>
        <translation type="unfinished">s&apos;arrête au bloc souple et se rouvre</translation>
    </message>
    <message>
        <source>keeps pushing: a hand would be crushed</source>
        <translation type="unfinished">continue de pousser&#xa0;: une main serait écrasée</translation>
    </message>
    <message>
        <source>re-opens a little from the block</source>
        <translation type="unfinished">se rouvre un peu à partir du bloc</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">se rouvre trop</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it first moves</source>
        <translation type="unfinished">accroché au bord libre, jusqu&apos;au premier mouvement</translation>
    </message>
    <message>
        <source>opened to the stair&apos;s width</source>
        <translation type="unfinished">ouverte à la largeur de l&apos;escalier</translation>
    </message>
    <message>
        <source>Check the whole path first. Operate the switch or handle on that side, then stand clear. Keep hands off edges and out of the pocket.</source>
        <translation type="unfinished">Vérifiez d&apos;abord toute la course. Actionnez l&apos;interrupteur ou la poignée de ce côté, puis écartez-vous. Gardez les mains loin des bords et hors du logement du vantail.</translation>
    </message>
    <message>
        <source>Open it fully. Check that its path is clear. Let go and stand clear.</source>
        <translation type="unfinished">Ouvrez-la complètement. Vérifiez que sa course est dégagée. Lâchez-la et écartez-vous.</translation>
    </message>
    <message>
        <source>Announce which doors will move, and when, over the public address or by word of mouth. Wait until everyone nearby shows that they have heard.</source>
        <translation type="unfinished">Annoncez quelles portes vont bouger, et quand, par la diffusion générale ou de vive voix. Attendez que tous ceux qui sont à proximité montrent qu&apos;ils ont entendu.</translation>
    </message>
    <message>
        <source>Keep people out of every opening and away from every leaf. Keep each child with an adult. At every door, turn people back until the door has stopped.</source>
        <translation type="unfinished">Tenez les gens hors de chaque ouverture et à l&apos;écart de chaque vantail. Gardez chaque enfant avec un adulte. À chaque porte, faites reculer les gens jusqu&apos;à ce que la porte soit arrêtée.</translation>
    </message>
    <message>
        <source>Post a lookout on each side of every door that will move. Each must see the leaf and the approach, and be able to give the stop word. Never use one lookout for both sides.</source>
        <translation type="unfinished">Postez un surveillant de chaque côté de chaque porte qui va bouger. Chacun doit voir le vantail et ses abords, et pouvoir donner le mot d&apos;arrêt. Ne prenez jamais un seul surveillant pour les deux côtés.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers must be at the release, with no other task.</source>
        <translation type="unfinished">Appelez sur le canal convenu et attendez la réponse. La personne qui répond doit être à la commande de déclenchement, sans autre tâche.</translation>
    </message>
    <message>
        <source>Say which word is the start word and which is the stop word. Hear both read back. Anyone may give the stop word.</source>
        <translation type="unfinished">Dites quel est le mot de départ et quel est le mot d&apos;arrêt. Écoutez les deux être collationnés. N&apos;importe qui peut donner le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, with the leaf a hand&apos;s breadth from shut. Hold it still and read the pull. Keep fingers off the edge. Mass and force show what an inclination would do.</source>
        <translation type="unfinished">Accrochez le peson au bord libre, d&apos;équerre avec le vantail, celui-ci à une largeur de main de la fermeture. Tenez-le immobile et lisez la traction. Gardez les doigts loin du bord. La masse et la force montrent ce que ferait une inclinaison.</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count with the ship upright: over 1 degree of heel they are advice only.</source>
        <translation type="unfinished">Lisez le clinomètre à la passerelle, ou tenez un fil à plomb le long d&apos;un cadre vertical. Les temps comptent navire droit&#xa0;: au-delà de 1 degré de gîte, ils ne sont qu&apos;une recommandation.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures take precedence.</source>
        <translation type="unfinished">Pratique courante. Les règles locales et les procédures de la compagnie priment.</translation>
    </message>
    <message>
        <source>plate class at or above the boundary&apos;s</source>
        <translation type="unfinished">classe de la plaque au moins égale à celle du cloisonnement</translation>
    </message>
    <message>
        <source>plate class below the boundary&apos;s</source>
        <translation type="unfinished">classe de la plaque inférieure à celle du cloisonnement</translation>
    </message>
    <message>
        <source>legible, and agrees with the register</source>
        <translation type="unfinished">lisible, et concorde avec le registre</translation>
    </message>
    <message>
        <source>no opening in the leaf</source>
        <translation type="unfinished">aucune ouverture dans le vantail</translation>
    </message>
    <message>
        <source>an undercut: width by height</source>
        <translation type="unfinished">une fente sous la porte&#xa0;: largeur par hauteur</translation>
    </message>
    <message>
        <source>intact, with its wire: height by width</source>
        <translation type="unfinished">entier, avec son armature&#xa0;: hauteur par largeur</translation>
    </message>
    <message>
        <source>sound all over</source>
        <translation type="unfinished">sain partout</translation>
    </message>
    <message>
        <source>everyone nearby has heard it</source>
        <translation type="unfinished">tous ceux qui sont à proximité ont entendu</translation>
    </message>
    <message>
        <source>no one in the path or near it</source>
        <translation type="unfinished">personne sur la course ni à proximité</translation>
    </message>
    <message>
        <source>someone in the opening</source>
        <translation type="unfinished">quelqu&apos;un dans l&apos;ouverture</translation>
    </message>
    <message>
        <source>a lookout on each side of every door</source>
        <translation type="unfinished">un surveillant de chaque côté de chaque porte</translation>
    </message>
    <message>
        <source>no one sees the far side</source>
        <translation type="unfinished">personne ne voit l&apos;autre côté</translation>
    </message>
    <message>
        <source>each word given, then read back</source>
        <translation type="unfinished">chaque mot donné, puis collationné</translation>
    </message>
    <message>
        <source>path and pocket are clear</source>
        <translation type="unfinished">course et logement sont dégagés</translation>
    </message>
    <message>
        <source>supply cut, door shuts</source>
        <translation type="unfinished">alimentation coupée, la porte se ferme</translation>
    </message>
    <message>
        <source>supply cut, door stays open</source>
        <translation type="unfinished">alimentation coupée, la porte reste ouverte</translation>
    </message>
    <message>
        <source>hold-back fails, door is driven shut</source>
        <translation type="unfinished">le dispositif de retenue est en panne, la porte est fermée par sa source d&apos;énergie</translation>
    </message>
    <message>
        <source>hold-back fails, door stays open</source>
        <translation type="unfinished">le dispositif de retenue est en panne, la porte reste ouverte</translation>
    </message>
    <message>
        <source>one fails, and none works</source>
        <translation type="unfinished">l&apos;une est en panne, et aucune ne fonctionne</translation>
    </message>
    <message>
        <source>released from the control station, it closes</source>
        <translation type="unfinished">déclenchée du poste de sécurité, elle se ferme</translation>
    </message>
    <message>
        <source>a hold-back that the control station releases</source>
        <translation type="unfinished">un dispositif de retenue que le poste de sécurité déclenche</translation>
    </message>
    <message>
        <source>Confirm the cautions first. The control station releases the doors on the start word. Let no one through a moving door. Anyone may give the stop word.</source>
        <translation type="unfinished">Confirmez d&apos;abord les précautions. Le poste de sécurité déclenche les portes au mot de départ. Ne laissez passer personne par une porte en mouvement. N&apos;importe qui peut donner le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>At every door, look along the whole path, and into the pocket with a torch. Keep hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">À chaque porte, regardez toute la course, et dans le logement du vantail avec une lampe torche. Éloignez mains, pieds, manches d&apos;incendie et câbles des bords et des montants de rencontre.</translation>
    </message>
    <message>
        <source>Hold the block low in the path, by the end away from the leaf. Stand out of the path yourself. Mark when the leaf touches and when it stops, then measure how far it re-opened. If it keeps pushing, give the stop word.</source>
        <translation type="unfinished">Tenez le bloc bas sur la course, par le bout opposé au vantail. Tenez-vous vous-même hors de la course. Marquez quand le vantail touche et quand il s&apos;arrête, puis mesurez de combien il s&apos;est rouvert. S&apos;il continue de pousser, donnez le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>opened and shut ten times from its accumulator</source>
        <translation type="unfinished">ouverte et fermée dix fois sur son accumulateur</translation>
    </message>
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: the closing force needed at %1 degrees cannot be calculated.</source>
        <translation type="unfinished">La masse du vantail n&apos;est pas dans le registre&#xa0;: la force de fermeture nécessaire à %1 degrés ne peut pas être calculée.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Measure the closer&apos;s force there with a spring gauge.</source>
        <translation type="unfinished">À %1 degrés, le seul poids du vantail tire jusqu&apos;à %2 à son bord. Mesurez-y la force du ferme-porte avec un peson.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: too close for the calculation to tell.</source>
        <translation type="unfinished">Le ferme-porte donne %1&#xa0;; à %2 degrés, le seul poids du vantail tire jusqu&apos;à %3&#xa0;: trop juste pour que le calcul permette de trancher.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could not close the door.</source>
        <translation type="unfinished">Le ferme-porte donne %1&#xa0;; à %2 degrés, le seul poids du vantail tire jusqu&apos;à %3&#xa0;: le ferme-porte ne pourrait pas fermer la porte.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could close the door if hinges, seals and latch take less than the rest. Calculated, not tested: this gives no verdict.</source>
        <translation type="unfinished">Le ferme-porte donne %1&#xa0;; à %2 degrés, le seul poids du vantail tire jusqu&apos;à %3&#xa0;: le ferme-porte pourrait fermer la porte si charnières, joints et loquet prennent moins que le reste. Calculé, non testé&#xa0;: cela ne donne aucun résultat.</translation>
    </message>
</context>
<context>
    <name>ItemWords</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 et %2</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">constatée</translation>
    </message>
    <message>
        <source>rectified</source>
        <translation type="unfinished">rectifiée</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">clôturée</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">retirée</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">grave</translation>
    </message>
    <message>
        <source>minor</source>
        <translation type="unfinished">mineure</translation>
    </message>
    <message>
        <source>at the next port</source>
        <translation type="unfinished">au prochain port</translation>
    </message>
    <message>
        <source>within 14 days</source>
        <translation type="unfinished">dans les 14 jours</translation>
    </message>
    <message>
        <source>before departure</source>
        <translation type="unfinished">avant le départ</translation>
    </message>
    <message>
        <source>within three months</source>
        <translation type="unfinished">dans les trois mois</translation>
    </message>
    <message>
        <source>ship detained</source>
        <translation type="unfinished">navire immobilisé</translation>
    </message>
    <message>
        <source>ground for detention</source>
        <translation type="unfinished">motif d&apos;immobilisation</translation>
    </message>
    <message>
        <source>no ground for detention</source>
        <translation type="unfinished">pas un motif d&apos;immobilisation</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">second capitaine</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished">inspecteur</translation>
    </message>
    <message>
        <source>survey report</source>
        <translation type="unfinished">rapport de visite</translation>
    </message>
    <message>
        <source>deficiency list</source>
        <translation type="unfinished">liste d&apos;anomalies</translation>
    </message>
    <message>
        <source>work list</source>
        <translation type="unfinished">liste de travaux</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">fiche de porte</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">en retard depuis le %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">pour le %1</translation>
    </message>
    <message>
        <source>found %1 times</source>
        <translation type="unfinished">constatée %1 fois</translation>
    </message>
    <message>
        <source>the same defect as an earlier item</source>
        <translation type="unfinished">le même défaut qu&apos;une anomalie antérieure</translation>
    </message>
    <message>
        <source>awaiting retest</source>
        <translation type="unfinished">à retester</translation>
    </message>
    <message>
        <source>critical</source>
        <translation type="unfinished">critique</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">pas de date</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">encore personne</translation>
    </message>
    <message>
        <source>passed, but tested only by whoever rectified it: someone else must test it</source>
        <translation type="unfinished">réussi, mais testé seulement par celui qui a rectifié&#xa0;: un autre doit tester</translation>
    </message>
    <message>
        <source>in order on a later walkdown, but no rectification is recorded</source>
        <translation type="unfinished">en ordre lors d&apos;une tournée ultérieure, mais aucune rectification n&apos;est consignée</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 long%3</source>
        <translation type="unfinished">les tranches %1 n&apos;en font qu&apos;une, longue de %2%3</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Anglais là où il n&apos;y a pas de traduction</translation>
    </message>
    <message>
        <source>As set on this device</source>
        <translation type="unfinished">Comme réglé sur cet appareil</translation>
    </message>
    <message>
        <source>the original text</source>
        <translation type="unfinished">le texte original</translation>
    </message>
    <message>
        <source>translation checked by a native speaker in the trade</source>
        <translation type="unfinished">traduction vérifiée par un locuteur natif du métier</translation>
    </message>
    <message>
        <source>machine translation, not yet checked by a native speaker in the trade</source>
        <translation type="unfinished">traduction automatique, pas encore vérifiée par un locuteur natif du métier</translation>
    </message>
</context>
<context>
    <name>Offered</name>
    <message>
        <source>whole door</source>
        <translation type="unfinished">porte entière</translation>
    </message>
    <message>
        <source>surveyor</source>
        <translation type="unfinished">inspecteur</translation>
    </message>
    <message>
        <source>second surveyor</source>
        <translation type="unfinished">second inspecteur</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">second capitaine</translation>
    </message>
    <message>
        <source>master</source>
        <translation type="unfinished">capitaine</translation>
    </message>
    <message>
        <source>chief engineer</source>
        <translation type="unfinished">chef mécanicien</translation>
    </message>
    <message>
        <source>safety officer</source>
        <translation type="unfinished">officier sécurité</translation>
    </message>
    <message>
        <source>fire patrol</source>
        <translation type="unfinished">ronde incendie</translation>
    </message>
    <message>
        <source>company inspector</source>
        <translation type="unfinished">inspecteur compagnie</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation type="unfinished">stagiaire</translation>
    </message>
    <message>
        <source>bridge</source>
        <translation type="unfinished">passerelle</translation>
    </message>
    <message>
        <source>safety centre</source>
        <translation type="unfinished">centre de sécurité</translation>
    </message>
    <message>
        <source>engine control room</source>
        <translation type="unfinished">PC machine</translation>
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
        <translation type="unfinished">téléphone</translation>
    </message>
    <message>
        <source>anyone</source>
        <translation type="unfinished">n&apos;importe qui</translation>
    </message>
    <message>
        <source>all doors</source>
        <translation type="unfinished">toutes les portes</translation>
    </message>
    <message>
        <source>zone bulkheads</source>
        <translation type="unfinished">cloisons de tranche</translation>
    </message>
    <message>
        <source>quarterly: zone bulkheads</source>
        <translation type="unfinished">trimestrielle&#xa0;: cloisons de tranche</translation>
    </message>
    <message>
        <source>doors to be retested</source>
        <translation type="unfinished">portes à retester</translation>
    </message>
    <message>
        <source>doors that failed last time</source>
        <translation type="unfinished">portes en échec la dernière fois</translation>
    </message>
    <message>
        <source>closer leaks oil</source>
        <translation type="unfinished">le ferme-porte perd de l&apos;huile</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">joint peint</translation>
    </message>
    <message>
        <source>seal torn at the head</source>
        <translation type="unfinished">joint déchiré en haut</translation>
    </message>
    <message>
        <source>leaf rubs on the sill</source>
        <translation type="unfinished">le vantail frotte sur le seuil</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">détritus dans le logement</translation>
    </message>
    <message>
        <source>mat under the leaf</source>
        <translation type="unfinished">tapis sous le vantail</translation>
    </message>
    <message>
        <source>switch cover broken</source>
        <translation type="unfinished">capot d&apos;interrupteur cassé</translation>
    </message>
    <message>
        <source>sign screwed to the leaf</source>
        <translation type="unfinished">panneau vissé sur le vantail</translation>
    </message>
    <message>
        <source>spare part ordered</source>
        <translation type="unfinished">pièce de rechange commandée</translation>
    </message>
    <message>
        <source>space locked, no key</source>
        <translation type="unfinished">local verrouillé, pas de clé</translation>
    </message>
    <message>
        <source>space in use by passengers</source>
        <translation type="unfinished">local occupé par des passagers</translation>
    </message>
    <message>
        <source>cargo or stores in the way</source>
        <translation type="unfinished">cargaison ou matériel entreposé gênants</translation>
    </message>
    <message>
        <source>under repair</source>
        <translation type="unfinished">en réparation</translation>
    </message>
    <message>
        <source>control station not manned</source>
        <translation type="unfinished">poste de sécurité sans personnel</translation>
    </message>
    <message>
        <source>no engineer free</source>
        <translation type="unfinished">aucun mécanicien libre</translation>
    </message>
    <message>
        <source>not safe to move</source>
        <translation type="unfinished">dangereux à manœuvrer</translation>
    </message>
    <message>
        <source>ship not upright</source>
        <translation type="unfinished">navire non droit</translation>
    </message>
    <message>
        <source>agreed with the class surveyor</source>
        <translation type="unfinished">convenu avec l&apos;expert de classe</translation>
    </message>
    <message>
        <source>as built and accepted before</source>
        <translation type="unfinished">tel que construit et déjà accepté</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">plaque</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">joint</translation>
    </message>
    <message>
        <source>sill</source>
        <translation type="unfinished">seuil</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">logement</translation>
    </message>
    <message>
        <source>latch</source>
        <translation type="unfinished">loquet</translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished">ferme-porte</translation>
    </message>
    <message>
        <source>damage</source>
        <translation type="unfinished">dommage</translation>
    </message>
    <message>
        <source>obstruction</source>
        <translation type="unfinished">obstacle</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">comme constaté</translation>
    </message>
    <message>
        <source>after the work</source>
        <translation type="unfinished">après les travaux</translation>
    </message>
    <message>
        <source>the part that was changed</source>
        <translation type="unfinished">la partie changée</translation>
    </message>
    <message>
        <source>someone in the way</source>
        <translation type="unfinished">quelqu&apos;un dans le passage</translation>
    </message>
    <message>
        <source>object in the path</source>
        <translation type="unfinished">objet sur la course</translation>
    </message>
    <message>
        <source>wrong door moved</source>
        <translation type="unfinished">mauvaise porte</translation>
    </message>
    <message>
        <source>door did not move</source>
        <translation type="unfinished">porte immobile</translation>
    </message>
    <message>
        <source>channel lost</source>
        <translation type="unfinished">canal perdu</translation>
    </message>
    <message>
        <source>touched too late</source>
        <translation type="unfinished">touché trop tard</translation>
    </message>
    <message>
        <source>touched too early</source>
        <translation type="unfinished">touché trop tôt</translation>
    </message>
    <message>
        <source>leaf was held</source>
        <translation type="unfinished">vantail retenu</translation>
    </message>
    <message>
        <source>view was blocked</source>
        <translation type="unfinished">vue masquée</translation>
    </message>
    <message>
        <source>ship rolled</source>
        <translation type="unfinished">roulis du navire</translation>
    </message>
    <message>
        <source>wrong release</source>
        <translation type="unfinished">mauvais déclenchement</translation>
    </message>
    <message>
        <source>fire patrol, every 30 minutes</source>
        <translation type="unfinished">ronde incendie, toutes les 30 minutes</translation>
    </message>
    <message>
        <source>fire patrol, every hour</source>
        <translation type="unfinished">ronde incendie, toutes les heures</translation>
    </message>
    <message>
        <source>kept shut and marked</source>
        <translation type="unfinished">tenue fermée et signalée</translation>
    </message>
    <message>
        <source>kept shut, other way out marked</source>
        <translation type="unfinished">tenue fermée, autre issue signalée</translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished">déclenchement local seulement</translation>
    </message>
    <message>
        <source>closer adjusted</source>
        <translation type="unfinished">ferme-porte réglé</translation>
    </message>
    <message>
        <source>closer replaced</source>
        <translation type="unfinished">ferme-porte remplacé</translation>
    </message>
    <message>
        <source>latch adjusted</source>
        <translation type="unfinished">loquet réglé</translation>
    </message>
    <message>
        <source>latch replaced</source>
        <translation type="unfinished">loquet remplacé</translation>
    </message>
    <message>
        <source>hinges tightened</source>
        <translation type="unfinished">charnières resserrées</translation>
    </message>
    <message>
        <source>seal replaced</source>
        <translation type="unfinished">joint remplacé</translation>
    </message>
    <message>
        <source>magnet replaced</source>
        <translation type="unfinished">aimant remplacé</translation>
    </message>
    <message>
        <source>alarm replaced</source>
        <translation type="unfinished">alarme remplacée</translation>
    </message>
    <message>
        <source>rails cleaned and greased</source>
        <translation type="unfinished">rails nettoyés et graissés</translation>
    </message>
    <message>
        <source>path and pocket cleared</source>
        <translation type="unfinished">course et logement dégagés</translation>
    </message>
    <message>
        <source>plate replaced</source>
        <translation type="unfinished">plaque remplacée</translation>
    </message>
    <message>
        <source>leaf replaced</source>
        <translation type="unfinished">vantail remplacé</translation>
    </message>
    <message>
        <source>written up twice</source>
        <translation type="unfinished">rédigée deux fois</translation>
    </message>
    <message>
        <source>written up by mistake</source>
        <translation type="unfinished">rédigée par erreur</translation>
    </message>
    <message>
        <source>the approved plan was changed</source>
        <translation type="unfinished">le plan approuvé a été modifié</translation>
    </message>
    <message>
        <source>the Administration accepts it</source>
        <translation type="unfinished">l&apos;Administration l&apos;accepte</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">arrêté, sans motif</translation>
    </message>
    <message>
        <source>chosen in the settings</source>
        <translation type="unfinished">choisi dans les réglages</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">arrêté</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation type="unfinished">interrompu</translation>
    </message>
    <message>
        <source>completed by hand</source>
        <translation type="unfinished">complété à la main</translation>
    </message>
    <message>
        <source>typed in from paper</source>
        <translation type="unfinished">saisi d&apos;après papier</translation>
    </message>
    <message>
        <source>answer taken back</source>
        <translation type="unfinished">réponse retirée</translation>
    </message>
    <message>
        <source>mark taken back</source>
        <translation type="unfinished">repère retiré</translation>
    </message>
    <message>
        <source>withdrawn by mistake</source>
        <translation type="unfinished">retiré par erreur</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">acceptée par son empreinte</translation>
    </message>
    <message>
        <source>any team member and the control station</source>
        <translation type="unfinished">tout membre de l&apos;équipe et le poste de sécurité</translation>
    </message>
    <message>
        <source>rectified on the spot</source>
        <translation type="unfinished">rectifié sur place</translation>
    </message>
    <message>
        <source>as per approved drawing</source>
        <translation type="unfinished">selon le plan approuvé</translation>
    </message>
    <message>
        <source>worn but serviceable</source>
        <translation type="unfinished">usé mais utilisable</translation>
    </message>
    <message>
        <source>not safe to leave as is</source>
        <translation type="unfinished">dangereux à laisser en l&apos;état</translation>
    </message>
    <message>
        <source>lookout left post</source>
        <translation type="unfinished">surveillant parti</translation>
    </message>
    <message>
        <source>lookout posted at the door</source>
        <translation type="unfinished">surveillant posté à la porte</translation>
    </message>
    <message>
        <source>zone kept clear of people</source>
        <translation type="unfinished">tranche tenue vide de personnes</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation type="unfinished">aucune nécessaire</translation>
    </message>
    <message>
        <source>wiring repaired</source>
        <translation type="unfinished">câblage réparé</translation>
    </message>
    <message>
        <source>hook or wedge removed</source>
        <translation type="unfinished">crochet ou cale enlevés</translation>
    </message>
    <message>
        <source>the door was removed</source>
        <translation type="unfinished">la porte a été supprimée</translation>
    </message>
    <message>
        <source>checked again together</source>
        <translation type="unfinished">revérifié ensemble</translation>
    </message>
    <message>
        <source>the other was an error</source>
        <translation type="unfinished">l&apos;autre était une erreur</translation>
    </message>
    <message>
        <source>better light</source>
        <translation type="unfinished">meilleur éclairage</translation>
    </message>
    <message>
        <source>better instrument</source>
        <translation type="unfinished">meilleur instrument</translation>
    </message>
    <message>
        <source>void, no reason given</source>
        <translation type="unfinished">nul, sans motif</translation>
    </message>
    <message>
        <source>run continued</source>
        <translation type="unfinished">essai poursuivi</translation>
    </message>
</context>
<context>
    <name>OpenItems</name>
    <message>
        <source>and %1 more</source>
        <comment>rows of a door</comment>
        <translation type="unfinished">et %1 de plus</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>Creating the document</source>
        <translation type="unfinished">Création du document</translation>
    </message>
    <message>
        <source>No document was created. Any earlier one is unchanged.</source>
        <translation type="unfinished">Aucun document n&apos;a été créé. Un document antérieur éventuel est inchangé.</translation>
    </message>
    <message>
        <source>No document</source>
        <translation type="unfinished">Pas de document</translation>
    </message>
    <message>
        <source>Document created</source>
        <translation type="unfinished">Document créé</translation>
    </message>
    <message>
        <source>The PDF is at %1</source>
        <translation type="unfinished">Le PDF est à l&apos;emplacement %1</translation>
    </message>
    <message>
        <source>Open to print</source>
        <translation type="unfinished">Ouvrir pour imprimer</translation>
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
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>PlanDraft</name>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
    <message>
        <source>%1, random sample of %2 (seed %3)</source>
        <translation type="unfinished">%1, échantillon aléatoire de %2 (graine %3)</translation>
    </message>
</context>
<context>
    <name>RadioWords</name>
    <message>
        <source>release now</source>
        <translation type="unfinished">déclenchez maintenant</translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished">stop stop stop</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished">Ouvrir ce navire</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>Register imported</source>
        <translation type="unfinished">Registre importé</translation>
    </message>
    <message>
        <source>Saved at %1.</source>
        <translation type="unfinished">Enregistré à l&apos;emplacement %1.</translation>
    </message>
    <message>
        <source>Importing the register</source>
        <translation type="unfinished">Importation du registre</translation>
    </message>
    <message>
        <source>Nothing was imported. The vessels here are unchanged.</source>
        <translation type="unfinished">Rien n&apos;a été importé. Les navires présents ici sont inchangés.</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">Non importé&#xa0;: une erreur</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">Non importé&#xa0;: %1 erreurs</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>none</source>
        <translation type="unfinished">aucune</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation type="unfinished">%1, de %2 à %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished">%1 le %2</translation>
    </message>
    <message>
        <source>Released from the control station without every caution confirmed for that run: %1.</source>
        <translation type="unfinished">Déclenchement depuis le poste de sécurité sans que toutes les précautions aient été confirmées pour cet essai&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Each of these must be confirmed before a door is released from the control station:</source>
        <translation type="unfinished">Chacune de ces précautions doit être confirmée avant de déclencher une porte depuis le poste de sécurité&#xa0;:</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished">Précautions</translation>
    </message>
    <message>
        <source>No caution was answered in this walkdown.</source>
        <translation type="unfinished">Aucune précaution n&apos;a reçu de réponse pendant cette tournée.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Porte</translation>
    </message>
    <message>
        <source>Answered by</source>
        <translation type="unfinished">Répondu par</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Quand</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Confirmé</translation>
    </message>
    <message>
        <source>Not confirmed</source>
        <translation type="unfinished">Non confirmé</translation>
    </message>
    <message>
        <source>Times were taken by hand. Starting and stopping by hand has a standard uncertainty of %1 s and a bias of at most %2 s either way, or %3 s where one end is heard and the other seen. Figures are given with their expanded uncertainty U (k = 2), which covers reaction time, sight of the leaf and the device. These are not laboratory times.</source>
        <translation type="unfinished">Les temps ont été pris à la main. Démarrer et arrêter à la main a une incertitude-type de %1 s et un biais d&apos;au plus %2 s dans un sens ou dans l&apos;autre, ou de %3 s quand l&apos;un des deux instants est entendu et l&apos;autre vu. Les valeurs sont données avec leur incertitude élargie U (k = 2), qui couvre le temps de réaction, la vue du vantail et l&apos;appareil. Ce ne sont pas des temps de laboratoire.</translation>
    </message>
    <message>
        <source>Runs timed by a person who had done the timing drill on that tablet: %2 of %1. For these, the person&apos;s own delay and scatter replace the published figures.</source>
        <translation type="unfinished">Essais chronométrés par une personne qui avait fait le test de réaction sur cette tablette&#xa0;: %2 sur %1. Pour ceux-ci, le retard et la dispersion propres à cette personne remplacent les valeurs publiées.</translation>
    </message>
    <message>
        <source>A figure is satisfactory if the probability that it is within its limits is at least %1, and unsatisfactory if that probability is at most %2. In between, the run is timed again or the inspector decides (JCGM 106:2012).</source>
        <translation type="unfinished">Une valeur est satisfaisante si la probabilité qu&apos;elle soit dans ses limites est d&apos;au moins %1, et non satisfaisante si cette probabilité est d&apos;au plus %2. Entre les deux, l&apos;essai est rechronométré ou l&apos;inspecteur décide (JCGM 106:2012).</translation>
    </message>
    <message>
        <source>These are not the usual 95 % and 5 %; reason given: %1.</source>
        <translation type="unfinished">Ce ne sont pas les 95&#xa0;% et 5&#xa0;% habituels&#xa0;; motif donné&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A figure read off a rule or gauge is satisfactory at its limit and unsatisfactory one step of the instrument or more beyond it. In between, the inspector decides. Where the text calls its band approximate, the inspector also decides on a closing outside the band but within the margin of that requirement. Steps and margins are the program&apos;s own choice, no source.</source>
        <translation type="unfinished">Une valeur lue sur une règle ou une jauge est satisfaisante si elle est à sa limite, et non satisfaisante si elle la dépasse d&apos;un échelon de l&apos;instrument ou plus. Entre les deux, l&apos;inspecteur décide. Si le texte dit sa plage approximative, l&apos;inspecteur décide aussi d&apos;une fermeture hors de la plage mais dans la marge de cette exigence. Échelons et marges sont le choix du programme, sans source.</translation>
    </message>
    <message>
        <source>A released door moves by itself and can crush. Before work on a door, secure it against release. Before it is tested again, warn everyone near it.</source>
        <translation type="unfinished">Une porte déclenchée bouge d&apos;elle-même et peut écraser. Avant tout travail sur une porte, rendez son déclenchement impossible. Avant de la tester de nouveau, prévenez tous ceux qui sont à proximité.</translation>
    </message>
    <message>
        <source>Scope and limits</source>
        <translation type="unfinished">Portée et limites</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this report; grades are an aid to the inspector&apos;s judgement.</source>
        <translation type="unfinished">L&apos;Administration du pavillon, les plans approuvés et les règles locales priment sur ce rapport&#xa0;; les évaluations sont une aide à l&apos;appréciation de l&apos;inspecteur.</translation>
    </message>
    <message>
        <source>The rules assume an upright ship: a time taken at more than %1° of heel is advice only.</source>
        <translation type="unfinished">Les règles supposent le navire droit&#xa0;: un temps pris au-delà de %1° de gîte n&apos;est qu&apos;une recommandation.</translation>
    </message>
    <message>
        <source>The report covers what was seen at the doors named, at the times given. It says nothing about any other door, check or time.</source>
        <translation type="unfinished">Le rapport couvre ce qui a été vu aux portes citées, aux moments indiqués. Il ne dit rien d&apos;aucune autre porte, d&apos;aucune autre vérification ni d&apos;aucun autre moment.</translation>
    </message>
    <message>
        <source>Catalogue:</source>
        <translation type="unfinished">Catalogue&#xa0;:</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Règles qui priment</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this document; grades are an aid to the judgement of those who sign.</source>
        <translation type="unfinished">L&apos;Administration du pavillon, les plans approuvés et les règles locales priment sur ce document&#xa0;; les évaluations sont une aide à l&apos;appréciation de ceux qui signent.</translation>
    </message>
    <message>
        <source>At present: %1.</source>
        <translation type="unfinished">Actuellement&#xa0;: %1.</translation>
    </message>
    <message>
        <source>If it fails again: %1.</source>
        <translation type="unfinished">En cas de nouvel échec&#xa0;: %1.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">non</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">aucune consignée</translation>
    </message>
    <message>
        <source>%1: %2; %3 overdue.</source>
        <translation type="unfinished">%1&#xa0;: %2&#xa0;; %3 en retard.</translation>
    </message>
    <message>
        <source>1 open item</source>
        <translation type="unfinished">1 anomalie ouverte</translation>
    </message>
    <message>
        <source>%1 open items</source>
        <translation type="unfinished">%1 anomalies ouvertes</translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished">N°</translation>
    </message>
    <message>
        <source>Door and place</source>
        <translation type="unfinished">Porte et lieu</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation type="unfinished">Anomalie</translation>
    </message>
    <message>
        <source>Severity, zones</source>
        <translation type="unfinished">Gravité, tranches</translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished">Code</translation>
    </message>
    <message>
        <source>Action code</source>
        <translation type="unfinished">Code de mesure</translation>
    </message>
    <message>
        <source>Ground for detention</source>
        <translation type="unfinished">Motif pour immobiliser</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Échéance</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Mesure provisoire</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Confiée à</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">État</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Liste d&apos;anomalies</translation>
    </message>
    <message>
        <source>The vessel has no open items.</source>
        <translation type="unfinished">Le navire n&apos;a aucune anomalie ouverte.</translation>
    </message>
    <message>
        <source>Code 07105: fire doors and openings in fire-resisting divisions. Action code and ground for detention are as given by port State control, and blank where it gave none.</source>
        <translation type="unfinished">Code 07105&#xa0;: portes d&apos;incendie et ouvertures dans les cloisonnements résistant au feu. Le code de mesure et le motif d&apos;immobilisation sont ceux donnés par le contrôle par l&apos;État du port, en blanc s&apos;il n&apos;en a pas donné.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished">Signatures</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">pont %1, %2</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">entre les tranches %1 et %2</translation>
    </message>
    <message>
        <source>clear opening %1</source>
        <translation type="unfinished">passage libre de %1</translation>
    </message>
    <message>
        <source>not examined as a watertight door</source>
        <translation type="unfinished">non examinée comme porte étanche à l&apos;eau</translation>
    </message>
    <message>
        <source>class on the plate: %1, in the register: %2, required by the boundary: %3</source>
        <translation type="unfinished">classe sur la plaque&#xa0;: %1, au registre&#xa0;: %2, exigée par le cloisonnement&#xa0;: %3</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Exigence</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Limite</translation>
    </message>
    <message>
        <source>Measured, U (k = 2)</source>
        <translation type="unfinished">Mesuré, U (k = 2)</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished">Constaté</translation>
    </message>
    <message>
        <source>Untested:</source>
        <translation type="unfinished">Non testé&#xa0;:</translation>
    </message>
    <message>
        <source>On an inclined ship:</source>
        <translation type="unfinished">Navire incliné&#xa0;:</translation>
    </message>
    <message>
        <source>the whole door</source>
        <translation type="unfinished">toute la porte</translation>
    </message>
    <message>
        <source>Could not be tested</source>
        <translation type="unfinished">N&apos;a pas pu être testé</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Photos</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation type="unfinished">Anomalies</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notes</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation type="unfinished">Essais</translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished">Détails</translation>
    </message>
    <message>
        <source>and one earlier</source>
        <translation type="unfinished">et 1 plus tôt</translation>
    </message>
    <message>
        <source>and %1 earlier</source>
        <translation type="unfinished">et %1 plus tôt</translation>
    </message>
    <message>
        <source>Closing times</source>
        <translation type="unfinished">Temps de fermeture</translation>
    </message>
    <message>
        <source>Closing rates</source>
        <translation type="unfinished">Vitesses de fermeture</translation>
    </message>
    <message>
        <source>Not yet timed with the ship upright.</source>
        <translation type="unfinished">Pas encore chronométrée navire droit.</translation>
    </message>
    <message>
        <source>Limit: %1 (%2). Newest first, with U (k = 2): %3.</source>
        <translation type="unfinished">Limite&#xa0;: %1 (%2). Le plus récent d&apos;abord, avec U (k = 2)&#xa0;: %3.</translation>
    </message>
    <message>
        <source>No deficiency has been written up at this door.</source>
        <translation type="unfinished">Aucune anomalie n&apos;a été rédigée à cette porte.</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation type="unfinished">constatée le %1</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
    <message>
        <source>Found, due</source>
        <translation type="unfinished">Constatée, échéance</translation>
    </message>
    <message>
        <source>and one photograph in the register</source>
        <translation type="unfinished">et une photo dans le registre</translation>
    </message>
    <message>
        <source>and %1 photographs in the register</source>
        <translation type="unfinished">et %1 photos dans le registre</translation>
    </message>
    <message>
        <source>and one more</source>
        <translation type="unfinished">et 1 de plus</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">et %1 de plus</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Fiche de porte&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 in the %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>this door is simulated.</source>
        <translation type="unfinished">cette porte est simulée.</translation>
    </message>
    <message>
        <source>power operated</source>
        <translation type="unfinished">motorisée</translation>
    </message>
    <message>
        <source>hold-back</source>
        <translation type="unfinished">dispositif de retenue</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarme</translation>
    </message>
    <message>
        <source>re-opens on contact</source>
        <translation type="unfinished">se rouvre au contact</translation>
    </message>
    <message>
        <source>hose port</source>
        <translation type="unfinished">orifice de manche</translation>
    </message>
    <message>
        <source>escape route</source>
        <translation type="unfinished">échappée</translation>
    </message>
    <message>
        <source>watertight: not examined as a watertight door</source>
        <translation type="unfinished">étanche à l&apos;eau&#xa0;: non examinée comme porte étanche à l&apos;eau</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">étanche aux intempéries</translation>
    </message>
    <message>
        <source>released with %1</source>
        <translation type="unfinished">déclenchée avec %1</translation>
    </message>
    <message>
        <source>leaf %1 kg</source>
        <translation type="unfinished">vantail de %1 kg</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">installée le %1</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation type="unfinished">fabriquée par %1</translation>
    </message>
    <message>
        <source>Place and kind</source>
        <translation type="unfinished">Lieu et genre</translation>
    </message>
    <message>
        <source>Features</source>
        <translation type="unfinished">Caractéristiques</translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished">Classe</translation>
    </message>
    <message>
        <source>register %1, plate %2, required: %3</source>
        <translation type="unfinished">registre %1, plaque %2, exigée&#xa0;: %3</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished">Vérifications</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation type="unfinished">Consigné</translation>
    </message>
    <message>
        <source>and one more, see Details</source>
        <translation type="unfinished">et 1 de plus, voir Détails</translation>
    </message>
    <message>
        <source>and %1 more, see Details</source>
        <translation type="unfinished">et %1 de plus, voir Détails</translation>
    </message>
    <message>
        <source>shuts in %1</source>
        <translation type="unfinished">se ferme en %1</translation>
    </message>
    <message>
        <source>closes at %1</source>
        <translation type="unfinished">se ferme à %1</translation>
    </message>
    <message>
        <source>alarm leads by %1</source>
        <translation type="unfinished">alarme %1 avant</translation>
    </message>
    <message>
        <source>one check untested</source>
        <translation type="unfinished">une vérification non testée</translation>
    </message>
    <message>
        <source>%1 checks untested</source>
        <translation type="unfinished">%1 vérifications non testées</translation>
    </message>
    <message>
        <source>boundary not in the register</source>
        <translation type="unfinished">le cloisonnement n&apos;est pas dans le registre</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Pont</translation>
    </message>
    <message>
        <source>Plate read</source>
        <translation type="unfinished">Plaque lue</translation>
    </message>
    <message>
        <source>Register</source>
        <translation type="unfinished">Registre</translation>
    </message>
    <message>
        <source>Boundary</source>
        <translation type="unfinished">Cloisonnement</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished">Résultat</translation>
    </message>
    <message>
        <source>Findings; figures with U (k = 2)</source>
        <translation type="unfinished">Constats&#xa0;; valeurs avec U (k = 2)</translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished">non lue</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">illisible</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Portes</translation>
    </message>
    <message>
        <source>No door of this walkdown is in the register.</source>
        <translation type="unfinished">Aucune porte de cette tournée n&apos;est dans le registre.</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Pont %1</translation>
    </message>
    <message>
        <source>person joined</source>
        <translation type="unfinished">personne ajoutée</translation>
    </message>
    <message>
        <source>walkdown begun</source>
        <translation type="unfinished">tournée commencée</translation>
    </message>
    <message>
        <source>walkdown ended</source>
        <translation type="unfinished">tournée finie</translation>
    </message>
    <message>
        <source>observation</source>
        <translation type="unfinished">observation</translation>
    </message>
    <message>
        <source>plate read</source>
        <translation type="unfinished">plaque lue</translation>
    </message>
    <message>
        <source>measured value</source>
        <translation type="unfinished">valeur mesurée</translation>
    </message>
    <message>
        <source>run started</source>
        <translation type="unfinished">essai commencé</translation>
    </message>
    <message>
        <source>mark</source>
        <translation type="unfinished">repère</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation type="unfinished">essai terminé</translation>
    </message>
    <message>
        <source>caution answered</source>
        <translation type="unfinished">réponse à une précaution</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">note</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">photo</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation type="unfinished">anomalie</translation>
    </message>
    <message>
        <source>could not test</source>
        <translation type="unfinished">test impossible</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">retiré</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">test de réaction</translation>
    </message>
    <message>
        <source>decision limits</source>
        <translation type="unfinished">limites de décision</translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation type="unfinished">certificat vu</translation>
    </message>
    <message>
        <source>rectification</source>
        <translation type="unfinished">rectification</translation>
    </message>
    <message>
        <source>awaiting retest</source>
        <translation type="unfinished">à retester</translation>
    </message>
    <message>
        <source>withdrawal</source>
        <translation type="unfinished">retrait</translation>
    </message>
    <message>
        <source>key accepted</source>
        <translation type="unfinished">clé acceptée</translation>
    </message>
    <message>
        <source>walkdown signed</source>
        <translation type="unfinished">tournée signée</translation>
    </message>
    <message>
        <source>undone</source>
        <translation type="unfinished">défait</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation type="unfinished">aucun convenu</translation>
    </message>
    <message>
        <source>, limit %1</source>
        <translation type="unfinished">, limite %1</translation>
    </message>
    <message>
        <source>, %1 maximum</source>
        <translation type="unfinished">, maximum %1</translation>
    </message>
    <message>
        <source>; %1 m2 in area, limit %2 m2</source>
        <translation type="unfinished">; surface %1 m2, limite %2 m2</translation>
    </message>
    <message>
        <source>through door %1</source>
        <translation type="unfinished">par la porte %1</translation>
    </message>
    <message>
        <source>through doors %1</source>
        <translation type="unfinished">par les portes %1</translation>
    </message>
    <message>
        <source>Zones %1 act as one %2: %3 long%4.</source>
        <translation type="unfinished">Les tranches %1 n&apos;en font qu&apos;une %2&#xa0;: longue de %3%4.</translation>
    </message>
    <message>
        <source>Repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Réparer la porte %1 dans la cloison %2 rétablit le plus de séparation</translation>
    </message>
    <message>
        <source>Repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Réparer les portes %1 dans la cloison %2 rétablit le plus de séparation</translation>
    </message>
    <message>
        <source>%1: zones that then still act as one are at most %2 long.</source>
        <translation type="unfinished">%1&#xa0;: les tranches qui n&apos;en font encore qu&apos;une ont alors une longueur d&apos;au plus %2.</translation>
    </message>
    <message>
        <source>%1: no zones then act as one.</source>
        <translation type="unfinished">%1&#xa0;: il n&apos;y a alors plus de tranches qui n&apos;en font qu&apos;une.</translation>
    </message>
    <message>
        <source>Separation of zones %1 is not yet proven: doors in bulkheads %2 are untested or undecided.</source>
        <translation type="unfinished">La séparation des tranches %1 n&apos;est pas encore prouvée&#xa0;: des portes dans les cloisons %2 sont non testées ou à trancher.</translation>
    </message>
    <message>
        <source>Planned, but no longer in the register and not graded here: %1.</source>
        <translation type="unfinished">Portes prévues qui ne sont plus dans le registre et ne sont pas évaluées ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 walkdown begun %2</source>
        <translation type="unfinished">tournée (%1) commencée le %2</translation>
    </message>
    <message>
        <source>the doors in this report are simulated.</source>
        <translation type="unfinished">les portes de ce rapport sont simulées.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nom</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation type="unfinished">Numéro d&apos;identification</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Règles</translation>
    </message>
    <message>
        <source>Not covered</source>
        <translation type="unfinished">Non couvert</translation>
    </message>
    <message>
        <source>high-speed craft; watertight doors as such</source>
        <translation type="unfinished">engins à grande vitesse&#xa0;; portes étanches à l&apos;eau en tant que telles</translation>
    </message>
    <message>
        <source>Passengers</source>
        <translation type="unfinished">Passagers</translation>
    </message>
    <message>
        <source>certified to carry %1</source>
        <translation type="unfinished">certifié pour %1</translation>
    </message>
    <message>
        <source>Keel laid</source>
        <translation type="unfinished">Quille posée</translation>
    </message>
    <message>
        <source>not known: requirements that depend on it are advice</source>
        <translation type="unfinished">date inconnue&#xa0;: les exigences qui en dépendent sont de simples recommandations</translation>
    </message>
    <message>
        <source>Sprinklers</source>
        <translation type="unfinished">Extinction par eau diffusée</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished">installée</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation type="unfinished">non installée</translation>
    </message>
    <message>
        <source>Length on the drawing</source>
        <translation type="unfinished">Longueur sur le plan</translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished">1 porte</translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished">%1 portes</translation>
    </message>
    <message>
        <source>1 main vertical zone</source>
        <translation type="unfinished">1 tranche verticale principale</translation>
    </message>
    <message>
        <source>%1 main vertical zones</source>
        <translation type="unfinished">%1 tranches verticales principales</translation>
    </message>
    <message>
        <source>1 deck</source>
        <translation type="unfinished">1 pont</translation>
    </message>
    <message>
        <source>%1 decks</source>
        <translation type="unfinished">%1 ponts</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Navire</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">But</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation type="unfinished">Étendue</translation>
    </message>
    <message>
        <source>What the sample proves</source>
        <translation type="unfinished">Ce que prouve l&apos;échantillon</translation>
    </message>
    <message>
        <source>only those of this maintenance task, and any others recorded: %1 (%2)</source>
        <translation type="unfinished">seulement celles de cette tâche d&apos;entretien, et d&apos;autres éventuellement consignées&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>Team</source>
        <translation type="unfinished">Équipe</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Enregistré par</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished">Commencée</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished">Finie</translation>
    </message>
    <message>
        <source>under way</source>
        <translation type="unfinished">en cours</translation>
    </message>
    <message>
        <source>Remark at the end</source>
        <translation type="unfinished">Remarque à la fin</translation>
    </message>
    <message>
        <source>Heel at the start</source>
        <translation type="unfinished">Gîte au début</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Poste de sécurité</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Canal</translation>
    </message>
    <message>
        <source>Words agreed</source>
        <translation type="unfinished">Mots convenus</translation>
    </message>
    <message>
        <source>to start</source>
        <translation type="unfinished">départ</translation>
    </message>
    <message>
        <source>to stop</source>
        <translation type="unfinished">arrêt</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Qui peut arrêter le test</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Briefing sécurité</translation>
    </message>
    <message>
        <source>read before the walkdown</source>
        <translation type="unfinished">lu avant la tournée</translation>
    </message>
    <message>
        <source>not marked as read</source>
        <translation type="unfinished">non marqué lu</translation>
    </message>
    <message>
        <source>Walkdown id</source>
        <translation type="unfinished">Identifiant de la tournée</translation>
    </message>
    <message>
        <source>Walkdown</source>
        <translation type="unfinished">Tournée d&apos;inspection</translation>
    </message>
    <message>
        <source>1 door in this walkdown</source>
        <translation type="unfinished">1 porte dans cette tournée</translation>
    </message>
    <message>
        <source>%1 doors in this walkdown</source>
        <translation type="unfinished">%1 portes dans cette tournée</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation type="unfinished">Résumé</translation>
    </message>
    <message>
        <source>Main vertical zones</source>
        <translation type="unfinished">Tranches verticales principales</translation>
    </message>
    <message>
        <source>No door in this walkdown was found to make two zones act as one.</source>
        <translation type="unfinished">Aucune porte de cette tournée n&apos;a été trouvée qui fasse de deux tranches une seule.</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">1 porte de cloison de tranche encore non testée ou à trancher</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">%1 portes de cloisons de tranche encore non testées ou à trancher</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">1 porte de cloison de tranche non comprise dans cette tournée</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">%1 portes de cloisons de tranche non comprises dans cette tournée</translation>
    </message>
    <message>
        <source>Not known from this walkdown: %1.</source>
        <translation type="unfinished">Ce que cette tournée ne montre pas&#xa0;: %1.</translation>
    </message>
    <message>
        <source>the door as a whole</source>
        <translation type="unfinished">la porte dans son ensemble</translation>
    </message>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">tranche inconnue</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
    <message>
        <source>zones %1 and %2</source>
        <translation type="unfinished">tranches %1 et %2</translation>
    </message>
    <message>
        <source>no longer in the register</source>
        <translation type="unfinished">n&apos;est plus dans le registre</translation>
    </message>
    <message>
        <source>Repeat: %1</source>
        <translation type="unfinished">Répétition&#xa0;: %1</translation>
    </message>
    <message>
        <source>found %1 by %2</source>
        <translation type="unfinished">constatée le %1 par %2</translation>
    </message>
    <message>
        <source>rectified %1 by %2: %3</source>
        <translation type="unfinished">rectifiée le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>retested %1: not in order</source>
        <translation type="unfinished">retestée le %1&#xa0;: pas en ordre</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
    </message>
    <message>
        <source>All open items of the vessel, from this walkdown and earlier ones.</source>
        <translation type="unfinished">Toutes les anomalies ouvertes du navire, de cette tournée et des précédentes.</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Rapport de visite</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Liste de travaux</translation>
    </message>
    <message>
        <source>Printed %1, %2</source>
        <translation type="unfinished">Imprimé le %1, %2</translation>
    </message>
    <message>
        <source>%1 ship&apos;s time (%2), %3 UTC</source>
        <translation type="unfinished">%1 heure du bord (%2), %3 UTC</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished">page %1 sur %2</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">s.o.</translation>
    </message>
    <message>
        <source>Second boxes: the other side</source>
        <translation type="unfinished">Secondes cases&#xa0;: l&apos;autre côté</translation>
    </message>
    <message>
        <source>Spring gauge at the edge of the closed leaf</source>
        <translation type="unfinished">Peson au bord du vantail fermé</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Gîte du navire à cette porte</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">degrés</translation>
    </message>
    <message>
        <source>both together %1</source>
        <translation type="unfinished">les deux ensemble %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 à %2</translation>
    </message>
    <message>
        <source>Released</source>
        <translation type="unfinished">Déclenchée</translation>
    </message>
    <message>
        <source>Shut, latched?</source>
        <translation type="unfinished">Fermée, enclenchée&#xa0;?</translation>
    </message>
    <message>
        <source>again, No. ____</source>
        <translation type="unfinished">de nouveau, n° ____</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand: touched to stopped</source>
        <translation type="unfinished">Contact avec un bloc souple, jamais avec la main&#xa0;: du contact à l&apos;arrêt</translation>
    </message>
    <message>
        <source>Plate reads:</source>
        <translation type="unfinished">La plaque indique&#xa0;:</translation>
    </message>
    <message>
        <source>Time:</source>
        <translation type="unfinished">Heure&#xa0;:</translation>
    </message>
    <message>
        <source>Inspector&apos;s verdict:</source>
        <translation type="unfinished">Résultat de l&apos;inspecteur&#xa0;:</translation>
    </message>
    <message>
        <source>Notes:</source>
        <translation type="unfinished">Notes&#xa0;:</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulaire vierge</translation>
    </message>
    <message>
        <source>%1 walkdown, %2</source>
        <translation type="unfinished">tournée d&apos;inspection (%1), %2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Date</translation>
    </message>
    <message>
        <source>Tested by</source>
        <translation type="unfinished">Testé par</translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished">Mot de départ</translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished">Mot d&apos;arrêt</translation>
    </message>
    <message>
        <source>A released door moves by itself and can crush. Anyone may stop the test. Confirm every point again before every release. If any point is not confirmed, do not release.</source>
        <translation type="unfinished">Une porte déclenchée bouge d&apos;elle-même et peut écraser. N&apos;importe qui peut arrêter le test. Confirmez de nouveau chaque point avant chaque déclenchement. Si un seul point n&apos;est pas confirmé, ne déclenchez aucune porte.</translation>
    </message>
    <message>
        <source>Before each release from the control station</source>
        <translation type="unfinished">Avant chaque déclenchement depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>How to fill in this form</source>
        <translation type="unfinished">Comment remplir ce formulaire</translation>
    </message>
    <message>
        <source>Tick one box for each question; n/a only where the door has no such part. Where a question has two sets of boxes, answer it for each side. Give times in seconds with two decimals. Strike out a run that was stopped and give the reason: it is not a measurement. Time a run again if it is close to a limit, and enter the number of the one it repeats. Leave blank what was not tested and give the reason under Notes. The form is typed in later under the same numbers.</source>
        <translation type="unfinished">Cochez une case par question&#xa0;; s.o. seulement si la porte n&apos;a pas cette partie. Si une question a deux séries de cases, répondez pour chaque côté. Donnez les temps en secondes avec deux décimales. Barrez tout essai arrêté et donnez le motif&#xa0;: ce n&apos;est pas une mesure. Rechronométrez un essai proche d&apos;une limite et notez le numéro de celui qu&apos;il répète. Laissez en blanc ce qui n&apos;a pas été testé et donnez le motif sous Notes. Le formulaire est saisi ensuite sous les mêmes numéros.</translation>
    </message>
    <message>
        <source>blank form, %1</source>
        <translation type="unfinished">formulaire vierge, %1</translation>
    </message>
    <message>
        <source>Blank form, %1</source>
        <translation type="unfinished">Formulaire vierge, %1</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulaire vierge</translation>
    </message>
    <message>
        <source>Catalogue: %1</source>
        <translation type="unfinished">Catalogue&#xa0;: %1</translation>
    </message>
    <message>
        <source>Photograph damaged: it cannot be shown.</source>
        <translation type="unfinished">Photo endommagée&#xa0;: elle ne peut pas être affichée.</translation>
    </message>
    <message>
        <source>Photograph not in this register.</source>
        <translation type="unfinished">La photo n&apos;est pas dans ce registre.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not what was recorded.</source>
        <translation type="unfinished">Photo omise&#xa0;: ses données ne sont pas celles qui ont été consignées.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not a picture that can be shown.</source>
        <translation type="unfinished">Photo omise&#xa0;: ses données ne sont pas une image qui puisse être affichée.</translation>
    </message>
    <message>
        <source>PRACTICE - not a record</source>
        <translation type="unfinished">ENTRAÎNEMENT - pas un enregistrement</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 et %2</translation>
    </message>
    <message>
        <source>no vessel in particular</source>
        <translation type="unfinished">aucun navire en particulier</translation>
    </message>
    <message>
        <source>%1, door %2</source>
        <translation type="unfinished">%1, porte %2</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">quille posée le %1</translation>
    </message>
    <message>
        <source>no keel date on record</source>
        <translation type="unfinished">pas de date de quille consignée</translation>
    </message>
    <message>
        <source>%1, %2, %3 passengers.</source>
        <translation type="unfinished">%1, %2, %3 passagers.</translation>
    </message>
    <message>
        <source>The texts</source>
        <translation type="unfinished">Les textes</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Entretien</translation>
    </message>
    <message>
        <source>Does not apply to this door</source>
        <translation type="unfinished">Ne s&apos;applique pas à cette porte</translation>
    </message>
    <message>
        <source>Does not apply aboard</source>
        <translation type="unfinished">Ne s&apos;applique pas à bord</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texte</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation type="unfinished">Motif</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">recueil des règles</translation>
    </message>
    <message>
        <source>Rule book, %1</source>
        <translation type="unfinished">Recueil des règles, %1</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Recueil des règles</translation>
    </message>
    <message>
        <source>no common clock</source>
        <translation type="unfinished">pas d&apos;horloge commune</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">aucun repère</translation>
    </message>
    <message>
        <source>(typed in)</source>
        <translation type="unfinished">(saisi)</translation>
    </message>
    <message>
        <source>%1, no reason given: not a measurement</source>
        <translation type="unfinished">%1, sans motif&#xa0;: pas une mesure</translation>
    </message>
    <message>
        <source>%1: %2. Not a measurement</source>
        <translation type="unfinished">%1&#xa0;: %2. Pas une mesure</translation>
    </message>
    <message>
        <source>cut short: not a measurement</source>
        <translation type="unfinished">interrompu&#xa0;: pas une mesure</translation>
    </message>
    <message>
        <source>marks out of order, %1 before %2: not a measurement</source>
        <translation type="unfinished">repères dans le désordre, %1 avant %2&#xa0;: pas une mesure</translation>
    </message>
    <message>
        <source>%1 was not marked: not a measurement</source>
        <translation type="unfinished">«&#xa0;%1&#xa0;» n&apos;a pas été marqué&#xa0;: pas une mesure</translation>
    </message>
    <message>
        <source>%1, group %2</source>
        <translation type="unfinished">%1, groupe %2</translation>
    </message>
    <message>
        <source>contact, %1</source>
        <translation type="unfinished">contact, %1</translation>
    </message>
    <message>
        <source>Run begun</source>
        <translation type="unfinished">Début de l&apos;essai</translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished">Par</translation>
    </message>
    <message>
        <source>Heel</source>
        <translation type="unfinished">Gîte</translation>
    </message>
    <message>
        <source>Marks, seconds after the first</source>
        <translation type="unfinished">Repères, secondes après le premier</translation>
    </message>
    <message>
        <source>Runs at the other doors</source>
        <translation type="unfinished">Essais aux autres portes</translation>
    </message>
    <message>
        <source>Recorded later</source>
        <translation type="unfinished">Consigné ensuite</translation>
    </message>
    <message>
        <source>By, when</source>
        <translation type="unfinished">Par, quand</translation>
    </message>
    <message>
        <source>, %1, signed %2.</source>
        <translation type="unfinished">, %1, signé le %2.</translation>
    </message>
    <message>
        <source>%1 entries, SHA-256 %2…, key of the tablet %3…</source>
        <translation type="unfinished">%1 entrées, SHA-256 %2…, clé de la tablette %3…</translation>
    </message>
    <message>
        <source>The entries covered by this signature are no longer as they were when signed.</source>
        <translation type="unfinished">Les entrées couvertes par cette signature ne sont plus telles qu&apos;elles étaient à la signature.</translation>
    </message>
    <message>
        <source>Nothing was recorded after this signature.</source>
        <translation type="unfinished">Rien n&apos;a été consigné après cette signature.</translation>
    </message>
    <message>
        <source>One entry was recorded after this signature and is not covered by it:</source>
        <translation type="unfinished">Une entrée a été consignée après cette signature et n&apos;est pas couverte par elle&#xa0;:</translation>
    </message>
    <message>
        <source>%1 entries were recorded after this signature and are not covered by it:</source>
        <translation type="unfinished">%1 entrées ont été consignées après cette signature et ne sont pas couvertes par elle&#xa0;:</translation>
    </message>
    <message>
        <source>No one has signed this walkdown in the register.</source>
        <translation type="unfinished">Personne n&apos;a signé cette tournée dans le registre.</translation>
    </message>
    <message>
        <source>Inspector: name, signature, date</source>
        <translation type="unfinished">Inspecteur&#xa0;: nom, signature, date</translation>
    </message>
    <message>
        <source>Chief officer: name, signature, date</source>
        <translation type="unfinished">Second capitaine&#xa0;: nom, signature, date</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entrée</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entrées</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Catalogue</translation>
    </message>
    <message>
        <source>Texts of the catalogue</source>
        <translation type="unfinished">Textes du catalogue</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 par %2</translation>
    </message>
    <message>
        <source>%1 by %2, with %3</source>
        <translation type="unfinished">%1 par %2, avec %3</translation>
    </message>
    <message>
        <source>Entries of this walkdown</source>
        <translation type="unfinished">Entrées de cette tournée</translation>
    </message>
    <message>
        <source>Entries of the vessel</source>
        <translation type="unfinished">Entrées du navire</translation>
    </message>
    <message>
        <source>What this document was made from</source>
        <translation type="unfinished">À partir de quoi ce document a été établi</translation>
    </message>
    <message>
        <source>It shows the register as it was at that time. Entries added later are not in it; the checksums below show whether there are any.</source>
        <translation type="unfinished">Il montre le registre tel qu&apos;il était à ce moment. Les entrées ajoutées ensuite n&apos;y figurent pas&#xa0;; les sommes de contrôle ci-dessous montrent s&apos;il y en a.</translation>
    </message>
    <message>
        <source>What is recorded and signed is the English record.</source>
        <translation type="unfinished">Ce qui est consigné et signé est l&apos;enregistrement en anglais.</translation>
    </message>
    <message>
        <source>Doors are graded by the English text.</source>
        <translation type="unfinished">Les portes sont évaluées selon le texte anglais.</translation>
    </message>
    <message>
        <source>This document is a translation.</source>
        <translation type="unfinished">Ce document est une traduction.</translation>
    </message>
    <message>
        <source>Interim measure: </source>
        <translation type="unfinished">Mesure provisoire&#xa0;: </translation>
    </message>
    <message>
        <source>by, date:</source>
        <translation type="unfinished">par, date&#xa0;:</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Terminé</translation>
    </message>
    <message>
        <source>What to rectify</source>
        <translation type="unfinished">À rectifier</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished">Ce qui a été fait</translation>
    </message>
    <message>
        <source>Rectified, awaiting retest</source>
        <translation type="unfinished">Rectifiées, à retester</translation>
    </message>
    <message>
        <source>To be retested by someone other than whoever rectified it.</source>
        <translation type="unfinished">À retester par quelqu&apos;un d&apos;autre que celui qui a rectifié.</translation>
    </message>
    <message>
        <source>There is nothing to rectify.</source>
        <translation type="unfinished">Il n&apos;y a rien à rectifier.</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation type="unfinished">Pour %1</translation>
    </message>
    <message>
        <source>Assigned to no one yet</source>
        <translation type="unfinished">Pas encore confiées</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">entretien fait</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this record; grades are an aid to judgement. Catalogue: %1. Created %2 by %3 from %4 entries of the walkdown, SHA-256 %5, and %6 of the vessel, SHA-256 %7.</source>
        <translation type="unfinished">L&apos;Administration du pavillon, les plans approuvés et les règles locales priment sur cette fiche&#xa0;; les évaluations sont une aide à l&apos;appréciation. Catalogue&#xa0;: %1. Créée le %2 par %3 avec %4 entrées de la tournée, SHA-256 %5, et %6 du navire, SHA-256 %7.</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">décision</translation>
    </message>
    <message>
        <source>deficiency details</source>
        <translation type="unfinished">détails de l&apos;anomalie</translation>
    </message>
    <message>
        <source>conflict decided</source>
        <translation type="unfinished">contradiction tranchée</translation>
    </message>
    <message>
        <source>document created</source>
        <translation type="unfinished">document créé</translation>
    </message>
    <message>
        <source>Created</source>
        <translation type="unfinished">Créé</translation>
    </message>
    <message>
        <source> (outside the limit)</source>
        <translation type="unfinished"> (hors limites)</translation>
    </message>
    <message>
        <source>%1, of which %2 done (every check made, or a reason recorded).</source>
        <translation type="unfinished">%1&#xa0;; faites&#xa0;: %2 (chaque vérification faite, ou un motif consigné).</translation>
    </message>
    <message>
        <source>This document is a machine translation, not yet checked by a native speaker in the trade.</source>
        <translation type="unfinished">Ce document est une traduction automatique, pas encore vérifiée par un locuteur natif du métier.</translation>
    </message>
    <message>
        <source>, limit %1 in cabin areas</source>
        <translation type="unfinished">, limite %1 dans les zones de cabines</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">demandé à la porte</translation>
    </message>
    <message>
        <source>clear opening divided by the time from first movement to shut</source>
        <translation type="unfinished">passage libre divisé par le temps du premier mouvement à la fermeture</translation>
    </message>
    <message>
        <source>timed from the alarm to the first movement</source>
        <translation type="unfinished">chronométré de l&apos;alarme au premier mouvement</translation>
    </message>
    <message>
        <source>order of the marks: shut, then alarm off</source>
        <translation type="unfinished">ordre des repères&#xa0;: fermée, puis fin d&apos;alarme</translation>
    </message>
    <message>
        <source>against an inclination of %1°</source>
        <translation type="unfinished">contre une inclinaison de %1°</translation>
    </message>
    <message>
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">la réponse dit ce qu&apos;est la porte ; aucune n&apos;est un défaut</translation>
    </message>
    <message>
        <source>every ship</source>
        <translation type="unfinished">tout navire</translation>
    </message>
    <message>
        <source>advice for: %1</source>
        <translation type="unfinished">recommandation pour&#xa0;: %1</translation>
    </message>
    <message>
        <source>answered yes: %1</source>
        <translation type="unfinished">répondu oui : %1</translation>
    </message>
    <message>
        <source>answered no: %1</source>
        <translation type="unfinished">répondu non : %1</translation>
    </message>
    <message>
        <source>answered n/a: %1</source>
        <translation type="unfinished">répondu s.o. : %1</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1&#xa0;; une règle de %2</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texte</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation type="unfinished">Édition</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Limite</translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation type="unfinished">Approximatif</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">toute porte</translation>
    </message>
    <message>
        <source>Exempt</source>
        <translation type="unfinished">Exempté</translation>
    </message>
    <message>
        <source>Ships</source>
        <translation type="unfinished">Navires</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished">Dates</translation>
    </message>
    <message>
        <source>Other dates</source>
        <translation type="unfinished">Autres dates</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished">Vérifié par</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
    <message>
        <source>Instead, at every door</source>
        <translation type="unfinished">À la place, à toute porte</translation>
    </message>
    <message>
        <source>Instead, where: %1</source>
        <translation type="unfinished">À la place, où : %1</translation>
    </message>
    <message>
        <source>Question</source>
        <translation type="unfinished">Question</translation>
    </message>
    <message>
        <source>Says</source>
        <translation type="unfinished">Dit</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 et %2 de plus</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Non lu</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Regarder</translation>
    </message>
    <message>
        <source>Release</source>
        <translation type="unfinished">Déclencher</translation>
    </message>
    <message>
        <source>Function</source>
        <translation type="unfinished">Fonction</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Portes</translation>
    </message>
    <message>
        <source>no door in particular</source>
        <translation type="unfinished">aucune porte en particulier</translation>
    </message>
    <message>
        <source>Rules of</source>
        <translation type="unfinished">Règles de</translation>
    </message>
    <message>
        <source>Not for this vessel</source>
        <translation type="unfinished">Pas pour ce navire</translation>
    </message>
    <message>
        <source>Other texts</source>
        <translation type="unfinished">Autres textes</translation>
    </message>
    <message>
        <source>In force here</source>
        <translation type="unfinished">En vigueur ici</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">À la porte %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Aboard this vessel</source>
        <translation type="unfinished">À bord de ce navire</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">recommandation à %1</translation>
    </message>
    <message>
        <source>asked at the door, on each side</source>
        <translation type="unfinished">demandé à la porte, de chaque côté</translation>
    </message>
    <message>
        <source>class of the door compared with that of its boundary</source>
        <translation type="unfinished">classe de la porte comparée à celle de son cloisonnement</translation>
    </message>
    <message>
        <source>plate on the door compared with the register</source>
        <translation type="unfinished">plaque sur la porte comparée au registre</translation>
    </message>
    <message>
        <source>measured, with the step of the instrument taken into account</source>
        <translation type="unfinished">mesuré, en tenant compte de l&apos;échelon de l&apos;instrument</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">démontré par un essai complet</translation>
    </message>
    <message>
        <source>shown by a run released from the control station</source>
        <translation type="unfinished">démontré par un essai déclenché depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>shown by runs released at the door, from each side</source>
        <translation type="unfinished">démontré par des essais déclenchés à la porte, de chaque côté</translation>
    </message>
    <message>
        <source>shown by a run in which the alarm was marked</source>
        <translation type="unfinished">démontré par un essai où l&apos;alarme a été marquée</translation>
    </message>
    <message>
        <source>timed from first movement to shut</source>
        <translation type="unfinished">chronométré du premier mouvement à la fermeture</translation>
    </message>
    <message>
        <source>ship upright: with heel, a time is advice only</source>
        <translation type="unfinished">navire droit&#xa0;: avec de la gîte, un temps n&apos;est qu&apos;une recommandation</translation>
    </message>
    <message>
        <source>the text says so: up to %1 % outside the limits on the slow side, %2 % on the fast side, the inspector decides (margins of our own choice)</source>
        <translation type="unfinished">le texte le dit&#xa0;: jusqu&apos;à %1&#xa0;% hors limites du côté lent, %2&#xa0;% du côté rapide, l&apos;inspecteur décide (marges de notre choix)</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Source</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation type="unfinished">S&apos;applique à</translation>
    </message>
    <message>
        <source>Does not apply where</source>
        <translation type="unfinished">Ne s&apos;applique pas si</translation>
    </message>
    <message>
        <source>n/a allowed where</source>
        <translation type="unfinished">s.o. permis si</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Exigence</translation>
    </message>
    <message>
        <source>the same as the requirement</source>
        <translation type="unfinished">la même chose que l&apos;exigence</translation>
    </message>
    <message>
        <source>Precedence</source>
        <translation type="unfinished">Primauté</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation type="unfinished">Couvre</translation>
    </message>
    <message>
        <source>Flag rules applied</source>
        <translation type="unfinished">Règles du pavillon appliquées</translation>
    </message>
    <message>
        <source>binding here</source>
        <translation type="unfinished">obligatoire ici</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">en cas d&apos;échec, l&apos;inspecteur décide</translation>
    </message>
    <message>
        <source>advice only here</source>
        <translation type="unfinished">simple recommandation ici</translation>
    </message>
    <message>
        <source>does not apply here</source>
        <translation type="unfinished">ne s&apos;applique pas ici</translation>
    </message>
    <message>
        <source>Binding at</source>
        <translation type="unfinished">Obligatoire à</translation>
    </message>
    <message>
        <source>On failure the inspector decides at</source>
        <translation type="unfinished">En cas d&apos;échec, l&apos;inspecteur décide à</translation>
    </message>
    <message>
        <source>Advice only at</source>
        <translation type="unfinished">Simple recommandation à</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation type="unfinished">Ne s&apos;applique pas</translation>
    </message>
    <message>
        <source>binding at %1</source>
        <translation type="unfinished">obligatoire à %1</translation>
    </message>
    <message>
        <source>inspector decides at %1</source>
        <translation type="unfinished">l&apos;inspecteur décide à %1</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">ne s&apos;applique pas</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation type="unfinished">Intervalle</translation>
    </message>
    <message>
        <source>Open point</source>
        <translation type="unfinished">Point ouvert</translation>
    </message>
    <message>
        <source>No open point where</source>
        <translation type="unfinished">Pas de point ouvert si</translation>
    </message>
    <message>
        <source>Texts read</source>
        <translation type="unfinished">Textes lus</translation>
    </message>
</context>
<context>
    <name>RulesScreen</name>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Entretien</translation>
    </message>
    <message>
        <source>The texts that were read</source>
        <translation type="unfinished">Les textes lus</translation>
    </message>
    <message>
        <source>editions, dates, and what was not read</source>
        <translation type="unfinished">éditions, dates et ce qui n&apos;a pas été lu</translation>
    </message>
</context>
<context>
    <name>RunWords</name>
    <message>
        <source>cut short</source>
        <translation type="unfinished">interrompu</translation>
    </message>
    <message>
        <source>stopped after %1 s</source>
        <translation type="unfinished">arrêté après %1 s</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished">%1 s</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation type="unfinished">indique %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sans plaque</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">illisible</translation>
    </message>
    <message>
        <source>void: marks out of order</source>
        <translation type="unfinished">nul&#xa0;: repères dans le désordre</translation>
    </message>
    <message>
        <source>void: “%1” was not marked</source>
        <translation type="unfinished">nul&#xa0;: «&#xa0;%1&#xa0;» n&apos;a pas été marqué</translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message>
        <source>yes</source>
        <translation type="unfinished">oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">non</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">sans objet</translation>
    </message>
    <message>
        <source>%1 on the plate</source>
        <translation type="unfinished">%1 sur la plaque</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sans plaque</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">plaque illisible</translation>
    </message>
    <message>
        <source>judged satisfactory: %1</source>
        <translation type="unfinished">jugé satisfaisant&#xa0;: %1</translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished">jugé non satisfaisant&#xa0;: %1</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">n&apos;a pas pu être testé&#xa0;: %1</translation>
    </message>
    <message>
        <source>, %1 of %2</source>
        <translation type="unfinished">, %1 sur %2</translation>
    </message>
    <message>
        <source>, side one</source>
        <translation type="unfinished">, côté un</translation>
    </message>
    <message>
        <source>, side two</source>
        <translation type="unfinished">, côté deux</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">pour le %1</translation>
    </message>
    <message>
        <source>no interim measure</source>
        <translation type="unfinished">pas de mesure provisoire</translation>
    </message>
    <message>
        <source>decided that this entry stands: %1</source>
        <translation type="unfinished">décidé que cette entrée compte&#xa0;: %1</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">encore personne</translation>
    </message>
    <message>
        <source>Two decisions about the same entries</source>
        <translation type="unfinished">Deux décisions sur les mêmes entrées</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Par une personne</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Interrupteur de déclenchement</translation>
    </message>
    <message>
        <source>Power failure</source>
        <translation type="unfinished">Panne de courant</translation>
    </message>
    <message>
        <source>Main and emergency supply of the release panel switched off at the board: the leaf shuts.</source>
        <translation type="unfinished">Alimentations principale et de secours du tableau de déclenchement coupées au tableau électrique&#xa0;: le vantail se ferme.</translation>
    </message>
    <message>
        <source>Local accumulator</source>
        <translation type="unfinished">Accumulateur local</translation>
    </message>
    <message>
        <source>The chief engineer&apos;s record of this year: opened and shut ten times from the local accumulator, pump off.</source>
        <translation type="unfinished">Le relevé du chef mécanicien de cette année&#xa0;: ouverte et fermée dix fois sur l&apos;accumulateur local, pompe arrêtée.</translation>
    </message>
    <message>
        <source>The other doors</source>
        <translation type="unfinished">Les autres portes</translation>
    </message>
    <message>
        <source>Local control</source>
        <translation type="unfinished">Commande locale</translation>
    </message>
    <message>
        <source>The cover opens by hand. Nothing stands or is built in front of it.</source>
        <translation type="unfinished">Le capot s&apos;ouvre à la main. Rien ne se trouve ni n&apos;est construit devant.</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Système de commande&#xa0;: fonctionne à 200 degrés C pendant 60 minutes, alimentation des autres portes intacte, isolé au-delà, porte tenue fermée jusqu&apos;à 945 degrés C.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Local de machines</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Derrière la porte</translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished">Matériau</translation>
    </message>
    <message>
        <source>Leaf and frame of steel.</source>
        <translation type="unfinished">Vantail et cadre en acier.</translation>
    </message>
    <message>
        <source>Material of the door</source>
        <translation type="unfinished">Matériau de la porte</translation>
    </message>
    <message>
        <source>No opening above the lower third of the leaf.</source>
        <translation type="unfinished">Aucune ouverture au-dessus du tiers inférieur du vantail.</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished">État</translation>
    </message>
    <message>
        <source>No holes, patches or dents; nothing is missing or repaired with other parts.</source>
        <translation type="unfinished">Ni trous, ni pièces rapportées, ni chocs&#xa0;; rien ne manque ni n&apos;est réparé avec d&apos;autres pièces.</translation>
    </message>
    <message>
        <source>Maintenance plan</source>
        <translation type="unfinished">Plan d&apos;entretien</translation>
    </message>
    <message>
        <source>The plan in the ship&apos;s computer lists this door and its control, with the dates of their tests.</source>
        <translation type="unfinished">Le plan dans l&apos;ordinateur du navire mentionne cette porte et sa commande, avec les dates de leurs tests.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished">Verrouillage</translation>
    </message>
    <message>
        <source>You try the handle: the door is locked.</source>
        <translation type="unfinished">Vous essayez la poignée&#xa0;: la porte est verrouillée.</translation>
    </message>
    <message>
        <source>Way out</source>
        <translation type="unfinished">Sortie</translation>
    </message>
    <message>
        <source>Quick release</source>
        <translation type="unfinished">Déblocage rapide</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Hauteur de la barre</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Force à la barre</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Tableau de la passerelle</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Poste de sécurité central</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Centre de sécurité</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Commande hors du local</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Fermeture</translation>
    </message>
    <message>
        <source>You open and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">Vous l&apos;ouvrez et la fermez seul, d&apos;abord du côté un, puis du côté deux.</translation>
    </message>
    <message>
        <source>Turned to release and let go, the switch stays there. The leaf is not held again until someone turns it back.</source>
        <translation type="unfinished">Tourné sur déclenchement et lâché, l&apos;interrupteur y reste. Le vantail n&apos;est plus retenu tant que personne ne le ramène.</translation>
    </message>
    <message>
        <source>With this door isolated at the control box, the others in its group shut when released again.</source>
        <translation type="unfinished">Cette porte isolée au coffret de commande, les autres de son groupe se ferment quand on les déclenche de nouveau.</translation>
    </message>
    <message>
        <source>Approval document</source>
        <translation type="unfinished">Document d&apos;approbation</translation>
    </message>
    <message>
        <source>Air openings</source>
        <translation type="unfinished">Ouvertures d&apos;aération</translation>
    </message>
    <message>
        <source>A grille low in the leaf with a fire-rated shutter: net free area 0.03 m2 by its drawing. No undercut.</source>
        <translation type="unfinished">Une grille en bas du vantail avec volet coupe-feu&#xa0;: surface libre nette de 0,03 m2 d&apos;après son plan. Pas de fente sous la porte.</translation>
    </message>
    <message>
        <source>Inside: a stairway enclosure.</source>
        <translation type="unfinished">Derrière&#xa0;: un entourage d&apos;escalier.</translation>
    </message>
    <message>
        <source>Approval document: a non-combustible core between steel sheets.</source>
        <translation type="unfinished">Document d&apos;approbation&#xa0;: une âme incombustible entre des tôles d&apos;acier.</translation>
    </message>
    <message>
        <source>Height of the openings</source>
        <translation type="unfinished">Hauteur des ouvertures</translation>
    </message>
    <message>
        <source>You go through in the direction of escape without a key.</source>
        <translation type="unfinished">Vous passez dans le sens de l&apos;évacuation sans clé.</translation>
    </message>
    <message>
        <source>A bar across two thirds of the leaf; pushing it releases the latch. Nothing locks it down.</source>
        <translation type="unfinished">Une barre sur les deux tiers du vantail&#xa0;; la pousser libère le loquet. Rien ne la bloque.</translation>
    </message>
    <message>
        <source>The bar is 950 mm above the deck.</source>
        <translation type="unfinished">La barre est à 950 mm au-dessus du pont.</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch releases.</source>
        <translation type="unfinished">Le peson indique 40 N quand le loquet se libère.</translation>
    </message>
    <message>
        <source>The bridge reads its lamp out to you: correct for open, ajar and shut.</source>
        <translation type="unfinished">La passerelle vous lit sa lampe&#xa0;: juste pour ouverte, entrouverte et fermée.</translation>
    </message>
    <message>
        <source>The closing control and lamp of this door are beside the panel of the detection system.</source>
        <translation type="unfinished">La commande de fermeture et la lampe de cette porte sont à côté du tableau de l&apos;installation de détection.</translation>
    </message>
    <message>
        <source>Released from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Déclenchée du centre de sécurité, la porte se ferme et sa lampe y change.</translation>
    </message>
    <message>
        <source>Blackout test</source>
        <translation type="unfinished">Test de black-out</translation>
    </message>
    <message>
        <source>Main power off: held and released on battery, then on the emergency generator.</source>
        <translation type="unfinished">Alimentation principale coupée&#xa0;: retenue et déclenchée sur batterie, puis sur la génératrice de secours.</translation>
    </message>
    <message>
        <source>Its control is in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Sa commande est dans le local incendie de l&apos;encaissement, avec celles des ventilateurs et du combustible.</translation>
    </message>
    <message>
        <source>When let go, it shuts firmly every time.</source>
        <translation type="unfinished">Quand on la lâche, elle se ferme à fond chaque fois.</translation>
    </message>
    <message>
        <source>Hold-back supply switched off at the board: the leaf is released and shuts against the draught of the fans. The control station&apos;s release plan lists the door.</source>
        <translation type="unfinished">Alimentation du dispositif de retenue coupée au tableau électrique&#xa0;: le vantail est déclenché et se ferme contre le courant d&apos;air des ventilateurs. Le plan de déclenchement du poste de sécurité mentionne la porte.</translation>
    </message>
    <message>
        <source>Escape trunk</source>
        <translation type="unfinished">Puits d&apos;échappée</translation>
    </message>
    <message>
        <source>Let go on the ladder platform, it shuts by itself.</source>
        <translation type="unfinished">Lâchée depuis le palier de l&apos;échelle, elle se ferme d&apos;elle-même.</translation>
    </message>
</context>
<context>
    <name>SpotWords</name>
    <message>
        <source>Sill and floor</source>
        <translation type="unfinished">Seuil et sol</translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation type="unfinished">Fente dessous</translation>
    </message>
    <message>
        <source>Travel path</source>
        <translation type="unfinished">Course</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation type="unfinished">Logement</translation>
    </message>
    <message>
        <source>Rails</source>
        <translation type="unfinished">Rails</translation>
    </message>
    <message>
        <source>Safety edge</source>
        <translation type="unfinished">Bord sensible</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished">Joints</translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation type="unfinished">Charnières</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation type="unfinished">Ferme-porte</translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished">Loquet</translation>
    </message>
    <message>
        <source>Hold-back</source>
        <translation type="unfinished">Dispositif de retenue</translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished">Vantail</translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished">Orifice de manche</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished">Plaque</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lampes du tableau</translation>
    </message>
    <message>
        <source>Local release</source>
        <translation type="unfinished">Déclenchement local</translation>
    </message>
    <message>
        <source>Records, tests</source>
        <translation type="unfinished">Documents, tests</translation>
    </message>
</context>
<context>
    <name>StationDrawing</name>
    <message>
        <source>Release</source>
        <translation type="unfinished">Déclencher</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished">Poignée</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">ouverte</translation>
    </message>
    <message>
        <source>shut</source>
        <translation type="unfinished">fermée</translation>
    </message>
</context>
<context>
    <name>TapWords</name>
    <message>
        <source>plate of %1</source>
        <translation type="unfinished">plaque de %1</translation>
    </message>
    <message>
        <source>not tested: %1</source>
        <translation type="unfinished">non testée&#xa0;: %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation type="unfinished">note sur %1</translation>
    </message>
    <message>
        <source>photograph of %1</source>
        <translation type="unfinished">photo de %1</translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished">rectification à %1</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">fin de la tournée</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">quand une valeur passe</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">décision</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">plus confirmé : %1</translation>
    </message>
    <message>
        <source>deficiency at %1</source>
        <translation type="unfinished">anomalie à %1</translation>
    </message>
    <message>
        <source>caution for %1</source>
        <translation type="unfinished">précaution pour %1</translation>
    </message>
    <message>
        <source>run at %1</source>
        <translation type="unfinished">essai à %1</translation>
    </message>
    <message>
        <source>last entry</source>
        <translation type="unfinished">dernière entrée</translation>
    </message>
    <message>
        <source>%1 awaiting retest</source>
        <translation type="unfinished">%1 à retester</translation>
    </message>
    <message>
        <source>withdrawal of the item at %1</source>
        <translation type="unfinished">retrait de l&apos;anomalie à %1</translation>
    </message>
    <message>
        <source>start of the walkdown</source>
        <translation type="unfinished">début de la tournée</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">test de réaction</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation type="unfinished">date du certificat</translation>
    </message>
    <message>
        <source>taking back %1</source>
        <translation type="unfinished">retrait&#xa0;: %1</translation>
    </message>
    <message>
        <source>details of the item at %1</source>
        <translation type="unfinished">détails de l&apos;anomalie à %1</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">entretien fait</translation>
    </message>
</context>
<context>
    <name>UndoSheet</name>
    <message>
        <source>Not undone</source>
        <translation type="unfinished">Non défait</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Défaire</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Retirer</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation type="unfinished">Rétablir</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">retiré</translation>
    </message>
    <message>
        <source>put back</source>
        <translation type="unfinished">rétabli</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">À la porte %1</translation>
    </message>
    <message>
        <source>Not at this door</source>
        <translation type="unfinished">Pas à cette porte</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, et %2 de plus</translation>
    </message>
    <message>
        <source>Nothing to take back at door %1.</source>
        <translation type="unfinished">Rien à retirer à la porte %1.</translation>
    </message>
    <message>
        <source>Nothing is deleted: taking back and putting back are recorded too. What was signed cannot be taken back.</source>
        <translation type="unfinished">Rien n&apos;est effacé&#xa0;: retirer et rétablir sont aussi consignés. Ce qui a été signé ne peut pas être retiré.</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">non satisfaisant</translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished">à rechronométrer</translation>
    </message>
    <message>
        <source>untested</source>
        <translation type="unfinished">non testé</translation>
    </message>
    <message>
        <source>satisfactory</source>
        <translation type="unfinished">satisfaisant</translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished">recommandation</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">sans objet</translation>
    </message>
    <message>
        <source>judgement needed</source>
        <translation type="unfinished">à l&apos;appréciation de l&apos;inspecteur</translation>
    </message>
</context>
<context>
    <name>VoiceWords</name>
    <message>
        <source>Control station: standing by</source>
        <translation type="unfinished">Poste de sécurité&#xa0;: à l&apos;écoute</translation>
    </message>
    <message>
        <source>Control station: releasing now</source>
        <translation type="unfinished">Poste de sécurité&#xa0;: je déclenche maintenant</translation>
    </message>
    <message>
        <source>Control station: my panel shows it shut</source>
        <translation type="unfinished">Poste de sécurité&#xa0;: mon tableau l&apos;indique fermée</translation>
    </message>
    <message>
        <source>Control station: my panel shows it open</source>
        <translation type="unfinished">Poste de sécurité&#xa0;: mon tableau l&apos;indique ouverte</translation>
    </message>
    <message>
        <source>Let it run
onto the block</source>
        <translation type="unfinished">Laisser aller
contre le bloc</translation>
    </message>
    <message>
        <source>Give the
start word</source>
        <translation type="unfinished">Donner le
mot de départ</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished">Lâcher</translation>
    </message>
    <message>
        <source>Operate release,
side one</source>
        <translation type="unfinished">Déclencher,
côté un</translation>
    </message>
    <message>
        <source>Operate release,
side two</source>
        <translation type="unfinished">Déclencher,
côté deux</translation>
    </message>
    <message>
        <source>Run stopped</source>
        <translation type="unfinished">Essai arrêté</translation>
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
        <translation type="unfinished">aucune porte</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 non testé(s)</translation>
    </message>
    <message>
        <source>%1 SAT</source>
        <translation type="unfinished">%1 SAT</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 à trancher</translation>
    </message>
    <message>
        <source>%1 UNSAT</source>
        <translation type="unfinished">%1 NON SAT</translation>
    </message>
</context>
<context>
    <name>ZoneProfile</name>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BandGauge</name>
    <message>
        <source>allowed %1 to %2 %3</source>
        <translation type="unfinished">permis de %1 à %2 %3</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation type="unfinished">au plus %1 %2</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation type="unfinished">au moins %1 %2</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished">sans limite</translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation type="unfinished">maintenant %1 %2</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation type="unfinished">sous la limite</translation>
    </message>
    <message>
        <source>at the limit</source>
        <translation type="unfinished">à la limite</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation type="unfinished">dans les limites</translation>
    </message>
    <message>
        <source>above the limit</source>
        <translation type="unfinished">au-dessus de la limite</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Brief</name>
    <message>
        <source>Protective equipment</source>
        <translation type="unfinished">Équipement de protection</translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished">Le poste de sécurité</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Qui peut arrêter le test</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Poste de sécurité</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Canal</translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished">Mot de départ</translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished">Mot d&apos;arrêt</translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished">qui déclenche les portes</translation>
    </message>
    <message>
        <source>no door is released without it</source>
        <translation type="unfinished">aucune porte n&apos;est déclenchée sans lui</translation>
    </message>
    <message>
        <source>said by whoever sees danger</source>
        <translation type="unfinished">dit par quiconque voit un danger</translation>
    </message>
    <message>
        <source>Crush hazards</source>
        <translation type="unfinished">Risques d&apos;écrasement</translation>
    </message>
    <message>
        <source>People kept clear</source>
        <translation type="unfinished">Personnes tenues à l&apos;écart</translation>
    </message>
    <message>
        <source>Clear passengers, children, carts and cables from every door of the release group. Keep them clear. Post a lookout on each side of every door that will move. Release one group at a time. Test locally first.</source>
        <translation type="unfinished">Éloignez passagers, enfants, chariots et câbles de chaque porte du groupe de portes. Maintenez-les à l&apos;écart. Postez un surveillant de chaque côté de chaque porte qui va bouger. Déclenchez un seul groupe à la fois. Testez d&apos;abord localement.</translation>
    </message>
    <message>
        <source>Announce the release. Agree the channel, the start word and the stop word. Have the control station read them back.</source>
        <translation type="unfinished">Annoncez le déclenchement. Convenez du canal, du mot de départ et du mot d&apos;arrêt. Faites-les collationner par le poste de sécurité.</translation>
    </message>
    <message>
        <source>Anyone, at any time, by saying the stop word. Stop the doors first. Ask questions afterwards.</source>
        <translation type="unfinished">N&apos;importe qui, à tout moment, en disant le mot d&apos;arrêt. Arrêtez d&apos;abord les portes. Posez les questions ensuite.</translation>
    </message>
    <message>
        <source>how to reach it</source>
        <translation type="unfinished">comment le joindre</translation>
    </message>
    <message>
        <source>by saying the stop word</source>
        <translation type="unfinished">en disant le mot d&apos;arrêt</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep clear. Never walk through a moving door. Most published crush deaths: powered watertight doors, entered before they were fully open.</source>
        <translation type="unfinished">Bords, montants de rencontre et logements de vantail écrasent mains, pieds et têtes&#xa0;: restez à l&apos;écart. Ne franchissez jamais une porte en mouvement. La plupart des morts par écrasement publiées&#xa0;: portes étanches mues par une source d&apos;énergie, franchies avant leur ouverture complète.</translation>
    </message>
    <message>
        <source>Wear safety shoes and gloves, and hearing protection near the alarm. Carry a torch and a radio you have just checked. Wear nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Portez chaussures et gants de sécurité, et une protection auditive près de l&apos;alarme. Ayez une lampe torche et une radio que vous venez de vérifier. Ne portez rien de flottant qu&apos;un vantail puisse accrocher.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Convenu avec le poste de sécurité</translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished">choisir</translation>
    </message>
    <message>
        <source>Not saved yet. %1</source>
        <translation type="unfinished">Pas encore enregistré. %1</translation>
    </message>
    <message>
        <source>Save again ›</source>
        <translation type="unfinished">Réenregistrer ›</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Commencer ›</translation>
    </message>
    <message>
        <source>Read out to everyone taking part</source>
        <translation type="unfinished">Lire à haute voix à tous les participants</translation>
    </message>
    <message>
        <source>‹ Plan</source>
        <translation type="unfinished">‹ Plan</translation>
    </message>
    <message>
        <source>In the plan, choose who is recording.</source>
        <translation type="unfinished">Dans le plan, choisir qui enregistre.</translation>
    </message>
    <message>
        <source>Not yet agreed: %1.</source>
        <translation type="unfinished">Pas encore convenu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read.</source>
        <translation type="unfinished">%1 parties du briefing lues sur %2.</translation>
    </message>
    <message>
        <source>Common practice, no published source. Source for the deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Pratique courante, sans source publiée. Source pour les morts&#xa0;: rapports d&apos;accident des P&amp;I clubs et des États du pavillon.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Mark as read</source>
        <translation type="unfinished">Marquer lu</translation>
    </message>
    <message>
        <source>Mark as read: %1</source>
        <translation type="unfinished">Marquer lu&#xa0;: %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation type="unfinished">Lu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">retard propre au départ, d&apos;après le test de réaction</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">retard propre à la fin, d&apos;après le test de réaction</translation>
    </message>
    <message>
        <source>delay that does not cancel</source>
        <translation type="unfinished">retard qui ne s&apos;annule pas</translation>
    </message>
    <message>
        <source>last digit</source>
        <translation type="unfinished">dernier chiffre</translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished">passage libre</translation>
    </message>
    <message>
        <source>standard uncertainty of</source>
        <translation type="unfinished">incertitude-type de</translation>
    </message>
    <message>
        <source>its own</source>
        <translation type="unfinished">propre</translation>
    </message>
    <message>
        <source>adds, %1</source>
        <translation type="unfinished">apporte, %1</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished">degrés de liberté</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">probabilité d&apos;être dans les limites</translation>
    </message>
    <message>
        <source>reaction scatter at the start</source>
        <translation type="unfinished">dispersion de réaction au départ</translation>
    </message>
    <message>
        <source>reaction scatter at the end</source>
        <translation type="unfinished">dispersion de réaction à la fin</translation>
    </message>
    <message>
        <source>clock rate</source>
        <translation type="unfinished">marche de l&apos;horloge</translation>
    </message>
    <message>
        <source>position of the half-way mark</source>
        <translation type="unfinished">position du repère de mi-course</translation>
    </message>
    <message>
        <source>unlimited</source>
        <translation type="unfinished">illimité</translation>
    </message>
    <message>
        <source>combined</source>
        <translation type="unfinished">composée</translation>
    </message>
    <message>
        <source>expanded, U (k = 2)</source>
        <translation type="unfinished">élargie, U (k = 2)</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Détail de l&apos;incertitude</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BulkheadPanel</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 et %2</translation>
    </message>
    <message>
        <source>If it stays open</source>
        <translation type="unfinished">Si elle reste ouverte</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Les portes</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Cette porte</translation>
    </message>
    <message>
        <source>Fire and smoke can pass this boundary; the zones themselves stay separate.</source>
        <translation type="unfinished">Le feu et la fumée peuvent passer ce cloisonnement&#xa0;; les tranches elles-mêmes restent séparées.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long%3.</source>
        <translation type="unfinished">Les tranches %1 n&apos;en feraient qu&apos;une&#xa0;: longue de %2%3.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CautionScreen</name>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">pont %1, %2</translation>
    </message>
    <message>
        <source>, escape route</source>
        <translation type="unfinished">, échappée</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Confirmer</translation>
    </message>
    <message>
        <source>Arm the stopwatch ›</source>
        <translation type="unfinished">Armer le chronomètre ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished">Groupe %1</translation>
    </message>
    <message>
        <source>1 door will move</source>
        <translation type="unfinished">1 porte va bouger</translation>
    </message>
    <message>
        <source>%1 doors will move</source>
        <translation type="unfinished">%1 portes vont bouger</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Confirmé</translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Portes</translation>
    </message>
    <message>
        <source>Leaf masses are not in the register: treat every leaf as a crush hazard.</source>
        <translation type="unfinished">Les masses des vantaux ne sont pas dans le registre&#xa0;: considérez que chaque vantail peut écraser.</translation>
    </message>
    <message>
        <source>Door %1, leaf of %2: up to %3 at the fastest permitted speed.</source>
        <translation type="unfinished">Porte %1, vantail de %2&#xa0;: jusqu&apos;à %3 à la vitesse maximale permise.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard (%1), but still enough to crush a hand.</source>
        <translation type="unfinished"> C&apos;est moins que la valeur à terre pour les portes sans protection (%1), mais cela suffit encore à écraser une main.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard (%2): keep everyone clear.</source>
        <translation type="unfinished"> C&apos;est %1 fois la valeur à terre pour les portes sans protection (%2)&#xa0;: tenez tout le monde à l&apos;écart.</translation>
    </message>
    <message>
        <source> Ashore, a leaf this heavy must take at least %1 s.</source>
        <translation type="unfinished"> À terre, un vantail aussi lourd doit mettre au moins %1 s.</translation>
    </message>
    <message>
        <source> For comparison, not a rule for ships: %1.</source>
        <translation type="unfinished"> À titre de comparaison, pas une règle pour les navires&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Crush hazard of these doors</source>
        <translation type="unfinished">Risque d&apos;écrasement de ces portes</translation>
    </message>
    <message>
        <source>Cautions to confirm ›</source>
        <translation type="unfinished">Précautions à confirmer ›</translation>
    </message>
    <message>
        <source>Confirm each before release</source>
        <translation type="unfinished">Confirmer chacune avant déclenchement</translation>
    </message>
    <message>
        <source>Back to the doors that will move</source>
        <translation type="unfinished">Retour aux portes qui vont bouger</translation>
    </message>
    <message>
        <source>All still true</source>
        <translation type="unfinished">Tout est toujours vrai</translation>
    </message>
    <message>
        <source>before release from the control station</source>
        <translation type="unfinished">avant le déclenchement depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>Call %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">Appel&#xa0;: %1, %2. Départ&#xa0;: «&#xa0;%3&#xa0;». Arrêt&#xa0;: «&#xa0;%4&#xa0;», peut être dit par %5.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Voir ›</translation>
    </message>
    <message>
        <source>The rules have changed since the doors were last shown</source>
        <translation type="unfinished">Les règles ont changé depuis le dernier affichage des portes</translation>
    </message>
    <message>
        <source>%1 graded differently since the rules changed</source>
        <translation type="unfinished">%1&#xa0;: évaluation différente depuis le changement des règles</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceKeys</name>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Suite ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceRow</name>
    <message>
        <source>side one</source>
        <translation type="unfinished">côté un</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">côté deux</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished">Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished">Non</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">s.o.</translation>
    </message>
    <message>
        <source>next to be answered by the letters y, n and a</source>
        <translation type="unfinished">prochaine à répondre par les lettres y, n et a</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CloseUp</name>
    <message>
        <source>Close-up: %1</source>
        <translation type="unfinished">Gros plan&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CutShort</name>
    <message>
        <source>A run at door %1 was cut short</source>
        <translation type="unfinished">Un essai à la porte %1 a été interrompu</translation>
    </message>
    <message>
        <source>By hand: %1</source>
        <translation type="unfinished">À la main&#xa0;: %1</translation>
    </message>
    <message>
        <source>seconds after “%1”</source>
        <translation type="unfinished">secondes après «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>“%1” cannot come before “%2”. Seconds after “%3”:</source>
        <translation type="unfinished">«&#xa0;%1&#xa0;» ne peut pas venir avant «&#xa0;%2&#xa0;». Secondes après «&#xa0;%3&#xa0;»&#xa0;:</translation>
    </message>
    <message>
        <source>Release %1. On record: %2. Nothing is lost.</source>
        <translation type="unfinished">Déclenchement %1. Consigné&#xa0;: %2. Rien n&apos;est perdu.</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">aucun repère</translation>
    </message>
    <message>
        <source>Void the run</source>
        <translation type="unfinished">Déclarer l&apos;essai nul</translation>
    </message>
    <message>
        <source>Complete by hand from my own stopwatch</source>
        <translation type="unfinished">Compléter à la main d&apos;après mon propre chronomètre</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or type the date, like 2027-03-31.</source>
        <translation type="unfinished">Ou saisir la date, comme 2027-03-31.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Date</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Choisir</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Débriefing</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Terminé</translation>
    </message>
    <message>
        <source>Faults (%1)</source>
        <translation type="unfinished">Défauts (%1)</translation>
    </message>
    <message>
        <source>People (%1)</source>
        <translation type="unfinished">Gens (%1)</translation>
    </message>
    <message>
        <source>Marks (%1)</source>
        <translation type="unfinished">Repères (%1)</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Score</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Score</translation>
    </message>
    <message>
        <source>Practice does not replace instruction by licensed people or the rules of the flag Administration.</source>
        <translation type="unfinished">L&apos;entraînement ne remplace ni l&apos;instruction donnée par des personnes brevetées ni les règles de l&apos;Administration du pavillon.</translation>
    </message>
    <message>
        <source>Checks (%1)</source>
        <translation type="unfinished">Vérifications (%1)</translation>
    </message>
    <message>
        <source>%1 checks that differ</source>
        <translation type="unfinished">%1 vérifications qui diffèrent</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Passe à %1, échoue à %2</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En service</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Choisir</translation>
    </message>
    <message>
        <source>%1: default</source>
        <translation type="unfinished">%1&#xa0;: par défaut</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again; after three runs, you decide. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Un temps de fermeture à moins de %1 s d&apos;une limite est rechronométré&#xa0;; après trois essais, vous décidez. Parmi les portes qui passent de justesse, 1 sur %2 serait hors limites&#xa0;; parmi celles qui échouent de justesse, 1 sur %2 serait dans les limites.</translation>
    </message>
    <message>
        <source>These apply to the walkdown under way and to later ones; reports print them. What the flag Administration requires takes precedence.</source>
        <translation type="unfinished">S&apos;applique à la tournée en cours et aux suivantes&#xa0;; les rapports l&apos;impriment. Ce que l&apos;Administration du pavillon exige prime.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DivisionLookup</name>
    <message>
        <source>Bulkhead</source>
        <translation type="unfinished">Cloison</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Pont</translation>
    </message>
    <message>
        <source>Zone bulkhead</source>
        <translation type="unfinished">Cloison de tranche</translation>
    </message>
    <message>
        <source>Zone step</source>
        <translation type="unfinished">Baïonnette</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notes</translation>
    </message>
    <message>
        <source>Below the deck</source>
        <translation type="unfinished">Sous le pont</translation>
    </message>
    <message>
        <source>One side</source>
        <translation type="unfinished">Un côté</translation>
    </message>
    <message>
        <source>Above the deck</source>
        <translation type="unfinished">Au-dessus du pont</translation>
    </message>
    <message>
        <source>The other side</source>
        <translation type="unfinished">L&apos;autre côté</translation>
    </message>
    <message>
        <source>No class: steel or equivalent</source>
        <translation type="unfinished">Sans classe&#xa0;: acier ou équivalent</translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation type="unfinished">Aucune exigence</translation>
    </message>
    <message>
        <source>No value printed: ask the Administration</source>
        <translation type="unfinished">Aucune valeur imprimée&#xa0;: demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>Choose both spaces</source>
        <translation type="unfinished">Choisir les deux locaux</translation>
    </message>
    <message>
        <source>%1, cell %2-%3: %4</source>
        <translation type="unfinished">%1, case %2-%3&#xa0;: %4</translation>
    </message>
    <message>
        <source>blank</source>
        <translation type="unfinished">vide</translation>
    </message>
    <message>
        <source>%1, door %2</source>
        <translation type="unfinished">%1, porte %2</translation>
    </message>
    <message>
        <source>No table for this division</source>
        <translation type="unfinished">Pas de tableau pour ce cloisonnement</translation>
    </message>
    <message>
        <source>The approved plans and the flag Administration take precedence over these tables.</source>
        <translation type="unfinished">Les plans approuvés et l&apos;Administration du pavillon priment sur ces tableaux.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorDrawing</name>
    <message>
        <source>Drawing of a sliding door</source>
        <translation type="unfinished">Dessin d&apos;une porte à glissières</translation>
    </message>
    <message>
        <source>Drawing of a single leaf door</source>
        <translation type="unfinished">Dessin d&apos;une porte à un vantail</translation>
    </message>
    <message>
        <source>Drawing of a double leaf door</source>
        <translation type="unfinished">Dessin d&apos;une porte à deux vantaux</translation>
    </message>
    <message>
        <source>Drawing of a double swing door</source>
        <translation type="unfinished">Dessin d&apos;une porte va-et-vient</translation>
    </message>
    <message>
        <source>, alarm on</source>
        <translation type="unfinished">, alarme en marche</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">logement</translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished">course</translation>
    </message>
    <message>
        <source>%1 not known</source>
        <translation type="unfinished">%1 inconnu</translation>
    </message>
    <message>
        <source>swings both ways</source>
        <translation type="unfinished">va-et-vient</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">passage</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarme</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished">%1 %2</translation>
    </message>
    <message>
        <source>, a soft block in its path</source>
        <translation type="unfinished">, un bloc souple sur sa course</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorHead</name>
    <message>
        <source>not read</source>
        <translation type="unfinished">non lue</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">aucune</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">illisible</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">plaque</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">registre</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation type="unfinished">cloisonnement</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">passage</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
    <message>
        <source>not examined as</source>
        <translation type="unfinished">non examinée comme</translation>
    </message>
    <message>
        <source>a watertight door</source>
        <translation type="unfinished">porte étanche à l&apos;eau</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorListView</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Portes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorPicker</name>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">porte %1, pont %2, %3</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorScreen</name>
    <message>
        <source>1 Look</source>
        <translation type="unfinished">1 Examen</translation>
    </message>
    <message>
        <source>2 Release</source>
        <translation type="unfinished">2 Déclench.</translation>
    </message>
    <message>
        <source>3 Function</source>
        <translation type="unfinished">3 Fonction</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Photo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Note</translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Cette porte n&apos;a pas pu être testée&#xa0;: dire pourquoi</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Pont %1</translation>
    </message>
    <message>
        <source>%1 · %2 walkdown</source>
        <translation type="unfinished">%1 · tournée&#xa0;: %2</translation>
    </message>
    <message>
        <source>Go to release ›</source>
        <translation type="unfinished">Déclenchement ›</translation>
    </message>
    <message>
        <source>Go to function ›</source>
        <translation type="unfinished">Fonction ›</translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished">Porte suivante %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation type="unfinished">D&apos;après papier</translation>
    </message>
    <message>
        <source>Type in the entries of a paper form</source>
        <translation type="unfinished">Saisir les entrées d&apos;un formulaire papier</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">Test impossible</translation>
    </message>
    <message>
        <source>1 does not apply ›</source>
        <translation type="unfinished">1 sans objet ›</translation>
    </message>
    <message>
        <source>%1 do not apply ›</source>
        <translation type="unfinished">%1 sans objet ›</translation>
    </message>
    <message>
        <source>Walkdown done ›</source>
        <translation type="unfinished">Tournée finie ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>The plate on door %1</source>
        <translation type="unfinished">La plaque de la porte %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">sans plaque</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">illisible</translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>closing force at the edge, by spring gauge</source>
        <translation type="unfinished">force de fermeture au bord, au peson</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Gîte du navire, degrés</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">degrés</translation>
    </message>
    <message>
        <source>Note about door %1</source>
        <translation type="unfinished">Note sur la porte %1</translation>
    </message>
    <message>
        <source>Why could door %1 not be tested?</source>
        <translation type="unfinished">Pourquoi la porte %1 n&apos;a-t-elle pas pu être testée&#xa0;?</translation>
    </message>
    <message>
        <source>Why could this not be tested?</source>
        <translation type="unfinished">Pourquoi ce point n&apos;a-t-il pas pu être testé&#xa0;?</translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished">Pourquoi</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">Test impossible</translation>
    </message>
    <message>
        <source>Clear this answer?</source>
        <translation type="unfinished">Effacer cette réponse ?</translation>
    </message>
    <message>
        <source>Door %1: “%2”, answered at %3 by %4. It stays on record as taken back.</source>
        <translation type="unfinished">Porte %1 : « %2 », répondu à %3 par %4. Elle reste consignée comme retirée.</translation>
    </message>
    <message>
        <source>Clear the answer</source>
        <translation type="unfinished">Effacer la réponse</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished">La garder</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Recueil des règles ›</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Enregistrer</translation>
    </message>
    <message>
        <source>does not apply: %1</source>
        <translation type="unfinished">ne s&apos;applique pas&#xa0;: %1</translation>
    </message>
    <message>
        <source>What the boundary requires</source>
        <translation type="unfinished">Ce que le cloisonnement exige</translation>
    </message>
    <message>
        <source>Does not apply to door %1</source>
        <translation type="unfinished">Ne s&apos;applique pas à la porte %1</translation>
    </message>
    <message>
        <source>What was %1 measured with?</source>
        <translation type="unfinished">Avec quoi a-t-on mesuré %1&#xa0;?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">au-delà de 1 degré, les temps de fermeture ne sont qu&apos;une recommandation</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Détail de l&apos;incertitude</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Historique des temps</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Portes de cette tournée</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Rédiger…</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 de retard, dispersion %2, sur %3 mesures</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Utiliser ces valeurs</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation type="unfinished">Recommencer</translation>
    </message>
    <message>
        <source>too few usable trials: published figures apply</source>
        <translation type="unfinished">trop peu de mesures utilisables&#xa0;: les valeurs publiées s&apos;appliquent</translation>
    </message>
    <message>
        <source>; %1 too early, not counted</source>
        <translation type="unfinished">; %1 trop tôt, non comptées</translation>
    </message>
    <message>
        <source>; %1 far out, not counted</source>
        <translation type="unfinished">; %1 aberrantes, non comptées</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and has ± %3; with the published figures it has ± %4.</source>
        <translation type="unfinished">Un temps de fermeture est corrigé de %1%2 et a ± %3&#xa0;; avec les valeurs publiées il a ± %4.</translation>
    </message>
    <message>
        <source>Your reaction time on this tablet</source>
        <translation type="unfinished">Votre temps de réaction sur cette tablette</translation>
    </message>
    <message>
        <source>no trials: published figures apply</source>
        <translation type="unfinished">aucune mesure&#xa0;: les valeurs publiées s&apos;appliquent</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the uncertainty. Worth repeating every %1 months.</source>
        <translation type="unfinished">Utilisé pour les essais que vous chronométrez désormais sur cette tablette. Le retard propre à la tablette, qu&apos;une vraie porte n&apos;a pas, reste dans l&apos;incertitude. À répéter tous les %1 mois.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Essayer le son</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Commencer sans son</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Commencer ›</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Mesure %1 sur %2</translation>
    </message>
    <message>
        <source>How quick and steady are you?</source>
        <translation type="unfinished">Êtes-vous rapide et régulier&#xa0;?</translation>
    </message>
    <message>
        <source>How the drill works</source>
        <translation type="unfinished">Le test de réaction</translation>
    </message>
    <message>
        <source>Twenty times, a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you would at a door.</source>
        <translation type="unfinished">Vingt fois, un vantail part sans prévenir, puis arrive en butée. Touchez la touche à l&apos;instant où il part, et de nouveau à l&apos;instant où il est en butée. Avec le son, une alarme vient d&apos;abord&#xa0;: touchez la touche quand vous l&apos;entendez. Cela prend environ deux minutes. Tenez la tablette comme devant une porte.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then replace the published figures for every run that you time on this tablet. If you leave before the end, nothing is kept.</source>
        <translation type="unfinished">Votre retard et votre dispersion remplacent alors les valeurs publiées pour chaque essai que vous chronométrez sur cette tablette. Si vous partez avant la fin, rien n&apos;est gardé.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Test de réaction</translation>
    </message>
    <message>
        <source>Turn the sound up until you hear it clearly above the ship&apos;s noise.</source>
        <translation type="unfinished">Montez le son jusqu&apos;à l&apos;entendre nettement au-dessus du bruit du navire.</translation>
    </message>
    <message>
        <source>No working loudspeaker on this tablet: for what is heard, the published figures apply.</source>
        <translation type="unfinished">Pas de haut-parleur en état sur cette tablette&#xa0;: pour ce qui s&apos;entend, les valeurs publiées s&apos;appliquent.</translation>
    </message>
    <message>
        <source>That one was missed: it will be repeated.</source>
        <translation type="unfinished">Celui-là a été manqué&#xa0;: il sera répété.</translation>
    </message>
    <message>
        <source>Loud enough: begin ›</source>
        <translation type="unfinished">Assez fort&#xa0;: commencer ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Close-up drawing of the leaf</source>
        <translation type="unfinished">Dessin du vantail en gros plan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">S&apos;entraîner ›</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">meilleur %1&#xa0;%</translation>
    </message>
    <message>
        <source>Unlock ›</source>
        <translation type="unfinished">Déverrouiller ›</translation>
    </message>
    <message>
        <source>locked by the instructor</source>
        <translation type="unfinished">verrouillée par l&apos;instructeur</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FigureLabel</name>
    <message>
        <source>no figure yet</source>
        <translation type="unfinished">pas encore de valeur</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FirstScreen</name>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished">Plus grande</translation>
    </message>
    <message>
        <source>Twice as large</source>
        <translation type="unfinished">Double</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Mains nues</translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished">Gants</translation>
    </message>
    <message>
        <source>Text and keys</source>
        <translation type="unfinished">Texte et touches</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished">Mains</translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Visiter le navire de démonstration</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">S&apos;entraîner</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Tester des portes qui peuvent écraser</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Précédent</translation>
    </message>
    <message>
        <source>A released door moves by itself. Never walk through it. Keep hands and feet off edges and pockets. Post a lookout on each side of every door. Anyone may stop the test.</source>
        <translation type="unfinished">Une porte déclenchée bouge d&apos;elle-même. Ne la franchissez jamais. Gardez mains et pieds loin des bords et des logements. Postez un surveillant de chaque côté de chaque porte. N&apos;importe qui peut arrêter le test.</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks only what applies to this ship and kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround vous guide de porte en porte, ne demande que ce qui s&apos;applique à ce navire et à ce genre de porte, chronomètre la fermeture et l&apos;évalue.</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Règles qui priment</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan, local rules and the judgement of its users take precedence over this program. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">L&apos;Administration du pavillon, le plan approuvé de lutte contre l&apos;incendie, les règles locales et l&apos;appréciation de ses utilisateurs priment sur ce programme. Une évaluation est une aide, pas un certificat.</translation>
    </message>
    <message>
        <source>It follows the texts of 2015. Later amendments have not been checked.</source>
        <translation type="unfinished">Il suit les textes de 2015. Les amendements ultérieurs n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation type="unfinished">Normale</translation>
    </message>
    <message>
        <source>Start here</source>
        <translation type="unfinished">Commencer ici</translation>
    </message>
    <message>
        <source>A fictitious ferry with a walkdown under way, to try every screen.</source>
        <translation type="unfinished">Un ferry fictif avec une tournée en cours, pour essayer chaque écran.</translation>
    </message>
    <message>
        <source>Simulated doors that move, fail and hide faults, with a debrief.</source>
        <translation type="unfinished">Des portes simulées qui bougent, tombent en panne et cachent des défauts, avec un débriefing.</translation>
    </message>
    <message>
        <source>Import my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Importer le registre de mon navire (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every error in it is listed.</source>
        <translation type="unfinished">Ponts, tranches, cloisonnements et portes depuis un tableur&#xa0;; chaque erreur y est énumérée.</translation>
    </message>
    <message>
        <source>fire door walkdowns</source>
        <translation type="unfinished">tournées des portes d&apos;incendie</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpKey</name>
    <message>
        <source>What to look at: %1</source>
        <translation type="unfinished">Ce qu&apos;il faut regarder&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpPanelView</name>
    <message>
        <source>Drawing. %1</source>
        <translation type="unfinished">Dessin. %1</translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation type="unfinished">Bon&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bad: %1</source>
        <translation type="unfinished">Mauvais&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeScreen</name>
    <message>
        <source>Zones</source>
        <translation type="unfinished">Tranches</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Ouvertes</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Navire</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Règles</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Ce navire</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Recueil des règles ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. L&apos;Administration du pavillon, les plans approuvés et les règles locales priment. Ni engins à grande vitesse, ni portes étanches en tant que telles.</translation>
    </message>
    <message>
        <source>Boundary integrity</source>
        <translation type="unfinished">Intégrité des cloisonnements</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Portes</translation>
    </message>
    <message>
        <source>Doors and walkdown</source>
        <translation type="unfinished">Portes et tournée</translation>
    </message>
    <message>
        <source>Rules applied</source>
        <translation type="unfinished">Règles appliquées</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>Plan it ›</source>
        <translation type="unfinished">Planifier ›</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation type="unfinished">Fait ce jour</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Saisir</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Commencer ›</translation>
    </message>
    <message>
        <source>last %1, worth repeating after %2</source>
        <translation type="unfinished">dernier %1, à répéter après le %2</translation>
    </message>
    <message>
        <source>End this walkdown?</source>
        <translation type="unfinished">Finir cette tournée&#xa0;?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Toutes les portes sont faites.</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Finir la tournée</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
    <message>
        <source>Walkdowns of this vessel</source>
        <translation type="unfinished">Tournées de ce navire</translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished">Rapport</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Navires sur cette tablette</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Ouvrir</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>%1, deck %2.</source>
        <translation type="unfinished">%1, pont %2.</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Aucune tournée n&apos;a encore commencé. Commencez-en une pour la tester.</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">J&apos;ai vu</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Texts ›</source>
        <translation type="unfinished">Textes ›</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation type="unfinished">Avant : %1</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation type="unfinished">Maintenant : %1</translation>
    </message>
    <message>
        <source>Door %1 ›</source>
        <translation type="unfinished">Porte %1 ›</translation>
    </message>
    <message>
        <source>Graded differently since the rules changed</source>
        <translation type="unfinished">Évaluées autrement depuis le changement des règles</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Non enregistré</translation>
    </message>
    <message>
        <source>The former rules can no longer be read, so it is not known which doors are graded differently.</source>
        <translation type="unfinished">Les règles d&apos;avant ne peuvent plus être lues&#xa0;; on ne sait donc pas quelles portes sont évaluées autrement.</translation>
    </message>
    <message>
        <source>No record has changed, and an earlier report keeps the edition it was made under.</source>
        <translation type="unfinished">Aucun enregistrement n&apos;a changé, et un rapport antérieur garde l&apos;édition sous laquelle il a été fait.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Échéances</translation>
    </message>
    <message>
        <source>Intervals of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration take precedence; no grace period is stated.</source>
        <translation type="unfinished">Intervalles de la MSC.1/Circ.1432. Le plan de la compagnie et l&apos;Administration du pavillon priment&#xa0;; aucun délai de grâce n&apos;est indiqué.</translation>
    </message>
    <message>
        <source>not known yet: enter its expiry date</source>
        <translation type="unfinished">pas encore connu&#xa0;: saisir sa date d&apos;expiration</translation>
    </message>
    <message>
        <source>Timing drill: %1</source>
        <translation type="unfinished">Test de réaction&#xa0;: %1</translation>
    </message>
    <message>
        <source>never done on this tablet: published figures apply</source>
        <translation type="unfinished">jamais fait sur cette tablette&#xa0;: les valeurs publiées s&apos;appliquent</translation>
    </message>
    <message>
        <source>When does the safety certificate expire?</source>
        <translation type="unfinished">Quand le certificat de sécurité expire-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>%1 of %2 not done. What was not tested is reported as untested.</source>
        <translation type="unfinished">%1 sur %2 pas faites. Ce qui n&apos;a pas été testé est déclaré non testé.</translation>
    </message>
    <message>
        <source>Something has not been saved yet. Save it first, then end the walkdown.</source>
        <translation type="unfinished">Quelque chose n&apos;est pas encore enregistré. Enregistrez-le d&apos;abord, puis finissez la tournée.</translation>
    </message>
    <message>
        <source>Carry on</source>
        <translation type="unfinished">Continuer</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Portes de cette tournée</translation>
    </message>
    <message>
        <source>There is no other vessel on this tablet.</source>
        <translation type="unfinished">Il n&apos;y a pas d&apos;autre navire sur cette tablette.</translation>
    </message>
    <message>
        <source>Import a register (CSV)</source>
        <translation type="unfinished">Importer un registre (CSV)</translation>
    </message>
    <message>
        <source>It is not in the walkdown shown. Plan a walkdown that includes it.</source>
        <translation type="unfinished">Elle n&apos;est pas dans la tournée affichée. Planifiez une tournée qui la comprend.</translation>
    </message>
    <message>
        <source>An ended walkdown takes no more entries. Until it is signed, you can take back the end with Undo.</source>
        <translation type="unfinished">Une tournée finie n&apos;accepte plus d&apos;entrées. Tant qu&apos;elle n&apos;est pas signée, vous pouvez en retirer la fin avec Défaire.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::InstrumentKeys</name>
    <message>
        <source>Rule</source>
        <translation type="unfinished">Règle</translation>
    </message>
    <message>
        <source>Caliper</source>
        <translation type="unfinished">Pied à coulisse</translation>
    </message>
    <message>
        <source>Gap gauge</source>
        <translation type="unfinished">Jauge d&apos;épaisseur</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation type="unfinished">Mètre ruban</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemPanel</name>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished">%1&#xa0;: constatée par %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1&#xa0;: rectifiée par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: retest passed, by %2</source>
        <translation type="unfinished">%1&#xa0;: nouveau test réussi, par %2</translation>
    </message>
    <message>
        <source>%1: retest FAILED, by %2</source>
        <translation type="unfinished">%1&#xa0;: nouveau test NON RÉUSSI, par %2</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <translation type="unfinished">%1&#xa0;: retirée par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>action %1</source>
        <translation type="unfinished">mesure %1</translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished">Fixer</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Échéance</translation>
    </message>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished">rien d&apos;enregistré</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Contrôle par l&apos;État du port</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Photos</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">aucune encore</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation type="unfinished">%1 prises</translation>
    </message>
    <message>
        <source>Take one</source>
        <translation type="unfinished">En prendre une</translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Voir ›</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Historique ›</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Rectifiée…</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Retirer…</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Back to the open items</source>
        <translation type="unfinished">Retour aux anomalies ouvertes</translation>
    </message>
    <message>
        <source>What is wrong, and what was done</source>
        <translation type="unfinished">Ce qui ne va pas, et ce qui a été fait</translation>
    </message>
    <message>
        <source>Until it is rectified, %1.</source>
        <translation type="unfinished">Tant qu&apos;elle n&apos;est pas rectifiée, %1.</translation>
    </message>
    <message>
        <source>Say who you are before you change an item.</source>
        <translation type="unfinished">Dites qui vous êtes avant de modifier une anomalie.</translation>
    </message>
    <message>
        <source>%1: retest requested by %2</source>
        <translation type="unfinished">%1&#xa0;: nouveau test demandé par %2</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Confiée à</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Mesure provisoire</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">aucune consignée</translation>
    </message>
    <message>
        <source>View the photographs</source>
        <translation type="unfinished">Voir les photos</translation>
    </message>
    <message>
        <source>Earlier results of this door</source>
        <translation type="unfinished">Résultats antérieurs de cette porte</translation>
    </message>
    <message>
        <source>Request retest</source>
        <translation type="unfinished">Demander retest</translation>
    </message>
    <message>
        <source>Reinstate</source>
        <translation type="unfinished">Rétablir</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation type="unfinished">Rien de choisi</translation>
    </message>
    <message>
        <source>Checks that are not in order become items once written up.</source>
        <translation type="unfinished">Les vérifications qui ne sont pas en ordre deviennent des anomalies une fois rédigées.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Code de mesure, tel que l&apos;agent l&apos;a écrit (listes publiées&#xa0;; anomalie %1)</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">aujourd&apos;hui</translation>
    </message>
    <message>
        <source>in 3 days</source>
        <translation type="unfinished">dans 3 jours</translation>
    </message>
    <message>
        <source>in 7 days</source>
        <translation type="unfinished">dans 7 jours</translation>
    </message>
    <message>
        <source>in 14 days</source>
        <translation type="unfinished">dans 14 jours</translation>
    </message>
    <message>
        <source>in one month</source>
        <translation type="unfinished">dans un mois</translation>
    </message>
    <message>
        <source>in three months</source>
        <translation type="unfinished">dans trois mois</translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished">Qu&apos;a-t-on fait à la porte %1&#xa0;?</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">Pourquoi est-elle retirée&#xa0;?</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Choisir</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Contrôle par l&apos;État du port</translation>
    </message>
    <message>
        <source>Ground for detention? Recorded separately: regimes differ in which code shows it.</source>
        <translation type="unfinished">Motif d&apos;immobilisation&#xa0;? Consigné à part&#xa0;: d&apos;un régime à l&apos;autre, ce n&apos;est pas le même code qui l&apos;indique.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished">Enregistrer</translation>
    </message>
    <message>
        <source>Due date</source>
        <translation type="unfinished">Échéance</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Mesure provisoire</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Confiée à</translation>
    </message>
    <message>
        <source>Who rectified it?</source>
        <translation type="unfinished">Qui l&apos;a rectifiée&#xa0;?</translation>
    </message>
    <message>
        <source>Whoever rectifies cannot retest: the item closes when someone else finds it in order.</source>
        <translation type="unfinished">Celui qui rectifie ne peut pas retester&#xa0;: l&apos;anomalie est clôturée quand un autre la trouve en ordre.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Keypad</name>
    <message>
        <source>Decimal point</source>
        <translation type="unfinished">Virgule décimale</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Retour</translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation type="unfinished">Effacer le dernier chiffre</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Effacer</translation>
    </message>
    <message>
        <source>Clear the figure</source>
        <translation type="unfinished">Effacer le nombre</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Valider</translation>
    </message>
    <message>
        <source>Enter the figure</source>
        <translation type="unfinished">Valider le nombre</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation type="unfinished">rien de saisi</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Legend</name>
    <message>
        <source>other boundaries</source>
        <translation type="unfinished">autres cloisonnements</translation>
    </message>
    <message>
        <source>bulkhead open</source>
        <translation type="unfinished">cloison ouverte</translation>
    </message>
    <message>
        <source>not yet proven</source>
        <translation type="unfinished">pas encore prouvée</translation>
    </message>
    <message>
        <source>several doors</source>
        <translation type="unfinished">plusieurs portes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::LiveScene</name>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Dégager la course</translation>
    </message>
    <message>
        <source>ALARM</source>
        <translation type="unfinished">ALARME</translation>
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
        <translation type="unfinished">Annuler</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished">Arrêt en cours…</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Arrêté</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkKey</name>
    <message>
        <source>Mark</source>
        <translation type="unfinished">Repère</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkRow</name>
    <message>
        <source>no such event</source>
        <translation type="unfinished">pas survenu</translation>
    </message>
    <message>
        <source>Door %1, %2: %3</source>
        <translation type="unfinished">Porte %1, %2&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::NotSavedBanner</name>
    <message>
        <source>Save again</source>
        <translation type="unfinished">Réenregistrer</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">NON ENREGISTRÉ (%1)</translation>
    </message>
    <message>
        <source>Put aside…</source>
        <translation type="unfinished">Mettre de côté…</translation>
    </message>
    <message>
        <source>Leave it waiting</source>
        <translation type="unfinished">Le laisser en attente</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation type="unfinished">Mettre de côté</translation>
    </message>
    <message>
        <source>It is kept in %1</source>
        <translation type="unfinished">Conservé dans %1</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">Pas mis de côté</translation>
    </message>
    <message>
        <source>View only: another program is writing to this register (%1).</source>
        <translation type="unfinished">Lecture seule&#xa0;: un autre programme écrit dans ce registre (%1).</translation>
    </message>
    <message>
        <source>Put the refused entries aside?</source>
        <translation type="unfinished">Mettre de côté les entrées refusées&#xa0;?</translation>
    </message>
    <message>
        <source>The register does not accept this. Once put aside, it is kept in a file beside the register and does not count. Record again what still applies.</source>
        <translation type="unfinished">Le registre n&apos;accepte pas cela. Une fois mis de côté, c&apos;est gardé dans un fichier à côté du registre et ne compte pas. Consignez de nouveau ce qui vaut toujours.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Needs attention</source>
        <translation type="unfinished">À examiner</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemsCard</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
    </message>
    <message>
        <source>oldest %1 days</source>
        <translation type="unfinished">la plus ancienne&#xa0;: %1 jours</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 en retard</translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished">Les %1 anomalies ›</translation>
    </message>
    <message>
        <source>None yet: no door has been tested.</source>
        <translation type="unfinished">Aucune encore&#xa0;: aucune porte n&apos;a été testée.</translation>
    </message>
    <message>
        <source>None: no door is unsatisfactory or undecided.</source>
        <translation type="unfinished">Aucune&#xa0;: aucune porte n&apos;est non satisfaisante ni à trancher.</translation>
    </message>
    <message>
        <source>1 needs attention</source>
        <translation type="unfinished">1 à examiner</translation>
    </message>
    <message>
        <source>%1 need attention</source>
        <translation type="unfinished">%1 à examiner</translation>
    </message>
    <message>
        <source>1 open item ›</source>
        <translation type="unfinished">1 anomalie ›</translation>
    </message>
    <message>
        <source>Open items ›</source>
        <translation type="unfinished">Anomalies ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PartKeys</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Portes</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Notes</translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Résultat&#xa0;: %1. Appuyez pour les motifs</translation>
    </message>
    <message>
        <source>Doors in this boundary</source>
        <translation type="unfinished">Portes de ce cloisonnement</translation>
    </message>
    <message>
        <source>Photograph, note, could not test, from paper</source>
        <translation type="unfinished">Photo, note, test impossible, d&apos;après papier</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PasswordForm</name>
    <message>
        <source>The instructor has locked this exercise. Enter the password to open it.</source>
        <translation type="unfinished">L&apos;instructeur a verrouillé cette leçon. Saisissez le mot de passe pour l&apos;ouvrir.</translation>
    </message>
    <message>
        <source>password</source>
        <translation type="unfinished">mot de passe</translation>
    </message>
    <message>
        <source>Password</source>
        <translation type="unfinished">Mot de passe</translation>
    </message>
    <message>
        <source>Show password</source>
        <translation type="unfinished">Montrer le mot de passe</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Ouvrir la leçon ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PersonForm</name>
    <message>
        <source>name</source>
        <translation type="unfinished">nom</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nom</translation>
    </message>
    <message>
        <source>Type the name, then touch this person&apos;s role.</source>
        <translation type="unfinished">Saisissez le nom, puis touchez la fonction de cette personne.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhotographSheets</name>
    <message>
        <source>Photograph of door %1</source>
        <translation type="unfinished">Photo de la porte %1</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation type="unfinished">Avec l&apos;appareil</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished">D&apos;un fichier</translation>
    </message>
    <message>
        <source>No photograph</source>
        <translation type="unfinished">Pas de photo</translation>
    </message>
    <message>
        <source>What does the photograph show?</source>
        <translation type="unfinished">Que montre la photo&#xa0;?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhrasePicker</name>
    <message>
        <source>Use</source>
        <translation type="unfinished">Prendre</translation>
    </message>
    <message>
        <source>Phrases</source>
        <translation type="unfinished">Phrases</translation>
    </message>
    <message>
        <source>own words</source>
        <translation type="unfinished">texte libre</translation>
    </message>
    <message>
        <source>Own words</source>
        <translation type="unfinished">Texte libre</translation>
    </message>
    <message>
        <source>Use own words</source>
        <translation type="unfinished">Prendre ce texte</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PictureView</name>
    <message>
        <source>The picture is not on this tablet: import it from the tablet that took it.</source>
        <translation type="unfinished">L&apos;image n&apos;est pas sur cette tablette&#xa0;: importez-la de la tablette qui l&apos;a prise.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1&#xa0;: %2, %3 à pied. D&apos;abord&#xa0;: %4.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Ajouter une personne</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Gîte du navire</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Combien d&apos;entre elles</translation>
    </message>
    <message>
        <source>Which doors</source>
        <translation type="unfinished">Quelles portes</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished">%1°</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Toutes</translation>
    </message>
    <message>
        <source>Quarterly set</source>
        <translation type="unfinished">Trimestrielles</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Pont %1</translation>
    </message>
    <message>
        <source>One deck…</source>
        <translation type="unfinished">Un pont…</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation type="unfinished">Tranche %1</translation>
    </message>
    <message>
        <source>One zone…</source>
        <translation type="unfinished">Une tranche…</translation>
    </message>
    <message>
        <source>Failed last time</source>
        <translation type="unfinished">En échec</translation>
    </message>
    <message>
        <source>To retest</source>
        <translation type="unfinished">À retester</translation>
    </message>
    <message>
        <source> %1 shorter than in number order.</source>
        <translation type="unfinished"> %1 de moins que dans l&apos;ordre des numéros.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 confidence that %3</source>
        <translation type="unfinished">si aucune des %1 n&apos;échoue, confiance de %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Enregistré par</translation>
    </message>
    <message>
        <source>Accompanied by</source>
        <translation type="unfinished">Accompagné par</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">But</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">au-delà de 1 degré, les temps de fermeture ne sont qu&apos;une recommandation</translation>
    </message>
    <message>
        <source>Safety brief ›</source>
        <translation type="unfinished">Briefing sécurité ›</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Tout</translation>
    </message>
    <message>
        <source>or a random sample, and what it proves</source>
        <translation type="unfinished">ou un échantillon aléatoire, et ce qu&apos;il prouve</translation>
    </message>
    <message>
        <source>%1 drawn</source>
        <translation type="unfinished">%1 tirées</translation>
    </message>
    <message>
        <source>No doors in this scope.</source>
        <translation type="unfinished">Aucune porte ainsi délimitée.</translation>
    </message>
    <message>
        <source>First choose who is recording.</source>
        <translation type="unfinished">Choisir d&apos;abord qui enregistre.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Planifier une tournée</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Briefing</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Briefing sécurité</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanSheets</name>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Ajouter une personne</translation>
    </message>
    <message>
        <source>Which deck?</source>
        <translation type="unfinished">Quel pont&#xa0;?</translation>
    </message>
    <message>
        <source>Which zone?</source>
        <translation type="unfinished">Quelle tranche&#xa0;?</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">pont %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">pont %1, %2</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">tranche %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Gîte du navire, degrés</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">degrés</translation>
    </message>
    <message>
        <source>How many of these %1?</source>
        <translation type="unfinished">Combien de ces %1&#xa0;?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">au-delà de 1 degré, les temps de fermeture ne sont qu&apos;une recommandation</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Tout</translation>
    </message>
    <message>
        <source>%1 at random: %2 confidence that at most %3 are defective</source>
        <translation type="unfinished">%1 au hasard&#xa0;: confiance de %2 qu&apos;au plus %3 sont défectueuses</translation>
    </message>
    <message>
        <source>The result is valid only if no door of the sample fails. The doors are spread over zones and kinds and drawn at random; hand-picked doors prove nothing about the rest. A sample never replaces a test that the flag or the rules require of every door.</source>
        <translation type="unfinished">Le résultat ne vaut que si aucune porte de l&apos;échantillon n&apos;échoue. Les portes sont réparties entre tranches et genres et tirées au hasard&#xa0;; des portes choisies à la main ne prouvent rien sur les autres. Un échantillon ne remplace jamais un test que le pavillon ou les règles exigent de chaque porte.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeCover</name>
    <message>
        <source>PRACTICE</source>
        <translation type="unfinished">ENTRAÎNEMENT</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeFrame</name>
    <message>
        <source>At the door</source>
        <translation type="unfinished">À la porte</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Finir et débriefer</translation>
    </message>
    <message>
        <source>PRACTICE: simulated doors, nothing here is a record</source>
        <translation type="unfinished">ENTRAÎNEMENT&#xa0;: portes simulées, rien ici n&apos;est un enregistrement</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeOffer</name>
    <message>
        <source>From practice</source>
        <translation type="unfinished">De l&apos;entraînement</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Utiliser ces valeurs</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeScreen</name>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Entraînement</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation type="unfinished">Leçons</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progrès</translation>
    </message>
    <message>
        <source>Put it aside</source>
        <translation type="unfinished">Le mettre de côté</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">Pas mis de côté</translation>
    </message>
    <message>
        <source>There is no exercise on this tablet. Import one.</source>
        <translation type="unfinished">Il n&apos;y a pas de leçon sur cette tablette. Importez-en une.</translation>
    </message>
    <message>
        <source>Import an exercise</source>
        <translation type="unfinished">Importer une leçon</translation>
    </message>
    <message>
        <source>simulated doors; nothing here is a record</source>
        <translation type="unfinished">portes simulées&#xa0;; rien ici n&apos;est un enregistrement</translation>
    </message>
    <message>
        <source>Unfinished exercise</source>
        <translation type="unfinished">Leçon inachevée</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What you recorded is kept; the doors are as they were at the start.</source>
        <translation type="unfinished">%1, commencée le %2 à %3. Ce que vous avez consigné est gardé&#xa0;; les portes sont comme au début.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Continuer</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">Non importé&#xa0;: une erreur</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">Non importé&#xa0;: %1 erreurs</translation>
    </message>
    <message>
        <source>Exercise imported</source>
        <translation type="unfinished">Leçon importée</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressBar</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1&#xa0;%</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressCard</name>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progrès</translation>
    </message>
    <message>
        <source>One exercise. </source>
        <translation type="unfinished">Une leçon. </translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished">%1 leçons. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Personnes mises en danger&#xa0;: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">sans nom</translation>
    </message>
    <message>
        <source>No one has practised on this tablet yet. Each finished exercise adds its score and reaction times here.</source>
        <translation type="unfinished">Personne ne s&apos;est encore entraîné sur cette tablette. Chaque leçon finie ajoute ici son score et ses temps de réaction.</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 reported but absent. </source>
        <translation type="unfinished">%1 défauts trouvés sur %2, %3 signalés mais absents. </translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressPlot</name>
    <message>
        <source>%1, exam: %2 %</source>
        <translation type="unfinished">%1, examen&#xa0;: %2&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished">%1&#xa0;: %2&#xa0;%</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progrès</translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished">Résultat de chaque leçon</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1&#xa0;%</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarme</translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished">départ</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">arrêt</translation>
    </message>
    <message>
        <source>exam pass mark %1 %</source>
        <translation type="unfinished">seuil de réussite de l&apos;examen %1&#xa0;%</translation>
    </message>
    <message>
        <source>Reaction, ms:</source>
        <translation type="unfinished">Réaction, ms&#xa0;:</translation>
    </message>
    <message>
        <source>, %1 %2, scatter %3 ms</source>
        <translation type="unfinished">, %1&#xa0;%2, dispersion %3 ms</translation>
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
        <translation type="unfinished">Rapport</translation>
    </message>
    <message>
        <source>Report: %1</source>
        <translation type="unfinished">Rapport&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewScreen</name>
    <message>
        <source>Compare ›</source>
        <translation type="unfinished">Comparer ›</translation>
    </message>
    <message>
        <source>Hand over ›</source>
        <translation type="unfinished">Transmettre ›</translation>
    </message>
    <message>
        <source>Sign ›</source>
        <translation type="unfinished">Signer ›</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
    </message>
    <message>
        <source>1 open</source>
        <translation type="unfinished">1 ouverte</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation type="unfinished">%1 ouvertes</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Rien d&apos;ouvert.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">Qui êtes-vous&#xa0;?</translation>
    </message>
    <message>
        <source>Write up (%1)</source>
        <translation type="unfinished">Rédiger (%1)</translation>
    </message>
    <message>
        <source>Plan retest (%1)</source>
        <translation type="unfinished">Retest (%1)</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished">Ouvertes</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Échéance</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation type="unfinished">Tranche</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished">Âge</translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Personne</translation>
    </message>
    <message>
        <source>‹ Open items</source>
        <translation type="unfinished">‹ Anomalies</translation>
    </message>
    <message>
        <source>Open it ›</source>
        <translation type="unfinished">Ouvrir ›</translation>
    </message>
    <message>
        <source>Documents ›</source>
        <translation type="unfinished">Documents ›</translation>
    </message>
    <message>
        <source>Who, documents, handover ›</source>
        <translation type="unfinished">Qui, documents, transmission ›</translation>
    </message>
    <message>
        <source>Who, documents ›</source>
        <translation type="unfinished">Qui, documents ›</translation>
    </message>
    <message>
        <source>Nothing is open yet. %1 checks are not in order and not written up.</source>
        <translation type="unfinished">Rien d&apos;ouvert encore. %1 vérifications ne sont pas en ordre et pas rédigées.</translation>
    </message>
    <message>
        <source>Recorded by: %1</source>
        <translation type="unfinished">Enregistré par&#xa0;: %1</translation>
    </message>
    <message>
        <source>Conflicts (%1)</source>
        <translation type="unfinished">Contradictions (%1)</translation>
    </message>
    <message>
        <source>Show closed (%1)</source>
        <translation type="unfinished">Voir clôturées (%1)</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewSheets</name>
    <message>
        <source>New: not in order now</source>
        <translation type="unfinished">Nouveau&#xa0;: plus en ordre</translation>
    </message>
    <message>
        <source>Worse than before</source>
        <translation type="unfinished">Pire qu&apos;avant</translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished">Mieux qu&apos;avant</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Deux tournées côte à côte</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished">%1
%2</translation>
    </message>
    <message>
        <source>What has changed</source>
        <translation type="unfinished">Ce qui a changé</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished">Avant</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Après</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation type="unfinished">Trancher</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2 %3:
%4</source>
        <translation type="unfinished">%1, %2 %3&#xa0;:
%4</translation>
    </message>
    <message>
        <source>Why does it stand?</source>
        <translation type="unfinished">Pourquoi celui-ci compte-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">La clé de cet appareil</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Voir</translation>
    </message>
    <message>
        <source>Its key: 64 digits and letters a to f, as that device shows them.</source>
        <translation type="unfinished">Sa clé&#xa0;: 64 chiffres et lettres de a à f, telle que cet appareil l&apos;affiche.</translation>
    </message>
    <message>
        <source>Key of the receiving device</source>
        <translation type="unfinished">Clé de l&apos;appareil destinataire</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished">De %1</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, en tant que %2, %3 %4&#xa0;: </translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Liste d&apos;anomalies</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Liste de travaux</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Fiche de porte</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Rapport de visite</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulaire vierge</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Rien à signer encore</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Signer une tournée</translation>
    </message>
    <message>
        <source>%1 has signed it.</source>
        <translation type="unfinished">%1 l&apos;a signée.</translation>
    </message>
    <message>
        <source>Sign as %1: %2</source>
        <translation type="unfinished">Signer en tant que %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished">Non signé</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Ajouter une personne</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Rédiger…</translation>
    </message>
    <message>
        <source>%1 (found again)</source>
        <translation type="unfinished">%1 (constaté de nouveau)</translation>
    </message>
    <message>
        <source>Write it up in these words</source>
        <translation type="unfinished">Rédiger dans ces termes</translation>
    </message>
    <message>
        <source>Write up all %1 in these words</source>
        <translation type="unfinished">Rédiger les %1 dans ces termes</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished">%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>, closing %1</source>
        <translation type="unfinished">, fermeture %1</translation>
    </message>
    <message>
        <source>Chart ›</source>
        <translation type="unfinished">Courbe ›</translation>
    </message>
    <message>
        <source>Photographs of door %1</source>
        <translation type="unfinished">Photos de la porte %1</translation>
    </message>
    <message>
        <source>Earlier: %1</source>
        <translation type="unfinished">Avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Later: %1</source>
        <translation type="unfinished">Après&#xa0;: %1</translation>
    </message>
    <message>
        <source>More walkdowns, earlier</source>
        <translation type="unfinished">Autres tournées, plus anciennes</translation>
    </message>
    <message>
        <source>More walkdowns, later</source>
        <translation type="unfinished">Autres tournées, plus récentes</translation>
    </message>
    <message>
        <source>Being saved</source>
        <translation type="unfinished">Enregistrement en cours</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Recueil des règles</translation>
    </message>
    <message>
        <source>Cleared: in order again</source>
        <translation type="unfinished">Levé&#xa0;: de nouveau en ordre</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation type="unfinished">non testé</translation>
    </message>
    <message>
        <source>There are not two walkdowns to compare yet.</source>
        <translation type="unfinished">Il n&apos;y a pas encore deux tournées à comparer.</translation>
    </message>
    <message>
        <source>%1 · %2: %3, was %4</source>
        <translation type="unfinished">%1 · %2&#xa0;: %3, avant %4</translation>
    </message>
    <message>
        <source>Nothing tested in both walkdowns has changed by more than the uncertainty.</source>
        <translation type="unfinished">Rien de ce qui a été testé dans les deux tournées n&apos;a changé de plus que l&apos;incertitude.</translation>
    </message>
    <message>
        <source>Conflicting entries: choose which stands; both stay on record</source>
        <translation type="unfinished">Entrées contradictoires&#xa0;: choisir celle qui compte&#xa0;; les deux restent consignées</translation>
    </message>
    <message>
        <source>No conflicting entries.</source>
        <translation type="unfinished">Aucune entrée contradictoire.</translation>
    </message>
    <message>
        <source>Which entry stands? The later one is shown until you decide.</source>
        <translation type="unfinished">Quelle entrée compte&#xa0;? La plus récente est affichée tant que vous n&apos;avez pas décidé.</translation>
    </message>
    <message>
        <source>Handover between tablets and the bridge</source>
        <translation type="unfinished">Transmission entre tablettes et passerelle</translation>
    </message>
    <message>
        <source>Export everything to a file</source>
        <translation type="unfinished">Tout exporter dans un fichier</translation>
    </message>
    <message>
        <source>entries, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">entrées, photos et disposition, signées par cet appareil</translation>
    </message>
    <message>
        <source>Export</source>
        <translation type="unfinished">Exporter</translation>
    </message>
    <message>
        <source>only that device can open it; you need its key</source>
        <translation type="unfinished">seul cet appareil peut l&apos;ouvrir&#xa0;; il vous faut sa clé</translation>
    </message>
    <message>
        <source>Import another device&apos;s file</source>
        <translation type="unfinished">Importer le fichier d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>it is checked first; nothing already here changes</source>
        <translation type="unfinished">il est d&apos;abord vérifié&#xa0;; rien de ce qui est déjà ici ne change</translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished">Importer</translation>
    </message>
    <message>
        <source>Not exported</source>
        <translation type="unfinished">Non exporté</translation>
    </message>
    <message>
        <source>Exporting everything to a file</source>
        <translation type="unfinished">Exportation de tout dans un fichier</translation>
    </message>
    <message>
        <source>No file was made. Nothing was handed over.</source>
        <translation type="unfinished">Aucun fichier n&apos;a été créé. Rien n&apos;a été transmis.</translation>
    </message>
    <message>
        <source>Exported</source>
        <translation type="unfinished">Exporté</translation>
    </message>
    <message>
        <source>The file is at %1</source>
        <translation type="unfinished">Le fichier est à l&apos;emplacement %1</translation>
    </message>
    <message>
        <source>Checking the file</source>
        <translation type="unfinished">Vérification du fichier</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation type="unfinished">Rien n&apos;a été importé.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">Non importé</translation>
    </message>
    <message>
        <source>New in this file</source>
        <translation type="unfinished">Nouveau dans ce fichier</translation>
    </message>
    <message>
        <source>Nothing new.</source>
        <translation type="unfinished">Rien de nouveau.</translation>
    </message>
    <message>
        <source>The sending device is not known here yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">L&apos;appareil expéditeur n&apos;est pas encore connu ici. Demandez à celui qui vous a donné le fichier de lire à haute voix l&apos;empreinte de sa clé. Ce doit être&#xa0;:
%1</translation>
    </message>
    <message>
        <source>Fingerprint matches: accept and import</source>
        <translation type="unfinished">L&apos;empreinte concorde&#xa0;: accepter et importer</translation>
    </message>
    <message>
        <source>Do not import</source>
        <translation type="unfinished">Ne pas importer</translation>
    </message>
    <message>
        <source>Importing the file</source>
        <translation type="unfinished">Importation du fichier</translation>
    </message>
    <message>
        <source>Nothing was imported. Everything here is as it was.</source>
        <translation type="unfinished">Rien n&apos;a été importé. Tout ici est comme avant.</translation>
    </message>
    <message>
        <source>NOT VALID: %1</source>
        <translation type="unfinished">NON VALABLE&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 entries, unchanged</source>
        <translation type="unfinished">%1 entrées, inchangées</translation>
    </message>
    <message>
        <source>; %1 came later and are not covered</source>
        <translation type="unfinished">; %1 sont venues après et ne sont pas couvertes</translation>
    </message>
    <message>
        <source>Documents, as PDF</source>
        <translation type="unfinished">Documents, en PDF</translation>
    </message>
    <message>
        <source>Create</source>
        <translation type="unfinished">Créer</translation>
    </message>
    <message>
        <source>Create: %1</source>
        <translation type="unfinished">Créer&#xa0;: %1</translation>
    </message>
    <message>
        <source>There is no walkdown yet: only the blank form and the rule book can be created.</source>
        <translation type="unfinished">Il n&apos;y a pas encore de tournée&#xa0;: seuls le formulaire vierge et le recueil des règles peuvent être créés.</translation>
    </message>
    <message>
        <source>for the master: what is open, its effect, interim measures</source>
        <translation type="unfinished">pour le capitaine&#xa0;: ce qui est ouvert, ses effets, les mesures provisoires</translation>
    </message>
    <message>
        <source>for the crew: by person assigned, with boxes to tick</source>
        <translation type="unfinished">pour l&apos;équipage&#xa0;: par personne désignée, avec des cases à cocher</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Fiche de porte&#xa0;: %1</translation>
    </message>
    <message>
        <source>one page: particulars, results, rectifications</source>
        <translation type="unfinished">une page&#xa0;: caractéristiques, résultats, rectifications</translation>
    </message>
    <message>
        <source>the walkdown shown: every door, every check</source>
        <translation type="unfinished">la tournée affichée&#xa0;: chaque porte, chaque vérification</translation>
    </message>
    <message>
        <source>what the tablet asks, to be filled in by hand</source>
        <translation type="unfinished">ce que demande la tablette, à remplir à la main</translation>
    </message>
    <message>
        <source>every requirement with its limit, dates, exemptions and text, and where it applies aboard</source>
        <translation type="unfinished">chaque exigence avec sa limite, ses dates, ses exemptions et son texte, et où elle s&apos;applique à bord</translation>
    </message>
    <message>
        <source>A walkdown can be signed once it has ended.</source>
        <translation type="unfinished">Une tournée peut être signée une fois finie.</translation>
    </message>
    <message>
        <source>No one has signed it yet.</source>
        <translation type="unfinished">Personne ne l&apos;a encore signée.</translation>
    </message>
    <message>
        <source>A signature covers everything recorded of this walkdown so far, under this device&apos;s key. It is not a qualified electronic signature: sign the paper as well where your Administration requires it.</source>
        <translation type="unfinished">Une signature couvre tout ce qui est consigné de cette tournée jusqu&apos;ici, sous la clé de cet appareil. Ce n&apos;est pas une signature électronique qualifiée&#xa0;: signez aussi le papier là où votre Administration l&apos;exige.</translation>
    </message>
    <message>
        <source>The signature is kept and will be saved automatically in a moment.</source>
        <translation type="unfinished">La signature est gardée et sera enregistrée automatiquement dans un instant.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">Qui êtes-vous&#xa0;?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Quelqu&apos;un d&apos;autre</translation>
    </message>
    <message>
        <source>Checks not in order and not written up</source>
        <translation type="unfinished">Vérifications pas en ordre et pas rédigées</translation>
    </message>
    <message>
        <source>History of door %1</source>
        <translation type="unfinished">Historique de la porte %1</translation>
    </message>
    <message>
        <source>Walkdowns of this door, latest first</source>
        <translation type="unfinished">Tournées de cette porte, la plus récente d&apos;abord</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Historique des temps</translation>
    </message>
    <message>
        <source>Nothing has been recorded for this door yet.</source>
        <translation type="unfinished">Rien n&apos;a encore été consigné pour cette porte.</translation>
    </message>
    <message>
        <source>Language of the document</source>
        <translation type="unfinished">Langue du document</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a translation.</source>
        <translation type="unfinished">Ce qui est signé est l&apos;enregistrement en anglais. Un document dans une autre langue est marqué comme traduction.</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a machine translation, not yet checked.</source>
        <translation type="unfinished">Ce qui est signé est l&apos;enregistrement en anglais. Un document dans une autre langue est marqué comme traduction automatique, pas encore vérifiée.</translation>
    </message>
    <message>
        <source>Export for one device only</source>
        <translation type="unfinished">Exporter pour un seul appareil</translation>
    </message>
    <message>
        <source>for a file that only this device can open</source>
        <translation type="unfinished">pour un fichier que seul cet appareil peut ouvrir</translation>
    </message>
    <message>
        <source>Export for which device?</source>
        <translation type="unfinished">Exporter pour quel appareil&#xa0;?</translation>
    </message>
    <message>
        <source>Export for that device</source>
        <translation type="unfinished">Exporter pour cet appareil-là</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1 à %2 sur %3</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 sur %3</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation type="unfinished">Page précédente</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished">Page suivante</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Précédent</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Imprimer ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Imprimer le recueil des règles</translation>
    </message>
    <message>
        <source>The requirement in full</source>
        <translation type="unfinished">L&apos;exigence en entier</translation>
    </message>
    <message>
        <source>‹ List</source>
        <translation type="unfinished">‹ Liste</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">des mots ou une référence</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Recueil des règles</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">porte %1</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Tout</translation>
    </message>
    <message>
        <source>No requirement has these words.</source>
        <translation type="unfinished">Aucune exigence ne contient ces mots.</translation>
    </message>
    <message>
        <source>Find requirements by words or citation</source>
        <translation type="unfinished">Chercher des exigences par mots ou référence</translation>
    </message>
    <message>
        <source>Requirements of the rule book</source>
        <translation type="unfinished">Exigences du recueil des règles</translation>
    </message>
    <message>
        <source>Read ›</source>
        <translation type="unfinished">Lire ›</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Ce navire</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Cette porte</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RunResult</name>
    <message>
        <source>closing time</source>
        <translation type="unfinished">temps de fermeture</translation>
    </message>
    <message>
        <source>closing rate</source>
        <translation type="unfinished">vitesse de fermeture</translation>
    </message>
    <message>
        <source>alarm before movement</source>
        <translation type="unfinished">alarme avant mouvement</translation>
    </message>
    <message>
        <source>alarm after shut</source>
        <translation type="unfinished">alarme après fermeture</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished">%1 %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Run again</source>
        <translation type="unfinished">Refaire</translation>
    </message>
    <message>
        <source>Back to the door ›</source>
        <translation type="unfinished">Retour à la porte ›</translation>
    </message>
    <message>
        <source>Run complete</source>
        <translation type="unfinished">Essai complet</translation>
    </message>
    <message>
        <source>Say why ›</source>
        <translation type="unfinished">Dire pourquoi ›</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">Pourquoi ?</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Les deux sont justes</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Retirer « %1 »</translation>
    </message>
    <message>
        <source>no alarm marked: %1</source>
        <translation type="unfinished">aucune alarme marquée&#xa0;: %1</translation>
    </message>
    <message>
        <source>All runs of this door: %1 %2: %3</source>
        <translation type="unfinished">Tous les essais de cette porte&#xa0;: %1&#xa0;%2&#xa0;: %3</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart: no leaf moves that fast. Touched by mistake?</source>
        <translation type="unfinished">«&#xa0;%1&#xa0;» et «&#xa0;%2&#xa0;» ne sont séparés que de %3 s&#xa0;: aucun vantail ne va si vite. Touché par erreur&#xa0;?</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart. One touch too many?</source>
        <translation type="unfinished">«&#xa0;%1&#xa0;» et «&#xa0;%2&#xa0;» ne sont séparés que de %3 s. Touché une fois de trop&#xa0;?</translation>
    </message>
    <message>
        <source>Yes: void the run</source>
        <translation type="unfinished">Oui&#xa0;: essai nul</translation>
    </message>
    <message>
        <source>Say “%1” now</source>
        <translation type="unfinished">Dites «&#xa0;%1&#xa0;» maintenant</translation>
    </message>
    <message>
        <source>Run void</source>
        <translation type="unfinished">Essai nul</translation>
    </message>
    <message>
        <source>Run stopped: recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Essai arrêté&#xa0;: consigné, ne compte jamais comme mesure. Pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Consigné, ne compte jamais comme mesure. Pourquoi&#xa0;?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneScreen</name>
    <message>
        <source>Other side</source>
        <translation type="unfinished">Autre côté</translation>
    </message>
    <message>
        <source>‹ Whole door</source>
        <translation type="unfinished">‹ Porte entière</translation>
    </message>
    <message>
        <source>Lift the cover</source>
        <translation type="unfinished">Lever le volet</translation>
    </message>
    <message>
        <source>Push the leaf</source>
        <translation type="unfinished">Pousser le vantail</translation>
    </message>
    <message>
        <source>Open it, let go</source>
        <translation type="unfinished">Ouvrir, lâcher</translation>
    </message>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Dégager la course</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows</source>
        <translation type="unfinished">Demander au poste de sécurité ce qu&apos;indique son tableau</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">côté deux</translation>
    </message>
    <message>
        <source>side one</source>
        <translation type="unfinished">côté un</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">À la porte %1</translation>
    </message>
    <message>
        <source>You open it from side two and let go.</source>
        <translation type="unfinished">Vous l&apos;ouvrez du côté deux et lâchez.</translation>
    </message>
    <message>
        <source>You open it from side one and let go.</source>
        <translation type="unfinished">Vous l&apos;ouvrez du côté un et lâchez.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Porte</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Regarder</translation>
    </message>
    <message>
        <source>The whole door</source>
        <translation type="unfinished">Toute la porte</translation>
    </message>
    <message>
        <source>It is not shut. Time its closing first.</source>
        <translation type="unfinished">Elle n&apos;est pas fermée. Chronométrez d&apos;abord sa fermeture.</translation>
    </message>
    <message>
        <source>You push it hard from the other side.</source>
        <translation type="unfinished">Vous la poussez fort de l&apos;autre côté.</translation>
    </message>
    <message>
        <source>The way is clear now.</source>
        <translation type="unfinished">Le passage est maintenant dégagé.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished">Tester</translation>
    </message>
    <message>
        <source>Test and ask</source>
        <translation type="unfinished">Tester et demander</translation>
    </message>
    <message>
        <source>Close-up</source>
        <translation type="unfinished">Gros plan</translation>
    </message>
    <message>
        <source>Panel status</source>
        <translation type="unfinished">État au tableau</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneView</name>
    <message>
        <source>Drawing of a door</source>
        <translation type="unfinished">Dessin d&apos;une porte</translation>
    </message>
    <message>
        <source>Drawing of door %1, %2, from side %3</source>
        <translation type="unfinished">Dessin de la porte %1, %2, vue du côté %3</translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished">deux</translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished">un</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarme</translation>
    </message>
    <message>
        <source>The leaf is moving</source>
        <translation type="unfinished">Le vantail est en mouvement</translation>
    </message>
    <message>
        <source>The leaf is shut</source>
        <translation type="unfinished">Le vantail est fermé</translation>
    </message>
    <message>
        <source>The leaf is open</source>
        <translation type="unfinished">Le vantail est ouvert</translation>
    </message>
    <message>
        <source>The leaf is part open</source>
        <translation type="unfinished">Le vantail est en partie ouvert</translation>
    </message>
    <message>
        <source>someone is in the opening</source>
        <translation type="unfinished">quelqu&apos;un est dans l&apos;ouverture</translation>
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
        <translation type="unfinished">1 personne mise en danger</translation>
    </message>
    <message>
        <source>%1 people endangered</source>
        <translation type="unfinished">%1 personnes mises en danger</translation>
    </message>
    <message>
        <source>Passed: %1 % required</source>
        <translation type="unfinished">Réussi&#xa0;: %1&#xa0;% exigés</translation>
    </message>
    <message>
        <source>Not passed: %1 % required</source>
        <translation type="unfinished">Non réussi&#xa0;: %1&#xa0;% exigés</translation>
    </message>
    <message>
        <source>%1 of %2 checks graded correctly</source>
        <translation type="unfinished">%1 vérifications sur %2 correctement évaluées</translation>
    </message>
    <message>
        <source>1 caution falsely confirmed</source>
        <translation type="unfinished">1 précaution confirmée à tort</translation>
    </message>
    <message>
        <source>%1 cautions falsely confirmed</source>
        <translation type="unfinished">%1 précautions confirmées à tort</translation>
    </message>
    <message>
        <source>Half for checks graded correctly, half for faults found, out of all that were there or reported. Ten points off for each person endangered and each caution falsely confirmed.</source>
        <translation type="unfinished">La moitié pour les vérifications correctement évaluées, l&apos;autre pour les défauts trouvés, sur tous ceux qui existaient ou ont été signalés. Dix points de moins par personne mise en danger et par précaution confirmée à tort.</translation>
    </message>
    <message>
        <source>Score: %1 per cent</source>
        <translation type="unfinished">Score&#xa0;: %1 pour cent</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 false</source>
        <translation type="unfinished">%1 défauts trouvés sur %2, %3 faux</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Éclairage</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Jour</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Soir</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Nuit</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Taille</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished">100&#xa0;%</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation type="unfinished">150&#xa0;%</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation type="unfinished">200&#xa0;%</translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished">Gants</translation>
    </message>
    <message>
        <source>Larger keys, further apart.</source>
        <translation type="unfinished">Touches plus grandes, plus espacées.</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Mains nues</translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished">Quand un repère est pris</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Unités</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished">Métriques</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished">US usuelles</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Langue</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Choisir</translation>
    </message>
    <message>
        <source>Times and limits</source>
        <translation type="unfinished">Temps et limites</translation>
    </message>
    <message>
        <source>When a figure passes</source>
        <translation type="unfinished">Quand une valeur passe</translation>
    </message>
    <message>
        <source>Rules of this vessel</source>
        <translation type="unfinished">Règles de ce navire</translation>
    </message>
    <message>
        <source>Night keeps eyes adapted to a dark bridge.</source>
        <translation type="unfinished">Nuit garde les yeux adaptés à une passerelle obscure.</translation>
    </message>
    <message>
        <source>Of text and keys; what no longer fits moves to a page of its own.</source>
        <translation type="unfinished">Du texte et des touches&#xa0;; ce qui ne tient plus passe sur une page à part.</translation>
    </message>
    <message>
        <source>A click and a vibration, where this device has them.</source>
        <translation type="unfinished">Un clic et une vibration, si cet appareil en est capable.</translation>
    </message>
    <message>
        <source>Click and vibrate</source>
        <translation type="unfinished">Clic et vibration</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation type="unfinished">Silencieux</translation>
    </message>
    <message>
        <source>Limits also keep the unit of the rule text, beside the figure.</source>
        <translation type="unfinished">Les limites gardent aussi l&apos;unité du texte de la règle, à côté de la valeur.</translation>
    </message>
    <message>
        <source>In a plan, first choose who is recording: times depend on it.</source>
        <translation type="unfinished">Dans un plan, choisir d&apos;abord qui enregistre&#xa0;: les temps en dépendent.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Test de réaction</translation>
    </message>
    <message>
        <source>Catalogue only; no flag rules added.</source>
        <translation type="unfinished">Catalogue seul&#xa0;; aucune règle de pavillon ajoutée.</translation>
    </message>
    <message>
        <source>The rules of %1 take precedence over the catalogue.</source>
        <translation type="unfinished">Les règles de %1 priment sur le catalogue.</translation>
    </message>
    <message>
        <source>Import flag rules</source>
        <translation type="unfinished">Importer des règles</translation>
    </message>
    <message>
        <source>Catalogue only</source>
        <translation type="unfinished">Catalogue seul</translation>
    </message>
    <message>
        <source>Leaf drawings</source>
        <translation type="unfinished">Dessins des vantaux</translation>
    </message>
    <message>
        <source>How drawn leaves move as a door closes.</source>
        <translation type="unfinished">Comment bougent les vantaux dessinés quand une porte se ferme.</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation type="unfinished">Fluide</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation type="unfinished">Par paliers</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Sheet</name>
    <message>
        <source>Close</source>
        <translation type="unfinished">Fermer</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SheetPages</name>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Précédent</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SideKeys</name>
    <message>
        <source>Stop the test</source>
        <translation type="unfinished">Arrêter le test</translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation type="unfinished">Retirer le dernier repère</translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Repères</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Retirer</translation>
    </message>
    <message>
        <source>Take back
last mark</source>
        <translation type="unfinished">Retirer
le repère</translation>
    </message>
    <message>
        <source>This run is void: run again</source>
        <translation type="unfinished">Cet essai est nul&#xa0;: refaire</translation>
    </message>
    <message>
        <source>Show the side marks</source>
        <translation type="unfinished">Montrer les repères latéraux</translation>
    </message>
    <message>
        <source>Show take back and void</source>
        <translation type="unfinished">Montrer retirer et nul</translation>
    </message>
    <message>
        <source>Void</source>
        <translation type="unfinished">Nul</translation>
    </message>
    <message>
        <source>Void,
run again</source>
        <translation type="unfinished">Nul,
refaire</translation>
    </message>
    <message>
        <source>Correct ›</source>
        <translation type="unfinished">Corriger ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Précédent</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StepRows</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished">Mesurer</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Force de fermeture au bord, au peson</translation>
    </message>
    <message>
        <source>What does the plate on the door read?</source>
        <translation type="unfinished">Que lit-on sur la plaque de la porte&#xa0;?</translation>
    </message>
    <message>
        <source>Read plate</source>
        <translation type="unfinished">Lire plaque</translation>
    </message>
    <message>
        <source>Fire tables</source>
        <translation type="unfinished">Tableaux</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Déclenchement %1</translation>
    </message>
    <message>
        <source>Type in</source>
        <translation type="unfinished">Saisir</translation>
    </message>
    <message>
        <source>Time it ›</source>
        <translation type="unfinished">Chrono ›</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Contact avec un bloc souple, jamais une main</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Gîte actuelle</translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished">Changer</translation>
    </message>
    <message>
        <source>not yet measured</source>
        <translation type="unfinished">pas encore mesuré</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation type="unfinished">pas encore lue</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation type="unfinished">%1 degrés</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished">mesuré %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Gîte du navire à cette porte</translation>
    </message>
    <message>
        <source>What class does the boundary require?</source>
        <translation type="unfinished">Quelle classe le cloisonnement exige-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Tested by %1, %2 at %3</source>
        <translation type="unfinished">Testé par %1, le %2 à %3</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">pas encore testé</translation>
    </message>
    <message>
        <source>%1 degrees: over 1 degree, times are advice only</source>
        <translation type="unfinished">%1 degrés&#xa0;: au-delà de 1 degré, les temps ne sont qu&apos;une recommandation</translation>
    </message>
    <message>
        <source>Type y, n or a: yes, no or n/a for the check with the bar.</source>
        <translation type="unfinished">Tapez y, n ou a&#xa0;: oui, non ou s.o. pour la vérification marquée d&apos;une barre.</translation>
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
        <translation type="unfinished">contact</translation>
    </message>
    <message>
        <source>release %1</source>
        <translation type="unfinished">déclenchement %1</translation>
    </message>
    <message>
        <source> · cautions confirmed by %1</source>
        <translation type="unfinished"> · précautions confirmées par %1</translation>
    </message>
    <message>
        <source>Door %1 · run %2</source>
        <translation type="unfinished">Porte %1 · essai %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Non enregistré</translation>
    </message>
    <message>
        <source>Alarm before movement</source>
        <translation type="unfinished">Alarme avant mouvement</translation>
    </message>
    <message>
        <source>Leaf moving</source>
        <translation type="unfinished">Vantail en mouvement</translation>
    </message>
    <message>
        <source> (advice only)</source>
        <translation type="unfinished"> (simple recommandation)</translation>
    </message>
    <message>
        <source>marked: %1. Next: %2</source>
        <translation type="unfinished">marqué&#xa0;: %1. Suivant&#xa0;: %2</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">enregistrement…</translation>
    </message>
    <message>
        <source>Moves,
no alarm</source>
        <translation type="unfinished">Bouge,
sans alarme</translation>
    </message>
    <message>
        <source>Late
alarm</source>
        <translation type="unfinished">Alarme
tardive</translation>
    </message>
    <message>
        <source>no marks yet</source>
        <translation type="unfinished">pas encore de repères</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Fin d&apos;alarme</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TopBar</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Défaire</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Retour</translation>
    </message>
    <message>
        <source>%1 of %2 doors</source>
        <translation type="unfinished">%1 portes sur %2</translation>
    </message>
    <message>
        <source>Undo: nothing to take back</source>
        <translation type="unfinished">Défaire&#xa0;: rien à retirer</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Jour</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Soir</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Nuit</translation>
    </message>
    <message>
        <source>Light: %1. Press for the next</source>
        <translation type="unfinished">Éclairage&#xa0;: %1. Appuyez pour le suivant</translation>
    </message>
    <message>
        <source>Undo: see what can be taken back</source>
        <translation type="unfinished">Défaire&#xa0;: voir ce qui peut être retiré</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TrendChart</name>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Depuis la réparation vers %1&#xa0;: </translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, variant de %2 par an. </translation>
    </message>
    <message>
        <source>One timing</source>
        <translation type="unfinished">Un temps</translation>
    </message>
    <message>
        <source>%1 timings</source>
        <translation type="unfinished">%1 temps</translation>
    </message>
    <message>
        <source>%1 so far, too few to predict from: five over at least a year are needed.</source>
        <translation type="unfinished">%1 jusqu&apos;ici, trop peu pour prévoir&#xa0;: il en faut cinq sur un an au moins.</translation>
    </message>
    <message>
        <source>Expect a result beyond %1 now: the 95 % interval already reaches it.</source>
        <translation type="unfinished">Attendez-vous maintenant à un résultat au-delà de %1&#xa0;: l&apos;intervalle à 95&#xa0;% l&apos;atteint déjà.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have the door serviced before then.</source>
        <translation type="unfinished">L&apos;intervalle à 95&#xa0;% atteint %1 pour la première fois en %2&#xa0;: faites entretenir la porte avant.</translation>
    </message>
    <message>
        <source>No limit is reached by %1; these timings say nothing beyond that.</source>
        <translation type="unfinished">Aucune limite n&apos;est atteinte d&apos;ici %1&#xa0;; au-delà, ces temps ne disent rien.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TypedRun</name>
    <message>
        <source>Were the cautions ticked on the paper?</source>
        <translation type="unfinished">Les précautions étaient-elles cochées sur le papier&#xa0;?</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation type="unfinished">Toutes</translation>
    </message>
    <message>
        <source>Not all: enter the run without them</source>
        <translation type="unfinished">Pas toutes&#xa0;: saisir l&apos;essai sans elles</translation>
    </message>
    <message>
        <source>from “%1” to “%2”</source>
        <translation type="unfinished">de «&#xa0;%1&#xa0;» à «&#xa0;%2&#xa0;»</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>No alarm sounded</source>
        <translation type="unfinished">Aucune alarme n&apos;a sonné</translation>
    </message>
    <message>
        <source>Did an alarm sound?</source>
        <translation type="unfinished">Une alarme a-t-elle sonné ?</translation>
    </message>
    <message>
        <source>From paper: release %1</source>
        <translation type="unfinished">D&apos;après papier&#xa0;: déclenchement %1</translation>
    </message>
    <message>
        <source>No leaf moves that fast. Check the figure and type it again.</source>
        <translation type="unfinished">Aucun vantail ne va si vite. Vérifiez la valeur et saisissez-la de nouveau.</translation>
    </message>
    <message>
        <source>Yes: type the seconds</source>
        <translation type="unfinished">Oui&#xa0;: saisir les secondes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Porte %1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>Checks at this door, worst first</source>
        <translation type="unfinished">Vérifications à cette porte, la pire d&apos;abord</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return for the reason</source>
        <translation type="unfinished">appuyez sur Entrée pour le motif</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselCard</name>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Ce navire</translation>
    </message>
    <message>
        <source>No walkdown yet.</source>
        <translation type="unfinished">Pas encore de tournée.</translation>
    </message>
    <message>
        <source>Due ›</source>
        <translation type="unfinished">Échéances ›</translation>
    </message>
    <message>
        <source>Other vessels</source>
        <translation type="unfinished">Autres navires</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Réglages</translation>
    </message>
    <message>
        <source>All %1 walkdowns</source>
        <translation type="unfinished">Les %1 tournées</translation>
    </message>
    <message>
        <source>All %1 walkdowns ›</source>
        <translation type="unfinished">Les %1 tournées ›</translation>
    </message>
    <message>
        <source>All %1 ›</source>
        <translation type="unfinished">Tout (%1) ›</translation>
    </message>
    <message>
        <source>Practice ›</source>
        <translation type="unfinished">Entraînement ›</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Échéances</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselChoice</name>
    <message>
        <source>This vessel cannot be opened</source>
        <translation type="unfinished">Ce navire ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Navires sur cette tablette</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished">Réessayer</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Ouvrir</translation>
    </message>
    <message>
        <source>Import a register (CSV)</source>
        <translation type="unfinished">Importer un registre (CSV)</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkdownCard</name>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Les portes</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Finir la tournée</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">faites</translation>
    </message>
    <message>
        <source>Walkdown under way</source>
        <translation type="unfinished">Tournée en cours</translation>
    </message>
    <message>
        <source>No walkdown under way</source>
        <translation type="unfinished">Aucune tournée en cours</translation>
    </message>
    <message>
        <source>%1, %2. Begun %3 at %4 by %5</source>
        <translation type="unfinished">%1, %2. Commencée le %3 à %4 par %5</translation>
    </message>
    <message>
        <source>Begin a walkdown ›</source>
        <translation type="unfinished">Commencer une tournée ›</translation>
    </message>
    <message>
        <source>All doors done: end the walkdown ›</source>
        <translation type="unfinished">Toutes les portes faites&#xa0;: finir la tournée ›</translation>
    </message>
    <message>
        <source>Carry on at %1 ›</source>
        <translation type="unfinished">Reprendre à %1 ›</translation>
    </message>
    <message>
        <source>Look at the doors ›</source>
        <translation type="unfinished">Voir les portes ›</translation>
    </message>
    <message>
        <source>SAT</source>
        <translation type="unfinished">SAT</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation type="unfinished">à trancher</translation>
    </message>
    <message>
        <source>UNSAT</source>
        <translation type="unfinished">NON SAT</translation>
    </message>
    <message>
        <source>This register lists no doors yet, so no walkdown can begin. Import one that lists them.</source>
        <translation type="unfinished">Ce registre ne contient pas encore de portes&#xa0;; aucune tournée ne peut donc commencer. Importez-en un qui les contient.</translation>
    </message>
    <message>
        <source>Nothing has been tested yet with this register. A walkdown begins with a plan: who, which doors, in what order.</source>
        <translation type="unfinished">Rien n&apos;a encore été testé avec ce registre. Une tournée commence par un plan&#xa0;: qui, quelles portes, dans quel ordre.</translation>
    </message>
    <message>
        <source>Last walkdown: %1, %2. Ended %3</source>
        <translation type="unfinished">Dernière tournée&#xa0;: %1, %2. Finie le %3</translation>
    </message>
    <message>
        <source>Import a register ›</source>
        <translation type="unfinished">Importer un registre ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
    <message>
        <source>From paper: on which day?</source>
        <translation type="unfinished">D’après le papier : quel jour ?</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">aujourd&apos;hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished">hier</translation>
    </message>
    <message>
        <source>two days ago</source>
        <translation type="unfinished">il y a deux jours</translation>
    </message>
    <message>
        <source>From paper: at what time?</source>
        <translation type="unfinished">D’après le papier : à quelle heure ?</translation>
    </message>
    <message>
        <source>From paper: who tested the door?</source>
        <translation type="unfinished">D&apos;après papier&#xa0;: qui a testé la porte&#xa0;?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Quelqu&apos;un d&apos;autre</translation>
    </message>
    <message>
        <source>ship&apos;s time at this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">heure du bord à cette porte, heures et minutes&#xa0;: 1432 est 14:32</translation>
    </message>
    <message>
        <source>That is in the future.</source>
        <translation type="unfinished">C&apos;est dans le futur.</translation>
    </message>
    <message>
        <source>That is not a valid time.</source>
        <translation type="unfinished">Ce n&apos;est pas une heure valable.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished">Satisfaisant</translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished">Non satisfaisant</translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished">Pourquoi ce résultat</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished">Mesuré</translation>
    </message>
    <message>
        <source> (k = 2)</source>
        <translation type="unfinished"> (k = 2)</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Limite</translation>
    </message>
    <message>
        <source>%1, set by %2</source>
        <translation type="unfinished">%1, fixée par %2</translation>
    </message>
    <message>
        <source>On an inclined ship</source>
        <translation type="unfinished">Sur un navire incliné</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation type="unfinished">Ce qu&apos;il faut chercher</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texte</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1&#xa0;; une règle de %2</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Pourquoi&#xa0;: %1</translation>
    </message>
    <message>
        <source>You decide. Give the reason first:</source>
        <translation type="unfinished">À vous de décider. Donnez d&apos;abord le motif&#xa0;:</translation>
    </message>
    <message>
        <source>What would decide it</source>
        <translation type="unfinished">Ce qui permettrait de décider</translation>
    </message>
    <message>
        <source>Applies because</source>
        <translation type="unfinished">S&apos;applique car</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Source</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Gravité</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Window</name>
    <message>
        <source>Not armed</source>
        <translation type="unfinished">Non armé</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">NON ENREGISTRÉ (%1)</translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation type="unfinished">enregistré %1</translation>
    </message>
    <message>
        <source>%1 ship (%2)</source>
        <translation type="unfinished">%1 bord (%2)</translation>
    </message>
    <message>
        <source>PRACTICE · %1 · Latchround</source>
        <translation type="unfinished">ENTRAÎNEMENT · %1 · Latchround</translation>
    </message>
    <message>
        <source>End this exercise?</source>
        <translation type="unfinished">Terminer cette leçon&#xa0;?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Toutes les portes sont faites.</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Finir et débriefer</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Réglages</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Langue</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">En service</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Choisir</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Plus tard</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Quand une valeur passe ou échoue</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation type="unfinished">Non fait</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Photo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished">Fermer</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Catalogue</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp)</source>
        <translation type="unfinished">Images (*.jpg *.jpeg *.png *.webp *.bmp)</translation>
    </message>
    <message>
        <source>%1 doors, %2 zones</source>
        <translation type="unfinished">%1 portes, %2 tranches</translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Registre CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Règles (*.json)</translation>
    </message>
    <message>
        <source>1 walkdown</source>
        <translation type="unfinished">1 tournée</translation>
    </message>
    <message>
        <source>%1 walkdowns</source>
        <translation type="unfinished">%1 tournées</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation type="unfinished">1 personne</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation type="unfinished">%1 personnes</translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation type="unfinished">1 photo</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation type="unfinished">%1 photos</translation>
    </message>
    <message>
        <source>1 issue of the arrangement</source>
        <translation type="unfinished">1 version de la disposition</translation>
    </message>
    <message>
        <source>%1 issues of the arrangement</source>
        <translation type="unfinished">%1 versions de la disposition</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished">Non affiché</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Fichiers de transmission (*.zip)</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">appareil %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished">Leçons (*.json)</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation type="unfinished">Non consigné</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">Fermer le programme ?</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Non lu</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">enregistrement…</translation>
    </message>
    <message>
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing the program loses them.</source>
        <translation type="unfinished">%1 entrées ne sont PAS enregistrées et n&apos;ont pu être gardées ailleurs. Fermer le programme les perd.</translation>
    </message>
    <message>
        <source>What you wrote in the open sheet has not been recorded. Closing the program loses it.</source>
        <translation type="unfinished">Ce que vous avez écrit dans la feuille ouverte n&apos;est pas encore consigné. Fermer le programme le perd.</translation>
    </message>
    <message>
        <source>Do not close</source>
        <translation type="unfinished">Ne pas fermer</translation>
    </message>
    <message>
        <source>Close anyway</source>
        <translation type="unfinished">Fermer quand même</translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tested counts as not found.</source>
        <translation type="unfinished">%1 faites sur %2. Ce qui n&apos;a pas été testé compte comme non trouvé.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Continuer</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Non enregistré</translation>
    </message>
    <message>
        <source>This takes effect when the exercise ends.</source>
        <translation type="unfinished">Cela prend effet à la fin de la leçon.</translation>
    </message>
    <message>
        <source>Whose reaction time?</source>
        <translation type="unfinished">Temps de réaction de qui&#xa0;?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records it.</source>
        <translation type="unfinished">Planifiez d&apos;abord une tournée et dites qui l&apos;enregistre.</translation>
    </message>
    <message>
        <source>%1 has not done the timing drill on this tablet: published figures apply.</source>
        <translation type="unfinished">%1 n&apos;a pas fait le test de réaction sur cette tablette&#xa0;: les valeurs publiées s&apos;appliquent.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 a fait le test de réaction le %2&#xa0;; à répéter depuis le %3.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 a fait le test de réaction le %2&#xa0;; à répéter après le %3.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">Non importé</translation>
    </message>
    <message>
        <source>Take photograph</source>
        <translation type="unfinished">Prendre la photo</translation>
    </message>
    <message>
        <source>Checking the register</source>
        <translation type="unfinished">Vérification du registre</translation>
    </message>
    <message>
        <source>There is no program here that shows PDF files. The file is at %1</source>
        <translation type="unfinished">Il n&apos;y a pas ici de programme qui affiche les fichiers PDF. Le fichier est à l&apos;emplacement %1</translation>
    </message>
    <message>
        <source>Import an instructor&apos;s exercise</source>
        <translation type="unfinished">Importer la leçon d&apos;un instructeur</translation>
    </message>
    <message>
        <source>Import a flag&apos;s rules</source>
        <translation type="unfinished">Importer les règles d&apos;un pavillon</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entrée</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entrées</translation>
    </message>
    <message>
        <source>1 door not known here</source>
        <translation type="unfinished">1 porte inconnue ici</translation>
    </message>
    <message>
        <source>%1 doors not known here</source>
        <translation type="unfinished">%1 portes inconnues ici</translation>
    </message>
    <message>
        <source>1 conflicting entry to decide</source>
        <translation type="unfinished">1 entrée contradictoire à trancher</translation>
    </message>
    <message>
        <source>%1 conflicting entries to decide</source>
        <translation type="unfinished">%1 entrées contradictoires à trancher</translation>
    </message>
    <message>
        <source>Export a handover file</source>
        <translation type="unfinished">Exporter un fichier de transmission</translation>
    </message>
    <message>
        <source>Import a handover file</source>
        <translation type="unfinished">Importer un fichier de transmission</translation>
    </message>
    <message>
        <source>Import a vessel&apos;s register</source>
        <translation type="unfinished">Importer le registre d&apos;un navire</translation>
    </message>
    <message>
        <source>A run is being timed: a leaf may be moving. Closing the program stops the timing, not the leaf.</source>
        <translation type="unfinished">Un essai est en cours de chronométrage&#xa0;: un vantail bouge peut-être. Fermer le programme arrête le chronométrage, pas le vantail.</translation>
    </message>
    <message>
        <source>Records and signatures are in English; documents can also be printed as a translation, marked as one. What you write stays as written.</source>
        <translation type="unfinished">Les enregistrements et les signatures sont en anglais&#xa0;; les documents peuvent aussi être imprimés en traduction, marquée comme telle. Ce que vous écrivez reste tel quel.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">porte %1 pont %2 %3</translation>
    </message>
    <message>
        <source>bulkhead %1: %2</source>
        <translation type="unfinished">cloison %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished">aucune porte</translation>
    </message>
    <message>
        <source>Zone profile</source>
        <translation type="unfinished">Profil des tranches</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Tout</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">et %1 de plus</translation>
    </message>
    <message>
        <source>This register has no doors yet.</source>
        <translation type="unfinished">Ce registre n&apos;a pas encore de portes.</translation>
    </message>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">porte %1, pont %2, %3</translation>
    </message>
    <message>
        <source>door %1 %2</source>
        <translation type="unfinished">porte %1 %2</translation>
    </message>
    <message>
        <source>deck %1, other doors: %2</source>
        <translation type="unfinished">pont %1, autres portes&#xa0;: %2</translation>
    </message>
    <message>
        <source>Which door?</source>
        <translation type="unfinished">Quelle porte&#xa0;?</translation>
    </message>
    <message>
        <source>zoom in</source>
        <translation type="unfinished">agrandir</translation>
    </message>
    <message>
        <source>zoom out</source>
        <translation type="unfinished">réduire</translation>
    </message>
    <message>
        <source>whole ship</source>
        <translation type="unfinished">tout le navire</translation>
    </message>
    <message>
        <source>bulkhead %1 is open: %2</source>
        <translation type="unfinished">la cloison %1 est ouverte&#xa0;: %2</translation>
    </message>
</context>
</TS>
