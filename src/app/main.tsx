/** The page's entry. */

import { createRoot } from "react-dom/client";
import { demoBeam } from "../library";
import { provideEditor } from "../store";
import { App } from "./App";
import { startSession } from "./session";

const session = await startSession(demoBeam);
provideEditor(session.editor);
const root = document.getElementById("root");
if (root === null) throw new Error("the page has no root");
createRoot(root).render(<App session={session} />);
