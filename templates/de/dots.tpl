{{%AUTOESCAPE context="XML"}}
<section title="Punkte auf dem Raster" id="s-dots">
<table columns="l:* r:14 r:18 r:18 r:17 r:18 r:20" caption="Tropfen, Punkte und Deckung einer Vollfläche, je Kanal">
<head><cell>Kanal</cell><cell>Stufen</cell><cell>Tropfen, pL</cell><cell>Tropfen, µm</cell><cell>Punkt, µm</cell><cell>Deckung, %</cell><cell>Auftrag, mL/m²</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{LEVELS:none}}</cell><cell>{{VOLUME:none}}</cell><cell>{{DROP:none}}</cell><cell>{{DOT:none}}</cell><cell>{{COVER:none}}</cell><cell>{{LAYDOWN:none}}</cell></row>
{{/ROW}}
</table>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
{{#TONES}}
<table columns="r:18 r:23 r:23 r:23 r:*" caption="{{CAPTION}}">
<head><cell>Stufe</cell><cell>Tropfen, pL</cell><cell>Tropfen, µm</cell><cell>Punkt, µm</cell><cell>Deckung, ein Punkt auf jedem Platz, %</cell></head>
{{#TONE}}
<row key="{{KEY}}"><cell>{{STEP}}</cell><cell>{{VOLUME:none}}</cell><cell>{{DROP:none}}</cell><cell>{{DOT:none}}</cell><cell>{{COVER:none}}</cell></row>
{{/TONE}}
</table>
{{/TONES}}
{{DRAWING:none}}
</section>
