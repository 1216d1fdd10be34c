{{%AUTOESCAPE context="XML"}}
<section title="Drop flight and placement" id="s-placement">
<table columns="l:* r:13 r:20 r:20 r:20 r:16 r:22" caption="Flight of the smallest and the largest drop in use, over the least, the nominal and the greatest throw">
<head><cell>Group</cell><cell>Drop, pL</cell><cell>Start, m/s</cell><cell>Throw, mm</cell><cell>Impact, m/s</cell><cell>Time, µs</cell><cell>Stops after, mm</cell></head>
{{#FLIGHT}}
<row key="{{KEY}}"><cell>{{GROUP}}</cell><cell>{{DROP:none}}</cell><cell>{{START:none}}</cell><cell>{{THROW:none}}</cell><cell>{{IMPACT:none}}</cell><cell>{{TIME:none}}</cell><cell>{{STOP:none}}</cell></row>
{{/FLIGHT}}
</table>
<p>Each drop is reckoned alone in still air, with the {{LAW:none}}, which agrees with measured drag within 5 %. In a train of drops each shields the next, so that real drops arrive sooner and faster; measured trajectories differ from such a reckoning by up to 15 %. Air that the moving product drags along is not reckoned.</p>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
{{#BUDGETS}}
<section title="Placement budgets" id="s-placement-budgets">
<p>An error budget adds up what displaces a dot, after the {{GUIDE:none}}: <i>U</i> = 2 √Σ<i>u</i>², about 95 % of the dots, and systematic terms linearly, but no more than the worst case. <i>U</i> decides against the limit; the worst case, all terms at once, is shown beside it. Errors shared by all dots of a budget are left out of it.</p>
<table columns="l:* l:20 r:14 r:16 r:16 l:16 l:28" caption="Budgets of placement">
<head><cell>Budget</cell><cell>Axis</cell><cell><i>U</i>, µm</cell><cell>Worst, µm</cell><cell>Limit, µm</cell><cell>Verdict</cell><cell>Improve first</cell></head>
{{#BUDGET}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{AXIS:none}}</cell><cell>{{U:none}}</cell><cell>{{WORST:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{VERDICT:none}}</cell><cell>{{FIRST:none}}</cell></row>
{{/BUDGET}}
</table>
{{DRAWING:none}}
<table columns="l:* l:30 l:22 r:21 r:17 r:13" caption="Terms of the budgets: half width, the shift it makes, standard uncertainty">
<head><cell>Budget</cell><cell>Term</cell><cell>Kind</cell><cell>Half width</cell><cell>Shift, µm</cell><cell><i>u</i>, µm</cell></head>
{{#TERM}}
<row key="{{KEY}}"{{#GOES_ON}} keep="yes"{{/GOES_ON}}><cell>{{NAME:none}}</cell><cell>{{TERM:none}}</cell><cell>{{KIND:none}}</cell><cell>{{HALF:none}}</cell><cell>{{SHIFT:none}}</cell><cell>{{U}}</cell></row>
{{/TERM}}
</table>
{{#PACE}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
<table columns="l:* r:28 r:33 r:18 l:20" caption="Budgets along the stroke at the speed that just makes the throughput">
<head><cell>Budget</cell><cell><i>U</i> as it runs, µm</cell><cell><i>U</i> at this speed, µm</cell><cell>Limit, µm</cell><cell>Verdict</cell></head>
{{#BUDGET}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{NOW:none}}</cell><cell>{{U:none}}</cell><cell>{{LIMIT:none}}</cell><cell>{{VERDICT:none}}</cell></row>
{{/BUDGET}}
</table>
{{/PACE}}
</section>
{{/BUDGETS}}
</section>
