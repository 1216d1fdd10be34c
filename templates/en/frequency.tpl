{{%AUTOESCAPE context="XML"}}
<section title="Jetting frequency and speed" id="s-frequency">
<table columns="l:* r:22 r:20 r:23 r:16 r:22" caption="Frequency and speed limit per group">
<head><cell>Group</cell><cell>Column, kHz</cell><cell>Per nozzle, kHz</cell><cell>Allowed, kHz</cell><cell>Use, %</cell><cell>Speed limit, m/min</cell></head>
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
<head><cell>Property</cell><cell>Value</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>
{{/ROW}}
</table>
</section>
{{/SCAN}}
</section>
