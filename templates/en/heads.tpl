{{%AUTOESCAPE context="XML"}}
<section title="Heads considered" id="s-heads">
{{#ALTERNATIVES}}
<section title="Alternatives" id="s-alternatives">
<table columns="l:* r:14 r:22 r:28 r:28 l:30" caption="{{CAPTION:none}}" wide="yes">
<head><cell>Arrangement</cell><cell>Heads</cell><cell>Speed limit, m/min</cell><cell>Capital</cell><cell>Ownership</cell><cell>Differs in</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{HEADS}}</cell><cell>{{LIMIT}}</cell><cell>{{CAPITAL}}</cell><cell>{{OWNERSHIP}}</cell><cell>{{DIFFERS:none}}</cell></row>
{{/ROW}}
</table>
</section>
{{/ALTERNATIVES}}
{{#REJECTED}}
<section title="Heads not chosen, and why" id="s-rejected">
<table columns="l:30 l:*" caption="Every other head of the catalogue with each gate it fails">
<head><cell>Head</cell><cell>Reasons</cell></head>
{{#ROW}}
<row><cell>{{HEAD}}</cell><cell>{{#REASON}}{{TEXT:none}}{{#REASON_separator}} {{/REASON_separator}}{{/REASON}}</cell></row>
{{/ROW}}
</table>
</section>
{{/REJECTED}}
</section>
