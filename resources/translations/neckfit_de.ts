<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>NeckFit</name>
  <message>
   <source> (and {} more)</source>
   <translation> (und {} weitere)</translation>
  </message>
  <message>
   <source>&amp;Adopt a solid…</source>
   <translation>Volumenkörper ü&amp;bernehmen…</translation>
  </message>
  <message>
   <source>&amp;Bring lost objects back to life</source>
   <translation>Ver&amp;lorene Objekte wiederbeleben</translation>
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
   <translation>Tiefen und Winkel, die &amp;gehen…</translation>
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
   <source>&amp;Labels in the 3D view</source>
   <translation>Beschriftungen in der &amp;3D-Ansicht</translation>
  </message>
  <message>
   <source>&amp;New joint</source>
   <translation>&amp;Neue Verbindung</translation>
  </message>
  <message>
   <source>&amp;Open job file…</source>
   <translation>Auftragsdatei ö&amp;ffnen…</translation>
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
   <translation type="unfinished" />
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
   <source>A deeper pocket pushes the same screw deeper.</source>
   <translation>Eine tiefere Tasche setzt dieselbe Schraube tiefer.</translation>
  </message>
  <message>
   <source>A frame is 6 numbers, X, Y, Z, yaw, pitch and roll, not {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A fretted string buzzes or chokes on a later fret.</source>
   <translation>Eine gegriffene Saite schnarrt oder erstickt auf einem weiteren Bund.</translation>
  </message>
  <message>
   <source>A gap shows under the fretboard, and gathers dirt.</source>
   <translation>Unter dem Griffbrett zeigt sich ein Spalt, in dem sich Schmutz sammelt.</translation>
  </message>
  <message>
   <source>A job file (TOML) with limits, woods, screws: what all your joints share.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A joint's body, neck or plate can be adopted, not its {}.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a joint at default values, or at the shop's own as the preferences name them</source>
   <translation>Eine Verbindung mit Vorgabewerten anlegen, oder mit denen der Werkstatt laut Einstellungen</translation>
  </message>
  <message>
   <source>Add the joint that a job file (TOML) states to this document</source>
   <translation>Die Verbindung aus einer Auftragsdatei (TOML) in dieses Dokument einfügen</translation>
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
   <source>At this depth the bridge suits only a pocket that is tipped otherwise.</source>
   <translation>Bei dieser Tiefe passt die Brücke nur zu einer anders gekippten Tasche.</translation>
  </message>
  <message>
   <source>Body</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>Both states are the same.</source>
   <translation>Beide Stände sind gleich.</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>By closed form: none exists; only solids can tell.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By closed form: {}</source>
   <translation>Nach Formel: {}</translation>
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
   <source>Chamfer the heel's bottom edges by the fillet's radius, or clean the fillet out; {short} too high.</source>
   <translation>Die unteren Kanten des Halsfußes um den Radius der Kehle fasen, oder die Kehle ausräumen; {short} zu hoch.</translation>
  </message>
  <message>
   <source>Change the pocket's width by twice {short}, or match the woods' rings.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changes that mend it, smallest first</source>
   <translation>Änderungen, die abhelfen, kleinste zuerst</translation>
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
   <source>Check the joint by closed forms and on solids, and show the findings in the 3D view</source>
   <translation>Die Verbindung nach Formeln und an Volumenkörpern prüfen und die Befunde in der 3D-Ansicht zeigen</translation>
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
   <source>Choose saddles whose radius lies nearer to that of the crowns at the bridge; the error is too large by {short}.</source>
   <translation>Saitenreiter wählen, deren Radius näher an dem der Bundkronen an der Brücke liegt; der Fehler ist um {short} zu groß.</translation>
  </message>
  <message>
   <source>Choose the shop's room first: it tells the moisture by month.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear fillets and high spots from under the heel.</source>
   <translation>Kehlen und hohe Stellen unter dem Halsfuß entfernen.</translation>
  </message>
  <message>
   <source>Click into the picture to try a place.</source>
   <translation type="unfinished" />
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
   <source>Cover plate</source>
   <translation>Schlagbrett</translation>
  </message>
  <message>
   <source>Cut a channel {short} deep for the tool, or raise its path.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut the plate back or make it thinner, or raise the neck by {short}.</source>
   <translation>Das Schlagbrett zurückschneiden oder dünner machen, oder den Hals um {short} höher setzen.</translation>
  </message>
  <message>
   <source>DXF or FCStd file with one closed outline in the body frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth and</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depths and angles that work</source>
   <translation>Tiefen und Winkel, die gehen</translation>
  </message>
  <message>
   <source>Draw the pocket on a TechDraw page that can be edited; draw it anew after changes</source>
   <translation>Die Tasche auf ein bearbeitbares TechDraw-Blatt zeichnen; nach Änderungen neu zeichnen</translation>
  </message>
  <message>
   <source>Drawing joints</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drill the body's holes wider by {short}.</source>
   <translation>Die Löcher im Korpus um {short} weiter bohren.</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Befund</translation>
  </message>
  <message>
   <source>Findings that differ: {} ({}: {}; {}: {})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finish</source>
   <translation type="unfinished" />
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
   <source>Folder to put the package into</source>
   <translation>Ordner für das Paket</translation>
  </message>
  <message>
   <source>Follow clearances and grip through the owner's year</source>
   <translation>Spiel und Halt der Schrauben durch das Jahr beim Besitzer verfolgen</translation>
  </message>
  <message>
   <source>Give their behaviour back to objects that were saved where NeckFit was not installed</source>
   <translation>Objekten, die ohne NeckFit gespeichert wurden, ihr Verhalten zurückgeben</translation>
  </message>
  <message>
   <source>H: heel bottom to fretboard top on the centreline, without frets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In one season a wide gap shows under the fretboard.</source>
   <translation>In einer Jahreszeit zeigt sich unter dem Griffbrett ein weiter Spalt.</translation>
  </message>
  <message>
   <source>Instead of faces: X to the bridge, Z out of the top, at the end wall.</source>
   <translation type="unfinished" />
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
   <translation>Er hat seine Halstasche schon</translation>
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
   <source>Joints drawn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>L_o: heel end to fretboard end; 0 where the fretboard ends at the heel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lay the joint and its options side by side</source>
   <translation>Die Verbindung und ihre Varianten nebeneinander zeigen</translation>
  </message>
  <message>
   <source>Leave {short} more room when the joint is cut.</source>
   <translation>Beim Schneiden der Verbindung {short} mehr Luft lassen.</translation>
  </message>
  <message>
   <source>Lengthen the pocket by {short}.</source>
   <translation>Die Tasche um {short} verlängern.</translation>
  </message>
  <message>
   <source>Limits</source>
   <translation>Grenzen</translation>
  </message>
  <message>
   <source>Look again</source>
   <translation>Erneut ansehen</translation>
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
   <source>Make a solid of your own the body, neck or cover plate of a joint, without changing it</source>
   <translation>Einen eigenen Volumenkörper zu Korpus, Hals oder Schlagbrett einer Verbindung machen, ohne ihn zu ändern</translation>
  </message>
  <message>
   <source>Make the pocket deeper by {short}, tip it back less, raise the bridge, or choose a higher one.</source>
   <translation>Die Tasche um {short} tiefer machen, sie weniger zurückkippen, die Brücke höher setzen, oder eine höhere wählen.</translation>
  </message>
  <message>
   <source>Make the pocket shallower by {short}, clear the plate around the fretboard, or use a shim.</source>
   <translation>Die Tasche um {short} flacher machen, das Schlagbrett um das Griffbrett freischneiden, oder eine Unterlage verwenden.</translation>
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
   <translation type="unfinished" />
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
   <source>Month, temperature, humidity (*.csv)</source>
   <translation>Monat, Temperatur, Feuchte (*.csv)</translation>
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
   <source>Ne&amp;xt finding</source>
   <translation>Nä&amp;chster Befund</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>New joints take {} values from it.</source>
   <translation>Neue Verbindungen übernehmen daraus {} Werte.</translation>
  </message>
  <message>
   <source>No change that is allowed mends it.</source>
   <translation>Keine erlaubte Änderung hilft ab.</translation>
  </message>
  <message>
   <source>No dimension of this joint has limits.</source>
   <translation>Kein Maß dieser Verbindung hat Grenzen.</translation>
  </message>
  <message>
   <source>No face looks up beside the pocket; pick the body's top face.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No joint is linked here; link one.</source>
   <translation>Hier ist keine Verbindung verknüpft; eine verknüpfen.</translation>
  </message>
  <message>
   <source>No pocket was found that is open toward the headstock; {}, or turn the frame so that X points to the bridge.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing is picked to be adopted; pick a solid.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Old pilot</source>
   <translation>Alte Vorbohrung</translation>
  </message>
  <message>
   <source>On solids: on release.</source>
   <translation>Am Volumenkörper: beim Loslassen.</translation>
  </message>
  <message>
   <source>On solids: {}</source>
   <translation>Am Volumenkörper: {}</translation>
  </message>
  <message>
   <source>On solids: {} - the two disagree.</source>
   <translation>Am Volumenkörper: {} - die beiden sind uneins.</translation>
  </message>
  <message>
   <source>Only needed where the floor of a pocket that is there is not found.</source>
   <translation type="unfinished" />
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
   <source>Other bridges and pickups…</source>
   <translation>Andere Brücken und Tonabnehmer…</translation>
  </message>
  <message>
   <source>Other depths or angles do meet every demand together.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other dimensions</source>
   <translation>Andere Maße</translation>
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
   <source>Pick</source>
   <translation>Wählen</translation>
  </message>
  <message>
   <source>Pick a face.</source>
   <translation>Eine Fläche wählen.</translation>
  </message>
  <message>
   <source>Pick a straight edge, or a line.</source>
   <translation>Eine gerade Kante oder eine Linie wählen.</translation>
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
   <source>Pictures (*.png *.svg)</source>
   <translation>Bilder (*.png *.svg)</translation>
  </message>
  <message>
   <source>Pitch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plug the old holes first.</source>
   <translation>Zuerst die alten Löcher verschließen.</translation>
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
   <source>Raise the action or the saddles, or change the relief; {short} are missing. Where the saddles are at their end, the pocket must be deeper.</source>
   <translation>Saitenlage oder Saitenreiter erhöhen, oder die Halskrümmung ändern; {short} fehlen. Wo die Saitenreiter am Anschlag sind, muss die Tasche tiefer werden.</translation>
  </message>
  <message>
   <source>Raise the action, the nut or the saddles, or change the relief; {short} are missing. Where the saddles are at their end, the pocket must be deeper.</source>
   <translation>Saitenlage, Sattel oder Saitenreiter erhöhen, oder die Halskrümmung ändern; {short} fehlen. Wo die Saitenreiter am Anschlag sind, muss die Tasche tiefer werden.</translation>
  </message>
  <message>
   <source>Raise the saddles over the anchor (a shallower pocket or one tipped back), or choose a bridge whose anchor lies lower; {short} are missing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Roll</source>
   <translation type="unfinished" />
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
   <translation>{short} flacher fräsen, das Schlagbrett ausschneiden oder dünner machen, oder eine Unterlage einlegen.</translation>
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
   <source>Save picture…</source>
   <translation>Bild speichern…</translation>
  </message>
  <message>
   <source>Save…</source>
   <translation>Speichern…</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>See which room is lacking under the overhang, at the sides or at the end; {short} must go.</source>
   <translation type="unfinished" />
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
   <source>Set the depth stop of the neck's pilot holes by this.</source>
   <translation>Den Tiefenanschlag für die Vorbohrungen des Halses danach einstellen.</translation>
  </message>
  <message>
   <source>Several look like the {} that was picked; pick it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shim</source>
   <translation>Unterlage</translation>
  </message>
  <message>
   <source>Shim at the end wall</source>
   <translation>Unterlage an der Stirnwand</translation>
  </message>
  <message>
   <source>Shim at the mouth</source>
   <translation>Unterlage an der Mündung</translation>
  </message>
  <message>
   <source>Shim strip</source>
   <translation type="unfinished" />
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
   <source>Show which depths and angles meet every demand, and what bounds them</source>
   <translation>Zeigen, welche Tiefen und Winkel alle Forderungen erfüllen und was sie begrenzt</translation>
  </message>
  <message>
   <source>Solid</source>
   <translation>Volumenkörper</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop</source>
   <translation type="unfinished" />
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
   <source>TechDraw did not draw the view {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>TechDraw page: the dimension {} is missing; draw the page anew.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>TechDraw page: {} reads {} where the drawing says {}; draw the page anew.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>TechDraw's view {} lacks the arc of {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>TechDraw's view {} lacks the point {}.</source>
   <translation type="unfinished" />
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
   <source>The back does not slope down from the mouth; state the heel contour.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>The body has no back under the pocket's end wall; turn the frame upright.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The body has no face that looks up; pick its top face.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The body has no outline at Z = {} mm; turn the frame upright.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The body's top does not lie over the pocket and behind it; pick it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The centreline does not run over the pocket's floor; {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The centreline does not run through the body; pick another.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The centreline is no straight edge; pick a straight one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The centreline is not level with the top's datum; pick another edge.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The centreline is not picked; pick an edge or a line along the middle.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The cover plate is not flat, so that its thickness must be stated.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The drawing's page is in the tree; double-click it there to see it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The drill wanders into the old hole and the screw does not hold.</source>
   <translation>Der Bohrer verläuft in das alte Loch, und die Schraube hält nicht.</translation>
  </message>
  <message>
   <source>The flat top, or the carved one whose back is flat.</source>
   <translation type="unfinished" />
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
   <source>The fretboard does not go down between the edges beside it: it bears on them instead of the heel on the floor.</source>
   <translation>Das Griffbrett geht nicht zwischen die Kanten neben ihm: statt des Halsfußes auf dem Boden liegt es auf ihnen auf.</translation>
  </message>
  <message>
   <source>The fretboard lands on the top or the plate beside the pocket before the heel reaches the floor: screwed down, it is pried off.</source>
   <translation>Das Griffbrett setzt neben der Tasche auf Decke oder Schlagbrett auf, bevor der Halsfuß den Boden erreicht: beim Anziehen wird es abgehebelt.</translation>
  </message>
  <message>
   <source>The given {} is made of {} solids, and one is wanted; join them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The given {} is no valid closed solid; let Part's Check Geometry show where, and mend it.</source>
   <translation type="unfinished" />
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
   <source>The joint in the 3D view</source>
   <translation>Die Verbindung in der 3D-Ansicht</translation>
  </message>
  <message>
   <source>The joint is gone; close this window.</source>
   <translation>Die Verbindung ist fort; dieses Fenster schließen.</translation>
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
   <source>The neck shifts sideways in its pocket.</source>
   <translation>Der Hals verschiebt sich seitlich in seiner Tasche.</translation>
  </message>
  <message>
   <source>The overhang touches in one season though it is free in another.</source>
   <translation>Der Überstand berührt in einer Jahreszeit, obwohl er in einer anderen frei ist.</translation>
  </message>
  <message>
   <source>The picked face has no wall on either side and toward the bridge, so it is no pocket's floor; {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The picked floor is no plane face; {}.</source>
   <translation>Die gewählte Fläche ist nicht eben; {}.</translation>
  </message>
  <message>
   <source>The picked top face does not reach {} mm behind the mouth on the centreline; pick the top face there.</source>
   <translation type="unfinished" />
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
   <source>The plate presses on the heel or the fretboard, and buckles or holds the neck off.</source>
   <translation>Das Schlagbrett drückt auf Halsfuß oder Griffbrett und wölbt sich oder hält den Hals ab.</translation>
  </message>
  <message>
   <source>The pocket's end wall is skew to the centreline by {}°; pick another centreline, or make the wall square to it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The pocket's end wall leans by {}° and the floor by {}°, so that it is square to neither top nor floor; make it square to one, or state its values.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The pocket's side wall at {} leans by {}°, and only upright side walls can be stated; make it upright, or state the pocket's values.</source>
   <translation type="unfinished" />
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
   <source>The screw bottoms: it feels tight while the neck is loose, or pushes the insert out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The screws bite in the body and jack the neck off its floor instead of pulling it down.</source>
   <translation>Die Schrauben greifen im Korpus und drücken den Hals vom Boden ab, statt ihn herabzuziehen.</translation>
  </message>
  <message>
   <source>The solid itself; picking its top face picks it too.</source>
   <translation type="unfinished" />
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
   <source>The top face is not picked; pick it.</source>
   <translation>Die Oberseite ist nicht gewählt; sie wählen.</translation>
  </message>
  <message>
   <source>The top is curved and the body has no flat back to measure from; type the frame, or link a coordinate system.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The web breaks out, and the end wall with it.</source>
   <translation>Der Steg bricht aus, und die Stirnwand mit ihm.</translation>
  </message>
  <message>
   <source>The {} that was picked is no longer there; pick it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This document has no joint; make one first.</source>
   <translation>Dieses Dokument hat keine Verbindung; zuerst eine anlegen.</translation>
  </message>
  <message>
   <source>This is what holds the strings on their saddles.</source>
   <translation>Das hält die Saiten auf ihren Saitenreitern.</translation>
  </message>
  <message>
   <source>This is what the neck joint has to hold.</source>
   <translation>Das muss die Halsverbindung halten.</translation>
  </message>
  <message>
   <source>This joint has no options; a job file states them under [[option]].</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This went wrong within NeckFit: {}. The report view has the detail.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Through the &amp;year…</source>
   <translation>Durch das &amp;Jahr…</translation>
  </message>
  <message>
   <source>Through the year</source>
   <translation>Durch das Jahr</translation>
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
   <source>To mend it:</source>
   <translation>Zur Abhilfe:</translation>
  </message>
  <message>
   <source>Tolerances</source>
   <translation>Toleranzen</translation>
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
   <source>Turn X to the other end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Turn depth and angle of the pocket with all findings beside the model</source>
   <translation>Tiefe und Winkel der Tasche verstellen, mit allen Befunden neben dem Modell</translation>
  </message>
  <message>
   <source>Type the frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use a longer screw: {short} diameters are missing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use a longer screw: {short} shank diameters are missing.</source>
   <translation>Eine längere Schraube verwenden: {short} Schaftdurchmesser fehlen.</translation>
  </message>
  <message>
   <source>Use a screw shorter by {short}, or a longer insert.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use a screw shorter by {short}: see the longest safe one.</source>
   <translation>Eine um {short} kürzere Schraube verwenden: siehe die längste sichere.</translation>
  </message>
  <message>
   <source>Use longer or thicker screws, or set them farther from the heel end.</source>
   <translation type="unfinished" />
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
   <source>Values that differ: {}</source>
   <translation>Abweichende Werte: {}</translation>
  </message>
  <message>
   <source>What &amp;mends it…</source>
   <translation>Was &amp;hilft ab…</translation>
  </message>
  <message>
   <source>What mends it</source>
   <translation>Was hilft ab</translation>
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
   <source>Wished share of failures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood</source>
   <translation>Holz</translation>
  </message>
  <message>
   <source>Write &amp;job file…</source>
   <translation>Auftragsdatei &amp;schreiben…</translation>
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
   <source>X of the cavity's centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>X of the pickup's pole line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>X of the saddle's string rest with the saddle fully forward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>X of the screw in the body frame at the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>X under the playing hand; midway from fretboard end to saddles unless stated</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>X, to the bridge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Y</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Y of the cavity's centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Y of the screw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Yaw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Z, out of the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fret has no edge along it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fret has round flanks, so that its crest is no edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fretboard glued on, or a neck of one piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a job file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a line has no centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a list is no {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a macro cannot hold a {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a number is no {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a part file has no [{}]; state it in the job file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a part of it is empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a pickup is fitted here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a round pocket has no corners: see the end clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a text is no {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>action error of the middle strings on a fixed radius</source>
   <translation>Fehler der Saitenlage der mittleren Saiten bei festem Radius</translation>
  </message>
  <message>
   <source>an object holds itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>anything worth remembering</source>
   <translation type="unfinished" />
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
   <source>bit: a diameter of {} cuts nothing; state one above zero.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body</source>
   <translation>Korpus</translation>
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
   <source>body.block_{}: {} mm leaves no horn within body.upper_width of {} mm; make the block narrower or the body wider.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.cutaway_{}: its bottom lies {} mm behind the pocket's mouth, and {} mm are the least; make it smaller or the pocket longer.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.edge_round: a round of {} mm does not fit this outline's edges; make it smaller, or the outline's own curves wider.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.outline_file is missing, though body.outline is "file"; name a DXF or FCStd file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.outline_file: {} is neither DXF nor FCStd; save it as one of these.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.outline_points is missing, though body.outline is "{}"; state the corners.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.top_heights is missing, though body.top is "sampled"; state the heights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.top_heights: {} heights are no grid of {} across (body.top_rows); state at least {} rows of at least {} each, all of one length.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body.waist_width: {} mm leaves no waist in a body whose {} part is {} mm wide; make it at most {} mm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body: angle of the rings to the width (0 quartersawn, 90 flatsawn)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body: at its outline {} mm are left between top and back, but its rounded edges need {} mm; make it thicker or body.edge_round smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body: pocket, cavities and contour leave {} pieces of it; make them smaller or the outline larger.</source>
   <translation type="unfinished" />
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
   <source>bridge pickup goes low enough</source>
   <translation>Brücken-Tonabnehmer geht tief genug</translation>
  </message>
  <message>
   <source>bridge pickup rises high enough</source>
   <translation>Brücken-Tonabnehmer geht hoch genug</translation>
  </message>
  <message>
   <source>bush: {} is no larger than the bit of {}; state the bush's outer diameter.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by closed form - solids on release</source>
   <translation>nach Formel - am Volumenkörper beim Loslassen</translation>
  </message>
  <message>
   <source>by closed form and on solids</source>
   <translation>nach Formel und am Volumenkörper</translation>
  </message>
  <message>
   <source>calipers at the cut-out's edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers at the heel's side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers at the pocket's end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers close to the heel end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers over the heel, beside a fret</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers under the overhang</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calipers where the body ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carved top: climb toward the bridge at the origin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carved top: radius along the centreline at the origin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carved top: radius square to the centreline at the origin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cavity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chamfer along the heel's bottom edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chosen by this project</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clearance hole through the body</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>corners of the outline as [X, Y] pairs in the body frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>could not be decided</source>
   <translation type="unfinished" />
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
   <source>cover plate: none, all round the pocket, or on the treble side only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut-out beyond the pocket's edge, all round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dampest month indoors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>data/sheet.dxf has no model space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth from the top at the cavity's centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth gauge from the top at the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth of its cavity from the top</source>
   <translation>Tiefe seines Hohlraums ab Oberseite</translation>
  </message>
  <message>
   <source>depth of the ferrule's seat below the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth of the head's seat below the neck plate's outer face or ferrule rim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth of the pocket in bare wood, at the end wall, square to the datum</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth of the recess under the bridge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diameter of the ferrule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>divides by zero</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not fit</source>
   <translation>passt nicht</translation>
  </message>
  <message>
   <source>does not start with a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not tell here</source>
   <translation>sagt hier nichts</translation>
  </message>
  <message>
   <source>domed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>domed top: X of the highest point</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>domed top: radius of the sphere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>driest month indoors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>e: least distance between heel end and end wall as assembled</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>end wall to the plate's end toward the bridge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>engagement in an insert in screw diameters, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>engagement in inserts in screw diameters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every old pilot hole is used again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every stocked length is too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>everything</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>ferrules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>finish built up on each pocket wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>finish built up on the pocket's floor (0 where it is masked)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>finish built up on the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fits</source>
   <translation>passt</translation>
  </message>
  <message>
   <source>fixed radius</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed radius: action error of a middle string, largest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed radius: distance between the two posts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed radius: radius over the strings' undersides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flat heel length beyond the pocket</source>
   <translation>flache Länge des Halsfußes über die Tasche hinaus</translation>
  </message>
  <message>
   <source>floating</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floating bridge: base over the mount, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floating: highest height of the base above the mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floating: lowest height of the base above the mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for information</source>
   <translation>zur Kenntnis</translation>
  </message>
  <message>
   <source>frequency of each open string, treble first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fretboard end to neck pickup</source>
   <translation>Griffbrettende zum Hals-Tonabnehmer</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>fretted string over every later fret, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fretted string over plate and rings, least</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>full wedge: thickness at the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full wedge: thickness at the mouth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gap seen at the end wall</source>
   <translation>sichtbarer Spalt an der Stirnwand</translation>
  </message>
  <message>
   <source>gap under the overhang through the year</source>
   <translation>Spalt unter dem Überstand durch das Jahr</translation>
  </message>
  <message>
   <source>gives no limit deviations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>glued</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>greys, for print</source>
   <translation>Grautöne, für den Druck</translation>
  </message>
  <message>
   <source>h_o: heel bottom to the overhang's underside</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>has a hyphen that may be a sign or not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has a line break or control character</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has a second sign after ±</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has a whole number before a fraction that is not below 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has an exponent beyond any use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has both a part of a minute and seconds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has digits other than the plain 0 to 9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has marks that turn the reading direction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has minutes or seconds of 60 and more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has more than two deviations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has something in brackets that is no fraction of an inch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has the unknown unit {}{}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {} after the number, but counts things</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {} after the number, but takes no unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {} characters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has {} characters, more than any number needs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heads bear on a neck plate, in ferrules, or on the bare wood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>headstock</source>
   <translation type="unfinished" />
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
   <source>heel bottom to the glue line under the fretboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel bottom to the truss-rod channel's bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel contour: mouth to where the slope has run out to nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel contour: wood taken off the back at the pocket's mouth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel corners in the pocket's corners</source>
   <translation>Ecken des Halsfußes in den Ecken der Tasche</translation>
  </message>
  <message>
   <source>heel end to the end of the truss-rod channel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel held off by the floor's fillet</source>
   <translation>Halsfuß durch die Kehle des Bodens abgehalten</translation>
  </message>
  <message>
   <source>heel width at the heel end (before its corners are rounded)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel width one pocket length before the heel end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel-adjusted rod: diameter the adjusting tool needs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel-adjusted rod: heel bottom to the tool's axis</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heel-adjusted rod: straight path the tool needs behind the heel end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of its ring above the mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of its springs fully compressed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the fret crowns</source>
   <translation>Höhe der Bundkronen</translation>
  </message>
  <message>
   <source>height of the pickup, poles included, over its springs' seat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how far a hole may lie from where it should</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how far the binding hangs below the overhang's underside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how far the last fret lies below the straight line past fret 12</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how far the plate reaches beyond its cut-out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>insert</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inside calipers at the body's edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inside calipers close to the end wall, above the corner radii</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>interferes</source>
   <translation>stößt an</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is in {}, a unit of {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is negative, where one number stands for both sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is neither true nor false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is no pair of lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is no {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not a finite number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not one number and one unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is only one of two deviations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too large a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too large to count anything</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too small a number to be told from zero</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>least clearance between cover plate and heel</source>
   <translation>kleinstes Spiel zwischen Schlagbrett und Halsfuß</translation>
  </message>
  <message>
   <source>least distance from fretboard end to pickup or ring</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>length of the bridge's base along X</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length of the heel that is flat underneath</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length of the neck plate</source>
   <translation>Länge der Halsplatte</translation>
  </message>
  <message>
   <source>length of the threaded insert, flush with the heel's bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length of the threaded part, from the tip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length under the head</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>longest safe screw in stock</source>
   <translation>längste sichere Schraube im Lager</translation>
  </message>
  <message>
   <source>machine screw to the bottom of its hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>machine screws in inserts: see their engagement</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mass per length of each string, treble first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measured</source>
   <translation>gemessen</translation>
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
   <source>millimetres</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>moisture of both woods when pocket and heel were measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neck</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neck and body in the same place</source>
   <translation>Hals und Korpus am selben Ort</translation>
  </message>
  <message>
   <source>neck and bridge pickup in the same place</source>
   <translation>Hals und Brücken-Tonabnehmer am selben Ort</translation>
  </message>
  <message>
   <source>neck and cover plate in the same place</source>
   <translation>Hals und Schlagbrett am selben Ort</translation>
  </message>
  <message>
   <source>neck and middle pickup in the same place</source>
   <translation>Hals und mittlerer Tonabnehmer am selben Ort</translation>
  </message>
  <message>
   <source>neck and neck pickup in the same place</source>
   <translation>Hals und Hals-Tonabnehmer am selben Ort</translation>
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
   <source>neck rocking on its overhang</source>
   <translation>Hals kippelt auf seinem Überstand</translation>
  </message>
  <message>
   <source>neck.rod_depth: {} mm lies above the glue line at {} mm, so there is no channel; make it smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neck: angle of the rings to the heel's width (0 quartersawn, 90 flatsawn)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neither heel nor fretboard reaches down to the plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neither plate nor ring lies under the strings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>neither the cover plate nor a ring lies under the strings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no closed form</source>
   <translation>keine Formel</translation>
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
   <source>no cutaway runs beside the pocket</source>
   <translation>neben der Tasche liegt kein Cutaway</translation>
  </message>
  <message>
   <source>no height of the surface was found at X {}, Y {} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no level face of the body lies under the heel's bottom</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>no pocket angle within 30° brings the strings to the end of the travel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no published figure for threaded inserts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no shim, a full wedge, or a strip at the end wall or at the mouth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no specific gravity is known for {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no straight side of the heel lies beside one of the pocket</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no strips are left beside the fretboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no truss rod is adjusted at the heel</source>
   <translation>am Halsfuß wird kein Halsstab eingestellt</translation>
  </message>
  <message>
   <source>nominal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation type="unfinished" />
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
   <source>nothing lies under the overhang</source>
   <translation>nichts liegt unter dem Überstand</translation>
  </message>
  <message>
   <source>nothing lies under the tool's path</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>nut's front face to fret 12, doubled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of {} entries is no pair of deviations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of {} points encloses nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one piece: depth of the fret slots under the fretboard top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>only solids can tell the wall of an outline that is given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open string over every fret, least</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>option {} has no name; write name = "…" under [[option]].</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>option {} states [option.job], which holds for the whole file; move it to [job].</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outer string to fretboard edge at the last fret, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outer string to outer string at the nut, centre to centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outer string to outer string at the saddles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outer strings to the fretboard's edges at the last fret</source>
   <translation>äußere Saiten zu den Griffbrettkanten am letzten Bund</translation>
  </message>
  <message>
   <source>own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: centreline to the cutaway's wall beside the pocket, bass side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: centreline to the cutaway's wall beside the pocket, treble side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: end wall to the body's tail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: end wall to the bottom of the bass cutaway, toward the mouth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: end wall to the bottom of the treble cutaway, toward the mouth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: narrowest part at the waist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: widest part at the horns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own outline: widest part behind the bridge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pilot hole deeper than the screw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plate and rings do not reach under the strings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plate thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plate: cut-out and openings leave {} pieces of it; make plate.margin or plate.reach larger.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plate: no part of it lies over the body; check outline and plate.reach.</source>
   <translation type="unfinished" />
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
   <source>pocket: at {} mm from the end wall its floor lies {} mm below the body's back; make it shallower, or the body thicker.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pocket: its {} of radius {} mm does not fit; make the radius smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pocket: the kernel gave no valid solid with its {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>points</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pole tops above the mount at the highest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pole tops above the mount at the lowest the hardware allows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pull of all strings</source>
   <translation>Zug aller Saiten</translation>
  </message>
  <message>
   <source>radius left between the floor and the walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of its corners in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of the corners between end wall and sides, left by the cutter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of the fretboard's top at its end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of the fretboard's top at the nut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of the heel's corners in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>radius of the rounded outer edges, top and back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>recess</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>relief: largest depth of the crowns under the chord from fret 1 to the last</source>
   <translation type="unfinished" />
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
   <source>round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round end: radius of the end wall in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round end: radius of the heel end in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rule along the centreline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rule from heel end to fretboard end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rule from the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saddle behind the scale length, bass outer string</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saddle behind the scale length, treble outer string</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saddle to string anchor, along X</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saddle travel along the strings</source>
   <translation type="unfinished" />
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
   <source>sampled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: X of the first row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: Y of a row's first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: from sample to sample</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: heights over the origin, row by row across the centreline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: largest error found between the samples</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sampled top: number of samples across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saved</source>
   <translation>gespeichert</translation>
  </message>
  <message>
   <source>scale length (of the treble outer string, where the scales differ)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scale length of the bass outer string</source>
   <translation>Mensur der äußeren Basssaite</translation>
  </message>
  <message>
   <source>screw axis to heel edge in shank diameters, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw grip in shank diameters, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw lengths the shop has</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw number {} is not in the table of ASME B18.6.1 (it has {})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw tip under the glue line (one piece: under the slots), least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw tip under the glue line, wished</source>
   <translation type="unfinished" />
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
   <source>screws into the heel</source>
   <translation>Schrauben in den Halsfuß</translation>
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
   <source>screws' grip in shank diameters</source>
   <translation>Halt der Schrauben in Schaftdurchmessern</translation>
  </message>
  <message>
   <source>section</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>separate saddles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>separate saddles, one fixed radius on two posts, or floating</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shank (outer thread) diameter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shape of the end wall in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shape of the heel end in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shape of the top: flat, domed (a sphere), carved (a bowl of two radii) or sampled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>share of the heel that must bear on the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets need the solids; judge the joint with them first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shim</source>
   <translation>Unterlage</translation>
  </message>
  <message>
   <source>shim.strip_edge: {} mm reaches past the pocket's mouth at {} mm; make it smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shim: it lies nowhere under the heel; make the strip wider.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>side clearance through the year</source>
   <translation>Seitenspiel durch das Jahr</translation>
  </message>
  <message>
   <source>side clearance, bass</source>
   <translation>Seitenspiel, Bass</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>size along the centreline, ring included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>size square to the centreline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>square</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stopped while {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string anchor above the mount; negative for strings through the body</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string at the last fret over the poles, bass, largest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string at the last fret over the poles, bass, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string at the last fret over the poles, treble, largest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string at the last fret over the poles, treble, least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string {} crosses no crown at its fret {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string's underside above the mount (floating: above the base), saddle at its highest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>string's underside above the mount (floating: above the base), saddle at its lowest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strings mirrored for a left-handed player</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strings over the top under the hand</source>
   <translation>Saiten über der Decke unter der Hand</translation>
  </message>
  <message>
   <source>strings' force on the saddles</source>
   <translation>Druck der Saiten auf die Saitenreiter</translation>
  </message>
  <message>
   <source>strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strip: end wall to the strip's mouth-side edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strip: its thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surround</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the binding stands over neither top nor plate</source>
   <translation>die Einfassung steht weder über Decke noch Schlagbrett</translation>
  </message>
  <message>
   <source>the body has no back under the pocket</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the body has no cavity</source>
   <translation>der Korpus hat keinen Hohlraum</translation>
  </message>
  <message>
   <source>the body has no face that looks up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the bridge does not float</source>
   <translation>die Brücke schwebt nicht</translation>
  </message>
  <message>
   <source>the bridge stands on the top, on the cover plate, or in a recess</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the cover plate has no face that looks up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the cutaway does not reach beside the pocket</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the document as saved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the end wall does not reach up to the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the end wall is square to the top or to the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard does not lie over the body</source>
   <translation>das Griffbrett liegt nicht über dem Korpus</translation>
  </message>
  <message>
   <source>the fretboard does not reach past the pocket's end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard does not sink below the top or the plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard has no binding</source>
   <translation>das Griffbrett hat keine Einfassung</translation>
  </message>
  <message>
   <source>the fretboard has no binding over top or plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard is glued on: it would be pried off, not rock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard nowhere sinks below the top or the plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard stands nowhere over the top before the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fretboard stands over neither top nor plate there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the gap map has {} rooms for {} by {} points.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel ends below the top: the fretboard covers its end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel has no corners over its bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel has no face that looks down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel has no old pilot holes</source>
   <translation>der Halsfuß hat keine alten Vorbohrungen</translation>
  </message>
  <message>
   <source>the heel has no upright sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel's bottom does not lie over the pocket's floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel's end does not reach up to the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel's end does not stand before the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heel's end does not stand within the pocket</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the joint has no cover plate: a window over its thickness says nothing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the kernel gave no distance between two faces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the kernel gave no triangles for face {}</source>
   <translation type="unfinished" />
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
   <source>the overhang does not interfere</source>
   <translation>der Überstand stößt nicht an</translation>
  </message>
  <message>
   <source>the overhang does not reach the plate</source>
   <translation>der Überstand reicht nicht bis zum Schlagbrett</translation>
  </message>
  <message>
   <source>the owner's room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the package for the shop is in {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the parts overlap by {} mm and the kernel finds no common volume</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the plate runs under the fretboard's overhang</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the pocket has no side wall there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the pocket's end is neither straight nor an arc</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the pocket's floor has no fillet</source>
   <translation>der Boden der Tasche hat keine Kehle</translation>
  </message>
  <message>
   <source>the range of the {} from {} to {} {} is empty or lies outside what is permitted; state the smaller first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the saddles are set one by one</source>
   <translation>die Saitenreiter werden einzeln eingestellt</translation>
  </message>
  <message>
   <source>the strings rest on a fret at the nut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the table of ISO 2768-1 gives no {} of {} {} in class {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the table of ISO 286-1 kept here gives no {} for {} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the tool's path ends before the end wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is neither a cover plate nor a pickup ring</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no clash to take the volume of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the body, back to top, at the pocket's end wall</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>tilt of the floor; positive tips the headstock back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tolerance class {} is none of f, m, c and v of ISO 2768-1</source>
   <translation type="unfinished" />
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
   <translation>Werkzeug uneins</translation>
  </message>
  <message>
   <source>tool to the truss rod</source>
   <translation>Werkzeug zum Halsstab</translation>
  </message>
  <message>
   <source>top</source>
   <translation type="unfinished" />
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
   <source>treble side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two options are called {}; rename one of them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>u_h: nut's front face to heel end on the centreline</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unit of bare numbers in the file and of what is shown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>use a decimal point and {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>values measured after routing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>waits for solids</source>
   <translation>wartet auf Volumenkörper</translation>
  </message>
  <message>
   <source>wedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what its height is set from: top, cover plate or cavity floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what matters</source>
   <translation>was zählt</translation>
  </message>
  <message>
   <source>what the shop calls this joint</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>where the outline comes from: this workbench, points, a file, or a section of a solid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>where the truss rod is adjusted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the binding along each edge; 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the bridge's base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the fret crowns</source>
   <translation>Breite der Bundkronen</translation>
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>withdrawal capacity over need, screws</source>
   <translation>Ausziehwiderstand über Bedarf, Schrauben</translation>
  </message>
  <message>
   <source>withdrawal capacity per handbook divided by this</source>
   <translation type="unfinished" />
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
   <source>wood of the body, as named in the table of woods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood of the neck</source>
   <translation>Holz des Halses</translation>
  </message>
  <message>
   <source>wood screw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood screws, or machine screws into threaded inserts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood under the pocket</source>
   <translation>Holz unter der Tasche</translation>
  </message>
  <message>
   <source>worked out from other parameters unless stated</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>worth a look</source>
   <translation>ansehen</translation>
  </message>
  <message>
   <source>write a pair such as [80, 60]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write at most {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write it in one line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write it without them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write three points or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>x of an old pilot hole in the heel, from the heel end (neck frame, negative)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>y of an old pilot hole in the heel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} cannot be picked; {} can.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} cannot be read ({}); check its name and its permissions.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} cannot be written ({}); choose a folder that exists and that you may write to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} cannot be written ({}); choose a folder whose parent exists and that you may write to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} cannot be written ({}); free some space or choose another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} could not be written; choose another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} does not run along Z</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} faces could be the pocket's floor; {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} has no cylinder to be its shank</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} has no file yet; save it first.</source>
   <translation>{} hat noch keine Datei; zuerst speichern.</translation>
  </message>
  <message>
   <source>{} has no option {} ({}); correct the name.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} has no {} in it yet; save the document.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} holds a former package and {}, which would be lost; move that away or name another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} holds a former package. Replace it?</source>
   <translation>{} enthält ein früheres Paket. Ersetzen?</translation>
  </message>
  <message>
   <source>{} holds a former package; say that it is to be replaced (--replace), or name another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} holds files that are no package of this tool; name another folder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} holds the joint itself; pick the solid within it, or take the joint out of it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is NeckFit's own; adopt a solid of yours.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is a FreeCAD document, which only FreeCAD can read; run the check with solids, or save the outline as DXF.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is a file; name a folder that does not exist yet.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is driven by the expression {}; change it there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is empty; write a name that tells it from the others.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is larger than {} MB; name a smaller file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is missing; state the {}.</source>
   <translation>{} fehlt; {} angeben.</translation>
  </message>
  <message>
   <source>{} is no DXF drawing that can be read ({}); save it again as DXF.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no axis of a window; write one of {}.</source>
   <translation>{} ist keine Achse eines Fensters; eine von {} schreiben.</translation>
  </message>
  <message>
   <source>{} is no dimension of a joint; see the table of parameters.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no face or edge of the solid; pick one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no group of parameters ({}); correct the name.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no list of tables; write [[{}]] above each.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no ordinary file; name a file on a disk.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no parameter{}; correct the name or leave it out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is no part of a joint; the parts are {}.</source>
   <translation>{} ist kein Teil einer Verbindung; die Teile sind {}.</translation>
  </message>
  <message>
   <source>{} is not UTF-8 text (byte {}); save it as UTF-8.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is not UTF-8 text; save it as UTF-8.</source>
   <translation>{} ist kein UTF-8-Text; als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>{} is stated but empty; state its values, or leave it worked out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is {}, no table; write [{}] above it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} names {}, which the table of woods does not have ({})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} nests its tables or lists too deeply; make them flat.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} of option {} is no list of parameters; write it as ["neck.overhang"].</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} of option {} names {}, no parameter{}; correct the name.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} options are too many; state at most {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} short</source>
   <translation>{} zu wenig</translation>
  </message>
  <message>
   <source>{} to spare</source>
   <translation>{} Luft</translation>
  </message>
  <message>
   <source>{} was made by a newer NeckFit (schema {}, this one knows up to {}); update NeckFit.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} × [[{}]] are too many; state at most {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}); make it smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.Adopted links {}, which has no solid; mend it or link another.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.CoordinateSystem links nothing; link one, or pick faces.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.from is empty; name a part file, or leave it out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.from names {}, which says nothing of [{}]; name another file, or state [{}] there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.{} links nothing; link a {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}.{} links {}, which is no {}; link one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: FreeCAD cannot open it; save it again as a document.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: FreeCAD wrote a broken document; is the disk full?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: FreeCAD wrote no document; is the disk full?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: FreeCAD wrote no whole STEP file; is the disk full?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: a depth of {} mm goes through the body; make it shallower.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: a round end of radius {} mm does not meet sides {} mm apart; make the radius larger, or the mouth narrower.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: a solid is not valid; let Part's Check Geometry show where, and mend it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: cannot be read ({}); name another file.</source>
   <translation>{}: nicht lesbar ({}); eine andere Datei nennen.</translation>
  </message>
  <message>
   <source>{}: cannot be read as {}; it is broken or of another kind: save it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: cannot be written ({}); choose a folder that exists and that you may write to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: corners of radius {} mm do not fit an end {} mm wide; make the radius smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: corners of radius {} mm do not fit its sides; make them smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: holds no solid, only curves or points; save the neck as a solid.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: holds {} sketches; leave the outline's only.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: is not a neck, or its fretboard is missing: nothing on it is a fretboard's top, flat or evenly rounded, some 35 to 115 mm wide and more than 270 mm long.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: is not a neck, or its heel is incomplete: it has a surface like a fretboard's top, but no flat heel bottom 12 to 50 mm under its end.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: is not a neck, or not one alone: it is {} long, and a neck 450 to 900 mm{}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: is not a neck: {} is no neck's shape{}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: it holds a point that is no place; draw the outline again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: it holds a {}; leave only the outline's lines, arcs, polylines, circles, splines and ellipses.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: it holds more than one closed outline; leave only the body's.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: it holds no outline; draw one closed outline.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: its mesh is open or its sides contradict each other along {} edges; close it in the program it comes from.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: its outline lies {} mm above the drawing's plane; project it to Z = 0.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: its sides cross {} mm from the end; bring the widths at mouth and end closer together.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: its unit ($INSUNITS {}) is none of mm, cm, m, inch and foot; save it in mm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: more than {} part files build on each other, or a job uses more than {}; use fewer.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: no pocket was read from {}; mend it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: not read within {} seconds; save the neck alone, without hardware and engraving.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: part has no key {}{}; correct or remove it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: part is {}, no table; write [part] above it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: reading DXF needs the Python package ezdxf; install python3-ezdxf (Debian) or ezdxf (pip).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: reading it brought FreeCAD's kernel down; save the neck again, as STEP.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: reading was cancelled; nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: shows no solid and no mesh; make the neck visible.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: states neither a bridge nor a pickup; name another part file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the body's own pocket is larger than stated by {} mm ({}), and wood that is gone does not come back; state at least as much as was read from {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the dimension {} is not printed; the sheet was not written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the file is empty; save the neck again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the findings are out of date; check the joint again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the first line must name {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the fretboard's long edges were not found; pick its top by hand.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the heel has no straight upright side at {} y; pick it by hand.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the heel's end was not found; pick it by hand.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the joint does not fit a sheet {} even at 1:5.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made a solid that is not closed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made a solid that is not valid.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made a solid without volume.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made no single solid of the pocket's wood.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made no solid.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the kernel made {} solids where the part is one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline crosses or touches itself near X = {}, Y = {} mm; part its lines there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline does not hold the pocket's end wall, {} mm wide at the origin; place it so that the end wall's middle is the origin and X points to the bridge.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline encloses no body; draw it round the pocket.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline has a piece of {} mm near X = {}, Y = {} mm; leave it out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline has more than {} pieces; draw it with fewer.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline has too many curves; draw it with fewer.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline reaches more than {} mm from the origin; place its end wall at the origin, and check its units.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline {} at X = {}, Y = {} mm; make it one closed loop.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: the outline's front crosses the centreline {}, but pocket.length puts the mouth at X = {} mm; make them agree.</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} cannot be read; save the neck as STEP, IGES, BREP, FCStd, STL, OBJ or 3MF.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} does not lie flat; put it on the XY plane.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} has a curve that is neither line nor arc; use arcs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} has {} values for {} strings; state {}, treble first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is no list of 1 to {} values, one for each {}; write such a list, as [{}].</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is no month; write Jan or 1.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is no unit of bare numbers; write "mm" or "inch".</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is none of its choices{}; write one of {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is not one closed outline; close it, and leave one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is printed as {} but could not be measured on the solids; the sheet was not written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is printed as {} but the solids measure {} in mm or degrees; the sheet was not written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is printed as {}, but the tolerance set says {}; the sheet was not written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is printed as {}, which is no dimension.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} is stated by both {} and {}; take it out of one, or state it in the job itself.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} lies outside {} to {}.</source>
   <translation>{}: {} liegt außerhalb von {} bis {}.</translation>
  </message>
  <message>
   <source>{}: {} lies {} what is permitted; state {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} lines; write one for each of the twelve months.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} points are too many; state at most {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} values are too many; state at most {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} values for {} {}; state {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} would take its values from itself ({}); name another file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} {} is no {}; give it a value such as {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {}: pick faces of this neck, numbered 1 to {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {}; close it in the program it comes from.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {}; name one of these.</source>
   <translation type="unfinished" />
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
   <source>Check the joint by closed forms and on solids, and show the findings in the 3D view</source>
   <translation>Die Verbindung nach Formeln und an Volumenkörpern prüfen und die Befunde in der 3D-Ansicht zeigen</translation>
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
  <name>NeckFit_Mend</name>
  <message>
   <source>Tell which demands exclude one another, and the smallest changes that free the joint</source>
   <translation>Sagen, welche Forderungen einander ausschließen, und die kleinsten Änderungen, die abhelfen</translation>
  </message>
  <message>
   <source>What &amp;mends it…</source>
   <translation>Was &amp;hilft ab…</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_New</name>
  <message>
   <source>&amp;New joint</source>
   <translation>&amp;Neue Verbindung</translation>
  </message>
  <message>
   <source>Add a joint at default values, or at the shop's own as the preferences name them</source>
   <translation>Eine Verbindung mit Vorgabewerten anlegen, oder mit denen der Werkstatt laut Einstellungen</translation>
  </message>
 </context>
 <context>
  <name>NeckFit_Next</name>
  <message>
   <source>Ne&amp;xt finding</source>
   <translation>Nä&amp;chster Befund</translation>
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
   <translation>Auftragsdatei ö&amp;ffnen…</translation>
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
   <translation>Ver&amp;lorene Objekte wiederbeleben</translation>
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
   <translation>Spiel und Halt der Schrauben durch das Jahr beim Besitzer verfolgen</translation>
  </message>
  <message>
   <source>Through the &amp;year…</source>
   <translation>Durch das &amp;Jahr…</translation>
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
   <translation>Tiefen und Winkel, die &amp;gehen…</translation>
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
   <translation>Auftragsdatei &amp;schreiben…</translation>
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
   <translation>NeckFit Abwägen</translation>
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
