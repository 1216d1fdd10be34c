{{%AUTOESCAPE context="XML"}}
<section title="Heads considered" id="s-heads">
{{#ALTERNATIVES}}
<section title="Alternatives" id="s-alternatives">
<p>Stations are ranked by, in this order: fewest wishes unmet, fewest unpriced lines, least cost of ownership in classes 5 % wide, fewest heads to align to a neighbour, largest speed margin, fewest heads, cost of ownership, order of the catalogue. Inside one class of 5 % an earlier term therefore decides even where the alternative is a little cheaper.</p>
<table columns="l:28 l:* l:36 l:46" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Station</cell><cell>Arrangement</cell><cell>Differs in</cell><cell>Stands behind by</cell></head>
{{#ROW}}
<row><cell>{{STATION:none}}</cell><cell>{{NAME:none}}</cell><cell>{{DIFFERS:none}}</cell><cell>{{BEHIND:none}}</cell></row>
{{/ROW}}
</table>
{{#SIDE}}
<table columns="{{COLUMNS}}" caption="{{CAPTION:none}}" wide="yes">
<head><cell></cell>{{#STATION}}<cell>{{NAME:none}}</cell>{{/STATION}}</head>
{{#LINE}}
<row{{#KEEP}} keep="yes"{{/KEEP}}><cell>{{NAME:none}}</cell>{{#VALUE}}<cell>{{TEXT:none}}</cell>{{/VALUE}}</row>
{{/LINE}}
</table>
<p>On the front of the best (Pareto) stands a station that no other here equals or betters in cost of ownership, heads, speed limit of the heads and registration error all at once. The figures of an alternative come of the same steps as those of the chosen station, with its own heads; each leads to its own.</p>
{{/SIDE}}
{{#FOOTNOTE}}<p>* Without what is on request: {{ITEMS:none}}.</p>{{/FOOTNOTE}}
</section>
{{/ALTERNATIVES}}
{{#REJECTED}}
<section title="Heads not chosen, and why" id="s-rejected">
<p>What a head comes to leads to its step, or to its row of the catalogue where that states it; what it is held against to the request or to the step of the station chosen.</p>
<table columns="l:30 l:*" caption="Every head of the catalogue that is not chosen, and why">
<head><cell>Head</cell><cell>Reasons</cell></head>
{{#ROW}}
<row><cell>{{HEAD:none}}</cell><cell>{{#REASON}}{{TEXT:none}}{{#REASON_separator}} {{/REASON_separator}}{{/REASON}}</cell></row>
{{/ROW}}
</table>
</section>
{{/REJECTED}}
</section>
