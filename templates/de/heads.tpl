{{%AUTOESCAPE context="XML"}}
<section title="Betrachtete Köpfe" id="s-heads">
{{#ALTERNATIVES}}
<section title="Alternativen" id="s-alternatives">
<p>Die Stationen sind nach diesen Merkmalen geordnet, das wichtigste zuerst: die wenigsten unerfüllten Wünsche, wenigste Posten ohne Preis, kleinste Gesamtkosten in Klassen von 5 %, wenigste am Nachbarn auszurichtende Köpfe, größte Geschwindigkeitsreserve, wenigste Köpfe, Gesamtkosten, Reihenfolge im Katalog. Innerhalb einer Klasse von 5 % entscheidet daher ein früheres Merkmal, auch wenn die Alternative etwas billiger ist.</p>
<table columns="l:28 l:* l:36 l:46" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Station</cell><cell>Anordnung</cell><cell>Unterschiede</cell><cell>Nachrangig wegen</cell></head>
{{#ROW}}
<row><cell>{{STATION:none}}</cell><cell>{{NAME:none}}</cell><cell>{{DIFFERS:none}}</cell><cell>{{BEHIND:none}}</cell></row>
{{/ROW}}
</table>
{{#SIDE}}
<table columns="{{COLUMNS}}" caption="{{CAPTION:none}}" wide="yes">
<head><cell></cell>{{#STATION}}<cell>{{NAME:none}}</cell>{{/STATION}}</head>
{{#LINE}}
<row{{#KEEP}} keep="yes"{{/KEEP}}><cell>{{NAME:none}}</cell>{{#VALUE}}<cell>{{TEXT:none}}</cell>{{/VALUE}}</row>
{{/LINE}}
</table>
<p>Auf der Front der besten (Pareto) steht eine Station, die hier keine andere in Gesamtkosten, Kopfzahl, Geschwindigkeitsgrenze der Köpfe und Passerabweichung zugleich erreicht oder übertrifft. Die Zahlen einer Alternative stammen aus denselben Schritten wie die der gewählten Station, mit ihren eigenen Köpfen; jede führt zu ihrem Schritt.</p>
{{/SIDE}}
{{#FOOTNOTE}}<p>* Ohne die Posten auf Anfrage: {{ITEMS:none}}.</p>{{/FOOTNOTE}}
</section>
{{/ALTERNATIVES}}
{{#REJECTED}}
<section title="Nicht gewählte Köpfe und Gründe" id="s-rejected">
<p>Was ein Kopf erreicht, führt zu seinem Schritt oder, wo der Katalog es nennt, zu seiner Zeile dort; das, woran er gemessen wird, führt zur Anfrage oder zum Schritt der gewählten Station.</p>
<table columns="l:30 l:*" caption="Jeder andere Kopf des Katalogs und der Grund, warum er nicht gewählt ist">
<head><cell>Kopf</cell><cell>Gründe</cell></head>
{{#ROW}}
<row><cell>{{HEAD:none}}</cell><cell>{{#REASON}}{{TEXT:none}}{{#REASON_separator}} {{/REASON_separator}}{{/REASON}}</cell></row>
{{/ROW}}
</table>
</section>
{{/REJECTED}}
</section>
