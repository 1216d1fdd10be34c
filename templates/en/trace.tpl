{{%AUTOESCAPE context="XML"}}
<section title="Calculation trace" id="s-trace" wide="yes">
<p>Every step in the order of the calculation. The formula printed is the one computed; its inputs name where they come from: a line of the request, a row of the catalogue, an assumption, an earlier step or a constant. Sources S are listed in <a to="s-sources">the section on sources</a>.</p>
<table columns="l:34 l:* r:27 l:35" wide="yes">
<head><cell>Step</cell><cell>Formula and inputs</cell><cell>Result</cell><cell>Source; valid for</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{ID}}</cell><cell><code>{{SYMBOL}}</code> {{RELATION:none}} <code>{{FORMULA}}</code>{{CONDITION:none}}{{#INPUTS}}, with {{#INPUT}}<code>{{SYMBOL}}</code> = {{VALUE}} ({{ORIGIN:none}}){{#INPUT_separator}}; {{/INPUT_separator}}{{/INPUT}}{{/INPUTS}}</cell><cell><b>{{VALUE}}</b></cell><cell><a to="{{SOURCE_ANCHOR}}">{{SOURCE}}</a> ({{TAG:none}}); {{VALIDITY}}{{#ASSUMES}}; assumes {{TEXT:none}}{{/ASSUMES}}</cell></row>
{{/ROW}}
</table>
</section>
