<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Made by machine. To be checked by a speaker who knows fire doors aboard ship; until then every translation stays unfinished. -->
<TS version="2.1" language="id" sourcelanguage="en">
<context>
    <name>Boundaries</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 dan %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation type="unfinished">%1 lagi</translation>
    </message>
    <message>
        <source>%1 open at deck %2 (%3)</source>
        <translation type="unfinished">%1 terbuka di geladak %2 (%3)</translation>
    </message>
    <message>
        <source>%1 open at decks %2 (%3)</source>
        <translation type="unfinished">%1 terbuka di geladak %2 (%3)</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">pintu %1</translation>
    </message>
    <message>
        <source>doors %1</source>
        <translation type="unfinished">pintu %1</translation>
    </message>
    <message>
        <source>mending door %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">perbaikan pintu %1 di sekat %2 memulihkan paling banyak</translation>
    </message>
    <message>
        <source>mending doors %1 in bulkhead %2 restores most</source>
        <translation type="unfinished">perbaikan pintu %1 di sekat %2 memulihkan paling banyak</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkhead %1</source>
        <translation type="unfinished">belum terbukti bertahan: sekat %1</translation>
    </message>
    <message>
        <source>not shown to hold yet: bulkheads %1</source>
        <translation type="unfinished">belum terbukti bertahan: sekat %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, %3 terhadap %4, maksimal %5%6</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4, at most %5%6</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, %3 terhadap %4, maksimal %5%6</translation>
    </message>
    <message>
        <source>, %1 against %2</source>
        <translation type="unfinished">, %1 terhadap %2</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, %3 terhadap %4%5</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 against %4%5</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, %3 terhadap %4%5</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Lamps of the fire door control panels are tried</source>
        <translation type="unfinished">Lampu panel kendali pintu kebakaran dicoba</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is worked locally</source>
        <translation type="unfinished">Setiap pintu kebakaran di sekat zona vertikal utama dijalankan setempat</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tried for proper release</source>
        <translation type="unfinished">Pintu kebakaran yang dikendalikan dari jauh dicoba pelepasannya</translation>
    </message>
    <message>
        <source>Plate present and legible, and it reads as the register says</source>
        <translation type="unfinished">Pelat ada dan terbaca, dan isinya sama dengan register</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, scoured, or another class than the register&apos;s. No SOLAS paragraph was found that asks for a plate: where it is missing ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Baca di pintunya sendiri. Buruk: tertutup cat, tergerus, atau kelas lain daripada di register. Tidak ditemukan paragraf SOLAS yang meminta pelat: bila tidak ada, minta sertifikatnya; ini bukan kegagalan.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip</source>
        <translation type="unfinished">Ambang ada di tempatnya, tidak membuat tersandung</translation>
    </message>
    <message>
        <source>Sill in place, no trip?</source>
        <translation type="unfinished">Ambang ada, tidak membuat tersandung?</translation>
    </message>
    <message>
        <source>Along the whole sill, with a lamp and a foot. Good: whole, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">Sepanjang ambang, dengan lampu dan kaki. Baik: utuh, rata, dan kukuh. Buruk: ada bagian longgar, bengkok, atau hilang yang dapat membuat kaki tersangkut.</translation>
    </message>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Lintasan bebas di kedua sisi</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">Lintasan bebas, kedua sisi?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: bare. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Seluruh geladak yang dilalui daun, di kedua sisi. Baik: kosong. Buruk: barang, troli, perabot, keset, sampah.</translation>
    </message>
    <message>
        <source>Pocket clear of dirt, litter and stores</source>
        <translation type="unfinished">Rongga bebas dari kotoran, sampah, dan barang</translation>
    </message>
    <message>
        <source>Pocket clear of dirt and litter?</source>
        <translation type="unfinished">Rongga bebas kotoran dan sampah?</translation>
    </message>
    <message>
        <source>Look into the pocket with a lamp, never with a hand while the door can move. Good: bare to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Lihat ke dalam rongga dengan lampu, jangan pernah dengan tangan selagi pintu dapat bergerak. Baik: kosong sampai ujung. Buruk: kotoran, sampah, barang.</translation>
    </message>
    <message>
        <source>Nothing holds it: no wedge, rope or furniture</source>
        <translation type="unfinished">Tidak ada yang menahannya: ganjal, tali, atau perabot</translation>
    </message>
    <message>
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">Bebas ganjal, tali, dan perabot?</translation>
    </message>
    <message>
        <source>Round the foot, the handle and the edge of the open leaf. Good: its own hold-back alone holds it. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">Di sekitar kaki, gagang, dan tepi daun yang terbuka. Baik: hanya penahannya sendiri yang menahan. Buruk: ganjal, tali, perabot.</translation>
    </message>
    <message>
        <source>Seals whole and not painted over</source>
        <translation type="unfinished">Paking utuh dan tidak tertutup cat</translation>
    </message>
    <message>
        <source>Seals whole, unpainted?</source>
        <translation type="unfinished">Paking utuh, tanpa cat?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece gone.</source>
        <translation type="unfinished">Di sekeliling daun. Baik: strip rata dan tidak putus. Buruk: tertutup cat, robek, atau ada bagian hilang.</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped</source>
        <translation type="unfinished">Engsel kencang, daun tidak turun</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped?</source>
        <translation type="unfinished">Engsel kencang, daun tidak turun?</translation>
    </message>
    <message>
        <source>Stand back and look at the gap over the leaf. Good: even, screws home. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Mundur dan lihat celah di atas daun. Baik: rata, sekrup masuk penuh. Buruk: lebih lebar di satu ujung, bekas gesekan mengilap di ambang.</translation>
    </message>
    <message>
        <source>Closer not leaking, its arm connected</source>
        <translation type="unfinished">Penutup otomatis tidak bocor, lengannya tersambung</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">Penutup otomatis kering, lengan tersambung?</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, its arm fast at both ends. Bad: oil on the body or the leaf, the arm loose or hanging.</source>
        <translation type="unfinished">Di bagian atas daun. Baik: kering, lengan kukuh di kedua ujung. Buruk: oli pada badan atau daun, lengan longgar atau menggantung.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and whole</source>
        <translation type="unfinished">Rel, rol, dan pemandu bersih dan utuh</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">Rel, rol, dan pemandu bersih?</translation>
    </message>
    <message>
        <source>The rail at the head and the guide at the foot, end to end. Good: bare, every roller on it. Bad: dirt, a dent, a roller off. Hands out while it can move.</source>
        <translation type="unfinished">Rel di atas dan pemandu di bawah, dari ujung ke ujung. Baik: kosong, semua rol di tempatnya. Buruk: kotoran, penyok, rol lepas. Jauhkan tangan selagi pintu dapat bergerak.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Daun, kusen, dan kaca utuh: tanpa lubang, perlengkapan tak disetujui, korosi, atau insulasi longgar</translation>
    </message>
    <message>
        <source>Leaf, frame and glass whole?</source>
        <translation type="unfinished">Daun, kusen, dan kaca utuh?</translation>
    </message>
    <message>
        <source>Both faces, edges, frame and glass. Bad: drilled holes, cables, signs screwed on, rust, loose insulation, a crack.</source>
        <translation type="unfinished">Kedua muka, tepi, kusen, dan kaca. Buruk: lubang bor, kabel, papan yang disekrup, karat, insulasi longgar, retak.</translation>
    </message>
    <message>
        <source>Moves smoothly over its whole travel</source>
        <translation type="unfinished">Bergerak mulus di seluruh lintasannya</translation>
    </message>
    <message>
        <source>Smooth over its whole travel?</source>
        <translation type="unfinished">Mulus di seluruh lintasannya?</translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it goes evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Amati daun sepanjang jalannya. Baik: bergerak rata sampai akhir. Buruk: tersendat, melompat, atau membanting di akhir.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other is home</source>
        <translation type="unfinished">Pengatur urutan menahan satu daun sampai daun lain tertutup rapat</translation>
    </message>
    <message>
        <source>Do the leaves close in order?</source>
        <translation type="unfinished">Apakah daun menutup berurutan?</translation>
    </message>
    <message>
        <source>Open both leaves and let them go together. Good: one waits until the other is home. Bad: its lip is caught outside. Fingers off the meeting edges.</source>
        <translation type="unfinished">Buka kedua daun dan lepaskan bersama. Baik: satu menunggu sampai yang lain tertutup rapat. Buruk: bibirnya tersangkut di luar. Jauhkan jari dari tepi temu.</translation>
    </message>
    <message>
        <source>Latches fully, unaided, and stays latched when pushed</source>
        <translation type="unfinished">Terkancing penuh, tanpa bantuan, dan tetap terkancing bila didorong</translation>
    </message>
    <message>
        <source>Latches unaided, stays latched when pushed?</source>
        <translation type="unfinished">Terkancing sendiri, tetap terkancing bila didorong?</translation>
    </message>
    <message>
        <source>When it has shut and stands still, push it. Good: it holds. Bad: it gives way, as it would to the pressure of a fire.</source>
        <translation type="unfinished">Setelah tertutup dan diam, dorong. Baik: bertahan. Buruk: terbuka, seperti akan terjadi oleh tekanan kebakaran.</translation>
    </message>
    <message>
        <source>Safety edge stops the leaf and lets it re-open</source>
        <translation type="unfinished">Tepi pengaman menghentikan daun dan membiarkannya membuka lagi</translation>
    </message>
    <message>
        <source>Does the safety edge stop and re-open it?</source>
        <translation type="unfinished">Apakah tepi pengaman menghentikan dan membukanya lagi?</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Good: at the touch the leaf stops and goes back. Bad: it pushes on.</source>
        <translation type="unfinished">Tahan balok lunak di lintasan, jangan pernah tangan atau kaki. Baik: saat tersentuh, daun berhenti dan mundur. Buruk: terus mendorong.</translation>
    </message>
    <message>
        <source>Door, frame and securing means resist fire like the division they stand in</source>
        <translation type="unfinished">Pintu, kusen, dan alat pengaman menahan api seperti divisi tempatnya terpasang</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan kelas pembatas di sekelilingnya. Baik: pintu minimal sama kuat. Pintu kedap air tidak perlu insulasi (9.4.1.1.3).</translation>
    </message>
    <message>
        <source>One person can open and close it, from each side</source>
        <translation type="unfinished">Satu orang dapat membuka dan menutupnya, dari setiap sisi</translation>
    </message>
    <message>
        <source>Can one person open and close it?</source>
        <translation type="unfinished">Dapatkah satu orang membuka dan menutupnya?</translation>
    </message>
    <message>
        <source>Open and shut it yourself, unaided, from this side; then go round and do the same. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Buka dan tutup sendiri, tanpa bantuan, dari sisi ini; lalu pindah ke sisi lain dan lakukan hal yang sama. Buruk: perlu dua orang atau alat.</translation>
    </message>
    <message>
        <source>Closes by itself, also against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Menutup sendiri, juga melawan kemiringan 3.5 derajat</translation>
    </message>
    <message>
        <source>Does it close by itself?</source>
        <translation type="unfinished">Apakah menutup sendiri?</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali tertutup rapat. Buruk: tinggal renggang. Bagian 3.5 derajat tidak terlihat pada kapal yang tegak.</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">Pintu engsel menutup 10 sampai 40 s setelah gerak pertamanya, kapal tegak</translation>
    </message>
    <message>
        <source>Mark the first movement of the leaf and the moment it is fully shut; on a double door, when the second leaf is home. Stand clear of the leaf.</source>
        <translation type="unfinished">Tandai gerak pertama daun dan saat tertutup penuh; pada pintu ganda, saat daun kedua tertutup rapat. Berdirilah jauh dari daun.</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">Pintu geser menutup kira-kira seragam 0.1 sampai 0.2 m/s, kapal tegak</translation>
    </message>
    <message>
        <source>Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate. Keep hands off the edge and out of the pocket.</source>
        <translation type="unfinished">Tandai gerak pertama dan saat tertutup: bukaan bersih dibagi waktu itu adalah lajunya. Jauhkan tangan dari tepi dan dari rongga.</translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished">Dapat dilepas dari stasiun kendali pusat yang terus dijaga</translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished">Apakah stasiun kendali melepaskannya?</translation>
    </message>
    <message>
        <source>The control station releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">Stasiun kendali melepaskan pintu atau grupnya. Baik: terlepas dan menutup. Buruk: tetap terbuka. Penjaga di setiap pintu grup, kedua sisi.</translation>
    </message>
    <message>
        <source>Can be released at the door, from both sides</source>
        <translation type="unfinished">Dapat dilepas di pintu, dari kedua sisi</translation>
    </message>
    <message>
        <source>Does the switch on this side release it?</source>
        <translation type="unfinished">Apakah sakelar di sisi ini melepaskannya?</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door, one side and then the other. Good: each lets the door go. Bad: one side does nothing.</source>
        <translation type="unfinished">Gerakkan sakelar atau gagang di pintu, satu sisi lalu sisi lain. Baik: masing-masing melepaskan pintu. Buruk: satu sisi tidak berfungsi.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function: the system does not reset itself</source>
        <translation type="unfinished">Sakelar pelepas punya fungsi on-off: sistem tidak mengatur ulang sendiri</translation>
    </message>
    <message>
        <source>Does the switch stay as it is put, so that the system does not reset itself?</source>
        <translation type="unfinished">Apakah sakelar tetap pada posisinya, sehingga sistem tidak mengatur ulang sendiri?</translation>
    </message>
    <message>
        <source>Release, take the hand off and wait. Good: the door is not held again until somebody puts the switch back. Bad: it is held again by itself.</source>
        <translation type="unfinished">Lepaskan, angkat tangan, dan tunggu. Baik: pintu tidak ditahan lagi sampai orang mengembalikan sakelar. Buruk: ditahan lagi dengan sendirinya.</translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished">Tidak ada kait penahan yang tidak dapat dilepas stasiun kendali</translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished">Bebas dari kait yang tidak dapat dilepas stasiun kendali?</translation>
    </message>
    <message>
        <source>Look behind the open door, at wall, leaf and deck. Bad: hooks, cabin hooks, eye plates with marks of use.</source>
        <translation type="unfinished">Lihat di belakang pintu yang terbuka: dinding, daun, dan geladak. Buruk: kait, kait kabin, pelat mata dengan bekas pemakaian.</translation>
    </message>
    <message>
        <source>After remote closing it opens again locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Setelah ditutup dari jauh, dapat dibuka lagi setempat dari kedua sisi, lalu menutup sendiri</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">Dapat dibuka dari sisi ini setelah ditutup dari jauh, lalu menutup sendiri?</translation>
    </message>
    <message>
        <source>While the remote release still stands, open it from this side and let go. Good: it opens, then shuts by itself. Keep clear of the leaf as it comes back.</source>
        <translation type="unfinished">Selagi pelepasan jarak jauh masih berlaku, buka dari sisi ini dan lepaskan. Baik: terbuka, lalu menutup sendiri. Jauhi daun ketika kembali.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">Panel stasiun kendali menunjukkan apakah pintu tertutup</translation>
    </message>
    <message>
        <source>Is the panel&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">Apakah penunjukan panel benar untuk terbuka, renggang, dan tertutup?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: true each time. Bad: it says shut while the door stands ajar.</source>
        <translation type="unfinished">Tanyakan kepada stasiun kendali apa yang ditunjukkan panelnya saat pintu terbuka, renggang, dan tertutup. Baik: benar setiap kali. Buruk: panel menyebut tertutup padahal pintu renggang.</translation>
    </message>
    <message>
        <source>Closes by itself when the control system or central power fails</source>
        <translation type="unfinished">Menutup sendiri bila sistem kendali atau daya pusat gagal</translation>
    </message>
    <message>
        <source>Closes by itself when its control or power fails?</source>
        <translation type="unfinished">Menutup sendiri bila kendali atau dayanya gagal?</translation>
    </message>
    <message>
        <source>Agree it with the engineers and clear people away; then the supply of this door&apos;s control is cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Sepakati dengan masinis dan jauhkan orang; lalu pasokan kendali pintu ini diputus. Baik: menutup sendiri. Buruk: tetap terbuka.</translation>
    </message>
    <message>
        <source>Local accumulators work the door at least ten times fully open and shut after the power has failed</source>
        <translation type="unfinished">Akumulator setempat menjalankan pintu minimal sepuluh kali buka-tutup penuh setelah daya gagal</translation>
    </message>
    <message>
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">Sepuluh siklus penuh dari akumulator setempat?</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full openings and closings without the main supply. Trying it runs the accumulator down: agree it with the control station first.</source>
        <translation type="unfinished">Minta catatan terakhir sepuluh kali buka-tutup penuh tanpa pasokan utama. Mencobanya menguras akumulator: sepakati dahulu dengan stasiun kendali.</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">Kegagalan di satu pintu membiarkan pintu lain tetap bekerja</translation>
    </message>
    <message>
        <source>Do the other doors go on working when this one fails?</source>
        <translation type="unfinished">Apakah pintu lain tetap bekerja bila pintu ini gagal?</translation>
    </message>
    <message>
        <source>See the drawing of the control system, or isolate this door while another is worked. Good: the others move as before. Bad: they stand still too.</source>
        <translation type="unfinished">Lihat gambar sistem kendali, atau isolasi pintu ini sementara pintu lain dijalankan. Baik: yang lain bergerak seperti semula. Buruk: semuanya ikut diam.</translation>
    </message>
    <message>
        <source>Alarm sounds 5 to 10 s between release and first movement</source>
        <translation type="unfinished">Alarm berbunyi 5 sampai 10 s antara pelepasan dan gerak pertama</translation>
    </message>
    <message>
        <source>Released from the control station, from the first sound of the alarm to the first movement of the leaf. Bad: the leaf moves at once, or much later.</source>
        <translation type="unfinished">Dilepas dari stasiun kendali, dari bunyi alarm pertama sampai gerak pertama daun. Buruk: daun langsung bergerak, atau jauh lebih lambat.</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">Alarm berbunyi sampai pintu tertutup sepenuhnya</translation>
    </message>
    <message>
        <source>Listen until the leaf is home. Good: the alarm still sounds when the door is fully shut. Bad: silence while the leaf still moves.</source>
        <translation type="unfinished">Dengarkan sampai daun tertutup rapat. Baik: alarm masih berbunyi ketika pintu sudah tertutup penuh. Buruk: senyap selagi daun masih bergerak.</translation>
    </message>
    <message>
        <source>On contact it re-opens no more than 1 m from the point of contact</source>
        <translation type="unfinished">Saat kontak, membuka lagi tidak lebih dari 1 m dari titik kontak</translation>
    </message>
    <message>
        <source>How far it re-opens from the point of contact</source>
        <translation type="unfinished">Seberapa jauh membuka lagi dari titik kontak</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after going back.</source>
        <translation type="unfinished">Tahan balok lunak di lintasan, jangan pernah tangan atau kaki. Ukur dari titik kontak sampai tempat daun berhenti setelah mundur.</translation>
    </message>
    <message>
        <source>The latch engages by the release system&apos;s own operation</source>
        <translation type="unfinished">Kancing masuk oleh kerja sistem pelepasan itu sendiri</translation>
    </message>
    <message>
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">Apakah kancing masuk sendiri setelah pelepasan?</translation>
    </message>
    <message>
        <source>After release, when both leaves stand still, push at the meeting edge. Good: neither opens. Bad: the bolt lies short of its strike.</source>
        <translation type="unfinished">Setelah pelepasan, ketika kedua daun diam, dorong di tepi temu. Baik: tidak ada yang terbuka. Buruk: lidah tidak sampai ke pelat kancing.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjusting</source>
        <translation type="unfinished">Komponen kendali setempat dapat dijangkau untuk perawatan dan penyetelan</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">Dapatkah komponen kendali setempat dijangkau?</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens and a hand with a tool gets in. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Cari sakelar, katup, atau kotak kendali pintu itu. Baik: tutupnya terbuka dan tangan dengan alat dapat masuk. Buruk: terbangun di dalam, terhalang, atau tertutup cat.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 degrees C, and to keep the door shut beyond</source>
        <translation type="unfinished">Sistem kendali disetujui bekerja dalam kebakaran: 60 min pada 200 derajat C, dan menjaga pintu tertutup di atasnya</translation>
    </message>
    <message>
        <source>Is there an approval paper of the control system?</source>
        <translation type="unfinished">Adakah dokumen persetujuan sistem kendali?</translation>
    </message>
    <message>
        <source>A check of papers: works at 200 degrees C or more for 60 min or more, leaves other doors&apos; supply whole, isolates itself above that and keeps the door shut up to 945 degrees C or more.</source>
        <translation type="unfinished">Pemeriksaan dokumen: bekerja pada 200 derajat C atau lebih selama 60 min atau lebih, tidak mengganggu pasokan pintu lain, mengisolasi diri di atas itu, dan menjaga pintu tertutup sampai 945 derajat C atau lebih.</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Lubang selang yang menutup sendiri, bersih 150 mm persegi dengan pintu tertutup, setahan api pintunya</translation>
    </message>
    <message>
        <source>Hose port clear 150 mm square, and does it shut by itself?</source>
        <translation type="unfinished">Lubang selang bersih 150 mm persegi, dan menutup sendiri?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 mm square clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Pintu tertutup, tepi bawah, di seberang engsel; pada pintu geser yang terdekat ke bukaan. Angkat penutupnya dan lepaskan. Baik: bersih 150 mm persegi, dan penutup jatuh menutup. Buruk: tetap terangkat.</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 12 mm</source>
        <translation type="unfinished">Celah di bawah pintu yang disetujui tanpa ambang di kusennya tidak lebih dari 12 mm</translation>
    </message>
    <message>
        <source>Gap under the shut door</source>
        <translation type="unfinished">Celah di bawah pintu tertutup</translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a feeler or a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">Tempat terlebar di bawah pintu yang tertutup, dengan kaliber celah atau mistar. Jangan letakkan jari di bawah daun yang dapat bergerak.</translation>
    </message>
    <message>
        <source>Non-combustible sill; floor covering does not run under the closed door</source>
        <translation type="unfinished">Ambang tak mudah terbakar; pelapis lantai tidak menerus di bawah pintu tertutup</translation>
    </message>
    <message>
        <source>Sill non-combustible, floor covering stops at it?</source>
        <translation type="unfinished">Ambang tak mudah terbakar, pelapis lantai berhenti di situ?</translation>
    </message>
    <message>
        <source>At the foot of the shut door. Good: a sill that cannot burn, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Di kaki pintu yang tertutup. Baik: ambang yang tidak dapat terbakar, dan karpet atau vinil berhenti di situ. Buruk: pelapis menerus di bawah daun.</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">Celah di bawah pintu yang disetujui tanpa ambang di kusennya tidak lebih dari 25 mm</translation>
    </message>
    <message>
        <source>The widest place under the shut door, with a rule. No fingers under a leaf that can move.</source>
        <translation type="unfinished">Tempat terlebar di bawah pintu yang tertutup, dengan mistar. Jangan letakkan jari di bawah daun yang dapat bergerak.</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m2 net, with a non-combustible grille</source>
        <translation type="unfinished">Lubang ventilasi di pintu atau di bawahnya tidak lebih dari 0.05 m2 bersih, dengan kisi tak mudah terbakar</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Lubang ventilasi di pintu atau di bawahnya, bersih</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn.</source>
        <translation type="unfinished">Kisi pada daun atau potongan di bawahnya. Hitung hanya luas terbuka di antara bilah; 0 bila tidak ada. Kisi harus dari jenis yang tidak dapat terbakar.</translation>
    </message>
    <message>
        <source>Cabin door closes by itself and has no hold-back hook</source>
        <translation type="unfinished">Pintu kabin menutup sendiri dan tidak punya kait penahan</translation>
    </message>
    <message>
        <source>Closes by itself, no hook?</source>
        <translation type="unfinished">Menutup sendiri, tanpa kait?</translation>
    </message>
    <message>
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops half way, or there is a hook.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh. Baik: menutup sendiri, dan tidak ada apa pun di belakangnya yang dapat menahannya. Buruk: berhenti di tengah, atau ada kait.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead A-0</source>
        <translation type="unfinished">Pintu di sekat A-60, A-30, atau A-15 memenuhi A-15; di sekat A-0 memenuhi A-0</translation>
    </message>
    <message>
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Menutup sendiri melawan kemiringan 3.5 derajat</translation>
    </message>
    <message>
        <source>Either leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Setiap daun pintu ganda menutup dan terkancing sendiri</translation>
    </message>
    <message>
        <source>Does either leaf close and latch on its own?</source>
        <translation type="unfinished">Apakah setiap daun menutup dan terkancing sendiri?</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Buka satu daun saja dan lepaskan; lalu yang lain. Baik: masing-masing menutup dan terkancing sendiri. Buruk: yang satu memerlukan yang lain, atau tidak terkancing.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in order</source>
        <translation type="unfinished">Bila satu daun harus menutup dahulu, ada alat yang membuatnya menutup berurutan</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Celah di antara daun ganda yang bekerja sendiri-sendiri, dan di atas dan sisi pintu ayun dua arah, maksimal 3.2 mm</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Kedua daun tertutup: kaliber celah di antaranya; pada pintu ayun dua arah juga di atas dan sisi. 1/8 inci di tempat terlebar.</translation>
    </message>
    <message>
        <source>Stop or overlap at the sides and top at least 12.7 mm</source>
        <translation type="unfinished">Sponing atau tumpang tindih di sisi dan atas minimal 12.7 mm</translation>
    </message>
    <message>
        <source>No vent grille or louver in an A-class door</source>
        <translation type="unfinished">Tidak ada kisi ventilasi atau jalusi pada pintu kelas A</translation>
    </message>
    <message>
        <source>Free of grilles and louvers?</source>
        <translation type="unfinished">Bebas kisi dan jalusi?</translation>
    </message>
    <message>
        <source>Look over the whole leaf, low down as well. Good: closed all over. Bad: a grille or louver, anywhere in it.</source>
        <translation type="unfinished">Periksa seluruh daun, juga bagian bawah. Baik: tertutup seluruhnya. Buruk: ada kisi atau jalusi di mana pun.</translation>
    </message>
    <message>
        <source>One leaf at most 1200 mm wide</source>
        <translation type="unfinished">Satu daun paling lebar 1200 mm</translation>
    </message>
    <message>
        <source>One leaf, from the hinge side to the free edge. 48 inches.</source>
        <translation type="unfinished">Satu daun, dari sisi engsel ke tepi bebas. 48 inci.</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, self-closing steel cover</source>
        <translation type="unfinished">Lubang selang, bila ada: sudut bawah di seberang engsel, sekitar 152 mm persegi, penutup baja yang menutup sendiri</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 mm square, cover shuts by itself?</source>
        <translation type="unfinished">Lubang selang di sudut bawah di seberang engsel, sekitar 152 mm persegi, penutup menutup sendiri?</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Pintu di geladak, hanya untuk awak, menutup dalam 5 sampai 10 s</translation>
    </message>
    <message>
        <source>Time it from the first movement to fully shut. Nobody stands on the stair, and no hand or foot is at its edge.</source>
        <translation type="unfinished">Ukur waktunya dari gerak pertama sampai tertutup penuh. Tidak ada yang berdiri di tangga, dan tidak ada tangan atau kaki di tepinya.</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Gaya untuk melepas kancing pintu di geladak: maksimal 17.8 N</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it lets go. The greatest force counts.</source>
        <translation type="unfinished">Kaitkan neraca pegas pada kancing dan tarik sampai terlepas. Gaya terbesar yang dihitung.</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Gaya untuk mulai menggerakkan pintu di geladak: maksimal 44.5 N</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Kancing bebas: kaitkan neraca pegas di tepi bebas dan tarik sampai pintu tepat bergerak. Gaya terbesar yang dihitung.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Gaya untuk membuka pintu di geladak selebar tangga: maksimal 17.8 N</translation>
    </message>
    <message>
        <source>Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts. Nobody stands under it.</source>
        <translation type="unfinished">Tarik dengan neraca pegas sampai terbuka selebar tangga. Gaya terbesar di sepanjang jalan yang dihitung. Tidak ada yang berdiri di bawahnya.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m2</source>
        <translation type="unfinished">Kaca kawat pada pintu kelas A maksimal 0.065 m2</translation>
    </message>
    <message>
        <source>The fire door release system is as SOLAS 74 II-2/30.4.3 has it</source>
        <translation type="unfinished">Sistem pelepasan pintu kebakaran sesuai SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">Apakah sistem pelepasan disetujui menurut SOLAS 74 II-2/30.4.3?</translation>
    </message>
    <message>
        <source>A check of papers, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Pemeriksaan dokumen, bila sistem demikian terpasang: persetujuan yang menyebut SOLAS 74 II-2/30.4.3.</translation>
    </message>
    <message>
        <source>Control stations</source>
        <translation type="unfinished">Stasiun kendali</translation>
    </message>
    <message>
        <source>room with emergency power or lighting source</source>
        <translation type="unfinished">ruang dengan sumber tenaga atau penerangan darurat</translation>
    </message>
    <message>
        <source>bridge and chart room</source>
        <translation type="unfinished">anjungan dan ruang peta</translation>
    </message>
    <message>
        <source>radio room</source>
        <translation type="unfinished">ruang radio</translation>
    </message>
    <message>
        <source>fire control room</source>
        <translation type="unfinished">ruang kendali kebakaran</translation>
    </message>
    <message>
        <source>propulsion control room outside the engine room</source>
        <translation type="unfinished">ruang kendali penggerak di luar kamar mesin</translation>
    </message>
    <message>
        <source>central fire-alarm panel room</source>
        <translation type="unfinished">ruang panel alarm kebakaran pusat</translation>
    </message>
    <message>
        <source>central emergency public-address station</source>
        <translation type="unfinished">stasiun pengeras suara darurat pusat</translation>
    </message>
    <message>
        <source>Stairways</source>
        <translation type="unfinished">Tangga</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks for passengers or crew, with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">tangga dalam, lift, eskalator, dan lorong penyelamatan tertutup penuh bagi penumpang atau awak, dengan selubungnya (bukan yang seluruhnya di dalam ruang permesinan)</translation>
    </message>
    <message>
        <source>a stair enclosed on one level only counts as part of the space it has no fire door against</source>
        <translation type="unfinished">tangga yang tertutup pada satu tingkat saja dihitung sebagai bagian ruang yang tidak dipisahkan darinya oleh pintu kebakaran</translation>
    </message>
    <message>
        <source>Corridors</source>
        <translation type="unfinished">Koridor</translation>
    </message>
    <message>
        <source>passenger and crew corridors</source>
        <translation type="unfinished">koridor penumpang dan awak</translation>
    </message>
    <message>
        <source>lobbies</source>
        <translation type="unfinished">lobi</translation>
    </message>
    <message>
        <source>Evacuation stations and external escape routes</source>
        <translation type="unfinished">Stasiun evakuasi dan jalur penyelamatan luar</translation>
    </message>
    <message>
        <source>survival-craft stowage</source>
        <translation type="unfinished">tempat penyimpanan pesawat penyelamat</translation>
    </message>
    <message>
        <source>open deck or enclosed promenade used for boat/raft boarding and lowering</source>
        <translation type="unfinished">geladak terbuka atau promenade tertutup untuk embarkasi dan penurunan sekoci/rakit</translation>
    </message>
    <message>
        <source>assembly stations, indoor and outdoor</source>
        <translation type="unfinished">tempat berkumpul, di dalam dan di luar</translation>
    </message>
    <message>
        <source>outside stairs and open decks that are escape routes</source>
        <translation type="unfinished">tangga luar dan geladak terbuka yang merupakan jalur penyelamatan</translation>
    </message>
    <message>
        <source>ship&apos;s side down to the lightest waterline, and house sides, below or beside raft and slide boarding areas</source>
        <translation type="unfinished">lambung kapal hingga garis air teringan, dan sisi bangunan atas, di bawah atau di samping tempat embarkasi rakit dan luncuran</translation>
    </message>
    <message>
        <source>Open deck spaces</source>
        <translation type="unfinished">Ruang geladak terbuka</translation>
    </message>
    <message>
        <source>open deck and promenades away from boat/raft boarding places (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">geladak terbuka dan promenade jauh dari tempat embarkasi sekoci/rakit (hanya perabot geladak, selalu terbuka ke udara)</translation>
    </message>
    <message>
        <source>the open air outside superstructures and deckhouses</source>
        <translation type="unfinished">udara terbuka di luar bangunan atas dan rumah geladak</translation>
    </message>
    <message>
        <source>Accommodation spaces of minor fire risk</source>
        <translation type="unfinished">Ruang akomodasi berisiko kebakaran kecil</translation>
    </message>
    <message>
        <source>cabins, offices and dispensaries with restricted-fire-risk furnishings</source>
        <translation type="unfinished">kabin, kantor, dan poliklinik dengan perabot berisiko kebakaran terbatas</translation>
    </message>
    <message>
        <source>public rooms under 50 m2 with restricted-fire-risk furnishings</source>
        <translation type="unfinished">ruang umum di bawah 50 m2 dengan perabot berisiko kebakaran terbatas</translation>
    </message>
    <message>
        <source>Accommodation spaces of moderate fire risk</source>
        <translation type="unfinished">Ruang akomodasi berisiko kebakaran sedang</translation>
    </message>
    <message>
        <source>category 6 rooms with ordinary furnishings</source>
        <translation type="unfinished">ruang kategori 6 dengan perabot biasa</translation>
    </message>
    <message>
        <source>public rooms of 50 m2 or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">ruang umum 50 m2 atau lebih dengan perabot berisiko kebakaran terbatas</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m2 (no flammable liquids)</source>
        <translation type="unfinished">lemari dan gudang kecil terpisah di bawah 4 m2 (tanpa cairan mudah menyala)</translation>
    </message>
    <message>
        <source>projection and film rooms</source>
        <translation type="unfinished">ruang proyeksi dan film</translation>
    </message>
    <message>
        <source>diet kitchen without open flame</source>
        <translation type="unfinished">dapur diet tanpa api terbuka</translation>
    </message>
    <message>
        <source>cleaning-gear locker, laboratory (no flammable liquids)</source>
        <translation type="unfinished">lemari alat kebersihan, laboratorium (tanpa cairan mudah menyala)</translation>
    </message>
    <message>
        <source>pharmacy</source>
        <translation type="unfinished">apotek</translation>
    </message>
    <message>
        <source>drying room up to 4 m2</source>
        <translation type="unfinished">ruang pengering sampai 4 m2</translation>
    </message>
    <message>
        <source>specie room</source>
        <translation type="unfinished">ruang barang berharga</translation>
    </message>
    <message>
        <source>operating room</source>
        <translation type="unfinished">ruang operasi</translation>
    </message>
    <message>
        <source>Accommodation spaces of greater fire risk</source>
        <translation type="unfinished">Ruang akomodasi berisiko kebakaran lebih besar</translation>
    </message>
    <message>
        <source>public rooms of 50 m2 or more with ordinary furnishings</source>
        <translation type="unfinished">ruang umum 50 m2 atau lebih dengan perabot biasa</translation>
    </message>
    <message>
        <source>barber shop, beauty parlour</source>
        <translation type="unfinished">tempat pangkas rambut, salon kecantikan</translation>
    </message>
    <message>
        <source>sauna</source>
        <translation type="unfinished">sauna</translation>
    </message>
    <message>
        <source>sale shop</source>
        <translation type="unfinished">toko</translation>
    </message>
    <message>
        <source>Sanitary and similar spaces</source>
        <translation type="unfinished">Ruang sanitasi dan sejenisnya</translation>
    </message>
    <message>
        <source>shared toilets, showers, baths</source>
        <translation type="unfinished">toilet, pancuran, kamar mandi bersama</translation>
    </message>
    <message>
        <source>small laundry</source>
        <translation type="unfinished">binatu kecil</translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation type="unfinished">kolam renang dalam</translation>
    </message>
    <message>
        <source>isolated pantry without cooking appliances</source>
        <translation type="unfinished">pantri terpisah tanpa alat masak</translation>
    </message>
    <message>
        <source>(private bathrooms count as part of the room they serve)</source>
        <translation type="unfinished">(kamar mandi pribadi dihitung sebagai bagian ruang yang dilayaninya)</translation>
    </message>
    <message>
        <source>Tanks, voids and auxiliary machinery spaces having little or no fire risk</source>
        <translation type="unfinished">Tangki, ruang kosong, dan ruang permesinan bantu dengan sedikit atau tanpa risiko kebakaran</translation>
    </message>
    <message>
        <source>structural water tanks</source>
        <translation type="unfinished">tangki air struktural</translation>
    </message>
    <message>
        <source>voids, cofferdams</source>
        <translation type="unfinished">ruang kosong, koferdam</translation>
    </message>
    <message>
        <source>auxiliary rooms with no pressure-lubricated machinery and no combustible storage: fan and air-conditioning rooms, windlass, steering gear, stabiliser, electric propulsion motor, section switchboards (no oil-filled transformer above 10 kVA)</source>
        <translation type="unfinished">ruang bantu tanpa mesin berpelumas tekan dan tanpa simpanan mudah terbakar: ruang kipas dan penyejuk udara, mesin jangkar, mesin kemudi, stabilisator, motor penggerak listrik, panel hubung bagian (tanpa transformator berisi minyak di atas 10 kVA)</translation>
    </message>
    <message>
        <source>shaft alleys, pipe tunnels, non-flammable pump and refrigeration rooms</source>
        <translation type="unfinished">lorong poros, terowongan pipa, ruang pompa tak mudah menyala dan ruang pendingin</translation>
    </message>
    <message>
        <source>closed trunks serving these; pipe and cable trunks</source>
        <translation type="unfinished">saluran tertutup yang melayaninya; saluran pipa dan kabel</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, cargo spaces, cargo and other oil tanks and similar spaces of moderate fire risk</source>
        <translation type="unfinished">Ruang permesinan bantu, ruang muat, tangki muatan dan tangki minyak lain, dan ruang sejenis berisiko kebakaran sedang</translation>
    </message>
    <message>
        <source>cargo oil tanks</source>
        <translation type="unfinished">tangki muatan minyak</translation>
    </message>
    <message>
        <source>holds, trunkways, hatchways</source>
        <translation type="unfinished">palka, saluran palka, lubang palka</translation>
    </message>
    <message>
        <source>refrigerated chambers</source>
        <translation type="unfinished">ruang berpendingin</translation>
    </message>
    <message>
        <source>oil fuel tanks in their own space without machinery</source>
        <translation type="unfinished">tangki bahan bakar minyak di ruangnya sendiri tanpa mesin</translation>
    </message>
    <message>
        <source>shaft alleys or pipe tunnels where combustibles may be kept</source>
        <translation type="unfinished">lorong poros atau terowongan pipa tempat bahan mudah terbakar dapat disimpan</translation>
    </message>
    <message>
        <source>category 10 type rooms with pressure-lubricated machinery or combustible storage</source>
        <translation type="unfinished">ruang tipe kategori 10 dengan mesin berpelumas tekan atau simpanan mudah terbakar</translation>
    </message>
    <message>
        <source>oil filling stations</source>
        <translation type="unfinished">stasiun pengisian minyak</translation>
    </message>
    <message>
        <source>oil-filled transformers above 10 kVA</source>
        <translation type="unfinished">transformator berisi minyak di atas 10 kVA</translation>
    </message>
    <message>
        <source>turbine/steam auxiliary generators and engines up to 110 kW driving generators, sprinkler, fire or bilge pumps</source>
        <translation type="unfinished">generator bantu turbin/uap dan mesin sampai 110 kW yang menggerakkan generator, pompa sprinkler, pemadam, atau got</translation>
    </message>
    <message>
        <source>closed trunks serving these</source>
        <translation type="unfinished">saluran tertutup yang melayaninya</translation>
    </message>
    <message>
        <source>Machinery spaces and main galleys</source>
        <translation type="unfinished">Ruang permesinan dan dapur utama</translation>
    </message>
    <message>
        <source>main engine and boiler rooms (not electric propulsion motor rooms)</source>
        <translation type="unfinished">kamar mesin utama dan ketel (bukan ruang motor penggerak listrik)</translation>
    </message>
    <message>
        <source>other auxiliary rooms with engines or oil-burning, heating or pumping units</source>
        <translation type="unfinished">ruang bantu lain dengan mesin atau unit pembakar, pemanas, atau pompa minyak</translation>
    </message>
    <message>
        <source>main galleys and annexes</source>
        <translation type="unfinished">dapur utama dan ruang tambahannya</translation>
    </message>
    <message>
        <source>their trunks and casings</source>
        <translation type="unfinished">saluran dan selubungnya</translation>
    </message>
    <message>
        <source>Store-rooms, workshops, pantries, etc.</source>
        <translation type="unfinished">Gudang, bengkel, pantri, dsb.</translation>
    </message>
    <message>
        <source>main pantry not annexed to a galley</source>
        <translation type="unfinished">pantri utama yang tidak menyatu dengan dapur</translation>
    </message>
    <message>
        <source>main laundry</source>
        <translation type="unfinished">binatu utama</translation>
    </message>
    <message>
        <source>drying room above 4 m2</source>
        <translation type="unfinished">ruang pengering di atas 4 m2</translation>
    </message>
    <message>
        <source>miscellaneous stores</source>
        <translation type="unfinished">gudang aneka barang</translation>
    </message>
    <message>
        <source>mail and baggage rooms</source>
        <translation type="unfinished">ruang pos dan bagasi</translation>
    </message>
    <message>
        <source>garbage rooms</source>
        <translation type="unfinished">ruang sampah</translation>
    </message>
    <message>
        <source>workshops outside machinery spaces and galleys</source>
        <translation type="unfinished">bengkel di luar ruang permesinan dan dapur</translation>
    </message>
    <message>
        <source>lockers and stores above 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">lemari dan gudang di atas 4 m2 tanpa tempat cairan mudah menyala</translation>
    </message>
    <message>
        <source>Other spaces in which flammable liquids are stowed</source>
        <translation type="unfinished">Ruang lain tempat cairan mudah menyala disimpan</translation>
    </message>
    <message>
        <source>paint locker</source>
        <translation type="unfinished">gudang cat</translation>
    </message>
    <message>
        <source>stores with flammable liquids (dyes, medicines, ...)</source>
        <translation type="unfinished">gudang dengan cairan mudah menyala (zat warna, obat, ...)</translation>
    </message>
    <message>
        <source>laboratories where flammable liquids are kept</source>
        <translation type="unfinished">laboratorium tempat cairan mudah menyala disimpan</translation>
    </message>
    <message>
        <source>propulsion control room outside the machinery space</source>
        <translation type="unfinished">ruang kendali penggerak di luar ruang permesinan</translation>
    </message>
    <message>
        <source>passenger and crew corridors and lobbies</source>
        <translation type="unfinished">koridor dan lobi penumpang dan awak</translation>
    </message>
    <message>
        <source>Accommodation spaces</source>
        <translation type="unfinished">Ruang akomodasi</translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), corridors left out</source>
        <translation type="unfinished">kabin, ruang umum, kantor, toilet, rumah sakit, ruang permainan dan hobi, pantri tanpa alat masak (peraturan 3.1), tidak termasuk koridor</translation>
    </message>
    <message>
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">tangga dalam, lift, eskalator, dan lorong penyelamatan tertutup penuh dengan selubungnya (bukan yang seluruhnya di dalam ruang permesinan)</translation>
    </message>
    <message>
        <source>Service spaces (low risk)</source>
        <translation type="unfinished">Ruang layanan (risiko rendah)</translation>
    </message>
    <message>
        <source>lockers and stores under 4 m2 with no provision for flammable liquids</source>
        <translation type="unfinished">lemari dan gudang di bawah 4 m2 tanpa tempat cairan mudah menyala</translation>
    </message>
    <message>
        <source>drying rooms</source>
        <translation type="unfinished">ruang pengering</translation>
    </message>
    <message>
        <source>laundries</source>
        <translation type="unfinished">binatu</translation>
    </message>
    <message>
        <source>Machinery spaces of category A</source>
        <translation type="unfinished">Ruang permesinan kategori A</translation>
    </message>
    <message>
        <source>spaces with main propulsion combustion engines</source>
        <translation type="unfinished">ruang dengan mesin pembakaran penggerak utama</translation>
    </message>
    <message>
        <source>other combustion engines totalling 375 kW or more</source>
        <translation type="unfinished">mesin pembakaran lain dengan jumlah 375 kW atau lebih</translation>
    </message>
    <message>
        <source>oil-fired boilers, oil fuel units, inert gas generators, incinerators and other oil-fired plant</source>
        <translation type="unfinished">ketel berbahan bakar minyak, unit bahan bakar minyak, pembangkit gas lembam, insinerator, dan instalasi pembakar minyak lain</translation>
    </message>
    <message>
        <source>trunks to these (reg. 3.31)</source>
        <translation type="unfinished">saluran ke ruang ini (peraturan 3.31)</translation>
    </message>
    <message>
        <source>Other machinery spaces</source>
        <translation type="unfinished">Ruang permesinan lain</translation>
    </message>
    <message>
        <source>electrical rooms (telephone exchange, air-conditioning duct spaces)</source>
        <translation type="unfinished">ruang listrik (sentral telepon, ruang saluran penyejuk udara)</translation>
    </message>
    <message>
        <source>machinery spaces of reg. 3.30 that are not category A</source>
        <translation type="unfinished">ruang permesinan peraturan 3.30 yang bukan kategori A</translation>
    </message>
    <message>
        <source>Cargo spaces</source>
        <translation type="unfinished">Ruang muat</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways (special category spaces are category 11)</source>
        <translation type="unfinished">semua ruang muat termasuk tangki muatan minyak, dengan saluran dan lubang palkanya (ruang kategori khusus adalah kategori 11)</translation>
    </message>
    <message>
        <source>Service spaces (high risk)</source>
        <translation type="unfinished">Ruang layanan (risiko tinggi)</translation>
    </message>
    <message>
        <source>galleys, pantries with cooking appliances</source>
        <translation type="unfinished">dapur, pantri dengan alat masak</translation>
    </message>
    <message>
        <source>paint rooms/lockers, lamp rooms</source>
        <translation type="unfinished">ruang/lemari cat, ruang lampu</translation>
    </message>
    <message>
        <source>saunas</source>
        <translation type="unfinished">sauna</translation>
    </message>
    <message>
        <source>lockers and stores of 4 m2 or more</source>
        <translation type="unfinished">lemari dan gudang 4 m2 atau lebih</translation>
    </message>
    <message>
        <source>flammable-liquid stores</source>
        <translation type="unfinished">gudang cairan mudah menyala</translation>
    </message>
    <message>
        <source>workshops outside the machinery spaces</source>
        <translation type="unfinished">bengkel di luar ruang permesinan</translation>
    </message>
    <message>
        <source>Open decks</source>
        <translation type="unfinished">Geladak terbuka</translation>
    </message>
    <message>
        <source>open deck and promenades with little or no fire risk (deck furniture only, permanently open to air)</source>
        <translation type="unfinished">geladak terbuka dan promenade dengan sedikit atau tanpa risiko kebakaran (hanya perabot geladak, selalu terbuka ke udara)</translation>
    </message>
    <message>
        <source>Special category and ro-ro spaces</source>
        <translation type="unfinished">Ruang kategori khusus dan ro-ro</translation>
    </message>
    <message>
        <source>vehicle decks passengers can enter (reg. 3.46)</source>
        <translation type="unfinished">geladak kendaraan yang dapat dimasuki penumpang (peraturan 3.46)</translation>
    </message>
    <message>
        <source>ro-ro spaces (reg. 3.41)</source>
        <translation type="unfinished">ruang ro-ro (peraturan 3.41)</translation>
    </message>
    <message>
        <source>corridors and lobbies</source>
        <translation type="unfinished">koridor dan lobi</translation>
    </message>
    <message>
        <source>all cargo spaces incl. cargo oil tanks, with their trunkways and hatchways</source>
        <translation type="unfinished">semua ruang muat termasuk tangki muatan minyak, dengan saluran dan lubang palkanya</translation>
    </message>
    <message>
        <source>paint rooms/lockers</source>
        <translation type="unfinished">ruang/lemari cat</translation>
    </message>
    <message>
        <source>Ro-ro and vehicle spaces</source>
        <translation type="unfinished">Ruang ro-ro dan kendaraan</translation>
    </message>
    <message>
        <source>vehicle spaces (reg. 3.49)</source>
        <translation type="unfinished">ruang kendaraan (peraturan 3.49)</translation>
    </message>
    <message>
        <source>Cargo pump-rooms</source>
        <translation type="unfinished">Ruang pompa muatan</translation>
    </message>
    <message>
        <source>rooms with cargo pumps</source>
        <translation type="unfinished">ruang dengan pompa muatan</translation>
    </message>
    <message>
        <source>their entrances and trunks</source>
        <translation type="unfinished">jalan masuk dan salurannya</translation>
    </message>
    <message>
        <source>Control space</source>
        <translation type="unfinished">Ruang kendali</translation>
    </message>
    <message>
        <source>emergency power source (generators excluded)</source>
        <translation type="unfinished">sumber tenaga darurat (tidak termasuk generator)</translation>
    </message>
    <message>
        <source>normally manned navigation and radio equipment</source>
        <translation type="unfinished">peralatan navigasi dan radio yang biasanya dijaga</translation>
    </message>
    <message>
        <source>central fire control or detection gear</source>
        <translation type="unfinished">alat pusat pemadam atau deteksi kebakaran</translation>
    </message>
    <message>
        <source>machinery controls outside a machinery space</source>
        <translation type="unfinished">kendali mesin di luar ruang permesinan</translation>
    </message>
    <message>
        <source>Stairway</source>
        <translation type="unfinished">Tangga</translation>
    </message>
    <message>
        <source>stairway or stairtower</source>
        <translation type="unfinished">tangga atau menara tangga</translation>
    </message>
    <message>
        <source>Corridor</source>
        <translation type="unfinished">Koridor</translation>
    </message>
    <message>
        <source>corridor / passageway</source>
        <translation type="unfinished">koridor / lorong</translation>
    </message>
    <message>
        <source>Embarkation station</source>
        <translation type="unfinished">Stasiun embarkasi</translation>
    </message>
    <message>
        <source>place where survival craft are boarded</source>
        <translation type="unfinished">tempat menaiki pesawat penyelamat</translation>
    </message>
    <message>
        <source>embarkation deck</source>
        <translation type="unfinished">geladak embarkasi</translation>
    </message>
    <message>
        <source>Low risk accommodation</source>
        <translation type="unfinished">Akomodasi risiko rendah</translation>
    </message>
    <message>
        <source>fire-resistant furnishings only and fire load up to 15 kg/m2</source>
        <translation type="unfinished">hanya perabot tahan api dan beban api sampai 15 kg/m2</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m2 or less</source>
        <translation type="unfinished">Akomodasi risiko tinggi, 50 m2 atau kurang</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m2 (limit 37.5 kg/m2)</source>
        <translation type="unfinished">beban api di atas 15 kg/m2 (batas 37.5 kg/m2)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m2 that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">lemari alat kebersihan di bawah 5 m2 yang menyimpan lebih dari alat (tanpa cairan mudah menyala)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m2</source>
        <translation type="unfinished">Akomodasi risiko tinggi, lebih dari 50 m2</translation>
    </message>
    <message>
        <source>as 6 but larger; the size sign is lost in the machine text and is inferred from row 6</source>
        <translation type="unfinished">seperti 6 tetapi lebih besar; tanda ukuran hilang dalam teks mesin dan disimpulkan dari baris 6</translation>
    </message>
    <message>
        <source>Low risk service spaces</source>
        <translation type="unfinished">Ruang layanan risiko rendah</translation>
    </message>
    <message>
        <source>washrooms and toilets</source>
        <translation type="unfinished">kamar cuci dan toilet</translation>
    </message>
    <message>
        <source>small laundry or drying room</source>
        <translation type="unfinished">binatu atau ruang pengering kecil</translation>
    </message>
    <message>
        <source>cleaning-gear locker with slop sink only</source>
        <translation type="unfinished">lemari alat kebersihan dengan bak cuci saja</translation>
    </message>
    <message>
        <source>workshop outside machinery spaces</source>
        <translation type="unfinished">bengkel di luar ruang permesinan</translation>
    </message>
    <message>
        <source>projection room</source>
        <translation type="unfinished">ruang proyeksi</translation>
    </message>
    <message>
        <source>High risk service spaces</source>
        <translation type="unfinished">Ruang layanan risiko tinggi</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">dapur</translation>
    </message>
    <message>
        <source>cleaning-gear locker or small storeroom in an accommodation area</source>
        <translation type="unfinished">lemari alat kebersihan atau gudang kecil di daerah akomodasi</translation>
    </message>
    <message>
        <source>large laundry or drying room</source>
        <translation type="unfinished">binatu atau ruang pengering besar</translation>
    </message>
    <message>
        <source>garbage store</source>
        <translation type="unfinished">gudang sampah</translation>
    </message>
    <message>
        <source>paint or lamp locker</source>
        <translation type="unfinished">lemari cat atau lampu</translation>
    </message>
    <message>
        <source>mail or baggage room</source>
        <translation type="unfinished">ruang pos atau bagasi</translation>
    </message>
    <message>
        <source>pantries and stores with flammable liquids or of 5 m2 or more</source>
        <translation type="unfinished">pantri dan gudang dengan cairan mudah menyala atau 5 m2 atau lebih</translation>
    </message>
    <message>
        <source>Machinery spaces</source>
        <translation type="unfinished">Ruang permesinan</translation>
    </message>
    <message>
        <source>propulsion, steam or combustion machinery</source>
        <translation type="unfinished">mesin penggerak, uap, atau pembakaran</translation>
    </message>
    <message>
        <source>oil transfer gear</source>
        <translation type="unfinished">alat pemindah minyak</translation>
    </message>
    <message>
        <source>motors above 10 hp</source>
        <translation type="unfinished">motor di atas 10 hp</translation>
    </message>
    <message>
        <source>oil-fired boilers or heaters</source>
        <translation type="unfinished">ketel atau pemanas berbahan bakar minyak</translation>
    </message>
    <message>
        <source>generators</source>
        <translation type="unfinished">generator</translation>
    </message>
    <message>
        <source>their trunks</source>
        <translation type="unfinished">salurannya</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo spaces, their trunks</source>
        <translation type="unfinished">palka, ruang muat berpendingin, salurannya</translation>
    </message>
    <message>
        <source>vehicle spaces</source>
        <translation type="unfinished">ruang kendaraan</translation>
    </message>
    <message>
        <source>Auxiliary machinery spaces, voids, fuel and water tanks</source>
        <translation type="unfinished">Ruang permesinan bantu, ruang kosong, tangki bahan bakar dan air</translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m2 of combustible storage</source>
        <translation type="unfinished">ruang pompa, kipas, penyejuk udara, kemudi, dan sejenisnya dengan simpanan mudah terbakar maksimal 2.5 kg/m2</translation>
    </message>
    <message>
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished">Geladak terbuka (bukan daerah aman)</translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished">geladak yang selalu terbuka di satu sisi atau lebih tanpa bagian tertutup 4.5 m atau lebih dari bukaan</translation>
    </message>
    <message>
        <source>emergency power source</source>
        <translation type="unfinished">sumber tenaga darurat</translation>
    </message>
    <message>
        <source>continuously watched navigation, radio or fire-control rooms</source>
        <translation type="unfinished">ruang navigasi, radio, atau kendali kebakaran yang terus dijaga</translation>
    </message>
    <message>
        <source>Stairway and elevator enclosures</source>
        <translation type="unfinished">Selubung tangga dan lift</translation>
    </message>
    <message>
        <source>passenger and crew stairs and lifts</source>
        <translation type="unfinished">tangga dan lift penumpang dan awak</translation>
    </message>
    <message>
        <source>passenger and crew corridors (over 8 ft wide counts as a public space)</source>
        <translation type="unfinished">koridor penumpang dan awak (lebar lebih dari 8 ft dihitung sebagai ruang umum)</translation>
    </message>
    <message>
        <source>Lifeboat embarkation or lowering stations</source>
        <translation type="unfinished">Stasiun embarkasi atau penurunan sekoci</translation>
    </message>
    <message>
        <source>open deck and promenades in way of boat boarding/lowering</source>
        <translation type="unfinished">geladak terbuka dan promenade di tempat embarkasi/penurunan sekoci</translation>
    </message>
    <message>
        <source>Staterooms and public spaces with incombustible veneers and trim and fire-resistant furnishings</source>
        <translation type="unfinished">Kamar tidur dan ruang umum dengan pelapis dan hiasan tak mudah terbakar dan perabot tahan api</translation>
    </message>
    <message>
        <source>staterooms, offices, public rooms so fitted</source>
        <translation type="unfinished">kamar tidur, kantor, ruang umum yang dilengkapi demikian</translation>
    </message>
    <message>
        <source>Staterooms, and public spaces of 500 sq ft or less, with combustible furnishings; isolated storerooms</source>
        <translation type="unfinished">Kamar tidur, dan ruang umum 500 sq ft atau kurang, dengan perabot mudah terbakar; gudang terpisah</translation>
    </message>
    <message>
        <source>ordinary staterooms</source>
        <translation type="unfinished">kamar tidur biasa</translation>
    </message>
    <message>
        <source>small sales rooms</source>
        <translation type="unfinished">toko kecil</translation>
    </message>
    <message>
        <source>isolated lockers</source>
        <translation type="unfinished">lemari terpisah</translation>
    </message>
    <message>
        <source>Public spaces over 500 sq ft with combustible furnishings</source>
        <translation type="unfinished">Ruang umum di atas 500 sq ft dengan perabot mudah terbakar</translation>
    </message>
    <message>
        <source>large lounges, dining rooms, sales rooms</source>
        <translation type="unfinished">ruang duduk, ruang makan, toko besar</translation>
    </message>
    <message>
        <source>Washrooms, toilets and isolated pantries with incombustible fittings</source>
        <translation type="unfinished">Kamar cuci, toilet, dan pantri terpisah dengan perlengkapan tak mudah terbakar</translation>
    </message>
    <message>
        <source>washrooms</source>
        <translation type="unfinished">kamar cuci</translation>
    </message>
    <message>
        <source>operating rooms</source>
        <translation type="unfinished">ruang operasi</translation>
    </message>
    <message>
        <source>small laundries</source>
        <translation type="unfinished">binatu kecil</translation>
    </message>
    <message>
        <source>slop-sink lockers</source>
        <translation type="unfinished">lemari bak cuci</translation>
    </message>
    <message>
        <source>Galleys, main pantries, storerooms and workshops</source>
        <translation type="unfinished">Dapur, pantri utama, gudang, dan bengkel</translation>
    </message>
    <message>
        <source>galleys</source>
        <translation type="unfinished">dapur</translation>
    </message>
    <message>
        <source>workshops, large laundries, mail and baggage rooms</source>
        <translation type="unfinished">bengkel, binatu besar, ruang pos dan bagasi</translation>
    </message>
    <message>
        <source>paint and lamp rooms</source>
        <translation type="unfinished">ruang cat dan lampu</translation>
    </message>
    <message>
        <source>main machinery</source>
        <translation type="unfinished">mesin utama</translation>
    </message>
    <message>
        <source>auxiliary rooms with engines or oil units</source>
        <translation type="unfinished">ruang bantu dengan mesin atau unit minyak</translation>
    </message>
    <message>
        <source>fuel filling stations</source>
        <translation type="unfinished">stasiun pengisian bahan bakar</translation>
    </message>
    <message>
        <source>Dry cargo spaces</source>
        <translation type="unfinished">Ruang muat kering</translation>
    </message>
    <message>
        <source>holds, refrigerated cargo, trunks</source>
        <translation type="unfinished">palka, muatan berpendingin, saluran</translation>
    </message>
    <message>
        <source>Fuel and water tanks and voids</source>
        <translation type="unfinished">Tangki bahan bakar dan air serta ruang kosong</translation>
    </message>
    <message>
        <source>tanks, voids</source>
        <translation type="unfinished">tangki, ruang kosong</translation>
    </message>
    <message>
        <source>auxiliary rooms with pumps, fans, steering gear and no combustible storage</source>
        <translation type="unfinished">ruang bantu dengan pompa, kipas, mesin kemudi, dan tanpa simpanan mudah terbakar</translation>
    </message>
    <message>
        <source>cargo oil tanks not also used for dry cargo</source>
        <translation type="unfinished">tangki muatan minyak yang tidak dipakai juga untuk muatan kering</translation>
    </message>
    <message>
        <source>Open decks and enclosed promenades (not safety areas)</source>
        <translation type="unfinished">Geladak terbuka dan promenade tertutup (bukan daerah aman)</translation>
    </message>
    <message>
        <source>open deck away from boat stations</source>
        <translation type="unfinished">geladak terbuka jauh dari stasiun sekoci</translation>
    </message>
    <message>
        <source>Exam: the whole practice vessel</source>
        <translation type="unfinished">Ujian: seluruh kapal latihan</translation>
    </message>
    <message>
        <source>All twelve doors. Nobody says how many faults there are. Endanger nobody, answer the cautions truly, and have 80 of 100 points to pass.</source>
        <translation type="unfinished">Semua dua belas pintu. Tidak ada yang menyebut berapa cacatnya. Jangan membahayakan siapa pun, jawab peringatan dengan jujur, dan raih 80 dari 100 poin untuk lulus.</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Langkah awal: ukur waktu tutup</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order, the other is far from it.</source>
        <translation type="unfinished">Dua pintu tangga yang ditahan terbuka oleh magnet. Lepaskan masing-masing, tandai saat daunnya mulai bergerak dan saat tertutup. Satu baik, yang lain jauh dari itu.</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Langkah awal: lihat sebelum bergerak</translation>
    </message>
    <message>
        <source>Two doors that stand still. Go round each of them, both sides, and look at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Dua pintu yang diam. Kelilingi masing-masing, kedua sisi, dan lihat semua yang ditanyakan. Ada sesuatu yang tidak beres.</translation>
    </message>
    <message>
        <source>Somebody comes round the corner</source>
        <translation type="unfinished">Orang muncul dari balik sudut</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop it before it meets anybody. A run that was stopped can be made again.</source>
        <translation type="unfinished">Orang tidak tahu bahwa Anda sedang menguji. Awasi lintasan selagi daun bergerak, dan hentikan sebelum mengenai siapa pun. Uji yang dihentikan dapat diulangi.</translation>
    </message>
    <message>
        <source>A round of eight doors</source>
        <translation type="unfinished">Satu putaran delapan pintu</translation>
    </message>
    <message>
        <source>Every kind of door in one walk. Six faults lie somewhere among them, some of which only the watch can show. Not every door has one.</source>
        <translation type="unfinished">Segala jenis pintu dalam satu inspeksi. Enam cacat ada di antaranya, sebagian hanya dapat ditunjukkan oleh stopwatch. Tidak setiap pintu punya cacat.</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Pintu geser dan alarmnya</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, the whole travel, and how far each one opens again when it meets something. Look into the pockets.</source>
        <translation type="unfinished">Tiga pintu bertenaga. Ukur waktu alarm sebelum daun bergerak, seluruh gerakannya, dan seberapa jauh membuka lagi bila mengenai sesuatu. Lihat ke dalam rongga.</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Ditahan terbuka di tangga</translation>
    </message>
    <message>
        <source>Four hinged doors that magnets hold open. They must let go from both sides and from the control station, shut in their time and latch. Watch the path before you release anything.</source>
        <translation type="unfinished">Empat pintu engsel yang ditahan terbuka oleh magnet. Semuanya harus terlepas dari kedua sisi dan dari stasiun kendali, menutup pada waktunya, dan terkancing. Awasi lintasan sebelum melepaskan apa pun.</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Dua daun, dan pintu yang mengayun</translation>
    </message>
    <message>
        <source>Double doors must come home in their order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Pintu ganda harus tertutup menurut urutannya, dan pintu ayun dua arah dapur harus berhenti tertutup. Ada yang salah pada dua di antaranya.</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be left out if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Ruang bertetangga dengan nomor kategori sama: sekat atau geladak boleh ditiadakan bila Administrasi menganggapnya tidak perlu (mis. dapur dan pantrinya sendiri). Dapur dan ruang permesinan tetap memerlukan divisi di antaranya walau keduanya kategori 12.</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Lambung kapal hingga garis air teringan, dan sisi bangunan atas/rumah geladak, di bawah atau di samping rakit dan luncuran evakuasi: A-30 cukup.</translation>
    </message>
    <message>
        <source>Public toilets standing wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Toilet umum yang seluruhnya di dalam selubung tangga: sekat toilet di dalam selubung boleh kelas B.</translation>
    </message>
    <message>
        <source>Category 6, 7, 8 and 9 rooms wholly inside the outer boundary of an assembly station: their bulkheads may be B-0. Audio, video and lighting control positions may count as part of the assembly station.</source>
        <translation type="unfinished">Ruang kategori 6, 7, 8, dan 9 yang seluruhnya di dalam batas luar tempat berkumpul: sekatnya boleh B-0. Posisi kendali audio, video, dan penerangan boleh dihitung sebagai bagian tempat berkumpul.</translation>
    </message>
    <message>
        <source>No special requirement for material or integrity.</source>
        <translation type="unfinished">Tidak ada persyaratan khusus untuk bahan atau keutuhan.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.2.2 (bulkheads inside a main vertical zone) and 2.2.5 (stairway and lift enclosures).</source>
        <translation type="unfinished">Nilai mana yang berlaku dari keduanya mengikuti 2.2.2 (sekat di dalam zona vertikal utama) dan 2.2.5 (selubung tangga dan lift).</translation>
    </message>
    <message>
        <source>Same category number: the rated division is needed only if the two spaces serve different purposes (galley/galley none; galley/paint room A-0).</source>
        <translation type="unfinished">Nomor kategori sama: divisi berkelas hanya perlu bila kedua ruang berbeda tujuan (dapur/dapur tidak; dapur/ruang cat A-0).</translation>
    </message>
    <message>
        <source>Bulkhead between wheelhouse and chart room may be B-0. Partitions between the bridge and a safety centre inside the bridge need no rating.</source>
        <translation type="unfinished">Sekat antara ruang kemudi dan ruang peta boleh B-0. Partisi antara anjungan dan pusat keselamatan di dalam anjungan tidak memerlukan kelas.</translation>
    </message>
    <message>
        <source>Two values: the higher applies where the zone has no automatic sprinklers, the lower where it has them; between a sprinklered and an unsprinklered zone the higher applies (2.2.4.2.3, 2.2.4.2.4).</source>
        <translation type="unfinished">Dua nilai: yang lebih tinggi berlaku bila zona tidak punya sprinkler otomatis, yang lebih rendah bila punya; antara zona bersprinkler dan tanpa sprinkler berlaku yang lebih tinggi (2.2.4.2.3, 2.2.4.2.4).</translation>
    </message>
    <message>
        <source>Where the bulkhead is a main vertical zone boundary (2.2.1.1.2), read B-0 and C in table 9.3 as A-0.</source>
        <translation type="unfinished">Bila sekat adalah pembatas zona vertikal utama (2.2.1.1.2), baca B-0 dan C dalam tabel 9.3 sebagai A-0.</translation>
    </message>
    <message>
        <source>Insulation may be left off if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">Insulasi boleh ditiadakan bila ruang permesinan kategori 7 berisiko kebakaran kecil atau tidak ada menurut Administrasi.</translation>
    </message>
    <message>
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished">Nilai berlaku untuk kapal yang dibangun pada atau setelah 1 Juli 2014; kapal lama mempertahankan minimal nilai sebelumnya.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished">Divisi harus baja atau setara tetapi tidak harus mencapai kelas A. Bila geladak (selain geladak terbuka) ditembus kabel, pipa, atau saluran, lubangnya sebaiknya dibuat rapat terhadap nyala dan asap. Stasiun kendali generator darurat boleh punya lubang masuk udara ke geladak terbuka tanpa penutup kecuali ada sistem gas tetap. Bila geladak adalah pembatas zona vertikal utama (2.2.1.1.2), baca * dalam tabel 9.4 sebagai A-0 kecuali untuk kategori 8 dan 10.</translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished">Tidak ada persyaratan pada sekat ini dengan metode perlindungan IIC dan IIIC.</translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m2 or more.</source>
        <translation type="unfinished">Dengan metode IIIC, sekat B-0 diperlukan antara ruang atau kelompok ruang 50 m2 atau lebih.</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Nilai mana yang berlaku dari keduanya mengikuti 2.3.2 dan 2.3.4: tangga yang hanya menembus satu geladak memerlukan B-0 dengan pintu yang menutup sendiri minimal di satu tingkat; tangga dan lift yang menembus lebih dari satu geladak memerlukan A-0 dengan pintu yang menutup sendiri di semua tingkat; lift yang menembus satu geladak memerlukan A-0 dengan pintu baja di kedua tingkat. Dengan tempat tidur untuk 12 orang atau kurang dan dua jalan penyelamatan langsung ke geladak terbuka dari setiap tingkat akomodasi, A-0 boleh turun ke B-0.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Sekat antara ruang kemudi, ruang peta, dan ruang radio boleh B-0.</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they stay at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">A-0 cukup bila tidak ada barang berbahaya diangkut, atau jaraknya minimal 3 m mendatar dari sekat.</translation>
    </message>
    <message>
        <source>Cargo spaces for dangerous goods: regulation 19.3.8 governs.</source>
        <translation type="unfinished">Ruang muat untuk barang berbahaya: peraturan 19.3.8 berlaku.</translation>
    </message>
    <message>
        <source>Boundaries between ro-ro spaces must be able to be closed reasonably gastight and be A class so far as reasonable and practicable, if the Administration finds little or no fire risk.</source>
        <translation type="unfinished">Pembatas antara ruang ro-ro harus dapat ditutup cukup kedap gas dan kelas A sejauh wajar dan dapat dilakukan, bila Administrasi menganggap risiko kebakaran kecil atau tidak ada.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted.</source>
        <translation type="unfinished">Divisi harus baja atau setara tetapi tidak harus mencapai kelas A. Bila geladak (selain geladak terbuka) ditembus kabel, pipa, atau saluran, lubangnya sebaiknya dibuat rapat terhadap nyala dan asap. Stasiun kendali generator darurat boleh punya lubang masuk udara ke geladak terbuka tanpa penutup kecuali ada sistem gas tetap.</translation>
    </message>
    <message>
        <source>Tanker use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through one deck only needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Kapal tangki hanya memakai metode IC. Nilai mana yang berlaku dari keduanya mengikuti 2.3.2 dan 2.3.4: tangga yang hanya menembus satu geladak memerlukan B-0 dengan pintu yang menutup sendiri minimal di satu tingkat; tangga dan lift yang menembus lebih dari satu geladak memerlukan A-0 dengan pintu yang menutup sendiri di semua tingkat; lift yang menembus satu geladak memerlukan A-0 dengan pintu baja di kedua tingkat. Dengan tempat tidur untuk 12 orang atau kurang dan dua jalan penyelamatan langsung ke geladak terbuka dari setiap tingkat akomodasi, A-0 boleh turun ke B-0.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">Sekat atau geladak antara ruang pompa muatan dan ruang permesinan kategori A boleh ditembus oleh paking poros pompa dan sejenisnya bila kekedapan gas yang tahan lama terjamin.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m2 (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Tangki bahan bakar, ruang permesinan bantu, dan ruang kosong dengan beban api di atas 2.5 kg/m2 (0.5 lb/sq ft) memerlukan pembatas minimal A-0.</translation>
    </message>
    <message>
        <source>Toilet boundaries may be reduced to C&apos;.</source>
        <translation type="unfinished">Pembatas toilet boleh diturunkan ke C&apos;.</translation>
    </message>
    <message>
        <source>C is enough between two like spaces (two storerooms); unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C cukup antara dua ruang sejenis (dua gudang); ruang tidak sejenis (gudang dan bengkel) memerlukan A-0.</translation>
    </message>
    <message>
        <source>No division needed inside one stairtower; two separate stairtowers need A-0 between them.</source>
        <translation type="unfinished">Tidak perlu divisi di dalam satu menara tangga; dua menara tangga terpisah memerlukan A-0 di antaranya.</translation>
    </message>
    <message>
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time duty (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Tak mudah terbakar, menyatu utuh dengan struktur kapal (atau berhenti pada langit-langit B atau C&apos; yang menerus) dan rapat asap; tanpa tuntutan insulasi atau waktu nyala (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C cukup antara dua ruang sejenis; ruang tidak sejenis (gudang dan bengkel) memerlukan A-0.</translation>
    </message>
    <message>
        <source>A fire drill tries the fire doors in the area of the drill</source>
        <translation type="unfinished">Latihan darurat kebakaran mencoba pintu kebakaran di daerah latihan itu</translation>
    </message>
    <message>
        <source>Blackout trial: doors are held and released by the emergency source and the transitional battery</source>
        <translation type="unfinished">Percobaan blackout: penahan pintu bertahan dan dilepas dengan tenaga sumber darurat dan baterai transisi</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample released at the door and remotely, doors lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Kampanye Port State Control (PSC) pintu kebakaran: lampu, sampel yang penahannya dilepas di pintu dan dari jauh, pintu yang diikat terbuka, penutupan dan pengancingan, pintu ruang permesinan, kelas</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class like its boundary</source>
        <translation type="unfinished">Pintu luar yang menghadap alat penyelamat jiwa, tempat embarkasi atau tempat berkumpul di luar, tangga luar, atau geladak penyelamatan diri adalah kelas A seperti pembatasnya</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door is at least as strong. A stairway enclosure&apos;s door is free of it.</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan kelas pembatas di sekelilingnya. Baik: pintu minimal sama kuat. Pintu selubung tangga bebas dari ketentuan ini.</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure is free of the A-class duty of other exterior doors</source>
        <translation type="unfinished">Pintu luar selubung tangga bebas dari kewajiban kelas A yang berlaku bagi pintu luar lain</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">Apakah ini pintu selubung tangga?</translation>
    </message>
    <message>
        <source>See the fire plan, or go in. A stairway enclosure behind it: yes, and no class is asked of it. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Lihat denah pengendalian kebakaran, atau masuklah. Di baliknya selubung tangga: ya, dan tidak ada kelas yang diminta. Di baliknya ruang lain: tidak. Kedua jawaban bukan cacat.</translation>
    </message>
    <message>
        <source>Door and frame of steel or of a material equivalent to it</source>
        <translation type="unfinished">Pintu dan kusen dari baja atau bahan yang setara</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">Pintu dan kusen dari baja, atau setara?</translation>
    </message>
    <message>
        <source>Knock on leaf and frame, see the plate and the papers. Good: steel, or a paper that says what is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Ketuk daun pintu dan kusen, lihat pelat dan dokumennya. Baik: baja, atau ada dokumen yang menyatakan kesetaraannya. Buruk: kayu, plastik, atau aluminium polos.</translation>
    </message>
    <message>
        <source>Door and frame in good order, so that they do what they were fitted for</source>
        <translation type="unfinished">Pintu dan kusen dalam keadaan baik, sehingga berfungsi sesuai tujuan pemasangannya</translation>
    </message>
    <message>
        <source>In good order, door and frame?</source>
        <translation type="unfinished">Pintu dan kusen dalam keadaan baik?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, repairs that nobody approved. Asked of a ship of any date.</source>
        <translation type="unfinished">Daun pintu, kusen, engsel, paking, dan kaca. Buruk: lubang, tambalan, penyok yang menghalangi penutupan, bagian hilang, perbaikan tanpa persetujuan. Ditanya untuk kapal dari tahun mana pun.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard has this door and its controls in it</source>
        <translation type="unfinished">Rencana perawatan di kapal memuat pintu ini dan kendalinya</translation>
    </message>
    <message>
        <source>Is the door, with its controls, in the maintenance plan?</source>
        <translation type="unfinished">Apakah pintu ini, dengan kendalinya, ada dalam rencana perawatan?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or in a computer, and find this door. Good: its tests and dates are there. Asked of a ship of any date.</source>
        <translation type="unfinished">Minta rencana perawatan kapal, di kertas atau di komputer, dan cari pintu ini. Baik: uji dan tanggalnya tercantum. Ditanya untuk kapal dari tahun mana pun.</translation>
    </message>
    <message>
        <source>A door that is normally kept locked was found locked</source>
        <translation type="unfinished">Pintu yang biasanya dikunci ditemukan dalam keadaan terkunci</translation>
    </message>
    <message>
        <source>Was it found locked?</source>
        <translation type="unfinished">Apakah pintu ditemukan terkunci?</translation>
    </message>
    <message>
        <source>Try it before it is unlocked. Locked: yes, and it is left out of what is asked of doors that people use. Open or unlocked: no, and it is graded as what it is.</source>
        <translation type="unfinished">Coba sebelum kuncinya dibuka. Terkunci: ya, dan pintu tidak ikut dalam hal yang diminta dari pintu yang dipakai orang. Terbuka atau tidak terkunci: tidak, dan pintu dinilai menurut keadaannya.</translation>
    </message>
    <message>
        <source>No key is needed in the direction of escape; a cabin door needs none from inside</source>
        <translation type="unfinished">Tidak perlu anak kunci ke arah penyelamatan diri; pintu kabin tidak memerlukannya dari dalam</translation>
    </message>
    <message>
        <source>Opens in the direction of escape without a key?</source>
        <translation type="unfinished">Terbuka ke arah penyelamatan diri tanpa anak kunci?</translation>
    </message>
    <message>
        <source>Shut and latch it, then go through in the direction of escape with empty hands. Good: it opens. Bad: a key, a code or a tool is needed, or it is locked.</source>
        <translation type="unfinished">Tutup dan kancingkan, lalu lewati ke arah penyelamatan diri dengan tangan kosong. Baik: terbuka. Buruk: perlu anak kunci, kode, atau alat, atau pintu terkunci.</translation>
    </message>
    <message>
        <source>An escape door of a public space that is normally latched has a quick release over at least half the leaf, and nothing that locks it down</source>
        <translation type="unfinished">Pintu penyelamatan diri ruang umum yang biasanya terkancing punya pelepas cepat minimal selebar separuh daun pintu, dan tidak ada yang menguncinya mati</translation>
    </message>
    <message>
        <source>Quick release over half the leaf, nothing locks it down?</source>
        <translation type="unfinished">Pelepas cepat selebar separuh daun pintu, tidak ada yang menguncinya mati?</translation>
    </message>
    <message>
        <source>A bar or panel that lets the latch go when pushed, on the side people come from. Good: at least half as wide as the leaf. No public space, or not latched: n/a.</source>
        <translation type="unfinished">Batang atau panel yang melepas kancing bila didorong, di sisi datangnya orang. Baik: minimal separuh lebar daun pintu. Bukan ruang umum, atau tidak dikancing: t/b.</translation>
    </message>
    <message>
        <source>The quick release stands 760 to 1120 mm above the deck</source>
        <translation type="unfinished">Pelepas cepat terpasang 760 sampai 1120 mm di atas geladak</translation>
    </message>
    <message>
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Tinggi pelepas cepat di atas geladak</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the question of the quick release first.</source>
        <translation type="unfinished">Dari geladak sampai tengah batang, dengan mistar atau pita ukur. Jawab dahulu pertanyaan tentang pelepas cepat.</translation>
    </message>
    <message>
        <source>The quick release lets go at 67 N or less</source>
        <translation type="unfinished">Pelepas cepat melepas kancing pada 67 N atau kurang</translation>
    </message>
    <message>
        <source>Force that makes the quick release let go</source>
        <translation type="unfinished">Gaya yang membuat pelepas cepat melepas kancing</translation>
    </message>
    <message>
        <source>Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch lets go. Keep feet clear of the leaf.</source>
        <translation type="unfinished">Dorong dengan neraca pegas di tengah batang, ke arah penyelamatan diri, sampai kancing terlepas. Jauhkan kaki dari daun pintu.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors or in groups</source>
        <translation type="unfinished">Penahannya dapat dilepas dari stasiun kontrol, semua pintu sekaligus atau per grup</translation>
    </message>
    <message>
        <source>Can be released at the door</source>
        <translation type="unfinished">Penahannya dapat dilepas di pintu</translation>
    </message>
    <message>
        <source>Does the switch at the door release it?</source>
        <translation type="unfinished">Apakah sakelar di pintu melepas penahannya?</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The older text asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Gerakkan sakelar atau gagang di pintu. Baik: penahan pintu terlepas. Buruk: tidak berfungsi. Teks lama memintanya di pintu, bukan dari kedua sisi.</translation>
    </message>
    <message>
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">Anjungan menunjukkan apakah pintu kebakaran menuju atau dari ruang kategori khusus tertutup</translation>
    </message>
    <message>
        <source>Is the bridge&apos;s indication true for open, ajar and closed?</source>
        <translation type="unfinished">Apakah penunjukan di anjungan benar untuk terbuka, renggang, dan tertutup?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: true each time. Bad: no lamp for this door, or it says shut while the door stands ajar.</source>
        <translation type="unfinished">Tanyakan kepada anjungan apa yang ditunjukkan saat pintu terbuka, renggang, dan tertutup. Baik: benar setiap kali. Buruk: tidak ada lampu untuk pintu ini, atau disebut tertutup padahal renggang.</translation>
    </message>
    <message>
        <source>Its remote closing stands in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Kendali penutupan jarak jauhnya berada di stasiun kontrol pusat yang sama dengan alarm deteksi, dan panel di sana menunjukkan pintu terbuka atau tertutup</translation>
    </message>
    <message>
        <source>Closing control and open-or-closed lamp in the central station?</source>
        <translation type="unfinished">Kendali penutupan dan lampu buka-tutup di stasiun pusat?</translation>
    </message>
    <message>
        <source>In the continuously manned station: beside the alarms of the detection system, the control that closes this door and its lamp for open or closed.</source>
        <translation type="unfinished">Di stasiun yang dijaga terus-menerus: di samping alarm sistem deteksi ada kendali yang menutup pintu ini dan lampu terbuka atau tertutupnya.</translation>
    </message>
    <message>
        <source>It can be worked and watched from the safety centre</source>
        <translation type="unfinished">Dapat dijalankan dan diawasi dari pusat keselamatan</translation>
    </message>
    <message>
        <source>Worked and watched from the safety centre?</source>
        <translation type="unfinished">Dijalankan dan diawasi dari pusat keselamatan?</translation>
    </message>
    <message>
        <source>In the safety centre: close this door and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">Di pusat keselamatan: tutup pintu ini dan lihat lampunya berubah. Baik: keduanya bekerja seperti di stasiun kontrol. Buruk: tidak ada di panel.</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Menutup sendiri bila kendalinya gagal</translation>
    </message>
    <message>
        <source>Its holding and release work from the emergency source, and from the transitional battery until that takes over</source>
        <translation type="unfinished">Penahanan dan pelepasannya bekerja dengan sumber tenaga darurat, dan dengan baterai transisi sampai sumber itu mengambil alih</translation>
    </message>
    <message>
        <source>In the blackout trial: held and released by emergency power?</source>
        <translation type="unfinished">Dalam percobaan blackout: ditahan dan dilepas dengan tenaga darurat?</translation>
    </message>
    <message>
        <source>Agree the trial with bridge and engineers, people clear. Main power off: battery first, then the emergency source. Good: held, released and shut under each. A system with its own battery counts.</source>
        <translation type="unfinished">Sepakati percobaan dengan anjungan dan masinis, jauhkan orang. Daya utama mati: baterai dahulu, lalu sumber darurat. Baik: dengan masing-masing pintu tertahan, penahannya terlepas, dan menutup. Sistem dengan baterai sendiri ikut dihitung.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text prints no size</source>
        <translation type="unfinished">Lubang selang kebakaran yang menutup sendiri; teks lama tidak mencetak ukuran</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">Ada lubang selang kebakaran yang menutup sendiri?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. A size is not printed for a ship of this date.</source>
        <translation type="unfinished">Pintu tertutup, tepi bawah, di seberang engsel. Angkat penutupnya dan lepaskan. Baik: jatuh menutup. Buruk: tetap terangkat, atau tidak ada lubang. Untuk kapal dengan tanggal bangun ini tidak ada ukuran tercetak.</translation>
    </message>
    <message>
        <source>B-class door of a material that cannot burn</source>
        <translation type="unfinished">Pintu kelas B dari bahan yang tidak dapat terbakar</translation>
    </message>
    <message>
        <source>Door of a material that cannot burn?</source>
        <translation type="unfinished">Pintu dari bahan yang tidak dapat terbakar?</translation>
    </message>
    <message>
        <source>See the plate and the papers. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow it between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Lihat pelat dan dokumennya. Buruk: kayu atau plastik. Dengan 36 penumpang atau kurang, Administrasi boleh mengizinkannya antara kabin dan pancuran atau toiletnya sendiri: t/b.</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part of the door, or under it</source>
        <translation type="unfinished">Lubang ventilasi hanya di bagian bawah pintu, atau di bawahnya</translation>
    </message>
    <message>
        <source>Vent opening only in the lower part, or none?</source>
        <translation type="unfinished">Lubang ventilasi hanya di bagian bawah, atau tidak ada?</translation>
    </message>
    <message>
        <source>Find every opening for air in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Cari setiap lubang udara pada daun pintu. Baik: rendah pada daun pintu, di bawahnya, atau tidak ada. Buruk: kisi atau lubang di separuh atas.</translation>
    </message>
    <message>
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Menutup secara pasti dengan tenaga mesin, atau sendiri melawan kemiringan 3.5 derajat</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">Menutup secara pasti, dengan tenaga mesin atau sendiri?</translation>
    </message>
    <message>
        <source>Release it with its supply on and cut. Good: it goes firmly home each time. Doors of escape trunks too. The space is not of category A: n/a.</source>
        <translation type="unfinished">Lepas penahannya saat pasokan hidup dan saat diputus. Baik: setiap kali menutup rapat dengan pasti. Berlaku juga untuk pintu lorong penyelamatan. Ruang bukan kategori A: t/b.</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe and released remotely</source>
        <translation type="unfinished">Alat penahannya aman bila gagal (fail-safe) dan dilepas dari jauh</translation>
    </message>
    <message>
        <source>Hold-back fail-safe, and released remotely?</source>
        <translation type="unfinished">Alat penahan aman bila gagal, dan dilepas dari jauh?</translation>
    </message>
    <message>
        <source>Release it from its remote place, then with its supply cut. Good: it lets go each time. The space is not of category A, or nothing can hold the door: n/a.</source>
        <translation type="unfinished">Lepas dari tempat pelepas jarak jauhnya, lalu dengan pasokan diputus. Baik: penahan terlepas setiap kali. Ruang bukan kategori A, atau tidak ada yang dapat menahan pintu: t/b.</translation>
    </message>
    <message>
        <source>It is closed or released from outside the space, at one place or as few as possible</source>
        <translation type="unfinished">Ditutup atau dilepas penahannya dari luar ruang, di satu tempat atau sesedikit mungkin tempat</translation>
    </message>
    <message>
        <source>Closed or released from outside the space?</source>
        <translation type="unfinished">Ditutup atau dilepas penahannya dari luar ruang?</translation>
    </message>
    <message>
        <source>Find the control outside the machinery space. Good: it stands with the others, at one place or as few as possible, and can be reached when the space burns.</source>
        <translation type="unfinished">Cari kendalinya di luar ruang permesinan. Baik: berada bersama kendali lain, di satu tempat atau sesedikit mungkin tempat, dan terjangkau ketika ruang itu terbakar.</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. Watertight doors are outside the rule; doors to the open deck have a row of their own.</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan sekatnya: A-15 cukup pada A-60, A-30, dan A-15. Pintu kedap air di luar aturan ini; pintu ke geladak terbuka punya butir tersendiri.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead solid or hollow steel or equal</source>
        <translation type="unfinished">Pintu di sekat kelas A: baja berongga atau setara, terisi padat insulasi struktural yang disetujui; di sekat A-0 baja pejal atau berongga, atau setara</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">Baja atau setara, dan terisi insulasi yang disetujui bila sekatnya A-15 atau lebih?</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its papers. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling that is not on the papers.</source>
        <translation type="unfinished">Ketuk daun pintu dan baca dokumennya. A-60, A-30, A-15: terisi insulasi yang disetujui. A-0: baja, pejal atau berongga. Buruk: kayu, plastik, isian yang tidak ada dalam dokumen.</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary solid or hollow steel or equal</source>
        <translation type="unfinished">Pintu di pembatas kelas A: baja berongga atau setara, terisi padat insulasi struktural yang disetujui; di pembatas A-0 baja pejal atau berongga, atau setara</translation>
    </message>
    <message>
        <source>Door in a B-class bulkhead: solid or hollow steel or equal metal; or a metal frame with glass panes; or incombustible and approved for it</source>
        <translation type="unfinished">Pintu di sekat kelas B: baja pejal atau berongga, atau logam setara; atau rangka logam dengan panel kaca; atau tak mudah terbakar dan disetujui untuk itu</translation>
    </message>
    <message>
        <source>Metal, glass in a metal frame, or incombustible and approved?</source>
        <translation type="unfinished">Logam, kaca dalam rangka logam, atau tak mudah terbakar dan disetujui?</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but metal. No class is printed for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Lihat daun pintu dan kusen, dan minta persetujuan untuk apa pun selain logam. Tidak ada kelas tercetak untuk pintu demikian. Buruk: kayu atau plastik tanpa persetujuan.</translation>
    </message>
    <message>
        <source>Door in a B-class boundary: solid or hollow steel or equal; or noncombustible and approved for it</source>
        <translation type="unfinished">Pintu di pembatas kelas B: baja pejal atau berongga, atau setara; atau tak mudah terbakar dan disetujui untuk itu</translation>
    </message>
    <message>
        <source>Steel or equal, or noncombustible and approved?</source>
        <translation type="unfinished">Baja atau setara, atau tak mudah terbakar dan disetujui?</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but steel. No class is printed for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Lihat daun pintu dan kusen, dan minta persetujuan untuk apa pun selain baja. Tidak ada kelas tercetak untuk pintu demikian. Buruk: panel kaca dalam rangka, kayu, atau plastik tanpa persetujuan.</translation>
    </message>
    <message>
        <source>Door in a bulkhead that must be C class is of approved incombustible material</source>
        <translation type="unfinished">Pintu di sekat yang harus kelas C dari bahan tak mudah terbakar yang disetujui</translation>
    </message>
    <message>
        <source>Of approved incombustible material?</source>
        <translation type="unfinished">Dari bahan tak mudah terbakar yang disetujui?</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no limit on the undercut are asked here.</source>
        <translation type="unfinished">Minta persetujuan bahannya. Baik: logam, atau papan tak mudah terbakar yang disetujui. Buruk: kayu atau plastik. Di sini tidak diminta kancing maupun batas celah bawah.</translation>
    </message>
    <message>
        <source>Door in a C-class boundary is noncombustible</source>
        <translation type="unfinished">Pintu di pembatas kelas C tak mudah terbakar</translation>
    </message>
    <message>
        <source>Noncombustible?</source>
        <translation type="unfinished">Tak mudah terbakar?</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph asks this in a C&apos; boundary: not applicable there.</source>
        <translation type="unfinished">Minta persetujuan bahannya. Baik: logam, atau papan yang disetujui sebagai tak mudah terbakar. Buruk: kayu atau plastik. Tidak ada paragraf yang memintanya pada pembatas C&apos;: di sana tidak berlaku.</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then free of the rules for A-class doors</source>
        <translation type="unfinished">Pintu ke geladak terbuka di sekat kelas A boleh dari kayu keras, tebal minimal 44.5 mm (1 3/4 in), dan bebas dari aturan pintu kelas A</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">Dari kayu keras, tebal minimal 44.5 mm (1 3/4 in)?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. Whether such a door at a stairway must also close by itself is not said: ask.</source>
        <translation type="unfinished">Kayu keras, diukur di tepi daun pintu: 1 3/4 inci. Apakah pintu demikian di tangga juga harus menutup sendiri tidak disebut: tanyakan.</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Pintu ke geladak cuaca di pembatas kelas A boleh dari kayu keras, tebal minimal 45 mm (1.75 in)</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">Dari kayu keras, tebal minimal 45 mm (1.75 in)?</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. Whether latch, undercut, frame and closing by itself bind such a door is not said: ask.</source>
        <translation type="unfinished">Kayu keras, diukur di tepi daun pintu: 45 mm. Apakah ketentuan kancing, celah bawah, kusen, dan menutup sendiri mengikat pintu demikian tidak disebut: tanyakan.</translation>
    </message>
    <message>
        <source>One person can work it from each side</source>
        <translation type="unfinished">Satu orang dapat menjalankannya dari setiap sisi</translation>
    </message>
    <message>
        <source>Can one person work it?</source>
        <translation type="unfinished">Dapatkah satu orang menjalankannya?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or somebody on the far side.</source>
        <translation type="unfinished">Sendirian, dari setiap sisi: buka dan tutup. Baik: paling banyak satu tangan di gagang dan satu bahu. Buruk: perlu dua orang, alat, atau seseorang di sisi seberang.</translation>
    </message>
    <message>
        <source>Opens the way people escape, where practicable</source>
        <translation type="unfinished">Terbuka ke arah orang menyelamatkan diri, bila dapat dilakukan</translation>
    </message>
    <message>
        <source>Opens the way people escape, or is that not practicable here?</source>
        <translation type="unfinished">Terbuka ke arah orang menyelamatkan diri, atau itu tidak dapat dilakukan di sini?</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Pintu ruang umum, selubung tangga, koridor, dan sejenisnya. Pintu kamar tidur tidak dikecualikan. Bila tidak dapat dilakukan, tulis alasannya dalam catatan dan jawab ya.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it cannot be done, say why in a remark and answer yes.</source>
        <translation type="unfinished">Pintu ruang akomodasi, tangga, menara tangga, lorong, dan ruang kendali; pintu kamar tidur dikecualikan. Bila tidak dapat dilakukan, tulis alasannya dalam catatan dan jawab ya.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side in light and in dark, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Sebagai jalan penyelamatan diri: dibuka satu orang dari sisi mana pun saat terang dan gelap, cara membukanya jelas dan cepat, dengan gagang tetap</translation>
    </message>
    <message>
        <source>One person, at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">Satu orang, seketika, dalam gelap, dengan gagang tetap?</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where a hand goes, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Pejamkan mata dan buka, dari sisi mana pun. Baik: gagang ada di tempat tangan meraih, tetap, dan satu gerakan membukanya. Buruk: gagang longgar, pengait tersembunyi, gerakan kedua.</translation>
    </message>
    <message>
        <source>As a means of escape it opens toward the way of escape</source>
        <translation type="unfinished">Sebagai jalan penyelamatan diri, terbuka ke arah jalan penyelamatan</translation>
    </message>
    <message>
        <source>Opens toward the way of escape?</source>
        <translation type="unfinished">Terbuka ke arah jalan penyelamatan?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. Here the rule has no words &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Berdirilah di tempat orang datang dan dorong. Di sini aturannya tidak memuat kata &quot;bila dapat dilakukan&quot;. Pintu kamar tidur individual dikecualikan.</translation>
    </message>
    <message>
        <source>A door that only crew use</source>
        <translation type="unfinished">Pintu yang hanya dipakai awak</translation>
    </message>
    <message>
        <source>Do only crew use it?</source>
        <translation type="unfinished">Apakah hanya awak yang memakainya?</translation>
    </message>
    <message>
        <source>Ask who comes through it when the ship is full. A door that a passenger may use in an emergency is not one of crew alone.</source>
        <translation type="unfinished">Tanyakan siapa yang melewatinya saat kapal penuh. Pintu yang mungkin dipakai penumpang dalam keadaan darurat bukan pintu awak saja.</translation>
    </message>
    <message>
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Lebar bersih pintu yang dipakai sebagai jalan penyelamatan diri minimal 810 mm (32 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; where only crew use it 28.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. 32 inci; bila hanya dipakai awak, 28.</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Lebar bersih pintu yang hanya dipakai awak sebagai jalan penyelamatan diri minimal 710 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew alone.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. 28 inci bila hanya untuk awak.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, save a crash door or a device easily forced, marked on both sides</source>
        <translation type="unfinished">Tidak ada kunci pada pintu menuju salah satu dari dua jalan penyelamatan diri wajib, kecuali pintu dobrak (crash door) atau alat yang mudah dibuka paksa, ditandai di kedua sisi</translation>
    </message>
    <message>
        <source>Free of a lock on the way to a required escape, or easily forced and so marked on both sides?</source>
        <translation type="unfinished">Bebas kunci ke arah jalan penyelamatan diri wajib, atau mudah dibuka paksa dan ditandai demikian di kedua sisi?</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked by a key that an officer holds is free of it.</source>
        <translation type="unfinished">Baik: tidak ada kunci; atau kunci yang mudah dibuka paksa, dengan tanda jelas dan awet di kedua sisi. Pintu luar rumah geladak yang anak kuncinya dipegang perwira bebas dari ini.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, in sight with the door open</source>
        <translation type="unfinished">Pintu bertanda huruf F.S.D. dan nomor, tinggi minimal 9.5 mm (3/8 in) pada pelat, 25.4 mm (1 in) bila dicat mal (stensil), terlihat saat pintu terbuka</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and in sight with the door open?</source>
        <translation type="unfinished">Ada F.S.D. dan nomornya, cukup besar dan terlihat saat pintu terbuka?</translation>
    </message>
    <message>
        <source>Open the door, then look: F. S. D. and the register&apos;s number. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, gone, painted over. A door of a single room is free of it.</source>
        <translation type="unfinished">Buka pintu, lalu lihat: F. S. D. dan nomor menurut register. Huruf pelat 3/8 inci, huruf stensil 1 inci. Buruk: tertutup daun pintu yang terbuka, hilang, tertutup cat. Pintu ruang individual bebas dari ini.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts doors normally locked, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) mengecualikan pintu yang biasanya terkunci, 78.47-35(a) pintu ruang individual: bukan pintu yang sama.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not say how many are berthed.</source>
        <translation type="unfinished">Ini mengikat kapal dengan lebih dari 600 penumpang atau lebih dari 49 penumpang dengan tempat tidur (46 CFR 116.438(a)); register tidak menyebut berapa yang punya tempat tidur.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Penahannya dilepas dari stasiun kontrol dan di pintu; menutup bila sistem kendali gagal</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when the system fails?</source>
        <translation type="unfinished">Dilepas penahannya dari stasiun kontrol dan di pintu, dan menutup sendiri bila sistem gagal?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with the system off: it must shut each time. A door that is normally closed need not have it. Hooks are asked about apart.</source>
        <translation type="unfinished">Coba dari stasiun kontrol, di pintu, dan dengan sistem mati: harus menutup setiap kali. Pintu yang biasanya tertutup tidak harus memilikinya. Kait ditanyakan tersendiri.</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">Alat penahan, bila ada, dilepas dari stasiun kontrol dan di pintu, dan bila dayanya gagal</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shut by itself when its power fails?</source>
        <translation type="unfinished">Dilepas penahannya dari stasiun kontrol dan di pintu, dan menutup sendiri bila dayanya gagal?</translation>
    </message>
    <message>
        <source>Try it from the control station, at the door, and with its power off: it must shut each time. No hold-back fitted: not applicable. Hooks are asked about apart.</source>
        <translation type="unfinished">Coba dari stasiun kontrol, di pintu, dan dengan dayanya mati: harus menutup setiap kali. Tidak ada alat penahan: tidak berlaku. Kait ditanyakan tersendiri.</translation>
    </message>
    <message>
        <source>No hook or other lasting means holds it open that the control station cannot let go</source>
        <translation type="unfinished">Tidak ada kait atau alat tetap lain yang menahannya terbuka dan tidak dapat dilepas stasiun kontrol</translation>
    </message>
    <message>
        <source>Free of hooks that the control station cannot let go?</source>
        <translation type="unfinished">Bebas kait yang tidak dapat dilepas stasiun kontrol?</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that lets go from the control station, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Lihat di belakang daun pintu yang terbuka, pada sekat dan di kakinya. Baik: magnet yang melepas dari stasiun kontrol, atau tidak ada apa-apa. Buruk: kait, rantai, ganjal yang dipasang tetap di geladak.</translation>
    </message>
    <message>
        <source>The sentence on hooks exempts nobody; whether the exemption of normally closed doors, in the sentence on release, reaches it is not said.</source>
        <translation type="unfinished">Kalimat tentang kait tidak mengecualikan siapa pun; apakah pengecualian pintu yang biasanya tertutup, dalam kalimat tentang pelepasan penahan, mencakupnya tidak disebut.</translation>
    </message>
    <message>
        <source>No hold-back hook at all</source>
        <translation type="unfinished">Sama sekali tidak ada kait penahan</translation>
    </message>
    <message>
        <source>Free of hold-back hooks?</source>
        <translation type="unfinished">Bebas kait penahan?</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station lets go is allowed, and a door normally closed or locked is not exempt.</source>
        <translation type="unfinished">Lihat di belakang daun pintu yang terbuka, pada sekat dan di kakinya. Kait yang dapat dilepas stasiun kontrol pun tidak diizinkan, dan pintu yang biasanya tertutup atau terkunci tidak dikecualikan.</translation>
    </message>
    <message>
        <source>The latch of a double-swing door engages by the working of the release system</source>
        <translation type="unfinished">Kancing pintu ayun dua arah masuk oleh kerja sistem pelepasan penahan</translation>
    </message>
    <message>
        <source>Does the release make its latch engage?</source>
        <translation type="unfinished">Apakah pelepasan penahan membuat kancingnya masuk?</translation>
    </message>
    <message>
        <source>Release it and watch the latch come home by itself. Such a door stands only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Lepas penahannya dan amati kancing masuk sendiri sampai penuh. Pintu demikian hanya boleh ada bila ayun dua arah diizinkan untuk penggunaan ruang itu.</translation>
    </message>
    <message>
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Lebar bersih pintu ke tangga minimal 711.2 mm (28 in)</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has a row of its own.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. 28 inci selalu; lebih bila melayani lebih dari sepuluh orang, yang punya butir tersendiri.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served asks, and on the embarkation deck 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Pintu ke tangga selebar yang diminta jumlah orang yang dilayani, dan di geladak embarkasi 1118 mm (44 in) ke setiap sisi</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">Cukup lebar untuk orang yang dilayaninya?</translation>
    </message>
    <message>
        <source>Zone stairs, persons served: to 20 30 in, to 30 32, to 40 34, to 50 36, over 50 0.75 in each. Other passenger stairs over 50: 36. Crew over 10: 30. Embarkation deck: 44 to each side.</source>
        <translation type="unfinished">Tangga zona, orang dilayani: sampai 20: 30 in, sampai 30: 32, sampai 40: 34, sampai 50: 36, di atas 50: 0.75 in per orang. Tangga penumpang lain di atas 50: 36. Awak di atas 10: 30. Geladak embarkasi: 44 ke setiap sisi.</translation>
    </message>
    <message>
        <source>The leaves of a double door may shut in any order</source>
        <translation type="unfinished">Kedua daun pintu pada pintu dua daun boleh menutup dalam urutan apa pun</translation>
    </message>
    <message>
        <source>Do the leaves shut in any order?</source>
        <translation type="unfinished">Apakah kedua daun pintu menutup dalam urutan apa pun?</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it goes both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Tutup dahulu satu daun pintu, lalu yang lain; kemudian sebaliknya. Baik: bisa dengan kedua cara. Hanya satu cara: daun pintu kedua perlu sponing sendiri.</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Bila satu daun pintu harus selalu menutup dahulu, yang kedua punya sponing minimal 12.7 mm (1/2 in)</translation>
    </message>
    <message>
        <source>Where the leaves lap, measure the stop that the second leaf shuts against. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">Di tempat kedua daun pintu bertumpang tindih, ukur sponing tempat daun pintu kedua menutup. 1/2 inci di tempat tersempit.</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class bulkhead has a latch</source>
        <translation type="unfinished">Pintu di sekat kelas A atau kelas B punya kancing</translation>
    </message>
    <message>
        <source>Is there a latch?</source>
        <translation type="unfinished">Ada kancing?</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted it may be idle, but it is there.</source>
        <translation type="unfinished">Lihat tepi daun pintu. Baik: ada lidah, dan pelat kuncinya di kusen. Buruk: rol, magnet, atau tidak ada apa-apa. Bila ayun dua arah diizinkan, kancing boleh tidak bekerja, tetapi harus ada.</translation>
    </message>
    <message>
        <source>A door in an A-class or B-class boundary has a latch</source>
        <translation type="unfinished">Pintu di pembatas kelas A atau kelas B punya kancing</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing.</source>
        <translation type="unfinished">Lihat tepi daun pintu. Baik: ada lidah, dan pelat kuncinya di kusen. Buruk: rol, magnet, atau tidak ada apa-apa.</translation>
    </message>
    <message>
        <source>For a hardwood door to the weather deck 46 CFR 116.435(c)(9) sets construction and rating aside and says nothing of this.</source>
        <translation type="unfinished">Untuk pintu kayu keras ke geladak cuaca, 46 CFR 116.435(c)(9) mengesampingkan konstruksi dan kelas dan tidak menyebut apa pun tentang hal ini.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Kancingnya bekerja dari kedua sisi</translation>
    </message>
    <message>
        <source>Does the handle draw the latch?</source>
        <translation type="unfinished">Apakah gagang menarik kancing?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not draw the bolt.</source>
        <translation type="unfinished">Tutup, lalu buka dengan gagangnya: dari satu sisi, lalu dari sisi lain. Buruk: satu sisi tanpa gagang, atau gagang yang tidak menarik lidah.</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Lidah kancing menjulur minimal 19.05 mm (3/4 in) di sekat kelas A, 9.525 mm (3/8 in) di sekat kelas B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Dengan pintu terbuka dan ditahan, ukur seberapa jauh lidah menjulur dari tepi. 3/4 inci; kelas B 3/8 inci.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (printed beside it: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Lidah kancing menjulur minimal 20 mm (tercetak di sampingnya: 0.75 in) di pembatas kelas A, 9.5 mm (0.375 in) di pembatas kelas B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt stands out of the edge. A class: the text prints 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Dengan pintu terbuka dan ditahan, ukur seberapa jauh lidah menjulur dari tepi. Kelas A: teks mencetak 20 mm dan 0.75 inci, yaitu 19.05 mm. Kelas B: 9.5 mm.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Celah bawah di atas ambang atau pelapis geladak maksimal 12.7 mm (1/2 in) di sekat kelas A, 25.4 mm (1 in) di sekat kelas B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">Tempat terburuk di bawah pintu tertutup, sampai ambang atau pelapis geladak. 1/2 inci; kelas B 1 inci. Linoleum dan sejenisnya dihitung sebagai pelapis geladak.</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Celah bawah di atas ambang atau pelapis geladak maksimal 12.7 mm (1/2 in) di pembatas kelas A, 25 mm (1 in) di pembatas kelas B</translation>
    </message>
    <message>
        <source>The worst place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">Tempat terburuk di bawah pintu tertutup, sampai ambang atau pelapis geladak. 1/2 inci; kelas B 25 mm atau 1 inci. Linoleum dan sejenisnya dihitung sebagai pelapis geladak.</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Tidak ada permadani atau karpet yang menerus melalui pintu</translation>
    </message>
    <message>
        <source>Free of rugs and carpets that run through?</source>
        <translation type="unfinished">Bebas permadani dan karpet yang menerus?</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Lihat geladak di bawah pintu yang terbuka. Baik: ambang, geladak polos, linoleum, atau sejenisnya. Buruk: permadani atau karpet yang menerus dari satu sisi ke sisi lain.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work alone, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Celah di antara kedua daun pintu yang bekerja sendiri-sendiri, dan di atas dan sisi pintu ayun dua arah, maksimal 3.175 mm (1/8 in)</translation>
    </message>
    <message>
        <source>How far the shut leaf laps over the stop of its frame, at the sides and the top; double doors too. 1/2 inch at the narrowest place.</source>
        <translation type="unfinished">Seberapa jauh daun pintu yang tertutup menumpang pada sponing kusennya, di sisi dan atas; pintu dua daun juga. 1/2 inci di tempat tersempit.</translation>
    </message>
    <message>
        <source>The frame is of rigid construction</source>
        <translation type="unfinished">Kusen berkonstruksi kaku</translation>
    </message>
    <message>
        <source>Is the frame rigid?</source>
        <translation type="unfinished">Apakah kusennya kaku?</translation>
    </message>
    <message>
        <source>Push at head and sides of the frame, and look at its fixings. Good: it does not give. Bad: it moves, or is loose from the bulkhead.</source>
        <translation type="unfinished">Dorong bagian atas dan sisi kusen, dan lihat pengikatnya. Baik: tidak bergeming. Buruk: bergerak, atau lepas dari sekat.</translation>
    </message>
    <message>
        <source>Net area of a vent grille or louver in a B-class bulkhead&apos;s door at most 0.186 m2 (2 sq ft)</source>
        <translation type="unfinished">Luas bersih kisi ventilasi atau jalusi pada pintu di sekat kelas B maksimal 0.186 m2 (2 sq ft)</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K prints nothing on grilles in such doors.</source>
        <translation type="unfinished">Jumlahkan celah terbuka kisi, bukan rangkanya. 2 kaki persegi. Tanpa kisi: 0. Subchapter K tidak mencetak apa pun tentang kisi pada pintu demikian.</translation>
    </message>
    <message>
        <source>A vent grille or louver stands only in the lower half of a B-class bulkhead&apos;s door</source>
        <translation type="unfinished">Kisi ventilasi atau jalusi hanya di separuh bawah pintu di sekat kelas B</translation>
    </message>
    <message>
        <source>Is the grille in the lower half alone?</source>
        <translation type="unfinished">Apakah kisi hanya di separuh bawah?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: not applicable.</source>
        <translation type="unfinished">Bandingkan tepi atasnya dengan tengah daun pintu. Tanpa kisi: tidak berlaku.</translation>
    </message>
    <message>
        <source>A double-swing door stands only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Pintu ayun dua arah hanya ada bila ayun dua arah diizinkan untuk penggunaan ruang itu</translation>
    </message>
    <message>
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">Apakah ayun dua arah diizinkan untuk penggunaan ruang ini?</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is for. Where double swing is permitted its latch may normally be idle, but the door has one.</source>
        <translation type="unfinished">Minta persetujuannya, atau lihat untuk apa ruang itu. Bila ayun dua arah diizinkan, kancingnya biasanya boleh tidak bekerja, tetapi pintu harus memilikinya.</translation>
    </message>
    <message>
        <source>No double-swing door, save between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Tidak ada pintu ayun dua arah, kecuali antara ruang penyiapan makanan dan ruang makan awak (messroom) atau ruang makan</translation>
    </message>
    <message>
        <source>Between galley or pantry and messroom or dining room?</source>
        <translation type="unfinished">Antara dapur atau pantri dan ruang makan awak atau ruang makan?</translation>
    </message>
    <message>
        <source>Look at both sides of the door. Good: galley or pantry on one side, messroom or dining room on the other. Bad: anywhere else in an A-class boundary.</source>
        <translation type="unfinished">Lihat kedua sisi pintu. Baik: dapur atau pantri di satu sisi, ruang makan awak (messroom) atau ruang makan di sisi lain. Buruk: di tempat lain mana pun pada pembatas kelas A.</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 mm square, hinged or pivoted steel cover with a bullet catch or the like, easy to work and shutting by itself</source>
        <translation type="unfinished">Lubang selang kebakaran, bila ada: sudut bawah di seberang engsel, sekitar 152 mm x 152 mm, penutup baja berengsel atau berporos dengan kancing bola (bullet catch) atau sejenisnya, mudah dijalankan dan menutup sendiri</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 inches square, no tolerance printed: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. Register wrong, no port there: not applicable.</source>
        <translation type="unfinished">Sudut bawah di seberang engsel, sekitar 6 x 6 inci, tanpa toleransi tercetak: selang harus lewat dan pintu menutup di atasnya. Angkat penutup baja dan lepaskan: harus jatuh menutup. Register salah, lubang tidak ada di sana: tidak berlaku.</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is a vertical one</source>
        <translation type="unfinished">Pintu di ruang akomodasi, tangga, menara tangga, atau koridor adalah pintu tegak</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) asks for one?</source>
        <translation type="unfinished">Apakah ini pintu tegak, bila (b)(1) memintanya?</translation>
    </message>
    <message>
        <source>This one lies in a deck. Between machinery, stores or other crew spaces: not applicable. Over a stair: both paragraphs stand, and you decide.</source>
        <translation type="unfinished">Pintu ini pada lantai geladak. Antara ruang permesinan, gudang, atau ruang awak lain: tidak berlaku. Di atas tangga: kedua paragraf berlaku, dan Anda yang memutuskan.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) asks for vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither sets the other aside.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) meminta pintu tegak di tangga, (c)(7)(iii) berbicara tentang pintu pada lantai geladak selebar tangga: keduanya tidak saling mengesampingkan.</translation>
    </message>
    <message>
        <source>A door in a deck gives only on a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Pintu pada lantai geladak hanya menuju ruang yang hanya dapat dicapai awak, dan hanya dipakai awak</translation>
    </message>
    <message>
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">Apakah hanya awak yang dapat mencapai ruang itu, dan hanya awak yang memakai pintunya?</translation>
    </message>
    <message>
        <source>Two tests: nobody but crew can get to the space, and nobody but crew use the door. Bad: a passenger could come to it, locked or not.</source>
        <translation type="unfinished">Dua syarat: selain awak tidak ada yang dapat mencapai ruang itu, dan selain awak tidak ada yang memakai pintunya. Buruk: penumpang dapat sampai ke situ, terkunci atau tidak.</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Pintu pada lantai geladak menutup sendiri melawan kemiringan 3.5 derajat</translation>
    </message>
    <message>
        <source>Clear the stair and let it go from fully open and half open. Good: all the way home each time. The 3.5 degree part cannot be seen on an upright ship.</source>
        <translation type="unfinished">Kosongkan tangga, lalu lepaskan dari terbuka penuh dan setengah terbuka. Baik: setiap kali tertutup rapat. Bagian 3.5 derajat tidak terlihat pada kapal yang tegak.</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Pintu pada lantai geladak tidak punya kait penahan</translation>
    </message>
    <message>
        <source>Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up. Nobody stands under it.</source>
        <translation type="unfinished">Lihat sekat dan ambang tegak (coaming) di samping pintu yang terbuka. Baik: tidak ada kait, rantai, atau pasak yang menahannya terbuka. Dilarang berdiri di bawahnya.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, lets go at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">Alat penahan pintu pada lantai geladak, bila ada, terlepas di pintu, oleh sinyal dari ruang kendali, dan bila daya terputus</translation>
    </message>
    <message>
        <source>Lets go at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">Penahannya terlepas di pintu, dari ruang kendali, dan bila daya hilang?</translation>
    </message>
    <message>
        <source>Clear the stair first. At the door, from the control space, with its power off: it must shut each time. No hold-back fitted: not applicable.</source>
        <translation type="unfinished">Kosongkan tangga dahulu. Di pintu, dari ruang kendali, dengan daya mati: harus menutup setiap kali. Tidak ada alat penahan: tidak berlaku.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure from below of 0.07 kPa (0.01 psi)</source>
        <translation type="unfinished">Kancing pintu pada lantai geladak menjaganya tertutup terhadap tekanan dari bawah 0.07 kPa (0.01 psi)</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">Apakah kancing bertahan terhadap 0.07 kPa dari bawah?</translation>
    </message>
    <message>
        <source>A check of papers: the maker&apos;s figure, 0.07 kPa, about 7 kg on each square metre. Shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Pemeriksaan dokumen: angka pembuatnya, 0.07 kPa, kira-kira 7 kg per meter persegi. Saat tertutup, dorong ke atas dari bawah: tidak boleh terangkat.</translation>
    </message>
    <message>
        <source>A door without glass</source>
        <translation type="unfinished">Pintu tanpa kaca</translation>
    </message>
    <message>
        <source>Is the door without glass?</source>
        <translation type="unfinished">Apakah pintu ini tanpa kaca?</translation>
    </message>
    <message>
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint is glass.</source>
        <translation type="unfinished">Periksa seluruh daun pintu, kedua muka, termasuk kaca yang tertutup panel. Lembar kaca di balik penutup atau di bawah cat tetap dihitung kaca.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m2 (100 sq in)</source>
        <translation type="unfinished">Kaca kawat pada pintu kelas A maksimal 0.0645 m2 (100 sq in)</translation>
    </message>
    <message>
        <source>The glass that can be seen, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">Kaca yang terlihat, tinggi kali lebar. 100 inci persegi. Tanpa kaca: 0. Pintu ke geladak terbuka tidak punya batas demikian.</translation>
    </message>
    <message>
        <source>All glass in the door is wired glass</source>
        <translation type="unfinished">Semua kaca pada pintu adalah kaca kawat</translation>
    </message>
    <message>
        <source>Is all its glass wired?</source>
        <translation type="unfinished">Apakah semua kacanya kaca kawat?</translation>
    </message>
    <message>
        <source>Look through each pane for the wires. Bad: cracked, or no wire in it.</source>
        <translation type="unfinished">Cari kawat di setiap panel kaca. Buruk: retak, atau tanpa kawat di dalamnya.</translation>
    </message>
    <message>
        <source>Glass in a door to the open deck is wired where it opens onto a lifeboat embarkation or lowering place</source>
        <translation type="unfinished">Kaca pada pintu ke geladak terbuka adalah kaca kawat bila pintu menuju tempat embarkasi atau penurunan sekoci</translation>
    </message>
    <message>
        <source>Is its glass wired, where it opens onto a place of embarkation or lowering?</source>
        <translation type="unfinished">Apakah kacanya kaca kawat, bila pintu menuju tempat embarkasi atau penurunan?</translation>
    </message>
    <message>
        <source>Asked where it opens there from a service, cargo or machinery space, or from accommodation with furniture that burns. Its area is free. Opening elsewhere: not applicable.</source>
        <translation type="unfinished">Ditanya bila pintu menuju ke sana dari ruang layanan, ruang muat, atau ruang permesinan, atau dari akomodasi berperabot mudah terbakar. Luasnya bebas. Menuju tempat lain: tidak berlaku.</translation>
    </message>
    <message>
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Setiap kaca pada pintu tebalnya minimal 6.35 mm (1/4 in)</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure of the papers. The thinnest pane counts.</source>
        <translation type="unfinished">Termasuk pintu kayu keras ke geladak terbuka. Ukur di tepi yang terbuka, atau ambil angka dari dokumen. Panel kaca tertipis yang dihitung.</translation>
    </message>
    <message>
        <source>Glass in a door sits in a steel or equal metal frame, held by metal beads or angles</source>
        <translation type="unfinished">Kaca pada pintu terpasang dalam rangka baja atau logam setara, dijepit lis atau siku logam</translation>
    </message>
    <message>
        <source>Glass held by metal, in a metal frame?</source>
        <translation type="unfinished">Kaca dijepit logam, dalam rangka logam?</translation>
    </message>
    <message>
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone. In a hardwood door to the open deck: not applicable.</source>
        <translation type="unfinished">Lihat sepanjang tepi setiap panel kaca, di kedua muka. Baik: logam di sekelilingnya. Buruk: hanya kayu, dempul, atau karet. Pada pintu kayu keras ke geladak terbuka: tidak berlaku.</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is asked: strands lie level, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Kaca berkawat tunggal, bila kaca kawat diminta: kawat mendatar, jarak maksimal 50.8 mm (2 in)</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: they lie level. Bad: upright. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">Dari kawat ke kawat, di tempat terlebar. 2 inci. Baik: kawat mendatar. Buruk: tegak. Kaca dengan anyaman kawat: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary asks</source>
        <translation type="unfinished">Jendela pada pintu mengikuti aturan jendela: kaca tempered atau laminasi tebal minimal 6.5 mm (0.25 in), dengan rangka dan penutup (shutter) seperti diminta pembatasnya</translation>
    </message>
    <message>
        <source>Are its windows as those of its boundary must be?</source>
        <translation type="unfinished">Apakah jendelanya sesuai dengan yang diwajibkan pada pembatasnya?</translation>
    </message>
    <message>
        <source>A class: steel frame and, inside, an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. A fire window of a listed make will do in B class.</source>
        <translation type="unfinished">Kelas A: rangka baja dan, di dalam, penutup (shutter) berinsulasi. B-15: kaca kawat, dan penutup dengan sambungan lebur (fusible link); B-0: kaca kawat. Jendela kebakaran buatan terdaftar cukup untuk kelas B.</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) on windows in doors stands beside the wired glass of 116.435(c)(9) and (10) without a word of which goes first.</source>
        <translation type="unfinished">46 CFR 116.433(f) tentang jendela pada pintu berdampingan dengan kaca kawat 116.435(c)(9) dan (10) tanpa menyebut mana yang didahulukan.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where the bulkhead may have it</source>
        <translation type="unfinished">Pelapis (veneer) mudah terbakar hanya sebatas dan di tempat yang diizinkan bagi sekatnya</translation>
    </message>
    <message>
        <source>Free of veneer that its bulkhead may not have?</source>
        <translation type="unfinished">Bebas pelapis (veneer) yang tidak diizinkan bagi sekatnya?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than the bulkhead beside it may have. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Bandingkan daun pintu dan sekat. Baik: tanpa pelapis (veneer), atau tidak lebih dari yang diizinkan bagi sekat di sampingnya. Buruk: kayu atau laminasi pada pintu padahal sekatnya tidak.</translation>
    </message>
    <message>
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Pintu hias di sampingnya dari bahan tak mudah terbakar yang disetujui, tidak menghalanginya, dan pada jalur utama penyelamatan diri terbuka ke arah yang sama</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns or opens the wrong way?</source>
        <translation type="unfinished">Bebas pintu hias yang menghalanginya, mudah terbakar, atau terbuka ke arah yang salah?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Jalankan keduanya bersama. Tidak ada pintu hias: tidak berlaku. Buruk: harus dibuka lebih dahulu, gagangnya menghalangi, atau mengayun melawan arus orang.</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Pintu hias di sampingnya tak mudah terbakar atau dari kayu keras, tidak menghalanginya dan terbuka ke arah yang sama; tidak ada di tangga dan menara tangga</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, burns, opens the wrong way or stands at a stair?</source>
        <translation type="unfinished">Bebas pintu hias yang menghalanginya, mudah terbakar, terbuka ke arah yang salah, atau ada di tangga?</translation>
    </message>
    <message>
        <source>Work both together. None there: not applicable. Bad: it must be opened first, it opens the other way, or it stands at a stairway.</source>
        <translation type="unfinished">Jalankan keduanya bersama. Tidak ada pintu hias: tidak berlaku. Buruk: harus dibuka lebih dahulu, terbuka ke arah lain, atau ada di tangga.</translation>
    </message>
    <message>
        <source>Metal plate on a vertical edge of the leaf, screwed or riveted, with maker, class, type approval number and drawing number</source>
        <translation type="unfinished">Pelat logam di tepi tegak daun pintu, disekrup atau dikeling, dengan pembuat, kelas, nomor persetujuan tipe dan nomor gambar</translation>
    </message>
    <message>
        <source>Metal plate on the edge of the leaf, with all four entries?</source>
        <translation type="unfinished">Pelat logam di tepi daun pintu, dengan keempat keterangan?</translation>
    </message>
    <message>
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted: maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Tepi tegak daun yang terbuka. Baik: pelat logam, disekrup atau dikeling: pembuat, kelas, nomor persetujuan, nomor gambar. Buruk: tidak ada, stiker, tertutup cat, kurang satu keterangan.</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, ss. 103, 106)</source>
        <translation type="unfinished">kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 103 dan 106)</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 203)</translation>
    </message>
    <message>
        <source>The gap between leaf and frame is no wider than in the fire test of the door</source>
        <translation type="unfinished">Celah antara daun pintu dan kusen tidak lebih lebar daripada saat uji api pintu itu</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">Celah daun dan kusen tidak lebih lebar daripada saat uji apinya?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Ask for the report of its fire test: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or nobody knows what was tested.</source>
        <translation type="unfinished">Keliling daun yang tertutup, dengan feeler gauge. Mintalah laporan uji apinya: di situ ada celah yang diuji. Baik: tidak lebih lebar di mana pun. Buruk: lebih lebar, atau tak ada yang tahu.</translation>
    </message>
    <message>
        <source>The gap between leaf and frame is the smallest with which the door works</source>
        <translation type="unfinished">Celah antara daun pintu dan kusen adalah yang terkecil agar pintu masih berfungsi</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">Celah antara daun dan kusen sekecil mungkin?</translation>
    </message>
    <message>
        <source>Round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or a side that hangs open.</source>
        <translation type="unfinished">Keliling daun yang tertutup, dengan feeler gauge. Baik: rata dan tidak lebih dari yang diperlukan daun untuk bergerak. Buruk: cahaya tembus, atau satu sisi menganga.</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures</source>
        <translation type="unfinished">seberapa kecil celah yang masih dapat dipakai, teks tidak menyebut angka</translation>
    </message>
    <message>
        <source>how small a gap is workable, the text does not say in figures; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">seberapa kecil celah yang masih dapat dipakai, teks tidak menyebut angka; kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 203)</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">Tidak ada kisi atau lubang udara pada pintu</translation>
    </message>
    <message>
        <source>No grille or louvre in it?</source>
        <translation type="unfinished">Tanpa kisi atau lubang udara?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or holes for air, open or closed with a plate.</source>
        <translation type="unfinished">Kedua muka daun, dari atas ke bawah. Baik: tidak ada. Buruk: kisi, kisi-kisi miring atau lubang udara, terbuka atau ditutup pelat.</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut</source>
        <translation type="unfinished">Cukup kedap gas saat tertutup</translation>
    </message>
    <message>
        <source>Reasonably gastight when shut?</source>
        <translation type="unfinished">Cukup kedap gas saat tertutup?</translation>
    </message>
    <message>
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, next to no draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Tutup, letakkan lampu di sisi lain dan lihat sepanjang tepinya; rasakan aliran udara. Baik: tak ada cahaya, hampir tak ada aliran. Buruk: cahaya, seal yang tidak menyentuh, lubang.</translation>
    </message>
    <message>
        <source>A door of a machinery space of category A is gastight when shut</source>
        <translation type="unfinished">Pintu ruang mesin kategori A kedap gas saat tertutup</translation>
    </message>
    <message>
        <source>Gastight when shut?</source>
        <translation type="unfinished">Kedap gas saat tertutup?</translation>
    </message>
    <message>
        <source>Shut it with the fans of the machinery space running and go round the edge with a hand and a lamp. Good: no draught and no light anywhere. The space is not of category A: n/a.</source>
        <translation type="unfinished">Tutup saat kipas ruang mesin berjalan dan telusuri tepinya dengan tangan dan lampu. Baik: tak ada aliran udara atau cahaya. Ruang bukan kategori A: tidak berlaku.</translation>
    </message>
    <message>
        <source>The leaf overlaps its frame</source>
        <translation type="unfinished">Daun pintu menutupi tepi kusennya</translation>
    </message>
    <message>
        <source>Does the leaf overlap its frame?</source>
        <translation type="unfinished">Apakah daun menutupi tepi kusennya?</translation>
    </message>
    <message>
        <source>Shut it and look at the edge from both sides. Good: leaf or stop covers the gap on every side that has a frame. Bad: you can look straight through between leaf and frame.</source>
        <translation type="unfinished">Tutup dan lihat tepinya dari kedua sisi. Baik: daun atau penahan menutup celah di setiap sisi yang berkusen. Buruk: bisa melihat tembus antara daun dan kusen.</translation>
    </message>
    <message>
        <source>No opening for air in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Tidak ada bukaan udara pada atau di bawah pintu selubung tangga</translation>
    </message>
    <message>
        <source>No opening for air in or under it?</source>
        <translation type="unfinished">Tanpa bukaan udara pada atau di bawahnya?</translation>
    </message>
    <message>
        <source>The whole leaf and its foot, shut. Good: no grille, no holes, no cut for air at the foot. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Seluruh daun dan kakinya, tertutup. Baik: tanpa kisi, lubang, atau potongan untuk udara di bawah. Buruk: kisi di mana pun, atau celah untuk udara di bawahnya.</translation>
    </message>
    <message>
        <source>Every hose port that is fitted: self-closing, 150 mm square clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Setiap lubang selang kebakaran yang terpasang: menutup sendiri, bersih 150 mm x 150 mm saat pintu tertutup, setahan api pintunya</translation>
    </message>
    <message>
        <source>A hose port that is fitted: self-closing, 150 mm square</source>
        <translation type="unfinished">Lubang selang kebakaran, bila ada: menutup sendiri, 150 mm x 150 mm</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Menutup sendiri</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. The text prints no angle. The space is not of category A: n/a.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah, dan sudut kecil. Baik: menutup penuh setiap kali. Teks tidak mencetak sudut. Ruang bukan kategori A: tidak berlaku.</translation>
    </message>
    <message>
        <source>Opening for air in or under the door of a corridor no more than 0.05 m2, with a non-combustible grille</source>
        <translation type="unfinished">Bukaan udara pada atau di bawah pintu koridor tidak lebih dari 0,05 m2, dengan kisi tak dapat terbakar</translation>
    </message>
    <message>
        <source>The grille in the leaf or the cut under it. Count only the open area between the bars; 0 where there is none. The grille must be of a kind that cannot burn. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">Kisi pada daun atau potongan di bawahnya. Hitung hanya luas bebas di antara bilah; 0 bila tidak ada. Kisi harus tak dapat terbakar. Bukan pintu koridor: tidak berlaku.</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half of the door of a corridor, or under it</source>
        <translation type="unfinished">Bukaan udara hanya di separuh bawah pintu koridor, atau di bawahnya</translation>
    </message>
    <message>
        <source>Opening for air only in the lower half, or none?</source>
        <translation type="unfinished">Bukaan udara hanya di separuh bawah, atau tidak ada?</translation>
    </message>
    <message>
        <source>Find every opening for air in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a door of a corridor: n/a.</source>
        <translation type="unfinished">Cari setiap bukaan udara pada daun. Baik: di separuh bawah, di bawahnya, atau tidak ada. Buruk: kisi atau lubang di separuh atas. Bukan pintu koridor: tidak berlaku.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule prints no angle that was read</source>
        <translation type="unfinished">Menutup sendiri; dari aturan lama tidak ada sudut yang dibaca</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah, dan sudut kecil. Baik: menutup penuh setiap kali. Buruk: tetap renggang.</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">apakah ps. 158 Peraturan Konstruksi Lambung adalah aturan lama yang dipertahankan kapal ini (SOR/2017-14, ps. 103 dan 203)</translation>
    </message>
    <message>
        <source>What holds it open is fail-safe: it closes when the hold fails</source>
        <translation type="unfinished">Yang menahannya terbuka aman bila gagal: pintu menutup saat penahan gagal</translation>
    </message>
    <message>
        <source>What holds it open is released at the door</source>
        <translation type="unfinished">Yang menahannya terbuka dapat dilepas di pintu</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing.</source>
        <translation type="unfinished">Gunakan sakelar atau gagang di pintu. Baik: pintu terlepas. Buruk: tidak terjadi apa-apa.</translation>
    </message>
    <message>
        <source>What holds it open is released from the wheelhouse</source>
        <translation type="unfinished">Yang menahannya terbuka dapat dilepas dari ruang kemudi</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">Apakah ruang kemudi melepas penahannya?</translation>
    </message>
    <message>
        <source>The wheelhouse releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">Ruang kemudi melepas penahan pintu atau grupnya. Baik: terlepas dan menutup. Buruk: tetap terbuka. Petugas jaga di setiap pintu grup, kedua sisi.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans stand above these rows; changes after 25 July 2025 were not checked.</source>
        <translation type="unfinished">Transport Canada, inspekturnya, dan denah yang disetujui berada di atas baris ini; perubahan setelah 25 Juli 2025 tidak diperiksa.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and these rows (ss. 101, 102, 120); one built before 1 July 2002 may keep the structural fire protection of its day, but not part E, replaced parts or a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Kapal penumpang Kanada dengan sertifikat konvensi: SOLAS II-2 mengikatnya, juga baris ini (ps. 101, 102, 120); yang dibangun sebelum 1 Juli 2002 boleh mempertahankan perlindungan struktural masanya, tetapi tidak untuk bagian E, bagian yang diganti, atau perombakan besar (ps. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, state of 23 July 2026), everything about doors</source>
        <translation type="unfinished">Undang-undang Kanada terkonsolidasi dalam XML (github.com/justicecanada/laws-lois-xml, keadaan 23 Juli 2026), semua tentang pintu</translation>
    </message>
    <message>
        <source>The law of its day for a ship built before 1 July 2002</source>
        <translation type="unfinished">Hukum pada masanya untuk kapal yang dibangun sebelum 1 Juli 2002</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, of 24 m or more, or of more than 15 gross tons, less than 24 m and more than 36 berthed passengers: SOLAS II-2 binds them too (s. 102(1)); berths decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Kapal penumpang Kanada tanpa sertifikat konvensi, 24 m atau lebih, atau lebih dari 15 ton kotor, kurang dari 24 m dan lebih dari 36 penumpang bertempat tidur: SOLAS II-2 juga mengikatnya (ps. 102(1)); tempat tidur menentukan mana yang dihitung lebih dari 36 penumpang (ps. 102(3))</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, but for s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Aturan lama yang boleh dipertahankan kapal yang dibangun sebelum 3 Februari 2017, kecuali ps. 158 Peraturan Konstruksi Lambung</translation>
    </message>
    <message>
        <source>Canadian day boats: of 24 m or more, without berths, for fewer than 100 passengers, in sheltered waters or on near coastal voyages class 2, limited (part 2, ss. 201, 212, 218)</source>
        <translation type="unfinished">Kapal harian Kanada: 24 m atau lebih, tanpa tempat tidur, kurang dari 100 penumpang, di perairan terlindung atau pelayaran dekat pantai kelas 2 terbatas (bagian 2, ps. 201, 212, 218)</translation>
    </message>
    <message>
        <source>berths and voyage decide whether this ship counts as one of more than 36 passengers (SOR/2017-14, s. 102(3))</source>
        <translation type="unfinished">tempat tidur dan pelayaran menentukan apakah kapal ini dihitung lebih dari 36 penumpang (SOR/2017-14, ps. 102(3))</translation>
    </message>
    <message>
        <source>The door is of the class of the partition it stands in; a watertight door needs no insulation</source>
        <translation type="unfinished">Pintu berkelas sama dengan sekat tempatnya; pintu kedap air tidak perlu isolasi</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door is at least as strong. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Bandingkan pelat pintu dengan kelas sekat di sekelilingnya. Baik: pintu setidaknya sekuat itu. Pintu kedap air tidak perlu isolasi (ps. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>read for vessels built from 30 December 2008 until ES-TRIN took its place on 7 October 2018 (a date from memory); for any other vessel the text was not read</source>
        <translation type="unfinished">dibaca untuk kapal yang dibangun sejak 30 Desember 2008 sampai ES-TRIN menggantikannya pada 7 Oktober 2018 (tanggal dari ingatan); untuk kapal lain teksnya tidak dibaca</translation>
    </message>
    <message>
        <source>Closes by itself; the text prints no angle, no seconds and no speed</source>
        <translation type="unfinished">Menutup sendiri; teks tidak mencetak sudut, detik, atau kecepatan</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: all the way home each time. Bad: it stands ajar. The text prints no angle, seconds or speed.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah, dan sudut kecil. Baik: menutup penuh setiap kali. Buruk: tetap renggang. Teks tidak mencetak sudut, detik, atau kecepatan.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Bila terbuka saat beroperasi, dapat ditutup di tempat</translation>
    </message>
    <message>
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">Dapat ditutup di tempat?</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go and it closes. Bad: it does nothing.</source>
        <translation type="unfinished">Gunakan sakelar atau gagang di pintu. Baik: pintu terlepas dan menutup. Buruk: tidak terjadi apa-apa.</translation>
    </message>
    <message>
        <source>Kept open in service, it can be closed from a place that is permanently manned</source>
        <translation type="unfinished">Bila terbuka saat beroperasi, dapat ditutup dari tempat yang dijaga terus-menerus</translation>
    </message>
    <message>
        <source>Can it be closed from the place that is always manned?</source>
        <translation type="unfinished">Dapat ditutup dari tempat yang selalu dijaga?</translation>
    </message>
    <message>
        <source>The place that is always manned releases the door or its group. Good: it lets go and closes. Bad: it stays open. A watch at every door of the group, both sides.</source>
        <translation type="unfinished">Tempat yang selalu dijaga melepas penahan pintu atau grupnya. Baik: terlepas dan menutup. Buruk: tetap terbuka. Petugas jaga di setiap pintu grup, kedua sisi.</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened on the spot and closes safely again</source>
        <translation type="unfinished">Setelah ditutup dari jauh dapat dibuka lagi di tempat dan menutup kembali dengan aman</translation>
    </message>
    <message>
        <source>Re-opens on the spot after remote closing, and closes safely again?</source>
        <translation type="unfinished">Setelah ditutup dari jauh, dapat dibuka di tempat dan menutup lagi dengan aman?</translation>
    </message>
    <message>
        <source>After the release from the manned place, open it by hand and let go. Good: it opens, and closes again without harm to anybody. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Setelah dilepas dari tempat yang dijaga, buka dengan tangan lalu lepaskan. Baik: terbuka dan menutup lagi tanpa melukai siapa pun. Buruk: tetap terkunci, atau tetap terbuka.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which took the place of this text, was not read.</source>
        <translation type="unfinished">Badan inspeksi yang menerbitkan sertifikat kapal yang memutuskan; ES-TRIN, yang menggantikan teks ini, tidak dibaca.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, by their certificate of Directive 2006/87/EC</source>
        <translation type="unfinished">Kapal penumpang di perairan pedalaman Uni Eropa, menurut sertifikat Directive 2006/87/EC</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations that are not in a code); the end of its dates is from memory</source>
        <translation type="unfinished">Peraturan Prancis 30 Desember 2008, lampiran, ps. 15.11(8) dan (10) (github.com/etalab, undang-undang dan peraturan yang tidak dikodifikasi); akhir tanggalnya dari ingatan</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which took its place; what was allowed to vessels that were there before; the tables of partitions</source>
        <translation type="unfinished">ES-TRIN bab 19, yang menggantikannya; apa yang diizinkan bagi kapal yang sudah ada; tabel sekat</translation>
    </message>
    <message>
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">kode mengatakan &quot;should&quot; (sebaiknya)</translation>
    </message>
    <message>
        <source>Work the switch or handle at the door. Good: it lets the door go. Bad: it does nothing. The code asks for it at the door, not from both sides.</source>
        <translation type="unfinished">Gunakan sakelar atau gagang di pintu. Baik: pintu terlepas. Buruk: tidak terjadi apa-apa. Kode memintanya di pintu, bukan dari kedua sisi.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes that came after LY3 were not read.</source>
        <translation type="unfinished">Administrasi yang mensertifikasi kapal pesiar itu memutuskan; kode setelah LY3 tidak dibaca.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified by LY3; the code says &quot;should&quot;, so a failure is the inspector&apos;s to decide</source>
        <translation type="unfinished">Kapal pesiar komersial besar 500 ton kotor ke atas bersertifikat LY3; kode mengatakan &quot;should&quot;, jadi kegagalan diputuskan inspektur</translation>
    </message>
    <message>
        <source>A page of imorules.com, of which paragraph 14B.2.7.4 was at hand to sub-item (e)</source>
        <translation type="unfinished">Satu halaman imorules.com, dengan paragraf 14B.2.7.4 tersedia sampai butir (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates between which LY3 was in force; what came after it. Other rows of SOLAS are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 setelah butir (e), dan paragraf lain tentang perlindungan kebakaran; tanggal berlakunya LY3; apa yang datang sesudahnya. Baris SOLAS lain ditampilkan sebagai saran.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration stand above these periods; no days of grace are printed.</source>
        <translation type="unfinished">Rencana pemeliharaan perusahaan dan Administrasi negara bendera berada di atas jangka waktu ini; tidak ada hari tenggang yang dicetak.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date; what the circular says of maintenance, not of a test</source>
        <translation type="unfinished">Setiap kapal, tanggal apa pun; yang dikatakan surat edaran tentang pemeliharaan, bukan uji</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432; SOLAS III/19 dan III/30 di basis data perjanjian pemerintah Belanda (BWBV0003264, April 2015)</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: rows of SOLAS are shown as advice and fail nothing, and rows of common practice are left to the inspector.</source>
        <translation type="unfinished">Administrasi kapal itu sendiri menentukan apa yang mengikatnya: baris SOLAS ditampilkan sebagai saran dan tidak menggagalkan apa pun, dan baris praktik umum diputuskan inspektur.</translation>
    </message>
    <message>
        <source>Vessels of other flags, and of rules that are not named here: no text in this catalogue binds them, and everything they are told is advice</source>
        <translation type="unfinished">Kapal bendera lain, dan aturan yang tidak disebut di sini: tidak ada teks dalam katalog ini yang mengikatnya, dan semua yang disampaikan adalah saran</translation>
    </message>
    <message>
        <source>Every text of such a flag</source>
        <translation type="unfinished">Setiap teks dari bendera itu</translation>
    </message>
    <message>
        <source>Rows of common practice have no published source here: they never fail a door by themselves, the inspector decides.</source>
        <translation type="unfinished">Baris praktik umum tidak punya sumber terbitan di sini: tidak pernah menggagalkan pintu sendirian, inspektur yang memutuskan.</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Setiap kapal, apa pun bendera dan tanggalnya</translation>
    </message>
    <message>
        <source>There is no published text of it.</source>
        <translation type="unfinished">Tidak ada teks terbitan tentangnya.</translation>
    </message>
    <message>
        <source>The speed of closing is controlled where that is needed so that nobody is endangered; the older text prints no figure</source>
        <translation type="unfinished">Kecepatan menutup diatur bila perlu agar tidak ada orang yang terancam; teks lama tidak mencetak angka</translation>
    </message>
    <message>
        <source>Speed of closing controlled, so that nobody is endangered?</source>
        <translation type="unfinished">Kecepatan menutup diatur, sehingga tidak ada yang terancam?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text prints no seconds and no metres a second.</source>
        <translation type="unfinished">Amati saat menutup dari terbuka penuh. Baik: bergerak tetap, orang sempat menyingkir. Buruk: terbanting atau meluncur lepas. Teks lama tidak mencetak detik maupun meter per detik.</translation>
    </message>
    <message>
        <source>where the speed has to be controlled, the text leaves to judgement; it prints no figure</source>
        <translation type="unfinished">di mana kecepatan harus diatur, teks menyerahkannya pada pertimbangan; tidak ada angka yang dicetak</translation>
    </message>
    <message>
        <source>Of the texts before 1 July 2002 only a part was read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">Dari teks sebelum 1 Juli 2002 hanya sebagian yang dibaca: untuk kapal yang lebih tua mintalah denah yang disetujui dan aturan pada masanya.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun sebelum 1 Juli 2002, yang mempertahankan bab II-2 dengan perubahan sampai masanya (II-2/1.2.1 tahun 2015); setelah perbaikan atau perubahan setidaknya itu, setelah perubahan besar teks baru sejauh wajar (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Aturan Taiwan tentang struktur kebakaran kapal, ps. 27, per 9 Januari 2018: satu transposisi nasional dari rumusan 1981/83 SOLAS II-2/30</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres a second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 tahun 1981/83 dalam cetakan; perubahan 1992 pada aturan 30, 41-1 dan 41-2 (detik, meter per detik, alarm, tanggal penyesuaian): mintalah denah yang disetujui; tabel kebakaran sebelum 2002</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun sebelum 1 Juli 2002 dengan ruang kategori khusus</translation>
    </message>
    <message>
        <source>An English print of MSC.1(XLV) on the internet, of which only a part was at hand: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Salinan bahasa Inggris MSC.1(XLV) di internet, hanya sebagian yang tersedia: II-2/37.1.1.2 dan 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, the regulation on doors (30) among it</source>
        <translation type="unfinished">Sisa perubahan 1981, termasuk aturan tentang pintu (30)</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Alarm berbunyi saat dilepas dari stasiun kendali</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">Apakah alarm berbunyi saat stasiun kendali melepasnya?</translation>
    </message>
    <message>
        <source>Listen at the door as the control station releases it. Good: the alarm sounds before the leaf stirs. Bad: silence, or an alarm that starts with the leaf. A silent sliding door crushes whoever stands in it.</source>
        <translation type="unfinished">Dengarkan di pintu saat stasiun kendali melepasnya. Baik: alarm berbunyi sebelum daun bergerak. Buruk: sunyi, atau alarm mulai bersama daun. Pintu geser tanpa suara menjepit siapa pun di dalamnya.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; whether this door is in a public space the register does not say</source>
        <translation type="unfinished">9.4.1.1.8 menyebut tangga, ruang umum dan sekat zona; register tidak menyebut apakah pintu ini di ruang umum</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans stand above this catalogue; amendments after its edition were not checked.</source>
        <translation type="unfinished">Aturan setempat, Administrasi negara bendera, dan denah yang disetujuinya berada di atas katalog ini; perubahan setelah edisinya tidak diperiksa.</translation>
    </message>
    <message>
        <source>Passenger ships of SOLAS built on or after 1 July 2002; part E, condition and maintenance plan, of any date</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun sejak 1 Juli 2002; bagian E, kondisi dan rencana pemeliharaan, dari tanggal apa pun</translation>
    </message>
    <message>
        <source>The English print in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">Cetakan Inggris di basis data perjanjian pemerintah Belanda (BWBV0003264, April 2015), dan cetakan Prancis atas teks Prancis (peraturan 23 November 1987, divisi 221), yang menguatkan setiap angka</translation>
    </message>
    <message>
        <source>Amendments after April 2015: of MSC.421(98) nothing was seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations of IMO and of classification societies.</source>
        <translation type="unfinished">Perubahan setelah April 2015: dari MSC.421(98) tidak ada yang terlihat; dari MSC.550(108), berlaku 1 Januari 2026, hanya bahwa II-2/9.6 dinomori ulang. Interpretasi IMO dan biro klasifikasi.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) speaks of public spaces, stairway enclosures, corridors and the like; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) menyebut ruang umum, ruang tangga, koridor dan sejenisnya; tidak disebut apakah mencakup pintu ini.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) speaks of accommodation spaces, stairways, stairtowers, passageways and control spaces; whether it reaches this door is not said.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) menyebut ruang akomodasi, tangga, menara tangga, gang dan ruang kendali; tidak disebut apakah mencakup pintu ini.</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may be asked what stairway doors are</source>
        <translation type="unfinished">Pintu luar yang keluar dari ruang tangga dapat dikenai aturan pintu tangga</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">Apakah keluar dari ruang tangga?</translation>
    </message>
    <message>
        <source>See what lies inside the door. Yes: a stairway enclosure. Neither answer is a fault: it decides what else is asked of the door.</source>
        <translation type="unfinished">Lihat apa yang ada di dalam pintu. Ya: ruang tangga. Tidak ada jawaban yang salah: ini menentukan apa lagi yang ditanyakan.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; whether 72.05-25(b)(9) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) membolehkan kayu keras untuk pintu ke geladak terbuka; tidak disebut apakah 72.05-25(b)(9) masih mencakup pintu dari tangga.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; whether 116.435(c)(6) still reaches a door that leads off a stairway is not said.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) membolehkan kayu keras untuk pintu ke geladak cuaca; tidak disebut apakah 116.435(c)(6) masih mencakup pintu dari tangga.</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the edition of 2015 were not checked. Later rules whose headings touch these parts, and whose text was not read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may stand while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 takes its place (116.400). A vessel that was there before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">Officer in Charge, Marine Inspection, memutuskan apa yang berlaku bagi kapal Amerika Serikat; perubahan setelah edisi 2015 tidak diperiksa. Aturan kemudian yang judulnya menyentuh bagian ini, dan teksnya tidak dibaca: 81 FR 48219 (22 Juli 2016), 89 FR 76676 (18 September 2024) dan, untuk 46 CFR 111.99-3, 88 FR 16365 (16 Maret 2023). Subbab H untuk kapal 100 ton kotor ke atas, atau lebih dari 150 penumpang, atau dalam pelayaran internasional, dikontrak sejak 26 Mei 1965; yang disetujui sebelumnya boleh tetap selama terjaga baik (46 CFR 72.05-1, 72.05-90). Subbab K untuk kapal dengan lebih dari 150 penumpang, atau 50 sampai 150 penumpang bertempat tidur; dengan lebih dari 150 penumpang bertempat tidur berlaku 72.05 (116.400). Kapal yang sudah ada sebelum 11 Maret 1996 mempertahankan aturan 10 Maret 1996, atau boleh memilih yang ini (116.115).</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Kapal penumpang Amerika Serikat subbab H: 100 ton kotor ke atas, lebih dari 150 penumpang, atau dalam pelayaran internasional; dikontrak sejak 26 Mei 1965</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10 paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">Edisi tahunan 2015, setiap bagian di halamannya sendiri dari salinan publik (github.com/18F/allregs); dari 72.05-10 paragraf (a) sampai (g) dan tabel (d) dan (e)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Perubahan setelah 2015. Aturan sebelum 26 Mei 1965, yang boleh dipertahankan kapal yang lebih tua.</translation>
    </message>
    <message>
        <source>Passenger vessels of the United States of subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Kapal penumpang Amerika Serikat subbab K: lebih dari 150 penumpang, atau 50 sampai 150 penumpang bertempat tidur; dibangun sejak 11 Maret 1996</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">Edisi tahunan 2015, setiap bagian di halamannya sendiri dari salinan publik (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Perubahan setelah 2015. Aturan 10 Maret 1996, yang boleh dipertahankan kapal yang lebih tua.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>Another edition of the catalogue is in use.</source>
        <translation type="unfinished">Edisi lain dari katalog digunakan.</translation>
    </message>
    <message>
        <source>Another edition of the catalogue, or of the rules of %1, is in use.</source>
        <translation type="unfinished">Edisi lain dari katalog, atau dari aturan %1, digunakan.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer stand over the catalogue.</source>
        <translation type="unfinished">Aturan %1 tidak lagi berada di atas katalog.</translation>
    </message>
    <message>
        <source>The rules of %1 now stand over the catalogue.</source>
        <translation type="unfinished">Aturan %1 sekarang berada di atas katalog.</translation>
    </message>
    <message>
        <source>%1 before, %2 now</source>
        <translation type="unfinished">sebelumnya %1, sekarang %2</translation>
    </message>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">tidak ada persyaratan itu</translation>
    </message>
    <message>
        <source>not asked of this door</source>
        <translation type="unfinished">tidak ditanya untuk pintu ini</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Batas: %1</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
    <message>
        <source>The claim stands.</source>
        <translation type="unfinished">Pernyataan itu berlaku.</translation>
    </message>
    <message>
        <source>Go on: test %1 more.</source>
        <translation type="unfinished">Lanjutkan: uji %1 lagi.</translation>
    </message>
    <message>
        <source>Extend: test %1 more; if none of those fails, the claim stands, with a little less confidence than stated, for the doors themselves made the sample larger.</source>
        <translation type="unfinished">Perluas: uji %1 lagi; bila tidak ada yang gagal, pernyataan berlaku, dengan keyakinan sedikit lebih kecil daripada yang disebut, karena pintu-pintu itu sendiri memperbesar sampel.</translation>
    </message>
    <message>
        <source>Every door was tested: the claim does not stand.</source>
        <translation type="unfinished">Semua pintu sudah diuji: pernyataan tidak berlaku.</translation>
    </message>
    <message>
        <source>Test all: the %1 doors that are left as well.</source>
        <translation type="unfinished">Uji semua: %1 pintu yang tersisa juga.</translation>
    </message>
    <message>
        <source>none of %1 doors is defective</source>
        <translation type="unfinished">tidak satu pun dari %1 pintu cacat</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors is defective</source>
        <translation type="unfinished">maksimal %1 dari %2 pintu cacat</translation>
    </message>
    <message>
        <source>at most %1 of %2 doors are defective</source>
        <translation type="unfinished">maksimal %1 dari %2 pintu cacat</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, %3 failed: %4 confident that %5. %6</source>
        <translation type="unfinished">%1 dari %2 pintu diuji, %3 gagal: %4 yakin bahwa %5. %6</translation>
    </message>
    <message>
        <source>none of 1 door is defective</source>
        <translation type="unfinished">tidak satu pun dari 1 pintu cacat</translation>
    </message>
    <message>
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">maksimal 1 dari 1 pintu cacat</translation>
    </message>
    <message>
        <source>Test 1 door, drawn by lot. If none fails: %1 confident that %2.</source>
        <translation type="unfinished">Uji 1 pintu, dipilih dengan undian. Bila tidak ada yang gagal: %1 yakin bahwa %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn by lot. If none fails: %2 confident that %3.</source>
        <translation type="unfinished">Uji %1 pintu, dipilih dengan undian. Bila tidak ada yang gagal: %2 yakin bahwa %3.</translation>
    </message>
    <message>
        <source>Another claim, not to be mixed up with it: where exactly %1 of %2 doors are defective, testing %3 gives a chance of at least %4 to find one of them or more.</source>
        <translation type="unfinished">Pernyataan lain, jangan dicampuradukkan dengan yang tadi: bila tepat %1 dari %2 pintu cacat, menguji %3 memberi peluang minimal %4 untuk menemukan satu atau lebih di antaranya.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confident that %3. %4</source>
        <translation type="unfinished">%1 dari 1 pintu diuji, tidak ada yang gagal: %2 yakin bahwa %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confident that %4. %5</source>
        <translation type="unfinished">%1 dari %2 pintu diuji, tidak ada yang gagal: %3 yakin bahwa %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confident that %2. %3</source>
        <translation type="unfinished">1 dari 1 pintu diuji, 1 gagal: %1 yakin bahwa %2. %3</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Pelat berukir %1</translation>
    </message>
    <message>
        <source>A plate scoured bare; no letter is left</source>
        <translation type="unfinished">Pelat tergerus polos; tidak ada huruf tersisa</translation>
    </message>
    <message>
        <source>Four screw holes round a pale patch</source>
        <translation type="unfinished">Empat lubang sekrup di sekitar bekas pucat</translation>
    </message>
    <message>
        <source>A magnet on its arm, its armature on the leaf</source>
        <translation type="unfinished">Magnet pada lengannya, angkernya pada daun</translation>
    </message>
    <message>
        <source>Lining and frame</source>
        <translation type="unfinished">Lapisan dinding dan kusen</translation>
    </message>
    <message>
        <source>%1; a hook hangs from an eye plate on the lining</source>
        <translation type="unfinished">%1; kait menggantung dari pelat mata pada lapisan dinding</translation>
    </message>
    <message>
        <source>%1; nothing else</source>
        <translation type="unfinished">%1; tidak ada yang lain</translation>
    </message>
    <message>
        <source>The lower corner of the leaf, plain</source>
        <translation type="unfinished">Sudut bawah daun, polos</translation>
    </message>
    <message>
        <source>A port 150 mm square, %1</source>
        <translation type="unfinished">Lubang 150 mm persegi, %1</translation>
    </message>
    <message>
        <source>its cover lifted</source>
        <translation type="unfinished">penutupnya terangkat</translation>
    </message>
    <message>
        <source>its cover hangs part open</source>
        <translation type="unfinished">penutupnya tergantung setengah terbuka</translation>
    </message>
    <message>
        <source>its cover lies flat on it</source>
        <translation type="unfinished">penutupnya rapat menempel</translation>
    </message>
    <message>
        <source>Two lamps, nobody has told of them yet</source>
        <translation type="unfinished">Dua lampu, belum ada yang melaporkannya</translation>
    </message>
    <message>
        <source>The lamp marked shut is lit</source>
        <translation type="unfinished">Lampu bertanda tertutup menyala</translation>
    </message>
    <message>
        <source>The lamp marked open is lit</source>
        <translation type="unfinished">Lampu bertanda terbuka menyala</translation>
    </message>
    <message>
        <source>A soft edge on the leaf and a block before it; nothing was run onto it yet</source>
        <translation type="unfinished">Tepi lunak pada daun dan balok di depannya; belum ada yang mengenainya</translation>
    </message>
    <message>
        <source>A steel sill screwed down, the floor covering ends at its trim</source>
        <translation type="unfinished">Ambang baja tersekrup, pelapis lantai berakhir di lisnya</translation>
    </message>
    <message>
        <source>The floor covering runs on under the leaf; four holes in the deck</source>
        <translation type="unfinished">Pelapis lantai menerus di bawah daun; empat lubang di geladak</translation>
    </message>
    <message>
        <source>The rule reads %1 mm at the foot of the leaf</source>
        <translation type="unfinished">Mistar menunjukkan %1 mm di kaki daun</translation>
    </message>
    <message>
        <source>The deck, and a wooden wedge under the edge of the leaf</source>
        <translation type="unfinished">Geladak, dan ganjal kayu di bawah tepi daun</translation>
    </message>
    <message>
        <source>The deck on both sides, nothing on it</source>
        <translation type="unfinished">Geladak di kedua sisi, tidak ada apa pun di atasnya</translation>
    </message>
    <message>
        <source>A cup, crumpled paper and an end of line on the bottom rail</source>
        <translation type="unfinished">Cangkir, kertas kusut, dan ujung tali di rel bawah</translation>
    </message>
    <message>
        <source>Two plates and the bottom rail between them, nothing on it</source>
        <translation type="unfinished">Dua pelat dan rel bawah di antaranya, tidak ada apa pun di atasnya</translation>
    </message>
    <message>
        <source>Bright rail, two hangers, their rollers on it</source>
        <translation type="unfinished">Rel mengilap, dua penggantung, rolnya di atas rel</translation>
    </message>
    <message>
        <source>Paint of the bulkhead runs over the seal</source>
        <translation type="unfinished">Cat sekat menutupi paking</translation>
    </message>
    <message>
        <source>A dark strip in its groove, from top to bottom</source>
        <translation type="unfinished">Strip gelap di alurnya, dari atas sampai bawah</translation>
    </message>
    <message>
        <source>Hinges with all their screws, the gap at the head even</source>
        <translation type="unfinished">Engsel dengan semua sekrupnya, celah di atas rata</translation>
    </message>
    <message>
        <source>A dry body, the arm in its shoe on the frame</source>
        <translation type="unfinished">Badan kering, lengan di sepatunya pada kusen</translation>
    </message>
    <message>
        <source>The bolt stands well out of its case</source>
        <translation type="unfinished">Lidah kancing menonjol jelas dari rumahnya</translation>
    </message>
    <message>
        <source>The tip of the bolt just shows out of its case</source>
        <translation type="unfinished">Ujung lidah kancing hanya sedikit keluar dari rumahnya</translation>
    </message>
    <message>
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Daun dan kusen, catnya rata, tidak ada yang terpasang padanya</translation>
    </message>
    <message>
        <source>The release at this side under its cover, lever upright</source>
        <translation type="unfinished">Pelepas di sisi ini di bawah tutupnya, tuas tegak</translation>
    </message>
    <message>
        <source>The edge stands %1 back from the block, by the tape</source>
        <translation type="unfinished">Tepi berada %1 mundur dari balok, menurut pita ukur</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>The release has been announced to everyone near these doors</source>
        <translation type="unfinished">Pelepasan sudah diumumkan kepada semua orang di dekat pintu-pintu ini</translation>
    </message>
    <message>
        <source>Passengers and crew are clear of every door that will move, and kept clear</source>
        <translation type="unfinished">Penumpang dan awak bebas dari setiap pintu yang akan bergerak, dan tetap dijauhkan</translation>
    </message>
    <message>
        <source>A watch stands at every door that will move, on both sides</source>
        <translation type="unfinished">Penjaga berdiri di setiap pintu yang akan bergerak, di kedua sisi</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">Stasiun kendali ada di kanal yang disepakati dan siap</translation>
    </message>
    <message>
        <source>The word to start and the word to stop have been said and repeated</source>
        <translation type="unfinished">Kata mulai dan kata stop sudah diucapkan dan diulangi</translation>
    </message>
    <message>
        <source>Nothing stands in the path or the pocket; no hand, foot or cable at an edge</source>
        <translation type="unfinished">Tidak ada apa pun di lintasan atau rongga; tidak ada tangan, kaki, atau kabel di tepi daun</translation>
    </message>
    <message>
        <source>It shuts faster than the text allows.</source>
        <translation type="unfinished">Menutup lebih cepat daripada yang diizinkan teks.</translation>
    </message>
    <message>
        <source>It shuts more slowly than the text allows.</source>
        <translation type="unfinished">Menutup lebih lambat daripada yang diizinkan teks.</translation>
    </message>
    <message>
        <source>It shuts within a hair of the limit: no thumb can pass or fail it.</source>
        <translation type="unfinished">Menutup nyaris tepat di batas: tidak ada jempol yang dapat menyatakan lulus atau gagal.</translation>
    </message>
    <message>
        <source>It moves less than 5 s after the alarm begins.</source>
        <translation type="unfinished">Bergerak kurang dari 5 s setelah alarm mulai.</translation>
    </message>
    <message>
        <source>The alarm stops before the leaf is home.</source>
        <translation type="unfinished">Alarm berhenti sebelum daun tertutup rapat.</translation>
    </message>
    <message>
        <source>On contact it re-opens more than 1 m.</source>
        <translation type="unfinished">Saat kontak, membuka lagi lebih dari 1 m.</translation>
    </message>
    <message>
        <source>The selector fails: the leaf that must wait comes home first.</source>
        <translation type="unfinished">Pengatur urutan gagal: daun yang harus menunggu tertutup lebih dahulu.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it gives way when it is pushed.</source>
        <translation type="unfinished">Menutup tetapi tidak terkancing: terbuka bila didorong.</translation>
    </message>
    <message>
        <source>The magnet holds on for half a minute after the control station&apos;s release, which is taken as not released (common practice, no source).</source>
        <translation type="unfinished">Magnet masih menahan setengah menit setelah pelepasan stasiun kendali, dan ini dianggap tidak lepas (praktik umum, tanpa sumber).</translation>
    </message>
    <message>
        <source>It cannot be released from one of its sides.</source>
        <translation type="unfinished">Tidak dapat dilepas dari salah satu sisinya.</translation>
    </message>
    <message>
        <source>A hook can hold it open that the control station cannot release.</source>
        <translation type="unfinished">Ada kait yang dapat menahannya terbuka dan tidak dapat dilepas stasiun kendali.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Ada ganjal yang menahannya terbuka.</translation>
    </message>
    <message>
        <source>Litter lies in the pocket.</source>
        <translation type="unfinished">Ada sampah di rongga.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Ambangnya hilang.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than the text allows.</source>
        <translation type="unfinished">Celah di bawah daun lebih lebar daripada yang diizinkan teks.</translation>
    </message>
    <message>
        <source>The plate names a lower class than the boundary asks for.</source>
        <translation type="unfinished">Pelat menyebut kelas lebih rendah daripada yang diminta pembatas.</translation>
    </message>
    <message>
        <source>The seal is painted over.</source>
        <translation type="unfinished">Paking tertutup cat.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows it open when it is shut.</source>
        <translation type="unfinished">Panel stasiun kendali menunjukkan terbuka padahal tertutup.</translation>
    </message>
    <message>
        <source>The cover of the hose port does not shut by itself.</source>
        <translation type="unfinished">Penutup lubang selang tidak menutup sendiri.</translation>
    </message>
    <message>
        <source>Opened again at the door after remote closing, it stays open.</source>
        <translation type="unfinished">Dibuka lagi di pintu setelah penutupan jarak jauh, pintu tetap terbuka.</translation>
    </message>
    <message>
        <source>Somebody was in the way of the leaf: the run has to be stopped.</source>
        <translation type="unfinished">Ada orang di lintasan daun: uji harus dihentikan.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">tidak ada nilai tercetak: tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 will do with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">Sekat zona vertikal utama, undakan dan ceruknya adalah A-60; A-0 cukup bila ada ruang kategori 5, 9, atau 10 di satu sisi, atau tangki bahan bakar minyak di kedua sisi.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation is that of the table, where B-0, C and * are read as A-0.</source>
        <translation type="unfinished">Sekat zona vertikal utama adalah kelas A; insulasinya menurut tabel, dengan B-0, C, dan * dibaca A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 will do with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Pembatas ruang kategori khusus dan ruang ro-ro adalah A-60; A-0 cukup bila ada ruang kategori 5, 9, atau 10 di satu sisi.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead has the greater of A-30 and table (b); A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Sekat zona vertikal utama memakai yang lebih tinggi dari A-30 dan tabel (b); A-0 cukup bila ada ruang tipe 8, 12, atau 13 di salah satu sisi.</translation>
    </message>
    <message>
        <source>A step of a main vertical zone is A-60; A-0 will do with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Undakan zona vertikal utama adalah A-60; A-0 cukup bila ada ruang tipe 8, 12, atau 13 di salah satu sisi.</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Dua nilai tercetak; yang lebih ketat diberikan di sini.</translation>
    </message>
    <message>
        <source>The value of ships built on or after 1 July 2014 is given; the date of building is not known.</source>
        <translation type="unfinished">Diberikan nilai untuk kapal yang dibangun pada atau setelah 1 Juli 2014; tanggal pembangunan tidak diketahui.</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 keeps the tables of its day, which are not here: compare with the approved plan.</source>
        <translation type="unfinished">Kapal yang dibangun sebelum 1 Juli 2002 tetap memakai tabel pada masanya, yang tidak ada di sini: bandingkan dengan denah yang disetujui.</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">sekat zona</translation>
    </message>
    <message>
        <source>stairway enclosure</source>
        <translation type="unfinished">selubung tangga</translation>
    </message>
    <message>
        <source>galley boundary</source>
        <translation type="unfinished">pembatas dapur</translation>
    </message>
    <message>
        <source>machinery space boundary</source>
        <translation type="unfinished">pembatas ruang permesinan</translation>
    </message>
    <message>
        <source>special category boundary</source>
        <translation type="unfinished">pembatas ruang kategori khusus</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">kabin</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">luar</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">pembatas lain</translation>
    </message>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">daun tunggal</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">daun ganda</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">geser</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">ayun dua arah</translation>
    </message>
    <message>
        <source>not listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">tidak tercantum dalam II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>normally open</source>
        <translation type="unfinished">biasanya terbuka</translation>
    </message>
    <message>
        <source>normally closed</source>
        <translation type="unfinished">biasanya tertutup</translation>
    </message>
    <message>
        <source>normally locked</source>
        <translation type="unfinished">biasanya terkunci</translation>
    </message>
    <message>
        <source>not normally locked</source>
        <translation type="unfinished">biasanya tidak terkunci</translation>
    </message>
    <message>
        <source>power-operated watertight door</source>
        <translation type="unfinished">pintu kedap air bertenaga</translation>
    </message>
    <message>
        <source>not in a zone bulkhead, galley or stairway boundary</source>
        <translation type="unfinished">bukan di sekat zona, pembatas dapur, atau tangga</translation>
    </message>
    <message>
        <source>A class</source>
        <translation type="unfinished">kelas A</translation>
    </message>
    <message>
        <source>not an A-class door</source>
        <translation type="unfinished">bukan pintu kelas A</translation>
    </message>
    <message>
        <source>B class</source>
        <translation type="unfinished">kelas B</translation>
    </message>
    <message>
        <source>not a B-class door</source>
        <translation type="unfinished">bukan pintu kelas B</translation>
    </message>
    <message>
        <source>power-operated</source>
        <translation type="unfinished">bertenaga</translation>
    </message>
    <message>
        <source>not power-operated</source>
        <translation type="unfinished">tidak bertenaga</translation>
    </message>
    <message>
        <source>released remotely</source>
        <translation type="unfinished">dilepas dari jauh</translation>
    </message>
    <message>
        <source>no remote release</source>
        <translation type="unfinished">tanpa pelepasan jarak jauh</translation>
    </message>
    <message>
        <source>held open</source>
        <translation type="unfinished">ditahan terbuka</translation>
    </message>
    <message>
        <source>not held open</source>
        <translation type="unfinished">tidak ditahan terbuka</translation>
    </message>
    <message>
        <source>designed to re-open</source>
        <translation type="unfinished">dirancang membuka lagi</translation>
    </message>
    <message>
        <source>not designed to re-open</source>
        <translation type="unfinished">tidak dirancang membuka lagi</translation>
    </message>
    <message>
        <source>hose port fitted</source>
        <translation type="unfinished">ada lubang selang</translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished">tanpa lubang selang</translation>
    </message>
    <message>
        <source>in an escape route</source>
        <translation type="unfinished">di jalur penyelamatan</translation>
    </message>
    <message>
        <source>not in an escape route</source>
        <translation type="unfinished">bukan di jalur penyelamatan</translation>
    </message>
    <message>
        <source>sill in its frame</source>
        <translation type="unfinished">ambang di kusennya</translation>
    </message>
    <message>
        <source>no sill in its frame</source>
        <translation type="unfinished">tanpa ambang di kusennya</translation>
    </message>
    <message>
        <source>needs a latch</source>
        <translation type="unfinished">perlu kancing</translation>
    </message>
    <message>
        <source>needs no latch</source>
        <translation type="unfinished">tidak perlu kancing</translation>
    </message>
    <message>
        <source>watertight</source>
        <translation type="unfinished">kedap air</translation>
    </message>
    <message>
        <source>not watertight</source>
        <translation type="unfinished">tidak kedap air</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">kedap cuaca</translation>
    </message>
    <message>
        <source>not weathertight</source>
        <translation type="unfinished">tidak kedap cuaca</translation>
    </message>
    <message>
        <source>emergency escape trunk</source>
        <translation type="unfinished">lorong penyelamatan darurat</translation>
    </message>
    <message>
        <source>not of an escape trunk</source>
        <translation type="unfinished">bukan lorong penyelamatan</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">ruang kategori khusus</translation>
    </message>
    <message>
        <source>no special category space</source>
        <translation type="unfinished">bukan ruang kategori khusus</translation>
    </message>
    <message>
        <source>faces embarkation or an escape deck</source>
        <translation type="unfinished">menghadap geladak embarkasi atau penyelamatan</translation>
    </message>
    <message>
        <source>faces no embarkation or escape deck</source>
        <translation type="unfinished">tidak menghadap geladak embarkasi atau penyelamatan</translation>
    </message>
    <message>
        <source>bulkhead</source>
        <translation type="unfinished">sekat</translation>
    </message>
    <message>
        <source>deck</source>
        <translation type="unfinished">geladak</translation>
    </message>
    <message>
        <source>in a deck</source>
        <translation type="unfinished">di geladak</translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished">bukan di geladak</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">setiap pintu</translation>
    </message>
    <message>
        <source>the vessel&apos;s own flag has its own text</source>
        <translation type="unfinished">negara bendera kapal punya teks sendiri</translation>
    </message>
    <message>
        <source>date of installation unknown</source>
        <translation type="unfinished">tanggal pemasangan tidak diketahui</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">lunas diletakkan %1</translation>
    </message>
    <message>
        <source>installed before %1</source>
        <translation type="unfinished">dipasang sebelum %1</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">dipasang %1</translation>
    </message>
    <message>
        <source>a text of other ships: %1</source>
        <translation type="unfinished">teks untuk kapal lain: %1</translation>
    </message>
    <message>
        <source>exempt: %1</source>
        <translation type="unfinished">dikecualikan: %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">tanpa pelat</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">pelat tak terbaca</translation>
    </message>
    <message>
        <source>%1, whose door needs %2</source>
        <translation type="unfinished">%1, yang pintunya perlu %2</translation>
    </message>
    <message>
        <source>plate %1</source>
        <translation type="unfinished">pelat %1</translation>
    </message>
    <message>
        <source>register %1</source>
        <translation type="unfinished">register %1</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished">disk penuh</translation>
    </message>
    <message>
        <source>Free some space and try again.</source>
        <translation type="unfinished">Kosongkan sebagian ruang, lalu coba lagi.</translation>
    </message>
    <message>
        <source>the disk reports a fault (SQLite %1)</source>
        <translation type="unfinished">disk melaporkan gangguan (SQLite %1)</translation>
    </message>
    <message>
        <source>Try again; if it comes back, save the register to another disk.</source>
        <translation type="unfinished">Coba lagi; bila terulang, simpan register ke disk lain.</translation>
    </message>
    <message>
        <source>another program is writing to this register</source>
        <translation type="unfinished">program lain sedang menulis ke register ini</translation>
    </message>
    <message>
        <source>Wait a moment or close the other program, then try again.</source>
        <translation type="unfinished">Tunggu sebentar atau tutup program lain itu, lalu coba lagi.</translation>
    </message>
    <message>
        <source>the register may not be written here</source>
        <translation type="unfinished">register tidak boleh ditulis di sini</translation>
    </message>
    <message>
        <source>Copy it to a folder you may write to and open it there.</source>
        <translation type="unfinished">Salin ke folder yang boleh Anda tulisi, lalu buka di sana.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">berkas tidak dapat dibuka (SQLite %1)</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you may write to the folder.</source>
        <translation type="unfinished">Periksa apakah disk tersambung dan Anda boleh menulis ke folder itu.</translation>
    </message>
    <message>
        <source>the file is damaged (SQLite %1)</source>
        <translation type="unfinished">berkas rusak (SQLite %1)</translation>
    </message>
    <message>
        <source>Open the last backup instead.</source>
        <translation type="unfinished">Buka cadangan terakhir sebagai gantinya.</translation>
    </message>
    <message>
        <source>the computer is out of memory</source>
        <translation type="unfinished">memori komputer habis</translation>
    </message>
    <message>
        <source>Close other programs and try again.</source>
        <translation type="unfinished">Tutup program lain, lalu coba lagi.</translation>
    </message>
    <message>
        <source>the cautions do not all stand confirmed</source>
        <translation type="unfinished">belum semua peringatan dikonfirmasi</translation>
    </message>
    <message>
        <source>Answer each of them first.</source>
        <translation type="unfinished">Jawab dahulu satu per satu.</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">pintu %1</translation>
    </message>
    <message>
        <source>Save it first, then try again.</source>
        <translation type="unfinished">Simpan dahulu, lalu coba lagi.</translation>
    </message>
    <message>
        <source>Take the end of the walkdown back first, or begin another.</source>
        <translation type="unfinished">Tarik dulu akhir inspeksi itu, atau mulai yang lain.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Pilih lagi pintunya.</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; correct it.</source>
        <translation type="unfinished">Hanya yang Anda catat di tablet ini dapat diurungkan; perbaikilah.</translation>
    </message>
    <message>
        <source>Record it on its own.</source>
        <translation type="unfinished">Catat tersendiri.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">inspeksinya sudah berakhir</translation>
    </message>
    <message>
        <source>it is not on the walkdown that is shown</source>
        <translation type="unfinished">tidak ada dalam inspeksi yang ditampilkan</translation>
    </message>
    <message>
        <source>undo does not reach %1</source>
        <translation type="unfinished">urungkan tidak menjangkau %1</translation>
    </message>
    <message>
        <source>it would replace %1, which is about something else</source>
        <translation type="unfinished">ini akan menggantikan %1, yang tentang hal lain</translation>
    </message>
    <message>
        <source>Save it now.</source>
        <translation type="unfinished">Simpan sekarang.</translation>
    </message>
    <message>
        <source>the vessel has no name</source>
        <translation type="unfinished">kapal tidak punya nama</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s name.</source>
        <translation type="unfinished">Isi nama kapal.</translation>
    </message>
    <message>
        <source>%1 passengers cannot be carried</source>
        <translation type="unfinished">tidak mungkin mengangkut %1 penumpang</translation>
    </message>
    <message>
        <source>Give the number on the certificate, 0 or more.</source>
        <translation type="unfinished">Isi jumlah menurut sertifikat, 0 atau lebih.</translation>
    </message>
    <message>
        <source>a length cannot be negative</source>
        <translation type="unfinished">panjang tidak boleh negatif</translation>
    </message>
    <message>
        <source>Give the drawing&apos;s length in metres.</source>
        <translation type="unfinished">Isi panjang gambar dalam meter.</translation>
    </message>
    <message>
        <source>this day does not exist</source>
        <translation type="unfinished">tanggal ini tidak ada</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Tulis tanggal sebagai YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>%1 lies before 1900</source>
        <translation type="unfinished">%1 lebih awal dari tahun 1900</translation>
    </message>
    <message>
        <source>Check the year; leave it empty where the date is unknown.</source>
        <translation type="unfinished">Periksa tahunnya; kosongkan bila tanggal tidak diketahui.</translation>
    </message>
    <message>
        <source>this is not a number</source>
        <translation type="unfinished">ini bukan angka</translation>
    </message>
    <message>
        <source>Give the figure.</source>
        <translation type="unfinished">Isi angkanya.</translation>
    </message>
    <message>
        <source>%1 m lies outside %2 to %3 m</source>
        <translation type="unfinished">%1 m berada di luar %2 sampai %3 m</translation>
    </message>
    <message>
        <source>Give metres, and check the decimal point.</source>
        <translation type="unfinished">Isi dalam meter, dan periksa tanda desimalnya.</translation>
    </message>
    <message>
        <source>the deck has no number</source>
        <translation type="unfinished">geladak tidak punya nomor</translation>
    </message>
    <message>
        <source>Give every deck its own number.</source>
        <translation type="unfinished">Beri setiap geladak nomor sendiri.</translation>
    </message>
    <message>
        <source>the zone has no number</source>
        <translation type="unfinished">zona tidak punya nomor</translation>
    </message>
    <message>
        <source>Give every zone its own number.</source>
        <translation type="unfinished">Beri setiap zona nomor sendiri.</translation>
    </message>
    <message>
        <source>the boundary has no id</source>
        <translation type="unfinished">pembatas tidak punya id</translation>
    </message>
    <message>
        <source>Give every boundary its own id.</source>
        <translation type="unfinished">Beri setiap pembatas id sendiri.</translation>
    </message>
    <message>
        <source>the door has no number</source>
        <translation type="unfinished">pintu tidak punya nomor</translation>
    </message>
    <message>
        <source>Give every door its own number.</source>
        <translation type="unfinished">Beri setiap pintu nomor sendiri.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">nomor geladak &quot;%1&quot; diawali atau diakhiri spasi</translation>
    </message>
    <message>
        <source>Take the blanks away.</source>
        <translation type="unfinished">Hapus spasi itu.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">nomor zona &quot;%1&quot; diawali atau diakhiri spasi</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; has blanks around its id</source>
        <translation type="unfinished">id pembatas &quot;%1&quot; diawali atau diakhiri spasi</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; has blanks around its number</source>
        <translation type="unfinished">nomor pintu &quot;%1&quot; diawali atau diakhiri spasi</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; is there twice</source>
        <translation type="unfinished">geladak &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every deck its own number, or take one row out.</source>
        <translation type="unfinished">Beri setiap geladak nomor sendiri, atau hapus satu baris.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is there twice</source>
        <translation type="unfinished">zona &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every zone its own number, or take one row out.</source>
        <translation type="unfinished">Beri setiap zona nomor sendiri, atau hapus satu baris.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is there twice</source>
        <translation type="unfinished">pembatas &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or take one row out.</source>
        <translation type="unfinished">Beri setiap pembatas id sendiri, atau hapus satu baris.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is there twice</source>
        <translation type="unfinished">pintu &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every door its own number, or take one row out.</source>
        <translation type="unfinished">Beri setiap pintu nomor sendiri, atau hapus satu baris.</translation>
    </message>
    <message>
        <source>no deck is named</source>
        <translation type="unfinished">geladak tidak disebutkan</translation>
    </message>
    <message>
        <source>Name the deck.</source>
        <translation type="unfinished">Sebutkan geladaknya.</translation>
    </message>
    <message>
        <source>no zone is named</source>
        <translation type="unfinished">zona tidak disebutkan</translation>
    </message>
    <message>
        <source>Name the zone.</source>
        <translation type="unfinished">Sebutkan zonanya.</translation>
    </message>
    <message>
        <source>no boundary is named</source>
        <translation type="unfinished">pembatas tidak disebutkan</translation>
    </message>
    <message>
        <source>Name the boundary.</source>
        <translation type="unfinished">Sebutkan pembatasnya.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; is not there</source>
        <translation type="unfinished">geladak &quot;%1&quot; tidak ada</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is not there</source>
        <translation type="unfinished">zona &quot;%1&quot; tidak ada</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is not there</source>
        <translation type="unfinished">pembatas &quot;%1&quot; tidak ada</translation>
    </message>
    <message>
        <source>Correct the name, or add the deck.</source>
        <translation type="unfinished">Perbaiki namanya, atau tambahkan geladak itu.</translation>
    </message>
    <message>
        <source>Correct the name, or add the zone.</source>
        <translation type="unfinished">Perbaiki namanya, atau tambahkan zona itu.</translation>
    </message>
    <message>
        <source>Correct the name, or add the boundary.</source>
        <translation type="unfinished">Perbaiki namanya, atau tambahkan pembatas itu.</translation>
    </message>
    <message>
        <source>an area must be more than 0</source>
        <translation type="unfinished">luas harus lebih dari 0</translation>
    </message>
    <message>
        <source>Give square metres, or leave it empty where it is not known.</source>
        <translation type="unfinished">Isi dalam meter persegi, atau kosongkan bila tidak diketahui.</translation>
    </message>
    <message>
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">batas depan, %1 m, tidak berada di depan batas belakang, %2 m</translation>
    </message>
    <message>
        <source>Count metres from the aft perpendicular, forward positive.</source>
        <translation type="unfinished">Hitung meter dari garis tegak buritan (AP), ke arah haluan positif.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">zona &quot;%1&quot; mulai di %2 m, di dalam zona &quot;%3&quot;, yang berakhir di %4 m</translation>
    </message>
    <message>
        <source>Zones may touch, not overlap.</source>
        <translation type="unfinished">Zona boleh bersentuhan, tidak boleh tumpang tindih.</translation>
    </message>
    <message>
        <source>the fire tables of this vessel know no such category of space</source>
        <translation type="unfinished">tabel api kapal ini tidak mengenal kategori ruang seperti itu</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Tulis dua angka dari 1 sampai %1, atau kosongkan.</translation>
    </message>
    <message>
        <source>a zone bulkhead stands between two zones, here both are &quot;%1&quot;</source>
        <translation type="unfinished">sekat zona berada di antara dua zona, di sini keduanya &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Sebutkan zona di belakangnya dan zona di depannya.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; lies aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">zona &quot;%1&quot; terletak di belakang zona &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Exchange zone_aft and zone_forward.</source>
        <translation type="unfinished">Tukar zone_aft dan zone_forward.</translation>
    </message>
    <message>
        <source>%1 m lies more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m berada lebih dari 3 m di luar zonanya, %2 sampai %3 m</translation>
    </message>
    <message>
        <source>Check the place of the boundary, or the zones it names.</source>
        <translation type="unfinished">Periksa letak pembatas, atau zona yang disebutnya.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m cannot be</source>
        <translation type="unfinished">bukaan bersih %1 m tidak mungkin</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Isi lebar bersih dalam meter, lebih dari 0 dan maksimal 10.</translation>
    </message>
    <message>
        <source>a leaf of %1 kg cannot be</source>
        <translation type="unfinished">daun pintu seberat %1 kg tidak mungkin</translation>
    </message>
    <message>
        <source>Give kilograms, more than 0 and at most 5000, or leave it empty.</source>
        <translation type="unfinished">Isi dalam kilogram, lebih dari 0 dan maksimal 5000, atau kosongkan.</translation>
    </message>
    <message>
        <source>release group &quot;%1&quot; is empty or has a blank in its name</source>
        <translation type="unfinished">nama grup pelepasan &quot;%1&quot; kosong atau mengandung spasi</translation>
    </message>
    <message>
        <source>Name release groups without blanks.</source>
        <translation type="unfinished">Beri grup pelepasan nama tanpa spasi.</translation>
    </message>
    <message>
        <source>Give it as postgresql://USER@HOST:PORT/DATABASE, with the password in PGPASSWORD or ~/.pgpass.</source>
        <translation type="unfinished">Tulis sebagai postgresql://USER@HOST:PORT/DATABASE, dengan kata sandi di PGPASSWORD atau ~/.pgpass.</translation>
    </message>
    <message>
        <source>this is no URL: signs other than letters and digits in a password are written as %1 for @ and so on</source>
        <translation type="unfinished">ini bukan URL: tanda selain huruf dan angka dalam kata sandi ditulis sebagai %1 untuk @, dan seterusnya</translation>
    </message>
    <message>
        <source>only databases of PostgreSQL are known</source>
        <translation type="unfinished">hanya basis data PostgreSQL yang dikenal</translation>
    </message>
    <message>
        <source>an option holds a semicolon</source>
        <translation type="unfinished">suatu opsi mengandung titik koma</translation>
    </message>
    <message>
        <source>it names no database</source>
        <translation type="unfinished">tidak menyebutkan basis data</translation>
    </message>
    <message>
        <source>Qt&apos;s PostgreSQL driver is not installed</source>
        <translation type="unfinished">driver PostgreSQL untuk Qt belum terpasang</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-psql.</source>
        <translation type="unfinished">Pasang paket libqt6sql6-psql.</translation>
    </message>
    <message>
        <source>no connection: %1</source>
        <translation type="unfinished">tidak ada sambungan: %1</translation>
    </message>
    <message>
        <source>Check the address, the name and the password, and that the server runs.</source>
        <translation type="unfinished">Periksa alamat, nama, dan kata sandi, serta apakah server berjalan.</translation>
    </message>
    <message>
        <source>the connection was cut</source>
        <translation type="unfinished">sambungan terputus</translation>
    </message>
    <message>
        <source>Run it again.</source>
        <translation type="unfinished">Jalankan lagi.</translation>
    </message>
    <message>
        <source>Trying again.</source>
        <translation type="unfinished">Mencoba lagi.</translation>
    </message>
    <message>
        <source>the connection was cut: %1 files are NOT taken in, from %2 on</source>
        <translation type="unfinished">sambungan terputus: %1 berkas TIDAK diimpor, mulai dari %2</translation>
    </message>
    <message>
        <source>Run the same command again; what is in stays in.</source>
        <translation type="unfinished">Jalankan lagi perintah yang sama; yang sudah diimpor tetap ada.</translation>
    </message>
    <message>
        <source>this database holds something else: NOT touched</source>
        <translation type="unfinished">basis data ini berisi hal lain: TIDAK disentuh</translation>
    </message>
    <message>
        <source>Give an empty one (CREATE DATABASE).</source>
        <translation type="unfinished">Berikan yang kosong (CREATE DATABASE).</translation>
    </message>
    <message>
        <source>its schema &quot;latchround&quot; was not made by this program: NOT touched</source>
        <translation type="unfinished">skemanya &quot;latchround&quot; tidak dibuat oleh program ini: TIDAK disentuh</translation>
    </message>
    <message>
        <source>Give an empty database.</source>
        <translation type="unfinished">Berikan basis data yang kosong.</translation>
    </message>
    <message>
        <source>this database does not keep texts as UTF-8: NOT touched</source>
        <translation type="unfinished">basis data ini tidak menyimpan teks sebagai UTF-8: TIDAK disentuh</translation>
    </message>
    <message>
        <source>Make one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Buat satu WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one knows up to %2): NOT touched</source>
        <translation type="unfinished">tabel dibuat oleh program yang lebih baru (versi %1; program ini mengenal sampai %2): TIDAK disentuh</translation>
    </message>
    <message>
        <source>Update this program.</source>
        <translation type="unfinished">Perbarui program ini.</translation>
    </message>
    <message>
        <source>its vessel has no identification number</source>
        <translation type="unfinished">kapalnya tidak punya nomor identifikasi</translation>
    </message>
    <message>
        <source>Give the vessel its number aboard, and hand over again.</source>
        <translation type="unfinished">Isi nomornya di atas kapal, lalu serahkan lagi.</translation>
    </message>
    <message>
        <source>it comes with another key than before: %1, fingerprint %2, instead of %3</source>
        <translation type="unfinished">datang dengan kunci lain daripada sebelumnya: %1, sidik jari %2, bukan %3</translation>
    </message>
    <message>
        <source>Ask aboard whether its key is new; if it is, take the file in with --accept-key and that key.</source>
        <translation type="unfinished">Tanyakan ke kapal apakah kuncinya baru; bila ya, impor berkas itu dengan --accept-key dan kunci tersebut.</translation>
    </message>
    <message>
        <source>no file is named</source>
        <translation type="unfinished">tidak ada berkas yang disebutkan</translation>
    </message>
    <message>
        <source>Name at least one.</source>
        <translation type="unfinished">Sebutkan minimal satu.</translation>
    </message>
    <message>
        <source>The catalogue built into the program is used: %1</source>
        <translation type="unfinished">Dipakai katalog bawaan program: %1</translation>
    </message>
    <message>
        <source>its catalogue files are not there</source>
        <translation type="unfinished">berkas katalognya tidak ada</translation>
    </message>
    <message>
        <source>is not a JSON object</source>
        <translation type="unfinished">bukan objek JSON</translation>
    </message>
    <message>
        <source>Restore the file from a good copy.</source>
        <translation type="unfinished">Pulihkan berkas dari salinan yang baik.</translation>
    </message>
    <message>
        <source>must be a list with at least one row</source>
        <translation type="unfinished">harus berupa daftar dengan minimal satu butir</translation>
    </message>
    <message>
        <source>&apos;%1&apos; stands twice</source>
        <translation type="unfinished">&apos;%1&apos; tercantum dua kali</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Setiap id harus unik.</translation>
    </message>
    <message>
        <source>row &apos;%1&apos; stands in both catalogues</source>
        <translation type="unfinished">butir &apos;%1&apos; ada di kedua katalog</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Pertahankan di salah satunya.</translation>
    </message>
    <message>
        <source>this condition asks nothing of a door</source>
        <translation type="unfinished">syarat ini tidak meminta apa pun dari pintu</translation>
    </message>
    <message>
        <source>Give it a field.</source>
        <translation type="unfinished">Beri satu field.</translation>
    </message>
    <message>
        <source>must be a list of conditions</source>
        <translation type="unfinished">harus berupa daftar syarat</translation>
    </message>
    <message>
        <source>Leave it out where every door is meant.</source>
        <translation type="unfinished">Hilangkan bila yang dimaksud adalah setiap pintu.</translation>
    </message>
    <message>
        <source>must be a list of variants</source>
        <translation type="unfinished">harus berupa daftar varian</translation>
    </message>
    <message>
        <source>Leave it out where there are none.</source>
        <translation type="unfinished">Hilangkan bila tidak ada.</translation>
    </message>
    <message>
        <source>a row that is seen needs a question</source>
        <translation type="unfinished">butir yang diperiksa dengan melihat memerlukan pertanyaan</translation>
    </message>
    <message>
        <source>Write the question as it is asked at the door.</source>
        <translation type="unfinished">Tulis pertanyaan seperti yang diajukan di pintu.</translation>
    </message>
    <message>
        <source>this check needs a lower limit</source>
        <translation type="unfinished">pemeriksaan ini memerlukan batas bawah</translation>
    </message>
    <message>
        <source>Add a number.</source>
        <translation type="unfinished">Tambahkan angka.</translation>
    </message>
    <message>
        <source>this check needs an upper limit</source>
        <translation type="unfinished">pemeriksaan ini memerlukan batas atas</translation>
    </message>
    <message>
        <source>the lower limit is not below the upper one</source>
        <translation type="unfinished">batas bawah tidak lebih rendah dari batas atas</translation>
    </message>
    <message>
        <source>Check both numbers.</source>
        <translation type="unfinished">Periksa kedua angka.</translation>
    </message>
    <message>
        <source>a number must come from somewhere</source>
        <translation type="unfinished">angka harus berasal dari suatu sumber</translation>
    </message>
    <message>
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Sebutkan gauge, closing-time, closing-rate, alarm-lead atau alarm-after-shut.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is in the catalogue already</source>
        <translation type="unfinished">&apos;%1&apos; sudah ada di katalog</translation>
    </message>
    <message>
        <source>Write &quot;change&quot;: &quot;tighten&quot; or &quot;replace&quot;.</source>
        <translation type="unfinished">Tulis &quot;change&quot;: &quot;tighten&quot; atau &quot;replace&quot;.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; tidak ada di katalog</translation>
    </message>
    <message>
        <source>Check its spelling, or write &quot;change&quot;: &quot;add&quot;.</source>
        <translation type="unfinished">Periksa ejaannya, atau tulis &quot;change&quot;: &quot;add&quot;.</translation>
    </message>
    <message>
        <source>a tightened row needs a limit</source>
        <translation type="unfinished">butir yang diperketat memerlukan batas</translation>
    </message>
    <message>
        <source>Give low or high.</source>
        <translation type="unfinished">Isi low atau high.</translation>
    </message>
    <message>
        <source>the row has no such limit</source>
        <translation type="unfinished">butir itu tidak punya batas seperti itu</translation>
    </message>
    <message>
        <source>Replace the whole row instead.</source>
        <translation type="unfinished">Ganti seluruh butir saja.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the %3 %2 of the catalogue</source>
        <translation type="unfinished">%1 %2 lebih longgar daripada %3 %2 di katalog</translation>
    </message>
    <message>
        <source>A row is tightened, or replaced as a whole.</source>
        <translation type="unfinished">Suatu butir diperketat, atau diganti seluruhnya.</translation>
    </message>
    <message>
        <source>must be a list of categories</source>
        <translation type="unfinished">harus berupa daftar kategori</translation>
    </message>
    <message>
        <source>categories must be numbered from 1 without a gap</source>
        <translation type="unfinished">kategori harus bernomor urut mulai dari 1 tanpa celah</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; bukan daftar kategori di sini</translation>
    </message>
    <message>
        <source>must be a list with at least one table</source>
        <translation type="unfinished">harus berupa daftar dengan minimal satu tabel</translation>
    </message>
    <message>
        <source>there is a table of such divisions already</source>
        <translation type="unfinished">sudah ada tabel untuk divisi seperti itu</translation>
    </message>
    <message>
        <source>Keep one of them.</source>
        <translation type="unfinished">Pertahankan salah satunya.</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation type="unfinished">tidak ada</translation>
    </message>
    <message>
        <source>Write null where nothing is printed.</source>
        <translation type="unfinished">Tulis null bila tidak ada yang tercetak.</translation>
    </message>
    <message>
        <source>is no cell of this table</source>
        <translation type="unfinished">bukan sel tabel ini</translation>
    </message>
    <message>
        <source>Write two of its categories, of a bulkhead the lower first.</source>
        <translation type="unfinished">Tulis dua dari kategorinya; untuk sekat, yang lebih rendah dahulu.</translation>
    </message>
    <message>
        <source>%1 is no value that a table prints</source>
        <translation type="unfinished">%1 bukan nilai yang dicetak dalam tabel</translation>
    </message>
    <message>
        <source>Write a class with its notes in brackets, *, - or null.</source>
        <translation type="unfinished">Tulis kelas dengan catatannya dalam kurung siku, *, - atau null.</translation>
    </message>
    <message>
        <source>note &apos;%1&apos; is not in this table&apos;s notes</source>
        <translation type="unfinished">catatan &apos;%1&apos; tidak ada di antara catatan tabel ini</translation>
    </message>
    <message>
        <source>Add the note.</source>
        <translation type="unfinished">Tambahkan catatan itu.</translation>
    </message>
    <message>
        <source>See latchround-cli --help.</source>
        <translation type="unfinished">Lihat latchround-cli --help.</translation>
    </message>
    <message>
        <source>a fault of the program: %1</source>
        <translation type="unfinished">kesalahan program: %1</translation>
    </message>
    <message>
        <source>Please report it with the file that brought it about.</source>
        <translation type="unfinished">Laporkan bersama berkas yang menyebabkannya.</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation type="unfinished">tidak dapat ditulis</translation>
    </message>
    <message>
        <source>no register is here</source>
        <translation type="unfinished">tidak ada register di sini</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Periksa namanya, atau impor register dahulu.</translation>
    </message>
    <message>
        <source>this register holds no vessel yet</source>
        <translation type="unfinished">register ini belum berisi kapal</translation>
    </message>
    <message>
        <source>Import one first.</source>
        <translation type="unfinished">Impor kapal dahulu.</translation>
    </message>
    <message>
        <source>no walkdown is recorded in this register</source>
        <translation type="unfinished">tidak ada inspeksi yang tercatat di register ini</translation>
    </message>
    <message>
        <source>Begin one first.</source>
        <translation type="unfinished">Mulai inspeksi dahulu.</translation>
    </message>
    <message>
        <source>no walkdown has the id &apos;%1&apos;</source>
        <translation type="unfinished">tidak ada inspeksi dengan id &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The latest is %2.</source>
        <translation type="unfinished">Yang terakhir adalah %2.</translation>
    </message>
    <message>
        <source>a key is 64 lower-case hex digits</source>
        <translation type="unfinished">kunci terdiri dari 64 digit heksadesimal berhuruf kecil</translation>
    </message>
    <message>
        <source>The file that was refused names its key.</source>
        <translation type="unfinished">Berkas yang ditolak menyebutkan kuncinya.</translation>
    </message>
    <message>
        <source>it does not say who accepts the key</source>
        <translation type="unfinished">tidak disebutkan siapa yang menerima kunci</translation>
    </message>
    <message>
        <source>Add --person NAME.</source>
        <translation type="unfinished">Tambahkan --person NAME.</translation>
    </message>
    <message>
        <source>this is not the key of the file, which is %1</source>
        <translation type="unfinished">ini bukan kunci berkas itu, yaitu %1</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Bandingkan dengan yang ditampilkan tablet lain.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no document of this program</source>
        <translation type="unfinished">&quot;%1&quot; bukan dokumen program ini</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no form a report is written in</source>
        <translation type="unfinished">&quot;%1&quot; bukan format laporan</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Pilih pdf, csv atau json.</translation>
    </message>
    <message>
        <source>a paper form is printed</source>
        <translation type="unfinished">formulir kertas harus dicetak</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Tulis ke berkas PDF.</translation>
    </message>
    <message>
        <source>a door record is of one door</source>
        <translation type="unfinished">catatan pintu adalah tentang satu pintu</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Isi nomornya.</translation>
    </message>
    <message>
        <source>the register knows nobody of the name &apos;%1&apos;</source>
        <translation type="unfinished">register tidak mengenal orang dengan nama &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Write the name as it stands in the register.</source>
        <translation type="unfinished">Tulis nama seperti tercantum di register.</translation>
    </message>
    <message>
        <source>Give an id of &quot;practice list&quot; or a file.</source>
        <translation type="unfinished">Berikan id dari &quot;practice list&quot; atau sebuah berkas.</translation>
    </message>
    <message>
        <source>Give a number; the same one gives the same doors.</source>
        <translation type="unfinished">Isi sebuah angka; angka yang sama memberi pintu yang sama.</translation>
    </message>
    <message>
        <source>Give the file of answers.</source>
        <translation type="unfinished">Berikan berkas jawaban.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">tidak ada</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_WORD, or into a file named by --word-file.</source>
        <translation type="unfinished">Taruh di LATCHROUND_WORD, atau di berkas yang disebut dengan --word-file.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; bukan pasangan kategori kapal ini</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %2, such as 3,7.</source>
        <translation type="unfinished">Tulis dua angka dari 1 sampai %2, misalnya 3,7.</translation>
    </message>
    <message>
        <source>the categories of the two spaces are needed</source>
        <translation type="unfinished">kategori kedua ruang diperlukan</translation>
    </message>
    <message>
        <source>Write them like 3,7.</source>
        <translation type="unfinished">Tulis seperti 3,7.</translation>
    </message>
    <message>
        <source>such a ship has no main vertical zones</source>
        <translation type="unfinished">kapal seperti itu tidak punya zona vertikal utama</translation>
    </message>
    <message>
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Tanyakan untuk bulkhead atau deck.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1</source>
        <translation type="unfinished">harus antara 0 dan 1</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Tulis 0.95 untuk 95 %.</translation>
    </message>
    <message>
        <source>must lie between 0 and 1, in whole millionths</source>
        <translation type="unfinished">harus antara 0 dan 1, dalam kelipatan sepersejuta</translation>
    </message>
    <message>
        <source>is not a number that can be looked up</source>
        <translation type="unfinished">bukan angka yang dapat dicari</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Tulis sebuah angka.</translation>
    </message>
    <message>
        <source>no line can be laid through %1 points, or all lie at the same x, or a number is too large</source>
        <translation type="unfinished">tidak dapat ditarik garis melalui %1 titik, atau semuanya pada x yang sama, atau suatu angka terlalu besar</translation>
    </message>
    <message>
        <source>Give at least three points at two different x.</source>
        <translation type="unfinished">Isi minimal tiga titik pada dua x yang berbeda.</translation>
    </message>
    <message>
        <source>is not a number that can be judged</source>
        <translation type="unfinished">bukan angka yang dapat dinilai</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Tulis angka seperti 10.3.</translation>
    </message>
    <message>
        <source>a standard uncertainty is 0 or more</source>
        <translation type="unfinished">ketidakpastian baku adalah 0 atau lebih</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Tulis dalam satuan nilainya, untuk k = 1.</translation>
    </message>
    <message>
        <source>is no limit</source>
        <translation type="unfinished">bukan batas</translation>
    </message>
    <message>
        <source>without a limit there is nothing to judge</source>
        <translation type="unfinished">tanpa batas tidak ada yang dapat dinilai</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Isi --low, --high atau keduanya.</translation>
    </message>
    <message>
        <source>degrees of freedom are 1 or more</source>
        <translation type="unfinished">derajat kebebasan adalah 1 atau lebih</translation>
    </message>
    <message>
        <source>Leave it out where u is well known.</source>
        <translation type="unfinished">Hilangkan bila u diketahui dengan baik.</translation>
    </message>
    <message>
        <source>there must be at least 1 door and at most %1</source>
        <translation type="unfinished">harus ada minimal 1 pintu dan maksimal %1</translation>
    </message>
    <message>
        <source>Give the number of doors.</source>
        <translation type="unfinished">Isi jumlah pintu.</translation>
    </message>
    <message>
        <source>must be 0 or more and less than the number of doors</source>
        <translation type="unfinished">harus 0 atau lebih dan kurang dari jumlah pintu</translation>
    </message>
    <message>
        <source>Give the number of defective doors that the claim allows.</source>
        <translation type="unfinished">Isi jumlah pintu cacat yang masih diizinkan pernyataan itu.</translation>
    </message>
    <message>
        <source>a result is how many were tested and how many of those failed</source>
        <translation type="unfinished">hasil adalah berapa yang diuji dan berapa di antaranya yang gagal</translation>
    </message>
    <message>
        <source>Give both, or neither.</source>
        <translation type="unfinished">Isi keduanya, atau jangan satu pun.</translation>
    </message>
    <message>
        <source>no more can fail than were tested, and no more be tested than there are</source>
        <translation type="unfinished">yang gagal tidak mungkin lebih banyak dari yang diuji, dan yang diuji tidak mungkin lebih banyak dari yang ada</translation>
    </message>
    <message>
        <source>Check the three numbers.</source>
        <translation type="unfinished">Periksa ketiga angka.</translation>
    </message>
    <message>
        <source>there is no display here</source>
        <translation type="unfinished">tidak ada layar di sini</translation>
    </message>
    <message>
        <source>Start it on a desktop, or use latchround-cli.</source>
        <translation type="unfinished">Jalankan di desktop, atau pakai latchround-cli.</translation>
    </message>
    <message>
        <source>there is no such register file</source>
        <translation type="unfinished">berkas register seperti itu tidak ada</translation>
    </message>
    <message>
        <source>Check the path, or start without one.</source>
        <translation type="unfinished">Periksa jalur berkasnya, atau mulai tanpa berkas.</translation>
    </message>
    <message>
        <source>The flag&apos;s own rules are NOT in force: %1</source>
        <translation type="unfinished">Aturan negara bendera sendiri TIDAK berlaku: %1</translation>
    </message>
    <message>
        <source>entries of this vessel wait to be saved, and cannot be kept elsewhere</source>
        <translation type="unfinished">ada entri kapal ini yang menunggu disimpan, dan tidak dapat disimpan di tempat lain</translation>
    </message>
    <message>
        <source>Save them first.</source>
        <translation type="unfinished">Simpan dahulu.</translation>
    </message>
    <message>
        <source>no file was looked at</source>
        <translation type="unfinished">belum ada berkas yang dilihat</translation>
    </message>
    <message>
        <source>Look at it first.</source>
        <translation type="unfinished">Lihat dahulu berkasnya.</translation>
    </message>
    <message>
        <source>no exercise was broken off</source>
        <translation type="unfinished">tidak ada latihan yang terputus</translation>
    </message>
    <message>
        <source>the exercise is not what it was when it was begun</source>
        <translation type="unfinished">latihan tidak lagi sama seperti saat dimulai</translation>
    </message>
    <message>
        <source>Put it aside, and begin it anew.</source>
        <translation type="unfinished">Sisihkan, lalu mulai dari awal.</translation>
    </message>
    <message>
        <source>is not a door of this walkdown</source>
        <translation type="unfinished">bukan pintu dalam inspeksi ini</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">berkas tidak dapat dibaca</translation>
    </message>
    <message>
        <source>Choose another or check its rights.</source>
        <translation type="unfinished">Pilih berkas lain atau periksa hak aksesnya.</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">gambar lebih besar dari %1 MB</translation>
    </message>
    <message>
        <source>Take it again in a smaller size.</source>
        <translation type="unfinished">Ambil lagi dengan ukuran lebih kecil.</translation>
    </message>
    <message>
        <source>this is not a picture that can be shown</source>
        <translation type="unfinished">ini bukan gambar yang dapat ditampilkan</translation>
    </message>
    <message>
        <source>Choose a JPEG or PNG file.</source>
        <translation type="unfinished">Pilih berkas JPEG atau PNG.</translation>
    </message>
    <message>
        <source>it could not be kept</source>
        <translation type="unfinished">tidak dapat disimpan</translation>
    </message>
    <message>
        <source>Take it again.</source>
        <translation type="unfinished">Ambil lagi.</translation>
    </message>
    <message>
        <source>another program writes in it (%1)</source>
        <translation type="unfinished">program lain sedang menulis di dalamnya (%1)</translation>
    </message>
    <message>
        <source>Close it there, then open the vessel here again.</source>
        <translation type="unfinished">Tutup di sana, lalu buka lagi kapal itu di sini.</translation>
    </message>
    <message>
        <source>Something is not saved yet</source>
        <translation type="unfinished">Masih ada yang belum tersimpan</translation>
    </message>
    <message>
        <source>the program ended before this was saved</source>
        <translation type="unfinished">program berakhir sebelum ini tersimpan</translation>
    </message>
    <message>
        <source>Nothing of it is refused any more</source>
        <translation type="unfinished">Tidak ada lagi bagiannya yang ditolak</translation>
    </message>
    <message>
        <source>it was cut short</source>
        <translation type="unfinished">terpotong sebelum selesai</translation>
    </message>
    <message>
        <source>what cannot be read in it is kept nowhere else</source>
        <translation type="unfinished">yang tidak dapat dibaca di dalamnya tidak tersimpan di tempat lain</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Kosongkan sedikit ruang disk, lalu mulai lagi.</translation>
    </message>
    <message>
        <source>what waited to be saved here cannot be read: %1</source>
        <translation type="unfinished">yang menunggu disimpan di sini tidak dapat dibaca: %1</translation>
    </message>
    <message>
        <source>It is kept as %2; report this.</source>
        <translation type="unfinished">Isinya disimpan sebagai %2; laporkan hal ini.</translation>
    </message>
    <message>
        <source>The file stays as it is, and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">Berkas dibiarkan apa adanya, dan tidak ada yang ditambahkan: kosongkan sedikit ruang disk, lalu mulai lagi.</translation>
    </message>
    <message>
        <source>of what waited to be saved here, not all can be read: %1</source>
        <translation type="unfinished">dari yang menunggu disimpan di sini, tidak semuanya dapat dibaca: %1</translation>
    </message>
    <message>
        <source>the register knows no walkdown of this id</source>
        <translation type="unfinished">register tidak mengenal inspeksi dengan id ini</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Pilih salah satu inspeksinya.</translation>
    </message>
    <message>
        <source>the register knows no door of this number</source>
        <translation type="unfinished">register tidak mengenal pintu dengan nomor ini</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Periksa nomornya.</translation>
    </message>
    <message>
        <source>a door record is a printed page</source>
        <translation type="unfinished">catatan pintu adalah halaman cetak</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey as CSV or JSON.</source>
        <translation type="unfinished">Pilih PDF, atau survei sebagai CSV atau JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be made</source>
        <translation type="unfinished">PDF tidak dapat dibuat</translation>
    </message>
    <message>
        <source>Free some memory and try again.</source>
        <translation type="unfinished">Bebaskan sebagian memori, lalu coba lagi.</translation>
    </message>
    <message>
        <source>the bookmarks could not be written: %1</source>
        <translation type="unfinished">markah (bookmark) tidak dapat ditulis: %1</translation>
    </message>
    <message>
        <source>the file has no vessel row</source>
        <translation type="unfinished">berkas tidak punya baris kapal (vessel)</translation>
    </message>
    <message>
        <source>Begin with the header &quot;vessel:&quot; and a row &quot;vessel&quot; below it.</source>
        <translation type="unfinished">Mulai dengan kepala tabel &quot;vessel:&quot; dan baris &quot;vessel&quot; di bawahnya.</translation>
    </message>
    <message>
        <source>a file describes one vessel; the first is on line %1</source>
        <translation type="unfinished">satu berkas memuat satu kapal; yang pertama ada di baris %1</translation>
    </message>
    <message>
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Taruh setiap kapal dalam berkas sendiri.</translation>
    </message>
    <message>
        <source>the row does not say of which table it is</source>
        <translation type="unfinished">baris ini tidak menyebutkan tabelnya</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Baris dimulai dengan vessel, deck, zone, boundary atau door.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; begins no row of a register</source>
        <translation type="unfinished">&quot;%1&quot; bukan awal baris register</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Baris dimulai dengan vessel, deck, zone, boundary atau door.</translation>
    </message>
    <message>
        <source>this row stands before any header of its table</source>
        <translation type="unfinished">baris ini mendahului kepala tabelnya</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the names of the columns above it.</source>
        <translation type="unfinished">Taruh kepala tabel &quot;%1:&quot; dengan nama kolom-kolom di atasnya.</translation>
    </message>
    <message>
        <source>the row has more cells than its header has columns</source>
        <translation type="unfinished">baris ini punya lebih banyak sel daripada kolom di kepala tabelnya</translation>
    </message>
    <message>
        <source>A text or number with a comma in it needs quotes around it.</source>
        <translation type="unfinished">Teks atau angka yang mengandung koma harus diapit tanda kutip.</translation>
    </message>
    <message>
        <source>Take the cell out, or name its column in the header.</source>
        <translation type="unfinished">Hapus sel itu, atau beri nama kolomnya di kepala tabel.</translation>
    </message>
    <message>
        <source>the %1 table has no such column</source>
        <translation type="unfinished">tabel %1 tidak punya kolom seperti itu</translation>
    </message>
    <message>
        <source>Correct its name or take the column out.</source>
        <translation type="unfinished">Perbaiki namanya atau hapus kolom itu.</translation>
    </message>
    <message>
        <source>the column is there twice</source>
        <translation type="unfinished">kolom itu ada dua kali</translation>
    </message>
    <message>
        <source>Take one of them out.</source>
        <translation type="unfinished">Hapus salah satunya.</translation>
    </message>
    <message>
        <source>the required column %1 is missing</source>
        <translation type="unfinished">kolom wajib %1 tidak ada</translation>
    </message>
    <message>
        <source>Add it to the header and to every row of the table.</source>
        <translation type="unfinished">Tambahkan ke kepala tabel dan ke setiap baris tabel.</translation>
    </message>
    <message>
        <source>%1; the first is on line %2</source>
        <translation type="unfinished">%1; yang pertama ada di baris %2</translation>
    </message>
    <message>
        <source>these are not the categories of two spaces</source>
        <translation type="unfinished">ini bukan kategori dua ruang</translation>
    </message>
    <message>
        <source>Write two numbers with a blank between, such as 3 7, or leave it empty.</source>
        <translation type="unfinished">Tulis dua angka dengan spasi di antaranya, misalnya 3 7, atau kosongkan.</translation>
    </message>
    <message>
        <source>a point has two numbers, here are %1 cells</source>
        <translation type="unfinished">sebuah titik punya dua angka, di sini ada %1 sel</translation>
    </message>
    <message>
        <source>Write x,y on each line.</source>
        <translation type="unfinished">Tulis x,y di setiap baris.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number</source>
        <translation type="unfinished">&quot;%1&quot; bukan angka</translation>
    </message>
    <message>
        <source>Write a number such as 12.4.</source>
        <translation type="unfinished">Tulis angka seperti 12.4.</translation>
    </message>
    <message>
        <source>this is not the id of a fact</source>
        <translation type="unfinished">ini bukan id fakta</translation>
    </message>
    <message>
        <source>Ids are UUIDs of version 7 in lower case.</source>
        <translation type="unfinished">Id adalah UUID versi 7 dengan huruf kecil.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a moment</source>
        <translation type="unfinished">&quot;%1&quot; bukan waktu yang sah</translation>
    </message>
    <message>
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Tulis seperti 2026-11-25T10:42:13.120+01:00.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no kind of fact</source>
        <translation type="unfinished">&quot;%1&quot; bukan jenis fakta</translation>
    </message>
    <message>
        <source>It must be one of: %2.</source>
        <translation type="unfinished">Harus salah satu dari: %2.</translation>
    </message>
    <message>
        <source>this must be a list of doors</source>
        <translation type="unfinished">ini harus berupa daftar pintu</translation>
    </message>
    <message>
        <source>Write it in brackets.</source>
        <translation type="unfinished">Tulis dalam kurung siku.</translation>
    </message>
    <message>
        <source>a door needs a number</source>
        <translation type="unfinished">pintu harus punya nomor</translation>
    </message>
    <message>
        <source>Give the one painted on it.</source>
        <translation type="unfinished">Isi nomor yang tercat padanya.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is there twice, first at %2</source>
        <translation type="unfinished">pintu &quot;%1&quot; ada dua kali, pertama di %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or put both records in one.</source>
        <translation type="unfinished">Beri setiap pintu id sendiri, atau gabungkan kedua catatan menjadi satu.</translation>
    </message>
    <message>
        <source>a clear opening must be more than 0 and at most 10 m</source>
        <translation type="unfinished">bukaan bersih harus lebih dari 0 dan maksimal 10 m</translation>
    </message>
    <message>
        <source>Give the clear width in metres.</source>
        <translation type="unfinished">Isi lebar bersih dalam meter.</translation>
    </message>
    <message>
        <source>a leaf must weigh more than 0 and at most 5000 kg</source>
        <translation type="unfinished">massa daun pintu harus lebih dari 0 dan maksimal 5000 kg</translation>
    </message>
    <message>
        <source>Give the mass of the heaviest leaf in kilograms.</source>
        <translation type="unfinished">Isi massa daun pintu terberat dalam kilogram.</translation>
    </message>
    <message>
        <source>this must be the categories of the two spaces, 1 to %1 by the fire tables of this vessel</source>
        <translation type="unfinished">ini harus kategori kedua ruang, 1 sampai %1 menurut tabel api kapal ini</translation>
    </message>
    <message>
        <source>Write them like [3, 5].</source>
        <translation type="unfinished">Tulis seperti [3, 5].</translation>
    </message>
    <message>
        <source>this must be an object</source>
        <translation type="unfinished">ini harus berupa objek</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;requirement&quot;: value}.</source>
        <translation type="unfinished">Tulis dalam kurung kurawal: {&quot;requirement&quot;: nilai}.</translation>
    </message>
    <message>
        <source>the catalogue has no requirement of this name</source>
        <translation type="unfinished">katalog tidak punya persyaratan dengan nama ini</translation>
    </message>
    <message>
        <source>Use the ids of the catalogue.</source>
        <translation type="unfinished">Pakai id dari katalog.</translation>
    </message>
    <message>
        <source>this is no answer</source>
        <translation type="unfinished">ini bukan jawaban</translation>
    </message>
    <message>
        <source>Write &quot;yes&quot;, &quot;no&quot; or &quot;n/a&quot;.</source>
        <translation type="unfinished">Tulis &quot;yes&quot;, &quot;no&quot; atau &quot;n/a&quot;.</translation>
    </message>
    <message>
        <source>this requirement is not answered by yes or no</source>
        <translation type="unfinished">persyaratan ini tidak dijawab dengan ya atau tidak</translation>
    </message>
    <message>
        <source>Give its figure under &quot;measured&quot;.</source>
        <translation type="unfinished">Isi angkanya di bawah &quot;measured&quot;.</translation>
    </message>
    <message>
        <source>It follows from the runs or from the class.</source>
        <translation type="unfinished">Ini ditentukan dari uji atau dari kelas.</translation>
    </message>
    <message>
        <source>this requirement has no figure taken with rule or gauge</source>
        <translation type="unfinished">persyaratan ini tidak punya angka yang diukur dengan mistar atau alat ukur</translation>
    </message>
    <message>
        <source>Give runs with their marks, or an answer under &quot;observations&quot;.</source>
        <translation type="unfinished">Isi uji dengan tanda-tandanya, atau jawaban di bawah &quot;observations&quot;.</translation>
    </message>
    <message>
        <source>this must be a number, 0 or more</source>
        <translation type="unfinished">ini harus berupa angka, 0 atau lebih</translation>
    </message>
    <message>
        <source>Write it without quotes.</source>
        <translation type="unfinished">Tulis tanpa tanda kutip.</translation>
    </message>
    <message>
        <source>Write it in %1, without quotes.</source>
        <translation type="unfinished">Tulis dalam %1, tanpa tanda kutip.</translation>
    </message>
    <message>
        <source>this must be a list of runs</source>
        <translation type="unfinished">ini harus berupa daftar uji</translation>
    </message>
    <message>
        <source>a run without marks shows nothing</source>
        <translation type="unfinished">uji tanpa tanda tidak menunjukkan apa pun</translation>
    </message>
    <message>
        <source>Give the marks that were timed, or take the run out.</source>
        <translation type="unfinished">Isi tanda yang diukur waktunya, atau hapus uji itu.</translation>
    </message>
    <message>
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">waktu harus dari 0 sampai 3600 detik</translation>
    </message>
    <message>
        <source>Give seconds from the start of the watch.</source>
        <translation type="unfinished">Isi detik sejak stopwatch dimulai.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees cannot be</source>
        <translation type="unfinished">kemiringan lebih dari 45 derajat tidak mungkin</translation>
    </message>
    <message>
        <source>Give the heel in degrees.</source>
        <translation type="unfinished">Isi kemiringan (heel) dalam derajat.</translation>
    </message>
    <message>
        <source>the run is not complete: &quot;%1&quot; was not marked</source>
        <translation type="unfinished">uji tidak lengkap: &quot;%1&quot; tidak ditandai</translation>
    </message>
    <message>
        <source>Give that mark, or write &quot;spoiled&quot;.</source>
        <translation type="unfinished">Isi tanda itu, atau tulis &quot;spoiled&quot;.</translation>
    </message>
    <message>
        <source>the vessel could not be put there</source>
        <translation type="unfinished">kapal tidak dapat ditaruh di sana</translation>
    </message>
    <message>
        <source>Check the folder.</source>
        <translation type="unfinished">Periksa foldernya.</translation>
    </message>
    <message>
        <source>is missing: this is no exercise</source>
        <translation type="unfinished">tidak ada: ini bukan latihan</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Pilih berkas lain.</translation>
    </message>
    <message>
        <source>this exercise is of another form than this program knows (%1)</source>
        <translation type="unfinished">bentuk latihan ini lain daripada yang dikenal program ini (%1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written anew.</source>
        <translation type="unfinished">Perbarui program ini, atau minta latihan ditulis ulang.</translation>
    </message>
    <message>
        <source>it is sealed by the instructor&apos;s word</source>
        <translation type="unfinished">disegel dengan kata sandi instruktur</translation>
    </message>
    <message>
        <source>Open it with that word.</source>
        <translation type="unfinished">Buka dengan kata sandi itu.</translation>
    </message>
    <message>
        <source>has other signs than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">memuat tanda selain huruf kecil, angka, dan tanda hubung</translation>
    </message>
    <message>
        <source>Write it like &quot;stairway-doors&quot;.</source>
        <translation type="unfinished">Tulis seperti &quot;stairway-doors&quot;.</translation>
    </message>
    <message>
        <source>is longer than %1 bytes</source>
        <translation type="unfinished">lebih panjang dari %1 byte</translation>
    </message>
    <message>
        <source>Say it shorter.</source>
        <translation type="unfinished">Persingkat.</translation>
    </message>
    <message>
        <source>must be a list of doors</source>
        <translation type="unfinished">harus berupa daftar pintu</translation>
    </message>
    <message>
        <source>Write it like [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</source>
        <translation type="unfinished">Tulis seperti [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</translation>
    </message>
    <message>
        <source>door %1 is there twice</source>
        <translation type="unfinished">pintu %1 tercantum dua kali</translation>
    </message>
    <message>
        <source>Put all of its faults in one place.</source>
        <translation type="unfinished">Satukan semua cacatnya di satu tempat.</translation>
    </message>
    <message>
        <source>the practice vessel has no door &apos;%1&apos;</source>
        <translation type="unfinished">kapal latihan tidak punya pintu &apos;%1&apos;</translation>
    </message>
    <message>
        <source>Use one of its doors.</source>
        <translation type="unfinished">Pakai salah satu pintunya.</translation>
    </message>
    <message>
        <source>door %1 cannot have the fault &apos;%2&apos;</source>
        <translation type="unfinished">pintu %1 tidak dapat diberi cacat &apos;%2&apos;</translation>
    </message>
    <message>
        <source>Give it to a door of another kind or fitting.</source>
        <translation type="unfinished">Berikan kepada pintu dengan jenis atau perlengkapan lain.</translation>
    </message>
    <message>
        <source>&apos;%1&apos; and &apos;%2&apos; would hide one another on one door</source>
        <translation type="unfinished">&apos;%1&apos; dan &apos;%2&apos; akan saling menutupi pada satu pintu</translation>
    </message>
    <message>
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Berikan salah satunya kepada pintu lain.</translation>
    </message>
    <message>
        <source>stands without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">ada tanpa &quot;drawn&quot;: tidak ada yang diundi</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Sebutkan berapa cacat yang diundi.</translation>
    </message>
    <message>
        <source>only %1 faults more can be put into these doors</source>
        <translation type="unfinished">hanya %1 cacat lagi dapat ditempatkan pada pintu-pintu ini</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Undi lebih sedikit, atau sebutkan lebih banyak pintu.</translation>
    </message>
    <message>
        <source>is missing: an exam says what passes it</source>
        <translation type="unfinished">tidak ada: ujian harus menyebut batas lulusnya</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Tambahkan, 1 sampai 100.</translation>
    </message>
    <message>
        <source>only an exam is passed or failed</source>
        <translation type="unfinished">hanya ujian yang punya hasil lulus atau gagal</translation>
    </message>
    <message>
        <source>Take it out, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Keluarkan, atau tulis &quot;exam&quot; sebagai tingkatnya.</translation>
    </message>
    <message>
        <source>this must be an object of doors</source>
        <translation type="unfinished">ini harus berupa objek berisi pintu</translation>
    </message>
    <message>
        <source>Write it like {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</source>
        <translation type="unfinished">Tulis seperti {&quot;P-01&quot;: {&quot;plate&quot;: &quot;A-60&quot;}}.</translation>
    </message>
    <message>
        <source>the exercise has no door of this number</source>
        <translation type="unfinished">latihan ini tidak punya pintu dengan nomor itu</translation>
    </message>
    <message>
        <source>door %1 is not released this way</source>
        <translation type="unfinished">penahan pintu %1 tidak dilepas dengan cara ini</translation>
    </message>
    <message>
        <source>Write one of: %2.</source>
        <translation type="unfinished">Tulis salah satu dari: %2.</translation>
    </message>
    <message>
        <source>a time must be from 0 to %1 seconds</source>
        <translation type="unfinished">waktu harus dari 0 sampai %1 detik</translation>
    </message>
    <message>
        <source>Give seconds after the release.</source>
        <translation type="unfinished">Berikan dalam detik setelah pelepasan penahan.</translation>
    </message>
    <message>
        <source>this is no moment</source>
        <translation type="unfinished">ini bukan tanggal dan waktu</translation>
    </message>
    <message>
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Tulis seperti 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>a delay is no number: NOT kept</source>
        <translation type="unfinished">suatu kelambatan bukan angka: TIDAK disimpan</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Harap laporkan ini.</translation>
    </message>
    <message>
        <source>could not be taken away</source>
        <translation type="unfinished">tidak dapat dihapus</translation>
    </message>
    <message>
        <source>Look whether the folder can be written to.</source>
        <translation type="unfinished">Periksa apakah folder itu dapat ditulisi.</translation>
    </message>
    <message>
        <source>an exercise of this id ships with the program</source>
        <translation type="unfinished">latihan dengan id ini disertakan bersama program</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Beri latihan Anda id lain.</translation>
    </message>
    <message>
        <source>another exercise of this id is kept here already</source>
        <translation type="unfinished">latihan lain dengan id ini sudah disimpan di sini</translation>
    </message>
    <message>
        <source>Give yours another id, or take away %1.</source>
        <translation type="unfinished">Beri latihan Anda id lain, atau hapus %1.</translation>
    </message>
    <message>
        <source>this exercise is not sealed</source>
        <translation type="unfinished">latihan ini tidak disegel</translation>
    </message>
    <message>
        <source>Give the word.</source>
        <translation type="unfinished">Berikan kata sandinya.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">harus terdiri atas paling sedikit %1 karakter</translation>
    </message>
    <message>
        <source>Choose a longer one, best several words.</source>
        <translation type="unfinished">Pilih yang lebih panjang, sebaiknya beberapa kata.</translation>
    </message>
    <message>
        <source>this machine has too little memory free for the word</source>
        <translation type="unfinished">memori bebas mesin ini terlalu sedikit untuk kata sandi itu</translation>
    </message>
    <message>
        <source>the word does not open it: it is not the word it was sealed with, or the file was changed after it was sealed</source>
        <translation type="unfinished">kata sandi tidak membukanya: bukan kata sandi yang dipakai saat menyegel, atau berkas diubah setelah disegel</translation>
    </message>
    <message>
        <source>Type the word as the instructor chose it, or have the file given again.</source>
        <translation type="unfinished">Ketik kata sandi persis seperti dipilih instruktur, atau minta berkasnya diberikan lagi.</translation>
    </message>
    <message>
        <source>the seal is damaged</source>
        <translation type="unfinished">segelnya rusak</translation>
    </message>
    <message>
        <source>Have the file given again.</source>
        <translation type="unfinished">Minta berkasnya diberikan lagi.</translation>
    </message>
    <message>
        <source>this seal is of another form than this program knows</source>
        <translation type="unfinished">segel ini berbentuk lain daripada yang dikenal program ini</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise sealed anew.</source>
        <translation type="unfinished">Perbarui program ini, atau minta latihan disegel ulang.</translation>
    </message>
    <message>
        <source>a sealed exercise has faults in the open</source>
        <translation type="unfinished">latihan yang disegel memuat cacat secara terbuka</translation>
    </message>
    <message>
        <source>Have the exercise sealed anew.</source>
        <translation type="unfinished">Minta latihan disegel ulang.</translation>
    </message>
    <message>
        <source>what stands open in it was changed after it was sealed: title, words, level, doors or mark</source>
        <translation type="unfinished">bagian terbukanya diubah setelah disegel: judul, teks, tingkat, pintu, atau batas lulus</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">tidak dapat disusun: %1</translation>
    </message>
    <message>
        <source>its bytes cannot be had</source>
        <translation type="unfinished">byte-nya tidak dapat diperoleh</translation>
    </message>
    <message>
        <source>not all of its bytes can be had</source>
        <translation type="unfinished">tidak semua byte-nya dapat diperoleh</translation>
    </message>
    <message>
        <source>this is no handover file, or only a part of one</source>
        <translation type="unfinished">ini bukan berkas serah terima, atau hanya sebagian darinya</translation>
    </message>
    <message>
        <source>Choose another file, or have it handed over again.</source>
        <translation type="unfinished">Pilih berkas lain, atau minta diserahkan lagi.</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">berkas rusak (%1)</translation>
    </message>
    <message>
        <source>Have it handed over again.</source>
        <translation type="unfinished">Minta diserahkan lagi.</translation>
    </message>
    <message>
        <source>an entry cannot be read</source>
        <translation type="unfinished">satu entri tidak dapat dibaca</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">%1 tidak dapat dibaca</translation>
    </message>
    <message>
        <source>the entry %1 is there twice</source>
        <translation type="unfinished">entri %1 tercantum dua kali</translation>
    </message>
    <message>
        <source>the name of the entry &quot;%1&quot; leads out of the file</source>
        <translation type="unfinished">nama entri &quot;%1&quot; menunjuk ke luar berkas</translation>
    </message>
    <message>
        <source>No handover file is made so; do not use it.</source>
        <translation type="unfinished">Berkas serah terima tidak dibuat seperti ini; jangan dipakai.</translation>
    </message>
    <message>
        <source>the entry %1 would swell out of all proportion</source>
        <translation type="unfinished">entri %1 akan mengembang jauh di luar kewajaran</translation>
    </message>
    <message>
        <source>%1 is missing from it</source>
        <translation type="unfinished">%1 tidak ada di dalamnya</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB</source>
        <translation type="unfinished">%1 lebih besar dari %2 MB</translation>
    </message>
    <message>
        <source>%1 is damaged</source>
        <translation type="unfinished">%1 rusak</translation>
    </message>
    <message>
        <source>the signature does not fit the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">tanda tangan tidak cocok dengan kunci perangkat yang menandatanganinya: contents.sha256 atau contents.sig diubah</translation>
    </message>
    <message>
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem bukan kunci yang disebut handover.json</translation>
    </message>
    <message>
        <source>the entry %1 belongs to no handover file</source>
        <translation type="unfinished">entri %1 bukan bagian dari berkas serah terima</translation>
    </message>
    <message>
        <source>the entry %1 was added after it was signed</source>
        <translation type="unfinished">entri %1 ditambahkan setelah ditandatangani</translation>
    </message>
    <message>
        <source>%1 was changed after it was signed</source>
        <translation type="unfinished">%1 diubah setelah ditandatangani</translation>
    </message>
    <message>
        <source>%1 does not have the hash it is named by</source>
        <translation type="unfinished">%1 tidak memiliki hash yang menjadi namanya</translation>
    </message>
    <message>
        <source>the fact %1 is there twice, with different content</source>
        <translation type="unfinished">fakta %1 tercantum dua kali, dengan isi berbeda</translation>
    </message>
    <message>
        <source>it does not hold as much as its first page says</source>
        <translation type="unfinished">jumlah isinya tidak sama dengan yang disebut halaman pertamanya</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ini berasal dari latihan: tidak ada isinya yang merupakan catatan suatu kapal</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are not there</source>
        <translation type="unfinished">%1 adalah kapal latihan, yang pintunya tidak nyata</translation>
    </message>
    <message>
        <source>this is no handover file</source>
        <translation type="unfinished">ini bukan berkas serah terima</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">berkas ini berasal dari program yang lebih baru (bentuk %1; program ini membaca sampai %2)</translation>
    </message>
    <message>
        <source>Update this program, or take the file in with the newer one.</source>
        <translation type="unfinished">Perbarui program ini, atau impor berkas dengan program yang lebih baru itu.</translation>
    </message>
    <message>
        <source>this must be a list</source>
        <translation type="unfinished">ini harus berupa daftar</translation>
    </message>
    <message>
        <source>arrangements are numbered from 1</source>
        <translation type="unfinished">susunan dinomori mulai dari 1</translation>
    </message>
    <message>
        <source>this is not the key of a device</source>
        <translation type="unfinished">ini bukan kunci suatu perangkat</translation>
    </message>
    <message>
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">akan lebih besar dari %1 MB</translation>
    </message>
    <message>
        <source>Give a copy of the whole register instead.</source>
        <translation type="unfinished">Berikan salinan seluruh register sebagai gantinya.</translation>
    </message>
    <message>
        <source>the file is about another vessel than this register, which is about %1 %2</source>
        <translation type="unfinished">berkas ini tentang kapal lain, sedangkan register ini tentang %1 %2</translation>
    </message>
    <message>
        <source>Open the register of that vessel, or begin a new one.</source>
        <translation type="unfinished">Buka register kapal itu, atau mulai register baru.</translation>
    </message>
    <message>
        <source>Copy all 64 digits as the other tablet shows them.</source>
        <translation type="unfinished">Salin semua 64 digit seperti ditampilkan tablet lain itu.</translation>
    </message>
    <message>
        <source>the sealed file is damaged</source>
        <translation type="unfinished">berkas tersegel rusak</translation>
    </message>
    <message>
        <source>this file is sealed for one device</source>
        <translation type="unfinished">berkas ini disegel untuk satu perangkat</translation>
    </message>
    <message>
        <source>Look at it with the register of the device it is meant for.</source>
        <translation type="unfinished">Lihat dengan register di perangkat yang dituju.</translation>
    </message>
    <message>
        <source>this file is sealed for another device, the one whose key has the fingerprint %1</source>
        <translation type="unfinished">berkas ini disegel untuk perangkat lain, yaitu yang kuncinya bersidik jari %1</translation>
    </message>
    <message>
        <source>Open it there, or have it sealed for this device, whose fingerprint is %2.</source>
        <translation type="unfinished">Buka di sana, atau minta disegel untuk perangkat ini, yang sidik jarinya %2.</translation>
    </message>
    <message>
        <source>the computer gives no random numbers</source>
        <translation type="unfinished">komputer tidak memberikan bilangan acak</translation>
    </message>
    <message>
        <source>Start the computer again.</source>
        <translation type="unfinished">Nyalakan ulang komputer.</translation>
    </message>
    <message>
        <source>the file says that it comes from this very device, but its key has the fingerprint %1, which is not this device&apos;s</source>
        <translation type="unfinished">berkas menyatakan berasal dari perangkat ini sendiri, tetapi kuncinya bersidik jari %1, yang bukan milik perangkat ini</translation>
    </message>
    <message>
        <source>Do not take it; find out who made it.</source>
        <translation type="unfinished">Jangan impor; cari tahu siapa yang membuatnya.</translation>
    </message>
    <message>
        <source>it comes with another key than the one accepted for it: the fingerprint %1 instead of %2</source>
        <translation type="unfinished">datang dengan kunci lain daripada yang diterima untuknya: sidik jari %1, bukan %2</translation>
    </message>
    <message>
        <source>Do not take it before you have asked whoever has that tablet; if its key really is new, take the old acceptance back first.</source>
        <translation type="unfinished">Jangan impor sebelum Anda bertanya kepada pemegang tablet itu; bila kuncinya memang baru, tarik dahulu penerimaan yang lama.</translation>
    </message>
    <message>
        <source>it accepts, in the name of this device, a key that nobody here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">di dalamnya, atas nama perangkat ini, diterima kunci yang belum diterima siapa pun di sini: kunci %1 dari perangkat %2, sidik jari %3</translation>
    </message>
    <message>
        <source>If this register was put back from a backup, compare that key as well and accept it; else do not take the file.</source>
        <translation type="unfinished">Bila register ini dipulihkan dari cadangan, bandingkan juga kunci itu lalu terima; bila tidak, jangan impor berkasnya.</translation>
    </message>
    <message>
        <source>nobody here has accepted its key yet; it has the fingerprint %1</source>
        <translation type="unfinished">belum ada yang menerima kuncinya di sini; sidik jarinya %1</translation>
    </message>
    <message>
        <source>Compare the fingerprint with what that tablet shows, and accept it.</source>
        <translation type="unfinished">Bandingkan sidik jari itu dengan yang ditampilkan tablet tersebut, lalu terima.</translation>
    </message>
    <message>
        <source>there is no such walkdown to sign</source>
        <translation type="unfinished">tidak ada inspeksi itu untuk ditandatangani</translation>
    </message>
    <message>
        <source>Choose another.</source>
        <translation type="unfinished">Pilih yang lain.</translation>
    </message>
    <message>
        <source>Do not rely on this signature.</source>
        <translation type="unfinished">Jangan mengandalkan tanda tangan ini.</translation>
    </message>
    <message>
        <source>Make the report again.</source>
        <translation type="unfinished">Buat laporannya lagi.</translation>
    </message>
    <message>
        <source>it rests on %1 facts of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">didasarkan pada %1 fakta dari perangkat %2 sampai %3; di sini ada %4</translation>
    </message>
    <message>
        <source>the facts it rests on are not what they were then</source>
        <translation type="unfinished">fakta yang menjadi dasarnya tidak lagi seperti saat itu</translation>
    </message>
    <message>
        <source>the signature does not fit its key and what it says</source>
        <translation type="unfinished">tanda tangan tidak cocok dengan kunci dan isinya</translation>
    </message>
    <message>
        <source>it was made with another key than that of its device</source>
        <translation type="unfinished">dibuat dengan kunci lain daripada kunci perangkatnya</translation>
    </message>
    <message>
        <source>its bytes were changed</source>
        <translation type="unfinished">byte-nya telah diubah</translation>
    </message>
    <message>
        <source>Take it over again from another tablet.</source>
        <translation type="unfinished">Ambil alih lagi dari tablet lain.</translation>
    </message>
    <message>
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">ini menarik kembali sesuatu tetapi tidak menyebut apa</translation>
    </message>
    <message>
        <source>No program of ours writes this.</source>
        <translation type="unfinished">Tidak ada program kami yang menulis ini.</translation>
    </message>
    <message>
        <source>the fact it replaces, %1, is not here</source>
        <translation type="unfinished">fakta yang digantikannya, %1, tidak ada di sini</translation>
    </message>
    <message>
        <source>it replaces %1, which replaces it in turn</source>
        <translation type="unfinished">ini menggantikan %1, yang sebaliknya menggantikannya</translation>
    </message>
    <message>
        <source>it replaces %1, which is about something else</source>
        <translation type="unfinished">ini menggantikan %1, yang tentang hal lain</translation>
    </message>
    <message>
        <source>%1 line %2</source>
        <translation type="unfinished">%1 baris %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3</source>
        <translation type="unfinished">%1 baris %2, kolom %3</translation>
    </message>
    <message>
        <source>%1, column %2</source>
        <translation type="unfinished">%1, kolom %2</translation>
    </message>
    <message>
        <source>%1 line %2, column %3 (%4)</source>
        <translation type="unfinished">%1 baris %2, kolom %3 (%4)</translation>
    </message>
    <message>
        <source>%1 line %2 (%3)</source>
        <translation type="unfinished">%1 baris %2 (%3)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished">%1 (%2)</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation type="unfinished">%1 pada %2</translation>
    </message>
    <message>
        <source>%1 at its top</source>
        <translation type="unfinished">%1 di bagian paling atas</translation>
    </message>
    <message>
        <source>built-in %1</source>
        <translation type="unfinished">%1 bawaan</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>door (no number)</source>
        <translation type="unfinished">pintu (tanpa nomor)</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">geladak %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>boundary %1</source>
        <translation type="unfinished">pembatas %1</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished">kapal</translation>
    </message>
    <message>
        <source>vessel %1</source>
        <translation type="unfinished">kapal %1</translation>
    </message>
    <message>
        <source>vessel %1 %2</source>
        <translation type="unfinished">kapal %1 %2</translation>
    </message>
    <message>
        <source>fact %1</source>
        <translation type="unfinished">fakta %1</translation>
    </message>
    <message>
        <source>signature %1</source>
        <translation type="unfinished">tanda tangan %1</translation>
    </message>
    <message>
        <source>report %1</source>
        <translation type="unfinished">laporan %1</translation>
    </message>
    <message>
        <source>photograph %1</source>
        <translation type="unfinished">foto %1</translation>
    </message>
    <message>
        <source>device %1</source>
        <translation type="unfinished">perangkat %1</translation>
    </message>
    <message>
        <source>device %1 (%2)</source>
        <translation type="unfinished">perangkat %1 (%2)</translation>
    </message>
    <message>
        <source>key %1</source>
        <translation type="unfinished">kunci %1</translation>
    </message>
    <message>
        <source>this device&apos;s key</source>
        <translation type="unfinished">kunci perangkat ini</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">register</translation>
    </message>
    <message>
        <source>handover file</source>
        <translation type="unfinished">berkas serah terima</translation>
    </message>
    <message>
        <source>handover</source>
        <translation type="unfinished">serah terima</translation>
    </message>
    <message>
        <source>practice</source>
        <translation type="unfinished">latihan</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">foto</translation>
    </message>
    <message>
        <source>walkdown %1</source>
        <translation type="unfinished">inspeksi %1</translation>
    </message>
    <message>
        <source>report</source>
        <translation type="unfinished">laporan</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">catatan pintu</translation>
    </message>
    <message>
        <source>paper form</source>
        <translation type="unfinished">formulir kertas</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">percobaan</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">kata sandi instruktur</translation>
    </message>
    <message>
        <source>stopped as asked: nothing was changed</source>
        <translation type="unfinished">dihentikan sesuai permintaan: tidak ada yang diubah</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;?</source>
        <translation type="unfinished">Apakah maksud Anda &quot;%1&quot;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot; or &quot;%2&quot;?</source>
        <translation type="unfinished">Apakah maksud Anda &quot;%1&quot; atau &quot;%2&quot;?</translation>
    </message>
    <message>
        <source>Did you mean &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;?</source>
        <translation type="unfinished">Apakah maksud Anda &quot;%1&quot;, &quot;%2&quot;, atau &quot;%3&quot;?</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished">tidak ada berkas seperti itu</translation>
    </message>
    <message>
        <source>Check its name and folder.</source>
        <translation type="unfinished">Periksa nama dan foldernya.</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished">ini folder, bukan berkas</translation>
    </message>
    <message>
        <source>Name the file in it.</source>
        <translation type="unfinished">Sebutkan berkas di dalamnya.</translation>
    </message>
    <message>
        <source>this is not a file that can be read</source>
        <translation type="unfinished">ini bukan berkas yang dapat dibaca</translation>
    </message>
    <message>
        <source>Copy it to a folder of yours.</source>
        <translation type="unfinished">Salin ke folder Anda sendiri.</translation>
    </message>
    <message>
        <source>the file is larger than %1 MB</source>
        <translation type="unfinished">berkas lebih besar dari %1 MB</translation>
    </message>
    <message>
        <source>Choose the right file.</source>
        <translation type="unfinished">Pilih berkas yang benar.</translation>
    </message>
    <message>
        <source>the file cannot be opened</source>
        <translation type="unfinished">berkas tidak dapat dibuka</translation>
    </message>
    <message>
        <source>Ask for permission to read it.</source>
        <translation type="unfinished">Minta izin untuk membacanya.</translation>
    </message>
    <message>
        <source>the file could not be read to its end</source>
        <translation type="unfinished">berkas tidak dapat dibaca sampai akhir</translation>
    </message>
    <message>
        <source>Try again, or copy it first.</source>
        <translation type="unfinished">Coba lagi, atau salin dahulu.</translation>
    </message>
    <message>
        <source>Give a file name.</source>
        <translation type="unfinished">Berikan nama berkas.</translation>
    </message>
    <message>
        <source>there is a file of this name already: NOT replaced</source>
        <translation type="unfinished">sudah ada berkas dengan nama ini: TIDAK diganti</translation>
    </message>
    <message>
        <source>Give another name, or say that it may be replaced.</source>
        <translation type="unfinished">Beri nama lain, atau nyatakan bahwa berkas itu boleh diganti.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT written over</source>
        <translation type="unfinished">ini register itu sendiri: TIDAK ditimpa</translation>
    </message>
    <message>
        <source>Give another name.</source>
        <translation type="unfinished">Beri nama lain.</translation>
    </message>
    <message>
        <source>cannot be written here: %1</source>
        <translation type="unfinished">tidak dapat ditulis di sini: %1</translation>
    </message>
    <message>
        <source>not all of it could be written: %1</source>
        <translation type="unfinished">tidak semuanya dapat ditulis: %1</translation>
    </message>
    <message>
        <source>it could not be flushed to the storage: %1</source>
        <translation type="unfinished">tidak dapat dituntaskan ke media penyimpanan: %1</translation>
    </message>
    <message>
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">berkas yang ditulis tidak dapat ditutup: %1</translation>
    </message>
    <message>
        <source>the written file could not take its place: %1</source>
        <translation type="unfinished">berkas yang ditulis tidak dapat dipasang di tempatnya: %1</translation>
    </message>
    <message>
        <source>Choose another place; what was there before is untouched.</source>
        <translation type="unfinished">Pilih tempat lain; yang sudah ada sebelumnya tidak berubah.</translation>
    </message>
    <message>
        <source>it is written, but its folder could not be flushed: %1</source>
        <translation type="unfinished">sudah ditulis, tetapi foldernya tidak dapat dituntaskan ke media penyimpanan: %1</translation>
    </message>
    <message>
        <source>Write it once more before the power goes.</source>
        <translation type="unfinished">Tulis sekali lagi sebelum listrik padam.</translation>
    </message>
    <message>
        <source>could not be taken away: %1</source>
        <translation type="unfinished">tidak dapat dihapus: %1</translation>
    </message>
    <message>
        <source>its folder could not be flushed: %1</source>
        <translation type="unfinished">foldernya tidak dapat dituntaskan ke media penyimpanan: %1</translation>
    </message>
    <message>
        <source>A vessel&apos;s register is far smaller; choose the right file.</source>
        <translation type="unfinished">Register kapal jauh lebih kecil; pilih berkas yang benar.</translation>
    </message>
    <message>
        <source>the file is written in UTF-16, not in UTF-8</source>
        <translation type="unfinished">berkas ditulis dalam UTF-16, bukan UTF-8</translation>
    </message>
    <message>
        <source>Save it as CSV UTF-8.</source>
        <translation type="unfinished">Simpan sebagai CSV UTF-8.</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation type="unfinished">berkas kosong</translation>
    </message>
    <message>
        <source>Export a register to see the tables it needs.</source>
        <translation type="unfinished">Ekspor satu register untuk melihat tabel yang diperlukan.</translation>
    </message>
    <message>
        <source>text stands before or after the quotes of a cell</source>
        <translation type="unfinished">ada teks sebelum atau sesudah tanda kutip sebuah sel</translation>
    </message>
    <message>
        <source>Put one quote at each end of the cell and double any quote inside it, or save the table as CSV again from the spreadsheet.</source>
        <translation type="unfinished">Beri satu tanda kutip di setiap ujung sel dan gandakan setiap tanda kutip di dalamnya, atau simpan lagi tabel sebagai CSV dari lembar sebar.</translation>
    </message>
    <message>
        <source>a quoted cell is not closed before the file ends</source>
        <translation type="unfinished">sel bertanda kutip tidak ditutup sebelum berkas berakhir</translation>
    </message>
    <message>
        <source>byte %1 is not UTF-8</source>
        <translation type="unfinished">byte %1 bukan UTF-8</translation>
    </message>
    <message>
        <source>Save the file as CSV UTF-8.</source>
        <translation type="unfinished">Simpan berkas sebagai CSV UTF-8.</translation>
    </message>
    <message>
        <source>the cell is empty</source>
        <translation type="unfinished">sel kosong</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation type="unfinished">Isilah.</translation>
    </message>
    <message>
        <source>Write digits with a point, such as 71.40, without a unit.</source>
        <translation type="unfinished">Tulis angka dengan titik desimal, misalnya 71.40, tanpa satuan.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a whole number</source>
        <translation type="unfinished">&quot;%1&quot; bukan bilangan bulat</translation>
    </message>
    <message>
        <source>Write digits only, such as 1200.</source>
        <translation type="unfinished">Tulis angka saja, misalnya 1200.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither yes nor no</source>
        <translation type="unfinished">&quot;%1&quot; bukan yes dan bukan no</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation type="unfinished">Tulis yes atau no.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date</source>
        <translation type="unfinished">&quot;%1&quot; bukan tanggal</translation>
    </message>
    <message>
        <source>Write it as YYYY-MM-DD, such as 2015-03-01, or leave it empty.</source>
        <translation type="unfinished">Tulis sebagai YYYY-MM-DD, misalnya 2015-03-01, atau biarkan kosong.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here</source>
        <translation type="unfinished">&quot;%1&quot; tidak dikenal di sini</translation>
    </message>
    <message>
        <source>this is not JSON</source>
        <translation type="unfinished">ini bukan JSON</translation>
    </message>
    <message>
        <source>Look for a missing comma, quote or bracket just before this place; the file must be UTF-8.</source>
        <translation type="unfinished">Cari koma, tanda kutip, atau kurung yang hilang tepat sebelum tempat ini; berkas harus UTF-8.</translation>
    </message>
    <message>
        <source>a number in it is too large to be read</source>
        <translation type="unfinished">ada angka di dalamnya yang terlalu besar untuk dibaca</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation type="unfinished">Perbaiki.</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good one.</source>
        <translation type="unfinished">Minta berkas yang baik kepada pemberi berkas ini.</translation>
    </message>
    <message>
        <source>this field is given twice</source>
        <translation type="unfinished">isian ini diberikan dua kali</translation>
    </message>
    <message>
        <source>this field is missing</source>
        <translation type="unfinished">isian ini tidak ada</translation>
    </message>
    <message>
        <source>Add it.</source>
        <translation type="unfinished">Tambahkan.</translation>
    </message>
    <message>
        <source>this field is not known here</source>
        <translation type="unfinished">isian ini tidak dikenal di sini</translation>
    </message>
    <message>
        <source>Take it out, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Keluarkan, atau awali namanya dengan &quot;x-&quot;.</translation>
    </message>
    <message>
        <source>this field is empty</source>
        <translation type="unfinished">isian ini kosong</translation>
    </message>
    <message>
        <source>this list is empty</source>
        <translation type="unfinished">daftar ini kosong</translation>
    </message>
    <message>
        <source>Name at least one, or leave the field out.</source>
        <translation type="unfinished">Sebutkan paling sedikit satu, atau hilangkan isian ini.</translation>
    </message>
    <message>
        <source>Write it in braces: {&quot;field&quot;: value}.</source>
        <translation type="unfinished">Tulis dalam kurung kurawal: {&quot;field&quot;: value}.</translation>
    </message>
    <message>
        <source>this must be a list of texts</source>
        <translation type="unfinished">ini harus berupa daftar teks</translation>
    </message>
    <message>
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Tulis dalam kurung siku: [&quot;one&quot;, &quot;two&quot;].</translation>
    </message>
    <message>
        <source>this must be a text</source>
        <translation type="unfinished">ini harus berupa teks</translation>
    </message>
    <message>
        <source>Write it in quotes.</source>
        <translation type="unfinished">Tulis dalam tanda kutip.</translation>
    </message>
    <message>
        <source>this must be a number</source>
        <translation type="unfinished">ini harus berupa angka</translation>
    </message>
    <message>
        <source>Write it without quotes, with a point.</source>
        <translation type="unfinished">Tulis tanpa tanda kutip, dengan titik desimal.</translation>
    </message>
    <message>
        <source>this must be a whole number from %1 to %2</source>
        <translation type="unfinished">ini harus bilangan bulat dari %1 sampai %2</translation>
    </message>
    <message>
        <source>Write digits only, without quotes.</source>
        <translation type="unfinished">Tulis angka saja, tanpa tanda kutip.</translation>
    </message>
    <message>
        <source>this must be true or false</source>
        <translation type="unfinished">ini harus true atau false</translation>
    </message>
    <message>
        <source>Write YYYY-MM-DD.</source>
        <translation type="unfinished">Tulis YYYY-MM-DD.</translation>
    </message>
    <message>
        <source>boundary %1 (%2)</source>
        <translation type="unfinished">pembatas %1 (%2)</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, %2 by %3</source>
        <translation type="unfinished">pembatas %1 menurut denah yang disetujui, %2 menurut %3</translation>
    </message>
    <message>
        <source>%1: NOT saved</source>
        <translation type="unfinished">%1: TIDAK tersimpan</translation>
    </message>
    <message>
        <source>%1: NOT adopted</source>
        <translation type="unfinished">%1: TIDAK diadopsi</translation>
    </message>
    <message>
        <source>%1: NOT taken in</source>
        <translation type="unfinished">%1: TIDAK diimpor</translation>
    </message>
    <message>
        <source>stopped as asked</source>
        <translation type="unfinished">dihentikan sesuai permintaan</translation>
    </message>
    <message>
        <source>it refers to something that is not in this register</source>
        <translation type="unfinished">merujuk ke sesuatu yang tidak ada di register ini</translation>
    </message>
    <message>
        <source>Record what it refers to first.</source>
        <translation type="unfinished">Catat dahulu yang dirujuknya.</translation>
    </message>
    <message>
        <source>what is recorded is never changed or deleted (%1)</source>
        <translation type="unfinished">yang sudah dicatat tidak pernah diubah atau dihapus (%1)</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Catat koreksi sebagai gantinya.</translation>
    </message>
    <message>
        <source>a text holds bytes that are no valid text, or a value is of the wrong kind</source>
        <translation type="unfinished">suatu teks memuat byte yang bukan teks yang sah, atau suatu nilai salah jenisnya</translation>
    </message>
    <message>
        <source>Enter it again.</source>
        <translation type="unfinished">Masukkan lagi.</translation>
    </message>
    <message>
        <source>a value is missing or is not a number (%1)</source>
        <translation type="unfinished">suatu nilai tidak ada atau bukan angka (%1)</translation>
    </message>
    <message>
        <source>it is there twice (%1)</source>
        <translation type="unfinished">tercantum dua kali (%1)</translation>
    </message>
    <message>
        <source>Leave one of the two out.</source>
        <translation type="unfinished">Hilangkan salah satu dari keduanya.</translation>
    </message>
    <message>
        <source>a value is not one the register allows (%1)</source>
        <translation type="unfinished">suatu nilai tidak diperbolehkan register (%1)</translation>
    </message>
    <message>
        <source>this is no vessel register</source>
        <translation type="unfinished">ini bukan register kapal</translation>
    </message>
    <message>
        <source>it is too large for the register</source>
        <translation type="unfinished">terlalu besar untuk register</translation>
    </message>
    <message>
        <source>Use a smaller photograph or a shorter text.</source>
        <translation type="unfinished">Pakai foto yang lebih kecil atau teks yang lebih pendek.</translation>
    </message>
    <message>
        <source>%1 (SQLite %2)</source>
        <translation type="unfinished">%1 (SQLite %2)</translation>
    </message>
    <message>
        <source>Try again; if it comes back, open the last backup.</source>
        <translation type="unfinished">Coba lagi; bila terulang, buka cadangan terakhir.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not installed</source>
        <translation type="unfinished">driver SQLite dari Qt tidak terpasang</translation>
    </message>
    <message>
        <source>Install the package libqt6sql6-sqlite.</source>
        <translation type="unfinished">Pasang paket libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver is not usable</source>
        <translation type="unfinished">driver SQLite dari Qt tidak dapat dipakai</translation>
    </message>
    <message>
        <source>there is no file layer of that name</source>
        <translation type="unfinished">tidak ada lapisan berkas dengan nama itu</translation>
    </message>
    <message>
        <source>the register is missing but &quot;%1&quot; beside it holds entries of it</source>
        <translation type="unfinished">register tidak ada, tetapi &quot;%1&quot; di sampingnya memuat entri register itu</translation>
    </message>
    <message>
        <source>Put the register back beside it, or move that file away to begin a new register.</source>
        <translation type="unfinished">Kembalikan register ke sampingnya, atau pindahkan berkas itu untuk memulai register baru.</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation type="unfinished">folder tidak ada</translation>
    </message>
    <message>
        <source>Make the folder or choose another place.</source>
        <translation type="unfinished">Buat foldernya atau pilih tempat lain.</translation>
    </message>
    <message>
        <source>you may not write to this folder</source>
        <translation type="unfinished">Anda tidak boleh menulis ke folder ini</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Pilih folder lain.</translation>
    </message>
    <message>
        <source>the new register cannot be put in its place</source>
        <translation type="unfinished">register baru tidak dapat dipasang di tempatnya</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">disk melaporkan gangguan</translation>
    </message>
    <message>
        <source>Try again; if it comes back, choose another disk.</source>
        <translation type="unfinished">Coba lagi; bila terulang, pilih disk lain.</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">ini bukan berkas</translation>
    </message>
    <message>
        <source>you may not read this file</source>
        <translation type="unfinished">Anda tidak boleh membaca berkas ini</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Salin ke folder Anda sendiri, lalu buka di sana.</translation>
    </message>
    <message>
        <source>the register lies in a read-only place; nothing could be recorded</source>
        <translation type="unfinished">register berada di tempat yang hanya dapat dibaca; tidak ada yang dapat dicatat</translation>
    </message>
    <message>
        <source>the file is empty; it is no vessel register</source>
        <translation type="unfinished">berkas kosong; ini bukan register kapal</translation>
    </message>
    <message>
        <source>Delete it to begin a new register of this name, or choose another file.</source>
        <translation type="unfinished">Hapus untuk memulai register baru dengan nama ini, atau pilih berkas lain.</translation>
    </message>
    <message>
        <source>this is no vessel register of Latchround</source>
        <translation type="unfinished">ini bukan register kapal dari Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one knows up to %2)</source>
        <translation type="unfinished">register ditulis oleh program yang lebih baru (versi %1; program ini mengenal sampai %2)</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Perbarui program ini, lalu buka lagi.</translation>
    </message>
    <message>
        <source>the register was never finished</source>
        <translation type="unfinished">register ini tidak pernah selesai dibuat</translation>
    </message>
    <message>
        <source>SQLite does not accept &quot;%1&quot; here (it answers %2), so entries would not be safe</source>
        <translation type="unfinished">SQLite tidak menerima &quot;%1&quot; di sini (jawabannya %2), sehingga entri tidak akan aman</translation>
    </message>
    <message>
        <source>Copy the register to a disk of this computer and open it there.</source>
        <translation type="unfinished">Salin register ke disk komputer ini, lalu buka di sana.</translation>
    </message>
    <message>
        <source>this disk cannot hold a write-ahead log</source>
        <translation type="unfinished">disk ini tidak dapat memuat log tulis-dahulu (write-ahead log)</translation>
    </message>
    <message>
        <source>another program of another version writes in it</source>
        <translation type="unfinished">program lain dengan versi lain sedang menulis di dalamnya</translation>
    </message>
    <message>
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Tutup di sana, lalu buka di sini.</translation>
    </message>
    <message>
        <source>bringing the register to this program&apos;s form would leave rows of %1 without what they refer to: NOT changed</source>
        <translation type="unfinished">mengubah register ke bentuk program ini akan meninggalkan baris %1 tanpa yang dirujuknya: TIDAK diubah</translation>
    </message>
    <message>
        <source>Open it with the program that wrote it.</source>
        <translation type="unfinished">Buka dengan program yang menulisnya.</translation>
    </message>
    <message>
        <source>the file is damaged: %1</source>
        <translation type="unfinished">berkas rusak: %1</translation>
    </message>
    <message>
        <source>a row of %1 refers to nothing</source>
        <translation type="unfinished">satu baris %1 tidak merujuk ke apa pun</translation>
    </message>
    <message>
        <source>fact %1 is only half there</source>
        <translation type="unfinished">fakta %1 hanya ada separuh</translation>
    </message>
    <message>
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ini register latihan: tidak ada isinya yang merupakan catatan suatu kapal</translation>
    </message>
    <message>
        <source>Take the file into the register of its vessel.</source>
        <translation type="unfinished">Impor berkas ke register kapalnya.</translation>
    </message>
    <message>
        <source>Sign and hand over in the register of a vessel.</source>
        <translation type="unfinished">Tanda tangani dan serahkan dalam register suatu kapal.</translation>
    </message>
    <message>
        <source>this is the register of a vessel: nobody practises in it</source>
        <translation type="unfinished">ini register suatu kapal: jangan berlatih di dalamnya</translation>
    </message>
    <message>
        <source>a practice register holds the practice vessel alone</source>
        <translation type="unfinished">register latihan hanya memuat kapal latihan</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Impor ke register tersendiri.</translation>
    </message>
    <message>
        <source>the number %1 marks the practice vessel, whose doors are not there</source>
        <translation type="unfinished">nomor %1 menandai kapal latihan, yang pintunya tidak nyata</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or practise with it under Practice.</source>
        <translation type="unfinished">Berikan nomor kapal itu sendiri, atau berlatihlah dengannya di Latihan.</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">program lain</translation>
    </message>
    <message>
        <source>another program writes in this register (%1)</source>
        <translation type="unfinished">program lain sedang menulis di register ini (%1)</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Tutup dahulu di sana.</translation>
    </message>
    <message>
        <source>another program took the register&apos;s log away</source>
        <translation type="unfinished">program lain mengambil log register</translation>
    </message>
    <message>
        <source>Try again: what the log held is put into the register first. Open the register with no other program meanwhile.</source>
        <translation type="unfinished">Coba lagi: isi log dimasukkan dahulu ke register. Selama itu jangan buka register dengan program lain.</translation>
    </message>
    <message>
        <source>the register is closed after a fault</source>
        <translation type="unfinished">register ditutup setelah terjadi gangguan</translation>
    </message>
    <message>
        <source>Open it again.</source>
        <translation type="unfinished">Buka lagi.</translation>
    </message>
    <message>
        <source>another fact with this id is recorded already</source>
        <translation type="unfinished">fakta lain dengan id ini sudah dicatat</translation>
    </message>
    <message>
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Catat koreksi dengan id tersendiri.</translation>
    </message>
    <message>
        <source>this is no photograph</source>
        <translation type="unfinished">ini bukan foto</translation>
    </message>
    <message>
        <source>the photograph&apos;s bytes do not have the hash it names</source>
        <translation type="unfinished">byte foto tidak memiliki hash yang disebutkan</translation>
    </message>
    <message>
        <source>Take or choose the photograph again.</source>
        <translation type="unfinished">Ambil atau pilih foto lagi.</translation>
    </message>
    <message>
        <source>its bytes are not in this register</source>
        <translation type="unfinished">byte-nya tidak ada di register ini</translation>
    </message>
    <message>
        <source>Take it over from the tablet it was taken with.</source>
        <translation type="unfinished">Ambil alih dari tablet yang memotretnya.</translation>
    </message>
    <message>
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">tidak ada pintu seperti itu di register kapal ini</translation>
    </message>
    <message>
        <source>Check the number, or take in an arrangement that lists the door first.</source>
        <translation type="unfinished">Periksa nomornya, atau impor dahulu susunan yang memuat pintu itu.</translation>
    </message>
    <message>
        <source>%1 is not in this register</source>
        <translation type="unfinished">%1 tidak ada di register ini</translation>
    </message>
    <message>
        <source>Record it first, or both together.</source>
        <translation type="unfinished">Catat itu dahulu, atau keduanya bersama-sama.</translation>
    </message>
    <message>
        <source>the walkdown &quot;%1&quot;</source>
        <translation type="unfinished">inspeksi &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the run &quot;%1&quot;</source>
        <translation type="unfinished">uji &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the deficiency &quot;%1&quot;</source>
        <translation type="unfinished">defisiensi &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the person &quot;%1&quot;</source>
        <translation type="unfinished">orang &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the deficiency it repeats, &quot;%1&quot;</source>
        <translation type="unfinished">defisiensi yang diulanginya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the fact it shows, &quot;%1&quot;</source>
        <translation type="unfinished">fakta yang ditunjukkannya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the fact it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">fakta yang digantikannya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the fact that stands, &quot;%1&quot;</source>
        <translation type="unfinished">fakta yang tetap berlaku, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the fact that yields, &quot;%1&quot;</source>
        <translation type="unfinished">fakta yang dikesampingkan, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">susunan baru tidak memuat pintu itu, tetapi 1 fakta tercatat tentangnya</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number it was tested by.</source>
        <translation type="unfinished">Pertahankan pintu itu dalam susunan, dengan nomor yang dipakai saat diuji.</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">susunan baru tidak memuat pintu itu, tetapi %1 fakta tercatat tentangnya</translation>
    </message>
    <message>
        <source>%1 (and 1 more such door)</source>
        <translation type="unfinished">%1 (dan 1 pintu lain seperti itu)</translation>
    </message>
    <message>
        <source>%1 (and %2 more such doors)</source>
        <translation type="unfinished">%1 (dan %2 pintu lain seperti itu)</translation>
    </message>
    <message>
        <source>the arrangement that comes with it has no such door, but 1 fact is recorded about it</source>
        <translation type="unfinished">susunan yang menyertainya tidak memuat pintu itu, tetapi 1 fakta tercatat tentang pintu itu</translation>
    </message>
    <message>
        <source>Import the arrangement with that door in it, here or on the other device, then hand over again.</source>
        <translation type="unfinished">Impor susunan yang memuat pintu itu, di sini atau di perangkat lain, lalu serahkan lagi.</translation>
    </message>
    <message>
        <source>the arrangement that comes with it has no such door, but %1 facts are recorded about it</source>
        <translation type="unfinished">susunan yang menyertainya tidak memuat pintu itu, tetapi %1 fakta tercatat tentang pintu itu</translation>
    </message>
    <message>
        <source>it is recorded here with other content under the same id</source>
        <translation type="unfinished">sudah dicatat di sini dengan isi lain di bawah id yang sama</translation>
    </message>
    <message>
        <source>One of the two registers was changed by something else than this program; find out which before either is used.</source>
        <translation type="unfinished">Salah satu dari kedua register diubah oleh sesuatu selain program ini; cari tahu yang mana sebelum salah satunya dipakai.</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 merujuk balik kepadanya</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor with what comes</source>
        <translation type="unfinished">%1 tidak ada di register ini maupun dalam kiriman yang masuk</translation>
    </message>
    <message>
        <source>Have it handed over again, all of it.</source>
        <translation type="unfinished">Minta diserahkan lagi, seluruhnya.</translation>
    </message>
    <message>
        <source>no issue of the arrangement has a door &quot;%1&quot;</source>
        <translation type="unfinished">tidak ada terbitan susunan yang memuat pintu &quot;%1&quot;</translation>
    </message>
    <message>
        <source>in an A-class boundary</source>
        <translation type="unfinished">di pembatas kelas A</translation>
    </message>
    <message>
        <source>in a B-class boundary</source>
        <translation type="unfinished">di pembatas kelas B</translation>
    </message>
    <message>
        <source>in a C-class boundary</source>
        <translation type="unfinished">di pembatas kelas C</translation>
    </message>
    <message>
        <source>class of the boundary not known</source>
        <translation type="unfinished">kelas pembatas tidak diketahui</translation>
    </message>
    <message>
        <source>more than 600 passengers</source>
        <translation type="unfinished">lebih dari 600 penumpang</translation>
    </message>
    <message>
        <source>600 passengers or fewer</source>
        <translation type="unfinished">600 penumpang atau kurang</translation>
    </message>
    <message>
        <source>machinery space of category A</source>
        <translation type="unfinished">ruang permesinan kategori A</translation>
    </message>
    <message>
        <source>no machinery space of category A</source>
        <translation type="unfinished">bukan ruang permesinan kategori A</translation>
    </message>
    <message>
        <source>more than 36 passengers</source>
        <translation type="unfinished">lebih dari 36 penumpang</translation>
    </message>
    <message>
        <source>36 passengers or fewer</source>
        <translation type="unfinished">36 penumpang atau kurang</translation>
    </message>
    <message>
        <source>%1? The register does not say</source>
        <translation type="unfinished">%1? Register tidak menyebutkannya</translation>
    </message>
    <message>
        <source>keel laid before %1: ask for the approved drawing</source>
        <translation type="unfinished">lunas diletakkan sebelum %1: minta gambar yang disetujui</translation>
    </message>
    <message>
        <source>keel date unknown: ask for the approved drawing</source>
        <translation type="unfinished">tanggal peletakan lunas tidak diketahui: minta gambar yang disetujui</translation>
    </message>
    <message>
        <source>keel laid %1: a text of ships of other dates</source>
        <translation type="unfinished">lunas diletakkan %1: teks untuk kapal dengan tanggal bangun lain</translation>
    </message>
    <message>
        <source>another printed figure stands beside a limit of a gauge</source>
        <translation type="unfinished">angka tercetak lain hanya dapat mendampingi batas dari alat ukur</translation>
    </message>
    <message>
        <source>Give low or high as well, and &quot;source&quot;: &quot;gauge&quot;.</source>
        <translation type="unfinished">Isi juga low atau high, dan &quot;source&quot;: &quot;gauge&quot;.</translation>
    </message>
    <message>
        <source>only a band of closing times or rates can be approximate</source>
        <translation type="unfinished">hanya rentang waktu menutup atau kecepatan menutup yang dapat bersifat kira-kira</translation>
    </message>
    <message>
        <source>Take &quot;approximate&quot; out, or give such a band.</source>
        <translation type="unfinished">Hapus &quot;approximate&quot;, atau isi rentang demikian.</translation>
    </message>
    <message>
        <source>a margin must be from 0 to less than 1</source>
        <translation type="unfinished">kelonggaran harus dari 0 sampai kurang dari 1</translation>
    </message>
    <message>
        <source>Give it as a part of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Isi sebagai bagian dari batas: 0.05 adalah 5 persen.</translation>
    </message>
    <message>
        <source>this margin is wider than that of the catalogue</source>
        <translation type="unfinished">kelonggaran ini lebih lebar daripada di katalog</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Undakan demikian maksimal 20 % dari panjang rata-rata zona, dan maksimal 8 m (26 ft).</translation>
    </message>
    <message>
        <source>A zone is at most 39.9 m (131 ft) long on the mean of any one deck as a rule; no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">Panjang rata-rata zona di geladak mana pun pada umumnya maksimal 39.9 m (131 ft); tidak ada perpanjangan yang tercetak, dan feri boleh punya padanan yang disetujui (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A zone is at most 40 m (131 ft) long on the mean of any one deck as a rule, the vehicle space of a vehicle ferry excepted. By leave of the Marine Safety Center 44 m (144 ft), between its farthest points too. A balcony is at most 40 m long; where that and its area over its mean width come to more, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">Panjang rata-rata zona di geladak mana pun pada umumnya maksimal 40 m (131 ft), kecuali ruang kendaraan pada feri kendaraan. Dengan izin Marine Safety Center 44 m (144 ft), juga di antara titik-titik terjauhnya. Balkon panjangnya maksimal 40 m; bila panjang itu dan luas balkon dibagi lebar rata-ratanya bersama-sama melebihi itu, kedua geladak punya sprinkler (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry has the greater of A-30 and table (c).</source>
        <translation type="unfinished">Geladak yang membatasi zona horizontal feri kendaraan memakai yang lebih tinggi dari A-30 dan tabel (c).</translation>
    </message>
    <message>
        <source>Where oil fuel tanks lie below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">Bila tangki bahan bakar minyak berada di bawah ruang kategori khusus, A-0 cukup untuk geladak di antaranya (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">ini tidak mungkin mendahului &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one watch.</source>
        <translation type="unfinished">Isi detik kedua peristiwa menurut satu stopwatch yang sama.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 dan %2</translation>
    </message>
    <message>
        <source>faster by no more than %1 per cent (our own margin, no source), and a fast leaf crushes</source>
        <translation type="unfinished">lebih cepat tidak lebih dari %1 persen (kelonggaran kami sendiri, tanpa sumber), dan daun pintu yang cepat menimbulkan bahaya terjepit</translation>
    </message>
    <message>
        <source>slower by no more than %1 per cent (our own margin, no source)</source>
        <translation type="unfinished">lebih lambat tidak lebih dari %1 persen (kelonggaran kami sendiri, tanpa sumber)</translation>
    </message>
    <message>
        <source>no instrument for this figure is so coarse</source>
        <translation type="unfinished">tidak ada alat untuk ukuran ini yang sekasar itu</translation>
    </message>
    <message>
        <source>Give its step in the unit of the row, at most %1.</source>
        <translation type="unfinished">Tulis skala terkecilnya dalam satuan baris, paling besar %1.</translation>
    </message>
    <message>
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">register tidak menyebut apakah memberi akses ke ruang kategori khusus</translation>
    </message>
    <message>
        <source>no day of installation, but the ship is no older</source>
        <translation type="unfinished">tanpa tanggal pemasangan, tetapi kapal tidak lebih tua</translation>
    </message>
    <message>
        <source>the ship&apos;s passengers or length are outside what the text is for</source>
        <translation type="unfinished">penumpang atau panjang kapal di luar cakupan teks</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">di pembatas kelas C&apos;</translation>
    </message>
    <message>
        <source>no door aboard is one of these</source>
        <translation type="unfinished">tidak ada pintu di kapal yang termasuk ini</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">kapal penumpang SOLAS</translation>
    </message>
    <message>
        <source>US vessel of subchapter H</source>
        <translation type="unfinished">kapal AS subbab H</translation>
    </message>
    <message>
        <source>US vessel of subchapter K</source>
        <translation type="unfinished">kapal AS subbab K</translation>
    </message>
    <message>
        <source>Canadian vessel with convention certificates</source>
        <translation type="unfinished">kapal Kanada dengan sertifikat konvensi</translation>
    </message>
    <message>
        <source>Canadian vessel without convention certificates</source>
        <translation type="unfinished">kapal Kanada tanpa sertifikat konvensi</translation>
    </message>
    <message>
        <source>Canadian day vessel of 24 m or more for fewer than 100 passengers</source>
        <translation type="unfinished">kapal harian Kanada 24 m atau lebih untuk kurang dari 100 penumpang</translation>
    </message>
    <message>
        <source>EU inland waterway vessel</source>
        <translation type="unfinished">kapal perairan pedalaman UE</translation>
    </message>
    <message>
        <source>large yacht of 500 GT or more</source>
        <translation type="unfinished">kapal pesiar besar 500 GT atau lebih</translation>
    </message>
    <message>
        <source>vessel under other domestic rules</source>
        <translation type="unfinished">kapal dengan aturan dalam negeri lain</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 atau %2</translation>
    </message>
    <message>
        <source>listed by II-2/9.4.1.1.5</source>
        <translation type="unfinished">disebut dalam II-2/9.4.1.1.5</translation>
    </message>
    <message>
        <source>installed on or after %1</source>
        <translation type="unfinished">dipasang pada %1 atau sesudahnya</translation>
    </message>
    <message>
        <source>keel laid on or after %1</source>
        <translation type="unfinished">lunas diletakkan pada %1 atau sesudahnya</translation>
    </message>
    <message>
        <source>keel laid before %1</source>
        <translation type="unfinished">lunas diletakkan sebelum %1</translation>
    </message>
    <message>
        <source>keel laid on or after %1 and before %2</source>
        <translation type="unfinished">lunas diletakkan pada %1 atau sesudahnya dan sebelum %2</translation>
    </message>
    <message>
        <source>%1, or no date on record</source>
        <translation type="unfinished">%1, atau tanpa tanggal tercatat</translation>
    </message>
    <message>
        <source>a ship of another date: %1; a ship with no date on record: %2</source>
        <translation type="unfinished">kapal dari tanggal lain: %1; kapal tanpa tanggal tercatat: %2</translation>
    </message>
    <message>
        <source>it binds</source>
        <translation type="unfinished">mengikat</translation>
    </message>
    <message>
        <source>a failure is left to the inspector</source>
        <translation type="unfinished">kegagalan diserahkan kepada inspektur</translation>
    </message>
    <message>
        <source>advice only</source>
        <translation type="unfinished">hanya saran</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">tidak diminta</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, paper-form or rule-book.</source>
        <translation type="unfinished">Pilih survey, deficiency-list, work-list, door-record, paper-form atau rule-book.</translation>
    </message>
    <message>
        <source>a rule book is printed</source>
        <translation type="unfinished">buku aturan dicetak</translation>
    </message>
    <message>
        <source>Write it to a PDF file; its data are given by &quot;rules --json&quot;.</source>
        <translation type="unfinished">Tulis ke berkas PDF; datanya diberikan oleh &quot;rules --json&quot;.</translation>
    </message>
    <message>
        <source>there is no row &apos;%1&apos;</source>
        <translation type="unfinished">tidak ada butir &apos;%1&apos;</translation>
    </message>
    <message>
        <source>The table of &quot;rules&quot; names them all.</source>
        <translation type="unfinished">Tabel &quot;rules&quot; menyebut semuanya.</translation>
    </message>
    <message>
        <source>a door is one of a vessel</source>
        <translation type="unfinished">pintu adalah milik sebuah kapal</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register by --vessel.</source>
        <translation type="unfinished">Berikan register kapal dengan --vessel.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) numbers II-2/9.6 anew; that text was not read.</source>
        <translation type="unfinished">Mulai 2026 MSC.550(108) menomori ulang II-2/9.6; teks itu tidak dibaca.</translation>
    </message>
    <message>
        <source>Whether the ship goes by these tables is not on record: compare with the approved plan.</source>
        <translation type="unfinished">Tidak tercatat apakah kapal mengikuti tabel ini: bandingkan dengan denah yang disetujui.</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">buku aturan</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">proses %1 di %2</translation>
    </message>
</context>
<context>
    <name>CueWords</name>
    <message>
        <source>Alarm heard</source>
        <translation type="unfinished">Alarm terdengar</translation>
    </message>
    <message>
        <source>Leaf seen to start</source>
        <translation type="unfinished">Daun terlihat mulai</translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished">Daun terlihat berhenti</translation>
    </message>
    <message>
        <source>%1 ms early</source>
        <translation type="unfinished">%1 ms terlalu dini</translation>
    </message>
    <message>
        <source>%1 ms late</source>
        <translation type="unfinished">%1 ms terlambat</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished">tanpa tanda</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 are needed</source>
        <translation type="unfinished">%1 dari %2 tanda dihitung, perlu %3</translation>
    </message>
    <message>
        <source>%1 marks, bias %2, spread %3&#xa0;ms</source>
        <translation type="unfinished">%1 tanda, bias %2, sebaran %3&#xa0;ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">tidak ada yang salah di sini</translation>
    </message>
    <message>
        <source>Stop is the answer: no row of the catalogue is.</source>
        <translation type="unfinished">Jawabannya stop: tidak ada butir katalog untuk ini.</translation>
    </message>
    <message>
        <source>No fault was there, and none was imagined.</source>
        <translation type="unfinished">Tidak ada cacat, dan tidak ada yang dibayangkan.</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Anda: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation type="unfinished">Benar: %1</translation>
    </message>
    <message>
        <source>Every row that was asked is graded as it is.</source>
        <translation type="unfinished">Setiap butir yang ditanya dinilai sebagaimana adanya.</translation>
    </message>
    <message>
        <source>Nobody was endangered</source>
        <translation type="unfinished">Tidak ada orang terancam bahaya</translation>
    </message>
    <message>
        <source>One person was endangered</source>
        <translation type="unfinished">Satu orang terancam bahaya</translation>
    </message>
    <message>
        <source>%1 people were endangered</source>
        <translation type="unfinished">%1 orang terancam bahaya</translation>
    </message>
    <message>
        <source>A leaf met somebody, or would have. Aboard that is a crushed hand or a death: a power-operated leaf does not know who stands in its way.</source>
        <translation type="unfinished">Daun mengenai orang, atau hampir. Di kapal itu berarti tangan remuk atau kematian: daun bertenaga tidak tahu siapa di lintasannya.</translation>
    </message>
    <message>
        <source>No moving leaf met anybody.</source>
        <translation type="unfinished">Tidak ada daun bergerak yang mengenai orang.</translation>
    </message>
    <message>
        <source>Watch the opening and not the clock. Stop the moment somebody steps in: a run that was stopped costs two minutes.</source>
        <translation type="unfinished">Awasi bukaan, bukan jam. Stop begitu ada yang melangkah masuk: uji yang dihentikan hanya memakan dua menit.</translation>
    </message>
    <message>
        <source>Every caution was true when it was answered</source>
        <translation type="unfinished">Setiap peringatan benar saat dijawab</translation>
    </message>
    <message>
        <source>One caution was answered and was not true</source>
        <translation type="unfinished">Satu peringatan dijawab dan tidak benar</translation>
    </message>
    <message>
        <source>%1 cautions were answered and were not true</source>
        <translation type="unfinished">%1 peringatan dijawab dan tidak benar</translation>
    </message>
    <message>
        <source>The door was armed with somebody in the way. A caution is not a key to get past: look at both sides first, and have people asked aside.</source>
        <translation type="unfinished">Pintu disiapkan selagi ada orang di lintasan. Peringatan bukan tombol untuk dilewati: lihat dahulu kedua sisi, dan minta orang menyingkir.</translation>
    </message>
    <message>
        <source>The way was clear each time a door was armed.</source>
        <translation type="unfinished">Lintasan bebas setiap kali pintu disiapkan.</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished">Tidak ada yang diukur waktunya.</translation>
    </message>
    <message>
        <source>Your thumb in this exercise</source>
        <translation type="unfinished">Jempol Anda dalam latihan ini</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Where %1 of a kind count, the thumb drill offers to use them as your thumb&apos;s own figures in place of the published ones.</source>
        <translation type="unfinished">Tanda dari semua latihan Anda dijumlahkan. Bila %1 tanda sejenis terhitung, latihan jempol menawarkan memakainya sebagai angka jempol Anda sendiri menggantikan angka terbitan.</translation>
    </message>
    <message>
        <source>Each mark against the truth</source>
        <translation type="unfinished">Setiap tanda terhadap kenyataan</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1. Measured %2; asked: %3</source>
        <translation type="unfinished">Tidak terpenuhi: %1. Terukur %2; diminta: %3</translation>
    </message>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">Tidak terpenuhi: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">ditemukan pada %1, terbuka sejak itu</translation>
    </message>
    <message>
        <source>found on %1, %2 since</source>
        <translation type="unfinished">ditemukan pada %1, %2 sejak itu</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Defisiensi di pintu %1</translation>
    </message>
    <message>
        <source>The same row was written up before: %1.</source>
        <translation type="unfinished">Butir yang sama sudah ditulis sebelumnya: %1.</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Cacat yang sama lagi</translation>
    </message>
    <message>
        <source>Another one</source>
        <translation type="unfinished">Cacat lain</translation>
    </message>
</context>
<context>
    <name>DoorWords</name>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">daun tunggal</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">daun ganda</translation>
    </message>
    <message>
        <source>sliding</source>
        <translation type="unfinished">geser</translation>
    </message>
    <message>
        <source>double swing</source>
        <translation type="unfinished">ayun dua arah</translation>
    </message>
    <message>
        <source>zone bulkhead</source>
        <translation type="unfinished">sekat zona</translation>
    </message>
    <message>
        <source>stairway</source>
        <translation type="unfinished">tangga</translation>
    </message>
    <message>
        <source>galley</source>
        <translation type="unfinished">dapur</translation>
    </message>
    <message>
        <source>machinery space</source>
        <translation type="unfinished">ruang permesinan</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">ruang kategori khusus</translation>
    </message>
    <message>
        <source>cabin</source>
        <translation type="unfinished">kabin</translation>
    </message>
    <message>
        <source>exterior</source>
        <translation type="unfinished">luar</translation>
    </message>
    <message>
        <source>other boundary</source>
        <translation type="unfinished">pembatas lain</translation>
    </message>
    <message>
        <source>port</source>
        <translation type="unfinished">kiri</translation>
    </message>
    <message>
        <source>starboard</source>
        <translation type="unfinished">kanan</translation>
    </message>
    <message>
        <source>centreline</source>
        <translation type="unfinished">garis tengah</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>1 door</source>
        <translation type="unfinished">1 pintu</translation>
    </message>
    <message>
        <source>%1 doors</source>
        <translation type="unfinished">%1 pintu</translation>
    </message>
    <message>
        <source>bulkhead %1</source>
        <translation type="unfinished">sekat %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">tahunan</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">triwulanan</translation>
    </message>
    <message>
        <source>after repair</source>
        <translation type="unfinished">setelah perbaikan</translation>
    </message>
    <message>
        <source>port State</source>
        <translation type="unfinished">negara pelabuhan</translation>
    </message>
    <message>
        <source>drill</source>
        <translation type="unfinished">latihan darurat</translation>
    </message>
    <message>
        <source>other purpose</source>
        <translation type="unfinished">tujuan lain</translation>
    </message>
    <message>
        <source>from the control station</source>
        <translation type="unfinished">dari stasiun kendali</translation>
    </message>
    <message>
        <source>at the door, side one</source>
        <translation type="unfinished">di pintu, sisi satu</translation>
    </message>
    <message>
        <source>at the door, side two</source>
        <translation type="unfinished">di pintu, sisi dua</translation>
    </message>
    <message>
        <source>let go from fully open</source>
        <translation type="unfinished">dari posisi terbuka penuh</translation>
    </message>
    <message>
        <source>Alarm on</source>
        <translation type="unfinished">Alarm nyala</translation>
    </message>
    <message>
        <source>Leaf moves</source>
        <translation type="unfinished">Daun bergerak</translation>
    </message>
    <message>
        <source>Half-way</source>
        <translation type="unfinished">Separuh</translation>
    </message>
    <message>
        <source>Shut</source>
        <translation type="unfinished">Tertutup</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Alarm mati</translation>
    </message>
    <message>
        <source>First leaf home</source>
        <translation type="unfinished">Daun 1 tertutup</translation>
    </message>
    <message>
        <source>Second leaf home</source>
        <translation type="unfinished">Daun 2 tertutup</translation>
    </message>
    <message>
        <source>Touched</source>
        <translation type="unfinished">Tersentuh</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Berhenti</translation>
    </message>
    <message>
        <source>touch at the first sound of the alarm</source>
        <translation type="unfinished">sentuh saat alarm mulai terdengar</translation>
    </message>
    <message>
        <source>touch at the first movement</source>
        <translation type="unfinished">sentuh saat mulai bergerak</translation>
    </message>
    <message>
        <source>if you like: half of the opening is closed</source>
        <translation type="unfinished">bila mau: separuh bukaan sudah tertutup</translation>
    </message>
    <message>
        <source>touch the moment the leaf is home</source>
        <translation type="unfinished">sentuh tepat saat daun tertutup rapat</translation>
    </message>
    <message>
        <source>touch the moment the alarm is silent</source>
        <translation type="unfinished">sentuh tepat saat alarm senyap</translation>
    </message>
    <message>
        <source>touch when the first leaf is home</source>
        <translation type="unfinished">sentuh saat daun pertama tertutup rapat</translation>
    </message>
    <message>
        <source>touch when the second leaf is home</source>
        <translation type="unfinished">sentuh saat daun kedua tertutup rapat</translation>
    </message>
    <message>
        <source>touch when the edge meets the block</source>
        <translation type="unfinished">sentuh saat tepi daun mengenai balok</translation>
    </message>
    <message>
        <source>touch when the leaf has stopped and re-opens</source>
        <translation type="unfinished">sentuh saat daun berhenti dan membuka lagi</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">lengkap</translation>
    </message>
    <message>
        <source>spoiled</source>
        <translation type="unfinished">dibatalkan</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">dihentikan</translation>
    </message>
    <message>
        <source>port State campaign</source>
        <translation type="unfinished">kampanye negara pelabuhan</translation>
    </message>
    <message>
        <source>blackout trial</source>
        <translation type="unfinished">percobaan blackout</translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message>
        <source>weekly</source>
        <translation type="unfinished">mingguan</translation>
    </message>
    <message>
        <source>quarterly</source>
        <translation type="unfinished">triwulanan</translation>
    </message>
    <message>
        <source>yearly</source>
        <translation type="unfinished">tahunan</translation>
    </message>
    <message>
        <source>overdue: it ended on %1</source>
        <translation type="unfinished">terlambat: berakhir pada %1</translation>
    </message>
    <message>
        <source>ends %1, its window opens %2</source>
        <translation type="unfinished">berakhir %1, jendelanya terbuka %2</translation>
    </message>
    <message>
        <source>window open since %1, ends %2</source>
        <translation type="unfinished">jendela terbuka sejak %1, berakhir %2</translation>
    </message>
    <message>
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Sertifikat keselamatan kapal penumpang, survei pembaruan</translation>
    </message>
    <message>
        <source>overdue: some doors never tried in this register</source>
        <translation type="unfinished">terlambat: ada pintu yang belum pernah dicoba di register ini</translation>
    </message>
    <message>
        <source>overdue: never recorded here</source>
        <translation type="unfinished">terlambat: belum pernah dicatat di sini</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">terlambat sejak %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">tenggat %1</translation>
    </message>
    <message>
        <source>%1 of %2 overdue</source>
        <translation type="unfinished">%1 dari %2 terlambat</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation type="unfinished">terakhir %1</translation>
    </message>
    <message>
        <source>nothing falls due</source>
        <translation type="unfinished">tidak ada yang jatuh tempo</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 terlambat</translation>
    </message>
    <message>
        <source>next on %1</source>
        <translation type="unfinished">berikut pada %1</translation>
    </message>
    <message>
        <source>when asked</source>
        <translation type="unfinished">bila diminta</translation>
    </message>
</context>
<context>
    <name>ExerciseWords</name>
    <message>
        <source>first steps</source>
        <translation type="unfinished">langkah awal</translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished">mudah</translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished">sulit</translation>
    </message>
    <message>
        <source>exam</source>
        <translation type="unfinished">ujian</translation>
    </message>
    <message>
        <source>closes too fast</source>
        <translation type="unfinished">menutup terlalu cepat</translation>
    </message>
    <message>
        <source>closes too slowly</source>
        <translation type="unfinished">menutup terlalu lambat</translation>
    </message>
    <message>
        <source>too close to a limit to tell</source>
        <translation type="unfinished">terlalu dekat batas untuk dipastikan</translation>
    </message>
    <message>
        <source>alarm too short</source>
        <translation type="unfinished">alarm terlalu pendek</translation>
    </message>
    <message>
        <source>alarm stops early</source>
        <translation type="unfinished">alarm berhenti dini</translation>
    </message>
    <message>
        <source>opens again too far</source>
        <translation type="unfinished">membuka lagi terlalu jauh</translation>
    </message>
    <message>
        <source>leaves out of order</source>
        <translation type="unfinished">daun tidak berurutan</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">tidak terkancing</translation>
    </message>
    <message>
        <source>magnet lets go late</source>
        <translation type="unfinished">magnet terlambat lepas</translation>
    </message>
    <message>
        <source>no release from one side</source>
        <translation type="unfinished">tidak lepas dari satu sisi</translation>
    </message>
    <message>
        <source>hook</source>
        <translation type="unfinished">kait</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation type="unfinished">ganjal</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">sampah di rongga</translation>
    </message>
    <message>
        <source>sill missing</source>
        <translation type="unfinished">ambang hilang</translation>
    </message>
    <message>
        <source>gap under the leaf</source>
        <translation type="unfinished">celah di bawah daun</translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished">pelat salah untuk pembatas</translation>
    </message>
    <message>
        <source>painted seal</source>
        <translation type="unfinished">paking tertutup cat</translation>
    </message>
    <message>
        <source>indicator lies</source>
        <translation type="unfinished">penunjuk tidak benar</translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished">lubang selang macet</translation>
    </message>
    <message>
        <source>stays open</source>
        <translation type="unfinished">tetap terbuka</translation>
    </message>
    <message>
        <source>people in the path</source>
        <translation type="unfinished">orang di lintasan</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">ditemukan</translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished">terlewat</translation>
    </message>
    <message>
        <source>imagined</source>
        <translation type="unfinished">dibayangkan</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">Isi ketidakpastian</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Published figures for the thumb until its own drill is done: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Menurut hukum perambatan (JCGM 100:2008). Angka terbitan untuk jempol sampai latihannya sendiri dilakukan: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1 through the years</source>
        <translation type="unfinished">Pintu %1 dari tahun ke tahun</translation>
    </message>
    <message>
        <source>No time was taken with the ship upright yet.</source>
        <translation type="unfinished">Belum ada waktu yang diukur dengan kapal tegak.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs with its U; the shaded band is where the next is to be expected with 95 %. It says nothing about what can break at once.</source>
        <translation type="unfinished">Setiap titik adalah rata-rata uji tegak dari satu inspeksi dengan U-nya; pita berarsir menunjukkan tempat yang berikutnya diharapkan dengan 95 %. Ini tidak mengatakan apa pun tentang yang dapat patah tiba-tiba.</translation>
    </message>
</context>
<context>
    <name>GradeWords</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 sampai %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished">maksimal %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished">minimal %1</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished">tanpa alasan</translation>
    </message>
    <message>
        <source>not asked of this door</source>
        <translation type="unfinished">tidak ditanya untuk pintu ini</translation>
    </message>
    <message>
        <source>not tried on this walk: %1</source>
        <translation type="unfinished">tidak dicoba pada inspeksi ini: %1</translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished">belum dicoba</translation>
    </message>
    <message>
        <source>one side still to be tried</source>
        <translation type="unfinished">satu sisi masih harus dicoba</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">tidak dapat diuji: %1</translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished">terlihat</translation>
    </message>
    <message>
        <source>seen, and it is not so</source>
        <translation type="unfinished">terlihat, dan tidak demikian</translation>
    </message>
    <message>
        <source>answered as not applicable to this door</source>
        <translation type="unfinished">dijawab tidak berlaku untuk pintu ini</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">terbukti oleh uji lengkap</translation>
    </message>
    <message>
        <source>inside the limits, mean of %1 runs</source>
        <translation type="unfinished">di dalam batas, rata-rata %1 uji</translation>
    </message>
    <message>
        <source>inside the limits</source>
        <translation type="unfinished">di dalam batas</translation>
    </message>
    <message>
        <source>outside the limits, mean of %1 runs</source>
        <translation type="unfinished">di luar batas, rata-rata %1 uji</translation>
    </message>
    <message>
        <source>outside the limits</source>
        <translation type="unfinished">di luar batas</translation>
    </message>
    <message>
        <source>a limit lies inside the uncertainty: measure once more</source>
        <translation type="unfinished">suatu batas berada di dalam ketidakpastian: ukur sekali lagi</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: the text says approximate, you decide</source>
        <translation type="unfinished">masih terlalu dekat ke batas setelah %1 uji: teks menyebut kira-kira, Anda yang memutuskan</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">menutup tidak merata: %1 uji tidak cocok, yang terburuk berlaku</translation>
    </message>
    <message>
        <source>one half of the travel lies outside the limits: roughly uniform?</source>
        <translation type="unfinished">separuh gerakan di luar batas: kira-kira seragam?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only, time it again upright</source>
        <translation type="unfinished">miring %1 derajat: angka hanya saran, ukur lagi saat tegak</translation>
    </message>
    <message>
        <source>weaker than its boundary: %1</source>
        <translation type="unfinished">lebih lemah daripada pembatasnya: %1</translation>
    </message>
    <message>
        <source>%1; the register does not say what the boundary asks for: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1; register tidak menyebut yang diminta pembatas: lihat denah kebakaran yang disetujui atau tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1; tidak ada nilai tercetak: tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>%1; no fire class is asked here</source>
        <translation type="unfinished">%1; tidak ada kelas kebakaran yang diminta di sini</translation>
    </message>
    <message>
        <source>they differ: %1</source>
        <translation type="unfinished">keduanya berbeda: %1</translation>
    </message>
    <message>
        <source>%1: ask for the certificate</source>
        <translation type="unfinished">%1: minta sertifikatnya</translation>
    </message>
    <message>
        <source>not as good practice has it: you decide whether the door may stay so</source>
        <translation type="unfinished">tidak sesuai praktik yang baik: Anda memutuskan apakah pintu boleh tetap begitu</translation>
    </message>
    <message>
        <source>decided by the inspector: %1</source>
        <translation type="unfinished">diputuskan inspektur: %1</translation>
    </message>
    <message>
        <source>needs a run released from the control station</source>
        <translation type="unfinished">perlu uji yang dilepas dari stasiun kendali</translation>
    </message>
    <message>
        <source>the alarm was still on when the door was shut</source>
        <translation type="unfinished">alarm masih berbunyi ketika pintu sudah tertutup</translation>
    </message>
    <message>
        <source>the alarm stopped before the door was shut</source>
        <translation type="unfinished">alarm berhenti sebelum pintu tertutup</translation>
    </message>
    <message>
        <source>the register has no clear opening for this door</source>
        <translation type="unfinished">register tidak memuat bukaan bersih pintu ini</translation>
    </message>
    <message>
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, edisi %2</translation>
    </message>
    <message>
        <source>the cited text was read</source>
        <translation type="unfinished">teks yang dikutip sudah dibaca</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished">praktik umum, tanpa sumber</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">saran, tidak pernah menjadi alasan menyatakan pintu gagal</translation>
    </message>
    <message>
        <source>put it right, then test it again</source>
        <translation type="unfinished">perbaiki, lalu uji lagi</translation>
    </message>
    <message>
        <source>your judgement, with its reason</source>
        <translation type="unfinished">penilaian Anda, dengan alasannya</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">satu uji lagi; maksimal tiga, lalu Anda putuskan</translation>
    </message>
    <message>
        <source>try it from the other side</source>
        <translation type="unfinished">coba dari sisi lain</translation>
    </message>
    <message>
        <source>a run released from the control station</source>
        <translation type="unfinished">uji yang dilepas dari stasiun kendali</translation>
    </message>
    <message>
        <source>measure the clear opening</source>
        <translation type="unfinished">ukur bukaan bersih</translation>
    </message>
    <message>
        <source>time it with the ship upright</source>
        <translation type="unfinished">ukur waktunya saat kapal tegak</translation>
    </message>
    <message>
        <source>come back when it can be tested</source>
        <translation type="unfinished">kembali bila sudah dapat diuji</translation>
    </message>
    <message>
        <source>try it at the door</source>
        <translation type="unfinished">coba di pintu</translation>
    </message>
    <message>
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 tidak memuaskan</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 belum pasti</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 belum diuji</translation>
    </message>
    <message>
        <source>all %1 satisfactory</source>
        <translation type="unfinished">semua %1 memuaskan</translation>
    </message>
    <message>
        <source>nothing asked</source>
        <translation type="unfinished">tidak ada yang ditanya</translation>
    </message>
    <message>
        <source>grave: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">berat: api atau asap lolos, atau orang dapat terluka</translation>
    </message>
    <message>
        <source>serious: the door does not do what is asked</source>
        <translation type="unfinished">serius: pintu tidak melakukan yang diminta</translation>
    </message>
    <message>
        <source>minor: upkeep and marking</source>
        <translation type="unfinished">ringan: perawatan dan penandaan</translation>
    </message>
    <message>
        <source>%1 (door %2)</source>
        <translation type="unfinished">%1 (pintu %2)</translation>
    </message>
    <message>
        <source>no class</source>
        <translation type="unfinished">tanpa kelas</translation>
    </message>
    <message>
        <source>not printed</source>
        <translation type="unfinished">tidak tercetak</translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished">tidak diketahui</translation>
    </message>
    <message>
        <source>%1 by the approved plan</source>
        <translation type="unfinished">%1 menurut denah yang disetujui</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 menurut %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation type="unfinished">%1 atau %2</translation>
    </message>
    <message>
        <source>not asked of this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">tidak ditanya untuk pintu ini (%1): yang tercatat di sini tidak dihitung</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open, you decide: %1</source>
        <translation type="unfinished">gagal, tetapi teks tidak memastikannya, Anda yang memutuskan: %1</translation>
    </message>
    <message>
        <source>seen, and it is another kind of door</source>
        <translation type="unfinished">terlihat, dan ini jenis pintu lain</translation>
    </message>
    <message>
        <source>on the limit</source>
        <translation type="unfinished">tepat pada batas</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1): you decide</source>
        <translation type="unfinished">melewati batas kurang dari satu skala terkecil alat ukur (%1): Anda yang memutuskan</translation>
    </message>
    <message>
        <source>between the two figures that the text prints (%1): you decide</source>
        <translation type="unfinished">di antara kedua angka yang dicetak teks (%1): Anda yang memutuskan</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1: you decide</source>
        <translation type="unfinished">di luar rentang yang menurut teks hanya kira-kira, %1: Anda yang memutuskan</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs: you decide</source>
        <translation type="unfinished">masih terlalu dekat ke batas setelah %1 uji: Anda yang memutuskan</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move, a slip of the finger? Make another run, or decide</source>
        <translation type="unfinished">tertutup lebih cepat daripada yang mungkin bagi daun pintu, salah sentuh? Lakukan satu uji lagi, atau putuskan</translation>
    </message>
    <message>
        <source>weaker by tables that are not shown to be this ship&apos;s: %1; ask for the approved drawing</source>
        <translation type="unfinished">lebih lemah menurut tabel yang belum terbukti berlaku bagi kapal ini: %1; minta gambar yang disetujui</translation>
    </message>
    <message>
        <source>weaker than its boundary, unless oil fuel tanks lie below: %1</source>
        <translation type="unfinished">lebih lemah daripada pembatasnya, kecuali bila di bawahnya ada tangki bahan bakar minyak: %1</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">satu uji lagi</translation>
    </message>
    <message>
        <source>not asked: see the answer to “%1”</source>
        <translation type="unfinished">tidak ditanyakan: lihat jawaban untuk “%1”</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to bind here (%1): you decide</source>
        <translation type="unfinished">gagal, tetapi tidak terbukti bahwa teks ini mengikat di sini (%1): Anda yang memutuskan</translation>
    </message>
    <message>
        <source>one side was answered n/a, and the text asks for both: you decide</source>
        <translation type="unfinished">satu sisi dijawab tidak berlaku, padahal teks meminta keduanya: Anda yang memutuskan</translation>
    </message>
    <message>
        <source>the alarm differs: %1 runs do not agree, the worst stands</source>
        <translation type="unfinished">alarm berbeda: %1 uji tidak cocok, yang terburuk berlaku</translation>
    </message>
    <message>
        <source>run to its end, but not every event was marked</source>
        <translation type="unfinished">uji selesai, tetapi tidak setiap kejadian ditandai</translation>
    </message>
    <message>
        <source>a run was begun, and none came to its end</source>
        <translation type="unfinished">satu uji dimulai, tidak ada yang selesai</translation>
    </message>
    <message>
        <source>the alarm came on only when the door was shut</source>
        <translation type="unfinished">alarm baru berbunyi saat pintu sudah tertutup</translation>
    </message>
    <message>
        <source>answered n/a, and the text has no such case: you decide</source>
        <translation type="unfinished">dijawab tidak berlaku, padahal teks tidak mengenal kasus itu: Anda yang memutuskan</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule asks for one: %1</source>
        <translation type="unfinished">rencana yang disetujui tidak memuat kelas A padahal aturan memintanya: %1</translation>
    </message>
    <message>
        <source>released from the control station, and no alarm was marked</source>
        <translation type="unfinished">dilepas dari stasiun kendali, dan tidak ada alarm yang ditandai</translation>
    </message>
    <message>
        <source>say whether the alarm sounded, or run it again</source>
        <translation type="unfinished">katakan apakah alarm berbunyi, atau ulangi uji</translation>
    </message>
</context>
<context>
    <name>GroupWords</name>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">zona tidak diketahui</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">antara zona %1 dan %2</translation>
    </message>
    <message>
        <source>open for more than 90 days</source>
        <translation type="unfinished">terbuka lebih dari 90 hari</translation>
    </message>
    <message>
        <source>open for more than 30 days</source>
        <translation type="unfinished">terbuka lebih dari 30 hari</translation>
    </message>
    <message>
        <source>open for more than 7 days</source>
        <translation type="unfinished">terbuka lebih dari 7 hari</translation>
    </message>
    <message>
        <source>found in the last 7 days</source>
        <translation type="unfinished">ditemukan dalam 7 hari terakhir</translation>
    </message>
    <message>
        <source>past the day due</source>
        <translation type="unfinished">lewat tenggat</translation>
    </message>
    <message>
        <source>due within 7 days</source>
        <translation type="unfinished">tenggat dalam 7 hari</translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation type="unfinished">tenggat dalam 30 hari</translation>
    </message>
    <message>
        <source>due later</source>
        <translation type="unfinished">tenggat nanti</translation>
    </message>
    <message>
        <source>no day set</source>
        <translation type="unfinished">tanpa tanggal</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished">belum ada orang</translation>
    </message>
    <message>
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 temuan</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 temuan</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>from each opening all the way home</source>
        <translation type="unfinished">dari setiap bukaan sampai tertutup rapat</translation>
    </message>
    <message>
        <source>left standing ajar</source>
        <translation type="unfinished">tertinggal renggang</translation>
    </message>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">tanda pertama: daun mulai bergerak</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">tanda terakhir: tertutup penuh</translation>
    </message>
    <message>
        <source>an even way, from start to end</source>
        <translation type="unfinished">gerak rata, dari awal sampai akhir</translation>
    </message>
    <message>
        <source>sticks, then slams</source>
        <translation type="unfinished">tersendat, lalu membanting</translation>
    </message>
    <message>
        <source>one leaf home, then the one with the lip</source>
        <translation type="unfinished">satu daun tertutup, lalu yang berbibir</translation>
    </message>
    <message>
        <source>the lip is home first: the other stays out</source>
        <translation type="unfinished">yang berbibir lebih dahulu: yang lain tinggal di luar</translation>
    </message>
    <message>
        <source>one leaf alone shuts and latches</source>
        <translation type="unfinished">satu daun sendiri menutup dan terkancing</translation>
    </message>
    <message>
        <source>and so does the other</source>
        <translation type="unfinished">dan yang lain juga</translation>
    </message>
    <message>
        <source>let go, it shuts</source>
        <translation type="unfinished">dilepas, ia menutup</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">kait menahannya terbuka</translation>
    </message>
    <message>
        <source>the switch on each side lets it go</source>
        <translation type="unfinished">sakelar di setiap sisi melepaskannya</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">satu sisi tidak berfungsi</translation>
    </message>
    <message>
        <source>released from the station, it closes</source>
        <translation type="unfinished">dilepas dari stasiun, ia menutup</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">tetap terbuka</translation>
    </message>
    <message>
        <source>stays as it was put</source>
        <translation type="unfinished">tetap pada posisinya</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">kembali sendiri: pintu ditahan lagi</translation>
    </message>
    <message>
        <source>stands ajar, and the panel says open</source>
        <translation type="unfinished">renggang, dan panel menyebut terbuka</translation>
    </message>
    <message>
        <source>stands ajar, but the panel says shut</source>
        <translation type="unfinished">renggang, tetapi panel menyebut tertutup</translation>
    </message>
    <message>
        <source>first the alarm, then the leaf moves</source>
        <translation type="unfinished">alarm dahulu, lalu daun bergerak</translation>
    </message>
    <message>
        <source>the leaf moves as the alarm begins</source>
        <translation type="unfinished">daun bergerak saat alarm mulai</translation>
    </message>
    <message>
        <source>the alarm lasts until the leaf is home</source>
        <translation type="unfinished">alarm bertahan sampai daun tertutup rapat</translation>
    </message>
    <message>
        <source>the alarm stops while the leaf moves</source>
        <translation type="unfinished">alarm berhenti selagi daun bergerak</translation>
    </message>
    <message>
        <source>the strip lies flush and unbroken</source>
        <translation type="unfinished">strip rata dan tidak putus</translation>
    </message>
    <message>
        <source>painted over</source>
        <translation type="unfinished">tertutup cat</translation>
    </message>
    <message>
        <source>the gap over the leaf is even</source>
        <translation type="unfinished">celah di atas daun rata</translation>
    </message>
    <message>
        <source>hangs low and rubs at the sill</source>
        <translation type="unfinished">menggantung rendah dan bergesek di ambang</translation>
    </message>
    <message>
        <source>dry, the arm fast at both ends</source>
        <translation type="unfinished">kering, lengan kukuh di kedua ujung</translation>
    </message>
    <message>
        <source>oil runs from it, the arm is off</source>
        <translation type="unfinished">oli mengalir darinya, lengannya lepas</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">lidah masuk penuh ke pelat kancing</translation>
    </message>
    <message>
        <source>the bolt lies short: a push opens it</source>
        <translation type="unfinished">lidah tidak sampai: dorongan membukanya</translation>
    </message>
    <message>
        <source>from the edge of the leaf to the tip of the bolt</source>
        <translation type="unfinished">dari tepi daun ke ujung lidah</translation>
    </message>
    <message>
        <source>a feeler between the two leaves</source>
        <translation type="unfinished">kaliber celah di antara kedua daun</translation>
    </message>
    <message>
        <source>double-swing door: top and sides</source>
        <translation type="unfinished">pintu ayun dua arah: atas dan sisi</translation>
    </message>
    <message>
        <source>laps well over the stop</source>
        <translation type="unfinished">menumpang cukup pada sponing</translation>
    </message>
    <message>
        <source>hardly touches the stop</source>
        <translation type="unfinished">hampir tidak menyentuh sponing</translation>
    </message>
    <message>
        <source>whole, flat and firm</source>
        <translation type="unfinished">utuh, rata, dan kukuh</translation>
    </message>
    <message>
        <source>a loose end that a foot can catch on</source>
        <translation type="unfinished">ujung longgar yang membuat kaki tersangkut</translation>
    </message>
    <message>
        <source>the covering stops at the sill</source>
        <translation type="unfinished">pelapis lantai berhenti di ambang</translation>
    </message>
    <message>
        <source>the covering runs on under the leaf</source>
        <translation type="unfinished">pelapis lantai menerus di bawah daun</translation>
    </message>
    <message>
        <source>a narrow gap at its widest place</source>
        <translation type="unfinished">celah sempit di tempat terlebarnya</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">celah lebar: baca mistar di kaki daun</translation>
    </message>
    <message>
        <source>bare deck all the way of the leaf</source>
        <translation type="unfinished">geladak kosong sepanjang jalan daun</translation>
    </message>
    <message>
        <source>stores in the way of the leaf</source>
        <translation type="unfinished">barang di jalan daun</translation>
    </message>
    <message>
        <source>bare to the end</source>
        <translation type="unfinished">kosong sampai ujung</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">sampah di rel</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">hanya penahannya sendiri yang menahan</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">ganjal di bawah daun</translation>
    </message>
    <message>
        <source>a hold-back that the station releases</source>
        <translation type="unfinished">penahan yang dilepas stasiun</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">kait di sampingnya, mata kait di daun</translation>
    </message>
    <message>
        <source>bare, every roller on the rail</source>
        <translation type="unfinished">kosong, semua rol di rel</translation>
    </message>
    <message>
        <source>dirt on the rail, a roller off</source>
        <translation type="unfinished">kotoran di rel, rol lepas</translation>
    </message>
    <message>
        <source>one person, from either side</source>
        <translation type="unfinished">satu orang, dari sisi mana pun</translation>
    </message>
    <message>
        <source>it takes two</source>
        <translation type="unfinished">perlu dua orang</translation>
    </message>
    <message>
        <source>open it while the release still stands</source>
        <translation type="unfinished">buka selagi pelepasan masih berlaku</translation>
    </message>
    <message>
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">lepaskan, jauhi: ia menutup lagi</translation>
    </message>
    <message>
        <source>stops at the soft block and goes back</source>
        <translation type="unfinished">berhenti di balok lunak dan mundur</translation>
    </message>
    <message>
        <source>pushes on: a hand would be crushed</source>
        <translation type="unfinished">terus mendorong: tangan akan remuk</translation>
    </message>
    <message>
        <source>goes back a little from the block</source>
        <translation type="unfinished">mundur sedikit dari balok</translation>
    </message>
    <message>
        <source>goes back too far</source>
        <translation type="unfinished">mundur terlalu jauh</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">dikaitkan di kancing, ditarik sampai terlepas</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it just moves</source>
        <translation type="unfinished">dikaitkan di tepi bebas, sampai tepat bergerak</translation>
    </message>
    <message>
        <source>on to the stair&apos;s width</source>
        <translation type="unfinished">terus sampai selebar tangga</translation>
    </message>
    <message>
        <source>at the free edge, square to the leaf, nearly shut</source>
        <translation type="unfinished">di tepi bebas, tegak lurus daun, hampir tertutup</translation>
    </message>
    <message>
        <source>the angle between plumb line and ship</source>
        <translation type="unfinished">sudut antara unting-unting dan kapal</translation>
    </message>
    <message>
        <source>Look along the whole way first. Work the switch or handle on that side, then stand clear: hands off edges and out of the pocket.</source>
        <translation type="unfinished">Lihat dahulu seluruh lintasannya. Gerakkan sakelar atau gagang di sisi itu, lalu jauhi: tangan jauh dari tepi dan di luar rongga.</translation>
    </message>
    <message>
        <source>The cautions come first. The control station releases it at the word to start; nobody passes a moving door, and anybody may say the word to stop.</source>
        <translation type="unfinished">Peringatan lebih dahulu. Stasiun kendali melepaskannya pada kata mulai; tidak ada yang melewati pintu yang bergerak, dan siapa pun boleh mengucapkan kata stop.</translation>
    </message>
    <message>
        <source>Open it fully, look along its way, let go and stand clear.</source>
        <translation type="unfinished">Buka penuh, lihat sepanjang lintasannya, lepaskan, dan jauhi.</translation>
    </message>
    <message>
        <source>Over the public address or from mouth to mouth: which doors will move, and when. Wait until those near have looked up.</source>
        <translation type="unfinished">Lewat pengeras suara atau dari mulut ke mulut: pintu mana yang akan bergerak, dan kapan. Tunggu sampai yang di dekatnya menoleh.</translation>
    </message>
    <message>
        <source>Nobody in an opening, nobody near a leaf, no child out of reach. Somebody turns people back until the door stands still.</source>
        <translation type="unfinished">Tidak ada orang di bukaan, tidak ada di dekat daun, tidak ada anak tanpa pengawasan. Seseorang menghalau orang sampai pintu diam.</translation>
    </message>
    <message>
        <source>One person on each side of every door of the group, where both leaf and approach are seen, able to call stop. Bad: one watch for two sides.</source>
        <translation type="unfinished">Satu orang di setiap sisi setiap pintu grup, di tempat daun dan jalan masuknya terlihat, mampu berseru stop. Buruk: satu penjaga untuk dua sisi.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers stands at the release, and at nothing else.</source>
        <translation type="unfinished">Panggil di kanal yang disepakati dan tunggu jawaban. Orang yang menjawab berdiri di pelepas, dan tidak mengerjakan yang lain.</translation>
    </message>
    <message>
        <source>Say the word to start and the word to stop; hear both repeated. Anybody may say the word to stop.</source>
        <translation type="unfinished">Ucapkan kata mulai dan kata stop; dengarkan keduanya diulangi. Siapa pun boleh mengucapkan kata stop.</translation>
    </message>
    <message>
        <source>Look along the whole path, and into the pocket with a lamp. Hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">Lihat sepanjang lintasan, dan ke dalam rongga dengan lampu. Tangan, kaki, selang, dan kabel jauh dari tepi dan tepi temu.</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Pelepasan %1</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Kontak dengan balok lunak, jangan pernah tangan</translation>
    </message>
    <message>
        <source>Hold the block by its far end, low in the path, and stand beside the leaf. Mark when it touches and when it stops; then measure how far it went back. Where it pushes on, say the word to stop.</source>
        <translation type="unfinished">Pegang balok di ujung jauhnya, rendah di lintasan, dan berdiri di samping daun. Tandai saat tersentuh dan saat berhenti; lalu ukur seberapa jauh mundurnya. Bila terus mendorong, ucapkan kata stop.</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Gaya tutup di tepi, dengan neraca pegas</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, a hand&apos;s breadth before it is shut. Hold it still and read the pull. Fingers off the edge. From mass and force follows what an inclination would do.</source>
        <translation type="unfinished">Kaitkan neraca di tepi bebas, tegak lurus daun, selebar tangan sebelum tertutup. Tahan diam dan baca tarikannya. Jari jauh dari tepi. Dari massa dan gaya dihitung akibat kemiringan.</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Kemiringan kapal kini</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count for the upright ship: over 1 degree they are advice only.</source>
        <translation type="unfinished">Baca klinometer di anjungan, atau tahan unting-unting di samping kusen yang tegak. Waktu berlaku untuk kapal tegak: di atas 1 derajat hanya saran.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures stand above it.</source>
        <translation type="unfinished">Praktik umum. Aturan setempat dan prosedur perusahaan berada di atasnya.</translation>
    </message>
    <message>
        <source>the plate is as strong as the boundary</source>
        <translation type="unfinished">pelat sekuat pembatasnya</translation>
    </message>
    <message>
        <source>the plate is weaker than the boundary</source>
        <translation type="unfinished">pelat lebih lemah daripada pembatasnya</translation>
    </message>
    <message>
        <source>can be read, and is the register&apos;s</source>
        <translation type="unfinished">terbaca, dan sama dengan register</translation>
    </message>
    <message>
        <source>scoured or painted over</source>
        <translation type="unfinished">tergerus atau tertutup cat</translation>
    </message>
    <message>
        <source>the number can be read</source>
        <translation type="unfinished">nomor terbaca</translation>
    </message>
    <message>
        <source>closed all over</source>
        <translation type="unfinished">tertutup seluruhnya</translation>
    </message>
    <message>
        <source>a grille in the leaf</source>
        <translation type="unfinished">ada kisi di daun</translation>
    </message>
    <message>
        <source>a grille: only the openings between the bars</source>
        <translation type="unfinished">kisi: hanya bukaan di antara bilah</translation>
    </message>
    <message>
        <source>a cut under the leaf: width by height</source>
        <translation type="unfinished">potongan di bawah daun: lebar kali tinggi</translation>
    </message>
    <message>
        <source>whole, with its wire: height by width</source>
        <translation type="unfinished">utuh, dengan kawatnya: tinggi kali lebar</translation>
    </message>
    <message>
        <source>cracked, or without its wire</source>
        <translation type="unfinished">retak, atau tanpa kawatnya</translation>
    </message>
    <message>
        <source>one leaf, from hinge side to free edge</source>
        <translation type="unfinished">satu daun, dari sisi engsel ke tepi bebas</translation>
    </message>
    <message>
        <source>whole all over</source>
        <translation type="unfinished">utuh seluruhnya</translation>
    </message>
    <message>
        <source>holes, a cable through it, rust</source>
        <translation type="unfinished">lubang, kabel menembus, karat</translation>
    </message>
    <message>
        <source>the cover falls shut by itself</source>
        <translation type="unfinished">penutup jatuh menutup sendiri</translation>
    </message>
    <message>
        <source>the cover stays up</source>
        <translation type="unfinished">penutup tetap terangkat</translation>
    </message>
    <message>
        <source>ready</source>
        <translation type="unfinished">siap</translation>
    </message>
    <message>
        <source>start: …</source>
        <translation type="unfinished">mulai: …</translation>
    </message>
    <message>
        <source>stop: …</source>
        <translation type="unfinished">stop: …</translation>
    </message>
    <message>
        <source>everybody near has heard it</source>
        <translation type="unfinished">semua di dekatnya mendengarnya</translation>
    </message>
    <message>
        <source>nobody in the way or near it</source>
        <translation type="unfinished">tidak ada orang di lintasan atau di dekatnya</translation>
    </message>
    <message>
        <source>somebody in the opening</source>
        <translation type="unfinished">ada orang di bukaan</translation>
    </message>
    <message>
        <source>a watch on each side of the door</source>
        <translation type="unfinished">penjaga di setiap sisi pintu</translation>
    </message>
    <message>
        <source>nobody sees the far side</source>
        <translation type="unfinished">tidak ada yang melihat sisi jauh</translation>
    </message>
    <message>
        <source>answers on the agreed channel</source>
        <translation type="unfinished">menjawab di kanal yang disepakati</translation>
    </message>
    <message>
        <source>each word said by one, repeated by the other</source>
        <translation type="unfinished">setiap kata diucapkan satu orang, diulangi orang lain</translation>
    </message>
    <message>
        <source>path and pocket are bare</source>
        <translation type="unfinished">lintasan dan rongga kosong</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">tangan di tepi, kotak di lintasan</translation>
    </message>
    <message>
        <source>its supply is cut: it shuts</source>
        <translation type="unfinished">pasokannya diputus: menutup</translation>
    </message>
    <message>
        <source>its supply is cut: it stays open</source>
        <translation type="unfinished">pasokannya diputus: tetap terbuka</translation>
    </message>
    <message>
        <source>hold-back dead: it is driven home</source>
        <translation type="unfinished">penahan mati: didorong sampai tertutup</translation>
    </message>
    <message>
        <source>it hangs where it was held</source>
        <translation type="unfinished">tinggal di tempat ia ditahan</translation>
    </message>
    <message>
        <source>ten times open and shut from its own store</source>
        <translation type="unfinished">sepuluh kali buka-tutup dari simpanannya sendiri</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">satu gagal, yang lain bekerja</translation>
    </message>
    <message>
        <source>one fails, and all stand still</source>
        <translation type="unfinished">satu gagal, dan semuanya diam</translation>
    </message>
    <message>
        <source>the cover opens, a tool gets in</source>
        <translation type="unfinished">tutupnya terbuka, alat dapat masuk</translation>
    </message>
    <message>
        <source>built in behind pipes and lockers</source>
        <translation type="unfinished">terhalang pipa dan lemari</translation>
    </message>
    <message>
        <source>what it is for, and who approved it</source>
        <translation type="unfinished">untuk apa, dan siapa yang menyetujuinya</translation>
    </message>
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: what %1 degrees ask of the closer cannot be worked out.</source>
        <translation type="unfinished">Massa daun tidak ada di register: tuntutan %1 derajat terhadap penutup otomatis tidak dapat dihitung.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Hold a spring gauge there to see what the closer gives.</source>
        <translation type="unfinished">Pada %1 derajat, berat daun saja menarik hingga %2 di tepinya. Tahan neraca pegas di sana untuk melihat gaya penutup otomatis.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could not close against it.</source>
        <translation type="unfinished">Penutup otomatis memberi %1; pada %2 derajat berat daun saja menarik hingga %3: daun tidak dapat menutup melawannya.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: it could close, if hinges, seals and latch take less than the rest. Worked out, not tried: no verdict comes from this.</source>
        <translation type="unfinished">Penutup otomatis memberi %1; pada %2 derajat berat daun saja menarik hingga %3: daun dapat menutup, jika engsel, paking, dan kancing memakan kurang dari sisanya. Dihitung, bukan dicoba: tidak ada putusan dari ini.</translation>
    </message>
</context>
<context>
    <name>ItemWords</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 dan %2</translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished">ditemukan</translation>
    </message>
    <message>
        <source>rectified</source>
        <translation type="unfinished">diperbaiki</translation>
    </message>
    <message>
        <source>ready for retest</source>
        <translation type="unfinished">siap uji ulang</translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished">ditutup</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">ditarik</translation>
    </message>
    <message>
        <source>grave</source>
        <translation type="unfinished">berat</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">serius</translation>
    </message>
    <message>
        <source>minor</source>
        <translation type="unfinished">ringan</translation>
    </message>
    <message>
        <source>at the next port</source>
        <translation type="unfinished">di pelabuhan berikut</translation>
    </message>
    <message>
        <source>within 14 days</source>
        <translation type="unfinished">dalam 14 hari</translation>
    </message>
    <message>
        <source>before departure</source>
        <translation type="unfinished">sebelum berangkat</translation>
    </message>
    <message>
        <source>within three months</source>
        <translation type="unfinished">dalam tiga bulan</translation>
    </message>
    <message>
        <source>ship detained</source>
        <translation type="unfinished">kapal ditahan</translation>
    </message>
    <message>
        <source>ground for detention</source>
        <translation type="unfinished">dasar penahanan</translation>
    </message>
    <message>
        <source>no ground for detention</source>
        <translation type="unfinished">bukan dasar penahanan</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">mualim I</translation>
    </message>
    <message>
        <source>inspector</source>
        <translation type="unfinished">inspektur</translation>
    </message>
    <message>
        <source>survey report</source>
        <translation type="unfinished">laporan survei</translation>
    </message>
    <message>
        <source>deficiency list</source>
        <translation type="unfinished">daftar defisiensi</translation>
    </message>
    <message>
        <source>work list</source>
        <translation type="unfinished">daftar kerja</translation>
    </message>
    <message>
        <source>door record</source>
        <translation type="unfinished">catatan pintu</translation>
    </message>
    <message>
        <source>no day set</source>
        <translation type="unfinished">tanpa tanggal</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation type="unfinished">terlambat sejak %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">tenggat %1</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished">belum ada orang</translation>
    </message>
    <message>
        <source>found %1 times</source>
        <translation type="unfinished">ditemukan %1 kali</translation>
    </message>
    <message>
        <source>the same defect as an earlier item</source>
        <translation type="unfinished">cacat yang sama dengan temuan sebelumnya</translation>
    </message>
    <message>
        <source>passed, but tried only by who put it right: somebody else must test it</source>
        <translation type="unfinished">lulus, tetapi hanya dicoba oleh yang memperbaikinya: orang lain harus mengujinya</translation>
    </message>
    <message>
        <source>in order on a later walk, but nobody recorded that it was put right</source>
        <translation type="unfinished">baik pada inspeksi kemudian, tetapi tidak ada yang mencatat perbaikannya</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule and %4 at most</source>
        <translation type="unfinished">zona %1 menjadi satu, %2 terhadap %3 menurut aturan dan maksimal %4</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 against %3 as a rule</source>
        <translation type="unfinished">zona %1 menjadi satu, %2 terhadap batas umum %3</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>translated by machine, to be checked by a speaker of the trade</source>
        <translation type="unfinished">diterjemahkan mesin, perlu diperiksa oleh penutur yang ahli di bidang ini</translation>
    </message>
    <message>
        <source>As this machine is set</source>
        <translation type="unfinished">Sesuai pengaturan mesin ini</translation>
    </message>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Bahasa Inggris bila belum diterjemahkan</translation>
    </message>
    <message>
        <source>the words of the program</source>
        <translation type="unfinished">kata-kata program</translation>
    </message>
</context>
<context>
    <name>Offered</name>
    <message>
        <source>whole door</source>
        <translation type="unfinished">seluruh pintu</translation>
    </message>
    <message>
        <source>surveyor</source>
        <translation type="unfinished">surveyor</translation>
    </message>
    <message>
        <source>second surveyor</source>
        <translation type="unfinished">surveyor kedua</translation>
    </message>
    <message>
        <source>chief officer</source>
        <translation type="unfinished">mualim I</translation>
    </message>
    <message>
        <source>master</source>
        <translation type="unfinished">nakhoda</translation>
    </message>
    <message>
        <source>chief engineer</source>
        <translation type="unfinished">KKM</translation>
    </message>
    <message>
        <source>safety officer</source>
        <translation type="unfinished">perwira keselamatan</translation>
    </message>
    <message>
        <source>fire patrol</source>
        <translation type="unfinished">ronda kebakaran</translation>
    </message>
    <message>
        <source>company inspector</source>
        <translation type="unfinished">inspektur perusahaan</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation type="unfinished">peserta latih</translation>
    </message>
    <message>
        <source>bridge</source>
        <translation type="unfinished">anjungan</translation>
    </message>
    <message>
        <source>safety centre</source>
        <translation type="unfinished">pusat keselamatan</translation>
    </message>
    <message>
        <source>engine control room</source>
        <translation type="unfinished">ruang kendali mesin</translation>
    </message>
    <message>
        <source>Ch 6</source>
        <translation type="unfinished">Ch 6</translation>
    </message>
    <message>
        <source>Ch 8</source>
        <translation type="unfinished">Ch 8</translation>
    </message>
    <message>
        <source>Ch 10</source>
        <translation type="unfinished">Ch 10</translation>
    </message>
    <message>
        <source>Ch 15</source>
        <translation type="unfinished">Ch 15</translation>
    </message>
    <message>
        <source>Ch 17</source>
        <translation type="unfinished">Ch 17</translation>
    </message>
    <message>
        <source>telephone</source>
        <translation type="unfinished">telepon</translation>
    </message>
    <message>
        <source>anyone</source>
        <translation type="unfinished">siapa pun</translation>
    </message>
    <message>
        <source>anyone of the team and the control station</source>
        <translation type="unfinished">siapa pun dari tim dan stasiun kendali</translation>
    </message>
    <message>
        <source>all doors</source>
        <translation type="unfinished">semua pintu</translation>
    </message>
    <message>
        <source>zone bulkheads</source>
        <translation type="unfinished">sekat zona</translation>
    </message>
    <message>
        <source>quarterly: zone bulkheads</source>
        <translation type="unfinished">triwulanan: sekat zona</translation>
    </message>
    <message>
        <source>doors to be retested</source>
        <translation type="unfinished">pintu untuk uji ulang</translation>
    </message>
    <message>
        <source>doors that failed last time</source>
        <translation type="unfinished">pintu yang gagal terakhir kali</translation>
    </message>
    <message>
        <source>closer leaks oil</source>
        <translation type="unfinished">penutup otomatis bocor oli</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">paking tertutup cat</translation>
    </message>
    <message>
        <source>seal torn at the head</source>
        <translation type="unfinished">paking robek di bagian atas</translation>
    </message>
    <message>
        <source>leaf rubs on the sill</source>
        <translation type="unfinished">daun bergesek di ambang</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">sampah di rongga</translation>
    </message>
    <message>
        <source>mat under the leaf</source>
        <translation type="unfinished">keset di bawah daun</translation>
    </message>
    <message>
        <source>switch cover broken</source>
        <translation type="unfinished">tutup sakelar pecah</translation>
    </message>
    <message>
        <source>sign screwed to the leaf</source>
        <translation type="unfinished">papan disekrup ke daun</translation>
    </message>
    <message>
        <source>spare part ordered</source>
        <translation type="unfinished">suku cadang dipesan</translation>
    </message>
    <message>
        <source>put right while we stood</source>
        <translation type="unfinished">diperbaiki di tempat</translation>
    </message>
    <message>
        <source>space locked, no key</source>
        <translation type="unfinished">ruang terkunci, tanpa kunci</translation>
    </message>
    <message>
        <source>space in use by passengers</source>
        <translation type="unfinished">ruang dipakai penumpang</translation>
    </message>
    <message>
        <source>cargo or stores in the way</source>
        <translation type="unfinished">terhalang muatan atau barang</translation>
    </message>
    <message>
        <source>under repair</source>
        <translation type="unfinished">sedang diperbaiki</translation>
    </message>
    <message>
        <source>control station not manned</source>
        <translation type="unfinished">stasiun kendali tidak dijaga</translation>
    </message>
    <message>
        <source>no engineer free</source>
        <translation type="unfinished">tidak ada masinis yang bebas</translation>
    </message>
    <message>
        <source>not safe to move</source>
        <translation type="unfinished">tidak aman digerakkan</translation>
    </message>
    <message>
        <source>ship not upright</source>
        <translation type="unfinished">kapal tidak tegak</translation>
    </message>
    <message>
        <source>by the approved drawing</source>
        <translation type="unfinished">menurut gambar yang disetujui</translation>
    </message>
    <message>
        <source>agreed with the class surveyor</source>
        <translation type="unfinished">disepakati dengan surveyor klas</translation>
    </message>
    <message>
        <source>as built and accepted before</source>
        <translation type="unfinished">sesuai bangunan dan dulu diterima</translation>
    </message>
    <message>
        <source>worn, still does its work</source>
        <translation type="unfinished">aus, masih berfungsi</translation>
    </message>
    <message>
        <source>not safe to leave so</source>
        <translation type="unfinished">tidak aman dibiarkan</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">pelat</translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished">paking</translation>
    </message>
    <message>
        <source>sill</source>
        <translation type="unfinished">ambang</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">rongga</translation>
    </message>
    <message>
        <source>latch</source>
        <translation type="unfinished">kancing</translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished">penutup otomatis</translation>
    </message>
    <message>
        <source>damage</source>
        <translation type="unfinished">kerusakan</translation>
    </message>
    <message>
        <source>obstruction</source>
        <translation type="unfinished">halangan</translation>
    </message>
    <message>
        <source>as found</source>
        <translation type="unfinished">keadaan awal</translation>
    </message>
    <message>
        <source>after the work</source>
        <translation type="unfinished">setelah pekerjaan</translation>
    </message>
    <message>
        <source>the part that was changed</source>
        <translation type="unfinished">bagian yang diganti</translation>
    </message>
    <message>
        <source>someone in the way</source>
        <translation type="unfinished">ada orang di lintasan</translation>
    </message>
    <message>
        <source>object in the path</source>
        <translation type="unfinished">benda di lintasan</translation>
    </message>
    <message>
        <source>wrong door moved</source>
        <translation type="unfinished">pintu lain bergerak</translation>
    </message>
    <message>
        <source>watch left</source>
        <translation type="unfinished">penjaga pergi</translation>
    </message>
    <message>
        <source>door did not move</source>
        <translation type="unfinished">pintu tidak bergerak</translation>
    </message>
    <message>
        <source>channel lost</source>
        <translation type="unfinished">kanal terputus</translation>
    </message>
    <message>
        <source>touched too late</source>
        <translation type="unfinished">terlambat disentuh</translation>
    </message>
    <message>
        <source>touched too early</source>
        <translation type="unfinished">terlalu dini disentuh</translation>
    </message>
    <message>
        <source>leaf was held</source>
        <translation type="unfinished">daun tertahan</translation>
    </message>
    <message>
        <source>view was blocked</source>
        <translation type="unfinished">pandangan terhalang</translation>
    </message>
    <message>
        <source>ship rolled</source>
        <translation type="unfinished">kapal oleng</translation>
    </message>
    <message>
        <source>wrong release</source>
        <translation type="unfinished">salah pelepasan</translation>
    </message>
    <message>
        <source>fire patrol, every 30 minutes</source>
        <translation type="unfinished">ronda kebakaran, tiap 30 menit</translation>
    </message>
    <message>
        <source>fire patrol, every hour</source>
        <translation type="unfinished">ronda kebakaran, tiap jam</translation>
    </message>
    <message>
        <source>kept shut and marked</source>
        <translation type="unfinished">tetap ditutup dan ditandai</translation>
    </message>
    <message>
        <source>kept shut, other way out marked</source>
        <translation type="unfinished">tetap ditutup, jalan keluar lain ditandai</translation>
    </message>
    <message>
        <source>watch posted at the door</source>
        <translation type="unfinished">penjaga di pintu</translation>
    </message>
    <message>
        <source>local release only</source>
        <translation type="unfinished">hanya pelepasan setempat</translation>
    </message>
    <message>
        <source>zone kept empty of people</source>
        <translation type="unfinished">zona dikosongkan dari orang</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation type="unfinished">tidak perlu apa-apa</translation>
    </message>
    <message>
        <source>closer adjusted</source>
        <translation type="unfinished">penutup otomatis disetel</translation>
    </message>
    <message>
        <source>closer replaced</source>
        <translation type="unfinished">penutup otomatis diganti</translation>
    </message>
    <message>
        <source>latch adjusted</source>
        <translation type="unfinished">kancing disetel</translation>
    </message>
    <message>
        <source>latch replaced</source>
        <translation type="unfinished">kancing diganti</translation>
    </message>
    <message>
        <source>hinges tightened</source>
        <translation type="unfinished">engsel dikencangkan</translation>
    </message>
    <message>
        <source>seal replaced</source>
        <translation type="unfinished">paking diganti</translation>
    </message>
    <message>
        <source>magnet replaced</source>
        <translation type="unfinished">magnet diganti</translation>
    </message>
    <message>
        <source>wiring mended</source>
        <translation type="unfinished">kabel diperbaiki</translation>
    </message>
    <message>
        <source>alarm replaced</source>
        <translation type="unfinished">alarm diganti</translation>
    </message>
    <message>
        <source>rails cleaned and greased</source>
        <translation type="unfinished">rel dibersihkan dan digemuki</translation>
    </message>
    <message>
        <source>path and pocket cleared</source>
        <translation type="unfinished">lintasan dan rongga dibersihkan</translation>
    </message>
    <message>
        <source>hook or wedge taken away</source>
        <translation type="unfinished">kait atau ganjal disingkirkan</translation>
    </message>
    <message>
        <source>plate replaced</source>
        <translation type="unfinished">pelat diganti</translation>
    </message>
    <message>
        <source>leaf replaced</source>
        <translation type="unfinished">daun diganti</translation>
    </message>
    <message>
        <source>written up twice</source>
        <translation type="unfinished">ditulis dua kali</translation>
    </message>
    <message>
        <source>written up by mistake</source>
        <translation type="unfinished">tertulis karena keliru</translation>
    </message>
    <message>
        <source>the door was taken out</source>
        <translation type="unfinished">pintu dibongkar</translation>
    </message>
    <message>
        <source>the approved plan was changed</source>
        <translation type="unfinished">denah yang disetujui diubah</translation>
    </message>
    <message>
        <source>the Administration accepts it</source>
        <translation type="unfinished">Administrasi menerimanya</translation>
    </message>
    <message>
        <source>looked at again together</source>
        <translation type="unfinished">dilihat lagi bersama</translation>
    </message>
    <message>
        <source>the other was a slip</source>
        <translation type="unfinished">yang lain keliru</translation>
    </message>
    <message>
        <source>the better light</source>
        <translation type="unfinished">cahayanya lebih baik</translation>
    </message>
    <message>
        <source>the better instrument</source>
        <translation type="unfinished">alatnya lebih baik</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">dihentikan, tanpa alasan</translation>
    </message>
    <message>
        <source>spoiled, no reason given</source>
        <translation type="unfinished">dibatalkan, tanpa alasan</translation>
    </message>
    <message>
        <source>chosen in the settings</source>
        <translation type="unfinished">dipilih di pengaturan</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">dihentikan</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation type="unfinished">terputus</translation>
    </message>
    <message>
        <source>completed by hand</source>
        <translation type="unfinished">diselesaikan dengan tangan</translation>
    </message>
    <message>
        <source>typed in from paper</source>
        <translation type="unfinished">disalin dari kertas</translation>
    </message>
    <message>
        <source>answer taken back</source>
        <translation type="unfinished">jawaban ditarik kembali</translation>
    </message>
    <message>
        <source>mark taken back</source>
        <translation type="unfinished">tanda ditarik kembali</translation>
    </message>
    <message>
        <source>run goes on</source>
        <translation type="unfinished">uji dilanjutkan</translation>
    </message>
    <message>
        <source>withdrawn by mistake</source>
        <translation type="unfinished">ditarik karena keliru</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">diterima lewat sidik kuncinya</translation>
    </message>
</context>
<context>
    <name>OpenItems</name>
    <message>
        <source>and %1 more</source>
        <comment>rows of a door</comment>
        <translation type="unfinished">dan %1 lagi</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>The paper is being made</source>
        <translation type="unfinished">Dokumen sedang dibuat</translation>
    </message>
    <message>
        <source>No paper was made. One that was made before is as it was.</source>
        <translation type="unfinished">Tidak ada dokumen dibuat. Yang dibuat sebelumnya tetap seperti semula.</translation>
    </message>
    <message>
        <source>No paper</source>
        <translation type="unfinished">Tanpa dokumen</translation>
    </message>
    <message>
        <source>The paper is made</source>
        <translation type="unfinished">Dokumen sudah dibuat</translation>
    </message>
    <message>
        <source>The PDF lies at %1</source>
        <translation type="unfinished">PDF ada di %1</translation>
    </message>
    <message>
        <source>Show it, to print</source>
        <translation type="unfinished">Tampilkan, untuk dicetak</translation>
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
        <translation type="unfinished">geladak %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>%1, a sample of %2 by lot %3</source>
        <translation type="unfinished">%1, sampel %2 dengan undian %3</translation>
    </message>
</context>
<context>
    <name>RegisterWords</name>
    <message>
        <source>Register taken in</source>
        <translation type="unfinished">Register diimpor</translation>
    </message>
    <message>
        <source>It lies at %1.</source>
        <translation type="unfinished">Letaknya di %1.</translation>
    </message>
    <message>
        <source>Open this vessel</source>
        <translation type="unfinished">Buka kapal ini</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>The register is being taken in</source>
        <translation type="unfinished">Register sedang diimpor</translation>
    </message>
    <message>
        <source>Nothing was taken in. The vessels here are as they were before.</source>
        <translation type="unfinished">Tidak ada yang diimpor. Kapal-kapal di sini tetap seperti semula.</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">Tidak diimpor: satu kesalahan</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">Tidak diimpor: %1 kesalahan</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">ditanyakan di pintu</translation>
    </message>
    <message>
        <source>asked at the door, for each side</source>
        <translation type="unfinished">ditanyakan di pintu, untuk tiap sisi</translation>
    </message>
    <message>
        <source>class of the door against that of its boundary</source>
        <translation type="unfinished">kelas pintu dibandingkan dengan kelas pembatasnya</translation>
    </message>
    <message>
        <source>plate at the door against the register</source>
        <translation type="unfinished">pelat pintu dibandingkan dengan register</translation>
    </message>
    <message>
        <source>measured, and settled by the step of the instrument</source>
        <translation type="unfinished">diukur, dan diputuskan menurut skala alat ukur</translation>
    </message>
    <message>
        <source>a complete run shows it</source>
        <translation type="unfinished">satu uji lengkap menunjukkannya</translation>
    </message>
    <message>
        <source>a run released from the control station shows it</source>
        <translation type="unfinished">uji yang dilepas dari stasiun kontrol menunjukkannya</translation>
    </message>
    <message>
        <source>runs released at the door, from each side, show it</source>
        <translation type="unfinished">uji yang dilepas di pintu, dari tiap sisi, menunjukkannya</translation>
    </message>
    <message>
        <source>a run in which the alarm was marked shows it</source>
        <translation type="unfinished">uji dengan alarm yang ditandai menunjukkannya</translation>
    </message>
    <message>
        <source>timed from the first movement until it is shut</source>
        <translation type="unfinished">diukur waktunya dari gerak pertama sampai tertutup</translation>
    </message>
    <message>
        <source>clear opening divided by the time from first movement to shut</source>
        <translation type="unfinished">bukaan bersih dibagi waktu dari gerak pertama sampai tertutup</translation>
    </message>
    <message>
        <source>timed from the alarm to the first movement</source>
        <translation type="unfinished">diukur waktunya dari alarm sampai gerak pertama</translation>
    </message>
    <message>
        <source>order of the marks: shut, then alarm off</source>
        <translation type="unfinished">urutan tanda: tertutup, lalu alarm mati</translation>
    </message>
    <message>
        <source>against an inclination of %1°</source>
        <translation type="unfinished">melawan kemiringan %1°</translation>
    </message>
    <message>
        <source>ship upright: with heel a time is advice</source>
        <translation type="unfinished">kapal tegak: dengan kemiringan waktu hanya saran</translation>
    </message>
    <message>
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">jawaban mengatakan pintu apa itu; tak satu pun berarti cacat</translation>
    </message>
    <message>
        <source>the text says so: outside the limits by at most %1 % on the slow side, %2 % on the fast one, it is left to the inspector (margins of our own choice)</source>
        <translation type="unfinished">teks mengatakannya: di luar batas paling banyak %1 % di sisi lambat, %2 % di sisi cepat, diserahkan kepada inspektur (margin pilihan kami)</translation>
    </message>
    <message>
        <source>every ship</source>
        <translation type="unfinished">setiap kapal</translation>
    </message>
    <message>
        <source>advice for: %1</source>
        <translation type="unfinished">saran untuk: %1</translation>
    </message>
    <message>
        <source>answered yes: %1</source>
        <translation type="unfinished">dijawab ya: %1</translation>
    </message>
    <message>
        <source>answered no: %1</source>
        <translation type="unfinished">dijawab tidak: %1</translation>
    </message>
    <message>
        <source>answered n/a: %1</source>
        <translation type="unfinished">dijawab t/b: %1</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; aturan %2</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Teks</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation type="unfinished">Edisi</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished">Status</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Batas</translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation type="unfinished">Perkiraan</translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation type="unfinished">Diminta dari</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">setiap pintu</translation>
    </message>
    <message>
        <source>Exempt</source>
        <translation type="unfinished">Dikecualikan</translation>
    </message>
    <message>
        <source>Not asked where</source>
        <translation type="unfinished">Tidak diminta bila</translation>
    </message>
    <message>
        <source>Ships</source>
        <translation type="unfinished">Kapal</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished">Tanggal</translation>
    </message>
    <message>
        <source>Other dates</source>
        <translation type="unfinished">Tanggal lain</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation type="unfinished">Dibiarkan terbuka</translation>
    </message>
    <message>
        <source>Nothing open where</source>
        <translation type="unfinished">Tidak ada yang terbuka bila</translation>
    </message>
    <message>
        <source>n/a is an answer</source>
        <translation type="unfinished">t/b adalah jawaban</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation type="unfinished">Diperiksa dengan</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Instead, at every door</source>
        <translation type="unfinished">Sebagai gantinya, di setiap pintu</translation>
    </message>
    <message>
        <source>Instead, where: %1</source>
        <translation type="unfinished">Sebagai gantinya, bila: %1</translation>
    </message>
    <message>
        <source>What must be true</source>
        <translation type="unfinished">Yang harus benar</translation>
    </message>
    <message>
        <source>Question</source>
        <translation type="unfinished">Pertanyaan</translation>
    </message>
    <message>
        <source>Says</source>
        <translation type="unfinished">Menyatakan</translation>
    </message>
    <message>
        <source>the same as the row</source>
        <translation type="unfinished">sama dengan butirnya</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 dan %2 lagi</translation>
    </message>
    <message>
        <source>Read in</source>
        <translation type="unfinished">Dibaca di</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Tidak terbaca</translation>
    </message>
    <message>
        <source>Above it</source>
        <translation type="unfinished">Di atasnya</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Lihat</translation>
    </message>
    <message>
        <source>Release</source>
        <translation type="unfinished">Pelepas</translation>
    </message>
    <message>
        <source>Function</source>
        <translation type="unfinished">Fungsi</translation>
    </message>
    <message>
        <source>Every</source>
        <translation type="unfinished">Setiap</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>no door in particular</source>
        <translation type="unfinished">tidak ada pintu tertentu</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation type="unfinished">Menguji</translation>
    </message>
    <message>
        <source>Over these</source>
        <translation type="unfinished">Di atas ini</translation>
    </message>
    <message>
        <source>Rules of</source>
        <translation type="unfinished">Aturan dari</translation>
    </message>
    <message>
        <source>Not for this vessel</source>
        <translation type="unfinished">Bukan untuk kapal ini</translation>
    </message>
    <message>
        <source>Other texts</source>
        <translation type="unfinished">Teks lain</translation>
    </message>
    <message>
        <source>binds here</source>
        <translation type="unfinished">mengikat di sini</translation>
    </message>
    <message>
        <source>a failure is left to the inspector here</source>
        <translation type="unfinished">kegagalan di sini diserahkan kepada inspektur</translation>
    </message>
    <message>
        <source>advice here</source>
        <translation type="unfinished">saran di sini</translation>
    </message>
    <message>
        <source>not asked here</source>
        <translation type="unfinished">tidak diminta di sini</translation>
    </message>
    <message>
        <source>In force here</source>
        <translation type="unfinished">Berlaku di sini</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">Di pintu %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Binds at</source>
        <translation type="unfinished">Mengikat di</translation>
    </message>
    <message>
        <source>A failure is left to the inspector at</source>
        <translation type="unfinished">Kegagalan diserahkan kepada inspektur di</translation>
    </message>
    <message>
        <source>Advice at</source>
        <translation type="unfinished">Saran di</translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation type="unfinished">Tidak diminta</translation>
    </message>
    <message>
        <source>Aboard this vessel</source>
        <translation type="unfinished">Di kapal ini</translation>
    </message>
    <message>
        <source>binds %1</source>
        <translation type="unfinished">mengikat %1</translation>
    </message>
    <message>
        <source>left to the inspector at %1</source>
        <translation type="unfinished">diserahkan kepada inspektur di %1</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">saran di %1</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation type="unfinished">tidak diminta</translation>
    </message>
</context>
<context>
    <name>RulesScreen</name>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Pemeliharaan</translation>
    </message>
    <message>
        <source>The texts that were read</source>
        <translation type="unfinished">Teks yang telah dibaca</translation>
    </message>
    <message>
        <source>editions, dates, and what was not read</source>
        <translation type="unfinished">edisi, tanggal, dan yang belum dibaca</translation>
    </message>
</context>
<context>
    <name>RunWords</name>
    <message>
        <source>cut short</source>
        <translation type="unfinished">terputus</translation>
    </message>
    <message>
        <source>stopped after %1 s</source>
        <translation type="unfinished">dihentikan setelah %1 s</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished">%1 s</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation type="unfinished">terbaca %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">tanpa pelat</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">tak terbaca</translation>
    </message>
    <message>
        <source>spoiled: marks run backwards</source>
        <translation type="unfinished">dibatalkan: urutan tanda terbalik</translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message>
        <source>yes</source>
        <translation type="unfinished">ya</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">tidak</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">tidak berlaku</translation>
    </message>
    <message>
        <source>%1 on the plate</source>
        <translation type="unfinished">%1 pada pelat</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">tanpa pelat</translation>
    </message>
    <message>
        <source>plate illegible</source>
        <translation type="unfinished">pelat tak terbaca</translation>
    </message>
    <message>
        <source>judged satisfactory: %1</source>
        <translation type="unfinished">dinilai memuaskan: %1</translation>
    </message>
    <message>
        <source>judged unsatisfactory: %1</source>
        <translation type="unfinished">dinilai tidak memuaskan: %1</translation>
    </message>
    <message>
        <source>could not be tested: %1</source>
        <translation type="unfinished">tidak dapat diuji: %1</translation>
    </message>
    <message>
        <source>decided that this stands: %1</source>
        <translation type="unfinished">diputuskan bahwa ini berlaku: %1</translation>
    </message>
    <message>
        <source>Two decisions about the same</source>
        <translation type="unfinished">Dua keputusan tentang hal yang sama</translation>
    </message>
    <message>
        <source>, %1 of %2</source>
        <translation type="unfinished">, %1 dari %2</translation>
    </message>
    <message>
        <source>, side one</source>
        <translation type="unfinished">, sisi satu</translation>
    </message>
    <message>
        <source>, side two</source>
        <translation type="unfinished">, sisi dua</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">tenggat %1</translation>
    </message>
    <message>
        <source>no interim measure</source>
        <translation type="unfinished">tanpa tindakan sementara</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished">belum ada orang</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Oleh satu orang</translation>
    </message>
    <message>
        <source>You open it and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">Anda membuka dan menutupnya sendirian, mula-mula dari sisi satu, lalu dari sisi dua.</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Sakelar pelepas</translation>
    </message>
    <message>
        <source>Put to release and let go, the switch stays where it was put. The leaf is not held again until somebody puts it back.</source>
        <translation type="unfinished">Digerakkan ke lepas lalu dibiarkan, sakelar tetap pada posisinya. Daun tidak ditahan lagi sampai orang mengembalikannya.</translation>
    </message>
    <message>
        <source>Power failure</source>
        <translation type="unfinished">Kegagalan daya</translation>
    </message>
    <message>
        <source>Main and emergency supply of the release panel switched off at the board: the leaf shuts.</source>
        <translation type="unfinished">Pasokan utama dan darurat panel pelepasan dimatikan di papan hubung: daun menutup.</translation>
    </message>
    <message>
        <source>Local accumulator</source>
        <translation type="unfinished">Akumulator setempat</translation>
    </message>
    <message>
        <source>The chief engineer&apos;s record of this year: opened and shut ten times from the local accumulator, pump off.</source>
        <translation type="unfinished">Catatan KKM tahun ini: dibuka dan ditutup sepuluh kali dari akumulator setempat, pompa mati.</translation>
    </message>
    <message>
        <source>The other doors</source>
        <translation type="unfinished">Pintu-pintu lain</translation>
    </message>
    <message>
        <source>This door isolated at the control box: released again, the others of its group shut.</source>
        <translation type="unfinished">Pintu ini diisolasi di kotak kendali: dilepas lagi, pintu lain di grupnya menutup.</translation>
    </message>
    <message>
        <source>Local control</source>
        <translation type="unfinished">Kendali setempat</translation>
    </message>
    <message>
        <source>The cover opens by hand. Nothing stands or is built in front of it.</source>
        <translation type="unfinished">Tutupnya terbuka dengan tangan. Tidak ada yang berdiri atau terbangun di depannya.</translation>
    </message>
    <message>
        <source>Approval paper</source>
        <translation type="unfinished">Dokumen persetujuan</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Sistem kendali: bekerja pada 200 derajat C selama 60 menit, pasokan pintu lain tidak terganggu, terisolasi di atas itu, pintu dijaga tertutup sampai 945 derajat C.</translation>
    </message>
    <message>
        <source>Openings for air</source>
        <translation type="unfinished">Lubang udara</translation>
    </message>
    <message>
        <source>A grille low in the leaf, shutter of fire class: net free area by its drawing 0.03 m2. No undercut.</source>
        <translation type="unfinished">Kisi di bagian bawah daun, penutup berkelas kebakaran: luas bebas bersih menurut gambarnya 0.03 m2. Tanpa potongan bawah.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Ruang permesinan</translation>
    </message>
    <message>
        <source>Supply of the hold-back switched off at the board: the leaf is let go and shuts against the draught of the fans. The control station&apos;s release plan names the door.</source>
        <translation type="unfinished">Pasokan penahan dimatikan di papan hubung: daun dilepas dan menutup melawan tarikan udara kipas. Rencana pelepasan stasiun kendali menyebut pintu ini.</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Di balik pintu</translation>
    </message>
    <message>
        <source>Inside it: a stairway enclosure.</source>
        <translation type="unfinished">Di dalamnya: selubung tangga.</translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished">Bahan</translation>
    </message>
    <message>
        <source>Leaf and frame of steel.</source>
        <translation type="unfinished">Daun pintu dan kusen dari baja.</translation>
    </message>
    <message>
        <source>Material of the door</source>
        <translation type="unfinished">Bahan pintu</translation>
    </message>
    <message>
        <source>Approval paper: a core that cannot burn between sheets of steel.</source>
        <translation type="unfinished">Dokumen persetujuan: inti yang tidak dapat terbakar di antara lembaran baja.</translation>
    </message>
    <message>
        <source>Where the air goes</source>
        <translation type="unfinished">Jalan udara</translation>
    </message>
    <message>
        <source>No opening above the lower third of the leaf.</source>
        <translation type="unfinished">Tidak ada lubang di atas sepertiga bawah daun pintu.</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished">Kondisi</translation>
    </message>
    <message>
        <source>No holes, patches or dents; nothing is missing or repaired with other parts.</source>
        <translation type="unfinished">Tidak ada lubang, tambalan, atau penyok; tidak ada yang hilang atau diperbaiki dengan suku cadang lain.</translation>
    </message>
    <message>
        <source>Maintenance plan</source>
        <translation type="unfinished">Rencana perawatan</translation>
    </message>
    <message>
        <source>The plan in the ship&apos;s computer lists this door and its control, with the dates of their tests.</source>
        <translation type="unfinished">Rencana di komputer kapal mencantumkan pintu ini dan kendalinya, dengan tanggal ujinya.</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished">Terkunci</translation>
    </message>
    <message>
        <source>You try the handle: the door is locked.</source>
        <translation type="unfinished">Anda mencoba gagang: pintu terkunci.</translation>
    </message>
    <message>
        <source>Way out</source>
        <translation type="unfinished">Jalan keluar</translation>
    </message>
    <message>
        <source>You go through in the direction of escape with empty hands.</source>
        <translation type="unfinished">Anda lewat ke arah penyelamatan diri dengan tangan kosong.</translation>
    </message>
    <message>
        <source>Quick release</source>
        <translation type="unfinished">Pelepas cepat</translation>
    </message>
    <message>
        <source>A bar over two thirds of the leaf; pushed, it lets the latch go. Nothing locks it down.</source>
        <translation type="unfinished">Batang selebar dua pertiga daun pintu; bila didorong, kancing terlepas. Tidak ada yang menguncinya mati.</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Tinggi batang</translation>
    </message>
    <message>
        <source>The bar stands 950 mm above the deck.</source>
        <translation type="unfinished">Batang terpasang 950 mm di atas geladak.</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Gaya pada batang</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch lets go.</source>
        <translation type="unfinished">Neraca pegas menunjuk 40 N ketika kancing terlepas.</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Panel di anjungan</translation>
    </message>
    <message>
        <source>The bridge reads its lamp to you: true for open, ajar and shut.</source>
        <translation type="unfinished">Anjungan membacakan lampunya kepada Anda: benar untuk terbuka, renggang, dan tertutup.</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Stasiun pusat</translation>
    </message>
    <message>
        <source>Closing control and lamp of this door stand beside the panel of the detection system.</source>
        <translation type="unfinished">Kendali penutupan dan lampu pintu ini berada di samping panel sistem deteksi.</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Pusat keselamatan</translation>
    </message>
    <message>
        <source>Closed from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Ditutup dari pusat keselamatan, pintu menutup dan lampunya di sana berubah.</translation>
    </message>
    <message>
        <source>Blackout trial</source>
        <translation type="unfinished">Percobaan blackout</translation>
    </message>
    <message>
        <source>Main power off: held and released by the battery, then by the emergency generator.</source>
        <translation type="unfinished">Daya utama mati: ditahan dan dilepas penahannya dengan baterai, lalu dengan generator darurat.</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Kendali di luar ruang</translation>
    </message>
    <message>
        <source>Its control stands in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Kendalinya berada di lemari pemadam pada selubung kamar mesin (casing), bersama kendali kipas dan bahan bakar.</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Penutupan</translation>
    </message>
    <message>
        <source>Let go, it goes firmly home every time.</source>
        <translation type="unfinished">Dilepas, pintu setiap kali menutup rapat dengan pasti.</translation>
    </message>
</context>
<context>
    <name>SpotWords</name>
    <message>
        <source>Sill and floor</source>
        <translation type="unfinished">Ambang dan lantai</translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation type="unfinished">Celah bawah</translation>
    </message>
    <message>
        <source>Travel path</source>
        <translation type="unfinished">Lintasan</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation type="unfinished">Rongga</translation>
    </message>
    <message>
        <source>Rails</source>
        <translation type="unfinished">Rel</translation>
    </message>
    <message>
        <source>Safety edge</source>
        <translation type="unfinished">Tepi pengaman</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished">Paking</translation>
    </message>
    <message>
        <source>Hinges</source>
        <translation type="unfinished">Engsel</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation type="unfinished">Penutup otomatis</translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished">Kancing</translation>
    </message>
    <message>
        <source>Hold-back</source>
        <translation type="unfinished">Penahan</translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished">Daun</translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished">Lubang selang</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished">Pelat</translation>
    </message>
    <message>
        <source>Release here</source>
        <translation type="unfinished">Pelepas ini</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lampu panel</translation>
    </message>
    <message>
        <source>Papers, trials</source>
        <translation type="unfinished">Dokumen, uji coba</translation>
    </message>
</context>
<context>
    <name>StationDrawing</name>
    <message>
        <source>Release</source>
        <translation type="unfinished">Pelepas</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished">Gagang</translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished">terbuka</translation>
    </message>
    <message>
        <source>shut</source>
        <translation type="unfinished">tertutup</translation>
    </message>
</context>
<context>
    <name>TapWords</name>
    <message>
        <source>plate of %1</source>
        <translation type="unfinished">pelat %1</translation>
    </message>
    <message>
        <source>not tested: %1</source>
        <translation type="unfinished">tidak diuji: %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation type="unfinished">catatan pada %1</translation>
    </message>
    <message>
        <source>photograph of %1</source>
        <translation type="unfinished">foto %1</translation>
    </message>
    <message>
        <source>deficiency of %1</source>
        <translation type="unfinished">defisiensi %1</translation>
    </message>
    <message>
        <source>caution before %1</source>
        <translation type="unfinished">peringatan sebelum %1</translation>
    </message>
    <message>
        <source>run of %1</source>
        <translation type="unfinished">uji %1</translation>
    </message>
    <message>
        <source>terms of the item of %1</source>
        <translation type="unfinished">ketentuan temuan %1</translation>
    </message>
    <message>
        <source>rectification at %1</source>
        <translation type="unfinished">perbaikan di %1</translation>
    </message>
    <message>
        <source>%1 ready for retest</source>
        <translation type="unfinished">%1 siap uji ulang</translation>
    </message>
    <message>
        <source>withdrawal of the item of %1</source>
        <translation type="unfinished">penarikan temuan %1</translation>
    </message>
    <message>
        <source>beginning of the walkdown</source>
        <translation type="unfinished">awal inspeksi</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">akhir inspeksi</translation>
    </message>
    <message>
        <source>thumb drill</source>
        <translation type="unfinished">latihan jempol</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">kapan angka lulus</translation>
    </message>
    <message>
        <source>upkeep done</source>
        <translation type="unfinished">perawatan dilakukan</translation>
    </message>
    <message>
        <source>date of the certificate</source>
        <translation type="unfinished">tanggal sertifikat</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">keputusan</translation>
    </message>
    <message>
        <source>last tap</source>
        <translation type="unfinished">tap terakhir</translation>
    </message>
    <message>
        <source>taking back of %1</source>
        <translation type="unfinished">penarikan %1</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">tidak lagi dipastikan: %1</translation>
    </message>
</context>
<context>
    <name>UndoSheet</name>
    <message>
        <source>Not undone</source>
        <translation type="unfinished">Tidak diurungkan</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Urung</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Urungkan</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation type="unfinished">Pulihkan</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">ditarik kembali</translation>
    </message>
    <message>
        <source>put back</source>
        <translation type="unfinished">dipulihkan</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">Di pintu %1</translation>
    </message>
    <message>
        <source>At door %1 there is nothing to take back.</source>
        <translation type="unfinished">Di pintu %1 tidak ada yang dapat ditarik kembali.</translation>
    </message>
    <message>
        <source>Not at this door</source>
        <translation type="unfinished">Bukan di pintu ini</translation>
    </message>
    <message>
        <source>Both are recorded; nothing is deleted. What was signed stands.</source>
        <translation type="unfinished">Keduanya dicatat; tidak ada yang dihapus. Yang sudah ditandatangani tetap berlaku.</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, dan %2 lagi</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">tidak memuaskan</translation>
    </message>
    <message>
        <source>needs your judgement</source>
        <translation type="unfinished">perlu penilaian Anda</translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished">ukur lagi</translation>
    </message>
    <message>
        <source>untested</source>
        <translation type="unfinished">belum diuji</translation>
    </message>
    <message>
        <source>satisfactory</source>
        <translation type="unfinished">memuaskan</translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished">saran</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation type="unfinished">tidak berlaku</translation>
    </message>
</context>
<context>
    <name>VoiceWords</name>
    <message>
        <source>Control station: standing by</source>
        <translation type="unfinished">Stasiun kendali: siaga</translation>
    </message>
    <message>
        <source>Control station: releasing now</source>
        <translation type="unfinished">Stasiun kendali: melepaskan sekarang</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Dihentikan</translation>
    </message>
    <message>
        <source>Control station: my panel shows it shut</source>
        <translation type="unfinished">Stasiun kendali: panel saya menunjukkan tertutup</translation>
    </message>
    <message>
        <source>Control station: my panel shows it open</source>
        <translation type="unfinished">Stasiun kendali: panel saya menunjukkan terbuka</translation>
    </message>
    <message>
        <source>Let it run
onto the block</source>
        <translation type="unfinished">Biarkan bergerak
ke balok</translation>
    </message>
    <message>
        <source>Give the
start word</source>
        <translation type="unfinished">Ucapkan
kata mulai</translation>
    </message>
    <message>
        <source>Work the release,
side one</source>
        <translation type="unfinished">Gerakkan pelepas,
sisi satu</translation>
    </message>
    <message>
        <source>Work the release,
side two</source>
        <translation type="unfinished">Gerakkan pelepas,
sisi dua</translation>
    </message>
    <message>
        <source>Let it go</source>
        <translation type="unfinished">Lepaskan</translation>
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
        <translation type="unfinished">tanpa pintu</translation>
    </message>
    <message>
        <source>%1 sat.</source>
        <translation type="unfinished">%1 baik</translation>
    </message>
    <message>
        <source>%1 to settle</source>
        <translation type="unfinished">%1 belum pasti</translation>
    </message>
    <message>
        <source>%1 unsat.</source>
        <translation type="unfinished">%1 tidak baik</translation>
    </message>
    <message>
        <source>%1 untested</source>
        <translation type="unfinished">%1 belum diuji</translation>
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
        <translation type="unfinished">diizinkan %1 sampai %2 %3</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation type="unfinished">maksimal %1 %2</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation type="unfinished">minimal %1 %2</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation type="unfinished">tanpa batas</translation>
    </message>
    <message>
        <source>now %1 %2</source>
        <translation type="unfinished">kini %1 %2</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation type="unfinished">di bawah batas</translation>
    </message>
    <message>
        <source>at the limit</source>
        <translation type="unfinished">tepat di batas</translation>
    </message>
    <message>
        <source>within the limits</source>
        <translation type="unfinished">di dalam batas</translation>
    </message>
    <message>
        <source>above the limit</source>
        <translation type="unfinished">di atas batas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Brief</name>
    <message>
        <source>Protective equipment</source>
        <translation type="unfinished">Alat pelindung</translation>
    </message>
    <message>
        <source>Safety shoes and gloves on, hearing protection where the alarm is near, a torch and a radio that was tried just now. Nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Sepatu keselamatan dan sarung tangan terpakai, pelindung telinga di dekat alarm, senter dan radio yang baru saja dicoba. Tidak ada yang longgar yang dapat tersangkut daun.</translation>
    </message>
    <message>
        <source>What can crush whom</source>
        <translation type="unfinished">Apa yang meremukkan siapa</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep off. Nobody walks through a moving door. Most published crush deaths: powered watertight doors passed before fully open.</source>
        <translation type="unfinished">Tepi, tepi temu, dan rongga meremukkan tangan, kaki, dan kepala: jauhi. Tidak ada yang berjalan melewati pintu yang bergerak. Kematian terbanyak yang diterbitkan: pintu kedap air bertenaga dilewati sebelum terbuka penuh.</translation>
    </message>
    <message>
        <source>People kept apart</source>
        <translation type="unfinished">Orang dijauhkan</translation>
    </message>
    <message>
        <source>Passengers, children, carts and cables are clear of every door of the release group and kept clear. A watch stands at each of these doors, on both sides. One group at a time, and the local test first.</source>
        <translation type="unfinished">Penumpang, anak-anak, troli, dan kabel bebas dari setiap pintu grup pelepasan dan tetap dijauhkan. Penjaga berdiri di setiap pintu itu, di kedua sisi. Satu grup setiap kali, dan uji setempat lebih dahulu.</translation>
    </message>
    <message>
        <source>The control station</source>
        <translation type="unfinished">Stasiun kendali</translation>
    </message>
    <message>
        <source>The release is announced. Channel, start word and stop word are agreed, and the control station has said them back.</source>
        <translation type="unfinished">Pelepasan diumumkan. Kanal, kata mulai, dan kata stop disepakati, dan stasiun kendali sudah mengulanginya.</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Siapa boleh menghentikan uji</translation>
    </message>
    <message>
        <source>Anyone, at any moment, with the stop word. The doors stop first, the questions come after.</source>
        <translation type="unfinished">Siapa pun, kapan pun, dengan kata stop. Pintu berhenti dahulu, pertanyaan menyusul.</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Stasiun kendali</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Kanal</translation>
    </message>
    <message>
        <source>Start word</source>
        <translation type="unfinished">Kata mulai</translation>
    </message>
    <message>
        <source>Stop word</source>
        <translation type="unfinished">Kata stop</translation>
    </message>
    <message>
        <source>May stop the test</source>
        <translation type="unfinished">Boleh menghentikan uji</translation>
    </message>
    <message>
        <source>who releases the doors</source>
        <translation type="unfinished">siapa yang melepaskan pintu</translation>
    </message>
    <message>
        <source>how one speaks with it</source>
        <translation type="unfinished">cara berbicara dengannya</translation>
    </message>
    <message>
        <source>no door is released without it</source>
        <translation type="unfinished">tanpa itu tidak ada pintu yang dilepas</translation>
    </message>
    <message>
        <source>said by whoever sees danger</source>
        <translation type="unfinished">diucapkan siapa pun yang melihat bahaya</translation>
    </message>
    <message>
        <source>who may say the stop word</source>
        <translation type="unfinished">siapa yang boleh mengucapkan kata stop</translation>
    </message>
    <message>
        <source>release now</source>
        <translation type="unfinished">lepaskan sekarang</translation>
    </message>
    <message>
        <source>doors closing</source>
        <translation type="unfinished">pintu menutup</translation>
    </message>
    <message>
        <source>close the doors</source>
        <translation type="unfinished">tutup pintu</translation>
    </message>
    <message>
        <source>stop stop stop</source>
        <translation type="unfinished">stop stop stop</translation>
    </message>
    <message>
        <source>doors stop</source>
        <translation type="unfinished">pintu stop</translation>
    </message>
    <message>
        <source>hold the doors</source>
        <translation type="unfinished">tahan pintu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Read out to everyone who walks</source>
        <translation type="unfinished">Bacakan kepada semua yang ikut</translation>
    </message>
    <message>
        <source>Common practice, no source. Deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Praktik umum, tanpa sumber. Kematian: laporan kecelakaan klub P&amp;I dan negara bendera.</translation>
    </message>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Disepakati dengan stasiun kendali</translation>
    </message>
    <message>
        <source>‹ The plan</source>
        <translation type="unfinished">‹ Rencana</translation>
    </message>
    <message>
        <source>Say first, in the plan, who records.</source>
        <translation type="unfinished">Sebutkan dahulu, dalam rencana, siapa yang mencatat.</translation>
    </message>
    <message>
        <source>Not agreed yet: %1.</source>
        <translation type="unfinished">Belum disepakati: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read out.</source>
        <translation type="unfinished">%1 dari %2 bagian pengarahan dibacakan.</translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished">pilih</translation>
    </message>
    <message>
        <source>Not saved yet. %1</source>
        <translation type="unfinished">Belum tersimpan. %1</translation>
    </message>
    <message>
        <source>Save again ›</source>
        <translation type="unfinished">Simpan lagi ›</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Mulai ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Read out</source>
        <translation type="unfinished">Bacakan</translation>
    </message>
    <message>
        <source>Read out: %1</source>
        <translation type="unfinished">Bacakan: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>thumb&apos;s scatter at the start</source>
        <translation type="unfinished">sebaran jempol di awal</translation>
    </message>
    <message>
        <source>thumb&apos;s scatter at the end</source>
        <translation type="unfinished">sebaran jempol di akhir</translation>
    </message>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">kelambatan sendiri di awal, dari latihan</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">kelambatan sendiri di akhir, dari latihan</translation>
    </message>
    <message>
        <source>delay that does not cancel</source>
        <translation type="unfinished">kelambatan yang tidak saling hapus</translation>
    </message>
    <message>
        <source>last digit</source>
        <translation type="unfinished">angka terakhir</translation>
    </message>
    <message>
        <source>rate of the clock</source>
        <translation type="unfinished">laju jam</translation>
    </message>
    <message>
        <source>clear opening</source>
        <translation type="unfinished">bukaan bersih</translation>
    </message>
    <message>
        <source>place of the half-way mark</source>
        <translation type="unfinished">letak tanda separuh</translation>
    </message>
    <message>
        <source>as good as endless</source>
        <translation type="unfinished">praktis tak terhingga</translation>
    </message>
    <message>
        <source>standard uncertainty of</source>
        <translation type="unfinished">ketidakpastian baku</translation>
    </message>
    <message>
        <source>its own</source>
        <translation type="unfinished">nilainya</translation>
    </message>
    <message>
        <source>adds, %1</source>
        <translation type="unfinished">sumbangan, %1</translation>
    </message>
    <message>
        <source>together</source>
        <translation type="unfinished">gabungan</translation>
    </message>
    <message>
        <source>degrees of freedom</source>
        <translation type="unfinished">derajat kebebasan</translation>
    </message>
    <message>
        <source>U, at the coverage of k = 2</source>
        <translation type="unfinished">U, pada cakupan k = 2</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">peluang di dalam batas</translation>
    </message>
    <message>
        <source>What the uncertainty is made of</source>
        <translation type="unfinished">Isi ketidakpastian</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BulkheadPanel</name>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 dan %2</translation>
    </message>
    <message>
        <source>If it stays open</source>
        <translation type="unfinished">Jika tetap terbuka</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Semua pintu</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Pintu ini</translation>
    </message>
    <message>
        <source>Fire and smoke pass this boundary; the zones themselves stay apart.</source>
        <translation type="unfinished">Api dan asap melewati pembatas ini; zonanya sendiri tetap terpisah.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule and %4 at most.</source>
        <translation type="unfinished">Zona %1 akan menjadi satu: panjang %2, padahal aturannya %3 dan maksimal %4.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long against %3 as a rule.</source>
        <translation type="unfinished">Zona %1 akan menjadi satu: panjang %2, padahal batas umumnya %3.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CautionScreen</name>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">geladak %1, %2</translation>
    </message>
    <message>
        <source>, escape route</source>
        <translation type="unfinished">, jalur penyelamatan</translation>
    </message>
    <message>
        <source>Leaf masses are not in the register: take every leaf as able to crush.</source>
        <translation type="unfinished">Massa daun tidak ada di register: anggap setiap daun mampu meremukkan.</translation>
    </message>
    <message>
        <source> Ashore so heavy a leaf would have to take %1 s or more.</source>
        <translation type="unfinished"> Di darat, daun seberat itu harus menutup dalam %1 s atau lebih.</translation>
    </message>
    <message>
        <source> A comparison, no rule for ships: %1.</source>
        <translation type="unfinished"> Sekadar perbandingan, bukan aturan kapal: %1.</translation>
    </message>
    <message>
        <source>Confirm each before the release</source>
        <translation type="unfinished">Konfirmasi semua sebelum pelepasan</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Konfirmasi</translation>
    </message>
    <message>
        <source>All of it still holds</source>
        <translation type="unfinished">Semuanya masih berlaku</translation>
    </message>
    <message>
        <source>Arm the stopwatch ›</source>
        <translation type="unfinished">Siapkan stopwatch ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
    <message>
        <source>before it is released from the control station</source>
        <translation type="unfinished">sebelum dilepas dari stasiun kendali</translation>
    </message>
    <message>
        <source>To %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">Ke %1 lewat %2. Mulai: “%3”. Stop: “%4”; %5 boleh mengucapkannya.</translation>
    </message>
    <message>
        <source>Group %1</source>
        <translation type="unfinished">Grup %1</translation>
    </message>
    <message>
        <source>1 door will move</source>
        <translation type="unfinished">1 pintu akan bergerak</translation>
    </message>
    <message>
        <source>%1 doors will move</source>
        <translation type="unfinished">%1 pintu akan bergerak</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Dikonfirmasi</translation>
    </message>
    <message>
        <source>Door %1: %2 carry up to %3 at the fastest rate allowed.</source>
        <translation type="unfinished">Pintu %1: %2 membawa hingga %3 pada laju tercepat yang diizinkan.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard, %1: still enough for a hand.</source>
        <translation type="unfinished"> Di bawah angka darat untuk pintu tanpa pelindung, %1: tetap cukup untuk melukai tangan.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard, %2: keep everybody clear.</source>
        <translation type="unfinished"> Itu %1 kali angka darat untuk pintu tanpa pelindung, %2: jauhkan semua orang.</translation>
    </message>
    <message>
        <source>What these doors can do</source>
        <translation type="unfinished">Apa yang dapat dilakukan pintu ini</translation>
    </message>
    <message>
        <source>What must be confirmed ›</source>
        <translation type="unfinished">Yang harus dikonfirmasi ›</translation>
    </message>
    <message>
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Pintu</translation>
    </message>
    <message>
        <source>Back to what will move</source>
        <translation type="unfinished">Kembali ke yang akan bergerak</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Look ›</source>
        <translation type="unfinished">Lihat ›</translation>
    </message>
    <message>
        <source>The rules changed since the doors were last shown</source>
        <translation type="unfinished">Aturan berubah sejak pintu terakhir ditampilkan</translation>
    </message>
    <message>
        <source>%1 graded otherwise since the rules changed</source>
        <translation type="unfinished">%1 dinilai lain sejak aturan berubah</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceKeys</name>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Lagi ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChoiceRow</name>
    <message>
        <source>side one</source>
        <translation type="unfinished">sisi satu</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">sisi dua</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished">Ya</translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished">Tidak</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">t/b</translation>
    </message>
    <message>
        <source>answered next by the letters y, n and a</source>
        <translation type="unfinished">huruf y, n dan a menjawab pertanyaan ini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CloseUp</name>
    <message>
        <source>Close-up: %1</source>
        <translation type="unfinished">Dari dekat: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::CutShort</name>
    <message>
        <source>A run at door %1 was cut short</source>
        <translation type="unfinished">Satu uji di pintu %1 terputus</translation>
    </message>
    <message>
        <source>Release %1. On record: %2. Nothing of it is lost.</source>
        <translation type="unfinished">Pelepasan %1. Tercatat: %2. Tidak ada yang hilang.</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished">tanpa tanda</translation>
    </message>
    <message>
        <source>It was spoiled</source>
        <translation type="unfinished">Uji itu batal</translation>
    </message>
    <message>
        <source>Complete it by hand from my own watch</source>
        <translation type="unfinished">Lengkapi dengan tangan dari arloji sendiri</translation>
    </message>
    <message>
        <source>By hand: %1</source>
        <translation type="unfinished">Dengan tangan: %1</translation>
    </message>
    <message>
        <source>seconds after “%1”</source>
        <translation type="unfinished">detik setelah “%1”</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>“%1” cannot come before “%2”. Seconds after “%3”:</source>
        <translation type="unfinished">“%1” tidak mungkin mendahului “%2”. Detik setelah “%3”:</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or write the day like 2027-03-31.</source>
        <translation type="unfinished">Atau tulis tanggal seperti 2027-03-31.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Tanggal</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Simpan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Evaluasi</translation>
    </message>
    <message>
        <source>Practice replaces neither the instruction by licensed people nor the rules of the flag Administration.</source>
        <translation type="unfinished">Latihan tidak menggantikan pengajaran oleh orang berlisensi maupun aturan Administrasi negara bendera.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Selesai</translation>
    </message>
    <message>
        <source>Faults (%1)</source>
        <translation type="unfinished">Cacat (%1)</translation>
    </message>
    <message>
        <source>Rows (%1)</source>
        <translation type="unfinished">Butir (%1)</translation>
    </message>
    <message>
        <source>People (%1)</source>
        <translation type="unfinished">Orang (%1)</translation>
    </message>
    <message>
        <source>Marks (%1)</source>
        <translation type="unfinished">Tanda (%1)</translation>
    </message>
    <message>
        <source>%1 rows that differ</source>
        <translation type="unfinished">%1 butir berbeda</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Nilai</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Nilai</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Lulus pada %1, gagal pada %2</translation>
    </message>
    <message>
        <source>%1: the usual</source>
        <translation type="unfinished">%1: yang lazim</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again, or left to you after three. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Waktu tutup dalam %1 s dari suatu batas diukur lagi, atau diserahkan kepada Anda setelah tiga kali. Dari pintu yang hampir tak lulus, 1 dari %2 akan berada di luar; dari pintu yang hampir tak gagal, 1 dari %2 akan berada di dalam.</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">Dipakai</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Pakai</translation>
    </message>
    <message>
        <source>They hold for the walkdown under way and for later ones; reports print them. What the flag Administration asks for stands above them.</source>
        <translation type="unfinished">Berlaku untuk inspeksi yang sedang berjalan dan berikutnya; laporan mencetaknya. Yang diminta Administrasi negara bendera berada di atasnya.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DivisionLookup</name>
    <message>
        <source>Bulkhead</source>
        <translation type="unfinished">Sekat</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Geladak</translation>
    </message>
    <message>
        <source>Zone bulkhead</source>
        <translation type="unfinished">Sekat zona</translation>
    </message>
    <message>
        <source>Zone step</source>
        <translation type="unfinished">Undakan zona</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Catatan</translation>
    </message>
    <message>
        <source>Below the deck</source>
        <translation type="unfinished">Di bawah geladak</translation>
    </message>
    <message>
        <source>One side</source>
        <translation type="unfinished">Satu sisi</translation>
    </message>
    <message>
        <source>Above the deck</source>
        <translation type="unfinished">Di atas geladak</translation>
    </message>
    <message>
        <source>The other side</source>
        <translation type="unfinished">Sisi lain</translation>
    </message>
    <message>
        <source>%1, its door %2</source>
        <translation type="unfinished">%1, pintunya %2</translation>
    </message>
    <message>
        <source>No class: steel or equivalent</source>
        <translation type="unfinished">Tanpa kelas: baja atau setara</translation>
    </message>
    <message>
        <source>No requirement</source>
        <translation type="unfinished">Tanpa persyaratan</translation>
    </message>
    <message>
        <source>No value printed: ask the Administration</source>
        <translation type="unfinished">Tidak ada nilai tercetak: tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>No table for such a division</source>
        <translation type="unfinished">Tidak ada tabel untuk divisi ini</translation>
    </message>
    <message>
        <source>Choose both spaces</source>
        <translation type="unfinished">Pilih kedua ruang</translation>
    </message>
    <message>
        <source>%1, cell %2-%3: %4</source>
        <translation type="unfinished">%1, sel %2-%3: %4</translation>
    </message>
    <message>
        <source>blank</source>
        <translation type="unfinished">kosong</translation>
    </message>
    <message>
        <source>The approved plans and the flag Administration stand above these tables.</source>
        <translation type="unfinished">Denah yang disetujui dan Administrasi negara bendera berada di atas tabel ini.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorDrawing</name>
    <message>
        <source>Drawing of a sliding door</source>
        <translation type="unfinished">Gambar pintu geser</translation>
    </message>
    <message>
        <source>Drawing of a single leaf door</source>
        <translation type="unfinished">Gambar pintu daun tunggal</translation>
    </message>
    <message>
        <source>Drawing of a double leaf door</source>
        <translation type="unfinished">Gambar pintu daun ganda</translation>
    </message>
    <message>
        <source>Drawing of a double swing door</source>
        <translation type="unfinished">Gambar pintu ayun dua arah</translation>
    </message>
    <message>
        <source>, alarm on</source>
        <translation type="unfinished">, alarm berbunyi</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation type="unfinished">rongga</translation>
    </message>
    <message>
        <source>travel</source>
        <translation type="unfinished">lintasan</translation>
    </message>
    <message>
        <source>%1 not known</source>
        <translation type="unfinished">%1 tidak diketahui</translation>
    </message>
    <message>
        <source>swings both ways</source>
        <translation type="unfinished">mengayun dua arah</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">bukaan</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarm nyala</translation>
    </message>
    <message>
        <source>, a soft block in its way</source>
        <translation type="unfinished">, balok lunak di lintasannya</translation>
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
        <translation type="unfinished">belum dibaca</translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished">tidak ada</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">tak terbaca</translation>
    </message>
    <message>
        <source>plate</source>
        <translation type="unfinished">pelat</translation>
    </message>
    <message>
        <source>register</source>
        <translation type="unfinished">register</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation type="unfinished">pembatas</translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished">bukaan</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
    <message>
        <source>not examined as</source>
        <translation type="unfinished">tidak diperiksa sebagai</translation>
    </message>
    <message>
        <source>a watertight door</source>
        <translation type="unfinished">pintu kedap air</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorListView</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorPicker</name>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">pintu %1, geladak %2, %3</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">geladak %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorScreen</name>
    <message>
        <source>1 Look</source>
        <translation type="unfinished">1 Lihat</translation>
    </message>
    <message>
        <source>2 Release</source>
        <translation type="unfinished">2 Lepas</translation>
    </message>
    <message>
        <source>3 Function</source>
        <translation type="unfinished">3 Fungsi</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished">Kertas</translation>
    </message>
    <message>
        <source>Type in what stands on a paper form</source>
        <translation type="unfinished">Ketik isi formulir kertas</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished">Catatan</translation>
    </message>
    <message>
        <source>Not tested</source>
        <translation type="unfinished">Tidak diuji</translation>
    </message>
    <message>
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Pintu ini tidak dapat diuji: sebutkan sebabnya</translation>
    </message>
    <message>
        <source>Not asked here: %1 ›</source>
        <translation type="unfinished">Tidak ditanya di sini: %1 ›</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Geladak %1</translation>
    </message>
    <message>
        <source>%1 · %2 walkdown</source>
        <translation type="unfinished">%1 · inspeksi %2</translation>
    </message>
    <message>
        <source>Go to release ›</source>
        <translation type="unfinished">Ke pelepasan ›</translation>
    </message>
    <message>
        <source>Go to function ›</source>
        <translation type="unfinished">Ke fungsi ›</translation>
    </message>
    <message>
        <source>Walk is done ›</source>
        <translation type="unfinished">Inspeksi selesai ›</translation>
    </message>
    <message>
        <source>Next door %1 ›</source>
        <translation type="unfinished">Pintu berikut %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
    <message>
        <source>not asked because: %1</source>
        <translation type="unfinished">tidak ditanya karena: %1</translation>
    </message>
    <message>
        <source>The plate on door %1</source>
        <translation type="unfinished">Pelat pada pintu %1</translation>
    </message>
    <message>
        <source>no plate</source>
        <translation type="unfinished">tanpa pelat</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">tak terbaca</translation>
    </message>
    <message>
        <source>What the boundary asks for</source>
        <translation type="unfinished">Yang diminta pembatas</translation>
    </message>
    <message>
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>Not asked of door %1</source>
        <translation type="unfinished">Tidak ditanya untuk pintu %1</translation>
    </message>
    <message>
        <source>closing force at the edge, by spring gauge</source>
        <translation type="unfinished">gaya tutup di tepi, dengan neraca pegas</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Kemiringan kapal, derajat</translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu tutup hanya saran</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">derajat</translation>
    </message>
    <message>
        <source>Note about door %1</source>
        <translation type="unfinished">Catatan tentang pintu %1</translation>
    </message>
    <message>
        <source>Why could door %1 not be tested?</source>
        <translation type="unfinished">Mengapa pintu %1 tidak dapat diuji?</translation>
    </message>
    <message>
        <source>Why could this not be tested?</source>
        <translation type="unfinished">Mengapa ini tidak dapat diuji?</translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished">Alasan</translation>
    </message>
    <message>
        <source>What ± is made of</source>
        <translation type="unfinished">Isi dari ±</translation>
    </message>
    <message>
        <source>Through the years</source>
        <translation type="unfinished">Dari tahun ke tahun</translation>
    </message>
    <message>
        <source>Write a deficiency</source>
        <translation type="unfinished">Tulis defisiensi</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">Tak dapat diuji</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Pintu inspeksi ini</translation>
    </message>
    <message>
        <source>Clear this answer?</source>
        <translation type="unfinished">Hapus jawaban ini?</translation>
    </message>
    <message>
        <source>Door %1: “%2”, answered at %3 by %4. It stays on record as taken back.</source>
        <translation type="unfinished">Pintu %1: “%2”, dijawab pukul %3 oleh %4. Tetap tercatat sebagai ditarik kembali.</translation>
    </message>
    <message>
        <source>Clear the answer</source>
        <translation type="unfinished">Hapus jawaban</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation type="unfinished">Pertahankan</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Buku aturan ›</translation>
    </message>
    <message>
        <source>What was %1 read off?</source>
        <translation type="unfinished">%1 dibaca dengan apa?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished">Catat</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>not tried: the published figures stay</source>
        <translation type="unfinished">tidak dicoba: angka terbitan tetap</translation>
    </message>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 terlambat, sebaran %2, dari %3 percobaan</translation>
    </message>
    <message>
        <source>too few usable trials: the published figures stay</source>
        <translation type="unfinished">percobaan yang terpakai terlalu sedikit: angka terbitan tetap</translation>
    </message>
    <message>
        <source>; %1 guessed, not counted</source>
        <translation type="unfinished">; %1 ditebak, tidak dihitung</translation>
    </message>
    <message>
        <source>; %1 out of line, not counted</source>
        <translation type="unfinished">; %1 menyimpang, tidak dihitung</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and stands with ± %3, where the published figures give ± %4.</source>
        <translation type="unfinished">Waktu tutup dikoreksi dengan %1%2 dan berlaku dengan ± %3, sedangkan angka terbitan memberi ± %4.</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Pakai angka ini</translation>
    </message>
    <message>
        <source>Do it again</source>
        <translation type="unfinished">Ulangi</translation>
    </message>
    <message>
        <source>Your thumb on this tablet</source>
        <translation type="unfinished">Jempol Anda di tablet ini</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the budget. Worth repeating every %1 months.</source>
        <translation type="unfinished">Dipakai untuk uji yang Anda ukur di tablet ini mulai sekarang. Kelambatan tablet sendiri, yang tidak dimiliki pintu nyata, tetap di anggaran. Layak diulang setiap %1 bulan.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>How late is your thumb, and how steady?</source>
        <translation type="unfinished">Seberapa lambat jempol Anda, dan seberapa stabil?</translation>
    </message>
    <message>
        <source>Twenty times a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you do at a door.</source>
        <translation type="unfinished">Dua puluh kali daun mulai bergerak tanpa peringatan lalu tertutup rapat. Sentuh tombol tepat saat mulai, dan lagi tepat saat tertutup rapat. Dengan suara, alarm datang dahulu: sentuh tombol saat mendengarnya. Lamanya sekitar dua menit. Pegang tablet seperti di pintu.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then stand in place of the published figures for every run that you time on this tablet. If you leave before the end nothing is kept.</source>
        <translation type="unfinished">Kelambatan dan sebaran Anda sendiri lalu menggantikan angka terbitan untuk setiap uji yang Anda ukur di tablet ini. Bila keluar sebelum selesai, tidak ada yang disimpan.</translation>
    </message>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Coba suara</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Mulai tanpa suara</translation>
    </message>
    <message>
        <source>I hear it: begin ›</source>
        <translation type="unfinished">Saya dengar: mulai ›</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Latihan jempol</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Mulai ›</translation>
    </message>
    <message>
        <source>Turn the sound up as far as you hear it well over the ship.</source>
        <translation type="unfinished">Besarkan suara sampai terdengar jelas di atas bunyi kapal.</translation>
    </message>
    <message>
        <source>This tablet has no loudspeaker that answers: what is heard keeps the published figures.</source>
        <translation type="unfinished">Tablet ini tidak punya pengeras suara yang menjawab: yang didengar tetap memakai angka terbitan.</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Percobaan %1 dari %2</translation>
    </message>
    <message>
        <source>That one was missed: it comes again.</source>
        <translation type="unfinished">Yang itu terlewat: akan datang lagi.</translation>
    </message>
    <message>
        <source>How the drill goes</source>
        <translation type="unfinished">Cara latihan berjalan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Drawing of the leaf close by</source>
        <translation type="unfinished">Gambar daun dari dekat</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Unseal ›</source>
        <translation type="unfinished">Buka segel ›</translation>
    </message>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">Berlatih ›</translation>
    </message>
    <message>
        <source>sealed by the instructor</source>
        <translation type="unfinished">disegel instruktur</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">terbaik %1 %</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FigureLabel</name>
    <message>
        <source>no figure yet</source>
        <translation type="unfinished">belum ada angka</translation>
    </message>
</context>
<context>
    <name>latchround::ui::FirstScreen</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Tadi</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
    </message>
    <message>
        <source>fire doors, one by one</source>
        <translation type="unfinished">pintu kebakaran, satu per satu</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks what applies to this ship and this kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround memandu Anda dari pintu ke pintu, menanyakan yang berlaku untuk kapal ini dan jenis pintu ini, mengukur waktu tutup, dan menilainya.</translation>
    </message>
    <message>
        <source>A released door moves by itself. Nobody passes it; hands and feet stay off edges and pockets; a watch stands on both sides; anyone may stop the test.</source>
        <translation type="unfinished">Pintu yang dilepas bergerak sendiri. Tidak ada yang melewatinya; tangan dan kaki jauh dari tepi dan rongga; penjaga berdiri di kedua sisi; siapa pun boleh menghentikan uji.</translation>
    </message>
    <message>
        <source>Whose rules stand above it</source>
        <translation type="unfinished">Aturan siapa di atasnya</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan and local rules stand above this program, and so does the judgement of the people who use it. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">Administrasi negara bendera, denah kebakaran yang disetujui, dan aturan setempat berada di atas program ini, demikian pula penilaian orang yang memakainya. Nilai adalah bantuan, bukan sertifikat.</translation>
    </message>
    <message>
        <source>It goes by the texts of 2015. Later amendments were not checked.</source>
        <translation type="unfinished">Program ini mengikuti teks tahun 2015. Perubahan sesudahnya tidak diperiksa.</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation type="unfinished">Apa adanya</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation type="unfinished">Lebih besar</translation>
    </message>
    <message>
        <source>Twice as large</source>
        <translation type="unfinished">Dua kali lipat</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Tangan kosong</translation>
    </message>
    <message>
        <source>Gloves</source>
        <translation type="unfinished">Sarung tangan</translation>
    </message>
    <message>
        <source>Text and keys</source>
        <translation type="unfinished">Teks dan tombol</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished">Tangan</translation>
    </message>
    <message>
        <source>What first?</source>
        <translation type="unfinished">Apa dahulu?</translation>
    </message>
    <message>
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Lihat-lihat kapal demo</translation>
    </message>
    <message>
        <source>An invented ferry with a walkdown under way. Nothing you do there matters.</source>
        <translation type="unfinished">Feri rekaan dengan inspeksi yang sedang berjalan. Apa pun yang Anda lakukan di sana tidak berakibat.</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">Berlatih</translation>
    </message>
    <message>
        <source>Doors on the screen that move, fail and hide faults, and a debrief.</source>
        <translation type="unfinished">Pintu di layar yang bergerak, gagal, dan menyembunyikan cacat, lalu evaluasi.</translation>
    </message>
    <message>
        <source>Take in my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Impor register kapal saya (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every fault in it is named.</source>
        <translation type="unfinished">Geladak, zona, pembatas, dan pintu dari lembar sebar; setiap kesalahan di dalamnya disebutkan.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 dari %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Menguji pintu yang dapat meremukkan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpKey</name>
    <message>
        <source>What to look at: %1</source>
        <translation type="unfinished">Apa yang dilihat: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HelpPanelView</name>
    <message>
        <source>Drawing. %1</source>
        <translation type="unfinished">Gambar. %1</translation>
    </message>
    <message>
        <source>Good: %1</source>
        <translation type="unfinished">Baik: %1</translation>
    </message>
    <message>
        <source>Bad: %1</source>
        <translation type="unfinished">Buruk: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeScreen</name>
    <message>
        <source>Which boundaries hold</source>
        <translation type="unfinished">Pembatas mana yang bertahan</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation type="unfinished">Inspeksi</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation type="unfinished">Zona</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Terbuka</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Kapal</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Aturan</translation>
    </message>
    <message>
        <source>The walkdown</source>
        <translation type="unfinished">Inspeksi</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Kapal ini</translation>
    </message>
    <message>
        <source>What it is graded by</source>
        <translation type="unfinished">Dasar penilaiannya</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Buku aturan ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. Administrasi bendera, rencana yang disetujui dan aturan setempat didahulukan. Bukan untuk kapal cepat atau pintu kedap air sebagai demikian.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
    <message>
        <source>What falls due</source>
        <translation type="unfinished">Yang jatuh tempo</translation>
    </message>
    <message>
        <source>Periods of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration stand above them; no days of grace are printed.</source>
        <translation type="unfinished">Periode MSC.1/Circ.1432. Rencana perusahaan dan Administrasi negara bendera berada di atasnya; tidak ada hari kelonggaran yang tercetak.</translation>
    </message>
    <message>
        <source>Plan it ›</source>
        <translation type="unfinished">Rencanakan ›</translation>
    </message>
    <message>
        <source>Done today</source>
        <translation type="unfinished">Selesai hari ini</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Isi</translation>
    </message>
    <message>
        <source>not yet known: enter the day on which it ends</source>
        <translation type="unfinished">belum diketahui: isi tanggal berakhirnya</translation>
    </message>
    <message>
        <source>Thumb drill of %1</source>
        <translation type="unfinished">Latihan jempol %1</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Mulai ›</translation>
    </message>
    <message>
        <source>last %1, worth repeating after %2</source>
        <translation type="unfinished">terakhir %1, layak diulang setelah %2</translation>
    </message>
    <message>
        <source>never done on this tablet: published figures stand</source>
        <translation type="unfinished">belum pernah dilakukan di tablet ini: angka terbitan berlaku</translation>
    </message>
    <message>
        <source>On which day does the safety certificate end?</source>
        <translation type="unfinished">Tanggal berapa sertifikat keselamatan berakhir?</translation>
    </message>
    <message>
        <source>End this walkdown?</source>
        <translation type="unfinished">Akhiri inspeksi ini?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Semua pintu selesai.</translation>
    </message>
    <message>
        <source>%1 of %2 not done. What was not tried stays untested in the report.</source>
        <translation type="unfinished">%1 dari %2 belum selesai. Yang tidak dicoba tetap belum diuji dalam laporan.</translation>
    </message>
    <message>
        <source>Something is not saved yet. Save it first: then the walkdown can end.</source>
        <translation type="unfinished">Masih ada yang belum tersimpan. Simpan dahulu: baru inspeksi dapat diakhiri.</translation>
    </message>
    <message>
        <source>A walkdown that has ended is not taken up again.</source>
        <translation type="unfinished">Inspeksi yang sudah berakhir tidak dilanjutkan lagi.</translation>
    </message>
    <message>
        <source>Go on walking</source>
        <translation type="unfinished">Lanjutkan inspeksi</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Akhiri inspeksi</translation>
    </message>
    <message>
        <source>Doors of this walkdown</source>
        <translation type="unfinished">Pintu inspeksi ini</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">geladak %1</translation>
    </message>
    <message>
        <source>Walkdowns of this vessel</source>
        <translation type="unfinished">Inspeksi kapal ini</translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished">Laporan</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Kapal di tablet ini</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Buka</translation>
    </message>
    <message>
        <source>No other vessel is on this tablet.</source>
        <translation type="unfinished">Tidak ada kapal lain di tablet ini.</translation>
    </message>
    <message>
        <source>Take in a register (CSV)</source>
        <translation type="unfinished">Impor register (CSV)</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>%1, deck %2.</source>
        <translation type="unfinished">%1, geladak %2.</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
    <message>
        <source>The walkdown shown does not cover it. A walkdown planned with it can.</source>
        <translation type="unfinished">Inspeksi yang ditampilkan tidak mencakupnya. Inspeksi yang direncanakan dengannya dapat.</translation>
    </message>
    <message>
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Belum ada inspeksi dimulai. Mulai satu untuk mengujinya.</translation>
    </message>
    <message>
        <source>Graded otherwise since the rules changed</source>
        <translation type="unfinished">Dinilai lain sejak aturan berubah</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">Sudah saya lihat</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">Tidak disimpan</translation>
    </message>
    <message>
        <source>What the doors were graded by before cannot be read any more, so nobody can tell which are graded otherwise.</source>
        <translation type="unfinished">Dasar penilaian pintu sebelumnya tidak dapat dibaca lagi, jadi tidak ada yang tahu pintu mana yang dinilai lain.</translation>
    </message>
    <message>
        <source>Nothing that was recorded has changed, and a report made before keeps the edition that it was made by.</source>
        <translation type="unfinished">Tidak ada yang tercatat berubah, dan laporan yang dibuat sebelumnya tetap memakai edisi saat dibuat.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Texts ›</source>
        <translation type="unfinished">Teks ›</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation type="unfinished">Sebelumnya: %1</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation type="unfinished">Sekarang: %1</translation>
    </message>
    <message>
        <source>Door %1 ›</source>
        <translation type="unfinished">Pintu %1 ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::InstrumentKeys</name>
    <message>
        <source>Rule</source>
        <translation type="unfinished">Mistar</translation>
    </message>
    <message>
        <source>Caliper</source>
        <translation type="unfinished">Jangka sorong</translation>
    </message>
    <message>
        <source>Gap gauge</source>
        <translation type="unfinished">Kaliber celah</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation type="unfinished">Pita ukur</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemPanel</name>
    <message>
        <source>While it does not hold, %1.</source>
        <translation type="unfinished">Selagi tidak bertahan, %1.</translation>
    </message>
    <message>
        <source>%1: found by %2</source>
        <translation type="unfinished">%1: ditemukan oleh %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1: diperbaiki oleh %2: %3</translation>
    </message>
    <message>
        <source>%1: ready for retest, says %2</source>
        <translation type="unfinished">%1: siap uji ulang, kata %2</translation>
    </message>
    <message>
        <source>%1: retest passed, by %2</source>
        <translation type="unfinished">%1: uji ulang lulus, oleh %2</translation>
    </message>
    <message>
        <source>%1: retest FAILED, by %2</source>
        <translation type="unfinished">%1: uji ulang GAGAL, oleh %2</translation>
    </message>
    <message>
        <source>%1: withdrawn by %2: %3</source>
        <translation type="unfinished">%1: ditarik oleh %2: %3</translation>
    </message>
    <message>
        <source>action %1</source>
        <translation type="unfinished">tindakan %1</translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished">Atur</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Tenggat</translation>
    </message>
    <message>
        <source>Who sees to it</source>
        <translation type="unfinished">Siapa yang menangani</translation>
    </message>
    <message>
        <source>Until then</source>
        <translation type="unfinished">Sementara itu</translation>
    </message>
    <message>
        <source>nothing recorded</source>
        <translation type="unfinished">tidak ada catatan</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Negara pelabuhan</translation>
    </message>
    <message>
        <source>nothing given</source>
        <translation type="unfinished">tidak diberikan</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished">belum ada</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation type="unfinished">%1 diambil</translation>
    </message>
    <message>
        <source>Take one</source>
        <translation type="unfinished">Ambil satu</translation>
    </message>
    <message>
        <source>Look at the photographs</source>
        <translation type="unfinished">Lihat foto</translation>
    </message>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Tampilkan ›</translation>
    </message>
    <message>
        <source>What this door did before</source>
        <translation type="unfinished">Riwayat pintu ini sebelumnya</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Riwayat ›</translation>
    </message>
    <message>
        <source>Ready for retest</source>
        <translation type="unfinished">Siap uji ulang</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Diperbaiki…</translation>
    </message>
    <message>
        <source>Not withdrawn after all</source>
        <translation type="unfinished">Batal ditarik</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Tarik…</translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation type="unfinished">Belum ada yang dipilih</translation>
    </message>
    <message>
        <source>Rows that are not in order become items when they are written up.</source>
        <translation type="unfinished">Butir yang tidak baik menjadi temuan setelah ditulis.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Back to the open items</source>
        <translation type="unfinished">Kembali ke temuan terbuka</translation>
    </message>
    <message>
        <source>What is wrong, and what was done</source>
        <translation type="unfinished">Apa yang salah, dan apa yang dilakukan</translation>
    </message>
    <message>
        <source>Say who you are before you work the items.</source>
        <translation type="unfinished">Sebutkan siapa Anda sebelum mengerjakan temuan.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>How grave is it?</source>
        <translation type="unfinished">Seberapa berat?</translation>
    </message>
    <message>
        <source>This</source>
        <translation type="unfinished">Ini</translation>
    </message>
    <message>
        <source>What port State control gave</source>
        <translation type="unfinished">Yang diberikan negara pelabuhan</translation>
    </message>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Kode tindakan, seperti ditulis petugas (daftar terbitan; defisiensi %1)</translation>
    </message>
    <message>
        <source>Ground for detention? A field of its own: regimes differ in which code carries it.</source>
        <translation type="unfinished">Dasar penahanan? Kolom tersendiri: rezim berbeda-beda tentang kode mana yang memuatnya.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished">Simpan</translation>
    </message>
    <message>
        <source>By which day?</source>
        <translation type="unfinished">Tanggal berapa?</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">hari ini</translation>
    </message>
    <message>
        <source>in 3 days</source>
        <translation type="unfinished">dalam 3 hari</translation>
    </message>
    <message>
        <source>in 7 days</source>
        <translation type="unfinished">dalam 7 hari</translation>
    </message>
    <message>
        <source>in 14 days</source>
        <translation type="unfinished">dalam 14 hari</translation>
    </message>
    <message>
        <source>in one month</source>
        <translation type="unfinished">dalam satu bulan</translation>
    </message>
    <message>
        <source>in three months</source>
        <translation type="unfinished">dalam tiga bulan</translation>
    </message>
    <message>
        <source>What is done while the door is out?</source>
        <translation type="unfinished">Apa yang dilakukan selagi pintu tidak berfungsi?</translation>
    </message>
    <message>
        <source>Who sees to it?</source>
        <translation type="unfinished">Siapa yang menangani?</translation>
    </message>
    <message>
        <source>What was done at door %1?</source>
        <translation type="unfinished">Apa yang dilakukan di pintu %1?</translation>
    </message>
    <message>
        <source>Who did it?</source>
        <translation type="unfinished">Dikerjakan siapa?</translation>
    </message>
    <message>
        <source>Who rectifies cannot retest: the item closes when somebody else finds it in order.</source>
        <translation type="unfinished">Yang memperbaiki tidak boleh menguji ulang: temuan ditutup bila orang lain mendapatinya baik.</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">Mengapa ditarik?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Keypad</name>
    <message>
        <source>Decimal point</source>
        <translation type="unfinished">Tanda desimal</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Hapus</translation>
    </message>
    <message>
        <source>Delete the last digit</source>
        <translation type="unfinished">Hapus angka terakhir</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation type="unfinished">Reset</translation>
    </message>
    <message>
        <source>Clear the figure</source>
        <translation type="unfinished">Kosongkan angka</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished">Enter</translation>
    </message>
    <message>
        <source>Enter the figure</source>
        <translation type="unfinished">Masukkan angka</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation type="unfinished">belum ada angka</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Legend</name>
    <message>
        <source>to judge</source>
        <translation type="unfinished">perlu dinilai</translation>
    </message>
</context>
<context>
    <name>latchround::ui::LiveScene</name>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Bebaskan lintasan</translation>
    </message>
    <message>
        <source>ALARM</source>
        <translation type="unfinished">ALARM</translation>
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
        <translation type="unfinished">Batal</translation>
    </message>
    <message>
        <source>Stopping…</source>
        <translation type="unfinished">Menghentikan…</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation type="unfinished">Dihentikan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkKey</name>
    <message>
        <source>Mark</source>
        <translation type="unfinished">Tanda</translation>
    </message>
</context>
<context>
    <name>latchround::ui::MarkRow</name>
    <message>
        <source>no such event</source>
        <translation type="unfinished">tidak terjadi</translation>
    </message>
    <message>
        <source>Door %1, %2: %3</source>
        <translation type="unfinished">Pintu %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::NotSavedBanner</name>
    <message>
        <source>Save again</source>
        <translation type="unfinished">Simpan lagi</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">TIDAK TERSIMPAN (%1)</translation>
    </message>
    <message>
        <source>Only shown here: another program writes in this register (%1).</source>
        <translation type="unfinished">Hanya ditampilkan di sini: program lain menulis di register ini (%1).</translation>
    </message>
    <message>
        <source>Put aside…</source>
        <translation type="unfinished">Sisihkan…</translation>
    </message>
    <message>
        <source>Put aside what is refused?</source>
        <translation type="unfinished">Sisihkan yang ditolak?</translation>
    </message>
    <message>
        <source>The register does not take it. Put aside it is kept in a file beside the register and counts for nothing; record anew what still holds.</source>
        <translation type="unfinished">Register tidak menerimanya. Jika disisihkan, disimpan dalam berkas di samping register dan tidak dihitung; catat lagi yang masih berlaku.</translation>
    </message>
    <message>
        <source>Leave it waiting</source>
        <translation type="unfinished">Biarkan menunggu</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation type="unfinished">Sisihkan</translation>
    </message>
    <message>
        <source>It is kept in %1</source>
        <translation type="unfinished">Disimpan di %1</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">Tidak disisihkan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemsCard</name>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
    <message>
        <source>oldest %1 days</source>
        <translation type="unfinished">tertua %1 hari</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <translation type="unfinished">%1 terlambat</translation>
    </message>
    <message>
        <source>None yet: no door was tested.</source>
        <translation type="unfinished">Belum ada: belum ada pintu yang diuji.</translation>
    </message>
    <message>
        <source>None: no door failed, waits for a judgement, or is to be timed again.</source>
        <translation type="unfinished">Tidak ada: tidak ada pintu yang gagal, menunggu penilaian, atau perlu diukur lagi.</translation>
    </message>
    <message>
        <source>All %1 open items ›</source>
        <translation type="unfinished">Semua %1 temuan terbuka ›</translation>
    </message>
    <message>
        <source>After the walk ›</source>
        <translation type="unfinished">Setelah inspeksi ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PartKeys</name>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Catatan</translation>
    </message>
    <message>
        <source>Doors of this boundary</source>
        <translation type="unfinished">Pintu pembatas ini</translation>
    </message>
    <message>
        <source>Photograph, note, not tested, paper</source>
        <translation type="unfinished">Foto, catatan, tidak diuji, kertas</translation>
    </message>
    <message>
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Putusan: %1. Tekan untuk alasannya</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PersonForm</name>
    <message>
        <source>name</source>
        <translation type="unfinished">nama</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nama</translation>
    </message>
    <message>
        <source>Write the name, then touch what this person is aboard.</source>
        <translation type="unfinished">Tulis nama, lalu sentuh jabatan orang ini di kapal.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhotographSheets</name>
    <message>
        <source>Photograph of door %1</source>
        <translation type="unfinished">Foto pintu %1</translation>
    </message>
    <message>
        <source>With the camera</source>
        <translation type="unfinished">Dengan kamera</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished">Dari berkas</translation>
    </message>
    <message>
        <source>No photograph</source>
        <translation type="unfinished">Tidak ada foto</translation>
    </message>
    <message>
        <source>What does the photograph show?</source>
        <translation type="unfinished">Foto ini menunjukkan apa?</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PhrasePicker</name>
    <message>
        <source>Use</source>
        <translation type="unfinished">Pakai</translation>
    </message>
    <message>
        <source>Phrases</source>
        <translation type="unfinished">Frasa</translation>
    </message>
    <message>
        <source>own words</source>
        <translation type="unfinished">kata sendiri</translation>
    </message>
    <message>
        <source>Own words</source>
        <translation type="unfinished">Kata sendiri</translation>
    </message>
    <message>
        <source>Use own words</source>
        <translation type="unfinished">Pakai kata sendiri</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PictureView</name>
    <message>
        <source>The picture is not on this tablet: take it over from the one it was taken with.</source>
        <translation type="unfinished">Gambar tidak ada di tablet ini: ambil alih dari tablet yang memotretnya.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1: %2, %3 berjalan kaki. Pertama: %4.</translation>
    </message>
    <message>
        <source> %1 less than in the order of their numbers.</source>
        <translation type="unfinished"> %1 lebih pendek daripada menurut urutan nomor.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 sure that %3</source>
        <translation type="unfinished">bila tidak satu pun dari %1 gagal: %2 yakin bahwa %3</translation>
    </message>
    <message>
        <source>Who walks along</source>
        <translation type="unfinished">Siapa yang ikut</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Tambah orang</translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished">Untuk apa</translation>
    </message>
    <message>
        <source>Who records</source>
        <translation type="unfinished">Siapa yang mencatat</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Kemiringan kapal</translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu tutup hanya saran</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Berapa di antaranya</translation>
    </message>
    <message>
        <source>To the brief ›</source>
        <translation type="unfinished">Ke pengarahan ›</translation>
    </message>
    <message>
        <source>Which doors</source>
        <translation type="unfinished">Pintu mana</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished">%1°</translation>
    </message>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Semua pintu</translation>
    </message>
    <message>
        <source>Quarterly set</source>
        <translation type="unfinished">Set triwulan</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Geladak %1</translation>
    </message>
    <message>
        <source>One deck…</source>
        <translation type="unfinished">Satu geladak…</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation type="unfinished">Zona %1</translation>
    </message>
    <message>
        <source>One zone…</source>
        <translation type="unfinished">Satu zona…</translation>
    </message>
    <message>
        <source>Failed last time</source>
        <translation type="unfinished">Gagal terakhir</translation>
    </message>
    <message>
        <source>To retest</source>
        <translation type="unfinished">Uji ulang</translation>
    </message>
    <message>
        <source>Every one</source>
        <translation type="unfinished">Semuanya</translation>
    </message>
    <message>
        <source>or a sample drawn by lot, and what it proves</source>
        <translation type="unfinished">atau sampel dengan undian, dan apa yang dibuktikannya</translation>
    </message>
    <message>
        <source>%1 by lot</source>
        <translation type="unfinished">%1 dengan undian</translation>
    </message>
    <message>
        <source>No door is in this scope.</source>
        <translation type="unfinished">Tidak ada pintu dalam lingkup ini.</translation>
    </message>
    <message>
        <source>Say first who records.</source>
        <translation type="unfinished">Sebutkan dahulu siapa yang mencatat.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Rencanakan inspeksi</translation>
    </message>
    <message>
        <source>Brief before the doors</source>
        <translation type="unfinished">Pengarahan sebelum pintu</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Rencana</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Pengarahan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanSheets</name>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Tambah orang</translation>
    </message>
    <message>
        <source>Which deck?</source>
        <translation type="unfinished">Geladak mana?</translation>
    </message>
    <message>
        <source>Which zone?</source>
        <translation type="unfinished">Zona mana?</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">geladak %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">geladak %1, %2</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Kemiringan kapal, derajat</translation>
    </message>
    <message>
        <source>over 1 degree a closing time is advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu tutup hanya saran</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">derajat</translation>
    </message>
    <message>
        <source>How many of these %1?</source>
        <translation type="unfinished">Berapa dari %1 ini?</translation>
    </message>
    <message>
        <source>Every one</source>
        <translation type="unfinished">Semuanya</translation>
    </message>
    <message>
        <source>%1 by lot: %2 sure that at most %3 are defective</source>
        <translation type="unfinished">%1 dengan undian: %2 yakin bahwa maksimal %3 cacat</translation>
    </message>
    <message>
        <source>What a sample says holds if none of it fails. The doors are shared out over zones and kinds and drawn by lot; a door chosen by anybody would prove nothing about the rest. A sample never takes the place of a test that the flag or the rules ask of every door.</source>
        <translation type="unfinished">Yang dikatakan sampel berlaku bila tidak satu pun gagal. Pintu dibagi menurut zona dan jenis lalu diundi; pintu yang dipilih orang tidak membuktikan apa pun tentang sisanya. Sampel tidak pernah menggantikan uji yang diminta bendera atau aturan untuk setiap pintu.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeCover</name>
    <message>
        <source>PRACTICE</source>
        <translation type="unfinished">LATIHAN</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeFrame</name>
    <message>
        <source>PRACTICE: these doors are not there, nothing here is a record</source>
        <translation type="unfinished">LATIHAN: pintu ini tidak nyata, tidak ada yang menjadi catatan di sini</translation>
    </message>
    <message>
        <source>At the door</source>
        <translation type="unfinished">Di pintu</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Akhiri dan evaluasi</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeOffer</name>
    <message>
        <source>From practice</source>
        <translation type="unfinished">Dari latihan</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Pakai angka ini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeScreen</name>
    <message>
        <source>No exercise is on this tablet. Take one in.</source>
        <translation type="unfinished">Tidak ada latihan di tablet ini. Impor satu.</translation>
    </message>
    <message>
        <source>Take in an exercise</source>
        <translation type="unfinished">Impor latihan</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Latihan</translation>
    </message>
    <message>
        <source>doors that are not there; nothing becomes a record</source>
        <translation type="unfinished">pintu yang tidak nyata; tidak ada yang menjadi catatan</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>Not taken in: one fault</source>
        <translation type="unfinished">Tidak diimpor: satu kesalahan</translation>
    </message>
    <message>
        <source>Not taken in: %1 faults</source>
        <translation type="unfinished">Tidak diimpor: %1 kesalahan</translation>
    </message>
    <message>
        <source>Exercise taken in</source>
        <translation type="unfinished">Latihan diimpor</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation type="unfinished">Latihan</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Kemajuan</translation>
    </message>
    <message>
        <source>An exercise was not ended</source>
        <translation type="unfinished">Satu latihan belum diakhiri</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What was recorded stands; the doors are as at its beginning.</source>
        <translation type="unfinished">%1, dimulai %2 pukul %3. Yang dicatat tetap berlaku; pintu seperti pada awalnya.</translation>
    </message>
    <message>
        <source>Put it aside</source>
        <translation type="unfinished">Sisihkan</translation>
    </message>
    <message>
        <source>Not put aside</source>
        <translation type="unfinished">Tidak disisihkan</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation type="unfinished">Lanjutkan</translation>
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
        <translation type="unfinished">Kemajuan</translation>
    </message>
    <message>
        <source>Nobody has practised on this tablet yet. Each exercise that is finished leaves its score here, and how late the thumb was.</source>
        <translation type="unfinished">Belum ada yang berlatih di tablet ini. Setiap latihan yang selesai meninggalkan skornya di sini, dan seberapa lambat jempolnya.</translation>
    </message>
    <message>
        <source>One exercise. </source>
        <translation type="unfinished">Satu latihan. </translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished">%1 latihan. </translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined. </source>
        <translation type="unfinished">%1 dari %2 cacat ditemukan, %3 dibayangkan. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Orang terancam bahaya: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">tanpa nama</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ProgressPlot</name>
    <message>
        <source>%1, exam: %2 %</source>
        <translation type="unfinished">%1, ujian: %2 %</translation>
    </message>
    <message>
        <source>%1: %2 %</source>
        <translation type="unfinished">%1: %2 %</translation>
    </message>
    <message>
        <source>, %1 %2, spread %3 ms</source>
        <translation type="unfinished">, %1 %2, sebaran %3 ms</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Kemajuan</translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished">Skor setiap latihan</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1 %</translation>
    </message>
    <message>
        <source>an exam asks %1 %</source>
        <translation type="unfinished">ujian meminta %1 %</translation>
    </message>
    <message>
        <source>Thumb late, ms:</source>
        <translation type="unfinished">Jempol terlambat, ms:</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarm</translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished">mulai</translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished">henti</translation>
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
        <translation type="unfinished">Laporan</translation>
    </message>
    <message>
        <source>Report: %1</source>
        <translation type="unfinished">Laporan: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewScreen</name>
    <message>
        <source>Compare ›</source>
        <translation type="unfinished">Bandingkan ›</translation>
    </message>
    <message>
        <source>Papers ›</source>
        <translation type="unfinished">Dokumen ›</translation>
    </message>
    <message>
        <source>Hand over ›</source>
        <translation type="unfinished">Serahkan ›</translation>
    </message>
    <message>
        <source>Sign ›</source>
        <translation type="unfinished">Tanda tangan ›</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
    <message>
        <source>1 open</source>
        <translation type="unfinished">1 terbuka</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation type="unfinished">%1 terbuka</translation>
    </message>
    <message>
        <source>Nothing is open yet. %1 rows are not in order and not written up.</source>
        <translation type="unfinished">Belum ada yang terbuka. %1 butir tidak baik dan belum ditulis.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished">Tidak ada yang terbuka.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">Siapa Anda?</translation>
    </message>
    <message>
        <source>Who works the items: %1</source>
        <translation type="unfinished">Yang mengerjakan temuan: %1</translation>
    </message>
    <message>
        <source>Write up (%1)</source>
        <translation type="unfinished">Tulis (%1)</translation>
    </message>
    <message>
        <source>Plan retest (%1)</source>
        <translation type="unfinished">Rencana uji ulang (%1)</translation>
    </message>
    <message>
        <source>Differences (%1)</source>
        <translation type="unfinished">Perbedaan (%1)</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation type="unfinished">Hanya yang terbuka</translation>
    </message>
    <message>
        <source>Closed too (%1)</source>
        <translation type="unfinished">Juga yang ditutup (%1)</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Tenggat</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation type="unfinished">Zona</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Age</source>
        <translation type="unfinished">Umur</translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished">Orang</translation>
    </message>
    <message>
        <source>Who, papers, hand over ›</source>
        <translation type="unfinished">Siapa, dokumen, serahkan ›</translation>
    </message>
    <message>
        <source>‹ Open items</source>
        <translation type="unfinished">‹ Temuan terbuka</translation>
    </message>
    <message>
        <source>Open it ›</source>
        <translation type="unfinished">Buka ›</translation>
    </message>
    <message>
        <source>Who, papers ›</source>
        <translation type="unfinished">Siapa, dokumen ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ReviewSheets</name>
    <message>
        <source>New: not in order now</source>
        <translation type="unfinished">Baru: kini tidak baik</translation>
    </message>
    <message>
        <source>Worse than before</source>
        <translation type="unfinished">Lebih buruk daripada sebelumnya</translation>
    </message>
    <message>
        <source>Gone: in order again</source>
        <translation type="unfinished">Hilang: baik lagi</translation>
    </message>
    <message>
        <source>Better than before</source>
        <translation type="unfinished">Lebih baik daripada sebelumnya</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished">tidak dicoba</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Dua inspeksi berdampingan</translation>
    </message>
    <message>
        <source>There are no two walkdowns yet.</source>
        <translation type="unfinished">Belum ada dua inspeksi.</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished">%1
%2</translation>
    </message>
    <message>
        <source>What has changed</source>
        <translation type="unfinished">Apa yang berubah</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished">Sebelumnya</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Kemudian</translation>
    </message>
    <message>
        <source>%1 · %2: %3, before %4</source>
        <translation type="unfinished">%1 · %2: %3, sebelumnya %4</translation>
    </message>
    <message>
        <source>Nothing that both walks tried has changed by more than the uncertainty explains.</source>
        <translation type="unfinished">Yang dicoba kedua inspeksi tidak berubah lebih dari yang dijelaskan ketidakpastian.</translation>
    </message>
    <message>
        <source>Said differently: both stay on record, one is to stand</source>
        <translation type="unfinished">Dikatakan berbeda: keduanya tetap tercatat, satu harus berlaku</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation type="unfinished">Putuskan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>Nobody said different things of the same.</source>
        <translation type="unfinished">Tidak ada yang mengatakan hal berbeda tentang hal yang sama.</translation>
    </message>
    <message>
        <source>Which one stands? The later one shows until you decide.</source>
        <translation type="unfinished">Yang mana berlaku? Yang kemudian ditampilkan sampai Anda memutuskan.</translation>
    </message>
    <message>
        <source>%1, %2 %3:
%4</source>
        <translation type="unfinished">%1, %2 %3:
%4</translation>
    </message>
    <message>
        <source>Why does it stand?</source>
        <translation type="unfinished">Mengapa itu berlaku?</translation>
    </message>
    <message>
        <source>Hand over between tablets and the bridge</source>
        <translation type="unfinished">Serah terima antara tablet dan anjungan</translation>
    </message>
    <message>
        <source>Give everything to a file</source>
        <translation type="unfinished">Berikan semuanya ke berkas</translation>
    </message>
    <message>
        <source>facts, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">fakta, foto, dan susunan, ditandatangani perangkat ini</translation>
    </message>
    <message>
        <source>Give</source>
        <translation type="unfinished">Berikan</translation>
    </message>
    <message>
        <source>Give it sealed for one device</source>
        <translation type="unfinished">Berikan tersegel untuk satu perangkat</translation>
    </message>
    <message>
        <source>only that device can open it; its key is asked for</source>
        <translation type="unfinished">hanya perangkat itu dapat membukanya; kuncinya ditanyakan</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished">Segel</translation>
    </message>
    <message>
        <source>Take in another device&apos;s file</source>
        <translation type="unfinished">Impor berkas perangkat lain</translation>
    </message>
    <message>
        <source>it is looked at first; nothing here is ever changed by it</source>
        <translation type="unfinished">dilihat dahulu; tidak ada yang pernah diubahnya di sini</translation>
    </message>
    <message>
        <source>Take</source>
        <translation type="unfinished">Impor</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">Kunci perangkat ini</translation>
    </message>
    <message>
        <source>to be given to whoever seals a file for it</source>
        <translation type="unfinished">untuk diberikan kepada yang menyegel berkas untuknya</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Tampilkan</translation>
    </message>
    <message>
        <source>Not given</source>
        <translation type="unfinished">Tidak diberikan</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation type="unfinished">Diserahkan</translation>
    </message>
    <message>
        <source>The file lies at %1</source>
        <translation type="unfinished">Berkas ada di %1</translation>
    </message>
    <message>
        <source>For which device is it sealed?</source>
        <translation type="unfinished">Untuk perangkat mana disegel?</translation>
    </message>
    <message>
        <source>Its key: 64 digits and letters a to f, as that device shows them.</source>
        <translation type="unfinished">Kuncinya: 64 angka dan huruf a sampai f, seperti ditampilkan perangkat itu.</translation>
    </message>
    <message>
        <source>Key of the receiving device</source>
        <translation type="unfinished">Kunci perangkat penerima</translation>
    </message>
    <message>
        <source>Seal and give</source>
        <translation type="unfinished">Segel dan berikan</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">Tidak diimpor</translation>
    </message>
    <message>
        <source>What this file brings</source>
        <translation type="unfinished">Yang dibawa berkas ini</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished">Dari %1</translation>
    </message>
    <message>
        <source>Nothing that is not here already.</source>
        <translation type="unfinished">Tidak ada yang belum ada di sini.</translation>
    </message>
    <message>
        <source>Nobody here knows this device yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">Belum ada yang mengenal perangkat ini di sini. Minta pemberi berkas membacakan sidik jari kuncinya. Harus:
%1</translation>
    </message>
    <message>
        <source>The fingerprint is right: accept it and take in</source>
        <translation type="unfinished">Sidik jari benar: terima dan impor</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished">Impor</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished">Biarkan</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, sebagai %2, %3 %4: </translation>
    </message>
    <message>
        <source>DOES NOT HOLD: %1</source>
        <translation type="unfinished">TIDAK BERLAKU: %1</translation>
    </message>
    <message>
        <source>%1 facts, unchanged</source>
        <translation type="unfinished">%1 fakta, tidak berubah</translation>
    </message>
    <message>
        <source>; %1 came later and are not under it</source>
        <translation type="unfinished">; %1 datang kemudian dan tidak termasuk</translation>
    </message>
    <message>
        <source>Papers, as PDF</source>
        <translation type="unfinished">Dokumen, sebagai PDF</translation>
    </message>
    <message>
        <source>Make</source>
        <translation type="unfinished">Buat</translation>
    </message>
    <message>
        <source>Make: %1</source>
        <translation type="unfinished">Buat: %1</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Daftar defisiensi</translation>
    </message>
    <message>
        <source>for the master: what is open, what it does, what is done until then</source>
        <translation type="unfinished">untuk nakhoda: yang terbuka, akibatnya, yang dilakukan sementara itu</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Daftar kerja</translation>
    </message>
    <message>
        <source>for the crew: by who sees to it, with boxes to tick</source>
        <translation type="unfinished">untuk awak: menurut penanggung jawab, dengan kotak centang</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Catatan pintu</translation>
    </message>
    <message>
        <source>Record of door %1</source>
        <translation type="unfinished">Catatan pintu %1</translation>
    </message>
    <message>
        <source>one page: what it is, how it did, what was mended</source>
        <translation type="unfinished">satu halaman: apa pintu ini, hasilnya, apa yang diperbaiki</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Laporan survei</translation>
    </message>
    <message>
        <source>the walkdown shown, every door and every row</source>
        <translation type="unfinished">inspeksi yang ditampilkan, setiap pintu dan setiap butir</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulir kosong</translation>
    </message>
    <message>
        <source>what the tablet asks, for a day without it</source>
        <translation type="unfinished">yang ditanyakan tablet, untuk hari tanpa tablet</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Belum ada yang ditandatangani</translation>
    </message>
    <message>
        <source>A walkdown is signed when it has ended.</source>
        <translation type="unfinished">Inspeksi ditandatangani setelah berakhir.</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Tanda tangani inspeksi</translation>
    </message>
    <message>
        <source>Nobody has signed it yet.</source>
        <translation type="unfinished">Belum ada yang menandatanganinya.</translation>
    </message>
    <message>
        <source>A signature covers what is recorded of this walkdown now, under the key of this device. It is no qualified electronic signature: sign the paper as well where your Administration asks for it.</source>
        <translation type="unfinished">Tanda tangan mencakup yang tercatat tentang inspeksi ini sekarang, dengan kunci perangkat ini. Ini bukan tanda tangan elektronik tersertifikasi: tanda tangani juga kertasnya bila Administrasi Anda memintanya.</translation>
    </message>
    <message>
        <source>%1 has signed it.</source>
        <translation type="unfinished">%1 sudah menandatanganinya.</translation>
    </message>
    <message>
        <source>Sign as %1: %2</source>
        <translation type="unfinished">Teken sebagai %1: %2</translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished">Tidak ditandatangani</translation>
    </message>
    <message>
        <source>Who works the items?</source>
        <translation type="unfinished">Siapa mengerjakan temuan?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Orang lain</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Tambah orang</translation>
    </message>
    <message>
        <source>Rows that are not in order and not written up</source>
        <translation type="unfinished">Butir yang tidak baik dan belum ditulis</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Tulis…</translation>
    </message>
    <message>
        <source>%1 (found again)</source>
        <translation type="unfinished">%1 (ditemukan lagi)</translation>
    </message>
    <message>
        <source>Write it up in these words</source>
        <translation type="unfinished">Tulis dengan kata-kata ini</translation>
    </message>
    <message>
        <source>Write up all %1 in these words</source>
        <translation type="unfinished">Tulis semua %1 dengan kata-kata ini</translation>
    </message>
    <message>
        <source>What door %1 did before</source>
        <translation type="unfinished">Riwayat pintu %1 sebelumnya</translation>
    </message>
    <message>
        <source>Walkdowns of this door, the latest first</source>
        <translation type="unfinished">Inspeksi pintu ini, yang terakhir dahulu</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished">%1, %2: %3</translation>
    </message>
    <message>
        <source>, closing %1</source>
        <translation type="unfinished">, menutup %1</translation>
    </message>
    <message>
        <source>Its closing through the years</source>
        <translation type="unfinished">Waktu tutupnya dari tahun ke tahun</translation>
    </message>
    <message>
        <source>Chart ›</source>
        <translation type="unfinished">Grafik ›</translation>
    </message>
    <message>
        <source>Photographs of door %1</source>
        <translation type="unfinished">Foto pintu %1</translation>
    </message>
    <message>
        <source>Everything is being put into a file</source>
        <translation type="unfinished">Semuanya sedang dimasukkan ke berkas</translation>
    </message>
    <message>
        <source>No file was made, and nothing was handed over.</source>
        <translation type="unfinished">Tidak ada berkas dibuat, dan tidak ada yang diserahkan.</translation>
    </message>
    <message>
        <source>The file is being looked at</source>
        <translation type="unfinished">Berkas sedang dilihat</translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation type="unfinished">Tidak ada yang diimpor.</translation>
    </message>
    <message>
        <source>The file is being taken in</source>
        <translation type="unfinished">Berkas sedang diimpor</translation>
    </message>
    <message>
        <source>Nothing was taken in. Everything here is as it was before.</source>
        <translation type="unfinished">Tidak ada yang diimpor. Semuanya di sini tetap seperti semula.</translation>
    </message>
    <message>
        <source>No walkdown recorded anything of this door yet.</source>
        <translation type="unfinished">Belum ada inspeksi yang mencatat apa pun tentang pintu ini.</translation>
    </message>
    <message>
        <source>Earlier: %1</source>
        <translation type="unfinished">Sebelumnya: %1</translation>
    </message>
    <message>
        <source>Later: %1</source>
        <translation type="unfinished">Sesudahnya: %1</translation>
    </message>
    <message>
        <source>More walkdowns, earlier</source>
        <translation type="unfinished">Inspeksi lain, lebih awal</translation>
    </message>
    <message>
        <source>More walkdowns, later</source>
        <translation type="unfinished">Inspeksi lain, lebih baru</translation>
    </message>
    <message>
        <source>Being saved</source>
        <translation type="unfinished">Sedang disimpan</translation>
    </message>
    <message>
        <source>The signature is kept, and saved by itself in a moment.</source>
        <translation type="unfinished">Tanda tangan sudah diamankan dan akan tersimpan sendiri sebentar lagi.</translation>
    </message>
    <message>
        <source>There is no walkdown yet: until then only the blank form and the rule book can be made.</source>
        <translation type="unfinished">Belum ada inspeksi: sampai saat itu hanya formulir kosong dan buku aturan yang dapat dibuat.</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Buku aturan</translation>
    </message>
    <message>
        <source>every row with its limit, dates, exemptions and text, and where it binds aboard</source>
        <translation type="unfinished">setiap butir dengan batas, tanggal, pengecualian dan teksnya, dan di mana ia mengikat di kapal</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Tadi</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Lagi ›</translation>
    </message>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1–%2 dari %3</translation>
    </message>
    <message>
        <source>Rows before these</source>
        <translation type="unfinished">Baris sebelum ini</translation>
    </message>
    <message>
        <source>More rows</source>
        <translation type="unfinished">Baris berikutnya</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 dari %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>All that the row says</source>
        <translation type="unfinished">Semua isi butir ini</translation>
    </message>
    <message>
        <source>‹ Rows</source>
        <translation type="unfinished">‹ Butir</translation>
    </message>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Cetak ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Cetak buku aturan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>All rows</source>
        <translation type="unfinished">Semua butir</translation>
    </message>
    <message>
        <source>No row has these words.</source>
        <translation type="unfinished">Tidak ada butir dengan kata-kata ini.</translation>
    </message>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">kata-kata, atau kutipan</translation>
    </message>
    <message>
        <source>Find rows by their words or citation</source>
        <translation type="unfinished">Cari butir menurut kata atau kutipannya</translation>
    </message>
    <message>
        <source>Rows of the rule book</source>
        <translation type="unfinished">Butir buku aturan</translation>
    </message>
    <message>
        <source>Read it ›</source>
        <translation type="unfinished">Baca ›</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Buku aturan</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation type="unfinished">pintu %1</translation>
    </message>
    <message>
        <source>Asked aboard</source>
        <translation type="unfinished">Diminta di kapal</translation>
    </message>
    <message>
        <source>Asked of this door</source>
        <translation type="unfinished">Diminta dari pintu ini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RunResult</name>
    <message>
        <source>closing time</source>
        <translation type="unfinished">waktu tutup</translation>
    </message>
    <message>
        <source>closing rate</source>
        <translation type="unfinished">laju tutup</translation>
    </message>
    <message>
        <source>alarm before movement</source>
        <translation type="unfinished">alarm sebelum gerak</translation>
    </message>
    <message>
        <source>alarm after shut</source>
        <translation type="unfinished">alarm setelah tertutup</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished">%1 %2: %3</translation>
    </message>
    <message>
        <source>Run again</source>
        <translation type="unfinished">Ulangi uji</translation>
    </message>
    <message>
        <source>Back to the door ›</source>
        <translation type="unfinished">Kembali ke pintu ›</translation>
    </message>
    <message>
        <source>Run complete</source>
        <translation type="unfinished">Uji lengkap</translation>
    </message>
    <message>
        <source>STOPPED. Say “%1” now</source>
        <translation type="unfinished">DIHENTIKAN. Ucapkan “%1” sekarang</translation>
    </message>
    <message>
        <source>Run spoiled</source>
        <translation type="unfinished">Uji dibatalkan</translation>
    </message>
    <message>
        <source>On record, and never counted as a measurement. Why?</source>
        <translation type="unfinished">Tercatat, dan tidak pernah dihitung sebagai pengukuran. Mengapa?</translation>
    </message>
    <message>
        <source>Say why ›</source>
        <translation type="unfinished">Beri alasan ›</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">Mengapa?</translation>
    </message>
    <message>
        <source>All runs of the door together: %1 %2: %3</source>
        <translation type="unfinished">Semua uji pintu ini bersama: %1 %2: %3</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Keduanya benar</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart. One touch too many?</source>
        <translation type="unfinished">“%1” dan “%2” hanya berjarak %3 s. Satu sentuhan berlebih?</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Tarik kembali “%1”</translation>
    </message>
    <message>
        <source>Yes: the run is spoiled</source>
        <translation type="unfinished">Ya: uji ini gagal</translation>
    </message>
    <message>
        <source>“%1” and “%2” lie only %3 s apart: no leaf moves so fast. A slip of the finger?</source>
        <translation type="unfinished">“%1” dan “%2” hanya berjarak %3 s: tidak ada daun pintu yang bergerak secepat itu. Salah sentuh?</translation>
    </message>
    <message>
        <source>no alarm was marked: %1</source>
        <translation type="unfinished">tidak ada alarm yang ditandai: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneScreen</name>
    <message>
        <source>Other side</source>
        <translation type="unfinished">Sisi lain</translation>
    </message>
    <message>
        <source>‹ Whole door</source>
        <translation type="unfinished">‹ Seluruh pintu</translation>
    </message>
    <message>
        <source>Lift the cover</source>
        <translation type="unfinished">Angkat penutup</translation>
    </message>
    <message>
        <source>Look closer</source>
        <translation type="unfinished">Lihat dekat</translation>
    </message>
    <message>
        <source>Push the leaf</source>
        <translation type="unfinished">Dorong daun</translation>
    </message>
    <message>
        <source>Open it, let go</source>
        <translation type="unfinished">Buka, lepaskan</translation>
    </message>
    <message>
        <source>Clear the path</source>
        <translation type="unfinished">Bebaskan lintasan</translation>
    </message>
    <message>
        <source>Ask the station</source>
        <translation type="unfinished">Tanya stasiun</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows</source>
        <translation type="unfinished">Tanya stasiun kendali apa yang ditunjukkan panelnya</translation>
    </message>
    <message>
        <source>side two</source>
        <translation type="unfinished">sisi dua</translation>
    </message>
    <message>
        <source>side one</source>
        <translation type="unfinished">sisi satu</translation>
    </message>
    <message>
        <source>At door %1</source>
        <translation type="unfinished">Di pintu %1</translation>
    </message>
    <message>
        <source>It is not shut. Let it shut first, with the stopwatch.</source>
        <translation type="unfinished">Pintu belum tertutup. Biarkan tertutup dahulu, dengan stopwatch.</translation>
    </message>
    <message>
        <source>You push it from the other side, hard.</source>
        <translation type="unfinished">Anda mendorongnya dari sisi lain, kuat-kuat.</translation>
    </message>
    <message>
        <source>You open it from side two and let go.</source>
        <translation type="unfinished">Anda membukanya dari sisi dua dan melepaskannya.</translation>
    </message>
    <message>
        <source>You open it from side one and let go.</source>
        <translation type="unfinished">Anda membukanya dari sisi satu dan melepaskannya.</translation>
    </message>
    <message>
        <source>Nobody and nothing is in the way now.</source>
        <translation type="unfinished">Kini tidak ada orang dan benda di lintasan.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished">Lihat</translation>
    </message>
    <message>
        <source>Try</source>
        <translation type="unfinished">Coba</translation>
    </message>
    <message>
        <source>The whole door</source>
        <translation type="unfinished">Seluruh pintu</translation>
    </message>
    <message>
        <source>Try and ask</source>
        <translation type="unfinished">Coba dan tanyakan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SceneView</name>
    <message>
        <source>Drawing of a door</source>
        <translation type="unfinished">Gambar pintu</translation>
    </message>
    <message>
        <source>Drawing of door %1, %2, from side %3</source>
        <translation type="unfinished">Gambar pintu %1, %2, dari sisi %3</translation>
    </message>
    <message>
        <source>two</source>
        <translation type="unfinished">dua</translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished">satu</translation>
    </message>
    <message>
        <source>The leaf moves</source>
        <translation type="unfinished">Daun bergerak</translation>
    </message>
    <message>
        <source>The leaf is home</source>
        <translation type="unfinished">Daun tertutup rapat</translation>
    </message>
    <message>
        <source>The leaf stands open</source>
        <translation type="unfinished">Daun terbuka</translation>
    </message>
    <message>
        <source>The leaf stands part open</source>
        <translation type="unfinished">Daun terbuka sebagian</translation>
    </message>
    <message>
        <source>alarm on</source>
        <translation type="unfinished">alarm nyala</translation>
    </message>
    <message>
        <source>somebody is in the opening</source>
        <translation type="unfinished">ada orang di bukaan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ScoreCard</name>
    <message>
        <source>Half for the rows that are right, half for the faults: found of those there and imagined. Ten points less for each person endangered and each caution answered untruly.</source>
        <translation type="unfinished">Separuh untuk butir yang benar, separuh untuk cacat: yang ditemukan dari yang ada dan yang dibayangkan. Dikurangi sepuluh poin untuk setiap orang yang terancam bahaya dan setiap peringatan yang dijawab tidak benar.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished">%1 · %2</translation>
    </message>
    <message>
        <source>Score: %1 percent</source>
        <translation type="unfinished">Skor: %1 persen</translation>
    </message>
    <message>
        <source>Passed: %1 % are asked</source>
        <translation type="unfinished">Lulus: diminta %1 %</translation>
    </message>
    <message>
        <source>Not passed: %1 % are asked</source>
        <translation type="unfinished">Tidak lulus: diminta %1 %</translation>
    </message>
    <message>
        <source>%1 of %2 rows graded right</source>
        <translation type="unfinished">%1 dari %2 butir dinilai benar</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 imagined</source>
        <translation type="unfinished">%1 dari %2 cacat ditemukan, %3 dibayangkan</translation>
    </message>
    <message>
        <source>1 person endangered</source>
        <translation type="unfinished">1 orang terancam bahaya</translation>
    </message>
    <message>
        <source>%1 people endangered</source>
        <translation type="unfinished">%1 orang terancam bahaya</translation>
    </message>
    <message>
        <source>1 caution answered untruly</source>
        <translation type="unfinished">1 peringatan dijawab tidak benar</translation>
    </message>
    <message>
        <source>%1 cautions answered untruly</source>
        <translation type="unfinished">%1 peringatan dijawab tidak benar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SealedForm</name>
    <message>
        <source>The instructor sealed this exercise. The instructor&apos;s word opens it.</source>
        <translation type="unfinished">Instruktur menyegel latihan ini. Kata sandi instruktur membukanya.</translation>
    </message>
    <message>
        <source>the instructor&apos;s word</source>
        <translation type="unfinished">kata sandi instruktur</translation>
    </message>
    <message>
        <source>The instructor&apos;s word</source>
        <translation type="unfinished">Kata sandi instruktur</translation>
    </message>
    <message>
        <source>Show what is typed</source>
        <translation type="unfinished">Tampilkan yang diketik</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Buka latihan ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Cahaya</translation>
    </message>
    <message>
        <source>Night keeps the eyes used to a dark bridge.</source>
        <translation type="unfinished">Malam menjaga mata tetap terbiasa dengan anjungan gelap.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Siang</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Senja</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Malam</translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished">Ukuran</translation>
    </message>
    <message>
        <source>Of words and keys; what no longer fits comes on a page of its own.</source>
        <translation type="unfinished">Ukuran teks dan tombol; yang tidak muat lagi pindah ke halaman sendiri.</translation>
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
        <translation type="unfinished">Sarung tangan</translation>
    </message>
    <message>
        <source>Larger keys, further apart.</source>
        <translation type="unfinished">Tombol lebih besar, lebih renggang.</translation>
    </message>
    <message>
        <source>Bare hands</source>
        <translation type="unfinished">Tangan kosong</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation type="unfinished">Gerakan</translation>
    </message>
    <message>
        <source>Calm: drawn leaves move in quarter steps instead of gliding.</source>
        <translation type="unfinished">Tenang: daun yang digambar bergerak per seperempat, tidak meluncur.</translation>
    </message>
    <message>
        <source>Gliding</source>
        <translation type="unfinished">Meluncur</translation>
    </message>
    <message>
        <source>Calm</source>
        <translation type="unfinished">Tenang</translation>
    </message>
    <message>
        <source>When a mark is taken</source>
        <translation type="unfinished">Saat tanda diambil</translation>
    </message>
    <message>
        <source>A tick and a shake, where this machine has them.</source>
        <translation type="unfinished">Detak dan getar, bila mesin ini memilikinya.</translation>
    </message>
    <message>
        <source>Tick and shake</source>
        <translation type="unfinished">Detak dan getar</translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation type="unfinished">Senyap</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Satuan</translation>
    </message>
    <message>
        <source>Limits stay in the unit of their text, beside the figure.</source>
        <translation type="unfinished">Batas tetap dalam satuan teksnya, di samping angka.</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation type="unfinished">Metrik</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation type="unfinished">Satuan AS</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Bahasa</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Pilih</translation>
    </message>
    <message>
        <source>Times and limits</source>
        <translation type="unfinished">Waktu dan batas</translation>
    </message>
    <message>
        <source>Say first who records, in a plan: a thumb is somebody&apos;s.</source>
        <translation type="unfinished">Sebutkan dahulu pencatat dalam rencana: jempol selalu milik seseorang.</translation>
    </message>
    <message>
        <source>Thumb drill</source>
        <translation type="unfinished">Latihan jempol</translation>
    </message>
    <message>
        <source>When a figure passes</source>
        <translation type="unfinished">Kapan angka lulus</translation>
    </message>
    <message>
        <source>Rules of this vessel</source>
        <translation type="unfinished">Aturan kapal ini</translation>
    </message>
    <message>
        <source>The catalogue alone; no flag&apos;s own rules over it.</source>
        <translation type="unfinished">Hanya katalog; tanpa aturan negara bendera di atasnya.</translation>
    </message>
    <message>
        <source>The rules of %1 stand over the catalogue.</source>
        <translation type="unfinished">Aturan %1 berada di atas katalog.</translation>
    </message>
    <message>
        <source>Take in a flag&apos;s rules</source>
        <translation type="unfinished">Impor aturan bendera</translation>
    </message>
    <message>
        <source>Catalogue alone</source>
        <translation type="unfinished">Hanya katalog</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Sheet</name>
    <message>
        <source>Close</source>
        <translation type="unfinished">Tutup</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SheetPages</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Tadi</translation>
    </message>
    <message>
        <source>More ›</source>
        <translation type="unfinished">Lagi ›</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 dari %2</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SideKeys</name>
    <message>
        <source>Stop the test</source>
        <translation type="unfinished">Hentikan uji</translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation type="unfinished">Urungkan tanda terakhir</translation>
    </message>
    <message>
        <source>This run is spoiled: run again</source>
        <translation type="unfinished">Uji ini batal: ulangi</translation>
    </message>
    <message>
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Tanda</translation>
    </message>
    <message>
        <source>Slips ›</source>
        <translation type="unfinished">Keliru ›</translation>
    </message>
    <message>
        <source>Show the marks out of turn</source>
        <translation type="unfinished">Tampilkan tanda di luar urutan</translation>
    </message>
    <message>
        <source>Show take back and spoiled</source>
        <translation type="unfinished">Tampilkan urungkan dan uji batal</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished">Urungkan</translation>
    </message>
    <message>
        <source>Take back
last mark</source>
        <translation type="unfinished">Urungkan
tanda akhir</translation>
    </message>
    <message>
        <source>Spoiled</source>
        <translation type="unfinished">Uji batal</translation>
    </message>
    <message>
        <source>Spoiled,
run again</source>
        <translation type="unfinished">Uji batal,
ulangi</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>‹ Before</source>
        <translation type="unfinished">‹ Tadi</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StepRows</name>
    <message>
        <source>Measure</source>
        <translation type="unfinished">Ukur</translation>
    </message>
    <message>
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Gaya tutup di tepi, dengan neraca pegas</translation>
    </message>
    <message>
        <source>What does the plate on the door read?</source>
        <translation type="unfinished">Apa yang tertulis pada pelat pintu?</translation>
    </message>
    <message>
        <source>Read plate</source>
        <translation type="unfinished">Baca pelat</translation>
    </message>
    <message>
        <source>What class does the boundary ask for?</source>
        <translation type="unfinished">Kelas apa yang diminta pembatas?</translation>
    </message>
    <message>
        <source>Fire tables</source>
        <translation type="unfinished">Tabel api</translation>
    </message>
    <message>
        <source>Release %1</source>
        <translation type="unfinished">Pelepasan %1</translation>
    </message>
    <message>
        <source>Type in</source>
        <translation type="unfinished">Ketik</translation>
    </message>
    <message>
        <source>Time it ›</source>
        <translation type="unfinished">Ukur waktu ›</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand</source>
        <translation type="unfinished">Kontak dengan balok lunak, jangan pernah tangan</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Kemiringan kapal kini</translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished">Ubah</translation>
    </message>
    <message>
        <source>not yet tried</source>
        <translation type="unfinished">belum dicoba</translation>
    </message>
    <message>
        <source>not yet measured</source>
        <translation type="unfinished">belum diukur</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation type="unfinished">belum dibaca</translation>
    </message>
    <message>
        <source>%1 degrees: over 1 degree a time is advice only</source>
        <translation type="unfinished">%1 derajat: di atas 1 derajat, waktu hanya saran</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation type="unfinished">%1 derajat</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished">terukur %1</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Kemiringan kapal di pintu ini</translation>
    </message>
    <message>
        <source>Walked by %1, %2 at %3</source>
        <translation type="unfinished">Diperiksa oleh %1, %2 pukul %3</translation>
    </message>
    <message>
        <source>Letters y, n, a: yes, no, n/a at the bar.</source>
        <translation type="unfinished">Huruf y, n, a: ya, tidak, t/b di bilah.</translation>
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
        <translation type="unfinished">kontak</translation>
    </message>
    <message>
        <source>release %1</source>
        <translation type="unfinished">pelepasan %1</translation>
    </message>
    <message>
        <source> · cautions confirmed by %1</source>
        <translation type="unfinished"> · peringatan dikonfirmasi oleh %1</translation>
    </message>
    <message>
        <source>Door %1 · run %2</source>
        <translation type="unfinished">Pintu %1 · uji %2</translation>
    </message>
    <message>
        <source>no mark yet</source>
        <translation type="unfinished">belum ada tanda</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Tidak tersimpan</translation>
    </message>
    <message>
        <source>Alarm before movement</source>
        <translation type="unfinished">Alarm sebelum gerak</translation>
    </message>
    <message>
        <source>Leaf moving</source>
        <translation type="unfinished">Daun bergerak</translation>
    </message>
    <message>
        <source> (advice only)</source>
        <translation type="unfinished"> (hanya saran)</translation>
    </message>
    <message>
        <source>marked: %1. Next: %2</source>
        <translation type="unfinished">ditandai: %1. Berikut: %2</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">menyimpan…</translation>
    </message>
    <message>
        <source>Moves,
no alarm</source>
        <translation type="unfinished">Bergerak,
tanpa alarm</translation>
    </message>
    <message>
        <source>Alarm stopped</source>
        <translation type="unfinished">Alarm berhenti</translation>
    </message>
    <message>
        <source>Alarm
comes late</source>
        <translation type="unfinished">Alarm
terlambat</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TopBar</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished">Urung</translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished">Kembali</translation>
    </message>
    <message>
        <source>%1 of %2 doors</source>
        <translation type="unfinished">%1 dari %2 pintu</translation>
    </message>
    <message>
        <source>Undo: nothing to take back</source>
        <translation type="unfinished">Urung: tidak ada yang dapat diurungkan</translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished">Siang</translation>
    </message>
    <message>
        <source>Dusk</source>
        <translation type="unfinished">Senja</translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished">Malam</translation>
    </message>
    <message>
        <source>Light: %1. Press for the next</source>
        <translation type="unfinished">Cahaya: %1. Tekan untuk yang berikut</translation>
    </message>
    <message>
        <source>Undo: see what can be taken back</source>
        <translation type="unfinished">Urungkan: lihat apa yang dapat ditarik kembali</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TrendChart</name>
    <message>
        <source>One time</source>
        <translation type="unfinished">Satu waktu</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation type="unfinished">%1 waktu</translation>
    </message>
    <message>
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Sejak perbaikan sekitar %1: </translation>
    </message>
    <message>
        <source>%1 so far, too few to say what comes: five over at least a year are needed.</source>
        <translation type="unfinished">%1 sejauh ini, terlalu sedikit untuk mengatakan yang akan datang: perlu lima selama minimal setahun.</translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, berubah %2 per tahun. </translation>
    </message>
    <message>
        <source>A time beyond %1 is to be expected now: the 95 % interval reaches it already.</source>
        <translation type="unfinished">Waktu di luar %1 kini dapat diperkirakan: interval 95 % sudah mencapainya.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have it seen to before.</source>
        <translation type="unfinished">Interval 95 % pertama kali mencapai %1 pada %2: minta diperbaiki sebelum itu.</translation>
    </message>
    <message>
        <source>No limit is reached by %1, and these times do not reach further.</source>
        <translation type="unfinished">Tidak ada batas yang dicapai sampai %1, dan data waktu ini tidak menjangkau lebih jauh.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TypedRun</name>
    <message>
        <source>Were the cautions ticked on the paper?</source>
        <translation type="unfinished">Apakah peringatan dicentang pada kertas?</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation type="unfinished">Semuanya</translation>
    </message>
    <message>
        <source>Not all: enter the run without them</source>
        <translation type="unfinished">Tidak semua: masukkan uji tanpanya</translation>
    </message>
    <message>
        <source>From the paper: release %1</source>
        <translation type="unfinished">Dari kertas: pelepasan %1</translation>
    </message>
    <message>
        <source>from “%1” to “%2”</source>
        <translation type="unfinished">dari “%1” sampai “%2”</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
    </message>
    <message>
        <source>No leaf moves so fast. A slip of the finger? Else type it again.</source>
        <translation type="unfinished">Tidak ada daun pintu yang bergerak secepat itu. Salah ketik? Jika tidak, ketik lagi.</translation>
    </message>
    <message>
        <source>No alarm sounded</source>
        <translation type="unfinished">Tidak ada alarm berbunyi</translation>
    </message>
    <message>
        <source>Did an alarm sound?</source>
        <translation type="unfinished">Apakah alarm berbunyi?</translation>
    </message>
    <message>
        <source>It sounded: type the seconds</source>
        <translation type="unfinished">Berbunyi: ketik detiknya</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>What is asked of this door, worst first</source>
        <translation type="unfinished">Yang diminta dari pintu ini, terburuk dahulu</translation>
    </message>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Pintu %1: %2, %3</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return to be told why</source>
        <translation type="unfinished">tekan Return untuk tahu alasannya</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselCard</name>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Kapal ini</translation>
    </message>
    <message>
        <source>No walkdown yet.</source>
        <translation type="unfinished">Belum ada inspeksi.</translation>
    </message>
    <message>
        <source>What falls due</source>
        <translation type="unfinished">Yang jatuh tempo</translation>
    </message>
    <message>
        <source>Due ›</source>
        <translation type="unfinished">Tenggat ›</translation>
    </message>
    <message>
        <source>Other vessels</source>
        <translation type="unfinished">Kapal lain</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Pengaturan</translation>
    </message>
    <message>
        <source>All %1 walkdowns</source>
        <translation type="unfinished">Semua %1 inspeksi</translation>
    </message>
    <message>
        <source>All %1 walkdowns ›</source>
        <translation type="unfinished">Semua %1 inspeksi ›</translation>
    </message>
    <message>
        <source>All %1 ›</source>
        <translation type="unfinished">Semua %1 ›</translation>
    </message>
    <message>
        <source>Practice ›</source>
        <translation type="unfinished">Latihan ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VesselChoice</name>
    <message>
        <source>This vessel cannot be opened</source>
        <translation type="unfinished">Kapal ini tidak dapat dibuka</translation>
    </message>
    <message>
        <source>Vessels on this tablet</source>
        <translation type="unfinished">Kapal di tablet ini</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished">Coba lagi</translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished">Buka</translation>
    </message>
    <message>
        <source>Take in a register (CSV)</source>
        <translation type="unfinished">Impor register (CSV)</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkdownCard</name>
    <message>
        <source>All doors</source>
        <translation type="unfinished">Semua pintu</translation>
    </message>
    <message>
        <source>End the walkdown</source>
        <translation type="unfinished">Akhiri inspeksi</translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished">selesai</translation>
    </message>
    <message>
        <source>sat.</source>
        <translation type="unfinished">baik</translation>
    </message>
    <message>
        <source>to settle</source>
        <translation type="unfinished">belum pasti</translation>
    </message>
    <message>
        <source>unsat.</source>
        <translation type="unfinished">tidak baik</translation>
    </message>
    <message>
        <source>Walkdown under way</source>
        <translation type="unfinished">Inspeksi sedang berjalan</translation>
    </message>
    <message>
        <source>No walkdown under way</source>
        <translation type="unfinished">Tidak ada inspeksi berjalan</translation>
    </message>
    <message>
        <source>%1, %2. Begun %3 at %4 by %5</source>
        <translation type="unfinished">%1, %2. Dimulai %3 di %4 oleh %5</translation>
    </message>
    <message>
        <source>The last one: %1, %2. Ended %3</source>
        <translation type="unfinished">Yang terakhir: %1, %2. Berakhir %3</translation>
    </message>
    <message>
        <source>Begin a walkdown ›</source>
        <translation type="unfinished">Mulai inspeksi ›</translation>
    </message>
    <message>
        <source>All doors done: end the walkdown ›</source>
        <translation type="unfinished">Semua pintu selesai: akhiri inspeksi ›</translation>
    </message>
    <message>
        <source>Carry on at %1 ›</source>
        <translation type="unfinished">Lanjutkan di %1 ›</translation>
    </message>
    <message>
        <source>This register has no doors yet, so there is nothing to walk. Take in a register that lists them.</source>
        <translation type="unfinished">Register ini belum punya pintu, jadi tidak ada yang diinspeksi. Impor register yang mendaftarnya.</translation>
    </message>
    <message>
        <source>Nothing was tested yet with this register. A walkdown begins with a plan: who, which doors, in which order.</source>
        <translation type="unfinished">Belum ada yang diuji dengan register ini. Inspeksi dimulai dengan rencana: siapa, pintu mana, dalam urutan apa.</translation>
    </message>
    <message>
        <source>Take in a register ›</source>
        <translation type="unfinished">Impor register ›</translation>
    </message>
    <message>
        <source>Look at the doors ›</source>
        <translation type="unfinished">Lihat pintu-pintunya ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
    <message>
        <source>From paper: who walked?</source>
        <translation type="unfinished">Dari kertas: siapa yang memeriksa?</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished">Orang lain</translation>
    </message>
    <message>
        <source>From paper: on which day?</source>
        <translation type="unfinished">Dari kertas: hari apa?</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">hari ini</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished">kemarin</translation>
    </message>
    <message>
        <source>two days ago</source>
        <translation type="unfinished">dua hari lalu</translation>
    </message>
    <message>
        <source>From paper: at what time?</source>
        <translation type="unfinished">Dari kertas: pukul berapa?</translation>
    </message>
    <message>
        <source>ship&apos;s time of this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">waktu kapal di pintu ini, jam dan menit: 1432 adalah 14:32</translation>
    </message>
    <message>
        <source>That is later than now.</source>
        <translation type="unfinished">Itu lebih lambat dari sekarang.</translation>
    </message>
    <message>
        <source>There is no such time of day.</source>
        <translation type="unfinished">Tidak ada jam seperti itu.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
    <message>
        <source>You decide. First the reason:</source>
        <translation type="unfinished">Anda putuskan. Alasannya dahulu:</translation>
    </message>
    <message>
        <source>Satisfactory</source>
        <translation type="unfinished">Memuaskan</translation>
    </message>
    <message>
        <source>Unsatisfactory</source>
        <translation type="unfinished">Tidak memuaskan</translation>
    </message>
    <message>
        <source>Why this verdict</source>
        <translation type="unfinished">Mengapa putusan ini</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished">Terukur</translation>
    </message>
    <message>
        <source> (k = 2)</source>
        <translation type="unfinished"> (k = 2)</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Batas</translation>
    </message>
    <message>
        <source>%1, set by %2</source>
        <translation type="unfinished">%1, ditetapkan oleh %2</translation>
    </message>
    <message>
        <source>On an inclined ship</source>
        <translation type="unfinished">Pada kapal yang miring</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation type="unfinished">Apa yang dicari</translation>
    </message>
    <message>
        <source>What would settle it</source>
        <translation type="unfinished">Apa yang memastikannya</translation>
    </message>
    <message>
        <source>Asked because</source>
        <translation type="unfinished">Ditanya karena</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Teks</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished">Status</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; aturan %2</translation>
    </message>
    <message>
        <source>How much hangs on it</source>
        <translation type="unfinished">Seberapa besar akibatnya</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Alasan: %1</translation>
    </message>
</context>
<context>
    <name>latchround::ui::Window</name>
    <message>
        <source>Not armed</source>
        <translation type="unfinished">Belum disiapkan</translation>
    </message>
    <message>
        <source>NOT SAVED (%1)</source>
        <translation type="unfinished">TIDAK TERSIMPAN (%1)</translation>
    </message>
    <message>
        <source>saved %1</source>
        <translation type="unfinished">tersimpan %1</translation>
    </message>
    <message>
        <source>%1 ship (%2)</source>
        <translation type="unfinished">%1 kapal (%2)</translation>
    </message>
    <message>
        <source>PRACTICE · %1 · Latchround</source>
        <translation type="unfinished">LATIHAN · %1 · Latchround</translation>
    </message>
    <message>
        <source>End this exercise?</source>
        <translation type="unfinished">Akhiri latihan ini?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Semua pintu selesai.</translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tried counts as not found.</source>
        <translation type="unfinished">%1 dari %2 selesai. Yang tidak dicoba dihitung tidak ditemukan.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished">Lanjutkan</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Akhiri dan evaluasi</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished">Tidak disimpan</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished">Pengaturan</translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished">Bahasa</translation>
    </message>
    <message>
        <source>In use</source>
        <translation type="unfinished">Dipakai</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Pakai</translation>
    </message>
    <message>
        <source>Papers are printed in English; what you write stands as written.</source>
        <translation type="unfinished">Dokumen dicetak dalam bahasa Inggris; yang Anda tulis tetap apa adanya.</translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished">Nanti</translation>
    </message>
    <message>
        <source>The words change when the exercise has ended.</source>
        <translation type="unfinished">Bahasa berganti setelah latihan berakhir.</translation>
    </message>
    <message>
        <source>Whose thumb?</source>
        <translation type="unfinished">Jempol siapa?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records.</source>
        <translation type="unfinished">Rencanakan inspeksi dahulu dan sebutkan pencatatnya.</translation>
    </message>
    <message>
        <source>%1 has done no thumb drill on this tablet: published figures stand.</source>
        <translation type="unfinished">%1 belum melakukan latihan jempol di tablet ini: angka terbitan berlaku.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 melakukan latihan jempol pada %2; layak diulang sejak %3.</translation>
    </message>
    <message>
        <source>%1 did the thumb drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 melakukan latihan jempol pada %2; layak diulang setelah %3.</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Kapan angka lulus atau gagal</translation>
    </message>
    <message>
        <source>Not taken in</source>
        <translation type="unfinished">Tidak diimpor</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation type="unfinished">Tidak dilakukan</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished">Tutup</translation>
    </message>
    <message>
        <source>Take the photograph</source>
        <translation type="unfinished">Ambil foto</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Katalog</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.bmp)</source>
        <translation type="unfinished">Gambar (*.jpg *.jpeg *.png *.webp *.bmp)</translation>
    </message>
    <message>
        <source>%1 doors, %2 zones</source>
        <translation type="unfinished">%1 pintu, %2 zona</translation>
    </message>
    <message>
        <source>Register of a vessel</source>
        <translation type="unfinished">Register kapal</translation>
    </message>
    <message>
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Register CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules of a flag</source>
        <translation type="unfinished">Aturan bendera</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Aturan (*.json)</translation>
    </message>
    <message>
        <source>1 fact</source>
        <translation type="unfinished">1 fakta</translation>
    </message>
    <message>
        <source>%1 facts</source>
        <translation type="unfinished">%1 fakta</translation>
    </message>
    <message>
        <source>1 walkdown</source>
        <translation type="unfinished">1 inspeksi</translation>
    </message>
    <message>
        <source>%1 walkdowns</source>
        <translation type="unfinished">%1 inspeksi</translation>
    </message>
    <message>
        <source>1 person</source>
        <translation type="unfinished">1 orang</translation>
    </message>
    <message>
        <source>%1 people</source>
        <translation type="unfinished">%1 orang</translation>
    </message>
    <message>
        <source>1 photograph</source>
        <translation type="unfinished">1 foto</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation type="unfinished">%1 foto</translation>
    </message>
    <message>
        <source>1 issue of the arrangement</source>
        <translation type="unfinished">1 terbitan susunan</translation>
    </message>
    <message>
        <source>%1 issues of the arrangement</source>
        <translation type="unfinished">%1 terbitan susunan</translation>
    </message>
    <message>
        <source>1 door that was not known here</source>
        <translation type="unfinished">1 pintu yang belum dikenal di sini</translation>
    </message>
    <message>
        <source>%1 doors that were not known here</source>
        <translation type="unfinished">%1 pintu yang belum dikenal di sini</translation>
    </message>
    <message>
        <source>1 difference to decide</source>
        <translation type="unfinished">1 perbedaan untuk diputuskan</translation>
    </message>
    <message>
        <source>%1 differences to decide</source>
        <translation type="unfinished">%1 perbedaan untuk diputuskan</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation type="unfinished">Tidak ditampilkan</translation>
    </message>
    <message>
        <source>This machine has no program that shows PDF files. The file lies at %1</source>
        <translation type="unfinished">Mesin ini tidak punya program yang menampilkan PDF. Berkas ada di %1</translation>
    </message>
    <message>
        <source>Hand over to a file</source>
        <translation type="unfinished">Serahkan ke berkas</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Berkas serah terima (*.zip)</translation>
    </message>
    <message>
        <source>Handover file of another device</source>
        <translation type="unfinished">Berkas serah terima perangkat lain</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">perangkat %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercise of an instructor</source>
        <translation type="unfinished">Latihan dari instruktur</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished">Latihan (*.json)</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation type="unfinished">Tidak dicatat</translation>
    </message>
    <message>
        <source>A run is being timed: a leaf may be moving. Closing stops the run.</source>
        <translation type="unfinished">Uji sedang diukur: daun pintu mungkin bergerak. Menutup menghentikan uji.</translation>
    </message>
    <message>
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing loses them.</source>
        <translation type="unfinished">%1 entri BELUM tersimpan dan tidak dapat disimpan di tempat lain. Menutup akan menghilangkannya.</translation>
    </message>
    <message>
        <source>What is written in the open sheet is not recorded. Closing loses it.</source>
        <translation type="unfinished">Yang ditulis di lembar terbuka belum dicatat. Menutup akan menghilangkannya.</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">Tutup program?</translation>
    </message>
    <message>
        <source>Go on here</source>
        <translation type="unfinished">Lanjutkan di sini</translation>
    </message>
    <message>
        <source>Close all the same</source>
        <translation type="unfinished">Tetap tutup</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Tidak terbaca</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation type="unfinished">menyimpan…</translation>
    </message>
    <message>
        <source>The register is being looked through</source>
        <translation type="unfinished">Register sedang diperiksa</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">pintu %1 geladak %2 %3</translation>
    </message>
    <message>
        <source>bulkhead %1 does not hold: %2</source>
        <translation type="unfinished">sekat %1 tidak bertahan: %2</translation>
    </message>
    <message>
        <source>bulkhead %1: %2</source>
        <translation type="unfinished">sekat %1: %2</translation>
    </message>
    <message>
        <source>no doors</source>
        <translation type="unfinished">tanpa pintu</translation>
    </message>
    <message>
        <source>Zone profile</source>
        <translation type="unfinished">Profil zona</translation>
    </message>
    <message>
        <source>closer</source>
        <translation type="unfinished">perbesar</translation>
    </message>
    <message>
        <source>further away</source>
        <translation type="unfinished">perkecil</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Semua</translation>
    </message>
    <message>
        <source>the whole ship</source>
        <translation type="unfinished">seluruh kapal</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">dan %1 lagi</translation>
    </message>
    <message>
        <source>This register has no doors yet.</source>
        <translation type="unfinished">Register ini belum punya pintu.</translation>
    </message>
    <message>
        <source>door %1, deck %2, %3</source>
        <translation type="unfinished">pintu %1, geladak %2, %3</translation>
    </message>
    <message>
        <source>door %1 %2</source>
        <translation type="unfinished">pintu %1 %2</translation>
    </message>
    <message>
        <source>deck %1, other doors: %2</source>
        <translation type="unfinished">geladak %1, pintu lain: %2</translation>
    </message>
    <message>
        <source>Which door?</source>
        <translation type="unfinished">Pintu mana?</translation>
    </message>
</context>
</TS>
