{{%AUTOESCAPE context="XML"}}
<section title="How far the figures may move" id="s-uncertainty">
<p>Lowest and highest of each figure while one assumption, or one input given as uncertain, runs over its range and all others stay: one at a time, so the effects of several do not show together. Kind of head, mode, interleaving, stack and resolution stay as chosen; all else is worked out anew, the count of heads across and the drop that closes solids too. Where the station no longer passes at such an end, that stands among the conditions; the placement figures there are smaller, because the other tolerances are taken at their kind end.</p>
<table columns="l:* r:25 r:25 r:25 l:38" caption="Key figures and what moves each of them most">
<head><cell>Figure</cell><cell>This station</cell><cell>Lowest</cell><cell>Highest</cell><cell>Moved most by, over its range</cell></head>
{{#ROW}}
<row key="{{KEY}}"{{#KEEP}} keep="yes"{{/KEEP}}><cell>{{FIGURE:none}}</cell><cell>{{VALUE}}</cell><cell>{{LOW:none}}</cell><cell>{{HIGH:none}}</cell><cell>{{MOVER:none}}</cell></row>
{{/ROW}}
</table>
</section>
