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
        <source>; area %1, limit %2</source>
        <translation type="unfinished">; luas %1, batas %2</translation>
    </message>
    <message>
        <source>repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">memperbaiki pintu %1 di sekat %2 memulihkan pemisahan paling banyak</translation>
    </message>
    <message>
        <source>repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">memperbaiki pintu %1 di sekat %2 memulihkan pemisahan paling banyak</translation>
    </message>
    <message>
        <source>not yet proven: bulkhead %1</source>
        <translation type="unfinished">belum terbukti: sekat %1</translation>
    </message>
    <message>
        <source>not yet proven: bulkheads %1</source>
        <translation type="unfinished">belum terbukti: sekat %1</translation>
    </message>
    <message>
        <source>bulkhead %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, panjang %3</translation>
    </message>
    <message>
        <source>bulkheads %1: zones %2 act as one, %3 long</source>
        <translation type="unfinished">sekat %1: zona %2 menjadi satu, panjang %3</translation>
    </message>
    <message>
        <source>; limit %1, %2 maximum</source>
        <translation type="unfinished">; batas %1, maksimal %2</translation>
    </message>
    <message>
        <source>; %1 maximum</source>
        <translation type="unfinished">; maksimal %1</translation>
    </message>
    <message>
        <source>; limit %1 in cabin areas</source>
        <translation type="unfinished">; batas %1 di daerah kabin</translation>
    </message>
    <message>
        <source>; limit %1</source>
        <translation type="unfinished">; batas %1</translation>
    </message>
</context>
<context>
    <name>Catalogue</name>
    <message>
        <source>Travel path clear on both sides</source>
        <translation type="unfinished">Lintasan bebas di kedua sisi</translation>
    </message>
    <message>
        <source>Travel path clear, both sides?</source>
        <translation type="unfinished">Lintasan bebas, kedua sisi?</translation>
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
        <source>Free of wedges, ropes and furniture?</source>
        <translation type="unfinished">Bebas ganjal, tali, dan perabot?</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped</source>
        <translation type="unfinished">Engsel kencang, daun pintu tidak turun</translation>
    </message>
    <message>
        <source>Hinges tight, leaf not dropped?</source>
        <translation type="unfinished">Engsel kencang, daun pintu tidak turun?</translation>
    </message>
    <message>
        <source>Closer dry, arm connected?</source>
        <translation type="unfinished">Penutup pintu otomatis kering, lengan tersambung?</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean?</source>
        <translation type="unfinished">Rel, rol, dan pemandu bersih?</translation>
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
        <source>Latches fully, unaided, and stays latched when pushed</source>
        <translation type="unfinished">Terkancing penuh, tanpa bantuan, dan tetap terkancing bila didorong</translation>
    </message>
    <message>
        <source>Latches unaided, stays latched when pushed?</source>
        <translation type="unfinished">Terkancing sendiri, tetap terkancing bila didorong?</translation>
    </message>
    <message>
        <source>Safety edge stops the leaf and lets it re-open</source>
        <translation type="unfinished">Tepi pengaman menghentikan daun pintu dan membiarkannya membuka lagi</translation>
    </message>
    <message>
        <source>Does the safety edge stop and re-open it?</source>
        <translation type="unfinished">Apakah tepi pengaman menghentikan dan membukanya lagi?</translation>
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
        <source>Does it close by itself?</source>
        <translation type="unfinished">Apakah menutup sendiri?</translation>
    </message>
    <message>
        <source>Hinged door shuts 10 to 40 s after its first movement, ship upright</source>
        <translation type="unfinished">Pintu berengsel menutup 10 sampai 40 s setelah gerak pertamanya, kapal tegak</translation>
    </message>
    <message>
        <source>Sliding door closes at a roughly uniform 0.1 to 0.2 m/s, ship upright</source>
        <translation type="unfinished">Pintu geser menutup kira-kira seragam 0,1 sampai 0,2 m/s, kapal tegak</translation>
    </message>
    <message>
        <source>Can be released from the continuously manned central control station</source>
        <translation type="unfinished">Penahannya dapat dilepas dari stasiun kontrol pusat yang dijaga terus-menerus</translation>
    </message>
    <message>
        <source>Does the control station release it?</source>
        <translation type="unfinished">Apakah stasiun kontrol melepas penahannya?</translation>
    </message>
    <message>
        <source>Can be released at the door, from both sides</source>
        <translation type="unfinished">Penahannya dapat dilepas di pintu, dari kedua sisi</translation>
    </message>
    <message>
        <source>Does the switch on this side release it?</source>
        <translation type="unfinished">Apakah sakelar di sisi ini melepas penahannya?</translation>
    </message>
    <message>
        <source>No hold-back hook that the control station cannot release</source>
        <translation type="unfinished">Tidak ada kait penahan yang tidak dapat dilepas stasiun kontrol</translation>
    </message>
    <message>
        <source>Free of hooks the control station cannot release?</source>
        <translation type="unfinished">Bebas kait penahan yang tidak dapat dilepas stasiun kontrol?</translation>
    </message>
    <message>
        <source>Opens from this side after remote closing, then shuts by itself?</source>
        <translation type="unfinished">Dapat dibuka dari sisi ini setelah ditutup dari jauh, lalu menutup sendiri?</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows whether it is closed</source>
        <translation type="unfinished">Panel stasiun kontrol menunjukkan apakah pintu tertutup</translation>
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
        <source>Ten full cycles from the local accumulator?</source>
        <translation type="unfinished">Sepuluh siklus penuh dari akumulator setempat?</translation>
    </message>
    <message>
        <source>A failure at one door leaves the others working</source>
        <translation type="unfinished">Kegagalan di satu pintu membiarkan pintu lain tetap bekerja</translation>
    </message>
    <message>
        <source>The alarm sounds until the door is completely closed</source>
        <translation type="unfinished">Alarm berbunyi sampai pintu tertutup sepenuhnya</translation>
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
        <source>Does the latch engage by itself after release?</source>
        <translation type="unfinished">Apakah kancing masuk sendiri setelah pelepasan?</translation>
    </message>
    <message>
        <source>Can the local control parts be reached?</source>
        <translation type="unfinished">Dapatkah komponen kendali setempat dijangkau?</translation>
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
        <source>Non-combustible sill; floor covering does not run under the closed door</source>
        <translation type="unfinished">Ambang tak mudah terbakar; pelapis lantai tidak menerus di bawah pintu tertutup</translation>
    </message>
    <message>
        <source>Sill non-combustible, floor covering stops at it?</source>
        <translation type="unfinished">Ambang tak mudah terbakar, pelapis lantai berhenti di situ?</translation>
    </message>
    <message>
        <source>Gap under a door approved without a sill in its frame is no more than 25 mm</source>
        <translation type="unfinished">Celah di bawah pintu yang disetujui tanpa ambang di kusennya tidak lebih dari 25 mm</translation>
    </message>
    <message>
        <source>Vent opening in or under the door, net</source>
        <translation type="unfinished">Lubang ventilasi di pintu atau di bawahnya, bersih</translation>
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
        <source>Closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Menutup sendiri melawan kemiringan 3,5 derajat</translation>
    </message>
    <message>
        <source>Open one leaf alone and let it go; then the other. Good: each shuts and latches alone. Bad: one needs the other, or does not latch.</source>
        <translation type="unfinished">Buka satu daun pintu saja dan lepaskan; lalu yang lain. Baik: masing-masing menutup dan terkancing sendiri. Buruk: yang satu memerlukan yang lain, atau tidak terkancing.</translation>
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
        <source>One leaf at most 1200 mm wide</source>
        <translation type="unfinished">Satu daun pintu lebarnya maksimal 1200 mm</translation>
    </message>
    <message>
        <source>One leaf, from the hinge side to the free edge. 48 inches.</source>
        <translation type="unfinished">Satu daun pintu, dari sisi engsel ke tepi bebas. 48 inci.</translation>
    </message>
    <message>
        <source>A door in a deck, for crew only, closes in 5 to 10 s</source>
        <translation type="unfinished">Pintu pada lantai geladak, hanya untuk awak, menutup dalam 5 sampai 10 s</translation>
    </message>
    <message>
        <source>Force to release the latch of a door in a deck: at most 17.8 N</source>
        <translation type="unfinished">Gaya untuk melepas kancing pintu pada lantai geladak: maksimal 17,8 N</translation>
    </message>
    <message>
        <source>Force to set a door in a deck in motion: at most 44.5 N</source>
        <translation type="unfinished">Gaya untuk mulai menggerakkan pintu pada lantai geladak: maksimal 44,5 N</translation>
    </message>
    <message>
        <source>Latch free: hook a spring gauge at the free edge and pull until the door just moves. The greatest force counts.</source>
        <translation type="unfinished">Kancing bebas: kaitkan neraca pegas di tepi bebas dan tarik sampai pintu tepat bergerak. Gaya terbesar yang dihitung.</translation>
    </message>
    <message>
        <source>Force to open a door in a deck to the stair&apos;s width: at most 17.8 N</source>
        <translation type="unfinished">Gaya untuk membuka pintu pada lantai geladak selebar tangga: maksimal 17,8 N</translation>
    </message>
    <message>
        <source>Is the release system approved to SOLAS 74 II-2/30.4.3?</source>
        <translation type="unfinished">Apakah sistem pelepasan disetujui menurut SOLAS 74 II-2/30.4.3?</translation>
    </message>
    <message>
        <source>Control stations</source>
        <translation type="unfinished">Stasiun kontrol</translation>
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
        <translation type="unfinished">tangga dalam, lift, eskalator, dan jalur penyelamatan diri (escape trunk) tertutup penuh bagi penumpang atau awak, dengan selubungnya (bukan yang seluruhnya di dalam ruang permesinan)</translation>
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
        <translation type="unfinished">Stasiun evakuasi dan jalur evakuasi luar</translation>
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
        <translation type="unfinished">tangga luar dan geladak terbuka yang merupakan jalur evakuasi</translation>
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
        <source>Accommodation spaces of moderate fire risk</source>
        <translation type="unfinished">Ruang akomodasi berisiko kebakaran sedang</translation>
    </message>
    <message>
        <source>category 6 rooms with ordinary furnishings</source>
        <translation type="unfinished">ruang kategori 6 dengan perabot biasa</translation>
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
        <source>inside stairs, lifts, escalators and fully enclosed escape trunks with their enclosures (not those wholly inside machinery spaces)</source>
        <translation type="unfinished">tangga dalam, lift, eskalator, dan jalur penyelamatan diri (escape trunk) tertutup penuh dengan selubungnya (bukan yang seluruhnya di dalam ruang permesinan)</translation>
    </message>
    <message>
        <source>Service spaces (low risk)</source>
        <translation type="unfinished">Ruang layanan (risiko rendah)</translation>
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
        <source>Open decks (not safety areas)</source>
        <translation type="unfinished">Geladak terbuka (bukan daerah aman)</translation>
    </message>
    <message>
        <source>deck permanently open on one or more sides with no covered spot 4.5 m or more from the opening</source>
        <translation type="unfinished">geladak yang selalu terbuka di satu sisi atau lebih tanpa bagian tertutup 4,5 m atau lebih dari bukaan</translation>
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
        <translation type="unfinished">Ujian: seluruh kapal praktik</translation>
    </message>
    <message>
        <source>First steps: time a closing</source>
        <translation type="unfinished">Langkah awal: ukur waktu menutup</translation>
    </message>
    <message>
        <source>First steps: look before it moves</source>
        <translation type="unfinished">Langkah awal: lihat sebelum bergerak</translation>
    </message>
    <message>
        <source>Sliding doors and their alarm</source>
        <translation type="unfinished">Pintu geser dan alarmnya</translation>
    </message>
    <message>
        <source>Held open in a stairway</source>
        <translation type="unfinished">Ditahan terbuka di tangga</translation>
    </message>
    <message>
        <source>Two leaves, and doors that swing</source>
        <translation type="unfinished">Dua daun, dan pintu yang mengayun</translation>
    </message>
    <message>
        <source>Ship&apos;s side down to the lightest waterline, and superstructure/deckhouse sides, below or beside rafts and evacuation slides: A-30 is enough.</source>
        <translation type="unfinished">Lambung kapal hingga garis air teringan, dan sisi bangunan atas/rumah geladak, di bawah atau di samping rakit dan luncuran evakuasi: A-30 cukup.</translation>
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
        <source>Value in force for ships built on or after 1 July 2014; older ships keep at least the earlier value.</source>
        <translation type="unfinished">Nilai berlaku untuk kapal yang dibangun pada atau setelah 1 Juli 2014; kapal lama mempertahankan minimal nilai sebelumnya.</translation>
    </message>
    <message>
        <source>Division must be steel or equivalent but need not reach A class. Where a deck (other than an open deck) is pierced by cables, pipes or ducts, the hole should be made tight against flame and smoke. An emergency generator control station may have air intakes to open deck without closures unless a fixed gas system is fitted. Where the deck is a main vertical zone boundary (2.2.1.1.2), read * in table 9.4 as A-0 except for categories 8 and 10.</source>
        <translation type="unfinished">Divisi harus baja atau setara tetapi tidak harus mencapai kelas A. Bila geladak (selain geladak terbuka) ditembus kabel, pipa, atau saluran, lubangnya sebaiknya dibuat rapat terhadap nyala dan asap. Stasiun kontrol generator darurat boleh punya lubang masuk udara ke geladak terbuka tanpa penutup kecuali ada sistem gas tetap. Bila geladak adalah pembatas zona vertikal utama (2.2.1.1.2), baca * dalam tabel 9.4 sebagai A-0 kecuali untuk kategori 8 dan 10.</translation>
    </message>
    <message>
        <source>No requirement on these bulkheads under protection methods IIC and IIIC.</source>
        <translation type="unfinished">Tidak ada persyaratan pada sekat ini dengan metode perlindungan IIC dan IIIC.</translation>
    </message>
    <message>
        <source>Bulkheads between wheelhouse, chart room and radio room may be B-0.</source>
        <translation type="unfinished">Sekat antara ruang kemudi, ruang peta, dan ruang radio boleh B-0.</translation>
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
        <translation type="unfinished">Divisi harus baja atau setara tetapi tidak harus mencapai kelas A. Bila geladak (selain geladak terbuka) ditembus kabel, pipa, atau saluran, lubangnya sebaiknya dibuat rapat terhadap nyala dan asap. Stasiun kontrol generator darurat boleh punya lubang masuk udara ke geladak terbuka tanpa penutup kecuali ada sistem gas tetap.</translation>
    </message>
    <message>
        <source>Bulkhead or deck between cargo pump-room and category A machinery space may be pierced by pump shaft glands and the like if lasting gas-tightness is ensured.</source>
        <translation type="unfinished">Sekat atau geladak antara ruang pompa muatan dan ruang permesinan kategori A boleh ditembus oleh paking poros pompa dan sejenisnya bila kekedapan gas yang tahan lama terjamin.</translation>
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
        <source>C is enough between two like spaces; unlike spaces (storeroom and workshop) need A-0.</source>
        <translation type="unfinished">C cukup antara dua ruang sejenis; ruang tidak sejenis (gudang dan bengkel) memerlukan A-0.</translation>
    </message>
    <message>
        <source>Is it a door of a stairway enclosure?</source>
        <translation type="unfinished">Apakah ini pintu selubung tangga?</translation>
    </message>
    <message>
        <source>Door and frame of steel, or equivalent?</source>
        <translation type="unfinished">Pintu dan kusen dari baja, atau setara?</translation>
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
        <source>Height of the quick release above the deck</source>
        <translation type="unfinished">Tinggi pelepas cepat di atas geladak</translation>
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
        <source>The navigation bridge shows whether a fire door to or from a special category space is closed</source>
        <translation type="unfinished">Anjungan menunjukkan apakah pintu kebakaran menuju atau dari ruang kategori khusus tertutup</translation>
    </message>
    <message>
        <source>Closes by itself when its control fails</source>
        <translation type="unfinished">Menutup sendiri bila kendalinya gagal</translation>
    </message>
    <message>
        <source>Does it have a hose port that shuts by itself?</source>
        <translation type="unfinished">Ada lubang selang kebakaran yang menutup sendiri?</translation>
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
        <source>Closes positively by power, or by itself against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Menutup secara pasti dengan tenaga mesin, atau sendiri melawan kemiringan 3,5 derajat</translation>
    </message>
    <message>
        <source>Closes positively, by power or by itself?</source>
        <translation type="unfinished">Menutup secara pasti, dengan tenaga mesin atau sendiri?</translation>
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
        <source>It is closed or released from outside the space, at one place or as few as possible</source>
        <translation type="unfinished">Ditutup atau dilepas penahannya dari luar ruang, di satu tempat atau sesedikit mungkin tempat</translation>
    </message>
    <message>
        <source>Closed or released from outside the space?</source>
        <translation type="unfinished">Ditutup atau dilepas penahannya dari luar ruang?</translation>
    </message>
    <message>
        <source>Steel or equal, and filled with approved insulation where its bulkhead is A-15 or more?</source>
        <translation type="unfinished">Baja atau setara, dan terisi insulasi yang disetujui bila sekatnya A-15 atau lebih?</translation>
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
        <source>Door in a B-class boundary: solid or hollow steel or equal; or noncombustible and approved for it</source>
        <translation type="unfinished">Pintu di pembatas kelas B: baja pejal atau berongga, atau setara; atau tak mudah terbakar dan disetujui untuk itu</translation>
    </message>
    <message>
        <source>Steel or equal, or noncombustible and approved?</source>
        <translation type="unfinished">Baja atau setara, atau tak mudah terbakar dan disetujui?</translation>
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
        <source>Door in a C-class boundary is noncombustible</source>
        <translation type="unfinished">Pintu di pembatas kelas C tak mudah terbakar</translation>
    </message>
    <message>
        <source>Noncombustible?</source>
        <translation type="unfinished">Tak mudah terbakar?</translation>
    </message>
    <message>
        <source>Of hardwood at least 44.5 mm (1 3/4 in) thick?</source>
        <translation type="unfinished">Dari kayu keras, tebal minimal 44,5 mm (1 3/4 in)?</translation>
    </message>
    <message>
        <source>A door to a weather deck in an A-class boundary may be of hardwood, at least 45 mm (1.75 in) thick</source>
        <translation type="unfinished">Pintu ke geladak cuaca di pembatas kelas A boleh dari kayu keras, tebal minimal 45 mm (1,75 in)</translation>
    </message>
    <message>
        <source>Of hardwood at least 45 mm (1.75 in) thick?</source>
        <translation type="unfinished">Dari kayu keras, tebal minimal 45 mm (1,75 in)?</translation>
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
        <source>Clear width of a door used as a means of escape at least 810 mm (32 in)</source>
        <translation type="unfinished">Lebar bersih pintu yang dipakai sebagai jalan penyelamatan diri minimal 810 mm (32 in)</translation>
    </message>
    <message>
        <source>Clear width of a door that only crew use as a means of escape at least 710 mm (28 in)</source>
        <translation type="unfinished">Lebar bersih pintu yang hanya dipakai awak sebagai jalan penyelamatan diri minimal 710 mm (28 in)</translation>
    </message>
    <message>
        <source>Released from the control station and at the door; shuts when the control system fails</source>
        <translation type="unfinished">Penahannya dilepas dari stasiun kontrol dan di pintu; menutup bila sistem kendali gagal</translation>
    </message>
    <message>
        <source>A hold-back, if fitted, is released from the control station and at the door, and when its power fails</source>
        <translation type="unfinished">Alat penahan, bila ada, dilepas dari stasiun kontrol dan di pintu, dan bila dayanya gagal</translation>
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
        <source>Clear width of a door to a stairway at least 711.2 mm (28 in)</source>
        <translation type="unfinished">Lebar bersih pintu ke tangga minimal 711,2 mm (28 in)</translation>
    </message>
    <message>
        <source>Wide enough for the persons it serves?</source>
        <translation type="unfinished">Cukup lebar untuk orang yang dilayaninya?</translation>
    </message>
    <message>
        <source>Where one leaf must always shut first, the second has a stop of at least 12.7 mm (1/2 in)</source>
        <translation type="unfinished">Bila satu daun pintu harus selalu menutup dahulu, yang kedua punya sponing minimal 12,7 mm (1/2 in)</translation>
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
        <source>A door in an A-class or B-class boundary has a latch</source>
        <translation type="unfinished">Pintu di pembatas kelas A atau kelas B punya kancing</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing.</source>
        <translation type="unfinished">Lihat tepi daun pintu. Baik: ada lidah, dan pelat kuncinya di kusen. Buruk: rol, magnet, atau tidak ada apa-apa.</translation>
    </message>
    <message>
        <source>Its latch works from either side</source>
        <translation type="unfinished">Kancingnya bekerja dari kedua sisi</translation>
    </message>
    <message>
        <source>Latch throw at least 19.05 mm (3/4 in) in an A-class bulkhead, 9.525 mm (3/8 in) in a B-class bulkhead</source>
        <translation type="unfinished">Lidah kancing menjulur minimal 19,05 mm (3/4 in) di sekat kelas A, 9,525 mm (3/8 in) di sekat kelas B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class bulkhead, 25.4 mm (1 in) in a B-class bulkhead</source>
        <translation type="unfinished">Celah bawah di atas ambang atau pelapis geladak maksimal 12,7 mm (1/2 in) di sekat kelas A, 25,4 mm (1 in) di sekat kelas B</translation>
    </message>
    <message>
        <source>Undercut above sill or deck covering at most 12.7 mm (1/2 in) in an A-class boundary, 25 mm (1 in) in a B-class boundary</source>
        <translation type="unfinished">Celah bawah di atas ambang atau pelapis geladak maksimal 12,7 mm (1/2 in) di pembatas kelas A, 25 mm (1 in) di pembatas kelas B</translation>
    </message>
    <message>
        <source>No rug or carpet runs through the doorway</source>
        <translation type="unfinished">Tidak ada permadani atau karpet yang menerus melalui pintu</translation>
    </message>
    <message>
        <source>Look at the deck under the open door. Good: sill, bare deck, linoleum or the like. Bad: a rug or carpet that runs through from one side to the other.</source>
        <translation type="unfinished">Lihat geladak di bawah pintu yang terbuka. Baik: ambang, geladak polos, linoleum, atau sejenisnya. Buruk: permadani atau karpet yang menerus dari satu sisi ke sisi lain.</translation>
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
        <source>Is double swing permitted for the use of the space?</source>
        <translation type="unfinished">Apakah ayun dua arah diizinkan untuk penggunaan ruang ini?</translation>
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
        <source>Can only crew reach the space, and do only crew use the door?</source>
        <translation type="unfinished">Apakah hanya awak yang dapat mencapai ruang itu, dan hanya awak yang memakai pintunya?</translation>
    </message>
    <message>
        <source>A door in a deck closes by itself against a list of 3.5 degrees</source>
        <translation type="unfinished">Pintu pada lantai geladak menutup sendiri melawan kemiringan 3,5 derajat</translation>
    </message>
    <message>
        <source>A door in a deck has no hold-back hook</source>
        <translation type="unfinished">Pintu pada lantai geladak tidak punya kait penahan</translation>
    </message>
    <message>
        <source>Does the latch hold against 0.07 kPa from below?</source>
        <translation type="unfinished">Apakah kancing bertahan terhadap 0,07 kPa dari bawah?</translation>
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
        <source>Any glass in a door is at least 6.35 mm (1/4 in) thick</source>
        <translation type="unfinished">Setiap kaca pada pintu tebalnya minimal 6,35 mm (1/4 in)</translation>
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
        <source>A decorative door beside it is of approved incombustible material, does not hinder it, and in a main avenue of escape opens the same way</source>
        <translation type="unfinished">Pintu hias di sampingnya dari bahan tak mudah terbakar yang disetujui, tidak menghalanginya, dan pada jalur utama penyelamatan diri terbuka ke arah yang sama</translation>
    </message>
    <message>
        <source>A decorative door beside it is noncombustible or hardwood, does not hinder it and opens the same way; none in stairways and stairtowers</source>
        <translation type="unfinished">Pintu hias di sampingnya tak mudah terbakar atau dari kayu keras, tidak menghalanginya dan terbuka ke arah yang sama; tidak ada di tangga dan menara tangga</translation>
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
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, ss. 103, 106)</source>
        <translation type="unfinished">kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 103 dan 106)</translation>
    </message>
    <message>
        <source>a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 203)</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in its fire test?</source>
        <translation type="unfinished">Celah daun pintu dan kusen tidak lebih lebar daripada saat uji apinya?</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as it can be?</source>
        <translation type="unfinished">Celah antara daun pintu dan kusen sekecil mungkin?</translation>
    </message>
    <message>
        <source>No grille or louvre in the door</source>
        <translation type="unfinished">Tidak ada kisi atau lubang udara pada pintu</translation>
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
        <source>Gastight when shut?</source>
        <translation type="unfinished">Kedap gas saat tertutup?</translation>
    </message>
    <message>
        <source>The leaf overlaps its frame</source>
        <translation type="unfinished">Daun pintu menutupi tepi kusennya</translation>
    </message>
    <message>
        <source>Does the leaf overlap its frame?</source>
        <translation type="unfinished">Apakah daun pintu menutupi tepi kusennya?</translation>
    </message>
    <message>
        <source>Shut it and look at the edge from both sides. Good: leaf or stop covers the gap on every side that has a frame. Bad: you can look straight through between leaf and frame.</source>
        <translation type="unfinished">Tutup dan lihat tepinya dari kedua sisi. Baik: daun pintu atau sponing menutup celah di setiap sisi yang berkusen. Buruk: bisa melihat tembus antara daun pintu dan kusen.</translation>
    </message>
    <message>
        <source>Closes by itself</source>
        <translation type="unfinished">Menutup sendiri</translation>
    </message>
    <message>
        <source>whether s. 158 of the Hull Construction Regulations is the former rule that this ship keeps (SOR/2017-14, ss. 103, 203)</source>
        <translation type="unfinished">apakah ps. 158 Peraturan Konstruksi Lambung adalah aturan lama yang dipertahankan kapal ini (SOR/2017-14, ps. 103 dan 203)</translation>
    </message>
    <message>
        <source>Does the wheelhouse release it?</source>
        <translation type="unfinished">Apakah ruang kemudi melepas penahannya?</translation>
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
        <source>Can it be closed on the spot?</source>
        <translation type="unfinished">Dapat ditutup di tempat?</translation>
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
        <source>the code says &quot;should&quot;</source>
        <translation type="unfinished">kode mengatakan &quot;should&quot; (sebaiknya)</translation>
    </message>
    <message>
        <source>MSC.1/Circ.1432; SOLAS III/19 and III/30 in the Dutch government&apos;s treaty database (BWBV0003264, April 2015)</source>
        <translation type="unfinished">MSC.1/Circ.1432; SOLAS III/19 dan III/30 di basis data perjanjian pemerintah Belanda (BWBV0003264, April 2015)</translation>
    </message>
    <message>
        <source>Every vessel, whatever its flag and date</source>
        <translation type="unfinished">Setiap kapal, apa pun bendera dan tanggalnya</translation>
    </message>
    <message>
        <source>Taiwan&apos;s ship fire structure rules, art. 27, as of 9 January 2018: one national transposition of the 1981/83 wording of SOLAS II-2/30</source>
        <translation type="unfinished">Aturan Taiwan tentang struktur kebakaran kapal, ps. 27, per 9 Januari 2018: satu transposisi nasional dari rumusan 1981/83 SOLAS II-2/30</translation>
    </message>
    <message>
        <source>An alarm sounds when it is released from the control station</source>
        <translation type="unfinished">Alarm berbunyi saat penahannya dilepas dari stasiun kontrol</translation>
    </message>
    <message>
        <source>Did an alarm sound when the control station released it?</source>
        <translation type="unfinished">Apakah alarm berbunyi saat stasiun kontrol melepas penahannya?</translation>
    </message>
    <message>
        <source>Does it lead off a stairway enclosure?</source>
        <translation type="unfinished">Apakah keluar dari selubung tangga?</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules before 26 May 1965, which older vessels may keep.</source>
        <translation type="unfinished">Perubahan setelah 2015. Aturan sebelum 26 Mei 1965, yang boleh dipertahankan kapal yang lebih tua.</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs)</source>
        <translation type="unfinished">Edisi tahunan 2015, setiap bagian di halamannya sendiri dari salinan publik (github.com/18F/allregs)</translation>
    </message>
    <message>
        <source>Changes after 2015. The rules of 10 March 1996, which older vessels may keep.</source>
        <translation type="unfinished">Perubahan setelah 2015. Aturan 10 Maret 1996, yang boleh dipertahankan kapal yang lebih tua.</translation>
    </message>
    <message>
        <source>The vertical edges of the open leaf. Good: a metal plate, screwed or riveted, with maker, class, type approval number, drawing number. Bad: none, a sticker, painted over, an entry missing.</source>
        <translation type="unfinished">Tepi tegak daun pintu yang terbuka. Baik: pelat logam, disekrup atau dikeling, dengan pembuat, kelas, nomor persetujuan tipe, nomor gambar. Buruk: tidak ada, stiker, tertutup cat, ada keterangan yang hilang.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame no wider than in the door&apos;s fire test</source>
        <translation type="unfinished">Celah antara daun pintu dan kusen tidak lebih lebar daripada saat uji api pintu itu</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Ask for its fire test report: it gives the gap that was tested. Good: no wider anywhere. Bad: wider, or the tested gap is not known.</source>
        <translation type="unfinished">Di sekeliling daun pintu yang tertutup, dengan kaliber celah. Minta laporan uji apinya: di situ tercantum celah yang diuji. Baik: tidak lebih lebar di mana pun. Buruk: lebih lebar, atau celah yang diuji tidak diketahui.</translation>
    </message>
    <message>
        <source>All round the shut leaf, with a feeler gauge. Good: even, and no wider than the leaf needs to move freely. Bad: light shows, or one side gapes.</source>
        <translation type="unfinished">Di sekeliling daun pintu yang tertutup, dengan kaliber celah. Baik: rata, dan tidak lebih lebar daripada yang diperlukan daun pintu untuk bergerak bebas. Buruk: cahaya terlihat, atau satu sisi menganga.</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable</source>
        <translation type="unfinished">teks tidak memberi angka untuk seberapa kecil celah yang masih dapat dipakai</translation>
    </message>
    <message>
        <source>the text gives no figure for how small a gap is workable; a ship built before 3 February 2017 may keep its former rule until the door is replaced or the ship refitted (SOR/2017-14, s. 203)</source>
        <translation type="unfinished">teks tidak memberi angka untuk seberapa kecil celah yang masih dapat dipakai; kapal yang dibangun sebelum 3 Februari 2017 boleh mempertahankan aturan lamanya sampai pintu diganti atau kapal dirombak (SOR/2017-14, ps. 203)</translation>
    </message>
    <message>
        <source>Free of grilles and louvres?</source>
        <translation type="unfinished">Bebas kisi dan jalusi?</translation>
    </message>
    <message>
        <source>Both faces of the leaf, top to bottom. Good: none. Bad: a grille, a louvre or air holes, open or blanked off.</source>
        <translation type="unfinished">Kedua muka daun pintu, dari atas sampai bawah. Baik: tidak ada. Buruk: kisi, jalusi, atau lubang udara, terbuka ataupun ditutup.</translation>
    </message>
    <message>
        <source>Shut it, put a lamp on the far side and look along the edges; feel for a draught. Good: no light, hardly any draught. Bad: light, a seal that does not touch, a hole.</source>
        <translation type="unfinished">Tutup pintu, taruh lampu di sisi seberang dan lihat sepanjang tepi; rasakan embusan udara. Baik: tidak ada cahaya, hampir tidak ada embusan. Buruk: cahaya, paking yang tidak menempel, lubang.</translation>
    </message>
    <message>
        <source>A door of a category A machinery space is gastight when shut</source>
        <translation type="unfinished">Pintu ruang permesinan kategori A kedap gas saat tertutup</translation>
    </message>
    <message>
        <source>No vent opening in or under the door of a stairway enclosure</source>
        <translation type="unfinished">Tidak ada lubang ventilasi pada atau di bawah pintu selubung tangga</translation>
    </message>
    <message>
        <source>Free of vent openings, in and under it?</source>
        <translation type="unfinished">Bebas lubang ventilasi, pada dan di bawahnya?</translation>
    </message>
    <message>
        <source>The whole shut leaf and its lower edge. Good: no grille, holes or undercut for air. Bad: a grille anywhere, or a gap left under it for air.</source>
        <translation type="unfinished">Seluruh daun pintu yang tertutup dan tepi bawahnya. Baik: tidak ada kisi, lubang, atau celah bawah untuk udara. Buruk: ada kisi di mana pun, atau celah yang dibiarkan di bawahnya untuk udara.</translation>
    </message>
    <message>
        <source>Every hose port fitted: self-closing, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Setiap lubang selang kebakaran yang terpasang: menutup sendiri, bersih 150 mm x 150 mm dengan pintu tertutup, setahan api pintunya</translation>
    </message>
    <message>
        <source>A hose port, if fitted: self-closing, 150 × 150 mm</source>
        <translation type="unfinished">Lubang selang kebakaran, bila terpasang: menutup sendiri, 150 mm x 150 mm</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. The text gives no angle. Space not of category A: n/a.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali menutup penuh. Teks tidak memberi sudut. Ruang bukan kategori A: t/b.</translation>
    </message>
    <message>
        <source>Vent opening in or under a corridor door no more than 0.05 m², with a non-combustible grille</source>
        <translation type="unfinished">Lubang ventilasi pada atau di bawah pintu koridor tidak lebih dari 0,05 m², dengan kisi tak mudah terbakar</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible. Not a corridor door: n/a.</source>
        <translation type="unfinished">Kisi pada daun pintu atau celah bawah. Hitung hanya luas terbuka di antara bilah; 0 bila tidak ada. Kisi harus tak mudah terbakar. Bukan pintu koridor: t/b.</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half of a corridor door, or under it</source>
        <translation type="unfinished">Lubang ventilasi hanya di separuh bawah pintu koridor, atau di bawahnya</translation>
    </message>
    <message>
        <source>Vent opening only in the lower half, or none?</source>
        <translation type="unfinished">Lubang ventilasi hanya di separuh bawah, atau tidak ada?</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: in the lower half, under it, or none. Bad: a grille or holes in the upper half. Not a corridor door: n/a.</source>
        <translation type="unfinished">Cari setiap lubang ventilasi pada daun pintu. Baik: di separuh bawah, di bawahnya, atau tidak ada. Buruk: kisi atau lubang di separuh atas. Bukan pintu koridor: t/b.</translation>
    </message>
    <message>
        <source>Closes by itself; the former rule, as far as read, gives no angle</source>
        <translation type="unfinished">Menutup sendiri; aturan lama, sejauh terbaca, tidak memberi sudut</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali menutup penuh. Buruk: tetap sedikit terbuka.</translation>
    </message>
    <message>
        <source>Its hold-back is fail-safe: the door closes when the hold-back fails</source>
        <translation type="unfinished">Alat penahannya aman bila gagal (fail-safe): pintu menutup bila alat penahan gagal</translation>
    </message>
    <message>
        <source>Its hold-back is released at the door</source>
        <translation type="unfinished">Alat penahannya dilepas di pintu</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens.</source>
        <translation type="unfinished">Operasikan sakelar atau gagang di pintu. Baik: penahan pintu terlepas. Buruk: tidak terjadi apa-apa.</translation>
    </message>
    <message>
        <source>Its hold-back is released from the wheelhouse</source>
        <translation type="unfinished">Alat penahannya dilepas dari ruang kemudi</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the wheelhouse releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Kemudian ruang kemudi melepas penahan pintu atau grupnya. Baik: penahan terlepas dan pintu menutup. Buruk: tetap terbuka.</translation>
    </message>
    <message>
        <source>Transport Canada, its inspectors and the approved plans take precedence over these requirements; changes after 25 July 2025 have not been checked.</source>
        <translation type="unfinished">Transport Canada, inspekturnya, dan denah yang disetujui didahulukan atas persyaratan ini; perubahan setelah 25 Juli 2025 belum diperiksa.</translation>
    </message>
    <message>
        <source>Canadian passenger ships with convention certificates: SOLAS II-2 binds them, and so do these requirements (ss. 101, 102, 120); a ship built before 1 July 2002 may keep the structural fire protection of its day, except for part E, replaced parts and a major refit (ss. 104, 106)</source>
        <translation type="unfinished">Kapal penumpang Kanada dengan sertifikat konvensi: SOLAS II-2 mengikatnya, demikian pula persyaratan ini (ps. 101, 102, 120); kapal yang dibangun sebelum 1 Juli 2002 boleh mempertahankan perlindungan kebakaran struktural zamannya, kecuali bagian E, bagian yang diganti, dan perombakan besar (ps. 104, 106)</translation>
    </message>
    <message>
        <source>Canada&apos;s consolidated laws in XML (github.com/justicecanada/laws-lois-xml, as of 23 July 2026), everything on doors</source>
        <translation type="unfinished">Undang-undang Kanada terkonsolidasi dalam XML (github.com/justicecanada/laws-lois-xml, per 23 Juli 2026), semua tentang pintu</translation>
    </message>
    <message>
        <source>The law of the day for ships built before 1 July 2002</source>
        <translation type="unfinished">Hukum yang berlaku dahulu bagi kapal yang dibangun sebelum 1 Juli 2002</translation>
    </message>
    <message>
        <source>The former rules that a ship built before 3 February 2017 may keep, except s. 158 of the Hull Construction Regulations</source>
        <translation type="unfinished">Aturan lama yang boleh dipertahankan kapal yang dibangun sebelum 3 Februari 2017, kecuali ps. 158 Peraturan Konstruksi Lambung</translation>
    </message>
    <message>
        <source>The door has the class of the partition it is fitted in; a watertight door needs no insulation</source>
        <translation type="unfinished">Pintu mempunyai kelas partisi tempatnya terpasang; pintu kedap air tidak memerlukan insulasi</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the partition round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (art. 15.11(8)(d)).</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan kelas partisi di sekelilingnya. Baik: kelas pintu minimal sama tinggi. Pintu kedap air tidak memerlukan insulasi (art. 15.11(8)(d)).</translation>
    </message>
    <message>
        <source>Closes by itself; the text gives no angle, time or speed</source>
        <translation type="unfinished">Menutup sendiri; teks tidak memberi sudut, waktu, atau kecepatan</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The text gives no angle, time or speed.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali menutup penuh. Buruk: tetap sedikit terbuka. Teks tidak memberi sudut, waktu, atau kecepatan.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed on the spot</source>
        <translation type="unfinished">Bila dibiarkan terbuka dalam operasi, dapat ditutup di tempat</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released and closes. Bad: nothing happens.</source>
        <translation type="unfinished">Operasikan sakelar atau gagang di pintu. Baik: penahan pintu terlepas dan pintu menutup. Buruk: tidak terjadi apa-apa.</translation>
    </message>
    <message>
        <source>If kept open in service, it can be closed from a permanently manned place</source>
        <translation type="unfinished">Bila dibiarkan terbuka dalam operasi, dapat ditutup dari tempat yang dijaga terus-menerus</translation>
    </message>
    <message>
        <source>Can it be closed from the permanently manned place?</source>
        <translation type="unfinished">Dapatkah ditutup dari tempat yang dijaga terus-menerus?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the permanently manned place releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Kemudian tempat yang dijaga terus-menerus melepas penahan pintu atau grupnya. Baik: penahan terlepas dan pintu menutup. Buruk: tetap terbuka.</translation>
    </message>
    <message>
        <source>The inspection body that issues the vessel&apos;s certificate decides; ES-TRIN, which replaced this text, has not been read.</source>
        <translation type="unfinished">Badan pemeriksa yang menerbitkan sertifikat kapal yang memutuskan; ES-TRIN, yang menggantikan teks ini, belum dibaca.</translation>
    </message>
    <message>
        <source>Passenger vessels on the inland waterways of the European Union, certified under Directive 2006/87/EC</source>
        <translation type="unfinished">Kapal penumpang di perairan pedalaman Uni Eropa, bersertifikat menurut Direktif 2006/87/EC</translation>
    </message>
    <message>
        <source>France&apos;s order of 30 December 2008, annex, art. 15.11(8) and (10) (github.com/etalab, laws and regulations outside the codes); its end date is from memory</source>
        <translation type="unfinished">Keputusan Prancis 30 Desember 2008, lampiran, art. 15.11(8) dan (10) (github.com/etalab, undang-undang dan peraturan di luar kodifikasi); tanggal berakhirnya dari ingatan</translation>
    </message>
    <message>
        <source>ES-TRIN chapter 19, which replaced it; what existing vessels were allowed; the tables of partitions</source>
        <translation type="unfinished">ES-TRIN bab 19, yang menggantikannya; apa yang diizinkan bagi kapal lama; tabel partisi</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The code asks for release at the door, not from both sides.</source>
        <translation type="unfinished">Operasikan sakelar atau gagang di pintu. Baik: penahan pintu terlepas. Buruk: tidak terjadi apa-apa. Kode ini meminta pelepasan di pintu, bukan dari kedua sisi.</translation>
    </message>
    <message>
        <source>The Administration that certifies the yacht decides; codes later than LY3 have not been read.</source>
        <translation type="unfinished">Administrasi yang menyertifikasi kapal pesiar itu yang memutuskan; kode setelah LY3 belum dibaca.</translation>
    </message>
    <message>
        <source>Large commercial yachts of 500 gross tons and over certified under LY3; the code says &quot;should&quot;, so the inspector decides on a failure</source>
        <translation type="unfinished">Kapal pesiar komersial besar 500 gross ton atau lebih bersertifikat menurut LY3; kode mengatakan &quot;should&quot; (sebaiknya), jadi bila gagal inspektur yang memutuskan</translation>
    </message>
    <message>
        <source>A page of imorules.com, which had paragraph 14B.2.7.4 only as far as sub-item (e)</source>
        <translation type="unfinished">Satu halaman imorules.com, yang memuat paragraf 14B.2.7.4 hanya sampai butir (e)</translation>
    </message>
    <message>
        <source>14B.2.7.4 after sub-item (e), and the other paragraphs on fire protection; the dates when LY3 was in force; later codes. Other SOLAS requirements are shown as advice.</source>
        <translation type="unfinished">14B.2.7.4 setelah butir (e), dan paragraf lain tentang perlindungan kebakaran; tanggal berlakunya LY3; kode sesudahnya. Persyaratan SOLAS lain ditampilkan sebagai saran.</translation>
    </message>
    <message>
        <source>The company&apos;s maintenance plan and the flag Administration take precedence over these periods; no grace period is stated.</source>
        <translation type="unfinished">Rencana pemeliharaan perusahaan dan Administrasi negara bendera didahulukan atas jangka waktu ini; tidak disebut masa tenggang.</translation>
    </message>
    <message>
        <source>Lamps of the fire door control panels are tested</source>
        <translation type="unfinished">Lampu panel kendali pintu kebakaran diuji</translation>
    </message>
    <message>
        <source>Every fire door in a main vertical zone bulkhead is operated locally</source>
        <translation type="unfinished">Setiap pintu kebakaran di sekat zona vertikal utama dioperasikan secara setempat</translation>
    </message>
    <message>
        <source>Remotely controlled fire doors are tested for proper release</source>
        <translation type="unfinished">Pintu kebakaran yang dikendalikan dari jauh diuji apakah pelepasannya benar</translation>
    </message>
    <message>
        <source>Blackout test: doors are held and released on the emergency source and the transitional battery</source>
        <translation type="unfinished">Uji blackout: pintu ditahan, dan penahannya dilepas, dengan sumber darurat dan baterai transisi</translation>
    </message>
    <message>
        <source>Vessels of other flags, or under rules not named here: no text in this catalogue binds them, and everything shown is advice</source>
        <translation type="unfinished">Kapal berbendera lain, atau di bawah aturan yang tidak disebut di sini: tidak ada teks dalam katalog ini yang mengikatnya, dan semua yang ditampilkan adalah saran</translation>
    </message>
    <message>
        <source>All texts of those flags</source>
        <translation type="unfinished">Semua teks bendera-bendera itu</translation>
    </message>
    <message>
        <source>Plate present and legible, and it agrees with the register</source>
        <translation type="unfinished">Pelat ada dan terbaca, dan cocok dengan register</translation>
    </message>
    <message>
        <source>Read it at the door itself. Bad: painted over, worn off, or not the class in the register. No SOLAS paragraph was found that requires a plate: if it is missing, ask for the certificate; it is not a failure.</source>
        <translation type="unfinished">Baca langsung di pintu. Buruk: tertutup cat, aus, atau bukan kelas di register. Tidak ditemukan paragraf SOLAS yang mensyaratkan pelat: bila tidak ada, minta sertifikatnya; itu bukan kegagalan.</translation>
    </message>
    <message>
        <source>Sill or threshold in place, no trip hazard</source>
        <translation type="unfinished">Ambang terpasang, tidak membuat tersandung</translation>
    </message>
    <message>
        <source>Sill in place, no trip hazard?</source>
        <translation type="unfinished">Ambang terpasang, tidak membuat tersandung?</translation>
    </message>
    <message>
        <source>All the deck that the leaf moves over, on both sides. Good: clear. Bad: stores, carts, furniture, mats, litter.</source>
        <translation type="unfinished">Seluruh geladak yang dilewati daun pintu, di kedua sisi. Baik: bersih. Buruk: barang, kereta dorong, perabot, keset, sampah.</translation>
    </message>
    <message>
        <source>Not held open by a wedge, rope or furniture</source>
        <translation type="unfinished">Tidak ditahan terbuka dengan ganjal, tali, atau perabot</translation>
    </message>
    <message>
        <source>The foot, handle and edge of the open leaf. Good: held only by its own hold-back. Bad: a wedge, a rope, furniture.</source>
        <translation type="unfinished">Kaki, gagang, dan tepi daun pintu yang terbuka. Baik: hanya ditahan alat penahannya sendiri. Buruk: ganjal, tali, perabot.</translation>
    </message>
    <message>
        <source>Seals intact and not painted over</source>
        <translation type="unfinished">Paking utuh dan tidak tertutup cat</translation>
    </message>
    <message>
        <source>Seals intact, unpainted?</source>
        <translation type="unfinished">Paking utuh, tidak dicat?</translation>
    </message>
    <message>
        <source>All round the leaf. Good: strips flush and unbroken. Bad: painted over, torn, or a piece missing.</source>
        <translation type="unfinished">Di sekeliling daun pintu. Baik: strip rata dan tidak terputus. Buruk: tertutup cat, robek, atau ada bagian yang hilang.</translation>
    </message>
    <message>
        <source>Stand back and look at the gap above the leaf. Good: even, screws tight. Bad: wider at one end, bright rub marks at the sill.</source>
        <translation type="unfinished">Mundur dan lihat celah di atas daun pintu. Baik: rata, sekrup kencang. Buruk: lebih lebar di satu ujung, bekas gesekan mengilap di ambang.</translation>
    </message>
    <message>
        <source>Closer not leaking, arm connected</source>
        <translation type="unfinished">Penutup pintu otomatis tidak bocor, lengan tersambung</translation>
    </message>
    <message>
        <source>At the head of the leaf. Good: dry, arm secured at both ends. Bad: oil on the body or the leaf, arm loose or hanging.</source>
        <translation type="unfinished">Di bagian atas daun pintu. Baik: kering, lengan terpasang kukuh di kedua ujung. Buruk: oli pada badan atau daun pintu, lengan longgar atau menggantung.</translation>
    </message>
    <message>
        <source>Rails, rollers and guides clean and undamaged</source>
        <translation type="unfinished">Rel, rol, dan pemandu bersih dan tidak rusak</translation>
    </message>
    <message>
        <source>Keep hands out while it can move. The rail at the head and the guide at the foot, end to end. Good: clear, every roller on the rail. Bad: dirt, a dent, a roller off.</source>
        <translation type="unfinished">Jangan masukkan tangan selagi pintu dapat bergerak. Rel di atas dan pemandu di bawah, dari ujung ke ujung. Baik: bersih, setiap rol di atas rel. Buruk: kotoran, penyok, rol keluar dari rel.</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound: no holes, unapproved fittings, corrosion or loose insulation</source>
        <translation type="unfinished">Daun pintu, kusen, dan kaca baik: tidak ada lubang, perlengkapan tanpa persetujuan, korosi, atau insulasi longgar</translation>
    </message>
    <message>
        <source>Leaf, frame and glass sound?</source>
        <translation type="unfinished">Daun pintu, kusen, dan kaca baik?</translation>
    </message>
    <message>
        <source>Watch the leaf all the way. Good: it moves evenly to the end. Bad: it sticks, jumps, or slams at the end.</source>
        <translation type="unfinished">Amati daun pintu sepanjang gerakannya. Baik: bergerak rata sampai akhir. Buruk: tersendat, melonjak, atau membanting di akhir.</translation>
    </message>
    <message>
        <source>The selector holds one leaf until the other has shut</source>
        <translation type="unfinished">Pengatur urutan penutupan menahan satu daun pintu sampai yang lain tertutup</translation>
    </message>
    <message>
        <source>Do the leaves close in the right order?</source>
        <translation type="unfinished">Apakah kedua daun pintu menutup dalam urutan yang benar?</translation>
    </message>
    <message>
        <source>Keep fingers off the meeting edges. Open both leaves and let them go together. Good: one waits until the other has shut. Bad: the lip is caught on the wrong side.</source>
        <translation type="unfinished">Jauhkan jari dari tepi pertemuan kedua daun pintu. Buka kedua daun pintu dan lepaskan bersamaan. Baik: yang satu menunggu sampai yang lain tertutup. Buruk: bibir terjepit di sisi yang salah.</translation>
    </message>
    <message>
        <source>When it has shut and stopped moving, push it. Good: it holds. Bad: it gives way, as it would under the pressure of a fire.</source>
        <translation type="unfinished">Setelah tertutup dan berhenti bergerak, dorong pintu. Baik: bertahan. Buruk: menyerah, seperti yang akan terjadi oleh tekanan kebakaran.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Good: on contact the leaf stops and moves back. Bad: it keeps pushing.</source>
        <translation type="unfinished">Pegang balok lunak di lintasan, jangan pernah tangan atau kaki. Baik: saat kontak daun pintu berhenti dan bergerak mundur. Buruk: terus mendorong.</translation>
    </message>
    <message>
        <source>Common practice has no published source here: it never fails a door by itself; the inspector decides.</source>
        <translation type="unfinished">Praktik umum di sini tidak punya sumber terbitan: tidak pernah dengan sendirinya menggagalkan pintu; inspektur yang memutuskan.</translation>
    </message>
    <message>
        <source>There is no published text.</source>
        <translation type="unfinished">Tidak ada teks terbitan.</translation>
    </message>
    <message>
        <source>The closing speed is controlled where needed so that no one is endangered; the older text gives no figure</source>
        <translation type="unfinished">Kecepatan menutup dikendalikan bila perlu agar tidak seorang pun terancam bahaya; teks lama tidak memberi angka</translation>
    </message>
    <message>
        <source>Closing speed controlled, so that no one is endangered?</source>
        <translation type="unfinished">Kecepatan menutup dikendalikan, agar tidak seorang pun terancam bahaya?</translation>
    </message>
    <message>
        <source>Watch it close from fully open. Good: it moves steadily, and a person in the way has time to step aside. Bad: it slams or runs away. The older text gives no seconds or metres per second.</source>
        <translation type="unfinished">Amati pintu menutup dari terbuka penuh. Baik: bergerak ajek, dan orang di lintasan sempat menyingkir. Buruk: membanting atau melaju tak terkendali. Teks lama tidak memberi detik atau meter per detik.</translation>
    </message>
    <message>
        <source>Only part of the texts before 1 July 2002 has been read: for an older ship ask for the approved drawing and the rules of its day.</source>
        <translation type="unfinished">Hanya sebagian teks sebelum 1 Juli 2002 yang telah dibaca: untuk kapal lebih tua minta gambar yang disetujui dan aturan zamannya.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002, which keep chapter II-2 as amended to their day (II-2/1.2.1 of 2015); after a repair or alteration they meet at least that, after a major one the new text as far as reasonable (1.3.1, 1.3.2)</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun sebelum 1 Juli 2002, yang mempertahankan bab II-2 sebagaimana diamendemen sampai zamannya (II-2/1.2.1 tahun 2015); setelah perbaikan atau perubahan kapal memenuhi minimal itu, setelah perubahan besar memenuhi teks baru sejauh wajar (1.3.1, 1.3.2)</translation>
    </message>
    <message>
        <source>SOLAS II-2/30 of 1981/83 in print; the 1992 amendments to regulations 30, 41-1 and 41-2 (seconds, metres per second, alarm, retrofit dates): ask for the approved drawing; the fire tables before 2002</source>
        <translation type="unfinished">SOLAS II-2/30 tahun 1981/83 dalam cetakan; amendemen 1992 atas peraturan 30, 41-1, dan 41-2 (detik, meter per detik, alarm, tanggal pemasangan susulan): minta gambar yang disetujui; tabel kebakaran sebelum 2002</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built before 1 July 2002 with special category spaces</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun sebelum 1 Juli 2002 dengan ruang kategori khusus</translation>
    </message>
    <message>
        <source>An English copy of MSC.1(XLV) on the internet, of which only part was available: II-2/37.1.1.2 and 37.1.2.2</source>
        <translation type="unfinished">Salinan bahasa Inggris MSC.1(XLV) di internet, yang hanya sebagian tersedia: II-2/37.1.1.2 dan 37.1.2.2</translation>
    </message>
    <message>
        <source>The rest of the 1981 amendments, including the regulation on doors (30)</source>
        <translation type="unfinished">Sisa amendemen 1981, termasuk peraturan tentang pintu (30)</translation>
    </message>
    <message>
        <source>Door, frame and securing means as fire-resistant as the division they are fitted in</source>
        <translation type="unfinished">Pintu, kusen, serta alat penutup dan pengunci setahan api divisi tempatnya terpasang</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A watertight door needs no insulation (9.4.1.1.3).</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan kelas pembatas di sekelilingnya. Baik: kelas pintu minimal sama tinggi. Pintu kedap air tidak memerlukan insulasi (9.4.1.1.3).</translation>
    </message>
    <message>
        <source>An exterior door that faces life-saving appliances, embarkation or outside assembly stations, outside stairs or escape decks is A class, like its boundary</source>
        <translation type="unfinished">Pintu luar yang menghadap alat keselamatan jiwa, tempat embarkasi atau tempat berkumpul luar, tangga luar, atau geladak penyelamatan diri adalah kelas A, seperti pembatasnya</translation>
    </message>
    <message>
        <source>Compare the plate on the door with the class of the boundary round it. Good: the door&apos;s class is at least as high. A door of a stairway enclosure is exempt.</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan kelas pembatas di sekelilingnya. Baik: kelas pintu minimal sama tinggi. Pintu selubung tangga dikecualikan.</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes, and no class is required. Any other space behind it: no. Neither answer is a fault.</source>
        <translation type="unfinished">Lihat denah pengendalian kebakaran, atau masuk. Selubung tangga di baliknya: ya, dan tidak disyaratkan kelas. Ruang lain di baliknya: tidak. Tak satu pun jawaban berarti cacat.</translation>
    </message>
    <message>
        <source>Door and frame of steel or equivalent material</source>
        <translation type="unfinished">Pintu dan kusen dari baja atau bahan setara</translation>
    </message>
    <message>
        <source>Door and frame in good order, able to do what they were fitted for</source>
        <translation type="unfinished">Pintu dan kusen dalam keadaan baik, mampu melakukan tugas untuk mana dipasang</translation>
    </message>
    <message>
        <source>Door and frame in good order?</source>
        <translation type="unfinished">Pintu dan kusen dalam keadaan baik?</translation>
    </message>
    <message>
        <source>Leaf, frame, hinges, seals and glass. Bad: holes, patches, dents that stop it closing, missing parts, unapproved repairs. Applies to ships of any date.</source>
        <translation type="unfinished">Daun pintu, kusen, engsel, paking, dan kaca. Buruk: lubang, tambalan, penyok yang menghalangi penutupan, bagian hilang, perbaikan tanpa persetujuan. Berlaku bagi kapal dari tanggal mana pun.</translation>
    </message>
    <message>
        <source>The maintenance plan aboard includes this door and its controls</source>
        <translation type="unfinished">Rencana pemeliharaan di kapal mencakup pintu ini dan kendalinya</translation>
    </message>
    <message>
        <source>Are the door and its controls in the maintenance plan?</source>
        <translation type="unfinished">Apakah pintu dan kendalinya ada dalam rencana pemeliharaan?</translation>
    </message>
    <message>
        <source>Ask for the ship&apos;s maintenance plan, on paper or computer, and find this door. Good: its tests and dates are there. Applies to ships of any date.</source>
        <translation type="unfinished">Minta rencana pemeliharaan kapal, di kertas atau komputer, dan cari pintu ini. Baik: uji dan tanggalnya ada di situ. Berlaku bagi kapal dari tanggal mana pun.</translation>
    </message>
    <message>
        <source>A bar or panel that releases the latch when pushed, on the side people come from. Good: at least half as wide as the leaf. Not a public space, or not latched: n/a.</source>
        <translation type="unfinished">Batang atau panel yang membuka kancing bila didorong, di sisi datangnya orang. Baik: minimal separuh lebar daun pintu. Bukan ruang umum, atau tidak dikancing: t/b.</translation>
    </message>
    <message>
        <source>The quick release is 760 to 1120 mm above the deck</source>
        <translation type="unfinished">Pelepas cepat berada 760 sampai 1120 mm di atas geladak</translation>
    </message>
    <message>
        <source>From the deck to the middle of the bar, with a rule or tape. Answer the quick release question first.</source>
        <translation type="unfinished">Dari geladak ke tengah batang, dengan mistar atau pita ukur. Jawab dahulu pertanyaan tentang pelepas cepat.</translation>
    </message>
    <message>
        <source>The quick release operates at 67 N or less</source>
        <translation type="unfinished">Pelepas cepat bekerja pada 67 N atau kurang</translation>
    </message>
    <message>
        <source>Force to operate the quick release</source>
        <translation type="unfinished">Gaya untuk mengoperasikan pelepas cepat</translation>
    </message>
    <message>
        <source>Keep feet clear of the leaf. Push with a spring gauge at the middle of the bar, in the direction of escape, until the latch releases.</source>
        <translation type="unfinished">Jauhkan kaki dari daun pintu. Dorong dengan neraca pegas di tengah batang, ke arah penyelamatan diri, sampai kancing lepas.</translation>
    </message>
    <message>
        <source>Open and shut it yourself, unaided, from this side; then do the same from the other. Bad: it takes two people or a tool.</source>
        <translation type="unfinished">Buka dan tutup sendiri, tanpa bantuan, dari sisi ini; lalu lakukan yang sama dari sisi lain. Buruk: perlu dua orang atau alat.</translation>
    </message>
    <message>
        <source>Closes by itself, even against an inclination of 3.5 degrees</source>
        <translation type="unfinished">Menutup sendiri, bahkan melawan kemiringan 3,5 derajat</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali menutup penuh. Buruk: tetap sedikit terbuka. Bagian 3,5 derajat tidak dapat diperiksa pada kapal tegak.</translation>
    </message>
    <message>
        <source>Stand clear of the leaf. Mark its first movement and the moment it is fully shut; on a double door, when the second leaf is shut.</source>
        <translation type="unfinished">Menjauhlah dari daun pintu. Tandai gerak pertamanya dan saat tertutup penuh; pada pintu dua daun, saat daun pintu kedua tertutup.</translation>
    </message>
    <message>
        <source>Keep hands off the edge and out of the pocket. Mark the first movement and the moment it is shut: the clear opening divided by that time is the rate.</source>
        <translation type="unfinished">Jauhkan tangan dari tepi dan dari rongga. Tandai gerak pertama dan saat tertutup: bukaan bersih dibagi waktu itu adalah kecepatannya.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then the control station releases the door or its group. Good: it is released and closes. Bad: it stays open.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Kemudian stasiun kontrol melepas penahan pintu atau grupnya. Baik: penahan terlepas dan pintu menutup. Buruk: tetap terbuka.</translation>
    </message>
    <message>
        <source>Can be released from a control station, all doors together or in groups</source>
        <translation type="unfinished">Penahannya dapat dilepas dari stasiun kontrol, semua pintu bersama atau per grup</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door, on one side and then the other. Good: each releases the door. Bad: one side does nothing.</source>
        <translation type="unfinished">Operasikan sakelar atau gagang di pintu, di satu sisi lalu sisi lain. Baik: masing-masing melepas penahan pintu. Buruk: satu sisi tidak berfungsi.</translation>
    </message>
    <message>
        <source>Operate the switch or handle at the door. Good: the door is released. Bad: nothing happens. The older text requires release at the door, not from both sides.</source>
        <translation type="unfinished">Operasikan sakelar atau gagang di pintu. Baik: penahan pintu terlepas. Buruk: tidak terjadi apa-apa. Teks lama mensyaratkan pelepasan di pintu, bukan dari kedua sisi.</translation>
    </message>
    <message>
        <source>The release switch has an on-off function, so that the system does not reset itself</source>
        <translation type="unfinished">Sakelar pelepas mempunyai fungsi on-off, sehingga sistem tidak reset sendiri</translation>
    </message>
    <message>
        <source>Does the switch stay as set, so that the system does not reset itself?</source>
        <translation type="unfinished">Apakah sakelar tetap di posisinya, sehingga sistem tidak reset sendiri?</translation>
    </message>
    <message>
        <source>Release, take your hand off and wait. Good: the door is not held again until someone resets the switch. Bad: the system resets itself.</source>
        <translation type="unfinished">Operasikan pelepas, lepaskan tangan dan tunggu. Baik: pintu tidak ditahan lagi sampai ada yang me-reset sakelar. Buruk: sistem reset sendiri.</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: hooks, cabin hooks, eye plates with signs of use.</source>
        <translation type="unfinished">Lihat di belakang pintu yang terbuka, pada sekat, daun pintu, dan geladak. Buruk: kait, kait kabin, pelat mata dengan bekas pemakaian.</translation>
    </message>
    <message>
        <source>After remote closing it can be re-opened locally from both sides, and then shuts by itself</source>
        <translation type="unfinished">Setelah ditutup dari jauh dapat dibuka lagi setempat dari kedua sisi, lalu menutup sendiri</translation>
    </message>
    <message>
        <source>Keep clear of the leaf as it comes back. With the remote release still on, open it from this side and let go. Good: it opens, then shuts by itself.</source>
        <translation type="unfinished">Menjauhlah dari daun pintu saat pintu berayun menutup kembali. Dengan pelepasan jarak jauh masih aktif, buka dari sisi ini dan lepaskan. Baik: terbuka, lalu menutup sendiri.</translation>
    </message>
    <message>
        <source>Is the panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">Apakah panel benar saat pintu terbuka, sedikit terbuka, dan tertutup?</translation>
    </message>
    <message>
        <source>Ask the control station what its panel shows with the door open, ajar and shut. Good: correct each time. Bad: it shows shut while the door is ajar.</source>
        <translation type="unfinished">Tanyakan kepada stasiun kontrol apa yang ditunjukkan panelnya saat pintu terbuka, sedikit terbuka, dan tertutup. Baik: selalu benar. Buruk: menunjukkan tertutup padahal pintu sedikit terbuka.</translation>
    </message>
    <message>
        <source>Is the bridge panel correct with the door open, ajar and shut?</source>
        <translation type="unfinished">Apakah panel anjungan benar saat pintu terbuka, sedikit terbuka, dan tertutup?</translation>
    </message>
    <message>
        <source>Ask the bridge what it shows with the door open, ajar and shut. Good: correct each time. Bad: no lamp for this door, or it shows shut while the door is ajar.</source>
        <translation type="unfinished">Tanyakan kepada anjungan apa yang ditunjukkan saat pintu terbuka, sedikit terbuka, dan tertutup. Baik: selalu benar. Buruk: tidak ada lampu untuk pintu ini, atau menunjukkan tertutup padahal pintu sedikit terbuka.</translation>
    </message>
    <message>
        <source>Its remote closing control is in the same central control station as the detection alarms, and the panel there shows it open or closed</source>
        <translation type="unfinished">Kendali penutupan jarak jauhnya ada di stasiun kontrol pusat yang sama dengan alarm deteksi, dan panel di sana menunjukkan pintu terbuka atau tertutup</translation>
    </message>
    <message>
        <source>Closing control and open/closed lamp in the central station?</source>
        <translation type="unfinished">Kendali penutupan dan lampu terbuka/tertutup ada di stasiun kontrol pusat?</translation>
    </message>
    <message>
        <source>In the continuously manned station, beside the detection alarms: the control that closes this door, and its open/closed lamp.</source>
        <translation type="unfinished">Di stasiun yang dijaga terus-menerus, di samping alarm deteksi: kendali yang menutup pintu ini, dan lampu terbuka/tertutupnya.</translation>
    </message>
    <message>
        <source>It can be operated and monitored from the safety centre</source>
        <translation type="unfinished">Dapat dioperasikan dan dipantau dari pusat keselamatan</translation>
    </message>
    <message>
        <source>Operated and monitored from the safety centre?</source>
        <translation type="unfinished">Dioperasikan dan dipantau dari pusat keselamatan?</translation>
    </message>
    <message>
        <source>Its holding and release work on the emergency source, and on the transitional battery until that source takes over</source>
        <translation type="unfinished">Penahanan dan pelepasannya bekerja dengan sumber darurat, dan dengan baterai transisi sampai sumber itu mengambil alih</translation>
    </message>
    <message>
        <source>In the blackout test: held and released on emergency power?</source>
        <translation type="unfinished">Dalam uji blackout: ditahan dan penahannya dilepas dengan daya darurat?</translation>
    </message>
    <message>
        <source>Local accumulators can fully open and shut the door at least ten times after the power has failed</source>
        <translation type="unfinished">Akumulator setempat dapat membuka dan menutup pintu sepenuhnya minimal sepuluh kali setelah daya gagal</translation>
    </message>
    <message>
        <source>Do the other doors still work when this one fails?</source>
        <translation type="unfinished">Apakah pintu lain tetap bekerja bila pintu ini gagal?</translation>
    </message>
    <message>
        <source>Listen until the leaf is shut. Good: the alarm is still sounding when the door is fully shut. Bad: silence while the leaf is still moving.</source>
        <translation type="unfinished">Dengarkan sampai daun pintu tertutup. Baik: alarm masih berbunyi saat pintu tertutup penuh. Buruk: senyap selagi daun pintu masih bergerak.</translation>
    </message>
    <message>
        <source>Hold a soft block in the path, never a hand or foot. Measure from the point of contact to where the leaf stops after moving back.</source>
        <translation type="unfinished">Pegang balok lunak di lintasan, jangan pernah tangan atau kaki. Ukur dari titik kontak ke tempat daun pintu berhenti setelah bergerak mundur.</translation>
    </message>
    <message>
        <source>The latch engages automatically when the system releases the door</source>
        <translation type="unfinished">Kancing masuk secara otomatis saat sistem melepas penahan pintu</translation>
    </message>
    <message>
        <source>After release, when both leaves have stopped, push at the meeting edge. Good: neither opens. Bad: the bolt stops short of its strike.</source>
        <translation type="unfinished">Setelah pelepasan, bila kedua daun pintu sudah berhenti, dorong pada tepi pertemuan kedua daun pintu. Baik: tidak ada yang terbuka. Buruk: lidah berhenti sebelum pelat kuncinya.</translation>
    </message>
    <message>
        <source>Local control components can be reached for maintenance and adjustment</source>
        <translation type="unfinished">Komponen kendali setempat dapat dijangkau untuk pemeliharaan dan penyetelan</translation>
    </message>
    <message>
        <source>Find the door&apos;s own switch, valve or control box. Good: the cover opens, with room for a hand and a tool. Bad: built in, blocked or painted shut.</source>
        <translation type="unfinished">Cari sakelar, katup, atau kotak kendali milik pintu ini. Baik: tutupnya terbuka, dengan ruang untuk tangan dan alat. Buruk: tertanam, terhalang, atau tertutup cat.</translation>
    </message>
    <message>
        <source>The control system is approved to work in a fire: 60 min at 200 °C, and to keep the door shut above that</source>
        <translation type="unfinished">Sistem kendali disetujui untuk bekerja dalam kebakaran: 60 menit pada 200 °C, dan untuk menjaga pintu tertutup di atas itu</translation>
    </message>
    <message>
        <source>Self-closing hose port, 150 × 150 mm clear with the door closed, as fire-resistant as the door</source>
        <translation type="unfinished">Lubang selang kebakaran yang menutup sendiri, bersih 150 mm x 150 mm dengan pintu tertutup, setahan api pintunya</translation>
    </message>
    <message>
        <source>Hose port 150 × 150 mm clear, and does it shut by itself?</source>
        <translation type="unfinished">Lubang selang kebakaran bersih 150 mm x 150 mm, dan apakah menutup sendiri?</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges; on a sliding door nearest the opening. Lift the cover and let go. Good: 150 × 150 mm clear, and the cover falls shut. Bad: it stays up.</source>
        <translation type="unfinished">Pintu tertutup, tepi bawah, berseberangan dengan engsel; pada pintu geser paling dekat bukaan. Angkat tutupnya dan lepaskan. Baik: bersih 150 mm x 150 mm, dan tutup jatuh menutup. Buruk: tetap terangkat.</translation>
    </message>
    <message>
        <source>Self-closing hose port; the older text gives no size</source>
        <translation type="unfinished">Lubang selang kebakaran yang menutup sendiri; teks lama tidak memberi ukuran</translation>
    </message>
    <message>
        <source>Door shut, lower edge, opposite the hinges. Lift the cover and let go. Good: it falls shut. Bad: it stays up, or there is no port. No size is given for a ship of this date.</source>
        <translation type="unfinished">Pintu tertutup, tepi bawah, berseberangan dengan engsel. Angkat tutupnya dan lepaskan. Baik: jatuh menutup. Buruk: tetap terangkat, atau tidak ada lubang. Tidak ada ukuran untuk kapal dari tanggal ini.</translation>
    </message>
    <message>
        <source>9.4.1.1.8 names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">9.4.1.1.8 menyebut tangga, ruang umum, dan sekat zona; register tidak menyebut apakah pintu ini di ruang umum</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a feeler gauge or a rule.</source>
        <translation type="unfinished">Jangan taruh jari di bawah daun pintu yang dapat bergerak. Tempat terlebar di bawah pintu tertutup, dengan kaliber celah atau mistar.</translation>
    </message>
    <message>
        <source>At the foot of the shut door. Good: a non-combustible sill, and carpet or vinyl stops at it. Bad: the covering runs on under the leaf.</source>
        <translation type="unfinished">Di kaki daun pintu yang tertutup. Baik: ambang tak mudah terbakar, dan karpet atau vinil berhenti di situ. Buruk: pelapis lantai menerus di bawah daun pintu.</translation>
    </message>
    <message>
        <source>No fingers under a leaf that can move. The widest place under the shut door, with a rule.</source>
        <translation type="unfinished">Jangan taruh jari di bawah daun pintu yang dapat bergerak. Tempat terlebar di bawah pintu tertutup, dengan mistar.</translation>
    </message>
    <message>
        <source>B-class door of non-combustible material</source>
        <translation type="unfinished">Pintu kelas B dari bahan tak mudah terbakar</translation>
    </message>
    <message>
        <source>Door of non-combustible material?</source>
        <translation type="unfinished">Pintu dari bahan tak mudah terbakar?</translation>
    </message>
    <message>
        <source>Vent opening in or under the door no more than 0.05 m² net, with a non-combustible grille</source>
        <translation type="unfinished">Lubang ventilasi pada atau di bawah pintu tidak lebih dari 0,05 m² bersih, dengan kisi tak mudah terbakar</translation>
    </message>
    <message>
        <source>The grille in the leaf or the undercut. Count only the open area between the bars; 0 if there is none. The grille must be non-combustible.</source>
        <translation type="unfinished">Kisi pada daun pintu atau celah bawah. Hitung hanya luas terbuka di antara bilah; 0 bila tidak ada. Kisi harus tak mudah terbakar.</translation>
    </message>
    <message>
        <source>Find every vent opening in the leaf. Good: low in the leaf, under it, or none. Bad: a grille or holes in the upper half.</source>
        <translation type="unfinished">Cari setiap lubang ventilasi pada daun pintu. Baik: rendah di daun pintu, di bawahnya, atau tidak ada. Buruk: kisi atau lubang di separuh atas.</translation>
    </message>
    <message>
        <source>Let it go from fully open. Good: it shuts by itself, and nothing behind it can hold it. Bad: it stops halfway, or there is a hook.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh. Baik: menutup sendiri, dan tidak ada apa pun di belakangnya yang dapat menahannya. Buruk: berhenti di tengah jalan, atau ada kait.</translation>
    </message>
    <message>
        <source>Find the control outside the machinery space. Good: it is with the others, at one place or as few as possible, and can be reached with the space on fire.</source>
        <translation type="unfinished">Cari kendali di luar ruang permesinan. Baik: bersama yang lain, di satu tempat atau sesedikit mungkin, dan dapat dijangkau saat ruang itu terbakar.</translation>
    </message>
    <message>
        <source>Local rules, the flag Administration and its approved plans take precedence over this catalogue; amendments after its edition have not been checked.</source>
        <translation type="unfinished">Aturan setempat, Administrasi negara bendera, dan denah yang disetujuinya didahulukan atas katalog ini; amendemen setelah edisinya belum diperiksa.</translation>
    </message>
    <message>
        <source>The English text in the Dutch government&apos;s treaty database (BWBV0003264, April 2015), and France&apos;s own print of the French text (order of 23 November 1987, division 221), which confirms every number</source>
        <translation type="unfinished">Teks bahasa Inggris di basis data perjanjian pemerintah Belanda (BWBV0003264, April 2015), dan cetakan Prancis sendiri atas teks Prancis (keputusan 23 November 1987, divisi 221), yang menegaskan setiap angka</translation>
    </message>
    <message>
        <source>Amendments after April 2015: nothing of MSC.421(98) has been seen; of MSC.550(108), in force on 1 January 2026, only that it renumbers II-2/9.6. Interpretations by IMO and classification societies.</source>
        <translation type="unfinished">Amendemen setelah April 2015: dari MSC.421(98) tidak ada yang terlihat; dari MSC.550(108), berlaku 1 Januari 2026, hanya bahwa ia menomori ulang II-2/9.6. Interpretasi oleh IMO dan badan klasifikasi.</translation>
    </message>
    <message>
        <source>Door in an A-60, A-30 or A-15 bulkhead meets A-15; in an A-0 bulkhead, A-0</source>
        <translation type="unfinished">Pintu di sekat A-60, A-30, atau A-15 memenuhi A-15; di sekat A-0, A-0</translation>
    </message>
    <message>
        <source>Compare the plate on the door with its bulkhead: A-15 is enough in A-60, A-30 and A-15. The rule does not cover watertight doors; doors to the open deck have their own requirement.</source>
        <translation type="unfinished">Bandingkan pelat pada pintu dengan sekatnya: A-15 cukup di A-60, A-30, dan A-15. Aturan ini tidak mencakup pintu kedap air; pintu ke geladak terbuka punya persyaratan sendiri.</translation>
    </message>
    <message>
        <source>Door in an A-class bulkhead: hollow steel or equal, filled solid with approved structural insulation; in an A-0 bulkhead, solid or hollow steel or equal</source>
        <translation type="unfinished">Pintu di sekat kelas A: baja berongga atau setara, terisi penuh insulasi struktural yang disetujui; di sekat A-0, baja pejal atau berongga atau setara</translation>
    </message>
    <message>
        <source>Door in an A-class boundary: hollow steel or equal, filled solid with approved structural insulation; in an A-0 boundary, solid or hollow steel or equal</source>
        <translation type="unfinished">Pintu di pembatas kelas A: baja berongga atau setara, terisi penuh insulasi struktural yang disetujui; di pembatas A-0, baja pejal atau berongga atau setara</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but metal. The text gives no class for such a door. Bad: wood or plastics without an approval.</source>
        <translation type="unfinished">Lihat daun pintu dan kusen, dan minta persetujuan untuk apa pun yang bukan logam. Teks tidak memberi kelas untuk pintu demikian. Buruk: kayu atau plastik tanpa persetujuan.</translation>
    </message>
    <message>
        <source>Look at leaf and frame, and ask for the approval of anything but steel. The text gives no class for such a door. Bad: glass panes in a frame, wood or plastics without an approval.</source>
        <translation type="unfinished">Lihat daun pintu dan kusen, dan minta persetujuan untuk apa pun yang bukan baja. Teks tidak memberi kelas untuk pintu demikian. Buruk: panel kaca dalam kusen, kayu, atau plastik tanpa persetujuan.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or an approved incombustible board. Bad: wood or plastics. No latch and no undercut limit are required here.</source>
        <translation type="unfinished">Minta persetujuan bahannya. Baik: logam, atau papan tak mudah terbakar yang disetujui. Buruk: kayu atau plastik. Di sini tidak disyaratkan kancing atau batas celah bawah.</translation>
    </message>
    <message>
        <source>Ask for the approval of the material. Good: metal, or board approved as noncombustible. Bad: wood or plastics. No paragraph requires this in a C&apos; boundary: n/a there.</source>
        <translation type="unfinished">Minta persetujuan bahannya. Baik: logam, atau papan yang disetujui sebagai tak mudah terbakar. Buruk: kayu atau plastik. Tidak ada paragraf yang mensyaratkan ini di pembatas C&apos;: di situ t/b.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 1 3/4 inches. The text does not say whether such a door at a stairway must also close by itself: ask.</source>
        <translation type="unfinished">Kayu keras, diukur di tepi daun pintu: 1 3/4 inci. Teks tidak menyebut apakah pintu demikian di tangga juga harus menutup sendiri: tanyakan.</translation>
    </message>
    <message>
        <source>Hardwood, measured at the edge of the leaf: 45 mm. The text does not say whether latch, undercut, frame and closing by itself apply to such a door: ask.</source>
        <translation type="unfinished">Kayu keras, diukur di tepi daun pintu: 45 mm. Teks tidak menyebut apakah kancing, celah bawah, kusen, dan penutupan sendiri berlaku bagi pintu demikian: tanyakan.</translation>
    </message>
    <message>
        <source>One person can operate it from each side</source>
        <translation type="unfinished">Satu orang dapat mengoperasikannya dari setiap sisi</translation>
    </message>
    <message>
        <source>Can one person operate it?</source>
        <translation type="unfinished">Dapatkah satu orang mengoperasikannya?</translation>
    </message>
    <message>
        <source>Alone, from each side: open it and shut it. Good: one hand at the handle and a shoulder at most. Bad: it takes two people, a tool, or someone on the far side.</source>
        <translation type="unfinished">Sendirian, dari setiap sisi: buka dan tutup. Baik: cukup satu tangan di gagang dan paling banyak satu bahu. Buruk: perlu dua orang, alat, atau orang di sisi seberang.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable</source>
        <translation type="unfinished">Terbuka ke arah penyelamatan diri, bila dapat dilakukan</translation>
    </message>
    <message>
        <source>Doors of public spaces, stairway enclosures, corridors and the like. A stateroom door is not exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Pintu ruang umum, selubung tangga, koridor, dan sejenisnya. Pintu kamar tidur tidak dikecualikan. Bila tidak dapat dilakukan, sebutkan alasannya dalam catatan dan jawab ya.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(2) names public spaces, stairway enclosures, corridors and the like; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(2) menyebut ruang umum, selubung tangga, koridor, dan sejenisnya; tidak menyebut apakah pintu ini yang dimaksud.</translation>
    </message>
    <message>
        <source>Doors of accommodation spaces, stairways, stairtowers, passageways and control spaces; a stateroom door is exempt. Where it is not practicable, say why in a remark and answer yes.</source>
        <translation type="unfinished">Pintu ruang akomodasi, tangga, menara tangga, lorong, dan ruang kendali; pintu kamar tidur dikecualikan. Bila tidak dapat dilakukan, sebutkan alasannya dalam catatan dan jawab ya.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(3) names accommodation spaces, stairways, stairtowers, passageways and control spaces; it does not say whether this door is meant.</source>
        <translation type="unfinished">46 CFR 116.435(b)(3) menyebut ruang akomodasi, tangga, menara tangga, lorong, dan ruang kendali; tidak menyebut apakah pintu ini yang dimaksud.</translation>
    </message>
    <message>
        <source>As a means of escape: opened by one person from either side, in light and in darkness, obvious and quick to open, with fixed handles</source>
        <translation type="unfinished">Sebagai jalan penyelamatan diri: dibuka satu orang dari kedua sisi, dalam terang dan gelap, jelas dan cepat dibuka, dengan gagang tetap</translation>
    </message>
    <message>
        <source>Shut your eyes and open it, from either side. Good: the handle is where the hand expects it, fixed, and one move opens it. Bad: a loose handle, a hidden catch, a second move.</source>
        <translation type="unfinished">Pejamkan mata dan buka, dari salah satu sisi lalu sisi lain. Baik: gagang ada di tempat yang diduga tangan, tetap, dan satu gerakan membukanya. Buruk: gagang lepas, pengait tersembunyi, perlu gerakan kedua.</translation>
    </message>
    <message>
        <source>As a means of escape it opens in the direction of escape</source>
        <translation type="unfinished">Sebagai jalan penyelamatan diri, terbuka ke arah penyelamatan diri</translation>
    </message>
    <message>
        <source>Opens in the direction of escape?</source>
        <translation type="unfinished">Terbuka ke arah penyelamatan diri?</translation>
    </message>
    <message>
        <source>Stand where people come from and push. This rule does not say &quot;where practicable&quot;. Doors of single staterooms are exempt.</source>
        <translation type="unfinished">Berdirilah di tempat datangnya orang dan dorong. Aturan ini tidak mengatakan &quot;bila dapat dilakukan&quot;. Pintu kamar tidur tunggal dikecualikan.</translation>
    </message>
    <message>
        <source>Ask who uses it when the ship is full. A door that a passenger may use in an emergency is not for crew only.</source>
        <translation type="unfinished">Tanyakan siapa yang memakainya saat kapal penuh. Pintu yang boleh dipakai penumpang dalam keadaan darurat bukan hanya untuk awak.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 32 inches; 28 where only crew use it.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. 32 inci; 28 bila hanya awak yang memakainya.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches for crew only.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. 28 inci hanya untuk awak.</translation>
    </message>
    <message>
        <source>No lock on a door to either of the two required escapes, except a crash door or an easily forced device, marked on both sides</source>
        <translation type="unfinished">Tidak ada kunci pada pintu menuju salah satu dari dua jalan penyelamatan diri yang disyaratkan, kecuali pintu dobrak (crash door) atau alat yang mudah dipaksa, ditandai di kedua sisi</translation>
    </message>
    <message>
        <source>An exterior door that leads off a stairway enclosure may have to meet the rules for stairway doors</source>
        <translation type="unfinished">Pintu luar yang keluar dari selubung tangga mungkin harus memenuhi aturan bagi pintu tangga</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(8) lets a door to the open deck be of hardwood; the text does not say whether 72.05-25(b)(9) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(8) membolehkan pintu ke geladak terbuka dari kayu keras; teks tidak menyebut apakah 72.05-25(b)(9) tetap berlaku bagi pintu yang keluar dari tangga.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.435(c)(6) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) membolehkan pintu ke geladak cuaca dari kayu keras; teks tidak menyebut apakah 116.435(c)(6) tetap berlaku bagi pintu yang keluar dari tangga.</translation>
    </message>
    <message>
        <source>The door bears the letters F.S.D. and a number, at least 9.5 mm (3/8 in) high on a plate, 25.4 mm (1 in) stencilled, visible with the door open</source>
        <translation type="unfinished">Pintu memuat huruf F.S.D. dan nomor, tinggi minimal 9,5 mm (3/8 in) pada pelat, 25,4 mm (1 in) bila dicap, terlihat saat pintu terbuka</translation>
    </message>
    <message>
        <source>F.S.D. and its number on it, large enough and visible with the door open?</source>
        <translation type="unfinished">F.S.D. dan nomornya tertera, cukup besar dan terlihat saat pintu terbuka?</translation>
    </message>
    <message>
        <source>Open the door, then look: F.S.D. and the number in the register. Plate letters 3/8 inch, stencilled ones 1 inch. Bad: hidden by the open leaf, missing, painted over. A door of a single room is exempt.</source>
        <translation type="unfinished">Buka pintu, lalu lihat: F.S.D. dan nomor di register. Huruf pelat 3/8 inci, huruf cap 1 inci. Buruk: tertutup daun pintu yang terbuka, hilang, tertutup cat. Pintu kamar tunggal dikecualikan.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(b)(9)(i) exempts normally locked doors, 78.47-35(a) doors of single rooms: not the same doors.</source>
        <translation type="unfinished">46 CFR 72.05-25(b)(9)(i) mengecualikan pintu yang biasanya terkunci, 78.47-35(a) pintu kamar tunggal: bukan pintu yang sama.</translation>
    </message>
    <message>
        <source>It binds a vessel with more than 600 passengers or more than 49 berthed passengers (46 CFR 116.438(a)); the register does not give the number berthed.</source>
        <translation type="unfinished">Mengikat kapal dengan lebih dari 600 penumpang atau lebih dari 49 penumpang bertempat tidur (46 CFR 116.438(a)); register tidak memberi jumlah yang bertempat tidur.</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when the system fails?</source>
        <translation type="unfinished">Penahannya dilepas dari stasiun kontrol dan di pintu, dan menutup sendiri bila sistem gagal?</translation>
    </message>
    <message>
        <source>Released from the control station and at the door, and shuts by itself when its power fails?</source>
        <translation type="unfinished">Penahannya dilepas dari stasiun kontrol dan di pintu, dan menutup sendiri bila dayanya gagal?</translation>
    </message>
    <message>
        <source>No hook or other permanent means of holding it open that the control station cannot release</source>
        <translation type="unfinished">Tidak ada kait atau alat penahan tetap lain untuk menahannya terbuka yang tidak dapat dilepas stasiun kontrol</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Good: a magnet that the control station releases, or nothing. Bad: hook, chain, wedge fixed to the deck.</source>
        <translation type="unfinished">Lihat di belakang daun pintu yang terbuka, pada sekat dan di kakinya. Baik: magnet penahan yang dilepas stasiun kontrol, atau tidak ada apa-apa. Buruk: kait, rantai, ganjal yang terpasang di geladak.</translation>
    </message>
    <message>
        <source>Look behind the open leaf, at the bulkhead and at its foot. Not even a hook that the control station releases is allowed, and a normally closed or locked door is not exempt.</source>
        <translation type="unfinished">Lihat di belakang daun pintu yang terbuka, pada sekat dan di kakinya. Bahkan kait penahan yang dilepas stasiun kontrol tidak diizinkan, dan pintu yang biasanya tertutup atau terkunci tidak dikecualikan.</translation>
    </message>
    <message>
        <source>Each leaf of a double door closes and latches on its own</source>
        <translation type="unfinished">Setiap daun pintu dari pintu dua daun menutup dan mengancing sendiri</translation>
    </message>
    <message>
        <source>Does each leaf close and latch on its own?</source>
        <translation type="unfinished">Apakah setiap daun pintu menutup dan mengancing sendiri?</translation>
    </message>
    <message>
        <source>The release system engages the latch of a double-swing door</source>
        <translation type="unfinished">Sistem pelepasan memasukkan kancing pintu ayun dua arah</translation>
    </message>
    <message>
        <source>Does its latch engage on release?</source>
        <translation type="unfinished">Apakah kancingnya masuk saat pelepasan?</translation>
    </message>
    <message>
        <source>Release it and watch the latch engage by itself. Such a door is allowed only where double swing is permitted for the use of the space.</source>
        <translation type="unfinished">Lepas penahannya dan amati kancing masuk sendiri. Pintu demikian hanya diizinkan bila ayun dua arah dibolehkan untuk penggunaan ruang itu.</translation>
    </message>
    <message>
        <source>The clear opening with the leaf fully open, at the narrowest place. 28 inches always; more where more than ten persons are served, which has its own requirement.</source>
        <translation type="unfinished">Bukaan bersih dengan daun pintu terbuka penuh, di tempat tersempit. Selalu 28 inci; lebih bila melayani lebih dari sepuluh orang, yang punya persyaratan sendiri.</translation>
    </message>
    <message>
        <source>Where one leaf must close first, something makes them close in that order</source>
        <translation type="unfinished">Bila satu daun pintu harus menutup dahulu, ada sesuatu yang membuatnya menutup dalam urutan itu</translation>
    </message>
    <message>
        <source>Shut one leaf first, then the other; then the other way round. Good: it works both ways. One way only: the second leaf needs a stop of its own.</source>
        <translation type="unfinished">Tutup satu daun pintu dahulu, lalu yang lain; lalu sebaliknya. Baik: bisa dua-duanya. Hanya satu urutan: daun pintu kedua memerlukan sponing sendiri.</translation>
    </message>
    <message>
        <source>Does the handle retract the latch?</source>
        <translation type="unfinished">Apakah gagang menarik kancing?</translation>
    </message>
    <message>
        <source>Shut it, then open it by its handle: from one side, then from the other. Bad: a side without a handle, or a handle that does not retract the bolt.</source>
        <translation type="unfinished">Tutup, lalu buka dengan gagangnya: dari satu sisi, lalu dari sisi lain. Buruk: sisi tanpa gagang, atau gagang yang tidak menarik lidah.</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. 3/4 inch; B class 3/8 inch.</source>
        <translation type="unfinished">Dengan pintu terbuka dan dipegang, ukur seberapa jauh lidah menjulur dari tepi. 3/4 inci; kelas B 3/8 inci.</translation>
    </message>
    <message>
        <source>Latch throw at least 20 mm (the text adds: 0.75 in) in an A-class boundary, 9.5 mm (0.375 in) in a B-class boundary</source>
        <translation type="unfinished">Lidah kancing menjulur minimal 20 mm (teks menambahkan: 0,75 in) di pembatas kelas A, 9,5 mm (0,375 in) di pembatas kelas B</translation>
    </message>
    <message>
        <source>With the door open and held, measure how far the bolt projects from the edge. A class: the text gives 20 mm and 0.75 inch, which is 19.05 mm. B class: 9.5 mm.</source>
        <translation type="unfinished">Dengan pintu terbuka dan dipegang, ukur seberapa jauh lidah menjulur dari tepi. Kelas A: teks memberi 20 mm dan 0,75 inci, yaitu 19,05 mm. Kelas B: 9,5 mm.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">Tempat terlebar di bawah pintu tertutup, sampai ambang atau pelapis geladak. 1/2 inci; kelas B 1 inci. Linoleum dan sejenisnya dihitung sebagai pelapis geladak.</translation>
    </message>
    <message>
        <source>The widest place under the shut door, down to sill or deck covering. 1/2 inch; B class 25 mm or 1 inch. Linoleum and the like count as deck covering.</source>
        <translation type="unfinished">Tempat terlebar di bawah pintu tertutup, sampai ambang atau pelapis geladak. 1/2 inci; kelas B 25 mm atau 1 inci. Linoleum dan sejenisnya dihitung sebagai pelapis geladak.</translation>
    </message>
    <message>
        <source>Free of rugs and carpets running through?</source>
        <translation type="unfinished">Bebas permadani dan karpet yang menerus?</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.175 mm (1/8 in)</source>
        <translation type="unfinished">Kelonggaran antara kedua daun pintu dari pintu dua daun yang bekerja sendiri-sendiri, dan di atas dan sisi pintu ayun dua arah, maksimal 3,175 mm (1/8 in)</translation>
    </message>
    <message>
        <source>Both leaves shut: a feeler gauge between them; on a double-swing door also at top and sides. 1/8 inch at the widest place.</source>
        <translation type="unfinished">Kedua daun pintu tertutup: kaliber celah di antaranya; pada pintu ayun dua arah juga di atas dan sisi. 1/8 inci di tempat terlebar.</translation>
    </message>
    <message>
        <source>Clearance between double leaves that work independently, and at top and sides of a double-swing door, at most 3.2 mm</source>
        <translation type="unfinished">Kelonggaran antara kedua daun pintu dari pintu dua daun yang bekerja sendiri-sendiri, dan di atas dan sisi pintu ayun dua arah, maksimal 3,2 mm</translation>
    </message>
    <message>
        <source>Look over the whole leaf, low down as well. Good: no grille or louver. Bad: one anywhere in it.</source>
        <translation type="unfinished">Lihat seluruh daun pintu, juga di bagian bawah. Baik: tanpa kisi atau jalusi. Buruk: ada di mana pun padanya.</translation>
    </message>
    <message>
        <source>Net area of a vent grille or louver in the door of a B-class bulkhead at most 0.186 m² (2 sq ft)</source>
        <translation type="unfinished">Luas bersih kisi ventilasi atau jalusi pada pintu sekat kelas B maksimal 0,186 m² (2 sq ft)</translation>
    </message>
    <message>
        <source>Add up the open slots of the grille, not its frame. 2 square feet. No grille: 0. Subchapter K says nothing about grilles in such doors.</source>
        <translation type="unfinished">Jumlahkan celah terbuka kisi, bukan kusennya. 2 square feet. Tanpa kisi: 0. Subbab K tidak mengatakan apa pun tentang kisi pada pintu demikian.</translation>
    </message>
    <message>
        <source>A vent grille or louver only in the lower half of the door of a B-class bulkhead</source>
        <translation type="unfinished">Kisi ventilasi atau jalusi hanya di separuh bawah pintu sekat kelas B</translation>
    </message>
    <message>
        <source>Is the grille only in the lower half?</source>
        <translation type="unfinished">Apakah kisi hanya di separuh bawah?</translation>
    </message>
    <message>
        <source>Compare its upper edge with the middle of the leaf. No grille: n/a.</source>
        <translation type="unfinished">Bandingkan tepi atasnya dengan tengah daun pintu. Tanpa kisi: t/b.</translation>
    </message>
    <message>
        <source>A double-swing door only where double swing is permitted for the use of the space</source>
        <translation type="unfinished">Pintu ayun dua arah hanya bila ayun dua arah diizinkan untuk penggunaan ruang itu</translation>
    </message>
    <message>
        <source>Ask for the approval, or look at what the space is used for. Where double swing is permitted its latch may normally be idle, but the door must have one.</source>
        <translation type="unfinished">Minta persetujuannya, atau lihat untuk apa ruang itu dipakai. Bila ayun dua arah diizinkan, kancingnya boleh biasanya menganggur, tetapi pintu harus punya kancing.</translation>
    </message>
    <message>
        <source>No double-swing door, except between a food preparation space and a messroom or dining room</source>
        <translation type="unfinished">Tidak ada pintu ayun dua arah, kecuali antara ruang penyiapan makanan dan ruang makan awak (messroom) atau ruang makan</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, hinged or pivoted steel cover with a bullet catch or the like, easy to operate and self-closing</source>
        <translation type="unfinished">Lubang selang kebakaran, bila terpasang: sudut bawah berseberangan dengan engsel, kira-kira 152 mm x 152 mm, tutup baja berengsel atau berporos dengan kancing peluru atau sejenisnya, mudah dioperasikan dan menutup sendiri</translation>
    </message>
    <message>
        <source>Hose port in the lower corner opposite the hinge, about 152 × 152 mm, cover shuts by itself?</source>
        <translation type="unfinished">Lubang selang kebakaran di sudut bawah berseberangan dengan engsel, kira-kira 152 mm x 152 mm, tutupnya menutup sendiri?</translation>
    </message>
    <message>
        <source>A hose port, if fitted: lower corner opposite the hinge, about 152 × 152 mm, self-closing steel cover</source>
        <translation type="unfinished">Lubang selang kebakaran, bila terpasang: sudut bawah berseberangan dengan engsel, kira-kira 152 mm x 152 mm, tutup baja yang menutup sendiri</translation>
    </message>
    <message>
        <source>A door in an accommodation space, stairway, stairtower or corridor is vertical</source>
        <translation type="unfinished">Pintu di ruang akomodasi, tangga, menara tangga, atau koridor adalah pintu tegak</translation>
    </message>
    <message>
        <source>Is it a vertical door, where (b)(1) requires one?</source>
        <translation type="unfinished">Apakah pintu tegak, di tempat (b)(1) mensyaratkannya?</translation>
    </message>
    <message>
        <source>This one is in a deck. Between machinery, stores or other crew spaces: n/a. Over a stair: both paragraphs apply, and you decide.</source>
        <translation type="unfinished">Pintu ini pada lantai geladak. Antara ruang permesinan, gudang, atau ruang awak lain: t/b. Di atas tangga: kedua paragraf berlaku, dan Anda putuskan.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(b)(1) requires vertical doors at stairs, (c)(7)(iii) speaks of doors in decks as wide as the stair: neither overrides the other.</source>
        <translation type="unfinished">46 CFR 116.435(b)(1) mensyaratkan pintu tegak di tangga, (c)(7)(iii) berbicara tentang pintu pada lantai geladak selebar tangga: tak satu pun mengesampingkan yang lain.</translation>
    </message>
    <message>
        <source>A door in a deck leads only to a space that only crew can reach, and only crew use it</source>
        <translation type="unfinished">Pintu pada lantai geladak hanya menuju ruang yang hanya dapat dicapai awak, dan hanya awak yang memakainya</translation>
    </message>
    <message>
        <source>Two conditions: only crew can get to the space, and only crew use the door. Bad: a passenger could get to it, locked or not.</source>
        <translation type="unfinished">Dua syarat: hanya awak dapat mencapai ruang itu, dan hanya awak memakai pintunya. Buruk: penumpang dapat mencapainya, terkunci atau tidak.</translation>
    </message>
    <message>
        <source>Clear the stair, then let it go from fully open and half open. Good: it shuts fully each time. The 3.5 degree part cannot be checked on an upright ship.</source>
        <translation type="unfinished">Kosongkan tangga, lalu lepaskan dari terbuka penuh dan setengah terbuka. Baik: setiap kali menutup penuh. Bagian 3,5 derajat tidak dapat diperiksa pada kapal tegak.</translation>
    </message>
    <message>
        <source>A hold-back of a door in a deck, if fitted, releases at the door, on a signal from a control space, and when power is disrupted</source>
        <translation type="unfinished">Alat penahan pintu pada lantai geladak, bila ada, dilepas di pintu, oleh sinyal dari ruang kendali, dan bila daya terputus</translation>
    </message>
    <message>
        <source>Releases at the door, from the control space and when power is lost?</source>
        <translation type="unfinished">Penahannya dilepas di pintu, dari ruang kendali, dan bila daya hilang?</translation>
    </message>
    <message>
        <source>Hook a spring gauge on the latch and pull until it releases. The greatest force counts.</source>
        <translation type="unfinished">Kaitkan neraca pegas pada kancing dan tarik sampai lepas. Gaya terbesar yang dihitung.</translation>
    </message>
    <message>
        <source>The latch of a door in a deck keeps it shut against a pressure of 0.07 kPa (0.01 psi) from below</source>
        <translation type="unfinished">Kancing pintu pada lantai geladak menjaganya tetap tertutup terhadap tekanan 0,07 kPa (0,01 psi) dari bawah</translation>
    </message>
    <message>
        <source>Look over the whole leaf, both faces, panelled glass too. A pane behind a cover or under paint counts as glass.</source>
        <translation type="unfinished">Lihat seluruh daun pintu, kedua muka, kaca berpanel juga. Panel kaca di balik tutup atau di bawah cat dihitung sebagai kaca.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.0645 m² (100 sq in)</source>
        <translation type="unfinished">Kaca kawat pada pintu kelas A maksimal 0,0645 m² (100 sq in)</translation>
    </message>
    <message>
        <source>The visible glass, height by width. 100 square inches. No glass: 0. Doors to the open deck have no such limit.</source>
        <translation type="unfinished">Kaca yang terlihat, tinggi kali lebar. 100 inci persegi. Tanpa kaca: 0. Pintu ke geladak terbuka tidak punya batas demikian.</translation>
    </message>
    <message>
        <source>Wired glass in an A-class door at most 0.065 m²</source>
        <translation type="unfinished">Kaca kawat pada pintu kelas A maksimal 0,065 m²</translation>
    </message>
    <message>
        <source>Is its glass wired, where it opens onto an embarkation or lowering place?</source>
        <translation type="unfinished">Apakah kacanya kaca kawat, bila pintu menuju tempat embarkasi atau penurunan?</translation>
    </message>
    <message>
        <source>Single-wire glass, where wired glass is required: strands horizontal, at most 50.8 mm (2 in) apart</source>
        <translation type="unfinished">Kaca berkawat tunggal, di tempat kaca kawat disyaratkan: kawat mendatar, berjarak maksimal 50,8 mm (2 in)</translation>
    </message>
    <message>
        <source>From strand to strand, at the widest. 2 inches. Good: horizontal. Bad: vertical. Glass with a wire mesh: 0.</source>
        <translation type="unfinished">Dari kawat ke kawat, di tempat terlebar. 2 inci. Baik: mendatar. Buruk: tegak. Kaca dengan anyaman kawat: 0.</translation>
    </message>
    <message>
        <source>Windows in the door follow the rules for windows: tempered or laminated glass at least 6.5 mm (0.25 in) thick, framed and shuttered as its boundary requires</source>
        <translation type="unfinished">Jendela pada pintu mengikuti aturan untuk jendela: kaca tempa atau laminasi tebal minimal 6,5 mm (0,25 in), dengan rangka dan penutup sesuai yang disyaratkan pembatasnya</translation>
    </message>
    <message>
        <source>Are its windows as required in its boundary?</source>
        <translation type="unfinished">Apakah jendelanya seperti disyaratkan di pembatasnya?</translation>
    </message>
    <message>
        <source>46 CFR 116.433(f) covers windows in doors, 116.435(c)(9) and (10) wired glass; the text does not say which takes precedence.</source>
        <translation type="unfinished">46 CFR 116.433(f) mencakup jendela pada pintu, 116.435(c)(9) dan (10) kaca kawat; teks tidak menyebut mana yang didahulukan.</translation>
    </message>
    <message>
        <source>Combustible veneer only as and where allowed on the bulkhead</source>
        <translation type="unfinished">Pelapis mudah terbakar hanya sebagaimana dan di tempat diizinkan pada sekat</translation>
    </message>
    <message>
        <source>Free of veneer not allowed on its bulkhead?</source>
        <translation type="unfinished">Bebas pelapis yang tidak diizinkan pada sekatnya?</translation>
    </message>
    <message>
        <source>Compare leaf and bulkhead. Good: no veneer, or no more than is allowed on the bulkhead beside it. Bad: wood or laminate on a door where its bulkhead has none.</source>
        <translation type="unfinished">Bandingkan daun pintu dan sekat. Baik: tanpa pelapis, atau tidak lebih daripada yang diizinkan pada sekat di sampingnya. Buruk: kayu atau laminat pada pintu yang sekatnya tidak punya.</translation>
    </message>
    <message>
        <source>The fire door release system meets SOLAS 74 II-2/30.4.3</source>
        <translation type="unfinished">Sistem pelepasan pintu kebakaran memenuhi SOLAS 74 II-2/30.4.3</translation>
    </message>
    <message>
        <source>The Officer in Charge, Marine Inspection, decides what applies to a vessel of the United States; changes after the 2015 edition have not been checked. Later rules whose headings touch these parts but whose text has not been read: 81 FR 48219 (22 July 2016), 89 FR 76676 (18 September 2024) and, for 46 CFR 111.99-3, 88 FR 16365 (16 March 2023). Subchapter H is for vessels of 100 gross tons and over, or with more than 150 passengers, or on international voyages, contracted for on or after 26 May 1965; what was approved earlier may remain while it is kept in good condition (46 CFR 72.05-1, 72.05-90). Subchapter K is for vessels with more than 150 passengers, or with 50 to 150 berthed passengers; with more than 150 berthed passengers 72.05 applies instead (116.400). A vessel existing before 11 March 1996 keeps the rules of 10 March 1996, or may choose these instead (116.115).</source>
        <translation type="unfinished">Officer in Charge, Marine Inspection, memutuskan apa yang berlaku bagi kapal Amerika Serikat; perubahan setelah edisi 2015 belum diperiksa. Aturan kemudian yang judulnya menyentuh bagian ini tetapi teksnya belum dibaca: 81 FR 48219 (22 Juli 2016), 89 FR 76676 (18 September 2024) dan, untuk 46 CFR 111.99-3, 88 FR 16365 (16 Maret 2023). Subbab H adalah untuk kapal 100 gross ton atau lebih, atau dengan lebih dari 150 penumpang, atau dalam pelayaran internasional, dikontrak pada atau setelah 26 Mei 1965; yang disetujui sebelumnya boleh tetap selama dijaga dalam keadaan baik (46 CFR 72.05-1, 72.05-90). Subbab K adalah untuk kapal dengan lebih dari 150 penumpang, atau dengan 50 sampai 150 penumpang bertempat tidur; dengan lebih dari 150 penumpang bertempat tidur berlaku 72.05 sebagai gantinya (116.400). Kapal yang sudah ada sebelum 11 Maret 1996 mempertahankan aturan 10 Maret 1996, atau boleh memilih yang ini sebagai gantinya (116.115).</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter H: of 100 gross tons and over, with more than 150 passengers, or on international voyages; contracted for on or after 26 May 1965</source>
        <translation type="unfinished">Kapal penumpang Amerika Serikat menurut subbab H: 100 gross ton atau lebih, dengan lebih dari 150 penumpang, atau dalam pelayaran internasional; dikontrak pada atau setelah 26 Mei 1965</translation>
    </message>
    <message>
        <source>The annual edition of 2015, each section on its own page of a public copy (github.com/18F/allregs); of 72.05-10, paragraphs (a) to (g) and tables (d) and (e)</source>
        <translation type="unfinished">Edisi tahunan 2015, setiap bagian di halamannya sendiri dari salinan publik (github.com/18F/allregs); dari 72.05-10, paragraf (a) sampai (g) serta tabel (d) dan (e)</translation>
    </message>
    <message>
        <source>United States passenger vessels under subchapter K: with more than 150 passengers, or 50 to 150 berthed passengers; built on or after 11 March 1996</source>
        <translation type="unfinished">Kapal penumpang Amerika Serikat menurut subbab K: dengan lebih dari 150 penumpang, atau 50 sampai 150 penumpang bertempat tidur; dibangun pada atau setelah 11 Maret 1996</translation>
    </message>
    <message>
        <source>public rooms under 50 m² with restricted-fire-risk furnishings</source>
        <translation type="unfinished">ruang umum di bawah 50 m² dengan perabot berisiko kebakaran terbatas</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with restricted-fire-risk furnishings</source>
        <translation type="unfinished">ruang umum 50 m² atau lebih dengan perabot berisiko kebakaran terbatas</translation>
    </message>
    <message>
        <source>isolated lockers and small stores under 4 m² (no flammable liquids)</source>
        <translation type="unfinished">lemari terpisah dan gudang kecil di bawah 4 m² (tanpa cairan mudah menyala)</translation>
    </message>
    <message>
        <source>drying room up to 4 m²</source>
        <translation type="unfinished">ruang pengering sampai 4 m²</translation>
    </message>
    <message>
        <source>public rooms of 50 m² or more with ordinary furnishings</source>
        <translation type="unfinished">ruang umum 50 m² atau lebih dengan perabot biasa</translation>
    </message>
    <message>
        <source>drying room above 4 m²</source>
        <translation type="unfinished">ruang pengering di atas 4 m²</translation>
    </message>
    <message>
        <source>lockers and stores above 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">lemari dan gudang di atas 4 m² tanpa sarana untuk cairan mudah menyala</translation>
    </message>
    <message>
        <source>cabins, public rooms, offices, lavatories, hospitals, game and hobby rooms, pantries without cooking appliances (reg. 3.1), but not corridors</source>
        <translation type="unfinished">kabin, ruang umum, kantor, kamar kecil, ruang perawatan, ruang permainan dan hobi, pantri tanpa alat masak (peraturan 3.1), tetapi bukan koridor</translation>
    </message>
    <message>
        <source>lockers and stores under 4 m² with no provision for flammable liquids</source>
        <translation type="unfinished">lemari dan gudang di bawah 4 m² tanpa sarana untuk cairan mudah menyala</translation>
    </message>
    <message>
        <source>lockers and stores of 4 m² or more</source>
        <translation type="unfinished">lemari dan gudang 4 m² atau lebih</translation>
    </message>
    <message>
        <source>fire-resistant furnishings only and fire load up to 15 kg/m²</source>
        <translation type="unfinished">hanya perabot tahan api dan beban api sampai 15 kg/m²</translation>
    </message>
    <message>
        <source>High risk accommodation, 50 m² or less</source>
        <translation type="unfinished">Akomodasi risiko tinggi, 50 m² atau kurang</translation>
    </message>
    <message>
        <source>fire load above 15 kg/m² (limit 37.5 kg/m²)</source>
        <translation type="unfinished">beban api di atas 15 kg/m² (batas 37,5 kg/m²)</translation>
    </message>
    <message>
        <source>cleaning-gear locker under 5 m² that stores more than gear (no flammable liquids)</source>
        <translation type="unfinished">lemari alat kebersihan di bawah 5 m² yang menyimpan lebih dari alat (tanpa cairan mudah menyala)</translation>
    </message>
    <message>
        <source>High risk accommodation, more than 50 m²</source>
        <translation type="unfinished">Akomodasi risiko tinggi, lebih dari 50 m²</translation>
    </message>
    <message>
        <source>pantries and stores with flammable liquids or of 5 m² or more</source>
        <translation type="unfinished">pantri dan gudang dengan cairan mudah menyala atau 5 m² atau lebih</translation>
    </message>
    <message>
        <source>pump, fan, air-conditioning, steering and similar rooms with at most 2.5 kg/m² of combustible storage</source>
        <translation type="unfinished">ruang pompa, kipas, penyejuk udara, mesin kemudi, dan sejenisnya dengan simpanan mudah terbakar maksimal 2,5 kg/m²</translation>
    </message>
    <message>
        <source>Neighbouring spaces of the same category number: the bulkhead or deck may be omitted if the Administration finds it unnecessary (e.g. galley and its own pantries). A galley and a machinery space still need a division between them though both are category 12.</source>
        <translation type="unfinished">Ruang bersebelahan dengan nomor kategori sama: sekat atau geladak boleh ditiadakan bila Administrasi menganggapnya tidak perlu (misalnya dapur dan pantrinya sendiri). Dapur dan ruang permesinan tetap memerlukan divisi di antaranya meskipun keduanya kategori 12.</translation>
    </message>
    <message>
        <source>Public toilets wholly inside a stairway enclosure: the toilet bulkhead inside the enclosure may be B class.</source>
        <translation type="unfinished">Toilet umum yang seluruhnya di dalam selubung tangga: sekat toilet di dalam selubung boleh kelas B.</translation>
    </message>
    <message>
        <source>Insulation may be omitted if the category 7 machinery space has little or no fire risk in the Administration&apos;s view.</source>
        <translation type="unfinished">Insulasi boleh ditiadakan bila ruang permesinan kategori 7 menurut Administrasi berisiko kebakaran kecil atau tidak ada.</translation>
    </message>
    <message>
        <source>Under method IIIC, B-0 bulkheads are needed between rooms or groups of rooms of 50 m² or more.</source>
        <translation type="unfinished">Menurut metode IIIC, sekat B-0 diperlukan antara ruang atau kelompok ruang 50 m² atau lebih.</translation>
    </message>
    <message>
        <source>Fuel tanks, auxiliary machinery spaces and voids with a fire load above 2.5 kg/m² (0.5 lb/sq ft) need at least A-0 boundaries.</source>
        <translation type="unfinished">Tangki bahan bakar, ruang permesinan bantu, dan ruang kosong dengan beban api di atas 2,5 kg/m² (0,5 lb/sq ft) memerlukan pembatas minimal A-0.</translation>
    </message>
    <message>
        <source>Noncombustible, made intact with the ship&apos;s structure (or stopping at a continuous B or C&apos; ceiling) and smoke-tight; no insulation or flame-time requirement (116.415(a)(2)(vi)).</source>
        <translation type="unfinished">Tak mudah terbakar, dibuat menyatu dengan struktur kapal (atau berhenti di langit-langit menerus B atau C&apos;) dan kedap asap; tanpa persyaratan insulasi atau waktu nyala (116.415(a)(2)(vi)).</translation>
    </message>
    <message>
        <source>All twelve doors. The number of faults is not given. Endanger no one, confirm each caution truthfully, and score 80 of 100 points to pass.</source>
        <translation type="unfinished">Semua dua belas pintu. Jumlah cacat tidak disebut. Jangan membahayakan siapa pun, konfirmasikan setiap syarat aman dengan jujur, dan raih 80 dari 100 poin untuk lulus.</translation>
    </message>
    <message>
        <source>Two stairway doors held open by magnets. Release each one and mark when its leaf begins to move and when it is shut. One of them is in order; the other is far from it.</source>
        <translation type="unfinished">Dua pintu tangga yang ditahan terbuka oleh magnet. Lepas penahan masing-masing dan tandai saat daun pintunya mulai bergerak dan saat tertutup. Salah satunya baik; yang lain jauh dari baik.</translation>
    </message>
    <message>
        <source>Someone comes round the corner</source>
        <translation type="unfinished">Ada orang muncul di tikungan</translation>
    </message>
    <message>
        <source>A walkdown of eight doors</source>
        <translation type="unfinished">Inspeksi delapan pintu</translation>
    </message>
    <message>
        <source>Every kind of door in one walkdown. There are six faults among them; some show only on the stopwatch. Not every door has one.</source>
        <translation type="unfinished">Setiap jenis pintu dalam satu inspeksi. Ada enam cacat di antaranya; sebagian hanya tampak pada stopwatch. Tidak setiap pintu punya cacat.</translation>
    </message>
    <message>
        <source>Three power-operated doors. Time the alarm before the leaf moves, and the whole travel. Measure how far each re-opens on contact. Look into the pockets.</source>
        <translation type="unfinished">Tiga pintu yang digerakkan tenaga mesin. Ukur waktu alarm sebelum daun pintu bergerak, dan seluruh lintasan. Ukur seberapa jauh masing-masing membuka lagi saat kontak. Lihat ke dalam rongga.</translation>
    </message>
    <message>
        <source>Four hinged doors held open by magnets. Each must release from both sides and from the control station, shut in time and latch. Check the path before you release anything.</source>
        <translation type="unfinished">Empat pintu berengsel yang ditahan terbuka oleh magnet. Penahan masing-masing harus dapat dilepas dari kedua sisi dan dari stasiun kontrol, pintu menutup tepat waktu dan terkancing. Periksa lintasan sebelum melepas penahan mana pun.</translation>
    </message>
    <message>
        <source>Double doors must close in the right order, and the galley&apos;s double-swing door must come to rest shut. Something is wrong with two of them.</source>
        <translation type="unfinished">Pintu dua daun harus menutup dalam urutan yang benar, dan pintu ayun dua arah di dapur harus berhenti dalam keadaan tertutup. Ada yang salah pada dua di antaranya.</translation>
    </message>
    <message>
        <source>Gap between leaf and frame as small as the door can work with</source>
        <translation type="unfinished">Celah antara daun pintu dan kusen sekecil yang masih memungkinkan pintu bekerja</translation>
    </message>
    <message>
        <source>Shut it with the machinery space fans running. Feel for a draught all round the edge, and look for light with a torch. Good: none anywhere. Space not of category A: n/a.</source>
        <translation type="unfinished">Tutup dengan kipas ruang permesinan menyala. Rasakan embusan di sekeliling tepi, dan cari cahaya dengan senter. Baik: tidak ada di mana pun. Ruang bukan kategori A: t/b.</translation>
    </message>
    <message>
        <source>Canadian passenger ships without convention certificates, other than day boats: of 24 m or more, or under 24 m with more than 15 gross tons and more than 36 berthed passengers. SOLAS II-2 binds them too (s. 102(1)); berths and voyage decide which of them count as ships of more than 36 passengers (s. 102(3))</source>
        <translation type="unfinished">Kapal penumpang Kanada tanpa sertifikat konvensi, selain kapal harian: 24 m atau lebih, atau di bawah 24 m dengan lebih dari 15 gross ton dan lebih dari 36 penumpang bertempat tidur. SOLAS II-2 juga mengikatnya (ps. 102(1)); tempat tidur dan pelayaran menentukan mana yang dihitung sebagai kapal dengan lebih dari 36 penumpang (ps. 102(3))</translation>
    </message>
    <message>
        <source>Every vessel, whatever its date: for the ship&apos;s own maintenance, not for an inspector&apos;s test</source>
        <translation type="unfinished">Setiap kapal, apa pun tanggalnya: untuk pemeliharaan kapal sendiri, bukan untuk uji inspektur</translation>
    </message>
    <message>
        <source>At every fire drill the fire doors in the drill area are tested</source>
        <translation type="unfinished">Pada setiap latihan darurat kebakaran, pintu kebakaran di daerah latihan darurat itu diuji</translation>
    </message>
    <message>
        <source>An exterior door of a stairway enclosure need not be A class, even where other exterior doors must be</source>
        <translation type="unfinished">Pintu luar selubung tangga tidak harus kelas A, meskipun pintu luar lain harus</translation>
    </message>
    <message>
        <source>Try the handle before it is unlocked. Locked: yes, and what is required of doors in use does not apply. Open or unlocked: no, and it is graded like any other door.</source>
        <translation type="unfinished">Coba gagang sebelum kuncinya dibuka. Terkunci: ya, dan yang disyaratkan dari pintu yang dipakai tidak berlaku. Terbuka atau tidak terkunci: tidak, dan dinilai seperti pintu lain.</translation>
    </message>
    <message>
        <source>A normally latched escape door of a public space has a quick release across at least half the leaf, with no device that can lock the release</source>
        <translation type="unfinished">Pintu penyelamatan diri ruang umum yang biasanya dikancing punya pelepas cepat melintang minimal separuh daun pintu, tanpa alat yang dapat mengunci pelepas itu</translation>
    </message>
    <message>
        <source>Quick release across half the leaf, not lockable?</source>
        <translation type="unfinished">Pelepas cepat melintang separuh daun pintu, tidak dapat dikunci?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Then close this door from the safety centre and see its lamp change. Good: both work as at the control station. Bad: it is not on the panel.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Kemudian tutup pintu ini dari pusat keselamatan dan lihat lampunya berubah. Baik: keduanya bekerja seperti di stasiun kontrol. Buruk: tidak ada di panel.</translation>
    </message>
    <message>
        <source>Agree it with the engineers. Post a lookout on each side of every door that will move. Then have the supply to this door&apos;s control cut. Good: it shuts by itself. Bad: it stays open.</source>
        <translation type="unfinished">Sepakati dengan masinis. Tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Kemudian minta pasokan ke kendali pintu ini diputus. Baik: menutup sendiri. Buruk: tetap terbuka.</translation>
    </message>
    <message>
        <source>Ask for the last record of ten full cycles without the main supply. To test it, first post a lookout on each side and agree it with the control station: this runs the accumulator down.</source>
        <translation type="unfinished">Minta catatan terakhir sepuluh siklus penuh tanpa pasokan utama. Untuk mengujinya, lebih dahulu tempatkan petugas jaga di setiap sisi dan sepakati dengan stasiun kontrol: ini menghabiskan isi akumulator.</translation>
    </message>
    <message>
        <source>Check the drawing of the control system. Or post a lookout on each side of every door that will move, isolate this one and operate the others. Good: they move as before. Bad: they do not move.</source>
        <translation type="unfinished">Periksa gambar sistem kendali. Atau tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak, isolasi pintu ini, dan operasikan yang lain. Baik: bergerak seperti sebelumnya. Buruk: tidak bergerak.</translation>
    </message>
    <message>
        <source>On remote release the alarm sounds 5 to 10 s before the leaf moves</source>
        <translation type="unfinished">Saat penahan dilepas dari jauh, alarm berbunyi 5 sampai 10 s sebelum daun pintu bergerak</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Release from the control station: time from the first sound of the alarm to the leaf&apos;s first movement. Bad: it moves at once, or much later.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Lepas penahan dari stasiun kontrol: ukur waktu dari bunyi pertama alarm sampai gerak pertama daun pintu. Buruk: langsung bergerak, atau jauh kemudian.</translation>
    </message>
    <message>
        <source>Are there approval documents for the control system?</source>
        <translation type="unfinished">Ada dokumen persetujuan untuk sistem kendali?</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it with its supply on, then with it cut. Good: it shuts firmly each time. Doors of escape trunks too. Space not of category A: n/a.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Lepas penahannya dengan pasokan menyala, lalu dengan pasokan diputus. Baik: setiap kali menutup mantap. Pintu jalur penyelamatan diri juga. Ruang bukan kategori A: t/b.</translation>
    </message>
    <message>
        <source>A door of an escape trunk closes by itself</source>
        <translation type="unfinished">Pintu jalur penyelamatan diri (escape trunk) menutup sendiri</translation>
    </message>
    <message>
        <source>Let it go from fully open, half open and a small angle. Good: it shuts fully each time. Bad: it stays ajar, or something holds it open. The text gives no angle. Not a door of an escape trunk: n/a.</source>
        <translation type="unfinished">Lepaskan dari terbuka penuh, setengah terbuka, dan sudut kecil. Baik: setiap kali menutup penuh. Buruk: tetap sedikit terbuka, atau ada yang menahannya terbuka. Teks tidak memberi sudut. Bukan pintu jalur penyelamatan diri: t/b.</translation>
    </message>
    <message>
        <source>the text requires it of the escape from a machinery space of category A; the register does not show that this trunk belongs to one</source>
        <translation type="unfinished">teks mensyaratkannya bagi jalan keluar dari ruang permesinan kategori A; register tidak menunjukkan bahwa jalur penyelamatan diri ini termasuk di dalamnya</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Release it by remote control, then with its supply cut. Good: it is released each time. Space not of category A, or no hold-back: n/a.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Lepas penahannya dengan kendali jarak jauh, lalu dengan pasokannya diputus. Baik: penahan terlepas setiap kali. Ruang bukan kategori A, atau tanpa alat penahan: t/b.</translation>
    </message>
    <message>
        <source>SOLAS passenger ships built on or after 1 July 2002; part E (condition and maintenance plan) applies to ships of any date</source>
        <translation type="unfinished">Kapal penumpang SOLAS yang dibangun pada atau setelah 1 Juli 2002; bagian E (kondisi dan rencana pemeliharaan) berlaku bagi kapal dari tanggal mana pun</translation>
    </message>
    <message>
        <source>A door to the open deck in an A-class bulkhead may be of hardwood, at least 44.5 mm (1 3/4 in) thick, and is then exempt from 72.05-25(b)(1) to (7)</source>
        <translation type="unfinished">Pintu ke geladak terbuka di sekat kelas A boleh dari kayu keras, tebal minimal 44,5 mm (1 3/4 in), dan dengan itu dikecualikan dari 72.05-25(b)(1) sampai (7)</translation>
    </message>
    <message>
        <source>Check the fire plan, or go in. A stairway enclosure behind it: yes. Any other space: no. Neither answer is a fault: it decides what else applies to the door.</source>
        <translation type="unfinished">Lihat denah pengendalian kebakaran, atau masuk. Selubung tangga di baliknya: ya. Ruang lain: tidak. Tak satu pun jawaban berarti cacat: ini menentukan apa lagi yang berlaku bagi pintu.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test from the control station, at the door, and with the system off: it must shut each time. Not required of a normally closed door. Hooks: separate check.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Uji dari stasiun kontrol, di pintu, dan dengan sistem mati: harus menutup setiap kali. Tidak disyaratkan bagi pintu yang biasanya tertutup. Kait: pemeriksaan terpisah.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door that will move. Test it from the control station, at the door, and with its power off: it must shut each time. No hold-back: n/a. Hooks are a separate check.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Uji dari stasiun kontrol, di pintu, dan dengan dayanya mati: harus menutup setiap kali. Tanpa alat penahan: t/b. Kait adalah pemeriksaan terpisah.</translation>
    </message>
    <message>
        <source>A door to a stairway is as wide as the number of persons served requires; for a zone stair on the embarkation deck, 1118 mm (44 in) to each side</source>
        <translation type="unfinished">Pintu ke tangga selebar yang disyaratkan jumlah orang yang dilayani; untuk tangga zona di geladak embarkasi, 1118 mm (44 in) ke setiap sisi</translation>
    </message>
    <message>
        <source>The leaves of a double door can shut in either order</source>
        <translation type="unfinished">Kedua daun pintu dari pintu dua daun dapat menutup dalam urutan mana pun</translation>
    </message>
    <message>
        <source>Can the leaves shut in either order?</source>
        <translation type="unfinished">Dapatkah kedua daun pintu menutup dalam urutan mana pun?</translation>
    </message>
    <message>
        <source>Keep everyone off the stair. Keep hands and feet away from the edge of the door. Time it from the first movement to fully shut.</source>
        <translation type="unfinished">Jauhkan semua orang dari tangga. Jauhkan tangan dan kaki dari tepi pintu. Ukur waktunya dari gerak pertama sampai tertutup penuh.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Look at the bulkhead and the coaming beside the open door. Good: no hook, chain or pin that holds it up.</source>
        <translation type="unfinished">Jauhkan semua orang dari bawah pintu. Lihat sekat dan ambang palka (coaming) di samping pintu yang terbuka. Baik: tidak ada kait, rantai, atau pena yang menahannya.</translation>
    </message>
    <message>
        <source>First clear the stair and post a lookout on each side of every door that will move. Test it at the door, from the control space, and with its power off: it must shut each time. No hold-back fitted: n/a.</source>
        <translation type="unfinished">Lebih dahulu kosongkan tangga dan tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Uji di pintu, dari ruang kendali, dan dengan dayanya mati: harus menutup setiap kali. Tanpa alat penahan: t/b.</translation>
    </message>
    <message>
        <source>Keep everyone out from under the door. Pull with a spring gauge until it is open to the stair&apos;s width. The greatest force on the way counts.</source>
        <translation type="unfinished">Jauhkan semua orang dari bawah pintu. Tarik dengan neraca pegas sampai terbuka selebar tangga. Gaya terbesar di sepanjang gerakan yang dihitung.</translation>
    </message>
    <message>
        <source>A class: steel frame; an internal window also has an insulated shutter. B-15: wired, and a shutter with a fusible link; B-0: wired. In B class a laboratory-listed fire window is enough.</source>
        <translation type="unfinished">Kelas A: kusen baja; jendela dalam juga punya penutup berinsulasi. B-15: kaca kawat, dan penutup dengan sambungan lebur; B-0: kaca kawat. Di kelas B cukup jendela tahan api yang terdaftar di laboratorium.</translation>
    </message>
    <message>
        <source>Along the whole sill, with a torch and underfoot. Good: complete, flat and firm. Bad: a loose, bent or missing piece that a foot can catch on.</source>
        <translation type="unfinished">Sepanjang ambang, dengan senter dan dengan kaki. Baik: lengkap, rata, dan kukuh. Buruk: bagian longgar, bengkok, atau hilang yang membuat kaki tersangkut.</translation>
    </message>
    <message>
        <source>Never put a hand into the pocket while the door can move. Look in with a torch. Good: clear to the end. Bad: dirt, litter, stores.</source>
        <translation type="unfinished">Jangan pernah memasukkan tangan ke rongga selagi pintu dapat bergerak. Lihat ke dalam dengan senter. Baik: bersih sampai ujung. Buruk: kotoran, sampah, barang.</translation>
    </message>
    <message>
        <source>Two doors at rest. Look at both sides of each, and at everything you are asked about. Something is not in order.</source>
        <translation type="unfinished">Dua pintu diam. Lihat kedua sisi masing-masing, dan semua yang ditanyakan kepada Anda. Ada yang tidak baik.</translation>
    </message>
    <message>
        <source>No hold-back hooks</source>
        <translation type="unfinished">Tidak ada kait penahan</translation>
    </message>
    <message>
        <source>Look behind the open door, at bulkhead, leaf and deck. Bad: any hook, cabin hook or eye plate with signs of use, even one that the wheelhouse can release.</source>
        <translation type="unfinished">Lihat di belakang pintu yang terbuka, pada sekat, daun pintu, dan geladak. Buruk: kait, kait kabin, atau pelat mata apa pun dengan tanda pernah dipakai, bahkan kait penahan yang dapat dilepas dari ruang kemudi.</translation>
    </message>
    <message>
        <source>the text names stairways, public spaces and zone bulkheads; the register does not say whether this door is in a public space</source>
        <translation type="unfinished">teks menyebut tangga, ruang umum, dan sekat zona; register tidak menyatakan apakah pintu ini di ruang umum</translation>
    </message>
    <message>
        <source>9.4.1.1 speaks of A-class divisions; this door is A class, its boundary is not</source>
        <translation type="unfinished">9.4.1.1 menyebut divisi kelas A; pintu ini kelas A, tetapi pembatasnya bukan</translation>
    </message>
    <message>
        <source>9.4.1.2.2 speaks of cabin doors in B-class divisions; the class of this boundary is not known</source>
        <translation type="unfinished">9.4.1.2.2 menyebut pintu kabin pada divisi kelas B; kelas pembatas ini tidak diketahui</translation>
    </message>
    <message>
        <source>Good: no lock; or one easily forced, with a clear lasting notice on both sides. An outside deckhouse door locked with a key held by an officer: n/a.</source>
        <translation type="unfinished">Baik: tidak ada kunci; atau kunci yang mudah dibuka paksa, dengan tanda jelas dan awet di kedua sisi. Pintu luar rumah geladak yang dikunci dan anak kuncinya dipegang perwira: t/b.</translation>
    </message>
    <message>
        <source>46 CFR 72.05-25(a)(8) exempts an outside door of a deckhouse that is locked with a key held by an officer; the register does not say whether this is one.</source>
        <translation type="unfinished">46 CFR 72.05-25(a)(8) mengecualikan pintu luar rumah geladak yang dikunci dan anak kuncinya dipegang perwira; register tidak menyatakan apakah pintu ini demikian.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) lets a door to a weather deck be of hardwood; the text does not say whether 116.438(a) still applies to a door that leads off a stairway.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) membolehkan kayu keras untuk pintu ke geladak cuaca; teks tidak menyatakan apakah 116.438(a) masih berlaku bagi pintu yang keluar dari tangga.</translation>
    </message>
    <message>
        <source>Look along the edge of each pane, on both faces. Good: metal all round. Bad: wood, putty or rubber alone.</source>
        <translation type="unfinished">Lihat sepanjang tepi setiap panel kaca, di kedua muka. Baik: logam di sekelilingnya. Buruk: hanya kayu, dempul, atau karet.</translation>
    </message>
    <message>
        <source>A window in a door next to an embarkation station, an escape route or survival craft is A class or has steel shutters that are operated from outside</source>
        <translation type="unfinished">Jendela pada pintu di sebelah stasiun embarkasi, jalur evakuasi, atau pesawat penyelamat berkelas A atau punya penutup baja (shutter) yang dioperasikan dari luar</translation>
    </message>
    <message>
        <source>Next to embarkation, escape route or survival craft: windows A class, or steel shutters?</source>
        <translation type="unfinished">Di sebelah embarkasi, jalur evakuasi, atau pesawat penyelamat: jendela kelas A, atau penutup baja?</translation>
    </message>
    <message>
        <source>9.4.1.1.7 exempts an exterior door of a stairway enclosure from A-class integrity</source>
        <translation type="unfinished">9.4.1.1.7 mengecualikan pintu luar selubung tangga dari keutuhan kelas A</translation>
    </message>
    <message>
        <source>Knock on leaf and frame; check the plate and the approval documents. Good: steel, or documents that show the material is equivalent. Bad: wood, plastic or bare aluminium.</source>
        <translation type="unfinished">Ketuk daun pintu dan kusen; periksa pelat dan dokumen persetujuannya. Baik: baja, atau dokumen yang menunjukkan bahannya setara. Buruk: kayu, plastik, atau aluminium polos.</translation>
    </message>
    <message>
        <source>Check the plate and the approval documents. Bad: wood or plastic. With 36 passengers or fewer the Administration may allow these between a cabin and its own shower or toilet: n/a.</source>
        <translation type="unfinished">Periksa pelat dan dokumen persetujuannya. Buruk: kayu atau plastik. Dengan 36 penumpang atau kurang, Administrasi boleh mengizinkannya antara kabin dan pancuran atau toiletnya sendiri: t/b.</translation>
    </message>
    <message>
        <source>Knock on the leaf and read its approval documents. A-60, A-30, A-15: filled with approved insulation. A-0: steel, solid or hollow. Bad: wood, plastics, a filling not in the documents.</source>
        <translation type="unfinished">Ketuk daun pintu dan baca dokumen persetujuannya. A-60, A-30, A-15: terisi insulasi yang disetujui. A-0: baja, pejal atau berongga. Buruk: kayu, plastik, isian yang tidak ada dalam dokumen.</translation>
    </message>
    <message>
        <source>Hardwood doors to the open deck included. Measure at an open edge, or take the figure from the approval documents. The thinnest pane counts.</source>
        <translation type="unfinished">Termasuk pintu kayu keras ke geladak terbuka. Ukur di tepi yang terbuka, atau ambil angkanya dari dokumen persetujuan. Panel kaca tertipis yang dihitung.</translation>
    </message>
    <message>
        <source>Check the approval documents, where such a system is installed: an approval that names SOLAS 74 II-2/30.4.3.</source>
        <translation type="unfinished">Periksa dokumen persetujuannya, bila sistem demikian terpasang: persetujuan yang menyebut SOLAS 74 II-2/30.4.3.</translation>
    </message>
    <message>
        <source>After release from the permanently manned place, open it by hand and let go. Good: it opens, and closes again safely. Bad: it stays locked, or stays open.</source>
        <translation type="unfinished">Setelah pelepasan dari tempat yang dijaga terus-menerus, buka dengan tangan dan lepaskan. Baik: terbuka, lalu menutup lagi dengan aman. Buruk: tetap terkunci, atau tetap terbuka.</translation>
    </message>
    <message>
        <source>Agree it with bridge and engineers. Post a lookout on each side of every door that will move. Main power off: test on battery, then emergency source. Good: held, released and shut on each. Its own battery will do.</source>
        <translation type="unfinished">Sepakati dengan anjungan dan masinis. Tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Daya utama mati: uji dengan baterai, lalu dengan sumber darurat. Baik: ditahan, penahan dilepas, dan menutup pada keduanya. Baterai milik sistem itu sendiri sudah cukup.</translation>
    </message>
    <message>
        <source>First post a lookout on each side of every door in the group. Stand clear: the leaf may move without an alarm. Listen as it is released. Good: the alarm sounds before the leaf moves. Bad: silence, or both start together.</source>
        <translation type="unfinished">Lebih dahulu tempatkan petugas jaga di setiap sisi dari setiap pintu dalam grup. Menjauhlah: daun pintu dapat bergerak tanpa bunyi alarm. Dengarkan saat penahannya dilepas. Baik: alarm berbunyi sebelum daun pintu bergerak. Buruk: senyap, atau keduanya mulai bersamaan.</translation>
    </message>
    <message>
        <source>Opened by one person at once, in the dark, by a fixed handle?</source>
        <translation type="unfinished">Dapat segera dibuka satu orang, dalam gelap, dengan gagang tetap?</translation>
    </message>
    <message>
        <source>Zone stairs: 11 to 20 persons = 30 in, up to 30 = 32, up to 40 = 34, up to 50 = 36, more = 0.75 in per person; on the embarkation deck 44 to each side. Other passenger stairs: same, but over 50 = 36. Crew over 10: 30.</source>
        <translation type="unfinished">Tangga zona: 11 sampai 20 orang = 30 in, sampai 30 = 32, sampai 40 = 34, sampai 50 = 36, lebih = 0,75 in per orang; di geladak embarkasi 44 ke setiap sisi. Tangga penumpang lain: sama, tetapi di atas 50 = 36. Awak di atas 10: 30.</translation>
    </message>
    <message>
        <source>46 CFR 116.435(c)(9) sets aside construction and rating for a hardwood door to the weather deck; it does not mention this requirement.</source>
        <translation type="unfinished">46 CFR 116.435(c)(9) mengesampingkan konstruksi dan kelas bagi pintu kayu keras ke geladak cuaca; persyaratan ini tidak disebut di situ.</translation>
    </message>
    <message>
        <source>Lower corner opposite the hinge, about 6 × 6 inches, no tolerance given: a hose must pass and the door shut over it. Lift the steel cover and let go: it must fall shut. No port, whatever the register says: n/a.</source>
        <translation type="unfinished">Sudut bawah berseberangan dengan engsel, kira-kira 6 x 6 inci, tanpa toleransi: selang harus dapat lewat dan pintu tertutup di atasnya. Angkat tutup baja dan lepaskan: harus jatuh menutup. Tidak ada lubang selang, apa pun isi register: t/b.</translation>
    </message>
    <message>
        <source>Applies where the door opens onto such a place from a service, cargo or machinery space, or from accommodation with combustible furniture. The area of glass is not limited. Opening elsewhere: n/a.</source>
        <translation type="unfinished">Berlaku bila pintu menuju tempat demikian dari ruang layanan, ruang muat, atau ruang permesinan, atau dari akomodasi dengan perabot mudah terbakar. Luas kaca tidak dibatasi. Menuju tempat lain: t/b.</translation>
    </message>
    <message>
        <source>Next to an embarkation station, an escape route or survival craft. Good: documents that show A class, or steel shutters that shut from outside; try them. Not next to one of these: n/a.</source>
        <translation type="unfinished">Di sebelah stasiun embarkasi, jalur evakuasi, atau pesawat penyelamat. Baik: dokumen yang menunjukkan kelas A, atau penutup baja (shutter) yang dapat ditutup dari luar; cobalah. Tidak di sebelah salah satunya: t/b.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, its handle is in the way, or it swings against the flow.</source>
        <translation type="unfinished">Operasikan keduanya bersama. Tanpa pintu hias: t/b. Buruk: harus dibuka dahulu, gagangnya menghalangi, atau berayun melawan arus orang.</translation>
    </message>
    <message>
        <source>Operate both together. No decorative door: n/a. Bad: it must be opened first, it opens the other way, or it is at a stairway.</source>
        <translation type="unfinished">Operasikan keduanya bersama. Tanpa pintu hias: t/b. Buruk: harus dibuka dahulu, terbuka ke arah lain, atau ada di tangga.</translation>
    </message>
    <message>
        <source>a stair enclosed on only one level counts as part of the space it opens into without a fire door</source>
        <translation type="unfinished">tangga yang hanya diselubungi di satu tingkat dihitung sebagai bagian dari ruang yang terhubung dengannya tanpa pintu kebakaran</translation>
    </message>
    <message>
        <source>A-0 is enough if no dangerous goods are carried, or they are stowed at least 3 m horizontally from the bulkhead.</source>
        <translation type="unfinished">A-0 cukup jika tidak ada barang berbahaya yang diangkut, atau jika barang itu disimpan minimal 3 m dari sekat, diukur mendatar.</translation>
    </message>
    <message>
        <source>the text read is for vessels built from 30 December 2008 until ES-TRIN replaced it on 7 October 2018 (date from memory); the text for any other vessel has not been read</source>
        <translation type="unfinished">teks yang dibaca adalah untuk kapal yang dibangun sejak 30 Desember 2008 sampai ES-TRIN menggantikan teks itu pada 7 Oktober 2018 (tanggal dari ingatan); teks untuk kapal lain belum dibaca</translation>
    </message>
    <message>
        <source>Port State campaign on fire doors: lamps, a sample of doors released at the door and remotely, any door lashed open, closing and latching, machinery doors, rating</source>
        <translation type="unfinished">Kampanye Port State Control (PSC) pintu kebakaran: lampu, sampel pintu yang penahannya dilepas di pintu dan dari jauh, pintu mana pun yang diikat terbuka, penutupan dan pengancingan, pintu ruang permesinan, kelas</translation>
    </message>
    <message>
        <source>The vessel&apos;s own Administration decides what binds it: SOLAS requirements are shown as advice and fail no door, and common practice is left to the inspector.</source>
        <translation type="unfinished">Administrasi kapal sendiri menentukan apa yang mengikatnya: persyaratan SOLAS ditampilkan sebagai saran dan tidak menggagalkan pintu mana pun, dan praktik umum diserahkan kepada inspektur.</translation>
    </message>
    <message>
        <source>the text leaves it to judgement where the speed has to be controlled, and gives no figure</source>
        <translation type="unfinished">teks menyerahkan soal di mana kecepatan harus dikendalikan kepada keputusan di lapangan, dan tidak memberi angka</translation>
    </message>
    <message>
        <source>Check the approval documents: works at 200 °C or more for 60 min or more, does not affect the supply to other doors, isolates itself above 200 °C and keeps the door shut up to 945 °C or more.</source>
        <translation type="unfinished">Periksa dokumen persetujuannya: bekerja pada 200 °C atau lebih selama 60 menit atau lebih, tidak memengaruhi pasokan ke pintu lain, mengisolasi diri di atas 200 °C dan menjaga pintu tertutup sampai 945 °C atau lebih.</translation>
    </message>
    <message>
        <source>Opens in the direction of escape, where practicable?</source>
        <translation type="unfinished">Terbuka ke arah penyelamatan diri, bila dapat dilakukan?</translation>
    </message>
    <message>
        <source>To a required escape: free of locks, except one easily forced and marked on both sides?</source>
        <translation type="unfinished">Ke jalan penyelamatan diri yang disyaratkan: bebas kunci, kecuali kunci yang mudah dibuka paksa dan ditandai di kedua sisi?</translation>
    </message>
    <message>
        <source>The sentence on release exempts normally closed doors, the sentence on hooks exempts none; the text does not say whether the exemption covers hooks too.</source>
        <translation type="unfinished">Kalimat tentang pelepasan penahan mengecualikan pintu yang biasanya tertutup, kalimat tentang kait tidak mengecualikan satu pintu pun; teks tidak menyebut apakah pengecualian itu berlaku juga bagi kait.</translation>
    </message>
    <message>
        <source>Look at the edge of the leaf. Good: a bolt, and a strike for it in the frame. Bad: a roller, a magnet or nothing. Where double swing is permitted the latch may be idle, but must be there.</source>
        <translation type="unfinished">Lihat tepi daun pintu. Baik: ada lidah, dan pelat kunci untuknya di kusen. Buruk: rol, magnet, atau tidak ada apa-apa. Bila ayun dua arah diizinkan, kancing boleh menganggur, tetapi harus ada.</translation>
    </message>
    <message>
        <source>A stop or overlap of at least 12.7 mm at the sides and top</source>
        <translation type="unfinished">Sponing atau tumpang tindih minimal 12,7 mm di sisi dan atas</translation>
    </message>
    <message>
        <source>Check the maker&apos;s figure in the approval documents: at least 0.07 kPa, about 7 kg per square metre. With the door shut, push up from below: it must not lift.</source>
        <translation type="unfinished">Periksa angka pembuat dalam dokumen persetujuannya: minimal 0,07 kPa, kira-kira 7 kg per meter persegi. Saat pintu tertutup, dorong ke atas dari bawah: pintu tidak boleh terangkat.</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material or opens the wrong way?</source>
        <translation type="unfinished">Bebas pintu hias yang menghalanginya, yang bahannya salah, atau yang terbuka ke arah yang salah?</translation>
    </message>
    <message>
        <source>Free of a decorative door that hinders it, is of the wrong material, opens the wrong way or is at a stair?</source>
        <translation type="unfinished">Bebas pintu hias yang menghalanginya, yang bahannya salah, yang terbuka ke arah yang salah, atau yang ada di tangga?</translation>
    </message>
    <message>
        <source>as type 6 but larger; the sign before the size is missing in the source text and inferred from type 6</source>
        <translation type="unfinished">seperti tipe 6 tetapi lebih besar; tanda di depan angka luas hilang dalam teks sumber dan disimpulkan dari tipe 6</translation>
    </message>
    <message>
        <source>Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Nilai mana yang berlaku dari keduanya mengikuti 2.3.2 dan 2.3.4: tangga yang hanya menembus satu geladak memerlukan B-0 dengan pintu yang menutup sendiri minimal di satu tingkat; tangga dan lift yang menembus lebih dari satu geladak memerlukan A-0 dengan pintu yang menutup sendiri di semua tingkat; lift yang menembus satu geladak memerlukan A-0 dengan pintu baja di kedua tingkat. Dengan tempat tidur untuk 12 orang atau kurang dan dua jalan penyelamatan langsung ke geladak terbuka dari setiap tingkat akomodasi, A-0 boleh turun ke B-0.</translation>
    </message>
    <message>
        <source>Tankers use method IC only. Which of the two values applies follows from 2.3.2 and 2.3.4: a stair through only one deck needs B-0 with self-closing doors on at least one level; stairs and lifts through more than one deck need A-0 with self-closing doors on all levels; a lift through one deck needs A-0 with steel doors on both levels. With berths for 12 or fewer and two direct escapes to open deck from each accommodation level, A-0 may drop to B-0.</source>
        <translation type="unfinished">Kapal tangki hanya memakai metode IC. Nilai mana yang berlaku dari keduanya mengikuti 2.3.2 dan 2.3.4: tangga yang hanya menembus satu geladak memerlukan B-0 dengan pintu yang menutup sendiri minimal di satu tingkat; tangga dan lift yang menembus lebih dari satu geladak memerlukan A-0 dengan pintu yang menutup sendiri di semua tingkat; lift yang menembus satu geladak memerlukan A-0 dengan pintu baja di kedua tingkat. Dengan tempat tidur untuk 12 orang atau kurang dan dua jalan penyelamatan langsung ke geladak terbuka dari setiap tingkat akomodasi, A-0 boleh turun ke B-0.</translation>
    </message>
    <message>
        <source>People do not know that you are testing. Keep your eyes on the path while a leaf moves, and stop the test before the leaf reaches anyone. A stopped run can be repeated.</source>
        <translation type="unfinished">Orang tidak tahu bahwa Anda sedang menguji. Awasi terus lintasan selagi daun pintu bergerak, dan hentikan uji sebelum daun pintu mengenai siapa pun. Uji yang dihentikan dapat diulang.</translation>
    </message>
</context>
<context>
    <name>ChangedWords</name>
    <message>
        <source>no such requirement</source>
        <translation type="unfinished">tidak ada persyaratan itu</translation>
    </message>
    <message>
        <source>Limit: %1</source>
        <translation type="unfinished">Batas: %1</translation>
    </message>
    <message>
        <source>A different edition of the catalogue is now in use.</source>
        <translation type="unfinished">Kini dipakai edisi katalog yang lain.</translation>
    </message>
    <message>
        <source>A different edition of the catalogue, or of the rules of %1, is now in use.</source>
        <translation type="unfinished">Kini dipakai edisi lain dari katalog, atau dari aturan %1.</translation>
    </message>
    <message>
        <source>The rules of %1 no longer apply on top of the catalogue.</source>
        <translation type="unfinished">Aturan %1 tidak lagi berlaku sebagai tambahan atas katalog.</translation>
    </message>
    <message>
        <source>The rules of %1 now apply on top of the catalogue.</source>
        <translation type="unfinished">Aturan %1 kini berlaku sebagai tambahan atas katalog.</translation>
    </message>
    <message>
        <source>was %1, now %2</source>
        <translation type="unfinished">dahulu %1, kini %2</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">tidak berlaku bagi pintu ini</translation>
    </message>
</context>
<context>
    <name>ClaimWords</name>
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
        <source>at most 1 of 1 door is defective</source>
        <translation type="unfinished">maksimal 1 dari 1 pintu cacat</translation>
    </message>
    <message>
        <source>The claim is supported.</source>
        <translation type="unfinished">Pernyataan itu terdukung.</translation>
    </message>
    <message>
        <source>Continue: test %1 more.</source>
        <translation type="unfinished">Lanjutkan: uji %1 lagi.</translation>
    </message>
    <message>
        <source>Extend: test %1 more. If none of those fails, the claim is supported, with slightly less confidence than stated, because the results enlarged the sample.</source>
        <translation type="unfinished">Perluas: uji %1 lagi. Jika tidak satu pun gagal, pernyataan itu terdukung, dengan keyakinan sedikit lebih rendah daripada yang disebut, karena sampel diperbesar setelah melihat hasilnya.</translation>
    </message>
    <message>
        <source>Every door has been tested: the claim fails.</source>
        <translation type="unfinished">Semua pintu sudah diuji: pernyataan itu gugur.</translation>
    </message>
    <message>
        <source>Test all: the remaining door as well.</source>
        <translation type="unfinished">Uji semua: pintu yang tersisa juga.</translation>
    </message>
    <message>
        <source>Test all: the remaining %1 doors as well.</source>
        <translation type="unfinished">Uji semua: %1 pintu yang tersisa juga.</translation>
    </message>
    <message>
        <source>the one door is not defective</source>
        <translation type="unfinished">satu pintu itu tidak cacat</translation>
    </message>
    <message>
        <source>Test 1 door, drawn at random. If it does not fail: %1 confidence that %2.</source>
        <translation type="unfinished">Uji 1 pintu, dipilih secara acak. Jika tidak gagal: keyakinan %1 bahwa %2.</translation>
    </message>
    <message>
        <source>Test %1 doors, drawn at random. If none fails: %2 confidence that %3.</source>
        <translation type="unfinished">Uji %1 pintu, dipilih secara acak. Jika tidak satu pun gagal: keyakinan %2 bahwa %3.</translation>
    </message>
    <message>
        <source>A different claim, not to be confused with this one: if exactly %1 of %2 doors are defective, testing %3 gives at least a %4 chance of finding one or more of them.</source>
        <translation type="unfinished">Pernyataan lain, jangan tertukar dengan yang ini: jika tepat %1 dari %2 pintu cacat, menguji %3 memberi peluang minimal %4 untuk menemukan satu atau lebih di antaranya.</translation>
    </message>
    <message>
        <source>%1 of 1 door tested, none failed: %2 confidence that %3. %4</source>
        <translation type="unfinished">%1 dari 1 pintu diuji, tidak satu pun gagal: keyakinan %2 bahwa %3. %4</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, none failed: %3 confidence that %4. %5</source>
        <translation type="unfinished">%1 dari %2 pintu diuji, tidak satu pun gagal: keyakinan %3 bahwa %4. %5</translation>
    </message>
    <message>
        <source>1 of 1 door tested, 1 failed: %1 confidence that %2. %3</source>
        <translation type="unfinished">1 dari 1 pintu diuji, 1 gagal: keyakinan %1 bahwa %2. %3</translation>
    </message>
    <message>
        <source>%1 of %2 doors tested, %3 failed: %4 confidence that %5. %6</source>
        <translation type="unfinished">%1 dari %2 pintu diuji, %3 gagal: keyakinan %4 bahwa %5. %6</translation>
    </message>
</context>
<context>
    <name>CloseUpWords</name>
    <message>
        <source>A plate engraved %1</source>
        <translation type="unfinished">Pelat berukir %1</translation>
    </message>
    <message>
        <source>Four screw holes round a pale patch</source>
        <translation type="unfinished">Empat lubang sekrup di sekitar bekas pucat</translation>
    </message>
    <message>
        <source>A magnet on its arm, its armature on the leaf</source>
        <translation type="unfinished">Magnet pada lengannya, angkernya pada daun pintu</translation>
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
        <translation type="unfinished">Sudut bawah daun pintu, polos</translation>
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
        <source>The lamp marked shut is lit</source>
        <translation type="unfinished">Lampu bertanda tertutup menyala</translation>
    </message>
    <message>
        <source>The lamp marked open is lit</source>
        <translation type="unfinished">Lampu bertanda terbuka menyala</translation>
    </message>
    <message>
        <source>A steel sill screwed down, the floor covering ends at its trim</source>
        <translation type="unfinished">Ambang baja tersekrup, pelapis lantai berakhir di lisnya</translation>
    </message>
    <message>
        <source>The floor covering runs on under the leaf; four holes in the deck</source>
        <translation type="unfinished">Pelapis lantai menerus di bawah daun pintu; empat lubang di geladak</translation>
    </message>
    <message>
        <source>The rule reads %1 mm at the foot of the leaf</source>
        <translation type="unfinished">Mistar menunjukkan %1 mm di kaki daun pintu</translation>
    </message>
    <message>
        <source>The deck, and a wooden wedge under the edge of the leaf</source>
        <translation type="unfinished">Geladak, dan ganjal kayu di bawah tepi daun pintu</translation>
    </message>
    <message>
        <source>The deck on both sides, nothing on it</source>
        <translation type="unfinished">Geladak di kedua sisi, tidak ada apa pun di atasnya</translation>
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
        <source>Leaf and frame, their paint even, nothing fixed to them</source>
        <translation type="unfinished">Daun pintu dan kusen, catnya rata, tidak ada yang terpasang padanya</translation>
    </message>
    <message>
        <source>A plate worn bare; no letter is legible</source>
        <translation type="unfinished">Pelat aus sampai polos; tidak ada huruf yang terbaca</translation>
    </message>
    <message>
        <source>A port 150 mm by 150 mm, %1</source>
        <translation type="unfinished">Lubang 150 mm x 150 mm, %1</translation>
    </message>
    <message>
        <source>Two lamps; no one has read them out yet</source>
        <translation type="unfinished">Dua lampu; belum ada yang membacakannya</translation>
    </message>
    <message>
        <source>A soft edge on the leaf and a block in front of it; no run against it yet</source>
        <translation type="unfinished">Tepi lunak pada daun pintu dan balok di depannya; belum ada uji terhadapnya</translation>
    </message>
    <message>
        <source>The edge is %1 back from the block, by tape measure</source>
        <translation type="unfinished">Tepi mundur %1 dari balok, menurut pita ukur</translation>
    </message>
    <message>
        <source>Bulkhead paint runs over the seal</source>
        <translation type="unfinished">Cat sekat menutupi paking</translation>
    </message>
    <message>
        <source>The bolt projects well out of its case</source>
        <translation type="unfinished">Lidah menjulur jauh dari rumahnya</translation>
    </message>
    <message>
        <source>Only the tip of the bolt projects from its case</source>
        <translation type="unfinished">Hanya ujung lidah yang menjulur dari rumahnya</translation>
    </message>
    <message>
        <source>The release on this side under its cover, lever upright</source>
        <translation type="unfinished">Pelepas di sisi ini di bawah tutupnya, tuas tegak</translation>
    </message>
    <message>
        <source>A cup, crumpled paper and a length of rope on the bottom rail</source>
        <translation type="unfinished">Gelas, kertas kusut, dan seutas tali di rel bawah</translation>
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
        <translation type="unfinished">Penumpang dan awak sudah menjauh dari setiap pintu yang akan bergerak, dan tetap dijaga agar jauh</translation>
    </message>
    <message>
        <source>The control station is on the agreed channel and ready</source>
        <translation type="unfinished">Stasiun kontrol ada di kanal yang disepakati dan siap</translation>
    </message>
    <message>
        <source>It moves less than 5 s after the alarm begins.</source>
        <translation type="unfinished">Bergerak kurang dari 5 s setelah alarm mulai.</translation>
    </message>
    <message>
        <source>The alarm stops before the leaf is home.</source>
        <translation type="unfinished">Alarm berhenti sebelum daun pintu tertutup rapat.</translation>
    </message>
    <message>
        <source>On contact it re-opens more than 1 m.</source>
        <translation type="unfinished">Saat kontak, membuka lagi lebih dari 1 m.</translation>
    </message>
    <message>
        <source>A wedge holds it open.</source>
        <translation type="unfinished">Ada ganjal yang menahannya terbuka.</translation>
    </message>
    <message>
        <source>The sill is missing.</source>
        <translation type="unfinished">Ambangnya hilang.</translation>
    </message>
    <message>
        <source>The seal is painted over.</source>
        <translation type="unfinished">Paking tertutup cat.</translation>
    </message>
    <message>
        <source>The control station&apos;s panel shows it open when it is shut.</source>
        <translation type="unfinished">Panel stasiun kontrol menunjukkan terbuka padahal tertutup.</translation>
    </message>
    <message>
        <source>The cover of the hose port does not shut by itself.</source>
        <translation type="unfinished">Penutup lubang selang kebakaran tidak menutup sendiri.</translation>
    </message>
    <message>
        <source>no value printed: ask the Administration</source>
        <translation type="unfinished">tidak ada nilai tercetak: tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>Two values are printed; the stricter is given here.</source>
        <translation type="unfinished">Dua nilai tercetak; yang lebih ketat diberikan di sini.</translation>
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
        <translation type="unfinished">satu daun</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">dua daun</translation>
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
        <translation type="unfinished">pintu kedap air yang digerakkan tenaga mesin</translation>
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
        <translation type="unfinished">digerakkan tenaga mesin</translation>
    </message>
    <message>
        <source>not power-operated</source>
        <translation type="unfinished">tidak digerakkan tenaga mesin</translation>
    </message>
    <message>
        <source>released remotely</source>
        <translation type="unfinished">penahan dilepas dari jauh</translation>
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
        <translation type="unfinished">ada lubang selang kebakaran</translation>
    </message>
    <message>
        <source>no hose port</source>
        <translation type="unfinished">tanpa lubang selang kebakaran</translation>
    </message>
    <message>
        <source>in an escape route</source>
        <translation type="unfinished">di jalur evakuasi</translation>
    </message>
    <message>
        <source>not in an escape route</source>
        <translation type="unfinished">bukan di jalur evakuasi</translation>
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
        <translation type="unfinished">jalur penyelamatan diri darurat</translation>
    </message>
    <message>
        <source>special category space</source>
        <translation type="unfinished">ruang kategori khusus</translation>
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
        <translation type="unfinished">pada lantai geladak</translation>
    </message>
    <message>
        <source>not in a deck</source>
        <translation type="unfinished">bukan pada lantai geladak</translation>
    </message>
    <message>
        <source>every door</source>
        <translation type="unfinished">setiap pintu</translation>
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
        <source>another program is writing to this register</source>
        <translation type="unfinished">program lain sedang menulis ke register ini</translation>
    </message>
    <message>
        <source>Wait a moment or close the other program, then try again.</source>
        <translation type="unfinished">Tunggu sebentar atau tutup program lain itu, lalu coba lagi.</translation>
    </message>
    <message>
        <source>the file cannot be opened (SQLite %1)</source>
        <translation type="unfinished">berkas tidak dapat dibuka (SQLite %1)</translation>
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
        <source>door %1</source>
        <translation type="unfinished">pintu %1</translation>
    </message>
    <message>
        <source>Save it first, then try again.</source>
        <translation type="unfinished">Simpan dahulu, lalu coba lagi.</translation>
    </message>
    <message>
        <source>Choose the door again.</source>
        <translation type="unfinished">Pilih lagi pintunya.</translation>
    </message>
    <message>
        <source>its walkdown has ended</source>
        <translation type="unfinished">inspeksinya sudah berakhir</translation>
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
        <source>Give the number on the certificate, 0 or more.</source>
        <translation type="unfinished">Isi jumlah menurut sertifikat, 0 atau lebih.</translation>
    </message>
    <message>
        <source>a length cannot be negative</source>
        <translation type="unfinished">panjang tidak boleh negatif</translation>
    </message>
    <message>
        <source>Write dates as YYYY-MM-DD.</source>
        <translation type="unfinished">Tulis tanggal sebagai YYYY-MM-DD.</translation>
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
        <source>the forward limit, %1 m, is not forward of the after limit, %2 m</source>
        <translation type="unfinished">batas depan, %1 m, tidak berada di depan batas belakang, %2 m</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; begins at %2 m, inside zone &quot;%3&quot;, which ends at %4 m</source>
        <translation type="unfinished">zona &quot;%1&quot; mulai di %2 m, di dalam zona &quot;%3&quot;, yang berakhir di %4 m</translation>
    </message>
    <message>
        <source>Write two numbers from 1 to %1, or leave it empty.</source>
        <translation type="unfinished">Tulis dua angka dari 1 sampai %1, atau kosongkan.</translation>
    </message>
    <message>
        <source>Name the zone aft of it and the zone forward of it.</source>
        <translation type="unfinished">Sebutkan zona di belakangnya dan zona di depannya.</translation>
    </message>
    <message>
        <source>Give the clear width in metres, more than 0 and at most 10.</source>
        <translation type="unfinished">Isi lebar bersih dalam meter, lebih dari 0 dan maksimal 10.</translation>
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
        <source>Run it again.</source>
        <translation type="unfinished">Jalankan lagi.</translation>
    </message>
    <message>
        <source>Trying again.</source>
        <translation type="unfinished">Mencoba lagi.</translation>
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
        <source>Update this program.</source>
        <translation type="unfinished">Perbarui program ini.</translation>
    </message>
    <message>
        <source>its vessel has no identification number</source>
        <translation type="unfinished">kapalnya tidak punya nomor identifikasi</translation>
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
        <source>is not a JSON object</source>
        <translation type="unfinished">bukan objek JSON</translation>
    </message>
    <message>
        <source>Restore the file from a good copy.</source>
        <translation type="unfinished">Pulihkan berkas dari salinan yang baik.</translation>
    </message>
    <message>
        <source>Ids must be unique.</source>
        <translation type="unfinished">Setiap id harus unik.</translation>
    </message>
    <message>
        <source>Keep it in one of them.</source>
        <translation type="unfinished">Pertahankan di salah satunya.</translation>
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
        <source>must be a list of variants</source>
        <translation type="unfinished">harus berupa daftar varian</translation>
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
        <source>Name gauge, closing-time, closing-rate, alarm-lead or alarm-after-shut.</source>
        <translation type="unfinished">Sebutkan gauge, closing-time, closing-rate, alarm-lead atau alarm-after-shut.</translation>
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
        <source>Give low or high.</source>
        <translation type="unfinished">Isi low atau high.</translation>
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
        <source>must be a list with at least one table</source>
        <translation type="unfinished">harus berupa daftar dengan minimal satu tabel</translation>
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
        <source>could not be written</source>
        <translation type="unfinished">tidak dapat ditulis</translation>
    </message>
    <message>
        <source>Check the name, or import one first.</source>
        <translation type="unfinished">Periksa namanya, atau impor register dahulu.</translation>
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
        <source>Add --person NAME.</source>
        <translation type="unfinished">Tambahkan --person NAME.</translation>
    </message>
    <message>
        <source>Compare it with what the other tablet shows.</source>
        <translation type="unfinished">Bandingkan dengan yang ditampilkan tablet lain.</translation>
    </message>
    <message>
        <source>Choose pdf, csv or json.</source>
        <translation type="unfinished">Pilih pdf, csv atau json.</translation>
    </message>
    <message>
        <source>Write it to a PDF file.</source>
        <translation type="unfinished">Tulis ke berkas PDF.</translation>
    </message>
    <message>
        <source>Give its number.</source>
        <translation type="unfinished">Isi nomornya.</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished">tidak ada</translation>
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
        <source>Ask for bulkhead or deck.</source>
        <translation type="unfinished">Tanyakan untuk bulkhead atau deck.</translation>
    </message>
    <message>
        <source>Write 0.95 for 95 %.</source>
        <translation type="unfinished">Tulis 0.95 untuk 95 %.</translation>
    </message>
    <message>
        <source>Write a number.</source>
        <translation type="unfinished">Tulis sebuah angka.</translation>
    </message>
    <message>
        <source>Write a number such as 10.3.</source>
        <translation type="unfinished">Tulis angka seperti 10.3.</translation>
    </message>
    <message>
        <source>Write it in the unit of the value, for k = 1.</source>
        <translation type="unfinished">Tulis dalam satuan nilainya, untuk k = 1.</translation>
    </message>
    <message>
        <source>Give --low, --high or both.</source>
        <translation type="unfinished">Isi --low, --high atau keduanya.</translation>
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
        <source>Check the three numbers.</source>
        <translation type="unfinished">Periksa ketiga angka.</translation>
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
        <source>Save them first.</source>
        <translation type="unfinished">Simpan dahulu.</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished">berkas tidak dapat dibaca</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB</source>
        <translation type="unfinished">gambar lebih besar dari %1 MB</translation>
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
        <source>Take it again.</source>
        <translation type="unfinished">Ambil lagi.</translation>
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
        <source>it was cut short</source>
        <translation type="unfinished">terpotong sebelum selesai</translation>
    </message>
    <message>
        <source>Free some space and start again.</source>
        <translation type="unfinished">Kosongkan sedikit ruang disk, lalu mulai lagi.</translation>
    </message>
    <message>
        <source>Choose one of its walkdowns.</source>
        <translation type="unfinished">Pilih salah satu inspeksinya.</translation>
    </message>
    <message>
        <source>Check the number.</source>
        <translation type="unfinished">Periksa nomornya.</translation>
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
        <source>Put each vessel in a file of its own.</source>
        <translation type="unfinished">Taruh setiap kapal dalam berkas sendiri.</translation>
    </message>
    <message>
        <source>A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">Baris dimulai dengan vessel, deck, zone, boundary atau door.</translation>
    </message>
    <message>
        <source>%1 A row begins with vessel, deck, zone, boundary or door.</source>
        <translation type="unfinished">%1 Baris dimulai dengan vessel, deck, zone, boundary atau door.</translation>
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
        <source>the %1 table has no such column</source>
        <translation type="unfinished">tabel %1 tidak punya kolom seperti itu</translation>
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
        <source>Write it like 2026-11-25T10:42:13.120+01:00.</source>
        <translation type="unfinished">Tulis seperti 2026-11-25T10:42:13.120+01:00.</translation>
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
        <source>a time must be from 0 to 3600 seconds</source>
        <translation type="unfinished">waktu harus dari 0 sampai 3600 detik</translation>
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
        <source>Check the folder.</source>
        <translation type="unfinished">Periksa foldernya.</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation type="unfinished">Pilih berkas lain.</translation>
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
        <source>must be a list of doors</source>
        <translation type="unfinished">harus berupa daftar pintu</translation>
    </message>
    <message>
        <source>Write it like [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</source>
        <translation type="unfinished">Tulis seperti [{&quot;door&quot;: &quot;P-01&quot;, &quot;faults&quot;: []}].</translation>
    </message>
    <message>
        <source>Put all of its faults in one place.</source>
        <translation type="unfinished">Satukan semua cacatnya di satu tempat.</translation>
    </message>
    <message>
        <source>the practice vessel has no door &apos;%1&apos;</source>
        <translation type="unfinished">kapal praktik tidak punya pintu &apos;%1&apos;</translation>
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
        <source>Give one of them to another door.</source>
        <translation type="unfinished">Berikan salah satunya kepada pintu lain.</translation>
    </message>
    <message>
        <source>Say how many faults are drawn.</source>
        <translation type="unfinished">Sebutkan berapa cacat yang diundi.</translation>
    </message>
    <message>
        <source>Draw fewer, or name more doors.</source>
        <translation type="unfinished">Undi lebih sedikit, atau sebutkan lebih banyak pintu.</translation>
    </message>
    <message>
        <source>Add it, 1 to 100.</source>
        <translation type="unfinished">Tambahkan, 1 sampai 100.</translation>
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
        <source>Write it like 2026-11-26T10:42:00+01:00.</source>
        <translation type="unfinished">Tulis seperti 2026-11-26T10:42:00+01:00.</translation>
    </message>
    <message>
        <source>Please report this.</source>
        <translation type="unfinished">Harap laporkan ini.</translation>
    </message>
    <message>
        <source>Give yours another id.</source>
        <translation type="unfinished">Beri milik Anda id lain.</translation>
    </message>
    <message>
        <source>it must have at least %1 characters</source>
        <translation type="unfinished">harus terdiri atas paling sedikit %1 karakter</translation>
    </message>
    <message>
        <source>it could not be put together: %1</source>
        <translation type="unfinished">tidak dapat disusun: %1</translation>
    </message>
    <message>
        <source>the file is damaged (%1)</source>
        <translation type="unfinished">berkas rusak (%1)</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation type="unfinished">%1 tidak dapat dibaca</translation>
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
        <source>key.pem is not the key that handover.json names</source>
        <translation type="unfinished">key.pem bukan kunci yang disebut handover.json</translation>
    </message>
    <message>
        <source>this comes from practice: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ini berasal dari praktik: tidak ada isinya yang merupakan catatan suatu kapal</translation>
    </message>
    <message>
        <source>this file comes from a newer program (form %1; this one reads up to %2)</source>
        <translation type="unfinished">berkas ini berasal dari program yang lebih baru (bentuk %1; program ini membaca sampai %2)</translation>
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
        <source>it would be larger than %1 MB</source>
        <translation type="unfinished">akan lebih besar dari %1 MB</translation>
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
        <source>it takes something back but does not say what</source>
        <translation type="unfinished">ini menarik kembali sesuatu tetapi tidak menyebut apa</translation>
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
        <translation type="unfinished">praktik</translation>
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
        <source>door record</source>
        <translation type="unfinished">catatan pintu</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation type="unfinished">percobaan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished">%1: %2</translation>
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
        <source>the written file could not be closed: %1</source>
        <translation type="unfinished">berkas yang ditulis tidak dapat ditutup: %1</translation>
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
        <source>Correct it.</source>
        <translation type="unfinished">Perbaiki.</translation>
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
        <source>Write it in brackets: [&quot;one&quot;, &quot;two&quot;].</source>
        <translation type="unfinished">Tulis dalam kurung siku: [&quot;one&quot;, &quot;two&quot;].</translation>
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
        <source>it refers to something that is not in this register</source>
        <translation type="unfinished">merujuk ke sesuatu yang tidak ada di register ini</translation>
    </message>
    <message>
        <source>Record what it refers to first.</source>
        <translation type="unfinished">Catat dahulu yang dirujuknya.</translation>
    </message>
    <message>
        <source>Record a correction instead.</source>
        <translation type="unfinished">Catat koreksi sebagai gantinya.</translation>
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
        <source>Put the register back beside it, or move that file away to begin a new register.</source>
        <translation type="unfinished">Kembalikan register ke sampingnya, atau pindahkan berkas itu untuk memulai register baru.</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation type="unfinished">folder tidak ada</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation type="unfinished">Pilih folder lain.</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation type="unfinished">disk melaporkan gangguan</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation type="unfinished">ini bukan berkas</translation>
    </message>
    <message>
        <source>Copy it to a folder of your own and open it there.</source>
        <translation type="unfinished">Salin ke folder Anda sendiri, lalu buka di sana.</translation>
    </message>
    <message>
        <source>Update this program, then open it again.</source>
        <translation type="unfinished">Perbarui program ini, lalu buka lagi.</translation>
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
        <source>Close it there, then open it here.</source>
        <translation type="unfinished">Tutup di sana, lalu buka di sini.</translation>
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
        <source>this is a practice register: nothing in it is a record of a vessel</source>
        <translation type="unfinished">ini register praktik: tidak ada isinya yang merupakan catatan suatu kapal</translation>
    </message>
    <message>
        <source>Import it into a register of its own.</source>
        <translation type="unfinished">Impor ke register tersendiri.</translation>
    </message>
    <message>
        <source>another program</source>
        <translation type="unfinished">program lain</translation>
    </message>
    <message>
        <source>Close it there first.</source>
        <translation type="unfinished">Tutup dahulu di sana.</translation>
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
        <source>Record a correction under an id of its own.</source>
        <translation type="unfinished">Catat koreksi dengan id tersendiri.</translation>
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
        <source>there is no such door in this vessel&apos;s register</source>
        <translation type="unfinished">tidak ada pintu seperti itu di register kapal ini</translation>
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
        <source>%1 (and 1 more such door)</source>
        <translation type="unfinished">%1 (dan 1 pintu lain seperti itu)</translation>
    </message>
    <message>
        <source>%1 (and %2 more such doors)</source>
        <translation type="unfinished">%1 (dan %2 pintu lain seperti itu)</translation>
    </message>
    <message>
        <source>%1 refers back to it</source>
        <translation type="unfinished">%1 merujuk balik kepadanya</translation>
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
        <source>Give low or high as well, and &quot;source&quot;: &quot;gauge&quot;.</source>
        <translation type="unfinished">Isi juga low atau high, dan &quot;source&quot;: &quot;gauge&quot;.</translation>
    </message>
    <message>
        <source>only a band of closing times or rates can be approximate</source>
        <translation type="unfinished">hanya rentang waktu menutup atau kecepatan menutup yang dapat bersifat kira-kira</translation>
    </message>
    <message>
        <source>Such a step is at most 20 % of the zone&apos;s mean length, and at most 8 m (26 ft).</source>
        <translation type="unfinished">Undakan demikian maksimal 20 % dari panjang rata-rata zona, dan maksimal 8 m (26 ft).</translation>
    </message>
    <message>
        <source>this cannot come before &quot;%1&quot;</source>
        <translation type="unfinished">ini tidak mungkin mendahului &quot;%1&quot;</translation>
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
        <source>the register does not say whether it gives access to a special category space</source>
        <translation type="unfinished">register tidak menyebut apakah memberi akses ke ruang kategori khusus</translation>
    </message>
    <message>
        <source>in a C&apos;-class boundary</source>
        <translation type="unfinished">di pembatas kelas C&apos;</translation>
    </message>
    <message>
        <source>SOLAS passenger ship</source>
        <translation type="unfinished">kapal penumpang SOLAS</translation>
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
        <source>advice only</source>
        <translation type="unfinished">hanya saran</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">buku aturan</translation>
    </message>
    <message>
        <source>process %1 on %2</source>
        <translation type="unfinished">proses %1 di %2</translation>
    </message>
    <message>
        <source>no installation date on record, but the ship is new enough</source>
        <translation type="unfinished">tidak ada tanggal pemasangan yang tercatat, tetapi kapalnya cukup baru</translation>
    </message>
    <message>
        <source>the ship&apos;s passenger number or length is outside the scope of the text</source>
        <translation type="unfinished">jumlah penumpang atau panjang kapal di luar cakupan teks</translation>
    </message>
    <message>
        <source>boundary class not known</source>
        <translation type="unfinished">kelas pembatas tidak diketahui</translation>
    </message>
    <message>
        <source>not an emergency escape trunk</source>
        <translation type="unfinished">bukan jalur penyelamatan diri darurat</translation>
    </message>
    <message>
        <source>not a special category space</source>
        <translation type="unfinished">bukan ruang kategori khusus</translation>
    </message>
    <message>
        <source>faces an embarkation or escape deck</source>
        <translation type="unfinished">menghadap geladak embarkasi atau penyelamatan diri</translation>
    </message>
    <message>
        <source>does not face an embarkation or escape deck</source>
        <translation type="unfinished">tidak menghadap geladak embarkasi atau penyelamatan diri</translation>
    </message>
    <message>
        <source>not a machinery space of category A</source>
        <translation type="unfinished">bukan ruang permesinan kategori A</translation>
    </message>
    <message>
        <source>keel laid %1: text for ships of other dates</source>
        <translation type="unfinished">lunas diletakkan %1: teks untuk kapal dari tanggal lain</translation>
    </message>
    <message>
        <source>installation date unknown</source>
        <translation type="unfinished">tanggal pemasangan tidak diketahui</translation>
    </message>
    <message>
        <source>the vessel&apos;s flag has its own text</source>
        <translation type="unfinished">bendera kapal punya teks sendiri</translation>
    </message>
    <message>
        <source>text for other ships: %1</source>
        <translation type="unfinished">teks untuk kapal lain: %1</translation>
    </message>
    <message>
        <source>no such door aboard</source>
        <translation type="unfinished">tidak ada pintu seperti itu di kapal</translation>
    </message>
    <message>
        <source>US subchapter H vessel</source>
        <translation type="unfinished">kapal AS subbab H</translation>
    </message>
    <message>
        <source>US subchapter K vessel</source>
        <translation type="unfinished">kapal AS subbab K</translation>
    </message>
    <message>
        <source>Canadian day vessel, 24 m or more, fewer than 100 passengers</source>
        <translation type="unfinished">kapal harian Kanada, 24 m atau lebih, kurang dari 100 penumpang</translation>
    </message>
    <message>
        <source>binding</source>
        <translation type="unfinished">mengikat</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">bila gagal, inspektur yang memutuskan</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">tidak berlaku</translation>
    </message>
    <message>
        <source>%1 passengers is not possible</source>
        <translation type="unfinished">%1 penumpang tidak mungkin</translation>
    </message>
    <message>
        <source>Give the length on the drawing, in metres.</source>
        <translation type="unfinished">Isi panjang menurut gambar, dalam meter.</translation>
    </message>
    <message>
        <source>this date does not exist</source>
        <translation type="unfinished">tanggal ini tidak ada</translation>
    </message>
    <message>
        <source>%1 is before 1900</source>
        <translation type="unfinished">%1 sebelum tahun 1900</translation>
    </message>
    <message>
        <source>Check the year, or leave it empty if the date is unknown.</source>
        <translation type="unfinished">Periksa tahunnya, atau kosongkan bila tanggalnya tidak diketahui.</translation>
    </message>
    <message>
        <source>%1 m is outside %2 to %3 m</source>
        <translation type="unfinished">%1 m di luar %2 sampai %3 m</translation>
    </message>
    <message>
        <source>Remove the blanks.</source>
        <translation type="unfinished">Hapus spasinya.</translation>
    </message>
    <message>
        <source>deck &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">geladak &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every deck its own number, or remove one row.</source>
        <translation type="unfinished">Beri setiap geladak nomor sendiri, atau hapus salah satunya.</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">zona &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every zone its own number, or remove one row.</source>
        <translation type="unfinished">Beri setiap zona nomor sendiri, atau hapus salah satunya.</translation>
    </message>
    <message>
        <source>boundary &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">pembatas &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every boundary its own id, or remove one row.</source>
        <translation type="unfinished">Beri setiap pembatas id sendiri, atau hapus salah satunya.</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice</source>
        <translation type="unfinished">pintu &quot;%1&quot; tercantum dua kali</translation>
    </message>
    <message>
        <source>Give every door its own number, or remove one row.</source>
        <translation type="unfinished">Beri setiap pintu nomor sendiri, atau hapus salah satunya.</translation>
    </message>
    <message>
        <source>there is no deck &quot;%1&quot;</source>
        <translation type="unfinished">tidak ada geladak &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no zone &quot;%1&quot;</source>
        <translation type="unfinished">tidak ada zona &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no boundary &quot;%1&quot;</source>
        <translation type="unfinished">tidak ada pembatas &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Give square metres, or leave it empty if not known.</source>
        <translation type="unfinished">Isi dalam meter persegi, atau kosongkan bila tidak diketahui.</translation>
    </message>
    <message>
        <source>Measure in metres from the aft perpendicular, positive forward.</source>
        <translation type="unfinished">Ukur dalam meter dari garis tegak buritan, positif ke depan.</translation>
    </message>
    <message>
        <source>Zones may touch but not overlap.</source>
        <translation type="unfinished">Zona boleh bersentuhan tetapi tidak boleh bertumpang tindih.</translation>
    </message>
    <message>
        <source>this vessel&apos;s fire tables have no such category of space</source>
        <translation type="unfinished">tabel kebakaran kapal ini tidak punya kategori ruang itu</translation>
    </message>
    <message>
        <source>a zone bulkhead is between two zones; here both are &quot;%1&quot;</source>
        <translation type="unfinished">sekat zona berada di antara dua zona; di sini keduanya &quot;%1&quot;</translation>
    </message>
    <message>
        <source>zone &quot;%1&quot; is aft of zone &quot;%2&quot;</source>
        <translation type="unfinished">zona &quot;%1&quot; berada di belakang zona &quot;%2&quot;</translation>
    </message>
    <message>
        <source>Swap zone_aft and zone_forward.</source>
        <translation type="unfinished">Tukar zone_aft dan zone_forward.</translation>
    </message>
    <message>
        <source>%1 m is more than 3 m outside its zones, %2 to %3 m</source>
        <translation type="unfinished">%1 m lebih dari 3 m di luar zonanya, %2 sampai %3 m</translation>
    </message>
    <message>
        <source>Check the position of the boundary, or the zones it names.</source>
        <translation type="unfinished">Periksa posisi pembatas, atau zona yang disebutnya.</translation>
    </message>
    <message>
        <source>a clear opening of %1 m is not possible</source>
        <translation type="unfinished">bukaan bersih %1 m tidak mungkin</translation>
    </message>
    <message>
        <source>a leaf of %1 kg is not possible</source>
        <translation type="unfinished">daun pintu %1 kg tidak mungkin</translation>
    </message>
    <message>
        <source>only PostgreSQL databases are supported</source>
        <translation type="unfinished">hanya basis data PostgreSQL yang didukung</translation>
    </message>
    <message>
        <source>an option contains a semicolon</source>
        <translation type="unfinished">suatu opsi mengandung titik koma</translation>
    </message>
    <message>
        <source>Check the address, name and password, and that the server is running.</source>
        <translation type="unfinished">Periksa alamat, nama, dan kata sandi, dan apakah server berjalan.</translation>
    </message>
    <message>
        <source>the connection was lost</source>
        <translation type="unfinished">sambungan terputus</translation>
    </message>
    <message>
        <source>the connection was lost: %1 files NOT imported, from %2 on</source>
        <translation type="unfinished">sambungan terputus: %1 berkas TIDAK diimpor, mulai dari %2</translation>
    </message>
    <message>
        <source>Run the same command again; files already imported stay imported.</source>
        <translation type="unfinished">Jalankan lagi perintah yang sama; berkas yang sudah diimpor tetap terimpor.</translation>
    </message>
    <message>
        <source>this database holds other data: NOT touched</source>
        <translation type="unfinished">basis data ini berisi data lain: TIDAK disentuh</translation>
    </message>
    <message>
        <source>this database does not store text as UTF-8: NOT touched</source>
        <translation type="unfinished">basis data ini tidak menyimpan teks sebagai UTF-8: TIDAK disentuh</translation>
    </message>
    <message>
        <source>Create one WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</source>
        <translation type="unfinished">Buat yang baru dengan WITH ENCODING &apos;UTF8&apos; TEMPLATE template0.</translation>
    </message>
    <message>
        <source>the tables were made by a newer program (version %1; this one reads up to %2): NOT touched</source>
        <translation type="unfinished">tabelnya dibuat program yang lebih baru (versi %1; program ini membaca sampai %2): TIDAK disentuh</translation>
    </message>
    <message>
        <source>Enter the vessel&apos;s number aboard, then export again.</source>
        <translation type="unfinished">Isi nomor kapal di kapal, lalu ekspor lagi.</translation>
    </message>
    <message>
        <source>it comes with a different key: %1, fingerprint %2 instead of %3</source>
        <translation type="unfinished">berkas datang dengan kunci lain: %1, sidik %2, bukan %3</translation>
    </message>
    <message>
        <source>Ask aboard whether the key is new; if so, import the file with --accept-key and that key.</source>
        <translation type="unfinished">Tanyakan di kapal apakah kuncinya baru; jika ya, impor berkas dengan --accept-key dan kunci itu.</translation>
    </message>
    <message>
        <source>Using the catalogue built into the program: %1</source>
        <translation type="unfinished">Memakai katalog bawaan program: %1</translation>
    </message>
    <message>
        <source>its catalogue files are missing</source>
        <translation type="unfinished">berkas katalognya tidak ada</translation>
    </message>
    <message>
        <source>must be a list with at least one entry</source>
        <translation type="unfinished">harus berupa daftar dengan minimal satu entri</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is listed twice</source>
        <translation type="unfinished">&apos;%1&apos; tercantum dua kali</translation>
    </message>
    <message>
        <source>requirement &apos;%1&apos; is in both catalogues</source>
        <translation type="unfinished">persyaratan &apos;%1&apos; ada di kedua katalog</translation>
    </message>
    <message>
        <source>this condition is empty</source>
        <translation type="unfinished">syarat ini kosong</translation>
    </message>
    <message>
        <source>Leave it out if every door is meant.</source>
        <translation type="unfinished">Hilangkan bila yang dimaksud setiap pintu.</translation>
    </message>
    <message>
        <source>Leave it out if there are none.</source>
        <translation type="unfinished">Hilangkan bila tidak ada.</translation>
    </message>
    <message>
        <source>a requirement checked by eye needs a question</source>
        <translation type="unfinished">persyaratan yang diperiksa dengan mata memerlukan pertanyaan</translation>
    </message>
    <message>
        <source>a second printed figure needs a gauge limit beside it</source>
        <translation type="unfinished">angka tercetak kedua memerlukan batas gauge di sampingnya</translation>
    </message>
    <message>
        <source>Remove &quot;approximate&quot;, or give such a band.</source>
        <translation type="unfinished">Hapus &quot;approximate&quot;, atau berikan rentang seperti itu.</translation>
    </message>
    <message>
        <source>a margin must be 0 or more and less than 1</source>
        <translation type="unfinished">kelonggaran harus 0 atau lebih dan kurang dari 1</translation>
    </message>
    <message>
        <source>Give it as a fraction of the limit: 0.05 is 5 per cent.</source>
        <translation type="unfinished">Tulis sebagai pecahan dari batas: 0.05 adalah 5 persen.</translation>
    </message>
    <message>
        <source>a figure needs a source</source>
        <translation type="unfinished">suatu angka memerlukan sumber</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is already in the catalogue</source>
        <translation type="unfinished">&apos;%1&apos; sudah ada di katalog</translation>
    </message>
    <message>
        <source>a tightened requirement needs a limit</source>
        <translation type="unfinished">persyaratan yang diperketat memerlukan batas</translation>
    </message>
    <message>
        <source>the requirement has no such limit</source>
        <translation type="unfinished">persyaratan itu tidak punya batas demikian</translation>
    </message>
    <message>
        <source>Replace the whole requirement instead.</source>
        <translation type="unfinished">Ganti seluruh persyaratan sebagai gantinya.</translation>
    </message>
    <message>
        <source>%1 %2 is wider than the catalogue&apos;s %3 %2</source>
        <translation type="unfinished">%1 %2 lebih longgar daripada %3 %2 di katalog</translation>
    </message>
    <message>
        <source>Tighten the requirement, or replace it as a whole.</source>
        <translation type="unfinished">Perketat persyaratan, atau ganti seluruhnya.</translation>
    </message>
    <message>
        <source>this margin is wider than the catalogue&apos;s</source>
        <translation type="unfinished">kelonggaran ini lebih besar daripada yang di katalog</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a list of categories here</source>
        <translation type="unfinished">&apos;%1&apos; bukan daftar kategori di sini</translation>
    </message>
    <message>
        <source>there is already a table for these divisions</source>
        <translation type="unfinished">sudah ada tabel untuk divisi ini</translation>
    </message>
    <message>
        <source>is not a cell of this table</source>
        <translation type="unfinished">bukan sel dari tabel ini</translation>
    </message>
    <message>
        <source>Write two of its categories; for a bulkhead, the lower one first.</source>
        <translation type="unfinished">Tulis dua dari kategorinya; untuk sekat, yang lebih rendah dahulu.</translation>
    </message>
    <message>
        <source>%1 is not a value printed in a table</source>
        <translation type="unfinished">%1 bukan nilai yang tercetak dalam tabel</translation>
    </message>
    <message>
        <source>A lookout is posted on each side of every door that will move</source>
        <translation type="unfinished">Ada satu petugas jaga di setiap sisi dari setiap pintu yang akan bergerak</translation>
    </message>
    <message>
        <source>The start word and the stop word have been given and read back</source>
        <translation type="unfinished">Kata mulai dan kata stop sudah diberikan dan dibacakan ulang</translation>
    </message>
    <message>
        <source>Every path and pocket is clear; hands, feet and cables are off every edge</source>
        <translation type="unfinished">Setiap lintasan dan rongga bebas; tidak ada tangan, kaki, atau kabel di dekat tepi mana pun</translation>
    </message>
    <message>
        <source>a fault in the program: %1</source>
        <translation type="unfinished">kesalahan dalam program: %1</translation>
    </message>
    <message>
        <source>Please report it, with the file that caused it.</source>
        <translation type="unfinished">Harap laporkan, beserta berkas penyebabnya.</translation>
    </message>
    <message>
        <source>there is no register here</source>
        <translation type="unfinished">tidak ada register di sini</translation>
    </message>
    <message>
        <source>this register has no vessel yet</source>
        <translation type="unfinished">register ini belum punya kapal</translation>
    </message>
    <message>
        <source>The refused file states its key.</source>
        <translation type="unfinished">Berkas yang ditolak menyebut kuncinya.</translation>
    </message>
    <message>
        <source>who accepts the key is not stated</source>
        <translation type="unfinished">tidak disebut siapa yang menerima kunci itu</translation>
    </message>
    <message>
        <source>this is not the file&apos;s key, which is %1</source>
        <translation type="unfinished">ini bukan kunci berkas itu, yaitu %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a document kind</source>
        <translation type="unfinished">&quot;%1&quot; bukan jenis dokumen</translation>
    </message>
    <message>
        <source>Choose survey, deficiency-list, work-list, door-record, blank-form or rule-book.</source>
        <translation type="unfinished">Pilih survey, deficiency-list, work-list, door-record, blank-form, atau rule-book.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a report format</source>
        <translation type="unfinished">&quot;%1&quot; bukan format laporan</translation>
    </message>
    <message>
        <source>a blank form can only be a PDF</source>
        <translation type="unfinished">formulir kosong hanya dapat berupa PDF</translation>
    </message>
    <message>
        <source>a rule book can only be a PDF</source>
        <translation type="unfinished">buku aturan hanya dapat berupa PDF</translation>
    </message>
    <message>
        <source>Write it to a PDF file; &quot;rules --json&quot; gives its data.</source>
        <translation type="unfinished">Tulis ke berkas PDF; &quot;rules --json&quot; memberi datanya.</translation>
    </message>
    <message>
        <source>there is no requirement &apos;%1&apos;</source>
        <translation type="unfinished">tidak ada persyaratan &apos;%1&apos;</translation>
    </message>
    <message>
        <source>&quot;rules&quot; lists them all.</source>
        <translation type="unfinished">&quot;rules&quot; mencantumkan semuanya.</translation>
    </message>
    <message>
        <source>a door belongs to a vessel</source>
        <translation type="unfinished">pintu dimiliki suatu kapal</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s register with --vessel.</source>
        <translation type="unfinished">Berikan register kapal dengan --vessel.</translation>
    </message>
    <message>
        <source>a door record is for one door</source>
        <translation type="unfinished">catatan pintu adalah untuk satu pintu</translation>
    </message>
    <message>
        <source>no one in the register is named &apos;%1&apos;</source>
        <translation type="unfinished">tidak ada orang bernama &apos;%1&apos; di register</translation>
    </message>
    <message>
        <source>Write the name as it is in the register.</source>
        <translation type="unfinished">Tulis nama seperti di register.</translation>
    </message>
    <message>
        <source>Give an id from &quot;practice list&quot;, or a file.</source>
        <translation type="unfinished">Berikan id dari &quot;practice list&quot;, atau berkas.</translation>
    </message>
    <message>
        <source>Give a number; the same number gives the same doors.</source>
        <translation type="unfinished">Berikan angka; angka yang sama memberi pintu yang sama.</translation>
    </message>
    <message>
        <source>Give the answers file.</source>
        <translation type="unfinished">Berikan berkas jawaban.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a pair of this ship&apos;s categories</source>
        <translation type="unfinished">&quot;%1&quot; bukan pasangan kategori kapal ini</translation>
    </message>
    <message>
        <source>a ship of this kind has no main vertical zones</source>
        <translation type="unfinished">kapal jenis ini tidak punya zona vertikal utama</translation>
    </message>
    <message>
        <source>must be between 0 and 1</source>
        <translation type="unfinished">harus antara 0 dan 1</translation>
    </message>
    <message>
        <source>must be between 0 and 1, to six decimals at most</source>
        <translation type="unfinished">harus antara 0 dan 1, paling banyak enam desimal</translation>
    </message>
    <message>
        <source>is not a usable number</source>
        <translation type="unfinished">bukan angka yang dapat dipakai</translation>
    </message>
    <message>
        <source>no line can be fitted: there are only %1 points, or all have the same x, or a number is too large</source>
        <translation type="unfinished">tidak ada garis yang dapat dicocokkan: hanya ada %1 titik, atau semua punya x yang sama, atau suatu angka terlalu besar</translation>
    </message>
    <message>
        <source>Give at least three points, with at least two different x.</source>
        <translation type="unfinished">Berikan minimal tiga titik, dengan minimal dua x yang berbeda.</translation>
    </message>
    <message>
        <source>a standard uncertainty must be 0 or more</source>
        <translation type="unfinished">ketidakpastian baku harus 0 atau lebih</translation>
    </message>
    <message>
        <source>is not a limit</source>
        <translation type="unfinished">bukan batas</translation>
    </message>
    <message>
        <source>there is no limit to judge against</source>
        <translation type="unfinished">tidak ada batas untuk menilai</translation>
    </message>
    <message>
        <source>degrees of freedom must be 1 or more</source>
        <translation type="unfinished">derajat kebebasan harus 1 atau lebih</translation>
    </message>
    <message>
        <source>Leave it out if u is well known.</source>
        <translation type="unfinished">Hilangkan bila u diketahui dengan baik.</translation>
    </message>
    <message>
        <source>failed cannot exceed tested, and tested cannot exceed the number of doors</source>
        <translation type="unfinished">yang gagal tidak boleh melebihi yang diuji, dan yang diuji tidak boleh melebihi jumlah pintu</translation>
    </message>
    <message>
        <source>no display is available</source>
        <translation type="unfinished">tidak tersedia tampilan layar</translation>
    </message>
    <message>
        <source>entries for this vessel are not saved yet and cannot be kept elsewhere</source>
        <translation type="unfinished">entri untuk kapal ini belum tersimpan dan tidak dapat disimpan di tempat lain</translation>
    </message>
    <message>
        <source>no file has been opened</source>
        <translation type="unfinished">belum ada berkas yang dibuka</translation>
    </message>
    <message>
        <source>Open the file first.</source>
        <translation type="unfinished">Buka berkas dahulu.</translation>
    </message>
    <message>
        <source>there is no unfinished exercise</source>
        <translation type="unfinished">tidak ada soal latihan yang belum selesai</translation>
    </message>
    <message>
        <source>the exercise has changed since it was begun</source>
        <translation type="unfinished">soal latihan berubah sejak dimulai</translation>
    </message>
    <message>
        <source>Put it aside and begin again.</source>
        <translation type="unfinished">Sisihkan dan mulai lagi.</translation>
    </message>
    <message>
        <source>is not in this walkdown</source>
        <translation type="unfinished">tidak termasuk dalam inspeksi ini</translation>
    </message>
    <message>
        <source>not all cautions are confirmed</source>
        <translation type="unfinished">tidak semua syarat aman dikonfirmasi</translation>
    </message>
    <message>
        <source>Confirm each of them first.</source>
        <translation type="unfinished">Konfirmasikan masing-masing dahulu.</translation>
    </message>
    <message>
        <source>Choose another, or check its permissions.</source>
        <translation type="unfinished">Pilih yang lain, atau periksa izinnya.</translation>
    </message>
    <message>
        <source>Take it again at a smaller size.</source>
        <translation type="unfinished">Ambil lagi dengan ukuran lebih kecil.</translation>
    </message>
    <message>
        <source>it could not be saved</source>
        <translation type="unfinished">tidak dapat disimpan</translation>
    </message>
    <message>
        <source>another program is writing to it (%1)</source>
        <translation type="unfinished">program lain sedang menulis ke situ (%1)</translation>
    </message>
    <message>
        <source>it is not in the walkdown on screen</source>
        <translation type="unfinished">tidak termasuk dalam inspeksi di layar</translation>
    </message>
    <message>
        <source>None of it is refused any more</source>
        <translation type="unfinished">Tidak ada lagi yang ditolak</translation>
    </message>
    <message>
        <source>the part that cannot be read is kept nowhere else</source>
        <translation type="unfinished">bagian yang tidak dapat dibaca tidak tersimpan di tempat lain mana pun</translation>
    </message>
    <message>
        <source>unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">entri belum tersimpan yang disimpan di sini tidak dapat dibaca: %1</translation>
    </message>
    <message>
        <source>The file is kept as %2; report this.</source>
        <translation type="unfinished">Berkas disimpan sebagai %2; laporkan ini.</translation>
    </message>
    <message>
        <source>The file stays as it is and nothing is added to it: free some space, then start again.</source>
        <translation type="unfinished">Berkas tetap seperti adanya dan tidak ditambahi apa pun: kosongkan sebagian ruang disk, lalu mulai lagi.</translation>
    </message>
    <message>
        <source>some unsaved entries kept here cannot be read: %1</source>
        <translation type="unfinished">sebagian entri belum tersimpan yang disimpan di sini tidak dapat dibaca: %1</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead, its steps and recesses are A-60; A-0 is enough with a category 5, 9 or 10 space on one side, or with oil fuel tanks on both.</source>
        <translation type="unfinished">Sekat zona vertikal utama, undakan, dan ceruknya adalah A-60; A-0 cukup bila di satu sisi ada ruang kategori 5, 9, atau 10, atau bila di kedua sisi ada tangki bahan bakar minyak.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is A class; its insulation follows the table, with B-0, C and * read as A-0.</source>
        <translation type="unfinished">Sekat zona vertikal utama adalah kelas A; insulasinya mengikuti tabel, dengan B-0, C, dan * dibaca sebagai A-0.</translation>
    </message>
    <message>
        <source>Boundaries of special category and ro-ro spaces are A-60; A-0 is enough with a category 5, 9 or 10 space on one side.</source>
        <translation type="unfinished">Pembatas ruang kategori khusus dan ruang ro-ro adalah A-60; A-0 cukup bila di satu sisi ada ruang kategori 5, 9, atau 10.</translation>
    </message>
    <message>
        <source>From 2026 MSC.550(108) renumbers II-2/9.6; that text has not been read.</source>
        <translation type="unfinished">Mulai 2026 MSC.550(108) menomori ulang II-2/9.6; teks itu belum dibaca.</translation>
    </message>
    <message>
        <source>A main vertical zone bulkhead is the higher of A-30 and table (b); A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Sekat zona vertikal utama adalah yang lebih tinggi dari A-30 dan tabel (b); A-0 cukup bila di salah satu sisi ada ruang tipe 8, 12, atau 13.</translation>
    </message>
    <message>
        <source>A step in a main vertical zone is A-60; A-0 is enough with a type 8, 12 or 13 space on either side.</source>
        <translation type="unfinished">Undakan zona vertikal utama adalah A-60; A-0 cukup bila di salah satu sisi ada ruang tipe 8, 12, atau 13.</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 39.9 m (131 ft); no extension is printed, and a ferry may have an approved equivalent (46 CFR 72.05-10(b)).</source>
        <translation type="unfinished">Pada umumnya panjang rata-rata zona di satu geladak maksimal 39,9 m (131 ft); tidak tercetak perpanjangan, dan feri boleh punya padanan yang disetujui (46 CFR 72.05-10(b)).</translation>
    </message>
    <message>
        <source>A deck that bounds a horizontal zone of a vehicle ferry is the higher of A-30 and table (c).</source>
        <translation type="unfinished">Geladak yang membatasi zona mendatar feri kendaraan adalah yang lebih tinggi dari A-30 dan tabel (c).</translation>
    </message>
    <message>
        <source>The value for ships built on or after 1 July 2014 is given; the build date is not known.</source>
        <translation type="unfinished">Diberikan nilai untuk kapal yang dibangun pada atau setelah 1 Juli 2014; tanggal pembangunan tidak diketahui.</translation>
    </message>
    <message>
        <source>Where oil fuel tanks are below a special category space, A-0 is enough for the deck between (II-2/9.6.1).</source>
        <translation type="unfinished">Bila di bawah ruang kategori khusus ada tangki bahan bakar minyak, A-0 cukup untuk geladak di antaranya (II-2/9.6.1).</translation>
    </message>
    <message>
        <source>A ship built before 1 July 2002 follows the tables of its time, which are not included: compare with the approved plan.</source>
        <translation type="unfinished">Kapal yang dibangun sebelum 1 Juli 2002 mengikuti tabel zamannya, yang tidak disertakan: bandingkan dengan denah yang disetujui.</translation>
    </message>
    <message>
        <source>Whether these tables apply to the ship is not on record: compare with the approved plan.</source>
        <translation type="unfinished">Tidak tercatat apakah tabel ini berlaku bagi kapal: bandingkan dengan denah yang disetujui.</translation>
    </message>
    <message>
        <source>the register has no walkdown with this id</source>
        <translation type="unfinished">register tidak punya inspeksi dengan id ini</translation>
    </message>
    <message>
        <source>the register has no door with this number</source>
        <translation type="unfinished">register tidak punya pintu dengan nomor ini</translation>
    </message>
    <message>
        <source>a door record can only be a PDF</source>
        <translation type="unfinished">catatan pintu hanya dapat berupa PDF</translation>
    </message>
    <message>
        <source>Choose PDF, or the survey report as CSV or JSON.</source>
        <translation type="unfinished">Pilih PDF, atau laporan survei sebagai CSV atau JSON.</translation>
    </message>
    <message>
        <source>the PDF could not be created</source>
        <translation type="unfinished">PDF tidak dapat dibuat</translation>
    </message>
    <message>
        <source>a file can describe only one vessel; the first is on line %1</source>
        <translation type="unfinished">satu berkas hanya dapat menguraikan satu kapal; yang pertama di baris %1</translation>
    </message>
    <message>
        <source>the row does not say which table it belongs to</source>
        <translation type="unfinished">baris ini tidak menyebut tabel tempatnya</translation>
    </message>
    <message>
        <source>a register row cannot begin with &quot;%1&quot;</source>
        <translation type="unfinished">baris register tidak dapat dimulai dengan &quot;%1&quot;</translation>
    </message>
    <message>
        <source>this row comes before the header of its table</source>
        <translation type="unfinished">baris ini mendahului kepala tabelnya</translation>
    </message>
    <message>
        <source>Put the header &quot;%1:&quot; with the column names above it.</source>
        <translation type="unfinished">Taruh kepala tabel &quot;%1:&quot; dengan nama kolom di atasnya.</translation>
    </message>
    <message>
        <source>Remove the cell, or name its column in the header.</source>
        <translation type="unfinished">Hapus selnya, atau beri nama kolomnya di kepala tabel.</translation>
    </message>
    <message>
        <source>Correct its name, or remove the column.</source>
        <translation type="unfinished">Perbaiki namanya, atau hapus kolomnya.</translation>
    </message>
    <message>
        <source>the column is listed twice</source>
        <translation type="unfinished">kolom ini tercantum dua kali</translation>
    </message>
    <message>
        <source>Remove one of them.</source>
        <translation type="unfinished">Hapus salah satunya.</translation>
    </message>
    <message>
        <source>a point has two numbers; here there are %1 cells</source>
        <translation type="unfinished">satu titik punya dua angka; di sini ada %1 sel</translation>
    </message>
    <message>
        <source>Ids are version 7 UUIDs in lower case.</source>
        <translation type="unfinished">Id adalah UUID versi 7 dengan huruf kecil.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date and time</source>
        <translation type="unfinished">&quot;%1&quot; bukan tanggal dan waktu</translation>
    </message>
    <message>
        <source>door &quot;%1&quot; is listed twice, first at %2</source>
        <translation type="unfinished">pintu &quot;%1&quot; tercantum dua kali, pertama di %2</translation>
    </message>
    <message>
        <source>Give every door its own id, or merge the two records.</source>
        <translation type="unfinished">Beri setiap pintu id sendiri, atau gabungkan kedua catatan.</translation>
    </message>
    <message>
        <source>this must be the categories of the two spaces, 1 to %1 in this vessel&apos;s fire tables</source>
        <translation type="unfinished">ini harus kategori kedua ruang, 1 sampai %1 dalam tabel kebakaran kapal ini</translation>
    </message>
    <message>
        <source>the catalogue has no requirement with this name</source>
        <translation type="unfinished">katalog tidak punya persyaratan dengan nama ini</translation>
    </message>
    <message>
        <source>Use the ids in the catalogue.</source>
        <translation type="unfinished">Pakai id dari katalog.</translation>
    </message>
    <message>
        <source>this is not an answer</source>
        <translation type="unfinished">ini bukan jawaban</translation>
    </message>
    <message>
        <source>this requirement has no figure measured with rule or gauge</source>
        <translation type="unfinished">persyaratan ini tidak punya angka yang diukur dengan mistar atau kaliber</translation>
    </message>
    <message>
        <source>no instrument for this figure has so coarse a step</source>
        <translation type="unfinished">tidak ada alat ukur untuk angka ini dengan langkah skala sekasar itu</translation>
    </message>
    <message>
        <source>Give the step in the unit of the requirement, at most %1.</source>
        <translation type="unfinished">Berikan langkahnya dalam satuan persyaratan, maksimal %1.</translation>
    </message>
    <message>
        <source>Give the marks that were timed, or remove the run.</source>
        <translation type="unfinished">Berikan tanda yang diukur waktunya, atau hapus ujinya.</translation>
    </message>
    <message>
        <source>Give seconds from the start of the stopwatch.</source>
        <translation type="unfinished">Berikan detik sejak stopwatch dimulai.</translation>
    </message>
    <message>
        <source>Give the seconds of both events on one stopwatch.</source>
        <translation type="unfinished">Berikan detik kedua kejadian pada satu stopwatch.</translation>
    </message>
    <message>
        <source>a heel of more than 45 degrees is not possible</source>
        <translation type="unfinished">kemiringan (heel) lebih dari 45 derajat tidak mungkin</translation>
    </message>
    <message>
        <source>the vessel could not be saved there</source>
        <translation type="unfinished">kapal tidak dapat disimpan di sana</translation>
    </message>
    <message>
        <source>is missing: this is not an exercise</source>
        <translation type="unfinished">tidak ada: ini bukan soal latihan</translation>
    </message>
    <message>
        <source>this program cannot read this form of exercise (it reads form %1)</source>
        <translation type="unfinished">program ini tidak dapat membaca bentuk soal latihan ini (program membaca bentuk %1)</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise written again.</source>
        <translation type="unfinished">Perbarui program ini, atau minta soal latihan ditulis ulang.</translation>
    </message>
    <message>
        <source>it is locked with a password</source>
        <translation type="unfinished">terkunci dengan kata sandi</translation>
    </message>
    <message>
        <source>Unlock it with that password.</source>
        <translation type="unfinished">Buka kuncinya dengan kata sandi itu.</translation>
    </message>
    <message>
        <source>has characters other than lower-case letters, digits and hyphens</source>
        <translation type="unfinished">mengandung karakter selain huruf kecil, angka, dan tanda hubung</translation>
    </message>
    <message>
        <source>Make it shorter.</source>
        <translation type="unfinished">Buat lebih pendek.</translation>
    </message>
    <message>
        <source>door %1 is listed twice</source>
        <translation type="unfinished">pintu %1 tercantum dua kali</translation>
    </message>
    <message>
        <source>&apos;%1&apos; and &apos;%2&apos; would hide each other on one door</source>
        <translation type="unfinished">&apos;%1&apos; dan &apos;%2&apos; akan saling menutupi pada satu pintu</translation>
    </message>
    <message>
        <source>is given without &quot;drawn&quot;: nothing is drawn</source>
        <translation type="unfinished">diberikan tanpa &quot;drawn&quot;: tidak ada yang diundi</translation>
    </message>
    <message>
        <source>these doors can take only %1 more faults</source>
        <translation type="unfinished">pintu-pintu ini hanya dapat menampung %1 cacat lagi</translation>
    </message>
    <message>
        <source>is missing: an exam needs a pass mark</source>
        <translation type="unfinished">tidak ada: ujian memerlukan nilai lulus</translation>
    </message>
    <message>
        <source>only an exam has a pass mark</source>
        <translation type="unfinished">hanya ujian punya nilai lulus</translation>
    </message>
    <message>
        <source>Remove it, or write &quot;exam&quot; as the level.</source>
        <translation type="unfinished">Hapus, atau tulis &quot;exam&quot; sebagai tingkatnya.</translation>
    </message>
    <message>
        <source>the exercise has no door with this number</source>
        <translation type="unfinished">soal latihan tidak punya pintu dengan nomor ini</translation>
    </message>
    <message>
        <source>this is not a date and time</source>
        <translation type="unfinished">ini bukan tanggal dan waktu</translation>
    </message>
    <message>
        <source>a delay is not a number: NOT saved</source>
        <translation type="unfinished">suatu kelambatan bukan angka: TIDAK tersimpan</translation>
    </message>
    <message>
        <source>could not be removed</source>
        <translation type="unfinished">tidak dapat dihapus</translation>
    </message>
    <message>
        <source>Check that you can write to the folder.</source>
        <translation type="unfinished">Periksa apakah Anda dapat menulis ke folder itu.</translation>
    </message>
    <message>
        <source>an exercise with this id comes with the program</source>
        <translation type="unfinished">soal latihan dengan id ini adalah bawaan program</translation>
    </message>
    <message>
        <source>another exercise with this id is already here</source>
        <translation type="unfinished">soal latihan lain dengan id ini sudah ada di sini</translation>
    </message>
    <message>
        <source>Give yours another id, or remove %1.</source>
        <translation type="unfinished">Beri milik Anda id lain, atau hapus %1.</translation>
    </message>
    <message>
        <source>this exercise is not locked</source>
        <translation type="unfinished">soal latihan ini tidak terkunci</translation>
    </message>
    <message>
        <source>Enter the password.</source>
        <translation type="unfinished">Masukkan kata sandi.</translation>
    </message>
    <message>
        <source>Choose a longer one; several words are best.</source>
        <translation type="unfinished">Pilih yang lebih panjang; paling baik beberapa kata.</translation>
    </message>
    <message>
        <source>the password does not open it: the password is wrong, or the file was changed after it was locked</source>
        <translation type="unfinished">kata sandi tidak membukanya: kata sandi salah, atau berkas diubah setelah dikunci</translation>
    </message>
    <message>
        <source>Type the password exactly as the instructor chose it, or ask for the file again.</source>
        <translation type="unfinished">Ketik kata sandi persis seperti dipilih instruktur, atau minta berkasnya lagi.</translation>
    </message>
    <message>
        <source>the lock is damaged</source>
        <translation type="unfinished">pengunciannya rusak</translation>
    </message>
    <message>
        <source>Ask for the file again.</source>
        <translation type="unfinished">Minta berkasnya lagi.</translation>
    </message>
    <message>
        <source>this lock has a format that this program does not know</source>
        <translation type="unfinished">format penguncian ini tidak dikenal program ini</translation>
    </message>
    <message>
        <source>Update this program, or have the exercise locked again.</source>
        <translation type="unfinished">Perbarui program ini, atau minta soal latihan dikunci lagi.</translation>
    </message>
    <message>
        <source>Have the exercise locked again.</source>
        <translation type="unfinished">Minta soal latihan dikunci lagi.</translation>
    </message>
    <message>
        <source>its open part was changed after it was locked: title, words, level, doors or pass mark</source>
        <translation type="unfinished">bagian terbukanya diubah setelah dikunci: judul, kata-kata, tingkat, pintu, atau nilai lulus</translation>
    </message>
    <message>
        <source>It shuts faster than permitted.</source>
        <translation type="unfinished">Menutup lebih cepat daripada yang diizinkan.</translation>
    </message>
    <message>
        <source>It shuts more slowly than permitted.</source>
        <translation type="unfinished">Menutup lebih lambat daripada yang diizinkan.</translation>
    </message>
    <message>
        <source>It shuts too close to the limit for any hand timing to pass or fail it.</source>
        <translation type="unfinished">Menutup terlalu dekat ke batas untuk diluluskan atau digagalkan dengan pengukuran waktu tangan.</translation>
    </message>
    <message>
        <source>The selector fails: the leaf that must wait closes first.</source>
        <translation type="unfinished">Pengatur urutan penutupan gagal: daun pintu yang harus menunggu menutup lebih dahulu.</translation>
    </message>
    <message>
        <source>It shuts but does not latch: it opens when pushed.</source>
        <translation type="unfinished">Menutup tetapi tidak terkancing: didorong, pintu terbuka.</translation>
    </message>
    <message>
        <source>The magnet holds for half a minute after the control station releases it, which counts as not released (common practice, no published source).</source>
        <translation type="unfinished">Magnet penahan masih menahan setengah menit setelah stasiun kontrol melepasnya, dan itu dihitung sebagai penahan tidak dilepas (praktik umum, tanpa sumber terbitan).</translation>
    </message>
    <message>
        <source>It cannot be released from one side.</source>
        <translation type="unfinished">Penahannya tidak dapat dilepas dari satu sisi.</translation>
    </message>
    <message>
        <source>It can be held open by a hook that the control station cannot release.</source>
        <translation type="unfinished">Dapat ditahan terbuka oleh kait penahan yang tidak dapat dilepas stasiun kontrol.</translation>
    </message>
    <message>
        <source>There is litter in the pocket.</source>
        <translation type="unfinished">Ada sampah di rongga.</translation>
    </message>
    <message>
        <source>The gap under the leaf is wider than permitted.</source>
        <translation type="unfinished">Celah di bawah daun pintu lebih lebar daripada yang diizinkan.</translation>
    </message>
    <message>
        <source>The plate shows a lower class than the boundary requires.</source>
        <translation type="unfinished">Pelat menunjukkan kelas lebih rendah daripada yang disyaratkan pembatas.</translation>
    </message>
    <message>
        <source>It stays open when opened again at the door after remote closing.</source>
        <translation type="unfinished">Tetap terbuka bila dibuka lagi di pintu setelah ditutup dari jauh.</translation>
    </message>
    <message>
        <source>Someone was in the path of the leaf: the run had to be stopped.</source>
        <translation type="unfinished">Ada orang di lintasan daun pintu: uji harus dihentikan.</translation>
    </message>
    <message>
        <source>its bytes cannot be read</source>
        <translation type="unfinished">byte-nya tidak dapat dibaca</translation>
    </message>
    <message>
        <source>not all of its bytes can be read</source>
        <translation type="unfinished">tidak semua byte-nya dapat dibaca</translation>
    </message>
    <message>
        <source>this is not a handover file, or only part of one</source>
        <translation type="unfinished">ini bukan berkas serah terima, atau hanya sebagian</translation>
    </message>
    <message>
        <source>Choose another file, or ask for a new export.</source>
        <translation type="unfinished">Pilih berkas lain, atau minta ekspor baru.</translation>
    </message>
    <message>
        <source>Ask for a new export.</source>
        <translation type="unfinished">Minta ekspor baru.</translation>
    </message>
    <message>
        <source>No genuine handover file is like this; do not use it.</source>
        <translation type="unfinished">Tidak ada berkas serah terima asli yang seperti ini; jangan pakai.</translation>
    </message>
    <message>
        <source>the signature does not match the key of the device that signed it: contents.sha256 or contents.sig was changed</source>
        <translation type="unfinished">tanda tangan tidak cocok dengan kunci perangkat yang menandatanganinya: contents.sha256 atau contents.sig diubah</translation>
    </message>
    <message>
        <source>%1 does not match the hash in its name</source>
        <translation type="unfinished">%1 tidak cocok dengan hash dalam namanya</translation>
    </message>
    <message>
        <source>its contents do not match the counts on its first page</source>
        <translation type="unfinished">isinya tidak cocok dengan jumlah di halaman pertamanya</translation>
    </message>
    <message>
        <source>%1 is the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">%1 adalah kapal praktik, yang pintunya simulasi</translation>
    </message>
    <message>
        <source>this is not a handover file</source>
        <translation type="unfinished">ini bukan berkas serah terima</translation>
    </message>
    <message>
        <source>Update this program, or import the file with the newer one.</source>
        <translation type="unfinished">Perbarui program ini, atau impor berkas dengan yang lebih baru.</translation>
    </message>
    <message>
        <source>this is not a device key</source>
        <translation type="unfinished">ini bukan kunci perangkat</translation>
    </message>
    <message>
        <source>Hand over a copy of the whole register instead.</source>
        <translation type="unfinished">Sebagai gantinya, serahkan salinan seluruh register.</translation>
    </message>
    <message>
        <source>the file is for a different vessel; this register is for %1 %2</source>
        <translation type="unfinished">berkas itu untuk kapal lain; register ini untuk %1 %2</translation>
    </message>
    <message>
        <source>Open that vessel&apos;s register, or begin a new one.</source>
        <translation type="unfinished">Buka register kapal itu, atau mulai yang baru.</translation>
    </message>
    <message>
        <source>Open it with the register of the device it is meant for.</source>
        <translation type="unfinished">Buka dengan register perangkat yang dituju.</translation>
    </message>
    <message>
        <source>the computer provides no random numbers</source>
        <translation type="unfinished">komputer tidak menyediakan bilangan acak</translation>
    </message>
    <message>
        <source>Restart the computer.</source>
        <translation type="unfinished">Mulai ulang komputer.</translation>
    </message>
    <message>
        <source>the file claims to come from this device, but its key fingerprint, %1, is not this device&apos;s</source>
        <translation type="unfinished">berkas mengaku berasal dari perangkat ini, tetapi sidik kuncinya, %1, bukan milik perangkat ini</translation>
    </message>
    <message>
        <source>Do not import it; find out who made it.</source>
        <translation type="unfinished">Jangan impor; cari tahu siapa yang membuatnya.</translation>
    </message>
    <message>
        <source>its key is not the one accepted for it: fingerprint %1 instead of %2</source>
        <translation type="unfinished">kuncinya bukan yang diterima untuknya: sidik %1, bukan %2</translation>
    </message>
    <message>
        <source>Do not import it until you have asked whoever has that tablet; if its key really is new, take back the old acceptance first.</source>
        <translation type="unfinished">Jangan impor sebelum Anda bertanya kepada pemegang tablet itu; bila kuncinya memang baru, tarik kembali dahulu penerimaan yang lama.</translation>
    </message>
    <message>
        <source>it accepts, in this device&apos;s name, a key that no one here has accepted: key %1 of device %2, fingerprint %3</source>
        <translation type="unfinished">berkas menerima, atas nama perangkat ini, kunci yang tidak diterima siapa pun di sini: kunci %1 perangkat %2, sidik %3</translation>
    </message>
    <message>
        <source>If this register was restored from a backup, compare that key too and accept it; otherwise do not import the file.</source>
        <translation type="unfinished">Bila register ini dipulihkan dari cadangan, bandingkan juga kunci itu dan terima; bila tidak, jangan impor berkas itu.</translation>
    </message>
    <message>
        <source>its key has not been accepted here yet; fingerprint %1</source>
        <translation type="unfinished">kuncinya belum diterima di sini; sidik %1</translation>
    </message>
    <message>
        <source>Compare it with the fingerprint shown on that tablet, then accept it.</source>
        <translation type="unfinished">Bandingkan dengan sidik yang ditampilkan tablet itu, lalu terima.</translation>
    </message>
    <message>
        <source>Create the report again.</source>
        <translation type="unfinished">Buat lagi laporannya.</translation>
    </message>
    <message>
        <source>the signature does not match its key and contents</source>
        <translation type="unfinished">tanda tangan tidak cocok dengan kunci dan isinya</translation>
    </message>
    <message>
        <source>it was not made with its device&apos;s key</source>
        <translation type="unfinished">tidak dibuat dengan kunci perangkatnya</translation>
    </message>
    <message>
        <source>its bytes have been changed</source>
        <translation type="unfinished">byte-nya telah diubah</translation>
    </message>
    <message>
        <source>Import it again from another tablet.</source>
        <translation type="unfinished">Impor lagi dari tablet lain.</translation>
    </message>
    <message>
        <source>Latchround never writes this; do not rely on it.</source>
        <translation type="unfinished">Latchround tidak pernah menulis ini; jangan mengandalkannya.</translation>
    </message>
    <message>
        <source>%1 at the top</source>
        <translation type="unfinished">%1 di bagian atas</translation>
    </message>
    <message>
        <source>document</source>
        <translation type="unfinished">dokumen</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulir kosong</translation>
    </message>
    <message>
        <source>the password</source>
        <translation type="unfinished">kata sandi</translation>
    </message>
    <message>
        <source>stopped as requested: nothing was changed</source>
        <translation type="unfinished">dihentikan sesuai permintaan: tidak ada yang diubah</translation>
    </message>
    <message>
        <source>Copy it to one of your own folders.</source>
        <translation type="unfinished">Salin ke salah satu folder Anda sendiri.</translation>
    </message>
    <message>
        <source>a file with this name already exists: NOT replaced</source>
        <translation type="unfinished">berkas dengan nama ini sudah ada: TIDAK diganti</translation>
    </message>
    <message>
        <source>Give another name, or allow it to be replaced.</source>
        <translation type="unfinished">Beri nama lain, atau izinkan diganti.</translation>
    </message>
    <message>
        <source>this is the register itself: NOT overwritten</source>
        <translation type="unfinished">ini register itu sendiri: TIDAK ditimpa</translation>
    </message>
    <message>
        <source>it could not be flushed to storage: %1</source>
        <translation type="unfinished">tidak dapat dituntaskan ke media penyimpanan: %1</translation>
    </message>
    <message>
        <source>the written file could not be moved into place: %1</source>
        <translation type="unfinished">berkas yang ditulis tidak dapat dipindahkan ke tempatnya: %1</translation>
    </message>
    <message>
        <source>Write it again before the power is switched off.</source>
        <translation type="unfinished">Tulis lagi sebelum daya dimatikan.</translation>
    </message>
    <message>
        <source>could not be removed: %1</source>
        <translation type="unfinished">tidak dapat dihapus: %1</translation>
    </message>
    <message>
        <source>there is text before or after the quotes of a cell</source>
        <translation type="unfinished">ada teks sebelum atau sesudah tanda kutip suatu sel</translation>
    </message>
    <message>
        <source>a number in it is too large to read</source>
        <translation type="unfinished">suatu angka di dalamnya terlalu besar untuk dibaca</translation>
    </message>
    <message>
        <source>Ask whoever gave you the file for a good copy.</source>
        <translation type="unfinished">Minta salinan yang baik kepada pemberi berkas.</translation>
    </message>
    <message>
        <source>Remove it, or begin its name with &quot;x-&quot;.</source>
        <translation type="unfinished">Hapus, atau awali namanya dengan &quot;x-&quot;.</translation>
    </message>
    <message>
        <source>this must be a list of text values</source>
        <translation type="unfinished">ini harus berupa daftar nilai teks</translation>
    </message>
    <message>
        <source>this must be text</source>
        <translation type="unfinished">ini harus berupa teks</translation>
    </message>
    <message>
        <source>%1: NOT imported</source>
        <translation type="unfinished">%1: TIDAK diimpor</translation>
    </message>
    <message>
        <source>stopped as requested</source>
        <translation type="unfinished">dihentikan sesuai permintaan</translation>
    </message>
    <message>
        <source>records are never changed or deleted (%1)</source>
        <translation type="unfinished">catatan tidak pernah diubah atau dihapus (%1)</translation>
    </message>
    <message>
        <source>a text contains invalid bytes, or a value is of the wrong kind</source>
        <translation type="unfinished">suatu teks mengandung byte yang tidak sah, atau suatu nilai salah jenisnya</translation>
    </message>
    <message>
        <source>it appears twice (%1)</source>
        <translation type="unfinished">muncul dua kali (%1)</translation>
    </message>
    <message>
        <source>Remove one of the two.</source>
        <translation type="unfinished">Hapus salah satu dari keduanya.</translation>
    </message>
    <message>
        <source>the register does not allow one of the values (%1)</source>
        <translation type="unfinished">register tidak mengizinkan salah satu nilai (%1)</translation>
    </message>
    <message>
        <source>Try again; if it happens again, save the register to another disk.</source>
        <translation type="unfinished">Coba lagi; jika terjadi lagi, simpan register ke disk lain.</translation>
    </message>
    <message>
        <source>you cannot write to the register here</source>
        <translation type="unfinished">Anda tidak dapat menulis ke register di sini</translation>
    </message>
    <message>
        <source>Copy it to a folder you can write to and open it there.</source>
        <translation type="unfinished">Salin ke folder yang dapat Anda tulisi dan buka di sana.</translation>
    </message>
    <message>
        <source>Check that the disk is connected and that you can write to the folder.</source>
        <translation type="unfinished">Periksa apakah disk tersambung dan apakah Anda dapat menulis ke folder itu.</translation>
    </message>
    <message>
        <source>this is not a vessel register</source>
        <translation type="unfinished">ini bukan register kapal</translation>
    </message>
    <message>
        <source>Try again; if it happens again, open the last backup.</source>
        <translation type="unfinished">Coba lagi; jika terjadi lagi, buka cadangan terakhir.</translation>
    </message>
    <message>
        <source>there is no file layer with that name</source>
        <translation type="unfinished">tidak ada lapisan berkas dengan nama itu</translation>
    </message>
    <message>
        <source>the register is missing, but &quot;%1&quot; beside it contains its entries</source>
        <translation type="unfinished">register tidak ada, tetapi &quot;%1&quot; di sampingnya berisi entrinya</translation>
    </message>
    <message>
        <source>Create the folder, or choose another place.</source>
        <translation type="unfinished">Buat foldernya, atau pilih tempat lain.</translation>
    </message>
    <message>
        <source>you cannot write to this folder</source>
        <translation type="unfinished">Anda tidak dapat menulis ke folder ini</translation>
    </message>
    <message>
        <source>the new register cannot be put there</source>
        <translation type="unfinished">register baru tidak dapat ditaruh di sana</translation>
    </message>
    <message>
        <source>Try again; if it happens again, choose another disk.</source>
        <translation type="unfinished">Coba lagi; jika terjadi lagi, pilih disk lain.</translation>
    </message>
    <message>
        <source>you cannot read this file</source>
        <translation type="unfinished">Anda tidak dapat membaca berkas ini</translation>
    </message>
    <message>
        <source>the register is in a read-only place; nothing can be recorded</source>
        <translation type="unfinished">register berada di tempat yang hanya dapat dibaca; tidak ada yang dapat dicatat</translation>
    </message>
    <message>
        <source>the file is empty; it is not a vessel register</source>
        <translation type="unfinished">berkas kosong; ini bukan register kapal</translation>
    </message>
    <message>
        <source>Delete it to begin a new register with this name, or choose another file.</source>
        <translation type="unfinished">Hapus untuk memulai register baru dengan nama ini, atau pilih berkas lain.</translation>
    </message>
    <message>
        <source>this is not a Latchround vessel register</source>
        <translation type="unfinished">ini bukan register kapal Latchround</translation>
    </message>
    <message>
        <source>the register was written by a newer program (version %1; this one reads up to %2)</source>
        <translation type="unfinished">register ditulis program yang lebih baru (versi %1; program ini membaca sampai %2)</translation>
    </message>
    <message>
        <source>the register was never completed</source>
        <translation type="unfinished">register tidak pernah diselesaikan</translation>
    </message>
    <message>
        <source>this disk does not support a write-ahead log</source>
        <translation type="unfinished">disk ini tidak mendukung write-ahead log</translation>
    </message>
    <message>
        <source>a program of another version is writing to it</source>
        <translation type="unfinished">program versi lain sedang menulis ke situ</translation>
    </message>
    <message>
        <source>updating the register would leave rows of %1 with missing references: NOT changed</source>
        <translation type="unfinished">memperbarui register akan membuat baris %1 kehilangan rujukan: TIDAK diubah</translation>
    </message>
    <message>
        <source>a row of %1 has a missing reference</source>
        <translation type="unfinished">satu baris %1 kehilangan rujukan</translation>
    </message>
    <message>
        <source>Import the file into the register of its vessel.</source>
        <translation type="unfinished">Impor berkas ke register kapalnya.</translation>
    </message>
    <message>
        <source>Sign and export in a vessel&apos;s register.</source>
        <translation type="unfinished">Tandatangani dan ekspor di register kapal.</translation>
    </message>
    <message>
        <source>this is a vessel&apos;s register: it cannot be used for practice</source>
        <translation type="unfinished">ini register kapal: tidak dapat dipakai untuk praktik</translation>
    </message>
    <message>
        <source>a practice register can hold only the practice vessel</source>
        <translation type="unfinished">register praktik hanya dapat memuat kapal praktik</translation>
    </message>
    <message>
        <source>the number %1 is reserved for the practice vessel, whose doors are simulated</source>
        <translation type="unfinished">nomor %1 dicadangkan untuk kapal praktik, yang pintunya simulasi</translation>
    </message>
    <message>
        <source>Give the vessel&apos;s own number, or use it under Practice.</source>
        <translation type="unfinished">Berikan nomor kapal sendiri, atau pakai di bawah Praktik.</translation>
    </message>
    <message>
        <source>another program is writing to this register (%1)</source>
        <translation type="unfinished">program lain sedang menulis ke register ini (%1)</translation>
    </message>
    <message>
        <source>another program removed the register&apos;s log</source>
        <translation type="unfinished">program lain menghapus log register</translation>
    </message>
    <message>
        <source>Try again: the contents of the log are put into the register first. Do not open the register in another program meanwhile.</source>
        <translation type="unfinished">Coba lagi: isi log dimasukkan dahulu ke register. Sementara itu jangan buka register di program lain.</translation>
    </message>
    <message>
        <source>Take back the end of the walkdown first, or begin another.</source>
        <translation type="unfinished">Tarik kembali dahulu akhir inspeksi, atau mulai yang lain.</translation>
    </message>
    <message>
        <source>%1 cannot be undone</source>
        <translation type="unfinished">%1 tidak dapat diurungkan</translation>
    </message>
    <message>
        <source>Only what you recorded on this tablet can be undone; record a correction.</source>
        <translation type="unfinished">Hanya yang Anda catat di tablet ini dapat diurungkan; catat koreksi.</translation>
    </message>
    <message>
        <source>Record it separately.</source>
        <translation type="unfinished">Catat secara terpisah.</translation>
    </message>
    <message>
        <source>this is not a photograph</source>
        <translation type="unfinished">ini bukan foto</translation>
    </message>
    <message>
        <source>the photograph does not match its hash</source>
        <translation type="unfinished">foto tidak cocok dengan hash-nya</translation>
    </message>
    <message>
        <source>Import it from the tablet that took it.</source>
        <translation type="unfinished">Impor dari tablet yang mengambilnya.</translation>
    </message>
    <message>
        <source>Check the number, or first import an arrangement that lists the door.</source>
        <translation type="unfinished">Periksa nomornya, atau impor dahulu susunan yang mencantumkan pintu itu.</translation>
    </message>
    <message>
        <source>Keep the door in the arrangement, under the number used when it was tested.</source>
        <translation type="unfinished">Pertahankan pintu dalam susunan, dengan nomor yang dipakai saat diuji.</translation>
    </message>
    <message>
        <source>Import an arrangement that includes the door, here or on the other device, then export again.</source>
        <translation type="unfinished">Impor susunan yang mencakup pintu itu, di sini atau di perangkat lain, lalu ekspor lagi.</translation>
    </message>
    <message>
        <source>it is recorded here with different content under the same id</source>
        <translation type="unfinished">tercatat di sini dengan isi berbeda di bawah id yang sama</translation>
    </message>
    <message>
        <source>One of the two registers was changed outside this program; find out which before using either.</source>
        <translation type="unfinished">Salah satu dari kedua register diubah di luar program ini; cari tahu yang mana sebelum memakai salah satunya.</translation>
    </message>
    <message>
        <source>%1 is neither in this register nor in the import</source>
        <translation type="unfinished">%1 tidak ada di register ini maupun dalam impor</translation>
    </message>
    <message>
        <source>Ask for a complete new export.</source>
        <translation type="unfinished">Minta ekspor baru yang lengkap.</translation>
    </message>
    <message>
        <source>no A class by the approved plan, where the tables require one</source>
        <translation type="unfinished">tanpa kelas A menurut denah yang disetujui, padahal tabel mensyaratkannya</translation>
    </message>
    <message>
        <source>approved plan not below the A class of the tables</source>
        <translation type="unfinished">denah yang disetujui tidak di bawah kelas A dari tabel</translation>
    </message>
    <message>
        <source>its spaces do not show whether one is a machinery space of category A</source>
        <translation type="unfinished">ruangnya tidak menunjukkan apakah salah satunya ruang permesinan kategori A</translation>
    </message>
    <message>
        <source>As a rule the mean length of a zone on any one deck is at most 40 m (131 ft), except the vehicle space of a vehicle ferry. With Marine Safety Center approval it is at most 44 m (144 ft), and so is the distance between the zone&apos;s farthest points. With a balcony the actual length is at most 40 m; if that length plus the balcony area divided by the mean width is more than 40 m, both decks have sprinklers (46 CFR 116.415(d)(1), 116.439(c)-(d)).</source>
        <translation type="unfinished">Pada umumnya panjang rata-rata zona di satu geladak maksimal 40 m (131 ft), kecuali ruang kendaraan feri kendaraan. Dengan persetujuan Marine Safety Center maksimal 44 m (144 ft), demikian pula jarak antara titik-titik terjauh zona. Dengan balkon, panjang sebenarnya maksimal 40 m; bila panjang itu ditambah luas balkon dibagi lebar rata-rata lebih dari 40 m, kedua geladak punya sprinkler (46 CFR 116.415(d)(1), 116.439(c)-(d)).</translation>
    </message>
    <message>
        <source>this is not an entry id</source>
        <translation type="unfinished">ini bukan id entri</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a kind of entry</source>
        <translation type="unfinished">&quot;%1&quot; bukan jenis entri</translation>
    </message>
    <message>
        <source>Give that mark, or write &quot;void&quot;.</source>
        <translation type="unfinished">Berikan tanda itu, atau tulis &quot;void&quot; (batal).</translation>
    </message>
    <message>
        <source>this computer has too little free memory to check the password</source>
        <translation type="unfinished">komputer ini kekurangan memori bebas untuk memeriksa kata sandi</translation>
    </message>
    <message>
        <source>a part of the file cannot be read</source>
        <translation type="unfinished">sebagian berkas tidak dapat dibaca</translation>
    </message>
    <message>
        <source>%1 is in the file twice</source>
        <translation type="unfinished">%1 ada dua kali dalam berkas</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; in it points outside the file</source>
        <translation type="unfinished">nama &quot;%1&quot; di dalamnya menunjuk ke luar berkas</translation>
    </message>
    <message>
        <source>%1 would expand out of all proportion</source>
        <translation type="unfinished">%1 akan mengembang di luar kewajaran</translation>
    </message>
    <message>
        <source>%1 does not belong in a handover file</source>
        <translation type="unfinished">%1 tidak termasuk dalam berkas serah terima</translation>
    </message>
    <message>
        <source>%1 was added after the file was signed</source>
        <translation type="unfinished">%1 ditambahkan setelah berkas ditandatangani</translation>
    </message>
    <message>
        <source>%1 was changed after the file was signed</source>
        <translation type="unfinished">%1 diubah setelah berkas ditandatangani</translation>
    </message>
    <message>
        <source>entry %1 appears twice, with different content</source>
        <translation type="unfinished">entri %1 muncul dua kali, dengan isi berbeda</translation>
    </message>
    <message>
        <source>Copy all 64 digits and letters as shown on the other tablet.</source>
        <translation type="unfinished">Salin semua 64 angka dan huruf seperti ditampilkan di tablet lain.</translation>
    </message>
    <message>
        <source>it is based on %1 entries of device %2 up to %3; %4 are here</source>
        <translation type="unfinished">didasarkan pada %1 entri perangkat %2 sampai %3; di sini ada %4</translation>
    </message>
    <message>
        <source>the entries it is based on have changed since</source>
        <translation type="unfinished">entri yang mendasarinya telah berubah sejak itu</translation>
    </message>
    <message>
        <source>the entry it replaces, %1, is not here</source>
        <translation type="unfinished">entri yang digantikannya, %1, tidak ada di sini</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation type="unfinished">entri %1</translation>
    </message>
    <message>
        <source>boundary %1 by the approved plan, A class by %2</source>
        <translation type="unfinished">pembatas %1 menurut denah yang disetujui, kelas A menurut %2</translation>
    </message>
    <message>
        <source>entry %1 is incomplete</source>
        <translation type="unfinished">entri %1 tidak lengkap</translation>
    </message>
    <message>
        <source>another entry with this id is recorded already</source>
        <translation type="unfinished">entri lain dengan id ini sudah tercatat</translation>
    </message>
    <message>
        <source>the entry it shows, &quot;%1&quot;</source>
        <translation type="unfinished">entri yang ditunjukkannya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry it replaces, &quot;%1&quot;</source>
        <translation type="unfinished">entri yang digantikannya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry that stands, &quot;%1&quot;</source>
        <translation type="unfinished">entri yang berlaku, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the entry it overrules, &quot;%1&quot;</source>
        <translation type="unfinished">entri yang dikesampingkannya, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">susunan baru tidak punya pintu itu, tetapi 1 entri tercatat tentangnya</translation>
    </message>
    <message>
        <source>the new arrangement has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">susunan baru tidak punya pintu itu, tetapi %1 entri tercatat tentangnya</translation>
    </message>
    <message>
        <source>the text speaks of doors in bulkheads, and this one is in a deck</source>
        <translation type="unfinished">teks menyebut pintu di sekat, sedangkan pintu ini pada lantai geladak</translation>
    </message>
    <message>
        <source>by the door&apos;s own class, as the boundary&apos;s is not known</source>
        <translation type="unfinished">menurut kelas pintu itu sendiri, karena kelas pembatasnya tidak diketahui</translation>
    </message>
    <message>
        <source>no text here binds this vessel</source>
        <translation type="unfinished">tidak ada teks di sini yang mengikat kapal ini</translation>
    </message>
    <message>
        <source>there is no translation into &quot;%1&quot;</source>
        <translation type="unfinished">tidak ada terjemahan ke &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Choose one of: %2.</source>
        <translation type="unfinished">Pilih salah satu dari: %2.</translation>
    </message>
    <message>
        <source>only a PDF can be a translation</source>
        <translation type="unfinished">hanya PDF yang dapat berupa terjemahan</translation>
    </message>
    <message>
        <source>Write it to a PDF file; data is the same in every language.</source>
        <translation type="unfinished">Tulis ke berkas PDF; data sama dalam setiap bahasa.</translation>
    </message>
    <message>
        <source>%1 measured, %2 needed at %3 degrees</source>
        <translation type="unfinished">%1 terukur, %2 diperlukan pada %3 derajat</translation>
    </message>
    <message>
        <source>Put it into LATCHROUND_PASSWORD, or into a file named by --password-from.</source>
        <translation type="unfinished">Taruh kata sandi di LATCHROUND_PASSWORD, atau di berkas yang disebut dengan --password-from.</translation>
    </message>
    <message>
        <source>the file is damaged and cannot be opened</source>
        <translation type="unfinished">berkas rusak dan tidak dapat dibuka</translation>
    </message>
    <message>
        <source>this file is for one device only</source>
        <translation type="unfinished">berkas ini hanya untuk satu perangkat</translation>
    </message>
    <message>
        <source>this file is for another device only, with key fingerprint %1</source>
        <translation type="unfinished">berkas ini hanya untuk perangkat lain, dengan sidik kunci %1</translation>
    </message>
    <message>
        <source>Open it there, or have it exported for this device, with key fingerprint %2.</source>
        <translation type="unfinished">Buka di sana, atau minta diekspor untuk perangkat ini, dengan sidik kunci %2.</translation>
    </message>
    <message>
        <source>Nearest name here: &quot;%1&quot;.</source>
        <translation type="unfinished">Nama paling mirip di sini: &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot; or &quot;%2&quot;.</source>
        <translation type="unfinished">Nama paling mirip di sini: &quot;%1&quot; atau &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Nearest names here: &quot;%1&quot;, &quot;%2&quot; or &quot;%3&quot;.</source>
        <translation type="unfinished">Nama paling mirip di sini: &quot;%1&quot;, &quot;%2&quot;, atau &quot;%3&quot;.</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but 1 entry is recorded about it</source>
        <translation type="unfinished">susunan dalam berkas tidak punya pintu itu, tetapi 1 entri tercatat tentangnya</translation>
    </message>
    <message>
        <source>the arrangement in the file has no such door, but %1 entries are recorded about it</source>
        <translation type="unfinished">susunan dalam berkas tidak punya pintu itu, tetapi %1 entri tercatat tentangnya</translation>
    </message>
    <message>
        <source>this is not a URL: in a password, percent-encode every character that is not a letter or digit, such as %1 for @</source>
        <translation type="unfinished">ini bukan URL: dalam kata sandi, kodekan dengan persen (percent-encoding) setiap karakter selain huruf dan angka, misalnya %1 untuk @</translation>
    </message>
    <message>
        <source>it is locked, but its open part shows faults</source>
        <translation type="unfinished">terkunci, tetapi bagian terbukanya memperlihatkan cacat</translation>
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
        <translation type="unfinished">Daun pintu terlihat mulai</translation>
    </message>
    <message>
        <source>Leaf seen to stop</source>
        <translation type="unfinished">Daun pintu terlihat berhenti</translation>
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
        <source>no marks</source>
        <translation type="unfinished">tanpa tanda</translation>
    </message>
    <message>
        <source>%1 of %2 marks count, %3 needed</source>
        <translation type="unfinished">%1 dari %2 tanda dihitung, perlu %3</translation>
    </message>
    <message>
        <source>%1 marks, %2, scatter %3&#xa0;ms</source>
        <translation type="unfinished">%1 tanda, %2, sebaran %3 ms</translation>
    </message>
</context>
<context>
    <name>DebriefWords</name>
    <message>
        <source>nothing was wrong here</source>
        <translation type="unfinished">tidak ada yang salah di sini</translation>
    </message>
    <message>
        <source>You: %1</source>
        <translation type="unfinished">Anda: %1</translation>
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
        <source>Nothing was timed.</source>
        <translation type="unfinished">Tidak ada yang diukur waktunya.</translation>
    </message>
    <message>
        <source>There was no fault, and none was reported.</source>
        <translation type="unfinished">Tidak ada cacat, dan tidak ada yang dilaporkan.</translation>
    </message>
    <message>
        <source>Every check is graded correctly.</source>
        <translation type="unfinished">Semua pemeriksaan dinilai dengan benar.</translation>
    </message>
    <message>
        <source>No one was endangered</source>
        <translation type="unfinished">Tidak seorang pun terancam bahaya</translation>
    </message>
    <message>
        <source>A leaf reached someone, or would have. Aboard, that is a crushed hand or a death: a power-operated leaf does not know who is in its way.</source>
        <translation type="unfinished">Daun pintu mengenai seseorang, atau nyaris. Di kapal itu berarti tangan terjepit atau kematian: daun pintu bermesin tidak tahu siapa yang ada di jalurnya.</translation>
    </message>
    <message>
        <source>No moving leaf reached anyone.</source>
        <translation type="unfinished">Tidak ada daun pintu bergerak yang mengenai siapa pun.</translation>
    </message>
    <message>
        <source>Watch the opening, not the clock. Stop the moment someone steps in: a stopped run costs two minutes.</source>
        <translation type="unfinished">Awasi bukaan pintu, bukan penunjuk waktu. Hentikan seketika bila ada yang melangkah masuk: uji yang dihentikan hanya merugikan dua menit.</translation>
    </message>
    <message>
        <source>Every caution was true when confirmed</source>
        <translation type="unfinished">Semua syarat aman benar saat dikonfirmasi</translation>
    </message>
    <message>
        <source>One caution was falsely confirmed</source>
        <translation type="unfinished">Satu syarat aman dikonfirmasi padahal tidak benar</translation>
    </message>
    <message>
        <source>%1 cautions were falsely confirmed</source>
        <translation type="unfinished">%1 syarat aman dikonfirmasi padahal tidak benar</translation>
    </message>
    <message>
        <source>Your reaction time in this exercise</source>
        <translation type="unfinished">Waktu reaksi Anda dalam soal latihan ini</translation>
    </message>
    <message>
        <source>Each mark against the true time</source>
        <translation type="unfinished">Setiap tanda dibanding waktu sebenarnya</translation>
    </message>
    <message>
        <source>The right response is to stop. No requirement covers this.</source>
        <translation type="unfinished">Tindakan yang benar adalah menghentikan. Tidak ada persyaratan tentang ini.</translation>
    </message>
    <message>
        <source>Correct: %1</source>
        <translation type="unfinished">Yang benar: %1</translation>
    </message>
    <message>
        <source>The stopwatch was armed with someone in the way. Look at both sides first. Ask people to stand clear. Never confirm a caution just to go on.</source>
        <translation type="unfinished">Stopwatch disiapkan saat masih ada orang di lintasan. Lihat dahulu kedua sisi. Minta orang menjauh. Jangan pernah mengonfirmasi syarat aman hanya agar dapat lanjut.</translation>
    </message>
    <message>
        <source>The way was clear each time the stopwatch was armed.</source>
        <translation type="unfinished">Lintasan bebas setiap kali stopwatch disiapkan.</translation>
    </message>
    <message>
        <source>The marks of all your exercises add up. Once there are %1 of a kind, the timing drill offers to use them as your own figures in place of the published ones.</source>
        <translation type="unfinished">Tanda dari semua soal latihan Anda dikumpulkan. Bila sudah ada %1 dari satu jenis, uji reaksi menawarkan untuk memakainya sebagai angka Anda sendiri, menggantikan angka terbitan.</translation>
    </message>
</context>
<context>
    <name>DeficiencyWords</name>
    <message>
        <source>Not met: %1</source>
        <translation type="unfinished">Tidak terpenuhi: %1</translation>
    </message>
    <message>
        <source>found on %1, open since</source>
        <translation type="unfinished">ditemukan pada %1, terbuka sejak itu</translation>
    </message>
    <message>
        <source>Deficiency at door %1</source>
        <translation type="unfinished">Defisiensi di pintu %1</translation>
    </message>
    <message>
        <source>The same defect again</source>
        <translation type="unfinished">Cacat yang sama lagi</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2; limit: %3</source>
        <translation type="unfinished">Tidak terpenuhi: %1. Terukur %2; batas: %3</translation>
    </message>
    <message>
        <source>This check was written up before: %1.</source>
        <translation type="unfinished">Pemeriksaan ini sudah pernah ditulis: %1.</translation>
    </message>
    <message>
        <source>found on %1, since %2</source>
        <translation type="unfinished">ditemukan pada %1, sejak %2</translation>
    </message>
    <message>
        <source>Another defect</source>
        <translation type="unfinished">Cacat lain</translation>
    </message>
    <message>
        <source>Not met: %1. Measured %2</source>
        <translation type="unfinished">Tidak terpenuhi: %1. Terukur %2</translation>
    </message>
</context>
<context>
    <name>DoorWords</name>
    <message>
        <source>single leaf</source>
        <translation type="unfinished">satu daun</translation>
    </message>
    <message>
        <source>double leaf</source>
        <translation type="unfinished">dua daun</translation>
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
        <source>drill</source>
        <translation type="unfinished">latihan darurat</translation>
    </message>
    <message>
        <source>other purpose</source>
        <translation type="unfinished">tujuan lain</translation>
    </message>
    <message>
        <source>from the control station</source>
        <translation type="unfinished">dari stasiun kontrol</translation>
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
        <source>Alarm on</source>
        <translation type="unfinished">Alarm nyala</translation>
    </message>
    <message>
        <source>Leaf moves</source>
        <translation type="unfinished">Pintu bergerak</translation>
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
        <translation type="unfinished">Daun pintu 1 tertutup</translation>
    </message>
    <message>
        <source>Second leaf home</source>
        <translation type="unfinished">Daun pintu 2 tertutup</translation>
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
        <source>touch the moment the leaf is home</source>
        <translation type="unfinished">sentuh tepat saat daun pintu tertutup rapat</translation>
    </message>
    <message>
        <source>touch the moment the alarm is silent</source>
        <translation type="unfinished">sentuh tepat saat alarm senyap</translation>
    </message>
    <message>
        <source>touch when the first leaf is home</source>
        <translation type="unfinished">sentuh saat daun pintu pertama tertutup rapat</translation>
    </message>
    <message>
        <source>touch when the second leaf is home</source>
        <translation type="unfinished">sentuh saat daun pintu kedua tertutup rapat</translation>
    </message>
    <message>
        <source>touch when the edge meets the block</source>
        <translation type="unfinished">sentuh saat tepi daun mengenai balok</translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished">lengkap</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished">dihentikan</translation>
    </message>
    <message>
        <source>port State campaign</source>
        <translation type="unfinished">kampanye PSC</translation>
    </message>
    <message>
        <source>port State control</source>
        <translation type="unfinished">Port State Control (PSC)</translation>
    </message>
    <message>
        <source>blackout test</source>
        <translation type="unfinished">uji blackout</translation>
    </message>
    <message>
        <source>by hand from fully open</source>
        <translation type="unfinished">dengan tangan dari terbuka penuh</translation>
    </message>
    <message>
        <source>optional: when half the opening is closed</source>
        <translation type="unfinished">pilihan: saat separuh bukaan tertutup</translation>
    </message>
    <message>
        <source>touch when the leaf stops and re-opens</source>
        <translation type="unfinished">sentuh saat daun pintu berhenti lalu membuka lagi</translation>
    </message>
    <message>
        <source>void</source>
        <translation type="unfinished">batal</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation type="unfinished">Kontak</translation>
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
        <source>Passenger ship safety certificate, renewal survey</source>
        <translation type="unfinished">Sertifikat keselamatan kapal penumpang, survei pembaruan</translation>
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
        <source>%1 overdue</source>
        <translation type="unfinished">%1 terlambat</translation>
    </message>
    <message>
        <source>overdue: expired on %1</source>
        <translation type="unfinished">terlambat: kedaluwarsa pada %1</translation>
    </message>
    <message>
        <source>expires %1, window opens %2</source>
        <translation type="unfinished">kedaluwarsa %1, rentang survei dibuka %2</translation>
    </message>
    <message>
        <source>window open since %1, expires %2</source>
        <translation type="unfinished">rentang survei dibuka sejak %1, kedaluwarsa %2</translation>
    </message>
    <message>
        <source>on request</source>
        <translation type="unfinished">bila diminta</translation>
    </message>
    <message>
        <source>overdue: some doors never tested in this register</source>
        <translation type="unfinished">terlambat: ada pintu yang belum pernah diuji di register ini</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation type="unfinished">tidak ada yang jatuh tempo</translation>
    </message>
    <message>
        <source>next due %1</source>
        <translation type="unfinished">tenggat berikut %1</translation>
    </message>
    <message>
        <source>annual</source>
        <translation type="unfinished">tahunan</translation>
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
        <source>alarm too short</source>
        <translation type="unfinished">alarm terlalu pendek</translation>
    </message>
    <message>
        <source>alarm stops early</source>
        <translation type="unfinished">alarm berhenti dini</translation>
    </message>
    <message>
        <source>does not latch</source>
        <translation type="unfinished">tidak terkancing</translation>
    </message>
    <message>
        <source>no release from one side</source>
        <translation type="unfinished">tidak ada pelepasan dari satu sisi</translation>
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
        <translation type="unfinished">celah di bawah daun pintu</translation>
    </message>
    <message>
        <source>wrong plate for the boundary</source>
        <translation type="unfinished">pelat salah untuk pembatas</translation>
    </message>
    <message>
        <source>hose port stuck</source>
        <translation type="unfinished">lubang selang kebakaran macet</translation>
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
        <source>too close to a limit to call</source>
        <translation type="unfinished">terlalu dekat ke batas untuk dipastikan</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">membuka lagi terlalu jauh</translation>
    </message>
    <message>
        <source>leaves in the wrong order</source>
        <translation type="unfinished">urutan daun pintu salah</translation>
    </message>
    <message>
        <source>magnet releases late</source>
        <translation type="unfinished">pelepasan magnet terlambat</translation>
    </message>
    <message>
        <source>seal painted over</source>
        <translation type="unfinished">paking tertutup cat</translation>
    </message>
    <message>
        <source>false indication</source>
        <translation type="unfinished">indikasi palsu</translation>
    </message>
    <message>
        <source>reported but absent</source>
        <translation type="unfinished">dilaporkan tetapi tidak ada</translation>
    </message>
</context>
<context>
    <name>FigureSheetWords</name>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Rincian ketidakpastian</translation>
    </message>
    <message>
        <source>By the law of propagation (JCGM 100:2008). Until your timing drill is done, published reaction times apply: Am. J. Phys. 87, 110 (2019).</source>
        <translation type="unfinished">Menurut hukum perambatan (JCGM 100:2008). Sebelum uji reaksi Anda dilakukan, berlaku waktu reaksi terbitan: Am. J. Phys. 87, 110 (2019).</translation>
    </message>
    <message>
        <source>Door %1: timing history</source>
        <translation type="unfinished">Pintu %1: riwayat waktu</translation>
    </message>
    <message>
        <source>No time has been taken with the ship upright.</source>
        <translation type="unfinished">Belum ada waktu yang diambil saat kapal tegak.</translation>
    </message>
    <message>
        <source>Each point is the mean of one walkdown&apos;s upright runs, with its U. The next is expected within the shaded band (95 %). This says nothing about sudden failure.</source>
        <translation type="unfinished">Setiap titik adalah rata-rata uji saat kapal tegak pada satu inspeksi, dengan U-nya. Titik berikut diperkirakan jatuh di dalam pita arsiran (95 %). Ini tidak mengatakan apa pun tentang kegagalan mendadak.</translation>
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
        <source>could not be tested: %1</source>
        <translation type="unfinished">tidak dapat diuji: %1</translation>
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
        <source>%1; no value printed: ask the Administration</source>
        <translation type="unfinished">%1; tidak ada nilai tercetak: tanyakan kepada Administrasi</translation>
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
        <source>decided by the inspector: %1</source>
        <translation type="unfinished">diputuskan inspektur: %1</translation>
    </message>
    <message>
        <source>needs a run released from the control station</source>
        <translation type="unfinished">perlu uji dengan penahan dilepas dari stasiun kontrol</translation>
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
        <source>%1, edition %2</source>
        <translation type="unfinished">%1, edisi %2</translation>
    </message>
    <message>
        <source>advice, never a reason to fail a door</source>
        <translation type="unfinished">saran, tidak pernah menjadi alasan menyatakan pintu gagal</translation>
    </message>
    <message>
        <source>one more run; three at most, then you decide</source>
        <translation type="unfinished">satu uji lagi; maksimal tiga, lalu Anda putuskan</translation>
    </message>
    <message>
        <source>a run released from the control station</source>
        <translation type="unfinished">uji dengan penahan dilepas dari stasiun kontrol</translation>
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
        <source>%1 unsatisfactory</source>
        <translation type="unfinished">%1 tidak memuaskan</translation>
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
        <source>on the limit</source>
        <translation type="unfinished">tepat pada batas</translation>
    </message>
    <message>
        <source>another run</source>
        <translation type="unfinished">satu uji lagi</translation>
    </message>
    <message>
        <source>does not apply to this door</source>
        <translation type="unfinished">tidak berlaku bagi pintu ini</translation>
    </message>
    <message>
        <source>does not apply: see the answer to “%1”</source>
        <translation type="unfinished">tidak berlaku: lihat jawaban untuk “%1”</translation>
    </message>
    <message>
        <source>does not apply to this door (%1): what is recorded here does not count</source>
        <translation type="unfinished">tidak berlaku bagi pintu ini (%1): yang tercatat di sini tidak dihitung</translation>
    </message>
    <message>
        <source>fails, but the text leaves it open; you decide: %1</source>
        <translation type="unfinished">gagal, tetapi teks membiarkannya terbuka; Anda putuskan: %1</translation>
    </message>
    <message>
        <source>not tested on this walkdown: %1</source>
        <translation type="unfinished">tidak diuji pada inspeksi ini: %1</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">belum diuji</translation>
    </message>
    <message>
        <source>one side still to be tested</source>
        <translation type="unfinished">satu sisi masih harus diuji</translation>
    </message>
    <message>
        <source>checked: met</source>
        <translation type="unfinished">diperiksa: terpenuhi</translation>
    </message>
    <message>
        <source>checked: not met</source>
        <translation type="unfinished">diperiksa: tidak terpenuhi</translation>
    </message>
    <message>
        <source>answered n/a for this door</source>
        <translation type="unfinished">dijawab t/b untuk pintu ini</translation>
    </message>
    <message>
        <source>checked: another kind of door</source>
        <translation type="unfinished">diperiksa: jenis pintu lain</translation>
    </message>
    <message>
        <source>too close to the limit to call: time again</source>
        <translation type="unfinished">terlalu dekat ke batas untuk dipastikan: ukur ulang waktunya</translation>
    </message>
    <message>
        <source>closes unevenly: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">menutup tidak merata: %1 uji tidak sepakat; hasil terburuk yang dipakai</translation>
    </message>
    <message>
        <source>the alarm varies: %1 runs do not agree; the worst counts</source>
        <translation type="unfinished">alarm berubah-ubah: %1 uji tidak sepakat; hasil terburuk yang dipakai</translation>
    </message>
    <message>
        <source>one half of the travel is outside the limits: is it roughly uniform?</source>
        <translation type="unfinished">separuh lintasan di luar batas: apakah kira-kira seragam?</translation>
    </message>
    <message>
        <source>heel %1 degrees: the figure is advice only; time it again upright</source>
        <translation type="unfinished">kemiringan %1 derajat: angka ini hanya saran; ukur ulang waktunya saat kapal tegak</translation>
    </message>
    <message>
        <source>class too low for its boundary: %1</source>
        <translation type="unfinished">kelas terlalu rendah untuk pembatasnya: %1</translation>
    </message>
    <message>
        <source>class too low by tables not shown to apply to this ship: %1; ask for the approved drawing</source>
        <translation type="unfinished">kelas terlalu rendah menurut tabel yang tidak terbukti berlaku bagi kapal ini: %1; minta gambar yang disetujui</translation>
    </message>
    <message>
        <source>class too low for its boundary, unless oil fuel tanks are below: %1</source>
        <translation type="unfinished">kelas terlalu rendah untuk pembatasnya, kecuali ada tangki bahan bakar minyak di bawahnya: %1</translation>
    </message>
    <message>
        <source>%1; the register does not give the boundary&apos;s class: see the approved fire plan or ask the Administration</source>
        <translation type="unfinished">%1; register tidak memberi kelas pembatas: lihat denah pengendalian kebakaran yang disetujui atau tanyakan kepada Administrasi</translation>
    </message>
    <message>
        <source>%1; no fire class is required here</source>
        <translation type="unfinished">%1; di sini tidak disyaratkan kelas kebakaran</translation>
    </message>
    <message>
        <source>common practice is not met: you decide whether that is acceptable</source>
        <translation type="unfinished">praktik umum tidak terpenuhi: Anda putuskan apakah itu dapat diterima</translation>
    </message>
    <message>
        <source>run completed, but not every event was marked</source>
        <translation type="unfinished">uji selesai, tetapi tidak semua kejadian ditandai</translation>
    </message>
    <message>
        <source>run started, but none completed</source>
        <translation type="unfinished">uji dimulai, tetapi tidak satu pun selesai</translation>
    </message>
    <message>
        <source>the approved plan has no A class where the rule requires one: %1</source>
        <translation type="unfinished">denah yang disetujui tidak punya kelas A padahal aturan mensyaratkannya: %1</translation>
    </message>
    <message>
        <source>released from the control station, but no alarm was marked</source>
        <translation type="unfinished">penahan dilepas dari stasiun kontrol, tetapi alarm tidak ditandai</translation>
    </message>
    <message>
        <source>the clear opening of this door is not in the register</source>
        <translation type="unfinished">bukaan bersih pintu ini tidak ada di register</translation>
    </message>
    <message>
        <source>checked against the text</source>
        <translation type="unfinished">dicocokkan dengan teks</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation type="unfinished">praktik umum, tanpa sumber terbitan</translation>
    </message>
    <message>
        <source>rectify it, then test it again</source>
        <translation type="unfinished">perbaiki, lalu uji lagi</translation>
    </message>
    <message>
        <source>your decision, with a reason</source>
        <translation type="unfinished">keputusan Anda, beserta alasannya</translation>
    </message>
    <message>
        <source>test it from the other side</source>
        <translation type="unfinished">uji dari sisi lain</translation>
    </message>
    <message>
        <source>record whether the alarm sounded, or run it again</source>
        <translation type="unfinished">catat apakah alarm berbunyi, atau ulangi uji</translation>
    </message>
    <message>
        <source>test it at the door</source>
        <translation type="unfinished">uji di pintu</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 belum pasti</translation>
    </message>
    <message>
        <source>no checks</source>
        <translation type="unfinished">tanpa pemeriksaan</translation>
    </message>
    <message>
        <source>critical: fire or smoke passes, or a person can be hurt</source>
        <translation type="unfinished">kritis: api atau asap dapat lewat, atau orang dapat cedera</translation>
    </message>
    <message>
        <source>serious: the door does not do what is required</source>
        <translation type="unfinished">berat: pintu tidak melakukan apa yang disyaratkan</translation>
    </message>
    <message>
        <source>%1; the answer was recorded before this run</source>
        <translation type="unfinished">%1; jawaban dicatat sebelum uji ini</translation>
    </message>
    <message>
        <source>minor: maintenance and marking</source>
        <translation type="unfinished">ringan: pemeliharaan dan penandaan</translation>
    </message>
    <message>
        <source>%1: advice only</source>
        <translation type="unfinished">%1: hanya saran</translation>
    </message>
    <message>
        <source>%1: you decide</source>
        <translation type="unfinished">%1: Anda putuskan</translation>
    </message>
    <message>
        <source>fails, but the text is not shown to apply here (%1)</source>
        <translation type="unfinished">gagal, tetapi teks tidak terbukti berlaku di sini (%1)</translation>
    </message>
    <message>
        <source>not met, but this is advice only: %1</source>
        <translation type="unfinished">tidak terpenuhi, tetapi ini hanya saran: %1</translation>
    </message>
    <message>
        <source>one side was answered n/a, but the text requires both</source>
        <translation type="unfinished">satu sisi dijawab t/b, tetapi teks mensyaratkan keduanya</translation>
    </message>
    <message>
        <source>beyond the limit by less than one step of the instrument (%1)</source>
        <translation type="unfinished">melewati batas kurang dari satu langkah skala alat ukur (%1)</translation>
    </message>
    <message>
        <source>between the two figures printed in the text (%1)</source>
        <translation type="unfinished">di antara kedua angka yang tercetak dalam teks (%1)</translation>
    </message>
    <message>
        <source>outside a band that the text calls approximate, %1</source>
        <translation type="unfinished">di luar rentang yang oleh teks disebut kira-kira, %1</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs</source>
        <translation type="unfinished">masih terlalu dekat ke batas setelah %1 uji</translation>
    </message>
    <message>
        <source>closing force below what the leaf&apos;s weight alone needs (%1)</source>
        <translation type="unfinished">gaya menutup di bawah yang diperlukan melawan berat daun pintu saja (%1)</translation>
    </message>
    <message>
        <source>shut faster than a leaf can move: marked by mistake? Make another run</source>
        <translation type="unfinished">tertutup lebih cepat daripada daun pintu mana pun dapat bergerak: salah menandai? Lakukan uji lagi</translation>
    </message>
    <message>
        <source>still too close to a limit after %1 runs; the text says approximate</source>
        <translation type="unfinished">masih terlalu dekat ke batas setelah %1 uji; teks menyebutnya kira-kira</translation>
    </message>
    <message>
        <source>answered n/a, but the text has no such case</source>
        <translation type="unfinished">dijawab t/b, tetapi teks tidak mengenal hal itu</translation>
    </message>
    <message>
        <source>answered n/a, but the register does not show that case</source>
        <translation type="unfinished">dijawab t/b, tetapi register tidak menunjukkan hal itu</translation>
    </message>
    <message>
        <source>%1; the earlier decision (satisfactory: %2) was made before a newer entry</source>
        <translation type="unfinished">%1; keputusan sebelumnya (memuaskan: %2) dibuat sebelum entri yang lebih baru</translation>
    </message>
    <message>
        <source>the alarm did not come on until the door was shut</source>
        <translation type="unfinished">alarm baru menyala setelah pintu tertutup</translation>
    </message>
    <message>
        <source>%1; a newer entry has been made since: it stays unsatisfactory until you decide again</source>
        <translation type="unfinished">%1; sejak itu ada entri yang lebih baru: tetap tidak memuaskan sampai Anda memutuskan lagi</translation>
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
        <source>%1 · 1 item</source>
        <translation type="unfinished">%1 · 1 temuan</translation>
    </message>
    <message>
        <source>%1 · %2 items</source>
        <translation type="unfinished">%1 · %2 temuan</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished">terlambat</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">tanpa tanggal</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">belum ada orangnya</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>first mark: the leaf begins to move</source>
        <translation type="unfinished">tanda pertama: daun pintu mulai bergerak</translation>
    </message>
    <message>
        <source>last mark: fully shut</source>
        <translation type="unfinished">tanda terakhir: tertutup penuh</translation>
    </message>
    <message>
        <source>sticks, then slams</source>
        <translation type="unfinished">tersendat, lalu membanting</translation>
    </message>
    <message>
        <source>one leaf home, then the one with the lip</source>
        <translation type="unfinished">satu daun pintu tertutup, lalu yang berbibir</translation>
    </message>
    <message>
        <source>one leaf alone shuts and latches</source>
        <translation type="unfinished">satu daun pintu sendiri menutup dan terkancing</translation>
    </message>
    <message>
        <source>and so does the other</source>
        <translation type="unfinished">dan yang lain juga</translation>
    </message>
    <message>
        <source>a hook holds it open</source>
        <translation type="unfinished">kait menahannya terbuka</translation>
    </message>
    <message>
        <source>one side does nothing</source>
        <translation type="unfinished">satu sisi tidak berfungsi</translation>
    </message>
    <message>
        <source>it stays open</source>
        <translation type="unfinished">tetap terbuka</translation>
    </message>
    <message>
        <source>goes back: the door is held again</source>
        <translation type="unfinished">kembali sendiri: pintu ditahan lagi</translation>
    </message>
    <message>
        <source>first the alarm, then the leaf moves</source>
        <translation type="unfinished">alarm dahulu, lalu daun pintu bergerak</translation>
    </message>
    <message>
        <source>the leaf moves as the alarm begins</source>
        <translation type="unfinished">daun pintu bergerak saat alarm mulai</translation>
    </message>
    <message>
        <source>the alarm lasts until the leaf is home</source>
        <translation type="unfinished">alarm bertahan sampai daun pintu tertutup rapat</translation>
    </message>
    <message>
        <source>the alarm stops while the leaf moves</source>
        <translation type="unfinished">alarm berhenti selagi daun pintu bergerak</translation>
    </message>
    <message>
        <source>painted over</source>
        <translation type="unfinished">tertutup cat</translation>
    </message>
    <message>
        <source>the gap over the leaf is even</source>
        <translation type="unfinished">celah di atas daun pintu rata</translation>
    </message>
    <message>
        <source>the bolt is home in its strike</source>
        <translation type="unfinished">lidah masuk penuh ke pelat kuncinya</translation>
    </message>
    <message>
        <source>from the edge of the leaf to the tip of the bolt</source>
        <translation type="unfinished">dari tepi daun pintu ke ujung lidah</translation>
    </message>
    <message>
        <source>a feeler between the two leaves</source>
        <translation type="unfinished">kaliber celah di antara kedua daun pintu</translation>
    </message>
    <message>
        <source>double-swing door: top and sides</source>
        <translation type="unfinished">pintu ayun dua arah: atas dan sisi</translation>
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
        <translation type="unfinished">pelapis lantai menerus di bawah daun pintu</translation>
    </message>
    <message>
        <source>a wide gap: read the rule at the leaf&apos;s foot</source>
        <translation type="unfinished">celah lebar: baca mistar di kaki daun pintu</translation>
    </message>
    <message>
        <source>litter on the rail</source>
        <translation type="unfinished">sampah di rel</translation>
    </message>
    <message>
        <source>only its own hold-back holds it</source>
        <translation type="unfinished">hanya alat penahannya sendiri yang menahan</translation>
    </message>
    <message>
        <source>a wedge under the leaf</source>
        <translation type="unfinished">ganjal di bawah daun pintu</translation>
    </message>
    <message>
        <source>a hook beside it, an eye in the leaf</source>
        <translation type="unfinished">kait di sampingnya, mata kait di daun pintu</translation>
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
        <source>let go, stand clear: it shuts again</source>
        <translation type="unfinished">lepaskan, menjauhlah: pintu menutup lagi</translation>
    </message>
    <message>
        <source>hooked on the latch, pulled until it lets go</source>
        <translation type="unfinished">dikaitkan di kancing, ditarik sampai terlepas</translation>
    </message>
    <message>
        <source>at the free edge, square to the leaf, nearly shut</source>
        <translation type="unfinished">di tepi bebas, tegak lurus daun pintu, hampir tertutup</translation>
    </message>
    <message>
        <source>the angle between plumb line and ship</source>
        <translation type="unfinished">sudut antara unting-unting dan kapal</translation>
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
        <source>Closing force at the edge, by spring gauge</source>
        <translation type="unfinished">Gaya menutup di tepi, dengan neraca pegas</translation>
    </message>
    <message>
        <source>Ship&apos;s heel now</source>
        <translation type="unfinished">Kemiringan kapal kini</translation>
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
        <source>a grille in the leaf</source>
        <translation type="unfinished">ada kisi di daun pintu</translation>
    </message>
    <message>
        <source>a grille: only the openings between the bars</source>
        <translation type="unfinished">kisi: hanya bukaan di antara bilah</translation>
    </message>
    <message>
        <source>cracked, or without its wire</source>
        <translation type="unfinished">retak, atau tanpa kawatnya</translation>
    </message>
    <message>
        <source>one leaf, from hinge side to free edge</source>
        <translation type="unfinished">satu daun pintu, dari sisi engsel ke tepi bebas</translation>
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
        <source>answers on the agreed channel</source>
        <translation type="unfinished">menjawab di kanal yang disepakati</translation>
    </message>
    <message>
        <source>a hand at the edge, a box in the path</source>
        <translation type="unfinished">tangan di tepi, kotak di lintasan</translation>
    </message>
    <message>
        <source>one fails, the others work</source>
        <translation type="unfinished">satu gagal, yang lain bekerja</translation>
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
    <message>
        <source>shuts fully from any position</source>
        <translation type="unfinished">menutup penuh dari posisi mana pun</translation>
    </message>
    <message>
        <source>left ajar</source>
        <translation type="unfinished">tetap sedikit terbuka</translation>
    </message>
    <message>
        <source>even speed from start to end</source>
        <translation type="unfinished">kecepatan rata dari awal sampai akhir</translation>
    </message>
    <message>
        <source>lip home first: the other leaf stays out</source>
        <translation type="unfinished">yang berbibir tertutup dahulu: daun pintu lain tertinggal di luar</translation>
    </message>
    <message>
        <source>shuts when let go</source>
        <translation type="unfinished">menutup saat dilepas</translation>
    </message>
    <message>
        <source>the switch on each side releases it</source>
        <translation type="unfinished">sakelar di setiap sisi melepas penahannya</translation>
    </message>
    <message>
        <source>stays where it was put</source>
        <translation type="unfinished">tetap di posisi yang dipilih</translation>
    </message>
    <message>
        <source>ajar, and the panel says open</source>
        <translation type="unfinished">sedikit terbuka, dan panel menunjukkan terbuka</translation>
    </message>
    <message>
        <source>ajar, but the panel says shut</source>
        <translation type="unfinished">sedikit terbuka, tetapi panel menunjukkan tertutup</translation>
    </message>
    <message>
        <source>the strip is flush and unbroken</source>
        <translation type="unfinished">strip rata dan tidak terputus</translation>
    </message>
    <message>
        <source>hangs low and rubs on the sill</source>
        <translation type="unfinished">menggantung rendah dan bergesek di ambang</translation>
    </message>
    <message>
        <source>dry, arm secure at both ends</source>
        <translation type="unfinished">kering, lengan kukuh di kedua ujung</translation>
    </message>
    <message>
        <source>leaks oil, arm is off</source>
        <translation type="unfinished">bocor oli, lengan terlepas</translation>
    </message>
    <message>
        <source>the bolt falls short: a push opens it</source>
        <translation type="unfinished">lidah tidak sampai: didorong, pintu terbuka</translation>
    </message>
    <message>
        <source>overlaps the stop well</source>
        <translation type="unfinished">menumpang cukup dalam pada sponing</translation>
    </message>
    <message>
        <source>narrow at its widest point</source>
        <translation type="unfinished">sempit di tempat terlebarnya</translation>
    </message>
    <message>
        <source>clear deck along the whole path</source>
        <translation type="unfinished">geladak bersih di sepanjang lintasan</translation>
    </message>
    <message>
        <source>stores in the path of the leaf</source>
        <translation type="unfinished">barang di lintasan daun pintu</translation>
    </message>
    <message>
        <source>clear to the end</source>
        <translation type="unfinished">bersih sampai ujung</translation>
    </message>
    <message>
        <source>clean, every roller on the rail</source>
        <translation type="unfinished">bersih, setiap rol di atas rel</translation>
    </message>
    <message>
        <source>open it while it is still released</source>
        <translation type="unfinished">bukalah selagi penahannya masih dilepas</translation>
    </message>
    <message>
        <source>stops at the soft block and re-opens</source>
        <translation type="unfinished">berhenti di balok lunak dan membuka lagi</translation>
    </message>
    <message>
        <source>keeps pushing: a hand would be crushed</source>
        <translation type="unfinished">terus mendorong: tangan akan terjepit</translation>
    </message>
    <message>
        <source>re-opens a little from the block</source>
        <translation type="unfinished">membuka sedikit menjauhi balok</translation>
    </message>
    <message>
        <source>re-opens too far</source>
        <translation type="unfinished">membuka lagi terlalu jauh</translation>
    </message>
    <message>
        <source>hooked at the free edge, until it first moves</source>
        <translation type="unfinished">dikaitkan di tepi bebas, sampai mulai bergerak</translation>
    </message>
    <message>
        <source>opened to the stair&apos;s width</source>
        <translation type="unfinished">dibuka selebar tangga</translation>
    </message>
    <message>
        <source>Check the whole path first. Operate the switch or handle on that side, then stand clear. Keep hands off edges and out of the pocket.</source>
        <translation type="unfinished">Periksa dahulu seluruh lintasan. Operasikan sakelar atau gagang di sisi itu, lalu menjauhlah. Jangan dekatkan tangan ke tepi pintu, dan jangan masukkan tangan ke rongga.</translation>
    </message>
    <message>
        <source>Open it fully. Check that its path is clear. Let go and stand clear.</source>
        <translation type="unfinished">Buka penuh. Pastikan lintasannya bebas. Lepaskan dan menjauhlah.</translation>
    </message>
    <message>
        <source>Announce which doors will move, and when, over the public address or by word of mouth. Wait until everyone nearby shows that they have heard.</source>
        <translation type="unfinished">Umumkan pintu mana yang akan bergerak, dan kapan, lewat pengeras suara atau secara lisan langsung. Tunggu sampai semua orang di dekatnya menunjukkan bahwa mereka mendengar.</translation>
    </message>
    <message>
        <source>Keep people out of every opening and away from every leaf. Keep each child with an adult. At every door, turn people back until the door has stopped.</source>
        <translation type="unfinished">Jauhkan orang dari setiap bukaan dan setiap daun pintu. Setiap anak harus bersama orang dewasa. Di setiap pintu, suruh orang berbalik sampai pintu berhenti.</translation>
    </message>
    <message>
        <source>Post a lookout on each side of every door that will move. Each must see the leaf and the approach, and be able to give the stop word. Never use one lookout for both sides.</source>
        <translation type="unfinished">Tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Masing-masing harus dapat melihat daun pintu dan jalan menuju pintu, serta dapat mengucapkan kata stop. Jangan pernah memakai satu petugas jaga untuk dua sisi.</translation>
    </message>
    <message>
        <source>Call on the agreed channel and wait for the answer. The person who answers must be at the release, with no other task.</source>
        <translation type="unfinished">Panggil di kanal yang disepakati dan tunggu jawabannya. Orang yang menjawab harus berada di tempat pelepasan, tanpa tugas lain.</translation>
    </message>
    <message>
        <source>Say which word is the start word and which is the stop word. Hear both read back. Anyone may give the stop word.</source>
        <translation type="unfinished">Sebutkan mana kata mulai dan mana kata stop. Dengarkan keduanya dibacakan ulang. Siapa pun boleh mengucapkan kata stop.</translation>
    </message>
    <message>
        <source>Hook the gauge at the free edge, square to the leaf, with the leaf a hand&apos;s breadth from shut. Hold it still and read the pull. Keep fingers off the edge. Mass and force show what an inclination would do.</source>
        <translation type="unfinished">Kaitkan neraca di tepi bebas, tegak lurus daun pintu, dengan daun pintu selebar telapak tangan dari tertutup. Tahan diam dan baca tarikannya. Jauhkan jari dari tepi. Massa dan gaya menunjukkan apa akibat suatu kemiringan.</translation>
    </message>
    <message>
        <source>Read the clinometer on the bridge, or hold a plumb line beside an upright frame. Times count with the ship upright: over 1 degree of heel they are advice only.</source>
        <translation type="unfinished">Baca klinometer di anjungan, atau pegang unting-unting di samping kusen yang tegak. Waktu dihitung bila kapal tegak: pada kemiringan (heel) di atas 1 derajat, waktu hanya saran.</translation>
    </message>
    <message>
        <source>Common practice. Local rules and the company&apos;s own procedures take precedence.</source>
        <translation type="unfinished">Praktik umum. Aturan setempat dan prosedur perusahaan sendiri didahulukan.</translation>
    </message>
    <message>
        <source>plate class at or above the boundary&apos;s</source>
        <translation type="unfinished">kelas pelat sama atau di atas kelas pembatas</translation>
    </message>
    <message>
        <source>plate class below the boundary&apos;s</source>
        <translation type="unfinished">kelas pelat di bawah kelas pembatas</translation>
    </message>
    <message>
        <source>legible, and agrees with the register</source>
        <translation type="unfinished">terbaca, dan cocok dengan register</translation>
    </message>
    <message>
        <source>no opening in the leaf</source>
        <translation type="unfinished">tidak ada lubang di daun pintu</translation>
    </message>
    <message>
        <source>an undercut: width by height</source>
        <translation type="unfinished">celah bawah: lebar kali tinggi</translation>
    </message>
    <message>
        <source>intact, with its wire: height by width</source>
        <translation type="unfinished">utuh, dengan kawatnya: tinggi kali lebar</translation>
    </message>
    <message>
        <source>sound all over</source>
        <translation type="unfinished">utuh seluruhnya</translation>
    </message>
    <message>
        <source>everyone nearby has heard it</source>
        <translation type="unfinished">semua orang di dekatnya sudah mendengar</translation>
    </message>
    <message>
        <source>no one in the path or near it</source>
        <translation type="unfinished">tidak ada orang di lintasan atau di dekatnya</translation>
    </message>
    <message>
        <source>someone in the opening</source>
        <translation type="unfinished">ada orang di bukaan</translation>
    </message>
    <message>
        <source>a lookout on each side of every door</source>
        <translation type="unfinished">petugas jaga di setiap sisi dari setiap pintu</translation>
    </message>
    <message>
        <source>no one sees the far side</source>
        <translation type="unfinished">tidak ada yang melihat sisi seberang</translation>
    </message>
    <message>
        <source>each word given, then read back</source>
        <translation type="unfinished">setiap kata diucapkan, lalu dibacakan ulang</translation>
    </message>
    <message>
        <source>path and pocket are clear</source>
        <translation type="unfinished">lintasan dan rongga bebas</translation>
    </message>
    <message>
        <source>supply cut, door shuts</source>
        <translation type="unfinished">pasokan diputus, pintu menutup</translation>
    </message>
    <message>
        <source>supply cut, door stays open</source>
        <translation type="unfinished">pasokan diputus, pintu tetap terbuka</translation>
    </message>
    <message>
        <source>hold-back fails, door is driven shut</source>
        <translation type="unfinished">alat penahan gagal, pintu digerakkan menutup</translation>
    </message>
    <message>
        <source>hold-back fails, door stays open</source>
        <translation type="unfinished">alat penahan gagal, pintu tetap terbuka</translation>
    </message>
    <message>
        <source>one fails, and none works</source>
        <translation type="unfinished">satu gagal, dan semuanya tidak bekerja</translation>
    </message>
    <message>
        <source>released from the control station, it closes</source>
        <translation type="unfinished">penahannya dilepas dari stasiun kontrol, pintu menutup</translation>
    </message>
    <message>
        <source>a hold-back that the control station releases</source>
        <translation type="unfinished">alat penahan yang dapat dilepas stasiun kontrol</translation>
    </message>
    <message>
        <source>Confirm the cautions first. The control station releases the doors on the start word. Let no one through a moving door. Anyone may give the stop word.</source>
        <translation type="unfinished">Konfirmasikan dahulu syarat aman. Stasiun kontrol melepas penahan pintu pada kata mulai. Dilarang membiarkan siapa pun melewati pintu yang sedang bergerak. Siapa pun boleh mengucapkan kata stop.</translation>
    </message>
    <message>
        <source>At every door, look along the whole path, and into the pocket with a torch. Keep hands, feet, hoses and cables off edges and meeting stiles.</source>
        <translation type="unfinished">Di setiap pintu, lihat seluruh lintasan, dan ke dalam rongga dengan senter. Jauhkan tangan, kaki, selang, dan kabel dari tepi dan dari tepi pertemuan kedua daun pintu.</translation>
    </message>
    <message>
        <source>Hold the block low in the path, by the end away from the leaf. Stand out of the path yourself. Mark when the leaf touches and when it stops, then measure how far it re-opened. If it keeps pushing, give the stop word.</source>
        <translation type="unfinished">Pegang balok rendah di lintasan, pada ujung yang jauh dari daun pintu. Anda sendiri berdiri di luar lintasan. Tandai saat daun pintu menyentuh dan saat berhenti, lalu ukur seberapa jauh pintu membuka lagi. Jika terus mendorong, ucapkan kata stop.</translation>
    </message>
    <message>
        <source>opened and shut ten times from its accumulator</source>
        <translation type="unfinished">dibuka dan ditutup sepuluh kali dari akumulatornya</translation>
    </message>
</context>
<context>
    <name>InclinationWords</name>
    <message>
        <source>The leaf&apos;s mass is not in the register: the closing force needed at %1 degrees cannot be calculated.</source>
        <translation type="unfinished">Massa daun pintu tidak ada di register: gaya menutup yang diperlukan pada %1 derajat tidak dapat dihitung.</translation>
    </message>
    <message>
        <source>At %1 degrees the leaf&apos;s weight alone pulls with up to %2 at its edge. Measure the closer&apos;s force there with a spring gauge.</source>
        <translation type="unfinished">Pada %1 derajat, berat daun pintu saja menarik hingga %2 di tepinya. Ukur di sana gaya penutup pintu otomatis dengan neraca pegas.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: too close for the calculation to tell.</source>
        <translation type="unfinished">Penutup pintu otomatis memberi %1; pada %2 derajat, berat daun pintu saja menarik hingga %3: selisihnya terlalu kecil untuk dipastikan dengan perhitungan.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could not close the door.</source>
        <translation type="unfinished">Penutup pintu otomatis memberi %1; pada %2 derajat, berat daun pintu saja menarik hingga %3: penutup pintu otomatis tidak akan dapat menutup pintu.</translation>
    </message>
    <message>
        <source>The closer gives %1; at %2 degrees the leaf&apos;s weight alone pulls with up to %3: the closer could close the door if hinges, seals and latch take less than the rest. Calculated, not tested: this gives no verdict.</source>
        <translation type="unfinished">Penutup pintu otomatis memberi %1; pada %2 derajat, berat daun pintu saja menarik hingga %3: penutup pintu otomatis akan dapat menutup pintu jika engsel, paking, dan kancing memerlukan kurang dari sisanya. Dihitung, tidak diuji: ini tidak memberi hasil.</translation>
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
        <source>closed</source>
        <translation type="unfinished">ditutup</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation type="unfinished">ditarik</translation>
    </message>
    <message>
        <source>serious</source>
        <translation type="unfinished">berat</translation>
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
        <source>overdue since %1</source>
        <translation type="unfinished">terlambat sejak %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished">tenggat %1</translation>
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
        <source>awaiting retest</source>
        <translation type="unfinished">menunggu uji ulang</translation>
    </message>
    <message>
        <source>critical</source>
        <translation type="unfinished">kritis</translation>
    </message>
    <message>
        <source>no date set</source>
        <translation type="unfinished">tanpa tanggal</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">belum ada orangnya</translation>
    </message>
    <message>
        <source>passed, but tested only by whoever rectified it: someone else must test it</source>
        <translation type="unfinished">lulus, tetapi hanya diuji oleh orang yang melakukan perbaikan: orang lain harus mengujinya</translation>
    </message>
    <message>
        <source>in order on a later walkdown, but no rectification is recorded</source>
        <translation type="unfinished">baik pada inspeksi berikutnya, tetapi perbaikan tidak tercatat</translation>
    </message>
    <message>
        <source>zones %1 act as one, %2 long%3</source>
        <translation type="unfinished">zona %1 menjadi satu, panjang %2%3</translation>
    </message>
</context>
<context>
    <name>LanguageWords</name>
    <message>
        <source>English where there is no translation</source>
        <translation type="unfinished">Bahasa Inggris bila belum diterjemahkan</translation>
    </message>
    <message>
        <source>As set on this device</source>
        <translation type="unfinished">Seperti diatur di perangkat ini</translation>
    </message>
    <message>
        <source>the original text</source>
        <translation type="unfinished">teks asli</translation>
    </message>
    <message>
        <source>translation checked by a native speaker in the trade</source>
        <translation type="unfinished">terjemahan diperiksa penutur asli di bidang ini</translation>
    </message>
    <message>
        <source>machine translation, not yet checked by a native speaker in the trade</source>
        <translation type="unfinished">terjemahan mesin, belum diperiksa penutur asli di bidang ini</translation>
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
        <translation type="unfinished">penutup pintu otomatis bocor oli</translation>
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
        <translation type="unfinished">daun pintu bergesek di ambang</translation>
    </message>
    <message>
        <source>litter in the pocket</source>
        <translation type="unfinished">sampah di rongga</translation>
    </message>
    <message>
        <source>mat under the leaf</source>
        <translation type="unfinished">keset di bawah daun pintu</translation>
    </message>
    <message>
        <source>switch cover broken</source>
        <translation type="unfinished">tutup sakelar pecah</translation>
    </message>
    <message>
        <source>sign screwed to the leaf</source>
        <translation type="unfinished">papan disekrup ke daun pintu</translation>
    </message>
    <message>
        <source>spare part ordered</source>
        <translation type="unfinished">suku cadang dipesan</translation>
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
        <translation type="unfinished">stasiun kontrol tidak dijaga</translation>
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
        <source>agreed with the class surveyor</source>
        <translation type="unfinished">disepakati dengan surveyor klas</translation>
    </message>
    <message>
        <source>as built and accepted before</source>
        <translation type="unfinished">sesuai bangunan dan dulu diterima</translation>
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
        <translation type="unfinished">penutup pintu otomatis</translation>
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
        <translation type="unfinished">daun pintu tertahan</translation>
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
        <source>local release only</source>
        <translation type="unfinished">hanya pelepasan setempat</translation>
    </message>
    <message>
        <source>closer adjusted</source>
        <translation type="unfinished">penutup pintu otomatis disetel</translation>
    </message>
    <message>
        <source>closer replaced</source>
        <translation type="unfinished">penutup pintu otomatis diganti</translation>
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
        <source>plate replaced</source>
        <translation type="unfinished">pelat diganti</translation>
    </message>
    <message>
        <source>leaf replaced</source>
        <translation type="unfinished">daun pintu diganti</translation>
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
        <source>the approved plan was changed</source>
        <translation type="unfinished">denah yang disetujui diubah</translation>
    </message>
    <message>
        <source>the Administration accepts it</source>
        <translation type="unfinished">Administrasi menerimanya</translation>
    </message>
    <message>
        <source>stopped, no reason given</source>
        <translation type="unfinished">dihentikan, tanpa alasan</translation>
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
        <source>withdrawn by mistake</source>
        <translation type="unfinished">ditarik karena keliru</translation>
    </message>
    <message>
        <source>accepted by fingerprint</source>
        <translation type="unfinished">diterima lewat sidik kuncinya</translation>
    </message>
    <message>
        <source>any team member and the control station</source>
        <translation type="unfinished">setiap anggota tim dan stasiun kontrol</translation>
    </message>
    <message>
        <source>rectified on the spot</source>
        <translation type="unfinished">perbaikan langsung di tempat</translation>
    </message>
    <message>
        <source>as per approved drawing</source>
        <translation type="unfinished">sesuai gambar yang disetujui</translation>
    </message>
    <message>
        <source>worn but serviceable</source>
        <translation type="unfinished">aus tetapi masih layak</translation>
    </message>
    <message>
        <source>not safe to leave as is</source>
        <translation type="unfinished">tidak aman bila dibiarkan</translation>
    </message>
    <message>
        <source>lookout left post</source>
        <translation type="unfinished">petugas jaga meninggalkan pos</translation>
    </message>
    <message>
        <source>lookout posted at the door</source>
        <translation type="unfinished">petugas jaga di pintu</translation>
    </message>
    <message>
        <source>zone kept clear of people</source>
        <translation type="unfinished">zona dijaga bebas orang</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation type="unfinished">tidak perlu</translation>
    </message>
    <message>
        <source>wiring repaired</source>
        <translation type="unfinished">kabel diperbaiki</translation>
    </message>
    <message>
        <source>hook or wedge removed</source>
        <translation type="unfinished">kait atau ganjal dilepas</translation>
    </message>
    <message>
        <source>the door was removed</source>
        <translation type="unfinished">pintu sudah dibongkar</translation>
    </message>
    <message>
        <source>checked again together</source>
        <translation type="unfinished">diperiksa lagi bersama</translation>
    </message>
    <message>
        <source>the other was an error</source>
        <translation type="unfinished">yang lain keliru</translation>
    </message>
    <message>
        <source>better light</source>
        <translation type="unfinished">cahaya lebih baik</translation>
    </message>
    <message>
        <source>better instrument</source>
        <translation type="unfinished">alat ukur lebih baik</translation>
    </message>
    <message>
        <source>void, no reason given</source>
        <translation type="unfinished">batal, tanpa alasan</translation>
    </message>
    <message>
        <source>run continued</source>
        <translation type="unfinished">uji dilanjutkan</translation>
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
        <source>Creating the document</source>
        <translation type="unfinished">Membuat dokumen</translation>
    </message>
    <message>
        <source>No document was created. Any earlier one is unchanged.</source>
        <translation type="unfinished">Dokumen tidak dibuat. Yang dahulu, bila ada, tidak berubah.</translation>
    </message>
    <message>
        <source>No document</source>
        <translation type="unfinished">Tanpa dokumen</translation>
    </message>
    <message>
        <source>Document created</source>
        <translation type="unfinished">Dokumen dibuat</translation>
    </message>
    <message>
        <source>The PDF is at %1</source>
        <translation type="unfinished">PDF ada di %1</translation>
    </message>
    <message>
        <source>Open to print</source>
        <translation type="unfinished">Buka untuk mencetak</translation>
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
        <source>%1, random sample of %2 (seed %3)</source>
        <translation type="unfinished">%1, sampel acak %2 (seed %3)</translation>
    </message>
</context>
<context>
    <name>RadioWords</name>
    <message>
        <source>release now</source>
        <translation type="unfinished">lepas sekarang</translation>
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
        <translation type="unfinished">Buka kapal ini</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>Register imported</source>
        <translation type="unfinished">Register diimpor</translation>
    </message>
    <message>
        <source>Saved at %1.</source>
        <translation type="unfinished">Disimpan di %1.</translation>
    </message>
    <message>
        <source>Importing the register</source>
        <translation type="unfinished">Mengimpor register</translation>
    </message>
    <message>
        <source>Nothing was imported. The vessels here are unchanged.</source>
        <translation type="unfinished">Tidak ada yang diimpor. Kapal-kapal di sini tidak berubah.</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">Tidak diimpor: satu kesalahan</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">Tidak diimpor: %1 kesalahan</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>none</source>
        <translation type="unfinished">tidak ada</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <translation type="unfinished">%1, %2 sampai %3</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished">%1 pada %2</translation>
    </message>
    <message>
        <source>Released from the control station without every caution confirmed for that run: %1.</source>
        <translation type="unfinished">Penahan pintu dilepas dari stasiun kontrol padahal belum semua syarat aman dikonfirmasi untuk uji itu: %1.</translation>
    </message>
    <message>
        <source>Each of these must be confirmed before a door is released from the control station:</source>
        <translation type="unfinished">Setiap syarat berikut harus dikonfirmasi sebelum penahan pintu dilepas dari stasiun kontrol:</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished">Syarat aman</translation>
    </message>
    <message>
        <source>No caution was answered in this walkdown.</source>
        <translation type="unfinished">Tidak ada syarat aman yang dijawab dalam inspeksi ini.</translation>
    </message>
    <message>
        <source>Door</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>Answered by</source>
        <translation type="unfinished">Dijawab oleh</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished">Waktu</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation type="unfinished">Dikonfirmasi</translation>
    </message>
    <message>
        <source>Not confirmed</source>
        <translation type="unfinished">Tak dikonfirmasi</translation>
    </message>
    <message>
        <source>Times were taken by hand. Starting and stopping by hand has a standard uncertainty of %1 s and a bias of at most %2 s either way, or %3 s where one end is heard and the other seen. Figures are given with their expanded uncertainty U (k = 2), which covers reaction time, sight of the leaf and the device. These are not laboratory times.</source>
        <translation type="unfinished">Waktu diambil dengan tangan. Memulai dan menghentikan dengan tangan mempunyai ketidakpastian baku %1 s dan bias paling besar %2 s ke arah mana pun, atau %3 s bila satu ujung didengar dan ujung yang lain dilihat. Angka diberikan dengan ketidakpastian diperluas U (k = 2), yang mencakup waktu reaksi, pandangan ke daun pintu, dan perangkat. Ini bukan waktu laboratorium.</translation>
    </message>
    <message>
        <source>Runs timed by a person who had done the timing drill on that tablet: %2 of %1. For these, the person&apos;s own delay and scatter replace the published figures.</source>
        <translation type="unfinished">Uji yang waktunya diukur oleh orang yang sudah melakukan uji reaksi pada tablet itu: %2 dari %1. Untuk uji ini, kelambatan dan sebaran orang itu sendiri menggantikan angka terbitan.</translation>
    </message>
    <message>
        <source>A figure is satisfactory if the probability that it is within its limits is at least %1, and unsatisfactory if that probability is at most %2. In between, the run is timed again or the inspector decides (JCGM 106:2012).</source>
        <translation type="unfinished">Suatu angka memuaskan bila peluang bahwa angka itu di dalam batasnya minimal %1, dan tidak memuaskan bila peluang itu maksimal %2. Di antara keduanya, waktu uji itu diukur ulang atau inspektur yang memutuskan (JCGM 106:2012).</translation>
    </message>
    <message>
        <source>These are not the usual 95 % and 5 %; reason given: %1.</source>
        <translation type="unfinished">Ini bukan 95 % dan 5 % yang lazim; alasan yang diberikan: %1.</translation>
    </message>
    <message>
        <source>A figure read off a rule or gauge is satisfactory at its limit and unsatisfactory one step of the instrument or more beyond it. In between, the inspector decides. Where the text calls its band approximate, the inspector also decides on a closing outside the band but within the margin of that requirement. Steps and margins are the program&apos;s own choice, no source.</source>
        <translation type="unfinished">Angka yang dibaca pada mistar atau alat ukur memuaskan bila tepat pada batasnya, dan tidak memuaskan bila melewatinya sebesar satu langkah skala alat ukur atau lebih. Di antara keduanya, inspektur yang memutuskan. Bila teks menyebut rentangnya kira-kira, inspektur juga memutuskan penutupan yang di luar rentang tetapi masih di dalam kelonggaran persyaratan itu. Langkah skala dan kelonggaran adalah pilihan program sendiri, tanpa sumber.</translation>
    </message>
    <message>
        <source>A released door moves by itself and can crush. Before work on a door, secure it against release. Before it is tested again, warn everyone near it.</source>
        <translation type="unfinished">Pintu bergerak sendiri begitu penahannya dilepas, dan orang dapat terjepit. Sebelum bekerja pada pintu, amankan pintu itu agar penahannya tidak dapat dilepas. Sebelum pintu itu diuji lagi, peringatkan semua orang di dekatnya.</translation>
    </message>
    <message>
        <source>Scope and limits</source>
        <translation type="unfinished">Cakupan dan batasan</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this report; grades are an aid to the inspector&apos;s judgement.</source>
        <translation type="unfinished">Administrasi negara bendera, denah yang disetujui, dan aturan setempat didahulukan atas laporan ini; nilai adalah alat bantu bagi keputusan inspektur.</translation>
    </message>
    <message>
        <source>The rules assume an upright ship: a time taken at more than %1° of heel is advice only.</source>
        <translation type="unfinished">Aturan mengandaikan kapal tegak: waktu yang diambil pada kemiringan (heel) lebih dari %1° hanya saran.</translation>
    </message>
    <message>
        <source>The report covers what was seen at the doors named, at the times given. It says nothing about any other door, check or time.</source>
        <translation type="unfinished">Laporan ini mencakup apa yang terlihat di pintu yang disebut, pada waktu yang tercantum. Laporan ini tidak menyatakan apa pun tentang pintu, pemeriksaan, atau waktu lain.</translation>
    </message>
    <message>
        <source>Catalogue:</source>
        <translation type="unfinished">Katalog:</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Aturan yang didahulukan</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this document; grades are an aid to the judgement of those who sign.</source>
        <translation type="unfinished">Administrasi negara bendera, denah yang disetujui, dan aturan setempat didahulukan atas dokumen ini; nilai adalah alat bantu bagi keputusan para penanda tangan.</translation>
    </message>
    <message>
        <source>At present: %1.</source>
        <translation type="unfinished">Saat ini: %1.</translation>
    </message>
    <message>
        <source>If it fails again: %1.</source>
        <translation type="unfinished">Bila gagal lagi: %1.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished">ya</translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished">tidak</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">tidak ada yang tercatat</translation>
    </message>
    <message>
        <source>%1: %2; %3 overdue.</source>
        <translation type="unfinished">%1: %2; %3 terlambat.</translation>
    </message>
    <message>
        <source>1 open item</source>
        <translation type="unfinished">1 temuan terbuka</translation>
    </message>
    <message>
        <source>%1 open items</source>
        <translation type="unfinished">%1 temuan terbuka</translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished">No.</translation>
    </message>
    <message>
        <source>Door and place</source>
        <translation type="unfinished">Pintu dan letak</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation type="unfinished">Defisiensi</translation>
    </message>
    <message>
        <source>Severity, zones</source>
        <translation type="unfinished">Keparahan, zona</translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished">Kode</translation>
    </message>
    <message>
        <source>Action code</source>
        <translation type="unfinished">Kode tindakan</translation>
    </message>
    <message>
        <source>Ground for detention</source>
        <translation type="unfinished">Dasar penahanan</translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished">Tenggat</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Tindakan sementara</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Penanggung jawab</translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished">Status</translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Daftar defisiensi</translation>
    </message>
    <message>
        <source>The vessel has no open items.</source>
        <translation type="unfinished">Kapal ini tidak punya temuan terbuka.</translation>
    </message>
    <message>
        <source>Code 07105: fire doors and openings in fire-resisting divisions. Action code and ground for detention are as given by port State control, and blank where it gave none.</source>
        <translation type="unfinished">Kode 07105: pintu kebakaran dan bukaan pada divisi tahan api. Kode tindakan dan dasar penahanan adalah seperti yang diberikan Port State Control (PSC), dan kosong bila PSC tidak memberikannya.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished">Tanda tangan</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
    <message>
        <source>deck %1, %2</source>
        <translation type="unfinished">geladak %1, %2</translation>
    </message>
    <message>
        <source>deck %1</source>
        <translation type="unfinished">geladak %1</translation>
    </message>
    <message>
        <source>between zones %1 and %2</source>
        <translation type="unfinished">antara zona %1 dan %2</translation>
    </message>
    <message>
        <source>clear opening %1</source>
        <translation type="unfinished">bukaan bersih %1</translation>
    </message>
    <message>
        <source>not examined as a watertight door</source>
        <translation type="unfinished">tidak diperiksa sebagai pintu kedap air</translation>
    </message>
    <message>
        <source>class on the plate: %1, in the register: %2, required by the boundary: %3</source>
        <translation type="unfinished">kelas pada pelat: %1, di register: %2, disyaratkan pembatas: %3</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Persyaratan</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished">Batas</translation>
    </message>
    <message>
        <source>Measured, U (k = 2)</source>
        <translation type="unfinished">Terukur, U (k = 2)</translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished">Hasil</translation>
    </message>
    <message>
        <source>Untested:</source>
        <translation type="unfinished">Belum diuji:</translation>
    </message>
    <message>
        <source>On an inclined ship:</source>
        <translation type="unfinished">Pada kapal miring:</translation>
    </message>
    <message>
        <source>the whole door</source>
        <translation type="unfinished">seluruh pintu</translation>
    </message>
    <message>
        <source>Could not be tested</source>
        <translation type="unfinished">Tidak dapat diuji</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation type="unfinished">Foto</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation type="unfinished">Defisiensi</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished">Catatan</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation type="unfinished">Uji</translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished">Rincian</translation>
    </message>
    <message>
        <source>and one earlier</source>
        <translation type="unfinished">dan satu sebelumnya</translation>
    </message>
    <message>
        <source>and %1 earlier</source>
        <translation type="unfinished">dan %1 sebelumnya</translation>
    </message>
    <message>
        <source>Closing times</source>
        <translation type="unfinished">Waktu menutup</translation>
    </message>
    <message>
        <source>Closing rates</source>
        <translation type="unfinished">Kecepatan menutup</translation>
    </message>
    <message>
        <source>Not yet timed with the ship upright.</source>
        <translation type="unfinished">Waktunya belum diukur saat kapal tegak.</translation>
    </message>
    <message>
        <source>Limit: %1 (%2). Newest first, with U (k = 2): %3.</source>
        <translation type="unfinished">Batas: %1 (%2). Terbaru dahulu, dengan U (k = 2): %3.</translation>
    </message>
    <message>
        <source>No deficiency has been written up at this door.</source>
        <translation type="unfinished">Belum ada defisiensi yang ditulis di pintu ini.</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation type="unfinished">ditemukan %1</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Found, due</source>
        <translation type="unfinished">Ditemukan, tenggat</translation>
    </message>
    <message>
        <source>and one photograph in the register</source>
        <translation type="unfinished">dan satu foto di register</translation>
    </message>
    <message>
        <source>and %1 photographs in the register</source>
        <translation type="unfinished">dan %1 foto di register</translation>
    </message>
    <message>
        <source>and one more</source>
        <translation type="unfinished">dan satu lagi</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished">dan %1 lagi</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Catatan pintu: %1</translation>
    </message>
    <message>
        <source>%1 in the %2</source>
        <translation type="unfinished">%1 dalam %2</translation>
    </message>
    <message>
        <source>this door is simulated.</source>
        <translation type="unfinished">pintu ini simulasi.</translation>
    </message>
    <message>
        <source>power operated</source>
        <translation type="unfinished">digerakkan mesin</translation>
    </message>
    <message>
        <source>hold-back</source>
        <translation type="unfinished">alat penahan</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished">alarm</translation>
    </message>
    <message>
        <source>re-opens on contact</source>
        <translation type="unfinished">membuka lagi saat kontak</translation>
    </message>
    <message>
        <source>hose port</source>
        <translation type="unfinished">lubang selang kebakaran</translation>
    </message>
    <message>
        <source>escape route</source>
        <translation type="unfinished">jalur evakuasi</translation>
    </message>
    <message>
        <source>watertight: not examined as a watertight door</source>
        <translation type="unfinished">kedap air: tidak diperiksa sebagai pintu kedap air</translation>
    </message>
    <message>
        <source>weathertight</source>
        <translation type="unfinished">kedap cuaca</translation>
    </message>
    <message>
        <source>released with %1</source>
        <translation type="unfinished">grup pelepasan %1</translation>
    </message>
    <message>
        <source>leaf %1 kg</source>
        <translation type="unfinished">daun pintu %1 kg</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation type="unfinished">dipasang %1</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation type="unfinished">buatan %1</translation>
    </message>
    <message>
        <source>Place and kind</source>
        <translation type="unfinished">Letak dan jenis</translation>
    </message>
    <message>
        <source>Features</source>
        <translation type="unfinished">Kelengkapan</translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished">Kelas</translation>
    </message>
    <message>
        <source>register %1, plate %2, required: %3</source>
        <translation type="unfinished">register %1, pelat %2, disyaratkan: %3</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation type="unfinished">Pemeriksaan</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation type="unfinished">Dicatat</translation>
    </message>
    <message>
        <source>and one more, see Details</source>
        <translation type="unfinished">dan satu lagi, lihat Rincian</translation>
    </message>
    <message>
        <source>and %1 more, see Details</source>
        <translation type="unfinished">dan %1 lagi, lihat Rincian</translation>
    </message>
    <message>
        <source>shuts in %1</source>
        <translation type="unfinished">tertutup dalam %1</translation>
    </message>
    <message>
        <source>closes at %1</source>
        <translation type="unfinished">menutup dengan %1</translation>
    </message>
    <message>
        <source>alarm leads by %1</source>
        <translation type="unfinished">alarm lebih dahulu %1</translation>
    </message>
    <message>
        <source>one check untested</source>
        <translation type="unfinished">satu pemeriksaan belum diuji</translation>
    </message>
    <message>
        <source>%1 checks untested</source>
        <translation type="unfinished">%1 pemeriksaan belum diuji</translation>
    </message>
    <message>
        <source>boundary not in the register</source>
        <translation type="unfinished">pembatas tidak ada di register</translation>
    </message>
    <message>
        <source>Deck</source>
        <translation type="unfinished">Geladak</translation>
    </message>
    <message>
        <source>Plate read</source>
        <translation type="unfinished">Pelat terbaca</translation>
    </message>
    <message>
        <source>Register</source>
        <translation type="unfinished">Register</translation>
    </message>
    <message>
        <source>Boundary</source>
        <translation type="unfinished">Pembatas</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished">Hasil</translation>
    </message>
    <message>
        <source>Findings; figures with U (k = 2)</source>
        <translation type="unfinished">Temuan; angka dengan U (k = 2)</translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished">belum dibaca</translation>
    </message>
    <message>
        <source>illegible</source>
        <translation type="unfinished">tak terbaca</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>No door of this walkdown is in the register.</source>
        <translation type="unfinished">Tidak satu pun pintu dari inspeksi ini ada di register.</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation type="unfinished">Geladak %1</translation>
    </message>
    <message>
        <source>person joined</source>
        <translation type="unfinished">orang bergabung</translation>
    </message>
    <message>
        <source>walkdown begun</source>
        <translation type="unfinished">inspeksi dimulai</translation>
    </message>
    <message>
        <source>walkdown ended</source>
        <translation type="unfinished">inspeksi diakhiri</translation>
    </message>
    <message>
        <source>observation</source>
        <translation type="unfinished">pengamatan</translation>
    </message>
    <message>
        <source>plate read</source>
        <translation type="unfinished">pelat dibaca</translation>
    </message>
    <message>
        <source>measured value</source>
        <translation type="unfinished">nilai terukur</translation>
    </message>
    <message>
        <source>run started</source>
        <translation type="unfinished">uji dimulai</translation>
    </message>
    <message>
        <source>mark</source>
        <translation type="unfinished">tanda</translation>
    </message>
    <message>
        <source>run ended</source>
        <translation type="unfinished">uji berakhir</translation>
    </message>
    <message>
        <source>caution answered</source>
        <translation type="unfinished">syarat aman dijawab</translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished">catatan</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation type="unfinished">foto</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation type="unfinished">defisiensi</translation>
    </message>
    <message>
        <source>could not test</source>
        <translation type="unfinished">tidak dapat diuji</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished">ditarik kembali</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">uji reaksi</translation>
    </message>
    <message>
        <source>decision limits</source>
        <translation type="unfinished">batas keputusan</translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation type="unfinished">sertifikat dilihat</translation>
    </message>
    <message>
        <source>rectification</source>
        <translation type="unfinished">perbaikan</translation>
    </message>
    <message>
        <source>awaiting retest</source>
        <translation type="unfinished">menunggu uji ulang</translation>
    </message>
    <message>
        <source>withdrawal</source>
        <translation type="unfinished">penarikan</translation>
    </message>
    <message>
        <source>key accepted</source>
        <translation type="unfinished">kunci diterima</translation>
    </message>
    <message>
        <source>walkdown signed</source>
        <translation type="unfinished">inspeksi ditandatangani</translation>
    </message>
    <message>
        <source>undone</source>
        <translation type="unfinished">diurungkan</translation>
    </message>
    <message>
        <source>none agreed</source>
        <translation type="unfinished">tidak ada yang disepakati</translation>
    </message>
    <message>
        <source>, limit %1</source>
        <translation type="unfinished">, batas %1</translation>
    </message>
    <message>
        <source>, %1 maximum</source>
        <translation type="unfinished">, maksimal %1</translation>
    </message>
    <message>
        <source>; %1 m2 in area, limit %2 m2</source>
        <translation type="unfinished">; luas %1 m2, batas %2 m2</translation>
    </message>
    <message>
        <source>through door %1</source>
        <translation type="unfinished">melalui pintu %1</translation>
    </message>
    <message>
        <source>through doors %1</source>
        <translation type="unfinished">melalui pintu %1</translation>
    </message>
    <message>
        <source>Zones %1 act as one %2: %3 long%4.</source>
        <translation type="unfinished">Zona %1 menjadi satu %2: panjang %3%4.</translation>
    </message>
    <message>
        <source>Repairing door %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Memperbaiki pintu %1 di sekat %2 memulihkan pemisahan paling banyak</translation>
    </message>
    <message>
        <source>Repairing doors %1 in bulkhead %2 restores most separation</source>
        <translation type="unfinished">Memperbaiki pintu %1 di sekat %2 memulihkan pemisahan paling banyak</translation>
    </message>
    <message>
        <source>%1: zones that then still act as one are at most %2 long.</source>
        <translation type="unfinished">%1: zona yang sesudah itu masih menjadi satu panjangnya maksimal %2.</translation>
    </message>
    <message>
        <source>%1: no zones then act as one.</source>
        <translation type="unfinished">%1: sesudah itu tidak ada zona yang menjadi satu.</translation>
    </message>
    <message>
        <source>Separation of zones %1 is not yet proven: doors in bulkheads %2 are untested or undecided.</source>
        <translation type="unfinished">Pemisahan zona %1 belum terbukti: pintu di sekat %2 belum diuji atau belum pasti.</translation>
    </message>
    <message>
        <source>Planned, but no longer in the register and not graded here: %1.</source>
        <translation type="unfinished">Direncanakan, tetapi tidak ada lagi di register dan tidak dinilai di sini: %1.</translation>
    </message>
    <message>
        <source>%1 walkdown begun %2</source>
        <translation type="unfinished">inspeksi keliling %1 yang dimulai %2</translation>
    </message>
    <message>
        <source>the doors in this report are simulated.</source>
        <translation type="unfinished">pintu dalam laporan ini simulasi.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished">Nama</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation type="unfinished">Nomor identifikasi</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished">Aturan</translation>
    </message>
    <message>
        <source>Not covered</source>
        <translation type="unfinished">Tidak tercakup</translation>
    </message>
    <message>
        <source>high-speed craft; watertight doors as such</source>
        <translation type="unfinished">kapal berkecepatan tinggi (high-speed craft); pintu kedap air dalam fungsi kedap airnya</translation>
    </message>
    <message>
        <source>Passengers</source>
        <translation type="unfinished">Penumpang</translation>
    </message>
    <message>
        <source>certified to carry %1</source>
        <translation type="unfinished">menurut sertifikat boleh mengangkut %1</translation>
    </message>
    <message>
        <source>Keel laid</source>
        <translation type="unfinished">Peletakan lunas</translation>
    </message>
    <message>
        <source>not known: requirements that depend on it are advice</source>
        <translation type="unfinished">tidak diketahui: persyaratan yang bergantung padanya hanya saran</translation>
    </message>
    <message>
        <source>Sprinklers</source>
        <translation type="unfinished">Sprinkler</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation type="unfinished">terpasang</translation>
    </message>
    <message>
        <source>not fitted</source>
        <translation type="unfinished">tidak terpasang</translation>
    </message>
    <message>
        <source>Length on the drawing</source>
        <translation type="unfinished">Panjang pada gambar</translation>
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
        <source>1 main vertical zone</source>
        <translation type="unfinished">1 zona vertikal utama</translation>
    </message>
    <message>
        <source>%1 main vertical zones</source>
        <translation type="unfinished">%1 zona vertikal utama</translation>
    </message>
    <message>
        <source>1 deck</source>
        <translation type="unfinished">1 geladak</translation>
    </message>
    <message>
        <source>%1 decks</source>
        <translation type="unfinished">%1 geladak</translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished">Kapal</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">Tujuan</translation>
    </message>
    <message>
        <source>Scope</source>
        <translation type="unfinished">Cakupan</translation>
    </message>
    <message>
        <source>What the sample proves</source>
        <translation type="unfinished">Yang dibuktikan sampel</translation>
    </message>
    <message>
        <source>only those of this maintenance task, and any others recorded: %1 (%2)</source>
        <translation type="unfinished">hanya pemeriksaan dari tugas pemeliharaan ini, dan lainnya yang tercatat: %1 (%2)</translation>
    </message>
    <message>
        <source>Team</source>
        <translation type="unfinished">Tim</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Dicatat oleh</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished">Dimulai</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation type="unfinished">Diakhiri</translation>
    </message>
    <message>
        <source>under way</source>
        <translation type="unfinished">sedang berjalan</translation>
    </message>
    <message>
        <source>Remark at the end</source>
        <translation type="unfinished">Keterangan penutup</translation>
    </message>
    <message>
        <source>Heel at the start</source>
        <translation type="unfinished">Kemiringan di awal</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Stasiun kontrol</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation type="unfinished">Kanal</translation>
    </message>
    <message>
        <source>Words agreed</source>
        <translation type="unfinished">Kata yang disepakati</translation>
    </message>
    <message>
        <source>to start</source>
        <translation type="unfinished">untuk mulai</translation>
    </message>
    <message>
        <source>to stop</source>
        <translation type="unfinished">untuk berhenti</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Siapa boleh menghentikan uji</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Pengarahan keselamatan</translation>
    </message>
    <message>
        <source>read before the walkdown</source>
        <translation type="unfinished">dibacakan sebelum inspeksi</translation>
    </message>
    <message>
        <source>not marked as read</source>
        <translation type="unfinished">tidak ditandai dibacakan</translation>
    </message>
    <message>
        <source>Walkdown id</source>
        <translation type="unfinished">Id inspeksi</translation>
    </message>
    <message>
        <source>Walkdown</source>
        <translation type="unfinished">Inspeksi keliling</translation>
    </message>
    <message>
        <source>1 door in this walkdown</source>
        <translation type="unfinished">1 pintu dalam inspeksi ini</translation>
    </message>
    <message>
        <source>%1 doors in this walkdown</source>
        <translation type="unfinished">%1 pintu dalam inspeksi ini</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation type="unfinished">Ringkasan</translation>
    </message>
    <message>
        <source>Main vertical zones</source>
        <translation type="unfinished">Zona vertikal utama</translation>
    </message>
    <message>
        <source>No door in this walkdown was found to make two zones act as one.</source>
        <translation type="unfinished">Dalam inspeksi ini tidak ditemukan pintu yang membuat dua zona menjadi satu.</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">1 pintu di sekat zona masih belum diuji atau belum pasti</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads still untested or undecided</source>
        <translation type="unfinished">%1 pintu di sekat zona masih belum diuji atau belum pasti</translation>
    </message>
    <message>
        <source>1 door in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">1 pintu di sekat zona di luar cakupan inspeksi ini</translation>
    </message>
    <message>
        <source>%1 doors in zone bulkheads outside the scope of this walkdown</source>
        <translation type="unfinished">%1 pintu di sekat zona di luar cakupan inspeksi ini</translation>
    </message>
    <message>
        <source>Not known from this walkdown: %1.</source>
        <translation type="unfinished">Tidak diketahui dari inspeksi ini: %1.</translation>
    </message>
    <message>
        <source>the door as a whole</source>
        <translation type="unfinished">pintu secara keseluruhan</translation>
    </message>
    <message>
        <source>zone not known</source>
        <translation type="unfinished">zona tidak diketahui</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation type="unfinished">zona %1</translation>
    </message>
    <message>
        <source>zones %1 and %2</source>
        <translation type="unfinished">zona %1 dan %2</translation>
    </message>
    <message>
        <source>no longer in the register</source>
        <translation type="unfinished">tidak ada lagi di register</translation>
    </message>
    <message>
        <source>Repeat: %1</source>
        <translation type="unfinished">Berulang: %1</translation>
    </message>
    <message>
        <source>found %1 by %2</source>
        <translation type="unfinished">ditemukan %1 oleh %2</translation>
    </message>
    <message>
        <source>rectified %1 by %2: %3</source>
        <translation type="unfinished">diperbaiki %1 oleh %2: %3</translation>
    </message>
    <message>
        <source>retested %1: not in order</source>
        <translation type="unfinished">uji ulang %1: tidak baik</translation>
    </message>
    <message>
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
    <message>
        <source>All open items of the vessel, from this walkdown and earlier ones.</source>
        <translation type="unfinished">Semua temuan terbuka kapal ini, dari inspeksi ini dan yang terdahulu.</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Laporan survei</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Daftar kerja</translation>
    </message>
    <message>
        <source>Printed %1, %2</source>
        <translation type="unfinished">Dicetak %1, %2</translation>
    </message>
    <message>
        <source>%1 ship&apos;s time (%2), %3 UTC</source>
        <translation type="unfinished">%1 waktu kapal (%2), %3 UTC</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished">halaman %1 dari %2</translation>
    </message>
    <message>
        <source>n/a</source>
        <translation type="unfinished">t/b</translation>
    </message>
    <message>
        <source>Second boxes: the other side</source>
        <translation type="unfinished">Kotak kedua: sisi lain</translation>
    </message>
    <message>
        <source>Spring gauge at the edge of the closed leaf</source>
        <translation type="unfinished">Neraca pegas di tepi daun pintu yang tertutup</translation>
    </message>
    <message>
        <source>Ship&apos;s heel at this door</source>
        <translation type="unfinished">Kemiringan kapal di pintu ini</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished">derajat</translation>
    </message>
    <message>
        <source>both together %1</source>
        <translation type="unfinished">keduanya bersama %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished">%1 sampai %2</translation>
    </message>
    <message>
        <source>Released</source>
        <translation type="unfinished">Pelepasan</translation>
    </message>
    <message>
        <source>Shut, latched?</source>
        <translation type="unfinished">Tertutup, terkancing?</translation>
    </message>
    <message>
        <source>again, No. ____</source>
        <translation type="unfinished">ulang, No. ____</translation>
    </message>
    <message>
        <source>Contact with a soft block, never a hand: touched to stopped</source>
        <translation type="unfinished">Kontak dengan balok lunak, jangan pernah dengan tangan: tersentuh sampai berhenti</translation>
    </message>
    <message>
        <source>Plate reads:</source>
        <translation type="unfinished">Pelat terbaca:</translation>
    </message>
    <message>
        <source>Time:</source>
        <translation type="unfinished">Pukul:</translation>
    </message>
    <message>
        <source>Inspector&apos;s verdict:</source>
        <translation type="unfinished">Hasil menurut inspektur:</translation>
    </message>
    <message>
        <source>Notes:</source>
        <translation type="unfinished">Catatan:</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulir kosong</translation>
    </message>
    <message>
        <source>%1 walkdown, %2</source>
        <translation type="unfinished">inspeksi keliling %1, %2</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Tanggal</translation>
    </message>
    <message>
        <source>Tested by</source>
        <translation type="unfinished">Diuji oleh</translation>
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
        <source>A released door moves by itself and can crush. Anyone may stop the test. Confirm every point again before every release. If any point is not confirmed, do not release.</source>
        <translation type="unfinished">Pintu bergerak sendiri begitu penahannya dilepas, dan orang dapat terjepit. Siapa pun boleh menghentikan uji. Konfirmasikan lagi setiap butir sebelum setiap pelepasan. Bila ada satu butir saja yang tidak dikonfirmasi, jangan lepas penahan pintu.</translation>
    </message>
    <message>
        <source>Before each release from the control station</source>
        <translation type="unfinished">Sebelum setiap pelepasan dari stasiun kontrol</translation>
    </message>
    <message>
        <source>How to fill in this form</source>
        <translation type="unfinished">Cara mengisi formulir ini</translation>
    </message>
    <message>
        <source>Tick one box for each question; n/a only where the door has no such part. Where a question has two sets of boxes, answer it for each side. Give times in seconds with two decimals. Strike out a run that was stopped and give the reason: it is not a measurement. Time a run again if it is close to a limit, and enter the number of the one it repeats. Leave blank what was not tested and give the reason under Notes. The form is typed in later under the same numbers.</source>
        <translation type="unfinished">Centang satu kotak untuk setiap pertanyaan; t/b hanya bila pintu tidak punya bagian itu. Bila satu pertanyaan punya dua perangkat kotak, jawab untuk setiap sisi. Tulis waktu dalam detik dengan dua desimal. Coret uji yang dihentikan dan tulis alasannya: itu bukan pengukuran. Ukur ulang waktunya bila suatu uji dekat ke batas, dan tulis nomor uji yang diulang. Kosongkan yang tidak diuji dan tulis alasannya di bagian Catatan. Formulir ini kemudian diketik ke tablet dengan nomor yang sama.</translation>
    </message>
    <message>
        <source>blank form, %1</source>
        <translation type="unfinished">formulir kosong, %1</translation>
    </message>
    <message>
        <source>Blank form, %1</source>
        <translation type="unfinished">Formulir kosong, %1</translation>
    </message>
    <message>
        <source>blank form</source>
        <translation type="unfinished">formulir kosong</translation>
    </message>
    <message>
        <source>Catalogue: %1</source>
        <translation type="unfinished">Katalog: %1</translation>
    </message>
    <message>
        <source>Photograph damaged: it cannot be shown.</source>
        <translation type="unfinished">Foto rusak: tidak dapat ditampilkan.</translation>
    </message>
    <message>
        <source>Photograph not in this register.</source>
        <translation type="unfinished">Foto tidak ada di register ini.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not what was recorded.</source>
        <translation type="unfinished">Foto tidak dimuat: datanya bukan yang dahulu tercatat.</translation>
    </message>
    <message>
        <source>Photograph omitted: its data is not a picture that can be shown.</source>
        <translation type="unfinished">Foto tidak dimuat: datanya bukan gambar yang dapat ditampilkan.</translation>
    </message>
    <message>
        <source>PRACTICE - not a record</source>
        <translation type="unfinished">PRAKTIK - bukan catatan sungguhan</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished">%1 dan %2</translation>
    </message>
    <message>
        <source>no vessel in particular</source>
        <translation type="unfinished">tidak ada kapal tertentu</translation>
    </message>
    <message>
        <source>%1, door %2</source>
        <translation type="unfinished">%1, pintu %2</translation>
    </message>
    <message>
        <source>keel laid %1</source>
        <translation type="unfinished">lunas diletakkan %1</translation>
    </message>
    <message>
        <source>no keel date on record</source>
        <translation type="unfinished">tanggal peletakan lunas tidak tercatat</translation>
    </message>
    <message>
        <source>%1, %2, %3 passengers.</source>
        <translation type="unfinished">%1, %2, %3 penumpang.</translation>
    </message>
    <message>
        <source>The texts</source>
        <translation type="unfinished">Teks</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished">Pemeliharaan</translation>
    </message>
    <message>
        <source>Does not apply to this door</source>
        <translation type="unfinished">Tidak berlaku bagi pintu ini</translation>
    </message>
    <message>
        <source>Does not apply aboard</source>
        <translation type="unfinished">Tidak berlaku di kapal ini</translation>
    </message>
    <message>
        <source>Text</source>
        <translation type="unfinished">Teks</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation type="unfinished">Mengapa tidak</translation>
    </message>
    <message>
        <source>rule book</source>
        <translation type="unfinished">buku aturan</translation>
    </message>
    <message>
        <source>Rule book, %1</source>
        <translation type="unfinished">Buku aturan, %1</translation>
    </message>
    <message>
        <source>Rule book</source>
        <translation type="unfinished">Buku aturan</translation>
    </message>
    <message>
        <source>no common clock</source>
        <translation type="unfinished">tanpa jam bersama</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">tanpa tanda</translation>
    </message>
    <message>
        <source>(typed in)</source>
        <translation type="unfinished">(diketik)</translation>
    </message>
    <message>
        <source>%1, no reason given: not a measurement</source>
        <translation type="unfinished">%1, tanpa alasan: bukan pengukuran</translation>
    </message>
    <message>
        <source>%1: %2. Not a measurement</source>
        <translation type="unfinished">%1: %2. Bukan pengukuran</translation>
    </message>
    <message>
        <source>cut short: not a measurement</source>
        <translation type="unfinished">terputus: bukan pengukuran</translation>
    </message>
    <message>
        <source>marks out of order, %1 before %2: not a measurement</source>
        <translation type="unfinished">urutan tanda salah, %1 sebelum %2: bukan pengukuran</translation>
    </message>
    <message>
        <source>%1 was not marked: not a measurement</source>
        <translation type="unfinished">%1 tidak ditandai: bukan pengukuran</translation>
    </message>
    <message>
        <source>%1, group %2</source>
        <translation type="unfinished">%1, grup %2</translation>
    </message>
    <message>
        <source>contact, %1</source>
        <translation type="unfinished">kontak, %1</translation>
    </message>
    <message>
        <source>Run begun</source>
        <translation type="unfinished">Uji dimulai</translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished">Oleh</translation>
    </message>
    <message>
        <source>Heel</source>
        <translation type="unfinished">Kemiringan</translation>
    </message>
    <message>
        <source>Marks, seconds after the first</source>
        <translation type="unfinished">Tanda, detik setelah tanda pertama</translation>
    </message>
    <message>
        <source>Runs at the other doors</source>
        <translation type="unfinished">Uji di pintu lain</translation>
    </message>
    <message>
        <source>Recorded later</source>
        <translation type="unfinished">Dicatat kemudian</translation>
    </message>
    <message>
        <source>By, when</source>
        <translation type="unfinished">Oleh, waktu</translation>
    </message>
    <message>
        <source>, %1, signed %2.</source>
        <translation type="unfinished">, %1, menandatangani pada %2.</translation>
    </message>
    <message>
        <source>%1 entries, SHA-256 %2…, key of the tablet %3…</source>
        <translation type="unfinished">%1 entri, SHA-256 %2…, kunci tablet %3…</translation>
    </message>
    <message>
        <source>The entries covered by this signature are no longer as they were when signed.</source>
        <translation type="unfinished">Entri yang tercakup tanda tangan ini tidak lagi seperti pada saat ditandatangani.</translation>
    </message>
    <message>
        <source>Nothing was recorded after this signature.</source>
        <translation type="unfinished">Tidak ada yang dicatat setelah tanda tangan ini.</translation>
    </message>
    <message>
        <source>One entry was recorded after this signature and is not covered by it:</source>
        <translation type="unfinished">Satu entri dicatat setelah tanda tangan ini dan tidak tercakup olehnya:</translation>
    </message>
    <message>
        <source>%1 entries were recorded after this signature and are not covered by it:</source>
        <translation type="unfinished">%1 entri dicatat setelah tanda tangan ini dan tidak tercakup olehnya:</translation>
    </message>
    <message>
        <source>No one has signed this walkdown in the register.</source>
        <translation type="unfinished">Belum ada yang menandatangani inspeksi ini di register.</translation>
    </message>
    <message>
        <source>Inspector: name, signature, date</source>
        <translation type="unfinished">Inspektur: nama, tanda tangan, tanggal</translation>
    </message>
    <message>
        <source>Chief officer: name, signature, date</source>
        <translation type="unfinished">Mualim I: nama, tanda tangan, tanggal</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entri</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entri</translation>
    </message>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished">Katalog</translation>
    </message>
    <message>
        <source>Texts of the catalogue</source>
        <translation type="unfinished">Teks katalog</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished">%1 oleh %2</translation>
    </message>
    <message>
        <source>%1 by %2, with %3</source>
        <translation type="unfinished">%1 oleh %2, dengan %3</translation>
    </message>
    <message>
        <source>Entries of this walkdown</source>
        <translation type="unfinished">Entri inspeksi ini</translation>
    </message>
    <message>
        <source>Entries of the vessel</source>
        <translation type="unfinished">Entri kapal</translation>
    </message>
    <message>
        <source>What this document was made from</source>
        <translation type="unfinished">Asal dokumen ini</translation>
    </message>
    <message>
        <source>It shows the register as it was at that time. Entries added later are not in it; the checksums below show whether there are any.</source>
        <translation type="unfinished">Dokumen ini menunjukkan register sebagaimana adanya pada saat itu. Entri yang ditambahkan kemudian tidak ada di dalamnya; jumlah uji (checksum) di bawah menunjukkan apakah ada entri seperti itu.</translation>
    </message>
    <message>
        <source>What is recorded and signed is the English record.</source>
        <translation type="unfinished">Yang dicatat dan ditandatangani adalah catatan berbahasa Inggris.</translation>
    </message>
    <message>
        <source>Doors are graded by the English text.</source>
        <translation type="unfinished">Pintu dinilai menurut teks berbahasa Inggris.</translation>
    </message>
    <message>
        <source>This document is a translation.</source>
        <translation type="unfinished">Dokumen ini adalah terjemahan.</translation>
    </message>
    <message>
        <source>Interim measure: </source>
        <translation type="unfinished">Tindakan sementara: </translation>
    </message>
    <message>
        <source>by, date:</source>
        <translation type="unfinished">oleh, tanggal:</translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished">Selesai</translation>
    </message>
    <message>
        <source>What to rectify</source>
        <translation type="unfinished">Yang harus diperbaiki</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished">Yang dikerjakan</translation>
    </message>
    <message>
        <source>Rectified, awaiting retest</source>
        <translation type="unfinished">Diperbaiki, menunggu uji ulang</translation>
    </message>
    <message>
        <source>To be retested by someone other than whoever rectified it.</source>
        <translation type="unfinished">Uji ulang harus dilakukan oleh orang lain, bukan oleh yang memperbaikinya.</translation>
    </message>
    <message>
        <source>There is nothing to rectify.</source>
        <translation type="unfinished">Tidak ada yang harus diperbaiki.</translation>
    </message>
    <message>
        <source>For %1</source>
        <translation type="unfinished">Untuk %1</translation>
    </message>
    <message>
        <source>Assigned to no one yet</source>
        <translation type="unfinished">Belum ada penanggung jawabnya</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">pemeliharaan dilakukan</translation>
    </message>
    <message>
        <source>The flag Administration, approved plans and local rules take precedence over this record; grades are an aid to judgement. Catalogue: %1. Created %2 by %3 from %4 entries of the walkdown, SHA-256 %5, and %6 of the vessel, SHA-256 %7.</source>
        <translation type="unfinished">Administrasi negara bendera, denah yang disetujui, dan aturan setempat didahulukan atas catatan ini; nilai adalah alat bantu bagi keputusan. Katalog: %1. Dibuat %2 oleh %3 dari %4 entri inspeksi, SHA-256 %5, dan %6 entri kapal, SHA-256 %7.</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">keputusan</translation>
    </message>
    <message>
        <source>deficiency details</source>
        <translation type="unfinished">rincian defisiensi</translation>
    </message>
    <message>
        <source>conflict decided</source>
        <translation type="unfinished">pertentangan diputuskan</translation>
    </message>
    <message>
        <source>document created</source>
        <translation type="unfinished">dokumen dibuat</translation>
    </message>
    <message>
        <source>Created</source>
        <translation type="unfinished">Dibuat</translation>
    </message>
    <message>
        <source> (outside the limit)</source>
        <translation type="unfinished"> (di luar batas)</translation>
    </message>
    <message>
        <source>%1, of which %2 done (every check made, or a reason recorded).</source>
        <translation type="unfinished">%1, %2 di antaranya selesai (setiap pemeriksaan dilakukan, atau alasannya dicatat).</translation>
    </message>
    <message>
        <source>This document is a machine translation, not yet checked by a native speaker in the trade.</source>
        <translation type="unfinished">Dokumen ini adalah terjemahan mesin, belum diperiksa penutur asli di bidang ini.</translation>
    </message>
    <message>
        <source>, limit %1 in cabin areas</source>
        <translation type="unfinished">, batas %1 di area kabin</translation>
    </message>
</context>
<context>
    <name>RuleWords</name>
    <message>
        <source>asked at the door</source>
        <translation type="unfinished">ditanyakan di pintu</translation>
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
        <source>the answer says what the door is; neither answer is a fault</source>
        <translation type="unfinished">jawaban mengatakan pintu apa itu; tak satu pun berarti cacat</translation>
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
        <source>Limit</source>
        <translation type="unfinished">Batas</translation>
    </message>
    <message>
        <source>Approximate</source>
        <translation type="unfinished">Perkiraan</translation>
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
        <source>Question</source>
        <translation type="unfinished">Pertanyaan</translation>
    </message>
    <message>
        <source>Says</source>
        <translation type="unfinished">Menyatakan</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished">%1 dan %2 lagi</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation type="unfinished">Tidak terbaca</translation>
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
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>no door in particular</source>
        <translation type="unfinished">tidak ada pintu tertentu</translation>
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
        <source>Aboard this vessel</source>
        <translation type="unfinished">Di kapal ini</translation>
    </message>
    <message>
        <source>advice at %1</source>
        <translation type="unfinished">saran di %1</translation>
    </message>
    <message>
        <source>asked at the door, on each side</source>
        <translation type="unfinished">ditanyakan di pintu, di setiap sisi</translation>
    </message>
    <message>
        <source>class of the door compared with that of its boundary</source>
        <translation type="unfinished">kelas pintu dibandingkan dengan kelas pembatasnya</translation>
    </message>
    <message>
        <source>plate on the door compared with the register</source>
        <translation type="unfinished">pelat pada pintu dibandingkan dengan register</translation>
    </message>
    <message>
        <source>measured, with the step of the instrument taken into account</source>
        <translation type="unfinished">diukur, dengan memperhitungkan langkah skala alat ukur</translation>
    </message>
    <message>
        <source>shown by a complete run</source>
        <translation type="unfinished">terbukti oleh uji lengkap</translation>
    </message>
    <message>
        <source>shown by a run released from the control station</source>
        <translation type="unfinished">dibuktikan dengan uji yang penahannya dilepas dari stasiun kontrol</translation>
    </message>
    <message>
        <source>shown by runs released at the door, from each side</source>
        <translation type="unfinished">dibuktikan dengan uji yang penahannya dilepas di pintu, dari setiap sisi</translation>
    </message>
    <message>
        <source>shown by a run in which the alarm was marked</source>
        <translation type="unfinished">dibuktikan dengan uji yang alarmnya ditandai</translation>
    </message>
    <message>
        <source>timed from first movement to shut</source>
        <translation type="unfinished">diukur waktunya dari gerak pertama sampai tertutup</translation>
    </message>
    <message>
        <source>ship upright: with heel, a time is advice only</source>
        <translation type="unfinished">kapal tegak: pada kemiringan, waktu hanya saran</translation>
    </message>
    <message>
        <source>the text says so: up to %1 % outside the limits on the slow side, %2 % on the fast side, the inspector decides (margins of our own choice)</source>
        <translation type="unfinished">begitu kata teks: sampai %1 % di luar batas di sisi lambat, %2 % di sisi cepat, inspektur yang memutuskan (kelonggaran pilihan kami sendiri)</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Sumber</translation>
    </message>
    <message>
        <source>Applies to</source>
        <translation type="unfinished">Berlaku bagi</translation>
    </message>
    <message>
        <source>Does not apply where</source>
        <translation type="unfinished">Tidak berlaku bila</translation>
    </message>
    <message>
        <source>n/a allowed where</source>
        <translation type="unfinished">t/b boleh bila</translation>
    </message>
    <message>
        <source>Requirement</source>
        <translation type="unfinished">Persyaratan</translation>
    </message>
    <message>
        <source>the same as the requirement</source>
        <translation type="unfinished">sama dengan persyaratan</translation>
    </message>
    <message>
        <source>Precedence</source>
        <translation type="unfinished">Yang didahulukan</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation type="unfinished">Mencakup</translation>
    </message>
    <message>
        <source>Flag rules applied</source>
        <translation type="unfinished">Aturan bendera yang dipakai</translation>
    </message>
    <message>
        <source>binding here</source>
        <translation type="unfinished">mengikat di sini</translation>
    </message>
    <message>
        <source>on failure the inspector decides</source>
        <translation type="unfinished">bila gagal, inspektur yang memutuskan</translation>
    </message>
    <message>
        <source>advice only here</source>
        <translation type="unfinished">di sini hanya saran</translation>
    </message>
    <message>
        <source>does not apply here</source>
        <translation type="unfinished">tidak berlaku di sini</translation>
    </message>
    <message>
        <source>Binding at</source>
        <translation type="unfinished">Mengikat di</translation>
    </message>
    <message>
        <source>On failure the inspector decides at</source>
        <translation type="unfinished">Bila gagal, inspektur memutuskan di</translation>
    </message>
    <message>
        <source>Advice only at</source>
        <translation type="unfinished">Hanya saran di</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation type="unfinished">Tidak berlaku</translation>
    </message>
    <message>
        <source>binding at %1</source>
        <translation type="unfinished">mengikat di %1</translation>
    </message>
    <message>
        <source>inspector decides at %1</source>
        <translation type="unfinished">inspektur memutuskan di %1</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation type="unfinished">tidak berlaku</translation>
    </message>
    <message>
        <source>Interval</source>
        <translation type="unfinished">Interval</translation>
    </message>
    <message>
        <source>Open point</source>
        <translation type="unfinished">Belum jelas</translation>
    </message>
    <message>
        <source>No open point where</source>
        <translation type="unfinished">Sudah jelas bila</translation>
    </message>
    <message>
        <source>Texts read</source>
        <translation type="unfinished">Teks yang dibaca</translation>
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
        <source>void: marks out of order</source>
        <translation type="unfinished">batal: urutan tanda salah</translation>
    </message>
    <message>
        <source>void: “%1” was not marked</source>
        <translation type="unfinished">batal: “%1” tidak ditandai</translation>
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
        <source>decided that this entry stands: %1</source>
        <translation type="unfinished">memutuskan bahwa entri ini yang berlaku: %1</translation>
    </message>
    <message>
        <source>no one yet</source>
        <translation type="unfinished">belum ada orangnya</translation>
    </message>
    <message>
        <source>Two decisions about the same entries</source>
        <translation type="unfinished">Dua keputusan tentang entri yang sama</translation>
    </message>
</context>
<context>
    <name>SightWords</name>
    <message>
        <source>By one person</source>
        <translation type="unfinished">Oleh satu orang</translation>
    </message>
    <message>
        <source>Release switch</source>
        <translation type="unfinished">Sakelar pelepas</translation>
    </message>
    <message>
        <source>Power failure</source>
        <translation type="unfinished">Kegagalan daya</translation>
    </message>
    <message>
        <source>Main and emergency supply of the release panel switched off at the board: the leaf shuts.</source>
        <translation type="unfinished">Pasokan utama dan darurat panel pelepasan dimatikan di papan hubung: daun pintu menutup.</translation>
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
        <source>Local control</source>
        <translation type="unfinished">Kendali setempat</translation>
    </message>
    <message>
        <source>The cover opens by hand. Nothing stands or is built in front of it.</source>
        <translation type="unfinished">Tutupnya terbuka dengan tangan. Tidak ada yang berdiri atau terbangun di depannya.</translation>
    </message>
    <message>
        <source>Control system: works at 200 degrees C for 60 minutes, supply of the other doors not impaired, isolated above that, door kept shut up to 945 degrees C.</source>
        <translation type="unfinished">Sistem kendali: bekerja pada 200 derajat C selama 60 menit, pasokan pintu lain tidak terganggu, terisolasi di atas itu, pintu dijaga tertutup sampai 945 derajat C.</translation>
    </message>
    <message>
        <source>Machinery space</source>
        <translation type="unfinished">Ruang permesinan</translation>
    </message>
    <message>
        <source>Behind the door</source>
        <translation type="unfinished">Di balik pintu</translation>
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
        <source>Quick release</source>
        <translation type="unfinished">Pelepas cepat</translation>
    </message>
    <message>
        <source>Height of the bar</source>
        <translation type="unfinished">Tinggi batang</translation>
    </message>
    <message>
        <source>Force at the bar</source>
        <translation type="unfinished">Gaya pada batang</translation>
    </message>
    <message>
        <source>Panel on the bridge</source>
        <translation type="unfinished">Panel di anjungan</translation>
    </message>
    <message>
        <source>Central station</source>
        <translation type="unfinished">Stasiun kontrol pusat</translation>
    </message>
    <message>
        <source>Safety centre</source>
        <translation type="unfinished">Pusat keselamatan</translation>
    </message>
    <message>
        <source>Control outside the space</source>
        <translation type="unfinished">Kendali di luar ruang</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished">Penutupan</translation>
    </message>
    <message>
        <source>You open and shut it alone, first from side one, then from side two.</source>
        <translation type="unfinished">Anda membuka dan menutupnya sendirian, dahulu dari sisi satu, lalu dari sisi dua.</translation>
    </message>
    <message>
        <source>Turned to release and let go, the switch stays there. The leaf is not held again until someone turns it back.</source>
        <translation type="unfinished">Diputar ke pelepasan lalu dibiarkan, sakelar tetap di situ. Daun pintu tidak ditahan lagi sampai ada yang memutarnya kembali.</translation>
    </message>
    <message>
        <source>With this door isolated at the control box, the others in its group shut when released again.</source>
        <translation type="unfinished">Dengan pintu ini diisolasi di kotak kendali, pintu lain dalam grupnya menutup saat penahannya dilepas lagi.</translation>
    </message>
    <message>
        <source>Approval document</source>
        <translation type="unfinished">Dokumen persetujuan</translation>
    </message>
    <message>
        <source>Air openings</source>
        <translation type="unfinished">Lubang udara</translation>
    </message>
    <message>
        <source>A grille low in the leaf with a fire-rated shutter: net free area 0.03 m2 by its drawing. No undercut.</source>
        <translation type="unfinished">Kisi di bagian bawah daun pintu dengan penutup tahan api: luas bebas bersih 0,03 m2 menurut gambarnya. Tanpa celah bawah.</translation>
    </message>
    <message>
        <source>Inside: a stairway enclosure.</source>
        <translation type="unfinished">Di dalam: selubung tangga.</translation>
    </message>
    <message>
        <source>Approval document: a non-combustible core between steel sheets.</source>
        <translation type="unfinished">Dokumen persetujuan: inti tak mudah terbakar di antara lembaran baja.</translation>
    </message>
    <message>
        <source>Height of the openings</source>
        <translation type="unfinished">Tinggi lubang</translation>
    </message>
    <message>
        <source>You go through in the direction of escape without a key.</source>
        <translation type="unfinished">Anda lewat ke arah penyelamatan diri tanpa anak kunci.</translation>
    </message>
    <message>
        <source>A bar across two thirds of the leaf; pushing it releases the latch. Nothing locks it down.</source>
        <translation type="unfinished">Batang melintang dua pertiga daun pintu; mendorongnya membuka kancing. Tidak ada yang menguncinya.</translation>
    </message>
    <message>
        <source>The bar is 950 mm above the deck.</source>
        <translation type="unfinished">Batang berada 950 mm di atas geladak.</translation>
    </message>
    <message>
        <source>The spring gauge reads 40 N when the latch releases.</source>
        <translation type="unfinished">Neraca pegas menunjukkan 40 N saat kancing lepas.</translation>
    </message>
    <message>
        <source>The bridge reads its lamp out to you: correct for open, ajar and shut.</source>
        <translation type="unfinished">Anjungan membacakan lampunya kepada Anda: benar untuk terbuka, sedikit terbuka, dan tertutup.</translation>
    </message>
    <message>
        <source>The closing control and lamp of this door are beside the panel of the detection system.</source>
        <translation type="unfinished">Kendali penutupan dan lampu pintu ini ada di samping panel sistem deteksi.</translation>
    </message>
    <message>
        <source>Released from the safety centre, the door shuts and its lamp there changes.</source>
        <translation type="unfinished">Setelah penahannya dilepas dari pusat keselamatan, pintu menutup dan lampunya di sana berubah.</translation>
    </message>
    <message>
        <source>Blackout test</source>
        <translation type="unfinished">Uji blackout</translation>
    </message>
    <message>
        <source>Main power off: held and released on battery, then on the emergency generator.</source>
        <translation type="unfinished">Daya utama mati: ditahan dan penahan dilepas dengan baterai, lalu dengan generator darurat.</translation>
    </message>
    <message>
        <source>Its control is in the casing&apos;s fire locker with those of the fans and the fuel.</source>
        <translation type="unfinished">Kendalinya ada di lemari pemadam pada selubung, bersama kendali kipas dan bahan bakar.</translation>
    </message>
    <message>
        <source>When let go, it shuts firmly every time.</source>
        <translation type="unfinished">Saat dilepas, pintu selalu menutup mantap.</translation>
    </message>
    <message>
        <source>Hold-back supply switched off at the board: the leaf is released and shuts against the draught of the fans. The control station&apos;s release plan lists the door.</source>
        <translation type="unfinished">Pasokan alat penahan dimatikan di papan hubung: penahan melepas daun pintu dan pintu menutup melawan embusan kipas. Rencana pelepasan di stasiun kontrol mencantumkan pintu ini.</translation>
    </message>
    <message>
        <source>Escape trunk</source>
        <translation type="unfinished">Jalur penyelamatan diri</translation>
    </message>
    <message>
        <source>Let go on the ladder platform, it shuts by itself.</source>
        <translation type="unfinished">Dilepas di bordes tangga, pintu menutup sendiri.</translation>
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
        <translation type="unfinished">Penutup pintu otomatis</translation>
    </message>
    <message>
        <source>Latch</source>
        <translation type="unfinished">Kancing</translation>
    </message>
    <message>
        <source>Hold-back</source>
        <translation type="unfinished">Alat penahan</translation>
    </message>
    <message>
        <source>Leaf</source>
        <translation type="unfinished">Daun pintu</translation>
    </message>
    <message>
        <source>Hose port</source>
        <translation type="unfinished">Lubang selang kebakaran</translation>
    </message>
    <message>
        <source>Plate</source>
        <translation type="unfinished">Pelat</translation>
    </message>
    <message>
        <source>Panel lamps</source>
        <translation type="unfinished">Lampu panel</translation>
    </message>
    <message>
        <source>Local release</source>
        <translation type="unfinished">Pelepas setempat</translation>
    </message>
    <message>
        <source>Records, tests</source>
        <translation type="unfinished">Catatan, uji</translation>
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
        <source>rectification at %1</source>
        <translation type="unfinished">perbaikan di %1</translation>
    </message>
    <message>
        <source>end of the walkdown</source>
        <translation type="unfinished">akhir inspeksi</translation>
    </message>
    <message>
        <source>when a figure passes</source>
        <translation type="unfinished">kapan angka lulus</translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished">keputusan</translation>
    </message>
    <message>
        <source>no longer confirmed: %1</source>
        <translation type="unfinished">tidak lagi dipastikan: %1</translation>
    </message>
    <message>
        <source>deficiency at %1</source>
        <translation type="unfinished">defisiensi di %1</translation>
    </message>
    <message>
        <source>caution for %1</source>
        <translation type="unfinished">syarat aman untuk %1</translation>
    </message>
    <message>
        <source>run at %1</source>
        <translation type="unfinished">uji di %1</translation>
    </message>
    <message>
        <source>last entry</source>
        <translation type="unfinished">entri terakhir</translation>
    </message>
    <message>
        <source>%1 awaiting retest</source>
        <translation type="unfinished">%1 menunggu uji ulang</translation>
    </message>
    <message>
        <source>withdrawal of the item at %1</source>
        <translation type="unfinished">penarikan temuan di %1</translation>
    </message>
    <message>
        <source>start of the walkdown</source>
        <translation type="unfinished">awal inspeksi</translation>
    </message>
    <message>
        <source>timing drill</source>
        <translation type="unfinished">uji reaksi</translation>
    </message>
    <message>
        <source>certificate date</source>
        <translation type="unfinished">tanggal sertifikat</translation>
    </message>
    <message>
        <source>taking back %1</source>
        <translation type="unfinished">penarikan kembali %1</translation>
    </message>
    <message>
        <source>details of the item at %1</source>
        <translation type="unfinished">rincian temuan di %1</translation>
    </message>
    <message>
        <source>maintenance done</source>
        <translation type="unfinished">pemeliharaan dilakukan</translation>
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
        <source>Not at this door</source>
        <translation type="unfinished">Bukan di pintu ini</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation type="unfinished">%1, dan %2 lagi</translation>
    </message>
    <message>
        <source>Nothing to take back at door %1.</source>
        <translation type="unfinished">Tidak ada yang dapat diurungkan di pintu %1.</translation>
    </message>
    <message>
        <source>Nothing is deleted: taking back and putting back are recorded too. What was signed cannot be taken back.</source>
        <translation type="unfinished">Tidak ada yang dihapus: mengurungkan dan memulihkan juga dicatat. Yang sudah ditandatangani tidak dapat ditarik kembali.</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>unsatisfactory</source>
        <translation type="unfinished">tidak memuaskan</translation>
    </message>
    <message>
        <source>time again</source>
        <translation type="unfinished">ukur ulang waktunya</translation>
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
    <message>
        <source>judgement needed</source>
        <translation type="unfinished">perlu keputusan inspektur</translation>
    </message>
</context>
<context>
    <name>VoiceWords</name>
    <message>
        <source>Control station: standing by</source>
        <translation type="unfinished">Stasiun kontrol: siaga</translation>
    </message>
    <message>
        <source>Control station: releasing now</source>
        <translation type="unfinished">Stasiun kontrol: lepas sekarang</translation>
    </message>
    <message>
        <source>Control station: my panel shows it shut</source>
        <translation type="unfinished">Stasiun kontrol: panel saya menunjukkan tertutup</translation>
    </message>
    <message>
        <source>Control station: my panel shows it open</source>
        <translation type="unfinished">Stasiun kontrol: panel saya menunjukkan terbuka</translation>
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
        <source>Let it go</source>
        <translation type="unfinished">Lepaskan</translation>
    </message>
    <message>
        <source>Operate release,
side one</source>
        <translation type="unfinished">Operasikan
pelepas, sisi satu</translation>
    </message>
    <message>
        <source>Operate release,
side two</source>
        <translation type="unfinished">Operasikan
pelepas, sisi dua</translation>
    </message>
    <message>
        <source>Run stopped</source>
        <translation type="unfinished">Uji dihentikan</translation>
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
        <source>%1 untested</source>
        <translation type="unfinished">%1 belum diuji</translation>
    </message>
    <message>
        <source>%1 SAT</source>
        <translation type="unfinished">%1 BAIK</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation type="unfinished">%1 belum pasti</translation>
    </message>
    <message>
        <source>%1 UNSAT</source>
        <translation type="unfinished">%1 TIDAK BAIK</translation>
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
        <source>The control station</source>
        <translation type="unfinished">Stasiun kontrol</translation>
    </message>
    <message>
        <source>Who may stop the test</source>
        <translation type="unfinished">Siapa boleh menghentikan uji</translation>
    </message>
    <message>
        <source>Control station</source>
        <translation type="unfinished">Stasiun kontrol</translation>
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
        <source>who releases the doors</source>
        <translation type="unfinished">siapa yang melepas penahan pintu</translation>
    </message>
    <message>
        <source>no door is released without it</source>
        <translation type="unfinished">tanpa itu penahan pintu tidak boleh dilepas</translation>
    </message>
    <message>
        <source>said by whoever sees danger</source>
        <translation type="unfinished">diucapkan siapa pun yang melihat bahaya</translation>
    </message>
    <message>
        <source>Crush hazards</source>
        <translation type="unfinished">Bahaya terjepit</translation>
    </message>
    <message>
        <source>People kept clear</source>
        <translation type="unfinished">Orang dijauhkan</translation>
    </message>
    <message>
        <source>Clear passengers, children, carts and cables from every door of the release group. Keep them clear. Post a lookout on each side of every door that will move. Release one group at a time. Test locally first.</source>
        <translation type="unfinished">Jauhkan penumpang, anak-anak, kereta dorong, dan kabel dari setiap pintu dalam grup pelepasan. Jaga agar tetap jauh. Tempatkan petugas jaga di setiap sisi dari setiap pintu yang akan bergerak. Lepas penahan satu grup pada satu waktu. Uji dahulu secara setempat.</translation>
    </message>
    <message>
        <source>Announce the release. Agree the channel, the start word and the stop word. Have the control station read them back.</source>
        <translation type="unfinished">Umumkan pelepasan. Sepakati kanal, kata mulai, dan kata stop. Minta stasiun kontrol membacakan ulang (read back) semuanya.</translation>
    </message>
    <message>
        <source>Anyone, at any time, by saying the stop word. Stop the doors first. Ask questions afterwards.</source>
        <translation type="unfinished">Siapa pun, kapan pun, dengan mengucapkan kata stop. Hentikan pintu dahulu. Bertanya kemudian.</translation>
    </message>
    <message>
        <source>how to reach it</source>
        <translation type="unfinished">cara menghubunginya</translation>
    </message>
    <message>
        <source>by saying the stop word</source>
        <translation type="unfinished">dengan mengucapkan kata stop</translation>
    </message>
    <message>
        <source>Edges, meeting stiles and pockets crush hands, feet and heads: keep clear. Never walk through a moving door. Most published crush deaths: powered watertight doors, entered before they were fully open.</source>
        <translation type="unfinished">Tepi pintu, tepi pertemuan kedua daun pintu, dan rongga dapat menjepit tangan, kaki, dan kepala: menjauhlah. Jangan pernah melewati pintu yang sedang bergerak. Sebagian besar kematian akibat terjepit yang dilaporkan: pintu kedap air bermesin, dimasuki sebelum terbuka penuh.</translation>
    </message>
    <message>
        <source>Wear safety shoes and gloves, and hearing protection near the alarm. Carry a torch and a radio you have just checked. Wear nothing loose that a leaf can catch.</source>
        <translation type="unfinished">Kenakan sepatu keselamatan dan sarung tangan, dan pelindung telinga di dekat alarm. Bawa senter dan radio yang baru saja Anda periksa. Jangan kenakan apa pun yang longgar yang dapat tersangkut daun pintu.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefPage</name>
    <message>
        <source>Agreed with the control station</source>
        <translation type="unfinished">Disepakati dengan stasiun kontrol</translation>
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
    <message>
        <source>Read out to everyone taking part</source>
        <translation type="unfinished">Bacakan kepada semua yang ikut serta</translation>
    </message>
    <message>
        <source>‹ Plan</source>
        <translation type="unfinished">‹ Rencana</translation>
    </message>
    <message>
        <source>In the plan, choose who is recording.</source>
        <translation type="unfinished">Di rencana, pilih siapa yang mencatat.</translation>
    </message>
    <message>
        <source>Not yet agreed: %1.</source>
        <translation type="unfinished">Belum disepakati: %1.</translation>
    </message>
    <message>
        <source>%1 of %2 parts of the brief read.</source>
        <translation type="unfinished">%1 dari %2 bagian pengarahan dibacakan.</translation>
    </message>
    <message>
        <source>Common practice, no published source. Source for the deaths: accident reports of P&amp;I clubs and flag States.</source>
        <translation type="unfinished">Praktik umum, tanpa sumber terbitan. Sumber data kematian: laporan kecelakaan dari klub P&amp;I dan negara bendera.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BriefRow</name>
    <message>
        <source>Mark as read</source>
        <translation type="unfinished">Tandai dibaca</translation>
    </message>
    <message>
        <source>Mark as read: %1</source>
        <translation type="unfinished">Tandai dibaca: %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation type="unfinished">Dibacakan</translation>
    </message>
</context>
<context>
    <name>latchround::ui::BudgetTable</name>
    <message>
        <source>own delay at the start, from the drill</source>
        <translation type="unfinished">kelambatan sendiri di awal, dari uji reaksi</translation>
    </message>
    <message>
        <source>own delay at the end, from the drill</source>
        <translation type="unfinished">kelambatan sendiri di akhir, dari uji reaksi</translation>
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
        <source>clear opening</source>
        <translation type="unfinished">bukaan bersih</translation>
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
        <source>degrees of freedom</source>
        <translation type="unfinished">derajat kebebasan</translation>
    </message>
    <message>
        <source>probability inside the limits</source>
        <translation type="unfinished">peluang di dalam batas</translation>
    </message>
    <message>
        <source>reaction scatter at the start</source>
        <translation type="unfinished">sebaran reaksi di awal</translation>
    </message>
    <message>
        <source>reaction scatter at the end</source>
        <translation type="unfinished">sebaran reaksi di akhir</translation>
    </message>
    <message>
        <source>clock rate</source>
        <translation type="unfinished">laju jam</translation>
    </message>
    <message>
        <source>position of the half-way mark</source>
        <translation type="unfinished">posisi tanda separuh</translation>
    </message>
    <message>
        <source>unlimited</source>
        <translation type="unfinished">tak terbatas</translation>
    </message>
    <message>
        <source>combined</source>
        <translation type="unfinished">gabungan</translation>
    </message>
    <message>
        <source>expanded, U (k = 2)</source>
        <translation type="unfinished">diperluas, U (k = 2)</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Rincian ketidakpastian</translation>
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
        <source>Fire and smoke can pass this boundary; the zones themselves stay separate.</source>
        <translation type="unfinished">Api dan asap dapat melewati pembatas ini; zona-zonanya sendiri tetap terpisah.</translation>
    </message>
    <message>
        <source>Zones %1 would act as one: %2 long%3.</source>
        <translation type="unfinished">Zona %1 akan menjadi satu: panjang %2%3.</translation>
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
        <translation type="unfinished">, jalur evakuasi</translation>
    </message>
    <message>
        <source>Confirm</source>
        <translation type="unfinished">Konfirmasi</translation>
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
        <source>‹ Doors</source>
        <translation type="unfinished">‹ Pintu</translation>
    </message>
    <message>
        <source>Leaf masses are not in the register: treat every leaf as a crush hazard.</source>
        <translation type="unfinished">Massa daun pintu tidak ada di register: perlakukan setiap daun pintu sebagai bahaya terjepit.</translation>
    </message>
    <message>
        <source>Door %1, leaf of %2: up to %3 at the fastest permitted speed.</source>
        <translation type="unfinished">Pintu %1, daun pintu %2: energi hingga %3 pada kecepatan tertinggi yang diizinkan.</translation>
    </message>
    <message>
        <source> Below the shore figure for doors that need no guard (%1), but still enough to crush a hand.</source>
        <translation type="unfinished"> Di bawah angka darat untuk pintu tanpa pelindung (%1), tetapi masih cukup untuk membuat tangan terjepit parah.</translation>
    </message>
    <message>
        <source> That is %1 times the shore figure for doors that need no guard (%2): keep everyone clear.</source>
        <translation type="unfinished"> Itu %1 kali angka darat untuk pintu tanpa pelindung (%2): jauhkan semua orang.</translation>
    </message>
    <message>
        <source> Ashore, a leaf this heavy must take at least %1 s.</source>
        <translation type="unfinished"> Di darat, daun pintu seberat ini harus menutup dalam minimal %1 s.</translation>
    </message>
    <message>
        <source> For comparison, not a rule for ships: %1.</source>
        <translation type="unfinished"> Untuk perbandingan, bukan aturan bagi kapal: %1.</translation>
    </message>
    <message>
        <source>Crush hazard of these doors</source>
        <translation type="unfinished">Bahaya terjepit pada pintu-pintu ini</translation>
    </message>
    <message>
        <source>Cautions to confirm ›</source>
        <translation type="unfinished">Konfirmasi syarat aman ›</translation>
    </message>
    <message>
        <source>Confirm each before release</source>
        <translation type="unfinished">Konfirmasi satu per satu sebelum pelepasan</translation>
    </message>
    <message>
        <source>Back to the doors that will move</source>
        <translation type="unfinished">Kembali ke pintu yang akan bergerak</translation>
    </message>
    <message>
        <source>All still true</source>
        <translation type="unfinished">Semua masih benar</translation>
    </message>
    <message>
        <source>before release from the control station</source>
        <translation type="unfinished">sebelum pelepasan dari stasiun kontrol</translation>
    </message>
    <message>
        <source>Call %1 on %2. To start: “%3”. To stop: “%4”; %5 may say it.</source>
        <translation type="unfinished">Panggil %1 di %2. Untuk mulai: “%3”. Untuk berhenti: “%4”; %5 boleh mengucapkannya.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ChangedRulesCard</name>
    <message>
        <source>Show ›</source>
        <translation type="unfinished">Tampilkan ›</translation>
    </message>
    <message>
        <source>The rules have changed since the doors were last shown</source>
        <translation type="unfinished">Aturan telah berubah sejak pintu terakhir ditampilkan</translation>
    </message>
    <message>
        <source>%1 graded differently since the rules changed</source>
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
        <source>next to be answered by the letters y, n and a</source>
        <translation type="unfinished">yang berikut dijawab dengan huruf y, n, dan a</translation>
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
    <message>
        <source>Release %1. On record: %2. Nothing is lost.</source>
        <translation type="unfinished">Pelepasan %1. Tercatat: %2. Tidak ada yang hilang.</translation>
    </message>
    <message>
        <source>no marks</source>
        <translation type="unfinished">tanpa tanda</translation>
    </message>
    <message>
        <source>Void the run</source>
        <translation type="unfinished">Batalkan uji ini</translation>
    </message>
    <message>
        <source>Complete by hand from my own stopwatch</source>
        <translation type="unfinished">Lengkapi dengan tangan dari stopwatch saya sendiri</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DayPicker</name>
    <message>
        <source>Or type the date, like 2027-03-31.</source>
        <translation type="unfinished">Atau ketik tanggalnya, misalnya 2027-03-31.</translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished">Tanggal</translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished">Pakai</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DebriefScreen</name>
    <message>
        <source>Debrief</source>
        <translation type="unfinished">Evaluasi</translation>
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
        <source>People (%1)</source>
        <translation type="unfinished">Orang (%1)</translation>
    </message>
    <message>
        <source>Marks (%1)</source>
        <translation type="unfinished">Tanda (%1)</translation>
    </message>
    <message>
        <source>Score</source>
        <translation type="unfinished">Nilai</translation>
    </message>
    <message>
        <source>‹ Score</source>
        <translation type="unfinished">‹ Nilai</translation>
    </message>
    <message>
        <source>Practice does not replace instruction by licensed people or the rules of the flag Administration.</source>
        <translation type="unfinished">Praktik tidak menggantikan pengajaran oleh orang berlisensi atau aturan Administrasi negara bendera.</translation>
    </message>
    <message>
        <source>Checks (%1)</source>
        <translation type="unfinished">Pemeriksaan (%1)</translation>
    </message>
    <message>
        <source>%1 checks that differ</source>
        <translation type="unfinished">%1 pemeriksaan yang berbeda</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DecisionSheet</name>
    <message>
        <source>Passes at %1, fails at %2</source>
        <translation type="unfinished">Lulus pada %1, gagal pada %2</translation>
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
        <source>%1: default</source>
        <translation type="unfinished">%1: bawaan</translation>
    </message>
    <message>
        <source>A closing time within %1 s of a limit is timed again; after three runs, you decide. Of doors that just pass, 1 in %2 would be outside; of doors that just fail, 1 in %2 would be inside.</source>
        <translation type="unfinished">Waktu menutup dalam %1 s dari suatu batas harus diukur ulang waktunya; setelah tiga uji, Anda putuskan. Dari pintu yang lulus tipis, 1 dari %2 sebenarnya di luar; dari pintu yang gagal tipis, 1 dari %2 sebenarnya di dalam.</translation>
    </message>
    <message>
        <source>These apply to the walkdown under way and to later ones; reports print them. What the flag Administration requires takes precedence.</source>
        <translation type="unfinished">Ini berlaku bagi inspeksi yang sedang berjalan dan yang berikutnya; laporan mencetaknya. Yang disyaratkan Administrasi negara bendera didahulukan.</translation>
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
        <source>%1, door %2</source>
        <translation type="unfinished">%1, pintu %2</translation>
    </message>
    <message>
        <source>No table for this division</source>
        <translation type="unfinished">Tidak ada tabel untuk divisi ini</translation>
    </message>
    <message>
        <source>The approved plans and the flag Administration take precedence over these tables.</source>
        <translation type="unfinished">Denah yang disetujui dan Administrasi negara bendera didahulukan atas tabel-tabel ini.</translation>
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
        <translation type="unfinished">Gambar pintu satu daun</translation>
    </message>
    <message>
        <source>Drawing of a double leaf door</source>
        <translation type="unfinished">Gambar pintu dua daun</translation>
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
        <source>%1 %2</source>
        <translation type="unfinished">%1 %2</translation>
    </message>
    <message>
        <source>, a soft block in its path</source>
        <translation type="unfinished">, balok lunak di lintasannya</translation>
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
        <translation type="unfinished">2 Pelepasan</translation>
    </message>
    <message>
        <source>3 Function</source>
        <translation type="unfinished">3 Fungsi</translation>
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
        <source>This door could not be tested: say why</source>
        <translation type="unfinished">Pintu ini tidak dapat diuji: sebutkan sebabnya</translation>
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
        <source>Next door %1 ›</source>
        <translation type="unfinished">Pintu berikut %1 ›</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation type="unfinished">Pintu %1</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation type="unfinished">Dari kertas</translation>
    </message>
    <message>
        <source>Type in the entries of a paper form</source>
        <translation type="unfinished">Ketik entri dari formulir kertas</translation>
    </message>
    <message>
        <source>Could not test</source>
        <translation type="unfinished">Tak dapat diuji</translation>
    </message>
    <message>
        <source>1 does not apply ›</source>
        <translation type="unfinished">1 tidak berlaku ›</translation>
    </message>
    <message>
        <source>%1 do not apply ›</source>
        <translation type="unfinished">%1 tidak berlaku ›</translation>
    </message>
    <message>
        <source>Walkdown done ›</source>
        <translation type="unfinished">Inspeksi selesai ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DoorSheets</name>
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
        <source>%1
    %2</source>
        <translation type="unfinished">%1
    %2</translation>
    </message>
    <message>
        <source>closing force at the edge, by spring gauge</source>
        <translation type="unfinished">gaya menutup di tepi, dengan neraca pegas</translation>
    </message>
    <message>
        <source>Ship&apos;s heel, degrees</source>
        <translation type="unfinished">Kemiringan kapal, derajat</translation>
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
        <source>Could not test</source>
        <translation type="unfinished">Tak dapat diuji</translation>
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
        <source>Record</source>
        <translation type="unfinished">Catat</translation>
    </message>
    <message>
        <source>does not apply: %1</source>
        <translation type="unfinished">tidak berlaku: %1</translation>
    </message>
    <message>
        <source>What the boundary requires</source>
        <translation type="unfinished">Apa yang disyaratkan pembatas</translation>
    </message>
    <message>
        <source>Does not apply to door %1</source>
        <translation type="unfinished">Tidak berlaku bagi pintu %1</translation>
    </message>
    <message>
        <source>What was %1 measured with?</source>
        <translation type="unfinished">Dengan alat apa %1 diukur?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu menutup hanya saran</translation>
    </message>
    <message>
        <source>Uncertainty breakdown</source>
        <translation type="unfinished">Rincian ketidakpastian</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Riwayat waktu</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Pintu dalam inspeksi ini</translation>
    </message>
    <message>
        <source>Write up…</source>
        <translation type="unfinished">Tulis…</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillResult</name>
    <message>
        <source>%1 late, scatter %2, from %3 trials</source>
        <translation type="unfinished">%1 terlambat, sebaran %2, dari %3 percobaan</translation>
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
        <source>too few usable trials: published figures apply</source>
        <translation type="unfinished">terlalu sedikit percobaan yang dapat dipakai: angka terbitan berlaku</translation>
    </message>
    <message>
        <source>; %1 too early, not counted</source>
        <translation type="unfinished">; %1 terlalu dini, tidak dihitung</translation>
    </message>
    <message>
        <source>; %1 far out, not counted</source>
        <translation type="unfinished">; %1 jauh menyimpang, tidak dihitung</translation>
    </message>
    <message>
        <source>A closing time is corrected by %1%2 and has ± %3; with the published figures it has ± %4.</source>
        <translation type="unfinished">Waktu menutup dikoreksi %1%2 dan memiliki ± %3; dengan angka terbitan ± %4.</translation>
    </message>
    <message>
        <source>Your reaction time on this tablet</source>
        <translation type="unfinished">Waktu reaksi Anda pada tablet ini</translation>
    </message>
    <message>
        <source>no trials: published figures apply</source>
        <translation type="unfinished">tanpa percobaan: angka terbitan berlaku</translation>
    </message>
    <message>
        <source>Used for runs that you time on this tablet from now on. The tablet&apos;s own delay, which a real door does not have, stays in the uncertainty. Worth repeating every %1 months.</source>
        <translation type="unfinished">Dipakai mulai sekarang untuk uji yang Anda ukur waktunya pada tablet ini. Kelambatan tablet sendiri, yang tidak ada pada pintu nyata, tetap termasuk dalam ketidakpastian. Layak diulang setiap %1 bulan.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::DrillScreen</name>
    <message>
        <source>Try the sound</source>
        <translation type="unfinished">Coba suara</translation>
    </message>
    <message>
        <source>Begin without sound</source>
        <translation type="unfinished">Mulai tanpa suara</translation>
    </message>
    <message>
        <source>Begin ›</source>
        <translation type="unfinished">Mulai ›</translation>
    </message>
    <message>
        <source>Trial %1 of %2</source>
        <translation type="unfinished">Percobaan %1 dari %2</translation>
    </message>
    <message>
        <source>How quick and steady are you?</source>
        <translation type="unfinished">Seberapa cepat dan ajek Anda?</translation>
    </message>
    <message>
        <source>How the drill works</source>
        <translation type="unfinished">Cara kerja uji reaksi</translation>
    </message>
    <message>
        <source>Twenty times, a leaf starts without warning and then comes home. Touch the key the moment it starts, and again the moment it is home. With sound, an alarm comes first: touch the key when you hear it. It takes about two minutes. Hold the tablet as you would at a door.</source>
        <translation type="unfinished">Dua puluh kali, daun pintu mulai bergerak tanpa aba-aba lalu tertutup rapat. Sentuh tombol tepat saat mulai, dan sekali lagi tepat saat tertutup rapat. Dengan suara, alarm datang lebih dahulu: sentuh tombol saat Anda mendengarnya. Lamanya kira-kira dua menit. Pegang tablet seperti di depan pintu.</translation>
    </message>
    <message>
        <source>Your own delay and scatter then replace the published figures for every run that you time on this tablet. If you leave before the end, nothing is kept.</source>
        <translation type="unfinished">Kelambatan dan sebaran Anda sendiri kemudian menggantikan angka terbitan untuk setiap uji yang Anda ukur waktunya pada tablet ini. Jika Anda keluar sebelum selesai, tidak ada yang disimpan.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Uji reaksi</translation>
    </message>
    <message>
        <source>Turn the sound up until you hear it clearly above the ship&apos;s noise.</source>
        <translation type="unfinished">Keraskan suara sampai Anda mendengarnya jelas di atas bising kapal.</translation>
    </message>
    <message>
        <source>No working loudspeaker on this tablet: for what is heard, the published figures apply.</source>
        <translation type="unfinished">Tidak ada pengeras suara yang berfungsi pada tablet ini: untuk yang didengar, angka terbitan berlaku.</translation>
    </message>
    <message>
        <source>That one was missed: it will be repeated.</source>
        <translation type="unfinished">Yang itu terlewat: akan diulang.</translation>
    </message>
    <message>
        <source>Loud enough: begin ›</source>
        <translation type="unfinished">Cukup keras: mulai ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::EdgeView</name>
    <message>
        <source>Close-up drawing of the leaf</source>
        <translation type="unfinished">Gambar dekat daun pintu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ExerciseRow</name>
    <message>
        <source>Practise ›</source>
        <translation type="unfinished">Praktik ›</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished">%1: %2, %3</translation>
    </message>
    <message>
        <source>best %1 %</source>
        <translation type="unfinished">terbaik %1 %</translation>
    </message>
    <message>
        <source>Unlock ›</source>
        <translation type="unfinished">Buka kunci ›</translation>
    </message>
    <message>
        <source>locked by the instructor</source>
        <translation type="unfinished">dikunci instruktur</translation>
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
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
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
        <source>Look round the demo vessel</source>
        <translation type="unfinished">Lihat-lihat kapal demo</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation type="unfinished">Praktik</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished">%1 dari %2</translation>
    </message>
    <message>
        <source>Testing doors that can crush</source>
        <translation type="unfinished">Menguji pintu yang dapat menjepit</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Sebelumnya</translation>
    </message>
    <message>
        <source>A released door moves by itself. Never walk through it. Keep hands and feet off edges and pockets. Post a lookout on each side of every door. Anyone may stop the test.</source>
        <translation type="unfinished">Pintu bergerak sendiri begitu penahannya dilepas. Jangan pernah melewatinya. Jauhkan tangan dan kaki dari tepi dan rongga. Tempatkan petugas jaga di setiap sisi dari setiap pintu. Siapa pun boleh menghentikan uji.</translation>
    </message>
    <message>
        <source>Latchround guides you from door to door, asks only what applies to this ship and kind of door, times the closing and grades it.</source>
        <translation type="unfinished">Latchround memandu Anda dari pintu ke pintu, hanya menanyakan yang berlaku bagi kapal dan jenis pintu ini, mengukur waktu menutup, dan menilainya.</translation>
    </message>
    <message>
        <source>Rules that take precedence</source>
        <translation type="unfinished">Aturan yang didahulukan</translation>
    </message>
    <message>
        <source>The flag Administration, the approved fire plan, local rules and the judgement of its users take precedence over this program. A grade is an aid, not a certificate.</source>
        <translation type="unfinished">Administrasi negara bendera, denah pengendalian kebakaran yang disetujui, aturan setempat, dan pertimbangan serta keputusan penggunanya didahulukan atas program ini. Nilai adalah alat bantu, bukan sertifikat.</translation>
    </message>
    <message>
        <source>It follows the texts of 2015. Later amendments have not been checked.</source>
        <translation type="unfinished">Program ini mengikuti teks tahun 2015. Amendemen sesudahnya belum diperiksa.</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation type="unfinished">Normal</translation>
    </message>
    <message>
        <source>Start here</source>
        <translation type="unfinished">Mulai di sini</translation>
    </message>
    <message>
        <source>A fictitious ferry with a walkdown under way, to try every screen.</source>
        <translation type="unfinished">Feri fiktif dengan inspeksi yang sedang berjalan, untuk mencoba setiap layar.</translation>
    </message>
    <message>
        <source>Simulated doors that move, fail and hide faults, with a debrief.</source>
        <translation type="unfinished">Pintu simulasi yang bergerak, gagal, dan menyembunyikan cacat, dengan evaluasi.</translation>
    </message>
    <message>
        <source>Import my vessel&apos;s register (CSV)</source>
        <translation type="unfinished">Impor register kapal saya (CSV)</translation>
    </message>
    <message>
        <source>Decks, zones, boundaries and doors from a spreadsheet; every error in it is listed.</source>
        <translation type="unfinished">Geladak, zona, pembatas, dan pintu dari lembar sebar; setiap kesalahan di dalamnya didaftar.</translation>
    </message>
    <message>
        <source>fire door walkdowns</source>
        <translation type="unfinished">inspeksi keliling pintu kebakaran</translation>
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
        <source>Open items</source>
        <translation type="unfinished">Temuan terbuka</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Kapal ini</translation>
    </message>
    <message>
        <source>Rule book ›</source>
        <translation type="unfinished">Buku aturan ›</translation>
    </message>
    <message>
        <source>%1. Flag Administration, approved plans and local rules come first. Not for high-speed craft, nor watertight doors as such.</source>
        <translation type="unfinished">%1. Administrasi negara bendera, denah yang disetujui, dan aturan setempat didahulukan. Bukan untuk kapal cepat, dan pintu kedap air tidak diperiksa sebagai pintu kedap air.</translation>
    </message>
    <message>
        <source>Boundary integrity</source>
        <translation type="unfinished">Keutuhan pembatas</translation>
    </message>
    <message>
        <source>Doors</source>
        <translation type="unfinished">Pintu</translation>
    </message>
    <message>
        <source>Doors and walkdown</source>
        <translation type="unfinished">Pintu dan inspeksi</translation>
    </message>
    <message>
        <source>Rules applied</source>
        <translation type="unfinished">Aturan yang dipakai</translation>
    </message>
</context>
<context>
    <name>latchround::ui::HomeSheets</name>
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
        <source>Begin ›</source>
        <translation type="unfinished">Mulai ›</translation>
    </message>
    <message>
        <source>last %1, worth repeating after %2</source>
        <translation type="unfinished">terakhir %1, layak diulang setelah %2</translation>
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
        <source>End the walkdown</source>
        <translation type="unfinished">Akhiri inspeksi</translation>
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
        <source>No walkdown has begun yet. Begin one to test it.</source>
        <translation type="unfinished">Belum ada inspeksi dimulai. Mulai satu untuk mengujinya.</translation>
    </message>
    <message>
        <source>I have seen this</source>
        <translation type="unfinished">Sudah saya lihat</translation>
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
    <message>
        <source>Graded differently since the rules changed</source>
        <translation type="unfinished">Dinilai lain sejak aturan berubah</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Tidak tersimpan</translation>
    </message>
    <message>
        <source>The former rules can no longer be read, so it is not known which doors are graded differently.</source>
        <translation type="unfinished">Aturan terdahulu tidak dapat dibaca lagi, jadi tidak diketahui pintu mana yang dinilai lain.</translation>
    </message>
    <message>
        <source>No record has changed, and an earlier report keeps the edition it was made under.</source>
        <translation type="unfinished">Tidak ada catatan yang berubah, dan laporan terdahulu tetap memakai edisi saat dibuat.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Yang jatuh tempo</translation>
    </message>
    <message>
        <source>Intervals of MSC.1/Circ.1432. The company&apos;s plan and the flag Administration take precedence; no grace period is stated.</source>
        <translation type="unfinished">Interval MSC.1/Circ.1432. Rencana perusahaan dan Administrasi negara bendera didahulukan; tidak disebut masa tenggang.</translation>
    </message>
    <message>
        <source>not known yet: enter its expiry date</source>
        <translation type="unfinished">belum diketahui: isi tanggal kedaluwarsanya</translation>
    </message>
    <message>
        <source>Timing drill: %1</source>
        <translation type="unfinished">Uji reaksi: %1</translation>
    </message>
    <message>
        <source>never done on this tablet: published figures apply</source>
        <translation type="unfinished">belum pernah dilakukan pada tablet ini: angka terbitan berlaku</translation>
    </message>
    <message>
        <source>When does the safety certificate expire?</source>
        <translation type="unfinished">Kapan sertifikat keselamatan kedaluwarsa?</translation>
    </message>
    <message>
        <source>%1 of %2 not done. What was not tested is reported as untested.</source>
        <translation type="unfinished">%1 dari %2 tidak dilakukan. Yang tidak diuji dilaporkan sebagai belum diuji.</translation>
    </message>
    <message>
        <source>Something has not been saved yet. Save it first, then end the walkdown.</source>
        <translation type="unfinished">Ada yang belum tersimpan. Simpan dahulu, lalu akhiri inspeksi.</translation>
    </message>
    <message>
        <source>Carry on</source>
        <translation type="unfinished">Lanjutkan</translation>
    </message>
    <message>
        <source>Doors in this walkdown</source>
        <translation type="unfinished">Pintu dalam inspeksi ini</translation>
    </message>
    <message>
        <source>There is no other vessel on this tablet.</source>
        <translation type="unfinished">Tidak ada kapal lain di tablet ini.</translation>
    </message>
    <message>
        <source>Import a register (CSV)</source>
        <translation type="unfinished">Impor register (CSV)</translation>
    </message>
    <message>
        <source>It is not in the walkdown shown. Plan a walkdown that includes it.</source>
        <translation type="unfinished">Tidak termasuk dalam inspeksi yang ditampilkan. Rencanakan inspeksi yang mencakupnya.</translation>
    </message>
    <message>
        <source>An ended walkdown takes no more entries. Until it is signed, you can take back the end with Undo.</source>
        <translation type="unfinished">Inspeksi yang sudah diakhiri tidak menerima entri lagi. Selama belum ditandatangani, Anda dapat menarik kembali pengakhirannya dengan Urung.</translation>
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
        <source>%1: found by %2</source>
        <translation type="unfinished">%1: ditemukan oleh %2</translation>
    </message>
    <message>
        <source>%1: rectified by %2: %3</source>
        <translation type="unfinished">%1: diperbaiki oleh %2: %3</translation>
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
        <source>nothing recorded</source>
        <translation type="unfinished">tidak ada catatan</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Port State Control (PSC)</translation>
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
        <source>Show ›</source>
        <translation type="unfinished">Tampilkan ›</translation>
    </message>
    <message>
        <source>History ›</source>
        <translation type="unfinished">Riwayat ›</translation>
    </message>
    <message>
        <source>Rectified…</source>
        <translation type="unfinished">Diperbaiki…</translation>
    </message>
    <message>
        <source>Withdraw…</source>
        <translation type="unfinished">Tarik…</translation>
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
        <source>Until it is rectified, %1.</source>
        <translation type="unfinished">Sampai perbaikan selesai, %1.</translation>
    </message>
    <message>
        <source>Say who you are before you change an item.</source>
        <translation type="unfinished">Sebutkan siapa Anda sebelum mengubah temuan.</translation>
    </message>
    <message>
        <source>%1: retest requested by %2</source>
        <translation type="unfinished">%1: uji ulang diminta oleh %2</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Penanggung jawab</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Tindakan sementara</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished">tidak ada yang tercatat</translation>
    </message>
    <message>
        <source>View the photographs</source>
        <translation type="unfinished">Lihat foto</translation>
    </message>
    <message>
        <source>Earlier results of this door</source>
        <translation type="unfinished">Hasil terdahulu pintu ini</translation>
    </message>
    <message>
        <source>Request retest</source>
        <translation type="unfinished">Minta uji ulang</translation>
    </message>
    <message>
        <source>Reinstate</source>
        <translation type="unfinished">Aktifkan lagi</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation type="unfinished">Tidak ada yang dipilih</translation>
    </message>
    <message>
        <source>Checks that are not in order become items once written up.</source>
        <translation type="unfinished">Pemeriksaan yang tidak baik menjadi temuan setelah ditulis.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ItemSheets</name>
    <message>
        <source>Action code, as the officer wrote it (published lists; deficiency %1)</source>
        <translation type="unfinished">Kode tindakan, seperti ditulis petugas (daftar terbitan; defisiensi %1)</translation>
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
        <source>What was done at door %1?</source>
        <translation type="unfinished">Apa yang dilakukan di pintu %1?</translation>
    </message>
    <message>
        <source>Why is it withdrawn?</source>
        <translation type="unfinished">Mengapa ditarik?</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation type="unfinished">Pilih</translation>
    </message>
    <message>
        <source>Port State control</source>
        <translation type="unfinished">Port State Control (PSC)</translation>
    </message>
    <message>
        <source>Ground for detention? Recorded separately: regimes differ in which code shows it.</source>
        <translation type="unfinished">Dasar penahanan? Dicatat terpisah: setiap rezim memakai kode yang berbeda untuk itu.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished">Simpan</translation>
    </message>
    <message>
        <source>Due date</source>
        <translation type="unfinished">Tanggal tenggat</translation>
    </message>
    <message>
        <source>Interim measure</source>
        <translation type="unfinished">Tindakan sementara</translation>
    </message>
    <message>
        <source>Assigned to</source>
        <translation type="unfinished">Penanggung jawab</translation>
    </message>
    <message>
        <source>Who rectified it?</source>
        <translation type="unfinished">Siapa yang melakukan perbaikan?</translation>
    </message>
    <message>
        <source>Whoever rectifies cannot retest: the item closes when someone else finds it in order.</source>
        <translation type="unfinished">Yang melakukan perbaikan tidak boleh melakukan uji ulang: temuan ditutup bila orang lain mendapatinya baik.</translation>
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
        <source>other boundaries</source>
        <translation type="unfinished">pembatas lain</translation>
    </message>
    <message>
        <source>bulkhead open</source>
        <translation type="unfinished">sekat terbuka</translation>
    </message>
    <message>
        <source>not yet proven</source>
        <translation type="unfinished">belum terbukti</translation>
    </message>
    <message>
        <source>several doors</source>
        <translation type="unfinished">beberapa pintu</translation>
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
        <source>Put aside…</source>
        <translation type="unfinished">Sisihkan…</translation>
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
    <message>
        <source>View only: another program is writing to this register (%1).</source>
        <translation type="unfinished">Hanya lihat: program lain sedang menulis ke register ini (%1).</translation>
    </message>
    <message>
        <source>Put the refused entries aside?</source>
        <translation type="unfinished">Sisihkan entri yang ditolak?</translation>
    </message>
    <message>
        <source>The register does not accept this. Once put aside, it is kept in a file beside the register and does not count. Record again what still applies.</source>
        <translation type="unfinished">Register tidak menerima ini. Setelah disisihkan, entri disimpan dalam berkas di samping register dan tidak dihitung. Catat lagi yang masih berlaku.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::OpenItemList</name>
    <message>
        <source>Needs attention</source>
        <translation type="unfinished">Perlu perhatian</translation>
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
        <source>All %1 open items ›</source>
        <translation type="unfinished">Semua %1 temuan terbuka ›</translation>
    </message>
    <message>
        <source>None yet: no door has been tested.</source>
        <translation type="unfinished">Belum ada: belum ada pintu yang diuji.</translation>
    </message>
    <message>
        <source>None: no door is unsatisfactory or undecided.</source>
        <translation type="unfinished">Tidak ada: tidak satu pun pintu tidak memuaskan atau belum pasti.</translation>
    </message>
    <message>
        <source>1 needs attention</source>
        <translation type="unfinished">1 perlu perhatian</translation>
    </message>
    <message>
        <source>%1 need attention</source>
        <translation type="unfinished">%1 perlu perhatian</translation>
    </message>
    <message>
        <source>1 open item ›</source>
        <translation type="unfinished">1 temuan terbuka ›</translation>
    </message>
    <message>
        <source>Open items ›</source>
        <translation type="unfinished">Temuan terbuka ›</translation>
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
        <source>Verdict: %1. Press for the reasons</source>
        <translation type="unfinished">Hasil: %1. Tekan untuk alasannya</translation>
    </message>
    <message>
        <source>Doors in this boundary</source>
        <translation type="unfinished">Pintu di pembatas ini</translation>
    </message>
    <message>
        <source>Photograph, note, could not test, from paper</source>
        <translation type="unfinished">Foto, catatan, tak dapat diuji, dari kertas</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PasswordForm</name>
    <message>
        <source>The instructor has locked this exercise. Enter the password to open it.</source>
        <translation type="unfinished">Instruktur telah mengunci soal latihan ini. Masukkan kata sandi untuk membukanya.</translation>
    </message>
    <message>
        <source>password</source>
        <translation type="unfinished">kata sandi</translation>
    </message>
    <message>
        <source>Password</source>
        <translation type="unfinished">Kata sandi</translation>
    </message>
    <message>
        <source>Show password</source>
        <translation type="unfinished">Tampilkan kata sandi</translation>
    </message>
    <message>
        <source>Open the exercise ›</source>
        <translation type="unfinished">Buka soal latihan ›</translation>
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
        <source>Type the name, then touch this person&apos;s role.</source>
        <translation type="unfinished">Ketik namanya, lalu sentuh peran orang ini.</translation>
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
        <source>The picture is not on this tablet: import it from the tablet that took it.</source>
        <translation type="unfinished">Gambar tidak ada di tablet ini: impor dari tablet yang mengambilnya.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanPage</name>
    <message>
        <source>%1: %2, %3 on foot. First: %4.</source>
        <translation type="unfinished">%1: %2, %3 berjalan kaki. Pertama: %4.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Tambah orang</translation>
    </message>
    <message>
        <source>Ship&apos;s heel</source>
        <translation type="unfinished">Kemiringan kapal</translation>
    </message>
    <message>
        <source>How many of these</source>
        <translation type="unfinished">Berapa di antaranya</translation>
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
        <source> %1 shorter than in number order.</source>
        <translation type="unfinished"> %1 lebih pendek daripada menurut urutan nomor.</translation>
    </message>
    <message>
        <source>if none of the %1 fails: %2 confidence that %3</source>
        <translation type="unfinished">jika tidak satu pun dari %1 gagal: keyakinan %2 bahwa %3</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation type="unfinished">Dicatat oleh</translation>
    </message>
    <message>
        <source>Accompanied by</source>
        <translation type="unfinished">Didampingi oleh</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished">Tujuan</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu menutup hanya saran</translation>
    </message>
    <message>
        <source>Safety brief ›</source>
        <translation type="unfinished">Pengarahan keselamatan ›</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Semua</translation>
    </message>
    <message>
        <source>or a random sample, and what it proves</source>
        <translation type="unfinished">atau sampel acak, dan apa yang dibuktikannya</translation>
    </message>
    <message>
        <source>%1 drawn</source>
        <translation type="unfinished">%1 terpilih</translation>
    </message>
    <message>
        <source>No doors in this scope.</source>
        <translation type="unfinished">Tidak ada pintu dalam cakupan ini.</translation>
    </message>
    <message>
        <source>First choose who is recording.</source>
        <translation type="unfinished">Pilih dahulu siapa yang mencatat.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PlanScreen</name>
    <message>
        <source>Plan a walkdown</source>
        <translation type="unfinished">Rencanakan inspeksi</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished">Rencana</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation type="unfinished">Pengarahan</translation>
    </message>
    <message>
        <source>Safety brief</source>
        <translation type="unfinished">Pengarahan keselamatan</translation>
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
        <source>degrees</source>
        <translation type="unfinished">derajat</translation>
    </message>
    <message>
        <source>How many of these %1?</source>
        <translation type="unfinished">Berapa dari %1 ini?</translation>
    </message>
    <message>
        <source>over 1 degree, closing times are advice only</source>
        <translation type="unfinished">di atas 1 derajat, waktu menutup hanya saran</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished">Semua</translation>
    </message>
    <message>
        <source>%1 at random: %2 confidence that at most %3 are defective</source>
        <translation type="unfinished">%1 secara acak: keyakinan %2 bahwa maksimal %3 cacat</translation>
    </message>
    <message>
        <source>The result is valid only if no door of the sample fails. The doors are spread over zones and kinds and drawn at random; hand-picked doors prove nothing about the rest. A sample never replaces a test that the flag or the rules require of every door.</source>
        <translation type="unfinished">Hasilnya hanya sah bila tidak satu pun pintu dalam sampel gagal. Pintu tersebar atas zona dan jenis dan dipilih secara acak; pintu yang dipilih sendiri tidak membuktikan apa pun tentang sisanya. Sampel tidak pernah menggantikan uji yang disyaratkan negara bendera atau aturan bagi setiap pintu.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeCover</name>
    <message>
        <source>PRACTICE</source>
        <translation type="unfinished">PRAKTIK</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeFrame</name>
    <message>
        <source>At the door</source>
        <translation type="unfinished">Di pintu</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Akhiri dan evaluasi</translation>
    </message>
    <message>
        <source>PRACTICE: simulated doors, nothing here is a record</source>
        <translation type="unfinished">PRAKTIK: pintu simulasi, tidak ada catatan sungguhan di sini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeOffer</name>
    <message>
        <source>From practice</source>
        <translation type="unfinished">Dari praktik</translation>
    </message>
    <message>
        <source>Use these figures</source>
        <translation type="unfinished">Pakai angka ini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::PracticeScreen</name>
    <message>
        <source>Practice</source>
        <translation type="unfinished">Praktik</translation>
    </message>
    <message>
        <source>Not opened</source>
        <translation type="unfinished">Tidak dibuka</translation>
    </message>
    <message>
        <source>Exercises</source>
        <translation type="unfinished">Soal latihan</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished">Kemajuan</translation>
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
        <source>There is no exercise on this tablet. Import one.</source>
        <translation type="unfinished">Tidak ada soal latihan di tablet ini. Impor satu.</translation>
    </message>
    <message>
        <source>Import an exercise</source>
        <translation type="unfinished">Impor soal latihan</translation>
    </message>
    <message>
        <source>simulated doors; nothing here is a record</source>
        <translation type="unfinished">pintu simulasi; tidak ada catatan sungguhan di sini</translation>
    </message>
    <message>
        <source>Unfinished exercise</source>
        <translation type="unfinished">Soal latihan belum selesai</translation>
    </message>
    <message>
        <source>%1, begun %2 at %3. What you recorded is kept; the doors are as they were at the start.</source>
        <translation type="unfinished">%1, dimulai %2 pukul %3. Yang Anda catat tersimpan; pintu kembali seperti pada awalnya.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Lanjutkan</translation>
    </message>
    <message>
        <source>Not imported: one error</source>
        <translation type="unfinished">Tidak diimpor: satu kesalahan</translation>
    </message>
    <message>
        <source>Not imported: %1 errors</source>
        <translation type="unfinished">Tidak diimpor: %1 kesalahan</translation>
    </message>
    <message>
        <source>Exercise imported</source>
        <translation type="unfinished">Soal latihan diimpor</translation>
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
        <source>One exercise. </source>
        <translation type="unfinished">Satu soal latihan. </translation>
    </message>
    <message>
        <source>%1 exercises. </source>
        <translation type="unfinished">%1 soal latihan. </translation>
    </message>
    <message>
        <source>People endangered: %1.</source>
        <translation type="unfinished">Orang terancam bahaya: %1.</translation>
    </message>
    <message>
        <source>no name</source>
        <translation type="unfinished">tanpa nama</translation>
    </message>
    <message>
        <source>No one has practised on this tablet yet. Each finished exercise adds its score and reaction times here.</source>
        <translation type="unfinished">Belum ada yang berpraktik di tablet ini. Setiap soal latihan yang selesai menambahkan nilai dan waktu reaksinya di sini.</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 reported but absent. </source>
        <translation type="unfinished">%1 dari %2 cacat ditemukan, %3 dilaporkan tetapi tidak ada. </translation>
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
        <source>Progress</source>
        <translation type="unfinished">Kemajuan</translation>
    </message>
    <message>
        <source>Score of each exercise</source>
        <translation type="unfinished">Skor setiap soal latihan</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished">%1 %</translation>
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
    <message>
        <source>exam pass mark %1 %</source>
        <translation type="unfinished">nilai lulus ujian %1 %</translation>
    </message>
    <message>
        <source>Reaction, ms:</source>
        <translation type="unfinished">Reaksi, ms:</translation>
    </message>
    <message>
        <source>, %1 %2, scatter %3 ms</source>
        <translation type="unfinished">, %1 %2, sebaran %3 ms</translation>
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
        <source>Nothing is open.</source>
        <translation type="unfinished">Tidak ada yang terbuka.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">Siapa Anda?</translation>
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
        <source>Open only</source>
        <translation type="unfinished">Hanya yang terbuka</translation>
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
        <source>‹ Open items</source>
        <translation type="unfinished">‹ Temuan terbuka</translation>
    </message>
    <message>
        <source>Open it ›</source>
        <translation type="unfinished">Buka ›</translation>
    </message>
    <message>
        <source>Documents ›</source>
        <translation type="unfinished">Dokumen ›</translation>
    </message>
    <message>
        <source>Who, documents, handover ›</source>
        <translation type="unfinished">Siapa, dokumen, serah terima ›</translation>
    </message>
    <message>
        <source>Who, documents ›</source>
        <translation type="unfinished">Siapa, dokumen ›</translation>
    </message>
    <message>
        <source>Nothing is open yet. %1 checks are not in order and not written up.</source>
        <translation type="unfinished">Belum ada yang terbuka. %1 pemeriksaan tidak baik dan belum ditulis.</translation>
    </message>
    <message>
        <source>Recorded by: %1</source>
        <translation type="unfinished">Dicatat oleh: %1</translation>
    </message>
    <message>
        <source>Conflicts (%1)</source>
        <translation type="unfinished">Pertentangan (%1)</translation>
    </message>
    <message>
        <source>Show closed (%1)</source>
        <translation type="unfinished">Lihat yang ditutup (%1)</translation>
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
        <source>Better than before</source>
        <translation type="unfinished">Lebih baik daripada sebelumnya</translation>
    </message>
    <message>
        <source>Two walkdowns side by side</source>
        <translation type="unfinished">Dua inspeksi berdampingan</translation>
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
        <source>Decide</source>
        <translation type="unfinished">Putuskan</translation>
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
        <translation type="unfinished">Mengapa itu berlaku?</translation>
    </message>
    <message>
        <source>This device&apos;s key</source>
        <translation type="unfinished">Kunci perangkat ini</translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished">Tampilkan</translation>
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
        <source>From %1</source>
        <translation type="unfinished">Dari %1</translation>
    </message>
    <message>
        <source>%1, as %2, %3 %4: </source>
        <translation type="unfinished">%1, sebagai %2, %3 %4: </translation>
    </message>
    <message>
        <source>Deficiency list</source>
        <translation type="unfinished">Daftar defisiensi</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation type="unfinished">Daftar kerja</translation>
    </message>
    <message>
        <source>Door record</source>
        <translation type="unfinished">Catatan pintu</translation>
    </message>
    <message>
        <source>Survey report</source>
        <translation type="unfinished">Laporan survei</translation>
    </message>
    <message>
        <source>Blank form</source>
        <translation type="unfinished">Formulir kosong</translation>
    </message>
    <message>
        <source>Nothing to sign yet</source>
        <translation type="unfinished">Belum ada yang ditandatangani</translation>
    </message>
    <message>
        <source>Sign a walkdown</source>
        <translation type="unfinished">Tanda tangani inspeksi</translation>
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
        <source>%1, %2</source>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>Add a person</source>
        <translation type="unfinished">Tambah orang</translation>
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
        <source>%1, %2: %3</source>
        <translation type="unfinished">%1, %2: %3</translation>
    </message>
    <message>
        <source>, closing %1</source>
        <translation type="unfinished">, menutup %1</translation>
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
        <source>Rule book</source>
        <translation type="unfinished">Buku aturan</translation>
    </message>
    <message>
        <source>Cleared: in order again</source>
        <translation type="unfinished">Beres: baik lagi</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation type="unfinished">tidak diuji</translation>
    </message>
    <message>
        <source>There are not two walkdowns to compare yet.</source>
        <translation type="unfinished">Belum ada dua inspeksi untuk dibandingkan.</translation>
    </message>
    <message>
        <source>%1 · %2: %3, was %4</source>
        <translation type="unfinished">%1 · %2: %3, dahulu %4</translation>
    </message>
    <message>
        <source>Nothing tested in both walkdowns has changed by more than the uncertainty.</source>
        <translation type="unfinished">Yang diuji pada kedua inspeksi tidak ada yang berubah melebihi ketidakpastian.</translation>
    </message>
    <message>
        <source>Conflicting entries: choose which stands; both stay on record</source>
        <translation type="unfinished">Entri yang bertentangan: pilih yang berlaku; keduanya tetap tercatat</translation>
    </message>
    <message>
        <source>No conflicting entries.</source>
        <translation type="unfinished">Tidak ada entri yang bertentangan.</translation>
    </message>
    <message>
        <source>Which entry stands? The later one is shown until you decide.</source>
        <translation type="unfinished">Entri mana yang berlaku? Yang lebih baru ditampilkan sampai Anda memutuskan.</translation>
    </message>
    <message>
        <source>Handover between tablets and the bridge</source>
        <translation type="unfinished">Serah terima antara tablet dan anjungan</translation>
    </message>
    <message>
        <source>Export everything to a file</source>
        <translation type="unfinished">Ekspor semuanya ke berkas</translation>
    </message>
    <message>
        <source>entries, photographs and arrangement, signed by this device</source>
        <translation type="unfinished">entri, foto, dan susunan, ditandatangani perangkat ini</translation>
    </message>
    <message>
        <source>Export</source>
        <translation type="unfinished">Ekspor</translation>
    </message>
    <message>
        <source>only that device can open it; you need its key</source>
        <translation type="unfinished">hanya perangkat itu dapat membukanya; Anda perlu kuncinya</translation>
    </message>
    <message>
        <source>Import another device&apos;s file</source>
        <translation type="unfinished">Impor berkas perangkat lain</translation>
    </message>
    <message>
        <source>it is checked first; nothing already here changes</source>
        <translation type="unfinished">diperiksa dahulu; yang sudah ada di sini tidak berubah</translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished">Impor</translation>
    </message>
    <message>
        <source>Not exported</source>
        <translation type="unfinished">Tidak diekspor</translation>
    </message>
    <message>
        <source>Exporting everything to a file</source>
        <translation type="unfinished">Mengekspor semuanya ke berkas</translation>
    </message>
    <message>
        <source>No file was made. Nothing was handed over.</source>
        <translation type="unfinished">Berkas tidak dibuat. Tidak ada yang diserahkan.</translation>
    </message>
    <message>
        <source>Exported</source>
        <translation type="unfinished">Diekspor</translation>
    </message>
    <message>
        <source>The file is at %1</source>
        <translation type="unfinished">Berkas ada di %1</translation>
    </message>
    <message>
        <source>Checking the file</source>
        <translation type="unfinished">Memeriksa berkas</translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation type="unfinished">Tidak ada yang diimpor.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">Tidak diimpor</translation>
    </message>
    <message>
        <source>New in this file</source>
        <translation type="unfinished">Yang baru di berkas ini</translation>
    </message>
    <message>
        <source>Nothing new.</source>
        <translation type="unfinished">Tidak ada yang baru.</translation>
    </message>
    <message>
        <source>The sending device is not known here yet. Ask whoever gave you the file to read out the fingerprint of its key. It must be:
%1</source>
        <translation type="unfinished">Perangkat pengirim belum dikenal di sini. Minta pemberi berkas membacakan sidik kuncinya. Harus sama dengan:
%1</translation>
    </message>
    <message>
        <source>Fingerprint matches: accept and import</source>
        <translation type="unfinished">Sidik cocok: terima dan impor</translation>
    </message>
    <message>
        <source>Do not import</source>
        <translation type="unfinished">Jangan impor</translation>
    </message>
    <message>
        <source>Importing the file</source>
        <translation type="unfinished">Mengimpor berkas</translation>
    </message>
    <message>
        <source>Nothing was imported. Everything here is as it was.</source>
        <translation type="unfinished">Tidak ada yang diimpor. Semua di sini tetap seperti semula.</translation>
    </message>
    <message>
        <source>NOT VALID: %1</source>
        <translation type="unfinished">TIDAK SAH: %1</translation>
    </message>
    <message>
        <source>%1 entries, unchanged</source>
        <translation type="unfinished">%1 entri, tidak berubah</translation>
    </message>
    <message>
        <source>; %1 came later and are not covered</source>
        <translation type="unfinished">; %1 datang kemudian dan tidak tercakup</translation>
    </message>
    <message>
        <source>Documents, as PDF</source>
        <translation type="unfinished">Dokumen, sebagai PDF</translation>
    </message>
    <message>
        <source>Create</source>
        <translation type="unfinished">Buat</translation>
    </message>
    <message>
        <source>Create: %1</source>
        <translation type="unfinished">Buat: %1</translation>
    </message>
    <message>
        <source>There is no walkdown yet: only the blank form and the rule book can be created.</source>
        <translation type="unfinished">Belum ada inspeksi: hanya formulir kosong dan buku aturan yang dapat dibuat.</translation>
    </message>
    <message>
        <source>for the master: what is open, its effect, interim measures</source>
        <translation type="unfinished">untuk nakhoda: yang terbuka, akibatnya, tindakan sementara</translation>
    </message>
    <message>
        <source>for the crew: by person assigned, with boxes to tick</source>
        <translation type="unfinished">untuk awak: menurut penanggung jawab, dengan kotak centang</translation>
    </message>
    <message>
        <source>Door record: %1</source>
        <translation type="unfinished">Catatan pintu: %1</translation>
    </message>
    <message>
        <source>one page: particulars, results, rectifications</source>
        <translation type="unfinished">satu halaman: data pokok, hasil, perbaikan</translation>
    </message>
    <message>
        <source>the walkdown shown: every door, every check</source>
        <translation type="unfinished">inspeksi yang ditampilkan: setiap pintu, setiap pemeriksaan</translation>
    </message>
    <message>
        <source>what the tablet asks, to be filled in by hand</source>
        <translation type="unfinished">yang ditanyakan tablet, untuk diisi dengan tangan</translation>
    </message>
    <message>
        <source>every requirement with its limit, dates, exemptions and text, and where it applies aboard</source>
        <translation type="unfinished">setiap persyaratan dengan batas, tanggal, pengecualian, dan teksnya, dan di mana berlaku di kapal</translation>
    </message>
    <message>
        <source>A walkdown can be signed once it has ended.</source>
        <translation type="unfinished">Inspeksi dapat ditandatangani setelah diakhiri.</translation>
    </message>
    <message>
        <source>No one has signed it yet.</source>
        <translation type="unfinished">Belum ada yang menandatanganinya.</translation>
    </message>
    <message>
        <source>A signature covers everything recorded of this walkdown so far, under this device&apos;s key. It is not a qualified electronic signature: sign the paper as well where your Administration requires it.</source>
        <translation type="unfinished">Tanda tangan mencakup semua yang tercatat dari inspeksi ini sejauh ini, dengan kunci perangkat ini. Ini bukan tanda tangan elektronik tersertifikasi: tandatangani juga kertasnya bila Administrasi Anda mensyaratkannya.</translation>
    </message>
    <message>
        <source>The signature is kept and will be saved automatically in a moment.</source>
        <translation type="unfinished">Tanda tangan disimpan dan sebentar lagi tersimpan otomatis.</translation>
    </message>
    <message>
        <source>Who are you?</source>
        <translation type="unfinished">Siapa Anda?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Orang lain</translation>
    </message>
    <message>
        <source>Checks not in order and not written up</source>
        <translation type="unfinished">Pemeriksaan tidak baik dan belum ditulis</translation>
    </message>
    <message>
        <source>History of door %1</source>
        <translation type="unfinished">Riwayat pintu %1</translation>
    </message>
    <message>
        <source>Walkdowns of this door, latest first</source>
        <translation type="unfinished">Inspeksi pintu ini, terbaru dahulu</translation>
    </message>
    <message>
        <source>Timing history</source>
        <translation type="unfinished">Riwayat waktu</translation>
    </message>
    <message>
        <source>Nothing has been recorded for this door yet.</source>
        <translation type="unfinished">Belum ada yang tercatat untuk pintu ini.</translation>
    </message>
    <message>
        <source>Language of the document</source>
        <translation type="unfinished">Bahasa dokumen</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a translation.</source>
        <translation type="unfinished">Yang ditandatangani adalah catatan berbahasa Inggris. Dokumen dalam bahasa lain ditandai sebagai terjemahan.</translation>
    </message>
    <message>
        <source>What is signed is the English record. A document in another language is marked as a machine translation, not yet checked.</source>
        <translation type="unfinished">Yang ditandatangani adalah catatan berbahasa Inggris. Dokumen dalam bahasa lain ditandai sebagai terjemahan mesin, belum diperiksa.</translation>
    </message>
    <message>
        <source>Export for one device only</source>
        <translation type="unfinished">Ekspor untuk satu perangkat saja</translation>
    </message>
    <message>
        <source>for a file that only this device can open</source>
        <translation type="unfinished">untuk berkas yang hanya dapat dibuka perangkat ini</translation>
    </message>
    <message>
        <source>Export for which device?</source>
        <translation type="unfinished">Ekspor untuk perangkat mana?</translation>
    </message>
    <message>
        <source>Export for that device</source>
        <translation type="unfinished">Ekspor untuk perangkat itu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RowPager</name>
    <message>
        <source>%1 to %2 of %3</source>
        <translation type="unfinished">%1–%2 dari %3</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1–%2 dari %3</translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation type="unfinished">Halaman sebelumnya</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished">Halaman berikut</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Sebelumnya</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulePage</name>
    <message>
        <source>Print ›</source>
        <translation type="unfinished">Cetak ›</translation>
    </message>
    <message>
        <source>Print the rule book</source>
        <translation type="unfinished">Cetak buku aturan</translation>
    </message>
    <message>
        <source>The requirement in full</source>
        <translation type="unfinished">Persyaratan selengkapnya</translation>
    </message>
    <message>
        <source>‹ List</source>
        <translation type="unfinished">‹ Daftar</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RulesScreen</name>
    <message>
        <source>words, or a citation</source>
        <translation type="unfinished">kata-kata, atau kutipan</translation>
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
        <source>All</source>
        <translation type="unfinished">Semua</translation>
    </message>
    <message>
        <source>No requirement has these words.</source>
        <translation type="unfinished">Tidak ada persyaratan dengan kata-kata ini.</translation>
    </message>
    <message>
        <source>Find requirements by words or citation</source>
        <translation type="unfinished">Cari persyaratan menurut kata atau kutipan</translation>
    </message>
    <message>
        <source>Requirements of the rule book</source>
        <translation type="unfinished">Persyaratan buku aturan</translation>
    </message>
    <message>
        <source>Read ›</source>
        <translation type="unfinished">Baca ›</translation>
    </message>
    <message>
        <source>This vessel</source>
        <translation type="unfinished">Kapal ini</translation>
    </message>
    <message>
        <source>This door</source>
        <translation type="unfinished">Pintu ini</translation>
    </message>
</context>
<context>
    <name>latchround::ui::RunResult</name>
    <message>
        <source>closing time</source>
        <translation type="unfinished">waktu menutup</translation>
    </message>
    <message>
        <source>closing rate</source>
        <translation type="unfinished">kecepatan menutup</translation>
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
        <source>Say why ›</source>
        <translation type="unfinished">Beri alasan ›</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation type="unfinished">Mengapa?</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation type="unfinished">Keduanya benar</translation>
    </message>
    <message>
        <source>Take “%1” back</source>
        <translation type="unfinished">Tarik kembali “%1”</translation>
    </message>
    <message>
        <source>no alarm marked: %1</source>
        <translation type="unfinished">alarm tidak ditandai: %1</translation>
    </message>
    <message>
        <source>All runs of this door: %1 %2: %3</source>
        <translation type="unfinished">Semua uji pintu ini: %1 %2: %3</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart: no leaf moves that fast. Touched by mistake?</source>
        <translation type="unfinished">“%1” dan “%2” hanya berselang %3 s: tidak ada daun pintu bergerak secepat itu. Tersentuh karena keliru?</translation>
    </message>
    <message>
        <source>“%1” and “%2” are only %3 s apart. One touch too many?</source>
        <translation type="unfinished">“%1” dan “%2” hanya berselang %3 s. Satu sentuhan terlalu banyak?</translation>
    </message>
    <message>
        <source>Yes: void the run</source>
        <translation type="unfinished">Ya: batalkan uji ini</translation>
    </message>
    <message>
        <source>Say “%1” now</source>
        <translation type="unfinished">Ucapkan “%1” SEKARANG</translation>
    </message>
    <message>
        <source>Run void</source>
        <translation type="unfinished">Uji batal</translation>
    </message>
    <message>
        <source>Run stopped: recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Uji dihentikan: tercatat, tidak pernah dihitung sebagai pengukuran. Mengapa?</translation>
    </message>
    <message>
        <source>Recorded, never counted as a measurement. Why?</source>
        <translation type="unfinished">Tercatat, tidak pernah dihitung sebagai pengukuran. Mengapa?</translation>
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
        <source>Push the leaf</source>
        <translation type="unfinished">Dorong daun pintu</translation>
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
        <source>Ask the control station what its panel shows</source>
        <translation type="unfinished">Tanya stasiun kontrol apa yang ditunjukkan panelnya</translation>
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
        <source>You open it from side two and let go.</source>
        <translation type="unfinished">Anda membukanya dari sisi dua dan melepaskannya.</translation>
    </message>
    <message>
        <source>You open it from side one and let go.</source>
        <translation type="unfinished">Anda membukanya dari sisi satu dan melepaskannya.</translation>
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
        <source>The whole door</source>
        <translation type="unfinished">Seluruh pintu</translation>
    </message>
    <message>
        <source>It is not shut. Time its closing first.</source>
        <translation type="unfinished">Pintu belum tertutup. Ukur dahulu waktu menutupnya.</translation>
    </message>
    <message>
        <source>You push it hard from the other side.</source>
        <translation type="unfinished">Anda mendorongnya kuat-kuat dari sisi lain.</translation>
    </message>
    <message>
        <source>The way is clear now.</source>
        <translation type="unfinished">Lintasan kini bebas.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation type="unfinished">Uji</translation>
    </message>
    <message>
        <source>Test and ask</source>
        <translation type="unfinished">Uji dan tanya</translation>
    </message>
    <message>
        <source>Close-up</source>
        <translation type="unfinished">Dari dekat</translation>
    </message>
    <message>
        <source>Panel status</source>
        <translation type="unfinished">Status panel</translation>
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
        <source>alarm on</source>
        <translation type="unfinished">alarm nyala</translation>
    </message>
    <message>
        <source>The leaf is moving</source>
        <translation type="unfinished">Daun pintu sedang bergerak</translation>
    </message>
    <message>
        <source>The leaf is shut</source>
        <translation type="unfinished">Daun pintu tertutup</translation>
    </message>
    <message>
        <source>The leaf is open</source>
        <translation type="unfinished">Daun pintu terbuka</translation>
    </message>
    <message>
        <source>The leaf is part open</source>
        <translation type="unfinished">Daun pintu terbuka sebagian</translation>
    </message>
    <message>
        <source>someone is in the opening</source>
        <translation type="unfinished">ada orang di bukaan</translation>
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
        <translation type="unfinished">1 orang terancam bahaya</translation>
    </message>
    <message>
        <source>%1 people endangered</source>
        <translation type="unfinished">%1 orang terancam bahaya</translation>
    </message>
    <message>
        <source>Passed: %1 % required</source>
        <translation type="unfinished">Lulus: perlu %1 %</translation>
    </message>
    <message>
        <source>Not passed: %1 % required</source>
        <translation type="unfinished">Tidak lulus: perlu %1 %</translation>
    </message>
    <message>
        <source>%1 of %2 checks graded correctly</source>
        <translation type="unfinished">%1 dari %2 pemeriksaan dinilai benar</translation>
    </message>
    <message>
        <source>1 caution falsely confirmed</source>
        <translation type="unfinished">1 syarat aman dikonfirmasi keliru</translation>
    </message>
    <message>
        <source>%1 cautions falsely confirmed</source>
        <translation type="unfinished">%1 syarat aman dikonfirmasi keliru</translation>
    </message>
    <message>
        <source>Half for checks graded correctly, half for faults found, out of all that were there or reported. Ten points off for each person endangered and each caution falsely confirmed.</source>
        <translation type="unfinished">Separuh untuk pemeriksaan yang dinilai benar, separuh untuk cacat yang ditemukan, dari semua yang ada atau dilaporkan. Sepuluh poin dikurangi untuk setiap orang yang terancam bahaya dan setiap syarat aman yang dikonfirmasi keliru.</translation>
    </message>
    <message>
        <source>Score: %1 per cent</source>
        <translation type="unfinished">Nilai: %1 persen</translation>
    </message>
    <message>
        <source>%1 of %2 faults found, %3 false</source>
        <translation type="unfinished">%1 dari %2 cacat ditemukan, %3 palsu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::SettingsSheet</name>
    <message>
        <source>Light</source>
        <translation type="unfinished">Cahaya</translation>
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
        <source>When a mark is taken</source>
        <translation type="unfinished">Saat tanda diambil</translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished">Satuan</translation>
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
        <source>When a figure passes</source>
        <translation type="unfinished">Kapan angka lulus</translation>
    </message>
    <message>
        <source>Rules of this vessel</source>
        <translation type="unfinished">Aturan kapal ini</translation>
    </message>
    <message>
        <source>Night keeps eyes adapted to a dark bridge.</source>
        <translation type="unfinished">Malam menjaga mata tetap terbiasa dengan anjungan yang gelap.</translation>
    </message>
    <message>
        <source>Of text and keys; what no longer fits moves to a page of its own.</source>
        <translation type="unfinished">Teks dan tombol; yang tidak lagi muat pindah ke halaman tersendiri.</translation>
    </message>
    <message>
        <source>A click and a vibration, where this device has them.</source>
        <translation type="unfinished">Bunyi klik dan getaran, bila ada pada perangkat ini.</translation>
    </message>
    <message>
        <source>Click and vibrate</source>
        <translation type="unfinished">Klik dan getar</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation type="unfinished">Senyap</translation>
    </message>
    <message>
        <source>Limits also keep the unit of the rule text, beside the figure.</source>
        <translation type="unfinished">Batas juga menampilkan satuan dari teks aturan, di samping angkanya.</translation>
    </message>
    <message>
        <source>In a plan, first choose who is recording: times depend on it.</source>
        <translation type="unfinished">Di suatu rencana, pilih dahulu siapa yang mencatat: waktu bergantung padanya.</translation>
    </message>
    <message>
        <source>Timing drill</source>
        <translation type="unfinished">Uji reaksi</translation>
    </message>
    <message>
        <source>Catalogue only; no flag rules added.</source>
        <translation type="unfinished">Hanya katalog; tanpa tambahan aturan negara bendera.</translation>
    </message>
    <message>
        <source>The rules of %1 take precedence over the catalogue.</source>
        <translation type="unfinished">Aturan %1 didahulukan atas katalog.</translation>
    </message>
    <message>
        <source>Import flag rules</source>
        <translation type="unfinished">Impor aturan bendera</translation>
    </message>
    <message>
        <source>Catalogue only</source>
        <translation type="unfinished">Hanya katalog</translation>
    </message>
    <message>
        <source>Leaf drawings</source>
        <translation type="unfinished">Gambar daun pintu</translation>
    </message>
    <message>
        <source>How drawn leaves move as a door closes.</source>
        <translation type="unfinished">Cara daun pintu dalam gambar bergerak saat pintu menutup.</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation type="unfinished">Mulus</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation type="unfinished">Bertahap</translation>
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
        <source>%1 of %2</source>
        <translation type="unfinished">%1 dari %2</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Sebelumnya</translation>
    </message>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
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
        <source>‹ Marks</source>
        <translation type="unfinished">‹ Tanda</translation>
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
        <source>This run is void: run again</source>
        <translation type="unfinished">Uji ini batal: ulangi</translation>
    </message>
    <message>
        <source>Show the side marks</source>
        <translation type="unfinished">Tampilkan tanda sisi</translation>
    </message>
    <message>
        <source>Show take back and void</source>
        <translation type="unfinished">Tampilkan urungkan dan batal</translation>
    </message>
    <message>
        <source>Void</source>
        <translation type="unfinished">Batal</translation>
    </message>
    <message>
        <source>Void,
run again</source>
        <translation type="unfinished">Uji batal,
ulangi</translation>
    </message>
    <message>
        <source>Correct ›</source>
        <translation type="unfinished">Koreksi ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::StageKeys</name>
    <message>
        <source>Next ›</source>
        <translation type="unfinished">Lanjut ›</translation>
    </message>
    <message>
        <source>‹ Previous</source>
        <translation type="unfinished">‹ Sebelumnya</translation>
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
        <translation type="unfinished">Gaya menutup di tepi, dengan neraca pegas</translation>
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
        <source>Fire tables</source>
        <translation type="unfinished">Tabel kebakaran</translation>
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
        <source>not yet measured</source>
        <translation type="unfinished">belum diukur</translation>
    </message>
    <message>
        <source>not yet read</source>
        <translation type="unfinished">belum dibaca</translation>
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
        <source>What class does the boundary require?</source>
        <translation type="unfinished">Kelas apa yang disyaratkan pembatas?</translation>
    </message>
    <message>
        <source>Tested by %1, %2 at %3</source>
        <translation type="unfinished">Diuji oleh %1, %2 pukul %3</translation>
    </message>
    <message>
        <source>not yet tested</source>
        <translation type="unfinished">belum diuji</translation>
    </message>
    <message>
        <source>%1 degrees: over 1 degree, times are advice only</source>
        <translation type="unfinished">%1 derajat: di atas 1 derajat, waktu hanya saran</translation>
    </message>
    <message>
        <source>Type y, n or a: yes, no or n/a for the check with the bar.</source>
        <translation type="unfinished">Ketik y, n, atau a: ya, tidak, atau t/b untuk pemeriksaan yang bergaris.</translation>
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
        <translation type="unfinished"> · syarat aman dikonfirmasi oleh %1</translation>
    </message>
    <message>
        <source>Door %1 · run %2</source>
        <translation type="unfinished">Pintu %1 · uji %2</translation>
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
        <translation type="unfinished">Daun pintu bergerak</translation>
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
        <source>Late
alarm</source>
        <translation type="unfinished">Alarm
terlambat</translation>
    </message>
    <message>
        <source>no marks yet</source>
        <translation type="unfinished">belum ada tanda</translation>
    </message>
    <message>
        <source>Alarm off</source>
        <translation type="unfinished">Alarm mati</translation>
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
        <source>Since the repair of about %1: </source>
        <translation type="unfinished">Sejak perbaikan sekitar %1: </translation>
    </message>
    <message>
        <source>%1, changing by %2 a year. </source>
        <translation type="unfinished">%1, berubah %2 per tahun. </translation>
    </message>
    <message>
        <source>One timing</source>
        <translation type="unfinished">Satu pengukuran waktu</translation>
    </message>
    <message>
        <source>%1 timings</source>
        <translation type="unfinished">%1 pengukuran waktu</translation>
    </message>
    <message>
        <source>%1 so far, too few to predict from: five over at least a year are needed.</source>
        <translation type="unfinished">%1 sejauh ini, terlalu sedikit untuk meramalkan: perlu lima dalam kurun minimal satu tahun.</translation>
    </message>
    <message>
        <source>Expect a result beyond %1 now: the 95 % interval already reaches it.</source>
        <translation type="unfinished">Perkirakan hasil melewati %1 sekarang: interval 95 % sudah mencapainya.</translation>
    </message>
    <message>
        <source>The 95 % interval first reaches %1 in %2: have the door serviced before then.</source>
        <translation type="unfinished">Interval 95 % pertama kali mencapai %1 pada %2: servislah pintu sebelum itu.</translation>
    </message>
    <message>
        <source>No limit is reached by %1; these timings say nothing beyond that.</source>
        <translation type="unfinished">Tidak ada batas yang tercapai sampai %1; pengukuran waktu ini tidak mengatakan apa pun sesudahnya.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::TypedRun</name>
    <message>
        <source>Were the cautions ticked on the paper?</source>
        <translation type="unfinished">Apakah syarat aman dicentang pada kertas?</translation>
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
        <source>from “%1” to “%2”</source>
        <translation type="unfinished">dari “%1” sampai “%2”</translation>
    </message>
    <message>
        <source>s</source>
        <translation type="unfinished">s</translation>
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
        <source>From paper: release %1</source>
        <translation type="unfinished">Dari kertas: pelepasan %1</translation>
    </message>
    <message>
        <source>No leaf moves that fast. Check the figure and type it again.</source>
        <translation type="unfinished">Tidak ada daun pintu bergerak secepat itu. Periksa angkanya dan ketik lagi.</translation>
    </message>
    <message>
        <source>Yes: type the seconds</source>
        <translation type="unfinished">Ya: ketik detiknya</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictList</name>
    <message>
        <source>Door %1: %2, %3</source>
        <translation type="unfinished">Pintu %1: %2, %3</translation>
    </message>
    <message>
        <source>Checks at this door, worst first</source>
        <translation type="unfinished">Pemeriksaan di pintu ini, terburuk dahulu</translation>
    </message>
</context>
<context>
    <name>latchround::ui::VerdictRows</name>
    <message>
        <source>press Return for the reason</source>
        <translation type="unfinished">tekan Return untuk alasannya</translation>
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
        <translation type="unfinished">Praktik ›</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation type="unfinished">Yang jatuh tempo</translation>
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
        <source>Import a register (CSV)</source>
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
        <source>Look at the doors ›</source>
        <translation type="unfinished">Lihat pintu-pintunya ›</translation>
    </message>
    <message>
        <source>SAT</source>
        <translation type="unfinished">BAIK</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation type="unfinished">belum pasti</translation>
    </message>
    <message>
        <source>UNSAT</source>
        <translation type="unfinished">TIDAK BAIK</translation>
    </message>
    <message>
        <source>This register lists no doors yet, so no walkdown can begin. Import one that lists them.</source>
        <translation type="unfinished">Register ini belum mencantumkan pintu, jadi inspeksi tidak dapat dimulai. Impor register yang mencantumkannya.</translation>
    </message>
    <message>
        <source>Nothing has been tested yet with this register. A walkdown begins with a plan: who, which doors, in what order.</source>
        <translation type="unfinished">Belum ada yang diuji dengan register ini. Inspeksi dimulai dengan rencana: siapa, pintu mana, dalam urutan apa.</translation>
    </message>
    <message>
        <source>Last walkdown: %1, %2. Ended %3</source>
        <translation type="unfinished">Inspeksi terakhir: %1, %2. Diakhiri %3</translation>
    </message>
    <message>
        <source>Import a register ›</source>
        <translation type="unfinished">Impor register ›</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WalkedSheets</name>
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
        <source>From paper: who tested the door?</source>
        <translation type="unfinished">Dari kertas: siapa yang menguji pintu?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished">Orang lain</translation>
    </message>
    <message>
        <source>ship&apos;s time at this door, hours and minutes: 1432 is 14:32</source>
        <translation type="unfinished">waktu kapal di pintu ini, jam dan menit: 1432 adalah 14:32</translation>
    </message>
    <message>
        <source>That is in the future.</source>
        <translation type="unfinished">Itu di masa depan.</translation>
    </message>
    <message>
        <source>That is not a valid time.</source>
        <translation type="unfinished">Itu bukan waktu yang sah.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::WhyPanel</name>
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
        <translation type="unfinished">Mengapa hasil ini</translation>
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
        <source>Text</source>
        <translation type="unfinished">Teks</translation>
    </message>
    <message>
        <source>%1; a rule of %2</source>
        <translation type="unfinished">%1; aturan %2</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished">Alasan: %1</translation>
    </message>
    <message>
        <source>You decide. Give the reason first:</source>
        <translation type="unfinished">Anda putuskan. Beri alasannya dahulu:</translation>
    </message>
    <message>
        <source>What would decide it</source>
        <translation type="unfinished">Apa yang akan memutuskannya</translation>
    </message>
    <message>
        <source>Applies because</source>
        <translation type="unfinished">Berlaku karena</translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished">Sumber</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished">Keparahan</translation>
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
        <translation type="unfinished">PRAKTIK · %1 · Latchround</translation>
    </message>
    <message>
        <source>End this exercise?</source>
        <translation type="unfinished">Akhiri soal latihan ini?</translation>
    </message>
    <message>
        <source>Every door is done.</source>
        <translation type="unfinished">Semua pintu selesai.</translation>
    </message>
    <message>
        <source>End and debrief</source>
        <translation type="unfinished">Akhiri dan evaluasi</translation>
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
        <source>Later</source>
        <translation type="unfinished">Nanti</translation>
    </message>
    <message>
        <source>When a figure passes or fails</source>
        <translation type="unfinished">Kapan angka lulus atau gagal</translation>
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
        <source>Register CSV (*.csv)</source>
        <translation type="unfinished">Register CSV (*.csv)</translation>
    </message>
    <message>
        <source>Rules (*.json)</source>
        <translation type="unfinished">Aturan (*.json)</translation>
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
        <source>Not shown</source>
        <translation type="unfinished">Tidak ditampilkan</translation>
    </message>
    <message>
        <source>Handover files (*.zip)</source>
        <translation type="unfinished">Berkas serah terima (*.zip)</translation>
    </message>
    <message>
        <source>device %1, %2 %3</source>
        <translation type="unfinished">perangkat %1, %2 %3</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation type="unfinished">Soal latihan (*.json)</translation>
    </message>
    <message>
        <source>Not recorded</source>
        <translation type="unfinished">Tidak dicatat</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation type="unfinished">Tutup program?</translation>
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
        <source>%1 entries are NOT saved and could not be kept elsewhere. Closing the program loses them.</source>
        <translation type="unfinished">%1 entri TIDAK tersimpan dan tidak dapat disimpan di tempat lain. Menutup program akan menghilangkannya.</translation>
    </message>
    <message>
        <source>What you wrote in the open sheet has not been recorded. Closing the program loses it.</source>
        <translation type="unfinished">Yang Anda tulis di lembar yang terbuka belum dicatat. Menutup program akan menghilangkannya.</translation>
    </message>
    <message>
        <source>Do not close</source>
        <translation type="unfinished">Jangan tutup</translation>
    </message>
    <message>
        <source>Close anyway</source>
        <translation type="unfinished">Tetap tutup</translation>
    </message>
    <message>
        <source>%1 of %2 done. What was not tested counts as not found.</source>
        <translation type="unfinished">%1 dari %2 selesai. Yang tidak diuji dihitung sebagai tidak ditemukan.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation type="unfinished">Lanjutkan</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation type="unfinished">Tidak tersimpan</translation>
    </message>
    <message>
        <source>This takes effect when the exercise ends.</source>
        <translation type="unfinished">Ini berlaku setelah soal latihan berakhir.</translation>
    </message>
    <message>
        <source>Whose reaction time?</source>
        <translation type="unfinished">Waktu reaksi siapa?</translation>
    </message>
    <message>
        <source>Plan a walkdown first and say who records it.</source>
        <translation type="unfinished">Rencanakan inspeksi dahulu dan sebutkan siapa yang mencatatnya.</translation>
    </message>
    <message>
        <source>%1 has not done the timing drill on this tablet: published figures apply.</source>
        <translation type="unfinished">%1 belum melakukan uji reaksi pada tablet ini: angka terbitan berlaku.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating since %3.</source>
        <translation type="unfinished">%1 melakukan uji reaksi pada %2; layak diulang sejak %3.</translation>
    </message>
    <message>
        <source>%1 did the timing drill on %2; worth repeating after %3.</source>
        <translation type="unfinished">%1 melakukan uji reaksi pada %2; layak diulang setelah %3.</translation>
    </message>
    <message>
        <source>Not imported</source>
        <translation type="unfinished">Tidak diimpor</translation>
    </message>
    <message>
        <source>Take photograph</source>
        <translation type="unfinished">Ambil foto</translation>
    </message>
    <message>
        <source>Checking the register</source>
        <translation type="unfinished">Memeriksa register</translation>
    </message>
    <message>
        <source>There is no program here that shows PDF files. The file is at %1</source>
        <translation type="unfinished">Tidak ada program di sini yang menampilkan berkas PDF. Berkas ada di %1</translation>
    </message>
    <message>
        <source>Import an instructor&apos;s exercise</source>
        <translation type="unfinished">Impor soal latihan instruktur</translation>
    </message>
    <message>
        <source>Import a flag&apos;s rules</source>
        <translation type="unfinished">Impor aturan negara bendera</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation type="unfinished">1 entri</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation type="unfinished">%1 entri</translation>
    </message>
    <message>
        <source>1 door not known here</source>
        <translation type="unfinished">1 pintu tidak dikenal di sini</translation>
    </message>
    <message>
        <source>%1 doors not known here</source>
        <translation type="unfinished">%1 pintu tidak dikenal di sini</translation>
    </message>
    <message>
        <source>1 conflicting entry to decide</source>
        <translation type="unfinished">1 entri yang bertentangan untuk diputuskan</translation>
    </message>
    <message>
        <source>%1 conflicting entries to decide</source>
        <translation type="unfinished">%1 entri yang bertentangan untuk diputuskan</translation>
    </message>
    <message>
        <source>Export a handover file</source>
        <translation type="unfinished">Ekspor berkas serah terima</translation>
    </message>
    <message>
        <source>Import a handover file</source>
        <translation type="unfinished">Impor berkas serah terima</translation>
    </message>
    <message>
        <source>Import a vessel&apos;s register</source>
        <translation type="unfinished">Impor register kapal</translation>
    </message>
    <message>
        <source>A run is being timed: a leaf may be moving. Closing the program stops the timing, not the leaf.</source>
        <translation type="unfinished">Suatu uji sedang diukur waktunya: daun pintu mungkin sedang bergerak. Menutup program menghentikan pengukuran waktu, bukan daun pintunya.</translation>
    </message>
    <message>
        <source>Records and signatures are in English; documents can also be printed as a translation, marked as one. What you write stays as written.</source>
        <translation type="unfinished">Catatan dan tanda tangan berbahasa Inggris; dokumen juga dapat dicetak sebagai terjemahan, ditandai sebagai terjemahan. Yang Anda tulis tetap seperti ditulis.</translation>
    </message>
</context>
<context>
    <name>latchround::ui::ZoneProfile</name>
    <message>
        <source>door %1 deck %2 %3</source>
        <translation type="unfinished">pintu %1 geladak %2 %3</translation>
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
        <source>All</source>
        <translation type="unfinished">Semua</translation>
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
    <message>
        <source>zoom in</source>
        <translation type="unfinished">perbesar</translation>
    </message>
    <message>
        <source>zoom out</source>
        <translation type="unfinished">perkecil</translation>
    </message>
    <message>
        <source>whole ship</source>
        <translation type="unfinished">seluruh kapal</translation>
    </message>
    <message>
        <source>bulkhead %1 is open: %2</source>
        <translation type="unfinished">sekat %1 terbuka: %2</translation>
    </message>
</context>
</TS>
