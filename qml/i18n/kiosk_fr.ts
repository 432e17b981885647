<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Arrivals</name>
    <message>
        <source>No bottle is waiting</source>
        <translation>Aucun flacon en attente</translation>
    </message>
    <message>
        <source>One bottle is waiting</source>
        <translation>Un flacon en attente</translation>
    </message>
    <message>
        <source>%1 bottles are waiting</source>
        <translation>%1&#xa0;flacons en attente</translation>
    </message>
    <message>
        <source>Scan or type a label</source>
        <translation>Scannez ou tapez une étiquette</translation>
    </message>
    <message>
        <source>New bottle</source>
        <translation>Nouveau flacon</translation>
    </message>
    <message>
        <source>When one is handed over, touch “New bottle”, or scan the label on it. Overnight tests that fall due will stand here too.</source>
        <translation>Quand on vous en remet un, touchez «&#xa0;Nouveau flacon&#xa0;» ou scannez son étiquette. Les tests de la veille à relever s’afficheront aussi ici.</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flacons</translation>
    </message>
    <message>
        <source>To the bench</source>
        <translation>Vers l’analyse</translation>
    </message>
</context>
<context>
    <name>Assistant</name>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>All of this can be changed later, in the Back room.</source>
        <translation>Tout cela peut être changé plus tard, dans l’arrière-boutique.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Open the counter</source>
        <translation>Ouvrir le comptoir</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
</context>
<context>
    <name>BackRoom</name>
    <message>
        <source>Back room</source>
        <translation>Arrière-boutique</translation>
    </message>
</context>
<context>
    <name>Bench</name>
    <message>
        <source>Take back</source>
        <translation>Retirer</translation>
    </message>
</context>
<context>
    <name>Bottle</name>
    <message>
        <source>To the bench</source>
        <translation>Vers l’analyse</translation>
    </message>
</context>
<context>
    <name>BottleLine</name>
    <message>
        <source>Label: %1</source>
        <translation>Étiquette&#xa0;: %1</translation>
    </message>
    <message>
        <source>No bottle on the counter</source>
        <translation>Aucun flacon sur le comptoir</translation>
    </message>
</context>
<context>
    <name>ChartClear</name>
    <message>
        <source>Let it go on</source>
        <translation>Laisser reprendre</translation>
    </message>
    <message>
        <source>Cleared by</source>
        <translation>Levé par</translation>
    </message>
    <message>
        <source>What was found and done</source>
        <translation>Ce qui a été trouvé et fait</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Lever</translation>
    </message>
</context>
<context>
    <name>ChartCurve</name>
    <message>
        <source>A lot’s absorbance curve</source>
        <translation>Courbe d’absorbance d’un lot</translation>
    </message>
    <message>
        <source>Number of the lot</source>
        <translation>Numéro du lot</translation>
    </message>
    <message>
        <source>Wavelength, nm</source>
        <translation>Longueur d’onde, nm</translation>
    </message>
    <message>
        <source>Standards: amount and absorbance per cm; the next</source>
        <translation>Étalons : quantité et absorbance par cm ; le suivant</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>A new lot against the old</source>
        <translation>Un nouveau lot face à l’ancien</translation>
    </message>
    <message>
        <source>The same waters: old lot, new lot; the next</source>
        <translation>Les mêmes eaux : ancien lot, nouveau lot ; la suivante</translation>
    </message>
    <message>
        <source>Difference that may be</source>
        <translation>Écart admis</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
</context>
<context>
    <name>ChartForm</name>
    <message>
        <source>A new standard</source>
        <translation>Un nouvel étalon</translation>
    </message>
    <message>
        <source>Instrument, as its readings name it</source>
        <translation>Instrument, tel que ses lectures le nomment</translation>
    </message>
    <message>
        <source>What the standard is called</source>
        <translation>Nom de l’étalon</translation>
    </message>
    <message>
        <source>What it should read</source>
        <translation>Ce qu’il devrait lire</translation>
    </message>
    <message>
        <source>Spread of one measurement (sd)</source>
        <translation>Dispersion d’une mesure (écart-type, é.-t.)</translation>
    </message>
    <message>
        <source>Days between checks</source>
        <translation>Jours entre deux contrôles</translation>
    </message>
    <message>
        <source>It is a standard of</source>
        <translation>C’est un étalon de</translation>
    </message>
    <message>
        <source>Keep this standard</source>
        <translation>Garder cet étalon</translation>
    </message>
</context>
<context>
    <name>ChartPage</name>
    <message>
        <source>Standard</source>
        <translation>Étalon</translation>
    </message>
    <message>
        <source>It read</source>
        <translation>Il a lu</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Do not wait</source>
        <translation>Ne pas attendre</translation>
    </message>
    <message>
        <source>Measure on the instrument</source>
        <translation>Mesurer sur l’instrument</translation>
    </message>
    <message>
        <source>A new standard</source>
        <translation>Un nouvel étalon</translation>
    </message>
</context>
<context>
    <name>CustomerForm</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>Street</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Reads</source>
        <translation>Lit en</translation>
    </message>
    <message>
        <source>Measures in</source>
        <translation>Mesure en</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Email</source>
        <translation>Courriel</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>CustomerPart</name>
    <message>
        <source>Whose bottle?</source>
        <translation>À qui est le flacon&#x202f;?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation>Quelqu’un d’autre</translation>
    </message>
    <message>
        <source>Name, street or phone</source>
        <translation>Nom, adresse ou téléphone</translation>
    </message>
    <message>
        <source>New customer</source>
        <translation>Nouveau client</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Modifier</translation>
    </message>
</context>
<context>
    <name>Emergency</name>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>The product’s label and its safety data sheet go before anything written here.</source>
        <translation>L’étiquette du produit et sa fiche de données de sécurité priment sur tout ce qui est écrit ici.</translation>
    </message>
    <message>
        <source>Print this card</source>
        <translation>Imprimer cette fiche</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>Take-home</source>
        <translation>Consignes</translation>
    </message>
    <message>
        <source>On the thin rule: the bracket is the target, the filled mark this bottle and its uncertainty, the ring the last visit.</source>
        <translation>Sur le trait fin&#xa0;: le crochet est la cible, la marque pleine ce flacon et son incertitude, l’anneau la dernière visite.</translation>
    </message>
    <message>
        <source>The words</source>
        <translation>Les mots</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Les chiffres</translation>
    </message>
</context>
<context>
    <name>HandPanel</name>
    <message>
        <source>Change step %1</source>
        <translation>Changer l’étape %1</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De quoi</translation>
    </message>
    <message>
        <source>If it held (only to look at)</source>
        <translation>S’il contenait (pour voir)</translation>
    </message>
    <message>
        <source>In the end</source>
        <translation>À la fin</translation>
    </message>
    <message>
        <source>as told</source>
        <translation>comme dit</translation>
    </message>
    <message>
        <source>Changed by</source>
        <translation>Changé par</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Parce que</translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation>Dans le plan</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Hors du plan</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>Use this change</source>
        <translation>Utiliser ce changement</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>Lock</name>
    <message>
        <source>The counter is closed</source>
        <translation>Le comptoir est fermé</translation>
    </message>
    <message>
        <source>Who is at the counter?</source>
        <translation>Qui est au comptoir&#x202f;?</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>Choose a name, then type the PIN.</source>
        <translation>Choisir un nom, puis taper le code.</translation>
    </message>
    <message>
        <source>One moment ...</source>
        <translation>Un instant ...</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>%1 digits typed</source>
        <translation>%1 chiffres tapés</translation>
    </message>
    <message>
        <source>Open the counter</source>
        <translation>Ouvrir le comptoir</translation>
    </message>
</context>
<context>
    <name>NumberList</name>
    <message>
        <source>Behind ± stands one standard deviation: of a hundred such readings about sixty-eight lie that near.</source>
        <translation>Derrière ± figure un écart-type : sur cent mesures semblables, environ soixante-huit tombent aussi près.</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>rub out</source>
        <translation>effacer</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>virgule décimale</translation>
    </message>
</context>
<context>
    <name>OrphanLine</name>
    <message>
        <source>Set aside</source>
        <translation>Mettre de côté</translation>
    </message>
</context>
<context>
    <name>Overnight</name>
    <message>
        <source>To the bench</source>
        <translation>Vers l’analyse</translation>
    </message>
    <message>
        <source>Some bottles of the sample get rising doses of chlorine and are read after an hour and after a day. What is left tells how much the water uses up.</source>
        <translation>Quelques flacons de l’échantillon reçoivent des doses croissantes de chlore et sont mesurés après une heure et après un jour. Ce qu’il en reste dit combien l’eau consomme.</translation>
    </message>
    <message>
        <source>Told: put away</source>
        <translation>Client prévenu&#xa0;: ranger</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonner</translation>
    </message>
    <message>
        <source>Back to the readings</source>
        <translation>Retour aux mesures</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Take the last reading back</source>
        <translation>Annuler la dernière mesure</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>OvernightBottles</name>
    <message>
        <source>Doses</source>
        <translation>Doses</translation>
    </message>
    <message>
        <source>Sample in each bottle</source>
        <translation>Échantillon dans chaque flacon</translation>
    </message>
</context>
<context>
    <name>OvernightPad</name>
    <message>
        <source>type the number</source>
        <translation>tapez le nombre</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
</context>
<context>
    <name>OvernightPour</name>
    <message>
        <source>Print the labels</source>
        <translation>Imprimer les étiquettes</translation>
    </message>
    <message>
        <source>Labels as PDF</source>
        <translation>Étiquettes en PDF</translation>
    </message>
    <message>
        <source>They stand at</source>
        <translation>Ils restent à</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flacon</translation>
    </message>
    <message>
        <source>mg/L</source>
        <translation>mg/L</translation>
    </message>
    <message>
        <source>mL of stock</source>
        <translation>mL de solution</translation>
    </message>
</context>
<context>
    <name>OvernightStock</name>
    <message>
        <source>Liquid chlorine, as its label says</source>
        <translation>Chlore liquide, selon son étiquette</translation>
    </message>
</context>
<context>
    <name>OvernightTable</name>
    <message>
        <source>after 1 hour</source>
        <translation>après 1 heure</translation>
    </message>
    <message>
        <source>after 24 hours</source>
        <translation>après 24 heures</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flacon</translation>
    </message>
    <message>
        <source>mg/L</source>
        <translation>mg/L</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>total</source>
        <translation>total</translation>
    </message>
    <message>
        <source>free chlorine after 1 hour</source>
        <translation>chlore libre après 1 heure</translation>
    </message>
    <message>
        <source>total chlorine after 1 hour</source>
        <translation>chlore total après 1 heure</translation>
    </message>
    <message>
        <source>free chlorine after 24 hours</source>
        <translation>chlore libre après 24 heures</translation>
    </message>
    <message>
        <source>total chlorine after 24 hours</source>
        <translation>chlore total après 24 heures</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Call the customer: %1</source>
        <translation>Appelez le client&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>OvernightTests</name>
    <message>
        <source>Overnight tests</source>
        <translation>Tests sur une nuit</translation>
    </message>
    <message>
        <source>call %1</source>
        <translation>appeler&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>PadPanel</name>
    <message>
        <source>type the number</source>
        <translation>tapez le nombre</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnostic</translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>%1 leaves the counter</source>
        <translation>%1 quitte le comptoir</translation>
    </message>
    <message>
        <source>%1: leave</source>
        <translation>%1&#xa0;: partir</translation>
    </message>
</context>
<context>
    <name>PlanAnswers</name>
    <message>
        <source>Did the plan work?</source>
        <translation>Le plan a-t-il marché&#x202f;?</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No instrument is set; type the readings. (Back room, Instrument)</source>
        <translation>Aucun instrument n’est réglé&#x202f;; tapez les mesures. (Arrière-boutique, Instrument)</translation>
    </message>
    <message>
        <source>%1 on %2: its readings come in by themselves</source>
        <translation>%1 sur %2&#xa0;: ses mesures arrivent d’elles-mêmes</translation>
    </message>
    <message>
        <source>%1 instruments: their readings come in by themselves</source>
        <translation>%1 instruments : leurs mesures arrivent toutes seules</translation>
    </message>
</context>
<context>
    <name>RecordsLine</name>
    <message>
        <source>Ours</source>
        <translation>Le nôtre</translation>
    </message>
    <message>
        <source>Theirs</source>
        <translation>Le leur</translation>
    </message>
</context>
<context>
    <name>Rescue</name>
    <message>
        <source>The records cannot be read</source>
        <translation>Les dossiers ne peuvent pas être lus</translation>
    </message>
    <message>
        <source>The file is set aside under another name, whatever you choose: nothing in it is lost for somebody who can mend it.</source>
        <translation>Le fichier est mis de côté sous un autre nom, quel que soit votre choix&#xa0;: rien n’est perdu pour qui saura le réparer.</translation>
    </message>
    <message>
        <source>Bring the backup back</source>
        <translation>Reprendre la sauvegarde</translation>
    </message>
    <message>
        <source>Begin with empty records</source>
        <translation>Commencer avec des dossiers vides</translation>
    </message>
</context>
<context>
    <name>SamplePart</name>
    <message>
        <source>The bottle</source>
        <translation>Le flacon</translation>
    </message>
    <message>
        <source>What they have seen</source>
        <translation>Ce qu’ils ont vu</translation>
    </message>
</context>
<context>
    <name>SettingsForm</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>SheetPanel</name>
    <message>
        <source>The sheet</source>
        <translation>La fiche</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Make PDF</source>
        <translation>Créer le PDF</translation>
    </message>
    <message>
        <source>Other papers</source>
        <translation>Autres papiers</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>À prendre en rayon</translation>
    </message>
    <message>
        <source>Staff copy</source>
        <translation>Copie du personnel</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Étiquette</translation>
    </message>
    <message>
        <source>Do not print it</source>
        <translation>Ne pas l’imprimer</translation>
    </message>
    <message>
        <source>Kept. Next bottle</source>
        <translation>Enregistré. Flacon suivant</translation>
    </message>
</context>
<context>
    <name>StepRow</name>
    <message>
        <source>Change</source>
        <translation>Changer</translation>
    </message>
</context>
<context>
    <name>TakeHome</name>
    <message>
        <source>Undo the changes</source>
        <translation>Annuler les changements</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>En suspens</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Les étapes</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Les chiffres</translation>
    </message>
</context>
<context>
    <name>ThenNow</name>
    <message>
        <source>Beside the visit of</source>
        <translation>Comparer à la visite de</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Maintenant</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Attendu</translation>
    </message>
    <message>
        <source>Print its sheet again</source>
        <translation>Réimprimer sa feuille</translation>
    </message>
    <message>
        <source>Once this bottle is read, it stands here beside the earlier visit.</source>
        <translation>Une fois ce flacon lu, il apparaît ici à côté de la visite précédente.</translation>
    </message>
    <message>
        <source>When this water comes again, its new readings stand here beside these: what moved as expected, what did not and why, and how much the vessel really holds.</source>
        <translation>Quand cette eau reviendra, ses nouvelles mesures apparaîtront ici à côté de celles-ci&#xa0;: ce qui a changé comme prévu, ce qui n’a pas changé ainsi et pourquoi, et ce que le bassin contient vraiment.</translation>
    </message>
    <message>
        <source>The words</source>
        <translation>Les mots</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Les chiffres</translation>
    </message>
    <message>
        <source>What was expected: the earlier reading, moved by what was told, drained and lost. Its ± comes from both readings, the volume, and weeks of evaporation and splash.</source>
        <translation>Ce qui était prévu&#xa0;: la mesure d’avant, déplacée par ce qui a été ajouté, vidangé et perdu. Son ± vient des deux mesures, du volume et de semaines d’évaporation et d’éclaboussures.</translation>
    </message>
</context>
<context>
    <name>TroubleBanner</name>
    <message>
        <source>The instrument</source>
        <translation>L’instrument</translation>
    </message>
</context>
<context>
    <name>TwinPart</name>
    <message>
        <source>There is another card: %1 (%2). Is it the same person?</source>
        <translation>Il y a une autre fiche&#xa0;:&#x202f;%1 (%2). Est-ce la même personne&#x202f;?</translation>
    </message>
    <message>
        <source>Join the cards</source>
        <translation>Réunir les fiches</translation>
    </message>
    <message>
        <source>Two people</source>
        <translation>Deux personnes</translation>
    </message>
    <message>
        <source>Joined with this card: %1.</source>
        <translation>Réunie avec cette fiche&#xa0;:&#x202f;%1.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Séparer</translation>
    </message>
</context>
<context>
    <name>VesselPart</name>
    <message>
        <source>The vessel</source>
        <translation>Le bassin</translation>
    </message>
    <message>
        <source>Another vessel</source>
        <translation>Un autre bassin</translation>
    </message>
    <message>
        <source>Write down the vessel</source>
        <translation>Noter le bassin</translation>
    </message>
</context>
<context>
    <name>VolumeLesson</name>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>VolumePart</name>
    <message>
        <source>Work the volume out</source>
        <translation>Calculer le volume</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>The volume by its shape, or by meter</source>
        <translation>Le volume par sa forme, ou au compteur</translation>
    </message>
    <message>
        <source>Its bottom</source>
        <translation>Son fond</translation>
    </message>
    <message>
        <source>The meter counts</source>
        <translation>Le compteur compte en</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Mesuré</translation>
    </message>
    <message>
        <source>Take this volume</source>
        <translation>Prendre ce volume</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Laisser ainsi</translation>
    </message>
</context>
<context>
    <name>YearPart</name>
    <message>
        <source>A year of one reading</source>
        <translation>Une année d’une mesure</translation>
    </message>
    <message>
        <source>Round: a reading, with its standard deviation as a bar. Square: outside the target beyond its error. Hollow: at the end of what the method can show. Band: the target. Ticks at the foot: doses told, tall where the plan says that they move this reading.</source>
        <translation>Rond : une mesure, avec son écart-type en barre. Carré : hors de la cible au-delà de son erreur. Creux : au bout de ce que la méthode peut montrer. Bande : la cible. Traits au pied : doses indiquées, hauts là où le plan dit qu’elles font bouger cette mesure.</translation>
    </message>
</context>
<context>
    <name>absorbance</name>
    <message>
        <source>pH came in at a wavelength that is not phenol red’s. It was not kept.</source>
        <translation>Le pH est arrivé à une longueur d’onde qui n’est pas celle du rouge de phénol. Rien n’a été gardé.</translation>
    </message>
    <message>
        <source>No colour came in for pH: is the indicator in? It was not kept.</source>
        <translation>Aucune couleur n’est arrivée pour le pH : l’indicateur y est-il ? Rien n’a été gardé.</translation>
    </message>
    <message>
        <source>%1 was beyond what the instrument can see: dilute the sample and read it again.</source>
        <translation>%1 dépassait ce que l’instrument peut voir : diluez l’échantillon et relisez-le.</translation>
    </message>
    <message>
        <source>%1 came in as an absorbance, but the lot in use has no calibration at %2 nm. It was not kept.</source>
        <translation>%1 est arrivé comme absorbance, mais le lot en cours n’a pas d’étalonnage à %2 nm. Rien n’a été gardé.</translation>
    </message>
    <message>
        <source>%1 cannot be read from its calibration curve. It was not kept.</source>
        <translation>%1 ne peut être lu sur sa courbe d’étalonnage. Rien n’a été gardé.</translation>
    </message>
</context>
<context>
    <name>analyte</name>
    <message>
        <source>Biguanide</source>
        <translation>Biguanide</translation>
    </message>
    <message>
        <source>Borate</source>
        <translation>Borate</translation>
    </message>
    <message>
        <source>Bromide</source>
        <translation>Bromure</translation>
    </message>
    <message>
        <source>Calcium hardness</source>
        <translation>Dureté calcique</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>Conductivité</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Cuivre</translation>
    </message>
    <message>
        <source>Stabilizer</source>
        <translation>Stabilisant</translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation>Chlore libre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Fer</translation>
    </message>
    <message>
        <source>Magnesium hardness</source>
        <translation>Dureté magnésienne</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Manganèse</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>Nitrate</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peroxyde d’hydrogène</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>Phosphate</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sel</translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation>Sulfate</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Solides dissous</translation>
    </message>
    <message>
        <source>Total alkalinity</source>
        <translation>Alcalinité (TAC)</translation>
    </message>
    <message>
        <source>Total bromine</source>
        <translation>Brome total</translation>
    </message>
    <message>
        <source>Total chlorine</source>
        <translation>Chlore total</translation>
    </message>
    <message>
        <source>Total hardness</source>
        <translation>Dureté totale (TH)</translation>
    </message>
    <message>
        <source>Turbidity</source>
        <translation>Turbidité</translation>
    </message>
</context>
<context>
    <name>back</name>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>The photometer’s line: where it is plugged in, and which profile speaks its language.</source>
        <translation>La liaison du photomètre&#xa0;: où il est branché, et quel profil parle sa langue.</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>La boutique</translation>
    </message>
    <message>
        <source>What every sheet is signed with. The numbers stand on the Emergency page and on paper.</source>
        <translation>Ce qui signe chaque fiche. Les numéros figurent sur la page Urgence et sur le papier.</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Dossiers</translation>
    </message>
    <message>
        <source>Where visits are kept. A reading is shown as kept only once it is safe on the disk.</source>
        <translation>Où sont gardées les visites. Une mesure n’est dite enregistrée qu’une fois à l’abri sur le disque.</translation>
    </message>
    <message>
        <source>Shelf list</source>
        <translation>Produits</translation>
    </message>
    <message>
        <source>What the shop sells. A plan names only what stands here.</source>
        <translation>Ce que vend la boutique. Un plan ne nomme que ce qui figure ici.</translation>
    </message>
    <message>
        <source>Methods</source>
        <translation>Méthodes</translation>
    </message>
    <message>
        <source>How each reading may be taken: the range, and the spread of one reading.</source>
        <translation>Comment chaque mesure peut être prise&#xa0;: l’étendue, et la dispersion d’une mesure.</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Port</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Street</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Téléphone</translation>
    </message>
    <message>
        <source>Emergency number here</source>
        <translation>Numéro d’urgence local</translation>
    </message>
    <message>
        <source>Poison line</source>
        <translation>Centre antipoison</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Printer’s queue; empty for the usual one</source>
        <translation>File d’impression&#x202f;; vide pour l’habituelle</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2&#xa0;%3</translation>
    </message>
    <message>
        <source>method %1</source>
        <translation>méthode %1</translation>
    </message>
    <message>
        <source>Reagents</source>
        <translation>Réactifs</translation>
    </message>
    <message>
        <source>Lots and their days: new every season, kept cool and away from chlorine. A reading of a spoilt lot is asked for again.</source>
        <translation>Les lots et leurs dates : neufs chaque saison, au frais et loin du chlore. Une mesure faite avec un lot gâté est redemandée.</translation>
    </message>
    <message>
        <source>Instrument checks</source>
        <translation>Contrôles d’instrument</translation>
    </message>
    <message>
        <source>Each instrument against its standards, every month. What failed is not believed until it is right again.</source>
        <translation>Chaque instrument face à ses étalons, chaque mois. Ce qui a échoué n’est pas cru tant que ce n’est pas redevenu juste.</translation>
    </message>
    <message>
        <source>Control charts</source>
        <translation>Cartes de contrôle</translation>
    </message>
    <message>
        <source>Standards of known value, measured again and again. Each mark is one measurement, in standard deviations (sd) from what it should be.</source>
        <translation>Des étalons de valeur connue, mesurés encore et encore. Chaque marque est une mesure, en écarts-types (é.-t.) de ce qu’elle devrait être.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
    <message>
        <source>%1, spread %2 %3 and %4 %</source>
        <translation>%1, dispersion %2 %3 et %4 %</translation>
    </message>
    <message>
        <source>%1, spread %2 %3</source>
        <translation>%1, dispersion %2 %3</translation>
    </message>
    <message>
        <source>Language of this screen</source>
        <translation>Langue de cet écran</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Cibles</translation>
    </message>
    <message>
        <source>What a reading should be at home. The shop may set its own; what could harm is refused in every plan all the same.</source>
        <translation>Ce qu’une mesure doit donner à la maison. La boutique peut fixer les siennes ; ce qui pourrait nuire est refusé dans tout plan malgré cela.</translation>
    </message>
    <message>
        <source>Code for public water</source>
        <translation>Règlement des eaux publiques</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>This screen</source>
        <translation>Cet écran</translation>
    </message>
    <message>
        <source>What the screen of this counter looks like. Paper is not changed by it.</source>
        <translation>L’aspect de l’écran de ce comptoir. Le papier n’en est pas changé.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Mouvement</translation>
    </message>
    <message>
        <source>%1: none</source>
        <translation>%1 : aucun</translation>
    </message>
    <message>
        <source>Which instrument</source>
        <translation>Quel instrument</translation>
    </message>
    <message>
        <source>Listener</source>
        <translation>Écoute</translation>
    </message>
    <message>
        <source>For an instrument nobody knows yet: what it sends, and which profile understands it. Let it measure while it is listened to.</source>
        <translation>Pour un instrument encore inconnu : ce qu’il envoie, et quel profil le comprend. Faites-le mesurer pendant l’écoute.</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Non utilisé</translation>
    </message>
    <message>
        <source>A new customer measures in</source>
        <translation>Un nouveau client mesure en</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sauvegardes</translation>
    </message>
    <message>
        <source>One a day, opened and counted before it counts; of the old ones seven days, four weeks and twelve months are kept. Best on a stick that is not always plugged in.</source>
        <translation>Une par jour, ouverte et comptée avant d’être retenue&#x202f;; des anciennes on garde sept jours, quatre semaines et douze mois. De préférence sur une clé qui n’est pas toujours branchée.</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>With nobody written down the counter is open to all. The first one must be able to let others in.</source>
        <translation>Sans personne d’inscrit, le comptoir est ouvert à tous. La première personne doit pouvoir en admettre d’autres.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>What is known of one customer, as a file for them, or forgotten when they ask.</source>
        <translation>Ce que l’on sait d’un client, en un fichier pour lui, ou oublié à sa demande.</translation>
    </message>
    <message>
        <source>Audit trail</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Who changed what, when, and why. Nothing here is ever changed or removed.</source>
        <translation>Qui a changé quoi, quand et pourquoi. Rien ici n’est jamais changé ni effacé.</translation>
    </message>
    <message>
        <source>Customers on Arrivals</source>
        <translation>Clients dans Arrivées</translation>
    </message>
    <message>
        <source>A PIN is asked for again after</source>
        <translation>Le code est redemandé après</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tableaux</translation>
    </message>
    <message>
        <source>Everything in the records for other programs, and what other programs wrote brought in. Tables hold people’s addresses: keep them as you keep the records.</source>
        <translation>Tout ce que contiennent les dossiers pour d’autres programmes, et ce que d’autres programmes ont écrit. Ces tableaux contiennent des adresses&#xa0;: gardez-les comme les dossiers.</translation>
    </message>
    <message>
        <source>Due for a test</source>
        <translation>Analyse à faire</translation>
    </message>
    <message>
        <source>Whose next bottle is due: by the plan told, or else a month after the last one.</source>
        <translation>À qui le tour d’apporter un flacon&#xa0;: selon le plan donné, sinon un mois après le dernier.</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>La semaine</translation>
    </message>
    <message>
        <source>What came to the counter, whether the plans of before worked, and what was used up for it. No names stand in it.</source>
        <translation>Ce qui est venu au comptoir, si les plans précédents ont réussi et ce qui a été consommé pour cela. Aucun nom n’y figure.</translation>
    </message>
    <message>
        <source>Sounds</source>
        <translation>Sons</translation>
    </message>
    <message>
        <source>Double cards</source>
        <translation>Fiches en double</translation>
    </message>
    <message>
        <source>Cards that may be one person’s. Joined, their vessels and visits stand under one card; it can be taken apart again.</source>
        <translation>Des fiches qui sont peut-être celles d’une même personne. Réunies, leurs bassins et leurs visites se trouvent sous une seule fiche&#x202f;; on peut les séparer à nouveau.</translation>
    </message>
    <message>
        <source>Each day</source>
        <translation>Chaque jour</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Shop and staff</source>
        <translation>La boutique</translation>
    </message>
</context>
<context>
    <name>brimline::BackDesk</name>
    <message>
        <source>Listen here</source>
        <translation>Écouter ici</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Database</source>
        <translation>Base de données</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Enregistré.</translation>
    </message>
    <message>
        <source>The settings’ file cannot be written: %1</source>
        <translation>Impossible d’écrire le fichier de réglages&#xa0;: %1</translation>
    </message>
    <message>
        <source>Only a keeper may change this.</source>
        <translation>Seul un responsable peut changer cela.</translation>
    </message>
    <message>
        <source>As it was before.</source>
        <translation>Comme avant.</translation>
    </message>
    <message>
        <source>A file cannot be written; look at the list.</source>
        <translation>Un fichier ne peut pas être écrit&#x202f;; regardez la liste.</translation>
    </message>
</context>
<context>
    <name>brimline::BackPaper</name>
    <message>
        <source>Sent to the printer. %1</source>
        <translation>Envoyé à l’imprimante. %1</translation>
    </message>
</context>
<context>
    <name>brimline::BackupForm</name>
    <message>
        <source>None: make one now</source>
        <translation>Aucune&#xa0;: en faire une maintenant</translation>
    </message>
    <message>
        <source>Folder or stick; empty: beside the records</source>
        <translation>Dossier ou clé&#x202f;; vide&#xa0;: à côté des dossiers</translation>
    </message>
    <message>
        <source>A backup to bring back</source>
        <translation>Une sauvegarde à reprendre</translation>
    </message>
    <message>
        <source>Cannot be used</source>
        <translation>Inutilisable</translation>
    </message>
    <message>
        <source>last bottle %1</source>
        <translation>dernier flacon %1</translation>
    </message>
    <message>
        <source>In this backup</source>
        <translation>Dans cette sauvegarde</translation>
    </message>
    <message>
        <source>%1 visits, %2 customers</source>
        <translation>%1 visites, %2 clients</translation>
    </message>
    <message>
        <source>In the records now</source>
        <translation>Dans les dossiers actuels</translation>
    </message>
    <message>
        <source>If it is brought back</source>
        <translation>Si elle est reprise</translation>
    </message>
    <message>
        <source>The records of now are set aside under another name, not deleted.</source>
        <translation>Les dossiers actuels sont mis de côté sous un autre nom, pas effacés.</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 Mo</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder maintenant</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>La reprendre</translation>
    </message>
    <message>
        <source>A backup is being made.</source>
        <translation>Une sauvegarde est en cours.</translation>
    </message>
    <message>
        <source>The counter closes its records and opens the backup’s.</source>
        <translation>Le comptoir ferme ses dossiers et ouvre ceux de la sauvegarde.</translation>
    </message>
    <message>
        <source>A backup is being made ...</source>
        <translation>Sauvegarde en cours ...</translation>
    </message>
    <message>
        <source>Backed up, opened and counted: %1</source>
        <translation>Sauvegardé, ouvert et compté&#xa0;: %1</translation>
    </message>
    <message>
        <source>No backup was made: %1</source>
        <translation>Aucune sauvegarde&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>brimline::BenchDesk</name>
    <message>
        <source>%1 of %2 kept</source>
        <translation>%1 mesures sur %2</translation>
    </message>
    <message>
        <source>No bottle is on the bench</source>
        <translation>Aucun flacon à analyser</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Aucune mesure à faire</translation>
    </message>
    <message>
        <source>All %1 readings are kept</source>
        <translation>Les %1 mesures sont enregistrées</translation>
    </message>
    <message>
        <source>%1 of %2 readings kept</source>
        <translation>Mesures enregistrées&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>%1 cannot be %2. Please read it again.</source>
        <translation>%1&#xa0;: %2 est impossible. Refaites la mesure.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 came in for bottle %2 and was kept there.</source>
        <translation>%1 est arrivé pour le flacon %2 et y a été enregistré.</translation>
    </message>
    <message>
        <source>%1 was not kept: %2</source>
        <translation>%1 n’a pas été enregistré&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 came in %2 for bottle %3, which does not wait here. Whose is it?</source>
        <translation>%1 est arrivé %2 pour le flacon %3, qui n’attend pas ici. À qui est-ce ?</translation>
    </message>
    <message>
        <source>%1 came in %2 while no bottle was on the counter. Whose is it?</source>
        <translation>%1 est arrivé %2 sans flacon sur le comptoir. À qui est-ce ?</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Et %1 de plus.</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Take back %1 %2</source>
        <translation>Retirer %1 %2</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Fait&#xa0;: %1.</translation>
    </message>
    <message>
        <source>All %1 due are kept, and %2 more</source>
        <translation>Les %1 attendues sont enregistrées, et %2 de plus</translation>
    </message>
    <message>
        <source>All %1 of %2</source>
        <translation>Les %1 sont de %2</translation>
    </message>
    <message>
        <source>A reading has come in that belongs to no bottle yet. It waits at the bench.</source>
        <translation>Une mesure est arrivée qui n’appartient encore à aucun flacon. Elle attend dans Analyse.</translation>
    </message>
    <message>
        <source>%1 readings have come in that belong to no bottle yet. They wait at the bench.</source>
        <translation>%1 mesures sont arrivées qui n’appartiennent encore à aucun flacon. Elles attendent dans Analyse.</translation>
    </message>
    <message>
        <source>%1 has come in by itself; the pad is at %2 now.</source>
        <translation>%1&#xa0;: la mesure est arrivée d’elle-même&#x202f;; le pavé en est maintenant à %2.</translation>
    </message>
