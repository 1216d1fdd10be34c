{{%AUTOESCAPE context="XML"}}
<section title="Curing and drying" id="s-stages">
{{#STAGE}}
<section title="{{TITLE:none}}" id="{{ANCHOR}}">
<p>{{EQUIPMENT:none}}</p>
<table columns="l:* r:50">
<head><cell>Property</cell><cell>Value</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
</section>
{{/STAGE}}
</section>
