{{%AUTOESCAPE context="XML"}}
<section title="{{TITLE:none}}" id="s-changes">
<p>{{SUMMARY:none}} Die Zahlen jener Ausgabe sind ihrer Datendatei entnommen, SHA-256 <code>{{DIGEST}}</code>.</p>
{{#TABLE}}
<table columns="l:* l:45 l:45" wide="yes">
<head><cell>Eintrag</cell><cell>Vorher</cell><cell>Jetzt</cell></head>
{{#GROUP}}
<row keep="yes"><cell span="3"><b>{{TOPIC:none}}</b></cell></row>
{{#ROW}}<row><cell>{{NAME:none}}</cell><cell>{{BEFORE:none}}</cell><cell>{{AFTER:none}}</cell></row>{{/ROW}}
{{/GROUP}}
</table>
{{/TABLE}}
</section>
