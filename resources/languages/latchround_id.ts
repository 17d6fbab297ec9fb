<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Made by machine. To be checked by a speaker who knows fire doors aboard ship; until then every translation stays unfinished. -->
<TS version="2.1" language="id" sourcelanguage="en">
<context>
    <name>Boundaries</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 open at deck %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 open at decks %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mending door %1 in bulkhead %2 restores most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mending doors %1 in bulkhead %2 restores most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkhead %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkheads %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 against %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Lamps of the fire door control panels are tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is worked locally</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tried for proper release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate present and legible, and it reads as the register says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, scoured, or another class than the register&apos;s. No SOLAS paragraph was found that asks for a plate: where it is missing ask for the certificate; it is not a failure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sill in place, no trip?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the whole sill, with a lamp and a foot. Good: whole, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: bare. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look into the pocket with a lamp, never with a hand while the door can move. Good: bare to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing holds it: no wedge, rope or furniture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round the foot, the handle and the edge of the open leaf. Good: its own hold-back alone holds it. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals whole and not painted over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals whole, unpainted?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand back and look at the gap over the leaf. Good: even, screws home. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closer not leaking, its arm connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, its arm fast at both ends. Bad: oil on the body or the leaf, the arm loose or hanging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rail at the head and the guide at the foot, end to end. Good: bare, every roller on it. Bad: dirt, a dent, a roller off. Hands out while it can move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both faces, edges, frame and glass. Bad: drilled holes, cables, signs screwed on, rust, loose insulation, a crack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moves smoothly over its whole travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smooth over its whole travel?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it goes evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do the leaves close in order?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open both leaves and let them go together. Good: one waits until the other is home. Bad: its lip is caught outside. Fingers off the meeting edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latches fully, unaided, and stays latched when pushed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latches unaided, stays latched when pushed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it has shut and stands still, push it. Good: it holds. Bad: it gives way, as it would to the pressure of a fire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety edge stops the leaf and lets it re-open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the safety edge stop and re-open it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Good: at the touch the leaf stops and goes back. Bad: it pushes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door, frame and securing means resist fire like the division they stand in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One person can open and close it, from each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can one person open and close it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open and shut it yourself, unaided, from this side; then go round and do the same. Bad: it takes two people or a tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes by itself, also against an inclination of 3.5 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the first movement of the leaf and the moment it is fully shut; on a double door, when the second leaf is home. Stand clear of the leaf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate. Keep hands off the edge and out of the pocket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control station releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can be released at the door, from both sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the switch on this side release it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work the switch or handle at the door, one side and then the other. Good: each lets the door go. Bad: one side does nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The release switch has an on-off function: the system does not reset itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the switch stay as it is put, so that the system does not reset itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release, take the hand off and wait. Good: the door is not held again until somebody puts the switch back. Bad: it is held again by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look behind the open door, at wall, leaf and deck. Bad: hooks, cabin hooks, eye plates with marks of use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After remote closing it opens again locally from both sides, and then shuts by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the remote release still stands, open it from this side and let go. Good: it opens, then shuts by itself. Keep clear of the leaf as it comes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the panel&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: true each time. Bad: it says shut while the door stands ajar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes by itself when the control system or central power fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes by itself when its control or power fails?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agree it with the engineers and clear people away; then the supply of this door&apos;s control is cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local accumulators work the door at least ten times fully open and shut after the power has failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for the last record of ten full openings and closings without the main supply. Trying it runs the accumulator down: agree it with the control station first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do the other doors go on working when this one fails?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the drawing of the control system, or isolate this door while another is worked. Good: the others move as before. Bad: they stand still too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm sounds 5 to 10 s between release and first movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released from the control station, from the first sound of the alarm to the first movement of the leaf. Bad: the leaf moves at once, or much later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Listen until the leaf is home. Good: the alarm still sounds when the door is fully shut. Bad: silence while the leaf still moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On contact it re-opens no more than 1 m from the point of contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it re-opens from the point of contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after going back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latch engages by the release system&apos;s own operation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After release, when both leaves stand still, push at the meeting edge. Good: neither opens. Bad: the bolt lies short of its strike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjusting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens and a hand with a tool gets in. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 degrees C, and to keep the door shut beyond</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is there an approval paper of the control system?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check of papers: works at 200 degrees C or more for 60 min or more, leaves other doors&apos; supply whole, isolates itself above that and keeps the door shut up to 945 degrees C or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose port clear 150 mm square, and does it shut by itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 mm square clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 12 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap under the shut door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a feeler or a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Non-combustible sill; floor covering does not run under the closed door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sill non-combustible, floor covering stops at it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the foot of the shut door. Good: a sill that cannot burn, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m2 net, with a non-combustible grille</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cabin door closes by itself and has no hold-back hook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes by itself, no hook?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops half way, or there is a hook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes positively by power or by itself, with a fail-safe hold-back released remotely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes positively, hold-back fail-safe and released remotely?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release it from its remote place, then with its supply cut. Good: it closes firmly each time. Doors of escape trunks are excepted: answer n/a.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead A-0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. Watertight doors are outside the rule; a door to the weather deck may be 45 mm hardwood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The door is numbered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the door&apos;s number on it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look on the leaf and beside it. Good: the number can be read and is the register&apos;s. Bad: gone, painted over, or another door&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails; no hooks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released from the control station and at the door, shut by itself when the system fails, and free of hooks?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with the system off: it must shut each time. Then look behind it for hooks. A door that is normally closed need not have it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when its power fails; no hooks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with its power off: it must shut each time. Then look behind it for hooks. A door that is normally closed need not have it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Either leaf of a double door closes and latches on its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does either leaf close and latch on its own?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latch throw at least 19 mm in an A-class door, 9.5 mm in a B-class door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. 3/4 inch; subchapter K prints 20 mm for A class. B class: 3/8 inch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm under an A-class door, 25 mm under a B-class door; no rug or carpet through the doorway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Bad as well: a rug or carpet that runs through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop or overlap at the sides and top at least 12.7 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the shut leaf laps over the stop of its frame, at the sides and the top. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vent grille or louver in an A-class door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free of grilles and louvers?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look over the whole leaf, low down as well. Good: closed all over. Bad: a grille or louver, anywhere in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One leaf at most 1200 mm wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One leaf, from the hinge side to the free edge. 48 inches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, self-closing steel cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 mm square, cover shuts by itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 inches square. Lift the steel cover and let go: it must fall shut. The rule asks for no hose port; it says how one must be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time it from the first movement to fully shut. Nobody stands on the stair, and no hand or foot is at its edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it lets go. The greatest force counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts. Nobody stands under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glass that can be seen, height by width. 100 square inches. No glass: 0. Bad: cracked, or no wire in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fire door release system is as SOLAS 74 II-2/30.4.3 has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check of papers, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room with emergency power or lighting source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bridge and chart room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radio room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire control room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propulsion control room outside the engine room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>central fire-alarm panel room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>central emergency public-address station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stairways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks for passengers or crew, with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a stair enclosed on one level only counts as part of the space it has no fire door against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corridors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passenger and crew corridors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lobbies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evacuation stations and external escape routes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>survival-craft stowage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open deck or enclosed promenade used for boat/raft boarding and lowering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assembly stations, indoor and outdoor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside stairs and open decks that are escape routes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ship&apos;s side down to the lightest waterline, and house sides, below or beside raft and slide boarding areas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open deck spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open deck and promenades away from boat/raft boarding places (deck furniture only, permanently open to air)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the open air outside superstructures and deckhouses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accommodation spaces of minor fire risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabins, offices and dispensaries with restricted-fire-risk furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>public rooms under 50 m2 with restricted-fire-risk furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accommodation spaces of moderate fire risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>category 6 rooms with ordinary furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>public rooms of 50 m2 or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m2 (no flammable liquids)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>projection and film rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diet kitchen without open flame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning-gear locker, laboratory (no flammable liquids)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pharmacy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying room up to 4 m2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>specie room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>operating room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accommodation spaces of greater fire risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>public rooms of 50 m2 or more with ordinary furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>barber shop, beauty parlour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sauna</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sale shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sanitary and similar spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shared toilets, showers, baths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small laundry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolated pantry without cooking appliances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(private bathrooms count as part of the room they serve)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tanks, voids and auxiliary machinery spaces having little or no fire risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>structural water tanks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voids, cofferdams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>auxiliary rooms with no pressure-lubricated machinery and no combustible storage: fan and air-conditioning rooms, windlass, steering gear, stabiliser, electric propulsion motor, section switchboards (no oil-filled transformer above 10 kVA)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaft alleys, pipe tunnels, non-flammable pump and refrigeration rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed trunks serving these; pipe and cable trunks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, cargo spaces, cargo and other oil tanks and similar spaces of moderate fire risk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cargo oil tanks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds, trunkways, hatchways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refrigerated chambers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil fuel tanks in their own space without machinery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaft alleys or pipe tunnels where combustibles may be kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>category 10 type rooms with pressure-lubricated machinery or combustible storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil filling stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil-filled transformers above 10 kVA</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turbine/steam auxiliary generators and engines up to 110 kW driving generators, sprinkler, fire or bilge pumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed trunks serving these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machinery spaces and main galleys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main engine and boiler rooms (not electric propulsion motor rooms)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other auxiliary rooms with engines or oil-burning, heating or pumping units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main galleys and annexes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>their trunks and casings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store-rooms, workshops, pantries, etc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main pantry not annexed to a galley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main laundry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying room above 4 m2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>miscellaneous stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mail and baggage rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>garbage rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshops outside machinery spaces and galleys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lockers and stores above 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other spaces in which flammable liquids are stowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paint locker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores with flammable liquids (dyes, medicines, ...)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laboratories where flammable liquids are kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propulsion control room outside the machinery space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passenger and crew corridors and lobbies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accommodation spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), corridors left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Service spaces (low risk)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lockers and stores under 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laundries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machinery spaces of category A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spaces with main propulsion combustion engines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other combustion engines totalling 375 kW or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil-fired boilers, oil fuel units, inert gas generators, incinerators and other oil-fired plant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunks to these (reg. 3.31)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other machinery spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrical rooms (telephone exchange, air-conditioning duct spaces)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machinery spaces of reg. 3.30 that are not category A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cargo spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways (special category spaces are category 11)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Service spaces (high risk)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>galleys, pantries with cooking appliances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paint rooms/lockers, lamp rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saunas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lockers and stores of 4 m2 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flammable-liquid stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshops outside the machinery spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open decks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open deck and promenades with little or no fire risk (deck furniture only, permanently open to air)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Special category and ro-ro spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle decks passengers can enter (reg. 3.46)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ro-ro spaces (reg. 3.41)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corridors and lobbies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paint rooms/lockers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ro-ro and vehicle spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle spaces (reg. 3.49)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cargo pump-rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rooms with cargo pumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>their entrances and trunks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergency power source (generators excluded)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normally manned navigation and radio equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>central fire control or detection gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machinery controls outside a machinery space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stairway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stairway or stairtower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corridor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corridor / passageway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Embarkation station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place where survival craft are boarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>embarkation deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low risk accommodation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire-resistant furnishings only and fire load up to 15 kg/m2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m2 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire load above 15 kg/m2 (limit 37.5 kg/m2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m2 that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as 6 but larger; the size sign is lost in the machine text and is inferred from row 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low risk service spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washrooms and toilets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small laundry or drying room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning-gear locker with slop sink only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshop outside machinery spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>projection room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High risk service spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning-gear locker or small storeroom in an accommodation area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large laundry or drying room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>garbage store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paint or lamp locker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mail or baggage room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pantries and stores with flammable liquids or of 5 m2 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machinery spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propulsion, steam or combustion machinery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil transfer gear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motors above 10 hp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil-fired boilers or heaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>generators</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>their trunks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds, refrigerated cargo spaces, their trunks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, voids, fuel and water tanks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m2 of combustible storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergency power source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>continuously watched navigation, radio or fire-control rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stairway and elevator enclosures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passenger and crew stairs and lifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passenger and crew corridors (over 8 ft wide counts as a public space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifeboat embarkation or lowering stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open deck and promenades in way of boat boarding/lowering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Staterooms and public spaces with incombustible veneers and trim and fire-resistant furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>staterooms, offices, public rooms so fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Staterooms, and public spaces of 500 sq ft or less, with combustible furnishings; isolated storerooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordinary staterooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small sales rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolated lockers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Public spaces over 500 sq ft with combustible furnishings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large lounges, dining rooms, sales rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washrooms, toilets and isolated pantries with incombustible fittings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>washrooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>operating rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>small laundries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slop-sink lockers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Galleys, main pantries, storerooms and workshops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>galleys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>workshops, large laundries, mail and baggage rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paint and lamp rooms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>main machinery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>auxiliary rooms with engines or oil units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel filling stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry cargo spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds, refrigerated cargo, trunks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel and water tanks and voids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tanks, voids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>auxiliary rooms with pumps, fans, steering gear and no combustible storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cargo oil tanks not also used for dry cargo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open decks and enclosed promenades (not safety areas)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open deck away from boat stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exam: the whole practice vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All twelve doors. Nobody says how many faults there are. Endanger nobody, answer the cautions truly, and have 80 of 100 points to pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order, the other is far from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two doors that stand still. Go round each of them, both sides, and look at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody comes round the corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop it before it meets anybody. A run that was stopped can be made again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A round of eight doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every kind of door in one walk. Six faults lie somewhere among them, some of which only the watch can show. Not every door has one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, the whole travel, and how far each one opens again when it meets something. Look into the pockets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four hinged doors that magnets hold open. They must let go from both sides and from the control station, shut in their time and latch. Watch the path before you release anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double doors must come home in their order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be left out if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Public toilets standing wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Category 6, 7, 8 and 9 rooms wholly inside the outer boundary of an assembly station: their bulkheads may be B-0. Audio, video and lighting control positions may count as part of the assembly station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No special requirement for material or integrity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.2.2 (bulkheads inside a main vertical zone) and 2.2.5 (stairway and lift enclosures).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same category number: the rated division is needed only if the two spaces serve different purposes (galley/galley none; galley/paint room A-0).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulkhead between wheelhouse and chart room may be B-0. Partitions between the bridge and a safety centre inside the bridge need no rating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two values: the higher applies where the zone has no automatic sprinklers, the lower where it has them; between a sprinklered and an unsprinklered zone the higher applies (2.2.4.2.3, 2.2.4.2.4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the bulkhead is a main vertical zone boundary (2.2.1.1.2), read B-0 and C in table 9.3 as A-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insulation may be left off if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m2 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they stay at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cargo spaces for dangerous goods: regulation 19.3.8 governs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boundaries between ro-ro spaces must be able to be closed reasonably gastight and be A class so far as reasonable and practicable, if the Administration finds little or no fire risk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tanker use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m2 (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toilet boundaries may be reduced to C&apos;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C is enough between two like spaces (two storerooms); unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No division needed inside one stairtower; two separate stairtowers need A-0 between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time duty (116.415(a)(2)(vi)).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>The claim stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on: test %1 more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extend: test %1 more; if none of those fails, the claim stands, with a little less confidence than stated, for the doors themselves made the sample larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every door was tested: the claim does not stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test all: the %1 doors that are left as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of %1 doors is defective</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 of %2 doors is defective</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 of %2 doors are defective</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, %3 failed: %4 confident that %5. %6</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plate scoured bare; no letter is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four screw holes round a pale patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A magnet on its arm, its armature on the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lining and frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; a hook hangs from an eye plate on the lining</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; nothing else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lower corner of the leaf, plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A port 150 mm square, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its cover lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its cover hangs part open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its cover lies flat on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two lamps, nobody has told of them yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamp marked shut is lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lamp marked open is lit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A soft edge on the leaf and a block before it; nothing was run onto it yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A steel sill screwed down, the floor covering ends at its trim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The floor covering runs on under the leaf; four holes in the deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rule reads %1 mm at the foot of the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deck, and a wooden wedge under the edge of the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deck on both sides, nothing on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cup, crumpled paper and an end of line on the bottom rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two plates and the bottom rail between them, nothing on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bright rail, two hangers, their rollers on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paint of the bulkhead runs over the seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dark strip in its groove, from top to bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinges with all their screws, the gap at the head even</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dry body, the arm in its shoe on the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolt stands well out of its case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tip of the bolt just shows out of its case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The release at this side under its cover, lever upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge stands %1 back from the block, by the tape</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>The release has been announced to everyone near these doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passengers and crew are clear of every door that will move, and kept clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A watch stands at every door that will move, on both sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The word to start and the word to stop have been said and repeated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing stands in the path or the pocket; no hand, foot or cable at an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shuts faster than the text allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shuts more slowly than the text allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shuts within a hair of the limit: no thumb can pass or fail it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It moves less than 5 s after the alarm begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The alarm stops before the leaf is home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On contact it re-opens more than 1 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The selector fails: the leaf that must wait comes home first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shuts but does not latch: it gives way when it is pushed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The magnet holds on for half a minute after the control station&apos;s release, which is taken as not released (common practice, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be released from one of its sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hook can hold it open that the control station cannot release.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litter lies in the pocket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than the text allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate names a lower class than the boundary asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seal is painted over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows it open when it is shut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cover of the hose port does not shut by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened again at the door after remote closing, it stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody was in the way of the leaf: the run has to be stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation is that of the table, where B-0, C and * are read as A-0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 will do with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead has the greater of A-30 and table (b); A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step of a main vertical zone is A-60; A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The value of ships built on or after 1 July 2014 is given; the date of building is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 keeps the tables of its day, which are not here: compare with the approved plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stairway enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>galley boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machinery space boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>special category boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normally open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normally closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>normally locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not normally locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power-operated watertight door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in a zone bulkhead, galley or stairway boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not an A-class door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not a B-class door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power-operated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not power-operated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released remotely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no remote release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not held open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>designed to re-open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not designed to re-open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose port fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in an escape route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in an escape route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sill in its frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sill in its frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs a latch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs no latch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watertight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not watertight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not weathertight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergency escape trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not of an escape trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no special category space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>faces embarkation or an escape deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>faces no embarkation or escape deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vessel&apos;s own flag has its own text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keel date unknown: compare with the approved drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keel laid before %1: compare with the approved drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date of installation unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>installed before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text of other ships: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exempt: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate %1, register %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate %1, boundary %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>register %1, boundary %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, whose door needs %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by the approved plan, %2 by %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by the approved plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>register %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: NOT saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free some space and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk reports a fault (SQLite %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again; if it comes back, save the register to another disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program is writing to this register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait a moment or close the other program, then try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the register may not be written here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy it to a folder you may write to and open it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you may write to the folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is damaged (SQLite %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the last backup instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the computer is out of memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close other programs and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cautions do not all stand confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer each of them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CueWords</name>
    <message>
        <source>Alarm heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf seen to start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ms early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ms late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 marks, bias %2, spread %3&#xa0;ms</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop is the answer: no row of the catalogue is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No fault was there, and none was imagined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every row that was asked is graded as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody was endangered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One person was endangered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 people were endangered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A leaf met somebody, or would have. Aboard that is a crushed hand or a death: a power-operated leaf does not know who stands in its way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No moving leaf met anybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the opening and not the clock. Stop the moment somebody steps in: a run that was stopped costs two minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every caution was true when it was answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One caution was answered and was not true</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cautions were answered and were not true</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The door was armed with somebody in the way. A caution is not a key to get past: look at both sides first, and have people asked aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way was clear each time a door was armed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your thumb in this exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Where %1 of a kind count, the thumb drill offers to use them as your thumb&apos;s own figures in place of the published ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each mark against the truth</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1. Measured %2; asked: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found on %1, %2 since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same row was written up before: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another one</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DoorWords</name>
    <message>
        <source>single leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stairway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machinery space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>starboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkhead %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>port State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the door, side one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the door, side two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let go from fully open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half-way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First leaf home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second leaf home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch at the first sound of the alarm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch at the first movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if you like: half of the opening is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch the moment the leaf is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch the moment the alarm is silent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch when the first leaf is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch when the second leaf is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch when the edge meets the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touch when the leaf has stopped and re-opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message>
        <source>weekly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yearly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue: it ended on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ends %1, its window opens %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>window open since %1, ends %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue: some doors never tried in this register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue: never recorded here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing falls due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next on %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExerciseWords</name>
    <message>
        <source>first steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closes too fast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closes too slowly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too close to a limit to tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm stops early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens again too far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaves out of order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>magnet lets go late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no release from one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sill missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap under the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>painted seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indicator lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>people in the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imagined</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Published figures for the thumb until its own drill is done: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1 through the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No time was taken with the ship upright yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs with its U; the shaded band is where the next is to be expected with 95 %. It says nothing about what can break at once.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GradeWords</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked of this door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tried on this walk: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one side still to be tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen, and it is not so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answered as not applicable to this door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside the limits, mean of %1 runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside the limits, mean of %1 runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a limit lies inside the uncertainty: measure once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: the text says approximate, you decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one half of the travel lies outside the limits: roughly uniform?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only, time it again upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weaker than its boundary: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; the register does not say what the boundary asks for: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; no fire class is asked here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>they differ: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: ask for the certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not as good practice has it: you decide whether the door may stay so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decided by the inspector: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs a run released from the control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the alarm was still on when the door was shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the alarm stopped before the door was shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the register has no clear opening for this door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cited text was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put it right, then test it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your judgement, with its reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try it from the other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a run released from the control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure the clear opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time it with the ship upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>come back when it can be tested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>try it at the door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all %1 satisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grave: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serious: the door does not do what is asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minor: upkeep and marking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (door %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by the approved plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GroupWords</name>
    <message>
        <source>zone not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open for more than 90 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open for more than 30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open for more than 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found in the last 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the day due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due within 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>from each opening all the way home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left standing ajar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an even way, from start to end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sticks, then slams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leaf home, then the one with the lip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lip is home first: the other stays out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leaf alone shuts and latches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and so does the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let go, it shuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the switch on each side lets it go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released from the station, it closes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays as it was put</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands ajar, and the panel says open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands ajar, but the panel says shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first the alarm, then the leaf moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the leaf moves as the alarm begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the alarm lasts until the leaf is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the alarm stops while the leaf moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the strip lies flush and unbroken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>painted over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the gap over the leaf is even</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hangs low and rubs at the sill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry, the arm fast at both ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil runs from it, the arm is off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bolt lies short: a push opens it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the edge of the leaf to the tip of the bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a feeler between the two leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>double-swing door: top and sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>laps well over the stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardly touches the stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole, flat and firm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loose end that a foot can catch on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the covering stops at the sill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the covering runs on under the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a narrow gap at its widest place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare deck all the way of the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores in the way of the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare to the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hold-back that the station releases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare, every roller on the rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dirt on the rail, a roller off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one person, from either side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it takes two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open it while the release still stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stops at the soft block and goes back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pushes on: a hand would be crushed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes back a little from the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes back too far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hooked at the free edge, until it just moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on to the stair&apos;s width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the free edge, square to the leaf, nearly shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the angle between plumb line and ship</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look along the whole way first. Work the switch or handle on that side, then stand clear: hands off edges and out of the pocket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cautions come first. The control station releases it at the word to start; nobody passes a moving door, and anybody may say the word to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it fully, look along its way, let go and stand clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the public address or from mouth to mouth: which doors will move, and when. Wait until those near have looked up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody in an opening, nobody near a leaf, no child out of reach. Somebody turns people back until the door stands still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One person on each side of every door of the group, where both leaf and approach are seen, able to call stop. Bad: one watch for two sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers stands at the release, and at nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say the word to start and the word to stop; hear both repeated. Anybody may say the word to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look along the whole path, and into the pocket with a lamp. Hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the block by its far end, low in the path, and stand beside the leaf. Mark when it touches and when it stops; then measure how far it went back. Where it pushes on, say the word to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, a hand&apos;s breadth before it is shut. Hold it still and read the pull. Fingers off the edge. From mass and force follows what an inclination would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count for the upright ship: over 1 degree they are advice only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures stand above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plate is as strong as the boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plate is weaker than the boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can be read, and is the register&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scoured or painted over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed all over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a grille in the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a grille: only the openings between the bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cut under the leaf: width by height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole, with its wire: height by width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cracked, or without its wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leaf, from hinge side to free edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole all over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holes, a cable through it, rust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cover falls shut by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cover stays up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start: …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop: …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everybody near has heard it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody in the way or near it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody in the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a watch on each side of the door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody sees the far side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each word said by one, repeated by the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>path and pocket are bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its supply is cut: it shuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its supply is cut: it stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold-back dead: it is driven home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it hangs where it was held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ten times open and shut from its own store</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one fails, and all stand still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cover opens, a tool gets in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>built in behind pipes and lockers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is for, and who approved it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: what %1 degrees ask of the closer cannot be worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Hold a spring gauge there to see what the closer gives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could not close against it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could close, if hinges, seals and latch take less than the rest. Worked out, not tried: no verdict comes from this.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ItemWords</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectified</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ready for retest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the next port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before departure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within three months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ship detained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground for detention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no ground for detention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>survey report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deficiency list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no day set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found %1 times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same defect as an earlier item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passed, but tried only by who put it right: somebody else must test it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in order on a later walk, but nobody recorded that it was put right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule and %4 at most</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>translated by machine, to be checked by a speaker of the trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As this machine is set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the words of the program</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OpenItems</name>
    <message>
        <source>and %1 more</source>
        <comment>rows of a door</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>The paper is being made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No paper was made. One that was made before is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paper is made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PDF lies at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it, to print</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastWalkdown</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanDraft</name>
    <message>
        <source>all doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarterly: zone bulkheads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone bulkheads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors to be retested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors that failed last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, a sample of %2 by lot %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Register taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lies at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The register is being taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken in. The vessels here are as they were before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunWords</name>
    <message>
        <source>cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped after %1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on the plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged satisfactory: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decided that this stands: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two decisions about the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, side one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, side two</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You open it and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put to release and let go, the switch stays where it was put. The leaf is not held again until somebody puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power failure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Main and emergency supply of the release panel switched off at the board: the leaf shuts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local accumulator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chief engineer&apos;s record of this year: opened and shut ten times from the local accumulator, pump off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This door isolated at the control box: released again, the others of its group shut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cover opens by hand. Nothing stands or is built in front of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approval paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Openings for air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A grille low in the leaf, shutter of fire class: net free area by its drawing 0.03 m2. No undercut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply of the hold-back switched off at the board: the leaf is let go and shuts against the draught of the fans. The control station&apos;s release plan names the door.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SpotWords</name>
    <message>
        <source>Sill and floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers, trials</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationDrawing</name>
    <message>
        <source>Release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shut</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TapWords</name>
    <message>
        <source>plate of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tested: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photograph of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deficiency of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>terms of the item of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ready for retest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawal of the item of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beginning of the walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thumb drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upkeep done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last tap</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs your judgement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>untested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>satisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VoiceWords</name>
    <message>
        <source>Control station: standing by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control station: releasing now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control station: my panel shows it shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control station: my panel shows it open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it run
onto the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the
start word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work the release,
side one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work the release,
side two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Walkdown</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 unsat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ZoneProfile</name>
    <message>
        <source>zone %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::BandGauge</name>
    <message>
        <source>allowed %1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above the limit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Brief</name>
    <message>
        <source>Protective equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety shoes and gloves on, hearing protection where the alarm is near, a torch and a radio that was tried just now. Nothing loose that a leaf can catch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can crush whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep off. Nobody walks through a moving door. Most published crush deaths: powered watertight doors passed before fully open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People kept apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passengers, children, carts and cables are clear of every door of the release group and kept clear. A watch stands at each of these doors, on both sides. One group at a time, and the local test first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The release is announced. Channel, start word and stop word are agreed, and the control station has said them back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anyone, at any moment, with the stop word. The doors stop first, the questions come after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May stop the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how one speaks with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no door is released without it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>said by whoever sees danger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who may say the stop word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine control room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ch 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ch 8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ch 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ch 15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ch 17</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>release now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close the doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold the doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anyone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anyone of the team and the control station</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Read out to everyone who walks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source. Deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ The plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say first, in the plan, who records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not agreed yet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved yet. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save again ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Read out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read out: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>thumb&apos;s scatter at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thumb&apos;s scatter at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>delay that does not cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rate of the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place of the half-way mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as good as endless</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>standard uncertainty of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adds, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>U, at the coverage of k = 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::BulkheadPanel</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fire and smoke pass this boundary; the zones themselves stay apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule and %4 at most.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::CautionScreen</name>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, escape route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf masses are not in the register: take every leaf as able to crush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Ashore so heavy a leaf would have to take %1 s or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> A comparison, no rule for ships: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirm each before the release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it still holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm the stopwatch ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before it is released from the control station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 door will move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doors will move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1: %2 carry up to %3 at the fastest rate allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard, %1: still enough for a hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard, %2: keep everybody clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What these doors can do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What must be confirmed ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what will move</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceKeys</name>
    <message>
        <source>More ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceRow</name>
    <message>
        <source>side one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::CloseUp</name>
    <message>
        <source>Close-up: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::CutShort</name>
    <message>
        <source>A run at door %1 was cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release %1. On record: %2. Nothing of it is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Complete it by hand from my own watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds after “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or write the day like 2027-03-31.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice replaces neither the instruction by licensed people nor the rules of the flag Administration.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faults (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rows that differ</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again, or left to you after three. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chosen in the settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They hold for the walkdown under way and for later ones; reports print them. What the flag Administration asks for stands above them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DivisionLookup</name>
    <message>
        <source>Bulkhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone bulkhead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the deck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, its door %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No class: steel or equivalent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No value printed: ask the Administration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No table for such a division</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose both spaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, cell %2-%3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The approved plans and the flag Administration stand above these tables.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorDrawing</name>
    <message>
        <source>Drawing of a sliding door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of a single leaf door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of a double leaf door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of a double swing door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, alarm on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swings both ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, a soft block in its way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorHead</name>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorListView</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorPicker</name>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorScreen</name>
    <message>
        <source>1 Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 Release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 Function</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in what stands on a paper form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not tested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked here: %1 ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2 walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to release ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to function ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk is done ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>not asked because: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plate on door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the boundary asks for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked of door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closing force at the edge, by spring gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note about door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closer leaks oil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal torn at the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaf rubs on the sill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mat under the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>switch cover broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sign screwed to the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare part ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put right while we stood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>obstruction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why could door %1 not be tested?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why could this not be tested?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>space locked, no key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>space in use by passengers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cargo or stores in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>control station not manned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no engineer free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not safe to move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ship not upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What ± is made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Through the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a deficiency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>not tried: the published figures stay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few usable trials: the published figures stay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 guessed, not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 out of line, not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and stands with ± %3, where the published figures give ± %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your thumb on this tablet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the budget. Worth repeating every %1 months.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>How late is your thumb, and how steady?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Twenty times a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you do at a door.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own delay and scatter then stand in place of the published figures for every run that you time on this tablet. If you leave before the end nothing is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I hear it: begin ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the sound up as far as you hear it well over the ship.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This tablet has no loudspeaker that answers: what is heard keeps the published figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That one was missed: it comes again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the drill goes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Drawing of the leaf close by</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Unseal ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealed by the instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::FirstScreen</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire doors, one by one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks what applies to this ship and this kind of door, times the closing and grades it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A released door moves by itself. Nobody passes it; hands and feet stay off edges and pockets; a watch stands on both sides; anyone may stop the test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose rules stand above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan and local rules stand above this program, and so does the judgement of the people who use it. A grade is an aid, not a certificate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes by the texts of 2015. Later amendments were not checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Twice as large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text and keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented ferry with a walkdown under way. Nothing you do there matters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doors on the screen that move, fail and hide faults, and a debrief.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in my vessel&apos;s register (CSV)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every fault in it is named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpKey</name>
    <message>
        <source>What to look at: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpPanelView</name>
    <message>
        <source>Drawing. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bad: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeScreen</name>
    <message>
        <source>Which boundaries hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. The flag Administration, approved plans and local rules stand above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is graded by</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>What falls due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Periods of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration stand above them; no days of grace are printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan it ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet known: enter the day on which it ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumb drill of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last %1, worth repeating after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never done on this tablet: published figures stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day does the safety certificate end?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this walkdown?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 not done. What was not tried stays untested in the report.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is not saved yet. Save it first: then the walkdown can end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A walkdown that has ended is not taken up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on walking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walkdowns of this vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other vessel is on this tablet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a register (CSV)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, deck %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walkdown shown does not cover it. A walkdown planned with it can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemPanel</name>
    <message>
        <source>While it does not hold, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: ready for retest, says %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: retest passed, by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: retest FAILED, by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>action %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who sees to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this door did before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for retest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not withdrawn after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that are not in order become items when they are written up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the open items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong, and what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say who you are before you work the items.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>How grave is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What port State control gave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground for detention? A field of its own: regimes differ in which code carries it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By which day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in 3 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in one month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in three months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is done while the door is out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire patrol, every 30 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire patrol, every hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept shut and marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept shut, other way out marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watch posted at the door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone kept empty of people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who sees to it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closer adjusted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closer replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latch adjusted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latch replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hinges tightened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>magnet replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wiring mended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rails cleaned and greased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>path and pocket cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hook or wedge taken away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaf replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who did it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who rectifies cannot retest: the item closes when somebody else finds it in order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written up twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>written up by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the door was taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the approved plan was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the Administration accepts it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the part that was changed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Keypad</name>
    <message>
        <source>Decimal point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Legend</name>
    <message>
        <source>to judge</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::LiveScene</name>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ALARM</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::LongJob</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkKey</name>
    <message>
        <source>Mark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkRow</name>
    <message>
        <source>no such event</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::NotSavedBanner</name>
    <message>
        <source>Save again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemsCard</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oldest %1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet: no door was tested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None: no door failed, waits for a judgement, or is to be timed again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the walk ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PartKeys</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doors of this boundary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photograph, note, not tested, paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PersonForm</name>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the name, then touch what this person is aboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surveyor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second surveyor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>master</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chief engineer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety officer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fire patrol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>company inspector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trainee</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhotographSheets</name>
    <message>
        <source>Photograph of door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the photograph show?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhrasePicker</name>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phrases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use own words</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PictureView</name>
    <message>
        <source>The picture is not on this tablet: take it over from the one it was taken with.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> %1 less than in the order of their numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 sure that %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who walks along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the brief ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quarterly set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One deck…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One zone…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Failed last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To retest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or a sample drawn by lot, and what it proves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No door is in this scope.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say first who records.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brief before the doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanSheets</name>
    <message>
        <source>Add a person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which deck?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which zone?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of these %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by lot: %2 sure that at most %3 are defective</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a sample says holds if none of it fails. The doors are shared out over zones and kinds and drawn by lot; a door chosen by anybody would prove nothing about the rest. A sample never takes the place of a test that the flag or the rules ask of every door.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeCover</name>
    <message>
        <source>PRACTICE</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeFrame</name>
    <message>
        <source>PRACTICE: these doors are not there, nothing here is a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeOffer</name>
    <message>
        <source>From practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeScreen</name>
    <message>
        <source>No exercise is on this tablet. Take one in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doors that are not there; nothing becomes a record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise taken in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressBar</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressCard</name>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has practised on this tablet yet. Each exercise that is finished leaves its score here, and how late the thumb was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One exercise. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressPlot</name>
    <message>
        <source>%1, exam: %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 %2, spread %3 ms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an exam asks %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumb late, ms:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Readings</name>
    <message>
        <source>s</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReportRow</name>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewScreen</name>
    <message>
        <source>Compare ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open yet. %1 rows are not in order and not written up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works the items: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write up (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan retest (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed too (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who, papers, hand over ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ Open items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewSheets</name>
    <message>
        <source>New: not in order now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worse than before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone: in order again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no two walkdowns yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2: %3, before %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that both walks tried has changed by more than the uncertainty explains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said differently: both stay on record, one is to stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody said different things of the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which one stands? The later one shows until you decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 %3:
%4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why does it stand?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked at again together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the other was a slip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the better light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the better instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over between tablets and the bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give everything to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>facts, photographs and arrangement, signed by this device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it sealed for one device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only that device can open it; its key is asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in another device&apos;s file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is looked at first; nothing here is ever changed by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be given to whoever seals a file for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file lies at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For which device is it sealed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its key: 64 digits and letters a to f, as that device shows them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key of the receiving device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal and give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this file brings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that is not here already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody here knows this device yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fingerprint is right: accept it and take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DOES NOT HOLD: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 facts, unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 came later and are not under it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers, as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the master: what is open, what it does, what is done until then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for the crew: by who sees to it, with boxes to tick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record of door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one page: what it is, how it did, what was mended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the walkdown shown, every door and every row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the tablet asks, for a day without it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A walkdown is signed when it has ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has signed it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A signature covers what is recorded of this walkdown now, under the key of this device. It is no qualified electronic signature: sign the paper as well where your Administration asks for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has signed it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign as %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who works the items?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that are not in order and not written up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (found again)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it up in these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write up all %1 in these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What door %1 did before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walkdowns of this door, the latest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, closing %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its closing through the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photographs of door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is being put into a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file was made, and nothing was handed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is being looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is being taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken in. Everything here is as it was before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no walkdown yet: until then only the blank form can be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No walkdown recorded anything of this door yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows before these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::RunResult</name>
    <message>
        <source>closing time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closing rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm before movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm after shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the door ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>STOPPED. Say “%1” now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On record, and never counted as a measurement. Why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>someone in the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>object in the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong door moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watch left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door did not move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>channel lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touched too late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>touched too early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaf was held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>view was blocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ship rolled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong release</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneScreen</name>
    <message>
        <source>Other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ Whole door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push the leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it, let go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not shut. Let it shut first, with the stopwatch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You push it from the other side, hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You open it from side two and let go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You open it from side one and let go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody and nothing is in the way now.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneView</name>
    <message>
        <source>Drawing of a door</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing of door %1, %2, from side %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The leaf moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The leaf is home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The leaf stands open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The leaf stands part open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody is in the opening</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ScoreCard</name>
    <message>
        <source>Half for the rows that are right, half for the faults: found of those there and imagined. Ten points less for each person endangered and each caution answered untruly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Score: %1 percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed: %1 % are asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not passed: %1 % are asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 rows graded right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 person endangered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 people endangered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 caution answered untruly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cautions answered untruly</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SealedForm</name>
    <message>
        <source>The instructor sealed this exercise. The instructor&apos;s word opens it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The instructor&apos;s word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night keeps the eyes used to a dark bridge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of words and keys; what no longer fits comes on a page of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>150 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>200 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger keys, further apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calm: drawn leaves move in quarter steps instead of gliding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tick and a shake, where this machine has them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick and shake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits stay in the unit of their text, beside the figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times and limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say first who records, in a plan: a thumb is somebody&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a figure passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules of this vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The catalogue alone; no flag&apos;s own rules over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules of %1 stand over the catalogue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a flag&apos;s rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catalogue alone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Sheet</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SheetPages</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::SideKeys</name>
    <message>
        <source>Stop the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This run is spoiled: run again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slips ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the marks out of turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show take back and spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back
last mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoiled,
run again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::StepRows</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the plate on the door read?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What class does the boundary ask for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fire tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time it ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees: over 1 degree a time is advice only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::StopwatchScreen</name>
    <message>
        <source>s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>release %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · cautions confirmed by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1 · run %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spoiled, no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mark yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm before movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (advice only)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked: %1. Next: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::TopBar</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: nothing to take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light: %1. Press for the next</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::TrendChart</name>
    <message>
        <source>One time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 so far, too few to say what comes: five over at least a year are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time beyond %1 is to be expected now: the 95 % interval reaches it already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have it seen to before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limit is reached by %1, and these times do not reach further.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::TypedRun</name>
    <message>
        <source>Were the cautions ticked on the paper?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not all: enter the run without them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the paper: release %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from “%1” to “%2”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>What is asked of this door, worst first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return to be told why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselCard</name>
    <message>
        <source>This vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No walkdown yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What falls due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 walkdowns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 walkdowns ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkdownCard</name>
    <message>
        <source>All doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to settle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unsat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walkdown under way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No walkdown under way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2. Begun %3 at %4 by %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last one: %1, %2. Ended %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin a walkdown ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All doors done: end the walkdown ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry on at %1 ›</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This register has no doors yet, so there is nothing to walk. Take in a register that lists them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was tested yet with this register. A walkdown begins with a plan: who, which doors, in which order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a register ›</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>by the approved drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>agreed with the class surveyor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as built and accepted before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn, still does its work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not safe to leave so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You decide. First the reason:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (k = 2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, set by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On an inclined ship</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would settle it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much hangs on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::Window</name>
    <message>
        <source>Not armed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ship (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PRACTICE · %1 · Latchround</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this exercise?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tried counts as not found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records, papers and the texts of the rules stay in English, so that every office reads the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words change when the exercise has ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose thumb?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has done no thumb drill on this tablet: published figures stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating since %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating after %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doors, %2 zones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Register of a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules of a flag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 facts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 walkdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 walkdowns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 issue of the arrangement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 issues of the arrangement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 door that was not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doors that were not known here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 difference to decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 differences to decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This machine has no program that shows PDF files. The file lies at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handover file of another device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise of an instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkhead %1 does not hold: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bulkhead %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zone profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>further away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole ship</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This register has no doors yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>door %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deck %1, other doors: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which door?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
