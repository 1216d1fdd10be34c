{{%AUTOESCAPE context="XML"}}
<section title="Härtung, Trocknung und Lüftung" id="s-stages">
{{#STAGE}}
<section title="{{TITLE:none}}" id="{{ANCHOR}}">
{{#BY}}<p>{{EQUIPMENT:none}}</p>{{/BY}}
<table columns="l:* r:50">
<head><cell>Eigenschaft</cell><cell>Wert</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>{{/ROW}}
</table>
{{#STRAY}}
<table columns="r:24 r:34 r:30 l:*" caption="Streulicht auf Augen und Haut, ohne Schutz">
<head><cell>Abstand, m</cell><cell>Bestrahlungsstärke, W/m²</cell><cell>Zeit am Tag</cell><cell>Erreichter Grenzwert</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{DISTANCE}}</cell><cell>{{IRRADIANCE}}</cell><cell>{{TIME:none}}</cell><cell>{{GOVERNS:none}}</cell></row>{{/ROW}}
</table>
{{/STRAY}}
{{#GUARDS}}
<table columns="r:45 r:45 r:*" caption="Optische Dichte von Schutzwänden gegen Streulicht, mindestens">
<head><cell>Abstand vom Druck, m</cell><cell>Wie angenommen</cell><cell>Beim größten gestreuten Anteil</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{DISTANCE}}</cell><cell>{{DENSITY:none}}</cell><cell>{{WORST:none}}</cell></row>{{/ROW}}
</table>
{{/GUARDS}}
{{#SOLVENTS}}
<table columns="l:20 l:* r:11 r:15 r:20 r:15 r:17 l:14 r:17" caption="Lösemittel und die für sie angesetzten Werte; Grenzwerte in ppm">
<head><cell>Tinte</cell><cell>Lösemittel</cell><cell>%</cell><cell>g/mol</cell><cell>UEG, %</cell><cell>8 h</cell><cell>15 min</cell><cell>Haut</cell><cell>Flammp., °C</cell></head>
{{#ROW}}<row><cell>{{INK}}</cell><cell>{{NAME:none}}</cell><cell>{{SHARE:none}}</cell><cell>{{MOLAR:none}}</cell><cell>{{LEL:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{SHORT:none}}</cell><cell>{{SKIN:none}}</cell><cell>{{FLASH:none}}</cell></row>{{/ROW}}
</table>
{{/SOLVENTS}}
{{#TEXT}}<p key="{{KEY}}">{{SENTENCE:none}}</p>{{/TEXT}}
</section>
{{/STAGE}}
</section>
