{{%AUTOESCAPE context="XML"}}
<section title="Flexibility and service" id="s-flexibility">
{{#GROUP}}
<table columns="l:* l:78" caption="{{CAPTION:none}}">
<head><cell>Property</cell><cell>Value</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>{{/ROW}}
</table>
{{/GROUP}}
{{#SINGLE}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/SINGLE}}
</section>
