{{%AUTOESCAPE context="XML"}}
{{#TO}}An: {{CUSTOMER}}
{{/TO}}
Datum: {{DATE}}
<p>Betreff: {{TITLE}}</p>
Unser Zeichen: {{ID}}, Revision {{REVISION}}
{{#DRAWN_UP}}<p>wir haben Ihre Anforderungen durchgearbeitet und eine vorläufige Systemspezifikation erstellt, zu der dieses Schreiben gehört. Manches, worauf sie beruht, mussten wir annehmen. Bitte beantworten Sie von den folgenden Fragen, was Sie können; voran steht, was das Ergebnis am meisten bewegt. Was Sie nicht beantworten können, nennen Sie bitte auch: Dann bleibt der angenommene Wert bestehen.</p>{{/DRAWN_UP}}
{{#INFEASIBLE}}<p>wir haben Ihre Anforderungen durchgearbeitet: So, wie sie sind, können wir sie nicht erfüllen. Was entgegensteht und um wie viel, steht auf der ersten Seite des Dokuments, zu dem dieses Schreiben gehört; bitte sagen Sie uns, was davon nachgeben darf. Außerdem mussten wir manches annehmen. Bitte beantworten Sie von den folgenden Fragen, was Sie können.</p>{{/INFEASIBLE}}
{{#INCOMPLETE}}<p>wir haben Ihre Anforderungen gelesen: Sie sagen noch nicht genug, um ein System auszuarbeiten. Bitte beantworten Sie von den folgenden Fragen, was Sie können; voran steht, was wir zuerst brauchen.</p>{{/INCOMPLETE}}
{{#ROW}}
<p>{{NUMBER}}. {{TEXT:none}}</p>
   Bis dahin angenommen: {{ASSUMED:none}}
{{#MOVES}}   Ihre Antwort bewegt: {{EFFECT:none}}
{{/MOVES}}
{{/ROW}}
<p>Eine Antwort kann ein Wert mit Einheit sein, ein Bereich (von, bis) oder der Name dessen, der es weiß.</p>
{{#FROM}}
<p>{{CREATOR}}</p>
{{OWNER}}
{{/FROM}}
