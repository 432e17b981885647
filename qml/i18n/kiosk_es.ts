<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Arrivals</name>
    <message>
        <source>No bottle is waiting</source>
        <translation>No hay frascos en espera</translation>
    </message>
    <message>
        <source>One bottle is waiting</source>
        <translation>Un frasco en espera</translation>
    </message>
    <message>
        <source>%1 bottles are waiting</source>
        <translation>%1 frascos en espera</translation>
    </message>
    <message>
        <source>Scan or type a label</source>
        <translation>Escanee o escriba una etiqueta</translation>
    </message>
    <message>
        <source>New bottle</source>
        <translation>Frasco nuevo</translation>
    </message>
    <message>
        <source>When one is handed over, touch “New bottle”, or scan the label on it. Overnight tests that fall due will stand here too.</source>
        <translation>Cuando le entreguen uno, toque «Frasco nuevo» o escanee su etiqueta. Aquí aparecerán también las pruebas de un día para otro que toque leer.</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Frascos</translation>
    </message>
    <message>
        <source>To the bench</source>
        <translation>Ir al análisis</translation>
    </message>
</context>
<context>
    <name>Assistant</name>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>All of this can be changed later, in the Back room.</source>
        <translation>Todo esto se puede cambiar después, en la trastienda.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Open the counter</source>
        <translation>Abrir el mostrador</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
</context>
<context>
    <name>BackRoom</name>
    <message>
        <source>Back room</source>
        <translation>Trastienda</translation>
    </message>
</context>
<context>
    <name>Bench</name>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
</context>
<context>
    <name>Bottle</name>
    <message>
        <source>To the bench</source>
        <translation>Ir al análisis</translation>
    </message>
</context>
<context>
    <name>BottleLine</name>
    <message>
        <source>Label: %1</source>
        <translation>Etiqueta: %1</translation>
    </message>
    <message>
        <source>No bottle on the counter</source>
        <translation>No hay ningún frasco en el mostrador</translation>
    </message>
</context>
<context>
    <name>ChartClear</name>
    <message>
        <source>Let it go on</source>
        <translation>Dejar que siga</translation>
    </message>
    <message>
        <source>Cleared by</source>
        <translation>Liberado por</translation>
    </message>
    <message>
        <source>What was found and done</source>
        <translation>Qué se encontró y qué se hizo</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Liberar</translation>
    </message>
</context>
<context>
    <name>ChartCurve</name>
    <message>
        <source>A lot’s absorbance curve</source>
        <translation>Curva de absorbancia de un lote</translation>
    </message>
    <message>
        <source>Number of the lot</source>
        <translation>Número del lote</translation>
    </message>
    <message>
        <source>Wavelength, nm</source>
        <translation>Longitud de onda, nm</translation>
    </message>
    <message>
        <source>Standards: amount and absorbance per cm; the next</source>
        <translation>Patrones: cantidad y absorbancia por cm; el siguiente</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>A new lot against the old</source>
        <translation>Un lote nuevo frente al anterior</translation>
    </message>
    <message>
        <source>The same waters: old lot, new lot; the next</source>
        <translation>Las mismas aguas: lote anterior, lote nuevo; la siguiente</translation>
    </message>
    <message>
        <source>Difference that may be</source>
        <translation>Diferencia admisible</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
</context>
<context>
    <name>ChartForm</name>
    <message>
        <source>A new standard</source>
        <translation>Un patrón nuevo</translation>
    </message>
    <message>
        <source>Instrument, as its readings name it</source>
        <translation>Instrumento, como lo nombran sus lecturas</translation>
    </message>
    <message>
        <source>What the standard is called</source>
        <translation>Cómo se llama el patrón</translation>
    </message>
    <message>
        <source>What it should read</source>
        <translation>Lo que debería leer</translation>
    </message>
    <message>
        <source>Spread of one measurement (sd)</source>
        <translation>Dispersión de una medición (desviación estándar, de)</translation>
    </message>
    <message>
        <source>Days between checks</source>
        <translation>Días entre controles</translation>
    </message>
    <message>
        <source>It is a standard of</source>
        <translation>Es un patrón de</translation>
    </message>
    <message>
        <source>Keep this standard</source>
        <translation>Guardar este patrón</translation>
    </message>
</context>
<context>
    <name>ChartPage</name>
    <message>
        <source>Standard</source>
        <translation>Patrón</translation>
    </message>
    <message>
        <source>It read</source>
        <translation>Leyó</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Do not wait</source>
        <translation>No esperar</translation>
    </message>
    <message>
        <source>Measure on the instrument</source>
        <translation>Medir en el instrumento</translation>
    </message>
    <message>
        <source>A new standard</source>
        <translation>Un patrón nuevo</translation>
    </message>
</context>
<context>
    <name>CustomerForm</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Street</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Reads</source>
        <translation>Lee en</translation>
    </message>
    <message>
        <source>Measures in</source>
        <translation>Mide en</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Email</source>
        <translation>Correo electrónico</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>CustomerPart</name>
    <message>
        <source>Whose bottle?</source>
        <translation>¿De quién es el frasco?</translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation>Otra persona</translation>
    </message>
    <message>
        <source>Name, street or phone</source>
        <translation>Nombre, dirección o teléfono</translation>
    </message>
    <message>
        <source>New customer</source>
        <translation>Cliente nuevo</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Editar</translation>
    </message>
</context>
<context>
    <name>Emergency</name>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>The product’s label and its safety data sheet go before anything written here.</source>
        <translation>La etiqueta del producto y su ficha de datos de seguridad valen más que todo lo escrito aquí.</translation>
    </message>
    <message>
        <source>Print this card</source>
        <translation>Imprimir esta ficha</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>Take-home</source>
        <translation>Indicaciones</translation>
    </message>
    <message>
        <source>On the thin rule: the bracket is the target, the filled mark this bottle and its uncertainty, the ring the last visit.</source>
        <translation>Sobre la línea fina: el corchete es el valor deseado; la marca llena, este frasco y su incertidumbre; el anillo, la visita anterior.</translation>
    </message>
    <message>
        <source>The words</source>
        <translation>Las palabras</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Los números</translation>
    </message>
</context>
<context>
    <name>HandPanel</name>
    <message>
        <source>Change step %1</source>
        <translation>Cambiar el paso %1</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De qué</translation>
    </message>
    <message>
        <source>If it held (only to look at)</source>
        <translation>Si contuviera (solo para ver)</translation>
    </message>
    <message>
        <source>In the end</source>
        <translation>Al final</translation>
    </message>
    <message>
        <source>as told</source>
        <translation>indicado</translation>
    </message>
    <message>
        <source>Changed by</source>
        <translation>Cambiado por</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation>En el plan</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Fuera del plan</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>Use this change</source>
        <translation>Usar este cambio</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>Lock</name>
    <message>
        <source>The counter is closed</source>
        <translation>El mostrador está cerrado</translation>
    </message>
    <message>
        <source>Who is at the counter?</source>
        <translation>¿Quién está en el mostrador?</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Choose a name, then type the PIN.</source>
        <translation>Elija un nombre y escriba el PIN.</translation>
    </message>
    <message>
        <source>One moment ...</source>
        <translation>Un momento ...</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>%1 digits typed</source>
        <translation>%1 cifras escritas</translation>
    </message>
    <message>
        <source>Open the counter</source>
        <translation>Abrir el mostrador</translation>
    </message>
</context>
<context>
    <name>NumberList</name>
    <message>
        <source>Behind ± stands one standard deviation: of a hundred such readings about sixty-eight lie that near.</source>
        <translation>Tras ± va una desviación estándar: de cien lecturas así, unas sesenta y ocho quedan así de cerca.</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>rub out</source>
        <translation>borrar</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>coma decimal</translation>
    </message>
</context>
<context>
    <name>OrphanLine</name>
    <message>
        <source>Set aside</source>
        <translation>Apartar</translation>
    </message>
</context>
<context>
    <name>Overnight</name>
    <message>
        <source>To the bench</source>
        <translation>Ir al análisis</translation>
    </message>
    <message>
        <source>Some bottles of the sample get rising doses of chlorine and are read after an hour and after a day. What is left tells how much the water uses up.</source>
        <translation>Algunos frascos de la muestra reciben dosis crecientes de cloro y se leen después de una hora y de un día. Lo que queda indica cuánto consume el agua.</translation>
    </message>
    <message>
        <source>Told: put away</source>
        <translation>Ya se avisó: archivar</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Back to the readings</source>
        <translation>Volver a las lecturas</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Take the last reading back</source>
        <translation>Anular la última lectura</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>OvernightBottles</name>
    <message>
        <source>Doses</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>Sample in each bottle</source>
        <translation>Muestra en cada frasco</translation>
    </message>
</context>
<context>
    <name>OvernightPad</name>
    <message>
        <source>type the number</source>
        <translation>escriba el número</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>OvernightPour</name>
    <message>
        <source>Print the labels</source>
        <translation>Imprimir etiquetas</translation>
    </message>
    <message>
        <source>Labels as PDF</source>
        <translation>Etiquetas en PDF</translation>
    </message>
    <message>
        <source>They stand at</source>
        <translation>Estarán a</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>mg/L</source>
        <translation>mg/L</translation>
    </message>
    <message>
        <source>mL of stock</source>
        <translation>mL de solución</translation>
    </message>
</context>
<context>
    <name>OvernightStock</name>
    <message>
        <source>Liquid chlorine, as its label says</source>
        <translation>Cloro líquido, según su etiqueta</translation>
    </message>
</context>
<context>
    <name>OvernightTable</name>
    <message>
        <source>after 1 hour</source>
        <translation>tras 1 hora</translation>
    </message>
    <message>
        <source>after 24 hours</source>
        <translation>tras 24 horas</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Frasco</translation>
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
        <translation>cloro libre tras 1 hora</translation>
    </message>
    <message>
        <source>total chlorine after 1 hour</source>
        <translation>cloro total tras 1 hora</translation>
    </message>
    <message>
        <source>free chlorine after 24 hours</source>
        <translation>cloro libre tras 24 horas</translation>
    </message>
    <message>
        <source>total chlorine after 24 hours</source>
        <translation>cloro total tras 24 horas</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>Call the customer: %1</source>
        <translation>Llame al cliente: %1</translation>
    </message>
</context>
<context>
    <name>OvernightTests</name>
    <message>
        <source>Overnight tests</source>
        <translation>Pruebas de un día para otro</translation>
    </message>
    <message>
        <source>call %1</source>
        <translation>llamar: %1</translation>
    </message>
</context>
<context>
    <name>PadPanel</name>
    <message>
        <source>type the number</source>
        <translation>escriba el número</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnóstico</translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>%1 leaves the counter</source>
        <translation>%1 deja el mostrador</translation>
    </message>
    <message>
        <source>%1: leave</source>
        <translation>%1: salir</translation>
    </message>
</context>
<context>
    <name>PlanAnswers</name>
    <message>
        <source>Did the plan work?</source>
        <translation>¿Funcionó el plan?</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No instrument is set; type the readings. (Back room, Instrument)</source>
        <translation>No hay instrumento configurado; escriba las lecturas. (Trastienda, Instrumento)</translation>
    </message>
    <message>
        <source>%1 on %2: its readings come in by themselves</source>
        <translation>%1 en %2: sus lecturas llegan solas</translation>
    </message>
    <message>
        <source>%1 instruments: their readings come in by themselves</source>
        <translation>%1 instrumentos: sus lecturas llegan solas</translation>
    </message>
</context>
<context>
    <name>RecordsLine</name>
    <message>
        <source>Ours</source>
        <translation>El nuestro</translation>
    </message>
    <message>
        <source>Theirs</source>
        <translation>El suyo</translation>
    </message>
</context>
<context>
    <name>Rescue</name>
    <message>
        <source>The records cannot be read</source>
        <translation>No se pueden leer los registros</translation>
    </message>
    <message>
        <source>The file is set aside under another name, whatever you choose: nothing in it is lost for somebody who can mend it.</source>
        <translation>El archivo se aparta con otro nombre, elija lo que elija: nada se pierde para quien pueda repararlo.</translation>
    </message>
    <message>
        <source>Bring the backup back</source>
        <translation>Recuperar la copia</translation>
    </message>
    <message>
        <source>Begin with empty records</source>
        <translation>Empezar con registros vacíos</translation>
    </message>
</context>
<context>
    <name>SamplePart</name>
    <message>
        <source>The bottle</source>
        <translation>El frasco</translation>
    </message>
    <message>
        <source>What they have seen</source>
        <translation>Lo que han visto</translation>
    </message>
</context>
<context>
    <name>SettingsForm</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>SheetPanel</name>
    <message>
        <source>The sheet</source>
        <translation>La hoja</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Make PDF</source>
        <translation>Crear PDF</translation>
    </message>
    <message>
        <source>Other papers</source>
        <translation>Otros papeles</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>Del estante</translation>
    </message>
    <message>
        <source>Staff copy</source>
        <translation>Copia del personal</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Do not print it</source>
        <translation>No imprimirla</translation>
    </message>
    <message>
        <source>Kept. Next bottle</source>
        <translation>Guardado. Frasco siguiente</translation>
    </message>
</context>
<context>
    <name>StepRow</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
</context>
<context>
    <name>TakeHome</name>
    <message>
        <source>Undo the changes</source>
        <translation>Deshacer los cambios</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Queda pendiente</translation>
    </message>
    <message>
        <source>The steps</source>
        <translation>Los pasos</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Los números</translation>
    </message>
</context>
<context>
    <name>ThenNow</name>
    <message>
        <source>Beside the visit of</source>
        <translation>Comparar con la visita de</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperado</translation>
    </message>
    <message>
        <source>Print its sheet again</source>
        <translation>Imprimir otra vez su hoja</translation>
    </message>
    <message>
        <source>Once this bottle is read, it stands here beside the earlier visit.</source>
        <translation>Cuando este frasco esté leído, aparecerá aquí junto a la visita anterior.</translation>
    </message>
    <message>
        <source>When this water comes again, its new readings stand here beside these: what moved as expected, what did not and why, and how much the vessel really holds.</source>
        <translation>Cuando esta agua vuelva, sus nuevas lecturas aparecerán aquí junto a estas: qué cambió como se esperaba, qué no y por qué, y cuánta agua cabe de verdad en el vaso.</translation>
    </message>
    <message>
        <source>The words</source>
        <translation>Las palabras</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Los números</translation>
    </message>
    <message>
        <source>What was expected: the earlier reading, moved by what was told, drained and lost. Its ± comes from both readings, the volume, and weeks of evaporation and splash.</source>
        <translation>Lo esperado: la lectura anterior, movida por lo añadido, lo vaciado y lo perdido. Su ± viene de ambas lecturas, del volumen y de semanas de evaporación y salpicaduras.</translation>
    </message>
</context>
<context>
    <name>TroubleBanner</name>
    <message>
        <source>The instrument</source>
        <translation>El instrumento</translation>
    </message>
</context>
<context>
    <name>TwinPart</name>
    <message>
        <source>There is another card: %1 (%2). Is it the same person?</source>
        <translation>Hay otra ficha: %1 (%2). ¿Es la misma persona?</translation>
    </message>
    <message>
        <source>Join the cards</source>
        <translation>Unir las fichas</translation>
    </message>
    <message>
        <source>Two people</source>
        <translation>Dos personas</translation>
    </message>
    <message>
        <source>Joined with this card: %1.</source>
        <translation>Unida a esta ficha: %1.</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Separar</translation>
    </message>
</context>
<context>
    <name>VesselPart</name>
    <message>
        <source>The vessel</source>
        <translation>La piscina o el spa</translation>
    </message>
    <message>
        <source>Another vessel</source>
        <translation>Otra piscina u otro spa</translation>
    </message>
    <message>
        <source>Write down the vessel</source>
        <translation>Anotar la piscina o el spa</translation>
    </message>
</context>
<context>
    <name>VolumeLesson</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>VolumePart</name>
    <message>
        <source>Work the volume out</source>
        <translation>Calcular el volumen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>The volume by its shape, or by meter</source>
        <translation>El volumen por su forma, o por contador</translation>
    </message>
    <message>
        <source>Its bottom</source>
        <translation>Su fondo</translation>
    </message>
    <message>
        <source>The meter counts</source>
        <translation>El contador cuenta</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Take this volume</source>
        <translation>Tomar este volumen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo así</translation>
    </message>
</context>
<context>
    <name>YearPart</name>
    <message>
        <source>A year of one reading</source>
        <translation>Un año de una lectura</translation>
    </message>
    <message>
        <source>Round: a reading, with its standard deviation as a bar. Square: outside the target beyond its error. Hollow: at the end of what the method can show. Band: the target. Ticks at the foot: doses told, tall where the plan says that they move this reading.</source>
        <translation>Redondo: una lectura, con su desviación estándar como barra. Cuadrado: fuera del objetivo más allá de su error. Hueco: al final de lo que el método puede mostrar. Banda: el objetivo. Marcas al pie: dosis indicadas, altas donde el plan dice que mueven esta lectura.</translation>
    </message>
</context>
<context>
    <name>absorbance</name>
    <message>
        <source>pH came in at a wavelength that is not phenol red’s. It was not kept.</source>
        <translation>El pH llegó a una longitud de onda que no es la del rojo de fenol. No se guardó.</translation>
    </message>
    <message>
        <source>No colour came in for pH: is the indicator in? It was not kept.</source>
        <translation>No llegó color para el pH: ¿está puesto el indicador? No se guardó.</translation>
    </message>
    <message>
        <source>%1 was beyond what the instrument can see: dilute the sample and read it again.</source>
        <translation>%1 estaba más allá de lo que el instrumento puede ver: diluya la muestra y léala de nuevo.</translation>
    </message>
    <message>
        <source>%1 came in as an absorbance, but the lot in use has no calibration at %2 nm. It was not kept.</source>
        <translation>%1 llegó como absorbancia, pero el lote en uso no tiene calibración a %2 nm. No se guardó.</translation>
    </message>
    <message>
        <source>%1 cannot be read from its calibration curve. It was not kept.</source>
        <translation>%1 no puede leerse en su curva de calibración. No se guardó.</translation>
    </message>
</context>
<context>
    <name>analyte</name>
    <message>
        <source>Biguanide</source>
        <translation>Biguanida</translation>
    </message>
    <message>
        <source>Borate</source>
        <translation>Borato</translation>
    </message>
    <message>
        <source>Bromide</source>
        <translation>Bromuro</translation>
    </message>
    <message>
        <source>Calcium hardness</source>
        <translation>Dureza cálcica</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>Conductividad</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Cobre</translation>
    </message>
    <message>
        <source>Stabilizer</source>
        <translation>Estabilizador</translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation>Cloro libre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>Hierro</translation>
    </message>
    <message>
        <source>Magnesium hardness</source>
        <translation>Dureza magnésica</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>Manganeso</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>Nitrato</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peróxido de hidrógeno</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>Fosfato</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation>Sulfato</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Sólidos disueltos</translation>
    </message>
    <message>
        <source>Total alkalinity</source>
        <translation>Alcalinidad total</translation>
    </message>
    <message>
        <source>Total bromine</source>
        <translation>Bromo total</translation>
    </message>
    <message>
        <source>Total chlorine</source>
        <translation>Cloro total</translation>
    </message>
    <message>
        <source>Total hardness</source>
        <translation>Dureza total</translation>
    </message>
    <message>
        <source>Turbidity</source>
        <translation>Turbidez</translation>
    </message>
</context>
<context>
    <name>back</name>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>The photometer’s line: where it is plugged in, and which profile speaks its language.</source>
        <translation>La línea del fotómetro: dónde está conectado y qué perfil habla su idioma.</translation>
    </message>
    <message>
        <source>The shop</source>
        <translation>La tienda</translation>
    </message>
    <message>
        <source>What every sheet is signed with. The numbers stand on the Emergency page and on paper.</source>
        <translation>Con qué se firma cada hoja. Los números aparecen en la página de Emergencia y en el papel.</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Registros</translation>
    </message>
    <message>
        <source>Where visits are kept. A reading is shown as kept only once it is safe on the disk.</source>
        <translation>Dónde se guardan las visitas. Una lectura se muestra como guardada solo cuando está segura en el disco.</translation>
    </message>
    <message>
        <source>Shelf list</source>
        <translation>Productos</translation>
    </message>
    <message>
        <source>What the shop sells. A plan names only what stands here.</source>
        <translation>Lo que vende la tienda. Un plan nombra solo lo que figura aquí.</translation>
    </message>
    <message>
        <source>Methods</source>
        <translation>Métodos</translation>
    </message>
    <message>
        <source>How each reading may be taken: the range, and the spread of one reading.</source>
        <translation>Cómo puede tomarse cada lectura: el intervalo y la dispersión de una lectura.</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Puerto</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Street</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Emergency number here</source>
        <translation>Número de emergencia local</translation>
    </message>
    <message>
        <source>Poison line</source>
        <translation>Centro de toxicología</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Printer’s queue; empty for the usual one</source>
        <translation>Cola de impresión; vacío para la habitual</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 a %2&#xa0;%3</translation>
    </message>
    <message>
        <source>method %1</source>
        <translation>método %1</translation>
    </message>
    <message>
        <source>Reagents</source>
        <translation>Reactivos</translation>
    </message>
    <message>
        <source>Lots and their days: new every season, kept cool and away from chlorine. A reading of a spoilt lot is asked for again.</source>
        <translation>Los lotes y sus fechas: nuevos cada temporada, frescos y lejos del cloro. Una lectura con un lote estropeado se vuelve a pedir.</translation>
    </message>
    <message>
        <source>Instrument checks</source>
        <translation>Controles del instrumento</translation>
    </message>
    <message>
        <source>Each instrument against its standards, every month. What failed is not believed until it is right again.</source>
        <translation>Cada instrumento frente a sus patrones, cada mes. Lo que falló no se cree hasta que vuelva a ir bien.</translation>
    </message>
    <message>
        <source>Control charts</source>
        <translation>Cartas de control</translation>
    </message>
    <message>
        <source>Standards of known value, measured again and again. Each mark is one measurement, in standard deviations (sd) from what it should be.</source>
        <translation>Patrones de valor conocido, medidos una y otra vez. Cada marca es una medición, en desviaciones estándar (de) respecto a lo que debería ser.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>%1, spread %2 %3 and %4 %</source>
        <translation>%1, dispersión %2 %3 y %4 %</translation>
    </message>
    <message>
        <source>%1, spread %2 %3</source>
        <translation>%1, dispersión %2 %3</translation>
    </message>
    <message>
        <source>Language of this screen</source>
        <translation>Idioma de esta pantalla</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Objetivos</translation>
    </message>
    <message>
        <source>What a reading should be at home. The shop may set its own; what could harm is refused in every plan all the same.</source>
        <translation>Lo que debe dar una lectura en casa. La tienda puede fijar lo suyo; lo que podría dañar se rechaza igualmente en cada plan.</translation>
    </message>
    <message>
        <source>Code for public water</source>
        <translation>Norma para aguas públicas</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>This screen</source>
        <translation>Esta pantalla</translation>
    </message>
    <message>
        <source>What the screen of this counter looks like. Paper is not changed by it.</source>
        <translation>Cómo se ve la pantalla de este mostrador. El papel no cambia.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>%1: none</source>
        <translation>%1: ninguno</translation>
    </message>
    <message>
        <source>Which instrument</source>
        <translation>Qué instrumento</translation>
    </message>
    <message>
        <source>Listener</source>
        <translation>Escucha</translation>
    </message>
    <message>
        <source>For an instrument nobody knows yet: what it sends, and which profile understands it. Let it measure while it is listened to.</source>
        <translation>Para un instrumento que nadie conoce aún: qué envía y qué perfil lo entiende. Hágalo medir mientras se le escucha.</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Sin usar</translation>
    </message>
    <message>
        <source>A new customer measures in</source>
        <translation>Un cliente nuevo mide en</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>One a day, opened and counted before it counts; of the old ones seven days, four weeks and twelve months are kept. Best on a stick that is not always plugged in.</source>
        <translation>Una al día, abierta y contada antes de darla por buena; de las viejas se guardan siete días, cuatro semanas y doce meses. Mejor en una memoria que no esté siempre conectada.</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>With nobody written down the counter is open to all. The first one must be able to let others in.</source>
        <translation>Si no hay nadie apuntado, el mostrador está abierto a todos. La primera persona debe poder dar entrada a otras.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>What is known of one customer, as a file for them, or forgotten when they ask.</source>
        <translation>Lo que se sabe de un cliente, en un archivo para él, u olvidado si lo pide.</translation>
    </message>
    <message>
        <source>Audit trail</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Who changed what, when, and why. Nothing here is ever changed or removed.</source>
        <translation>Quién cambió qué, cuándo y por qué. Aquí nunca se cambia ni se borra nada.</translation>
    </message>
    <message>
        <source>Customers on Arrivals</source>
        <translation>Clientes en Llegadas</translation>
    </message>
    <message>
        <source>A PIN is asked for again after</source>
        <translation>El PIN se pide de nuevo después de</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tablas</translation>
    </message>
    <message>
        <source>Everything in the records for other programs, and what other programs wrote brought in. Tables hold people’s addresses: keep them as you keep the records.</source>
        <translation>Todo lo que hay en los registros para otros programas, y lo que otros programas escribieron. Las tablas guardan direcciones de personas: cuídelas como los registros.</translation>
    </message>
    <message>
        <source>Due for a test</source>
        <translation>Toca análisis</translation>
    </message>
    <message>
        <source>Whose next bottle is due: by the plan told, or else a month after the last one.</source>
        <translation>A quién le toca traer el próximo frasco: según el plan dado o, si no, un mes después del último.</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>La semana</translation>
    </message>
    <message>
        <source>What came to the counter, whether the plans of before worked, and what was used up for it. No names stand in it.</source>
        <translation>Lo que llegó al mostrador, si funcionaron los planes anteriores y lo que se gastó para ello. No contiene nombres.</translation>
    </message>
    <message>
        <source>Sounds</source>
        <translation>Sonidos</translation>
    </message>
    <message>
        <source>Double cards</source>
        <translation>Fichas dobles</translation>
    </message>
    <message>
        <source>Cards that may be one person’s. Joined, their vessels and visits stand under one card; it can be taken apart again.</source>
        <translation>Fichas que quizá sean de una misma persona. Unidas, sus vasos y visitas quedan en una sola ficha; se pueden volver a separar.</translation>
    </message>
    <message>
        <source>Each day</source>
        <translation>Cada día</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Shop and staff</source>
        <translation>La tienda</translation>
    </message>
</context>
<context>
    <name>brimline::BackDesk</name>
    <message>
        <source>Listen here</source>
        <translation>Escuchar aquí</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Database</source>
        <translation>Base de datos</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>The settings’ file cannot be written: %1</source>
        <translation>No se puede escribir el archivo de ajustes: %1</translation>
    </message>
    <message>
        <source>Only a keeper may change this.</source>
        <translation>Solo un encargado puede cambiar esto.</translation>
    </message>
    <message>
        <source>As it was before.</source>
        <translation>Como estaba antes.</translation>
    </message>
    <message>
        <source>A file cannot be written; look at the list.</source>
        <translation>No se puede escribir un archivo; mire la lista.</translation>
    </message>
</context>
<context>
    <name>brimline::BackPaper</name>
    <message>
        <source>Sent to the printer. %1</source>
        <translation>Enviado a la impresora. %1</translation>
    </message>
</context>
<context>
    <name>brimline::BackupForm</name>
    <message>
        <source>None: make one now</source>
        <translation>Ninguna: hacer una ahora</translation>
    </message>
    <message>
        <source>Folder or stick; empty: beside the records</source>
        <translation>Carpeta o memoria; vacío: junto a los registros</translation>
    </message>
    <message>
        <source>A backup to bring back</source>
        <translation>Una copia para recuperar</translation>
    </message>
    <message>
        <source>Cannot be used</source>
        <translation>No se puede usar</translation>
    </message>
    <message>
        <source>last bottle %1</source>
        <translation>último frasco %1</translation>
    </message>
    <message>
        <source>In this backup</source>
        <translation>En esta copia</translation>
    </message>
    <message>
        <source>%1 visits, %2 customers</source>
        <translation>%1 visitas, %2 clientes</translation>
    </message>
    <message>
        <source>In the records now</source>
        <translation>En los registros ahora</translation>
    </message>
    <message>
        <source>If it is brought back</source>
        <translation>Si se recupera</translation>
    </message>
    <message>
        <source>The records of now are set aside under another name, not deleted.</source>
        <translation>Los registros actuales se apartan con otro nombre, no se borran.</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Hacer copia ahora</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Recuperarla</translation>
    </message>
    <message>
        <source>A backup is being made.</source>
        <translation>Se está haciendo una copia.</translation>
    </message>
    <message>
        <source>The counter closes its records and opens the backup’s.</source>
        <translation>El mostrador cierra sus registros y abre los de la copia.</translation>
    </message>
    <message>
        <source>A backup is being made ...</source>
        <translation>Haciendo una copia ...</translation>
    </message>
    <message>
        <source>Backed up, opened and counted: %1</source>
        <translation>Copia hecha, abierta y contada: %1</translation>
    </message>
    <message>
        <source>No backup was made: %1</source>
        <translation>No se hizo ninguna copia: %1</translation>
    </message>
</context>
<context>
    <name>brimline::BenchDesk</name>
    <message>
        <source>%1 of %2 kept</source>
        <translation>%1 de %2 lecturas</translation>
    </message>
    <message>
        <source>No bottle is on the bench</source>
        <translation>No hay ningún frasco en análisis</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>No falta ninguna lectura</translation>
    </message>
    <message>
        <source>All %1 readings are kept</source>
        <translation>Las %1 lecturas están guardadas</translation>
    </message>
    <message>
        <source>%1 of %2 readings kept</source>
        <translation>%1 de %2 lecturas guardadas</translation>
    </message>
    <message>
        <source>%1 cannot be %2. Please read it again.</source>
        <translation>%1 no puede ser %2. Repita la lectura.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>%1 came in for bottle %2 and was kept there.</source>
        <translation>Llegó %1 para el frasco %2 y se guardó allí.</translation>
    </message>
    <message>
        <source>%1 was not kept: %2</source>
        <translation>%1 no se guardó: %2</translation>
    </message>
    <message>
        <source>%1 came in %2 for bottle %3, which does not wait here. Whose is it?</source>
        <translation>%1 llegó %2 para el frasco %3, que no espera aquí. ¿De quién es?</translation>
    </message>
    <message>
        <source>%1 came in %2 while no bottle was on the counter. Whose is it?</source>
        <translation>%1 llegó %2 sin ningún frasco en el mostrador. ¿De quién es?</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>Of %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>Take back %1 %2</source>
        <translation>Retirar %1 %2</translation>
    </message>
    <message>
        <source>Done: %1.</source>
        <translation>Hecho: %1.</translation>
    </message>
    <message>
        <source>All %1 due are kept, and %2 more</source>
        <translation>Las %1 debidas están guardadas, y %2 más</translation>
    </message>
    <message>
        <source>All %1 of %2</source>
        <translation>Las %1 son de %2</translation>
    </message>
    <message>
        <source>A reading has come in that belongs to no bottle yet. It waits at the bench.</source>
        <translation>Ha llegado una lectura que aún no es de ningún frasco. Espera en Análisis.</translation>
    </message>
    <message>
        <source>%1 readings have come in that belong to no bottle yet. They wait at the bench.</source>
        <translation>Han llegado %1 lecturas que aún no son de ningún frasco. Esperan en Análisis.</translation>
    </message>
    <message>
        <source>%1 has come in by itself; the pad is at %2 now.</source>
        <translation>%1: la lectura ha llegado sola; el teclado está ahora en %2.</translation>
    </message>
