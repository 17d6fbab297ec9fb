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
        <source>mending door %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">réparer la porte %1 de la cloison %2 rétablit le plus</translation>
    </message>
    <message>
        <source>mending doors %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">réparer les portes %1 de la cloison %2 rétablit le plus</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkhead %1</source>
        <translation type="unfinished">pas encore démontrée&#xa0;: cloison %1</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkheads %1</source>
        <translation type="unfinished">pas encore démontrées&#xa0;: cloisons %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">cloison %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, %3 pour %4, au plus %5%6</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">cloisons %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, %3 pour %4, au plus %5%6</translation>
    </message>
    <message>
        <source>, %1 against %2</source>
        <translation type="unfinished">, %1 pour %2</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">cloison %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, %3 pour %4%5</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">cloisons %1&#xa0;: les tranches %2 n&apos;en font qu&apos;une, %3 pour %4%5</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Lamps of the fire door control panels are tried</source>
        <translation type="unfinished">Les lampes des tableaux de commande des portes d&apos;incendie sont essayées</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is worked locally</source>
        <translation type="unfinished">Chaque porte d&apos;incendie d&apos;une cloison de tranche verticale principale est manœuvrée localement</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tried for proper release</source>
        <translation type="unfinished">Les portes d&apos;incendie télécommandées sont essayées pour vérifier leur déclenchement</translation>
    </message>
    <message>
        <source>Plate present and legible, and it reads as the register says</source>
        <translation type="unfinished">Plaque présente et lisible, et conforme au registre</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, scoured, or another class than the register&apos;s. No SOLAS paragraph was found that asks for a plate: where it is missing ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Lisez-la sur la porte même. Mauvais&#xa0;: peinte, usée, ou d&apos;une autre classe que celle du registre. Aucun paragraphe de SOLAS exigeant une plaque n&apos;a été trouvé&#xa0;: si elle manque, demandez le certificat&#xa0;; ce n&apos;est pas un motif de refus.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip</source>
        <translation type="unfinished">Seuil en place, sans risque de trébucher</translation>
    </message>
    <message>
        <source>Sill in place, no trip?</source>
        <translation type="unfinished">Seuil en place, sans piège&#xa0;?</translation>
    </message>
    <message>
        <source>Along the whole sill, with a lamp and a foot. Good: whole, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">Sur tout le seuil, avec une lampe et le pied. Bon&#xa0;: entier, affleurant et ferme. Mauvais&#xa0;: un morceau lâche, tordu ou manquant où le pied peut se prendre.</translation>
    </message>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Course dégagée des deux côtés</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">Course dégagée, des deux côtés&#xa0;?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: bare. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Tout le pont que balaie le vantail, des deux côtés. Bon&#xa0;: nu. Mauvais&#xa0;: provisions, chariots, meubles, tapis, détritus.</translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished">Logement libre de saleté, de détritus et de provisions</translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished">Logement sans saleté ni détritus&#xa0;?</translation>
    </message>
    <message>
        <source>Look into the pocket with a lamp, never with a hand while the door can move. Good: bare to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Regardez dans le logement avec une lampe, n&apos;y mettez jamais la main tant que la porte peut bouger. Bon&#xa0;: nu jusqu&apos;au fond. Mauvais&#xa0;: saleté, détritus, provisions.</translation>
    </message>
    <message>
        <source>Nothing holds it: no wedge, rope or furniture</source>
        <translation type="unfinished">Rien ne la retient&#xa0;: ni cale, ni corde, ni meuble</translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">Sans cale, corde ni meuble&#xa0;?</translation>
    </message>
    <message>
        <source>Round the foot, the handle and the edge of the open leaf. Good: its own hold-back alone holds it. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">Autour du pied, de la poignée et du bord du vantail ouvert. Bon&#xa0;: seule sa propre retenue le tient. Mauvais&#xa0;: une cale, une corde, un meuble.</translation>
    </message>
    <message>
        <source>Seals whole and not painted over</source>
        <translation type="unfinished">Joints entiers et non peints</translation>
    </message>
    <message>
        <source>Seals whole, unpainted?</source>
        <translation type="unfinished">Joints entiers, non peints&#xa0;?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece gone.</source>
        <translation type="unfinished">Tout autour du vantail. Bon&#xa0;: bandes affleurantes et continues. Mauvais&#xa0;: peintes, déchirées, ou un morceau manque.</translation>
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
        <source>Stand back and look at the gap over the leaf. Good: even, screws home. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Reculez et regardez le jeu au-dessus du vantail. Bon&#xa0;: régulier, vis serrées. Mauvais&#xa0;: plus large d&apos;un côté, traces de frottement vives au seuil.</translation>
    </message>
    <message>
        <source>Closer not leaking, its arm connected</source>
        <translation type="unfinished">Ferme-porte sans fuite, bras raccordé</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">Ferme-porte sec, bras raccordé&#xa0;?</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, its arm fast at both ends. Bad: oil on the body or the leaf, the arm loose or hanging.</source>
        <translation type="unfinished">En haut du vantail. Bon&#xa0;: sec, bras fixé aux deux bouts. Mauvais&#xa0;: huile sur le corps ou le vantail, bras lâche ou pendant.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and whole</source>
        <translation type="unfinished">Rails, galets et guides propres et entiers</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">Rails, galets et guides propres&#xa0;?</translation>
    </message>
    <message>
        <source>The rail at the head and the guide at the foot, end to end. Good: bare, every roller on it. Bad: dirt, a dent, a roller off. Hands out while it can move.</source>
        <translation type="unfinished">Le rail en haut et le guide en bas, d&apos;un bout à l&apos;autre. Bon&#xa0;: nus, chaque galet en place. Mauvais&#xa0;: saleté, choc, galet déraillé. Pas de main tant que la porte peut bouger.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Vantail, cadre et vitre entiers&#xa0;: ni trous, ni accessoires non approuvés, ni corrosion, ni isolation décollée</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole?</source>
        <translation type="unfinished">Vantail, cadre et vitre entiers&#xa0;?</translation>
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
        <source>Watch the leaf all the way. Good: it goes evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Suivez le vantail tout du long. Bon&#xa0;: il va régulièrement jusqu&apos;au bout. Mauvais&#xa0;: il coince, saute ou claque à la fin.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other is home</source>
        <translation type="unfinished">Le sélecteur retient un vantail jusqu&apos;à ce que l&apos;autre soit en butée</translation>
    </message>
    <message>
        <source>Do the leaves close in order?</source>
        <translation type="unfinished">Les vantaux se ferment-ils dans l&apos;ordre&#xa0;?</translation>
    </message>
    <message>
        <source>Open both leaves and let them go together. Good: one waits until the other is home. Bad: its lip is caught outside. Fingers off the meeting edges.</source>
        <translation type="unfinished">Ouvrez les deux vantaux et lâchez-les ensemble. Bon&#xa0;: l&apos;un attend que l&apos;autre soit en butée. Mauvais&#xa0;: son recouvrement reste pris dehors. Pas de doigts aux bords de rencontre.</translation>
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
        <source>When it has shut and stands still, push it. Good: it holds. Bad: it gives way, as it would to the pressure of a fire.</source>
        <translation type="unfinished">Quand elle est fermée et immobile, poussez-la. Bon&#xa0;: elle tient. Mauvais&#xa0;: elle cède, comme elle céderait à la pression d&apos;un incendie.</translation>
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
        <source>Hold a soft block in the path, never a hand or foot. Good: at the touch the leaf stops and goes back. Bad: it pushes on.</source>
        <translation type="unfinished">Tenez un bloc souple sur la course, jamais une main ni un pied. Bon&#xa0;: au contact, le vantail s&apos;arrête et recule. Mauvais&#xa0;: il continue de pousser.</translation>
    </message>
    <message>
        <source>Door, frame and securing means resist fire like the division they stand in</source>
        <translation type="unfinished">Porte, cadre et dispositifs de fermeture résistent au feu comme le cloisonnement où ils se trouvent</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Comparez la plaque de la porte avec la classe du cloisonnement qui l&apos;entoure. Bon&#xa0;: la porte est au moins aussi résistante. Une porte étanche à l&apos;eau n&apos;a pas besoin d&apos;isolation (9.4.1.1.3).</translation>
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
        <source>Open and shut it yourself, unaided, from this side; then go round and do the same. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Ouvrez-la et fermez-la vous-même, sans aide, de ce côté&#xa0;; puis passez de l&apos;autre et faites de même. Mauvais&#xa0;: il faut deux personnes ou un outil.</translation>
    </message>
    <message>
        <source>Closes by itself, also against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se ferme d&apos;elle-même, même contre une inclinaison de 3,5 degrés</translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished">Se ferme-t-elle d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Lâchez-la grande ouverte, à demi ouverte et à peine ouverte. Bon&#xa0;: jusqu&apos;en butée chaque fois. Mauvais&#xa0;: elle reste entrebâillée. La partie des 3,5 degrés ne peut pas se voir sur un navire droit.</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">Une porte battante se ferme 10 à 40 s après son premier mouvement, navire droit</translation>
    </message>
    <message>
        <source>Mark the first movement of the leaf and the moment it is fully shut; on a double door, when the second leaf is home. Stand clear of the leaf.</source>
        <translation type="unfinished">Marquez le premier mouvement du vantail et l&apos;instant où il est complètement fermé&#xa0;; sur une porte à deux vantaux, quand le second est en butée. Restez à l&apos;écart du vantail.</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">Une porte coulissante se ferme à une vitesse à peu près uniforme de 0,1 à 0,2 m/s, navire droit</translation>
    </message>
    <message>
        <source>Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate. Keep hands off the edge and out of the pocket.</source>
        <translation type="unfinished">Marquez le premier mouvement et l&apos;instant de la fermeture&#xa0;: le passage libre divisé par ce temps donne la vitesse. Pas de main au bord ni dans le logement.</translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished">Peut être déclenchée depuis le poste central de sécurité doté d&apos;une veille permanente</translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished">Le poste de sécurité la déclenche-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>The control station releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">Le poste de sécurité déclenche la porte ou son groupe. Bon&#xa0;: elle est lâchée et se ferme. Mauvais&#xa0;: elle reste ouverte. Un veilleur à chaque porte du groupe, des deux côtés.</translation>
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
        <source>Work the switch or handle at the door, one side and then the other. Good: each lets the door go. Bad: one side does nothing.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte, d&apos;un côté puis de l&apos;autre. Bon&#xa0;: chacun lâche la porte. Mauvais&#xa0;: un côté est sans effet.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function: the system does not reset itself</source>
        <translation type="unfinished">L&apos;interrupteur de déclenchement a une fonction marche-arrêt&#xa0;: le système ne se réarme pas de lui-même</translation>
    </message>
    <message>
        <source>Does the switch stay as it is put, so that the system does not reset itself?</source>
        <translation type="unfinished">L&apos;interrupteur reste-t-il comme on l&apos;a mis, sans que le système se réarme de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Release, take the hand off and wait. Good: the door is not held again until somebody puts the switch back. Bad: it is held again by itself.</source>
        <translation type="unfinished">Déclenchez, retirez la main et attendez. Bon&#xa0;: la porte n&apos;est retenue de nouveau que si quelqu&apos;un remet l&apos;interrupteur. Mauvais&#xa0;: elle est retenue de nouveau d&apos;elle-même.</translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished">Aucun crochet de retenue que le poste de sécurité ne puisse libérer</translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished">Sans crochet que le poste de sécurité ne peut libérer&#xa0;?</translation>
    </message>
    <message>
        <source>Look behind the open door, at wall, leaf and deck. Bad: hooks, cabin hooks, eye plates with marks of use.</source>
        <translation type="unfinished">Regardez derrière la porte ouverte, sur la paroi, le vantail et le pont. Mauvais&#xa0;: crochets, crochets de cabine, pitons portant des traces d&apos;usage.</translation>
    </message>
    <message>
        <source>After remote closing it opens again locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Après fermeture à distance, elle se rouvre localement des deux côtés, puis se ferme d&apos;elle-même</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">S&apos;ouvre de ce côté après fermeture à distance, puis se ferme d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>While the remote release still stands, open it from this side and let go. Good: it opens, then shuts by itself. Keep clear of the leaf as it comes back.</source>
        <translation type="unfinished">Pendant que le déclenchement à distance est maintenu, ouvrez-la de ce côté et lâchez. Bon&#xa0;: elle s&apos;ouvre, puis se ferme d&apos;elle-même. Restez à l&apos;écart du vantail quand il revient.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">Le tableau du poste de sécurité indique si elle est fermée</translation>
    </message>
    <message>
        <source>Is the panel&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">L&apos;indication du tableau est-elle juste&#xa0;: ouverte, entrebâillée, fermée&#xa0;?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: true each time. Bad: it says shut while the door stands ajar.</source>
        <translation type="unfinished">Demandez au poste de sécurité ce qu&apos;indique son tableau, porte ouverte, entrebâillée et fermée. Bon&#xa0;: juste chaque fois. Mauvais&#xa0;: il indique fermée alors que la porte est entrebâillée.</translation>
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
        <source>Agree it with the engineers and clear people away; then the supply of this door&apos;s control is cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Convenez-en avec les mécaniciens et éloignez les gens&#xa0;; puis l&apos;alimentation de la commande de cette porte est coupée. Bon&#xa0;: elle se ferme d&apos;elle-même. Mauvais&#xa0;: elle reste ouverte.</translation>
    </message>
    <message>
        <source>Local accumulators work the door at least ten times fully open and shut after the power has failed</source>
        <translation type="unfinished">Des accumulateurs locaux manœuvrent la porte au moins dix fois, complètement ouverte et fermée, après une panne d&apos;alimentation</translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">Dix cycles complets sur l&apos;accumulateur local&#xa0;?</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full openings and closings without the main supply. Trying it runs the accumulator down: agree it with the control station first.</source>
        <translation type="unfinished">Demandez le dernier relevé de dix ouvertures et fermetures complètes sans l&apos;alimentation principale. L&apos;essai vide l&apos;accumulateur&#xa0;: convenez-en d&apos;abord avec le poste de sécurité.</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">Une défaillance à une porte laisse fonctionner les autres</translation>
    </message>
    <message>
        <source>Do the other doors go on working when this one fails?</source>
        <translation type="unfinished">Les autres portes fonctionnent-elles encore quand celle-ci est en panne&#xa0;?</translation>
    </message>
    <message>
        <source>See the drawing of the control system, or isolate this door while another is worked. Good: the others move as before. Bad: they stand still too.</source>
        <translation type="unfinished">Voyez le plan du système de commande, ou isolez cette porte pendant qu&apos;on en manœuvre une autre. Bon&#xa0;: les autres bougent comme avant. Mauvais&#xa0;: elles ne bougent plus non plus.</translation>
    </message>
    <message>
        <source>Alarm sounds 5 to 10 s between release and first movement</source>
        <translation type="unfinished">L&apos;alarme sonne 5 à 10 s entre le déclenchement et le premier mouvement</translation>
    </message>
    <message>
        <source>Released from the control station, from the first sound of the alarm to the first movement of the leaf. Bad: the leaf moves at once, or much later.</source>
        <translation type="unfinished">Déclenchée depuis le poste de sécurité, du premier son de l&apos;alarme au premier mouvement du vantail. Mauvais&#xa0;: le vantail bouge aussitôt, ou bien plus tard.</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">L&apos;alarme sonne jusqu&apos;à la fermeture complète de la porte</translation>
    </message>
    <message>
        <source>Listen until the leaf is home. Good: the alarm still sounds when the door is fully shut. Bad: silence while the leaf still moves.</source>
        <translation type="unfinished">Écoutez jusqu&apos;à ce que le vantail soit en butée. Bon&#xa0;: l&apos;alarme sonne encore quand la porte est complètement fermée. Mauvais&#xa0;: silence alors que le vantail bouge encore.</translation>
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
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after going back.</source>
        <translation type="unfinished">Tenez un bloc souple sur la course, jamais une main ni un pied. Mesurez du point de contact jusqu&apos;où le vantail s&apos;arrête après avoir reculé.</translation>
    </message>
    <message>
        <source>The latch engages by the release system&apos;s own operation</source>
        <translation type="unfinished">Le loquet s&apos;enclenche par l&apos;action même du système de déclenchement</translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">Le loquet s&apos;enclenche-t-il seul après le déclenchement&#xa0;?</translation>
    </message>
    <message>
        <source>After release, when both leaves stand still, push at the meeting edge. Good: neither opens. Bad: the bolt lies short of its strike.</source>
        <translation type="unfinished">Après le déclenchement, quand les deux vantaux sont immobiles, poussez au bord de rencontre. Bon&#xa0;: aucun ne s&apos;ouvre. Mauvais&#xa0;: le pêne n&apos;atteint pas sa gâche.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjusting</source>
        <translation type="unfinished">Les éléments de commande locale sont accessibles pour l&apos;entretien et le réglage</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">La commande locale est-elle accessible&#xa0;?</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens and a hand with a tool gets in. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Trouvez l&apos;interrupteur, la vanne ou le coffret de commande propre à la porte. Bon&#xa0;: le capot s&apos;ouvre et une main avec un outil y entre. Mauvais&#xa0;: encastré, bloqué ou collé par la peinture.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 degrees C, and to keep the door shut beyond</source>
        <translation type="unfinished">Le système de commande est approuvé pour fonctionner en cas d&apos;incendie&#xa0;: 60 min à 200 degrés C, et pour tenir la porte fermée au-delà</translation>
    </message>
    <message>
        <source>Is there an approval paper of the control system?</source>
        <translation type="unfinished">Existe-t-il un document d&apos;approbation du système de commande&#xa0;?</translation>
    </message>
    <message>
        <source>A check of papers: works at 200 degrees C or more for 60 min or more, leaves other doors&apos; supply whole, isolates itself above that and keeps the door shut up to 945 degrees C or more.</source>
        <translation type="unfinished">Un contrôle de documents&#xa0;: fonctionne à 200 degrés C ou plus pendant 60 min ou plus, laisse intacte l&apos;alimentation des autres portes, s&apos;isole au-delà et tient la porte fermée jusqu&apos;à 945 degrés C ou plus.</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Passage de manche à fermeture automatique, 150 mm au carré libres porte fermée, aussi résistant au feu que la porte</translation>
    </message>
    <message>
        <source>Hose port clear 150 mm square, and does it shut by itself?</source>
        <translation type="unfinished">Passage de manche de 150 mm au carré, se ferme-t-il de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 mm square clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Porte fermée, bord inférieur, à l&apos;opposé des charnières&#xa0;; sur une porte coulissante, au plus près du passage. Levez le volet et lâchez. Bon&#xa0;: 150 mm au carré libres, et le volet retombe fermé. Mauvais&#xa0;: il reste levé.</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 12 mm</source>
        <translation type="unfinished">Le jeu sous une porte approuvée sans seuil dans son cadre ne dépasse pas 12 mm</translation>
    </message>
    <message>
        <source>Gap under the shut door</source>
        <translation type="unfinished">Jeu sous la porte fermée</translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a feeler or a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">L&apos;endroit le plus large sous la porte fermée, à la jauge ou à la règle. Pas de doigts sous un vantail qui peut bouger.</translation>
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
        <source>At the foot of the shut door. Good: a sill that cannot burn, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Au pied de la porte fermée. Bon&#xa0;: un seuil qui ne peut pas brûler, et la moquette ou le vinyle s&apos;y arrête. Mauvais&#xa0;: le revêtement continue sous le vantail.</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">Le jeu sous une porte approuvée sans seuil dans son cadre ne dépasse pas 25 mm</translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">L&apos;endroit le plus large sous la porte fermée, à la règle. Pas de doigts sous un vantail qui peut bouger.</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m2 net, with a non-combustible grille</source>
        <translation type="unfinished">Ouverture d&apos;aération dans ou sous la porte d&apos;au plus 0,05 m2 nets, avec grille incombustible</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Ouverture d&apos;aération dans ou sous la porte, nette</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn.</source>
        <translation type="unfinished">La grille du vantail ou la découpe au-dessous. Ne comptez que la surface libre entre les barreaux&#xa0;; 0 s&apos;il n&apos;y en a pas. La grille doit être d&apos;un genre qui ne peut pas brûler.</translation>
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
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops half way, or there is a hook.</source>
        <translation type="unfinished">Lâchez-la grande ouverte. Bon&#xa0;: elle se ferme d&apos;elle-même, et rien derrière elle ne peut la retenir. Mauvais&#xa0;: elle s&apos;arrête à mi-course, ou il y a un crochet.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead A-0</source>
        <translation type="unfinished">Une porte dans une cloison A-60, A-30 ou A-15 répond à A-15&#xa0;; dans une cloison A-0, à A-0</translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Se ferme d&apos;elle-même contre une gîte de 3,5 degrés</translation>
    </message>
    <message>
        <source>Either leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Chaque vantail d&apos;une porte à deux vantaux se ferme et s&apos;enclenche seul</translation>
    </message>
    <message>
        <source>Does either leaf close and latch on its own?</source>
        <translation type="unfinished">Chaque vantail se ferme-t-il et s&apos;enclenche-t-il seul&#xa0;?</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Ouvrez un seul vantail et lâchez-le&#xa0;; puis l&apos;autre. Bon&#xa0;: chacun se ferme et s&apos;enclenche seul. Mauvais&#xa0;: l&apos;un a besoin de l&apos;autre, ou ne s&apos;enclenche pas.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in order</source>
        <translation type="unfinished">Si un vantail doit se fermer le premier, un dispositif les fait se fermer dans l&apos;ordre</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Jeu entre les vantaux qui fonctionnent seuls, et en haut et sur les côtés d&apos;une porte va-et-vient, d&apos;au plus 3,2 mm</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Les deux vantaux fermés&#xa0;: une jauge entre eux&#xa0;; sur une porte va-et-vient, aussi en haut et sur les côtés. 1/8 de pouce à l&apos;endroit le plus large.</translation>
    </message>
    <message>
        <source>Stop or overlap at the sides and top at least 12.7 mm</source>
        <translation type="unfinished">Feuillure ou recouvrement sur les côtés et en haut d&apos;au moins 12,7 mm</translation>
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
        <source>Look over the whole leaf, low down as well. Good: closed all over. Bad: a grille or louver, anywhere in it.</source>
        <translation type="unfinished">Parcourez du regard tout le vantail, en bas aussi. Bon&#xa0;: plein partout. Mauvais&#xa0;: une grille ou une persienne, où que ce soit.</translation>
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
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, self-closing steel cover</source>
        <translation type="unfinished">Un passage de manche, s&apos;il existe&#xa0;: coin inférieur opposé aux charnières, environ 152 mm au carré, volet en acier à fermeture automatique</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 mm square, cover shuts by itself?</source>
        <translation type="unfinished">Passage de manche dans le coin inférieur opposé aux charnières, environ 152 mm au carré, le volet se ferme-t-il de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Une porte dans un pont, réservée à l&apos;équipage, se ferme en 5 à 10 s</translation>
    </message>
    <message>
        <source>Time it from the first movement to fully shut. Nobody stands on the stair, and no hand or foot is at its edge.</source>
        <translation type="unfinished">Chronométrez du premier mouvement à la fermeture complète. Personne ne se tient dans l&apos;escalier, ni main ni pied à son bord.</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Force pour libérer le loquet d&apos;une porte dans un pont&#xa0;: au plus 17,8 N</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it lets go. The greatest force counts.</source>
        <translation type="unfinished">Accrochez un peson au loquet et tirez jusqu&apos;à ce qu&apos;il lâche. La force maximale compte.</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Force pour mettre en mouvement une porte dans un pont&#xa0;: au plus 44,5 N</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Loquet libéré&#xa0;: accrochez un peson au bord libre et tirez jusqu&apos;à ce que la porte bouge à peine. La force maximale compte.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Force pour ouvrir une porte dans un pont à la largeur de l&apos;escalier&#xa0;: au plus 17,8 N</translation>
    </message>
    <message>
        <source>Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts. Nobody stands under it.</source>
        <translation type="unfinished">Tirez au peson jusqu&apos;à l&apos;ouverture à la largeur de l&apos;escalier. La force maximale en chemin compte. Personne ne se tient dessous.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m2</source>
        <translation type="unfinished">Verre armé dans une porte du type A d&apos;au plus 0,065 m2</translation>
    </message>
    <message>
        <source>The fire door release system is as SOLAS 74 II-2/30.4.3 has it</source>
        <translation type="unfinished">Le système de déclenchement des portes d&apos;incendie est conforme à SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">Le système de déclenchement est-il approuvé selon SOLAS 74 II-2/30.4.3&#xa0;?</translation>
    </message>
    <message>
        <source>A check of papers, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Un contrôle de documents, là où un tel système est installé&#xa0;: une approbation qui cite SOLAS 74 II-2/30.4.3.</translation>
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
        <source>a stair enclosed on one level only counts as part of the space it has no fire door against</source>
        <translation type="unfinished">un escalier fermé à un seul niveau compte comme partie du local dont aucune porte d&apos;incendie ne le sépare</translation>
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
        <translation type="unfinished">halls</translation>
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
        <translation type="unfinished">Locaux d&apos;habitation présentant un risque mineur d&apos;incendie</translation>
    </message>
    <message>
        <source>cabins, offices and dispensaries with restricted-fire-risk furnishings</source>
        <translation type="unfinished">cabines, bureaux et infirmeries à mobilier présentant un risque limité d&apos;incendie</translation>
    </message>
    <message>
        <source>public rooms under 50 m2 with restricted-fire-risk furnishings</source>
        <translation type="unfinished">locaux de réunion de moins de 50 m2 à mobilier présentant un risque limité d&apos;incendie</translation>
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
        <source>public rooms of 50 m2 or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">locaux de réunion de 50 m2 ou plus à mobilier présentant un risque limité d&apos;incendie</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m2 (no flammable liquids)</source>
        <translation type="unfinished">placards isolés et petits magasins de moins de 4 m2 (sans liquides inflammables)</translation>
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
        <source>drying room up to 4 m2</source>
        <translation type="unfinished">séchoir jusqu&apos;à 4 m2</translation>
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
        <translation type="unfinished">Locaux d&apos;habitation présentant un risque plus élevé d&apos;incendie</translation>
    </message>
    <message>
        <source>public rooms of 50 m2 or more with ordinary furnishings</source>
        <translation type="unfinished">locaux de réunion de 50 m2 ou plus à mobilier ordinaire</translation>
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
        <translation type="unfinished">postes de soutage</translation>
    </message>
    <message>
        <source>oil-filled transformers above 10 kVA</source>
        <translation type="unfinished">transformateurs à huile de plus de 10 kVA</translation>
    </message>
    <message>
        <source>turbine/steam auxiliary generators and engines up to 110 kW driving generators, sprinkler, fire or bilge pumps</source>
        <translation type="unfinished">génératrices auxiliaires à turbine ou à vapeur et moteurs jusqu&apos;à 110 kW entraînant des génératrices, pompes de sprinkleurs, d&apos;incendie ou d&apos;assèchement</translation>
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
        <source>drying room above 4 m2</source>
        <translation type="unfinished">séchoir de plus de 4 m2</translation>
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
        <source>lockers and stores above 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">placards et magasins de plus de 4 m2 non prévus pour des liquides inflammables</translation>
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
        <translation type="unfinished">coursives et halls des passagers et de l&apos;équipage</translation>
    </message>
    <message>
        <source>Accommodation spaces</source>
        <translation type="unfinished">Locaux d&apos;habitation</translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), corridors left out</source>
        <translation type="unfinished">cabines, locaux de réunion, bureaux, toilettes, hôpitaux, salles de jeux et de loisirs, offices sans appareil de cuisson (règle 3.1), coursives exclues</translation>
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
        <source>lockers and stores under 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">placards et magasins de moins de 4 m2 non prévus pour des liquides inflammables</translation>
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
        <source>lockers and stores of 4 m2 or more</source>
        <translation type="unfinished">placards et magasins de 4 m2 ou plus</translation>
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
        <translation type="unfinished">coursives et halls</translation>
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
        <translation type="unfinished">Espaces rouliers et espaces à véhicules</translation>
    </message>
    <message>
        <source>vehicle spaces (reg. 3.49)</source>
        <translation type="unfinished">espaces à véhicules (règle 3.49)</translation>
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
        <source>fire-resistant furnishings only and fire load up to 15 kg/m2</source>
        <translation type="unfinished">mobilier résistant au feu uniquement et charge calorifique jusqu&apos;à 15 kg/m2</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m2 or less</source>
        <translation type="unfinished">Habitation à risque élevé, 50 m2 ou moins</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m2 (limit 37.5 kg/m2)</source>
        <translation type="unfinished">charge calorifique de plus de 15 kg/m2 (limite 37,5 kg/m2)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m2 that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">placard à matériel de nettoyage de moins de 5 m2 qui contient plus que le matériel (sans liquides inflammables)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m2</source>
        <translation type="unfinished">Habitation à risque élevé, plus de 50 m2</translation>
    </message>
    <message>
        <source>as 6 but larger; the size sign is lost in the machine text and is inferred from row 6</source>
        <translation type="unfinished">comme 6 mais plus grand&#xa0;; le signe de taille est perdu dans le texte informatique et est déduit de la ligne 6</translation>
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
        <source>pantries and stores with flammable liquids or of 5 m2 or more</source>
        <translation type="unfinished">offices et magasins contenant des liquides inflammables ou de 5 m2 ou plus</translation>
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
        <translation type="unfinished">espaces à véhicules</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, voids, fuel and water tanks</source>
        <translation type="unfinished">Locaux de machines auxiliaires, espaces vides, citernes à combustible et à eau</translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m2 of combustible storage</source>
        <translation type="unfinished">locaux de pompes, de ventilation, de climatisation, d&apos;appareil à gouverner et analogues avec au plus 2,5 kg/m2 de stockage combustible</translation>
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
        <translation type="unfinished">postes de soutage</translation>
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
        <source>All twelve doors. Nobody says how many faults there are. Endanger nobody, answer the cautions truly, and have 80 of 100 points to pass.</source>
        <translation type="unfinished">Les douze portes. Personne ne dit combien il y a de défauts. Ne mettez personne en danger, répondez vrai aux précautions, et obtenez 80 points sur 100 pour réussir.</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Premiers pas&#xa0;: chronométrer une fermeture</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order, the other is far from it.</source>
        <translation type="unfinished">Deux portes d&apos;escalier tenues ouvertes par des aimants. Déclenchez chacune et marquez quand son vantail commence à bouger et quand il est fermé. L&apos;une est en ordre, l&apos;autre en est loin.</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Premiers pas&#xa0;: regarder avant que ça bouge</translation>
    </message>
    <message>
        <source>Two doors that stand still. Go round each of them, both sides, and look at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Deux portes immobiles. Faites le tour de chacune, des deux côtés, et regardez tout ce qu&apos;on vous demande. Quelque chose n&apos;est pas en ordre.</translation>
    </message>
    <message>
        <source>Somebody comes round the corner</source>
        <translation type="unfinished">Quelqu&apos;un débouche du coin</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop it before it meets anybody. A run that was stopped can be made again.</source>
        <translation type="unfinished">Les gens ne savent pas que vous testez. Gardez les yeux sur la course tant qu&apos;un vantail bouge, et arrêtez-le avant qu&apos;il ne rencontre quelqu&apos;un. Un essai arrêté peut être refait.</translation>
    </message>
    <message>
        <source>A round of eight doors</source>
        <translation type="unfinished">Une tournée de huit portes</translation>
    </message>
    <message>
        <source>Every kind of door in one walk. Six faults lie somewhere among them, some of which only the watch can show. Not every door has one.</source>
        <translation type="unfinished">Tous les genres de portes en une tournée. Six défauts s&apos;y cachent, dont certains que seule la montre peut révéler. Toutes les portes n&apos;en ont pas.</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Portes coulissantes et leur alarme</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, the whole travel, and how far each one opens again when it meets something. Look into the pockets.</source>
        <translation type="unfinished">Trois portes motorisées. Chronométrez l&apos;alarme avant le mouvement du vantail, toute la course, et de combien chacune se rouvre quand elle rencontre quelque chose. Regardez dans les logements.</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Maintenues ouvertes dans un escalier</translation>
    </message>
    <message>
        <source>Four hinged doors that magnets hold open. They must let go from both sides and from the control station, shut in their time and latch. Watch the path before you release anything.</source>
        <translation type="unfinished">Quatre portes battantes que des aimants tiennent ouvertes. Elles doivent lâcher des deux côtés et depuis le poste de sécurité, se fermer dans leur temps et s&apos;enclencher. Surveillez la course avant de déclencher quoi que ce soit.</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Deux vantaux, et portes va-et-vient</translation>
    </message>
    <message>
        <source>Double doors must come home in their order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Les portes à deux vantaux doivent arriver en butée dans leur ordre, et la porte va-et-vient de la cuisine doit s&apos;immobiliser fermée. Deux d&apos;entre elles ont un défaut.</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be left out if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Locaux voisins du même numéro de catégorie&#xa0;: la cloison ou le pont peut être omis si l&apos;Administration le juge inutile (p. ex. une cuisine et ses propres offices). Une cuisine et un local de machines doivent quand même être séparés, bien que tous deux soient de la catégorie 12.</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Muraille du navire jusqu&apos;à la flottaison la moins élevée, et parois des superstructures et roufs, au-dessous ou à côté des radeaux et toboggans d&apos;évacuation&#xa0;: A-30 suffit.</translation>
    </message>
    <message>
        <source>Public toilets standing wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Toilettes publiques entièrement à l&apos;intérieur d&apos;un entourage d&apos;escalier&#xa0;: leur cloison à l&apos;intérieur de l&apos;entourage peut être du type B.</translation>
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
        <translation type="unfinished">Deux valeurs&#xa0;: la plus élevée s&apos;applique si la tranche n&apos;a pas de sprinkleurs automatiques, la plus basse si elle en a&#xa0;; entre une tranche protégée et une tranche non protégée, la plus élevée s&apos;applique (2.2.4.2.3, 2.2.4.2.4).</translation>
    </message>
    <message>
        <source>Where the bulkhead is a main vertical zone boundary (2.2.1.1.2), read B-0 and C in table 9.3 as A-0.</source>
        <translation type="unfinished">Si la cloison limite une tranche verticale principale (2.2.1.1.2), lire A-0 au lieu de B-0 et C dans le tableau 9.3.</translation>
    </message>
    <message>
        <source>Insulation may be left off if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">L&apos;isolation peut être omise si le local de machines de catégorie 7 présente un risque faible ou nul d&apos;incendie de l&apos;avis de l&apos;Administration.</translation>
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
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m2 or more.</source>
        <translation type="unfinished">Avec la méthode IIIC, des cloisons B-0 sont exigées entre locaux ou groupes de locaux de 50 m2 ou plus.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Laquelle des deux valeurs s&apos;applique découle de 2.3.2 et 2.3.4&#xa0;: un escalier traversant un seul pont n&apos;exige que B-0 avec portes à fermeture automatique à un niveau au moins&#xa0;; escaliers et ascenseurs traversant plus d&apos;un pont exigent A-0 avec portes à fermeture automatique à tous les niveaux&#xa0;; un ascenseur traversant un pont exige A-0 avec portes en acier aux deux niveaux. Avec 12 couchettes ou moins et deux échappées directes vers le pont découvert depuis chaque niveau d&apos;habitation, A-0 peut être ramené à B-0.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Les cloisons entre timonerie, chambre des cartes et local radio peuvent être B-0.</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they stay at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">A-0 suffit si aucune marchandise dangereuse n&apos;est transportée, ou si elle reste à 3 m au moins de la cloison, mesurés horizontalement.</translation>
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
        <source>Tanker use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Les navires-citernes n&apos;utilisent que la méthode IC. Laquelle des deux valeurs s&apos;applique découle de 2.3.2 et 2.3.4&#xa0;: un escalier traversant un seul pont n&apos;exige que B-0 avec portes à fermeture automatique à un niveau au moins&#xa0;; escaliers et ascenseurs traversant plus d&apos;un pont exigent A-0 avec portes à fermeture automatique à tous les niveaux&#xa0;; un ascenseur traversant un pont exige A-0 avec portes en acier aux deux niveaux. Avec 12 couchettes ou moins et deux échappées directes vers le pont découvert depuis chaque niveau d&apos;habitation, A-0 peut être ramené à B-0.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">La cloison ou le pont entre la chambre des pompes à cargaison et un local de machines de la catégorie A peut être traversé par des presse-étoupe d&apos;arbres de pompes et analogues si l&apos;étanchéité au gaz est durablement assurée.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m2 (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Soutes à combustible, locaux de machines auxiliaires et espaces vides d&apos;une charge calorifique de plus de 2,5 kg/m2 (0,5 lb/sq ft) exigent des cloisonnements au moins A-0.</translation>
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
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time duty (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Incombustible, solidaire de la structure du navire (ou s&apos;arrêtant à un plafond continu B ou C&apos;) et étanche à la fumée&#xa0;; aucune exigence d&apos;isolation ni de durée au feu (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C suffit entre deux locaux semblables&#xa0;; des locaux différents (magasin et atelier) exigent A-0.</translation>
    </message>
    <message>
        <source>A fire drill tries the fire doors in the area of the drill</source>
        <translation type="unfinished">Lors d&apos;un exercice d&apos;incendie, les portes d&apos;incendie de la zone de l&apos;exercice sont essayées</translation>
    </message>
    <message>
        <source>Blackout trial: doors are held and released by the emergency source and the transitional battery</source>
        <translation type="unfinished">Essai de black-out&#xa0;: les portes sont retenues et déclenchées par la source de secours et la batterie transitoire</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample released at the door and remotely, doors lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Campagne de l&apos;État du port sur les portes d&apos;incendie&#xa0;: lampes, un échantillon déclenché à la porte et à distance, portes attachées en position ouverte, fermeture et enclenchement, portes de machines, classe</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class like its boundary</source>
        <translation type="unfinished">Une porte extérieure qui donne sur des engins de sauvetage, des postes d&apos;embarquement ou de rassemblement extérieurs, des escaliers extérieurs ou des ponts d&apos;évacuation est du type A comme son cloisonnement</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A stairway enclosure&apos;s door is free of it.</source>
        <translation type="unfinished">Comparez la plaque de la porte avec la classe du cloisonnement qui l&apos;entoure. Bon&#xa0;: la porte est au moins aussi résistante. La porte d&apos;un entourage d&apos;escalier en est dispensée.</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure is free of the A-class duty of other exterior doors</source>
        <translation type="unfinished">La porte extérieure d&apos;un entourage d&apos;escalier est dispensée du type A exigé des autres portes extérieures</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">Est-ce une porte d&apos;entourage d&apos;escalier&#xa0;?</translation>
    </message>
    <message>
        <source>See the fire plan, or go in. A stairway enclosure behind it: yes, and no class is asked of it. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Voyez le plan de lutte contre l&apos;incendie, ou entrez. Un entourage d&apos;escalier derrière&#xa0;: oui, et aucune classe n&apos;est exigée d&apos;elle. Tout autre local derrière&#xa0;: non. Aucune des deux réponses n&apos;est un défaut.</translation>
    </message>
    <message>
        <source>Door and frame of steel or of a material equivalent to it</source>
        <translation type="unfinished">Porte et cadre en acier ou en un matériau équivalent</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">Porte et cadre en acier, ou équivalent&#xa0;?</translation>
    </message>
    <message>
        <source>Knock on leaf and frame, see the plate and the papers. Good: steel, or a paper that says what is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Frappez sur le vantail et le cadre, voyez la plaque et les documents. Bon&#xa0;: acier, ou un document qui dit ce qui est équivalent. Mauvais&#xa0;: bois, plastique ou aluminium nu.</translation>
    </message>
    <message>
        <source>Door and frame in good order, so that they do what they were fitted for</source>
        <translation type="unfinished">Porte et cadre en bon état, pour remplir la fonction pour laquelle ils sont montés</translation>
    </message>
    <message>
        <source>In good order, door and frame?</source>
        <translation type="unfinished">Porte et cadre en bon état&#xa0;?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, repairs that nobody approved. Asked of a ship of any date.</source>
        <translation type="unfinished">Vantail, cadre, charnières, joints et vitre. Mauvais&#xa0;: trous, pièces rapportées, chocs qui l&apos;empêchent de se fermer, pièces manquantes, réparations que personne n&apos;a approuvées. Demandé quelle que soit la date du navire.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard has this door and its controls in it</source>
        <translation type="unfinished">La porte et ses commandes figurent au plan d&apos;entretien du bord</translation>
    </message>
    <message>
        <source>Is the door, with its controls, in the maintenance plan?</source>
        <translation type="unfinished">La porte, avec ses commandes, figure-t-elle au plan d&apos;entretien&#xa0;?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or in a computer, and find this door. Good: its tests and dates are there. Asked of a ship of any date.</source>
        <translation type="unfinished">Demandez le plan d&apos;entretien du navire, sur papier ou informatique, et trouvez-y cette porte. Bon&#xa0;: ses essais et leurs dates y sont. Demandé quelle que soit la date du navire.</translation>
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
        <source>Try it before it is unlocked. Locked: yes, and it is left out of what is asked of doors that people use. Open or unlocked: no, and it is graded as what it is.</source>
        <translation type="unfinished">Essayez-la avant qu&apos;on la déverrouille. Verrouillée&#xa0;: oui, et elle échappe à ce qui est exigé des portes que l&apos;on utilise. Ouverte ou non verrouillée&#xa0;: non, et elle est jugée selon ce qu&apos;elle est.</translation>
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
        <source>An escape door of a public space that is normally latched has a quick release over at least half the leaf, and nothing that locks it down</source>
        <translation type="unfinished">La porte d&apos;évacuation d&apos;un local de réunion, normalement enclenchée, a un dispositif de déblocage rapide sur la moitié au moins du vantail, et rien qui le bloque</translation>
    </message>
    <message>
        <source>Quick release over half the leaf, nothing locks it down?</source>
        <translation type="unfinished">Déblocage rapide sur la moitié du vantail, sans rien qui le bloque&#xa0;?</translation>
    </message>
    <message>
        <source>A bar or panel that lets the latch go when pushed, on the side people come from. Good: at least half as wide as the leaf. No public space, or not latched: n/a.</source>
        <translation type="unfinished">Une barre ou un panneau qui libère le loquet quand on le pousse, du côté d&apos;où viennent les gens. Bon&#xa0;: au moins la moitié de la largeur du vantail. Pas un local de réunion, ou pas de loquet enclenché&#xa0;: s.o.</translation>
    </message>
    <message>
        <source>The quick release stands 760 to 1120 mm above the deck</source>
        <translation type="unfinished">Le dispositif de déblocage rapide se trouve entre 760 et 1120 mm au-dessus du pont</translation>
    </message>
    <message>
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Hauteur du déblocage rapide au-dessus du pont</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the question of the quick release first.</source>
        <translation type="unfinished">Du pont au milieu de la barre, à la règle ou au mètre ruban. Répondez d&apos;abord à la question du déblocage rapide.</translation>
    </message>
    <message>
        <source>The quick release lets go at 67 N or less</source>
        <translation type="unfinished">Le dispositif de déblocage rapide lâche à 67 N ou moins</translation>
    </message>
    <message>
        <source>Force that makes the quick release let go</source>
        <translation type="unfinished">Force qui fait lâcher le déblocage rapide</translation>
    </message>
    <message>
        <source>Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch lets go. Keep feet clear of the leaf.</source>
        <translation type="unfinished">Poussez au peson au milieu de la barre, dans le sens de l&apos;évacuation, jusqu&apos;à ce que le loquet lâche. Gardez les pieds à l&apos;écart du vantail.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors or in groups</source>
        <translation type="unfinished">Peut être déclenchée d&apos;un poste de sécurité, toutes les portes ensemble ou par groupes</translation>
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
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The older text asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon&#xa0;: il lâche la porte. Mauvais&#xa0;: il est sans effet. L&apos;ancien texte l&apos;exige à la porte, pas des deux côtés.</translation>
    </message>
    <message>
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">La passerelle de navigation indique si une porte d&apos;incendie qui donne accès à un local de catégorie spéciale, ou en sort, est fermée</translation>
    </message>
    <message>
        <source>Is the bridge&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">L&apos;indication de la passerelle est-elle juste&#xa0;: ouverte, entrebâillée, fermée&#xa0;?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: true each time. Bad: no lamp for this door, or it says shut while the door stands ajar.</source>
        <translation type="unfinished">Demandez à la passerelle ce qu&apos;elle voit, porte ouverte, entrebâillée et fermée. Bon&#xa0;: juste chaque fois. Mauvais&#xa0;: pas de lampe pour cette porte, ou fermée indiquée alors que la porte est entrebâillée.</translation>
    </message>
    <message>
        <source>Its remote closing stands in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Sa commande de fermeture à distance se trouve au même poste de sécurité central que les alarmes de détection, et le tableau y indique si elle est ouverte ou fermée</translation>
    </message>
    <message>
        <source>Closing control and open-or-closed lamp in the central station?</source>
        <translation type="unfinished">Commande de fermeture et lampe ouverte ou fermée au poste central&#xa0;?</translation>
    </message>
    <message>
        <source>In the continuously manned station: beside the alarms of the detection system, the control that closes this door and its lamp for open or closed.</source>
        <translation type="unfinished">Au poste de sécurité gardé en permanence&#xa0;: à côté des alarmes du système de détection, la commande qui ferme cette porte et sa lampe ouverte ou fermée.</translation>
    </message>
    <message>
        <source>It can be worked and watched from the safety centre</source>
        <translation type="unfinished">Elle peut être manœuvrée et surveillée depuis le centre de sécurité</translation>
    </message>
    <message>
        <source>Worked and watched from the safety centre?</source>
        <translation type="unfinished">Manœuvrée et surveillée depuis le centre de sécurité&#xa0;?</translation>
    </message>
    <message>
        <source>In the safety centre: close this door and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">Au centre de sécurité&#xa0;: fermez cette porte et voyez sa lampe changer. Bon&#xa0;: les deux marchent comme au poste de sécurité. Mauvais&#xa0;: elle n&apos;est pas sur le tableau.</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Se ferme d&apos;elle-même en cas de défaillance de sa commande</translation>
    </message>
    <message>
        <source>Its holding and release work from the emergency source, and from the transitional battery until that takes over</source>
        <translation type="unfinished">Sa retenue et son déclenchement marchent sur la source de secours, et sur la batterie transitoire jusqu&apos;à ce que celle-ci prenne le relais</translation>
    </message>
    <message>
        <source>In the blackout trial: held and released by emergency power?</source>
        <translation type="unfinished">À l&apos;essai de black-out&#xa0;: retenue et déclenchée par l&apos;alimentation de secours&#xa0;?</translation>
    </message>
    <message>
        <source>Agree the trial with bridge and engineers, people clear. Main power off: battery first, then the emergency source. Good: held, released and shut under each. A system with its own battery counts.</source>
        <translation type="unfinished">Convenez de l&apos;essai avec passerelle et mécaniciens, gens à l&apos;écart. Alimentation principale coupée&#xa0;: la batterie d&apos;abord, puis la source de secours. Bon&#xa0;: retenue, déclenchée et fermée avec chacune. Un système à batterie propre compte.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text prints no size</source>
        <translation type="unfinished">Orifice pour manche d&apos;incendie à fermeture automatique&#xa0;; l&apos;ancien texte n&apos;imprime pas de taille</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">A-t-elle un orifice de manche qui se ferme de lui-même&#xa0;?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. A size is not printed for a ship of this date.</source>
        <translation type="unfinished">Porte fermée, bord inférieur, à l&apos;opposé des charnières. Levez le volet et lâchez. Bon&#xa0;: il retombe fermé. Mauvais&#xa0;: il reste levé, ou il n&apos;y a pas d&apos;orifice. Aucune taille n&apos;est imprimée pour un navire de cette date.</translation>
    </message>
    <message>
        <source>B-class door of a material that cannot burn</source>
        <translation type="unfinished">Porte du type B en matériau incombustible</translation>
    </message>
    <message>
        <source>Door of a material that cannot burn?</source>
        <translation type="unfinished">Porte en matériau incombustible&#xa0;?</translation>
    </message>
    <message>
        <source>See the plate and the papers. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow it between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Voyez la plaque et les documents. Mauvais&#xa0;: bois ou plastique. Avec 36 passagers ou moins, l&apos;Administration peut l&apos;admettre entre une cabine et sa propre douche ou ses propres toilettes&#xa0;: s.o.</translation>
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
        <source>Find every opening for air in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Trouvez toute ouverture d&apos;aération du vantail. Bon&#xa0;: en bas du vantail, au-dessous, ou aucune. Mauvais&#xa0;: une grille ou des trous dans la moitié supérieure.</translation>
    </message>
    <message>
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Se ferme à coup sûr, mue par une source d&apos;énergie, ou d&apos;elle-même contre une inclinaison de 3.5 degrés</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">Se ferme à coup sûr, par sa source d&apos;énergie ou d&apos;elle-même&#xa0;?</translation>
    </message>
    <message>
        <source>Release it with its supply on and cut. Good: it goes firmly home each time. Doors of escape trunks too. The space is not of category A: n/a.</source>
        <translation type="unfinished">Déclenchez-la alimentée, puis alimentation coupée. Bon&#xa0;: elle va chaque fois franchement en butée. Portes des puits d&apos;échappée aussi. Le local n&apos;est pas de la catégorie A&#xa0;: s.o.</translation>
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
        <source>Release it from its remote place, then with its supply cut. Good: it lets go each time. The space is not of category A, or nothing can hold the door: n/a.</source>
        <translation type="unfinished">Déclenchez-la depuis son poste à distance, puis en coupant son alimentation. Bon&#xa0;: elle est lâchée chaque fois. Le local n&apos;est pas de la catégorie A, ou rien ne peut retenir la porte&#xa0;: s.o.</translation>
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
        <source>Find the control outside the machinery space. Good: it stands with the others, at one place or as few as possible, and can be reached when the space burns.</source>
        <translation type="unfinished">Trouvez la commande hors du local de machines. Bon&#xa0;: elle est avec les autres, en un seul endroit ou le moins d&apos;endroits possible, et reste accessible quand le local brûle.</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. Watertight doors are outside the rule; doors to the open deck have a row of their own.</source>
        <translation type="unfinished">Comparez la plaque de la porte avec sa cloison&#xa0;: A-15 suffit dans A-60, A-30 et A-15. Les portes étanches à l&apos;eau sont hors de la règle&#xa0;; les portes donnant sur le pont découvert ont leur propre ligne.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead solid or hollow steel or equal</source>
        <translation type="unfinished">Porte dans une cloison du type A&#xa0;: acier creux ou équivalent, rempli d&apos;isolant de structure approuvé&#xa0;; dans une cloison A-0, acier plein ou creux ou équivalent</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">En acier ou équivalent, et remplie d&apos;isolant approuvé si sa cloison est A-15 ou plus&#xa0;?</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its papers. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling that is not on the papers.</source>
        <translation type="unfinished">Frappez sur le vantail et lisez ses documents. A-60, A-30, A-15&#xa0;: rempli d&apos;isolant approuvé. A-0&#xa0;: acier, plein ou creux. Mauvais&#xa0;: bois, plastiques, un remplissage qui n&apos;est pas dans les documents.</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary solid or hollow steel or equal</source>
        <translation type="unfinished">Porte dans un cloisonnement du type A&#xa0;: acier creux ou équivalent, rempli d&apos;isolant de structure approuvé&#xa0;; dans un cloisonnement A-0, acier plein ou creux ou équivalent</translation>
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
        <source>Look at leaf and frame, and ask for the approval of anything but metal. No class is printed for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Regardez vantail et cadre, et demandez l&apos;approbation de tout ce qui n&apos;est pas du métal. Aucune classe n&apos;est imprimée pour une telle porte. Mauvais&#xa0;: bois ou plastiques sans approbation.</translation>
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
        <source>Look at leaf and frame, and ask for the approval of anything but steel. No class is printed for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Regardez vantail et cadre, et demandez l&apos;approbation de tout ce qui n&apos;est pas de l&apos;acier. Aucune classe n&apos;est imprimée pour une telle porte. Mauvais&#xa0;: vitres dans un cadre, bois ou plastiques sans approbation.</translation>
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
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no limit on the undercut are asked here.</source>
        <translation type="unfinished">Demandez l&apos;approbation du matériau. Bon&#xa0;: métal, ou panneau incombustible approuvé. Mauvais&#xa0;: bois ou plastiques. Ni loquet ni limite du jeu sous la porte ne sont exigés ici.</translation>
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
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph asks this in a C&apos; boundary: not applicable there.</source>
        <translation type="unfinished">Demandez l&apos;approbation du matériau. Bon&#xa0;: métal, ou panneau approuvé comme incombustible. Mauvais&#xa0;: bois ou plastiques. Aucun paragraphe ne l&apos;exige dans un cloisonnement C&apos;&#xa0;: sans objet dans ce cas.</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then free of the rules for A-class doors</source>
        <translation type="unfinished">Une porte donnant sur le pont découvert dans une cloison du type A peut être en bois dur, d&apos;au moins 44.5 mm (1 3/4 in) d&apos;épaisseur, et échappe alors aux règles des portes du type A</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">En bois dur d&apos;au moins 44.5 mm (1 3/4 in) d&apos;épaisseur&#xa0;?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. Whether such a door at a stairway must also close by itself is not said: ask.</source>
        <translation type="unfinished">Bois dur, mesuré au bord du vantail&#xa0;: 1 3/4 pouce. Le texte ne dit pas si une telle porte, à un escalier, doit aussi se fermer d&apos;elle-même&#xa0;: demandez.</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Une porte donnant sur un pont exposé dans un cloisonnement du type A peut être en bois dur, d&apos;au moins 45 mm (1.75 in) d&apos;épaisseur</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">En bois dur d&apos;au moins 45 mm (1.75 in) d&apos;épaisseur&#xa0;?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. Whether latch, undercut, frame and closing by itself bind such a door is not said: ask.</source>
        <translation type="unfinished">Bois dur, mesuré au bord du vantail&#xa0;: 45 mm. Le texte ne dit pas si loquet, jeu sous la porte, cadre et fermeture automatique s&apos;imposent à une telle porte&#xa0;: demandez.</translation>
    </message>
    <message>
        <source>One person can work it from each side</source>
        <translation type="unfinished">Une seule personne peut la manœuvrer de chaque côté</translation>
    </message>
    <message>
        <source>Can one person work it?</source>
        <translation type="unfinished">Une personne peut-elle la manœuvrer&#xa0;?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or somebody on the far side.</source>
        <translation type="unfinished">Seul, de chaque côté&#xa0;: ouvrez-la et fermez-la. Bon&#xa0;: une main à la poignée et une épaule au plus. Mauvais&#xa0;: il faut deux personnes, un outil, ou quelqu&apos;un de l&apos;autre côté.</translation>
    </message>
    <message>
        <source>Opens the way people escape, where practicable</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation, si possible dans la pratique</translation>
    </message>
    <message>
        <source>Opens the way people escape, or is that not practicable here?</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation, ou est-ce impossible ici dans la pratique&#xa0;?</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Portes des locaux de réunion, entourages d&apos;escalier, coursives et analogues. Une porte de cabine n&apos;est pas exemptée. Si c&apos;est impossible, dites pourquoi dans une note et répondez oui.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Portes des locaux d&apos;habitation, escaliers, tours d&apos;escalier, passages et locaux de commande&#xa0;; une porte de cabine est exemptée. Si c&apos;est impossible, dites pourquoi dans une note et répondez oui.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side in light and in dark, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Comme moyen d&apos;évacuation&#xa0;: ouverte par une seule personne des deux côtés, à la lumière comme dans le noir, de façon évidente et rapide, à poignées fixes</translation>
    </message>
    <message>
        <source>One person, at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">Une seule personne, aussitôt, dans le noir, par une poignée fixe&#xa0;?</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where a hand goes, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Fermez les yeux et ouvrez-la, de chaque côté. Bon&#xa0;: la poignée est là où va la main, fixe, et un seul geste l&apos;ouvre. Mauvais&#xa0;: poignée lâche, loqueteau caché, second geste.</translation>
    </message>
    <message>
        <source>As a means of escape it opens toward the way of escape</source>
        <translation type="unfinished">Comme moyen d&apos;évacuation, elle s&apos;ouvre dans le sens de l&apos;évacuation</translation>
    </message>
    <message>
        <source>Opens toward the way of escape?</source>
        <translation type="unfinished">S&apos;ouvre dans le sens de l&apos;évacuation&#xa0;?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. Here the rule has no words &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Placez-vous là d&apos;où viennent les gens et poussez. Ici, la règle n&apos;a pas les mots &quot;where practicable&quot; (si possible). Les portes desservant une seule cabine sont exemptées.</translation>
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
        <source>Ask who comes through it when the ship is full. A door that a passenger may use in an emergency is not one of crew alone.</source>
        <translation type="unfinished">Demandez qui y passe quand le navire est plein. Une porte qu&apos;un passager peut utiliser en cas d&apos;urgence n&apos;est pas réservée à l&apos;équipage.</translation>
    </message>
    <message>
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte servant de moyen d&apos;évacuation d&apos;au moins 810 mm (32 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; where only crew use it 28.</source>
        <translation type="unfinished">Le passage libre, vantail grand ouvert, à l&apos;endroit le plus étroit. 32 pouces&#xa0;; si seul l&apos;équipage l&apos;utilise, 28.</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte que seul l&apos;équipage utilise comme moyen d&apos;évacuation d&apos;au moins 710 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew alone.</source>
        <translation type="unfinished">Le passage libre, vantail grand ouvert, à l&apos;endroit le plus étroit. 28 pouces pour l&apos;équipage seul.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, save a crash door or a device easily forced, marked on both sides</source>
        <translation type="unfinished">Aucune serrure sur une porte menant à l&apos;une des deux échappées exigées, sauf porte enfonçable ou dispositif facile à forcer, signalé des deux côtés</translation>
    </message>
    <message>
        <source>Free of a lock on the way to a required escape, or easily forced and so marked on both sides?</source>
        <translation type="unfinished">Sans serrure sur le chemin d&apos;une échappée exigée, ou facile à forcer et signalée comme telle des deux côtés&#xa0;?</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked by a key that an officer holds is free of it.</source>
        <translation type="unfinished">Bon&#xa0;: pas de serrure&#xa0;; ou facile à forcer, avec un avis clair et durable des deux côtés. Une porte extérieure de rouf fermée par une clé que détient un officier en est dispensée.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, in sight with the door open</source>
        <translation type="unfinished">Sur la porte figurent les lettres F.S.D. et un numéro, hauts d&apos;au moins 9.5 mm (3/8 in) sur plaque, de 25.4 mm (1 in) au pochoir, visibles porte ouverte</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and in sight with the door open?</source>
        <translation type="unfinished">F.S.D. et son numéro dessus, assez grands et visibles porte ouverte&#xa0;?</translation>
    </message>
    <message>
        <source>Open the door, then look: F. S. D. and the register&apos;s number. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, gone, painted over. A door of a single room is free of it.</source>
        <translation type="unfinished">Ouvrez la porte, puis regardez&#xa0;: F. S. D. et le numéro du registre. Lettres de plaque 3/8 de pouce, au pochoir 1 pouce. Mauvais&#xa0;: cachées par le vantail ouvert, disparues, peintes. Une porte ne desservant qu&apos;une pièce en est dispensée.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts doors normally locked, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) exempte les portes normalement verrouillées, 78.47-35(a) les portes ne desservant qu&apos;une pièce&#xa0;: ce ne sont pas les mêmes portes.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not say how many are berthed.</source>
        <translation type="unfinished">Cela s&apos;impose à un navire de plus de 600 passagers ou de plus de 49 passagers à couchette (46 CFR 116.438(a))&#xa0;; le registre ne dit pas combien ont une couchette.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte&#xa0;; se ferme en cas de défaillance du système de commande</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when the system fails?</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte, et fermée d&apos;elle-même si le système fait défaut&#xa0;?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with the system off: it must shut each time. A door that is normally closed need not have it. Hooks are asked about apart.</source>
        <translation type="unfinished">Essayez-la du poste de sécurité, à la porte, et système coupé&#xa0;: elle doit se fermer chaque fois. Une porte normalement fermée n&apos;a pas à l&apos;avoir. Les crochets font l&apos;objet d&apos;une question à part.</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">Un dispositif de retenue, s&apos;il existe, est déclenché du poste de sécurité et à la porte, et quand son alimentation fait défaut</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when its power fails?</source>
        <translation type="unfinished">Déclenchée du poste de sécurité et à la porte, et fermée d&apos;elle-même si son alimentation fait défaut&#xa0;?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with its power off: it must shut each time. No hold-back fitted: not applicable. Hooks are asked about apart.</source>
        <translation type="unfinished">Essayez-la du poste de sécurité, à la porte, et alimentation coupée&#xa0;: elle doit se fermer chaque fois. Pas de dispositif de retenue&#xa0;: sans objet. Les crochets font l&apos;objet d&apos;une question à part.</translation>
    </message>
    <message>
        <source>No hook or other lasting means holds it open that the control station cannot let go</source>
        <translation type="unfinished">Aucun crochet ni autre moyen permanent ne la tient ouverte sans que le poste de sécurité puisse le libérer</translation>
    </message>
    <message>
        <source>Free of hooks that the control station cannot let go?</source>
        <translation type="unfinished">Sans crochet que le poste de sécurité ne peut libérer&#xa0;?</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that lets go from the control station, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Regardez derrière le vantail ouvert, sur la cloison et au pied. Bon&#xa0;: un aimant qui lâche depuis le poste de sécurité, ou rien. Mauvais&#xa0;: crochet, chaîne, cale fixée au pont.</translation>
    </message>
    <message>
        <source>The sentence on hooks exempts nobody; whether the exemption of normally closed doors, in the sentence on release, reaches it is not said.</source>
        <translation type="unfinished">La phrase sur les crochets n&apos;exempte personne&#xa0;; le texte ne dit pas si l&apos;exemption des portes normalement fermées, dans la phrase sur le déclenchement, s&apos;y étend.</translation>
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
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station lets go is allowed, and a door normally closed or locked is not exempt.</source>
        <translation type="unfinished">Regardez derrière le vantail ouvert, sur la cloison et au pied. Même un crochet que le poste de sécurité libère n&apos;est pas permis, et une porte normalement fermée ou verrouillée n&apos;est pas exemptée.</translation>
    </message>
    <message>
        <source>The latch of a double-swing door engages by the working of the release system</source>
        <translation type="unfinished">Le loquet d&apos;une porte va-et-vient s&apos;enclenche par l&apos;action du système de déclenchement</translation>
    </message>
    <message>
        <source>Does the release make its latch engage?</source>
        <translation type="unfinished">Le déclenchement fait-il s&apos;enclencher son loquet&#xa0;?</translation>
    </message>
    <message>
        <source>Release it and watch the latch come home by itself. Such a door stands only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Déclenchez-la et voyez le loquet s&apos;enclencher seul. Une telle porte n&apos;est admise que là où le va-et-vient est permis pour l&apos;usage du local.</translation>
    </message>
    <message>
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Largeur libre d&apos;une porte donnant sur un escalier d&apos;au moins 711.2 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has a row of its own.</source>
        <translation type="unfinished">Le passage libre, vantail grand ouvert, à l&apos;endroit le plus étroit. Toujours 28 pouces&#xa0;; davantage si plus de dix personnes sont desservies, ce qui a sa propre ligne.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served asks, and on the embarkation deck 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Une porte donnant sur un escalier a la largeur qu&apos;exige le nombre de personnes desservies et, au pont d&apos;embarquement, 1118 mm (44 in) de chaque côté</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">Assez large pour les personnes qu&apos;elle dessert&#xa0;?</translation>
    </message>
    <message>
        <source>Zone stairs, persons served: to 20 30 in, to 30 32, to 40 34, to 50 36, over 50 0.75 in each. Other passenger stairs over 50: 36. Crew over 10: 30. Embarkation deck: 44 to each side.</source>
        <translation type="unfinished">Escaliers de tranche, personnes desservies&#xa0;: jusqu&apos;à 20, 30 in&#xa0;; jusqu&apos;à 30, 32&#xa0;; jusqu&apos;à 40, 34&#xa0;; jusqu&apos;à 50, 36&#xa0;; plus de 50, 0.75 in chacune. Autres escaliers passagers, plus de 50&#xa0;: 36. Équipage, plus de 10&#xa0;: 30. Pont d&apos;embarquement&#xa0;: 44 de chaque côté.</translation>
    </message>
    <message>
        <source>The leaves of a double door may shut in any order</source>
        <translation type="unfinished">Les vantaux d&apos;une porte à deux vantaux peuvent se fermer dans n&apos;importe quel ordre</translation>
    </message>
    <message>
        <source>Do the leaves shut in any order?</source>
        <translation type="unfinished">Les vantaux se ferment-ils dans n&apos;importe quel ordre&#xa0;?</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it goes both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Fermez un vantail d&apos;abord, puis l&apos;autre&#xa0;; puis l&apos;inverse. Bon&#xa0;: cela marche dans les deux ordres. Dans un seul&#xa0;: le second vantail doit avoir sa propre feuillure.</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Si un vantail doit toujours se fermer le premier, le second a une feuillure d&apos;au moins 12.7 mm (1/2 in)</translation>
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
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted it may be idle, but it is there.</source>
        <translation type="unfinished">Regardez le bord du vantail. Bon&#xa0;: un pêne, et sa gâche dans le cadre. Mauvais&#xa0;: un galet, un aimant ou rien. Là où le va-et-vient est permis, le loquet peut être inactif, mais il est là.</translation>
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
        <source>For a hardwood door to the weather deck 46 CFR 116.435(c)(9) sets construction and rating aside and says nothing of this.</source>
        <translation type="unfinished">Pour une porte en bois dur donnant sur le pont exposé, 46 CFR 116.435(c)(9) écarte construction et classe et ne dit rien de ceci.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Son loquet se manœuvre des deux côtés</translation>
    </message>
    <message>
        <source>Does the handle draw the latch?</source>
        <translation type="unfinished">La poignée retire-t-elle le pêne&#xa0;?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not draw the bolt.</source>
        <translation type="unfinished">Fermez-la, puis ouvrez-la par sa poignée&#xa0;: d&apos;un côté, puis de l&apos;autre. Mauvais&#xa0;: un côté sans poignée, ou une poignée qui ne retire pas le pêne.</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Course du pêne d&apos;au moins 19.05 mm (3/4 in) dans une cloison du type A, 9.525 mm (3/8 in) dans une cloison du type B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Porte ouverte et retenue, mesurez de combien le pêne sort du bord. 3/4 de pouce&#xa0;; type B, 3/8 de pouce.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (printed beside it: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Course du pêne d&apos;au moins 20 mm (imprimé à côté&#xa0;: 0.75 in) dans un cloisonnement du type A, 9.5 mm (0.375 in) dans un cloisonnement du type B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. A class: the text prints 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Porte ouverte et retenue, mesurez de combien le pêne sort du bord. Type A&#xa0;: le texte imprime 20 mm et 0.75 pouce, ce qui fait 19.05 mm. Type B&#xa0;: 9.5 mm.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Jeu sous la porte, au-dessus du seuil ou du revêtement de pont, d&apos;au plus 12.7 mm (1/2 in) dans une cloison du type A, 25.4 mm (1 in) dans une cloison du type B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">L&apos;endroit le plus défavorable sous la porte fermée, jusqu&apos;au seuil ou au revêtement de pont. 1/2 pouce&#xa0;; type B, 1 pouce. Linoléum et analogues comptent comme revêtement de pont.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Jeu sous la porte, au-dessus du seuil ou du revêtement de pont, d&apos;au plus 12.7 mm (1/2 in) dans un cloisonnement du type A, 25 mm (1 in) dans un cloisonnement du type B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">L&apos;endroit le plus défavorable sous la porte fermée, jusqu&apos;au seuil ou au revêtement de pont. 1/2 pouce&#xa0;; type B, 25 mm ou 1 pouce. Linoléum et analogues comptent comme revêtement de pont.</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Ni tapis ni moquette ne traverse l&apos;ouverture de la porte</translation>
    </message>
    <message>
        <source>Free of rugs and carpets that run through?</source>
        <translation type="unfinished">Sans tapis ni moquette qui traverse&#xa0;?</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Regardez le pont sous la porte ouverte. Bon&#xa0;: seuil, pont nu, linoléum ou analogue. Mauvais&#xa0;: un tapis ou une moquette qui passe d&apos;un côté à l&apos;autre.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Jeu entre les vantaux qui fonctionnent seuls, et en haut et sur les côtés d&apos;une porte va-et-vient, d&apos;au plus 3.175 mm (1/8 in)</translation>
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
        <source>Net area of a vent grille or louver in a B-class bulkhead&apos;s door at most 0.186 m2 (2 sq ft)</source>
        <translation type="unfinished">Surface nette d&apos;une grille d&apos;aération ou persienne dans la porte d&apos;une cloison du type B d&apos;au plus 0.186 m2 (2 sq ft)</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K prints nothing on grilles in such doors.</source>
        <translation type="unfinished">Additionnez les fentes libres de la grille, sans son cadre. 2 pieds carrés. Pas de grille&#xa0;: 0. Subchapter K n&apos;imprime rien sur les grilles de telles portes.</translation>
    </message>
    <message>
        <source>A vent grille or louver stands only in the lower half of a B-class bulkhead&apos;s door</source>
        <translation type="unfinished">Une grille d&apos;aération ou persienne ne se trouve que dans la moitié inférieure de la porte d&apos;une cloison du type B</translation>
    </message>
    <message>
        <source>Is the grille in the lower half alone?</source>
        <translation type="unfinished">La grille est-elle dans la moitié inférieure seulement&#xa0;?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: not applicable.</source>
        <translation type="unfinished">Comparez son bord supérieur avec le milieu du vantail. Pas de grille&#xa0;: sans objet.</translation>
    </message>
    <message>
        <source>A double-swing door stands only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Une porte va-et-vient n&apos;est admise que là où le va-et-vient est permis pour l&apos;usage du local</translation>
    </message>
    <message>
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">Le va-et-vient est-il permis pour l&apos;usage du local&#xa0;?</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is for. Where double swing is permitted its latch may normally be idle, but the door has one.</source>
        <translation type="unfinished">Demandez l&apos;approbation, ou voyez à quoi sert le local. Là où le va-et-vient est permis, son loquet peut être normalement inactif, mais la porte en a un.</translation>
    </message>
    <message>
        <source>No double-swing door, save between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Pas de porte va-et-vient, sauf entre un local de préparation des repas et un réfectoire ou une salle à manger</translation>
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
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, hinged or pivoted steel cover with a bullet catch or the like, easy to work and shutting by itself</source>
        <translation type="unfinished">Un orifice pour manche d&apos;incendie, s&apos;il existe&#xa0;: coin inférieur opposé aux charnières, environ 152 mm de côté, volet en acier à charnière ou à pivot, avec loqueteau à bille ou analogue, facile à manœuvrer et se fermant de lui-même</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 inches square, no tolerance printed: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. Register wrong, no port there: not applicable.</source>
        <translation type="unfinished">Coin inférieur opposé aux charnières, environ 6 pouces de côté, sans tolérance imprimée&#xa0;: une manche doit passer et la porte se fermer dessus. Levez le volet en acier et lâchez&#xa0;: il doit retomber fermé. Registre erroné, pas d&apos;orifice&#xa0;: sans objet.</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is a vertical one</source>
        <translation type="unfinished">Une porte dans un local d&apos;habitation, un escalier, une tour d&apos;escalier ou une coursive est verticale</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) asks for one?</source>
        <translation type="unfinished">Est-ce une porte verticale, là où (b)(1) l&apos;exige&#xa0;?</translation>
    </message>
    <message>
        <source>This one lies in a deck. Between machinery, stores or other crew spaces: not applicable. Over a stair: both paragraphs stand, and you decide.</source>
        <translation type="unfinished">Celle-ci est dans un pont. Entre machines, magasins ou autres locaux de l&apos;équipage&#xa0;: sans objet. Au-dessus d&apos;un escalier&#xa0;: les deux paragraphes valent, à vous de décider.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) asks for vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither sets the other aside.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) exige des portes verticales aux escaliers, (c)(7)(iii) parle de portes dans un pont de la largeur de l&apos;escalier&#xa0;: aucun n&apos;écarte l&apos;autre.</translation>
    </message>
    <message>
        <source>A door in a deck gives only on a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Une porte dans un pont ne donne que sur un local accessible au seul équipage, et seul l&apos;équipage l&apos;utilise</translation>
    </message>
    <message>
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">Seul l&apos;équipage peut-il atteindre le local, et seul l&apos;équipage utilise-t-il la porte&#xa0;?</translation>
    </message>
    <message>
        <source>Two tests: nobody but crew can get to the space, and nobody but crew use the door. Bad: a passenger could come to it, locked or not.</source>
        <translation type="unfinished">Deux critères&#xa0;: personne d&apos;autre que l&apos;équipage ne peut atteindre le local, et personne d&apos;autre n&apos;utilise la porte. Mauvais&#xa0;: un passager pourrait y arriver, qu&apos;elle soit verrouillée ou non.</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Une porte dans un pont se ferme d&apos;elle-même contre une gîte de 3.5 degrés</translation>
    </message>
    <message>
        <source>Clear the stair and let it go from fully open and half open. Good: all the way home each time. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Dégagez l&apos;escalier, puis lâchez-la grande ouverte et à demi ouverte. Bon&#xa0;: jusqu&apos;en butée chaque fois. La partie des 3.5 degrés ne peut pas se voir sur un navire droit.</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Une porte dans un pont n&apos;a pas de crochet de retenue</translation>
    </message>
    <message>
        <source>Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up. Nobody stands under it.</source>
        <translation type="unfinished">Regardez la cloison et l&apos;hiloire à côté de la porte ouverte. Bon&#xa0;: ni crochet, ni chaîne, ni broche qui la tienne levée. Personne ne doit se tenir dessous.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, lets go at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">Le dispositif de retenue d&apos;une porte dans un pont, s&apos;il existe, lâche à la porte, sur un signal d&apos;un local de commande, et quand l&apos;alimentation est interrompue</translation>
    </message>
    <message>
        <source>Lets go at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">Lâche-t-elle à la porte, depuis le local de commande et en cas de panne d&apos;alimentation&#xa0;?</translation>
    </message>
    <message>
        <source>Clear the stair first. At the door, from the control space, with its power off: it must shut each time. No hold-back fitted: not applicable.</source>
        <translation type="unfinished">Dégagez d&apos;abord l&apos;escalier. À la porte, du local de commande, alimentation coupée&#xa0;: elle doit se fermer chaque fois. Pas de dispositif de retenue&#xa0;: sans objet.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure from below of 0.07 kPa (0.01 psi)</source>
        <translation type="unfinished">Le loquet d&apos;une porte dans un pont la tient fermée contre une pression par-dessous de 0.07 kPa (0.01 psi)</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">Le loquet tient-il contre 0.07 kPa par-dessous&#xa0;?</translation>
    </message>
    <message>
        <source>A check of papers: the maker&apos;s figure, 0.07 kPa, about 7 kg on each square metre. Shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Un contrôle de documents&#xa0;: la valeur du fabricant, 0.07 kPa, environ 7 kg par mètre carré. Porte fermée, poussez par-dessous vers le haut&#xa0;: elle ne doit pas se soulever.</translation>
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
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint is glass.</source>
        <translation type="unfinished">Parcourez du regard tout le vantail, les deux faces, les panneaux vitrés aussi. Une vitre sous un cache ou sous la peinture est du verre.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m2 (100 sq in)</source>
        <translation type="unfinished">Verre armé dans une porte du type A d&apos;au plus 0.0645 m2 (100 sq in)</translation>
    </message>
    <message>
        <source>The glass that can be seen, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">Le verre visible, hauteur par largeur. 100 pouces carrés. Pas de verre&#xa0;: 0. Les portes donnant sur le pont découvert n&apos;ont pas cette limite.</translation>
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
        <source>Is its glass wired, where it opens onto a place of embarkation or lowering?</source>
        <translation type="unfinished">Son verre est-il armé, si elle s&apos;ouvre sur un lieu d&apos;embarquement ou de mise à l&apos;eau&#xa0;?</translation>
    </message>
    <message>
        <source>Asked where it opens there from a service, cargo or machinery space, or from accommodation with furniture that burns. Its area is free. Opening elsewhere: not applicable.</source>
        <translation type="unfinished">Demandé si elle s&apos;y ouvre depuis un local de service, un espace à cargaison, un local de machines, ou un local d&apos;habitation à mobilier combustible. Sa surface est libre. Si elle s&apos;ouvre ailleurs&#xa0;: sans objet.</translation>
    </message>
    <message>
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Tout verre dans une porte a au moins 6.35 mm (1/4 in) d&apos;épaisseur</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure of the papers. The thinnest pane counts.</source>
        <translation type="unfinished">Y compris les portes en bois dur donnant sur le pont découvert. Mesurez à un bord libre, ou prenez la valeur des documents. La vitre la plus mince compte.</translation>
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
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone. In a hardwood door to the open deck: not applicable.</source>
        <translation type="unfinished">Suivez le bord de chaque vitre, sur les deux faces. Bon&#xa0;: du métal tout autour. Mauvais&#xa0;: bois, mastic ou caoutchouc seul. Dans une porte en bois dur donnant sur le pont découvert&#xa0;: sans objet.</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is asked: strands lie level, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Verre armé à fils simples, là où le verre armé est exigé&#xa0;: fils horizontaux, espacés d&apos;au plus 50.8 mm (2 in)</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: they lie level. Bad: upright. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">De fil à fil, au plus large. 2 pouces. Bon&#xa0;: ils sont horizontaux. Mauvais&#xa0;: verticaux. Verre à treillis métallique&#xa0;: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary asks</source>
        <translation type="unfinished">Les fenêtres de la porte suivent les règles des fenêtres&#xa0;: verre trempé ou feuilleté d&apos;au moins 6.5 mm (0.25 in) d&apos;épaisseur, cadre et volet comme l&apos;exige son cloisonnement</translation>
    </message>
    <message>
        <source>Are its windows as those of its boundary must be?</source>
        <translation type="unfinished">Ses fenêtres sont-elles comme doivent l&apos;être celles de son cloisonnement&#xa0;?</translation>
    </message>
    <message>
        <source>A class: steel frame and, inside, an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. A fire window of a listed make will do in B class.</source>
        <translation type="unfinished">Type A&#xa0;: cadre en acier et, en intérieur, volet isolé. B-15&#xa0;: verre armé, et volet à maillon fusible&#xa0;; B-0&#xa0;: verre armé. Une fenêtre pare-feu d&apos;un modèle homologué suffit dans le type B.</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) on windows in doors stands beside the wired glass of 116.435(c)(9) and (10) without a word of which goes first.</source>
        <translation type="unfinished">46 CFR 116.433(f), sur les fenêtres dans les portes, figure à côté du verre armé de 116.435(c)(9) et (10) sans un mot sur celui qui prime.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where the bulkhead may have it</source>
        <translation type="unfinished">Placage combustible seulement comme et là où la cloison peut en avoir</translation>
    </message>
    <message>
        <source>Free of veneer that its bulkhead may not have?</source>
        <translation type="unfinished">Sans placage que sa cloison ne peut avoir&#xa0;?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than the bulkhead beside it may have. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Comparez vantail et cloison. Bon&#xa0;: pas de placage, ou pas plus que ne peut en avoir la cloison voisine. Mauvais&#xa0;: bois ou stratifié sur une porte dont la cloison n&apos;en a pas.</translation>
    </message>
    <message>
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Une porte décorative voisine est en matériau incombustible approuvé, ne la gêne pas et, sur une voie principale d&apos;évacuation, s&apos;ouvre dans le même sens</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns or opens the wrong way?</source>
        <translation type="unfinished">Sans porte décorative qui la gêne, brûle ou s&apos;ouvre dans le mauvais sens&#xa0;?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Manœuvrez les deux ensemble. Aucune ici&#xa0;: sans objet. Mauvais&#xa0;: il faut l&apos;ouvrir d&apos;abord, sa poignée gêne, ou elle s&apos;ouvre contre le flux.</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Une porte décorative voisine est incombustible ou en bois dur, ne la gêne pas et s&apos;ouvre dans le même sens&#xa0;; aucune dans les escaliers et tours d&apos;escalier</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns, opens the wrong way or stands at a stair?</source>
        <translation type="unfinished">Sans porte décorative qui la gêne, brûle, s&apos;ouvre dans le mauvais sens ou se trouve à un escalier&#xa0;?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, it opens the other way, or it stands at a stairway.</source>
        <translation type="unfinished">Manœuvrez les deux ensemble. Aucune ici&#xa0;: sans objet. Mauvais&#xa0;: il faut l&apos;ouvrir d&apos;abord, elle s&apos;ouvre dans l&apos;autre sens, ou elle se trouve à un escalier.</translation>
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
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted: maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Les chants verticaux du vantail ouvert. Bon : plaque de métal, vissée ou rivetée : fabricant, classe, approbation, plan. Mauvais : aucune, un autocollant, peinte, une mention manque.</translation>
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
        <source>The gap between leaf and frame is no wider than in the fire test of the door</source>
        <translation type="unfinished">Le jeu entre vantail et dormant n&apos;est pas plus grand que lors de l&apos;essai au feu de la porte</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">Jeu entre vantail et dormant pas plus grand qu&apos;à son essai au feu ?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Ask for the report of its fire test: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or nobody knows what was tested.</source>
        <translation type="unfinished">Tout autour du vantail fermé, avec une jauge. Demandez le rapport de l&apos;essai au feu : il donne le jeu essayé. Bon : nulle part plus grand. Mauvais : plus grand, ou nul ne sait ce qui fut essayé.</translation>
    </message>
    <message>
        <source>The gap between leaf and frame is the smallest with which the door works</source>
        <translation type="unfinished">Le jeu entre vantail et dormant est le plus petit avec lequel la porte fonctionne</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">Jeu entre vantail et dormant aussi petit que possible ?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or a side that hangs open.</source>
        <translation type="unfinished">Tout autour du vantail fermé, avec une jauge. Bon : régulier, et pas plus qu&apos;il n&apos;en faut au vantail pour bouger. Mauvais : on voit le jour, ou un côté bâille.</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures</source>
        <translation type="unfinished">quel jeu est praticable, le texte ne le dit pas en chiffres</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">quel jeu est praticable, le texte ne le dit pas en chiffres ; un navire construit avant le 3 février 2017 peut garder sa règle d&apos;avant jusqu&apos;au remplacement de la porte ou à la refonte du navire (SOR/2017-14, art. 203)</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">Ni grille ni persienne dans la porte</translation>
    </message>
    <message>
        <source>No grille or louvre in it?</source>
        <translation type="unfinished">Ni grille ni persienne ?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or holes for air, open or closed with a plate.</source>
        <translation type="unfinished">Les deux faces du vantail, de haut en bas. Bon : rien. Mauvais : une grille, une persienne ou des trous d&apos;aération, ouverts ou fermés par une tôle.</translation>
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
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, next to no draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Fermez-la, mettez une lampe de l&apos;autre côté et regardez le long des chants ; cherchez un courant d&apos;air. Bon : pas de jour, presque pas d&apos;air. Mauvais : du jour, un joint qui ne touche pas, un trou.</translation>
    </message>
    <message>
        <source>A door of a machinery space of category A is gastight when shut</source>
        <translation type="unfinished">La porte d&apos;un local de machines de catégorie A est étanche aux gaz une fois fermée</translation>
    </message>
    <message>
        <source>Gastight when shut?</source>
        <translation type="unfinished">Étanche aux gaz une fois fermée ?</translation>
    </message>
    <message>
        <source>Shut it with the fans of the machinery space running and go round the edge with a hand and a lamp. Good: no draught and no light anywhere. The space is not of category A: n/a.</source>
        <translation type="unfinished">Fermez-la, ventilateurs du local en marche, et suivez le bord avec la main et une lampe. Bon : ni air ni jour nulle part. Le local n&apos;est pas de catégorie A : sans objet.</translation>
    </message>
    <message>
        <source>The leaf overlaps its frame</source>
        <translation type="unfinished">Le vantail recouvre son dormant</translation>
    </message>
    <message>
        <source>Does the leaf overlap its frame?</source>
        <translation type="unfinished">Le vantail recouvre-t-il son dormant ?</translation>
    </message>
    <message>
        <source>Shut it and look at the edge from both sides. Good: leaf or stop covers the gap on every side that has a frame. Bad: you can look straight through between leaf and frame.</source>
        <translation type="unfinished">Fermez-la et regardez le bord des deux côtés. Bon : vantail ou butée couvre le jeu sur chaque côté qui a un dormant. Mauvais : on voit au travers entre vantail et dormant.</translation>
    </message>
    <message>
        <source>No opening for air in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Pas d&apos;ouverture d&apos;aération dans la porte d&apos;un entourage d&apos;escalier, ni dessous</translation>
    </message>
    <message>
        <source>No opening for air in or under it?</source>
        <translation type="unfinished">Pas d&apos;ouverture d&apos;aération dedans ni dessous ?</translation>
    </message>
    <message>
        <source>The whole leaf and its foot, shut. Good: no grille, no holes, no cut for air at the foot. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Tout le vantail et son pied, fermé. Bon : ni grille, ni trous, ni coupe d&apos;aération au pied. Mauvais : une grille où que ce soit, ou un jour laissé dessous pour l&apos;air.</translation>
    </message>
    <message>
        <source>Every hose port that is fitted: self-closing, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Tout orifice de manche existant : à fermeture automatique, 150 mm de côté libres porte fermée, aussi résistant au feu que la porte</translation>
    </message>
    <message>
        <source>A hose port that is fitted: self-closing, 150 mm square</source>
        <translation type="unfinished">Orifice de manche, s&apos;il y en a un : à fermeture automatique, 150 mm de côté</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Se ferme seule</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. The text prints no angle. The space is not of category A: n/a.</source>
        <translation type="unfinished">Lâchez-la grande ouverte, à moitié et d&apos;un petit angle. Bon : jusqu&apos;au bout à chaque fois. Le texte n&apos;imprime pas d&apos;angle. Le local n&apos;est pas de catégorie A : sans objet.</translation>
    </message>
    <message>
        <source>Opening for air in or under the door of a corridor no more than 0.05 m2, with a non-combustible grille</source>
        <translation type="unfinished">Ouverture d&apos;aération dans la porte d&apos;une coursive ou dessous, au plus 0,05 m2, avec grille incombustible</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">La grille du vantail ou la coupe dessous. Comptez seulement le passage libre entre les barreaux ; 0 s&apos;il n&apos;y en a pas. La grille doit être incombustible. Pas une porte de coursive : sans objet.</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half of the door of a corridor, or under it</source>
        <translation type="unfinished">Ouverture d&apos;aération seulement dans la moitié basse de la porte d&apos;une coursive, ou dessous</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half, or none?</source>
        <translation type="unfinished">Ouverture d&apos;aération seulement dans la moitié basse, ou aucune ?</translation>
    </message>
    <message>
        <source>Find every opening for air in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">Cherchez toute ouverture d&apos;aération du vantail. Bon : dans la moitié basse, dessous, ou aucune. Mauvais : grille ou trous dans la moitié haute. Pas une porte de coursive : sans objet.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule prints no angle that was read</source>
        <translation type="unfinished">Se ferme seule ; de l&apos;ancienne règle aucun angle n&apos;a été lu</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar.</source>
        <translation type="unfinished">Lâchez-la grande ouverte, à moitié et d&apos;un petit angle. Bon : jusqu&apos;au bout à chaque fois. Mauvais : elle reste entrouverte.</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">si l&apos;art. 158 du Règlement sur la construction des coques est l&apos;ancienne règle que ce navire garde (SOR/2017-14, art. 103 et 203)</translation>
    </message>
    <message>
        <source>What holds it open is fail-safe: it closes when the hold fails</source>
        <translation type="unfinished">Ce qui la tient ouverte est à sécurité positive : elle se ferme quand la retenue lâche</translation>
    </message>
    <message>
        <source>What holds it open is released at the door</source>
        <translation type="unfinished">Ce qui la tient ouverte se déclenche à la porte</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon : la porte est libérée. Mauvais : rien ne se passe.</translation>
    </message>
    <message>
        <source>What holds it open is released from the wheelhouse</source>
        <translation type="unfinished">Ce qui la tient ouverte se déclenche depuis la timonerie</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">La timonerie la déclenche-t-elle ?</translation>
    </message>
    <message>
        <source>The wheelhouse releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">La timonerie déclenche la porte ou son groupe. Bon : elle lâche et se ferme. Mauvais : elle reste ouverte. Une personne de surveillance à chaque porte du groupe, des deux côtés.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans stand above these rows; changes after 25 July 2025 were not checked.</source>
        <translation type="unfinished">Transports Canada, ses inspecteurs et les plans approuvés priment sur ces lignes ; les changements après le 25 juillet 2025 n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and these rows (ss. 101, 102, 120); one built before 1 July 2002 may keep the structural fire protection of its day, but not part E, replaced parts or a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Navires à passagers canadiens munis de certificats de la Convention : SOLAS II-2 les oblige, et ces lignes (art. 101, 102, 120) ; un navire construit avant le 1er juillet 2002 peut garder la protection structurelle de son époque, mais pas pour la partie E, les pièces remplacées ni une refonte importante (art. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, state of 23 July 2026), everything about doors</source>
        <translation type="unfinished">Les lois codifiées du Canada en XML (github.com/justicecanada/laws-lois-xml, état du 23 juillet 2026), tout ce qui touche les portes</translation>
    </message>
    <message>
        <source>The law of its day for a ship built before 1 July 2002</source>
        <translation type="unfinished">La loi de son époque pour un navire construit avant le 1er juillet 2002</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, of 24 m or more, or of more than 15 gross tons, less than 24 m and more than 36 berthed passengers: SOLAS II-2 binds them too (s. 102(1)); berths decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Navires à passagers canadiens sans certificats de la Convention, de 24 m et plus, ou de plus de 15 de jauge brute, moins de 24 m et plus de 36 passagers avec couchette : SOLAS II-2 les oblige aussi (art. 102(1)) ; les couchettes décident lesquels comptent pour plus de 36 passagers (art. 102(3))</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, but for s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Les anciennes règles que peut garder un navire construit avant le 3 février 2017, hormis l&apos;art. 158 du Règlement sur la construction des coques</translation>
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
        <source>The door is of the class of the partition it stands in; a watertight door needs no insulation</source>
        <translation type="unfinished">La porte est de la classe de la cloison où elle se trouve ; une porte étanche n&apos;a pas besoin d&apos;isolation</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door is at least as strong. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Comparez la plaque de la porte avec la classe de la cloison autour. Bon : la porte est au moins aussi forte. Une porte étanche n&apos;a pas besoin d&apos;isolation (art. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>read for vessels built from 30 December 2008 until ES-TRIN took its place on 7 October 2018 (a date from memory); for any other vessel the text was not read</source>
        <translation type="unfinished">lu pour les bateaux construits du 30 décembre 2008 jusqu&apos;à ce qu&apos;ES-TRIN le remplace le 7 octobre 2018 (date de mémoire) ; pour tout autre bateau le texte n&apos;a pas été lu</translation>
    </message>
    <message>
        <source>Closes by itself; the text prints no angle, no seconds and no speed</source>
        <translation type="unfinished">Se ferme seule ; le texte n&apos;imprime ni angle, ni secondes, ni vitesse</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The text prints no angle, seconds or speed.</source>
        <translation type="unfinished">Lâchez-la grande ouverte, à moitié et d&apos;un petit angle. Bon : jusqu&apos;au bout à chaque fois. Mauvais : elle reste entrouverte. Le texte n&apos;imprime ni angle, ni secondes, ni vitesse.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Tenue ouverte en service, elle peut être fermée sur place</translation>
    </message>
    <message>
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">Peut-elle être fermée sur place ?</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go and it closes. Bad: it does nothing.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon : elle est libérée et se ferme. Mauvais : rien ne se passe.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed from a place that is permanently manned</source>
        <translation type="unfinished">Tenue ouverte en service, elle peut être fermée depuis un endroit gardé en permanence</translation>
    </message>
    <message>
        <source>Can it be closed from the place that is always manned?</source>
        <translation type="unfinished">Peut-elle être fermée depuis l&apos;endroit gardé en permanence ?</translation>
    </message>
    <message>
        <source>The place that is always manned releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">L&apos;endroit gardé en permanence déclenche la porte ou son groupe. Bon : elle lâche et se ferme. Mauvais : elle reste ouverte. Une personne de surveillance à chaque porte, des deux côtés.</translation>
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
        <source>After the release from the manned place, open it by hand and let go. Good: it opens, and closes again without harm to anybody. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Une fois déclenchée depuis l&apos;endroit gardé, ouvrez-la à la main et lâchez. Bon : elle s&apos;ouvre, et se referme sans blesser. Mauvais : elle reste bloquée, ou ouverte.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which took the place of this text, was not read.</source>
        <translation type="unfinished">La commission de visite qui délivre le certificat du bateau décide ; ES-TRIN, qui a remplacé ce texte, n&apos;a pas été lu.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, by their certificate of Directive 2006/87/EC</source>
        <translation type="unfinished">Bateaux à passagers des voies de navigation intérieure de l&apos;Union européenne, selon leur certificat de la directive 2006/87/CE</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations that are not in a code); the end of its dates is from memory</source>
        <translation type="unfinished">L&apos;arrêté français du 30 décembre 2008, annexe, art. 15.11(8) et (10) (github.com/etalab, lois et règlements non codifiés) ; la fin de ses dates est de mémoire</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which took its place; what was allowed to vessels that were there before; the tables of partitions</source>
        <translation type="unfinished">Le chapitre 19 d&apos;ES-TRIN, qui l&apos;a remplacé ; ce qui était permis aux bateaux existants ; les tableaux de cloisons</translation>
    </message>
    <message>
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">le code dit &quot;should&quot; (devrait)</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The code asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Actionnez l&apos;interrupteur ou la poignée à la porte. Bon : la porte est libérée. Mauvais : rien ne se passe. Le code le demande à la porte, non des deux côtés.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes that came after LY3 were not read.</source>
        <translation type="unfinished">L&apos;Administration qui certifie le yacht décide ; les codes venus après LY3 n&apos;ont pas été lus.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified by LY3; the code says &quot;should&quot;, so a failure is the inspector&apos;s to decide</source>
        <translation type="unfinished">Grands yachts commerciaux de 500 de jauge brute et plus certifiés LY3 ; le code dit &quot;should&quot;, un échec est donc à l&apos;appréciation de l&apos;inspecteur</translation>
    </message>
    <message>
        <source>A page of imorules.com, of which paragraph 14B.2.7.4 was at hand to sub-item (e)</source>
        <translation type="unfinished">Une page d&apos;imorules.com, dont le paragraphe 14B.2.7.4 était disponible jusqu&apos;au point (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates between which LY3 was in force; what came after it. Other rows of SOLAS are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 après le point (e), et les autres paragraphes sur l&apos;incendie ; les dates entre lesquelles LY3 était en vigueur ; ce qui a suivi. Les autres lignes SOLAS sont montrées comme recommandation.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration stand above these periods; no days of grace are printed.</source>
        <translation type="unfinished">Le plan d&apos;entretien de la compagnie et l&apos;Administration du pavillon priment sur ces périodes ; aucun jour de grâce n&apos;est imprimé.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date; what the circular says of maintenance, not of a test</source>
        <translation type="unfinished">Tout navire, quelle que soit sa date ; ce que la circulaire dit de l&apos;entretien, non d&apos;un essai</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432 ; SOLAS III/19 et III/30 dans la base des traités du gouvernement néerlandais (BWBV0003264, avril 2015)</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: rows of SOLAS are shown as advice and fail nothing, and rows of common practice are left to the inspector.</source>
        <translation type="unfinished">L&apos;Administration du navire décide de ce qui l&apos;oblige : les lignes SOLAS sont montrées comme recommandation et ne font rien échouer, et celles de pratique courante sont à l&apos;appréciation de l&apos;inspecteur.</translation>
    </message>
    <message>
        <source>Vessels of other flags, and of rules that are not named here: no text in this catalogue binds them, and everything they are told is advice</source>
        <translation type="unfinished">Navires d&apos;autres pavillons, et de règles non nommées ici : aucun texte de ce catalogue ne les oblige, et tout ce qu&apos;on leur dit est recommandation</translation>
    </message>
    <message>
        <source>Every text of such a flag</source>
        <translation type="unfinished">Tout texte d&apos;un tel pavillon</translation>
    </message>
    <message>
        <source>Rows of common practice have no published source here: they never fail a door by themselves, the inspector decides.</source>
        <translation type="unfinished">Les lignes de pratique courante n&apos;ont ici aucune source publiée : elles ne font jamais échouer une porte à elles seules, l&apos;inspecteur décide.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Tout navire, quels que soient son pavillon et sa date</translation>
    </message>
    <message>
        <source>There is no published text of it.</source>
        <translation type="unfinished">Il n&apos;en existe aucun texte publié.</translation>
    </message>
    <message>
        <source>The speed of closing is controlled where that is needed so that nobody is endangered; the older text prints no figure</source>
        <translation type="unfinished">La vitesse de fermeture est réglée là où il le faut pour que personne ne soit en danger ; l&apos;ancien texte n&apos;imprime aucun chiffre</translation>
    </message>
    <message>
        <source>Speed of closing controlled, so that nobody is endangered?</source>
        <translation type="unfinished">Vitesse de fermeture réglée, sans danger pour personne ?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text prints no seconds and no metres a second.</source>
        <translation type="unfinished">Regardez-la se fermer depuis l&apos;ouverture complète. Bon : mouvement régulier, on a le temps de s&apos;écarter. Mauvais : elle claque ou s&apos;emballe. L&apos;ancien texte n&apos;imprime ni secondes ni mètres par seconde.</translation>
    </message>
    <message>
        <source>where the speed has to be controlled, the text leaves to judgement; it prints no figure</source>
        <translation type="unfinished">où la vitesse doit être réglée, le texte le laisse à l&apos;appréciation ; il n&apos;imprime aucun chiffre</translation>
    </message>
    <message>
        <source>Of the texts before 1 July 2002 only a part was read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">Des textes d&apos;avant le 1er juillet 2002 une partie seulement a été lue : pour un navire plus ancien, demandez le plan approuvé et les règles de son époque.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Navires à passagers SOLAS construits avant le 1er juillet 2002, qui gardent le chapitre II-2 tel qu&apos;amendé à leur date (II-2/1.2.1 de 2015) ; après une réparation ou transformation au moins cela, après une transformation importante le nouveau texte dans la mesure du raisonnable (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Règles de Taïwan sur la structure des navires contre l&apos;incendie, art. 27, au 9 janvier 2018 : une transposition nationale de la rédaction de 1981/83 de SOLAS II-2/30</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres a second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 de 1981/83 dans un imprimé ; les amendements de 1992 aux règles 30, 41-1 et 41-2 (secondes, mètres par seconde, alarme, dates de mise à niveau) : demandez le plan approuvé ; les tableaux d&apos;avant 2002</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Navires à passagers SOLAS construits avant le 1er juillet 2002 et ayant des locaux de catégorie spéciale</translation>
    </message>
    <message>
        <source>An English print of MSC.1(XLV) on the internet, of which only a part was at hand: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Une copie anglaise de MSC.1(XLV) sur internet, dont une partie seulement était disponible : II-2/37.1.1.2 et 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, the regulation on doors (30) among it</source>
        <translation type="unfinished">Le reste des amendements de 1981, dont la règle sur les portes (30)</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Une alarme sonne quand elle est libérée depuis le poste de commande</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">Une alarme a-t-elle sonné quand le poste de commande l&apos;a libérée ?</translation>
    </message>
    <message>
        <source>Listen at the door as the control station releases it. Good: the alarm sounds before the leaf stirs. Bad: silence, or an alarm that starts with the leaf. A silent sliding door crushes whoever stands in it.</source>
        <translation type="unfinished">Écoutez à la porte pendant que le poste la libère. Bien : l&apos;alarme sonne avant que le vantail bouge. Mal : le silence, ou une alarme qui part avec le vantail. Une porte coulissante silencieuse écrase qui s&apos;y trouve.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; whether this door is in a public space the register does not say</source>
        <translation type="unfinished">9.4.1.1.8 nomme escaliers, locaux publics et cloisons de zone ; le registre ne dit pas si cette porte est dans un local public</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans stand above this catalogue; amendments after its edition were not checked.</source>
        <translation type="unfinished">Les règles locales, l&apos;Administration du pavillon et ses plans approuvés priment sur ce catalogue ; les amendements après son édition n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built on or after 1 July 2002; part E, condition and maintenance plan, of any date</source>
        <translation type="unfinished">Navires à passagers SOLAS construits à partir du 1er juillet 2002 ; la partie E, état et plan d&apos;entretien, de toute date</translation>
    </message>
    <message>
        <source>The English print in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">L&apos;imprimé anglais de la base des traités du gouvernement néerlandais (BWBV0003264, avril 2015), et l&apos;imprimé français du texte français (arrêté du 23 novembre 1987, division 221), qui confirme chaque chiffre</translation>
    </message>
    <message>
        <source>Amendments after April 2015: of MSC.421(98) nothing was seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations of IMO and of classification societies.</source>
        <translation type="unfinished">Les amendements après avril 2015 : de MSC.421(98) rien n&apos;a été vu ; de MSC.550(108), en vigueur le 1er janvier 2026, seulement qu&apos;elle renumérote II-2/9.6. Les interprétations de l&apos;OMI et des sociétés de classification.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) speaks of public spaces, stairway enclosures, corridors and the like; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) parle de locaux publics, d&apos;entourages d&apos;escalier, de coursives et autres ; il n&apos;est pas dit s&apos;il vise cette porte.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) speaks of accommodation spaces, stairways, stairtowers, passageways and control spaces; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) parle des emménagements, escaliers, tours d&apos;escalier, coursives et postes de commande ; il n&apos;est pas dit s&apos;il vise cette porte.</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may be asked what stairway doors are</source>
        <translation type="unfinished">Une porte extérieure donnant sur un entourage d&apos;escalier peut relever des règles des portes d&apos;escalier</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">Donne-t-elle sur un entourage d&apos;escalier ?</translation>
    </message>
    <message>
        <source>See what lies inside the door. Yes: a stairway enclosure. Neither answer is a fault: it decides what else is asked of the door.</source>
        <translation type="unfinished">Voyez ce qu&apos;il y a derrière la porte. Oui : un entourage d&apos;escalier. Aucune réponse n&apos;est une faute : elle décide de ce qui est encore demandé.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; whether 72.05-25(b)(9) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) admet le bois dur pour une porte vers le pont découvert ; il n&apos;est pas dit si 72.05-25(b)(9) vise encore celle qui donne sur un escalier.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; whether 116.435(c)(6) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) admet le bois dur pour une porte vers un pont exposé ; il n&apos;est pas dit si 116.435(c)(6) vise encore celle qui donne sur un escalier.</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the edition of 2015 were not checked. Later rules whose headings touch these parts, and whose text was not read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may stand while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 takes its place (116.400). A vessel that was there before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">L&apos;Officer in Charge, Marine Inspection, décide de ce qui s&apos;applique à un navire des États-Unis ; les changements après l&apos;édition de 2015 n&apos;ont pas été vérifiés. Règles ultérieures dont les titres touchent ces parties et dont le texte n&apos;a pas été lu : 81 FR 48219 (22 juillet 2016), 89 FR 76676 (18 septembre 2024) et, pour 46 CFR 111.99-3, 88 FR 16365 (16 mars 2023). Le sous-chapitre H est pour les navires de 100 de jauge brute et plus, ou de plus de 150 passagers, ou en voyages internationaux, commandés à partir du 26 mai 1965 ; ce qui fut approuvé avant peut rester tant qu&apos;il est en bon état (46 CFR 72.05-1, 72.05-90). Le sous-chapitre K est pour les navires de plus de 150 passagers, ou de 50 à 150 passagers avec couchette ; avec plus de 150 passagers avec couchette, 72.05 prend sa place (116.400). Un navire qui existait avant le 11 mars 1996 garde les règles du 10 mars 1996, ou peut choisir celles-ci (116.115).</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Navires à passagers des États-Unis du sous-chapitre H : de 100 de jauge brute et plus, de plus de 150 passagers, ou en voyages internationaux ; commandés à partir du 26 mai 1965</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10 paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">L&apos;édition annuelle de 2015, chaque section sur sa page d&apos;une copie publique (github.com/18F/allregs) ; de 72.05-10, les paragraphes (a) à (g) et les tableaux (d) et (e)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Les changements après 2015. Les règles d&apos;avant le 26 mai 1965, que les navires plus anciens peuvent garder.</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Navires à passagers des États-Unis du sous-chapitre K : de plus de 150 passagers, ou de 50 à 150 passagers avec couchette ; construits à partir du 11 mars 1996</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">L&apos;édition annuelle de 2015, chaque section sur sa page d&apos;une copie publique (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Les changements après 2015. Les règles du 10 mars 1996, que les navires plus anciens peuvent garder.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>Another edition of the catalogue is in use.</source>
        <translation type="unfinished">Une autre édition du catalogue est en usage.</translation>
    </message>
    <message>
        <source>Another edition of the catalogue, or of the rules of %1, is in use.</source>
        <translation type="unfinished">Une autre édition du catalogue, ou des règles de %1, est en usage.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer stand over the catalogue.</source>
        <translation type="unfinished">Les règles de %1 ne priment plus sur le catalogue.</translation>
    </message>
    <message>
        <source>The rules of %1 now stand over the catalogue.</source>
        <translation type="unfinished">Les règles de %1 priment désormais sur le catalogue.</translation>
    </message>
    <message>
        <source>%1 before, %2 now</source>
        <translation type="unfinished">%1 avant, %2 maintenant</translation>
    </message>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">pas de telle exigence</translation>
    </message>
    <message>
        <source>not asked of this door</source>
        <translation type="unfinished">non demandé pour cette porte</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Limite : %1</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>The claim stands.</source>
        <translation type="unfinished">L&apos;affirmation tient.</translation>
    </message>
    <message>
        <source>Go on: test %1 more.</source>
        <translation type="unfinished">Continuez&#xa0;: testez-en encore %1.</translation>
    </message>
    <message>
        <source>Extend: test %1 more; if none of those fails, the claim stands, with a little less confidence than stated, for the doors themselves made the sample larger.</source>
        <translation type="unfinished">Étendez&#xa0;: testez-en encore %1&#xa0;; si aucune n&apos;échoue, l&apos;affirmation tient, avec un peu moins de confiance qu&apos;annoncé, car ce sont les portes elles-mêmes qui ont agrandi l&apos;échantillon.</translation>
    </message>
    <message>
        <source>Every door was tested: the claim does not stand.</source>
        <translation type="unfinished">Toutes les portes ont été testées&#xa0;: l&apos;affirmation ne tient pas.</translation>
    </message>
    <message>
        <source>Test all: the %1 doors that are left as well.</source>
        <translation type="unfinished">Testez tout&#xa0;: les %1 portes restantes aussi.</translation>
    </message>
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
        <source>%1 of %2 doors tested, %3 failed: %4 confident that %5. %6</source>
        <translation type="unfinished">%1 portes sur %2 testées, %3 en échec&#xa0;; confiance de %4&#xa0;: %5. %6</translation>
    </message>
    <message>
        <source>none of 1 door is defective</source>
        <translation type="unfinished">la seule porte n&apos;est pas défectueuse</translation>
    </message>
    <message>
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">au plus 1 porte sur 1 est défectueuse</translation>
    </message>
    <message>
        <source>Test 1 door, drawn by lot. If none fails: %1 confident that %2.</source>
        <translation type="unfinished">Testez 1 porte, tirée au sort. Si aucune n&apos;échoue, confiance de %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn by lot. If none fails: %2 confident that %3.</source>
        <translation type="unfinished">Testez %1 portes, tirées au sort. Si aucune n&apos;échoue, confiance de %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Another claim, not to be mixed up with it: where exactly %1 of %2 doors are defective, testing %3 gives a chance of at least %4 to find one of them or more.</source>
        <translation type="unfinished">Une autre affirmation, à ne pas confondre avec celle-ci&#xa0;: là où exactement %1 portes sur %2 sont défectueuses, en tester %3 donne une probabilité d&apos;au moins %4 d&apos;en trouver une ou plusieurs.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confident that %3. %4</source>
        <translation type="unfinished">%1 porte sur 1 testée, aucune en échec&#xa0;; confiance de %2&#xa0;: %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confident that %4. %5</source>
        <translation type="unfinished">%1 portes sur %2 testées, aucune en échec&#xa0;; confiance de %3&#xa0;: %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confident that %2. %3</source>
        <translation type="unfinished">1 porte sur 1 testée, 1 en échec&#xa0;; confiance de %1&#xa0;: %2. %3</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Une plaque gravée %1</translation>
    </message>
    <message>
        <source>A plate scoured bare; no letter is left</source>
        <translation type="unfinished">Une plaque usée à nu&#xa0;; il ne reste aucune lettre</translation>
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
        <source>A port 150 mm square, %1</source>
        <translation type="unfinished">Un passage de 150 mm au carré, %1</translation>
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
        <source>Two lamps, nobody has told of them yet</source>
        <translation type="unfinished">Deux lampes, personne n&apos;en a encore parlé</translation>
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
        <source>A soft edge on the leaf and a block before it; nothing was run onto it yet</source>
        <translation type="unfinished">Un bord souple sur le vantail et un bloc devant&#xa0;; rien n&apos;a encore été amené contre lui</translation>
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
        <source>A cup, crumpled paper and an end of line on the bottom rail</source>
        <translation type="unfinished">Un gobelet, du papier froissé et un bout de cordage sur le rail inférieur</translation>
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
        <source>Paint of the bulkhead runs over the seal</source>
        <translation type="unfinished">La peinture de la cloison déborde sur le joint</translation>
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
        <source>The bolt stands well out of its case</source>
        <translation type="unfinished">Le pêne sort bien de son coffre</translation>
    </message>
    <message>
        <source>The tip of the bolt just shows out of its case</source>
        <translation type="unfinished">Le bout du pêne dépasse à peine de son coffre</translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Vantail et cadre, leur peinture unie, rien de fixé dessus</translation>
    </message>
    <message>
        <source>The release at this side under its cover, lever upright</source>
        <translation type="unfinished">La commande de ce côté sous son capot, levier vertical</translation>
    </message>
    <message>
        <source>The edge stands %1 back from the block, by the tape</source>
        <translation type="unfinished">Le bord est à %1 du bloc, au mètre ruban</translation>
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
        <source>A watch stands at every door that will move, on both sides</source>
        <translation type="unfinished">Un veilleur se tient à chaque porte qui va bouger, des deux côtés</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">Le poste de sécurité est sur le canal convenu et prêt</translation>
    </message>
    <message>
        <source>The word to start and the word to stop have been said and repeated</source>
        <translation type="unfinished">Le mot de départ et le mot d&apos;arrêt ont été dits et répétés</translation>
    </message>
    <message>
        <source>Nothing stands in the path or the pocket; no hand, foot or cable at an edge</source>
        <translation type="unfinished">Rien sur la course ni dans le logement&#xa0;; ni main, ni pied, ni câble à un bord</translation>
    </message>
    <message>
        <source>It shuts faster than the text allows.</source>
        <translation type="unfinished">Elle se ferme plus vite que le texte ne le permet.</translation>
    </message>
    <message>
        <source>It shuts more slowly than the text allows.</source>
        <translation type="unfinished">Elle se ferme plus lentement que le texte ne le permet.</translation>
    </message>
    <message>
        <source>It shuts within a hair of the limit: no thumb can pass or fail it.</source>
        <translation type="unfinished">Elle se ferme à un cheveu de la limite&#xa0;: aucun pouce ne peut l&apos;accepter ni la refuser.</translation>
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
        <source>The selector fails: the leaf that must wait comes home first.</source>
        <translation type="unfinished">Le sélecteur est défaillant&#xa0;: le vantail qui doit attendre arrive le premier.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it gives way when it is pushed.</source>
        <translation type="unfinished">Elle se ferme mais ne s&apos;enclenche pas&#xa0;: elle cède quand on la pousse.</translation>
    </message>
    <message>
        <source>The magnet holds on for half a minute after the control station&apos;s release, which is taken as not released (common practice, no source).</source>
        <translation type="unfinished">L&apos;aimant retient encore une demi-minute après le déclenchement depuis le poste de sécurité, ce qui compte comme non déclenchée (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>It cannot be released from one of its sides.</source>
        <translation type="unfinished">Elle ne peut pas être déclenchée d&apos;un de ses côtés.</translation>
    </message>
    <message>
        <source>A hook can hold it open that the control station cannot release.</source>
        <translation type="unfinished">Un crochet que le poste de sécurité ne peut pas libérer peut la tenir ouverte.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Une cale la tient ouverte.</translation>
    </message>
    <message>
        <source>Litter lies in the pocket.</source>
        <translation type="unfinished">Des détritus se trouvent dans le logement.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Le seuil manque.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than the text allows.</source>
        <translation type="unfinished">Le jeu sous le vantail est plus grand que le texte ne le permet.</translation>
    </message>
    <message>
        <source>The plate names a lower class than the boundary asks for.</source>
        <translation type="unfinished">La plaque indique une classe inférieure à celle qu&apos;exige le cloisonnement.</translation>
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
        <translation type="unfinished">Le volet du passage de manche ne se ferme pas de lui-même.</translation>
    </message>
    <message>
        <source>Opened again at the door after remote closing, it stays open.</source>
        <translation type="unfinished">Rouverte à la porte après fermeture à distance, elle reste ouverte.</translation>
    </message>
    <message>
        <source>Somebody was in the way of the leaf: the run has to be stopped.</source>
        <translation type="unfinished">Quelqu&apos;un se trouvait sur le chemin du vantail&#xa0;: il faut arrêter l&apos;essai.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">aucune valeur imprimée&#xa0;: demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale, ses baïonnettes et ses niches sont A-60&#xa0;; A-0 suffit avec un local de catégorie 5, 9 ou 10 d&apos;un côté, ou avec des soutes à combustible des deux côtés.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation is that of the table, where B-0, C and * are read as A-0.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale est du type A&#xa0;; son isolation est celle du tableau, où B-0, C et * se lisent A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 will do with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Les cloisonnements des locaux de catégorie spéciale et des espaces rouliers sont A-60&#xa0;; A-0 suffit avec un local de catégorie 5, 9 ou 10 d&apos;un côté.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead has the greater of A-30 and table (b); A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Une cloison de tranche verticale principale a la plus élevée des valeurs A-30 et tableau (b)&#xa0;; A-0 suffit avec un local de type 8, 12 ou 13 d&apos;un des deux côtés.</translation>
    </message>
    <message>
        <source>A step of a main vertical zone is A-60; A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Une baïonnette de tranche verticale principale est A-60&#xa0;; A-0 suffit avec un local de type 8, 12 ou 13 d&apos;un des deux côtés.</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Deux valeurs sont imprimées&#xa0;; la plus stricte est donnée ici.</translation>
    </message>
    <message>
        <source>The value of ships built on or after 1 July 2014 is given; the date of building is not known.</source>
        <translation type="unfinished">La valeur des navires construits le 1er juillet 2014 ou après est donnée&#xa0;; la date de construction est inconnue.</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 keeps the tables of its day, which are not here: compare with the approved plan.</source>
        <translation type="unfinished">Un navire construit avant le 1er juillet 2002 garde les tableaux de son époque, qui ne sont pas ici&#xa0;: comparer avec le plan approuvé.</translation>
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
        <translation type="unfinished">coulissante</translation>
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
        <translation type="unfinished">porte étanche à l&apos;eau à commande mécanique</translation>
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
        <translation type="unfinished">passage de manche</translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished">sans passage de manche</translation>
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
        <source>not of an escape trunk</source>
        <translation type="unfinished">hors puits d&apos;échappée</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">local de catégorie spéciale</translation>
    </message>
    <message>
        <source>no special category space</source>
        <translation type="unfinished">pas de local de catégorie spéciale</translation>
    </message>
    <message>
        <source>faces embarkation or an escape deck</source>
        <translation type="unfinished">donne sur un pont d&apos;embarquement ou d&apos;évacuation</translation>
    </message>
    <message>
        <source>faces no embarkation or escape deck</source>
        <translation type="unfinished">ne donne sur aucun pont d&apos;embarquement ou d&apos;évacuation</translation>
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
        <source>the vessel&apos;s own flag has its own text</source>
        <translation type="unfinished">le pavillon du navire a son propre texte</translation>
    </message>
    <message>
        <source>date of installation unknown</source>
        <translation type="unfinished">date d&apos;installation inconnue</translation>
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
        <source>a text of other ships: %1</source>
        <translation type="unfinished">texte d&apos;autres navires&#xa0;: %1</translation>
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
        <source>Try again; if it comes back, save the register to another disk.</source>
        <translation type="unfinished">Réessayez&#xa0;; si l&apos;erreur revient, enregistrez le registre sur un autre disque.</translation>
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
        <source>the register may not be written here</source>
        <translation type="unfinished">l&apos;écriture du registre n&apos;est pas permise ici</translation>
    </message>
    <message>
        <source>Copy it to a folder you may write to and open it there.</source>
        <translation type="unfinished">Copiez-le dans un dossier où vous pouvez écrire et ouvrez-le là.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">le fichier ne peut pas être ouvert (SQLite %1)</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you may write to the folder.</source>
        <translation type="unfinished">Vérifiez que le disque est connecté et que vous pouvez écrire dans le dossier.</translation>
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
        <source>the cautions do not all stand confirmed</source>
        <translation type="unfinished">les précautions ne sont pas toutes confirmées</translation>
    </message>
    <message>
        <source>Answer each of them first.</source>
        <translation type="unfinished">Répondez d&apos;abord à chacune.</translation>
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
        <source>Take the end of the walkdown back first, or begin another.</source>
        <translation type="unfinished">Annulez d’abord la fin de la tournée ou commencez-en une autre.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Choisissez de nouveau la porte.</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; correct it.</source>
        <translation type="unfinished">Seul ce que vous avez saisi sur cette tablette peut être annulé ; corrigez-le.</translation>
    </message>
    <message>
        <source>Record it on its own.</source>
        <translation type="unfinished">Saisissez-le à part.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">sa tournée est finie</translation>
    </message>
    <message>
        <source>it is not on the walkdown that is shown</source>
        <translation type="unfinished">elle n’est pas dans la tournée affichée</translation>
    </message>
    <message>
        <source>undo does not reach %1</source>
        <translation type="unfinished">l’annulation n’atteint pas %1</translation>
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
        <source>%1 passengers cannot be carried</source>
        <translation type="unfinished">%1 passagers&#xa0;: nombre impossible</translation>
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
        <source>Give the drawing&apos;s length in metres.</source>
        <translation type="unfinished">Donnez la longueur du plan en mètres.</translation>
    </message>
    <message>
        <source>this day does not exist</source>
        <translation type="unfinished">ce jour n&apos;existe pas</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Écrivez les dates sous la forme YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>%1 lies before 1900</source>
        <translation type="unfinished">%1 est avant 1900</translation>
    </message>
    <message>
        <source>Check the year; leave it empty where the date is unknown.</source>
        <translation type="unfinished">Vérifiez l&apos;année&#xa0;; laissez vide si la date n&apos;est pas connue.</translation>
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
        <source>%1 m lies outside %2 to %3 m</source>
        <translation type="unfinished">%1 m est hors de l&apos;intervalle de %2 à %3 m</translation>
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
        <source>Take the blanks away.</source>
        <translation type="unfinished">Supprimez les espaces.</translation>
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
        <source>deck &quot;%1&quot; is there twice</source>
        <translation type="unfinished">le pont &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every deck its own number, or take one row out.</source>
        <translation type="unfinished">Donnez à chaque pont son propre numéro, ou retirez une ligne.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is there twice</source>
        <translation type="unfinished">la tranche &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every zone its own number, or take one row out.</source>
        <translation type="unfinished">Donnez à chaque tranche son propre numéro, ou retirez une ligne.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is there twice</source>
        <translation type="unfinished">le cloisonnement &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or take one row out.</source>
        <translation type="unfinished">Donnez à chaque cloisonnement son propre identifiant, ou retirez une ligne.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is there twice</source>
        <translation type="unfinished">la porte &quot;%1&quot; figure deux fois</translation>
    </message>
    <message>
        <source>Give every door its own number, or take one row out.</source>
        <translation type="unfinished">Donnez à chaque porte son propre numéro, ou retirez une ligne.</translation>
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
        <source>deck &quot;%1&quot; is not there</source>
        <translation type="unfinished">le pont &quot;%1&quot; n&apos;existe pas</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is not there</source>
        <translation type="unfinished">la tranche &quot;%1&quot; n&apos;existe pas</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is not there</source>
        <translation type="unfinished">le cloisonnement &quot;%1&quot; n&apos;existe pas</translation>
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
        <source>Give square metres, or leave it empty where it is not known.</source>
        <translation type="unfinished">Donnez des mètres carrés, ou laissez vide si elle n&apos;est pas connue.</translation>
    </message>
    <message>
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">la limite avant, %1 m, n&apos;est pas en avant de la limite arrière, %2 m</translation>
    </message>
    <message>
        <source>Count metres from the aft perpendicular, forward positive.</source>
        <translation type="unfinished">Comptez les mètres depuis la perpendiculaire arrière, positifs vers l&apos;avant.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">la tranche &quot;%1&quot; commence à %2 m, à l&apos;intérieur de la tranche &quot;%3&quot;, qui finit à %4 m</translation>
    </message>
    <message>
        <source>Zones may touch, not overlap.</source>
        <translation type="unfinished">Les tranches peuvent se toucher, pas se chevaucher.</translation>
    </message>
    <message>
        <source>the fire tables of this vessel know no such category of space</source>
        <translation type="unfinished">les tableaux d&apos;incendie de ce navire ne connaissent pas cette catégorie de local</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Écrivez deux nombres de 1 à %1, ou laissez vide.</translation>
    </message>
    <message>
        <source>a zone bulkhead stands between two zones, here both are &quot;%1&quot;</source>
        <translation type="unfinished">une cloison de tranche se trouve entre deux tranches&#xa0;; ici, l&apos;une et l&apos;autre sont &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Indiquez la tranche en arrière d&apos;elle et la tranche en avant d&apos;elle.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; lies aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">la tranche &quot;%1&quot; est en arrière de la tranche &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Exchange zone_aft and zone_forward.</source>
        <translation type="unfinished">Intervertissez zone_aft et zone_forward.</translation>
    </message>
    <message>
        <source>%1 m lies more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m est à plus de 3 m hors de ses tranches, de %2 à %3 m</translation>
    </message>
    <message>
        <source>Check the place of the boundary, or the zones it names.</source>
        <translation type="unfinished">Vérifiez l&apos;emplacement du cloisonnement, ou les tranches qu&apos;il indique.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m cannot be</source>
        <translation type="unfinished">un passage libre de %1 m est impossible</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Donnez la largeur libre en mètres, supérieure à 0 et d&apos;au plus 10.</translation>
    </message>
    <message>
        <source>a leaf of %1 kg cannot be</source>
        <translation type="unfinished">un vantail de %1 kg est impossible</translation>
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
        <source>this is no URL: signs other than letters and digits in a password are written as %1 for @ and so on</source>
        <translation type="unfinished">ce n&apos;est pas une URL&#xa0;: dans un mot de passe, les signes autres que lettres et chiffres s&apos;écrivent %1 pour @, et ainsi de suite</translation>
    </message>
    <message>
        <source>only databases of PostgreSQL are known</source>
        <translation type="unfinished">seules les bases de données PostgreSQL sont reconnues</translation>
    </message>
    <message>
        <source>an option holds a semicolon</source>
        <translation type="unfinished">une option contient un point-virgule</translation>
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
        <source>Check the address, the name and the password, and that the server runs.</source>
        <translation type="unfinished">Vérifiez l&apos;adresse, le nom et le mot de passe, et que le serveur tourne.</translation>
    </message>
    <message>
        <source>the connection was cut</source>
        <translation type="unfinished">la connexion a été coupée</translation>
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
        <source>the connection was cut: %1 files are NOT taken in, from %2 on</source>
        <translation type="unfinished">la connexion a été coupée&#xa0;: fichiers NON importés&#xa0;: %1, à partir de %2</translation>
    </message>
    <message>
        <source>Run the same command again; what is in stays in.</source>
        <translation type="unfinished">Relancez la même commande&#xa0;; ce qui est déjà importé le reste.</translation>
    </message>
    <message>
        <source>this database holds something else: NOT touched</source>
        <translation type="unfinished">cette base de données contient autre chose&#xa0;: NON modifiée</translation>
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
        <source>this database does not keep texts as UTF-8: NOT touched</source>
        <translation type="unfinished">cette base de données ne conserve pas les textes en UTF-8&#xa0;: NON modifiée</translation>
    </message>
    <message>
        <source>Make one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Créez-en une WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one knows up to %2): NOT touched</source>
        <translation type="unfinished">les tables ont été créées par un programme plus récent (version %1&#xa0;; celui-ci connaît jusqu&apos;à %2)&#xa0;: NON modifiées</translation>
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
        <source>Give the vessel its number aboard, and hand over again.</source>
        <translation type="unfinished">Donnez au navire son numéro à bord, puis refaites la transmission.</translation>
    </message>
    <message>
        <source>it comes with another key than before: %1, fingerprint %2, instead of %3</source>
        <translation type="unfinished">il arrive avec une autre clé qu&apos;auparavant&#xa0;: %1, empreinte %2, au lieu de %3</translation>
    </message>
    <message>
        <source>Ask aboard whether its key is new; if it is, take the file in with --accept-key and that key.</source>
        <translation type="unfinished">Demandez à bord si sa clé est nouvelle&#xa0;; si oui, importez le fichier avec --accept-key et cette clé.</translation>
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
        <source>The catalogue built into the program is used: %1</source>
        <translation type="unfinished">Le catalogue intégré au programme est utilisé&#xa0;: %1</translation>
    </message>
    <message>
        <source>its catalogue files are not there</source>
        <translation type="unfinished">ses fichiers de catalogue sont absents</translation>
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
        <source>must be a list with at least one row</source>
        <translation type="unfinished">doit être une liste d&apos;au moins une ligne</translation>
    </message>
    <message>
        <source>&apos;%1&apos; stands twice</source>
        <translation type="unfinished">&apos;%1&apos; figure deux fois</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Les identifiants doivent être uniques.</translation>
    </message>
    <message>
        <source>row &apos;%1&apos; stands in both catalogues</source>
        <translation type="unfinished">la ligne &apos;%1&apos; figure dans les deux catalogues</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Gardez-la dans un seul.</translation>
    </message>
    <message>
        <source>this condition asks nothing of a door</source>
        <translation type="unfinished">cette condition ne demande rien à une porte</translation>
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
        <source>Leave it out where every door is meant.</source>
        <translation type="unfinished">Omettez-la si toutes les portes sont visées.</translation>
    </message>
    <message>
        <source>must be a list of variants</source>
        <translation type="unfinished">doit être une liste de variantes</translation>
    </message>
    <message>
        <source>Leave it out where there are none.</source>
        <translation type="unfinished">Omettez-la s&apos;il n&apos;y en a pas.</translation>
    </message>
    <message>
        <source>a row that is seen needs a question</source>
        <translation type="unfinished">une ligne contrôlée à la vue a besoin d&apos;une question</translation>
    </message>
    <message>
        <source>Write the question as it is asked at the door.</source>
        <translation type="unfinished">Écrivez la question telle qu&apos;elle est posée à la porte.</translation>
    </message>
    <message>
        <source>this check needs a lower limit</source>
        <translation type="unfinished">ce contrôle a besoin d&apos;une limite inférieure</translation>
    </message>
    <message>
        <source>Add a number.</source>
        <translation type="unfinished">Ajoutez un nombre.</translation>
    </message>
    <message>
        <source>this check needs an upper limit</source>
        <translation type="unfinished">ce contrôle a besoin d&apos;une limite supérieure</translation>
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
        <source>a number must come from somewhere</source>
        <translation type="unfinished">un nombre doit venir de quelque part</translation>
    </message>
    <message>
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Indiquez gauge, closing-time, closing-rate, alarm-lead ou alarm-after-shut.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is in the catalogue already</source>
        <translation type="unfinished">&apos;%1&apos; est déjà dans le catalogue</translation>
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
        <source>a tightened row needs a limit</source>
        <translation type="unfinished">une ligne durcie a besoin d&apos;une limite</translation>
    </message>
    <message>
        <source>Give low or high.</source>
        <translation type="unfinished">Donnez low ou high.</translation>
    </message>
    <message>
        <source>the row has no such limit</source>
        <translation type="unfinished">la ligne n&apos;a pas cette limite</translation>
    </message>
    <message>
        <source>Replace the whole row instead.</source>
        <translation type="unfinished">Remplacez plutôt toute la ligne.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the %3 %2 of the catalogue</source>
        <translation type="unfinished">%1 %2 est plus large que les %3 %2 du catalogue</translation>
    </message>
    <message>
        <source>A row is tightened, or replaced as a whole.</source>
        <translation type="unfinished">Une ligne se durcit, ou se remplace en entier.</translation>
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
        <source>&apos;%1&apos; is no list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; n&apos;est pas une liste de catégories ici</translation>
    </message>
    <message>
        <source>must be a list with at least one table</source>
        <translation type="unfinished">doit être une liste d&apos;au moins un tableau</translation>
    </message>
    <message>
        <source>there is a table of such divisions already</source>
        <translation type="unfinished">il y a déjà un tableau de ces cloisonnements</translation>
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
        <source>is no cell of this table</source>
        <translation type="unfinished">n&apos;est pas une case de ce tableau</translation>
    </message>
    <message>
        <source>Write two of its categories, of a bulkhead the lower first.</source>
        <translation type="unfinished">Écrivez deux de ses catégories&#xa0;; pour une cloison, la plus petite d&apos;abord.</translation>
    </message>
    <message>
        <source>%1 is no value that a table prints</source>
        <translation type="unfinished">%1 n&apos;est pas une valeur qu&apos;un tableau imprime</translation>
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
        <source>a fault of the program: %1</source>
        <translation type="unfinished">un défaut du programme&#xa0;: %1</translation>
    </message>
    <message>
        <source>Please report it with the file that brought it about.</source>
        <translation type="unfinished">Veuillez le signaler avec le fichier qui l&apos;a provoqué.</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation type="unfinished">n&apos;a pas pu être écrit</translation>
    </message>
    <message>
        <source>no register is here</source>
        <translation type="unfinished">aucun registre ne se trouve ici</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Vérifiez le nom, ou importez-en un d&apos;abord.</translation>
    </message>
    <message>
        <source>this register holds no vessel yet</source>
        <translation type="unfinished">ce registre ne contient encore aucun navire</translation>
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
        <source>The file that was refused names its key.</source>
        <translation type="unfinished">Le fichier refusé indique sa clé.</translation>
    </message>
    <message>
        <source>it does not say who accepts the key</source>
        <translation type="unfinished">il n&apos;est pas dit qui accepte la clé</translation>
    </message>
    <message>
        <source>Add --person NAME.</source>
        <translation type="unfinished">Ajoutez --person NAME.</translation>
    </message>
    <message>
        <source>this is not the key of the file, which is %1</source>
        <translation type="unfinished">ce n&apos;est pas la clé du fichier, qui est %1</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Comparez-la à ce que montre l&apos;autre tablette.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no document of this program</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un document de ce programme</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no form a report is written in</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un format de rapport</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Choisissez pdf, csv ou json.</translation>
    </message>
    <message>
        <source>a paper form is printed</source>
        <translation type="unfinished">un formulaire papier s&apos;imprime</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Écrivez-le dans un fichier PDF.</translation>
    </message>
    <message>
        <source>a door record is of one door</source>
        <translation type="unfinished">une fiche de porte concerne une seule porte</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Donnez son numéro.</translation>
    </message>
    <message>
        <source>the register knows nobody of the name &apos;%1&apos;</source>
        <translation type="unfinished">le registre ne connaît personne du nom de &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Write the name as it stands in the register.</source>
        <translation type="unfinished">Écrivez le nom tel qu&apos;il figure au registre.</translation>
    </message>
    <message>
        <source>Give an id of &quot;practice list&quot; or a file.</source>
        <translation type="unfinished">Donnez un identifiant de &quot;practice list&quot; ou un fichier.</translation>
    </message>
    <message>
        <source>Give a number; the same one gives the same doors.</source>
        <translation type="unfinished">Donnez un nombre&#xa0;; le même donne les mêmes portes.</translation>
    </message>
    <message>
        <source>Give the file of answers.</source>
        <translation type="unfinished">Donnez le fichier de réponses.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">il manque</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_WORD, or into a file named by --word-file.</source>
        <translation type="unfinished">Mettez-le dans LATCHROUND_WORD, ou dans un fichier indiqué par --word-file.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas une paire de catégories de ce navire</translation>
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
        <source>such a ship has no main vertical zones</source>
        <translation type="unfinished">un tel navire n&apos;a pas de tranches verticales principales</translation>
    </message>
    <message>
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Demandez bulkhead ou deck.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1</source>
        <translation type="unfinished">doit être compris entre 0 et 1</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Écrivez 0.95 pour 95&#xa0;%.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1, in whole millionths</source>
        <translation type="unfinished">doit être compris entre 0 et 1, en millionièmes entiers</translation>
    </message>
    <message>
        <source>is not a number that can be looked up</source>
        <translation type="unfinished">n&apos;est pas un nombre pour lequel on peut lire une valeur</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Écrivez un nombre.</translation>
    </message>
    <message>
        <source>no line can be laid through %1 points, or all lie at the same x, or a number is too large</source>
        <translation type="unfinished">aucune droite ne peut être tracée par %1 points, ou tous ont le même x, ou un nombre est trop grand</translation>
    </message>
    <message>
        <source>Give at least three points at two different x.</source>
        <translation type="unfinished">Donnez au moins trois points à deux x différents.</translation>
    </message>
    <message>
        <source>is not a number that can be judged</source>
        <translation type="unfinished">n&apos;est pas un nombre qui puisse être jugé</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Écrivez un nombre comme 10.3.</translation>
    </message>
    <message>
        <source>a standard uncertainty is 0 or more</source>
        <translation type="unfinished">une incertitude-type est de 0 ou plus</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Écrivez-la dans l&apos;unité de la valeur, pour k = 1.</translation>
    </message>
    <message>
        <source>is no limit</source>
        <translation type="unfinished">n&apos;est pas une limite</translation>
    </message>
    <message>
        <source>without a limit there is nothing to judge</source>
        <translation type="unfinished">sans limite, il n&apos;y a rien à juger</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Donnez --low, --high ou les deux.</translation>
    </message>
    <message>
        <source>degrees of freedom are 1 or more</source>
        <translation type="unfinished">les degrés de liberté sont de 1 ou plus</translation>
    </message>
    <message>
        <source>Leave it out where u is well known.</source>
        <translation type="unfinished">Omettez-les si u est bien connue.</translation>
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
        <source>no more can fail than were tested, and no more be tested than there are</source>
        <translation type="unfinished">il ne peut pas y avoir plus d&apos;échecs que de portes testées, ni plus de portes testées que de portes</translation>
    </message>
    <message>
        <source>Check the three numbers.</source>
        <translation type="unfinished">Vérifiez les trois nombres.</translation>
    </message>
    <message>
        <source>there is no display here</source>
        <translation type="unfinished">il n&apos;y a pas d&apos;écran ici</translation>
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
        <source>entries of this vessel wait to be saved, and cannot be kept elsewhere</source>
        <translation type="unfinished">des entrées de ce navire attendent d&apos;être enregistrées et ne peuvent être gardées ailleurs</translation>
    </message>
    <message>
        <source>Save them first.</source>
        <translation type="unfinished">Enregistrez-les d&apos;abord.</translation>
    </message>
    <message>
        <source>no file was looked at</source>
        <translation type="unfinished">aucun fichier n&apos;a été examiné</translation>
    </message>
    <message>
        <source>Look at it first.</source>
        <translation type="unfinished">Examinez-le d&apos;abord.</translation>
    </message>
    <message>
        <source>no exercise was broken off</source>
        <translation type="unfinished">aucun exercice n&apos;a été interrompu</translation>
    </message>
    <message>
        <source>the exercise is not what it was when it was begun</source>
        <translation type="unfinished">l&apos;exercice n&apos;est plus ce qu&apos;il était à son début</translation>
    </message>
    <message>
        <source>Put it aside, and begin it anew.</source>
        <translation type="unfinished">Mettez-le de côté et recommencez-le.</translation>
    </message>
    <message>
        <source>is not a door of this walkdown</source>
        <translation type="unfinished">n&apos;est pas une porte de cette tournée</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">le fichier ne peut pas être lu</translation>
    </message>
    <message>
        <source>Choose another or check its rights.</source>
        <translation type="unfinished">Choisissez-en un autre ou vérifiez ses droits d&apos;accès.</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">l&apos;image dépasse %1 Mo</translation>
    </message>
    <message>
        <source>Take it again in a smaller size.</source>
        <translation type="unfinished">Reprenez-la en plus petit.</translation>
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
        <source>it could not be kept</source>
        <translation type="unfinished">elle n&apos;a pas pu être conservée</translation>
    </message>
    <message>
        <source>Take it again.</source>
        <translation type="unfinished">Reprenez-la.</translation>
    </message>
    <message>
        <source>another program writes in it (%1)</source>
        <translation type="unfinished">un autre programme y écrit (%1)</translation>
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
        <source>Nothing of it is refused any more</source>
        <translation type="unfinished">Plus rien n&apos;en est refusé</translation>
    </message>
    <message>
        <source>it was cut short</source>
        <translation type="unfinished">entrée tronquée</translation>
    </message>
    <message>
        <source>what cannot be read in it is kept nowhere else</source>
        <translation type="unfinished">ce qui n&apos;y est pas lisible n&apos;est conservé nulle part ailleurs</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Libérez de la place et relancez.</translation>
    </message>
    <message>
        <source>what waited to be saved here cannot be read: %1</source>
        <translation type="unfinished">ce qui attendait d&apos;être enregistré ici ne peut pas être lu&#xa0;: %1</translation>
    </message>
    <message>
        <source>It is kept as %2; report this.</source>
        <translation type="unfinished">C&apos;est conservé sous %2&#xa0;; signalez-le.</translation>
    </message>
    <message>
        <source>The file stays as it is, and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">Le fichier reste tel quel et rien n&apos;y est ajouté&#xa0;: libérez de la place, puis relancez.</translation>
    </message>
    <message>
        <source>of what waited to be saved here, not all can be read: %1</source>
        <translation type="unfinished">une partie de ce qui attendait d&apos;être enregistré ici ne peut pas être lue&#xa0;: %1</translation>
    </message>
    <message>
        <source>the register knows no walkdown of this id</source>
        <translation type="unfinished">le registre ne connaît aucune tournée de cet identifiant</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Choisissez une de ses tournées.</translation>
    </message>
    <message>
        <source>the register knows no door of this number</source>
        <translation type="unfinished">le registre ne connaît aucune porte de ce numéro</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Vérifiez le numéro.</translation>
    </message>
    <message>
        <source>a door record is a printed page</source>
        <translation type="unfinished">une fiche de porte est une page imprimée</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey as CSV or JSON.</source>
        <translation type="unfinished">Choisissez PDF, ou le rapport de visite en CSV ou JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be made</source>
        <translation type="unfinished">le PDF n&apos;a pas pu être créé</translation>
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
        <source>a file describes one vessel; the first is on line %1</source>
        <translation type="unfinished">un fichier décrit un seul navire&#xa0;; le premier est à la ligne %1</translation>
    </message>
    <message>
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Mettez chaque navire dans son propre fichier.</translation>
    </message>
    <message>
        <source>the row does not say of which table it is</source>
        <translation type="unfinished">la ligne ne dit pas de quelle table elle est</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Une ligne commence par vessel, deck, zone, boundary ou door.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; begins no row of a register</source>
        <translation type="unfinished">&quot;%1&quot; ne commence aucune ligne d&apos;un registre</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Une ligne commence par vessel, deck, zone, boundary ou door.</translation>
    </message>
    <message>
        <source>this row stands before any header of its table</source>
        <translation type="unfinished">cette ligne précède tout en-tête de sa table</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the names of the columns above it.</source>
        <translation type="unfinished">Placez au-dessus l&apos;en-tête &quot;%1:&quot; avec les noms des colonnes.</translation>
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
        <source>Take the cell out, or name its column in the header.</source>
        <translation type="unfinished">Retirez la cellule, ou nommez sa colonne dans l&apos;en-tête.</translation>
    </message>
    <message>
        <source>the %1 table has no such column</source>
        <translation type="unfinished">la table %1 n&apos;a pas cette colonne</translation>
    </message>
    <message>
        <source>Correct its name or take the column out.</source>
        <translation type="unfinished">Corrigez son nom ou retirez la colonne.</translation>
    </message>
    <message>
        <source>the column is there twice</source>
        <translation type="unfinished">la colonne figure deux fois</translation>
    </message>
    <message>
        <source>Take one of them out.</source>
        <translation type="unfinished">Retirez-en une.</translation>
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
        <source>a point has two numbers, here are %1 cells</source>
        <translation type="unfinished">un point a deux nombres&#xa0;; nombre de cellules ici&#xa0;: %1</translation>
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
        <source>this is not the id of a fact</source>
        <translation type="unfinished">ce n&apos;est pas l&apos;identifiant d&apos;un fait</translation>
    </message>
    <message>
        <source>Ids are UUIDs of version 7 in lower case.</source>
        <translation type="unfinished">Les identifiants sont des UUID de version 7 en minuscules.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a moment</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un instant</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Écrivez-le comme 2026-11-25T10:42:13.120+01:00.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no kind of fact</source>
        <translation type="unfinished">&quot;%1&quot; n&apos;est pas un genre de fait</translation>
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
        <source>door &quot;%1&quot; is there twice, first at %2</source>
        <translation type="unfinished">la porte &quot;%1&quot; figure deux fois, d&apos;abord à %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or put both records in one.</source>
        <translation type="unfinished">Donnez à chaque porte son propre identifiant, ou réunissez les deux fiches en une.</translation>
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
        <source>this must be the categories of the two spaces, 1 to %1 by the fire tables of this vessel</source>
        <translation type="unfinished">ce doit être les catégories des deux locaux, de 1 à %1 selon les tableaux d&apos;incendie de ce navire</translation>
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
        <source>the catalogue has no requirement of this name</source>
        <translation type="unfinished">le catalogue n&apos;a pas d&apos;exigence de ce nom</translation>
    </message>
    <message>
        <source>Use the ids of the catalogue.</source>
        <translation type="unfinished">Utilisez les identifiants du catalogue.</translation>
    </message>
    <message>
        <source>this is no answer</source>
        <translation type="unfinished">ce n&apos;est pas une réponse</translation>
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
        <source>this requirement has no figure taken with rule or gauge</source>
        <translation type="unfinished">cette exigence n&apos;a pas de valeur relevée à la règle ou au peson</translation>
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
        <source>Give the marks that were timed, or take the run out.</source>
        <translation type="unfinished">Donnez les repères chronométrés, ou retirez l&apos;essai.</translation>
    </message>
    <message>
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">un temps doit être de 0 à 3600 secondes</translation>
    </message>
    <message>
        <source>Give seconds from the start of the watch.</source>
        <translation type="unfinished">Donnez les secondes depuis le départ du chronomètre.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees cannot be</source>
        <translation type="unfinished">une gîte de plus de 45 degrés est impossible</translation>
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
        <source>Give that mark, or write &quot;spoiled&quot;.</source>
        <translation type="unfinished">Donnez ce repère, ou écrivez &quot;spoiled&quot;.</translation>
    </message>
    <message>
        <source>the vessel could not be put there</source>
        <translation type="unfinished">le navire n&apos;a pas pu être placé là</translation>
    </message>
    <message>
        <source>Check the folder.</source>
        <translation type="unfinished">Vérifiez le dossier.</translation>
    </message>
    <message>
        <source>is missing: this is no exercise</source>
        <translation type="unfinished">manque&#xa0;: ce n&apos;est pas un exercice</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>this exercise is of another form than this program knows (%1)</source>
        <translation type="unfinished">cet exercice est d&apos;un autre format que celui que connaît ce programme (%1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written anew.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou faites réécrire l&apos;exercice.</translation>
    </message>
    <message>
        <source>it is sealed by the instructor&apos;s word</source>
        <translation type="unfinished">il est scellé par le mot de l&apos;instructeur</translation>
    </message>
    <message>
        <source>Open it with that word.</source>
        <translation type="unfinished">Ouvrez-le avec ce mot.</translation>
    </message>
    <message>
        <source>has other signs than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">contient d&apos;autres signes que des minuscules, des chiffres et des traits d&apos;union</translation>
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
        <source>Say it shorter.</source>
        <translation type="unfinished">Dites-le plus brièvement.</translation>
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
        <source>door %1 is there twice</source>
        <translation type="unfinished">la porte %1 figure deux fois</translation>
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
        <source>&apos;%1&apos; and &apos;%2&apos; would hide one another on one door</source>
        <translation type="unfinished">&apos;%1&apos; et &apos;%2&apos; se masqueraient l&apos;un l&apos;autre sur une même porte</translation>
    </message>
    <message>
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Donnez l&apos;un des deux à une autre porte.</translation>
    </message>
    <message>
        <source>stands without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">figure sans &quot;drawn&quot;&#xa0;: rien n&apos;est tiré au sort</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Indiquez combien de défauts sont tirés au sort.</translation>
    </message>
    <message>
        <source>only %1 faults more can be put into these doors</source>
        <translation type="unfinished">ces portes ne peuvent recevoir que %1 défauts de plus</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Tirez-en moins, ou nommez plus de portes.</translation>
    </message>
    <message>
        <source>is missing: an exam says what passes it</source>
        <translation type="unfinished">manque&#xa0;: un examen indique ce qu&apos;il faut pour le réussir</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Ajoutez-le, de 1 à 100.</translation>
    </message>
    <message>
        <source>only an exam is passed or failed</source>
        <translation type="unfinished">seul un examen est réussi ou échoué</translation>
    </message>
    <message>
        <source>Take it out, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Retirez-le, ou écrivez &quot;exam&quot; comme niveau.</translation>
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
        <source>the exercise has no door of this number</source>
        <translation type="unfinished">l&apos;exercice n&apos;a pas de porte de ce numéro</translation>
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
        <source>this is no moment</source>
        <translation type="unfinished">ceci n&apos;est pas une date avec heure</translation>
    </message>
    <message>
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Écrivez par exemple 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>a delay is no number: NOT kept</source>
        <translation type="unfinished">un retard n&apos;est pas un nombre&#xa0;: NON conservé</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Veuillez le signaler.</translation>
    </message>
    <message>
        <source>could not be taken away</source>
        <translation type="unfinished">n&apos;a pas pu être supprimé</translation>
    </message>
    <message>
        <source>Look whether the folder can be written to.</source>
        <translation type="unfinished">Vérifiez que l&apos;on peut écrire dans le dossier.</translation>
    </message>
    <message>
        <source>an exercise of this id ships with the program</source>
        <translation type="unfinished">un exercice de cet identifiant est livré avec le programme</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Donnez un autre identifiant au vôtre.</translation>
    </message>
    <message>
        <source>another exercise of this id is kept here already</source>
        <translation type="unfinished">un autre exercice de cet identifiant est déjà conservé ici</translation>
    </message>
    <message>
        <source>Give yours another id, or take away %1.</source>
        <translation type="unfinished">Donnez un autre identifiant au vôtre, ou supprimez %1.</translation>
    </message>
    <message>
        <source>this exercise is not sealed</source>
        <translation type="unfinished">cet exercice n&apos;est pas scellé</translation>
    </message>
    <message>
        <source>Give the word.</source>
        <translation type="unfinished">Indiquez le mot.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">il doit avoir au moins %1 caractères</translation>
    </message>
    <message>
        <source>Choose a longer one, best several words.</source>
        <translation type="unfinished">Choisissez-en un plus long, de préférence plusieurs mots.</translation>
    </message>
    <message>
        <source>this machine has too little memory free for the word</source>
        <translation type="unfinished">cet appareil a trop peu de mémoire libre pour le mot</translation>
    </message>
    <message>
        <source>the word does not open it: it is not the word it was sealed with, or the file was changed after it was sealed</source>
        <translation type="unfinished">le mot ne l&apos;ouvre pas&#xa0;: ce n&apos;est pas celui avec lequel il a été scellé, ou le fichier a été modifié après avoir été scellé</translation>
    </message>
    <message>
        <source>Type the word as the instructor chose it, or have the file given again.</source>
        <translation type="unfinished">Tapez le mot tel que l&apos;instructeur l&apos;a choisi, ou faites-vous redonner le fichier.</translation>
    </message>
    <message>
        <source>the seal is damaged</source>
        <translation type="unfinished">le scellé est endommagé</translation>
    </message>
    <message>
        <source>Have the file given again.</source>
        <translation type="unfinished">Faites-vous redonner le fichier.</translation>
    </message>
    <message>
        <source>this seal is of another form than this program knows</source>
        <translation type="unfinished">ce scellé est d&apos;une autre forme que celles que ce programme connaît</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise sealed anew.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou faites sceller l&apos;exercice de nouveau.</translation>
    </message>
    <message>
        <source>a sealed exercise has faults in the open</source>
        <translation type="unfinished">un exercice scellé a des défauts lisibles en clair</translation>
    </message>
    <message>
        <source>Have the exercise sealed anew.</source>
        <translation type="unfinished">Faites sceller l&apos;exercice de nouveau.</translation>
    </message>
    <message>
        <source>what stands open in it was changed after it was sealed: title, words, level, doors or mark</source>
        <translation type="unfinished">ce qui y est lisible en clair a été modifié après avoir été scellé&#xa0;: titre, texte, niveau, portes ou note exigée</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">il n&apos;a pas pu être composé&#xa0;: %1</translation>
    </message>
    <message>
        <source>its bytes cannot be had</source>
        <translation type="unfinished">ses octets sont introuvables</translation>
    </message>
    <message>
        <source>not all of its bytes can be had</source>
        <translation type="unfinished">une partie de ses octets est introuvable</translation>
    </message>
    <message>
        <source>this is no handover file, or only a part of one</source>
        <translation type="unfinished">ce n&apos;est pas un fichier de transmission, ou ce n&apos;en est qu&apos;une partie</translation>
    </message>
    <message>
        <source>Choose another file, or have it handed over again.</source>
        <translation type="unfinished">Choisissez un autre fichier, ou faites-le transmettre de nouveau.</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">le fichier est endommagé (%1)</translation>
    </message>
    <message>
        <source>Have it handed over again.</source>
        <translation type="unfinished">Faites-le transmettre de nouveau.</translation>
    </message>
    <message>
        <source>an entry cannot be read</source>
        <translation type="unfinished">une entrée ne peut pas être lue</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">%1 ne peut pas être lu</translation>
    </message>
    <message>
        <source>the entry %1 is there twice</source>
        <translation type="unfinished">l&apos;entrée %1 figure deux fois</translation>
    </message>
    <message>
        <source>the name of the entry &quot;%1&quot; leads out of the file</source>
        <translation type="unfinished">le nom de l&apos;entrée &quot;%1&quot; mène hors du fichier</translation>
    </message>
    <message>
        <source>No handover file is made so; do not use it.</source>
        <translation type="unfinished">Aucun fichier de transmission n&apos;est fait ainsi&#xa0;; ne l&apos;utilisez pas.</translation>
    </message>
    <message>
        <source>the entry %1 would swell out of all proportion</source>
        <translation type="unfinished">l&apos;entrée %1 gonflerait hors de toute proportion</translation>
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
        <source>the signature does not fit the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">la signature ne correspond pas à la clé de l&apos;appareil qui a signé&#xa0;: contents.sha256 ou contents.sig a été modifié</translation>
    </message>
    <message>
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem n&apos;est pas la clé que nomme handover.json</translation>
    </message>
    <message>
        <source>the entry %1 belongs to no handover file</source>
        <translation type="unfinished">l&apos;entrée %1 n&apos;appartient à aucun fichier de transmission</translation>
    </message>
    <message>
        <source>the entry %1 was added after it was signed</source>
        <translation type="unfinished">l&apos;entrée %1 a été ajoutée après la signature</translation>
    </message>
    <message>
        <source>%1 was changed after it was signed</source>
        <translation type="unfinished">%1 a été modifié après la signature</translation>
    </message>
    <message>
        <source>%1 does not have the hash it is named by</source>
        <translation type="unfinished">%1 n&apos;a pas le hachage que porte son nom</translation>
    </message>
    <message>
        <source>the fact %1 is there twice, with different content</source>
        <translation type="unfinished">le fait %1 figure deux fois, avec un contenu différent</translation>
    </message>
    <message>
        <source>it does not hold as much as its first page says</source>
        <translation type="unfinished">il ne contient pas autant que l&apos;annonce sa première page</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ceci vient de l&apos;entraînement&#xa0;: rien n&apos;y est un enregistrement d&apos;un navire</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are not there</source>
        <translation type="unfinished">%1 est le navire d&apos;entraînement, dont les portes n&apos;existent pas</translation>
    </message>
    <message>
        <source>this is no handover file</source>
        <translation type="unfinished">ce n&apos;est pas un fichier de transmission</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">ce fichier vient d&apos;un programme plus récent (forme %1&#xa0;; celui-ci lit jusqu&apos;à %2)</translation>
    </message>
    <message>
        <source>Update this program, or take the file in with the newer one.</source>
        <translation type="unfinished">Mettez ce programme à jour, ou importez le fichier avec le plus récent.</translation>
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
        <source>this is not the key of a device</source>
        <translation type="unfinished">ce n&apos;est pas la clé d&apos;un appareil</translation>
    </message>
    <message>
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">il dépasserait %1 Mo</translation>
    </message>
    <message>
        <source>Give a copy of the whole register instead.</source>
        <translation type="unfinished">Donnez plutôt une copie de tout le registre.</translation>
    </message>
    <message>
        <source>the file is about another vessel than this register, which is about %1 %2</source>
        <translation type="unfinished">le fichier concerne un autre navire que ce registre, qui concerne %1 %2</translation>
    </message>
    <message>
        <source>Open the register of that vessel, or begin a new one.</source>
        <translation type="unfinished">Ouvrez le registre de ce navire, ou commencez-en un nouveau.</translation>
    </message>
    <message>
        <source>Copy all 64 digits as the other tablet shows them.</source>
        <translation type="unfinished">Recopiez les 64 chiffres et lettres tels que l&apos;autre tablette les affiche.</translation>
    </message>
    <message>
        <source>the sealed file is damaged</source>
        <translation type="unfinished">le fichier scellé est endommagé</translation>
    </message>
    <message>
        <source>this file is sealed for one device</source>
        <translation type="unfinished">ce fichier est scellé pour un appareil donné</translation>
    </message>
    <message>
        <source>Look at it with the register of the device it is meant for.</source>
        <translation type="unfinished">Ouvrez-le avec le registre de l&apos;appareil auquel il est destiné.</translation>
    </message>
    <message>
        <source>this file is sealed for another device, the one whose key has the fingerprint %1</source>
        <translation type="unfinished">ce fichier est scellé pour un autre appareil, celui dont la clé a l&apos;empreinte %1</translation>
    </message>
    <message>
        <source>Open it there, or have it sealed for this device, whose fingerprint is %2.</source>
        <translation type="unfinished">Ouvrez-le là-bas, ou faites-le sceller pour cet appareil, dont l&apos;empreinte est %2.</translation>
    </message>
    <message>
        <source>the computer gives no random numbers</source>
        <translation type="unfinished">l&apos;ordinateur ne fournit pas de nombres aléatoires</translation>
    </message>
    <message>
        <source>Start the computer again.</source>
        <translation type="unfinished">Redémarrez l&apos;ordinateur.</translation>
    </message>
    <message>
        <source>the file says that it comes from this very device, but its key has the fingerprint %1, which is not this device&apos;s</source>
        <translation type="unfinished">le fichier dit venir de cet appareil même, mais sa clé a l&apos;empreinte %1, qui n&apos;est pas celle de cet appareil</translation>
    </message>
    <message>
        <source>Do not take it; find out who made it.</source>
        <translation type="unfinished">Ne l&apos;importez pas&#xa0;; cherchez qui l&apos;a fait.</translation>
    </message>
    <message>
        <source>it comes with another key than the one accepted for it: the fingerprint %1 instead of %2</source>
        <translation type="unfinished">il arrive avec une autre clé que celle acceptée pour lui&#xa0;: l&apos;empreinte %1 au lieu de %2</translation>
    </message>
    <message>
        <source>Do not take it before you have asked whoever has that tablet; if its key really is new, take the old acceptance back first.</source>
        <translation type="unfinished">Ne l&apos;importez pas avant d&apos;avoir interrogé qui a cette tablette&#xa0;; si sa clé est vraiment nouvelle, annulez d&apos;abord l&apos;ancienne acceptation.</translation>
    </message>
    <message>
        <source>it accepts, in the name of this device, a key that nobody here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">il accepte, au nom de cet appareil, une clé que personne ici n&apos;a acceptée&#xa0;: clé %1 de l&apos;appareil %2, empreinte %3</translation>
    </message>
    <message>
        <source>If this register was put back from a backup, compare that key as well and accept it; else do not take the file.</source>
        <translation type="unfinished">Si ce registre a été rétabli à partir d&apos;une sauvegarde, comparez aussi cette clé et acceptez-la&#xa0;; sinon, n&apos;importez pas le fichier.</translation>
    </message>
    <message>
        <source>nobody here has accepted its key yet; it has the fingerprint %1</source>
        <translation type="unfinished">personne ici n&apos;a encore accepté sa clé&#xa0;; elle a l&apos;empreinte %1</translation>
    </message>
    <message>
        <source>Compare the fingerprint with what that tablet shows, and accept it.</source>
        <translation type="unfinished">Comparez l&apos;empreinte avec ce qu&apos;affiche cette tablette-là, et acceptez-la.</translation>
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
        <source>Make the report again.</source>
        <translation type="unfinished">Refaites le rapport.</translation>
    </message>
    <message>
        <source>it rests on %1 facts of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">cela repose sur %1 faits de l&apos;appareil %2 jusqu&apos;à %3&#xa0;; %4 sont ici</translation>
    </message>
    <message>
        <source>the facts it rests on are not what they were then</source>
        <translation type="unfinished">les faits sur lesquels cela repose ne sont plus ce qu&apos;ils étaient alors</translation>
    </message>
    <message>
        <source>the signature does not fit its key and what it says</source>
        <translation type="unfinished">la signature ne correspond pas à sa clé et à ce qu&apos;elle dit</translation>
    </message>
    <message>
        <source>it was made with another key than that of its device</source>
        <translation type="unfinished">elle a été faite avec une autre clé que celle de son appareil</translation>
    </message>
    <message>
        <source>its bytes were changed</source>
        <translation type="unfinished">ses octets ont été modifiés</translation>
    </message>
    <message>
        <source>Take it over again from another tablet.</source>
        <translation type="unfinished">Récupérez-la de nouveau d&apos;une autre tablette.</translation>
    </message>
    <message>
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">il annule quelque chose mais ne dit pas quoi</translation>
    </message>
    <message>
        <source>No program of ours writes this.</source>
        <translation type="unfinished">Aucun de nos programmes n&apos;écrit cela.</translation>
    </message>
    <message>
        <source>the fact it replaces, %1, is not here</source>
        <translation type="unfinished">le fait qu&apos;il remplace, %1, n&apos;est pas ici</translation>
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
        <source>%1 at its top</source>
        <translation type="unfinished">%1, tout en haut</translation>
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
        <source>fact %1</source>
        <translation type="unfinished">fait %1</translation>
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
        <source>report</source>
        <translation type="unfinished">rapport</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">fiche de porte</translation>
    </message>
    <message>
        <source>paper form</source>
        <translation type="unfinished">formulaire papier</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">tentative</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">le mot de l&apos;instructeur</translation>
    </message>
    <message>
        <source>stopped as asked: nothing was changed</source>
        <translation type="unfinished">arrêté comme demandé&#xa0;: rien n&apos;a été modifié</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;?</source>
        <translation type="unfinished">Vouliez-vous dire &quot;%1&quot;&#xa0;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot; or &quot;%2&quot;?</source>
        <translation type="unfinished">Vouliez-vous dire &quot;%1&quot; ou &quot;%2&quot;&#xa0;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;?</source>
        <translation type="unfinished">Vouliez-vous dire &quot;%1&quot;, &quot;%2&quot; ou &quot;%3&quot;&#xa0;?</translation>
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
        <source>Copy it to a folder of yours.</source>
        <translation type="unfinished">Copiez-le dans un dossier à vous.</translation>
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
        <source>there is a file of this name already: NOT replaced</source>
        <translation type="unfinished">un fichier de ce nom existe déjà&#xa0;: NON remplacé</translation>
    </message>
    <message>
        <source>Give another name, or say that it may be replaced.</source>
        <translation type="unfinished">Donnez un autre nom, ou indiquez qu&apos;il peut être remplacé.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT written over</source>
        <translation type="unfinished">c&apos;est le registre lui-même&#xa0;: NON écrasé</translation>
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
        <source>it could not be flushed to the storage: %1</source>
        <translation type="unfinished">l&apos;écriture n&apos;a pas pu être menée à bien sur le support&#xa0;: %1</translation>
    </message>
    <message>
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">le fichier écrit n&apos;a pas pu être fermé&#xa0;: %1</translation>
    </message>
    <message>
        <source>the written file could not take its place: %1</source>
        <translation type="unfinished">le fichier écrit n&apos;a pas pu être mis à sa place&#xa0;: %1</translation>
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
        <source>Write it once more before the power goes.</source>
        <translation type="unfinished">Écrivez-le encore une fois avant toute coupure de courant.</translation>
    </message>
    <message>
        <source>could not be taken away: %1</source>
        <translation type="unfinished">n&apos;a pas pu être supprimé&#xa0;: %1</translation>
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
        <source>text stands before or after the quotes of a cell</source>
        <translation type="unfinished">du texte se trouve avant ou après les guillemets d&apos;une cellule</translation>
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
        <source>a number in it is too large to be read</source>
        <translation type="unfinished">il contient un nombre trop grand pour être lu</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation type="unfinished">Corrigez-le.</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good one.</source>
        <translation type="unfinished">Demandez-en un bon à qui vous a donné le fichier.</translation>
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
        <source>Take it out, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Retirez-le, ou faites commencer son nom par &quot;x-&quot;.</translation>
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
        <source>this must be a list of texts</source>
        <translation type="unfinished">ceci doit être une liste de textes</translation>
    </message>
    <message>
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Écrivez-la entre crochets&#xa0;: [&quot;one&quot;, &quot;two&quot;].</translation>
    </message>
    <message>
        <source>this must be a text</source>
        <translation type="unfinished">ceci doit être un texte</translation>
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
        <source>%1: NOT taken in</source>
        <translation type="unfinished">%1&#xa0;: NON importé</translation>
    </message>
    <message>
        <source>stopped as asked</source>
        <translation type="unfinished">arrêté comme demandé</translation>
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
        <source>what is recorded is never changed or deleted (%1)</source>
        <translation type="unfinished">ce qui est consigné n&apos;est jamais modifié ni effacé (%1)</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Consignez plutôt une correction.</translation>
    </message>
    <message>
        <source>a text holds bytes that are no valid text, or a value is of the wrong kind</source>
        <translation type="unfinished">un texte contient des octets qui ne forment pas un texte valable, ou une valeur n&apos;est pas du bon genre</translation>
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
        <source>it is there twice (%1)</source>
        <translation type="unfinished">cela figure deux fois (%1)</translation>
    </message>
    <message>
        <source>Leave one of the two out.</source>
        <translation type="unfinished">Omettez l&apos;un des deux.</translation>
    </message>
    <message>
        <source>a value is not one the register allows (%1)</source>
        <translation type="unfinished">une valeur n&apos;est pas de celles que le registre admet (%1)</translation>
    </message>
    <message>
        <source>this is no vessel register</source>
        <translation type="unfinished">ce n&apos;est pas un registre de navire</translation>
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
        <source>Try again; if it comes back, open the last backup.</source>
        <translation type="unfinished">Réessayez&#xa0;; si l&apos;erreur revient, ouvrez la dernière sauvegarde.</translation>
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
        <source>there is no file layer of that name</source>
        <translation type="unfinished">il n&apos;existe pas de couche de fichiers de ce nom</translation>
    </message>
    <message>
        <source>the register is missing but &quot;%1&quot; beside it holds entries of it</source>
        <translation type="unfinished">le registre manque, mais &quot;%1&quot; à côté de lui contient de ses entrées</translation>
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
        <source>Make the folder or choose another place.</source>
        <translation type="unfinished">Créez le dossier ou choisissez un autre endroit.</translation>
    </message>
    <message>
        <source>you may not write to this folder</source>
        <translation type="unfinished">vous n&apos;avez pas le droit d&apos;écrire dans ce dossier</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>the new register cannot be put in its place</source>
        <translation type="unfinished">le nouveau registre ne peut pas être mis à sa place</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">le disque signale une erreur</translation>
    </message>
    <message>
        <source>Try again; if it comes back, choose another disk.</source>
        <translation type="unfinished">Réessayez&#xa0;; si l&apos;erreur revient, choisissez un autre disque.</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">ce n&apos;est pas un fichier</translation>
    </message>
    <message>
        <source>you may not read this file</source>
        <translation type="unfinished">vous n&apos;avez pas le droit de lire ce fichier</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Copiez-le dans un dossier à vous et ouvrez-le là.</translation>
    </message>
    <message>
        <source>the register lies in a read-only place; nothing could be recorded</source>
        <translation type="unfinished">le registre se trouve dans un endroit en lecture seule&#xa0;; rien ne pourrait être consigné</translation>
    </message>
    <message>
        <source>the file is empty; it is no vessel register</source>
        <translation type="unfinished">le fichier est vide&#xa0;; ce n&apos;est pas un registre de navire</translation>
    </message>
    <message>
        <source>Delete it to begin a new register of this name, or choose another file.</source>
        <translation type="unfinished">Supprimez-le pour commencer un nouveau registre de ce nom, ou choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>this is no vessel register of Latchround</source>
        <translation type="unfinished">ce n&apos;est pas un registre de navire de Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one knows up to %2)</source>
        <translation type="unfinished">le registre a été écrit par un programme plus récent (version %1&#xa0;; celui-ci connaît jusqu&apos;à %2)</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Mettez ce programme à jour, puis ouvrez-le de nouveau.</translation>
    </message>
    <message>
        <source>the register was never finished</source>
        <translation type="unfinished">le registre n&apos;a jamais été achevé</translation>
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
        <source>this disk cannot hold a write-ahead log</source>
        <translation type="unfinished">ce disque ne peut pas tenir de journal d&apos;écriture anticipée</translation>
    </message>
    <message>
        <source>another program of another version writes in it</source>
        <translation type="unfinished">un autre programme d&apos;une autre version y écrit</translation>
    </message>
    <message>
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Fermez-le là-bas, puis ouvrez-le ici.</translation>
    </message>
    <message>
        <source>bringing the register to this program&apos;s form would leave rows of %1 without what they refer to: NOT changed</source>
        <translation type="unfinished">mettre le registre à la forme de ce programme laisserait des lignes de %1 sans ce à quoi elles renvoient&#xa0;: NON modifié</translation>
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
        <source>a row of %1 refers to nothing</source>
        <translation type="unfinished">une ligne de %1 ne renvoie à rien</translation>
    </message>
    <message>
        <source>fact %1 is only half there</source>
        <translation type="unfinished">le fait %1 n&apos;est là qu&apos;à moitié</translation>
    </message>
    <message>
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ceci est un registre d&apos;entraînement&#xa0;: rien n&apos;y est un enregistrement d&apos;un navire</translation>
    </message>
    <message>
        <source>Take the file into the register of its vessel.</source>
        <translation type="unfinished">Importez le fichier dans le registre de son navire.</translation>
    </message>
    <message>
        <source>Sign and hand over in the register of a vessel.</source>
        <translation type="unfinished">Signez et transmettez dans le registre d&apos;un navire.</translation>
    </message>
    <message>
        <source>this is the register of a vessel: nobody practises in it</source>
        <translation type="unfinished">ceci est le registre d&apos;un navire&#xa0;: on ne s&apos;y entraîne pas</translation>
    </message>
    <message>
        <source>a practice register holds the practice vessel alone</source>
        <translation type="unfinished">un registre d&apos;entraînement ne contient que le navire d&apos;entraînement</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Importez-le dans un registre à lui.</translation>
    </message>
    <message>
        <source>the number %1 marks the practice vessel, whose doors are not there</source>
        <translation type="unfinished">le numéro %1 désigne le navire d&apos;entraînement, dont les portes n&apos;existent pas</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or practise with it under Practice.</source>
        <translation type="unfinished">Indiquez le numéro propre du navire, ou entraînez-vous avec lui sous «&#xa0;Entraînement&#xa0;».</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">un autre programme</translation>
    </message>
    <message>
        <source>another program writes in this register (%1)</source>
        <translation type="unfinished">un autre programme écrit dans ce registre (%1)</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Fermez-le d&apos;abord là-bas.</translation>
    </message>
    <message>
        <source>another program took the register&apos;s log away</source>
        <translation type="unfinished">un autre programme a retiré le journal du registre</translation>
    </message>
    <message>
        <source>Try again: what the log held is put into the register first. Open the register with no other program meanwhile.</source>
        <translation type="unfinished">Réessayez&#xa0;: ce que contenait le journal est d&apos;abord versé au registre. N&apos;ouvrez le registre avec aucun autre programme entre-temps.</translation>
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
        <source>another fact with this id is recorded already</source>
        <translation type="unfinished">un autre fait de cet identifiant est déjà consigné</translation>
    </message>
    <message>
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Consignez une correction sous un identifiant à elle.</translation>
    </message>
    <message>
        <source>this is no photograph</source>
        <translation type="unfinished">ce n&apos;est pas une photo</translation>
    </message>
    <message>
        <source>the photograph&apos;s bytes do not have the hash it names</source>
        <translation type="unfinished">les octets de la photo n&apos;ont pas le hachage indiqué</translation>
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
        <source>Take it over from the tablet it was taken with.</source>
        <translation type="unfinished">Récupérez-la de la tablette qui l&apos;a prise.</translation>
    </message>
    <message>
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">il n&apos;y a pas de telle porte dans le registre de ce navire</translation>
    </message>
    <message>
        <source>Check the number, or take in an arrangement that lists the door first.</source>
        <translation type="unfinished">Vérifiez le numéro, ou importez d&apos;abord une disposition où figure la porte.</translation>
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
        <source>the fact it shows, &quot;%1&quot;</source>
        <translation type="unfinished">le fait que cela montre, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the fact it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">le fait que cela remplace, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the fact that stands, &quot;%1&quot;</source>
        <translation type="unfinished">le fait retenu, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the fact that yields, &quot;%1&quot;</source>
        <translation type="unfinished">le fait écarté, «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">la nouvelle disposition n&apos;a pas cette porte, mais 1 fait est consigné à son sujet</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number it was tested by.</source>
        <translation type="unfinished">Gardez la porte dans la disposition, sous le numéro qu&apos;elle avait lors des tests.</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">la nouvelle disposition n&apos;a pas cette porte, mais %1 faits sont consignés à son sujet</translation>
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
        <source>the arrangement that comes with it has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">la disposition qui l&apos;accompagne n&apos;a pas cette porte, mais 1 fait est consigné à son sujet</translation>
    </message>
    <message>
        <source>Import the arrangement with that door in it, here or on the other device, then hand over again.</source>
        <translation type="unfinished">Importez la disposition contenant cette porte, ici ou sur l&apos;autre appareil, puis transmettez de nouveau.</translation>
    </message>
    <message>
        <source>the arrangement that comes with it has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">la disposition qui l&apos;accompagne n&apos;a pas cette porte, mais %1 faits sont consignés à son sujet</translation>
    </message>
    <message>
        <source>it is recorded here with other content under the same id</source>
        <translation type="unfinished">c&apos;est consigné ici avec un autre contenu sous le même identifiant</translation>
    </message>
    <message>
        <source>One of the two registers was changed by something else than this program; find out which before either is used.</source>
        <translation type="unfinished">L&apos;un des deux registres a été modifié par autre chose que ce programme&#xa0;; trouvez lequel avant d&apos;utiliser l&apos;un ou l&apos;autre.</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 y renvoie en retour</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor with what comes</source>
        <translation type="unfinished">%1 n&apos;est ni dans ce registre ni dans ce qui arrive</translation>
    </message>
    <message>
        <source>Have it handed over again, all of it.</source>
        <translation type="unfinished">Faites tout transmettre de nouveau.</translation>
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
        <source>class of the boundary not known</source>
        <translation type="unfinished">classe du cloisonnement inconnue</translation>
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
        <source>no machinery space of category A</source>
        <translation type="unfinished">pas de local de machines de la catégorie A</translation>
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
        <source>keel laid %1: a text of ships of other dates</source>
        <translation type="unfinished">quille posée le %1&#xa0;: texte pour des navires d&apos;autres dates</translation>
    </message>
    <message>
        <source>another printed figure stands beside a limit of a gauge</source>
        <translation type="unfinished">une autre valeur imprimée ne va qu&apos;avec une limite relevée à l&apos;instrument</translation>
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
        <source>Take &quot;approximate&quot; out, or give such a band.</source>
        <translation type="unfinished">Retirez &quot;approximate&quot;, ou donnez une telle plage.</translation>
    </message>
    <message>
        <source>a margin must be from 0 to less than 1</source>
        <translation type="unfinished">une marge doit être de 0 à moins de 1</translation>
    </message>
    <message>
        <source>Give it as a part of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Donnez-la en fraction de la limite&#xa0;: 0.05 vaut 5 pour cent.</translation>
    </message>
    <message>
        <source>this margin is wider than that of the catalogue</source>
        <translation type="unfinished">cette marge est plus large que celle du catalogue</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Une telle baïonnette a au plus 20&#xa0;% de la longueur moyenne de la tranche, et au plus 8 m (26 ft).</translation>
    </message>
    <message>
        <source>A zone is at most 39.9 m (131 ft) long on the mean of any one deck as a rule; no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">Une tranche a en règle générale au plus 39.9 m (131 ft) de long, en moyenne sur un même pont&#xa0;; aucune extension n&apos;est imprimée, et un transbordeur peut avoir un équivalent approuvé (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A zone is at most 40 m (131 ft) long on the mean of any one deck as a rule, the vehicle space of a vehicle ferry excepted. By leave of the Marine Safety Center 44 m (144 ft), between its farthest points too. A balcony is at most 40 m long; where that and its area over its mean width come to more, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">Une tranche a en règle générale au plus 40 m (131 ft) de long, en moyenne sur un même pont, sauf le local à véhicules d&apos;un transbordeur de véhicules. Avec l&apos;accord du Marine Safety Center, 44 m (144 ft), y compris entre ses points les plus éloignés. Un balcon a au plus 40 m de long&#xa0;; si cette longueur ajoutée à sa surface divisée par sa largeur moyenne dépasse cette valeur, les deux ponts ont des sprinkleurs (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry has the greater of A-30 and table (c).</source>
        <translation type="unfinished">Un pont qui limite une zone horizontale d&apos;un transbordeur de véhicules a la plus élevée des valeurs A-30 et tableau (c).</translation>
    </message>
    <message>
        <source>Where oil fuel tanks lie below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">Si des soutes à combustible se trouvent sous un local de catégorie spéciale, A-0 suffit pour le pont intermédiaire (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">ceci ne peut pas venir avant &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one watch.</source>
        <translation type="unfinished">Donnez les secondes des deux événements au même chronomètre.</translation>
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
        <source>no instrument for this figure is so coarse</source>
        <translation type="unfinished">aucun instrument pour cette mesure n’est aussi grossier</translation>
    </message>
    <message>
        <source>Give its step in the unit of the row, at most %1.</source>
        <translation type="unfinished">Indiquez sa graduation dans l’unité de la ligne, %1 au plus.</translation>
    </message>
    <message>
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">le registre ne dit pas si elle donne accès à un local de catégorie spéciale</translation>
    </message>
    <message>
        <source>no day of installation, but the ship is no older</source>
        <translation type="unfinished">sans date d&apos;installation, mais le navire n&apos;est pas plus ancien</translation>
    </message>
    <message>
        <source>the ship&apos;s passengers or length are outside what the text is for</source>
        <translation type="unfinished">les passagers ou la longueur du navire sortent du domaine du texte</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">dans un cloisonnement du type C&apos;</translation>
    </message>
    <message>
        <source>no door aboard is one of these</source>
        <translation type="unfinished">aucune porte à bord n&apos;en est une</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">navire à passagers SOLAS</translation>
    </message>
    <message>
        <source>US vessel of subchapter H</source>
        <translation type="unfinished">navire des États-Unis, sous-chapitre H</translation>
    </message>
    <message>
        <source>US vessel of subchapter K</source>
        <translation type="unfinished">navire des États-Unis, sous-chapitre K</translation>
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
        <source>Canadian day vessel of 24 m or more for fewer than 100 passengers</source>
        <translation type="unfinished">bâtiment canadien de jour de 24 m ou plus pour moins de 100 passagers</translation>
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
        <source>it binds</source>
        <translation type="unfinished">elle oblige</translation>
    </message>
    <message>
        <source>a failure is left to the inspector</source>
        <translation type="unfinished">un défaut est laissé à l&apos;inspecteur</translation>
    </message>
    <message>
        <source>advice only</source>
        <translation type="unfinished">simple conseil</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">non demandé</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, paper-form or rule-book.</source>
        <translation type="unfinished">Choisissez survey, deficiency-list, work-list, door-record, paper-form ou rule-book.</translation>
    </message>
    <message>
        <source>a rule book is printed</source>
        <translation type="unfinished">un recueil des règles s&apos;imprime</translation>
    </message>
    <message>
        <source>Write it to a PDF file; its data are given by &quot;rules --json&quot;.</source>
        <translation type="unfinished">Écrivez-le dans un fichier PDF ; ses données viennent de « rules --json ».</translation>
    </message>
    <message>
        <source>there is no row &apos;%1&apos;</source>
        <translation type="unfinished">il n&apos;y a pas de ligne &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The table of &quot;rules&quot; names them all.</source>
        <translation type="unfinished">Le tableau de « rules » les nomme toutes.</translation>
    </message>
    <message>
        <source>a door is one of a vessel</source>
        <translation type="unfinished">une porte est celle d&apos;un navire</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register by --vessel.</source>
        <translation type="unfinished">Donnez le registre du navire par --vessel.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) numbers II-2/9.6 anew; that text was not read.</source>
        <translation type="unfinished">À partir de 2026 MSC.550(108) renumérote II-2/9.6 ; ce texte n&apos;a pas été lu.</translation>
    </message>
    <message>
        <source>Whether the ship goes by these tables is not on record: compare with the approved plan.</source>
        <translation type="unfinished">Rien ne dit si le navire suit ces tableaux : comparez avec le plan approuvé.</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">recueil des règles</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">processus %1 sur %2</translation>
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
        <source>no mark</source>
        <translation type="unfinished">aucun repère</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 are needed</source>
        <translation type="unfinished">%1 repères sur %2 comptent, il en faut %3</translation>
    </message>
    <message>
        <source>%1 marks, bias %2, spread %3&#xa0;ms</source>
        <translation type="unfinished">%1 marques, biais %2, dispersion %3&#xa0;ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">rien n&apos;était défectueux ici</translation>
    </message>
    <message>
        <source>Stop is the answer: no row of the catalogue is.</source>
        <translation type="unfinished">La réponse est l&apos;arrêt&#xa0;: ce n&apos;est aucune ligne du catalogue.</translation>
    </message>
    <message>
        <source>No fault was there, and none was imagined.</source>
        <translation type="unfinished">Il n&apos;y avait aucun défaut, et aucun n&apos;a été imaginé.</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Vous&#xa0;: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation type="unfinished">Juste&#xa0;: %1</translation>
    </message>
    <message>
        <source>Every row that was asked is graded as it is.</source>
        <translation type="unfinished">Chaque ligne demandée est notée comme elle est.</translation>
    </message>
    <message>
        <source>Nobody was endangered</source>
        <translation type="unfinished">Personne n&apos;a été mis en danger</translation>
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
        <source>A leaf met somebody, or would have. Aboard that is a crushed hand or a death: a power-operated leaf does not know who stands in its way.</source>
        <translation type="unfinished">Un vantail a rencontré quelqu&apos;un, ou l&apos;aurait fait. À bord, c&apos;est une main écrasée ou un mort&#xa0;: un vantail motorisé ne sait pas qui est sur son chemin.</translation>
    </message>
    <message>
        <source>No moving leaf met anybody.</source>
        <translation type="unfinished">Aucun vantail en mouvement n&apos;a rencontré personne.</translation>
    </message>
    <message>
        <source>Watch the opening and not the clock. Stop the moment somebody steps in: a run that was stopped costs two minutes.</source>
        <translation type="unfinished">Surveillez le passage et non le chronomètre. Arrêtez dès que quelqu&apos;un s&apos;engage&#xa0;: un essai arrêté coûte deux minutes.</translation>
    </message>
    <message>
        <source>Every caution was true when it was answered</source>
        <translation type="unfinished">Chaque précaution était vraie quand elle a été confirmée</translation>
    </message>
    <message>
        <source>One caution was answered and was not true</source>
        <translation type="unfinished">Une précaution a été confirmée et n&apos;était pas vraie</translation>
    </message>
    <message>
        <source>%1 cautions were answered and were not true</source>
        <translation type="unfinished">%1 précautions ont été confirmées et n&apos;étaient pas vraies</translation>
    </message>
    <message>
        <source>The door was armed with somebody in the way. A caution is not a key to get past: look at both sides first, and have people asked aside.</source>
        <translation type="unfinished">La porte a été armée avec quelqu&apos;un sur son chemin. Une précaution n&apos;est pas une touche à passer&#xa0;: regardez d&apos;abord des deux côtés, et faites écarter les gens.</translation>
    </message>
    <message>
        <source>The way was clear each time a door was armed.</source>
        <translation type="unfinished">Le chemin était libre chaque fois qu&apos;une porte a été armée.</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished">Rien n&apos;a été chronométré.</translation>
    </message>
    <message>
        <source>Your thumb in this exercise</source>
        <translation type="unfinished">Votre pouce dans cet exercice</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Where %1 of a kind count, the thumb drill offers to use them as your thumb&apos;s own figures in place of the published ones.</source>
        <translation type="unfinished">Les repères de tous vos exercices s&apos;additionnent. Dès que %1 d&apos;un genre comptent, l&apos;étalonnage du pouce propose de les prendre comme valeurs propres de votre pouce à la place des valeurs publiées.</translation>
    </message>
    <message>
        <source>Each mark against the truth</source>
        <translation type="unfinished">Chaque repère face à la vérité</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1. Measured %2; asked: %3</source>
        <translation type="unfinished">Non respecté&#xa0;: %1. Mesuré %2&#xa0;; exigé&#xa0;: %3</translation>
    </message>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">Non respecté&#xa0;: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">constatée le %1, ouverte depuis</translation>
    </message>
    <message>
        <source>found on %1, %2 since</source>
        <translation type="unfinished">constatée le %1, %2 depuis</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Anomalie à la porte %1</translation>
    </message>
    <message>
        <source>The same row was written up before: %1.</source>
        <translation type="unfinished">La même ligne a déjà été rédigée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Le même défaut de nouveau</translation>
    </message>
    <message>
        <source>Another one</source>
        <translation type="unfinished">Un autre</translation>
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
        <translation type="unfinished">coulissante</translation>
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
        <source>port State</source>
        <translation type="unfinished">État du port</translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished">exercice</translation>
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
        <source>let go from fully open</source>
        <translation type="unfinished">par lâcher, grande ouverte</translation>
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
        <source>Touched</source>
        <translation type="unfinished">Contact</translation>
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
        <source>if you like: half of the opening is closed</source>
        <translation type="unfinished">facultatif&#xa0;: la moitié du passage est fermée</translation>
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
        <source>touch when the leaf has stopped and re-opens</source>
        <translation type="unfinished">touchez quand le vantail s&apos;est arrêté et se rouvre</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">complet</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished">nul</translation>
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
        <source>blackout trial</source>
        <translation type="unfinished">essai de black-out</translation>
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
        <source>yearly</source>
        <translation type="unfinished">annuelle</translation>
    </message>
    <message>
        <source>overdue: it ended on %1</source>
        <translation type="unfinished">en retard&#xa0;: il a expiré le %1</translation>
    </message>
    <message>
        <source>ends %1, its window opens %2</source>
        <translation type="unfinished">expire le %1, sa fenêtre s&apos;ouvre le %2</translation>
    </message>
    <message>
        <source>window open since %1, ends %2</source>
        <translation type="unfinished">fenêtre ouverte depuis le %1, expire le %2</translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Certificat de sécurité pour navire à passagers, visite de renouvellement</translation>
    </message>
    <message>
        <source>overdue: some doors never tried in this register</source>
        <translation type="unfinished">en retard&#xa0;: certaines portes jamais essayées dans ce registre</translation>
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
        <source>nothing falls due</source>
        <translation type="unfinished">aucune échéance</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 en retard</translation>
    </message>
    <message>
        <source>next on %1</source>
        <translation type="unfinished">prochain le %1</translation>
    </message>
    <message>
        <source>when asked</source>
        <translation type="unfinished">sur demande</translation>
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
        <source>too close to a limit to tell</source>
        <translation type="unfinished">trop près d&apos;une limite pour trancher</translation>
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
        <source>opens again too far</source>
        <translation type="unfinished">se rouvre trop</translation>
    </message>
    <message>
        <source>leaves out of order</source>
        <translation type="unfinished">vantaux en désordre</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">ne s&apos;enclenche pas</translation>
    </message>
    <message>
        <source>magnet lets go late</source>
        <translation type="unfinished">aimant lâche tard</translation>
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
        <translation type="unfinished">jeu sous le vantail</translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished">plaque fausse pour le cloisonnement</translation>
    </message>
    <message>
        <source>painted seal</source>
        <translation type="unfinished">joint peint</translation>
    </message>
    <message>
        <source>indicator lies</source>
        <translation type="unfinished">indicateur faux</translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished">passage de manche coincé</translation>
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
        <source>imagined</source>
        <translation type="unfinished">imaginé</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">De quoi est faite l&apos;incertitude</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Published figures for the thumb until its own drill is done: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Selon la loi de propagation (JCGM 100:2008). Valeurs publiées pour le pouce tant que son propre étalonnage n&apos;est pas fait&#xa0;: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1 through the years</source>
        <translation type="unfinished">La porte %1 au fil des ans</translation>
    </message>
    <message>
        <source>No time was taken with the ship upright yet.</source>
        <translation type="unfinished">Aucun temps n&apos;a encore été pris navire droit.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs with its U; the shaded band is where the next is to be expected with 95 %. It says nothing about what can break at once.</source>
        <translation type="unfinished">Chaque point est la moyenne des essais navire droit d&apos;une tournée avec son U&#xa0;; la bande grisée est l&apos;endroit où attendre le suivant avec 95&#xa0;%. Elle ne dit rien de ce qui peut casser d&apos;un coup.</translation>
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
        <source>not asked of this door</source>
        <translation type="unfinished">non demandé pour cette porte</translation>
    </message>
    <message>
        <source>not tried on this walk: %1</source>
        <translation type="unfinished">non essayé pendant cette tournée&#xa0;: %1</translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished">pas encore essayé</translation>
    </message>
    <message>
        <source>one side still to be tried</source>
        <translation type="unfinished">un côté reste à essayer</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">n&apos;a pas pu être testé&#xa0;: %1</translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished">vu</translation>
    </message>
    <message>
        <source>seen, and it is not so</source>
        <translation type="unfinished">vu, et ce n&apos;est pas le cas</translation>
    </message>
    <message>
        <source>answered as not applicable to this door</source>
        <translation type="unfinished">répondu sans objet pour cette porte</translation>
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
        <source>a limit lies inside the uncertainty: measure once more</source>
        <translation type="unfinished">une limite tombe dans l&apos;incertitude&#xa0;: mesurez encore une fois</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: the text says approximate, you decide</source>
        <translation type="unfinished">encore trop près d&apos;une limite après %1 essais&#xa0;: le texte dit environ, à vous de décider</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">fermeture irrégulière&#xa0;: %1 essais ne concordent pas, le plus mauvais compte</translation>
    </message>
    <message>
        <source>one half of the travel lies outside the limits: roughly uniform?</source>
        <translation type="unfinished">une moitié de la course est hors limites&#xa0;: à peu près uniforme&#xa0;?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only, time it again upright</source>
        <translation type="unfinished">gîte %1 degrés&#xa0;: la valeur n&apos;est qu&apos;un conseil, rechronométrez navire droit</translation>
    </message>
    <message>
        <source>weaker than its boundary: %1</source>
        <translation type="unfinished">plus faible que son cloisonnement&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1; the register does not say what the boundary asks for: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1&#xa0;; le registre ne dit pas ce qu&apos;exige le cloisonnement&#xa0;: voir le plan incendie approuvé ou demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1&#xa0;; aucune valeur imprimée&#xa0;: demander à l&apos;Administration</translation>
    </message>
    <message>
        <source>%1; no fire class is asked here</source>
        <translation type="unfinished">%1&#xa0;; aucune classe d&apos;incendie exigée ici</translation>
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
        <source>not as good practice has it: you decide whether the door may stay so</source>
        <translation type="unfinished">pas conforme à la bonne pratique&#xa0;: à vous de décider si la porte peut rester ainsi</translation>
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
        <source>the register has no clear opening for this door</source>
        <translation type="unfinished">le registre ne donne pas le passage libre de cette porte</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, édition %2</translation>
    </message>
    <message>
        <source>the cited text was read</source>
        <translation type="unfinished">le texte cité a été lu</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished">pratique courante, sans source</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">conseil, jamais un motif pour refuser une porte</translation>
    </message>
    <message>
        <source>put it right, then test it again</source>
        <translation type="unfinished">remettre en état, puis tester de nouveau</translation>
    </message>
    <message>
        <source>your judgement, with its reason</source>
        <translation type="unfinished">votre jugement, avec son motif</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">encore un essai&#xa0;; trois au plus, puis vous décidez</translation>
    </message>
    <message>
        <source>try it from the other side</source>
        <translation type="unfinished">l&apos;essayer de l&apos;autre côté</translation>
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
        <source>try it at the door</source>
        <translation type="unfinished">l&apos;essayer à la porte</translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 non conforme(s)</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 à trancher</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 non testé(s)</translation>
    </message>
    <message>
        <source>all %1 satisfactory</source>
        <translation type="unfinished">tous conformes (%1)</translation>
    </message>
    <message>
        <source>nothing asked</source>
        <translation type="unfinished">rien de demandé</translation>
    </message>
    <message>
        <source>grave: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">grave&#xa0;: le feu ou la fumée passe, ou une personne peut être blessée</translation>
    </message>
    <message>
        <source>serious: the door does not do what is asked</source>
        <translation type="unfinished">sérieux&#xa0;: la porte ne fait pas ce qui est exigé</translation>
    </message>
    <message>
        <source>minor: upkeep and marking</source>
        <translation type="unfinished">mineur&#xa0;: entretien et marquage</translation>
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
        <source>not asked of this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">non demandé pour cette porte (%1)&#xa0;: ce qui est enregistré ici ne compte pas</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open, you decide: %1</source>
        <translation type="unfinished">non satisfait, mais le texte laisse la question ouverte, à vous de décider&#xa0;: %1</translation>
    </message>
    <message>
        <source>seen, and it is another kind of door</source>
        <translation type="unfinished">vu, et c&apos;est une porte d&apos;un autre genre</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished">sur la limite</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1): you decide</source>
        <translation type="unfinished">au-delà de la limite de moins d&apos;un échelon de l&apos;instrument (%1)&#xa0;: à vous de décider</translation>
    </message>
    <message>
        <source>between the two figures that the text prints (%1): you decide</source>
        <translation type="unfinished">entre les deux valeurs que le texte imprime (%1)&#xa0;: à vous de décider</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1: you decide</source>
        <translation type="unfinished">hors d&apos;une plage que le texte dit approximative, %1&#xa0;: à vous de décider</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: you decide</source>
        <translation type="unfinished">encore trop près d&apos;une limite après %1 essais&#xa0;: à vous de décider</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move, a slip of the finger? Make another run, or decide</source>
        <translation type="unfinished">fermée plus vite qu&apos;un vantail ne peut bouger, un faux appui&#xa0;? Refaites un essai, ou décidez</translation>
    </message>
    <message>
        <source>weaker by tables that are not shown to be this ship&apos;s: %1; ask for the approved drawing</source>
        <translation type="unfinished">plus faible selon des tableaux dont rien ne montre que ce sont ceux de ce navire&#xa0;: %1&#xa0;; demander le plan approuvé</translation>
    </message>
    <message>
        <source>weaker than its boundary, unless oil fuel tanks lie below: %1</source>
        <translation type="unfinished">plus faible que son cloisonnement, sauf si des soutes à combustible se trouvent au-dessous&#xa0;: %1</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">un autre essai</translation>
    </message>
    <message>
        <source>not asked: see the answer to “%1”</source>
        <translation type="unfinished">non demandé : voir la réponse à « %1 »</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to bind here (%1): you decide</source>
        <translation type="unfinished">non conforme, mais rien ne montre que ce texte oblige ici (%1) : à vous de décider</translation>
    </message>
    <message>
        <source>one side was answered n/a, and the text asks for both: you decide</source>
        <translation type="unfinished">un côté a reçu la réponse « sans objet » alors que le texte demande les deux : à vous de décider</translation>
    </message>
    <message>
        <source>the alarm differs: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">l&apos;alarme varie : %1 essais ne concordent pas, le pire vaut</translation>
    </message>
    <message>
        <source>run to its end, but not every event was marked</source>
        <translation type="unfinished">essai mené à terme, mais un repère manque</translation>
    </message>
    <message>
        <source>a run was begun, and none came to its end</source>
        <translation type="unfinished">un essai a été commencé, aucun n&apos;est allé à son terme</translation>
    </message>
    <message>
        <source>the alarm came on only when the door was shut</source>
        <translation type="unfinished">l&apos;alarme n&apos;a sonné qu&apos;une fois la porte fermée</translation>
    </message>
    <message>
        <source>answered n/a, and the text has no such case: you decide</source>
        <translation type="unfinished">réponse « sans objet », cas que le texte ne prévoit pas : à vous de décider</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule asks for one: %1</source>
        <translation type="unfinished">le plan approuvé n&apos;a pas la classe A que la règle demande : %1</translation>
    </message>
    <message>
        <source>released from the control station, and no alarm was marked</source>
        <translation type="unfinished">libérée depuis le poste de commande, sans qu&apos;aucune alarme ait été marquée</translation>
    </message>
    <message>
        <source>say whether the alarm sounded, or run it again</source>
        <translation type="unfinished">dites si l&apos;alarme a sonné, ou refaites l&apos;essai</translation>
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
        <source>past the day due</source>
        <translation type="unfinished">échéance dépassée</translation>
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
        <source>no day set</source>
        <translation type="unfinished">sans échéance</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished">encore personne</translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 anomalie</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 anomalies</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>from each opening all the way home</source>
        <translation type="unfinished">de chaque ouverture jusqu&apos;en butée</translation>
    </message>
    <message>
        <source>left standing ajar</source>
        <translation type="unfinished">restée entrebâillée</translation>
    </message>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">premier repère&#xa0;: le vantail commence à bouger</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">dernier repère&#xa0;: complètement fermée</translation>
    </message>
    <message>
        <source>an even way, from start to end</source>
        <translation type="unfinished">une marche régulière, du début à la fin</translation>
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
        <source>the lip is home first: the other stays out</source>
        <translation type="unfinished">le recouvrement arrive le premier&#xa0;: l&apos;autre reste dehors</translation>
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
        <source>let go, it shuts</source>
        <translation type="unfinished">lâchée, elle se ferme</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">un crochet la tient ouverte</translation>
    </message>
    <message>
        <source>the switch on each side lets it go</source>
        <translation type="unfinished">l&apos;interrupteur de chaque côté la lâche</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">un côté est sans effet</translation>
    </message>
    <message>
        <source>released from the station, it closes</source>
        <translation type="unfinished">déclenchée depuis le poste, elle se ferme</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">elle reste ouverte</translation>
    </message>
    <message>
        <source>stays as it was put</source>
        <translation type="unfinished">reste comme on l&apos;a mis</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">revient&#xa0;: la porte est de nouveau retenue</translation>
    </message>
    <message>
        <source>stands ajar, and the panel says open</source>
        <translation type="unfinished">entrebâillée, et le tableau indique ouverte</translation>
    </message>
    <message>
        <source>stands ajar, but the panel says shut</source>
        <translation type="unfinished">entrebâillée, mais le tableau indique fermée</translation>
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
        <source>the strip lies flush and unbroken</source>
        <translation type="unfinished">la bande est affleurante et continue</translation>
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
        <source>hangs low and rubs at the sill</source>
        <translation type="unfinished">pend et frotte sur le seuil</translation>
    </message>
    <message>
        <source>dry, the arm fast at both ends</source>
        <translation type="unfinished">sec, le bras fixé aux deux bouts</translation>
    </message>
    <message>
        <source>oil runs from it, the arm is off</source>
        <translation type="unfinished">l&apos;huile en coule, le bras est décroché</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">le pêne est à fond dans sa gâche</translation>
    </message>
    <message>
        <source>the bolt lies short: a push opens it</source>
        <translation type="unfinished">le pêne est trop court&#xa0;: une poussée ouvre</translation>
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
        <source>laps well over the stop</source>
        <translation type="unfinished">recouvre bien la feuillure</translation>
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
        <source>a narrow gap at its widest place</source>
        <translation type="unfinished">un jeu étroit à l&apos;endroit le plus large</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">un grand jeu&#xa0;: lire la règle au pied du vantail</translation>
    </message>
    <message>
        <source>bare deck all the way of the leaf</source>
        <translation type="unfinished">pont nu sur tout le chemin du vantail</translation>
    </message>
    <message>
        <source>stores in the way of the leaf</source>
        <translation type="unfinished">provisions sur le chemin du vantail</translation>
    </message>
    <message>
        <source>bare to the end</source>
        <translation type="unfinished">nu jusqu&apos;au fond</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">détritus sur le rail</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">seule sa propre retenue la tient</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">une cale sous le vantail</translation>
    </message>
    <message>
        <source>a hold-back that the station releases</source>
        <translation type="unfinished">une retenue que le poste libère</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">un crochet à côté, un piton sur le vantail</translation>
    </message>
    <message>
        <source>bare, every roller on the rail</source>
        <translation type="unfinished">nu, chaque galet sur le rail</translation>
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
        <source>open it while the release still stands</source>
        <translation type="unfinished">ouvrez-la pendant que le déclenchement est maintenu</translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">lâchez, écartez-vous&#xa0;: elle se referme</translation>
    </message>
    <message>
        <source>stops at the soft block and goes back</source>
        <translation type="unfinished">s&apos;arrête au bloc souple et recule</translation>
    </message>
    <message>
        <source>pushes on: a hand would be crushed</source>
        <translation type="unfinished">continue de pousser&#xa0;: une main serait écrasée</translation>
    </message>
    <message>
        <source>goes back a little from the block</source>
        <translation type="unfinished">recule un peu du bloc</translation>
    </message>
    <message>
        <source>goes back too far</source>
        <translation type="unfinished">recule trop loin</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">accroché au loquet, tiré jusqu&apos;à ce qu&apos;il lâche</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it just moves</source>
        <translation type="unfinished">accroché au bord libre, jusqu&apos;au premier mouvement</translation>
    </message>
    <message>
        <source>on to the stair&apos;s width</source>
        <translation type="unfinished">jusqu&apos;à la largeur de l&apos;escalier</translation>
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
        <source>Look along the whole way first. Work the switch or handle on that side, then stand clear: hands off edges and out of the pocket.</source>
        <translation type="unfinished">Regardez d&apos;abord tout le long du chemin. Actionnez l&apos;interrupteur ou la poignée de ce côté, puis écartez-vous&#xa0;: pas de main aux bords ni dans le logement.</translation>
    </message>
    <message>
        <source>The cautions come first. The control station releases it at the word to start; nobody passes a moving door, and anybody may say the word to stop.</source>
        <translation type="unfinished">Les précautions d&apos;abord. Le poste de sécurité déclenche au mot de départ&#xa0;; personne ne franchit une porte en mouvement, et chacun peut dire le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>Open it fully, look along its way, let go and stand clear.</source>
        <translation type="unfinished">Ouvrez-la en grand, regardez le long de son chemin, lâchez et écartez-vous.</translation>
    </message>
    <message>
        <source>Over the public address or from mouth to mouth: which doors will move, and when. Wait until those near have looked up.</source>
        <translation type="unfinished">Par la diffusion générale ou de bouche à oreille&#xa0;: quelles portes vont bouger, et quand. Attendez que ceux qui sont près aient levé les yeux.</translation>
    </message>
    <message>
        <source>Nobody in an opening, nobody near a leaf, no child out of reach. Somebody turns people back until the door stands still.</source>
        <translation type="unfinished">Personne dans une ouverture, personne près d&apos;un vantail, aucun enfant livré à lui-même. Quelqu&apos;un fait rebrousser chemin aux gens jusqu&apos;à ce que la porte soit immobile.</translation>
    </message>
    <message>
        <source>One person on each side of every door of the group, where both leaf and approach are seen, able to call stop. Bad: one watch for two sides.</source>
        <translation type="unfinished">Une personne de chaque côté de chaque porte du groupe, d&apos;où l&apos;on voit le vantail et l&apos;approche, et qui peut crier stop. Mauvais&#xa0;: un seul veilleur pour deux côtés.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers stands at the release, and at nothing else.</source>
        <translation type="unfinished">Appelez sur le canal convenu et attendez la réponse. La personne qui répond se tient à la commande de déclenchement, et ne fait rien d&apos;autre.</translation>
    </message>
    <message>
        <source>Say the word to start and the word to stop; hear both repeated. Anybody may say the word to stop.</source>
        <translation type="unfinished">Dites le mot de départ et le mot d&apos;arrêt&#xa0;; écoutez la répétition des deux. Chacun peut dire le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>Look along the whole path, and into the pocket with a lamp. Hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">Regardez toute la course, et dans le logement avec une lampe. Pas de mains, de pieds, de manches ni de câbles aux bords et aux bords de rencontre.</translation>
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
        <source>Hold the block by its far end, low in the path, and stand beside the leaf. Mark when it touches and when it stops; then measure how far it went back. Where it pushes on, say the word to stop.</source>
        <translation type="unfinished">Tenez le bloc par son extrémité éloignée, bas sur la course, et placez-vous à côté du vantail. Marquez quand il touche et quand il s&apos;arrête&#xa0;; puis mesurez de combien il a reculé. S&apos;il continue de pousser, dites le mot d&apos;arrêt.</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Force de fermeture au bord, au peson</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, a hand&apos;s breadth before it is shut. Hold it still and read the pull. Fingers off the edge. From mass and force follows what an inclination would do.</source>
        <translation type="unfinished">Accrochez le peson au bord libre, d&apos;équerre avec le vantail, à une largeur de main avant la fermeture. Tenez-le immobile et lisez la traction. Pas de doigts au bord. La masse et la force disent ce que ferait une inclinaison.</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Gîte actuelle du navire</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count for the upright ship: over 1 degree they are advice only.</source>
        <translation type="unfinished">Lisez le clinomètre de la passerelle, ou tenez un fil à plomb contre un montant vertical. Les temps valent pour le navire droit&#xa0;: au-delà de 1 degré, ils ne sont qu&apos;un conseil.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures stand above it.</source>
        <translation type="unfinished">Pratique courante. Les règles locales et les procédures de la compagnie priment.</translation>
    </message>
    <message>
        <source>the plate is as strong as the boundary</source>
        <translation type="unfinished">la plaque est aussi résistante que le cloisonnement</translation>
    </message>
    <message>
        <source>the plate is weaker than the boundary</source>
        <translation type="unfinished">la plaque est plus faible que le cloisonnement</translation>
    </message>
    <message>
        <source>can be read, and is the register&apos;s</source>
        <translation type="unfinished">lisible, et c&apos;est celle du registre</translation>
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
        <source>closed all over</source>
        <translation type="unfinished">plein partout</translation>
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
        <source>a cut under the leaf: width by height</source>
        <translation type="unfinished">une découpe sous le vantail&#xa0;: largeur par hauteur</translation>
    </message>
    <message>
        <source>whole, with its wire: height by width</source>
        <translation type="unfinished">entier, avec son armature&#xa0;: hauteur par largeur</translation>
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
        <source>whole all over</source>
        <translation type="unfinished">entier partout</translation>
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
        <source>everybody near has heard it</source>
        <translation type="unfinished">tous ceux qui sont près l&apos;ont entendu</translation>
    </message>
    <message>
        <source>nobody in the way or near it</source>
        <translation type="unfinished">personne sur le chemin ni à côté</translation>
    </message>
    <message>
        <source>somebody in the opening</source>
        <translation type="unfinished">quelqu&apos;un dans le passage</translation>
    </message>
    <message>
        <source>a watch on each side of the door</source>
        <translation type="unfinished">un veilleur de chaque côté de la porte</translation>
    </message>
    <message>
        <source>nobody sees the far side</source>
        <translation type="unfinished">personne ne voit l&apos;autre côté</translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished">répond sur le canal convenu</translation>
    </message>
    <message>
        <source>each word said by one, repeated by the other</source>
        <translation type="unfinished">chaque mot dit par l&apos;un, répété par l&apos;autre</translation>
    </message>
    <message>
        <source>path and pocket are bare</source>
        <translation type="unfinished">course et logement sont nus</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">une main au bord, une caisse sur la course</translation>
    </message>
    <message>
        <source>its supply is cut: it shuts</source>
        <translation type="unfinished">son alimentation coupée&#xa0;: elle se ferme</translation>
    </message>
    <message>
        <source>its supply is cut: it stays open</source>
        <translation type="unfinished">son alimentation coupée&#xa0;: elle reste ouverte</translation>
    </message>
    <message>
        <source>hold-back dead: it is driven home</source>
        <translation type="unfinished">retenue sans courant&#xa0;: elle est ramenée en butée</translation>
    </message>
    <message>
        <source>it hangs where it was held</source>
        <translation type="unfinished">elle reste là où elle était tenue</translation>
    </message>
    <message>
        <source>ten times open and shut from its own store</source>
        <translation type="unfinished">dix fois ouverte et fermée sur sa propre réserve</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">l&apos;une est en panne, les autres fonctionnent</translation>
    </message>
    <message>
        <source>one fails, and all stand still</source>
        <translation type="unfinished">l&apos;une est en panne, et toutes s&apos;arrêtent</translation>
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
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: what %1 degrees ask of the closer cannot be worked out.</source>
        <translation type="unfinished">La masse du vantail n&apos;est pas au registre&#xa0;: on ne peut pas calculer ce que %1 degrés demandent au ferme-porte.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Hold a spring gauge there to see what the closer gives.</source>
        <translation type="unfinished">À %1 degrés, le poids du vantail seul tire jusqu&apos;à %2 à son bord. Tenez-y un peson pour voir ce que donne le ferme-porte.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could not close against it.</source>
        <translation type="unfinished">Le ferme-porte donne %1&#xa0;; à %2 degrés, le poids du vantail seul tire jusqu&apos;à %3&#xa0;: la porte ne pourrait pas se fermer contre lui.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could close, if hinges, seals and latch take less than the rest. Worked out, not tried: no verdict comes from this.</source>
        <translation type="unfinished">Le ferme-porte donne %1&#xa0;; à %2 degrés, le poids du vantail seul tire jusqu&apos;à %3&#xa0;: la porte pourrait se fermer, si charnières, joints et loquet prennent moins que le reste. Calculé, non essayé&#xa0;: aucun verdict n&apos;en découle.</translation>
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
        <source>ready for retest</source>
        <translation type="unfinished">à retester</translation>
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
        <source>grave</source>
        <translation type="unfinished">grave</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">sérieuse</translation>
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
        <source>no day set</source>
        <translation type="unfinished">sans échéance</translation>
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
        <source>nobody yet</source>
        <translation type="unfinished">encore personne</translation>
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
        <source>passed, but tried only by who put it right: somebody else must test it</source>
        <translation type="unfinished">réussi, mais essayé seulement par celui qui a rectifié&#xa0;: quelqu&apos;un d&apos;autre doit tester</translation>
    </message>
    <message>
        <source>in order on a later walk, but nobody recorded that it was put right</source>
        <translation type="unfinished">en ordre lors d&apos;une tournée ultérieure, mais personne n&apos;a enregistré la remise en état</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule and %4 at most</source>
        <translation type="unfinished">les tranches %1 n&apos;en font qu&apos;une, %2 pour %3 en règle générale et %4 au plus</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule</source>
        <translation type="unfinished">les tranches %1 n&apos;en font qu&apos;une, %2 pour %3 en règle générale</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>translated by machine, to be checked by a speaker of the trade</source>
        <translation type="unfinished">traduit par machine, à vérifier par quelqu&apos;un du métier</translation>
    </message>
    <message>
        <source>As this machine is set</source>
        <translation type="unfinished">Comme cet appareil</translation>
    </message>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Anglais là où il n&apos;y a pas de traduction</translation>
    </message>
    <message>
        <source>the words of the program</source>
        <translation type="unfinished">les mots du programme</translation>
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
        <translation type="unfinished">chacun</translation>
    </message>
    <message>
        <source>anyone of the team and the control station</source>
        <translation type="unfinished">chacun de l&apos;équipe et du poste de sécurité</translation>
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
        <source>put right while we stood</source>
        <translation type="unfinished">remis en état sur place</translation>
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
        <translation type="unfinished">cargaison ou provisions gênantes</translation>
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
        <source>by the approved drawing</source>
        <translation type="unfinished">selon le plan approuvé</translation>
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
        <source>worn, still does its work</source>
        <translation type="unfinished">usé, mais remplit sa fonction</translation>
    </message>
    <message>
        <source>not safe to leave so</source>
        <translation type="unfinished">dangereux de laisser ainsi</translation>
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
        <source>watch left</source>
        <translation type="unfinished">veilleur parti</translation>
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
        <source>watch posted at the door</source>
        <translation type="unfinished">veilleur posté à la porte</translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished">déclenchement local seulement</translation>
    </message>
    <message>
        <source>zone kept empty of people</source>
        <translation type="unfinished">tranche tenue vide de personnes</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation type="unfinished">rien n&apos;est nécessaire</translation>
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
        <source>wiring mended</source>
        <translation type="unfinished">câblage réparé</translation>
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
        <source>hook or wedge taken away</source>
        <translation type="unfinished">crochet ou cale enlevés</translation>
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
        <source>the door was taken out</source>
        <translation type="unfinished">la porte a été démontée</translation>
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
        <source>looked at again together</source>
        <translation type="unfinished">revu ensemble</translation>
    </message>
    <message>
        <source>the other was a slip</source>
        <translation type="unfinished">l&apos;autre était une erreur</translation>
    </message>
    <message>
        <source>the better light</source>
        <translation type="unfinished">meilleur éclairage</translation>
    </message>
    <message>
        <source>the better instrument</source>
        <translation type="unfinished">meilleur instrument</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">arrêté, sans motif</translation>
    </message>
    <message>
        <source>spoiled, no reason given</source>
        <translation type="unfinished">nul, sans motif</translation>
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
        <source>run goes on</source>
        <translation type="unfinished">l&apos;essai continue</translation>
    </message>
    <message>
        <source>withdrawn by mistake</source>
        <translation type="unfinished">retiré par erreur</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">acceptée par son empreinte</translation>
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
        <source>The paper is being made</source>
        <translation type="unfinished">Le document est en préparation</translation>
    </message>
    <message>
        <source>No paper was made. One that was made before is as it was.</source>
        <translation type="unfinished">Aucun document n&apos;a été fait. Celui qui existait avant reste tel quel.</translation>
    </message>
    <message>
        <source>No paper</source>
        <translation type="unfinished">Aucun document</translation>
    </message>
    <message>
        <source>The paper is made</source>
        <translation type="unfinished">Le document est fait</translation>
    </message>
    <message>
        <source>The PDF lies at %1</source>
        <translation type="unfinished">Le PDF se trouve dans %1</translation>
    </message>
    <message>
        <source>Show it, to print</source>
        <translation type="unfinished">L&apos;afficher, pour imprimer</translation>
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
        <source>%1, a sample of %2 by lot %3</source>
        <translation type="unfinished">%1, un échantillon de %2 par tirage au sort %3</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Register taken in</source>
        <translation type="unfinished">Registre importé</translation>
    </message>
    <message>
        <source>It lies at %1.</source>
        <translation type="unfinished">Il se trouve dans %1.</translation>
    </message>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished">Ouvrir ce navire</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>The register is being taken in</source>
        <translation type="unfinished">Le registre est en cours d&apos;importation</translation>
    </message>
    <message>
        <source>Nothing was taken in. The vessels here are as they were before.</source>
        <translation type="unfinished">Rien n&apos;a été importé. Les navires sont ici comme avant.</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">Non importé&#xa0;: une erreur</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">Non importé&#xa0;: %1 erreurs</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">demandé à la porte</translation>
    </message>
    <message>
        <source>asked at the door, for each side</source>
        <translation type="unfinished">demandé à la porte, pour chaque côté</translation>
    </message>
    <message>
        <source>class of the door against that of its boundary</source>
        <translation type="unfinished">classe de la porte comparée à celle de sa cloison</translation>
    </message>
    <message>
        <source>plate at the door against the register</source>
        <translation type="unfinished">plaque de la porte comparée au registre</translation>
    </message>
    <message>
        <source>measured, and settled by the step of the instrument</source>
        <translation type="unfinished">mesuré, et tranché par l&apos;échelon de l&apos;instrument</translation>
    </message>
    <message>
        <source>a complete run shows it</source>
        <translation type="unfinished">un essai complet le montre</translation>
    </message>
    <message>
        <source>a run released from the control station shows it</source>
        <translation type="unfinished">un essai déclenché depuis le poste de sécurité le montre</translation>
    </message>
    <message>
        <source>runs released at the door, from each side, show it</source>
        <translation type="unfinished">des essais déclenchés à la porte, de chaque côté, le montrent</translation>
    </message>
    <message>
        <source>a run in which the alarm was marked shows it</source>
        <translation type="unfinished">un essai où l&apos;alarme a été marquée le montre</translation>
    </message>
    <message>
        <source>timed from the first movement until it is shut</source>
        <translation type="unfinished">chronométré du premier mouvement jusqu&apos;à la fermeture</translation>
    </message>
    <message>
        <source>clear opening divided by the time from first movement to shut</source>
        <translation type="unfinished">ouverture libre divisée par le temps du premier mouvement à la fermeture</translation>
    </message>
    <message>
        <source>timed from the alarm to the first movement</source>
        <translation type="unfinished">chronométré de l&apos;alarme au premier mouvement</translation>
    </message>
    <message>
        <source>order of the marks: shut, then alarm off</source>
        <translation type="unfinished">ordre des marques : fermée, puis alarme arrêtée</translation>
    </message>
    <message>
        <source>against an inclination of %1°</source>
        <translation type="unfinished">contre une inclinaison de %1°</translation>
    </message>
    <message>
        <source>ship upright: with heel a time is advice</source>
        <translation type="unfinished">navire droit : avec de la gîte un temps n&apos;est qu&apos;un conseil</translation>
    </message>
    <message>
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">la réponse dit ce qu&apos;est la porte ; aucune n&apos;est un défaut</translation>
    </message>
    <message>
        <source>the text says so: outside the limits by at most %1 % on the slow side, %2 % on the fast one, it is left to the inspector (margins of our own choice)</source>
        <translation type="unfinished">le texte le dit : hors des limites d&apos;au plus %1 % côté lent et %2 % côté rapide, c&apos;est laissé à l&apos;inspecteur (marges de notre choix)</translation>
    </message>
    <message>
        <source>every ship</source>
        <translation type="unfinished">tout navire</translation>
    </message>
    <message>
        <source>advice for: %1</source>
        <translation type="unfinished">conseil pour : %1</translation>
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
        <source>Standing</source>
        <translation type="unfinished">Statut</translation>
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
        <source>Asked of</source>
        <translation type="unfinished">Demandé à</translation>
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
        <source>Not asked where</source>
        <translation type="unfinished">Non demandé où</translation>
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
        <source>Left open</source>
        <translation type="unfinished">Laissé ouvert</translation>
    </message>
    <message>
        <source>Nothing open where</source>
        <translation type="unfinished">Rien n&apos;est laissé ouvert où</translation>
    </message>
    <message>
        <source>n/a is an answer</source>
        <translation type="unfinished">s.o. est une réponse</translation>
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
        <source>What must be true</source>
        <translation type="unfinished">Ce qui doit être vrai</translation>
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
        <source>the same as the row</source>
        <translation type="unfinished">la même chose que la ligne</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 et %2 de plus</translation>
    </message>
    <message>
        <source>Read in</source>
        <translation type="unfinished">Lu dans</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Non lu</translation>
    </message>
    <message>
        <source>Above it</source>
        <translation type="unfinished">Au-dessus</translation>
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
        <source>Every</source>
        <translation type="unfinished">Périodicité</translation>
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
        <source>Tries</source>
        <translation type="unfinished">Essaie</translation>
    </message>
    <message>
        <source>Over these</source>
        <translation type="unfinished">Au-dessus de ceux-ci</translation>
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
        <source>binds here</source>
        <translation type="unfinished">oblige ici</translation>
    </message>
    <message>
        <source>a failure is left to the inspector here</source>
        <translation type="unfinished">un défaut est ici laissé à l&apos;inspecteur</translation>
    </message>
    <message>
        <source>advice here</source>
        <translation type="unfinished">conseil ici</translation>
    </message>
    <message>
        <source>not asked here</source>
        <translation type="unfinished">non demandé ici</translation>
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
        <source>Binds at</source>
        <translation type="unfinished">Oblige à</translation>
    </message>
    <message>
        <source>A failure is left to the inspector at</source>
        <translation type="unfinished">Un défaut est laissé à l&apos;inspecteur à</translation>
    </message>
    <message>
        <source>Advice at</source>
        <translation type="unfinished">Conseil à</translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation type="unfinished">Non demandé</translation>
    </message>
    <message>
        <source>Aboard this vessel</source>
        <translation type="unfinished">À bord de ce navire</translation>
    </message>
    <message>
        <source>binds %1</source>
        <translation type="unfinished">oblige %1</translation>
    </message>
    <message>
        <source>left to the inspector at %1</source>
        <translation type="unfinished">laissé à l&apos;inspecteur à %1</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">conseil à %1</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">non demandé</translation>
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
        <source>spoiled: marks run backwards</source>
        <translation type="unfinished">nul&#xa0;: repères à rebours dans le temps</translation>
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
        <translation type="unfinished">jugé conforme&#xa0;: %1</translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished">jugé non conforme&#xa0;: %1</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">n&apos;a pas pu être testé&#xa0;: %1</translation>
    </message>
    <message>
        <source>decided that this stands: %1</source>
        <translation type="unfinished">décidé que ceci compte&#xa0;: %1</translation>
    </message>
    <message>
        <source>Two decisions about the same</source>
        <translation type="unfinished">Deux décisions sur la même chose</translation>
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
        <source>nobody yet</source>
        <translation type="unfinished">encore personne</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Par une personne</translation>
    </message>
    <message>
        <source>You open it and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">Vous l&apos;ouvrez et la fermez seul, d&apos;abord du côté un, puis du côté deux.</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Interrupteur</translation>
    </message>
    <message>
        <source>Put to release and let go, the switch stays where it was put. The leaf is not held again until somebody puts it back.</source>
        <translation type="unfinished">Mis sur déclenchement puis lâché, l&apos;interrupteur reste où on l&apos;a mis. Le vantail n&apos;est retenu de nouveau que si quelqu&apos;un le remet.</translation>
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
        <source>This door isolated at the control box: released again, the others of its group shut.</source>
        <translation type="unfinished">Cette porte isolée au coffret de commande&#xa0;: déclenchées de nouveau, les autres de son groupe se ferment.</translation>
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
        <source>Approval paper</source>
        <translation type="unfinished">Document d&apos;approbation</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Système de commande&#xa0;: fonctionne à 200 degrés C pendant 60 minutes, alimentation des autres portes intacte, isolé au-delà, porte tenue fermée jusqu&apos;à 945 degrés C.</translation>
    </message>
    <message>
        <source>Openings for air</source>
        <translation type="unfinished">Ouvertures d&apos;aération</translation>
    </message>
    <message>
        <source>A grille low in the leaf, shutter of fire class: net free area by its drawing 0.03 m2. No undercut.</source>
        <translation type="unfinished">Une grille en bas du vantail, volet de classe d&apos;incendie&#xa0;: surface libre nette selon son plan 0,03 m2. Pas de découpe sous la porte.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Local de machines</translation>
    </message>
    <message>
        <source>Supply of the hold-back switched off at the board: the leaf is let go and shuts against the draught of the fans. The control station&apos;s release plan names the door.</source>
        <translation type="unfinished">Alimentation de la retenue coupée au tableau électrique&#xa0;: le vantail est lâché et se ferme contre le courant d&apos;air des ventilateurs. Le plan de déclenchement du poste de sécurité nomme la porte.</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Derrière la porte</translation>
    </message>
    <message>
        <source>Inside it: a stairway enclosure.</source>
        <translation type="unfinished">À l&apos;intérieur&#xa0;: un entourage d&apos;escalier.</translation>
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
        <source>Approval paper: a core that cannot burn between sheets of steel.</source>
        <translation type="unfinished">Document d&apos;approbation&#xa0;: une âme incombustible entre des tôles d&apos;acier.</translation>
    </message>
    <message>
        <source>Where the air goes</source>
        <translation type="unfinished">Passage de l&apos;air</translation>
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
        <translation type="unfinished">Le plan dans l&apos;ordinateur du navire mentionne cette porte et sa commande, avec les dates de leurs essais.</translation>
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
        <source>You go through in the direction of escape with empty hands.</source>
        <translation type="unfinished">Vous passez dans le sens de l&apos;évacuation, les mains vides.</translation>
    </message>
    <message>
        <source>Quick release</source>
        <translation type="unfinished">Déblocage rapide</translation>
    </message>
    <message>
        <source>A bar over two thirds of the leaf; pushed, it lets the latch go. Nothing locks it down.</source>
        <translation type="unfinished">Une barre sur les deux tiers du vantail&#xa0;; poussée, elle libère le loquet. Rien ne la bloque.</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Hauteur de la barre</translation>
    </message>
    <message>
        <source>The bar stands 950 mm above the deck.</source>
        <translation type="unfinished">La barre est à 950 mm au-dessus du pont.</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Force à la barre</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch lets go.</source>
        <translation type="unfinished">Le peson indique 40 N quand le loquet lâche.</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Tableau de la passerelle</translation>
    </message>
    <message>
        <source>The bridge reads its lamp to you: true for open, ajar and shut.</source>
        <translation type="unfinished">La passerelle vous lit sa lampe, juste chaque fois&#xa0;: ouverte, entrebâillée, fermée.</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Poste central</translation>
    </message>
    <message>
        <source>Closing control and lamp of this door stand beside the panel of the detection system.</source>
        <translation type="unfinished">La commande de fermeture et la lampe de cette porte se trouvent à côté du tableau du système de détection.</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Centre de sécurité</translation>
    </message>
    <message>
        <source>Closed from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Fermée depuis le centre de sécurité, la porte se ferme et sa lampe y change.</translation>
    </message>
    <message>
        <source>Blackout trial</source>
        <translation type="unfinished">Essai de black-out</translation>
    </message>
    <message>
        <source>Main power off: held and released by the battery, then by the emergency generator.</source>
        <translation type="unfinished">Alimentation principale coupée&#xa0;: retenue et déclenchée par la batterie, puis par la génératrice de secours.</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Commande hors du local</translation>
    </message>
    <message>
        <source>Its control stands in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Sa commande se trouve dans l&apos;armoire d&apos;incendie de l&apos;encaissement, avec celles des ventilateurs et du combustible.</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Fermeture</translation>
    </message>
    <message>
        <source>Let go, it goes firmly home every time.</source>
        <translation type="unfinished">Lâchée, elle va chaque fois franchement en butée.</translation>
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
        <translation type="unfinished">Jeu dessous</translation>
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
        <translation type="unfinished">Retenue</translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished">Vantail</translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished">Passage de manche</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished">Plaque</translation>
    </message>
    <message>
        <source>Release here</source>
        <translation type="unfinished">Commande ici</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lampes du tableau</translation>
    </message>
    <message>
        <source>Papers, trials</source>
        <translation type="unfinished">Documents, essais</translation>
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
        <source>deficiency of %1</source>
        <translation type="unfinished">anomalie de %1</translation>
    </message>
    <message>
        <source>caution before %1</source>
        <translation type="unfinished">précaution avant %1</translation>
    </message>
    <message>
        <source>run of %1</source>
        <translation type="unfinished">essai de %1</translation>
    </message>
    <message>
        <source>terms of the item of %1</source>
        <translation type="unfinished">conditions de l&apos;anomalie de %1</translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished">rectification à %1</translation>
    </message>
    <message>
        <source>%1 ready for retest</source>
        <translation type="unfinished">%1 à retester</translation>
    </message>
    <message>
        <source>withdrawal of the item of %1</source>
        <translation type="unfinished">retrait de l&apos;anomalie de %1</translation>
    </message>
    <message>
        <source>beginning of the walkdown</source>
        <translation type="unfinished">début de la tournée</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">fin de la tournée</translation>
    </message>
    <message>
        <source>thumb drill</source>
        <translation type="unfinished">étalonnage du pouce</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">quand une valeur passe</translation>
    </message>
    <message>
        <source>upkeep done</source>
        <translation type="unfinished">entretien fait</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation type="unfinished">date du certificat</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">décision</translation>
    </message>
    <message>
        <source>last tap</source>
        <translation type="unfinished">dernière touche</translation>
    </message>
    <message>
        <source>taking back of %1</source>
        <translation type="unfinished">retrait de %1</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">plus confirmé : %1</translation>
    </message>
</context>
<context>
    <name>UndoSheet</name>
    <message>
        <source>Not undone</source>
        <translation type="unfinished">Non annulé</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Annuler</translation>
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
        <source>At door %1 there is nothing to take back.</source>
        <translation type="unfinished">À la porte %1, il n’y a rien à retirer.</translation>
    </message>
    <message>
        <source>Not at this door</source>
        <translation type="unfinished">Pas à cette porte</translation>
    </message>
    <message>
        <source>Both are recorded; nothing is deleted. What was signed stands.</source>
        <translation type="unfinished">Les deux sont consignés ; rien n’est effacé. Ce qui est signé demeure.</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, et %2 de plus</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">non conforme</translation>
    </message>
    <message>
        <source>needs your judgement</source>
        <translation type="unfinished">à vous de juger</translation>
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
        <translation type="unfinished">conforme</translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished">conseil</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">sans objet</translation>
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
        <translation type="unfinished">Poste de sécurité&#xa0;: je déclenche</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Arrêté</translation>
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
        <source>Work the release,
side one</source>
        <translation type="unfinished">Déclencher,
côté un</translation>
    </message>
    <message>
        <source>Work the release,
side two</source>
        <translation type="unfinished">Déclencher,
côté deux</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished">Lâcher</translation>
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
        <source>%1 sat.</source>
        <translation type="unfinished">%1 conf.</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 à trancher</translation>
    </message>
    <message>
        <source>%1 unsat.</source>
        <translation type="unfinished">%1 non conf.</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 non testé(s)</translation>
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
        <source>Safety shoes and gloves on, hearing protection where the alarm is near, a torch and a radio that was tried just now. Nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Chaussures de sécurité et gants, protection auditive là où l&apos;alarme est proche, une lampe et une radio essayée à l&apos;instant. Rien de flottant qu&apos;un vantail puisse happer.</translation>
    </message>
    <message>
        <source>What can crush whom</source>
        <translation type="unfinished">Ce qui peut écraser qui</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep off. Nobody walks through a moving door. Most published crush deaths: powered watertight doors passed before fully open.</source>
        <translation type="unfinished">Bords, bords de rencontre et logements écrasent mains, pieds et têtes&#xa0;: tenez-vous à l&apos;écart. Personne ne franchit une porte en mouvement. La plupart des morts par écrasement publiées&#xa0;: portes étanches à l&apos;eau motorisées, franchies avant l&apos;ouverture complète.</translation>
    </message>
    <message>
        <source>People kept apart</source>
        <translation type="unfinished">Gens tenus à l&apos;écart</translation>
    </message>
    <message>
        <source>Passengers, children, carts and cables are clear of every door of the release group and kept clear. A watch stands at each of these doors, on both sides. One group at a time, and the local test first.</source>
        <translation type="unfinished">Passagers, enfants, chariots et câbles sont à l&apos;écart de chaque porte du groupe et y sont maintenus. Un veilleur se tient à chacune de ces portes, des deux côtés. Un groupe à la fois, et le test local d&apos;abord.</translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished">Le poste de sécurité</translation>
    </message>
    <message>
        <source>The release is announced. Channel, start word and stop word are agreed, and the control station has said them back.</source>
        <translation type="unfinished">Le déclenchement est annoncé. Canal, mot de départ et mot d&apos;arrêt sont convenus, et le poste de sécurité les a répétés.</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Qui peut arrêter le test</translation>
    </message>
    <message>
        <source>Anyone, at any moment, with the stop word. The doors stop first, the questions come after.</source>
        <translation type="unfinished">Chacun, à tout moment, avec le mot d&apos;arrêt. Les portes s&apos;arrêtent d&apos;abord, les questions viennent après.</translation>
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
        <source>May stop the test</source>
        <translation type="unfinished">Peut arrêter le test</translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished">qui déclenche les portes</translation>
    </message>
    <message>
        <source>how one speaks with it</source>
        <translation type="unfinished">comment on lui parle</translation>
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
        <source>who may say the stop word</source>
        <translation type="unfinished">qui peut dire le mot d&apos;arrêt</translation>
    </message>
    <message>
        <source>release now</source>
        <translation type="unfinished">déclenchez</translation>
    </message>
    <message>
        <source>doors closing</source>
        <translation type="unfinished">fermeture des portes</translation>
    </message>
    <message>
        <source>close the doors</source>
        <translation type="unfinished">fermez les portes</translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished">stop stop stop</translation>
    </message>
    <message>
        <source>doors stop</source>
        <translation type="unfinished">stop portes</translation>
    </message>
    <message>
        <source>hold the doors</source>
        <translation type="unfinished">retenez les portes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Read out to everyone who walks</source>
        <translation type="unfinished">Lu à haute voix à tous ceux qui participent</translation>
    </message>
    <message>
        <source>Common practice, no source. Deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Pratique courante, sans source. Décès&#xa0;: rapports d&apos;accidents des P&amp;I clubs et des États du pavillon.</translation>
    </message>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Convenu avec le poste de sécurité</translation>
    </message>
    <message>
        <source>‹ The plan</source>
        <translation type="unfinished">‹ Le plan</translation>
    </message>
    <message>
        <source>Say first, in the plan, who records.</source>
        <translation type="unfinished">Dites d&apos;abord, dans le plan, qui enregistre.</translation>
    </message>
    <message>
        <source>Not agreed yet: %1.</source>
        <translation type="unfinished">Pas encore convenu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read out.</source>
        <translation type="unfinished">%1 parties du briefing lues sur %2.</translation>
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
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Read out</source>
        <translation type="unfinished">Lu</translation>
    </message>
    <message>
        <source>Read out: %1</source>
        <translation type="unfinished">Lu&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>thumb&apos;s scatter at the start</source>
        <translation type="unfinished">dispersion du pouce au départ</translation>
    </message>
    <message>
        <source>thumb&apos;s scatter at the end</source>
        <translation type="unfinished">dispersion du pouce à la fin</translation>
    </message>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">retard propre au départ, d&apos;après l&apos;étalonnage</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">retard propre à la fin, d&apos;après l&apos;étalonnage</translation>
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
        <source>rate of the clock</source>
        <translation type="unfinished">marche de l&apos;horloge</translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished">passage libre</translation>
    </message>
    <message>
        <source>place of the half-way mark</source>
        <translation type="unfinished">position du repère mi-course</translation>
    </message>
    <message>
        <source>as good as endless</source>
        <translation type="unfinished">pratiquement infini</translation>
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
        <source>together</source>
        <translation type="unfinished">ensemble</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished">degrés de liberté</translation>
    </message>
    <message>
        <source>U, at the coverage of k = 2</source>
        <translation type="unfinished">U, à la couverture de k = 2</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">probabilité d&apos;être dans les limites</translation>
    </message>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">De quoi est faite l&apos;incertitude</translation>
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
        <source>Fire and smoke pass this boundary; the zones themselves stay apart.</source>
        <translation type="unfinished">Le feu et la fumée passent ce cloisonnement&#xa0;; les tranches elles-mêmes restent séparées.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule and %4 at most.</source>
        <translation type="unfinished">Les tranches %1 n&apos;en feraient qu&apos;une&#xa0;: %2 de long pour %3 en règle générale et %4 au plus.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule.</source>
        <translation type="unfinished">Les tranches %1 n&apos;en feraient qu&apos;une&#xa0;: %2 de long pour %3 en règle générale.</translation>
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
        <source>Leaf masses are not in the register: take every leaf as able to crush.</source>
        <translation type="unfinished">Les masses des vantaux ne sont pas au registre&#xa0;: considérez que chaque vantail peut écraser.</translation>
    </message>
    <message>
        <source> Ashore so heavy a leaf would have to take %1 s or more.</source>
        <translation type="unfinished"> À terre, un vantail aussi lourd devrait mettre au moins %1 s.</translation>
    </message>
    <message>
        <source> A comparison, no rule for ships: %1.</source>
        <translation type="unfinished"> Une comparaison, pas une règle pour les navires&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Confirm each before the release</source>
        <translation type="unfinished">Confirmer chaque point avant de déclencher</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Confirmer</translation>
    </message>
    <message>
        <source>All of it still holds</source>
        <translation type="unfinished">Tout reste valable</translation>
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
        <source>before it is released from the control station</source>
        <translation type="unfinished">avant son déclenchement depuis le poste de sécurité</translation>
    </message>
    <message>
        <source>To %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">À&#xa0;: %1, sur %2. Départ&#xa0;: «&#xa0;%3&#xa0;». Arrêt&#xa0;: «&#xa0;%4&#xa0;»&#xa0;; peut le dire&#xa0;: %5.</translation>
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
        <source>Door %1: %2 carry up to %3 at the fastest rate allowed.</source>
        <translation type="unfinished">Porte %1&#xa0;: %2 portent jusqu&apos;à %3 à la vitesse maximale permise.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard, %1: still enough for a hand.</source>
        <translation type="unfinished"> C&apos;est moins que la valeur à terre des portes sans protection, %1&#xa0;: encore assez pour une main.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard, %2: keep everybody clear.</source>
        <translation type="unfinished"> C&apos;est %1 fois la valeur à terre des portes sans protection, %2&#xa0;: tenez tout le monde à l&apos;écart.</translation>
    </message>
    <message>
        <source>What these doors can do</source>
        <translation type="unfinished">Ce que ces portes peuvent faire</translation>
    </message>
    <message>
        <source>What must be confirmed ›</source>
        <translation type="unfinished">Ce qu&apos;il faut confirmer ›</translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Portes</translation>
    </message>
    <message>
        <source>Back to what will move</source>
        <translation type="unfinished">Retour à ce qui va bouger</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Look ›</source>
        <translation type="unfinished">Voir ›</translation>
    </message>
    <message>
        <source>The rules changed since the doors were last shown</source>
        <translation type="unfinished">Les règles ont changé depuis le dernier affichage des portes</translation>
    </message>
    <message>
        <source>%1 graded otherwise since the rules changed</source>
        <translation type="unfinished">%1 : autre notation depuis que les règles ont changé</translation>
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
        <source>answered next by the letters y, n and a</source>
        <translation type="unfinished">les lettres y, n et a répondent à cette question</translation>
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
        <source>Release %1. On record: %2. Nothing of it is lost.</source>
        <translation type="unfinished">Déclenchement %1. Enregistré&#xa0;: %2. Rien n&apos;en est perdu.</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished">aucun repère</translation>
    </message>
    <message>
        <source>It was spoiled</source>
        <translation type="unfinished">Il était nul</translation>
    </message>
    <message>
        <source>Complete it by hand from my own watch</source>
        <translation type="unfinished">Compléter à la main d&apos;après ma montre</translation>
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
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or write the day like 2027-03-31.</source>
        <translation type="unfinished">Ou écrire la date ainsi&#xa0;: 2027-03-31.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Jour</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Garder</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Débriefing</translation>
    </message>
    <message>
        <source>Practice replaces neither the instruction by licensed people nor the rules of the flag Administration.</source>
        <translation type="unfinished">L&apos;entraînement ne remplace ni l&apos;instruction par des personnes brevetées ni les règles de l&apos;Administration du pavillon.</translation>
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
        <source>Rows (%1)</source>
        <translation type="unfinished">Lignes (%1)</translation>
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
        <source>%1 rows that differ</source>
        <translation type="unfinished">%1 lignes qui diffèrent</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Score</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Score</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Passe à %1, échoue à %2</translation>
    </message>
    <message>
        <source>%1: the usual</source>
        <translation type="unfinished">%1&#xa0;: l&apos;usage</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again, or left to you after three. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Un temps de fermeture à moins de %1 s d&apos;une limite est chronométré de nouveau, ou laissé à votre décision après trois. Parmi les portes qui passent de justesse, 1 sur %2 serait hors limites&#xa0;; parmi celles qui échouent de justesse, 1 sur %2 serait dans les limites.</translation>
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
        <source>They hold for the walkdown under way and for later ones; reports print them. What the flag Administration asks for stands above them.</source>
        <translation type="unfinished">Elles valent pour la tournée en cours et les suivantes&#xa0;; les rapports les impriment. Ce qu&apos;exige l&apos;Administration du pavillon prime.</translation>
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
        <source>%1, its door %2</source>
        <translation type="unfinished">%1, sa porte %2</translation>
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
        <source>No table for such a division</source>
        <translation type="unfinished">Aucun tableau pour un tel cloisonnement</translation>
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
        <source>The approved plans and the flag Administration stand above these tables.</source>
        <translation type="unfinished">Les plans approuvés et l&apos;Administration du pavillon priment sur ces tableaux.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorDrawing</name>
    <message>
        <source>Drawing of a sliding door</source>
        <translation type="unfinished">Dessin d&apos;une porte coulissante</translation>
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
        <translation type="unfinished">s&apos;ouvre des deux côtés</translation>
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
        <source>, a soft block in its way</source>
        <translation type="unfinished">, un bloc souple sur son chemin</translation>
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
        <translation type="unfinished">cloison</translation>
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
        <source>Paper</source>
        <translation type="unfinished">Papier</translation>
    </message>
    <message>
        <source>Type in what stands on a paper form</source>
        <translation type="unfinished">Saisir ce qui figure sur un formulaire papier</translation>
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
        <source>Not tested</source>
        <translation type="unfinished">Non testée</translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Cette porte n&apos;a pas pu être testée&#xa0;: dire pourquoi</translation>
    </message>
    <message>
        <source>Not asked here: %1 ›</source>
        <translation type="unfinished">Non demandé ici&#xa0;: %1 ›</translation>
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
        <source>Walk is done ›</source>
        <translation type="unfinished">Tournée finie ›</translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished">Porte suivante %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Porte %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>not asked because: %1</source>
        <translation type="unfinished">non demandé parce que&#xa0;: %1</translation>
    </message>
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
        <source>What the boundary asks for</source>
        <translation type="unfinished">Ce qu&apos;exige le cloisonnement</translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>Not asked of door %1</source>
        <translation type="unfinished">Non demandé pour la porte %1</translation>
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
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">au-delà de 1 degré, un temps de fermeture n&apos;est qu&apos;un conseil</translation>
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
        <source>What ± is made of</source>
        <translation type="unfinished">De quoi est fait ±</translation>
    </message>
    <message>
        <source>Through the years</source>
        <translation type="unfinished">Au fil des ans</translation>
    </message>
    <message>
        <source>Write a deficiency</source>
        <translation type="unfinished">Écrire une anomalie</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">Test impossible</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Portes de cette tournée</translation>
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
        <source>What was %1 read off?</source>
        <translation type="unfinished">Avec quoi a-t-on lu %1 ?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Enregistrer</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>not tried: the published figures stay</source>
        <translation type="unfinished">non essayé&#xa0;: les valeurs publiées restent</translation>
    </message>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 de retard, dispersion %2, sur %3 essais</translation>
    </message>
    <message>
        <source>too few usable trials: the published figures stay</source>
        <translation type="unfinished">trop peu d&apos;essais utilisables&#xa0;: les valeurs publiées restent</translation>
    </message>
    <message>
        <source>; %1 guessed, not counted</source>
        <translation type="unfinished">, %1 devinés, non comptés</translation>
    </message>
    <message>
        <source>; %1 out of line, not counted</source>
        <translation type="unfinished">, %1 aberrants, non comptés</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and stands with ± %3, where the published figures give ± %4.</source>
        <translation type="unfinished">Un temps de fermeture est corrigé de %1%2 et vaut à ± %3, là où les valeurs publiées donnent ± %4.</translation>
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
        <source>Your thumb on this tablet</source>
        <translation type="unfinished">Votre pouce sur cette tablette</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the budget. Worth repeating every %1 months.</source>
        <translation type="unfinished">Utilisées pour les essais que vous chronométrez désormais sur cette tablette. Le retard propre à la tablette, qu&apos;une vraie porte n&apos;a pas, reste dans le bilan. À répéter tous les %1 mois.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>How late is your thumb, and how steady?</source>
        <translation type="unfinished">Quel est le retard de votre pouce, et sa régularité&#xa0;?</translation>
    </message>
    <message>
        <source>Twenty times a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you do at a door.</source>
        <translation type="unfinished">Vingt fois, un vantail part sans prévenir puis arrive en butée. Touchez la touche à l&apos;instant où il part, et encore à l&apos;instant où il est en butée. Avec le son, une alarme vient d&apos;abord&#xa0;: touchez la touche quand vous l&apos;entendez. Cela prend environ deux minutes. Tenez la tablette comme à une porte.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then stand in place of the published figures for every run that you time on this tablet. If you leave before the end nothing is kept.</source>
        <translation type="unfinished">Votre retard et votre dispersion propres remplacent alors les valeurs publiées pour chaque essai que vous chronométrez sur cette tablette. Si vous partez avant la fin, rien n&apos;est gardé.</translation>
    </message>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Essayer le son</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Commencer sans son</translation>
    </message>
    <message>
        <source>I hear it: begin ›</source>
        <translation type="unfinished">Je l&apos;entends&#xa0;: commencer ›</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Étalonnage du pouce</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Commencer ›</translation>
    </message>
    <message>
        <source>Turn the sound up as far as you hear it well over the ship.</source>
        <translation type="unfinished">Montez le son jusqu&apos;à bien l&apos;entendre malgré le bruit du navire.</translation>
    </message>
    <message>
        <source>This tablet has no loudspeaker that answers: what is heard keeps the published figures.</source>
        <translation type="unfinished">Cette tablette n&apos;a pas de haut-parleur qui réponde&#xa0;: ce qui s&apos;entend garde les valeurs publiées.</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Essai %1 sur %2</translation>
    </message>
    <message>
        <source>That one was missed: it comes again.</source>
        <translation type="unfinished">Celui-là a été manqué&#xa0;: il revient.</translation>
    </message>
    <message>
        <source>How the drill goes</source>
        <translation type="unfinished">Comment se passe l&apos;étalonnage</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Drawing of the leaf close by</source>
        <translation type="unfinished">Dessin du vantail vu de près</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Unseal ›</source>
        <translation type="unfinished">Desceller ›</translation>
    </message>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">S&apos;exercer ›</translation>
    </message>
    <message>
        <source>sealed by the instructor</source>
        <translation type="unfinished">scellé par l&apos;instructeur</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">meilleur %1&#xa0;%</translation>
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
        <source>‹ Before</source>
        <translation type="unfinished">‹ Avant</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
    </message>
    <message>
        <source>fire doors, one by one</source>
        <translation type="unfinished">les portes d&apos;incendie, une par une</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks what applies to this ship and this kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround vous guide de porte en porte, demande ce qui s&apos;applique à ce navire et à ce genre de porte, chronomètre la fermeture et la note.</translation>
    </message>
    <message>
        <source>A released door moves by itself. Nobody passes it; hands and feet stay off edges and pockets; a watch stands on both sides; anyone may stop the test.</source>
        <translation type="unfinished">Une porte déclenchée bouge d&apos;elle-même. Personne ne la franchit&#xa0;; mains et pieds restent loin des bords et des logements&#xa0;; un veilleur se tient des deux côtés&#xa0;; chacun peut arrêter le test.</translation>
    </message>
    <message>
        <source>Whose rules stand above it</source>
        <translation type="unfinished">Quelles règles priment</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan and local rules stand above this program, and so does the judgement of the people who use it. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">L&apos;Administration du pavillon, le plan incendie approuvé et les règles locales priment sur ce programme, de même que le jugement de ceux qui l&apos;utilisent. Une note est une aide, pas un certificat.</translation>
    </message>
    <message>
        <source>It goes by the texts of 2015. Later amendments were not checked.</source>
        <translation type="unfinished">Il suit les textes de 2015. Les amendements ultérieurs n&apos;ont pas été vérifiés.</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished">Telle quelle</translation>
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
        <source>What first?</source>
        <translation type="unfinished">Par quoi commencer&#xa0;?</translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Visiter le navire de démonstration</translation>
    </message>
    <message>
        <source>An invented ferry with a walkdown under way. Nothing you do there matters.</source>
        <translation type="unfinished">Un ferry inventé, avec une tournée en cours. Rien de ce que vous y faites n&apos;a d&apos;importance.</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">S&apos;entraîner</translation>
    </message>
    <message>
        <source>Doors on the screen that move, fail and hide faults, and a debrief.</source>
        <translation type="unfinished">Des portes à l&apos;écran qui bougent, tombent en panne et cachent des défauts, puis un débriefing.</translation>
    </message>
    <message>
        <source>Take in my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Importer le registre de mon navire (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every fault in it is named.</source>
        <translation type="unfinished">Ponts, tranches, cloisonnements et portes d&apos;un tableur&#xa0;; chaque erreur y est nommée.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 sur %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Tester des portes qui peuvent écraser</translation>
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
        <source>Which boundaries hold</source>
        <translation type="unfinished">Quels cloisonnements tiennent</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation type="unfinished">Tournée</translation>
    </message>
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
        <source>The walkdown</source>
        <translation type="unfinished">La tournée</translation>
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
        <source>What it is graded by</source>
        <translation type="unfinished">Selon quoi il est noté</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Recueil des règles ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. L&apos;Administration du pavillon, les plans approuvés et les règles locales priment. Ni engins à grande vitesse, ni portes étanches en tant que telles.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>What falls due</source>
        <translation type="unfinished">Les échéances</translation>
    </message>
    <message>
        <source>Periods of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration stand above them; no days of grace are printed.</source>
        <translation type="unfinished">Périodicités de MSC.1/Circ.1432. Le plan de la compagnie et l&apos;Administration du pavillon priment&#xa0;; aucun jour de grâce n&apos;est imprimé.</translation>
    </message>
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
        <source>not yet known: enter the day on which it ends</source>
        <translation type="unfinished">pas encore connu&#xa0;: saisissez le jour où il expire</translation>
    </message>
    <message>
        <source>Thumb drill of %1</source>
        <translation type="unfinished">Étalonnage du pouce de %1</translation>
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
        <source>never done on this tablet: published figures stand</source>
        <translation type="unfinished">jamais fait sur cette tablette&#xa0;: les valeurs publiées comptent</translation>
    </message>
    <message>
        <source>On which day does the safety certificate end?</source>
        <translation type="unfinished">Quel jour expire le certificat de sécurité&#xa0;?</translation>
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
        <source>%1 of %2 not done. What was not tried stays untested in the report.</source>
        <translation type="unfinished">%1 sur %2 non faites. Ce qui n&apos;a pas été essayé reste non testé dans le rapport.</translation>
    </message>
    <message>
        <source>Something is not saved yet. Save it first: then the walkdown can end.</source>
        <translation type="unfinished">Quelque chose n&apos;est pas encore enregistré. Enregistrez-le d&apos;abord&#xa0;: ensuite la tournée peut finir.</translation>
    </message>
    <message>
        <source>A walkdown that has ended is not taken up again.</source>
        <translation type="unfinished">Une tournée finie ne se reprend pas.</translation>
    </message>
    <message>
        <source>Go on walking</source>
        <translation type="unfinished">Continuer</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Finir la tournée</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Portes de cette tournée</translation>
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
        <source>No other vessel is on this tablet.</source>
        <translation type="unfinished">Aucun autre navire n&apos;est sur cette tablette.</translation>
    </message>
    <message>
        <source>Take in a register (CSV)</source>
        <translation type="unfinished">Importer un registre (CSV)</translation>
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
        <source>The walkdown shown does not cover it. A walkdown planned with it can.</source>
        <translation type="unfinished">La tournée affichée ne la comprend pas. Une tournée planifiée avec elle le peut.</translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Aucune tournée n&apos;a encore commencé. Commencez-en une pour la tester.</translation>
    </message>
    <message>
        <source>Graded otherwise since the rules changed</source>
        <translation type="unfinished">Notation différente depuis que les règles ont changé</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">J&apos;ai vu</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">Non conservé</translation>
    </message>
    <message>
        <source>What the doors were graded by before cannot be read any more, so nobody can tell which are graded otherwise.</source>
        <translation type="unfinished">Ce selon quoi les portes étaient notées avant ne peut plus être lu ; personne ne peut donc dire lesquelles sont notées autrement.</translation>
    </message>
    <message>
        <source>Nothing that was recorded has changed, and a report made before keeps the edition that it was made by.</source>
        <translation type="unfinished">Rien de ce qui est enregistré n&apos;a changé, et un rapport fait avant garde l&apos;édition selon laquelle il a été fait.</translation>
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
        <source>While it does not hold, %1.</source>
        <translation type="unfinished">Tant qu&apos;elle ne tient pas, %1.</translation>
    </message>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished">%1&#xa0;: constatée par %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1&#xa0;: rectifiée par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: ready for retest, says %2</source>
        <translation type="unfinished">%1&#xa0;: à retester, dit %2</translation>
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
        <source>Who sees to it</source>
        <translation type="unfinished">Qui s&apos;en charge</translation>
    </message>
    <message>
        <source>Until then</source>
        <translation type="unfinished">D&apos;ici là</translation>
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
        <source>nothing given</source>
        <translation type="unfinished">rien d&apos;indiqué</translation>
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
        <source>Look at the photographs</source>
        <translation type="unfinished">Voir les photos</translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Voir ›</translation>
    </message>
    <message>
        <source>What this door did before</source>
        <translation type="unfinished">Ce que cette porte a fait avant</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Historique ›</translation>
    </message>
    <message>
        <source>Ready for retest</source>
        <translation type="unfinished">À retester</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Rectifiée…</translation>
    </message>
    <message>
        <source>Not withdrawn after all</source>
        <translation type="unfinished">Finalement non retirée</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Retirer…</translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation type="unfinished">Rien de choisi</translation>
    </message>
    <message>
        <source>Rows that are not in order become items when they are written up.</source>
        <translation type="unfinished">Les lignes qui ne sont pas en ordre deviennent des anomalies quand on les rédige.</translation>
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
        <source>Say who you are before you work the items.</source>
        <translation type="unfinished">Dites qui vous êtes avant de traiter les anomalies.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>How grave is it?</source>
        <translation type="unfinished">Quelle est sa gravité&#xa0;?</translation>
    </message>
    <message>
        <source>This</source>
        <translation type="unfinished">Celle-ci</translation>
    </message>
    <message>
        <source>What port State control gave</source>
        <translation type="unfinished">Ce qu&apos;a donné le contrôle par l&apos;État du port</translation>
    </message>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Code de mesure, tel que l&apos;agent l&apos;a écrit (listes publiées&#xa0;; anomalie %1)</translation>
    </message>
    <message>
        <source>Ground for detention? A field of its own: regimes differ in which code carries it.</source>
        <translation type="unfinished">Motif d&apos;immobilisation&#xa0;? Un champ à part&#xa0;: les régimes diffèrent sur le code qui l&apos;indique.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Garder</translation>
    </message>
    <message>
        <source>By which day?</source>
        <translation type="unfinished">Pour quel jour&#xa0;?</translation>
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
        <source>What is done while the door is out?</source>
        <translation type="unfinished">Que fait-on tant que la porte est hors service&#xa0;?</translation>
    </message>
    <message>
        <source>Who sees to it?</source>
        <translation type="unfinished">Qui s&apos;en charge&#xa0;?</translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished">Qu&apos;a-t-on fait à la porte %1&#xa0;?</translation>
    </message>
    <message>
        <source>Who did it?</source>
        <translation type="unfinished">Qui l&apos;a fait&#xa0;?</translation>
    </message>
    <message>
        <source>Who rectifies cannot retest: the item closes when somebody else finds it in order.</source>
        <translation type="unfinished">Qui rectifie ne peut pas retester&#xa0;: l&apos;anomalie est clôturée quand quelqu&apos;un d&apos;autre la trouve en ordre.</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">Pourquoi est-elle retirée&#xa0;?</translation>
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
        <source>to judge</source>
        <translation type="unfinished">à juger</translation>
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
        <source>Only shown here: another program writes in this register (%1).</source>
        <translation type="unfinished">Ici en lecture seule : un autre programme écrit dans ce registre (%1).</translation>
    </message>
    <message>
        <source>Put aside…</source>
        <translation type="unfinished">Mettre de côté…</translation>
    </message>
    <message>
        <source>Put aside what is refused?</source>
        <translation type="unfinished">Mettre de côté ce qui est refusé ?</translation>
    </message>
    <message>
        <source>The register does not take it. Put aside it is kept in a file beside the register and counts for nothing; record anew what still holds.</source>
        <translation type="unfinished">Le registre ne l’accepte pas. Mis de côté, cela reste dans un fichier à côté du registre et ne compte pas ; consignez à nouveau ce qui vaut encore.</translation>
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
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Anomalies ouvertes</translation>
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
        <source>None yet: no door was tested.</source>
        <translation type="unfinished">Aucune encore&#xa0;: aucune porte n&apos;a été testée.</translation>
    </message>
    <message>
        <source>None: no door failed, waits for a judgement, or is to be timed again.</source>
        <translation type="unfinished">Aucune&#xa0;: aucune porte n&apos;a échoué, n&apos;attend un jugement ni n&apos;est à rechronométrer.</translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished">Les %1 anomalies ›</translation>
    </message>
    <message>
        <source>After the walk ›</source>
        <translation type="unfinished">Après la tournée ›</translation>
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
        <source>Doors of this boundary</source>
        <translation type="unfinished">Portes de ce cloisonnement</translation>
    </message>
    <message>
        <source>Photograph, note, not tested, paper</source>
        <translation type="unfinished">Photo, note, non testée, papier</translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Verdict&#xa0;: %1. Appuyez pour les motifs</translation>
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
        <source>Write the name, then touch what this person is aboard.</source>
        <translation type="unfinished">Écrivez le nom, puis touchez la fonction à bord.</translation>
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
        <source>The picture is not on this tablet: take it over from the one it was taken with.</source>
        <translation type="unfinished">L&apos;image n&apos;est pas sur cette tablette&#xa0;: récupérez-la de celle qui l&apos;a prise.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1&#xa0;: %2, %3 à pied. D&apos;abord&#xa0;: %4.</translation>
    </message>
    <message>
        <source> %1 less than in the order of their numbers.</source>
        <translation type="unfinished"> %1 de moins que dans l&apos;ordre de leurs numéros.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 sure that %3</source>
        <translation type="unfinished">si aucune des %1 n&apos;échoue, confiance de %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Who walks along</source>
        <translation type="unfinished">Qui participe</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Ajouter une personne</translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished">Dans quel but</translation>
    </message>
    <message>
        <source>Who records</source>
        <translation type="unfinished">Qui enregistre</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Gîte du navire</translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">au-delà de 1 degré, un temps de fermeture n&apos;est qu&apos;un conseil</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Combien d&apos;entre elles</translation>
    </message>
    <message>
        <source>To the brief ›</source>
        <translation type="unfinished">Au briefing ›</translation>
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
        <source>Every one</source>
        <translation type="unfinished">Toutes</translation>
    </message>
    <message>
        <source>or a sample drawn by lot, and what it proves</source>
        <translation type="unfinished">ou un échantillon tiré au sort, et ce qu&apos;il prouve</translation>
    </message>
    <message>
        <source>%1 by lot</source>
        <translation type="unfinished">%1 au sort</translation>
    </message>
    <message>
        <source>No door is in this scope.</source>
        <translation type="unfinished">Aucune porte dans ce périmètre.</translation>
    </message>
    <message>
        <source>Say first who records.</source>
        <translation type="unfinished">Dites d&apos;abord qui enregistre.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Planifier une tournée</translation>
    </message>
    <message>
        <source>Brief before the doors</source>
        <translation type="unfinished">Briefing avant les portes</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Plan</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Briefing</translation>
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
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">au-delà de 1 degré, un temps de fermeture n&apos;est qu&apos;un conseil</translation>
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
        <source>Every one</source>
        <translation type="unfinished">Toutes</translation>
    </message>
    <message>
        <source>%1 by lot: %2 sure that at most %3 are defective</source>
        <translation type="unfinished">%1 au sort&#xa0;: confiance de %2, au plus %3 défectueuses</translation>
    </message>
    <message>
        <source>What a sample says holds if none of it fails. The doors are shared out over zones and kinds and drawn by lot; a door chosen by anybody would prove nothing about the rest. A sample never takes the place of a test that the flag or the rules ask of every door.</source>
        <translation type="unfinished">Ce que dit un échantillon vaut si aucune de ses portes n&apos;échoue. Les portes sont réparties entre tranches et genres et tirées au sort&#xa0;; une porte choisie par quelqu&apos;un ne prouverait rien des autres. Un échantillon ne remplace jamais un test que le pavillon ou les règles exigent de chaque porte.</translation>
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
        <source>PRACTICE: these doors are not there, nothing here is a record</source>
        <translation type="unfinished">ENTRAÎNEMENT&#xa0;: ces portes n&apos;existent pas, rien ici n&apos;est un enregistrement</translation>
    </message>
    <message>
        <source>At the door</source>
        <translation type="unfinished">À la porte</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Finir et débriefer</translation>
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
        <source>No exercise is on this tablet. Take one in.</source>
        <translation type="unfinished">Aucun exercice sur cette tablette. Importez-en un.</translation>
    </message>
    <message>
        <source>Take in an exercise</source>
        <translation type="unfinished">Importer un exercice</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Entraînement</translation>
    </message>
    <message>
        <source>doors that are not there; nothing becomes a record</source>
        <translation type="unfinished">des portes qui n&apos;existent pas&#xa0;; rien ne devient un enregistrement</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Non ouvert</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">Non importé&#xa0;: une erreur</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">Non importé&#xa0;: %1 erreurs</translation>
    </message>
    <message>
        <source>Exercise taken in</source>
        <translation type="unfinished">Exercice importé</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation type="unfinished">Exercices</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progrès</translation>
    </message>
    <message>
        <source>An exercise was not ended</source>
        <translation type="unfinished">Un exercice n’a pas été terminé</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What was recorded stands; the doors are as at its beginning.</source>
        <translation type="unfinished">%1, commencé le %2 à %3. Ce qui est consigné demeure ; les portes sont comme au début.</translation>
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
        <source>Go on with it</source>
        <translation type="unfinished">Le poursuivre</translation>
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
        <source>Nobody has practised on this tablet yet. Each exercise that is finished leaves its score here, and how late the thumb was.</source>
        <translation type="unfinished">Personne ne s&apos;est encore entraîné sur cette tablette. Chaque exercice fini laisse ici son résultat, et le retard du pouce.</translation>
    </message>
    <message>
        <source>One exercise. </source>
        <translation type="unfinished">Un exercice. </translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished">%1 exercices. </translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined. </source>
        <translation type="unfinished">%1 défauts trouvés sur %2, %3 imaginés. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Personnes mises en danger&#xa0;: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">sans nom</translation>
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
        <source>, %1 %2, spread %3 ms</source>
        <translation type="unfinished">, %1 %2, dispersion %3 ms</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Progrès</translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished">Résultat de chaque exercice</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1&#xa0;%</translation>
    </message>
    <message>
        <source>an exam asks %1 %</source>
        <translation type="unfinished">un examen exige %1&#xa0;%</translation>
    </message>
    <message>
        <source>Thumb late, ms:</source>
        <translation type="unfinished">Retard du pouce, ms&#xa0;:</translation>
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
        <source>Papers ›</source>
        <translation type="unfinished">Documents ›</translation>
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
        <source>Nothing is open yet. %1 rows are not in order and not written up.</source>
        <translation type="unfinished">Rien d&apos;ouvert encore. %1 lignes ne sont pas en ordre et ne sont pas rédigées.</translation>
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
        <source>Who works the items: %1</source>
        <translation type="unfinished">Qui traite les anomalies&#xa0;: %1</translation>
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
        <source>Differences (%1)</source>
        <translation type="unfinished">Différences (%1)</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished">Ouvertes</translation>
    </message>
    <message>
        <source>Closed too (%1)</source>
        <translation type="unfinished">Clôturées (%1)</translation>
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
        <source>Who, papers, hand over ›</source>
        <translation type="unfinished">Qui, documents, transmettre ›</translation>
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
        <source>Who, papers ›</source>
        <translation type="unfinished">Qui, documents ›</translation>
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
        <source>Gone: in order again</source>
        <translation type="unfinished">Disparu&#xa0;: de nouveau en ordre</translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished">Mieux qu&apos;avant</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished">non essayé</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Deux tournées côte à côte</translation>
    </message>
    <message>
        <source>There are no two walkdowns yet.</source>
        <translation type="unfinished">Il n&apos;y a pas encore deux tournées.</translation>
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
        <source>%1 · %2: %3, before %4</source>
        <translation type="unfinished">%1 · %2&#xa0;: %3, avant %4</translation>
    </message>
    <message>
        <source>Nothing that both walks tried has changed by more than the uncertainty explains.</source>
        <translation type="unfinished">Rien de ce que les deux tournées ont essayé n&apos;a changé plus que l&apos;incertitude ne l&apos;explique.</translation>
    </message>
    <message>
        <source>Said differently: both stay on record, one is to stand</source>
        <translation type="unfinished">Dit autrement&#xa0;: les deux restent enregistrés, un seul doit compter</translation>
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
        <source>Nobody said different things of the same.</source>
        <translation type="unfinished">Personne n&apos;a dit des choses différentes sur le même point.</translation>
    </message>
    <message>
        <source>Which one stands? The later one shows until you decide.</source>
        <translation type="unfinished">Lequel compte&#xa0;? Le plus récent s&apos;affiche jusqu&apos;à votre décision.</translation>
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
        <source>Hand over between tablets and the bridge</source>
        <translation type="unfinished">Transmettre entre tablettes et passerelle</translation>
    </message>
    <message>
        <source>Give everything to a file</source>
        <translation type="unfinished">Tout donner dans un fichier</translation>
    </message>
    <message>
        <source>facts, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">faits, photos et disposition, signés par cet appareil</translation>
    </message>
    <message>
        <source>Give</source>
        <translation type="unfinished">Donner</translation>
    </message>
    <message>
        <source>Give it sealed for one device</source>
        <translation type="unfinished">Le donner scellé pour un appareil</translation>
    </message>
    <message>
        <source>only that device can open it; its key is asked for</source>
        <translation type="unfinished">seul cet appareil peut l&apos;ouvrir&#xa0;; sa clé est demandée</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished">Sceller</translation>
    </message>
    <message>
        <source>Take in another device&apos;s file</source>
        <translation type="unfinished">Importer le fichier d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>it is looked at first; nothing here is ever changed by it</source>
        <translation type="unfinished">il est d&apos;abord examiné&#xa0;; il ne change jamais rien ici</translation>
    </message>
    <message>
        <source>Take</source>
        <translation type="unfinished">Importer</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">La clé de cet appareil</translation>
    </message>
    <message>
        <source>to be given to whoever seals a file for it</source>
        <translation type="unfinished">à donner à qui scelle un fichier pour lui</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Voir</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation type="unfinished">Non donné</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation type="unfinished">Transmis</translation>
    </message>
    <message>
        <source>The file lies at %1</source>
        <translation type="unfinished">Le fichier se trouve dans %1</translation>
    </message>
    <message>
        <source>For which device is it sealed?</source>
        <translation type="unfinished">Pour quel appareil est-il scellé&#xa0;?</translation>
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
        <source>Seal and give</source>
        <translation type="unfinished">Sceller et donner</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">Non importé</translation>
    </message>
    <message>
        <source>What this file brings</source>
        <translation type="unfinished">Ce qu&apos;apporte ce fichier</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished">De %1</translation>
    </message>
    <message>
        <source>Nothing that is not here already.</source>
        <translation type="unfinished">Rien qui ne soit déjà ici.</translation>
    </message>
    <message>
        <source>Nobody here knows this device yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">Personne ici ne connaît encore cet appareil. Demandez à qui vous a donné le fichier de lire l&apos;empreinte de sa clé. Elle doit être&#xa0;:
%1</translation>
    </message>
    <message>
        <source>The fingerprint is right: accept it and take in</source>
        <translation type="unfinished">L&apos;empreinte est juste&#xa0;: l&apos;accepter et importer</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished">Importer</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished">Laisser</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, en tant que %2, %3 %4&#xa0;: </translation>
    </message>
    <message>
        <source>DOES NOT HOLD: %1</source>
        <translation type="unfinished">NON VALABLE&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 facts, unchanged</source>
        <translation type="unfinished">%1 faits, inchangés</translation>
    </message>
    <message>
        <source>; %1 came later and are not under it</source>
        <translation type="unfinished">, %1 sont venus plus tard et n&apos;en relèvent pas</translation>
    </message>
    <message>
        <source>Papers, as PDF</source>
        <translation type="unfinished">Documents, en PDF</translation>
    </message>
    <message>
        <source>Make</source>
        <translation type="unfinished">Créer</translation>
    </message>
    <message>
        <source>Make: %1</source>
        <translation type="unfinished">Créer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Liste d&apos;anomalies</translation>
    </message>
    <message>
        <source>for the master: what is open, what it does, what is done until then</source>
        <translation type="unfinished">pour le capitaine&#xa0;: ce qui est ouvert, son effet, ce qui se fait d&apos;ici là</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Liste de travaux</translation>
    </message>
    <message>
        <source>for the crew: by who sees to it, with boxes to tick</source>
        <translation type="unfinished">pour l&apos;équipage&#xa0;: par responsable, avec des cases à cocher</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Fiche de porte</translation>
    </message>
    <message>
        <source>Record of door %1</source>
        <translation type="unfinished">Fiche de la porte %1</translation>
    </message>
    <message>
        <source>one page: what it is, how it did, what was mended</source>
        <translation type="unfinished">une page&#xa0;: ce qu&apos;elle est, ses résultats, ce qui a été réparé</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Rapport de visite</translation>
    </message>
    <message>
        <source>the walkdown shown, every door and every row</source>
        <translation type="unfinished">la tournée affichée, chaque porte et chaque ligne</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulaire vierge</translation>
    </message>
    <message>
        <source>what the tablet asks, for a day without it</source>
        <translation type="unfinished">ce que demande la tablette, pour un jour sans elle</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Rien à signer encore</translation>
    </message>
    <message>
        <source>A walkdown is signed when it has ended.</source>
        <translation type="unfinished">Une tournée se signe quand elle est finie.</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Signer une tournée</translation>
    </message>
    <message>
        <source>Nobody has signed it yet.</source>
        <translation type="unfinished">Personne ne l&apos;a encore signée.</translation>
    </message>
    <message>
        <source>A signature covers what is recorded of this walkdown now, under the key of this device. It is no qualified electronic signature: sign the paper as well where your Administration asks for it.</source>
        <translation type="unfinished">Une signature couvre ce qui est enregistré maintenant de cette tournée, sous la clé de cet appareil. Ce n&apos;est pas une signature électronique qualifiée&#xa0;: signez aussi le papier là où votre Administration le demande.</translation>
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
        <source>Who works the items?</source>
        <translation type="unfinished">Qui traite les anomalies&#xa0;?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Quelqu&apos;un d&apos;autre</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Ajouter une personne</translation>
    </message>
    <message>
        <source>Rows that are not in order and not written up</source>
        <translation type="unfinished">Lignes qui ne sont pas en ordre et pas rédigées</translation>
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
        <source>What door %1 did before</source>
        <translation type="unfinished">Ce que la porte %1 a fait avant</translation>
    </message>
    <message>
        <source>Walkdowns of this door, the latest first</source>
        <translation type="unfinished">Tournées de cette porte, la dernière d&apos;abord</translation>
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
        <source>Its closing through the years</source>
        <translation type="unfinished">Sa fermeture au fil des ans</translation>
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
        <source>Everything is being put into a file</source>
        <translation type="unfinished">Tout est mis dans un fichier</translation>
    </message>
    <message>
        <source>No file was made, and nothing was handed over.</source>
        <translation type="unfinished">Aucun fichier n&apos;a été fait, et rien n&apos;a été transmis.</translation>
    </message>
    <message>
        <source>The file is being looked at</source>
        <translation type="unfinished">Le fichier est examiné</translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation type="unfinished">Rien n&apos;a été importé.</translation>
    </message>
    <message>
        <source>The file is being taken in</source>
        <translation type="unfinished">Le fichier est en cours d&apos;importation</translation>
    </message>
    <message>
        <source>Nothing was taken in. Everything here is as it was before.</source>
        <translation type="unfinished">Rien n&apos;a été importé. Tout est ici comme avant.</translation>
    </message>
    <message>
        <source>No walkdown recorded anything of this door yet.</source>
        <translation type="unfinished">Aucune tournée n&apos;a encore rien enregistré de cette porte.</translation>
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
        <source>The signature is kept, and saved by itself in a moment.</source>
        <translation type="unfinished">La signature est conservée et s’enregistre d’elle-même dans un instant.</translation>
    </message>
    <message>
        <source>There is no walkdown yet: until then only the blank form and the rule book can be made.</source>
        <translation type="unfinished">Il n&apos;y a pas encore de tournée : d&apos;ici là, seuls le formulaire vierge et le recueil des règles peuvent être faits.</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Recueil des règles</translation>
    </message>
    <message>
        <source>every row with its limit, dates, exemptions and text, and where it binds aboard</source>
        <translation type="unfinished">chaque ligne avec sa limite, ses dates, ses exemptions et son texte, et où elle oblige à bord</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Avant</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Suite ›</translation>
    </message>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1 à %2 sur %3</translation>
    </message>
    <message>
        <source>Rows before these</source>
        <translation type="unfinished">Lignes précédentes</translation>
    </message>
    <message>
        <source>More rows</source>
        <translation type="unfinished">Lignes suivantes</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 sur %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>All that the row says</source>
        <translation type="unfinished">Tout ce que dit la ligne</translation>
    </message>
    <message>
        <source>‹ Rows</source>
        <translation type="unfinished">‹ Lignes</translation>
    </message>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Imprimer ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Imprimer le recueil des règles</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>All rows</source>
        <translation type="unfinished">Toutes les lignes</translation>
    </message>
    <message>
        <source>No row has these words.</source>
        <translation type="unfinished">Aucune ligne ne contient ces mots.</translation>
    </message>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">des mots ou une référence</translation>
    </message>
    <message>
        <source>Find rows by their words or citation</source>
        <translation type="unfinished">Chercher des lignes par leurs mots ou leur référence</translation>
    </message>
    <message>
        <source>Rows of the rule book</source>
        <translation type="unfinished">Lignes du recueil des règles</translation>
    </message>
    <message>
        <source>Read it ›</source>
        <translation type="unfinished">Lire ›</translation>
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
        <source>Asked aboard</source>
        <translation type="unfinished">Demandées à bord</translation>
    </message>
    <message>
        <source>Asked of this door</source>
        <translation type="unfinished">Demandées à cette porte</translation>
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
        <source>STOPPED. Say “%1” now</source>
        <translation type="unfinished">ARRÊT. Dites «&#xa0;%1&#xa0;» maintenant</translation>
    </message>
    <message>
        <source>Run spoiled</source>
        <translation type="unfinished">Essai nul</translation>
    </message>
    <message>
        <source>On record, and never counted as a measurement. Why?</source>
        <translation type="unfinished">Enregistré, et jamais compté comme mesure. Pourquoi&#xa0;?</translation>
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
        <source>All runs of the door together: %1 %2: %3</source>
        <translation type="unfinished">Tous les essais de la porte ensemble : %1 %2 : %3</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Les deux sont justes</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart. One touch too many?</source>
        <translation type="unfinished">« %1 » et « %2 » ne sont séparés que de %3 s. Un appui de trop ?</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Retirer « %1 »</translation>
    </message>
    <message>
        <source>Yes: the run is spoiled</source>
        <translation type="unfinished">Oui : essai nul</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart: no leaf moves so fast. A slip of the finger?</source>
        <translation type="unfinished">«&#xa0;%1&#xa0;» et «&#xa0;%2&#xa0;» ne sont séparés que de %3 s&#xa0;: aucun vantail ne va si vite. Un faux appui&#xa0;?</translation>
    </message>
    <message>
        <source>no alarm was marked: %1</source>
        <translation type="unfinished">aucune alarme marquée : %1</translation>
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
        <source>Look closer</source>
        <translation type="unfinished">Voir de près</translation>
    </message>
    <message>
        <source>Push the leaf</source>
        <translation type="unfinished">Pousser</translation>
    </message>
    <message>
        <source>Open it, let go</source>
        <translation type="unfinished">Ouvrir, lâcher</translation>
    </message>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Dégager</translation>
    </message>
    <message>
        <source>Ask the station</source>
        <translation type="unfinished">Demander</translation>
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
        <source>It is not shut. Let it shut first, with the stopwatch.</source>
        <translation type="unfinished">Elle n&apos;est pas fermée. Laissez-la d&apos;abord se fermer, au chronomètre.</translation>
    </message>
    <message>
        <source>You push it from the other side, hard.</source>
        <translation type="unfinished">Vous la poussez de l&apos;autre côté, fort.</translation>
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
        <source>Nobody and nothing is in the way now.</source>
        <translation type="unfinished">Plus personne ni rien sur le chemin.</translation>
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
        <source>Try</source>
        <translation type="unfinished">Essayer</translation>
    </message>
    <message>
        <source>The whole door</source>
        <translation type="unfinished">Toute la porte</translation>
    </message>
    <message>
        <source>Try and ask</source>
        <translation type="unfinished">Essayer et demander</translation>
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
        <source>The leaf moves</source>
        <translation type="unfinished">Le vantail bouge</translation>
    </message>
    <message>
        <source>The leaf is home</source>
        <translation type="unfinished">Le vantail est en butée</translation>
    </message>
    <message>
        <source>The leaf stands open</source>
        <translation type="unfinished">Le vantail est ouvert</translation>
    </message>
    <message>
        <source>The leaf stands part open</source>
        <translation type="unfinished">Le vantail est entrouvert</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarme</translation>
    </message>
    <message>
        <source>somebody is in the opening</source>
        <translation type="unfinished">quelqu&apos;un est dans le passage</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ScoreCard</name>
    <message>
        <source>Half for the rows that are right, half for the faults: found of those there and imagined. Ten points less for each person endangered and each caution answered untruly.</source>
        <translation type="unfinished">Une moitié pour les lignes justes, une moitié pour les défauts&#xa0;: trouvés parmi ceux qui existent, et imaginés. Dix points de moins pour chaque personne mise en danger et chaque précaution confirmée à tort.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Score: %1 percent</source>
        <translation type="unfinished">Résultat&#xa0;: %1 pour cent</translation>
    </message>
    <message>
        <source>Passed: %1 % are asked</source>
        <translation type="unfinished">Réussi&#xa0;: %1&#xa0;% exigés</translation>
    </message>
    <message>
        <source>Not passed: %1 % are asked</source>
        <translation type="unfinished">Échoué&#xa0;: %1&#xa0;% exigés</translation>
    </message>
    <message>
        <source>%1 of %2 rows graded right</source>
        <translation type="unfinished">%1 lignes sur %2 bien notées</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined</source>
        <translation type="unfinished">%1 défauts trouvés sur %2, %3 imaginés</translation>
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
        <source>1 caution answered untruly</source>
        <translation type="unfinished">1 précaution confirmée à tort</translation>
    </message>
    <message>
        <source>%1 cautions answered untruly</source>
        <translation type="unfinished">%1 précautions confirmées à tort</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SealedForm</name>
    <message>
        <source>The instructor sealed this exercise. The instructor&apos;s word opens it.</source>
        <translation type="unfinished">L&apos;instructeur a scellé cet exercice. Son mot de passe l&apos;ouvre.</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">le mot de l&apos;instructeur</translation>
    </message>
    <message>
        <source>The instructor&apos;s word</source>
        <translation type="unfinished">Le mot de l&apos;instructeur</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation type="unfinished">Montrer la saisie</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Ouvrir l&apos;exercice ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Éclairage</translation>
    </message>
    <message>
        <source>Night keeps the eyes used to a dark bridge.</source>
        <translation type="unfinished">Nuit garde les yeux habitués à une passerelle sombre.</translation>
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
        <source>Of words and keys; what no longer fits comes on a page of its own.</source>
        <translation type="unfinished">Des mots et des touches&#xa0;; ce qui ne tient plus passe sur une autre page.</translation>
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
        <source>Motion</source>
        <translation type="unfinished">Mouvement</translation>
    </message>
    <message>
        <source>Calm: drawn leaves move in quarter steps instead of gliding.</source>
        <translation type="unfinished">Calme&#xa0;: les vantaux dessinés avancent par quarts de pas au lieu de glisser.</translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation type="unfinished">Fluide</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation type="unfinished">Calme</translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished">Quand un repère est pris</translation>
    </message>
    <message>
        <source>A tick and a shake, where this machine has them.</source>
        <translation type="unfinished">Un clic et une vibration, si cet appareil en dispose.</translation>
    </message>
    <message>
        <source>Tick and shake</source>
        <translation type="unfinished">Clic et vibration</translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation type="unfinished">Silence</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Unités</translation>
    </message>
    <message>
        <source>Limits stay in the unit of their text, beside the figure.</source>
        <translation type="unfinished">Les limites restent dans l&apos;unité de leur texte, à côté du nombre.</translation>
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
        <source>Say first who records, in a plan: a thumb is somebody&apos;s.</source>
        <translation type="unfinished">Dites d&apos;abord, dans un plan, qui enregistre&#xa0;: un pouce appartient à quelqu&apos;un.</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Étalonnage du pouce</translation>
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
        <source>The catalogue alone; no flag&apos;s own rules over it.</source>
        <translation type="unfinished">Le catalogue seul&#xa0;; aucune règle propre d&apos;un pavillon.</translation>
    </message>
    <message>
        <source>The rules of %1 stand over the catalogue.</source>
        <translation type="unfinished">Les règles de %1 priment sur le catalogue.</translation>
    </message>
    <message>
        <source>Take in a flag&apos;s rules</source>
        <translation type="unfinished">Importer les règles d&apos;un pavillon</translation>
    </message>
    <message>
        <source>Catalogue alone</source>
        <translation type="unfinished">Catalogue seul</translation>
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
        <source>‹ Before</source>
        <translation type="unfinished">‹ Avant</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Suite ›</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 sur %2</translation>
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
        <source>This run is spoiled: run again</source>
        <translation type="unfinished">Cet essai est nul&#xa0;: refaire</translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Repères</translation>
    </message>
    <message>
        <source>Slips ›</source>
        <translation type="unfinished">Erreurs ›</translation>
    </message>
    <message>
        <source>Show the marks out of turn</source>
        <translation type="unfinished">Montrer les repères hors tour</translation>
    </message>
    <message>
        <source>Show take back and spoiled</source>
        <translation type="unfinished">Montrer retirer et nul</translation>
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
        <source>Spoiled</source>
        <translation type="unfinished">Nul</translation>
    </message>
    <message>
        <source>Spoiled,
run again</source>
        <translation type="unfinished">Nul,
refaire</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Avant</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Suivant ›</translation>
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
        <source>What class does the boundary ask for?</source>
        <translation type="unfinished">Quelle classe exige le cloisonnement&#xa0;?</translation>
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
        <source>not yet tried</source>
        <translation type="unfinished">pas encore essayé</translation>
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
        <source>%1 degrees: over 1 degree a time is advice only</source>
        <translation type="unfinished">%1 degrés&#xa0;: au-delà de 1 degré, un temps n&apos;est qu&apos;un conseil</translation>
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
        <source>Walked by %1, %2 at %3</source>
        <translation type="unfinished">Ronde faite par %1, %2 à %3</translation>
    </message>
    <message>
        <source>Letters y, n, a: yes, no, n/a at the bar.</source>
        <translation type="unfinished">Lettres y, n, a : oui, non, s.o. à la barre.</translation>
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
        <source>no mark yet</source>
        <translation type="unfinished">aucun repère</translation>
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
        <translation type="unfinished"> (conseil seulement)</translation>
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
        <source>Alarm stopped</source>
        <translation type="unfinished">Alarme arrêtée</translation>
    </message>
    <message>
        <source>Alarm
comes late</source>
        <translation type="unfinished">L&apos;alarme
arrive tard</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TopBar</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Annuler</translation>
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
        <translation type="unfinished">Annuler&#xa0;: rien à reprendre</translation>
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
        <translation type="unfinished">Annuler : voir ce qui peut être retiré</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TrendChart</name>
    <message>
        <source>One time</source>
        <translation type="unfinished">Un temps</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation type="unfinished">%1 temps</translation>
    </message>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Depuis la réparation vers %1&#xa0;: </translation>
    </message>
    <message>
        <source>%1 so far, too few to say what comes: five over at least a year are needed.</source>
        <translation type="unfinished">%1 jusqu&apos;ici, trop peu pour dire la suite&#xa0;: il en faut cinq sur au moins un an.</translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, variant de %2 par an. </translation>
    </message>
    <message>
        <source>A time beyond %1 is to be expected now: the 95 % interval reaches it already.</source>
        <translation type="unfinished">Un temps au-delà de %1 est à attendre dès maintenant&#xa0;: l&apos;intervalle à 95&#xa0;% l&apos;atteint déjà.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have it seen to before.</source>
        <translation type="unfinished">L&apos;intervalle à 95&#xa0;% atteint %1 pour la première fois en %2&#xa0;: faites-la réviser avant.</translation>
    </message>
    <message>
        <source>No limit is reached by %1, and these times do not reach further.</source>
        <translation type="unfinished">Aucune limite n&apos;est atteinte d&apos;ici à %1, et ces temps ne vont pas plus loin.</translation>
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
        <source>From the paper: release %1</source>
        <translation type="unfinished">D&apos;après le papier&#xa0;: déclenchement %1</translation>
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
        <source>No leaf moves so fast. A slip of the finger? Else type it again.</source>
        <translation type="unfinished">Aucun vantail ne va si vite. Un faux appui&#xa0;? Sinon, tapez-le de nouveau.</translation>
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
        <source>It sounded: type the seconds</source>
        <translation type="unfinished">Elle a sonné : tapez les secondes</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>What is asked of this door, worst first</source>
        <translation type="unfinished">Ce qui est demandé à cette porte, le pire d&apos;abord</translation>
    </message>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Porte %1&#xa0;: %2, %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return to be told why</source>
        <translation type="unfinished">appuyez sur Entrée pour savoir pourquoi</translation>
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
        <source>What falls due</source>
        <translation type="unfinished">Les échéances</translation>
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
        <source>Take in a register (CSV)</source>
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
        <source>sat.</source>
        <translation type="unfinished">conf.</translation>
    </message>
    <message>
        <source>to settle</source>
        <translation type="unfinished">à trancher</translation>
    </message>
    <message>
        <source>unsat.</source>
        <translation type="unfinished">non conf.</translation>
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
        <source>The last one: %1, %2. Ended %3</source>
        <translation type="unfinished">La dernière&#xa0;: %1, %2. Finie le %3</translation>
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
        <source>This register has no doors yet, so there is nothing to walk. Take in a register that lists them.</source>
        <translation type="unfinished">Ce registre n&apos;a pas encore de portes&#xa0;: il n&apos;y a rien à parcourir. Importez un registre qui les contient.</translation>
    </message>
    <message>
        <source>Nothing was tested yet with this register. A walkdown begins with a plan: who, which doors, in which order.</source>
        <translation type="unfinished">Rien n&apos;a encore été testé avec ce registre. Une tournée commence par un plan&#xa0;: qui, quelles portes, dans quel ordre.</translation>
    </message>
    <message>
        <source>Take in a register ›</source>
        <translation type="unfinished">Importer un registre ›</translation>
    </message>
    <message>
        <source>Look at the doors ›</source>
        <translation type="unfinished">Voir les portes ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
    <message>
        <source>From paper: who walked?</source>
        <translation type="unfinished">D’après le papier : qui a fait la ronde ?</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Quelqu&apos;un d&apos;autre</translation>
    </message>
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
        <source>ship&apos;s time of this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">heure du bord à cette porte, heures et minutes : 1432 est 14:32</translation>
    </message>
    <message>
        <source>That is later than now.</source>
        <translation type="unfinished">C’est plus tard que maintenant.</translation>
    </message>
    <message>
        <source>There is no such time of day.</source>
        <translation type="unfinished">Cette heure n’existe pas.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>You decide. First the reason:</source>
        <translation type="unfinished">À vous de décider. D&apos;abord le motif&#xa0;:</translation>
    </message>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished">Conforme</translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished">Non conforme</translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished">Pourquoi ce verdict</translation>
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
        <source>What would settle it</source>
        <translation type="unfinished">Ce qui trancherait</translation>
    </message>
    <message>
        <source>Asked because</source>
        <translation type="unfinished">Demandé parce que</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Texte</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished">Statut</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1&#xa0;; une règle de %2</translation>
    </message>
    <message>
        <source>How much hangs on it</source>
        <translation type="unfinished">Ce qui en dépend</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Pourquoi&#xa0;: %1</translation>
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
        <translation type="unfinished">Terminer cet exercice&#xa0;?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Toutes les portes sont faites.</translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tried counts as not found.</source>
        <translation type="unfinished">%1 sur %2 faites. Ce qui n&apos;a pas été essayé compte comme non trouvé.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished">Continuer</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Finir et débriefer</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">Non conservé</translation>
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
        <source>Papers are printed in English; what you write stands as written.</source>
        <translation type="unfinished">Les documents s&apos;impriment en anglais ; ce que vous écrivez reste tel quel.</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Plus tard</translation>
    </message>
    <message>
        <source>The words change when the exercise has ended.</source>
        <translation type="unfinished">Les mots changeront à la fin de l&apos;exercice.</translation>
    </message>
    <message>
        <source>Whose thumb?</source>
        <translation type="unfinished">Le pouce de qui&#xa0;?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records.</source>
        <translation type="unfinished">Planifiez d&apos;abord une tournée et dites qui enregistre.</translation>
    </message>
    <message>
        <source>%1 has done no thumb drill on this tablet: published figures stand.</source>
        <translation type="unfinished">%1 n&apos;a pas fait d&apos;étalonnage du pouce sur cette tablette&#xa0;: les valeurs publiées comptent.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 a fait l&apos;étalonnage du pouce le %2&#xa0;; à répéter depuis le %3.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 a fait l&apos;étalonnage du pouce le %2&#xa0;; à répéter après le %3.</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Quand une valeur passe ou échoue</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">Non importé</translation>
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
        <source>Take the photograph</source>
        <translation type="unfinished">Prendre la photo</translation>
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
        <source>Register of a vessel</source>
        <translation type="unfinished">Registre d&apos;un navire</translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Registre CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules of a flag</source>
        <translation type="unfinished">Règles d&apos;un pavillon</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Règles (*.json)</translation>
    </message>
    <message>
        <source>1 fact</source>
        <translation type="unfinished">1 fait</translation>
    </message>
    <message>
        <source>%1 facts</source>
        <translation type="unfinished">%1 faits</translation>
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
        <source>1 door that was not known here</source>
        <translation type="unfinished">1 porte inconnue ici</translation>
    </message>
    <message>
        <source>%1 doors that were not known here</source>
        <translation type="unfinished">%1 portes inconnues ici</translation>
    </message>
    <message>
        <source>1 difference to decide</source>
        <translation type="unfinished">1 différence à trancher</translation>
    </message>
    <message>
        <source>%1 differences to decide</source>
        <translation type="unfinished">%1 différences à trancher</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished">Non affiché</translation>
    </message>
    <message>
        <source>This machine has no program that shows PDF files. The file lies at %1</source>
        <translation type="unfinished">Cet appareil n&apos;a pas de programme qui affiche les PDF. Le fichier se trouve dans %1</translation>
    </message>
    <message>
        <source>Hand over to a file</source>
        <translation type="unfinished">Transmettre par fichier</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Fichiers de transmission (*.zip)</translation>
    </message>
    <message>
        <source>Handover file of another device</source>
        <translation type="unfinished">Fichier de transmission d&apos;un autre appareil</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">appareil %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercise of an instructor</source>
        <translation type="unfinished">Exercice d&apos;un instructeur</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished">Exercices (*.json)</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation type="unfinished">Non consigné</translation>
    </message>
    <message>
        <source>A run is being timed: a leaf may be moving. Closing stops the run.</source>
        <translation type="unfinished">Un essai est en cours : un vantail peut bouger. Fermer arrête l’essai.</translation>
    </message>
    <message>
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing loses them.</source>
        <translation type="unfinished">%1 entrées ne sont PAS enregistrées et n’ont pu être gardées ailleurs. Fermer les perd.</translation>
    </message>
    <message>
        <source>What is written in the open sheet is not recorded. Closing loses it.</source>
        <translation type="unfinished">Ce qui est écrit dans la feuille ouverte n’est pas consigné. Fermer le perd.</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">Fermer le programme ?</translation>
    </message>
    <message>
        <source>Go on here</source>
        <translation type="unfinished">Continuer ici</translation>
    </message>
    <message>
        <source>Close all the same</source>
        <translation type="unfinished">Fermer quand même</translation>
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
        <source>The register is being looked through</source>
        <translation type="unfinished">Le registre est en cours de vérification</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">porte %1 pont %2 %3</translation>
    </message>
    <message>
        <source>bulkhead %1 does not hold: %2</source>
        <translation type="unfinished">la cloison %1 ne tient pas&#xa0;: %2</translation>
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
        <source>closer</source>
        <translation type="unfinished">plus près</translation>
    </message>
    <message>
        <source>further away</source>
        <translation type="unfinished">plus loin</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Tout</translation>
    </message>
    <message>
        <source>the whole ship</source>
        <translation type="unfinished">tout le navire</translation>
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
</context>
</TS>
