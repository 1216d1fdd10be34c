{{%AUTOESCAPE context="XML"}}
<section title="Tinte und Verbrauch" id="s-ink">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
{{#USE}}
<table columns="l:* r:23 r:24 r:23 r:20 r:22" caption="Tinte und Spülflüssigkeit je Kanal">
<head><cell>Kanal</cell><cell>Gedruckt, mL/h</cell><cell>Abfall und Spülung, mL/h</cell><cell>Gesamt, mL/h</cell><cell>Monat, L</cell><cell>Jahr, L</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{PRINTED:none}}</cell><cell>{{WASTE:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{MONTH:none}}</cell><cell>{{YEAR:none}}</cell></row>
{{/ROW}}
<row key="{{KEY}}" total="yes"><cell>Alle Kanäle</cell><cell>{{PRINTED:none}}</cell><cell>{{WASTE:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{MONTH:none}}</cell><cell>{{YEAR:none}}</cell></row>
</table>
{{/USE}}
{{#PARTS}}
<table columns="l:* r:40" caption="Tinte je tausend Teile">
<head><cell>Kanal</cell><cell>mL je 1000 Teile</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
{{/PARTS}}
{{#SPARES}}
<section title="Ersatzteile" id="s-spares">
<p>{{TEXT:none}}</p>
<table columns="l:* r:35 r:30" caption="Ersatzteile">
<head><cell>Teilenummer</cell><cell>Mittlerer Bedarf während der Lieferzeit</cell><cell>Vorzuhalten</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{PART}}</cell><cell>{{MEAN:none}}</cell><cell>{{QUANTITY:none}}</cell></row>{{/ROW}}
</table>
</section>
{{/SPARES}}
</section>