</context>
<context>
    <name>brimline::ChartDesk</name>
    <message>
        <source>No standard is written down yet. A glass or a solution of known value, measured every week, shows when an instrument drifts.</source>
        <translation>Aún no hay ningún patrón anotado. Un vidrio o una solución de valor conocido, medido cada semana, muestra cuándo se desvía un instrumento.</translation>
    </message>
    <message>
        <source>should be</source>
        <translation>debería ser</translation>
    </message>
    <message>
        <source>+%1 sd</source>
        <translation>+%1 de</translation>
    </message>
    <message>
        <source>−%1 sd</source>
        <translation>−%1 de</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Not kept: choose the standard first.</source>
        <translation>No guardado: elija primero el patrón.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No guardado: %1</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 está guardado.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not what the instrument can show.</source>
        <translation>No guardado: «%1» no es algo que el instrumento pueda mostrar.</translation>
    </message>
    <message>
        <source>Put the standard in and measure it: the next value that comes in is kept here.</source>
        <translation>Ponga el patrón y mídalo: el próximo valor que llegue se guarda aquí.</translation>
    </message>
    <message>
        <source>Not cleared: write who clears it.</source>
        <translation>No liberado: escriba quién lo libera.</translation>
    </message>
    <message>
        <source>Not cleared: write what was found and done.</source>
        <translation>No liberado: escriba qué se encontró y qué se hizo.</translation>
    </message>
    <message>
        <source>Not cleared: %1</source>
        <translation>No liberado: %1</translation>
    </message>
    <message>
        <source>Cleared by %1. Measure the standards now, before the next bottle.</source>
        <translation>Liberado por %1. Mida los patrones ahora, antes de el próximo frasco.</translation>
    </message>
    <message>
        <source>Not kept: name the instrument, as its readings do.</source>
        <translation>No guardado: nombre el instrumento como lo hacen sus lecturas.</translation>
    </message>
    <message>
        <source>Not kept: name the standard.</source>
        <translation>No guardado: nombre el patrón.</translation>
    </message>
    <message>
        <source>Not kept: say what it is a standard of.</source>
        <translation>No guardado: diga de qué es patrón.</translation>
    </message>
    <message>
        <source>Not kept: its value is missing or cannot be.</source>
        <translation>No guardado: falta su valor o es imposible.</translation>
    </message>
    <message>
        <source>Not kept: the spread is to be a number above zero.</source>
        <translation>No guardado: la dispersión ha de ser un número mayor que cero.</translation>
    </message>
    <message>
        <source>Not kept: the days between checks are to be 1 or more.</source>
        <translation>No guardado: los días entre controles han de ser 1 o más.</translation>
    </message>
    <message>
        <source>%1 is kept: measure it once now.</source>
        <translation>%1 está guardado: mídalo una vez ahora.</translation>
    </message>
    <message>
        <source>Not kept: lot “%1” is not written down under Reagents.</source>
        <translation>No guardado: el lote «%1» no está anotado en Reactivos.</translation>
    </message>
    <message>
        <source>Not kept: the wavelength is to be 190 to 1100 nm.</source>
        <translation>No guardado: la longitud de onda ha de ser de 190 a 1100 nm.</translation>
    </message>
    <message>
        <source>Not kept: five standards or more, as “0 0.001; 1 0.197; 2 0.394”.</source>
        <translation>No guardado: cinco patrones o más, como «0 0.001; 1 0.197; 2 0.394».</translation>
    </message>
    <message>
        <source>Not kept: the absorbances do not follow the standards.</source>
        <translation>No guardado: las absorbancias no siguen a los patrones.</translation>
    </message>
    <message>
        <source>a straight line</source>
        <translation>una recta</translation>
    </message>
    <message>
        <source>a parabola</source>
        <translation>una parábola</translation>
    </message>
    <message>
        <source>The curve of lot %1 is kept: %2 from %3 to %4, spread of the method %5.</source>
        <translation>La curva del lote %1 está guardada: %2 de %3 a %4, dispersión del método %5.</translation>
    </message>
    <message>
        <source>Two numbers a water are wanted, as “1.02 1.05; 2.10 2.08”.</source>
        <translation>Hacen falta dos números por agua, como «1.02 1.05; 2.10 2.08».</translation>
    </message>
    <message>
        <source>Write the difference that may be: a number above zero.</source>
        <translation>Escriba la diferencia admisible: un número mayor que cero.</translation>
    </message>
    <message>
        <source>Read two waters or more with both lots.</source>
        <translation>Lea dos aguas o más con ambos lotes.</translation>
    </message>
    <message>
        <source>%1 waters: the new lot reads %2 more (95 %: %3 to %4).</source>
        <translation>%1 aguas: el lote nuevo lee %2 más (95 %: de %3 a %4).</translation>
    </message>
    <message>
        <source>The lots are alike.</source>
        <translation>Los lotes son iguales.</translation>
    </message>
    <message>
        <source>The lots differ: do not use the new one before its curve or its supplier has been asked.</source>
        <translation>Los lotes difieren: no use el nuevo antes de consultar su curva o a su proveedor.</translation>
    </message>
    <message>
        <source>That does not tell: read more waters with both.</source>
        <translation>Eso no lo decide: lea más aguas con ambos.</translation>
    </message>
</context>
<context>
    <name>brimline::Counter</name>
    <message>
        <source>This visit is not in the records.</source>
        <translation>Esta visita no está en los registros.</translation>
    </message>
    <message>
        <source>There is no bottle on the counter.</source>
        <translation>No hay ningún frasco en el mostrador.</translation>
    </message>
    <message>
        <source>There is no reading to take back.</source>
        <translation>No hay ninguna lectura que retirar.</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirada</translation>
    </message>
</context>
<context>
    <name>brimline::Desk</name>
    <message>
        <source>Not said whose</source>
        <translation>Sin dueño indicado</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>tomado: %1</translation>
    </message>
    <message>
        <source>nothing read yet</source>
        <translation>sin lecturas aún</translation>
    </message>
    <message>
        <source>1 reading kept</source>
        <translation>1 lectura guardada</translation>
    </message>
    <message>
        <source>%1 readings kept</source>
        <translation>%1 lecturas guardadas</translation>
    </message>
    <message>
        <source>Arrivals</source>
        <translation>Llegadas</translation>
    </message>
    <message>
        <source>1 waiting</source>
        <translation>1 en espera</translation>
    </message>
    <message>
        <source>%1 waiting</source>
        <translation>%1 en espera</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>whose?</source>
        <translation>¿de quién?</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Análisis</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Diagnóstico</translation>
    </message>
    <message>
        <source>1 to know</source>
        <translation>1 observación</translation>
    </message>
    <message>
        <source>%1 to know</source>
        <translation>%1 observaciones</translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation>Indicaciones</translation>
    </message>
    <message>
        <source>no home plan</source>
        <translation>sin plan para casa</translation>
    </message>
    <message>
        <source>1 step</source>
        <translation>1 paso</translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation>%1 pasos</translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation>Antes y ahora</translation>
    </message>
    <message>
        <source>1 earlier</source>
        <translation>1 anterior</translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation>%1 anteriores</translation>
    </message>
    <message>
        <source>Back room</source>
        <translation>Trastienda</translation>
    </message>
    <message>
        <source>1 test due</source>
        <translation>1 prueba por leer</translation>
    </message>
    <message>
        <source>%1 tests due</source>
        <translation>%1 pruebas por leer</translation>
    </message>
    <message>
        <source>1 check due</source>
        <translation>1 control pendiente</translation>
    </message>
    <message>
        <source>%1 checks due</source>
        <translation>%1 controles pendientes</translation>
    </message>
    <message>
        <source>Another counter changed the same meanwhile. %1. Which is right?</source>
        <translation>Otro mostrador cambió lo mismo entretanto. %1. ¿Cuál vale?</translation>
    </message>
    <message>
        <source>not seen for %1 months</source>
        <translation>sin venir desde hace %1 meses</translation>
    </message>
</context>
<context>
    <name>brimline::DueForm</name>
    <message>
        <source>Which</source>
        <translation>Cuáles</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Atrasados</translation>
    </message>
    <message>
        <source>Due within a week</source>
        <translation>En una semana</translation>
    </message>
    <message>
        <source>Due within a month</source>
        <translation>En un mes</translation>
    </message>
    <message>
        <source>A reminder for</source>
        <translation>Un recordatorio para</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>A letter, printed</source>
        <translation>Carta impresa</translation>
    </message>
    <message>
        <source>A letter, as a file</source>
        <translation>Carta en archivo</translation>
    </message>
    <message>
        <source>An entry for their calendar</source>
        <translation>Cita para su calendario</translation>
    </message>
    <message>
        <source>overdue, days: %1</source>
        <translation>atrasado, días: %1</translation>
    </message>
    <message>
        <source>due, in days: %1</source>
        <translation>toca en días: %1</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Nadie</translation>
    </message>
    <message>
        <source>A vessel stands here from the day its next bottle is due.</source>
        <translation>Una piscina o un spa aparece aquí desde el día en que le toca el frasco.</translation>
    </message>
    <message>
        <source>Print it</source>
        <translation>Imprimirla</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribirla</translation>
    </message>
    <message>
        <source>Choose somebody first.</source>
        <translation>Elija antes a alguien.</translation>
    </message>
    <message>
        <source>Making the letter ...</source>
        <translation>Preparando la carta ...</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>No se puede crear %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>No se puede escribir %1.</translation>
    </message>
    <message>
        <source>Written to %1: it may be sent to the customer, and names nobody.</source>
        <translation>Escrito en %1: puede enviarse al cliente y no nombra a nadie.</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Buscando ...</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Ahora no se pueden leer los registros.</translation>
    </message>
</context>
<context>
    <name>brimline::FirstStart</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>brimline::HandDesk</name>
    <message>
        <source>%1 % of what was told</source>
        <translation>%1 % de lo indicado</translation>
    </message>
    <message>
        <source>%1 US gal</source>
        <translation>%1 gal EE. UU.</translation>
    </message>
    <message>
        <source>%1 m³</source>
        <translation>%1 m³</translation>
    </message>
    <message>
        <source>A portion would be %1.</source>
        <translation>%1 sería una porción.</translation>
    </message>
    <message>
        <source>In range: %1 % of the draws, %2 % as told.</source>
        <translation>Dentro de los objetivos: %1 % de las simulaciones, %2 % con lo indicado.</translation>
    </message>
</context>
<context>
    <name>brimline::Kiosk</name>
    <message>
        <source>The backup is back: %1.</source>
        <translation>La copia está recuperada: %1.</translation>
    </message>
    <message>
        <source>The backup was not brought back: %1</source>
        <translation>La copia no se recuperó: %1</translation>
    </message>
    <message>
        <source>The records of before are set aside: %1.</source>
        <translation>Los registros de antes están apartados: %1.</translation>
    </message>
    <message>
        <source>The newest sound backup is of %1 and holds %2 visits.</source>
        <translation>La copia buena más reciente es del %1 y tiene %2 visitas.</translation>
    </message>
</context>
<context>
    <name>brimline::LockDesk</name>
    <message>
        <source>Too many wrong PINs: wait %1 seconds.</source>
        <translation>Demasiados PIN erróneos: espere %1 segundos.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Ese no es el PIN.</translation>
    </message>
    <message>
        <source>Choose a name first.</source>
        <translation>Elija primero un nombre.</translation>
    </message>
</context>
<context>
    <name>brimline::OvernightDesk</name>
    <message>
        <source>Overnight test</source>
        <translation>Prueba de 24 h</translation>
    </message>
    <message>
        <source>Overnight test: %1</source>
        <translation>Prueba de 24 h: %1</translation>
    </message>
    <message>
        <source>An overnight test of this water</source>
        <translation>Prueba de un día para otro de esta agua</translation>
    </message>
    <message>
        <source>Overnight test: the bottles</source>
        <translation>Prueba de 24 h: los frascos</translation>
    </message>
    <message>
        <source>Overnight test: the stock</source>
        <translation>Prueba de 24 h: la solución madre</translation>
    </message>
    <message>
        <source>Overnight test: labels, then chlorine</source>
        <translation>Prueba de 24 h: etiquetas, luego cloro</translation>
    </message>
    <message>
        <source>Overnight test: the readings</source>
        <translation>Prueba de 24 h: las lecturas</translation>
    </message>
    <message>
        <source>Overnight test: the result</source>
        <translation>Prueba de 24 h: el resultado</translation>
    </message>
    <message>
        <source>Set one up</source>
        <translation>Preparar una</translation>
    </message>
    <message>
        <source>To the stock</source>
        <translation>A la solución</translation>
    </message>
    <message>
        <source>To the labels</source>
        <translation>A las etiquetas</translation>
    </message>
    <message>
        <source>All dosed: start the clock</source>
        <translation>Todos dosificados: iniciar el reloj</translation>
    </message>
    <message>
        <source>Put the result into the plan</source>
        <translation>Pasar el resultado al plan</translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation>Indicaciones</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>Making the labels …</source>
        <translation>Preparando las etiquetas …</translation>
    </message>
    <message>
        <source>The labels are not on paper: %1</source>
        <translation>Las etiquetas no están en papel: %1</translation>
    </message>
    <message>
        <source>Strength check: free chlorine</source>
        <translation>Control de la solución: cloro libre</translation>
    </message>
    <message>
        <source>%1 cannot be %2. Please read it again.</source>
        <translation>%1 no puede ser %2. Repita la lectura.</translation>
    </message>
    <message>
        <source>Put away: the customer was told.</source>
        <translation>Archivada: el cliente está avisado.</translation>
    </message>
    <message>
        <source>The test is given up. What was read of it stays on record.</source>
        <translation>Prueba abandonada. Lo leído queda registrado.</translation>
    </message>
    <message>
        <source>Another test of this bottle was begun meanwhile.</source>
        <translation>Mientras tanto se empezó otra prueba de este frasco.</translation>
    </message>
</context>
<context>
    <name>brimline::PlanDesk</name>
    <message>
        <source>They get home %1</source>
        <translation>Llega a casa: %1</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation>No hay ningún frasco en el mostrador</translation>
    </message>
    <message>
        <source>Nothing has been read yet</source>
        <translation>Aún no se ha leído nada</translation>
    </message>
    <message>
        <source>Working it out</source>
        <translation>Calculando</translation>
    </message>
    <message>
        <source>This water is in order</source>
        <translation>Esta agua está en orden</translation>
    </message>
    <message>
        <source>What this water says</source>
        <translation>Lo que dice esta agua</translation>
    </message>
    <message>
        <source>No sheet was made, for the visit could not be kept: %1</source>
        <translation>No se hizo ninguna hoja porque la visita no pudo guardarse: %1</translation>
    </message>
    <message>
        <source>The visit is kept; making the sheet …</source>
        <translation>La visita está guardada; preparando la hoja …</translation>
    </message>
    <message>
        <source>The visit is kept, but the sheet is not on paper: %1</source>
        <translation>La visita está guardada, pero la hoja no está en papel: %1</translation>
    </message>
    <message>
        <source>The bottle has changed: what was changed by hand is dropped.</source>
        <translation>El frasco ha cambiado: lo cambiado a mano se descarta.</translation>
    </message>
    <message>
        <source>Making the card …</source>
        <translation>Haciendo la ficha …</translation>
    </message>
    <message>
        <source>Emergency card</source>
        <translation>Ficha de emergencia</translation>
    </message>
</context>
<context>
    <name>brimline::PrintWatch</name>
    <message>
        <source>sent to the printer</source>
        <translation>enviada a la impresora</translation>
    </message>
    <message>
        <source>It comes out by itself once that is mended: do not print it again.</source>
        <translation>Saldrá por sí sola cuando se arregle: no la imprima otra vez.</translation>
    </message>
    <message>
        <source>The print service does not let it be taken back: look at the printer before printing again.</source>
        <translation>El servicio de impresión no permite retirarla: mire la impresora antes de imprimir otra vez.</translation>
    </message>
</context>
<context>
    <name>brimline::StaffForm</name>
    <message>
        <source>Not kept: a PIN has at least 4 digits.</source>
        <translation>No guardado: un PIN tiene al menos 4 cifras.</translation>
    </message>
    <message>
        <source>Not kept: a PIN has at most 12 digits.</source>
        <translation>No guardado: un PIN tiene como mucho 12 cifras.</translation>
    </message>
    <message>
        <source>Not kept: a PIN is digits alone.</source>
        <translation>No guardado: un PIN son solo cifras.</translation>
    </message>
    <message>
        <source>Not kept: anybody would guess this PIN.</source>
        <translation>No guardado: cualquiera adivinaría este PIN.</translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation>Alguien nuevo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Name, as it signs</source>
        <translation>Nombre, como firma</translation>
    </message>
    <message>
        <source>PIN, 4 to 12 digits</source>
        <translation>PIN, de 4 a 12 cifras</translation>
    </message>
    <message>
        <source>New PIN; empty: the old one stays</source>
        <translation>PIN nuevo; vacío: queda el viejo</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Puede</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Trabaja aquí</translation>
    </message>
    <message>
        <source>works here no longer</source>
        <translation>ya no trabaja aquí</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Not kept: the name is missing.</source>
        <translation>No guardado: falta el nombre.</translation>
    </message>
    <message>
        <source>One moment ...</source>
        <translation>Un momento ...</translation>
    </message>
    <message>
        <source>Not kept: there is no memory for it.</source>
        <translation>No guardado: no hay memoria.</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 queda guardado.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No guardado: %1</translation>
    </message>
</context>
<context>
    <name>brimline::TablesForm</name>
    <message>
        <source>Write everything out as tables</source>
        <translation>Escribir todo como tablas</translation>
    </message>
    <message>
        <source>Bring in customers and earlier readings</source>
        <translation>Traer clientes y lecturas anteriores</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Folder or stick; a new folder is made in it</source>
        <translation>Carpeta o memoria; se crea en ella una carpeta nueva</translation>
    </message>
    <message>
        <source>Table of customers, a CSV file</source>
        <translation>Tabla de clientes, un archivo CSV</translation>
    </message>
    <message>
        <source>Table of earlier readings, a CSV file</source>
        <translation>Tabla de lecturas anteriores, un archivo CSV</translation>
    </message>
    <message>
        <source>%1 in the records already</source>
        <translation>%1 ya en los registros</translation>
    </message>
    <message>
        <source>%1 new</source>
        <translation>%1 nuevos</translation>
    </message>
    <message>
        <source>Customers</source>
        <translation>Clientes</translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation>Piscinas y spas</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitido</translation>
    </message>
    <message>
        <source>Left as it is</source>
        <translation>Sin cambios</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Write them</source>
        <translation>Escribirlas</translation>
    </message>
    <message>
        <source>Look through</source>
        <translation>Examinar</translation>
    </message>
    <message>
        <source>Keep the sound lines</source>
        <translation>Guardar las líneas válidas</translation>
    </message>
    <message>
        <source>Keep them all</source>
        <translation>Guardar todo</translation>
    </message>
    <message>
        <source>It stops at the next whole piece ...</source>
        <translation>Se detiene tras la parte en curso ...</translation>
    </message>
    <message>
        <source>%1 % done ...</source>
        <translation>%1 % hecho ...</translation>
    </message>
    <message>
        <source>Working ...</source>
        <translation>Trabajando ...</translation>
    </message>
    <message>
        <source>Name a folder first.</source>
        <translation>Indique antes una carpeta.</translation>
    </message>
    <message>
        <source>Written to %1: %2 visits, %3 customers.</source>
        <translation>Escrito en %1: %2 visitas, %3 clientes.</translation>
    </message>
    <message>
        <source>Name a table first.</source>
        <translation>Indique antes una tabla.</translation>
    </message>
    <message>
        <source>Looked through: nothing is kept yet.</source>
        <translation>Examinado: aún no se ha guardado nada.</translation>
    </message>
    <message>
        <source>Looked through: nothing is kept yet. Lines that cannot be taken: %1.</source>
        <translation>Examinado: aún no se ha guardado nada. Líneas que no se pueden tomar: %1.</translation>
    </message>
    <message>
        <source>Kept: %1 customers, %2 visits, %3 readings.</source>
        <translation>Guardado: %1 clientes, %2 visitas, %3 lecturas.</translation>
    </message>
</context>
<context>
    <name>brimline::ThenDesk</name>
    <message>
        <source>Then</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation>No hay ningún frasco en el mostrador</translation>
    </message>
    <message>
        <source>This vessel’s first bottle</source>
        <translation>Primer frasco de esta piscina o spa</translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation>Antes y ahora</translation>
    </message>
    <message>
        <source>Plan with %1</source>
        <translation>Planificar con %1</translation>
    </message>
</context>
<context>
    <name>brimline::Ticket</name>
    <message>
        <source>Taken %1</source>
        <translation>Tomado: %1</translation>
    </message>
    <message>
        <source>When it was taken is not known</source>
        <translation>No se sabe cuándo se tomó</translation>
    </message>
    <message>
        <source>A new one</source>
        <translation>Otra nueva</translation>
    </message>
    <message>
        <source>last here %1</source>
        <translation>última visita: %1</translation>
    </message>
    <message>
        <source>This could not be kept: %1</source>
        <translation>Esto no pudo guardarse: %1</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>Another counter changed this card meanwhile: it stands now as %1. Write it down again to keep yours, or leave it.</source>
        <translation>Otro mostrador cambió esta ficha mientras tanto: ahora dice %1. Anótela de nuevo para conservar la suya, o déjela.</translation>
    </message>
    <message>
        <source>From the water’s answers, ± %1 %</source>
        <translation>Por las respuestas del agua, ± %1 %</translation>
    </message>
    <message>
        <source>Known to ± %1 %</source>
        <translation>Conocido a ± %1 %</translation>
    </message>
    <message>
        <source>the vessel</source>
        <translation>la piscina o spa</translation>
    </message>
    <message>
        <source>its volume</source>
        <translation>su volumen</translation>
    </message>
    <message>
        <source>what sanitizes it</source>
        <translation>con qué se desinfecta</translation>
    </message>
    <message>
        <source>pool or spa</source>
        <translation>piscina o spa</translation>
    </message>
    <message>
        <source>Not said yet: %1.</source>
        <translation>Falta decir: %1.</translation>
    </message>
</context>
<context>
    <name>brimline::TwinsForm</name>
    <message>
        <source>One person: keep the first card</source>
        <translation>Una persona: se queda la primera ficha</translation>
    </message>
    <message>
        <source>One person: keep the second card</source>
        <translation>Una persona: se queda la segunda ficha</translation>
    </message>
    <message>
        <source>Two people</source>
        <translation>Dos personas</translation>
    </message>
    <message>
        <source>Take the last join apart</source>
        <translation>Separar la última unión</translation>
    </message>
    <message>
        <source>What the first pair of the list is</source>
        <translation>Qué es el primer par de la lista</translation>
    </message>
    <message>
        <source>Nobody</source>
        <translation>Nadie</translation>
    </message>
    <message>
        <source>No two cards look alike.</source>
        <translation>No hay dos fichas que se parezcan.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Look through the cards</source>
        <translation>Revisar las fichas</translation>
    </message>
    <message>
        <source>Take apart</source>
        <translation>Separar</translation>
    </message>
    <message>
        <source>Join the cards</source>
        <translation>Unir las fichas</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>No se ha hecho: %1</translation>
    </message>
    <message>
        <source>Taken apart: both cards are as they were.</source>
        <translation>Separadas: las dos fichas están como antes.</translation>
    </message>
    <message>
        <source>Two people: %1 is not offered again.</source>
        <translation>Dos personas: %1 no se vuelve a proponer.</translation>
    </message>
    <message>
        <source>Joined: %1.</source>
        <translation>Unidas: %1.</translation>
    </message>
    <message>
        <source>Looking ...</source>
        <translation>Buscando ...</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Ahora no se pueden leer los registros.</translation>
    </message>
</context>
<context>
    <name>brimline::VolumeForm</name>
    <message>
        <source>Rectangle</source>
        <translation>Rectángulo</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Redonda</translation>
    </message>
    <message>
        <source>Oval</source>
        <translation>Óvalo</translation>
    </message>
    <message>
        <source>Rounded ends</source>
        <translation>Extremos redondos</translation>
    </message>
    <message>
        <source>Kidney</source>
        <translation>Riñón</translation>
    </message>
    <message>
        <source>Other, by area</source>
        <translation>Otra, por área</translation>
    </message>
    <message>
        <source>Water meter</source>
        <translation>Contador de agua</translation>
    </message>
    <message>
        <source>One depth</source>
        <translation>Una sola profundidad</translation>
    </message>
    <message>
        <source>Sloping</source>
        <translation>En pendiente</translation>
    </message>
    <message>
        <source>A shallow and a deep part</source>
        <translation>Una parte baja y otra honda</translation>
    </message>
    <message>
        <source>With a tape</source>
        <translation>Con cinta métrica</translation>
    </message>
    <message>
        <source>By eye, or from memory</source>
        <translation>A ojo, o de memoria</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>galones de EE. UU.</translation>
    </message>
    <message>
        <source>Cubic feet</source>
        <translation>Pies cúbicos</translation>
    </message>
    <message>
        <source>%1, the ± being one standard deviation.</source>
        <translation>%1; el ± es una desviación típica.</translation>
    </message>
    <message>
        <source>By meter, ± %1 %</source>
        <translation>Por contador, ± %1 %</translation>
    </message>
    <message>
        <source>By its shape, ± %1 %</source>
        <translation>Por su forma, ± %1 %</translation>
    </message>
    <message>
        <source>This could not be kept: %1</source>
        <translation>No se pudo guardar: %1</translation>
    </message>
    <message>
        <source>Taken: %1. Before, it was %2.</source>
        <translation>Tomado: %1. Antes era %2.</translation>
    </message>
    <message>
        <source>Taken: %1.</source>
        <translation>Tomado: %1.</translation>
    </message>
</context>
<context>
    <name>brimline::WeekForm</name>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>Last week</source>
        <translation>La semana pasada</translation>
    </message>
    <message>
        <source>%1 weeks ago</source>
        <translation>Hace %1 semanas</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>A sheet, printed</source>
        <translation>Una hoja, impresa</translation>
    </message>
    <message>
        <source>A sheet, as a file</source>
        <translation>Una hoja, como archivo</translation>
    </message>
    <message>
        <source>A table (CSV)</source>
        <translation>Una tabla (CSV)</translation>
    </message>
    <message>
        <source>The records cannot be read now.</source>
        <translation>Ahora no se pueden leer los registros.</translation>
    </message>
    <message>
        <source>Print it</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribir</translation>
    </message>
    <message>
        <source>Making the sheet ...</source>
        <translation>Haciendo la hoja ...</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>No se puede crear %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>No se puede escribir %1.</translation>
    </message>
    <message>
        <source>Written to %1. No names stand in it.</source>
        <translation>Escrito en %1. No contiene nombres.</translation>
    </message>
    <message>
        <source>Counting ...</source>
        <translation>Contando ...</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Not counted</source>
        <translation>Sin contar</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Contarla</translation>
    </message>
</context>
<context>
    <name>brimline::YearChart</name>
    <message>
        <source>%1 readings in the year, from %2 to %3.</source>
        <translation>%1 lecturas en el año, de %2 a %3.</translation>
    </message>
    <message>
        <source>It has no target.</source>
        <translation>No tiene objetivo.</translation>
    </message>
    <message>
        <source>Target %1: %2 outside it.</source>
        <translation>Objetivo %1: %2 fuera de él.</translation>
    </message>
    <message>
        <source>No doses were told.</source>
        <translation>No se indicaron dosis.</translation>
    </message>
    <message>
        <source>Doses told: %1, of which %2 move it.</source>
        <translation>Dosis indicadas: %1, de las cuales %2 la mueven.</translation>
    </message>
    <message>
        <source>%1: more than %2.</source>
        <translation>%1: más de %2.</translation>
    </message>
    <message>
        <source>%1: less than %2.</source>
        <translation>%1: menos de %2.</translation>
    </message>
    <message>
        <source>%1: %2, outside.</source>
        <translation>%1: %2, fuera.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>charts</name>
    <message>
        <source>one beyond 2 sd, a warning (1-2s)</source>
        <translation>una más allá de 2 de, un aviso (1-2s)</translation>
    </message>
    <message>
        <source>one beyond 3 sd (1-3s)</source>
        <translation>una más allá de 3 de (1-3s)</translation>
    </message>
    <message>
        <source>two in a row beyond the same 2 sd (2-2s)</source>
        <translation>dos seguidas más allá de las mismas 2 de (2-2s)</translation>
    </message>
    <message>
        <source>one beyond +2 sd and one beyond −2 sd together (R-4s)</source>
        <translation>una más allá de +2 de y otra más allá de −2 de juntas (R-4s)</translation>
    </message>
    <message>
        <source>four in a row beyond the same 1 sd (4-1s)</source>
        <translation>cuatro seguidas más allá de la misma 1 de (4-1s)</translation>
    </message>
    <message>
        <source>ten in a row on one side of the mean (10x)</source>
        <translation>diez seguidas a un lado de la media (10x)</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>to be checked</source>
        <translation>por controlar</translation>
    </message>
    <message>
        <source>right</source>
        <translation>correcto</translation>
    </message>
    <message>
        <source>Stopped: %1. Its readings do not count until somebody has found the cause and clears it here, by name.</source>
        <translation>Detenido: %1. Sus lecturas no cuentan hasta que alguien haya encontrado la causa y lo libere aquí, con su nombre.</translation>
    </message>
    <message>
        <source>Not measured yet: measure every standard once.</source>
        <translation>Aún sin medir: mida cada patrón una vez.</translation>
    </message>
    <message>
        <source>The last one is a warning: measure it once more. </source>
        <translation>La última es un aviso: mídalo una vez más. </translation>
    </message>
    <message>
        <source>Last measured %1: it is due.</source>
        <translation>Última medición %1: toca hacerla.</translation>
    </message>
    <message>
        <source>Last measured %1; next by %2.</source>
        <translation>Última medición %1; la próxima hasta %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3 sd</source>
        <translation>%1: %2, %3 de</translation>
    </message>
