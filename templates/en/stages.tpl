{{%AUTOESCAPE context="XML"}}
<section title="Cure, drying and ventilation" id="s-stages">
{{#STAGE}}
<section title="{{TITLE:none}}" id="{{ANCHOR}}">
{{#BY}}<p>{{EQUIPMENT:none}}</p>{{/BY}}
<table columns="l:* r:50">
<head><cell>Property</cell><cell>Value</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>{{/ROW}}
</table>
{{#STRAY}}
<table columns="r:24 r:34 r:30 l:*" caption="Stray light on eyes and skin, without guards">
<head><cell>Distance, m</cell><cell>Irradiance, W/m²</cell><cell>Time a day</cell><cell>Limit reached</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{DISTANCE}}</cell><cell>{{IRRADIANCE}}</cell><cell>{{TIME:none}}</cell><cell>{{GOVERNS:none}}</cell></row>{{/ROW}}
</table>
{{/STRAY}}
{{#GUARDS}}
<table columns="r:45 r:45 r:*" caption="Optical density of guards against scattered light, at least">
<head><cell>Distance from the print, m</cell><cell>As assumed</cell><cell>With the greatest share scattered</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{DISTANCE}}</cell><cell>{{DENSITY:none}}</cell><cell>{{WORST:none}}</cell></row>{{/ROW}}
</table>
{{/GUARDS}}
{{#SOLVENTS}}
<table columns="l:20 l:* r:11 r:15 r:20 r:15 r:17 l:14 r:17" caption="Solvents and what they are reckoned with; limits in ppm">
<head><cell>Ink</cell><cell>Solvent</cell><cell>%</cell><cell>g/mol</cell><cell>LEL, %</cell><cell>8 h</cell><cell>15 min</cell><cell>Skin</cell><cell>Flash, °C</cell></head>
{{#ROW}}<row><cell>{{INK}}</cell><cell>{{NAME:none}}</cell><cell>{{SHARE:none}}</cell><cell>{{MOLAR:none}}</cell><cell>{{LEL:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{SHORT:none}}</cell><cell>{{SKIN:none}}</cell><cell>{{FLASH:none}}</cell></row>{{/ROW}}
</table>
{{/SOLVENTS}}
{{#TEXT}}<p key="{{KEY}}">{{SENTENCE:none}}</p>{{/TEXT}}
</section>
{{/STAGE}}
</section>
