{{%AUTOESCAPE context="XML"}}
<section title="Rechenweg" id="s-trace" wide="yes">
<p>Jeder Schritt in der Reihenfolge der Rechnung. Die gedruckte Formel ist die, mit der gerechnet wurde; bei jeder Eingabe steht, woher sie kommt: eine Zeile der Anfrage, eine Zeile des Katalogs, eine Annahme, ein früherer Schritt oder eine Konstante. Schritte, die in Formel, Eingaben, Ergebnis und Quelle übereinstimmen, stehen in einer Zeile mit allen ihren Namen. Zuletzt stehen Werte von Alternativen, von nicht gewählten Köpfen und zu anderen Werten als den verlangten oder angenommenen: derselbe Rechenweg noch einmal, mit dem, was dort genannt ist. Quellen S stehen im <a to="s-sources">Abschnitt „Quellen“</a>. Die Namen der Schritte stehen in der Sprache der Rechnung, Englisch.</p>
<table columns="l:34 l:* r:33" wide="yes">
<head><cell>Schritt</cell><cell>Formel und Eingaben; Quelle; Gültigkeit</cell><cell>Ergebnis</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}" also="{{ANCHORS}}"><cell>{{ID}}{{#ALSO_FOR}}, auch für {{#NAME}}{{TEXT}}{{#NAME_separator}}, {{/NAME_separator}}{{/NAME}}{{/ALSO_FOR}}{{#ALSO}}, auch {{#NAME}}{{TEXT}}{{#NAME_separator}}, {{/NAME_separator}}{{/NAME}}{{/ALSO}}</cell><cell><code>{{SYMBOL}}</code> {{RELATION:none}} {{FORMULA:none}}{{CONDITION:none}}{{#INPUTS}}, mit {{#INPUT}}<code>{{SYMBOL}}</code> = {{VALUE:none}} ({{ORIGIN:none}}){{#INPUT_separator}}; {{/INPUT_separator}}{{/INPUT}}{{/INPUTS}}. <a to="{{SOURCE_ANCHOR}}">{{SOURCE}}</a> ({{TAG:none}}); Gültigkeit: {{VALIDITY:none}}{{#ASSUMES}}; Annahme: {{TEXT:none}}{{/ASSUMES}}</cell><cell><b>{{VALUE:none}}</b></cell></row>
{{/ROW}}
</table>
</section>
