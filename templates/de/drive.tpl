{{%AUTOESCAPE context="XML"}}
<section title="Ansteuerelektronik und Tintenversorgung" id="s-drive">
<p key="station.data">{{SUMMARY:none}}</p>
<table columns="l:* r:16 r:24 r:24 r:30 r:16" caption="Ansteuerkarten">
<head><cell>Karte</cell><cell>Köpfe</cell><cell>Daten, Mbit/s</cell><cell>Köpfe je Karte</cell><cell>Mbit/s je Karte</cell><cell>Karten</cell></head>
{{#BOARD}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{HEADS:none}}</cell><cell>{{DATA:none}}</cell><cell>{{EACH:none}}</cell><cell>{{RATE:none}}</cell><cell>{{COUNT:none}}</cell></row>
{{/BOARD}}
</table>
<table columns="l:* r:16 r:17 r:19 r:22 r:17 l:25" caption="{{FEEDS:none}}">
<head><cell>Kanal</cell><cell>Aktive Düsen</cell><cell>Daten, Mbit/s</cell><cell>Tinte, mL/min</cell><cell>Umgewälzt, mL/min</cell><cell>Versorg.</cell><cell>Bestimmt durch</cell></head>
{{#FEED}}
<row key="{{KEY}}"><cell>{{CHANNEL}}</cell><cell>{{NOZZLES:none}}</cell><cell>{{DATA:none}}</cell><cell>{{PEAK:none}}</cell><cell>{{MOVED:none}}</cell><cell>{{SUPPLIES:none}}</cell><cell>{{BY:none}}</cell></row>
{{/FEED}}
</table>
<table columns="l:* l:32 r:30 r:24 r:24" caption="Behälter, die bei mittlerem Verbrauch für eine Schicht reichen">
<head><cell>Kanal</cell><cell>Versorgung</cell><cell>Behälter</cell><cell>Größe, L</cell><cell>Erstfüllung, L</cell></head>
{{#STORE}}
<row key="{{KEY}}"><cell>{{CHANNEL}}</cell><cell>{{SUPPLY:none}}</cell><cell>{{COUNT:none}}</cell><cell>{{SIZE:none}}</cell><cell>{{FILL:none}}</cell></row>
{{/STORE}}
</table>
{{#ENCODER}}
<table columns="l:* r:50" caption="{{CAPTION:none}}">
<head><cell>Eigenschaft</cell><cell>Wert</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{NAME:none}}</cell><cell>{{VALUE:none}}</cell></row>
{{/ROW}}
</table>
<p>{{VERDICT:none}}</p>
{{/ENCODER}}
{{#NO_ENCODER}}
<p>{{SENTENCE:none}}</p>
{{/NO_ENCODER}}
</section>
