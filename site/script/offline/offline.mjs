/** The door of the service worker: hands it its own surroundings. */
import { serveOffline } from "./serve-offline.ts";

serveOffline(self);
