{{%AUTOESCAPE context="XML"}}
<section title="Stückliste" id="s-parts" landscape="yes">
<table columns="r:9 r:16 l:11 l:25 l:* l:34 l:44 r:22 r:24 r:14" caption="{{CAPTION:none}}">
<head><cell>Pos.</cell><cell>Menge</cell><cell>Einh.</cell><cell>Teilenummer</cell><cell>Benennung und technische Daten</cell><cell>Referenz</cell><cell>Für</cell><cell>Einzelpreis</cell><cell>Preis</cell><cell>Lieferzeit, d</cell></head>
{{#ROW}}
{{#PART_OF_BILL}}<row keep="yes"><cell/><cell/><cell/><cell/><cell span="6"><b>{{TEXT:none}}</b></cell></row>{{/PART_OF_BILL}}
<row id="{{ANCHOR}}"><cell>{{ITEM}}</cell><cell>{{QUANTITY:none}}</cell><cell>{{UNIT:none}}</cell><cell>{{PART:none}}</cell><cell><b>{{DESIGNATION:none}}</b>{{#DATA}}; {{TEXT:none}}{{/DATA}}</cell><cell>{{REFERENCE}}</cell><cell>{{SERVES:none}}</cell><cell>{{PRICE:none}}</cell><cell>{{EXTENDED:none}}</cell><cell>{{LEAD}}</cell></row>
{{/ROW}}
<row total="yes"><cell span="8">{{TOTAL_LABEL:none}}</cell><cell>{{TOTAL:none}}</cell><cell>{{LEAD:none}}</cell></row>
</table>
<p>Nicht enthalten: {{NOT_CONTAINED:none}}. Posten auf Anfrage sind in der Summe nicht enthalten. Feldnamen und Benennungen stehen wie in der Katalogdatei.</p>
{{#LEAD_TIME}}<p>{{TEXT:none}}</p>{{/LEAD_TIME}}
</section>
{{#COST}}
<section title="Kosten" id="s-cost">
<p key="{{KEY}}">{{SUMMARY:none}}</p>
<table columns="l:* d:45" caption="{{CAPTION:none}}">
<head><cell>Kosten</cell><cell>{{CURRENCY}}</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>{{/ROW}}
</table>
{{SHARES:none}}
{{#SWINGS}}
<table columns="l:* r:36 r:36 r:36" caption="{{CAPTION:none}}">
<head><cell>Anteil</cell><cell>Barwert, {{CURRENCY}}</cell><cell>Gesamtkosten, wenn weniger</cell><cell>Gesamtkosten, wenn mehr</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell><cell>{{LOW:none}}</cell><cell>{{HIGH:none}}</cell></row>{{/ROW}}
</table>
{{/SWINGS}}
{{STEPS:none}}
{{#UNPRICED}}<p>Investition und Gesamtkosten sind Untergrenzen; auf Anfrage und darum nicht enthalten: {{ITEMS:none}}.</p>{{/UNPRICED}}
{{#WITHOUT}}<p>Die Jahressummen und die Gesamtkosten sind Untergrenzen: Sie enthalten {{ITEMS:none}} nicht.</p>{{/WITHOUT}}
{{#BASIS}}<p key="{{KEY}}">{{TEXT:none}}</p>{{/BASIS}}
<p>Tinte, Energie und die Lebensdauer der Köpfe gelten für mittlere Belegung und Nenngeschwindigkeit über die Laufzeit. Tinte ist ohne Spülflüssigkeit, die bei Verschleißteilen und Reinigung steht. Energie ist die der Lampen und Trockner; die von Köpfen, Tintenheizern, Steuerung und Lüftern ist nicht gezählt. Die Arbeitskosten umfassen nur den Austausch und das Ausrichten von Köpfen; Bedienpersonal ist nicht enthalten.</p>
</section>
{{/COST}}
