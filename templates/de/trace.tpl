{{%AUTOESCAPE context="XML"}}
<section title="Rechenweg" id="s-trace" wide="yes">
<p>Jeder Schritt in der Reihenfolge der Rechnung. Die gedruckte Formel ist die, mit der gerechnet wurde; bei jeder Eingabe steht, woher sie kommt: eine Zeile der Anfrage, eine Zeile des Katalogs, eine Annahme, ein früherer Schritt oder eine Konstante. Quellen S stehen im <a to="s-sources">Abschnitt „Quellen“</a>. Bezeichner, Quellen und Gültigkeit stehen in der Sprache der Rechnung, Englisch.</p>
<table columns="l:34 l:* r:27 l:35" wide="yes">
<head><cell>Schritt</cell><cell>Formel und Eingaben</cell><cell>Ergebnis</cell><cell>Quelle; gültig für</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{ID}}</cell><cell><code>{{SYMBOL}}</code> {{RELATION:none}} <code>{{FORMULA}}</code>{{CONDITION:none}}{{#INPUTS}}, mit {{#INPUT}}<code>{{SYMBOL}}</code> = {{VALUE}} ({{ORIGIN:none}}){{#INPUT_separator}}; {{/INPUT_separator}}{{/INPUT}}{{/INPUTS}}</cell><cell><b>{{VALUE}}</b></cell><cell><a to="{{SOURCE_ANCHOR}}">{{SOURCE}}</a> ({{TAG:none}}); {{VALIDITY}}{{#ASSUMES}}; Annahme: {{TEXT:none}}{{/ASSUMES}}</cell></row>
{{/ROW}}
</table>
</section>