</context>
<context>
    <name>check</name>
    <message>
        <source>With this much chlorine or bromine the pH dye is bleached or turns purple and reads high. Read pH with a probe, or add one drop of thiosulfate to the vial first, no more.</source>
        <translation>Con tanto cloro o bromo, el colorante del pH se blanquea o se pone morado y lee alto. Lea el pH con una sonda, o agregue antes una gota de tiosulfato al vial, no más.</translation>
    </message>
    <message>
        <source>With this much chlorine or bromine the alkalinity indicator is bleached or changes at the wrong point. Add one drop of thiosulfate to the vial first, no more, and read again.</source>
        <translation>Con tanto cloro o bromo, el indicador de alcalinidad se blanquea o vira en el punto equivocado. Agregue antes una gota de tiosulfato al vial, no más, y lea de nuevo.</translation>
    </message>
    <message>
        <source>At pH %1 the stabilizer and borate read would alone take %2 of alkalinity, and only %3 was found. One of the readings is wrong: repeat them.</source>
        <translation>A pH %1 el estabilizador y el borato leídos aportarían por sí solos %2 de alcalinidad, y solo se halló %3. Una de las lecturas está mal: repítalas.</translation>
    </message>
    <message>
        <source>At pH %1 there can be no alkalinity, yet %2 was found. Repeat both.</source>
        <translation>A pH %1 no puede haber alcalinidad, pero se halló %2. Repita ambas.</translation>
    </message>
    <message>
        <source>At an alkalinity of %1 the dye itself moves the pH of the vial. Take the pH as a hint, and read it again once the alkalinity is up.</source>
        <translation>Con una alcalinidad de %1 el propio colorante mueve el pH del vial. Tome el pH como indicio y léalo de nuevo cuando la alcalinidad haya subido.</translation>
    </message>
    <message>
        <source>pH was not read: no acid, soda or chlorine dose can be judged without it.</source>
        <translation>No se leyó el pH: sin él no puede juzgarse ninguna dosis de ácido, carbonato o cloro.</translation>
    </message>
    <message>
        <source>Free chlorine (%1) cannot be above total chlorine (%2). Were the vials exchanged, or the second reagent forgotten? Rinse both vials and read both again.</source>
        <translation>El cloro libre (%1) no puede superar al cloro total (%2). ¿Se cambiaron los viales o se olvidó el segundo reactivo? Enjuague ambos viales y lea los dos de nuevo.</translation>
    </message>
    <message>
        <source>The combined chlorine (%1 mg/L) is within the error of the two readings: it counts as none.</source>
        <translation>El cloro combinado (%1 mg/L) está dentro del error de las dos lecturas: cuenta como nulo.</translation>
    </message>
    <message>
        <source>chlorine was added in the last two days</source>
        <translation>se agregó cloro en los últimos dos días</translation>
    </message>
    <message>
        <source>chlorine tablets are in use</source>
        <translation>hay tabletas de cloro en uso</translation>
    </message>
    <message>
        <source>the total reading shows a good deal of chlorine</source>
        <translation>la lectura total muestra bastante cloro</translation>
    </message>
    <message>
        <source>the pH dye is at its purple end, as much chlorine turns it</source>
        <translation>el colorante del pH está en su extremo morado, como lo vuelve mucho cloro</translation>
    </message>
    <message>
        <source>Hardly any chlorine shows, yet %1. Above about %2 mg/L the colour is bleached and looks like none. Mix 1 part of sample with 4 parts of chlorine-free (deionised) water, read again and multiply by 5, before any chlorine is dosed. Do not smell the bottle to find out.</source>
        <translation>Casi no se ve cloro, aunque %1. Por encima de unos %2 mg/L el color se blanquea y parece que no hay. Mezcle 1 parte de muestra con 4 partes de agua sin cloro (desionizada), lea de nuevo y multiplique por 5 antes de dosificar cloro. No huela el frasco para averiguarlo.</translation>
    </message>
    <message>
        <source>%1 is beyond %2 mg/L, where the colour test is made for undiluted water: it may read low. Mix 1+1 with chlorine-free water and multiply by 2 if a dose depends on it.</source>
        <translation>%1 supera %2 mg/L, el límite de la prueba de color sin diluir: puede leer bajo. Mezcle 1+1 con agua sin cloro y multiplique por 2 si de ello depende una dosis.</translation>
    </message>
    <message>
        <source>Non-chlorine shock (monopersulfate) went in during the last two days and reads as combined chlorine: %1 mg/L here may be that. Read total chlorine again in two days, or with the reagent that masks monopersulfate; do not shock on this number.</source>
        <translation>En los últimos dos días se agregó choque sin cloro (monopersulfato), que se lee como cloro combinado: %1 mg/L pueden ser eso. Lea el cloro total otra vez en dos días, o con el reactivo que enmascara el monopersulfato; no haga cloración de choque por este número.</translation>
    </message>
    <message>
        <source>Manganese (%1), once oxidised, reads as up to %2 mg/L of chlorine. Read a second vial in which the chlorine is destroyed first (arsenite or thioacetamide, as the method says) and take it off.</source>
        <translation>El manganeso (%1), una vez oxidado, se lee como hasta %2 mg/L de cloro. Lea un segundo vial en el que antes se destruya el cloro (arsenito o tioacetamida, según el método) y réstelo.</translation>
    </message>
    <message>
        <source>Copper at %1 is more than the reagent can mask (about 10 mg/L): the chlorine reading may be false. Dilute 1+4 with deionised water and read again.</source>
        <translation>Cobre a %1: más de lo que el reactivo puede enmascarar (unos 10 mg/L); la lectura de cloro puede ser falsa. Diluya 1+4 con agua desionizada y lea de nuevo.</translation>
    </message>
    <message>
        <source>There is or was bromide in this water. Chlorine turns it into bromine, which reads as chlorine and which stabilizer does not protect: treat the vessel as a bromine one until the water is changed.</source>
        <translation>En esta agua hay o hubo bromuro. El cloro lo convierte en bromo, que se lee como cloro y que el estabilizador no protege: trátela como agua de bromo hasta que se cambie.</translation>
    </message>
    <message>
        <source>Peroxide (%1) and free chlorine (%2) destroy each other and cannot both be there. Peroxide colours the chlorine test: ask what went in, and read both again.</source>
        <translation>El peróxido (%1) y el cloro libre (%2) se destruyen entre sí y no pueden estar juntos. El peróxido colorea la prueba de cloro: pregunte qué se agregó y lea ambos de nuevo.</translation>
    </message>
    <message>
        <source>A chlorine neutraliser went in during the last week: what is left of it eats the next chlorine first, and may spoil the colour. The missing chlorine need not mean a demand.</source>
        <translation>En la última semana se agregó un declorador: lo que queda consume primero el próximo cloro y puede arruinar el color. El cloro que falta no tiene por qué indicar una demanda.</translation>
    </message>
    <message>
        <source>Chlorine is used up: the overnight demand test says how much this water takes before any is left.</source>
        <translation>El cloro se agota: la prueba de demanda de un día para otro indica cuánto consume esta agua antes de que quede algo.</translation>
    </message>
    <message>
        <source>Combined chlorine stays from visit to visit: the overnight demand test says how much this water takes to be rid of it.</source>
        <translation>El cloro combinado sigue de una visita a otra: la prueba de demanda de un día para otro indica cuánto hace falta para eliminarlo.</translation>
    </message>
    <message>
        <source>Green water with %1 of free chlorine is more likely metal than algae: read copper and iron.</source>
        <translation>Agua verde con %1 de cloro libre: es más probable metal que algas; lea cobre y hierro.</translation>
    </message>
    <message>
        <source>%1 readings (%2) equal last time&apos;s to the digit. Two waters hardly ever do: were last visit&apos;s numbers shown or copied? Read them again from this bottle.</source>
        <translation>%1 lecturas (%2) son iguales a las de la vez anterior hasta el último dígito. Dos aguas casi nunca lo son: ¿se mostraron o copiaron los números anteriores? Léalas de nuevo en este frasco.</translation>
    </message>
    <message>
        <source>Equal to last time&apos;s to the digit: %1. It may be chance; was it read from this bottle?</source>
        <translation>Igual que la vez anterior hasta el último dígito: %1. Puede ser casualidad; ¿se leyó en este frasco?</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3 since the last reading, further than water moves by itself and than the doses told explain. Read it again; if it stands, ask what was added or changed.</source>
        <translation>%1 pasó de %2 a %3 desde la última lectura, más de lo que el agua se mueve sola y de lo que explican las dosis indicadas. Léalo de nuevo; si se mantiene, pregunte qué se agregó o cambió.</translation>
    </message>
    <message>
        <source>%1 fell by %2 % while the rest of the salts stayed, so the water was not changed. Read it again. Stabilizer alone can be turned to ammonia by bacteria: then expect a large chlorine demand.</source>
        <translation>%1 bajó un %2&#xa0;% mientras las demás sales se mantuvieron, así que no se cambió el agua. Repita la lectura. Solo el estabilizador pueden convertirlo las bacterias en amoníaco: espere entonces una gran demanda de cloro.</translation>
    </message>
    <message>
        <source>By the times noted this bottle was filled before the visit called earlier. Check both dates.</source>
        <translation>Según las horas anotadas, este frasco se llenó antes de la visita llamada anterior. Revise ambas fechas.</translation>
    </message>
    <message>
        <source>Calcium hardness (%1) is a part of total hardness (%2) and cannot be above it. Repeat both.</source>
        <translation>La dureza cálcica (%1) es parte de la dureza total (%2) y no puede superarla. Repita ambas.</translation>
    </message>
    <message>
        <source>Calcium and magnesium hardness together (%1) should make the total hardness (%2). Repeat the three.</source>
        <translation>La dureza cálcica y la magnésica juntas (%1) deberían dar la dureza total (%2). Repita las tres.</translation>
    </message>
    <message>
        <source>Copper and iron hold back the colour change of the hardness titration and make it fade. Put the titrant in first, or take the first lasting change.</source>
        <translation>El cobre y el hierro retienen el viraje de la titulación de dureza y lo desvanecen. Ponga primero el titulante o tome el primer viraje duradero.</translation>
    </message>
    <message>
        <source>Salt (%1) is a part of the dissolved solids (%2) and cannot be above them. Rinse the probe, check it in its standard and repeat both.</source>
        <translation>La sal (%1) es parte de los sólidos disueltos (%2) y no puede superarlos. Enjuague la sonda, compruébela en su patrón y repita ambos.</translation>
    </message>
    <message>
        <source>The salts read make at least %1 of dissolved solids, and the probe shows %2. Check the probe in its standard and repeat.</source>
        <translation>Las sales leídas suman al menos %1 de sólidos disueltos, y la sonda muestra %2. Compruebe la sonda en su patrón y repita.</translation>
    </message>
    <message>
        <source>Dissolved solids (%1) are %2 times the conductivity (%3); 0.5 to 0.8 is usual. One of them is wrong, or its unit: repeat both.</source>
        <translation>Los sólidos disueltos (%1) son %2 veces la conductividad (%3); lo habitual es de 0,5 a 0,8. Uno de los dos está mal, o su unidad: repita ambos.</translation>
    </message>
    <message>
        <source>A salt cell makes the chlorine here and salt was not read: read it.</source>
        <translation>Aquí el cloro lo produce una celda de sal y no se leyó la sal: léala.</translation>
    </message>
    <message>
        <source>%1 of salt is little for most cells. Before salt is added, compare with the cell&apos;s own display and manual: a strip and a conductivity probe may differ by several hundred.</source>
        <translation>%1 de sal es poco para la mayoría de las celdas. Antes de agregar sal, compare con la pantalla y el manual de la celda: una tira y una sonda de conductividad pueden diferir en varios cientos.</translation>
    </message>
    <message>
        <source>A sequestrant is in the water: it hides part of the metal from the test. The true number may be higher.</source>
        <translation>Hay un secuestrante en el agua: oculta parte del metal a la prueba. El valor real puede ser mayor.</translation>
    </message>
    <message>
        <source>No metal in the water does not clear the surface: a stain is metal that has left the water. A vitamin C tablet held on it lightens an iron stain.</source>
        <translation>Que no haya metal en el agua no descarta la superficie: una mancha es metal que salió del agua. Una tableta de vitamina C apoyada en ella aclara una mancha de hierro.</translation>
    </message>
    <message>
        <source>Many sequestrants break down to phosphate. A phosphate remover would take the sequestrant out again.</source>
        <translation>Muchos secuestrantes se descomponen en fosfato. Un removedor de fosfatos volvería a sacar el secuestrante.</translation>
    </message>
    <message>
        <source>%1 is far more than pool water holds. Some tests say micrograms per litre (ppb): then it is %2 mg/L.</source>
        <translation>%1 es mucho más de lo que tiene el agua de una piscina. Algunas pruebas indican microgramos por litro (ppb): entonces son %2 mg/L.</translation>
    </message>
    <message>
        <source>%1 is more than any pool is given. If the test says boric acid, the boron is %2 mg/L (divide by 5.72).</source>
        <translation>%1 es más de lo que se pone en cualquier piscina. Si la prueba dice ácido bórico, el boro es %2 mg/L (divida por 5,72).</translation>
    </message>
    <message>
        <source>Free chlorine of %1 spoils the nitrate test unless it is destroyed first with one drop of thiosulfate.</source>
        <translation>El cloro libre de %1 arruina la prueba de nitrato si no se destruye antes con una gota de tiosulfato.</translation>
    </message>
    <message>
        <source>The %1 reading of %2 is at or past the end of the range of the %3. Mix 1 part of sample with %4 parts of chlorine-free (deionised) water, read that, and multiply by %5: a reading of 2 then means %6. Dose nothing on this number.</source>
        <translation>La lectura de %1 (%2) está en el límite del método (%3) o más allá. Diluya la muestra 1+%4 con agua sin cloro (desionizada), lea eso y multiplique por %5: una lectura de 2 significa entonces %6. No dosifique nada con este número.</translation>
    </message>
    <message>
        <source>The diluted sample is below the range of the %1 for %2: read it undiluted.</source>
        <translation>La muestra diluida queda por debajo del intervalo del método (%1) para %2: léala sin diluir.</translation>
    </message>
    <message>
        <source>There is less %2 than the %1 can show: below %3. It counts as at most that.</source>
        <translation>Hay menos %2 de lo que el método (%1) puede mostrar: menos de %3. Cuenta como eso a lo sumo.</translation>
    </message>
    <message>
        <source>Diluted %1 times, the %2 reading is lost in the error of the %3 (%4). Dilute less and read again if a dose depends on it.</source>
        <translation>Diluida %1 veces, la lectura de %2 se pierde en el error del método (%3): %4. Diluya menos y lea de nuevo si de ella depende una dosis.</translation>
    </message>
    <message>
        <source>pH was read in a diluted sample. Dilution changes pH and no factor brings it back: read it undiluted.</source>
        <translation>El pH se leyó en una muestra diluida. La dilución cambia el pH y ningún factor lo devuelve: léalo sin diluir.</translation>
    </message>
    <message>
        <source>pH %1 is at the upper end of what the %2 can show: the true pH may be higher. Read it with a probe checked in two buffers; never dilute for pH.</source>
        <translation>El pH %1 está en el extremo superior de lo que el método (%2) puede mostrar: el pH real puede ser mayor. Léalo con una sonda comprobada en dos soluciones tampón; nunca diluya para el pH.</translation>
    </message>
    <message>
        <source>pH %1 is at the lower end of what the %2 can show: the true pH may be lower. Read it with a probe checked in two buffers; never dilute for pH.</source>
        <translation>El pH %1 está en el extremo inferior de lo que el método (%2) puede mostrar: el pH real puede ser menor. Léalo con una sonda comprobada en dos soluciones tampón; nunca diluya para el pH.</translation>
    </message>
    <message>
        <source>pH %1 is hardly ever seen in a filled pool or spa. Rinse the vial, take fresh sample from the bottle and read again, with a probe if there is one, before anything is dosed.</source>
        <translation>Un pH de %1 casi nunca se ve en una piscina o un spa llenos. Enjuague el vial, tome muestra fresca del frasco y lea de nuevo, con sonda si la hay, antes de dosificar nada.</translation>
    </message>
    <message>
        <source>%1 of %2 is outside what is believable (%3 to %4). Look at the unit and the dilution factor, then measure a second time.</source>
        <translation>%1 de %2 está fuera de lo creíble (%3 a %4). Revise la unidad y el factor de dilución, y mida otra vez.</translation>
    </message>
    <message>
        <source>No %1 is known for %2; the widest error of its methods is assumed. Was the method typed wrongly?</source>
        <translation>No se conoce este método (%1) para %2; se supone el mayor error de sus métodos. ¿Se escribió mal el método?</translation>
    </message>
    <message>
        <source>The %1 readings of %2 (%3) lie further apart than the method&apos;s own error. Read it once more; the mean of those that agree is used.</source>
        <translation>Las %1 lecturas de %2 (%3) distan entre sí más que el error del propio método. Lea una vez más; se usa la media de las que coinciden.</translation>
    </message>
    <message>
        <source>One %1 reading (%2) lies outside the others and is left out of the mean of %3 (test of Grubbs, ISO 5725-2).</source>
        <translation>Una lectura de %1 (%2) cae fuera de las demás y se excluye de la media de %3 (prueba de Grubbs, ISO 5725-2).</translation>
    </message>
    <message>
        <source>Two methods disagree on %1: the %2 says %3, the %4 says %5, further apart than their errors explain. Read both again; until then neither is to be dosed on.</source>
        <translation>Dos métodos discrepan en %1: %2 dice %3, %4 dice %5, más de lo que explican sus errores. Lea ambos de nuevo; hasta entonces no dosifique con ninguno.</translation>
    </message>
    <message>
        <source>The undiluted %1 reading of %2 was bleached: the diluted sample shows %3, and that is used.</source>
        <translation>La lectura sin diluir de %1 (%2) estaba blanqueada: la muestra diluida muestra %3, y eso se usa.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read. What it says of %2 is a hint only: have the customer test that at home or bring water less than 2 hours old.</source>
        <translation>El frasco tenía %1 h cuando se leyó. Lo que dice de %2 es solo un indicio: que el cliente lo analice en casa o traiga agua de menos de 2 horas.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read: too old for %2. Use it for alkalinity, hardness, stabilizer, salt and metals only, and ask for water less than 2 hours old for the rest.</source>
        <translation>El frasco tenía %1 h cuando se leyó: demasiado para %2. Úselo solo para alcalinidad, dureza, estabilizador, sal y metales, y pida agua de menos de 2 horas para el resto.</translation>
    </message>
    <message>
        <source>The bottle was %1 hours old when read. After a day nothing in it can be trusted: ask for a new sample, filled and capped under water, elbow deep, away from the inlets.</source>
        <translation>El frasco tenía %1 h cuando se leyó. Pasado un día nada en él es de fiar: pida una muestra nueva, llenada y tapada bajo el agua, a un codo de profundidad, lejos de los retornos.</translation>
    </message>
    <message>
        <source>Nobody noted when the bottle was %1. Ask: after 2 hours sanitizer and pH are a hint only, after 6 they count for nothing.</source>
        <translation>Nadie anotó cuándo fue %1 el frasco. Pregunte: después de 2 horas el desinfectante y el pH son solo un indicio; después de 6 no cuentan.</translation>
    </message>
    <message>
        <source>By the times noted the bottle was read before it was filled. One clock is wrong, or the day was mistyped: ask how old the water is.</source>
        <translation>Según las horas anotadas, el frasco se leyó antes de llenarse. Un reloj está mal o el día se escribió mal: pregunte qué edad tiene el agua.</translation>
    </message>
    <message>
        <source>The bottle&apos;s time (%1) lies ahead of this counter&apos;s clock (%2). Set the clock or correct the time, or the visits will come out of order.</source>
        <translation>La hora del frasco (%1) está por delante del reloj de este mostrador (%2). Ajuste el reloj o corrija la hora, o las visitas quedarán desordenadas.</translation>
    </message>
    <message>
        <source>The sample was read at %1 C. Below 15 C colours form slowly and stabilizer reads wrong: stand the closed bottle in warm water until it is at 20 to 25 C and read %2 again.</source>
        <translation>La muestra se leyó a %1&#xa0;°C. Por debajo de 15 °C los colores se forman despacio y el estabilizador lee mal: ponga el frasco cerrado en agua tibia hasta 20 a 25 °C y lea de nuevo: %2.</translation>
    </message>
    <message>
        <source>The sample was read at %1 C. Above 30 C chlorine is lost and combined chlorine breaks into the free reading: cool the closed bottle to 20 to 25 C and read %2 again.</source>
        <translation>La muestra se leyó a %1&#xa0;°C. Por encima de 30 °C se pierde cloro y el combinado pasa a la lectura de libre: enfríe el frasco cerrado a 20 a 25 °C y lea de nuevo: %2.</translation>
    </message>
    <message>
        <source>A dose went in %1 hours before the bottle was filled; the pump needs %2 hours to mix it. Ask for a new sample after that: %3 of this one may be anything.</source>
        <translation>Se agregó una dosis %1 h antes de llenar el frasco; la bomba necesita %2 h para mezclarla. Pida una muestra nueva después: en esta, %3 pueden ser cualquier cosa.</translation>
    </message>
    <message>
        <source>After a storm rain lies on top of the pool. If the pump has not run since for a whole turnover, the bottle shows the rain and not the pool: ask.</source>
        <translation>Tras una tormenta la lluvia queda encima de la piscina. Si desde entonces la bomba no completó una recirculación, el frasco muestra la lluvia y no la piscina: pregunte.</translation>
    </message>
    <message>
        <source>At an opening the water has stood in layers. Ask whether the pump has run for a whole turnover; if not, have a new bottle filled after it has.</source>
        <translation>En una apertura el agua ha reposado en capas. Pregunte si la bomba completó una recirculación; si no, pida otro frasco después.</translation>
    </message>
    <message>
        <source>In a bromine vessel the chlorine test reads bromine: %1 counts as %2 of total bromine (times 2.254).</source>
        <translation>En agua de bromo la prueba de cloro lee bromo: %1 cuenta como %2 de bromo total (por 2,254).</translation>
    </message>
    <message>
        <source>Total bromine (%1) and the chlorine reading times 2.254 (%2) are the same thing here and should agree. Read both again.</source>
        <translation>El bromo total (%1) y la lectura de cloro por 2,254 (%2) son aquí lo mismo y deberían coincidir. Lea ambos de nuevo.</translation>
    </message>
    <message>
        <source>Stabilizer (%1) does nothing for bromine. It is a left-over of chlorine days or of a wrong product; it counts in the alkalinity only.</source>
        <translation>El estabilizador (%1) no hace nada por el bromo. Es un resto de cuando se usaba cloro o de un producto equivocado; cuenta solo en la alcalinidad.</translation>
    </message>
    <message>
        <source>Biguanide clouds the stabilizer test by itself: the reading means nothing in this vessel.</source>
        <translation>La biguanida enturbia por sí sola la prueba del estabilizador: en esta agua la lectura no dice nada.</translation>
    </message>
    <message>
        <source>Chlorine or bromine and biguanide spoil each other&apos;s tests and each other. Ask what the vessel is kept with before anything is dosed; add no chlorine.</source>
        <translation>El cloro o el bromo y la biguanida arruinan las pruebas del otro y se destruyen entre sí. Pregunte con qué se desinfecta antes de dosificar nada; no agregue cloro.</translation>
    </message>
    <message>
        <source>This vessel was kept with biguanide. What is left of it spoils the chlorine test and turns to slime with chlorine: read biguanide before any chlorine is dosed.</source>
        <translation>Esta agua se trató antes con biguanida. Lo que queda arruina la prueba de cloro y con cloro se vuelve baba: lea la biguanida antes de dosificar cloro.</translation>
    </message>
    <message>
        <source>Peroxide went into a chlorine vessel: each destroys the other. Read chlorine again when no peroxide is left.</source>
        <translation>Se agregó peróxido a un agua con cloro: cada uno destruye al otro. Lea el cloro de nuevo cuando ya no quede peróxido.</translation>
    </message>
    <message>
        <source>Stabilizer is beyond the end of the %1 (%2). Mix 1 part of sample with %3 of deionised water, read that and multiply by %4: a reading of 70 then means %5 mg/L.</source>
        <translation>El estabilizador supera el límite del método (%1): %2. Mezcle 1 parte de muestra con %3 de agua desionizada, lea eso y multiplique por %4: una lectura de 70 significa entonces %5 mg/L.</translation>
    </message>
    <message>
        <source>Below %1 the %2 cannot tell how much stabilizer there is: %3 counts as &quot;little or none&quot;.</source>
        <translation>Por debajo de %1 el método (%2) no distingue cuánto estabilizador hay: %3 cuenta como «poco o nada».</translation>
    </message>
    <message>
        <source>At %1 C the stabilizer cloud reads somewhat high; at 20 to 25 C it is right.</source>
        <translation>A %1&#xa0;°C la turbidez del estabilizador lee algo alto; de 20 a 25 °C es correcta.</translation>
    </message>
    <message>
        <source>At %1 C the stabilizer cloud reads somewhat low; at 20 to 25 C it is right.</source>
        <translation>A %1&#xa0;°C la turbidez del estabilizador lee algo bajo; de 20 a 25 °C es correcta.</translation>
    </message>
    <message>
        <source>The sample is itself cloudy (%1) and the stabilizer test counts cloud. Filter the sample until it is clear and read again.</source>
        <translation>La muestra misma está turbia (%1) y la prueba del estabilizador cuenta la turbidez. Filtre la muestra hasta que esté clara y lea de nuevo.</translation>
    </message>
    <message>
        <source>The water is cloudy and the stabilizer test counts cloud: filter the sample clear before reading it.</source>
        <translation>El agua está turbia y la prueba del estabilizador cuenta la turbidez: filtre la muestra antes de leerla.</translation>
    </message>
    <message>
        <source>There is no sun indoors to protect chlorine from: %1 of stabilizer only slows it. Ask for dichlor or tablets in use.</source>
        <translation>Bajo techo no hay sol del que proteger el cloro: %1 de estabilizador solo lo frena. Pregunte si se usan dicloro o tabletas.</translation>
    </message>
    <message>
        <source>Tablets are in use: each 10 mg/L of chlorine from trichlor brings 6 mg/L of stabilizer and takes 7 mg/L of alkalinity. Read stabilizer every month.</source>
        <translation>Hay tabletas en uso: cada 10 mg/L de cloro de tricloro aportan 6 mg/L de estabilizador y quitan 7 mg/L de alcalinidad. Lea el estabilizador cada mes.</translation>
    </message>
    <message>
        <source>Reagent lot %1 has expired: read %2 again with a fresh one.</source>
        <translation>El lote de reactivo %1 está vencido: lea de nuevo %2 con uno vigente.</translation>
    </message>
    <message>
        <source>Reagent lot %1 was opened %2 days ago, last season: read %3 again with a fresh one.</source>
        <translation>El lote de reactivo %1 se abrió hace %2 días, la temporada pasada: lea de nuevo %3 con uno nuevo.</translation>
    </message>
    <message>
        <source>Reagent lot %1 was kept at %2 C and may be spoilt: read %3 again with one kept cool.</source>
        <translation>El lote de reactivo %1 se guardó a %2&#xa0;°C y puede estar dañado: lea de nuevo %3 con uno conservado en fresco.</translation>
    </message>
    <message>
        <source>Reagent lot %1 stood beside chlorine, whose vapour spoils it: read %2 again with one kept apart.</source>
        <translation>El lote de reactivo %1 estuvo junto a cloro, cuyo vapor lo daña: lea de nuevo %2 con uno guardado aparte.</translation>
    </message>
    <message>
        <source>The last check of %1 failed: what it says of %2 does not count. Read them on another instrument, or check this one again first.</source>
        <translation>La última comprobación de %1 falló: lo que dice de %2 no cuenta. Léalo en otro instrumento, o compruebe antes este otra vez.</translation>
    </message>
    <message>
        <source>%1 has not been checked against its standards for over %2 days. Check it before the next bottle; until then %3 may be off.</source>
        <translation>%1 no se ha comprobado con sus patrones en más de %2 días. Compruébelo antes del próximo frasco; hasta entonces puede haber desvío en %3.</translation>
    </message>
    <message>
        <source>This is public water (hotels, associations, schools and rentals count): print the readings and leave the treatment to the local code and its licensed operator.</source>
        <translation>Esta es agua pública (cuentan hoteles, asociaciones, escuelas y alquileres): imprima las lecturas y deje el tratamiento al reglamento local y a su operador autorizado.</translation>
    </message>
    <message>
        <source>Nobody noted what this vessel is kept with. Ask first: chlorine, salt cell, bromine or biguanide decides which tests mean anything.</source>
        <translation>Nadie anotó con qué se desinfecta esta agua. Pregunte primero: cloro, celda de sal, bromo o biguanida decide qué pruebas significan algo.</translation>
    </message>
    <message>
        <source>The sanitizer (%1) was not read: nothing can be said on swimming.</source>
        <translation>No se leyó el desinfectante (%1): nada puede decirse sobre el baño.</translation>
    </message>
    <message>
        <source>%1 is due and was not read: the plan is a part of one and says nothing of it.</source>
        <translation>%1: tocaba y no se leyó; el plan es solo una parte y no dice nada de ello.</translation>
    </message>
    <message>
        <source>The water is new: ask for a bottle of the fill water too, or what a change of water does cannot be worked out.</source>
        <translation>El agua es nueva: pida también un frasco del agua de llenado, o no podrá calcularse qué hace un cambio de agua.</translation>
    </message>
    <message>
        <source>The volume is not known, so no dose can be given. Length, width and mean depth will do; for a spa, the litres its maker states.</source>
        <translation>No se conoce el volumen, así que no puede darse ninguna dosis. Bastan largo, ancho y profundidad media; para un spa, los litros que indica el fabricante.</translation>
    </message>
    <message>
        <source>An incident was told. The readings do not clear the water: keep everybody out and follow the health authority&apos;s procedure for it.</source>
        <translation>Se informó de un incidente. Las lecturas no dan por buena el agua: no deje entrar a nadie y siga el procedimiento de la autoridad sanitaria.</translation>
    </message>
    <message>
        <source>Every reading is a strip&apos;s. A strip says whether to look closer; before a large dose read the photometer.</source>
        <translation>Todas las lecturas son de tira. Una tira dice si hay que mirar mejor; antes de una dosis grande lea con el fotómetro.</translation>
    </message>
    <message>
        <source>The demand bottle without a dose shows %1, more than the sample itself (%2): the bottles were exchanged, or stock got in. Repeat the chlorine reading and look at the labels.</source>
        <translation>El frasco de demanda sin dosis muestra %1, más que la propia muestra (%2): se cambiaron los frascos o entró solución madre. Repita la lectura de cloro y revise las etiquetas.</translation>
    </message>
    <message>
        <source>The vessel is at %1 C; 40 C is the most for bathing (10 NYCRR 6-1). Sanitizer tests of hot water may read wrong: cool the sample.</source>
        <translation>El agua está a %1&#xa0;°C; 40 °C es lo máximo para bañarse (10 NYCRR 6-1). Las pruebas del desinfectante en agua caliente pueden leer mal: enfríe la muestra.</translation>
    </message>
    <message>
        <source>The bottle was filled at the surface, where sun, rain and oils change the water. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>El frasco se llenó en la superficie, donde el sol, la lluvia y las grasas cambian el agua. No dice nada de %1; vale para %2. Hay que pedir agua tomada a un codo de hondo, lejos de las bocas.</translation>
    </message>
    <message>
        <source>The bottle was filled at the skimmer, where tablets may lie. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from skimmer and inlets.</source>
        <translation>El frasco se llenó en el skimmer, donde puede haber tabletas. No dice nada de %1; vale para %2. Hay que pedir agua tomada a un codo de hondo, lejos del skimmer y de las bocas.</translation>
    </message>
    <message>
        <source>The bottle was filled at an inlet, fresh from feeder, cell or heater. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>El frasco se llenó en una boca de impulsión, recién salida del dosificador, la célula o el calentador. No dice nada de %1; vale para %2. Hay que pedir agua tomada a un codo de hondo, lejos de las bocas.</translation>
    </message>
    <message>
        <source>The bottle was filled out of a pipe, not out of the vessel. It says nothing of %1; it holds for %2. Ask for water from elbow deep, away from the inlets.</source>
        <translation>El frasco se llenó de una tubería, no del vaso. No dice nada de %1; vale para %2. Hay que pedir agua tomada a un codo de hondo, lejos de las bocas.</translation>
    </message>
