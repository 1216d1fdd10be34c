{{%AUTOESCAPE context="XML"}}
<section title="Quellen" id="s-sources">
<table columns="l:10 l:* l:45">
<head><cell>Nr.</cell><cell>Quelle</cell><cell>Art des Nachweises</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{TAG:none}}</cell></row>
{{/ROW}}
</table>
{{#CATALOGUE}}
<section title="Verwendete Katalogwerte" id="s-catalogue" wide="yes">
<p>{{DATED:none}}{{#LINES}} {{TEXT:none}}{{/LINES}}</p>
<table columns="l:34 l:* r:12" wide="yes">
<head><cell>Eintrag</cell><cell>Werte</cell><cell>Zeile</cell></head>
{{#ROW}}<row id="{{ANCHOR}}"><cell>{{NAME}}</cell><cell>{{#VALUE}}{{FIELD}}&#160;<b>{{TEXT}}</b>{{#VALUE_separator}}; {{/VALUE_separator}}{{/VALUE}}</cell><cell>{{LINE}}</cell></row>{{/ROW}}
</table>
</section>
{{/CATALOGUE}}
</section>
