{{%AUTOESCAPE context="XML"}}
<section title="Terms" id="s-terms">
<p>Terms of the trade as this document uses them.</p>
<table columns="l:38 l:*">
<head><cell>Term</cell><cell>Meaning</cell></head>
{{#TERM}}<row><cell><b>{{NAME:none}}</b></cell><cell>{{MEANING:none}}</cell></row>{{/TERM}}
</table>
</section>
