{{%AUTOESCAPE context="XML"}}
<section title="Layout of the station" id="s-layout">
{{#SECTION}}
<p>The section shows the first group; the way of the drops is dashed.{{#RANGE}} Thin lines are the surface at the least and the greatest distance stated. The section shows the range stated; variation of the thickness and the bend of the body come on top in “Drop flight and placement”.{{/RANGE}}</p>
{{DRAWING:none}}
{{/SECTION}}
{{#LINE}}
<p>Lengths along the line are those the footprint was calculated from. Encoder and product sensor stand before the first heads; their distance is set on site.</p>
{{DRAWING:none}}
{{/LINE}}
</section>
