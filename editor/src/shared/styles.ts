import './look.css';
import './frame.css';
import '../bedside/entry.css';
import '../bedside/outcome.css';
import '../bedside/dialogs.css';
import './print.css';
