{{%AUTOESCAPE context="XML"}}
<section title="Prüfungen vor einer Bestellung" id="s-checks">
<p>Köpfe oder Tinte sollten nicht bestellt werden, bevor diese Prüfungen mit der tatsächlichen Tinte und dem tatsächlichen Bedruckstoff bestanden sind.</p>
<table columns="r:8 l:* l:34 l:34">
<head><cell>Nr.</cell><cell>Prüfung</cell><cell>Gegenstand</cell><cell>Abnahme</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{SUBJECT:none}}</cell><cell>{{ACCEPTANCE:none}}</cell></row>
{{/ROW}}
</table>
{{PATTERN:none}}
</section>
