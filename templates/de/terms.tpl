{{%AUTOESCAPE context="XML"}}
<section title="Begriffe" id="s-terms">
<p>Fachbegriffe, wie dieses Dokument sie verwendet.</p>
<table columns="l:38 l:*">
<head><cell>Begriff</cell><cell>Bedeutung</cell></head>
{{#TERM}}<row><cell><b>{{NAME:none}}</b></cell><cell>{{MEANING:none}}</cell></row>{{/TERM}}
</table>
</section>
