{{%AUTOESCAPE context="XML"}}
<section title="Aufbau der Station" id="s-layout">
{{#SECTION}}
<p>Der Schnitt zeigt die erste Gruppe; der Weg der Tropfen ist gestrichelt.{{#RANGE}} Dünne Linien sind die Oberfläche beim kleinsten und größten genannten Abstand; die Schwankungen von Düsenabstand und Dicke{{#BEND}} und die Wölbung des Körpers{{/BEND}} kommen in „Tropfenflug und Platzierung“ hinzu.{{/RANGE}}</p>
{{DRAWING:none}}
{{/SECTION}}
{{#ROUND}}
<p>Die Köpfe stehen um den Körper, jede Düsenplatte quer zu ihrem Radius. Ihre Höhe ist die des Katalogs; wo er keine nennt, sind sie abgeschnitten. Der Körper dreht sich oben von links nach rechts unter ihnen.</p>
{{DRAWING:none}}
{{/ROUND}}
{{#LINE}}
<p>Aus diesen Längen entlang der Linie ist der Platzbedarf gerechnet. Drehgeber und Produktsensor stehen vor den ersten Köpfen; ihr Abstand wird vor Ort festgelegt.{{#STATIONS}} Jede Station, die den Körper dreht, hat eigene.{{/STATIONS}}</p>
{{DRAWING:none}}
{{/LINE}}
</section>
