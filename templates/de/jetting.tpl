{{%AUTOESCAPE context="XML"}}
<section title="Tinte im Kopf" id="s-jetting">
<table columns="l:* r:19 r:15 r:16 r:17 r:23 r:16 r:15" caption="Tinten bei ihrer Drucktemperatur; – bedeutet nicht bekannt">
<head><cell>Tinte von</cell><cell>°C</cell><cell>In Ruhe, mPa·s</cell><cell>In der Düse, mPa·s</cell><cell>Dichte, kg/m³</cell><cell>Oberflächen­spannung, mN/m</cell><cell>Düse, µm</cell><cell>Tropfen, m/s</cell></head>
{{#STATE}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{TEMPERATURE:none}}</cell><cell>{{VISCOSITY:none}}</cell><cell>{{SHEARED:none}}</cell><cell>{{DENSITY:none}}</cell><cell>{{TENSION:none}}</cell><cell>{{NOZZLE:none}}</cell><cell>{{SPEED:none}}</cell></row>
{{/STATE}}
</table>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
<table columns="l:* r:13 r:13 r:15 r:13 r:19 r:30 r:13" caption="Kennzahlen des Strahls; Z = 1/Oh">
<head><cell>Tinte von</cell><cell>Re</cell><cell>We</cell><cell>Oh</cell><cell>Z</cell><cell>Z unter Scherung</cell><cell>Mindest­geschwindigkeit, m/s</cell><cell>K</cell></head>
{{#NUMBER}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{RE:none}}</cell><cell>{{WE:none}}</cell><cell>{{OH:none}}</cell><cell>{{Z:none}}</cell><cell>{{ZS:none}}</cell><cell>{{LEAST:none}}</cell><cell>{{K:none}}</cell></row>
{{/NUMBER}}
</table>
<p>Tropfen, die langsamer sind als die {{LEAST:none}} (We = 4), verlassen die Düse nicht. {{SPLASH:none}} gilt für den größten Tropfen beim Aufprall im nominellen Düsenabstand; über 50 spritzen Tropfen auf einer glatten, trockenen Fläche.</p>
{{#WINDOWS}}
<table columns="l:25 l:19 l:24 l:24 l:*" caption="Veröffentlichte Fenster für Z, unter Scherung, wo die Viskosität dort bekannt ist">
<head><cell>Fenster</cell><cell>Z</cell><cell>Eingehalten</cell><cell>Nicht eingehalten</cell><cell>Quelle und Bemerkung</cell></head>
{{#ROW}}
<row><cell>{{NAME}}</cell><cell>{{RANGE:none}}</cell><cell>{{INSIDE:none}}</cell><cell>{{OUTSIDE:none}}</cell><cell>{{SOURCE:none}} ({{TAG:none}})</cell></row>
{{/ROW}}
</table>
{{/WINDOWS}}
<p>Die Fenster sind ein erster Filter: Auch Tinten innerhalb davon haben Düsen verstopft, und Tinten außerhalb wurden gedruckt. Entscheidend sind die Tropfenbeobachtung und eine Verträglichkeitsprüfung der tatsächlichen Tinte mit den tintenberührten Werkstoffen des Kopfes; beide stehen unter den Prüfungen vor einer Bestellung.</p>
<table columns="l:* r:18 r:16 r:16 r:15 r:16 l:30" caption="Größte Partikel in stehender Tinte">
<head><cell>Tinte von</cell><cell>Größe, µm</cell><cell>1/50 Düse, µm</cell><cell>1/100 Düse, µm</cell><cell>Sinkt, mm/d</cell><cell>Schwebt über, µm</cell><cell>Umwälzung</cell></head>
{{#PARTICLE}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{SIZE:none}}</cell><cell>{{MOST:none}}</cell><cell>{{SAFE:none}}</cell><cell>{{SPEED:none}}</cell><cell>{{HEIGHT:none}}</cell><cell>{{VERDICT:none}}</cell></row>
{{/PARTICLE}}
</table>
<p>Die Anteile des Düsendurchmessers sind Faustregeln, keine Grenzen. Eine Tinte setzt sich ab, wo die Wärmebewegung ihre größten Partikel über weniger als die Tiefe eines Tintenkanals in der Schwebe hält{{#DEPTH}} (siehe Annahmen){{/DEPTH}}; die Angabe des Lieferanten geht dieser Regel vor.</p>
</section>
