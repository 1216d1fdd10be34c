{{%AUTOESCAPE context="XML"}}
<section title="Requirement as understood" id="s-requirement">
<p>The small keys in the margin of this document say where a statement comes from. A blue one is a link: to a step of the calculation, a line of the request, or an assumption. A black one names a file and line that are not printed here, such as those of the catalogue.</p>
{{#SHALL}}
<p>The request restated as requirements. At the side of the page stands the line of the request each comes from. The margin is the share by which the answer is better than asked (+) or falls short (−); a dash stands where no share can be told.{{#NEAREST}} {{TEXT:none}}{{/NEAREST}}</p>
<table columns="l:9 l:* l:39 r:15 l:23" caption="Requirements">
<head><cell>No.</cell><cell>Requirement</cell><cell>Answer of this design</cell><cell>Margin</cell><cell>Verified by</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{ANSWER:none}}</cell><cell>{{MARGIN}}</cell><cell>{{VERIFY:none}}</cell></row>
{{/ROW}}
</table>
{{/SHALL}}
{{#GIVEN}}
<section title="Given values" id="s-given">
<table columns="l:* l:42 l:36">
<head><cell>Field</cell><cell>As written</cell><cell>Read as</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{RAW}}</cell><cell>{{VALUE}}</cell></row>
{{/ROW}}
</table>
</section>
{{/GIVEN}}
{{#DERIVED}}
<section title="Derived values" id="s-derived">
<table columns="l:* l:50">
<head><cell>Field</cell><cell>Derived value</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>
{{/ROW}}
</table>
</section>
{{/DERIVED}}
{{#ASSUMED}}
<section title="Assumptions" id="s-assumptions">
<p>Assumptions the result depends on: the range is what the value may turn out to be; the effect is the figure it moves most.</p>
<table columns="l:* l:25 l:29 l:43">
<head><cell>Assumption</cell><cell>Value</cell><cell>Range</cell><cell>Effect on; source</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell><cell>{{RANGE}}</cell><cell>{{EFFECT:none}}{{#UNSOURCED}}&#160;†{{/UNSOURCED}}{{#SOURCED}}; {{SOURCE:none}}{{/SOURCED}}</cell></row>
{{/ROW}}
</table>
{{#FOOTNOTE}}<p after="yes">† Common practice, without a source.</p>{{/FOOTNOTE}}
</section>
{{/ASSUMED}}
</section>
