{{%AUTOESCAPE context="XML"}}
<section title="Heads considered" id="s-heads">
{{#ALTERNATIVES}}
<section title="Alternatives" id="s-alternatives">
<p>Stations are ranked by, in this order: fewest wishes unmet, fewest unpriced lines, least cost of ownership in classes 5 % wide, fewest joints, largest speed margin, fewest heads, cost of ownership, order of the catalogue. Inside one class of 5 % an earlier term therefore decides even where the alternative is a little cheaper.</p>
<table columns="l:* r:15 r:20 r:24 r:25 l:24 l:35" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Arrangement</cell><cell>Heads</cell><cell>Speed limit, m/min</cell><cell>Capital</cell><cell>Ownership</cell><cell>Differs in</cell><cell>Stands behind by</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{HEADS}}</cell><cell>{{LIMIT}}</cell><cell>{{CAPITAL}}</cell><cell>{{OWNERSHIP}}</cell><cell>{{DIFFERS:none}}</cell><cell>{{BEHIND:none}}</cell></row>
{{/ROW}}
</table>
{{#FOOTNOTE}}<p>* Without what is on request: {{ITEMS:none}}.</p>{{/FOOTNOTE}}
</section>
{{/ALTERNATIVES}}
{{#REJECTED}}
<section title="Heads not chosen, and why" id="s-rejected">
<table columns="l:30 l:*" caption="Every other head of the catalogue, and why">
<head><cell>Head</cell><cell>Reasons</cell></head>
{{#ROW}}
<row><cell>{{HEAD}}</cell><cell>{{#REASON}}{{TEXT:none}}{{#REASON_separator}} {{/REASON_separator}}{{/REASON}}</cell></row>
{{/ROW}}
</table>
</section>
{{/REJECTED}}
</section>
