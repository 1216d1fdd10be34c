{{%AUTOESCAPE context="XML"}}
{{#TO}}To: {{CUSTOMER}}
{{/TO}}
Date: {{DATE}}
<p>Subject: {{TITLE}}</p>
Our reference: {{ID}}, revision {{REVISION}}
<p>We have worked through your requirements and drawn up a preliminary system specification. Some of what it rests on we had to assume. Please answer what you can of the following; what moves the result most comes first.</p>
{{#ROW}}
<p>{{NUMBER}}. {{TEXT:none}}</p>
   Taken meanwhile: {{ASSUMED:none}}
{{#MOVES}}   Your answer moves: {{EFFECT:none}}
{{/MOVES}}
{{/ROW}}
<p>An answer may be a value with its unit, a range (from, to) or the name of the one who knows. Where you cannot answer, say so: the value taken above then stands, and the specification remains conditional on it.</p>
{{#FROM}}
<p>{{CREATOR}}</p>
{{OWNER}}
{{/FROM}}
