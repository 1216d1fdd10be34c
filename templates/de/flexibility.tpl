{{%AUTOESCAPE context="XML"}}
<section title="Spielraum und Wartung" id="s-flexibility">
{{#GROUP}}
<table columns="l:* l:78" caption="{{CAPTION:none}}">
<head><cell>Eigenschaft</cell><cell>Wert</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>{{/ROW}}
</table>
{{/GROUP}}
{{#SINGLE}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/SINGLE}}
</section>