</context>
<context>
    <name>choices</name>
    <message>
        <source>Pool</source>
        <translation>Piscina</translation>
    </message>
    <message>
        <source>Spa</source>
        <translation>Spa</translation>
    </message>
    <message>
        <source>Swim spa</source>
        <translation>Spa de nado</translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation>Tina fría</translation>
    </message>
    <message>
        <source>One household</source>
        <translation>Un solo hogar</translation>
    </message>
    <message>
        <source>Guests, tenants, members, pupils</source>
        <translation>Huéspedes, inquilinos, socios, alumnos</translation>
    </message>
    <message>
        <source>Chlorine</source>
        <translation>Cloro</translation>
    </message>
    <message>
        <source>Chlorine from salt</source>
        <translation>Cloro salino</translation>
    </message>
    <message>
        <source>Bromine</source>
        <translation>Bromo</translation>
    </message>
    <message>
        <source>Biguanide</source>
        <translation>Biguanida</translation>
    </message>
    <message>
        <source>Plaster</source>
        <translation>Enlucido</translation>
    </message>
    <message>
        <source>Tile</source>
        <translation>Azulejo</translation>
    </message>
    <message>
        <source>Vinyl</source>
        <translation>Vinilo</translation>
    </message>
    <message>
        <source>Fibreglass</source>
        <translation>Fibra de vidrio</translation>
    </message>
    <message>
        <source>Painted</source>
        <translation>Pintura</translation>
    </message>
    <message>
        <source>Acrylic</source>
        <translation>Acrílico</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Al aire libre</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Bajo techo</translation>
    </message>
    <message>
        <source>In the ground</source>
        <translation>Enterrada</translation>
    </message>
    <message>
        <source>Above it</source>
        <translation>Sobre el suelo</translation>
    </message>
    <message>
        <source>Metered, or the maker’s</source>
        <translation>Con medidor, o según fabricante</translation>
    </message>
    <message>
        <source>Measured with a tape</source>
        <translation>Medido con cinta</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>Estimado</translation>
    </message>
    <message>
        <source>Just now</source>
        <translation>Ahora mismo</translation>
    </message>
    <message>
        <source>An hour ago</source>
        <translation>Hace una hora</translation>
    </message>
    <message>
        <source>This morning</source>
        <translation>Esta mañana</translation>
    </message>
    <message>
        <source>Last night</source>
        <translation>Anoche</translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation>Hace dos días</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>No se sabe</translation>
    </message>
    <message>
        <source>As every month</source>
        <translation>Como cada mes</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Apertura</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>New fill</source>
        <translation>Llenado nuevo</translation>
    </message>
    <message>
        <source>After a storm</source>
        <translation>Tras una tormenta</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Problema</translation>
    </message>
    <message>
        <source>Cloudy</source>
        <translation>Turbia</translation>
    </message>
    <message>
        <source>Green water</source>
        <translation>Agua verde</translation>
    </message>
    <message>
        <source>Stains</source>
        <translation>Manchas</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Sarro</translation>
    </message>
    <message>
        <source>Sore eyes</source>
        <translation>Ojos irritados</translation>
    </message>
    <message>
        <source>Strong smell</source>
        <translation>Olor fuerte</translation>
    </message>
    <message>
        <source>Green hair</source>
        <translation>Pelo verdoso</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Espuma</translation>
    </message>
    <message>
        <source>Slimy walls</source>
        <translation>Paredes resbalosas</translation>
    </message>
    <message>
        <source>Tablets in use</source>
        <translation>Tabletas en uso</translation>
    </message>
    <message>
        <source>Main drain cannot be seen</source>
        <translation>No se ve el desagüe de fondo</translation>
    </message>
    <message>
        <source>Chemicals mixed or fuming</source>
        <translation>Químicos mezclados o con humos</translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation>Heces</translation>
    </message>
    <message>
        <source>Vomit</source>
        <translation>Vómito</translation>
    </message>
    <message>
        <source>Blood</source>
        <translation>Sangre</translation>
    </message>
    <message>
        <source>Dead animal</source>
        <translation>Animal muerto</translation>
    </message>
    <message>
        <source>Flood</source>
        <translation>Inundación</translation>
    </message>
    <message>
        <source>Sewage</source>
        <translation>Aguas negras</translation>
    </message>
    <message>
        <source>Swimmers ill</source>
        <translation>Bañistas enfermos</translation>
    </message>
    <message>
        <source>Gallons, °F</source>
        <translation>Galones, °F</translation>
    </message>
    <message>
        <source>Cubic metres, °C</source>
        <translation>Metros cúbicos, °C</translation>
    </message>
    <message>
        <source>photometer</source>
        <translation>fotómetro</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>tira</translation>
    </message>
    <message>
        <source>drop test</source>
        <translation>gotas</translation>
    </message>
    <message>
        <source>comparator</source>
        <translation>comparador</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>sonda</translation>
    </message>
    <message>
        <source>view tube</source>
        <translation>tubo de visión</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>En rango</translation>
    </message>
    <message>
        <source>Or above</source>
        <translation>O más</translation>
    </message>
    <message>
        <source>Or below</source>
        <translation>O menos</translation>
    </message>
    <message>
        <source>Undiluted</source>
        <translation>Sin diluir</translation>
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
        <translation>En una hora</translation>
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
        <translation>Mañana 08:00</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rollo</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Salud</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Clear water</source>
        <translation>Agua clara</translation>
    </message>
    <message>
        <source>Comfort</source>
        <translation>Confort</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>The readings</source>
        <translation>Las lecturas</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>La usan</translation>
    </message>
    <message>
        <source>Sanitized with</source>
        <translation>Se desinfecta con</translation>
    </message>
    <message>
        <source>Its surface</source>
        <translation>Revestimiento</translation>
    </message>
    <message>
        <source>It stands</source>
        <translation>Ubicación</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Construcción</translation>
    </message>
    <message>
        <source>How the volume is known</source>
        <translation>Cómo se conoce el volumen</translation>
    </message>
    <message>
        <source>Why it came</source>
        <translation>Por qué vino</translation>
    </message>
    <message>
        <source>Signs, as many as there are</source>
        <translation>Señales, todas las que haya</translation>
    </message>
    <message>
        <source>Something happened in it</source>
        <translation>Pasó algo en el agua</translation>
    </message>
    <message>
        <source>They get home</source>
        <translation>Llega a casa</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Impresión</translation>
    </message>
    <message>
        <source>Elbow deep</source>
        <translation>A un codo de hondo</translation>
    </message>
    <message>
        <source>Off the surface</source>
        <translation>De la superficie</translation>
    </message>
    <message>
        <source>At the skimmer</source>
        <translation>En el skimmer</translation>
    </message>
    <message>
        <source>At an inlet</source>
        <translation>En una boca de impulsión</translation>
    </message>
    <message>
        <source>Out of a pipe</source>
        <translation>De una tubería</translation>
    </message>
    <message>
        <source>Where it was filled</source>
        <translation>Dónde se llenó</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>High contrast</source>
        <translation>Mucho contraste</translation>
    </message>
    <message>
        <source>Moves gently</source>
        <translation>Se mueve con calma</translation>
    </message>
    <message>
        <source>Nothing moves</source>
        <translation>Nada se mueve</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Names in full</source>
        <translation>Nombres completos</translation>
    </message>
    <message>
        <source>First letters only</source>
        <translation>Solo iniciales</translation>
    </message>
    <message>
        <source>2 minutes</source>
        <translation>2 minutos</translation>
    </message>
    <message>
        <source>10 minutes</source>
        <translation>10 minutos</translation>
    </message>
    <message>
        <source>An hour</source>
        <translation>Una hora</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>Until they are erased</source>
        <translation>Hasta que se borren</translation>
    </message>
    <message>
        <source>A year after the last bottle</source>
        <translation>Un año tras el último frasco</translation>
    </message>
    <message>
        <source>Two years</source>
        <translation>Dos años</translation>
    </message>
    <message>
        <source>Three years</source>
        <translation>Tres años</translation>
    </message>
    <message>
        <source>All that is known, as a file</source>
        <translation>Todo lo que se sabe, en un archivo</translation>
    </message>
    <message>
        <source>To be forgotten</source>
        <translation>Que se le olvide</translation>
    </message>
    <message>
        <source>Test, plan and print</source>
        <translation>Analizar, planificar e imprimir</translation>
    </message>
    <message>
        <source>Also change what the shop is set to</source>
        <translation>También cambiar los ajustes de la tienda</translation>
    </message>
    <message>
        <source>A note for a reading and for trouble</source>
        <translation>Un tono para una lectura y para un problema</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>En silencio</translation>
    </message>
</context>
<context>
    <name>clock</name>
    <message>
        <source>today %1</source>
        <translation>hoy %1</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>ayer %1</translation>
    </message>
    <message>
        <source>tonight %1</source>
        <translation>esta noche %1</translation>
    </message>
    <message>
        <source>tomorrow %1</source>
        <translation>mañana %1</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation>1 hora</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 horas</translation>
    </message>
    <message>
        <source>1½ hours</source>
        <translation>1 hora y media</translation>
    </message>
    <message>
        <source>noon</source>
        <translation>mediodía</translation>
    </message>
    <message>
        <source>%1&#xa0;a.m.</source>
        <translation>%1&#xa0;a.&#xa0;m.</translation>
    </message>
    <message>
        <source>%1&#xa0;p.m.</source>
        <translation>%1&#xa0;p.&#xa0;m.</translation>
    </message>
</context>
<context>
    <name>compare</name>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is more than expected.</source>
        <translation>%1 pasó de %2 a %3; se esperaba alrededor de %4. Es más de lo esperado.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is less than expected.</source>
        <translation>%1 pasó de %2 a %3; se esperaba alrededor de %4. Es menos de lo esperado.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, and what was told does not say why.</source>
        <translation>%1 pasó de %2 a %3, y lo que se indicó no explica por qué.</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, as the doses told lead to expect (%4).</source>
        <translation>%1 pasó de %2 a %3, como cabía esperar de las dosis indicadas (%4).</translation>
    </message>
    <message>
        <source>The doses told explain what they should: they worked.</source>
        <translation>Las dosis indicadas explican lo que debían: funcionaron.</translation>
    </message>
    <message>
        <source>What only new water brings down fell together: about %1 % of the water was replaced (backwash, splash, a leak, rain or a drain).</source>
        <translation>Lo que solo baja con agua nueva bajó a la vez: se cambió alrededor del %1&#xa0;% del agua (retrolavado, salpicaduras, una fuga, lluvia o un vaciado).</translation>
    </message>
    <message>
        <source>A dose that was told moved the water less than it should: perhaps part of it was not put in, or the volume on file is too small.</source>
        <translation>Una dosis indicada movió el agua menos de lo debido: quizá no se agregó entera, o el volumen registrado es demasiado pequeño.</translation>
    </message>
    <message>
        <source>A dose that was told moved the water more than it should: perhaps more was put in, or the volume on file is too large.</source>
        <translation>Una dosis indicada movió el agua más de lo debido: quizá se agregó de más, o el volumen registrado es demasiado grande.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid, dry acid or trichlor tablets do that.</source>
        <translation>Bajó la alcalinidad y no el calcio: eso hacen el ácido, el ácido seco o las tabletas de tricloro.</translation>
    </message>
    <message>
        <source>Stabilizer rose: trichlor tablets or dichlor bring it with every dose.</source>
        <translation>Subió el estabilizador: las tabletas de tricloro o el dicloro lo aportan con cada dosis.</translation>
    </message>
    <message>
        <source>Calcium rose and alkalinity did not: calcium hypochlorite brings 7 mg/L of calcium hardness with every 10 mg/L of chlorine.</source>
        <translation>Subió el calcio y no la alcalinidad: el hipoclorito de calcio aporta 7 mg/L de dureza cálcica por cada 10 mg/L de cloro.</translation>
    </message>
    <message>
        <source>Salts rose with nothing told: water evaporates and its salts stay, and the fill brings more.</source>
        <translation>Subieron las sales sin que se indicara nada: el agua se evapora y sus sales quedan, y la reposición trae más.</translation>
    </message>
    <message>
        <source>Chlorine did not hold: sun, bathers, too little stabilizer, or a demand in the water. A chlorine-demand test tells.</source>
        <translation>El cloro no se mantuvo: sol, bañistas, poco estabilizador o una demanda en el agua. Una prueba de demanda de cloro lo aclara.</translation>
    </message>
    <message>
        <source>Stabilizer fell alone. Water was not replaced; bacteria can turn stabilizer to ammonia. Meet the chlorine demand before stabilizer is added again.</source>
        <translation>El estabilizador bajó solo. No se cambió agua; las bacterias pueden convertir el estabilizador en amoníaco. Cubra la demanda de cloro antes de volver a agregar estabilizador.</translation>
    </message>
    <message>
        <source>pH rose without alkalinity: carbon dioxide leaves the water, faster with jets, a salt cell or a waterfall.</source>
        <translation>Subió el pH sin alcalinidad: el dióxido de carbono sale del agua, más rápido con chorros, celda de sal o cascada.</translation>
    </message>
    <message>
        <source>Alkalinity rose with nothing told: bicarbonate, soda ash, fill water or dissolving plaster.</source>
        <translation>Subió la alcalinidad sin que se indicara nada: bicarbonato, carbonato de sodio, agua de llenado o enlucido que se disuelve.</translation>
    </message>
    <message>
        <source>Salt rose with nothing told: ask whether salt was added.</source>
        <translation>Subió la sal sin que se indicara nada: pregunte si se agregó sal.</translation>
    </message>
    <message>
        <source>A metal rose: fill water, a corroding heater at low pH, or a copper product.</source>
        <translation>Subió un metal: agua de llenado, un calentador que se corroe con pH bajo o un producto de cobre.</translation>
    </message>
    <message>
        <source>A dose that was told does not show in the water: perhaps it was not put in, or not all of it.</source>
        <translation>Una dosis que se dijo no se nota en el agua: quizá no se puso, o no entera.</translation>
    </message>
    <message>
        <source>Perhaps: %1</source>
        <translation>Quizá: %1</translation>
    </message>
    <message>
        <source>The water answers the doses like %1, which the volume on file does not fit: measure the vessel.</source>
        <translation>El agua responde a las dosis como %1, y el volumen de la ficha no concuerda: mida el vaso.</translation>
    </message>
    <message>
        <source>Cloudy water</source>
        <translation>Agua turbia</translation>
    </message>
    <message>
        <source>Green water</source>
        <translation>Agua verde</translation>
    </message>
    <message>
        <source>Stains</source>
        <translation>Manchas</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Incrustación</translation>
    </message>
    <message>
        <source>Sore eyes</source>
        <translation>Ojos irritados</translation>
    </message>
    <message>
        <source>Strong smell</source>
        <translation>Olor fuerte</translation>
    </message>
    <message>
        <source>Green hair</source>
        <translation>Pelo verde</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Espuma</translation>
    </message>
    <message>
        <source>Slimy walls</source>
        <translation>Paredes resbaladizas</translation>
    </message>
    <message>
        <source>Water that dissolves calcium</source>
        <translation>Agua que disuelve calcio</translation>
    </message>
    <message>
        <source>Water that drops calcium</source>
        <translation>Agua que deposita calcio</translation>
    </message>
    <message>
        <source>Stabilizer against free chlorine</source>
        <translation>Estabilizador frente a cloro libre</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>%1: worked. It was %2 and is %3; the target is %4.</source>
        <translation>%1: funcionó. Era %2 y es %3; el objetivo es %4.</translation>
    </message>
    <message>
        <source>%1: partly. It was %2 and is %3, on its way to the target, %4.</source>
        <translation>%1: en parte. Era %2 y es %3, camino del objetivo, %4.</translation>
    </message>
    <message>
        <source>%1: did not work. It was %2 and is %3; the target is %4.</source>
        <translation>%1: no funcionó. Era %2 y es %3; el objetivo es %4.</translation>
    </message>
    <message>
        <source>%1: cannot be told. It was %2 and is %3, target %4: less than the readings’ error apart.</source>
        <translation>%1: no se puede decir. Era %2 y es %3, objetivo %4: la diferencia es menor que el error de las lecturas.</translation>
    </message>
    <message>
        <source>Combined chlorine</source>
        <translation>Cloro combinado</translation>
    </message>
    <message>
        <source>%1: cannot be told. It was not read this time.</source>
        <translation>%1: no se puede decir. Esta vez no se midió.</translation>
    </message>
    <message>
        <source>%1: cannot be told. A reading stands at the end of its range.</source>
        <translation>%1: no se puede decir. Una lectura está al final de su intervalo.</translation>
    </message>
    <message>
        <source>%1: did not work. It is told of again.</source>
        <translation>%1: no funcionó. Se vuelve a mencionar.</translation>
    </message>
    <message>
        <source>%1: worked. It is not told of any more.</source>
        <translation>%1: funcionó. Ya no se menciona.</translation>
    </message>
    <message>
        <source>%1: did not work. It is found again.</source>
        <translation>%1: no funcionó. Se encuentra de nuevo.</translation>
    </message>
    <message>
        <source>%1: cannot be told. It is so near its limit that the error decides.</source>
        <translation>%1: no se puede decir. Está tan cerca de su límite que decide el error.</translation>
    </message>
    <message>
        <source>%1: worked. It is not found any more.</source>
        <translation>%1: funcionó. Ya no se encuentra.</translation>
    </message>
    <message>
        <source>%1 US gallons</source>
        <translation>%1 galones de EE. UU.</translation>
    </message>
    <message>
        <source>%1 m³</source>
        <translation>%1 m³</translation>
    </message>
    <message>
        <source>From how the water answered the doses: %1; no volume is on file.</source>
        <translation>Según respondió el agua a las dosis: %1; no hay volumen en la ficha.</translation>
    </message>
    <message>
        <source>From how the water answered the doses: %1; on file: %2.</source>
        <translation>Según respondió el agua a las dosis: %1; en la ficha: %2.</translation>
    </message>
    <message>
        <source>The volume on file, %1, was taken from how the water answered.</source>
        <translation>El volumen de la ficha, %1, se tomó de cómo respondió el agua.</translation>
    </message>
    <message>
        <source>The volume on file, %1, was taken from how the water answered; before, it was %2.</source>
        <translation>El volumen de la ficha, %1, se tomó de cómo respondió el agua; antes era %2.</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 L</translation>
    </message>
    <message>
        <source>%1 went from %2 to %3: no more than time and error account for.</source>
        <translation>%1 pasó de %2 a %3: no más de lo que explican el tiempo y el error.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid, dry acid or bromine tablets do that.</source>
        <translation>La alcalinidad bajó y el calcio no: eso lo hacen el ácido, el ácido seco o las tabletas de bromo.</translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid or dry acid does that.</source>
        <translation>La alcalinidad bajó y el calcio no: eso lo hace el ácido o el ácido seco.</translation>
    </message>
</context>
<context>
    <name>demand</name>
    <message>
        <source>The water used up %1 mg/L of chlorine in %2 hours.</source>
        <translation>El agua consumió %1 mg/L de cloro en %2 horas.</translation>
    </message>
    <message>
        <source>The bottles stood at %1 C; warmer water is faster.</source>
        <translation>Los frascos estuvieron a %1&#xa0;°C; el agua más caliente va más rápido.</translation>
    </message>
    <message>
        <source>%1 mg/L of that went in the first %2 h, %3 mg/L after.</source>
        <translation>De eso, %1 mg/L se fueron en las primeras %2 h y %3 mg/L después.</translation>
    </message>
    <message>
        <source>It takes %1 mg/L, unstabilised, in one evening, to meet that and leave the residual wanted.</source>
        <translation>Hacen falta %1 mg/L, sin estabilizador, en una sola noche, para cubrirlo y dejar el residual deseado.</translation>
    </message>
    <message>
        <source>Total chlorine was not read, so combined chlorine may still be there.</source>
        <translation>No se leyó el cloro total, así que puede quedar cloro combinado.</translation>
    </message>
    <message>
        <source>The bottles that hold chlorine do not agree: check the strength of the stock. The weakest of them counts.</source>
        <translation>Los frascos que conservan cloro no coinciden: compruebe la concentración de la solución madre. Cuenta el más débil de ellos.</translation>
    </message>
    <message>
        <source>That is more than a home can treat: a pool goes to a professional; an above-ground spa may be emptied.</source>
        <translation>Es más de lo que puede tratarse en casa: una piscina va a un profesional; un spa sobre el suelo puede vaciarse.</translation>
    </message>
    <message>
        <source>Reckon first what changing part of the water costs: each share changed takes the same share of the demand.</source>
        <translation>Calcule primero lo que cuesta cambiar parte del agua: cada parte cambiada se lleva la misma parte de la demanda.</translation>
    </message>
    <message>
        <source>Clean the filter and take out leaves and dirt first; then dose, and test again the next day.</source>
        <translation>Primero limpie el filtro y saque hojas y suciedad; luego dosifique y analice de nuevo al día siguiente.</translation>
    </message>
    <message>
        <source>Walls, filter and sun use more than a bottle can show: test again the next day.</source>
        <translation>Paredes, filtro y sol consumen más de lo que un frasco puede mostrar: analice de nuevo al día siguiente.</translation>
    </message>
    <message>
        <source>The bottles contradict each other: a strong one is used up while a weaker one holds chlorine. Look at the labels and set the test up again. Dose nothing on it.</source>
        <translation>Los frascos se contradicen: uno fuerte se agotó y uno más débil conserva cloro. Revise las etiquetas y prepare la prueba de nuevo. No dosifique nada con ella.</translation>
    </message>
    <message>
        <source>No bottle of the test was read. Dose nothing on it.</source>
        <translation>No se leyó ningún frasco de la prueba. No dosifique nada con ella.</translation>
    </message>
    <message>
        <source>Not enough: the demand is above %1 mg/L and at most about %2 mg/L. Dose nothing on it.</source>
        <translation>No basta: la demanda es superior a %1 mg/L y como máximo unos %2 mg/L. No dosifique nada con ella.</translation>
    </message>
    <message>
        <source>Not enough: the demand is above %1 mg/L, and the strongest bottles cannot be believed. Dose nothing on it.</source>
        <translation>No basta: la demanda es superior a %1 mg/L, y los frascos más fuertes no son creíbles. No dosifique nada con ella.</translation>
    </message>
    <message>
        <source>Not enough: the strongest bottle was used up; the demand is above %1 mg/L. Dose nothing on it.</source>
        <translation>No basta: el frasco más fuerte se agotó; la demanda es superior a %1 mg/L. No dosifique nada con ella.</translation>
    </message>
    <message>
        <source>Read the strong bottles again at 1+4 with chlorine-free water: a bleached bottle looks like an empty one.</source>
        <translation>Lea de nuevo los frascos fuertes a 1+4 con agua sin cloro: un frasco blanqueado parece vacío de cloro.</translation>
    </message>
    <message>
        <source>Set up the bottles again with higher doses, until one holds chlorine with little of it combined.</source>
        <translation>Prepare de nuevo los frascos con dosis mayores, hasta que uno conserve cloro con poco combinado.</translation>
    </message>
</context>
<context>
    <name>emergency</name>
    <message>
        <source>Fumes breathed in</source>
        <translation>Humos inhalados</translation>
    </message>
    <message>
        <source>Splash in the eyes or on the skin</source>
        <translation>Salpicadura en ojos o piel</translation>
    </message>
    <message>
        <source>Swallowed</source>
        <translation>Ingestión</translation>
    </message>
    <message>
        <source>Chemicals mixed, wet or fuming</source>
        <translation>Químicos mezclados, mojados o con humos</translation>
    </message>
    <message>
        <source>Get them into fresh air, and keep others out.</source>
        <translation>Lleve a la persona al aire libre y mantenga lejos a los demás.</translation>
    </message>
    <message>
        <source>Trouble breathing: call the emergency number at once.</source>
        <translation>Si le cuesta respirar: llame de inmediato al número de emergencia.</translation>
    </message>
    <message>
        <source>It can get worse hours later: call the poison line even if they feel well.</source>
        <translation>Puede empeorar horas después: llame al centro de toxicología aunque se sienta bien.</translation>
    </message>
    <message>
        <source>Rinse with running water at once, for at least 15 minutes.</source>
        <translation>Enjuague de inmediato con agua corriente, al menos 15 minutos.</translation>
    </message>
    <message>
        <source>Take out contact lenses; take off what the chemical has touched.</source>
        <translation>Quite las lentes de contacto; quite la ropa y lo que tocó el químico.</translation>
    </message>
    <message>
        <source>Dry powder: brush it off the skin before you rinse. Then call the poison line.</source>
        <translation>Polvo seco: retírelo de la piel con un cepillo antes de enjuagar. Luego llame al centro de toxicología.</translation>
    </message>
    <message>
        <source>Do not make them vomit.</source>
        <translation>NO provoque el vómito.</translation>
    </message>
    <message>
        <source>Call the poison line with the label in your hand.</source>
        <translation>Llame al centro de toxicología con la etiqueta en la mano.</translation>
    </message>
    <message>
        <source>Unconscious, or trouble breathing: call the emergency number.</source>
        <translation>Si pierde el conocimiento o le cuesta respirar: llame al número de emergencia.</translation>
    </message>
    <message>
        <source>Leave at once, upwind. Keep everyone out.</source>
        <translation>Salga de inmediato, contra el viento. Mantenga lejos a todos.</translation>
    </message>
    <message>
        <source>Call the emergency number from outside.</source>
        <translation>Llame al número de emergencia desde afuera.</translation>
    </message>
    <message>
        <source>Do not go back to air the room. Add no water. Move nothing. Sniff at nothing.</source>
        <translation>No vuelva para ventilar. No agregue agua. No mueva nada. No huela nada.</translation>
    </message>
    <message>
        <source>No number is set: Back room, The shop</source>
        <translation>No hay número configurado: Trastienda, La tienda</translation>
    </message>
    <message>
        <source>Your local emergency number</source>
        <translation>Su número de emergencia local</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>The product’s label and its safety data sheet go before anything written here.</source>
        <translation>La etiqueta del producto y su ficha de datos de seguridad prevalecen sobre lo que aquí se dice.</translation>
    </message>
</context>
<context>
    <name>facts</name>
    <message>
        <source>This word is not known.</source>
        <translation>No se reconoce esta palabra.</translation>
    </message>
    <message>
        <source>This fact is not known.</source>
        <translation>No se reconoce este dato.</translation>
    </message>
    <message>
        <source>Volume, US gallons</source>
        <translation>Volumen, galones EE. UU.</translation>
    </message>
    <message>
        <source>Volume, m³</source>
        <translation>Volumen, m³</translation>
    </message>
    <message>
        <source>Its water, °F</source>
        <translation>Temp. de su agua, °F</translation>
    </message>
    <message>
        <source>Its water, °C</source>
        <translation>Temp. de su agua, °C</translation>
    </message>
    <message>
        <source>The bottle when read, °F</source>
        <translation>Temp. del frasco al leerlo, °F</translation>
    </message>
    <message>
        <source>The bottle when read, °C</source>
        <translation>Temp. del frasco al leerlo, °C</translation>
    </message>
    <message>
        <source>“%1” cannot be right here; expected a number from %2 to %3.</source>
        <translation>«%1» no puede ser correcto aquí; se espera un número de %2 a %3.</translation>
    </message>
