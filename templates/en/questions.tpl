{{%AUTOESCAPE context="XML"}}
<section title="Questions to the customer" id="s-questions">
<p>{{ORDER:none}}</p>
<table columns="r:8 l:* l:35 l:35">
<head><cell>No.</cell><cell>Question</cell><cell>Taken meanwhile</cell><cell>Answer moves</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{ASSUMED:none}}</cell><cell>{{EFFECT:none}}</cell></row>
{{/ROW}}
</table>
</section>
