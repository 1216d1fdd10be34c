{{%AUTOESCAPE context="XML"}}
<section title="Resolution" id="s-resolution">
<p key="{{KEY}}">The system shall print at no less than <b>{{REQUIRED}}</b> (across × along the line). {{GOVERNED:none}}</p>
<table columns="l:* r:24 r:24 l:44" caption="Demands on resolution">
<head><cell>Demand</cell><cell>Across, dpi</cell><cell>Along, dpi</cell><cell>Kind</cell></head>
{{#DEMAND}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{ACROSS:none}}</cell><cell>{{ALONG:none}}</cell><cell>{{KIND:none}}</cell></row>
{{/DEMAND}}
</table>
{{EYE:none}}
{{#CEILING}}
<p key="{{KEY}}">On this substrate dots cannot show more than {{VALUE}}: finer lattices only overlap the dots further.</p>
{{/CEILING}}
{{#DELIVERED}}
<table columns="l:* r:30 r:30 r:30" caption="Delivered lattice">
<head><cell>Group</cell><cell>Native, npi</cell><cell>Across, dpi</cell><cell>Along, dpi</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{GROUP}}</cell><cell>{{NATIVE}}</cell><cell>{{ACROSS}}</cell><cell>{{ALONG}}</cell></row>
{{/ROW}}
</table>
{{/DELIVERED}}
{{#BARCODES}}
<section title="Bar code on the lattice" id="s-barcode">
<table columns="l:* l:18 r:16 r:22 r:22 l:30" caption="Module of the bar code in whole dots">
<head><cell>Symbol, group</cell><cell>Axis</cell><cell>Dots</cell><cell>Asked, mm</cell><cell>Printed, mm</cell><cell>Range, mm; verdict</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{SYMBOL:none}}, {{GROUP}}</cell><cell>{{AXIS:none}}</cell><cell>{{DOTS}}</cell><cell>{{ASKED}}</cell><cell>{{PRINTED}}</cell><cell>{{RANGE}}; {{VERDICT:none}}</cell></row>
{{/ROW}}
</table>
</section>
{{/BARCODES}}
</section>