</context>
<context>
    <name>fault</name>
    <message>
        <source>a NUL byte</source>
        <translation>un byte NUL</translation>
    </message>
    <message>
        <source>a text file in UTF-8</source>
        <translation>un archivo de texto en UTF-8</translation>
    </message>
    <message>
        <source>a line of over %1 bytes</source>
        <translation>una línea de más de %1 bytes</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>more than %1 columns</source>
        <translation>más de %1 columnas</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>unas comillas sin cerrar</translation>
    </message>
    <message>
        <source>its end, before the end of the file</source>
        <translation>su cierre, antes del final del archivo</translation>
    </message>
    <message>
        <source>text after a closing quotation mark</source>
        <translation>texto tras las comillas de cierre</translation>
    </message>
    <message>
        <source>a &quot;%1&quot; or the line&apos;s end</source>
        <translation>un «%1» o el fin de la línea</translation>
    </message>
    <message>
        <source>bytes that are not UTF-8</source>
        <translation>bytes que no son UTF-8</translation>
    </message>
    <message>
        <source>a table saved as UTF-8 (&quot;CSV UTF-8&quot;)</source>
        <translation>una tabla guardada como UTF-8 («CSV UTF-8»)</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>no se puede leer el archivo</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>a line of column names</source>
        <translation>una línea con los nombres de las columnas</translation>
    </message>
    <message>
        <source>column `%1` stands twice</source>
        <translation>la columna `%1` está dos veces</translation>
    </message>
    <message>
        <source>it once</source>
        <translation>una sola vez</translation>
    </message>
    <message>
        <source>column `%1` is not known and is left out</source>
        <translation>la columna `%1` no se conoce y se omite</translation>
    </message>
    <message>
        <source>a known column</source>
        <translation>una columna conocida</translation>
    </message>
    <message>
        <source>1 field</source>
        <translation>1 campo</translation>
    </message>
    <message>
        <source>%1 fields</source>
        <translation>%1 campos</translation>
    </message>
    <message>
        <source>%1 as in the header</source>
        <translation>%1 como en la cabecera</translation>
    </message>
    <message>
        <source>`%1` is missing</source>
        <translation>falta `%1`</translation>
    </message>
    <message>
        <source>`%1` is %2</source>
        <translation>`%1` es %2</translation>
    </message>
    <message>
        <source>`%1` is in `%2`</source>
        <translation>`%1` está en `%2`</translation>
    </message>
    <message>
        <source>`%1` is empty</source>
        <translation>`%1` está vacío</translation>
    </message>
    <message>
        <source>`%1` is not known</source>
        <translation>`%1` no se conoce</translation>
    </message>
    <message>
        <source>`%1` is not known here</source>
        <translation>`%1` no se conoce aquí</translation>
    </message>
    <message>
        <source>`%1` is there twice</source>
        <translation>`%1` está dos veces</translation>
    </message>
    <message>
        <source>`%1` is negative</source>
        <translation>`%1` es negativo</translation>
    </message>
    <message>
        <source>`%1` holds a control character</source>
        <translation>`%1` contiene un carácter de control</translation>
    </message>
    <message>
        <source>an item of `%1` is %2</source>
        <translation>un elemento de `%1` es %2</translation>
    </message>
    <message>
        <source>text holds a null character</source>
        <translation>el texto contiene un carácter nulo</translation>
    </message>
    <message>
        <source>text that is not UTF-8</source>
        <translation>texto que no es UTF-8</translation>
    </message>
    <message>
        <source>it to be there</source>
        <translation>que esté</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>cada clave una vez</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>text on one line</source>
        <translation>texto en una línea</translation>
    </message>
    <message>
        <source>text without it</source>
        <translation>texto sin él</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a number of 0 or more</source>
        <translation>un número de 0 o más</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un número mayor que 0</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>a whole number from %1 up</source>
        <translation>un número entero desde %1</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>un número entero de %1 a %2</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a date or time</source>
        <translation>una fecha u hora</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso (true o false)</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>sí o no (yes o no)</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de %1</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 o más</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>cero o más</translation>
    </message>
    <message>
        <source>1 or more</source>
        <translation>1 o más</translation>
    </message>
    <message>
        <source>1 or more: (sample + water) / sample</source>
        <translation>1 o más: (muestra + agua) / muestra</translation>
    </message>
    <message>
        <source>a share from 0 to 1</source>
        <translation>una fracción de 0 a 1</translation>
    </message>
    <message>
        <source>a pH from 0 to 14</source>
        <translation>un pH de 0 a 14</translation>
    </message>
    <message>
        <source>an amount that can be</source>
        <translation>una cantidad posible</translation>
    </message>
    <message>
        <source>a temperature of liquid water in degrees Celsius</source>
        <translation>una temperatura de agua líquida en grados Celsius</translation>
    </message>
    <message>
        <source>a time with its offset, like 2026-06-14T08:10:00-05:00</source>
        <translation>una hora con su desfase, como 2026-06-14T08:10:00-05:00</translation>
    </message>
    <message>
        <source>a name, or the id of a customer that is known</source>
        <translation>un nombre, o el id de un cliente conocido</translation>
    </message>
    <message>
        <source>en, es or fr</source>
        <translation>en, es o fr</translation>
    </message>
    <message>
        <source>m3, L, gal (US) or gal_imp</source>
        <translation>m3, L, gal (US) o gal_imp</translation>
    </message>
    <message>
        <source>the moment until which the volume was learnt, ISO 8601</source>
        <translation>el momento hasta el que la respuesta del agua dio el volumen, ISO 8601</translation>
    </message>
    <message>
        <source>the volume that was learnt</source>
        <translation>el volumen que dio la respuesta del agua</translation>
    </message>
    <message>
        <source>half of a learnt volume</source>
        <translation>solo la mitad de un volumen dado por la respuesta del agua</translation>
    </message>
    <message>
        <source>`%1` and `%2`</source>
        <translation>`%1` y `%2`</translation>
    </message>
    <message>
        <source>vessel %1 is another customer&apos;s</source>
        <translation>el vaso %1 es de otro cliente</translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation>un id propio</translation>
    </message>
    <message>
        <source>customer %1 was erased and is left out</source>
        <translation>el cliente %1 fue borrado y se omite</translation>
    </message>
    <message>
        <source>a customer</source>
        <translation>un cliente</translation>
    </message>
    <message>
        <source>customer %1 is written otherwise in the records or above</source>
        <translation>el cliente %1 está escrito de otro modo en los registros o más arriba</translation>
    </message>
    <message>
        <source>the same; what is there stays</source>
        <translation>lo mismo; queda lo que hay</translation>
    </message>
    <message>
        <source>vessel %1 is written otherwise in the records or above</source>
        <translation>el vaso %1 está escrito de otro modo en los registros o más arriba</translation>
    </message>
    <message>
        <source>the same, or a `vessel_id` for each; what is there stays</source>
        <translation>lo mismo, o un `vessel_id` para cada uno; queda lo que hay</translation>
    </message>
    <message>
        <source>the name of a customer that is known, or `customer_id`</source>
        <translation>el nombre de un cliente conocido, o `customer_id`</translation>
    </message>
    <message>
        <source>one of several customers of that name: `phone` or `customer_id`</source>
        <translation>uno de varios clientes de ese nombre: `phone` o `customer_id`</translation>
    </message>
    <message>
        <source>a customer, a name, or a vessel that is known</source>
        <translation>un cliente, un nombre o un vaso conocido</translation>
    </message>
    <message>
        <source>the id of a customer that is known</source>
        <translation>el id de un cliente conocido</translation>
    </message>
    <message>
        <source>a vessel of this customer</source>
        <translation>un vaso de este cliente</translation>
    </message>
    <message>
        <source>one of the customer&apos;s %1 vessels</source>
        <translation>uno de los %1 vasos del cliente</translation>
    </message>
    <message>
        <source>no column of readings</source>
        <translation>ninguna columna de lecturas</translation>
    </message>
    <message>
        <source>`analyte` and `value`, or columns such as `ph` and `free_chlorine`</source>
        <translation>`analyte` y `value`, o columnas como `ph` y `free_chlorine`</translation>
    </message>
    <message>
        <source>a day or moment as ISO 8601, 2026-06-14 or 2026-06-14T08:10:00-05:00</source>
        <translation>un día o momento según ISO 8601, 2026-06-14 o 2026-06-14T08:10:00-05:00</translation>
    </message>
    <message>
        <source>one bottle&apos;s: the same customer, vessel and moment as above</source>
        <translation>el de un solo frasco: el mismo cliente, vaso y momento que arriba</translation>
    </message>
    <message>
        <source>the same reading of %1 stands above</source>
        <translation>la misma lectura de %1 está más arriba</translation>
    </message>
    <message>
        <source>it once; it is kept once</source>
        <translation>una sola vez; se guarda una vez</translation>
    </message>
    <message>
        <source>the customer was erased: visit %1 is left out</source>
        <translation>el cliente fue borrado: la visita %1 se omite</translation>
    </message>
    <message>
        <source>visit %1 is in the records with other readings</source>
        <translation>la visita %1 está en los registros con otras lecturas</translation>
    </message>
    <message>
        <source>a chemical&apos;s id</source>
        <translation>el id de un producto químico</translation>
    </message>
    <message>
        <source>mL or g a cubic metre</source>
        <translation>mL o g por metro cúbico</translation>
    </message>
    <message>
        <source>the strength does not fit the chemical</source>
        <translation>la concentración no corresponde al producto químico</translation>
    </message>
    <message>
        <source>`percent` is no percent</source>
        <translation>`percent` no es un porcentaje</translation>
    </message>
    <message>
        <source>above 0, at most 100</source>
        <translation>más de 0, como mucho 100</translation>
    </message>
    <message>
        <source>a pack holds nothing</source>
        <translation>un envase está vacío</translation>
    </message>
    <message>
        <source>litres or kilograms above 0</source>
        <translation>litros o kilogramos por encima de 0</translation>
    </message>
    <message>
        <source>the product&apos;s name</source>
        <translation>el nombre del producto</translation>
    </message>
    <message>
        <source>one of the keys this file may have</source>
        <translation>una de las claves que este archivo puede tener</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, línea %2: %3</translation>
    </message>
    <message>
        <source>%1, line %2: %3; expected %4</source>
        <translation>%1, línea %2: %3; se esperaba %4</translation>
    </message>
    <message>
        <source>the file cannot be read further</source>
        <translation>el archivo no se puede seguir leyendo</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>a file that can be written</source>
        <translation>un archivo en el que se pueda escribir</translation>
    </message>
    <message>
        <source>cannot be made</source>
        <translation>no se puede crear</translation>
    </message>
    <message>
        <source>null</source>
        <translation>nulo</translation>
    </message>
    <message>
        <source>`id` is no name for a product</source>
        <translation>`id` no es un nombre de producto</translation>
    </message>
    <message>
        <source>small letters, digits and _</source>
        <translation>minúsculas, cifras y _</translation>
    </message>
    <message>
        <source>it is the last product</source>
        <translation>es el último producto</translation>
    </message>
    <message>
        <source>a shelf with something on it</source>
        <translation>un estante con algo</translation>
    </message>
    <message>
        <source>neither `low` nor `high` is there</source>
        <translation>faltan `low` y `high`</translation>
    </message>
    <message>
        <source>one of them</source>
        <translation>uno de ellos</translation>
    </message>
    <message>
        <source>`low` is above `high`</source>
        <translation>`low` es mayor que `high`</translation>
    </message>
    <message>
        <source>low up to high</source>
        <translation>de menor a mayor</translation>
    </message>
    <message>
        <source>`aim` is outside the target</source>
        <translation>`aim` está fuera del objetivo</translation>
    </message>
    <message>
        <source>a value between low and high</source>
        <translation>un valor entre ambos</translation>
    </message>
    <message>
        <source>has no such row</source>
        <translation>no tiene esa fila</translation>
    </message>
    <message>
        <source>a row of the list</source>
        <translation>una fila de la lista</translation>
    </message>
</context>
<context>
    <name>first_start</name>
    <message>
        <source>Which language do you read?</source>
        <translation>¿Qué idioma lee usted?</translation>
    </message>
    <message>
        <source>Whose counter is this?</source>
        <translation>¿De quién es este mostrador?</translation>
    </message>
    <message>
        <source>What measures here?</source>
        <translation>¿Con qué se mide aquí?</translation>
    </message>
    <message>
        <source>Who may change what is set here?</source>
        <translation>¿Quién puede cambiar lo que se ajusta aquí?</translation>
    </message>
</context>
<context>
    <name>hand</name>
    <message>
        <source>Step %1 is left out: %2.</source>
        <translation>Se omite el paso %1: %2.</translation>
    </message>
    <message>
        <source>Step %1: %2 instead of %3.</source>
        <translation>Paso %1: %2 en lugar de %3.</translation>
    </message>
    <message>
        <source>Changed by %1: %2</source>
        <translation>Cambiado por %1: %2</translation>
    </message>
</context>
<context>
    <name>journal</name>
    <message>
        <source>the shared records cannot be reached; try again later</source>
        <translation>no se llega a los registros comunes; inténtelo más tarde</translation>
    </message>
    <message>
        <source>there is no overnight test of this bottle</source>
        <translation>no hay prueba nocturna de este frasco</translation>
    </message>
    <message>
        <source>The shared records cannot be reached. Work goes on here and is joined later: %1 pieces wait.</source>
        <translation>No se llega a los registros comunes. Aquí se sigue y se une después: esperan %1 cambios.</translation>
    </message>
</context>
<context>
    <name>label</name>
    <message>
        <source>1 h: %1</source>
        <translation>1 h: %1</translation>
    </message>
    <message>
        <source>1 h: about %1</source>
        <translation>1 h: hacia %1</translation>
    </message>
    <message>
        <source>24 h: %1</source>
        <translation>24 h: %1</translation>
    </message>
    <message>
        <source>24 h: about %1</source>
        <translation>24 h: hacia %1</translation>
    </message>
    <message>
        <source>Overnight test, chlorine. Keep dark. Do not drink.</source>
        <translation>Prueba de un día para otro, cloro. Mantener a oscuras. No beber.</translation>
    </message>
    <message>
        <source>STOCK</source>
        <translation>SOLUCIÓN MADRE</translation>
    </message>
    <message>
        <source>chlorine %1 mg/L</source>
        <translation>cloro %1 mg/L</translation>
    </message>
    <message>
        <source>Made %1; good for today only.</source>
        <translation>Preparada %1; sirve solo hoy.</translation>
    </message>
    <message>
        <source>Gloves, goggles. Never with acid or another chlorine. Do not drink.</source>
        <translation>Guantes, gafas. Nunca con ácido ni con otro cloro. No beber.</translation>
    </message>
    <message>
        <source>%1 mL of stock</source>
        <translation>%1 mL de solución</translation>
    </message>
    <message>
        <source>no stock</source>
        <translation>sin solución</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
</context>
<context>
    <name>list</name>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
</context>
<context>
    <name>listener</name>
    <message>
        <source>the port could not be opened</source>
        <translation>no se pudo abrir el puerto</translation>
    </message>
    <message>
        <source>%1 baud: %2 bytes, %3 sound frames, %4 readings, %5 garbled</source>
        <translation>%1 baudios: %2 bytes, %3 tramas sanas, %4 lecturas, %5 ilegibles</translation>
    </message>
    <message>
        <source>Try every profile</source>
        <translation>Probar todos los perfiles</translation>
    </message>
    <message>
        <source>Use the one that fits</source>
        <translation>Usar el que encaja</translation>
    </message>
    <message>
        <source>Write a draft of a new one</source>
        <translation>Escribir el borrador de uno nuevo</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Puerto</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>fits best</source>
        <translation>encaja mejor</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>encaja</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usarlo</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Escuchar</translation>
    </message>
    <message>
        <source>Listening with profile %1 of %2; measure something now.</source>
        <translation>Escuchando con el perfil %1 de %2; mida algo ahora.</translation>
    </message>
    <message>
        <source>%1 understands this instrument.</source>
        <translation>%1 entiende este instrumento.</translation>
    </message>
    <message>
        <source>Nothing was heard: is it switched on, and the port the right one?</source>
        <translation>No se oyó nada: ¿está encendido y es ese el puerto?</translation>
    </message>
    <message>
        <source>No profile understands it. A draft can be made from what was heard.</source>
        <translation>Ningún perfil lo entiende. Se puede hacer un borrador con lo oído.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Parado.</translation>
    </message>
    <message>
        <source>None fits yet: listen first.</source>
        <translation>Ninguno encaja aún: escuche primero.</translation>
    </message>
    <message>
        <source>%1 is listened to on %2.</source>
        <translation>Se escucha a %1 en %2.</translation>
    </message>
    <message>
        <source>Name the port first.</source>
        <translation>Indique primero el puerto.</translation>
    </message>
    <message>
        <source>Two whole lines of one form are needed for a draft: listen first.</source>
        <translation>Para un borrador hacen falta dos líneas completas de la misma forma: escuche primero.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>No se puede crear %1.</translation>
    </message>
    <message>
        <source>%1 cannot be written.</source>
        <translation>No se puede escribir %1.</translation>
    </message>
    <message>
        <source>Written to %1. It is refused until what stands as ? is filled in.</source>
        <translation>Escrito en %1. Se rechaza hasta que se complete lo que dice ?.</translation>
    </message>
    <message>
        <source>None understands it at its own rate. Trying other rates, %1 of %2; measure again and again.</source>
        <translation>Ninguno lo entiende a su propia velocidad. Se prueban otras velocidades, %1 de %2; mida una y otra vez.</translation>
    </message>
    <message>
        <source>, %1 baud</source>
        <translation>, %1 baudios</translation>
    </message>
</context>
<context>
    <name>method</name>
    <message>
        <source>photometer</source>
        <translation>fotómetro</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>tira</translation>
    </message>
    <message>
        <source>drop titration</source>
        <translation>titulación por gotas</translation>
    </message>
    <message>
        <source>comparator</source>
        <translation>comparador</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>sonda</translation>
    </message>
    <message>
        <source>turbidity tube</source>
        <translation>tubo de turbidez</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
</context>
<context>
    <name>numbers</name>
    <message>
        <source>the error came with the reading</source>
        <translation>el error vino con la lectura</translation>
    </message>
    <message>
        <source>how it was read is not told: the error is the widest</source>
        <translation>no se dice cómo se leyó: se toma el error más amplio</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>diluted %1 times, which widens the error</source>
        <translation>diluida %1 veces, lo que amplía el error</translation>
    </message>
    <message>
        <source>at the end of the method’s range: no dose hangs on it</source>
        <translation>al límite del intervalo del método: ninguna dosis depende de ella</translation>
    </message>
    <message>
        <source>a repeat</source>
        <translation>una repetición</translation>
    </message>
    <message>
        <source>worked out for %1 by the model of this water</source>
        <translation>calculado para %1 con el modelo de esta agua</translation>
    </message>
    <message>
        <source>%1 portions</source>
        <translation>%1 porciones</translation>
    </message>
    <message>
        <source>from %1 to %2 once it has mixed</source>
        <translation>de %1 a %2 una vez mezclado</translation>
    </message>
    <message>
        <source>%1 once it has mixed</source>
        <translation>%1 una vez mezclado</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Paso %1</translation>
    </message>
    <message>
        <source>of the water replaced; what is dissolved in it goes by the same share</source>
        <translation>del agua se cambia; lo que lleva disuelto baja en la misma parte</translation>
    </message>
    <message>
        <source>at the plan’s end; ± from the errors of the readings and of the volume</source>
        <translation>al final del plan; ± por los errores de las lecturas y del volumen</translation>
    </message>
    <message>
        <source>Inside every target</source>
        <translation>Dentro de todos los objetivos</translation>
    </message>
    <message>
        <source>of %1 times that the plan was worked through, each with other errors of the readings and the volume</source>
        <translation>de %1 veces que se recorrió el plan, cada vez con otros errores de las lecturas y del volumen</translation>
    </message>
    <message>
        <source>%1 mol by the strength on the label</source>
        <translation>%1 mol según la riqueza de la etiqueta</translation>
    </message>
    <message>
        <source>Water replaced</source>
        <translation>Agua renovada</translation>
    </message>
    <message>
        <source>the share that makes what moved likeliest, by mass balance of every reading at once; told drains are in it</source>
        <translation>la fracción que hace más probable lo que se movió, por balance de masa de todas las lecturas a la vez; incluye los vaciados indicados</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>by Bayes’ rule, from the volume on file and from how far each told dose moved the water, visit after visit</source>
        <translation>por la regla de Bayes, a partir del volumen de la ficha y del efecto de cada dosis indicada en el agua, visita tras visita</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>Evaporación</translation>
    </message>
    <message>
        <source>%1 % a month</source>
        <translation>%1 % al mes</translation>
    </message>
    <message>
        <source>of the volume, in the open: common practice, no source; what is dissolved stays</source>
        <translation>del volumen, al aire libre: práctica común, sin fuente; lo disuelto queda</translation>
    </message>
    <message>
        <source>more than expected, by over 1.96 × ±</source>
        <translation>más de lo esperado, en más de 1,96 × ±</translation>
    </message>
    <message>
        <source>less than expected, by over 1.96 × ±</source>
        <translation>menos de lo esperado, en más de 1,96 × ±</translation>
    </message>
    <message>
        <source>further off than 1.96 × ±, and nothing told moves it</source>
        <translation>más lejos que 1,96 × ±, y nada de lo indicado la mueve</translation>
    </message>
    <message>
        <source>as expected, within 1.96 × ±</source>
        <translation>como se esperaba, dentro de 1,96 × ±</translation>
    </message>
    <message>
        <source>%1 then, %2 now: %3</source>
        <translation>%1 entonces, %2 ahora: %3</translation>
    </message>
    <message>
        <source>not held against it: a dose has no amount, or the volume is not on file</source>
        <translation>sin comparar: una dosis no tiene cantidad, o el volumen no está en la ficha</translation>
    </message>
    <message>
        <source>of the volume, under a roof or a cover: common practice, no source; what is dissolved stays</source>
        <translation>del volumen, bajo techo o con cubierta: práctica común, sin fuente; lo disuelto queda</translation>
    </message>
</context>
<context>
    <name>overnight</name>
    <message>
        <source>The overnight test was not enough: no bottle kept its chlorine, so this water uses up more than %1 mg/L.</source>
        <translation>La prueba de un día para otro no bastó: ningún frasco conservó su cloro, así que esta agua consume más de %1 mg/L.</translation>
    </message>
    <message>
        <source>The overnight test: this water uses up %1 mg/L of chlorine in %2 hours (most likely %3 to %4), so it takes %5 mg/L until some is left.</source>
        <translation>Prueba de un día para otro: esta agua consume %1 mg/L de cloro en %2 horas (lo más probable, de %3 a %4); hacen falta %5 mg/L para que quede algo.</translation>
    </message>
    <message>
        <source>That is very much. Changing part of the water first takes the same part of it away: ask us what that costs against the chlorine.</source>
        <translation>Es muchísimo. Cambiar antes una parte del agua quita la misma parte de ese consumo: pregúntenos qué cuesta frente al cloro.</translation>
    </message>
    <message>
        <source>Wait for the overnight test of this bottle: it is read %1, and we call you with what the water needs. Add no chlorine by guess.</source>
        <translation>Espere a la prueba de un día para otro de este frasco: se lee %1, y le llamaremos para decirle qué necesita el agua. No añada cloro a ojo.</translation>
    </message>
    <message>
        <source>%1 % trade</source>
        <translation>%1&#xa0;% comercial</translation>
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
        <translation>Sin diluir</translation>
    </message>
    <message>
        <source>Bottle %1, %2 mg/L: %3 after 1 hour</source>
        <translation>Frasco %1, %2 mg/L: %3 tras 1 hora</translation>
    </message>
    <message>
        <source>Bottle %1, %2 mg/L: %3 after 24 hours</source>
        <translation>Frasco %1, %2 mg/L: %3 tras 24 horas</translation>
    </message>
    <message>
        <source>Not said whose</source>
        <translation>Sin dueño indicado</translation>
    </message>
    <message>
        <source>Take %1 clean bottles with caps, of glass or hard plastic, and rinse them with the sample.</source>
        <translation>Tome %1 frascos limpios con tapa, de vidrio o plástico duro, y enjuáguelos con la muestra.</translation>
    </message>
    <message>
        <source>Let dirt and leaves settle, or pour the sample through a paper filter. It should be at 20 to 25 °C.</source>
        <translation>Deje asentar la suciedad y las hojas, o pase la muestra por un filtro de papel. Debe estar entre 20 y 25 °C.</translation>
    </message>
    <message>
        <source>Measure %1 mL of the sample into each: %2 mL in all.</source>
        <translation>Mida %1 mL de la muestra en cada uno: %2 mL en total.</translation>
    </message>
    <message>
        <source>pH was read as %1. The test is made for 7.2 to 7.6; beyond, chlorine works at another pace, so correct pH first where there is time.</source>
        <translation>El pH se leyó como %1. La prueba está hecha para 7,2 a 7,6; fuera de ahí el cloro actúa a otro ritmo, así que corrija primero el pH si hay tiempo.</translation>
    </message>
    <message>
        <source>Label first: write STOCK, CHLORINE 1 g/L and today’s date on a clean bottle.</source>
        <translation>Primero la etiqueta: escriba SOLUCIÓN MADRE, CLORO 1 g/L y la fecha de hoy en un frasco limpio.</translation>
    </message>
    <message>
        <source>Half fill a litre measure with distilled water, add %1 mL of the bleach, fill up to the litre mark, mix.</source>
        <translation>Llene hasta la mitad una medida de un litro con agua destilada, agregue %1 mL del cloro líquido, complete hasta la marca del litro y mezcle.</translation>
    </message>
    <message>
        <source>Strength check: make 1 mL of the stock up to 500 mL with distilled water and read free chlorine. It should show about 2.0 mg/L.</source>
        <translation>Control de la solución: lleve 1 mL de la solución a 500 mL con agua destilada y lea el cloro libre. Debería mostrar unos 2,0 mg/L.</translation>
    </message>
    <message>
        <source>Label every bottle before any chlorine goes in.</source>
        <translation>Etiquete todos los frascos antes de agregar cloro.</translation>
    </message>
    <message>
        <source>With a syringe, give each bottle the stock its label says. Cap it and turn it over three times.</source>
        <translation>Con una jeringa, ponga en cada frasco la solución que dice su etiqueta. Tápelo y délo vuelta tres veces.</translation>
    </message>
    <message>
        <source>When the last has its chlorine, start the clock. Keep them in the dark, at the warmth of the room.</source>
        <translation>Cuando el último tenga su cloro, inicie el reloj. Manténgalos a oscuras, a la temperatura del cuarto.</translation>
    </message>
    <message>
        <source>Weakest bottle first: free chlorine, then total. Dilute with distilled water as the pad proposes; a strong bottle read undiluted can bleach and look empty.</source>
        <translation>Primero el frasco más débil: cloro libre y luego total. Diluya con agua destilada como propone el teclado; un frasco fuerte leído sin diluir puede blanquearse y parecer vacío.</translation>
    </message>
    <message>
        <source>Type the number as shown, or let the photometer send it: it goes to the marked place and is multiplied by the dilution.</source>
        <translation>Escriba el número como se muestra, o deje que lo envíe el fotómetro: va al lugar marcado y se multiplica por la dilución.</translation>
    </message>
    <message>
        <source>1-hour readings</source>
        <translation>Lecturas de 1 hora</translation>
    </message>
    <message>
        <source>24-hour readings</source>
        <translation>Lecturas de 24 horas</translation>
    </message>
    <message>
        <source>Free chlorine is used up: an overnight test tells how much this water needs.</source>
        <translation>El cloro libre se agotó: una prueba de un día para otro indica cuánto necesita esta agua.</translation>
    </message>
    <message>
        <source>Combined chlorine was there last time and still is: an overnight test tells how much breaks it.</source>
        <translation>Había cloro combinado la vez pasada y aún lo hay: una prueba de un día para otro indica cuánto lo elimina.</translation>
    </message>
    <message>
        <source>Free chlorine stands, so a small loss is looked for: doses up to %1 mg/L or more.</source>
        <translation>El cloro libre se mantiene, así que se busca una pérdida pequeña: dosis de hasta %1 mg/L o más.</translation>
    </message>
    <message>
        <source>Combined chlorine may take up to ten times as much to break: doses up to %1 mg/L or more.</source>
        <translation>Eliminar el cloro combinado puede pedir hasta diez veces más: dosis de hasta %1 mg/L o más.</translation>
    </message>
    <message>
        <source>No chlorine stands and nobody knows how much is missing: doses up to %1 mg/L or more.</source>
        <translation>No queda cloro y nadie sabe cuánto falta: dosis de hasta %1 mg/L o más.</translation>
    </message>
    <message>
        <source>Green or slimy water uses up much: doses up to %1 mg/L or more.</source>
        <translation>El agua verde o viscosa consume mucho: dosis de hasta %1 mg/L o más.</translation>
    </message>
    <message>
        <source>The test before was used up, so its bottles were too weak: doses up to %1 mg/L or more.</source>
        <translation>La prueba anterior se agotó, así que sus frascos eran demasiado débiles: dosis de hasta %1 mg/L o más.</translation>
    </message>
    <message>
        <source>%1 bottles, 0 to %2 mg/L</source>
        <translation>%1 frascos, de 0 a %2 mg/L</translation>
    </message>
    <message>
        <source>Empty the bottles into the drain with plenty of water, as the local code allows: never back into the pool, never together with acid.</source>
        <translation>Vacíe los frascos en el desagüe con mucha agua, como permita el reglamento local: nunca de vuelta a la piscina, nunca junto con ácido.</translation>
    </message>
    <message>
        <source>Gloves and goggles on; bleach burns and bleaches. The product’s label comes first.</source>
        <translation>Póngase guantes y gafas; el cloro líquido quema y destiñe. La etiqueta del producto está primero.</translation>
    </message>
    <message>
        <source>Liquid chlorine alone: never another kind of chlorine, never acid, ammonia or a cleaner near it. Chlorine into water, not water into chlorine.</source>
        <translation>Solo el cloro líquido: nunca otro tipo de cloro, nunca ácido, amoníaco o un limpiador cerca. El cloro al agua, no el agua al cloro.</translation>
    </message>
    <message>
        <source>Out of reach of children and apart from drinks: these bottles look like water.</source>
        <translation>Fuera del alcance de los niños y lejos de las bebidas: estos frascos parecen agua.</translation>
    </message>
    <message>
        <source>%1 % trade is %1 g of chlorine in 100 mL, %2 g in a litre. The 1 g wanted is in 1000 / %2 = %3 mL.</source>
        <translation>%1&#xa0;% comercial son %1 g de cloro en 100 mL, %2 g en un litro. El gramo deseado está en 1000 / %2 = %3 mL.</translation>
    </message>
    <message>
        <source>It reads %1: the stock holds 500 × %1 = %2 mg/L, and the bottles are reckoned with that.</source>
        <translation>Lee %1: la solución tiene 500 × %1 = %2 mg/L, y con eso se calculan los frascos.</translation>
    </message>
    <message>
        <source>It reads %1: the stock would hold only %2 mg/L. The bleach is old or too little went in. Make it again with fresh bleach.</source>
        <translation>Lee %1: la solución tendría solo %2 mg/L. El cloro líquido está viejo o se puso muy poco. Prepárela de nuevo con cloro líquido fresco.</translation>
    </message>
    <message>
        <source>It reads %1: the stock would hold %2 mg/L, twice what was meant. Read again; if it stays, make the stock again.</source>
        <translation>Lee %1: la solución tendría %2 mg/L, el doble de lo previsto. Lea de nuevo; si se mantiene, prepárela otra vez.</translation>
    </message>
    <message>
        <source>the result is in</source>
        <translation>hay resultado</translation>
    </message>
    <message>
        <source>being set up</source>
        <translation>en preparación</translation>
    </message>
    <message>
        <source>all bottles are read</source>
        <translation>todos los frascos leídos</translation>
    </message>
    <message>
        <source>%1 due %2</source>
        <translation>%1: leer %2</translation>
    </message>
    <message>
        <source>%1 due now, since %2</source>
        <translation>%1: leer ahora, desde %2</translation>
    </message>
    <message>
        <source>%1 overdue by %2</source>
        <translation>%1: atraso de %2</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>se mantiene</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>se agotó</translation>
    </message>
    <message>
        <source>over range: dilute</source>
        <translation>fuera de rango: diluya</translation>
    </message>
    <message>
        <source>may be bleached: dilute</source>
        <translation>quizá blanqueado: diluya</translation>
    </message>
    <message>
        <source>That is what it uses up and %1 mg/L more, for what is to stand in the end is more than stands now.</source>
        <translation>Es lo que consume y %1 mg/L más, pues al final debe quedar más de lo que hay ahora.</translation>
    </message>
    <message>
        <source>That is what it uses up less %1 mg/L, for more stands in it now than has to in the end.</source>
        <translation>Es lo que consume menos %1 mg/L, pues ahora hay más de lo que debe quedar al final.</translation>
    </message>
</context>
<context>
    <name>panel</name>
    <message>
        <source>kept</source>
        <translation>guardada</translation>
    </message>
    <message>
        <source>kept; read it again</source>
        <translation>guardada; repita la lectura</translation>
    </message>
    <message>
        <source>kept; dilute and read again</source>
        <translation>guardada; diluya y repita</translation>
    </message>
    <message>
        <source>kept; says nothing</source>
        <translation>guardada; no dice nada</translation>
    </message>
    <message>
        <source>due</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>not due</source>
        <translation>no pendiente</translation>
    </message>
