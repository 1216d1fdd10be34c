{{%AUTOESCAPE context="XML"}}
<section title="Fragen an den Kunden" id="s-questions">
<p>{{ORDER:none}}</p>
<table columns="r:8 l:* l:35 l:35">
<head><cell>Nr.</cell><cell>Frage</cell><cell>Bis dahin angenommen</cell><cell>Antwort wirkt auf</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{ASSUMED:none}}</cell><cell>{{EFFECT:none}}</cell></row>
{{/ROW}}
</table>
</section>
