{{%AUTOESCAPE context="XML"}}
<section title="Bill of materials" id="s-parts" landscape="yes">
<table columns="r:9 r:16 l:11 l:25 l:* l:34 l:44 r:22 r:24 r:14" caption="{{CAPTION:none}}">
<head><cell>Item</cell><cell>Quantity</cell><cell>Unit</cell><cell>Part number</cell><cell>Designation and technical data</cell><cell>Reference</cell><cell>For</cell><cell>Unit price</cell><cell>Price</cell><cell>Lead time, d</cell></head>
{{#ROW}}
{{#PART_OF_BILL}}<row keep="yes"><cell/><cell/><cell/><cell/><cell span="6"><b>{{TEXT:none}}</b></cell></row>{{/PART_OF_BILL}}
<row id="{{ANCHOR}}"><cell>{{ITEM}}</cell><cell>{{QUANTITY:none}}</cell><cell>{{UNIT:none}}</cell><cell>{{PART:none}}</cell><cell><b>{{DESIGNATION:none}}</b>{{#DATA}}; {{TEXT:none}}{{/DATA}}</cell><cell>{{REFERENCE}}</cell><cell>{{SERVES:none}}</cell><cell>{{PRICE:none}}</cell><cell>{{EXTENDED:none}}</cell><cell>{{LEAD}}</cell></row>
{{/ROW}}
<row total="yes"><cell span="8">{{TOTAL_LABEL:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{LEAD:none}}</cell></row>
</table>
<p>Not contained: {{NOT_CONTAINED:none}}. What is on request is not in the total. Names of fields and designations stand as in the catalogue file.</p>
{{#LEAD_TIME}}<p>{{TEXT:none}}</p>{{/LEAD_TIME}}
</section>
{{#COST}}
<section title="Cost" id="s-cost">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
<table columns="l:* d:45" caption="{{CAPTION:none}}">
<head><cell>Cost</cell><cell>{{CURRENCY}}</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
{{SHARES:none}}
{{#SWINGS}}
<table columns="l:* r:36 r:36 r:36" caption="{{CAPTION:none}}">
<head><cell>Term</cell><cell>At today’s value, {{CURRENCY}}</cell><cell>Ownership if less</cell><cell>Ownership if more</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell><cell>{{LOW:none}}</cell><cell>{{HIGH:none}}</cell></row>{{/ROW}}
</table>
{{/SWINGS}}
{{STEPS:none}}
{{#UNPRICED}}<p>Capital and cost of ownership are lower bounds; on request, and so not in them: {{ITEMS:none}}.</p>{{/UNPRICED}}
{{#WITHOUT}}<p>The yearly sums and the cost of ownership are lower bounds: they stand without {{ITEMS:none}}.</p>{{/WITHOUT}}
{{#BASIS}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/BASIS}}
<p>Ink, energy and the life of heads are at mean coverage and nominal speed over the running hours. Ink is without flushing fluid, which stands with wear parts and cleaning. Energy is that of lamps and dryers; that of heads, ink heaters, controls and fans is not counted. Labour a year is only the replacement and alignment of heads; operators are not contained.</p>
</section>
{{/COST}}