</context>
<context>
    <name>brimline::ChartDesk</name>
    <message>
        <source>No standard is written down yet. A glass or a solution of known value, measured every week, shows when an instrument drifts.</source>
        <translation>Aucun étalon n’est encore noté. Un verre ou une solution de valeur connue, mesuré chaque semaine, montre quand un instrument dérive.</translation>
    </message>
    <message>
        <source>should be</source>
        <translation>devrait être</translation>
    </message>
    <message>
        <source>+%1 sd</source>
        <translation>+%1 é.-t.</translation>
    </message>
    <message>
        <source>−%1 sd</source>
        <translation>−%1 é.-t.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1 : %2 %3</translation>
    </message>
    <message>
        <source>Not kept: choose the standard first.</source>
        <translation>Non gardé : choisissez d’abord l’étalon.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non gardé : %1</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 est gardé.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not what the instrument can show.</source>
        <translation>Non gardé : « %1 » n’est pas ce que l’instrument peut montrer.</translation>
    </message>
    <message>
        <source>Put the standard in and measure it: the next value that comes in is kept here.</source>
        <translation>Mettez l’étalon et mesurez-le : la prochaine valeur qui arrive est gardée ici.</translation>
    </message>
    <message>
        <source>Not cleared: write who clears it.</source>
        <translation>Non levé : écrivez qui le lève.</translation>
    </message>
    <message>
        <source>Not cleared: write what was found and done.</source>
        <translation>Non levé : écrivez ce qui a été trouvé et fait.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>Non levé : %1</translation>
    </message>
    <message>
        <source>Cleared by %1. Measure the standards now, before the next bottle.</source>
        <translation>Levé par %1. Mesurez les étalons maintenant, avant le prochain flacon.</translation>
    </message>
    <message>
        <source>Not kept: name the instrument, as its readings do.</source>
        <translation>Non gardé : nommez l’instrument comme le font ses lectures.</translation>
    </message>
    <message>
        <source>Not kept: name the standard.</source>
        <translation>Non gardé : nommez l’étalon.</translation>
    </message>
    <message>
        <source>Not kept: say what it is a standard of.</source>
        <translation>Non gardé : dites de quoi il est l’étalon.</translation>
    </message>
    <message>
        <source>Not kept: its value is missing or cannot be.</source>
        <translation>Non gardé : sa valeur manque ou est impossible.</translation>
    </message>
    <message>
        <source>Not kept: the spread is to be a number above zero.</source>
        <translation>Non gardé : la dispersion doit être un nombre au-dessus de zéro.</translation>
    </message>
    <message>
        <source>Not kept: the days between checks are to be 1 or more.</source>
        <translation>Non gardé : il faut 1 jour ou plus entre deux contrôles.</translation>
    </message>
    <message>
        <source>%1 is kept: measure it once now.</source>
        <translation>%1 est gardé : mesurez-le une fois maintenant.</translation>
    </message>
    <message>
        <source>Not kept: lot “%1” is not written down under Reagents.</source>
        <translation>Non gardé : le lot « %1 » n’est pas noté sous Réactifs.</translation>
    </message>
    <message>
        <source>Not kept: the wavelength is to be 190 to 1100 nm.</source>
        <translation>Non gardé : la longueur d’onde doit aller de 190 à 1100 nm.</translation>
    </message>
    <message>
        <source>Not kept: five standards or more, as “0 0.001; 1 0.197; 2 0.394”.</source>
        <translation>Non gardé : cinq étalons ou plus, comme « 0 0.001; 1 0.197; 2 0.394 ».</translation>
    </message>
    <message>
        <source>Not kept: the absorbances do not follow the standards.</source>
        <translation>Non gardé : les absorbances ne suivent pas les étalons.</translation>
    </message>
    <message>
        <source>a straight line</source>
        <translation>une droite</translation>
    </message>
    <message>
        <source>a parabola</source>
        <translation>une parabole</translation>
    </message>
    <message>
        <source>The curve of lot %1 is kept: %2 from %3 to %4, spread of the method %5.</source>
        <translation>La courbe du lot %1 est gardée : %2 de %3 à %4, dispersion de la méthode %5.</translation>
    </message>
    <message>
        <source>Two numbers a water are wanted, as “1.02 1.05; 2.10 2.08”.</source>
        <translation>Il faut deux nombres par eau, comme « 1.02 1.05; 2.10 2.08 ».</translation>
    </message>
    <message>
        <source>Write the difference that may be: a number above zero.</source>
        <translation>Écrivez l’écart admis : un nombre au-dessus de zéro.</translation>
    </message>
    <message>
        <source>Read two waters or more with both lots.</source>
        <translation>Lisez deux eaux ou plus avec les deux lots.</translation>
    </message>
    <message>
        <source>%1 waters: the new lot reads %2 more (95 %: %3 to %4).</source>
        <translation>%1 eaux : le nouveau lot lit %2 de plus (95 % : de %3 à %4).</translation>
    </message>
    <message>
        <source>The lots are alike.</source>
        <translation>Les lots sont pareils.</translation>
    </message>
    <message>
        <source>The lots differ: do not use the new one before its curve or its supplier has been asked.</source>
        <translation>Les lots diffèrent : n’utilisez pas le nouveau avant d’avoir vu sa courbe ou interrogé son fournisseur.</translation>
    </message>
    <message>
        <source>That does not tell: read more waters with both.</source>
        <translation>Cela ne tranche pas : lisez plus d’eaux avec les deux.</translation>
    </message>
</context>
<context>
    <name>brimline::Counter</name>
    <message>
        <source>This visit is not in the records.</source>
        <translation>Cette visite n’est pas dans les dossiers.</translation>
    </message>
    <message>
        <source>There is no bottle on the counter.</source>
        <translation>Aucun flacon n’est sur le comptoir.</translation>
    </message>
    <message>
        <source>There is no reading to take back.</source>
        <translation>Il n’y a aucune mesure à retirer.</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirée</translation>
    </message>
</context>
<context>
    <name>brimline::Desk</name>
    <message>
        <source>Not said whose</source>
        <translation>Propriétaire non indiqué</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>prélevé&#xa0;: %1</translation>
    </message>
    <message>
        <source>nothing read yet</source>
        <translation>rien de mesuré encore</translation>
    </message>
    <message>
        <source>1 reading kept</source>
        <translation>1 mesure enregistrée</translation>
    </message>
    <message>
        <source>%1 readings kept</source>
        <translation>%1 mesures enregistrées</translation>
    </message>
    <message>
        <source>Arrivals</source>
        <translation>Arrivées</translation>
    </message>
    <message>
        <source>1 waiting</source>
        <translation>1 en attente</translation>
    </message>
    <message>
        <source>%1 waiting</source>
        <translation>%1 en attente</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flacon</translation>
    </message>
    <message>
        <source>whose?</source>
        <translation>à qui&#x202f;?</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnostic</translation>
    </message>
    <message>
        <source>1 to know</source>
        <translation>1 constat</translation>
    </message>
    <message>
        <source>%1 to know</source>
        <translation>%1 constats</translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation>Consignes</translation>
    </message>
    <message>
        <source>no home plan</source>
        <translation>pas de plan maison</translation>
    </message>
    <message>
        <source>1 step</source>
        <translation>1 étape</translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation>%1 étapes</translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation>Avant, maintenant</translation>
    </message>
    <message>
        <source>1 earlier</source>
        <translation>1 précédente</translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 précédentes</translation>
    </message>
    <message>
        <source>Back room</source>
        <translation>Arrière-boutique</translation>
    </message>
    <message>
        <source>1 test due</source>
        <translation>1 test à lire</translation>
    </message>
    <message>
        <source>%1 tests due</source>
        <translation>%1 tests à lire</translation>
    </message>
    <message>
        <source>1 check due</source>
        <translation>1 contrôle à faire</translation>
    </message>
    <message>
        <source>%1 checks due</source>
        <translation>%1 contrôles à faire</translation>
    </message>
    <message>
        <source>Another counter changed the same meanwhile. %1. Which is right?</source>
        <translation>Un autre comptoir a changé la même chose entre-temps. %1. Lequel est juste&#x202f;?</translation>
    </message>
    <message>
        <source>not seen for %1 months</source>
        <translation>pas vu depuis %1 mois</translation>
    </message>
</context>
<context>
    <name>brimline::DueForm</name>
    <message>
        <source>Which</source>
        <translation>Lesquels</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>En retard</translation>
    </message>
    <message>
        <source>Due within a week</source>
        <translation>Dans la semaine</translation>
    </message>
    <message>
        <source>Due within a month</source>
        <translation>Dans le mois</translation>
    </message>
    <message>
        <source>A reminder for</source>
        <translation>Un rappel pour</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Sous forme de</translation>
    </message>
    <message>
        <source>A letter, printed</source>
        <translation>Lettre imprimée</translation>
    </message>
    <message>
        <source>A letter, as a file</source>
        <translation>Lettre en fichier</translation>
    </message>
    <message>
        <source>An entry for their calendar</source>
        <translation>Entrée pour son agenda</translation>
    </message>
    <message>
        <source>overdue, days: %1</source>
        <translation>en retard, jours&#xa0;: %1</translation>
    </message>
    <message>
        <source>due, in days: %1</source>
        <translation>prévu dans, jours&#xa0;: %1</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>A vessel stands here from the day its next bottle is due.</source>
        <translation>Un bassin figure ici dès le jour où son flacon est attendu.</translation>
    </message>
    <message>
        <source>Print it</source>
        <translation>L’imprimer</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>L’écrire</translation>
    </message>
    <message>
        <source>Choose somebody first.</source>
        <translation>Choisissez d’abord quelqu’un.</translation>
    </message>
    <message>
        <source>Making the letter ...</source>
        <translation>Préparation de la lettre ...</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 ne peut être créé.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 ne peut être écrit.</translation>
    </message>
    <message>
        <source>Written to %1: it may be sent to the customer, and names nobody.</source>
        <translation>Écrit dans %1&#xa0;: peut être envoyé au client, et ne nomme personne.</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Recherche ...</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Les dossiers ne peuvent pas être lus en ce moment.</translation>
    </message>
</context>
<context>
    <name>brimline::FirstStart</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>brimline::HandDesk</name>
    <message>
        <source>%1 % of what was told</source>
        <translation>%1 % de ce qui était dit</translation>
    </message>
    <message>
        <source>%1 US gal</source>
        <translation>%1 gal US</translation>
    </message>
    <message>
        <source>%1 m³</source>
        <translation>%1 m³</translation>
    </message>
    <message>
        <source>A portion would be %1.</source>
        <translation>%1 ferait une portion.</translation>
    </message>
    <message>
        <source>In range: %1 % of the draws, %2 % as told.</source>
        <translation>Dans les objectifs : %1 % des simulations, %2 % avec ce qui était dit.</translation>
    </message>
</context>
<context>
    <name>brimline::Kiosk</name>
    <message>
        <source>The backup is back: %1.</source>
        <translation>La sauvegarde est reprise&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The backup was not brought back: %1</source>
        <translation>La sauvegarde n’a pas été reprise&#xa0;: %1</translation>
    </message>
    <message>
        <source>The records of before are set aside: %1.</source>
        <translation>Les dossiers d’avant sont mis de côté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The newest sound backup is of %1 and holds %2 visits.</source>
        <translation>La sauvegarde saine la plus récente est du %1 et contient %2 visites.</translation>
    </message>
</context>
<context>
    <name>brimline::LockDesk</name>
    <message>
        <source>Too many wrong PINs: wait %1 seconds.</source>
        <translation>Trop de codes faux&#xa0;: attendre %1 secondes.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Ce n’est pas le code.</translation>
    </message>
    <message>
        <source>Choose a name first.</source>
        <translation>Choisissez d’abord un nom.</translation>
    </message>
</context>
<context>
    <name>brimline::OvernightDesk</name>
    <message>
        <source>Overnight test</source>
        <translation>Test de 24 h</translation>
    </message>
    <message>
        <source>Overnight test: %1</source>
        <translation>Test de 24 h&#xa0;: %1</translation>
    </message>
    <message>
        <source>An overnight test of this water</source>
        <translation>Test de cette eau sur une nuit</translation>
    </message>
    <message>
        <source>Overnight test: the bottles</source>
        <translation>Test de 24 h&#xa0;: les flacons</translation>
    </message>
    <message>
        <source>Overnight test: the stock</source>
        <translation>Test de 24 h&#xa0;: la solution mère</translation>
    </message>
    <message>
        <source>Overnight test: labels, then chlorine</source>
        <translation>Test de 24 h&#xa0;: étiquettes, puis chlore</translation>
    </message>
    <message>
        <source>Overnight test: the readings</source>
        <translation>Test de 24 h&#xa0;: les mesures</translation>
    </message>
    <message>
        <source>Overnight test: the result</source>
        <translation>Test de 24 h&#xa0;: le résultat</translation>
    </message>
    <message>
        <source>Set one up</source>
        <translation>En préparer un</translation>
    </message>
    <message>
        <source>To the stock</source>
        <translation>À la solution</translation>
    </message>
    <message>
        <source>To the labels</source>
        <translation>Aux étiquettes</translation>
    </message>
    <message>
        <source>All dosed: start the clock</source>
        <translation>Tous dosés&#xa0;: lancer l’horloge</translation>
    </message>
    <message>
        <source>Put the result into the plan</source>
        <translation>Mettre le résultat au plan</translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation>Consignes</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Making the labels …</source>
        <translation>Préparation des étiquettes …</translation>
    </message>
    <message>
        <source>The labels are not on paper: %1</source>
        <translation>Les étiquettes ne sont pas sur papier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Strength check: free chlorine</source>
        <translation>Contrôle de la solution&#xa0;: chlore libre</translation>
    </message>
    <message>
        <source>%1 cannot be %2. Please read it again.</source>
        <translation>%1&#xa0;: %2 est impossible. Refaites la mesure.</translation>
    </message>
    <message>
        <source>Put away: the customer was told.</source>
        <translation>Rangé : le client est prévenu.</translation>
    </message>
    <message>
        <source>The test is given up. What was read of it stays on record.</source>
        <translation>Le test est abandonné. Les mesures déjà faites restent enregistrées.</translation>
    </message>
    <message>
        <source>Another test of this bottle was begun meanwhile.</source>
        <translation>Un autre test de ce flacon a été commencé entre-temps.</translation>
    </message>
</context>
<context>
    <name>brimline::PlanDesk</name>
    <message>
        <source>They get home %1</source>
        <translation>Retour à la maison&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation>Aucun flacon sur le comptoir</translation>
    </message>
    <message>
        <source>Nothing has been read yet</source>
        <translation>Rien n’a encore été mesuré</translation>
    </message>
    <message>
        <source>Working it out</source>
        <translation>Calcul en cours</translation>
    </message>
    <message>
        <source>This water is in order</source>
        <translation>Cette eau est en ordre</translation>
    </message>
    <message>
        <source>What this water says</source>
        <translation>Ce que dit cette eau</translation>
    </message>
    <message>
        <source>No sheet was made, for the visit could not be kept: %1</source>
        <translation>Aucune fiche n’a été faite, car la visite n’a pas pu être enregistrée&#xa0;: %1</translation>
    </message>
    <message>
        <source>The visit is kept; making the sheet …</source>
        <translation>La visite est enregistrée&#x202f;; préparation de la fiche …</translation>
    </message>
    <message>
        <source>The visit is kept, but the sheet is not on paper: %1</source>
        <translation>La visite est enregistrée, mais la fiche n’est pas sur papier&#xa0;: %1</translation>
    </message>
    <message>
        <source>The bottle has changed: what was changed by hand is dropped.</source>
        <translation>La bouteille a changé : ce qui était changé à la main est abandonné.</translation>
    </message>
    <message>
        <source>Making the card …</source>
        <translation>Préparation de la fiche …</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <translation>Fiche d’urgence</translation>
    </message>
</context>
<context>
    <name>brimline::PrintWatch</name>
    <message>
        <source>sent to the printer</source>
        <translation>envoyée à l’imprimante</translation>
    </message>
    <message>
        <source>It comes out by itself once that is mended: do not print it again.</source>
        <translation>Elle sortira d’elle-même une fois cela réglé : ne pas l’imprimer de nouveau.</translation>
    </message>
    <message>
        <source>The print service does not let it be taken back: look at the printer before printing again.</source>
        <translation>Le service d’impression ne permet pas de la retirer : regarder l’imprimante avant de réimprimer.</translation>
    </message>
</context>
<context>
    <name>brimline::StaffForm</name>
    <message>
        <source>Not kept: a PIN has at least 4 digits.</source>
        <translation>Non gardé&#xa0;: un code a au moins 4 chiffres.</translation>
    </message>
    <message>
        <source>Not kept: a PIN has at most 12 digits.</source>
        <translation>Non gardé&#xa0;: un code a au plus 12 chiffres.</translation>
    </message>
    <message>
        <source>Not kept: a PIN is digits alone.</source>
        <translation>Non gardé&#xa0;: un code n’a que des chiffres.</translation>
    </message>
    <message>
        <source>Not kept: anybody would guess this PIN.</source>
        <translation>Non gardé&#xa0;: n’importe qui devinerait ce code.</translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation>Quelqu’un de nouveau</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Name, as it signs</source>
        <translation>Nom, tel qu’il signe</translation>
    </message>
    <message>
        <source>PIN, 4 to 12 digits</source>
        <translation>Code, 4 à 12 chiffres</translation>
    </message>
    <message>
        <source>New PIN; empty: the old one stays</source>
        <translation>Nouveau code&#x202f;; vide&#xa0;: l’ancien reste</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Peut</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Travaille ici</translation>
    </message>
    <message>
        <source>works here no longer</source>
        <translation>ne travaille plus ici</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Not kept: the name is missing.</source>
        <translation>Non gardé&#xa0;: le nom manque.</translation>
    </message>
    <message>
        <source>One moment ...</source>
        <translation>Un instant ...</translation>
    </message>
    <message>
        <source>Not kept: there is no memory for it.</source>
        <translation>Non gardé&#xa0;: mémoire insuffisante.</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 est gardé.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non gardé&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>brimline::TablesForm</name>
    <message>
        <source>Write everything out as tables</source>
        <translation>Tout écrire en tableaux</translation>
    </message>
    <message>
        <source>Bring in customers and earlier readings</source>
        <translation>Reprendre clients et lectures antérieures</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Que faire</translation>
    </message>
    <message>
        <source>Folder or stick; a new folder is made in it</source>
        <translation>Dossier ou clé&#x202f;; un nouveau dossier y est créé</translation>
    </message>
    <message>
        <source>Table of customers, a CSV file</source>
        <translation>Tableau des clients, un fichier CSV</translation>
    </message>
    <message>
        <source>Table of earlier readings, a CSV file</source>
        <translation>Tableau des lectures antérieures, un fichier CSV</translation>
    </message>
    <message>
        <source>%1 in the records already</source>
        <translation>%1 déjà dans les dossiers</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 nouveaux</translation>
    </message>
    <message>
        <source>Customers</source>
        <translation>Clients</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Bassins</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visites</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lectures</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omis</translation>
    </message>
    <message>
        <source>Left as it is</source>
        <translation>Laissé tel quel</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Write them</source>
        <translation>Les écrire</translation>
    </message>
    <message>
        <source>Look through</source>
        <translation>Examiner</translation>
    </message>
    <message>
        <source>Keep the sound lines</source>
        <translation>Garder les lignes valides</translation>
    </message>
    <message>
        <source>Keep them all</source>
        <translation>Tout garder</translation>
    </message>
    <message>
        <source>It stops at the next whole piece ...</source>
        <translation>Arrêt après la partie en cours ...</translation>
    </message>
    <message>
        <source>%1 % done ...</source>
        <translation>%1&#xa0;% fait ...</translation>
    </message>
    <message>
        <source>Working ...</source>
        <translation>En cours ...</translation>
    </message>
    <message>
        <source>Name a folder first.</source>
        <translation>Indiquez d’abord un dossier.</translation>
    </message>
    <message>
        <source>Written to %1: %2 visits, %3 customers.</source>
        <translation>Écrit dans %1&#xa0;: %2 visites, %3 clients.</translation>
    </message>
    <message>
        <source>Name a table first.</source>
        <translation>Indiquez d’abord un tableau.</translation>
    </message>
    <message>
        <source>Looked through: nothing is kept yet.</source>
        <translation>Examiné&#xa0;: rien n’est encore gardé.</translation>
    </message>
    <message>
        <source>Looked through: nothing is kept yet. Lines that cannot be taken: %1.</source>
        <translation>Examiné&#xa0;: rien n’est encore gardé. Lignes impossibles à reprendre&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Kept: %1 customers, %2 visits, %3 readings.</source>
        <translation>Gardé&#xa0;: %1 clients, %2 visites, %3 lectures.</translation>
    </message>
</context>
<context>
    <name>brimline::ThenDesk</name>
    <message>
        <source>Then</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation>Aucun flacon sur le comptoir</translation>
    </message>
    <message>
        <source>This vessel’s first bottle</source>
        <translation>Premier flacon de ce bassin</translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation>Avant et maintenant</translation>
    </message>
    <message>
        <source>Plan with %1</source>
        <translation>Planifier avec %1</translation>
    </message>
</context>
<context>
    <name>brimline::Ticket</name>
    <message>
        <source>Taken %1</source>
        <translation>Prélevé&#xa0;: %1</translation>
    </message>
    <message>
        <source>When it was taken is not known</source>
        <translation>L’heure du prélèvement n’est pas connue</translation>
    </message>
    <message>
        <source>A new one</source>
        <translation>Un nouveau</translation>
    </message>
    <message>
        <source>last here %1</source>
        <translation>dernière visite&#xa0;: %1</translation>
    </message>
    <message>
        <source>This could not be kept: %1</source>
        <translation>Ceci n’a pas pu être enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non gardé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Another counter changed this card meanwhile: it stands now as %1. Write it down again to keep yours, or leave it.</source>
        <translation>Un autre comptoir a modifié cette fiche entre-temps&#xa0;: elle indique maintenant %1. Notez-la de nouveau pour garder la vôtre, ou laissez.</translation>
    </message>
    <message>
        <source>From the water’s answers, ± %1 %</source>
        <translation>D’après les réponses de l’eau, ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>Known to ± %1 %</source>
        <translation>Connu à ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>the vessel</source>
        <translation>le bassin</translation>
    </message>
    <message>
        <source>its volume</source>
        <translation>son volume</translation>
    </message>
    <message>
        <source>what sanitizes it</source>
        <translation>avec quoi il est désinfecté</translation>
    </message>
    <message>
        <source>pool or spa</source>
        <translation>piscine ou spa</translation>
    </message>
    <message>
        <source>Not said yet: %1.</source>
        <translation>Pas encore dit&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>brimline::TwinsForm</name>
    <message>
        <source>One person: keep the first card</source>
        <translation>Une personne&#xa0;: garder la première fiche</translation>
    </message>
    <message>
        <source>One person: keep the second card</source>
        <translation>Une personne&#xa0;: garder la seconde fiche</translation>
    </message>
    <message>
        <source>Two people</source>
        <translation>Deux personnes</translation>
    </message>
    <message>
        <source>Take the last join apart</source>
        <translation>Séparer la dernière réunion</translation>
    </message>
    <message>
        <source>What the first pair of the list is</source>
        <translation>Ce qu’est la première paire de la liste</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>No two cards look alike.</source>
        <translation>Aucune fiche ne ressemble à une autre.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Look through the cards</source>
        <translation>Parcourir les fiches</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Séparer</translation>
    </message>
    <message>
        <source>Join the cards</source>
        <translation>Réunir les fiches</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Pas fait&#xa0;:&#x202f;%1</translation>
    </message>
    <message>
        <source>Taken apart: both cards are as they were.</source>
        <translation>Séparées&#xa0;: les deux fiches sont comme avant.</translation>
    </message>
    <message>
        <source>Two people: %1 is not offered again.</source>
        <translation>Deux personnes&#xa0;:&#x202f;%1 n’est plus proposé.</translation>
    </message>
    <message>
        <source>Joined: %1.</source>
        <translation>Réunies&#xa0;:&#x202f;%1.</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Recherche ...</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Les dossiers ne peuvent pas être lus maintenant.</translation>
    </message>
</context>
<context>
    <name>brimline::VolumeForm</name>
    <message>
        <source>Rectangle</source>
        <translation>Rectangle</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rond</translation>
    </message>
    <message>
        <source>Oval</source>
        <translation>Ovale</translation>
    </message>
    <message>
        <source>Rounded ends</source>
        <translation>Bouts arrondis</translation>
    </message>
    <message>
        <source>Kidney</source>
        <translation>Haricot</translation>
    </message>
    <message>
        <source>Other, by area</source>
        <translation>Autre, par l’aire</translation>
    </message>
    <message>
        <source>Water meter</source>
        <translation>Compteur d’eau</translation>
    </message>
    <message>
        <source>One depth</source>
        <translation>Une seule profondeur</translation>
    </message>
    <message>
        <source>Sloping</source>
        <translation>En pente</translation>
    </message>
    <message>
        <source>A shallow and a deep part</source>
        <translation>Une partie basse, une profonde</translation>
    </message>
    <message>
        <source>With a tape</source>
        <translation>Au mètre</translation>
    </message>
    <message>
        <source>By eye, or from memory</source>
        <translation>À l’œil ou de mémoire</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>gallons US</translation>
    </message>
    <message>
        <source>Cubic feet</source>
        <translation>Pieds cubes</translation>
    </message>
    <message>
        <source>%1, the ± being one standard deviation.</source>
        <translation>%1&#x202f;; le ± est un écart-type.</translation>
    </message>
    <message>
        <source>By meter, ± %1 %</source>
        <translation>Au compteur, ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>By its shape, ± %1 %</source>
        <translation>Par sa forme, ± %1&#xa0;%</translation>
    </message>
    <message>
        <source>This could not be kept: %1</source>
        <translation>Impossible d’enregistrer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Taken: %1. Before, it was %2.</source>
        <translation>Pris&#xa0;: %1. Avant, c’était %2.</translation>
    </message>
    <message>
        <source>Taken: %1.</source>
        <translation>Pris&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>brimline::WeekForm</name>
    <message>
        <source>This week</source>
        <translation>Cette semaine</translation>
    </message>
    <message>
        <source>Last week</source>
        <translation>La semaine dernière</translation>
    </message>
    <message>
        <source>%1 weeks ago</source>
        <translation>Il y a %1 semaines</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Laquelle</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Sous forme de</translation>
    </message>
    <message>
        <source>A sheet, printed</source>
        <translation>Une fiche, imprimée</translation>
    </message>
    <message>
        <source>A sheet, as a file</source>
        <translation>Une fiche, en fichier</translation>
    </message>
    <message>
        <source>A table (CSV)</source>
        <translation>Un tableau (CSV)</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Les dossiers ne peuvent pas être lus en ce moment.</translation>
    </message>
    <message>
        <source>Print it</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>Making the sheet ...</source>
        <translation>La fiche se prépare ...</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 ne peut pas être écrit.</translation>
    </message>
    <message>
        <source>Written to %1. No names stand in it.</source>
        <translation>Écrit dans %1. Aucun nom n’y figure.</translation>
    </message>
    <message>
        <source>Counting ...</source>
        <translation>Décompte ...</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Not counted</source>
        <translation>Pas encore comptée</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>La compter</translation>
    </message>
</context>
<context>
    <name>brimline::YearChart</name>
    <message>
        <source>%1 readings in the year, from %2 to %3.</source>
        <translation>%1 mesures dans l’année, de %2 à %3.</translation>
    </message>
    <message>
        <source>It has no target.</source>
        <translation>Elle n’a pas de cible.</translation>
    </message>
    <message>
        <source>Target %1: %2 outside it.</source>
        <translation>Cible %1 : %2 en dehors.</translation>
    </message>
    <message>
        <source>No doses were told.</source>
        <translation>Aucune dose n’a été indiquée.</translation>
    </message>
    <message>
        <source>Doses told: %1, of which %2 move it.</source>
        <translation>Doses indiquées : %1, dont %2 la font bouger.</translation>
    </message>
    <message>
        <source>%1: more than %2.</source>
        <translation>%1 : plus de %2.</translation>
    </message>
    <message>
        <source>%1: less than %2.</source>
        <translation>%1 : moins de %2.</translation>
    </message>
    <message>
        <source>%1: %2, outside.</source>
        <translation>%1 : %2, en dehors.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>one beyond 2 sd, a warning (1-2s)</source>
        <translation>une au-delà de 2 é.-t., un avertissement (1-2s)</translation>
    </message>
    <message>
        <source>one beyond 3 sd (1-3s)</source>
        <translation>une au-delà de 3 é.-t. (1-3s)</translation>
    </message>
    <message>
        <source>two in a row beyond the same 2 sd (2-2s)</source>
        <translation>deux de suite au-delà des mêmes 2 é.-t. (2-2s)</translation>
    </message>
    <message>
        <source>one beyond +2 sd and one beyond −2 sd together (R-4s)</source>
        <translation>une au-delà de +2 é.-t. et une au-delà de −2 é.-t. ensemble (R-4s)</translation>
    </message>
    <message>
        <source>four in a row beyond the same 1 sd (4-1s)</source>
        <translation>quatre de suite au-delà du même 1 é.-t. (4-1s)</translation>
    </message>
    <message>
        <source>ten in a row on one side of the mean (10x)</source>
        <translation>dix de suite d’un côté de la moyenne (10x)</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>to be checked</source>
        <translation>à contrôler</translation>
    </message>
    <message>
        <source>right</source>
        <translation>juste</translation>
    </message>
    <message>
        <source>Stopped: %1. Its readings do not count until somebody has found the cause and clears it here, by name.</source>
        <translation>Arrêté : %1. Ses lectures ne comptent pas tant que quelqu’un n’a pas trouvé la cause et ne le lève ici, sous son nom.</translation>
    </message>
    <message>
        <source>Not measured yet: measure every standard once.</source>
        <translation>Pas encore mesuré : mesurez chaque étalon une fois.</translation>
    </message>
    <message>
        <source>The last one is a warning: measure it once more. </source>
        <translation>La dernière est un avertissement : mesurez encore une fois. </translation>
    </message>
    <message>
        <source>Last measured %1: it is due.</source>
        <translation>Dernière mesure %1 : elle est à refaire.</translation>
    </message>
    <message>
        <source>Last measured %1; next by %2.</source>
        <translation>Dernière mesure %1 ; la prochaine avant %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3 sd</source>
        <translation>%1 : %2, %3 é.-t.</translation>
    </message>
