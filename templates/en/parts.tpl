{{%AUTOESCAPE context="XML"}}
<section title="Bill of materials" id="s-parts" wide="yes">
<table columns="r:10 l:* l:25 r:17 l:10 r:20 r:23 r:13" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Item</cell><cell>Designation and technical data</cell><cell>Part number</cell><cell>Quantity</cell><cell>Unit</cell><cell>Unit price</cell><cell>Price</cell><cell>Lead, d</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{ITEM}}</cell><cell><b>{{DESIGNATION:none}}</b>{{#DATA}}; {{TEXT}}{{/DATA}}{{#REFERENCE}}; {{TEXT}}{{/REFERENCE}}{{#SERVES}}; for {{TEXT:none}}{{/SERVES}}</cell><cell>{{PART}}</cell><cell>{{QUANTITY}}</cell><cell>{{UNIT:none}}</cell><cell>{{PRICE:none}}</cell><cell>{{EXTENDED:none}}</cell><cell>{{LEAD}}</cell></row>
{{/ROW}}
<row total="yes"><cell span="6">{{TOTAL_LABEL:none}}</cell><cell>{{TOTAL}}</cell><cell>{{LEAD}}</cell></row>
</table>
{{#LEAD_TIME}}<p>{{TEXT:none}}</p>{{/LEAD_TIME}}
</section>
{{#COST}}
<section title="Cost" id="s-cost">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
<table columns="l:* d:45" caption="{{CAPTION:none}}">
<head><cell>Cost</cell><cell>{{CURRENCY}}</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
</section>
{{/COST}}
