<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>A coordinate system that is the frame.</source>
   <translation>Ein Koordinatensystem, das der Bezug ist.</translation>
  </message>
  <message>
   <source>A fretboard glued on, or a neck of one piece.
Default: glued (chosen by this project).</source>
   <translation>Ein aufgeleimtes Griffbrett oder ein einteiliger Hals.
Vorgabe: glued (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>A pickup is fitted here.
Default: false (chosen by this project).</source>
   <translation>Hier ist ein Tonabnehmer eingebaut.
Vorgabe: false (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>All findings, as JSON.</source>
   <translation>Alle Befunde, als JSON.</translation>
  </message>
  <message>
   <source>Anchor Back</source>
   <translation>Saitenaufhängung, Abstand</translation>
  </message>
  <message>
   <source>Anchor Height</source>
   <translation>Saitenaufhängung, Höhe</translation>
  </message>
  <message>
   <source>Angle</source>
   <translation>Taschenwinkel</translation>
  </message>
  <message>
   <source>Anything worth remembering.</source>
   <translation>Alles, was man sich merken will.</translation>
  </message>
  <message>
   <source>Base High</source>
   <translation>Grundplatte, höchste</translation>
  </message>
  <message>
   <source>Base Low</source>
   <translation>Grundplatte, tiefste</translation>
  </message>
  <message>
   <source>Binding</source>
   <translation>Einfassung, Überhang</translation>
  </message>
  <message>
   <source>Binding Width</source>
   <translation>Einfassung, Breite</translation>
  </message>
  <message>
   <source>Block Bass</source>
   <translation>Block, Bassseite</translation>
  </message>
  <message>
   <source>Block Treble</source>
   <translation>Block, Diskantseite</translation>
  </message>
  <message>
   <source>Body</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>Body hole over shank, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.20 mm or 0.0079 in (from memory; set your own).</source>
   <translation>Korpusloch über Schaft, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,20 mm oder 0,0079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Body: angle of the rings to the width (0 quartersawn, 90 flatsawn).
Permitted: 0.00° to 90.00°.
Default: 45.00° (from memory; set your own).</source>
   <translation>Korpus: Winkel der Jahresringe zur Breite (0 stehende, 90 liegende Jahresringe).
Erlaubt: 0,00° bis 90,00°.
Vorgabe: 45,00° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Break angle over the saddle, least.
Permitted: -20.00° to 100.00°.
Default: 5.00° (from memory; set your own).</source>
   <translation>Knickwinkel am Saitenreiter, mindestens.
Erlaubt: -20,00° bis 100,00°.
Vorgabe: 5,00° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Bridge</source>
   <translation>Brücke</translation>
  </message>
  <message>
   <source>Carve Radius Across</source>
   <translation>Wölbungsradius quer</translation>
  </message>
  <message>
   <source>Carve Radius Along</source>
   <translation>Wölbungsradius längs</translation>
  </message>
  <message>
   <source>Carve Slope</source>
   <translation>Wölbungsanstieg</translation>
  </message>
  <message>
   <source>Carved top: climb toward the bridge at the origin.
Permitted: -3.00° to 5.00°.
Default: 1.50° (from memory; set your own).</source>
   <translation>Gewölbte Decke: Anstieg zur Brücke am Ursprung.
Erlaubt: -3,00° bis 5,00°.
Vorgabe: 1,50° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Carved top: radius along the centreline at the origin.
Permitted: 2500.00 mm to 50000.00 mm, 98.425 in to 1968.504 in.
Default: 5000.00 mm or 196.850 in (from memory; set your own).</source>
   <translation>Gewölbte Decke: Radius längs der Mittellinie am Ursprung.
Erlaubt: 2500,00 mm bis 50000,00 mm, 98,425 in bis 1968,504 in.
Vorgabe: 5000,00 mm oder 196,850 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Carved top: radius square to the centreline at the origin.
Permitted: 1200.00 mm to 50000.00 mm, 47.244 in to 1968.504 in.
Default: 2500.00 mm or 98.425 in (from memory; set your own).</source>
   <translation>Gewölbte Decke: Radius quer zur Mittellinie am Ursprung.
Erlaubt: 1200,00 mm bis 50000,00 mm, 47,244 in bis 1968,504 in.
Vorgabe: 2500,00 mm oder 98,425 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Cavity</source>
   <translation>Hohlraum</translation>
  </message>
  <message>
   <source>Cavity Corner Radius</source>
   <translation>Hohlraum-Eckenradius</translation>
  </message>
  <message>
   <source>Cavity Depth</source>
   <translation>Hohlraumtiefe</translation>
  </message>
  <message>
   <source>Cavity Length</source>
   <translation>Hohlraumlänge</translation>
  </message>
  <message>
   <source>Cavity Width</source>
   <translation>Hohlraumbreite</translation>
  </message>
  <message>
   <source>Cavity X</source>
   <translation>Hohlraum x</translation>
  </message>
  <message>
   <source>Cavity Y</source>
   <translation>Hohlraum y</translation>
  </message>
  <message>
   <source>Chamfer along the heel's bottom edges.
Permitted: 0.00 mm to 5.00 mm, 0.000 in to 0.197 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Fase an den unteren Kanten des Halsfußes.
Erlaubt: 0,00 mm bis 5,00 mm, 0,000 in bis 0,197 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Clearance</source>
   <translation>Schlagbrettluft ringsum</translation>
  </message>
  <message>
   <source>Clearance hole through the body.
Permitted: 2.00 mm to 14.00 mm, 0.079 in to 0.551 in.
Default: 4.50 mm or 0.177 in (from memory; set your own).</source>
   <translation>Durchgangsloch durch den Korpus.
Erlaubt: 2,00 mm bis 14,00 mm, 0,079 in bis 0,551 in.
Vorgabe: 4,50 mm oder 0,177 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Climate</source>
   <translation>Klima</translation>
  </message>
  <message>
   <source>Climate Humidity Damp</source>
   <translation>Luftfeuchte im feuchtesten Monat</translation>
  </message>
  <message>
   <source>Climate Humidity Dry</source>
   <translation>Luftfeuchte im trockensten Monat</translation>
  </message>
  <message>
   <source>Climate Temperature</source>
   <translation>Raumtemperatur</translation>
  </message>
  <message>
   <source>Compensation of each string, treble first.
One value in mm for each string.
Permitted: -3.00 mm to 12.00 mm, -0.118 in to 0.472 in.</source>
   <translation>Kompensation jeder Saite, Diskant zuerst.
Ein Wert in mm je Saite.
Erlaubt: -3,00 mm bis 12,00 mm, -0,118 in bis 0,472 in.</translation>
  </message>
  <message>
   <source>Contour Depth</source>
   <translation>Tiefe des Halsübergangs</translation>
  </message>
  <message>
   <source>Contour Length</source>
   <translation>Länge des Halsübergangs</translation>
  </message>
  <message>
   <source>Corner Radius</source>
   <translation>Taschen-Eckenradius</translation>
  </message>
  <message>
   <source>Corners of the outline as [X, Y] pairs in the body frame.</source>
   <translation>Ecken des Umrisses als Paare [X, Y] im Koordinatensystem des Korpus.</translation>
  </message>
  <message>
   <source>Cover</source>
   <translation>Schlagbrettform</translation>
  </message>
  <message>
   <source>Cover plate: none, all round the pocket, or on the treble side only.
Default: none (chosen by this project).</source>
   <translation>Schlagbrett: keines, rings um die Tasche, oder nur auf der Diskantseite.
Vorgabe: none (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Cut-out beyond the pocket's edge, all round.
Permitted: 0.00 mm to 10.00 mm, 0.000 in to 0.394 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Ausschnitt über den Rand der Tasche hinaus, ringsum.
Erlaubt: 0,00 mm bis 10,00 mm, 0,000 in bis 0,394 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Cutaway Bass</source>
   <translation>Cutaway, Bassseite</translation>
  </message>
  <message>
   <source>Cutaway Treble</source>
   <translation>Cutaway, Diskantseite</translation>
  </message>
  <message>
   <source>DXF or FCStd file with one closed outline in the body frame.</source>
   <translation>DXF- oder FCStd-Datei mit einem geschlossenen Umriss im Koordinatensystem des Korpus.</translation>
  </message>
  <message>
   <source>Dampest month indoors.
Permitted: 0.0 % to 100.0 %.
Default: 60.0 % (from memory; set your own).</source>
   <translation>Feuchtester Monat im Haus.
Erlaubt: 0,0 % bis 100,0 %.
Vorgabe: 60,0 % (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Taschentiefe</translation>
  </message>
  <message>
   <source>Depth from the top at the cavity's centre.
One value in mm for each cavity.
Permitted: 1.00 mm to 90.00 mm, 0.039 in to 3.543 in.
Default: 20.00 mm or 0.787 in (from memory; set your own).</source>
   <translation>Tiefe ab Oberseite in der Mitte des Hohlraums.
Ein Wert in mm je Hohlraum.
Erlaubt: 1,00 mm bis 90,00 mm, 0,039 in bis 3,543 in.
Vorgabe: 20,00 mm oder 0,787 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depth of its cavity from the top.
Permitted: 0.00 mm to 60.00 mm, 0.000 in to 2.362 in.
Default: 20.00 mm or 0.787 in (from memory; set your own).</source>
   <translation>Tiefe seines Hohlraums ab Oberseite.
Erlaubt: 0,00 mm bis 60,00 mm, 0,000 in bis 2,362 in.
Vorgabe: 20,00 mm oder 0,787 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depth of the ferrule's seat below the back.
Permitted: 0.00 mm to 20.00 mm, 0.000 in to 0.787 in.
Default: 3.00 mm or 0.118 in (from memory; set your own).</source>
   <translation>Tiefe des Hülsensitzes unter der Rückseite.
Erlaubt: 0,00 mm bis 20,00 mm, 0,000 in bis 0,787 in.
Vorgabe: 3,00 mm oder 0,118 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depth of the head's seat below the neck plate's outer face or ferrule rim.
Permitted: 0.00 mm to 20.00 mm, 0.000 in to 0.787 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Tiefe des Kopfsitzes unter der Außenseite der Halsplatte oder dem Rand der Hülse.
Erlaubt: 0,00 mm bis 20,00 mm, 0,000 in bis 0,787 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depth of the pocket in bare wood, at the end wall, square to the datum.
Permitted: 3.00 mm to 60.00 mm, 0.118 in to 2.362 in.
Measure: depth gauge from the top at the end wall.
Default: 15.88 mm or 0.625 in (common practice, no source).</source>
   <translation>Tiefe der Tasche im rohen Holz, an der Stirnwand, rechtwinklig zur Bezugsebene.
Erlaubt: 3,00 mm bis 60,00 mm, 0,118 in bis 2,362 in.
Messen: Tiefenmaß von der Oberseite an der Stirnwand.
Vorgabe: 15,88 mm oder 0,625 in (gängige Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <source>Depth of the recess under the bridge.
Permitted: 0.00 mm to 25.00 mm, 0.000 in to 0.984 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Tiefe der Vertiefung unter der Brücke.
Erlaubt: 0,00 mm bis 25,00 mm, 0,000 in bis 0,984 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Depths at which the router's stops stand, where it has stops.
One value in mm for each stop.
Permitted: 0.50 mm to 80.00 mm, 0.0197 in to 3.150 in.</source>
   <translation>Tiefen, auf denen die Anschläge der Oberfräse stehen, wo sie Anschläge hat.
Ein Wert in mm je Anschlag.
Erlaubt: 0,50 mm bis 80,00 mm, 0,0197 in bis 3,150 in.</translation>
  </message>
  <message>
   <source>Diameter of the ferrule.
Permitted: 5.00 mm to 30.00 mm, 0.197 in to 1.181 in.
Default: 14.00 mm or 0.551 in (from memory; set your own).</source>
   <translation>Durchmesser der Hülse.
Erlaubt: 5,00 mm bis 30,00 mm, 0,197 in bis 1,181 in.
Vorgabe: 14,00 mm oder 0,551 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Digest of the values checked.</source>
   <translation>Prüfsumme der geprüften Werte.</translation>
  </message>
  <message>
   <source>Digest of the values it was built from.</source>
   <translation>Prüfsumme der Werte, aus denen es gebaut ist.</translation>
  </message>
  <message>
   <source>Digest of what was measured.</source>
   <translation>Prüfsumme des Gemessenen.</translation>
  </message>
  <message>
   <source>Digest of what was read.</source>
   <translation>Prüfsumme des Gelesenen.</translation>
  </message>
  <message>
   <source>Dome Centre</source>
   <translation>Kugelmitte</translation>
  </message>
  <message>
   <source>Dome Radius</source>
   <translation>Kugelradius</translation>
  </message>
  <message>
   <source>Domed top: X of the highest point.
Permitted: -100.00 mm to 300.00 mm, -3.937 in to 11.811 in.
Default: 120.00 mm or 4.724 in (from memory; set your own).</source>
   <translation>Kugelige Decke: X des höchsten Punkts.
Erlaubt: -100,00 mm bis 300,00 mm, -3,937 in bis 11,811 in.
Vorgabe: 120,00 mm oder 4,724 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Domed top: radius of the sphere.
Permitted: 1500.00 mm to 20000.00 mm, 59.055 in to 787.402 in.
Default: 4000.00 mm or 157.480 in (from memory; set your own).</source>
   <translation>Kugelige Decke: Radius der Kugel.
Erlaubt: 1500,00 mm bis 20000,00 mm, 59,055 in bis 787,402 in.
Vorgabe: 4000,00 mm oder 157,480 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Driest month indoors.
Permitted: 0.0 % to 100.0 %.
Default: 35.0 % (from memory; set your own).</source>
   <translation>Trockenster Monat im Haus.
Erlaubt: 0,0 % bis 100,0 %.
Vorgabe: 35,0 % (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>E: least distance between heel end and end wall as assembled.
Permitted: 0.00 mm to 5.00 mm, 0.000 in to 0.197 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>E: kleinster Abstand zwischen Ende des Halsfußes und Stirnwand im zusammengebauten Zustand.
Erlaubt: 0,00 mm bis 5,00 mm, 0,000 in bis 0,197 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Edge Round</source>
   <translation>Kantenrundung</translation>
  </message>
  <message>
   <source>End Margin</source>
   <translation>Letzter Bund bis Ende</translation>
  </message>
  <message>
   <source>End Radius</source>
   <translation>Stirnwandradius</translation>
  </message>
  <message>
   <source>End Shape</source>
   <translation>Stirnwandform</translation>
  </message>
  <message>
   <source>End wall to the body's edge where the neck leaves.
Permitted: 30.00 mm to 140.00 mm, 1.181 in to 5.512 in.
Measure: rule along the centreline.
Default: 76.00 mm or 2.992 in (from memory; set your own).</source>
   <translation>Stirnwand bis zum Rand des Korpus, wo der Hals austritt.
Erlaubt: 30,00 mm bis 140,00 mm, 1,181 in bis 5,512 in.
Messen: Lineal längs der Mittellinie.
Vorgabe: 76,00 mm oder 2,992 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>End wall to the plate's end toward the bridge.
Permitted: 20.00 mm to 300.00 mm, 0.787 in to 11.811 in.
Default: 170.00 mm or 6.693 in (from memory; set your own).</source>
   <translation>Stirnwand bis zum brückenseitigen Ende des Schlagbretts.
Erlaubt: 20,00 mm bis 300,00 mm, 0,787 in bis 11,811 in.
Vorgabe: 170,00 mm oder 6,693 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Engagement in an insert in screw diameters, least.
Permitted: -20 to 100.
Default: 1.5 (from memory; set your own).</source>
   <translation>Eingriff in einen Gewindeeinsatz in Schraubendurchmessern, mindestens.
Erlaubt: -20 bis 100.
Vorgabe: 1,5 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fall Away</source>
   <translation>Abfall der oberen Bünde</translation>
  </message>
  <message>
   <source>Finish</source>
   <translation>Lack</translation>
  </message>
  <message>
   <source>Finish built up on each pocket wall.
Permitted: 0.00 mm to 1.50 mm, 0.000 in to 0.059 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Lackaufbau auf jeder Taschenwand.
Erlaubt: 0,00 mm bis 1,50 mm, 0,000 in bis 0,059 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Finish built up on the pocket's floor (0 where it is masked).
Permitted: 0.00 mm to 1.50 mm, 0.000 in to 0.059 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Lackaufbau auf dem Boden der Tasche (0, wo er abgeklebt ist).
Erlaubt: 0,00 mm bis 1,50 mm, 0,000 in bis 0,059 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Finish built up on the top.
Permitted: 0.00 mm to 1.50 mm, 0.000 in to 0.059 in.
Default: 0.25 mm or 0.0098 in (from memory; set your own).</source>
   <translation>Lackaufbau auf der Decke.
Erlaubt: 0,00 mm bis 1,50 mm, 0,000 in bis 0,059 in.
Vorgabe: 0,25 mm oder 0,0098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fixed radius: action error of a middle string, largest.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.15 mm or 0.0059 in (from memory; set your own).</source>
   <translation>Fester Radius: Fehler der Saitenlage einer mittleren Saite, höchstens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,15 mm oder 0,0059 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fixed radius: distance between the two posts.
Permitted: 30.00 mm to 140.00 mm, 1.181 in to 5.512 in.
Default: 74.00 mm or 2.913 in (from memory; set your own).</source>
   <translation>Fester Radius: Abstand der beiden Bolzen.
Erlaubt: 30,00 mm bis 140,00 mm, 1,181 in bis 5,512 in.
Vorgabe: 74,00 mm oder 2,913 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fixed radius: radius over the strings' undersides.
Permitted: 120.00 mm to 100000.00 mm, 4.724 in to 3937.008 in.
Default: 304.80 mm or 12.000 in (from memory; set your own).</source>
   <translation>Fester Radius: Radius über den Unterseiten der Saiten.
Erlaubt: 120,00 mm bis 100000,00 mm, 4,724 in bis 3937,008 in.
Vorgabe: 304,80 mm oder 12,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Floating bridge: base over the mount, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 2.50 mm or 0.098 in (from memory; set your own).</source>
   <translation>Schwebende Brücke: Grundplatte über der Montagefläche, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 2,50 mm oder 0,098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Floating: highest height of the base above the mount.
Permitted: 0.00 mm to 30.00 mm, 0.000 in to 1.181 in.
Default: 6.00 mm or 0.236 in (from memory; set your own).</source>
   <translation>Schwebend: größte Höhe der Grundplatte über der Montagefläche.
Erlaubt: 0,00 mm bis 30,00 mm, 0,000 in bis 1,181 in.
Vorgabe: 6,00 mm oder 0,236 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Floating: lowest height of the base above the mount.
Permitted: 0.00 mm to 20.00 mm, 0.000 in to 0.787 in.
Default: 2.50 mm or 0.098 in (from memory; set your own).</source>
   <translation>Schwebend: kleinste Höhe der Grundplatte über der Montagefläche.
Erlaubt: 0,00 mm bis 20,00 mm, 0,000 in bis 0,787 in.
Vorgabe: 2,50 mm oder 0,098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Floor</source>
   <translation>Lack, Taschenboden</translation>
  </message>
  <message>
   <source>Floor Fillet</source>
   <translation>Bodenkehle</translation>
  </message>
  <message>
   <source>Frequency of each open string, treble first.
One value in Hz for each string.
Permitted: 15.00 Hz to 1500.00 Hz.</source>
   <translation>Frequenz jeder leeren Saite, Diskant zuerst.
Ein Wert in Hz je Saite.
Erlaubt: 15,00 Hz bis 1500,00 Hz.</translation>
  </message>
  <message>
   <source>Fret Height</source>
   <translation>Bundkronenhöhe</translation>
  </message>
  <message>
   <source>Fret Width</source>
   <translation>Bundkronenbreite</translation>
  </message>
  <message>
   <source>Fretboard width at its end, binding included.
Permitted: 35.00 mm to 115.00 mm, 1.378 in to 4.528 in.
Default: 56.00 mm or 2.205 in (from memory; set your own).</source>
   <translation>Breite des Griffbretts am Ende, mit Einfassung.
Erlaubt: 35,00 mm bis 115,00 mm, 1,378 in bis 4,528 in.
Vorgabe: 56,00 mm oder 2,205 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fretboard width at the nut.
Permitted: 30.00 mm to 80.00 mm, 1.181 in to 3.150 in.
Default: 42.00 mm or 1.654 in (from memory; set your own).</source>
   <translation>Breite des Griffbretts am Sattel.
Erlaubt: 30,00 mm bis 80,00 mm, 1,181 in bis 3,150 in.
Vorgabe: 42,00 mm oder 1,654 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Frets</source>
   <translation>Bundzahl</translation>
  </message>
  <message>
   <source>Fretted string over every later fret, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.02 mm or 0.0008 in (from memory; set your own).</source>
   <translation>Gegriffene Saite über jedem weiteren Bund, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,02 mm oder 0,0008 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Fretted string over plate and rings, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 2.00 mm or 0.079 in (from memory; set your own).</source>
   <translation>Gegriffene Saite über Schlagbrett und Rahmen, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 2,00 mm oder 0,079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Front</source>
   <translation>Saitenreiter, vorderste</translation>
  </message>
  <message>
   <source>Full wedge: thickness at the end wall.
Permitted: 0.00 mm to 5.00 mm, 0.000 in to 0.197 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Voller Keil: Dicke an der Stirnwand.
Erlaubt: 0,00 mm bis 5,00 mm, 0,000 in bis 0,197 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Full wedge: thickness at the mouth.
Permitted: 0.00 mm to 5.00 mm, 0.000 in to 0.197 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Voller Keil: Dicke an der Mündung.
Erlaubt: 0,00 mm bis 5,00 mm, 0,000 in bis 0,197 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>General tolerance (ISO 2768-1) of dimensions that state no limits of their own.
Default: none (from memory; set your own).</source>
   <translation>Allgemeintoleranz (ISO 2768-1) der Maße ohne eigene Grenzen.
Vorgabe: none (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Glue Line</source>
   <translation>Leimfugenhöhe</translation>
  </message>
  <message>
   <source>H: heel bottom to fretboard top on the centreline, without frets.
Permitted: 12.00 mm to 50.00 mm, 0.472 in to 1.969 in.
Measure it with calipers over the heel, beside a fret.
Default: 25.00 mm or 0.984 in (from memory; set your own).</source>
   <translation>H: Unterseite des Halsfußes bis Oberseite des Griffbretts auf der Mittellinie, ohne Bünde.
Erlaubt: 12,00 mm bis 50,00 mm, 0,472 in bis 1,969 in.
Messen mit: Messschieber über dem Halsfuß, neben einem Bund.
Vorgabe: 25,00 mm oder 0,984 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>H_o: heel bottom to the overhang's underside.
Permitted: 8.00 mm to 45.00 mm, 0.315 in to 1.772 in.
Measure it with calipers under the overhang.
Default: 18.60 mm or 0.732 in (from memory; set your own).</source>
   <translation>H_o: Unterseite des Halsfußes bis Unterseite des Überstands.
Erlaubt: 8,00 mm bis 45,00 mm, 0,315 in bis 1,772 in.
Messen mit: Messschieber unter dem Überstand.
Vorgabe: 18,60 mm oder 0,732 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heads bear on a neck plate, in ferrules, or on the bare wood.
Default: plate (chosen by this project).</source>
   <translation>Köpfe liegen auf einer Halsplatte, in Hülsen oder auf dem bloßen Holz.
Vorgabe: plate (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Heel Corner Radius</source>
   <translation>Halsfuß-Eckenradius</translation>
  </message>
  <message>
   <source>Heel Edge</source>
   <translation>Halsfußfase</translation>
  </message>
  <message>
   <source>Heel End</source>
   <translation>Halsfußende, Form</translation>
  </message>
  <message>
   <source>Heel Length</source>
   <translation>Halsfußlänge, eben</translation>
  </message>
  <message>
   <source>Heel Radius</source>
   <translation>Halsfußende, Radius</translation>
  </message>
  <message>
   <source>Heel Width End</source>
   <translation>Halsfußbreite, Ende</translation>
  </message>
  <message>
   <source>Heel Width Mouth</source>
   <translation>Halsfußbreite, Mündung</translation>
  </message>
  <message>
   <source>Heel bottom to the glue line under the fretboard.
Permitted: 8.00 mm to 45.00 mm, 0.315 in to 1.772 in.
Measure it with calipers at the heel's side.
Default: 18.60 mm or 0.732 in (from memory; set your own).</source>
   <translation>Unterseite des Halsfußes bis zur Leimfuge unter dem Griffbrett.
Erlaubt: 8,00 mm bis 45,00 mm, 0,315 in bis 1,772 in.
Messen mit: Messschieber an der Seite des Halsfußes.
Vorgabe: 18,60 mm oder 0,732 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel bottom to the truss-rod channel's bottom.
Permitted: 0.00 mm to 40.00 mm, 0.000 in to 1.575 in.
Default: 11.00 mm or 0.433 in (from memory; set your own).</source>
   <translation>Unterseite des Halsfußes bis zum Grund des Halsstabkanals.
Erlaubt: 0,00 mm bis 40,00 mm, 0,000 in bis 1,575 in.
Vorgabe: 11,00 mm oder 0,433 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel contour: mouth to where the slope has run out to nothing.
Permitted: 10.00 mm to 120.00 mm, 0.394 in to 4.724 in.
Default: 40.00 mm or 1.575 in (from memory; set your own).</source>
   <translation>Halsübergang: Mündung bis dorthin, wo die Schräge ausläuft.
Erlaubt: 10,00 mm bis 120,00 mm, 0,394 in bis 4,724 in.
Vorgabe: 40,00 mm oder 1,575 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel contour: wood taken off the back at the pocket's mouth.
Permitted: 0.00 mm to 25.00 mm, 0.000 in to 0.984 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Halsübergang: an der Mündung der Tasche von der Rückseite abgenommenes Holz.
Erlaubt: 0,00 mm bis 25,00 mm, 0,000 in bis 0,984 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel end to the end of the truss-rod channel.
Permitted: 0.00 mm to 150.00 mm, 0.000 in to 5.906 in.
Default: 6.00 mm or 0.236 in (from memory; set your own).</source>
   <translation>Ende des Halsfußes bis zum Ende des Halsstabkanals.
Erlaubt: 0,00 mm bis 150,00 mm, 0,000 in bis 5,906 in.
Vorgabe: 6,00 mm oder 0,236 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel width at the heel end (before its corners are rounded).
Permitted: 35.00 mm to 115.00 mm, 1.378 in to 4.528 in.
Measure it with calipers close to the heel end.
Default: 56.00 mm or 2.205 in (from memory; set your own).</source>
   <translation>Breite des Halsfußes an seinem Ende (vor dem Runden der Ecken).
Erlaubt: 35,00 mm bis 115,00 mm, 1,378 in bis 4,528 in.
Messen mit: Messschieber nahe am Ende des Halsfußes.
Vorgabe: 56,00 mm oder 2,205 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel width one pocket length before the heel end.
Permitted: 35.00 mm to 115.00 mm, 1.378 in to 4.528 in.
Measure it with calipers where the body ends.
Default: 55.50 mm or 2.185 in (from memory; set your own).</source>
   <translation>Breite des Halsfußes eine Taschenlänge vor seinem Ende.
Erlaubt: 35,00 mm bis 115,00 mm, 1,378 in bis 4,528 in.
Messen mit: Messschieber, wo der Korpus endet.
Vorgabe: 55,50 mm oder 2,185 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel-adjusted rod: diameter the adjusting tool needs.
Permitted: 2.00 mm to 25.00 mm, 0.079 in to 0.984 in.
Default: 10.00 mm or 0.394 in (from memory; set your own).</source>
   <translation>Am Halsfuß eingestellter Stab: Durchmesser, den das Werkzeug braucht.
Erlaubt: 2,00 mm bis 25,00 mm, 0,079 in bis 0,984 in.
Vorgabe: 10,00 mm oder 0,394 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel-adjusted rod: heel bottom to the tool's axis.
Permitted: 0.00 mm to 40.00 mm, 0.000 in to 1.575 in.
Default: 14.00 mm or 0.551 in (from memory; set your own).</source>
   <translation>Am Halsfuß eingestellter Stab: Unterseite des Halsfußes bis zur Achse des Werkzeugs.
Erlaubt: 0,00 mm bis 40,00 mm, 0,000 in bis 1,575 in.
Vorgabe: 14,00 mm oder 0,551 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Heel-adjusted rod: straight path the tool needs behind the heel end.
Permitted: 5.00 mm to 200.00 mm, 0.197 in to 7.874 in.
Default: 60.00 mm or 2.362 in (from memory; set your own).</source>
   <translation>Am Halsfuß eingestellter Stab: gerader Weg, den das Werkzeug hinter dem Ende des Halsfußes braucht.
Erlaubt: 5,00 mm bis 200,00 mm, 0,197 in bis 7,874 in.
Vorgabe: 60,00 mm oder 2,362 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Halshöhe am Halsfuß</translation>
  </message>
  <message>
   <source>Height of its ring above the mount.
Permitted: 0.00 mm to 15.00 mm, 0.000 in to 0.591 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Höhe seines Rahmens über der Montagefläche.
Erlaubt: 0,00 mm bis 15,00 mm, 0,000 in bis 0,591 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Height of its springs fully compressed.
Permitted: 0.00 mm to 25.00 mm, 0.000 in to 0.984 in.
Default: 4.00 mm or 0.157 in (from memory; set your own).</source>
   <translation>Höhe seiner Federn, ganz zusammengedrückt.
Erlaubt: 0,00 mm bis 25,00 mm, 0,000 in bis 0,984 in.
Vorgabe: 4,00 mm oder 0,157 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Height of the fret crowns.
Permitted: 0.30 mm to 2.50 mm, 0.0118 in to 0.098 in.
Default: 1.10 mm or 0.043 in (from memory; set your own).</source>
   <translation>Höhe der Bundkronen.
Erlaubt: 0,30 mm bis 2,50 mm, 0,0118 in bis 0,098 in.
Vorgabe: 1,10 mm oder 0,043 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Height of the pickup, poles included, over its springs' seat.
Permitted: 3.00 mm to 45.00 mm, 0.118 in to 1.772 in.
Default: 18.00 mm or 0.709 in (from memory; set your own).</source>
   <translation>Höhe des Tonabnehmers mit Polstücken über dem Sitz der Federn.
Erlaubt: 3,00 mm bis 45,00 mm, 0,118 in bis 1,772 in.
Vorgabe: 18,00 mm oder 0,709 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>High</source>
   <translation>Saitenreiter, höchste</translation>
  </message>
  <message>
   <source>How dimensions spread between their limits, unless one states it.
Default: uniform (from memory; set your own).</source>
   <translation>Wie Maße zwischen ihren Grenzen streuen, wenn keines es selbst angibt.
Vorgabe: uniform (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>How far a hole may lie from where it should.
Permitted: 0.00 mm to 2.00 mm, 0.000 in to 0.079 in.
Default: 0.15 mm or 0.0059 in (from memory; set your own).</source>
   <translation>Wie weit ein Loch von seinem Sollort liegen darf.
Erlaubt: 0,00 mm bis 2,00 mm, 0,000 in bis 0,079 in.
Vorgabe: 0,15 mm oder 0,0059 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>How far the binding hangs below the overhang's underside.
Permitted: 0.00 mm to 6.00 mm, 0.000 in to 0.236 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Wie weit die Einfassung unter die Unterseite des Überstands hängt.
Erlaubt: 0,00 mm bis 6,00 mm, 0,000 in bis 0,236 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>How far the last fret lies below the straight line past fret 12.
Permitted: 0.00 mm to 0.50 mm, 0.000 in to 0.0197 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Wie weit der letzte Bund unter der Geraden jenseits von Bund 12 liegt.
Erlaubt: 0,00 mm bis 0,50 mm, 0,000 in bis 0,0197 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>How far the plate reaches beyond its cut-out.
Permitted: 5.00 mm to 90.00 mm, 0.197 in to 3.543 in.
Default: 25.00 mm or 0.984 in (from memory; set your own).</source>
   <translation>Wie weit das Schlagbrett über seinen Ausschnitt hinausreicht.
Erlaubt: 5,00 mm bis 90,00 mm, 0,197 in bis 3,543 in.
Vorgabe: 25,00 mm oder 0,984 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>How many steps exchanging a whole part counts, when changes are ranked.
Permitted: 0 to 1000.
Default: 10 (from memory; set your own).</source>
   <translation>Wie viele Schritte der Tausch eines ganzen Teils zählt, wenn Änderungen gereiht werden.
Erlaubt: 0 bis 1000.
Vorgabe: 10 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Job</source>
   <translation>Auftrag</translation>
  </message>
  <message>
   <source>Job Name</source>
   <translation>Name der Verbindung</translation>
  </message>
  <message>
   <source>Job Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Job Units</source>
   <translation>Einheiten</translation>
  </message>
  <message>
   <source>L_o: heel end to fretboard end; 0 where the fretboard ends at the heel.
Permitted: 0.00 mm to 60.00 mm, 0.000 in to 2.362 in.
Measure: rule from heel end to fretboard end.</source>
   <translation>L_o: Ende des Halsfußes bis Ende des Griffbretts; 0, wo das Griffbrett am Halsfuß endet.
Erlaubt: 0,00 mm bis 60,00 mm, 0,000 in bis 2,362 in.
Messen: Lineal vom Ende des Halsfußes bis zum Griffbrettende.</translation>
  </message>
  <message>
   <source>Largest end clearance.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.30 mm or 0.0118 in (from memory; set your own).</source>
   <translation>Größtes Stirnspiel.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,30 mm oder 0,0118 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Largest gap seen at the top of the end wall.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.80 mm or 0.031 in (from memory; set your own).</source>
   <translation>Größter sichtbarer Spalt oben an der Stirnwand.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,80 mm oder 0,031 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Largest gap under the overhang.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.80 mm or 0.031 in (from memory; set your own).</source>
   <translation>Größter Spalt unter dem Überstand.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,80 mm oder 0,031 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Largest side clearance, per side.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.25 mm or 0.0098 in (from memory; set your own).</source>
   <translation>Größtes Seitenspiel, je Seite.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,25 mm oder 0,0098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Last fret to fretboard end, where the overhang is worked out from it.
Permitted: 1.00 mm to 30.00 mm, 0.039 in to 1.181 in.
Default: 5.50 mm or 0.217 in (from memory; set your own).</source>
   <translation>Letzter Bund bis Griffbrettende, woraus der Überstand berechnet wird.
Erlaubt: 1,00 mm bis 30,00 mm, 0,039 in bis 1,181 in.
Vorgabe: 5,50 mm oder 0,217 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least clearance between cover plate and heel.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Kleinstes Spiel zwischen Schlagbrett und Halsfuß.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least distance from fretboard end to pickup or ring.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 1.00 mm or 0.039 in (from memory; set your own).</source>
   <translation>Kleinster Abstand vom Griffbrettende zum Tonabnehmer oder Rahmen.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 1,00 mm oder 0,039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least end clearance.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Kleinstes Stirnspiel.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least gap under the overhang.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.15 mm or 0.0059 in (from memory; set your own).</source>
   <translation>Kleinster Spalt unter dem Überstand.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,15 mm oder 0,0059 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least side clearance, per side.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.05 mm or 0.0020 in (from memory; set your own).</source>
   <translation>Kleinstes Seitenspiel, je Seite.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,05 mm oder 0,0020 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least wood between pocket and a cavity.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 3.00 mm or 0.118 in (from memory; set your own).</source>
   <translation>Kleinstes Holz zwischen Tasche und Hohlraum.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 3,00 mm oder 0,118 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least wood between pocket and cutaway.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 4.00 mm or 0.157 in (from memory; set your own).</source>
   <translation>Kleinstes Holz zwischen Tasche und Cutaway.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 4,00 mm oder 0,157 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Least wood under the pocket.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 12.00 mm or 0.472 in (from memory; set your own).</source>
   <translation>Kleinstes Holz unter der Tasche.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 12,00 mm oder 0,472 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Length of the bridge's base along X.
Permitted: 5.00 mm to 160.00 mm, 0.197 in to 6.299 in.
Default: 70.00 mm or 2.756 in (from memory; set your own).</source>
   <translation>Länge der Grundplatte der Brücke längs X.
Erlaubt: 5,00 mm bis 160,00 mm, 0,197 in bis 6,299 in.
Vorgabe: 70,00 mm oder 2,756 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length of the heel that is flat underneath.
Permitted: 25.00 mm to 150.00 mm, 0.984 in to 5.906 in.
Default: 78.00 mm or 3.071 in (from memory; set your own).</source>
   <translation>Länge des Halsfußes, die unten eben ist.
Erlaubt: 25,00 mm bis 150,00 mm, 0,984 in bis 5,906 in.
Vorgabe: 78,00 mm oder 3,071 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length of the neck plate.
Permitted: 20.00 mm to 140.00 mm, 0.787 in to 5.512 in.
Default: 64.00 mm or 2.520 in (from memory; set your own).</source>
   <translation>Länge der Halsplatte.
Erlaubt: 20,00 mm bis 140,00 mm, 0,787 in bis 5,512 in.
Vorgabe: 64,00 mm oder 2,520 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length of the threaded insert, flush with the heel's bottom.
Permitted: 3.00 mm to 40.00 mm, 0.118 in to 1.575 in.
Default: 12.00 mm or 0.472 in (from memory; set your own).</source>
   <translation>Länge des Gewindeeinsatzes, bündig mit der Unterseite des Halsfußes.
Erlaubt: 3,00 mm bis 40,00 mm, 0,118 in bis 1,575 in.
Vorgabe: 12,00 mm oder 0,472 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length of the threaded part, from the tip.
Permitted: 5.00 mm to 120.00 mm, 0.197 in to 4.724 in.
Default: 30.00 mm or 1.181 in (from memory; set your own).</source>
   <translation>Länge des Gewindes, ab Spitze.
Erlaubt: 5,00 mm bis 120,00 mm, 0,197 in bis 4,724 in.
Vorgabe: 30,00 mm oder 1,181 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Length under the head.
Permitted: 10.00 mm to 120.00 mm, 0.394 in to 4.724 in.
Default: 45.00 mm or 1.772 in (from memory; set your own).</source>
   <translation>Länge unter dem Kopf.
Erlaubt: 10,00 mm bis 120,00 mm, 0,394 in bis 4,724 in.
Vorgabe: 45,00 mm oder 1,772 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Limit deviations that were stated.</source>
   <translation>Angegebene Grenzabweichungen.</translation>
  </message>
  <message>
   <source>Limits</source>
   <translation>Grenzen</translation>
  </message>
  <message>
   <source>Limits Base Gap Min</source>
   <translation>Grenze: Luft unter der Grundplatte, mindestens</translation>
  </message>
  <message>
   <source>Limits Break Min</source>
   <translation>Grenze: Knickwinkel, mindestens</translation>
  </message>
  <message>
   <source>Limits Contact Min</source>
   <translation>Grenze: Auflage des Halsfußes, mindestens</translation>
  </message>
  <message>
   <source>Limits Edge Distance Min</source>
   <translation>Grenze: Randabstand der Schrauben, mindestens</translation>
  </message>
  <message>
   <source>Limits Edge Min</source>
   <translation>Grenze: äußere Saite zur Griffbrettkante, mindestens</translation>
  </message>
  <message>
   <source>Limits End Max</source>
   <translation>Grenze: Stirnspiel, höchstens</translation>
  </message>
  <message>
   <source>Limits End Min</source>
   <translation>Grenze: Stirnspiel, mindestens</translation>
  </message>
  <message>
   <source>Limits End Visible Max</source>
   <translation>Grenze: sichtbarer Stirnspalt, höchstens</translation>
  </message>
  <message>
   <source>Limits Floor Wood Min</source>
   <translation>Grenze: Holz unter der Tasche, mindestens</translation>
  </message>
  <message>
   <source>Limits Fret Slot Depth</source>
   <translation>Grenze: Tiefe der Bundschlitze</translation>
  </message>
  <message>
   <source>Limits Fretted Buzz Min</source>
   <translation>Grenze: gegriffene Saite über den Bünden, mindestens</translation>
  </message>
  <message>
   <source>Limits Gap Max</source>
   <translation>Grenze: Spalt unter dem Überstand, höchstens</translation>
  </message>
  <message>
   <source>Limits Gap Min</source>
   <translation>Grenze: Spalt unter dem Überstand, mindestens</translation>
  </message>
  <message>
   <source>Limits Grip Min</source>
   <translation>Grenze: Halt der Schrauben, mindestens</translation>
  </message>
  <message>
   <source>Limits Hole Clearance Min</source>
   <translation>Grenze: Korpusloch über Schaft, mindestens</translation>
  </message>
  <message>
   <source>Limits Insert Min</source>
   <translation>Grenze: Eingriff in Gewindeeinsätze, mindestens</translation>
  </message>
  <message>
   <source>Limits Open Buzz Min</source>
   <translation>Grenze: leere Saite über den Bünden, mindestens</translation>
  </message>
  <message>
   <source>Limits Pickup Gap Min</source>
   <translation>Grenze: Griffbrettende zum Tonabnehmer, mindestens</translation>
  </message>
  <message>
   <source>Limits Pilot Extra</source>
   <translation>Grenze: Vorbohrung tiefer als die Schraube</translation>
  </message>
  <message>
   <source>Limits Plate Heel Min</source>
   <translation>Grenze: Schlagbrett zum Halsfuß, mindestens</translation>
  </message>
  <message>
   <source>Limits Plate String Min</source>
   <translation>Grenze: Saite über dem Schlagbrett, mindestens</translation>
  </message>
  <message>
   <source>Limits Pole Bass Max</source>
   <translation>Grenze: Saite über den Polstücken, Bass, höchstens</translation>
  </message>
  <message>
   <source>Limits Pole Bass Min</source>
   <translation>Grenze: Saite über den Polstücken, Bass, mindestens</translation>
  </message>
  <message>
   <source>Limits Pole Treble Max</source>
   <translation>Grenze: Saite über den Polstücken, Diskant, höchstens</translation>
  </message>
  <message>
   <source>Limits Pole Treble Min</source>
   <translation>Grenze: Saite über den Polstücken, Diskant, mindestens</translation>
  </message>
  <message>
   <source>Limits Pull Safety</source>
   <translation>Grenze: Sicherheit gegen Ausziehen</translation>
  </message>
  <message>
   <source>Limits Radius Error Max</source>
   <translation>Grenze: Fehler bei festem Radius, höchstens</translation>
  </message>
  <message>
   <source>Limits Rod Distance Min</source>
   <translation>Grenze: Schraube zum Halsstab, mindestens</translation>
  </message>
  <message>
   <source>Limits Side Max</source>
   <translation>Grenze: Seitenspiel, höchstens</translation>
  </message>
  <message>
   <source>Limits Side Min</source>
   <translation>Grenze: Seitenspiel, mindestens</translation>
  </message>
  <message>
   <source>Limits Tip Min</source>
   <translation>Grenze: Schraubenspitze unter der Leimfuge, mindestens</translation>
  </message>
  <message>
   <source>Limits Tip Wish</source>
   <translation>Wunsch: Schraubenspitze unter der Leimfuge</translation>
  </message>
  <message>
   <source>Limits Top String Min</source>
   <translation>Wunsch: Saiten über der Decke, mindestens</translation>
  </message>
  <message>
   <source>Limits Wall Min</source>
   <translation>Grenze: Holz zum Cutaway, mindestens</translation>
  </message>
  <message>
   <source>Limits Web Min</source>
   <translation>Grenze: Holz zum Hohlraum, mindestens</translation>
  </message>
  <message>
   <source>Low</source>
   <translation>Saitenreiter, tiefste</translation>
  </message>
  <message>
   <source>Lower Width</source>
   <translation>Korpusbreite unten</translation>
  </message>
  <message>
   <source>Make</source>
   <translation>Bauart</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Schlagbrettrand</translation>
  </message>
  <message>
   <source>Mass per length of each string, treble first.
One value in g/m for each string.
Permitted: 0.050 g/m to 60.000 g/m.</source>
   <translation>Masse je Länge jeder Saite, Diskant zuerst.
Ein Wert in g/m je Saite.
Erlaubt: 0,050 g/m bis 60,000 g/m.</translation>
  </message>
  <message>
   <source>Moisture of both woods when pocket and heel were measured.
Permitted: 0.0 % to 30.0 %.
Default: 8.0 % (from memory; set your own).</source>
   <translation>Holzfeuchte beider Hölzer, als Tasche und Halsfuß gemessen wurden.
Erlaubt: 0,0 % bis 30,0 %.
Vorgabe: 8,0 % (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Mount</source>
   <translation>Brückenmontage</translation>
  </message>
  <message>
   <source>Names of the joint's solids shown here.</source>
   <translation>Namen der hier gezeigten Volumenkörper der Verbindung.</translation>
  </message>
  <message>
   <source>Neck</source>
   <translation>Hals</translation>
  </message>
  <message>
   <source>Neck Plate Ferrule Depth</source>
   <translation>Hülsensitz, Tiefe</translation>
  </message>
  <message>
   <source>Neck Plate Ferrule Diameter</source>
   <translation>Hülsendurchmesser</translation>
  </message>
  <message>
   <source>Neck Plate Length</source>
   <translation>Halsplattenlänge</translation>
  </message>
  <message>
   <source>Neck Plate Make</source>
   <translation>Auflage der Schraubenköpfe</translation>
  </message>
  <message>
   <source>Neck Plate Thickness</source>
   <translation>Halsplattendicke</translation>
  </message>
  <message>
   <source>Neck Plate Width</source>
   <translation>Halsplattenbreite</translation>
  </message>
  <message>
   <source>Neck plate</source>
   <translation>Halsplatte</translation>
  </message>
  <message>
   <source>Neck: angle of the rings to the heel's width (0 quartersawn, 90 flatsawn).
Permitted: 0.00° to 90.00°.
Default: 90.00° (from memory; set your own).</source>
   <translation>Hals: Winkel der Jahresringe zur Breite des Halsfußes (0 stehende, 90 liegende Jahresringe).
Erlaubt: 0,00° bis 90,00°.
Vorgabe: 90,00° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>No shim, a full wedge, or a strip at the end wall or at the mouth.
Default: none (chosen by this project).</source>
   <translation>Keine Beilage, ein voller Keil, oder ein Streifen an Stirnwand oder Mündung.
Vorgabe: none (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Number of frets.
Permitted: 12 to 30.
Default: 22 (from memory; set your own).</source>
   <translation>Zahl der Bünde.
Erlaubt: 12 bis 30.
Vorgabe: 22 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Number of strings.
Permitted: 4 to 8.
Default: 6 (from memory; set your own).</source>
   <translation>Zahl der Saiten.
Erlaubt: 4 bis 8.
Vorgabe: 6 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Number of the fret that stands square to the centreline, where the scales differ.
Permitted: 0 to 24.
Default: 0 (from memory; set your own).</source>
   <translation>Nummer des Bundes, der rechtwinklig zur Mittellinie steht, wo die Mensuren verschieden sind.
Erlaubt: 0 bis 24.
Vorgabe: 0 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Nut To Heel</source>
   <translation>Sattel bis Halsfußende</translation>
  </message>
  <message>
   <source>Old Pilot X</source>
   <translation>Alte Vorbohrung x</translation>
  </message>
  <message>
   <source>Old Pilot Y</source>
   <translation>Alte Vorbohrung y</translation>
  </message>
  <message>
   <source>Old pilot</source>
   <translation>Alte Vorbohrung</translation>
  </message>
  <message>
   <source>One piece: depth of the fret slots under the fretboard top.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 2.50 mm or 0.098 in (from memory; set your own).</source>
   <translation>Einteilig: Tiefe der Bundschlitze unter der Griffbrettoberseite.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 2,50 mm oder 0,098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Open string over every fret, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Leere Saite über jedem Bund, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Open string over fret 1, bass outer string.
Permitted: 0.10 mm to 2.50 mm, 0.0039 in to 0.098 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Leere Saite über Bund 1, Basssaite außen.
Erlaubt: 0,10 mm bis 2,50 mm, 0,0039 in bis 0,098 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Open string over fret 1, treble outer string.
Permitted: 0.10 mm to 2.00 mm, 0.0039 in to 0.079 in.
Default: 0.40 mm or 0.0157 in (from memory; set your own).</source>
   <translation>Leere Saite über Bund 1, Diskantsaite außen.
Erlaubt: 0,10 mm bis 2,00 mm, 0,0039 in bis 0,079 in.
Vorgabe: 0,40 mm oder 0,0157 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Open string over fret 12, bass outer string.
Permitted: 0.50 mm to 7.00 mm, 0.0197 in to 0.276 in.
Default: 2.00 mm or 0.079 in (from memory; set your own).</source>
   <translation>Leere Saite über Bund 12, Basssaite außen.
Erlaubt: 0,50 mm bis 7,00 mm, 0,0197 in bis 0,276 in.
Vorgabe: 2,00 mm oder 0,079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Open string over fret 12, treble outer string.
Permitted: 0.50 mm to 6.00 mm, 0.0197 in to 0.236 in.
Default: 1.60 mm or 0.063 in (from memory; set your own).</source>
   <translation>Leere Saite über Bund 12, Diskantsaite außen.
Erlaubt: 0,50 mm bis 6,00 mm, 0,0197 in bis 0,236 in.
Vorgabe: 1,60 mm oder 0,063 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Options, as differences from this joint.</source>
   <translation>Varianten, als Abweichungen von dieser Verbindung.</translation>
  </message>
  <message>
   <source>Outer string to fretboard edge at the last fret, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 2.50 mm or 0.098 in (from memory; set your own).</source>
   <translation>Äußere Saite zur Griffbrettkante am letzten Bund, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 2,50 mm oder 0,098 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Outer string to outer string at the nut, centre to centre.
Permitted: 20.00 mm to 75.00 mm, 0.787 in to 2.953 in.
Default: 35.00 mm or 1.378 in (from memory; set your own).</source>
   <translation>Äußere Saite zu äußerer Saite am Sattel, Mitte zu Mitte.
Erlaubt: 20,00 mm bis 75,00 mm, 0,787 in bis 2,953 in.
Vorgabe: 35,00 mm oder 1,378 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Outer string to outer string at the saddles.
Permitted: 30.00 mm to 110.00 mm, 1.181 in to 4.331 in.
Default: 52.50 mm or 2.067 in (from memory; set your own).</source>
   <translation>Äußere Saite zu äußerer Saite an den Saitenreitern.
Erlaubt: 30,00 mm bis 110,00 mm, 1,181 in bis 4,331 in.
Vorgabe: 52,50 mm oder 2,067 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Outline</source>
   <translation>Korpusumriss</translation>
  </message>
  <message>
   <source>Outline File</source>
   <translation>Umrissdatei</translation>
  </message>
  <message>
   <source>Outline Points</source>
   <translation>Umrisspunkte</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Griffbrettüberstand</translation>
  </message>
  <message>
   <source>Own outline: centreline to the cutaway's wall beside the pocket, bass side.
Permitted: 28.00 mm to 65.00 mm, 1.102 in to 2.559 in.
Default: 40.00 mm or 1.575 in (from memory; set your own).</source>
   <translation>Eigener Umriss: Mittellinie bis zur Wand des Cutaways neben der Tasche, Bassseite.
Erlaubt: 28,00 mm bis 65,00 mm, 1,102 in bis 2,559 in.
Vorgabe: 40,00 mm oder 1,575 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: centreline to the cutaway's wall beside the pocket, treble side.
Permitted: 28.00 mm to 65.00 mm, 1.102 in to 2.559 in.
Default: 36.00 mm or 1.417 in (from memory; set your own).</source>
   <translation>Eigener Umriss: Mittellinie bis zur Wand des Cutaways neben der Tasche, Diskantseite.
Erlaubt: 28,00 mm bis 65,00 mm, 1,102 in bis 2,559 in.
Vorgabe: 36,00 mm oder 1,417 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: end wall to the body's tail.
Permitted: 250.00 mm to 450.00 mm, 9.843 in to 17.717 in.
Default: 310.00 mm or 12.205 in (from memory; set your own).</source>
   <translation>Eigener Umriss: Stirnwand bis zum unteren Ende des Korpus.
Erlaubt: 250,00 mm bis 450,00 mm, 9,843 in bis 17,717 in.
Vorgabe: 310,00 mm oder 12,205 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: end wall to the bottom of the bass cutaway, toward the mouth.
Permitted: -20.00 mm to 70.00 mm, -0.787 in to 2.756 in.
Default: 34.00 mm or 1.339 in (from memory; set your own).</source>
   <translation>Eigener Umriss: Stirnwand bis zum Grund des bassseitigen Cutaways, zur Mündung hin.
Erlaubt: -20,00 mm bis 70,00 mm, -0,787 in bis 2,756 in.
Vorgabe: 34,00 mm oder 1,339 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: end wall to the bottom of the treble cutaway, toward the mouth.
Permitted: -20.00 mm to 70.00 mm, -0.787 in to 2.756 in.
Default: 18.00 mm or 0.709 in (from memory; set your own).</source>
   <translation>Eigener Umriss: Stirnwand bis zum Grund des diskantseitigen Cutaways, zur Mündung hin.
Erlaubt: -20,00 mm bis 70,00 mm, -0,787 in bis 2,756 in.
Vorgabe: 18,00 mm oder 0,709 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: narrowest part at the waist.
Permitted: 160.00 mm to 320.00 mm, 6.299 in to 12.598 in.
Default: 235.00 mm or 9.252 in (from memory; set your own).</source>
   <translation>Eigener Umriss: schmalste Stelle an der Taille.
Erlaubt: 160,00 mm bis 320,00 mm, 6,299 in bis 12,598 in.
Vorgabe: 235,00 mm oder 9,252 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: widest part at the horns.
Permitted: 240.00 mm to 380.00 mm, 9.449 in to 14.961 in.
Default: 285.00 mm or 11.220 in (from memory; set your own).</source>
   <translation>Eigener Umriss: breiteste Stelle an den Hörnern.
Erlaubt: 240,00 mm bis 380,00 mm, 9,449 in bis 14,961 in.
Vorgabe: 285,00 mm oder 11,220 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Own outline: widest part behind the bridge.
Permitted: 220.00 mm to 420.00 mm, 8.661 in to 16.535 in.
Default: 325.00 mm or 12.795 in (from memory; set your own).</source>
   <translation>Eigener Umriss: breiteste Stelle hinter der Brücke.
Erlaubt: 220,00 mm bis 420,00 mm, 8,661 in bis 16,535 in.
Vorgabe: 325,00 mm oder 12,795 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Pickup Bridge Body Height</source>
   <translation>Brücken-Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>Pickup Bridge Cavity Depth</source>
   <translation>Brücken-Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>Pickup Bridge Fitted</source>
   <translation>Brücken-Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>Pickup Bridge High</source>
   <translation>Brücken-Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>Pickup Bridge Length</source>
   <translation>Brücken-Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>Pickup Bridge Low</source>
   <translation>Brücken-Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>Pickup Bridge Mount</source>
   <translation>Brücken-Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>Pickup Bridge Ring</source>
   <translation>Brücken-Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>Pickup Bridge Spring</source>
   <translation>Brücken-Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>Pickup Bridge Width</source>
   <translation>Brücken-Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>Pickup Bridge X</source>
   <translation>Brücken-Tonabnehmer: x</translation>
  </message>
  <message>
   <source>Pickup Middle Body Height</source>
   <translation>Mittlerer Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>Pickup Middle Cavity Depth</source>
   <translation>Mittlerer Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>Pickup Middle Fitted</source>
   <translation>Mittlerer Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>Pickup Middle High</source>
   <translation>Mittlerer Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>Pickup Middle Length</source>
   <translation>Mittlerer Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>Pickup Middle Low</source>
   <translation>Mittlerer Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>Pickup Middle Mount</source>
   <translation>Mittlerer Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>Pickup Middle Ring</source>
   <translation>Mittlerer Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>Pickup Middle Spring</source>
   <translation>Mittlerer Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>Pickup Middle Width</source>
   <translation>Mittlerer Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>Pickup Middle X</source>
   <translation>Mittlerer Tonabnehmer: x</translation>
  </message>
  <message>
   <source>Pickup Neck Body Height</source>
   <translation>Hals-Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>Pickup Neck Cavity Depth</source>
   <translation>Hals-Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>Pickup Neck Fitted</source>
   <translation>Hals-Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>Pickup Neck High</source>
   <translation>Hals-Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>Pickup Neck Length</source>
   <translation>Hals-Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>Pickup Neck Low</source>
   <translation>Hals-Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>Pickup Neck Mount</source>
   <translation>Hals-Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>Pickup Neck Ring</source>
   <translation>Hals-Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>Pickup Neck Spring</source>
   <translation>Hals-Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>Pickup Neck Width</source>
   <translation>Hals-Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>Pickup Neck X</source>
   <translation>Hals-Tonabnehmer: x</translation>
  </message>
  <message>
   <source>Pickup bridge</source>
   <translation>Tonabnehmer an der Brücke</translation>
  </message>
  <message>
   <source>Pickup middle</source>
   <translation>Tonabnehmer in der Mitte</translation>
  </message>
  <message>
   <source>Pickup neck</source>
   <translation>Tonabnehmer am Hals</translation>
  </message>
  <message>
   <source>Pilot hole deeper than the screw.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 1.50 mm or 0.059 in (from memory; set your own).</source>
   <translation>Vorbohrung tiefer als die Schraube.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 1,50 mm oder 0,059 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>Pocket</source>
   <translation>Tasche</translation>
  </message>
  <message>
   <source>Pole tops above the mount at the highest.
Permitted: -15.00 mm to 60.00 mm, -0.591 in to 2.362 in.
Default: 9.00 mm or 0.354 in (from memory; set your own).</source>
   <translation>Oberkanten der Polstücke über der Montagefläche, höchste Stellung.
Erlaubt: -15,00 mm bis 60,00 mm, -0,591 in bis 2,362 in.
Vorgabe: 9,00 mm oder 0,354 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Pole tops above the mount at the lowest the hardware allows.
Permitted: -20.00 mm to 45.00 mm, -0.787 in to 1.772 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Oberkanten der Polstücke über der Montagefläche, tiefste Stellung, die die Beschläge zulassen.
Erlaubt: -20,00 mm bis 45,00 mm, -0,787 in bis 1,772 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Post Spacing</source>
   <translation>Bolzenabstand</translation>
  </message>
  <message>
   <source>Radius End</source>
   <translation>Griffbrettradius, Ende</translation>
  </message>
  <message>
   <source>Radius Nut</source>
   <translation>Griffbrettradius, Sattel</translation>
  </message>
  <message>
   <source>Radius left between the floor and the walls.
Permitted: 0.00 mm to 6.00 mm, 0.000 in to 0.236 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Radius, der zwischen Boden und Wänden bleibt.
Erlaubt: 0,00 mm bis 6,00 mm, 0,000 in bis 0,236 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Radius of its corners in plan.
One value in mm for each cavity.
Permitted: 0.00 mm to 40.00 mm, 0.000 in to 1.575 in.
Default: 3.20 mm or 0.126 in (from memory; set your own).</source>
   <translation>Radius seiner Ecken in der Draufsicht.
Ein Wert in mm je Hohlraum.
Erlaubt: 0,00 mm bis 40,00 mm, 0,000 in bis 1,575 in.
Vorgabe: 3,20 mm oder 0,126 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Radius of the corners between end wall and sides, left by the cutter.
Permitted: 0.00 mm to 15.00 mm, 0.000 in to 0.591 in.
Default: 3.20 mm or 0.126 in (from memory; set your own).</source>
   <translation>Radius der Ecken zwischen Stirnwand und Seiten, den der Fräser lässt.
Erlaubt: 0,00 mm bis 15,00 mm, 0,000 in bis 0,591 in.
Vorgabe: 3,20 mm oder 0,126 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Radius of the fretboard's top at its end; 100000 mm for a flat one.
Permitted: 120.00 mm to 100000.00 mm, 4.724 in to 3937.008 in.</source>
   <translation>Radius der Griffbrettoberseite an ihrem Ende; 100000 mm für eine ebene.
Erlaubt: 120,00 mm bis 100000,00 mm, 4,724 in bis 3937,008 in.</translation>
  </message>
  <message>
   <source>Radius of the fretboard's top at the nut; 100000 mm for a flat one.
Permitted: 120.00 mm to 100000.00 mm, 4.724 in to 3937.008 in.
Default: 304.80 mm or 12.000 in (from memory; set your own).</source>
   <translation>Radius der Griffbrettoberseite am Sattel; 100000 mm für eine ebene.
Erlaubt: 120,00 mm bis 100000,00 mm, 4,724 in bis 3937,008 in.
Vorgabe: 304,80 mm oder 12,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Radius of the heel's corners in plan.
Permitted: 0.00 mm to 20.00 mm, 0.000 in to 0.787 in.
Default: 3.20 mm or 0.126 in (from memory; set your own).</source>
   <translation>Radius der Ecken des Halsfußes in der Draufsicht.
Erlaubt: 0,00 mm bis 20,00 mm, 0,000 in bis 0,787 in.
Vorgabe: 3,20 mm oder 0,126 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Radius of the rounded outer edges, top and back.
Permitted: 0.00 mm to 12.00 mm, 0.000 in to 0.472 in.
Default: 3.00 mm or 0.118 in (from memory; set your own).</source>
   <translation>Radius der gerundeten Außenkanten, Decke und Rückseite.
Erlaubt: 0,00 mm bis 12,00 mm, 0,000 in bis 0,472 in.
Vorgabe: 3,00 mm oder 0,118 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Reach</source>
   <translation>Schlagbrett, Reichweite</translation>
  </message>
  <message>
   <source>Recess</source>
   <translation>Brückenvertiefung</translation>
  </message>
  <message>
   <source>Relief</source>
   <translation>Halskrümmung</translation>
  </message>
  <message>
   <source>Relief: largest depth of the crowns under the chord from fret 1 to the last.
Permitted: 0.00 mm to 1.00 mm, 0.000 in to 0.039 in.
Default: 0.20 mm or 0.0079 in (from memory; set your own).</source>
   <translation>Halskrümmung: größte Tiefe der Bundkronen unter der Sehne von Bund 1 bis zum letzten.
Erlaubt: 0,00 mm bis 1,00 mm, 0,000 in bis 0,039 in.
Vorgabe: 0,20 mm oder 0,0079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Rod</source>
   <translation>Halsstabeinstellung</translation>
  </message>
  <message>
   <source>Rod Depth</source>
   <translation>Halsstabkanal, Grund</translation>
  </message>
  <message>
   <source>Rod End</source>
   <translation>Halsstabkanal, Ende</translation>
  </message>
  <message>
   <source>Rod Tool</source>
   <translation>Stabwerkzeug, Durchmesser</translation>
  </message>
  <message>
   <source>Rod Tool Height</source>
   <translation>Stabwerkzeug, Höhe</translation>
  </message>
  <message>
   <source>Rod Tool Length</source>
   <translation>Stabwerkzeug, Weg</translation>
  </message>
  <message>
   <source>Rod Width</source>
   <translation>Halsstabkanal, Breite</translation>
  </message>
  <message>
   <source>Room under the overhang, as JSON.</source>
   <translation>Luft unter dem Überstand, als JSON.</translation>
  </message>
  <message>
   <source>Round end: radius of the end wall in plan.
Permitted: 15.00 mm to 400.00 mm, 0.591 in to 15.748 in.</source>
   <translation>Rundes Ende: Radius der Stirnwand in der Draufsicht.
Erlaubt: 15,00 mm bis 400,00 mm, 0,591 in bis 15,748 in.</translation>
  </message>
  <message>
   <source>Round end: radius of the heel end in plan.
Permitted: 15.00 mm to 400.00 mm, 0.591 in to 15.748 in.</source>
   <translation>Rundes Ende: Radius des Halsfußendes in der Draufsicht.
Erlaubt: 15,00 mm bis 400,00 mm, 0,591 in bis 15,748 in.</translation>
  </message>
  <message>
   <source>Saddle Radius</source>
   <translation>Saitenreiterradius</translation>
  </message>
  <message>
   <source>Saddle behind the scale length, bass outer string.
Permitted: -3.00 mm to 12.00 mm, -0.118 in to 0.472 in.
Default: 3.80 mm or 0.150 in (from memory; set your own).</source>
   <translation>Saitenreiter hinter der Mensur, äußere Basssaite.
Erlaubt: -3,00 mm bis 12,00 mm, -0,118 in bis 0,472 in.
Vorgabe: 3,80 mm oder 0,150 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Saddle behind the scale length, treble outer string.
Permitted: -3.00 mm to 12.00 mm, -0.118 in to 0.472 in.
Default: 1.20 mm or 0.047 in (from memory; set your own).</source>
   <translation>Saitenreiter hinter der Mensur, äußere Diskantsaite.
Erlaubt: -3,00 mm bis 12,00 mm, -0,118 in bis 0,472 in.
Vorgabe: 1,20 mm oder 0,047 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Saddle to string anchor, along X.
Permitted: 1.00 mm to 150.00 mm, 0.039 in to 5.906 in.
Default: 30.00 mm or 1.181 in (from memory; set your own).</source>
   <translation>Saitenreiter bis zur Saitenaufhängung, längs X.
Erlaubt: 1,00 mm bis 150,00 mm, 0,039 in bis 5,906 in.
Vorgabe: 30,00 mm oder 1,181 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Saddle travel along the strings.
Permitted: 0.00 mm to 40.00 mm, 0.000 in to 1.575 in.
Default: 10.00 mm or 0.394 in (from memory; set your own).</source>
   <translation>Stellweg der Saitenreiter längs der Saiten.
Erlaubt: 0,00 mm bis 40,00 mm, 0,000 in bis 1,575 in.
Vorgabe: 10,00 mm oder 0,394 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Sampled top: X of the first row.
Permitted: -400.00 mm to 400.00 mm, -15.748 in to 15.748 in.
Default: -80.00 mm or -3.150 in (from memory; set your own).</source>
   <translation>Abgetastete Decke: X der ersten Reihe.
Erlaubt: -400,00 mm bis 400,00 mm, -15,748 in bis 15,748 in.
Vorgabe: -80,00 mm oder -3,150 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Sampled top: Y of a row's first.
Permitted: -400.00 mm to 400.00 mm, -15.748 in to 15.748 in.
Default: -70.00 mm or -2.756 in (from memory; set your own).</source>
   <translation>Abgetastete Decke: Y des ersten Punkts einer Reihe.
Erlaubt: -400,00 mm bis 400,00 mm, -15,748 in bis 15,748 in.
Vorgabe: -70,00 mm oder -2,756 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Sampled top: from sample to sample.
Permitted: 0.50 mm to 50.00 mm, 0.0197 in to 1.969 in.
Default: 10.00 mm or 0.394 in (from memory; set your own).</source>
   <translation>Abgetastete Decke: von Messpunkt zu Messpunkt.
Erlaubt: 0,50 mm bis 50,00 mm, 0,0197 in bis 1,969 in.
Vorgabe: 10,00 mm oder 0,394 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Sampled top: heights over the origin, row by row across the centreline.
One value in mm for each sample.
Permitted: -100.00 mm to 100.00 mm, -3.937 in to 3.937 in.</source>
   <translation>Abgetastete Decke: Höhen über dem Ursprung, Reihe für Reihe quer zur Mittellinie.
Ein Wert in mm je Messpunkt.
Erlaubt: -100,00 mm bis 100,00 mm, -3,937 in bis 3,937 in.</translation>
  </message>
  <message>
   <source>Sampled top: largest error found between the samples.
Permitted: 0.00 mm to 20.00 mm, 0.000 in to 0.787 in.
Default: 0.00 mm or 0.000 in (chosen by this project).</source>
   <translation>Abgetastete Decke: größter Fehler zwischen den Messpunkten.
Erlaubt: 0,00 mm bis 20,00 mm, 0,000 in bis 0,787 in.
Vorgabe: 0,00 mm oder 0,000 in (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Sampled top: number of samples across.
Permitted: 2 to 200.
Default: 2 (from memory; set your own).</source>
   <translation>Abgetastete Decke: Zahl der Messpunkte in der Breite.
Erlaubt: 2 bis 200.
Vorgabe: 2 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Scale</source>
   <translation>Mensur</translation>
  </message>
  <message>
   <source>Scale Bass</source>
   <translation>Mensur, Bassseite</translation>
  </message>
  <message>
   <source>Scale length (of the treble outer string, where the scales differ).
Permitted: 380.00 mm to 1000.00 mm, 14.961 in to 39.370 in.
Measure: nut's front face to fret 12, doubled.
Default: 647.70 mm or 25.500 in (common practice, no source).</source>
   <translation>Mensur (der äußeren Diskantsaite, wo die Mensuren verschieden sind).
Erlaubt: 380,00 mm bis 1000,00 mm, 14,961 in bis 39,370 in.
Messen: Vorderkante des Sattels bis Bund 12, verdoppelt.
Vorgabe: 647,70 mm oder 25,500 in (gängige Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <source>Scale length of the bass outer string.
Permitted: 380.00 mm to 1000.00 mm, 14.961 in to 39.370 in.</source>
   <translation>Mensur der äußeren Basssaite.
Erlaubt: 380,00 mm bis 1000,00 mm, 14,961 in bis 39,370 in.</translation>
  </message>
  <message>
   <source>Screw</source>
   <translation>Schraube</translation>
  </message>
  <message>
   <source>Screw X</source>
   <translation>Schraube x</translation>
  </message>
  <message>
   <source>Screw Y</source>
   <translation>Schraube y</translation>
  </message>
  <message>
   <source>Screw axis to heel edge in shank diameters, least.
Permitted: -20 to 100.
Default: 1.5 (from memory; set your own).</source>
   <translation>Schraubenachse zum Rand des Halsfußes in Schaftdurchmessern, mindestens.
Erlaubt: -20 bis 100.
Vorgabe: 1,5 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Screw grip in shank diameters, least.
Permitted: -20 to 100.
Default: 3 (from memory; set your own).</source>
   <translation>Halt der Schraube in Schaftdurchmessern, mindestens.
Erlaubt: -20 bis 100.
Vorgabe: 3 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Screw lengths the shop has.
One value in mm for each stock.
Permitted: 10.00 mm to 120.00 mm, 0.394 in to 4.724 in.</source>
   <translation>Schraubenlängen, die die Werkstatt hat.
Ein Wert in mm je vorrätige Länge.
Erlaubt: 10,00 mm bis 120,00 mm, 0,394 in bis 4,724 in.</translation>
  </message>
  <message>
   <source>Screw tip under the glue line (one piece: under the slots), least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 1.50 mm or 0.059 in (from memory; set your own).</source>
   <translation>Schraubenspitze unter der Leimfuge (einteilig: unter den Schlitzen), mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 1,50 mm oder 0,059 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Screw tip under the glue line, wished.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 3.00 mm or 0.118 in (from memory; set your own).</source>
   <translation>Schraubenspitze unter der Leimfuge, gewünscht.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 3,00 mm oder 0,118 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Screw to truss-rod channel, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 1.00 mm or 0.039 in (from memory; set your own).</source>
   <translation>Schraube zum Kanal des Halsstabs, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 1,00 mm oder 0,039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Screws</source>
   <translation>Schrauben</translation>
  </message>
  <message>
   <source>Screws Body Hole</source>
   <translation>Korpusloch</translation>
  </message>
  <message>
   <source>Screws Fixing</source>
   <translation>Schraubenart</translation>
  </message>
  <message>
   <source>Screws Head Seat</source>
   <translation>Schraubenkopfsitz</translation>
  </message>
  <message>
   <source>Screws Insert Length</source>
   <translation>Gewindeeinsatzlänge</translation>
  </message>
  <message>
   <source>Screws Length</source>
   <translation>Schraubenlänge</translation>
  </message>
  <message>
   <source>Screws Lengths Stocked</source>
   <translation>Schraubenlängen im Lager</translation>
  </message>
  <message>
   <source>Screws Position Error</source>
   <translation>Lagefehler der Löcher</translation>
  </message>
  <message>
   <source>Screws Shank</source>
   <translation>Schaftdurchmesser</translation>
  </message>
  <message>
   <source>Screws Threaded</source>
   <translation>Gewindelänge</translation>
  </message>
  <message>
   <source>Seat</source>
   <translation>Sitz</translation>
  </message>
  <message>
   <source>Seat End Gap</source>
   <translation>Stirnspalt, kleinster</translation>
  </message>
  <message>
   <source>Separate saddles, one fixed radius on two posts, or floating.
Default: separate saddles (chosen by this project).</source>
   <translation>Einzelne Saitenreiter, ein fester Radius auf zwei Bolzen, oder schwebend.
Vorgabe: separate saddles (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Shaft Thickness</source>
   <translation>Halsdicke</translation>
  </message>
  <message>
   <source>Shank (outer thread) diameter.
Permitted: 2.00 mm to 10.00 mm, 0.079 in to 0.394 in.
Default: 4.20 mm or 0.165 in (from memory; set your own).</source>
   <translation>Durchmesser des Schafts (Außengewinde).
Erlaubt: 2,00 mm bis 10,00 mm, 0,079 in bis 0,394 in.
Vorgabe: 4,20 mm oder 0,165 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Shape of the end wall in plan.
Default: square (chosen by this project).</source>
   <translation>Form der Stirnwand in der Draufsicht.
Vorgabe: square (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Shape of the heel end in plan.
Default: square (chosen by this project).</source>
   <translation>Form des Halsfußendes in der Draufsicht.
Vorgabe: square (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Shape of the top: flat, domed (a sphere), carved (a bowl of two radii) or sampled.
Default: flat (chosen by this project).</source>
   <translation>Form der Decke: eben, kugelig (eine Kugel), gewölbt (eine Schale mit zwei Radien) oder abgetastet.
Vorgabe: flat (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Share of the heel that must bear on the floor.
Permitted: 0 to 1.
Default: 0.8 (from memory; set your own).</source>
   <translation>Anteil des Halsfußes, der auf dem Boden aufliegen muss.
Erlaubt: 0 bis 1.
Vorgabe: 0,8 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Shim</source>
   <translation>Beilage</translation>
  </message>
  <message>
   <source>Shim Make</source>
   <translation>Beilagenbauart</translation>
  </message>
  <message>
   <source>Shim Mouth</source>
   <translation>Beilage, Mündung</translation>
  </message>
  <message>
   <source>Shim Strip</source>
   <translation>Beilagestreifen, Dicke</translation>
  </message>
  <message>
   <source>Shim Strip Edge</source>
   <translation>Beilagestreifen, Kante</translation>
  </message>
  <message>
   <source>Shim Wall</source>
   <translation>Beilage, Stirnwand</translation>
  </message>
  <message>
   <source>Shop</source>
   <translation>Werkstatt</translation>
  </message>
  <message>
   <source>Shop General</source>
   <translation>Allgemeintoleranz der Werkstatt</translation>
  </message>
  <message>
   <source>Shop Spread</source>
   <translation>Streuung der Werkstatt</translation>
  </message>
  <message>
   <source>Shop Step Angle</source>
   <translation>Winkelschritt der Werkstatt</translation>
  </message>
  <message>
   <source>Shop Step Binding</source>
   <translation>Schritt der Einfassung</translation>
  </message>
  <message>
   <source>Shop Step Depth</source>
   <translation>Tiefenschritt der Werkstatt</translation>
  </message>
  <message>
   <source>Shop Step Fretboard</source>
   <translation>Schritt der Griffbrettlänge</translation>
  </message>
  <message>
   <source>Shop Step Plate</source>
   <translation>Schritt der Schlagbrettdicke</translation>
  </message>
  <message>
   <source>Shop Step Recess</source>
   <translation>Schritt der Vertiefung</translation>
  </message>
  <message>
   <source>Shop Step Shim</source>
   <translation>Schritt der Beilagendicke</translation>
  </message>
  <message>
   <source>Shop Stops</source>
   <translation>Anschläge der Oberfräse</translation>
  </message>
  <message>
   <source>Shop Swap</source>
   <translation>Gewicht des Teiletauschs</translation>
  </message>
  <message>
   <source>Show plain information.</source>
   <translation>Einfache Auskünfte zeigen.</translation>
  </message>
  <message>
   <source>Show the room under the overhang.</source>
   <translation>Die Luft unter dem Überstand zeigen.</translation>
  </message>
  <message>
   <source>Show too small and too large gaps.</source>
   <translation>Zu kleine und zu große Spalte zeigen.</translation>
  </message>
  <message>
   <source>Show what could not be checked.</source>
   <translation>Zeigen, was nicht zu prüfen war.</translation>
  </message>
  <message>
   <source>Show what fits.</source>
   <translation>Zeigen, was passt.</translation>
  </message>
  <message>
   <source>Show what interferes.</source>
   <translation>Zeigen, was anstößt.</translation>
  </message>
  <message>
   <source>Show what touches or is worth a look.</source>
   <translation>Zeigen, was berührt oder anzusehen ist.</translation>
  </message>
  <message>
   <source>Size along the centreline, ring included.
Permitted: 5.00 mm to 100.00 mm, 0.197 in to 3.937 in.
Default: 22.00 mm or 0.866 in (from memory; set your own).</source>
   <translation>Größe längs der Mittellinie, mit Rahmen.
Erlaubt: 5,00 mm bis 100,00 mm, 0,197 in bis 3,937 in.
Vorgabe: 22,00 mm oder 0,866 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Size along the centreline.
One value in mm for each cavity.
Permitted: 3.00 mm to 300.00 mm, 0.118 in to 11.811 in.
Default: 40.00 mm or 1.575 in (from memory; set your own).</source>
   <translation>Größe längs der Mittellinie.
Ein Wert in mm je Hohlraum.
Erlaubt: 3,00 mm bis 300,00 mm, 0,118 in bis 11,811 in.
Vorgabe: 40,00 mm oder 1,575 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Size square to the centreline.
One value in mm for each cavity.
Permitted: 3.00 mm to 300.00 mm, 0.118 in to 11.811 in.
Default: 90.00 mm or 3.543 in (from memory; set your own).</source>
   <translation>Größe quer zur Mittellinie.
Ein Wert in mm je Hohlraum.
Erlaubt: 3,00 mm bis 300,00 mm, 0,118 in bis 11,811 in.
Vorgabe: 90,00 mm oder 3,543 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Size square to the centreline.
Permitted: 20.00 mm to 160.00 mm, 0.787 in to 6.299 in.
Default: 84.00 mm or 3.307 in (from memory; set your own).</source>
   <translation>Größe quer zur Mittellinie.
Erlaubt: 20,00 mm bis 160,00 mm, 0,787 in bis 6,299 in.
Vorgabe: 84,00 mm oder 3,307 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of a recess under the bridge.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Kleinste Änderung einer Vertiefung unter der Brücke.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of a shim's thickness.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Kleinste Änderung der Dicke einer Beilage.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of how far the binding hangs.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Kleinste Änderung des Überhangs der Einfassung.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of the cover plate's thickness.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Kleinste Änderung der Dicke des Schlagbretts.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of the fretboard's length.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Kleinste Änderung der Länge des Griffbretts.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of the pocket's angle.
Permitted: 0.001° to 5.00°.
Default: 0.10° (from memory; set your own).</source>
   <translation>Kleinste Änderung des Taschenwinkels.
Erlaubt: 0,001° bis 5,00°.
Vorgabe: 0,10° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Smallest change of the pocket's depth.
Permitted: 0.001 mm to 10.00 mm, &lt;0.0001 in to 0.394 in.
Default: 0.10 mm or 0.0039 in (from memory; set your own).</source>
   <translation>Kleinste Änderung der Taschentiefe.
Erlaubt: 0,001 mm bis 10,00 mm, &lt;0,0001 in bis 0,394 in.
Vorgabe: 0,10 mm oder 0,0039 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Spreads between limits that were stated.</source>
   <translation>Angegebene Streuungen zwischen Grenzen.</translation>
  </message>
  <message>
   <source>Square Fret</source>
   <translation>Gerader Bund</translation>
  </message>
  <message>
   <source>String anchor above the mount; negative for strings through the body.
Permitted: -60.00 mm to 40.00 mm, -2.362 in to 1.575 in.
Default: 2.00 mm or 0.079 in (from memory; set your own).</source>
   <translation>Saitenaufhängung über der Montagefläche; negativ bei Saiten durch den Korpus.
Erlaubt: -60,00 mm bis 40,00 mm, -2,362 in bis 1,575 in.
Vorgabe: 2,00 mm oder 0,079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String at the last fret over the poles, bass, largest.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 4.00 mm or 0.157 in (from memory; set your own).</source>
   <translation>Saite am letzten Bund über den Polstücken, Bass, höchstens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 4,00 mm oder 0,157 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String at the last fret over the poles, bass, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 2.00 mm or 0.079 in (from memory; set your own).</source>
   <translation>Saite am letzten Bund über den Polstücken, Bass, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 2,00 mm oder 0,079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String at the last fret over the poles, treble, largest.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 3.20 mm or 0.126 in (from memory; set your own).</source>
   <translation>Saite am letzten Bund über den Polstücken, Diskant, höchstens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 3,20 mm oder 0,126 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String at the last fret over the poles, treble, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.
Default: 1.60 mm or 0.063 in (from memory; set your own).</source>
   <translation>Saite am letzten Bund über den Polstücken, Diskant, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.
Vorgabe: 1,60 mm oder 0,063 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String's underside above the mount (floating: above the base), saddle at its highest.
Permitted: 1.50 mm to 60.00 mm, 0.059 in to 2.362 in.
Default: 14.50 mm or 0.571 in (from memory; set your own).</source>
   <translation>Unterseite der Saite über der Montagefläche (schwebend: über der Grundplatte), Saitenreiter am höchsten.
Erlaubt: 1,50 mm bis 60,00 mm, 0,059 in bis 2,362 in.
Vorgabe: 14,50 mm oder 0,571 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>String's underside above the mount (floating: above the base), saddle at its lowest.
Permitted: 1.00 mm to 40.00 mm, 0.039 in to 1.575 in.
Default: 9.50 mm or 0.374 in (from memory; set your own).</source>
   <translation>Unterseite der Saite über der Montagefläche (schwebend: über der Grundplatte), Saitenreiter am tiefsten.
Erlaubt: 1,00 mm bis 40,00 mm, 0,039 in bis 1,575 in.
Vorgabe: 9,50 mm oder 0,374 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Strings</source>
   <translation>Saiten</translation>
  </message>
  <message>
   <source>Strings Action Bass</source>
   <translation>Saitenlage, Bass</translation>
  </message>
  <message>
   <source>Strings Action Treble</source>
   <translation>Saitenlage, Diskant</translation>
  </message>
  <message>
   <source>Strings Compensation</source>
   <translation>Saitenkompensation</translation>
  </message>
  <message>
   <source>Strings Compensation Bass</source>
   <translation>Kompensation, Bass</translation>
  </message>
  <message>
   <source>Strings Compensation Treble</source>
   <translation>Kompensation, Diskant</translation>
  </message>
  <message>
   <source>Strings Count</source>
   <translation>Saitenzahl</translation>
  </message>
  <message>
   <source>Strings Hand</source>
   <translation>Spielhand</translation>
  </message>
  <message>
   <source>Strings Left Handed</source>
   <translation>Linkshändig</translation>
  </message>
  <message>
   <source>Strings Mass</source>
   <translation>Saitenmasse</translation>
  </message>
  <message>
   <source>Strings Nut Bass</source>
   <translation>Saite über Bund 1, Bass</translation>
  </message>
  <message>
   <source>Strings Nut Treble</source>
   <translation>Saite über Bund 1, Diskant</translation>
  </message>
  <message>
   <source>Strings Pitch</source>
   <translation>Saitenstimmung</translation>
  </message>
  <message>
   <source>Strings Spread Bridge</source>
   <translation>Saitenspreizung, Brücke</translation>
  </message>
  <message>
   <source>Strings Spread Nut</source>
   <translation>Saitenspreizung, Sattel</translation>
  </message>
  <message>
   <source>Strings Zero Fret</source>
   <translation>Nullbund</translation>
  </message>
  <message>
   <source>Strings mirrored for a left-handed player.
Default: false (chosen by this project).</source>
   <translation>Saiten gespiegelt für Linkshänder.
Vorgabe: false (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Strip: end wall to the strip's mouth-side edge.
Permitted: 2.00 mm to 60.00 mm, 0.079 in to 2.362 in.
Default: 12.00 mm or 0.472 in (from memory; set your own).</source>
   <translation>Streifen: Stirnwand bis zur mündungsseitigen Kante des Streifens.
Erlaubt: 2,00 mm bis 60,00 mm, 0,079 in bis 2,362 in.
Vorgabe: 12,00 mm oder 0,472 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Strip: its thickness.
Permitted: 0.00 mm to 5.00 mm, 0.000 in to 0.197 in.
Default: 0.50 mm or 0.0197 in (from memory; set your own).</source>
   <translation>Streifen: seine Dicke.
Erlaubt: 0,00 mm bis 5,00 mm, 0,000 in bis 0,197 in.
Vorgabe: 0,50 mm oder 0,0197 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Tail</source>
   <translation>Korpuslänge ab Stirnwand</translation>
  </message>
  <message>
   <source>The body of this joint.</source>
   <translation>Der Korpus dieser Verbindung.</translation>
  </message>
  <message>
   <source>The body whose pocket was read.</source>
   <translation>Der Korpus, dessen Tasche gelesen wurde.</translation>
  </message>
  <message>
   <source>The bridge stands on the top, on the cover plate, or in a recess.
Default: top (chosen by this project).</source>
   <translation>Die Brücke steht auf der Decke, auf dem Schlagbrett oder in einer Vertiefung.
Vorgabe: top (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>The centreline, as geometry.</source>
   <translation>Die Mittellinie, als Geometrie.</translation>
  </message>
  <message>
   <source>The end wall is square to the top or to the floor.
Default: top (chosen by this project).</source>
   <translation>Die Stirnwand steht rechtwinklig zur Decke oder zum Boden.
Vorgabe: top (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>The frame in the solid's own coordinates.</source>
   <translation>Das Koordinatensystem in den eigenen Koordinaten des Volumenkörpers.</translation>
  </message>
  <message>
   <source>The hardware of this joint.</source>
   <translation>Die Beschläge dieser Verbindung.</translation>
  </message>
  <message>
   <source>The joint changed since the check.</source>
   <translation>Die Verbindung hat sich seit der Prüfung geändert.</translation>
  </message>
  <message>
   <source>The joint that this part belongs to.</source>
   <translation>Die Verbindung, zu der dieses Teil gehört.</translation>
  </message>
  <message>
   <source>The joint that was checked.</source>
   <translation>Die geprüfte Verbindung.</translation>
  </message>
  <message>
   <source>The neck of this joint.</source>
   <translation>Der Hals dieser Verbindung.</translation>
  </message>
  <message>
   <source>The neck that tells the treble side.</source>
   <translation>Der Hals, der die Diskantseite angibt.</translation>
  </message>
  <message>
   <source>The owner's room.
Permitted: -10.0 °C to 50.0 °C.
Default: 20.0 °C (from memory; set your own).</source>
   <translation>Der Raum des Besitzers.
Erlaubt: -10,0 °C bis 50,0 °C.
Vorgabe: 20,0 °C (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>The plate of this joint.</source>
   <translation>Das Schlagbrett dieser Verbindung.</translation>
  </message>
  <message>
   <source>The plate runs under the fretboard's overhang.
Default: true (chosen by this project).</source>
   <translation>Das Schlagbrett läuft unter den Überstand des Griffbretts.
Vorgabe: true (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>The pocket as read, as JSON.</source>
   <translation>Die Tasche, wie gelesen, als JSON.</translation>
  </message>
  <message>
   <source>The pocket of this joint.</source>
   <translation>Die Tasche dieser Verbindung.</translation>
  </message>
  <message>
   <source>The pocket whose length is looked at.</source>
   <translation>Die Tasche, deren Länge betrachtet wird.</translation>
  </message>
  <message>
   <source>The pocket's floor, as geometry.</source>
   <translation>Der Boden der Tasche, als Geometrie.</translation>
  </message>
  <message>
   <source>The solid has its pocket already; it is read.</source>
   <translation>Der Volumenkörper hat seine Tasche schon; sie wird gelesen.</translation>
  </message>
  <message>
   <source>The solid that stands for it; without one it is built from the values.</source>
   <translation>Der Volumenkörper, der dafür steht; ohne ihn wird es aus den Werten gebaut.</translation>
  </message>
  <message>
   <source>The strings rest on a fret at the nut.
Default: false (chosen by this project).</source>
   <translation>Die Saiten liegen am Sattel auf einem Bund auf.
Vorgabe: false (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>The top face, as geometry.</source>
   <translation>Die Oberseite, als Geometrie.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>Thickness of the body, back to top, at the pocket's end wall.
Permitted: 20.00 mm to 90.00 mm, 0.787 in to 3.543 in.
Measure it with calipers at the pocket's end wall.
Default: 44.45 mm or 1.750 in (from memory; set your own).</source>
   <translation>Dicke des Korpus, Rückseite bis Decke, an der Stirnwand der Tasche.
Erlaubt: 20,00 mm bis 90,00 mm, 0,787 in bis 3,543 in.
Messen mit: Messschieber an der Stirnwand der Tasche.
Vorgabe: 44,45 mm oder 1,750 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Thickness of the cover plate.
Permitted: 0.50 mm to 6.00 mm, 0.0197 in to 0.236 in.
Measure it with calipers at the cut-out's edge.
Default: 2.40 mm or 0.094 in (common practice, no source).</source>
   <translation>Dicke des Schlagbretts.
Erlaubt: 0,50 mm bis 6,00 mm, 0,0197 in bis 0,236 in.
Messen mit: Messschieber am Rand des Ausschnitts.
Vorgabe: 2,40 mm oder 0,094 in (gängige Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <source>Thickness of the neck plate.
Permitted: 0.50 mm to 6.00 mm, 0.0197 in to 0.236 in.
Default: 2.00 mm or 0.079 in (from memory; set your own).</source>
   <translation>Dicke der Halsplatte.
Erlaubt: 0,50 mm bis 6,00 mm, 0,0197 in bis 0,236 in.
Vorgabe: 2,00 mm oder 0,079 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Thickness of the neck's shaft, fretboard included, beyond the heel.
Permitted: 10.00 mm to 40.00 mm, 0.394 in to 1.575 in.
Default: 20.00 mm or 0.787 in (from memory; set your own).</source>
   <translation>Dicke des Halses mit Griffbrett jenseits des Halsfußes.
Erlaubt: 10,00 mm bis 40,00 mm, 0,394 in bis 1,575 in.
Vorgabe: 20,00 mm oder 0,787 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Tilt of the floor; positive tips the headstock back.
Permitted: -6.00° to 6.00°.
Default: 0.00° (from memory; set your own).</source>
   <translation>Neigung des Bodens; positiv kippt die Kopfplatte zurück.
Erlaubt: -6,00° bis 6,00°.
Vorgabe: 0,00° (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>Top Error</source>
   <translation>Fehler der Abtastung</translation>
  </message>
  <message>
   <source>Top From X</source>
   <translation>Abtastung ab X</translation>
  </message>
  <message>
   <source>Top From Y</source>
   <translation>Abtastung ab Y</translation>
  </message>
  <message>
   <source>Top Heights</source>
   <translation>Abgetastete Höhen</translation>
  </message>
  <message>
   <source>Top Rows</source>
   <translation>Messpunkte in der Breite</translation>
  </message>
  <message>
   <source>Top Step</source>
   <translation>Schritt der Abtastung</translation>
  </message>
  <message>
   <source>Travel</source>
   <translation>Saitenreiter, Stellweg</translation>
  </message>
  <message>
   <source>U_h: nut's front face to heel end on the centreline.
Permitted: 200.00 mm to 800.00 mm, 7.874 in to 31.496 in.
Measure: rule along the centreline.
Default: 460.60 mm or 18.134 in (from memory; set your own).</source>
   <translation>U_h: Vorderkante des Sattels bis Ende des Halsfußes auf der Mittellinie.
Erlaubt: 200,00 mm bis 800,00 mm, 7,874 in bis 31,496 in.
Messen: Lineal längs der Mittellinie.
Vorgabe: 460,60 mm oder 18,134 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Under Overhang</source>
   <translation>Schlagbrett unter dem Überstand</translation>
  </message>
  <message>
   <source>Underside</source>
   <translation>Überstand, Unterseite</translation>
  </message>
  <message>
   <source>Unit of bare numbers in the file and of what is shown.
Default: mm (chosen by this project).</source>
   <translation>Einheit bloßer Zahlen in der Datei und in der Anzeige.
Vorgabe: mm (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Upper Width</source>
   <translation>Korpusbreite oben</translation>
  </message>
  <message>
   <source>Values measured on the solid.</source>
   <translation>Am Volumenkörper gemessene Werte.</translation>
  </message>
  <message>
   <source>Values read from the body.</source>
   <translation>Aus dem Korpus gelesene Werte.</translation>
  </message>
  <message>
   <source>Version of the properties.</source>
   <translation>Version der Eigenschaften.</translation>
  </message>
  <message>
   <source>Waist Width</source>
   <translation>Taillenbreite</translation>
  </message>
  <message>
   <source>Wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>What its height is set from: top, cover plate or cavity floor.
Default: plate (chosen by this project).</source>
   <translation>Woran seine Höhe eingestellt wird: Decke, Schlagbrett oder Boden des Hohlraums.
Vorgabe: plate (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>What neck and body share.</source>
   <translation>Was Hals und Korpus gemeinsam haben.</translation>
  </message>
  <message>
   <source>What reading it showed.</source>
   <translation>Was sich beim Lesen zeigte.</translation>
  </message>
  <message>
   <source>What the centreline is an edge of.</source>
   <translation>Woran die Mittellinie eine Kante ist.</translation>
  </message>
  <message>
   <source>What the frame follows: picked faces, a coordinate system, the typed placement, or the place where the solid lies beside the body.</source>
   <translation>Wem das Koordinatensystem folgt: gewählten Flächen, einem Koordinatensystem, der eingetippten Platzierung, oder dem Ort, an dem der Volumenkörper beim Korpus liegt.</translation>
  </message>
  <message>
   <source>What the shop calls this joint.
Default: unnamed joint (chosen by this project).</source>
   <translation>Wie die Werkstatt diese Verbindung nennt.
Vorgabe: unnamed joint (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>What this object is to NeckFit.</source>
   <translation>Was dieses Objekt für NeckFit ist.</translation>
  </message>
  <message>
   <source>Where in the linked object it lies.</source>
   <translation>Wo im verknüpften Objekt es liegt.</translation>
  </message>
  <message>
   <source>Where the outline comes from: this workbench, points, a file, or a section of a solid.
Default: own (chosen by this project).</source>
   <translation>Woher der Umriss kommt: aus dieser Arbeitsumgebung, aus Punkten, einer Datei oder dem Schnitt eines Volumenkörpers.
Vorgabe: own (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Where the truss rod is adjusted.
Default: headstock (chosen by this project).</source>
   <translation>Wo der Halsstab eingestellt wird.
Vorgabe: headstock (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityCornerRadius shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityCornerRadius den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityDepth shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityDepth den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityLength shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityLength den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityWidth shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityWidth den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityX shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityX den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether cavity rows are stated; otherwise CavityY shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Hohlraum“ angegeben sind; sonst zeigt CavityY den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether everything fits.</source>
   <translation>Ob alles passt.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise EndRadius shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt EndRadius den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise HeelRadius shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt HeelRadius den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise LimitsTopStringMin shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt LimitsTopStringMin den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise OutlinePoints shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt OutlinePoints den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise Overhang shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt Overhang den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise RadiusEnd shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt RadiusEnd den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise ScaleBass shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt ScaleBass den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise ScrewsLengthsStocked shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt ScrewsLengthsStocked den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise ShopStops shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt ShopStops den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise StringsCompensation shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt StringsCompensation den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise StringsHand shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt StringsHand den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise StringsMass shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt StringsMass den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise StringsPitch shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt StringsPitch den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise TopHeights shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt TopHeights den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether old pilot rows are stated; otherwise OldPilotX shows what is worked out.</source>
   <translation>Ob Zeilen der Art „old pilot“ angegeben sind; sonst zeigt OldPilotX den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether old pilot rows are stated; otherwise OldPilotY shows what is worked out.</source>
   <translation>Ob Zeilen der Art „old pilot“ angegeben sind; sonst zeigt OldPilotY den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether screw rows are stated; otherwise ScrewX shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Schraube“ angegeben sind; sonst zeigt ScrewX den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether screw rows are stated; otherwise ScrewY shows what is worked out.</source>
   <translation>Ob Zeilen der Art „Schraube“ angegeben sind; sonst zeigt ScrewY den berechneten Wert.</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Brückenbreite</translation>
  </message>
  <message>
   <source>Width End</source>
   <translation>Breite am Ende</translation>
  </message>
  <message>
   <source>Width Mouth</source>
   <translation>Taschenbreite, Mündung</translation>
  </message>
  <message>
   <source>Width Nut</source>
   <translation>Griffbrettbreite, Sattel</translation>
  </message>
  <message>
   <source>Width of the binding along each edge; 0 for none.
Permitted: 0.00 mm to 6.00 mm, 0.000 in to 0.236 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Breite der Einfassung an jeder Kante; 0 für keine.
Erlaubt: 0,00 mm bis 6,00 mm, 0,000 in bis 0,236 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the bridge's base.
Permitted: 30.00 mm to 180.00 mm, 1.181 in to 7.087 in.
Default: 82.00 mm or 3.228 in (from memory; set your own).</source>
   <translation>Breite der Grundplatte der Brücke.
Erlaubt: 30,00 mm bis 180,00 mm, 1,181 in bis 7,087 in.
Vorgabe: 82,00 mm oder 3,228 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the fret crowns.
Permitted: 0.80 mm to 4.00 mm, 0.031 in to 0.157 in.
Default: 2.40 mm or 0.094 in (from memory; set your own).</source>
   <translation>Breite der Bundkronen.
Erlaubt: 0,80 mm bis 4,00 mm, 0,031 in bis 0,157 in.
Vorgabe: 2,40 mm oder 0,094 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the neck plate.
Permitted: 15.00 mm to 90.00 mm, 0.591 in to 3.543 in.
Default: 51.00 mm or 2.008 in (from memory; set your own).</source>
   <translation>Breite der Halsplatte.
Erlaubt: 15,00 mm bis 90,00 mm, 0,591 in bis 3,543 in.
Vorgabe: 51,00 mm oder 2,008 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the pocket at the end wall.
Permitted: 35.00 mm to 110.00 mm, 1.378 in to 4.331 in.
Measure it with inside calipers close to the end wall, above the corner radii.
Default: 56.20 mm or 2.213 in (from memory; set your own).</source>
   <translation>Breite der Tasche an der Stirnwand.
Erlaubt: 35,00 mm bis 110,00 mm, 1,378 in bis 4,331 in.
Messen mit: Innenmessschieber nahe der Stirnwand, über den Eckenradien.
Vorgabe: 56,20 mm oder 2,213 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the pocket at the mouth.
Permitted: 35.00 mm to 110.00 mm, 1.378 in to 4.331 in.
Measure it with inside calipers at the body's edge.
Default: 55.70 mm or 2.193 in (from memory; set your own).</source>
   <translation>Breite der Tasche an der Mündung.
Erlaubt: 35,00 mm bis 110,00 mm, 1,378 in bis 4,331 in.
Messen mit: Innenmessschieber am Rand des Korpus.
Vorgabe: 55,70 mm oder 2,193 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Width of the truss-rod channel.
Permitted: 2.00 mm to 15.00 mm, 0.079 in to 0.591 in.
Default: 6.40 mm or 0.252 in (from memory; set your own).</source>
   <translation>Breite des Halsstabkanals.
Erlaubt: 2,00 mm bis 15,00 mm, 0,079 in bis 0,591 in.
Vorgabe: 6,40 mm oder 0,252 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Wish: strings over the top under the hand, least.
Permitted: -20.00 mm to 100.00 mm, -0.787 in to 3.937 in.</source>
   <translation>Wunsch: Saiten über der Decke unter der Hand, mindestens.
Erlaubt: -20,00 mm bis 100,00 mm, -0,787 in bis 3,937 in.</translation>
  </message>
  <message>
   <source>Withdrawal capacity per handbook divided by this.
Permitted: 1 to 50.
Default: 5 (from memory; set your own).</source>
   <translation>Ausziehwiderstand nach Handbuch, geteilt durch diesen Wert.
Erlaubt: 1 bis 50.
Vorgabe: 5 (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Wood</source>
   <translation>Holz</translation>
  </message>
  <message>
   <source>Wood Body</source>
   <translation>Korpusholz</translation>
  </message>
  <message>
   <source>Wood Body Ring</source>
   <translation>Jahresringe, Korpus</translation>
  </message>
  <message>
   <source>Wood Moisture Cut</source>
   <translation>Holzfeuchte beim Fräsen</translation>
  </message>
  <message>
   <source>Wood Neck</source>
   <translation>Halsholz</translation>
  </message>
  <message>
   <source>Wood Neck Ring</source>
   <translation>Jahresringe, Hals</translation>
  </message>
  <message>
   <source>Wood of the body, as named in the table of woods.
Default: red alder (from memory; set your own).</source>
   <translation>Holz des Korpus, wie in der Tabelle der Hölzer benannt.
Vorgabe: red alder (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Wood of the neck.
Default: sugar maple (from memory; set your own).</source>
   <translation>Holz des Halses.
Vorgabe: sugar maple (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Wood screws, or machine screws into threaded inserts.
Default: wood screw (chosen by this project).</source>
   <translation>Holzschrauben, oder Maschinenschrauben in Gewindeeinsätzen.
Vorgabe: wood screw (von diesem Projekt gewählt).</translation>
  </message>
  <message>
   <source>X of an old pilot hole in the heel, from the heel end (neck frame, negative).
One value in mm for each pilot.
Permitted: -150.00 mm to 0.00 mm, -5.906 in to 0.000 in.</source>
   <translation>X einer alten Vorbohrung im Halsfuß, ab Ende des Halsfußes (Koordinatensystem des Halses, negativ).
Ein Wert in mm je Vorbohrung.
Erlaubt: -150,00 mm bis 0,00 mm, -5,906 in bis 0,000 in.</translation>
  </message>
  <message>
   <source>X of the cavity's centre.
One value in mm for each cavity.
Permitted: -200.00 mm to 450.00 mm, -7.874 in to 17.717 in.</source>
   <translation>X der Mitte des Hohlraums.
Ein Wert in mm je Hohlraum.
Erlaubt: -200,00 mm bis 450,00 mm, -7,874 in bis 17,717 in.</translation>
  </message>
  <message>
   <source>X of the pickup's pole line.
Permitted: -20.00 mm to 500.00 mm, -0.787 in to 19.685 in.
Default: 142.00 mm or 5.591 in (from memory; set your own).</source>
   <translation>X der Polstücklinie des Tonabnehmers.
Erlaubt: -20,00 mm bis 500,00 mm, -0,787 in bis 19,685 in.
Vorgabe: 142,00 mm oder 5,591 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>X of the pickup's pole line.
Permitted: -20.00 mm to 500.00 mm, -0.787 in to 19.685 in.
Default: 34.00 mm or 1.339 in (from memory; set your own).</source>
   <translation>X der Polstücklinie des Tonabnehmers.
Erlaubt: -20,00 mm bis 500,00 mm, -0,787 in bis 19,685 in.
Vorgabe: 34,00 mm oder 1,339 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>X of the pickup's pole line.
Permitted: -20.00 mm to 500.00 mm, -0.787 in to 19.685 in.
Default: 88.00 mm or 3.465 in (from memory; set your own).</source>
   <translation>X der Polstücklinie des Tonabnehmers.
Erlaubt: -20,00 mm bis 500,00 mm, -0,787 in bis 19,685 in.
Vorgabe: 88,00 mm oder 3,465 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>X of the saddle's string rest with the saddle fully forward.
Permitted: 20.00 mm to 600.00 mm, 0.787 in to 23.622 in.
Measure: rule from the end wall.
Default: 184.50 mm or 7.264 in (from memory; set your own).</source>
   <translation>X der Saitenauflage, Saitenreiter ganz nach vorn gestellt.
Erlaubt: 20,00 mm bis 600,00 mm, 0,787 in bis 23,622 in.
Messen: Lineal von der Stirnwand.
Vorgabe: 184,50 mm oder 7,264 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>X of the screw in the body frame at the floor.
One value in mm for each screw.
Permitted: -150.00 mm to 0.00 mm, -5.906 in to 0.000 in.</source>
   <translation>X der Schraube im Koordinatensystem des Korpus, am Boden.
Ein Wert in mm je Schraube.
Erlaubt: -150,00 mm bis 0,00 mm, -5,906 in bis 0,000 in.</translation>
  </message>
  <message>
   <source>X points to the other end of the centreline.</source>
   <translation>X zeigt zum anderen Ende der Mittellinie.</translation>
  </message>
  <message>
   <source>X under the playing hand; midway from fretboard end to saddles unless stated.
Permitted: 0.00 mm to 600.00 mm, 0.000 in to 23.622 in.</source>
   <translation>X unter der Spielhand; ohne Angabe auf halbem Weg vom Griffbrettende zu den Saitenreitern.
Erlaubt: 0,00 mm bis 600,00 mm, 0,000 in bis 23,622 in.</translation>
  </message>
  <message>
   <source>Y of an old pilot hole in the heel.
One value in mm for each pilot.
Permitted: -60.00 mm to 60.00 mm, -2.362 in to 2.362 in.</source>
   <translation>Y einer alten Vorbohrung im Halsfuß.
Ein Wert in mm je Vorbohrung.
Erlaubt: -60,00 mm bis 60,00 mm, -2,362 in bis 2,362 in.</translation>
  </message>
  <message>
   <source>Y of the cavity's centre.
One value in mm for each cavity.
Permitted: -200.00 mm to 200.00 mm, -7.874 in to 7.874 in.
Default: 0.00 mm or 0.000 in (from memory; set your own).</source>
   <translation>Y der Mitte des Hohlraums.
Ein Wert in mm je Hohlraum.
Erlaubt: -200,00 mm bis 200,00 mm, -7,874 in bis 7,874 in.
Vorgabe: 0,00 mm oder 0,000 in (aus dem Gedächtnis; den eigenen Wert angeben).</translation>
  </message>
  <message>
   <source>Y of the screw.
One value in mm for each screw.
Permitted: -60.00 mm to 60.00 mm, -2.362 in to 2.362 in.</source>
   <translation>Y der Schraube.
Ein Wert in mm je Schraube.
Erlaubt: -60,00 mm bis 60,00 mm, -2,362 in bis 2,362 in.</translation>
  </message>
 </context>
 <context>
  <name>NeckFit</name>
  <message>
   <source>        limits can shift it: what remains in most joints</source>
   <translation>        seine Grenzen es verschieben können: was in den meisten Verbindungen bleibt</translation>
  </message>
  <message>
   <source>        negative where the demand is not met, in mm or inches unless a unit stands there</source>
   <translation>        negativ, wo die Forderung nicht erfüllt ist; in mm oder Zoll, wenn keine Einheit dasteht</translation>
  </message>
  <message>
   <source> (+{} more)</source>
   <translation> (+{} weitere)</translation>
  </message>
  <message>
   <source> (and {} more)</source>
   <translation> (und {} weitere)</translation>
  </message>
  <message>
   <source> (others)</source>
   <translation> (andere)</translation>
  </message>
  <message>
   <source> - NOT MET</source>
   <translation> - NICHT ERFÜLLT</translation>
  </message>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source>&amp;Adopt a solid…</source>
   <translation>Volumenkörper ü&amp;bernehmen…</translation>
  </message>
  <message>
   <source>&amp;Bring lost objects back to life</source>
   <translation>Verlorene Ob&amp;jekte wiederbeleben</translation>
  </message>
  <message>
   <source>&amp;Browse…</source>
   <translation>&amp;Durchsuchen…</translation>
  </message>
  <message>
   <source>&amp;Check the joint</source>
   <translation>&amp;Verbindung prüfen</translation>
  </message>
  <message>
   <source>&amp;Compare the joint now with</source>
   <translation>Verbindung jetzt &amp;vergleichen mit</translation>
  </message>
  <message>
   <source>&amp;Depths and angles that work…</source>
   <translation>Mö&amp;gliche Tiefen und Winkel…</translation>
  </message>
  <message>
   <source>&amp;Draw the pocket</source>
   <translation>&amp;Tasche zeichnen</translation>
  </message>
  <message>
   <source>&amp;Fit depth and angle…</source>
   <translation>Tiefe und Winkel &amp;einpassen…</translation>
  </message>
  <message>
   <source>&amp;Import a neck…</source>
   <translation>Hals &amp;importieren…</translation>
  </message>
  <message>
   <source>&amp;Labels in the 3D view</source>
   <translation>Beschriftungen in der &amp;3D-Ansicht</translation>
  </message>
  <message>
   <source>&amp;Let go of a solid</source>
   <translation>Volumenkörper los&amp;lassen</translation>
  </message>
  <message>
   <source>&amp;New joint</source>
   <translation>&amp;Neue Verbindung</translation>
  </message>
  <message>
   <source>&amp;Open job file…</source>
   <translation>Auftragsdatei &amp;öffnen…</translation>
  </message>
  <message>
   <source>&amp;Options side by side…</source>
   <translation>Va&amp;rianten nebeneinander…</translation>
  </message>
  <message>
   <source>&amp;Previous finding</source>
   <translation>V&amp;origer Befund</translation>
  </message>
  <message>
   <source>&amp;Say in the status bar when a check is out of date</source>
   <translation>In der &amp;Statusleiste melden, wenn eine Prüfung veraltet ist</translation>
  </message>
  <message>
   <source>&amp;Tolerances…</source>
   <translation>Toleran&amp;zen…</translation>
  </message>
  <message>
   <source>&amp;Units of findings</source>
   <translation>E&amp;inheiten der Befunde</translation>
  </message>
  <message>
   <source>1 face</source>
   <translation>1 Fläche</translation>
  </message>
  <message>
   <source>1 question is open</source>
   <translation>1 Frage ist offen</translation>
  </message>
  <message>
   <source>95 % confidence {} to {}; {} joints drawn</source>
   <translation>95 % Vertrauensbereich {} bis {}; {} Verbindungen gezogen</translation>
  </message>
  <message>
   <source>; its unit is suspicious too: divided by 25.4 it measures {}, round numbers of millimetres</source>
   <translation>; auch seine Einheit ist verdächtig: geteilt durch 25.4 misst er {}, runde Millimeter</translation>
  </message>
  <message>
   <source>A coordinate system that is the frame.</source>
   <translation>Ein Koordinatensystem, das der Bezug ist.</translation>
  </message>
  <message>
   <source>A deeper pocket pushes the same screw deeper.</source>
   <translation>Eine tiefere Tasche setzt dieselbe Schraube tiefer.</translation>
  </message>
  <message>
   <source>A frame is 6 numbers, X, Y, Z, yaw, pitch and roll, not {}.</source>
   <translation>Ein Koordinatensystem sind 6 Zahlen, X, Y, Z, Gieren, Nicken und Rollen, nicht {}.</translation>
  </message>
  <message>
   <source>A fretted string buzzes or chokes on a later fret.</source>
   <translation>Eine gegriffene Saite schnarrt auf einem weiteren Bund oder stirbt dort ab.</translation>
  </message>
  <message>
   <source>A gap shows under the fretboard, and gathers dirt.</source>
   <translation>Unter dem Griffbrett zeigt sich ein Spalt, in dem sich Schmutz sammelt.</translation>
  </message>
  <message>
   <source>A job file (TOML) with limits, woods, screws: what all your joints share.</source>
   <translation>Eine Auftragsdatei (TOML) mit Grenzen, Hölzern, Schrauben: was allen Verbindungen gemeinsam ist.</translation>
  </message>
  <message>
   <source>A joint has at most {} options; remove one first.</source>
   <translation>Eine Verbindung hat höchstens {} Varianten; zuerst eine entfernen.</translation>
  </message>
  <message>
   <source>A joint's body, neck or plate can be adopted, not its {}.</source>
   <translation>Korpus, Hals oder Schlagbrett einer Verbindung lassen sich übernehmen, nicht {}.</translation>
  </message>
  <message>
   <source>A neck was recognised; OK puts it into the pocket and checks the joint.</source>
   <translation>Ein Hals wurde erkannt; OK setzt ihn in die Tasche und prüft die Verbindung.</translation>
  </message>
  <message>
   <source>A saddle does not reach the place its string needs: the instrument cannot be played in tune, whatever else fits.</source>
   <translation>Ein Saitenreiter erreicht die Stelle nicht, die seine Saite braucht: das Instrument ist nicht rein zu stimmen, was sonst auch passt.</translation>
  </message>
  <message>
   <source>A screw runs into the truss rod and locks or breaks it.</source>
   <translation>Eine Schraube trifft den Halsstab und sperrt oder bricht ihn.</translation>
  </message>
  <message>
   <source>A screw tip lifts the fretboard, a fret, or comes through it.</source>
   <translation>Eine Schraubenspitze hebt das Griffbrett oder einen Bund, oder tritt hindurch.</translation>
  </message>
  <message>
   <source>A straight edge, a sketch's line or a datum line along the middle.</source>
   <translation>Eine gerade Kante, eine Skizzenlinie oder eine Bezugslinie längs der Mitte.</translation>
  </message>
  <message>
   <source>Add a joint that fits, to begin with, or one with the shop's values that the preferences name</source>
   <translation>Eine passende Verbindung zum Anfangen anlegen, oder eine mit den Werten der Werkstatt laut Einstellungen</translation>
  </message>
  <message>
   <source>Add the joint that a job file (TOML) states to this document</source>
   <translation>Die Verbindung aus einer Auftragsdatei (TOML) in dieses Dokument einfügen</translation>
  </message>
  <message>
   <source>Adjusted at</source>
   <translation>Eingestellt am</translation>
  </message>
  <message>
   <source>Adopt</source>
   <translation>Übernehmen</translation>
  </message>
  <message>
   <source>Adopt a solid</source>
   <translation>Volumenkörper übernehmen</translation>
  </message>
  <message>
   <source>Adopt as</source>
   <translation>Übernehmen als</translation>
  </message>
  <message>
   <source>All files</source>
   <translation>Alle Dateien</translation>
  </message>
  <message>
   <source>All findings, as JSON.</source>
   <translation>Alle Befunde, als JSON.</translation>
  </message>
  <message>
   <source>An open gap behind the heel.</source>
   <translation>Ein offener Spalt hinter dem Halsfuß.</translation>
  </message>
  <message>
   <source>An open string rattles on a fret.</source>
   <translation>Eine leere Saite schnarrt auf einem Bund.</translation>
  </message>
  <message>
   <source>An outer string slips over the edge of the upper frets.</source>
   <translation>Eine äußere Saite rutscht über die Kante der oberen Bünde.</translation>
  </message>
  <message>
   <source>Apr</source>
   <translation>Apr</translation>
  </message>
  <message>
   <source>As stated</source>
   <translation>Wie angegeben</translation>
  </message>
  <message>
   <source>At this depth the bridge suits only a pocket that is tipped otherwise.</source>
   <translation>Bei dieser Tiefe passt die Brücke nur zu einer anders gekippten Tasche.</translation>
  </message>
  <message>
   <source>At {} no depth works.</source>
   <translation>Bei {} ist keine Tiefe möglich.</translation>
  </message>
  <message>
   <source>Aug</source>
   <translation>Aug</translation>
  </message>
  <message>
   <source>Back to its default</source>
   <translation>Zurück zur Vorgabe</translation>
  </message>
  <message>
   <source>Binding hangs by</source>
   <translation>Überhang der Einfassung</translation>
  </message>
  <message>
   <source>Binding's width</source>
   <translation>Breite der Einfassung</translation>
  </message>
  <message>
   <source>Body</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>Bold: its limits are stated; else declared or general ones.</source>
   <translation>Fett: Grenzen angegeben; sonst vorgegebene oder allgemeine.</translation>
  </message>
  <message>
   <source>Both states are the same.</source>
   <translation>Beide Stände sind gleich.</translation>
  </message>
  <message>
   <source>Bounds of the window:</source>
   <translation>Grenzen des Fensters:</translation>
  </message>
  <message>
   <source>Bridge</source>
   <translation>Brücke</translation>
  </message>
  <message>
   <source>Build and check a whole joint to try things on: body, pocket, neck, cover plate, hardware</source>
   <translation>Eine ganze Verbindung zum Ausprobieren bauen und prüfen: Korpus, Tasche, Hals, Schlagbrett, Beschläge</translation>
  </message>
  <message>
   <source>Build the &amp;sample joint</source>
   <translation>&amp;Musterverbindung bauen</translation>
  </message>
  <message>
   <source>By an engineering estimate the screws near the mouth may pull out.</source>
   <translation>Nach ingenieurmäßiger Abschätzung können die Schrauben nahe der Mündung ausreißen.</translation>
  </message>
  <message>
   <source>By calculation: not told; only the solids can tell.</source>
   <translation>Durch Rechnung: nicht zu sagen; nur die Volumenkörper zeigen es.</translation>
  </message>
  <message>
   <source>By calculation: {}</source>
   <translation>Durch Rechnung: {}</translation>
  </message>
  <message>
   <source>Cavity</source>
   <translation>Hohlraum</translation>
  </message>
  <message>
   <source>Centreline</source>
   <translation>Mittellinie</translation>
  </message>
  <message>
   <source>Chamfer below</source>
   <translation>Fase unten</translation>
  </message>
  <message>
   <source>Chamfer the heel's bottom edges by the fillet's radius, or clean the fillet out; {short} too high.</source>
   <translation>Die unteren Kanten des Halsfußes um den Radius der Kehle fasen, oder die Kehle ausräumen; {short} zu hoch.</translation>
  </message>
  <message>
   <source>Change the pocket's width by twice {short}, or match the woods' rings.</source>
   <translation>Die Breite der Tasche um das Doppelte von {short} ändern, oder die Jahresringe der Hölzer aufeinander abstimmen.</translation>
  </message>
  <message>
   <source>Changes that mend it, smallest first</source>
   <translation>Änderungen, die abhelfen, kleinste zuerst</translation>
  </message>
  <message>
   <source>Channel's bottom</source>
   <translation>Grund des Kanals</translation>
  </message>
  <message>
   <source>Channel's end to heel end</source>
   <translation>Kanalende bis Halsfuß</translation>
  </message>
  <message>
   <source>Channel's width</source>
   <translation>Breite des Kanals</translation>
  </message>
  <message>
   <source>Check</source>
   <translation>Prüfung</translation>
  </message>
  <message>
   <source>Check &amp;all that is out of date</source>
   <translation>&amp;Alles Veraltete prüfen</translation>
  </message>
  <message>
   <source>Check every joint of this document that changed since its last check</source>
   <translation>Jede Verbindung des Dokuments prüfen, die sich seit ihrer letzten Prüfung geändert hat</translation>
  </message>
  <message>
   <source>Check the joint</source>
   <translation>Verbindung prüfen</translation>
  </message>
  <message>
   <source>Check the joint by calculation and on its solids, and show the findings in the 3D view</source>
   <translation>Die Verbindung durch Rechnung und an den Volumenkörpern prüfen und die Befunde in der 3D-Ansicht zeigen</translation>
  </message>
  <message>
   <source>Choose a finding to see what it costs.</source>
   <translation>Einen Befund wählen, um seine Kosten zu sehen.</translation>
  </message>
  <message>
   <source>Choose a narrower string spread or a wider fretboard, or less side clearance; {short} are missing.</source>
   <translation>Einen engeren Saitenabstand, ein breiteres Griffbrett oder weniger Seitenspiel wählen; {short} fehlen.</translation>
  </message>
  <message>
   <source>Choose a row to see which faces told it.</source>
   <translation>Eine Zeile wählen, um zu sehen, welche Flächen sie ergaben.</translation>
  </message>
  <message>
   <source>Choose saddles whose radius lies nearer to that of the crowns at the bridge; the error is too large by {short}.</source>
   <translation>Saitenreiter wählen, deren Radius näher an dem der Bundkronen an der Brücke liegt; der Fehler ist um {short} zu groß.</translation>
  </message>
  <message>
   <source>Choose the shop's room first: it tells the moisture by month.</source>
   <translation>Zuerst den Raum der Werkstatt wählen: er gibt die Holzfeuchte je Monat.</translation>
  </message>
  <message>
   <source>Choose…</source>
   <translation>Wählen…</translation>
  </message>
  <message>
   <source>Chosen by hand.</source>
   <translation>Von Hand gewählt.</translation>
  </message>
  <message>
   <source>Clear fillets and high spots from under the heel.</source>
   <translation>Kehlen und hohe Stellen unter dem Halsfuß entfernen.</translation>
  </message>
  <message>
   <source>Click a coordinate system, in the 3D view or in the tree.</source>
   <translation>Ein Koordinatensystem anklicken, in der 3D-Ansicht oder im Baum.</translation>
  </message>
  <message>
   <source>Click an edge or a line that runs along the middle of the neck pocket.</source>
   <translation>Eine Kante oder Linie anklicken, die längs durch die Mitte der Halstasche läuft.</translation>
  </message>
  <message>
   <source>Click into the picture to try a place.</source>
   <translation>In das Bild klicken, um eine Stelle zu versuchen.</translation>
  </message>
  <message>
   <source>Click the body, in the 3D view or in the tree.</source>
   <translation>Den Korpus anklicken, in der 3D-Ansicht oder im Baum.</translation>
  </message>
  <message>
   <source>Click the cover plate, in the 3D view or in the tree.</source>
   <translation>Das Schlagbrett anklicken, in der 3D-Ansicht oder im Baum.</translation>
  </message>
  <message>
   <source>Click the floor of the neck pocket.</source>
   <translation>Den Boden der Halstasche anklicken.</translation>
  </message>
  <message>
   <source>Click the neck, in the 3D view or in the tree.</source>
   <translation>Den Hals anklicken, in der 3D-Ansicht oder im Baum.</translation>
  </message>
  <message>
   <source>Click the right face in the 3D view; with Ctrl one more, or one less.</source>
   <translation>Die richtige Fläche in der 3D-Ansicht anklicken; mit Strg eine mehr oder eine weniger.</translation>
  </message>
  <message>
   <source>Click the top of the body, in the 3D view.</source>
   <translation>Die Oberseite des Korpus anklicken, in der 3D-Ansicht.</translation>
  </message>
  <message>
   <source>Climate</source>
   <translation>Klima</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Colour the overhang by the room below it</source>
   <translation>Den Überstand nach der Luft darunter einfärben</translation>
  </message>
  <message>
   <source>Compare &amp;two states…</source>
   <translation>Z&amp;wei Stände vergleichen…</translation>
  </message>
  <message>
   <source>Compare the joint with how it was saved, with a job file, or with measured values</source>
   <translation>Die Verbindung mit ihrem gespeicherten Stand, einer Auftragsdatei oder gemessenen Werten vergleichen</translation>
  </message>
  <message>
   <source>Compare two states</source>
   <translation>Zwei Stände vergleichen</translation>
  </message>
  <message>
   <source>Compare with a job file</source>
   <translation>Mit einer Auftragsdatei vergleichen</translation>
  </message>
  <message>
   <source>Coordinate system</source>
   <translation>Koordinatensystem</translation>
  </message>
  <message>
   <source>Corner radius</source>
   <translation>Eckenradius</translation>
  </message>
  <message>
   <source>Cover plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>Crown height</source>
   <translation>Höhe der Bundkrone</translation>
  </message>
  <message>
   <source>Crown width</source>
   <translation>Breite der Bundkrone</translation>
  </message>
  <message>
   <source>Cut a channel {short} deep for the tool, or raise its path.</source>
   <translation>Einen Kanal von {short} Tiefe für das Werkzeug fräsen, oder seinen Weg höher legen.</translation>
  </message>
  <message>
   <source>Cut at {} % moisture. Blue: what the limits allow.</source>
   <translation>Gefräst bei {} % Holzfeuchte. Blau: was die Grenzen zulassen.</translation>
  </message>
  <message>
   <source>Cut in</source>
   <translation>Gefräst im</translation>
  </message>
  <message>
   <source>Cut the plate back or make it thinner, or raise the neck by {short}.</source>
   <translation>Das Schlagbrett zurückschneiden oder dünner machen, oder den Hals um {short} höher setzen.</translation>
  </message>
  <message>
   <source>DOES NOT FIT</source>
   <translation>PASST NICHT</translation>
  </message>
  <message>
   <source>DOES NOT FIT through the year</source>
   <translation>PASST NICHT übers Jahr</translation>
  </message>
  <message>
   <source>DXF or FCStd file with one closed outline in the body frame</source>
   <translation>DXF- oder FCStd-Datei mit einem geschlossenen Umriss im Koordinatensystem des Korpus</translation>
  </message>
  <message>
   <source>Dec</source>
   <translation>Dez</translation>
  </message>
  <message>
   <source>Default: {} ({}).</source>
   <translation>Vorgabe: {} ({}).</translation>
  </message>
  <message>
   <source>Depth and</source>
   <translation>Tiefe und</translation>
  </message>
  <message>
   <source>Depths and angles that work</source>
   <translation>Mögliche Tiefen und Winkel</translation>
  </message>
  <message>
   <source>Depths that work at {}: {}</source>
   <translation>Mögliche Tiefen bei {}: {}</translation>
  </message>
  <message>
   <source>Diameter of the router bit; the largest usual one, if left empty.</source>
   <translation>Durchmesser des Fräsers; leer: der größte übliche.</translation>
  </message>
  <message>
   <source>Differences to the first column stand below each figure. {} marks a demand that is not met.</source>
   <translation>Abweichungen von der ersten Spalte stehen unter jeder Zahl. {} bezeichnet eine nicht erfüllte Forderung.</translation>
  </message>
  <message>
   <source>Digest of the values checked.</source>
   <translation>Prüfsumme der geprüften Werte.</translation>
  </message>
  <message>
   <source>Digest of the values it was built from.</source>
   <translation>Prüfsumme der Werte, aus denen es gebaut ist.</translation>
  </message>
  <message>
   <source>Digest of what was measured.</source>
   <translation>Prüfsumme des Gemessenen.</translation>
  </message>
  <message>
   <source>Digest of what was read.</source>
   <translation>Prüfsumme des Gelesenen.</translation>
  </message>
  <message>
   <source>Dimension</source>
   <translation>Maß</translation>
  </message>
  <message>
   <source>Dimensions that vary, and their limits</source>
   <translation>Veränderliche Maße und ihre Grenzen</translation>
  </message>
  <message>
   <source>Dimensions without limits</source>
   <translation>Maße ohne Grenzen</translation>
  </message>
  <message>
   <source>Draw the pocket on a TechDraw page that can be edited; draw it anew after changes</source>
   <translation>Die Tasche auf ein bearbeitbares TechDraw-Blatt zeichnen; nach Änderungen neu zeichnen</translation>
  </message>
  <message>
   <source>Drawing joints</source>
   <translation>Verbindungen werden gezogen</translation>
  </message>
  <message>
   <source>Drill the body's holes wider by {short}.</source>
   <translation>Die Löcher im Korpus um {short} weiter bohren.</translation>
  </message>
  <message>
   <source>Explains</source>
   <translation>Erklärt</translation>
  </message>
  <message>
   <source>Faces as found</source>
   <translation>Flächen wie gefunden</translation>
  </message>
  <message>
   <source>Faces that tell the neck</source>
   <translation>Flächen, die den Hals ergeben</translation>
  </message>
  <message>
   <source>Feb</source>
   <translation>Feb</translation>
  </message>
  <message>
   <source>Fewest parts first, then the smallest change in the shop's steps. Each has passed the full check on solids.</source>
   <translation>Wenigste Teile zuerst, dann die kleinste Änderung in Schritten der Werkstatt. Jede hat die volle Prüfung an Volumenkörpern bestanden.</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Befund</translation>
  </message>
  <message>
   <source>Findings that differ: {} ({}: {}; {}: {})</source>
   <translation>Abweichende Befunde: {} ({}: {}; {}: {})</translation>
  </message>
  <message>
   <source>Finish</source>
   <translation>Lack</translation>
  </message>
  <message>
   <source>Fit</source>
   <translation>Passung</translation>
  </message>
  <message>
   <source>Fit: {}</source>
   <translation>Passung: {}</translation>
  </message>
  <message>
   <source>Flat length</source>
   <translation>Ebene Länge</translation>
  </message>
  <message>
   <source>Flatness below</source>
   <translation>Ebenheit unten</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Ordner</translation>
  </message>
  <message>
   <source>Folder to put the package into</source>
   <translation>Ordner für das Paket</translation>
  </message>
  <message>
   <source>Follow clearances and grip through the owner's year</source>
   <translation>Spiel und Halt der Schrauben übers Jahr beim Besitzer verfolgen</translation>
  </message>
  <message>
   <source>Found by itself.</source>
   <translation>Von selbst gefunden.</translation>
  </message>
  <message>
   <source>Fretboard</source>
   <translation>Griffbrett</translation>
  </message>
  <message>
   <source>Fretboard top, centreline</source>
   <translation>Griffbrett, Mittellinie</translation>
  </message>
  <message>
   <source>Frets</source>
   <translation>Bünde</translation>
  </message>
  <message>
   <source>Frets and scale</source>
   <translation>Bünde und Mensur</translation>
  </message>
  <message>
   <source>General tolerance of what the shop makes and states no limits of.</source>
   <translation>Allgemeintoleranz dessen, was die Werkstatt fertigt und wofür sie keine Grenzen angibt.</translation>
  </message>
  <message>
   <source>Give their behaviour back to objects that were saved where NeckFit was not installed</source>
   <translation>Objekten, die ohne NeckFit gespeichert wurden, ihr Verhalten zurückgeben</translation>
  </message>
  <message>
   <source>Glue line's height</source>
   <translation>Höhe der Leimfuge</translation>
  </message>
  <message>
   <source>Guide bush</source>
   <translation>Kopierhülse</translation>
  </message>
  <message>
   <source>H: heel bottom to fretboard top on the centreline, without frets</source>
   <translation>H: Unterseite des Halsfußes bis Oberseite des Griffbretts auf der Mittellinie, ohne Bünde</translation>
  </message>
  <message>
   <source>Hardware</source>
   <translation>Beschläge</translation>
  </message>
  <message>
   <source>Heel</source>
   <translation>Halsfuß</translation>
  </message>
  <message>
   <source>Heel bottom</source>
   <translation>Halsfußunterseite</translation>
  </message>
  <message>
   <source>Heel end</source>
   <translation>Halsfußende</translation>
  </message>
  <message>
   <source>Heel sides</source>
   <translation>Halsfußseiten</translation>
  </message>
  <message>
   <source>Height over heel bottom</source>
   <translation>Höhe ab Unterseite</translation>
  </message>
  <message>
   <source>Hole</source>
   <translation>Loch</translation>
  </message>
  <message>
   <source>Holes in the heel</source>
   <translation>Löcher im Halsfuß</translation>
  </message>
  <message>
   <source>How far it may lie above, such as 0.1 or 1/64 in; ±0.1 sets both.</source>
   <translation>Wie weit es darüber liegen darf, etwa 0.1 oder 1/64 in; ±0.1 setzt beide.</translation>
  </message>
  <message>
   <source>How far it may lie below, such as 0.1 or 1/64 in; ±0.1 sets both.</source>
   <translation>Wie weit es darunter liegen darf, etwa 0.1 oder 1/64 in; ±0.1 setzt beide.</translation>
  </message>
  <message>
   <source>How it spreads between its limits: all alike (uniform), more often in the middle (triangular), or as a bell with the limits at three standard deviations (normal).</source>
   <translation>Wie es zwischen seinen Grenzen streut: überall gleich (gleichverteilt), öfter in der Mitte (dreieckig), oder als Glocke mit den Grenzen bei drei Standardabweichungen (normalverteilt).</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Wie sicher</translation>
  </message>
  <message>
   <source>Import a neck</source>
   <translation>Hals importieren</translation>
  </message>
  <message>
   <source>Import a neck: {}</source>
   <translation>Hals importieren: {}</translation>
  </message>
  <message>
   <source>In one season a wide gap shows under the fretboard.</source>
   <translation>In einer Jahreszeit zeigt sich unter dem Griffbrett ein weiter Spalt.</translation>
  </message>
  <message>
   <source>In the blue area every demand holds. The joint as stated (cross) lies OUTSIDE it.</source>
   <translation>In der blauen Fläche ist jede Forderung erfüllt. Die Verbindung wie angegeben (Kreuz) liegt AUSSERHALB.</translation>
  </message>
  <message>
   <source>In the blue area every demand holds. The joint as stated (cross) lies within it.</source>
   <translation>In der blauen Fläche ist jede Forderung erfüllt. Die Verbindung wie angegeben (Kreuz) liegt darin.</translation>
  </message>
  <message>
   <source>Instead of faces: X to the bridge, Z out of the top, at the end wall.</source>
   <translation>Statt Flächen: X zur Brücke, Z aus der Decke heraus, an der Stirnwand.</translation>
  </message>
  <message>
   <source>It costs nothing elsewhere.</source>
   <translation>Es kostet anderswo nichts.</translation>
  </message>
  <message>
   <source>It fits; there is nothing to mend.</source>
   <translation>Es passt; nichts braucht Abhilfe.</translation>
  </message>
  <message>
   <source>It has its neck pocket already</source>
   <translation>Halstasche schon vorhanden</translation>
  </message>
  <message>
   <source>Jan</source>
   <translation>Jan</translation>
  </message>
  <message>
   <source>Job</source>
   <translation>Auftrag</translation>
  </message>
  <message>
   <source>Job files (*.toml);;All files (*)</source>
   <translation>Auftragsdateien (*.toml);;Alle Dateien (*)</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Verbindung</translation>
  </message>
  <message>
   <source>Joints drawn</source>
   <translation>Gezogene Verbindungen</translation>
  </message>
  <message>
   <source>Judging the options</source>
   <translation>Varianten werden beurteilt</translation>
  </message>
  <message>
   <source>Jul</source>
   <translation>Jul</translation>
  </message>
  <message>
   <source>Jun</source>
   <translation>Jun</translation>
  </message>
  <message>
   <source>Keep as an option</source>
   <translation>Als Variante behalten</translation>
  </message>
  <message>
   <source>Keep as recognised</source>
   <translation>Wie erkannt behalten</translation>
  </message>
  <message>
   <source>Kept as the option {}.</source>
   <translation>Als Variante {} behalten.</translation>
  </message>
  <message>
   <source>L_o: heel end to fretboard end; 0 where the fretboard ends at the heel</source>
   <translation>L_o: Ende des Halsfußes bis Ende des Griffbretts; 0, wo das Griffbrett am Halsfuß endet</translation>
  </message>
  <message>
   <source>Last fret to end</source>
   <translation>Letzter Bund bis Ende</translation>
  </message>
  <message>
   <source>Lay the joint and its options side by side</source>
   <translation>Die Verbindung und ihre Varianten nebeneinander zeigen</translation>
  </message>
  <message>
   <source>Leave {short} more room when the joint is cut; that serves the whole year.</source>
   <translation>Beim Schneiden der Verbindung {short} mehr Luft lassen; das reicht für das ganze Jahr.</translation>
  </message>
  <message>
   <source>Left-handed</source>
   <translation>Linkshändig</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Lengthen the pocket by {short}.</source>
   <translation>Die Tasche um {short} verlängern.</translation>
  </message>
  <message>
   <source>Lengths in any unit, such as 0.1 or 1/64 in; stops as "15.5, 16".</source>
   <translation>Längen in beliebiger Einheit, etwa 0,1 oder 1/64 in; Anschläge als "15,5; 16".</translation>
  </message>
  <message>
   <source>Let another dimension vary…</source>
   <translation>Ein weiteres Maß streuen lassen…</translation>
  </message>
  <message>
   <source>Let the selected dimension have its default limits again.</source>
   <translation>Dem gewählten Maß seine vorgegebenen Grenzen zurückgeben.</translation>
  </message>
  <message>
   <source>Limit deviations that were stated.</source>
   <translation>Angegebene Grenzabweichungen.</translation>
  </message>
  <message>
   <source>Limits</source>
   <translation>Grenzen</translation>
  </message>
  <message>
   <source>Limits of {}</source>
   <translation>Grenzen von {}</translation>
  </message>
  <message>
   <source>Look again</source>
   <translation>Erneut ansehen</translation>
  </message>
  <message>
   <source>Looking for depths and angles that work</source>
   <translation>Mögliche Tiefen und Winkel werden gesucht</translation>
  </message>
  <message>
   <source>Looking for what mends it</source>
   <translation>Abhilfe wird gesucht</translation>
  </message>
  <message>
   <source>Lower or move the pickup by {short}, or shorten the overhang.</source>
   <translation>Den Tonabnehmer um {short} tiefer stellen oder versetzen, oder den Überstand kürzen.</translation>
  </message>
  <message>
   <source>Make</source>
   <translation>Bauart</translation>
  </message>
  <message>
   <source>Make a solid of your own the body, neck or cover plate of a joint, without changing it</source>
   <translation>Einen eigenen Volumenkörper zu Korpus, Hals oder Schlagbrett einer Verbindung machen, ohne ihn zu ändern</translation>
  </message>
  <message>
   <source>Make the pocket deeper by {short}, tip it back less, raise the bridge, or choose a higher one.</source>
   <translation>Die Tasche um {short} tiefer machen, sie weniger zurückkippen, die Brücke höher setzen, oder eine höhere wählen.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, clear the plate around the fretboard, or use a shim.</source>
   <translation>Die Tasche um {short} flacher machen, das Schlagbrett um das Griffbrett freischneiden, oder eine Beilage verwenden.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, or trim the binding flush with the underside.</source>
   <translation>Die Tasche um {short} flacher machen, oder die Einfassung bündig mit der Unterseite schneiden.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, tip it back, or do without the plate.</source>
   <translation>Die Tasche um {short} flacher machen, sie zurückkippen, oder auf das Schlagbrett verzichten.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, tip it back, or set the bridge into a recess.</source>
   <translation>Die Tasche um {short} flacher machen, sie zurückkippen, oder die Brücke versenken.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, tip it back, set the bridge into a recess, or choose a lower bridge.</source>
   <translation>Die Tasche um {short} flacher machen, sie zurückkippen, die Brücke versenken, oder eine niedrigere Brücke wählen.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, tip it back, use a thinner plate, or choose lower rings.</source>
   <translation>Die Tasche um {short} flacher machen, sie zurückkippen, ein dünneres Schlagbrett oder niedrigere Rahmen wählen.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, use less angle, contour or counterbore, or a thicker body.</source>
   <translation>Die Tasche um {short} flacher machen, weniger Winkel, Halsübergang oder Senkung verwenden, oder einen dickeren Korpus.</translation>
  </message>
  <message>
   <source>Mar</source>
   <translation>Mär</translation>
  </message>
  <message>
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <source>May be changed:</source>
   <translation>Darf geändert werden:</translation>
  </message>
  <message>
   <source>Measure</source>
   <translation>Maß</translation>
  </message>
  <message>
   <source>Measure it with {}.</source>
   <translation>Messen mit: {}.</translation>
  </message>
  <message>
   <source>Measure: {}.</source>
   <translation>Messen: {}.</translation>
  </message>
  <message>
   <source>Measured on the solids: on release.</source>
   <translation>An den Volumenkörpern gemessen: beim Loslassen.</translation>
  </message>
  <message>
   <source>Measured on the solids: {}</source>
   <translation>An den Volumenkörpern gemessen: {}</translation>
  </message>
  <message>
   <source>Measured on the solids: {} - the two disagree.</source>
   <translation>An den Volumenkörpern gemessen: {} - die beiden widersprechen sich.</translation>
  </message>
  <message>
   <source>Minus</source>
   <translation>Minus</translation>
  </message>
  <message>
   <source>Month, temperature, humidity (*.csv)</source>
   <translation>Monat, Temperatur, Feuchte (*.csv)</translation>
  </message>
  <message>
   <source>More draws tell small shares more surely.</source>
   <translation>Mehr Ziehungen geben kleine Anteile sicherer an.</translation>
  </message>
  <message>
   <source>Move the bridge or the pocket's end wall by {short}, or choose a bridge with more travel along the strings.</source>
   <translation>Brücke oder Stirnwand der Tasche um {short} versetzen, oder eine Brücke mit mehr Stellweg längs der Saiten wählen.</translation>
  </message>
  <message>
   <source>Move the cavity away from the pocket by {short}.</source>
   <translation>Den Hohlraum um {short} von der Tasche weg setzen.</translation>
  </message>
  <message>
   <source>Move the cutaway's wall out by {short}.</source>
   <translation>Die Wand des Cutaways um {short} nach außen setzen.</translation>
  </message>
  <message>
   <source>Move the pickup toward the bridge by {short}, or shorten the overhang.</source>
   <translation>Den Tonabnehmer um {short} zur Brücke versetzen, oder den Überstand kürzen.</translation>
  </message>
  <message>
   <source>Move the screw away from the centreline by {short}.</source>
   <translation>Die Schraube um {short} von der Mittellinie weg setzen.</translation>
  </message>
  <message>
   <source>Move the screws inward by {short} shank diameters.</source>
   <translation>Die Schrauben um {short} Schaftdurchmesser nach innen setzen.</translation>
  </message>
  <message>
   <source>NO WINDOW - no {} from {} to {} with {} from {} to {} meets every demand.</source>
   <translation>KEIN FENSTER - keine {} von {} bis {} mit {} von {} bis {} erfüllt jede Forderung.</translation>
  </message>
  <message>
   <source>NOT CHECKED in every month</source>
   <translation>NICHT in jedem Monat GEPRÜFT</translation>
  </message>
  <message>
   <source>Names of the joint's solids shown here.</source>
   <translation>Namen der hier gezeigten Volumenkörper der Verbindung.</translation>
  </message>
  <message>
   <source>Ne&amp;xt finding</source>
   <translation>N&amp;ächster Befund</translation>
  </message>
  <message>
   <source>Neck</source>
   <translation>Hals</translation>
  </message>
  <message>
   <source>Neck plate</source>
   <translation>Halsplatte</translation>
  </message>
  <message>
   <source>NeckFit</source>
   <translation>NeckFit</translation>
  </message>
  <message>
   <source>NeckFit has a fault and could not do this ({}). The document is as it was before; the report view has the details.</source>
   <translation>NeckFit hat einen Fehler und konnte dies nicht ausführen ({}). Das Dokument ist wie zuvor; Einzelheiten stehen im Ausgabefenster.</translation>
  </message>
  <message>
   <source>NeckFit: what comes next</source>
   <translation>NeckFit: was als Nächstes kommt</translation>
  </message>
  <message>
   <source>NeckFit: what the shop can set</source>
   <translation>NeckFit: was die Werkstatt einstellen kann</translation>
  </message>
  <message>
   <source>Necks</source>
   <translation>Hälse</translation>
  </message>
  <message>
   <source>New joints take {} values from it.</source>
   <translation>Neue Verbindungen übernehmen daraus {} Werte.</translation>
  </message>
  <message>
   <source>No 3D view of the document is open to show the neck in; open one.</source>
   <translation>Keine 3D-Ansicht des Dokuments ist offen, um den Hals zu zeigen; eine öffnen.</translation>
  </message>
  <message>
   <source>No change that is allowed mends it.</source>
   <translation>Keine erlaubte Änderung hilft ab.</translation>
  </message>
  <message>
   <source>No cutaway runs beside the pocket on the {} side.</source>
   <translation>Auf dieser Seite ({}) läuft kein Cutaway neben der Tasche.</translation>
  </message>
  <message>
   <source>No dimension of this joint has limits; let one vary first.</source>
   <translation>Kein Maß dieser Verbindung hat Grenzen; zuerst eines streuen lassen.</translation>
  </message>
  <message>
   <source>No face looks up beside the pocket; pick the body's top face.</source>
   <translation>Neben der Tasche zeigt keine Fläche nach oben; die Oberseite des Korpus wählen.</translation>
  </message>
  <message>
   <source>No folder is named; name the one that the package is to be in.</source>
   <translation>Es ist kein Ordner angegeben; den Ordner angeben, in dem das Paket liegen soll.</translation>
  </message>
  <message>
   <source>No job file is chosen yet: choose one below.</source>
   <translation>Noch ist keine Auftragsdatei gewählt: unten eine wählen.</translation>
  </message>
  <message>
   <source>No joint is linked here; link one.</source>
   <translation>Hier ist keine Verbindung verknüpft; eine verknüpfen.</translation>
  </message>
  <message>
   <source>No pocket was found that is open toward the headstock; {}, or turn the frame so that X points to the bridge.</source>
   <translation>Keine Tasche gefunden, die zur Kopfplatte hin offen ist; {}, oder das Koordinatensystem drehen, sodass X zur Brücke zeigt.</translation>
  </message>
  <message>
   <source>No {} and {} in this range meets every demand.</source>
   <translation>In diesem Bereich erfüllt nichts jede Forderung ({} und {}).</translation>
  </message>
  <message>
   <source>Nominal value; type it in any unit, such as 15.5, 5/8 in or 1.5°.</source>
   <translation>Sollwert; in beliebiger Einheit eintippen, etwa 15.5, 5/8 in oder 1.5°.</translation>
  </message>
  <message>
   <source>Not in the file</source>
   <translation>Nicht in der Datei</translation>
  </message>
  <message>
   <source>Not to be met anywhere</source>
   <translation>Nirgends zu erfüllen</translation>
  </message>
  <message>
   <source>Not to be met anywhere in the range: {}, {} at best</source>
   <translation>Nirgends im Bereich zu erfüllen: {}, bestenfalls {}</translation>
  </message>
  <message>
   <source>Nothing is measured yet: type what you measured into the last column.</source>
   <translation>Noch ist nichts gemessen: Gemessenes in die letzte Spalte schreiben.</translation>
  </message>
  <message>
   <source>Nothing is picked to be adopted; pick a solid.</source>
   <translation>Nichts zum Übernehmen gewählt; einen Volumenkörper wählen.</translation>
  </message>
  <message>
   <source>Nov</source>
   <translation>Nov</translation>
  </message>
  <message>
   <source>Now state your own neck and pocket: choose Neck or Pocket in the tree, type what you measured into the property editor, then check the joint.</source>
   <translation>Jetzt den eigenen Hals und die Tasche angeben: im Baum Hals oder Tasche wählen, Gemessenes in den Eigenschaften-Editor schreiben, dann die Verbindung prüfen.</translation>
  </message>
  <message>
   <source>Nut to heel end</source>
   <translation>Sattel bis Halsfuß</translation>
  </message>
  <message>
   <source>OUT OF DATE: changed since, check again</source>
   <translation>VERALTET: seither geändert, erneut prüfen</translation>
  </message>
  <message>
   <source>OUTSIDE the window</source>
   <translation>AUSSERHALB des Fensters</translation>
  </message>
  <message>
   <source>Oct</source>
   <translation>Okt</translation>
  </message>
  <message>
   <source>Of every dimension that states no other one.</source>
   <translation>Für jedes Maß, das keine andere angibt.</translation>
  </message>
  <message>
   <source>Old pilot</source>
   <translation>Alte Vorbohrung</translation>
  </message>
  <message>
   <source>One value in {} for each {}.</source>
   <translation>Ein Wert in {} je {}.</translation>
  </message>
  <message>
   <source>Only needed where the floor of a pocket that is there is not found.</source>
   <translation>Nur nötig, wo der Boden einer vorhandenen Tasche nicht gefunden wird.</translation>
  </message>
  <message>
   <source>Open job file</source>
   <translation>Auftragsdatei öffnen</translation>
  </message>
  <message>
   <source>Options side by side</source>
   <translation>Varianten nebeneinander</translation>
  </message>
  <message>
   <source>Options, as differences from this joint.</source>
   <translation>Varianten, als Abweichungen von dieser Verbindung.</translation>
  </message>
  <message>
   <source>Other bridges and pickups…</source>
   <translation>Andere Brücken und Tonabnehmer…</translation>
  </message>
  <message>
   <source>Other depths or angles do meet every demand together.</source>
   <translation>Andere Tiefen oder Winkel erfüllen durchaus alle Forderungen zugleich.</translation>
  </message>
  <message>
   <source>Outer diameter of the guide bush that leads the bit, if any.</source>
   <translation>Außendurchmesser der Kopierhülse, die den Fräser führt, falls es eine gibt.</translation>
  </message>
  <message>
   <source>Outside 6 to 14 % moisture no coefficient of change holds: not checked.</source>
   <translation>Außerhalb von 6 bis 14 % Holzfeuchte gilt kein Schwindmaß: nicht geprüft.</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Überstand</translation>
  </message>
  <message>
   <source>Overhang's underside</source>
   <translation>Überstandsunterseite</translation>
  </message>
  <message>
   <source>Owner's room…</source>
   <translation>Raum des Besitzers…</translation>
  </message>
  <message>
   <source>Package for the &amp;shop…</source>
   <translation>&amp;Paket für die Werkstatt…</translation>
  </message>
  <message>
   <source>Package for the shop</source>
   <translation>Paket für die Werkstatt</translation>
  </message>
  <message>
   <source>Part files (*.toml)</source>
   <translation>Teiledateien (*.toml)</translation>
  </message>
  <message>
   <source>Permitted: {}.</source>
   <translation>Erlaubt: {}.</translation>
  </message>
  <message>
   <source>Pick</source>
   <translation>Wählen</translation>
  </message>
  <message>
   <source>Pick faces</source>
   <translation>Flächen wählen</translation>
  </message>
  <message>
   <source>Picked by hand.</source>
   <translation>Von Hand gewählt.</translation>
  </message>
  <message>
   <source>Pickup bridge</source>
   <translation>Tonabnehmer an der Brücke</translation>
  </message>
  <message>
   <source>Pickup middle</source>
   <translation>Tonabnehmer in der Mitte</translation>
  </message>
  <message>
   <source>Pickup neck</source>
   <translation>Tonabnehmer am Hals</translation>
  </message>
  <message>
   <source>Pickups</source>
   <translation>Tonabnehmer</translation>
  </message>
  <message>
   <source>Pictures (*.png *.svg)</source>
   <translation>Bilder (*.png *.svg)</translation>
  </message>
  <message>
   <source>Place it by figures instead</source>
   <translation>Stattdessen durch Zahlen festlegen</translation>
  </message>
  <message>
   <source>Plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>Plug the old holes first.</source>
   <translation>Zuerst die alten Löcher verschließen.</translation>
  </message>
  <message>
   <source>Plus</source>
   <translation>Plus</translation>
  </message>
  <message>
   <source>Pocket</source>
   <translation>Tasche</translation>
  </message>
  <message>
   <source>Pocket angle</source>
   <translation>Taschenwinkel</translation>
  </message>
  <message>
   <source>Pocket depth</source>
   <translation>Taschentiefe</translation>
  </message>
  <message>
   <source>Pocket depth {}, {}</source>
   <translation>Taschentiefe {}, {}</translation>
  </message>
  <message>
   <source>Pocket's floor</source>
   <translation>Boden der Tasche</translation>
  </message>
  <message>
   <source>Put higher springs or a spacer under it, or make the pocket deeper by {short}.</source>
   <translation>Höhere Federn oder ein Distanzstück darunter setzen, oder die Tasche um {short} tiefer machen.</translation>
  </message>
  <message>
   <source>Questions of this file</source>
   <translation>Fragen zu dieser Datei</translation>
  </message>
  <message>
   <source>RSS</source>
   <translation>RSS</translation>
  </message>
  <message>
   <source>RSS:    the same, less the root of the sum of the squares of what each dimension's</source>
   <translation>RSS:    dasselbe, vermindert um die Wurzel der Quadratsumme dessen, was jedes Maß durch</translation>
  </message>
  <message>
   <source>Radius at its end</source>
   <translation>Radius am Ende</translation>
  </message>
  <message>
   <source>Radius at the nut</source>
   <translation>Radius am Sattel</translation>
  </message>
  <message>
   <source>Radius of its end</source>
   <translation>Radius des Endes</translation>
  </message>
  <message>
   <source>Raise the action or the saddles, or change the relief; {short} are missing. Where the saddles are at their end, the pocket must be deeper.</source>
   <translation>Saitenlage oder Saitenreiter erhöhen, oder die Halskrümmung ändern; {short} fehlen. Wo die Saitenreiter am Anschlag sind, muss die Tasche tiefer werden.</translation>
  </message>
  <message>
   <source>Raise the action, the nut or the saddles, or change the relief; {short} are missing. Where the saddles are at their end, the pocket must be deeper.</source>
   <translation>Saitenlage, Sattel oder Saitenreiter erhöhen, oder die Halskrümmung ändern; {short} fehlen. Wo die Saitenreiter am Anschlag sind, muss die Tasche tiefer werden.</translation>
  </message>
  <message>
   <source>Raise the saddles over the anchor (a shallower pocket or one tipped back), or choose a bridge whose anchor lies lower; {short} are missing.</source>
   <translation>Die Saitenreiter gegenüber der Aufhängung erhöhen (eine flachere oder zurückgekippte Tasche), oder eine Brücke mit tieferer Aufhängung wählen; {short} fehlen.</translation>
  </message>
  <message>
   <source>Read a neck from a STEP, IGES, BREP, FCStd, STL, OBJ or 3MF file, and put it into a joint</source>
   <translation>Einen Hals aus einer STEP-, IGES-, BREP-, FCStd-, STL-, OBJ- oder 3MF-Datei lesen und in eine Verbindung setzen</translation>
  </message>
  <message>
   <source>Reading {}</source>
   <translation>{} wird gelesen</translation>
  </message>
  <message>
   <source>Ready: press OK.</source>
   <translation>Fertig: OK drücken.</translation>
  </message>
  <message>
   <source>Ready: press OK. First see that the arrow points to the bridge; if not, turn the centreline round.</source>
   <translation>Fertig: OK drücken. Vorher ansehen, ob der Pfeil zur Brücke zeigt; wenn nicht, die Mittellinie umdrehen.</translation>
  </message>
  <message>
   <source>Room under the overhang, as JSON.</source>
   <translation>Luft unter dem Überstand, als JSON.</translation>
  </message>
  <message>
   <source>Round the heel's corners more, square the pocket's out, or leave more clearance; {short} are missing.</source>
   <translation>Die Ecken des Halsfußes mehr runden, die der Tasche ausstechen, oder mehr Spiel lassen; {short} fehlen.</translation>
  </message>
  <message>
   <source>Rout the pocket narrower by {short} on this side, or veneer it.</source>
   <translation>Die Tasche auf dieser Seite um {short} schmaler fräsen, oder mit Furnier auffüttern.</translation>
  </message>
  <message>
   <source>Rout the pocket wider by {short} on this side.</source>
   <translation>Die Tasche auf dieser Seite um {short} breiter fräsen.</translation>
  </message>
  <message>
   <source>Rout {short} deeper, if the strings allow.</source>
   <translation>{short} tiefer fräsen, wenn die Saiten es zulassen.</translation>
  </message>
  <message>
   <source>Rout {short} deeper, or run a plate under the overhang.</source>
   <translation>{short} tiefer fräsen, oder ein Schlagbrett unter den Überstand führen.</translation>
  </message>
  <message>
   <source>Rout {short} shallower, cut or thin the plate, or add a shim.</source>
   <translation>{short} flacher fräsen, das Schlagbrett ausschneiden oder dünner machen, oder eine Beilage einlegen.</translation>
  </message>
  <message>
   <source>Route its cavity deeper, choose a shallower pickup, or make the pocket shallower by {short}.</source>
   <translation>Seinen Hohlraum tiefer fräsen, einen flacheren Tonabnehmer wählen, oder die Tasche um {short} flacher machen.</translation>
  </message>
  <message>
   <source>Route the end wall square to the floor, or use less angle or end gap; {short} too much.</source>
   <translation>Die Stirnwand rechtwinklig zum Boden fräsen, oder weniger Winkel oder Stirnspiel verwenden; {short} zu viel.</translation>
  </message>
  <message>
   <source>Routed body</source>
   <translation>Gefräster Korpus</translation>
  </message>
  <message>
   <source>Router bit</source>
   <translation>Fräser</translation>
  </message>
  <message>
   <source>Save picture…</source>
   <translation>Bild speichern…</translation>
  </message>
  <message>
   <source>Save…</source>
   <translation>Speichern…</translation>
  </message>
  <message>
   <source>Say this after every new joint</source>
   <translation>Nach jeder neuen Verbindung sagen</translation>
  </message>
  <message>
   <source>Scale length</source>
   <translation>Mensur</translation>
  </message>
  <message>
   <source>Scale, bass side</source>
   <translation>Mensur, Bassseite</translation>
  </message>
  <message>
   <source>Screw</source>
   <translation>Schraube</translation>
  </message>
  <message>
   <source>Screws</source>
   <translation>Schrauben</translation>
  </message>
  <message>
   <source>Seat</source>
   <translation>Sitz</translation>
  </message>
  <message>
   <source>Seated cover plate</source>
   <translation>Aufgesetztes Schlagbrett</translation>
  </message>
  <message>
   <source>Seated neck</source>
   <translation>Eingesetzter Hals</translation>
  </message>
  <message>
   <source>See which room is lacking under the overhang, at the sides or at the end; {short} must go.</source>
   <translation>Nachsehen, welche Luft unter dem Überstand, an den Seiten oder am Ende fehlt; {short} müssen weg.</translation>
  </message>
  <message>
   <source>Select a dimension first.</source>
   <translation>Zuerst ein Maß auswählen.</translation>
  </message>
  <message>
   <source>Select the finding before, and bring its place into view</source>
   <translation>Den vorigen Befund wählen und seine Stelle zeigen</translation>
  </message>
  <message>
   <source>Select the next finding that has a label, worst first, and bring its place into view</source>
   <translation>Den nächsten beschrifteten Befund wählen, den schlimmsten zuerst, und seine Stelle zeigen</translation>
  </message>
  <message>
   <source>Sep</source>
   <translation>Sep</translation>
  </message>
  <message>
   <source>Set the depth stop of the neck's pilot holes by this.</source>
   <translation>Den Tiefenanschlag für die Vorbohrungen des Halses danach einstellen.</translation>
  </message>
  <message>
   <source>Several look like the {} that was picked; pick it again.</source>
   <translation>Mehrere sehen aus wie das Gewählte ({}); erneut wählen.</translation>
  </message>
  <message>
   <source>Shape of its end</source>
   <translation>Form des Endes</translation>
  </message>
  <message>
   <source>Shape of the top</source>
   <translation>Form der Oberseite</translation>
  </message>
  <message>
   <source>Share of joints in which a demand is not met [%]</source>
   <translation>Anteil der Verbindungen mit nicht erfüllter Forderung [%]</translation>
  </message>
  <message>
   <source>Share of the failures that a dimension explains alone [%]</source>
   <translation>Anteil der Fehlschläge, den ein Maß allein erklärt [%]</translation>
  </message>
  <message>
   <source>Share of the failures that this dimension explains alone.</source>
   <translation>Anteil der Fehlschläge, den dieses Maß allein erklärt.</translation>
  </message>
  <message>
   <source>Shim</source>
   <translation>Beilage</translation>
  </message>
  <message>
   <source>Shim at the end wall</source>
   <translation>Beilage an der Stirnwand</translation>
  </message>
  <message>
   <source>Shim at the mouth</source>
   <translation>Beilage an der Mündung</translation>
  </message>
  <message>
   <source>Shim strip</source>
   <translation>Beilagestreifen</translation>
  </message>
  <message>
   <source>Shop</source>
   <translation>Werkstatt</translation>
  </message>
  <message>
   <source>Shop &amp;defaults for new joints</source>
   <translation>Wer&amp;kstattvorgaben für neue Verbindungen</translation>
  </message>
  <message>
   <source>Shop defaults</source>
   <translation>Werkstattvorgaben</translation>
  </message>
  <message>
   <source>Shop's room…</source>
   <translation>Raum der Werkstatt…</translation>
  </message>
  <message>
   <source>Shop's steps</source>
   <translation>Schritte der Werkstatt</translation>
  </message>
  <message>
   <source>Shop's steps…</source>
   <translation>Schritte der Werkstatt…</translation>
  </message>
  <message>
   <source>Shorten the pocket by {short}, or choose a neck with a longer heel.</source>
   <translation>Die Tasche um {short} kürzen, oder einen Hals mit längerem Halsfuß wählen.</translation>
  </message>
  <message>
   <source>Shorten the pocket by {short}.</source>
   <translation>Die Tasche um {short} kürzen.</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Show &amp;doubts</source>
   <translation>Un&amp;klares zeigen</translation>
  </message>
  <message>
   <source>Show &amp;gaps</source>
   <translation>Spalte &amp;und Fehlmaße zeigen</translation>
  </message>
  <message>
   <source>Show or hide gaps and other figures that miss their limits</source>
   <translation>Spalte und andere Werte außerhalb ihrer Grenzen zeigen oder verbergen</translation>
  </message>
  <message>
   <source>Show or hide plain information</source>
   <translation>Einfache Auskünfte zeigen oder verbergen</translation>
  </message>
  <message>
   <source>Show or hide what could not be checked</source>
   <translation>Zeigen oder verbergen, was nicht zu prüfen war</translation>
  </message>
  <message>
   <source>Show or hide what fits</source>
   <translation>Zeigen oder verbergen, was passt</translation>
  </message>
  <message>
   <source>Show or hide what interferes</source>
   <translation>Zeigen oder verbergen, was anstößt</translation>
  </message>
  <message>
   <source>Show or hide what touches or is worth a look</source>
   <translation>Zeigen oder verbergen, was berührt oder anzusehen ist</translation>
  </message>
  <message>
   <source>Show plain info&amp;rmation</source>
   <translation>Einfa&amp;che Auskünfte zeigen</translation>
  </message>
  <message>
   <source>Show plain information.</source>
   <translation>Einfache Auskünfte zeigen.</translation>
  </message>
  <message>
   <source>Show the gap &amp;map</source>
   <translation>Spaltkarte in &amp;Farben zeigen</translation>
  </message>
  <message>
   <source>Show the room under the overhang.</source>
   <translation>Die Luft unter dem Überstand zeigen.</translation>
  </message>
  <message>
   <source>Show too small and too large gaps.</source>
   <translation>Zu kleine und zu große Spalte zeigen.</translation>
  </message>
  <message>
   <source>Show what &amp;fits</source>
   <translation>Passen&amp;des zeigen</translation>
  </message>
  <message>
   <source>Show what &amp;interferes</source>
   <translation>Ansto&amp;ßendes zeigen</translation>
  </message>
  <message>
   <source>Show what could not be checked.</source>
   <translation>Zeigen, was nicht zu prüfen war.</translation>
  </message>
  <message>
   <source>Show what fits.</source>
   <translation>Zeigen, was passt.</translation>
  </message>
  <message>
   <source>Show what interferes.</source>
   <translation>Zeigen, was anstößt.</translation>
  </message>
  <message>
   <source>Show what to&amp;uches</source>
   <translation>Ber&amp;ührendes zeigen</translation>
  </message>
  <message>
   <source>Show what touches or is worth a look.</source>
   <translation>Zeigen, was berührt oder anzusehen ist.</translation>
  </message>
  <message>
   <source>Show which depths and angles meet every demand, and what bounds them</source>
   <translation>Zeigen, welche Tiefen und Winkel alle Forderungen erfüllen und was sie begrenzt</translation>
  </message>
  <message>
   <source>Small ticks inside the frame: steps of the shop, {}</source>
   <translation>Kleine Striche im Rahmen: Schritte der Werkstatt, {}</translation>
  </message>
  <message>
   <source>Small ticks inside the frame: steps of the shop, {} and {}</source>
   <translation>Kleine Striche im Rahmen: Schritte der Werkstatt, {} und {}</translation>
  </message>
  <message>
   <source>Solid</source>
   <translation>Volumenkörper</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation>Streuung</translation>
  </message>
  <message>
   <source>Spread of {}</source>
   <translation>Streuung von {}</translation>
  </message>
  <message>
   <source>Spreads between limits that were stated.</source>
   <translation>Angegebene Streuungen zwischen Grenzen.</translation>
  </message>
  <message>
   <source>Square fret</source>
   <translation>Gerader Bund</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Anhalten</translation>
  </message>
  <message>
   <source>Stopped; nothing was changed.</source>
   <translation>Angehalten; nichts wurde geändert.</translation>
  </message>
  <message>
   <source>Stopped; what stands here is from before.</source>
   <translation>Angehalten; was hier steht, ist von vorher.</translation>
  </message>
  <message>
   <source>Strings</source>
   <translation>Saiten</translation>
  </message>
  <message>
   <source>Strings fretted high up touch the plate or a pickup's ring.</source>
   <translation>Hoch gegriffene Saiten berühren das Schlagbrett oder den Rahmen eines Tonabnehmers.</translation>
  </message>
  <message>
   <source>Tables (*.html *.csv)</source>
   <translation>Tabellen (*.html *.csv)</translation>
  </message>
  <message>
   <source>Take an adopted solid out of the joint and show it again; what was measured stays stated</source>
   <translation>Einen übernommenen Volumenkörper aus der Verbindung nehmen und wieder zeigen; was gemessen wurde, bleibt angegeben</translation>
  </message>
  <message>
   <source>Take it back</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <source>Take over the place clicked</source>
   <translation>Die angeklickte Stelle übernehmen</translation>
  </message>
  <message>
   <source>Take over this change</source>
   <translation>Diese Änderung übernehmen</translation>
  </message>
  <message>
   <source>Take the faces again that were found by itself.</source>
   <translation>Wieder die von selbst gefundenen Flächen nehmen.</translation>
  </message>
  <message>
   <source>Taking it over</source>
   <translation>Wird übernommen</translation>
  </message>
  <message>
   <source>TechDraw did not draw the view {}.</source>
   <translation>TechDraw hat die Ansicht {} nicht gezeichnet.</translation>
  </message>
  <message>
   <source>TechDraw page: the dimension {} is missing; draw the page anew.</source>
   <translation>TechDraw-Blatt: das Maß {} fehlt; das Blatt neu zeichnen.</translation>
  </message>
  <message>
   <source>TechDraw page: {} reads {} where the drawing says {}; draw the page anew.</source>
   <translation>TechDraw-Blatt: {} zeigt {}, wo die Zeichnung {} angibt; das Blatt neu zeichnen.</translation>
  </message>
  <message>
   <source>TechDraw's view {} lacks the arc of {}.</source>
   <translation>Der TechDraw-Ansicht {} fehlt der Bogen von {}.</translation>
  </message>
  <message>
   <source>TechDraw's view {} lacks the point {}.</source>
   <translation>Der TechDraw-Ansicht {} fehlt der Punkt {}.</translation>
  </message>
  <message>
   <source>Tell how often the joint fails within its limits, and what to draw in first</source>
   <translation>Sagen, wie oft die Verbindung innerhalb ihrer Grenzen versagt und was zuerst enger zu fassen ist</translation>
  </message>
  <message>
   <source>Tell which demands exclude one another, and the smallest changes that free the joint</source>
   <translation>Sagen, welche Forderungen einander ausschließen, und die kleinsten Änderungen, die abhelfen</translation>
  </message>
  <message>
   <source>That is no edge or line.</source>
   <translation>Das ist keine Kante oder Linie.</translation>
  </message>
  <message>
   <source>That is no face.</source>
   <translation>Das ist keine Fläche.</translation>
  </message>
  <message>
   <source>The arrow drawn over the body must point to the bridge; turn it if it does not.</source>
   <translation>Der Pfeil über dem Korpus muss zur Brücke zeigen; wenn nicht, hier umdrehen.</translation>
  </message>
  <message>
   <source>The back does not slope down from the mouth; state the heel contour.</source>
   <translation>Die Rückseite fällt von der Mündung nicht ab; den Halsübergang angeben.</translation>
  </message>
  <message>
   <source>The base touches the body before it has moved as far as it should.</source>
   <translation>Die Grundplatte berührt den Korpus, bevor sie sich so weit bewegt hat, wie sie soll.</translation>
  </message>
  <message>
   <source>The binding lands before the overhang does: it cracks off, or pries the fretboard.</source>
   <translation>Die Einfassung setzt vor dem Überstand auf: sie springt ab oder hebelt das Griffbrett ab.</translation>
  </message>
  <message>
   <source>The body has a neck pocket already; say so, and it is read instead of cut.</source>
   <translation>Der Korpus hat schon eine Halstasche; dies angeben, dann wird sie gelesen statt gefräst.</translation>
  </message>
  <message>
   <source>The body has no back under the pocket's end wall; turn the frame upright.</source>
   <translation>Der Korpus hat keine Rückseite unter der Stirnwand der Tasche; das Koordinatensystem aufrichten.</translation>
  </message>
  <message>
   <source>The body has no face that looks up; pick its top face.</source>
   <translation>Der Korpus hat keine Fläche, die nach oben zeigt; seine Oberseite wählen.</translation>
  </message>
  <message>
   <source>The body has no outline at Z = {} mm; turn the frame upright.</source>
   <translation>Der Korpus hat auf Höhe Z = {} mm keinen Umriss; das Koordinatensystem aufrichten.</translation>
  </message>
  <message>
   <source>The body of this joint.</source>
   <translation>Der Korpus dieser Verbindung.</translation>
  </message>
  <message>
   <source>The body whose pocket was read.</source>
   <translation>Der Korpus, dessen Tasche gelesen wurde.</translation>
  </message>
  <message>
   <source>The body's top does not lie over the pocket and behind it; pick it.</source>
   <translation>Die Oberseite des Korpus liegt nicht über der Tasche und dahinter; sie wählen.</translation>
  </message>
  <message>
   <source>The centreline does not run over the pocket's floor; {}.</source>
   <translation>Die Mittellinie läuft nicht über den Boden der Tasche; {}.</translation>
  </message>
  <message>
   <source>The centreline does not run through the body; pick another.</source>
   <translation>Die Mittellinie läuft nicht durch den Korpus; eine andere wählen.</translation>
  </message>
  <message>
   <source>The centreline is no straight edge; pick a straight one.</source>
   <translation>Die Mittellinie ist keine gerade Kante; eine gerade wählen.</translation>
  </message>
  <message>
   <source>The centreline is not level with the top's datum; pick another edge.</source>
   <translation>Die Mittellinie liegt nicht parallel zur Bezugsebene der Decke; eine andere Kante wählen.</translation>
  </message>
  <message>
   <source>The centreline is not picked; pick an edge or a line along the middle.</source>
   <translation>Die Mittellinie ist nicht gewählt; eine Kante oder Linie längs der Mitte wählen.</translation>
  </message>
  <message>
   <source>The centreline, as geometry.</source>
   <translation>Die Mittellinie, als Geometrie.</translation>
  </message>
  <message>
   <source>The command mend looks for the smallest changes that free it.</source>
   <translation>Der Befehl mend sucht die kleinsten Änderungen, die abhelfen.</translation>
  </message>
  <message>
   <source>The cover plate is not flat, so that its thickness must be stated.</source>
   <translation>Das Schlagbrett ist nicht eben, deshalb muss seine Dicke angegeben werden.</translation>
  </message>
  <message>
   <source>The drawing's page is in the tree; double-click it there to see it.</source>
   <translation>Das Zeichnungsblatt steht im Baum; dort doppelklicken, um es zu sehen.</translation>
  </message>
  <message>
   <source>The drill wanders into the old hole and the screw does not hold.</source>
   <translation>Der Bohrer verläuft in das alte Loch, und die Schraube hält nicht.</translation>
  </message>
  <message>
   <source>The file</source>
   <translation>Die Datei</translation>
  </message>
  <message>
   <source>The file does not show it: the joint's value stands, unless you choose another below.</source>
   <translation>Die Datei zeigt es nicht: Es gilt der Wert der Verbindung, wenn unten kein anderer gewählt wird.</translation>
  </message>
  <message>
   <source>The file does not show it: the joint's value stands, unless you type another.</source>
   <translation>Die Datei zeigt es nicht: der Wert der Verbindung gilt, wenn kein anderer eingetippt wird.</translation>
  </message>
  <message>
   <source>The fillet along the pocket's floor is no round of one radius; state it.</source>
   <translation>Die Kehle am Boden der Tasche ist keine Rundung mit einem Radius; ihn angeben.</translation>
  </message>
  <message>
   <source>The flat top, or the carved one whose back is flat.</source>
   <translation>Die ebene Decke, oder die gewölbte, deren Rückseite eben ist.</translation>
  </message>
  <message>
   <source>The floor gives way or cracks under the screws.</source>
   <translation>Der Boden gibt unter den Schrauben nach oder reißt.</translation>
  </message>
  <message>
   <source>The floor reaches beyond the heel's flat bottom: the neck rests on a curve and tips.</source>
   <translation>Der Boden reicht über die flache Unterseite des Halsfußes hinaus: der Hals liegt auf einer Rundung und kippt.</translation>
  </message>
  <message>
   <source>The frame in the solid's own coordinates.</source>
   <translation>Das Koordinatensystem in den eigenen Koordinaten des Volumenkörpers.</translation>
  </message>
  <message>
   <source>The fretboard does not go down between the edges beside it: it bears on them instead of the heel on the floor.</source>
   <translation>Das Griffbrett geht nicht zwischen die Kanten neben ihm: statt des Halsfußes auf dem Boden liegt es auf ihnen auf.</translation>
  </message>
  <message>
   <source>The fretboard lands on the top or the plate beside the pocket before the heel reaches the floor: screwed down, it is pried off.</source>
   <translation>Das Griffbrett setzt neben der Tasche auf Decke oder Schlagbrett auf, bevor der Halsfuß den Boden erreicht: beim Anziehen wird es abgehebelt.</translation>
  </message>
  <message>
   <source>The given {} is made of {} solids, and one is wanted; join them.</source>
   <translation>Der gegebene Körper ({}) besteht aus {} Volumenkörpern, gebraucht wird einer; sie vereinigen.</translation>
  </message>
  <message>
   <source>The given {} is no valid closed solid; let Part's Check Geometry show where, and mend it.</source>
   <translation>Der gegebene Körper ({}) ist kein gültiger geschlossener Volumenkörper; mit „Geometrie überprüfen“ von Part die Stelle suchen und sie berichtigen.</translation>
  </message>
  <message>
   <source>The hardware of this joint.</source>
   <translation>Die Beschläge dieser Verbindung.</translation>
  </message>
  <message>
   <source>The heel contour is not straight: it strays by {} mm.</source>
   <translation>Der Halsübergang ist nicht gerade: er weicht um {} mm ab.</translation>
  </message>
  <message>
   <source>The heel jams in damp months or comes loose in dry ones.</source>
   <translation>Der Halsfuß klemmt in feuchten Monaten oder wird in trockenen locker.</translation>
  </message>
  <message>
   <source>The heel leaves the floor at the end wall.</source>
   <translation>Der Halsfuß hebt an der Stirnwand vom Boden ab.</translation>
  </message>
  <message>
   <source>The heel rides on the fillet: it rocks, and every height of this report is too low by as much.</source>
   <translation>Der Halsfuß sitzt auf der Kehle: er kippelt, und jede Höhe dieses Berichts ist um ebenso viel zu niedrig.</translation>
  </message>
  <message>
   <source>The heel rides on the pocket's rounded corners and neither reaches the end wall nor the floor.</source>
   <translation>Der Halsfuß sitzt auf den gerundeten Ecken der Tasche auf und erreicht weder Stirnwand noch Boden.</translation>
  </message>
  <message>
   <source>The heel splits at its edge.</source>
   <translation>Der Halsfuß reißt an seinem Rand.</translation>
  </message>
  <message>
   <source>The heel stands off its seat, or the wall splits.</source>
   <translation>Der Halsfuß steht von seinem Sitz ab, oder die Wand reißt.</translation>
  </message>
  <message>
   <source>The joint bends under the strings' pull, and the neck creeps.</source>
   <translation>Die Verbindung biegt sich unter dem Saitenzug, und der Hals kriecht.</translation>
  </message>
  <message>
   <source>The joint changed since its last check; writing the package checks it anew.</source>
   <translation>Die Verbindung hat sich seit der letzten Prüfung geändert; beim Schreiben des Pakets wird sie neu geprüft.</translation>
  </message>
  <message>
   <source>The joint changed since the check.</source>
   <translation>Die Verbindung hat sich seit der Prüfung geändert.</translation>
  </message>
  <message>
   <source>The joint does not fit. Do not cut after these sheets; mend it first.</source>
   <translation>Die Verbindung passt nicht. Nicht nach diesen Blättern fräsen; erst berichtigen.</translation>
  </message>
  <message>
   <source>The joint has not been checked yet; writing the package checks it.</source>
   <translation>Die Verbindung ist noch nicht geprüft; beim Schreiben des Pakets wird sie geprüft.</translation>
  </message>
  <message>
   <source>The joint in the 3D view</source>
   <translation>Die Verbindung in der 3D-Ansicht</translation>
  </message>
  <message>
   <source>The joint is gone; close this window.</source>
   <translation>Die Verbindung ist fort; dieses Fenster schließen.</translation>
  </message>
  <message>
   <source>The joint that this part belongs to.</source>
   <translation>Die Verbindung, zu der dieses Teil gehört.</translation>
  </message>
  <message>
   <source>The joint that was checked.</source>
   <translation>Die geprüfte Verbindung.</translation>
  </message>
  <message>
   <source>The middle strings lie off the action of the outer ones by more than is liked.</source>
   <translation>Die Saitenlage der mittleren Saiten weicht mehr als gewünscht von der der äußeren ab.</translation>
  </message>
  <message>
   <source>The neck can be set this far to either side before the screws hold it.</source>
   <translation>So weit lässt sich der Hals zu jeder Seite stellen, bevor die Schrauben ihn halten.</translation>
  </message>
  <message>
   <source>The neck does not go into its pocket, or cracks finish and wood beside it.</source>
   <translation>Der Hals geht nicht in seine Tasche, oder Lack und Holz neben ihm reißen.</translation>
  </message>
  <message>
   <source>The neck does not go into its pocket, or is bent and pried when it is screwed down.</source>
   <translation>Der Hals geht nicht in seine Tasche, oder wird beim Anziehen verbogen und gehebelt.</translation>
  </message>
  <message>
   <source>The neck does not reach its end wall: strings and scale are off.</source>
   <translation>Der Hals erreicht seine Stirnwand nicht: Saiten und Mensur stimmen nicht.</translation>
  </message>
  <message>
   <source>The neck of this joint.</source>
   <translation>Der Hals dieser Verbindung.</translation>
  </message>
  <message>
   <source>The neck shifts sideways in its pocket.</source>
   <translation>Der Hals verschiebt sich seitlich in seiner Tasche.</translation>
  </message>
  <message>
   <source>The neck that tells the treble side.</source>
   <translation>Der Hals, der die Diskantseite angibt.</translation>
  </message>
  <message>
   <source>The overhang touches in one season though it is free in another.</source>
   <translation>Der Überstand berührt in einer Jahreszeit, obwohl er in einer anderen frei ist.</translation>
  </message>
  <message>
   <source>The package for the shop is in {}</source>
   <translation>Das Paket für die Werkstatt liegt in {}</translation>
  </message>
  <message>
   <source>The picked face has no wall on either side and toward the bridge, so it is no pocket's floor; {}.</source>
   <translation>Die gewählte Fläche hat keine Wand zu beiden Seiten und zur Brücke hin, ist also kein Taschenboden; {}.</translation>
  </message>
  <message>
   <source>The picked floor is no plane face; {}.</source>
   <translation>Die gewählte Fläche ist nicht eben; {}.</translation>
  </message>
  <message>
   <source>The picked top face does not reach {} mm behind the mouth on the centreline; pick the top face there.</source>
   <translation>Die gewählte Oberseite reicht auf der Mittellinie nicht {} mm hinter die Mündung; die Oberseite dort wählen.</translation>
  </message>
  <message>
   <source>The pickup or its ring stands in the fretboard's way, or rubs on it when set higher.</source>
   <translation>Der Tonabnehmer oder sein Rahmen steht dem Griffbrett im Weg, oder reibt daran, wenn er höher gestellt wird.</translation>
  </message>
  <message>
   <source>The pickup or its ring stands in the fretboard's way.</source>
   <translation>Der Tonabnehmer oder sein Rahmen steht dem Griffbrett im Weg.</translation>
  </message>
  <message>
   <source>The pickup stands at its highest and the strings are still too far away: it sounds weak.</source>
   <translation>Der Tonabnehmer steht am höchsten, und die Saiten sind noch zu weit weg: er klingt schwach.</translation>
  </message>
  <message>
   <source>The pickup stands at its lowest and the fretted strings still come too close.</source>
   <translation>Der Tonabnehmer steht am tiefsten, und die gegriffenen Saiten kommen noch zu nah.</translation>
  </message>
  <message>
   <source>The plate cannot come off before the neck does.</source>
   <translation>Das Schlagbrett lässt sich nicht vor dem Hals abnehmen.</translation>
  </message>
  <message>
   <source>The plate holds the neck off its seat, or the screws pry the fretboard off the neck.</source>
   <translation>Das Schlagbrett hält den Hals von seinem Sitz ab, oder die Schrauben hebeln das Griffbrett vom Hals.</translation>
  </message>
  <message>
   <source>The plate of this joint.</source>
   <translation>Das Schlagbrett dieser Verbindung.</translation>
  </message>
  <message>
   <source>The plate presses on the heel or the fretboard, and buckles or holds the neck off.</source>
   <translation>Das Schlagbrett drückt auf Halsfuß oder Griffbrett und wölbt sich oder hält den Hals ab.</translation>
  </message>
  <message>
   <source>The pocket as read, as JSON.</source>
   <translation>Die Tasche, wie gelesen, als JSON.</translation>
  </message>
  <message>
   <source>The pocket of this joint.</source>
   <translation>Die Tasche dieser Verbindung.</translation>
  </message>
  <message>
   <source>The pocket whose length is looked at.</source>
   <translation>Die Tasche, deren Länge betrachtet wird.</translation>
  </message>
  <message>
   <source>The pocket's end wall is skew to the centreline by {}°; pick another centreline, or make the wall square to it.</source>
   <translation>Die Stirnwand der Tasche steht um {}° schief zur Mittellinie; eine andere Mittellinie wählen, oder die Wand rechtwinklig dazu machen.</translation>
  </message>
  <message>
   <source>The pocket's end wall leans by {}° and the floor by {}°, so that it is square to neither top nor floor; make it square to one, or state its values.</source>
   <translation>Die Stirnwand der Tasche neigt sich um {}° und der Boden um {}°, sie steht also weder zur Decke noch zum Boden rechtwinklig; sie zu einem von beiden rechtwinklig machen, oder die Werte der Tasche angeben.</translation>
  </message>
  <message>
   <source>The pocket's floor, as geometry.</source>
   <translation>Der Boden der Tasche, als Geometrie.</translation>
  </message>
  <message>
   <source>The pocket's middle line lies {} mm off the frame's X axis at most.</source>
   <translation>Die Mittellinie der Tasche liegt höchstens {} mm neben der X-Achse des Koordinatensystems.</translation>
  </message>
  <message>
   <source>The pocket's side wall at {} leans by {}°, and only upright side walls can be stated; make it upright, or state the pocket's values.</source>
   <translation>Die Seitenwand der Tasche bei {} neigt sich um {}°, und nur senkrechte Seitenwände lassen sich angeben; sie senkrecht machen, oder die Werte der Tasche angeben.</translation>
  </message>
  <message>
   <source>The pocket's {} have radii from {} to {} mm.</source>
   <translation>Die Tasche ({}) hat Radien von {} bis {} mm.</translation>
  </message>
  <message>
   <source>The rod can be adjusted only with the neck taken off.</source>
   <translation>Der Halsstab lässt sich nur bei abgenommenem Hals einstellen.</translation>
  </message>
  <message>
   <source>The saddles stand at their highest and the strings still lie too low: they buzz.</source>
   <translation>Die Saitenreiter stehen am höchsten, und die Saiten liegen noch zu tief: sie schnarren.</translation>
  </message>
  <message>
   <source>The saddles stand at their lowest and the action is still too high.</source>
   <translation>Die Saitenreiter stehen am tiefsten, und die Saitenlage ist noch zu hoch.</translation>
  </message>
  <message>
   <source>The same interference as in "{room}", measured here between the two whole parts; what that asks for frees them.</source>
   <translation>Dieselbe Überschneidung wie bei „{room}“, hier zwischen den beiden ganzen Teilen gemessen; was dort verlangt wird, macht sie frei.</translation>
  </message>
  <message>
   <source>The same parts as in "{room}": that tells how far the neck must be lifted, this the shortest way out, sideways or down. Mend that first.</source>
   <translation>Dieselben Teile wie bei „{room}“: Dort steht, wie weit der Hals gehoben werden muss, hier der kürzeste Weg hinaus, seitwärts oder nach unten. Zuerst jenes beheben.</translation>
  </message>
  <message>
   <source>The screw bottoms: it feels tight while the neck is loose, or pushes the insert out.</source>
   <translation>Die Schraube sitzt auf: sie fühlt sich fest an, während der Hals lose ist, oder drückt den Gewindeeinsatz heraus.</translation>
  </message>
  <message>
   <source>The screws bite in the body and jack the neck off its floor instead of pulling it down.</source>
   <translation>Die Schrauben greifen im Korpus und drücken den Hals vom Boden ab, statt ihn herabzuziehen.</translation>
  </message>
  <message>
   <source>The solid has its pocket already; it is read.</source>
   <translation>Der Volumenkörper hat seine Tasche schon; sie wird gelesen.</translation>
  </message>
  <message>
   <source>The solid itself; picking its top face picks it too.</source>
   <translation>Der Volumenkörper selbst; wer seine Oberseite wählt, wählt auch ihn.</translation>
  </message>
  <message>
   <source>The solid that stands for it; without one it is built from the values.</source>
   <translation>Der Volumenkörper, der dafür steht; ohne ihn wird es aus den Werten gebaut.</translation>
  </message>
  <message>
   <source>The strings hardly press on their saddles: they rattle and slip sideways.</source>
   <translation>Die Saiten drücken kaum auf ihre Saitenreiter: sie schnarren und rutschen seitlich weg.</translation>
  </message>
  <message>
   <source>The strings lie closer to the body under the playing hand than was wished.</source>
   <translation>Die Saiten liegen unter der Spielhand näher am Korpus als gewünscht.</translation>
  </message>
  <message>
   <source>The thin wall beside the pocket breaks out when the neck is knocked.</source>
   <translation>Die dünne Wand neben der Tasche bricht aus, wenn der Hals angestoßen wird.</translation>
  </message>
  <message>
   <source>The thread strips.</source>
   <translation>Das Gewinde reißt aus.</translation>
  </message>
  <message>
   <source>The threads strip out of the heel.</source>
   <translation>Die Gewinde reißen aus dem Halsfuß.</translation>
  </message>
  <message>
   <source>The top face, as geometry.</source>
   <translation>Die Oberseite, als Geometrie.</translation>
  </message>
  <message>
   <source>The top is curved and the body has no flat back to measure from; type the frame, or link a coordinate system.</source>
   <translation>Die Decke ist gewölbt, und der Korpus hat keine ebene Rückseite als Messbezug; das Koordinatensystem eintippen oder eines verknüpfen.</translation>
  </message>
  <message>
   <source>The web breaks out, and the end wall with it.</source>
   <translation>Der Holzsteg bricht aus, und die Stirnwand mit ihm.</translation>
  </message>
  <message>
   <source>The whole, as it is turned in the 3D view</source>
   <translation>Das Ganze, wie es in der 3D-Ansicht gedreht ist</translation>
  </message>
  <message>
   <source>The wished {} is kept; no limits need be drawn in.</source>
   <translation>Die gewünschten {} sind eingehalten; keine Grenzen brauchen enger gefasst zu werden.</translation>
  </message>
  <message>
   <source>The wood has the moisture of this month when it is cut.</source>
   <translation>Das Holz hat beim Fräsen die Feuchte dieses Monats.</translation>
  </message>
  <message>
   <source>The {} that was picked is no longer there; pick it again.</source>
   <translation>Das Gewählte ({}) ist nicht mehr da; erneut wählen.</translation>
  </message>
  <message>
   <source>There are several; type them in the property editor.</source>
   <translation>Es sind mehrere; sie im Eigenschafteneditor eintippen.</translation>
  </message>
  <message>
   <source>These exclude one another</source>
   <translation>Diese schließen einander aus</translation>
  </message>
  <message>
   <source>These exclude one another:</source>
   <translation>Diese schließen einander aus:</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>This document has no joint; make one first.</source>
   <translation>Dieses Dokument hat keine Verbindung; zuerst eine anlegen.</translation>
  </message>
  <message>
   <source>This is "{room}" in the worst month of the year; that is out of its limits as cut.</source>
   <translation>Dies ist „{room}“ im ungünstigsten Monat des Jahres; das liegt schon beim Schneiden außerhalb seiner Grenzen.</translation>
  </message>
  <message>
   <source>This is what holds the strings on their saddles.</source>
   <translation>Das hält die Saiten auf ihren Saitenreitern.</translation>
  </message>
  <message>
   <source>This is what the joint states already; an option needs a difference.</source>
   <translation>Das gibt die Verbindung schon an; eine Variante braucht eine Abweichung.</translation>
  </message>
  <message>
   <source>This is what the neck joint has to hold.</source>
   <translation>Das muss die Halsverbindung halten.</translation>
  </message>
  <message>
   <source>This joint has no options. Keep a place tried or a change found as one in the other windows; a job file states them under [[option]].</source>
   <translation>Diese Verbindung hat keine Varianten. In den anderen Fenstern eine versuchte Stelle oder eine gefundene Änderung als Variante behalten; eine Auftragsdatei gibt sie unter [[option]] an.</translation>
  </message>
  <message>
   <source>This went wrong within NeckFit: {}. The report view has the detail.</source>
   <translation>In NeckFit ging dies schief: {}. Einzelheiten stehen im Ausgabefenster.</translation>
  </message>
  <message>
   <source>This window is still working; wait, or stop it first.</source>
   <translation>Dieses Fenster arbeitet noch; warten, oder es zuerst anhalten.</translation>
  </message>
  <message>
   <source>Through the &amp;year…</source>
   <translation>Im Jahre&amp;slauf…</translation>
  </message>
  <message>
   <source>Through the year</source>
   <translation>Im Jahreslauf</translation>
  </message>
  <message>
   <source>Tightened screws pry a glued fretboard off; a neck of one piece rocks off.</source>
   <translation>Angezogene Schrauben hebeln ein aufgeleimtes Griffbrett ab; ein einteiliger Hals kippelt.</translation>
  </message>
  <message>
   <source>Tip the pocket's floor, or put in a wedge, by {short}; or change the depth.</source>
   <translation>Den Boden der Tasche um {short} kippen oder einen Keil einlegen; oder die Tiefe ändern.</translation>
  </message>
  <message>
   <source>To come down to {}:</source>
   <translation>Um auf {} zu kommen:</translation>
  </message>
  <message>
   <source>To mend it:</source>
   <translation>Zur Abhilfe:</translation>
  </message>
  <message>
   <source>Tolerances</source>
   <translation>Toleranzen</translation>
  </message>
  <message>
   <source>Tool's height</source>
   <translation>Höhe des Werkzeugs</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>Top face</source>
   <translation>Oberseite</translation>
  </message>
  <message>
   <source>Tried: {}</source>
   <translation>Versucht: {}</translation>
  </message>
  <message>
   <source>Truss rod</source>
   <translation>Halsstab</translation>
  </message>
  <message>
   <source>Turn depth and angle of the pocket with all findings beside the model</source>
   <translation>Tiefe und Winkel der Tasche verstellen, mit allen Befunden neben dem Modell</translation>
  </message>
  <message>
   <source>Turn the centreline round</source>
   <translation>Mittellinie umdrehen</translation>
  </message>
  <message>
   <source>Turned about Z</source>
   <translation>Gedreht um Z</translation>
  </message>
  <message>
   <source>Typed by hand.</source>
   <translation>Von Hand eingetippt.</translation>
  </message>
  <message>
   <source>Underside's height</source>
   <translation>Höhe der Unterseite</translation>
  </message>
  <message>
   <source>Units of the sheets</source>
   <translation>Einheiten der Blätter</translation>
  </message>
  <message>
   <source>Use a longer screw: {short} diameters are missing.</source>
   <translation>Eine längere Schraube verwenden: {short} Durchmesser fehlen.</translation>
  </message>
  <message>
   <source>Use a longer screw: {short} shank diameters are missing.</source>
   <translation>Eine längere Schraube verwenden: {short} Schaftdurchmesser fehlen.</translation>
  </message>
  <message>
   <source>Use a screw shorter by {short}, or a longer insert.</source>
   <translation>Eine um {short} kürzere Schraube verwenden, oder einen längeren Gewindeeinsatz.</translation>
  </message>
  <message>
   <source>Use a screw shorter by {short}: see the longest safe one.</source>
   <translation>Eine um {short} kürzere Schraube verwenden: siehe die längste sichere.</translation>
  </message>
  <message>
   <source>Use it</source>
   <translation>Verwenden</translation>
  </message>
  <message>
   <source>Use longer or thicker screws, or set them farther from the heel end.</source>
   <translation>Längere oder dickere Schrauben verwenden, oder sie weiter vom Ende des Halsfußes setzen.</translation>
  </message>
  <message>
   <source>Usual spread</source>
   <translation>Übliche Streuung</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>Values from a job file</source>
   <translation>Werte aus einer Auftragsdatei</translation>
  </message>
  <message>
   <source>Values from a job file…</source>
   <translation>Werte aus einer Auftragsdatei…</translation>
  </message>
  <message>
   <source>Values measured on the solid.</source>
   <translation>Am Volumenkörper gemessene Werte.</translation>
  </message>
  <message>
   <source>Values read from the body.</source>
   <translation>Aus dem Korpus gelesene Werte.</translation>
  </message>
  <message>
   <source>Values that differ: {}</source>
   <translation>Abweichende Werte: {}</translation>
  </message>
  <message>
   <source>Version of the properties.</source>
   <translation>Version der Eigenschaften.</translation>
  </message>
  <message>
   <source>Wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>What &amp;mends it…</source>
   <translation>Ab&amp;hilfe suchen…</translation>
  </message>
  <message>
   <source>What bounds it</source>
   <translation>Was es begrenzt</translation>
  </message>
  <message>
   <source>What matters most (share of the failures that it explains alone):</source>
   <translation>Was am meisten zählt (Anteil der Fehlschläge, den es allein erklärt):</translation>
  </message>
  <message>
   <source>What mends it</source>
   <translation>Abhilfe</translation>
  </message>
  <message>
   <source>What neck and body share.</source>
   <translation>Was Hals und Korpus gemeinsam haben.</translation>
  </message>
  <message>
   <source>What reading it showed.</source>
   <translation>Was sich beim Lesen zeigte.</translation>
  </message>
  <message>
   <source>What the centreline is an edge of.</source>
   <translation>Woran die Mittellinie eine Kante ist.</translation>
  </message>
  <message>
   <source>What the frame follows: picked faces, a coordinate system, the typed placement, or the place where the solid lies beside the body.</source>
   <translation>Wem das Koordinatensystem folgt: gewählten Flächen, einem Koordinatensystem, der eingetippten Platzierung, oder dem Ort, an dem der Volumenkörper beim Korpus liegt.</translation>
  </message>
  <message>
   <source>What the limits are drawn in for.</source>
   <translation>Wofür die Grenzen enger gefasst werden.</translation>
  </message>
  <message>
   <source>What this object is to NeckFit.</source>
   <translation>Was dieses Objekt für NeckFit ist.</translation>
  </message>
  <message>
   <source>What was recognised stands as the answer.</source>
   <translation>Was erkannt wurde, gilt als Antwort.</translation>
  </message>
  <message>
   <source>Where in the linked object it lies.</source>
   <translation>Wo im verknüpften Objekt es liegt.</translation>
  </message>
  <message>
   <source>Where the end wall meets the top on the centreline, and how the solid is turned.</source>
   <translation>Wo die Stirnwand auf der Mittellinie die Decke trifft, und wie der Körper gedreht ist.</translation>
  </message>
  <message>
   <source>Whether everything fits.</source>
   <translation>Ob alles passt.</translation>
  </message>
  <message>
   <source>Whether it is stated; otherwise {} shows what is worked out.</source>
   <translation>Ob es angegeben ist; sonst zeigt {} den berechneten Wert.</translation>
  </message>
  <message>
   <source>Whether the joint fits could not be decided; see the findings before you cut.</source>
   <translation>Ob die Verbindung passt, ließ sich nicht entscheiden; vor dem Fräsen die Befunde ansehen.</translation>
  </message>
  <message>
   <source>Whether {} rows are stated; otherwise {} shows what is worked out.</source>
   <translation>Ob Zeilen der Art „{}“ angegeben sind; sonst zeigt {} den berechneten Wert.</translation>
  </message>
  <message>
   <source>Which joint do you want to fit?</source>
   <translation>Welche Verbindung einpassen?</translation>
  </message>
  <message>
   <source>Which of the file's joints?</source>
   <translation>Welche der Verbindungen in der Datei?</translation>
  </message>
  <message>
   <source>Whole steps of the shop</source>
   <translation>Ganze Schritte der Werkstatt</translation>
  </message>
  <message>
   <source>Widen the plate's cut-out by {short}.</source>
   <translation>Den Ausschnitt des Schlagbretts um {short} erweitern.</translation>
  </message>
  <message>
   <source>Widen the pocket or the plate's cut-out by {short}, or keep the fretboard above them.</source>
   <translation>Die Tasche oder den Ausschnitt des Schlagbretts um {short} erweitern, oder das Griffbrett darüber halten.</translation>
  </message>
  <message>
   <source>Width End</source>
   <translation>Breite am Ende</translation>
  </message>
  <message>
   <source>Width at its end</source>
   <translation>Breite am Ende</translation>
  </message>
  <message>
   <source>Width at the mouth</source>
   <translation>Breite an der Mündung</translation>
  </message>
  <message>
   <source>Width at the nut</source>
   <translation>Breite am Sattel</translation>
  </message>
  <message>
   <source>Wished share of failures</source>
   <translation>Gewünschter Anteil Fehlschläge</translation>
  </message>
  <message>
   <source>Wood</source>
   <translation>Holz</translation>
  </message>
  <message>
   <source>Write &amp;job file…</source>
   <translation>Auftragsdatei e&amp;xportieren…</translation>
  </message>
  <message>
   <source>Write drawing, routing template, set-up sheet, report and model into one folder</source>
   <translation>Zeichnung, Frässchablone, Einrichteblatt, Bericht und Modell in einen Ordner schreiben</translation>
  </message>
  <message>
   <source>Write job file</source>
   <translation>Auftragsdatei schreiben</translation>
  </message>
  <message>
   <source>Write the joint and its options as a job file (TOML)</source>
   <translation>Die Verbindung und ihre Varianten als Auftragsdatei (TOML) schreiben</translation>
  </message>
  <message>
   <source>Write the package</source>
   <translation>Paket schreiben</translation>
  </message>
  <message>
   <source>X of the cavity's centre</source>
   <translation>X der Mitte des Hohlraums</translation>
  </message>
  <message>
   <source>X of the pickup's pole line</source>
   <translation>X der Polstücklinie des Tonabnehmers</translation>
  </message>
  <message>
   <source>X of the saddle's string rest with the saddle fully forward</source>
   <translation>X der Saitenauflage, Saitenreiter ganz nach vorn gestellt</translation>
  </message>
  <message>
   <source>X of the screw in the body frame at the floor</source>
   <translation>X der Schraube im Koordinatensystem des Korpus, am Boden</translation>
  </message>
  <message>
   <source>X points to the other end of the centreline.</source>
   <translation>X zeigt zum anderen Ende der Mittellinie.</translation>
  </message>
  <message>
   <source>X under the playing hand; midway from fretboard end to saddles unless stated</source>
   <translation>X unter der Spielhand; ohne Angabe auf halbem Weg vom Griffbrettende zu den Saitenreitern</translation>
  </message>
  <message>
   <source>X, to the bridge</source>
   <translation>X, zur Brücke</translation>
  </message>
  <message>
   <source>Y</source>
   <translation>Y</translation>
  </message>
  <message>
   <source>Y of the cavity's centre</source>
   <translation>Y der Mitte des Hohlraums</translation>
  </message>
  <message>
   <source>Y of the screw</source>
   <translation>Y der Schraube</translation>
  </message>
  <message>
   <source>Z, out of the top</source>
   <translation>Z, aus der Decke heraus</translation>
  </message>
  <message>
   <source>[diameters]</source>
   <translation>[Durchmesser]</translation>
  </message>
  <message>
   <source>a chart holds &lt;{}&gt;, which no sheet of paper can show</source>
   <translation>ein Schaubild enthält &lt;{}&gt;, was kein Papierblatt zeigen kann</translation>
  </message>
  <message>
   <source>a file without an ending</source>
   <translation>eine Datei ohne Endung</translation>
  </message>
  <message>
   <source>a fret has no edge along it</source>
   <translation>ein Bund hat keine Kante in Längsrichtung</translation>
  </message>
  <message>
   <source>a fret has round flanks, so that its crest is no edge</source>
   <translation>ein Bund hat runde Flanken, seine Krone ist daher keine Kante</translation>
  </message>
  <message>
   <source>a fret is flat on top, so that its crest is no edge</source>
   <translation>ein Bund ist oben flach, seine Krone ist daher keine Kante</translation>
  </message>
  <message>
   <source>a fret where the scale begins</source>
   <translation>ein Bund, wo die Mensur beginnt</translation>
  </message>
  <message>
   <source>a fretboard glued on, or a neck of one piece</source>
   <translation>ein aufgeleimtes Griffbrett oder ein einteiliger Hals</translation>
  </message>
  <message>
   <source>a job file</source>
   <translation>einer Auftragsdatei</translation>
  </message>
  <message>
   <source>a line has no centre</source>
   <translation>eine Linie hat keine Mitte</translation>
  </message>
  <message>
   <source>a list is no {}</source>
   <translation>eine Liste ist hier falsch: {}</translation>
  </message>
  <message>
   <source>a macro cannot hold a {}</source>
   <translation>ein Makro kann dies nicht enthalten: {}</translation>
  </message>
  <message>
   <source>a mesh was inside out and was turned right side out</source>
   <translation>ein Netz war nach innen gekehrt und wurde umgestülpt</translation>
  </message>
  <message>
   <source>a number is no {}</source>
   <translation>eine Zahl ist hier falsch: {}</translation>
  </message>
  <message>
   <source>a part file has no [{}]; state it in the job file.</source>
   <translation>eine Teiledatei hat kein [{}]; es in der Auftragsdatei angeben.</translation>
  </message>
  <message>
   <source>a part of it is empty</source>
   <translation>ein Teil davon ist leer</translation>
  </message>
  <message>
   <source>a pickup is fitted here</source>
   <translation>hier ist ein Tonabnehmer eingebaut</translation>
  </message>
  <message>
   <source>a round pocket has no corners: see the end clearance</source>
   <translation>eine runde Tasche hat keine Ecken: siehe das Stirnspiel</translation>
  </message>
  <message>
   <source>a solid that is in the file twice was taken once</source>
   <translation>ein Volumenkörper, der zweimal in der Datei steht, wurde einmal genommen</translation>
  </message>
  <message>
   <source>a solid was inside out and was turned right side out</source>
   <translation>ein Volumenkörper war nach innen gekehrt und wurde umgestülpt</translation>
  </message>
  <message>
   <source>a text is no {}</source>
   <translation>ein Text ist hier falsch: {}</translation>
  </message>
  <message>
   <source>about X</source>
   <translation>um X</translation>
  </message>
  <message>
   <source>about Y</source>
   <translation>um Y</translation>
  </message>
  <message>
   <source>action error of the middle strings on a fixed radius</source>
   <translation>Fehler der Saitenlage der mittleren Saiten bei festem Radius</translation>
  </message>
  <message>
   <source>all fits; the closest first</source>
   <translation>alles passt; das Knappste zuerst</translation>
  </message>
  <message>
   <source>among them: {}</source>
   <translation>darunter: {}</translation>
  </message>
  <message>
   <source>an object holds itself</source>
   <translation>ein Objekt enthält sich selbst</translation>
  </message>
  <message>
   <source>and this is not enough: bring the middles nearer to their</source>
   <translation>und dies reicht nicht: die Mitten näher zur Mitte ihrer</translation>
  </message>
  <message>
   <source>and {} more</source>
   <translation>und {} weitere</translation>
  </message>
  <message>
   <source>angle</source>
   <translation>Winkel</translation>
  </message>
  <message>
   <source>another value</source>
   <translation>anderer Wert</translation>
  </message>
  <message>
   <source>answer this</source>
   <translation>beantworten</translation>
  </message>
  <message>
   <source>anything worth remembering</source>
   <translation>alles, was man sich merken will</translation>
  </message>
  <message>
   <source>as FreeCAD</source>
   <translation>wie in FreeCAD</translation>
  </message>
  <message>
   <source>as stated</source>
   <translation>wie angegeben</translation>
  </message>
  <message>
   <source>binding</source>
   <translation>Einfassung</translation>
  </message>
  <message>
   <source>binding relieved</source>
   <translation>Einfassung abgenommen</translation>
  </message>
  <message>
   <source>bit: a diameter of {} cuts nothing; state one above zero.</source>
   <translation>Fräser: ein Durchmesser von {} schneidet nichts; einen über null angeben.</translation>
  </message>
  <message>
   <source>body</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>body block bass</source>
   <translation>Block, Bassseite</translation>
  </message>
  <message>
   <source>body block treble</source>
   <translation>Block, Diskantseite</translation>
  </message>
  <message>
   <source>body carve radius across</source>
   <translation>Wölbungsradius quer</translation>
  </message>
  <message>
   <source>body carve radius along</source>
   <translation>Wölbungsradius längs</translation>
  </message>
  <message>
   <source>body carve slope</source>
   <translation>Wölbungsanstieg</translation>
  </message>
  <message>
   <source>body contour depth</source>
   <translation>Tiefe des Halsübergangs</translation>
  </message>
  <message>
   <source>body contour length</source>
   <translation>Länge des Halsübergangs</translation>
  </message>
  <message>
   <source>body cutaway bass</source>
   <translation>Cutaway, Bassseite</translation>
  </message>
  <message>
   <source>body cutaway treble</source>
   <translation>Cutaway, Diskantseite</translation>
  </message>
  <message>
   <source>body dome centre</source>
   <translation>Kugelmitte</translation>
  </message>
  <message>
   <source>body dome radius</source>
   <translation>Kugelradius</translation>
  </message>
  <message>
   <source>body edge round</source>
   <translation>Kantenrundung</translation>
  </message>
  <message>
   <source>body hole over shank, least</source>
   <translation>Korpusloch über Schaft, mindestens</translation>
  </message>
  <message>
   <source>body holes over the screws' shanks</source>
   <translation>Korpuslöcher über den Schraubenschäften</translation>
  </message>
  <message>
   <source>body lower width</source>
   <translation>Korpusbreite unten</translation>
  </message>
  <message>
   <source>body outline</source>
   <translation>Korpusumriss</translation>
  </message>
  <message>
   <source>body outline file</source>
   <translation>Umrissdatei</translation>
  </message>
  <message>
   <source>body outline points</source>
   <translation>Umrisspunkte</translation>
  </message>
  <message>
   <source>body tail</source>
   <translation>Korpuslänge ab Stirnwand</translation>
  </message>
  <message>
   <source>body thickness</source>
   <translation>Korpusdicke</translation>
  </message>
  <message>
   <source>body top</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>body top error</source>
   <translation>Fehler der Abtastung</translation>
  </message>
  <message>
   <source>body top from x</source>
   <translation>Abtastung ab X</translation>
  </message>
  <message>
   <source>body top from y</source>
   <translation>Abtastung ab Y</translation>
  </message>
  <message>
   <source>body top heights</source>
   <translation>abgetastete Höhen</translation>
  </message>
  <message>
   <source>body top rows</source>
   <translation>Messpunkte in der Breite</translation>
  </message>
  <message>
   <source>body top step</source>
   <translation>Schritt der Abtastung</translation>
  </message>
  <message>
   <source>body upper width</source>
   <translation>Korpusbreite oben</translation>
  </message>
  <message>
   <source>body waist width</source>
   <translation>Taillenbreite</translation>
  </message>
  <message>
   <source>body.block_{}: {} mm leaves no horn within body.upper_width of {} mm; make the block narrower or the body wider.</source>
   <translation>body.block_{}: {} mm lassen innerhalb von body.upper_width mit {} mm kein Horn; den Block schmaler oder den Korpus breiter machen.</translation>
  </message>
  <message>
   <source>body.cutaway_{}: its bottom lies {} mm behind the pocket's mouth, and {} mm are the least; make it smaller or the pocket longer.</source>
   <translation>body.cutaway_{}: sein Grund liegt {} mm hinter der Mündung der Tasche, {} mm sind das Mindeste; ihn kleiner oder die Tasche länger machen.</translation>
  </message>
  <message>
   <source>body.edge_round: a round of {} mm does not fit this outline's edges; make it smaller, or the outline's own curves wider.</source>
   <translation>body.edge_round: eine Rundung von {} mm passt nicht an die Kanten dieses Umrisses; sie kleiner oder die Kurven des Umrisses weiter machen.</translation>
  </message>
  <message>
   <source>body.outline_file is missing, though body.outline is "file"; name a DXF or FCStd file.</source>
   <translation>body.outline_file fehlt, obwohl body.outline "file" ist; eine DXF- oder FCStd-Datei nennen.</translation>
  </message>
  <message>
   <source>body.outline_file: {} is neither DXF nor FCStd; save it as one of these.</source>
   <translation>body.outline_file: {} ist weder DXF noch FCStd; als eines davon speichern.</translation>
  </message>
  <message>
   <source>body.outline_points is missing, though body.outline is "{}"; state the corners.</source>
   <translation>body.outline_points fehlt, obwohl body.outline "{}" ist; die Ecken angeben.</translation>
  </message>
  <message>
   <source>body.top_heights is missing, though body.top is "sampled"; state the heights.</source>
   <translation>body.top_heights fehlt, obwohl body.top "sampled" ist; die Höhen angeben.</translation>
  </message>
  <message>
   <source>body.top_heights: {} heights are no grid of {} across (body.top_rows); state at least {} rows of at least {} each, all of one length.</source>
   <translation>body.top_heights: {} Höhen sind kein Raster mit {} in der Breite (body.top_rows); mindestens {} Reihen mit je mindestens {} angeben, alle gleich lang.</translation>
  </message>
  <message>
   <source>body.waist_width: {} mm leaves no waist in a body whose {} part is {} mm wide; make it at most {} mm.</source>
   <translation>body.waist_width: {0} mm lassen einem Korpus, dessen Teil {1} {2} mm breit ist, keine Taille; höchstens {3} mm angeben.</translation>
  </message>
  <message>
   <source>body: angle of the rings to the width (0 quartersawn, 90 flatsawn)</source>
   <translation>Korpus: Winkel der Jahresringe zur Breite (0 stehende, 90 liegende Jahresringe)</translation>
  </message>
  <message>
   <source>body: at its outline {} mm are left between top and back, but its rounded edges need {} mm; make it thicker or body.edge_round smaller.</source>
   <translation>Korpus: an seinem Umriss bleiben {} mm zwischen Decke und Rückseite, seine gerundeten Kanten brauchen aber {} mm; ihn dicker oder body.edge_round kleiner machen.</translation>
  </message>
  <message>
   <source>body: pocket, cavities and contour leave {} pieces of it; make them smaller or the outline larger.</source>
   <translation>Korpus: Tasche, Hohlräume und Halsübergang lassen davon {} Stücke; sie kleiner oder den Umriss größer machen.</translation>
  </message>
  <message>
   <source>break angle over the saddle, least</source>
   <translation>Knickwinkel am Saitenreiter, mindestens</translation>
  </message>
  <message>
   <source>break angle over the saddles</source>
   <translation>Knickwinkel an den Saitenreitern</translation>
  </message>
  <message>
   <source>bridge</source>
   <translation>Brücke</translation>
  </message>
  <message>
   <source>bridge anchor back</source>
   <translation>Saitenaufhängung, Abstand</translation>
  </message>
  <message>
   <source>bridge anchor height</source>
   <translation>Saitenaufhängung, Höhe</translation>
  </message>
  <message>
   <source>bridge base high</source>
   <translation>Grundplatte, höchste</translation>
  </message>
  <message>
   <source>bridge base low</source>
   <translation>Grundplatte, tiefste</translation>
  </message>
  <message>
   <source>bridge front</source>
   <translation>Saitenreiter, vorderste</translation>
  </message>
  <message>
   <source>bridge high</source>
   <translation>Saitenreiter, höchste</translation>
  </message>
  <message>
   <source>bridge length</source>
   <translation>Brückenlänge</translation>
  </message>
  <message>
   <source>bridge low</source>
   <translation>Saitenreiter, tiefste</translation>
  </message>
  <message>
   <source>bridge make</source>
   <translation>Brückenbauart</translation>
  </message>
  <message>
   <source>bridge mount</source>
   <translation>Brückenmontage</translation>
  </message>
  <message>
   <source>bridge pickup</source>
   <translation>Brücken-Tonabnehmer</translation>
  </message>
  <message>
   <source>bridge pickup cannot go low enough</source>
   <translation>Brücken-Tonabnehmer geht nicht tief genug</translation>
  </message>
  <message>
   <source>bridge pickup cannot rise high enough</source>
   <translation>Brücken-Tonabnehmer geht nicht hoch genug</translation>
  </message>
  <message>
   <source>bridge pickup goes low enough</source>
   <translation>Brücken-Tonabnehmer geht tief genug</translation>
  </message>
  <message>
   <source>bridge pickup rises high enough</source>
   <translation>Brücken-Tonabnehmer geht hoch genug</translation>
  </message>
  <message>
   <source>bridge post spacing</source>
   <translation>Bolzenabstand</translation>
  </message>
  <message>
   <source>bridge recess</source>
   <translation>Brückenvertiefung</translation>
  </message>
  <message>
   <source>bridge saddle radius</source>
   <translation>Saitenreiterradius</translation>
  </message>
  <message>
   <source>bridge travel</source>
   <translation>Saitenreiter, Stellweg</translation>
  </message>
  <message>
   <source>bridge width</source>
   <translation>Brückenbreite</translation>
  </message>
  <message>
   <source>building the joint anew</source>
   <translation>die Verbindung wird neu gebaut</translation>
  </message>
  <message>
   <source>bush: {} is no larger than the bit of {}; state the bush's outer diameter.</source>
   <translation>Kopierhülse: {} ist nicht größer als der Fräser mit {}; den Außendurchmesser der Hülse angeben.</translation>
  </message>
  <message>
   <source>by calculation - solids are measured on release</source>
   <translation>durch Rechnung - beim Loslassen an den Körpern gemessen</translation>
  </message>
  <message>
   <source>by calculation and measured on the solids</source>
   <translation>durch Rechnung und an den Volumenkörpern gemessen</translation>
  </message>
  <message>
   <source>by hand</source>
   <translation>von Hand</translation>
  </message>
  <message>
   <source>by {}</source>
   <translation>um {}</translation>
  </message>
  <message>
   <source>c</source>
   <translation>c</translation>
  </message>
  <message>
   <source>calipers at the cut-out's edge</source>
   <translation>Messschieber am Rand des Ausschnitts</translation>
  </message>
  <message>
   <source>calipers at the heel's side</source>
   <translation>Messschieber an der Seite des Halsfußes</translation>
  </message>
  <message>
   <source>calipers at the pocket's end wall</source>
   <translation>Messschieber an der Stirnwand der Tasche</translation>
  </message>
  <message>
   <source>calipers close to the heel end</source>
   <translation>Messschieber nahe am Ende des Halsfußes</translation>
  </message>
  <message>
   <source>calipers over the heel, beside a fret</source>
   <translation>Messschieber über dem Halsfuß, neben einem Bund</translation>
  </message>
  <message>
   <source>calipers under the overhang</source>
   <translation>Messschieber unter dem Überstand</translation>
  </message>
  <message>
   <source>calipers where the body ends</source>
   <translation>Messschieber, wo der Korpus endet</translation>
  </message>
  <message>
   <source>carved</source>
   <translation>gewölbt</translation>
  </message>
  <message>
   <source>carved top: climb toward the bridge at the origin</source>
   <translation>gewölbte Decke: Anstieg zur Brücke am Ursprung</translation>
  </message>
  <message>
   <source>carved top: radius along the centreline at the origin</source>
   <translation>gewölbte Decke: Radius längs der Mittellinie am Ursprung</translation>
  </message>
  <message>
   <source>carved top: radius square to the centreline at the origin</source>
   <translation>gewölbte Decke: Radius quer zur Mittellinie am Ursprung</translation>
  </message>
  <message>
   <source>cavity</source>
   <translation>Hohlraum</translation>
  </message>
  <message>
   <source>cavity corner radius</source>
   <translation>Hohlraum-Eckenradius</translation>
  </message>
  <message>
   <source>cavity depth</source>
   <translation>Hohlraumtiefe</translation>
  </message>
  <message>
   <source>cavity length</source>
   <translation>Hohlraumlänge</translation>
  </message>
  <message>
   <source>cavity width</source>
   <translation>Hohlraumbreite</translation>
  </message>
  <message>
   <source>cavity x</source>
   <translation>Hohlraum x</translation>
  </message>
  <message>
   <source>cavity y</source>
   <translation>Hohlraum y</translation>
  </message>
  <message>
   <source>chamfer along the heel's bottom edges</source>
   <translation>Fase an den unteren Kanten des Halsfußes</translation>
  </message>
  <message>
   <source>checking the joint as it is stated</source>
   <translation>die Verbindung wird wie angegeben geprüft</translation>
  </message>
  <message>
   <source>checking the joint on solids</source>
   <translation>die Verbindung wird an Volumenkörpern geprüft</translation>
  </message>
  <message>
   <source>choice</source>
   <translation>Auswahl</translation>
  </message>
  <message>
   <source>chosen by this project</source>
   <translation>von diesem Projekt gewählt</translation>
  </message>
  <message>
   <source>circle through the heel's end wall</source>
   <translation>Kreis durch die Stirn des Halsfußes</translation>
  </message>
  <message>
   <source>circles through the heel's corners in plan</source>
   <translation>Kreise durch die Ecken des Halsfußes in der Draufsicht</translation>
  </message>
  <message>
   <source>clearance hole through the body</source>
   <translation>Durchgangsloch durch den Korpus</translation>
  </message>
  <message>
   <source>climate humidity damp</source>
   <translation>Luftfeuchte im feuchtesten Monat</translation>
  </message>
  <message>
   <source>climate humidity dry</source>
   <translation>Luftfeuchte im trockensten Monat</translation>
  </message>
  <message>
   <source>climate temperature</source>
   <translation>Raumtemperatur</translation>
  </message>
  <message>
   <source>colours that all eyes tell apart</source>
   <translation>Farben, die jedes Auge unterscheidet</translation>
  </message>
  <message>
   <source>common practice, no source</source>
   <translation>gängige Praxis, ohne Quelle</translation>
  </message>
  <message>
   <source>compensation of each string, treble first</source>
   <translation>Kompensation jeder Saite, Diskant zuerst</translation>
  </message>
  <message>
   <source>cone</source>
   <translation>Kegel</translation>
  </message>
  <message>
   <source>cone of circles square to the centreline</source>
   <translation>Kegel aus Kreisen rechtwinklig zur Mittellinie</translation>
  </message>
  <message>
   <source>corners of the outline as [X, Y] pairs in the body frame</source>
   <translation>Ecken des Umrisses als Paare [X, Y] im Koordinatensystem des Korpus</translation>
  </message>
  <message>
   <source>costs: {} {} -&gt; {}</source>
   <translation>kostet: {} {} -&gt; {}</translation>
  </message>
  <message>
   <source>could not be checked</source>
   <translation>war nicht zu prüfen</translation>
  </message>
  <message>
   <source>could not be checked in every month</source>
   <translation>war nicht in jedem Monat zu prüfen</translation>
  </message>
  <message>
   <source>could not be decided</source>
   <translation>war nicht zu entscheiden</translation>
  </message>
  <message>
   <source>cover plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>cover plate to heel</source>
   <translation>Schlagbrett zum Halsfuß</translation>
  </message>
  <message>
   <source>cover plate under the overhang</source>
   <translation>Schlagbrett unter dem Überstand</translation>
  </message>
  <message>
   <source>cover plate's thickness</source>
   <translation>Dicke des Schlagbretts</translation>
  </message>
  <message>
   <source>cover plate: none, all round the pocket, or on the treble side only</source>
   <translation>Schlagbrett: keines, rings um die Tasche, oder nur auf der Diskantseite</translation>
  </message>
  <message>
   <source>crowns over the top</source>
   <translation>Kronen über der Oberseite</translation>
  </message>
  <message>
   <source>cut at {} % moisture</source>
   <translation>gefräst bei {} % Holzfeuchte</translation>
  </message>
  <message>
   <source>cut-out beyond the pocket's edge, all round</source>
   <translation>Ausschnitt über den Rand der Tasche hinaus, ringsum</translation>
  </message>
  <message>
   <source>cylinder</source>
   <translation>Zylinder</translation>
  </message>
  <message>
   <source>dampest month indoors</source>
   <translation>feuchtester Monat im Haus</translation>
  </message>
  <message>
   <source>data/sheet.dxf has no model space</source>
   <translation>data/sheet.dxf hat keinen Modellbereich</translation>
  </message>
  <message>
   <source>deeper pocket, 0.720 in</source>
   <translation>tiefere Tasche, 0.720 in</translation>
  </message>
  <message>
   <source>demand</source>
   <translation>Forderung</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>depth and angle</source>
   <translation>Tiefe und Winkel</translation>
  </message>
  <message>
   <source>depth from the top at the cavity's centre</source>
   <translation>Tiefe ab Oberseite in der Mitte des Hohlraums</translation>
  </message>
  <message>
   <source>depth gauge from the top at the end wall</source>
   <translation>Tiefenmaß von der Oberseite an der Stirnwand</translation>
  </message>
  <message>
   <source>depth of its cavity from the top</source>
   <translation>Tiefe seines Hohlraums ab Oberseite</translation>
  </message>
  <message>
   <source>depth of the ferrule's seat below the back</source>
   <translation>Tiefe des Hülsensitzes unter der Rückseite</translation>
  </message>
  <message>
   <source>depth of the head's seat below the neck plate's outer face or ferrule rim</source>
   <translation>Tiefe des Kopfsitzes unter der Außenseite der Halsplatte oder dem Rand der Hülse</translation>
  </message>
  <message>
   <source>depth of the pocket in bare wood, at the end wall, square to the datum</source>
   <translation>Tiefe der Tasche im rohen Holz, an der Stirnwand, rechtwinklig zur Bezugsebene</translation>
  </message>
  <message>
   <source>depth of the recess under the bridge</source>
   <translation>Tiefe der Vertiefung unter der Brücke</translation>
  </message>
  <message>
   <source>depths at which the router's stops stand, where it has stops</source>
   <translation>Tiefen, auf denen die Anschläge der Oberfräse stehen, wo sie Anschläge hat</translation>
  </message>
  <message>
   <source>diameter of the ferrule</source>
   <translation>Durchmesser der Hülse</translation>
  </message>
  <message>
   <source>divides by zero</source>
   <translation>teilt durch null</translation>
  </message>
  <message>
   <source>do not vary</source>
   <translation>streuen nicht</translation>
  </message>
  <message>
   <source>does NOT fit through the year</source>
   <translation>passt NICHT übers Jahr</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>passt nicht</translation>
  </message>
  <message>
   <source>does not start with a number</source>
   <translation>beginnt nicht mit einer Zahl</translation>
  </message>
  <message>
   <source>does not tell here</source>
   <translation>sagt hier nichts</translation>
  </message>
  <message>
   <source>domed</source>
   <translation>kugelig</translation>
  </message>
  <message>
   <source>domed top: X of the highest point</source>
   <translation>kugelige Decke: X des höchsten Punkts</translation>
  </message>
  <message>
   <source>domed top: radius of the sphere</source>
   <translation>kugelige Decke: Radius der Kugel</translation>
  </message>
  <message>
   <source>done</source>
   <translation>fertig</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>zweifelhaft</translation>
  </message>
  <message>
   <source>drawing</source>
   <translation>Zeichnung</translation>
  </message>
  <message>
   <source>driest month indoors</source>
   <translation>trockenster Monat im Haus</translation>
  </message>
  <message>
   <source>e: least distance between heel end and end wall as assembled</source>
   <translation>e: kleinster Abstand zwischen Ende des Halsfußes und Stirnwand im zusammengebauten Zustand</translation>
  </message>
  <message>
   <source>en</source>
   <translation>de</translation>
  </message>
  <message>
   <source>end clearance</source>
   <translation>Stirnspiel</translation>
  </message>
  <message>
   <source>end wall to the body's edge where the neck leaves</source>
   <translation>Stirnwand bis zum Rand des Korpus, wo der Hals austritt</translation>
  </message>
  <message>
   <source>end wall to the plate's end toward the bridge</source>
   <translation>Stirnwand bis zum brückenseitigen Ende des Schlagbretts</translation>
  </message>
  <message>
   <source>engagement in an insert in screw diameters, least</source>
   <translation>Eingriff in einen Gewindeeinsatz in Schraubendurchmessern, mindestens</translation>
  </message>
  <message>
   <source>engagement in inserts in screw diameters</source>
   <translation>Eingriff in Gewindeeinsätze in Schraubendurchmessern</translation>
  </message>
  <message>
   <source>equal temperament through {}</source>
   <translation>gleichstufige Stimmung durch {}</translation>
  </message>
  <message>
   <source>every old pilot hole is used again</source>
   <translation>jede alte Vorbohrung wird wieder verwendet</translation>
  </message>
  <message>
   <source>every stocked length is too long</source>
   <translation>jede vorrätige Länge ist zu lang</translation>
  </message>
  <message>
   <source>everything</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>f</source>
   <translation>f</translation>
  </message>
  <message>
   <source>fails</source>
   <translation>versagt</translation>
  </message>
  <message>
   <source>fails:  share of the joints drawn in which the demand is not met</source>
   <translation>versagt: Anteil der gezogenen Verbindungen, in denen die Forderung nicht erfüllt ist</translation>
  </message>
  <message>
   <source>failures within the limits</source>
   <translation>Fehlschläge innerhalb der Grenzen</translation>
  </message>
  <message>
   <source>falls</source>
   <translation>fällt</translation>
  </message>
  <message>
   <source>ferrules</source>
   <translation>Hülsen</translation>
  </message>
  <message>
   <source>file</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>finish built up on each pocket wall</source>
   <translation>Lackaufbau auf jeder Taschenwand</translation>
  </message>
  <message>
   <source>finish built up on the pocket's floor (0 where it is masked)</source>
   <translation>Lackaufbau auf dem Boden der Tasche (0, wo er abgeklebt ist)</translation>
  </message>
  <message>
   <source>finish built up on the top</source>
   <translation>Lackaufbau auf der Decke</translation>
  </message>
  <message>
   <source>finish floor</source>
   <translation>Lack, Taschenboden</translation>
  </message>
  <message>
   <source>finish top</source>
   <translation>Lack, Decke</translation>
  </message>
  <message>
   <source>finish wall</source>
   <translation>Lack, Taschenwände</translation>
  </message>
  <message>
   <source>first reason</source>
   <translation>erster Grund</translation>
  </message>
  <message>
   <source>fits</source>
   <translation>passt</translation>
  </message>
  <message>
   <source>fits through the year</source>
   <translation>passt übers Jahr</translation>
  </message>
  <message>
   <source>fitting</source>
   <translation>passen</translation>
  </message>
  <message>
   <source>fixed radius</source>
   <translation>fester Radius</translation>
  </message>
  <message>
   <source>fixed radius: action error of a middle string, largest</source>
   <translation>fester Radius: Fehler der Saitenlage einer mittleren Saite, höchstens</translation>
  </message>
  <message>
   <source>fixed radius: distance between the two posts</source>
   <translation>fester Radius: Abstand der beiden Bolzen</translation>
  </message>
  <message>
   <source>fixed radius: radius over the strings' undersides</source>
   <translation>fester Radius: Radius über den Unterseiten der Saiten</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>eben</translation>
  </message>
  <message>
   <source>flat heel length beyond the pocket</source>
   <translation>flache Länge des Halsfußes über die Tasche hinaus</translation>
  </message>
  <message>
   <source>flat shim</source>
   <translation>gleichmäßig dicke Beilage</translation>
  </message>
  <message>
   <source>flat, stated as the largest radius that a job knows</source>
   <translation>eben, angegeben als der größte Radius, den ein Auftrag kennt</translation>
  </message>
  <message>
   <source>flatness of the heel's bottom</source>
   <translation>Ebenheit der Unterseite des Halsfußes</translation>
  </message>
  <message>
   <source>floating</source>
   <translation>schwebend</translation>
  </message>
  <message>
   <source>floating bridge: base over the mount, least</source>
   <translation>schwebende Brücke: Grundplatte über der Montagefläche, mindestens</translation>
  </message>
  <message>
   <source>floating: highest height of the base above the mount</source>
   <translation>schwebend: größte Höhe der Grundplatte über der Montagefläche</translation>
  </message>
  <message>
   <source>floating: lowest height of the base above the mount</source>
   <translation>schwebend: kleinste Höhe der Grundplatte über der Montagefläche</translation>
  </message>
  <message>
   <source>floor</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>floor fillets</source>
   <translation>Bodenkehlen</translation>
  </message>
  <message>
   <source>for information</source>
   <translation>zur Kenntnis</translation>
  </message>
  <message>
   <source>force</source>
   <translation>Kraft</translation>
  </message>
  <message>
   <source>frequency</source>
   <translation>Frequenz</translation>
  </message>
  <message>
   <source>frequency of each open string, treble first</source>
   <translation>Frequenz jeder leeren Saite, Diskant zuerst</translation>
  </message>
  <message>
   <source>fretboard</source>
   <translation>Griffbrett</translation>
  </message>
  <message>
   <source>fretboard end to neck pickup</source>
   <translation>Griffbrettende zum Hals-Tonabnehmer</translation>
  </message>
  <message>
   <source>fretboard top</source>
   <translation>Griffbrettoberseite</translation>
  </message>
  <message>
   <source>fretboard width at its end, binding included</source>
   <translation>Breite des Griffbretts am Ende, mit Einfassung</translation>
  </message>
  <message>
   <source>fretboard width at the nut</source>
   <translation>Breite des Griffbretts am Sattel</translation>
  </message>
  <message>
   <source>fretboard: its top of radius {} mm leaves no wood at the edges at the {}, {} mm wide; make it thicker, narrower or flatter.</source>
   <translation>Griffbrett: seine Oberseite mit Radius {} mm lässt bei „{}“, {} mm breit, an den Kanten kein Holz; es dicker, schmaler oder flacher machen.</translation>
  </message>
  <message>
   <source>fretted string over every later fret, least</source>
   <translation>gegriffene Saite über jedem weiteren Bund, mindestens</translation>
  </message>
  <message>
   <source>fretted string over plate and rings, least</source>
   <translation>gegriffene Saite über Schlagbrett und Rahmen, mindestens</translation>
  </message>
  <message>
   <source>fretted strings over every later fret</source>
   <translation>gegriffene Saiten über allen weiteren Bünden</translation>
  </message>
  <message>
   <source>fretted strings over plate and rings</source>
   <translation>gegriffene Saiten über Schlagbrett und Rahmen</translation>
  </message>
  <message>
   <source>from memory; set your own</source>
   <translation>aus dem Gedächtnis; den eigenen Wert angeben</translation>
  </message>
  <message>
   <source>full wedge: thickness at the end wall</source>
   <translation>voller Keil: Dicke an der Stirnwand</translation>
  </message>
  <message>
   <source>full wedge: thickness at the mouth</source>
   <translation>voller Keil: Dicke an der Mündung</translation>
  </message>
  <message>
   <source>gap</source>
   <translation>Spalt</translation>
  </message>
  <message>
   <source>gap seen at the end wall</source>
   <translation>sichtbarer Spalt an der Stirnwand</translation>
  </message>
  <message>
   <source>general tolerance (ISO 2768-1) of dimensions that state no limits of their own</source>
   <translation>Allgemeintoleranz (ISO 2768-1) der Maße ohne eigene Grenzen</translation>
  </message>
  <message>
   <source>gives no limit deviations</source>
   <translation>gibt keine Grenzabweichungen</translation>
  </message>
  <message>
   <source>glued</source>
   <translation>aufgeleimt</translation>
  </message>
  <message>
   <source>greys, for print</source>
   <translation>Grautöne, für den Druck</translation>
  </message>
  <message>
   <source>grip</source>
   <translation>Halt</translation>
  </message>
  <message>
   <source>h_o: heel bottom to the overhang's underside</source>
   <translation>h_o: Unterseite des Halsfußes bis Unterseite des Überstands</translation>
  </message>
  <message>
   <source>has a decimal comma</source>
   <translation>hat ein Dezimalkomma</translation>
  </message>
  <message>
   <source>has a deviation without its sign</source>
   <translation>hat eine Abweichung ohne Vorzeichen</translation>
  </message>
  <message>
   <source>has a fraction in brackets that differs from the number before it</source>
   <translation>hat einen Bruch in Klammern, der von der Zahl davor abweicht</translation>
  </message>
  <message>
   <source>has a hyphen that may be a sign or not</source>
   <translation>hat einen Bindestrich, der ein Vorzeichen sein kann oder nicht</translation>
  </message>
  <message>
   <source>has a line break or control character</source>
   <translation>hat einen Zeilenumbruch oder ein Steuerzeichen</translation>
  </message>
  <message>
   <source>has a second sign after ±</source>
   <translation>hat ein zweites Vorzeichen nach ±</translation>
  </message>
  <message>
   <source>has a whole number before a fraction that is not below 1</source>
   <translation>hat eine ganze Zahl vor einem Bruch, der nicht unter 1 liegt</translation>
  </message>
  <message>
   <source>has an exponent beyond any use</source>
   <translation>hat einen Exponenten jenseits allen Nutzens</translation>
  </message>
  <message>
   <source>has both a part of a minute and seconds</source>
   <translation>hat sowohl einen Bruchteil einer Minute als auch Sekunden</translation>
  </message>
  <message>
   <source>has digits other than the plain 0 to 9</source>
   <translation>hat andere Ziffern als 0 bis 9</translation>
  </message>
  <message>
   <source>has marks that turn the reading direction</source>
   <translation>hat Zeichen, die die Leserichtung umkehren</translation>
  </message>
  <message>
   <source>has minutes or seconds of 60 and more</source>
   <translation>hat 60 oder mehr Minuten oder Sekunden</translation>
  </message>
  <message>
   <source>has more than two deviations</source>
   <translation>hat mehr als zwei Abweichungen</translation>
  </message>
  <message>
   <source>has something in brackets that is no fraction of an inch</source>
   <translation>hat etwas in Klammern, das kein Bruch eines Zolls ist</translation>
  </message>
  <message>
   <source>has the unknown unit {}{}</source>
   <translation>hat die unbekannte Einheit {}{}</translation>
  </message>
  <message>
   <source>has {} after the number, but counts things</source>
   <translation>hat {} nach der Zahl, zählt aber Stücke</translation>
  </message>
  <message>
   <source>has {} after the number, but takes no unit</source>
   <translation>hat {} nach der Zahl, nimmt aber keine Einheit</translation>
  </message>
  <message>
   <source>has {} characters</source>
   <translation>hat {} Zeichen</translation>
  </message>
  <message>
   <source>has {} characters, more than any number needs</source>
   <translation>hat {} Zeichen, mehr als eine Zahl braucht</translation>
  </message>
  <message>
   <source>heads bear on a neck plate, in ferrules, or on the bare wood</source>
   <translation>Köpfe liegen auf einer Halsplatte, in Hülsen oder auf dem bloßen Holz</translation>
  </message>
  <message>
   <source>headstock</source>
   <translation>Kopfplatte</translation>
  </message>
  <message>
   <source>heel</source>
   <translation>Halsfuß</translation>
  </message>
  <message>
   <source>heel bearing on the floor</source>
   <translation>Auflage des Halsfußes auf dem Boden</translation>
  </message>
  <message>
   <source>heel bottom</source>
   <translation>Unterseite des Halsfußes</translation>
  </message>
  <message>
   <source>heel bottom to the glue line under the fretboard</source>
   <translation>Unterseite des Halsfußes bis zur Leimfuge unter dem Griffbrett</translation>
  </message>
  <message>
   <source>heel bottom to the truss-rod channel's bottom</source>
   <translation>Unterseite des Halsfußes bis zum Grund des Halsstabkanals</translation>
  </message>
  <message>
   <source>heel contour: mouth to where the slope has run out to nothing</source>
   <translation>Halsübergang: Mündung bis dorthin, wo die Schräge ausläuft</translation>
  </message>
  <message>
   <source>heel contour: wood taken off the back at the pocket's mouth</source>
   <translation>Halsübergang: an der Mündung der Tasche von der Rückseite abgenommenes Holz</translation>
  </message>
  <message>
   <source>heel corners in the pocket's corners</source>
   <translation>Ecken des Halsfußes in den Ecken der Tasche</translation>
  </message>
  <message>
   <source>heel end</source>
   <translation>Ende des Halsfußes</translation>
  </message>
  <message>
   <source>heel end to the end of the truss-rod channel</source>
   <translation>Ende des Halsfußes bis zum Ende des Halsstabkanals</translation>
  </message>
  <message>
   <source>heel end to the fretboard's end</source>
   <translation>Ende des Halsfußes bis zum Griffbrettende</translation>
  </message>
  <message>
   <source>heel held off by the floor's fillet</source>
   <translation>Halsfuß durch die Kehle des Bodens abgehalten</translation>
  </message>
  <message>
   <source>heel sides</source>
   <translation>Seiten des Halsfußes</translation>
  </message>
  <message>
   <source>heel width at the heel end (before its corners are rounded)</source>
   <translation>Breite des Halsfußes an seinem Ende (vor dem Runden der Ecken)</translation>
  </message>
  <message>
   <source>heel width one pocket length before the heel end</source>
   <translation>Breite des Halsfußes eine Taschenlänge vor seinem Ende</translation>
  </message>
  <message>
   <source>heel-adjusted rod: diameter the adjusting tool needs</source>
   <translation>am Halsfuß eingestellter Stab: Durchmesser, den das Werkzeug braucht</translation>
  </message>
  <message>
   <source>heel-adjusted rod: heel bottom to the tool's axis</source>
   <translation>am Halsfuß eingestellter Stab: Unterseite des Halsfußes bis zur Achse des Werkzeugs</translation>
  </message>
  <message>
   <source>heel-adjusted rod: straight path the tool needs behind the heel end</source>
   <translation>am Halsfuß eingestellter Stab: gerader Weg, den das Werkzeug hinter dem Ende des Halsfußes braucht</translation>
  </message>
  <message>
   <source>height of its ring above the mount</source>
   <translation>Höhe seines Rahmens über der Montagefläche</translation>
  </message>
  <message>
   <source>height of its springs fully compressed</source>
   <translation>Höhe seiner Federn, ganz zusammengedrückt</translation>
  </message>
  <message>
   <source>height of the fret crowns</source>
   <translation>Höhe der Bundkronen</translation>
  </message>
  <message>
   <source>height of the pickup, poles included, over its springs' seat</source>
   <translation>Höhe des Tonabnehmers mit Polstücken über dem Sitz der Federn</translation>
  </message>
  <message>
   <source>how dimensions spread between their limits, unless one states it</source>
   <translation>wie Maße zwischen ihren Grenzen streuen, wenn keines es selbst angibt</translation>
  </message>
  <message>
   <source>how far a hole may lie from where it should</source>
   <translation>wie weit ein Loch von seinem Sollort liegen darf</translation>
  </message>
  <message>
   <source>how far the binding hangs below the overhang's underside</source>
   <translation>wie weit die Einfassung unter die Unterseite des Überstands hängt</translation>
  </message>
  <message>
   <source>how far the heel's bottom is flat</source>
   <translation>wie weit die Unterseite des Halsfußes eben ist</translation>
  </message>
  <message>
   <source>how far the last fret lies below the straight line past fret 12</source>
   <translation>wie weit der letzte Bund unter der Geraden jenseits von Bund 12 liegt</translation>
  </message>
  <message>
   <source>how far the plate reaches beyond its cut-out</source>
   <translation>wie weit das Schlagbrett über seinen Ausschnitt hinausreicht</translation>
  </message>
  <message>
   <source>how many steps exchanging a whole part counts, when changes are ranked</source>
   <translation>wie viele Schritte der Tausch eines ganzen Teils zählt, wenn Änderungen gereiht werden</translation>
  </message>
  <message>
   <source>inch</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>insert</source>
   <translation>Gewindeeinsatz</translation>
  </message>
  <message>
   <source>inside calipers at the body's edge</source>
   <translation>Innenmessschieber am Rand des Korpus</translation>
  </message>
  <message>
   <source>inside calipers close to the end wall, above the corner radii</source>
   <translation>Innenmessschieber nahe der Stirnwand, über den Eckenradien</translation>
  </message>
  <message>
   <source>interference of neck and body</source>
   <translation>Überschneidung von Hals und Korpus</translation>
  </message>
  <message>
   <source>interference of neck and bridge pickup</source>
   <translation>Überschneidung von Hals und Brücken-Tonabnehmer</translation>
  </message>
  <message>
   <source>interference of neck and cover plate</source>
   <translation>Überschneidung von Hals und Schlagbrett</translation>
  </message>
  <message>
   <source>interference of neck and middle pickup</source>
   <translation>Überschneidung von Hals und mittlerem Tonabnehmer</translation>
  </message>
  <message>
   <source>interference of neck and neck pickup</source>
   <translation>Überschneidung von Hals und Hals-Tonabnehmer</translation>
  </message>
  <message>
   <source>interferes</source>
   <translation>stößt an</translation>
  </message>
  <message>
   <source>interferes, up to {}</source>
   <translation>stößt an, bis zu {}</translation>
  </message>
  <message>
   <source>interfering</source>
   <translation>stoßen an</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation>ist leer</translation>
  </message>
  <message>
   <source>is in {}, a unit of {}</source>
   <translation>steht in {}, einer Einheit von {}</translation>
  </message>
  <message>
   <source>is negative, where one number stands for both sides</source>
   <translation>ist negativ, wo eine Zahl für beide Seiten steht</translation>
  </message>
  <message>
   <source>is neither true nor false</source>
   <translation>ist weder wahr noch falsch</translation>
  </message>
  <message>
   <source>is no pair of lengths</source>
   <translation>ist kein Längenpaar</translation>
  </message>
  <message>
   <source>is no {}</source>
   <translation>ist falsch; verlangt: {}</translation>
  </message>
  <message>
   <source>is not a finite number</source>
   <translation>ist keine endliche Zahl</translation>
  </message>
  <message>
   <source>is not one number and one unit</source>
   <translation>ist nicht eine Zahl mit einer Einheit</translation>
  </message>
  <message>
   <source>is not whole</source>
   <translation>ist nicht ganzzahlig</translation>
  </message>
  <message>
   <source>is only one of two deviations</source>
   <translation>ist nur eine von zwei Abweichungen</translation>
  </message>
  <message>
   <source>is too large a number</source>
   <translation>ist als Zahl zu groß</translation>
  </message>
  <message>
   <source>is too large to count anything</source>
   <translation>ist zu groß, um etwas zu zählen</translation>
  </message>
  <message>
   <source>is too small a number to be told from zero</source>
   <translation>ist als Zahl zu klein, um sich von null zu unterscheiden</translation>
  </message>
  <message>
   <source>its faces do not close: the shell is open along {} edges</source>
   <translation>seine Flächen schließen nicht: die Hülle ist an {} Kanten offen</translation>
  </message>
  <message>
   <source>its length reads {}: {}, so it was brought to {}</source>
   <translation>seine Länge ergibt {}: {}, sie wurde daher auf {} gebracht</translation>
  </message>
  <message>
   <source>its numbers are 1000 times too large</source>
   <translation>seine Zahlen sind 1000-mal zu groß</translation>
  </message>
  <message>
   <source>its numbers are 25.4 times too large</source>
   <translation>seine Zahlen sind 25.4-mal zu groß</translation>
  </message>
  <message>
   <source>its numbers are centimetres read as millimetres</source>
   <translation>seine Zahlen sind Zentimeter, als Millimeter gelesen</translation>
  </message>
  <message>
   <source>its numbers are inches read as millimetres (25.4)</source>
   <translation>seine Zahlen sind Zoll, als Millimeter gelesen (25.4)</translation>
  </message>
  <message>
   <source>its numbers are metres read as millimetres (1000)</source>
   <translation>seine Zahlen sind Meter, als Millimeter gelesen (1000)</translation>
  </message>
  <message>
   <source>its place in the file mirrors it: the mirror was written into the solid</source>
   <translation>seine Platzierung in der Datei spiegelt ihn: die Spiegelung wurde in den Volumenkörper geschrieben</translation>
  </message>
  <message>
   <source>job name</source>
   <translation>Name der Verbindung</translation>
  </message>
  <message>
   <source>job note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>job units</source>
   <translation>Einheiten</translation>
  </message>
  <message>
   <source>judging the joint {}</source>
   <translation>die Verbindung {} wird beurteilt</translation>
  </message>
  <message>
   <source>largest end clearance</source>
   <translation>größtes Stirnspiel</translation>
  </message>
  <message>
   <source>largest gap seen at the top of the end wall</source>
   <translation>größter sichtbarer Spalt oben an der Stirnwand</translation>
  </message>
  <message>
   <source>largest gap under the overhang</source>
   <translation>größter Spalt unter dem Überstand</translation>
  </message>
  <message>
   <source>largest side clearance, per side</source>
   <translation>größtes Seitenspiel, je Seite</translation>
  </message>
  <message>
   <source>last fret to fretboard end, where the overhang is worked out from it</source>
   <translation>letzter Bund bis Griffbrettende, woraus der Überstand berechnet wird</translation>
  </message>
  <message>
   <source>least</source>
   <translation>mindestens</translation>
  </message>
  <message>
   <source>least clearance between cover plate and heel</source>
   <translation>kleinstes Spiel zwischen Schlagbrett und Halsfuß</translation>
  </message>
  <message>
   <source>least distance from fretboard end to pickup or ring</source>
   <translation>kleinster Abstand vom Griffbrettende zum Tonabnehmer oder Rahmen</translation>
  </message>
  <message>
   <source>least end clearance</source>
   <translation>kleinstes Stirnspiel</translation>
  </message>
  <message>
   <source>least gap under the overhang</source>
   <translation>kleinster Spalt unter dem Überstand</translation>
  </message>
  <message>
   <source>least side clearance, per side</source>
   <translation>kleinstes Seitenspiel, je Seite</translation>
  </message>
  <message>
   <source>least wood between pocket and a cavity</source>
   <translation>kleinstes Holz zwischen Tasche und Hohlraum</translation>
  </message>
  <message>
   <source>least wood between pocket and cutaway</source>
   <translation>kleinstes Holz zwischen Tasche und Cutaway</translation>
  </message>
  <message>
   <source>least wood under the pocket</source>
   <translation>kleinstes Holz unter der Tasche</translation>
  </message>
  <message>
   <source>leave it out</source>
   <translation>weglassen</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>length of the bridge's base along X</source>
   <translation>Länge der Grundplatte der Brücke längs X</translation>
  </message>
  <message>
   <source>length of the heel that is flat underneath</source>
   <translation>Länge des Halsfußes, die unten eben ist</translation>
  </message>
  <message>
   <source>length of the neck plate</source>
   <translation>Länge der Halsplatte</translation>
  </message>
  <message>
   <source>length of the threaded insert, flush with the heel's bottom</source>
   <translation>Länge des Gewindeeinsatzes, bündig mit der Unterseite des Halsfußes</translation>
  </message>
  <message>
   <source>length of the threaded part, from the tip</source>
   <translation>Länge des Gewindes, ab Spitze</translation>
  </message>
  <message>
   <source>length under the head</source>
   <translation>Länge unter dem Kopf</translation>
  </message>
  <message>
   <source>likely</source>
   <translation>wahrscheinlich</translation>
  </message>
  <message>
   <source>limits base gap min</source>
   <translation>Grenze: Luft unter der Grundplatte, mindestens</translation>
  </message>
  <message>
   <source>limits break min</source>
   <translation>Grenze: Knickwinkel, mindestens</translation>
  </message>
  <message>
   <source>limits contact min</source>
   <translation>Grenze: Auflage des Halsfußes, mindestens</translation>
  </message>
  <message>
   <source>limits edge distance min</source>
   <translation>Grenze: Randabstand der Schrauben, mindestens</translation>
  </message>
  <message>
   <source>limits edge min</source>
   <translation>Grenze: äußere Saite zur Griffbrettkante, mindestens</translation>
  </message>
  <message>
   <source>limits end max</source>
   <translation>Grenze: Stirnspiel, höchstens</translation>
  </message>
  <message>
   <source>limits end min</source>
   <translation>Grenze: Stirnspiel, mindestens</translation>
  </message>
  <message>
   <source>limits end visible max</source>
   <translation>Grenze: sichtbarer Stirnspalt, höchstens</translation>
  </message>
  <message>
   <source>limits floor wood min</source>
   <translation>Grenze: Holz unter der Tasche, mindestens</translation>
  </message>
  <message>
   <source>limits fret slot depth</source>
   <translation>Grenze: Tiefe der Bundschlitze</translation>
  </message>
  <message>
   <source>limits fretted buzz min</source>
   <translation>Grenze: gegriffene Saite über den Bünden, mindestens</translation>
  </message>
  <message>
   <source>limits gap max</source>
   <translation>Grenze: Spalt unter dem Überstand, höchstens</translation>
  </message>
  <message>
   <source>limits gap min</source>
   <translation>Grenze: Spalt unter dem Überstand, mindestens</translation>
  </message>
  <message>
   <source>limits grip min</source>
   <translation>Grenze: Halt der Schrauben, mindestens</translation>
  </message>
  <message>
   <source>limits hole clearance min</source>
   <translation>Grenze: Korpusloch über Schaft, mindestens</translation>
  </message>
  <message>
   <source>limits insert min</source>
   <translation>Grenze: Eingriff in Gewindeeinsätze, mindestens</translation>
  </message>
  <message>
   <source>limits of {}</source>
   <translation>Grenzen von {}</translation>
  </message>
  <message>
   <source>limits open buzz min</source>
   <translation>Grenze: leere Saite über den Bünden, mindestens</translation>
  </message>
  <message>
   <source>limits pickup gap min</source>
   <translation>Grenze: Griffbrettende zum Tonabnehmer, mindestens</translation>
  </message>
  <message>
   <source>limits pilot extra</source>
   <translation>Grenze: Vorbohrung tiefer als die Schraube</translation>
  </message>
  <message>
   <source>limits plate heel min</source>
   <translation>Grenze: Schlagbrett zum Halsfuß, mindestens</translation>
  </message>
  <message>
   <source>limits plate string min</source>
   <translation>Grenze: Saite über dem Schlagbrett, mindestens</translation>
  </message>
  <message>
   <source>limits pole bass max</source>
   <translation>Grenze: Saite über den Polstücken, Bass, höchstens</translation>
  </message>
  <message>
   <source>limits pole bass min</source>
   <translation>Grenze: Saite über den Polstücken, Bass, mindestens</translation>
  </message>
  <message>
   <source>limits pole treble max</source>
   <translation>Grenze: Saite über den Polstücken, Diskant, höchstens</translation>
  </message>
  <message>
   <source>limits pole treble min</source>
   <translation>Grenze: Saite über den Polstücken, Diskant, mindestens</translation>
  </message>
  <message>
   <source>limits pull safety</source>
   <translation>Grenze: Sicherheit gegen Ausziehen</translation>
  </message>
  <message>
   <source>limits radius error max</source>
   <translation>Grenze: Fehler bei festem Radius, höchstens</translation>
  </message>
  <message>
   <source>limits rod distance min</source>
   <translation>Grenze: Schraube zum Halsstab, mindestens</translation>
  </message>
  <message>
   <source>limits side max</source>
   <translation>Grenze: Seitenspiel, höchstens</translation>
  </message>
  <message>
   <source>limits side min</source>
   <translation>Grenze: Seitenspiel, mindestens</translation>
  </message>
  <message>
   <source>limits tip min</source>
   <translation>Grenze: Schraubenspitze unter der Leimfuge, mindestens</translation>
  </message>
  <message>
   <source>limits tip wish</source>
   <translation>Wunsch: Schraubenspitze unter der Leimfuge</translation>
  </message>
  <message>
   <source>limits top string min</source>
   <translation>Wunsch: Saiten über der Decke, mindestens</translation>
  </message>
  <message>
   <source>limits wall min</source>
   <translation>Grenze: Holz zum Cutaway, mindestens</translation>
  </message>
  <message>
   <source>limits web min</source>
   <translation>Grenze: Holz zum Hohlraum, mindestens</translation>
  </message>
  <message>
   <source>limits' middle, or allow more</source>
   <translation>Grenzen bringen, oder mehr zulassen</translation>
  </message>
  <message>
   <source>list of points</source>
   <translation>Liste von Punkten</translation>
  </message>
  <message>
   <source>longest safe screw in stock</source>
   <translation>längste sichere Schraube im Lager</translation>
  </message>
  <message>
   <source>looked at what excludes what</source>
   <translation>gesucht wurde, was einander ausschließt</translation>
  </message>
  <message>
   <source>looked for what mends it</source>
   <translation>nach Abhilfe gesucht</translation>
  </message>
  <message>
   <source>looking at {}</source>
   <translation>betrachtet wird {}</translation>
  </message>
  <message>
   <source>looking for flaws</source>
   <translation>Mängel werden gesucht</translation>
  </message>
  <message>
   <source>m</source>
   <translation>m</translation>
  </message>
  <message>
   <source>machine screw to the bottom of its hole</source>
   <translation>Maschinenschraube bis zum Grund ihres Lochs</translation>
  </message>
  <message>
   <source>machine screws in inserts: see their engagement</source>
   <translation>Maschinenschrauben in Gewindeeinsätzen: siehe deren Eingriff</translation>
  </message>
  <message>
   <source>machining document</source>
   <translation>Dokument für die Fräsmaschine</translation>
  </message>
  <message>
   <source>mass per length</source>
   <translation>Masse je Länge</translation>
  </message>
  <message>
   <source>mass per length of each string, treble first</source>
   <translation>Masse je Länge jeder Saite, Diskant zuerst</translation>
  </message>
  <message>
   <source>measured</source>
   <translation>gemessen</translation>
  </message>
  <message>
   <source>measuring the solids</source>
   <translation>die Volumenkörper werden gemessen</translation>
  </message>
  <message>
   <source>middle</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <source>middle pickup</source>
   <translation>mittlerer Tonabnehmer</translation>
  </message>
  <message>
   <source>middle pickup cannot go low enough</source>
   <translation>mittlerer Tonabnehmer geht nicht tief genug</translation>
  </message>
  <message>
   <source>middle pickup cannot rise high enough</source>
   <translation>mittlerer Tonabnehmer geht nicht hoch genug</translation>
  </message>
  <message>
   <source>middle pickup goes low enough</source>
   <translation>mittlerer Tonabnehmer geht tief genug</translation>
  </message>
  <message>
   <source>middle pickup rises high enough</source>
   <translation>mittlerer Tonabnehmer geht hoch genug</translation>
  </message>
  <message>
   <source>middle: room left to the limit with every dimension in the middle of its limits;</source>
   <translation>Mitte:  Luft zur Grenze, wenn jedes Maß in der Mitte seiner Grenzen liegt;</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <source>mm</source>
   <translation>mm</translation>
  </message>
  <message>
   <source>model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>moisture</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>moisture content</source>
   <translation>Holzfeuchte</translation>
  </message>
  <message>
   <source>moisture of both woods when pocket and heel were measured</source>
   <translation>Holzfeuchte beider Hölzer, als Tasche und Halsfuß gemessen wurden</translation>
  </message>
  <message>
   <source>moisture of the wood</source>
   <translation>Holzfeuchte</translation>
  </message>
  <message>
   <source>month</source>
   <translation>Monat</translation>
  </message>
  <message>
   <source>most</source>
   <translation>höchstens</translation>
  </message>
  <message>
   <source>neck</source>
   <translation>Hals</translation>
  </message>
  <message>
   <source>neck binding</source>
   <translation>Einfassung, Überhang</translation>
  </message>
  <message>
   <source>neck binding width</source>
   <translation>Einfassung, Breite</translation>
  </message>
  <message>
   <source>neck end margin</source>
   <translation>letzter Bund bis Ende</translation>
  </message>
  <message>
   <source>neck fall away</source>
   <translation>Abfall der oberen Bünde</translation>
  </message>
  <message>
   <source>neck fret height</source>
   <translation>Bundkronenhöhe</translation>
  </message>
  <message>
   <source>neck fret width</source>
   <translation>Bundkronenbreite</translation>
  </message>
  <message>
   <source>neck frets</source>
   <translation>Bundzahl</translation>
  </message>
  <message>
   <source>neck glue line</source>
   <translation>Leimfugenhöhe</translation>
  </message>
  <message>
   <source>neck heel corner radius</source>
   <translation>Halsfuß-Eckenradius</translation>
  </message>
  <message>
   <source>neck heel edge</source>
   <translation>Halsfußfase</translation>
  </message>
  <message>
   <source>neck heel end</source>
   <translation>Halsfußende, Form</translation>
  </message>
  <message>
   <source>neck heel length</source>
   <translation>Halsfußlänge, eben</translation>
  </message>
  <message>
   <source>neck heel radius</source>
   <translation>Halsfußende, Radius</translation>
  </message>
  <message>
   <source>neck heel width end</source>
   <translation>Halsfußbreite, Ende</translation>
  </message>
  <message>
   <source>neck heel width mouth</source>
   <translation>Halsfußbreite, Mündung</translation>
  </message>
  <message>
   <source>neck height</source>
   <translation>Halshöhe am Halsfuß</translation>
  </message>
  <message>
   <source>neck make</source>
   <translation>Halsbauart</translation>
  </message>
  <message>
   <source>neck nut to heel</source>
   <translation>Sattel bis Halsfußende</translation>
  </message>
  <message>
   <source>neck overhang</source>
   <translation>Griffbrettüberstand</translation>
  </message>
  <message>
   <source>neck pickup</source>
   <translation>Hals-Tonabnehmer</translation>
  </message>
  <message>
   <source>neck pickup cannot go low enough</source>
   <translation>Hals-Tonabnehmer geht nicht tief genug</translation>
  </message>
  <message>
   <source>neck pickup cannot rise high enough</source>
   <translation>Hals-Tonabnehmer geht nicht hoch genug</translation>
  </message>
  <message>
   <source>neck pickup goes low enough</source>
   <translation>Hals-Tonabnehmer geht tief genug</translation>
  </message>
  <message>
   <source>neck pickup rises high enough</source>
   <translation>Hals-Tonabnehmer geht hoch genug</translation>
  </message>
  <message>
   <source>neck plate ferrule depth</source>
   <translation>Hülsensitz, Tiefe</translation>
  </message>
  <message>
   <source>neck plate ferrule diameter</source>
   <translation>Hülsendurchmesser</translation>
  </message>
  <message>
   <source>neck plate length</source>
   <translation>Halsplattenlänge</translation>
  </message>
  <message>
   <source>neck plate make</source>
   <translation>Auflage der Schraubenköpfe</translation>
  </message>
  <message>
   <source>neck plate thickness</source>
   <translation>Halsplattendicke</translation>
  </message>
  <message>
   <source>neck plate width</source>
   <translation>Halsplattenbreite</translation>
  </message>
  <message>
   <source>neck radius end</source>
   <translation>Griffbrettradius, Ende</translation>
  </message>
  <message>
   <source>neck radius nut</source>
   <translation>Griffbrettradius, Sattel</translation>
  </message>
  <message>
   <source>neck relief</source>
   <translation>Halskrümmung</translation>
  </message>
  <message>
   <source>neck rocking on its overhang</source>
   <translation>Hals kippelt auf seinem Überstand</translation>
  </message>
  <message>
   <source>neck rod</source>
   <translation>Halsstabeinstellung</translation>
  </message>
  <message>
   <source>neck rod depth</source>
   <translation>Halsstabkanal, Grund</translation>
  </message>
  <message>
   <source>neck rod end</source>
   <translation>Halsstabkanal, Ende</translation>
  </message>
  <message>
   <source>neck rod tool</source>
   <translation>Stabwerkzeug, Durchmesser</translation>
  </message>
  <message>
   <source>neck rod tool height</source>
   <translation>Stabwerkzeug, Höhe</translation>
  </message>
  <message>
   <source>neck rod tool length</source>
   <translation>Stabwerkzeug, Weg</translation>
  </message>
  <message>
   <source>neck rod width</source>
   <translation>Halsstabkanal, Breite</translation>
  </message>
  <message>
   <source>neck scale</source>
   <translation>Mensur</translation>
  </message>
  <message>
   <source>neck scale bass</source>
   <translation>Mensur, Bassseite</translation>
  </message>
  <message>
   <source>neck shaft thickness</source>
   <translation>Halsdicke</translation>
  </message>
  <message>
   <source>neck square fret</source>
   <translation>gerader Bund</translation>
  </message>
  <message>
   <source>neck underside</source>
   <translation>Überstand, Unterseite</translation>
  </message>
  <message>
   <source>neck width end</source>
   <translation>Griffbrettbreite, Ende</translation>
  </message>
  <message>
   <source>neck width nut</source>
   <translation>Griffbrettbreite, Sattel</translation>
  </message>
  <message>
   <source>neck.rod_depth: {} mm lies above the glue line at {} mm, so there is no channel; make it smaller.</source>
   <translation>neck.rod_depth: {} mm liegen über der Leimfuge bei {} mm, es gibt also keinen Kanal; den Wert kleiner machen.</translation>
  </message>
  <message>
   <source>neck: angle of the rings to the heel's width (0 quartersawn, 90 flatsawn)</source>
   <translation>Hals: Winkel der Jahresringe zur Breite des Halsfußes (0 stehende, 90 liegende Jahresringe)</translation>
  </message>
  <message>
   <source>neither frets nor nut are modelled: frets and scale are the job's, and the fretboard's start is taken for the nut's front face</source>
   <translation>weder Bünde noch Sattel sind modelliert: Bünde und Mensur gelten nach dem Auftrag, und der Anfang des Griffbretts gilt als Vorderkante des Sattels</translation>
  </message>
  <message>
   <source>neither heel nor fretboard reaches down to the plate</source>
   <translation>weder Halsfuß noch Griffbrett reichen bis zum Schlagbrett hinunter</translation>
  </message>
  <message>
   <source>neither plate nor ring lies under the strings</source>
   <translation>weder Schlagbrett noch Rahmen liegen unter den Saiten</translation>
  </message>
  <message>
   <source>neither the cover plate nor a ring lies under the strings</source>
   <translation>weder das Schlagbrett noch ein Rahmen liegt unter den Saiten</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no cover plate is fitted</source>
   <translation>kein Schlagbrett ist montiert</translation>
  </message>
  <message>
   <source>no cover plate lies under the overhang</source>
   <translation>kein Schlagbrett liegt unter dem Überstand</translation>
  </message>
  <message>
   <source>no crown stands on the centreline; state neck.fret_height.</source>
   <translation>Auf der Mittellinie steht keine Bundkrone; neck.fret_height angeben.</translation>
  </message>
  <message>
   <source>no cutaway runs beside the pocket</source>
   <translation>neben der Tasche liegt kein Cutaway</translation>
  </message>
  <message>
   <source>no demand fails within these limits</source>
   <translation>keine Forderung versagt innerhalb dieser Grenzen</translation>
  </message>
  <message>
   <source>no end wall is left on the centreline: a cavity takes it away</source>
   <translation>auf der Mittellinie ist keine Stirnwand übrig: ein Hohlraum nimmt sie weg</translation>
  </message>
  <message>
   <source>no frets are modelled, and the fretboard is {} mm longer than the job's frets, scale and end margin make it: does it begin at the nut?</source>
   <translation>es sind keine Bünde modelliert, und das Griffbrett ist {} mm länger, als Bünde, Mensur und Abstand vom letzten Bund bis Ende nach dem Auftrag es machen: beginnt es am Sattel?</translation>
  </message>
  <message>
   <source>no frets are modelled, and the fretboard is {} mm shorter than the job's frets, scale and end margin make it: does it begin at the nut?</source>
   <translation>es sind keine Bünde modelliert, und das Griffbrett ist {} mm kürzer, als Bünde, Mensur und Abstand vom letzten Bund bis Ende nach dem Auftrag es machen: beginnt es am Sattel?</translation>
  </message>
  <message>
   <source>no height of the surface was found at X {}, Y {} mm</source>
   <translation>keine Höhe der Oberfläche gefunden bei X {}, Y {} mm</translation>
  </message>
  <message>
   <source>no level face of the body lies under the heel's bottom</source>
   <translation>unter dem Halsfuß liegt keine ebene Fläche des Korpus</translation>
  </message>
  <message>
   <source>no limits alone reach it; one after the other:</source>
   <translation>keine Grenzen erreichen es allein; eine nach der anderen:</translation>
  </message>
  <message>
   <source>no neck pickup is fitted</source>
   <translation>kein Hals-Tonabnehmer ist eingebaut</translation>
  </message>
  <message>
   <source>no neck screws are stated</source>
   <translation>keine Halsschrauben sind angegeben</translation>
  </message>
  <message>
   <source>no pickup is fitted in the {} position</source>
   <translation>kein Tonabnehmer ist eingebaut, Stellung: {}</translation>
  </message>
  <message>
   <source>no plate</source>
   <translation>kein Schlagbrett</translation>
  </message>
  <message>
   <source>no pocket angle within 30° brings the strings to the end of the travel</source>
   <translation>kein Taschenwinkel innerhalb von 30° bringt die Saiten ans Ende des Stellwegs</translation>
  </message>
  <message>
   <source>no published figure for threaded inserts</source>
   <translation>kein veröffentlichter Wert für Gewindeeinsätze</translation>
  </message>
  <message>
   <source>no shim, a full wedge, or a strip at the end wall or at the mouth</source>
   <translation>keine Beilage, ein voller Keil, oder ein Streifen an Stirnwand oder Mündung</translation>
  </message>
  <message>
   <source>no specific gravity is known for {}</source>
   <translation>keine Rohdichte bekannt für {}</translation>
  </message>
  <message>
   <source>no straight side of the heel lies beside one of the pocket</source>
   <translation>keine gerade Seite des Halsfußes liegt neben einer der Tasche</translation>
  </message>
  <message>
   <source>no strips are left beside the fretboard</source>
   <translation>neben dem Griffbrett bleiben keine Streifen</translation>
  </message>
  <message>
   <source>no truss rod is adjusted at the heel</source>
   <translation>am Halsfuß wird kein Halsstab eingestellt</translation>
  </message>
  <message>
   <source>no truss-rod channel is modelled: the job's stands</source>
   <translation>kein Halsstabkanal ist modelliert: der des Auftrags gilt</translation>
  </message>
  <message>
   <source>nominal</source>
   <translation>Sollwert</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none that the shop prefers</source>
   <translation>keine, die die Werkstatt bevorzugt</translation>
  </message>
  <message>
   <source>none: no round bit cuts sharp corners</source>
   <translation>keiner: scharfe Ecken schneidet kein runder Fräser</translation>
  </message>
  <message>
   <source>none: the bit has a bearing</source>
   <translation>keine: der Fräser hat ein Anlauflager</translation>
  </message>
  <message>
   <source>normal</source>
   <translation>normalverteilt</translation>
  </message>
  <message>
   <source>not applicable</source>
   <translation>entfällt</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>nicht geprüft</translation>
  </message>
  <message>
   <source>not decided</source>
   <translation>nicht entschieden</translation>
  </message>
  <message>
   <source>not in the file</source>
   <translation>nicht in der Datei</translation>
  </message>
  <message>
   <source>not told by calculation</source>
   <translation>durch Rechnung nicht zu sagen</translation>
  </message>
  <message>
   <source>nothing lies under the overhang</source>
   <translation>nichts liegt unter dem Überstand</translation>
  </message>
  <message>
   <source>nothing lies under the tool's path</source>
   <translation>unter dem Weg des Werkzeugs liegt nichts</translation>
  </message>
  <message>
   <source>nothing was checked</source>
   <translation>nichts wurde geprüft</translation>
  </message>
  <message>
   <source>nothing: there are no failures to explain</source>
   <translation>nichts: es gibt keine Fehlschläge zu erklären</translation>
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>number of frets</source>
   <translation>Zahl der Bünde</translation>
  </message>
  <message>
   <source>number of strings</source>
   <translation>Zahl der Saiten</translation>
  </message>
  <message>
   <source>number of the fret that stands square to the centreline, where the scales differ</source>
   <translation>Nummer des Bundes, der rechtwinklig zur Mittellinie steht, wo die Mensuren verschieden sind</translation>
  </message>
  <message>
   <source>number without a unit</source>
   <translation>Zahl ohne Einheit</translation>
  </message>
  <message>
   <source>nut's front face to fret 12, doubled</source>
   <translation>Vorderkante des Sattels bis Bund 12, verdoppelt</translation>
  </message>
  <message>
   <source>of {} entries is no pair of deviations</source>
   <translation>mit {} Einträgen ist kein Paar von Abweichungen</translation>
  </message>
  <message>
   <source>of {} points encloses nothing</source>
   <translation>mit {} Punkten umschließt nichts</translation>
  </message>
  <message>
   <source>old pilot x</source>
   <translation>alte Vorbohrung x</translation>
  </message>
  <message>
   <source>old pilot y</source>
   <translation>alte Vorbohrung y</translation>
  </message>
  <message>
   <source>on which the tool disagrees</source>
   <translation>mit Widerspruch</translation>
  </message>
  <message>
   <source>one of these alone:</source>
   <translation>eine davon allein:</translation>
  </message>
  <message>
   <source>one piece</source>
   <translation>einteilig</translation>
  </message>
  <message>
   <source>one piece: depth of the fret slots under the fretboard top</source>
   <translation>einteilig: Tiefe der Bundschlitze unter der Griffbrettoberseite</translation>
  </message>
  <message>
   <source>only solids can tell the wall of an outline that is given</source>
   <translation>nur Volumenkörper kennen die Wand eines gegebenen Umrisses</translation>
  </message>
  <message>
   <source>only {} frets or slots were told apart; state neck.frets and neck.scale.</source>
   <translation>nur {} Bünde oder Schlitze waren zu unterscheiden; neck.frets und neck.scale angeben.</translation>
  </message>
  <message>
   <source>open string over every fret, least</source>
   <translation>leere Saite über jedem Bund, mindestens</translation>
  </message>
  <message>
   <source>open string over fret 1, bass outer string</source>
   <translation>leere Saite über Bund 1, Basssaite außen</translation>
  </message>
  <message>
   <source>open string over fret 1, treble outer string</source>
   <translation>leere Saite über Bund 1, Diskantsaite außen</translation>
  </message>
  <message>
   <source>open string over fret 12, bass outer string</source>
   <translation>leere Saite über Bund 12, Basssaite außen</translation>
  </message>
  <message>
   <source>open string over fret 12, treble outer string</source>
   <translation>leere Saite über Bund 12, Diskantsaite außen</translation>
  </message>
  <message>
   <source>open strings over every fret</source>
   <translation>leere Saiten über allen Bünden</translation>
  </message>
  <message>
   <source>option is no list of tables; write [[option]] above each option.</source>
   <translation>option ist keine Liste von Tabellen; [[option]] über jede Variante schreiben.</translation>
  </message>
  <message>
   <source>option {} has no name; write name = "…" under [[option]].</source>
   <translation>option {} hat keinen Namen; name = "…" unter [[option]] schreiben.</translation>
  </message>
  <message>
   <source>option {} states [option.job], which holds for the whole file; move it to [job].</source>
   <translation>option {} gibt [option.job] an, das für die ganze Datei gilt; es nach [job] verschieben.</translation>
  </message>
  <message>
   <source>out by {}</source>
   <translation>um {} daneben</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>veraltet</translation>
  </message>
  <message>
   <source>outer string to fretboard edge at the last fret, least</source>
   <translation>äußere Saite zur Griffbrettkante am letzten Bund, mindestens</translation>
  </message>
  <message>
   <source>outer string to outer string at the nut, centre to centre</source>
   <translation>äußere Saite zu äußerer Saite am Sattel, Mitte zu Mitte</translation>
  </message>
  <message>
   <source>outer string to outer string at the saddles</source>
   <translation>äußere Saite zu äußerer Saite an den Saitenreitern</translation>
  </message>
  <message>
   <source>outer strings to the fretboard's edges at the last fret</source>
   <translation>äußere Saiten zu den Griffbrettkanten am letzten Bund</translation>
  </message>
  <message>
   <source>own</source>
   <translation>eigene</translation>
  </message>
  <message>
   <source>own outline: centreline to the cutaway's wall beside the pocket, bass side</source>
   <translation>eigener Umriss: Mittellinie bis zur Wand des Cutaways neben der Tasche, Bassseite</translation>
  </message>
  <message>
   <source>own outline: centreline to the cutaway's wall beside the pocket, treble side</source>
   <translation>eigener Umriss: Mittellinie bis zur Wand des Cutaways neben der Tasche, Diskantseite</translation>
  </message>
  <message>
   <source>own outline: end wall to the body's tail</source>
   <translation>eigener Umriss: Stirnwand bis zum unteren Ende des Korpus</translation>
  </message>
  <message>
   <source>own outline: end wall to the bottom of the bass cutaway, toward the mouth</source>
   <translation>eigener Umriss: Stirnwand bis zum Grund des bassseitigen Cutaways, zur Mündung hin</translation>
  </message>
  <message>
   <source>own outline: end wall to the bottom of the treble cutaway, toward the mouth</source>
   <translation>eigener Umriss: Stirnwand bis zum Grund des diskantseitigen Cutaways, zur Mündung hin</translation>
  </message>
  <message>
   <source>own outline: narrowest part at the waist</source>
   <translation>eigener Umriss: schmalste Stelle an der Taille</translation>
  </message>
  <message>
   <source>own outline: widest part at the horns</source>
   <translation>eigener Umriss: breiteste Stelle an den Hörnern</translation>
  </message>
  <message>
   <source>own outline: widest part behind the bridge</source>
   <translation>eigener Umriss: breiteste Stelle hinter der Brücke</translation>
  </message>
  <message>
   <source>path of a file</source>
   <translation>Pfad einer Datei</translation>
  </message>
  <message>
   <source>pick the pocket's floor face</source>
   <translation>die Bodenfläche der Tasche wählen</translation>
  </message>
  <message>
   <source>pickup</source>
   <translation>Tonabnehmer</translation>
  </message>
  <message>
   <source>pickup bridge body height</source>
   <translation>Brücken-Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>pickup bridge cavity depth</source>
   <translation>Brücken-Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>pickup bridge fitted</source>
   <translation>Brücken-Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>pickup bridge high</source>
   <translation>Brücken-Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>pickup bridge length</source>
   <translation>Brücken-Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>pickup bridge low</source>
   <translation>Brücken-Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>pickup bridge mount</source>
   <translation>Brücken-Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>pickup bridge ring</source>
   <translation>Brücken-Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>pickup bridge spring</source>
   <translation>Brücken-Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>pickup bridge width</source>
   <translation>Brücken-Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>pickup bridge x</source>
   <translation>Brücken-Tonabnehmer: x</translation>
  </message>
  <message>
   <source>pickup middle body height</source>
   <translation>mittlerer Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>pickup middle cavity depth</source>
   <translation>mittlerer Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>pickup middle fitted</source>
   <translation>mittlerer Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>pickup middle high</source>
   <translation>mittlerer Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>pickup middle length</source>
   <translation>mittlerer Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>pickup middle low</source>
   <translation>mittlerer Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>pickup middle mount</source>
   <translation>mittlerer Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>pickup middle ring</source>
   <translation>mittlerer Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>pickup middle spring</source>
   <translation>mittlerer Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>pickup middle width</source>
   <translation>mittlerer Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>pickup middle x</source>
   <translation>mittlerer Tonabnehmer: x</translation>
  </message>
  <message>
   <source>pickup neck body height</source>
   <translation>Hals-Tonabnehmer: Bauhöhe</translation>
  </message>
  <message>
   <source>pickup neck cavity depth</source>
   <translation>Hals-Tonabnehmer: Tiefe des Hohlraums</translation>
  </message>
  <message>
   <source>pickup neck fitted</source>
   <translation>Hals-Tonabnehmer: eingebaut</translation>
  </message>
  <message>
   <source>pickup neck high</source>
   <translation>Hals-Tonabnehmer: höchste Stellung</translation>
  </message>
  <message>
   <source>pickup neck length</source>
   <translation>Hals-Tonabnehmer: Länge</translation>
  </message>
  <message>
   <source>pickup neck low</source>
   <translation>Hals-Tonabnehmer: tiefste Stellung</translation>
  </message>
  <message>
   <source>pickup neck mount</source>
   <translation>Hals-Tonabnehmer: Höhenbezug</translation>
  </message>
  <message>
   <source>pickup neck ring</source>
   <translation>Hals-Tonabnehmer: Rahmenhöhe</translation>
  </message>
  <message>
   <source>pickup neck spring</source>
   <translation>Hals-Tonabnehmer: Federhöhe</translation>
  </message>
  <message>
   <source>pickup neck width</source>
   <translation>Hals-Tonabnehmer: Breite</translation>
  </message>
  <message>
   <source>pickup neck x</source>
   <translation>Hals-Tonabnehmer: x</translation>
  </message>
  <message>
   <source>pilot</source>
   <translation>Vorbohrung</translation>
  </message>
  <message>
   <source>pilot hole deeper than the screw</source>
   <translation>Vorbohrung tiefer als die Schraube</translation>
  </message>
  <message>
   <source>plane</source>
   <translation>Ebene</translation>
  </message>
  <message>
   <source>plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>plate and rings do not reach under the strings</source>
   <translation>Schlagbrett und Rahmen reichen nicht unter die Saiten</translation>
  </message>
  <message>
   <source>plate clearance</source>
   <translation>Schlagbrettluft ringsum</translation>
  </message>
  <message>
   <source>plate cover</source>
   <translation>Schlagbrettform</translation>
  </message>
  <message>
   <source>plate cut away</source>
   <translation>Schlagbrettausschnitt</translation>
  </message>
  <message>
   <source>plate cut away under the overhang</source>
   <translation>Schlagbrett unter dem Überstand ausgeschnitten</translation>
  </message>
  <message>
   <source>plate margin</source>
   <translation>Schlagbrettrand</translation>
  </message>
  <message>
   <source>plate reach</source>
   <translation>Schlagbrett, Reichweite</translation>
  </message>
  <message>
   <source>plate thickness</source>
   <translation>Schlagbrettdicke</translation>
  </message>
  <message>
   <source>plate under overhang</source>
   <translation>Schlagbrett unter dem Überstand</translation>
  </message>
  <message>
   <source>plate: cut-out and openings leave {} pieces of it; make plate.margin or plate.reach larger.</source>
   <translation>Schlagbrett: Ausschnitt und Öffnungen lassen davon {} Stücke; plate.margin oder plate.reach größer machen.</translation>
  </message>
  <message>
   <source>plate: no part of it lies over the body; check outline and plate.reach.</source>
   <translation>Schlagbrett: kein Teil davon liegt über dem Korpus; Umriss und plate.reach prüfen.</translation>
  </message>
  <message>
   <source>pocket</source>
   <translation>Tasche</translation>
  </message>
  <message>
   <source>pocket angle</source>
   <translation>Taschenwinkel</translation>
  </message>
  <message>
   <source>pocket angle short of what the bridge needs at this depth</source>
   <translation>Taschenwinkel zu klein für die Brücke bei dieser Tiefe</translation>
  </message>
  <message>
   <source>pocket corner radius</source>
   <translation>Taschen-Eckenradius</translation>
  </message>
  <message>
   <source>pocket depth</source>
   <translation>Taschentiefe</translation>
  </message>
  <message>
   <source>pocket end radius</source>
   <translation>Stirnwandradius</translation>
  </message>
  <message>
   <source>pocket end shape</source>
   <translation>Stirnwandform</translation>
  </message>
  <message>
   <source>pocket floor fillet</source>
   <translation>Bodenkehle</translation>
  </message>
  <message>
   <source>pocket length</source>
   <translation>Taschenlänge</translation>
  </message>
  <message>
   <source>pocket wall</source>
   <translation>Stirnwand bis Korpusrand</translation>
  </message>
  <message>
   <source>pocket width end</source>
   <translation>Taschenbreite, Stirnwand</translation>
  </message>
  <message>
   <source>pocket width mouth</source>
   <translation>Taschenbreite, Mündung</translation>
  </message>
  <message>
   <source>pocket: at {} mm from the end wall its floor lies {} mm below the body's back; make it shallower, or the body thicker.</source>
   <translation>Tasche: {} mm vor der Stirnwand liegt ihr Boden {} mm unter der Rückseite des Korpus; sie flacher oder den Korpus dicker machen.</translation>
  </message>
  <message>
   <source>pocket: its {} of radius {} mm does not fit; make the radius smaller.</source>
   <translation>Tasche: {} mit Radius {} mm passt nicht; den Radius kleiner machen.</translation>
  </message>
  <message>
   <source>pocket: the kernel gave no valid solid with its {}.</source>
   <translation>Tasche: der Geometriekern ergab keinen gültigen Volumenkörper, Schritt: {}.</translation>
  </message>
  <message>
   <source>points</source>
   <translation>Punkte</translation>
  </message>
  <message>
   <source>pole tops above the mount at the highest</source>
   <translation>Oberkanten der Polstücke über der Montagefläche, höchste Stellung</translation>
  </message>
  <message>
   <source>pole tops above the mount at the lowest the hardware allows</source>
   <translation>Oberkanten der Polstücke über der Montagefläche, tiefste Stellung, die die Beschläge zulassen</translation>
  </message>
  <message>
   <source>pressure</source>
   <translation>Druck</translation>
  </message>
  <message>
   <source>proving {} on solids</source>
   <translation>{} wird an Volumenkörpern bewiesen</translation>
  </message>
  <message>
   <source>pull of all strings</source>
   <translation>Zug aller Saiten</translation>
  </message>
  <message>
   <source>radius left between the floor and the walls</source>
   <translation>Radius, der zwischen Boden und Wänden bleibt</translation>
  </message>
  <message>
   <source>radius of its corners in plan</source>
   <translation>Radius seiner Ecken in der Draufsicht</translation>
  </message>
  <message>
   <source>radius of the corners between end wall and sides, left by the cutter</source>
   <translation>Radius der Ecken zwischen Stirnwand und Seiten, den der Fräser lässt</translation>
  </message>
  <message>
   <source>radius of the fretboard's top at its end; 100000 mm for a flat one</source>
   <translation>Radius der Griffbrettoberseite an ihrem Ende; 100000 mm für eine ebene</translation>
  </message>
  <message>
   <source>radius of the fretboard's top at the nut; 100000 mm for a flat one</source>
   <translation>Radius der Griffbrettoberseite am Sattel; 100000 mm für eine ebene</translation>
  </message>
  <message>
   <source>radius of the heel's corners in plan</source>
   <translation>Radius der Ecken des Halsfußes in der Draufsicht</translation>
  </message>
  <message>
   <source>radius of the rounded outer edges, top and back</source>
   <translation>Radius der gerundeten Außenkanten, Decke und Rückseite</translation>
  </message>
  <message>
   <source>reading {}</source>
   <translation>gelesen wird {}</translation>
  </message>
  <message>
   <source>recess</source>
   <translation>Vertiefung</translation>
  </message>
  <message>
   <source>recess under the bridge</source>
   <translation>Vertiefung unter der Brücke</translation>
  </message>
  <message>
   <source>relative humidity</source>
   <translation>relative Luftfeuchte</translation>
  </message>
  <message>
   <source>relief: largest depth of the crowns under the chord from fret 1 to the last</source>
   <translation>Halskrümmung: größte Tiefe der Bundkronen unter der Sehne von Bund 1 bis zum letzten</translation>
  </message>
  <message>
   <source>report</source>
   <translation>Bericht</translation>
  </message>
  <message>
   <source>rises</source>
   <translation>steigt</translation>
  </message>
  <message>
   <source>room around a sunk fretboard</source>
   <translation>Luft um ein versenktes Griffbrett</translation>
  </message>
  <message>
   <source>room under a floating bridge's base</source>
   <translation>Luft unter der Grundplatte einer schwebenden Brücke</translation>
  </message>
  <message>
   <source>room under the binding</source>
   <translation>Luft unter der Einfassung</translation>
  </message>
  <message>
   <source>room under the fretboard beside the pocket</source>
   <translation>Luft unter dem Griffbrett neben der Tasche</translation>
  </message>
  <message>
   <source>room under the overhang</source>
   <translation>Luft unter dem Überstand</translation>
  </message>
  <message>
   <source>room under the overhang through the year</source>
   <translation>Luft unter dem Überstand übers Jahr</translation>
  </message>
  <message>
   <source>round</source>
   <translation>rund</translation>
  </message>
  <message>
   <source>round cone</source>
   <translation>runder Kegel</translation>
  </message>
  <message>
   <source>round end: radius of the end wall in plan</source>
   <translation>rundes Ende: Radius der Stirnwand in der Draufsicht</translation>
  </message>
  <message>
   <source>round end: radius of the heel end in plan</source>
   <translation>rundes Ende: Radius des Halsfußendes in der Draufsicht</translation>
  </message>
  <message>
   <source>router stop {}</source>
   <translation>Anschlag {}</translation>
  </message>
  <message>
   <source>router's stop {}</source>
   <translation>Anschlag {} der Oberfräse</translation>
  </message>
  <message>
   <source>routing template and set-up sheet</source>
   <translation>Frässchablone und Einrichteblatt</translation>
  </message>
  <message>
   <source>rule along the centreline</source>
   <translation>Lineal längs der Mittellinie</translation>
  </message>
  <message>
   <source>rule from heel end to fretboard end</source>
   <translation>Lineal vom Ende des Halsfußes bis zum Griffbrettende</translation>
  </message>
  <message>
   <source>rule from the end wall</source>
   <translation>Lineal von der Stirnwand</translation>
  </message>
  <message>
   <source>saddle behind the scale length, bass outer string</source>
   <translation>Saitenreiter hinter der Mensur, äußere Basssaite</translation>
  </message>
  <message>
   <source>saddle behind the scale length, treble outer string</source>
   <translation>Saitenreiter hinter der Mensur, äußere Diskantsaite</translation>
  </message>
  <message>
   <source>saddle to string anchor, along X</source>
   <translation>Saitenreiter bis zur Saitenaufhängung, längs X</translation>
  </message>
  <message>
   <source>saddle travel along the strings</source>
   <translation>Stellweg der Saitenreiter längs der Saiten</translation>
  </message>
  <message>
   <source>saddles beyond their travel along the strings</source>
   <translation>Saitenreiter jenseits ihres Stellwegs längs der Saiten</translation>
  </message>
  <message>
   <source>saddles cannot go low enough</source>
   <translation>Saitenreiter gehen nicht tief genug</translation>
  </message>
  <message>
   <source>saddles cannot rise high enough</source>
   <translation>Saitenreiter gehen nicht hoch genug</translation>
  </message>
  <message>
   <source>saddles go low enough</source>
   <translation>Saitenreiter gehen tief genug</translation>
  </message>
  <message>
   <source>saddles rise high enough</source>
   <translation>Saitenreiter gehen hoch genug</translation>
  </message>
  <message>
   <source>saddles within their travel along the strings</source>
   <translation>Saitenreiter innerhalb ihres Stellwegs</translation>
  </message>
  <message>
   <source>sample</source>
   <translation>Messpunkt</translation>
  </message>
  <message>
   <source>sampled</source>
   <translation>abgetastet</translation>
  </message>
  <message>
   <source>sampled top: X of the first row</source>
   <translation>abgetastete Decke: X der ersten Reihe</translation>
  </message>
  <message>
   <source>sampled top: Y of a row's first</source>
   <translation>abgetastete Decke: Y des ersten Punkts einer Reihe</translation>
  </message>
  <message>
   <source>sampled top: from sample to sample</source>
   <translation>abgetastete Decke: von Messpunkt zu Messpunkt</translation>
  </message>
  <message>
   <source>sampled top: heights over the origin, row by row across the centreline</source>
   <translation>abgetastete Decke: Höhen über dem Ursprung, Reihe für Reihe quer zur Mittellinie</translation>
  </message>
  <message>
   <source>sampled top: largest error found between the samples</source>
   <translation>abgetastete Decke: größter Fehler zwischen den Messpunkten</translation>
  </message>
  <message>
   <source>sampled top: number of samples across</source>
   <translation>abgetastete Decke: Zahl der Messpunkte in der Breite</translation>
  </message>
  <message>
   <source>saved</source>
   <translation>gespeichert</translation>
  </message>
  <message>
   <source>scale length (of the treble outer string, where the scales differ)</source>
   <translation>Mensur (der äußeren Diskantsaite, wo die Mensuren verschieden sind)</translation>
  </message>
  <message>
   <source>scale length of the bass outer string</source>
   <translation>Mensur der äußeren Basssaite</translation>
  </message>
  <message>
   <source>screw</source>
   <translation>Schraube</translation>
  </message>
  <message>
   <source>screw axis to heel edge in shank diameters, least</source>
   <translation>Schraubenachse zum Rand des Halsfußes in Schaftdurchmessern, mindestens</translation>
  </message>
  <message>
   <source>screw grip in shank diameters, least</source>
   <translation>Halt der Schraube in Schaftdurchmessern, mindestens</translation>
  </message>
  <message>
   <source>screw lengths the shop has</source>
   <translation>Schraubenlängen, die die Werkstatt hat</translation>
  </message>
  <message>
   <source>screw number {} is not in the table of ASME B18.6.1 (it has {})</source>
   <translation>Schraube Nummer {} steht nicht in der Tabelle von ASME B18.6.1 (sie enthält {})</translation>
  </message>
  <message>
   <source>screw tip under the glue line (one piece: under the slots), least</source>
   <translation>Schraubenspitze unter der Leimfuge (einteilig: unter den Schlitzen), mindestens</translation>
  </message>
  <message>
   <source>screw tip under the glue line, wished</source>
   <translation>Schraubenspitze unter der Leimfuge, gewünscht</translation>
  </message>
  <message>
   <source>screw tips under the fretboard</source>
   <translation>Schraubenspitzen unter dem Griffbrett</translation>
  </message>
  <message>
   <source>screw to truss-rod channel, least</source>
   <translation>Schraube zum Kanal des Halsstabs, mindestens</translation>
  </message>
  <message>
   <source>screw x</source>
   <translation>Schraube x</translation>
  </message>
  <message>
   <source>screw y</source>
   <translation>Schraube y</translation>
  </message>
  <message>
   <source>screws</source>
   <translation>Schrauben</translation>
  </message>
  <message>
   <source>screws body hole</source>
   <translation>Korpusloch</translation>
  </message>
  <message>
   <source>screws fixing</source>
   <translation>Schraubenart</translation>
  </message>
  <message>
   <source>screws head seat</source>
   <translation>Schraubenkopfsitz</translation>
  </message>
  <message>
   <source>screws insert length</source>
   <translation>Gewindeeinsatzlänge</translation>
  </message>
  <message>
   <source>screws into the heel</source>
   <translation>Schrauben in den Halsfuß</translation>
  </message>
  <message>
   <source>screws length</source>
   <translation>Schraubenlänge</translation>
  </message>
  <message>
   <source>screws lengths stocked</source>
   <translation>Schraubenlängen im Lager</translation>
  </message>
  <message>
   <source>screws of {} mm</source>
   <translation>Schrauben von {} mm</translation>
  </message>
  <message>
   <source>screws position error</source>
   <translation>Lagefehler der Löcher</translation>
  </message>
  <message>
   <source>screws shank</source>
   <translation>Schaftdurchmesser</translation>
  </message>
  <message>
   <source>screws threaded</source>
   <translation>Gewindelänge</translation>
  </message>
  <message>
   <source>screws to the heel's edge in shank diameters</source>
   <translation>Schrauben zum Rand des Halsfußes in Schaftdurchmessern</translation>
  </message>
  <message>
   <source>screws to the truss rod's channel</source>
   <translation>Schrauben zum Kanal des Halsstabs</translation>
  </message>
  <message>
   <source>screws' grip</source>
   <translation>Halt der Schrauben</translation>
  </message>
  <message>
   <source>screws' grip in shank diameters</source>
   <translation>Halt der Schrauben in Schaftdurchmessern</translation>
  </message>
  <message>
   <source>seat end gap</source>
   <translation>Stirnspalt, kleinster</translation>
  </message>
  <message>
   <source>section</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>separate saddles</source>
   <translation>einzelne Saitenreiter</translation>
  </message>
  <message>
   <source>separate saddles, one fixed radius on two posts, or floating</source>
   <translation>einzelne Saitenreiter, ein fester Radius auf zwei Bolzen, oder schwebend</translation>
  </message>
  <message>
   <source>several</source>
   <translation>mehrere</translation>
  </message>
  <message>
   <source>shank (outer thread) diameter</source>
   <translation>Durchmesser des Schafts (Außengewinde)</translation>
  </message>
  <message>
   <source>shank diameters</source>
   <translation>Schaftdurchmesser</translation>
  </message>
  <message>
   <source>shape of the end wall in plan</source>
   <translation>Form der Stirnwand in der Draufsicht</translation>
  </message>
  <message>
   <source>shape of the heel end in plan</source>
   <translation>Form des Halsfußendes in der Draufsicht</translation>
  </message>
  <message>
   <source>shape of the top: flat, domed (a sphere), carved (a bowl of two radii) or sampled</source>
   <translation>Form der Decke: eben, kugelig (eine Kugel), gewölbt (eine Schale mit zwei Radien) oder abgetastet</translation>
  </message>
  <message>
   <source>share of the heel that must bear on the floor</source>
   <translation>Anteil des Halsfußes, der auf dem Boden aufliegen muss</translation>
  </message>
  <message>
   <source>sheets need the solids; judge the joint with them first.</source>
   <translation>Blätter brauchen die Volumenkörper; die Verbindung zuerst mit ihnen beurteilen.</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>Beilage</translation>
  </message>
  <message>
   <source>shim make</source>
   <translation>Beilagenbauart</translation>
  </message>
  <message>
   <source>shim mouth</source>
   <translation>Beilage, Mündung</translation>
  </message>
  <message>
   <source>shim strip</source>
   <translation>Beilagestreifen, Dicke</translation>
  </message>
  <message>
   <source>shim strip edge</source>
   <translation>Beilagestreifen, Kante</translation>
  </message>
  <message>
   <source>shim wall</source>
   <translation>Beilage, Stirnwand</translation>
  </message>
  <message>
   <source>shim's thickness at the end wall</source>
   <translation>Dicke der Beilage an der Stirnwand</translation>
  </message>
  <message>
   <source>shim's thickness at wall and mouth</source>
   <translation>Dicke der Beilage an Stirnwand und Mündung</translation>
  </message>
  <message>
   <source>shim, strip's thickness</source>
   <translation>Beilage, Dicke des Streifens</translation>
  </message>
  <message>
   <source>shim.strip_edge: {} mm reaches past the pocket's mouth at {} mm; make it smaller.</source>
   <translation>shim.strip_edge: {} mm reichen über die Mündung der Tasche bei {} mm hinaus; den Wert kleiner machen.</translation>
  </message>
  <message>
   <source>shim: it lies nowhere under the heel; make the strip wider.</source>
   <translation>Beilage: sie liegt nirgends unter dem Halsfuß; den Streifen breiter machen.</translation>
  </message>
  <message>
   <source>shop general</source>
   <translation>Allgemeintoleranz der Werkstatt</translation>
  </message>
  <message>
   <source>shop spread</source>
   <translation>Streuung der Werkstatt</translation>
  </message>
  <message>
   <source>shop step angle</source>
   <translation>Winkelschritt der Werkstatt</translation>
  </message>
  <message>
   <source>shop step binding</source>
   <translation>Schritt der Einfassung</translation>
  </message>
  <message>
   <source>shop step depth</source>
   <translation>Tiefenschritt der Werkstatt</translation>
  </message>
  <message>
   <source>shop step fretboard</source>
   <translation>Schritt der Griffbrettlänge</translation>
  </message>
  <message>
   <source>shop step plate</source>
   <translation>Schritt der Schlagbrettdicke</translation>
  </message>
  <message>
   <source>shop step recess</source>
   <translation>Schritt der Vertiefung</translation>
  </message>
  <message>
   <source>shop step shim</source>
   <translation>Schritt der Beilagendicke</translation>
  </message>
  <message>
   <source>shop stops</source>
   <translation>Anschläge der Oberfräse</translation>
  </message>
  <message>
   <source>shop swap</source>
   <translation>Gewicht des Teiletauschs</translation>
  </message>
  <message>
   <source>shorter fretboard</source>
   <translation>kürzeres Griffbrett</translation>
  </message>
  <message>
   <source>side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>side clearance through the year</source>
   <translation>Seitenspiel übers Jahr</translation>
  </message>
  <message>
   <source>side clearance, bass</source>
   <translation>Seitenspiel, Bass</translation>
  </message>
  <message>
   <source>side clearance, each side</source>
   <translation>Seitenspiel, je Seite</translation>
  </message>
  <message>
   <source>side clearance, treble</source>
   <translation>Seitenspiel, Diskant</translation>
  </message>
  <message>
   <source>sideways swing at the bridge</source>
   <translation>seitlicher Ausschlag an der Brücke</translation>
  </message>
  <message>
   <source>size along the centreline</source>
   <translation>Größe längs der Mittellinie</translation>
  </message>
  <message>
   <source>size along the centreline, ring included</source>
   <translation>Größe längs der Mittellinie, mit Rahmen</translation>
  </message>
  <message>
   <source>size square to the centreline</source>
   <translation>Größe quer zur Mittellinie</translation>
  </message>
  <message>
   <source>smallest change of a recess under the bridge</source>
   <translation>kleinste Änderung einer Vertiefung unter der Brücke</translation>
  </message>
  <message>
   <source>smallest change of a shim's thickness</source>
   <translation>kleinste Änderung der Dicke einer Beilage</translation>
  </message>
  <message>
   <source>smallest change of how far the binding hangs</source>
   <translation>kleinste Änderung des Überhangs der Einfassung</translation>
  </message>
  <message>
   <source>smallest change of the cover plate's thickness</source>
   <translation>kleinste Änderung der Dicke des Schlagbretts</translation>
  </message>
  <message>
   <source>smallest change of the fretboard's length</source>
   <translation>kleinste Änderung der Länge des Griffbretts</translation>
  </message>
  <message>
   <source>smallest change of the pocket's angle</source>
   <translation>kleinste Änderung des Taschenwinkels</translation>
  </message>
  <message>
   <source>smallest change of the pocket's depth</source>
   <translation>kleinste Änderung der Taschentiefe</translation>
  </message>
  <message>
   <source>something stands {} mm out of the heel's bottom; is that the heel's bottom?</source>
   <translation>Aus der Unterseite des Halsfußes steht etwas {} mm hervor; ist das die Unterseite des Halsfußes?</translation>
  </message>
  <message>
   <source>spread of {} is {}; write one of {}.</source>
   <translation>Streuung von {} ist {}; eine von diesen schreiben: {}.</translation>
  </message>
  <message>
   <source>square</source>
   <translation>gerade</translation>
  </message>
  <message>
   <source>stock</source>
   <translation>vorrätige Länge</translation>
  </message>
  <message>
   <source>stop</source>
   <translation>Anschlag</translation>
  </message>
  <message>
   <source>stopped while {}</source>
   <translation>angehalten bei: {}</translation>
  </message>
  <message>
   <source>string</source>
   <translation>Saite</translation>
  </message>
  <message>
   <source>string anchor above the mount; negative for strings through the body</source>
   <translation>Saitenaufhängung über der Montagefläche; negativ bei Saiten durch den Korpus</translation>
  </message>
  <message>
   <source>string at the last fret over the poles, bass, largest</source>
   <translation>Saite am letzten Bund über den Polstücken, Bass, höchstens</translation>
  </message>
  <message>
   <source>string at the last fret over the poles, bass, least</source>
   <translation>Saite am letzten Bund über den Polstücken, Bass, mindestens</translation>
  </message>
  <message>
   <source>string at the last fret over the poles, treble, largest</source>
   <translation>Saite am letzten Bund über den Polstücken, Diskant, höchstens</translation>
  </message>
  <message>
   <source>string at the last fret over the poles, treble, least</source>
   <translation>Saite am letzten Bund über den Polstücken, Diskant, mindestens</translation>
  </message>
  <message>
   <source>string {} crosses no crown at its fret {}</source>
   <translation>Saite {} kreuzt an ihrem Bund {} keine Bundkrone</translation>
  </message>
  <message>
   <source>string's underside above the mount (floating: above the base), saddle at its highest</source>
   <translation>Unterseite der Saite über der Montagefläche (schwebend: über der Grundplatte), Saitenreiter am höchsten</translation>
  </message>
  <message>
   <source>string's underside above the mount (floating: above the base), saddle at its lowest</source>
   <translation>Unterseite der Saite über der Montagefläche (schwebend: über der Grundplatte), Saitenreiter am tiefsten</translation>
  </message>
  <message>
   <source>strings action bass</source>
   <translation>Saitenlage, Bass</translation>
  </message>
  <message>
   <source>strings action treble</source>
   <translation>Saitenlage, Diskant</translation>
  </message>
  <message>
   <source>strings compensation</source>
   <translation>Saitenkompensation</translation>
  </message>
  <message>
   <source>strings compensation bass</source>
   <translation>Kompensation, Bass</translation>
  </message>
  <message>
   <source>strings compensation treble</source>
   <translation>Kompensation, Diskant</translation>
  </message>
  <message>
   <source>strings count</source>
   <translation>Saitenzahl</translation>
  </message>
  <message>
   <source>strings hand</source>
   <translation>Spielhand</translation>
  </message>
  <message>
   <source>strings left handed</source>
   <translation>linkshändig</translation>
  </message>
  <message>
   <source>strings mass</source>
   <translation>Saitenmasse</translation>
  </message>
  <message>
   <source>strings mirrored for a left-handed player</source>
   <translation>Saiten gespiegelt für Linkshänder</translation>
  </message>
  <message>
   <source>strings nut bass</source>
   <translation>Saite über Bund 1, Bass</translation>
  </message>
  <message>
   <source>strings nut treble</source>
   <translation>Saite über Bund 1, Diskant</translation>
  </message>
  <message>
   <source>strings over the top under the hand</source>
   <translation>Saiten über der Decke unter der Hand</translation>
  </message>
  <message>
   <source>strings pitch</source>
   <translation>Saitenstimmung</translation>
  </message>
  <message>
   <source>strings spread bridge</source>
   <translation>Saitenspreizung, Brücke</translation>
  </message>
  <message>
   <source>strings spread nut</source>
   <translation>Saitenspreizung, Sattel</translation>
  </message>
  <message>
   <source>strings zero fret</source>
   <translation>Nullbund</translation>
  </message>
  <message>
   <source>strings' force on the saddles</source>
   <translation>Druck der Saiten auf die Saitenreiter</translation>
  </message>
  <message>
   <source>strip</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <source>strip's thickness</source>
   <translation>Dicke des Streifens</translation>
  </message>
  <message>
   <source>strip: end wall to the strip's mouth-side edge</source>
   <translation>Streifen: Stirnwand bis zur mündungsseitigen Kante des Streifens</translation>
  </message>
  <message>
   <source>strip: its thickness</source>
   <translation>Streifen: seine Dicke</translation>
  </message>
  <message>
   <source>sure</source>
   <translation>sicher</translation>
  </message>
  <message>
   <source>surround</source>
   <translation>ringsum</translation>
  </message>
  <message>
   <source>temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>text</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>the binding stands over neither top nor plate</source>
   <translation>die Einfassung steht weder über Decke noch Schlagbrett</translation>
  </message>
  <message>
   <source>the body has no back under the pocket</source>
   <translation>der Korpus hat keine Rückseite unter der Tasche</translation>
  </message>
  <message>
   <source>the body has no cavity</source>
   <translation>der Korpus hat keinen Hohlraum</translation>
  </message>
  <message>
   <source>the body has no face that looks up</source>
   <translation>der Korpus hat keine Fläche, die nach oben zeigt</translation>
  </message>
  <message>
   <source>the bridge does not float</source>
   <translation>die Brücke schwebt nicht</translation>
  </message>
  <message>
   <source>the bridge stands on the top, on the cover plate, or in a recess</source>
   <translation>die Brücke steht auf der Decke, auf dem Schlagbrett oder in einer Vertiefung</translation>
  </message>
  <message>
   <source>the channel opens in the heel's end</source>
   <translation>der Kanal öffnet sich am Ende des Halsfußes</translation>
  </message>
  <message>
   <source>the channel stops before the heel's end</source>
   <translation>der Kanal endet vor dem Ende des Halsfußes</translation>
  </message>
  <message>
   <source>the channel's flat bottom</source>
   <translation>der ebene Grund des Kanals</translation>
  </message>
  <message>
   <source>the cover plate has no face that looks up</source>
   <translation>das Schlagbrett hat keine Fläche, die nach oben zeigt</translation>
  </message>
  <message>
   <source>the crest of the fretboard's top ({})</source>
   <translation>der Scheitel der Griffbrettoberseite ({})</translation>
  </message>
  <message>
   <source>the crowns of the frets</source>
   <translation>die Kronen der Bünde</translation>
  </message>
  <message>
   <source>the crowns' feet</source>
   <translation>die Füße der Kronen</translation>
  </message>
  <message>
   <source>the crowns' feet, square to them</source>
   <translation>die Füße der Kronen, rechtwinklig dazu</translation>
  </message>
  <message>
   <source>the cutaway does not reach beside the pocket</source>
   <translation>der Cutaway reicht nicht bis neben die Tasche</translation>
  </message>
  <message>
   <source>the document as saved</source>
   <translation>dem gespeicherten Dokument</translation>
  </message>
  <message>
   <source>the end wall does not reach up to the top</source>
   <translation>die Stirnwand reicht nicht bis zur Decke hinauf</translation>
  </message>
  <message>
   <source>the end wall is square to the top or to the floor</source>
   <translation>die Stirnwand steht rechtwinklig zur Decke oder zum Boden</translation>
  </message>
  <message>
   <source>the file holds triangles only: figures are as good as its facets</source>
   <translation>die Datei enthält nur Dreiecke: Maße sind so genau wie ihre Facetten</translation>
  </message>
  <message>
   <source>the fret slots</source>
   <translation>die Bundschlitze</translation>
  </message>
  <message>
   <source>the fretboard does not lie over the body</source>
   <translation>das Griffbrett liegt nicht über dem Korpus</translation>
  </message>
  <message>
   <source>the fretboard does not reach past the pocket's end wall</source>
   <translation>das Griffbrett reicht nicht über die Stirnwand der Tasche hinaus</translation>
  </message>
  <message>
   <source>the fretboard does not sink below the top or the plate</source>
   <translation>das Griffbrett taucht nicht unter Decke oder Schlagbrett</translation>
  </message>
  <message>
   <source>the fretboard ends {} mm before the heel's end</source>
   <translation>das Griffbrett endet {} mm vor dem Ende des Halsfußes</translation>
  </message>
  <message>
   <source>the fretboard has no binding</source>
   <translation>das Griffbrett hat keine Einfassung</translation>
  </message>
  <message>
   <source>the fretboard has no binding over top or plate</source>
   <translation>das Griffbrett hat über Decke oder Schlagbrett keine Einfassung</translation>
  </message>
  <message>
   <source>the fretboard has no top near the heel</source>
   <translation>das Griffbrett hat in der Nähe des Halsfußes keine Oberseite</translation>
  </message>
  <message>
   <source>the fretboard is glued on: it would be pried off, not rock</source>
   <translation>das Griffbrett ist aufgeleimt: es würde abgehebelt, statt zu kippeln</translation>
  </message>
  <message>
   <source>the fretboard nowhere sinks below the top or the plate</source>
   <translation>das Griffbrett taucht nirgends unter Decke oder Schlagbrett</translation>
  </message>
  <message>
   <source>the fretboard stands nowhere over the top before the end wall</source>
   <translation>das Griffbrett steht vor der Stirnwand nirgends über der Decke</translation>
  </message>
  <message>
   <source>the fretboard stands over neither top nor plate there</source>
   <translation>das Griffbrett steht dort weder über Decke noch Schlagbrett</translation>
  </message>
  <message>
   <source>the fretboard's edges are not straight: they stray {} mm; measure its width at nut and end.</source>
   <translation>die Kanten des Griffbretts sind nicht gerade: sie weichen um {} mm ab; seine Breite an Sattel und Ende messen.</translation>
  </message>
  <message>
   <source>the fretboard's own bottom</source>
   <translation>die eigene Unterseite des Griffbretts</translation>
  </message>
  <message>
   <source>the fretboard's start, for there is no nut</source>
   <translation>der Anfang des Griffbretts, denn es gibt keinen Sattel</translation>
  </message>
  <message>
   <source>the fretboard's top is conical: its radius grows from {} to {} mm</source>
   <translation>die Oberseite des Griffbretts ist kegelig: ihr Radius wächst von {} auf {} mm</translation>
  </message>
  <message>
   <source>the fretboard's top is flat; a job states that as a radius of {} mm, which lies {} mm lower at its edges</source>
   <translation>die Oberseite des Griffbretts ist eben; ein Auftrag gibt das als Radius von {} mm an, der an ihren Kanten {} mm tiefer liegt</translation>
  </message>
  <message>
   <source>the fretboard's top is neither flat nor evenly round: it strays {} mm from the nearest shape; state neck.radius_nut and neck.radius_end.</source>
   <translation>die Oberseite des Griffbretts ist weder eben noch gleichmäßig rund: sie weicht um {} mm von der nächsten Form ab; neck.radius_nut und neck.radius_end angeben.</translation>
  </message>
  <message>
   <source>the fretboard's top is not parallel to the heel's bottom: it {} {}° toward the bridge, and a job knows parallel ones only.</source>
   <translation>die Oberseite des Griffbretts liegt nicht parallel zur Unterseite des Halsfußes: sie {} um {}° zur Brücke hin, und ein Auftrag kennt nur parallele.</translation>
  </message>
  <message>
   <source>the fretboard's top, a {}</source>
   <translation>die Oberseite des Griffbretts: {}</translation>
  </message>
  <message>
   <source>the fretboard's two edges in plan</source>
   <translation>die beiden Kanten des Griffbretts in der Draufsicht</translation>
  </message>
  <message>
   <source>the frets fan out, so each outer string has its own scale: state strings.spread_nut and strings.spread_bridge in the job.</source>
   <translation>die Bünde fächern sich auf, jede äußere Saite hat also ihre eigene Mensur: strings.spread_nut und strings.spread_bridge im Auftrag angeben.</translation>
  </message>
  <message>
   <source>the gap map has {} rooms for {} by {} points.</source>
   <translation>die Spaltkarte hat {} Werte für {} mal {} Punkte.</translation>
  </message>
  <message>
   <source>the glue line does not show, for wood and fretboard are one solid: the job's stands</source>
   <translation>die Leimfuge zeigt sich nicht, denn Holz und Griffbrett sind ein Volumenkörper: die des Auftrags gilt</translation>
  </message>
  <message>
   <source>the hand is not visible in the heel: the job's stands</source>
   <translation>die Spielhand ist am Halsfuß nicht zu erkennen: die des Auftrags gilt</translation>
  </message>
  <message>
   <source>the heel ends below the top: the fretboard covers its end</source>
   <translation>der Halsfuß endet unter der Decke: das Griffbrett verdeckt sein Ende</translation>
  </message>
  <message>
   <source>the heel has no corners over its bottom</source>
   <translation>der Halsfuß hat über seiner Unterseite keine Ecken</translation>
  </message>
  <message>
   <source>the heel has no face that looks down</source>
   <translation>der Halsfuß hat keine Fläche, die nach unten zeigt</translation>
  </message>
  <message>
   <source>the heel has no old pilot holes</source>
   <translation>der Halsfuß hat keine alten Vorbohrungen</translation>
  </message>
  <message>
   <source>the heel has no upright sides</source>
   <translation>der Halsfuß hat keine senkrechten Seiten</translation>
  </message>
  <message>
   <source>the heel is only {} mm thick up to what looks like the fretboard's top: is the fretboard missing from the file?</source>
   <translation>der Halsfuß ist bis zu dem, was wie die Griffbrettoberseite aussieht, nur {} mm dick: fehlt das Griffbrett in der Datei?</translation>
  </message>
  <message>
   <source>the heel tapers more on one side than on the other</source>
   <translation>der Halsfuß verjüngt sich auf einer Seite mehr als auf der anderen</translation>
  </message>
  <message>
   <source>the heel's bottom does not lie over the pocket's floor</source>
   <translation>die Unterseite des Halsfußes liegt nicht über dem Boden der Tasche</translation>
  </message>
  <message>
   <source>the heel's bottom edges are broken unevenly, by {} to {} mm; state neck.heel_edge.</source>
   <translation>die unteren Kanten des Halsfußes sind ungleich gebrochen, um {} bis {} mm; neck.heel_edge angeben.</translation>
  </message>
  <message>
   <source>the heel's bottom edges are rounded; a job knows them as chamfers</source>
   <translation>die unteren Kanten des Halsfußes sind gerundet; ein Auftrag kennt sie als Fasen</translation>
  </message>
  <message>
   <source>the heel's bottom is not flat: it strays {} mm from a plane; is that the heel's bottom?</source>
   <translation>die Unterseite des Halsfußes ist nicht eben: sie weicht um {} mm von einer Ebene ab; ist das die Unterseite des Halsfußes?</translation>
  </message>
  <message>
   <source>the heel's bottom reaches its walls</source>
   <translation>die Unterseite des Halsfußes reicht bis zu seinen Wänden</translation>
  </message>
  <message>
   <source>the heel's bottom within its walls</source>
   <translation>die Unterseite des Halsfußes zwischen seinen Wänden</translation>
  </message>
  <message>
   <source>the heel's end does not reach up to the top</source>
   <translation>das Ende des Halsfußes reicht nicht bis zur Decke hinauf</translation>
  </message>
  <message>
   <source>the heel's end does not stand before the end wall</source>
   <translation>das Ende des Halsfußes steht nicht vor der Stirnwand</translation>
  </message>
  <message>
   <source>the heel's end does not stand within the pocket</source>
   <translation>das Ende des Halsfußes steht nicht in der Tasche</translation>
  </message>
  <message>
   <source>the heel's end is no arc: it strays {} mm from a circle; is that the heel's end?</source>
   <translation>das Ende des Halsfußes ist kein Bogen: es weicht um {} mm von einem Kreis ab; ist das das Ende des Halsfußes?</translation>
  </message>
  <message>
   <source>the heel's end is not square to the centreline: one corner lies {} mm before the other; is that the heel's end?</source>
   <translation>das Ende des Halsfußes steht nicht rechtwinklig zur Mittellinie: eine Ecke liegt {} mm vor der anderen; ist das das Ende des Halsfußes?</translation>
  </message>
  <message>
   <source>the heel's end wall in plan</source>
   <translation>die Stirn des Halsfußes in der Draufsicht</translation>
  </message>
  <message>
   <source>the heel's middle lies {} mm beside the fretboard's centreline at its end and {} mm 70 mm before it; which of the two does the pocket follow?</source>
   <translation>die Mitte des Halsfußes liegt an seinem Ende {} mm neben der Mittellinie des Griffbretts, 70 mm davor {} mm; welcher der beiden folgt die Tasche?</translation>
  </message>
  <message>
   <source>the heel's sides carried on to its end</source>
   <translation>die Seiten des Halsfußes, bis zu seinem Ende verlängert</translation>
  </message>
  <message>
   <source>the heel's sides meet its end in corners</source>
   <translation>die Seiten des Halsfußes treffen sein Ende in Ecken</translation>
  </message>
  <message>
   <source>the heel's sides {} mm before its end</source>
   <translation>die Seiten des Halsfußes {} mm vor seinem Ende</translation>
  </message>
  <message>
   <source>the heel's two corners differ or are no arcs; state the radius that the pocket must take.</source>
   <translation>die beiden Ecken des Halsfußes sind verschieden oder keine Bögen; den Radius angeben, den die Tasche aufnehmen muss.</translation>
  </message>
  <message>
   <source>the joint has no cover plate: a window over its thickness says nothing.</source>
   <translation>die Verbindung hat kein Schlagbrett: ein Fenster über dessen Dicke sagt nichts.</translation>
  </message>
  <message>
   <source>the kernel gave no distance between two faces</source>
   <translation>der Geometriekern ergab keinen Abstand zweier Flächen</translation>
  </message>
  <message>
   <source>the kernel gave no triangles for face {}</source>
   <translation>der Geometriekern ergab keine Dreiecke für Fläche {}</translation>
  </message>
  <message>
   <source>the last fret to the fretboard's end</source>
   <translation>der letzte Bund bis zum Griffbrettende</translation>
  </message>
  <message>
   <source>the level face under the overhang</source>
   <translation>die ebene Fläche unter dem Überstand</translation>
  </message>
  <message>
   <source>the level on which the heel's sides end</source>
   <translation>die Höhe, auf der die Seiten des Halsfußes enden</translation>
  </message>
  <message>
   <source>the limits of {} are a table of {}; write "±0.1 mm" or {limits = "±0.1 mm", spread = "normal"}.</source>
   <translation>die Grenzen von {} sind eine Tabelle mit {}; "±0.1 mm" oder {limits = "±0.1 mm", spread = "normal"} schreiben.</translation>
  </message>
  <message>
   <source>the longer scale is the bass side's</source>
   <translation>die längere Mensur gehört zur Bassseite</translation>
  </message>
  <message>
   <source>the neck has no truss rod</source>
   <translation>der Hals hat keinen Halsstab</translation>
  </message>
  <message>
   <source>the neck is held by wood screws</source>
   <translation>der Hals wird von Holzschrauben gehalten</translation>
  </message>
  <message>
   <source>the neck moves so far that other parts lie under it</source>
   <translation>der Hals bewegt sich so weit, dass andere Teile unter ihm liegen</translation>
  </message>
  <message>
   <source>the nut's front face</source>
   <translation>die Vorderkante des Sattels</translation>
  </message>
  <message>
   <source>the nut's front face and the frets disagree by {} mm about where the scale begins.</source>
   <translation>Vorderkante des Sattels und Bünde sind um {} mm uneins, wo die Mensur beginnt.</translation>
  </message>
  <message>
   <source>the other is met</source>
   <translation>die andere erfüllt ist</translation>
  </message>
  <message>
   <source>the others are met</source>
   <translation>die anderen erfüllt sind</translation>
  </message>
  <message>
   <source>the overhang does not interfere</source>
   <translation>der Überstand stößt nicht an</translation>
  </message>
  <message>
   <source>the overhang does not reach the plate</source>
   <translation>der Überstand reicht nicht bis zum Schlagbrett</translation>
  </message>
  <message>
   <source>the overhang has no level underside; measure it by caliper.</source>
   <translation>der Überstand hat keine ebene Unterseite; sie mit dem Messschieber messen.</translation>
  </message>
  <message>
   <source>the overhang's underside has several levels, {} and {} mm above the heel's bottom; which one is it?</source>
   <translation>die Unterseite des Überstands hat mehrere Höhen, {} und {} mm über der Unterseite des Halsfußes; welche ist es?</translation>
  </message>
  <message>
   <source>the overhang's underside is not parallel to the heel's bottom: it rises or falls {} mm.</source>
   <translation>die Unterseite des Überstands liegt nicht parallel zur Unterseite des Halsfußes: sie steigt oder fällt um {} mm.</translation>
  </message>
  <message>
   <source>the owner's room</source>
   <translation>der Raum des Besitzers</translation>
  </message>
  <message>
   <source>the package for the shop is in {}</source>
   <translation>das Paket für die Werkstatt liegt in {}</translation>
  </message>
  <message>
   <source>the parts overlap by {} mm and the kernel finds no common volume</source>
   <translation>die Teile überschneiden sich um {} mm, und der Geometriekern findet kein gemeinsames Volumen</translation>
  </message>
  <message>
   <source>the plate runs under the fretboard's overhang</source>
   <translation>das Schlagbrett läuft unter den Überstand des Griffbretts</translation>
  </message>
  <message>
   <source>the pocket has no side wall there</source>
   <translation>die Tasche hat dort keine Seitenwand</translation>
  </message>
  <message>
   <source>the pocket's end is neither straight nor an arc</source>
   <translation>das Ende der Tasche ist weder gerade noch ein Bogen</translation>
  </message>
  <message>
   <source>the pocket's floor has no fillet</source>
   <translation>der Boden der Tasche hat keine Kehle</translation>
  </message>
  <message>
   <source>the range of the {} from {} to {} {} is empty or lies outside what is permitted; state the smaller first.</source>
   <translation>der Bereich von {} von {} bis {} {} ist leer oder liegt außerhalb des Erlaubten; den kleineren Wert zuerst angeben.</translation>
  </message>
  <message>
   <source>the round channel along the neck</source>
   <translation>der runde Kanal längs des Halses</translation>
  </message>
  <message>
   <source>the round channel's axis</source>
   <translation>die Achse des runden Kanals</translation>
  </message>
  <message>
   <source>the round end's middle lies {} mm beside the centreline; which of the two is right?</source>
   <translation>die Mitte des runden Endes liegt {} mm neben der Mittellinie; was von beiden ist richtig?</translation>
  </message>
  <message>
   <source>the saddles are set one by one</source>
   <translation>die Saitenreiter werden einzeln eingestellt</translation>
  </message>
  <message>
   <source>the strings rest on a fret at the nut</source>
   <translation>die Saiten liegen am Sattel auf einem Bund auf</translation>
  </message>
  <message>
   <source>the strips that hang along the overhang's edges</source>
   <translation>die Streifen, die an den Kanten des Überstands hängen</translation>
  </message>
  <message>
   <source>the table of ISO 2768-1 gives no {} of {} {} in class {}</source>
   <translation>die Tabelle von ISO 2768-1 gibt zu „{}“ nichts für {} {} in der Klasse {}</translation>
  </message>
  <message>
   <source>the table of ISO 286-1 kept here gives no {} for {} mm</source>
   <translation>die hier geführte Tabelle von ISO 286-1 gibt kein {} für {} mm</translation>
  </message>
  <message>
   <source>the tool's path ends before the end wall</source>
   <translation>der Weg des Werkzeugs endet vor der Stirnwand</translation>
  </message>
  <message>
   <source>the top's crest lies {} mm beside the centreline at the heel's end</source>
   <translation>der Scheitel der Oberseite liegt am Ende des Halsfußes {} mm neben der Mittellinie</translation>
  </message>
  <message>
   <source>there is neither a cover plate nor a pickup ring</source>
   <translation>es gibt weder Schlagbrett noch Tonabnehmerrahmen</translation>
  </message>
  <message>
   <source>there is no clash to take the volume of</source>
   <translation>es gibt keine Überschneidung, deren Volumen zu nehmen wäre</translation>
  </message>
  <message>
   <source>there is no {}</source>
   <translation>es fehlt: {}</translation>
  </message>
  <message>
   <source>thickness of a flat shim</source>
   <translation>Dicke einer gleichmäßig dicken Beilage</translation>
  </message>
  <message>
   <source>thickness of the body, back to top, at the pocket's end wall</source>
   <translation>Dicke des Korpus, Rückseite bis Decke, an der Stirnwand der Tasche</translation>
  </message>
  <message>
   <source>thickness of the cover plate</source>
   <translation>Dicke des Schlagbretts</translation>
  </message>
  <message>
   <source>thickness of the neck plate</source>
   <translation>Dicke der Halsplatte</translation>
  </message>
  <message>
   <source>thickness of the neck's shaft, fretboard included, beyond the heel</source>
   <translation>Dicke des Halses mit Griffbrett jenseits des Halsfußes</translation>
  </message>
  <message>
   <source>thinner plate</source>
   <translation>dünneres Schlagbrett</translation>
  </message>
  <message>
   <source>this picture is no PNG</source>
   <translation>dieses Bild ist kein PNG</translation>
  </message>
  <message>
   <source>this picture is no PNG of plain red, green and blue</source>
   <translation>dieses Bild ist kein PNG aus reinem Rot, Grün und Blau</translation>
  </message>
  <message>
   <source>tilt of the floor; positive tips the headstock back</source>
   <translation>Neigung des Bodens; positiv kippt die Kopfplatte zurück</translation>
  </message>
  <message>
   <source>tolerance class {} is none of f, m, c and v of ISO 2768-1</source>
   <translation>Toleranzklasse {} ist keine von f, m, c und v nach ISO 2768-1</translation>
  </message>
  <message>
   <source>too little</source>
   <translation>zu wenig</translation>
  </message>
  <message>
   <source>too little, too much</source>
   <translation>zu wenig, zu viel</translation>
  </message>
  <message>
   <source>too much</source>
   <translation>zu viel</translation>
  </message>
  <message>
   <source>too much by {}</source>
   <translation>zu viel um {}</translation>
  </message>
  <message>
   <source>tool disagrees</source>
   <translation>Widerspruch</translation>
  </message>
  <message>
   <source>tool to the truss rod</source>
   <translation>Werkzeug zum Halsstab</translation>
  </message>
  <message>
   <source>top</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>touches</source>
   <translation>berührt</translation>
  </message>
  <message>
   <source>touches, worth a look</source>
   <translation>berührt, ansehen</translation>
  </message>
  <message>
   <source>touching</source>
   <translation>berühren</translation>
  </message>
  <message>
   <source>treble side</source>
   <translation>Diskantseite</translation>
  </message>
  <message>
   <source>triangular</source>
   <translation>dreieckig</translation>
  </message>
  <message>
   <source>tried</source>
   <translation>versucht</translation>
  </message>
  <message>
   <source>two of its solids overlap by {} cm³, about {} mm deep; measures across both may be off by as much</source>
   <translation>zwei seiner Volumenkörper überschneiden sich um {} cm³, etwa {} mm tief; Maße über beide hinweg können um ebenso viel abweichen</translation>
  </message>
  <message>
   <source>two options are called {}; rename one of them.</source>
   <translation>zwei Varianten heißen {}; eine davon umbenennen.</translation>
  </message>
  <message>
   <source>u_h: nut's front face to heel end on the centreline</source>
   <translation>u_h: Vorderkante des Sattels bis Ende des Halsfußes auf der Mittellinie</translation>
  </message>
  <message>
   <source>uniform</source>
   <translation>gleichverteilt</translation>
  </message>
  <message>
   <source>unit of bare numbers in the file and of what is shown</source>
   <translation>Einheit bloßer Zahlen in der Datei und in der Anzeige</translation>
  </message>
  <message>
   <source>use a decimal point and {}</source>
   <translation>einen Dezimalpunkt verwenden und {}</translation>
  </message>
  <message>
   <source>usual pocket, 5/8 in</source>
   <translation>übliche Tasche, 5/8 in</translation>
  </message>
  <message>
   <source>values measured after routing</source>
   <translation>nach dem Fräsen gemessenen Werten</translation>
  </message>
  <message>
   <source>verdict</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <source>waits for the solids</source>
   <translation>wartet auf die Volumenkörper</translation>
  </message>
  <message>
   <source>wanted: at least {}</source>
   <translation>gewünscht: mindestens {}</translation>
  </message>
  <message>
   <source>wanted: at most {}</source>
   <translation>gewünscht: höchstens {}</translation>
  </message>
  <message>
   <source>wanted: none</source>
   <translation>gewünscht: keine</translation>
  </message>
  <message>
   <source>wanted: {} to {}</source>
   <translation>gewünscht: {} bis {}</translation>
  </message>
  <message>
   <source>wedge</source>
   <translation>Keil</translation>
  </message>
  <message>
   <source>wedge, thick at the end wall</source>
   <translation>Keil, dick an der Stirnwand</translation>
  </message>
  <message>
   <source>what comes out</source>
   <translation>was herauskommt</translation>
  </message>
  <message>
   <source>what is stated</source>
   <translation>was angegeben ist</translation>
  </message>
  <message>
   <source>what its height is set from: top, cover plate or cavity floor</source>
   <translation>woran seine Höhe eingestellt wird: Decke, Schlagbrett oder Boden des Hohlraums</translation>
  </message>
  <message>
   <source>what matters</source>
   <translation>was zählt</translation>
  </message>
  <message>
   <source>what the shop calls this joint</source>
   <translation>wie die Werkstatt diese Verbindung nennt</translation>
  </message>
  <message>
   <source>what was taken for the fretboard's top begins {} mm from the heel's end, and a nut lies far before it; pick the top's faces.</source>
   <translation>was für die Oberseite des Griffbretts gehalten wurde, beginnt {} mm vom Ende des Halsfußes, und ein Sattel liegt weit davor; die Flächen der Oberseite wählen.</translation>
  </message>
  <message>
   <source>when cut</source>
   <translation>beim Fräsen</translation>
  </message>
  <message>
   <source>where every demand holds</source>
   <translation>wo jede Forderung erfüllt ist</translation>
  </message>
  <message>
   <source>where the outline comes from: this workbench, points, a file, or a section of a solid</source>
   <translation>woher der Umriss kommt: aus dieser Arbeitsumgebung, aus Punkten, einer Datei oder dem Schnitt eines Volumenkörpers</translation>
  </message>
  <message>
   <source>where the truss rod is adjusted</source>
   <translation>wo der Halsstab eingestellt wird</translation>
  </message>
  <message>
   <source>whole number</source>
   <translation>ganze Zahl</translation>
  </message>
  <message>
   <source>width of the binding along each edge; 0 for none</source>
   <translation>Breite der Einfassung an jeder Kante; 0 für keine</translation>
  </message>
  <message>
   <source>width of the bridge's base</source>
   <translation>Breite der Grundplatte der Brücke</translation>
  </message>
  <message>
   <source>width of the fret crowns</source>
   <translation>Breite der Bundkronen</translation>
  </message>
  <message>
   <source>width of the hanging strips</source>
   <translation>Breite der hängenden Streifen</translation>
  </message>
  <message>
   <source>width of the neck plate</source>
   <translation>Breite der Halsplatte</translation>
  </message>
  <message>
   <source>width of the pocket at the end wall</source>
   <translation>Breite der Tasche an der Stirnwand</translation>
  </message>
  <message>
   <source>width of the pocket at the mouth</source>
   <translation>Breite der Tasche an der Mündung</translation>
  </message>
  <message>
   <source>width of the truss-rod channel</source>
   <translation>Breite des Halsstabkanals</translation>
  </message>
  <message>
   <source>wish: strings over the top under the hand, least</source>
   <translation>Wunsch: Saiten über der Decke unter der Hand, mindestens</translation>
  </message>
  <message>
   <source>withdrawal capacity over need, screws</source>
   <translation>Ausziehwiderstand über Bedarf, Schrauben</translation>
  </message>
  <message>
   <source>withdrawal capacity per handbook divided by this</source>
   <translation>Ausziehwiderstand nach Handbuch, geteilt durch diesen Wert</translation>
  </message>
  <message>
   <source>within the window</source>
   <translation>innerhalb des Fensters</translation>
  </message>
  <message>
   <source>wood and fretboard are solids of their own</source>
   <translation>Holz und Griffbrett sind je eigene Volumenkörper</translation>
  </message>
  <message>
   <source>wood between old and new pilot holes</source>
   <translation>Holz zwischen alten und neuen Vorbohrungen</translation>
  </message>
  <message>
   <source>wood between pocket and cavity</source>
   <translation>Holz zwischen Tasche und Hohlraum</translation>
  </message>
  <message>
   <source>wood between pocket and cutaway, bass</source>
   <translation>Holz zwischen Tasche und Cutaway, Bass</translation>
  </message>
  <message>
   <source>wood between pocket and cutaway, treble</source>
   <translation>Holz zwischen Tasche und Cutaway, Diskant</translation>
  </message>
  <message>
   <source>wood body</source>
   <translation>Korpusholz</translation>
  </message>
  <message>
   <source>wood body ring</source>
   <translation>Jahresringe, Korpus</translation>
  </message>
  <message>
   <source>wood moisture cut</source>
   <translation>Holzfeuchte beim Fräsen</translation>
  </message>
  <message>
   <source>wood neck</source>
   <translation>Halsholz</translation>
  </message>
  <message>
   <source>wood neck ring</source>
   <translation>Jahresringe, Hals</translation>
  </message>
  <message>
   <source>wood of the body, as named in the table of woods</source>
   <translation>Holz des Korpus, wie in der Tabelle der Hölzer benannt</translation>
  </message>
  <message>
   <source>wood of the neck</source>
   <translation>Holz des Halses</translation>
  </message>
  <message>
   <source>wood screw</source>
   <translation>Holzschraube</translation>
  </message>
  <message>
   <source>wood screws, or machine screws into threaded inserts</source>
   <translation>Holzschrauben, oder Maschinenschrauben in Gewindeeinsätzen</translation>
  </message>
  <message>
   <source>wood under the pocket</source>
   <translation>Holz unter der Tasche</translation>
  </message>
  <message>
   <source>worked out from other parameters unless stated</source>
   <translation>ohne Angabe aus anderen Parametern berechnet</translation>
  </message>
  <message>
   <source>worked out from {}</source>
   <translation>berechnet aus: {}</translation>
  </message>
  <message>
   <source>worst</source>
   <translation>Grenzfall</translation>
  </message>
  <message>
   <source>worst:  the same with every dimension at its worse limit at once</source>
   <translation>Grenzfall: dasselbe, wenn jedes Maß zugleich an seiner schlechteren Grenze liegt</translation>
  </message>
  <message>
   <source>worth a look</source>
   <translation>ansehen</translation>
  </message>
  <message>
   <source>write a choice such as "round"</source>
   <translation>eine Auswahl wie "round" schreiben</translation>
  </message>
  <message>
   <source>write a force such as 75 N or 17 lbf</source>
   <translation>eine Kraft wie 75 N oder 17 lbf schreiben</translation>
  </message>
  <message>
   <source>write a frequency such as 82.41 Hz</source>
   <translation>eine Frequenz wie 82.41 Hz schreiben</translation>
  </message>
  <message>
   <source>write a length such as 15.875 mm or 5/8 in</source>
   <translation>eine Länge wie 15.875 mm oder 5/8 in schreiben</translation>
  </message>
  <message>
   <source>write a list of points such as [[0, 0], [80, 0], [80, 60]]</source>
   <translation>eine Liste von Punkten wie [[0, 0], [80, 0], [80, 60]] schreiben</translation>
  </message>
  <message>
   <source>write a mass per length such as 0.4 g/m</source>
   <translation>eine Masse je Länge wie 0.4 g/m schreiben</translation>
  </message>
  <message>
   <source>write a moisture content such as 8 %</source>
   <translation>eine Holzfeuchte wie 8 % schreiben</translation>
  </message>
  <message>
   <source>write a number without a unit such as 1.5</source>
   <translation>eine Zahl ohne Einheit wie 1.5 schreiben</translation>
  </message>
  <message>
   <source>write a pair such as [80, 60]</source>
   <translation>ein Paar wie [80, 60] schreiben</translation>
  </message>
  <message>
   <source>write a path of a file such as "outline.dxf"</source>
   <translation>den Pfad einer Datei wie "outline.dxf" schreiben</translation>
  </message>
  <message>
   <source>write a pressure such as 101.3 kPa</source>
   <translation>einen Druck wie 101.3 kPa schreiben</translation>
  </message>
  <message>
   <source>write a relative humidity such as 45 %</source>
   <translation>eine relative Luftfeuchte wie 45 % schreiben</translation>
  </message>
  <message>
   <source>write a temperature such as 20 °C or 68 °F</source>
   <translation>eine Temperatur wie 20 °C oder 68 °F schreiben</translation>
  </message>
  <message>
   <source>write a text such as "walnut body"</source>
   <translation>einen Text wie "walnut body" schreiben</translation>
  </message>
  <message>
   <source>write a whole number such as 21</source>
   <translation>eine ganze Zahl wie 21 schreiben</translation>
  </message>
  <message>
   <source>write a yes-or-no value such as true or false</source>
   <translation>einen Ja-Nein-Wert wie true oder false schreiben</translation>
  </message>
  <message>
   <source>write an angle such as 1.5 deg or 1°30'</source>
   <translation>einen Winkel wie 1.5 deg oder 1°30' schreiben</translation>
  </message>
  <message>
   <source>write at most {}</source>
   <translation>höchstens {} schreiben</translation>
  </message>
  <message>
   <source>write it in one line</source>
   <translation>in eine Zeile schreiben</translation>
  </message>
  <message>
   <source>write it without them</source>
   <translation>ohne sie schreiben</translation>
  </message>
  <message>
   <source>write three points or more</source>
   <translation>drei oder mehr Punkte schreiben</translation>
  </message>
  <message>
   <source>write {}</source>
   <translation>{} schreiben</translation>
  </message>
  <message>
   <source>x of an old pilot hole in the heel, from the heel end (neck frame, negative)</source>
   <translation>x einer alten Vorbohrung im Halsfuß, ab Ende des Halsfußes (Koordinatensystem des Halses, negativ)</translation>
  </message>
  <message>
   <source>y of an old pilot hole in the heel</source>
   <translation>y einer alten Vorbohrung im Halsfuß</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>yes-or-no value</source>
   <translation>Ja-Nein-Wert</translation>
  </message>
  <message>
   <source>{} (the shop's)</source>
   <translation>{} (Werkstatt)</translation>
  </message>
  <message>
   <source>{} at best where {}</source>
   <translation>bestenfalls {}, wo {}</translation>
  </message>
  <message>
   <source>{} cannot be picked; {} can.</source>
   <translation>{} lässt sich nicht wählen; wählbar: {}.</translation>
  </message>
  <message>
   <source>{} cannot be read ({}); check its name and its permissions.</source>
   <translation>{} ist nicht lesbar ({}); Name und Berechtigungen prüfen.</translation>
  </message>
  <message>
   <source>{} cannot be written ({}); choose a folder that exists and that you may write to.</source>
   <translation>{} lässt sich nicht schreiben ({}); einen vorhandenen Ordner mit Schreibrecht wählen.</translation>
  </message>
  <message>
   <source>{} cannot be written ({}); choose a folder whose parent exists and that you may write to.</source>
   <translation>{} lässt sich nicht schreiben ({}); einen Ordner wählen, dessen übergeordneter Ordner vorhanden ist und Schreibrecht hat.</translation>
  </message>
  <message>
   <source>{} cannot be written ({}); free some space or choose another folder.</source>
   <translation>{} lässt sich nicht schreiben ({}); Platz schaffen oder einen anderen Ordner wählen.</translation>
  </message>
  <message>
   <source>{} could not be written; choose another folder.</source>
   <translation>{} ließ sich nicht schreiben; einen anderen Ordner wählen.</translation>
  </message>
  <message>
   <source>{} deep</source>
   <translation>{} tief</translation>
  </message>
  <message>
   <source>{} deep, at x {} and y {} from the middle of the heel's end.</source>
   <translation>{} tief, bei x {} und y {} ab Mitte des Halsfußendes.</translation>
  </message>
  <message>
   <source>{} does not run along Z</source>
   <translation>{} läuft nicht längs Z</translation>
  </message>
  <message>
   <source>{} faces</source>
   <translation>{} Flächen</translation>
  </message>
  <message>
   <source>{} faces could be the pocket's floor; {}.</source>
   <translation>{} Flächen könnten der Boden der Tasche sein; {}.</translation>
  </message>
  <message>
   <source>{} faces that belong to no solid were left out</source>
   <translation>{} Flächen, die zu keinem Volumenkörper gehören, wurden weggelassen</translation>
  </message>
  <message>
   <source>{} frets were found, but no scale that begins where the fretboard does</source>
   <translation>{} Bünde wurden gefunden, aber keine Mensur, die am Anfang des Griffbretts beginnt</translation>
  </message>
  <message>
   <source>{} frets were found, but they stray {} mm from equal temperament</source>
   <translation>{} Bünde wurden gefunden, aber sie weichen um {} mm von der gleichstufigen Stimmung ab</translation>
  </message>
  <message>
   <source>{} from {} to ±{}: {} fail</source>
   <translation>{} von {} auf ±{}: {} versagen</translation>
  </message>
  <message>
   <source>{} has no cylinder to be its shank</source>
   <translation>{} hat keinen Zylinder als Schaft</translation>
  </message>
  <message>
   <source>{} has no file yet; save it first.</source>
   <translation>{} hat noch keine Datei; zuerst speichern.</translation>
  </message>
  <message>
   <source>{} has no limits to spread between; leave its spread out.</source>
   <translation>{} hat keine Grenzen, zwischen denen es streut; die Streuung weglassen.</translation>
  </message>
  <message>
   <source>{} has no option {} ({}); correct the name.</source>
   <translation>{} hat keine Variante {} ({}); den Namen berichtigen.</translation>
  </message>
  <message>
   <source>{} has no {} in it yet; save the document.</source>
   <translation>{} enthält noch nichts dieser Art: {}; das Dokument speichern.</translation>
  </message>
  <message>
   <source>{} holds a former package and {}, which would be lost; move that away or name another folder.</source>
   <translation>{} enthält ein früheres Paket und {}, was verloren ginge; dies verschieben oder einen anderen Ordner nennen.</translation>
  </message>
  <message>
   <source>{} holds a former package. Replace it?</source>
   <translation>{} enthält ein früheres Paket. Ersetzen?</translation>
  </message>
  <message>
   <source>{} holds a former package; say that it is to be replaced (--replace), or name another folder.</source>
   <translation>{} enthält ein früheres Paket; angeben, dass es ersetzt werden soll (--replace), oder einen anderen Ordner nennen.</translation>
  </message>
  <message>
   <source>{} holds files that are no package of this tool; name another folder.</source>
   <translation>{} enthält Dateien, die kein Paket dieses Programms sind; einen anderen Ordner nennen.</translation>
  </message>
  <message>
   <source>{} holds the joint itself; pick the solid within it, or take the joint out of it.</source>
   <translation>{} enthält die Verbindung selbst; den Volumenkörper darin wählen, oder die Verbindung herausnehmen.</translation>
  </message>
  <message>
   <source>{} in {} to {} in {}</source>
   <translation>{} im {} bis {} im {}</translation>
  </message>
  <message>
   <source>{} is NeckFit's own; adopt a solid of yours.</source>
   <translation>{} gehört NeckFit selbst; einen eigenen Volumenkörper übernehmen.</translation>
  </message>
  <message>
   <source>{} is a FreeCAD document, which only FreeCAD can read; run the check with solids, or save the outline as DXF.</source>
   <translation>{} ist ein FreeCAD-Dokument, das nur FreeCAD lesen kann; die Prüfung mit Volumenkörpern ausführen, oder den Umriss als DXF speichern.</translation>
  </message>
  <message>
   <source>{} is a file; name a folder that does not exist yet.</source>
   <translation>{} ist eine Datei; einen Ordner nennen, den es noch nicht gibt.</translation>
  </message>
  <message>
   <source>{} is a folder; name a file to write to.</source>
   <translation>{} ist ein Ordner; eine Datei zum Schreiben nennen.</translation>
  </message>
  <message>
   <source>{} is a folder; name a file.</source>
   <translation>{} ist ein Ordner; eine Datei nennen.</translation>
  </message>
  <message>
   <source>{} is a table of {}; write {value = …, limits = "±0.1 mm"} or one plain value.</source>
   <translation>{} ist eine Tabelle mit {}; {value = …, limits = "±0.1 mm"} oder einen einfachen Wert schreiben.</translation>
  </message>
  <message>
   <source>{} is driven by the expression {}; change it there.</source>
   <translation>{} wird vom Ausdruck {} bestimmt; dort ändern.</translation>
  </message>
  <message>
   <source>{} is empty; write a name that tells it from the others.</source>
   <translation>{} ist leer; einen Namen schreiben, der es von den anderen unterscheidet.</translation>
  </message>
  <message>
   <source>{} is larger than {} MB; name a smaller file.</source>
   <translation>{} ist größer als {} MB; eine kleinere Datei nennen.</translation>
  </message>
  <message>
   <source>{} is missing; state the {}.</source>
   <translation>{} fehlt; {} angeben.</translation>
  </message>
  <message>
   <source>{} is no DXF drawing that can be read ({}); save it again as DXF.</source>
   <translation>{} ist keine lesbare DXF-Zeichnung ({}); erneut als DXF speichern.</translation>
  </message>
  <message>
   <source>{} is no axis of a window; write one of {}.</source>
   <translation>{} ist keine Achse eines Fensters; eine von {} schreiben.</translation>
  </message>
  <message>
   <source>{} is no dimension of a joint; see the table of parameters.</source>
   <translation>{} ist kein Maß einer Verbindung; siehe die Tabelle der Parameter.</translation>
  </message>
  <message>
   <source>{} is no face or edge of the solid; pick one.</source>
   <translation>{} ist weder Fläche noch Kante des Volumenkörpers; eine wählen.</translation>
  </message>
  <message>
   <source>{} is no group of parameters ({}); correct the name.</source>
   <translation>{} ist keine Gruppe von Parametern ({}); den Namen berichtigen.</translation>
  </message>
  <message>
   <source>{} is no list of tables; write [[{}]] above each.</source>
   <translation>{} ist keine Liste von Tabellen; [[{}]] über jede schreiben.</translation>
  </message>
  <message>
   <source>{} is no ordinary file; name a file on a disk.</source>
   <translation>{} ist keine gewöhnliche Datei; eine Datei auf einem Datenträger nennen.</translation>
  </message>
  <message>
   <source>{} is no parameter{}; correct the name or leave it out.</source>
   <translation>{} ist kein Parameter{}; den Namen berichtigen oder weglassen.</translation>
  </message>
  <message>
   <source>{} is no part of a joint; the parts are {}.</source>
   <translation>{} ist kein Teil einer Verbindung; die Teile sind {}.</translation>
  </message>
  <message>
   <source>{} is not UTF-8 text (byte {}); save it as UTF-8.</source>
   <translation>{} ist kein UTF-8-Text (Byte {}); als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>{} is not UTF-8 text; save it as UTF-8.</source>
   <translation>{} ist kein UTF-8-Text; als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>{} is stated but empty; state its values, or leave it worked out.</source>
   <translation>{} ist angegeben, aber leer; die Werte angeben, oder es berechnen lassen.</translation>
  </message>
  <message>
   <source>{} is {}, no table; write [{}] above it.</source>
   <translation>{} ist {}, keine Tabelle; [{}] darüber schreiben.</translation>
  </message>
  <message>
   <source>{} loose faces were sewn into {} solid(s)</source>
   <translation>{} lose Flächen wurden zu {} Volumenkörper(n) vernäht</translation>
  </message>
  <message>
   <source>{} more</source>
   <translation>{} weitere</translation>
  </message>
  <message>
   <source>{} more: outside this view, or no room</source>
   <translation>{} weitere: außerhalb dieser Ansicht, oder kein Platz</translation>
  </message>
  <message>
   <source>{} names {}, which the table of woods does not have ({})</source>
   <translation>{} nennt {}, was die Tabelle der Hölzer nicht enthält ({})</translation>
  </message>
  <message>
   <source>{} nests its tables or lists too deeply; make them flat.</source>
   <translation>{} verschachtelt seine Tabellen oder Listen zu tief; sie flach machen.</translation>
  </message>
  <message>
   <source>{} of joints fail</source>
   <translation>{} der Verbindungen versagen</translation>
  </message>
  <message>
   <source>{} of joints fail (95 % confidence: {} to {}; {} draws, seed {})</source>
   <translation>{} der Verbindungen versagen (95 % Vertrauensbereich: {} bis {}; {} Ziehungen, Startzahl {})</translation>
  </message>
  <message>
   <source>{} of option {} is no list of parameters; write it as ["neck.overhang"].</source>
   <translation>{} der Variante {} ist keine Liste von Parametern; als ["neck.overhang"] schreiben.</translation>
  </message>
  <message>
   <source>{} of option {} names {}, no parameter{}; correct the name.</source>
   <translation>{} der Variante {} nennt {}, keinen Parameter{}; den Namen berichtigen.</translation>
  </message>
  <message>
   <source>{} of {} joints drawn</source>
   <translation>{} von {} Verbindungen gezogen</translation>
  </message>
  <message>
   <source>{} options are too many; state at most {}.</source>
   <translation>{} Varianten sind zu viele; höchstens {} angeben.</translation>
  </message>
  <message>
   <source>{} or {}</source>
   <translation>{} oder {}</translation>
  </message>
  <message>
   <source>{} over</source>
   <translation>{} zu viel</translation>
  </message>
  <message>
   <source>{} package</source>
   <translation>{} Werkstattpaket</translation>
  </message>
  <message>
   <source>{} pickup</source>
   <translation>{} Tonabnehmer</translation>
  </message>
  <message>
   <source>{} questions are open</source>
   <translation>{} Fragen sind offen</translation>
  </message>
  <message>
   <source>{} short</source>
   <translation>{} zu wenig</translation>
  </message>
  <message>
   <source>{} through the year</source>
   <translation>{} übers Jahr</translation>
  </message>
  <message>
   <source>{} to spare</source>
   <translation>{} Luft</translation>
  </message>
  <message>
   <source>{} to {}</source>
   <translation>{} bis {}</translation>
  </message>
  <message>
   <source>{} values, {} to {}</source>
   <translation>{} Werte, {} bis {}</translation>
  </message>
  <message>
   <source>{} was made by a newer NeckFit (schema {}, this one knows up to {}); update NeckFit.</source>
   <translation>{} stammt von einem neueren NeckFit (Schema {}, dieses kennt bis {}); NeckFit aktualisieren.</translation>
  </message>
  <message>
   <source>{} × [[{}]] are too many; state at most {}.</source>
   <translation>{} × [[{}]] sind zu viele; höchstens {} angeben.</translation>
  </message>
  <message>
   <source>{}); make it smaller.</source>
   <translation>{}); den Wert kleiner machen.</translation>
  </message>
  <message>
   <source>{}, which fan out, under strings as far apart as the job states</source>
   <translation>{}, die sich auffächern, unter so weit gespreizten Saiten, wie der Auftrag angibt</translation>
  </message>
  <message>
   <source>{}.Adopted links {}, which has no solid; mend it or link another.</source>
   <translation>{}.Adopted verknüpft {}, das keinen Volumenkörper hat; es berichtigen oder ein anderes verknüpfen.</translation>
  </message>
  <message>
   <source>{}.CoordinateSystem links nothing; link one, or pick faces.</source>
   <translation>{}.CoordinateSystem verknüpft nichts; eines verknüpfen, oder Flächen wählen.</translation>
  </message>
  <message>
   <source>{}.from is empty; name a part file, or leave it out.</source>
   <translation>{}.from ist leer; eine Teiledatei nennen oder weglassen.</translation>
  </message>
  <message>
   <source>{}.from names {}, which says nothing of [{}]; name another file, or state [{}] there.</source>
   <translation>{}.from nennt {}, das nichts zu [{}] sagt; eine andere Datei nennen, oder [{}] dort angeben.</translation>
  </message>
  <message>
   <source>{}.{} links nothing; link a {}.</source>
   <translation>{}.{} verknüpft nichts; verknüpfen: {}.</translation>
  </message>
  <message>
   <source>{}.{} links {}, which is no {}; link one.</source>
   <translation>{}.{} verknüpft {}, falscher Art; verknüpft werden muss: {}.</translation>
  </message>
  <message>
   <source>{}: FreeCAD cannot open it; save it again as a document.</source>
   <translation>{}: FreeCAD kann es nicht öffnen; erneut als Dokument speichern.</translation>
  </message>
  <message>
   <source>{}: FreeCAD wrote a broken document; is the disk full?</source>
   <translation>{}: FreeCAD hat ein beschädigtes Dokument geschrieben; ist der Datenträger voll?</translation>
  </message>
  <message>
   <source>{}: FreeCAD wrote no document; is the disk full?</source>
   <translation>{}: FreeCAD hat kein Dokument geschrieben; ist der Datenträger voll?</translation>
  </message>
  <message>
   <source>{}: FreeCAD wrote no whole STEP file; is the disk full?</source>
   <translation>{}: FreeCAD hat keine vollständige STEP-Datei geschrieben; ist der Datenträger voll?</translation>
  </message>
  <message>
   <source>{}: a depth of {} mm goes through the body; make it shallower.</source>
   <translation>{}: eine Tiefe von {} mm geht durch den Korpus; flacher machen.</translation>
  </message>
  <message>
   <source>{}: a round end of radius {} mm does not meet sides {} mm apart; make the radius larger, or the mouth narrower.</source>
   <translation>{}: ein rundes Ende mit Radius {} mm trifft Seiten im Abstand von {} mm nicht; den Radius größer oder die Mündung schmaler machen.</translation>
  </message>
  <message>
   <source>{}: a series runs along {}.</source>
   <translation>{}: eine Reihe läuft längs {}.</translation>
  </message>
  <message>
   <source>{}: a solid is not valid; let Part's Check Geometry show where, and mend it.</source>
   <translation>{}: ein Volumenkörper ist ungültig; mit „Geometrie überprüfen“ von Part die Stelle suchen und sie berichtigen.</translation>
  </message>
  <message>
   <source>{}: cannot be read ({}); name another file.</source>
   <translation>{}: nicht lesbar ({}); eine andere Datei nennen.</translation>
  </message>
  <message>
   <source>{}: cannot be read as {}; it is broken or of another kind: save it again.</source>
   <translation>{}: nicht lesbar als {}; die Datei ist beschädigt oder von anderer Art: erneut speichern.</translation>
  </message>
  <message>
   <source>{}: cannot be written ({}); choose a folder that exists and that you may write to.</source>
   <translation>{}: lässt sich nicht schreiben ({}); einen vorhandenen Ordner mit Schreibrecht wählen.</translation>
  </message>
  <message>
   <source>{}: click the right face in the 3D view; with Ctrl one more, or one less.</source>
   <translation>{}: die richtige Fläche in der 3D-Ansicht anklicken; mit Strg eine mehr oder eine weniger.</translation>
  </message>
  <message>
   <source>{}: corners of radius {} mm do not fit an end {} mm wide; make the radius smaller.</source>
   <translation>{}: Ecken mit Radius {} mm passen nicht an ein {} mm breites Ende; den Radius kleiner machen.</translation>
  </message>
  <message>
   <source>{}: corners of radius {} mm do not fit its sides; make them smaller.</source>
   <translation>{}: Ecken mit Radius {} mm passen nicht an seine Seiten; sie kleiner machen.</translation>
  </message>
  <message>
   <source>{}: holds no solid, only curves or points; save the neck as a solid.</source>
   <translation>{}: enthält keinen Volumenkörper, nur Kurven oder Punkte; den Hals als Volumenkörper speichern.</translation>
  </message>
  <message>
   <source>{}: holds {} sketches; leave the outline's only.</source>
   <translation>{}: enthält {} Skizzen; nur die des Umrisses lassen.</translation>
  </message>
  <message>
   <source>{}: is not a neck, or its fretboard is missing: nothing on it is a fretboard's top, flat or evenly rounded, some 35 to 115 mm wide and more than 270 mm long.</source>
   <translation>{}: ist kein Hals, oder das Griffbrett fehlt: nichts daran ist die Oberseite eines Griffbretts, eben oder gleichmäßig gerundet, etwa 35 bis 115 mm breit und mehr als 270 mm lang.</translation>
  </message>
  <message>
   <source>{}: is not a neck, or its heel is incomplete: it has a surface like a fretboard's top, but no flat heel bottom 12 to 50 mm under its end.</source>
   <translation>{}: ist kein Hals, oder der Halsfuß ist unvollständig: eine Fläche wie die Oberseite eines Griffbretts ist da, aber keine ebene Unterseite des Halsfußes 12 bis 50 mm unter ihrem Ende.</translation>
  </message>
  <message>
   <source>{}: is not a neck, or not one alone: it is {} long, and a neck 450 to 900 mm{}.</source>
   <translation>{}: ist kein Hals, oder keiner für sich allein: er ist {} lang, ein Hals aber 450 bis 900 mm{}.</translation>
  </message>
  <message>
   <source>{}: is not a neck: {} is no neck's shape{}.</source>
   <translation>{}: ist kein Hals: {} ist nicht die Form eines Halses{}.</translation>
  </message>
  <message>
   <source>{}: it holds a point that is no place; draw the outline again.</source>
   <translation>{}: enthält einen Punkt ohne gültigen Ort; den Umriss neu zeichnen.</translation>
  </message>
  <message>
   <source>{}: it holds a {}; leave only the outline's lines, arcs, polylines, circles, splines and ellipses.</source>
   <translation>{}: enthält {}; nur Linien, Bögen, Polylinien, Kreise, Splines und Ellipsen des Umrisses lassen.</translation>
  </message>
  <message>
   <source>{}: it holds more than one closed outline; leave only the body's.</source>
   <translation>{}: enthält mehr als einen geschlossenen Umriss; nur den des Korpus lassen.</translation>
  </message>
  <message>
   <source>{}: it holds no outline; draw one closed outline.</source>
   <translation>{}: enthält keinen Umriss; einen geschlossenen Umriss zeichnen.</translation>
  </message>
  <message>
   <source>{}: its end</source>
   <translation>{}: sein Ende</translation>
  </message>
  <message>
   <source>{}: its mesh is open or its sides contradict each other along {} edges; close it in the program it comes from.</source>
   <translation>{}: das Netz ist offen oder seine Seiten widersprechen einander an {} Kanten; es im Ursprungsprogramm schließen.</translation>
  </message>
  <message>
   <source>{}: its outline lies {} mm above the drawing's plane; project it to Z = 0.</source>
   <translation>{}: der Umriss liegt {} mm über der Zeichenebene; ihn auf Z = 0 projizieren.</translation>
  </message>
  <message>
   <source>{}: its sides cross {} mm from the end; bring the widths at mouth and end closer together.</source>
   <translation>{}: die Seiten kreuzen sich {} mm vom Ende; die Breiten an Mündung und Ende einander annähern.</translation>
  </message>
  <message>
   <source>{}: its unit ($INSUNITS {}) is none of mm, cm, m, inch and foot; save it in mm.</source>
   <translation>{}: die Einheit ($INSUNITS {}) ist keine von mm, cm, m, Zoll und Fuß; in mm speichern.</translation>
  </message>
  <message>
   <source>{}: more than {} part files build on each other, or a job uses more than {}; use fewer.</source>
   <translation>{}: mehr als {} Teiledateien bauen aufeinander auf, oder ein Auftrag verwendet mehr als {}; weniger verwenden.</translation>
  </message>
  <message>
   <source>{}: no pocket was read from {}; mend it.</source>
   <translation>{}: aus {} wurde keine Tasche gelesen; dies beheben.</translation>
  </message>
  <message>
   <source>{}: not read within {} seconds; save the neck alone, without hardware and engraving.</source>
   <translation>{}: in {} Sekunden nicht gelesen; den Hals allein speichern, ohne Beschläge und Gravur.</translation>
  </message>
  <message>
   <source>{}: part has no key {}{}; correct or remove it.</source>
   <translation>{}: part hat keinen Schlüssel {}{}; berichtigen oder entfernen.</translation>
  </message>
  <message>
   <source>{}: part is {}, no table; write [part] above it.</source>
   <translation>{}: part ist {}, keine Tabelle; [part] darüber schreiben.</translation>
  </message>
  <message>
   <source>{}: reading DXF needs the Python package ezdxf; install python3-ezdxf (Debian) or ezdxf (pip).</source>
   <translation>{}: zum Lesen von DXF wird das Python-Paket ezdxf gebraucht; python3-ezdxf (Debian) oder ezdxf (pip) installieren.</translation>
  </message>
  <message>
   <source>{}: reading it brought FreeCAD's kernel down; save the neck again, as STEP.</source>
   <translation>{}: beim Lesen stürzte der Geometriekern von FreeCAD ab; den Hals erneut speichern, als STEP.</translation>
  </message>
  <message>
   <source>{}: reading was cancelled; nothing was changed.</source>
   <translation>{}: das Lesen wurde abgebrochen; nichts wurde geändert.</translation>
  </message>
  <message>
   <source>{}: states neither a bridge nor a pickup; name another part file.</source>
   <translation>{}: gibt weder Brücke noch Tonabnehmer an; eine andere Teiledatei nennen.</translation>
  </message>
  <message>
   <source>{}: the body's own pocket is larger than stated by {} mm ({}), and wood that is gone does not come back; state at least as much as was read from {}.</source>
   <translation>{}: die eigene Tasche des Korpus ist um {} mm größer als angegeben ({}), und fehlendes Holz kommt nicht zurück; mindestens so viel angeben, wie gelesen wurde aus: {}.</translation>
  </message>
  <message>
   <source>{}: the dimension {} is not printed; the sheet was not written.</source>
   <translation>{}: das Maß {} ist nicht gedruckt; das Blatt wurde nicht geschrieben.</translation>
  </message>
  <message>
   <source>{}: the file is empty; save the neck again.</source>
   <translation>{}: die Datei ist leer; den Hals erneut speichern.</translation>
  </message>
  <message>
   <source>{}: the findings are out of date; check the joint again.</source>
   <translation>{}: die Befunde sind veraltet; die Verbindung erneut prüfen.</translation>
  </message>
  <message>
   <source>{}: the first line must name {}.</source>
   <translation>{}: die erste Zeile muss {} nennen.</translation>
  </message>
  <message>
   <source>{}: the fretboard's long edges were not found; pick its top by hand.</source>
   <translation>{}: die Längskanten des Griffbretts wurden nicht gefunden; seine Oberseite von Hand wählen.</translation>
  </message>
  <message>
   <source>{}: the heel has no straight upright side at {} y; pick it by hand.</source>
   <translation>{}: der Halsfuß hat bei {} y keine gerade senkrechte Seite; sie von Hand wählen.</translation>
  </message>
  <message>
   <source>{}: the heel's end was not found; pick it by hand.</source>
   <translation>{}: das Ende des Halsfußes wurde nicht gefunden; es von Hand wählen.</translation>
  </message>
  <message>
   <source>{}: the joint does not fit a sheet {} even at 1:5.</source>
   <translation>{}: die Verbindung passt selbst in 1:5 nicht auf ein Blatt {}.</translation>
  </message>
  <message>
   <source>{}: the kernel made a solid that is not closed.</source>
   <translation>{}: der Geometriekern ergab einen Volumenkörper, der nicht geschlossen ist.</translation>
  </message>
  <message>
   <source>{}: the kernel made a solid that is not valid.</source>
   <translation>{}: der Geometriekern ergab einen ungültigen Volumenkörper.</translation>
  </message>
  <message>
   <source>{}: the kernel made a solid without volume.</source>
   <translation>{}: der Geometriekern ergab einen Körper ohne Volumen.</translation>
  </message>
  <message>
   <source>{}: the kernel made no single solid of the pocket's wood.</source>
   <translation>{}: der Geometriekern ergab aus dem Holz der Tasche keinen einzelnen Volumenkörper.</translation>
  </message>
  <message>
   <source>{}: the kernel made no solid.</source>
   <translation>{}: der Geometriekern ergab keinen Volumenkörper.</translation>
  </message>
  <message>
   <source>{}: the kernel made {} solids where the part is one.</source>
   <translation>{}: der Geometriekern ergab {} Volumenkörper, wo das Teil einer ist.</translation>
  </message>
  <message>
   <source>{}: the lower one lies above the upper one; change the other one first.</source>
   <translation>{}: die untere liegt über der oberen; zuerst die andere ändern.</translation>
  </message>
  <message>
   <source>{}: the outline crosses or touches itself near X = {}, Y = {} mm; part its lines there.</source>
   <translation>{}: der Umriss kreuzt oder berührt sich nahe X = {}, Y = {} mm; seine Linien dort trennen.</translation>
  </message>
  <message>
   <source>{}: the outline does not hold the pocket's end wall, {} mm wide at the origin; place it so that the end wall's middle is the origin and X points to the bridge.</source>
   <translation>{}: der Umriss fasst die Stirnwand der Tasche nicht, {} mm breit am Ursprung; ihn so legen, dass die Mitte der Stirnwand der Ursprung ist und X zur Brücke zeigt.</translation>
  </message>
  <message>
   <source>{}: the outline encloses no body; draw it round the pocket.</source>
   <translation>{}: der Umriss umschließt keinen Korpus; ihn um die Tasche zeichnen.</translation>
  </message>
  <message>
   <source>{}: the outline has a piece of {} mm near X = {}, Y = {} mm; leave it out.</source>
   <translation>{}: der Umriss hat ein Stück von {} mm nahe X = {}, Y = {} mm; es weglassen.</translation>
  </message>
  <message>
   <source>{}: the outline has more than {} pieces; draw it with fewer.</source>
   <translation>{}: der Umriss hat mehr als {} Stücke; ihn mit weniger zeichnen.</translation>
  </message>
  <message>
   <source>{}: the outline has too many curves; draw it with fewer.</source>
   <translation>{}: der Umriss hat zu viele Kurven; ihn mit weniger zeichnen.</translation>
  </message>
  <message>
   <source>{}: the outline reaches more than {} mm from the origin; place its end wall at the origin, and check its units.</source>
   <translation>{}: der Umriss reicht weiter als {} mm vom Ursprung; seine Stirnwand an den Ursprung legen und seine Einheiten prüfen.</translation>
  </message>
  <message>
   <source>{}: the outline {} at X = {}, Y = {} mm; make it one closed loop.</source>
   <translation>{}: der Umriss {} bei X = {}, Y = {} mm; ihn zu einer geschlossenen Linie machen.</translation>
  </message>
  <message>
   <source>{}: the outline's front crosses the centreline {}, but pocket.length puts the mouth at X = {} mm; make them agree.</source>
   <translation>{}: die Vorderseite des Umrisses kreuzt die Mittellinie {}, pocket.length legt die Mündung aber auf X = {} mm; beide in Einklang bringen.</translation>
  </message>
  <message>
   <source>{}: there is no such file ({}).</source>
   <translation>{}: diese Datei gibt es nicht ({}).</translation>
  </message>
  <message>
   <source>{}: there is no such file.</source>
   <translation>{}: diese Datei gibt es nicht.</translation>
  </message>
  <message>
   <source>{}: two of its solids overlap by {} cm³, so they are no parts of one neck; leave one of them in the file.</source>
   <translation>{}: zwei seiner Volumenkörper überschneiden sich um {} cm³, sind also nicht Teile eines Halses; nur einen davon in der Datei lassen.</translation>
  </message>
  <message>
   <source>{}: {} cannot be read; save the neck as STEP, IGES, BREP, FCStd, STL, OBJ or 3MF.</source>
   <translation>{}: {} ist nicht lesbar; den Hals als STEP, IGES, BREP, FCStd, STL, OBJ oder 3MF speichern.</translation>
  </message>
  <message>
   <source>{}: {} does not lie flat; put it on the XY plane.</source>
   <translation>{}: {} liegt nicht flach; es auf die XY-Ebene legen.</translation>
  </message>
  <message>
   <source>{}: {} has a curve that is neither line nor arc; use arcs.</source>
   <translation>{}: {} hat eine Kurve, die weder Linie noch Bogen ist; Bögen verwenden.</translation>
  </message>
  <message>
   <source>{}: {} has {} values for {} strings; state {}, treble first.</source>
   <translation>{}: {} hat {} Werte für {} Saiten; {} angeben, Diskant zuerst.</translation>
  </message>
  <message>
   <source>{}: {} is no list of 1 to {} values, one for each {}; write such a list, as [{}].</source>
   <translation>{}: {} ist keine Liste von 1 bis {} Werten, je einer für: {}; eine solche Liste schreiben, als [{}].</translation>
  </message>
  <message>
   <source>{}: {} is no month; write Jan or 1.</source>
   <translation>{}: {} ist kein Monat; Jan oder 1 schreiben.</translation>
  </message>
  <message>
   <source>{}: {} is no unit of bare numbers; write "mm" or "inch".</source>
   <translation>{}: {} ist keine Einheit bloßer Zahlen; "mm" oder "inch" schreiben.</translation>
  </message>
  <message>
   <source>{}: {} is none of its choices{}; write one of {}.</source>
   <translation>{}: {} ist keine der Möglichkeiten{}; eine von diesen schreiben: {}.</translation>
  </message>
  <message>
   <source>{}: {} is not one closed outline; close it, and leave one.</source>
   <translation>{}: {} ist nicht ein geschlossener Umriss; ihn schließen und nur einen lassen.</translation>
  </message>
  <message>
   <source>{}: {} is open: {} Accept it, answer it or pick a face.</source>
   <translation>{}: {} ist offen: {} Annehmen, beantworten oder eine Fläche wählen.</translation>
  </message>
  <message>
   <source>{}: {} is printed as {} but could not be measured on the solids; the sheet was not written.</source>
   <translation>{}: {} ist als {} gedruckt, ließ sich aber an den Volumenkörpern nicht messen; das Blatt wurde nicht geschrieben.</translation>
  </message>
  <message>
   <source>{}: {} is printed as {} but the solids measure {} in mm or degrees; the sheet was not written.</source>
   <translation>{}: {} ist als {} gedruckt, die Volumenkörper messen aber {} in mm oder Grad; das Blatt wurde nicht geschrieben.</translation>
  </message>
  <message>
   <source>{}: {} is printed as {}, but the tolerance set says {}; the sheet was not written.</source>
   <translation>{}: {} ist als {} gedruckt, die angegebene Toleranz lautet aber {}; das Blatt wurde nicht geschrieben.</translation>
  </message>
  <message>
   <source>{}: {} is printed as {}, which is no dimension.</source>
   <translation>{}: {} ist als {} gedruckt, was kein Maß ist.</translation>
  </message>
  <message>
   <source>{}: {} is stated by both {} and {}; take it out of one, or state it in the job itself.</source>
   <translation>{}: {} ist sowohl von {} als auch von {} angegeben; es aus einer Datei entfernen, oder im Auftrag selbst angeben.</translation>
  </message>
  <message>
   <source>{}: {} lies above what is permitted; state {} to {}.</source>
   <translation>{}: {} liegt über dem Erlaubten; {} bis {} angeben.</translation>
  </message>
  <message>
   <source>{}: {} lies below what is permitted; state {} to {}.</source>
   <translation>{}: {} liegt unter dem Erlaubten; {} bis {} angeben.</translation>
  </message>
  <message>
   <source>{}: {} lies outside {} to {}.</source>
   <translation>{}: {} liegt außerhalb von {} bis {}.</translation>
  </message>
  <message>
   <source>{}: {} lines; write one for each of the twelve months.</source>
   <translation>{}: {} Zeilen; je eine für die zwölf Monate schreiben.</translation>
  </message>
  <message>
   <source>{}: {} points are too many; state at most {}.</source>
   <translation>{}: {} Punkte sind zu viele; höchstens {} angeben.</translation>
  </message>
  <message>
   <source>{}: {} values are too many; state at most {}.</source>
   <translation>{}: {} Werte sind zu viele; höchstens {} angeben.</translation>
  </message>
  <message>
   <source>{}: {} values for {} {}; state {}.</source>
   <translation>{}: {} Werte für {} {}; {} angeben.</translation>
  </message>
  <message>
   <source>{}: {} would take its values from itself ({}); name another file.</source>
   <translation>{}: {} würde seine Werte von sich selbst nehmen ({}); eine andere Datei nennen.</translation>
  </message>
  <message>
   <source>{}: {} {} is no {}; give it a value such as {}.</source>
   <translation>{}: {} {} ist falsch; verlangt ist {}, etwa {}.</translation>
  </message>
  <message>
   <source>{}: {}: pick faces of this neck, numbered 1 to {}.</source>
   <translation>{}: {}: Flächen dieses Halses wählen, nummeriert 1 bis {}.</translation>
  </message>
  <message>
   <source>{}: {}; close it in the program it comes from.</source>
   <translation>{}: {}; es im Ursprungsprogramm schließen.</translation>
  </message>
  <message>
   <source>{}: {}; name one of these.</source>
   <translation>{}: {}; eines davon nennen.</translation>
  </message>
  <message>
   <source>{}; state neck.scale, neck.frets and neck.nut_to_heel.</source>
   <translation>{}; neck.scale, neck.frets und neck.nut_to_heel angeben.</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Adopt</name>
  <message>
   <source>&amp;Adopt a solid…</source>
   <translation>Volumenkörper ü&amp;bernehmen…</translation>
  </message>
  <message>
   <source>Make a solid of your own the body, neck or cover plate of a joint, without changing it</source>
   <translation>Einen eigenen Volumenkörper zu Korpus, Hals oder Schlagbrett einer Verbindung machen, ohne ihn zu ändern</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Check</name>
  <message>
   <source>&amp;Check the joint</source>
   <translation>&amp;Verbindung prüfen</translation>
  </message>
  <message>
   <source>Check the joint by calculation and on its solids, and show the findings in the 3D view</source>
   <translation>Die Verbindung durch Rechnung und an den Volumenkörpern prüfen und die Befunde in der 3D-Ansicht zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Compare</name>
  <message>
   <source>Compare &amp;two states…</source>
   <translation>Z&amp;wei Stände vergleichen…</translation>
  </message>
  <message>
   <source>Compare the joint with how it was saved, with a job file, or with measured values</source>
   <translation>Die Verbindung mit ihrem gespeicherten Stand, einer Auftragsdatei oder gemessenen Werten vergleichen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Drawing</name>
  <message>
   <source>&amp;Draw the pocket</source>
   <translation>&amp;Tasche zeichnen</translation>
  </message>
  <message>
   <source>Draw the pocket on a TechDraw page that can be edited; draw it anew after changes</source>
   <translation>Die Tasche auf ein bearbeitbares TechDraw-Blatt zeichnen; nach Änderungen neu zeichnen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Fit</name>
  <message>
   <source>&amp;Fit depth and angle…</source>
   <translation>Tiefe und Winkel &amp;einpassen…</translation>
  </message>
  <message>
   <source>Turn depth and angle of the pocket with all findings beside the model</source>
   <translation>Tiefe und Winkel der Tasche verstellen, mit allen Befunden neben dem Modell</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ImportNeck</name>
  <message>
   <source>&amp;Import a neck…</source>
   <translation>Hals &amp;importieren…</translation>
  </message>
  <message>
   <source>Read a neck from a STEP, IGES, BREP, FCStd, STL, OBJ or 3MF file, and put it into a joint</source>
   <translation>Einen Hals aus einer STEP-, IGES-, BREP-, FCStd-, STL-, OBJ- oder 3MF-Datei lesen und in eine Verbindung setzen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_LetGo</name>
  <message>
   <source>&amp;Let go of a solid</source>
   <translation>Volumenkörper los&amp;lassen</translation>
  </message>
  <message>
   <source>Take an adopted solid out of the joint and show it again; what was measured stays stated</source>
   <translation>Einen übernommenen Volumenkörper aus der Verbindung nehmen und wieder zeigen; was gemessen wurde, bleibt angegeben</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Mend</name>
  <message>
   <source>Tell which demands exclude one another, and the smallest changes that free the joint</source>
   <translation>Sagen, welche Forderungen einander ausschließen, und die kleinsten Änderungen, die abhelfen</translation>
  </message>
  <message>
   <source>What &amp;mends it…</source>
   <translation>Ab&amp;hilfe suchen…</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_New</name>
  <message>
   <source>&amp;New joint</source>
   <translation>&amp;Neue Verbindung</translation>
  </message>
  <message>
   <source>Add a joint that fits, to begin with, or one with the shop's values that the preferences name</source>
   <translation>Eine passende Verbindung zum Anfangen anlegen, oder eine mit den Werten der Werkstatt laut Einstellungen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Next</name>
  <message>
   <source>Ne&amp;xt finding</source>
   <translation>N&amp;ächster Befund</translation>
  </message>
  <message>
   <source>Select the next finding that has a label, worst first, and bring its place into view</source>
   <translation>Den nächsten beschrifteten Befund wählen, den schlimmsten zuerst, und seine Stelle zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_OpenJob</name>
  <message>
   <source>&amp;Open job file…</source>
   <translation>Auftragsdatei &amp;öffnen…</translation>
  </message>
  <message>
   <source>Add the joint that a job file (TOML) states to this document</source>
   <translation>Die Verbindung aus einer Auftragsdatei (TOML) in dieses Dokument einfügen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Options</name>
  <message>
   <source>&amp;Options side by side…</source>
   <translation>Va&amp;rianten nebeneinander…</translation>
  </message>
  <message>
   <source>Lay the joint and its options side by side</source>
   <translation>Die Verbindung und ihre Varianten nebeneinander zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Package</name>
  <message>
   <source>Package for the &amp;shop…</source>
   <translation>&amp;Paket für die Werkstatt…</translation>
  </message>
  <message>
   <source>Write drawing, routing template, set-up sheet, report and model into one folder</source>
   <translation>Zeichnung, Frässchablone, Einrichteblatt, Bericht und Modell in einen Ordner schreiben</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Previous</name>
  <message>
   <source>&amp;Previous finding</source>
   <translation>V&amp;origer Befund</translation>
  </message>
  <message>
   <source>Select the finding before, and bring its place into view</source>
   <translation>Den vorigen Befund wählen und seine Stelle zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Reattach</name>
  <message>
   <source>&amp;Bring lost objects back to life</source>
   <translation>Verlorene Ob&amp;jekte wiederbeleben</translation>
  </message>
  <message>
   <source>Give their behaviour back to objects that were saved where NeckFit was not installed</source>
   <translation>Objekten, die ohne NeckFit gespeichert wurden, ihr Verhalten zurückgeben</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Recheck</name>
  <message>
   <source>Check &amp;all that is out of date</source>
   <translation>&amp;Alles Veraltete prüfen</translation>
  </message>
  <message>
   <source>Check every joint of this document that changed since its last check</source>
   <translation>Jede Verbindung des Dokuments prüfen, die sich seit ihrer letzten Prüfung geändert hat</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Sample</name>
  <message>
   <source>Build and check a whole joint to try things on: body, pocket, neck, cover plate, hardware</source>
   <translation>Eine ganze Verbindung zum Ausprobieren bauen und prüfen: Korpus, Tasche, Hals, Schlagbrett, Beschläge</translation>
  </message>
  <message>
   <source>Build the &amp;sample joint</source>
   <translation>&amp;Musterverbindung bauen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Seasons</name>
  <message>
   <source>Follow clearances and grip through the owner's year</source>
   <translation>Spiel und Halt der Schrauben übers Jahr beim Besitzer verfolgen</translation>
  </message>
  <message>
   <source>Through the &amp;year…</source>
   <translation>Im Jahre&amp;slauf…</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowDoubts</name>
  <message>
   <source>Show &amp;doubts</source>
   <translation>Un&amp;klares zeigen</translation>
  </message>
  <message>
   <source>Show or hide what could not be checked</source>
   <translation>Zeigen oder verbergen, was nicht zu prüfen war</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowFits</name>
  <message>
   <source>Show or hide what fits</source>
   <translation>Zeigen oder verbergen, was passt</translation>
  </message>
  <message>
   <source>Show what &amp;fits</source>
   <translation>Passen&amp;des zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowGapMap</name>
  <message>
   <source>Colour the overhang by the room below it</source>
   <translation>Den Überstand nach der Luft darunter einfärben</translation>
  </message>
  <message>
   <source>Show the gap &amp;map</source>
   <translation>Spaltkarte in &amp;Farben zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowGaps</name>
  <message>
   <source>Show &amp;gaps</source>
   <translation>Spalte &amp;und Fehlmaße zeigen</translation>
  </message>
  <message>
   <source>Show or hide gaps and other figures that miss their limits</source>
   <translation>Spalte und andere Werte außerhalb ihrer Grenzen zeigen oder verbergen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowInformation</name>
  <message>
   <source>Show or hide plain information</source>
   <translation>Einfache Auskünfte zeigen oder verbergen</translation>
  </message>
  <message>
   <source>Show plain info&amp;rmation</source>
   <translation>Einfa&amp;che Auskünfte zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowInterference</name>
  <message>
   <source>Show or hide what interferes</source>
   <translation>Zeigen oder verbergen, was anstößt</translation>
  </message>
  <message>
   <source>Show what &amp;interferes</source>
   <translation>Ansto&amp;ßendes zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_ShowTouching</name>
  <message>
   <source>Show or hide what touches or is worth a look</source>
   <translation>Zeigen oder verbergen, was berührt oder anzusehen ist</translation>
  </message>
  <message>
   <source>Show what to&amp;uches</source>
   <translation>Ber&amp;ührendes zeigen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Tolerances</name>
  <message>
   <source>&amp;Tolerances…</source>
   <translation>Toleran&amp;zen…</translation>
  </message>
  <message>
   <source>Tell how often the joint fails within its limits, and what to draw in first</source>
   <translation>Sagen, wie oft die Verbindung innerhalb ihrer Grenzen versagt und was zuerst enger zu fassen ist</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Window</name>
  <message>
   <source>&amp;Depths and angles that work…</source>
   <translation>Mö&amp;gliche Tiefen und Winkel…</translation>
  </message>
  <message>
   <source>Show which depths and angles meet every demand, and what bounds them</source>
   <translation>Zeigen, welche Tiefen und Winkel alle Forderungen erfüllen und was sie begrenzt</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_WriteJob</name>
  <message>
   <source>Write &amp;job file…</source>
   <translation>Auftragsdatei e&amp;xportieren…</translation>
  </message>
  <message>
   <source>Write the joint and its options as a job file (TOML)</source>
   <translation>Die Verbindung und ihre Varianten als Auftragsdatei (TOML) schreiben</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Nec&amp;kFit</source>
   <translation>Nec&amp;kFit</translation>
  </message>
  <message>
   <source>NeckFit</source>
   <translation>NeckFit</translation>
  </message>
  <message>
   <source>NeckFit check</source>
   <translation>NeckFit Prüfung</translation>
  </message>
  <message>
   <source>NeckFit decide</source>
   <translation>NeckFit Entscheidung</translation>
  </message>
  <message>
   <source>NeckFit joint</source>
   <translation>NeckFit Verbindung</translation>
  </message>
  <message>
   <source>NeckFit shop</source>
   <translation>NeckFit Werkstatt</translation>
  </message>
  <message>
   <source>NeckFit show</source>
   <translation>NeckFit Anzeige</translation>
  </message>
 </context>
</TS>