</context>
<context>
    <name>people</name>
    <message>
        <source>A customer: name, phone or street</source>
        <translation>Un cliente: nombre, teléfono o calle</translation>
    </message>
    <message>
        <source>Why, if they are to be forgotten</source>
        <translation>Por qué, si hay que olvidarlo</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation>Qué se quiere</translation>
    </message>
    <message>
        <source>Names and addresses are kept</source>
        <translation>Nombres y direcciones se guardan</translation>
    </message>
    <message>
        <source>last bottle %1</source>
        <translation>último frasco %1</translation>
    </message>
    <message>
        <source>%1 visits</source>
        <translation>%1 visitas</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Forget them</source>
        <translation>Olvidarlo</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Escribir el archivo</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>No se puede escribir %1: %2</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Not done: say why; it stands in the audit trail.</source>
        <translation>No hecho: diga por qué; queda en el historial.</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>No hecho: %1</translation>
    </message>
    <message>
        <source>Forgotten: name, phone, street and email are gone, the water’s visits stay. Backups made before still hold them, at most a year.</source>
        <translation>Olvidado: nombre, teléfono, calle y correo ya no están; las visitas del agua quedan. Las copias anteriores aún los tienen, como mucho un año.</translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>Afterwards, we expect: %1</source>
        <translation>Después esperamos: %1</translation>
    </message>
    <message>
        <source>this bottle %1</source>
        <translation>este frasco %1</translation>
    </message>
    <message>
        <source>target from %1</source>
        <translation>deseado desde %1</translation>
    </message>
    <message>
        <source>target up to %1</source>
        <translation>deseado hasta %1</translation>
    </message>
    <message>
        <source>last visit %1</source>
        <translation>visita anterior %1</translation>
    </message>
    <message>
        <source>Free chlorine is %1; it should be at least %2. Germs and algae can grow.</source>
        <translation>El cloro libre es %1; debería ser al menos %2. Pueden crecer gérmenes y algas.</translation>
    </message>
    <message>
        <source>Free chlorine is %1; swim only below %2. Add none and let it fall.</source>
        <translation>El cloro libre es %1; báñese solo por debajo de %2. No agregue más y deje que baje.</translation>
    </message>
    <message>
        <source>Stabilizer is %1, and so little free chlorine beside it is held back too strongly to protect anybody.</source>
        <translation>El estabilizador es %1, y tan poco cloro libre a su lado queda demasiado retenido para proteger a nadie.</translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at least %2. Germs can grow.</source>
        <translation>El bromo es %1; debería ser al menos %2. Pueden crecer gérmenes.</translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at most %2. Add none and let it fall.</source>
        <translation>El bromo es %1; debería ser como máximo %2. No agregue más y deje que baje.</translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at least %2. Germs can grow.</source>
        <translation>La biguanida (desinfectante) es %1; debería ser al menos %2. Pueden crecer gérmenes.</translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at most %2. Add none; foam may come.</source>
        <translation>La biguanida (desinfectante) es %1; debería ser como máximo %2. No agregue más; puede formarse espuma.</translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at least %2 to keep the water clear.</source>
        <translation>El peróxido es %1; debería ser al menos %2 para mantener el agua clara.</translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at most %2. Add none and let it fall.</source>
        <translation>El peróxido es %1; debería ser como máximo %2. No agregue más y deje que baje.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at least %2. Acid water attacks metal, plaster and eyes.</source>
        <translation>El pH es %1; debería ser al menos %2. El agua ácida ataca los metales, el enlucido y los ojos.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart, scale can form, and chlorine works slowly.</source>
        <translation>El pH es %1; debería ser como máximo %2. Los ojos escuecen, puede formarse sarro y el cloro actúa despacio.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at least %2. pH will not stay put.</source>
        <translation>La alcalinidad total es %1; debería ser al menos %2. El pH no se mantendrá estable.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at most %2. It keeps pushing pH up.</source>
        <translation>La alcalinidad total es %1; debería ser como máximo %2. Empuja el pH hacia arriba.</translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at least %2. Hungry water takes calcium from the surface.</source>
        <translation>La dureza cálcica es %1; debería ser al menos %2. El agua agresiva toma calcio del revestimiento.</translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at most %2. Scale can form.</source>
        <translation>La dureza cálcica es %1; debería ser como máximo %2. Puede formarse sarro.</translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at least %2. Sunlight takes the chlorine within hours.</source>
        <translation>El estabilizador (ácido cianúrico) es %1; debería ser al menos %2. El sol se lleva el cloro en pocas horas.</translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at most %2. It holds the chlorine back; only new water brings it down.</source>
        <translation>El estabilizador (ácido cianúrico) es %1; debería ser como máximo %2. Frena el cloro; solo el agua nueva lo baja.</translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at least %2, or as its manual says.</source>
        <translation>La sal es %1; el generador necesita al menos %2, o lo que indique su manual.</translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at most %2, or as its manual says. Only new water brings it down.</source>
        <translation>La sal es %1; el generador admite como máximo %2, o lo que indique su manual. Solo el agua nueva la baja.</translation>
    </message>
    <message>
        <source>Dissolved solids are %1; %2 is the most. The water is worn out; new water helps.</source>
        <translation>Los sólidos disueltos son %1; %2 es el máximo. El agua está gastada; el agua nueva ayuda.</translation>
    </message>
    <message>
        <source>Sulfate is %1; above %2 it attacks cement. Only new water brings it down.</source>
        <translation>El sulfato es %1; por encima de %2 ataca el cemento. Solo el agua nueva lo baja.</translation>
    </message>
    <message>
        <source>Iron is %1; from %2 on it can stain.</source>
        <translation>El hierro es %1; a partir de %2 puede manchar.</translation>
    </message>
    <message>
        <source>Copper is %1; from %2 on it can stain the surface and light hair.</source>
        <translation>El cobre es %1; a partir de %2 puede manchar el revestimiento y teñir el cabello claro.</translation>
    </message>
    <message>
        <source>Manganese is %1; from %2 on it can stain.</source>
        <translation>El manganeso es %1; a partir de %2 puede manchar.</translation>
    </message>
    <message>
        <source>Phosphate is %1; above %2 it feeds algae when chlorine runs low.</source>
        <translation>El fosfato es %1; por encima de %2 alimenta las algas cuando falta cloro.</translation>
    </message>
    <message>
        <source>Nitrate is %1; above %2 it feeds algae. Only new water brings it down.</source>
        <translation>El nitrato es %1; por encima de %2 alimenta las algas. Solo el agua nueva lo baja.</translation>
    </message>
    <message>
        <source>Borate is %1; it should be at most %2. Add none.</source>
        <translation>El borato es %1; debería ser como máximo %2. No agregue más.</translation>
    </message>
    <message>
        <source>Turbidity is %1; clear water is below %2.</source>
        <translation>La turbidez es %1; el agua clara está por debajo de %2.</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, below %2: the water dissolves calcium.</source>
        <translation>El índice de saturación en la piscina o spa es %1, por debajo de %2: el agua disuelve calcio.</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, above %2: the water lays down scale.</source>
        <translation>El índice de saturación en la piscina o spa es %1, por encima de %2: el agua deposita sarro.</translation>
    </message>
    <message>
        <source>The overnight test shows that this water uses up %1 of chlorine before any is left.</source>
        <translation>La prueba de un día para otro muestra que esta agua consume %1 de cloro antes de que quede algo.</translation>
    </message>
    <message>
        <source>The demand test has not found how much chlorine this water uses up; no bottle held its chlorine.</source>
        <translation>La prueba de demanda no halló cuánto cloro consume esta agua; ningún frasco conservó su cloro.</translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming: this is an emergency.</source>
        <translation>Se mezclaron químicos o están desprendiendo humos: es una emergencia.</translation>
    </message>
    <message>
        <source>The main drain cannot be seen: nobody could see a swimmer in trouble.</source>
        <translation>No se ve el desagüe de fondo: nadie podría ver a un bañista en apuros.</translation>
    </message>
    <message>
        <source>The water is green: algae are growing.</source>
        <translation>El agua está verde: crecen algas.</translation>
    </message>
    <message>
        <source>The walls are slimy: algae or a film of bacteria is growing.</source>
        <translation>Las paredes están resbalosas: crecen algas o una película de bacterias.</translation>
    </message>
    <message>
        <source>Eyes smart after swimming.</source>
        <translation>Los ojos arden después de bañarse.</translation>
    </message>
    <message>
        <source>The water is cloudy.</source>
        <translation>El agua está turbia.</translation>
    </message>
    <message>
        <source>The water foams: soap, lotion or old water. Rinse off before getting in; if it goes on, change the water.</source>
        <translation>El agua hace espuma: jabón, cremas o agua vieja. Enjuáguese antes de entrar; si sigue, cambie el agua.</translation>
    </message>
    <message>
        <source>There are stains: metals or leaves; what is in the stain no longer shows in the water.</source>
        <translation>Hay manchas: metales u hojas; lo que está en la mancha ya no aparece en el agua.</translation>
    </message>
    <message>
        <source>There is scale on the surface.</source>
        <translation>Hay sarro en el revestimiento.</translation>
    </message>
    <message>
        <source>Light hair turns green: that is copper.</source>
        <translation>El cabello claro se pone verde: es cobre.</translation>
    </message>
    <message>
        <source>Chlorine tablets are in use: each adds acid and, for good, stabilizer.</source>
        <translation>Hay tabletas de cloro en uso: cada una agrega ácido y, de forma permanente, estabilizador.</translation>
    </message>
    <message>
        <source>Something happened in this water that a home plan must not treat.</source>
        <translation>En esta agua pasó algo que un plan para casa no debe tratar.</translation>
    </message>
    <message>
        <source>This water is open to others than the household.</source>
        <translation>Esta agua está abierta a personas ajenas al hogar.</translation>
    </message>
    <message>
        <source>Nobody has said what keeps this water clean.</source>
        <translation>Nadie ha dicho con qué se desinfecta esta agua.</translation>
    </message>
    <message>
        <source>The vessel has changed between biguanide and another sanitizer; they must not meet.</source>
        <translation>Se cambió entre biguanida y otro desinfectante; no deben juntarse.</translation>
    </message>
    <message>
        <source>The sanitizer was not read, so nobody knows whether the water is safe.</source>
        <translation>No se leyó el desinfectante, así que nadie sabe si el agua es segura.</translation>
    </message>
    <message>
        <source>%3 was at the end of the method&apos;s range (%1): dilute the sample and read it again. Nothing is dosed on it.</source>
        <translation>%3 llegó al límite del método (%1): diluya la muestra y repita la lectura. No se dosifica nada con este valor.</translation>
    </message>
    <message>
        <source>%3 (%1) cannot be believed: nothing is dosed on it.</source>
        <translation>%3 (%1) no es creíble: no se dosifica nada con este valor.</translation>
    </message>
    <message>
        <source>%3 (%1) must be read again before anything is dosed on it.</source>
        <translation>%3 (%1) debe leerse de nuevo antes de dosificar nada con este valor.</translation>
    </message>
    <message>
        <source>The readings contradict each other: no water can have all of them.</source>
        <translation>Las lecturas se contradicen: ninguna agua puede tenerlas todas.</translation>
    </message>
    <message>
        <source>The volume is not known, so no amount can be worked out. Measure length, width and average depth, or read the water meter while filling.</source>
        <translation>No se conoce el volumen, así que no puede calcularse ninguna cantidad. Mida largo, ancho y profundidad media, o lea el medidor de agua al llenar.</translation>
    </message>
    <message>
        <source>Lower pH: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Bajar el pH: vierta despacio %1 de %2 ante un retorno, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise alkalinity: spread %1 of %2 over the water.</source>
        <translation>Subir la alcalinidad: esparza %1 de %2 sobre el agua.</translation>
    </message>
    <message>
        <source>Add %1 of %2 first, so that the acid after it does not take alkalinity too low.</source>
        <translation>Agregue primero %1 de %2, para que el ácido que sigue no baje demasiado la alcalinidad.</translation>
    </message>
    <message>
        <source>Lower alkalinity: pour %1 of %2 slowly in front of a return, pump running. pH drops too and comes back with air.</source>
        <translation>Bajar la alcalinidad: vierta despacio %1 de %2 ante un retorno, con la bomba en marcha. El pH también baja y se recupera con aire.</translation>
    </message>
    <message>
        <source>Raise calcium: add %1 of %2, dissolved as its label allows.</source>
        <translation>Subir el calcio: agregue %1 de %2, disuelto como permita su etiqueta.</translation>
    </message>
    <message>
        <source>Raise chlorine: add %1 of %2 where the water moves, never through the skimmer, pump running.</source>
        <translation>Subir el cloro: agregue %1 de %2 donde el agua se mueve, nunca por el skimmer, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise stabilizer: hang %1 of %2 in a sock in front of a return, pump on and no backwash until it is gone. Its reading rises within a week.</source>
        <translation>Subir el estabilizador: cuelgue %1 de %2 en una media ante un retorno, con la bomba en marcha y sin retrolavado hasta que desaparezca. Su lectura sube en una semana.</translation>
    </message>
    <message>
        <source>Lay down bromide: add %1 of %2.</source>
        <translation>Poner la reserva de bromuro: agregue %1 de %2.</translation>
    </message>
    <message>
        <source>Raise bromine: give %1 of %2 by its feeder, no tablet broken. It dissolves over a day or more: test bromine before anybody gets in.</source>
        <translation>Subir el bromo: ponga %1 de %2 en su dosificador, sin romper las pastillas. Tarda un día o más en disolverse: mida el bromo antes de que entre nadie.</translation>
    </message>
    <message>
        <source>Help the filter: add %1 of %2, or as its label says.</source>
        <translation>Ayudar al filtro: agregue %1 de %2, o lo que diga su etiqueta.</translation>
    </message>
    <message>
        <source>Remove phosphate: add %1 of %2. The water looks worse first; clean the filter after.</source>
        <translation>Quitar el fosfato: agregue %1 de %2. Al principio el agua se ve peor; después limpie el filtro.</translation>
    </message>
    <message>
        <source>Brush walls, steps and corners.</source>
        <translation>Cepille paredes, escalones y esquinas.</translation>
    </message>
    <message>
        <source>Take out leaves and vacuum the floor.</source>
        <translation>Saque las hojas y aspire el fondo.</translation>
    </message>
    <message>
        <source>Run the filter day and night until the water is clear.</source>
        <translation>Mantenga el filtro en marcha día y noche hasta que el agua esté clara.</translation>
    </message>
    <message>
        <source>Clean or backwash the filter.</source>
        <translation>Limpie o retrolave el filtro.</translation>
    </message>
    <message>
        <source>Run the pump for %6, so that all the water goes through the filter once.</source>
        <translation>Haga funcionar la bomba %6, para que toda el agua pase una vez por el filtro.</translation>
    </message>
    <message>
        <source>Turn the chlorine generator off until free chlorine is back in range.</source>
        <translation>Apague el generador de cloro hasta que el cloro libre vuelva a su intervalo.</translation>
    </message>
    <message>
        <source>Turn the chlorine generator up one step.</source>
        <translation>Suba el generador de cloro un nivel.</translation>
    </message>
    <message>
        <source>Once it is full again and well mixed, bring a bottle of it and one of the tap water: the rest of the doses hang on them.</source>
        <translation>Cuando esté llena otra vez y bien mezclada, traiga un frasco de esa agua y otro del agua de la llave: de ellos depende el resto de las dosis.</translation>
    </message>
    <message>
        <source>Once it is full again and well mixed, bring a bottle: the doses hang on it.</source>
        <translation>Cuando esté llena otra vez y bien mezclada, traiga un frasco: de él dependen las dosis.</translation>
    </message>
    <message>
        <source>Bring another bottle; the rest of the dose is worked out from it.</source>
        <translation>Traiga otro frasco; con él se calcula el resto de la dosis.</translation>
    </message>
    <message>
        <source>Bring another bottle: we must read free chlorine again, diluted 1 + 4. Strong chlorine can bleach the test and look like none.</source>
        <translation>Traiga otro frasco: debemos leer de nuevo el cloro libre, diluido 1 + 4. Mucho cloro puede blanquear la prueba y parecer que no hay.</translation>
    </message>
    <message>
        <source>Bring a litre of the water for an overnight chlorine-demand test: what it needs is more than is safe to add by guess.</source>
        <translation>Traiga un litro del agua para una prueba de demanda de cloro de un día para otro: lo que necesita es más de lo que es seguro agregar a ojo.</translation>
    </message>
    <message>
        <source>Bring a litre of the water for another demand test, with stronger bottles.</source>
        <translation>Traiga un litro del agua para otra prueba de demanda, con frascos más fuertes.</translation>
    </message>
    <message>
        <source>This water uses up too much chlorine to treat: bring another bottle once part of it has been changed, or ask a licensed operator.</source>
        <translation>Esta agua consume demasiado cloro para tratarla: traiga otro frasco cuando se haya cambiado una parte, o consulte a un operador autorizado.</translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department which procedure applies.</source>
        <translation>No deje entrar a nadie y pregunte a la autoridad sanitaria qué procedimiento corresponde.</translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department.</source>
        <translation>No deje entrar a nadie y consulte a la autoridad sanitaria.</translation>
    </message>
    <message>
        <source>Keep everybody out; have a licensed operator clear the water.</source>
        <translation>No deje entrar a nadie; haga que un operador autorizado aclare el agua.</translation>
    </message>
    <message>
        <source>Hand these readings to the qualified operator.</source>
        <translation>Entregue estas lecturas al operador calificado.</translation>
    </message>
    <message>
        <source>Find out what keeps this water clean.</source>
        <translation>Averigüe con qué se desinfecta esta agua.</translation>
    </message>
    <message>
        <source>Have the changeover done by somebody licensed.</source>
        <translation>Encargue el cambio a un profesional autorizado.</translation>
    </message>
    <message>
        <source>Dilute the sample where the method allows it, or use one of wider range, and read again.</source>
        <translation>Diluya la muestra donde el método lo permita, o use uno de mayor intervalo, y lea de nuevo.</translation>
    </message>
    <message>
        <source>Take a fresh bottle and read pH, alkalinity and stabilizer again.</source>
        <translation>Tome un frasco nuevo y lea otra vez pH, alcalinidad y estabilizador.</translation>
    </message>
    <message>
        <source>Always chemical into water, never water into chemical.</source>
        <translation>Siempre el químico al agua, nunca el agua al químico.</translation>
    </message>
    <message>
        <source>Irritates the eyes: goggles on.</source>
        <translation>Irrita los ojos: use gafas de protección.</translation>
    </message>
    <message>
        <source>It gets hot when it dissolves: clean bucket, cool water first, small amounts.</source>
        <translation>Se calienta al disolverse: balde limpio, primero agua fría, pequeñas cantidades.</translation>
    </message>
    <message>
        <source>Never in the same sock, skimmer, bucket or hour as strong chlorine.</source>
        <translation>Nunca en la misma media, skimmer, balde u hora que un cloro fuerte.</translation>
    </message>
    <message>
        <source>Burns skin and eyes, feeds fire: goggles, gloves, a dry scoop of its own, away from fuel and anything that burns.</source>
        <translation>Quema la piel y los ojos y aviva el fuego: gafas y guantes de protección, cuchara propia y seca, lejos de combustibles y de todo lo que arda.</translation>
    </message>
    <message>
        <source>Never wet the container or add a little water to the granules.</source>
        <translation>Nunca moje el envase ni agregue un poco de agua a los gránulos.</translation>
    </message>
    <message>
        <source>Never let two kinds of chlorine, or chlorine and acid, meet, not even in a scoop: they can explode or give off gas.</source>
        <translation>Nunca deje que se junten dos tipos de cloro, ni cloro y ácido, ni siquiera en una cuchara: pueden explotar o soltar gas.</translation>
    </message>
    <message>
        <source>An empty shell can float up in wet ground, and a liner can shrink: no draining after heavy rain; ask a professional where the ground water is high.</source>
        <translation>Una piscina vacía puede flotar en suelo mojado y un vinilo puede encogerse: no vacíe tras lluvias fuertes; consulte a un profesional si el agua subterránea está alta.</translation>
    </message>
    <message>
        <source>Power off before draining.</source>
        <translation>Corte la corriente antes de vaciar.</translation>
    </message>
    <message>
        <source>The product&apos;s label and your local code come first.</source>
        <translation>La etiqueta del producto y el reglamento local están primero.</translation>
    </message>
    <message>
        <source>This is advice for a home; where in doubt ask a licensed operator.</source>
        <translation>Estos consejos son para un hogar; en caso de duda consulte a un operador autorizado.</translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming. Leave at once, upwind; keep others out; call the emergency number from outside. Do not go back to air the room, add no water, move nothing.</source>
        <translation>Se mezclaron químicos o están desprendiendo humos. Salga de inmediato, contra el viento; mantenga lejos a los demás; llame al número de emergencia desde afuera. No vuelva para ventilar, no agregue agua, no mueva nada.</translation>
    </message>
    <message>
        <source>After faeces, vomit, blood or a dead animal the health department&apos;s procedure applies, not a home plan. Keep everybody out until it is done.</source>
        <translation>Después de heces, vómito, sangre o un animal muerto rige el procedimiento de la autoridad sanitaria, no un plan para casa. No deje entrar a nadie hasta que se haya cumplido.</translation>
    </message>
    <message>
        <source>Flood, sewage or illness can bring what no home treatment removes. Keep everybody out and ask the health department.</source>
        <translation>Una inundación, aguas negras o una enfermedad pueden traer lo que ningún tratamiento casero elimina. No deje entrar a nadie y consulte a la autoridad sanitaria.</translation>
    </message>
    <message>
        <source>The main drain cannot be seen, so nobody may swim and nobody could be found in the water. Close it off and have a licensed operator clear it.</source>
        <translation>No se ve el desagüe de fondo: nadie debe bañarse y a nadie se le podría encontrar en el agua. Ciérrela y haga que un operador autorizado la aclare.</translation>
    </message>
    <message>
        <source>This water is open to others than the household. Local code and its qualified operator decide; here are the readings.</source>
        <translation>Esta agua está abierta a personas ajenas al hogar. Deciden el reglamento local y su operador calificado; aquí están las lecturas.</translation>
    </message>
    <message>
        <source>What keeps this water clean is not known, and the wrong chemical can be dangerous. Ask which sanitizer is used, then come back.</source>
        <translation>No se sabe con qué se desinfecta esta agua, y el químico equivocado puede ser peligroso. Pregunte qué desinfectante se usa y vuelva.</translation>
    </message>
    <message>
        <source>Biguanide and other sanitizers must not meet. Have the changeover done by somebody licensed before anything is added.</source>
        <translation>La biguanida y otros desinfectantes no deben juntarse. Encargue el cambio a un profesional autorizado antes de agregar nada.</translation>
    </message>
    <message>
        <source>pH, alkalinity or the sanitizer was beyond what the method can read or cannot be believed. Read it again, diluted or by a wider method; nothing is added until then.</source>
        <translation>El pH, la alcalinidad o el desinfectante quedaron fuera de lo que el método puede leer, o no son creíbles. Repita la lectura, con dilución o con un método más amplio; hasta entonces no se agrega nada.</translation>
    </message>
    <message>
        <source>The readings contradict each other. Take a fresh bottle and read them again; nothing is added until then.</source>
        <translation>Las lecturas se contradicen. Tome un frasco nuevo y léalas otra vez; hasta entonces no se agrega nada.</translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation>%1&#xa0;oz líq.</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1&#xa0;gal</translation>
    </message>
    <message>
        <source>%1 gal and %2 fl oz</source>
        <translation>%1&#xa0;gal y %2&#xa0;oz líq.</translation>
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
        <translation>Haga esto %1 veces, cada %2.</translation>
    </message>
    <message>
        <source>Burns skin and eyes, bleaches clothes, feeds fire: goggles and gloves on.</source>
        <translation>Quema la piel y los ojos, destiñe la ropa y aviva el fuego: use gafas y guantes de protección.</translation>
    </message>
    <message>
        <source>Burns skin and eyes: goggles and gloves on.</source>
        <translation>Quema la piel y los ojos: use gafas y guantes de protección.</translation>
    </message>
    <message>
        <source>Grains left lying bleach liner, paint and fibreglass: brush until they are gone.</source>
        <translation>Los granos que quedan en el fondo destiñen el liner, la pintura y la fibra: cepille hasta que desaparezcan.</translation>
    </message>
    <message>
        <source>Raise borate: spread %1 of %2 over the water.</source>
        <translation>Suba el borato: esparza %1 de %2 sobre el agua.</translation>
    </message>
    <message>
        <source>Take down chlorine: add %1 of %2, half of what it would take; then read again.</source>
        <translation>Baje el cloro: agregue %1 de %2, la mitad de lo que haría falta; luego vuelva a medir.</translation>
    </message>
    <message>
        <source>Add no chlorine; cover off and pump on: the sun brings it down by itself.</source>
        <translation>No agregue cloro; sin cubierta y con la bomba en marcha el sol lo baja solo.</translation>
    </message>
    <message>
        <source>Add no chlorine; cover off and pump on until it has come down by itself.</source>
        <translation>No agregue cloro; sin cubierta y con la bomba en marcha hasta que baje solo.</translation>
    </message>
    <message>
        <source>Brush the new plaster all over, twice a day until it is 28 days old; no salt until then.</source>
        <translation>Cepille todo el enlucido nuevo dos veces al día hasta que tenga 28 días; nada de sal hasta entonces.</translation>
    </message>
    <message>
        <source>Pump the water and leaves off the cover before it comes off; none of it into the pool.</source>
        <translation>Saque con una bomba el agua y las hojas de la cubierta antes de quitarla; que nada caiga en la piscina.</translation>
    </message>
    <message>
        <source>For the winter: add %1 of %2, or as its label says.</source>
        <translation>Para el invierno: agregue %1 de %2, o lo que diga su etiqueta.</translation>
    </message>
    <message>
        <source>%1 stays at %2: no dose without the volume. Measure it first.</source>
        <translation>%1 sigue en %2: sin el volumen no hay dosis. Mídalo primero.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the refilled water has been read: the fill water is not known.</source>
        <translation>%1 espera en %2 hasta que se mida el agua rellenada: no se conoce el agua de llenado.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the refilled water has been read.</source>
        <translation>%1 espera en %2 hasta que se mida el agua rellenada.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: high alkalinity at low pH comes down only by turns of acid and air, over days. Bring another bottle for the next turn.</source>
        <translation>%1 quedará en %2: una alcalinidad alta con pH bajo solo baja alternando ácido y aire, durante días. Traiga otro frasco para el siguiente turno.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: the next bottle decides the next dose.</source>
        <translation>%1 quedará en %2: el próximo frasco decide la próxima dosis.</translation>
    </message>
    <message>
        <source>%1 still reads %2: a binder keeps it from staining but does not take it out. Find where it comes from.</source>
        <translation>%1 sigue marcando %2: el secuestrante evita manchas, pero no lo saca. Averigüe de dónde viene.</translation>
    </message>
    <message>
        <source>%1 stands at %2 and falls by itself: add none, then read again.</source>
        <translation>%1 está en %2 y baja por sí solo: no agregue más y vuelva a medir.</translation>
    </message>
    <message>
        <source>%1 stays at %2: nothing on a shelf takes it out, only other water does.</source>
        <translation>%1 sigue en %2: ningún producto lo saca, solo otra agua.</translation>
    </message>
    <message>
        <source>%1 stays at %2: the fill water holds too much of it itself. Other fill water would help.</source>
        <translation>%1 sigue en %2: el agua de llenado ya trae demasiado. Otra agua ayudaría.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: one part of the water more has to be changed, after the next bottle.</source>
        <translation>%1 quedará en %2: hay que cambiar otra parte del agua, después del próximo frasco.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the plaster is 28 days old.</source>
        <translation>%1 espera en %2 hasta que el enlucido tenga 28 días.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until the pool is opened again.</source>
        <translation>%1 espera en %2 hasta que se abra otra vez la piscina.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until chlorine holds overnight.</source>
        <translation>%1 espera en %2 hasta que el cloro aguante la noche.</translation>
    </message>
    <message>
        <source>%1 stays at %2: pH, alkalinity and stabilizer must be read again before a dose.</source>
        <translation>%1 sigue en %2: hay que medir de nuevo el pH, la alcalinidad y el estabilizador antes de una dosis.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: what would move it is neither on the shelf nor at home.</source>
        <translation>%1 quedará en %2: lo que lo movería no está ni en el estante ni en casa.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: no dose brings it nearer without taking another reading out of its range.</source>
        <translation>%1 quedará en %2: ninguna dosis lo acerca sin sacar otra medición de su rango.</translation>
    </message>
    <message>
        <source>%1 waits at %2 for an overnight chlorine-demand test.</source>
        <translation>%1 espera en %2 una prueba nocturna de demanda de cloro.</translation>
    </message>
    <message>
        <source>%1 waits at %2 for another demand test.</source>
        <translation>%1 espera en %2 otra prueba de demanda.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until part of the water has been changed.</source>
        <translation>%1 espera en %2 hasta que se cambie parte del agua.</translation>
    </message>
    <message>
        <source>%1 was read as %2 and must be read again before a dose.</source>
        <translation>%1 se midió en %2 y hay que medirlo otra vez antes de una dosis.</translation>
    </message>
    <message>
        <source>%1 waits at %2 until it has been read again, diluted.</source>
        <translation>%1 espera en %2 hasta que se mida de nuevo, diluido.</translation>
    </message>
    <message>
        <source>Step %1: a change needs a name and a reason.</source>
        <translation>Paso %1: un cambio necesita un nombre y un motivo.</translation>
    </message>
    <message>
        <source>Step %1 is not in this plan.</source>
        <translation>El paso %1 no está en este plan.</translation>
    </message>
    <message>
        <source>Step %1 cannot be changed to that: it would do something else.</source>
        <translation>El paso %1 no se puede cambiar por eso: haría otra cosa.</translation>
    </message>
    <message>
        <source>Step %1: that product is neither on the shelf nor at home.</source>
        <translation>Paso %1: ese producto no está ni en el estante ni en casa.</translation>
    </message>
    <message>
        <source>Step %1: that product may never go into this water, or never beside another step.</source>
        <translation>Paso %1: ese producto no puede ir nunca en esta agua, o nunca junto a otro paso.</translation>
    </message>
    <message>
        <source>Step %1: the product&apos;s label decides this dose.</source>
        <translation>Paso %1: la etiqueta del producto decide esta dosis.</translation>
    </message>
    <message>
        <source>Step %1: that is more than one step may hold.</source>
        <translation>Paso %1: es más de lo que admite un solo paso.</translation>
    </message>
    <message>
        <source>Refused: in %2 of 100 draws step %1 could do harm (pH below 7.0 or above 8.2, or too much chlorine).</source>
        <translation>Rechazado: en %2 de 100 casos el paso %1 podría hacer daño (pH menor de 7.0 o mayor de 8.2, o demasiado cloro).</translation>
    </message>
    <message>
        <source>Calcium saturation in the vessel</source>
        <translation>La saturación de calcio en el vaso</translation>
    </message>
    <message>
        <source>%1 stands at %2, at the edge of its range: by less than the error of the reading. Read it again with the next bottle.</source>
        <translation>%1 está en %2, en el límite de su intervalo: lo pasa en menos que el error de la lectura. Se vuelve a leer con la próxima muestra.</translation>
    </message>
    <message>
        <source>The sanitizer&apos;s reading cannot be believed yet, so nobody knows whether the water is safe.</source>
        <translation>La lectura del desinfectante aún no se puede creer, así que nadie sabe si el agua es segura.</translation>
    </message>
    <message>
        <source>Take out the bromine tablets; cover off and pump on until bromine has come down by itself.</source>
        <translation>Quite las tabletas de bromo; sin cubierta y con la bomba en marcha hasta que el bromo baje solo.</translation>
    </message>
    <message>
        <source>Bring another bottle: a reading has to be taken again before anything is dosed.</source>
        <translation>Traiga otra muestra: hay que repetir una lectura antes de dosificar nada.</translation>
    </message>
    <message>
        <source>So little working sanitizer explains it.</source>
        <translation>Lo explica tan poco desinfectante activo.</translation>
    </message>
    <message>
        <source>Calcium coming out of the water explains it.</source>
        <translation>Lo explica el calcio que se separa del agua.</translation>
    </message>
    <message>
        <source>The readings do not explain it: look at the filter, its pressure and its running time first.</source>
        <translation>Las lecturas no lo explican: mire primero el filtro, su presión y sus horas de marcha.</translation>
    </message>
    <message>
        <source>Dissolved metal was found too, which greens clear water: look whether walls are slippery.</source>
        <translation>También se halló metal disuelto, que pone verde el agua clara: mire si las paredes resbalan.</translation>
    </message>
    <message>
        <source>The sanitizer reads in order, which does not fit: if the water is clear and green, have iron and copper read.</source>
        <translation>El desinfectante está en orden, y eso no encaja: si el agua es verde pero clara, haga leer hierro y cobre.</translation>
    </message>
    <message>
        <source>The readings explain it.</source>
        <translation>Las lecturas lo explican.</translation>
    </message>
    <message>
        <source>pH and chlorine read in order, which does not fit: read pH again, and ask who else has it.</source>
        <translation>El pH y el cloro están en orden, y eso no encaja: vuelva a leer el pH y pregunte a quién más le pasa.</translation>
    </message>
    <message>
        <source>The reading shows it too.</source>
        <translation>La lectura también lo muestra.</translation>
    </message>
    <message>
        <source>Little copper shows in the water now; it may have been taken up before.</source>
        <translation>Ahora hay poco cobre en el agua; puede venir de antes.</translation>
    </message>
    <message>
        <source>Dissolved metal was found, which explains new ones.</source>
        <translation>Se halló metal disuelto, lo que explica las manchas nuevas.</translation>
    </message>
    <message>
        <source>No metal shows in the water now.</source>
        <translation>Ahora no se ve metal en el agua.</translation>
    </message>
    <message>
        <source>This water dissolves scale, which does not fit: it may be old, or no scale.</source>
        <translation>Esta agua disuelve la cal, y eso no encaja: puede ser vieja, o no ser cal.</translation>
    </message>
    <message>
        <source>The sanitizer reads in order, which does not fit: brush first, it may not reach the walls.</source>
        <translation>El desinfectante está en orden, y eso no encaja: cepille primero, quizá no llega a las paredes.</translation>
    </message>
    <message>
        <source>less than one tablet</source>
        <translation>menos de una tableta</translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, past %2 by less than its error: at the edge. No treatment is begun for it alone.</source>
        <translation>El índice de saturación en el vaso es %1, más allá de %2 en menos que su error: en el límite. No se empieza ningún tratamiento solo por esto.</translation>
    </message>
    <message>
        <source>%1 is %2, below %3 by less than the error of the reading: at the edge. Read it again; no treatment is begun for it alone.</source>
        <translation>%1 es %2, por debajo de %3 en menos que el error de la lectura: en el límite. Léalo otra vez; no se empieza ningún tratamiento solo por esto.</translation>
    </message>
    <message>
        <source>%1 is %2, above %3 by less than the error of the reading: at the edge. Read it again; no treatment is begun for it alone.</source>
        <translation>%1 es %2, por encima de %3 en menos que el error de la lectura: en el límite. Léalo otra vez; no se empieza ningún tratamiento solo por esto.</translation>
    </message>
    <message>
        <source>Raise bromine: %1 is missing of %2, so drop none in: open the feeder one mark further and test bromine tomorrow, before anybody gets in.</source>
        <translation>Subir el bromo: falta %1 de %2, así que no eche ninguna: abra el dosificador una marca más y mida el bromo mañana, antes de que entre nadie.</translation>
    </message>
    <message>
        <source>Total chlorine is %1; with this free chlorine %2 is the most. The rest is spent chlorine, which stings and smells.</source>
        <translation>El cloro total es %1; con este cloro libre lo máximo es %2. El resto es cloro gastado, que pica y huele.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart and scale can form.</source>
        <translation>El pH es %1; debería ser como mucho %2. Los ojos escuecen y puede formarse sarro.</translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Eyes smart, scale can form, and bromine works less.</source>
        <translation>El pH es %1; debería ser como mucho %2. Los ojos escuecen, puede formarse sarro y el bromo actúa menos.</translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at most %2. pH is low at once: air raises pH first, then acid takes alkalinity down.</source>
        <translation>La alcalinidad total es %1; debería ser como mucho %2. El pH está bajo a la vez: primero el aire sube el pH, luego el ácido baja la alcalinidad.</translation>
    </message>
    <message>
        <source>The water is at %1; %2 is the most that is safe to sit in.</source>
        <translation>El agua está a %1; %2 es lo máximo para estar en ella sin peligro.</translation>
    </message>
    <message>
        <source>The water smells strongly.</source>
        <translation>El agua huele fuerte.</translation>
    </message>
    <message>
        <source>%1 is %2, below %3 by less than the error of the reading: at the edge. It is mended along with the rest.</source>
        <translation>%1: %2, por debajo de %3 en menos que el error de la lectura: en el borde. Se corrige junto con lo demás.</translation>
    </message>
    <message>
        <source>%1 is %2, above %3 by less than the error of the reading: at the edge. It is mended along with the rest.</source>
        <translation>%1: %2, por encima de %3 en menos que el error de la lectura: en el borde. Se corrige junto con lo demás.</translation>
    </message>
    <message>
        <source>Raise pH: stir %1 of %2 into a bucket of pool water and pour it round the edge, pump running.</source>
        <translation>Suba el pH: disuelva %1 de %2 en un cubo con agua de la piscina y viértalo por todo el borde, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise pH and alkalinity together: stir %1 of %2 into a bucket of pool water and pour it round the edge, pump running.</source>
        <translation>Suba el pH y la alcalinidad a la vez: disuelva %1 de %2 en un cubo con agua de la piscina y viértalo por todo el borde, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise bromine: sprinkle %1 of %2 over the moving water, jets or pump on for an hour.</source>
        <translation>Suba el bromo: espolvoree %1 de %2 sobre el agua en movimiento, con los chorros o la bomba en marcha una hora.</translation>
    </message>
    <message>
        <source>Raise the sanitizer: pour %1 of %2 in front of a return, pump running.</source>
        <translation>Suba el desinfectante: vierta %1 de %2 delante de un retorno, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise peroxide: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Suba el peróxido: vierta %1 de %2 despacio delante de un retorno, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Bind the metals before any other chemical goes in: pour %1 of %2 in front of a return, or as its label says.</source>
        <translation>Fije los metales antes de echar cualquier otro producto: vierta %1 de %2 delante de un retorno, o según su etiqueta.</translation>
    </message>
    <message>
        <source>Let out %5 of the water by its drain or a sump pump and fill up again. Pump, heater and generator off before, on again once it is full.</source>
        <translation>Saque %5 del agua por el desagüe o con una bomba de achique y vuelva a llenar. Bomba, calentador y generador apagados antes; encendidos de nuevo cuando esté llena.</translation>
    </message>
    <message>
        <source>Let pH rise by air for about %6: turn the returns up until they break the surface; fountain, jets and air on. Stop as soon as a test shows pH %8.</source>
        <translation>Deje que el pH suba con aire durante unas %6: dirija los retornos hacia arriba hasta que rompan la superficie; fuente, chorros y aire encendidos. Pare en cuanto un test muestre pH %8.</translation>
    </message>
    <message>
        <source>Heater off; let the water cool to %7 or less before anybody gets in.</source>
        <translation>Calentador apagado; deje enfriar el agua a %7 o menos antes de que entre nadie.</translation>
    </message>
    <message>
        <source>Acid burns: goggles and gloves on, the wind at your back, nobody downwind of you. Never with or near chlorine.</source>
        <translation>El ácido quema: gafas y guantes de protección puestos, el viento a la espalda y nadie delante de usted en la dirección del viento. Nunca con cloro ni cerca de él.</translation>
    </message>
    <message>
        <source>Ask the town where the water may go: many want no chlorine in it, and none wants salt water in a storm drain.</source>
        <translation>Pregunte al municipio adónde puede ir el agua: muchos no la quieren con cloro, y ninguno quiere agua salada en el desagüe pluvial.</translation>
    </message>
    <message>
        <source>Without stabilizer the sun takes it within a day.</source>
        <translation>Sin estabilizador, el sol lo gasta en un día.</translation>
    </message>
    <message>
        <source>Cover off, and stay out of the vapour over the water.</source>
        <translation>Cubierta quitada, y no respire el vapor sobre el agua.</translation>
    </message>
    <message>
        <source>This water runs on biguanide: no chlorine, bromine, copper or monopersulfate may go in, not even as a shock.</source>
        <translation>Esta agua funciona con biguanida: no debe entrar cloro, bromo, cobre ni monopersulfato, ni siquiera como choque.</translation>
    </message>
    <message>
        <source>This water runs on bromine: no stabilizer, and no product that holds any.</source>
        <translation>Esta agua funciona con bromo: nada de estabilizador ni productos que lo contengan.</translation>
    </message>
    <message>
        <source>Pump and filter run from now on, day and night, until the water is clear.</source>
        <translation>Bomba y filtro en marcha desde ahora, día y noche, hasta que el agua esté clara.</translation>
    </message>
    <message>
        <source>The hours are the earliest. Later is fine: keep the order and the hours in between.</source>
        <translation>Las horas son las primeras posibles. Más tarde también vale: respete el orden y las horas entre pasos.</translation>
    </message>
    <message>
        <source>Keep everybody out until the operator of this water says otherwise.</source>
        <translation>Que no entre nadie hasta que el responsable de esta agua diga otra cosa.</translation>
    </message>
    <message>
        <source>Never mix chemicals. Each goes into the water by itself, pump running.</source>
        <translation>No mezcle nunca productos. Cada uno va al agua por separado, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Test again before any treatment that is not on this sheet.</source>
        <translation>Analice de nuevo antes de cualquier tratamiento que no esté en esta hoja.</translation>
    </message>
    <message>
        <source>about %1 gallons</source>
        <translation>unos %1 galones</translation>
    </message>
    <message>
        <source>about %1 litres</source>
        <translation>unos %1 litros</translation>
    </message>
    <message>
        <source>about %1 m³</source>
        <translation>unos %1 m³</translation>
    </message>
    <message>
        <source>%1 oz by weight</source>
        <translation>%1 oz de peso</translation>
    </message>
    <message>
        <source>%1 still reads %2, and the fill water brings it: fill through a filter for metals.</source>
        <translation>%1 sigue en %2, y lo trae el agua de llenado: llene a través de un filtro para metales.</translation>
    </message>
    <message>
        <source>%1 stays at %2: it is taken out once chlorine holds and the water is clear.</source>
        <translation>%1 se queda en %2: se elimina cuando el cloro aguante y el agua esté clara.</translation>
    </message>
    <message>
        <source>%1 waits at %2: another reading may call for new water, and this would go out with it.</source>
        <translation>%1 espera en %2: otra lectura puede pedir agua nueva, y esto se iría con la vieja.</translation>
    </message>
    <message>
        <source>%1 stays at %2: acid would do young plaster more harm.</source>
        <translation>%1 se queda en %2: el ácido haría más daño al revoque joven.</translation>
    </message>
    <message>
        <source>Whether the sanitizer explains it, its next reading shows.</source>
        <translation>Si el desinfectante lo explica, lo dirá su próxima lectura.</translation>
    </message>
    <message>
        <source>It is mostly spent chlorine that smells, and the readings show none: read free and total again.</source>
        <translation>Lo que huele suele ser cloro gastado, y las lecturas no lo muestran: lea de nuevo libre y total.</translation>
    </message>
    <message>
        <source>Make room for pH, which a later step raises: pour %1 of %2 slowly in front of a return, pump running.</source>
        <translation>Deje margen al pH, que un paso posterior sube: vierta %1 de %2 despacio delante de un retorno, con la bomba en marcha.</translation>
    </message>
    <message>
        <source>Raise salt: generator off first. Spread %1 of %2 over the water, pump running, and brush until it is gone. Generator on again a day later.</source>
        <translation>Suba la sal: primero apague el generador. Esparza %1 de %2 sobre el agua, con la bomba en marcha, y cepille hasta que desaparezca. Encienda el generador un día después.</translation>
    </message>
    <message>
        <source>Burn off the spent chlorine: have all of it at hand, then pour %1 of %2 low in front of a return, pump running, all in one go. Less would make matters worse.</source>
        <translation>Queme el cloro gastado: téngalo todo a mano y vierta %1 de %2 a ras del agua delante de un retorno, con la bomba en marcha, todo de una vez. Menos empeoraría las cosas.</translation>
    </message>
    <message>
        <source>Kill the algae: add %1 of %2 where the water moves, pump running, all in one go; leave it overnight.</source>
        <translation>Mate las algas: añada %1 de %2 donde el agua se mueve, con la bomba en marcha, todo de una vez; déjelo toda la noche.</translation>
    </message>
    <message>
        <source>Meet what the water uses up: add %1 of %2 where the water moves, pump running, all in one go; leave it overnight.</source>
        <translation>Cubra lo que el agua consume: añada %1 de %2 donde el agua se mueve, con la bomba en marcha, todo de una vez; déjelo toda la noche.</translation>
    </message>
    <message>
        <source>Take tablets out of skimmer and feeder, pump off while it is open. Other chlorine goes in only where a step of this sheet says so.</source>
        <translation>Saque las tabletas del skimmer y del dosificador, con la bomba apagada mientras esté abierto. Otro cloro entra solo donde un paso de esta hoja lo diga.</translation>
    </message>
    <message>
        <source>Leave at once, away from the fumes and upwind, keep others out and call the emergency number from outside.</source>
        <translation>Salga enseguida, apartándose de los vapores y contra el viento, no deje entrar a nadie y llame al número de emergencias desde fuera.</translation>
    </message>
    <message>
        <source>With acid it gives off chlorine gas: never the same jug, bucket, spot or hour.</source>
        <translation>Con ácido desprende gas cloro: nunca la misma jarra, balde, lugar ni hora.</translation>
    </message>
    <message>
        <source>Generator off before, and on again only a day after.</source>
        <translation>Generador apagado antes, y encendido de nuevo solo un día después.</translation>
    </message>
    <message>
        <source>Where its label names another amount for this much water, the label&apos;s counts.</source>
        <translation>Si su etiqueta indica otra cantidad para esta agua, vale la de la etiqueta.</translation>
    </message>
    <message>
        <source>Feeds fire: nothing else in the jug, never back into its container, spills rinsed with much water, away from rags, wood and fuel.</source>
        <translation>Aviva el fuego: nada más en la jarra, nunca de vuelta a su envase, los derrames se enjuagan con mucha agua, lejos de trapos, madera y combustibles.</translation>
    </message>
    <message>
        <source>So little wants a syringe, a measuring spoon or a scale that shows tenths of a gram; ask us for one.</source>
        <translation>Tan poco se mide con jeringa, cuchara medidora o una balanza de décimas de gramo; pídanosla.</translation>
    </message>
    <message>
        <source>A feeder can spit gas: pump off, valves shut, face away, goggles and gloves on. Damp tablets go into a clean, dry plastic bucket by themselves, open, outdoors in the shade, away from rain and children: never into a closed box, never on another product.</source>
        <translation>Un dosificador puede soltar gas: bomba apagada, válvulas cerradas, la cara apartada, gafas y guantes de protección. Las tabletas húmedas van solas a un balde de plástico limpio y seco, abierto, al aire libre y a la sombra, lejos de la lluvia y de los niños: nunca en un recipiente cerrado ni sobre otro producto.</translation>
    </message>
    <message>
        <source>So many small doses: ask us whether emptying and filling up, power off, is quicker.</source>
        <translation>Tantas dosis pequeñas: pregúntenos si vaciar y llenar de nuevo, sin corriente, es más rápido.</translation>
    </message>
    <message>
        <source>Indoors: cover off, doors and windows open, nobody else in the room; once it is in, leave until the smell is gone.</source>
        <translation>En interior: cubierta fuera, puertas y ventanas abiertas, nadie más en la sala; una vez vertido, salga hasta que se vaya el olor.</translation>
    </message>
    <message>
        <source>This sheet is for the water alone. Water level, emptying the pipes, frost protection and the cover come after it, as the makers&apos; manuals say.</source>
        <translation>Esta hoja es solo para el agua. El nivel, el vaciado de tuberías, la protección contra heladas y la cubierta vienen después, según los manuales de los fabricantes.</translation>
    </message>
    <message>
        <source>Where water stood on the pump, a light or a socket: touch nothing, have an electrician look first. Leaves and mud out before the first dose.</source>
        <translation>Donde el agua haya cubierto la bomba, una luz o un enchufe: no toque nada, que lo vea antes un electricista. Hojas y barro fuera antes de la primera dosis.</translation>
    </message>
    <message>
        <source>Trouble breathing: fresh air, and call %1. Chemical in the eyes: rinse at once for 15 minutes, then call as said under &quot;If something goes wrong&quot;.</source>
        <translation>Dificultad para respirar: aire fresco y llame al %1. Producto en los ojos: enjuague enseguida 15 minutos y llame como se dice en «Si algo sale mal».</translation>
    </message>
    <message>
        <source>Sun and bathers use chlorine up: from the evening after this dose until the next bottle, test it every evening with a kit or strips; where it is below %1 mg/L, add %2 of %3 at dusk, once an evening.</source>
        <translation>El sol y los bañistas gastan el cloro: desde la noche siguiente a esta dosis y hasta el próximo frasco, mídalo cada noche con un equipo o tiras; si está por debajo de %1 mg/L, añada %2 de %3 al anochecer, una vez por noche.</translation>
    </message>
    <message>
        <source>%1 will stand at %2: with the error of the readings more of a dose could do harm, so it was made smaller or left out. Bring another bottle: the rest is worked out from it.</source>
        <translation>%1 quedará en %2: con el error de las lecturas, más dosis podría hacer daño, así que se redujo o se omitió. Traiga otro frasco: con él se calcula el resto.</translation>
    </message>
    <message>
        <source>%1 stays at %2 until free chlorine has been read again; no dose before.</source>
        <translation>%1 sigue en %2 hasta que se vuelva a medir el cloro libre; ninguna dosis antes.</translation>
    </message>
    <message>
        <source>That is spent (combined) chlorine, not too much fresh chlorine.</source>
        <translation>Es cloro gastado (combinado), no exceso de cloro fresco.</translation>
    </message>
    <message>
        <source>Before the pump runs: cover off and away, plugs out and fittings in, water up to the middle of the skimmer, pump primed; fence and gate closed from then on.</source>
        <translation>Antes de que funcione la bomba: cubierta fuera y guardada, tapones quitados y accesorios puestos, agua hasta la mitad del skimmer, bomba cebada; valla y puerta cerradas desde entonces.</translation>
    </message>
    <message>
        <source>Nobody in the water while dosing, for %1 after a dose, nor before the time on this sheet.</source>
        <translation>Nadie en el agua mientras se dosifica, ni durante %1 después de una dosis, ni antes de la hora que indica esta hoja.</translation>
    </message>
