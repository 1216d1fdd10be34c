{{%AUTOESCAPE context="XML"}}
<section title="Druckköpfe und ihre Anordnung" id="s-arrangement">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
{{#TABLE}}
<table columns="{{COLUMNS}}" caption="{{CAPTION:none}}">
<head><cell>Eigenschaft</cell>{{#GROUP}}<cell>{{NAME}}</cell>{{/GROUP}}</head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell>{{#CELL}}<cell>{{VALUE:none}}</cell>{{/CELL}}</row>
{{/ROW}}
</table>
{{/TABLE}}
{{#STACKING}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/STACKING}}
{{#PLAN}}
<section title="Draufsicht der Köpfe" id="s-plan" wide="yes">
{{#ROUND}}<p>Köpfe um den Körper sind von oben gesehen, sodass ihre Düsenplatten schmaler aussehen, als sie sind; der Schnitt in „Aufbau der Station“ zeigt sie vom Ende des Körpers her.</p>{{/ROUND}}
{{DRAWING:none}}
{{#DETAIL}}{{DRAWING:none}}{{/DETAIL}}
</section>
{{/PLAN}}
</section>
