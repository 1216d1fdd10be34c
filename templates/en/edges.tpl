{{%AUTOESCAPE context="XML"}}
<section title="Room around the answer" id="s-edges">
<p>How far each number may move by itself, all else as asked: until the heads chosen, as they stand, no longer pass every check; and until another station is recommended. Lamps, dryers and supplies are chosen anew at each value; {{INSTALLED:none}} Values are rounded to the side that passes. Twice and half of what is asked is as far as was looked. A dash under “Beyond it recommended” means: up to that bound no other station is recommended; what fits beyond it was not looked for here. Placement passes here as it does in the checks: with every assumed tolerance at the kind end of its range. A request issued anew with a value of this table shows the working at that value.</p>
<table columns="l:* l:17 r:20 r:24 l:26 r:24 l:32" caption="Edges, each of one number moved alone" wide="yes">
<head><cell>Number moved</cell><cell>Unit</cell><cell>Asked</cell><cell>These heads pass to</cell><cell>Held by</cell><cell>Recommended to</cell><cell>Beyond it recommended</cell></head>
{{#ROW}}
<row><cell>{{NAME:none}}</cell><cell>{{UNIT}}</cell><cell>{{NOW:none}}</cell><cell>{{PASSES:none}}</cell><cell>{{GATE:none}}</cell><cell>{{RECOMMENDED:none}}</cell><cell>{{BEYOND:none}}</cell></row>
{{/ROW}}
</table>
</section>
