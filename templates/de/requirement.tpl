{{%AUTOESCAPE context="XML"}}
<section title="Anforderungen nach unserem Verständnis" id="s-requirement">
<p>Die kleinen Angaben am Rand dieses Dokuments sagen, woher eine Aussage stammt. Eine blaue ist ein Verweis: auf einen Rechenschritt, eine Zeile der Anfrage oder eine Annahme. Eine schwarze nennt Datei und Zeile, die hier nicht abgedruckt sind, etwa die des Katalogs.</p>
{{#SHALL}}
<p>Die Anfrage, als Anforderungen formuliert. Am Seitenrand steht die Zeile der Anfrage, aus der die Anforderung stammt. Der Spielraum ist der Anteil, um den die Antwort besser ist als verlangt (+) oder dahinter zurückbleibt (−); ein Strich steht, wo sich kein Anteil angeben lässt.{{#NEAREST}} {{TEXT:none}}{{/NEAREST}}</p>
<table columns="l:9 l:* l:37 r:20 l:20" caption="Anforderungen">
<head><cell>Nr.</cell><cell>Anforderung</cell><cell>Antwort dieses Entwurfs</cell><cell>Spielraum</cell><cell>Nachweis durch</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NUMBER}}</cell><cell>{{TEXT:none}}</cell><cell>{{ANSWER:none}}</cell><cell>{{MARGIN}}</cell><cell>{{VERIFY:none}}</cell></row>
{{/ROW}}
</table>
{{/SHALL}}
{{#GIVEN}}
<section title="Gegebene Werte" id="s-given">
<table columns="l:* l:42 l:36">
<head><cell>Feld</cell><cell>Wortlaut</cell><cell>Gelesen als</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{RAW}}</cell><cell>{{VALUE}}</cell></row>
{{/ROW}}
</table>
</section>
{{/GIVEN}}
{{#DERIVED}}
<section title="Hergeleitete Werte" id="s-derived">
<table columns="l:* l:50">
<head><cell>Feld</cell><cell>Hergeleiteter Wert</cell></head>
{{#ROW}}
<row key="{{KEY}}" id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell></row>
{{/ROW}}
</table>
</section>
{{/DERIVED}}
{{#ASSUMED}}
<section title="Annahmen" id="s-assumptions">
<p>Annahmen, von denen das Ergebnis abhängt: Der Bereich nennt, welche Werte möglich sind; die Wirkung nennt die Größe, die sich dadurch am stärksten ändert.</p>
<table columns="l:* l:25 l:29 l:43">
<head><cell>Annahme</cell><cell>Wert</cell><cell>Bereich</cell><cell>Wirkt auf; Quelle</cell></head>
{{#ROW}}
<row id="{{ANCHOR}}"><cell>{{NAME:none}}</cell><cell>{{VALUE}}</cell><cell>{{RANGE}}</cell><cell>{{EFFECT:none}}{{#UNSOURCED}}&#160;†{{/UNSOURCED}}{{#SOURCED}}; {{SOURCE:none}}{{/SOURCED}}</cell></row>
{{/ROW}}
</table>
{{#FOOTNOTE}}<p after="yes">† Übliche Praxis, ohne Quelle.</p>{{/FOOTNOTE}}
</section>
{{/ASSUMED}}
</section>
