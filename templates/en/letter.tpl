{{%AUTOESCAPE context="XML"}}
{{#TO}}To: {{CUSTOMER}}
{{/TO}}
Date: {{DATE}}
<p>Subject: {{TITLE}}</p>
Our reference: {{ID}}, revision {{REVISION}}
{{#DRAWN_UP}}<p>We have worked through your requirements and drawn up a preliminary system specification, which this letter goes with. Some of what it rests on we had to assume. Please answer what you can of the following; what moves the result most comes first. Where you cannot answer, say so: the value taken meanwhile then stands.</p>{{/DRAWN_UP}}
{{#INFEASIBLE}}<p>We have worked through your requirements: as they stand we cannot meet them. What stands in the way, and by how much, is on the first page of the document this letter goes with; please tell us what of it may be eased. Besides, some of what we reckoned with we had to assume. Please answer what you can of the following.</p>{{/INFEASIBLE}}
{{#INCOMPLETE}}<p>We have read your requirements: they do not yet say enough for a system to be worked out. Please answer what you can of the following; what we need first comes first.</p>{{/INCOMPLETE}}
{{#ROW}}
<p>{{NUMBER}}. {{TEXT:none}}</p>
   Taken meanwhile: {{ASSUMED:none}}
{{#MOVES}}   Your answer moves: {{EFFECT:none}}
{{/MOVES}}
{{/ROW}}
<p>An answer may be a value with its unit, a range (from, to) or the name of the one who knows.</p>
{{#FROM}}
<p>{{CREATOR}}</p>
{{OWNER}}
{{/FROM}}
