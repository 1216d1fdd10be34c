{{%AUTOESCAPE context="XML"}}
<section title="Wortlaut der Anfrage" id="s-record" wide="yes">
<p>Mit dem Text unten{{#WITH_CATALOGUE}}, den davor aufgeführten Katalogwerten{{/WITH_CATALOGUE}} und dem Ausgabedatum {{DATE}} erzeugt swathspec {{VERSION}} diese Spezifikation erneut. Die Prüfsummen sind SHA-256 und stehen auch in der Datendatei.</p>
<table columns="l:60 l:*" wide="yes">
<head><cell>Eingabe</cell><cell>SHA-256</cell></head>
<row><cell>Anfrage, {{FILE:none}}</cell><cell><code>{{REQUEST}}</code></cell></row>
<row><cell>Verwendete Katalogwerte</cell><cell>{{CATALOGUE:none}}</cell></row>
{{#PREVIOUS}}<row><cell>Datendatei der vorigen Ausgabe</cell><cell><code>{{DIGEST}}</code></cell></row>{{/PREVIOUS}}
</table>
<table columns="r:9 l:*" caption="Text der Anfrage" dense="yes" wide="yes">
<head><cell>Zeile</cell><cell>Text</cell></head>
{{#LINE}}<row id="{{ANCHOR}}"><cell>{{NUMBER}}</cell><cell><code>{{TEXT}}</code></cell></row>
{{/LINE}}
</table>
</section>
