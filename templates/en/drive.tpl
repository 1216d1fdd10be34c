{{%AUTOESCAPE context="XML"}}
<section title="Drive electronics and ink supply" id="s-drive">
<p key="station.data">{{SUMMARY:none}}</p>
<table columns="l:* r:16 r:24 r:24 r:30 r:16" caption="Drive boards">
<head><cell>Board</cell><cell>Heads</cell><cell>Data, Mbit/s</cell><cell>Heads a board</cell><cell>Mbit/s a board</cell><cell>Boards</cell></head>
{{#BOARD}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{HEADS:none}}</cell><cell>{{DATA:none}}</cell><cell>{{EACH:none}}</cell><cell>{{RATE:none}}</cell><cell>{{COUNT:none}}</cell></row>
{{/BOARD}}
</table>
<table columns="l:* r:16 r:16 r:19 r:22 r:17 l:25" caption="{{FEEDS:none}}">
<head><cell>Channel</cell><cell>Active nozzles</cell><cell>Data, Mbit/s</cell><cell>Ink, mL/min</cell><cell>Recirculated, mL/min</cell><cell>Supplies</cell><cell>Set by</cell></head>
{{#FEED}}
<row key="{{KEY}}"><cell>{{CHANNEL}}</cell><cell>{{NOZZLES:none}}</cell><cell>{{DATA:none}}</cell><cell>{{PEAK:none}}</cell><cell>{{MOVED:none}}</cell><cell>{{SUPPLIES:none}}</cell><cell>{{BY:none}}</cell></row>
{{/FEED}}
</table>
<table columns="l:* l:32 r:30 r:24 r:24" caption="Containers that hold a shift at mean flow">
<head><cell>Channel</cell><cell>Supply</cell><cell>Containers</cell><cell>Size, L</cell><cell>First fill, L</cell></head>
{{#STORE}}
<row key="{{KEY}}"><cell>{{CHANNEL}}</cell><cell>{{SUPPLY:none}}</cell><cell>{{COUNT:none}}</cell><cell>{{SIZE:none}}</cell><cell>{{FILL:none}}</cell></row>
{{/STORE}}
</table>
{{#ENCODER}}
<table columns="l:* r:50" caption="{{CAPTION:none}}">
<head><cell>Property</cell><cell>Value</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>
{{/ROW}}
</table>
<p>{{VERDICT:none}}</p>
{{/ENCODER}}
{{#NO_ENCODER}}
<p>{{SENTENCE:none}}</p>
{{/NO_ENCODER}}
</section>
