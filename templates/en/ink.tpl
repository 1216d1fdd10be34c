{{%AUTOESCAPE context="XML"}}
<section title="Ink and consumables" id="s-ink">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
{{#USE}}
<table columns="l:* r:23 r:24 r:23 r:20 r:22" caption="Ink and flushing fluid per channel">
<head><cell>Channel</cell><cell>Printed, mL/h</cell><cell>Waste and flush, mL/h</cell><cell>Total, mL/h</cell><cell>Month, L</cell><cell>Year, L</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{PRINTED:none}}</cell><cell>{{WASTE:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{MONTH:none}}</cell><cell>{{YEAR:none}}</cell></row>
{{/ROW}}
<row key="{{KEY}}" total="yes"><cell>All channels</cell><cell>{{PRINTED:none}}</cell><cell>{{WASTE:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{MONTH:none}}</cell><cell>{{YEAR:none}}</cell></row>
</table>
{{/USE}}
{{#PARTS}}
<table columns="l:* r:40" caption="Ink per thousand parts">
<head><cell>Channel</cell><cell>mL per 1000 parts</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
{{/PARTS}}
{{#SPARES}}
<section title="Spare parts" id="s-spares">
<p>{{TEXT:none}}</p>
<table columns="l:* r:35 r:30" caption="Spare parts">
<head><cell>Part number</cell><cell>Mean demand in lead time</cell><cell>Spares to hold</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{PART}}</cell><cell>{{MEAN:none}}</cell><cell>{{QUANTITY:none}}</cell></row>{{/ROW}}
</table>
</section>
{{/SPARES}}
</section>
