{{%AUTOESCAPE context="XML"}}
{{#TO}}An: {{CUSTOMER}}
{{/TO}}
Datum: {{DATE}}
<p>Betreff: {{TITLE}}</p>
Unser Zeichen: {{ID}}, Revision {{REVISION}}
<p>wir haben Ihre Anforderungen durchgearbeitet und eine vorläufige Systemspezifikation erstellt. Manches, worauf sie beruht, mussten wir annehmen. Bitte beantworten Sie von den folgenden Fragen, was Sie können; voran steht, was das Ergebnis am meisten bewegt.</p>
{{#ROW}}
<p>{{NUMBER}}. {{TEXT:none}}</p>
   Bis dahin angenommen: {{ASSUMED:none}}
{{#MOVES}}   Ihre Antwort bewegt: {{EFFECT:none}}
{{/MOVES}}
{{/ROW}}
<p>Eine Antwort kann ein Wert mit Einheit sein, ein Bereich (von, bis) oder der Name dessen, der es weiß. Was Sie nicht beantworten können, nennen Sie bitte auch: Dann bleibt der oben angenommene Wert bestehen, und die Spezifikation gilt unter dieser Bedingung.</p>
{{#FROM}}
<p>{{CREATOR}}</p>
{{OWNER}}
{{/FROM}}