</context>
<context>
    <name>check</name>
    <message>
        <source>With this much chlorine or bromine the pH dye is bleached or turns purple and reads high. Read pH with a probe, or add one drop of thiosulfate to the vial first, no more.</source>
        <translation>Avec autant de chlore ou de brome, le colorant du pH se décolore ou vire au violet et lit trop haut. Mesurez le pH avec une sonde, ou mettez d’abord une goutte de thiosulfate dans le tube, pas plus.</translation>
    </message>
    <message>
        <source>With this much chlorine or bromine the alkalinity indicator is bleached or changes at the wrong point. Add one drop of thiosulfate to the vial first, no more, and read again.</source>
        <translation>Avec autant de chlore ou de brome, l’indicateur d’alcalinité se décolore ou vire au mauvais point. Mettez d’abord une goutte de thiosulfate dans le tube, pas plus, et refaites la mesure.</translation>
    </message>
    <message>
        <source>At pH %1 the stabilizer and borate read would alone take %2 of alkalinity, and only %3 was found. One of the readings is wrong: repeat them.</source>
        <translation>À pH %1, le stabilisant et le borate mesurés feraient à eux seuls %2 d’alcalinité, et on n’a trouvé que %3. Une des mesures est fausse&#xa0;: refaites-les.</translation>
    </message>
    <message>
        <source>At pH %1 there can be no alkalinity, yet %2 was found. Repeat both.</source>
        <translation>À pH %1 il ne peut pas y avoir d’alcalinité, pourtant on a trouvé %2. Refaites les deux.</translation>
    </message>
    <message>
        <source>At an alkalinity of %1 the dye itself moves the pH of the vial. Take the pH as a hint, and read it again once the alkalinity is up.</source>
        <translation>À une alcalinité de %1, le colorant déplace lui-même le pH du tube. Prenez ce pH comme un indice et refaites-le une fois l’alcalinité remontée.</translation>
    </message>
    <message>
        <source>pH was not read: no acid, soda or chlorine dose can be judged without it.</source>
        <translation>Le pH n’a pas été mesuré&#xa0;: aucune dose d’acide, de carbonate ou de chlore ne peut être jugée sans lui.</translation>
    </message>
    <message>
        <source>Free chlorine (%1) cannot be above total chlorine (%2). Were the vials exchanged, or the second reagent forgotten? Rinse both vials and read both again.</source>
        <translation>Le chlore libre (%1) ne peut pas dépasser le chlore total (%2). Tubes échangés, ou second réactif oublié&#x202f;? Rincez les deux tubes et refaites les deux mesures.</translation>
    </message>
    <message>
        <source>The combined chlorine (%1 mg/L) is within the error of the two readings: it counts as none.</source>
        <translation>Le chlore combiné (%1 mg/L) est dans l’erreur des deux mesures&#xa0;: il compte pour nul.</translation>
    </message>
    <message>
        <source>chlorine was added in the last two days</source>
        <translation>du chlore a été ajouté ces deux derniers jours</translation>
    </message>
    <message>
        <source>chlorine tablets are in use</source>
        <translation>des galets de chlore sont en place</translation>
    </message>
    <message>
        <source>the total reading shows a good deal of chlorine</source>
        <translation>la mesure du total montre beaucoup de chlore</translation>
    </message>
    <message>
        <source>the pH dye is at its purple end, as much chlorine turns it</source>
        <translation>le colorant du pH est à son extrémité violette, comme sous beaucoup de chlore</translation>
    </message>
    <message>
        <source>Hardly any chlorine shows, yet %1. Above about %2 mg/L the colour is bleached and looks like none. Mix 1 part of sample with 4 parts of chlorine-free (deionised) water, read again and multiply by 5, before any chlorine is dosed. Do not smell the bottle to find out.</source>
        <translation>Presque pas de chlore visible, et pourtant %1. Au-dessus d’environ %2 mg/L la couleur se décolore et semble nulle. Mélangez 1 part d’échantillon à 4 parts d’eau sans chlore (déminéralisée), refaites la mesure et multipliez par 5 avant tout dosage de chlore. Ne sentez pas le flacon pour le savoir.</translation>
    </message>
    <message>
        <source>%1 is beyond %2 mg/L, where the colour test is made for undiluted water: it may read low. Mix 1+1 with chlorine-free water and multiply by 2 if a dose depends on it.</source>
        <translation>%1 dépasse %2 mg/L, la limite du test coloré sans dilution&#xa0;: il peut lire trop bas. Mélangez 1+1 avec de l’eau sans chlore et multipliez par 2 si une dose en dépend.</translation>
    </message>
    <message>
        <source>Non-chlorine shock (monopersulfate) went in during the last two days and reads as combined chlorine: %1 mg/L here may be that. Read total chlorine again in two days, or with the reagent that masks monopersulfate; do not shock on this number.</source>
        <translation>Un choc sans chlore (monopersulfate) a été ajouté ces deux derniers jours et se lit comme du chlore combiné&#xa0;: %1 mg/L peuvent venir de là. Refaites le chlore total dans deux jours, ou avec le réactif qui masque le monopersulfate&#x202f;; ne faites pas de choc sur cette valeur.</translation>
    </message>
    <message>
        <source>Manganese (%1), once oxidised, reads as up to %2 mg/L of chlorine. Read a second vial in which the chlorine is destroyed first (arsenite or thioacetamide, as the method says) and take it off.</source>
        <translation>Le manganèse (%1), une fois oxydé, se lit comme jusqu’à %2 mg/L de chlore. Mesurez un second tube où le chlore est d’abord détruit (arsénite ou thioacétamide, selon la méthode) et déduisez-le.</translation>
    </message>
    <message>
        <source>Copper at %1 is more than the reagent can mask (about 10 mg/L): the chlorine reading may be false. Dilute 1+4 with deionised water and read again.</source>
        <translation>Cuivre à %1&#xa0;: plus que le réactif ne peut masquer (environ 10 mg/L)&#x202f;; la mesure du chlore peut être fausse. Diluez 1+4 à l’eau déminéralisée et refaites la mesure.</translation>
    </message>
    <message>
        <source>There is or was bromide in this water. Chlorine turns it into bromine, which reads as chlorine and which stabilizer does not protect: treat the vessel as a bromine one until the water is changed.</source>
        <translation>Il y a ou il y a eu du bromure dans cette eau. Le chlore le change en brome, qui se lit comme du chlore et que le stabilisant ne protège pas&#xa0;: traitez le bassin comme un bassin au brome jusqu’au changement d’eau.</translation>
    </message>
    <message>
        <source>Peroxide (%1) and free chlorine (%2) destroy each other and cannot both be there. Peroxide colours the chlorine test: ask what went in, and read both again.</source>
        <translation>Le peroxyde (%1) et le chlore libre (%2) se détruisent l’un l’autre et ne peuvent pas coexister. Le peroxyde colore le test de chlore&#xa0;: demandez ce qui a été ajouté, et refaites les deux.</translation>
    </message>
    <message>
        <source>A chlorine neutraliser went in during the last week: what is left of it eats the next chlorine first, and may spoil the colour. The missing chlorine need not mean a demand.</source>
        <translation>Un neutralisant de chlore a été ajouté cette semaine&#xa0;: ce qu’il en reste mange d’abord le chlore suivant et peut fausser la couleur. Le chlore manquant n’indique pas forcément une demande.</translation>
    </message>
    <message>
        <source>Chlorine is used up: the overnight demand test says how much this water takes before any is left.</source>
        <translation>Le chlore est épuisé&#xa0;: le test de demande sur une nuit dit combien cette eau consomme avant qu’il n’en reste.</translation>
    </message>
    <message>
        <source>Combined chlorine stays from visit to visit: the overnight demand test says how much this water takes to be rid of it.</source>
        <translation>Du chlore combiné reste de visite en visite&#xa0;: le test de demande sur une nuit dit combien il faut pour l’éliminer.</translation>
    </message>
    <message>
        <source>Green water with %1 of free chlorine is more likely metal than algae: read copper and iron.</source>
        <translation>Eau verte avec %1 de chlore libre&#xa0;: plutôt un métal que des algues&#x202f;; mesurez cuivre et fer.</translation>
    </message>
    <message>
        <source>%1 readings (%2) equal last time&apos;s to the digit. Two waters hardly ever do: were last visit&apos;s numbers shown or copied? Read them again from this bottle.</source>
        <translation>%1 mesures (%2) égalent celles de la dernière fois au chiffre près. Deux eaux ne le font presque jamais&#xa0;: a-t-on affiché ou recopié les valeurs d’avant&#x202f;? Refaites-les sur ce flacon.</translation>
    </message>
    <message>
        <source>Equal to last time&apos;s to the digit: %1. It may be chance; was it read from this bottle?</source>
        <translation>Égal à la dernière fois au chiffre près&#xa0;: %1. Ce peut être un hasard&#x202f;; est-ce bien mesuré sur ce flacon&#x202f;?</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3 since the last reading, further than water moves by itself and than the doses told explain. Read it again; if it stands, ask what was added or changed.</source>
        <translation>%1&#xa0;: de %2 à %3 depuis la dernière mesure, plus que l’eau ne bouge d’elle-même et que n’expliquent les doses conseillées. Refaites la mesure&#x202f;; si elle tient, demandez ce qui a été ajouté ou changé.</translation>
    </message>
    <message>
        <source>%1 fell by %2 % while the rest of the salts stayed, so the water was not changed. Read it again. Stabilizer alone can be turned to ammonia by bacteria: then expect a large chlorine demand.</source>
        <translation>%1 a baissé de %2&#xa0;% alors que les autres sels sont restés&#xa0;: l’eau n’a donc pas été changée. Refaites la mesure. Seul le stabilisant peut être changé en ammoniac par des bactéries&#xa0;: attendez-vous alors à une forte demande en chlore.</translation>
    </message>
    <message>
        <source>By the times noted this bottle was filled before the visit called earlier. Check both dates.</source>
        <translation>D’après les heures notées, ce flacon a été rempli avant la visite dite précédente. Vérifiez les deux dates.</translation>
    </message>
    <message>
        <source>Calcium hardness (%1) is a part of total hardness (%2) and cannot be above it. Repeat both.</source>
        <translation>La dureté calcique (%1) fait partie de la dureté totale (%2) et ne peut pas la dépasser. Refaites les deux.</translation>
    </message>
    <message>
        <source>Calcium and magnesium hardness together (%1) should make the total hardness (%2). Repeat the three.</source>
        <translation>Les duretés calcique et magnésienne ensemble (%1) devraient faire la dureté totale (%2). Refaites les trois.</translation>
    </message>
    <message>
        <source>Copper and iron hold back the colour change of the hardness titration and make it fade. Put the titrant in first, or take the first lasting change.</source>
        <translation>Le cuivre et le fer retiennent le virage du titrage de dureté et l’estompent. Mettez d’abord le titrant, ou prenez le premier virage durable.</translation>
    </message>
    <message>
        <source>Salt (%1) is a part of the dissolved solids (%2) and cannot be above them. Rinse the probe, check it in its standard and repeat both.</source>
        <translation>Le sel (%1) fait partie des solides dissous (%2) et ne peut pas les dépasser. Rincez la sonde, vérifiez-la dans son étalon et refaites les deux.</translation>
    </message>
    <message>
        <source>The salts read make at least %1 of dissolved solids, and the probe shows %2. Check the probe in its standard and repeat.</source>
        <translation>Les sels mesurés font au moins %1 de solides dissous, et la sonde montre %2. Vérifiez la sonde dans son étalon et refaites la mesure.</translation>
    </message>
    <message>
        <source>Dissolved solids (%1) are %2 times the conductivity (%3); 0.5 to 0.8 is usual. One of them is wrong, or its unit: repeat both.</source>
        <translation>Les solides dissous (%1) valent %2 fois la conductivité (%3)&#x202f;; l’usuel est de 0,5 à 0,8. L’un des deux est faux, ou son unité&#xa0;: refaites les deux.</translation>
    </message>
    <message>
        <source>A salt cell makes the chlorine here and salt was not read: read it.</source>
        <translation>Ici un électrolyseur produit le chlore et le sel n’a pas été mesuré&#xa0;: mesurez-le.</translation>
    </message>
    <message>
        <source>%1 of salt is little for most cells. Before salt is added, compare with the cell&apos;s own display and manual: a strip and a conductivity probe may differ by several hundred.</source>
        <translation>%1 de sel est peu pour la plupart des cellules. Avant d’ajouter du sel, comparez avec l’affichage et la notice de la cellule&#xa0;: une bandelette et une sonde de conductivité peuvent différer de plusieurs centaines.</translation>
    </message>
    <message>
        <source>A sequestrant is in the water: it hides part of the metal from the test. The true number may be higher.</source>
        <translation>Un séquestrant est dans l’eau&#xa0;: il cache une partie du métal au test. La vraie valeur peut être plus haute.</translation>
    </message>
    <message>
        <source>No metal in the water does not clear the surface: a stain is metal that has left the water. A vitamin C tablet held on it lightens an iron stain.</source>
        <translation>L’absence de métal dans l’eau ne disculpe pas la surface&#xa0;: une tache est du métal qui a quitté l’eau. Un comprimé de vitamine C posé dessus éclaircit une tache de fer.</translation>
    </message>
    <message>
        <source>Many sequestrants break down to phosphate. A phosphate remover would take the sequestrant out again.</source>
        <translation>Bien des séquestrants se dégradent en phosphate. Un anti-phosphates retirerait aussi le séquestrant.</translation>
    </message>
    <message>
        <source>%1 is far more than pool water holds. Some tests say micrograms per litre (ppb): then it is %2 mg/L.</source>
        <translation>%1&#xa0;: bien plus que n’en contient une eau de piscine. Certains tests disent des microgrammes par litre (ppb)&#xa0;: c’est alors %2 mg/L.</translation>
    </message>
    <message>
        <source>%1 is more than any pool is given. If the test says boric acid, the boron is %2 mg/L (divide by 5.72).</source>
        <translation>%1&#xa0;: plus qu’on n’en met dans aucune piscine. Si le test dit acide borique, le bore est de %2 mg/L (divisez par 5,72).</translation>
    </message>
    <message>
        <source>Free chlorine of %1 spoils the nitrate test unless it is destroyed first with one drop of thiosulfate.</source>
        <translation>Un chlore libre de %1 fausse le test de nitrate s’il n’est pas d’abord détruit par une goutte de thiosulfate.</translation>
    </message>
    <message>
        <source>The %1 reading of %2 is at or past the end of the range of the %3. Mix 1 part of sample with %4 parts of chlorine-free (deionised) water, read that, and multiply by %5: a reading of 2 then means %6. Dose nothing on this number.</source>
        <translation>Mesure de %1 (%2) en bout d’échelle de la méthode (%3), ou au-delà. Diluez l’échantillon 1+%4 à l’eau sans chlore (déminéralisée), mesurez et multipliez par %5&#xa0;: une lecture de 2 veut alors dire %6. Ne dosez rien d’après cette valeur.</translation>
    </message>
    <message>
        <source>The diluted sample is below the range of the %1 for %2: read it undiluted.</source>
        <translation>L’échantillon dilué est sous la plage de la méthode (%1) pour&#xa0;: %2. Mesurez-le sans dilution.</translation>
    </message>
    <message>
        <source>There is less %2 than the %1 can show: below %3. It counts as at most that.</source>
        <translation>Moins que la méthode (%1) ne peut montrer pour&#xa0;: %2, en dessous de %3. Compte pour cela au plus.</translation>
    </message>
    <message>
        <source>Diluted %1 times, the %2 reading is lost in the error of the %3 (%4). Dilute less and read again if a dose depends on it.</source>
        <translation>Diluée %1 fois, la mesure de %2 se perd dans l’erreur de la méthode (%3)&#xa0;: %4. Diluez moins et refaites-la si une dose en dépend.</translation>
    </message>
    <message>
        <source>pH was read in a diluted sample. Dilution changes pH and no factor brings it back: read it undiluted.</source>
        <translation>Le pH a été mesuré sur un échantillon dilué. La dilution change le pH et aucun facteur ne le rend&#xa0;: mesurez-le sans diluer.</translation>
    </message>
    <message>
        <source>pH %1 is at the upper end of what the %2 can show: the true pH may be higher. Read it with a probe checked in two buffers; never dilute for pH.</source>
        <translation>Le pH %1 est au bout supérieur de ce que la méthode (%2) peut montrer&#xa0;: le vrai pH peut être plus haut. Mesurez-le avec une sonde vérifiée dans deux tampons&#x202f;; ne diluez jamais pour le pH.</translation>
    </message>
    <message>
        <source>pH %1 is at the lower end of what the %2 can show: the true pH may be lower. Read it with a probe checked in two buffers; never dilute for pH.</source>
        <translation>Le pH %1 est au bout inférieur de ce que la méthode (%2) peut montrer&#xa0;: le vrai pH peut être plus bas. Mesurez-le avec une sonde vérifiée dans deux tampons&#x202f;; ne diluez jamais pour le pH.</translation>
    </message>
    <message>
        <source>pH %1 is hardly ever seen in a filled pool or spa. Rinse the vial, take fresh sample from the bottle and read again, with a probe if there is one, before anything is dosed.</source>
        <translation>Un pH de %1 ne se voit presque jamais dans un bassin rempli. Rincez le tube, reprenez de l’échantillon dans le flacon et refaites la mesure, à la sonde si possible, avant tout dosage.</translation>
    </message>
    <message>
        <source>%1 of %2 is outside what is believable (%3 to %4). Look at the unit and the dilution factor, then measure a second time.</source>
        <translation>%1 à %2&#xa0;: hors du crédible (%3 à %4). Vérifiez l’unité et le facteur de dilution, puis mesurez une seconde fois.</translation>
    </message>
    <message>
        <source>No %1 is known for %2; the widest error of its methods is assumed. Was the method typed wrongly?</source>
        <translation>Méthode (%1) inconnue pour&#xa0;: %2. La plus grande erreur de ses méthodes est supposée. Méthode mal saisie&#x202f;?</translation>
    </message>
    <message>
        <source>The %1 readings of %2 (%3) lie further apart than the method&apos;s own error. Read it once more; the mean of those that agree is used.</source>
        <translation>Les %1 mesures de %2 (%3) s’écartent plus que l’erreur propre à la méthode. Refaites-en une&#x202f;; la moyenne de celles qui s’accordent est retenue.</translation>
    </message>
    <message>
        <source>One %1 reading (%2) lies outside the others and is left out of the mean of %3 (test of Grubbs, ISO 5725-2).</source>
        <translation>Une mesure de %1 (%2) sort du lot et est exclue de la moyenne de %3 (test de Grubbs, ISO 5725-2).</translation>
    </message>
    <message>
        <source>Two methods disagree on %1: the %2 says %3, the %4 says %5, further apart than their errors explain. Read both again; until then neither is to be dosed on.</source>
        <translation>Deux méthodes diffèrent (%1)&#xa0;: %2 dit %3, %4 dit %5, plus que leurs erreurs n’expliquent. Refaites les deux&#x202f;; d’ici là, ne dosez d’après aucune.</translation>
    </message>
    <message>
        <source>The undiluted %1 reading of %2 was bleached: the diluted sample shows %3, and that is used.</source>
        <translation>La mesure non diluée de %1 (%2) était décolorée&#xa0;: l’échantillon dilué montre %3, et c’est ce qui est retenu.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read. What it says of %2 is a hint only: have the customer test that at home or bring water less than 2 hours old.</source>
        <translation>Le flacon avait %1 h à la mesure. Ce qu’il dit (%2) n’est qu’un indice&#xa0;: que le client le mesure chez lui, ou apporte une eau de moins de 2 heures.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read: too old for %2. Use it for alkalinity, hardness, stabilizer, salt and metals only, and ask for water less than 2 hours old for the rest.</source>
        <translation>Le flacon avait %1 h à la mesure&#xa0;: trop vieux pour %2. Ne l’utilisez que pour alcalinité, dureté, stabilisant, sel et métaux, et demandez une eau de moins de 2 heures pour le reste.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read. After a day nothing in it can be trusted: ask for a new sample, filled and capped under water, elbow deep, away from the inlets.</source>
        <translation>Le flacon avait %1 h à la mesure. Passé un jour, rien n’y est fiable&#xa0;: demandez un nouvel échantillon, rempli et bouché sous l’eau, à un bras de profondeur, loin des refoulements.</translation>
    </message>
    <message>
        <source>Nobody noted when the bottle was %1. Ask: after 2 hours sanitizer and pH are a hint only, after 6 they count for nothing.</source>
        <translation>Personne n’a noté quand le flacon a été %1. Demandez&#xa0;: après 2 heures, désinfectant et pH ne sont qu’un indice&#x202f;; après 6 heures, ils ne comptent plus.</translation>
    </message>
    <message>
        <source>By the times noted the bottle was read before it was filled. One clock is wrong, or the day was mistyped: ask how old the water is.</source>
        <translation>D’après les heures notées, le flacon a été mesuré avant d’être rempli. Une horloge est fausse, ou le jour mal saisi&#xa0;: demandez l’âge de l’eau.</translation>
    </message>
    <message>
        <source>The bottle&apos;s time (%1) lies ahead of this counter&apos;s clock (%2). Set the clock or correct the time, or the visits will come out of order.</source>
        <translation>L’heure du flacon (%1) est en avance sur l’horloge de ce comptoir (%2). Réglez l’horloge ou corrigez l’heure, sinon les visites seront en désordre.</translation>
    </message>
    <message>
        <source>The sample was read at %1 C. Below 15 C colours form slowly and stabilizer reads wrong: stand the closed bottle in warm water until it is at 20 to 25 C and read %2 again.</source>
        <translation>L’échantillon a été mesuré à %1&#xa0;°C. Sous 15 °C les couleurs se forment lentement et le stabilisant se lit mal&#xa0;: mettez le flacon fermé dans l’eau tiède jusqu’à 20 à 25 °C et refaites&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The sample was read at %1 C. Above 30 C chlorine is lost and combined chlorine breaks into the free reading: cool the closed bottle to 20 to 25 C and read %2 again.</source>
        <translation>L’échantillon a été mesuré à %1&#xa0;°C. Au-dessus de 30 °C du chlore se perd et le combiné passe dans la mesure du libre&#xa0;: refroidissez le flacon fermé à 20 à 25 °C et refaites&#xa0;: %2.</translation>
    </message>
    <message>
        <source>A dose went in %1 hours before the bottle was filled; the pump needs %2 hours to mix it. Ask for a new sample after that: %3 of this one may be anything.</source>
        <translation>Une dose a été mise %1 h avant le remplissage du flacon&#x202f;; la pompe demande %2 h pour la mélanger. Demandez ensuite un nouvel échantillon&#xa0;: dans celui-ci, ceci ne vaut rien&#xa0;: %3.</translation>
    </message>
    <message>
        <source>After a storm rain lies on top of the pool. If the pump has not run since for a whole turnover, the bottle shows the rain and not the pool: ask.</source>
        <translation>Après un orage la pluie reste en surface. Si la pompe n’a pas fait depuis un cycle complet, le flacon montre la pluie et non la piscine&#xa0;: demandez.</translation>
    </message>
    <message>
        <source>At an opening the water has stood in layers. Ask whether the pump has run for a whole turnover; if not, have a new bottle filled after it has.</source>
        <translation>À une remise en route, l’eau a reposé en couches. Demandez si la pompe a fait un cycle complet&#x202f;; sinon, faites remplir un nouveau flacon après.</translation>
    </message>
    <message>
        <source>In a bromine vessel the chlorine test reads bromine: %1 counts as %2 of total bromine (times 2.254).</source>
        <translation>Dans un bassin au brome, le test de chlore lit le brome&#xa0;: %1 compte pour %2 de brome total (fois 2,254).</translation>
    </message>
    <message>
        <source>Total bromine (%1) and the chlorine reading times 2.254 (%2) are the same thing here and should agree. Read both again.</source>
        <translation>Le brome total (%1) et la mesure de chlore fois 2,254 (%2) sont ici la même chose et devraient s’accorder. Refaites les deux.</translation>
    </message>
    <message>
        <source>Stabilizer (%1) does nothing for bromine. It is a left-over of chlorine days or of a wrong product; it counts in the alkalinity only.</source>
        <translation>Le stabilisant (%1) ne fait rien pour le brome. C’est un reste du temps du chlore ou d’un mauvais produit&#x202f;; il ne compte que dans l’alcalinité.</translation>
    </message>
    <message>
        <source>Biguanide clouds the stabilizer test by itself: the reading means nothing in this vessel.</source>
        <translation>Le biguanide trouble à lui seul le test du stabilisant&#xa0;: la mesure ne veut rien dire dans ce bassin.</translation>
    </message>
    <message>
        <source>Chlorine or bromine and biguanide spoil each other&apos;s tests and each other. Ask what the vessel is kept with before anything is dosed; add no chlorine.</source>
        <translation>Chlore ou brome et biguanide faussent les tests l’un de l’autre et se détruisent. Demandez avec quoi le bassin est désinfecté avant tout dosage&#x202f;; n’ajoutez pas de chlore.</translation>
    </message>
    <message>
        <source>This vessel was kept with biguanide. What is left of it spoils the chlorine test and turns to slime with chlorine: read biguanide before any chlorine is dosed.</source>
        <translation>Ce bassin était au biguanide. Ce qu’il en reste fausse le test de chlore et devient visqueux avec le chlore&#xa0;: mesurez le biguanide avant tout dosage de chlore.</translation>
    </message>
    <message>
        <source>Peroxide went into a chlorine vessel: each destroys the other. Read chlorine again when no peroxide is left.</source>
        <translation>Du peroxyde a été mis dans un bassin au chlore&#xa0;: chacun détruit l’autre. Refaites le chlore quand il ne reste plus de peroxyde.</translation>
    </message>
    <message>
        <source>Stabilizer is beyond the end of the %1 (%2). Mix 1 part of sample with %3 of deionised water, read that and multiply by %4: a reading of 70 then means %5 mg/L.</source>
        <translation>Le stabilisant dépasse le bout d’échelle de la méthode (%1)&#xa0;: %2. Mélangez 1 part d’échantillon à %3 d’eau déminéralisée, mesurez et multipliez par %4&#xa0;: une lecture de 70 veut alors dire %5 mg/L.</translation>
    </message>
    <message>
        <source>Below %1 the %2 cannot tell how much stabilizer there is: %3 counts as &quot;little or none&quot;.</source>
        <translation>En dessous de %1, la méthode (%2) ne dit pas combien il y a de stabilisant&#xa0;: %3 compte pour «&#xa0;peu ou pas&#xa0;».</translation>
    </message>
    <message>
        <source>At %1 C the stabilizer cloud reads somewhat high; at 20 to 25 C it is right.</source>
        <translation>À %1&#xa0;°C le trouble du stabilisant se lit un peu haut&#x202f;; de 20 à 25 °C il est juste.</translation>
    </message>
    <message>
        <source>At %1 C the stabilizer cloud reads somewhat low; at 20 to 25 C it is right.</source>
        <translation>À %1&#xa0;°C le trouble du stabilisant se lit un peu bas&#x202f;; de 20 à 25 °C il est juste.</translation>
    </message>
    <message>
        <source>The sample is itself cloudy (%1) and the stabilizer test counts cloud. Filter the sample until it is clear and read again.</source>
        <translation>L’échantillon est lui-même trouble (%1) et le test du stabilisant compte le trouble. Filtrez-le jusqu’à ce qu’il soit clair et refaites la mesure.</translation>
    </message>
    <message>
        <source>The water is cloudy and the stabilizer test counts cloud: filter the sample clear before reading it.</source>
        <translation>L’eau est trouble et le test du stabilisant compte le trouble&#xa0;: filtrez l’échantillon avant de le mesurer.</translation>
    </message>
    <message>
        <source>There is no sun indoors to protect chlorine from: %1 of stabilizer only slows it. Ask for dichlor or tablets in use.</source>
        <translation>En intérieur, pas de soleil dont protéger le chlore&#xa0;: %1 de stabilisant ne fait que le freiner. Demandez si l’on emploie dichlore ou galets.</translation>
    </message>
    <message>
        <source>Tablets are in use: each 10 mg/L of chlorine from trichlor brings 6 mg/L of stabilizer and takes 7 mg/L of alkalinity. Read stabilizer every month.</source>
        <translation>Des galets sont en place&#xa0;: 10 mg/L de chlore de trichlore apportent 6 mg/L de stabilisant et ôtent 7 mg/L d’alcalinité. Mesurez le stabilisant chaque mois.</translation>
    </message>
    <message>
        <source>Reagent lot %1 has expired: read %2 again with a fresh one.</source>
        <translation>Le lot de réactif %1 est périmé&#xa0;: refaites %2 avec un lot frais.</translation>
    </message>
    <message>
        <source>Reagent lot %1 was opened %2 days ago, last season: read %3 again with a fresh one.</source>
        <translation>Le lot de réactif %1 a été ouvert il y a %2 jours, la saison passée&#xa0;: refaites %3 avec un lot frais.</translation>
    </message>
    <message>
        <source>Reagent lot %1 was kept at %2 C and may be spoilt: read %3 again with one kept cool.</source>
        <translation>Le lot de réactif %1 a été gardé à %2&#xa0;°C et peut être abîmé&#xa0;: refaites %3 avec un lot gardé au frais.</translation>
    </message>
    <message>
        <source>Reagent lot %1 stood beside chlorine, whose vapour spoils it: read %2 again with one kept apart.</source>
        <translation>Le lot de réactif %1 était à côté de chlore, dont la vapeur l’abîme&#xa0;: refaites %2 avec un lot gardé à part.</translation>
    </message>
    <message>
        <source>The last check of %1 failed: what it says of %2 does not count. Read them on another instrument, or check this one again first.</source>
        <translation>Le dernier contrôle de %1 a échoué&#xa0;: ce qu’il dit de %2 ne compte pas. Mesurez sur un autre instrument, ou contrôlez d’abord celui-ci de nouveau.</translation>
    </message>
    <message>
        <source>%1 has not been checked against its standards for over %2 days. Check it before the next bottle; until then %3 may be off.</source>
        <translation>%1 n’a pas été contrôlé avec ses étalons depuis plus de %2 jours. Contrôlez-le avant le prochain flacon&#x202f;; d’ici là, un écart est possible sur %3.</translation>
    </message>
    <message>
        <source>This is public water (hotels, associations, schools and rentals count): print the readings and leave the treatment to the local code and its licensed operator.</source>
        <translation>C’est une eau publique (hôtels, associations, écoles et locations comptent)&#xa0;: imprimez les mesures et laissez le traitement à la réglementation locale et à son exploitant agréé.</translation>
    </message>
    <message>
        <source>Nobody noted what this vessel is kept with. Ask first: chlorine, salt cell, bromine or biguanide decides which tests mean anything.</source>
        <translation>Personne n’a noté avec quoi ce bassin est désinfecté. Demandez d’abord&#xa0;: chlore, électrolyse, brome ou biguanide décide des tests qui ont un sens.</translation>
    </message>
    <message>
        <source>The sanitizer (%1) was not read: nothing can be said on swimming.</source>
        <translation>Le désinfectant (%1) n’a pas été mesuré&#xa0;: rien ne peut être dit de la baignade.</translation>
    </message>
    <message>
        <source>%1 is due and was not read: the plan is a part of one and says nothing of it.</source>
        <translation>%1&#xa0;: à faire et non mesuré&#x202f;; le plan n’est qu’une partie et n’en dit rien.</translation>
    </message>
    <message>
        <source>The water is new: ask for a bottle of the fill water too, or what a change of water does cannot be worked out.</source>
        <translation>L’eau est neuve&#xa0;: demandez aussi un flacon de l’eau de remplissage, sinon on ne peut pas calculer ce que fait un changement d’eau.</translation>
    </message>
    <message>
        <source>The volume is not known, so no dose can be given. Length, width and mean depth will do; for a spa, the litres its maker states.</source>
        <translation>Le volume n’est pas connu, aucune dose ne peut donc être donnée. Longueur, largeur et profondeur moyenne suffisent&#x202f;; pour un spa, les litres qu’indique le fabricant.</translation>
    </message>
    <message>
        <source>An incident was told. The readings do not clear the water: keep everybody out and follow the health authority&apos;s procedure for it.</source>
        <translation>Un incident a été signalé. Les mesures n’innocentent pas l’eau&#xa0;: ne laissez entrer personne et suivez la procédure de l’autorité sanitaire.</translation>
    </message>
    <message>
        <source>Every reading is a strip&apos;s. A strip says whether to look closer; before a large dose read the photometer.</source>
        <translation>Toutes les mesures viennent d’une bandelette. Elle dit s’il faut regarder de plus près&#x202f;; avant une forte dose, mesurez au photomètre.</translation>
    </message>
    <message>
        <source>The demand bottle without a dose shows %1, more than the sample itself (%2): the bottles were exchanged, or stock got in. Repeat the chlorine reading and look at the labels.</source>
        <translation>Le flacon de demande sans dose montre %1, plus que l’échantillon lui-même (%2)&#xa0;: flacons échangés, ou de la solution mère y est entrée. Refaites la mesure du chlore et regardez les étiquettes.</translation>
    </message>
    <message>
        <source>The vessel is at %1 C; 40 C is the most for bathing (10 NYCRR 6-1). Sanitizer tests of hot water may read wrong: cool the sample.</source>
        <translation>Le bassin est à %1&#xa0;°C&#x202f;; 40 °C est le maximum pour se baigner (10 NYCRR 6-1). Les tests du désinfectant en eau chaude peuvent être faux&#xa0;: refroidissez l’échantillon.</translation>
    </message>
    <message>
        <source>The bottle was filled at the surface, where sun, rain and oils change the water. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>Le flacon a été rempli en surface, où le soleil, la pluie et les graisses changent l’eau. Il ne dit rien sur %1 ; il vaut pour %2. Demander de l’eau prise à un coude de profondeur, loin des bouches.</translation>
    </message>
    <message>
        <source>The bottle was filled at the skimmer, where tablets may lie. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from skimmer and inlets.</source>
        <translation>Le flacon a été rempli au skimmer, où il peut y avoir des galets. Il ne dit rien sur %1 ; il vaut pour %2. Demander de l’eau prise à un coude de profondeur, loin du skimmer et des bouches.</translation>
    </message>
    <message>
        <source>The bottle was filled at an inlet, fresh from feeder, cell or heater. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>Le flacon a été rempli à une bouche de refoulement, juste après le doseur, la cellule ou le réchauffeur. Il ne dit rien sur %1 ; il vaut pour %2. Demander de l’eau prise à un coude de profondeur, loin des bouches.</translation>
    </message>
    <message>
        <source>The bottle was filled out of a pipe, not out of the vessel. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>Le flacon a été rempli à un tuyau, pas dans le bassin. Il ne dit rien sur %1 ; il vaut pour %2. Demander de l’eau prise à un coude de profondeur, loin des bouches.</translation>
    </message>
