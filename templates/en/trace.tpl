{{%AUTOESCAPE context="XML"}}
<section title="Calculation trace" id="s-trace" wide="yes">
<p>Every step in the order of the calculation. The formula printed is the one computed; its inputs name where they come from: a line of the request, a row of the catalogue, an assumption, an earlier step or a constant. Steps that agree in formula, inputs, result and source stand in one row, which has the names of them all. Figures of alternatives, of heads left out, of other values than those asked or assumed come last: the same working gone through once more, with what stands there put in place. Sources S are listed in <a to="s-sources">the section on sources</a>.</p>
<table columns="l:34 l:* r:33" wide="yes">
<head><cell>Step</cell><cell>Formula and inputs; source; valid for</cell><cell>Result</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}" also="{{ANCHORS}}"><cell>{{ID}}{{#ALSO_FOR}}, also for {{#NAME}}{{TEXT}}{{#NAME_separator}}, {{/NAME_separator}}{{/NAME}}{{/ALSO_FOR}}{{#ALSO}}, also {{#NAME}}{{TEXT}}{{#NAME_separator}}, {{/NAME_separator}}{{/NAME}}{{/ALSO}}</cell><cell><code>{{SYMBOL}}</code> {{RELATION:none}} {{FORMULA:none}}{{CONDITION:none}}{{#INPUTS}}, with {{#INPUT}}<code>{{SYMBOL}}</code> = {{VALUE:none}} ({{ORIGIN:none}}){{#INPUT_separator}}; {{/INPUT_separator}}{{/INPUT}}{{/INPUTS}}. <a to="{{SOURCE_ANCHOR}}">{{SOURCE}}</a> ({{TAG:none}}); valid for: {{VALIDITY:none}}{{#ASSUMES}}; assumes {{TEXT:none}}{{/ASSUMES}}</cell><cell><b>{{VALUE:none}}</b></cell></row>
{{/ROW}}
</table>
</section>
