{{%AUTOESCAPE context="XML"}}
<section title="Auflösung" id="s-resolution">
<p key="{{KEY}}">Das System muss mit mindestens <b>{{REQUIRED}}</b> drucken (quer × längs zur Linie). {{GOVERNED:none}}</p>
<table columns="l:* r:24 r:24 l:44" caption="Forderungen an die Auflösung">
<head><cell>Forderung</cell><cell>Quer, dpi</cell><cell>Längs, dpi</cell><cell>Art</cell></head>
{{#DEMAND}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{ACROSS:none}}</cell><cell>{{ALONG:none}}</cell><cell>{{KIND:none}}</cell></row>
{{/DEMAND}}
</table>
{{EYE:none}}
{{#CEILING}}
<p key="{{KEY}}">Auf diesem Bedruckstoff können Punkte nicht mehr als {{VALUE}} zeigen: In feineren Rastern überdecken sie sich nur stärker.</p>
{{/CEILING}}
{{#DELIVERED}}
<table columns="l:* r:30 r:30 r:30" caption="Geliefertes Raster">
<head><cell>Gruppe</cell><cell>Kopf, npi</cell><cell>Quer, dpi</cell><cell>Längs, dpi</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{GROUP}}</cell><cell>{{NATIVE}}</cell><cell>{{ACROSS}}</cell><cell>{{ALONG}}</cell></row>
{{/ROW}}
</table>
{{/DELIVERED}}
{{#BARCODES}}
<section title="Strich- oder 2D-Code auf dem Raster" id="s-barcode">
<table columns="l:* l:18 r:16 r:22 r:22 l:30" caption="Modul des Codes in ganzen Punkten">
<head><cell>Code, Gruppe</cell><cell>Achse</cell><cell>Punkte</cell><cell>Verlangt, mm</cell><cell>Gedruckt, mm</cell><cell>Bereich, mm; Urteil</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{SYMBOL:none}}, {{GROUP}}</cell><cell>{{AXIS:none}}</cell><cell>{{DOTS}}</cell><cell>{{ASKED}}</cell><cell>{{PRINTED}}</cell><cell>{{RANGE}}; {{VERDICT:none}}</cell></row>
{{/ROW}}
</table>
</section>
{{/BARCODES}}
</section>
