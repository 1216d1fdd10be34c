{{%AUTOESCAPE context="XML"}}
<section title="Record of the request" id="s-record" wide="yes">
<p>With the text below{{#WITH_CATALOGUE}}, the catalogue values listed before it{{/WITH_CATALOGUE}} and the date of issue {{DATE}}, swathspec {{VERSION}} makes this specification again. The digests are SHA-256 and stand in the data file too.</p>
<table columns="l:60 l:*" wide="yes">
<head><cell>Input</cell><cell>SHA-256</cell></head>
<row><cell>Request, {{FILE:none}}</cell><cell><code>{{REQUEST}}</code></cell></row>
<row><cell>Catalogue values used</cell><cell>{{CATALOGUE:none}}</cell></row>
{{#PREVIOUS}}<row><cell>Data file of the issue before</cell><cell><code>{{DIGEST}}</code></cell></row>{{/PREVIOUS}}
</table>
<table columns="r:9 l:*" caption="Text of the request" dense="yes" wide="yes">
<head><cell>Line</cell><cell>Text</cell></head>
{{#LINE}}<row id="{{ANCHOR}}"><cell>{{NUMBER}}</cell><cell><code>{{TEXT}}</code></cell></row>
{{/LINE}}
</table>
</section>
