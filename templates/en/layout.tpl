{{%AUTOESCAPE context="XML"}}
<section title="Layout of the station" id="s-layout">
{{#SECTION}}
<p>The section shows the first group; the way of the drops is dashed.{{#RANGE}} Thin lines are the surface at the least and the greatest distance stated; the variations of throw and thickness{{#BEND}} and the bend of the body{{/BEND}} come on top, in “Drop flight and placement”.{{/RANGE}}</p>
{{DRAWING:none}}
{{/SECTION}}
{{#ROUND}}
<p>The heads stand round the body, each plate across its own radius. Their height is drawn as the catalogue has it; where it has none, they are cut off. The body turns from left to right under them.</p>
{{DRAWING:none}}
{{/ROUND}}
{{#LINE}}
<p>Lengths along the line are those the footprint was calculated from. Encoder and product sensor stand before the first heads; their distance is set on site.{{#STATIONS}} Each station that turns the body has its own.{{/STATIONS}}</p>
{{DRAWING:none}}
{{/LINE}}
</section>
