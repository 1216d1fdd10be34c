{{%AUTOESCAPE context="XML"}}
<section title="Checks before commitment" id="s-checks">
<p>No order for heads or ink should be placed before these checks are passed on the real ink and substrate.</p>
<table columns="r:8 l:* l:34 l:34">
<head><cell>No.</cell><cell>Check</cell><cell>Of</cell><cell>Acceptance</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{SUBJECT:none}}</cell><cell>{{ACCEPTANCE:none}}</cell></row>
{{/ROW}}
</table>
{{PATTERN:none}}
</section>
