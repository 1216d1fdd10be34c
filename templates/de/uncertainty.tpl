{{%AUTOESCAPE context="XML"}}
<section title="Wie weit die Zahlen sich bewegen" id="s-uncertainty">
<p>Kleinster und größter Wert jeder Zahl, während eine Annahme oder eine unsicher angegebene Eingabe ihren Bereich durchläuft und alle anderen stehen bleiben: immer nur eine, mehrere zusammen zeigt die Tabelle nicht. Kopf, Betriebsart, Verschachtelung, Köpfe hintereinander und Auflösung bleiben wie gewählt; alles andere wird neu gerechnet, auch die Zahl der Köpfe quer zur Linie und der Tropfen, der Flächen schließt. Wo die Station an einem solchen Ende nicht mehr besteht, steht das bei den Bedingungen.</p>
<table columns="l:* r:25 r:25 r:25 l:38" caption="Kennzahlen und was jede am weitesten bewegt">
<head><cell>Zahl</cell><cell>Diese Station</cell><cell>Kleinster Wert</cell><cell>Größter Wert</cell><cell>Am weitesten bewegt von, über den Bereich</cell></head>
{{#ROW}}
<row key="{{KEY}}"><cell>{{FIGURE:none}}</cell><cell>{{VALUE}}</cell><cell>{{LOW}}</cell><cell>{{HIGH}}</cell><cell>{{MOVER:none}}</cell></row>
{{/ROW}}
</table>
</section>
