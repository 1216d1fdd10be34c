{{%AUTOESCAPE context="XML"}}
<section title="Dots on the lattice" id="s-dots">
<table columns="l:* r:14 r:18 r:18 r:17 r:18 r:20" caption="Drops, dots and cover of a solid, per channel">
<head><cell>Channel</cell><cell>Levels</cell><cell>Drop, pL</cell><cell>Drop, µm</cell><cell>Dot, µm</cell><cell>Cover, %</cell><cell>Laydown, mL/m²</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{LEVELS:none}}</cell><cell>{{VOLUME:none}}</cell><cell>{{DROP:none}}</cell><cell>{{DOT:none}}</cell><cell>{{COVER:none}}</cell><cell>{{LAYDOWN:none}}</cell></row>
{{/ROW}}
</table>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
{{#TONES}}
<table columns="r:18 r:23 r:23 r:23 r:*" caption="{{CAPTION}}">
<head><cell>Step</cell><cell>Drop, pL</cell><cell>Drop, µm</cell><cell>Dot, µm</cell><cell>Cover, a dot at every place, %</cell></head>
{{#TONE}}
<row key="{{KEY}}"><cell>{{STEP}}</cell><cell>{{VOLUME:none}}</cell><cell>{{DROP:none}}</cell><cell>{{DOT:none}}</cell><cell>{{COVER:none}}</cell></row>
{{/TONE}}
</table>
{{/TONES}}
{{DRAWING:none}}
</section>
