{{%AUTOESCAPE context="XML"}}
<section title="Betrachtete Köpfe" id="s-heads">
{{#ALTERNATIVES}}
<section title="Alternativen" id="s-alternatives">
<p>Die Stationen sind nach diesen Merkmalen geordnet, das wichtigste zuerst: wenigste offene Wünsche, wenigste Posten ohne Preis, kleinste Gesamtkosten in Klassen von 5 %, wenigste Stoßstellen, größte Geschwindigkeitsreserve, wenigste Köpfe, Gesamtkosten, Reihenfolge im Katalog. Innerhalb einer Klasse von 5 % entscheidet daher ein früheres Merkmal, auch wenn die Alternative etwas billiger ist.</p>
<table columns="l:* r:15 r:20 r:24 r:25 l:24 l:35" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Anordnung</cell><cell>Köpfe</cell><cell>Grenze, m/min</cell><cell>Investition</cell><cell>Gesamtkosten</cell><cell>Unterschiede</cell><cell>Nachrangig durch</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{HEADS}}</cell><cell>{{LIMIT}}</cell><cell>{{CAPITAL}}</cell><cell>{{OWNERSHIP}}</cell><cell>{{DIFFERS:none}}</cell><cell>{{BEHIND:none}}</cell></row>
{{/ROW}}
</table>
{{#FOOTNOTE}}<p>* Ohne die Posten auf Anfrage: {{ITEMS:none}}.</p>{{/FOOTNOTE}}
</section>
{{/ALTERNATIVES}}
{{#REJECTED}}
<section title="Nicht gewählte Köpfe und Gründe" id="s-rejected">
<table columns="l:30 l:*" caption="Jeder andere Kopf des Katalogs und der Grund, warum er nicht gewählt ist">
<head><cell>Kopf</cell><cell>Gründe</cell></head>
{{#ROW}}
<row><cell>{{HEAD}}</cell><cell>{{#REASON}}{{TEXT:none}}{{#REASON_separator}} {{/REASON_separator}}{{/REASON}}</cell></row>
{{/ROW}}
</table>
</section>
{{/REJECTED}}
</section>
