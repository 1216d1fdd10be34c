{{%AUTOESCAPE context="XML"}}
<section title="Printheads and their arrangement" id="s-arrangement">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
{{#TABLE}}
<table columns="{{COLUMNS}}" caption="{{CAPTION:none}}">
<head><cell>Property</cell>{{#GROUP}}<cell>{{NAME}}</cell>{{/GROUP}}</head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell>{{#CELL}}<cell>{{VALUE:none}}</cell>{{/CELL}}</row>
{{/ROW}}
</table>
{{/TABLE}}
{{#STACKING}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/STACKING}}
{{#PLAN}}
<section title="Plan of the heads" id="s-plan" wide="yes">
{{#ROUND}}<p>Heads round the body are seen from above, so that their plates look narrower than they are; the section in “Layout of the station” shows them from the end of the body.</p>{{/ROUND}}
{{DRAWING:none}}
{{#DETAIL}}{{DRAWING:none}}{{/DETAIL}}
</section>
{{/PLAN}}
</section>
