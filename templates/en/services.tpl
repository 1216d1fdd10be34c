{{%AUTOESCAPE context="XML"}}
<section title="Services and interfaces" id="s-services">
<p>What the station takes from the building and the line, {{SPEED:none}} and peak coverage, as far as it is calculated here. Makers of the equipment state the connections, the power while starting and standing by, and what is unknown; nothing shall be laid before they have. “Unknown, ask”: what is about the station its supplier asks the makers and tells the operator before the order; what is about the building the operator tells the supplier with the answers to the questions. What is needed was reckoned; what is installed is the rating of the parts chosen, and lines and ducts are laid for it.</p>
<table columns="l:23 l:18 l:22 l:20 l:*" caption="Services">
<head><cell>Service</cell><cell>For</cell><cell>Need</cell><cell>Installed, by the catalogue</cell><cell>To be settled</cell></head>
{{#ROW}}<row key="{{KEY}}"><cell>{{WHAT:none}}</cell><cell>{{PART:none}}</cell><cell>{{AMOUNT:none}}</cell><cell>{{INSTALLED:none}}</cell><cell>{{NOTE:none}}</cell></row>{{/ROW}}
</table>
<table columns="l:31 l:* r:24" caption="Signals and data">
<head><cell>Signal</cell><cell>From and to, and what it is for</cell><cell>Figure</cell></head>
{{#SIGNAL}}<row key="{{KEY}}"><cell>{{WHAT:none}}</cell><cell>{{WAY:none}}</cell><cell>{{FIGURE:none}}</cell></row>{{/SIGNAL}}
</table>
<table columns="l:* l:33 l:27" caption="Who provides what: a proposal, until a contract says otherwise" lines="yes">
<head><cell>Matter</cell><cell>Proposed</cell><cell>Agreed</cell></head>
{{#SHARE}}<row><cell>{{MATTER:none}}</cell><cell>{{WHO:none}}</cell><cell/></row>{{/SHARE}}
</table>
</section>