</context>
<context>
    <name>choices</name>
    <message>
        <source>Pool</source>
        <translation>Piscine</translation>
    </message>
    <message>
        <source>Spa</source>
        <translation>Spa</translation>
    </message>
    <message>
        <source>Swim spa</source>
        <translation>Spa de nage</translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation>Bain froid</translation>
    </message>
    <message>
        <source>One household</source>
        <translation>Un seul foyer</translation>
    </message>
    <message>
        <source>Guests, tenants, members, pupils</source>
        <translation>Clients, locataires, membres, élèves</translation>
    </message>
    <message>
        <source>Chlorine</source>
        <translation>Chlore</translation>
    </message>
    <message>
        <source>Chlorine from salt</source>
        <translation>Électrolyse au sel</translation>
    </message>
    <message>
        <source>Bromine</source>
        <translation>Brome</translation>
    </message>
    <message>
        <source>Biguanide</source>
        <translation>Biguanide (PHMB)</translation>
    </message>
    <message>
        <source>Plaster</source>
        <translation>Enduit</translation>
    </message>
    <message>
        <source>Tile</source>
        <translation>Carrelage</translation>
    </message>
    <message>
        <source>Vinyl</source>
        <translation>Liner (vinyle)</translation>
    </message>
    <message>
        <source>Fibreglass</source>
        <translation>Polyester</translation>
    </message>
    <message>
        <source>Painted</source>
        <translation>Peinture</translation>
    </message>
    <message>
        <source>Acrylic</source>
        <translation>Acrylique</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>En extérieur</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>En intérieur</translation>
    </message>
    <message>
        <source>In the ground</source>
        <translation>Enterré</translation>
    </message>
    <message>
        <source>Above it</source>
        <translation>Hors sol</translation>
    </message>
    <message>
        <source>Metered, or the maker’s</source>
        <translation>Au compteur, ou du fabricant</translation>
    </message>
    <message>
        <source>Measured with a tape</source>
        <translation>Mesuré au mètre</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>Estimé</translation>
    </message>
    <message>
        <source>Just now</source>
        <translation>À l’instant</translation>
    </message>
    <message>
        <source>An hour ago</source>
        <translation>Il y a une heure</translation>
    </message>
    <message>
        <source>This morning</source>
        <translation>Ce matin</translation>
    </message>
    <message>
        <source>Last night</source>
        <translation>Hier soir</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Il y a deux jours</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Non connu</translation>
    </message>
    <message>
        <source>As every month</source>
        <translation>Contrôle mensuel</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Remise en route</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Hivernage</translation>
    </message>
    <message>
        <source>New fill</source>
        <translation>Eau neuve</translation>
    </message>
    <message>
        <source>After a storm</source>
        <translation>Après un orage</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Problème</translation>
    </message>
    <message>
        <source>Cloudy</source>
        <translation>Trouble</translation>
    </message>
    <message>
        <source>Green water</source>
        <translation>Eau verte</translation>
    </message>
    <message>
        <source>Stains</source>
        <translation>Taches</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Tartre</translation>
    </message>
    <message>
        <source>Sore eyes</source>
        <translation>Yeux irrités</translation>
    </message>
    <message>
        <source>Strong smell</source>
        <translation>Odeur forte</translation>
    </message>
    <message>
        <source>Green hair</source>
        <translation>Cheveux verts</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Mousse</translation>
    </message>
    <message>
        <source>Slimy walls</source>
        <translation>Parois glissantes</translation>
    </message>
    <message>
        <source>Tablets in use</source>
        <translation>Galets en place</translation>
    </message>
    <message>
        <source>Main drain cannot be seen</source>
        <translation>Bonde de fond invisible</translation>
    </message>
    <message>
        <source>Chemicals mixed or fuming</source>
        <translation>Produits mélangés ou fumants</translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation>Selles</translation>
    </message>
    <message>
        <source>Vomit</source>
        <translation>Vomi</translation>
    </message>
    <message>
        <source>Blood</source>
        <translation>Sang</translation>
    </message>
    <message>
        <source>Dead animal</source>
        <translation>Animal mort</translation>
    </message>
    <message>
        <source>Flood</source>
        <translation>Inondation</translation>
    </message>
    <message>
        <source>Sewage</source>
        <translation>Eaux usées</translation>
    </message>
    <message>
        <source>Swimmers ill</source>
        <translation>Baigneurs malades</translation>
    </message>
    <message>
        <source>Gallons, °F</source>
        <translation>Gallons, °F</translation>
    </message>
    <message>
        <source>Cubic metres, °C</source>
        <translation>Mètres cubes, °C</translation>
    </message>
    <message>
        <source>photometer</source>
        <translation>photomètre</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>bandelette</translation>
    </message>
    <message>
        <source>drop test</source>
        <translation>gouttes</translation>
    </message>
    <message>
        <source>comparator</source>
        <translation>comparateur</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>sonde</translation>
    </message>
    <message>
        <source>view tube</source>
        <translation>tube de vision</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>Dans la plage</translation>
    </message>
    <message>
        <source>Or above</source>
        <translation>Ou plus</translation>
    </message>
    <message>
        <source>Or below</source>
        <translation>Ou moins</translation>
    </message>
    <message>
        <source>Undiluted</source>
        <translation>Non dilué</translation>
    </message>
    <message>
        <source>1 + 1</source>
        <translation>1 + 1</translation>
    </message>
    <message>
        <source>1 + 4</source>
        <translation>1 + 4</translation>
    </message>
    <message>
        <source>1 + 9</source>
        <translation>1 + 9</translation>
    </message>
    <message>
        <source>In an hour</source>
        <translation>Dans une heure</translation>
    </message>
    <message>
        <source>17:30</source>
        <translation>17:30</translation>
    </message>
    <message>
        <source>20:00</source>
        <translation>20:00</translation>
    </message>
    <message>
        <source>Tomorrow 08:00</source>
        <translation>Demain 08:00</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Lettre</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rouleau</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Normale</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Santé</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Matériel</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Revêtement</translation>
    </message>
    <message>
        <source>Clear water</source>
        <translation>Eau claire</translation>
    </message>
    <message>
        <source>Comfort</source>
        <translation>Confort</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Entretien</translation>
    </message>
    <message>
        <source>The readings</source>
        <translation>Les mesures</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Utilisé par</translation>
    </message>
    <message>
        <source>Sanitized with</source>
        <translation>Désinfecté avec</translation>
    </message>
    <message>
        <source>Its surface</source>
        <translation>Revêtement</translation>
    </message>
    <message>
        <source>It stands</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Construction</translation>
    </message>
    <message>
        <source>How the volume is known</source>
        <translation>D’où vient le volume</translation>
    </message>
    <message>
        <source>Why it came</source>
        <translation>Motif de la visite</translation>
    </message>
    <message>
        <source>Signs, as many as there are</source>
        <translation>Signes, autant qu’il y en a</translation>
    </message>
    <message>
        <source>Something happened in it</source>
        <translation>Un incident dans l’eau</translation>
    </message>
    <message>
        <source>They get home</source>
        <translation>Retour à la maison</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Impression</translation>
    </message>
    <message>
        <source>Elbow deep</source>
        <translation>À un coude de profondeur</translation>
    </message>
    <message>
        <source>Off the surface</source>
        <translation>En surface</translation>
    </message>
    <message>
        <source>At the skimmer</source>
        <translation>Au skimmer</translation>
    </message>
    <message>
        <source>At an inlet</source>
        <translation>À une bouche de refoulement</translation>
    </message>
    <message>
        <source>Out of a pipe</source>
        <translation>À un tuyau</translation>
    </message>
    <message>
        <source>Where it was filled</source>
        <translation>Où il a été rempli</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Clair</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Fort contraste</translation>
    </message>
    <message>
        <source>Moves gently</source>
        <translation>Bouge doucement</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Rien ne bouge</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Names in full</source>
        <translation>Noms en entier</translation>
    </message>
    <message>
        <source>First letters only</source>
        <translation>Initiales seulement</translation>
    </message>
    <message>
        <source>2 minutes</source>
        <translation>2 minutes</translation>
    </message>
    <message>
        <source>10 minutes</source>
        <translation>10 minutes</translation>
    </message>
    <message>
        <source>An hour</source>
        <translation>Une heure</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Jamais</translation>
    </message>
    <message>
        <source>Until they are erased</source>
        <translation>Jusqu’à effacement</translation>
    </message>
    <message>
        <source>A year after the last bottle</source>
        <translation>Un an après le dernier flacon</translation>
    </message>
    <message>
        <source>Two years</source>
        <translation>Deux ans</translation>
    </message>
    <message>
        <source>Three years</source>
        <translation>Trois ans</translation>
    </message>
    <message>
        <source>All that is known, as a file</source>
        <translation>Tout ce que l’on sait, en un fichier</translation>
    </message>
    <message>
        <source>To be forgotten</source>
        <translation>Être oublié</translation>
    </message>
    <message>
        <source>Test, plan and print</source>
        <translation>Mesurer, planifier et imprimer</translation>
    </message>
    <message>
        <source>Also change what the shop is set to</source>
        <translation>Aussi changer les réglages de la boutique</translation>
    </message>
    <message>
        <source>A note for a reading and for trouble</source>
        <translation>Un son pour une mesure et pour un problème</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>Silencieux</translation>
    </message>
</context>
<context>
    <name>clock</name>
    <message>
        <source>today %1</source>
        <translation>aujourd’hui %1</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>hier %1</translation>
    </message>
    <message>
        <source>tonight %1</source>
        <translation>ce soir %1</translation>
    </message>
    <message>
        <source>tomorrow %1</source>
        <translation>demain %1</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutes</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 heure</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 heures</translation>
    </message>
    <message>
        <source>1½ hours</source>
        <translation>1 heure et demie</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>midi</translation>
    </message>
    <message>
        <source>%1&#xa0;a.m.</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1&#xa0;p.m.</source>
        <translation>%1</translation>
    </message>
</context>
<context>
    <name>compare</name>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is more than expected.</source>
        <translation>%1&#xa0;: de %2 à %3&#x202f;; on attendait environ %4. C’est plus que prévu.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is less than expected.</source>
        <translation>%1&#xa0;: de %2 à %3&#x202f;; on attendait environ %4. C’est moins que prévu.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, and what was told does not say why.</source>
        <translation>%1&#xa0;: de %2 à %3, et ce qui avait été conseillé ne dit pas pourquoi.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, as the doses told lead to expect (%4).</source>
        <translation>%1&#xa0;: de %2 à %3, comme le laissaient attendre les doses conseillées (%4).</translation>
    </message>
    <message>
        <source>The doses told explain what they should: they worked.</source>
        <translation>Les doses conseillées expliquent ce qu’elles devaient&#xa0;: elles ont agi.</translation>
    </message>
    <message>
        <source>What only new water brings down fell together: about %1 % of the water was replaced (backwash, splash, a leak, rain or a drain).</source>
        <translation>Ce que seule l’eau neuve fait baisser a baissé d’un même pas&#xa0;: environ %1&#xa0;% de l’eau a été remplacé (lavage du filtre, éclaboussures, fuite, pluie ou vidange).</translation>
    </message>
    <message>
        <source>A dose that was told moved the water less than it should: perhaps part of it was not put in, or the volume on file is too small.</source>
        <translation>Une dose conseillée a moins agi que prévu&#xa0;: peut-être n’a-t-elle pas été mise en entier, ou le volume noté est trop petit.</translation>
    </message>
    <message>
        <source>A dose that was told moved the water more than it should: perhaps more was put in, or the volume on file is too large.</source>
        <translation>Une dose conseillée a plus agi que prévu&#xa0;: peut-être en a-t-on mis davantage, ou le volume noté est trop grand.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid, dry acid or trichlor tablets do that.</source>
        <translation>L’alcalinité a baissé, le calcium non&#xa0;: c’est ce que font l’acide, l’acide sec ou les galets de trichlore.</translation>
    </message>
    <message>
        <source>Stabilizer rose: trichlor tablets or dichlor bring it with every dose.</source>
        <translation>Le stabilisant a monté&#xa0;: les galets de trichlore ou le dichlore en apportent à chaque dose.</translation>
    </message>
    <message>
        <source>Calcium rose and alkalinity did not: calcium hypochlorite brings 7 mg/L of calcium hardness with every 10 mg/L of chlorine.</source>
        <translation>Le calcium a monté, l’alcalinité non&#xa0;: l’hypochlorite de calcium apporte 7 mg/L de dureté calcique pour 10 mg/L de chlore.</translation>
    </message>
    <message>
        <source>Salts rose with nothing told: water evaporates and its salts stay, and the fill brings more.</source>
        <translation>Les sels ont monté sans rien de conseillé&#xa0;: l’eau s’évapore, ses sels restent, et l’appoint en apporte d’autres.</translation>
    </message>
    <message>
        <source>Chlorine did not hold: sun, bathers, too little stabilizer, or a demand in the water. A chlorine-demand test tells.</source>
        <translation>Le chlore n’a pas tenu&#xa0;: soleil, baigneurs, trop peu de stabilisant ou une demande dans l’eau. Un test de demande en chlore le dira.</translation>
    </message>
    <message>
        <source>Stabilizer fell alone. Water was not replaced; bacteria can turn stabilizer to ammonia. Meet the chlorine demand before stabilizer is added again.</source>
        <translation>Le stabilisant a baissé seul. L’eau n’a pas été remplacée&#x202f;; des bactéries peuvent changer le stabilisant en ammoniac. Satisfaites la demande en chlore avant de remettre du stabilisant.</translation>
    </message>
    <message>
        <source>pH rose without alkalinity: carbon dioxide leaves the water, faster with jets, a salt cell or a waterfall.</source>
        <translation>Le pH a monté sans l’alcalinité&#xa0;: le dioxyde de carbone quitte l’eau, plus vite avec des jets, un électrolyseur ou une cascade.</translation>
    </message>
    <message>
        <source>Alkalinity rose with nothing told: bicarbonate, soda ash, fill water or dissolving plaster.</source>
        <translation>L’alcalinité a monté sans rien de conseillé&#xa0;: bicarbonate, carbonate de sodium, eau de remplissage ou enduit qui se dissout.</translation>
    </message>
    <message>
        <source>Salt rose with nothing told: ask whether salt was added.</source>
        <translation>Le sel a monté sans rien de conseillé&#xa0;: demandez si du sel a été ajouté.</translation>
    </message>
    <message>
        <source>A metal rose: fill water, a corroding heater at low pH, or a copper product.</source>
        <translation>Un métal a monté&#xa0;: eau de remplissage, réchauffeur qui se corrode à bas pH, ou produit au cuivre.</translation>
    </message>
    <message>
        <source>A dose that was told does not show in the water: perhaps it was not put in, or not all of it.</source>
        <translation>Une dose annoncée ne se voit pas dans l’eau&#xa0;: peut-être n’a-t-elle pas été mise, ou pas entièrement.</translation>
    </message>
    <message>
        <source>Perhaps: %1</source>
        <translation>Peut-être&#xa0;: %1</translation>
    </message>
    <message>
        <source>The water answers the doses like %1, which the volume on file does not fit: measure the vessel.</source>
        <translation>L’eau répond aux doses comme %1, ce que le volume en fiche n’explique pas&#xa0;: mesurez le bassin.</translation>
    </message>
    <message>
        <source>Cloudy water</source>
        <translation>Eau trouble</translation>
    </message>
    <message>
        <source>Green water</source>
        <translation>Eau verte</translation>
    </message>
    <message>
        <source>Stains</source>
        <translation>Taches</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Tartre</translation>
    </message>
    <message>
        <source>Sore eyes</source>
        <translation>Yeux irrités</translation>
    </message>
    <message>
        <source>Strong smell</source>
        <translation>Odeur forte</translation>
    </message>
    <message>
        <source>Green hair</source>
        <translation>Cheveux verts</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Mousse</translation>
    </message>
    <message>
        <source>Slimy walls</source>
        <translation>Parois glissantes</translation>
    </message>
    <message>
        <source>Water that dissolves calcium</source>
        <translation>Eau qui dissout le calcaire</translation>
    </message>
    <message>
        <source>Water that drops calcium</source>
        <translation>Eau qui dépose du calcaire</translation>
    </message>
    <message>
        <source>Stabilizer against free chlorine</source>
        <translation>Stabilisant par rapport au chlore libre</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>%1: worked. It was %2 and is %3; the target is %4.</source>
        <translation>%1&#xa0;: a marché. C’était %2, c’est %3&#x202f;; la cible est %4.</translation>
    </message>
    <message>
        <source>%1: partly. It was %2 and is %3, on its way to the target, %4.</source>
        <translation>%1&#xa0;: en partie. C’était %2, c’est %3, en chemin vers la cible, %4.</translation>
    </message>
    <message>
        <source>%1: did not work. It was %2 and is %3; the target is %4.</source>
        <translation>%1&#xa0;: n’a pas marché. C’était %2, c’est %3&#x202f;; la cible est %4.</translation>
    </message>
    <message>
        <source>%1: cannot be told. It was %2 and is %3, target %4: less than the readings’ error apart.</source>
        <translation>%1&#xa0;: on ne peut le dire. C’était %2, c’est %3, cible %4&#xa0;: l’écart est plus petit que l’erreur des mesures.</translation>
    </message>
    <message>
        <source>Combined chlorine</source>
        <translation>Chlore combiné</translation>
    </message>
    <message>
        <source>%1: cannot be told. It was not read this time.</source>
        <translation>%1&#xa0;: on ne peut le dire. Non mesuré cette fois.</translation>
    </message>
    <message>
        <source>%1: cannot be told. A reading stands at the end of its range.</source>
        <translation>%1&#xa0;: on ne peut le dire. Une mesure est au bout de sa plage.</translation>
    </message>
    <message>
        <source>%1: did not work. It is told of again.</source>
        <translation>%1&#xa0;: n’a pas marché. C’est de nouveau signalé.</translation>
    </message>
    <message>
        <source>%1: worked. It is not told of any more.</source>
        <translation>%1&#xa0;: a marché. Ce n’est plus signalé.</translation>
    </message>
    <message>
        <source>%1: did not work. It is found again.</source>
        <translation>%1&#xa0;: n’a pas marché. On le retrouve.</translation>
    </message>
    <message>
        <source>%1: cannot be told. It is so near its limit that the error decides.</source>
        <translation>%1&#xa0;: on ne peut le dire. C’est si près de la limite que l’erreur décide.</translation>
    </message>
    <message>
        <source>%1: worked. It is not found any more.</source>
        <translation>%1&#xa0;: a marché. On ne le retrouve plus.</translation>
    </message>
    <message>
        <source>%1 US gallons</source>
        <translation>%1 gallons US</translation>
    </message>
    <message>
        <source>%1 m³</source>
        <translation>%1 m³</translation>
    </message>
    <message>
        <source>From how the water answered the doses: %1; no volume is on file.</source>
        <translation>D’après la réponse de l’eau aux doses&#xa0;: %1&#x202f;; aucun volume n’est en fiche.</translation>
    </message>
    <message>
        <source>From how the water answered the doses: %1; on file: %2.</source>
        <translation>D’après la réponse de l’eau aux doses&#xa0;: %1&#x202f;; en fiche&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The volume on file, %1, was taken from how the water answered.</source>
        <translation>Le volume en fiche, %1, a été tiré de la réponse de l’eau.</translation>
    </message>
    <message>
        <source>The volume on file, %1, was taken from how the water answered; before, it was %2.</source>
        <translation>Le volume en fiche, %1, a été tiré de la réponse de l’eau&#x202f;; avant, c’était %2.</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1&#xa0;L</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3: no more than time and error account for.</source>
        <translation>%1 est passé de %2 à %3&#xa0;: pas plus que ce qu’expliquent le temps et l’erreur.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid, dry acid or bromine tablets do that.</source>
        <translation>L’alcalinité a baissé et pas le calcium&#xa0;: l’acide, l’acide sec ou les galets de brome font cela.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid or dry acid does that.</source>
        <translation>L’alcalinité a baissé et pas le calcium&#xa0;: l’acide ou l’acide sec fait cela.</translation>
    </message>
</context>
<context>
    <name>demand</name>
    <message>
        <source>The water used up %1 mg/L of chlorine in %2 hours.</source>
        <translation>L’eau a consommé %1 mg/L de chlore en %2 heures.</translation>
    </message>
    <message>
        <source>The bottles stood at %1 C; warmer water is faster.</source>
        <translation>Les flacons étaient à %1&#xa0;°C&#x202f;; une eau plus chaude va plus vite.</translation>
    </message>
    <message>
        <source>%1 mg/L of that went in the first %2 h, %3 mg/L after.</source>
        <translation>De cela, %1 mg/L sont partis dans les premières %2 h, %3 mg/L ensuite.</translation>
    </message>
    <message>
        <source>It takes %1 mg/L, unstabilised, in one evening, to meet that and leave the residual wanted.</source>
        <translation>Il faut %1 mg/L, non stabilisé, en une soirée, pour y répondre et laisser le résiduel voulu.</translation>
    </message>
    <message>
        <source>Total chlorine was not read, so combined chlorine may still be there.</source>
        <translation>Le chlore total n’a pas été mesuré&#xa0;: il peut rester du chlore combiné.</translation>
    </message>
    <message>
        <source>The bottles that hold chlorine do not agree: check the strength of the stock. The weakest of them counts.</source>
        <translation>Les flacons qui gardent du chlore ne s’accordent pas&#xa0;: contrôlez la force de la solution mère. Le plus faible compte.</translation>
    </message>
    <message>
        <source>That is more than a home can treat: a pool goes to a professional; an above-ground spa may be emptied.</source>
        <translation>C’est plus qu’un particulier ne peut traiter&#xa0;: une piscine va à un professionnel&#x202f;; un spa hors sol peut être vidé.</translation>
    </message>
    <message>
        <source>Reckon first what changing part of the water costs: each share changed takes the same share of the demand.</source>
        <translation>Comptez d’abord ce que coûte de changer une part de l’eau&#xa0;: chaque part changée ôte la même part de la demande.</translation>
    </message>
    <message>
        <source>Clean the filter and take out leaves and dirt first; then dose, and test again the next day.</source>
        <translation>Nettoyez d’abord le filtre et retirez feuilles et saletés&#x202f;; dosez ensuite, et refaites un test le lendemain.</translation>
    </message>
    <message>
        <source>Walls, filter and sun use more than a bottle can show: test again the next day.</source>
        <translation>Parois, filtre et soleil consomment plus qu’un flacon ne peut montrer&#xa0;: refaites un test le lendemain.</translation>
    </message>
    <message>
        <source>The bottles contradict each other: a strong one is used up while a weaker one holds chlorine. Look at the labels and set the test up again. Dose nothing on it.</source>
        <translation>Les flacons se contredisent&#xa0;: un fort est épuisé quand un plus faible garde du chlore. Regardez les étiquettes et refaites le test. Ne dosez rien d’après lui.</translation>
    </message>
    <message>
        <source>No bottle of the test was read. Dose nothing on it.</source>
        <translation>Aucun flacon du test n’a été mesuré. Ne dosez rien d’après lui.</translation>
    </message>
    <message>
        <source>Not enough: the demand is above %1 mg/L and at most about %2 mg/L. Dose nothing on it.</source>
        <translation>Pas assez&#xa0;: la demande dépasse %1 mg/L, et fait au plus environ %2 mg/L. Ne dosez rien d’après lui.</translation>
    </message>
    <message>
        <source>Not enough: the demand is above %1 mg/L, and the strongest bottles cannot be believed. Dose nothing on it.</source>
        <translation>Pas assez&#xa0;: la demande dépasse %1 mg/L, et les flacons les plus forts ne sont pas crédibles. Ne dosez rien d’après lui.</translation>
    </message>
    <message>
        <source>Not enough: the strongest bottle was used up; the demand is above %1 mg/L. Dose nothing on it.</source>
        <translation>Pas assez&#xa0;: le flacon le plus fort est épuisé&#x202f;; la demande dépasse %1 mg/L. Ne dosez rien d’après lui.</translation>
    </message>
    <message>
        <source>Read the strong bottles again at 1+4 with chlorine-free water: a bleached bottle looks like an empty one.</source>
        <translation>Refaites les flacons forts à 1+4 avec de l’eau sans chlore&#xa0;: un flacon décoloré semble vide de chlore.</translation>
    </message>
    <message>
        <source>Set up the bottles again with higher doses, until one holds chlorine with little of it combined.</source>
        <translation>Refaites les flacons avec des doses plus fortes, jusqu’à ce que l’un garde du chlore avec peu de combiné.</translation>
    </message>
</context>
<context>
    <name>emergency</name>
    <message>
        <source>Fumes breathed in</source>
        <translation>Vapeurs inhalées</translation>
    </message>
    <message>
        <source>Splash in the eyes or on the skin</source>
        <translation>Projection dans les yeux ou sur la peau</translation>
    </message>
    <message>
        <source>Swallowed</source>
        <translation>Produit avalé</translation>
    </message>
    <message>
        <source>Chemicals mixed, wet or fuming</source>
        <translation>Produits mélangés, mouillés ou fumants</translation>
    </message>
    <message>
        <source>Get them into fresh air, and keep others out.</source>
        <translation>Amenez la personne à l’air libre et tenez les autres à l’écart.</translation>
    </message>
    <message>
        <source>Trouble breathing: call the emergency number at once.</source>
        <translation>Si elle respire mal&#xa0;: appelez aussitôt le numéro d’urgence.</translation>
    </message>
    <message>
        <source>It can get worse hours later: call the poison line even if they feel well.</source>
        <translation>Cela peut s’aggraver des heures plus tard&#xa0;: appelez le centre antipoison même si elle se sent bien.</translation>
    </message>
    <message>
        <source>Rinse with running water at once, for at least 15 minutes.</source>
        <translation>Rincez aussitôt à l’eau courante, pendant au moins 15 minutes.</translation>
    </message>
    <message>
        <source>Take out contact lenses; take off what the chemical has touched.</source>
        <translation>Enlevez les lentilles de contact&#x202f;; ôtez tout ce que le produit a touché.</translation>
    </message>
    <message>
        <source>Dry powder: brush it off the skin before you rinse. Then call the poison line.</source>
        <translation>Poudre sèche&#xa0;: brossez-la de la peau avant de rincer. Appelez ensuite le centre antipoison.</translation>
    </message>
    <message>
        <source>Do not make them vomit.</source>
        <translation>NE faites PAS vomir.</translation>
    </message>
    <message>
        <source>Call the poison line with the label in your hand.</source>
        <translation>Appelez le centre antipoison, l’étiquette à la main.</translation>
    </message>
    <message>
        <source>Unconscious, or trouble breathing: call the emergency number.</source>
        <translation>Si la personne est inconsciente ou respire mal&#xa0;: appelez le numéro d’urgence.</translation>
    </message>
    <message>
        <source>Leave at once, upwind. Keep everyone out.</source>
        <translation>Éloignez-vous aussitôt, en remontant le vent. Tenez tout le monde à l’écart.</translation>
    </message>
    <message>
        <source>Call the emergency number from outside.</source>
        <translation>Appelez le numéro d’urgence depuis l’extérieur.</translation>
    </message>
    <message>
        <source>Do not go back to air the room. Add no water. Move nothing. Sniff at nothing.</source>
        <translation>N’y retournez pas pour aérer. N’ajoutez pas d’eau. Ne déplacez rien. Ne reniflez rien.</translation>
    </message>
    <message>
        <source>No number is set: Back room, The shop</source>
        <translation>Aucun numéro n’est réglé&#xa0;: Arrière-boutique, La boutique</translation>
    </message>
    <message>
        <source>Your local emergency number</source>
        <translation>Votre numéro d’urgence local</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>The product’s label and its safety data sheet go before anything written here.</source>
        <translation>L’étiquette du produit et sa fiche de données de sécurité priment sur tout ce qui est écrit ici.</translation>
    </message>
</context>
<context>
    <name>facts</name>
    <message>
        <source>This word is not known.</source>
        <translation>Ce mot n’est pas connu.</translation>
    </message>
    <message>
        <source>This fact is not known.</source>
        <translation>Cette donnée n’est pas connue.</translation>
    </message>
    <message>
        <source>Volume, US gallons</source>
        <translation>Volume, gallons US</translation>
    </message>
    <message>
        <source>Volume, m³</source>
        <translation>Volume, m³</translation>
    </message>
    <message>
        <source>Its water, °F</source>
        <translation>Temp. de son eau, °F</translation>
    </message>
    <message>
        <source>Its water, °C</source>
        <translation>Temp. de son eau, °C</translation>
    </message>
    <message>
        <source>The bottle when read, °F</source>
        <translation>Temp. du flacon à la mesure, °F</translation>
    </message>
    <message>
        <source>The bottle when read, °C</source>
        <translation>Temp. du flacon à la mesure, °C</translation>
    </message>
    <message>
        <source>“%1” cannot be right here; expected a number from %2 to %3.</source>
        <translation>«&#xa0;%1&#xa0;» ne peut pas convenir ici&#x202f;; un nombre de %2 à %3 est attendu.</translation>
    </message>
