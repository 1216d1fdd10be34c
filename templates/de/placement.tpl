{{%AUTOESCAPE context="XML"}}
<section title="Tropfenflug und Platzierung" id="s-placement">
<table columns="l:* r:13 r:20 r:20 r:20 r:17 r:24" caption="Flug des kleinsten und des größten verwendeten Tropfens über den kleinsten, den nominellen und den größten Düsenabstand">
<head><cell>Gruppe</cell><cell>Tropfen, pL</cell><cell>Start, m/s</cell><cell>Abstand, mm</cell><cell>Aufprall, m/s</cell><cell>Zeit, µs</cell><cell>Kommt zum Stillstand nach, mm</cell></head>
{{#FLIGHT}}
<row key="{{KEY}}"><cell>{{GROUP}}</cell><cell>{{DROP:none}}</cell><cell>{{START:none}}</cell><cell>{{THROW:none}}</cell><cell>{{IMPACT:none}}</cell><cell>{{TIME:none}}</cell><cell>{{STOP:none}}</cell></row>
{{/FLIGHT}}
</table>
<p>Jeder Tropfen ist allein in ruhender Luft gerechnet, mit dem {{LAW:none}}, der mit dem gemessenen auf 5 % übereinstimmt. In einer Tropfenfolge schirmt jeder Tropfen den nächsten ab, sodass tatsächliche Tropfen früher und schneller ankommen; gemessene Bahnen weichen von einer solchen Rechnung um bis zu 15 % ab. Luft, die das bewegte Produkt mitreißt, ist nicht berücksichtigt.</p>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
{{#BUDGETS}}
<section title="Platzierungsbudgets" id="s-placement-budgets">
<p>Ein Fehlerbudget summiert, was einen Punkt versetzt, nach dem {{GUIDE:none}}: <i>U</i> = 2 √Σ<i>u</i>², etwa 95 % der Punkte, und systematische Beiträge linear, höchstens aber den ungünstigsten Fall. Maßgebend für die Grenze ist <i>U</i>; der ungünstigste Fall, alle Beiträge zugleich, steht daneben. Fehler, die allen Punkten eines Budgets gemeinsam sind, bleiben darin unberücksichtigt.</p>
<table columns="l:* l:20 r:13 r:14 r:15 l:21 l:27" caption="Platzierungsbudgets">
<head><cell>Budget</cell><cell>Achse</cell><cell><i>U</i>, µm</cell><cell>Max., µm</cell><cell>Grenze, µm</cell><cell>Urteil</cell><cell>Zuerst verbessern</cell></head>
{{#BUDGET}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{AXIS:none}}</cell><cell>{{U:none}}</cell><cell>{{WORST:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{VERDICT:none}}</cell><cell>{{FIRST:none}}</cell></row>
{{/BUDGET}}
</table>
{{DRAWING:none}}
<table columns="l:* l:30 l:22 r:21 r:17 r:13" caption="Beiträge zu den Budgets: Halbweite, daraus folgender Versatz, Standardunsicherheit">
<head><cell>Budget</cell><cell>Beitrag</cell><cell>Verteilung</cell><cell>Halbweite</cell><cell>Versatz, µm</cell><cell><i>u</i>, µm</cell></head>
{{#TERM}}
<row key="{{KEY}}"{{#GOES_ON}} keep="yes"{{/GOES_ON}}><cell>{{NAME:none}}</cell><cell>{{TERM:none}}</cell><cell>{{KIND:none}}</cell><cell>{{HALF:none}}</cell><cell>{{SHIFT:none}}</cell><cell>{{U}}</cell></row>
{{/TERM}}
</table>
{{#PACE}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
<table columns="l:* r:28 r:33 r:18 l:20" caption="Budgets entlang des Hubs bei der Geschwindigkeit, die den Durchsatz gerade erreicht">
<head><cell>Budget</cell><cell><i>U</i> wie gefahren, µm</cell><cell><i>U</i> bei dieser Geschwindigkeit, µm</cell><cell>Grenze, µm</cell><cell>Urteil</cell></head>
{{#BUDGET}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{NOW:none}}</cell><cell>{{U:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{VERDICT:none}}</cell></row>
{{/BUDGET}}
</table>
{{/PACE}}
</section>
{{/BUDGETS}}
</section>
