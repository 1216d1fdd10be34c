{{%AUTOESCAPE context="XML"}}
<section title="Tropfenfrequenz und Geschwindigkeit" id="s-frequency">
<table columns="l:* r:22 r:20 r:23 r:20 r:22" caption="Frequenz und Geschwindigkeitsgrenze je Gruppe">
<head><cell>Gruppe</cell><cell>Spalte, kHz</cell><cell>Je Düse, kHz</cell><cell>Erlaubt, kHz</cell><cell>Auslastung, %</cell><cell>Grenze, m/min</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{GROUP}}</cell><cell>{{COLUMN:none}}</cell><cell>{{NOZZLE:none}}</cell><cell>{{ALLOWED:none}}</cell><cell>{{USE:none}}</cell><cell>{{LIMIT:none}}</cell></row>
{{/ROW}}
</table>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
{{#PLOT}}
{{FIGURE:none}}
{{/PLOT}}
{{#SCAN}}
<section title="{{TITLE}}" id="{{ANCHOR}}">
<table columns="l:* r:55">
<head><cell>Eigenschaft</cell><cell>Wert</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>
{{/ROW}}
</table>
</section>
{{/SCAN}}
</section>
