import './no-eval'
import './style/tokens.css'
import './style/base.css'
import { mount } from 'svelte'
import App from './App.svelte'

mount(App, { target: document.body })
