{{%AUTOESCAPE context="XML"}}
<section title="Spannweite der Kennzahlen" id="s-uncertainty">
<p>Kleinster und größter Wert jeder Kennzahl, während eine Annahme oder eine unsicher angegebene Eingabe ihren Bereich durchläuft und alle anderen unverändert bleiben: immer nur eine, mehrere zusammen zeigt die Tabelle nicht. Kopf, Betriebsart, Verschachtelung, Köpfe hintereinander und Auflösung bleiben wie gewählt; alles andere wird neu gerechnet, auch die Zahl der Köpfe quer zur Linie und die Tropfengröße, mit der sich Vollflächen schließen. Wo die Station dort nicht mehr besteht, steht es bei den Bedingungen; bei der Platzierung sind die Werte dort kleiner, weil die übrigen Toleranzen günstig angesetzt sind.</p>
<table columns="l:* r:25 r:25 r:25 l:38" caption="Kleinster und größter Wert und stärkster Einfluss">
<head><cell>Kennzahl</cell><cell>Diese Station</cell><cell>Kleinster Wert</cell><cell>Größter Wert</cell><cell>Stärkster Einfluss; sein Bereich</cell></head>
{{#ROW}}
<row key="{{KEY}}"{{#KEEP}} keep="yes"{{/KEEP}}><cell>{{FIGURE:none}}</cell><cell>{{VALUE}}</cell><cell>{{LOW:none}}</cell><cell>{{HIGH:none}}</cell><cell>{{MOVER:none}}</cell></row>
{{/ROW}}
</table>
</section>
