{{%AUTOESCAPE context="XML"}}
<section title="Ink in the head" id="s-jetting">
<table columns="l:* r:19 r:15 r:16 r:18 r:19 r:17 r:14" caption="Inks at their jetting temperature; – is not known">
<head><cell>Ink of</cell><cell>°C</cell><cell>At rest, mPa·s</cell><cell>In the nozzle, mPa·s</cell><cell>Density, kg/m³</cell><cell>Tension, mN/m</cell><cell>Nozzle, µm</cell><cell>Drop, m/s</cell></head>
{{#STATE}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{TEMPERATURE:none}}</cell><cell>{{VISCOSITY:none}}</cell><cell>{{SHEARED:none}}</cell><cell>{{DENSITY:none}}</cell><cell>{{TENSION:none}}</cell><cell>{{NOZZLE:none}}</cell><cell>{{SPEED:none}}</cell></row>
{{/STATE}}
</table>
{{#TEXT}}
<p key="{{KEY}}">{{SENTENCE:none}}</p>
{{/TEXT}}
<table columns="l:* r:14 r:14 r:16 r:14 r:20 r:24 r:14" caption="Numbers of the jet; Z = 1/Oh">
<head><cell>Ink of</cell><cell>Re</cell><cell>We</cell><cell>Oh</cell><cell>Z</cell><cell>Z at shear</cell><cell>Least speed, m/s</cell><cell>K</cell></head>
{{#NUMBER}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{RE:none}}</cell><cell>{{WE:none}}</cell><cell>{{OH:none}}</cell><cell>{{Z:none}}</cell><cell>{{ZS:none}}</cell><cell>{{LEAST:none}}</cell><cell>{{K:none}}</cell></row>
{{/NUMBER}}
</table>
<p>Drops slower than the {{LEAST:none}} (We = 4) do not leave the nozzle. {{SPLASH:none}} is that of the largest drop on impact over the nominal throw; above 50 drops splash on a smooth dry surface.</p>
{{#WINDOWS}}
<table columns="l:25 l:19 l:24 l:24 l:*" caption="Published windows for Z, at shear where that is known">
<head><cell>Window</cell><cell>Z</cell><cell>Holds</cell><cell>Does not hold</cell><cell>Source and note</cell></head>
{{#ROW}}
<row><cell>{{NAME}}</cell><cell>{{RANGE:none}}</cell><cell>{{INSIDE:none}}</cell><cell>{{OUTSIDE:none}}</cell><cell>{{SOURCE:none}} ({{TAG:none}})</cell></row>
{{/ROW}}
</table>
{{/WINDOWS}}
<p>The windows are a first filter: inks within them have clogged, and inks outside have been jetted. Drop watching and a compatibility test of the real ink with the wetted materials of the head decide; both stand among the checks before commitment.</p>
<table columns="l:* r:18 r:16 r:16 r:15 r:16 l:30" caption="Particles in standing ink">
<head><cell>Ink of</cell><cell>Greatest, µm</cell><cell>1/50 nozzle, µm</cell><cell>1/100 nozzle, µm</cell><cell>Falls, mm/d</cell><cell>Kept up over, µm</cell><cell>Recirculation</cell></head>
{{#PARTICLE}}
<row key="{{KEY}}"><cell>{{CHANNEL:none}}</cell><cell>{{SIZE:none}}</cell><cell>{{MOST:none}}</cell><cell>{{SAFE:none}}</cell><cell>{{SPEED:none}}</cell><cell>{{HEIGHT:none}}</cell><cell>{{VERDICT:none}}</cell></row>
{{/PARTICLE}}
</table>
<p>The shares of the nozzle are rules of thumb, no limits. An ink settles where heat keeps its greatest particles up over less than the depth of an ink channel{{#DEPTH}} (see the assumptions){{/DEPTH}}; a supplier’s own statement goes before this rule.</p>
</section>