</context>
<context>
    <name>fault</name>
    <message>
        <source>a NUL byte</source>
        <translation>un octet NUL</translation>
    </message>
    <message>
        <source>a text file in UTF-8</source>
        <translation>un fichier texte en UTF-8</translation>
    </message>
    <message>
        <source>a line of over %1 bytes</source>
        <translation>une ligne de plus de %1 octets</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>un tableau</translation>
    </message>
    <message>
        <source>more than %1 columns</source>
        <translation>plus de %1 colonnes</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>un guillemet n’est pas fermé</translation>
    </message>
    <message>
        <source>its end, before the end of the file</source>
        <translation>sa fin, avant la fin du fichier</translation>
    </message>
    <message>
        <source>text after a closing quotation mark</source>
        <translation>du texte après un guillemet fermant</translation>
    </message>
    <message>
        <source>a &quot;%1&quot; or the line&apos;s end</source>
        <translation>un «&#xa0;%1&#xa0;» ou la fin de la ligne</translation>
    </message>
    <message>
        <source>bytes that are not UTF-8</source>
        <translation>des octets qui ne sont pas de l’UTF-8</translation>
    </message>
    <message>
        <source>a table saved as UTF-8 (&quot;CSV UTF-8&quot;)</source>
        <translation>un tableau enregistré en UTF-8 («&#xa0;CSV UTF-8&#xa0;»)</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>le fichier ne peut être lu</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>a line of column names</source>
        <translation>une ligne de noms de colonnes</translation>
    </message>
    <message>
        <source>column `%1` stands twice</source>
        <translation>la colonne `%1` est là deux fois</translation>
    </message>
    <message>
        <source>it once</source>
        <translation>une seule fois</translation>
    </message>
    <message>
        <source>column `%1` is not known and is left out</source>
        <translation>la colonne `%1` est inconnue et laissée de côté</translation>
    </message>
    <message>
        <source>a known column</source>
        <translation>une colonne connue</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1 champ</translation>
    </message>
    <message>
        <source>%1 fields</source>
        <translation>%1 champs</translation>
    </message>
    <message>
        <source>%1 as in the header</source>
        <translation>%1 comme dans l’en-tête</translation>
    </message>
    <message>
        <source>`%1` is missing</source>
        <translation>`%1` manque</translation>
    </message>
    <message>
        <source>`%1` is %2</source>
        <translation>`%1` est %2</translation>
    </message>
    <message>
        <source>`%1` is in `%2`</source>
        <translation>`%1` est en `%2`</translation>
    </message>
    <message>
        <source>`%1` is empty</source>
        <translation>`%1` est vide</translation>
    </message>
    <message>
        <source>`%1` is not known</source>
        <translation>`%1` n’est pas connu</translation>
    </message>
    <message>
        <source>`%1` is not known here</source>
        <translation>`%1` n’est pas connu ici</translation>
    </message>
    <message>
        <source>`%1` is there twice</source>
        <translation>`%1` est là deux fois</translation>
    </message>
    <message>
        <source>`%1` is negative</source>
        <translation>`%1` est négatif</translation>
    </message>
    <message>
        <source>`%1` holds a control character</source>
        <translation>`%1` contient un caractère de contrôle</translation>
    </message>
    <message>
        <source>an item of `%1` is %2</source>
        <translation>un élément de `%1` est %2</translation>
    </message>
    <message>
        <source>text holds a null character</source>
        <translation>le texte contient un caractère nul</translation>
    </message>
    <message>
        <source>text that is not UTF-8</source>
        <translation>du texte qui n’est pas de l’UTF-8</translation>
    </message>
    <message>
        <source>it to be there</source>
        <translation>qu’il soit là</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>chaque clé une fois</translation>
    </message>
    <message>
        <source>text</source>
        <translation>du texte</translation>
    </message>
    <message>
        <source>text on one line</source>
        <translation>du texte sur une ligne</translation>
    </message>
    <message>
        <source>text without it</source>
        <translation>du texte sans lui</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a number of 0 or more</source>
        <translation>un nombre de 0 ou plus</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un nombre au-dessus de 0</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>a whole number from %1 up</source>
        <translation>un nombre entier à partir de %1</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>un nombre entier de %1 à %2</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objet</translation>
    </message>
    <message>
        <source>a date or time</source>
        <translation>une date ou une heure</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>vrai ou faux (true ou false)</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>oui ou non (yes ou no)</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>l’un de %1</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 ou plus</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>zéro ou plus</translation>
    </message>
    <message>
        <source>1 or more</source>
        <translation>1 ou plus</translation>
    </message>
    <message>
        <source>1 or more: (sample + water) / sample</source>
        <translation>1 ou plus&#xa0;: (échantillon + eau) / échantillon</translation>
    </message>
    <message>
        <source>a share from 0 to 1</source>
        <translation>une part de 0 à 1</translation>
    </message>
    <message>
        <source>a pH from 0 to 14</source>
        <translation>un pH de 0 à 14</translation>
    </message>
    <message>
        <source>an amount that can be</source>
        <translation>une quantité possible</translation>
    </message>
    <message>
        <source>a temperature of liquid water in degrees Celsius</source>
        <translation>une température d’eau liquide en degrés Celsius</translation>
    </message>
    <message>
        <source>a time with its offset, like 2026-06-14T08:10:00-05:00</source>
        <translation>une heure avec son décalage, comme 2026-06-14T08:10:00-05:00</translation>
    </message>
    <message>
        <source>a name, or the id of a customer that is known</source>
        <translation>un nom, ou l’identifiant d’un client connu</translation>
    </message>
    <message>
        <source>en, es or fr</source>
        <translation>en, es ou fr</translation>
    </message>
    <message>
        <source>m3, L, gal (US) or gal_imp</source>
        <translation>m3, L, gal (US) ou gal_imp</translation>
    </message>
    <message>
        <source>the moment until which the volume was learnt, ISO 8601</source>
        <translation>le moment jusqu’auquel la réponse de l’eau a donné le volume, ISO 8601</translation>
    </message>
    <message>
        <source>the volume that was learnt</source>
        <translation>le volume tiré de la réponse de l’eau</translation>
    </message>
    <message>
        <source>half of a learnt volume</source>
        <translation>la moitié seulement d’un volume tiré de la réponse de l’eau</translation>
    </message>
    <message>
        <source>`%1` and `%2`</source>
        <translation>`%1` et `%2`</translation>
    </message>
    <message>
        <source>vessel %1 is another customer&apos;s</source>
        <translation>le bassin %1 est celui d’un autre client</translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation>un identifiant qui lui soit propre</translation>
    </message>
    <message>
        <source>customer %1 was erased and is left out</source>
        <translation>le client %1 a été effacé et est laissé de côté</translation>
    </message>
    <message>
        <source>a customer</source>
        <translation>un client</translation>
    </message>
    <message>
        <source>customer %1 is written otherwise in the records or above</source>
        <translation>le client %1 est écrit autrement dans les données ou plus haut</translation>
    </message>
    <message>
        <source>the same; what is there stays</source>
        <translation>la même chose&#x202f;; ce qui est là reste</translation>
    </message>
    <message>
        <source>vessel %1 is written otherwise in the records or above</source>
        <translation>le bassin %1 est écrit autrement dans les données ou plus haut</translation>
    </message>
    <message>
        <source>the same, or a `vessel_id` for each; what is there stays</source>
        <translation>la même chose, ou un `vessel_id` pour chacun&#x202f;; ce qui est là reste</translation>
    </message>
    <message>
        <source>the name of a customer that is known, or `customer_id`</source>
        <translation>le nom d’un client connu, ou `customer_id`</translation>
    </message>
    <message>
        <source>one of several customers of that name: `phone` or `customer_id`</source>
        <translation>l’un de plusieurs clients de ce nom&#xa0;: `phone` ou `customer_id`</translation>
    </message>
    <message>
        <source>a customer, a name, or a vessel that is known</source>
        <translation>un client, un nom ou un bassin connu</translation>
    </message>
    <message>
        <source>the id of a customer that is known</source>
        <translation>l’identifiant d’un client connu</translation>
    </message>
    <message>
        <source>a vessel of this customer</source>
        <translation>un bassin de ce client</translation>
    </message>
    <message>
        <source>one of the customer&apos;s %1 vessels</source>
        <translation>l’un des %1 bassins du client</translation>
    </message>
    <message>
        <source>no column of readings</source>
        <translation>aucune colonne de mesures</translation>
    </message>
    <message>
        <source>`analyte` and `value`, or columns such as `ph` and `free_chlorine`</source>
        <translation>`analyte` et `value`, ou des colonnes comme `ph` et `free_chlorine`</translation>
    </message>
    <message>
        <source>a day or moment as ISO 8601, 2026-06-14 or 2026-06-14T08:10:00-05:00</source>
        <translation>un jour ou un moment selon ISO 8601, 2026-06-14 ou 2026-06-14T08:10:00-05:00</translation>
    </message>
    <message>
        <source>one bottle&apos;s: the same customer, vessel and moment as above</source>
        <translation>celui d’un seul flacon : mêmes client, bassin et moment que plus haut</translation>
    </message>
    <message>
        <source>the same reading of %1 stands above</source>
        <translation>la même mesure de %1 figure plus haut</translation>
    </message>
    <message>
        <source>it once; it is kept once</source>
        <translation>une seule fois&#x202f;; elle est gardée une fois</translation>
    </message>
    <message>
        <source>the customer was erased: visit %1 is left out</source>
        <translation>le client a été effacé&#xa0;: la visite %1 est laissée de côté</translation>
    </message>
    <message>
        <source>visit %1 is in the records with other readings</source>
        <translation>la visite %1 est dans les données avec d’autres mesures</translation>
    </message>
    <message>
        <source>a chemical&apos;s id</source>
        <translation>l’identifiant d’une substance</translation>
    </message>
    <message>
        <source>mL or g a cubic metre</source>
        <translation>mL ou g par mètre cube</translation>
    </message>
    <message>
        <source>the strength does not fit the chemical</source>
        <translation>la teneur ne va pas avec la substance</translation>
    </message>
    <message>
        <source>`percent` is no percent</source>
        <translation>`percent` n’est pas un pourcentage</translation>
    </message>
    <message>
        <source>above 0, at most 100</source>
        <translation>plus de 0, au plus 100</translation>
    </message>
    <message>
        <source>a pack holds nothing</source>
        <translation>un emballage ne contient rien</translation>
    </message>
    <message>
        <source>litres or kilograms above 0</source>
        <translation>des litres ou kilogrammes au-dessus de 0</translation>
    </message>
    <message>
        <source>the product&apos;s name</source>
        <translation>le nom du produit</translation>
    </message>
    <message>
        <source>one of the keys this file may have</source>
        <translation>l’une des clés que ce fichier peut avoir</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, ligne %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1, line %2: %3; expected %4</source>
        <translation>%1, ligne %2&#xa0;: %3&#x202f;; attendu&#xa0;: %4</translation>
    </message>
    <message>
        <source>the file cannot be read further</source>
        <translation>la suite du fichier ne peut être lue</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un fichier lisible</translation>
    </message>
    <message>
        <source>a file that can be written</source>
        <translation>un fichier où l’on peut écrire</translation>
    </message>
    <message>
        <source>cannot be made</source>
        <translation>ne peut être créé</translation>
    </message>
    <message>
        <source>null</source>
        <translation>nul</translation>
    </message>
    <message>
        <source>`id` is no name for a product</source>
        <translation>`id` n’est pas un nom de produit</translation>
    </message>
    <message>
        <source>small letters, digits and _</source>
        <translation>des minuscules, des chiffres et _</translation>
    </message>
    <message>
        <source>it is the last product</source>
        <translation>c’est le dernier produit</translation>
    </message>
    <message>
        <source>a shelf with something on it</source>
        <translation>un rayon qui ne soit pas vide</translation>
    </message>
    <message>
        <source>neither `low` nor `high` is there</source>
        <translation>ni `low` ni `high` n’est là</translation>
    </message>
    <message>
        <source>one of them</source>
        <translation>l’un des deux</translation>
    </message>
    <message>
        <source>`low` is above `high`</source>
        <translation>`low` est au-dessus de `high`</translation>
    </message>
    <message>
        <source>low up to high</source>
        <translation>du plus bas au plus haut</translation>
    </message>
    <message>
        <source>`aim` is outside the target</source>
        <translation>`aim` est hors de l’objectif</translation>
    </message>
    <message>
        <source>a value between low and high</source>
        <translation>une valeur entre les deux</translation>
    </message>
    <message>
        <source>has no such row</source>
        <translation>n’a pas cette ligne</translation>
    </message>
    <message>
        <source>a row of the list</source>
        <translation>une ligne de la liste</translation>
    </message>
</context>
<context>
    <name>first_start</name>
    <message>
        <source>Which language do you read?</source>
        <translation>Quelle langue lisez-vous ?</translation>
    </message>
    <message>
        <source>Whose counter is this?</source>
        <translation>À qui est ce comptoir ?</translation>
    </message>
    <message>
        <source>What measures here?</source>
        <translation>Avec quoi mesure-t-on ici ?</translation>
    </message>
    <message>
        <source>Who may change what is set here?</source>
        <translation>Qui peut changer ces réglages&#x202f;?</translation>
    </message>
</context>
<context>
    <name>hand</name>
    <message>
        <source>Step %1 is left out: %2.</source>
        <translation>L’étape %1 est omise : %2.</translation>
    </message>
    <message>
        <source>Step %1: %2 instead of %3.</source>
        <translation>Étape %1 : %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>Changed by %1: %2</source>
        <translation>Changé par %1 : %2</translation>
    </message>
</context>
<context>
    <name>journal</name>
    <message>
        <source>the shared records cannot be reached; try again later</source>
        <translation>les dossiers communs sont injoignables&#x202f;; réessayer plus tard</translation>
    </message>
    <message>
        <source>there is no overnight test of this bottle</source>
        <translation>il n’y a pas de test de nuit pour ce flacon</translation>
    </message>
    <message>
        <source>The shared records cannot be reached. Work goes on here and is joined later: %1 pieces wait.</source>
        <translation>Les dossiers communs sont injoignables. Le travail continue ici et sera joint plus tard&#xa0;: %1 changements attendent.</translation>
    </message>
</context>
<context>
    <name>label</name>
    <message>
        <source>1 h: %1</source>
        <translation>1 h&#xa0;: %1</translation>
    </message>
    <message>
        <source>1 h: about %1</source>
        <translation>1 h&#xa0;: vers %1</translation>
    </message>
    <message>
        <source>24 h: %1</source>
        <translation>24 h&#xa0;: %1</translation>
    </message>
    <message>
        <source>24 h: about %1</source>
        <translation>24 h&#xa0;: vers %1</translation>
    </message>
    <message>
        <source>Overnight test, chlorine. Keep dark. Do not drink.</source>
        <translation>Test de 24 h, chlore. Garder à l’obscurité. Ne pas boire.</translation>
    </message>
    <message>
        <source>STOCK</source>
        <translation>SOLUTION MÈRE</translation>
    </message>
    <message>
        <source>chlorine %1 mg/L</source>
        <translation>chlore %1 mg/L</translation>
    </message>
    <message>
        <source>Made %1; good for today only.</source>
        <translation>Préparée %1&#x202f;; valable aujourd’hui seulement.</translation>
    </message>
    <message>
        <source>Gloves, goggles. Never with acid or another chlorine. Do not drink.</source>
        <translation>Gants, lunettes. Jamais avec un acide ni un autre chlore. Ne pas boire.</translation>
    </message>
    <message>
        <source>%1 mL of stock</source>
        <translation>%1 mL de solution</translation>
    </message>
    <message>
        <source>no stock</source>
        <translation>sans solution</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Étiquettes</translation>
    </message>
</context>
<context>
    <name>list</name>
    <message>
        <source> and </source>
        <translation> et </translation>
    </message>
</context>
<context>
    <name>listener</name>
    <message>
        <source>the port could not be opened</source>
        <translation>le port n’a pas pu être ouvert</translation>
    </message>
    <message>
        <source>%1 baud: %2 bytes, %3 sound frames, %4 readings, %5 garbled</source>
        <translation>%1 bauds : %2 octets, %3 trames saines, %4 mesures, %5 illisibles</translation>
    </message>
    <message>
        <source>Try every profile</source>
        <translation>Essayer tous les profils</translation>
    </message>
    <message>
        <source>Use the one that fits</source>
        <translation>Utiliser celui qui convient</translation>
    </message>
    <message>
        <source>Write a draft of a new one</source>
        <translation>Écrire l’ébauche d’un nouveau</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Port</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Que faire</translation>
    </message>
    <message>
        <source>fits best</source>
        <translation>convient le mieux</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>L’utiliser</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>L’écrire</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Écouter</translation>
    </message>
    <message>
        <source>Listening with profile %1 of %2; measure something now.</source>
        <translation>Écoute avec le profil %1 sur %2 ; mesurez quelque chose maintenant.</translation>
    </message>
    <message>
        <source>%1 understands this instrument.</source>
        <translation>%1 comprend cet instrument.</translation>
    </message>
    <message>
        <source>Nothing was heard: is it switched on, and the port the right one?</source>
        <translation>Rien n’a été entendu : est-il allumé, et le port est-il le bon ?</translation>
    </message>
    <message>
        <source>No profile understands it. A draft can be made from what was heard.</source>
        <translation>Aucun profil ne le comprend. Une ébauche peut être faite de ce qui a été entendu.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Arrêté.</translation>
    </message>
    <message>
        <source>None fits yet: listen first.</source>
        <translation>Aucun ne convient encore : écoutez d’abord.</translation>
    </message>
    <message>
        <source>%1 is listened to on %2.</source>
        <translation>%1 est écouté sur %2.</translation>
    </message>
    <message>
        <source>Name the port first.</source>
        <translation>Indiquez d’abord le port.</translation>
    </message>
    <message>
        <source>Two whole lines of one form are needed for a draft: listen first.</source>
        <translation>Une ébauche demande deux lignes entières de même forme : écoutez d’abord.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>%1 ne peut pas être écrit.</translation>
    </message>
    <message>
        <source>Written to %1. It is refused until what stands as ? is filled in.</source>
        <translation>Écrit dans %1. Il est refusé tant que ce qui porte ? n’est pas rempli.</translation>
    </message>
    <message>
        <source>None understands it at its own rate. Trying other rates, %1 of %2; measure again and again.</source>
        <translation>Aucun ne le comprend à son propre débit. Essai d’autres débits, %1 sur %2&#x202f;; mesurez encore et encore.</translation>
    </message>
    <message>
        <source>, %1 baud</source>
        <translation>, %1 bauds</translation>
    </message>
</context>
<context>
    <name>method</name>
    <message>
        <source>photometer</source>
        <translation>photomètre</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>bandelette</translation>
    </message>
    <message>
        <source>drop titration</source>
        <translation>titrage à la goutte</translation>
    </message>
    <message>
        <source>comparator</source>
        <translation>comparateur</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>sonde</translation>
    </message>
    <message>
        <source>turbidity tube</source>
        <translation>tube de turbidité</translation>
    </message>
    <message>
        <source>method</source>
        <translation>méthode</translation>
    </message>
</context>
<context>
    <name>numbers</name>
    <message>
        <source>the error came with the reading</source>
        <translation>l’erreur est venue avec la mesure</translation>
    </message>
    <message>
        <source>how it was read is not told: the error is the widest</source>
        <translation>la méthode n’est pas dite : l’erreur est la plus large</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>diluted %1 times, which widens the error</source>
        <translation>diluée %1 fois, ce qui élargit l’erreur</translation>
    </message>
    <message>
        <source>at the end of the method’s range: no dose hangs on it</source>
        <translation>à la limite de la plage de la méthode : aucune dose n’en dépend</translation>
    </message>
    <message>
        <source>a repeat</source>
        <translation>une répétition</translation>
    </message>
    <message>
        <source>%1 mol by the strength on the label</source>
        <translation>%1 mol selon la teneur de l’étiquette</translation>
    </message>
    <message>
        <source>worked out for %1 by the model of this water</source>
        <translation>calculé pour %1 avec le modèle de cette eau</translation>
    </message>
    <message>
        <source>%1 portions</source>
        <translation>%1 portions</translation>
    </message>
    <message>
        <source>from %1 to %2 once it has mixed</source>
        <translation>de %1 à %2 une fois mélangé</translation>
    </message>
    <message>
        <source>%1 once it has mixed</source>
        <translation>%1 une fois mélangé</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Étape %1</translation>
    </message>
    <message>
        <source>of the water replaced; what is dissolved in it goes by the same share</source>
        <translation>de l’eau est remplacée&#x202f;; ce qui y est dissous baisse d’autant</translation>
    </message>
    <message>
        <source>at the plan’s end; ± from the errors of the readings and of the volume</source>
        <translation>à la fin du plan&#x202f;; ± d’après les erreurs des mesures et du volume</translation>
    </message>
    <message>
        <source>Inside every target</source>
        <translation>Dans tous les objectifs</translation>
    </message>
    <message>
        <source>of %1 times that the plan was worked through, each with other errors of the readings and the volume</source>
        <translation>de %1 parcours du plan, chacun avec d’autres erreurs des mesures et du volume</translation>
    </message>
    <message>
        <source>Water replaced</source>
        <translation>Eau remplacée</translation>
    </message>
    <message>
        <source>the share that makes what moved likeliest, by mass balance of every reading at once; told drains are in it</source>
        <translation>la part qui rend le plus probable ce qui a bougé, par bilan de matière de toutes les mesures à la fois, vidanges signalées comprises</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>by Bayes’ rule, from the volume on file and from how far each told dose moved the water, visit after visit</source>
        <translation>par la règle de Bayes, à partir du volume en fiche et de l’effet de chaque dose indiquée sur l’eau, visite après visite</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>Évaporation</translation>
    </message>
    <message>
        <source>%1 % a month</source>
        <translation>%1&#xa0;% par mois</translation>
    </message>
    <message>
        <source>of the volume, in the open: common practice, no source; what is dissolved stays</source>
        <translation>du volume, en plein air&#xa0;: usage courant, sans source&#x202f;; ce qui est dissous reste</translation>
    </message>
    <message>
        <source>more than expected, by over 1.96 × ±</source>
        <translation>plus que prévu, de plus de 1,96&#xa0;×&#xa0;±</translation>
    </message>
    <message>
        <source>less than expected, by over 1.96 × ±</source>
        <translation>moins que prévu, de plus de 1,96&#xa0;×&#xa0;±</translation>
    </message>
    <message>
        <source>further off than 1.96 × ±, and nothing told moves it</source>
        <translation>plus loin que 1,96 × ±, et rien de ce qui a été indiqué ne la déplace</translation>
    </message>
    <message>
        <source>as expected, within 1.96 × ±</source>
        <translation>comme prévu, à moins de 1,96&#xa0;×&#xa0;±</translation>
    </message>
    <message>
        <source>%1 then, %2 now: %3</source>
        <translation>%1 alors, %2 maintenant&#xa0;: %3</translation>
    </message>
    <message>
        <source>not held against it: a dose has no amount, or the volume is not on file</source>
        <translation>non comparé : une dose est sans quantité, ou le volume n’est pas en fiche</translation>
    </message>
    <message>
        <source>of the volume, under a roof or a cover: common practice, no source; what is dissolved stays</source>
        <translation>du volume, sous un toit ou une couverture : usage courant, sans source ; ce qui est dissous reste</translation>
    </message>
</context>
<context>
    <name>overnight</name>
    <message>
        <source>The overnight test was not enough: no bottle kept its chlorine, so this water uses up more than %1 mg/L.</source>
        <translation>Le test sur une nuit n’a pas suffi&#xa0;: aucun flacon n’a gardé son chlore, cette eau en consomme donc plus de %1 mg/L.</translation>
    </message>
    <message>
        <source>The overnight test: this water uses up %1 mg/L of chlorine in %2 hours (most likely %3 to %4), so it takes %5 mg/L until some is left.</source>
        <translation>Test de 24 h&#xa0;: cette eau consomme %1 mg/L de chlore en %2 heures (le plus probable, de %3 à %4)&#x202f;; il en faut %5 mg/L pour qu’il en reste.</translation>
    </message>
    <message>
        <source>That is very much. Changing part of the water first takes the same part of it away: ask us what that costs against the chlorine.</source>
        <translation>C’est énorme. Changer d’abord une partie de l’eau en retire la même part&#xa0;: demandez-nous ce que cela coûte face au chlore.</translation>
    </message>
    <message>
        <source>Wait for the overnight test of this bottle: it is read %1, and we call you with what the water needs. Add no chlorine by guess.</source>
        <translation>Attendez le test sur une nuit de ce flacon&#xa0;: il est lu %1, et nous vous appelons pour dire ce qu’il faut à l’eau. N’ajoutez pas de chlore au jugé.</translation>
    </message>
    <message>
        <source>%1 % trade</source>
        <translation>%1&#xa0;% commercial</translation>
    </message>
    <message>
        <source>%1 mL</source>
        <translation>%1 mL</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1&#xa0;°C</translation>
    </message>
    <message>
        <source>Undiluted</source>
        <translation>Non dilué</translation>
    </message>
    <message>
        <source>Bottle %1, %2 mg/L: %3 after 1 hour</source>
        <translation>Flacon %1, %2 mg/L&#xa0;: %3 après 1 heure</translation>
    </message>
    <message>
        <source>Bottle %1, %2 mg/L: %3 after 24 hours</source>
        <translation>Flacon %1, %2 mg/L&#xa0;: %3 après 24 heures</translation>
    </message>
    <message>
        <source>Not said whose</source>
        <translation>Propriétaire non indiqué</translation>
    </message>
    <message>
        <source>Take %1 clean bottles with caps, of glass or hard plastic, and rinse them with the sample.</source>
        <translation>Prenez %1&#xa0;flacons propres à bouchon, en verre ou en plastique dur, et rincez-les avec l’échantillon.</translation>
    </message>
    <message>
        <source>Let dirt and leaves settle, or pour the sample through a paper filter. It should be at 20 to 25 °C.</source>
        <translation>Laissez décanter saletés et feuilles, ou passez l’échantillon sur un filtre en papier. Il doit être à 20 à 25 °C.</translation>
    </message>
    <message>
        <source>Measure %1 mL of the sample into each: %2 mL in all.</source>
        <translation>Mesurez %1 mL d’échantillon dans chacun&#xa0;: %2 mL en tout.</translation>
    </message>
    <message>
        <source>pH was read as %1. The test is made for 7.2 to 7.6; beyond, chlorine works at another pace, so correct pH first where there is time.</source>
        <translation>Le pH a été mesuré à %1. Le test est fait pour 7,2 à 7,6&#x202f;; au-delà, le chlore agit à un autre rythme&#xa0;: corrigez d’abord le pH si le temps le permet.</translation>
    </message>
    <message>
        <source>Label first: write STOCK, CHLORINE 1 g/L and today’s date on a clean bottle.</source>
        <translation>L’étiquette d’abord&#xa0;: écrivez SOLUTION MÈRE, CHLORE 1 g/L et la date du jour sur un flacon propre.</translation>
    </message>
    <message>
        <source>Half fill a litre measure with distilled water, add %1 mL of the bleach, fill up to the litre mark, mix.</source>
        <translation>Remplissez à moitié une mesure d’un litre d’eau distillée, ajoutez %1 mL de chlore liquide, complétez jusqu’au trait du litre, mélangez.</translation>
    </message>
    <message>
        <source>Strength check: make 1 mL of the stock up to 500 mL with distilled water and read free chlorine. It should show about 2.0 mg/L.</source>
        <translation>Contrôle de la solution&#xa0;: portez 1 mL de la solution à 500 mL avec de l’eau distillée et mesurez le chlore libre. Il devrait montrer environ 2,0 mg/L.</translation>
    </message>
    <message>
        <source>Label every bottle before any chlorine goes in.</source>
        <translation>Étiquetez tous les flacons avant d’y mettre du chlore.</translation>
    </message>
    <message>
        <source>With a syringe, give each bottle the stock its label says. Cap it and turn it over three times.</source>
        <translation>Avec une seringue, donnez à chaque flacon la solution qu’indique son étiquette. Bouchez-le et retournez-le trois fois.</translation>
    </message>
    <message>
        <source>When the last has its chlorine, start the clock. Keep them in the dark, at the warmth of the room.</source>
        <translation>Quand le dernier a son chlore, lancez l’horloge. Gardez-les à l’obscurité, à la température de la pièce.</translation>
    </message>
    <message>
        <source>Weakest bottle first: free chlorine, then total. Dilute with distilled water as the pad proposes; a strong bottle read undiluted can bleach and look empty.</source>
        <translation>Le flacon le plus faible d’abord&#xa0;: chlore libre, puis total. Diluez à l’eau distillée comme le propose le pavé&#x202f;; un flacon fort mesuré sans dilution peut se décolorer et sembler vide.</translation>
    </message>
    <message>
        <source>Type the number as shown, or let the photometer send it: it goes to the marked place and is multiplied by the dilution.</source>
        <translation>Tapez le nombre tel qu’affiché, ou laissez le photomètre l’envoyer&#xa0;: il va à la place marquée et est multiplié par la dilution.</translation>
    </message>
    <message>
        <source>1-hour readings</source>
        <translation>Mesures à 1 heure</translation>
    </message>
    <message>
        <source>24-hour readings</source>
        <translation>Mesures à 24 heures</translation>
    </message>
    <message>
        <source>Free chlorine is used up: an overnight test tells how much this water needs.</source>
        <translation>Le chlore libre est épuisé&#xa0;: un test sur une nuit dit combien il en faut à cette eau.</translation>
    </message>
    <message>
        <source>Combined chlorine was there last time and still is: an overnight test tells how much breaks it.</source>
        <translation>Du chlore combiné était là la dernière fois et l’est encore&#xa0;: un test sur une nuit dit combien l’élimine.</translation>
    </message>
    <message>
        <source>Free chlorine stands, so a small loss is looked for: doses up to %1 mg/L or more.</source>
        <translation>Le chlore libre tient, on cherche donc une petite perte&#xa0;: doses jusqu’à %1 mg/L ou plus.</translation>
    </message>
    <message>
        <source>Combined chlorine may take up to ten times as much to break: doses up to %1 mg/L or more.</source>
        <translation>Éliminer le chlore combiné peut demander jusqu’à dix fois autant&#xa0;: doses jusqu’à %1 mg/L ou plus.</translation>
    </message>
    <message>
        <source>No chlorine stands and nobody knows how much is missing: doses up to %1 mg/L or more.</source>
        <translation>Il ne reste pas de chlore et personne ne sait combien il en manque&#xa0;: doses jusqu’à %1 mg/L ou plus.</translation>
    </message>
    <message>
        <source>Green or slimy water uses up much: doses up to %1 mg/L or more.</source>
        <translation>Une eau verte ou visqueuse consomme beaucoup&#xa0;: doses jusqu’à %1 mg/L ou plus.</translation>
    </message>
    <message>
        <source>The test before was used up, so its bottles were too weak: doses up to %1 mg/L or more.</source>
        <translation>Le test précédent a été épuisé, ses flacons étaient donc trop faibles&#xa0;: doses jusqu’à %1 mg/L ou plus.</translation>
    </message>
    <message>
        <source>%1 bottles, 0 to %2 mg/L</source>
        <translation>%1&#xa0;flacons, de 0 à %2 mg/L</translation>
    </message>
    <message>
        <source>Empty the bottles into the drain with plenty of water, as the local code allows: never back into the pool, never together with acid.</source>
        <translation>Videz les flacons à l’évier avec beaucoup d’eau, comme la réglementation locale le permet&#xa0;: jamais dans la piscine, jamais avec un acide.</translation>
    </message>
    <message>
        <source>Gloves and goggles on; bleach burns and bleaches. The product’s label comes first.</source>
        <translation>Gants et lunettes de protection&#x202f;; le chlore liquide brûle et décolore. L’étiquette du produit prime.</translation>
    </message>
    <message>
        <source>Liquid chlorine alone: never another kind of chlorine, never acid, ammonia or a cleaner near it. Chlorine into water, not water into chlorine.</source>
        <translation>Le chlore liquide seul&#xa0;: jamais une autre sorte de chlore, jamais d’acide, d’ammoniaque ni de nettoyant à côté. Le chlore dans l’eau, pas l’eau dans le chlore.</translation>
    </message>
    <message>
        <source>Out of reach of children and apart from drinks: these bottles look like water.</source>
        <translation>Hors de portée des enfants et loin des boissons&#xa0;: ces flacons ressemblent à de l’eau.</translation>
    </message>
    <message>
        <source>%1 % trade is %1 g of chlorine in 100 mL, %2 g in a litre. The 1 g wanted is in 1000 / %2 = %3 mL.</source>
        <translation>%1&#xa0;% commercial font %1 g de chlore dans 100 mL, %2 g dans un litre. Le gramme voulu est dans 1000 / %2 = %3 mL.</translation>
    </message>
    <message>
        <source>It reads %1: the stock holds 500 × %1 = %2 mg/L, and the bottles are reckoned with that.</source>
        <translation>Lecture %1&#xa0;: la solution contient 500 × %1 = %2 mg/L, et les flacons sont calculés avec cela.</translation>
    </message>
    <message>
        <source>It reads %1: the stock would hold only %2 mg/L. The bleach is old or too little went in. Make it again with fresh bleach.</source>
        <translation>Lecture %1&#xa0;: la solution ne contiendrait que %2 mg/L. Le chlore liquide est vieux, ou on en a mis trop peu. Refaites-la avec du chlore liquide frais.</translation>
    </message>
    <message>
        <source>It reads %1: the stock would hold %2 mg/L, twice what was meant. Read again; if it stays, make the stock again.</source>
        <translation>Lecture %1&#xa0;: la solution contiendrait %2 mg/L, deux fois ce qui était voulu. Refaites la mesure&#x202f;; si elle tient, refaites la solution.</translation>
    </message>
    <message>
        <source>the result is in</source>
        <translation>le résultat est là</translation>
    </message>
    <message>
        <source>being set up</source>
        <translation>en préparation</translation>
    </message>
    <message>
        <source>all bottles are read</source>
        <translation>tous les flacons sont mesurés</translation>
    </message>
    <message>
        <source>%1 due %2</source>
        <translation>%1 à faire %2</translation>
    </message>
    <message>
        <source>%1 due now, since %2</source>
        <translation>%1 à faire maintenant, depuis %2</translation>
    </message>
    <message>
        <source>%1 overdue by %2</source>
        <translation>%1 en retard de %2</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>tient</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>épuisé</translation>
    </message>
    <message>
        <source>over range: dilute</source>
        <translation>hors plage&#xa0;: diluer</translation>
    </message>
    <message>
        <source>may be bleached: dilute</source>
        <translation>peut-être décoloré&#xa0;: diluer</translation>
    </message>
    <message>
        <source>That is what it uses up and %1 mg/L more, for what is to stand in the end is more than stands now.</source>
        <translation>C’est ce qu’elle consomme et %1 mg/L de plus, car il doit en rester à la fin plus qu’il n’y en a maintenant.</translation>
    </message>
    <message>
        <source>That is what it uses up less %1 mg/L, for more stands in it now than has to in the end.</source>
        <translation>C’est ce qu’elle consomme moins %1 mg/L, car il y en a maintenant plus qu’il ne doit en rester à la fin.</translation>
    </message>
</context>
<context>
    <name>panel</name>
    <message>
        <source>kept</source>
        <translation>enregistrée</translation>
    </message>
    <message>
        <source>kept; read it again</source>
        <translation>enregistrée&#x202f;; à refaire</translation>
    </message>
    <message>
        <source>kept; dilute and read again</source>
        <translation>enregistrée&#x202f;; diluer et refaire</translation>
    </message>
    <message>
        <source>kept; says nothing</source>
        <translation>enregistrée&#x202f;; ne dit rien</translation>
    </message>
    <message>
        <source>due</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>not due</source>
        <translation>pas demandée</translation>
    </message>
</context>
<context>
    <name>people</name>
    <message>
        <source>A customer: name, phone or street</source>
        <translation>Un client&#xa0;: nom, téléphone ou rue</translation>
    </message>
    <message>
        <source>Why, if they are to be forgotten</source>
        <translation>Pourquoi, s’il doit être oublié</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation>Ce qui est voulu</translation>
    </message>
    <message>
        <source>Names and addresses are kept</source>
        <translation>Noms et adresses sont gardés</translation>
    </message>
    <message>
        <source>last bottle %1</source>
        <translation>dernier flacon %1</translation>
    </message>
    <message>
        <source>%1 visits</source>
        <translation>%1 visites</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Forget them</source>
        <translation>L’oublier</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Écrire le fichier</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1 ne peut pas être écrit&#xa0;: %2</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not done: say why; it stands in the audit trail.</source>
        <translation>Non fait&#xa0;: dire pourquoi&#x202f;; cela reste dans le journal.</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Non fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Forgotten: name, phone, street and email are gone, the water’s visits stay. Backups made before still hold them, at most a year.</source>
        <translation>Oublié&#xa0;: nom, téléphone, rue et courriel ont disparu, les visites de l’eau restent. Les sauvegardes d’avant les contiennent encore, un an au plus.</translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>Afterwards, we expect: %1</source>
        <translation>Ensuite, nous attendons&#xa0;: %1</translation>
    </message>
    <message>
        <source>this bottle %1</source>
        <translation>ce flacon %1</translation>
    </message>
    <message>
        <source>target from %1</source>
        <translation>cible à partir de %1</translation>
    </message>
    <message>
        <source>target up to %1</source>
        <translation>cible jusqu’à %1</translation>
    </message>
    <message>
        <source>last visit %1</source>
        <translation>dernière visite %1</translation>
    </message>
    <message>
        <source>Free chlorine is %1; it should be at least %2. Germs and algae can grow.</source>
        <translation>Le chlore libre est de %1&#x202f;; il devrait être d’au moins %2. Germes et algues peuvent se développer.</translation>
    </message>
    <message>
        <source>Free chlorine is %1; swim only below %2. Add none and let it fall.</source>
        <translation>Le chlore libre est de %1&#x202f;; baignade seulement en dessous de %2. N’en ajoutez pas et laissez-le baisser.</translation>
    </message>
    <message>
        <source>Stabilizer is %1, and so little free chlorine beside it is held back too strongly to protect anybody.</source>
        <translation>Le stabilisant est de %1, et si peu de chlore libre à côté est trop retenu pour protéger qui que ce soit.</translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at least %2. Germs can grow.</source>
        <translation>Le brome est de %1&#x202f;; il devrait être d’au moins %2. Des germes peuvent se développer.</translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at most %2. Add none and let it fall.</source>
        <translation>Le brome est de %1&#x202f;; il devrait être d’au plus %2. N’en ajoutez pas et laissez-le baisser.</translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at least %2. Germs can grow.</source>
        <translation>Le biguanide (désinfectant) est de %1&#x202f;; il devrait être d’au moins %2. Des germes peuvent se développer.</translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at most %2. Add none; foam may come.</source>
        <translation>Le biguanide (désinfectant) est de %1&#x202f;; il devrait être d’au plus %2. N’en ajoutez pas&#x202f;; de la mousse peut apparaître.</translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at least %2 to keep the water clear.</source>
        <translation>Le peroxyde est de %1&#x202f;; il devrait être d’au moins %2 pour garder l’eau claire.</translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at most %2. Add none and let it fall.</source>
        <translation>Le peroxyde est de %1&#x202f;; il devrait être d’au plus %2. N’en ajoutez pas et laissez-le baisser.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at least %2. Acid water attacks metal, plaster and eyes.</source>
        <translation>Le pH est de %1&#x202f;; il devrait être d’au moins %2. Une eau acide attaque les métaux, l’enduit et les yeux.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart, scale can form, and chlorine works slowly.</source>
        <translation>Le pH est de %1&#x202f;; il devrait être d’au plus %2. Les yeux piquent, du tartre peut se former et le chlore agit lentement.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at least %2. pH will not stay put.</source>
        <translation>L’alcalinité totale (TAC) est de %1&#x202f;; elle devrait être d’au moins %2. Le pH ne tiendra pas en place.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at most %2. It keeps pushing pH up.</source>
        <translation>L’alcalinité totale (TAC) est de %1&#x202f;; elle devrait être d’au plus %2. Elle pousse sans cesse le pH vers le haut.</translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at least %2. Hungry water takes calcium from the surface.</source>
        <translation>La dureté calcique est de %1&#x202f;; elle devrait être d’au moins %2. Une eau agressive prend le calcium du revêtement.</translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at most %2. Scale can form.</source>
        <translation>La dureté calcique est de %1&#x202f;; elle devrait être d’au plus %2. Du tartre peut se former.</translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at least %2. Sunlight takes the chlorine within hours.</source>
        <translation>Le stabilisant (acide cyanurique) est de %1&#x202f;; il devrait être d’au moins %2. Le soleil détruit le chlore en quelques heures.</translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at most %2. It holds the chlorine back; only new water brings it down.</source>
        <translation>Le stabilisant (acide cyanurique) est de %1&#x202f;; il devrait être d’au plus %2. Il freine le chlore&#x202f;; seule l’eau neuve le fait baisser.</translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at least %2, or as its manual says.</source>
        <translation>Le sel est de %1&#x202f;; l’électrolyseur demande au moins %2, ou ce que dit sa notice.</translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at most %2, or as its manual says. Only new water brings it down.</source>
        <translation>Le sel est de %1&#x202f;; l’électrolyseur admet au plus %2, ou ce que dit sa notice. Seule l’eau neuve le fait baisser.</translation>
    </message>
    <message>
        <source>Dissolved solids are %1; %2 is the most. The water is worn out; new water helps.</source>
        <translation>Les solides dissous sont de %1&#x202f;; %2 est le maximum. L’eau est usée&#x202f;; de l’eau neuve aidera.</translation>
    </message>
    <message>
        <source>Sulfate is %1; above %2 it attacks cement. Only new water brings it down.</source>
        <translation>Le sulfate est de %1&#x202f;; au-dessus de %2 il attaque le ciment. Seule l’eau neuve le fait baisser.</translation>
    </message>
    <message>
        <source>Iron is %1; from %2 on it can stain.</source>
        <translation>Le fer est de %1&#x202f;; à partir de %2 il peut tacher.</translation>
    </message>
    <message>
        <source>Copper is %1; from %2 on it can stain the surface and light hair.</source>
        <translation>Le cuivre est de %1&#x202f;; à partir de %2 il peut tacher le revêtement et verdir les cheveux clairs.</translation>
    </message>
    <message>
        <source>Manganese is %1; from %2 on it can stain.</source>
        <translation>Le manganèse est de %1&#x202f;; à partir de %2 il peut tacher.</translation>
    </message>
    <message>
        <source>Phosphate is %1; above %2 it feeds algae when chlorine runs low.</source>
        <translation>Le phosphate est de %1&#x202f;; au-dessus de %2 il nourrit les algues quand le chlore manque.</translation>
    </message>
    <message>
        <source>Nitrate is %1; above %2 it feeds algae. Only new water brings it down.</source>
        <translation>Le nitrate est de %1&#x202f;; au-dessus de %2 il nourrit les algues. Seule l’eau neuve le fait baisser.</translation>
    </message>
    <message>
        <source>Borate is %1; it should be at most %2. Add none.</source>
        <translation>Le borate est de %1&#x202f;; il devrait être d’au plus %2. N’en ajoutez pas.</translation>
    </message>
    <message>
        <source>Turbidity is %1; clear water is below %2.</source>
        <translation>La turbidité est de %1&#x202f;; une eau claire est en dessous de %2.</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, below %2: the water dissolves calcium.</source>
        <translation>L’indice de saturation dans le bassin est de %1, en dessous de %2&#xa0;: l’eau dissout le calcaire.</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, above %2: the water lays down scale.</source>
        <translation>L’indice de saturation dans le bassin est de %1, au-dessus de %2&#xa0;: l’eau dépose du tartre.</translation>
    </message>
    <message>
        <source>The overnight test shows that this water uses up %1 of chlorine before any is left.</source>
        <translation>Le test de la nuit montre que cette eau consomme %1 de chlore avant qu’il n’en reste.</translation>
    </message>
    <message>
        <source>The demand test has not found how much chlorine this water uses up; no bottle held its chlorine.</source>
        <translation>Le test de demande n’a pas trouvé combien de chlore cette eau consomme&#x202f;; aucun flacon n’a gardé son chlore.</translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming: this is an emergency.</source>
        <translation>Des produits ont été mélangés ou dégagent des vapeurs&#xa0;: c’est une urgence.</translation>
    </message>
    <message>
        <source>The main drain cannot be seen: nobody could see a swimmer in trouble.</source>
        <translation>La bonde de fond n’est pas visible&#xa0;: personne ne verrait un baigneur en difficulté.</translation>
    </message>
    <message>
        <source>The water is green: algae are growing.</source>
        <translation>L’eau est verte&#xa0;: des algues se développent.</translation>
    </message>
    <message>
        <source>The walls are slimy: algae or a film of bacteria is growing.</source>
        <translation>Les parois sont glissantes&#xa0;: des algues ou un film de bactéries s’y développent.</translation>
    </message>
    <message>
        <source>Eyes smart after swimming.</source>
        <translation>Les yeux piquent après la baignade.</translation>
    </message>
    <message>
        <source>The water is cloudy.</source>
        <translation>L’eau est trouble.</translation>
    </message>
    <message>
        <source>The water foams: soap, lotion or old water. Rinse off before getting in; if it goes on, change the water.</source>
        <translation>L’eau mousse&#xa0;: savon, crème ou eau usée. Rincez-vous avant d’entrer&#x202f;; si cela continue, changez l’eau.</translation>
    </message>
    <message>
        <source>There are stains: metals or leaves; what is in the stain no longer shows in the water.</source>
        <translation>Il y a des taches&#xa0;: métaux ou feuilles&#x202f;; ce qui est dans la tache ne se voit plus dans l’eau.</translation>
    </message>
    <message>
        <source>There is scale on the surface.</source>
        <translation>Il y a du tartre sur le revêtement.</translation>
    </message>
    <message>
        <source>Light hair turns green: that is copper.</source>
        <translation>Les cheveux clairs verdissent&#xa0;: c’est du cuivre.</translation>
    </message>
    <message>
        <source>Chlorine tablets are in use: each adds acid and, for good, stabilizer.</source>
        <translation>Des galets de chlore sont en place&#xa0;: chacun ajoute de l’acide et, pour de bon, du stabilisant.</translation>
    </message>
    <message>
        <source>Something happened in this water that a home plan must not treat.</source>
        <translation>Il s’est passé dans cette eau quelque chose qu’un plan maison ne doit pas traiter.</translation>
    </message>
    <message>
        <source>This water is open to others than the household.</source>
        <translation>Cette eau est ouverte à d’autres que le foyer.</translation>
    </message>
    <message>
        <source>Nobody has said what keeps this water clean.</source>
        <translation>Personne n’a dit avec quoi cette eau est désinfectée.</translation>
    </message>
    <message>
        <source>The vessel has changed between biguanide and another sanitizer; they must not meet.</source>
        <translation>On est passé du biguanide à un autre désinfectant, ou l’inverse&#x202f;; ils ne doivent pas se rencontrer.</translation>
    </message>
    <message>
        <source>The sanitizer was not read, so nobody knows whether the water is safe.</source>
        <translation>Le désinfectant n’a pas été mesuré&#xa0;: personne ne sait si l’eau est sans danger.</translation>
    </message>
    <message>
        <source>%3 was at the end of the method&apos;s range (%1): dilute the sample and read it again. Nothing is dosed on it.</source>
        <translation>%3&#xa0;: mesure en bout d’échelle de la méthode (%1). Diluez l’échantillon et refaites la mesure. Rien n’est dosé d’après cette valeur.</translation>
    </message>
    <message>
        <source>%3 (%1) cannot be believed: nothing is dosed on it.</source>
        <translation>%3 (%1)&#xa0;: valeur non crédible&#x202f;; rien n’est dosé d’après elle.</translation>
    </message>
    <message>
        <source>%3 (%1) must be read again before anything is dosed on it.</source>
        <translation>%3 (%1)&#xa0;: mesure à refaire avant de doser quoi que ce soit d’après elle.</translation>
    </message>
    <message>
        <source>The readings contradict each other: no water can have all of them.</source>
        <translation>Les mesures se contredisent&#xa0;: aucune eau ne peut les avoir toutes.</translation>
    </message>
    <message>
        <source>The volume is not known, so no amount can be worked out. Measure length, width and average depth, or read the water meter while filling.</source>
        <translation>Le volume n’est pas connu, aucune quantité ne peut donc être calculée. Mesurez longueur, largeur et profondeur moyenne, ou relevez le compteur d’eau au remplissage.</translation>
    </message>
    <message>
        <source>Lower pH: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Baisser le pH&#xa0;: versez lentement %1 du produit «&#xa0;%2&#xa0;» devant un refoulement, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise alkalinity: spread %1 of %2 over the water.</source>
        <translation>Remonter l’alcalinité&#xa0;: répandez %1 du produit «&#xa0;%2&#xa0;» sur l’eau.</translation>
    </message>
    <message>
        <source>Add %1 of %2 first, so that the acid after it does not take alkalinity too low.</source>
        <translation>Ajoutez d’abord %1 du produit «&#xa0;%2&#xa0;», pour que l’acide qui suit ne fasse pas trop baisser l’alcalinité.</translation>
    </message>
    <message>
        <source>Lower alkalinity: pour %1 of %2 slowly in front of a return, pump running. pH drops too and comes back with air.</source>
        <translation>Baisser l’alcalinité&#xa0;: versez lentement %1 du produit «&#xa0;%2&#xa0;» devant un refoulement, pompe en marche. Le pH baisse aussi et remonte avec l’air.</translation>
    </message>
    <message>
        <source>Raise calcium: add %1 of %2, dissolved as its label allows.</source>
        <translation>Remonter le calcium&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;», dissous comme l’étiquette le permet.</translation>
    </message>
    <message>
        <source>Raise chlorine: add %1 of %2 where the water moves, never through the skimmer, pump running.</source>
        <translation>Remonter le chlore&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;» là où l’eau bouge, jamais par le skimmer, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise stabilizer: hang %1 of %2 in a sock in front of a return, pump on and no backwash until it is gone. Its reading rises within a week.</source>
        <translation>Remonter le stabilisant&#xa0;: suspendez %1 du produit «&#xa0;%2&#xa0;» dans une chaussette devant un refoulement, pompe en marche et sans contre-lavage jusqu’à disparition. La mesure monte en une semaine.</translation>
    </message>
    <message>
        <source>Lay down bromide: add %1 of %2.</source>
        <translation>Constituer la réserve de bromure&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>Raise bromine: give %1 of %2 by its feeder, no tablet broken. It dissolves over a day or more: test bromine before anybody gets in.</source>
        <translation>Remonter le brome&#xa0;: donnez %1 du produit «&#xa0;%2&#xa0;» par son doseur, sans casser de pastille. Il se dissout en un jour ou plus&#xa0;: mesurez le brome avant que quiconque entre.</translation>
    </message>
    <message>
        <source>Help the filter: add %1 of %2, or as its label says.</source>
        <translation>Aider le filtre&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;», ou selon son étiquette.</translation>
    </message>
    <message>
        <source>Remove phosphate: add %1 of %2. The water looks worse first; clean the filter after.</source>
        <translation>Éliminer le phosphate&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;». L’eau paraît d’abord plus trouble&#x202f;; nettoyez ensuite le filtre.</translation>
    </message>
    <message>
        <source>Brush walls, steps and corners.</source>
        <translation>Brossez les parois, les marches et les angles.</translation>
    </message>
    <message>
        <source>Take out leaves and vacuum the floor.</source>
        <translation>Retirez les feuilles et aspirez le fond.</translation>
    </message>
    <message>
        <source>Run the filter day and night until the water is clear.</source>
        <translation>Faites tourner le filtre jour et nuit jusqu’à ce que l’eau soit claire.</translation>
    </message>
    <message>
        <source>Clean or backwash the filter.</source>
        <translation>Nettoyez le filtre ou faites un contre-lavage.</translation>
    </message>
    <message>
        <source>Run the pump for %6, so that all the water goes through the filter once.</source>
        <translation>Faites tourner la pompe pendant %6, pour que toute l’eau passe une fois par le filtre.</translation>
    </message>
    <message>
        <source>Turn the chlorine generator off until free chlorine is back in range.</source>
        <translation>Baissez l’électrolyseur jusqu’à ce que le chlore libre revienne dans la plage.</translation>
    </message>
    <message>
        <source>Turn the chlorine generator up one step.</source>
        <translation>Montez l’électrolyseur d’un cran.</translation>
    </message>
    <message>
        <source>Once it is full again and well mixed, bring a bottle of it and one of the tap water: the rest of the doses hang on them.</source>
        <translation>Une fois le plein refait et l’eau bien mélangée, apportez-en un flacon et un de l’eau du robinet&#xa0;: le reste des doses en dépend.</translation>
    </message>
    <message>
        <source>Once it is full again and well mixed, bring a bottle: the doses hang on it.</source>
        <translation>Une fois le plein refait et l’eau bien mélangée, apportez un flacon&#xa0;: les doses en dépendent.</translation>
    </message>
    <message>
        <source>Bring another bottle; the rest of the dose is worked out from it.</source>
        <translation>Apportez un autre flacon&#x202f;; le reste de la dose en sera calculé.</translation>
    </message>
    <message>
        <source>Bring another bottle: we must read free chlorine again, diluted 1 + 4. Strong chlorine can bleach the test and look like none.</source>
        <translation>Apportez un autre flacon&#xa0;: nous devons remesurer le chlore libre, dilué 1 + 4. Un chlore fort peut décolorer le test et sembler nul.</translation>
    </message>
    <message>
        <source>Bring a litre of the water for an overnight chlorine-demand test: what it needs is more than is safe to add by guess.</source>
        <translation>Apportez un litre de l’eau pour un test de demande en chlore sur une nuit&#xa0;: ce qu’il lui faut dépasse ce qu’il est sûr d’ajouter au jugé.</translation>
    </message>
    <message>
        <source>Bring a litre of the water for another demand test, with stronger bottles.</source>
        <translation>Apportez un litre de l’eau pour un autre test de demande, avec des flacons plus forts.</translation>
    </message>
    <message>
        <source>This water uses up too much chlorine to treat: bring another bottle once part of it has been changed, or ask a licensed operator.</source>
        <translation>Cette eau consomme trop de chlore pour être traitée&#xa0;: apportez un autre flacon une fois qu’une partie en aura été changée, ou demandez à un professionnel agréé.</translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department which procedure applies.</source>
        <translation>Ne laissez entrer personne et demandez à l’autorité sanitaire quelle procédure s’applique.</translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department.</source>
        <translation>Ne laissez entrer personne et consultez l’autorité sanitaire.</translation>
    </message>
    <message>
        <source>Keep everybody out; have a licensed operator clear the water.</source>
        <translation>Ne laissez entrer personne&#x202f;; faites clarifier l’eau par un professionnel agréé.</translation>
    </message>
    <message>
        <source>Hand these readings to the qualified operator.</source>
        <translation>Remettez ces mesures à l’exploitant qualifié.</translation>
    </message>
    <message>
        <source>Find out what keeps this water clean.</source>
        <translation>Renseignez-vous sur ce qui désinfecte cette eau.</translation>
    </message>
    <message>
        <source>Have the changeover done by somebody licensed.</source>
        <translation>Faites faire le changement par un professionnel agréé.</translation>
    </message>
    <message>
        <source>Dilute the sample where the method allows it, or use one of wider range, and read again.</source>
        <translation>Diluez l’échantillon si la méthode le permet, ou prenez-en une de plage plus large, et refaites la mesure.</translation>
    </message>
    <message>
        <source>Take a fresh bottle and read pH, alkalinity and stabilizer again.</source>
        <translation>Prenez un nouveau flacon et remesurez pH, alcalinité et stabilisant.</translation>
    </message>
    <message>
        <source>Always chemical into water, never water into chemical.</source>
        <translation>Toujours le produit dans l’eau, jamais l’eau dans le produit.</translation>
    </message>
    <message>
        <source>Irritates the eyes: goggles on.</source>
        <translation>Irrite les yeux&#xa0;: portez des lunettes de protection.</translation>
    </message>
    <message>
        <source>It gets hot when it dissolves: clean bucket, cool water first, small amounts.</source>
        <translation>Chauffe en se dissolvant&#xa0;: seau propre, eau froide d’abord, petites quantités.</translation>
    </message>
    <message>
        <source>Never in the same sock, skimmer, bucket or hour as strong chlorine.</source>
        <translation>Jamais dans la même chaussette, le même skimmer, le même seau ni la même heure qu’un chlore fort.</translation>
    </message>
    <message>
        <source>Burns skin and eyes, feeds fire: goggles, gloves, a dry scoop of its own, away from fuel and anything that burns.</source>
        <translation>Brûle la peau et les yeux, attise le feu&#xa0;: lunettes et gants de protection, pelle sèche réservée à cet usage, loin des carburants et de tout ce qui brûle.</translation>
    </message>
    <message>
        <source>Never wet the container or add a little water to the granules.</source>
        <translation>Ne mouillez jamais le contenant et ne versez jamais un peu d’eau sur les granulés.</translation>
    </message>
    <message>
        <source>Never let two kinds of chlorine, or chlorine and acid, meet, not even in a scoop: they can explode or give off gas.</source>
        <translation>Ne laissez jamais deux sortes de chlore, ni chlore et acide, se toucher, pas même dans une pelle&#xa0;: explosion ou gaz.</translation>
    </message>
    <message>
        <source>An empty shell can float up in wet ground, and a liner can shrink: no draining after heavy rain; ask a professional where the ground water is high.</source>
        <translation>Un bassin vide peut se soulever en sol détrempé, et un liner peut rétrécir&#xa0;: pas de vidange après de fortes pluies&#x202f;; consultez un professionnel si la nappe est haute.</translation>
    </message>
    <message>
        <source>Power off before draining.</source>
        <translation>Coupez le courant avant de vidanger.</translation>
    </message>
    <message>
        <source>The product&apos;s label and your local code come first.</source>
        <translation>L’étiquette du produit et la réglementation locale priment.</translation>
    </message>
    <message>
        <source>This is advice for a home; where in doubt ask a licensed operator.</source>
        <translation>Ces conseils valent pour un particulier&#x202f;; en cas de doute, consultez un professionnel agréé.</translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming. Leave at once, upwind; keep others out; call the emergency number from outside. Do not go back to air the room, add no water, move nothing.</source>
        <translation>Des produits ont été mélangés ou dégagent des vapeurs. Éloignez-vous aussitôt, en remontant le vent&#x202f;; tenez les autres à l’écart&#x202f;; appelez le numéro d’urgence depuis l’extérieur. N’y retournez pas pour aérer, n’ajoutez pas d’eau, ne déplacez rien.</translation>
    </message>
    <message>
        <source>After faeces, vomit, blood or a dead animal the health department&apos;s procedure applies, not a home plan. Keep everybody out until it is done.</source>
        <translation>Après des selles, du vomi, du sang ou un animal mort, c’est la procédure de l’autorité sanitaire qui s’applique, non un plan maison. Ne laissez entrer personne tant qu’elle n’est pas achevée.</translation>
    </message>
    <message>
        <source>Flood, sewage or illness can bring what no home treatment removes. Keep everybody out and ask the health department.</source>
        <translation>Inondation, eaux usées ou maladie peuvent apporter ce qu’aucun traitement domestique n’élimine. Ne laissez entrer personne et consultez l’autorité sanitaire.</translation>
    </message>
    <message>
        <source>The main drain cannot be seen, so nobody may swim and nobody could be found in the water. Close it off and have a licensed operator clear it.</source>
        <translation>La bonde de fond n’est pas visible&#xa0;: personne ne doit se baigner et personne ne pourrait être retrouvé dans l’eau. Fermez l’accès et faites clarifier l’eau par un professionnel agréé.</translation>
    </message>
    <message>
        <source>This water is open to others than the household. Local code and its qualified operator decide; here are the readings.</source>
        <translation>Cette eau est ouverte à d’autres que le foyer. La réglementation locale et son exploitant qualifié décident&#x202f;; voici les mesures.</translation>
    </message>
    <message>
        <source>What keeps this water clean is not known, and the wrong chemical can be dangerous. Ask which sanitizer is used, then come back.</source>
        <translation>On ne sait pas avec quoi cette eau est désinfectée, et le mauvais produit peut être dangereux. Demandez quel désinfectant est utilisé, puis revenez.</translation>
    </message>
    <message>
        <source>Biguanide and other sanitizers must not meet. Have the changeover done by somebody licensed before anything is added.</source>
        <translation>Le biguanide et les autres désinfectants ne doivent pas se rencontrer. Faites faire le changement par un professionnel agréé avant tout ajout.</translation>
    </message>
    <message>
        <source>pH, alkalinity or the sanitizer was beyond what the method can read or cannot be believed. Read it again, diluted or by a wider method; nothing is added until then.</source>
        <translation>Le pH, l’alcalinité ou le désinfectant dépassait ce que la méthode peut lire, ou n’est pas crédible. Refaites la mesure, diluée ou par une méthode plus large&#x202f;; rien n’est ajouté d’ici là.</translation>
    </message>
    <message>
        <source>The readings contradict each other. Take a fresh bottle and read them again; nothing is added until then.</source>
        <translation>Les mesures se contredisent. Prenez un nouveau flacon et refaites-les&#x202f;; rien n’est ajouté d’ici là.</translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation>%1&#xa0;oz liq.</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1&#xa0;gal</translation>
    </message>
    <message>
        <source>%1 gal and %2 fl oz</source>
        <translation>%1&#xa0;gal et %2&#xa0;oz liq.</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1&#xa0;lb</translation>
    </message>
    <message>
        <source>%1 lb %2 oz</source>
        <translation>%1&#xa0;lb %2&#xa0;oz</translation>
    </message>
    <message>
        <source>Do this %1 times, %2 apart.</source>
        <translation>Faites-le %1 fois, à %2 d’intervalle.</translation>
    </message>
    <message>
        <source>Burns skin and eyes, bleaches clothes, feeds fire: goggles and gloves on.</source>
        <translation>Brûle la peau et les yeux, décolore les vêtements, attise le feu&#xa0;: portez lunettes et gants de protection.</translation>
    </message>
    <message>
        <source>Burns skin and eyes: goggles and gloves on.</source>
        <translation>Brûle la peau et les yeux&#xa0;: portez lunettes et gants de protection.</translation>
    </message>
    <message>
        <source>Grains left lying bleach liner, paint and fibreglass: brush until they are gone.</source>
        <translation>Les grains qui restent décolorent liner, peinture et polyester&#xa0;: brossez jusqu’à disparition.</translation>
    </message>
    <message>
        <source>Raise borate: spread %1 of %2 over the water.</source>
        <translation>Remonter le borate&#xa0;: répandez %1 du produit «&#xa0;%2&#xa0;» sur l’eau.</translation>
    </message>
    <message>
        <source>Take down chlorine: add %1 of %2, half of what it would take; then read again.</source>
        <translation>Faire baisser le chlore&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;», la moitié de ce qu’il faudrait&#x202f;; puis refaites la mesure.</translation>
    </message>
    <message>
        <source>Add no chlorine; cover off and pump on: the sun brings it down by itself.</source>
        <translation>N’ajoutez pas de chlore&#x202f;; couverture retirée et pompe en marche&#xa0;: le soleil le fait baisser de lui-même.</translation>
    </message>
    <message>
        <source>Add no chlorine; cover off and pump on until it has come down by itself.</source>
        <translation>N’ajoutez pas de chlore&#x202f;; couverture retirée et pompe en marche jusqu’à ce qu’il ait baissé de lui-même.</translation>
    </message>
    <message>
        <source>Brush the new plaster all over, twice a day until it is 28 days old; no salt until then.</source>
        <translation>Brossez tout l’enduit neuf, deux fois par jour jusqu’à ses 28 jours&#x202f;; pas de sel d’ici là.</translation>
    </message>
    <message>
        <source>Pump the water and leaves off the cover before it comes off; none of it into the pool.</source>
        <translation>Pompez l’eau et retirez les feuilles de la couverture avant de l’enlever&#x202f;; rien dans la piscine.</translation>
    </message>
    <message>
        <source>For the winter: add %1 of %2, or as its label says.</source>
        <translation>Pour l’hiver&#xa0;: ajoutez %1 du produit «&#xa0;%2&#xa0;», ou selon son étiquette.</translation>
    </message>
    <message>
        <source>%1 stays at %2: no dose without the volume. Measure it first.</source>
        <translation>%1 reste à %2&#xa0;: pas de dose sans le volume. Mesurez-le d’abord.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the refilled water has been read: the fill water is not known.</source>
        <translation>%1 attend à %2 que l’eau soit mesurée après remplissage&#xa0;: l’eau de remplissage n’est pas connue.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the refilled water has been read.</source>
        <translation>%1 attend à %2 que l’eau soit mesurée après remplissage.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: high alkalinity at low pH comes down only by turns of acid and air, over days. Bring another bottle for the next turn.</source>
        <translation>%1 restera à %2&#xa0;: une alcalinité haute à pH bas ne descend que par tours d’acide et d’air, sur plusieurs jours. Apportez un autre flacon pour le tour suivant.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: the next bottle decides the next dose.</source>
        <translation>%1 restera à %2&#xa0;: le prochain flacon décide de la prochaine dose.</translation>
    </message>
    <message>
        <source>%1 still reads %2: a binder keeps it from staining but does not take it out. Find where it comes from.</source>
        <translation>%1 se lit encore à %2&#xa0;: un séquestrant l’empêche de tacher mais ne l’enlève pas. Cherchez d’où cela vient.</translation>
    </message>
    <message>
        <source>%1 stands at %2 and falls by itself: add none, then read again.</source>
        <translation>%1 est à %2 et baisse seul&#xa0;: n’en ajoutez pas, puis refaites la mesure.</translation>
    </message>
    <message>
        <source>%1 stays at %2: nothing on a shelf takes it out, only other water does.</source>
        <translation>%1 reste à %2&#xa0;: aucun produit ne l’enlève, seule une autre eau le fait.</translation>
    </message>
    <message>
        <source>%1 stays at %2: the fill water holds too much of it itself. Other fill water would help.</source>
        <translation>%1 reste à %2&#xa0;: l’eau de remplissage en contient elle-même trop. Une autre eau de remplissage aiderait.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: one part of the water more has to be changed, after the next bottle.</source>
        <translation>%1 restera à %2&#xa0;: une autre part de l’eau est à changer, après le prochain flacon.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the plaster is 28 days old.</source>
        <translation>%1 attend à %2 les 28 jours de l’enduit.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the pool is opened again.</source>
        <translation>%1 attend à %2 la remise en route de la piscine.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until chlorine holds overnight.</source>
        <translation>%1 attend à %2 que le chlore tienne la nuit.</translation>
    </message>
    <message>
        <source>%1 stays at %2: pH, alkalinity and stabilizer must be read again before a dose.</source>
        <translation>%1 reste à %2&#xa0;: pH, alcalinité et stabilisant sont à mesurer de nouveau avant une dose.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: what would move it is neither on the shelf nor at home.</source>
        <translation>%1 restera à %2&#xa0;: ce qui le corrigerait n’est ni en rayon ni à la maison.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: no dose brings it nearer without taking another reading out of its range.</source>
        <translation>%1 restera à %2&#xa0;: aucune dose ne l’approche sans sortir une autre mesure de sa plage.</translation>
    </message>
    <message>
        <source>%1 waits at %2 for an overnight chlorine-demand test.</source>
        <translation>%1 attend à %2 un test de demande en chlore sur une nuit.</translation>
    </message>
    <message>
        <source>%1 waits at %2 for another demand test.</source>
        <translation>%1 attend à %2 un autre test de demande.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until part of the water has been changed.</source>
        <translation>%1 attend à %2 qu’une part de l’eau soit changée.</translation>
    </message>
    <message>
        <source>%1 was read as %2 and must be read again before a dose.</source>
        <translation>%1&#xa0;: mesure de %2, à refaire avant une dose.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until it has been read again, diluted.</source>
        <translation>%1 attend à %2 une nouvelle mesure, diluée.</translation>
    </message>
    <message>
        <source>Step %1: a change needs a name and a reason.</source>
        <translation>Étape %1&#xa0;: un changement demande un nom et une raison.</translation>
    </message>
    <message>
        <source>Step %1 is not in this plan.</source>
        <translation>L’étape %1 n’est pas dans ce plan.</translation>
    </message>
    <message>
        <source>Step %1 cannot be changed to that: it would do something else.</source>
        <translation>L’étape %1 ne peut pas être changée ainsi&#xa0;: elle ferait autre chose.</translation>
    </message>
    <message>
        <source>Step %1: that product is neither on the shelf nor at home.</source>
        <translation>Étape %1&#xa0;: ce produit n’est ni en rayon ni à la maison.</translation>
    </message>
    <message>
        <source>Step %1: that product may never go into this water, or never beside another step.</source>
        <translation>Étape %1&#xa0;: ce produit ne doit jamais aller dans cette eau, ou jamais à côté d’une autre étape.</translation>
    </message>
    <message>
        <source>Step %1: the product&apos;s label decides this dose.</source>
        <translation>Étape %1&#xa0;: l’étiquette du produit décide de cette dose.</translation>
    </message>
    <message>
        <source>Step %1: that is more than one step may hold.</source>
        <translation>Étape %1&#xa0;: c’est plus qu’une étape ne peut contenir.</translation>
    </message>
    <message>
        <source>Refused: in %2 of 100 draws step %1 could do harm (pH below 7.0 or above 8.2, or too much chlorine).</source>
        <translation>Refusé&#xa0;: dans %2 simulations sur 100, l’étape %1 pourrait nuire (pH sous 7,0 ou au-dessus de 8,2, ou trop de chlore).</translation>
    </message>
    <message>
        <source>Calcium saturation in the vessel</source>
        <translation>Saturation en calcaire dans le bassin</translation>
    </message>
    <message>
        <source>%1 stands at %2, at the edge of its range: by less than the error of the reading. Read it again with the next bottle.</source>
        <translation>%1 est à %2, à la limite de sa plage : l’écart est plus petit que l’erreur de la mesure. À mesurer de nouveau avec le prochain flacon.</translation>
    </message>
    <message>
        <source>The sanitizer&apos;s reading cannot be believed yet, so nobody knows whether the water is safe.</source>
        <translation>La mesure du désinfectant ne peut pas encore être crue : personne ne sait si l’eau est sûre.</translation>
    </message>
    <message>
        <source>Take out the bromine tablets; cover off and pump on until bromine has come down by itself.</source>
        <translation>Retirez les pastilles de brome ; couverture ôtée et pompe en marche jusqu&apos;à ce que le brome soit redescendu de lui-même.</translation>
    </message>
    <message>
        <source>Bring another bottle: a reading has to be taken again before anything is dosed.</source>
        <translation>Apportez un autre flacon : une mesure est à refaire avant de doser quoi que ce soit.</translation>
    </message>
    <message>
        <source>So little working sanitizer explains it.</source>
        <translation>Si peu de désinfectant actif l’explique.</translation>
    </message>
    <message>
        <source>Calcium coming out of the water explains it.</source>
        <translation>Le calcaire qui se sépare de l’eau l’explique.</translation>
    </message>
    <message>
        <source>The readings do not explain it: look at the filter, its pressure and its running time first.</source>
        <translation>Les mesures ne l’expliquent pas : voyez d’abord le filtre, sa pression et sa durée de marche.</translation>
    </message>
    <message>
        <source>Dissolved metal was found too, which greens clear water: look whether walls are slippery.</source>
        <translation>Du métal dissous a aussi été trouvé, qui verdit une eau claire : voyez si les parois glissent.</translation>
    </message>
    <message>
        <source>The sanitizer reads in order, which does not fit: if the water is clear and green, have iron and copper read.</source>
        <translation>Le désinfectant est en ordre, ce qui ne concorde pas : si l’eau est verte mais claire, faites mesurer fer et cuivre.</translation>
    </message>
    <message>
        <source>The readings explain it.</source>
        <translation>Les mesures l’expliquent.</translation>
    </message>
    <message>
        <source>pH and chlorine read in order, which does not fit: read pH again, and ask who else has it.</source>
        <translation>Le pH et le chlore sont en ordre, ce qui ne concorde pas : remesurez le pH et demandez qui d’autre en souffre.</translation>
    </message>
    <message>
        <source>The reading shows it too.</source>
        <translation>La mesure le montre aussi.</translation>
    </message>
    <message>
        <source>Little copper shows in the water now; it may have been taken up before.</source>
        <translation>Il y a peu de cuivre dans l’eau à présent ; cela peut venir d’avant.</translation>
    </message>
    <message>
        <source>Dissolved metal was found, which explains new ones.</source>
        <translation>Du métal dissous a été trouvé, ce qui explique les taches nouvelles.</translation>
    </message>
    <message>
        <source>No metal shows in the water now.</source>
        <translation>Aucun métal ne se voit dans l’eau à présent.</translation>
    </message>
    <message>
        <source>This water dissolves scale, which does not fit: it may be old, or no scale.</source>
        <translation>Cette eau dissout le tartre, ce qui ne concorde pas : il est peut-être ancien, ou ce n’en est pas.</translation>
    </message>
    <message>
        <source>The sanitizer reads in order, which does not fit: brush first, it may not reach the walls.</source>
        <translation>Le désinfectant est en ordre, ce qui ne concorde pas : brossez d’abord, il n’atteint peut-être pas les parois.</translation>
    </message>
    <message>
        <source>less than one tablet</source>
        <translation>moins d’une pastille</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, past %2 by less than its error: at the edge. No treatment is begun for it alone.</source>
        <translation>L’indice de saturation dans le bassin est de %1, au-delà de %2 de moins que son erreur : à la limite. Aucun traitement n’est commencé pour cela seul.</translation>
    </message>
    <message>
        <source>%1 is %2, below %3 by less than the error of the reading: at the edge. Read it again; no treatment is begun for it alone.</source>
        <translation>%1 est de %2, au-dessous de %3 de moins que l’erreur de la mesure : à la limite. À relire ; aucun traitement n’est commencé pour cela seul.</translation>
    </message>
    <message>
        <source>%1 is %2, above %3 by less than the error of the reading: at the edge. Read it again; no treatment is begun for it alone.</source>
        <translation>%1 est de %2, au-dessus de %3 de moins que l’erreur de la mesure : à la limite. À relire ; aucun traitement n’est commencé pour cela seul.</translation>
    </message>
    <message>
        <source>Raise bromine: %1 is missing of %2, so drop none in: open the feeder one mark further and test bromine tomorrow, before anybody gets in.</source>
        <translation>Monter le brome : il manque %1 de %2, n’en mettez donc aucune : ouvrez le doseur d’un cran de plus et mesurez le brome demain, avant que quiconque n’entre.</translation>
    </message>
    <message>
        <source>Total chlorine is %1; with this free chlorine %2 is the most. The rest is spent chlorine, which stings and smells.</source>
        <translation>Le chlore total est à %1&#x202f;; avec ce chlore libre, le maximum est %2. Le reste est du chlore épuisé, qui pique et sent.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart and scale can form.</source>
        <translation>Le pH est à %1&#x202f;; il devrait être au plus à %2. Les yeux piquent et du tartre peut se former.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart, scale can form, and bromine works less.</source>
        <translation>Le pH est à %1&#x202f;; il devrait être au plus à %2. Les yeux piquent, du tartre peut se former et le brome agit moins.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at most %2. pH is low at once: air raises pH first, then acid takes alkalinity down.</source>
        <translation>L’alcalinité totale est à %1&#x202f;; elle devrait être au plus à %2. Le pH est bas en même temps&#xa0;: l’air relève d’abord le pH, puis l’acide fait baisser l’alcalinité.</translation>
    </message>
    <message>
        <source>The water is at %1; %2 is the most that is safe to sit in.</source>
        <translation>L’eau est à %1&#x202f;; %2 est le maximum pour y rester sans danger.</translation>
    </message>
    <message>
        <source>The water smells strongly.</source>
        <translation>L’eau sent fort.</translation>
    </message>
    <message>
        <source>%1 is %2, below %3 by less than the error of the reading: at the edge. It is mended along with the rest.</source>
        <translation>%1&#xa0;: %2, sous %3 de moins que l’erreur de la mesure&#xa0;: à la limite. C’est corrigé avec le reste.</translation>
    </message>
    <message>
        <source>%1 is %2, above %3 by less than the error of the reading: at the edge. It is mended along with the rest.</source>
        <translation>%1&#xa0;: %2, au-dessus de %3 de moins que l’erreur de la mesure&#xa0;: à la limite. C’est corrigé avec le reste.</translation>
    </message>
    <message>
        <source>Raise pH: stir %1 of %2 into a bucket of pool water and pour it round the edge, pump running.</source>
        <translation>Relever le pH&#xa0;: diluer %1 de %2 dans un seau d’eau du bassin et verser tout autour du bord, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise pH and alkalinity together: stir %1 of %2 into a bucket of pool water and pour it round the edge, pump running.</source>
        <translation>Relever ensemble le pH et l’alcalinité&#xa0;: diluer %1 de %2 dans un seau d’eau du bassin et verser tout autour du bord, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise bromine: sprinkle %1 of %2 over the moving water, jets or pump on for an hour.</source>
        <translation>Relever le brome&#xa0;: répandre %1 de %2 sur l’eau en mouvement, jets ou pompe en marche une heure.</translation>
    </message>
    <message>
        <source>Raise the sanitizer: pour %1 of %2 in front of a return, pump running.</source>
        <translation>Relever le désinfectant&#xa0;: verser %1 de %2 devant un refoulement, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise peroxide: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Relever le peroxyde&#xa0;: verser lentement %1 de %2 devant un refoulement, pompe en marche.</translation>
    </message>
    <message>
        <source>Bind the metals before any other chemical goes in: pour %1 of %2 in front of a return, or as its label says.</source>
        <translation>Fixer les métaux avant tout autre produit&#xa0;: versez %1 de %2 devant un refoulement, ou selon l’étiquette.</translation>
    </message>
    <message>
        <source>Let out %5 of the water by its drain or a sump pump and fill up again. Pump, heater and generator off before, on again once it is full.</source>
        <translation>Vider %5 de l’eau par la bonde ou avec une pompe vide-cave, puis remplir. Pompe, chauffage et électrolyseur arrêtés avant, remis en marche une fois plein.</translation>
    </message>
    <message>
        <source>Let pH rise by air for about %6: turn the returns up until they break the surface; fountain, jets and air on. Stop as soon as a test shows pH %8.</source>
        <translation>Laisser le pH remonter par l’air pendant environ %6&#xa0;: orienter les refoulements vers le haut jusqu’à briser la surface&#x202f;; fontaine, jets et air en marche. Arrêter dès qu’un test montre un pH de %8.</translation>
    </message>
    <message>
        <source>Heater off; let the water cool to %7 or less before anybody gets in.</source>
        <translation>Chauffage arrêté&#x202f;; laisser l’eau refroidir à %7 ou moins avant que quiconque entre.</translation>
    </message>
    <message>
        <source>Acid burns: goggles and gloves on, the wind at your back, nobody downwind of you. Never with or near chlorine.</source>
        <translation>L’acide brûle&#xa0;: lunettes et gants, le vent dans le dos, personne devant vous sous le vent. Jamais avec du chlore ni près de lui.</translation>
    </message>
    <message>
        <source>Ask the town where the water may go: many want no chlorine in it, and none wants salt water in a storm drain.</source>
        <translation>Demander à la commune où l’eau peut aller&#xa0;: beaucoup la veulent sans chlore, et aucune ne veut d’eau salée à l’égout pluvial.</translation>
    </message>
    <message>
        <source>Without stabilizer the sun takes it within a day.</source>
        <translation>Sans stabilisant, le soleil le détruit en une journée.</translation>
    </message>
    <message>
        <source>Cover off, and stay out of the vapour over the water.</source>
        <translation>Couverture enlevée, et rester hors des vapeurs au-dessus de l’eau.</translation>
    </message>
    <message>
        <source>This water runs on biguanide: no chlorine, bromine, copper or monopersulfate may go in, not even as a shock.</source>
        <translation>Cette eau est traitée à la biguanide&#xa0;: ni chlore, ni brome, ni cuivre, ni monopersulfate, même en choc.</translation>
    </message>
    <message>
        <source>This water runs on bromine: no stabilizer, and no product that holds any.</source>
        <translation>Cette eau est traitée au brome&#xa0;: pas de stabilisant, ni de produit qui en contient.</translation>
    </message>
    <message>
        <source>Pump and filter run from now on, day and night, until the water is clear.</source>
        <translation>Pompe et filtre en marche dès maintenant, jour et nuit, jusqu’à ce que l’eau soit claire.</translation>
    </message>
    <message>
        <source>The hours are the earliest. Later is fine: keep the order and the hours in between.</source>
        <translation>Ces heures sont un minimum. Plus tard convient&#xa0;: garder l’ordre et les délais.</translation>
    </message>
    <message>
        <source>Keep everybody out until the operator of this water says otherwise.</source>
        <translation>Personne dans l’eau jusqu’à ce que l’exploitant de cette eau en décide autrement.</translation>
    </message>
    <message>
        <source>Never mix chemicals. Each goes into the water by itself, pump running.</source>
        <translation>Ne jamais mélanger de produits. Chacun va seul dans l’eau, pompe en marche.</translation>
    </message>
    <message>
        <source>Test again before any treatment that is not on this sheet.</source>
        <translation>Refaire un test avant tout traitement qui n’est pas sur cette feuille.</translation>
    </message>
    <message>
        <source>about %1 gallons</source>
        <translation>environ %1 gallons</translation>
    </message>
    <message>
        <source>about %1 litres</source>
        <translation>environ %1 litres</translation>
    </message>
    <message>
        <source>about %1 m³</source>
        <translation>environ %1 m³</translation>
    </message>
    <message>
        <source>%1 oz by weight</source>
        <translation>%1 oz en poids</translation>
    </message>
    <message>
        <source>%1 still reads %2, and the fill water brings it: fill through a filter for metals.</source>
        <translation>%1 reste à %2, et l’eau de remplissage en apporte&#xa0;: remplir à travers un filtre à métaux.</translation>
    </message>
    <message>
        <source>%1 stays at %2: it is taken out once chlorine holds and the water is clear.</source>
        <translation>%1 reste à %2&#xa0;: on l’enlève une fois que le chlore tient et que l’eau est claire.</translation>
    </message>
    <message>
        <source>%1 waits at %2: another reading may call for new water, and this would go out with it.</source>
        <translation>%1 attend à %2&#xa0;: une autre mesure peut demander de l’eau neuve, et ceci partirait avec l’ancienne.</translation>
    </message>
    <message>
        <source>%1 stays at %2: acid would do young plaster more harm.</source>
        <translation>%1 reste à %2&#xa0;: l’acide ferait plus de mal à l’enduit jeune.</translation>
    </message>
    <message>
        <source>Whether the sanitizer explains it, its next reading shows.</source>
        <translation>Si le désinfectant l’explique, sa prochaine mesure le dira.</translation>
    </message>
    <message>
        <source>It is mostly spent chlorine that smells, and the readings show none: read free and total again.</source>
        <translation>C’est surtout le chlore épuisé qui sent, et les mesures n’en montrent pas&#xa0;: relire le libre et le total.</translation>
    </message>
    <message>
        <source>Make room for pH, which a later step raises: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Donner de la marge au pH, qu’une étape suivante relève&#xa0;: versez %1 de %2 lentement devant un refoulement, pompe en marche.</translation>
    </message>
    <message>
        <source>Raise salt: generator off first. Spread %1 of %2 over the water, pump running, and brush until it is gone. Generator on again a day later.</source>
        <translation>Relever le sel&#xa0;: arrêtez d’abord l’électrolyseur. Répandez %1 de %2 sur l’eau, pompe en marche, et brossez jusqu’à disparition. Électrolyseur remis en marche un jour plus tard.</translation>
    </message>
    <message>
        <source>Burn off the spent chlorine: have all of it at hand, then pour %1 of %2 low in front of a return, pump running, all in one go. Less would make matters worse.</source>
        <translation>Brûler le chlore épuisé&#xa0;: ayez tout sous la main, puis versez %1 de %2 au ras de l’eau devant un refoulement, pompe en marche, en une seule fois. Moins aggraverait les choses.</translation>
    </message>
    <message>
        <source>Kill the algae: add %1 of %2 where the water moves, pump running, all in one go; leave it overnight.</source>
        <translation>Tuer les algues&#xa0;: ajoutez %1 de %2 là où l’eau bouge, pompe en marche, en une seule fois&#x202f;; laissez agir la nuit.</translation>
    </message>
    <message>
        <source>Meet what the water uses up: add %1 of %2 where the water moves, pump running, all in one go; leave it overnight.</source>
        <translation>Couvrir ce que l’eau consomme&#xa0;: ajoutez %1 de %2 là où l’eau bouge, pompe en marche, en une seule fois&#x202f;; laissez agir la nuit.</translation>
    </message>
    <message>
        <source>Take tablets out of skimmer and feeder, pump off while it is open. Other chlorine goes in only where a step of this sheet says so.</source>
        <translation>Retirez les galets du skimmer et du doseur, pompe arrêtée tant qu’il est ouvert. Un autre chlore n’entre que là où une étape de cette fiche le dit.</translation>
    </message>
    <message>
        <source>Leave at once, away from the fumes and upwind, keep others out and call the emergency number from outside.</source>
        <translation>Sortez aussitôt, en vous écartant des vapeurs puis en remontant le vent, tenez les autres à distance et appelez le numéro d’urgence de l’extérieur.</translation>
    </message>
    <message>
        <source>With acid it gives off chlorine gas: never the same jug, bucket, spot or hour.</source>
        <translation>Avec un acide il dégage du chlore gazeux&#xa0;: jamais le même récipient, seau, endroit ni la même heure.</translation>
    </message>
    <message>
        <source>Generator off before, and on again only a day after.</source>
        <translation>Électrolyseur arrêté avant, et remis en marche seulement un jour après.</translation>
    </message>
    <message>
        <source>Where its label names another amount for this much water, the label&apos;s counts.</source>
        <translation>Si son étiquette indique une autre quantité pour ce volume d’eau, c’est elle qui compte.</translation>
    </message>
    <message>
        <source>Feeds fire: nothing else in the jug, never back into its container, spills rinsed with much water, away from rags, wood and fuel.</source>
        <translation>Attise le feu&#xa0;: rien d’autre dans le récipient gradué, jamais de retour dans son bidon, rincer à grande eau ce qui est renversé, loin des chiffons, du bois et des carburants.</translation>
    </message>
    <message>
        <source>So little wants a syringe, a measuring spoon or a scale that shows tenths of a gram; ask us for one.</source>
        <translation>Si peu se mesure à la seringue, à la cuillère doseuse ou sur une balance au dixième de gramme&#x202f;; demandez-nous.</translation>
    </message>
    <message>
        <source>A feeder can spit gas: pump off, valves shut, face away, goggles and gloves on. Damp tablets go into a clean, dry plastic bucket by themselves, open, outdoors in the shade, away from rain and children: never into a closed box, never on another product.</source>
        <translation>Un doseur peut cracher du gaz&#xa0;: pompe arrêtée, vannes fermées, visage à l’écart, lunettes et gants de protection. Les galets humides vont seuls dans un seau en plastique propre et sec, ouvert, dehors à l’ombre, loin de la pluie et des enfants&#xa0;: jamais dans une boîte fermée ni sur un autre produit.</translation>
    </message>
    <message>
        <source>So many small doses: ask us whether emptying and filling up, power off, is quicker.</source>
        <translation>Tant de petites doses&#xa0;: demandez-nous si vider et remplir, courant coupé, est plus rapide.</translation>
    </message>
    <message>
        <source>Indoors: cover off, doors and windows open, nobody else in the room; once it is in, leave until the smell is gone.</source>
        <translation>À l’intérieur&#xa0;: bâche retirée, portes et fenêtres ouvertes, personne d’autre dans la pièce&#x202f;; une fois versé, sortez jusqu’à ce que l’odeur soit partie.</translation>
    </message>
    <message>
        <source>This sheet is for the water alone. Water level, emptying the pipes, frost protection and the cover come after it, as the makers&apos; manuals say.</source>
        <translation>Cette fiche ne traite que l’eau. Le niveau, la vidange des tuyaux, la mise hors gel et la bâche viennent après, selon les notices des fabricants.</translation>
    </message>
    <message>
        <source>Where water stood on the pump, a light or a socket: touch nothing, have an electrician look first. Leaves and mud out before the first dose.</source>
        <translation>Là où l’eau a couvert la pompe, une lampe ou une prise&#xa0;: ne touchez à rien, faites d’abord venir un électricien. Feuilles et boue dehors avant la première dose.</translation>
    </message>
    <message>
        <source>Trouble breathing: fresh air, and call %1. Chemical in the eyes: rinse at once for 15 minutes, then call as said under &quot;If something goes wrong&quot;.</source>
        <translation>Difficulté à respirer&#xa0;: air frais, et appelez le %1. Produit dans les yeux&#xa0;: rincez aussitôt 15 minutes, puis appelez comme indiqué sous «&#xa0;En cas de problème&#xa0;».</translation>
    </message>
    <message>
        <source>Sun and bathers use chlorine up: from the evening after this dose until the next bottle, test it every evening with a kit or strips; where it is below %1 mg/L, add %2 of %3 at dusk, once an evening.</source>
        <translation>Le soleil et les baigneurs consomment le chlore&#xa0;: dès le soir suivant cette dose et jusqu’au prochain flacon, mesurez-le chaque soir avec une trousse ou des bandelettes&#x202f;; s’il est sous %1 mg/L, ajoutez %2 de %3 au crépuscule, une fois par soir.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: with the error of the readings more of a dose could do harm, so it was made smaller or left out. Bring another bottle: the rest is worked out from it.</source>
        <translation>%1 sera à %2&#xa0;: avec l’erreur des mesures, une dose plus forte pourrait nuire&#x202f;; elle a été réduite ou omise. Apportez un autre flacon&#xa0;: le reste en sera calculé.</translation>
    </message>
    <message>
        <source>%1 stays at %2 until free chlorine has been read again; no dose before.</source>
        <translation>%1 reste à %2 tant que le chlore libre n’a pas été relu&#x202f;; aucune dose avant.</translation>
    </message>
    <message>
        <source>That is spent (combined) chlorine, not too much fresh chlorine.</source>
        <translation>C’est du chlore épuisé (combiné), non un excès de chlore frais.</translation>
    </message>
    <message>
        <source>Before the pump runs: cover off and away, plugs out and fittings in, water up to the middle of the skimmer, pump primed; fence and gate closed from then on.</source>
        <translation>Avant que la pompe tourne&#xa0;: bâche retirée et rangée, bouchons ôtés et pièces remises, eau à mi-hauteur du skimmer, pompe amorcée&#x202f;; barrière et portillon fermés dès lors.</translation>
    </message>
    <message>
        <source>Nobody in the water while dosing, for %1 after a dose, nor before the time on this sheet.</source>
        <translation>Personne dans l’eau pendant le dosage, ni pendant %1 après une dose, ni avant l’heure de cette feuille.</translation>
    </message>
</context>
<context>
    <name>printer</name>
    <message>
        <source>No printer is set up on this machine. The sheet can be saved as a file.</source>
        <translation>Aucune imprimante n’est installée sur cette machine. La fiche peut être enregistrée comme fichier.</translation>
    </message>
    <message>
        <source>Paper is jammed in the printer.</source>
        <translation>Du papier est coincé dans l’imprimante.</translation>
    </message>
    <message>
        <source>The print service does not answer for this sheet.</source>
        <translation>Le service d’impression ne répond pas pour cette fiche.</translation>
    </message>
    <message>
        <source>The print service says nothing of this sheet.</source>
        <translation>Le service d’impression ne dit rien de cette fiche.</translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheet: %2</source>
        <translation>L’imprimante %1 n’a pas pris la fiche&#xa0;: %2</translation>
    </message>
    <message>
        <source>The printer %1 takes no jobs at present.</source>
        <translation>L’imprimante %1 n’accepte pas de travaux pour le moment.</translation>
    </message>
    <message>
        <source>The printer does not answer yet: is it switched on?</source>
        <translation>L’imprimante ne répond pas encore&#xa0;: est-elle allumée&#x202f;?</translation>
    </message>
    <message>
        <source>The printer does not answer: is it switched on?</source>
        <translation>L’imprimante ne répond pas&#xa0;: est-elle allumée&#x202f;?</translation>
    </message>
    <message>
        <source>The printer gave the sheet up. Print it again?</source>
        <translation>L’imprimante a abandonné la fiche. L’imprimer à nouveau&#x202f;?</translation>
    </message>
    <message>
        <source>The printer has stopped.</source>
        <translation>L’imprimante s’est arrêtée.</translation>
    </message>
    <message>
        <source>The printer is out of ink or ribbon.</source>
        <translation>L’imprimante n’a plus d’encre ou de ruban.</translation>
    </message>
    <message>
        <source>The printer is out of paper.</source>
        <translation>L’imprimante n’a plus de papier.</translation>
    </message>
    <message>
        <source>The printer is out of toner.</source>
        <translation>L’imprimante n’a plus de toner.</translation>
    </message>
    <message>
        <source>The printer is paused.</source>
        <translation>L’imprimante est en pause.</translation>
    </message>
    <message>
        <source>The printer is switched off or unplugged.</source>
        <translation>L’imprimante est éteinte ou débranchée.</translation>
    </message>
    <message>
        <source>The printer is switched off.</source>
        <translation>L’imprimante est éteinte.</translation>
    </message>
    <message>
        <source>The printer wants paper.</source>
        <translation>L’imprimante demande du papier.</translation>
    </message>
    <message>
        <source>The printer&apos;s cover is open.</source>
        <translation>Le capot de l’imprimante est ouvert.</translation>
    </message>
    <message>
        <source>The printer&apos;s door is open.</source>
        <translation>La porte de l’imprimante est ouverte.</translation>
    </message>
    <message>
        <source>The sheet comes out by itself once that is mended: do not print it again.</source>
        <translation>La fiche sortira d’elle-même une fois cela réglé&#xa0;: ne pas l’imprimer à nouveau.</translation>
    </message>
    <message>
        <source>The sheet is printed.</source>
        <translation>La fiche est imprimée.</translation>
    </message>
    <message>
        <source>The sheet is printing.</source>
        <translation>La fiche s’imprime.</translation>
    </message>
    <message>
        <source>The sheet waits for the printer.</source>
        <translation>La fiche attend l’imprimante.</translation>
    </message>
    <message>
        <source>The sheet was cancelled. Print it again?</source>
        <translation>La fiche a été annulée. L’imprimer à nouveau&#x202f;?</translation>
    </message>
    <message>
        <source>There is no printer named %1 on this machine.</source>
        <translation>Il n’y a pas d’imprimante nommée %1 sur cette machine.</translation>
    </message>
</context>
<context>
    <name>product</name>
    <message>
        <source>Algaecide 60 % (polyquat)</source>
        <translation>Algicide 60&#xa0;% (polyquat)</translation>
    </message>
    <message>
        <source>Bicarbonate powder (sodium bicarbonate 99 %)</source>
        <translation>Bicarbonate en poudre (bicarbonate de sodium 99&#xa0;%)</translation>
    </message>
    <message>
        <source>Biguanide sanitizer 20 %</source>
        <translation>Désinfectant au biguanide 20&#xa0;%</translation>
    </message>
    <message>
        <source>Borax decahydrate</source>
        <translation>Borax décahydraté</translation>
    </message>
    <message>
        <source>Boric acid 99.5 %</source>
        <translation>Acide borique 99,5&#xa0;%</translation>
    </message>
    <message>
        <source>Bromine tablets (BCDMH 96 %)</source>
        <translation>Pastilles de brome (BCDMH 96&#xa0;%)</translation>
    </message>
    <message>
        <source>Calcium flake 77 %</source>
        <translation>Chlorure de calcium en paillettes 77&#xa0;%</translation>
    </message>
    <message>
        <source>Granular chlorine (calcium hypochlorite 65 %)</source>
        <translation>Chlore en granulés (hypochlorite de calcium 65&#xa0;%)</translation>
    </message>
    <message>
        <source>Clarifier</source>
        <translation>Clarifiant</translation>
    </message>
    <message>
        <source>Stabilised granules (dichlor 55 %)</source>
        <translation>Granulés stabilisés (dichlore 55&#xa0;%)</translation>
    </message>
    <message>
        <source>Acid granules (sodium bisulfate 93.2 %)</source>
        <translation>Acide en granulés (bisulfate de sodium 93,2&#xa0;%)</translation>
    </message>
    <message>
        <source>Floc (alum)</source>
        <translation>Floculant (alun)</translation>
    </message>
    <message>
        <source>Liquid chlorine 10 % trade</source>
        <translation>Chlore liquide 10&#xa0;% commercial</translation>
    </message>
    <message>
        <source>Liquid chlorine 12.5 % trade</source>
        <translation>Chlore liquide 12,5&#xa0;% commercial</translation>
    </message>
    <message>
        <source>Metal binder</source>
        <translation>Séquestrant de métaux</translation>
    </message>
    <message>
        <source>Chlorine-free oxidiser (triple salt, 43 % KHSO5)</source>
        <translation>Oxydant sans chlore (sel triple, 43&#xa0;% KHSO5)</translation>
    </message>
    <message>
        <source>Pool acid, half strength 14.5 %</source>
        <translation>Acide chlorhydrique dilué 14,5&#xa0;%</translation>
    </message>
    <message>
        <source>Pool acid 31.45 %</source>
        <translation>Acide chlorhydrique 31,45&#xa0;%</translation>
    </message>
    <message>
        <source>Peroxide 27 %</source>
        <translation>Peroxyde 27&#xa0;%</translation>
    </message>
    <message>
        <source>Phosphate remover (lanthanum chloride 20 %)</source>
        <translation>Anti-phosphates (chlorure de lanthane 20&#xa0;%)</translation>
    </message>
    <message>
        <source>Pool salt 99.5 %</source>
        <translation>Sel pour piscine 99,5&#xa0;%</translation>
    </message>
    <message>
        <source>Sesquicarbonate powder 98 %</source>
        <translation>Sesquicarbonate en poudre 98&#xa0;%</translation>
    </message>
    <message>
        <source>Soda ash powder 99 %</source>
        <translation>Carbonate de sodium en poudre 99&#xa0;%</translation>
    </message>
    <message>
        <source>Bromide salt 98 %</source>
        <translation>Sel de bromure 98&#xa0;%</translation>
    </message>
    <message>
        <source>Stabilizer granules 99 %</source>
        <translation>Stabilisant en granulés 99&#xa0;%</translation>
    </message>
    <message>
        <source>Chlorine remover (sodium sulfite 97 %)</source>
        <translation>Neutralisant de chlore (sulfite de sodium 97&#xa0;%)</translation>
    </message>
    <message>
        <source>Chlorine remover (sodium thiosulfate pentahydrate)</source>
        <translation>Neutralisant de chlore (thiosulfate de sodium pentahydraté)</translation>
    </message>
    <message>
        <source>Stabilised tablets (trichlor 90 %)</source>
        <translation>Galets stabilisés (trichlore 90&#xa0;%)</translation>
    </message>
    <message>
        <source>Ascorbic acid 99 %</source>
        <translation>Acide ascorbique 99&#xa0;%</translation>
    </message>
    <message>
        <source>Bromine grains (BCDMH 96 %)</source>
        <translation>Brome en grains (BCDMH 96 %)</translation>
    </message>
</context>
<context>
    <name>products</name>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>Percent by weight</source>
        <translation>Pourcentage en poids</translation>
    </message>
    <message>
        <source>Trade percent of chlorine</source>
        <translation>Pourcentage commercial de chlore</translation>
    </message>
    <message>
        <source>Percent available chlorine</source>
        <translation>Pourcentage de chlore disponible</translation>
    </message>
    <message>
        <source>A new one</source>
        <translation>Un nouveau</translation>
    </message>
    <message>
        <source>Which product</source>
        <translation>Quel produit</translation>
    </message>
    <message>
        <source>Name, as on the shelf</source>
        <translation>Nom, comme au rayon</translation>
    </message>
    <message>
        <source>Barcode; it may be scanned</source>
        <translation>Code-barres ; il peut être scanné</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Ce qu’il contient</translation>
    </message>
    <message>
        <source>Percent on the label</source>
        <translation>Pourcentage sur l’étiquette</translation>
    </message>
    <message>
        <source>Density, kg/L; empty: from its strength</source>
        <translation>Densité, kg/L ; vide : d’après sa concentration</translation>
    </message>
    <message>
        <source>The percent means</source>
        <translation>Le pourcentage signifie</translation>
    </message>
    <message>
        <source>It is poured, not weighed</source>
        <translation>Il se verse, ne se pèse pas</translation>
    </message>
    <message>
        <source>Price of a litre or kilogram</source>
        <translation>Prix du litre ou du kilogramme</translation>
    </message>
    <message>
        <source>Packs, L or kg, with ; between</source>
        <translation>Emballages, L ou kg, séparés par ;</translation>
    </message>
    <message>
        <source>Label’s dose, mL or g a m³</source>
        <translation>Dose de l’étiquette, mL ou g par m³</translation>
    </message>
    <message>
        <source>Label’s own cautions, with ; between</source>
        <translation>Précautions de l’étiquette, séparées par ;</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Au rayon</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Pas gardé : %1</translation>
    </message>
    <message>
        <source>%1 is off the shelf: no plan names it.</source>
        <translation>%1 n’est plus au rayon : aucun plan ne le nomme.</translation>
    </message>
    <message>
        <source>Not kept: the product’s name is missing.</source>
        <translation>Pas gardé : il manque le nom du produit.</translation>
    </message>
    <message>
        <source>Not kept: say what it holds.</source>
        <translation>Pas gardé : dire ce qu’il contient.</translation>
    </message>
    <message>
        <source>Not kept: percent, density, price and packs are numbers; a price is needed.</source>
        <translation>Pas gardé : pourcentage, densité, prix et emballages sont des nombres ; il faut un prix.</translation>
    </message>
    <message>
        <source>%1 is kept. The next plan knows it.</source>
        <translation>%1 est gardé. Le prochain plan le connaît.</translation>
    </message>
    <message>
        <source>It is tablets, given whole</source>
        <translation>Ce sont des galets, donnés entiers</translation>
    </message>
</context>
<context>
    <name>reminder</name>
    <message>
        <source>The next bottle of your water was due on %1: %2.</source>
        <translation>Le prochain flacon de votre eau était attendu le %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The next bottle of your water is due on %1: %2.</source>
        <translation>Le prochain flacon de votre eau est attendu le %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>We will read: %1.</source>
        <translation>Nous mesurerons&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Fill the bottle an elbow deep, away from the returns, cap it under water and bring it the same day, out of the sun.</source>
        <translation>Remplissez le flacon à hauteur de coude sous l’eau, loin des refoulements, bouchez-le sous l’eau et apportez-le le jour même, à l’abri du soleil.</translation>
    </message>
    <message>
        <source>Your water is due for a test</source>
        <translation>Votre eau attend son analyse</translation>
    </message>
    <message>
        <source>Take a bottle of the water to %1</source>
        <translation>Apporter un flacon d’eau à %1</translation>
    </message>
    <message>
        <source>Water can look fine and be unsafe: until then test sanitizer, pH and alkalinity at home every week.</source>
        <translation>L’eau peut sembler belle sans être sûre&#xa0;: d’ici là, testez chaque semaine chez vous désinfectant, pH et alcalinité.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>%1 or more</source>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu’à %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation>%1, reprise</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Take-home sheet</source>
        <translation>Fiche de consignes</translation>
    </message>
    <message>
        <source>What the water says</source>
        <translation>Ce que dit l’eau</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <source>First of all</source>
        <translation>Tout d’abord</translation>
    </message>
    <message>
        <source>What to do, and when</source>
        <translation>Que faire, et quand</translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation>Que faire à la place</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Attention&#xa0;:</translation>
    </message>
    <message>
        <source>What to watch</source>
        <translation>À surveiller</translation>
    </message>
    <message>
        <source>Come back</source>
        <translation>Revenez</translation>
    </message>
    <message>
        <source>All readings</source>
        <translation>Toutes les mesures</translation>
    </message>
    <message>
        <source>If something goes wrong</source>
        <translation>En cas de problème</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>This bottle</source>
        <translation>Ce flacon</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>After the steps</source>
        <translation>Après les étapes</translation>
    </message>
    <message>
        <source>Last visit</source>
        <translation>Dernière visite</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>prélevé&#xa0;: %1</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>analysé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flacon</translation>
    </message>
    <message>
        <source>first</source>
        <translation>d’abord</translation>
    </message>
    <message>
        <source>then</source>
        <translation>ensuite</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 plus tard</translation>
    </message>
    <message>
        <source>Bring this sheet with your next bottle.</source>
        <translation>Apportez cette fiche avec votre prochain flacon.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet %1 after the last step.</source>
        <translation>Apportez un nouveau flacon et cette fiche %1 après la dernière étape.</translation>
    </message>
    <message>
        <source>We will read: %1.</source>
        <translation>Nous mesurerons&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No plan for home can be given.</source>
        <translation>Aucun plan maison ne peut être donné.</translation>
    </message>
    <message>
        <source>Read at %1 °C.</source>
        <translation>Mesuré à %1&#xa0;°C.</translation>
    </message>
    <message>
        <source>May we swim?</source>
        <translation>Peut-on se baigner&#x202f;?</translation>
    </message>
    <message>
        <source>Not said: this sheet has readings only.</source>
        <translation>Non précisé&#xa0;: cette fiche ne porte que des mesures.</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>Nobody gets in unless the bottom and its drain can be seen clearly from the edge.</source>
        <translation>Personne n’entre si le fond et sa bonde ne se voient pas nettement depuis le bord.</translation>
    </message>
    <message>
        <source>Keep to the times: going on sooner than shown is how products meet that must not.</source>
        <translation>Respectez les délais&#xa0;: c’est en allant trop vite que se rencontrent des produits qui ne le doivent pas.</translation>
    </message>
    <message>
        <source>If the water turns brown, black or like tea after a dose, stop there and call us: that can be metal.</source>
        <translation>Si l’eau devient brune, noire ou couleur de thé après une dose, arrêtez là et appelez-nous&#xa0;: ce peut être du métal.</translation>
    </message>
    <message>
        <source>A light cloud after a dose clears with the pump running; if it is still there the next day, stop and bring us a bottle.</source>
        <translation>Un léger trouble après une dose disparaît pompe en marche&#x202f;; s’il est encore là le lendemain, arrêtez et apportez-nous un flacon.</translation>
    </message>
    <message>
        <source>Watch the filter&apos;s pressure gauge, and clean the filter when its maker says so.</source>
        <translation>Surveillez le manomètre du filtre, et nettoyez le filtre quand son fabricant le demande.</translation>
    </message>
    <message>
        <source>While draining, stop at once if the shell or liner moves, lifts or cracks, or if it rains hard.</source>
        <translation>Pendant la vidange, arrêtez aussitôt si la coque ou le liner bouge, se soulève ou se fissure, ou s’il pleut fort.</translation>
    </message>
    <message>
        <source>outdoor pool</source>
        <translation>piscine extérieure</translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation>piscine intérieure</translation>
    </message>
    <message>
        <source>pool</source>
        <translation>piscine</translation>
    </message>
    <message>
        <source>outdoor spa</source>
        <translation>spa extérieur</translation>
    </message>
    <message>
        <source>indoor spa</source>
        <translation>spa intérieur</translation>
    </message>
    <message>
        <source>spa</source>
        <translation>spa</translation>
    </message>
    <message>
        <source>outdoor swim spa</source>
        <translation>spa de nage extérieur</translation>
    </message>
    <message>
        <source>indoor swim spa</source>
        <translation>spa de nage intérieur</translation>
    </message>
    <message>
        <source>swim spa</source>
        <translation>spa de nage</translation>
    </message>
    <message>
        <source>outdoor plunge</source>
        <translation>bain froid extérieur</translation>
    </message>
    <message>
        <source>indoor plunge</source>
        <translation>bain froid intérieur</translation>
    </message>
    <message>
        <source>plunge</source>
        <translation>bain froid</translation>
    </message>
    <message>
        <source>chlorine</source>
        <translation>chlore</translation>
    </message>
    <message>
        <source>salt chlorine</source>
        <translation>électrolyse au sel</translation>
    </message>
    <message>
        <source>bromine</source>
        <translation>brome</translation>
    </message>
    <message>
        <source>biguanide</source>
        <translation>biguanide (PHMB)</translation>
    </message>
    <message>
        <source>No – not before %1.</source>
        <translation>Non – pas avant %1.</translation>
    </message>
    <message>
        <source>No – not for %1 after you start.</source>
        <translation>Non – pas avant %1 après le début.</translation>
    </message>
    <message>
        <source>No – not before step %1 is done.</source>
        <translation>Non – pas avant la fin de l’étape %1.</translation>
    </message>
    <message>
        <source>No – not until we have tested the water again.</source>
        <translation>Non – pas avant que nous ayons de nouveau analysé l’eau.</translation>
    </message>
    <message>
        <source>That is for the operator of this water to say.</source>
        <translation>C’est à l’exploitant de cette eau de le dire.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Non.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <translation>Oui.</translation>
    </message>
    <message>
        <source>%1 US gallons</source>
        <translation>%1&#xa0;gallons US</translation>
    </message>
    <message>
        <source>volume not known</source>
        <translation>volume inconnu</translation>
    </message>
    <message>
        <source>your local emergency number</source>
        <translation>numéro d’urgence local</translation>
    </message>
    <message>
        <source>Breathed in: fresh air; trouble breathing: call %1. Symptoms can come hours later.</source>
        <translation>En cas d’inhalation&#xa0;: air libre&#x202f;; difficulté à respirer&#xa0;: appelez le %1. Les symptômes peuvent venir des heures plus tard.</translation>
    </message>
    <message>
        <source>In the eyes or on the skin: brush dry powder off, then rinse with running water for at least 15 minutes; take out contact lenses, take off wet clothing. Call %1.</source>
        <translation>Dans les yeux ou sur la peau&#xa0;: brossez la poudre sèche, puis rincez à l’eau courante pendant au moins 15 minutes&#x202f;; ôtez lentilles de contact et vêtements mouillés. Appelez le %1.</translation>
    </message>
    <message>
        <source>Swallowed: do not make the person vomit. Call %1.</source>
        <translation>En cas d’ingestion&#xa0;: NE faites PAS vomir. Appelez le %1.</translation>
    </message>
    <message>
        <source>Store dry, cool, locked and upright, each product in its own container and apart from the others: acid far from chlorine, liquids never above powders. Never sniff a container.</source>
        <translation>Conservez au sec, au frais, sous clé et debout, chaque produit dans son contenant et à l’écart des autres&#xa0;: l’acide loin du chlore, les liquides jamais au-dessus des poudres. Ne reniflez jamais un contenant.</translation>
    </message>
    <message>
        <source>%1 each time, %2 times</source>
        <translation>%1 chaque fois, %2 fois</translation>
    </message>
    <message>
        <source>No – not until we have tested the water again, %1 or later.</source>
        <translation>Non – pas avant que nous ayons de nouveau analysé l’eau, %1 ou plus tard.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Bring a fresh bottle once that is settled.</source>
        <translation>Apportez un nouveau flacon une fois cela réglé.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet as soon as you can.</source>
        <translation>Apportez un nouveau flacon et cette fiche dès que possible.</translation>
    </message>
    <message>
        <source>Come back with the volume, today if you can: the amounts follow from these readings.</source>
        <translation>Revenez avec le volume, aujourd’hui si possible&#xa0;: les quantités se calculent avec ces mesures.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet: %1 or soon after.</source>
        <translation>Apportez un nouveau flacon et cette fiche&#xa0;: %1 ou peu après.</translation>
    </message>
    <message>
        <source>Fill water</source>
        <translation>Appoint</translation>
    </message>
    <message>
        <source>Over your visits</source>
        <translation>Au fil de vos visites</translation>
    </message>
    <message>
        <source>Poison line</source>
        <translation>Centre antipoison</translation>
    </message>
    <message>
        <source>for our counter</source>
        <translation>pour le comptoir</translation>
    </message>
    <message>
        <source>± is one standard deviation: about two readings in three come that near.</source>
        <translation>± est un écart type&#xa0;: environ deux mesures sur trois tombent aussi près.</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Changé</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>En suspens</translation>
    </message>
    <message>
        <source>Free chlorine and pH are shown before the chlorine is used up: both come down after.</source>
        <translation>Le chlore libre et le pH sont donnés avant que le chlore soit consommé&#xa0;: tous deux redescendent ensuite.</translation>
    </message>
    <message>
        <source>Did last visit’s plan work?</source>
        <translation>Le plan de la dernière visite a-t-il marché&#x202f;?</translation>
    </message>
    <message>
        <source>the same as in step %1.</source>
        <translation>la même qu’à l’étape %1.</translation>
    </message>
    <message>
        <source>No – not for %1 after you start, after step %2, and not for %3 after any dose.</source>
        <translation>Non – pas avant %1 après le début, après l’étape %2, ni pendant %3 après une dose.</translation>
    </message>
    <message>
        <source>Yes – but nobody in while anything is being added, nor for %1 after.</source>
        <translation>Oui – mais personne dans l’eau pendant un ajout, ni pendant %1 après.</translation>
    </message>
    <message>
        <source>Sooner: bring a bottle from %1 on, a day after step %2; it tells whether this is mended. Go on with the other steps.</source>
        <translation>Plus tôt&#xa0;: apportez un flacon à partir de %1, un jour après l’étape %2&#x202f;; il dira si c’est réglé. Continuez les autres étapes.</translation>
    </message>
    <message>
        <source>A jug of its own for each product, clean and dry: never one for acid and chlorine. None of them for food.</source>
        <translation>Un récipient gradué par produit, propre et sec&#xa0;: jamais le même pour l’acide et le chlore. Aucun pour les aliments.</translation>
    </message>
    <message>
        <source>Fumes, fizzing, or products that have met: leave at once, away from them and upwind, keep others out and call %1 from outside. Do not go back, add no water, move nothing.</source>
        <translation>Vapeurs, bouillonnement ou produits mélangés&#xa0;: sortez aussitôt, en vous écartant puis en remontant le vent, tenez les autres à distance et appelez le %1 de l’extérieur. N’y retournez pas, n’ajoutez pas d’eau, ne déplacez rien.</translation>
    </message>
    <message>
        <source>No – not before %1, and not for %2 after any dose.</source>
        <translation>Non – pas avant %1, ni pendant %2 après toute dose.</translation>
    </message>
    <message>
        <source>at the edge</source>
        <translation>à la limite</translation>
    </message>
    <message>
        <source>low</source>
        <translation>en dessous</translation>
    </message>
    <message>
        <source>high</source>
        <translation>au-dessus</translation>
    </message>
    <message>
        <source>The small line after a sentence: what the test can read, from end to end; brackets, the target; dark mark, this bottle, as wide as its likely error; ring, last visit.</source>
        <translation>Le petit trait après une phrase&#xa0;: ce que le test peut lire, d’un bout à l’autre&#x202f;; crochets, la cible&#x202f;; marque sombre, ce flacon, large comme son erreur probable&#x202f;; anneau, la dernière visite.</translation>
    </message>
</context>
<context>
    <name>slip</name>
    <message>
        <source>From the shelf</source>
        <translation>Du rayon</translation>
    </message>
    <message>
        <source>Handed over by</source>
        <translation>Remis par</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programme</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Preuve</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Rayon</translation>
    </message>
    <message>
        <source>Staff copy</source>
        <translation>Copie du personnel</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Cibles</translation>
    </message>
    <message>
        <source>This plan needs nothing from the shelf.</source>
        <translation>Ce plan ne demande rien du rayon.</translation>
    </message>
    <message>
        <source>diluted %1 times</source>
        <translation>dilué %1 fois</translation>
    </message>
    <message>
        <source>Changed by hand</source>
        <translation>Changé à la main</translation>
    </message>
    <message>
        <source>1 pack of %1</source>
        <translation>1 emballage de %1</translation>
    </message>
    <message>
        <source>%1 packs of %2</source>
        <translation>%1 emballages de %2</translation>
    </message>
    <message>
        <source>Of %2 waters that these readings may mean, %1 % end inside every target; in %3 % a step could do harm.</source>
        <translation>Sur %2 eaux que ces mesures peuvent désigner, %1 % finissent dans toutes les cibles&#x202f;; dans %3 % une étape pourrait nuire.</translation>
    </message>
    <message>
        <source>the program&apos;s own list</source>
        <translation>la liste du programme</translation>
    </message>
    <message>
        <source>What the plan needs in all.</source>
        <translation>Ce qu’il faut en tout pour le plan.</translation>
    </message>
    <message>
        <source>Take packs that hold at least as much.</source>
        <translation>Prenez des emballages qui en contiennent au moins autant.</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>The program ended without warning last time. What was confirmed is here; a change that was still being written was left out.</source>
        <translation>Le programme s’est arrêté sans prévenir la dernière fois. Ce qui était confirmé est là ; une modification encore en cours d’écriture a été laissée de côté.</translation>
    </message>
</context>
<context>
    <name>subject</name>
    <message>
        <source>Biguanide</source>
        <translation>Le biguanide</translation>
    </message>
    <message>
        <source>Borate</source>
        <translation>Le borate</translation>
    </message>
    <message>
        <source>Bromide</source>
        <translation>Le bromure</translation>
    </message>
    <message>
        <source>Calcium hardness</source>
        <translation>La dureté calcique</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>La conductivité</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Le cuivre</translation>
    </message>
    <message>
        <source>Stabilizer</source>
        <translation>Le stabilisant</translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation>Le chlore libre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Le fer</translation>
    </message>
    <message>
        <source>Magnesium hardness</source>
        <translation>La dureté magnésienne</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Le manganèse</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>Le nitrate</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peroxyde d’hydrogène</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>Le pH</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>Le phosphate</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Le sel</translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation>Le sulfate</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Les solides dissous</translation>
    </message>
    <message>
        <source>Total alkalinity</source>
        <translation>L’alcalinité (TAC)</translation>
    </message>
    <message>
        <source>Total bromine</source>
        <translation>Le brome total</translation>
    </message>
    <message>
        <source>Total chlorine</source>
        <translation>Le chlore total</translation>
    </message>
    <message>
        <source>Total hardness</source>
        <translation>La dureté totale (TH)</translation>
    </message>
    <message>
        <source>Turbidity</source>
        <translation>La turbidité</translation>
    </message>
</context>
<context>
    <name>substance</name>
    <message>
        <source>Floc (alum)</source>
        <translation>Floculant (alun)</translation>
    </message>
    <message>
        <source>Ascorbic acid</source>
        <translation>Acide ascorbique</translation>
    </message>
    <message>
        <source>BCDMH</source>
        <translation>BCDMH</translation>
    </message>
    <message>
        <source>Borax</source>
        <translation>Borax</translation>
    </message>
    <message>
        <source>Boric acid</source>
        <translation>Acide borique</translation>
    </message>
    <message>
        <source>Calcium chloride</source>
        <translation>Chlorure de calcium</translation>
    </message>
    <message>
        <source>Calcium hypochlorite</source>
        <translation>Hypochlorite de calcium</translation>
    </message>
    <message>
        <source>Clarifier</source>
        <translation>Clarifiant</translation>
    </message>
    <message>
        <source>Copper algaecide (copper sulfate)</source>
        <translation>Algicide au cuivre (sulfate de cuivre)</translation>
    </message>
    <message>
        <source>Stabilizer (cyanuric acid)</source>
        <translation>Stabilisant (acide cyanurique)</translation>
    </message>
    <message>
        <source>Stabilised granular chlorine (dichlor)</source>
        <translation>Chlore stabilisé en granulés (dichlore)</translation>
    </message>
    <message>
        <source>Hydrochloric acid</source>
        <translation>Acide chlorhydrique</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peroxyde d’hydrogène</translation>
    </message>
    <message>
        <source>Phosphate remover (lanthanum chloride)</source>
        <translation>Anti-phosphates (chlorure de lanthane)</translation>
    </message>
    <message>
        <source>Biguanide sanitizer (PHMB)</source>
        <translation>Désinfectant biguanide (PHMB)</translation>
    </message>
    <message>
        <source>Algaecide without copper (polyquat)</source>
        <translation>Algicide sans cuivre (polyquat)</translation>
    </message>
    <message>
        <source>Chlorine-free oxidiser (potassium monopersulfate)</source>
        <translation>Oxydant sans chlore (monopersulfate de potassium)</translation>
    </message>
    <message>
        <source>Metal sequestrant</source>
        <translation>Séquestrant de métaux</translation>
    </message>
    <message>
        <source>Sodium bicarbonate</source>
        <translation>Bicarbonate de sodium</translation>
    </message>
    <message>
        <source>Dry acid (sodium bisulfate)</source>
        <translation>Acide sec (bisulfate de sodium)</translation>
    </message>
    <message>
        <source>Sodium bromide</source>
        <translation>Bromure de sodium</translation>
    </message>
    <message>
        <source>Soda ash (sodium carbonate)</source>
        <translation>Carbonate de sodium</translation>
    </message>
    <message>
        <source>Salt (sodium chloride)</source>
        <translation>Sel (chlorure de sodium)</translation>
    </message>
    <message>
        <source>Liquid chlorine (sodium hypochlorite)</source>
        <translation>Chlore liquide (hypochlorite de sodium)</translation>
    </message>
    <message>
        <source>Sodium sesquicarbonate</source>
        <translation>Sesquicarbonate de sodium</translation>
    </message>
    <message>
        <source>Sodium sulfite</source>
        <translation>Sulfite de sodium</translation>
    </message>
    <message>
        <source>Sodium thiosulfate</source>
        <translation>Thiosulfate de sodium</translation>
    </message>
    <message>
        <source>Stabilised chlorine tablets (trichlor)</source>
        <translation>Galets de chlore stabilisé (trichlore)</translation>
    </message>
</context>
<context>
    <name>supplies</name>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>The whole instrument</source>
        <translation>L’instrument entier</translation>
    </message>
    <message>
        <source>expired: throw it away</source>
        <translation>périmé : à jeter</translation>
    </message>
    <message>
        <source>opened last season: replace it</source>
        <translation>ouvert la saison passée : à remplacer</translation>
    </message>
    <message>
        <source>stood beside chlorine: replace it</source>
        <translation>resté près du chlore : à remplacer</translation>
    </message>
    <message>
        <source>kept warm: replace it</source>
        <translation>gardé au chaud : à remplacer</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en service</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>Keep this lot</source>
        <translation>Garder ce lot</translation>
    </message>
    <message>
        <source>Keep this check</source>
        <translation>Garder ce contrôle</translation>
    </message>
    <message>
        <source>Number of the lot</source>
        <translation>Numéro du lot</translation>
    </message>
    <message>
        <source>It reads</source>
        <translation>Il mesure</translation>
    </message>
    <message>
        <source>Good until: year-month-day</source>
        <translation>Bon jusqu’au : année-mois-jour</translation>
    </message>
    <message>
        <source>Opened: year-month-day; empty while closed</source>
        <translation>Ouvert : année-mois-jour ; vide s’il est fermé</translation>
    </message>
    <message>
        <source>Warmest it was kept at, °C</source>
        <translation>Température la plus haute de garde, °C</translation>
    </message>
    <message>
        <source>It stood beside chlorine</source>
        <translation>Il est resté près du chlore</translation>
    </message>
    <message>
        <source>Used up or thrown away</source>
        <translation>Épuisé ou jeté</translation>
    </message>
    <message>
        <source>Instrument, as its readings name it</source>
        <translation>Instrument, comme ses mesures le nomment</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Contrôlé</translation>
    </message>
    <message>
        <source>It read its standards right</source>
        <translation>Il a lu ses étalons juste</translation>
    </message>
    <message>
        <source>Not kept: the lot&apos;s number is missing.</source>
        <translation>Pas gardé : il manque le numéro du lot.</translation>
    </message>
    <message>
        <source>Not kept: say which reading it is for.</source>
        <translation>Pas gardé : dire pour quelle mesure il sert.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a day; expected 2027-03-31.</source>
        <translation>Pas gardé : « %1 » n’est pas un jour ; attendu 2027-03-31.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a temperature.</source>
        <translation>Pas gardé : « %1 » n’est pas une température.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Pas gardé : %1</translation>
    </message>
    <message>
        <source>Lot %1 is kept. Store it cool, dry and away from chlorine.</source>
        <translation>Le lot %1 est gardé. À conserver au frais, au sec et loin du chlore.</translation>
    </message>
    <message>
        <source>Not kept: name the instrument, as its readings do.</source>
        <translation>Pas gardé : nommer l’instrument comme ses mesures le font.</translation>
    </message>
    <message>
        <source>The check of %1 is kept.</source>
        <translation>Le contrôle de %1 est gardé.</translation>
    </message>
    <message>
        <source>The failed check of %1 is kept: what it reads counts for nothing until a later check is right.</source>
        <translation>Le contrôle manqué de %1 est gardé : ce qu’il mesure ne compte pas tant qu’un contrôle suivant n’est pas juste.</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>ouvert le %1</translation>
    </message>
    <message>
        <source>good until %1</source>
        <translation>bon jusqu’au %1</translation>
    </message>
    <message>
        <source>failed: not believed</source>
        <translation>échoué : pas cru</translation>
    </message>
    <message>
        <source>a check is due</source>
        <translation>un contrôle est dû</translation>
    </message>
    <message>
        <source>right</source>
        <translation>juste</translation>
    </message>
    <message>
        <source>Tests in its pack; empty where not known</source>
        <translation>Tests dans l’emballage&#x202f;; vide si inconnu</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a number of tests.</source>
        <translation>Non gardé&#xa0;: «&#xa0;%1&#xa0;» n’est pas un nombre de tests.</translation>
    </message>
</context>
<context>
    <name>targets</name>
    <message>
        <source>Combined chlorine</source>
        <translation>Chlore combiné</translation>
    </message>
    <message>
        <source>Saturation index</source>
        <translation>Indice de saturation</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Température de l’eau</translation>
    </message>
    <message>
        <source>with stabilizer</source>
        <translation>avec stabilisant</translation>
    </message>
    <message>
        <source>without stabilizer</source>
        <translation>sans stabilisant</translation>
    </message>
    <message>
        <source>above pH %1</source>
        <translation>au-dessus de pH %1</translation>
    </message>
    <message>
        <source>above %1 °C</source>
        <translation>au-dessus de %1 °C</translation>
    </message>
    <message>
        <source>all water</source>
        <translation>toute eau</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 à %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>au moins %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>au plus %1 %2</translation>
    </message>
    <message>
        <source>The shop’s own</source>
        <translation>Celle de la boutique</translation>
    </message>
    <message>
        <source>As built in</source>
        <translation>Celui d’origine</translation>
    </message>
    <message>
        <source>Which target</source>
        <translation>Quelle cible</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Au plus</translation>
    </message>
    <message>
        <source>Where a dose aims; empty: the middle</source>
        <translation>Où vise une dose ; vide : le milieu</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Qui le dit</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>À qui elle est</translation>
    </message>
    <message>
        <source>the shop’s own: %1</source>
        <translation>de la boutique : %1</translation>
    </message>
    <message>
        <source>Not kept: choose which target.</source>
        <translation>Non gardé : choisissez quelle cible.</translation>
    </message>
    <message>
        <source>Not kept: a target is a number or empty.</source>
        <translation>Non gardé : une cible est un nombre, ou reste vide.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>Non gardé : %1</translation>
    </message>
    <message>
        <source>Kept. The next plan goes by it.</source>
        <translation>Gardé. Le prochain plan s’y tient.</translation>
    </message>
    <message>
        <source>For which water</source>
        <translation>Pour quelle eau</translation>
    </message>
</context>
<context>
    <name>trail</name>
    <message>
        <source>%1, before: %2</source>
        <translation>%1, avant&#xa0;: %2</translation>
    </message>
    <message>
        <source>taken out; before: %1</source>
        <translation>retiré&#x202f;; avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Plus anciens</translation>
    </message>
    <message>
        <source>The newest</source>
        <translation>Les plus récents</translation>
    </message>
</context>
<context>
    <name>twins</name>
    <message>
        <source>same phone</source>
        <translation>même téléphone</translation>
    </message>
    <message>
        <source>same email</source>
        <translation>même adresse électronique</translation>
    </message>
    <message>
        <source>same name and street</source>
        <translation>mêmes nom et rue</translation>
    </message>
    <message>
        <source>same street, a name in common</source>
        <translation>même rue, un nom en commun</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>même nom</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>mg/L as 20 % product</source>
        <translation>mg/L en produit à 20 %</translation>
    </message>
    <message>
        <source>µS/cm at 25 °C</source>
        <translation>µS/cm à 25 °C</translation>
    </message>
</context>
<context>
    <name>volume</name>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Width of the narrow end</source>
        <translation>Largeur du petit bout</translation>
    </message>
    <message>
        <source>Area of the water</source>
        <translation>Aire de l’eau</translation>
    </message>
    <message>
        <source>Depth of the water</source>
        <translation>Profondeur de l’eau</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Au plus profond</translation>
    </message>
    <message>
        <source>Length of the deep part, to the middle of the slope</source>
        <translation>Longueur de la partie profonde, jusqu’au milieu de la pente</translation>
    </message>
    <message>
        <source>Meter before</source>
        <translation>Compteur avant</translation>
    </message>
    <message>
        <source>Meter after</source>
        <translation>Compteur après</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Diamètre</translation>
    </message>
    <message>
        <source>Width of the wide end</source>
        <translation>Largeur du grand bout</translation>
    </message>
    <message>
        <source>Shallowest</source>
        <translation>Au moins profond</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>gallons US</translation>
    </message>
    <message>
        <source>cubic feet</source>
        <translation>pieds cubes</translation>
    </message>
    <message>
        <source>square feet</source>
        <translation>pieds carrés</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pieds</translation>
    </message>
    <message>
        <source>%1 ft %2 in</source>
        <translation>%1&#xa0;pi %2&#xa0;po</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>pi²</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pi</translation>
    </message>
    <message>
        <source>“%1” cannot be read: write 16.5, or 16 6 for 16 feet 6 inches.</source>
        <translation>«&#xa0;%1&#xa0;» ne se lit pas&#xa0;: écrivez 16,5, ou 16 6 pour 16 pieds 6 pouces.</translation>
    </message>
    <message>
        <source>“%1” cannot be read: write a number.</source>
        <translation>«&#xa0;%1&#xa0;» ne se lit pas&#xa0;: écrivez un nombre.</translation>
    </message>
    <message>
        <source>This is wanted too.</source>
        <translation>Il le faut aussi.</translation>
    </message>
    <message>
        <source>A meter never stands below zero.</source>
        <translation>Un compteur n’est jamais sous zéro.</translation>
    </message>
    <message>
        <source>A number above zero is wanted.</source>
        <translation>Il faut un nombre supérieur à zéro.</translation>
    </message>
    <message>
        <source>Hardly anything went through: look at the digits and the unit again.</source>
        <translation>Presque rien n’est passé&#xa0;: regardez encore les chiffres et l’unité.</translation>
    </message>
    <message>
        <source>Too small for a vessel: look at the unit again.</source>
        <translation>Trop petit pour un bassin&#xa0;: regardez encore l’unité.</translation>
    </message>
    <message>
        <source>Too large for a vessel: look at the digits and the unit again.</source>
        <translation>Trop grand pour un bassin&#xa0;: regardez encore les chiffres et l’unité.</translation>
    </message>
    <message>
        <source>This has to be deeper than the shallowest.</source>
        <translation>Ce doit être plus profond que le moins profond.</translation>
    </message>
    <message>
        <source>A part has to be shorter than the whole length.</source>
        <translation>Une partie doit être plus courte que toute la longueur.</translation>
    </message>
    <message>
        <source>This cannot be more than the length: the round ends close it.</source>
        <translation>Ce ne peut être plus que la longueur&#xa0;: les bouts ronds la ferment.</translation>
    </message>
    <message>
        <source>Lower than before. If the meter went past its last digit, write a 1 before all of its digits.</source>
        <translation>Plus bas qu’avant. Si le compteur est repassé par zéro, écrivez un 1 devant tous ses chiffres.</translation>
    </message>
    <message>
        <source>The same as before: nothing went through.</source>
        <translation>Comme avant&#xa0;: rien n’est passé.</translation>
    </message>
    <message>
        <source>Right only where the vessel was empty and nothing else ran through the meter. A meter may be 2 % off; the level it was filled to counts for 3 %.</source>
        <translation>Juste seulement si le bassin était vide et que rien d’autre n’est passé par le compteur. Un compteur peut se tromper de 2&#xa0;%&#x202f;; le niveau du remplissage compte pour 3&#xa0;%.</translation>
    </message>
    <message>
        <source>A kidney’s area by rule of thumb, 0.45 × both widths × length: common practice, no source; taken as right within 8 %.</source>
        <translation>L’aire d’un haricot par règle pratique, 0,45 × les deux largeurs × longueur&#xa0;: usage courant, sans source&#x202f;; tenue pour juste à 8&#xa0;% près.</translation>
    </message>
    <message>
        <source>The area as it was told, times the depth.</source>
        <translation>L’aire telle qu’elle a été dite, fois la profondeur.</translation>
    </message>
    <message>
        <source>The area is exact geometry, where the shape is true.</source>
        <translation>L’aire est de la géométrie exacte, si la forme est la bonne.</translation>
    </message>
    <message>
        <source>The mean depth is exact where the bottom falls evenly.</source>
        <translation>La profondeur moyenne est exacte si le fond descend régulièrement.</translation>
    </message>
    <message>
        <source>Hardly any vessel of this kind holds that: measure again.</source>
        <translation>Presque aucun bassin de ce genre ne contient cela&#xa0;: mesurez encore.</translation>
    </message>
    <message>
        <source>That deep is rare at a home: look at the unit again.</source>
        <translation>Une telle profondeur est rare chez un particulier&#xa0;: regardez encore l’unité.</translation>
    </message>
    <message>
        <source>Seats take room that the outline does not show: the maker’s figure is nearer, where there is one.</source>
        <translation>Les sièges prennent une place que le contour ne montre pas&#xa0;: le chiffre du fabricant est plus proche, s’il y en a un.</translation>
    </message>
    <message>
        <source>On file: %1. Both cannot be right within their errors: ask before it is taken.</source>
        <translation>Au dossier&#xa0;: %1. Les deux ne peuvent être justes à leurs erreurs près&#xa0;: demandez avant de le prendre.</translation>
    </message>
</context>
<context>
    <name>week</name>
    <message>
        <source>The week at the counter</source>
        <translation>La semaine au comptoir</translation>
    </message>
    <message>
        <source>Too little chlorine for its stabilizer</source>
        <translation>Trop peu de chlore pour le stabilisant</translation>
    </message>
    <message>
        <source>Water too hot</source>
        <translation>Eau trop chaude</translation>
    </message>
    <message>
        <source>Chlorine used up overnight</source>
        <translation>Chlore consommé pendant la nuit</translation>
    </message>
    <message>
        <source>A reading at the end of its range</source>
        <translation>Une mesure au bout de sa plage</translation>
    </message>
    <message>
        <source>A reading not believed</source>
        <translation>Une mesure non retenue</translation>
    </message>
    <message>
        <source>A reading to be taken again</source>
        <translation>Une mesure à refaire</translation>
    </message>
    <message>
        <source>worked</source>
        <translation>a réussi</translation>
    </message>
    <message>
        <source>worked in part</source>
        <translation>a réussi en partie</translation>
    </message>
    <message>
        <source>did not work</source>
        <translation>n’a pas réussi</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>ne peut être dit</translation>
    </message>
    <message>
        <source>Saturation index</source>
        <translation>Indice de saturation</translation>
    </message>
    <message>
        <source>runs out: order it</source>
        <translation>bientôt épuisé&#xa0;: à commander</translation>
    </message>
    <message>
        <source>not good for much longer: order it</source>
        <translation>bientôt périmé&#xa0;: à commander</translation>
    </message>
    <message>
        <source>expired: throw it away and order it</source>
        <translation>périmé&#xa0;: à jeter et à recommander</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flacons</translation>
    </message>
    <message>
        <source>Bottles tested</source>
        <translation>Flacons analysés</translation>
    </message>
    <message>
        <source>Here for the first time</source>
        <translation>Ici pour la première fois</translation>
    </message>
    <message>
        <source>Back again</source>
        <translation>De retour</translation>
    </message>
    <message>
        <source>Plans told</source>
        <translation>Plans donnés</translation>
    </message>
    <message>
        <source>Of them without a plan for home</source>
        <translation>Dont sans plan pour la maison</translation>
    </message>
    <message>
        <source>Plans of the visit before</source>
        <translation>Plans de la visite précédente</translation>
    </message>
    <message>
        <source>Reagents</source>
        <translation>Réactifs</translation>
    </message>
    <message>
        <source>used %1, left %2</source>
        <translation>utilisés %1, restent %2</translation>
    </message>
    <message>
        <source>used %1</source>
        <translation>utilisés %1</translation>
    </message>
    <message>
        <source>Instrument checks that are due</source>
        <translation>Contrôles d’instruments à faire</translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation>le dernier a échoué</translation>
    </message>
    <message>
        <source>days since: %1</source>
        <translation>jours écoulés&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 too low</source>
        <translation>%1 trop bas</translation>
    </message>
    <message>
        <source>%1 too high</source>
        <translation>%1 trop haut</translation>
    </message>
    <message>
        <source>%1 at the edge of its range</source>
        <translation>%1 en limite de plage</translation>
    </message>
    <message>
        <source>Too much combined chlorine</source>
        <translation>Trop de chlore combiné</translation>
    </message>
    <message>
        <source>What was found, in bottles</source>
        <translation>Ce qui a été trouvé, en flacons</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 au %2</translation>
    </message>
</context>
</TS>