</context>
<context>
    <name>printer</name>
    <message>
        <source>No printer is set up on this machine. The sheet can be saved as a file.</source>
        <translation>No hay ninguna impresora configurada en este equipo. La hoja puede guardarse como archivo.</translation>
    </message>
    <message>
        <source>Paper is jammed in the printer.</source>
        <translation>Hay papel atascado en la impresora.</translation>
    </message>
    <message>
        <source>The print service does not answer for this sheet.</source>
        <translation>El servicio de impresión no responde por esta hoja.</translation>
    </message>
    <message>
        <source>The print service says nothing of this sheet.</source>
        <translation>El servicio de impresión no dice nada de esta hoja.</translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheet: %2</source>
        <translation>La impresora %1 no aceptó la hoja: %2</translation>
    </message>
    <message>
        <source>The printer %1 takes no jobs at present.</source>
        <translation>La impresora %1 no acepta trabajos por ahora.</translation>
    </message>
    <message>
        <source>The printer does not answer yet: is it switched on?</source>
        <translation>La impresora aún no responde: ¿está encendida?</translation>
    </message>
    <message>
        <source>The printer does not answer: is it switched on?</source>
        <translation>La impresora no responde: ¿está encendida?</translation>
    </message>
    <message>
        <source>The printer gave the sheet up. Print it again?</source>
        <translation>La impresora abandonó la hoja. ¿Imprimirla de nuevo?</translation>
    </message>
    <message>
        <source>The printer has stopped.</source>
        <translation>La impresora se ha detenido.</translation>
    </message>
    <message>
        <source>The printer is out of ink or ribbon.</source>
        <translation>La impresora no tiene tinta o cinta.</translation>
    </message>
    <message>
        <source>The printer is out of paper.</source>
        <translation>La impresora no tiene papel.</translation>
    </message>
    <message>
        <source>The printer is out of toner.</source>
        <translation>La impresora no tiene tóner.</translation>
    </message>
    <message>
        <source>The printer is paused.</source>
        <translation>La impresora está en pausa.</translation>
    </message>
    <message>
        <source>The printer is switched off or unplugged.</source>
        <translation>La impresora está apagada o desenchufada.</translation>
    </message>
    <message>
        <source>The printer is switched off.</source>
        <translation>La impresora está apagada.</translation>
    </message>
    <message>
        <source>The printer wants paper.</source>
        <translation>La impresora pide papel.</translation>
    </message>
    <message>
        <source>The printer&apos;s cover is open.</source>
        <translation>La tapa de la impresora está abierta.</translation>
    </message>
    <message>
        <source>The printer&apos;s door is open.</source>
        <translation>La puerta de la impresora está abierta.</translation>
    </message>
    <message>
        <source>The sheet comes out by itself once that is mended: do not print it again.</source>
        <translation>La hoja saldrá sola cuando se arregle: no la imprima otra vez.</translation>
    </message>
    <message>
        <source>The sheet is printed.</source>
        <translation>La hoja está impresa.</translation>
    </message>
    <message>
        <source>The sheet is printing.</source>
        <translation>La hoja se está imprimiendo.</translation>
    </message>
    <message>
        <source>The sheet waits for the printer.</source>
        <translation>La hoja espera a la impresora.</translation>
    </message>
    <message>
        <source>The sheet was cancelled. Print it again?</source>
        <translation>La hoja se canceló. ¿Imprimirla de nuevo?</translation>
    </message>
    <message>
        <source>There is no printer named %1 on this machine.</source>
        <translation>No hay ninguna impresora llamada %1 en este equipo.</translation>
    </message>
