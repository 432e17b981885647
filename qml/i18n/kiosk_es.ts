<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Arrivals</name>
    <message>
        <source>No bottle is waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bottle is waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bottles are waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan or type a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When one is handed over, touch “New bottle”, or scan the label on it. Overnight tests that fall due will stand here too.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BackRoom</name>
    <message>
        <source>Back room</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Bottle</name>
    <message>
        <source>To the bench</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleLine</name>
    <message>
        <source>Label: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bottle on the counter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CustomerForm</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Street</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CustomerPart</name>
    <message>
        <source>Whose bottle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Someone else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, street or phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New customer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Emergency</name>
    <message>
        <source>Emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The product’s label and its safety data sheet go before anything written here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>Take-home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the thin rule: the bracket is the target, the filled mark this bottle and its uncertainty, the ring the last visit.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>rub out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PadPanel</name>
    <message>
        <source>type the number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceRail</name>
    <message>
        <source>Emergency</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No instrument is set; type the readings. (Back room, Instrument)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2: its readings come in by themselves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SamplePart</name>
    <message>
        <source>The bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they have seen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetPanel</name>
    <message>
        <source>The sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make PDF</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ThenNow</name>
    <message>
        <source>Beside the visit of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TroubleBanner</name>
    <message>
        <source>The instrument</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselPart</name>
    <message>
        <source>The vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the vessel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>analyte</name>
    <message>
        <source>Biguanide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium hardness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Iron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Magnesium hardness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Manganese</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hydrogen peroxide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phosphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sulfate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total alkalinity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total bromine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total hardness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turbidity</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>back</name>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photometer’s line: where it is plugged in, and which profile speaks its language.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What every sheet is signed with. The numbers stand on the Emergency page and on paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where visits are kept. A reading is shown as kept only once it is safe on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the shop sells. A plan names only what stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Methods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How each reading may be taken: the range, and the spread of one reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Street</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency number here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poison line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer’s queue; empty for the usual one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>method %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::BackDesk</name>
    <message>
        <source>Listen here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Database</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The settings’ file cannot be written: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::BenchDesk</name>
    <message>
        <source>%1 of %2 kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bottle is on the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All %1 readings are kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 readings kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still due: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be %2. Please read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came in, but no bottle is on the counter. It was not kept; read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came in for bottle %2, which is not waiting here. It was not kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came in for bottle %2 and was kept there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not kept: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::Counter</name>
    <message>
        <source>This visit is not in the records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no bottle on the counter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::Desk</name>
    <message>
        <source>Not said whose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 reading kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 readings kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrivals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whose?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take-home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no home plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back room</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::PlanDesk</name>
    <message>
        <source>They get home %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This water is in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this water says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet was made, for the visit could not be kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is kept; making the sheet …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visit is kept, but the sheet is not on paper: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::ThenDesk</name>
    <message>
        <source>Then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bottle is on the counter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vessel’s first bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then and now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brimline::Ticket</name>
    <message>
        <source>Taken %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it was taken is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last here %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>choices</name>
    <message>
        <source>Pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swim spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One household</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guests, tenants, members, pupils</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine from salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Biguanide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plaster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vinyl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibreglass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Painted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acrylic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metered, or the maker’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured with a tape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Just now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An hour ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As every month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After a storm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cloudy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sore eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong smell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green hair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slimy walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tablets in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Main drain cannot be seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chemicals mixed or fuming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faeces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vomit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dead animal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sewage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swimmers ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gallons, °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cubic metres, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comparator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>probe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>view tube</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undiluted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 + 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 + 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 + 9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>17:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>20:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tomorrow 08:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comfort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is a</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sanitized with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the volume is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it came</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs, as many as there are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something happened in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They get home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>clock</name>
    <message>
        <source>today %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tonight %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>compare</name>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is more than expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went from %2 to %3; about %4 was expected. That is less than expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, and what was told does not say why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went from %2 to %3, as the doses told lead to expect (%4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went from %2 to %3: no change beyond error.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The doses told explain what they should: they worked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What only new water brings down fell together: about %1 % of the water was replaced (backwash, splash, a leak, rain or a drain).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dose that was told moved the water less than it should: perhaps part of it was not put in, or the volume on file is too small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dose that was told moved the water more than it should: perhaps more was put in, or the volume on file is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water answers the doses like %1 m3, which the volume on file does not fit: measure the vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity fell and calcium did not: acid, dry acid or trichlor tablets do that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer rose: trichlor tablets or dichlor bring it with every dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium rose and alkalinity did not: calcium hypochlorite brings 7 mg/L of calcium hardness with every 10 mg/L of chlorine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salts rose with nothing told: water evaporates and its salts stay, and the fill brings more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine did not hold: sun, bathers, too little stabilizer, or a demand in the water. A chlorine-demand test tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer fell alone. Water was not replaced; bacteria can turn stabilizer to ammonia. Meet the chlorine demand before stabilizer is added again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH rose without alkalinity: carbon dioxide leaves the water, faster with jets, a salt cell or a waterfall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity rose with nothing told: bicarbonate, soda ash, fill water or dissolving plaster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt rose with nothing told: ask whether salt was added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A metal rose: fill water, a corroding heater at low pH, or a copper product.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>emergency</name>
    <message>
        <source>Fumes breathed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splash in the eyes or on the skin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swallowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chemicals mixed, wet or fuming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Get them into fresh air, and keep others out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trouble breathing: call the emergency number at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It can get worse hours later: call the poison line even if they feel well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse with running water at once, for at least 15 minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out contact lenses; take off what the chemical has touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry powder: brush it off the skin before you rinse. Then call the poison line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not make them vomit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call the poison line with the label in your hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unconscious, or trouble breathing: call the emergency number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave at once, upwind. Keep everyone out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call the emergency number from outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not go back to air the room. Add no water. Move nothing. Sniff at nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number is set: Back room, The shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your local emergency number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>facts</name>
    <message>
        <source>This word is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” cannot be right here; please type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This fact is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume, US gallons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume, m³</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its water, °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its water, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottle when read, °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottle when read, °C</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>panel</name>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept; read it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept; dilute and read again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept; says nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not due</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>Afterwards, we expect: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this bottle %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last visit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free chlorine is %1; it should be at least %2. Germs and algae can grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free chlorine is %1; swim only below %2. Add none and let it fall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total chlorine is %1 where %2 is the most for this free chlorine: spent chlorine that stings and smells is building up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer is %1; this much free chlorine works up to %2 only. The chlorine is held back too strongly to protect anybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at least %2. Germs can grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromine is %1; it should be at most %2. Add none and let it fall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at least %2. Germs can grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The biguanide sanitizer is %1; it should be at most %2. Add none; foam may come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at least %2 to keep the water clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peroxide is %1; it should be at most %2. Add none and let it fall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH is %1; it should be at least %2. Acid water attacks metal, plaster and eyes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH is %1; it should be at most %2. Chlorine works slowly and scale can form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at least %2. pH will not stay put.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total alkalinity is %1; it should be at most %2. It keeps pushing pH up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at least %2. Hungry water takes calcium from the surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium hardness is %1; it should be at most %2. Scale can form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at least %2. Sunlight takes the chlorine within hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer is %1; it should be at most %2. It holds the chlorine back; only new water brings it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at least %2, or as its manual says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Salt is %1; the generator wants at most %2, or as its manual says. Only new water brings it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dissolved solids are %1; %2 is the most. The water is worn out; new water helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sulfate is %1; above %2 it attacks cement. Only new water brings it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Iron is %1; from %2 on it can stain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copper is %1; from %2 on it can stain the surface and light hair.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Manganese is %1; from %2 on it can stain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phosphate is %1; above %2 it feeds algae when chlorine runs low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nitrate is %1; above %2 it feeds algae. Only new water brings it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borate is %1; it should be at most %2. Add none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turbidity is %1; clear water is below %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, below %2: the water dissolves calcium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The saturation index in the vessel is %1, above %2: the water lays down scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water is at %1 degrees Celsius; %2 is the most that is safe to sit in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The overnight test shows that this water uses up %1 of chlorine before any is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demand test has not found how much chlorine this water uses up; no bottle held its chlorine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming: this is an emergency.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The main drain cannot be seen: nobody could see a swimmer in trouble.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water is green: algae are growing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The walls are slimy: algae or a film of bacteria is growing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eyes smart after swimming.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water smells strongly: that is spent chlorine, not too much of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water is cloudy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water foams.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are stains: metals or leaves; what is in the stain no longer shows in the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is scale on the surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light hair turns green: that is copper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine tablets are in use: each adds acid and, for good, stabilizer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something happened in this water that a home plan must not treat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This water is open to others than the household.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has said what keeps this water clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vessel has changed between biguanide and another sanitizer; they must not meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sanitizer was not read, so nobody knows whether the water is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%3 was at the end of the method&apos;s range (%1): dilute the sample and read it again. Nothing is dosed on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%3 (%1) cannot be believed: nothing is dosed on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%3 (%1) must be read again before anything is dosed on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings contradict each other: no water can have all of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The volume is not known, so no amount can be worked out. Measure length, width and average depth, or read the water meter while filling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise pH: add %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise pH and alkalinity together: add %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower pH: pour %1 of %2 slowly into the deep end, pump running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise alkalinity: spread %1 of %2 over the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add %1 of %2 first, so that the acid after it does not take alkalinity too low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower alkalinity: pour %1 of %2 slowly into the deep end, pump running. pH drops too and comes back with air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise calcium: add %1 of %2, dissolved as its label allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise salt: spread %1 of %2 over the floor and brush until it is gone. Generator off until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise chlorine: add %1 of %2, pump running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burn off the spent chlorine: add %1 of %2 all at once. Half of it would make matters worse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kill the algae: add %1 of %2 all at once and leave it overnight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meet what the water uses up: add %1 of %2 all at once and leave it overnight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise stabilizer: hang %1 of %2 in a sock before a return. Its reading rises within a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay down bromide: add %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise bromine: give %1 of %2 by its feeder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the sanitizer: add %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise peroxide: add %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bind the metals before anything else: add %1 of %2, or as its label says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help the filter: add %1 of %2, or as its label says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove phosphate: add %1 of %2. The water looks worse first; clean the filter after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let out %5 of the water and fill up again. Pump, heater and generator off until it is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let pH rise by air: returns up, fountain or jets on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brush walls, steps and corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out leaves and vacuum the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the filter day and night until the water is clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean or backwash the filter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the pump for one whole turnover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take tablets out of skimmer and feeder before any other chlorine goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the chlorine generator off until free chlorine is back in range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the chlorine generator up one step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater off; let the water cool to 40 degrees Celsius or less before anybody gets in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a bottle of the refilled water, and one of the tap water: the rest of the doses hang on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a bottle of the refilled water: the doses hang on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring another bottle; the rest of the dose is worked out from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free chlorine must be read again, the sample diluted 1 + 4: strong chlorine can bleach the test and look like none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a litre of the water for an overnight chlorine-demand test: what it needs is more than is safe to add by guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a litre of the water for another demand test, with stronger bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This water uses up too much chlorine to treat: bring another bottle once part of it has been changed, or ask a licensed operator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave at once, upwind, keep others out and call the emergency number from outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department which procedure applies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep everybody out and ask the health department.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep everybody out; have a licensed operator clear the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand these readings to the qualified operator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find out what keeps this water clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the changeover done by somebody licensed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dilute the sample where the method allows it, or use one of wider range, and read again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a fresh bottle and read pH, alkalinity and stabilizer again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acid burns: goggles and gloves on, downwind of nobody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Always chemical into water, never water into chemical.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Irritates the eyes: goggles on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It gets hot when it dissolves: clean bucket, cool water first, small amounts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never in the same sock, skimmer, bucket or hour as strong chlorine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong oxidiser: dry hands, dry scoop of its own, away from fuel and anything that burns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With acid it gives off chlorine gas: never the same bucket, spot or hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never wet the container or add a little water to the granules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never let two kinds of chlorine meet, not even in a scoop: they can explode.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generator off until the salt is dissolved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The product&apos;s label decides the dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An empty shell can float up in wet ground, and a liner can shrink: no draining after heavy rain; ask a professional where the ground water is high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let chlorine fall before draining, and ask the town where the water may go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power off before draining.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoors: cover off, doors and windows open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The product&apos;s label and your local code come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never mix chemicals. One at a time, pump running, into the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody in the water while dosing, nor before the time on this sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test again before the next treatment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trouble breathing, or chemical in eyes: fresh air, rinse for 15 minutes, call %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is advice for a home; where in doubt ask a licensed operator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chemicals have been mixed or are fuming. Leave at once, upwind; keep others out; call the emergency number from outside. Do not go back to air the room, add no water, move nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After faeces, vomit, blood or a dead animal the health department&apos;s procedure applies, not a home plan. Keep everybody out until it is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flood, sewage or illness can bring what no home treatment removes. Keep everybody out and ask the health department.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The main drain cannot be seen, so nobody may swim and nobody could be found in the water. Close it off and have a licensed operator clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This water is open to others than the household. Local code and its qualified operator decide; here are the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What keeps this water clean is not known, and the wrong chemical can be dangerous. Ask which sanitizer is used, then come back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Biguanide and other sanitizers must not meet. Have the changeover done by somebody licensed before anything is added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH, alkalinity or the sanitizer was beyond what the method can read or cannot be believed. Read it again, diluted or by a wider method; nothing is added until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings contradict each other. Take a fresh bottle and read them again; nothing is added until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gal and %2 fl oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lb %2 oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do this %1 times, %2 hours apart.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>product</name>
    <message>
        <source>Algaecide 60 % (polyquat)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bicarbonate powder (sodium bicarbonate 99 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Biguanide sanitizer 20 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borax decahydrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boric acid 99.5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromine tablets (BCDMH 96 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium flake 77 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Granular chlorine (calcium hypochlorite 65 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clarifier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilised granules (dichlor 55 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acid granules (sodium bisulfate 93.2 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floc (alum)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid chlorine 10 % trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid chlorine 12.5 % trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metal binder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine-free oxidiser (triple salt, 43 % KHSO5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pool acid, half strength 14.5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pool acid 31.45 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peroxide 27 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phosphate remover (lanthanum chloride 20 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pool salt 99.5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sesquicarbonate powder 98 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soda ash powder 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bromide salt 98 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilizer granules 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine remover (sodium sulfite 97 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine remover (sodium thiosulfate pentahydrate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilised tablets (trichlor 90 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ascorbic acid 99 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>sheet</name>
    <message>
        <source>%1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill water: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take-home sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the water says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First of all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do, and when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If something goes wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring this sheet with your next bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet: %1 (%2) or soon after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring a fresh bottle and this sheet %1 after the last step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>We will read: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan for home can be given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“Give or take” is one standard deviation: about two readings in three come that near.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read at %1 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May we swim?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not said: this sheet has readings only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The small line under a value: what the test can read, from end to end; brackets, the target; dark mark, this bottle, as wide as its likely error; open mark, last visit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody swims unless the drain on the floor can be seen clearly from the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep to the times: going on sooner than shown is how products meet that must not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the water turns brown, black or like tea after a dose, stop there and call us: that can be metal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A light cloud after a dose clears with the pump running; if it is still there the next day, stop and bring us a bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the filter&apos;s pressure gauge, and clean the filter when its maker says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While draining, stop at once if the shell or liner moves, lifts or cracks, or if it rains hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdoor pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indoor pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdoor spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indoor spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdoor swim spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indoor swim spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swim spa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outdoor plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indoor plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bromine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>biguanide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not before %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not before %1, after step %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not for %1 after you start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not for %1 after you start, and after step %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not before step %1 is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No – not until we have tested the water again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is for the operator of this water to say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes – but with nobody in the water while anything is being added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 US gallons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your local emergency number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fumes, fizzing, or products that have met: leave at once, upwind, keep others out and call %1 from outside. Do not go back, add no water, move nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathed in: fresh air; trouble breathing: call %1. Symptoms can come hours later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the eyes or on the skin: brush dry powder off, then rinse with running water for at least 15 minutes; take out contact lenses, take off wet clothing. Call %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swallowed: do not make the person vomit. Call %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store dry, cool, locked and upright, each product in its own container and apart from the others: acid far from chlorine, liquids never above powders. Never sniff a container.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 each time, %2 times</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