</context>
<context>
    <name>product</name>
    <message>
        <source>Algaecide 60 % (polyquat)</source>
        <translation>Alguicida 60&#xa0;% (polyquat)</translation>
    </message>
    <message>
        <source>Bicarbonate powder (sodium bicarbonate 99 %)</source>
        <translation>Bicarbonato en polvo (bicarbonato de sodio 99&#xa0;%)</translation>
    </message>
    <message>
        <source>Biguanide sanitizer 20 %</source>
        <translation>Desinfectante de biguanida 20&#xa0;%</translation>
    </message>
    <message>
        <source>Borax decahydrate</source>
        <translation>Bórax decahidratado</translation>
    </message>
    <message>
        <source>Boric acid 99.5 %</source>
        <translation>Ácido bórico 99,5&#xa0;%</translation>
    </message>
    <message>
        <source>Bromine tablets (BCDMH 96 %)</source>
        <translation>Tabletas de bromo (BCDMH 96&#xa0;%)</translation>
    </message>
    <message>
        <source>Calcium flake 77 %</source>
        <translation>Cloruro de calcio en escamas 77&#xa0;%</translation>
    </message>
    <message>
        <source>Granular chlorine (calcium hypochlorite 65 %)</source>
        <translation>Cloro granulado (hipoclorito de calcio 65&#xa0;%)</translation>
    </message>
    <message>
        <source>Clarifier</source>
        <translation>Clarificador</translation>
    </message>
    <message>
        <source>Stabilised granules (dichlor 55 %)</source>
        <translation>Gránulos estabilizados (dicloro 55&#xa0;%)</translation>
    </message>
    <message>
        <source>Acid granules (sodium bisulfate 93.2 %)</source>
        <translation>Ácido en gránulos (bisulfato de sodio 93,2&#xa0;%)</translation>
    </message>
    <message>
        <source>Floc (alum)</source>
        <translation>Floculante (alumbre)</translation>
    </message>
    <message>
        <source>Liquid chlorine 10 % trade</source>
        <translation>Cloro líquido 10&#xa0;% comercial</translation>
    </message>
    <message>
        <source>Liquid chlorine 12.5 % trade</source>
        <translation>Cloro líquido 12,5&#xa0;% comercial</translation>
    </message>
    <message>
        <source>Metal binder</source>
        <translation>Secuestrante de metales</translation>
    </message>
    <message>
        <source>Chlorine-free oxidiser (triple salt, 43 % KHSO5)</source>
        <translation>Oxidante sin cloro (sal triple, 43&#xa0;% KHSO5)</translation>
    </message>
    <message>
        <source>Pool acid, half strength 14.5 %</source>
        <translation>Ácido muriático rebajado 14,5&#xa0;%</translation>
    </message>
    <message>
        <source>Pool acid 31.45 %</source>
        <translation>Ácido muriático 31,45&#xa0;%</translation>
    </message>
    <message>
        <source>Peroxide 27 %</source>
        <translation>Peróxido 27&#xa0;%</translation>
    </message>
    <message>
        <source>Phosphate remover (lanthanum chloride 20 %)</source>
        <translation>Removedor de fosfatos (cloruro de lantano 20&#xa0;%)</translation>
    </message>
    <message>
        <source>Pool salt 99.5 %</source>
        <translation>Sal para piscina 99,5&#xa0;%</translation>
    </message>
    <message>
        <source>Sesquicarbonate powder 98 %</source>
        <translation>Sesquicarbonato en polvo 98&#xa0;%</translation>
    </message>
    <message>
        <source>Soda ash powder 99 %</source>
        <translation>Carbonato de sodio en polvo 99&#xa0;%</translation>
    </message>
    <message>
        <source>Bromide salt 98 %</source>
        <translation>Sal de bromuro 98&#xa0;%</translation>
    </message>
    <message>
        <source>Stabilizer granules 99 %</source>
        <translation>Estabilizador en gránulos 99&#xa0;%</translation>
    </message>
    <message>
        <source>Chlorine remover (sodium sulfite 97 %)</source>
        <translation>Declorador (sulfito de sodio 97&#xa0;%)</translation>
    </message>
    <message>
        <source>Chlorine remover (sodium thiosulfate pentahydrate)</source>
        <translation>Declorador (tiosulfato de sodio pentahidratado)</translation>
    </message>
    <message>
        <source>Stabilised tablets (trichlor 90 %)</source>
        <translation>Tabletas estabilizadas (tricloro 90&#xa0;%)</translation>
    </message>
    <message>
        <source>Ascorbic acid 99 %</source>
        <translation>Ácido ascórbico 99&#xa0;%</translation>
    </message>
    <message>
        <source>Bromine grains (BCDMH 96 %)</source>
        <translation>Bromo en granos (BCDMH 96 %)</translation>
    </message>
</context>
<context>
    <name>products</name>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Percent by weight</source>
        <translation>Porcentaje en peso</translation>
    </message>
    <message>
        <source>Trade percent of chlorine</source>
        <translation>Porcentaje comercial de cloro</translation>
    </message>
    <message>
        <source>Percent available chlorine</source>
        <translation>Porcentaje de cloro disponible</translation>
    </message>
    <message>
        <source>A new one</source>
        <translation>Uno nuevo</translation>
    </message>
    <message>
        <source>Which product</source>
        <translation>Qué producto</translation>
    </message>
    <message>
        <source>Name, as on the shelf</source>
        <translation>Nombre, como en el estante</translation>
    </message>
    <message>
        <source>Barcode; it may be scanned</source>
        <translation>Código de barras; se puede escanear</translation>
    </message>
    <message>
        <source>What it holds</source>
        <translation>Qué contiene</translation>
    </message>
    <message>
        <source>Percent on the label</source>
        <translation>Porcentaje en la etiqueta</translation>
    </message>
    <message>
        <source>Density, kg/L; empty: from its strength</source>
        <translation>Densidad, kg/L; vacío: según su concentración</translation>
    </message>
    <message>
        <source>The percent means</source>
        <translation>El porcentaje significa</translation>
    </message>
    <message>
        <source>It is poured, not weighed</source>
        <translation>Se vierte, no se pesa</translation>
    </message>
    <message>
        <source>Price of a litre or kilogram</source>
        <translation>Precio del litro o kilogramo</translation>
    </message>
    <message>
        <source>Packs, L or kg, with ; between</source>
        <translation>Envases, L o kg, separados por ;</translation>
    </message>
    <message>
        <source>Label’s dose, mL or g a m³</source>
        <translation>Dosis de la etiqueta, mL o g por m³</translation>
    </message>
    <message>
        <source>Label’s own cautions, with ; between</source>
        <translation>Advertencias de la etiqueta, separadas por ;</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>%1 is off the shelf: no plan names it.</source>
        <translation>%1 ya no está en el estante: ningún plan lo nombra.</translation>
    </message>
    <message>
        <source>Not kept: the product’s name is missing.</source>
        <translation>No se guardó: falta el nombre del producto.</translation>
    </message>
    <message>
        <source>Not kept: say what it holds.</source>
        <translation>No se guardó: diga qué contiene.</translation>
    </message>
    <message>
        <source>Not kept: percent, density, price and packs are numbers; a price is needed.</source>
        <translation>No se guardó: porcentaje, densidad, precio y envases son números; hace falta un precio.</translation>
    </message>
    <message>
        <source>%1 is kept. The next plan knows it.</source>
        <translation>%1 está guardado. El próximo plan lo conoce.</translation>
    </message>
    <message>
        <source>It is tablets, given whole</source>
        <translation>Son tabletas, se dan enteras</translation>
    </message>
</context>
<context>
    <name>reminder</name>
    <message>
        <source>The next bottle of your water was due on %1: %2.</source>
        <translation>El próximo frasco de su agua tocaba el %1: %2.</translation>
    </message>
    <message>
        <source>The next bottle of your water is due on %1: %2.</source>
        <translation>El próximo frasco de su agua toca el %1: %2.</translation>
    </message>
    <message>
        <source>We will read: %1.</source>
        <translation>Leeremos: %1.</translation>
    </message>
    <message>
        <source>Fill the bottle an elbow deep, away from the returns, cap it under water and bring it the same day, out of the sun.</source>
        <translation>Llene el frasco a la profundidad del codo, lejos de los retornos, tápelo bajo el agua y tráigalo el mismo día, sin que le dé el sol.</translation>
    </message>
    <message>
        <source>Your water is due for a test</source>
        <translation>Toca analizar su agua</translation>
    </message>
    <message>
        <source>Take a bottle of the water to %1</source>
        <translation>Llevar un frasco de agua a %1</translation>
    </message>
    <message>
        <source>Water can look fine and be unsafe: until then test sanitizer, pH and alkalinity at home every week.</source>
        <translation>El agua puede verse bien y no ser segura: hasta entonces analice en casa cada semana el desinfectante, el pH y la alcalinidad.</translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>%1 or more</source>
        <translation>%1 o más</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation>%1, repetición</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>Take-home sheet</source>
        <translation>Hoja de indicaciones</translation>
    </message>
    <message>
        <source>What the water says</source>
        <translation>Lo que dice el agua</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>First of all</source>
        <translation>Primero que nada</translation>
    </message>
    <message>
        <source>What to do, and when</source>
        <translation>Qué hacer y cuándo</translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation>Qué hacer en su lugar</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Precaución:</translation>
    </message>
    <message>
        <source>What to watch</source>
        <translation>A qué estar atento</translation>
    </message>
    <message>
        <source>Come back</source>
        <translation>Vuelva</translation>
    </message>
    <message>
        <source>All readings</source>
        <translation>Todas las lecturas</translation>
    </message>
    <message>
        <source>If something goes wrong</source>
        <translation>Si algo sale mal</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>This bottle</source>
        <translation>Este frasco</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Deseado</translation>
    </message>
    <message>
        <source>After the steps</source>
        <translation>Tras los pasos</translation>
    </message>
    <message>
        <source>Last visit</source>
        <translation>Visita anterior</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>tomado el %1</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>analizado: %1</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primero</translation>
    </message>
    <message>
        <source>then</source>
        <translation>luego</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>Bring this sheet with your next bottle.</source>
        <translation>Traiga esta hoja con su próximo frasco.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet %1 after the last step.</source>
        <translation>Traiga un frasco nuevo y esta hoja %1 después del último paso.</translation>
    </message>
    <message>
        <source>We will read: %1.</source>
        <translation>Leeremos: %1.</translation>
    </message>
    <message>
        <source>No plan for home can be given.</source>
        <translation>No puede darse un plan para casa.</translation>
    </message>
    <message>
        <source>Read at %1 °C.</source>
        <translation>Leído a %1&#xa0;°C.</translation>
    </message>
    <message>
        <source>May we swim?</source>
        <translation>¿Podemos bañarnos?</translation>
    </message>
    <message>
        <source>Not said: this sheet has readings only.</source>
        <translation>No se indica: esta hoja solo tiene lecturas.</translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation>Emergencia</translation>
    </message>
    <message>
        <source>Nobody gets in unless the bottom and its drain can be seen clearly from the edge.</source>
        <translation>Nadie entra si el fondo y su desagüe no se ven con claridad desde el borde.</translation>
    </message>
    <message>
        <source>Keep to the times: going on sooner than shown is how products meet that must not.</source>
        <translation>Respete los tiempos: adelantarse es la forma en que se juntan productos que no deben juntarse.</translation>
    </message>
    <message>
        <source>If the water turns brown, black or like tea after a dose, stop there and call us: that can be metal.</source>
        <translation>Si el agua se pone marrón, negra o como té después de una dosis, deténgase y llámenos: puede ser metal.</translation>
    </message>
    <message>
        <source>A light cloud after a dose clears with the pump running; if it is still there the next day, stop and bring us a bottle.</source>
        <translation>Una ligera turbidez tras una dosis se aclara con la bomba en marcha; si sigue al día siguiente, deténgase y tráiganos un frasco.</translation>
    </message>
    <message>
        <source>Watch the filter&apos;s pressure gauge, and clean the filter when its maker says so.</source>
        <translation>Vigile el manómetro del filtro y límpielo cuando lo indique su fabricante.</translation>
    </message>
    <message>
        <source>While draining, stop at once if the shell or liner moves, lifts or cracks, or if it rains hard.</source>
        <translation>Al vaciar, deténgase de inmediato si el vaso o el vinilo se mueve, se levanta o se agrieta, o si llueve fuerte.</translation>
    </message>
    <message>
        <source>outdoor pool</source>
        <translation>piscina al aire libre</translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation>piscina techada</translation>
    </message>
    <message>
        <source>pool</source>
        <translation>piscina</translation>
    </message>
    <message>
        <source>outdoor spa</source>
        <translation>spa al aire libre</translation>
    </message>
    <message>
        <source>indoor spa</source>
        <translation>spa bajo techo</translation>
    </message>
    <message>
        <source>spa</source>
        <translation>spa</translation>
    </message>
    <message>
        <source>outdoor swim spa</source>
        <translation>spa de nado al aire libre</translation>
    </message>
    <message>
        <source>indoor swim spa</source>
        <translation>spa de nado bajo techo</translation>
    </message>
    <message>
        <source>swim spa</source>
        <translation>spa de nado</translation>
    </message>
    <message>
        <source>outdoor plunge</source>
        <translation>tina fría al aire libre</translation>
    </message>
    <message>
        <source>indoor plunge</source>
        <translation>tina fría bajo techo</translation>
    </message>
    <message>
        <source>plunge</source>
        <translation>tina fría</translation>
    </message>
    <message>
        <source>chlorine</source>
        <translation>cloro</translation>
    </message>
    <message>
        <source>salt chlorine</source>
        <translation>electrólisis de sal</translation>
    </message>
    <message>
        <source>bromine</source>
        <translation>bromo</translation>
    </message>
    <message>
        <source>biguanide</source>
        <translation>biguanida</translation>
    </message>
    <message>
        <source>No – not before %1.</source>
        <translation>No: no antes de %1.</translation>
    </message>
    <message>
        <source>No – not for %1 after you start.</source>
        <translation>No: no hasta %1 después de empezar.</translation>
    </message>
    <message>
        <source>No – not before step %1 is done.</source>
        <translation>No: no antes de terminar el paso %1.</translation>
    </message>
    <message>
        <source>No – not until we have tested the water again.</source>
        <translation>No: no hasta que hayamos analizado el agua otra vez.</translation>
    </message>
    <message>
        <source>That is for the operator of this water to say.</source>
        <translation>Eso le corresponde decirlo al operador de esta agua.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>No.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <translation>Sí.</translation>
    </message>
    <message>
        <source>%1 US gallons</source>
        <translation>%1&#xa0;galones EE. UU.</translation>
    </message>
    <message>
        <source>volume not known</source>
        <translation>volumen desconocido</translation>
    </message>
    <message>
        <source>your local emergency number</source>
        <translation>número de emergencia local</translation>
    </message>
    <message>
        <source>Breathed in: fresh air; trouble breathing: call %1. Symptoms can come hours later.</source>
        <translation>Inhalación: aire libre; si le cuesta respirar: llame al %1. Los síntomas pueden aparecer horas después.</translation>
    </message>
    <message>
        <source>In the eyes or on the skin: brush dry powder off, then rinse with running water for at least 15 minutes; take out contact lenses, take off wet clothing. Call %1.</source>
        <translation>En los ojos o la piel: cepille el polvo seco y luego enjuague con agua corriente al menos 15 minutos; quite las lentes de contacto y la ropa mojada. Llame al %1.</translation>
    </message>
    <message>
        <source>Swallowed: do not make the person vomit. Call %1.</source>
        <translation>Ingestión: NO provoque el vómito. Llame al %1.</translation>
    </message>
    <message>
        <source>Store dry, cool, locked and upright, each product in its own container and apart from the others: acid far from chlorine, liquids never above powders. Never sniff a container.</source>
        <translation>Guarde en lugar seco, fresco, bajo llave y en posición vertical, cada producto en su envase y separado de los demás: el ácido lejos del cloro, los líquidos nunca encima de los polvos. Nunca huela un envase.</translation>
    </message>
    <message>
        <source>%1 each time, %2 times</source>
        <translation>%1 cada vez, %2 veces</translation>
    </message>
    <message>
        <source>No – not until we have tested the water again, %1 or later.</source>
        <translation>No: no hasta que hayamos analizado el agua otra vez, %1 o después.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Bring a fresh bottle once that is settled.</source>
        <translation>Traiga un frasco nuevo cuando eso esté resuelto.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet as soon as you can.</source>
        <translation>Traiga un frasco nuevo y esta hoja lo antes posible.</translation>
    </message>
    <message>
        <source>Come back with the volume, today if you can: the amounts follow from these readings.</source>
        <translation>Vuelva con el volumen, hoy si puede: las cantidades se calculan con estas lecturas.</translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet: %1 or soon after.</source>
        <translation>Traiga un frasco nuevo y esta hoja: %1 o poco después.</translation>
    </message>
    <message>
        <source>Fill water</source>
        <translation>Agua de llenado</translation>
    </message>
    <message>
        <source>Over your visits</source>
        <translation>A lo largo de sus visitas</translation>
    </message>
    <message>
        <source>Poison line</source>
        <translation>Toxicología</translation>
    </message>
    <message>
        <source>for our counter</source>
        <translation>para el mostrador</translation>
    </message>
    <message>
        <source>± is one standard deviation: about two readings in three come that near.</source>
        <translation>± es una desviación estándar: unas dos de cada tres lecturas caen así de cerca.</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Queda pendiente</translation>
    </message>
    <message>
        <source>Free chlorine and pH are shown before the chlorine is used up: both come down after.</source>
        <translation>El cloro libre y el pH se muestran antes de que el cloro se gaste: después bajan los dos.</translation>
    </message>
    <message>
        <source>Did last visit’s plan work?</source>
        <translation>¿Funcionó el plan de la visita anterior?</translation>
    </message>
    <message>
        <source>the same as in step %1.</source>
        <translation>la misma que en el paso %1.</translation>
    </message>
    <message>
        <source>No – not for %1 after you start, after step %2, and not for %3 after any dose.</source>
        <translation>No: no hasta %1 después de empezar, después del paso %2, y no durante %3 tras cualquier dosis.</translation>
    </message>
    <message>
        <source>Yes – but nobody in while anything is being added, nor for %1 after.</source>
        <translation>Sí, pero nadie dentro mientras se añade algo ni durante %1 después.</translation>
    </message>
    <message>
        <source>Sooner: bring a bottle from %1 on, a day after step %2; it tells whether this is mended. Go on with the other steps.</source>
        <translation>Antes: traiga un frasco a partir de %1, un día después del paso %2; dirá si esto está resuelto. Siga con los demás pasos.</translation>
    </message>
    <message>
        <source>A jug of its own for each product, clean and dry: never one for acid and chlorine. None of them for food.</source>
        <translation>Una jarra propia para cada producto, limpia y seca: nunca la misma para ácido y cloro. Ninguna para alimentos.</translation>
    </message>
    <message>
        <source>Fumes, fizzing, or products that have met: leave at once, away from them and upwind, keep others out and call %1 from outside. Do not go back, add no water, move nothing.</source>
        <translation>Vapores, burbujeo o productos que se han mezclado: salga enseguida, apartándose y contra el viento, no deje entrar a nadie y llame al %1 desde fuera. No vuelva, no añada agua, no mueva nada.</translation>
    </message>
    <message>
        <source>No – not before %1, and not for %2 after any dose.</source>
        <translation>No: no antes de %1, ni durante %2 después de cualquier dosis.</translation>
    </message>
    <message>
        <source>at the edge</source>
        <translation>en el límite</translation>
    </message>
    <message>
        <source>low</source>
        <translation>por debajo</translation>
    </message>
    <message>
        <source>high</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>The small line after a sentence: what the test can read, from end to end; brackets, the target; dark mark, this bottle, as wide as its likely error; ring, last visit.</source>
        <translation>La línea pequeña tras una frase: lo que la prueba puede leer, de punta a punta; corchetes, el objetivo; marca oscura, este frasco, tan ancha como su error probable; anillo, la visita anterior.</translation>
    </message>
</context>
<context>
    <name>slip</name>
    <message>
        <source>From the shelf</source>
        <translation>Del estante</translation>
    </message>
    <message>
        <source>Handed over by</source>
        <translation>Entregado por</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Comprobación</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Staff copy</source>
        <translation>Copia del personal</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Valores deseados</translation>
    </message>
    <message>
        <source>This plan needs nothing from the shelf.</source>
        <translation>Este plan no necesita nada del estante.</translation>
    </message>
    <message>
        <source>diluted %1 times</source>
        <translation>diluido %1 veces</translation>
    </message>
    <message>
        <source>Changed by hand</source>
        <translation>Cambiado a mano</translation>
    </message>
    <message>
        <source>1 pack of %1</source>
        <translation>1 envase de %1</translation>
    </message>
    <message>
        <source>%1 packs of %2</source>
        <translation>%1 envases de %2</translation>
    </message>
    <message>
        <source>Of %2 waters that these readings may mean, %1 % end inside every target; in %3 % a step could do harm.</source>
        <translation>De %2 aguas que estas lecturas pueden significar, el %1 % acaba dentro de todos los objetivos; en el %3 % un paso podría hacer daño.</translation>
    </message>
    <message>
        <source>the program&apos;s own list</source>
        <translation>la lista propia del programa</translation>
    </message>
    <message>
        <source>What the plan needs in all.</source>
        <translation>Lo que el plan necesita en total.</translation>
    </message>
    <message>
        <source>Take packs that hold at least as much.</source>
        <translation>Tome envases que contengan al menos eso.</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>The program ended without warning last time. What was confirmed is here; a change that was still being written was left out.</source>
        <translation>El programa terminó sin aviso la última vez. Lo confirmado está aquí; un cambio que aún se estaba escribiendo quedó fuera.</translation>
    </message>
</context>
<context>
    <name>subject</name>
    <message>
        <source>Biguanide</source>
        <translation>La biguanida</translation>
    </message>
    <message>
        <source>Borate</source>
        <translation>El borato</translation>
    </message>
    <message>
        <source>Bromide</source>
        <translation>El bromuro</translation>
    </message>
    <message>
        <source>Calcium hardness</source>
        <translation>La dureza de calcio</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>La conductividad</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>El cobre</translation>
    </message>
    <message>
        <source>Stabilizer</source>
        <translation>El estabilizador</translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation>El cloro libre</translation>
    </message>
    <message>
        <source>Iron</source>
        <translation>El hierro</translation>
    </message>
    <message>
        <source>Magnesium hardness</source>
        <translation>La dureza de magnesio</translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation>El manganeso</translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation>El nitrato</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peróxido de hidrógeno</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>El pH</translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation>El fosfato</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>La sal</translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation>El sulfato</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Los sólidos disueltos</translation>
    </message>
    <message>
        <source>Total alkalinity</source>
        <translation>La alcalinidad total</translation>
    </message>
    <message>
        <source>Total bromine</source>
        <translation>El bromo total</translation>
    </message>
    <message>
        <source>Total chlorine</source>
        <translation>El cloro total</translation>
    </message>
    <message>
        <source>Total hardness</source>
        <translation>La dureza total</translation>
    </message>
    <message>
        <source>Turbidity</source>
        <translation>La turbidez</translation>
    </message>
</context>
<context>
    <name>substance</name>
    <message>
        <source>Floc (alum)</source>
        <translation>Floculante (alumbre)</translation>
    </message>
    <message>
        <source>Ascorbic acid</source>
        <translation>Ácido ascórbico</translation>
    </message>
    <message>
        <source>BCDMH</source>
        <translation>BCDMH</translation>
    </message>
    <message>
        <source>Borax</source>
        <translation>Bórax</translation>
    </message>
    <message>
        <source>Boric acid</source>
        <translation>Ácido bórico</translation>
    </message>
    <message>
        <source>Calcium chloride</source>
        <translation>Cloruro de calcio</translation>
    </message>
    <message>
        <source>Calcium hypochlorite</source>
        <translation>Hipoclorito de calcio</translation>
    </message>
    <message>
        <source>Clarifier</source>
        <translation>Clarificador</translation>
    </message>
    <message>
        <source>Copper algaecide (copper sulfate)</source>
        <translation>Alguicida de cobre (sulfato de cobre)</translation>
    </message>
    <message>
        <source>Stabilizer (cyanuric acid)</source>
        <translation>Estabilizador (ácido cianúrico)</translation>
    </message>
    <message>
        <source>Stabilised granular chlorine (dichlor)</source>
        <translation>Cloro granulado estabilizado (dicloro)</translation>
    </message>
    <message>
        <source>Hydrochloric acid</source>
        <translation>Ácido clorhídrico</translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation>Peróxido de hidrógeno</translation>
    </message>
    <message>
        <source>Phosphate remover (lanthanum chloride)</source>
        <translation>Eliminador de fosfatos (cloruro de lantano)</translation>
    </message>
    <message>
        <source>Biguanide sanitizer (PHMB)</source>
        <translation>Desinfectante de biguanida (PHMB)</translation>
    </message>
    <message>
        <source>Algaecide without copper (polyquat)</source>
        <translation>Alguicida sin cobre (polyquat)</translation>
    </message>
    <message>
        <source>Chlorine-free oxidiser (potassium monopersulfate)</source>
        <translation>Oxidante sin cloro (monopersulfato de potasio)</translation>
    </message>
    <message>
        <source>Metal sequestrant</source>
        <translation>Secuestrante de metales</translation>
    </message>
    <message>
        <source>Sodium bicarbonate</source>
        <translation>Bicarbonato de sodio</translation>
    </message>
    <message>
        <source>Dry acid (sodium bisulfate)</source>
        <translation>Ácido seco (bisulfato de sodio)</translation>
    </message>
    <message>
        <source>Sodium bromide</source>
        <translation>Bromuro de sodio</translation>
    </message>
    <message>
        <source>Soda ash (sodium carbonate)</source>
        <translation>Carbonato de sodio</translation>
    </message>
    <message>
        <source>Salt (sodium chloride)</source>
        <translation>Sal (cloruro de sodio)</translation>
    </message>
    <message>
        <source>Liquid chlorine (sodium hypochlorite)</source>
        <translation>Cloro líquido (hipoclorito de sodio)</translation>
    </message>
    <message>
        <source>Sodium sesquicarbonate</source>
        <translation>Sesquicarbonato de sodio</translation>
    </message>
    <message>
        <source>Sodium sulfite</source>
        <translation>Sulfito de sodio</translation>
    </message>
    <message>
        <source>Sodium thiosulfate</source>
        <translation>Tiosulfato de sodio</translation>
    </message>
    <message>
        <source>Stabilised chlorine tablets (trichlor)</source>
        <translation>Tabletas de cloro estabilizado (tricloro)</translation>
    </message>
</context>
<context>
    <name>supplies</name>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>The whole instrument</source>
        <translation>Todo el instrumento</translation>
    </message>
    <message>
        <source>expired: throw it away</source>
        <translation>caducado: tírelo</translation>
    </message>
    <message>
        <source>opened last season: replace it</source>
        <translation>abierto la temporada pasada: cámbielo</translation>
    </message>
    <message>
        <source>stood beside chlorine: replace it</source>
        <translation>estuvo junto a cloro: cámbielo</translation>
    </message>
    <message>
        <source>kept warm: replace it</source>
        <translation>se guardó caliente: cámbielo</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>Keep this lot</source>
        <translation>Guardar este lote</translation>
    </message>
    <message>
        <source>Keep this check</source>
        <translation>Guardar este control</translation>
    </message>
    <message>
        <source>Number of the lot</source>
        <translation>Número del lote</translation>
    </message>
    <message>
        <source>It reads</source>
        <translation>Lee</translation>
    </message>
    <message>
        <source>Good until: year-month-day</source>
        <translation>Vale hasta: año-mes-día</translation>
    </message>
    <message>
        <source>Opened: year-month-day; empty while closed</source>
        <translation>Abierto: año-mes-día; vacío si está cerrado</translation>
    </message>
    <message>
        <source>Warmest it was kept at, °C</source>
        <translation>Máxima a la que se guardó, °C</translation>
    </message>
    <message>
        <source>It stood beside chlorine</source>
        <translation>Estuvo junto a cloro</translation>
    </message>
    <message>
        <source>Used up or thrown away</source>
        <translation>Gastado o tirado</translation>
    </message>
    <message>
        <source>Instrument, as its readings name it</source>
        <translation>Instrumento, como lo nombran sus lecturas</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Comprobado</translation>
    </message>
    <message>
        <source>It read its standards right</source>
        <translation>Leyó bien sus patrones</translation>
    </message>
    <message>
        <source>Not kept: the lot&apos;s number is missing.</source>
        <translation>No se guardó: falta el número del lote.</translation>
    </message>
    <message>
        <source>Not kept: say which reading it is for.</source>
        <translation>No se guardó: diga para qué lectura es.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a day; expected 2027-03-31.</source>
        <translation>No se guardó: «%1» no es un día; se esperaba 2027-03-31.</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a temperature.</source>
        <translation>No se guardó: «%1» no es una temperatura.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>Lot %1 is kept. Store it cool, dry and away from chlorine.</source>
        <translation>El lote %1 está guardado. Consérvelo fresco, seco y lejos del cloro.</translation>
    </message>
    <message>
        <source>Not kept: name the instrument, as its readings do.</source>
        <translation>No se guardó: nombre el instrumento como lo hacen sus lecturas.</translation>
    </message>
    <message>
        <source>The check of %1 is kept.</source>
        <translation>El control de %1 está guardado.</translation>
    </message>
    <message>
        <source>The failed check of %1 is kept: what it reads counts for nothing until a later check is right.</source>
        <translation>El control fallido de %1 está guardado: lo que lea no vale hasta que un control posterior salga bien.</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>abierto %1</translation>
    </message>
    <message>
        <source>good until %1</source>
        <translation>vale hasta %1</translation>
    </message>
    <message>
        <source>failed: not believed</source>
        <translation>falló: no se cree</translation>
    </message>
    <message>
        <source>a check is due</source>
        <translation>toca un control</translation>
    </message>
    <message>
        <source>right</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>Tests in its pack; empty where not known</source>
        <translation>Pruebas en el envase; vacío si no se sabe</translation>
    </message>
    <message>
        <source>Not kept: “%1” is not a number of tests.</source>
        <translation>No se guardó: “%1” no es un número de pruebas.</translation>
    </message>
</context>
<context>
    <name>targets</name>
    <message>
        <source>Combined chlorine</source>
        <translation>Cloro combinado</translation>
    </message>
    <message>
        <source>Saturation index</source>
        <translation>Índice de saturación</translation>
    </message>
    <message>
        <source>Water temperature</source>
        <translation>Temperatura del agua</translation>
    </message>
    <message>
        <source>with stabilizer</source>
        <translation>con estabilizador</translation>
    </message>
    <message>
        <source>without stabilizer</source>
        <translation>sin estabilizador</translation>
    </message>
    <message>
        <source>above pH %1</source>
        <translation>por encima de pH %1</translation>
    </message>
    <message>
        <source>above %1 °C</source>
        <translation>por encima de %1 °C</translation>
    </message>
    <message>
        <source>all water</source>
        <translation>toda agua</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>de %1 a %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>al menos %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>como mucho %1 %2</translation>
    </message>
    <message>
        <source>The shop’s own</source>
        <translation>De la tienda</translation>
    </message>
    <message>
        <source>As built in</source>
        <translation>Como viene de fábrica</translation>
    </message>
    <message>
        <source>Which target</source>
        <translation>Qué objetivo</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Where a dose aims; empty: the middle</source>
        <translation>Adónde apunta una dosis; vacío: la mitad</translation>
    </message>
    <message>
        <source>Who says so</source>
        <translation>Quién lo dice</translation>
    </message>
    <message>
        <source>Whose it is</source>
        <translation>De quién es</translation>
    </message>
    <message>
        <source>the shop’s own: %1</source>
        <translation>de la tienda: %1</translation>
    </message>
    <message>
        <source>Not kept: choose which target.</source>
        <translation>No guardado: elija qué objetivo.</translation>
    </message>
    <message>
        <source>Not kept: a target is a number or empty.</source>
        <translation>No guardado: un objetivo es un número o queda vacío.</translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation>No guardado: %1</translation>
    </message>
    <message>
        <source>Kept. The next plan goes by it.</source>
        <translation>Guardado. El próximo plan se rige por ello.</translation>
    </message>
    <message>
        <source>For which water</source>
        <translation>Para qué agua</translation>
    </message>
</context>
<context>
    <name>trail</name>
    <message>
        <source>%1, before: %2</source>
        <translation>%1, antes: %2</translation>
    </message>
    <message>
        <source>taken out; before: %1</source>
        <translation>quitado; antes: %1</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Más antiguos</translation>
    </message>
    <message>
        <source>The newest</source>
        <translation>Los más nuevos</translation>
    </message>
</context>
<context>
    <name>twins</name>
    <message>
        <source>same phone</source>
        <translation>mismo teléfono</translation>
    </message>
    <message>
        <source>same email</source>
        <translation>mismo correo electrónico</translation>
    </message>
    <message>
        <source>same name and street</source>
        <translation>mismo nombre y calle</translation>
    </message>
    <message>
        <source>same street, a name in common</source>
        <translation>misma calle, un nombre en común</translation>
    </message>
    <message>
        <source>same name</source>
        <translation>mismo nombre</translation>
    </message>
</context>
<context>
    <name>unit</name>
    <message>
        <source>mg/L as 20 % product</source>
        <translation>mg/L como producto al 20 %</translation>
    </message>
    <message>
        <source>µS/cm at 25 °C</source>
        <translation>µS/cm a 25 °C</translation>
    </message>
</context>
<context>
    <name>volume</name>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Width of the narrow end</source>
        <translation>Ancho del extremo estrecho</translation>
    </message>
    <message>
        <source>Area of the water</source>
        <translation>Área del agua</translation>
    </message>
    <message>
        <source>Depth of the water</source>
        <translation>Profundidad del agua</translation>
    </message>
    <message>
        <source>Deepest</source>
        <translation>Lo más hondo</translation>
    </message>
    <message>
        <source>Length of the deep part, to the middle of the slope</source>
        <translation>Largo de la parte honda, hasta la mitad de la pendiente</translation>
    </message>
    <message>
        <source>Meter before</source>
        <translation>Contador antes</translation>
    </message>
    <message>
        <source>Meter after</source>
        <translation>Contador después</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>De lado a lado</translation>
    </message>
    <message>
        <source>Width of the wide end</source>
        <translation>Ancho del extremo ancho</translation>
    </message>
    <message>
        <source>Shallowest</source>
        <translation>Lo menos hondo</translation>
    </message>
    <message>
        <source>US gallons</source>
        <translation>galones de EE. UU.</translation>
    </message>
    <message>
        <source>cubic feet</source>
        <translation>pies cúbicos</translation>
    </message>
    <message>
        <source>square feet</source>
        <translation>pies cuadrados</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>%1 ft %2 in</source>
        <translation>%1 ft %2 in</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>ft²</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>“%1” cannot be read: write 16.5, or 16 6 for 16 feet 6 inches.</source>
        <translation>«%1» no se entiende: escriba 16,5, o 16 6 para 16 pies y 6 pulgadas.</translation>
    </message>
    <message>
        <source>“%1” cannot be read: write a number.</source>
        <translation>«%1» no se entiende: escriba un número.</translation>
    </message>
    <message>
        <source>This is wanted too.</source>
        <translation>Esto también hace falta.</translation>
    </message>
    <message>
        <source>A meter never stands below zero.</source>
        <translation>Un contador nunca marca menos de cero.</translation>
    </message>
    <message>
        <source>A number above zero is wanted.</source>
        <translation>Hace falta un número mayor que cero.</translation>
    </message>
    <message>
        <source>Hardly anything went through: look at the digits and the unit again.</source>
        <translation>No pasó casi nada: mire otra vez las cifras y la unidad.</translation>
    </message>
    <message>
        <source>Too small for a vessel: look at the unit again.</source>
        <translation>Demasiado poco para un vaso: mire otra vez la unidad.</translation>
    </message>
    <message>
        <source>Too large for a vessel: look at the digits and the unit again.</source>
        <translation>Demasiado para un vaso: mire otra vez las cifras y la unidad.</translation>
    </message>
    <message>
        <source>This has to be deeper than the shallowest.</source>
        <translation>Ha de ser más hondo que lo menos hondo.</translation>
    </message>
    <message>
        <source>A part has to be shorter than the whole length.</source>
        <translation>Una parte ha de ser más corta que el largo entero.</translation>
    </message>
    <message>
        <source>This cannot be more than the length: the round ends close it.</source>
        <translation>No puede ser más que el largo: los extremos redondos lo cierran.</translation>
    </message>
    <message>
        <source>Lower than before. If the meter went past its last digit, write a 1 before all of its digits.</source>
        <translation>Menos que antes. Si el contador dio la vuelta, escriba un 1 delante de todas sus cifras.</translation>
    </message>
    <message>
        <source>The same as before: nothing went through.</source>
        <translation>Igual que antes: no pasó nada.</translation>
    </message>
    <message>
        <source>Right only where the vessel was empty and nothing else ran through the meter. A meter may be 2 % off; the level it was filled to counts for 3 %.</source>
        <translation>Cierto solo si el vaso estaba vacío y nada más pasó por el contador. Un contador puede fallar un 2 %; el nivel al que se llenó cuenta un 3 %.</translation>
    </message>
    <message>
        <source>A kidney’s area by rule of thumb, 0.45 × both widths × length: common practice, no source; taken as right within 8 %.</source>
        <translation>El área de un riñón por regla práctica, 0,45 × los dos anchos × largo: uso común, sin fuente; se toma como cierta al 8 %.</translation>
    </message>
    <message>
        <source>The area as it was told, times the depth.</source>
        <translation>El área como se dijo, por la profundidad.</translation>
    </message>
    <message>
        <source>The area is exact geometry, where the shape is true.</source>
        <translation>El área es geometría exacta, si la forma es la de verdad.</translation>
    </message>
    <message>
        <source>The mean depth is exact where the bottom falls evenly.</source>
        <translation>La profundidad media es exacta si el fondo baja por igual.</translation>
    </message>
    <message>
        <source>Hardly any vessel of this kind holds that: measure again.</source>
        <translation>Casi ningún vaso de este tipo tiene eso: mida otra vez.</translation>
    </message>
    <message>
        <source>That deep is rare at a home: look at the unit again.</source>
        <translation>Tanta profundidad es rara en una casa: mire otra vez la unidad.</translation>
    </message>
    <message>
        <source>Seats take room that the outline does not show: the maker’s figure is nearer, where there is one.</source>
        <translation>Los asientos ocupan un sitio que el contorno no muestra: el dato del fabricante se acerca más, si lo hay.</translation>
    </message>
    <message>
        <source>On file: %1. Both cannot be right within their errors: ask before it is taken.</source>
        <translation>En la ficha: %1. No pueden ser ciertos los dos dentro de sus errores: pregunte antes de tomarlo.</translation>
    </message>
</context>
<context>
    <name>week</name>
    <message>
        <source>The week at the counter</source>
        <translation>La semana en el mostrador</translation>
    </message>
    <message>
        <source>Too little chlorine for its stabilizer</source>
        <translation>Poco cloro para su estabilizador</translation>
    </message>
    <message>
        <source>Water too hot</source>
        <translation>Agua demasiado caliente</translation>
    </message>
    <message>
        <source>Chlorine used up overnight</source>
        <translation>Cloro consumido durante la noche</translation>
    </message>
    <message>
        <source>A reading at the end of its range</source>
        <translation>Una lectura en el extremo de su intervalo</translation>
    </message>
    <message>
        <source>A reading not believed</source>
        <translation>Una lectura que no se cree</translation>
    </message>
    <message>
        <source>A reading to be taken again</source>
        <translation>Una lectura por repetir</translation>
    </message>
    <message>
        <source>worked</source>
        <translation>funcionó</translation>
    </message>
    <message>
        <source>worked in part</source>
        <translation>funcionó en parte</translation>
    </message>
    <message>
        <source>did not work</source>
        <translation>no funcionó</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <translation>no se puede saber</translation>
    </message>
    <message>
        <source>Saturation index</source>
        <translation>Índice de saturación</translation>
    </message>
    <message>
        <source>runs out: order it</source>
        <translation>se acaba: pida otro</translation>
    </message>
    <message>
        <source>not good for much longer: order it</source>
        <translation>caduca pronto: pida otro</translation>
    </message>
    <message>
        <source>expired: throw it away and order it</source>
        <translation>caducado: deséchelo y pida otro</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Frascos</translation>
    </message>
    <message>
        <source>Bottles tested</source>
        <translation>Frascos analizados</translation>
    </message>
    <message>
        <source>Here for the first time</source>
        <translation>Por primera vez aquí</translation>
    </message>
    <message>
        <source>Back again</source>
        <translation>De vuelta</translation>
    </message>
    <message>
        <source>Plans told</source>
        <translation>Planes dados</translation>
    </message>
    <message>
        <source>Of them without a plan for home</source>
        <translation>De ellos, sin plan para casa</translation>
    </message>
    <message>
        <source>Plans of the visit before</source>
        <translation>Planes de la visita anterior</translation>
    </message>
    <message>
        <source>Reagents</source>
        <translation>Reactivos</translation>
    </message>
    <message>
        <source>used %1, left %2</source>
        <translation>usadas %1, quedan %2</translation>
    </message>
    <message>
        <source>used %1</source>
        <translation>usadas %1</translation>
    </message>
    <message>
        <source>Instrument checks that are due</source>
        <translation>Controles de instrumentos pendientes</translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation>el último falló</translation>
    </message>
    <message>
        <source>days since: %1</source>
        <translation>días desde entonces: %1</translation>
    </message>
    <message>
        <source>%1 too low</source>
        <translation>%1 demasiado bajo</translation>
    </message>
    <message>
        <source>%1 too high</source>
        <translation>%1 demasiado alto</translation>
    </message>
    <message>
        <source>%1 at the edge of its range</source>
        <translation>%1 al borde de su intervalo</translation>
    </message>
    <message>
        <source>Too much combined chlorine</source>
        <translation>Demasiado cloro combinado</translation>
    </message>
    <message>
        <source>What was found, in bottles</source>
        <translation>Lo que se halló, en frascos</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
</TS>
